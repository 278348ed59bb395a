// The array form of any function: checks the columns, shares the rows out among threads when asked, tells what was refused.
#include "answers/arguments.hpp"
#include "capi/direct.hpp"
#include "catalogue/families.hpp"

#include <omp.h>

#include <algorithm>
#include <array>
#include <memory>

namespace cutwater::capi {
namespace {

struct Columns {
    std::array<cutwater_column, most_inputs> in{};
    std::array<cutwater_result_column, most_results> out{};
    GivenInputs shared{};
};

/// Words and series, the same for every row, into shared; columns into in and out.
cutwater_status gather(const FunctionInfo& f, std::size_t rows, const cutwater_column* columns, const Given* shared,
                       const char* const* words, const cutwater_result_column* results, Columns& to, cutwater_refusal* refusal)
{
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        const InputInfo& input = f.inputs[i];
        if (input.kind == Kind::quantity) {
            to.in[i] = columns[i];
            if (columns[i].data || !rows) continue;
            if (!input.has_default) return refuse_missing(f, i, refusal);
            to.in[i] = {&input.fallback, 0};
        } else {
            to.shared[i] = shared[i];
            if (input.kind == Kind::series || !words) continue;
            to.shared[i].word = words[i] ? find_word(input.words.data(), input.words.size(), words[i]) : -1;
            if (to.shared[i].word < 0) return refuse_word(f, i, words[i], refusal);
        }
    }
    for (std::size_t j = 0; j < f.results.size(); ++j) {
        if (rows && !results[j].data) return refuse(CUTWATER_MISSING, "A pointer for a result's column is null.", refusal);
        to.out[j] = results[j];
    }
    return CUTWATER_OK;
}

/// Some of the rows, as a job of their own; begin is a multiple of 8, so that no two parts share a byte of the bitmap.
struct Part {
    Columns columns;
    GivenInputs first_given;
    RowsJob job;

    void run(const FunctionInfo& f, const Columns& whole, std::uint8_t* bitmap, std::size_t begin, std::size_t rows)
    {
        columns = whole;
        first_given = whole.shared;
        const auto offset = static_cast<std::ptrdiff_t>(begin);
        for (cutwater_column& column : columns.in)
            if (column.data) column.data += offset * column.stride;
        for (cutwater_result_column& column : columns.out)
            if (column.data) column.data += offset * column.stride;
        job = {.rows = rows, .columns = columns.in.data(), .shared = columns.shared.data(), .results = columns.out.data(),
               .bitmap = bitmap ? bitmap + begin / 8 : nullptr, .first_given = first_given.data()};
        f.rows(job);
    }
};

cutwater_status tell(const FunctionInfo& f, const Part& part, std::size_t begin, cutwater_refusal* refusal)
{
    std::array<Result, most_results> out;
    const cutwater_status status = f.call(part.first_given.data(), out.data(), nullptr, refusal);
    if (refusal) refusal->element = static_cast<std::int64_t>(begin + part.job.first_refused);
    return status;
}

constexpr std::size_t least_rows_a_thread = 16384;  // below this, waking a thread costs more than it saves

std::size_t thread_count(const cutwater_rows_report* report, std::size_t rows)
{
    if (!report || report->threads == 0 || report->threads == 1) return 1;
    const int asked = report->threads < 0 ? omp_get_num_procs() : std::min(report->threads, 256);
    return std::clamp<std::size_t>(rows / least_rows_a_thread, 1, static_cast<std::size_t>(asked));
}

cutwater_status run_rows(const FunctionInfo& f, std::size_t rows, const Columns& columns, cutwater_rows_report* report)
{
    cutwater_refusal* const first = report ? &report->first : nullptr;
    std::uint8_t* const bitmap = report ? report->bitmap : nullptr;
    if (bitmap) std::fill_n(bitmap, (rows + 7) / 8, std::uint8_t{0});
    const std::size_t threads = thread_count(report, rows);
    if (threads == 1) {
        Part part;
        part.run(f, columns, bitmap, 0, rows);
        if (report) report->refused = part.job.refused;
        return part.job.refused ? tell(f, part, 0, first) : CUTWATER_OK;
    }
    const std::size_t share = (rows / threads + 8) / 8 * 8;
    const auto parts = std::make_unique<Part[]>(threads);
#pragma omp parallel for num_threads(static_cast<int>(threads)) schedule(static, 1)
    for (std::size_t t = 0; t < threads; ++t)
        if (const std::size_t begin = t * share; begin < rows) parts[t].run(f, columns, bitmap, begin, std::min(share, rows - begin));
    for (std::size_t t = 0; t < threads; ++t) report->refused += parts[t].job.refused;
    for (std::size_t t = 0; t < threads; ++t)
        if (parts[t].job.refused) return tell(f, parts[t], t * share, first);
    return CUTWATER_OK;
}

}  // namespace

cutwater_status direct_rows(std::size_t position, std::size_t rows, const cutwater_column* columns, const Given* shared,
                            const char* const* words, const cutwater_result_column* results,
                            cutwater_rows_report* report) noexcept
{
    cutwater_refusal* const first = report ? &report->first : nullptr;
    return guard(first, [&]() -> cutwater_status {
        const FunctionInfo& f = function_at(position);
        if (report) report->refused = 0;
        if (!f.rows) return refuse(CUTWATER_WRONG_KIND, "A function with a series among its results has no array form.", first);
        Columns gathered;
        if (const auto status = gather(f, rows, columns, shared, words, results, gathered, first); status != CUTWATER_OK) return status;
        return run_rows(f, rows, gathered, report);
    });
}

}  // namespace cutwater::capi

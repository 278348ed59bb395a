#include "call/rows.hpp"

#include "call/arguments.hpp"
#include "call/overlap.hpp"
#include "catalogue/sentence.hpp"
#include "catalogue/words.hpp"

#include <algorithm>
#include <array>
#include <exception>
#include <functional>
#include <limits>
#include <memory>
#include <thread>
#include <vector>

namespace cutwater {
namespace {

struct Columns {
    std::array<cutwater_column, most_inputs> in{};
    std::array<cutwater_result_column, most_results> out{};
    GivenInputs shared{};
};

/// Words and series, the same for every row, into shared; columns into in and out.
cutwater_status gather(const FunctionInfo& f, std::size_t rows, const cutwater_column* columns, const Given* shared,
                       const char* const* words, const cutwater_result_column* results, Columns& to,
                       cutwater_refusal* refusal)
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
        if (rows && !results[j].data)
            return refuse(CUTWATER_MISSING, "A pointer for a result's column is null.", refusal);
        to.out[j] = results[j];
    }
    return CUTWATER_OK;
}

/// A result may take exactly the column of an input, and else no memory of another column's or its own.
cutwater_status refuse_overlap(const FunctionInfo& f, std::size_t rows, const Columns& columns,
                               cutwater_refusal* refusal)
{
    const auto say = [&](std::size_t result, const char* what, const char* other) {
        return refuse_saying(CUTWATER_CONTRADICTION, refusal, "The column of {} {}{}.", f.results[result].full_name,
                             what, other);
    };
    for (std::size_t j = 0; j < f.results.size(); ++j) {
        const cutwater_result_column out = columns.out[j];
        if (rows > 1 && out.stride == 0)
            return say(j, "has a stride of 0: every row would be written over the last", "");
        const Place written(out.data, rows, out.stride);
        for (std::size_t k = 0; k < j; ++k)
            if (overlap(written, Place(columns.out[k].data, rows, columns.out[k].stride)))
                return say(j, "overlaps that of ", f.results[k].full_name);
        for (std::size_t i = 0; i < f.inputs.size(); ++i) {
            const bool column = f.inputs[i].kind == Kind::quantity;
            const cutwater_column in = columns.in[i];
            const RawSeries series = columns.shared[i].series;
            if (column && in.data == out.data && (in.stride == out.stride || rows == 1)) continue;
            if (!overlap(written,
                         column ? Place(in.data, rows, in.stride) : Place(series.data, series.length, series.stride)))
                continue;
            say(j, "overlaps it; it may take exactly the same column, with the same stride, or must lie apart", "");
            blame(f, i, -1, refusal);
            return CUTWATER_CONTRADICTION;
        }
    }
    return CUTWATER_OK;
}

/// Some of the rows, as a job of their own; begin is a multiple of 8, so that no two parts share a byte of the bitmap.
struct Part {
    Columns columns;
    GivenInputs first_given;
    RowsJob job;
    std::exception_ptr failed;  // why it could not be computed at all, for want of memory say

    void run(const FunctionInfo& f, const Columns& whole, std::uint8_t* bitmap, std::size_t begin,
             std::size_t rows) noexcept
    {
        columns = whole;
        first_given = whole.shared;
        const auto offset = static_cast<std::ptrdiff_t>(begin);
        for (cutwater_column& column : columns.in)
            if (column.data) column.data += offset * column.stride;
        for (cutwater_result_column& column : columns.out)
            if (column.data) column.data += offset * column.stride;
        job = {.rows = rows,
               .columns = columns.in.data(),
               .shared = columns.shared.data(),
               .results = columns.out.data(),
               .bitmap = bitmap ? bitmap + begin / 8 : nullptr,
               .first_given = first_given.data()};
        try {
            f.rows(job);
        } catch (...) {
            failed = std::current_exception();
        }
    }
};

cutwater_status tell(const FunctionInfo& f, const Part& part, std::size_t begin, cutwater_refusal* refusal)
{
    std::array<Result, most_results> out;
    const cutwater_status status = f.call(part.first_given.data(), out.data(), nullptr, refusal);
    if (refusal) refusal->element = static_cast<std::int64_t>(begin + part.job.first_refused);
    return status;
}

constexpr std::size_t least_rows_a_thread = 16384;  // below this, starting a thread costs more than it saves

std::size_t thread_count(const cutwater_rows_report* report, std::size_t rows)
{
    if (!report || report->threads == 0 || report->threads == 1) return 1;
    const unsigned asked = report->threads < 0 ? std::thread::hardware_concurrency()
                                               : static_cast<unsigned>(report->threads);
    return std::clamp<std::size_t>(rows / least_rows_a_thread, 1, std::clamp(asked, 1u, 256u));
}

/// Work(0) to work(count - 1), which throw nothing, each on a thread of its own; on this one where none can be had.
template <class Work>
void share_out(std::size_t count, const Work& work)
{
    std::vector<std::thread> others;
    others.reserve(count - 1);
    for (std::size_t t = 1; t < count; ++t) try {
            others.emplace_back(work, t);
        } catch (...) {
            work(t);
        }
    work(0);
    for (std::thread& thread : others) thread.join();
}

cutwater_status run_rows(const FunctionInfo& f, std::size_t rows, const Columns& columns, cutwater_rows_report* report)
{
    cutwater_refusal* const first = report ? &report->first : nullptr;
    std::uint8_t* const bitmap = report ? report->bitmap : nullptr;
    if (bitmap) std::fill_n(bitmap, (rows + 7) / 8, std::uint8_t{0});
    const std::size_t threads = thread_count(report, rows);
    const std::size_t share = (rows / threads + 8) / 8 * 8;
    Part alone;
    const auto several = threads > 1 ? std::make_unique<Part[]>(threads) : nullptr;
    Part* const parts = several ? several.get() : &alone;
    const auto run = [&](std::size_t t) noexcept {
        if (const std::size_t begin = t * share; begin < rows)
            parts[t].run(f, columns, bitmap, begin, std::min(share, rows - begin));
    };
    if (threads == 1)
        run(0);
    else
        share_out(threads, std::cref(run));
    for (std::size_t t = 0; t < threads; ++t)
        if (parts[t].failed) std::rethrow_exception(parts[t].failed);
    for (std::size_t t = 0; report && t < threads; ++t) report->refused += parts[t].job.refused;
    for (std::size_t t = 0; t < threads; ++t)
        if (parts[t].job.refused) return tell(f, parts[t], t * share, first);
    return CUTWATER_OK;
}

}  // namespace

void refuse_every_row(std::size_t rows, const cutwater_result_column* results, std::size_t count,
                      cutwater_rows_report* report) noexcept
{
    for (std::size_t j = 0; results && j < count; ++j)
        for (std::size_t r = 0; results[j].data && r < rows; ++r)
            results[j].data[static_cast<std::ptrdiff_t>(r) * results[j].stride] =
                std::numeric_limits<double>::quiet_NaN();
    if (!report) return;
    report->refused = rows;
    if (!report->bitmap) return;
    std::fill_n(report->bitmap, rows / 8, std::uint8_t{0xff});
    if (rows % 8) report->bitmap[rows / 8] = static_cast<std::uint8_t>((1u << (rows % 8)) - 1);
}

cutwater_status call_rows(const FunctionInfo& f, std::size_t rows, const cutwater_column* columns, const Given* shared,
                          const char* const* words, const cutwater_result_column* results, cutwater_rows_report* report)
{
    cutwater_refusal* const first = report ? &report->first : nullptr;
    if (report) report->refused = 0;
    const auto whole = [&](cutwater_status status) {
        refuse_every_row(rows, results, f.results.size(), report);
        return status;
    };
    if (!f.rows)
        return whole(
            refuse(CUTWATER_WRONG_KIND, "A function with a series among its results has no array form.", first));
    Columns gathered;
    if (const auto status = gather(f, rows, columns, shared, words, results, gathered, first); status != CUTWATER_OK)
        return whole(status);
    if (const auto status = refuse_overlap(f, rows, gathered, first); status != CUTWATER_OK) return whole(status);
    return run_rows(f, rows, gathered, report);
}

}  // namespace cutwater

#include <cutwater/answers.h>

#include "answers/shown.hpp"
#include "answers/solve.hpp"
#include "answers/sensitivity.hpp"
#include "answers/uncertainty.hpp"
#include "answers/working.hpp"
#include "catalogue/guard.hpp"
#include "capi/sized.hpp"
#include "catalogue/families.hpp"
#include "catalogue/nearest.hpp"
#include "catalogue/sentence.hpp"

#include <cstddef>
#include <cstring>

using namespace cutwater;
using namespace cutwater::capi;

namespace {

/// The function that is asked about, unless it or its inputs are missing.
cutwater_status find_asked(const char* name, const cutwater_value* inputs, std::size_t count, const FunctionInfo*& f,
                           cutwater_refusal* refusal)
{
    const std::ptrdiff_t position = name ? find_function(name) : -1;
    if (position < 0) return refuse_unknown_function(name, refusal);
    if (!inputs && count) return refuse(CUTWATER_MISSING, "The pointer to the inputs is null.", refusal);
    f = &function_at(static_cast<std::size_t>(position));
    return CUTWATER_OK;
}

/// Finds the function and hands it with its inputs to answer(f, inputs), inside of the guard.
template <class Ask>
cutwater_status ask(const char* name, const cutwater_value* inputs, std::size_t count, cutwater_refusal* refusal,
                    Ask&& answer) noexcept
{
    return guard(refusal, [&]() -> cutwater_status {
        const FunctionInfo* f = nullptr;
        const cutwater_status status = find_asked(name, inputs, count, f, refusal);
        return status == CUTWATER_OK ? answer(*f, std::span(inputs, count)) : status;
    });
}

/// Copies as snprintf does, but never half of a character. True when all of it fitted.
bool copy(const std::string& text, char* buffer, std::size_t capacity)
{
    if (!buffer || capacity == 0) return false;
    const std::size_t length = whole_characters(text, capacity - 1);
    std::memcpy(buffer, text.data(), length);
    buffer[length] = 0;
    return length == text.size();
}

}  // namespace

extern "C" {

cutwater_status cutwater_working(const char* function, const cutwater_value* inputs, size_t input_count, int32_t form,
                                 char* buffer, size_t capacity, size_t* needed, cutwater_refusal* refusal)
{
    if (needed) *needed = 0;
    if (buffer && capacity) *buffer = 0;
    cutwater_refusal own;
    clear(&own);
    cutwater_refusal* const why = refusal ? refusal : &own;
    return guard(why, [&]() -> cutwater_status {
        if (form < CUTWATER_TEXT_UTF8 || form > CUTWATER_TEXT_JSON)
            return refuse(CUTWATER_UNKNOWN_WORD, "form must be 0 (UTF-8), 1 (ASCII), 2 (Markdown) or 3 (JSON).", why);
        std::string text;
        const cutwater_status status = ask(function, inputs, input_count, why, [&](const FunctionInfo& f, auto values) {
            const Working w = work(f, values);
            if (w.status != CUTWATER_OK) *why = w.refusal;
            switch (form) {
            case CUTWATER_TEXT_MARKDOWN: write_markdown(w, text); break;
            case CUTWATER_TEXT_JSON: write_json(w, text); break;
            default: write_text(w, form == CUTWATER_TEXT_ASCII, text); break;
            }
            return w.status;
        });
        if (text.empty()) text = refusal_alone(*why, form);
        if (needed) *needed = text.size();
        if (copy(text, buffer, capacity) || status != CUTWATER_OK) return status;
        return refuse_saying(CUTWATER_BUFFER_TOO_SMALL, why, "The working has {} bytes and a 0; the buffer holds {}.",
                             text.size(), buffer ? capacity : 0);
    });
}

cutwater_status cutwater_refusal_text(const cutwater_refusal* refusal, int32_t form, char* buffer, size_t capacity,
                                      size_t* needed)
{
    if (needed) *needed = 0;
    if (buffer && capacity) *buffer = 0;
    if (!refusal) return CUTWATER_MISSING;
    if (form < CUTWATER_TEXT_UTF8 || form > CUTWATER_TEXT_JSON) return CUTWATER_UNKNOWN_WORD;
    cutwater_refusal own;
    return guard(&own, [&]() -> cutwater_status {
        const std::string text = refusal_alone(*refusal, form);
        if (needed) *needed = text.size();
        return copy(text, buffer, capacity) ? CUTWATER_OK : CUTWATER_BUFFER_TOO_SMALL;
    });
}

cutwater_status cutwater_solve_for(const char* function, const cutwater_value* inputs, size_t input_count,
                                   const char* unknown, const char* result, const cutwater_value* target, double low,
                                   double high, double* found, cutwater_refusal* refusal)
{
    if (found) *found = std::numeric_limits<double>::quiet_NaN();
    return ask(function, inputs, input_count, refusal, [&](const FunctionInfo& f, auto values) -> cutwater_status {
        if (!found) return refuse(CUTWATER_MISSING, "The pointer for the value found is null.", refusal);
        SolveQuestion question;
        if (const auto status = ask_solve(f, values, unknown, result, target, low, high, question, refusal);
            status != CUTWATER_OK)
            return status;
        const Solutions solutions = solve(question);
        return one_solution(question, solutions, *found, refusal);
    });
}

cutwater_status cutwater_solutions(const char* function, const cutwater_value* inputs, size_t input_count,
                                   const char* unknown, const char* result, const cutwater_value* target, double low,
                                   double high, double* roots, size_t capacity, size_t* count,
                                   cutwater_refusal* refusal)
{
    if (count) *count = 0;
    return ask(function, inputs, input_count, refusal, [&](const FunctionInfo& f, auto values) -> cutwater_status {
        if (!count || (!roots && capacity))
            return refuse(CUTWATER_MISSING, "The pointer for the values found is null.", refusal);
        SolveQuestion question;
        if (const auto status = ask_solve(f, values, unknown, result, target, low, high, question, refusal);
            status != CUTWATER_OK)
            return status;
        std::vector<double> found;
        if (const auto status = all_solutions(question, solve(question), found, refusal); status != CUTWATER_OK)
            return status;
        *count = found.size();
        std::copy_n(found.begin(), std::min(capacity, found.size()), roots);
        if (*count <= capacity) return CUTWATER_OK;
        return refuse(CUTWATER_BUFFER_TOO_SMALL, "There are more values than there is room for.", refusal);
    });
}

cutwater_status cutwater_uncertainty(const char* function, const cutwater_value* inputs, size_t input_count,
                                     const cutwater_value* uncertainties, size_t uncertainty_count,
                                     const cutwater_uncertainty_options* options, cutwater_uncertainty_report* report,
                                     cutwater_refusal* refusal)
{
    cutwater_uncertainty_report own{};
    const bool report_usable = report && read_sized(*report, offsetof(cutwater_uncertainty_report, value), own);
    spoil(own);
    const cutwater_status status = ask(
        function, inputs, input_count, refusal, [&](const FunctionInfo& f, auto values) -> cutwater_status {
            if (!report) return refuse(CUTWATER_MISSING, "The pointer for the report is null.", refusal);
            if (!uncertainties && uncertainty_count)
                return refuse(CUTWATER_MISSING, "The pointer to the uncertainties is null.", refusal);
            cutwater_uncertainty_options wanted{};
            if (!report_usable || (options && !read_sized(*options, sizeof options->size, wanted)))
                return refuse(CUTWATER_WRONG_COUNT,
                              "size is not that of the struct: set it to sizeof, and to 0 what you do not use.",
                              refusal);
            const bool knows = report->size >= sizeof own;
            return uncertainty(f, values, {uncertainties, uncertainty_count}, wanted, own, refusal, knows);
        });
    if (report_usable) write_sized(own, *report);
    return status;
}

cutwater_status cutwater_sensitivity(const char* function, const cutwater_value* inputs, size_t input_count,
                                     const char* result, cutwater_sensitivity_row* rows, size_t capacity, size_t* count,
                                     double* value, cutwater_refusal* refusal)
{
    if (count) *count = 0;
    if (value) *value = std::numeric_limits<double>::quiet_NaN();
    return ask(function, inputs, input_count, refusal, [&](const FunctionInfo& f, auto values) -> cutwater_status {
        if (!rows && capacity) return refuse(CUTWATER_MISSING, "The pointer for the rows is null.", refusal);
        std::vector<cutwater_sensitivity_row> table;
        double at = 0;
        if (const auto status = sensitivity(f, values, result, table, at, refusal); status != CUTWATER_OK)
            return status;
        if (count) *count = table.size();
        if (value) *value = at;
        std::copy_n(table.begin(), std::min(capacity, table.size()), rows);
        if (table.size() <= capacity) return CUTWATER_OK;
        return refuse(CUTWATER_BUFFER_TOO_SMALL, "There are more rows than there is room for.", refusal);
    });
}

}  // extern "C"

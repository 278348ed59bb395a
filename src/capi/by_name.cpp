#include <cutwater/library.h>

#include "call/arguments.hpp"
#include "call/by_name.hpp"
#include "call/rows.hpp"
#include "capi/flat.hpp"
#include "catalogue/guard.hpp"
#include "catalogue/families.hpp"
#include "catalogue/nearest.hpp"

#include <limits>

namespace cutwater::capi {
namespace {

bool known(std::int32_t function) { return function >= 0 && static_cast<std::size_t>(function) < function_count(); }

/// After a buffer that was too small the lengths stay, to say how much is needed; the numbers do not.
void spoil_results(cutwater_result* results, std::size_t count, bool keep_lengths = false)
{
    for (std::size_t i = 0; results && i < count; ++i) {
        results[i].number = std::numeric_limits<double>::quiet_NaN();
        results[i].text = "";
        if (!keep_lengths) results[i].length = 0;
        if (results[i].series)
            std::fill_n(results[i].series, std::min(results[i].length, results[i].capacity), results[i].number);
    }
}

}  // namespace

}  // namespace cutwater::capi

using namespace cutwater;
using namespace cutwater::capi;

extern "C" {

cutwater_status cutwater_call_at(int32_t function, const cutwater_value* inputs, size_t input_count,
                                 cutwater_result* results, size_t result_count, cutwater_refusal* refusal)
{
    const cutwater_status status = guard(refusal, [&]() -> cutwater_status {
        if (!known(function))
            return refuse(CUTWATER_UNKNOWN_FUNCTION, "There is no function with that number.", refusal);
        if (!inputs && input_count) return refuse(CUTWATER_MISSING, "The pointer to the inputs is null.", refusal);
        return call_by_name(function_at(static_cast<std::size_t>(function)), {inputs, input_count}, results,
                            result_count, refusal);
    });
    if (status != CUTWATER_OK) spoil_results(results, result_count, status == CUTWATER_BUFFER_TOO_SMALL);
    return status;
}

cutwater_status cutwater_call(const char* function, const cutwater_value* inputs, size_t input_count,
                              cutwater_result* results, size_t result_count, cutwater_refusal* refusal)
{
    const std::ptrdiff_t position = function ? find_function(function) : -1;
    if (position >= 0)
        return cutwater_call_at(static_cast<int32_t>(position), inputs, input_count, results, result_count, refusal);
    spoil_results(results, result_count);
    return refuse_unknown_function(function, refusal);
}

cutwater_status cutwater_rows_at(int32_t function, size_t rows, const cutwater_column* columns,
                                 const cutwater_value* shared, const cutwater_result_column* results,
                                 cutwater_rows_report* report)
{
    cutwater_refusal* const first = report ? &report->first : nullptr;
    const auto refused = [&](cutwater_status status, std::size_t count) {
        refuse_every_row(rows, results, count, report);
        return status;
    };
    if (!known(function))
        return refused(refuse(CUTWATER_UNKNOWN_FUNCTION, "There is no function with that number.", first), 0);
    const FunctionInfo& f = function_at(static_cast<std::size_t>(function));
    if (!columns || !results)
        return refused(refuse(CUTWATER_MISSING, "The pointer to the columns is null.", first), f.results.size());
    GivenInputs given{};
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        if (f.inputs[i].kind == Kind::quantity) continue;
        const cutwater_value value = shared ? shared[i] : cutwater_value{};
        if (const auto status = read_argument(f, i, value, given[i], first); status != CUTWATER_OK)
            return refused(status, f.results.size());
    }
    return flat_rows(f, rows, columns, given.data(), nullptr, results, report);
}

cutwater_status cutwater_read(int32_t function, int32_t input, const char* text, double* number,
                              cutwater_refusal* refusal)
{
    if (!number) return refuse(CUTWATER_MISSING, "The pointer for the number is null.", refusal);
    *number = std::numeric_limits<double>::quiet_NaN();
    if (!known(function)) return refuse(CUTWATER_UNKNOWN_FUNCTION, "There is no function with that number.", refusal);
    const FunctionInfo& f = function_at(static_cast<std::size_t>(function));
    if (input < 0 || static_cast<std::size_t>(input) >= f.inputs.size())
        return refuse(CUTWATER_WRONG_COUNT, "The function has no input with that number.", refusal);
    double read = 0;
    const cutwater_status status = read_text(f, static_cast<std::size_t>(input), text, -1, read, refusal);
    if (status == CUTWATER_OK) {
        *number = read;
        if (refusal) refusal->status = CUTWATER_OK;
    }
    return status;
}

}  // extern "C"

// The array form behind the guard.
#include "call/rows.hpp"

#include "capi/flat.hpp"
#include "catalogue/guard.hpp"

namespace cutwater::capi {

cutwater_status flat_rows(const FunctionInfo& f, std::size_t rows, const cutwater_column* columns, const Given* shared,
                          const char* const* words, const cutwater_result_column* results,
                          cutwater_rows_report* report) noexcept
{
    bool answered = false;
    const cutwater_status status = guard(report ? &report->first : nullptr, [&] {
        const cutwater_status called = call_rows(f, rows, columns, shared, words, results, report);
        answered = true;
        return called;
    });
    if (!answered) refuse_every_row(rows, results, f.results.size(), report);
    return status;
}

}  // namespace cutwater::capi

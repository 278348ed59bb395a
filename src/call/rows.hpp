// The array form of any function: checks the columns, shares the rows out among threads when asked, tells what was
// refused.
#pragma once

#include "catalogue/info.hpp"

namespace cutwater {

/// columns, shared and words have one entry an input; without words, shared holds the positions of the choices too.
/// Throws only for want of memory, and then leaves the results as they happen to be.
cutwater_status call_rows(const FunctionInfo& f, std::size_t rows, const cutwater_column* columns, const Given* shared,
                          const char* const* words, const cutwater_result_column* results,
                          cutwater_rows_report* report);

/// What an array call leaves that was refused as a whole: every result NaN, every row counted and marked.
void refuse_every_row(std::size_t rows, const cutwater_result_column* results, std::size_t count,
                      cutwater_rows_report* report) noexcept;

}  // namespace cutwater

// Between a worksheet's cell and the flat C API. Every generated entry point is one of these calls. They run in many
// threads at once.
#pragma once

#include "excel.hpp"

#include <initializer_list>

namespace cutwater::excel {

/// A refusal is #VALUE!; where an argument is an error of the sheet's own, that one.
Value* function_cell(std::int32_t function, std::initializer_list<const Value*> arguments) noexcept;
Value* question_cell(std::int32_t question, std::initializer_list<const Value*> arguments) noexcept;

}  // namespace cutwater::excel

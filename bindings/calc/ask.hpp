// One call of the flat C API with a cell's arguments.
#pragma once

#include "arguments.hpp"

#include <rtl/ustring.hxx>

namespace cutwater::calc {

struct Answer {
    cutwater_refusal refusal{};
    std::vector<cutwater_result> results;
    std::vector<std::vector<double>> series;  // one a result, empty for numbers and words
};

cutwater_status ask(std::int32_t function, std::span<const Any* const> given, Answer& answer);

/// The number of the function that a cell names, in capitals or not; throws for what is no name.
std::int32_t function_called(const Any& given);

std::vector<const Any*> pointers(const Row& row);

/// What Calc shows as #N/A.
Any not_available();

/// From UTF-8.
rtl::OUString text_for_cell(const std::string& text);

/// As IllegalArgumentException, which a cell shows as an error and Basic's Error$ tells whole.
[[noreturn]] void throw_refused(const std::string& sentence, std::int32_t argument = -1);

}  // namespace cutwater::calc

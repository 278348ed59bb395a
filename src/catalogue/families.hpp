// The catalogue: every family and every function in it.
#pragma once

#include "catalogue/info.hpp"

namespace cutwater {

std::span<const Family* const> families() noexcept;

std::size_t function_count() noexcept;
/// In the order of the families; position below function_count().
const FunctionInfo& function_at(std::size_t position) noexcept;
const Family& family_of(std::size_t position) noexcept;
/// -1 when there is no function of that name.
std::ptrdiff_t find_function(std::string_view name) noexcept;

}  // namespace cutwater

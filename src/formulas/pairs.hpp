// Series that belong together point by point.
#pragma once

#include <cstddef>
#include <tuple>

namespace cutwater::formulas::pairs {

/// Whether the series in these two places of the formula's inputs are equally long.
template <std::size_t One, std::size_t Other, class... P>
bool equal_length(P... inputs)
{
    const auto all = std::tie(inputs...);
    return std::get<One>(all).size() == std::get<Other>(all).size();
}

inline constexpr const char* same_length = "both series must have the same number of points";

}  // namespace cutwater::formulas::pairs

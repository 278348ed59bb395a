// Series that belong together point by point.
#pragma once

#include "catalogue/record.hpp"

namespace cutwater::formulas::pairs {

inline constexpr const char* same_length = "both series must have the same number of points";

/// These two series are equally long.
template <Name One, Name Other>
constexpr auto equal_length(const char* sentence = same_length)
{
    return relation<One, Other>([](const auto& one, const auto& other) { return one.size() == other.size(); },
                                sentence);
}

}  // namespace cutwater::formulas::pairs

// Permitted intervals, in the unit of the input that they belong to.
#pragma once

#include <limits>

namespace cutwater {

struct Interval {
    double low = -std::numeric_limits<double>::infinity();
    double high = std::numeric_limits<double>::infinity();
    bool low_open = true;  // an infinite end is always open: infinities are refused everywhere
    bool high_open = true;

    constexpr bool contains(double x) const  // false for NaN
    {
        return (low_open ? x > low : x >= low) & (high_open ? x < high : x <= high);
    }
};

inline constexpr Interval any{};
constexpr Interval above(double low) { return {.low = low, .low_open = true}; }
constexpr Interval from(double low) { return {.low = low, .low_open = false}; }
constexpr Interval below(double high) { return {.high = high, .high_open = true}; }
constexpr Interval up_to(double high) { return {.high = high, .high_open = false}; }
constexpr Interval between(double low, double high) { return {low, high, false, false}; }  // ends permitted
constexpr Interval inside(double low, double high) { return {low, high, true, true}; }     // ends not permitted
constexpr Interval above_up_to(double low, double high) { return {low, high, true, false}; }
constexpr Interval from_below(double low, double high) { return {low, high, false, true}; }

}  // namespace cutwater

// The root of a function that rises from low to high, to the last bits: Newton's steps, halved intervals where they
// leave the bracket. Fast and certain: the bracket shrinks at every turn.
#pragma once

#include <cmath>
#include <limits>

namespace cutwater::formulas {

/// value_and_slope(x) answers with {f, f'}; f(low) <= 0 <= f(high).
template <class F>
double rising_root(F&& value_and_slope, double low, double high)
{
    double x = high;
    for (int turn = 0; turn < 200; ++turn) {
        const auto [value, slope] = value_and_slope(x);
        if (value == 0) return x;
        (value < 0 ? low : high) = x;
        double next = x - value / slope;
        if (!(next > low && next < high)) next = low + (high - low) / 2;
        if (std::abs(next - x) <= 2 * std::numeric_limits<double>::epsilon() * std::abs(next)) return next;
        x = next;
    }
    return x;
}

}  // namespace cutwater::formulas

// The root of a function that rises from low to high, to the last bits: Newton's steps, halved intervals where they
// leave the bracket. Fast and certain: the bracket shrinks at every turn.
#pragma once

#include <cmath>
#include <limits>

namespace cutwater::formulas {

/// value_and_slope(x) answers with {f, f'}; f(low) <= 0 <= f(high); start lies between.
template <class F>
double rising_root(F&& value_and_slope, double low, double high, double start)
{
    double x = start;
    double last = std::numeric_limits<double>::infinity();
    for (int turn = 0; turn < 200; ++turn) {
        const auto [value, slope] = value_and_slope(x);
        if (value == 0) return x;
        (value < 0 ? low : high) = x;
        double next = x - value / slope;
        if (!(next > low && next < high)) next = low + (high - low) / 2;
        const double step = std::abs(next - x), size = std::abs(next);
        // Near the root the steps are the rounding of f, and no longer shrink.
        if (step <= 2 * std::numeric_limits<double>::epsilon() * size || (step >= last && step <= 1e-12 * size))
            return next;
        last = step;
        x = next;
    }
    return x;
}

}  // namespace cutwater::formulas

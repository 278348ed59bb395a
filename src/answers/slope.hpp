// The slope of a result along one number, by differences of the record's own call.
#pragma once

#include "elementary/elementary.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace cutwater {

struct Slope {
    double value;         // NaN where neither side can be computed
    bool kinked = false;  // the two sides disagree: a corner or a leap
};

/// ask(x) is the result, NaN where refused; centre is ask(x). The step is the cube root of the last bit times the size
/// of x, where truncation and rounding are in balance, or a small part of the reach (how far the input may lie from x)
/// where that is more: a slope that holds only closer to x would not matter. One-sided, of the second order too, where
/// the other side is refused. whole: steps of 1.
template <class Ask>
Slope slope_at(Ask&& ask, double x, double centre, double reach, bool whole)
{
    constexpr double part = 2e-3;
    const double root = elementary::cbrt(std::numeric_limits<double>::epsilon());
    const double wish = whole ? 1 : x == 0 && reach == 0 ? root : std::max(root * std::abs(x), part * reach);
    const double h = (x + wish) - x;  // a step that the number can take
    const double above = ask(x + h);
    const double below = ask(x - h);
    if (std::isfinite(above) && std::isfinite(below)) {
        const double slope = (above - below) / (2 * h);
        const double bend = std::abs(above - 2 * centre + below);
        return {slope, !whole && bend > 0.01 * std::abs(above - below) && bend > 1e-9 * std::abs(centre)};
    }
    for (const double s : {h, -h}) {
        const double one = s > 0 ? above : below;
        if (!std::isfinite(one)) continue;
        const double two = ask(x + 2 * s);
        return {std::isfinite(two) && !whole ? (4 * one - 3 * centre - two) / (2 * s) : (one - centre) / s};
    }
    return {std::numeric_limits<double>::quiet_NaN()};
}

}  // namespace cutwater

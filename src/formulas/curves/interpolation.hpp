// A curve through given points: piecewise cubic that keeps the points' rises and falls (no overshoot between them).
// Fritsch and Butland's slopes inside, the shape-preserving three-point rule at the ends. Every slope needs its
// neighbours only, so one value costs a search among the points and no copy of them.
#pragma once

#include "catalogue/outcome.hpp"
#include "catalogue/series.hpp"

#include <algorithm>
#include <cmath>

namespace cutwater::formulas::curves {

/// The points as plain SI numbers.
template <class X, class Y>
class Knots {
public:
    Knots(const Series<X>& x, const Series<Y>& y) : x_(x), y_(y) {}

    std::size_t size() const { return x_.size(); }
    double x(std::size_t i) const { return Si<X>::value(x_[i]); }
    double y(std::size_t i) const { return Si<Y>::value(y_[i]); }
    double first() const { return x(0); }
    double last() const { return x(size() - 1); }

private:
    const Series<X>& x_;
    const Series<Y>& y_;
};

/// One piece of the curve, a cubic in t from 0 at its first point to 1 at its second.
struct Piece {
    double x0, width, y0, y1, slope0, slope1;

    double x(double t) const { return t == 1 ? x0 + width : x0 + t * width; }
    double t(double x) const { return (x - x0) / width; }
    double value(double t) const
    {
        const double u = 1 - t;
        return u * u * (y0 * (1 + 2 * t) + slope0 * width * t) + t * t * (y1 * (3 - 2 * t) - slope1 * width * u);
    }
    double slope(double t) const
    {
        const double u = 1 - t;
        return 6 * t * u * ((y1 - y0) / width) + slope0 * u * (1 - 3 * t) + slope1 * t * (3 * t - 2);
    }
};

inline double slope_inside(double left_width, double left, double right_width, double right)
{
    if (!((left > 0 && right > 0) || (left < 0 && right < 0))) return 0;  // a peak, a dip or a level: no overshoot
    const double left_weight = 2 * right_width + left_width;
    const double right_weight = right_width + 2 * left_width;
    return (left_weight + right_weight) / (left_weight / left + right_weight / right);
}

inline double slope_at_end(double width, double secant, double next_width, double next_secant)
{
    const double slope = ((2 * width + next_width) * secant - width * next_secant) / (width + next_width);
    if ((slope > 0) != (secant > 0) || secant == 0) return 0;
    if ((secant > 0) != (next_secant > 0) && std::abs(slope) > 3 * std::abs(secant)) return 3 * secant;
    return slope;
}

template <class Points>
double secant(const Points& points, std::size_t i)
{
    return (points.y(i + 1) - points.y(i)) / (points.x(i + 1) - points.x(i));
}

/// Slope of the curve at point i.
template <class Points>
double slope_at(const Points& points, std::size_t i)
{
    const std::size_t last = points.size() - 1;
    const auto width = [&](std::size_t k) { return points.x(k + 1) - points.x(k); };
    if (last == 1) return secant(points, 0);
    if (i == 0) return slope_at_end(width(0), secant(points, 0), width(1), secant(points, 1));
    if (i == last) return slope_at_end(width(i - 1), secant(points, i - 1), width(i - 2), secant(points, i - 2));
    return slope_inside(width(i - 1), secant(points, i - 1), width(i), secant(points, i));
}

/// The piece from point i to point i + 1.
template <class Points>
Piece piece_at(const Points& points, std::size_t i)
{
    return {points.x(i),     points.x(i + 1) - points.x(i), points.y(i),
            points.y(i + 1), slope_at(points, i),           slope_at(points, i + 1)};
}

/// Number of the piece that holds x, which lies between the first and the last point.
template <class Points>
std::size_t piece_with(const Points& points, double x)
{
    std::size_t low = 0;
    std::size_t high = points.size() - 1;
    while (high - low > 1) {
        const std::size_t middle = low + (high - low) / 2;
        if (points.x(middle) <= x)
            low = middle;
        else
            high = middle;
    }
    return low;
}

template <class Points>
Piece piece_for(const Points& points, double x)
{
    return piece_at(points, piece_with(points, x));
}
template <class Points>
double last_y(const Points& points)
{
    return points.y(points.size() - 1);
}

template <class Points>
double value_at(const Points& points, double x)
{
    const Piece& piece = piece_for(points, x);
    if (x == piece.x0) return piece.y0;
    if (x == points.last()) return last_y(points);
    return piece.value(piece.t(x));
}

template <class Points>
double slope_of(const Points& points, double x)
{
    const Piece& piece = piece_for(points, x);
    return piece.slope(piece.t(x));
}

}  // namespace cutwater::formulas::curves

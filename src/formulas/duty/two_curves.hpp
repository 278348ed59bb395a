// Every meeting of two curves that are both given by points: on each stretch between neighbouring points of either,
// their difference is one cubic, and the walk that meets a curve with a parabola meets the difference with nought.
#pragma once

#include "formulas/curves/meeting.hpp"

#include <algorithm>
#include <cmath>

namespace cutwater::formulas::duty {

/// The curve of several equal pumps in parallel: the flow of each point as many times.
template <class Points>
class InParallel {
public:
    InParallel(const Points& one, double pumps) : one_(one), pumps_(pumps) {}

    std::size_t size() const { return one_.size(); }
    double x(std::size_t i) const { return one_.x(i) * pumps_; }
    double y(std::size_t i) const { return one_.y(i); }
    double first() const { return x(0); }
    double last() const { return x(size() - 1); }

private:
    const Points& one_;
    double pumps_;
};

/// A curve with the same added to every ordinate: a margin.
template <class Points>
class Raised {
public:
    Raised(const Points& curve, double by) : curve_(curve), by_(by) {}

    std::size_t size() const { return curve_.size(); }
    double x(std::size_t i) const { return curve_.x(i); }
    double y(std::size_t i) const { return curve_.y(i) + by_; }
    double first() const { return curve_.first(); }
    double last() const { return curve_.last(); }

private:
    const Points& curve_;
    double by_;
};

/// A part of one piece of the curve.
template <class Points>
curves::Piece part(const Points& points, double from, double to)
{
    const curves::Piece whole = curves::piece_at(points, curves::piece_with(points, from));
    const double t0 = whole.t(from);
    const double t1 = whole.t(to);
    return {from, to - from, whole.value(t0), whole.value(t1), whole.slope(t0), whole.slope(t1)};
}

/// The ordinate that is farthest from nought: what the gap between two curves is small against.
template <class Points>
double greatest_ordinate(const Points& points)
{
    double greatest = 0;
    for (std::size_t i = 0; i < points.size(); ++i) greatest = std::max(greatest, std::abs(points.y(i)));
    return greatest;
}

/// Over the stretch that both cover; the caller sees to it that there is one.
template <class One, class Other>
curves::Meetings meetings_of(const One& one, const Other& other)
{
    const double level = greatest_ordinate(one);  // the finder judges a touch by the size of the ordinates
    const double last = std::min(one.last(), other.last());
    double from = std::max(one.first(), other.first());
    curves::MeetingFinder finder(curves::Parabola{.base = level});
    finder.start(from, curves::value_at(one, from) - curves::value_at(other, from) + level);
    std::size_t i = curves::piece_with(one, from) + 1;
    std::size_t j = curves::piece_with(other, from) + 1;
    while (from < last) {
        const double to = std::min({one.x(i), other.x(j), last});
        const curves::Piece a = part(one, from, to);
        const curves::Piece b = part(other, from, to);
        finder.walk(
            {from, to - from, a.y0 - b.y0 + level, a.y1 - b.y1 + level, a.slope0 - b.slope0, a.slope1 - b.slope1});
        if (one.x(i) <= to) ++i;
        if (other.x(j) <= to) ++j;
        from = to;
    }
    return finder.found();
}

}  // namespace cutwater::formulas::duty

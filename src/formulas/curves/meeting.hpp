// Every meeting of a curve through points with base + linear x + factor x^2: a system curve, a similarity line or
// parabola, or a level. Each piece is split where the gap between the two turns, so between two stations the gap only
// rises or only falls, and no meeting is missed or counted twice.
#pragma once

#include "formulas/curves/interpolation.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <cstdint>
#include <limits>
#include <utility>

namespace cutwater::formulas::curves {

struct Parabola {
    double base = 0;
    double factor = 0;
    double linear = 0;
    double value(double x) const { return base + linear * x + factor * x * x; }
};

struct Meetings {
    std::size_t count = 0;
    double at[3]{};      // the first three
    double closest = 0;  // of all of them the one closest to the abscissa asked for
    bool along = false;  // they lie on each other, first from along_from to along_to
    double along_from = 0;
    double along_to = 0;
    double first_gap = 0;    // curve less parabola at the first point
    double last_gap = 0;     // at the last point
    double nearest_gap = 0;  // the gap nearest to zero at any station
    double nearest_at = 0;
};

/// Where a function changes its sign between two places; the end nearer to zero when rounding ate the change. No number
/// where that many steps have not settled it.
template <class Gap>
double sign_change(Gap gap, double from, double to)
{
    using namespace boost::math::policies;
    const double low = gap(from);
    const double high = gap(to);
    if (!(low * high < 0)) return std::abs(low) < std::abs(high) ? from : to;
    constexpr std::uintmax_t enough = 200;
    std::uintmax_t steps = enough;
    const auto [a, b] = boost::math::tools::toms748_solve(
        gap, from, to, low, high, boost::math::tools::eps_tolerance<double>(52), steps,
        policy<domain_error<ignore_error>, evaluation_error<ignore_error>>());
    if (steps >= enough) return std::numeric_limits<double>::quiet_NaN();
    return std::abs(gap(a)) <= std::abs(gap(b)) ? a : b;
}

/// Where, inside a piece, the gap's slope is zero: none, one or two places in t, rising.
struct Turns {
    int count = 0;
    double t[2]{};
};

inline Turns turns_of_gap(const Piece& p, const Parabola& parabola)
{
    const double rise = p.y1 - p.y0;
    const double d0 = p.width * p.slope0;
    const double d1 = p.width * p.slope1;
    const double a = 3 * (d0 + d1 - 2 * rise);
    const double b = 2 * (3 * rise - 2 * d0 - d1) - 2 * parabola.factor * p.width * p.width;
    const double c = d0 - p.width * (parabola.linear + 2 * parabola.factor * p.x0);
    Turns turns;
    const auto keep = [&](double t) {
        if (t > 0 && t < 1) turns.t[turns.count++] = t;
    };
    if (a == 0) {
        if (b != 0) keep(-c / b);
        return turns;
    }
    const double discriminant = b * b - 4 * a * c;
    if (!(discriminant > 0)) return turns;  // a double turn is no turn
    const double q = -0.5 * (b + std::copysign(std::sqrt(discriminant), b));
    keep(c / q);  // of two above 0 the nearer: q is the greater of both sums, and not 0
    keep(q / a);
    return turns;
}

/// Walks along the curve from station to station.
class MeetingFinder {
public:
    explicit MeetingFinder(Parabola parabola, double asked_for = 0) : parabola_(parabola), asked_for_(asked_for) {}

    void start(double x, double y)
    {
        before_ = judged(x, y);
        found_.first_gap = found_.last_gap = found_.nearest_gap = before_.gap;
        found_.nearest_at = x;
        if (before_.sign == 0) add(x);
    }

    void walk(const Piece& piece)
    {
        const Turns turns = turns_of_gap(piece, parabola_);
        double from = 0;
        for (int k = 0; k < turns.count; ++k) {
            step(piece, from, turns.t[k], piece.value(turns.t[k]));
            from = turns.t[k];
        }
        step(piece, from, 1, piece.y1);
    }

    Meetings found() const { return found_; }

private:
    struct Station {
        double x, gap;
        int sign;  // 0: they touch, as near as the numbers tell
    };

    Station judged(double x, double y) const
    {
        const double other = parabola_.value(x);
        const double gap = y - other;
        const double tolerance = 1e-12 * (std::abs(y) + std::abs(parabola_.base) + std::abs(other));
        return {x, gap, std::abs(gap) <= tolerance ? 0 : gap > 0 ? 1 : -1};
    }

    void add(double x)
    {
        if (found_.count == 0 || std::abs(x - asked_for_) < std::abs(found_.closest - asked_for_)) found_.closest = x;
        if (found_.count < 3) found_.at[found_.count] = x;
        ++found_.count;
    }

    void step(const Piece& piece, double from, double to, double y)
    {
        const Station here = judged(piece.x(to), y);
        if (here.sign == 0 && before_.sign == 0)
            stay(here.x);
        else if (here.sign == 0)
            add(here.x);
        else if (here.sign * before_.sign < 0)
            add(piece.x(crossing(piece, from, to)));
        if (std::abs(here.gap) < std::abs(found_.nearest_gap)) {
            found_.nearest_gap = here.gap;
            found_.nearest_at = here.x;
        }
        found_.last_gap = here.gap;
        before_ = here;
    }

    /// Two stations in a row touch: rounding about one meeting, or a stretch where the curves are one.
    void stay(double x)
    {
        const double begin = found_.at[std::min<std::size_t>(found_.count, 3) - 1];
        if (x - begin <= 1e-5 * std::abs(x)) return;
        if (!found_.along) {
            found_.along_from = begin;
            found_.along = true;
        } else if (found_.along_to != before_.x) {
            return;  // another stretch: the first is the one to tell of
        }
        found_.along_to = x;
    }

    double crossing(const Piece& piece, double from, double to) const
    {
        return sign_change([&](double t) { return piece.value(t) - parabola_.value(piece.x(t)); }, from, to);
    }

    Parabola parabola_;
    double asked_for_;
    Station before_{};
    Meetings found_;
};

/// Where a curve that falls from point to point has the ordinate y, which lies between its last and its first.
template <class Points>
double abscissa_of(const Points& points, double y)
{
    std::size_t low = 0;
    std::size_t high = points.size() - 1;
    while (high - low > 1) {
        const std::size_t middle = low + (high - low) / 2;
        if (points.y(middle) >= y)
            low = middle;
        else
            high = middle;
    }
    if (points.y(low) == y) return points.x(low);
    if (points.y(high) == y) return points.x(high);
    const Piece piece = piece_at(points, low);
    return piece.x(sign_change([&](double t) { return piece.value(t) - y; }, 0, 1));
}

template <class Points>
Meetings meetings(const Points& points, Parabola parabola, double asked_for = 0)
{
    MeetingFinder finder(parabola, asked_for);
    finder.start(points.x(0), points.y(0));
    for (std::size_t i = 0; i + 1 < points.size(); ++i) finder.walk(piece_at(points, i));
    return finder.found();
}

}  // namespace cutwater::formulas::curves

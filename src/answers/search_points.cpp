#include "answers/search_points.hpp"

#include "elementary/elementary.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace cutwater {
namespace {

/// 1e-9 … 1e12.
const std::vector<double>& ladder()
{
    static const std::vector<double> rungs = [] {
        std::vector<double> made;
        for (int e = -9; e < -2; ++e) made.push_back(elementary::exp10(e));
        for (int q = -8; q < 24; ++q) made.push_back(elementary::exp10(q / 4.0));
        for (int e = 6; e <= 12; ++e) made.push_back(elementary::exp10(e));
        return made;
    }();
    return rungs;
}

constexpr int even_points = 24;

void spread_evenly(const Interval& i, std::vector<double>& to)
{
    for (int k = 1; k < even_points; ++k) to.push_back(i.low + (i.high - i.low) * k / even_points);
}

/// Steps of growing length away from an end.
void climb(double from, double sign, std::vector<double>& to)
{
    for (const double rung : ladder()) to.push_back(from + sign * rung);
}

}  // namespace

std::vector<double> search_points(const Interval& where, bool whole)
{
    std::vector<double> points;
    points.reserve(128);
    const bool low = std::isfinite(where.low);
    const bool high = std::isfinite(where.high);
    if (low && !where.low_open) points.push_back(where.low);
    if (low && where.low_open && where.low != 0) points.push_back(std::nextafter(where.low, HUGE_VAL));
    if (low && high) {
        const bool from_zero = where.low >= 0 && (where.low == 0 || where.high / where.low > 100);
        if (from_zero)
            for (const double rung : {1e-9, 1e-7, 1e-5, 1e-4, 3e-4, 1e-3, 3e-3, 0.01, 0.02})
                points.push_back(rung * where.high);
        if (from_zero)  // what has a unit is mostly a number of an ordinary size in it
            for (const double rung : ladder())
                if (rung >= 0.01 && rung < where.high / even_points) points.push_back(rung);
        if (where.low < 0 && where.high > 0) points.push_back(0);
        spread_evenly(where, points);
    } else if (low) {
        climb(where.low, 1, points);
    } else if (high) {
        climb(where.high, -1, points);
    } else {
        std::for_each(ladder().rbegin(), ladder().rend(), [&](double rung) { points.push_back(-rung); });
        points.push_back(0);
        climb(0, 1, points);
    }
    if (high && !where.high_open) points.push_back(where.high);
    if (high && where.high_open && where.high != 0) points.push_back(std::nextafter(where.high, -HUGE_VAL));
    if (whole)
        for (double& x : points) x = std::round(x);
    std::erase_if(points, [&](double x) { return !where.contains(x); });
    if (!std::is_sorted(points.begin(), points.end())) std::sort(points.begin(), points.end());
    points.erase(std::unique(points.begin(), points.end()), points.end());
    return points;
}

std::vector<double> towards_zero(double x)
{
    std::vector<double> points;
    for (double part = 1e-6; std::abs(x) * part > std::numeric_limits<double>::min(); part = part * part * part * part)
        points.push_back(x * part);
    points.push_back(std::copysign(std::numeric_limits<double>::min(), x));
    return points;
}

std::vector<double> beside_ends(const Interval& where)
{
    std::vector<double> points;
    const double width = where.high - where.low;
    const auto beside = [&](double end, double sign) {
        if (!std::isfinite(end)) return;
        for (int e = -2; e >= -12; --e)
            points.push_back(end + sign * (std::isfinite(width) ? width : 1) * elementary::exp10(e));
    };
    beside(where.low, 1);
    beside(where.high, -1);
    std::erase_if(points, [&](double x) { return !where.contains(x); });
    std::sort(points.begin(), points.end());
    return points;
}

double point_between(double a, double b) noexcept
{
    if (a > 0 && b > 8 * a) return std::sqrt(a) * std::sqrt(b);
    if (b < 0 && a < 8 * b) return -std::sqrt(-a) * std::sqrt(-b);
    return a + (b - a) / 2;
}

}  // namespace cutwater

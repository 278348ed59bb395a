// What records of rolling bearings share.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

#include <array>
#include <cstddef>
#include <numbers>

namespace cutwater::formulas {

enum class BearingSet { single, pair };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::BearingSet>{"single", "pair"};

}  // namespace cutwater

namespace cutwater::formulas::bearings {

inline constexpr double pi = std::numbers::pi;
inline constexpr Interval load_n = between(0, 1e7);
inline constexpr Interval rating_n = between(100, 1e8);  // kilonewtons given as bare numbers are refused
inline constexpr Interval diameter_mm = between(1, 5000);

constexpr auto radial_load()
{
    return input("radial_load", "F_r", units::newton, load_n, "radial load on the bearing");
}
constexpr auto axial_load()
{
    return input("axial_load", "F_a", units::newton, load_n, "axial load on the bearing, as a magnitude");
}
constexpr auto dynamic_rating()
{
    return input("dynamic_rating", "C", units::newton, rating_n, "basic dynamic load rating by the bearing's maker");
}
constexpr auto static_rating()
{
    return input("static_rating", "C_0", units::newton, rating_n, "basic static load rating by the bearing's maker");
}
constexpr auto equivalent_load()
{
    return input("equivalent_load", "P", units::newton, above_up_to(0, 1e7), "dynamic equivalent load");
}
constexpr auto speed() { return input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"); }
constexpr auto pitch_diameter()
{
    return input("pitch_diameter", "D_pw", units::mm, diameter_mm,
                 "pitch diameter of the rolling elements; half the sum of bore and outside diameter will do");
}
constexpr auto bearing_set()
{
    return choice<BearingSet>("mounting", "mounting",
                              "single: one row, or rows in tandem; pair: double-row, or two single rows back to back "
                              "or face to face, counted as one bearing");
}

/// A value of a printed table, linear between its lines; the ends are kept outside of it.
template <std::size_t N, class Value>
double interpolated(const std::array<double, N>& at, Value value, double x)
{
    // The line that holds x is chosen without a branch, and interpolated on once.
    struct {
        double from, to, low, high;
    } line{at[0], at[1], value(0), value(1)};
    [&]<std::size_t... I>(std::index_sequence<I...>) {
        const auto take = [&](bool beyond, std::size_t i) {
            line.from = elementary::select(beyond, at[i], line.from);
            line.to = elementary::select(beyond, at[i + 1], line.to);
            line.low = elementary::select(beyond, value(i), line.low);
            line.high = elementary::select(beyond, value(i + 1), line.high);
        };
        (take(x > at[I + 1], I + 1), ...);
    }(std::make_index_sequence<N - 2>());
    const double on_line = line.low + (line.high - line.low) * ((x - line.from) / (line.to - line.from));
    return elementary::select(x > at[N - 1], value(N - 1), elementary::select(x > at[0], on_line, value(0)));
}
template <std::size_t N>
double interpolated(const std::array<double, N>& at, const std::array<double, N>& values, double x)
{
    return interpolated(at, [&](std::size_t i) { return values[i]; }, x);
}

inline constexpr const char* life_guide =
    "Calculated life is what nine of ten bearings outlast in clean, well-lubricated, well-aligned running; water, "
    "dirt, pipe strain and poor fits end most pump bearings earlier. The bearing maker's figures go before it.";
inline constexpr const char* least_load =
    "A bearing that is loaded too little skids: keep the least load that its maker asks for.";

}  // namespace cutwater::formulas::bearings

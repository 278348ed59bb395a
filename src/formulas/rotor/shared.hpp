// Inputs and cautions that records of a rotor share.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

#include <numbers>

namespace cutwater::formulas {

/// Whether a figure keeps its limit.
enum class Kept { within, beyond };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::Kept>{"within", "beyond"};

}  // namespace cutwater

namespace cutwater::formulas::rotor {

inline constexpr double pi = std::numbers::pi;

inline constexpr Interval size_mm = between(1, 5000);  // 0.2 meant as metres is refused
inline constexpr Interval length_mm = above_up_to(0, 20000);
inline constexpr Interval clearance_mm = between(0, 20);
inline constexpr Interval head_m = between(0, 5000);
inline constexpr Interval force_n = between(-1e7, 1e7);
inline constexpr Interval modulus_gpa = between(10, 1000);  // 205 000 meant as N/mm2 is refused

constexpr Area circle(Length diameter) { return pi / 4 * diameter * diameter; }

constexpr auto density() { return input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"); }
constexpr auto speed() { return input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"); }
constexpr auto impeller_diameter()
{
    return input("impeller_diameter", "D_2", units::mm, size_mm, "outside diameter of the impeller, as trimmed");
}

inline constexpr const char* release =
    "A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's limits and "
    "a licensed engineer's judgement go before this figure.";
inline constexpr const char* vibrating =
    "Never reach into a guard or touch a coupling while the machine can turn or start: isolate and lock it first.";

}  // namespace cutwater::formulas::rotor

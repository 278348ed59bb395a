// Permitted intervals that several families share: wide enough for any plant, narrow enough to catch a wrong unit.
#pragma once

#include "catalogue/interval.hpp"

namespace cutwater::formulas::limits {

inline constexpr Interval bore_mm = between(1, 10000);                    // 0.15 meant as metres is refused
inline constexpr Interval density_kgm3 = between(50, 25000);              // a relative density is refused
inline constexpr Interval kinematic_viscosity_mm2s = between(0.01, 1e6);  // 1e-6 meant as m2/s is refused
inline constexpr Interval speed_rpm = above_up_to(0, 100000);
inline constexpr Interval gauge_barg = above_up_to(-1.1, 1000);  // no vacuum is deeper than the highest barometer
inline constexpr Interval suction_barg = above_up_to(-1.1, 500);
inline constexpr Interval surface_bara = above_up_to(0, 500);  // 101325 meant as Pa and 1013 meant as mbar are refused
inline constexpr Interval vapour_bara = between(0,
                                                300);  // above the critical pressure of whatever is pumped as a liquid
inline constexpr Interval ambient_bara = between(0.3, 2);  // from the highest mountain to the deepest mine

}  // namespace cutwater::formulas::limits

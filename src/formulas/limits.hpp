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

// Heads of liquid and NPSH: several times what any pump gives; 101325 meant as Pa is refused.
inline constexpr double most_head_m = 20000;
inline constexpr Interval head_m = between(-most_head_m, most_head_m);
inline constexpr Interval head_from_0_m = between(0, most_head_m);
inline constexpr Interval head_above_0_m = above_up_to(0, most_head_m);
inline constexpr Interval resistance_h2m5 = between(0, 1e9);  // a litre an hour already loses a kilometre

}  // namespace cutwater::formulas::limits

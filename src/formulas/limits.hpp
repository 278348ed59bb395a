// Permitted intervals that several families share: wide enough for any plant, narrow enough to catch a wrong unit.
#pragma once

#include "catalogue/interval.hpp"

namespace cutwater::formulas::limits {

inline constexpr Interval bore_mm = between(1, 10000);              // 0.15 meant as metres is refused
inline constexpr Interval density_kgm3 = between(50, 25000);        // a relative density is refused
inline constexpr Interval kinematic_viscosity_mm2s = between(0.01, 1e6);  // 1e-6 meant as m2/s is refused
inline constexpr Interval speed_rpm = above_up_to(0, 100000);
inline constexpr Interval gauge_barg = above(-1.1);  // no vacuum is deeper than the highest barometer

}  // namespace cutwater::formulas::limits

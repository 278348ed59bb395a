// The water trade's friction formula.
#pragma once

#include "formulas/system/pipe.hpp"

#include "elementary/elementary.hpp"

namespace cutwater::formulas {

/// An empirical relation; its constant is 4.727 of the US form (ft, ft3/s) turned into metres, as open network programs
/// hold it.
inline Head hazen_williams_head(Flow flow, Length bore, Length length, Ratio roughness_coefficient, Steps steps)
{
    steps("v", "Q/(pi/4 d^2)", pipe_velocity(flow, bore), units::ms);
    return 10.666829500036352 * length *
           elementary::positive_pow(units::m3s.in(flow) / roughness_coefficient.value(), 1.852) /
           elementary::positive_pow(units::metre.in(bore), 4.871);
}

inline constexpr auto hazen_williams_head_record = record<&hazen_williams_head>(
    {.name = "hazen_williams_head",
     .meaning = "Head lost by friction of cold water in a pipe by the formula of Hazen and Williams",
     .also = "Hazen-Williams|C factor|fire main friction|water main loss",
     .inputs =
         {input("flow", "Q", units::m3h, from(0), "volume flow of water"),
          input("bore", "d", units::mm, between(50, 3000), "inside diameter"),
          input("length", "L", units::metre, from(0), "length of the pipe"),
          input(
              "roughness_coefficient", "C", units::number, between(60, 160),
              "150 smooth plastic, 140 new steel or cement lining, 130 new cast iron, 100 old iron (common practice)")},
     .results = {output("friction_head", "h_f", units::metre, "head lost")},
     .equation = "h_f = 10.6668 L (Q/C)^1.852/d^4.871 with Q in m3/s, L and d in m",
     .source = "G. S. Williams and A. Hazen, Hydraulic Tables, with the constants of the open network library WNTR and "
               "EPANET (read); "
               "textbooks print 10.67 and 4.87, up to 0.3 % apart",
     .cautions =
         {"Water of about 5 to 25 degC only, turbulent, at ordinary velocities: other liquids, hot or viscous, need "
          "pipe_friction_head."},
     .sound_anywhere = true,
     .example = {"100, 150, 100, 130", "1.75388", "hand calculation, with logarithms"}},
    relation<"flow", "bore">(
        [](Flow flow, Length bore) { return units::ms.in(pipe_velocity(flow, bore)) <= 3.0 * (1 + 1e-9); },
        "the velocity must not exceed 3 m/s, the end of the formula's use"));

}  // namespace cutwater::formulas

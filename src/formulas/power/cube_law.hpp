// The cube law, answered only where it holds: on a system without static head.
#pragma once

#include "formulas/power/hydraulic.hpp"
#include "formulas/similarity/affinity.hpp"

namespace cutwater::formulas {

namespace cube_law {

inline bool ratio_in_limits(Flow flow, Flow new_flow)
{
    const double ratio = Ratio(new_flow / flow).value();
    return (ratio >= affinity::least_ratio) & (ratio <= affinity::greatest_ratio);
}

}  // namespace cube_law

inline Power cube_law_power(Power power, Flow flow, Flow new_flow, Head)
{
    const double ratio = Ratio(new_flow / flow).value();
    return power * (ratio * ratio * ratio);
}

inline constexpr auto cube_law_power_record = record<&cube_law_power>(
    {.name = "cube_law_power",
     .meaning = "Pump power at another flow by the cube law: speed control on a system that is all friction, refused "
                "where there is static head",
     .also = "affinity laws|fan law",
     .inputs = {input("power", "P", units::kW, from(0), "pump power input at the flow"),
                input("flow", "Q", units::m3h, above(0), "duty flow at that power"),
                input("new_flow", "Q'", units::m3h, above(0), "flow wanted by a change of speed"),
                input("static_head", "H_s", units::metre, any,
                      "system head at no flow: levels and the vessels' pressures; must be 0")},
     .results = {output("new_power", "P'", units::kW, "pump power input at the flow wanted")},
     .equation = "P' = P (Q'/Q)^3, where H_s = 0, so that Q'/Q = n'/n",
     .source = affinity::source,
     .cautions =
         {"Never on a system with static head: the duty moves off the similarity parabola. Control valves and "
          "equipment that hold a fixed "
          "pressure count as static head.",
          "Pump efficiency is taken as unchanged; motor and converter losses do not follow the cube and are left out."},
     .example = {"20, 100, 80, 0", "10.24", "hand calculation: 20 x 0.8^3"}},
    relation<"static_head">([](Head static_head) { return static_head == Head{}; },
                            "the cube law holds only where the system's head is all friction: against static head the "
                            "flow falls faster than the speed, the head "
                            "does not fall with its square, and the law promises savings that do not come; use "
                            "speed_control_saving or duty_profile_energy"),
    relation<"new_flow", "flow">(
        [](Flow new_flow, Flow flow) { return cube_law::ratio_in_limits(flow, new_flow); },
        "the new flow must be 0.25 to 2 times the flow: beyond that the affinity laws are not relied upon here"));

}  // namespace cutwater::formulas

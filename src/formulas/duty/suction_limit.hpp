// What the suction side allows: the greatest flow, the greatest speed, and the NPSH3 to be expected of a pump.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/curves/meeting.hpp"
#include "formulas/curves/value.hpp"
#include "formulas/similarity/specific_speed.hpp"
#include "formulas/system/suction.hpp"
#include "formulas/limits.hpp"

#include <cmath>
#include <tuple>

namespace cutwater::formulas {

namespace duty {

constexpr auto npsh_at_rest()
{
    return input("npsh_at_rest", "NPSHA_0", units::metre, limits::head_m,
                 "net positive suction head available at no flow: npsh_available without friction");
}
constexpr auto suction_resistance()
{
    return input("suction_resistance", "k_s", units::h2m5, limits::resistance_h2m5,
                 "losses of the suction line over the square of the flow, its entry included");
}
constexpr auto npsh3_values()
{
    return series("npsh3_values", "NPSH3_i", units::metre, limits::head_from_0_m, "NPSH3 of the curve's points", 2);
}

/// Why no single flow parts what the suction allows from what it does not.
inline NoValue no_suction_limit(const curves::Meetings& found, Flow last_flow)
{
    const auto flow = [](double x) { return number_in(Flow::from_value(x), units::m3h); };
    const auto head = [](double y) { return number_in(Head::from_value(std::abs(y)), units::metre); };
    if (found.along)
        return {CUTWATER_SEVERAL_ANSWERS,
                "npsh3_values",
                "from {0} to {1} NPSH available is just NPSH3 with its margin: what lies beyond cannot be told by one "
                "flow",
                {flow(found.along_from), flow(found.along_to)}};
    if (found.count < 2 && found.first_gap < 0)  // NPSH available is above at the end too, and may touch in between
        return {CUTWATER_NO_ANSWER,
                "flows",
                "up to the curve's last point, {0}, where {1} is left above NPSH3 and the margin, the suction sets no "
                "limit; give a curve that "
                "reaches farther if more flow is wanted",
                {number_in(last_flow, units::m3h), head(found.last_gap)}};
    if (found.count == 0)
        return {CUTWATER_NO_ANSWER,
                "npsh_at_rest",
                "the suction suffices at no flow of the curve; nearest at {0}, where {1} is missing",
                {flow(found.nearest_at), head(found.nearest_gap)}};
    if (found.count == 1 && found.last_gap > 0)
        return {CUTWATER_NO_ANSWER,
                "npsh3_values",
                "the suction just suffices at {0}, and at no other flow: NPSH3 is too high below and above",
                {flow(found.at[0])}};
    if (found.count == 1)
        return {
            CUTWATER_NO_ANSWER,
            "npsh3_values",
            "the suction suffices from {0} on only: NPSH3 is too high below, and no greatest flow lies on the curve",
            {flow(found.at[0])}};
    return {CUTWATER_SEVERAL_ANSWERS,
            "npsh3_values",
            "NPSH available and NPSH3 with its margin are equal more than once, first at {0} and at {1}: between "
            "such flows the suction suffices on one side only",
            {flow(found.at[0]), flow(found.at[1])}};
}

constexpr auto suction_specific_speed()
{
    return input(
        "suction_specific_speed", "n_ss", units::specific_speed, between(50, 1000),
        "suction specific speed at best efficiency in 1/min, m3/s, m, per eye, of the pump maker; unknown, the "
        "lower is the safe side: ordinary pumps have 150 to 200");
}
inline constexpr const char* ceiling =
    "Common practice looks for at most about 213 (11 000 in US units): a pump of "
    "more draws deeper near best efficiency and has a narrower "
    "range of steady flow. Where the pump is not known 213 flatters: at 165 (8500 in "
    "US units, common practice) NPSH3 is 1.4 times, the permitted speed 0.77 times "
    "as much.";
inline constexpr const char* by_tests =
    "An estimate for best efficiency flow: NPSH3 of a pump is what its maker tested.";

}  // namespace duty

inline Outcome<std::tuple<Flow, Head>> greatest_flow_by_suction(Series<Flow> flows, Series<Head> npsh3_values,
                                                                Head npsh_at_rest, SystemResistance suction_resistance,
                                                                Head margin)
{
    const curves::Parabola offered{.base = (npsh_at_rest - margin).value(), .factor = -suction_resistance.value()};
    const curves::Meetings found = curves::meetings(curves::Knots<Flow, Head>(flows, npsh3_values), offered);
    const bool only_limit = found.count == 1 && !found.along && found.first_gap <= 0 && found.last_gap >= 0;
    if (!only_limit) return duty::no_suction_limit(found, flows.back());
    const double flow = found.at[0];
    return std::tuple(Flow::from_value(flow), Head::from_value(offered.value(flow)) + margin);
}

inline constexpr auto greatest_flow_by_suction_record = record<&greatest_flow_by_suction>(
    {.name = "greatest_flow_by_suction",
     .meaning = "Greatest flow at which NPSH available still covers NPSH3 and a margin",
     .also = "NPSHA meets NPSHR|cavitation limit|run-out limit|maximum flow by NPSH|suction limit",
     .inputs = {curves::flows(), duty::npsh3_values(), duty::npsh_at_rest(), duty::suction_resistance(),
                input("margin", "m", units::metre, limits::head_from_0_m, "NPSH to be left above NPSH3")},
     .results = {output("flow", "Q_max", units::m3h, "greatest flow"),
                 output("npsh", "NPSHA", units::metre, "NPSH available there")},
     .equation = "NPSHA_0 - k_s Q^2 = NPSH3(Q) + m; all meetings over the curve's range are looked for",
     .source = "ISO 17769-1:2012, NPSH available and NPSH3 (from memory of it); the curve between its points as in "
               "curve_npsh3",
     .cautions = {caution::npsh_margin, caution::inlet_vapour_pressure, suction::datum,
                  "The level falls and the liquid warms while plant runs: take the worst of both.",
                  caution::hot_or_toxic},
     .example = {"[0, 50, 100], [2, 3, 6], 8, 0.0001, 1", "100, 7", "hand calculation: 8 - 0.0001 x 100^2 = 6 + 1"}},
    pairs::equal_length<"npsh3_values", "flows">());

inline RotationalSpeed greatest_speed_by_suction(Flow flow, Head npsh3, SpecificSpeed suction_specific_speed,
                                                 Count eyes)
{
    const double per_minute = suction_specific_speed.value * shape::three_quarters(units::metre.in(npsh3)) /
                              std::sqrt(units::m3s.in(flow) / eyes.value);
    return per_minute * units::rpm;
}

inline constexpr Record<&greatest_speed_by_suction> greatest_speed_by_suction_record{
    .name = "greatest_speed_by_suction",
    .meaning = "Greatest speed at which a pump of a given suction specific speed keeps its NPSH3 within what there is",
    .also = "maximum speed by NPSH|suction specific speed limit|how fast may it run",
    .inputs = {shape::flow(),
               input("npsh3", "NPSH3", units::metre, limits::head_above_0_m,
                     "greatest NPSH3 permitted: NPSH available less the margin"),
               duty::suction_specific_speed(), shape::eyes()},
    .results = {output("speed", "n_max", units::rpm, "greatest speed of rotation")},
    .equation = "n = n_ss NPSH3^(3/4)/sqrt(Q/i); n in 1/min, Q in m3/s, NPSH3 in m",
    .source = "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read), solved for "
              "the speed",
    .cautions = {duty::ceiling, duty::by_tests, caution::npsh_margin},
    .example = {"100, 3.5, 188.884, 1", "2900", "hand calculation: 188.884 x 2.55889/0.166667"}};

inline Head npsh3_expected(RotationalSpeed speed, Flow flow, SpecificSpeed suction_specific_speed, Count eyes)
{
    const double ratio = units::rpm.in(speed)*std::sqrt(units::m3s.in(flow) / eyes.value) /
                         suction_specific_speed.value;
    return elementary::positive_pow(ratio, 4.0 / 3.0) * units::metre;
}

inline constexpr Record<&npsh3_expected> npsh3_expected_record{
    .name = "npsh3_expected",
    .meaning = "NPSH3 to be expected of a pump of a given suction specific speed",
    .also = "NPSHR estimate|NPSH required estimate|before the pump is chosen",
    .inputs = {shape::speed(), shape::flow(), duty::suction_specific_speed(), shape::eyes()},
    .results = {output("npsh3", "NPSH3", units::metre, "NPSH3 to be expected at best efficiency flow")},
    .equation = "NPSH3 = (n sqrt(Q/i)/n_ss)^(4/3); n in 1/min, Q in m3/s, NPSH3 in m",
    .source =
        "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read), solved for NPSH3",
    .cautions = {duty::ceiling, duty::by_tests, caution::npsh_margin},
    .sound_anywhere = true,
    .example = {"2900, 100, 188.884, 1", "3.5", "hand calculation: (2900 x 0.166667/188.884)^(4/3)"}};

}  // namespace cutwater::formulas

// The duty: where a pump's curve meets the system's.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/curves/meeting.hpp"
#include "formulas/curves/value.hpp"

namespace cutwater::formulas {

namespace curves {

/// Why a pump curve and a system curve have no duty, or more than one.
inline NoValue no_duty(const Meetings& found, double first_flow, double last_flow)
{
    const auto flow = [](double x) { return number_in(Flow::from_value(x), units::m3h); };
    const auto head = [](double y) { return number_in(Head::from_value(std::abs(y)), units::metre); };
    if (found.along)
        return {CUTWATER_SEVERAL_ANSWERS,
                "heads",
                "the pump curve and the system curve lie on each other from {0} to {1}: any flow between is a duty",
                {flow(found.along_from), flow(found.along_to)}};
    if (found.count == 2)
        return {CUTWATER_SEVERAL_ANSWERS,
                "heads",
                "the pump curve meets the system curve twice, at {0} and at {1}: where it rises through the system "
                "curve no flow holds, and the pump may "
                "hunt or fall back to closed valve",
                {flow(found.at[0]), flow(found.at[1])}};
    if (found.count > 2)
        return {CUTWATER_SEVERAL_ANSWERS,
                "heads",
                "the pump curve meets the system curve several times, first at {0}, {1} and {2}: no single duty can be "
                "told, and where it rises through "
                "the system curve no flow holds",
                {flow(found.at[0]), flow(found.at[1]), flow(found.at[2])}};
    if (found.last_gap > 0)
        return {CUTWATER_NO_ANSWER,
                "flows",
                "the curve is too short: at its last point, {0}, the pump still gives {1} more than the system takes, "
                "so they meet beyond it",
                {flow(last_flow), head(found.last_gap)}};
    if (first_flow > 0 && found.nearest_at == first_flow)
        return {CUTWATER_NO_ANSWER,
                "flows",
                "the pump curve lies below the system curve and comes nearest at its first point, {0}, where {1} is "
                "missing: the pump is too "
                "small, or they meet below that point",
                {flow(first_flow), head(found.nearest_gap)}};
    return {
        CUTWATER_NO_ANSWER,
        "heads",
        "the pump is too small: its curve lies below the system curve everywhere; nearest at {0}, where {1} is missing",
        {flow(found.nearest_at), head(found.nearest_gap)}};
}

/// The one flow at which pump and system agree.
inline Outcome<Flow> duty(const Series<Flow>& flows, const Series<Head>& heads, Head static_head,
                          SystemResistance resistance)
{
    const Knots<Flow, Head> knots(flows, heads);
    const Meetings found = meetings(knots, {static_head.value(), resistance.value()});
    if (found.count != 1 || found.along) return no_duty(found, knots.first(), knots.last());
    return Flow::from_value(found.at[0]);
}

inline constexpr const char* duty_equation =
    "H_pump(Q) = H_s + k Q^2; all meetings over the curve's range are looked for";
inline constexpr const char* duty_source =
    "definition of the duty point, common practice; the pump curve between its points as in curve_head";
inline constexpr const char* drooping = "A curve that droops towards closed valve may meet a flat system curve twice, "
                                        "one with a dip three times, and pumps in parallel may hunt: see "
                                        "curve_is_stable.";
inline constexpr const char* same_liquid = "Curve and system must belong to the same liquid: a pump's curve for water "
                                           "does not hold for a viscous one, see curve_viscous.";

}  // namespace curves

inline Outcome<Flow> duty_flow(Series<Flow> flows, Series<Head> heads, Head static_head, SystemResistance resistance)
{
    return curves::duty(flows, heads, static_head, resistance);
}

inline constexpr auto duty_flow_record = record<&duty_flow>(
    {.name = "duty_flow",
     .meaning = "Flow at which the pump's curve meets the system's",
     .also = "duty point|operating point|where does it run|run-out|runout",
     .inputs = {curves::pump_flows(), curves::pump_heads(),
                curves::static_head("head of the system at no flow; negative when the system flows by itself"),
                curves::resistance()},
     .results = {output("duty_flow", "Q", units::m3h, "flow through pump and system")},
     .equation = curves::duty_equation,
     .source = curves::duty_source,
     .cautions = {curves::drooping, curves::same_liquid, caution::guide_only},
     .example = {"[0, 50, 100], [40, 38, 30], 20, 0.001", "100",
                 "hand calculation: 20 + 0.001 x 100^2 = 30, the last point"}},
    pairs::equal_length<"heads", "flows">());

inline Outcome<Head> duty_head(Series<Flow> flows, Series<Head> heads, Head static_head, SystemResistance resistance)
{
    const Outcome<Flow> flow = curves::duty(flows, heads, static_head, resistance);
    if (!flow) return flow.why();
    return Head::from_value(curves::value_at(curves::Knots<Flow, Head>(flows, heads), flow->value()));
}

inline constexpr auto duty_head_record = record<&duty_head>(
    {.name = "duty_head",
     .meaning = "Head at which the pump's curve meets the system's",
     .also = "duty point|operating point|where does it run",
     .inputs = {curves::pump_flows(), curves::pump_heads(),
                curves::static_head("head of the system at no flow; negative when the system flows by itself"),
                curves::resistance()},
     .results = {output("duty_head", "H", units::metre, "head of pump and system there")},
     .equation = curves::duty_equation,
     .source = curves::duty_source,
     .cautions = {curves::drooping, curves::same_liquid, caution::guide_only},
     .example = {"[0, 50, 100], [40, 38, 30], 20, 0.001", "30",
                 "hand calculation: 20 + 0.001 x 100^2 = 30, the last point"}},
    pairs::equal_length<"heads", "flows">());

}  // namespace cutwater::formulas

// The speed or the trim for a duty: the similarity line through the duty meets the pump's curve, and the ratio of flows
// there gives the ratio of speeds or diameters. The ratio of heads at the duty's own flow would be wrong.
#pragma once

#include "formulas/curves/meeting.hpp"
#include "formulas/curves/scaled.hpp"
#include "formulas/similarity/small_trim.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas {

namespace curves {

/// The flow at which the similarity line through a duty meets the curve.
inline Outcome<Flow> similar_flow(const Series<Flow>& flows, const Series<Head>& heads, Flow duty_flow, Head duty_head,
                                  bool straight)
{
    const Knots<Flow, Head> knots(flows, heads);
    const double slope = duty_head.value() / duty_flow.value();
    const Meetings found = straight ? meetings(knots, {.linear = slope})
                                    : meetings(knots, {.factor = slope / duty_flow.value()});
    const auto flow = [](double x) { return number_in(Flow::from_value(x), units::m3h); };
    if (found.count == 1 && !found.along) return Flow::from_value(found.at[0]);
    if (found.along)
        return NoValue{CUTWATER_SEVERAL_ANSWERS,
                       "heads",
                       "the similarity line through the duty lies on the curve from {0} to {1}",
                       {flow(found.along_from), flow(found.along_to)}};
    if (found.count > 1)
        return NoValue{CUTWATER_SEVERAL_ANSWERS,
                       "heads",
                       "the similarity line through the duty meets the curve more than once, at {0} and at {1}",
                       {flow(found.at[0]), flow(found.at[1])}};
    if (found.last_gap > 0)
        return NoValue{
            CUTWATER_NO_ANSWER,
            "flows",
            "the curve is too short: the similarity line through the duty meets it beyond its last point, {0}",
            {flow(knots.last())}};
    return NoValue{CUTWATER_NO_ANSWER,
                   "flows",
                   "the similarity line through the duty meets the curve below its first point, {0}, if at all: give "
                   "the curve from a smaller flow on",
                   {flow(knots.first())}};
}

inline constexpr const char* larger_first =
    "Metal does not grow back: cut to the larger of the two laws' diameters first, test, and cut again. On a falling "
    "curve the line gives the larger; curve_at_trim goes through the duty when it is given the same law.";
inline constexpr const char* not_the_head_ratio =
    "The root of the ratio of heads at the duty's flow is not the answer: the similar point lies at another flow.";

}  // namespace curves

inline Outcome<RotationalSpeed> speed_for_duty(Series<Flow> flows, Series<Head> heads, RotationalSpeed speed,
                                               Flow duty_flow, Head duty_head, Steps steps)
{
    const auto similar = curves::similar_flow(flows, heads, duty_flow, duty_head, false);
    if (!similar) return similar.why();
    const Ratio ratio = duty_flow / *similar;
    steps("Q_x", "flow at which H = H_d (Q/Q_d)^2 meets the curve", *similar, units::m3h);
    steps("n'/n", "Q_d/Q_x", ratio, units::number);
    if (ratio.value() < affinity::least_ratio * (1 - 1e-9) || ratio.value() > affinity::greatest_ratio * (1 + 1e-9))
        return NoValue{CUTWATER_NO_ANSWER,
                       "duty_flow",
                       "the speed would have to be {0} times the curve's; the affinity laws are relied upon from 0.25 "
                       "to 2 times only",
                       {{ratio.value(), ""}}};
    return speed * ratio;
}

inline constexpr auto speed_for_duty_record = record<&speed_for_duty>(
    {.name = "speed_for_duty",
     .meaning = "Speed at which a pump gives a duty",
     .also = "slow it down|VFD speed|reduce speed|flow too large|flow too small|not enough flow|speed it up",
     .inputs = {curves::flows(), curves::heads(),
                input("speed", "n", units::rpm, limits::speed_rpm, "speed of that curve"),
                input("duty_flow", "Q_d", units::m3h, above(0), "flow wanted"),
                input("duty_head", "H_d", units::metre, limits::head_above_0_m, "head wanted")},
     .results = {output("new_speed", "n'", units::rpm, "speed at which the pump's curve goes through the duty")},
     .equation = "n' = n Q_d/Q_x; Q_x is where H = H_d (Q/Q_d)^2 meets the curve",
     .source = affinity::source,
     .cautions = {curves::not_the_head_ratio, caution::affinity, affinity::standard_range,
                  "Above the curve's own speed: never exceed the pump maker's greatest speed, power and pressure."},
     .example = {"[0, 50, 100], [40, 38, 30], 2900, 80, 19.2", "2320",
                 "hand calculation: the parabola meets the point 100 m3/h, 30 m"}},
    pairs::equal_length<"heads", "flows">());

inline Outcome<Length> trim_for_duty(Series<Flow> flows, Series<Head> heads, Length diameter, Flow duty_flow,
                                     Head duty_head, TrimLaw law, Steps steps)
{
    const auto similar = curves::similar_flow(flows, heads, duty_flow, duty_head, law == TrimLaw::line);
    if (!similar) return similar.why();
    const Ratio flow_ratio = duty_flow / *similar;
    const double ratio = law == TrimLaw::line ? std::sqrt(flow_ratio.value()) : flow_ratio.value();
    steps("Q_x", "flow at which the similarity line meets the curve", *similar, units::m3h);
    steps("D'/D", "Q_d/Q_x, its root for the line", Ratio(ratio), units::number);
    if (ratio > 1 + 1e-12)
        return NoValue{
            CUTWATER_NO_ANSWER,
            "duty_head",
            "the duty lies above the curve at full diameter: the impeller would have to be {0} times as large",
            {{ratio, ""}}};
    if (ratio < curves::least_cut)
        return NoValue{CUTWATER_NO_ANSWER,
                       "duty_head",
                       "the impeller would have to be cut to {0} of its diameter; the trim laws are relied upon down "
                       "to 0.7 only: take a smaller pump or a lower speed",
                       {{ratio, ""}}};
    return diameter * ratio;
}

inline constexpr auto trim_for_duty_record = record<&trim_for_duty>(
    {.name = "trim_for_duty",
     .meaning = "Impeller diameter at which a pump gives a duty",
     .also = "impeller trim|cut impeller|what diameter|flow too large|impeller turn-down",
     .inputs = {curves::flows("flows of the curve's points at full diameter"),
                curves::heads("heads of the curve's points at full diameter"), trim::diameter(),
                input("duty_flow", "Q_d", units::m3h, above(0), "flow wanted"),
                input("duty_head", "H_d", units::metre, limits::head_above_0_m, "head wanted"),
                choice<TrimLaw>("trim_law", "law",
                                "line, for the exponents (2, 2, 4) of flow, head and power, which "
                                "cuts the less; parabola, for (1, 2, 3)",
                                TrimLaw::line)},
     .results = {output("trimmed_diameter", "D'", units::mm, "diameter after the cut, by the trim law")},
     .equation = "D' = D Q_d/Q_x, where H = H_d (Q/Q_d)^2 meets the curve at Q_x; for the line D' = D sqrt(Q_d/Q_x), H "
                 "= H_d Q/Q_d",
     .source = trim::source,
     .cautions = {curves::larger_first, curves::not_the_head_ratio, caution::trim, trim::two_sets, trim::efficiency,
                  trim::npsh_after},
     .example = {"[0, 50, 100], [40, 38, 30], 250, 80, 24", "223.607",
                 "hand calculation: the line meets the point 100 m3/h, 30 m; 250 sqrt(0.8)"}},
    pairs::equal_length<"heads", "flows">());

inline Outcome<Length> small_trim_for_duty(Series<Flow> flows, Series<Head> heads, Length diameter, Length inlet,
                                           Flow duty_flow, Head duty_head, Steps steps)
{
    const auto similar = curves::similar_flow(flows, heads, duty_flow, duty_head, false);
    if (!similar) return similar.why();
    const Ratio r = duty_flow / *similar;
    steps("Q_x", "flow at which H = H_d (Q/Q_d)^2 meets the curve", *similar, units::m3h);
    steps("R", "Q_d/Q_x", r, units::number);
    if (r.value() > 1 + 1e-12)
        return NoValue{CUTWATER_NO_ANSWER,
                       "duty_head",
                       "the duty lies above the curve at full diameter: its flow is "
                       "{0} times that of the similar point",
                       {{r.value(), ""}}};
    const Length trimmed = square_root(inlet * inlet + r * r * (diameter * diameter - inlet * inlet));
    if (trimmed < small_trim::least_cut * diameter)
        return NoValue{CUTWATER_NO_ANSWER,
                       "duty_head",
                       "the impeller would have to be cut to {0} of its diameter; the "
                       "relation is for cuts of up to 5 %: see trim_for_duty",
                       {{Ratio(trimmed / diameter).value(), ""}}};
    return trimmed;
}

inline constexpr auto small_trim_for_duty_record = record<&small_trim_for_duty>(
    {.name = "small_trim_for_duty",
     .meaning = "Impeller diameter at which a pump gives a duty a little below its curve, by ISO 9906's relation for "
                "cuts of up to 5 %",
     .also = "impeller trim|impeller turn-down",
     .inputs = {curves::flows("flows of the curve's points at full diameter, as tested"),
                curves::heads("heads of the curve's points at full diameter, as tested"), trim::diameter(),
                small_trim::inlet_diameter(), input("duty_flow", "Q_d", units::m3h, above(0), "flow wanted"),
                input("duty_head", "H_d", units::metre, limits::head_above_0_m, "head wanted")},
     .results = {output("trimmed_diameter", "D'", units::mm, "diameter after the cut")},
     .equation = "D' = sqrt(D_1^2 + R^2 (D^2 - D_1^2)), R = Q_d/Q_x, where H = H_d (Q/Q_d)^2 meets the curve at Q_x",
     .source = small_trim::source,
     .cautions = {small_trim::limits_of_use, "Metal does not grow back: leave a little, test, and cut again.",
                  trim::npsh_after},
     .example = {"[0, 50, 100], [40, 38, 30], 250, 120, 95, 27.075", "240.438",
                 "hand calculation: the parabola meets 100 m3/h, 30 m; R = 0.95"}},
    pairs::equal_length<"heads", "flows">(),
    relation<"inlet_diameter", "diameter">([](Length inlet, Length d) { return inlet < d; },
                                           "the mean inlet diameter must be less than the full diameter"));

}  // namespace cutwater::formulas

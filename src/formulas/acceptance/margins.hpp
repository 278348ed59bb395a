// How far a measured value lies from what was guaranteed, and inside or outside its tolerance.
#pragma once

#include "formulas/acceptance/verdict.hpp"

namespace cutwater::formulas {

namespace acceptance {

/// A value on its limit has no margin; rounding must not make that a failure.
inline double unrounded(double margin) { return elementary::select(std::abs(margin) < 1e-12, 0, margin); }

inline double margin_between(double deviation, double low, double high)
{
    return unrounded(std::min(deviation - low, high - deviation));
}

inline double margin_of(const Tolerances& t, GuaranteedQuantity quantity, double deviation)
{
    return of_quantity(quantity, margin_between(deviation, t.flow_low, t.flow_high),
                       margin_between(deviation, t.head_low, t.head_high), unrounded(t.power - deviation),
                       unrounded(deviation - t.efficiency));
}

inline bool efficiencies_are_fractions(Ratio measured, Ratio guaranteed, GuaranteedQuantity q)
{
    return (q != GuaranteedQuantity::efficiency) | ((guaranteed.value() <= 1) & (measured.value() <= 1));
}

inline constexpr const char* margin_meaning = "distance to the nearer limit; negative when outside its tolerance";

}  // namespace acceptance

inline std::tuple<Ratio, Ratio> acceptance_margin(AcceptanceGrade grade, GuaranteedQuantity quantity, Ratio guaranteed,
                                                  Ratio measured, Power greatest, SmallPumpRule rule)
{
    const double deviation = measured.value() / guaranteed.value() - 1;
    const acceptance::Tolerances t = acceptance::tolerances(grade, greatest, rule);
    return {Ratio(deviation), Ratio(acceptance::margin_of(t, quantity, deviation))};
}

inline constexpr auto acceptance_margin_record = record<&acceptance_margin>(
    {.name = "acceptance_margin",
     .meaning = "Deviation of a measured value from the guaranteed one, and its margin in an acceptance grade",
     .also = "ISO 9906|test fell short|deviation from guarantee",
     .inputs = {acceptance::grade(), choice<GuaranteedQuantity>("quantity", "quantity", "what is guaranteed"),
                input("guaranteed_value", "G", units::number, above(0),
                      "guaranteed value in any unit; an efficiency as a fraction"),
                input("measured_value", "M", units::number, from(0),
                      "measured value in the same unit, as a verdict's function gives it"),
                acceptance::greatest_power(), acceptance::small_pump_rule()},
     .results = {output("deviation", "d", units::number, "part of the guaranteed value, -0.02 for 2 % below"),
                 output("margin", "m", units::number, acceptance::margin_meaning)},
     .equation = "d = M/G - 1; m = min(d - tau_low, tau_high - d); power: m = tau_P - d; efficiency: m = d - tau_eta",
     .source = acceptance::source,
     .cautions = {acceptance::no_second_addition, acceptance::small_rule, acceptance::contract,
                  "Flow and head need not both keep their tolerances: it is enough that the curve touches one bar of "
                  "the cross, see acceptance_verdict."},
     .example = {"\"1B\", \"head\", 50, 49, 30", "-0.02, 0.01", "hand calculation"}},
    relation<"measured_value", "guaranteed_value", "quantity">(
        &acceptance::efficiencies_are_fractions, "an efficiency, guaranteed or measured, must be a fraction, up to 1"),
    acceptance::not_too_small);

inline Outcome<std::tuple<Ratio, Ratio, Ratio, Ratio>> acceptance_margins(AcceptanceGrade grade, Flow flow, Head head,
                                                                          Series<Flow> flows, Series<Head> heads,
                                                                          Power greatest, SmallPumpRule rule,
                                                                          Steps steps)
{
    const Outcome<Head> measured = curves::read(flows, heads, flow, "guaranteed_flow", units::m3h);
    if (!measured) return measured.why();
    const acceptance::Tolerances t = acceptance::tolerances(grade, greatest, rule);
    const curves::Knots<Flow, Head> curve(flows, heads);
    const acceptance::AtHead reached = acceptance::flow_at_head(curve, flow.value(),
                                                                acceptance::level_bar(t, flow, head));
    if (!reached.reached)
        return NoValue{CUTWATER_NO_ANSWER,
                       "guaranteed_head",
                       "the measured curve has {0} nowhere, so that the flow has no margin; its head at the guaranteed "
                       "flow is {1}: acceptance_margin judges it alone",
                       {number_in(head, units::metre), number_in(*measured, units::metre)}};
    const Flow at_head = Flow::from_value(reached.flow);
    steps("H(Q_G)", "head at the guaranteed flow", *measured, units::metre);
    steps("Q(H_G)", "flow at the guaranteed head", at_head, units::m3h);
    const double head_deviation = Ratio(*measured / head).value() - 1;
    const double flow_deviation = Ratio(at_head / flow).value() - 1;
    return std::tuple(Ratio(head_deviation), Ratio(acceptance::margin_of(t, GuaranteedQuantity::head, head_deviation)),
                      Ratio(flow_deviation), Ratio(acceptance::margin_of(t, GuaranteedQuantity::flow, flow_deviation)));
}

inline constexpr auto acceptance_margins_record = record<&acceptance_margins>(
    {.name = "acceptance_margins",
     .meaning =
         "Deviations of a measured head curve from the guaranteed point, and their margins in an acceptance grade",
     .also = "ISO 9906|test fell short|deviation from guarantee",
     .inputs = {acceptance::grade(), acceptance::guaranteed_flow(), acceptance::guaranteed_head(), acceptance::flows(),
                acceptance::heads(), acceptance::greatest_power(), acceptance::small_pump_rule()},
     .results = {output("head_deviation", "d_H", units::number,
                        "of the head at the guaranteed flow, as a part of the guaranteed head"),
                 output("head_margin", "m_H", units::number, acceptance::margin_meaning),
                 output("flow_deviation", "d_Q", units::number,
                        "of the flow at the guaranteed head, as a part of the guaranteed flow"),
                 output("flow_margin", "m_Q", units::number, acceptance::margin_meaning)},
     .equation = "d_H = H(Q_G)/H_G - 1; d_Q = Q(H_G)/Q_G - 1; m = min(d - tau_low, tau_high - d); the guarantee is "
                 "kept when either margin is not negative",
     .source = acceptance::cross_source,
     .cautions = {acceptance::translate_first, acceptance::no_second_addition, acceptance::small_rule,
                  acceptance::contract},
     .example = {"\"1B\", 100, 41, [0, 25, 50, 75, 100, 125], [60, 55, 50, 45, 40, 35], 20",
                 "-0.024390, 0.0056098, -0.05, 0", "hand calculation on the straight line H = 60 - 0.2 Q"}},
    pairs::equal_length<"heads", "flows">(), acceptance::not_too_small);

}  // namespace cutwater::formulas

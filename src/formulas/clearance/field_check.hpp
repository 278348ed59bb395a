// From readings on site: how far from the curve, whether that is more than the uncertainty, and what clearance it tells
// of.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/curves/value.hpp"
#include "formulas/limits.hpp"
#include "formulas/power/hydraulic.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace cutwater::formulas {

enum class FieldVerdict { below, within, above };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<3> words_of<formulas::FieldVerdict>{"below the curve", "within uncertainty", "above the curve"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace field {

inline constexpr Interval percentages = between(0, 50);
inline constexpr const char* source = "affinity laws, and uncertainties combined as ISO 9906 and the GUM have it (from "
                                      "memory of both); the flow's uncertainty counts with the curve's slope";
inline constexpr const char* one_reading =
    "One reading may mislead: take several, with the instruments' zero checked, away from valves and bends; a wrong "
    "liquid density, speed or gauge height looks like wear.";
inline constexpr const char* not_only_wear = "A worn impeller or ring, gas, viscosity, a blocked impeller, wrong "
                                             "rotation or a bypass that passes shift a pump alike.";

constexpr auto uncertainty(const char* name, const char* symbol, const char* meaning, double usual)
{
    return input(name, symbol, units::number_percent, percentages, meaning, usual);
}

inline FieldVerdict verdict(double lost, double uncertainty)
{
    return lost > uncertainty ? FieldVerdict::below : lost < -uncertainty ? FieldVerdict::above : FieldVerdict::within;
}

inline double root_of_squares(double a, double b, double c) { return std::sqrt(a * a + b * b + c * c); }

}  // namespace field

inline Outcome<std::tuple<FieldVerdict, Head, Head, Fraction, Fraction>> field_head_check(
    Flow flow, Head head, RotationalSpeed speed, Series<Flow> flows, Series<Head> heads, RotationalSpeed curve_speed,
    Ratio flow_uncertainty, Ratio head_uncertainty, Ratio curve_tolerance, Steps steps)
{
    const Ratio n = curve_speed / speed;
    const Flow at_flow = flow * n;
    const Head translated = head * n * n;
    const Outcome<Head> expected = curves::read(flows, heads, at_flow, "flow", units::m3h);
    if (!expected) return expected.why();
    if (!(expected->value() > 0))
        return NoValue{CUTWATER_NO_ANSWER,
                       "heads",
                       "the curve has {0} at {1}: nothing to compare with",
                       {number_in(*expected, units::metre), number_in(at_flow, units::m3h)}};
    const curves::Knots<Flow, Head> knots(flows, heads);
    const double slope = curves::slope_of(
        knots, curves::snapped_to(knots.last(), curves::snapped_to(knots.first(), at_flow.value())));
    const double uncertain = field::root_of_squares(head_uncertainty.value() * translated.value(),
                                                    flow_uncertainty.value() * at_flow.value() * slope,
                                                    curve_tolerance.value() * expected->value());
    steps("Q_n", "Q n_0/n", at_flow, units::m3h);
    steps("H_n", "H (n_0/n)^2", translated, units::metre);
    steps("u", "uncertainty of the difference", Head::from_value(uncertain), units::metre);
    const Head lost = *expected - translated;
    return std::tuple(field::verdict(lost.value(), uncertain), *expected, lost,
                      Fraction{lost.value() / expected->value()}, Fraction{uncertain / expected->value()});
}

inline constexpr auto field_head_check_record = record<&field_head_check>(
    {.name = "field_head_check",
     .meaning = "How far a pump on site is from its head curve, and whether that is more than the uncertainty",
     .also = "pump performance check|field test|percent off curve|performance degradation|site test",
     .inputs = {input("flow", "Q", units::m3h, from(0), "flow measured"),
                input("head", "H", units::metre, above(0), "total head measured, as from total_head_from_gauges"),
                input("speed", "n", units::rpm, limits::speed_rpm, "speed measured"), curves::pump_flows(),
                curves::pump_heads(), input("curve_speed", "n_0", units::rpm, limits::speed_rpm, "speed of the curve"),
                field::uncertainty("flow_uncertainty", "e_Q", "of the flow measured", 3),
                field::uncertainty("head_uncertainty", "e_H", "of the head measured", 2),
                field::uncertainty("curve_tolerance", "tau", "of the curve itself: its acceptance tolerance", 3)},
     .results = {output_word<FieldVerdict>("verdict", "verdict",
                                           "below the curve, within uncertainty, or above the curve"),
                 output("expected_head", "H_0", units::metre, "head of the curve at that flow, at the curve's speed"),
                 output("head_lost", "dH", units::metre,
                        "expected less measured, at the curve's speed; negative when above"),
                 output("part_lost", "dH/H_0", units::fraction, "the same as a part"),
                 output("part_uncertain", "u/H_0", units::fraction, "uncertainty of it as a part")},
     .equation = "dH = H_0(Q n_0/n) - H (n_0/n)^2; u^2 = (e_H H (n_0/n)^2)^2 + (e_Q Q (n_0/n) dH_0/dQ)^2 + (tau H_0)^2",
     .source = field::source,
     .cautions = {field::one_reading, field::not_only_wear, "Within 20 % of the curve's speed and for a thin liquid."},
     .example = {"48, 45, 2950, [0, 25, 50, 75], [60, 57.5, 50, 37.5], 2950",
                 "\"below the curve\", 50.7490, 5.74904, 0.113284, 0.0364261", "independent computation"}},
    pairs::equal_length<"heads", "flows">(),
    relation<"speed", "curve_speed">(
        [](RotationalSpeed n, RotationalSpeed c) {
            return Ratio(n / c).value() >= 0.8 * (1 - 1e-12) && Ratio(n / c).value() <= 1.2 * (1 + 1e-12);
        },
        "it must lie within 20 % of the curve's speed"));

inline Outcome<std::tuple<FieldVerdict, Fraction, Fraction, Fraction, Fraction>> field_efficiency_check(
    Flow flow, Head head, Density density, Power electrical, Fraction motor, Series<Flow> flows,
    Series<Fraction> efficiencies, Ratio flow_uncertainty, Ratio head_uncertainty, Ratio power_uncertainty,
    Ratio curve_tolerance)
{
    const double measured = Ratio(hydraulic_power(flow, head, density) / electrical).value() / motor.value;
    if (!(measured <= 1))
        return NoValue{CUTWATER_NO_ANSWER,
                       "electrical_power",
                       "the pump's efficiency would be {0}: flow, head or power was misread",
                       {{measured, ""}}};
    const Outcome<Fraction> expected = curves::read(flows, efficiencies, flow, "flow", units::m3h);
    if (!expected) return expected.why();
    const double own = field::root_of_squares(flow_uncertainty.value(), head_uncertainty.value(),
                                              power_uncertainty.value()) *
                       measured;
    const double uncertain = field::root_of_squares(own, curve_tolerance.value() * expected->value, 0);
    const double lost = expected->value - measured;
    return std::tuple(field::verdict(lost, uncertain), Fraction{measured}, *expected,
                      Fraction{measured / expected->value}, Fraction{uncertain / expected->value});
}

inline constexpr auto field_efficiency_check_record = record<&field_efficiency_check>(
    {.name = "field_efficiency_check",
     .meaning = "Efficiency of a pump on site against its curve, and whether it differs by more than the uncertainty",
     .also = "pump efficiency check|field test|performance degradation|efficiency loss",
     .inputs = {input("flow", "Q", units::m3h, above(0), "flow measured"),
                input("head", "H", units::metre, above(0), "total head measured, as from total_head_from_gauges"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
                input("electrical_power", "P_el", units::kW, above(0), "power drawn from the mains"),
                input("motor_efficiency", "eta_M", units::fraction, above_up_to(0, 1),
                      "of motor and drive at that load"),
                curves::pump_flows(),
                series("efficiencies", "eta_i", units::fraction, above_up_to(0, 1),
                       "efficiencies of the curve's points; the first flow above 0", 2),
                field::uncertainty("flow_uncertainty", "e_Q", "of the flow measured", 3),
                field::uncertainty("head_uncertainty", "e_H", "of the head measured", 2),
                field::uncertainty("power_uncertainty", "e_P", "of the power measured and of the motor's efficiency",
                                   3),
                field::uncertainty("curve_tolerance", "tau", "of the curve itself, as a part of the efficiency", 3)},
     .results = {output_word<FieldVerdict>("verdict", "verdict",
                                           "below the curve, within uncertainty, or above the curve"),
                 output("efficiency", "eta", units::fraction, "of the pump as measured"),
                 output("expected_efficiency", "eta_0", units::fraction, "of the curve at that flow"),
                 output("efficiency_ratio", "eta/eta_0", units::fraction, "measured over expected"),
                 output("part_uncertain", "u/eta_0", units::fraction, "uncertainty of it as a part")},
     .equation = "eta = rho g Q H/(P_el eta_M); u^2 = eta^2 (e_Q^2 + e_H^2 + e_P^2) + (tau eta_0)^2",
     .source = field::source,
     .cautions = {field::one_reading, field::not_only_wear,
                  "Near the curve's speed: a few per cent of speed hardly move the efficiency at the same flow."},
     .example = {"50, 45, 998, 10.5, 0.9, [10, 30, 50, 70], [0.3, 0.6, 0.72, 0.68]",
                 "\"below the curve\", 0.647291, 0.72, 0.899015, 0.0517504", "independent computation"}},
    pairs::equal_length<"efficiencies", "flows">());

inline std::tuple<Length, Length, Length> clearance_from_head_loss(Fraction lost, Fraction uncertain, Length reference,
                                                                   Length width, Ratio slope)
{
    const auto at = [&](double part) {
        return Length::from_value(std::max(reference.value() + width.value() * part / slope.value(), 0.0));
    };
    return {at(lost.value), at(lost.value - uncertain.value), at(lost.value + uncertain.value)};
}

inline constexpr auto clearance_from_head_loss_record = record<&clearance_from_head_loss>(
    {.name = "clearance_from_head_loss",
     .meaning = "Clearance of an open impeller that a lost head tells of, with its bounds",
     .also = "estimated impeller clearance|wear from performance",
     .inputs = {input("part_lost", "x", units::fraction, between(-0.5, 0.5),
                      "part of the head lost, as from field_head_check"),
                input("part_uncertain", "u", units::fraction, between(0, 0.5),
                      "its uncertainty, as from field_head_check"),
                input("reference_clearance", "e_0", units::mm, between(0, 20),
                      "clearance at which the curve was taken"),
                input("vane_width", "b_2", units::mm, limits::bore_mm, "width of the vanes at the outlet"),
                input("head_slope", "c_H", units::number, above_up_to(0, 10),
                      "part of the head lost for each part of the vanes' width that the clearance grows; measured")},
     .results = {output("clearance", "e", units::mm, "clearance that explains the loss"),
                 output("low", "e_low", units::mm, "its lower bound, not below 0"),
                 output("high", "e_high", units::mm, "its upper bound")},
     .equation = "e = e_0 + b_2 x/c_H; bounds with x - u and x + u",
     .source = "clearance_head_ratio, solved for the clearance",
     .cautions =
         {"When it is the clearance: see it by feeler or by turning the shaft until it touches before believing it.",
          field::not_only_wear, "The slope's own scatter comes on top."},
     .example = {"0.06, 0.03, 0.4, 15, 1.5", "1, 0.7, 1.3", "hand calculation"}});

}  // namespace cutwater::formulas

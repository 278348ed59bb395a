// What a grown clearance does to head, efficiency and power.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/curves/value.hpp"
#include "formulas/limits.hpp"
#include "formulas/power/hydraulic.hpp"

#include <tuple>

namespace cutwater::formulas {

namespace clearance {

inline constexpr double least_ratio = 0.5;  // a straight line says nothing of a pump that has lost half

inline constexpr const char* slope_source =
    "straight line in e/b_2, its slope from a test of the pump: A. Engeda and M. Rautenberg, ASME J. Turbomachinery "
    "109 (1987) 545, found no slope common to five pumps "
    "(abstract read); closing 1.5 to 0.25 mm may gain as much as 10 % of efficiency: Pump Handbook, vane-tip clearance "
    "(page read)";
inline constexpr const char* measure_it =
    "Find the slope from two tests of this pump at known clearances, at the same flow and speed; a slope from another "
    "pump may be wrong by a factor of three.";

constexpr auto now() { return input("clearance", "e", units::mm, between(0, 20), "clearance at the vanes as it is"); }
constexpr auto reference()
{
    return input("reference_clearance", "e_0", units::mm, between(0, 20), "clearance at which the curve was taken");
}
constexpr auto width()
{
    return input("vane_width", "b_2", units::mm, limits::bore_mm, "width of the vanes at the outlet");
}

inline Outcome<Fraction> ratio(Length e, Length reference, Length width, Ratio slope)
{
    const double left = 1 - slope.value() * Ratio((e - reference) / width).value();
    if (!(left >= least_ratio))
        return NoValue{
            CUTWATER_NO_ANSWER,
            "clearance",
            "the line would leave {0} of the value at the reference clearance; it is relied upon down to 0.5",
            {{left, ""}}};
    return Fraction{left};
}

}  // namespace clearance

inline Outcome<Fraction> clearance_head_ratio(Length e, Length reference, Length width, Ratio slope)
{
    return clearance::ratio(e, reference, width, slope);
}

inline constexpr auto clearance_head_ratio_record = record<&clearance_head_ratio>(
    {.name = "clearance_head_ratio",
     .meaning = "Head of an open impeller at a clearance, over that at the reference clearance",
     .also = "impeller clearance head loss|front clearance|tip clearance effect",
     .inputs = {clearance::now(), clearance::reference(), clearance::width(),
                input("head_slope", "c_H", units::number, between(0, 10),
                      "part of the head lost for each part of the vanes' width that the clearance grows; measured")},
     .results = {output("head_ratio", "H/H_0", units::fraction, "at the same flow and speed")},
     .equation = "H/H_0 = 1 - c_H (e - e_0)/b_2",
     .source = clearance::slope_source,
     .cautions = {clearance::measure_it, "At one flow: a steep curve loses less flow, a flat one more.",
                  caution::guide_only},
     .sound_anywhere = true,
     .example = {"1, 0.4, 15, 1.5", "0.94", "hand calculation"}});

inline Outcome<Fraction> clearance_efficiency_ratio(Length e, Length reference, Length width, Ratio slope)
{
    return clearance::ratio(e, reference, width, slope);
}

inline constexpr auto clearance_efficiency_ratio_record = record<&clearance_efficiency_ratio>(
    {.name = "clearance_efficiency_ratio",
     .meaning = "Efficiency of an open impeller at a clearance, over that at the reference clearance",
     .also = "impeller clearance efficiency loss|front clearance|tip clearance effect",
     .inputs =
         {clearance::now(), clearance::reference(), clearance::width(),
          input("efficiency_slope", "c_eta", units::number, between(0, 10),
                "part of the efficiency lost for each part of the vanes' width that the clearance grows; measured")},
     .results = {output("efficiency_ratio", "eta/eta_0", units::fraction, "a part of the efficiency, not points")},
     .equation = "eta/eta_0 = 1 - c_eta (e - e_0)/b_2",
     .source = clearance::slope_source,
     .cautions = {clearance::measure_it, "A ratio of efficiencies: 0.94 of 70 % is 65.8 %, four points less.",
                  caution::guide_only},
     .sound_anywhere = true,
     .example = {"1, 0.4, 15, 1.2", "0.952", "hand calculation"}});

inline Fraction leakage_efficiency_ratio(Flow flow, Flow leakage, Flow reference)
{
    return {Ratio((flow + reference) / (flow + leakage)).value()};
}

inline constexpr auto leakage_efficiency_ratio_record = record<&leakage_efficiency_ratio>(
    {.name = "leakage_efficiency_ratio",
     .meaning = "Efficiency with worn rings over that with rings as new, at the same flow delivered",
     .also = "volumetric efficiency|wear ring efficiency loss|leakage loss",
     .inputs = {input("flow", "Q", units::m3h, above(0), "flow delivered"),
                input("leakage", "Q_L", units::m3h, from(0), "leakage of all rings as they are"),
                input("reference_leakage", "Q_L0", units::m3h, from(0),
                      "leakage of all rings at the reference clearance")},
     .results = {output("efficiency_ratio", "eta/eta_0", units::fraction, "ratio of the volumetric efficiencies")},
     .equation = "eta/eta_0 = (Q + Q_L0)/(Q + Q_L)",
     .source = "volumetric efficiency Q/(Q + Q_L) as a factor of the whole: A. J. Stepanoff, Centrifugal and Axial "
               "Flow Pumps, 2nd ed. 1957 (from memory of it); Pump Handbook, 2.1",
     .cautions =
         {"Hydraulic and mechanical losses are taken as unchanged; disc friction falls a little as leakage grows.",
          "The head at that flow falls as well: see head_with_leakage."},
     .sound_anywhere = true,
     .example = {"100, 8, 4", "0.962963", "hand calculation"}});

inline Outcome<std::tuple<Head, Head>> head_with_leakage(Flow flow, Flow extra, Series<Flow> flows, Series<Head> heads)
{
    const Outcome<Head> now = curves::read(flows, heads, flow + extra, "flow", units::m3h);
    if (!now) return now.why();
    const Outcome<Head> before = curves::read(flows, heads, flow, "flow", units::m3h);
    if (!before) return before.why();
    return std::tuple(*now, *before - *now);
}

inline constexpr auto head_with_leakage_record = record<&head_with_leakage>(
    {.name = "head_with_leakage",
     .meaning =
         "Head that a pump with worn rings still gives: its impeller passes the flow and the leakage that came on top",
     .also = "worn pump curve|shifted curve|wear ring head loss",
     .inputs = {input("flow", "Q", units::m3h, from(0), "flow delivered"),
                input("extra_leakage", "dQ_L", units::m3h, from(0), "leakage over that of the rings as new"),
                curves::pump_flows(), curves::pump_heads()},
     .results = {output("head", "H", units::metre, "head at that flow now"),
                 output("head_loss", "dH", units::metre, "less than on the curve")},
     .equation = "H = H_new(Q + dQ_L)",
     .source = "leakage shifts the curve towards less flow: A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd ed. "
               "1957 (from memory of it)",
     .cautions = {"For leakage round the impeller, through wear rings; worn vanes and open edges change the curve's "
                  "shape: see clearance_head_ratio."},
     .example = {"50, 10, [0, 50, 100], [40, 37.5, 30]", "36.56, 0.94", "independent computation"}},
    pairs::equal_length<"heads", "flows">());

inline std::tuple<Power, Power> clearance_power_penalty(Flow flow, Head head, Density density, Fraction efficiency,
                                                        Fraction ratio, Fraction motor)
{
    const Power useful = hydraulic_power(flow, head, density);
    const Power extra = useful / efficiency.value * ((1 - ratio.value) / ratio.value);
    return {extra, extra / motor.value};
}

inline constexpr auto clearance_power_penalty_record = record<&clearance_power_penalty>(
    {.name = "clearance_power_penalty",
     .meaning = "Power that a lost efficiency costs at the same duty",
     .also = "extra power of wear|power loss by clearance|degradation cost",
     .inputs = {input("flow", "Q", units::m3h, above(0), "flow delivered"),
                input("head", "H", units::metre, above(0), "total head, the same before and after"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
                input("efficiency", "eta_0", units::fraction, above_up_to(0, 1),
                      "pump efficiency at the reference clearance"),
                input("efficiency_ratio", "r", units::fraction, above_up_to(0, 1.2),
                      "efficiency now over that; above 1 a gain"),
                input("motor_efficiency", "eta_M", units::fraction, above_up_to(0, 1), "of motor and drive")},
     .results = {output("shaft_power", "dP", units::kW, "at the shaft"),
                 output("electrical_power", "dP_el", units::kW, "from the mains")},
     .equation = "dP = (rho g Q H/eta_0)(1/r - 1); dP_el = dP/eta_M",
     .source = "pump efficiency, ISO 17769-1:2012 (from memory of it), before and after",
     .cautions = {"At the same duty. A pump at fixed speed that lost head moves down the system's curve instead: it "
                  "takes less power and delivers less."},
     .sound_anywhere = true,
     .example = {"100, 50, 998, 0.7, 0.94, 0.93", "1.23949, 1.33279", "hand calculation"}});

}  // namespace cutwater::formulas

// How far the liquid may warm before it would boil at the impeller's inlet.
#pragma once

#include "catalogue/once_for_rows.hpp"
#include "formulas/least_flow/heating.hpp"
#include "formulas/pairs.hpp"
#include "formulas/vapour_curve.hpp"

namespace cutwater::formulas {

namespace least_flow {

inline constexpr Interval vapour_points_bara = above_up_to(0, limits::vapour_bara.high);  // their logarithm is taken

inline NoValue outside_curve(Temperature inlet, Temperature coldest, Temperature warmest)
{
    return {CUTWATER_OUT_OF_INTERVAL,
            "inlet_temperature",
            "{0} lies outside the vapour-pressure curve, which reaches from {1} to {2}",
            {number_in(inlet, units::degC), number_in(coldest, units::degC), number_in(warmest, units::degC)}};
}
inline NoValue beyond_curve(AbsolutePressure highest, AbsolutePressure allowed)
{
    return {CUTWATER_NO_ANSWER,
            "temperatures",
            "the vapour-pressure curve ends at {0}; give points up to {1}, the highest vapour pressure that the NPSH "
            "allows",
            {number_in(highest, units::bara), number_in(allowed, units::bara)}};
}

struct AllowedRise {
    template <class Curve>
    Outcome<TemperatureDifference> operator()(const Curve& curve, Temperature inlet, Head available, Head required,
                                              Head margin, Density density, Steps steps = {}) const
    {
        const PressureDifference reserve = density * standard_gravity * (available - required - margin);
        const AbsolutePressure now = curve.pressure(inlet);
        const AbsolutePressure allowed = now + reserve;
        const Temperature warmest = curve.temperature(allowed);
        const bool begins = curve.holds(inlet), ends = !(allowed > curve.highest());
        const bool holds = begins & ends;
        if (begins) steps("p_v", "vapour pressure at the inlet temperature", now, units::bara);
        if (begins) steps("p_v,allowed", "p_v + rho g (NPSHA - NPSH3 - margin)", allowed, units::bara);
        if (holds) steps("T_allowed", "temperature at that vapour pressure", warmest, units::degC);
        return {warmest - inlet, holds,
                begins ? beyond_curve(curve.highest(), allowed)
                       : outside_curve(inlet, curve.coldest(), curve.warmest())};
    }
};
inline constexpr AllowedRise allowed_rise;

inline constexpr const char* vapour_source = "NPSH available falls by the rise of vapour pressure at the inlet: common "
                                             "practice; ln p linear in 1/T between neighbouring points "
                                             "(Clausius-Clapeyron)";
inline constexpr const char* nothing_to_heat =
    "it must exceed NPSH3 and the margin together: nothing is left to warm the liquid with";

}  // namespace least_flow

inline Outcome<TemperatureDifference> allowed_temperature_rise(Temperature inlet, Head available, Head required,
                                                               Head margin, Density density,
                                                               Series<Temperature> temperatures,
                                                               Series<AbsolutePressure> pressures, Steps steps)
{
    return on_vapour_curve(least_flow::allowed_rise, temperatures, pressures, inlet, available, required, margin,
                           density, steps);
}

inline constexpr auto allowed_temperature_rise_record = record<&allowed_temperature_rise>(
    {.name = "allowed_temperature_rise",
     .meaning = "Warming of the inlet liquid that still leaves NPSH3 and a margin",
     .also = "heating limit|flashing at the inlet",
     .inputs = {input("inlet_temperature", "T", units::degC, above(-273.15), "temperature of the liquid as it comes"),
                input("npsh_available", "NPSHA", units::metre, from(0),
                      "net positive suction head available at that temperature"),
                input("npsh3", "NPSH3", units::metre, from(0),
                      "net positive suction head at 3 % head drop, at the small flow"),
                input("npsh_margin", "dNPSH", units::metre, from(0), "margin to keep above NPSH3"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
                series("temperatures", "T_i", units::degC, above(-273.15),
                       "the liquid's vapour-pressure curve: temperatures", 2, Order::rising),
                series("vapour_pressures", "p_v,i", units::bara, least_flow::vapour_points_bara,
                       "the liquid's vapour-pressure curve: pressures", 2, Order::rising)},
     .results = {output("allowed_rise", "dT", units::kelvin_difference, "warming at which the margin is used up")},
     .equation = "p_v(T + dT) = p_v(T) + rho g (NPSHA - NPSH3 - dNPSH)",
     .source = least_flow::vapour_source,
     .cautions = {caution::npsh_margin, caution::inlet_vapour_pressure, caution::hot_or_toxic},
     .example = {"85, 10, 4, 1, 965, [80, 90, 100, 110], [0.4741472, 0.7018236, 1.01418, 1.43376]", "16.022",
                 "hand calculation with water's vapour pressures from IAPWS-IF97"}},
    pairs::equal_length<"vapour_pressures", "temperatures">(),
    relation<"npsh_available", "npsh3", "npsh_margin">(
        [](Head available, Head npsh3, Head margin) { return available > npsh3 + margin; },
        least_flow::nothing_to_heat));

namespace least_flow {

struct FlowForAllowedRise {
    template <class Curve>
    Outcome<Flow> operator()(const Curve& curve, Power shutoff_power, Head shutoff_head, SpecificHeat specific_heat,
                             Temperature inlet, Head available, Head required, Head margin, Density density,
                             ThermalExpansion expansion, Steps steps = {}) const
    {
        const auto rise = allowed_rise(curve, inlet, available, required, margin, density, steps);
        if (rise) steps("dT", "allowed warming", *rise, units::kelvin_difference);
        return {thermal_minimum_flow(shutoff_power, shutoff_head, density, specific_heat, *rise, expansion, inlet),
                static_cast<bool>(rise), rise.why()};
    }
};
inline constexpr FlowForAllowedRise flow_for_allowed_rise;

}  // namespace least_flow

inline Outcome<Flow> thermal_minimum_flow_from_npsh(Power shutoff_power, Head shutoff_head, SpecificHeat specific_heat,
                                                    Temperature inlet, Head available, Head required, Head margin,
                                                    Density density, Series<Temperature> temperatures,
                                                    Series<AbsolutePressure> pressures, ThermalExpansion expansion,
                                                    Steps steps)
{
    return on_vapour_curve(least_flow::flow_for_allowed_rise, temperatures, pressures, shutoff_power, shutoff_head,
                           specific_heat, inlet, available, required, margin, density, expansion, steps);
}

inline constexpr auto thermal_minimum_flow_from_npsh_record = record<&thermal_minimum_flow_from_npsh>(
    {.name = "thermal_minimum_flow_from_npsh",
     .meaning = "Least flow whose warming still leaves NPSH3 and a margin at the inlet",
     .also = "min flow|minimum flow|MCTF|minimum continuous thermal flow",
     .inputs = {input("shutoff_power", "P_0", units::kW, above(0), "pump power input at closed valve"),
                input("shutoff_head", "H_0", units::metre, from(0), "total head at closed valve"),
                input("specific_heat", "c_p", units::kJkgK, least_flow::specific_heats,
                      least_flow::specific_heat_meaning),
                input("inlet_temperature", "T", units::degC, above(-273.15), "temperature of the liquid as it comes"),
                input("npsh_available", "NPSHA", units::metre, from(0),
                      "net positive suction head available at that temperature"),
                input("npsh3", "NPSH3", units::metre, from(0),
                      "net positive suction head at 3 % head drop, at the small flow"),
                input("npsh_margin", "dNPSH", units::metre, from(0), "margin to keep above NPSH3"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
                series("temperatures", "T_i", units::degC, above(-273.15),
                       "the liquid's vapour-pressure curve: temperatures", 2, Order::rising),
                series("vapour_pressures", "p_v,i", units::bara, least_flow::vapour_points_bara,
                       "the liquid's vapour-pressure curve: pressures", 2, Order::rising),
                input("expansion", "beta", units::per_K, least_flow::expansions,
                      "thermal expansion of the liquid; 0 leaves the heating by compression out", 0)},
     .results = {output("flow", "Q_min", units::m3h, "least continuous flow for heating alone")},
     .equation =
         "Q_min = P_0/[rho (c_p dT + g H_0 (1 - beta T))], p_v(T + dT) = p_v(T) + rho g (NPSHA - NPSH3 - dNPSH)",
     .source = least_flow::vapour_source,
     .cautions = {least_flow::larger_of_both, least_flow::led_back, caution::npsh_margin, caution::hot_or_toxic},
     .example = {"15, 60, 4.2, 85, 10, 4, 1, 965, [80, 90, 100, 110], [0.4741472, 0.7018236, 1.01418, 1.43376]",
                 "0.82435", "hand calculation: 15 kW warm the liquid by 16.022 K"}},
    pairs::equal_length<"vapour_pressures", "temperatures">(),
    relation<"npsh_available", "npsh3", "npsh_margin">(
        [](Head available, Head npsh3, Head margin) { return available > npsh3 + margin; },
        least_flow::nothing_to_heat));

}  // namespace cutwater::formulas

namespace cutwater {

template <>
struct OnceForRows<&formulas::allowed_temperature_rise> : formulas::WithVapourCurve<formulas::least_flow::AllowedRise> {
    using WithVapourCurve::WithVapourCurve;
};
template <>
struct OnceForRows<&formulas::thermal_minimum_flow_from_npsh>
    : formulas::WithVapourCurve<formulas::least_flow::FlowForAllowedRise> {
    using WithVapourCurve::WithVapourCurve;
};

}  // namespace cutwater

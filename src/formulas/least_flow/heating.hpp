// Heating of the liquid on its way through the pump.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas {

namespace least_flow {

inline constexpr Interval specific_heats = between(0.1, 20);  // 4184 meant as J/(kg K) is refused
inline constexpr Interval expansions = between(-0.001, 0.02);
inline constexpr const char* specific_heat_meaning = "specific heat of the liquid at constant pressure";
inline constexpr const char* balance =
    "energy balance; the relation of ANSI/HI 9.6.3 and of I. J. Karassik et al., Pump Handbook (from memory of both)";
inline constexpr const char* not_compression =
    "Leaves out the heating by compression, which is beta T/(1/eta - 1) of this whatever the head: 14 % for water at "
    "20 degC and an efficiency of 0.7, 1.4 times it for water at 160 degC and 0.75, more for light hydrocarbons. "
    "total_temperature_rise gives both.";
inline constexpr const char* mean_state =
    "Take specific heat and expansion at the mean of inlet and outlet state: for water of 20 to 250 degC, up to 200 "
    "bar, the rise then agrees with IAPWS-IF97 enthalpies to 0.6 %, with the inlet's values to 2.4 %.";
inline constexpr const char* expansion_meaning = "thermal expansion of the liquid, by volume; negative for water below "
                                                 "4 degC";
inline constexpr const char* stays_liquid = "With one specific heat, and for a liquid that stays liquid: a rise of "
                                            "tens of kelvin tells that the flow is too small, not how hot it gets.";
inline constexpr const char* larger_of_both =
    "The thermal minimum is usually the smaller one: keep to the larger of this and the least continuous stable flow "
    "that the pump maker states.";
inline constexpr const char* led_back =
    "Liquid led back to the suction vessel keeps the whole power as heat, head and all: give shutoff_head 0 for that.";
inline constexpr const char* vapour_at_inlet =
    "Warmed liquid that comes back to the inlet lowers NPSH available: see allowed_temperature_rise.";

inline TemperatureDifference losses_rise(Head head, Fraction efficiency, SpecificHeat specific_heat)
{
    return standard_gravity * head * (1 / efficiency.value - 1) / specific_heat;
}

inline TemperatureDifference compression_rise(Head head, SpecificHeat specific_heat, ThermalExpansion expansion,
                                              Temperature inlet)
{
    return standard_gravity * head * (expansion * inlet.above_zero()) / specific_heat;
}

}  // namespace least_flow

inline TemperatureDifference temperature_rise(Head head, Fraction efficiency, SpecificHeat specific_heat)
{
    return least_flow::losses_rise(head, efficiency, specific_heat);
}

inline constexpr Record<&temperature_rise> temperature_rise_record{
    .name = "temperature_rise",
    .meaning = "Warming of the liquid by the pump's losses, from head and efficiency",
    .also = "heating up|liquid heats|churning|recirculation heat",
    .inputs = {input("head", "H", units::metre, above(0), "total head at the flow in question"),
               input("efficiency", "eta", units::fraction, above_up_to(0, 1), "pump efficiency at that flow"),
               input("specific_heat", "c_p", units::kJkgK, least_flow::specific_heats,
                     least_flow::specific_heat_meaning)},
    .results = {output("temperature_rise", "dT", units::kelvin_difference, "warming from inlet to outlet")},
    .equation = "dT = g H (1/eta - 1)/c_p",
    .source = least_flow::balance,
    .cautions = {least_flow::not_compression, least_flow::vapour_at_inlet, least_flow::stays_liquid},
    .example = {"100, 0.7, 4.184", "0.10045", "hand calculation"}};

inline TemperatureDifference compression_temperature_rise(Head head, SpecificHeat specific_heat,
                                                          ThermalExpansion expansion, Temperature inlet)
{
    return least_flow::compression_rise(head, specific_heat, expansion, inlet);
}

inline constexpr Record<&compression_temperature_rise> compression_temperature_rise_record{
    .name = "compression_temperature_rise",
    .meaning = "Warming of the liquid by compression alone, without any loss",
    .also = "heating by compression|adiabatic",
    .inputs = {input("head", "H", units::metre, above(0), "total head"),
               input("specific_heat", "c_p", units::kJkgK, least_flow::specific_heats,
                     least_flow::specific_heat_meaning),
               input("expansion", "beta", units::per_K, least_flow::expansions, least_flow::expansion_meaning),
               input("inlet_temperature", "T", units::degC, above(-273.15), "temperature at the inlet")},
    .results = {output("temperature_rise", "dT_c", units::kelvin_difference,
                       "warming; to be added to temperature_rise")},
    .equation = "dT_c = g H beta T/c_p, T in kelvin",
    .source = "thermodynamics, dh = c_p dT + v (1 - beta T) dp (any textbook); checked against IAPWS-IF97 enthalpies "
              "of water to 2 %",
    .cautions = {"Of the losses' warming it is the part beta T/(1/eta - 1), whatever the head: small for cold water, "
                 "most of it for hot or light liquids.",
                 least_flow::mean_state},
    .example = {"1000, 4.184, 0.000207, 20", "0.14223", "hand calculation"}};

inline TemperatureDifference total_temperature_rise(Head head, Fraction efficiency, SpecificHeat specific_heat,
                                                    ThermalExpansion expansion, Temperature inlet, Steps steps)
{
    const TemperatureDifference losses = least_flow::losses_rise(head, efficiency, specific_heat);
    const TemperatureDifference compression = least_flow::compression_rise(head, specific_heat, expansion, inlet);
    steps("dT_l", "warming by losses", losses, units::kelvin_difference);
    steps("dT_c", "warming by compression", compression, units::kelvin_difference);
    return losses + compression;
}

inline constexpr Record<&total_temperature_rise> total_temperature_rise_record{
    .name = "total_temperature_rise",
    .meaning = "Warming of the liquid by losses and compression together",
    .also = "heating up|liquid heats",
    .inputs = {input("head", "H", units::metre, above(0), "total head at the flow in question"),
               input("efficiency", "eta", units::fraction, above_up_to(0, 1), "pump efficiency at that flow"),
               input("specific_heat", "c_p", units::kJkgK, least_flow::specific_heats,
                     least_flow::specific_heat_meaning),
               input("expansion", "beta", units::per_K, least_flow::expansions, least_flow::expansion_meaning),
               input("inlet_temperature", "T", units::degC, above(-273.15), "temperature at the inlet")},
    .results = {output("temperature_rise", "dT", units::kelvin_difference, "warming from inlet to outlet")},
    .equation = "dT = g H (1/eta - 1)/c_p + g H beta T/c_p, T in kelvin",
    .source = "thermodynamics, dh = c_p dT + v (1 - beta T) dp (any textbook); checked against IAPWS-IF97 enthalpies "
              "of water to 2 %",
    .cautions = {least_flow::vapour_at_inlet, least_flow::mean_state, least_flow::stays_liquid},
    .example = {"1019.2, 0.7, 4.17, 0.000207, 20", "1.1727",
                "hand calculation; IAPWS-IF97 enthalpies give 1.182 for 1 to 101 bar"}};

inline TemperatureDifference temperature_rise_at_flow(Power power, Flow flow, Head head, Density density,
                                                      SpecificHeat specific_heat, Steps steps)
{
    const Power hydraulic(density * standard_gravity * flow * head);
    steps("P_u", "rho g Q H, hydraulic power", hydraulic, units::kW);
    return (power - hydraulic) / (density * flow * specific_heat);
}

inline constexpr auto temperature_rise_at_flow_record = record<&temperature_rise_at_flow>(
    {.name = "temperature_rise_at_flow",
     .meaning = "Warming of the liquid by the pump's losses, from power and flow",
     .also = "heating up at low flow|liquid heats",
     .inputs = {input("power_input", "P", units::kW, above(0), "pump power input at that flow"),
                input("flow", "Q", units::m3h, above(0), "flow through the pump"),
                input("head", "H", units::metre, from(0), "total head at that flow"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
                input("specific_heat", "c_p", units::kJkgK, least_flow::specific_heats,
                      least_flow::specific_heat_meaning)},
     .results = {output("temperature_rise", "dT", units::kelvin_difference, "warming from inlet to outlet")},
     .equation = "dT = (P - rho g Q H)/(rho Q c_p)",
     .source = least_flow::balance,
     .cautions = {least_flow::not_compression, least_flow::vapour_at_inlet, least_flow::stays_liquid},
     .example = {"15, 5, 60, 998, 4.184", "2.4458", "hand calculation"}},
    relation<"power_input", "flow", "head", "density">(
        [](Power power, Flow flow, Head head, Density density) {
            return power >= Power(density * standard_gravity * flow * head);
        },
        "it must not be less than the hydraulic power rho g Q H"));

inline Flow thermal_minimum_flow(Power shutoff_power, Head shutoff_head, Density density, SpecificHeat specific_heat,
                                 TemperatureDifference allowed, ThermalExpansion expansion, Temperature inlet)
{
    const Ratio compressed = expansion * inlet.above_zero();  // the part of g H that comes back as warmth
    const auto lifted = standard_gravity * shutoff_head * (Ratio(1.0) - compressed);
    return shutoff_power / (density * (specific_heat * allowed + lifted));
}

inline constexpr Record<&thermal_minimum_flow> thermal_minimum_flow_record{
    .name = "thermal_minimum_flow",
    .meaning = "Least flow that keeps the liquid's warming within what is allowed",
    .also = "min flow|minimum flow|MCTF|minimum continuous thermal flow|recirculation flow|flow too small",
    .inputs = {input("shutoff_power", "P_0", units::kW, above(0), "pump power input at closed valve"),
               input("shutoff_head", "H_0", units::metre, from(0),
                     "total head at closed valve; 0 gives the handbooks' simpler, larger flow"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
               input("specific_heat", "c_p", units::kJkgK, least_flow::specific_heats,
                     least_flow::specific_heat_meaning),
               input("allowed_rise", "dT", units::kelvin_difference, above(0),
                     "allowed warming; 8 K is common practice for cool water, otherwise by allowed_temperature_rise"),
               input("expansion", "beta", units::per_K, least_flow::expansions,
                     "thermal expansion of the liquid; 0 leaves the heating by compression out", 0),
               input("inlet_temperature", "T", units::degC, above(-273.15),
                     "temperature at the inlet; counts with the expansion only", 20)},
    .results = {output("flow", "Q_min", units::m3h, "least continuous flow for heating alone")},
    .equation = "Q_min = P_0/[rho (c_p dT + g H_0 (1 - beta T))], T in kelvin",
    .source = "energy balance with power and head as at closed valve; the handbooks' form, without g H_0, in I. J. "
              "Karassik et al., Pump Handbook, and ANSI/HI 9.6.3 (from memory of both); heating by compression as in "
              "compression_temperature_rise",
    .cautions = {least_flow::larger_of_both, least_flow::led_back,
                 "With an expansion of 0 the heating by compression is left out and the flow comes out too small, for "
                 "hot water under a high head by a tenth and more.",
                 "Power at the small flow of a radial pump is a little above that at closed valve: add a margin.",
                 caution::hot_or_toxic},
    .sound_anywhere = true,
    .example = {"15, 60, 998, 4.184, 8", "1.5886", "hand calculation"}};

}  // namespace cutwater::formulas

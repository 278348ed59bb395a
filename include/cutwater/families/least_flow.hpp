// generated from the catalogue by cutwater-generate; do not edit.
// Least flow and heating.
#pragma once

#include <cutwater/families/least_flow.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Warming of the liquid by the pump's losses, from head and efficiency: dT = g H (1/eta - 1)/c_p. Source: energy balance; the relation of ANSI/HI 9.6.3 and of I. J. Karassik et al., Pump Handbook (from memory of both).
inline TemperatureDifference temperature_rise(Length head, Fraction efficiency, SpecificHeat specific_heat)
{
    cutwater_refusal refusal;
    double temperature_rise_out;
    detail::check(cutwater_temperature_rise(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Fraction>(""), efficiency), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), &temperature_rise_out, &refusal), refusal);
    return detail::quantity_of(unit<TemperatureDifference>("K"), temperature_rise_out);
}

/// Warming of the liquid by compression alone, without any loss: dT_c = g H beta T/c_p, T in kelvin. Source: thermodynamics, dh = c_p dT + v (1 - beta T) dp (any textbook); checked against IAPWS-IF97 enthalpies of water to 2 %.
inline TemperatureDifference compression_temperature_rise(Length head, SpecificHeat specific_heat, ThermalExpansion expansion, Temperature inlet_temperature)
{
    cutwater_refusal refusal;
    double temperature_rise_out;
    detail::check(cutwater_compression_temperature_rise(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<ThermalExpansion>("1/K"), expansion), detail::number_in(unit<Temperature>("degC"), inlet_temperature), &temperature_rise_out, &refusal), refusal);
    return detail::quantity_of(unit<TemperatureDifference>("K"), temperature_rise_out);
}

/// Warming of the liquid by losses and compression together: dT = g H (1/eta - 1)/c_p + g H beta T/c_p, T in kelvin. Source: thermodynamics, dh = c_p dT + v (1 - beta T) dp (any textbook); checked against IAPWS-IF97 enthalpies of water to 2 %.
inline TemperatureDifference total_temperature_rise(Length head, Fraction efficiency, SpecificHeat specific_heat, ThermalExpansion expansion, Temperature inlet_temperature)
{
    cutwater_refusal refusal;
    double temperature_rise_out;
    detail::check(cutwater_total_temperature_rise(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Fraction>(""), efficiency), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<ThermalExpansion>("1/K"), expansion), detail::number_in(unit<Temperature>("degC"), inlet_temperature), &temperature_rise_out, &refusal), refusal);
    return detail::quantity_of(unit<TemperatureDifference>("K"), temperature_rise_out);
}

/// Warming of the liquid by the pump's losses, from power and flow: dT = (P - rho g Q H)/(rho Q c_p). Source: energy balance; the relation of ANSI/HI 9.6.3 and of I. J. Karassik et al., Pump Handbook (from memory of both).
inline TemperatureDifference temperature_rise_at_flow(Power power_input, Flow flow, Length head, Density density, SpecificHeat specific_heat)
{
    cutwater_refusal refusal;
    double temperature_rise_out;
    detail::check(cutwater_temperature_rise_at_flow(detail::number_in(unit<Power>("kW"), power_input), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), &temperature_rise_out, &refusal), refusal);
    return detail::quantity_of(unit<TemperatureDifference>("K"), temperature_rise_out);
}

/// Least flow that keeps the liquid's warming within what is allowed: Q_min = P_0/[rho (c_p dT + g H_0 (1 - beta T))], T in kelvin. Source: energy balance with power and head as at closed valve; the handbooks' form, without g H_0, in I. J. Karassik et al., Pump Handbook, and ANSI/HI 9.6.3 (from memory of both); heating by compression as in compression_temperature_rise.
inline Flow thermal_minimum_flow(Power shutoff_power, Length shutoff_head, Density density, SpecificHeat specific_heat, TemperatureDifference allowed_rise, ThermalExpansion expansion = unit<ThermalExpansion>("1/K")(0), Temperature inlet_temperature = unit<Temperature>("degC")(20))
{
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_thermal_minimum_flow(detail::number_in(unit<Power>("kW"), shutoff_power), detail::number_in(unit<Length>("m"), shutoff_head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<TemperatureDifference>("K"), allowed_rise), detail::number_in(unit<ThermalExpansion>("1/K"), expansion), detail::number_in(unit<Temperature>("degC"), inlet_temperature), &flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), flow_out);
}

/// Warming of the inlet liquid that still leaves NPSH3 and a margin: p_v(T + dT) = p_v(T) + rho g (NPSHA - NPSH3 - dNPSH). Source: NPSH available falls by the rise of vapour pressure at the inlet: common practice; ln p linear in 1/T between neighbouring points (Clausius-Clapeyron).
inline TemperatureDifference allowed_temperature_rise(Temperature inlet_temperature, Length npsh_available, Length npsh3, Length npsh_margin, Density density, const std::vector<Temperature>& temperatures, const std::vector<AbsolutePressure>& vapour_pressures)
{
    const std::vector<double> temperatures_numbers = detail::numbers(unit<Temperature>("degC"), temperatures);
    const std::vector<double> vapour_pressures_numbers = detail::numbers(unit<AbsolutePressure>("bara"), vapour_pressures);
    cutwater_refusal refusal;
    double allowed_rise_out;
    detail::check(cutwater_allowed_temperature_rise(detail::number_in(unit<Temperature>("degC"), inlet_temperature), detail::number_in(unit<Length>("m"), npsh_available), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Length>("m"), npsh_margin), detail::number_in(unit<Density>("kg/m3"), density), temperatures_numbers.data(), temperatures_numbers.size(), vapour_pressures_numbers.data(), vapour_pressures_numbers.size(), &allowed_rise_out, &refusal), refusal);
    return detail::quantity_of(unit<TemperatureDifference>("K"), allowed_rise_out);
}

/// Least flow whose warming still leaves NPSH3 and a margin at the inlet: Q_min = P_0/[rho (c_p dT + g H_0 (1 - beta T))], p_v(T + dT) = p_v(T) + rho g (NPSHA - NPSH3 - dNPSH). Source: NPSH available falls by the rise of vapour pressure at the inlet: common practice; ln p linear in 1/T between neighbouring points (Clausius-Clapeyron).
inline Flow thermal_minimum_flow_from_npsh(Power shutoff_power, Length shutoff_head, SpecificHeat specific_heat, Temperature inlet_temperature, Length npsh_available, Length npsh3, Length npsh_margin, Density density, const std::vector<Temperature>& temperatures, const std::vector<AbsolutePressure>& vapour_pressures, ThermalExpansion expansion = unit<ThermalExpansion>("1/K")(0))
{
    const std::vector<double> temperatures_numbers = detail::numbers(unit<Temperature>("degC"), temperatures);
    const std::vector<double> vapour_pressures_numbers = detail::numbers(unit<AbsolutePressure>("bara"), vapour_pressures);
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_thermal_minimum_flow_from_npsh(detail::number_in(unit<Power>("kW"), shutoff_power), detail::number_in(unit<Length>("m"), shutoff_head), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<Temperature>("degC"), inlet_temperature), detail::number_in(unit<Length>("m"), npsh_available), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Length>("m"), npsh_margin), detail::number_in(unit<Density>("kg/m3"), density), temperatures_numbers.data(), temperatures_numbers.size(), vapour_pressures_numbers.data(), vapour_pressures_numbers.size(), detail::number_in(unit<ThermalExpansion>("1/K"), expansion), &flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), flow_out);
}

/// How fast a pump at closed valve heats its liquid: dT/dt = P_0/(V rho c_p + m c_m). Source: energy balance; the relation of I. J. Karassik et al., Pump Handbook (from memory of it).
inline TemperatureRate closed_valve_heating_rate(Power shutoff_power, Volume liquid_volume, Density density, SpecificHeat specific_heat, Mass metal_mass = unit<Mass>("kg")(0), SpecificHeat metal_specific_heat = unit<SpecificHeat>("kJ/(kg K)")(0.46))
{
    cutwater_refusal refusal;
    double heating_rate_out;
    detail::check(cutwater_closed_valve_heating_rate(detail::number_in(unit<Power>("kW"), shutoff_power), detail::number_in(unit<Volume>("l"), liquid_volume), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<Mass>("kg"), metal_mass), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), metal_specific_heat), &heating_rate_out, &refusal), refusal);
    return detail::quantity_of(unit<TemperatureRate>("K/min"), heating_rate_out);
}

/// Time in which a steady heating reaches a temperature: t = (T_2 - T_1)/(dT/dt). Source: steady heating without loss; common practice.
inline Time time_to_temperature(TemperatureRate heating_rate, Temperature start_temperature, Temperature end_temperature)
{
    cutwater_refusal refusal;
    double time_out;
    detail::check(cutwater_time_to_temperature(detail::number_in(unit<TemperatureRate>("K/min"), heating_rate), detail::number_in(unit<Temperature>("degC"), start_temperature), detail::number_in(unit<Temperature>("degC"), end_temperature), &time_out, &refusal), refusal);
    return detail::quantity_of(unit<Time>("min"), time_out);
}

/// Flow from which a pump's head falls all the way: below it a drooping curve, or one with a dip, is unstable: Q_st = least Q_i from which every further H is less than the one before it. Source: definition of a stable and an unstable curve, ISO 17769-1:2012 and EN 12723 (from memory of both); ANSI/HI 9.6.3-2012 treats drooping curves and curves with a dip (notice of it read).
inline Flow falling_head_flow(const std::vector<Flow>& flows, const std::vector<Length>& heads)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_falling_head_flow(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), &flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), flow_out);
}

/// Flow below which the impeller's inlet recirculates: Q_sr = z (V_e/U_1) (pi D_1 n) (pi/4)(D_1^2 - h^2). Source: W. H. Fraser, Recirculation in centrifugal pumps, ASME winter annual meeting 1981 (from memory of it; its US constant 93.6 follows from the geometry).
inline Flow suction_recirculation_flow(Length eye_diameter, Length hub_diameter, RotationalSpeed speed, Ratio velocity_ratio, Count eyes = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_suction_recirculation_flow(detail::number_in(unit<Length>("mm"), eye_diameter), detail::number_in(unit<Length>("mm"), hub_diameter), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Ratio>(""), velocity_ratio), detail::number_in(unit<Count>(""), eyes), &flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), flow_out);
}

struct preferred_region_results {
    Flow least_preferred_flow;  // lower end of the preferred region
    Flow greatest_preferred_flow;  // upper end of the preferred region
};

/// Flows between which a pump is best run: n_s <= 87.1: 0.70 Q_BEP to 1.20 Q_BEP; above: 0.80 Q_BEP to 1.15 Q_BEP. Source: ANSI/HI 9.6.3-2012, preferred operating region: 70 to 120 % of best efficiency flow for most pumps (clause 9.6.3.1 as quoted by a trade magazine, excerpt read; the Hydraulic Institute's Engineering Data Book, read, spans 90 to 110 % up to 70 to 120 % by specific speed), above a US specific speed of 4500 (87.1 in 1/min, m3/s, m) 80 to 115 % (from memory of it).
inline preferred_region_results preferred_region(Flow best_efficiency_flow, SpecificSpeed specific_speed)
{
    cutwater_refusal refusal;
    double least_preferred_flow_out;
    double greatest_preferred_flow_out;
    detail::check(cutwater_preferred_region(detail::number_in(unit<Flow>("m3/h"), best_efficiency_flow), detail::number_in(unit<SpecificSpeed>(""), specific_speed), &least_preferred_flow_out, &greatest_preferred_flow_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), least_preferred_flow_out), detail::quantity_of(unit<Flow>("m3/h"), greatest_preferred_flow_out)};
}

struct operating_region_results {
    const char* region;  // preferred, allowable but not preferred, or outside of both; the ends belong to a region
    Flow least_preferred_flow;  // lower end of the preferred region
    Flow greatest_preferred_flow;  // upper end of the preferred region
};

/// Region of its curve in which a pump runs: preferred: n_s <= 87.1: 0.70 to 1.20 Q_BEP, above: 0.80 to 1.15 Q_BEP, within the allowable; allowable: Q_min to Q_max. Source: ANSI/HI 9.6.3-2012, preferred operating region: 70 to 120 % of best efficiency flow for most pumps (clause 9.6.3.1 as quoted by a trade magazine, excerpt read; the Hydraulic Institute's Engineering Data Book, read, spans 90 to 110 % up to 70 to 120 % by specific speed), above a US specific speed of 4500 (87.1 in 1/min, m3/s, m) 80 to 115 % (from memory of it).
inline operating_region_results operating_region(Flow flow, Flow best_efficiency_flow, SpecificSpeed specific_speed, Flow allowable_minimum_flow, Flow allowable_maximum_flow)
{
    cutwater_refusal refusal;
    const char* region_out;
    double least_preferred_flow_out;
    double greatest_preferred_flow_out;
    detail::check(cutwater_operating_region(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Flow>("m3/h"), best_efficiency_flow), detail::number_in(unit<SpecificSpeed>(""), specific_speed), detail::number_in(unit<Flow>("m3/h"), allowable_minimum_flow), detail::number_in(unit<Flow>("m3/h"), allowable_maximum_flow), &region_out, &least_preferred_flow_out, &greatest_preferred_flow_out, &refusal), refusal);
    return {region_out, detail::quantity_of(unit<Flow>("m3/h"), least_preferred_flow_out), detail::quantity_of(unit<Flow>("m3/h"), greatest_preferred_flow_out)};
}

struct bypass_flow_results {
    Flow flow;  // flow through the plate
    Ratio coefficient;  // discharge coefficient
    Ratio reynolds_number;  // Reynolds number of the pipe
    PressureDifference limiting_pressure_drop;  // pressure lost for good from which on the flow grows no more
    const char* choking;  // whether the liquid boils in the jet and the flow is held
};

/// Flow that an orifice plate in a bypass lets through, choked or not: Q = C/sqrt(1 - b^4) (pi/4) d^2 sqrt(2 dp/rho); dp_l = dp (r - C b^2)/(r + C b^2), r = sqrt(1 - b^4 (1 - C^2)), b = d/D; dp_l = p_1 - p_2, at most dp_max = (dp_l/dp)(p_1 - p_v). Source: ISO 5167-2:2003, 5.3 and 5.4, tappings at D and D/2 (from memory of it; its coefficients agree with those of the open-source library fluids 1.0.22); choked flow: IEC 60534-2-1:2011, limiting pressure drop F_L^2 (p_1 - F_F p_v) (its worked examples read in that library's tests), F_L^2 from the plate's pressure loss, F_F taken as 1.
inline bypass_flow_results bypass_flow(Length orifice_bore, Length pipe_bore, AbsolutePressure upstream_pressure, AbsolutePressure downstream_pressure, AbsolutePressure vapour_pressure, Density density, KinematicViscosity viscosity, Ratio discharge_coefficient = unit<Ratio>("")(0))
{
    cutwater_refusal refusal;
    double flow_out;
    double coefficient_out;
    double reynolds_number_out;
    double limiting_pressure_drop_out;
    const char* choking_out;
    detail::check(cutwater_bypass_flow(detail::number_in(unit<Length>("mm"), orifice_bore), detail::number_in(unit<Length>("mm"), pipe_bore), detail::number_in(unit<AbsolutePressure>("bara"), upstream_pressure), detail::number_in(unit<AbsolutePressure>("bara"), downstream_pressure), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Ratio>(""), discharge_coefficient), &flow_out, &coefficient_out, &reynolds_number_out, &limiting_pressure_drop_out, &choking_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), flow_out), detail::quantity_of(unit<Ratio>(""), coefficient_out), detail::quantity_of(unit<Ratio>(""), reynolds_number_out), detail::quantity_of(unit<PressureDifference>("bar"), limiting_pressure_drop_out), choking_out};
}

struct bypass_orifice_bore_results {
    Length orifice_bore;  // bore of the plate
    const char* choking;  // whether the liquid boils in its jet and the flow is held
};

/// Bore of an orifice plate that lets a bypass flow through, choked or not: the d for which bypass_flow gives Q. Source: ISO 5167-2:2003, 5.3 and 5.4, tappings at D and D/2 (from memory of it; its coefficients agree with those of the open-source library fluids 1.0.22); choked flow: IEC 60534-2-1:2011, limiting pressure drop F_L^2 (p_1 - F_F p_v) (its worked examples read in that library's tests), F_L^2 from the plate's pressure loss, F_F taken as 1.
inline bypass_orifice_bore_results bypass_orifice_bore(Flow flow, Length pipe_bore, AbsolutePressure upstream_pressure, AbsolutePressure downstream_pressure, AbsolutePressure vapour_pressure, Density density, KinematicViscosity viscosity, Ratio discharge_coefficient = unit<Ratio>("")(0))
{
    cutwater_refusal refusal;
    double orifice_bore_out;
    const char* choking_out;
    detail::check(cutwater_bypass_orifice_bore(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), pipe_bore), detail::number_in(unit<AbsolutePressure>("bara"), upstream_pressure), detail::number_in(unit<AbsolutePressure>("bara"), downstream_pressure), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Ratio>(""), discharge_coefficient), &orifice_bore_out, &choking_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("mm"), orifice_bore_out), choking_out};
}

struct bypass_orifice_cavitation_results {
    Ratio pressure_ratio;  // share of the pressure above vapour pressure that the plate takes
    Ratio onset_ratio;  // that share at which cavitation is expected to begin, at this upstream pressure
    const char* cavitation;  // none, cavitating, choked (boiling in the jet) or flashing (boiling behind it)
};

/// Whether a bypass's orifice plate cavitates: x_F = (p_1 - p_2)/(p_1 - p_v); x_Fzp1 = x_Fz (6 bara/p_1)^0.125, x_Fz = 0.90/sqrt(1 + 3 F_d sqrt(Cv/(1.17 F_L))), F_d = 1, F_L^2 = dp_l/dp of the plate; choked when p_1 - dp <= p_v. Source: IEC 60534-8-4:2015, estimate of the onset for a valve without test, and its correction for the inlet pressure, as read in the open-source library fluids 1.0.22, which states that it meets the standard's three examples; F_d = 1 for one round hole, applied to a plate with the pressure loss of ISO 5167-2:2003 (from memory of it).
inline bypass_orifice_cavitation_results bypass_orifice_cavitation(Length orifice_bore, Length pipe_bore, AbsolutePressure upstream_pressure, AbsolutePressure downstream_pressure, AbsolutePressure vapour_pressure, Density density, KinematicViscosity viscosity, Ratio discharge_coefficient = unit<Ratio>("")(0))
{
    cutwater_refusal refusal;
    double pressure_ratio_out;
    double onset_ratio_out;
    const char* cavitation_out;
    detail::check(cutwater_bypass_orifice_cavitation(detail::number_in(unit<Length>("mm"), orifice_bore), detail::number_in(unit<Length>("mm"), pipe_bore), detail::number_in(unit<AbsolutePressure>("bara"), upstream_pressure), detail::number_in(unit<AbsolutePressure>("bara"), downstream_pressure), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Ratio>(""), discharge_coefficient), &pressure_ratio_out, &onset_ratio_out, &cavitation_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), pressure_ratio_out), detail::quantity_of(unit<Ratio>(""), onset_ratio_out), cavitation_out};
}

}  // namespace cutwater

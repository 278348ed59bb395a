// generated from the catalogue by cutwater-generate; do not edit.
// Magnetic drives and other sealed drives.
#pragma once

#include <cutwater/families/sealed_drives.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

struct magnetic_coupling_torque_results {
    Torque torque;  // pull-out torque at those temperatures
    Ratio share;  // part of the cold torque that is left
};

/// Pull-out torque of a magnetic coupling at the temperature of its magnets: T = T_0 (1 + alpha_i (t_i - t_0))(1 + alpha_o (t_o - t_0)). Source: torque of a synchronous coupling goes with the product of both remanences (common practice); coefficients: IEC TR 62518:2009 as summarised by a digest (excerpt read), records of the open Modelica Standard Library (read), a laboratory's page for SmCo5 (read).
inline magnetic_coupling_torque_results magnetic_coupling_torque(Torque cold_torque, Temperature inner_temperature, Temperature outer_temperature, TemperatureCoefficient inner_coefficient, TemperatureCoefficient outer_coefficient, Temperature reference_temperature = unit<Temperature>("degC")(20))
{
    cutwater_refusal refusal;
    double torque_out;
    double share_out;
    detail::check(cutwater_magnetic_coupling_torque(detail::number_in(unit<Torque>("N m"), cold_torque), detail::number_in(unit<Temperature>("degC"), inner_temperature), detail::number_in(unit<Temperature>("degC"), outer_temperature), detail::number_in(unit<TemperatureCoefficient>("%/K"), inner_coefficient), detail::number_in(unit<TemperatureCoefficient>("%/K"), outer_coefficient), detail::number_in(unit<Temperature>("degC"), reference_temperature), &torque_out, &share_out, &refusal), refusal);
    return {detail::quantity_of(unit<Torque>("N m"), torque_out), detail::quantity_of(unit<Ratio>(""), share_out)};
}

/// Torque through a coupling while the motor runs the pump up: T_C = T_L + (T_M - T_L) J_P/(J_M + J_P). Source: Newton's second law for two masses on a stiff shaft; common practice.
inline Torque magnetic_coupling_start_torque(Torque motor_torque, Torque load_torque, MomentOfInertia motor_inertia, MomentOfInertia pump_inertia)
{
    cutwater_refusal refusal;
    double torque_out;
    detail::check(cutwater_magnetic_coupling_start_torque(detail::number_in(unit<Torque>("N m"), motor_torque), detail::number_in(unit<Torque>("N m"), load_torque), detail::number_in(unit<MomentOfInertia>("kg m2"), motor_inertia), detail::number_in(unit<MomentOfInertia>("kg m2"), pump_inertia), &torque_out, &refusal), refusal);
    return detail::quantity_of(unit<Torque>("N m"), torque_out);
}

struct magnetic_coupling_margin_results {
    Ratio margin;  // coupling torque over the greater of running and starting torque; must exceed 1 with a margin
    Torque running_torque;  // torque at the greatest power
};

/// Pull-out torque of a magnetic coupling over the greatest torque it has to carry: T_R = P/(2 pi n), margin = T/max(T_R, T_C). Source: mechanics; the margin itself is for user and pump maker to agree.
inline magnetic_coupling_margin_results magnetic_coupling_margin(Torque coupling_torque, Power greatest_power, RotationalSpeed speed, Torque start_torque)
{
    cutwater_refusal refusal;
    double margin_out;
    double running_torque_out;
    detail::check(cutwater_magnetic_coupling_margin(detail::number_in(unit<Torque>("N m"), coupling_torque), detail::number_in(unit<Power>("kW"), greatest_power), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Torque>("N m"), start_torque), &margin_out, &running_torque_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), margin_out), detail::quantity_of(unit<Torque>("N m"), running_torque_out)};
}

/// Part of the eddy loss of a long shell that a short one has, since its currents must turn back at the ends: k_e = 1 - tanh(x)/x, x = p L/D. Source: R. L. Russell and K. H. Norsworthy, Proc. IEE 105A (1958) 166 (from memory of it): currents that close within the length of the magnets.
inline Ratio shell_end_factor(Count pole_pairs, Length length, Length diameter)
{
    cutwater_refusal refusal;
    double end_factor_out;
    detail::check(cutwater_shell_end_factor(detail::number_in(unit<Count>(""), pole_pairs), detail::number_in(unit<Length>("mm"), length), detail::number_in(unit<Length>("mm"), diameter), &end_factor_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), end_factor_out);
}

struct shell_eddy_loss_results {
    Power loss;  // heat in the shell, which the motor pays for
    Torque torque;  // torque on the outer magnets that it takes
    Ratio shielding;  // how much the currents weaken the field that makes them; the loss is high by 1 + s^2 at most
};

/// Heat that eddy currents make in the metal shell of a magnetic drive: P_e = k_e pi sigma (2 pi n)^2 (D/2)^3 t L B^2, T_e = P_e/(2 pi n), s = mu_0 sigma (2 pi n)(D/2) t/2; pole pairs do not appear. Source: induced current in a thin shell, integral of sigma (v B)^2; agrees with the low-speed limit of N. H. Frank's solid shaft, MIT RLE Technical Report 23, 1946 (abstract and set-up read), whose difference for two radii it is.
inline shell_eddy_loss_results shell_eddy_loss(MagneticFluxDensity flux_density, ElectricalConductivity conductivity, RotationalSpeed speed, Length diameter, Length wall, Length length, Ratio end_factor = unit<Ratio>("")(1))
{
    cutwater_refusal refusal;
    double loss_out;
    double torque_out;
    double shielding_out;
    detail::check(cutwater_shell_eddy_loss(detail::number_in(unit<MagneticFluxDensity>("T"), flux_density), detail::number_in(unit<ElectricalConductivity>("MS/m"), conductivity), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), wall), detail::number_in(unit<Length>("mm"), length), detail::number_in(unit<Ratio>(""), end_factor), &loss_out, &torque_out, &shielding_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("W"), loss_out), detail::quantity_of(unit<Torque>("N m"), torque_out), detail::quantity_of(unit<Ratio>(""), shielding_out)};
}

/// Warming of the liquid that cools the shell, bearings or canned motor of a sealed drive: dT = P/(q rho c_p). Source: balance of heat; common practice.
inline TemperatureDifference recirculation_temperature_rise(Power heat, Flow flow, Density density, SpecificHeat specific_heat)
{
    cutwater_refusal refusal;
    double rise_out;
    detail::check(cutwater_recirculation_temperature_rise(detail::number_in(unit<Power>("W"), heat), detail::number_in(unit<Flow>("l/min"), flow), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), &rise_out, &refusal), refusal);
    return detail::quantity_of(unit<TemperatureDifference>("K"), rise_out);
}

/// How much hotter the wall of a shell is than the liquid that cools it: dT = P/(pi D L h). Source: definition of the film coefficient; all heat taken to the liquid inside, the safe side for it.
inline TemperatureDifference shell_temperature_rise(Power heat, Length diameter, Length length, HeatTransfer film_coefficient)
{
    cutwater_refusal refusal;
    double rise_out;
    detail::check(cutwater_shell_temperature_rise(detail::number_in(unit<Power>("W"), heat), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), length), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), film_coefficient), &rise_out, &refusal), refusal);
    return detail::quantity_of(unit<TemperatureDifference>("K"), rise_out);
}

struct shell_vapour_margin_results {
    const char* verdict;  // kept: the margin is at least the one wanted and more than none; lost: it is not
    PressureDifference margin;  // pressure above the vapour pressure; negative: it boils
    Ratio pressure_ratio;  // of the absolute pressures
    Temperature outlet_temperature;  // temperature of the warmed liquid
    AbsolutePressure vapour_pressure;  // vapour pressure there
};

/// How far the liquid that cools a sealed drive stays from boiling: T_2 = T_1 + P/(q rho c_p), margin = p - p_v(T_2), ln p_v linear in 1/T between the points. Source: balance of heat; Clausius-Clapeyron between neighbouring points; common practice.
inline shell_vapour_margin_results shell_vapour_margin(Temperature inlet_temperature, Power heat, Flow flow, Density density, SpecificHeat specific_heat, AbsolutePressure lowest_pressure, PressureDifference margin_wanted, const std::vector<Temperature>& temperatures, const std::vector<AbsolutePressure>& vapour_pressures)
{
    const std::vector<double> temperatures_numbers = detail::numbers(unit<Temperature>("degC"), temperatures);
    const std::vector<double> vapour_pressures_numbers = detail::numbers(unit<AbsolutePressure>("bara"), vapour_pressures);
    cutwater_refusal refusal;
    const char* verdict_out;
    double margin_out;
    double pressure_ratio_out;
    double outlet_temperature_out;
    double vapour_pressure_out;
    detail::check(cutwater_shell_vapour_margin(detail::number_in(unit<Temperature>("degC"), inlet_temperature), detail::number_in(unit<Power>("W"), heat), detail::number_in(unit<Flow>("l/min"), flow), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<AbsolutePressure>("bara"), lowest_pressure), detail::number_in(unit<PressureDifference>("bar"), margin_wanted), temperatures_numbers.data(), temperatures_numbers.size(), vapour_pressures_numbers.data(), vapour_pressures_numbers.size(), &verdict_out, &margin_out, &pressure_ratio_out, &outlet_temperature_out, &vapour_pressure_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<PressureDifference>("bar"), margin_out), detail::quantity_of(unit<Ratio>(""), pressure_ratio_out), detail::quantity_of(unit<Temperature>("degC"), outlet_temperature_out), detail::quantity_of(unit<AbsolutePressure>("bara"), vapour_pressure_out)};
}

struct loss_of_flow_time_results {
    Time time;  // time until then, nothing lost to the air
    TemperatureRate heating_rate;  // rate of warming
};

/// Time in which a sealed drive reaches a temperature once its cooling liquid stands still: dT/dt = P/(V rho c_p + m c_m), t = (T_1 - T_0)/(dT/dt). Source: balance of heat; common practice.
inline loss_of_flow_time_results loss_of_flow_time(Power heat, Volume liquid_volume, Density density, SpecificHeat specific_heat, Mass metal_mass, SpecificHeat metal_specific_heat, Temperature start_temperature, Temperature limit_temperature)
{
    cutwater_refusal refusal;
    double time_out;
    double heating_rate_out;
    detail::check(cutwater_loss_of_flow_time(detail::number_in(unit<Power>("W"), heat), detail::number_in(unit<Volume>("ml"), liquid_volume), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<Mass>("kg"), metal_mass), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), metal_specific_heat), detail::number_in(unit<Temperature>("degC"), start_temperature), detail::number_in(unit<Temperature>("degC"), limit_temperature), &time_out, &heating_rate_out, &refusal), refusal);
    return {detail::quantity_of(unit<Time>("s"), time_out), detail::quantity_of(unit<TemperatureRate>("K/s"), heating_rate_out)};
}

}  // namespace cutwater

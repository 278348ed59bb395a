// generated from the catalogue by cutwater-generate; do not edit.
// Surface temperatures, heat loss and jackets.
#pragma once

#include <cutwater/families/surfaces.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

struct temperature_class_results {
    const char* temperature_class;  // class that the surface keeps, T6 the coolest
    Temperature class_limit;  // greatest surface temperature of the class
};

/// Temperature class of equipment by its greatest surface temperature: first class of T6 85, T5 100, T4 135, T3 200, T2 300, T1 450 degC with T_s + margin <= T_class. Source: IEC 60079-0, table of temperature classes (quoted alike in six places, excerpts read; clause 5.3.2.2 from memory); margins: IEC 60079-0:2017 26.5.1.3 and ISO 80079-36:2016 8.2 (from memory of both, 5 K to T3, 10 K above; another supplier's page has 10 K for T3, taken here).
inline temperature_class_results temperature_class(Temperature surface_temperature, TemperatureDifference margin = unit<TemperatureDifference>("K")(5), TemperatureDifference margin_hot = unit<TemperatureDifference>("K")(10))
{
    cutwater_refusal refusal;
    const char* temperature_class_out;
    double class_limit_out;
    detail::check(cutwater_temperature_class(detail::number_in(unit<Temperature>("degC"), surface_temperature), detail::number_in(unit<TemperatureDifference>("K"), margin), detail::number_in(unit<TemperatureDifference>("K"), margin_hot), &temperature_class_out, &class_limit_out, &refusal), refusal);
    return {temperature_class_out, detail::quantity_of(unit<Temperature>("degC"), class_limit_out)};
}

struct temperature_class_for_gas_results {
    const char* temperature_class;  // class needed; a class with a higher number does too
    Temperature class_limit;  // greatest surface temperature of the class
};

/// Temperature class that equipment needs at least in the vapour of a substance: first class of T1 450, T2 300, T3 200, T4 135, T5 100, T6 85 degC with T_i > T_class. Source: IEC 60079-0, table of temperature classes (quoted alike in six places, excerpts read; clause 5.3.2.2 from memory): surface at most the class's value, the gas's ignition temperature above it.
inline temperature_class_for_gas_results temperature_class_for_gas(Temperature ignition_temperature)
{
    cutwater_refusal refusal;
    const char* temperature_class_out;
    double class_limit_out;
    detail::check(cutwater_temperature_class_for_gas(detail::number_in(unit<Temperature>("degC"), ignition_temperature), &temperature_class_out, &class_limit_out, &refusal), refusal);
    return {temperature_class_out, detail::quantity_of(unit<Temperature>("degC"), class_limit_out)};
}

/// Greatest surface temperature beside a gas or vapour: T_max = f T_i - dT, both temperatures in degC. Source: 80 %: a test laboratory's page (read; it limits it to no zone); EN 1127-1 6.4.2 and ISO 80079-36 (from memory of both): demanded for category 1 and EPL Ga.
inline Temperature surface_temperature_allowed(Temperature ignition_temperature, Fraction share = unit<Fraction>("")(0.8), TemperatureDifference margin = unit<TemperatureDifference>("K")(0))
{
    cutwater_refusal refusal;
    double allowed_temperature_out;
    detail::check(cutwater_surface_temperature_allowed(detail::number_in(unit<Temperature>("degC"), ignition_temperature), detail::number_in(unit<Fraction>(""), share), detail::number_in(unit<TemperatureDifference>("K"), margin), &allowed_temperature_out, &refusal), refusal);
    return detail::quantity_of(unit<Temperature>("degC"), allowed_temperature_out);
}

/// Greatest surface temperature among combustible dust: T_max = lesser of (2/3) T_c and T_5 - 75 K, in degC. Source: IEC 60079-14 for layers up to 5 mm, as quoted by a trade page on ISO/IEC 80079-20-2 (read).
inline Temperature surface_temperature_allowed_dust(Temperature cloud_ignition, Temperature layer_ignition)
{
    cutwater_refusal refusal;
    double allowed_temperature_out;
    detail::check(cutwater_surface_temperature_allowed_dust(detail::number_in(unit<Temperature>("degC"), cloud_ignition), detail::number_in(unit<Temperature>("degC"), layer_ignition), &allowed_temperature_out, &refusal), refusal);
    return detail::quantity_of(unit<Temperature>("degC"), allowed_temperature_out);
}

/// Heat that liquid and metal of a pump take up for each kelvin: C = V rho c_p + m c_m. Source: definition.
inline HeatCapacity pump_heat_capacity(Volume liquid_volume, Density density, SpecificHeat specific_heat, Mass metal_mass = unit<Mass>("kg")(0), SpecificHeat metal_specific_heat = unit<SpecificHeat>("kJ/(kg K)")(0.46))
{
    cutwater_refusal refusal;
    double heat_capacity_out;
    detail::check(cutwater_pump_heat_capacity(detail::number_in(unit<Volume>("l"), liquid_volume), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<Mass>("kg"), metal_mass), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), metal_specific_heat), &heat_capacity_out, &refusal), refusal);
    return detail::quantity_of(unit<HeatCapacity>("kJ/K"), heat_capacity_out);
}

struct dead_headed_temperature_results {
    Temperature temperature;  // temperature after that time
    Temperature settled_temperature;  // temperature in the end, if nothing stops it
    Time time_constant;  // time in which 63 % of the change is done
};

/// Temperature of a pump that runs against a closed valve, after a time and in the end: T = T_e - (T_e - T_0) exp(-t/tau), T_e = T_a + P_0/(h A), tau = C/(h A). Source: balance of heat of one body, C dT/dt = P - h A (T - T_a); Newton's law of cooling; common practice, checked against a numerical integration.
inline dead_headed_temperature_results dead_headed_temperature(Power shutoff_power, HeatCapacity heat_capacity, Temperature start_temperature, Time time, Area surface, Temperature ambient_temperature, HeatTransfer surface_coefficient = unit<HeatTransfer>("W/(m2 K)")(10))
{
    cutwater_refusal refusal;
    double temperature_out;
    double settled_temperature_out;
    double time_constant_out;
    detail::check(cutwater_dead_headed_temperature(detail::number_in(unit<Power>("kW"), shutoff_power), detail::number_in(unit<HeatCapacity>("kJ/K"), heat_capacity), detail::number_in(unit<Temperature>("degC"), start_temperature), detail::number_in(unit<Time>("min"), time), detail::number_in(unit<Area>("m2"), surface), detail::number_in(unit<Temperature>("degC"), ambient_temperature), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), surface_coefficient), &temperature_out, &settled_temperature_out, &time_constant_out, &refusal), refusal);
    return {detail::quantity_of(unit<Temperature>("degC"), temperature_out), detail::quantity_of(unit<Temperature>("degC"), settled_temperature_out), detail::quantity_of(unit<Time>("min"), time_constant_out)};
}

struct dead_headed_time_results {
    Time time;  // time until then
    Temperature settled_temperature;  // temperature in the end, if nothing stops it
};

/// Time until a pump at closed valve reaches a temperature, heat lost to the air counted: t = tau ln((T_e - T_0)/(T_e - T_1)), T_e = T_a + P_0/(h A), tau = C/(h A). Source: balance of heat of one body, C dT/dt = P - h A (T - T_a); Newton's law of cooling; common practice, checked against a numerical integration.
inline dead_headed_time_results dead_headed_time(Power shutoff_power, HeatCapacity heat_capacity, Temperature start_temperature, Temperature limit_temperature, Area surface, Temperature ambient_temperature, HeatTransfer surface_coefficient = unit<HeatTransfer>("W/(m2 K)")(10))
{
    cutwater_refusal refusal;
    double time_out;
    double settled_temperature_out;
    detail::check(cutwater_dead_headed_time(detail::number_in(unit<Power>("kW"), shutoff_power), detail::number_in(unit<HeatCapacity>("kJ/K"), heat_capacity), detail::number_in(unit<Temperature>("degC"), start_temperature), detail::number_in(unit<Temperature>("degC"), limit_temperature), detail::number_in(unit<Area>("m2"), surface), detail::number_in(unit<Temperature>("degC"), ambient_temperature), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), surface_coefficient), &time_out, &settled_temperature_out, &refusal), refusal);
    return {detail::quantity_of(unit<Time>("min"), time_out), detail::quantity_of(unit<Temperature>("degC"), settled_temperature_out)};
}

struct dry_running_temperature_results {
    Temperature temperature;  // mean temperature after that time
    Temperature settled_temperature;  // mean temperature in the end
    Time time_constant;  // time in which 63 % of the change is done
};

/// Mean temperature of a part that rubs dry: seal faces, a bush, a ring: T = T_e - (T_e - T_0) exp(-t/tau), T_e = T_a + P/(h A), tau = C/(h A). Source: balance of heat of one body, C dT/dt = P - h A (T - T_a); Newton's law of cooling; common practice, checked against a numerical integration.
inline dry_running_temperature_results dry_running_temperature(Power friction_power, HeatCapacity heat_capacity, Temperature start_temperature, Time time, Area surface, Temperature ambient_temperature, HeatTransfer surface_coefficient = unit<HeatTransfer>("W/(m2 K)")(10))
{
    cutwater_refusal refusal;
    double temperature_out;
    double settled_temperature_out;
    double time_constant_out;
    detail::check(cutwater_dry_running_temperature(detail::number_in(unit<Power>("kW"), friction_power), detail::number_in(unit<HeatCapacity>("kJ/K"), heat_capacity), detail::number_in(unit<Temperature>("degC"), start_temperature), detail::number_in(unit<Time>("min"), time), detail::number_in(unit<Area>("m2"), surface), detail::number_in(unit<Temperature>("degC"), ambient_temperature), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), surface_coefficient), &temperature_out, &settled_temperature_out, &time_constant_out, &refusal), refusal);
    return {detail::quantity_of(unit<Temperature>("degC"), temperature_out), detail::quantity_of(unit<Temperature>("degC"), settled_temperature_out), detail::quantity_of(unit<Time>("min"), time_constant_out)};
}

/// Time until the liquid in a standing pump has cooled to a temperature, such as where it freezes or crystallises: t = tau ln((T_0 - T_a)/(T_1 - T_a)), tau = C/(h A). Source: Newton's law of cooling, one body; common practice, checked against a numerical integration.
inline Time cooling_time(HeatCapacity heat_capacity, Temperature start_temperature, Temperature limit_temperature, Area surface, Temperature ambient_temperature, HeatTransfer surface_coefficient = unit<HeatTransfer>("W/(m2 K)")(25))
{
    cutwater_refusal refusal;
    double time_out;
    detail::check(cutwater_cooling_time(detail::number_in(unit<HeatCapacity>("kJ/K"), heat_capacity), detail::number_in(unit<Temperature>("degC"), start_temperature), detail::number_in(unit<Temperature>("degC"), limit_temperature), detail::number_in(unit<Area>("m2"), surface), detail::number_in(unit<Temperature>("degC"), ambient_temperature), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), surface_coefficient), &time_out, &refusal), refusal);
    return detail::quantity_of(unit<Time>("h"), time_out);
}

struct surface_coefficient_results {
    HeatTransfer surface_coefficient;  // both together
    HeatTransfer convection;  // by free convection
    HeatTransfer radiation;  // by radiation
};

/// Heat that a surface gives to still air, by free convection and radiation: h = h_c + h_r, h_c = Nu k/L, h_r = eps sigma (T_s^2 + T_a^2)(T_s + T_a); Nu of Ra and Pr: cylinder (0.60 + 0.387 Ra^(1/6)/[1 + (0.559/Pr)^(9/16)]^(8/27))^2, wall 0.825 and 0.492 for 0.60 and 0.559, sphere 2 + 0.589 Ra^(1/4)/a^(4/9) (1 + 7.44e-8 Ra/a^(16/9))^(1/12), a = 1 + (0.469/Pr)^(9/16). Source: S. W. Churchill and H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049 and 1323; S. W. Churchill 1983 (the three as in the open library ht 1.0.7, read and run); air: U.S. Standard Atmosphere 1976, equations 51 and 53 (as in python3-fluids 1.0.22).
inline surface_coefficient_results surface_coefficient(Temperature surface_temperature, Temperature ambient_temperature, Length size, const char* shape = "horizontal cylinder", Fraction emissivity = unit<Fraction>("")(0.9), AbsolutePressure ambient_pressure = unit<AbsolutePressure>("bara")(1.01325))
{
    cutwater_refusal refusal;
    double surface_coefficient_out;
    double convection_out;
    double radiation_out;
    detail::check(cutwater_surface_coefficient(detail::number_in(unit<Temperature>("degC"), surface_temperature), detail::number_in(unit<Temperature>("degC"), ambient_temperature), detail::number_in(unit<Length>("mm"), size), shape, detail::number_in(unit<Fraction>(""), emissivity), detail::number_in(unit<AbsolutePressure>("bara"), ambient_pressure), &surface_coefficient_out, &convection_out, &radiation_out, &refusal), refusal);
    return {detail::quantity_of(unit<HeatTransfer>("W/(m2 K)"), surface_coefficient_out), detail::quantity_of(unit<HeatTransfer>("W/(m2 K)"), convection_out), detail::quantity_of(unit<HeatTransfer>("W/(m2 K)"), radiation_out)};
}

/// Heat that a bare casing gives to the air: Q = h A (T_s - T_a). Source: Newton's law of cooling; common practice.
inline Power casing_heat_loss(Temperature surface_temperature, Temperature ambient_temperature, Area area, HeatTransfer surface_coefficient = unit<HeatTransfer>("W/(m2 K)")(10))
{
    cutwater_refusal refusal;
    double heat_loss_out;
    detail::check(cutwater_casing_heat_loss(detail::number_in(unit<Temperature>("degC"), surface_temperature), detail::number_in(unit<Temperature>("degC"), ambient_temperature), detail::number_in(unit<Area>("m2"), area), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), surface_coefficient), &heat_loss_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), heat_loss_out);
}

struct insulated_casing_heat_loss_results {
    Power heat_loss;  // heat lost; negative: heat taken up
    Temperature surface_temperature;  // temperature of the cladding
};

/// Heat that an insulated casing gives to the air, and how hot the cladding is: Q = A (T_1 - T_a)/(s/k + 1/h), T_s = T_a + Q/(h A). Source: conduction through a plane or cylindrical layer and a surface film in series; J. P. Holman, Heat Transfer, and any text on it (from memory).
inline insulated_casing_heat_loss_results insulated_casing_heat_loss(Temperature hot_temperature, Temperature ambient_temperature, Area area, Length insulation_thickness, ThermalConductivity conductivity, HeatTransfer surface_coefficient = unit<HeatTransfer>("W/(m2 K)")(10))
{
    cutwater_refusal refusal;
    double heat_loss_out;
    double surface_temperature_out;
    detail::check(cutwater_insulated_casing_heat_loss(detail::number_in(unit<Temperature>("degC"), hot_temperature), detail::number_in(unit<Temperature>("degC"), ambient_temperature), detail::number_in(unit<Area>("m2"), area), detail::number_in(unit<Length>("mm"), insulation_thickness), detail::number_in(unit<ThermalConductivity>("W/(m K)"), conductivity), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), surface_coefficient), &heat_loss_out, &surface_temperature_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), heat_loss_out), detail::quantity_of(unit<Temperature>("degC"), surface_temperature_out)};
}

struct pipe_heat_loss_results {
    HeatPerLength heat_per_length;  // heat lost by each metre
    Temperature surface_temperature;  // temperature of the surface
};

/// Heat that each metre of an insulated or bare pipe gives to the air: q = (T_1 - T_a)/(ln((D + 2 s)/D)/(2 pi k) + 1/(h pi (D + 2 s))), T_s = T_a + q/(h pi (D + 2 s)). Source: conduction through a plane or cylindrical layer and a surface film in series; J. P. Holman, Heat Transfer, and any text on it (from memory).
inline pipe_heat_loss_results pipe_heat_loss(Temperature hot_temperature, Temperature ambient_temperature, Length outside_diameter, Length insulation_thickness, ThermalConductivity conductivity, HeatTransfer surface_coefficient = unit<HeatTransfer>("W/(m2 K)")(10))
{
    cutwater_refusal refusal;
    double heat_per_length_out;
    double surface_temperature_out;
    detail::check(cutwater_pipe_heat_loss(detail::number_in(unit<Temperature>("degC"), hot_temperature), detail::number_in(unit<Temperature>("degC"), ambient_temperature), detail::number_in(unit<Length>("mm"), outside_diameter), detail::number_in(unit<Length>("mm"), insulation_thickness), detail::number_in(unit<ThermalConductivity>("W/(m K)"), conductivity), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), surface_coefficient), &heat_per_length_out, &surface_temperature_out, &refusal), refusal);
    return {detail::quantity_of(unit<HeatPerLength>("W/m"), heat_per_length_out), detail::quantity_of(unit<Temperature>("degC"), surface_temperature_out)};
}

struct heat_tracing_duty_results {
    Power duty;  // heat for pipe and pump together
    Power pipe_duty;  // heat for the pipe
    Power casing_duty;  // heat for the pump
};

/// Heat that tracing must bring to hold insulated lines and a pump at a temperature: Q = (1 + m)(q l + A (T_1 - T_a)/(s/k + 1/h)), q as in pipe_heat_loss. Source: conduction in series as in pipe_heat_loss and insulated_casing_heat_loss; the margin: common practice.
inline heat_tracing_duty_results heat_tracing_duty(Temperature hot_temperature, Temperature ambient_temperature, Length outside_diameter, Length insulation_thickness, ThermalConductivity conductivity, Length length, Area casing_area = unit<Area>("m2")(0), HeatTransfer surface_coefficient = unit<HeatTransfer>("W/(m2 K)")(10), Fraction margin = unit<Fraction>("")(0.2))
{
    cutwater_refusal refusal;
    double duty_out;
    double pipe_duty_out;
    double casing_duty_out;
    detail::check(cutwater_heat_tracing_duty(detail::number_in(unit<Temperature>("degC"), hot_temperature), detail::number_in(unit<Temperature>("degC"), ambient_temperature), detail::number_in(unit<Length>("mm"), outside_diameter), detail::number_in(unit<Length>("mm"), insulation_thickness), detail::number_in(unit<ThermalConductivity>("W/(m K)"), conductivity), detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Area>("m2"), casing_area), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), surface_coefficient), detail::number_in(unit<Fraction>(""), margin), &duty_out, &pipe_duty_out, &casing_duty_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), duty_out), detail::quantity_of(unit<Power>("kW"), pipe_duty_out), detail::quantity_of(unit<Power>("kW"), casing_duty_out)};
}

/// Heat that a jacket must bring: what the casing loses, and what warming it up takes: Q = Q_0 + C dT/t. Source: balance of heat; common practice.
inline Power jacket_heat_duty(Power heat_loss, HeatCapacity heat_capacity, TemperatureDifference warming, Time time = unit<Time>("h")(1))
{
    cutwater_refusal refusal;
    double duty_out;
    detail::check(cutwater_jacket_heat_duty(detail::number_in(unit<Power>("kW"), heat_loss), detail::number_in(unit<HeatCapacity>("kJ/K"), heat_capacity), detail::number_in(unit<TemperatureDifference>("K"), warming), detail::number_in(unit<Time>("h"), time), &duty_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), duty_out);
}

/// Temperature that the heating medium in a jacket must have: T_j = T + Q/(U A). Source: definition of the overall coefficient.
inline Temperature jacket_temperature_needed(Power duty, Temperature product_temperature, Area area, HeatTransfer overall_coefficient)
{
    cutwater_refusal refusal;
    double jacket_temperature_out;
    detail::check(cutwater_jacket_temperature_needed(detail::number_in(unit<Power>("kW"), duty), detail::number_in(unit<Temperature>("degC"), product_temperature), detail::number_in(unit<Area>("m2"), area), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), overall_coefficient), &jacket_temperature_out, &refusal), refusal);
    return detail::quantity_of(unit<Temperature>("degC"), jacket_temperature_out);
}

/// Steam that condenses in a jacket or tracer: m = Q/r. Source: balance of heat; latent heats by IAPWS-IF97 (library iapws 1.5.2, run).
inline MassFlow jacket_steam_flow(Power duty, SpecificEnergy latent_heat)
{
    cutwater_refusal refusal;
    double steam_out;
    detail::check(cutwater_jacket_steam_flow(detail::number_in(unit<Power>("kW"), duty), detail::number_in(unit<SpecificEnergy>("kJ/kg"), latent_heat), &steam_out, &refusal), refusal);
    return detail::quantity_of(unit<MassFlow>("kg/h"), steam_out);
}

}  // namespace cutwater

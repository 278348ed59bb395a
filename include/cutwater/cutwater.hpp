// generated from the catalogue by cutwater-generate; do not edit.
// The typed C++ door, header only over the flat C API: quantities in and out, a refusal thrown as cutwater::Refused.
#pragma once

#include <cutwater/cutwater.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

// ---- Liquid properties, pressure and head ----

/// Density of liquid water: rho = 16.53 MPa/(R T gamma_pi(pi, tau)), pi = p/16.53 MPa, tau = 1386 K/T. Source: IAPWS R7-97(2012), clause 5.1, equation (7), Tables 2 and 3 (coefficients as in python3-iapws 1.5.2, which reproduces the release's Table 5).
inline Density water_density(Temperature temperature, AbsolutePressure pressure)
{
    cutwater_refusal refusal;
    double density_out;
    detail::check(cutwater_water_density(detail::number_in(unit<Temperature>("degC"), temperature), detail::number_in(unit<AbsolutePressure>("bara"), pressure), &density_out, &refusal), refusal);
    return detail::quantity_of(unit<Density>("kg/m3"), density_out);
}

/// Vapour pressure of water: p_v = (2 C/(-B + sqrt(B^2 - 4 A C)))^4 MPa; A, B, C quadratics in theta = T + n9/(T - n10). Source: IAPWS R7-97(2012), clause 8, equation (30), Table 34 (coefficients as in python3-iapws 1.5.2, which reproduces the release's Table 35).
inline AbsolutePressure water_vapour_pressure(Temperature temperature)
{
    cutwater_refusal refusal;
    double vapour_pressure_out;
    detail::check(cutwater_water_vapour_pressure(detail::number_in(unit<Temperature>("degC"), temperature), &vapour_pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<AbsolutePressure>("bara"), vapour_pressure_out);
}

/// Temperature at which water boils: T_s = (n10 + D - sqrt((n10 + D)^2 - 4 (n9 + n10 D)))/2; D from beta = (p/MPa)^(1/4). Source: IAPWS R7-97(2012), clause 8, equation (31), Table 34 (coefficients as in python3-iapws 1.5.2, which reproduces the release's Table 36).
inline Temperature water_boiling_temperature(AbsolutePressure pressure)
{
    cutwater_refusal refusal;
    double boiling_temperature_out;
    detail::check(cutwater_water_boiling_temperature(detail::number_in(unit<AbsolutePressure>("bara"), pressure), &boiling_temperature_out, &refusal), refusal);
    return detail::quantity_of(unit<Temperature>("degC"), boiling_temperature_out);
}

/// Dynamic viscosity of liquid water: mu = mu_0(T) mu_1(T, rho) x 1e-6 Pa s, rho from IAPWS-IF97. Source: IAPWS R12-08, equations (10) to (12), Tables 1 and 2, without critical enhancement (clause 3); density: IAPWS R7-97(2012), region 1 (coefficients as in python3-iapws 1.5.2, which reproduces Table 4 of R12-08).
inline DynamicViscosity water_dynamic_viscosity(Temperature temperature, AbsolutePressure pressure)
{
    cutwater_refusal refusal;
    double dynamic_viscosity_out;
    detail::check(cutwater_water_dynamic_viscosity(detail::number_in(unit<Temperature>("degC"), temperature), detail::number_in(unit<AbsolutePressure>("bara"), pressure), &dynamic_viscosity_out, &refusal), refusal);
    return detail::quantity_of(unit<DynamicViscosity>("mPa s"), dynamic_viscosity_out);
}

/// Kinematic viscosity of liquid water: nu = mu/rho, mu from IAPWS R12-08, rho from IAPWS-IF97. Source: IAPWS R12-08, equations (10) to (12), Tables 1 and 2, without critical enhancement (clause 3); density: IAPWS R7-97(2012), region 1 (coefficients as in python3-iapws 1.5.2, which reproduces Table 4 of R12-08).
inline KinematicViscosity water_kinematic_viscosity(Temperature temperature, AbsolutePressure pressure)
{
    cutwater_refusal refusal;
    double kinematic_viscosity_out;
    detail::check(cutwater_water_kinematic_viscosity(detail::number_in(unit<Temperature>("degC"), temperature), detail::number_in(unit<AbsolutePressure>("bara"), pressure), &kinematic_viscosity_out, &refusal), refusal);
    return detail::quantity_of(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity_out);
}

/// Specific heat capacity of liquid water at constant pressure: c_p = -R tau^2 gamma_tautau(pi, tau), pi = p/16.53 MPa, tau = 1386 K/T. Source: IAPWS R7-97(2012), clause 5.1, equation (7), Tables 2 and 3 (coefficients as in python3-iapws 1.5.2, which reproduces the release's Table 5).
inline SpecificHeat water_specific_heat(Temperature temperature, AbsolutePressure pressure)
{
    cutwater_refusal refusal;
    double specific_heat_out;
    detail::check(cutwater_water_specific_heat(detail::number_in(unit<Temperature>("degC"), temperature), detail::number_in(unit<AbsolutePressure>("bara"), pressure), &specific_heat_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificHeat>("kJ/(kg K)"), specific_heat_out);
}

/// Cubic expansion coefficient of liquid water at constant pressure: alpha_v = (1 - tau gamma_pitau/gamma_pi)/T, pi = p/16.53 MPa, tau = 1386 K/T. Source: IAPWS R7-97(2012), clause 5.1, equation (7), derived by differentiation: alpha_v = (1/v)(dv/dT) at constant p.
inline ThermalExpansion water_thermal_expansion(Temperature temperature, AbsolutePressure pressure)
{
    cutwater_refusal refusal;
    double expansion_out;
    detail::check(cutwater_water_thermal_expansion(detail::number_in(unit<Temperature>("degC"), temperature), detail::number_in(unit<AbsolutePressure>("bara"), pressure), &expansion_out, &refusal), refusal);
    return detail::quantity_of(unit<ThermalExpansion>("1/K"), expansion_out);
}

/// Isentropic bulk modulus of liquid water, as pressure waves meet it: K_s = rho w^2, w^2 = R T gamma_pi^2/((gamma_pi - tau gamma_pitau)^2/(tau^2 gamma_tautau) - gamma_pipi). Source: IAPWS R7-97(2012), clause 5.1, equation (7), Tables 2 and 3, speed of sound w (coefficients as in python3-iapws 1.5.2, which reproduces the release's Table 5).
inline PressureDifference water_bulk_modulus(Temperature temperature, AbsolutePressure pressure)
{
    cutwater_refusal refusal;
    double bulk_modulus_out;
    detail::check(cutwater_water_bulk_modulus(detail::number_in(unit<Temperature>("degC"), temperature), detail::number_in(unit<AbsolutePressure>("bara"), pressure), &bulk_modulus_out, &refusal), refusal);
    return detail::quantity_of(unit<PressureDifference>("GPa"), bulk_modulus_out);
}

/// Vapour pressure of a liquid from its Antoine constants: log10(p_v) = A - B/(T + C), p_v and T in the units of the constants. Source: C. Antoine, Comptes Rendus 107 (1888) 681; form as in Poling, Prausnitz, O'Connell, The Properties of Gases and Liquids, 5th ed. 2001, chapter 7 (from memory of both).
inline AbsolutePressure vapour_pressure_antoine(Ratio constant_a, Ratio constant_b, Ratio constant_c, Temperature temperature, Temperature lowest_temperature, Temperature highest_temperature, const char* constants_for)
{
    cutwater_refusal refusal;
    double vapour_pressure_out;
    detail::check(cutwater_vapour_pressure_antoine(detail::number_in(unit<Ratio>(""), constant_a), detail::number_in(unit<Ratio>(""), constant_b), detail::number_in(unit<Ratio>(""), constant_c), detail::number_in(unit<Temperature>("degC"), temperature), detail::number_in(unit<Temperature>("degC"), lowest_temperature), detail::number_in(unit<Temperature>("degC"), highest_temperature), constants_for, &vapour_pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<AbsolutePressure>("bara"), vapour_pressure_out);
}

/// Vapour pressure of a liquid between two known points: ln p_v = ln p_1 + (ln p_2 - ln p_1) (1/T - 1/T_1)/(1/T_2 - 1/T_1), T in kelvin. Source: Clausius-Clapeyron equation, integrated with a constant heat of vaporisation; Poling, Prausnitz, O'Connell, The Properties of Gases and Liquids, 5th ed. 2001, chapter 7 (from memory of it); limits of span: common practice.
inline AbsolutePressure vapour_pressure_two_point(Temperature first_temperature, AbsolutePressure first_pressure, Temperature second_temperature, AbsolutePressure second_pressure, Temperature temperature)
{
    cutwater_refusal refusal;
    double vapour_pressure_out;
    detail::check(cutwater_vapour_pressure_two_point(detail::number_in(unit<Temperature>("degC"), first_temperature), detail::number_in(unit<AbsolutePressure>("bara"), first_pressure), detail::number_in(unit<Temperature>("degC"), second_temperature), detail::number_in(unit<AbsolutePressure>("bara"), second_pressure), detail::number_in(unit<Temperature>("degC"), temperature), &vapour_pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<AbsolutePressure>("bara"), vapour_pressure_out);
}

/// Kinematic viscosity of a petroleum liquid at a temperature, from two known points: log10 log10 Z = A - B log10 T, Z = nu + 0.7 + C - D + E - F + G - H, nu in mm2/s, T in kelvin. Source: ASTM D341-09 (reapproved 2015), general relation with the terms C to H for low viscosities (from memory of it; constants found alike in several public programs); at least 5 K between the points: common practice.
inline KinematicViscosity viscosity_at_temperature(Temperature first_temperature, KinematicViscosity first_viscosity, Temperature second_temperature, KinematicViscosity second_viscosity, Temperature temperature)
{
    cutwater_refusal refusal;
    double kinematic_viscosity_out;
    detail::check(cutwater_viscosity_at_temperature(detail::number_in(unit<Temperature>("degC"), first_temperature), detail::number_in(unit<KinematicViscosity>("mm2/s"), first_viscosity), detail::number_in(unit<Temperature>("degC"), second_temperature), detail::number_in(unit<KinematicViscosity>("mm2/s"), second_viscosity), detail::number_in(unit<Temperature>("degC"), temperature), &kinematic_viscosity_out, &refusal), refusal);
    return detail::quantity_of(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity_out);
}

/// Kinematic viscosity from Saybolt Universal viscosity at the same temperature: solves U = (1 + 0.000061 (t - 100)) (4.6324 nu + (1 + 0.03264 nu) 1e5/(3930.2 + 262.7 nu + 23.97 nu^2 + 1.646 nu^3)) for nu; t in degF, nu in mm2/s. Source: ASTM D2161-93 (1999), equations for Saybolt Universal viscosity (from memory of them, excerpts of clauses 1 and 5 read; constants found alike in several public programs).
inline KinematicViscosity viscosity_from_saybolt(SayboltSeconds saybolt, Temperature temperature)
{
    cutwater_refusal refusal;
    double kinematic_viscosity_out;
    detail::check(cutwater_viscosity_from_saybolt(detail::number_in(unit<SayboltSeconds>("SUS"), saybolt), detail::number_in(unit<Temperature>("degC"), temperature), &kinematic_viscosity_out, &refusal), refusal);
    return detail::quantity_of(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity_out);
}

/// Saybolt Universal viscosity from kinematic viscosity at the same temperature: U = (1 + 0.000061 (t - 100)) (4.6324 nu + (1 + 0.03264 nu) 1e5/(3930.2 + 262.7 nu + 23.97 nu^2 + 1.646 nu^3)), t in degF, nu in mm2/s. Source: ASTM D2161-93 (1999), equations for Saybolt Universal viscosity (from memory of them, excerpts of clauses 1 and 5 read; constants found alike in several public programs).
inline SayboltSeconds saybolt_from_viscosity(KinematicViscosity kinematic_viscosity, Temperature temperature)
{
    cutwater_refusal refusal;
    double saybolt_out;
    detail::check(cutwater_saybolt_from_viscosity(detail::number_in(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity), detail::number_in(unit<Temperature>("degC"), temperature), &saybolt_out, &refusal), refusal);
    return detail::quantity_of(unit<SayboltSeconds>("SUS"), saybolt_out);
}

/// Density of a liquid at another temperature, from its cubic expansion coefficient: rho_2 = rho_1/(1 + beta (T_2 - T_1)). Source: definition of the mean cubic expansion coefficient, V_2 = V_1 (1 + beta (T_2 - T_1)); common practice.
inline Density density_at_temperature(Density density, Temperature first_temperature, ThermalExpansion expansion, Temperature second_temperature)
{
    cutwater_refusal refusal;
    double new_density_out;
    detail::check(cutwater_density_at_temperature(detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Temperature>("degC"), first_temperature), detail::number_in(unit<ThermalExpansion>("1/K"), expansion), detail::number_in(unit<Temperature>("degC"), second_temperature), &new_density_out, &refusal), refusal);
    return detail::quantity_of(unit<Density>("kg/m3"), new_density_out);
}

/// Relative density (specific gravity) of a liquid: d = rho/rho_0. Source: ISO 80000-4:2019, 4-4, relative density (from memory of it); reference of 1000 kg/m3: common practice.
inline Ratio relative_density(Density density, Density reference_density = unit<Density>("kg/m3")(1000))
{
    cutwater_refusal refusal;
    double relative_density_out;
    detail::check(cutwater_relative_density(detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Density>("kg/m3"), reference_density), &relative_density_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), relative_density_out);
}

/// Density of a liquid from its relative density (specific gravity): rho = d rho_0. Source: ISO 80000-4:2019, 4-4, relative density (from memory of it); reference of 1000 kg/m3: common practice.
inline Density density_from_relative(Ratio relative_density, Density reference_density = unit<Density>("kg/m3")(1000))
{
    cutwater_refusal refusal;
    double density_out;
    detail::check(cutwater_density_from_relative(detail::number_in(unit<Ratio>(""), relative_density), detail::number_in(unit<Density>("kg/m3"), reference_density), &density_out, &refusal), refusal);
    return detail::quantity_of(unit<Density>("kg/m3"), density_out);
}

/// Density of a petroleum liquid at 60 degF from its API gravity: rho = 999.016 kg/m3 x 141.5/(G + 131.5). Source: API Manual of Petroleum Measurement Standards, chapter 11: definition of API gravity (from memory of it); water at 60 degF 999.016 kg/m3.
inline Density density_from_api_gravity(Ratio api_gravity)
{
    cutwater_refusal refusal;
    double density_out;
    detail::check(cutwater_density_from_api_gravity(detail::number_in(unit<Ratio>(""), api_gravity), &density_out, &refusal), refusal);
    return detail::quantity_of(unit<Density>("kg/m3"), density_out);
}

/// API gravity of a petroleum liquid from its density at 60 degF: G = 141.5 x 999.016 kg/m3/rho - 131.5. Source: API Manual of Petroleum Measurement Standards, chapter 11: definition of API gravity (from memory of it); water at 60 degF 999.016 kg/m3.
inline Ratio api_gravity_from_density(Density density)
{
    cutwater_refusal refusal;
    double api_gravity_out;
    detail::check(cutwater_api_gravity_from_density(detail::number_in(unit<Density>("kg/m3"), density), &api_gravity_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), api_gravity_out);
}

/// Kinematic viscosity from dynamic viscosity: nu = mu/rho. Source: ISO 80000-4:2019, 4-25, kinematic viscosity (from memory of it).
inline KinematicViscosity kinematic_from_dynamic(DynamicViscosity dynamic_viscosity, Density density)
{
    cutwater_refusal refusal;
    double kinematic_viscosity_out;
    detail::check(cutwater_kinematic_from_dynamic(detail::number_in(unit<DynamicViscosity>("mPa s"), dynamic_viscosity), detail::number_in(unit<Density>("kg/m3"), density), &kinematic_viscosity_out, &refusal), refusal);
    return detail::quantity_of(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity_out);
}

/// Dynamic viscosity from kinematic viscosity: mu = nu rho. Source: ISO 80000-4:2019, 4-25, kinematic viscosity (from memory of it).
inline DynamicViscosity dynamic_from_kinematic(KinematicViscosity kinematic_viscosity, Density density)
{
    cutwater_refusal refusal;
    double dynamic_viscosity_out;
    detail::check(cutwater_dynamic_from_kinematic(detail::number_in(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity), detail::number_in(unit<Density>("kg/m3"), density), &dynamic_viscosity_out, &refusal), refusal);
    return detail::quantity_of(unit<DynamicViscosity>("mPa s"), dynamic_viscosity_out);
}

/// Density of a slurry from its solids' share by mass: 1/rho_m = C_w/rho_s + (1 - C_w)/rho_l. Source: mass balance; Hydraulic Institute, Engineering Data Book, 2nd ed. 1990, II-B, equation 2.B.1 (public text read).
inline Density slurry_density(Density liquid_density, Density solids_density, Fraction mass_fraction)
{
    cutwater_refusal refusal;
    double slurry_density_out;
    detail::check(cutwater_slurry_density(detail::number_in(unit<Density>("kg/m3"), liquid_density), detail::number_in(unit<Density>("kg/m3"), solids_density), detail::number_in(unit<Fraction>(""), mass_fraction), &slurry_density_out, &refusal), refusal);
    return detail::quantity_of(unit<Density>("kg/m3"), slurry_density_out);
}

/// Solids' share of a slurry by volume, from their share by mass: C_v = (C_w/rho_s)/(C_w/rho_s + (1 - C_w)/rho_l). Source: mass balance; Hydraulic Institute, Engineering Data Book, 2nd ed. 1990, II-B, equation 2.B.1 (public text read).
inline Fraction slurry_volume_fraction(Density liquid_density, Density solids_density, Fraction mass_fraction)
{
    cutwater_refusal refusal;
    double volume_fraction_out;
    detail::check(cutwater_slurry_volume_fraction(detail::number_in(unit<Density>("kg/m3"), liquid_density), detail::number_in(unit<Density>("kg/m3"), solids_density), detail::number_in(unit<Fraction>(""), mass_fraction), &volume_fraction_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), volume_fraction_out);
}

/// Solids' share of a slurry by mass, from their share by volume: C_w = C_v rho_s/(C_v rho_s + (1 - C_v) rho_l). Source: mass balance; Hydraulic Institute, Engineering Data Book, 2nd ed. 1990, II-B, equation 2.B.1 (public text read).
inline Fraction slurry_mass_fraction(Density liquid_density, Density solids_density, Fraction volume_fraction)
{
    cutwater_refusal refusal;
    double mass_fraction_out;
    detail::check(cutwater_slurry_mass_fraction(detail::number_in(unit<Density>("kg/m3"), liquid_density), detail::number_in(unit<Density>("kg/m3"), solids_density), detail::number_in(unit<Fraction>(""), volume_fraction), &mass_fraction_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), mass_fraction_out);
}

/// Pressure of the standard atmosphere at an altitude: p = p_0 (1 + beta H/T_0)^(-g/(beta R)), H = r h/(r + h); p_0 = 101325 Pa, T_0 = 288.15 K, beta = -0.0065 K/m, R = 287.05287 J/(kg K), r = 6356766 m. Source: ISO 2533:1975, clause 2 (from memory of it); below -2000 m: ISO 2533:1975/Add 2:1997 (excerpt of its scope read).
inline AbsolutePressure barometric_pressure(Length altitude)
{
    cutwater_refusal refusal;
    double ambient_pressure_out;
    detail::check(cutwater_barometric_pressure(detail::number_in(unit<Length>("m"), altitude), &ambient_pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<AbsolutePressure>("bara"), ambient_pressure_out);
}

/// Absolute pressure from a gauge reading: p = p_M + p_amb. Source: definition; ISO 17769-1:2012, gauge pressure (from memory of it).
inline AbsolutePressure absolute_from_gauge(GaugePressure gauge_pressure, AbsolutePressure ambient_pressure)
{
    cutwater_refusal refusal;
    double absolute_pressure_out;
    detail::check(cutwater_absolute_from_gauge(detail::number_in(unit<GaugePressure>("barg"), gauge_pressure), detail::number_in(unit<AbsolutePressure>("bara"), ambient_pressure), &absolute_pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<AbsolutePressure>("bara"), absolute_pressure_out);
}

/// What a gauge shows at an absolute pressure: p_M = p - p_amb. Source: definition; ISO 17769-1:2012, gauge pressure (from memory of it).
inline GaugePressure gauge_from_absolute(AbsolutePressure absolute_pressure, AbsolutePressure ambient_pressure)
{
    cutwater_refusal refusal;
    double gauge_pressure_out;
    detail::check(cutwater_gauge_from_absolute(detail::number_in(unit<AbsolutePressure>("bara"), absolute_pressure), detail::number_in(unit<AbsolutePressure>("bara"), ambient_pressure), &gauge_pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<GaugePressure>("barg"), gauge_pressure_out);
}

/// Head of liquid that a pressure difference stands for: H = dp/(rho g), g = 9.80665 m/s2. Source: hydrostatics; ISO 17769-1:2012, pressure head (from memory of it).
inline Length head_from_pressure(PressureDifference pressure_difference, Density density)
{
    cutwater_refusal refusal;
    double head_out;
    detail::check(cutwater_head_from_pressure(detail::number_in(unit<PressureDifference>("bar"), pressure_difference), detail::number_in(unit<Density>("kg/m3"), density), &head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), head_out);
}

/// Pressure difference of a head of liquid: dp = rho g H, g = 9.80665 m/s2. Source: hydrostatics; ISO 17769-1:2012, pressure head (from memory of it).
inline PressureDifference pressure_from_head(Length head, Density density)
{
    cutwater_refusal refusal;
    double pressure_difference_out;
    detail::check(cutwater_pressure_from_head(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), &pressure_difference_out, &refusal), refusal);
    return detail::quantity_of(unit<PressureDifference>("bar"), pressure_difference_out);
}

// ---- System and suction ----

/// Mean velocity in a full round pipe: v = Q/(pi/4 d^2). Source: continuity; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read).
inline Velocity pipe_velocity(Flow flow, Length bore)
{
    cutwater_refusal refusal;
    double velocity_out;
    detail::check(cutwater_pipe_velocity(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), bore), &velocity_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("m/s"), velocity_out);
}

/// Bore at which a flow has a given mean velocity: d = sqrt(Q/(pi/4 v)). Source: continuity; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read).
inline Length bore_for_velocity(Flow flow, Velocity velocity)
{
    cutwater_refusal refusal;
    double bore_out;
    detail::check(cutwater_bore_for_velocity(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Velocity>("m/s"), velocity), &bore_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("mm"), bore_out);
}

/// Head of the liquid's kinetic energy at its mean velocity in a pipe: h_v = v^2/(2 g), v = Q/(pi/4 d^2). Source: ISO 17769-1:2012, velocity head (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition (excerpt read).
inline Length velocity_head(Flow flow, Length bore)
{
    cutwater_refusal refusal;
    double velocity_head_out;
    detail::check(cutwater_velocity_head(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), bore), &velocity_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), velocity_head_out);
}

/// Reynolds number of the flow in a full round pipe: Re = v d/nu, v = Q/(pi/4 d^2). Source: O. Reynolds (1883); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read).
inline Ratio reynolds_number(Flow flow, Length bore, KinematicViscosity kinematic_viscosity)
{
    cutwater_refusal refusal;
    double reynolds_number_out;
    detail::check(cutwater_reynolds_number(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity), &reynolds_number_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), reynolds_number_out);
}

/// Friction factor of a round pipe as Darcy defines it (four times Fanning's): Re <= 2000: f = 64/Re; above: 1/sqrt(f) = -2 log10(eps/(3.7 d) + 2.51/(Re sqrt(f))). Source: C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133 (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.2 and 3.A.5, table of roughness and critical zone (excerpt read).
inline Ratio friction_factor(Ratio reynolds_number, Length roughness, Length bore)
{
    cutwater_refusal refusal;
    double friction_factor_out;
    detail::check(cutwater_friction_factor(detail::number_in(unit<Ratio>(""), reynolds_number), detail::number_in(unit<Length>("mm"), roughness), detail::number_in(unit<Length>("mm"), bore), &friction_factor_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), friction_factor_out);
}

/// Head lost by friction in a straight round pipe: h_f = f (L/d) v^2/(2 g); Re <= 2000: f = 64/Re; above: f by Colebrook-White. Source: Darcy and Weisbach; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.1 to 3.A.5 (excerpt read).
inline Length pipe_friction_head(Flow flow, Length bore, Length length, Length roughness, KinematicViscosity kinematic_viscosity)
{
    cutwater_refusal refusal;
    double friction_head_out;
    detail::check(cutwater_pipe_friction_head(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Length>("mm"), roughness), detail::number_in(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity), &friction_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), friction_head_out);
}

/// Head lost in fittings, from their loss coefficient: h = K v^2/(2 g), v = Q/(pi/4 d^2). Source: Hydraulic Institute, Engineering Data Book, 2nd edition, losses of fittings (excerpt read).
inline Length fitting_head(Flow flow, Length bore, Ratio loss_coefficient)
{
    cutwater_refusal refusal;
    double head_loss_out;
    detail::check(cutwater_fitting_head(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Ratio>(""), loss_coefficient), &head_loss_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), head_loss_out);
}

struct valve_head_loss_results {
    Length head_loss;  // head lost, of the liquid that flows; the density cancels out of it
    PressureDifference pressure_loss;  // pressure lost
};

/// Head and pressure lost in a valve, from its flow coefficient: dp = d (Q/Kv)^2 bar with Q in m3/h; h = dp/(d rho_0 g), rho_0 = 999.1 kg/m3. Source: IEC 60534-2-1:2011, 7.1, turbulent incompressible flow, N1 = 1, no reducers (from memory of it); density of water at 15 degC: IAPWS-IF97.
inline valve_head_loss_results valve_head_loss(Flow flow, ValveCoefficient flow_coefficient, Ratio relative_density = unit<Ratio>("")(1))
{
    cutwater_refusal refusal;
    double head_loss_out;
    double pressure_loss_out;
    detail::check(cutwater_valve_head_loss(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<ValveCoefficient>("Kv"), flow_coefficient), detail::number_in(unit<Ratio>(""), relative_density), &head_loss_out, &pressure_loss_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("m"), head_loss_out), detail::quantity_of(unit<PressureDifference>("bar"), pressure_loss_out)};
}

/// Resistance of a system from its losses at one flow: k = h_f/Q^2. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.7 and 1.A.8 (excerpt read).
inline SystemResistance system_resistance(Flow flow, Length friction_head)
{
    cutwater_refusal refusal;
    double resistance_out;
    detail::check(cutwater_system_resistance(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), friction_head), &resistance_out, &refusal), refusal);
    return detail::quantity_of(unit<SystemResistance>("h2/m5"), resistance_out);
}

/// Head that a system asks for at a flow: H = H_s + k Q^2. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.8 (excerpt read).
inline Length system_head(Length static_head, SystemResistance resistance, Flow flow)
{
    cutwater_refusal refusal;
    double head_out;
    detail::check(cutwater_system_head(detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), detail::number_in(unit<Flow>("m3/h"), flow), &head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), head_out);
}

/// Total head of a pump from its discharge and suction gauges: H = (p_2 - p_1)/(rho g) + z_2 - z_1 + (v_2^2 - v_1^2)/(2 g). Source: ISO 9906:2012, pump total head (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.3 to 1.A.6 (excerpt read).
inline Length total_head_from_gauges(GaugePressure discharge_pressure, GaugePressure suction_pressure, Length discharge_gauge_elevation, Length suction_gauge_elevation, Length discharge_bore, Length suction_bore, Flow flow, Density density)
{
    cutwater_refusal refusal;
    double total_head_out;
    detail::check(cutwater_total_head_from_gauges(detail::number_in(unit<GaugePressure>("barg"), discharge_pressure), detail::number_in(unit<GaugePressure>("barg"), suction_pressure), detail::number_in(unit<Length>("m"), discharge_gauge_elevation), detail::number_in(unit<Length>("m"), suction_gauge_elevation), detail::number_in(unit<Length>("mm"), discharge_bore), detail::number_in(unit<Length>("mm"), suction_bore), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Density>("kg/m3"), density), &total_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), total_head_out);
}

/// Net positive suction head that the installation offers: NPSHA = (p_s - p_v)/(rho g) + z - h_f. Source: ISO 17769-1:2012, net positive suction head and its datum; ANSI/HI 9.6.1-2012 (from memory of both); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read).
inline Length npsh_available(AbsolutePressure surface_pressure, AbsolutePressure vapour_pressure, Density density, Length liquid_level, Length friction_head)
{
    cutwater_refusal refusal;
    double npsh_out;
    detail::check(cutwater_npsh_available(detail::number_in(unit<AbsolutePressure>("bara"), surface_pressure), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Length>("m"), liquid_level), detail::number_in(unit<Length>("m"), friction_head), &npsh_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh_out);
}

/// Net positive suction head at the pump, from a suction gauge reading: NPSHA = (p_1 + p_amb - p_v)/(rho g) + z_1 + v^2/(2 g). Source: ISO 9906:2012, NPSH at the reference plane (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read).
inline Length npsh_available_from_gauge(GaugePressure suction_pressure, AbsolutePressure ambient_pressure, Length gauge_elevation, Length bore, Flow flow, Density density, AbsolutePressure vapour_pressure)
{
    cutwater_refusal refusal;
    double npsh_out;
    detail::check(cutwater_npsh_available_from_gauge(detail::number_in(unit<GaugePressure>("barg"), suction_pressure), detail::number_in(unit<AbsolutePressure>("bara"), ambient_pressure), detail::number_in(unit<Length>("m"), gauge_elevation), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), &npsh_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh_out);
}

/// NPSH margin as a difference: m = NPSHA - NPSH3. Source: ANSI/HI 9.6.1-2012, NPSH margin (from memory of it).
inline Length npsh_margin(Length npsh_available, Length npsh3)
{
    cutwater_refusal refusal;
    double margin_out;
    detail::check(cutwater_npsh_margin(detail::number_in(unit<Length>("m"), npsh_available), detail::number_in(unit<Length>("m"), npsh3), &margin_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), margin_out);
}

/// NPSH margin as a ratio: ratio = NPSHA/NPSH3. Source: ANSI/HI 9.6.1-2012, NPSH margin ratio (from memory of it).
inline Ratio npsh_margin_ratio(Length npsh_available, Length npsh3)
{
    cutwater_refusal refusal;
    double margin_ratio_out;
    detail::check(cutwater_npsh_margin_ratio(detail::number_in(unit<Length>("m"), npsh_available), detail::number_in(unit<Length>("m"), npsh3), &margin_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), margin_ratio_out);
}

/// NPSH3 on a viscous liquid from NPSH3 on water, an estimate of the trend: NPSH3_vis = NPSH3_W (1 + A (1/C_H - 1) 274000 NPSH3_BEP/(Q_BEP^0.667 n^1.33)); m, m3/h, 1/min. Source: ISO/TR 17766:2005 and ANSI/HI 9.6.7-2010, NPSH3 on viscous liquids (from memory of both; the metric constant agrees with the 225 000 of the US form within 0.3 %).
inline Length npsh3_with_viscosity(Length npsh3, Length best_efficiency_npsh3, Ratio head_ratio, Flow best_efficiency_flow, RotationalSpeed speed, const char* inlet)
{
    cutwater_refusal refusal;
    double viscous_npsh3_out;
    detail::check(cutwater_npsh3_with_viscosity(detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Length>("m"), best_efficiency_npsh3), detail::number_in(unit<Ratio>(""), head_ratio), detail::number_in(unit<Flow>("m3/h"), best_efficiency_flow), detail::number_in(unit<RotationalSpeed>("1/min"), speed), inlet, &viscous_npsh3_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), viscous_npsh3_out);
}

/// Greatest height of a pump above the liquid that leaves NPSH3 and a margin: z_max = (p_s - p_v)/(rho g) - h_f - NPSH3 - m. Source: ISO 17769-1:2012, net positive suction head (from memory of it), solved for the level; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read).
inline Length greatest_suction_lift(AbsolutePressure surface_pressure, AbsolutePressure vapour_pressure, Density density, Length friction_head, Length npsh3, Length margin)
{
    cutwater_refusal refusal;
    double lift_out;
    detail::check(cutwater_greatest_suction_lift(detail::number_in(unit<AbsolutePressure>("bara"), surface_pressure), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Length>("m"), friction_head), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Length>("m"), margin), &lift_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), lift_out);
}

/// Least depth of an inlet below the surface, against vortices that draw air: S = D (1 + 2.3 F_D), F_D = V/sqrt(g D), V = Q/(pi/4 D^2). Source: ANSI/HI 9.8, required submergence against vortices (from memory of it, after Hecker 1987); formula read in Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.E.1 and 1.E.2 (excerpt read).
inline Length minimum_submergence(Flow flow, Length inlet_diameter)
{
    cutwater_refusal refusal;
    double submergence_out;
    detail::check(cutwater_minimum_submergence(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), inlet_diameter), &submergence_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), submergence_out);
}

/// Least sump volume between the start and stop levels of one pump: V = T Q/4, T = 1/Z; the shortest cycle comes at an inflow of Q/2. Source: ANSI/HI 9.8, minimum sump volume of a constant-speed pump (from memory of it); the least of T = V/q + V/(Q - q) is at q = Q/2.
inline Volume wet_well_volume(Flow flow, Frequency starts)
{
    cutwater_refusal refusal;
    double volume_out;
    detail::check(cutwater_wet_well_volume(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Frequency>("1/h"), starts), &volume_out, &refusal), refusal);
    return detail::quantity_of(unit<Volume>("m3"), volume_out);
}

/// Time to draw the air out of a suction line, the liquid rising after it: t = (V/S)(1 + ln(p_amb/(p_amb - rho g L))). Source: mass balance of ideal isothermal air at a constant volume rate, all of it above the lift (the slowest case); own model, checked against a numerical march.
inline Time priming_time(Volume pipe_volume, Flow air_handling_rate, Length lift, AbsolutePressure ambient_pressure = unit<AbsolutePressure>("bara")(1.01325), Density density = unit<Density>("kg/m3")(998.2))
{
    cutwater_refusal refusal;
    double time_out;
    detail::check(cutwater_priming_time(detail::number_in(unit<Volume>("m3"), pipe_volume), detail::number_in(unit<Flow>("m3/h"), air_handling_rate), detail::number_in(unit<Length>("m"), lift), detail::number_in(unit<AbsolutePressure>("bara"), ambient_pressure), detail::number_in(unit<Density>("kg/m3"), density), &time_out, &refusal), refusal);
    return detail::quantity_of(unit<Time>("s"), time_out);
}

/// Pressure rise when a flow is stopped faster than the pressure wave returns: dp = rho a dv. Source: N. Joukowsky (1898); Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it).
inline PressureDifference pressure_surge(Velocity velocity_change, Velocity wave_speed, Density density)
{
    cutwater_refusal refusal;
    double pressure_rise_out;
    detail::check(cutwater_pressure_surge(detail::number_in(unit<Velocity>("m/s"), velocity_change), detail::number_in(unit<Velocity>("m/s"), wave_speed), detail::number_in(unit<Density>("kg/m3"), density), &pressure_rise_out, &refusal), refusal);
    return detail::quantity_of(unit<PressureDifference>("bar"), pressure_rise_out);
}

/// Speed of a pressure wave in a thin-walled pipe full of liquid: a = sqrt(K/rho)/sqrt(1 + c K d/(E e)). Source: D. J. Korteweg (1878); restraint after Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it).
inline Velocity pressure_wave_speed(PressureDifference bulk_modulus, PressureDifference pipe_modulus, Length bore, Length wall, Density density = unit<Density>("kg/m3")(998.2), Ratio restraint = unit<Ratio>("")(1))
{
    cutwater_refusal refusal;
    double wave_speed_out;
    detail::check(cutwater_pressure_wave_speed(detail::number_in(unit<PressureDifference>("GPa"), bulk_modulus), detail::number_in(unit<PressureDifference>("GPa"), pipe_modulus), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Length>("mm"), wall), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Ratio>(""), restraint), &wave_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("m/s"), wave_speed_out);
}

/// Time of the pressure wave to the end of a line and back: a faster closure counts as sudden: T = 2 L/a. Source: Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it).
inline Time surge_period(Length length, Velocity wave_speed)
{
    cutwater_refusal refusal;
    double period_out;
    detail::check(cutwater_surge_period(detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Velocity>("m/s"), wave_speed), &period_out, &refusal), refusal);
    return detail::quantity_of(unit<Time>("s"), period_out);
}

// ---- Similarity and shape ----

/// Flow of a point of a pump's curve at another speed: Q' = Q n'/n. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline Flow flow_at_speed(Flow flow, RotationalSpeed speed, RotationalSpeed new_speed)
{
    cutwater_refusal refusal;
    double flow_at_new_speed_out;
    detail::check(cutwater_flow_at_speed(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), &flow_at_new_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), flow_at_new_speed_out);
}

/// Head of a point of a pump's curve at another speed: H' = H (n'/n)^2. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline Length head_at_speed(Length head, RotationalSpeed speed, RotationalSpeed new_speed)
{
    cutwater_refusal refusal;
    double head_at_new_speed_out;
    detail::check(cutwater_head_at_speed(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), &head_at_new_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), head_at_new_speed_out);
}

/// Power of a point of a pump's curve at another speed, its efficiency taken as unchanged: P' = P (n'/n)^3. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline Power power_at_speed(Power power, RotationalSpeed speed, RotationalSpeed new_speed)
{
    cutwater_refusal refusal;
    double power_at_new_speed_out;
    detail::check(cutwater_power_at_speed(detail::number_in(unit<Power>("kW"), power), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), &power_at_new_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), power_at_new_speed_out);
}

/// NPSH3 of a point of a pump's curve at another speed: NPSH3' = NPSH3 (n'/n)^x. Source: ISO 9906:2012, translation of NPSH3 to the specified speed, exponent 1.3 to 2 (from memory of it); limits of the ratio: set here.
inline Length npsh3_at_speed(Length npsh3, RotationalSpeed speed, RotationalSpeed new_speed, Ratio exponent = unit<Ratio>("")(2))
{
    cutwater_refusal refusal;
    double npsh3_at_new_speed_out;
    detail::check(cutwater_npsh3_at_speed(detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), detail::number_in(unit<Ratio>(""), exponent), &npsh3_at_new_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh3_at_new_speed_out);
}

/// Flow of a point of a pump's curve with the impeller trimmed: Q' = Q (D'/D)^x. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline Flow flow_at_trim(Flow flow, Length diameter, Length trimmed_diameter, Ratio exponent = unit<Ratio>("")(1))
{
    cutwater_refusal refusal;
    double trimmed_flow_out;
    detail::check(cutwater_flow_at_trim(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), detail::number_in(unit<Ratio>(""), exponent), &trimmed_flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), trimmed_flow_out);
}

/// Head of a point of a pump's curve with the impeller trimmed: H' = H (D'/D)^x. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline Length head_at_trim(Length head, Length diameter, Length trimmed_diameter, Ratio exponent = unit<Ratio>("")(2))
{
    cutwater_refusal refusal;
    double trimmed_head_out;
    detail::check(cutwater_head_at_trim(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), detail::number_in(unit<Ratio>(""), exponent), &trimmed_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), trimmed_head_out);
}

/// Power of a point of a pump's curve with the impeller trimmed, its efficiency taken as unchanged: P' = P (D'/D)^x. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline Power power_at_trim(Power power, Length diameter, Length trimmed_diameter, Ratio exponent = unit<Ratio>("")(3))
{
    cutwater_refusal refusal;
    double trimmed_power_out;
    detail::check(cutwater_power_at_trim(detail::number_in(unit<Power>("kW"), power), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), detail::number_in(unit<Ratio>(""), exponent), &trimmed_power_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), trimmed_power_out);
}

/// Specific speed in metric units: 1/min, m3/s, m: n_s = n sqrt(Q/i)/(H/z)^(3/4); n in 1/min, Q in m3/s, H in m. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.1 to 1.D.3 (excerpt read); flow per eye as in ISO 17769-1 (from memory of it).
inline SpecificSpeed specific_speed(RotationalSpeed speed, Flow flow, Length head, Count eyes = unit<Count>("")(1), Count stages = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double specific_speed_out;
    detail::check(cutwater_specific_speed(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Count>(""), eyes), detail::number_in(unit<Count>(""), stages), &specific_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeed>(""), specific_speed_out);
}

/// Specific speed in US units: 1/min, US gal/min, ft: N_s = n sqrt(Q/i)/(H/z)^(3/4); n in 1/min, Q in US gal/min, H in ft. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.1 and 1.D.2 (excerpt read); flow per eye as in ISO 17769-1 (from memory of it).
inline SpecificSpeedUs specific_speed_us(RotationalSpeed speed, Flow flow, Length head, Count eyes = unit<Count>("")(1), Count stages = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double specific_speed_us_out;
    detail::check(cutwater_specific_speed_us(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Count>(""), eyes), detail::number_in(unit<Count>(""), stages), &specific_speed_us_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeedUs>(""), specific_speed_us_out);
}

/// Type number: specific speed without units: K = 2 pi n sqrt(Q/i)/(g H/z)^(3/4). Source: ISO 17769-1:2012 and ISO 9906:2012, type number (from memory of both); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.3 (excerpt read).
inline Ratio type_number(RotationalSpeed speed, Flow flow, Length head, Count eyes = unit<Count>("")(1), Count stages = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double type_number_out;
    detail::check(cutwater_type_number(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Count>(""), eyes), detail::number_in(unit<Count>(""), stages), &type_number_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), type_number_out);
}

/// Metric specific speed (or suction specific speed) from that in US units: n_s = N_s/51.6452. Source: definitions of the US gallon and the foot (NIST SP 811); Hydraulic Institute, Engineering Data Book, 2nd edition, prints 51.6 (excerpt read).
inline SpecificSpeed specific_speed_from_us(SpecificSpeedUs specific_speed_us)
{
    cutwater_refusal refusal;
    double specific_speed_out;
    detail::check(cutwater_specific_speed_from_us(detail::number_in(unit<SpecificSpeedUs>(""), specific_speed_us), &specific_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeed>(""), specific_speed_out);
}

/// Metric specific speed from the type number: n_s = K g^(3/4)/(2 pi/60) = 52.919 K. Source: ISO 17769-1:2012, type number (from memory of it); g = 9.80665 m/s2.
inline SpecificSpeed specific_speed_from_type_number(Ratio type_number)
{
    cutwater_refusal refusal;
    double specific_speed_out;
    detail::check(cutwater_specific_speed_from_type_number(detail::number_in(unit<Ratio>(""), type_number), &specific_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeed>(""), specific_speed_out);
}

/// Specific speed (or suction specific speed) in US units from the metric one: N_s = 51.6452 n_s. Source: definitions of the US gallon and the foot (NIST SP 811); Hydraulic Institute, Engineering Data Book, 2nd edition, prints 51.6 (excerpt read).
inline SpecificSpeedUs specific_speed_us_from_metric(SpecificSpeed specific_speed)
{
    cutwater_refusal refusal;
    double specific_speed_us_out;
    detail::check(cutwater_specific_speed_us_from_metric(detail::number_in(unit<SpecificSpeed>(""), specific_speed), &specific_speed_us_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeedUs>(""), specific_speed_us_out);
}

/// Specific speed in US units from the type number: N_s = 2733.0 K. Source: ISO 17769-1:2012, type number (from memory of it); definitions of the US gallon and the foot (NIST SP 811).
inline SpecificSpeedUs specific_speed_us_from_type_number(Ratio type_number)
{
    cutwater_refusal refusal;
    double specific_speed_us_out;
    detail::check(cutwater_specific_speed_us_from_type_number(detail::number_in(unit<Ratio>(""), type_number), &specific_speed_us_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeedUs>(""), specific_speed_us_out);
}

/// Type number from the metric specific speed: K = n_s (2 pi/60)/g^(3/4) = n_s/52.919. Source: ISO 17769-1:2012, type number (from memory of it); g = 9.80665 m/s2.
inline Ratio type_number_from_specific_speed(SpecificSpeed specific_speed)
{
    cutwater_refusal refusal;
    double type_number_out;
    detail::check(cutwater_type_number_from_specific_speed(detail::number_in(unit<SpecificSpeed>(""), specific_speed), &type_number_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), type_number_out);
}

/// Type number from the specific speed in US units: K = N_s/2733.0. Source: ISO 17769-1:2012, type number (from memory of it); definitions of the US gallon and the foot (NIST SP 811).
inline Ratio type_number_from_us(SpecificSpeedUs specific_speed_us)
{
    cutwater_refusal refusal;
    double type_number_out;
    detail::check(cutwater_type_number_from_us(detail::number_in(unit<SpecificSpeedUs>(""), specific_speed_us), &type_number_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), type_number_out);
}

/// Suction specific speed in metric units: 1/min, m3/s, m, always per eye: n_ss = n sqrt(Q/i)/NPSH3^(3/4); n in 1/min, Q in m3/s, NPSH3 in m. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read).
inline SpecificSpeed suction_specific_speed(RotationalSpeed speed, Flow flow, Length npsh3, Count eyes = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double suction_specific_speed_out;
    detail::check(cutwater_suction_specific_speed(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Count>(""), eyes), &suction_specific_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeed>(""), suction_specific_speed_out);
}

/// Suction specific speed in US units: 1/min, US gal/min, ft, always per eye: N_ss = n sqrt(Q/i)/NPSH3^(3/4); n in 1/min, Q in US gal/min, NPSH3 in ft. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read).
inline SpecificSpeedUs suction_specific_speed_us(RotationalSpeed speed, Flow flow, Length npsh3, Count eyes = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double suction_specific_speed_us_out;
    detail::check(cutwater_suction_specific_speed_us(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Count>(""), eyes), &suction_specific_speed_us_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificSpeedUs>(""), suction_specific_speed_us_out);
}

/// Peripheral speed of an impeller's outside diameter: u_2 = pi D n. Source: definition; ISO 17769-1:2012, peripheral velocity (from memory of it).
inline Velocity tip_speed(Length diameter, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double tip_speed_out;
    detail::check(cutwater_tip_speed(detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &tip_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("m/s"), tip_speed_out);
}

/// Head coefficient of an impeller, psi = g H/u2^2: psi = g H/u_2^2, u_2 = pi D n. Source: definition as in ANSI/HI 1.3 (from memory of it).
inline Ratio head_coefficient(Length head, Length diameter, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double head_coefficient_out;
    detail::check(cutwater_head_coefficient(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &head_coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), head_coefficient_out);
}

/// Flow coefficient of an impeller, phi = c2m/u2: phi = Q/(pi D b_2 u_2), u_2 = pi D n. Source: definition; J. F. Guelich, Centrifugal Pumps, 3rd edition, 2014 (from memory of it).
inline Ratio flow_coefficient(Flow flow, Length diameter, Length width, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double flow_coefficient_out;
    detail::check(cutwater_flow_coefficient(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), width), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &flow_coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), flow_coefficient_out);
}

/// Specific diameter of an impeller, without units: D_s = D (g H)^(1/4)/sqrt(Q). Source: O. Cordier (1953); O. E. Balje, Turbomachines, 1981 (from memory of both).
inline Ratio specific_diameter(Flow flow, Length head, Length diameter)
{
    cutwater_refusal refusal;
    double specific_diameter_out;
    detail::check(cutwater_specific_diameter(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Length>("mm"), diameter), &specific_diameter_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), specific_diameter_out);
}

/// Form of impeller that suits a specific speed: radial: n_s < 40; mixed: 40 <= n_s < 175; axial: n_s >= 175 (US units 2000 and 9000). Source: common practice; the bands of the trade's books overlap.
inline const char* impeller_form(SpecificSpeed specific_speed)
{
    cutwater_refusal refusal;
    const char* form_out;
    detail::check(cutwater_impeller_form(detail::number_in(unit<SpecificSpeed>(""), specific_speed), &form_out, &refusal), refusal);
    return form_out;
}

struct minimum_efficiency_eu_results {
    Fraction best_efficiency_limit;  // least efficiency at best-efficiency flow
    Fraction part_load_limit;  // least efficiency at 75 % of that flow
    Fraction overload_limit;  // least efficiency at 110 % of that flow
};

/// Least hydraulic efficiency of a water pump under Regulation (EU) No 547/2012: eta_BEP = (88.59 x + 13.46 y - 11.48 x^2 - 0.85 y^2 - 0.38 x y - C)/100; x = ln(n_s), n_s = n sqrt(Q m3/s)/(H/z)^(3/4); y = ln(Q m3/h); eta_PL = 0.947 eta_BEP; eta_OL = 0.985 eta_BEP. Source: Commission Regulation (EU) No 547/2012: constants C of Annex III and scope of Article 2 (excerpt read); coefficients of the formula, 0.947 and 0.985 (from memory of it; the coefficients agree with those of 10 CFR 431, subpart Y, appendix A, turned into US units).
inline minimum_efficiency_eu_results minimum_efficiency_eu(Flow flow, Length head, RotationalSpeed nominal_speed, const char* pump_type, Ratio minimum_efficiency_index = unit<Ratio>("")(0.4), Count stages = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double best_efficiency_limit_out;
    double part_load_limit_out;
    double overload_limit_out;
    detail::check(cutwater_minimum_efficiency_eu(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<RotationalSpeed>("1/min"), nominal_speed), pump_type, detail::number_in(unit<Ratio>(""), minimum_efficiency_index), detail::number_in(unit<Count>(""), stages), &best_efficiency_limit_out, &part_load_limit_out, &overload_limit_out, &refusal), refusal);
    return {detail::quantity_of(unit<Fraction>(""), best_efficiency_limit_out), detail::quantity_of(unit<Fraction>(""), part_load_limit_out), detail::quantity_of(unit<Fraction>(""), overload_limit_out)};
}

/// Best efficiency that a good single-stage radial pump of that duty attains: a guide: eta = 1 - 0.095 (1/Q)^m - 0.3 (0.35 - log10(n_s/23))^2 (1/Q)^0.05; m = 0.1 a (1/Q)^0.15 (45/n_s)^0.06; Q in m3/s; a = 1 up to 1 m3/s, 0.5 above. Source: J. F. Guelich, Centrifugal Pumps, 3rd edition, Springer 2014, table 3.8, single-stage radial pumps (from memory of it); limits of flow and specific speed: set here.
inline Fraction attainable_efficiency(Flow flow, Length head, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_attainable_efficiency(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

// ---- Power, motor, energy ----

/// Power that a pump gives to the liquid (pump power output): P_u = rho g Q H. Source: ISO 17769-1:2012, pump power output (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.3 (excerpt read).
inline Power hydraulic_power(Flow flow, Length head, Density density)
{
    cutwater_refusal refusal;
    double hydraulic_power_out;
    detail::check(cutwater_hydraulic_power(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), &hydraulic_power_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), hydraulic_power_out);
}

/// Power that a pump takes at its shaft: P = rho g Q H/eta. Source: ISO 17769-1:2012, pump power input (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.4 (excerpt read).
inline Power pump_power_input(Flow flow, Length head, Density density, Fraction efficiency)
{
    cutwater_refusal refusal;
    double power_input_out;
    detail::check(cutwater_pump_power_input(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), efficiency), &power_input_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), power_input_out);
}

/// Efficiency of a pump from its flow, head and shaft power: eta = rho g Q H/P. Source: ISO 17769-1:2012, pump efficiency (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.5 (excerpt read).
inline Fraction pump_efficiency(Flow flow, Length head, Density density, Power power_input)
{
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_pump_efficiency(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Power>("kW"), power_input), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

/// Torque of a shaft from its power and speed: T = P/(2 pi n). Source: mechanics; common practice.
inline Torque shaft_torque(Power power_input, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double torque_out;
    detail::check(cutwater_shaft_torque(detail::number_in(unit<Power>("kW"), power_input), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &torque_out, &refusal), refusal);
    return detail::quantity_of(unit<Torque>("N m"), torque_out);
}

/// Least ratio of a motor's rating to the pump's power input: ISO 13709: 1.25 for P_N < 22 kW; 1.15 for P_N <= 55 kW; 1.10 above. process: 1.20 for P_N <= 7.5 kW; 1.15 for P_N <= 40 kW; 1.10 above. Source: "ISO 13709": ISO 13709:2009, 7.1.5, driver margin (from memory of it; its brackets below 22, 22 to 55, above 55 kW read in a public program); "process": common practice for pumps to ISO 5199, ISO 9905 and ISO 9908, whose own curve could not be read.
inline Ratio motor_power_margin(Power motor_rating, const char* rule = "ISO 13709")
{
    cutwater_refusal refusal;
    double margin_out;
    detail::check(cutwater_motor_power_margin(detail::number_in(unit<Power>("kW"), motor_rating), rule, &margin_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), margin_out);
}

struct motor_rating_needed_results {
    Power motor_rating;  // rated output of the motor
    Ratio margin_obtained;  // that rating over the pump power input
};

/// Smallest listed motor rating that leaves the margin over the pump's power input: P_N = the least rating of the series with P_N >= m(P_N) P, m the margin for that rating. Source: IEC 60072-1:1991, table 7, both series (from memory of it). Margin: "ISO 13709": ISO 13709:2009, 7.1.5 (from memory of it); "process" and "trade": common practice.
inline motor_rating_needed_results motor_rating_needed(Power power_input, const char* rule = "ISO 13709", const char* series = "primary")
{
    cutwater_refusal refusal;
    double motor_rating_out;
    double margin_obtained_out;
    detail::check(cutwater_motor_rating_needed(detail::number_in(unit<Power>("kW"), power_input), rule, series, &motor_rating_out, &margin_obtained_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), motor_rating_out), detail::quantity_of(unit<Ratio>(""), margin_obtained_out)};
}

/// Nominal full-load efficiency that a motor of an efficiency class has at least: 50 Hz, up to 200 kW: eta_M = A x^3 + B x^2 + C x + D per cent, x = log10(P_N/kW), rounded to a tenth; IE1, above 200 kW and 60 Hz: tables; 60 Hz between ratings: the nearer rating. Source: IEC 60034-30-1:2014; its 50 Hz coefficients for IE2 to IE4 and the rules between ratings: Regulation (EU) 2019/1781, Annex I, read as retained in UK SI 2021/745, Schedule 16; IE1, above 200 kW, and 60 Hz tables (from memory of it, 129 of the IE2 and IE3 values at 60 Hz checked against 10 CFR 431.25, 10 CFR 431.446 and 42 U.S.C. 6313). The edition of 2025 was not read.
inline Fraction motor_efficiency(Power rated_power, Count poles, Frequency frequency = unit<Frequency>("Hz")(50), const char* efficiency_class = "IE3")
{
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_motor_efficiency(detail::number_in(unit<Power>("kW"), rated_power), detail::number_in(unit<Count>(""), poles), detail::number_in(unit<Frequency>("Hz"), frequency), efficiency_class, &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

/// Efficiency of a motor at part load and full speed, from that at its rated output: eta_M = x/(x + (1/eta_N - 1)(c + (1 - c) x^2)). Source: motor losses a constant part and a part with the square of the load: IEC TS 60034-31, efficiency at part load (from memory of it); best efficiency near 75 % load: US Department of Energy, Determining Electric Motor Load and Efficiency (from memory of it), common practice.
inline Fraction motor_efficiency_at_load(Fraction rated_efficiency, Fraction load, Fraction constant_loss_share = unit<Fraction>("")(0.36))
{
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_motor_efficiency_at_load(detail::number_in(unit<Fraction>(""), rated_efficiency), detail::number_in(unit<Fraction>(""), load), detail::number_in(unit<Fraction>(""), constant_loss_share), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

/// Speed of the turning field of a motor: n_s = 2 f/(2p), 120 f/(2p) in 1/min. Source: IEC 60034-1, synchronous speed (from memory of it).
inline RotationalSpeed synchronous_speed(Frequency frequency, Count poles)
{
    cutwater_refusal refusal;
    double speed_out;
    detail::check(cutwater_synchronous_speed(detail::number_in(unit<Frequency>("Hz"), frequency), detail::number_in(unit<Count>(""), poles), &speed_out, &refusal), refusal);
    return detail::quantity_of(unit<RotationalSpeed>("1/min"), speed_out);
}

/// Speed of an induction motor with its slip: n = (1 - s) 2 f/(2p). Source: IEC 60034-1, slip (from memory of it).
inline RotationalSpeed motor_speed(Frequency frequency, Count poles, Fraction slip)
{
    cutwater_refusal refusal;
    double speed_out;
    detail::check(cutwater_motor_speed(detail::number_in(unit<Frequency>("Hz"), frequency), detail::number_in(unit<Count>(""), poles), detail::number_in(unit<Fraction>(""), slip), &speed_out, &refusal), refusal);
    return detail::quantity_of(unit<RotationalSpeed>("1/min"), speed_out);
}

/// Line current of a three-phase motor: I = P/(sqrt(3) U eta_M cos phi). Source: three-phase power; common practice.
inline ElectricCurrent motor_current(Power shaft_power, Voltage voltage, Fraction motor_efficiency, Fraction power_factor)
{
    cutwater_refusal refusal;
    double current_out;
    detail::check(cutwater_motor_current(detail::number_in(unit<Power>("kW"), shaft_power), detail::number_in(unit<Voltage>("V"), voltage), detail::number_in(unit<Fraction>(""), motor_efficiency), detail::number_in(unit<Fraction>(""), power_factor), &current_out, &refusal), refusal);
    return detail::quantity_of(unit<ElectricCurrent>("A"), current_out);
}

/// Power drawn from the mains for a power at the shaft: P_el = P/(eta_M eta_D). Source: definition of efficiency; IEC 60034-1 (from memory of it).
inline Power electrical_power(Power shaft_power, Fraction motor_efficiency, Fraction drive_efficiency = unit<Fraction>("")(1))
{
    cutwater_refusal refusal;
    double electrical_power_out;
    detail::check(cutwater_electrical_power(detail::number_in(unit<Power>("kW"), shaft_power), detail::number_in(unit<Fraction>(""), motor_efficiency), detail::number_in(unit<Fraction>(""), drive_efficiency), &electrical_power_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), electrical_power_out);
}

/// Efficiency of a frequency converter at part load: a representative value: table of efficiency by rating and load, straight lines between its points. Source: US Department of Energy, Motor Systems Tip Sheet 11, Adjustable Speed Drive Part-Load Efficiency, table 1, pulse-width modulated drives (from memory of it; python3-fluids 1.0.22 holds the same values).
inline Fraction drive_efficiency(Power rated_power, Fraction load)
{
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_drive_efficiency(detail::number_in(unit<Power>("kW"), rated_power), detail::number_in(unit<Fraction>(""), load), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

/// Efficiency from wire to water, of pump, motor and drive together: eta = eta_P eta_M eta_D. Source: ISO 17769-1:2012, overall efficiency (from memory of it).
inline Fraction overall_efficiency(Fraction pump_efficiency, Fraction motor_efficiency, Fraction drive_efficiency = unit<Fraction>("")(1))
{
    cutwater_refusal refusal;
    double overall_efficiency_out;
    detail::check(cutwater_overall_efficiency(detail::number_in(unit<Fraction>(""), pump_efficiency), detail::number_in(unit<Fraction>(""), motor_efficiency), detail::number_in(unit<Fraction>(""), drive_efficiency), &overall_efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), overall_efficiency_out);
}

/// Efficiency from wire to water as measured: flow and head against power from the mains: eta = rho g Q H/P_el. Source: ISO 17769-1:2012, overall efficiency (from memory of it).
inline Fraction wire_to_water_efficiency(Flow flow, Length head, Density density, Power electrical_power)
{
    cutwater_refusal refusal;
    double overall_efficiency_out;
    detail::check(cutwater_wire_to_water_efficiency(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Power>("kW"), electrical_power), &overall_efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), overall_efficiency_out);
}

/// Energy from the mains for each cubic metre pumped: e = rho g H/eta. Source: ISO 17769-1:2012, pump power output over flow (from memory of it); common practice.
inline EnergyPerVolume specific_energy(Length head, Density density, Fraction overall_efficiency)
{
    cutwater_refusal refusal;
    double specific_energy_out;
    detail::check(cutwater_specific_energy(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), overall_efficiency), &specific_energy_out, &refusal), refusal);
    return detail::quantity_of(unit<EnergyPerVolume>("kWh/m3"), specific_energy_out);
}

/// Energy for each cubic metre pumped, from power and flow as measured: e = P_el/Q. Source: definition; common practice.
inline EnergyPerVolume specific_energy_from_power(Power electrical_power, Flow flow)
{
    cutwater_refusal refusal;
    double specific_energy_out;
    detail::check(cutwater_specific_energy_from_power(detail::number_in(unit<Power>("kW"), electrical_power), detail::number_in(unit<Flow>("m3/h"), flow), &specific_energy_out, &refusal), refusal);
    return detail::quantity_of(unit<EnergyPerVolume>("kWh/m3"), specific_energy_out);
}

struct annual_energy_results {
    Energy energy;  // energy from the mains in the year
    Volume volume;  // volume pumped in the year
    EnergyPerVolume specific_energy;  // energy for each volume, mean of the year
};

/// Energy that a year's duty profile takes from the mains: E = sum(rho g Q_i H_i/eta_i t_i); V = sum(Q_i t_i). Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs, 2001, energy costs (from memory of it).
inline annual_energy_results annual_energy(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& overall_efficiencies, const std::vector<Time>& hours, Density density = unit<Density>("kg/m3")(998.2))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> overall_efficiencies_numbers = detail::numbers(unit<Fraction>(""), overall_efficiencies);
    const std::vector<double> hours_numbers = detail::numbers(unit<Time>("h"), hours);
    cutwater_refusal refusal;
    double energy_out;
    double volume_out;
    double specific_energy_out;
    detail::check(cutwater_annual_energy(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), overall_efficiencies_numbers.data(), overall_efficiencies_numbers.size(), hours_numbers.data(), hours_numbers.size(), detail::number_in(unit<Density>("kg/m3"), density), &energy_out, &volume_out, &specific_energy_out, &refusal), refusal);
    return {detail::quantity_of(unit<Energy>("kWh"), energy_out), detail::quantity_of(unit<Volume>("m3"), volume_out), detail::quantity_of(unit<EnergyPerVolume>("kWh/m3"), specific_energy_out)};
}

/// Energy of a year from the power drawn at each point of the duty profile: E = sum(P_i t_i). Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs, 2001, energy costs (from memory of it).
inline Energy annual_energy_from_power(const std::vector<Power>& electrical_powers, const std::vector<Time>& hours)
{
    const std::vector<double> electrical_powers_numbers = detail::numbers(unit<Power>("kW"), electrical_powers);
    const std::vector<double> hours_numbers = detail::numbers(unit<Time>("h"), hours);
    cutwater_refusal refusal;
    double energy_out;
    detail::check(cutwater_annual_energy_from_power(electrical_powers_numbers.data(), electrical_powers_numbers.size(), hours_numbers.data(), hours_numbers.size(), &energy_out, &refusal), refusal);
    return detail::quantity_of(unit<Energy>("kWh"), energy_out);
}

/// Cost of a year's energy: C = c E. Source: definition; common practice.
inline Money annual_energy_cost(Energy energy, Money price_per_kWh)
{
    cutwater_refusal refusal;
    double cost_out;
    detail::check(cutwater_annual_energy_cost(detail::number_in(unit<Energy>("kWh"), energy), detail::number_in(unit<Money>(""), price_per_kWh), &cost_out, &refusal), refusal);
    return detail::quantity_of(unit<Money>(""), cost_out);
}

/// Carbon dioxide that goes with an amount of energy: m = f E. Source: definition; common practice.
inline Mass carbon_emission(Energy energy, MassPerEnergy emission_factor)
{
    cutwater_refusal refusal;
    double emission_out;
    detail::check(cutwater_carbon_emission(detail::number_in(unit<Energy>("kWh"), energy), detail::number_in(unit<MassPerEnergy>("kg/kWh"), emission_factor), &emission_out, &refusal), refusal);
    return detail::quantity_of(unit<Mass>("kg"), emission_out);
}

/// Present value of a cost that returns every year, for one unit of it at today's prices: F = q + q^2 + ... + q^n, q = (1 + p)/(1 + i). Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs: A Guide to LCC Analysis for Pumping Systems, 2001 (from memory of it; the four results of its example come out to the unit).
inline Ratio present_value_factor(Fraction interest_rate, Count years, Fraction inflation_rate = unit<Fraction>("")(0))
{
    cutwater_refusal refusal;
    double present_value_factor_out;
    detail::check(cutwater_present_value_factor(detail::number_in(unit<Fraction>(""), interest_rate), detail::number_in(unit<Count>(""), years), detail::number_in(unit<Fraction>(""), inflation_rate), &present_value_factor_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), present_value_factor_out);
}

struct life_cycle_cost_results {
    Money life_cycle_cost;  // present value of all costs
    Money energy_present_value;  // of which energy
};

/// Present value of all that a pump costs over its life: LCC = C_ic + C_in + F_e C_e + F (C_o + C_m + C_s + C_env) + q^n C_d; F = q + ... + q^n, q = (1 + p)/(1 + i); F_e the same with q (1 + p_e). Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs: A Guide to LCC Analysis for Pumping Systems, 2001 (from memory of it; the four results of its example come out to the unit).
inline life_cycle_cost_results life_cycle_cost(Money purchase, Money installation, Money energy, Money operation, Money maintenance, Money downtime, Money environment, Money disposal, Fraction interest_rate, Count years, Fraction inflation_rate = unit<Fraction>("")(0), Fraction energy_price_rise = unit<Fraction>("")(0))
{
    cutwater_refusal refusal;
    double life_cycle_cost_out;
    double energy_present_value_out;
    detail::check(cutwater_life_cycle_cost(detail::number_in(unit<Money>(""), purchase), detail::number_in(unit<Money>(""), installation), detail::number_in(unit<Money>(""), energy), detail::number_in(unit<Money>(""), operation), detail::number_in(unit<Money>(""), maintenance), detail::number_in(unit<Money>(""), downtime), detail::number_in(unit<Money>(""), environment), detail::number_in(unit<Money>(""), disposal), detail::number_in(unit<Fraction>(""), interest_rate), detail::number_in(unit<Count>(""), years), detail::number_in(unit<Fraction>(""), inflation_rate), detail::number_in(unit<Fraction>(""), energy_price_rise), &life_cycle_cost_out, &energy_present_value_out, &refusal), refusal);
    return {detail::quantity_of(unit<Money>(""), life_cycle_cost_out), detail::quantity_of(unit<Money>(""), energy_present_value_out)};
}

/// Years until the savings of every year have repaid an outlay: n = C/S for i = 0; n = -ln(1 - i C/S)/ln(1 + i). Source: present value of equal payments, solved for their number; common practice.
inline Ratio payback_time(Money outlay, Money yearly_saving, Fraction interest_rate = unit<Fraction>("")(0))
{
    cutwater_refusal refusal;
    double payback_time_out;
    detail::check(cutwater_payback_time(detail::number_in(unit<Money>(""), outlay), detail::number_in(unit<Money>(""), yearly_saving), detail::number_in(unit<Fraction>(""), interest_rate), &payback_time_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), payback_time_out);
}

struct throttling_power_loss_results {
    Power power_loss;  // shaft power that goes into the valve
    Length valve_head;  // head lost in the valve
};

/// Shaft power spent on the head that a throttle valve destroys: P_v = rho g Q h_v/eta(Q), h_v = H(Q) - (H_s + k Q^2). Source: energy balance at the duty of the pump's and the system's curves; Hydraulic Institute, Europump and US Department of Energy, Variable Speed Pumping, 2004 (from memory of it).
inline throttling_power_loss_results throttling_power_loss(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, Length static_head, SystemResistance resistance, Flow flow, Density density = unit<Density>("kg/m3")(998.2))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    double power_loss_out;
    double valve_head_out;
    detail::check(cutwater_throttling_power_loss(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Density>("kg/m3"), density), &power_loss_out, &valve_head_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), power_loss_out), detail::quantity_of(unit<Length>("m"), valve_head_out)};
}

struct speed_control_saving_results {
    Power saving;  // power saved; negative when the converter loses more than the speed gains
    RotationalSpeed reduced_speed;  // speed that gives the duty with the valve open
    Power throttled_power;  // shaft power at full speed, throttled
    Power controlled_power;  // shaft power at the reduced speed, over the converter's efficiency
};

/// Power that speed control saves at a flow against throttling: dP = rho g Q H(Q)/eta(Q) - rho g Q H_sys/(eta(Q_x) eta_D); H_sys = H_s + k Q^2; n' = n Q/Q_x, where H = H_sys (Q_x/Q)^2 on the curve. Source: energy balance at the duty of the pump's and the system's curves; Hydraulic Institute, Europump and US Department of Energy, Variable Speed Pumping, 2004 (from memory of it).
inline speed_control_saving_results speed_control_saving(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, RotationalSpeed speed, Length static_head, SystemResistance resistance, Flow flow, Density density = unit<Density>("kg/m3")(998.2), Fraction drive_efficiency = unit<Fraction>("")(1))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    double saving_out;
    double reduced_speed_out;
    double throttled_power_out;
    double controlled_power_out;
    detail::check(cutwater_speed_control_saving(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), drive_efficiency), &saving_out, &reduced_speed_out, &throttled_power_out, &controlled_power_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), saving_out), detail::quantity_of(unit<RotationalSpeed>("1/min"), reduced_speed_out), detail::quantity_of(unit<Power>("kW"), throttled_power_out), detail::quantity_of(unit<Power>("kW"), controlled_power_out)};
}

struct duty_profile_energy_results {
    Energy energy;  // energy from the mains in the year
    Volume volume;  // volume pumped in the year
    EnergyPerVolume specific_energy;  // energy for each volume, mean of the year
    Time running_time;  // hours that the pump runs in the year
    Ratio least_speed_ratio;  // lowest speed over full speed; 1 without speed control
};

/// Energy of a year's duty profile, the pump throttled, speed-controlled or switched on and off: E = sum(P_el,j t_run,j). Throttling: P = rho g Q_j H(Q_j)/eta(Q_j). Speed: P = rho g Q_j H_sys/eta(Q_x), H_sys = H_s + k Q_j^2 = H(Q_x) (Q_j/Q_x)^2, n'/n = Q_j/Q_x. On-off: P at the duty Q_d for t_run,j = t_j Q_j/Q_d. Motor: P_M = P + P_N (1/eta_N - 1)(c + (1 - c) x^2), x = (P/P_N)/(n'/n). P_el = P_M; with a converter P_el = P_M + (P_N/eta_N)(1/eta_D - 1) l(y)/l(1), y = P_M eta_N/P_N (0.016 at least), l(y) = y (1/eta_T(y) - 1), eta_T from drive_efficiency at P_N. Source: energy balance at the meeting of pump and system curve, as for speed_control_saving; motor losses a constant part and a part with the square of the load: IEC TS 60034-31, efficiency at part load (from memory of it); best efficiency near 75 % load: US Department of Energy, Determining Electric Motor Load and Efficiency (from memory of it), common practice; converter losses: see drive_efficiency; on-off: volume balance, common practice.
inline duty_profile_energy_results duty_profile_energy(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, Length static_head, SystemResistance resistance, const std::vector<Flow>& profile_flows, const std::vector<Time>& hours, const char* control, Power motor_rating, Fraction motor_efficiency, Density density = unit<Density>("kg/m3")(998.2), Fraction drive_efficiency = unit<Fraction>("")(0.96), Fraction constant_loss_share = unit<Fraction>("")(0.36))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    const std::vector<double> profile_flows_numbers = detail::numbers(unit<Flow>("m3/h"), profile_flows);
    const std::vector<double> hours_numbers = detail::numbers(unit<Time>("h"), hours);
    cutwater_refusal refusal;
    double energy_out;
    double volume_out;
    double specific_energy_out;
    double running_time_out;
    double least_speed_ratio_out;
    detail::check(cutwater_duty_profile_energy(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), profile_flows_numbers.data(), profile_flows_numbers.size(), hours_numbers.data(), hours_numbers.size(), control, detail::number_in(unit<Power>("kW"), motor_rating), detail::number_in(unit<Fraction>(""), motor_efficiency), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), drive_efficiency), detail::number_in(unit<Fraction>(""), constant_loss_share), &energy_out, &volume_out, &specific_energy_out, &running_time_out, &least_speed_ratio_out, &refusal), refusal);
    return {detail::quantity_of(unit<Energy>("kWh"), energy_out), detail::quantity_of(unit<Volume>("m3"), volume_out), detail::quantity_of(unit<EnergyPerVolume>("kWh/m3"), specific_energy_out), detail::quantity_of(unit<Time>("h"), running_time_out), detail::quantity_of(unit<Ratio>(""), least_speed_ratio_out)};
}

/// Pump power at another flow by the cube law: speed control on a system that is all friction, refused where there is static head: P' = P (Q'/Q)^3, where H_s = 0, so that Q'/Q = n'/n. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline Power cube_law_power(Power power, Flow flow, Flow new_flow, Length static_head)
{
    cutwater_refusal refusal;
    double new_power_out;
    detail::check(cutwater_cube_law_power(detail::number_in(unit<Power>("kW"), power), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Flow>("m3/h"), new_flow), detail::number_in(unit<Length>("m"), static_head), &new_power_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), new_power_out);
}

// ---- Viscous liquids ----

/// Parameter B of the viscosity correction, from the pump's best efficiency point on water: B = 16.5 nu^0.50 H_BEP^0.0625/(Q_BEP^0.375 n^0.25), in mm2/s, m, m3/h, 1/min. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature).
inline Ratio viscosity_parameter(KinematicViscosity viscosity, Flow best_efficiency_flow, Length best_efficiency_head, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double viscosity_parameter_out;
    detail::check(cutwater_viscosity_parameter(detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Flow>("m3/h"), best_efficiency_flow), detail::number_in(unit<Length>("m"), best_efficiency_head), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &viscosity_parameter_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), viscosity_parameter_out);
}

/// Parameter B of the viscosity correction, estimated from a duty while no pump is chosen: B = 2.80 nu^0.50/(Q_vis^0.25 H_vis^0.125), in mm2/s, m3/h, m. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature).
inline Ratio viscosity_parameter_from_duty(Flow flow, Length head, KinematicViscosity viscosity)
{
    cutwater_refusal refusal;
    double viscosity_parameter_out;
    detail::check(cutwater_viscosity_parameter_from_duty(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), &viscosity_parameter_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), viscosity_parameter_out);
}

/// Flow of a pump on a viscous liquid over its flow on water: C_Q = 2.71^(-0.165 (log10 B)^3.15) for B > 1; 1 for B <= 1. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature).
inline Ratio viscous_flow_ratio(Ratio viscosity_parameter)
{
    cutwater_refusal refusal;
    double flow_ratio_out;
    detail::check(cutwater_viscous_flow_ratio(detail::number_in(unit<Ratio>(""), viscosity_parameter), &flow_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), flow_ratio_out);
}

/// Head of a pump on a viscous liquid over its head on water, at a point of its curve: C_H = 1 - (1 - C_Q)(Q_W/Q_BEP)^0.75 for B > 1; 1 for B <= 1. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature).
inline Ratio viscous_head_ratio(Ratio viscosity_parameter, Ratio flow_ratio = unit<Ratio>("")(1))
{
    cutwater_refusal refusal;
    double head_ratio_out;
    detail::check(cutwater_viscous_head_ratio(detail::number_in(unit<Ratio>(""), viscosity_parameter), detail::number_in(unit<Ratio>(""), flow_ratio), &head_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), head_ratio_out);
}

/// Efficiency of a pump on a viscous liquid over its efficiency on water: C_eta = B^(-0.0547 B^0.69) for B > 1; [1 - (1 - eta_BEP)(nu/nu_W)^0.07]/eta_BEP for B <= 1. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it; the branch for B > 1 checked against its worked examples, the branch for B up to 1 not).
inline Ratio viscous_efficiency_ratio(Ratio viscosity_parameter, Fraction best_efficiency, KinematicViscosity viscosity, KinematicViscosity water_viscosity = unit<KinematicViscosity>("mm2/s")(1))
{
    cutwater_refusal refusal;
    double efficiency_ratio_out;
    detail::check(cutwater_viscous_efficiency_ratio(detail::number_in(unit<Ratio>(""), viscosity_parameter), detail::number_in(unit<Fraction>(""), best_efficiency), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<KinematicViscosity>("mm2/s"), water_viscosity), &efficiency_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), efficiency_ratio_out);
}

struct viscous_performance_results {
    Flow viscous_flow;  // flow of that point on the viscous liquid
    Length viscous_head;  // head of that point on the viscous liquid
    Fraction viscous_efficiency;  // efficiency of that point on the viscous liquid
    Power power;  // pump power input there
};

/// Flow, head, efficiency and power on a viscous liquid, from one point of the curve on water: Q_vis = C_Q Q_W; H_vis = C_H H_W; eta_vis = C_eta eta_W; P_vis = rho g Q_vis H_vis/eta_vis. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature).
inline viscous_performance_results viscous_performance(Flow flow, Length head, Fraction efficiency, Flow best_efficiency_flow, Length best_efficiency_head, Fraction best_efficiency, RotationalSpeed speed, KinematicViscosity viscosity, Density density, KinematicViscosity water_viscosity = unit<KinematicViscosity>("mm2/s")(1))
{
    cutwater_refusal refusal;
    double viscous_flow_out;
    double viscous_head_out;
    double viscous_efficiency_out;
    double power_out;
    detail::check(cutwater_viscous_performance(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Fraction>(""), efficiency), detail::number_in(unit<Flow>("m3/h"), best_efficiency_flow), detail::number_in(unit<Length>("m"), best_efficiency_head), detail::number_in(unit<Fraction>(""), best_efficiency), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<KinematicViscosity>("mm2/s"), water_viscosity), &viscous_flow_out, &viscous_head_out, &viscous_efficiency_out, &power_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), viscous_flow_out), detail::quantity_of(unit<Length>("m"), viscous_head_out), detail::quantity_of(unit<Fraction>(""), viscous_efficiency_out), detail::quantity_of(unit<Power>("kW"), power_out)};
}

struct water_equivalent_duty_results {
    Flow water_flow;  // flow to look for on the curve on water
    Length water_head;  // head to look for on the curve on water, of one stage
};

/// Flow and head on water to choose a pump by, for a duty on a viscous liquid: Q_W = Q_vis/C_Q; H_W = H_vis/C_H; C_Q = C_H = 2.71^(-0.165 (log10 B)^3.15), B from viscosity_parameter_from_duty. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature).
inline water_equivalent_duty_results water_equivalent_duty(Flow flow, Length head, KinematicViscosity viscosity)
{
    cutwater_refusal refusal;
    double water_flow_out;
    double water_head_out;
    detail::check(cutwater_water_equivalent_duty(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), &water_flow_out, &water_head_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), water_flow_out), detail::quantity_of(unit<Length>("m"), water_head_out)};
}

// ---- Solids-bearing liquids ----

/// Head of a pump in metres of slurry over its head in metres of water at the same flow: 1 - K; Engin and Gur: K = 2.705 C_w (s - 1)^0.64 (d50/D)^0.313; Cave: K = 0.0385 (s - 1)(1 + 4/s) C_w ln(d50/0.0227 mm). Source: T. Engin and M. Gur, J. Fluids Eng. 125 (2003) 149-157 (abstract read, formula from memory); I. Cave, Hydrotransport 4, BHRA 1976, paper H3 (from memory).
inline Ratio slurry_head_ratio(Fraction solids_mass_fraction, Ratio solids_relative_density, Length median_size, Length impeller_diameter, const char* correlation = "Engin and Gur")
{
    cutwater_refusal refusal;
    double head_ratio_out;
    detail::check(cutwater_slurry_head_ratio(detail::number_in(unit<Fraction>(""), solids_mass_fraction), detail::number_in(unit<Ratio>(""), solids_relative_density), detail::number_in(unit<Length>("mm"), median_size), detail::number_in(unit<Length>("mm"), impeller_diameter), correlation, &head_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), head_ratio_out);
}

/// Efficiency of a pump on slurry over its efficiency on water; both authors take the head ratio for it: 1 - K; Engin and Gur: K = 2.705 C_w (s - 1)^0.64 (d50/D)^0.313; Cave: K = 0.0385 (s - 1)(1 + 4/s) C_w ln(d50/0.0227 mm). Source: T. Engin and M. Gur, J. Fluids Eng. 125 (2003) 149-157 (abstract read, formula from memory); I. Cave, Hydrotransport 4, BHRA 1976, paper H3 (from memory).
inline Ratio slurry_efficiency_ratio(Fraction solids_mass_fraction, Ratio solids_relative_density, Length median_size, Length impeller_diameter, const char* correlation = "Engin and Gur")
{
    cutwater_refusal refusal;
    double efficiency_ratio_out;
    detail::check(cutwater_slurry_efficiency_ratio(detail::number_in(unit<Fraction>(""), solids_mass_fraction), detail::number_in(unit<Ratio>(""), solids_relative_density), detail::number_in(unit<Length>("mm"), median_size), detail::number_in(unit<Length>("mm"), impeller_diameter), correlation, &efficiency_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), efficiency_ratio_out);
}

struct slurry_power_results {
    Power power;  // pump power input
    Length slurry_head;  // head in metres of slurry
    Fraction slurry_efficiency;  // efficiency on slurry
};

/// Power, head and efficiency of a pump on slurry, from a point of its curve on water: H_m = HR H_w; eta_m = ER eta_w; P = rho_m g Q H_m/eta_m. Source: ISO 17769-1:2012, pump power input (from memory of it), with the ratios put in.
inline slurry_power_results slurry_power(Flow flow, Length water_head, Fraction water_efficiency, Density slurry_density, Ratio head_ratio, Ratio efficiency_ratio)
{
    cutwater_refusal refusal;
    double power_out;
    double slurry_head_out;
    double slurry_efficiency_out;
    detail::check(cutwater_slurry_power(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), water_head), detail::number_in(unit<Fraction>(""), water_efficiency), detail::number_in(unit<Density>("kg/m3"), slurry_density), detail::number_in(unit<Ratio>(""), head_ratio), detail::number_in(unit<Ratio>(""), efficiency_ratio), &power_out, &slurry_head_out, &slurry_efficiency_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), power_out), detail::quantity_of(unit<Length>("m"), slurry_head_out), detail::quantity_of(unit<Fraction>(""), slurry_efficiency_out)};
}

struct curve_slurry_results {
    std::vector<Flow> slurry_flows;  // flows of the points on the slurry: those on water
    std::vector<Length> slurry_heads;  // heads in metres of slurry
    std::vector<Fraction> slurry_efficiencies;  // efficiencies on the slurry
};

/// Curves of head and efficiency on a slurry, from those on water: Q = Q; H_m = HR H_w; eta_m = ER eta_w. Source: definition of the head and efficiency ratios at equal flow and speed, ANSI/HI 12.1-12.6 (from memory of it); the same at every flow: common practice.
inline curve_slurry_results curve_slurry(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, Ratio head_ratio, Ratio efficiency_ratio)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    std::vector<double> slurry_flows_out;
    std::size_t slurry_flows_count = 0;
    std::vector<double> slurry_heads_out;
    std::size_t slurry_heads_count = 0;
    std::vector<double> slurry_efficiencies_out;
    std::size_t slurry_efficiencies_count = 0;
    cutwater_status status = cutwater_curve_slurry(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Ratio>(""), head_ratio), detail::number_in(unit<Ratio>(""), efficiency_ratio), slurry_flows_out.data(), slurry_flows_out.size(), &slurry_flows_count, slurry_heads_out.data(), slurry_heads_out.size(), &slurry_heads_count, slurry_efficiencies_out.data(), slurry_efficiencies_out.size(), &slurry_efficiencies_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        slurry_flows_out.resize(slurry_flows_count);
        slurry_heads_out.resize(slurry_heads_count);
        slurry_efficiencies_out.resize(slurry_efficiencies_count);
        status = cutwater_curve_slurry(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Ratio>(""), head_ratio), detail::number_in(unit<Ratio>(""), efficiency_ratio), slurry_flows_out.data(), slurry_flows_out.size(), &slurry_flows_count, slurry_heads_out.data(), slurry_heads_out.size(), &slurry_heads_count, slurry_efficiencies_out.data(), slurry_efficiencies_out.size(), &slurry_efficiencies_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), slurry_flows_out), detail::quantities(unit<Length>("m"), slurry_heads_out), detail::quantities(unit<Fraction>(""), slurry_efficiencies_out)};
}

struct settling_velocity_results {
    Velocity velocity;  // velocity of sinking, alone and far from walls
    Ratio reynolds_number;  // Reynolds number of the sphere
    Ratio drag_coefficient;  // drag coefficient of the sphere
};

/// Velocity at which a single sphere sinks in still liquid: w = sqrt(4 g d (rho_s - rho_l)/(3 C_D rho_l)), C_D = 24/Re (1 + 0.1806 Re^0.6459) + 0.4251/(1 + 6880.95/Re). Source: A. Haider and O. Levenspiel, Powder Technology 58 (1989) 63-70 (from memory of it; coefficients agree with the open-source library fluids 1.0.22).
inline settling_velocity_results settling_velocity(Length particle_size, Density solids_density, Density liquid_density, DynamicViscosity dynamic_viscosity)
{
    cutwater_refusal refusal;
    double velocity_out;
    double reynolds_number_out;
    double drag_coefficient_out;
    detail::check(cutwater_settling_velocity(detail::number_in(unit<Length>("mm"), particle_size), detail::number_in(unit<Density>("kg/m3"), solids_density), detail::number_in(unit<Density>("kg/m3"), liquid_density), detail::number_in(unit<DynamicViscosity>("mPa s"), dynamic_viscosity), &velocity_out, &reynolds_number_out, &drag_coefficient_out, &refusal), refusal);
    return {detail::quantity_of(unit<Velocity>("m/s"), velocity_out), detail::quantity_of(unit<Ratio>(""), reynolds_number_out), detail::quantity_of(unit<Ratio>(""), drag_coefficient_out)};
}

/// Velocity at which solids sink among each other: w_h = w (1 - C_v)^m, m = (4.7 + 0.41 Re^0.75)/(1 + 0.175 Re^0.75). Source: J. F. Richardson and W. N. Zaki 1954, exponent by P. N. Rowe, Chem. Eng. Sci. 42 (1987) 2795 (from memory of both).
inline Velocity hindered_settling_velocity(Velocity settling_velocity, Fraction volume_fraction, Ratio reynolds_number)
{
    cutwater_refusal refusal;
    double velocity_out;
    detail::check(cutwater_hindered_settling_velocity(detail::number_in(unit<Velocity>("m/s"), settling_velocity), detail::number_in(unit<Fraction>(""), volume_fraction), detail::number_in(unit<Ratio>(""), reynolds_number), &velocity_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("m/s"), velocity_out);
}

struct deposition_velocity_results {
    Velocity velocity;  // deposition velocity
    Ratio factor;  // Durand's factor as used
};

/// Mean velocity in a horizontal pipe below which solids settle out: V_D = F_L sqrt(2 g D (s - 1)), F_L = 1.3 C_v^0.125 (1 - e^(-6.9 d50/mm)). Source: R. Durand and E. Condolios 1952; F_L by R. E. Schiller and P. E. Herbich, Handbook of Dredging Engineering, 1991 (as reproduced in a public program, checked against B. E. Abulnaga, Slurry Systems Handbook, 2002, example 4-2).
inline deposition_velocity_results deposition_velocity(Length pipe_bore, Ratio solids_relative_density, Fraction volume_fraction, Length median_size, Ratio durand_factor = unit<Ratio>("")(0))
{
    cutwater_refusal refusal;
    double velocity_out;
    double factor_out;
    detail::check(cutwater_deposition_velocity(detail::number_in(unit<Length>("mm"), pipe_bore), detail::number_in(unit<Ratio>(""), solids_relative_density), detail::number_in(unit<Fraction>(""), volume_fraction), detail::number_in(unit<Length>("mm"), median_size), detail::number_in(unit<Ratio>(""), durand_factor), &velocity_out, &factor_out, &refusal), refusal);
    return {detail::quantity_of(unit<Velocity>("m/s"), velocity_out), detail::quantity_of(unit<Ratio>(""), factor_out)};
}

/// Life against erosion at another speed, over the life now: L'/L = (n'/n)^-x. Source: erosive wear goes with a power of velocity, W. Wiedenroth 1984 (as quoted in trade literature, excerpt read); common practice.
inline Ratio wear_life_ratio(Ratio speed_ratio, Ratio exponent = unit<Ratio>("")(2.5))
{
    cutwater_refusal refusal;
    double life_ratio_out;
    detail::check(cutwater_wear_life_ratio(detail::number_in(unit<Ratio>(""), speed_ratio), detail::number_in(unit<Ratio>(""), exponent), &life_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), life_ratio_out);
}

// ---- Least flow and heating ----

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

/// Least flow that keeps the liquid's warming within what is allowed: Q_min = P_0/[rho (c_p dT + g H_0)]. Source: energy balance with power and head as at closed valve; the handbooks' form, without g H_0, in I. J. Karassik et al., Pump Handbook, and ANSI/HI 9.6.3 (from memory of both).
inline Flow thermal_minimum_flow(Power shutoff_power, Length shutoff_head, Density density, SpecificHeat specific_heat, TemperatureDifference allowed_rise)
{
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_thermal_minimum_flow(detail::number_in(unit<Power>("kW"), shutoff_power), detail::number_in(unit<Length>("m"), shutoff_head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<TemperatureDifference>("K"), allowed_rise), &flow_out, &refusal), refusal);
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

/// Least flow whose warming still leaves NPSH3 and a margin at the inlet: Q_min = P_0/[rho (c_p dT + g H_0)], p_v(T + dT) = p_v(T) + rho g (NPSHA - NPSH3 - dNPSH). Source: NPSH available falls by the rise of vapour pressure at the inlet: common practice; ln p linear in 1/T between neighbouring points (Clausius-Clapeyron).
inline Flow thermal_minimum_flow_from_npsh(Power shutoff_power, Length shutoff_head, SpecificHeat specific_heat, Temperature inlet_temperature, Length npsh_available, Length npsh3, Length npsh_margin, Density density, const std::vector<Temperature>& temperatures, const std::vector<AbsolutePressure>& vapour_pressures)
{
    const std::vector<double> temperatures_numbers = detail::numbers(unit<Temperature>("degC"), temperatures);
    const std::vector<double> vapour_pressures_numbers = detail::numbers(unit<AbsolutePressure>("bara"), vapour_pressures);
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_thermal_minimum_flow_from_npsh(detail::number_in(unit<Power>("kW"), shutoff_power), detail::number_in(unit<Length>("m"), shutoff_head), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<Temperature>("degC"), inlet_temperature), detail::number_in(unit<Length>("m"), npsh_available), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Length>("m"), npsh_margin), detail::number_in(unit<Density>("kg/m3"), density), temperatures_numbers.data(), temperatures_numbers.size(), vapour_pressures_numbers.data(), vapour_pressures_numbers.size(), &flow_out, &refusal), refusal);
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

/// Flow from which the head falls all the way: below it a drooping curve, or one with a dip, is unstable: Q_st = least Q_i from which every further H is less than the one before it. Source: definition of a stable and an unstable curve, ISO 17769-1:2012 and EN 12723 (from memory of both); ANSI/HI 9.6.3-2012 treats drooping curves and curves with a dip (notice of it read).
inline Flow stable_minimum_flow(const std::vector<Flow>& flows, const std::vector<Length>& heads)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_stable_minimum_flow(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), &flow_out, &refusal), refusal);
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

/// Flows between which a pump is best run: n_s <= 87.1: 0.70 Q_BEP to 1.20 Q_BEP; above: 0.80 Q_BEP to 1.15 Q_BEP. Source: ANSI/HI 9.6.3-2012, preferred operating region: 70 to 120 % of best efficiency flow, above a US specific speed of 4500 (87.1 in 1/min, m3/s, m) 80 to 115 % (from memory of it).
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

/// Region of its curve in which a pump runs: preferred: n_s <= 87.1: 0.70 to 1.20 Q_BEP, above: 0.80 to 1.15 Q_BEP, within the allowable; allowable: Q_min to Q_max. Source: ANSI/HI 9.6.3-2012, preferred operating region: 70 to 120 % of best efficiency flow, above a US specific speed of 4500 (87.1 in 1/min, m3/s, m) 80 to 115 % (from memory of it).
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
};

/// Flow that an orifice plate in a bypass lets through: Q = C/sqrt(1 - b^4) (pi/4) d^2 sqrt(2 dp/rho); dp_l = dp (r - C b^2)/(r + C b^2), r = sqrt(1 - b^4 (1 - C^2)), b = d/D. Source: ISO 5167-2:2003, 5.3 and 5.4, tappings at D and D/2 (from memory of it; its coefficients agree with those of the open-source library fluids 1.0.22).
inline bypass_flow_results bypass_flow(Length orifice_bore, Length pipe_bore, PressureDifference pressure_drop, Density density, KinematicViscosity viscosity, Ratio discharge_coefficient = unit<Ratio>("")(0))
{
    cutwater_refusal refusal;
    double flow_out;
    double coefficient_out;
    double reynolds_number_out;
    detail::check(cutwater_bypass_flow(detail::number_in(unit<Length>("mm"), orifice_bore), detail::number_in(unit<Length>("mm"), pipe_bore), detail::number_in(unit<PressureDifference>("bar"), pressure_drop), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Ratio>(""), discharge_coefficient), &flow_out, &coefficient_out, &reynolds_number_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), flow_out), detail::quantity_of(unit<Ratio>(""), coefficient_out), detail::quantity_of(unit<Ratio>(""), reynolds_number_out)};
}

/// Bore of an orifice plate that lets a bypass flow through: the d for which bypass_flow gives Q. Source: ISO 5167-2:2003, 5.3 and 5.4, tappings at D and D/2 (from memory of it; its coefficients agree with those of the open-source library fluids 1.0.22).
inline Length bypass_orifice_bore(Flow flow, Length pipe_bore, PressureDifference pressure_drop, Density density, KinematicViscosity viscosity, Ratio discharge_coefficient = unit<Ratio>("")(0))
{
    cutwater_refusal refusal;
    double orifice_bore_out;
    detail::check(cutwater_bypass_orifice_bore(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), pipe_bore), detail::number_in(unit<PressureDifference>("bar"), pressure_drop), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Ratio>(""), discharge_coefficient), &orifice_bore_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("mm"), orifice_bore_out);
}

struct bypass_orifice_cavitation_results {
    Ratio pressure_ratio;  // share of the pressure above vapour pressure that the plate takes
    Ratio onset_ratio;  // that share at which cavitation is expected to begin
    const char* cavitation;  // none, cavitating, choked (boiling in the jet) or flashing (boiling behind it)
};

/// Whether a bypass's orifice plate cavitates: x_F = (p_1 - p_2)/(p_1 - p_v); x_Fz = 0.90/sqrt(1 + 3 sqrt(Kv/(1.17 F_L))), F_L^2 = dp_l/dp of the plate; choked when p_1 - dp <= p_v. Source: IEC 60534-8-4:2015, estimate of the onset for a valve without test (from memory of it), with F_d = 1 for one round hole, applied to a plate with the pressure loss of ISO 5167-2:2003.
inline bypass_orifice_cavitation_results bypass_orifice_cavitation(Length orifice_bore, Length pipe_bore, AbsolutePressure upstream_pressure, AbsolutePressure downstream_pressure, AbsolutePressure vapour_pressure, Density density, KinematicViscosity viscosity, Ratio discharge_coefficient = unit<Ratio>("")(0))
{
    cutwater_refusal refusal;
    double pressure_ratio_out;
    double onset_ratio_out;
    const char* cavitation_out;
    detail::check(cutwater_bypass_orifice_cavitation(detail::number_in(unit<Length>("mm"), orifice_bore), detail::number_in(unit<Length>("mm"), pipe_bore), detail::number_in(unit<AbsolutePressure>("bara"), upstream_pressure), detail::number_in(unit<AbsolutePressure>("bara"), downstream_pressure), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Ratio>(""), discharge_coefficient), &pressure_ratio_out, &onset_ratio_out, &cavitation_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), pressure_ratio_out), detail::quantity_of(unit<Ratio>(""), onset_ratio_out), cavitation_out};
}

// ---- Curves ----

/// Value of any curve between its points, in plain numbers: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Ratio curve_value(const std::vector<Ratio>& x_values, const std::vector<Ratio>& y_values, Ratio x)
{
    const std::vector<double> x_values_numbers = detail::numbers(unit<Ratio>(""), x_values);
    const std::vector<double> y_values_numbers = detail::numbers(unit<Ratio>(""), y_values);
    cutwater_refusal refusal;
    double y_out;
    detail::check(cutwater_curve_value(x_values_numbers.data(), x_values_numbers.size(), y_values_numbers.data(), y_values_numbers.size(), detail::number_in(unit<Ratio>(""), x), &y_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), y_out);
}

/// Slope of any curve between its points, in plain numbers: dy/dx of the curve that curve_value reads. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Ratio curve_slope(const std::vector<Ratio>& x_values, const std::vector<Ratio>& y_values, Ratio x)
{
    const std::vector<double> x_values_numbers = detail::numbers(unit<Ratio>(""), x_values);
    const std::vector<double> y_values_numbers = detail::numbers(unit<Ratio>(""), y_values);
    cutwater_refusal refusal;
    double slope_out;
    detail::check(cutwater_curve_slope(x_values_numbers.data(), x_values_numbers.size(), y_values_numbers.data(), y_values_numbers.size(), detail::number_in(unit<Ratio>(""), x), &slope_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), slope_out);
}

/// Head of a pump at a flow, from its curve: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Length curve_head(const std::vector<Flow>& flows, const std::vector<Length>& heads, Flow flow)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double head_out;
    detail::check(cutwater_curve_head(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Flow>("m3/h"), flow), &head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), head_out);
}

/// Pump power input at a flow, from its curve: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Power curve_power(const std::vector<Flow>& flows, const std::vector<Power>& powers, Flow flow)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    cutwater_refusal refusal;
    double power_out;
    detail::check(cutwater_curve_power(flows_numbers.data(), flows_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<Flow>("m3/h"), flow), &power_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), power_out);
}

/// Pump efficiency at a flow, from its curve: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Fraction curve_efficiency(const std::vector<Flow>& flows, const std::vector<Fraction>& efficiencies, Flow flow)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_curve_efficiency(flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Flow>("m3/h"), flow), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

/// NPSH3 of a pump at a flow, from its curve: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Length curve_npsh3(const std::vector<Flow>& flows, const std::vector<Length>& npsh3_values, Flow flow)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> npsh3_values_numbers = detail::numbers(unit<Length>("m"), npsh3_values);
    cutwater_refusal refusal;
    double npsh3_out;
    detail::check(cutwater_curve_npsh3(flows_numbers.data(), flows_numbers.size(), npsh3_values_numbers.data(), npsh3_values_numbers.size(), detail::number_in(unit<Flow>("m3/h"), flow), &npsh3_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh3_out);
}

/// Flow at which the pump's curve meets the system's: H_pump(Q) = H_s + k Q^2; all meetings over the curve's range are looked for. Source: definition of the duty point, common practice; the pump curve between its points as in curve_head.
inline Flow duty_flow(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length static_head, SystemResistance resistance)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double duty_flow_out;
    detail::check(cutwater_duty_flow(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), &duty_flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), duty_flow_out);
}

/// Head at which the pump's curve meets the system's: H_pump(Q) = H_s + k Q^2; all meetings over the curve's range are looked for. Source: definition of the duty point, common practice; the pump curve between its points as in curve_head.
inline Length duty_head(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length static_head, SystemResistance resistance)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double duty_head_out;
    detail::check(cutwater_duty_head(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), &duty_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), duty_head_out);
}

/// Speed at which a pump gives a duty: n' = n Q_d/Q_x; Q_x is where H = H_d (Q/Q_d)^2 meets the curve. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline RotationalSpeed speed_for_duty(const std::vector<Flow>& flows, const std::vector<Length>& heads, RotationalSpeed speed, Flow duty_flow, Length duty_head)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double new_speed_out;
    detail::check(cutwater_speed_for_duty(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), duty_flow), detail::number_in(unit<Length>("m"), duty_head), &new_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<RotationalSpeed>("1/min"), new_speed_out);
}

/// Impeller diameter at which a pump gives a duty: D' = D Q_d/Q_x, where H = H_d (Q/Q_d)^2 meets the curve at Q_x; for the line D' = D sqrt(Q_d/Q_x), H = H_d Q/Q_d. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline Length trim_for_duty(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length diameter, Flow duty_flow, Length duty_head, const char* trim_law = "parabola")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double trimmed_diameter_out;
    detail::check(cutwater_trim_for_duty(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Flow>("m3/h"), duty_flow), detail::number_in(unit<Length>("m"), duty_head), trim_law, &trimmed_diameter_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("mm"), trimmed_diameter_out);
}

/// Flow at which a pump's efficiency is highest: peak of the parabola through the point of highest efficiency and its two neighbours. Source: best efficiency point by ISO 17769-1:2012 (from memory of it); the parabola is common practice.
inline Flow best_efficiency_flow(const std::vector<Flow>& flows, const std::vector<Fraction>& efficiencies)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_best_efficiency_flow(flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), &flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), flow_out);
}

/// Highest efficiency of a pump's curve: peak of the parabola through the point of highest efficiency and its two neighbours. Source: best efficiency point by ISO 17769-1:2012 (from memory of it); the parabola is common practice.
inline Fraction best_efficiency(const std::vector<Flow>& flows, const std::vector<Fraction>& efficiencies)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_best_efficiency(flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

struct curve_at_speed_results {
    std::vector<Flow> new_flows;  // flows at the new speed
    std::vector<Length> new_heads;  // heads at the new speed
};

/// Head curve of a pump at another speed: Q' = Q n'/n; H' = H (n'/n)^2. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline curve_at_speed_results curve_at_speed(const std::vector<Flow>& flows, const std::vector<Length>& heads, RotationalSpeed speed, RotationalSpeed new_speed)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    std::vector<double> new_flows_out;
    std::size_t new_flows_count = 0;
    std::vector<double> new_heads_out;
    std::size_t new_heads_count = 0;
    cutwater_status status = cutwater_curve_at_speed(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), new_flows_out.data(), new_flows_out.size(), &new_flows_count, new_heads_out.data(), new_heads_out.size(), &new_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        new_flows_out.resize(new_flows_count);
        new_heads_out.resize(new_heads_count);
        status = cutwater_curve_at_speed(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), new_flows_out.data(), new_flows_out.size(), &new_flows_count, new_heads_out.data(), new_heads_out.size(), &new_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), new_flows_out), detail::quantities(unit<Length>("m"), new_heads_out)};
}

struct power_curve_at_speed_results {
    std::vector<Flow> new_flows;  // flows at the new speed
    std::vector<Power> new_powers;  // power inputs at the new speed
};

/// Power curve of a pump at another speed: Q' = Q n'/n; P' = P (n'/n)^3. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline power_curve_at_speed_results power_curve_at_speed(const std::vector<Flow>& flows, const std::vector<Power>& powers, RotationalSpeed speed, RotationalSpeed new_speed)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    cutwater_refusal refusal;
    std::vector<double> new_flows_out;
    std::size_t new_flows_count = 0;
    std::vector<double> new_powers_out;
    std::size_t new_powers_count = 0;
    cutwater_status status = cutwater_power_curve_at_speed(flows_numbers.data(), flows_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), new_flows_out.data(), new_flows_out.size(), &new_flows_count, new_powers_out.data(), new_powers_out.size(), &new_powers_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        new_flows_out.resize(new_flows_count);
        new_powers_out.resize(new_powers_count);
        status = cutwater_power_curve_at_speed(flows_numbers.data(), flows_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), new_flows_out.data(), new_flows_out.size(), &new_flows_count, new_powers_out.data(), new_powers_out.size(), &new_powers_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), new_flows_out), detail::quantities(unit<Power>("kW"), new_powers_out)};
}

struct curve_at_trim_results {
    std::vector<Flow> trimmed_flows;  // flows at the trimmed diameter
    std::vector<Length> trimmed_heads;  // heads at the trimmed diameter
};

/// Head curve of a pump with its impeller trimmed: Q' = Q (D'/D)^1 or ^2; H' = H (D'/D)^2. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline curve_at_trim_results curve_at_trim(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length diameter, Length trimmed_diameter, const char* trim_law = "parabola")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    std::vector<double> trimmed_flows_out;
    std::size_t trimmed_flows_count = 0;
    std::vector<double> trimmed_heads_out;
    std::size_t trimmed_heads_count = 0;
    cutwater_status status = cutwater_curve_at_trim(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), trim_law, trimmed_flows_out.data(), trimmed_flows_out.size(), &trimmed_flows_count, trimmed_heads_out.data(), trimmed_heads_out.size(), &trimmed_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        trimmed_flows_out.resize(trimmed_flows_count);
        trimmed_heads_out.resize(trimmed_heads_count);
        status = cutwater_curve_at_trim(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), trim_law, trimmed_flows_out.data(), trimmed_flows_out.size(), &trimmed_flows_count, trimmed_heads_out.data(), trimmed_heads_out.size(), &trimmed_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), trimmed_flows_out), detail::quantities(unit<Length>("m"), trimmed_heads_out)};
}

struct power_curve_at_trim_results {
    std::vector<Flow> trimmed_flows;  // flows at the trimmed diameter
    std::vector<Power> trimmed_powers;  // power inputs at the trimmed diameter
};

/// Power curve of a pump with its impeller trimmed: Q' = Q (D'/D)^1 or ^2; P' = P (D'/D)^3 or ^4. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline power_curve_at_trim_results power_curve_at_trim(const std::vector<Flow>& flows, const std::vector<Power>& powers, Length diameter, Length trimmed_diameter, const char* trim_law = "parabola")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    cutwater_refusal refusal;
    std::vector<double> trimmed_flows_out;
    std::size_t trimmed_flows_count = 0;
    std::vector<double> trimmed_powers_out;
    std::size_t trimmed_powers_count = 0;
    cutwater_status status = cutwater_power_curve_at_trim(flows_numbers.data(), flows_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), trim_law, trimmed_flows_out.data(), trimmed_flows_out.size(), &trimmed_flows_count, trimmed_powers_out.data(), trimmed_powers_out.size(), &trimmed_powers_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        trimmed_flows_out.resize(trimmed_flows_count);
        trimmed_powers_out.resize(trimmed_powers_count);
        status = cutwater_power_curve_at_trim(flows_numbers.data(), flows_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), trim_law, trimmed_flows_out.data(), trimmed_flows_out.size(), &trimmed_flows_count, trimmed_powers_out.data(), trimmed_powers_out.size(), &trimmed_powers_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), trimmed_flows_out), detail::quantities(unit<Power>("kW"), trimmed_powers_out)};
}

struct curve_viscous_results {
    std::vector<Flow> viscous_flows;  // flows on the viscous liquid
    std::vector<Length> viscous_heads;  // heads on the viscous liquid
    std::vector<Fraction> viscous_efficiencies;  // efficiencies on the viscous liquid
};

/// Curves of head and efficiency on a viscous liquid, from those on water: Q_vis = C_Q Q; H_vis = C_H(Q/Q_BEP) H; eta_vis = C_eta eta; Q_BEP and H_BEP from the curve on water. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature).
inline curve_viscous_results curve_viscous(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, RotationalSpeed speed, KinematicViscosity viscosity, Count stages = unit<Count>("")(1), KinematicViscosity water_viscosity = unit<KinematicViscosity>("mm2/s")(1))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    std::vector<double> viscous_flows_out;
    std::size_t viscous_flows_count = 0;
    std::vector<double> viscous_heads_out;
    std::size_t viscous_heads_count = 0;
    std::vector<double> viscous_efficiencies_out;
    std::size_t viscous_efficiencies_count = 0;
    cutwater_status status = cutwater_curve_viscous(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Count>(""), stages), detail::number_in(unit<KinematicViscosity>("mm2/s"), water_viscosity), viscous_flows_out.data(), viscous_flows_out.size(), &viscous_flows_count, viscous_heads_out.data(), viscous_heads_out.size(), &viscous_heads_count, viscous_efficiencies_out.data(), viscous_efficiencies_out.size(), &viscous_efficiencies_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        viscous_flows_out.resize(viscous_flows_count);
        viscous_heads_out.resize(viscous_heads_count);
        viscous_efficiencies_out.resize(viscous_efficiencies_count);
        status = cutwater_curve_viscous(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Count>(""), stages), detail::number_in(unit<KinematicViscosity>("mm2/s"), water_viscosity), viscous_flows_out.data(), viscous_flows_out.size(), &viscous_flows_count, viscous_heads_out.data(), viscous_heads_out.size(), &viscous_heads_count, viscous_efficiencies_out.data(), viscous_efficiencies_out.size(), &viscous_efficiencies_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), viscous_flows_out), detail::quantities(unit<Length>("m"), viscous_heads_out), detail::quantities(unit<Fraction>(""), viscous_efficiencies_out)};
}

struct curve_in_parallel_results {
    std::vector<Flow> total_flows;  // flows of all together
    std::vector<Length> total_heads;  // heads of all together
};

/// Head curve of equal pumps in parallel: Q_sum = z Q at the same H. Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it).
inline curve_in_parallel_results curve_in_parallel(const std::vector<Flow>& flows, const std::vector<Length>& heads, Count pumps)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    std::vector<double> total_flows_out;
    std::size_t total_flows_count = 0;
    std::vector<double> total_heads_out;
    std::size_t total_heads_count = 0;
    cutwater_status status = cutwater_curve_in_parallel(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Count>(""), pumps), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        total_flows_out.resize(total_flows_count);
        total_heads_out.resize(total_heads_count);
        status = cutwater_curve_in_parallel(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Count>(""), pumps), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), total_flows_out), detail::quantities(unit<Length>("m"), total_heads_out)};
}

struct curve_in_series_results {
    std::vector<Flow> total_flows;  // flows of all together
    std::vector<Length> total_heads;  // heads of all together
};

/// Head curve of equal pumps or stages in series: H_sum = z H at the same Q. Source: heads add at the same flow; common practice, as in ISO 17769-1:2012, series operation (from memory of it).
inline curve_in_series_results curve_in_series(const std::vector<Flow>& flows, const std::vector<Length>& heads, Count pumps)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    std::vector<double> total_flows_out;
    std::size_t total_flows_count = 0;
    std::vector<double> total_heads_out;
    std::size_t total_heads_count = 0;
    cutwater_status status = cutwater_curve_in_series(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Count>(""), pumps), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        total_flows_out.resize(total_flows_count);
        total_heads_out.resize(total_heads_count);
        status = cutwater_curve_in_series(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Count>(""), pumps), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), total_flows_out), detail::quantities(unit<Length>("m"), total_heads_out)};
}

struct two_curves_in_parallel_results {
    std::vector<Flow> total_flows;  // flows of both together, down to the head at which one curve ends
    std::vector<Length> total_heads;  // heads of both together
};

/// Head curve of two unlike pumps in parallel, each behind a non-return valve: Q_sum(H) = Q_1(H) + Q_2(H); a pump gives nothing above its own closed-valve head. Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it).
inline two_curves_in_parallel_results two_curves_in_parallel(const std::vector<Flow>& flows_1, const std::vector<Length>& heads_1, const std::vector<Flow>& flows_2, const std::vector<Length>& heads_2)
{
    const std::vector<double> flows_1_numbers = detail::numbers(unit<Flow>("m3/h"), flows_1);
    const std::vector<double> heads_1_numbers = detail::numbers(unit<Length>("m"), heads_1);
    const std::vector<double> flows_2_numbers = detail::numbers(unit<Flow>("m3/h"), flows_2);
    const std::vector<double> heads_2_numbers = detail::numbers(unit<Length>("m"), heads_2);
    cutwater_refusal refusal;
    std::vector<double> total_flows_out;
    std::size_t total_flows_count = 0;
    std::vector<double> total_heads_out;
    std::size_t total_heads_count = 0;
    cutwater_status status = cutwater_two_curves_in_parallel(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        total_flows_out.resize(total_flows_count);
        total_heads_out.resize(total_heads_count);
        status = cutwater_two_curves_in_parallel(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), total_flows_out), detail::quantities(unit<Length>("m"), total_heads_out)};
}

struct two_curves_in_series_results {
    std::vector<Flow> total_flows;  // flows that both curves reach
    std::vector<Length> total_heads;  // heads of both together
};

/// Head curve of two unlike pumps in series: H_sum(Q) = H_1(Q) + H_2(Q). Source: heads add at the same flow; common practice, as in ISO 17769-1:2012, series operation (from memory of it).
inline two_curves_in_series_results two_curves_in_series(const std::vector<Flow>& flows_1, const std::vector<Length>& heads_1, const std::vector<Flow>& flows_2, const std::vector<Length>& heads_2)
{
    const std::vector<double> flows_1_numbers = detail::numbers(unit<Flow>("m3/h"), flows_1);
    const std::vector<double> heads_1_numbers = detail::numbers(unit<Length>("m"), heads_1);
    const std::vector<double> flows_2_numbers = detail::numbers(unit<Flow>("m3/h"), flows_2);
    const std::vector<double> heads_2_numbers = detail::numbers(unit<Length>("m"), heads_2);
    cutwater_refusal refusal;
    std::vector<double> total_flows_out;
    std::size_t total_flows_count = 0;
    std::vector<double> total_heads_out;
    std::size_t total_heads_count = 0;
    cutwater_status status = cutwater_two_curves_in_series(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        total_flows_out.resize(total_flows_count);
        total_heads_out.resize(total_heads_count);
        status = cutwater_two_curves_in_series(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), total_flows_out), detail::quantities(unit<Length>("m"), total_heads_out)};
}

struct flow_balance_results {
    Flow total_flow;  // flow through the system
    Length head;  // head common to both
    Flow flow_1;  // flow of pump 1
    Flow flow_2;  // flow of pump 2
    const char* delivering;  // whether one of them delivers nothing, the head being above its closed-valve head
};

/// Duty of two unlike pumps in parallel on one system, and each pump's share: Q = Q_1(H) + Q_2(H), H = H_s + k Q^2. Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it).
inline flow_balance_results flow_balance(const std::vector<Flow>& flows_1, const std::vector<Length>& heads_1, const std::vector<Flow>& flows_2, const std::vector<Length>& heads_2, Length static_head, SystemResistance resistance)
{
    const std::vector<double> flows_1_numbers = detail::numbers(unit<Flow>("m3/h"), flows_1);
    const std::vector<double> heads_1_numbers = detail::numbers(unit<Length>("m"), heads_1);
    const std::vector<double> flows_2_numbers = detail::numbers(unit<Flow>("m3/h"), flows_2);
    const std::vector<double> heads_2_numbers = detail::numbers(unit<Length>("m"), heads_2);
    cutwater_refusal refusal;
    double total_flow_out;
    double head_out;
    double flow_1_out;
    double flow_2_out;
    const char* delivering_out;
    detail::check(cutwater_flow_balance(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), &total_flow_out, &head_out, &flow_1_out, &flow_2_out, &delivering_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), total_flow_out), detail::quantity_of(unit<Length>("m"), head_out), detail::quantity_of(unit<Flow>("m3/h"), flow_1_out), detail::quantity_of(unit<Flow>("m3/h"), flow_2_out), delivering_out};
}

struct flow_balance_of_three_results {
    Flow total_flow;  // flow through the system
    Length head;  // head common to all
    Flow flow_1;  // flow of pump 1
    Flow flow_2;  // flow of pump 2
    Flow flow_3;  // flow of pump 3
    const char* delivering;  // the pumps that deliver; the head is above the closed-valve head of any other
};

/// Duty of three unlike pumps in parallel on one system, and each pump's share: Q = Q_1(H) + Q_2(H) + Q_3(H), H = H_s + k Q^2; a pump gives nothing above its own closed-valve head. Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it).
inline flow_balance_of_three_results flow_balance_of_three(const std::vector<Flow>& flows_1, const std::vector<Length>& heads_1, const std::vector<Flow>& flows_2, const std::vector<Length>& heads_2, const std::vector<Flow>& flows_3, const std::vector<Length>& heads_3, Length static_head, SystemResistance resistance)
{
    const std::vector<double> flows_1_numbers = detail::numbers(unit<Flow>("m3/h"), flows_1);
    const std::vector<double> heads_1_numbers = detail::numbers(unit<Length>("m"), heads_1);
    const std::vector<double> flows_2_numbers = detail::numbers(unit<Flow>("m3/h"), flows_2);
    const std::vector<double> heads_2_numbers = detail::numbers(unit<Length>("m"), heads_2);
    const std::vector<double> flows_3_numbers = detail::numbers(unit<Flow>("m3/h"), flows_3);
    const std::vector<double> heads_3_numbers = detail::numbers(unit<Length>("m"), heads_3);
    cutwater_refusal refusal;
    double total_flow_out;
    double head_out;
    double flow_1_out;
    double flow_2_out;
    double flow_3_out;
    const char* delivering_out;
    detail::check(cutwater_flow_balance_of_three(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), flows_3_numbers.data(), flows_3_numbers.size(), heads_3_numbers.data(), heads_3_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), &total_flow_out, &head_out, &flow_1_out, &flow_2_out, &flow_3_out, &delivering_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), total_flow_out), detail::quantity_of(unit<Length>("m"), head_out), detail::quantity_of(unit<Flow>("m3/h"), flow_1_out), detail::quantity_of(unit<Flow>("m3/h"), flow_2_out), detail::quantity_of(unit<Flow>("m3/h"), flow_3_out), delivering_out};
}

struct flow_at_head_results {
    Flow flow;  // flow at that head; 0 from the closed-valve head on
    const char* share;  // whether the pump delivers or is pushed back to no flow
};

/// Flow of a pump behind its non-return valve at a given head: its share when others in parallel set the head: H_pump(Q) = H; Q = 0 where H >= H_pump(0). Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it).
inline flow_at_head_results flow_at_head(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length head)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double flow_out;
    const char* share_out;
    detail::check(cutwater_flow_at_head(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("m"), head), &flow_out, &share_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), flow_out), share_out};
}

/// Flow that a bore carries at a mean velocity: Q = pi/4 d^2 v. Source: continuity; common practice.
inline Flow flow_through_bore(Length bore, Velocity velocity)
{
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_flow_through_bore(detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Velocity>("m/s"), velocity), &flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), flow_out);
}

/// Rise of the head from the rated flow to closed valve, as a part of the rated head: (H_0 - H_r)/H_r, H_0 at no flow, H_r of the curve at Q_r. Source: definition; common practice, as in ISO 13709:2009, head rise from rated point to shut-off (from memory of it).
inline Ratio shutoff_head_rise(const std::vector<Flow>& flows, const std::vector<Length>& heads, Flow rated_flow)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double head_rise_out;
    detail::check(cutwater_shutoff_head_rise(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Flow>("m3/h"), rated_flow), &head_rise_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), head_rise_out);
}

struct curve_is_stable_results {
    const char* shape;  // stable: falls from point to point; flat: level between some; drooping: rises first; dipping: rises after it has fallen
    Flow top_flow;  // flow of the greatest listed head
    Length top_head;  // greatest listed head
};

/// Whether the head falls all the way with rising flow: stable when every H_i is less than the one before it. Source: stable and unstable curve, ISO 17769-1:2012 (from memory of it).
inline curve_is_stable_results curve_is_stable(const std::vector<Flow>& flows, const std::vector<Length>& heads)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    const char* shape_out;
    double top_flow_out;
    double top_head_out;
    detail::check(cutwater_curve_is_stable(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), &shape_out, &top_flow_out, &top_head_out, &refusal), refusal);
    return {shape_out, detail::quantity_of(unit<Flow>("m3/h"), top_flow_out), detail::quantity_of(unit<Length>("m"), top_head_out)};
}

struct curve_fit_results {
    std::vector<Ratio> coefficients;  // y = a_0 + a_1 x + a_2 x^2 + …
    Ratio determination;  // 1 when the curve goes through every point
    Ratio deviation;  // standard deviation of the points about the curve, in the unit of y; 0 when no point is to spare
};

/// Polynomial through measured points by least squares, with its goodness of fit: sum of (y_i - y(x_i))^2 least; R^2 = 1 - sum (y_i - y(x_i))^2/sum (y_i - mean)^2; s^2 = sum (y_i - y(x_i))^2/(N - m - 1). Source: least squares by orthogonal polynomials, G. E. Forsythe, J. SIAM 5 (1957) 74-88 (from memory of it; agrees with NumPy's polyfit).
inline curve_fit_results curve_fit(const std::vector<Ratio>& x_values, const std::vector<Ratio>& y_values, Count degree)
{
    const std::vector<double> x_values_numbers = detail::numbers(unit<Ratio>(""), x_values);
    const std::vector<double> y_values_numbers = detail::numbers(unit<Ratio>(""), y_values);
    cutwater_refusal refusal;
    std::vector<double> coefficients_out;
    std::size_t coefficients_count = 0;
    double determination_out;
    double deviation_out;
    cutwater_status status = cutwater_curve_fit(x_values_numbers.data(), x_values_numbers.size(), y_values_numbers.data(), y_values_numbers.size(), detail::number_in(unit<Count>(""), degree), coefficients_out.data(), coefficients_out.size(), &coefficients_count, &determination_out, &deviation_out, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        coefficients_out.resize(coefficients_count);
        status = cutwater_curve_fit(x_values_numbers.data(), x_values_numbers.size(), y_values_numbers.data(), y_values_numbers.size(), detail::number_in(unit<Count>(""), degree), coefficients_out.data(), coefficients_out.size(), &coefficients_count, &determination_out, &deviation_out, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Ratio>(""), coefficients_out), detail::quantity_of(unit<Ratio>(""), determination_out), detail::quantity_of(unit<Ratio>(""), deviation_out)};
}

/// Value of the least-squares polynomial through measured points: y(x) of the polynomial that curve_fit finds. Source: least squares by orthogonal polynomials, G. E. Forsythe, J. SIAM 5 (1957) 74-88 (from memory of it; agrees with NumPy's polyfit).
inline Ratio fitted_value(const std::vector<Ratio>& x_values, const std::vector<Ratio>& y_values, Count degree, Ratio x)
{
    const std::vector<double> x_values_numbers = detail::numbers(unit<Ratio>(""), x_values);
    const std::vector<double> y_values_numbers = detail::numbers(unit<Ratio>(""), y_values);
    cutwater_refusal refusal;
    double y_out;
    detail::check(cutwater_fitted_value(x_values_numbers.data(), x_values_numbers.size(), y_values_numbers.data(), y_values_numbers.size(), detail::number_in(unit<Count>(""), degree), detail::number_in(unit<Ratio>(""), x), &y_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), y_out);
}

// ---- Acceptance test ----

struct acceptance_tolerances_results {
    Ratio flow_low;  // lowest flow, -0.05 for 5 % below
    Ratio flow_high;  // highest flow
    Ratio head_low;  // lowest head
    Ratio head_high;  // highest head
    Ratio power_high;  // highest power; no lower limit
    Ratio efficiency_low;  // lowest efficiency, as a part of the guaranteed one; no upper limit
};

/// Tolerances of an acceptance grade, as parts of the guaranteed values: by the grade; up to 10 kW, when asked for: tau_Q = +-10 %, tau_H = +-8 %, tau_eta = -[10 (1 - P/10 kW) + 7] %, tau_P = sqrt(7^2 + tau_eta^2) %. Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it).
inline acceptance_tolerances_results acceptance_tolerances(const char* grade, Power power_input = unit<Power>("kW")(0))
{
    cutwater_refusal refusal;
    double flow_low_out;
    double flow_high_out;
    double head_low_out;
    double head_high_out;
    double power_high_out;
    double efficiency_low_out;
    detail::check(cutwater_acceptance_tolerances(grade, detail::number_in(unit<Power>("kW"), power_input), &flow_low_out, &flow_high_out, &head_low_out, &head_high_out, &power_high_out, &efficiency_low_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), flow_low_out), detail::quantity_of(unit<Ratio>(""), flow_high_out), detail::quantity_of(unit<Ratio>(""), head_low_out), detail::quantity_of(unit<Ratio>(""), head_high_out), detail::quantity_of(unit<Ratio>(""), power_high_out), detail::quantity_of(unit<Ratio>(""), efficiency_low_out)};
}

struct acceptance_limits_results {
    Ratio lowest;  // in the same unit; 0 for power, which has no lower limit
    Ratio highest;  // in the same unit; 1 for efficiency, which has no upper limit
};

/// Lowest and highest measured value that an acceptance grade allows: G_low = G (1 + tau_low), G_high = G (1 + tau_high). Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it).
inline acceptance_limits_results acceptance_limits(const char* grade, const char* quantity, Ratio guaranteed_value, Power power_input = unit<Power>("kW")(0))
{
    cutwater_refusal refusal;
    double lowest_out;
    double highest_out;
    detail::check(cutwater_acceptance_limits(grade, quantity, detail::number_in(unit<Ratio>(""), guaranteed_value), detail::number_in(unit<Power>("kW"), power_input), &lowest_out, &highest_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), lowest_out), detail::quantity_of(unit<Ratio>(""), highest_out)};
}

struct acceptance_verdict_results {
    const char* verdict;  // pass when the curve crosses or touches at least one bar of the tolerance cross
    Length head_at_flow;  // measured head at the guaranteed flow
    Flow flow_at_head;  // measured flow at the guaranteed head, the one on the level bar if there are several; where the curve comes nearest to it if it has it nowhere
};

/// Whether a measured head curve keeps the guaranteed flow and head: H_G (1 + tau_H-) <= H(Q_G) <= H_G (1 + tau_H+), or Q_G (1 + tau_Q-) <= Q(H_G) <= Q_G (1 + tau_Q+). Source: ISO 9906:2012, 4.4 and evaluation of flow and head (from memory of it; an excerpt on the tolerance cross read).
inline acceptance_verdict_results acceptance_verdict(const char* grade, Flow guaranteed_flow, Length guaranteed_head, const std::vector<Flow>& flows, const std::vector<Length>& heads, Power power_input = unit<Power>("kW")(0))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    const char* verdict_out;
    double head_at_flow_out;
    double flow_at_head_out;
    detail::check(cutwater_acceptance_verdict(grade, detail::number_in(unit<Flow>("m3/h"), guaranteed_flow), detail::number_in(unit<Length>("m"), guaranteed_head), flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Power>("kW"), power_input), &verdict_out, &head_at_flow_out, &flow_at_head_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Length>("m"), head_at_flow_out), detail::quantity_of(unit<Flow>("m3/h"), flow_at_head_out)};
}

struct acceptance_verdict_efficiency_results {
    const char* verdict;  // pass when the efficiency there is not below its limit
    Fraction efficiency;  // measured efficiency there
    Flow flow;  // flow at which the line from the origin through the guaranteed point meets the head curve, the nearest to Q_G if it meets it more than once
};

/// Whether measured curves keep the guaranteed efficiency: eta(Q) >= eta_G (1 + tau_eta) where H(Q) = H_G Q/Q_G. Source: ISO 9906:2012, 4.4 and evaluation of efficiency and power on the line through the origin (from memory of it).
inline acceptance_verdict_efficiency_results acceptance_verdict_efficiency(const char* grade, Flow guaranteed_flow, Length guaranteed_head, Fraction guaranteed_efficiency, const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, Power power_input = unit<Power>("kW")(0))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    const char* verdict_out;
    double efficiency_out;
    double flow_out;
    detail::check(cutwater_acceptance_verdict_efficiency(grade, detail::number_in(unit<Flow>("m3/h"), guaranteed_flow), detail::number_in(unit<Length>("m"), guaranteed_head), detail::number_in(unit<Fraction>(""), guaranteed_efficiency), flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Power>("kW"), power_input), &verdict_out, &efficiency_out, &flow_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Fraction>(""), efficiency_out), detail::quantity_of(unit<Flow>("m3/h"), flow_out)};
}

struct acceptance_verdict_power_results {
    const char* verdict;  // pass when the power there is not above its limit
    Power power;  // measured power input there
    Flow flow;  // flow at which the line from the origin through the guaranteed point meets the head curve, the nearest to Q_G if it meets it more than once
};

/// Whether measured curves keep the guaranteed power input: P(Q) <= P_G (1 + tau_P) where H(Q) = H_G Q/Q_G. Source: ISO 9906:2012, 4.4 and evaluation of efficiency and power on the line through the origin (from memory of it).
inline acceptance_verdict_power_results acceptance_verdict_power(const char* grade, Flow guaranteed_flow, Length guaranteed_head, Power guaranteed_power, const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Power>& powers, Power power_input = unit<Power>("kW")(0))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    cutwater_refusal refusal;
    const char* verdict_out;
    double power_out;
    double flow_out;
    detail::check(cutwater_acceptance_verdict_power(grade, detail::number_in(unit<Flow>("m3/h"), guaranteed_flow), detail::number_in(unit<Length>("m"), guaranteed_head), detail::number_in(unit<Power>("kW"), guaranteed_power), flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<Power>("kW"), power_input), &verdict_out, &power_out, &flow_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Power>("kW"), power_out), detail::quantity_of(unit<Flow>("m3/h"), flow_out)};
}

struct acceptance_margin_results {
    Ratio deviation;  // part of the guaranteed value, -0.02 for 2 % below
    Ratio margin;  // distance to the nearer limit; negative when outside its tolerance
};

/// Deviation of a measured value from the guaranteed one, and its margin in an acceptance grade: d = M/G - 1; m = min(d - tau_low, tau_high - d); power: m = tau_P - d; efficiency: m = d - tau_eta. Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it).
inline acceptance_margin_results acceptance_margin(const char* grade, const char* quantity, Ratio guaranteed_value, Ratio measured_value, Power power_input = unit<Power>("kW")(0))
{
    cutwater_refusal refusal;
    double deviation_out;
    double margin_out;
    detail::check(cutwater_acceptance_margin(grade, quantity, detail::number_in(unit<Ratio>(""), guaranteed_value), detail::number_in(unit<Ratio>(""), measured_value), detail::number_in(unit<Power>("kW"), power_input), &deviation_out, &margin_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), deviation_out), detail::quantity_of(unit<Ratio>(""), margin_out)};
}

struct acceptance_margins_results {
    Ratio head_deviation;  // of the head at the guaranteed flow, as a part of the guaranteed head
    Ratio head_margin;  // distance to the nearer limit; negative when outside its tolerance
    Ratio flow_deviation;  // of the flow at the guaranteed head, as a part of the guaranteed flow
    Ratio flow_margin;  // distance to the nearer limit; negative when outside its tolerance
};

/// Deviations of a measured head curve from the guaranteed point, and their margins in an acceptance grade: d_H = H(Q_G)/H_G - 1; d_Q = Q(H_G)/Q_G - 1; m = min(d - tau_low, tau_high - d); the guarantee is kept when either margin is not negative. Source: ISO 9906:2012, 4.4 and evaluation of flow and head (from memory of it; an excerpt on the tolerance cross read).
inline acceptance_margins_results acceptance_margins(const char* grade, Flow guaranteed_flow, Length guaranteed_head, const std::vector<Flow>& flows, const std::vector<Length>& heads, Power power_input = unit<Power>("kW")(0))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double head_deviation_out;
    double head_margin_out;
    double flow_deviation_out;
    double flow_margin_out;
    detail::check(cutwater_acceptance_margins(grade, detail::number_in(unit<Flow>("m3/h"), guaranteed_flow), detail::number_in(unit<Length>("m"), guaranteed_head), flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Power>("kW"), power_input), &head_deviation_out, &head_margin_out, &flow_deviation_out, &flow_margin_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), head_deviation_out), detail::quantity_of(unit<Ratio>(""), head_margin_out), detail::quantity_of(unit<Ratio>(""), flow_deviation_out), detail::quantity_of(unit<Ratio>(""), flow_margin_out)};
}

struct test_to_rated_speed_results {
    Flow rated_flow;  // flow at the rated speed
    Length rated_head;  // head at the rated speed
    Power rated_power;  // power input at the rated speed and density
    Length rated_npsh3;  // NPSH3 at the rated speed
};

/// Measured values translated to the rated speed and density: Q_T = Q n_sp/n; H_T = H (n_sp/n)^2; P_T = P (n_sp/n)^3 rho_sp/rho; NPSH3_T = NPSH3 (n_sp/n)^x; the efficiency stays. Source: ISO 9906:2012, 6.1.2, translation of the test results (from memory of it).
inline test_to_rated_speed_results test_to_rated_speed(Flow flow, Length head, Power power, Length npsh3, RotationalSpeed test_speed, RotationalSpeed rated_speed, Density test_density, Density rated_density, Ratio npsh_exponent = unit<Ratio>("")(2))
{
    cutwater_refusal refusal;
    double rated_flow_out;
    double rated_head_out;
    double rated_power_out;
    double rated_npsh3_out;
    detail::check(cutwater_test_to_rated_speed(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Power>("kW"), power), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<RotationalSpeed>("1/min"), test_speed), detail::number_in(unit<RotationalSpeed>("1/min"), rated_speed), detail::number_in(unit<Density>("kg/m3"), test_density), detail::number_in(unit<Density>("kg/m3"), rated_density), detail::number_in(unit<Ratio>(""), npsh_exponent), &rated_flow_out, &rated_head_out, &rated_power_out, &rated_npsh3_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), rated_flow_out), detail::quantity_of(unit<Length>("m"), rated_head_out), detail::quantity_of(unit<Power>("kW"), rated_power_out), detail::quantity_of(unit<Length>("m"), rated_npsh3_out)};
}

struct test_points_to_rated_speed_results {
    std::vector<Flow> rated_flows;  // flows at the rated speed, in the order given
    std::vector<Length> rated_heads;  // heads at the rated speed
    std::vector<Power> rated_powers;  // power inputs at the rated speed and density
    std::vector<Fraction> efficiencies;  // pump efficiencies, which the translation keeps
};

/// All points of a test translated to the rated speed and density, with their efficiencies: Q_T = Q n_sp/n_i; H_T = H (n_sp/n_i)^2; P_T = P (n_sp/n_i)^3 rho_sp/rho; eta = rho g Q H/P. Source: ISO 9906:2012, 6.1.2, translation of the test results (from memory of it); efficiency by ISO 17769-1 (from memory of it).
inline test_points_to_rated_speed_results test_points_to_rated_speed(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Power>& powers, const std::vector<RotationalSpeed>& test_speeds, RotationalSpeed rated_speed, Density test_density, Density rated_density)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    const std::vector<double> test_speeds_numbers = detail::numbers(unit<RotationalSpeed>("1/min"), test_speeds);
    cutwater_refusal refusal;
    std::vector<double> rated_flows_out;
    std::size_t rated_flows_count = 0;
    std::vector<double> rated_heads_out;
    std::size_t rated_heads_count = 0;
    std::vector<double> rated_powers_out;
    std::size_t rated_powers_count = 0;
    std::vector<double> efficiencies_out;
    std::size_t efficiencies_count = 0;
    cutwater_status status = cutwater_test_points_to_rated_speed(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), powers_numbers.data(), powers_numbers.size(), test_speeds_numbers.data(), test_speeds_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), rated_speed), detail::number_in(unit<Density>("kg/m3"), test_density), detail::number_in(unit<Density>("kg/m3"), rated_density), rated_flows_out.data(), rated_flows_out.size(), &rated_flows_count, rated_heads_out.data(), rated_heads_out.size(), &rated_heads_count, rated_powers_out.data(), rated_powers_out.size(), &rated_powers_count, efficiencies_out.data(), efficiencies_out.size(), &efficiencies_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        rated_flows_out.resize(rated_flows_count);
        rated_heads_out.resize(rated_heads_count);
        rated_powers_out.resize(rated_powers_count);
        efficiencies_out.resize(efficiencies_count);
        status = cutwater_test_points_to_rated_speed(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), powers_numbers.data(), powers_numbers.size(), test_speeds_numbers.data(), test_speeds_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), rated_speed), detail::number_in(unit<Density>("kg/m3"), test_density), detail::number_in(unit<Density>("kg/m3"), rated_density), rated_flows_out.data(), rated_flows_out.size(), &rated_flows_count, rated_heads_out.data(), rated_heads_out.size(), &rated_heads_count, rated_powers_out.data(), rated_powers_out.size(), &rated_powers_count, efficiencies_out.data(), efficiencies_out.size(), &efficiencies_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), rated_flows_out), detail::quantities(unit<Length>("m"), rated_heads_out), detail::quantities(unit<Power>("kW"), rated_powers_out), detail::quantities(unit<Fraction>(""), efficiencies_out)};
}

/// Random part of a measured value's uncertainty, from repeated readings: e_R = 100 t s/(mean sqrt(N)), t by Student, 95 %, N - 1 degrees of freedom. Source: ISO 9906:2012, 4.3 (from memory of it).
inline Ratio random_uncertainty(const std::vector<Ratio>& readings)
{
    const std::vector<double> readings_numbers = detail::numbers(unit<Ratio>(""), readings);
    cutwater_refusal refusal;
    double random_out;
    detail::check(cutwater_random_uncertainty(readings_numbers.data(), readings_numbers.size(), &random_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>("%"), random_out);
}

/// Overall uncertainty of a measured value: e = sqrt(e_S^2 + e_R^2). Source: ISO 9906:2012, 4.3 (from memory of it).
inline Ratio measurement_uncertainty(Ratio systematic, Ratio random)
{
    cutwater_refusal refusal;
    double overall_out;
    detail::check(cutwater_measurement_uncertainty(detail::number_in(unit<Ratio>("%"), systematic), detail::number_in(unit<Ratio>("%"), random), &overall_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>("%"), overall_out);
}

/// Uncertainty of a measured efficiency, from those of what it is made of: e_eta = sqrt(e_Q^2 + e_H^2 + e_P^2 + e_n^2). Source: ISO 9906:2012, 4.3 (from memory of it).
inline Ratio efficiency_uncertainty(Ratio flow_uncertainty, Ratio head_uncertainty, Ratio power_uncertainty, Ratio speed_uncertainty = unit<Ratio>("%")(0))
{
    cutwater_refusal refusal;
    double efficiency_uncertainty_out;
    detail::check(cutwater_efficiency_uncertainty(detail::number_in(unit<Ratio>("%"), flow_uncertainty), detail::number_in(unit<Ratio>("%"), head_uncertainty), detail::number_in(unit<Ratio>("%"), power_uncertainty), detail::number_in(unit<Ratio>("%"), speed_uncertainty), &efficiency_uncertainty_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>("%"), efficiency_uncertainty_out);
}

/// Greatest overall uncertainty that an acceptance test may have: by the table; grades 2 and 3 have the same. Source: ISO 9906:2012, 4.3, Table 7 (from memory of it; the values for power and efficiency follow from the others by root-sum-square).
inline Ratio allowed_uncertainty(const char* test_grade, const char* quantity)
{
    cutwater_refusal refusal;
    double overall_out;
    detail::check(cutwater_allowed_uncertainty(test_grade, quantity, &overall_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>("%"), overall_out);
}

}  // namespace cutwater

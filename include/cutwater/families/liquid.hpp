// generated from the catalogue by cutwater-generate; do not edit.
// Liquid properties, pressure and head.
#pragma once

#include <cutwater/families/liquid.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

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

/// Density of a liquid between two temperatures at which it is known: rho = rho_1 + (rho_2 - rho_1)(T - T_1)/(T_2 - T_1). Source: straight line between two points; common practice.
inline Density density_two_point(Temperature first_temperature, Density first_density, Temperature second_temperature, Density second_density, Temperature temperature)
{
    cutwater_refusal refusal;
    double density_out;
    detail::check(cutwater_density_two_point(detail::number_in(unit<Temperature>("degC"), first_temperature), detail::number_in(unit<Density>("kg/m3"), first_density), detail::number_in(unit<Temperature>("degC"), second_temperature), detail::number_in(unit<Density>("kg/m3"), second_density), detail::number_in(unit<Temperature>("degC"), temperature), &density_out, &refusal), refusal);
    return detail::quantity_of(unit<Density>("kg/m3"), density_out);
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

}  // namespace cutwater

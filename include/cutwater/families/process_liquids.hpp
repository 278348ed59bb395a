// generated from the catalogue by cutwater-generate; do not edit.
// Process liquids.
#pragma once

#include <cutwater/families/process_liquids.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Density of an acid, a lye or a brine by its concentration and temperature: 1/rho = (1 - w)/rho_w(t) + w/rho_a; rho_a = (c0 w + c1) exp(1e-6 (t + c4)^2)/(w + c2 + c3 t). Source: M. Laliberte and W. E. Cooper, J. Chem. Eng. Data 49 (2004) 1141, constants of M. Laliberte, J. Chem. Eng. Data 54 (2009) 1725; equations and constants as the open library thermo carries them (read).
inline Density solution_density(const char* solute, Fraction mass_fraction, Temperature temperature)
{
    cutwater_refusal refusal;
    double density_out;
    detail::check(cutwater_solution_density(solute, detail::number_in(unit<Fraction>(""), mass_fraction), detail::number_in(unit<Temperature>("degC"), temperature), &density_out, &refusal), refusal);
    return detail::quantity_of(unit<Density>("kg/m3"), density_out);
}

/// Dynamic viscosity of an acid, a lye or a brine by its concentration and temperature: ln mu = (1 - w) ln mu_w(t) + w ln mu_s; mu_s = exp[(v1 w^v2 + v3)/(v4 t + 1)]/(v5 w^v6 + 1), in mPa s. Source: M. Laliberte, J. Chem. Eng. Data 52 (2007) 321, constants of the same, J. Chem. Eng. Data 54 (2009) 1725; equations and constants as the open library thermo carries them (read).
inline DynamicViscosity solution_dynamic_viscosity(const char* solute, Fraction mass_fraction, Temperature temperature)
{
    cutwater_refusal refusal;
    double viscosity_out;
    detail::check(cutwater_solution_dynamic_viscosity(solute, detail::number_in(unit<Fraction>(""), mass_fraction), detail::number_in(unit<Temperature>("degC"), temperature), &viscosity_out, &refusal), refusal);
    return detail::quantity_of(unit<DynamicViscosity>("mPa s"), viscosity_out);
}

/// Density of strong sulphuric acid, 74 to 100 % by mass, by its concentration and temperature: rho = a(w) + b(w) T with the table's a and b, straight between its shares; T in kelvin. Source: International Critical Tables 3 (1928), 0 to 100 degC, as straight lines of an open atmospheric code (read); the tables not read.
inline Density strong_sulphuric_acid_density(Fraction mass_fraction, Temperature temperature)
{
    cutwater_refusal refusal;
    double density_out;
    detail::check(cutwater_strong_sulphuric_acid_density(detail::number_in(unit<Fraction>(""), mass_fraction), detail::number_in(unit<Temperature>("degC"), temperature), &density_out, &refusal), refusal);
    return detail::quantity_of(unit<Density>("kg/m3"), density_out);
}

/// Density of strong caustic soda solution, 20 to 50 % by mass, warm and hot: rho = b_1 + b_2 t + b_3 t^2; b: polynomials in (1 - w)^0.5 with the constants of the source. Source: J. Olsson, A. Jernqvist and G. Aly, Int. J. Thermophysics 18 (1997) 779 (as an open package prints it, read; the paper not read); interval of its use: set here, where it could be checked.
inline Density strong_caustic_soda_density(Fraction mass_fraction, Temperature temperature)
{
    cutwater_refusal refusal;
    double density_out;
    detail::check(cutwater_strong_caustic_soda_density(detail::number_in(unit<Fraction>(""), mass_fraction), detail::number_in(unit<Temperature>("degC"), temperature), &density_out, &refusal), refusal);
    return detail::quantity_of(unit<Density>("kg/m3"), density_out);
}

/// Vapour pressure of caustic soda solution by its concentration and temperature: ln p_v = (a + b t)/(t - c), in kPa and degC; a, b, c: polynomials in ln(1 - w) with the constants of the source. Source: J. Olsson, A. Jernqvist and G. Aly, Int. J. Thermophysics 18 (1997) 779 (as two open codes print it, read; the paper not read).
inline AbsolutePressure caustic_soda_vapour_pressure(Fraction mass_fraction, Temperature temperature)
{
    cutwater_refusal refusal;
    double vapour_pressure_out;
    detail::check(cutwater_caustic_soda_vapour_pressure(detail::number_in(unit<Fraction>(""), mass_fraction), detail::number_in(unit<Temperature>("degC"), temperature), &vapour_pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<AbsolutePressure>("bara"), vapour_pressure_out);
}

/// Density of sea water by its salinity and temperature: rho = 999.9 + 2.034e-2 t - 6.162e-3 t^2 + 2.261e-5 t^3 - 4.657e-8 t^4 + S (802.0 - 2.001 t + 1.677e-2 t^2 - 3.060e-5 t^3 - 1.613e-5 S t^2). Source: M. H. Sharqawy, J. H. Lienhard and S. M. Zubair, Desalination and Water Treatment 16 (2010) 354, equation (8) (as two open codes print it, read; the paper not read).
inline Density sea_water_density(Fraction salinity, Temperature temperature)
{
    cutwater_refusal refusal;
    double density_out;
    detail::check(cutwater_sea_water_density(detail::number_in(unit<Fraction>(""), salinity), detail::number_in(unit<Temperature>("degC"), temperature), &density_out, &refusal), refusal);
    return detail::quantity_of(unit<Density>("kg/m3"), density_out);
}

/// Dynamic viscosity of sea water by its salinity and temperature: mu = mu_w (1 + A S + B S^2); mu_w = 4.2844e-5 + 1/(0.157 (t + 64.993)^2 - 91.296) Pa s; A = 1.541 + 1.998e-2 t - 9.52e-5 t^2; B = 7.974 - 7.561e-2 t + 4.724e-4 t^2. Source: M. H. Sharqawy, J. H. Lienhard and S. M. Zubair, Desalination and Water Treatment 16 (2010) 354, equations (22) and (23) (as two open codes print them, read; the paper not read).
inline DynamicViscosity sea_water_dynamic_viscosity(Fraction salinity, Temperature temperature)
{
    cutwater_refusal refusal;
    double viscosity_out;
    detail::check(cutwater_sea_water_dynamic_viscosity(detail::number_in(unit<Fraction>(""), salinity), detail::number_in(unit<Temperature>("degC"), temperature), &viscosity_out, &refusal), refusal);
    return detail::quantity_of(unit<DynamicViscosity>("mPa s"), viscosity_out);
}

/// Temperature at which crystals begin to form in a mixture of glycol and water: polynomial in x - x_m and t - t_m, up to the fifth power, with the constants of the source. Source: A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd edition, International Institute of Refrigeration, 2010 (not read; polynomials and constants as the open library SecondaryCoolantProps carries them, read and run).
inline Temperature glycol_freezing_point(const char* glycol, Fraction mass_fraction)
{
    cutwater_refusal refusal;
    double freezing_point_out;
    detail::check(cutwater_glycol_freezing_point(glycol, detail::number_in(unit<Fraction>(""), mass_fraction), &freezing_point_out, &refusal), refusal);
    return detail::quantity_of(unit<Temperature>("degC"), freezing_point_out);
}

/// Density of a mixture of glycol and water: rho = polynomial in x - x_m and t - t_m, with the constants of the source. Source: A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd edition, International Institute of Refrigeration, 2010 (not read; polynomials and constants as the open library SecondaryCoolantProps carries them, read and run).
inline Density glycol_density(const char* glycol, Fraction mass_fraction, Temperature temperature)
{
    cutwater_refusal refusal;
    double density_out;
    detail::check(cutwater_glycol_density(glycol, detail::number_in(unit<Fraction>(""), mass_fraction), detail::number_in(unit<Temperature>("degC"), temperature), &density_out, &refusal), refusal);
    return detail::quantity_of(unit<Density>("kg/m3"), density_out);
}

/// Dynamic viscosity of a mixture of glycol and water: ln mu = polynomial in x - x_m and t - t_m, with the constants of the source, mu in mPa s. Source: A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd edition, International Institute of Refrigeration, 2010 (not read; polynomials and constants as the open library SecondaryCoolantProps carries them, read and run).
inline DynamicViscosity glycol_dynamic_viscosity(const char* glycol, Fraction mass_fraction, Temperature temperature)
{
    cutwater_refusal refusal;
    double viscosity_out;
    detail::check(cutwater_glycol_dynamic_viscosity(glycol, detail::number_in(unit<Fraction>(""), mass_fraction), detail::number_in(unit<Temperature>("degC"), temperature), &viscosity_out, &refusal), refusal);
    return detail::quantity_of(unit<DynamicViscosity>("mPa s"), viscosity_out);
}

/// Specific heat capacity of a mixture of glycol and water: c_p = polynomial in x - x_m and t - t_m, with the constants of the source. Source: A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd edition, International Institute of Refrigeration, 2010 (not read; polynomials and constants as the open library SecondaryCoolantProps carries them, read and run).
inline SpecificHeat glycol_specific_heat(const char* glycol, Fraction mass_fraction, Temperature temperature)
{
    cutwater_refusal refusal;
    double specific_heat_out;
    detail::check(cutwater_glycol_specific_heat(glycol, detail::number_in(unit<Fraction>(""), mass_fraction), detail::number_in(unit<Temperature>("degC"), temperature), &specific_heat_out, &refusal), refusal);
    return detail::quantity_of(unit<SpecificHeat>("kJ/(kg K)"), specific_heat_out);
}

/// Viscosity of a suspension of fine particles that do not settle: mu = mu_l (1 + 2.5 phi + 10.05 phi^2 + 0.00273 exp(16.6 phi)). Source: D. G. Thomas, J. Colloid Sci. 20 (1965) 267 (as three open codes print it, read; the paper not read); its second term is A. Einstein's, Ann. Phys. 19 (1906) 289.
inline DynamicViscosity suspension_viscosity(DynamicViscosity liquid_viscosity, Fraction volume_fraction)
{
    cutwater_refusal refusal;
    double viscosity_out;
    detail::check(cutwater_suspension_viscosity(detail::number_in(unit<DynamicViscosity>("mPa s"), liquid_viscosity), detail::number_in(unit<Fraction>(""), volume_fraction), &viscosity_out, &refusal), refusal);
    return detail::quantity_of(unit<DynamicViscosity>("mPa s"), viscosity_out);
}

}  // namespace cutwater

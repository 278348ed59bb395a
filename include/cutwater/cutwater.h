/* generated from the catalogue by cutwater-generate; do not edit. */
/* The flat C API. Every function returns a cutwater_status; on refusal numbers are NaN, words are "" and refusal, if not
   null, tells which argument, its value, what is permitted and why. Numbers carry the unit that their name ends in.
   The form ending in _rows computes a column a call; it stores a word as its position among the words. */
#ifndef CUTWATER_H
#define CUTWATER_H

#include <cutwater/base.h>
#include <cutwater/library.h>

#ifdef __cplusplus
extern "C" {
#endif

/* ---- Liquid properties, pressure and head ---- */

/*
 * Density of liquid water.
 *
 *   temperature_degC             temperature of the water; from 0 to 350 degC
 *   pressure_bara                absolute pressure of the water; not below its vapour pressure; above 0 up to 1000 bara
 *   -> density_kgm3              density
 *
 *   Equation: rho = 16.53 MPa/(R T gamma_pi(pi, tau)), pi = p/16.53 MPa, tau = 1386 K/T
 *   Source: IAPWS R7-97(2012), clause 5.1, equation (7), Tables 2 and 3 (coefficients as in python3-iapws 1.5.2, which
 *           reproduces the release's Table 5)
 *   Caution: Pure water: dissolved salts, gas and solids change it; sea water is 2 to 3 % denser.
 */
CUTWATER_API cutwater_status cutwater_water_density(double temperature_degC, double pressure_bara, double *density_kgm3,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_water_density_rows(size_t rows, cutwater_column temperature_degC,
                                            cutwater_column pressure_bara, cutwater_result_column density_kgm3,
                                            cutwater_rows_report *report);

/*
 * Vapour pressure of water.
 *
 *   temperature_degC             temperature of the water, up to its critical point; from 0 to 373.946 degC
 *   -> vapour_pressure_bara      absolute pressure at which water boils at that temperature
 *
 *   Equation: p_v = (2 C/(-B + sqrt(B^2 - 4 A C)))^4 MPa; A, B, C quadratics in theta = T + n9/(T - n10)
 *   Source: IAPWS R7-97(2012), clause 8, equation (30), Table 34 (coefficients as in python3-iapws 1.5.2, which
 *           reproduces the release's Table 35)
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: Pure water: dissolved air comes out of solution well above the vapour pressure and can upset a pump before
 *            that.
 */
CUTWATER_API cutwater_status cutwater_water_vapour_pressure(double temperature_degC, double *vapour_pressure_bara,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_water_vapour_pressure_rows(size_t rows, cutwater_column temperature_degC,
                                                    cutwater_result_column vapour_pressure_bara,
                                                    cutwater_rows_report *report);

/*
 * Temperature at which water boils.
 *
 *   pressure_bara                absolute pressure, from the vapour pressure at 0 degC to the critical pressure; from
 *                                0.00611213 to 220.64 bara
 *   -> boiling_temperature_degC  boiling temperature at that pressure
 *
 *   Equation: T_s = (n10 + D - sqrt((n10 + D)^2 - 4 (n9 + n10 D)))/2; D from beta = (p/MPa)^(1/4)
 *   Source: IAPWS R7-97(2012), clause 8, equation (31), Table 34 (coefficients as in python3-iapws 1.5.2, which
 *           reproduces the release's Table 36)
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_water_boiling_temperature(double pressure_bara, double *boiling_temperature_degC,
                                                   cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_water_boiling_temperature_rows(size_t rows, cutwater_column pressure_bara,
                                                        cutwater_result_column boiling_temperature_degC,
                                                        cutwater_rows_report *report);

/*
 * Dynamic viscosity of liquid water.
 *
 *   temperature_degC             temperature of the water; from 0 to 350 degC
 *   pressure_bara                absolute pressure of the water; not below its vapour pressure; above 0 up to 1000 bara
 *   -> dynamic_viscosity_mPas    dynamic viscosity
 *
 *   Equation: mu = mu_0(T) mu_1(T, rho) x 1e-6 Pa s, rho from IAPWS-IF97
 *   Source: IAPWS R12-08, equations (10) to (12), Tables 1 and 2, without critical enhancement (clause 3); density:
 *           IAPWS R7-97(2012), region 1 (coefficients as in python3-iapws 1.5.2, which reproduces Table 4 of R12-08)
 *   Caution: Pure water: dissolved salts, gas and solids change it; sea water is 2 to 3 % denser.
 */
CUTWATER_API cutwater_status cutwater_water_dynamic_viscosity(double temperature_degC, double pressure_bara,
                                                 double *dynamic_viscosity_mPas, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_water_dynamic_viscosity_rows(size_t rows, cutwater_column temperature_degC,
                                                      cutwater_column pressure_bara,
                                                      cutwater_result_column dynamic_viscosity_mPas,
                                                      cutwater_rows_report *report);

/*
 * Kinematic viscosity of liquid water.
 *
 *   temperature_degC             temperature of the water; from 0 to 350 degC
 *   pressure_bara                absolute pressure of the water; not below its vapour pressure; above 0 up to 1000 bara
 *   -> kinematic_viscosity_mm2s  kinematic viscosity
 *
 *   Equation: nu = mu/rho, mu from IAPWS R12-08, rho from IAPWS-IF97
 *   Source: IAPWS R12-08, equations (10) to (12), Tables 1 and 2, without critical enhancement (clause 3); density:
 *           IAPWS R7-97(2012), region 1 (coefficients as in python3-iapws 1.5.2, which reproduces Table 4 of R12-08)
 *   Caution: Pure water: dissolved salts, gas and solids change it; sea water is 2 to 3 % denser.
 */
CUTWATER_API cutwater_status cutwater_water_kinematic_viscosity(double temperature_degC, double pressure_bara,
                                                   double *kinematic_viscosity_mm2s, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_water_kinematic_viscosity_rows(size_t rows, cutwater_column temperature_degC,
                                                        cutwater_column pressure_bara,
                                                        cutwater_result_column kinematic_viscosity_mm2s,
                                                        cutwater_rows_report *report);

/*
 * Specific heat capacity of liquid water at constant pressure.
 *
 *   temperature_degC             temperature of the water; from 0 to 350 degC
 *   pressure_bara                absolute pressure of the water; not below its vapour pressure; above 0 up to 1000 bara
 *   -> specific_heat_kJkgK       specific heat capacity at constant pressure
 *
 *   Equation: c_p = -R tau^2 gamma_tautau(pi, tau), pi = p/16.53 MPa, tau = 1386 K/T
 *   Source: IAPWS R7-97(2012), clause 5.1, equation (7), Tables 2 and 3 (coefficients as in python3-iapws 1.5.2, which
 *           reproduces the release's Table 5)
 *   Caution: Pure water: dissolved salts, gas and solids change it; sea water is 2 to 3 % denser.
 */
CUTWATER_API cutwater_status cutwater_water_specific_heat(double temperature_degC, double pressure_bara,
                                             double *specific_heat_kJkgK, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_water_specific_heat_rows(size_t rows, cutwater_column temperature_degC,
                                                  cutwater_column pressure_bara,
                                                  cutwater_result_column specific_heat_kJkgK,
                                                  cutwater_rows_report *report);

/*
 * Cubic expansion coefficient of liquid water at constant pressure.
 *
 *   temperature_degC             temperature of the water; from 0 to 350 degC
 *   pressure_bara                absolute pressure of the water; not below its vapour pressure; above 0 up to 1000 bara
 *   -> expansion_perK            growth of the volume a kelvin; negative below about 4 degC
 *
 *   Equation: alpha_v = (1 - tau gamma_pitau/gamma_pi)/T, pi = p/16.53 MPa, tau = 1386 K/T
 *   Source: IAPWS R7-97(2012), clause 5.1, equation (7), derived by differentiation: alpha_v = (1/v)(dv/dT) at constant
 *           p
 *   Caution: Pure water: dissolved salts, gas and solids change it; sea water is 2 to 3 % denser.
 */
CUTWATER_API cutwater_status cutwater_water_thermal_expansion(double temperature_degC, double pressure_bara,
                                                 double *expansion_perK, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_water_thermal_expansion_rows(size_t rows, cutwater_column temperature_degC,
                                                      cutwater_column pressure_bara,
                                                      cutwater_result_column expansion_perK,
                                                      cutwater_rows_report *report);

/*
 * Isentropic bulk modulus of liquid water, as pressure waves meet it.
 *
 *   temperature_degC             temperature of the water; from 0 to 350 degC
 *   pressure_bara                absolute pressure of the water; not below its vapour pressure; above 0 up to 1000 bara
 *   -> bulk_modulus_GPa          isentropic bulk modulus, rho w^2
 *
 *   Equation: K_s = rho w^2, w^2 = R T gamma_pi^2/((gamma_pi - tau gamma_pitau)^2/(tau^2 gamma_tautau) - gamma_pipi)
 *   Source: IAPWS R7-97(2012), clause 5.1, equation (7), Tables 2 and 3, speed of sound w (coefficients as in
 *           python3-iapws 1.5.2, which reproduces the release's Table 5)
 *   Caution: Pure water: dissolved salts, gas and solids change it; sea water is 2 to 3 % denser.
 *   Caution: IAPWS-IF97 lies up to 0.4 % from the scientific equation IAPWS-95 here.
 *   Caution: A trace of undissolved gas, even 0.1 % by volume, lowers the bulk modulus of water at low pressure many
 *            times.
 */
CUTWATER_API cutwater_status cutwater_water_bulk_modulus(double temperature_degC, double pressure_bara, double *bulk_modulus_GPa,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_water_bulk_modulus_rows(size_t rows, cutwater_column temperature_degC,
                                                 cutwater_column pressure_bara,
                                                 cutwater_result_column bulk_modulus_GPa,
                                                 cutwater_rows_report *report);

/*
 * Vapour pressure of a liquid from its Antoine constants.
 *
 *   constant_a                   constant A, for the logarithm to base 10; from -20 to 30
 *   constant_b                   constant B; above 0 up to 20000
 *   constant_c                   constant C; from -300 to 600
 *   temperature_degC             temperature of the liquid; above -273.15 up to 1000 degC
 *   lowest_temperature_degC      lowest temperature that the constants hold for; above -273.15 up to 1000 degC
 *   highest_temperature_degC     highest temperature that the constants hold for; above -273.15 up to 1000 degC
 *   constants_for                pressure and temperature unit of the table that the constants come from; the
 *                                temperatures given here do not follow it: one of "bar_K" "bar_degC" "mmHg_degC"
 *                                "mmHg_K" "kPa_degC" "kPa_K"
 *   -> vapour_pressure_bara      vapour pressure at the temperature
 *
 *   Equation: log10(p_v) = A - B/(T + C), p_v and T in the units of the constants
 *   Must hold of highest_temperature: the constants' highest temperature must lie above their lowest
 *   Must hold of temperature: the constants hold only from lowest_temperature to highest_temperature
 *   Must hold of constant_c: T + C must stay above 0 over the constants' whole range: the constants are for another unit
 *                            of temperature
 *   Source: C. Antoine, Comptes Rendus 107 (1888) 681; form as in Poling, Prausnitz, O'Connell, The Properties of Gases
 *           and Liquids, 5th ed. 2001, chapter 7 (from memory of both)
 *   Caution: Tables of Antoine constants differ in the unit of pressure, of temperature and in the logarithm: check the
 *            constants against the liquid's known boiling point.
 *   Caution: Antoine's equation is for a pure liquid; the light parts of a mixture raise its vapour pressure.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_vapour_pressure_antoine(double constant_a, double constant_b, double constant_c,
                                                 double temperature_degC, double lowest_temperature_degC,
                                                 double highest_temperature_degC, const char *constants_for,
                                                 double *vapour_pressure_bara, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_vapour_pressure_antoine_rows(size_t rows, cutwater_column constant_a,
                                                      cutwater_column constant_b, cutwater_column constant_c,
                                                      cutwater_column temperature_degC,
                                                      cutwater_column lowest_temperature_degC,
                                                      cutwater_column highest_temperature_degC,
                                                      const char *constants_for,
                                                      cutwater_result_column vapour_pressure_bara,
                                                      cutwater_rows_report *report);

/*
 * Vapour pressure of a liquid between two known points.
 *
 *   first_temperature_degC       temperature of the first point; above -273.15 up to 1000 degC
 *   first_pressure_bara          vapour pressure at the first point; above 0 up to 1000 bara
 *   second_temperature_degC      temperature of the second point; above -273.15 up to 1000 degC
 *   second_pressure_bara         vapour pressure at the second point; above 0 up to 1000 bara
 *   temperature_degC             temperature of the liquid; above -273.15 up to 1000 degC
 *   -> vapour_pressure_bara      vapour pressure at the temperature
 *
 *   Equation: ln p_v = ln p_1 + (ln p_2 - ln p_1) (1/T - 1/T_1)/(1/T_2 - 1/T_1), T in kelvin
 *   Must hold of second_temperature: the two points must lie at least 5 K apart
 *   Must hold of second_pressure: the warmer point must have the higher vapour pressure
 *   Must hold of temperature: it may lie outside the two points by no more than half the distance between them, and by
 *                             no more than 25 K
 *   Source: Clausius-Clapeyron equation, integrated with a constant heat of vaporisation; Poling, Prausnitz, O'Connell,
 *           The Properties of Gases and Liquids, 5th ed. 2001, chapter 7 (from memory of it); limits of span: common
 *           practice
 *   Caution: Between the points the line reads a little low, for water 0.7 % half-way from 60 to 100 degC; beyond them
 *            it is less certain.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_vapour_pressure_two_point(double first_temperature_degC, double first_pressure_bara,
                                                   double second_temperature_degC, double second_pressure_bara,
                                                   double temperature_degC, double *vapour_pressure_bara,
                                                   cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_vapour_pressure_two_point_rows(size_t rows, cutwater_column first_temperature_degC,
                                                        cutwater_column first_pressure_bara,
                                                        cutwater_column second_temperature_degC,
                                                        cutwater_column second_pressure_bara,
                                                        cutwater_column temperature_degC,
                                                        cutwater_result_column vapour_pressure_bara,
                                                        cutwater_rows_report *report);

/*
 * Kinematic viscosity of a petroleum liquid at a temperature, from two known points.
 *
 *   first_temperature_degC       temperature of the first point; from -70 to 370 degC
 *   first_viscosity_mm2s         kinematic viscosity at the first point; from 0.21 to 20000000 mm2/s
 *   second_temperature_degC      temperature of the second point; from -70 to 370 degC
 *   second_viscosity_mm2s        kinematic viscosity at the second point; from 0.21 to 20000000 mm2/s
 *   temperature_degC             temperature of the liquid; from -70 to 370 degC
 *   -> kinematic_viscosity_mm2s  kinematic viscosity at the temperature
 *
 *   Equation: log10 log10 Z = A - B log10 T, Z = nu + 0.7 + C - D + E - F + G - H, nu in mm2/s, T in kelvin
 *   Must hold of second_temperature: the two points must lie at least 5 K apart
 *   Must hold of second_viscosity: the warmer point must have the lower viscosity
 *   Source: ASTM D341-09 (reapproved 2015), general relation with the terms C to H for low viscosities (from memory of
 *           it; constants found alike in several public programs); at least 5 K between the points: common practice
 *   Caution: For petroleum liquids between cloud point and initial boiling point that flow as Newton's liquids do; not
 *            for water solutions, silicones, or oils thickened with polymers.
 *   Caution: Between the two points it is good to a few per cent; outside them it is less certain the further it goes.
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 */
CUTWATER_API cutwater_status cutwater_viscosity_at_temperature(double first_temperature_degC, double first_viscosity_mm2s,
                                                  double second_temperature_degC, double second_viscosity_mm2s,
                                                  double temperature_degC, double *kinematic_viscosity_mm2s,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscosity_at_temperature_rows(size_t rows, cutwater_column first_temperature_degC,
                                                       cutwater_column first_viscosity_mm2s,
                                                       cutwater_column second_temperature_degC,
                                                       cutwater_column second_viscosity_mm2s,
                                                       cutwater_column temperature_degC,
                                                       cutwater_result_column kinematic_viscosity_mm2s,
                                                       cutwater_rows_report *report);

/*
 * Kinematic viscosity from Saybolt Universal viscosity at the same temperature.
 *
 *   saybolt_SUS                  Saybolt Universal viscosity at the temperature; from 32 to 460000 SUS
 *   temperature_degC             temperature at which both viscosities hold, 0 to 350 degF; from -17.78 to 176.67 degC
 *   -> kinematic_viscosity_mm2s  kinematic viscosity at the temperature
 *
 *   Equation: solves U = (1 + 0.000061 (t - 100)) (4.6324 nu + (1 + 0.03264 nu) 1e5/(3930.2 + 262.7 nu + 23.97 nu^2 +
 *             1.646 nu^3)) for nu; t in degF, nu in mm2/s
 *   Source: ASTM D2161-93 (1999), equations for Saybolt Universal viscosity (from memory of them, excerpts of clauses 1
 *           and 5 read; constants found alike in several public programs)
 *   Caution: Saybolt Universal seconds; Saybolt Furol seconds are another scale, about a tenth in number.
 */
CUTWATER_API cutwater_status cutwater_viscosity_from_saybolt(double saybolt_SUS, double temperature_degC,
                                                double *kinematic_viscosity_mm2s, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscosity_from_saybolt_rows(size_t rows, cutwater_column saybolt_SUS,
                                                     cutwater_column temperature_degC,
                                                     cutwater_result_column kinematic_viscosity_mm2s,
                                                     cutwater_rows_report *report);

/*
 * Saybolt Universal viscosity from kinematic viscosity at the same temperature.
 *
 *   kinematic_viscosity_mm2s     kinematic viscosity at the temperature; from 1.81 to 100000 mm2/s
 *   temperature_degC             temperature at which both viscosities hold, 0 to 350 degF; from -17.78 to 176.67 degC
 *   -> saybolt_SUS               Saybolt Universal viscosity at the temperature
 *
 *   Equation: U = (1 + 0.000061 (t - 100)) (4.6324 nu + (1 + 0.03264 nu) 1e5/(3930.2 + 262.7 nu + 23.97 nu^2 + 1.646
 *             nu^3)), t in degF, nu in mm2/s
 *   Source: ASTM D2161-93 (1999), equations for Saybolt Universal viscosity (from memory of them, excerpts of clauses 1
 *           and 5 read; constants found alike in several public programs)
 *   Caution: Saybolt Universal seconds; Saybolt Furol seconds are another scale, about a tenth in number.
 */
CUTWATER_API cutwater_status cutwater_saybolt_from_viscosity(double kinematic_viscosity_mm2s, double temperature_degC,
                                                double *saybolt_SUS, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_saybolt_from_viscosity_rows(size_t rows, cutwater_column kinematic_viscosity_mm2s,
                                                     cutwater_column temperature_degC,
                                                     cutwater_result_column saybolt_SUS, cutwater_rows_report *report);

/*
 * Density of a liquid at another temperature, from its cubic expansion coefficient.
 *
 *   density_kgm3                 density at the first temperature; from 50 to 25000 kg/m3
 *   first_temperature_degC       temperature at which the density is known; above -273.15 up to 1000 degC
 *   expansion_perK               mean cubic expansion coefficient between the temperatures; from -0.01 to 0.01 1/K
 *   second_temperature_degC      temperature at which the density is wanted; above -273.15 up to 1000 degC
 *   -> new_density_kgm3          density at the second temperature
 *
 *   Equation: rho_2 = rho_1/(1 + beta (T_2 - T_1))
 *   Must hold of second_temperature: over so many kelvin this expansion coefficient cannot hold: 1 + beta (T_2 - T_1)
 *                                    must stay above 0.2
 *   Source: definition of the mean cubic expansion coefficient, V_2 = V_1 (1 + beta (T_2 - T_1)); common practice
 *   Caution: One expansion coefficient holds over some tens of kelvin. For water use water_density: near 4 degC water's
 *            coefficient changes sign.
 */
CUTWATER_API cutwater_status cutwater_density_at_temperature(double density_kgm3, double first_temperature_degC,
                                                double expansion_perK, double second_temperature_degC,
                                                double *new_density_kgm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_density_at_temperature_rows(size_t rows, cutwater_column density_kgm3,
                                                     cutwater_column first_temperature_degC,
                                                     cutwater_column expansion_perK,
                                                     cutwater_column second_temperature_degC,
                                                     cutwater_result_column new_density_kgm3,
                                                     cutwater_rows_report *report);

/*
 * Relative density (specific gravity) of a liquid.
 *
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   reference_density_kgm3       density that the relative density refers to; from 50 to 25000 kg/m3; usually 1000
 *   -> relative_density          density over reference density
 *
 *   Equation: d = rho/rho_0
 *   Source: ISO 80000-4:2019, 4-4, relative density (from memory of it); reference of 1000 kg/m3: common practice
 *   Caution: State the reference: 1000 kg/m3 is the rounded figure of pump practice; water has 999.97 kg/m3 at 4 degC,
 *            999.10 at 15 degC, 999.02 at 60 degF and 998.21 at 20 degC.
 */
CUTWATER_API cutwater_status cutwater_relative_density(double density_kgm3, double reference_density_kgm3,
                                          double *relative_density, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_relative_density_rows(size_t rows, cutwater_column density_kgm3,
                                               cutwater_column reference_density_kgm3,
                                               cutwater_result_column relative_density, cutwater_rows_report *report);

/*
 * Density of a liquid from its relative density (specific gravity).
 *
 *   relative_density             relative density of the liquid; above 0 up to 25
 *   reference_density_kgm3       density that the relative density refers to; from 50 to 25000 kg/m3; usually 1000
 *   -> density_kgm3              density of the liquid
 *
 *   Equation: rho = d rho_0
 *   Source: ISO 80000-4:2019, 4-4, relative density (from memory of it); reference of 1000 kg/m3: common practice
 *   Caution: State the reference: 1000 kg/m3 is the rounded figure of pump practice; water has 999.97 kg/m3 at 4 degC,
 *            999.10 at 15 degC, 999.02 at 60 degF and 998.21 at 20 degC.
 */
CUTWATER_API cutwater_status cutwater_density_from_relative(double relative_density, double reference_density_kgm3,
                                               double *density_kgm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_density_from_relative_rows(size_t rows, cutwater_column relative_density,
                                                    cutwater_column reference_density_kgm3,
                                                    cutwater_result_column density_kgm3, cutwater_rows_report *report);

/*
 * Density of a petroleum liquid at 60 degF from its API gravity.
 *
 *   api_gravity                  degrees API; from -40 to 150
 *   -> density_kgm3              density at 60 degF
 *
 *   Equation: rho = 999.016 kg/m3 x 141.5/(G + 131.5)
 *   Source: API Manual of Petroleum Measurement Standards, chapter 11: definition of API gravity (from memory of it);
 *           water at 60 degF 999.016 kg/m3
 *   Caution: Holds at 60 degF (15.56 degC): bring the density to the pumping temperature afterwards, see
 *            density_at_temperature.
 */
CUTWATER_API cutwater_status cutwater_density_from_api_gravity(double api_gravity, double *density_kgm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_density_from_api_gravity_rows(size_t rows, cutwater_column api_gravity,
                                                       cutwater_result_column density_kgm3,
                                                       cutwater_rows_report *report);

/*
 * API gravity of a petroleum liquid from its density at 60 degF.
 *
 *   density_kgm3                 density at 60 degF; from 502.2 to 1544.8 kg/m3
 *   -> api_gravity               degrees API
 *
 *   Equation: G = 141.5 x 999.016 kg/m3/rho - 131.5
 *   Source: API Manual of Petroleum Measurement Standards, chapter 11: definition of API gravity (from memory of it);
 *           water at 60 degF 999.016 kg/m3
 *   Caution: Holds at 60 degF (15.56 degC): bring the density to the pumping temperature afterwards, see
 *            density_at_temperature.
 */
CUTWATER_API cutwater_status cutwater_api_gravity_from_density(double density_kgm3, double *api_gravity, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_api_gravity_from_density_rows(size_t rows, cutwater_column density_kgm3,
                                                       cutwater_result_column api_gravity,
                                                       cutwater_rows_report *report);

/*
 * Kinematic viscosity from dynamic viscosity.
 *
 *   dynamic_viscosity_mPas       dynamic viscosity; above 0 up to 1000000000 mPa s
 *   density_kgm3                 density at the same temperature; from 50 to 25000 kg/m3
 *   -> kinematic_viscosity_mm2s  kinematic viscosity
 *
 *   Equation: nu = mu/rho
 *   Source: ISO 80000-4:2019, 4-25, kinematic viscosity (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_kinematic_from_dynamic(double dynamic_viscosity_mPas, double density_kgm3,
                                                double *kinematic_viscosity_mm2s, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_kinematic_from_dynamic_rows(size_t rows, cutwater_column dynamic_viscosity_mPas,
                                                     cutwater_column density_kgm3,
                                                     cutwater_result_column kinematic_viscosity_mm2s,
                                                     cutwater_rows_report *report);

/*
 * Dynamic viscosity from kinematic viscosity.
 *
 *   kinematic_viscosity_mm2s     kinematic viscosity; above 0 up to 1000000000 mm2/s
 *   density_kgm3                 density at the same temperature; from 50 to 25000 kg/m3
 *   -> dynamic_viscosity_mPas    dynamic viscosity
 *
 *   Equation: mu = nu rho
 *   Source: ISO 80000-4:2019, 4-25, kinematic viscosity (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_dynamic_from_kinematic(double kinematic_viscosity_mm2s, double density_kgm3,
                                                double *dynamic_viscosity_mPas, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_dynamic_from_kinematic_rows(size_t rows, cutwater_column kinematic_viscosity_mm2s,
                                                     cutwater_column density_kgm3,
                                                     cutwater_result_column dynamic_viscosity_mPas,
                                                     cutwater_rows_report *report);

/*
 * Density of a slurry from its solids' share by mass.
 *
 *   liquid_density_kgm3          density of the carrying liquid; from 50 to 25000 kg/m3
 *   solids_density_kgm3          density of the solids, without pores between them; from 50 to 25000 kg/m3
 *   mass_fraction                solids' share of the mixture by mass; from 0 to 1
 *   -> slurry_density_kgm3       density of the mixture
 *
 *   Equation: 1/rho_m = C_w/rho_s + (1 - C_w)/rho_l
 *   Source: mass balance; Hydraulic Institute, Engineering Data Book, 2nd ed. 1990, II-B, equation 2.B.1 (public text
 *           read)
 *   Caution: Say whether a solids concentration is by mass (weight) or by volume: 30 % of sand by mass is 14 % by
 *            volume.
 *   Caution: Solids of one size lie packed at about 60 % by volume, coarse and mixed ones somewhat above: near that it
 *            is no slurry to pump.
 */
CUTWATER_API cutwater_status cutwater_slurry_density(double liquid_density_kgm3, double solids_density_kgm3, double mass_fraction,
                                        double *slurry_density_kgm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_slurry_density_rows(size_t rows, cutwater_column liquid_density_kgm3,
                                             cutwater_column solids_density_kgm3, cutwater_column mass_fraction,
                                             cutwater_result_column slurry_density_kgm3, cutwater_rows_report *report);

/*
 * Solids' share of a slurry by volume, from their share by mass.
 *
 *   liquid_density_kgm3          density of the carrying liquid; from 50 to 25000 kg/m3
 *   solids_density_kgm3          density of the solids, without pores between them; from 50 to 25000 kg/m3
 *   mass_fraction                solids' share of the mixture by mass; from 0 to 1
 *   -> volume_fraction           solids' share of the mixture by volume
 *
 *   Equation: C_v = (C_w/rho_s)/(C_w/rho_s + (1 - C_w)/rho_l)
 *   Source: mass balance; Hydraulic Institute, Engineering Data Book, 2nd ed. 1990, II-B, equation 2.B.1 (public text
 *           read)
 *   Caution: Say whether a solids concentration is by mass (weight) or by volume: 30 % of sand by mass is 14 % by
 *            volume.
 *   Caution: Solids of one size lie packed at about 60 % by volume, coarse and mixed ones somewhat above: near that it
 *            is no slurry to pump.
 */
CUTWATER_API cutwater_status cutwater_slurry_volume_fraction(double liquid_density_kgm3, double solids_density_kgm3,
                                                double mass_fraction, double *volume_fraction,
                                                cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_slurry_volume_fraction_rows(size_t rows, cutwater_column liquid_density_kgm3,
                                                     cutwater_column solids_density_kgm3,
                                                     cutwater_column mass_fraction,
                                                     cutwater_result_column volume_fraction,
                                                     cutwater_rows_report *report);

/*
 * Solids' share of a slurry by mass, from their share by volume.
 *
 *   liquid_density_kgm3          density of the carrying liquid; from 50 to 25000 kg/m3
 *   solids_density_kgm3          density of the solids, without pores between them; from 50 to 25000 kg/m3
 *   volume_fraction              solids' share of the mixture by volume; from 0 to 1
 *   -> mass_fraction             solids' share of the mixture by mass
 *
 *   Equation: C_w = C_v rho_s/(C_v rho_s + (1 - C_v) rho_l)
 *   Source: mass balance; Hydraulic Institute, Engineering Data Book, 2nd ed. 1990, II-B, equation 2.B.1 (public text
 *           read)
 *   Caution: Say whether a solids concentration is by mass (weight) or by volume: 30 % of sand by mass is 14 % by
 *            volume.
 *   Caution: Solids of one size lie packed at about 60 % by volume, coarse and mixed ones somewhat above: near that it
 *            is no slurry to pump.
 */
CUTWATER_API cutwater_status cutwater_slurry_mass_fraction(double liquid_density_kgm3, double solids_density_kgm3,
                                              double volume_fraction, double *mass_fraction,
                                              cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_slurry_mass_fraction_rows(size_t rows, cutwater_column liquid_density_kgm3,
                                                   cutwater_column solids_density_kgm3,
                                                   cutwater_column volume_fraction,
                                                   cutwater_result_column mass_fraction, cutwater_rows_report *report);

/*
 * Pressure of the standard atmosphere at an altitude.
 *
 *   altitude_m                   height above mean sea level; from -5000 to 11020 m
 *   -> ambient_pressure_bara     pressure of the standard atmosphere
 *
 *   Equation: p = p_0 (1 + beta H/T_0)^(-g/(beta R)), H = r h/(r + h); p_0 = 101325 Pa, T_0 = 288.15 K, beta = -0.0065
 *             K/m, R = 287.05287 J/(kg K), r = 6356766 m
 *   Source: ISO 2533:1975, clause 2 (from memory of it); below -2000 m: ISO 2533:1975/Add 2:1997 (excerpt of its scope
 *           read)
 *   Caution: Weather moves the barometer by about 3 % either way: for suction, take 20 to 30 mbar off, or the site's
 *            lowest reading.
 */
CUTWATER_API cutwater_status cutwater_barometric_pressure(double altitude_m, double *ambient_pressure_bara,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_barometric_pressure_rows(size_t rows, cutwater_column altitude_m,
                                                  cutwater_result_column ambient_pressure_bara,
                                                  cutwater_rows_report *report);

/*
 * Absolute pressure from a gauge reading.
 *
 *   gauge_pressure_barg          gauge reading; negative for a vacuum; from -2 to 10000 barg
 *   ambient_pressure_bara        barometric pressure at the gauge; above 0 up to 2 bara
 *   -> absolute_pressure_bara    absolute pressure
 *
 *   Equation: p = p_M + p_amb
 *   Must hold of gauge_pressure: that is below an absolute vacuum at this ambient pressure
 *   Source: definition; ISO 17769-1:2012, gauge pressure (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_absolute_from_gauge(double gauge_pressure_barg, double ambient_pressure_bara,
                                             double *absolute_pressure_bara, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_absolute_from_gauge_rows(size_t rows, cutwater_column gauge_pressure_barg,
                                                  cutwater_column ambient_pressure_bara,
                                                  cutwater_result_column absolute_pressure_bara,
                                                  cutwater_rows_report *report);

/*
 * What a gauge shows at an absolute pressure.
 *
 *   absolute_pressure_bara       absolute pressure; from 0 to 10000 bara
 *   ambient_pressure_bara        barometric pressure at the gauge; above 0 up to 2 bara
 *   -> gauge_pressure_barg       gauge pressure; negative for a vacuum
 *
 *   Equation: p_M = p - p_amb
 *   Source: definition; ISO 17769-1:2012, gauge pressure (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_gauge_from_absolute(double absolute_pressure_bara, double ambient_pressure_bara,
                                             double *gauge_pressure_barg, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_gauge_from_absolute_rows(size_t rows, cutwater_column absolute_pressure_bara,
                                                  cutwater_column ambient_pressure_bara,
                                                  cutwater_result_column gauge_pressure_barg,
                                                  cutwater_rows_report *report);

/*
 * Head of liquid that a pressure difference stands for.
 *
 *   pressure_difference_bar      pressure difference; from -10000 to 10000 bar
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   -> head_m                    head of that liquid
 *
 *   Equation: H = dp/(rho g), g = 9.80665 m/s2
 *   Source: hydrostatics; ISO 17769-1:2012, pressure head (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_head_from_pressure(double pressure_difference_bar, double density_kgm3, double *head_m,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_head_from_pressure_rows(size_t rows, cutwater_column pressure_difference_bar,
                                                 cutwater_column density_kgm3, cutwater_result_column head_m,
                                                 cutwater_rows_report *report);

/*
 * Pressure difference of a head of liquid.
 *
 *   head_m                       head of that liquid; from -100000 to 100000 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   -> pressure_difference_bar   pressure difference
 *
 *   Equation: dp = rho g H, g = 9.80665 m/s2
 *   Source: hydrostatics; ISO 17769-1:2012, pressure head (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_pressure_from_head(double head_m, double density_kgm3, double *pressure_difference_bar,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pressure_from_head_rows(size_t rows, cutwater_column head_m, cutwater_column density_kgm3,
                                                 cutwater_result_column pressure_difference_bar,
                                                 cutwater_rows_report *report);

/* ---- System and suction ---- */

/*
 * Mean velocity in a full round pipe.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   bore_mm                      inside diameter, not the nominal size; from 1 to 10000 mm
 *   -> velocity_ms               mean velocity
 *
 *   Equation: v = Q/(pi/4 d^2)
 *   Source: continuity; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_pipe_velocity(double flow_m3h, double bore_mm, double *velocity_ms,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pipe_velocity_rows(size_t rows, cutwater_column flow_m3h, cutwater_column bore_mm,
                                            cutwater_result_column velocity_ms, cutwater_rows_report *report);

/*
 * Bore at which a flow has a given mean velocity.
 *
 *   flow_m3h                     volume flow; above 0 m3/h
 *   velocity_ms                  mean velocity wished for; above 0 m/s
 *   -> bore_mm                   inside diameter; take the next larger pipe
 *
 *   Equation: d = sqrt(Q/(pi/4 v))
 *   Source: continuity; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_bore_for_velocity(double flow_m3h, double velocity_ms, double *bore_mm,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bore_for_velocity_rows(size_t rows, cutwater_column flow_m3h, cutwater_column velocity_ms,
                                                cutwater_result_column bore_mm, cutwater_rows_report *report);

/*
 * Head of the liquid's kinetic energy at its mean velocity in a pipe.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   bore_mm                      inside diameter, not the nominal size; from 1 to 10000 mm
 *   -> velocity_head_m           velocity head
 *
 *   Equation: h_v = v^2/(2 g), v = Q/(pi/4 d^2)
 *   Source: ISO 17769-1:2012, velocity head (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition
 *           (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_velocity_head(double flow_m3h, double bore_mm, double *velocity_head_m,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_velocity_head_rows(size_t rows, cutwater_column flow_m3h, cutwater_column bore_mm,
                                            cutwater_result_column velocity_head_m, cutwater_rows_report *report);

/*
 * Reynolds number of the flow in a full round pipe.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   bore_mm                      inside diameter, not the nominal size; from 1 to 10000 mm
 *   kinematic_viscosity_mm2s     kinematic viscosity at the temperature in the pipe; from 0.01 to 1000000 mm2/s
 *   -> reynolds_number           Reynolds number on the bore
 *
 *   Equation: Re = v d/nu, v = Q/(pi/4 d^2)
 *   Source: O. Reynolds (1883); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_reynolds_number(double flow_m3h, double bore_mm, double kinematic_viscosity_mm2s,
                                         double *reynolds_number, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_reynolds_number_rows(size_t rows, cutwater_column flow_m3h, cutwater_column bore_mm,
                                              cutwater_column kinematic_viscosity_mm2s,
                                              cutwater_result_column reynolds_number, cutwater_rows_report *report);

/*
 * Friction factor of a round pipe as Darcy defines it (four times Fanning's).
 *
 *   reynolds_number              Reynolds number on the bore; above 0 up to 1000000000
 *   roughness_mm                 roughness of the wall: new commercial steel 0.046, drawn tube and plastic 0.0015,
 *                                galvanised 0.15, cast iron 0.26; at least 0 mm
 *   bore_mm                      inside diameter, not the nominal size; from 1 to 10000 mm
 *   -> friction_factor           Darcy friction factor
 *
 *   Equation: Re <= 2000: f = 64/Re; above: 1/sqrt(f) = -2 log10(eps/(3.7 d) + 2.51/(Re sqrt(f)))
 *   Must hold of roughness: the roughness must be at most 0.05 of the bore, the end of the method's range
 *   Source: C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133 (from memory of it); Hydraulic Institute, Engineering Data
 *           Book, 2nd edition, Eq. 3.A.2 and 3.A.5, table of roughness and critical zone (excerpt read)
 *   Caution: Between Re 2000 and 4000 the flow may be laminar, turbulent or change between them: the factor returned
 *            there is the turbulent one, which is the higher. Just above Re 2000 it jumps.
 *   Caution: Friction factors of commercial pipe scatter by 10 to 15 %, and roughness grows with age: add a margin for
 *            an old or fouled line.
 */
CUTWATER_API cutwater_status cutwater_friction_factor(double reynolds_number, double roughness_mm, double bore_mm,
                                         double *friction_factor, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_friction_factor_rows(size_t rows, cutwater_column reynolds_number,
                                              cutwater_column roughness_mm, cutwater_column bore_mm,
                                              cutwater_result_column friction_factor, cutwater_rows_report *report);

/*
 * Head lost by friction in a straight round pipe.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   bore_mm                      inside diameter, not the nominal size; from 1 to 10000 mm
 *   length_m                     length of straight pipe; at least 0 m
 *   roughness_mm                 roughness of the wall: new commercial steel 0.046, drawn tube and plastic 0.0015,
 *                                galvanised 0.15, cast iron 0.26; at least 0 mm
 *   kinematic_viscosity_mm2s     kinematic viscosity at the temperature in the pipe; from 0.01 to 1000000 mm2/s
 *   -> friction_head_m           head lost, of the liquid that flows
 *
 *   Equation: h_f = f (L/d) v^2/(2 g); Re <= 2000: f = 64/Re; above: f by Colebrook-White
 *   Must hold of roughness: the roughness must be at most 0.05 of the bore, the end of the method's range
 *   Must hold of flow: the Reynolds number must be at most 1e9, the end of the method's range
 *   Source: Darcy and Weisbach; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.1 to 3.A.5 (excerpt
 *           read)
 *   Caution: Between Re 2000 and 4000 the flow may be laminar, turbulent or change between them: the factor returned
 *            there is the turbulent one, which is the higher. Just above Re 2000 it jumps.
 *   Caution: Friction factors of commercial pipe scatter by 10 to 15 %, and roughness grows with age: add a margin for
 *            an old or fouled line.
 */
CUTWATER_API cutwater_status cutwater_pipe_friction_head(double flow_m3h, double bore_mm, double length_m, double roughness_mm,
                                            double kinematic_viscosity_mm2s, double *friction_head_m,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pipe_friction_head_rows(size_t rows, cutwater_column flow_m3h, cutwater_column bore_mm,
                                                 cutwater_column length_m, cutwater_column roughness_mm,
                                                 cutwater_column kinematic_viscosity_mm2s,
                                                 cutwater_result_column friction_head_m, cutwater_rows_report *report);

/*
 * Head lost in fittings, from their loss coefficient.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   bore_mm                      the bore that the loss coefficient refers to; from 1 to 10000 mm
 *   loss_coefficient             loss coefficient, or the sum of several on one bore; at least 0
 *   -> head_loss_m               head lost, of the liquid that flows
 *
 *   Equation: h = K v^2/(2 g), v = Q/(pi/4 d^2)
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, losses of fittings (excerpt read)
 *   Caution: Loss coefficients hold for turbulent flow; in viscous liquid below about Re 2000 a fitting loses far more.
 */
CUTWATER_API cutwater_status cutwater_fitting_head(double flow_m3h, double bore_mm, double loss_coefficient, double *head_loss_m,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_fitting_head_rows(size_t rows, cutwater_column flow_m3h, cutwater_column bore_mm,
                                           cutwater_column loss_coefficient, cutwater_result_column head_loss_m,
                                           cutwater_rows_report *report);

/*
 * Head and pressure lost in a valve, from its flow coefficient.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   flow_coefficient_Kv          flow coefficient of the valve at its opening; text may say 46 Cv; above 0 Kv
 *   relative_density             density of the liquid over that of water at 15 degC; from 0.05 to 25; usually 1
 *   -> head_loss_m               head lost, of the liquid that flows; the density cancels out of it
 *   -> pressure_loss_bar         pressure lost
 *
 *   Equation: dp = d (Q/Kv)^2 bar with Q in m3/h; h = dp/(d rho_0 g), rho_0 = 999.1 kg/m3
 *   Source: IEC 60534-2-1:2011, 7.1, turbulent incompressible flow, N1 = 1, no reducers (from memory of it); density of
 *           water at 15 degC: IAPWS-IF97
 *   Caution: Holds for turbulent flow that neither flashes nor chokes: the pressure loss must stay below the valve's
 *            limiting pressure drop (recovery factor F_L of the valve's maker).
 *   Caution: Reducers at the valve lower its flow coefficient.
 */
CUTWATER_API cutwater_status cutwater_valve_head_loss(double flow_m3h, double flow_coefficient_Kv, double relative_density,
                                         double *head_loss_m, double *pressure_loss_bar, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_valve_head_loss_rows(size_t rows, cutwater_column flow_m3h,
                                              cutwater_column flow_coefficient_Kv, cutwater_column relative_density,
                                              cutwater_result_column head_loss_m,
                                              cutwater_result_column pressure_loss_bar, cutwater_rows_report *report);

/*
 * Resistance of a system from its losses at one flow.
 *
 *   flow_m3h                     flow at which the losses are known; above 0 m3/h
 *   friction_head_m              all losses of pipes, fittings and equipment at that flow; at least 0 m
 *   -> resistance_h2m5           losses over the square of the flow
 *
 *   Equation: k = h_f/Q^2
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.7 and 1.A.8 (excerpt read)
 *   Caution: Losses grow with the square of the flow in turbulent flow only; in laminar flow they grow with the flow
 *            itself.
 */
CUTWATER_API cutwater_status cutwater_system_resistance(double flow_m3h, double friction_head_m, double *resistance_h2m5,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_system_resistance_rows(size_t rows, cutwater_column flow_m3h,
                                                cutwater_column friction_head_m,
                                                cutwater_result_column resistance_h2m5, cutwater_rows_report *report);

/*
 * Head that a system asks for at a flow.
 *
 *   static_head_m                head at no flow: difference of levels and of the vessels' pressures as head; negative
 *                                when it runs downhill; any
 *   resistance_h2m5              losses over the square of the flow; at least 0 h2/m5
 *   flow_m3h                     flow through the system; at least 0 m3/h
 *   -> head_m                    system head
 *
 *   Equation: H = H_s + k Q^2
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.8 (excerpt read)
 *   Caution: Losses grow with the square of the flow in turbulent flow only; in laminar flow they grow with the flow
 *            itself.
 */
CUTWATER_API cutwater_status cutwater_system_head(double static_head_m, double resistance_h2m5, double flow_m3h, double *head_m,
                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_system_head_rows(size_t rows, cutwater_column static_head_m, cutwater_column resistance_h2m5,
                                          cutwater_column flow_m3h, cutwater_result_column head_m,
                                          cutwater_rows_report *report);

/*
 * Total head of a pump from its discharge and suction gauges.
 *
 *   discharge_pressure_barg      discharge gauge reading; above -1.1 barg
 *   suction_pressure_barg        suction gauge reading; negative for a vacuum; above -1.1 barg
 *   discharge_gauge_elevation_m  centre of the discharge gauge above the datum; any
 *   suction_gauge_elevation_m    centre of the suction gauge above the same datum; any
 *   discharge_bore_mm            bore at the discharge tapping; from 1 to 10000 mm
 *   suction_bore_mm              bore at the suction tapping; from 1 to 10000 mm
 *   flow_m3h                     flow through both; at least 0 m3/h
 *   density_kgm3                 density of the liquid, the same in the gauge lines; from 50 to 25000 kg/m3
 *   -> total_head_m              pump total head between the tappings
 *
 *   Equation: H = (p_2 - p_1)/(rho g) + z_2 - z_1 + (v_2^2 - v_1^2)/(2 g)
 *   Source: ISO 9906:2012, pump total head (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition,
 *           Eq. 1.A.3 to 1.A.6 (excerpt read)
 *   Caution: Gauge lines must be full of the liquid; with an air-filled line take the tapping's elevation. Losses
 *            between tappings and flanges are to be added.
 */
CUTWATER_API cutwater_status cutwater_total_head_from_gauges(double discharge_pressure_barg, double suction_pressure_barg,
                                                double discharge_gauge_elevation_m, double suction_gauge_elevation_m,
                                                double discharge_bore_mm, double suction_bore_mm, double flow_m3h,
                                                double density_kgm3, double *total_head_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_total_head_from_gauges_rows(size_t rows, cutwater_column discharge_pressure_barg,
                                                     cutwater_column suction_pressure_barg,
                                                     cutwater_column discharge_gauge_elevation_m,
                                                     cutwater_column suction_gauge_elevation_m,
                                                     cutwater_column discharge_bore_mm,
                                                     cutwater_column suction_bore_mm, cutwater_column flow_m3h,
                                                     cutwater_column density_kgm3,
                                                     cutwater_result_column total_head_m,
                                                     cutwater_rows_report *report);

/*
 * Net positive suction head that the installation offers.
 *
 *   surface_pressure_bara        pressure on the liquid's surface in the suction vessel; above 0 bara
 *   vapour_pressure_bara         vapour pressure at the temperature of the liquid at the inlet; at least 0 bara
 *   density_kgm3                 density of the liquid at the same temperature; from 50 to 25000 kg/m3
 *   liquid_level_m               lowest surface above the pump's NPSH datum; negative for a lift; any
 *   friction_head_m              losses of the suction line at the duty, its entry included; at least 0 m
 *   -> npsh_m                    net positive suction head available at the datum
 *
 *   Equation: NPSHA = (p_s - p_v)/(rho g) + z - h_f
 *   Must hold of vapour_pressure: the vapour pressure must be at most the surface pressure: the liquid would boil at its
 *                                 surface
 *   Source: ISO 17769-1:2012, net positive suction head and its datum; ANSI/HI 9.6.1-2012 (from memory of both);
 *           Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read)
 *   Caution: NPSH datum: the centre of the circle through the outermost points of the leading edges of the first-stage
 *            impeller's vanes. Measure elevations from there, or add the shift.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: A negative result is a true answer: the liquid boils before it reaches the pump, and nothing can be pumped
 *            as drawn.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_npsh_available(double surface_pressure_bara, double vapour_pressure_bara,
                                        double density_kgm3, double liquid_level_m, double friction_head_m,
                                        double *npsh_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh_available_rows(size_t rows, cutwater_column surface_pressure_bara,
                                             cutwater_column vapour_pressure_bara, cutwater_column density_kgm3,
                                             cutwater_column liquid_level_m, cutwater_column friction_head_m,
                                             cutwater_result_column npsh_m, cutwater_rows_report *report);

/*
 * Net positive suction head at the pump, from a suction gauge reading.
 *
 *   suction_pressure_barg        suction gauge reading; negative for a vacuum; above -1.1 barg
 *   ambient_pressure_bara        barometric pressure at the gauge; above 0 bara
 *   gauge_elevation_m            centre of the gauge above the pump's NPSH datum; any
 *   bore_mm                      inside diameter of the pipe at the gauge; from 1 to 10000 mm
 *   flow_m3h                     flow through that pipe; at least 0 m3/h
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   vapour_pressure_bara         vapour pressure at the temperature of the liquid at the inlet; at least 0 bara
 *   -> npsh_m                    net positive suction head available at the datum
 *
 *   Equation: NPSHA = (p_1 + p_amb - p_v)/(rho g) + z_1 + v^2/(2 g)
 *   Must hold of suction_pressure: the gauge pressure and the ambient pressure must add up to an absolute pressure above
 *                                  0 bara
 *   Must hold of vapour_pressure: the vapour pressure must be at most the absolute pressure at the gauge: the liquid
 *                                 would boil there and the reading mean nothing
 *   Source: ISO 9906:2012, NPSH at the reference plane (from memory of it); Hydraulic Institute, Engineering Data Book,
 *           2nd edition, Eq. 1.D.6 (excerpt read)
 *   Caution: NPSH datum: the centre of the circle through the outermost points of the leading edges of the first-stage
 *            impeller's vanes. Measure elevations from there, or add the shift.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: A negative result is a true answer: the liquid boils before it reaches the pump, and nothing can be pumped
 *            as drawn.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_npsh_available_from_gauge(double suction_pressure_barg, double ambient_pressure_bara,
                                                   double gauge_elevation_m, double bore_mm, double flow_m3h,
                                                   double density_kgm3, double vapour_pressure_bara, double *npsh_m,
                                                   cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh_available_from_gauge_rows(size_t rows, cutwater_column suction_pressure_barg,
                                                        cutwater_column ambient_pressure_bara,
                                                        cutwater_column gauge_elevation_m, cutwater_column bore_mm,
                                                        cutwater_column flow_m3h, cutwater_column density_kgm3,
                                                        cutwater_column vapour_pressure_bara,
                                                        cutwater_result_column npsh_m, cutwater_rows_report *report);

/*
 * NPSH margin as a difference.
 *
 *   npsh_available_m             net positive suction head available; any
 *   npsh3_m                      the pump's NPSH at 3 % head drop, at the same flow; above 0 m
 *   -> margin_m                  what is left above NPSH3; negative: too little
 *
 *   Equation: m = NPSHA - NPSH3
 *   Source: ANSI/HI 9.6.1-2012, NPSH margin (from memory of it)
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_npsh_margin(double npsh_available_m, double npsh3_m, double *margin_m,
                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh_margin_rows(size_t rows, cutwater_column npsh_available_m, cutwater_column npsh3_m,
                                          cutwater_result_column margin_m, cutwater_rows_report *report);

/*
 * NPSH margin as a ratio.
 *
 *   npsh_available_m             net positive suction head available; any
 *   npsh3_m                      the pump's NPSH at 3 % head drop, at the same flow; above 0 m
 *   -> margin_ratio              available over NPSH3; below 1: too little
 *
 *   Equation: ratio = NPSHA/NPSH3
 *   Source: ANSI/HI 9.6.1-2012, NPSH margin ratio (from memory of it)
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: The ratio to ask for grows with suction energy and by service, from about 1.1 to 2.5 and more (ANSI/HI
 *            9.6.1, from memory).
 */
CUTWATER_API cutwater_status cutwater_npsh_margin_ratio(double npsh_available_m, double npsh3_m, double *margin_ratio,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh_margin_ratio_rows(size_t rows, cutwater_column npsh_available_m,
                                                cutwater_column npsh3_m, cutwater_result_column margin_ratio,
                                                cutwater_rows_report *report);

/*
 * NPSH3 on a viscous liquid from NPSH3 on water, an estimate of the trend.
 *
 *   npsh3_m                      NPSH3 on water at the flow asked about; above 0 m
 *   best_efficiency_npsh3_m      NPSH3 on water at best efficiency; above 0 m
 *   head_ratio                   viscous over water head at best efficiency, from viscous_head_ratio; above 0.1 up to 1
 *   best_efficiency_flow_m3h     the pump's whole flow on water at best efficiency; above 0 m3/h
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   inlet                        end suction: straight into the impeller, A = 0.1; side suction: turned before it, A =
 *                                0.5: one of "end suction" "side suction"
 *   -> viscous_npsh3_m           NPSH3 on the viscous liquid, gas-free
 *
 *   Equation: NPSH3_vis = NPSH3_W (1 + A (1/C_H - 1) 274000 NPSH3_BEP/(Q_BEP^0.667 n^1.33)); m, m3/h, 1/min
 *   Source: ISO/TR 17766:2005 and ANSI/HI 9.6.7-2010, NPSH3 on viscous liquids (from memory of both; the metric constant
 *           agrees with the 225 000 of the US form within 0.3 %)
 *   Caution: Little test data lie behind this correction; dissolved or entrained gas raises the true need well above it.
 *   Caution: With a double-suction impeller it is doubtful whether the whole flow is meant; the whole flow is taken
 *            here.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_npsh3_with_viscosity(double npsh3_m, double best_efficiency_npsh3_m, double head_ratio,
                                              double best_efficiency_flow_m3h, double speed_rpm, const char *inlet,
                                              double *viscous_npsh3_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh3_with_viscosity_rows(size_t rows, cutwater_column npsh3_m,
                                                   cutwater_column best_efficiency_npsh3_m,
                                                   cutwater_column head_ratio,
                                                   cutwater_column best_efficiency_flow_m3h,
                                                   cutwater_column speed_rpm, const char *inlet,
                                                   cutwater_result_column viscous_npsh3_m,
                                                   cutwater_rows_report *report);

/*
 * Greatest height of a pump above the liquid that leaves NPSH3 and a margin.
 *
 *   surface_pressure_bara        pressure on the liquid's surface in the suction vessel; above 0 bara
 *   vapour_pressure_bara         vapour pressure at the temperature of the liquid at the inlet; at least 0 bara
 *   density_kgm3                 density of the liquid at the same temperature; from 50 to 25000 kg/m3
 *   friction_head_m              losses of the suction line at the duty, its entry included; at least 0 m
 *   npsh3_m                      the pump's NPSH at 3 % head drop, at the duty's flow; above 0 m
 *   margin_m                     NPSH to be left above NPSH3; at least 0 m
 *   -> lift_m                    NPSH datum above the lowest surface; negative: the pump must stand so far below it
 *
 *   Equation: z_max = (p_s - p_v)/(rho g) - h_f - NPSH3 - m
 *   Must hold of vapour_pressure: the vapour pressure must be at most the surface pressure: the liquid would boil at its
 *                                 surface
 *   Source: ISO 17769-1:2012, net positive suction head (from memory of it), solved for the level; Hydraulic Institute,
 *           Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read)
 *   Caution: NPSH datum: the centre of the circle through the outermost points of the leading edges of the first-stage
 *            impeller's vanes. Measure elevations from there, or add the shift.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: A pump that is not self-priming must be primed before it can lift.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_greatest_suction_lift(double surface_pressure_bara, double vapour_pressure_bara,
                                               double density_kgm3, double friction_head_m, double npsh3_m,
                                               double margin_m, double *lift_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_greatest_suction_lift_rows(size_t rows, cutwater_column surface_pressure_bara,
                                                    cutwater_column vapour_pressure_bara,
                                                    cutwater_column density_kgm3, cutwater_column friction_head_m,
                                                    cutwater_column npsh3_m, cutwater_column margin_m,
                                                    cutwater_result_column lift_m, cutwater_rows_report *report);

/*
 * Least depth of an inlet below the surface, against vortices that draw air.
 *
 *   flow_m3h                     flow into the inlet; at least 0 m3/h
 *   inlet_diameter_mm            outside diameter of the bell, or inside diameter of a plain pipe's end; from 1 to 10000
 *                                mm
 *   -> submergence_m             lowest surface above the bell's lip or above the centre of a horizontal pipe's end
 *
 *   Equation: S = D (1 + 2.3 F_D), F_D = V/sqrt(g D), V = Q/(pi/4 D^2)
 *   Source: ANSI/HI 9.8, required submergence against vortices (from memory of it, after Hecker 1987); formula read in
 *           Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.E.1 and 1.E.2 (excerpt read)
 *   Caution: Holds for even approach flow; a poor sump draws vortices at any depth. NPSH may ask for more.
 */
CUTWATER_API cutwater_status cutwater_minimum_submergence(double flow_m3h, double inlet_diameter_mm, double *submergence_m,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_minimum_submergence_rows(size_t rows, cutwater_column flow_m3h,
                                                  cutwater_column inlet_diameter_mm,
                                                  cutwater_result_column submergence_m, cutwater_rows_report *report);

/*
 * Least sump volume between the start and stop levels of one pump.
 *
 *   flow_m3h                     the pump's flow; above 0 m3/h
 *   starts_perh                  starts that the motor and its gear allow in an hour; above 0 up to 60 1/h
 *   -> volume_m3                 volume between the start and stop levels
 *
 *   Equation: V = T Q/4, T = 1/Z; the shortest cycle comes at an inflow of Q/2
 *   Source: ANSI/HI 9.8, minimum sump volume of a constant-speed pump (from memory of it); the least of T = V/q + V/(Q -
 *           q) is at q = Q/2
 *   Caution: For one pump alone. Pumps that take turns may share it; pumps that start one after another need a step
 *            each.
 */
CUTWATER_API cutwater_status cutwater_wet_well_volume(double flow_m3h, double starts_perh, double *volume_m3,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_wet_well_volume_rows(size_t rows, cutwater_column flow_m3h, cutwater_column starts_perh,
                                              cutwater_result_column volume_m3, cutwater_rows_report *report);

/*
 * Time to draw the air out of a suction line, the liquid rising after it.
 *
 *   pipe_volume_m3               air in the suction line and pump before priming; above 0 m3
 *   air_handling_rate_m3h        air drawn, measured at the line's own pressure; take the mean over the lift; above 0
 *                                m3/h
 *   lift_m                       height from the liquid's surface to the highest point to be filled; at least 0 m
 *   ambient_pressure_bara        pressure on the liquid's surface, and of the air at first; from 0.1 to 10 bara; usually
 *                                1.01325
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; usually 998.2
 *   -> time_s                    time until the line is full
 *
 *   Equation: t = (V/S)(1 + ln(p_amb/(p_amb - rho g L)))
 *   Must hold of lift: the lift must be less than the head of the ambient pressure: no vacuum raises the liquid so far
 *   Source: mass balance of ideal isothermal air at a constant volume rate, all of it above the lift (the slowest case);
 *           own model, checked against a numerical march
 *   Caution: The vacuum needed must lie within what the priming device reaches, and the pressure at the top above the
 *            liquid's vapour pressure.
 *   Caution: Makers often state the rate of free air, or one that falls with the vacuum: convert it before use. Leaks
 *            are left out.
 */
CUTWATER_API cutwater_status cutwater_priming_time(double pipe_volume_m3, double air_handling_rate_m3h, double lift_m,
                                      double ambient_pressure_bara, double density_kgm3, double *time_s,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_priming_time_rows(size_t rows, cutwater_column pipe_volume_m3,
                                           cutwater_column air_handling_rate_m3h, cutwater_column lift_m,
                                           cutwater_column ambient_pressure_bara, cutwater_column density_kgm3,
                                           cutwater_result_column time_s, cutwater_rows_report *report);

/*
 * Pressure rise when a flow is stopped faster than the pressure wave returns.
 *
 *   velocity_change_ms           velocity taken away; negative for a flow that is started; any
 *   wave_speed_ms                speed of the pressure wave, from pressure_wave_speed; from 10 to 5000 m/s
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   -> pressure_rise_bar         pressure rise; negative: a fall
 *
 *   Equation: dp = rho a dv
 *   Source: N. Joukowsky (1898); Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it)
 *   Caution: An upper bound for one change in a plain line, made faster than the pressure wave's return. Column
 *            separation, branches and check-valve slam can give more: have the line analysed where people or plant
 *            depend on it.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_pressure_surge(double velocity_change_ms, double wave_speed_ms, double density_kgm3,
                                        double *pressure_rise_bar, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pressure_surge_rows(size_t rows, cutwater_column velocity_change_ms,
                                             cutwater_column wave_speed_ms, cutwater_column density_kgm3,
                                             cutwater_result_column pressure_rise_bar, cutwater_rows_report *report);

/*
 * Speed of a pressure wave in a thin-walled pipe full of liquid.
 *
 *   bulk_modulus_GPa             bulk modulus of the liquid; water at 20 degC 2.19; above 0 up to 50 GPa
 *   pipe_modulus_GPa             elastic modulus of the pipe: steel 207, cast iron 100, PVC 2.8; above 0 up to 1000 GPa
 *   bore_mm                      inside diameter of the pipe; from 1 to 10000 mm
 *   wall_mm                      wall thickness of the pipe; above 0 mm
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; usually 998.2
 *   restraint                    axial restraint: 1 expansion joints, 1 - mu^2 anchored throughout, 1.25 - mu anchored
 *                                upstream only; from 0.5 to 1.25; usually 1
 *   -> wave_speed_ms             speed of the pressure wave
 *
 *   Equation: a = sqrt(K/rho)/sqrt(1 + c K d/(E e))
 *   Must hold of wall: the wall must be at most a quarter of the bore: the formula is for thin walls
 *   Source: D. J. Korteweg (1878); restraint after Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of
 *           it)
 *   Caution: A little free gas in the liquid lowers the wave speed greatly.
 *   Caution: The formula is for thin walls: above about a tenth of the bore the result is only near.
 */
CUTWATER_API cutwater_status cutwater_pressure_wave_speed(double bulk_modulus_GPa, double pipe_modulus_GPa, double bore_mm,
                                             double wall_mm, double density_kgm3, double restraint,
                                             double *wave_speed_ms, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pressure_wave_speed_rows(size_t rows, cutwater_column bulk_modulus_GPa,
                                                  cutwater_column pipe_modulus_GPa, cutwater_column bore_mm,
                                                  cutwater_column wall_mm, cutwater_column density_kgm3,
                                                  cutwater_column restraint, cutwater_result_column wave_speed_ms,
                                                  cutwater_rows_report *report);

/*
 * Time of the pressure wave to the end of a line and back: a faster closure counts as sudden.
 *
 *   length_m                     length of the line to the next free surface or large vessel; above 0 m
 *   wave_speed_ms                speed of the pressure wave, from pressure_wave_speed; from 10 to 5000 m/s
 *   -> period_s                  return time of the wave
 *
 *   Equation: T = 2 L/a
 *   Source: Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it)
 *   Caution: An upper bound for one change in a plain line, made faster than the pressure wave's return. Column
 *            separation, branches and check-valve slam can give more: have the line analysed where people or plant
 *            depend on it.
 */
CUTWATER_API cutwater_status cutwater_surge_period(double length_m, double wave_speed_ms, double *period_s,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_surge_period_rows(size_t rows, cutwater_column length_m, cutwater_column wave_speed_ms,
                                           cutwater_result_column period_s, cutwater_rows_report *report);

/* ---- Similarity and shape ---- */

/*
 * Flow of a point of a pump's curve at another speed.
 *
 *   flow_m3h                     flow at the known speed; at least 0 m3/h
 *   speed_rpm                    speed at which the point is known; above 0 up to 100000 1/min
 *   new_speed_rpm                speed asked about; above 0 up to 100000 1/min
 *   -> flow_at_new_speed_m3h     flow of the similar point
 *
 *   Equation: Q' = Q n'/n
 *   Must hold of new_speed: the new speed must be 0.25 to 2 times the speed: beyond that the affinity laws are not
 *                           relied upon here
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25
 *           to 2: set here
 *   Caution: The affinity laws scale a pump's curve, not a system's duty: with static head the new duty is where the
 *            scaled curve meets the system curve.
 *   Caution: ISO 9906 converts test results within 50 to 120 % of the speed (80 to 120 % for efficiency and NPSH; from
 *            memory of it): further away the efficiency shifts and the result is an estimate.
 */
CUTWATER_API cutwater_status cutwater_flow_at_speed(double flow_m3h, double speed_rpm, double new_speed_rpm,
                                       double *flow_at_new_speed_m3h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_flow_at_speed_rows(size_t rows, cutwater_column flow_m3h, cutwater_column speed_rpm,
                                            cutwater_column new_speed_rpm,
                                            cutwater_result_column flow_at_new_speed_m3h,
                                            cutwater_rows_report *report);

/*
 * Head of a point of a pump's curve at another speed.
 *
 *   head_m                       head at the known speed; at least 0 m
 *   speed_rpm                    speed at which the point is known; above 0 up to 100000 1/min
 *   new_speed_rpm                speed asked about; above 0 up to 100000 1/min
 *   -> head_at_new_speed_m       head of the similar point
 *
 *   Equation: H' = H (n'/n)^2
 *   Must hold of new_speed: the new speed must be 0.25 to 2 times the speed: beyond that the affinity laws are not
 *                           relied upon here
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25
 *           to 2: set here
 *   Caution: The affinity laws scale a pump's curve, not a system's duty: with static head the new duty is where the
 *            scaled curve meets the system curve.
 *   Caution: ISO 9906 converts test results within 50 to 120 % of the speed (80 to 120 % for efficiency and NPSH; from
 *            memory of it): further away the efficiency shifts and the result is an estimate.
 */
CUTWATER_API cutwater_status cutwater_head_at_speed(double head_m, double speed_rpm, double new_speed_rpm,
                                       double *head_at_new_speed_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_head_at_speed_rows(size_t rows, cutwater_column head_m, cutwater_column speed_rpm,
                                            cutwater_column new_speed_rpm, cutwater_result_column head_at_new_speed_m,
                                            cutwater_rows_report *report);

/*
 * Power of a point of a pump's curve at another speed, its efficiency taken as unchanged.
 *
 *   power_kW                     pump power input at the known speed; at least 0 kW
 *   speed_rpm                    speed at which the point is known; above 0 up to 100000 1/min
 *   new_speed_rpm                speed asked about; above 0 up to 100000 1/min
 *   -> power_at_new_speed_kW     power of the similar point
 *
 *   Equation: P' = P (n'/n)^3
 *   Must hold of new_speed: the new speed must be 0.25 to 2 times the speed: beyond that the affinity laws are not
 *                           relied upon here
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25
 *           to 2: set here
 *   Caution: The affinity laws scale a pump's curve, not a system's duty: with static head the new duty is where the
 *            scaled curve meets the system curve.
 *   Caution: ISO 9906 converts test results within 50 to 120 % of the speed (80 to 120 % for efficiency and NPSH; from
 *            memory of it): further away the efficiency shifts and the result is an estimate.
 *   Caution: The losses of bearings and seals do not fall with the cube of the speed: at low speed the true power is
 *            higher.
 */
CUTWATER_API cutwater_status cutwater_power_at_speed(double power_kW, double speed_rpm, double new_speed_rpm,
                                        double *power_at_new_speed_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_power_at_speed_rows(size_t rows, cutwater_column power_kW, cutwater_column speed_rpm,
                                             cutwater_column new_speed_rpm,
                                             cutwater_result_column power_at_new_speed_kW,
                                             cutwater_rows_report *report);

/*
 * NPSH3 of a point of a pump's curve at another speed.
 *
 *   npsh3_m                      NPSH3 at the known speed; at least 0 m
 *   speed_rpm                    speed at which the point is known; above 0 up to 100000 1/min
 *   new_speed_rpm                speed asked about; above 0 up to 100000 1/min
 *   exponent                     2 as a first approximation; tests lie between 1.3 and 2. A smaller one is on the safe
 *                                side when slowing down; from 1 to 2; usually 2
 *   -> npsh3_at_new_speed_m      NPSH3 of the similar point
 *
 *   Equation: NPSH3' = NPSH3 (n'/n)^x
 *   Must hold of new_speed: the new speed must be 0.25 to 2 times the speed: beyond that the affinity laws are not
 *                           relied upon here
 *   Source: ISO 9906:2012, translation of NPSH3 to the specified speed, exponent 1.3 to 2 (from memory of it); limits of
 *           the ratio: set here
 *   Caution: The affinity laws scale a pump's curve, not a system's duty: with static head the new duty is where the
 *            scaled curve meets the system curve.
 *   Caution: ISO 9906 converts test results within 50 to 120 % of the speed (80 to 120 % for efficiency and NPSH; from
 *            memory of it): further away the efficiency shifts and the result is an estimate.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_npsh3_at_speed(double npsh3_m, double speed_rpm, double new_speed_rpm, double exponent,
                                        double *npsh3_at_new_speed_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh3_at_speed_rows(size_t rows, cutwater_column npsh3_m, cutwater_column speed_rpm,
                                             cutwater_column new_speed_rpm, cutwater_column exponent,
                                             cutwater_result_column npsh3_at_new_speed_m,
                                             cutwater_rows_report *report);

/*
 * Flow of a point of a pump's curve with the impeller trimmed.
 *
 *   flow_m3h                     flow at the full diameter; at least 0 m3/h
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   trimmed_diameter_mm          diameter after the cut; from 5 to 10000 mm
 *   exponent                     1 in the set (1, 2, 3), 2 in the set (2, 2, 4); from 0.8 to 2.2; usually 1
 *   -> trimmed_flow_m3h          flow of the corresponding point
 *
 *   Equation: Q' = Q (D'/D)^x
 *   Must hold of trimmed_diameter: the trimmed diameter must be at most the full diameter: an impeller is cut, not grown
 *   Must hold of trimmed_diameter: the trimmed diameter must be at least 0.7 of the full diameter, the limit set here
 *                                  for the trim laws
 *   Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2,
 *           2, 4): common practice; limit of the ratio 0.7: set here
 *   Caution: Trim laws are approximate and depart further below about 80 % of the full diameter; have the trim confirmed
 *            by the pump maker.
 *   Caution: Two sets of exponents are in use for flow, head and power: (1, 2, 3) and (2, 2, 4), the second for radial
 *            impellers whose outlet width stays. Take all three from one set; the defaults are the first. The second
 *            predicts less flow and power after the cut.
 *   Caution: Efficiency falls a little with the trim; cut in two steps and test between them.
 */
CUTWATER_API cutwater_status cutwater_flow_at_trim(double flow_m3h, double diameter_mm, double trimmed_diameter_mm,
                                      double exponent, double *trimmed_flow_m3h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_flow_at_trim_rows(size_t rows, cutwater_column flow_m3h, cutwater_column diameter_mm,
                                           cutwater_column trimmed_diameter_mm, cutwater_column exponent,
                                           cutwater_result_column trimmed_flow_m3h, cutwater_rows_report *report);

/*
 * Head of a point of a pump's curve with the impeller trimmed.
 *
 *   head_m                       head at the full diameter; at least 0 m
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   trimmed_diameter_mm          diameter after the cut; from 5 to 10000 mm
 *   exponent                     2 in both sets; from 1.8 to 3; usually 2
 *   -> trimmed_head_m            head of the corresponding point
 *
 *   Equation: H' = H (D'/D)^x
 *   Must hold of trimmed_diameter: the trimmed diameter must be at most the full diameter: an impeller is cut, not grown
 *   Must hold of trimmed_diameter: the trimmed diameter must be at least 0.7 of the full diameter, the limit set here
 *                                  for the trim laws
 *   Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2,
 *           2, 4): common practice; limit of the ratio 0.7: set here
 *   Caution: Trim laws are approximate and depart further below about 80 % of the full diameter; have the trim confirmed
 *            by the pump maker.
 *   Caution: Two sets of exponents are in use for flow, head and power: (1, 2, 3) and (2, 2, 4), the second for radial
 *            impellers whose outlet width stays. Take all three from one set; the defaults are the first. The second
 *            predicts less flow and power after the cut.
 *   Caution: Efficiency falls a little with the trim; cut in two steps and test between them.
 */
CUTWATER_API cutwater_status cutwater_head_at_trim(double head_m, double diameter_mm, double trimmed_diameter_mm, double exponent,
                                      double *trimmed_head_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_head_at_trim_rows(size_t rows, cutwater_column head_m, cutwater_column diameter_mm,
                                           cutwater_column trimmed_diameter_mm, cutwater_column exponent,
                                           cutwater_result_column trimmed_head_m, cutwater_rows_report *report);

/*
 * Power of a point of a pump's curve with the impeller trimmed, its efficiency taken as unchanged.
 *
 *   power_kW                     pump power input at the full diameter; at least 0 kW
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   trimmed_diameter_mm          diameter after the cut; from 5 to 10000 mm
 *   exponent                     3 in the set (1, 2, 3), 4 in the set (2, 2, 4); from 2.5 to 5; usually 3
 *   -> trimmed_power_kW          power of the corresponding point
 *
 *   Equation: P' = P (D'/D)^x
 *   Must hold of trimmed_diameter: the trimmed diameter must be at most the full diameter: an impeller is cut, not grown
 *   Must hold of trimmed_diameter: the trimmed diameter must be at least 0.7 of the full diameter, the limit set here
 *                                  for the trim laws
 *   Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2,
 *           2, 4): common practice; limit of the ratio 0.7: set here
 *   Caution: Trim laws are approximate and depart further below about 80 % of the full diameter; have the trim confirmed
 *            by the pump maker.
 *   Caution: Two sets of exponents are in use for flow, head and power: (1, 2, 3) and (2, 2, 4), the second for radial
 *            impellers whose outlet width stays. Take all three from one set; the defaults are the first. The second
 *            predicts less flow and power after the cut.
 *   Caution: Efficiency falls a little with the trim; cut in two steps and test between them.
 */
CUTWATER_API cutwater_status cutwater_power_at_trim(double power_kW, double diameter_mm, double trimmed_diameter_mm,
                                       double exponent, double *trimmed_power_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_power_at_trim_rows(size_t rows, cutwater_column power_kW, cutwater_column diameter_mm,
                                            cutwater_column trimmed_diameter_mm, cutwater_column exponent,
                                            cutwater_result_column trimmed_power_kW, cutwater_rows_report *report);

/*
 * Specific speed in metric units: 1/min, m3/s, m.
 *
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   flow_m3h                     the pump's whole flow at best efficiency, full diameter; above 0 m3/h
 *   head_m                       the pump's head at best efficiency: of all its stages; above 0 m
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; whole number,
 *                                from 1 to 2; usually 1
 *   stages                       stages that share the head; leave at 1 when the head is one stage's; whole number, from
 *                                1 to 100; usually 1
 *   -> specific_speed            specific speed, per eye and stage
 *
 *   Equation: n_s = n sqrt(Q/i)/(H/z)^(3/4); n in 1/min, Q in m3/s, H in m
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.1 to 1.D.3 (excerpt read); flow per eye as
 *           in ISO 17769-1 (from memory of it)
 *   Caution: Take flow and head at best efficiency, full diameter, whatever the duty.
 *   Caution: Flow per impeller eye is used throughout, as ISO 17769-1 has it for the type number. The Hydraulic
 *            Institute's own specific speed takes the whole flow: for that leave eyes at 1 with a double-suction
 *            impeller. The two differ by a factor of 0.707.
 *   Caution: With m3/h in place of m3/s the number is 60 times as large: check which form a source uses.
 */
CUTWATER_API cutwater_status cutwater_specific_speed(double speed_rpm, double flow_m3h, double head_m, double eyes, double stages,
                                        double *specific_speed, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_specific_speed_rows(size_t rows, cutwater_column speed_rpm, cutwater_column flow_m3h,
                                             cutwater_column head_m, cutwater_column eyes, cutwater_column stages,
                                             cutwater_result_column specific_speed, cutwater_rows_report *report);

/*
 * Specific speed in US units: 1/min, US gal/min, ft.
 *
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   flow_m3h                     the pump's whole flow at best efficiency, full diameter; above 0 m3/h
 *   head_m                       the pump's head at best efficiency: of all its stages; above 0 m
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; whole number,
 *                                from 1 to 2; usually 1
 *   stages                       stages that share the head; leave at 1 when the head is one stage's; whole number, from
 *                                1 to 100; usually 1
 *   -> specific_speed_us         specific speed, per eye and stage
 *
 *   Equation: N_s = n sqrt(Q/i)/(H/z)^(3/4); n in 1/min, Q in US gal/min, H in ft
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.1 and 1.D.2 (excerpt read); flow per eye as
 *           in ISO 17769-1 (from memory of it)
 *   Caution: Take flow and head at best efficiency, full diameter, whatever the duty.
 *   Caution: Flow per impeller eye is used throughout, as ISO 17769-1 has it for the type number. The Hydraulic
 *            Institute's own specific speed takes the whole flow: for that leave eyes at 1 with a double-suction
 *            impeller. The two differ by a factor of 0.707.
 */
CUTWATER_API cutwater_status cutwater_specific_speed_us(double speed_rpm, double flow_m3h, double head_m, double eyes,
                                           double stages, double *specific_speed_us, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_specific_speed_us_rows(size_t rows, cutwater_column speed_rpm, cutwater_column flow_m3h,
                                                cutwater_column head_m, cutwater_column eyes, cutwater_column stages,
                                                cutwater_result_column specific_speed_us,
                                                cutwater_rows_report *report);

/*
 * Type number: specific speed without units.
 *
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   flow_m3h                     the pump's whole flow at best efficiency, full diameter; above 0 m3/h
 *   head_m                       the pump's head at best efficiency: of all its stages; above 0 m
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; whole number,
 *                                from 1 to 2; usually 1
 *   stages                       stages that share the head; leave at 1 when the head is one stage's; whole number, from
 *                                1 to 100; usually 1
 *   -> type_number               type number, per eye and stage
 *
 *   Equation: K = 2 pi n sqrt(Q/i)/(g H/z)^(3/4)
 *   Source: ISO 17769-1:2012 and ISO 9906:2012, type number (from memory of both); Hydraulic Institute, Engineering Data
 *           Book, 2nd edition, Eq. 1.D.3 (excerpt read)
 *   Caution: Take flow and head at best efficiency, full diameter, whatever the duty.
 *   Caution: Flow per impeller eye is used throughout, as ISO 17769-1 has it for the type number. The Hydraulic
 *            Institute's own specific speed takes the whole flow: for that leave eyes at 1 with a double-suction
 *            impeller. The two differ by a factor of 0.707.
 */
CUTWATER_API cutwater_status cutwater_type_number(double speed_rpm, double flow_m3h, double head_m, double eyes, double stages,
                                     double *type_number, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_type_number_rows(size_t rows, cutwater_column speed_rpm, cutwater_column flow_m3h,
                                          cutwater_column head_m, cutwater_column eyes, cutwater_column stages,
                                          cutwater_result_column type_number, cutwater_rows_report *report);

/*
 * Metric specific speed (or suction specific speed) from that in US units.
 *
 *   specific_speed_us            in 1/min, US gal/min, ft; above 0
 *   -> specific_speed            in 1/min, m3/s, m
 *
 *   Equation: n_s = N_s/51.6452
 *   Source: definitions of the US gallon and the foot (NIST SP 811); Hydraulic Institute, Engineering Data Book, 2nd
 *           edition, prints 51.6 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_specific_speed_from_us(double specific_speed_us, double *specific_speed,
                                                cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_specific_speed_from_us_rows(size_t rows, cutwater_column specific_speed_us,
                                                     cutwater_result_column specific_speed,
                                                     cutwater_rows_report *report);

/*
 * Metric specific speed from the type number.
 *
 *   type_number                  type number; above 0
 *   -> specific_speed            in 1/min, m3/s, m
 *
 *   Equation: n_s = K g^(3/4)/(2 pi/60) = 52.919 K
 *   Source: ISO 17769-1:2012, type number (from memory of it); g = 9.80665 m/s2
 */
CUTWATER_API cutwater_status cutwater_specific_speed_from_type_number(double type_number, double *specific_speed,
                                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_specific_speed_from_type_number_rows(size_t rows, cutwater_column type_number,
                                                              cutwater_result_column specific_speed,
                                                              cutwater_rows_report *report);

/*
 * Specific speed (or suction specific speed) in US units from the metric one.
 *
 *   specific_speed               in 1/min, m3/s, m; above 0
 *   -> specific_speed_us         in 1/min, US gal/min, ft
 *
 *   Equation: N_s = 51.6452 n_s
 *   Source: definitions of the US gallon and the foot (NIST SP 811); Hydraulic Institute, Engineering Data Book, 2nd
 *           edition, prints 51.6 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_specific_speed_us_from_metric(double specific_speed, double *specific_speed_us,
                                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_specific_speed_us_from_metric_rows(size_t rows, cutwater_column specific_speed,
                                                            cutwater_result_column specific_speed_us,
                                                            cutwater_rows_report *report);

/*
 * Specific speed in US units from the type number.
 *
 *   type_number                  type number; above 0
 *   -> specific_speed_us         in 1/min, US gal/min, ft
 *
 *   Equation: N_s = 2733.0 K
 *   Source: ISO 17769-1:2012, type number (from memory of it); definitions of the US gallon and the foot (NIST SP 811)
 */
CUTWATER_API cutwater_status cutwater_specific_speed_us_from_type_number(double type_number, double *specific_speed_us,
                                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_specific_speed_us_from_type_number_rows(size_t rows, cutwater_column type_number,
                                                                 cutwater_result_column specific_speed_us,
                                                                 cutwater_rows_report *report);

/*
 * Type number from the metric specific speed.
 *
 *   specific_speed               in 1/min, m3/s, m; above 0
 *   -> type_number               type number
 *
 *   Equation: K = n_s (2 pi/60)/g^(3/4) = n_s/52.919
 *   Source: ISO 17769-1:2012, type number (from memory of it); g = 9.80665 m/s2
 */
CUTWATER_API cutwater_status cutwater_type_number_from_specific_speed(double specific_speed, double *type_number,
                                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_type_number_from_specific_speed_rows(size_t rows, cutwater_column specific_speed,
                                                              cutwater_result_column type_number,
                                                              cutwater_rows_report *report);

/*
 * Type number from the specific speed in US units.
 *
 *   specific_speed_us            in 1/min, US gal/min, ft; above 0
 *   -> type_number               type number
 *
 *   Equation: K = N_s/2733.0
 *   Source: ISO 17769-1:2012, type number (from memory of it); definitions of the US gallon and the foot (NIST SP 811)
 */
CUTWATER_API cutwater_status cutwater_type_number_from_us(double specific_speed_us, double *type_number, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_type_number_from_us_rows(size_t rows, cutwater_column specific_speed_us,
                                                  cutwater_result_column type_number, cutwater_rows_report *report);

/*
 * Suction specific speed in metric units: 1/min, m3/s, m, always per eye.
 *
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   flow_m3h                     the pump's whole flow at best efficiency, full diameter; above 0 m3/h
 *   npsh3_m                      NPSH3 at best efficiency, full diameter; above 0 m
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; whole number,
 *                                from 1 to 2; usually 1
 *   -> suction_specific_speed    suction specific speed
 *
 *   Equation: n_ss = n sqrt(Q/i)/NPSH3^(3/4); n in 1/min, Q in m3/s, NPSH3 in m
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read)
 *   Caution: Take flow and head at best efficiency, full diameter, whatever the duty.
 *   Caution: Common practice looks for a ceiling of about 213 (11 000 in US units): above it the range of steady flow
 *            narrows.
 */
CUTWATER_API cutwater_status cutwater_suction_specific_speed(double speed_rpm, double flow_m3h, double npsh3_m, double eyes,
                                                double *suction_specific_speed, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_suction_specific_speed_rows(size_t rows, cutwater_column speed_rpm, cutwater_column flow_m3h,
                                                     cutwater_column npsh3_m, cutwater_column eyes,
                                                     cutwater_result_column suction_specific_speed,
                                                     cutwater_rows_report *report);

/*
 * Suction specific speed in US units: 1/min, US gal/min, ft, always per eye.
 *
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   flow_m3h                     the pump's whole flow at best efficiency, full diameter; above 0 m3/h
 *   npsh3_m                      NPSH3 at best efficiency, full diameter; above 0 m
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; whole number,
 *                                from 1 to 2; usually 1
 *   -> suction_specific_speed_us suction specific speed
 *
 *   Equation: N_ss = n sqrt(Q/i)/NPSH3^(3/4); n in 1/min, Q in US gal/min, NPSH3 in ft
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read)
 *   Caution: Take flow and head at best efficiency, full diameter, whatever the duty.
 *   Caution: Common practice looks for a ceiling of about 213 (11 000 in US units): above it the range of steady flow
 *            narrows.
 */
CUTWATER_API cutwater_status cutwater_suction_specific_speed_us(double speed_rpm, double flow_m3h, double npsh3_m, double eyes,
                                                   double *suction_specific_speed_us, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_suction_specific_speed_us_rows(size_t rows, cutwater_column speed_rpm,
                                                        cutwater_column flow_m3h, cutwater_column npsh3_m,
                                                        cutwater_column eyes,
                                                        cutwater_result_column suction_specific_speed_us,
                                                        cutwater_rows_report *report);

/*
 * Peripheral speed of an impeller's outside diameter.
 *
 *   diameter_mm                  impeller outside diameter; from 5 to 10000 mm
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   -> tip_speed_ms              peripheral speed
 *
 *   Equation: u_2 = pi D n
 *   Source: definition; ISO 17769-1:2012, peripheral velocity (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_tip_speed(double diameter_mm, double speed_rpm, double *tip_speed_ms,
                                   cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_tip_speed_rows(size_t rows, cutwater_column diameter_mm, cutwater_column speed_rpm,
                                        cutwater_result_column tip_speed_ms, cutwater_rows_report *report);

/*
 * Head coefficient of an impeller, psi = g H/u2^2.
 *
 *   head_m                       head of one stage; at least 0 m
 *   diameter_mm                  impeller outside diameter; from 5 to 10000 mm
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   -> head_coefficient          head coefficient
 *
 *   Equation: psi = g H/u_2^2, u_2 = pi D n
 *   Source: definition as in ANSI/HI 1.3 (from memory of it)
 *   Caution: Many European books define it with a factor of 2 (psi = 2 g H/u2^2): twice this value.
 */
CUTWATER_API cutwater_status cutwater_head_coefficient(double head_m, double diameter_mm, double speed_rpm,
                                          double *head_coefficient, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_head_coefficient_rows(size_t rows, cutwater_column head_m, cutwater_column diameter_mm,
                                               cutwater_column speed_rpm, cutwater_result_column head_coefficient,
                                               cutwater_rows_report *report);

/*
 * Flow coefficient of an impeller, phi = c2m/u2.
 *
 *   flow_m3h                     flow through the impeller; at least 0 m3/h
 *   diameter_mm                  impeller outside diameter; from 5 to 10000 mm
 *   width_mm                     outlet width of the impeller; of both halves with double suction; from 0.5 to 5000 mm
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   -> flow_coefficient          flow coefficient, blockage by the vanes left out
 *
 *   Equation: phi = Q/(pi D b_2 u_2), u_2 = pi D n
 *   Source: definition; J. F. Guelich, Centrifugal Pumps, 3rd edition, 2014 (from memory of it)
 *   Caution: Other books divide by D^2 u2 or n D^3 instead: compare only numbers of one definition.
 */
CUTWATER_API cutwater_status cutwater_flow_coefficient(double flow_m3h, double diameter_mm, double width_mm, double speed_rpm,
                                          double *flow_coefficient, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_flow_coefficient_rows(size_t rows, cutwater_column flow_m3h, cutwater_column diameter_mm,
                                               cutwater_column width_mm, cutwater_column speed_rpm,
                                               cutwater_result_column flow_coefficient, cutwater_rows_report *report);

/*
 * Specific diameter of an impeller, without units.
 *
 *   flow_m3h                     flow at best efficiency; above 0 m3/h
 *   head_m                       head of one stage at best efficiency; above 0 m
 *   diameter_mm                  impeller outside diameter; from 5 to 10000 mm
 *   -> specific_diameter         specific diameter
 *
 *   Equation: D_s = D (g H)^(1/4)/sqrt(Q)
 *   Source: O. Cordier (1953); O. E. Balje, Turbomachines, 1981 (from memory of both)
 */
CUTWATER_API cutwater_status cutwater_specific_diameter(double flow_m3h, double head_m, double diameter_mm,
                                           double *specific_diameter, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_specific_diameter_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                cutwater_column diameter_mm, cutwater_result_column specific_diameter,
                                                cutwater_rows_report *report);

/*
 * Form of impeller that suits a specific speed.
 *
 *   specific_speed               metric specific speed (1/min, m3/s, m), per eye and stage; from 5 to 500
 *   -> form                      radial, mixed (Francis and mixed flow) or axial
 *
 *   Equation: radial: n_s < 40; mixed: 40 <= n_s < 175; axial: n_s >= 175 (US units 2000 and 9000)
 *   Source: common practice; the bands of the trade's books overlap
 *   Caution: The bounds are gradual: near them both forms are built.
 */
CUTWATER_API cutwater_status cutwater_impeller_form(double specific_speed, const char **form, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_impeller_form_rows(size_t rows, cutwater_column specific_speed, cutwater_result_column form,
                                            cutwater_rows_report *report);

/*
 * Least hydraulic efficiency of a water pump under Regulation (EU) No 547/2012.
 *
 *   flow_m3h                     flow at best efficiency, full diameter, at the nominal speed; above 0 m3/h
 *   head_m                       head of all stages at that flow; above 0 m
 *   nominal_speed_rpm            1450 or 2900 1/min, to which the performance is converted; above 0 1/min
 *   pump_type                    ESOB, ESCC, ESCCi: end suction with own bearings, close coupled, close coupled in-line;
 *                                MS-V: vertical multistage; MSS: submersible multistage: one of "ESOB" "ESCC" "ESCCi"
 *                                "MS-V" "MSS"
 *   minimum_efficiency_index     0.1 (in force from 2013) or 0.4 (from 2015); from 0.1 to 0.7; usually 0.4
 *   stages                       stages that share the head; 1 for end suction; whole number, from 1 to 100; usually 1
 *   -> best_efficiency_limit     least efficiency at best-efficiency flow
 *   -> part_load_limit           least efficiency at 75 % of that flow
 *   -> overload_limit            least efficiency at 110 % of that flow
 *
 *   Equation: eta_BEP = (88.59 x + 13.46 y - 11.48 x^2 - 0.85 y^2 - 0.38 x y - C)/100; x = ln(n_s), n_s = n sqrt(Q
 *             m3/s)/(H/z)^(3/4); y = ln(Q m3/h); eta_PL = 0.947 eta_BEP; eta_OL = 0.985 eta_BEP
 *   Must hold of nominal_speed: the regulation knows the nominal speeds 1450 and 2900 1/min only
 *   Must hold of nominal_speed: MS-V and MSS pumps are judged at 2900 1/min only
 *   Must hold of minimum_efficiency_index: the regulation gives constants for an index of 0.1 and 0.4 only
 *   Must hold of stages: end suction pumps have one stage in the regulation
 *   Must hold of flow: the regulation covers end suction pumps from 6 m3/h and MS-V pumps up to 100 m3/h
 *   Must hold of head: the regulation covers end suction pumps up to 90 m at 1450 1/min and 140 m at 2900 1/min
 *   Must hold of head: the regulation covers end suction pumps with a specific speed of 6 to 80 (1/min, m3/s, m)
 *   Must hold of head: the regulation's formula gives no efficiency between 0 and 1 for this flow and head
 *   Source: Commission Regulation (EU) No 547/2012: constants C of Annex III and scope of Article 2 (excerpt read);
 *           coefficients of the formula, 0.947 and 0.985 (from memory of it; the coefficients agree with those of 10 CFR
 *           431, subpart Y, appendix A, turned into US units)
 *   Caution: No legal finding. Further limits of scope: 16 bar and 150 kW for end suction, 25 bar for MS-V, 4 and 6 in
 *            and 90 degC for MSS, clean water of -10 to 120 degC; check the regulation in force and its exceptions.
 */
CUTWATER_API cutwater_status cutwater_minimum_efficiency_eu(double flow_m3h, double head_m, double nominal_speed_rpm,
                                               const char *pump_type, double minimum_efficiency_index, double stages,
                                               double *best_efficiency_limit, double *part_load_limit,
                                               double *overload_limit, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_minimum_efficiency_eu_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                    cutwater_column nominal_speed_rpm, const char *pump_type,
                                                    cutwater_column minimum_efficiency_index, cutwater_column stages,
                                                    cutwater_result_column best_efficiency_limit,
                                                    cutwater_result_column part_load_limit,
                                                    cutwater_result_column overload_limit,
                                                    cutwater_rows_report *report);

/*
 * Best efficiency that a good single-stage radial pump of that duty attains: a guide.
 *
 *   flow_m3h                     flow at best efficiency; from 18 to 36000 m3/h
 *   head_m                       head at best efficiency, of one stage; above 0 m
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   -> efficiency                efficiency at best efficiency
 *
 *   Equation: eta = 1 - 0.095 (1/Q)^m - 0.3 (0.35 - log10(n_s/23))^2 (1/Q)^0.05; m = 0.1 a (1/Q)^0.15 (45/n_s)^0.06; Q
 *             in m3/s; a = 1 up to 1 m3/s, 0.5 above
 *   Must hold of head: the correlation is used here for specific speeds of 7 to 100 (1/min, m3/s, m) only
 *   Source: J. F. Guelich, Centrifugal Pumps, 3rd edition, Springer 2014, table 3.8, single-stage radial pumps (from
 *           memory of it); limits of flow and specific speed: set here
 *   Caution: A guide to what good pumps attain: single pumps scatter by 3 to 5 points, more below a specific speed of
 *            15.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_attainable_efficiency(double flow_m3h, double head_m, double speed_rpm, double *efficiency,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_attainable_efficiency_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                    cutwater_column speed_rpm, cutwater_result_column efficiency,
                                                    cutwater_rows_report *report);

/* ---- Power, motor, energy ---- */

/*
 * Power that a pump gives to the liquid (pump power output).
 *
 *   flow_m3h                     flow delivered; at least 0 m3/h
 *   head_m                       pump total head; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   -> hydraulic_power_kW        pump power output
 *
 *   Equation: P_u = rho g Q H
 *   Source: ISO 17769-1:2012, pump power output (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd
 *           edition, Eq. 1.B.3 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_hydraulic_power(double flow_m3h, double head_m, double density_kgm3,
                                         double *hydraulic_power_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_hydraulic_power_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                              cutwater_column density_kgm3, cutwater_result_column hydraulic_power_kW,
                                              cutwater_rows_report *report);

/*
 * Power that a pump takes at its shaft.
 *
 *   flow_m3h                     flow delivered; at least 0 m3/h
 *   head_m                       pump total head; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   efficiency                   pump efficiency at that flow; above 0 up to 1
 *   -> power_input_kW            pump power input
 *
 *   Equation: P = rho g Q H/eta
 *   Source: ISO 17769-1:2012, pump power input (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd
 *           edition, Eq. 1.B.4 (excerpt read)
 *   Caution: At no flow the formula gives no power; the true shut-off power is read from the pump's curve.
 */
CUTWATER_API cutwater_status cutwater_pump_power_input(double flow_m3h, double head_m, double density_kgm3, double efficiency,
                                          double *power_input_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pump_power_input_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                               cutwater_column density_kgm3, cutwater_column efficiency,
                                               cutwater_result_column power_input_kW, cutwater_rows_report *report);

/*
 * Efficiency of a pump from its flow, head and shaft power.
 *
 *   flow_m3h                     flow delivered; at least 0 m3/h
 *   head_m                       pump total head; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   power_input_kW               power at the pump's shaft; above 0 kW
 *   -> efficiency                pump efficiency
 *
 *   Equation: eta = rho g Q H/P
 *   Must hold of power_input: the shaft power must be at least the power given to the liquid, rho g Q H: no pump gives
 *                             out more than it takes
 *   Source: ISO 17769-1:2012, pump efficiency (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd
 *           edition, Eq. 1.B.5 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_pump_efficiency(double flow_m3h, double head_m, double density_kgm3, double power_input_kW,
                                         double *efficiency, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pump_efficiency_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                              cutwater_column density_kgm3, cutwater_column power_input_kW,
                                              cutwater_result_column efficiency, cutwater_rows_report *report);

/*
 * Torque of a shaft from its power and speed.
 *
 *   power_input_kW               power at the shaft; at least 0 kW
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   -> torque_Nm                 torque
 *
 *   Equation: T = P/(2 pi n)
 *   Source: mechanics; common practice
 */
CUTWATER_API cutwater_status cutwater_shaft_torque(double power_input_kW, double speed_rpm, double *torque_Nm,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shaft_torque_rows(size_t rows, cutwater_column power_input_kW, cutwater_column speed_rpm,
                                           cutwater_result_column torque_Nm, cutwater_rows_report *report);

/*
 * Least ratio of a motor's rating to the pump's power input.
 *
 *   motor_rating_kW              rated output of the motor; above 0 up to 100000 kW
 *   rule                         "ISO 13709": 1.25 below 22 kW, 1.15 from 22 to 55 kW, 1.10 above; "process": 1.20 up to
 *                                7.5 kW, 1.15 up to 40 kW, 1.10 above: one of "ISO 13709" "process"; usually "ISO 13709"
 *   -> margin                    rated motor output over pump power input at the rated duty, at least
 *
 *   Equation: ISO 13709: 1.25 for P_N < 22 kW; 1.15 for P_N <= 55 kW; 1.10 above. process: 1.20 for P_N <= 7.5 kW; 1.15
 *             for P_N <= 40 kW; 1.10 above
 *   Source: "ISO 13709": ISO 13709:2009, 7.1.5, driver margin (from memory of it; its brackets below 22, 22 to 55, above
 *           55 kW read in a public program); "process": common practice for pumps to ISO 5199, ISO 9905 and ISO 9908,
 *           whose own curve could not be read
 *   Caution: The bracket goes by the motor's rating, not by the pump's power; a motor's service factor is no margin.
 *   Caution: Check the power at the end of the curve too, and at the greatest density and viscosity the pump will meet,
 *            starting cold included.
 */
CUTWATER_API cutwater_status cutwater_motor_power_margin(double motor_rating_kW, const char *rule, double *margin,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_power_margin_rows(size_t rows, cutwater_column motor_rating_kW, const char *rule,
                                                 cutwater_result_column margin, cutwater_rows_report *report);

/*
 * Smallest listed motor rating that leaves the margin over the pump's power input.
 *
 *   power_input_kW               pump power input at the rated duty; above 0 kW
 *   rule                         "ISO 13709": 1.25 below 22 kW, 1.15 from 22 to 55 kW, 1.10 above; "process": 1.20 up to
 *                                7.5 kW, 1.15 up to 40 kW, 1.10 above: one of "ISO 13709" "process"; usually "ISO 13709"
 *   series                       "primary": first series of IEC 60072-1; "secondary": both its series; "trade": ratings
 *                                kept in stock: one of "primary" "secondary" "trade"; usually "primary"
 *   -> motor_rating_kW           rated output of the motor
 *   -> margin_obtained           that rating over the pump power input
 *
 *   Equation: P_N = the least rating of the series with P_N >= m(P_N) P, m the margin for that rating
 *   Source: IEC 60072-1:1991, table 7, both series (from memory of it). Margin: "ISO 13709": ISO 13709:2009, 7.1.5 (from
 *           memory of it); "process" and "trade": common practice
 *   Caution: The bracket goes by the motor's rating, not by the pump's power; a motor's service factor is no margin.
 *   Caution: Check the power at the end of the curve too, and at the greatest density and viscosity the pump will meet,
 *            starting cold included.
 */
CUTWATER_API cutwater_status cutwater_motor_rating_needed(double power_input_kW, const char *rule, const char *series,
                                             double *motor_rating_kW, double *margin_obtained,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_rating_needed_rows(size_t rows, cutwater_column power_input_kW, const char *rule,
                                                  const char *series, cutwater_result_column motor_rating_kW,
                                                  cutwater_result_column margin_obtained,
                                                  cutwater_rows_report *report);

/*
 * Nominal full-load efficiency that a motor of an efficiency class has at least.
 *
 *   rated_power_kW               rated output of the motor; from 0.12 to 1000 kW
 *   poles                        number of poles: 2, 4, 6 or 8; whole number, from 2 to 8
 *   frequency_Hz                 mains frequency: 50 or 60 Hz; from 50 to 60 Hz; usually 50
 *   efficiency_class             efficiency class of the motor: one of "IE1" "IE2" "IE3" "IE4"; usually "IE3"
 *   -> efficiency                nominal efficiency at rated output
 *
 *   Equation: 50 Hz, up to 200 kW: eta_M = A x^3 + B x^2 + C x + D per cent, x = log10(P_N/kW), rounded to a tenth; IE1,
 *             above 200 kW and 60 Hz: tables; 60 Hz between ratings: the nearer rating
 *   Must hold of poles: a motor's poles come in pairs: give an even number
 *   Must hold of frequency: the classes are set for 50 Hz and 60 Hz only
 *   Source: IEC 60034-30-1:2014; its 50 Hz coefficients for IE2 to IE4 and the rules between ratings: Regulation (EU)
 *           2019/1781, Annex I, read as retained in UK SI 2021/745, Schedule 16; IE1, above 200 kW, and 60 Hz tables
 *           (from memory of it, 129 of the IE2 and IE3 values at 60 Hz checked against 10 CFR 431.25, 10 CFR 431.446 and
 *           42 U.S.C. 6313). The edition of 2025 was not read
 *   Caution: The class's least nominal value at full load: real motors differ, are less efficient at low load, and may
 *            be off by the tolerance of IEC 60034-1.
 */
CUTWATER_API cutwater_status cutwater_motor_efficiency(double rated_power_kW, double poles, double frequency_Hz,
                                          const char *efficiency_class, double *efficiency, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_efficiency_rows(size_t rows, cutwater_column rated_power_kW, cutwater_column poles,
                                               cutwater_column frequency_Hz, const char *efficiency_class,
                                               cutwater_result_column efficiency, cutwater_rows_report *report);

/*
 * Efficiency of a motor at part load and full speed, from that at its rated output.
 *
 *   rated_efficiency             efficiency at the rated output, as from motor_efficiency or the plate; above 0 up to 1
 *   load                         shaft power over rated output; above 0 up to 1.25
 *   constant_loss_share          share of the motor's full-load losses that does not change with load; 0.36 puts its
 *                                best efficiency at 75 % load; from 0 to 1; usually 0.36
 *   -> efficiency                efficiency at that load
 *
 *   Equation: eta_M = x/(x + (1/eta_N - 1)(c + (1 - c) x^2))
 *   Source: motor losses a constant part and a part with the square of the load: IEC TS 60034-31, efficiency at part
 *           load (from memory of it); best efficiency near 75 % load: US Department of Energy, Determining Electric
 *           Motor Load and Efficiency (from memory of it), common practice
 *   Caution: The share of constant losses differs from motor to motor: take the maker's efficiencies at 50, 75 and 100 %
 *            where they are known.
 *   Caution: On a frequency converter at reduced speed the losses differ: see duty_profile_energy.
 */
CUTWATER_API cutwater_status cutwater_motor_efficiency_at_load(double rated_efficiency, double load, double constant_loss_share,
                                                  double *efficiency, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_efficiency_at_load_rows(size_t rows, cutwater_column rated_efficiency,
                                                       cutwater_column load, cutwater_column constant_loss_share,
                                                       cutwater_result_column efficiency,
                                                       cutwater_rows_report *report);

/*
 * Speed of the turning field of a motor.
 *
 *   frequency_Hz                 frequency of the supply or of the drive's output; from 1 to 400 Hz
 *   poles                        number of poles, an even number; whole number, from 2 to 48
 *   -> speed_rpm                 synchronous speed
 *
 *   Equation: n_s = 2 f/(2p), 120 f/(2p) in 1/min
 *   Must hold of poles: a motor's poles come in pairs: give an even number
 *   Source: IEC 60034-1, synchronous speed (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_synchronous_speed(double frequency_Hz, double poles, double *speed_rpm,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_synchronous_speed_rows(size_t rows, cutwater_column frequency_Hz, cutwater_column poles,
                                                cutwater_result_column speed_rpm, cutwater_rows_report *report);

/*
 * Speed of an induction motor with its slip.
 *
 *   frequency_Hz                 frequency of the supply or of the drive's output; from 1 to 400 Hz
 *   poles                        number of poles, an even number; whole number, from 2 to 48
 *   slip                         slip at the load, from the motor's plate; 0 for a synchronous motor; from 0 to 0.2
 *   -> speed_rpm                 speed of rotation
 *
 *   Equation: n = (1 - s) 2 f/(2p)
 *   Must hold of poles: a motor's poles come in pairs: give an even number
 *   Source: IEC 60034-1, slip (from memory of it)
 *   Caution: Slip grows about in proportion to the load, from nil at no load to the plate's value at rated output.
 */
CUTWATER_API cutwater_status cutwater_motor_speed(double frequency_Hz, double poles, double slip, double *speed_rpm,
                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_speed_rows(size_t rows, cutwater_column frequency_Hz, cutwater_column poles,
                                          cutwater_column slip, cutwater_result_column speed_rpm,
                                          cutwater_rows_report *report);

/*
 * Line current of a three-phase motor.
 *
 *   shaft_power_kW               power at the motor's shaft; at least 0 kW
 *   voltage_V                    voltage between lines; above 0 up to 20000 V
 *   motor_efficiency             efficiency of the motor at that load; above 0 up to 1
 *   power_factor                 power factor at that load; above 0 up to 1
 *   -> current_A                 line current
 *
 *   Equation: I = P/(sqrt(3) U eta_M cos phi)
 *   Source: three-phase power; common practice
 *   Caution: Running current at that load; the starting current is several times as large. Cables and protection follow
 *            local codes.
 */
CUTWATER_API cutwater_status cutwater_motor_current(double shaft_power_kW, double voltage_V, double motor_efficiency,
                                       double power_factor, double *current_A, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_motor_current_rows(size_t rows, cutwater_column shaft_power_kW, cutwater_column voltage_V,
                                            cutwater_column motor_efficiency, cutwater_column power_factor,
                                            cutwater_result_column current_A, cutwater_rows_report *report);

/*
 * Power drawn from the mains for a power at the shaft.
 *
 *   shaft_power_kW               power at the motor's shaft; at least 0 kW
 *   motor_efficiency             efficiency of the motor at that load; above 0 up to 1
 *   drive_efficiency             efficiency of the frequency converter; 1 without one; above 0 up to 1; usually 1
 *   -> electrical_power_kW       power drawn from the mains
 *
 *   Equation: P_el = P/(eta_M eta_D)
 *   Source: definition of efficiency; IEC 60034-1 (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_electrical_power(double shaft_power_kW, double motor_efficiency, double drive_efficiency,
                                          double *electrical_power_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_electrical_power_rows(size_t rows, cutwater_column shaft_power_kW,
                                               cutwater_column motor_efficiency, cutwater_column drive_efficiency,
                                               cutwater_result_column electrical_power_kW,
                                               cutwater_rows_report *report);

/*
 * Efficiency of a frequency converter at part load: a representative value.
 *
 *   rated_power_kW               rated output of the converter; its 3 to 400 hp are taken as 2.2 to 300 kW; from 2.2 to
 *                                300 kW
 *   load                         output over rated output; from 0.016 to 1
 *   -> efficiency                efficiency of the converter
 *
 *   Equation: table of efficiency by rating and load, straight lines between its points
 *   Source: US Department of Energy, Motor Systems Tip Sheet 11, Adjustable Speed Drive Part-Load Efficiency, table 1,
 *           pulse-width modulated drives (from memory of it; python3-fluids 1.0.22 holds the same values)
 *   Caution: Representative of drives of about 2010, no standard's limit: take the maker's losses (IEC 61800-9-2) where
 *            they are known.
 */
CUTWATER_API cutwater_status cutwater_drive_efficiency(double rated_power_kW, double load, double *efficiency,
                                          cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_drive_efficiency_rows(size_t rows, cutwater_column rated_power_kW, cutwater_column load,
                                               cutwater_result_column efficiency, cutwater_rows_report *report);

/*
 * Efficiency from wire to water, of pump, motor and drive together.
 *
 *   pump_efficiency              efficiency of the pump at the duty; above 0 up to 1
 *   motor_efficiency             efficiency of the motor at that load; above 0 up to 1
 *   drive_efficiency             efficiency of the converter or gear; 1 without one; above 0 up to 1; usually 1
 *   -> overall_efficiency        power given to the liquid over power from the mains
 *
 *   Equation: eta = eta_P eta_M eta_D
 *   Source: ISO 17769-1:2012, overall efficiency (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_overall_efficiency(double pump_efficiency, double motor_efficiency, double drive_efficiency,
                                            double *overall_efficiency, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_overall_efficiency_rows(size_t rows, cutwater_column pump_efficiency,
                                                 cutwater_column motor_efficiency, cutwater_column drive_efficiency,
                                                 cutwater_result_column overall_efficiency,
                                                 cutwater_rows_report *report);

/*
 * Efficiency from wire to water as measured: flow and head against power from the mains.
 *
 *   flow_m3h                     flow delivered; at least 0 m3/h
 *   head_m                       pump total head; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   electrical_power_kW          power drawn from the mains; above 0 kW
 *   -> overall_efficiency        power given to the liquid over power from the mains
 *
 *   Equation: eta = rho g Q H/P_el
 *   Must hold of electrical_power: the power from the mains must be at least the power given to the liquid, rho g Q H
 *   Source: ISO 17769-1:2012, overall efficiency (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_wire_to_water_efficiency(double flow_m3h, double head_m, double density_kgm3,
                                                  double electrical_power_kW, double *overall_efficiency,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_wire_to_water_efficiency_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                       cutwater_column density_kgm3,
                                                       cutwater_column electrical_power_kW,
                                                       cutwater_result_column overall_efficiency,
                                                       cutwater_rows_report *report);

/*
 * Energy from the mains for each cubic metre pumped.
 *
 *   head_m                       pump total head; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   overall_efficiency           wire to water: pump, motor and drive together; above 0 up to 1
 *   -> specific_energy_kWhm3     energy for each volume
 *
 *   Equation: e = rho g H/eta
 *   Source: ISO 17769-1:2012, pump power output over flow (from memory of it); common practice
 */
CUTWATER_API cutwater_status cutwater_specific_energy(double head_m, double density_kgm3, double overall_efficiency,
                                         double *specific_energy_kWhm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_specific_energy_rows(size_t rows, cutwater_column head_m, cutwater_column density_kgm3,
                                              cutwater_column overall_efficiency,
                                              cutwater_result_column specific_energy_kWhm3,
                                              cutwater_rows_report *report);

/*
 * Energy for each cubic metre pumped, from power and flow as measured.
 *
 *   electrical_power_kW          power drawn from the mains; at least 0 kW
 *   flow_m3h                     flow delivered; above 0 m3/h
 *   -> specific_energy_kWhm3     energy for each volume
 *
 *   Equation: e = P_el/Q
 *   Source: definition; common practice
 */
CUTWATER_API cutwater_status cutwater_specific_energy_from_power(double electrical_power_kW, double flow_m3h,
                                                    double *specific_energy_kWhm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_specific_energy_from_power_rows(size_t rows, cutwater_column electrical_power_kW,
                                                         cutwater_column flow_m3h,
                                                         cutwater_result_column specific_energy_kWhm3,
                                                         cutwater_rows_report *report);

/*
 * Energy that a year's duty profile takes from the mains.
 *
 *   flows_m3h                    flow at each point of the profile; at least 1 points; at least 0 m3/h
 *   heads_m                      pump total head at each point; at least 1 points; at least 0 m
 *   overall_efficiencies         wire-to-water efficiency at each point; at least 1 points; above 0 up to 1
 *   hours_h                      hours a year at each point of the profile; at least 1 points; at least 0 h
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; usually 998.2
 *   -> energy_kWh                energy from the mains in the year
 *   -> volume_m3                 volume pumped in the year
 *   -> specific_energy_kWhm3     energy for each volume, mean of the year
 *
 *   Equation: E = sum(rho g Q_i H_i/eta_i t_i); V = sum(Q_i t_i)
 *   Must hold of heads: there must be as many heads as flows
 *   Must hold of overall_efficiencies: there must be as many efficiencies as flows
 *   Must hold of hours: there must be as many hours as flows
 *   Must hold of hours: the hours must add up to at most a year, 8784 h
 *   Must hold of flows: the profile must pump something: give at least one flow above 0 with hours above 0
 *   Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs, 2001, energy costs (from
 *           memory of it)
 *   Caution: At closed valve a pump takes power that this sum does not hold: add those hours with
 *            annual_energy_from_power.
 */
CUTWATER_API cutwater_status cutwater_annual_energy(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                       size_t heads_m_count, const double *overall_efficiencies,
                                       size_t overall_efficiencies_count, const double *hours_h, size_t hours_h_count,
                                       double density_kgm3, double *energy_kWh, double *volume_m3,
                                       double *specific_energy_kWhm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_annual_energy_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                            const double *heads_m, size_t heads_m_count,
                                            const double *overall_efficiencies, size_t overall_efficiencies_count,
                                            const double *hours_h, size_t hours_h_count, cutwater_column density_kgm3,
                                            cutwater_result_column energy_kWh, cutwater_result_column volume_m3,
                                            cutwater_result_column specific_energy_kWhm3,
                                            cutwater_rows_report *report);

/*
 * Energy of a year from the power drawn at each point of the duty profile.
 *
 *   electrical_powers_kW         power drawn from the mains at each point; at least 1 points; at least 0 kW
 *   hours_h                      hours a year at each point of the profile; at least 1 points; at least 0 h
 *   -> energy_kWh                energy from the mains in the year
 *
 *   Equation: E = sum(P_i t_i)
 *   Must hold of hours: there must be as many hours as powers
 *   Must hold of hours: the hours must add up to at most a year, 8784 h
 *   Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs, 2001, energy costs (from
 *           memory of it)
 */
CUTWATER_API cutwater_status cutwater_annual_energy_from_power(const double *electrical_powers_kW,
                                                  size_t electrical_powers_kW_count, const double *hours_h,
                                                  size_t hours_h_count, double *energy_kWh, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_annual_energy_from_power_rows(size_t rows, const double *electrical_powers_kW,
                                                       size_t electrical_powers_kW_count, const double *hours_h,
                                                       size_t hours_h_count, cutwater_result_column energy_kWh,
                                                       cutwater_rows_report *report);

/*
 * Cost of a year's energy.
 *
 *   energy_kWh                   energy from the mains in the year; at least 0 kWh
 *   price_per_kWh                price of a kilowatt-hour, in any one currency; at least 0
 *   -> cost                      cost in that currency
 *
 *   Equation: C = c E
 *   Source: definition; common practice
 *   Caution: Charges for peak demand and reactive power are not in it.
 */
CUTWATER_API cutwater_status cutwater_annual_energy_cost(double energy_kWh, double price_per_kWh, double *cost,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_annual_energy_cost_rows(size_t rows, cutwater_column energy_kWh,
                                                 cutwater_column price_per_kWh, cutwater_result_column cost,
                                                 cutwater_rows_report *report);

/*
 * Carbon dioxide that goes with an amount of energy.
 *
 *   energy_kWh                   energy from the mains; at least 0 kWh
 *   emission_factor_kgkWh        emissions of the supply for each unit of energy, of its year and country; from 0 to 5
 *                                kg/kWh
 *   -> emission_kg               mass of carbon dioxide
 *
 *   Equation: m = f E
 *   Source: definition; common practice
 *   Caution: Emission factors change from year to year and by the way they are drawn up: state which was taken.
 */
CUTWATER_API cutwater_status cutwater_carbon_emission(double energy_kWh, double emission_factor_kgkWh, double *emission_kg,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_carbon_emission_rows(size_t rows, cutwater_column energy_kWh,
                                              cutwater_column emission_factor_kgkWh,
                                              cutwater_result_column emission_kg, cutwater_rows_report *report);

/*
 * Present value of a cost that returns every year, for one unit of it at today's prices.
 *
 *   interest_rate                interest a year; from -0.2 to 1
 *   years                        years of life; whole number, from 1 to 60
 *   inflation_rate               rise of prices a year; from -0.2 to 1; usually 0
 *   -> present_value_factor      factor on the yearly cost
 *
 *   Equation: F = q + q^2 + ... + q^n, q = (1 + p)/(1 + i)
 *   Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs: A Guide to LCC Analysis
 *           for Pumping Systems, 2001 (from memory of it; the four results of its example come out to the unit)
 *   Caution: Exact compounding, payments at the ends of the years, as in the guide's own example. Interest less
 *            inflation taken for one rate gives a little less.
 */
CUTWATER_API cutwater_status cutwater_present_value_factor(double interest_rate, double years, double inflation_rate,
                                              double *present_value_factor, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_present_value_factor_rows(size_t rows, cutwater_column interest_rate, cutwater_column years,
                                                   cutwater_column inflation_rate,
                                                   cutwater_result_column present_value_factor,
                                                   cutwater_rows_report *report);

/*
 * Present value of all that a pump costs over its life.
 *
 *   purchase                     initial cost: pump, motor, drive, pipework; at least 0
 *   installation                 installation and commissioning; at least 0
 *   energy                       energy a year, at today's price; at least 0
 *   operation                    operation a year: supervision; at least 0
 *   maintenance                  maintenance and repair a year; at least 0
 *   downtime                     loss of production a year; at least 0
 *   environment                  environmental cost a year; at least 0
 *   disposal                     decommissioning at the end, at today's price; at least 0
 *   interest_rate                interest a year; from -0.2 to 1
 *   years                        years of life; whole number, from 1 to 60
 *   inflation_rate               rise of prices a year; from -0.2 to 1; usually 0
 *   energy_price_rise            rise of the energy price a year over and above inflation; from -0.2 to 1; usually 0
 *   -> life_cycle_cost           present value of all costs
 *   -> energy_present_value      of which energy
 *
 *   Equation: LCC = C_ic + C_in + F_e C_e + F (C_o + C_m + C_s + C_env) + q^n C_d; F = q + ... + q^n, q = (1 + p)/(1 +
 *             i); F_e the same with q (1 + p_e)
 *   Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs: A Guide to LCC Analysis
 *           for Pumping Systems, 2001 (from memory of it; the four results of its example come out to the unit)
 *   Caution: Exact compounding, payments at the ends of the years, as in the guide's own example. Interest less
 *            inflation taken for one rate gives a little less.
 *   Caution: All sums in one currency, at the prices of the same day.
 */
CUTWATER_API cutwater_status cutwater_life_cycle_cost(double purchase, double installation, double energy, double operation,
                                         double maintenance, double downtime, double environment, double disposal,
                                         double interest_rate, double years, double inflation_rate,
                                         double energy_price_rise, double *life_cycle_cost,
                                         double *energy_present_value, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_life_cycle_cost_rows(size_t rows, cutwater_column purchase, cutwater_column installation,
                                              cutwater_column energy, cutwater_column operation,
                                              cutwater_column maintenance, cutwater_column downtime,
                                              cutwater_column environment, cutwater_column disposal,
                                              cutwater_column interest_rate, cutwater_column years,
                                              cutwater_column inflation_rate, cutwater_column energy_price_rise,
                                              cutwater_result_column life_cycle_cost,
                                              cutwater_result_column energy_present_value,
                                              cutwater_rows_report *report);

/*
 * Years until the savings of every year have repaid an outlay.
 *
 *   outlay                       what the measure costs more than going on as before, now; at least 0
 *   yearly_saving                what it saves a year, at the end of each year; above 0
 *   interest_rate                interest a year; 0 for simple payback; from 0 to 1; usually 0
 *   -> payback_time              years; parts of a year by the same formula
 *
 *   Equation: n = C/S for i = 0; n = -ln(1 - i C/S)/ln(1 + i)
 *   Must hold of yearly_saving: the savings of a year must be more than a year's interest on the outlay, or it is never
 *                               repaid
 *   Source: present value of equal payments, solved for their number; common practice
 *   Caution: Simple payback leaves out interest and all that comes after; to choose between measures compare
 *            life_cycle_cost.
 */
CUTWATER_API cutwater_status cutwater_payback_time(double outlay, double yearly_saving, double interest_rate, double *payback_time,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_payback_time_rows(size_t rows, cutwater_column outlay, cutwater_column yearly_saving,
                                           cutwater_column interest_rate, cutwater_result_column payback_time,
                                           cutwater_rows_report *report);

/*
 * Shaft power spent on the head that a throttle valve destroys.
 *
 *   flows_m3h                    flows of the pump curve's points; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the curve's points; at least 2 points; any
 *   efficiencies                 pump efficiencies at the curve's points; 0 at no flow; at least 2 points; from 0 to 1
 *   static_head_m                system head at no flow: levels and the vessels' pressures; any
 *   resistance_h2m5              system losses over the square of the flow, the valve open; at least 0 h2/m5
 *   flow_m3h                     flow wanted, less than the unthrottled duty; above 0 m3/h
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; usually 998.2
 *   -> power_loss_kW             shaft power that goes into the valve
 *   -> valve_head_m              head lost in the valve
 *
 *   Equation: P_v = rho g Q h_v/eta(Q), h_v = H(Q) - (H_s + k Q^2)
 *   Must hold of heads: there must be as many heads as flows
 *   Must hold of efficiencies: there must be as many efficiencies as flows
 *   Source: energy balance at the duty of the pump's and the system's curves; Hydraulic Institute, Europump and US
 *           Department of Energy, Variable Speed Pumping, 2004 (from memory of it)
 *   Caution: Not all of it can be saved: another pump, trim or speed has its own efficiency at the duty.
 */
CUTWATER_API cutwater_status cutwater_throttling_power_loss(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                               size_t heads_m_count, const double *efficiencies,
                                               size_t efficiencies_count, double static_head_m,
                                               double resistance_h2m5, double flow_m3h, double density_kgm3,
                                               double *power_loss_kW, double *valve_head_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_throttling_power_loss_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                    const double *heads_m, size_t heads_m_count,
                                                    const double *efficiencies, size_t efficiencies_count,
                                                    cutwater_column static_head_m, cutwater_column resistance_h2m5,
                                                    cutwater_column flow_m3h, cutwater_column density_kgm3,
                                                    cutwater_result_column power_loss_kW,
                                                    cutwater_result_column valve_head_m, cutwater_rows_report *report);

/*
 * Power that speed control saves at a flow against throttling.
 *
 *   flows_m3h                    flows of the pump curve's points; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the curve's points; at least 2 points; any
 *   efficiencies                 pump efficiencies at the curve's points; 0 at no flow; at least 2 points; from 0 to 1
 *   speed_rpm                    speed of that curve; above 0 up to 100000 1/min
 *   static_head_m                system head at no flow: levels and the vessels' pressures; any
 *   resistance_h2m5              system losses over the square of the flow, the valve open; at least 0 h2/m5
 *   flow_m3h                     flow wanted, less than the unthrottled duty; above 0 m3/h
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; usually 998.2
 *   drive_efficiency             efficiency of the converter at that load; 1 leaves its losses out; above 0 up to 1;
 *                                usually 1
 *   -> saving_kW                 power saved; negative when the converter loses more than the speed gains
 *   -> reduced_speed_rpm         speed that gives the duty with the valve open
 *   -> throttled_power_kW        shaft power at full speed, throttled
 *   -> controlled_power_kW       shaft power at the reduced speed, over the converter's efficiency
 *
 *   Equation: dP = rho g Q H(Q)/eta(Q) - rho g Q H_sys/(eta(Q_x) eta_D); H_sys = H_s + k Q^2; n' = n Q/Q_x, where H =
 *             H_sys (Q_x/Q)^2 on the curve
 *   Must hold of heads: there must be as many heads as flows
 *   Must hold of efficiencies: there must be as many efficiencies as flows
 *   Source: energy balance at the duty of the pump's and the system's curves; Hydraulic Institute, Europump and US
 *           Department of Energy, Variable Speed Pumping, 2004 (from memory of it)
 *   Caution: The affinity laws scale a pump's curve, not a system's duty: with static head the new duty is where the
 *            scaled curve meets the system curve.
 *   Caution: Efficiency is taken as unchanged along the similarity parabola; motor losses at part load are left out.
 *   Caution: Mind the least speed of the motor's cooling, the seal and the bearings, and resonances in the range.
 */
CUTWATER_API cutwater_status cutwater_speed_control_saving(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                              size_t heads_m_count, const double *efficiencies,
                                              size_t efficiencies_count, double speed_rpm, double static_head_m,
                                              double resistance_h2m5, double flow_m3h, double density_kgm3,
                                              double drive_efficiency, double *saving_kW, double *reduced_speed_rpm,
                                              double *throttled_power_kW, double *controlled_power_kW,
                                              cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_speed_control_saving_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                   const double *heads_m, size_t heads_m_count,
                                                   const double *efficiencies, size_t efficiencies_count,
                                                   cutwater_column speed_rpm, cutwater_column static_head_m,
                                                   cutwater_column resistance_h2m5, cutwater_column flow_m3h,
                                                   cutwater_column density_kgm3, cutwater_column drive_efficiency,
                                                   cutwater_result_column saving_kW,
                                                   cutwater_result_column reduced_speed_rpm,
                                                   cutwater_result_column throttled_power_kW,
                                                   cutwater_result_column controlled_power_kW,
                                                   cutwater_rows_report *report);

/*
 * Energy of a year's duty profile, the pump throttled, speed-controlled or switched on and off.
 *
 *   flows_m3h                    flows of the pump curve's points; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the curve's points; at least 2 points; any
 *   efficiencies                 pump efficiencies at the curve's points; 0 at no flow; at least 2 points; from 0 to 1
 *   static_head_m                system head at no flow: levels and the vessels' pressures; any
 *   resistance_h2m5              system losses over the square of the flow, the valve open; at least 0 h2/m5
 *   profile_flows_m3h            flow wanted at each point of the duty profile; 0 while the pump stands still; at least
 *                                1 points; at least 0 m3/h
 *   hours_h                      hours a year at each point of the profile; at least 1 points; at least 0 h
 *   control                      throttling at full speed; speed, by a frequency converter; on-off, at the unthrottled
 *                                duty into a tank: one of "throttling" "speed" "on-off"
 *   motor_rating_kW              rated output of the motor; from 0.12 to 1000 kW
 *   motor_efficiency             efficiency of the motor at its rated output; above 0 up to 1
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; usually 998.2
 *   drive_efficiency             efficiency of the converter at full load; of use for speed control only; above 0 up to
 *                                1; usually 0.96
 *   constant_loss_share          share of the motor's full-load losses that does not change with load; 0.36 puts its
 *                                best efficiency at 75 % load; from 0 to 1; usually 0.36
 *   -> energy_kWh                energy from the mains in the year
 *   -> volume_m3                 volume pumped in the year
 *   -> specific_energy_kWhm3     energy for each volume, mean of the year
 *   -> running_time_h            hours that the pump runs in the year
 *   -> least_speed_ratio         lowest speed over full speed; 1 without speed control
 *
 *   Equation: E = sum(P_el,j t_run,j). Throttling: P = rho g Q_j H(Q_j)/eta(Q_j). Speed: P = rho g Q_j H_sys/eta(Q_x),
 *             H_sys = H_s + k Q_j^2 = H(Q_x) (Q_j/Q_x)^2, n'/n = Q_j/Q_x. On-off: P at the duty Q_d for t_run,j = t_j
 *             Q_j/Q_d. Motor: P_M = P + P_N (1/eta_N - 1)(c + (1 - c) x^2), x = (P/P_N)/(n'/n). P_el = P_M; with a
 *             converter P_el = P_M + (P_N/eta_N)(1/eta_D - 1) l(y)/l(1), y = P_M eta_N/P_N (0.016 at least), l(y) = y
 *             (1/eta_T(y) - 1), eta_T from drive_efficiency at P_N
 *   Must hold of heads: there must be as many heads as flows
 *   Must hold of efficiencies: there must be as many efficiencies as flows
 *   Must hold of hours: there must be as many hours as flows of the profile
 *   Must hold of hours: the hours must add up to at most a year, 8784 h
 *   Must hold of profile_flows: the profile must pump something: give at least one flow above 0 with hours above 0
 *   Source: energy balance at the meeting of pump and system curve, as for speed_control_saving; motor losses a constant
 *           part and a part with the square of the load: IEC TS 60034-31, efficiency at part load (from memory of it);
 *           best efficiency near 75 % load: US Department of Energy, Determining Electric Motor Load and Efficiency
 *           (from memory of it), common practice; converter losses: see drive_efficiency; on-off: volume balance, common
 *           practice
 *   Caution: On-off: a tank takes up the difference between profile and pump; its change of level, starting losses and
 *            the permitted starts an hour are left out.
 *   Caution: Speed: the pump's efficiency is taken as unchanged along the similarity parabola, the affinity laws down to
 *            a quarter of the speed.
 *   Caution: Speed: the motor's constant losses are held at their value of full speed, which is rather too much, and the
 *            losses from the converter's harmonics left out, which is too little.
 *   Caution: The converter's losses at part load follow a representative table for 2.2 to 300 kW, the nearest end
 *            beyond: take the maker's where they are known.
 *   Caution: Nothing is counted while the pump stands still; converters and controls on standby take a little.
 *   Caution: Mind the least speed of the motor's cooling, the seal and the bearings, and the pump's least flow when
 *            throttled.
 */
CUTWATER_API cutwater_status cutwater_duty_profile_energy(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                             size_t heads_m_count, const double *efficiencies,
                                             size_t efficiencies_count, double static_head_m, double resistance_h2m5,
                                             const double *profile_flows_m3h, size_t profile_flows_m3h_count,
                                             const double *hours_h, size_t hours_h_count, const char *control,
                                             double motor_rating_kW, double motor_efficiency, double density_kgm3,
                                             double drive_efficiency, double constant_loss_share, double *energy_kWh,
                                             double *volume_m3, double *specific_energy_kWhm3, double *running_time_h,
                                             double *least_speed_ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_duty_profile_energy_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                  const double *heads_m, size_t heads_m_count,
                                                  const double *efficiencies, size_t efficiencies_count,
                                                  cutwater_column static_head_m, cutwater_column resistance_h2m5,
                                                  const double *profile_flows_m3h, size_t profile_flows_m3h_count,
                                                  const double *hours_h, size_t hours_h_count, const char *control,
                                                  cutwater_column motor_rating_kW, cutwater_column motor_efficiency,
                                                  cutwater_column density_kgm3, cutwater_column drive_efficiency,
                                                  cutwater_column constant_loss_share,
                                                  cutwater_result_column energy_kWh, cutwater_result_column volume_m3,
                                                  cutwater_result_column specific_energy_kWhm3,
                                                  cutwater_result_column running_time_h,
                                                  cutwater_result_column least_speed_ratio,
                                                  cutwater_rows_report *report);

/*
 * Pump power at another flow by the cube law: speed control on a system that is all friction, refused where there is
 * static head.
 *
 *   power_kW                     pump power input at the flow; at least 0 kW
 *   flow_m3h                     duty flow at that power; above 0 m3/h
 *   new_flow_m3h                 flow wanted by a change of speed; above 0 m3/h
 *   static_head_m                system head at no flow: levels and the vessels' pressures; must be 0; any
 *   -> new_power_kW              pump power input at the flow wanted
 *
 *   Equation: P' = P (Q'/Q)^3, where H_s = 0, so that Q'/Q = n'/n
 *   Must hold of static_head: the cube law holds only where the system's head is all friction: against static head the
 *                             flow falls faster than the speed, the head does not fall with its square, and the law
 *                             promises savings that do not come; use speed_control_saving or duty_profile_energy
 *   Must hold of new_flow: the new flow must be 0.25 to 2 times the flow: beyond that the affinity laws are not relied
 *                          upon here
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25
 *           to 2: set here
 *   Caution: Never on a system with static head: the duty moves off the similarity parabola. Control valves and
 *            equipment that hold a fixed pressure count as static head.
 *   Caution: Pump efficiency is taken as unchanged; motor and converter losses do not follow the cube and are left out.
 */
CUTWATER_API cutwater_status cutwater_cube_law_power(double power_kW, double flow_m3h, double new_flow_m3h, double static_head_m,
                                        double *new_power_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_cube_law_power_rows(size_t rows, cutwater_column power_kW, cutwater_column flow_m3h,
                                             cutwater_column new_flow_m3h, cutwater_column static_head_m,
                                             cutwater_result_column new_power_kW, cutwater_rows_report *report);

/* ---- Viscous liquids ---- */

/*
 * Parameter B of the viscosity correction, from the pump's best efficiency point on water.
 *
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; below 1 mm2/s nothing is to be corrected,
 *                                above 3000 mm2/s the method does not hold; from 1 to 3000 mm2/s
 *   best_efficiency_flow_m3h     flow at best efficiency on water, of the whole pump, at this diameter and speed; above
 *                                0 m3/h
 *   best_efficiency_head_m       head of one stage at best efficiency on water; above 0 m
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   -> viscosity_parameter       up to 1 flow and head stay as on water; from 40 on the method does not hold
 *
 *   Equation: B = 16.5 nu^0.50 H_BEP^0.0625/(Q_BEP^0.375 n^0.25), in mm2/s, m, m3/h, 1/min
 *   Must hold of speed: the specific speed n Q^0.5/H^0.75 (1/min, m3/s, m a stage) must not exceed 60: the method is for
 *                       impellers of radial type
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature)
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow.
 *   Caution: The standard's constants for m3/h and for US gal/min differ by 0.4 %: the metric one is used, whatever unit
 *            the input came in.
 */
CUTWATER_API cutwater_status cutwater_viscosity_parameter(double viscosity_mm2s, double best_efficiency_flow_m3h,
                                             double best_efficiency_head_m, double speed_rpm,
                                             double *viscosity_parameter, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscosity_parameter_rows(size_t rows, cutwater_column viscosity_mm2s,
                                                  cutwater_column best_efficiency_flow_m3h,
                                                  cutwater_column best_efficiency_head_m, cutwater_column speed_rpm,
                                                  cutwater_result_column viscosity_parameter,
                                                  cutwater_rows_report *report);

/*
 * Parameter B of the viscosity correction, estimated from a duty while no pump is chosen.
 *
 *   flow_m3h                     flow wanted of the viscous liquid; above 0 m3/h
 *   head_m                       head wanted of the viscous liquid, of one stage; above 0 m
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; below 1 mm2/s nothing is to be corrected,
 *                                above 3000 mm2/s the method does not hold; from 1 to 3000 mm2/s
 *   -> viscosity_parameter       estimate; repeat with viscosity_parameter when the pump is known
 *
 *   Equation: B = 2.80 nu^0.50/(Q_vis^0.25 H_vis^0.125), in mm2/s, m3/h, m
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature)
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow.
 *   Caution: The standard's constants for m3/h and for US gal/min differ by 0.4 %: the metric one is used, whatever unit
 *            the input came in.
 */
CUTWATER_API cutwater_status cutwater_viscosity_parameter_from_duty(double flow_m3h, double head_m, double viscosity_mm2s,
                                                       double *viscosity_parameter, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscosity_parameter_from_duty_rows(size_t rows, cutwater_column flow_m3h,
                                                            cutwater_column head_m, cutwater_column viscosity_mm2s,
                                                            cutwater_result_column viscosity_parameter,
                                                            cutwater_rows_report *report);

/*
 * Flow of a pump on a viscous liquid over its flow on water.
 *
 *   viscosity_parameter          viscosity parameter B; from 40 on the correction is too uncertain and the losses have
 *                                to be analysed one by one; above 0 to below 40
 *   -> flow_ratio                also the ratio of heads at best efficiency
 *
 *   Equation: C_Q = 2.71^(-0.165 (log10 B)^3.15) for B > 1; 1 for B <= 1
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature)
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow.
 */
CUTWATER_API cutwater_status cutwater_viscous_flow_ratio(double viscosity_parameter, double *flow_ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscous_flow_ratio_rows(size_t rows, cutwater_column viscosity_parameter,
                                                 cutwater_result_column flow_ratio, cutwater_rows_report *report);

/*
 * Head of a pump on a viscous liquid over its head on water, at a point of its curve.
 *
 *   viscosity_parameter          viscosity parameter B; from 40 on the correction is too uncertain and the losses have
 *                                to be analysed one by one; above 0 to below 40
 *   flow_ratio                   the point's flow on water over the best efficiency flow on water; from 0 to 1.5;
 *                                usually 1
 *   -> head_ratio                1 at closed valve, falling with the flow
 *
 *   Equation: C_H = 1 - (1 - C_Q)(Q_W/Q_BEP)^0.75 for B > 1; 1 for B <= 1
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature)
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow.
 */
CUTWATER_API cutwater_status cutwater_viscous_head_ratio(double viscosity_parameter, double flow_ratio, double *head_ratio,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscous_head_ratio_rows(size_t rows, cutwater_column viscosity_parameter,
                                                 cutwater_column flow_ratio, cutwater_result_column head_ratio,
                                                 cutwater_rows_report *report);

/*
 * Efficiency of a pump on a viscous liquid over its efficiency on water.
 *
 *   viscosity_parameter          viscosity parameter B; from 40 on the correction is too uncertain and the losses have
 *                                to be analysed one by one; above 0 to below 40
 *   best_efficiency              best efficiency on water; counts for B up to 1 only; above 0 to below 1
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; counts for B up to 1 only; from 1 to 3000
 *                                mm2/s
 *   water_viscosity_mm2s         kinematic viscosity of the water that the pump was tested on; from 0.2 to 2 mm2/s;
 *                                usually 1
 *   -> efficiency_ratio          the same at every flow
 *
 *   Equation: C_eta = B^(-0.0547 B^0.69) for B > 1; [1 - (1 - eta_BEP)(nu/nu_W)^0.07]/eta_BEP for B <= 1
 *   Must hold of viscosity: the liquid must not be thinner than the water of the pump's test: no correction is needed
 *                           then
 *   Must hold of best_efficiency: the method's formula for B up to 1 leaves no efficiency with so low a best efficiency
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it; the branch for B > 1
 *           checked against its worked examples, the branch for B up to 1 not)
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow.
 *   Caution: The method's two branches do not join at B = 1: the efficiency ratio jumps there by a few per cent, as the
 *            standard prints it.
 */
CUTWATER_API cutwater_status cutwater_viscous_efficiency_ratio(double viscosity_parameter, double best_efficiency,
                                                  double viscosity_mm2s, double water_viscosity_mm2s,
                                                  double *efficiency_ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscous_efficiency_ratio_rows(size_t rows, cutwater_column viscosity_parameter,
                                                       cutwater_column best_efficiency,
                                                       cutwater_column viscosity_mm2s,
                                                       cutwater_column water_viscosity_mm2s,
                                                       cutwater_result_column efficiency_ratio,
                                                       cutwater_rows_report *report);

/*
 * Flow, head, efficiency and power on a viscous liquid, from one point of the curve on water.
 *
 *   flow_m3h                     flow of the point on water; above 0 m3/h
 *   head_m                       head of the point on water, of the whole pump; above 0 m
 *   efficiency                   efficiency of the point on water; above 0 to below 1
 *   best_efficiency_flow_m3h     flow at best efficiency on water, of the whole pump, at this diameter and speed; above
 *                                0 m3/h
 *   best_efficiency_head_m       head of one stage at best efficiency on water; above 0 m
 *   best_efficiency              best efficiency on water; above 0 to below 1
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; below 1 mm2/s nothing is to be corrected,
 *                                above 3000 mm2/s the method does not hold; from 1 to 3000 mm2/s
 *   density_kgm3                 density of the viscous liquid; from 50 to 25000 kg/m3
 *   water_viscosity_mm2s         kinematic viscosity of the water that the pump was tested on; from 0.2 to 2 mm2/s;
 *                                usually 1
 *   -> viscous_flow_m3h          flow of that point on the viscous liquid
 *   -> viscous_head_m            head of that point on the viscous liquid
 *   -> viscous_efficiency        efficiency of that point on the viscous liquid
 *   -> power_kW                  pump power input there
 *
 *   Equation: Q_vis = C_Q Q_W; H_vis = C_H H_W; eta_vis = C_eta eta_W; P_vis = rho g Q_vis H_vis/eta_vis
 *   Must hold of speed: the specific speed n Q^0.5/H^0.75 (1/min, m3/s, m a stage) must not exceed 60: the method is for
 *                       impellers of radial type
 *   Must hold of viscosity: the viscosity parameter B must stay below 40: beyond it the correction is too uncertain
 *   Must hold of flow: it must not exceed 1.5 times the best efficiency flow: the method is for the normal operating
 *                      range
 *   Must hold of efficiency: it must not exceed the best efficiency
 *   Must hold of viscosity: the liquid must not be thinner than the water of the pump's test: no correction is needed
 *                           then
 *   Must hold of best_efficiency: the method's formula for B up to 1 leaves no efficiency with so low a best efficiency
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature)
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow.
 *   Caution: The standard's constants for m3/h and for US gal/min differ by 0.4 %: the metric one is used, whatever unit
 *            the input came in.
 *   Caution: The method's two branches do not join at B = 1: the efficiency ratio jumps there by a few per cent, as the
 *            standard prints it.
 *   Caution: Losses of seals, bearings and magnetic couplings rise with viscosity too and are not in it; check NPSH on
 *            the viscous liquid.
 */
CUTWATER_API cutwater_status cutwater_viscous_performance(double flow_m3h, double head_m, double efficiency,
                                             double best_efficiency_flow_m3h, double best_efficiency_head_m,
                                             double best_efficiency, double speed_rpm, double viscosity_mm2s,
                                             double density_kgm3, double water_viscosity_mm2s,
                                             double *viscous_flow_m3h, double *viscous_head_m,
                                             double *viscous_efficiency, double *power_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscous_performance_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                  cutwater_column efficiency,
                                                  cutwater_column best_efficiency_flow_m3h,
                                                  cutwater_column best_efficiency_head_m,
                                                  cutwater_column best_efficiency, cutwater_column speed_rpm,
                                                  cutwater_column viscosity_mm2s, cutwater_column density_kgm3,
                                                  cutwater_column water_viscosity_mm2s,
                                                  cutwater_result_column viscous_flow_m3h,
                                                  cutwater_result_column viscous_head_m,
                                                  cutwater_result_column viscous_efficiency,
                                                  cutwater_result_column power_kW, cutwater_rows_report *report);

/*
 * Flow and head on water to choose a pump by, for a duty on a viscous liquid.
 *
 *   flow_m3h                     flow wanted of the viscous liquid; above 0 m3/h
 *   head_m                       head wanted of the viscous liquid, of one stage; above 0 m
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; below 1 mm2/s nothing is to be corrected,
 *                                above 3000 mm2/s the method does not hold; from 1 to 3000 mm2/s
 *   -> water_flow_m3h            flow to look for on the curve on water
 *   -> water_head_m              head to look for on the curve on water, of one stage
 *
 *   Equation: Q_W = Q_vis/C_Q; H_W = H_vis/C_H; C_Q = C_H = 2.71^(-0.165 (log10 B)^3.15), B from
 *             viscosity_parameter_from_duty
 *   Must hold of viscosity: the viscosity parameter B must stay below 40: beyond it the correction is too uncertain
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature)
 *   Caution: A first choice only: check the pump found with viscous_performance at its own best efficiency point and
 *            speed.
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow.
 *   Caution: The standard's constants for m3/h and for US gal/min differ by 0.4 %: the metric one is used, whatever unit
 *            the input came in.
 */
CUTWATER_API cutwater_status cutwater_water_equivalent_duty(double flow_m3h, double head_m, double viscosity_mm2s,
                                               double *water_flow_m3h, double *water_head_m,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_water_equivalent_duty_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                    cutwater_column viscosity_mm2s,
                                                    cutwater_result_column water_flow_m3h,
                                                    cutwater_result_column water_head_m, cutwater_rows_report *report);

/* ---- Solids-bearing liquids ---- */

/*
 * Head of a pump in metres of slurry over its head in metres of water at the same flow.
 *
 *   solids_mass_fraction         mass of solids over mass of slurry; from 0 to 0.65
 *   solids_relative_density      density of the solids over that of the liquid; above 1 up to 6.3
 *   median_size_mm               size that half of the solids' mass lies below; above 0 up to 20 mm
 *   impeller_diameter_mm         diameter of the impeller; the tests had 150 to 850 mm; from 150 to 850 mm
 *   correlation                  whose correlation to use: one of "Engin and Gur" "Cave"; usually "Engin and Gur"
 *   -> head_ratio                head on slurry over head on water
 *
 *   Equation: 1 - K; Engin and Gur: K = 2.705 C_w (s - 1)^0.64 (d50/D)^0.313; Cave: K = 0.0385 (s - 1)(1 + 4/s) C_w
 *             ln(d50/0.0227 mm)
 *   Must hold of median_size: Cave's correlation begins at 0.0227 mm: finer solids do not settle and act as a thicker
 *                             liquid
 *   Must hold of solids_mass_fraction: more than 60 % would be lost, outside anything that was tested
 *   Source: T. Engin and M. Gur, J. Fluids Eng. 125 (2003) 149-157 (abstract read, formula from memory); I. Cave,
 *           Hydrotransport 4, BHRA 1976, paper H3 (from memory)
 *   Caution: Settling, narrowly graded solids in a thin liquid only; Engin and Gur report a mean deviation of 8 % of the
 *            head ratio and 12 % of the efficiency ratio. Not for pastes, clays or fibres.
 *   Caution: Cave's correlation knows no pump size and gives too much loss for large pumps: with sand of 2.2 mm and 35 %
 *            by volume in an impeller of 625 mm it takes off 43 %, Engin and Gur 37 %, where up to 30 % was measured (A.
 *            Sellgren et al. 2000, excerpt read).
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_slurry_head_ratio(double solids_mass_fraction, double solids_relative_density,
                                           double median_size_mm, double impeller_diameter_mm,
                                           const char *correlation, double *head_ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_slurry_head_ratio_rows(size_t rows, cutwater_column solids_mass_fraction,
                                                cutwater_column solids_relative_density,
                                                cutwater_column median_size_mm, cutwater_column impeller_diameter_mm,
                                                const char *correlation, cutwater_result_column head_ratio,
                                                cutwater_rows_report *report);

/*
 * Efficiency of a pump on slurry over its efficiency on water; both authors take the head ratio for it.
 *
 *   solids_mass_fraction         mass of solids over mass of slurry; from 0 to 0.65
 *   solids_relative_density      density of the solids over that of the liquid; above 1 up to 6.3
 *   median_size_mm               size that half of the solids' mass lies below; above 0 up to 20 mm
 *   impeller_diameter_mm         diameter of the impeller; the tests had 150 to 850 mm; from 150 to 850 mm
 *   correlation                  whose correlation to use: one of "Engin and Gur" "Cave"; usually "Engin and Gur"
 *   -> efficiency_ratio          efficiency on slurry over efficiency on water
 *
 *   Equation: 1 - K; Engin and Gur: K = 2.705 C_w (s - 1)^0.64 (d50/D)^0.313; Cave: K = 0.0385 (s - 1)(1 + 4/s) C_w
 *             ln(d50/0.0227 mm)
 *   Must hold of median_size: Cave's correlation begins at 0.0227 mm: finer solids do not settle and act as a thicker
 *                             liquid
 *   Must hold of solids_mass_fraction: more than 60 % would be lost, outside anything that was tested
 *   Source: T. Engin and M. Gur, J. Fluids Eng. 125 (2003) 149-157 (abstract read, formula from memory); I. Cave,
 *           Hydrotransport 4, BHRA 1976, paper H3 (from memory)
 *   Caution: Settling, narrowly graded solids in a thin liquid only; Engin and Gur report a mean deviation of 8 % of the
 *            head ratio and 12 % of the efficiency ratio. Not for pastes, clays or fibres.
 *   Caution: Cave's correlation knows no pump size and gives too much loss for large pumps: with sand of 2.2 mm and 35 %
 *            by volume in an impeller of 625 mm it takes off 43 %, Engin and Gur 37 %, where up to 30 % was measured (A.
 *            Sellgren et al. 2000, excerpt read).
 *   Caution: Impellers above about 0.4 m usually lose less efficiency than head; above about 20 % by volume efficiency
 *            may fall more than head (common practice; a handbook read in excerpt).
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_slurry_efficiency_ratio(double solids_mass_fraction, double solids_relative_density,
                                                 double median_size_mm, double impeller_diameter_mm,
                                                 const char *correlation, double *efficiency_ratio,
                                                 cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_slurry_efficiency_ratio_rows(size_t rows, cutwater_column solids_mass_fraction,
                                                      cutwater_column solids_relative_density,
                                                      cutwater_column median_size_mm,
                                                      cutwater_column impeller_diameter_mm, const char *correlation,
                                                      cutwater_result_column efficiency_ratio,
                                                      cutwater_rows_report *report);

/*
 * Power, head and efficiency of a pump on slurry, from a point of its curve on water.
 *
 *   flow_m3h                     flow of the slurry; above 0 m3/h
 *   water_head_m                 head on water at that flow; above 0 m
 *   water_efficiency             efficiency on water at that flow; above 0 up to 1
 *   slurry_density_kgm3          density of the slurry; from 50 to 25000 kg/m3
 *   head_ratio                   as from slurry_head_ratio; above 0 up to 1
 *   efficiency_ratio             as from slurry_efficiency_ratio; above 0 up to 1
 *   -> power_kW                  pump power input
 *   -> slurry_head_m             head in metres of slurry
 *   -> slurry_efficiency         efficiency on slurry
 *
 *   Equation: H_m = HR H_w; eta_m = ER eta_w; P = rho_m g Q H_m/eta_m
 *   Source: ISO 17769-1:2012, pump power input (from memory of it), with the ratios put in
 *   Caution: The head is in metres of slurry: do not multiply it by the relative density again.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_slurry_power(double flow_m3h, double water_head_m, double water_efficiency,
                                      double slurry_density_kgm3, double head_ratio, double efficiency_ratio,
                                      double *power_kW, double *slurry_head_m, double *slurry_efficiency,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_slurry_power_rows(size_t rows, cutwater_column flow_m3h, cutwater_column water_head_m,
                                           cutwater_column water_efficiency, cutwater_column slurry_density_kgm3,
                                           cutwater_column head_ratio, cutwater_column efficiency_ratio,
                                           cutwater_result_column power_kW, cutwater_result_column slurry_head_m,
                                           cutwater_result_column slurry_efficiency, cutwater_rows_report *report);

/*
 * Curves of head and efficiency on a slurry, from those on water.
 *
 *   flows_m3h                    flows of the points on water; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the points on water; at least 2 points; any
 *   efficiencies                 efficiencies of the points on water; at least 2 points; from 0 to 1
 *   head_ratio                   as from slurry_head_ratio, or from the pump maker's tests; above 0 up to 1
 *   efficiency_ratio             as from slurry_efficiency_ratio, or from the pump maker's tests; above 0 up to 1
 *   -> slurry_flows_m3h          flows of the points on the slurry: those on water
 *   -> slurry_heads_m            heads in metres of slurry
 *   -> slurry_efficiencies       efficiencies on the slurry
 *
 *   Equation: Q = Q; H_m = HR H_w; eta_m = ER eta_w
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of efficiencies: both series must have the same number of points
 *   Source: definition of the head and efficiency ratios at equal flow and speed, ANSI/HI 12.1-12.6 (from memory of it);
 *           the same at every flow: common practice
 *   Caution: The head is in metres of slurry: do not multiply it by the relative density again.
 *   Caution: One pair of ratios for the whole curve is a simplification: at small flows the loss may be greater. NPSH3
 *            on the slurry is not found here; it is no less than on water.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_curve_slurry(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                      size_t heads_m_count, const double *efficiencies, size_t efficiencies_count,
                                      double head_ratio, double efficiency_ratio, double *slurry_flows_m3h,
                                      size_t slurry_flows_m3h_capacity, size_t *slurry_flows_m3h_count,
                                      double *slurry_heads_m, size_t slurry_heads_m_capacity,
                                      size_t *slurry_heads_m_count, double *slurry_efficiencies,
                                      size_t slurry_efficiencies_capacity, size_t *slurry_efficiencies_count,
                                      cutwater_refusal *refusal);

/*
 * Velocity at which a single sphere sinks in still liquid.
 *
 *   particle_size_mm             diameter of the sphere; above 0 up to 1000 mm
 *   solids_density_kgm3          density of the solids; from 50 to 25000 kg/m3
 *   liquid_density_kgm3          density of the liquid; from 50 to 25000 kg/m3
 *   dynamic_viscosity_mPas       dynamic viscosity of the liquid; above 0 mPa s
 *   -> velocity_ms               velocity of sinking, alone and far from walls
 *   -> reynolds_number           Reynolds number of the sphere
 *   -> drag_coefficient          drag coefficient of the sphere
 *
 *   Equation: w = sqrt(4 g d (rho_s - rho_l)/(3 C_D rho_l)), C_D = 24/Re (1 + 0.1806 Re^0.6459) + 0.4251/(1 +
 *             6880.95/Re)
 *   Must hold of solids_density: the solids must be denser than the liquid, or they float
 *   Source: A. Haider and O. Levenspiel, Powder Technology 58 (1989) 63-70 (from memory of it; coefficients agree with
 *           the open-source library fluids 1.0.22)
 *   Caution: Grains that are no spheres sink more slowly, and all do in company: see hindered_settling_velocity.
 */
CUTWATER_API cutwater_status cutwater_settling_velocity(double particle_size_mm, double solids_density_kgm3,
                                           double liquid_density_kgm3, double dynamic_viscosity_mPas,
                                           double *velocity_ms, double *reynolds_number, double *drag_coefficient,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_settling_velocity_rows(size_t rows, cutwater_column particle_size_mm,
                                                cutwater_column solids_density_kgm3,
                                                cutwater_column liquid_density_kgm3,
                                                cutwater_column dynamic_viscosity_mPas,
                                                cutwater_result_column velocity_ms,
                                                cutwater_result_column reynolds_number,
                                                cutwater_result_column drag_coefficient, cutwater_rows_report *report);

/*
 * Velocity at which solids sink among each other.
 *
 *   settling_velocity_ms         velocity of one alone, as from settling_velocity; at least 0 m/s
 *   volume_fraction              volume of solids over volume of slurry; from 0 to 0.4
 *   reynolds_number              Reynolds number of one alone; from 0 to 260000
 *   -> velocity_ms               velocity of sinking in company
 *
 *   Equation: w_h = w (1 - C_v)^m, m = (4.7 + 0.41 Re^0.75)/(1 + 0.175 Re^0.75)
 *   Source: J. F. Richardson and W. N. Zaki 1954, exponent by P. N. Rowe, Chem. Eng. Sci. 42 (1987) 2795 (from memory of
 *           both)
 *   Caution: For solids of one size, far from walls; fine or flocculating ones sink otherwise.
 */
CUTWATER_API cutwater_status cutwater_hindered_settling_velocity(double settling_velocity_ms, double volume_fraction,
                                                    double reynolds_number, double *velocity_ms,
                                                    cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_hindered_settling_velocity_rows(size_t rows, cutwater_column settling_velocity_ms,
                                                         cutwater_column volume_fraction,
                                                         cutwater_column reynolds_number,
                                                         cutwater_result_column velocity_ms,
                                                         cutwater_rows_report *report);

/*
 * Mean velocity in a horizontal pipe below which solids settle out.
 *
 *   pipe_bore_mm                 inside diameter of the pipe; from 25 to 1000 mm
 *   solids_relative_density      density of the solids over that of the liquid; above 1 up to 8
 *   volume_fraction              volume of solids over volume of slurry; from 0.005 to 0.4
 *   median_size_mm               size that half of the solids' mass lies below; finer ones hardly settle; from 0.05 to
 *                                10 mm
 *   durand_factor                Durand's factor for sqrt(2 g D (s - 1)); 0: by the fit of Schiller and Herbich; from 0
 *                                to 2; usually 0
 *   -> velocity_ms               deposition velocity
 *   -> factor                    Durand's factor as used
 *
 *   Equation: V_D = F_L sqrt(2 g D (s - 1)), F_L = 1.3 C_v^0.125 (1 - e^(-6.9 d50/mm))
 *   Source: R. Durand and E. Condolios 1952; F_L by R. E. Schiller and P. E. Herbich, Handbook of Dredging Engineering,
 *           1991 (as reproduced in a public program, checked against B. E. Abulnaga, Slurry Systems Handbook, 2002,
 *           example 4-2)
 *   Caution: Keep the line above it by a margin, commonly 0.3 m/s or 10 to 20 %; for narrow grading in a horizontal
 *            pipe.
 *   Caution: The fit lies below Durand's own chart, whose factor for coarse sand of one size reaches 1.34 (from memory
 *            of it): give that factor to be safe.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_deposition_velocity(double pipe_bore_mm, double solids_relative_density,
                                             double volume_fraction, double median_size_mm, double durand_factor,
                                             double *velocity_ms, double *factor, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_deposition_velocity_rows(size_t rows, cutwater_column pipe_bore_mm,
                                                  cutwater_column solids_relative_density,
                                                  cutwater_column volume_fraction, cutwater_column median_size_mm,
                                                  cutwater_column durand_factor, cutwater_result_column velocity_ms,
                                                  cutwater_result_column factor, cutwater_rows_report *report);

/*
 * Life against erosion at another speed, over the life now.
 *
 *   speed_ratio                  new speed over the speed now; from 0.2 to 2
 *   exponent                     power of the velocity that wear goes with; 2 to 3.5 reported, 2.5 to 3 common practice;
 *                                from 1 to 5; usually 2.5
 *   -> life_ratio                life at the new speed over the life now
 *
 *   Equation: L'/L = (n'/n)^-x
 *   Source: erosive wear goes with a power of velocity, W. Wiedenroth 1984 (as quoted in trade literature, excerpt
 *           read); common practice
 *   Caution: Same pump, slurry and place on the curve. The exponent decides: take it from your own wear records where
 *            you can.
 */
CUTWATER_API cutwater_status cutwater_wear_life_ratio(double speed_ratio, double exponent, double *life_ratio,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_wear_life_ratio_rows(size_t rows, cutwater_column speed_ratio, cutwater_column exponent,
                                              cutwater_result_column life_ratio, cutwater_rows_report *report);

/* ---- Least flow and heating ---- */

/*
 * Warming of the liquid by the pump's losses, from head and efficiency.
 *
 *   head_m                       total head at the flow in question; above 0 m
 *   efficiency                   pump efficiency at that flow; above 0 up to 1
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   -> temperature_rise_K        warming from inlet to outlet
 *
 *   Equation: dT = g H (1/eta - 1)/c_p
 *   Source: energy balance; the relation of ANSI/HI 9.6.3 and of I. J. Karassik et al., Pump Handbook (from memory of
 *           both)
 *   Caution: Leaves out the heating by compression, which may be the larger part at high head: add
 *            compression_temperature_rise.
 *   Caution: Warmed liquid that comes back to the inlet lowers NPSH available: see allowed_temperature_rise.
 *   Caution: With one specific heat, and for a liquid that stays liquid: a rise of tens of kelvin tells that the flow is
 *            too small, not how hot it gets.
 */
CUTWATER_API cutwater_status cutwater_temperature_rise(double head_m, double efficiency, double specific_heat_kJkgK,
                                          double *temperature_rise_K, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_temperature_rise_rows(size_t rows, cutwater_column head_m, cutwater_column efficiency,
                                               cutwater_column specific_heat_kJkgK,
                                               cutwater_result_column temperature_rise_K,
                                               cutwater_rows_report *report);

/*
 * Warming of the liquid by compression alone, without any loss.
 *
 *   head_m                       total head; above 0 m
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   expansion_perK               thermal expansion of the liquid; negative for water below 4 degC; from -0.001 to 0.02
 *                                1/K
 *   inlet_temperature_degC       temperature at the inlet; above -273.15 degC
 *   -> temperature_rise_K        warming; to be added to temperature_rise
 *
 *   Equation: dT_c = g H beta T/c_p, T in kelvin
 *   Source: thermodynamics, dh = c_p dT + v (1 - beta T) dp (any textbook); checked against IAPWS-IF97 enthalpies of
 *           water to 2 %
 */
CUTWATER_API cutwater_status cutwater_compression_temperature_rise(double head_m, double specific_heat_kJkgK,
                                                      double expansion_perK, double inlet_temperature_degC,
                                                      double *temperature_rise_K, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_compression_temperature_rise_rows(size_t rows, cutwater_column head_m,
                                                           cutwater_column specific_heat_kJkgK,
                                                           cutwater_column expansion_perK,
                                                           cutwater_column inlet_temperature_degC,
                                                           cutwater_result_column temperature_rise_K,
                                                           cutwater_rows_report *report);

/*
 * Warming of the liquid by losses and compression together.
 *
 *   head_m                       total head at the flow in question; above 0 m
 *   efficiency                   pump efficiency at that flow; above 0 up to 1
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   expansion_perK               thermal expansion of the liquid; negative for water below 4 degC; from -0.001 to 0.02
 *                                1/K
 *   inlet_temperature_degC       temperature at the inlet; above -273.15 degC
 *   -> temperature_rise_K        warming from inlet to outlet
 *
 *   Equation: dT = g H (1/eta - 1)/c_p + g H beta T/c_p, T in kelvin
 *   Source: thermodynamics, dh = c_p dT + v (1 - beta T) dp (any textbook); checked against IAPWS-IF97 enthalpies of
 *           water to 2 %
 *   Caution: Warmed liquid that comes back to the inlet lowers NPSH available: see allowed_temperature_rise.
 */
CUTWATER_API cutwater_status cutwater_total_temperature_rise(double head_m, double efficiency, double specific_heat_kJkgK,
                                                double expansion_perK, double inlet_temperature_degC,
                                                double *temperature_rise_K, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_total_temperature_rise_rows(size_t rows, cutwater_column head_m, cutwater_column efficiency,
                                                     cutwater_column specific_heat_kJkgK,
                                                     cutwater_column expansion_perK,
                                                     cutwater_column inlet_temperature_degC,
                                                     cutwater_result_column temperature_rise_K,
                                                     cutwater_rows_report *report);

/*
 * Warming of the liquid by the pump's losses, from power and flow.
 *
 *   power_input_kW               pump power input at that flow; above 0 kW
 *   flow_m3h                     flow through the pump; above 0 m3/h
 *   head_m                       total head at that flow; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   -> temperature_rise_K        warming from inlet to outlet
 *
 *   Equation: dT = (P - rho g Q H)/(rho Q c_p)
 *   Must hold of power_input: it must not be less than the hydraulic power rho g Q H
 *   Source: energy balance; the relation of ANSI/HI 9.6.3 and of I. J. Karassik et al., Pump Handbook (from memory of
 *           both)
 *   Caution: Leaves out the heating by compression, which may be the larger part at high head: add
 *            compression_temperature_rise.
 *   Caution: Warmed liquid that comes back to the inlet lowers NPSH available: see allowed_temperature_rise.
 *   Caution: With one specific heat, and for a liquid that stays liquid: a rise of tens of kelvin tells that the flow is
 *            too small, not how hot it gets.
 */
CUTWATER_API cutwater_status cutwater_temperature_rise_at_flow(double power_input_kW, double flow_m3h, double head_m,
                                                  double density_kgm3, double specific_heat_kJkgK,
                                                  double *temperature_rise_K, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_temperature_rise_at_flow_rows(size_t rows, cutwater_column power_input_kW,
                                                       cutwater_column flow_m3h, cutwater_column head_m,
                                                       cutwater_column density_kgm3,
                                                       cutwater_column specific_heat_kJkgK,
                                                       cutwater_result_column temperature_rise_K,
                                                       cutwater_rows_report *report);

/*
 * Least flow that keeps the liquid's warming within what is allowed.
 *
 *   shutoff_power_kW             pump power input at closed valve; above 0 kW
 *   shutoff_head_m               total head at closed valve; 0 gives the handbooks' simpler, larger flow; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   allowed_rise_K               allowed warming; 8 K is common practice for cool water, otherwise by
 *                                allowed_temperature_rise; above 0 K
 *   -> flow_m3h                  least continuous flow for heating alone
 *
 *   Equation: Q_min = P_0/[rho (c_p dT + g H_0)]
 *   Source: energy balance with power and head as at closed valve; the handbooks' form, without g H_0, in I. J. Karassik
 *           et al., Pump Handbook, and ANSI/HI 9.6.3 (from memory of both)
 *   Caution: The thermal minimum is usually the smaller one: keep to the larger of this, the stable minimum and what the
 *            pump maker allows.
 *   Caution: Power at the small flow of a radial pump is a little above that at closed valve: add a margin.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_thermal_minimum_flow(double shutoff_power_kW, double shutoff_head_m, double density_kgm3,
                                              double specific_heat_kJkgK, double allowed_rise_K, double *flow_m3h,
                                              cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_thermal_minimum_flow_rows(size_t rows, cutwater_column shutoff_power_kW,
                                                   cutwater_column shutoff_head_m, cutwater_column density_kgm3,
                                                   cutwater_column specific_heat_kJkgK,
                                                   cutwater_column allowed_rise_K, cutwater_result_column flow_m3h,
                                                   cutwater_rows_report *report);

/*
 * Warming of the inlet liquid that still leaves NPSH3 and a margin.
 *
 *   inlet_temperature_degC       temperature of the liquid as it comes; above -273.15 degC
 *   npsh_available_m             net positive suction head available at that temperature; at least 0 m
 *   npsh3_m                      net positive suction head at 3 % head drop, at the small flow; at least 0 m
 *   npsh_margin_m                margin to keep above NPSH3; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   temperatures_degC            the liquid's vapour-pressure curve: temperatures; at least 2 points, rising; above
 *                                -273.15 degC
 *   vapour_pressures_bara        the liquid's vapour-pressure curve: pressures; at least 2 points, rising; above 0 bara
 *   -> allowed_rise_K            warming at which the margin is used up
 *
 *   Equation: p_v(T + dT) = p_v(T) + rho g (NPSHA - NPSH3 - dNPSH)
 *   Must hold of vapour_pressures: both series must have the same number of points
 *   Must hold of npsh_available: it must exceed NPSH3 and the margin together: nothing is left to warm the liquid with
 *   Source: NPSH available falls by the rise of vapour pressure at the inlet: common practice; ln p linear in 1/T
 *           between neighbouring points (Clausius-Clapeyron)
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_allowed_temperature_rise(double inlet_temperature_degC, double npsh_available_m,
                                                  double npsh3_m, double npsh_margin_m, double density_kgm3,
                                                  const double *temperatures_degC, size_t temperatures_degC_count,
                                                  const double *vapour_pressures_bara,
                                                  size_t vapour_pressures_bara_count, double *allowed_rise_K,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_allowed_temperature_rise_rows(size_t rows, cutwater_column inlet_temperature_degC,
                                                       cutwater_column npsh_available_m, cutwater_column npsh3_m,
                                                       cutwater_column npsh_margin_m, cutwater_column density_kgm3,
                                                       const double *temperatures_degC,
                                                       size_t temperatures_degC_count,
                                                       const double *vapour_pressures_bara,
                                                       size_t vapour_pressures_bara_count,
                                                       cutwater_result_column allowed_rise_K,
                                                       cutwater_rows_report *report);

/*
 * Least flow whose warming still leaves NPSH3 and a margin at the inlet.
 *
 *   shutoff_power_kW             pump power input at closed valve; above 0 kW
 *   shutoff_head_m               total head at closed valve; at least 0 m
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   inlet_temperature_degC       temperature of the liquid as it comes; above -273.15 degC
 *   npsh_available_m             net positive suction head available at that temperature; at least 0 m
 *   npsh3_m                      net positive suction head at 3 % head drop, at the small flow; at least 0 m
 *   npsh_margin_m                margin to keep above NPSH3; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   temperatures_degC            the liquid's vapour-pressure curve: temperatures; at least 2 points, rising; above
 *                                -273.15 degC
 *   vapour_pressures_bara        the liquid's vapour-pressure curve: pressures; at least 2 points, rising; above 0 bara
 *   -> flow_m3h                  least continuous flow for heating alone
 *
 *   Equation: Q_min = P_0/[rho (c_p dT + g H_0)], p_v(T + dT) = p_v(T) + rho g (NPSHA - NPSH3 - dNPSH)
 *   Must hold of vapour_pressures: both series must have the same number of points
 *   Must hold of npsh_available: it must exceed NPSH3 and the margin together: nothing is left to warm the liquid with
 *   Source: NPSH available falls by the rise of vapour pressure at the inlet: common practice; ln p linear in 1/T
 *           between neighbouring points (Clausius-Clapeyron)
 *   Caution: The thermal minimum is usually the smaller one: keep to the larger of this, the stable minimum and what the
 *            pump maker allows.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_thermal_minimum_flow_from_npsh(double shutoff_power_kW, double shutoff_head_m,
                                                        double specific_heat_kJkgK, double inlet_temperature_degC,
                                                        double npsh_available_m, double npsh3_m, double npsh_margin_m,
                                                        double density_kgm3, const double *temperatures_degC,
                                                        size_t temperatures_degC_count,
                                                        const double *vapour_pressures_bara,
                                                        size_t vapour_pressures_bara_count, double *flow_m3h,
                                                        cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_thermal_minimum_flow_from_npsh_rows(size_t rows, cutwater_column shutoff_power_kW,
                                                             cutwater_column shutoff_head_m,
                                                             cutwater_column specific_heat_kJkgK,
                                                             cutwater_column inlet_temperature_degC,
                                                             cutwater_column npsh_available_m,
                                                             cutwater_column npsh3_m, cutwater_column npsh_margin_m,
                                                             cutwater_column density_kgm3,
                                                             const double *temperatures_degC,
                                                             size_t temperatures_degC_count,
                                                             const double *vapour_pressures_bara,
                                                             size_t vapour_pressures_bara_count,
                                                             cutwater_result_column flow_m3h,
                                                             cutwater_rows_report *report);

/*
 * How fast a pump at closed valve heats its liquid.
 *
 *   shutoff_power_kW             pump power input at closed valve; above 0 kW
 *   liquid_volume_l              liquid held in the casing; above 0 l
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat of the liquid at constant pressure; from 0.1 to 20 kJ/(kg K)
 *   metal_mass_kg                metal that warms with it; 0 is the safe side; at least 0 kg; usually 0
 *   metal_specific_heat_kJkgK    specific heat of the metal; iron and steel 0.46 to 0.50; from 0.1 to 2 kJ/(kg K);
 *                                usually 0.46
 *   -> heating_rate_Kmin         with no heat lost to the surroundings
 *
 *   Equation: dT/dt = P_0/(V rho c_p + m c_m)
 *   Source: energy balance; the relation of I. J. Karassik et al., Pump Handbook (from memory of it)
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_closed_valve_heating_rate(double shutoff_power_kW, double liquid_volume_l,
                                                   double density_kgm3, double specific_heat_kJkgK,
                                                   double metal_mass_kg, double metal_specific_heat_kJkgK,
                                                   double *heating_rate_Kmin, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_closed_valve_heating_rate_rows(size_t rows, cutwater_column shutoff_power_kW,
                                                        cutwater_column liquid_volume_l, cutwater_column density_kgm3,
                                                        cutwater_column specific_heat_kJkgK,
                                                        cutwater_column metal_mass_kg,
                                                        cutwater_column metal_specific_heat_kJkgK,
                                                        cutwater_result_column heating_rate_Kmin,
                                                        cutwater_rows_report *report);

/*
 * Time in which a steady heating reaches a temperature.
 *
 *   heating_rate_Kmin            as from closed_valve_heating_rate; above 0 K/min
 *   start_temperature_degC       temperature at the beginning; above -273.15 degC
 *   end_temperature_degC         temperature to be reached, such as the boiling temperature; above -273.15 degC
 *   -> time_min                  time until then
 *
 *   Equation: t = (T_2 - T_1)/(dT/dt)
 *   Must hold of end_temperature: it must lie above the start temperature
 *   Source: steady heating without loss; common practice
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_time_to_temperature(double heating_rate_Kmin, double start_temperature_degC,
                                             double end_temperature_degC, double *time_min, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_time_to_temperature_rows(size_t rows, cutwater_column heating_rate_Kmin,
                                                  cutwater_column start_temperature_degC,
                                                  cutwater_column end_temperature_degC,
                                                  cutwater_result_column time_min, cutwater_rows_report *report);

/*
 * Flow from which the head falls all the way: below it a drooping curve, or one with a dip, is unstable.
 *
 *   flows_m3h                    flows of the curve's points, from closed valve on; at least 3 points, rising; at least
 *                                0 m3/h
 *   heads_m                      heads of the curve's points; at least 3 points; above 0 m
 *   -> flow_m3h                  listed flow from which every head is less than the one before it; 0 for a curve that
 *                                falls from closed valve on
 *
 *   Equation: Q_st = least Q_i from which every further H is less than the one before it
 *   Must hold of heads: both series must have the same number of points
 *   Source: definition of a stable and an unstable curve, ISO 17769-1:2012 and EN 12723 (from memory of both); ANSI/HI
 *           9.6.3-2012 treats drooping curves and curves with a dip (notice of it read)
 *   Caution: Judged by the listed points: a droop or a dip between them is not seen, and a measured point that is a
 *            little high counts as a rise.
 *   Caution: No published rule turns suction specific speed into a least flow by formula; above about 213 (1/min, m3/s,
 *            m, per eye; 11 000 in US units) the stable range is narrower (J. L. Hallam, Hydrocarbon Processing, April
 *            1982; from memory).
 *   Caution: Recirculation may set a larger least flow: see suction_recirculation_flow and the pump maker's data.
 */
CUTWATER_API cutwater_status cutwater_stable_minimum_flow(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                             size_t heads_m_count, double *flow_m3h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_stable_minimum_flow_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                  const double *heads_m, size_t heads_m_count,
                                                  cutwater_result_column flow_m3h, cutwater_rows_report *report);

/*
 * Flow below which the impeller's inlet recirculates.
 *
 *   eye_diameter_mm              diameter of the impeller eye; from 1 to 10000 mm
 *   hub_diameter_mm              hub or shaft diameter in the eye; 0 for an open eye; at least 0 mm
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   velocity_ratio               inlet velocity over rim speed at which recirculation begins, read from Fraser's chart
 *                                by the inlet vane angle; from 0.01 to 0.6
 *   eyes                         2 for a double-suction impeller; whole number, from 1 to 2; usually 1
 *   -> flow_m3h                  flow of the whole impeller at the onset
 *
 *   Equation: Q_sr = z (V_e/U_1) (pi D_1 n) (pi/4)(D_1^2 - h^2)
 *   Must hold of hub_diameter: it must be less than the eye diameter
 *   Source: W. H. Fraser, Recirculation in centrifugal pumps, ASME winter annual meeting 1981 (from memory of it; its US
 *           constant 93.6 follows from the geometry)
 *   Caution: The onset is no limit by itself: small pumps run well below it, large and high-head ones should not
 *            (Fraser; from memory).
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_suction_recirculation_flow(double eye_diameter_mm, double hub_diameter_mm, double speed_rpm,
                                                    double velocity_ratio, double eyes, double *flow_m3h,
                                                    cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_suction_recirculation_flow_rows(size_t rows, cutwater_column eye_diameter_mm,
                                                         cutwater_column hub_diameter_mm, cutwater_column speed_rpm,
                                                         cutwater_column velocity_ratio, cutwater_column eyes,
                                                         cutwater_result_column flow_m3h,
                                                         cutwater_rows_report *report);

/*
 * Flows between which a pump is best run.
 *
 *   best_efficiency_flow_m3h     best efficiency flow at the actual speed and diameter; above 0 m3/h
 *   specific_speed               specific speed n Q^0.5/H^0.75 in 1/min, m3/s, m of a stage, at best efficiency; from 1
 *                                to 500
 *   -> least_preferred_flow_m3h  lower end of the preferred region
 *   -> greatest_preferred_flow_m3h upper end of the preferred region
 *
 *   Equation: n_s <= 87.1: 0.70 Q_BEP to 1.20 Q_BEP; above: 0.80 Q_BEP to 1.15 Q_BEP
 *   Source: ANSI/HI 9.6.3-2012, preferred operating region: 70 to 120 % of best efficiency flow, above a US specific
 *           speed of 4500 (87.1 in 1/min, m3/s, m) 80 to 115 % (from memory of it)
 *   Caution: For the highest specific speeds the region is narrower, down to 90 to 110 %; the allowable region is the
 *            pump maker's to tell.
 */
CUTWATER_API cutwater_status cutwater_preferred_region(double best_efficiency_flow_m3h, double specific_speed,
                                          double *least_preferred_flow_m3h, double *greatest_preferred_flow_m3h,
                                          cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_preferred_region_rows(size_t rows, cutwater_column best_efficiency_flow_m3h,
                                               cutwater_column specific_speed,
                                               cutwater_result_column least_preferred_flow_m3h,
                                               cutwater_result_column greatest_preferred_flow_m3h,
                                               cutwater_rows_report *report);

/*
 * Region of its curve in which a pump runs.
 *
 *   flow_m3h                     flow at which the pump runs; at least 0 m3/h
 *   best_efficiency_flow_m3h     best efficiency flow at the actual speed and diameter; above 0 m3/h
 *   specific_speed               specific speed n Q^0.5/H^0.75 in 1/min, m3/s, m of a stage, at best efficiency; from 1
 *                                to 500
 *   allowable_minimum_flow_m3h   least continuous flow that the pump maker allows; at least 0 m3/h
 *   allowable_maximum_flow_m3h   greatest continuous flow that the pump maker allows; above 0 m3/h
 *   -> region                    preferred, allowable but not preferred, or outside of both; the ends belong to a region
 *   -> least_preferred_flow_m3h  lower end of the preferred region
 *   -> greatest_preferred_flow_m3h upper end of the preferred region
 *
 *   Equation: preferred: n_s <= 87.1: 0.70 to 1.20 Q_BEP, above: 0.80 to 1.15 Q_BEP, within the allowable; allowable:
 *             Q_min to Q_max
 *   Must hold of allowable_maximum_flow: it must exceed the allowable minimum flow
 *   Source: ANSI/HI 9.6.3-2012, preferred operating region: 70 to 120 % of best efficiency flow, above a US specific
 *           speed of 4500 (87.1 in 1/min, m3/s, m) 80 to 115 % (from memory of it)
 *   Caution: For the highest specific speeds the region is narrower, down to 90 to 110 %; the allowable region is the
 *            pump maker's to tell.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_operating_region(double flow_m3h, double best_efficiency_flow_m3h, double specific_speed,
                                          double allowable_minimum_flow_m3h, double allowable_maximum_flow_m3h,
                                          const char **region, double *least_preferred_flow_m3h,
                                          double *greatest_preferred_flow_m3h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_operating_region_rows(size_t rows, cutwater_column flow_m3h,
                                               cutwater_column best_efficiency_flow_m3h,
                                               cutwater_column specific_speed,
                                               cutwater_column allowable_minimum_flow_m3h,
                                               cutwater_column allowable_maximum_flow_m3h,
                                               cutwater_result_column region,
                                               cutwater_result_column least_preferred_flow_m3h,
                                               cutwater_result_column greatest_preferred_flow_m3h,
                                               cutwater_rows_report *report);

/*
 * Flow that an orifice plate in a bypass lets through.
 *
 *   orifice_bore_mm              bore of the plate; above 0 mm
 *   pipe_bore_mm                 inside diameter of the pipe; from 1 to 10000 mm
 *   pressure_drop_bar            pressure lost for good across the plate; above 0 bar
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   viscosity_mm2s               kinematic viscosity of the liquid; from 0.01 to 1000000 mm2/s
 *   discharge_coefficient        0: by ISO 5167-2, within its limits; else that of a plain orifice, 0.5 to below 1
 *                                (sharp about 0.61, thick plate about 0.8); from 0 to below 1; usually 0
 *   -> flow_m3h                  flow through the plate
 *   -> coefficient               discharge coefficient
 *   -> reynolds_number           Reynolds number of the pipe
 *
 *   Equation: Q = C/sqrt(1 - b^4) (pi/4) d^2 sqrt(2 dp/rho); dp_l = dp (r - C b^2)/(r + C b^2), r = sqrt(1 - b^4 (1 -
 *             C^2)), b = d/D
 *   Must hold of orifice_bore: it must not exceed 0.75 of the pipe bore
 *   Must hold of discharge_coefficient: it must be 0, for ISO 5167-2, or from 0.5 to below 1
 *   Source: ISO 5167-2:2003, 5.3 and 5.4, tappings at D and D/2 (from memory of it; its coefficients agree with those of
 *           the open-source library fluids 1.0.22)
 *   Caution: A plate that takes tens of bar is thicker than ISO 5167-2 has it and erodes: take several in series and
 *            check bypass_orifice_cavitation.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_bypass_flow(double orifice_bore_mm, double pipe_bore_mm, double pressure_drop_bar,
                                     double density_kgm3, double viscosity_mm2s, double discharge_coefficient,
                                     double *flow_m3h, double *coefficient, double *reynolds_number,
                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bypass_flow_rows(size_t rows, cutwater_column orifice_bore_mm, cutwater_column pipe_bore_mm,
                                          cutwater_column pressure_drop_bar, cutwater_column density_kgm3,
                                          cutwater_column viscosity_mm2s, cutwater_column discharge_coefficient,
                                          cutwater_result_column flow_m3h, cutwater_result_column coefficient,
                                          cutwater_result_column reynolds_number, cutwater_rows_report *report);

/*
 * Bore of an orifice plate that lets a bypass flow through.
 *
 *   flow_m3h                     flow to be let through; above 0 m3/h
 *   pipe_bore_mm                 inside diameter of the pipe; from 1 to 10000 mm
 *   pressure_drop_bar            pressure to be lost for good across the plate; above 0 bar
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   viscosity_mm2s               kinematic viscosity of the liquid; from 0.01 to 1000000 mm2/s
 *   discharge_coefficient        0: by ISO 5167-2, within its limits; else that of a plain orifice, 0.5 to below 1
 *                                (sharp about 0.61, thick plate about 0.8); from 0 to below 1; usually 0
 *   -> orifice_bore_mm           bore of the plate
 *
 *   Equation: the d for which bypass_flow gives Q
 *   Must hold of discharge_coefficient: it must be 0, for ISO 5167-2, or from 0.5 to below 1
 *   Source: ISO 5167-2:2003, 5.3 and 5.4, tappings at D and D/2 (from memory of it; its coefficients agree with those of
 *           the open-source library fluids 1.0.22)
 *   Caution: A plate that takes tens of bar is thicker than ISO 5167-2 has it and erodes: take several in series and
 *            check bypass_orifice_cavitation.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_bypass_orifice_bore(double flow_m3h, double pipe_bore_mm, double pressure_drop_bar,
                                             double density_kgm3, double viscosity_mm2s, double discharge_coefficient,
                                             double *orifice_bore_mm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bypass_orifice_bore_rows(size_t rows, cutwater_column flow_m3h, cutwater_column pipe_bore_mm,
                                                  cutwater_column pressure_drop_bar, cutwater_column density_kgm3,
                                                  cutwater_column viscosity_mm2s,
                                                  cutwater_column discharge_coefficient,
                                                  cutwater_result_column orifice_bore_mm,
                                                  cutwater_rows_report *report);

/*
 * Whether a bypass's orifice plate cavitates.
 *
 *   orifice_bore_mm              bore of the plate; above 0 mm
 *   pipe_bore_mm                 inside diameter of the pipe; from 1 to 10000 mm
 *   upstream_pressure_bara       pressure before the plate; above 0 bara
 *   downstream_pressure_bara     recovered pressure behind the plate; at least 0 bara
 *   vapour_pressure_bara         vapour pressure at the liquid's temperature; at least 0 bara
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   viscosity_mm2s               kinematic viscosity of the liquid; from 0.01 to 1000000 mm2/s
 *   discharge_coefficient        0: by ISO 5167-2, within its limits; else that of a plain orifice, 0.5 to below 1
 *                                (sharp about 0.61, thick plate about 0.8); from 0 to below 1; usually 0
 *   -> pressure_ratio            share of the pressure above vapour pressure that the plate takes
 *   -> onset_ratio               that share at which cavitation is expected to begin
 *   -> cavitation                none, cavitating, choked (boiling in the jet) or flashing (boiling behind it)
 *
 *   Equation: x_F = (p_1 - p_2)/(p_1 - p_v); x_Fz = 0.90/sqrt(1 + 3 sqrt(Kv/(1.17 F_L))), F_L^2 = dp_l/dp of the plate;
 *             choked when p_1 - dp <= p_v
 *   Must hold of orifice_bore: it must not exceed 0.75 of the pipe bore
 *   Must hold of downstream_pressure: it must be lower than the upstream pressure
 *   Must hold of vapour_pressure: it must be lower than the upstream pressure: the liquid would boil before the plate
 *   Must hold of discharge_coefficient: it must be 0, for ISO 5167-2, or from 0.5 to below 1
 *   Source: IEC 60534-8-4:2015, estimate of the onset for a valve without test (from memory of it), with F_d = 1 for one
 *           round hole, applied to a plate with the pressure loss of ISO 5167-2:2003
 *   Caution: A guide: the onset is estimated from a rule for valves. A plate that cavitates is noisy and erodes.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_bypass_orifice_cavitation(double orifice_bore_mm, double pipe_bore_mm,
                                                   double upstream_pressure_bara, double downstream_pressure_bara,
                                                   double vapour_pressure_bara, double density_kgm3,
                                                   double viscosity_mm2s, double discharge_coefficient,
                                                   double *pressure_ratio, double *onset_ratio,
                                                   const char **cavitation, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bypass_orifice_cavitation_rows(size_t rows, cutwater_column orifice_bore_mm,
                                                        cutwater_column pipe_bore_mm,
                                                        cutwater_column upstream_pressure_bara,
                                                        cutwater_column downstream_pressure_bara,
                                                        cutwater_column vapour_pressure_bara,
                                                        cutwater_column density_kgm3, cutwater_column viscosity_mm2s,
                                                        cutwater_column discharge_coefficient,
                                                        cutwater_result_column pressure_ratio,
                                                        cutwater_result_column onset_ratio,
                                                        cutwater_result_column cavitation,
                                                        cutwater_rows_report *report);

/* ---- Curves ---- */

/*
 * Value of any curve between its points, in plain numbers.
 *
 *   x_values                     the points' abscissas, in any one unit; at least 2 points, rising; any
 *   y_values                     the points' ordinates, in any one unit; at least 2 points; any
 *   x                            where to read the curve; between the first and the last point; any
 *   -> y                         ordinate of the curve there
 *
 *   Equation: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points
 *   Must hold of y_values: both series must have the same number of points
 *   Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler,
 *           Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's
 *           PchipInterpolator)
 */
CUTWATER_API cutwater_status cutwater_curve_value(const double *x_values, size_t x_values_count, const double *y_values,
                                     size_t y_values_count, double x, double *y, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_curve_value_rows(size_t rows, const double *x_values, size_t x_values_count,
                                          const double *y_values, size_t y_values_count, cutwater_column x,
                                          cutwater_result_column y, cutwater_rows_report *report);

/*
 * Slope of any curve between its points, in plain numbers.
 *
 *   x_values                     the points' abscissas, in any one unit; at least 2 points, rising; any
 *   y_values                     the points' ordinates, in any one unit; at least 2 points; any
 *   x                            where to take the slope; between the first and the last point; any
 *   -> slope                     rise of the ordinate for one unit of the abscissa
 *
 *   Equation: dy/dx of the curve that curve_value reads
 *   Must hold of y_values: both series must have the same number of points
 *   Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler,
 *           Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's
 *           PchipInterpolator)
 */
CUTWATER_API cutwater_status cutwater_curve_slope(const double *x_values, size_t x_values_count, const double *y_values,
                                     size_t y_values_count, double x, double *slope, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_curve_slope_rows(size_t rows, const double *x_values, size_t x_values_count,
                                          const double *y_values, size_t y_values_count, cutwater_column x,
                                          cutwater_result_column slope, cutwater_rows_report *report);

/*
 * Head of a pump at a flow, from its curve.
 *
 *   flows_m3h                    flows of the curve's points; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the curve's points; at least 2 points; any
 *   flow_m3h                     where to read the curve; between the first and the last point; at least 0 m3/h
 *   -> head_m                    total head at that flow
 *
 *   Equation: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points
 *   Must hold of heads: both series must have the same number of points
 *   Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler,
 *           Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's
 *           PchipInterpolator)
 */
CUTWATER_API cutwater_status cutwater_curve_head(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                    size_t heads_m_count, double flow_m3h, double *head_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_curve_head_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                         const double *heads_m, size_t heads_m_count, cutwater_column flow_m3h,
                                         cutwater_result_column head_m, cutwater_rows_report *report);

/*
 * Pump power input at a flow, from its curve.
 *
 *   flows_m3h                    flows of the curve's points; at least 2 points, rising; at least 0 m3/h
 *   powers_kW                    power inputs of the curve's points; at least 2 points; at least 0 kW
 *   flow_m3h                     where to read the curve; between the first and the last point; at least 0 m3/h
 *   -> power_kW                  pump power input at that flow
 *
 *   Equation: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points
 *   Must hold of powers: both series must have the same number of points
 *   Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler,
 *           Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's
 *           PchipInterpolator)
 */
CUTWATER_API cutwater_status cutwater_curve_power(const double *flows_m3h, size_t flows_m3h_count, const double *powers_kW,
                                     size_t powers_kW_count, double flow_m3h, double *power_kW,
                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_curve_power_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                          const double *powers_kW, size_t powers_kW_count, cutwater_column flow_m3h,
                                          cutwater_result_column power_kW, cutwater_rows_report *report);

/*
 * Pump efficiency at a flow, from its curve.
 *
 *   flows_m3h                    flows of the curve's points; at least 2 points, rising; at least 0 m3/h
 *   efficiencies                 efficiencies of the curve's points; at least 2 points; from 0 to 1
 *   flow_m3h                     where to read the curve; between the first and the last point; at least 0 m3/h
 *   -> efficiency                pump efficiency at that flow
 *
 *   Equation: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points
 *   Must hold of efficiencies: both series must have the same number of points
 *   Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler,
 *           Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's
 *           PchipInterpolator)
 */
CUTWATER_API cutwater_status cutwater_curve_efficiency(const double *flows_m3h, size_t flows_m3h_count, const double *efficiencies,
                                          size_t efficiencies_count, double flow_m3h, double *efficiency,
                                          cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_curve_efficiency_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                               const double *efficiencies, size_t efficiencies_count,
                                               cutwater_column flow_m3h, cutwater_result_column efficiency,
                                               cutwater_rows_report *report);

/*
 * NPSH3 of a pump at a flow, from its curve.
 *
 *   flows_m3h                    flows of the curve's points; at least 2 points, rising; at least 0 m3/h
 *   npsh3_values_m               NPSH3 of the curve's points; at least 2 points; at least 0 m
 *   flow_m3h                     where to read the curve; between the first and the last point; at least 0 m3/h
 *   -> npsh3_m                   net positive suction head at 3 % head drop
 *
 *   Equation: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points
 *   Must hold of npsh3_values: both series must have the same number of points
 *   Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler,
 *           Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's
 *           PchipInterpolator)
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_curve_npsh3(const double *flows_m3h, size_t flows_m3h_count, const double *npsh3_values_m,
                                     size_t npsh3_values_m_count, double flow_m3h, double *npsh3_m,
                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_curve_npsh3_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                          const double *npsh3_values_m, size_t npsh3_values_m_count,
                                          cutwater_column flow_m3h, cutwater_result_column npsh3_m,
                                          cutwater_rows_report *report);

/*
 * Flow at which the pump's curve meets the system's.
 *
 *   flows_m3h                    flows of the pump curve's points; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the pump curve's points; at least 2 points; any
 *   static_head_m                head of the system at no flow; negative when the system flows by itself; any
 *   resistance_h2m5              system resistance: friction head over flow squared; at least 0 h2/m5
 *   -> duty_flow_m3h             flow through pump and system
 *
 *   Equation: H_pump(Q) = H_s + k Q^2; all meetings over the curve's range are looked for
 *   Must hold of heads: both series must have the same number of points
 *   Source: definition of the duty point, common practice; the pump curve between its points as in curve_head
 *   Caution: A curve that droops towards closed valve may meet a flat system curve twice, one with a dip three times,
 *            and pumps in parallel may hunt: see curve_is_stable.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_duty_flow(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                   size_t heads_m_count, double static_head_m, double resistance_h2m5,
                                   double *duty_flow_m3h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_duty_flow_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                        const double *heads_m, size_t heads_m_count, cutwater_column static_head_m,
                                        cutwater_column resistance_h2m5, cutwater_result_column duty_flow_m3h,
                                        cutwater_rows_report *report);

/*
 * Head at which the pump's curve meets the system's.
 *
 *   flows_m3h                    flows of the pump curve's points; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the pump curve's points; at least 2 points; any
 *   static_head_m                head of the system at no flow; negative when the system flows by itself; any
 *   resistance_h2m5              system resistance: friction head over flow squared; at least 0 h2/m5
 *   -> duty_head_m               head of pump and system there
 *
 *   Equation: H_pump(Q) = H_s + k Q^2; all meetings over the curve's range are looked for
 *   Must hold of heads: both series must have the same number of points
 *   Source: definition of the duty point, common practice; the pump curve between its points as in curve_head
 *   Caution: A curve that droops towards closed valve may meet a flat system curve twice, one with a dip three times,
 *            and pumps in parallel may hunt: see curve_is_stable.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_duty_head(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                   size_t heads_m_count, double static_head_m, double resistance_h2m5,
                                   double *duty_head_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_duty_head_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                        const double *heads_m, size_t heads_m_count, cutwater_column static_head_m,
                                        cutwater_column resistance_h2m5, cutwater_result_column duty_head_m,
                                        cutwater_rows_report *report);

/*
 * Speed at which a pump gives a duty.
 *
 *   flows_m3h                    flows of the curve's points; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the curve's points; at least 2 points; any
 *   speed_rpm                    speed of that curve; above 0 up to 100000 1/min
 *   duty_flow_m3h                flow wanted; above 0 m3/h
 *   duty_head_m                  head wanted; above 0 m
 *   -> new_speed_rpm             speed at which the pump's curve goes through the duty
 *
 *   Equation: n' = n Q_d/Q_x; Q_x is where H = H_d (Q/Q_d)^2 meets the curve
 *   Must hold of heads: both series must have the same number of points
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25
 *           to 2: set here
 *   Caution: The root of the ratio of heads at the duty's flow is not the answer: the similar point lies at another
 *            flow.
 *   Caution: The affinity laws scale a pump's curve, not a system's duty: with static head the new duty is where the
 *            scaled curve meets the system curve.
 *   Caution: ISO 9906 converts test results within 50 to 120 % of the speed (80 to 120 % for efficiency and NPSH; from
 *            memory of it): further away the efficiency shifts and the result is an estimate.
 *   Caution: Above the curve's own speed: never exceed the pump maker's greatest speed, power and pressure.
 */
CUTWATER_API cutwater_status cutwater_speed_for_duty(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                        size_t heads_m_count, double speed_rpm, double duty_flow_m3h,
                                        double duty_head_m, double *new_speed_rpm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_speed_for_duty_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                             const double *heads_m, size_t heads_m_count, cutwater_column speed_rpm,
                                             cutwater_column duty_flow_m3h, cutwater_column duty_head_m,
                                             cutwater_result_column new_speed_rpm, cutwater_rows_report *report);

/*
 * Impeller diameter at which a pump gives a duty.
 *
 *   flows_m3h                    flows of the curve's points at full diameter; at least 2 points, rising; at least 0
 *                                m3/h
 *   heads_m                      heads of the curve's points at full diameter; at least 2 points; any
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   duty_flow_m3h                flow wanted; above 0 m3/h
 *   duty_head_m                  head wanted; above 0 m
 *   trim_law                     similarity line of the cut: parabola for the exponents (1, 2, 3) of flow, head and
 *                                power, line for (2, 2, 4): one of "parabola" "line"; usually "parabola"
 *   -> trimmed_diameter_mm       diameter after the cut, by the trim law
 *
 *   Equation: D' = D Q_d/Q_x, where H = H_d (Q/Q_d)^2 meets the curve at Q_x; for the line D' = D sqrt(Q_d/Q_x), H = H_d
 *             Q/Q_d
 *   Must hold of heads: both series must have the same number of points
 *   Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2,
 *           2, 4): common practice; limit of the ratio 0.7: set here
 *   Caution: The root of the ratio of heads at the duty's flow is not the answer: the similar point lies at another
 *            flow.
 *   Caution: Trim laws are approximate and depart further below about 80 % of the full diameter; have the trim confirmed
 *            by the pump maker.
 *   Caution: Two sets of exponents are in use for flow, head and power: (1, 2, 3) and (2, 2, 4), the second for radial
 *            impellers whose outlet width stays. Take all three from one set; the defaults are the first. The second
 *            predicts less flow and power after the cut.
 *   Caution: Efficiency falls a little with the trim; cut in two steps and test between them.
 */
CUTWATER_API cutwater_status cutwater_trim_for_duty(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                       size_t heads_m_count, double diameter_mm, double duty_flow_m3h,
                                       double duty_head_m, const char *trim_law, double *trimmed_diameter_mm,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_trim_for_duty_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                            const double *heads_m, size_t heads_m_count, cutwater_column diameter_mm,
                                            cutwater_column duty_flow_m3h, cutwater_column duty_head_m,
                                            const char *trim_law, cutwater_result_column trimmed_diameter_mm,
                                            cutwater_rows_report *report);

/*
 * Flow at which a pump's efficiency is highest.
 *
 *   flows_m3h                    flows of the curve's points; at least 3 points, rising; at least 0 m3/h
 *   efficiencies                 efficiencies of the curve's points; at least 3 points; from 0 to 1
 *   -> flow_m3h                  best efficiency flow
 *
 *   Equation: peak of the parabola through the point of highest efficiency and its two neighbours
 *   Must hold of efficiencies: both series must have the same number of points
 *   Source: best efficiency point by ISO 17769-1:2012 (from memory of it); the parabola is common practice
 */
CUTWATER_API cutwater_status cutwater_best_efficiency_flow(const double *flows_m3h, size_t flows_m3h_count,
                                              const double *efficiencies, size_t efficiencies_count, double *flow_m3h,
                                              cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_best_efficiency_flow_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                   const double *efficiencies, size_t efficiencies_count,
                                                   cutwater_result_column flow_m3h, cutwater_rows_report *report);

/*
 * Highest efficiency of a pump's curve.
 *
 *   flows_m3h                    flows of the curve's points; at least 3 points, rising; at least 0 m3/h
 *   efficiencies                 efficiencies of the curve's points; at least 3 points; from 0 to 1
 *   -> efficiency                best efficiency
 *
 *   Equation: peak of the parabola through the point of highest efficiency and its two neighbours
 *   Must hold of efficiencies: both series must have the same number of points
 *   Source: best efficiency point by ISO 17769-1:2012 (from memory of it); the parabola is common practice
 */
CUTWATER_API cutwater_status cutwater_best_efficiency(const double *flows_m3h, size_t flows_m3h_count, const double *efficiencies,
                                         size_t efficiencies_count, double *efficiency, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_best_efficiency_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                              const double *efficiencies, size_t efficiencies_count,
                                              cutwater_result_column efficiency, cutwater_rows_report *report);

/*
 * Head curve of a pump at another speed.
 *
 *   flows_m3h                    flows of the curve's points; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the curve's points; at least 2 points; any
 *   speed_rpm                    speed at which the point is known; above 0 up to 100000 1/min
 *   new_speed_rpm                speed asked about; above 0 up to 100000 1/min
 *   -> new_flows_m3h             flows at the new speed
 *   -> new_heads_m               heads at the new speed
 *
 *   Equation: Q' = Q n'/n; H' = H (n'/n)^2
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of new_speed: the new speed must be 0.25 to 2 times the speed: beyond that the affinity laws are not
 *                           relied upon here
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25
 *           to 2: set here
 *   Caution: The affinity laws scale a pump's curve, not a system's duty: with static head the new duty is where the
 *            scaled curve meets the system curve.
 *   Caution: ISO 9906 converts test results within 50 to 120 % of the speed (80 to 120 % for efficiency and NPSH; from
 *            memory of it): further away the efficiency shifts and the result is an estimate.
 */
CUTWATER_API cutwater_status cutwater_curve_at_speed(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                        size_t heads_m_count, double speed_rpm, double new_speed_rpm,
                                        double *new_flows_m3h, size_t new_flows_m3h_capacity,
                                        size_t *new_flows_m3h_count, double *new_heads_m, size_t new_heads_m_capacity,
                                        size_t *new_heads_m_count, cutwater_refusal *refusal);

/*
 * Power curve of a pump at another speed.
 *
 *   flows_m3h                    flows of the curve's points; at least 2 points, rising; at least 0 m3/h
 *   powers_kW                    power inputs of the curve's points; at least 2 points; at least 0 kW
 *   speed_rpm                    speed at which the point is known; above 0 up to 100000 1/min
 *   new_speed_rpm                speed asked about; above 0 up to 100000 1/min
 *   -> new_flows_m3h             flows at the new speed
 *   -> new_powers_kW             power inputs at the new speed
 *
 *   Equation: Q' = Q n'/n; P' = P (n'/n)^3
 *   Must hold of powers: both series must have the same number of points
 *   Must hold of new_speed: the new speed must be 0.25 to 2 times the speed: beyond that the affinity laws are not
 *                           relied upon here
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25
 *           to 2: set here
 *   Caution: The affinity laws scale a pump's curve, not a system's duty: with static head the new duty is where the
 *            scaled curve meets the system curve.
 *   Caution: ISO 9906 converts test results within 50 to 120 % of the speed (80 to 120 % for efficiency and NPSH; from
 *            memory of it): further away the efficiency shifts and the result is an estimate.
 */
CUTWATER_API cutwater_status cutwater_power_curve_at_speed(const double *flows_m3h, size_t flows_m3h_count,
                                              const double *powers_kW, size_t powers_kW_count, double speed_rpm,
                                              double new_speed_rpm, double *new_flows_m3h,
                                              size_t new_flows_m3h_capacity, size_t *new_flows_m3h_count,
                                              double *new_powers_kW, size_t new_powers_kW_capacity,
                                              size_t *new_powers_kW_count, cutwater_refusal *refusal);

/*
 * Head curve of a pump with its impeller trimmed.
 *
 *   flows_m3h                    flows of the curve's points at full diameter; at least 2 points, rising; at least 0
 *                                m3/h
 *   heads_m                      heads of the curve's points at full diameter; at least 2 points; any
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   trimmed_diameter_mm          diameter after the cut; from 5 to 10000 mm
 *   trim_law                     similarity line of the cut: parabola for the exponents (1, 2, 3) of flow, head and
 *                                power, line for (2, 2, 4): one of "parabola" "line"; usually "parabola"
 *   -> trimmed_flows_m3h         flows at the trimmed diameter
 *   -> trimmed_heads_m           heads at the trimmed diameter
 *
 *   Equation: Q' = Q (D'/D)^1 or ^2; H' = H (D'/D)^2
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of trimmed_diameter: the trimmed diameter must be at most the full diameter: an impeller is cut, not grown
 *   Must hold of trimmed_diameter: the trimmed diameter must be at least 0.7 of the full diameter, the limit set here
 *                                  for the trim laws
 *   Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2,
 *           2, 4): common practice; limit of the ratio 0.7: set here
 *   Caution: Trim laws are approximate and depart further below about 80 % of the full diameter; have the trim confirmed
 *            by the pump maker.
 *   Caution: Two sets of exponents are in use for flow, head and power: (1, 2, 3) and (2, 2, 4), the second for radial
 *            impellers whose outlet width stays. Take all three from one set; the defaults are the first. The second
 *            predicts less flow and power after the cut.
 */
CUTWATER_API cutwater_status cutwater_curve_at_trim(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                       size_t heads_m_count, double diameter_mm, double trimmed_diameter_mm,
                                       const char *trim_law, double *trimmed_flows_m3h,
                                       size_t trimmed_flows_m3h_capacity, size_t *trimmed_flows_m3h_count,
                                       double *trimmed_heads_m, size_t trimmed_heads_m_capacity,
                                       size_t *trimmed_heads_m_count, cutwater_refusal *refusal);

/*
 * Power curve of a pump with its impeller trimmed.
 *
 *   flows_m3h                    flows of the curve's points at full diameter; at least 2 points, rising; at least 0
 *                                m3/h
 *   powers_kW                    power inputs of the curve's points at full diameter; at least 2 points; at least 0 kW
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   trimmed_diameter_mm          diameter after the cut; from 5 to 10000 mm
 *   trim_law                     similarity line of the cut: parabola for the exponents (1, 2, 3) of flow, head and
 *                                power, line for (2, 2, 4): one of "parabola" "line"; usually "parabola"
 *   -> trimmed_flows_m3h         flows at the trimmed diameter
 *   -> trimmed_powers_kW         power inputs at the trimmed diameter
 *
 *   Equation: Q' = Q (D'/D)^1 or ^2; P' = P (D'/D)^3 or ^4
 *   Must hold of powers: both series must have the same number of points
 *   Must hold of trimmed_diameter: the trimmed diameter must be at most the full diameter: an impeller is cut, not grown
 *   Must hold of trimmed_diameter: the trimmed diameter must be at least 0.7 of the full diameter, the limit set here
 *                                  for the trim laws
 *   Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2,
 *           2, 4): common practice; limit of the ratio 0.7: set here
 *   Caution: Trim laws are approximate and depart further below about 80 % of the full diameter; have the trim confirmed
 *            by the pump maker.
 *   Caution: Two sets of exponents are in use for flow, head and power: (1, 2, 3) and (2, 2, 4), the second for radial
 *            impellers whose outlet width stays. Take all three from one set; the defaults are the first. The second
 *            predicts less flow and power after the cut.
 */
CUTWATER_API cutwater_status cutwater_power_curve_at_trim(const double *flows_m3h, size_t flows_m3h_count, const double *powers_kW,
                                             size_t powers_kW_count, double diameter_mm, double trimmed_diameter_mm,
                                             const char *trim_law, double *trimmed_flows_m3h,
                                             size_t trimmed_flows_m3h_capacity, size_t *trimmed_flows_m3h_count,
                                             double *trimmed_powers_kW, size_t trimmed_powers_kW_capacity,
                                             size_t *trimmed_powers_kW_count, cutwater_refusal *refusal);

/*
 * Curves of head and efficiency on a viscous liquid, from those on water.
 *
 *   flows_m3h                    flows of the points on water; at least 3 points, rising; at least 0 m3/h
 *   heads_m                      heads of the points on water, of the whole pump; at least 3 points; above 0 m
 *   efficiencies                 efficiencies of the points on water; at least 3 points; from 0 to 1
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; below 1 mm2/s nothing is to be corrected,
 *                                above 3000 mm2/s the method does not hold; from 1 to 3000 mm2/s
 *   stages                       number of stages; whole number, from 1 to 100; usually 1
 *   water_viscosity_mm2s         kinematic viscosity of the water that the pump was tested on; from 0.2 to 2 mm2/s;
 *                                usually 1
 *   -> viscous_flows_m3h         flows on the viscous liquid
 *   -> viscous_heads_m           heads on the viscous liquid
 *   -> viscous_efficiencies      efficiencies on the viscous liquid
 *
 *   Equation: Q_vis = C_Q Q; H_vis = C_H(Q/Q_BEP) H; eta_vis = C_eta eta; Q_BEP and H_BEP from the curve on water
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of efficiencies: both series must have the same number of points
 *   Must hold of viscosity: the liquid must not be thinner than the water of the pump's test: no correction is needed
 *                           then
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature)
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow.
 *   Caution: The method's two branches do not join at B = 1: the efficiency ratio jumps there by a few per cent, as the
 *            standard prints it.
 */
CUTWATER_API cutwater_status cutwater_curve_viscous(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                       size_t heads_m_count, const double *efficiencies, size_t efficiencies_count,
                                       double speed_rpm, double viscosity_mm2s, double stages,
                                       double water_viscosity_mm2s, double *viscous_flows_m3h,
                                       size_t viscous_flows_m3h_capacity, size_t *viscous_flows_m3h_count,
                                       double *viscous_heads_m, size_t viscous_heads_m_capacity,
                                       size_t *viscous_heads_m_count, double *viscous_efficiencies,
                                       size_t viscous_efficiencies_capacity, size_t *viscous_efficiencies_count,
                                       cutwater_refusal *refusal);

/*
 * Head curve of equal pumps in parallel.
 *
 *   flows_m3h                    flows of one pump's points; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of one pump's points; at least 2 points; any
 *   pumps                        number of pumps running; whole number, from 1 to 100
 *   -> total_flows_m3h           flows of all together
 *   -> total_heads_m             heads of all together
 *
 *   Equation: Q_sum = z Q at the same H
 *   Must hold of heads: both series must have the same number of points
 *   Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it)
 *   Caution: Pumps in parallel need stable curves: with drooping ones the flow may swing from pump to pump; see
 *            curve_is_stable.
 *   Caution: Every pump in parallel needs a non-return valve, and one that delivers nothing runs at closed valve: see
 *            closed_valve_heating_rate.
 *   Caution: Losses between each pump and the common pipe are left out: take them off each pump's curve first.
 */
CUTWATER_API cutwater_status cutwater_curve_in_parallel(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                           size_t heads_m_count, double pumps, double *total_flows_m3h,
                                           size_t total_flows_m3h_capacity, size_t *total_flows_m3h_count,
                                           double *total_heads_m, size_t total_heads_m_capacity,
                                           size_t *total_heads_m_count, cutwater_refusal *refusal);

/*
 * Head curve of equal pumps or stages in series.
 *
 *   flows_m3h                    flows of one pump's points; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of one pump's points; at least 2 points; any
 *   pumps                        number of pumps or stages; whole number, from 1 to 100
 *   -> total_flows_m3h           flows of all together
 *   -> total_heads_m             heads of all together
 *
 *   Equation: H_sum = z H at the same Q
 *   Must hold of heads: both series must have the same number of points
 *   Source: heads add at the same flow; common practice, as in ISO 17769-1:2012, series operation (from memory of it)
 *   Caution: In series the second casing and seal stand the first pump's outlet pressure: check their ratings.
 */
CUTWATER_API cutwater_status cutwater_curve_in_series(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                         size_t heads_m_count, double pumps, double *total_flows_m3h,
                                         size_t total_flows_m3h_capacity, size_t *total_flows_m3h_count,
                                         double *total_heads_m, size_t total_heads_m_capacity,
                                         size_t *total_heads_m_count, cutwater_refusal *refusal);

/*
 * Head curve of two unlike pumps in parallel, each behind a non-return valve.
 *
 *   flows_1_m3h                  flows of pump 1, from 0 on; at least 2 points, rising; at least 0 m3/h
 *   heads_1_m                    heads of pump 1, falling; at least 2 points; any
 *   flows_2_m3h                  flows of pump 2, from 0 on; at least 2 points, rising; at least 0 m3/h
 *   heads_2_m                    heads of pump 2, falling; at least 2 points; any
 *   -> total_flows_m3h           flows of both together, down to the head at which one curve ends
 *   -> total_heads_m             heads of both together
 *
 *   Equation: Q_sum(H) = Q_1(H) + Q_2(H); a pump gives nothing above its own closed-valve head
 *   Must hold of heads_1: both series must have the same number of points
 *   Must hold of heads_2: both series must have the same number of points
 *   Must hold of heads_1: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                         give the falling part from closed valve on
 *   Must hold of flows_1: the curve must begin at closed valve, flow 0
 *   Must hold of heads_2: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                         give the falling part from closed valve on
 *   Must hold of flows_2: the curve must begin at closed valve, flow 0
 *   Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it)
 *   Caution: Every pump in parallel needs a non-return valve, and one that delivers nothing runs at closed valve: see
 *            closed_valve_heating_rate.
 *   Caution: Losses between each pump and the common pipe are left out: take them off each pump's curve first.
 *   Caution: Exact at its points only: a curve drawn through them smooths the kink where the weaker pump begins to
 *            deliver. For shares use flow_balance, flow_balance_of_three or flow_at_head.
 */
CUTWATER_API cutwater_status cutwater_two_curves_in_parallel(const double *flows_1_m3h, size_t flows_1_m3h_count,
                                                const double *heads_1_m, size_t heads_1_m_count,
                                                const double *flows_2_m3h, size_t flows_2_m3h_count,
                                                const double *heads_2_m, size_t heads_2_m_count,
                                                double *total_flows_m3h, size_t total_flows_m3h_capacity,
                                                size_t *total_flows_m3h_count, double *total_heads_m,
                                                size_t total_heads_m_capacity, size_t *total_heads_m_count,
                                                cutwater_refusal *refusal);

/*
 * Head curve of two unlike pumps in series.
 *
 *   flows_1_m3h                  flows of pump 1; at least 2 points, rising; at least 0 m3/h
 *   heads_1_m                    heads of pump 1; at least 2 points; any
 *   flows_2_m3h                  flows of pump 2; at least 2 points, rising; at least 0 m3/h
 *   heads_2_m                    heads of pump 2; at least 2 points; any
 *   -> total_flows_m3h           flows that both curves reach
 *   -> total_heads_m             heads of both together
 *
 *   Equation: H_sum(Q) = H_1(Q) + H_2(Q)
 *   Must hold of heads_1: both series must have the same number of points
 *   Must hold of heads_2: both series must have the same number of points
 *   Source: heads add at the same flow; common practice, as in ISO 17769-1:2012, series operation (from memory of it)
 *   Caution: In series the second casing and seal stand the first pump's outlet pressure: check their ratings.
 *   Caution: Beyond the smaller pump's last flow it is a throttle and nothing is told here.
 */
CUTWATER_API cutwater_status cutwater_two_curves_in_series(const double *flows_1_m3h, size_t flows_1_m3h_count,
                                              const double *heads_1_m, size_t heads_1_m_count,
                                              const double *flows_2_m3h, size_t flows_2_m3h_count,
                                              const double *heads_2_m, size_t heads_2_m_count,
                                              double *total_flows_m3h, size_t total_flows_m3h_capacity,
                                              size_t *total_flows_m3h_count, double *total_heads_m,
                                              size_t total_heads_m_capacity, size_t *total_heads_m_count,
                                              cutwater_refusal *refusal);

/*
 * Duty of two unlike pumps in parallel on one system, and each pump's share.
 *
 *   flows_1_m3h                  flows of pump 1, from 0 on; at least 2 points, rising; at least 0 m3/h
 *   heads_1_m                    heads of pump 1, falling; at least 2 points; any
 *   flows_2_m3h                  flows of pump 2, from 0 on; at least 2 points, rising; at least 0 m3/h
 *   heads_2_m                    heads of pump 2, falling; at least 2 points; any
 *   static_head_m                head of the system at no flow; any
 *   resistance_h2m5              system resistance: friction head over flow squared; at least 0 h2/m5
 *   -> total_flow_m3h            flow through the system
 *   -> head_m                    head common to both
 *   -> flow_1_m3h                flow of pump 1
 *   -> flow_2_m3h                flow of pump 2
 *   -> delivering                whether one of them delivers nothing, the head being above its closed-valve head
 *
 *   Equation: Q = Q_1(H) + Q_2(H), H = H_s + k Q^2
 *   Must hold of heads_1: both series must have the same number of points
 *   Must hold of heads_2: both series must have the same number of points
 *   Must hold of heads_1: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                         give the falling part from closed valve on
 *   Must hold of flows_1: the curve must begin at closed valve, flow 0
 *   Must hold of heads_2: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                         give the falling part from closed valve on
 *   Must hold of flows_2: the curve must begin at closed valve, flow 0
 *   Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it)
 *   Caution: Every pump in parallel needs a non-return valve, and one that delivers nothing runs at closed valve: see
 *            closed_valve_heating_rate.
 *   Caution: Losses between each pump and the common pipe are left out: take them off each pump's curve first.
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 */
CUTWATER_API cutwater_status cutwater_flow_balance(const double *flows_1_m3h, size_t flows_1_m3h_count, const double *heads_1_m,
                                      size_t heads_1_m_count, const double *flows_2_m3h, size_t flows_2_m3h_count,
                                      const double *heads_2_m, size_t heads_2_m_count, double static_head_m,
                                      double resistance_h2m5, double *total_flow_m3h, double *head_m,
                                      double *flow_1_m3h, double *flow_2_m3h, const char **delivering,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_flow_balance_rows(size_t rows, const double *flows_1_m3h, size_t flows_1_m3h_count,
                                           const double *heads_1_m, size_t heads_1_m_count, const double *flows_2_m3h,
                                           size_t flows_2_m3h_count, const double *heads_2_m, size_t heads_2_m_count,
                                           cutwater_column static_head_m, cutwater_column resistance_h2m5,
                                           cutwater_result_column total_flow_m3h, cutwater_result_column head_m,
                                           cutwater_result_column flow_1_m3h, cutwater_result_column flow_2_m3h,
                                           cutwater_result_column delivering, cutwater_rows_report *report);

/*
 * Duty of three unlike pumps in parallel on one system, and each pump's share.
 *
 *   flows_1_m3h                  flows of pump 1, from 0 on; at least 2 points, rising; at least 0 m3/h
 *   heads_1_m                    heads of pump 1, falling; at least 2 points; any
 *   flows_2_m3h                  flows of pump 2, from 0 on; at least 2 points, rising; at least 0 m3/h
 *   heads_2_m                    heads of pump 2, falling; at least 2 points; any
 *   flows_3_m3h                  flows of pump 3, from 0 on; at least 2 points, rising; at least 0 m3/h
 *   heads_3_m                    heads of pump 3, falling; at least 2 points; any
 *   static_head_m                head of the system at no flow; any
 *   resistance_h2m5              system resistance: friction head over flow squared; at least 0 h2/m5
 *   -> total_flow_m3h            flow through the system
 *   -> head_m                    head common to all
 *   -> flow_1_m3h                flow of pump 1
 *   -> flow_2_m3h                flow of pump 2
 *   -> flow_3_m3h                flow of pump 3
 *   -> delivering                the pumps that deliver; the head is above the closed-valve head of any other
 *
 *   Equation: Q = Q_1(H) + Q_2(H) + Q_3(H), H = H_s + k Q^2; a pump gives nothing above its own closed-valve head
 *   Must hold of heads_1: both series must have the same number of points
 *   Must hold of heads_2: both series must have the same number of points
 *   Must hold of heads_3: both series must have the same number of points
 *   Must hold of heads_1: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                         give the falling part from closed valve on
 *   Must hold of flows_1: the curve must begin at closed valve, flow 0
 *   Must hold of heads_2: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                         give the falling part from closed valve on
 *   Must hold of flows_2: the curve must begin at closed valve, flow 0
 *   Must hold of heads_3: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                         give the falling part from closed valve on
 *   Must hold of flows_3: the curve must begin at closed valve, flow 0
 *   Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it)
 *   Caution: Every pump in parallel needs a non-return valve, and one that delivers nothing runs at closed valve: see
 *            closed_valve_heating_rate.
 *   Caution: Losses between each pump and the common pipe are left out: take them off each pump's curve first.
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 *   Caution: More than three: combine with two_curves_in_parallel, find the duty_head, and read each share with
 *            flow_at_head; near a kink of the sum its rounding shows, so give the curves many points.
 */
CUTWATER_API cutwater_status cutwater_flow_balance_of_three(const double *flows_1_m3h, size_t flows_1_m3h_count,
                                               const double *heads_1_m, size_t heads_1_m_count,
                                               const double *flows_2_m3h, size_t flows_2_m3h_count,
                                               const double *heads_2_m, size_t heads_2_m_count,
                                               const double *flows_3_m3h, size_t flows_3_m3h_count,
                                               const double *heads_3_m, size_t heads_3_m_count, double static_head_m,
                                               double resistance_h2m5, double *total_flow_m3h, double *head_m,
                                               double *flow_1_m3h, double *flow_2_m3h, double *flow_3_m3h,
                                               const char **delivering, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_flow_balance_of_three_rows(size_t rows, const double *flows_1_m3h, size_t flows_1_m3h_count,
                                                    const double *heads_1_m, size_t heads_1_m_count,
                                                    const double *flows_2_m3h, size_t flows_2_m3h_count,
                                                    const double *heads_2_m, size_t heads_2_m_count,
                                                    const double *flows_3_m3h, size_t flows_3_m3h_count,
                                                    const double *heads_3_m, size_t heads_3_m_count,
                                                    cutwater_column static_head_m, cutwater_column resistance_h2m5,
                                                    cutwater_result_column total_flow_m3h,
                                                    cutwater_result_column head_m, cutwater_result_column flow_1_m3h,
                                                    cutwater_result_column flow_2_m3h,
                                                    cutwater_result_column flow_3_m3h,
                                                    cutwater_result_column delivering, cutwater_rows_report *report);

/*
 * Flow of a pump behind its non-return valve at a given head: its share when others in parallel set the head.
 *
 *   flows_m3h                    flows of the pump curve's points, from 0 on; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the curve's points, falling; at least 2 points; any
 *   head_m                       head that the pump works against; not below the curve's last; any
 *   -> flow_m3h                  flow at that head; 0 from the closed-valve head on
 *   -> share                     whether the pump delivers or is pushed back to no flow
 *
 *   Equation: H_pump(Q) = H; Q = 0 where H >= H_pump(0)
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of heads: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                       give the falling part from closed valve on
 *   Must hold of flows: the curve must begin at closed valve, flow 0
 *   Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it)
 *   Caution: Every pump in parallel needs a non-return valve, and one that delivers nothing runs at closed valve: see
 *            closed_valve_heating_rate.
 *   Caution: Losses between each pump and the common pipe are left out: take them off each pump's curve first.
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 */
CUTWATER_API cutwater_status cutwater_flow_at_head(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                      size_t heads_m_count, double head_m, double *flow_m3h, const char **share,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_flow_at_head_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                           const double *heads_m, size_t heads_m_count, cutwater_column head_m,
                                           cutwater_result_column flow_m3h, cutwater_result_column share,
                                           cutwater_rows_report *report);

/*
 * Flow that a bore carries at a mean velocity.
 *
 *   bore_mm                      inside diameter; from 1 to 10000 mm
 *   velocity_ms                  mean velocity; at least 0 m/s
 *   -> flow_m3h                  volume flow
 *
 *   Equation: Q = pi/4 d^2 v
 *   Source: continuity; common practice
 */
CUTWATER_API cutwater_status cutwater_flow_through_bore(double bore_mm, double velocity_ms, double *flow_m3h,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_flow_through_bore_rows(size_t rows, cutwater_column bore_mm, cutwater_column velocity_ms,
                                                cutwater_result_column flow_m3h, cutwater_rows_report *report);

/*
 * Rise of the head from the rated flow to closed valve, as a part of the rated head.
 *
 *   flows_m3h                    flows of the curve's points, from 0 on; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the curve's points; at least 2 points; above 0 m
 *   rated_flow_m3h               rated flow; above 0 m3/h
 *   -> head_rise                 0.12 for a rise of 12 %; negative when the head falls towards closed valve
 *
 *   Equation: (H_0 - H_r)/H_r, H_0 at no flow, H_r of the curve at Q_r
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of flows: the curve must begin at closed valve, flow 0
 *   Source: definition; common practice, as in ISO 13709:2009, head rise from rated point to shut-off (from memory of
 *           it)
 *   Caution: For pumps in parallel a rise of 10 % or more is commonly asked; pressure parts must stand the closed-valve
 *            head.
 */
CUTWATER_API cutwater_status cutwater_shutoff_head_rise(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                           size_t heads_m_count, double rated_flow_m3h, double *head_rise,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shutoff_head_rise_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                const double *heads_m, size_t heads_m_count,
                                                cutwater_column rated_flow_m3h, cutwater_result_column head_rise,
                                                cutwater_rows_report *report);

/*
 * Whether the head falls all the way with rising flow.
 *
 *   flows_m3h                    flows of the curve's points; at least 2 points, rising; at least 0 m3/h
 *   heads_m                      heads of the curve's points; at least 2 points; any
 *   -> shape                     stable: falls from point to point; flat: level between some; drooping: rises first;
 *                                dipping: rises after it has fallen
 *   -> top_flow_m3h              flow of the greatest listed head
 *   -> top_head_m                greatest listed head
 *
 *   Equation: stable when every H_i is less than the one before it
 *   Must hold of heads: both series must have the same number of points
 *   Source: stable and unstable curve, ISO 17769-1:2012 (from memory of it)
 *   Caution: Judged by the listed points: a droop between them, or below the first flow, is not seen.
 *   Caution: Pumps in parallel, and systems with a flat curve, need a stable pump curve.
 */
CUTWATER_API cutwater_status cutwater_curve_is_stable(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                         size_t heads_m_count, const char **shape, double *top_flow_m3h,
                                         double *top_head_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_curve_is_stable_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                              const double *heads_m, size_t heads_m_count,
                                              cutwater_result_column shape, cutwater_result_column top_flow_m3h,
                                              cutwater_result_column top_head_m, cutwater_rows_report *report);

/*
 * Polynomial through measured points by least squares, with its goodness of fit.
 *
 *   x_values                     the points' abscissas, in any one unit; at least 2 points, rising; any
 *   y_values                     the points' ordinates, in any one unit; at least 2 points; any
 *   degree                       greatest power of x; whole number, from 1 to 6
 *   -> coefficients              y = a_0 + a_1 x + a_2 x^2 + …
 *   -> determination             1 when the curve goes through every point
 *   -> deviation                 standard deviation of the points about the curve, in the unit of y; 0 when no point is
 *                                to spare
 *
 *   Equation: sum of (y_i - y(x_i))^2 least; R^2 = 1 - sum (y_i - y(x_i))^2/sum (y_i - mean)^2; s^2 = sum (y_i -
 *             y(x_i))^2/(N - m - 1)
 *   Must hold of y_values: both series must have the same number of points
 *   Must hold of degree: it must be less than the number of points
 *   Source: least squares by orthogonal polynomials, G. E. Forsythe, J. SIAM 5 (1957) 74-88 (from memory of it; agrees
 *           with NumPy's polyfit)
 *   Caution: A high degree swings between the points: look at the curve before using it; outside the points it says
 *            nothing.
 */
CUTWATER_API cutwater_status cutwater_curve_fit(const double *x_values, size_t x_values_count, const double *y_values,
                                   size_t y_values_count, double degree, double *coefficients,
                                   size_t coefficients_capacity, size_t *coefficients_count, double *determination,
                                   double *deviation, cutwater_refusal *refusal);

/*
 * Value of the least-squares polynomial through measured points.
 *
 *   x_values                     the points' abscissas, in any one unit; at least 2 points, rising; any
 *   y_values                     the points' ordinates, in any one unit; at least 2 points; any
 *   degree                       greatest power of x; whole number, from 1 to 6
 *   x                            where to read the curve; between the first and the last point; any
 *   -> y                         ordinate of the fitted curve there
 *
 *   Equation: y(x) of the polynomial that curve_fit finds
 *   Must hold of y_values: both series must have the same number of points
 *   Must hold of degree: it must be less than the number of points
 *   Source: least squares by orthogonal polynomials, G. E. Forsythe, J. SIAM 5 (1957) 74-88 (from memory of it; agrees
 *           with NumPy's polyfit)
 *   Caution: A high degree swings between the points: look at the curve before using it.
 */
CUTWATER_API cutwater_status cutwater_fitted_value(const double *x_values, size_t x_values_count, const double *y_values,
                                      size_t y_values_count, double degree, double x, double *y,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_fitted_value_rows(size_t rows, const double *x_values, size_t x_values_count,
                                           const double *y_values, size_t y_values_count, cutwater_column degree,
                                           cutwater_column x, cutwater_result_column y, cutwater_rows_report *report);

/* ---- Acceptance test ---- */

/*
 * Tolerances of an acceptance grade, as parts of the guaranteed values.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others: one of
 *                                "1U" "1E" "1B" "2B" "2U" "3B"
 *   power_input_kW               greatest power input over the range, 1 to 10 kW, to apply the rule for small pumps; 0
 *                                to keep to the grade; from 0 to 10 kW; usually 0
 *   -> flow_low                  lowest flow, -0.05 for 5 % below
 *   -> flow_high                 highest flow
 *   -> head_low                  lowest head
 *   -> head_high                 highest head
 *   -> power_high                highest power; no lower limit
 *   -> efficiency_low            lowest efficiency, as a part of the guaranteed one; no upper limit
 *
 *   Equation: by the grade; up to 10 kW, when asked for: tau_Q = +-10 %, tau_H = +-8 %, tau_eta = -[10 (1 - P/10 kW) +
 *             7] %, tau_P = sqrt(7^2 + tau_eta^2) %
 *   Must hold of power_input: the rule for small pumps begins at 1 kW: below, the tolerances are a matter of agreement
 *   Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it)
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the wider rule for small pumps holds unless otherwise agreed: give power_input to apply it, in
 *            place of the grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_tolerances(const char *grade, double power_input_kW, double *flow_low,
                                               double *flow_high, double *head_low, double *head_high,
                                               double *power_high, double *efficiency_low, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_tolerances_rows(size_t rows, const char *grade, cutwater_column power_input_kW,
                                                    cutwater_result_column flow_low, cutwater_result_column flow_high,
                                                    cutwater_result_column head_low, cutwater_result_column head_high,
                                                    cutwater_result_column power_high,
                                                    cutwater_result_column efficiency_low,
                                                    cutwater_rows_report *report);

/*
 * Lowest and highest measured value that an acceptance grade allows.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others: one of
 *                                "1U" "1E" "1B" "2B" "2U" "3B"
 *   quantity                     what is guaranteed: one of "flow" "head" "power" "efficiency"
 *   guaranteed_value             guaranteed value in any unit; an efficiency as a fraction; above 0
 *   power_input_kW               greatest power input over the range, 1 to 10 kW, to apply the rule for small pumps; 0
 *                                to keep to the grade; from 0 to 10 kW; usually 0
 *   -> lowest                    in the same unit; 0 for power, which has no lower limit
 *   -> highest                   in the same unit; 1 for efficiency, which has no upper limit
 *
 *   Equation: G_low = G (1 + tau_low), G_high = G (1 + tau_high)
 *   Must hold of guaranteed_value: an efficiency must be given as a fraction, up to 1
 *   Must hold of power_input: the rule for small pumps begins at 1 kW: below, the tolerances are a matter of agreement
 *   Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it)
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the wider rule for small pumps holds unless otherwise agreed: give power_input to apply it, in
 *            place of the grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_limits(const char *grade, const char *quantity, double guaranteed_value,
                                           double power_input_kW, double *lowest, double *highest,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_limits_rows(size_t rows, const char *grade, const char *quantity,
                                                cutwater_column guaranteed_value, cutwater_column power_input_kW,
                                                cutwater_result_column lowest, cutwater_result_column highest,
                                                cutwater_rows_report *report);

/*
 * Whether a measured head curve keeps the guaranteed flow and head.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others: one of
 *                                "1U" "1E" "1B" "2B" "2U" "3B"
 *   guaranteed_flow_m3h          guaranteed flow; above 0 m3/h
 *   guaranteed_head_m            guaranteed head; above 0 m
 *   flows_m3h                    measured flows, translated to the guaranteed speed; at least 2 points, rising; at least
 *                                0 m3/h
 *   heads_m                      measured heads, translated to the guaranteed speed; at least 2 points; any
 *   power_input_kW               greatest power input over the range, 1 to 10 kW, to apply the rule for small pumps; 0
 *                                to keep to the grade; from 0 to 10 kW; usually 0
 *   -> verdict                   pass when the curve crosses or touches at least one bar of the tolerance cross
 *   -> head_at_flow_m            measured head at the guaranteed flow
 *   -> flow_at_head_m3h          measured flow at the guaranteed head, the one on the level bar if there are several;
 *                                where the curve comes nearest to it if it has it nowhere
 *
 *   Equation: H_G (1 + tau_H-) <= H(Q_G) <= H_G (1 + tau_H+), or Q_G (1 + tau_Q-) <= Q(H_G) <= Q_G (1 + tau_Q+)
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of power_input: the rule for small pumps begins at 1 kW: below, the tolerances are a matter of agreement
 *   Source: ISO 9906:2012, 4.4 and evaluation of flow and head (from memory of it; an excerpt on the tolerance cross
 *           read)
 *   Caution: Translate the measured points to the guaranteed speed first: see test_to_rated_speed.
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the wider rule for small pumps holds unless otherwise agreed: give power_input to apply it, in
 *            place of the grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_verdict(const char *grade, double guaranteed_flow_m3h, double guaranteed_head_m,
                                            const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                            size_t heads_m_count, double power_input_kW, const char **verdict,
                                            double *head_at_flow_m, double *flow_at_head_m3h,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_verdict_rows(size_t rows, const char *grade, cutwater_column guaranteed_flow_m3h,
                                                 cutwater_column guaranteed_head_m, const double *flows_m3h,
                                                 size_t flows_m3h_count, const double *heads_m, size_t heads_m_count,
                                                 cutwater_column power_input_kW, cutwater_result_column verdict,
                                                 cutwater_result_column head_at_flow_m,
                                                 cutwater_result_column flow_at_head_m3h,
                                                 cutwater_rows_report *report);

/*
 * Whether measured curves keep the guaranteed efficiency.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others: one of
 *                                "1U" "1E" "1B" "2B" "2U" "3B"
 *   guaranteed_flow_m3h          guaranteed flow; above 0 m3/h
 *   guaranteed_head_m            guaranteed head; above 0 m
 *   guaranteed_efficiency        guaranteed efficiency; above 0 up to 1
 *   flows_m3h                    measured flows, translated to the guaranteed speed; at least 2 points, rising; at least
 *                                0 m3/h
 *   heads_m                      measured heads, translated to the guaranteed speed; at least 2 points; any
 *   efficiencies                 measured efficiencies at those flows; at least 2 points; from 0 to 1
 *   power_input_kW               greatest power input over the range, 1 to 10 kW, to apply the rule for small pumps; 0
 *                                to keep to the grade; from 0 to 10 kW; usually 0
 *   -> verdict                   pass when the efficiency there is not below its limit
 *   -> efficiency                measured efficiency there
 *   -> flow_m3h                  flow at which the line from the origin through the guaranteed point meets the head
 *                                curve, the nearest to Q_G if it meets it more than once
 *
 *   Equation: eta(Q) >= eta_G (1 + tau_eta) where H(Q) = H_G Q/Q_G
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of efficiencies: both series must have the same number of points
 *   Must hold of power_input: the rule for small pumps begins at 1 kW: below, the tolerances are a matter of agreement
 *   Source: ISO 9906:2012, 4.4 and evaluation of efficiency and power on the line through the origin (from memory of it)
 *   Caution: Translate the measured points to the guaranteed speed first: see test_to_rated_speed.
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the wider rule for small pumps holds unless otherwise agreed: give power_input to apply it, in
 *            place of the grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_verdict_efficiency(const char *grade, double guaranteed_flow_m3h,
                                                       double guaranteed_head_m, double guaranteed_efficiency,
                                                       const double *flows_m3h, size_t flows_m3h_count,
                                                       const double *heads_m, size_t heads_m_count,
                                                       const double *efficiencies, size_t efficiencies_count,
                                                       double power_input_kW, const char **verdict,
                                                       double *efficiency, double *flow_m3h,
                                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_verdict_efficiency_rows(size_t rows, const char *grade,
                                                            cutwater_column guaranteed_flow_m3h,
                                                            cutwater_column guaranteed_head_m,
                                                            cutwater_column guaranteed_efficiency,
                                                            const double *flows_m3h, size_t flows_m3h_count,
                                                            const double *heads_m, size_t heads_m_count,
                                                            const double *efficiencies, size_t efficiencies_count,
                                                            cutwater_column power_input_kW,
                                                            cutwater_result_column verdict,
                                                            cutwater_result_column efficiency,
                                                            cutwater_result_column flow_m3h,
                                                            cutwater_rows_report *report);

/*
 * Whether measured curves keep the guaranteed power input.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others: one of
 *                                "1U" "1E" "1B" "2B" "2U" "3B"
 *   guaranteed_flow_m3h          guaranteed flow; above 0 m3/h
 *   guaranteed_head_m            guaranteed head; above 0 m
 *   guaranteed_power_kW          guaranteed power input; above 0 kW
 *   flows_m3h                    measured flows, translated to the guaranteed speed; at least 2 points, rising; at least
 *                                0 m3/h
 *   heads_m                      measured heads, translated to the guaranteed speed; at least 2 points; any
 *   powers_kW                    measured power inputs at those flows, translated to the guaranteed speed; at least 2
 *                                points; at least 0 kW
 *   power_input_kW               greatest power input over the range, 1 to 10 kW, to apply the rule for small pumps; 0
 *                                to keep to the grade; from 0 to 10 kW; usually 0
 *   -> verdict                   pass when the power there is not above its limit
 *   -> power_kW                  measured power input there
 *   -> flow_m3h                  flow at which the line from the origin through the guaranteed point meets the head
 *                                curve, the nearest to Q_G if it meets it more than once
 *
 *   Equation: P(Q) <= P_G (1 + tau_P) where H(Q) = H_G Q/Q_G
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of powers: both series must have the same number of points
 *   Must hold of power_input: the rule for small pumps begins at 1 kW: below, the tolerances are a matter of agreement
 *   Must hold of power_input: the greatest power input over the range cannot be less than the guaranteed one
 *   Source: ISO 9906:2012, 4.4 and evaluation of efficiency and power on the line through the origin (from memory of it)
 *   Caution: Translate the measured points to the guaranteed speed first: see test_to_rated_speed.
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the wider rule for small pumps holds unless otherwise agreed: give power_input to apply it, in
 *            place of the grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_verdict_power(const char *grade, double guaranteed_flow_m3h,
                                                  double guaranteed_head_m, double guaranteed_power_kW,
                                                  const double *flows_m3h, size_t flows_m3h_count,
                                                  const double *heads_m, size_t heads_m_count,
                                                  const double *powers_kW, size_t powers_kW_count,
                                                  double power_input_kW, const char **verdict, double *power_kW,
                                                  double *flow_m3h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_verdict_power_rows(size_t rows, const char *grade,
                                                       cutwater_column guaranteed_flow_m3h,
                                                       cutwater_column guaranteed_head_m,
                                                       cutwater_column guaranteed_power_kW, const double *flows_m3h,
                                                       size_t flows_m3h_count, const double *heads_m,
                                                       size_t heads_m_count, const double *powers_kW,
                                                       size_t powers_kW_count, cutwater_column power_input_kW,
                                                       cutwater_result_column verdict,
                                                       cutwater_result_column power_kW,
                                                       cutwater_result_column flow_m3h, cutwater_rows_report *report);

/*
 * Deviation of a measured value from the guaranteed one, and its margin in an acceptance grade.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others: one of
 *                                "1U" "1E" "1B" "2B" "2U" "3B"
 *   quantity                     what is guaranteed: one of "flow" "head" "power" "efficiency"
 *   guaranteed_value             guaranteed value in any unit; an efficiency as a fraction; above 0
 *   measured_value               measured value in the same unit, as a verdict's function gives it; at least 0
 *   power_input_kW               greatest power input over the range, 1 to 10 kW, to apply the rule for small pumps; 0
 *                                to keep to the grade; from 0 to 10 kW; usually 0
 *   -> deviation                 part of the guaranteed value, -0.02 for 2 % below
 *   -> margin                    distance to the nearer limit; negative when outside its tolerance
 *
 *   Equation: d = M/G - 1; m = min(d - tau_low, tau_high - d); power: m = tau_P - d; efficiency: m = d - tau_eta
 *   Must hold of measured_value: an efficiency, guaranteed or measured, must be a fraction, up to 1
 *   Must hold of power_input: the rule for small pumps begins at 1 kW: below, the tolerances are a matter of agreement
 *   Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it)
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the wider rule for small pumps holds unless otherwise agreed: give power_input to apply it, in
 *            place of the grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 *   Caution: Flow and head need not both keep their tolerances: it is enough that the curve touches one bar of the
 *            cross, see acceptance_verdict.
 */
CUTWATER_API cutwater_status cutwater_acceptance_margin(const char *grade, const char *quantity, double guaranteed_value,
                                           double measured_value, double power_input_kW, double *deviation,
                                           double *margin, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_margin_rows(size_t rows, const char *grade, const char *quantity,
                                                cutwater_column guaranteed_value, cutwater_column measured_value,
                                                cutwater_column power_input_kW, cutwater_result_column deviation,
                                                cutwater_result_column margin, cutwater_rows_report *report);

/*
 * Deviations of a measured head curve from the guaranteed point, and their margins in an acceptance grade.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others: one of
 *                                "1U" "1E" "1B" "2B" "2U" "3B"
 *   guaranteed_flow_m3h          guaranteed flow; above 0 m3/h
 *   guaranteed_head_m            guaranteed head; above 0 m
 *   flows_m3h                    measured flows, translated to the guaranteed speed; at least 2 points, rising; at least
 *                                0 m3/h
 *   heads_m                      measured heads, translated to the guaranteed speed; at least 2 points; any
 *   power_input_kW               greatest power input over the range, 1 to 10 kW, to apply the rule for small pumps; 0
 *                                to keep to the grade; from 0 to 10 kW; usually 0
 *   -> head_deviation            of the head at the guaranteed flow, as a part of the guaranteed head
 *   -> head_margin               distance to the nearer limit; negative when outside its tolerance
 *   -> flow_deviation            of the flow at the guaranteed head, as a part of the guaranteed flow
 *   -> flow_margin               distance to the nearer limit; negative when outside its tolerance
 *
 *   Equation: d_H = H(Q_G)/H_G - 1; d_Q = Q(H_G)/Q_G - 1; m = min(d - tau_low, tau_high - d); the guarantee is kept when
 *             either margin is not negative
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of power_input: the rule for small pumps begins at 1 kW: below, the tolerances are a matter of agreement
 *   Source: ISO 9906:2012, 4.4 and evaluation of flow and head (from memory of it; an excerpt on the tolerance cross
 *           read)
 *   Caution: Translate the measured points to the guaranteed speed first: see test_to_rated_speed.
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the wider rule for small pumps holds unless otherwise agreed: give power_input to apply it, in
 *            place of the grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_margins(const char *grade, double guaranteed_flow_m3h, double guaranteed_head_m,
                                            const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                            size_t heads_m_count, double power_input_kW, double *head_deviation,
                                            double *head_margin, double *flow_deviation, double *flow_margin,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_margins_rows(size_t rows, const char *grade, cutwater_column guaranteed_flow_m3h,
                                                 cutwater_column guaranteed_head_m, const double *flows_m3h,
                                                 size_t flows_m3h_count, const double *heads_m, size_t heads_m_count,
                                                 cutwater_column power_input_kW,
                                                 cutwater_result_column head_deviation,
                                                 cutwater_result_column head_margin,
                                                 cutwater_result_column flow_deviation,
                                                 cutwater_result_column flow_margin, cutwater_rows_report *report);

/*
 * Measured values translated to the rated speed and density.
 *
 *   flow_m3h                     measured flow; at least 0 m3/h
 *   head_m                       measured head; any
 *   power_kW                     measured power input; at least 0 kW
 *   npsh3_m                      measured NPSH3; 0 when it was not measured; at least 0 m
 *   test_speed_rpm               speed at the test; above 0 up to 100000 1/min
 *   rated_speed_rpm              rated speed; above 0 up to 100000 1/min
 *   test_density_kgm3            density of the test liquid; from 50 to 25000 kg/m3
 *   rated_density_kgm3           density of the rated liquid; from 50 to 25000 kg/m3
 *   npsh_exponent                2 while speed and flow lie within the standard's limits; down to 1.3 otherwise, by
 *                                agreement; from 1.3 to 2; usually 2
 *   -> rated_flow_m3h            flow at the rated speed
 *   -> rated_head_m              head at the rated speed
 *   -> rated_power_kW            power input at the rated speed and density
 *   -> rated_npsh3_m             NPSH3 at the rated speed
 *
 *   Equation: Q_T = Q n_sp/n; H_T = H (n_sp/n)^2; P_T = P (n_sp/n)^3 rho_sp/rho; NPSH3_T = NPSH3 (n_sp/n)^x; the
 *             efficiency stays
 *   Must hold of test_speed: the test must run at 50 to 120 % of the rated speed
 *   Must hold of test_speed: a test of NPSH must run at 80 to 120 % of the rated speed
 *   Source: ISO 9906:2012, 6.1.2, translation of the test results (from memory of it)
 *   Caution: For thin liquids only: a viscous test liquid or rated liquid needs the viscosity correction.
 *   Caution: More than 20 % from the rated speed the efficiency itself shifts, and with it the translated power (ISO
 *            9906, from memory).
 */
CUTWATER_API cutwater_status cutwater_test_to_rated_speed(double flow_m3h, double head_m, double power_kW, double npsh3_m,
                                             double test_speed_rpm, double rated_speed_rpm, double test_density_kgm3,
                                             double rated_density_kgm3, double npsh_exponent, double *rated_flow_m3h,
                                             double *rated_head_m, double *rated_power_kW, double *rated_npsh3_m,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_test_to_rated_speed_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                  cutwater_column power_kW, cutwater_column npsh3_m,
                                                  cutwater_column test_speed_rpm, cutwater_column rated_speed_rpm,
                                                  cutwater_column test_density_kgm3,
                                                  cutwater_column rated_density_kgm3, cutwater_column npsh_exponent,
                                                  cutwater_result_column rated_flow_m3h,
                                                  cutwater_result_column rated_head_m,
                                                  cutwater_result_column rated_power_kW,
                                                  cutwater_result_column rated_npsh3_m, cutwater_rows_report *report);

/*
 * All points of a test translated to the rated speed and density, with their efficiencies.
 *
 *   flows_m3h                    measured flows; at least 1 points; at least 0 m3/h
 *   heads_m                      measured heads; at least 1 points; at least 0 m
 *   powers_kW                    measured pump power inputs; at least 1 points; above 0 kW
 *   test_speeds_rpm              speed at each point, as measured; at least 1 points; above 0 up to 100000 1/min
 *   rated_speed_rpm              rated speed; above 0 up to 100000 1/min
 *   test_density_kgm3            density of the test liquid; from 50 to 25000 kg/m3
 *   rated_density_kgm3           density of the rated liquid; from 50 to 25000 kg/m3
 *   -> rated_flows_m3h           flows at the rated speed, in the order given
 *   -> rated_heads_m             heads at the rated speed
 *   -> rated_powers_kW           power inputs at the rated speed and density
 *   -> efficiencies              pump efficiencies, which the translation keeps
 *
 *   Equation: Q_T = Q n_sp/n_i; H_T = H (n_sp/n_i)^2; P_T = P (n_sp/n_i)^3 rho_sp/rho; eta = rho g Q H/P
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of powers: both series must have the same number of points
 *   Must hold of test_speeds: every point needs the speed that it was measured at
 *   Must hold of test_speeds: every point must be measured at 50 to 120 % of the rated speed
 *   Source: ISO 9906:2012, 6.1.2, translation of the test results (from memory of it); efficiency by ISO 17769-1 (from
 *           memory of it)
 *   Caution: For thin liquids only: a viscous test liquid or rated liquid needs the viscosity correction.
 *   Caution: More than 20 % from the rated speed the efficiency itself shifts, and with it the translated power (ISO
 *            9906, from memory).
 *   Caution: The power is the pump's power input, not what the motor takes from the mains.
 */
CUTWATER_API cutwater_status cutwater_test_points_to_rated_speed(const double *flows_m3h, size_t flows_m3h_count,
                                                    const double *heads_m, size_t heads_m_count,
                                                    const double *powers_kW, size_t powers_kW_count,
                                                    const double *test_speeds_rpm, size_t test_speeds_rpm_count,
                                                    double rated_speed_rpm, double test_density_kgm3,
                                                    double rated_density_kgm3, double *rated_flows_m3h,
                                                    size_t rated_flows_m3h_capacity, size_t *rated_flows_m3h_count,
                                                    double *rated_heads_m, size_t rated_heads_m_capacity,
                                                    size_t *rated_heads_m_count, double *rated_powers_kW,
                                                    size_t rated_powers_kW_capacity, size_t *rated_powers_kW_count,
                                                    double *efficiencies, size_t efficiencies_capacity,
                                                    size_t *efficiencies_count, cutwater_refusal *refusal);

/*
 * Random part of a measured value's uncertainty, from repeated readings.
 *
 *   readings                     repeated readings of one quantity, in any unit; at least 3 points; any
 *   -> random_percent            per cent of the mean, at a confidence of 95 %
 *
 *   Equation: e_R = 100 t s/(mean sqrt(N)), t by Student, 95 %, N - 1 degrees of freedom
 *   Must hold of readings: the mean of the readings must not be 0: the uncertainty is a part of it
 *   Source: ISO 9906:2012, 4.3 (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_random_uncertainty(const double *readings, size_t readings_count, double *random_percent,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_random_uncertainty_rows(size_t rows, const double *readings, size_t readings_count,
                                                 cutwater_result_column random_percent, cutwater_rows_report *report);

/*
 * Overall uncertainty of a measured value.
 *
 *   systematic_percent           systematic part, of instrument and method; from 0 to 100 %
 *   random_percent               random part, as from random_uncertainty; from 0 to 100 %
 *   -> overall_percent           overall uncertainty
 *
 *   Equation: e = sqrt(e_S^2 + e_R^2)
 *   Source: ISO 9906:2012, 4.3 (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_measurement_uncertainty(double systematic_percent, double random_percent,
                                                 double *overall_percent, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_measurement_uncertainty_rows(size_t rows, cutwater_column systematic_percent,
                                                      cutwater_column random_percent,
                                                      cutwater_result_column overall_percent,
                                                      cutwater_rows_report *report);

/*
 * Uncertainty of a measured efficiency, from those of what it is made of.
 *
 *   flow_uncertainty_percent     overall uncertainty of the flow; from 0 to 100 %
 *   head_uncertainty_percent     overall uncertainty of the head; from 0 to 100 %
 *   power_uncertainty_percent    overall uncertainty of the power, or of the torque; from 0 to 100 %
 *   speed_uncertainty_percent    overall uncertainty of the speed, when the torque is measured; from 0 to 100 %; usually
 *                                0
 *   -> efficiency_uncertainty_percent overall uncertainty of the efficiency, as a part of it
 *
 *   Equation: e_eta = sqrt(e_Q^2 + e_H^2 + e_P^2 + e_n^2)
 *   Source: ISO 9906:2012, 4.3 (from memory of it)
 */
CUTWATER_API cutwater_status cutwater_efficiency_uncertainty(double flow_uncertainty_percent, double head_uncertainty_percent,
                                                double power_uncertainty_percent, double speed_uncertainty_percent,
                                                double *efficiency_uncertainty_percent, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_efficiency_uncertainty_rows(size_t rows, cutwater_column flow_uncertainty_percent,
                                                     cutwater_column head_uncertainty_percent,
                                                     cutwater_column power_uncertainty_percent,
                                                     cutwater_column speed_uncertainty_percent,
                                                     cutwater_result_column efficiency_uncertainty_percent,
                                                     cutwater_rows_report *report);

/*
 * Greatest overall uncertainty that an acceptance test may have.
 *
 *   test_grade                   grade of the test: 1, 2 or 3: one of "1" "2" "3"
 *   quantity                     what is measured: one of "flow" "speed" "torque" "head" "driver power" "power from
 *                                torque and speed" "power from driver power" "efficiency from torque and speed"
 *                                "efficiency from driver power"
 *   -> overall_percent           greatest overall uncertainty
 *
 *   Equation: by the table; grades 2 and 3 have the same
 *   Source: ISO 9906:2012, 4.3, Table 7 (from memory of it; the values for power and efficiency follow from the others
 *           by root-sum-square)
 */
CUTWATER_API cutwater_status cutwater_allowed_uncertainty(const char *test_grade, const char *quantity, double *overall_percent,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_allowed_uncertainty_rows(size_t rows, const char *test_grade, const char *quantity,
                                                  cutwater_result_column overall_percent,
                                                  cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

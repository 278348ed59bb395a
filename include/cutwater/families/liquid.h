/* generated from the catalogue by cutwater-generate; do not edit. */
/* Liquid properties, pressure and head. */
#ifndef CUTWATER_FAMILIES_LIQUID_H
#define CUTWATER_FAMILIES_LIQUID_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

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
 *                                0.006112126774 to 220.64 bara
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
 *                                temperatures given here do not follow it; "bar_K", "bar_degC", "mmHg_degC", "mmHg_K",
 *                                "kPa_degC" or "kPa_K"
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
 * Density of a liquid between two temperatures at which it is known.
 *
 *   first_temperature_degC       lower temperature; above -273.15 up to 1000 degC
 *   first_density_kgm3           density there; from 50 to 25000 kg/m3
 *   second_temperature_degC      higher temperature; above -273.15 up to 1000 degC
 *   second_density_kgm3          density there; from 50 to 25000 kg/m3
 *   temperature_degC             temperature at which the density is wanted, between the two; above -273.15 up to 1000
 *                                degC
 *   -> density_kgm3              density there
 *
 *   Equation: rho = rho_1 + (rho_2 - rho_1)(T - T_1)/(T_2 - T_1)
 *   Must hold of second_temperature: it must be higher than the first temperature
 *   Must hold of temperature: it must lie between the two temperatures: the line is not drawn on beyond them
 *   Source: straight line between two points; common practice
 *   Caution: A liquid's density bends a little: over 100 K the line lies up to about half a per cent below it. Take
 *            points close by; near the boiling point at high pressure it falls much faster.
 *   Caution: Size the motor and the casing for the greatest density, the coldest start.
 */
CUTWATER_API cutwater_status cutwater_density_two_point(double first_temperature_degC, double first_density_kgm3,
                                           double second_temperature_degC, double second_density_kgm3,
                                           double temperature_degC, double *density_kgm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_density_two_point_rows(size_t rows, cutwater_column first_temperature_degC,
                                                cutwater_column first_density_kgm3,
                                                cutwater_column second_temperature_degC,
                                                cutwater_column second_density_kgm3, cutwater_column temperature_degC,
                                                cutwater_result_column density_kgm3, cutwater_rows_report *report);

/*
 * Relative density (specific gravity) of a liquid.
 *
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   reference_density_kgm3       density that the relative density refers to; from 50 to 25000 kg/m3; 1000 if left out
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
 *   reference_density_kgm3       density that the relative density refers to; from 50 to 25000 kg/m3; 1000 if left out
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
 *   ambient_pressure_bara        barometric pressure at the gauge; from 0.3 to 2 bara
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
 *   ambient_pressure_bara        barometric pressure at the gauge; from 0.3 to 2 bara
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

#ifdef __cplusplus
}
#endif

#endif

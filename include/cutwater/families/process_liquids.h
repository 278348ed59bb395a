/* generated from the catalogue by cutwater-generate; do not edit. */
/* Process liquids. */
#ifndef CUTWATER_FAMILIES_PROCESS_LIQUIDS_H
#define CUTWATER_FAMILIES_PROCESS_LIQUIDS_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Density of an acid, a lye or a brine by its concentration and temperature.
 *
 *   solute                       what is dissolved in the water; "sulphuric acid", "hydrochloric acid", "nitric acid",
 *                                "phosphoric acid", "caustic soda", "caustic potash", "sodium chloride", "calcium
 *                                chloride", "sodium carbonate" or "iron(III) chloride"
 *   mass_fraction                the solute's share of the solution by mass, taken as anhydrous; from 0 to 0.9
 *   temperature_degC             temperature of the solution; from -20 to 160 degC
 *   -> density_kgm3              density of the solution near atmospheric pressure
 *
 *   Equation: 1/rho = (1 - w)/rho_w(t) + w/rho_a; rho_a = (c0 w + c1) exp(1e-6 (t + c4)^2)/(w + c2 + c3 t)
 *   Source: M. Laliberte and W. E. Cooper, J. Chem. Eng. Data 49 (2004) 1141, constants of M. Laliberte, J. Chem. Eng.
 *           Data 54 (2009) 1725; equations and constants as the open library thermo carries them (read)
 *   Caution: Sulphuric acid is covered to 78 % only: for the strong acid's density see strong_sulphuric_acid_density,
 *            for its viscosity and for oleum take measured data.
 *   Caution: Against a handbook's table at 20 degC (read) it is within 0.3 %, caustic potash within 0.7 %.
 *   Caution: Sulphuric acid of 70 to 78 % comes out too heavy when hot, against the International Critical Tables by 0.9
 *            % at 60 degC and 1.5 % at 75 degC: from 74 % on take strong_sulphuric_acid_density. Hot caustic soda of 50
 *            % too, by 1.6 % at 100 degC: see strong_caustic_soda_density.
 *   Caution: Technical grades hold other salts, and a brine may be at its limit of solubility or freezing: neither is
 *            checked here.
 *   Caution: Size the motor and the casing for the greatest density: the coldest and strongest solution.
 *   Caution: With strong acid, lye or hot brine a leak injures: the site's rules, the pump maker's limits and the
 *            material's data go before this.
 */
CUTWATER_API cutwater_status cutwater_solution_density(const char *solute, double mass_fraction, double temperature_degC,
                                          double *density_kgm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_solution_density_rows(size_t rows, const char *solute, cutwater_column mass_fraction,
                                               cutwater_column temperature_degC, cutwater_result_column density_kgm3,
                                               cutwater_rows_report *report);

/*
 * Dynamic viscosity of an acid, a lye or a brine by its concentration and temperature.
 *
 *   solute                       what is dissolved in the water; "sulphuric acid", "hydrochloric acid", "nitric acid",
 *                                "phosphoric acid", "caustic soda", "caustic potash", "sodium chloride", "calcium
 *                                chloride", "sodium carbonate" or "iron(III) chloride"
 *   mass_fraction                the solute's share of the solution by mass, taken as anhydrous; from 0 to 0.9
 *   temperature_degC             temperature of the solution; from -20 to 160 degC
 *   -> viscosity_mPas            dynamic viscosity of the solution
 *
 *   Equation: ln mu = (1 - w) ln mu_w(t) + w ln mu_s; mu_s = exp[(v1 w^v2 + v3)/(v4 t + 1)]/(v5 w^v6 + 1), in mPa s
 *   Source: M. Laliberte, J. Chem. Eng. Data 52 (2007) 321, constants of the same, J. Chem. Eng. Data 54 (2009) 1725;
 *           equations and constants as the open library thermo carries them (read)
 *   Caution: Sulphuric acid is covered to 78 % only: for the strong acid's density see strong_sulphuric_acid_density,
 *            for its viscosity and for oleum take measured data.
 *   Caution: Against a handbook's table at 20 degC (read) it is within about 6 %, caustic potash of 50 % within 9 %.
 *   Caution: The fits' viscosity below 0.1 % by mass goes straight to that of water: the one of nitric acid would run
 *            away there.
 *   Caution: Strong lye thickens steeply in the cold: take the viscosity of the coldest start.
 *   Caution: Technical grades hold other salts, and a brine may be at its limit of solubility or freezing: neither is
 *            checked here.
 *   Caution: With strong acid, lye or hot brine a leak injures: the site's rules, the pump maker's limits and the
 *            material's data go before this.
 */
CUTWATER_API cutwater_status cutwater_solution_dynamic_viscosity(const char *solute, double mass_fraction, double temperature_degC,
                                                    double *viscosity_mPas, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_solution_dynamic_viscosity_rows(size_t rows, const char *solute,
                                                         cutwater_column mass_fraction,
                                                         cutwater_column temperature_degC,
                                                         cutwater_result_column viscosity_mPas,
                                                         cutwater_rows_report *report);

/*
 * Density of strong sulphuric acid, 74 to 100 % by mass, by its concentration and temperature.
 *
 *   mass_fraction                the acid's share by mass; from 0.74 to 1
 *   temperature_degC             temperature of the acid; from 0 to 100 degC
 *   -> density_kgm3              density near atmospheric pressure
 *
 *   Equation: rho = a(w) + b(w) T with the table's a and b, straight between its shares; T in kelvin
 *   Source: International Critical Tables 3 (1928), 0 to 100 degC, as straight lines of an open atmospheric code (read);
 *           the tables not read
 *   Caution: Against a handbook's table at 20 degC (read) it is within 0.03 %; a few tenths of a per cent from the
 *            correlation of solution_density where both reach.
 *   Caution: Density does not tell the strength here: it is greatest near 97.5 % and falls again to 100 %.
 *   Caution: Near 85 %, and above 98 %, the acid freezes a few degrees above 0 degC (from memory): it is not checked.
 *            Oleum is not covered.
 *   Caution: Its viscosity is not held: no open table could be read. One textbook chart (read) gives 12 mPa s for 98 %
 *            at 45 degC; take measured data.
 *   Caution: With strong acid, lye or hot brine a leak injures: the site's rules, the pump maker's limits and the
 *            material's data go before this.
 */
CUTWATER_API cutwater_status cutwater_strong_sulphuric_acid_density(double mass_fraction, double temperature_degC,
                                                       double *density_kgm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_strong_sulphuric_acid_density_rows(size_t rows, cutwater_column mass_fraction,
                                                            cutwater_column temperature_degC,
                                                            cutwater_result_column density_kgm3,
                                                            cutwater_rows_report *report);

/*
 * Density of strong caustic soda solution, 20 to 50 % by mass, warm and hot.
 *
 *   mass_fraction                caustic soda's share by mass; from 0.2 to 0.5
 *   temperature_degC             temperature of the lye; from 20 to 100 degC
 *   -> density_kgm3              density of the lye near atmospheric pressure
 *
 *   Equation: rho = b_1 + b_2 t + b_3 t^2; b: polynomials in (1 - w)^0.5 with the constants of the source
 *   Source: J. Olsson, A. Jernqvist and G. Aly, Int. J. Thermophysics 18 (1997) 779 (as an open package prints it, read;
 *           the paper not read); interval of its use: set here, where it could be checked
 *   Caution: Against the International Critical Tables (as a trade table prints them, read) it is within 0.2 %, where
 *            solution_density is within 1.6 %.
 *   Caution: Lye of 50 % freezes at about 12 to 14 degC: trace the lines.
 *   Caution: Technical grades hold other salts, and a brine may be at its limit of solubility or freezing: neither is
 *            checked here.
 *   Caution: With strong acid, lye or hot brine a leak injures: the site's rules, the pump maker's limits and the
 *            material's data go before this.
 */
CUTWATER_API cutwater_status cutwater_strong_caustic_soda_density(double mass_fraction, double temperature_degC,
                                                     double *density_kgm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_strong_caustic_soda_density_rows(size_t rows, cutwater_column mass_fraction,
                                                          cutwater_column temperature_degC,
                                                          cutwater_result_column density_kgm3,
                                                          cutwater_rows_report *report);

/*
 * Vapour pressure of caustic soda solution by its concentration and temperature.
 *
 *   mass_fraction                caustic soda's share by mass; 0.418 at most below 20 degC, 0.5 below 60, 0.647 below
 *                                70, 0.7 below 150, 0.8 above; from 0 to 0.8
 *   temperature_degC             temperature of the lye; from 0 to 200 degC
 *   -> vapour_pressure_bara      its vapour pressure
 *
 *   Equation: ln p_v = (a + b t)/(t - c), in kPa and degC; a, b, c: polynomials in ln(1 - w) with the constants of the
 *             source
 *   Source: J. Olsson, A. Jernqvist and G. Aly, Int. J. Thermophysics 18 (1997) 779 (as two open codes print it, read;
 *           the paper not read)
 *   Caution: Water in place of the lye would give a lower NPSH available: the safe side. Do not count on the lye's low
 *            pressure where it may be diluted or flushed.
 *   Caution: Without caustic soda it is within 1 % of water's.
 *   Caution: Technical grades hold other salts, and a brine may be at its limit of solubility or freezing: neither is
 *            checked here.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: With strong acid, lye or hot brine a leak injures: the site's rules, the pump maker's limits and the
 *            material's data go before this.
 */
CUTWATER_API cutwater_status cutwater_caustic_soda_vapour_pressure(double mass_fraction, double temperature_degC,
                                                      double *vapour_pressure_bara, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_caustic_soda_vapour_pressure_rows(size_t rows, cutwater_column mass_fraction,
                                                           cutwater_column temperature_degC,
                                                           cutwater_result_column vapour_pressure_bara,
                                                           cutwater_rows_report *report);

/*
 * Density of sea water by its salinity and temperature.
 *
 *   salinity                     salts by mass: 0.035 is 35 g/kg, the oceans' mean; from 0 to 0.12
 *   temperature_degC             temperature of the water; from 0 to 120 degC
 *   -> density_kgm3              density
 *
 *   Equation: rho = 999.9 + 2.034e-2 t - 6.162e-3 t^2 + 2.261e-5 t^3 - 4.657e-8 t^4 + S (802.0 - 2.001 t + 1.677e-2 t^2
 *             - 3.060e-5 t^3 - 1.613e-5 S t^2)
 *   Source: M. H. Sharqawy, J. H. Lienhard and S. M. Zubair, Desalination and Water Treatment 16 (2010) 354, equation
 *           (8) (as two open codes print it, read; the paper not read)
 *   Caution: Near atmospheric pressure, above 100 degC at boiling pressure. For salts in the proportions of the sea:
 *            brackish and mine water differ.
 *   Caution: Against IAPWS R13-08 it is within 0.07 % up to 40 degC.
 */
CUTWATER_API cutwater_status cutwater_sea_water_density(double salinity, double temperature_degC, double *density_kgm3,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_sea_water_density_rows(size_t rows, cutwater_column salinity,
                                                cutwater_column temperature_degC, cutwater_result_column density_kgm3,
                                                cutwater_rows_report *report);

/*
 * Dynamic viscosity of sea water by its salinity and temperature.
 *
 *   salinity                     salts by mass: 0.035 is 35 g/kg, the oceans' mean; from 0 to 0.12
 *   temperature_degC             temperature of the water; from 0 to 120 degC
 *   -> viscosity_mPas            dynamic viscosity
 *
 *   Equation: mu = mu_w (1 + A S + B S^2); mu_w = 4.2844e-5 + 1/(0.157 (t + 64.993)^2 - 91.296) Pa s; A = 1.541 +
 *             1.998e-2 t - 9.52e-5 t^2; B = 7.974 - 7.561e-2 t + 4.724e-4 t^2
 *   Source: M. H. Sharqawy, J. H. Lienhard and S. M. Zubair, Desalination and Water Treatment 16 (2010) 354, equations
 *           (22) and (23) (as two open codes print them, read; the paper not read)
 *   Caution: Near atmospheric pressure, above 100 degC at boiling pressure. For salts in the proportions of the sea:
 *            brackish and mine water differ.
 */
CUTWATER_API cutwater_status cutwater_sea_water_dynamic_viscosity(double salinity, double temperature_degC, double *viscosity_mPas,
                                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_sea_water_dynamic_viscosity_rows(size_t rows, cutwater_column salinity,
                                                          cutwater_column temperature_degC,
                                                          cutwater_result_column viscosity_mPas,
                                                          cutwater_rows_report *report);

/*
 * Temperature at which crystals begin to form in a mixture of glycol and water.
 *
 *   glycol                       which glycol is in the water; "ethylene glycol" or "propylene glycol"
 *   mass_fraction                the glycol's share by mass; from 0 to 0.6
 *   -> freezing_point_degC       temperature at which the first crystals form
 *
 *   Equation: polynomial in x - x_m and t - t_m, up to the fifth power, with the constants of the source
 *   Source: A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd edition, International
 *           Institute of Refrigeration, 2010 (not read; polynomials and constants as the open library
 *           SecondaryCoolantProps carries them, read and run)
 *   Caution: By mass: trade names its mixtures by volume as often. 30 % by volume of ethylene glycol is about 32 % by
 *            mass, by the densities of the two.
 *   Caution: Keep a margin of several kelvins: slush blocks small passages, seal flushing lines first.
 */
CUTWATER_API cutwater_status cutwater_glycol_freezing_point(const char *glycol, double mass_fraction, double *freezing_point_degC,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_glycol_freezing_point_rows(size_t rows, const char *glycol, cutwater_column mass_fraction,
                                                    cutwater_result_column freezing_point_degC,
                                                    cutwater_rows_report *report);

/*
 * Density of a mixture of glycol and water.
 *
 *   glycol                       which glycol is in the water; "ethylene glycol" or "propylene glycol"
 *   mass_fraction                the glycol's share by mass; from 0 to 0.6
 *   temperature_degC             temperature of the mixture; not below its freezing point; from -60 to 100 degC
 *   -> density_kgm3              density of the mixture
 *
 *   Equation: rho = polynomial in x - x_m and t - t_m, with the constants of the source
 *   Source: A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd edition, International
 *           Institute of Refrigeration, 2010 (not read; polynomials and constants as the open library
 *           SecondaryCoolantProps carries them, read and run)
 *   Caution: By mass: trade names its mixtures by volume as often. 30 % by volume of ethylene glycol is about 32 % by
 *            mass, by the densities of the two.
 *   Caution: Inhibitors of technical grades change density and viscosity a little: ask their maker.
 */
CUTWATER_API cutwater_status cutwater_glycol_density(const char *glycol, double mass_fraction, double temperature_degC,
                                        double *density_kgm3, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_glycol_density_rows(size_t rows, const char *glycol, cutwater_column mass_fraction,
                                             cutwater_column temperature_degC, cutwater_result_column density_kgm3,
                                             cutwater_rows_report *report);

/*
 * Dynamic viscosity of a mixture of glycol and water.
 *
 *   glycol                       which glycol is in the water; "ethylene glycol" or "propylene glycol"
 *   mass_fraction                the glycol's share by mass; from 0 to 0.6
 *   temperature_degC             temperature of the mixture; not below its freezing point; from -60 to 100 degC
 *   -> viscosity_mPas            dynamic viscosity of the mixture
 *
 *   Equation: ln mu = polynomial in x - x_m and t - t_m, with the constants of the source, mu in mPa s
 *   Source: A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd edition, International
 *           Institute of Refrigeration, 2010 (not read; polynomials and constants as the open library
 *           SecondaryCoolantProps carries them, read and run)
 *   Caution: By mass: trade names its mixtures by volume as often. 30 % by volume of ethylene glycol is about 32 % by
 *            mass, by the densities of the two.
 *   Caution: Inhibitors of technical grades change density and viscosity a little: ask their maker.
 *   Caution: Size for the coldest start: glycol mixtures thicken many times over before they freeze.
 */
CUTWATER_API cutwater_status cutwater_glycol_dynamic_viscosity(const char *glycol, double mass_fraction, double temperature_degC,
                                                  double *viscosity_mPas, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_glycol_dynamic_viscosity_rows(size_t rows, const char *glycol, cutwater_column mass_fraction,
                                                       cutwater_column temperature_degC,
                                                       cutwater_result_column viscosity_mPas,
                                                       cutwater_rows_report *report);

/*
 * Specific heat capacity of a mixture of glycol and water.
 *
 *   glycol                       which glycol is in the water; "ethylene glycol" or "propylene glycol"
 *   mass_fraction                the glycol's share by mass; from 0 to 0.6
 *   temperature_degC             temperature of the mixture; not below its freezing point; from -60 to 100 degC
 *   -> specific_heat_kJkgK       specific heat of the mixture
 *
 *   Equation: c_p = polynomial in x - x_m and t - t_m, with the constants of the source
 *   Source: A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd edition, International
 *           Institute of Refrigeration, 2010 (not read; polynomials and constants as the open library
 *           SecondaryCoolantProps carries them, read and run)
 *   Caution: By mass: trade names its mixtures by volume as often. 30 % by volume of ethylene glycol is about 32 % by
 *            mass, by the densities of the two.
 *   Caution: Inhibitors of technical grades change density and viscosity a little: ask their maker.
 */
CUTWATER_API cutwater_status cutwater_glycol_specific_heat(const char *glycol, double mass_fraction, double temperature_degC,
                                              double *specific_heat_kJkgK, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_glycol_specific_heat_rows(size_t rows, const char *glycol, cutwater_column mass_fraction,
                                                   cutwater_column temperature_degC,
                                                   cutwater_result_column specific_heat_kJkgK,
                                                   cutwater_rows_report *report);

/*
 * Viscosity of a suspension of fine particles that do not settle.
 *
 *   liquid_viscosity_mPas        dynamic viscosity of the liquid alone; above 0 up to 1000000 mPa s
 *   volume_fraction              the solids' share by volume; from 0 to 0.6
 *   -> viscosity_mPas            dynamic viscosity of the suspension
 *
 *   Equation: mu = mu_l (1 + 2.5 phi + 10.05 phi^2 + 0.00273 exp(16.6 phi))
 *   Source: D. G. Thomas, J. Colloid Sci. 20 (1965) 267 (as three open codes print it, read; the paper not read); its
 *           second term is A. Einstein's, Ann. Phys. 19 (1906) 289
 *   Caution: For spheres of one size in a Newtonian liquid. Plates, fibres, flocculated or very fine solids make it many
 *            times thicker, and give it a yield stress: then measure.
 *   Caution: By volume, not by mass: see slurry_volume_fraction.
 *   Caution: Particles that settle do not thicken the liquid so: see slurry_pipe_friction.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_suspension_viscosity(double liquid_viscosity_mPas, double volume_fraction,
                                              double *viscosity_mPas, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_suspension_viscosity_rows(size_t rows, cutwater_column liquid_viscosity_mPas,
                                                   cutwater_column volume_fraction,
                                                   cutwater_result_column viscosity_mPas,
                                                   cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

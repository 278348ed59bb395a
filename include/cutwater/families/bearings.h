/* generated from the catalogue by cutwater-generate; do not edit. */
/* Rolling bearings. */
#ifndef CUTWATER_FAMILIES_BEARINGS_H
#define CUTWATER_FAMILIES_BEARINGS_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Dynamic equivalent load of a deep groove ball bearing.
 *
 *   radial_load_N                radial load on the bearing; from 0 to 10000000 N
 *   axial_load_N                 axial load on the bearing, as a magnitude; from 0 to 10000000 N
 *   static_rating_N              basic static load rating by the bearing's maker; from 100 to 100000000 N
 *   f0                           calculation factor of the bearing by its maker, from ISO 76; about 12 to 16; from 2 to
 *                                30
 *   -> equivalent_load_N         dynamic equivalent load
 *
 *   Equation: F_a/F_r <= e: P = F_r; else P = 0.56 F_r + Y F_a, at least F_r; e and Y by f_0 F_a/C_0, linear between the
 *             lines of the table
 *   Source: ISO 281:2007, 5.2 and Table 3, as transcribed in an open contact solver and in other public programs (read)
 *   Caution: For normal internal clearance. Below the table's first line, 0.172, its factors are kept: the standard
 *            gives none.
 *   Caution: A bearing that is loaded too little skids: keep the least load that its maker asks for.
 *   Caution: Calculated life is what nine of ten bearings outlast in clean, well-lubricated, well-aligned running;
 *            water, dirt, pipe strain and poor fits end most pump bearings earlier. The bearing maker's figures go
 *            before it.
 */
CUTWATER_API cutwater_status cutwater_deep_groove_equivalent_load(double radial_load_N, double axial_load_N,
                                                     double static_rating_N, double f0, double *equivalent_load_N,
                                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_deep_groove_equivalent_load_rows(size_t rows, cutwater_column radial_load_N,
                                                          cutwater_column axial_load_N,
                                                          cutwater_column static_rating_N, cutwater_column f0,
                                                          cutwater_result_column equivalent_load_N,
                                                          cutwater_rows_report *report);

/*
 * Dynamic equivalent load of an angular contact ball bearing, single or paired.
 *
 *   radial_load_N                radial load on the bearing; from 0 to 10000000 N
 *   axial_load_N                 axial load on the bearing, as a magnitude; from 0 to 10000000 N
 *   contact_angle_deg            contact angle, mostly 40 degrees in pumps; from 20 to 45 deg
 *   mounting                     single: one row, or rows in tandem; pair: double-row, or two single rows back to back
 *                                or face to face, counted as one bearing; "single" or "pair"
 *   -> equivalent_load_N         dynamic equivalent load; of the pair where paired
 *
 *   Equation: P = X F_r + Y F_a, at least F_r; X, Y and e by the contact angle, linear between the lines of the table
 *   Source: ISO 281:2007, 5.2 and Table 3: single row as transcribed in an open contact solver (read); pair and double
 *           row from memory of it, found to be 1.63 times the single row within rounding and to meet at F_a/F_r = e on
 *           every line
 *   Caution: A pair goes with the rating of the pair, 2^0.7 times that of one: see bearing_set_rating.
 *   Caution: A single row under a radial load makes an axial force of its own, which the opposite bearing must bear: it
 *            is not added here.
 *   Caution: A bearing that is loaded too little skids: keep the least load that its maker asks for.
 *   Caution: Calculated life is what nine of ten bearings outlast in clean, well-lubricated, well-aligned running;
 *            water, dirt, pipe strain and poor fits end most pump bearings earlier. The bearing maker's figures go
 *            before it.
 */
CUTWATER_API cutwater_status cutwater_angular_contact_equivalent_load(double radial_load_N, double axial_load_N,
                                                         double contact_angle_deg, const char *mounting,
                                                         double *equivalent_load_N, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_angular_contact_equivalent_load_rows(size_t rows, cutwater_column radial_load_N,
                                                              cutwater_column axial_load_N,
                                                              cutwater_column contact_angle_deg, const char *mounting,
                                                              cutwater_result_column equivalent_load_N,
                                                              cutwater_rows_report *report);

/*
 * Load ratings of equal single-row angular contact bearings mounted as one set.
 *
 *   dynamic_rating_N             basic dynamic load rating of one bearing; from 100 to 100000000 N
 *   static_rating_N              basic static load rating of one bearing; from 100 to 100000000 N
 *   bearings                     2 for a pair; in a set of three or more all must carry alike, as in tandem; a whole
 *                                number from 1 to 6
 *   -> set_dynamic_rating_N      basic dynamic load rating of the set
 *   -> set_static_rating_N       basic static load rating of the set
 *
 *   Equation: C = i^0.7 C_1; C_0 = i C_01
 *   Source: ISO 281:2007, 5.1.2 and ISO 76:2006, 5.1.2 (from memory of both)
 *   Caution: Only for bearings made and fitted to share the load: matched, or universally matchable by their maker.
 */
CUTWATER_API cutwater_status cutwater_bearing_set_rating(double dynamic_rating_N, double static_rating_N, double bearings,
                                            double *set_dynamic_rating_N, double *set_static_rating_N,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bearing_set_rating_rows(size_t rows, cutwater_column dynamic_rating_N,
                                                 cutwater_column static_rating_N, cutwater_column bearings,
                                                 cutwater_result_column set_dynamic_rating_N,
                                                 cutwater_result_column set_static_rating_N,
                                                 cutwater_rows_report *report);

/*
 * Static equivalent load of a ball bearing.
 *
 *   bearing_type                 deep groove, single or double row; angular contact; a pair of it back to back or face
 *                                to face, or a double row; "deep groove", "angular contact" or "angular contact pair"
 *   radial_load_N                radial load on the bearing; from 0 to 10000000 N
 *   axial_load_N                 axial load on the bearing, as a magnitude; from 0 to 10000000 N
 *   contact_angle_deg            contact angle, of use for angular contact only: a deep groove bearing's counts in its
 *                                factors; from 15 to 45 deg; 40 if left out
 *   -> static_equivalent_load_N  static equivalent load; of the pair where paired
 *
 *   Equation: P_0 = max(F_r, X_0 F_r + Y_0 F_a); deep groove X_0 0.6, Y_0 0.5; angular contact X_0 0.5, pair X_0 1, Y_0
 *             by alpha, straight between the table's angles
 *   Source: ISO 76:2006, table of X0 and Y0, as transcribed in an open mechanical library (excerpt read)
 *   Caution: Take the greatest load that ever acts, start-up, water hammer and transport included, not that of the duty.
 */
CUTWATER_API cutwater_status cutwater_static_equivalent_load(const char *bearing_type, double radial_load_N, double axial_load_N,
                                                double contact_angle_deg, double *static_equivalent_load_N,
                                                cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_static_equivalent_load_rows(size_t rows, const char *bearing_type,
                                                     cutwater_column radial_load_N, cutwater_column axial_load_N,
                                                     cutwater_column contact_angle_deg,
                                                     cutwater_result_column static_equivalent_load_N,
                                                     cutwater_rows_report *report);

/*
 * Static safety factor of a rolling bearing.
 *
 *   static_rating_N              basic static load rating by the bearing's maker; from 100 to 100000000 N
 *   static_equivalent_load_N     static equivalent load, by static_equivalent_load; above 0 up to 10000000 N
 *   -> safety                    static safety factor; 1 to 2 for quiet running of ball bearings, more with shocks
 *
 *   Equation: S_0 = C_0/P_0
 *   Source: ISO 76:2006 (from memory of it)
 *   Caution: Below the safety that its maker asks for, the bearing is dented at rest and runs rough from then on,
 *            whatever life is calculated.
 *   Caution: Calculated life is what nine of ten bearings outlast in clean, well-lubricated, well-aligned running;
 *            water, dirt, pipe strain and poor fits end most pump bearings earlier. The bearing maker's figures go
 *            before it.
 */
CUTWATER_API cutwater_status cutwater_static_safety(double static_rating_N, double static_equivalent_load_N, double *safety,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_static_safety_rows(size_t rows, cutwater_column static_rating_N,
                                            cutwater_column static_equivalent_load_N, cutwater_result_column safety,
                                            cutwater_rows_report *report);

/*
 * Basic rating life of a rolling bearing.
 *
 *   dynamic_rating_N             basic dynamic load rating by the bearing's maker; from 100 to 100000000 N
 *   equivalent_load_N            dynamic equivalent load; above 0 up to 10000000 N
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   element                      ball or roller; "ball" or "roller"; "ball" if left out
 *   -> hours_h                   life that nine of ten bearings reach or exceed
 *   -> million_revolutions       the same in millions of revolutions
 *
 *   Equation: L_10 = (C/P)^3, rollers (C/P)^(10/3), in millions of revolutions; L_10h = L_10/n
 *   Must hold of equivalent_load: it must not exceed half the dynamic rating: beyond that the standard's life does not
 *                                 hold
 *   Source: ISO 281:2007, 5.3 (from memory of it); U. C. Jindal, Machine Design, ex. 18-2 and 18-4, in a published
 *           companion (read)
 *   Caution: Check the static load too: see static_safety.
 *   Caution: Calculated life is what nine of ten bearings outlast in clean, well-lubricated, well-aligned running;
 *            water, dirt, pipe strain and poor fits end most pump bearings earlier. The bearing maker's figures go
 *            before it.
 *   Caution: A bearing that is loaded too little skids: keep the least load that its maker asks for.
 */
CUTWATER_API cutwater_status cutwater_bearing_life_hours(double dynamic_rating_N, double equivalent_load_N, double speed_rpm,
                                            const char *element, double *hours_h, double *million_revolutions,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bearing_life_hours_rows(size_t rows, cutwater_column dynamic_rating_N,
                                                 cutwater_column equivalent_load_N, cutwater_column speed_rpm,
                                                 const char *element, cutwater_result_column hours_h,
                                                 cutwater_result_column million_revolutions,
                                                 cutwater_rows_report *report);

/*
 * Life that both bearings of a shaft reach together.
 *
 *   first_life_h                 rating life of one bearing; above 0 up to 1000000000 h
 *   second_life_h                rating life of the other; above 0 up to 1000000000 h
 *   exponent                     slope of the distribution of lives: 1.5 where ISO 13709 is followed, 10/9 by the theory
 *                                behind ISO 281; from 1 to 3; 1.5 if left out
 *   -> life_h                    life that both reach with the reliability of the single lives
 *
 *   Equation: L = (L_1^-e + L_2^-e)^(-1/e)
 *   Source: product of the bearings' chances to survive, lives by Weibull's distribution: L = (Sum L_i^-e)^(-1/e);
 *           exponent 1.5 by ISO 13709:2009, Annex K, 10/9 by ISO/TR 1281 (both from memory)
 *   Caution: The exponent is not agreed on: two equal lives give 0.63 of one with 1.5 and 0.54 with 10/9. Say which one
 *            a figure rests on.
 *   Caution: Calculated life is what nine of ten bearings outlast in clean, well-lubricated, well-aligned running;
 *            water, dirt, pipe strain and poor fits end most pump bearings earlier. The bearing maker's figures go
 *            before it.
 */
CUTWATER_API cutwater_status cutwater_bearing_pair_life(double first_life_h, double second_life_h, double exponent, double *life_h,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bearing_pair_life_rows(size_t rows, cutwater_column first_life_h,
                                                cutwater_column second_life_h, cutwater_column exponent,
                                                cutwater_result_column life_h, cutwater_rows_report *report);

/*
 * Life that all bearings of a machine reach together.
 *
 *   lives_h                      rating lives of the bearings; a series of at least 1 point; each above 0 up to
 *                                1000000000 h
 *   exponent                     slope of the distribution of lives: 1.5 where ISO 13709 is followed, 10/9 by the theory
 *                                behind ISO 281; from 1 to 3; 1.5 if left out
 *   -> life_h                    life that all reach with the reliability of the single lives
 *
 *   Equation: L = (Sum L_i^-e)^(-1/e)
 *   Source: product of the bearings' chances to survive, lives by Weibull's distribution: L = (Sum L_i^-e)^(-1/e);
 *           exponent 1.5 by ISO 13709:2009, Annex K, 10/9 by ISO/TR 1281 (both from memory)
 *   Caution: A pair that was counted as one bearing enters once.
 *   Caution: Calculated life is what nine of ten bearings outlast in clean, well-lubricated, well-aligned running;
 *            water, dirt, pipe strain and poor fits end most pump bearings earlier. The bearing maker's figures go
 *            before it.
 */
CUTWATER_API cutwater_status cutwater_bearing_system_life(const double *lives_h, size_t lives_h_count, double exponent,
                                             double *life_h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bearing_system_life_rows(size_t rows, const double *lives_h, size_t lives_h_count,
                                                  cutwater_column exponent, cutwater_result_column life_h,
                                                  cutwater_rows_report *report);

/*
 * Steady equivalent load that wears a ball bearing as much as a duty profile does.
 *
 *   loads_N                      equivalent loads of the parts; a series of at least 1 point; each from 0 to 10000000 N
 *   speeds_rpm                   speeds of the parts; a series of at least 1 point; each from 0 to 100000 1/min
 *   times_h                      times of the parts; shares of a whole do as well; a series of at least 1 point; each at
 *                                least 0 h
 *   -> load_N                    mean equivalent load, to use with the mean speed
 *
 *   Equation: P_m = (Sum n_i t_i P_i^3/Sum n_i t_i)^(1/3)
 *   Must hold of speeds: both series must have the same number of points
 *   Must hold of times: both series must have the same number of points
 *   Source: linear damage with lives by the third power (from memory of ISO 281 texts); U. C. Jindal, Machine Design,
 *           ex. 18-9, in a published companion (read)
 *   Caution: A short time at closed valve, where the radial thrust is greatest, can outweigh the rest.
 *   Caution: Calculated life is what nine of ten bearings outlast in clean, well-lubricated, well-aligned running;
 *            water, dirt, pipe strain and poor fits end most pump bearings earlier. The bearing maker's figures go
 *            before it.
 */
CUTWATER_API cutwater_status cutwater_mean_bearing_load(const double *loads_N, size_t loads_N_count, const double *speeds_rpm,
                                           size_t speeds_rpm_count, const double *times_h, size_t times_h_count,
                                           double *load_N, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_mean_bearing_load_rows(size_t rows, const double *loads_N, size_t loads_N_count,
                                                const double *speeds_rpm, size_t speeds_rpm_count,
                                                const double *times_h, size_t times_h_count,
                                                cutwater_result_column load_N, cutwater_rows_report *report);

/*
 * Viscosity that the oil of a rolling bearing needs at its running temperature.
 *
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   pitch_diameter_mm            pitch diameter of the rolling elements; half the sum of bore and outside diameter will
 *                                do; from 1 to 5000 mm
 *   viscosity_ratio              viscosity ratio wanted: 1 at least, 1.5 to 2 for long life; from 0.1 to 4; 1.5 if left
 *                                out
 *   -> reference_mm2s            reference viscosity, at the running temperature of the bearing
 *   -> needed_mm2s               viscosity for the ratio wanted; find the grade by viscosity_at_temperature
 *
 *   Equation: n < 1000 1/min: nu_1 = 45000 n^-0.83 D_pw^-0.5; else nu_1 = 4500 n^-0.5 D_pw^-0.5; nu = kappa nu_1; mm2/s,
 *             1/min, mm
 *   Source: ISO 281:2007, eq. (28) and (29), as transcribed in an open contact solver (read)
 *   Caution: At the temperature of the running bearing, not of the room or sump: a grade is named for its viscosity at
 *            40 degC.
 *   Caution: For grease, take its base oil. The branches of the standard are 2.3 % apart at 1000 1/min, as printed.
 */
CUTWATER_API cutwater_status cutwater_reference_viscosity(double speed_rpm, double pitch_diameter_mm, double viscosity_ratio,
                                             double *reference_mm2s, double *needed_mm2s, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_reference_viscosity_rows(size_t rows, cutwater_column speed_rpm,
                                                  cutwater_column pitch_diameter_mm, cutwater_column viscosity_ratio,
                                                  cutwater_result_column reference_mm2s,
                                                  cutwater_result_column needed_mm2s, cutwater_rows_report *report);

/*
 * Fatigue load limit of a radial ball bearing, estimated from its static rating.
 *
 *   static_rating_N              basic static load rating by the bearing's maker; from 100 to 100000000 N
 *   pitch_diameter_mm            pitch diameter of the rolling elements; half the sum of bore and outside diameter will
 *                                do; from 1 to 5000 mm
 *   -> limit_N                   fatigue load limit
 *
 *   Equation: D_pw <= 100 mm: C_u = C_0/22; above: C_u = C_0/22 (100/D_pw)^0.5
 *   Source: ISO 281:2007, Annex B, simplified method for ball bearings, as transcribed in an open contact solver (read)
 *   Caution: The maker's own figure goes before it; 8.2 instead of 22 belongs to roller bearings.
 */
CUTWATER_API cutwater_status cutwater_fatigue_load_limit(double static_rating_N, double pitch_diameter_mm, double *limit_N,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_fatigue_load_limit_rows(size_t rows, cutwater_column static_rating_N,
                                                 cutwater_column pitch_diameter_mm, cutwater_result_column limit_N,
                                                 cutwater_rows_report *report);

/*
 * Range of the contamination factor of a rolling bearing by the cleanliness of its lubricant.
 *
 *   cleanliness                  extreme: laboratory; high: very fine filter, or greased and sealed for life; normal:
 *                                fine filter, or greased and shielded; slight; typical: open bearing, coarse filter,
 *                                wear from beside; severe: dirty, poor seals; very severe; "extreme", "high", "normal",
 *                                "slight contamination", "typical contamination", "severe contamination" or "very severe
 *                                contamination"
 *   pitch_diameter_mm            pitch diameter of the rolling elements; half the sum of bore and outside diameter will
 *                                do; from 1 to 5000 mm
 *   -> least                     lower end of the range
 *   -> greatest                  upper end of the range
 *
 *   Equation: by table, below 100 mm and from 100 mm up: 1; 0.6 to 0.8, 0.8 to 0.9; 0.5 to 0.6, 0.6 to 0.8; 0.3 to 0.5,
 *             0.4 to 0.6; 0.1 to 0.3, 0.2 to 0.4; 0 to 0.1; 0
 *   Source: ISO 281:2007, Table 13, as quoted in public programs (excerpts read)
 *   Caution: Two neighbouring classes of cleanliness move the factor three to ten times: use it to compare, and take the
 *            least that the housing's seals and vents allow.
 *   Caution: In a small bearing take the lower end: the same particle does more harm there.
 *   Caution: Water in the oil is not in the table and shortens life greatly: a pump's bearing housing breathes it in.
 */
CUTWATER_API cutwater_status cutwater_contamination_factor(const char *cleanliness, double pitch_diameter_mm, double *least,
                                              double *greatest, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_contamination_factor_rows(size_t rows, const char *cleanliness,
                                                   cutwater_column pitch_diameter_mm, cutwater_result_column least,
                                                   cutwater_result_column greatest, cutwater_rows_report *report);

/*
 * Factor that lubrication and cleanliness put on the life of a radial ball bearing.
 *
 *   viscosity_ratio              viscosity at the running temperature over that by reference_viscosity; above 4 taken as
 *                                4; at least 0.1
 *   contamination                contamination factor, 1 for extreme cleanliness to 0: see contamination_factor; from 0
 *                                to 1
 *   fatigue_load_limit_N         fatigue load limit by the bearing's maker, or by fatigue_load_limit; above 0 up to
 *                                10000000 N
 *   equivalent_load_N            dynamic equivalent load; above 0 up to 10000000 N
 *   -> factor                    life modification factor, 0.1 to 50
 *
 *   Equation: a_ISO = 0.1 [1 - (2.5671 - c/kappa^p)^0.83 (e_C C_u/P)^(1/3)]^-9.3, at most 50; c, p: kappa < 0.4: 2.2649,
 *             0.054381; < 1: 1.9987, 0.19087; to 4: 1.9987, 0.071739
 *   Source: ISO 281:2007, 9.3.3, eq. (31) to (33), as transcribed in an open contact solver (read); the exponent 0.19087
 *           of the middle band, for which some public programs have 0.019087, is proved by the bands' meeting at kappa
 *           0.4
 *   Caution: Two neighbouring classes of cleanliness move the factor three to ten times: use it to compare, and take the
 *            least that the housing's seals and vents allow.
 *   Caution: For oil with proven additives and kappa below 1 the standard allows more; that is left out here.
 *   Caution: Calculated life is what nine of ten bearings outlast in clean, well-lubricated, well-aligned running;
 *            water, dirt, pipe strain and poor fits end most pump bearings earlier. The bearing maker's figures go
 *            before it.
 */
CUTWATER_API cutwater_status cutwater_life_modification_factor(double viscosity_ratio, double contamination,
                                                  double fatigue_load_limit_N, double equivalent_load_N,
                                                  double *factor, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_life_modification_factor_rows(size_t rows, cutwater_column viscosity_ratio,
                                                       cutwater_column contamination,
                                                       cutwater_column fatigue_load_limit_N,
                                                       cutwater_column equivalent_load_N,
                                                       cutwater_result_column factor, cutwater_rows_report *report);

/*
 * Modified rating life of a radial ball bearing with lubrication, cleanliness and reliability.
 *
 *   dynamic_rating_N             basic dynamic load rating by the bearing's maker; from 100 to 100000000 N
 *   equivalent_load_N            dynamic equivalent load; above 0 up to 10000000 N
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   viscosity_ratio              viscosity at the running temperature over that by reference_viscosity; above 4 taken as
 *                                4; at least 0.1
 *   contamination                contamination factor, 1 for extreme cleanliness to 0: see contamination_factor; from 0
 *                                to 1
 *   fatigue_load_limit_N         fatigue load limit by the bearing's maker, or by fatigue_load_limit; above 0 up to
 *                                10000000 N
 *   reliability                  chance to reach the life; "90 %", "95 %", "96 %", "97 %", "98 %", "99 %", "99.5 %" or
 *                                "99.9 %"; "90 %" if left out
 *   -> hours_h                   modified rating life
 *   -> reliability_factor        factor of the reliability
 *   -> modification_factor       factor of lubrication and cleanliness
 *   -> basic_hours_h             basic rating life
 *
 *   Equation: L_nmh = a_1 a_ISO (C/P)^3/n in millions of revolutions; a_1: 90 % 1, 95 % 0.64, 96 % 0.55, 97 % 0.47, 98 %
 *             0.37, 99 % 0.25, 99.5 % 0.175, 99.9 % 0.093
 *   Must hold of equivalent_load: it must not exceed half the dynamic rating: beyond that the standard's life does not
 *                                 hold
 *   Source: ISO 281:2007, 9.1 to 9.3; Table 12 as quoted in public programs (excerpts read); a_ISO as for
 *           life_modification_factor
 *   Caution: Two neighbouring classes of cleanliness move the factor three to ten times: use it to compare, and take the
 *            least that the housing's seals and vents allow.
 *   Caution: 0.62, 0.53, 0.44, 0.33 and 0.21 for 95 to 99 % are of the edition of 1990.
 *   Caution: Calculated life is what nine of ten bearings outlast in clean, well-lubricated, well-aligned running;
 *            water, dirt, pipe strain and poor fits end most pump bearings earlier. The bearing maker's figures go
 *            before it.
 */
CUTWATER_API cutwater_status cutwater_modified_bearing_life(double dynamic_rating_N, double equivalent_load_N, double speed_rpm,
                                               double viscosity_ratio, double contamination,
                                               double fatigue_load_limit_N, const char *reliability, double *hours_h,
                                               double *reliability_factor, double *modification_factor,
                                               double *basic_hours_h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_modified_bearing_life_rows(size_t rows, cutwater_column dynamic_rating_N,
                                                    cutwater_column equivalent_load_N, cutwater_column speed_rpm,
                                                    cutwater_column viscosity_ratio, cutwater_column contamination,
                                                    cutwater_column fatigue_load_limit_N, const char *reliability,
                                                    cutwater_result_column hours_h,
                                                    cutwater_result_column reliability_factor,
                                                    cutwater_result_column modification_factor,
                                                    cutwater_result_column basic_hours_h,
                                                    cutwater_rows_report *report);

/*
 * Radial loads on the two bearings of an overhung pump from impeller, weight, unbalance and belt or coupling.
 *
 *   impeller_force_N             radial force at the impeller, by radial_thrust; from -10000000 to 10000000 N
 *   overhang_mm                  from the impeller's middle to the inboard bearing, the one nearer the impeller; from 0
 *                                to 20000 mm
 *   span_mm                      between the bearings; above 0 up to 20000 mm
 *   weight_N                     weight of rotor and liquid in the impeller; from -10000000 to 10000000 N; 0 if left out
 *   weight_place_mm              centre of that weight, from the inboard bearing towards the outboard one; negative on
 *                                the impeller's side; from -20000 to 20000 mm; 0 if left out
 *   drive_force_N                belt pull, or the force of a misaligned coupling; from -10000000 to 10000000 N; 0 if
 *                                left out
 *   drive_place_mm               place of the drive's force, from the inboard bearing towards the outboard one; from
 *                                -20000 to 20000 mm; 0 if left out
 *   unbalance_force_N            force of the impeller's unbalance, by unbalance_force; from -10000000 to 10000000 N; 0
 *                                if left out
 *   directions                   worst: every force turned so that it adds; one plane: with their signs; "worst" or "one
 *                                plane"; "worst" if left out
 *   -> inboard_N                 radial load on the bearing nearer the impeller, as a magnitude
 *   -> outboard_N                radial load on the other bearing, as a magnitude
 *
 *   Equation: R_2i = F_i x_i/b, R_1i = F_i (1 - x_i/b), x = -a for impeller and unbalance; worst: sums of magnitudes;
 *             one plane: magnitudes of sums
 *   Source: balance of forces and moments
 *   Caution: The direction of the radial thrust is not known well: take the worst unless it was measured. Closed valve
 *            and the greatest flow are the cases to check.
 *   Caution: The whole axial thrust goes to the fixed bearing; the other one must be free to move along.
 *   Caution: Calculated life is what nine of ten bearings outlast in clean, well-lubricated, well-aligned running;
 *            water, dirt, pipe strain and poor fits end most pump bearings earlier. The bearing maker's figures go
 *            before it.
 */
CUTWATER_API cutwater_status cutwater_bearing_loads(double impeller_force_N, double overhang_mm, double span_mm, double weight_N,
                                       double weight_place_mm, double drive_force_N, double drive_place_mm,
                                       double unbalance_force_N, const char *directions, double *inboard_N,
                                       double *outboard_N, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bearing_loads_rows(size_t rows, cutwater_column impeller_force_N,
                                            cutwater_column overhang_mm, cutwater_column span_mm,
                                            cutwater_column weight_N, cutwater_column weight_place_mm,
                                            cutwater_column drive_force_N, cutwater_column drive_place_mm,
                                            cutwater_column unbalance_force_N, const char *directions,
                                            cutwater_result_column inboard_N, cutwater_result_column outboard_N,
                                            cutwater_rows_report *report);

/*
 * Frequencies at which defects of a rolling bearing show, its outer ring standing still.
 *
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   elements                     balls or rollers in a row; a whole number from 3 to 200
 *   element_diameter_mm          diameter of ball or roller; from 1 to 5000 mm
 *   pitch_diameter_mm            pitch diameter of the rolling elements; from 1 to 5000 mm
 *   contact_angle_deg            contact angle; 0 for a deep groove bearing under radial load; from 0 to 60 deg; 0 if
 *                                left out
 *   -> outer_Hz                  defect of the outer ring
 *   -> inner_Hz                  defect of the inner ring
 *   -> cage_Hz                   cage
 *   -> spin_Hz                   spin of a rolling element; a defect on it strikes both rings, at twice this
 *
 *   Equation: g = (d/D_pw) cos alpha; BPFO = Z n (1 - g)/2; BPFI = Z n (1 + g)/2; FTF = n (1 - g)/2; BSF = n D_pw (1 -
 *             g^2)/(2 d)
 *   Must hold of element_diameter: it must be less than the pitch diameter
 *   Source: kinematics of rolling without slip, common practice; geometry and frequencies of a published run-to-failure
 *           test, H. Qiu and others, J. Sound and Vibration 2006 (as its users state them, read)
 *   Caution: Slip makes the real ones 1 to 2 % lower, and the contact angle grows with axial load: look for a family of
 *            lines with side bands, not for one number.
 *   Caution: A rising defect frequency is a reason to plan a repair, its absence no proof of a sound bearing.
 */
CUTWATER_API cutwater_status cutwater_bearing_frequencies(double speed_rpm, double elements, double element_diameter_mm,
                                             double pitch_diameter_mm, double contact_angle_deg, double *outer_Hz,
                                             double *inner_Hz, double *cage_Hz, double *spin_Hz,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bearing_frequencies_rows(size_t rows, cutwater_column speed_rpm, cutwater_column elements,
                                                  cutwater_column element_diameter_mm,
                                                  cutwater_column pitch_diameter_mm,
                                                  cutwater_column contact_angle_deg, cutwater_result_column outer_Hz,
                                                  cutwater_result_column inner_Hz, cutwater_result_column cage_Hz,
                                                  cutwater_result_column spin_Hz, cutwater_rows_report *report);

/*
 * Interval for relubricating a rolling bearing with grease.
 *
 *   bearing_type                 type of bearing; take an angular contact ball bearing as deep groove, with a factor of
 *                                its own; "deep groove ball", "cylindrical roller" or "spherical or taper roller"
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   bore_mm                      bore of the bearing; from 1 to 5000 mm
 *   temperature_degC             temperature of the bearing's outer ring; halved for every 15 K above 70 degC; from -30
 *                                to 120 degC
 *   other_factors                contamination (1 to 0.2), moisture (1 to 0.1), vibration (1 to 0.3), vertical shaft
 *                                (0.5 to 0.3), multiplied; above 0 up to 1
 *   -> interval_h                running hours between greasings
 *
 *   Equation: t_f = K [14e6/(n d^0.5) - 4 d] 2^(-(T - 70)/15) f, hours, 1/min, mm, degC; K: deep groove ball 10,
 *             cylindrical roller 5, spherical or taper roller 1; no bonus below 70 degC
 *   Source: rule of lubrication practice, as in guides on relubrication intervals (excerpts read); ranges of the other
 *           factors from memory of the same literature
 *   Caution: Good to a factor of two to three; the makers of bearing and grease go before it, and the grease's own
 *            temperature limit too.
 *   Caution: Too much grease overheats a bearing. Never mix greases that are not known to agree.
 */
CUTWATER_API cutwater_status cutwater_relubrication_interval(const char *bearing_type, double speed_rpm, double bore_mm,
                                                double temperature_degC, double other_factors, double *interval_h,
                                                cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_relubrication_interval_rows(size_t rows, const char *bearing_type, cutwater_column speed_rpm,
                                                     cutwater_column bore_mm, cutwater_column temperature_degC,
                                                     cutwater_column other_factors, cutwater_result_column interval_h,
                                                     cutwater_rows_report *report);

/*
 * Grease for one relubrication of a rolling bearing.
 *
 *   outside_diameter_mm          outside diameter of the bearing; from 1 to 5000 mm
 *   width_mm                     width of the bearing; from 1 to 5000 mm
 *   -> quantity_g                grease through the side of the bearing
 *
 *   Equation: m = 0.005 D B, g, mm
 *   Source: rule of lubrication practice, in guides on relubrication (excerpts read)
 *   Caution: Grease while turning where that is safe from outside the guard, and let the old grease out.
 */
CUTWATER_API cutwater_status cutwater_grease_quantity(double outside_diameter_mm, double width_mm, double *quantity_g,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_grease_quantity_rows(size_t rows, cutwater_column outside_diameter_mm,
                                              cutwater_column width_mm, cutwater_result_column quantity_g,
                                              cutwater_rows_report *report);

/*
 * Friction heat and torque of a rolling bearing.
 *
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   viscosity_mm2s               viscosity of the oil, or of the grease's base oil, at the running temperature; from 1
 *                                to 100000 mm2/s
 *   mean_diameter_mm             half the sum of bore and outside diameter; from 1 to 5000 mm
 *   lubricant_factor             deep groove: oil bath 2, grease 0.7 to 2, mist 1; angular contact: 3.3, 2, 1.7;
 *                                double-row angular: 6.5, 4, 3.4; vertical or flooded twice; from 0.1 to 30
 *   load_factor                  deep groove 0.0006 to 0.0009 times (P_0/C_0)^0.55; angular contact 0.001
 *                                (P_0/C_0)^0.33; from 0 to 0.01
 *   friction_load_N              deep groove 3 F_a - 0.1 F_r, angular contact F_a - 0.1 F_r, a pair 1.4 F_a - 0.1 F_r;
 *                                at least F_r; from 0 to 10000000 N
 *   -> heat_W                    friction heat
 *   -> lubricant_torque_Nmm      torque from the lubricant
 *   -> load_torque_Nmm           torque from the load
 *
 *   Equation: nu n >= 2000: M_0 = 1e-7 f_0 (nu n)^(2/3) d_m^3, else 160e-7 f_0 d_m^3; M_1 = f_1 P_1 d_m; P_f = (M_0 +
 *             M_1) 2 pi n; N mm, mm2/s, 1/min, mm, N
 *   Source: A. Palmgren, Ball and Roller Bearing Engineering, and T. A. Harris, Rolling Bearing Analysis (from memory of
 *           both); factors are the same texts' guidance
 *   Caution: Guide: plus or minus 50 %; rubbing seals and freshly greased bearings take more. The two branches of the
 *            relation are 1 % apart at nu n = 2000.
 */
CUTWATER_API cutwater_status cutwater_bearing_friction_heat(double speed_rpm, double viscosity_mm2s, double mean_diameter_mm,
                                               double lubricant_factor, double load_factor, double friction_load_N,
                                               double *heat_W, double *lubricant_torque_Nmm, double *load_torque_Nmm,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bearing_friction_heat_rows(size_t rows, cutwater_column speed_rpm,
                                                    cutwater_column viscosity_mm2s, cutwater_column mean_diameter_mm,
                                                    cutwater_column lubricant_factor, cutwater_column load_factor,
                                                    cutwater_column friction_load_N, cutwater_result_column heat_W,
                                                    cutwater_result_column lubricant_torque_Nmm,
                                                    cutwater_result_column load_torque_Nmm,
                                                    cutwater_rows_report *report);

/*
 * Temperature of a bearing housing that gives a known heat to the air.
 *
 *   heat_W                       friction heat of all bearings in the housing, with heat that comes along the shaft;
 *                                from 0 to 1000000 W
 *   area_m2                      outer surface of the bearing housing that gives off heat; above 0 up to 100 m2
 *   heat_transfer_Wm2K           heat transfer to the air: 8 to 12 in still air with radiation, 20 and more with the
 *                                motor's draught; from 1 to 5000 W/(m2 K)
 *   ambient_degC                 air around the housing, sun and hot neighbours counted; from -60 to 100 degC
 *   -> temperature_degC          temperature of the housing in steady running
 *
 *   Equation: T = T_a + P_f/(U A)
 *   Source: heat balance; U of 8 to 12 W/(m2 K) for free convection with radiation: common practice
 *   Caution: Guide: plus or minus 15 K. Heat along the shaft from a hot pump, or into a cold one, is left out unless it
 *            is added to the heat.
 *   Caution: A housing above about 60 degC burns the hand; above about 80 degC the oil ages fast. In explosive
 *            atmospheres the certificate's surface temperature governs.
 */
CUTWATER_API cutwater_status cutwater_bearing_housing_temperature(double heat_W, double area_m2, double heat_transfer_Wm2K,
                                                     double ambient_degC, double *temperature_degC,
                                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bearing_housing_temperature_rows(size_t rows, cutwater_column heat_W,
                                                          cutwater_column area_m2, cutwater_column heat_transfer_Wm2K,
                                                          cutwater_column ambient_degC,
                                                          cutwater_result_column temperature_degC,
                                                          cutwater_rows_report *report);

/*
 * Temperature that bearings and housing reach, with the oil's thinning as it warms.
 *
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   mean_diameter_mm             half the sum of bore and outside diameter; from 1 to 5000 mm
 *   lubricant_factor             sum of the factors f_0 of all bearings of this size: see bearing_friction_heat; from
 *                                0.1 to 100
 *   load_torque_Nmm              friction torque from the loads of all bearings, by bearing_friction_heat; from 0 to
 *                                10000000 N mm
 *   other_heat_W                 heat of rubbing seals and along the shaft from a hot pump; negative into a cold one;
 *                                from -100000 to 100000 W
 *   first_temperature_degC       temperature of a point on the oil's viscosity line, mostly 40; from -70 to 370 degC
 *   first_viscosity_mm2s         viscosity of the oil there; from 1 to 100000 mm2/s
 *   second_temperature_degC      temperature of a second point, mostly 100; from -70 to 370 degC
 *   second_viscosity_mm2s        viscosity of the oil there; from 1 to 100000 mm2/s
 *   area_m2                      outer surface of the bearing housing that gives off heat; above 0 up to 100 m2
 *   heat_transfer_Wm2K           heat transfer to the air: 8 to 12 in still air with radiation, 20 and more with the
 *                                motor's draught; from 1 to 5000 W/(m2 K)
 *   ambient_degC                 air around the housing, sun and hot neighbours counted; from -60 to 100 degC
 *   -> temperature_degC          temperature of housing and oil in steady running
 *   -> viscosity_mm2s            viscosity of the oil at it
 *   -> heat_W                    heat given off at it
 *
 *   Equation: U A (T - T_a) = 2 pi n [M_0(nu(T)) + M_1] + P_x, solved for T; M_0 as for bearing_friction_heat, nu(T) by
 *             ASTM D341
 *   Must hold of second_temperature: it must lie at least 5 K above the first one
 *   Must hold of second_viscosity: the warmer point must have the lower viscosity
 *   Source: heat balance; friction by A. Palmgren and T. A. Harris (from memory of both); viscosity by ASTM D341-09
 *           (from memory of it)
 *   Caution: Guide: plus or minus 15 K. Heat along the shaft from a hot pump, or into a cold one, is left out unless it
 *            is added to the heat.
 *   Caution: Guide: plus or minus 50 %; rubbing seals and freshly greased bearings take more. The two branches of the
 *            relation are 1 % apart at nu n = 2000.
 *   Caution: A housing above about 60 degC burns the hand; above about 80 degC the oil ages fast. In explosive
 *            atmospheres the certificate's surface temperature governs.
 */
CUTWATER_API cutwater_status cutwater_bearing_temperature(double speed_rpm, double mean_diameter_mm, double lubricant_factor,
                                             double load_torque_Nmm, double other_heat_W,
                                             double first_temperature_degC, double first_viscosity_mm2s,
                                             double second_temperature_degC, double second_viscosity_mm2s,
                                             double area_m2, double heat_transfer_Wm2K, double ambient_degC,
                                             double *temperature_degC, double *viscosity_mm2s, double *heat_W,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bearing_temperature_rows(size_t rows, cutwater_column speed_rpm,
                                                  cutwater_column mean_diameter_mm, cutwater_column lubricant_factor,
                                                  cutwater_column load_torque_Nmm, cutwater_column other_heat_W,
                                                  cutwater_column first_temperature_degC,
                                                  cutwater_column first_viscosity_mm2s,
                                                  cutwater_column second_temperature_degC,
                                                  cutwater_column second_viscosity_mm2s, cutwater_column area_m2,
                                                  cutwater_column heat_transfer_Wm2K, cutwater_column ambient_degC,
                                                  cutwater_result_column temperature_degC,
                                                  cutwater_result_column viscosity_mm2s,
                                                  cutwater_result_column heat_W, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

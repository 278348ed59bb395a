/* generated from the catalogue by cutwater-generate; do not edit. */
/* Containment: casing, flanges, walls, loads. */
#ifndef CUTWATER_FAMILIES_CONTAINMENT_H
#define CUTWATER_FAMILIES_CONTAINMENT_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Greatest pressure rise of a pump: at closed valve, greatest density, head tolerance and speed.
 *
 *   shutoff_head_m               greatest head of the largest impeller at rated speed, mostly at closed valve; above 0 m
 *   density_kgm3                 greatest density that the pump may meet, start-up and flushing included; from 50 to
 *                                25000 kg/m3
 *   head_tolerance               head by which the curve may exceed the published one; ISO 9906 (from memory): 2B 5 %,
 *                                1U 6 %, 3B 7 %, 2U 10 %, up to 10 kW 8 %; from 0 to 0.3; 0.05 if left out
 *   speed_ratio                  greatest speed over rated speed: a turbine's trip speed, a converter's upper limit;
 *                                from 1 to 1.5; 1 if left out
 *   -> pressure_rise_bar         greatest pressure rise between the branches
 *
 *   Equation: dp_0 = rho g H_0 (1 + t)(n/n_0)^2
 *   Source: ISO 13709:2003 5.3.1 and 5.3.2 by a published comparison with the edition before it (excerpt read): greatest
 *           suction pressure and the rise of the impeller as supplied; on request at the greatest density, the largest
 *           impeller, the trip speed; margin of 10 % of the rise: a summary of API 610 (read); ISO 5199:2002 4.4 (from
 *           memory of it)
 *   Caution: Take the head of the largest impeller that may ever be fitted, and the highest point of the curve: a
 *            drooping curve peaks away from closed valve.
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 */
CUTWATER_API cutwater_status cutwater_shutoff_pressure(double shutoff_head_m, double density_kgm3, double head_tolerance,
                                          double speed_ratio, double *pressure_rise_bar, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shutoff_pressure_rows(size_t rows, cutwater_column shutoff_head_m,
                                               cutwater_column density_kgm3, cutwater_column head_tolerance,
                                               cutwater_column speed_ratio, cutwater_result_column pressure_rise_bar,
                                               cutwater_rows_report *report);

/*
 * Greatest pressure in a pump's casing, to be held against its rating.
 *
 *   suction_pressure_barg        greatest gauge pressure at the suction branch; above -1.1 up to 500 barg
 *   shutoff_head_m               greatest head of the largest impeller at rated speed, mostly at closed valve; above 0 m
 *   density_kgm3                 greatest density that the pump may meet, start-up and flushing included; from 50 to
 *                                25000 kg/m3
 *   head_tolerance               head by which the curve may exceed the published one; ISO 9906 (from memory): 2B 5 %,
 *                                1U 6 %, 3B 7 %, 2U 10 %, up to 10 kW 8 %; from 0 to 0.3; 0.05 if left out
 *   speed_ratio                  greatest speed over rated speed: a turbine's trip speed, a converter's upper limit;
 *                                from 1 to 1.5; 1 if left out
 *   rating_margin                part of the rise to be kept below the rating: ISO 13709 10 %, others leave it open;
 *                                from 0 to 1; 0.1 if left out
 *   -> casing_pressure_barg      greatest gauge pressure in the casing
 *   -> rating_needed_barg        rating that the casing needs at its temperature
 *
 *   Equation: p_c = p_1 + dp_0, p_R = p_1 + (1 + m) dp_0, dp_0 = rho g H_0 (1 + t)(n/n_0)^2
 *   Source: ISO 13709:2003 5.3.1 and 5.3.2 by a published comparison with the edition before it (excerpt read): greatest
 *           suction pressure and the rise of the impeller as supplied; on request at the greatest density, the largest
 *           impeller, the trip speed; margin of 10 % of the rise: a summary of API 610 (read); ISO 5199:2002 4.4 (from
 *           memory of it)
 *   Caution: Take the head of the largest impeller that may ever be fitted, and the highest point of the curve: a
 *            drooping curve peaks away from closed valve.
 *   Caution: The greatest suction pressure is that of the relief valve or of blocked-in upstream plant, with the highest
 *            level, not of the normal duty.
 *   Caution: Surge, trapped liquid that warms and a relief valve's accumulation come on top of it.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_casing_pressure(double suction_pressure_barg, double shutoff_head_m, double density_kgm3,
                                         double head_tolerance, double speed_ratio, double rating_margin,
                                         double *casing_pressure_barg, double *rating_needed_barg,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_casing_pressure_rows(size_t rows, cutwater_column suction_pressure_barg,
                                              cutwater_column shutoff_head_m, cutwater_column density_kgm3,
                                              cutwater_column head_tolerance, cutwater_column speed_ratio,
                                              cutwater_column rating_margin,
                                              cutwater_result_column casing_pressure_barg,
                                              cutwater_result_column rating_needed_barg, cutwater_rows_report *report);

/*
 * Pressure of the hydrostatic test of a casing.
 *
 *   allowable_pressure_barg      allowable working pressure, at the temperature the strength ratio belongs to; above 0
 *                                up to 1000 barg
 *   factor                       1.5 by the pump standards; for vessels 1.3 by ASME VIII-1; 2014/68/EU: the greater of
 *                                1.43 with ratio 1 and 1.25 with the ratio; from 1 to 2; 1.5 if left out
 *   strength_ratio               allowable stress at the test's temperature over that at the working temperature; from 1
 *                                to 6.5; 1 if left out
 *   -> test_pressure_barg        least gauge pressure of the test
 *
 *   Equation: p_T = f p (S_T/S)
 *   Source: f = 1.5: ISO 5199:2002 6.3 and ISO 13709:2009 8.3.2 (from memory of both); strength ratio, at most 6.5: ASME
 *           B31.3 345.4.2(b) (excerpts of plant calculations read, the limit from memory)
 *   Caution: Water below 7 degC or a brittle casing is no test medium; austenitic steel wants water low in chloride.
 *            Vent all air: compressed air makes the test dangerous.
 *   Caution: Do not pass the yield of casing or bolts at the test.
 *   Caution: Weaker parts joined to the casing (seal, cooling jacket, shell of a sealed drive) have limits of their own.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_hydrostatic_test_pressure(double allowable_pressure_barg, double factor,
                                                   double strength_ratio, double *test_pressure_barg,
                                                   cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_hydrostatic_test_pressure_rows(size_t rows, cutwater_column allowable_pressure_barg,
                                                        cutwater_column factor, cutwater_column strength_ratio,
                                                        cutwater_result_column test_pressure_barg,
                                                        cutwater_rows_report *report);

/*
 * Greatest working pressure of a steel flange by class, material group and temperature.
 *
 *   temperature_degC             temperature of the wall that holds the pressure; from -29 to 538 degC
 *   material_group               1.1: A105, A216 WCB, A350 LF2; 1.2: A216 WCC, A352 LCC; 2.1: 304, CF8, CF3 (to 425
 *                                degC); 2.2: 316, CF8M; 2.3: 304L (to 425 degC), 316L; "group 1.1", "group 1.2", "group
 *                                2.1", "group 2.2" or "group 2.3"
 *   pressure_class               150, 300 or 600; a whole number from 150 to 600
 *   -> rating_barg               greatest working gauge pressure at that temperature
 *
 *   Equation: p_F = table 2 of the standard by group and class, linear between its temperatures; from -29 to 38 degC the
 *             first row
 *   Must hold of pressure_class: the classes held are 150, 300 and 600
 *   Source: ASME B16.5-2009, tables 2-1.1 (standard's page read), 2-1.2 (excerpt read, to 300 degC), 2-2.1 to 2-2.3
 *           (whole data files of an open library read, two agree); linear between temperatures, never between classes:
 *           its 2.1 and 2.5 (quoted in engineers' articles, excerpts read)
 *   Caution: Take the temperature of the wall that holds the pressure, as a rule the liquid's greatest.
 *   Caution: -29 degC is where the table begins, not how cold the steel stays tough.
 *   Caution: Ask the casting's certificate for the group, not the alloy's trade name: cast CF3M is listed with 2.2 by
 *            some and with 2.3 by others.
 *   Caution: Class 150 above 200 degC and other classes above 400 degC may leak under pipe loads or fast changes of
 *            temperature; carbon steel is not recommended for long use above 425 degC; some plates and forgings of a
 *            group stop earlier.
 *   Caution: A flange's rating is not the pump's: the casing, cover, seal, gasket and bolts may hold less; the pump
 *            maker's rating goes before it.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_flange_rating(double temperature_degC, const char *material_group, double pressure_class,
                                       double *rating_barg, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_flange_rating_rows(size_t rows, cutwater_column temperature_degC, const char *material_group,
                                            cutwater_column pressure_class, cutwater_result_column rating_barg,
                                            cutwater_rows_report *report);

/*
 * Greatest casing pressure held against the rating of its flanges.
 *
 *   casing_pressure_barg         greatest gauge pressure in the casing, as from casing_pressure; from -1.1 to 1000 barg
 *   temperature_degC             temperature of the wall that holds the pressure; from -29 to 538 degC
 *   material_group               1.1: A105, A216 WCB, A350 LF2; 1.2: A216 WCC, A352 LCC; 2.1: 304, CF8, CF3 (to 425
 *                                degC); 2.2: 316, CF8M; 2.3: 304L (to 425 degC), 316L; "group 1.1", "group 1.2", "group
 *                                2.1", "group 2.2" or "group 2.3"
 *   pressure_class               150, 300 or 600; a whole number from 150 to 600
 *   -> verdict                   within: the pressure is at most the rating; exceeded: it is not
 *   -> rating_barg               greatest working gauge pressure at that temperature
 *   -> margin_bar                rating less casing pressure; negative: exceeded
 *   -> share                     part of the rating that is used
 *
 *   Equation: p_c <= p_F, p_F from table 2 of the standard by group and class, linear between its temperatures
 *   Must hold of pressure_class: the classes held are 150, 300 and 600
 *   Source: ASME B16.5-2009, tables 2-1.1 (standard's page read), 2-1.2 (excerpt read, to 300 degC), 2-2.1 to 2-2.3
 *           (whole data files of an open library read, two agree); linear between temperatures, never between classes:
 *           its 2.1 and 2.5 (quoted in engineers' articles, excerpts read)
 *   Caution: Surge, trapped liquid that warms and a relief valve's accumulation come on top of it.
 *   Caution: Take the temperature of the wall that holds the pressure, as a rule the liquid's greatest.
 *   Caution: Ask the casting's certificate for the group, not the alloy's trade name: cast CF3M is listed with 2.2 by
 *            some and with 2.3 by others.
 *   Caution: Class 150 above 200 degC and other classes above 400 degC may leak under pipe loads or fast changes of
 *            temperature; carbon steel is not recommended for long use above 425 degC; some plates and forgings of a
 *            group stop earlier.
 *   Caution: A flange's rating is not the pump's: the casing, cover, seal, gasket and bolts may hold less; the pump
 *            maker's rating goes before it.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_flange_check(double casing_pressure_barg, double temperature_degC,
                                      const char *material_group, double pressure_class, const char **verdict,
                                      double *rating_barg, double *margin_bar, double *share,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_flange_check_rows(size_t rows, cutwater_column casing_pressure_barg,
                                           cutwater_column temperature_degC, const char *material_group,
                                           cutwater_column pressure_class, cutwater_result_column verdict,
                                           cutwater_result_column rating_barg, cutwater_result_column margin_bar,
                                           cutwater_result_column share, cutwater_rows_report *report);

/*
 * Pressure of a system's hydrostatic test that a flange's class stands for.
 *
 *   material_group               1.1: A105, A216 WCB, A350 LF2; 1.2: A216 WCC, A352 LCC; 2.1: 304, CF8, CF3 (to 425
 *                                degC); 2.2: 316, CF8M; 2.3: 304L (to 425 degC), 316L; "group 1.1", "group 1.2", "group
 *                                2.1", "group 2.2" or "group 2.3"
 *   pressure_class               150, 300 or 600; a whole number from 150 to 600
 *   -> test_pressure_barg        greatest gauge pressure of a system test, a whole number of bar
 *
 *   Equation: p_T = 1.5 p_F(38 degC), rounded up to the next whole bar
 *   Must hold of pressure_class: the classes held are 150, 300 and 600
 *   Source: ASME B16.5-2009, 2.6 (quoted in engineers' articles, excerpts read); ratings as for flange_rating
 *   Caution: Ask the casting's certificate for the group, not the alloy's trade name: cast CF3M is listed with 2.2 by
 *            some and with 2.3 by others.
 *   Caution: A flange's rating is not the pump's: the casing, cover, seal, gasket and bolts may hold less; the pump
 *            maker's rating goes before it.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_flange_test_pressure(const char *material_group, double pressure_class,
                                              double *test_pressure_barg, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_flange_test_pressure_rows(size_t rows, const char *material_group,
                                                   cutwater_column pressure_class,
                                                   cutwater_result_column test_pressure_barg,
                                                   cutwater_rows_report *report);

/*
 * Rated pressure at a temperature from a pressure-temperature table of your own.
 *
 *   temperature_degC             temperature of the wall that holds the pressure; above -273.15 degC
 *   temperatures_degC            temperatures of the table; a series of at least 2 points, rising; each above -273.15
 *                                degC
 *   ratings_barg                 greatest working gauge pressures of the table; a series of at least 2 points; each at
 *                                least 0 barg
 *   -> rating_barg               greatest working gauge pressure at that temperature
 *
 *   Equation: p_F linear between the table's temperatures
 *   Must hold of temperatures: both series must have the same number of points
 *   Source: linear interpolation, as ASME B16.5 2.5 allows (excerpt read) and EN 1092-1 annex G does (from memory of it)
 *   Caution: For tables that are not held here: EN 1092-1, ductile iron, other material groups, the pump maker's own
 *            diagram.
 *   Caution: Take the temperature of the wall that holds the pressure, as a rule the liquid's greatest.
 *   Caution: A flange's rating is not the pump's: the casing, cover, seal, gasket and bolts may hold less; the pump
 *            maker's rating goes before it.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_rating_at_temperature(double temperature_degC, const double *temperatures_degC,
                                               size_t temperatures_degC_count, const double *ratings_barg,
                                               size_t ratings_barg_count, double *rating_barg,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_rating_at_temperature_rows(size_t rows, cutwater_column temperature_degC,
                                                    const double *temperatures_degC, size_t temperatures_degC_count,
                                                    const double *ratings_barg, size_t ratings_barg_count,
                                                    cutwater_result_column rating_barg, cutwater_rows_report *report);

/*
 * Forces and moments that each branch of an ISO 13709 pump bears, in steel.
 *
 *   nominal_size                 50, 80, 100, 150, 200, 250, 300, 350 or 400; a whole number from 50 to 400
 *   position                     where the branch points: top, side, or end along the shaft; "top", "side" or "end"
 *   -> force_x_N                 along the shaft
 *   -> force_y_N                 across the shaft, horizontal
 *   -> force_z_N                 vertical
 *   -> moment_x_Nm               about the shaft's direction
 *   -> moment_y_Nm               about the horizontal across it
 *   -> moment_z_Nm               about the vertical
 *
 *   Equation: table of the standard by size and position; either sign
 *   Must hold of nominal_size: the table has the sizes 50, 80, 100, 150, 200, 250, 300, 350 and 400
 *   Source: ISO 13709:2003, table 4 (= API 610 9th and 10th edition; table 5 of the 2009 edition from memory): forces
 *           and US moments as printed in W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery, 2011, tables
 *           2.20.1 and 2.20.2 (read); SI moments from memory, agree with the US ones
 *   Caution: For steel and alloy steel pumps built to that standard. ISO 5199 and ASME B73.1 pumps bear less, and other
 *            materials less again: ask the pump maker.
 *   Caution: The axes are those of horizontal pumps. Vertical in-line pumps (twice the values of a side nozzle) and
 *            vertical suspended ones differ (from memory).
 *   Caution: A pump is no pipe support: check alignment with the pipes bolted and unbolted, cold and hot.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_nozzle_load_limits(double nominal_size, const char *position, double *force_x_N,
                                            double *force_y_N, double *force_z_N, double *moment_x_Nm,
                                            double *moment_y_Nm, double *moment_z_Nm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_nozzle_load_limits_rows(size_t rows, cutwater_column nominal_size, const char *position,
                                                 cutwater_result_column force_x_N, cutwater_result_column force_y_N,
                                                 cutwater_result_column force_z_N, cutwater_result_column moment_x_Nm,
                                                 cutwater_result_column moment_y_Nm,
                                                 cutwater_result_column moment_z_Nm, cutwater_rows_report *report);

/*
 * Pipe forces and moments on a pump's branches against the allowable ones, by the combined rule.
 *
 *   rule                         ISO 5199: squares of both sums; ISO 13709: resultants of each branch, up to twice the
 *                                table; "ISO 5199" or "ISO 13709"
 *   forces_N                     applied forces: x, y, z of the suction branch, then of the discharge branch; a series
 *                                of at least 3 points; each a finite number in N
 *   allowed_forces_N             allowable forces in the same order, as the pump maker or the standard states; a series
 *                                of at least 3 points; each above 0 N
 *   moments_Nm                   applied moments in the same order; a series of at least 3 points; each a finite number
 *                                in N m
 *   allowed_moments_Nm           allowable moments in the same order; a series of at least 3 points; each above 0 N m
 *   -> verdict                   within: the rule holds; exceeded: it does not; open: ISO 13709 F.1.2.1 and F.1.2.2
 *                                hold, F.1.2.3 (all loads at the pump's centre) is still to be shown
 *   -> combined                  combined load; may be 2
 *   -> largest_force             largest component's share; may be 1.4 (ISO 5199) or 2 (ISO 13709)
 *   -> largest_moment            the same of the moments
 *
 *   Equation: ISO 5199: U = (sum|F|/sum F_max)^2 + (sum|M|/sum M_max)^2, of components or of resultants, the greater,
 *             all branches together; ISO 13709: U = (F_R/F_R,max + M_R/M_R,max)/1.5 of each branch, the greatest
 *   Must hold of allowed_forces: both series must have the same number of points
 *   Must hold of moments: both series must have the same number of points
 *   Must hold of allowed_moments: both series must have the same number of points
 *   Must hold of forces: give three components of each branch, one branch after another: 3, 6, 9 values
 *   Source: ISO 5199:2002 Annex B (place of it read, rule from memory; whether it sums components or resultants could
 *           not be read, the stricter is taken); ISO 13709:2009 Annex F, F.1.2.1 and F.1.2.2 (from memory of it)
 *   Caution: Above its table ISO 13709 also asks for all loads moved to the pump's centre (F.1.2.3), and for a baseplate
 *            that was tested: this is not that check.
 *   Caution: A load within the rule still misaligns: the shaft's displacement at the coupling decides.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_nozzle_load_check(const char *rule, const double *forces_N, size_t forces_N_count,
                                           const double *allowed_forces_N, size_t allowed_forces_N_count,
                                           const double *moments_Nm, size_t moments_Nm_count,
                                           const double *allowed_moments_Nm, size_t allowed_moments_Nm_count,
                                           const char **verdict, double *combined, double *largest_force,
                                           double *largest_moment, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_nozzle_load_check_rows(size_t rows, const char *rule, const double *forces_N,
                                                size_t forces_N_count, const double *allowed_forces_N,
                                                size_t allowed_forces_N_count, const double *moments_Nm,
                                                size_t moments_Nm_count, const double *allowed_moments_Nm,
                                                size_t allowed_moments_Nm_count, cutwater_result_column verdict,
                                                cutwater_result_column combined, cutwater_result_column largest_force,
                                                cutwater_result_column largest_moment, cutwater_rows_report *report);

/*
 * Wall that a cylinder under inside pressure needs, from its bore.
 *
 *   pressure_barg                design gauge pressure; above 0 up to 1000 barg
 *   bore_mm                      inside diameter as new; from 1 to 10000 mm
 *   allowable_stress_MPa         allowable stress of the material at its temperature, by the code that governs; above 0
 *                                up to 1000 MPa
 *   quality_factor               quality factor of the casting or weld: 0.80 for an ordinary steel casting by ASME
 *                                B31.3, 1 for seamless pipe; from 0.5 to 1; 0.8 if left out
 *   y_factor                     0.4 for ductile metals to 482 degC, 0 for cast iron, by ASME B31.3; from 0 to 0.7; 0.4
 *                                if left out
 *   corrosion_allowance_mm       corrosion and wear allowance; 3 mm is usual for pump casings; from 0 to 100 mm; 0 if
 *                                left out
 *   undertolerance               part by which the wall may be thinner than ordered: 12.5 % for pipe; from 0 to below
 *                                0.5; 0 if left out
 *   -> pressure_wall_mm          wall for the pressure alone
 *   -> least_wall_mm             least wall, corrosion allowance included
 *   -> nominal_wall_mm           wall to order, undertolerance included
 *
 *   Equation: t = P (d + 2 c)/(2 (S E - P (1 - Y))), t_m = t + c, t_n = t_m/(1 - u)
 *   Source: ASME B31.3 304.1.2, equation (3b), for t < D/6 and P/(S E) <= 0.385 (excerpts of five plant calculations,
 *           2008 and 2012 editions, read)
 *   Caution: A plain cylinder. A volute with its flat sides, tongue and nozzles needs more: for a pump casing it is a
 *            lower bound, and the pump maker's wall goes before it.
 *   Caution: The hydrostatic test at cold stress, not the hot duty, may set the wall: work out both.
 *   Caution: Uniform attack only. Pits, cracks, erosion at the tongue and under deposits go faster than a mean rate and
 *            are the usual end of a casing.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_wall_needed_from_bore(double pressure_barg, double bore_mm, double allowable_stress_MPa,
                                               double quality_factor, double y_factor, double corrosion_allowance_mm,
                                               double undertolerance, double *pressure_wall_mm, double *least_wall_mm,
                                               double *nominal_wall_mm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_wall_needed_from_bore_rows(size_t rows, cutwater_column pressure_barg,
                                                    cutwater_column bore_mm, cutwater_column allowable_stress_MPa,
                                                    cutwater_column quality_factor, cutwater_column y_factor,
                                                    cutwater_column corrosion_allowance_mm,
                                                    cutwater_column undertolerance,
                                                    cutwater_result_column pressure_wall_mm,
                                                    cutwater_result_column least_wall_mm,
                                                    cutwater_result_column nominal_wall_mm,
                                                    cutwater_rows_report *report);

/*
 * Time until corrosion has taken the wall down to what the pressure needs, from two readings.
 *
 *   wall_before_mm               wall at the earlier reading, or as new; take the thinnest place; above 0 up to 1000 mm
 *   wall_now_mm                  wall at the later reading, at the same place; above 0 up to 1000 mm
 *   interval_year                time between the readings; above 0 up to 1000 year
 *   wall_needed_mm               least wall for the pressure, as from wall_needed or wall_needed_from_bore without
 *                                allowance; from 0 to 1000 mm
 *   -> rate_mmyear               mean rate between the readings
 *   -> life_year                 time from the later reading on
 *
 *   Equation: r = (t_1 - t_2)/dt, L = (t_2 - t_m)/r
 *   Must hold of wall_now: it must be less than the earlier wall: without a loss between the readings there is no rate
 *   Must hold of wall_needed: it must be at most the wall that is left: the wall is used up already
 *   Source: remaining life as in API 570 (a course text and a worked sheet read, the standard from memory)
 *   Caution: Uniform attack only. Pits, cracks, erosion at the tongue and under deposits go faster than a mean rate and
 *            are the usual end of a casing.
 *   Caution: Inspect again at half of it at the latest: the rate of the next years need not be the last ones'. Take the
 *            greater of the short and the long term rate.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_corrosion_life_from_readings(double wall_before_mm, double wall_now_mm, double interval_year,
                                                      double wall_needed_mm, double *rate_mmyear, double *life_year,
                                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_corrosion_life_from_readings_rows(size_t rows, cutwater_column wall_before_mm,
                                                           cutwater_column wall_now_mm, cutwater_column interval_year,
                                                           cutwater_column wall_needed_mm,
                                                           cutwater_result_column rate_mmyear,
                                                           cutwater_result_column life_year,
                                                           cutwater_rows_report *report);

/*
 * Pressure rise of a liquid that warms in a closed space full of it.
 *
 *   warming_K                    temperature rise of liquid and wall; above 0 up to 100 K
 *   liquid_expansion_umperK      volume expansion of the liquid, mean over the rise: water at 20 degC 207, at 100 degC
 *                                750; above 0 up to 5000 1e-6/K
 *   compressibility_perGPa       isothermal compressibility of the liquid: water 0.45, light hydrocarbons 1 to 2; above
 *                                0 up to 10 1/GPa
 *   diameter_mm                  inside diameter of the pipe or casing; from 1 to 10000 mm
 *   wall_mm                      wall thickness; a thick one is the safe side; from 0.01 to 1000 mm
 *   wall_expansion_umperK        linear expansion of the wall: carbon steel 12, austenitic steel 16, lined or clad by
 *                                the wall; from 0 to 50 1e-6/K; 12 if left out
 *   modulus_GPa                  elastic modulus of the wall: steel 200; from 0.0001 to 1000 GPa; 200 if left out
 *   poisson                      Poisson's ratio of the wall; from 0 to 0.5; 0.3 if left out
 *   -> pressure_rise_bar         pressure rise; negative: the space grows faster than the liquid
 *
 *   Equation: dp = (alpha_v - 3 alpha_w) dT/(kappa + X), X = (D/(2 E w))(2.5 - 2 mu)
 *   Must hold of wall: the wall must be at most a quarter of the diameter: the formula is for thin walls
 *   Source: API 521 5th edition 2007, 5.14 (its variables read, the formula from memory: it is the thin cylinder with
 *           closed ends); simplified form with D/(E w) and its example: an engineers' forum, 2007 (derivation read
 *           whole)
 *   Caution: Holds only while the space is full of liquid, nothing leaks, nothing yields and no relief valve opens: a
 *            little gas lowers it, and it says when something must give.
 *   Caution: Give every space that can be shut in full of liquid a relief or a vent to a safe place: sun, tracing, a
 *            running pump or fire can burst it.
 *   Caution: Both coefficients change with temperature: take small rises, or for water trapped_water_pressure.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_trapped_liquid_pressure_rise(double warming_K, double liquid_expansion_umperK,
                                                      double compressibility_perGPa, double diameter_mm,
                                                      double wall_mm, double wall_expansion_umperK,
                                                      double modulus_GPa, double poisson, double *pressure_rise_bar,
                                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_trapped_liquid_pressure_rise_rows(size_t rows, cutwater_column warming_K,
                                                           cutwater_column liquid_expansion_umperK,
                                                           cutwater_column compressibility_perGPa,
                                                           cutwater_column diameter_mm, cutwater_column wall_mm,
                                                           cutwater_column wall_expansion_umperK,
                                                           cutwater_column modulus_GPa, cutwater_column poisson,
                                                           cutwater_result_column pressure_rise_bar,
                                                           cutwater_rows_report *report);

/*
 * Pressure of water that warms in a closed space full of it, by the steam tables.
 *
 *   start_temperature_degC       temperature when the space was shut; from 0 to 349 degC
 *   start_pressure_bara          absolute pressure then; above 0 up to 1000 bara
 *   end_temperature_degC         temperature that it warms to; from 0 to 350 degC
 *   diameter_mm                  inside diameter of the pipe or casing; from 1 to 10000 mm
 *   wall_mm                      wall thickness; a thick one is the safe side; from 0.01 to 1000 mm
 *   wall_expansion_umperK        linear expansion of the wall: carbon steel 12, austenitic steel 16, lined or clad by
 *                                the wall; from 0 to 50 1e-6/K; 12 if left out
 *   modulus_GPa                  elastic modulus of the wall: steel 200; from 0.0001 to 1000 GPa; 200 if left out
 *   poisson                      Poisson's ratio of the wall; from 0 to 0.5; 0.3 if left out
 *   -> end_pressure_bara         absolute pressure then
 *   -> pressure_rise_bar         rise; negative near 0 degC, where water shrinks as it warms
 *
 *   Equation: v(T_2, p_2)/v(T_1, p_1) = (1 + alpha_w (T_2 - T_1))^3 (1 + X (p_2 - p_1)), X = (D/(2 E w))(2.5 - 2 mu), v
 *             by IAPWS-IF97 region 1
 *   Must hold of wall: the wall must be at most a quarter of the diameter: the formula is for thin walls
 *   Must hold of end_temperature: it must lie above the start temperature
 *   Source: balance of volumes; v: IAPWS R7-97(2012), clause 5.1; X: API 521 5th edition 2007, 5.14 (its variables read,
 *           the formula from memory)
 *   Caution: Holds only while the space is full of liquid, nothing leaks, nothing yields and no relief valve opens: a
 *            little gas lowers it, and it says when something must give.
 *   Caution: Give every space that can be shut in full of liquid a relief or a vent to a safe place: sun, tracing, a
 *            running pump or fire can burst it.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_trapped_water_pressure(double start_temperature_degC, double start_pressure_bara,
                                                double end_temperature_degC, double diameter_mm, double wall_mm,
                                                double wall_expansion_umperK, double modulus_GPa, double poisson,
                                                double *end_pressure_bara, double *pressure_rise_bar,
                                                cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_trapped_water_pressure_rows(size_t rows, cutwater_column start_temperature_degC,
                                                     cutwater_column start_pressure_bara,
                                                     cutwater_column end_temperature_degC,
                                                     cutwater_column diameter_mm, cutwater_column wall_mm,
                                                     cutwater_column wall_expansion_umperK,
                                                     cutwater_column modulus_GPa, cutwater_column poisson,
                                                     cutwater_result_column end_pressure_bara,
                                                     cutwater_result_column pressure_rise_bar,
                                                     cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

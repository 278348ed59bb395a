/* generated from the catalogue by cutwater-generate; do not edit. */
/* Similarity and shape. */
#ifndef CUTWATER_FAMILIES_SIMILARITY_H
#define CUTWATER_FAMILIES_SIMILARITY_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

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
 *   Caution: Above the speed at which the pump was rated its pressure grows with the square and its power with the cube
 *            of the speed: stay within the pump maker's greatest speed, the pressure ratings of casing, seal and
 *            flanges, the motor's rating and the rotor's limits, whatever this gives.
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
 *   Caution: Above the speed at which the pump was rated its pressure grows with the square and its power with the cube
 *            of the speed: stay within the pump maker's greatest speed, the pressure ratings of casing, seal and
 *            flanges, the motor's rating and the rotor's limits, whatever this gives.
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
 *   Caution: Above the speed at which the pump was rated its pressure grows with the square and its power with the cube
 *            of the speed: stay within the pump maker's greatest speed, the pressure ratings of casing, seal and
 *            flanges, the motor's rating and the rotor's limits, whatever this gives.
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
 *   exponent                     1 to 2, as agreed or tested; 0: the cautious one, 1.3 when slowing down and 2 when
 *                                speeding up; from 0 to 2; 0 if left out
 *   -> npsh3_at_new_speed_m      NPSH3 of the similar point
 *
 *   Equation: NPSH3' = NPSH3 (n'/n)^x; x not given: 1.3 for n' < n, 2 for n' > n
 *   Must hold of new_speed: the new speed must be 0.25 to 2 times the speed: beyond that the affinity laws are not
 *                           relied upon here
 *   Must hold of exponent: it must be 0, for the cautious one, or from 1 to 2
 *   Source: ISO 9906:2012, translation of NPSH3 to the specified speed (from memory of it), exponent 1.3 to 2 to be
 *           agreed (a public test procedure after it read in excerpt); 1.5 when slowing down and 2 when speeding up:
 *           trade literature (read); limits of the ratio: set here
 *   Caution: The square is a first approximation that flatters when slowing down; tests lie between 1.3 and 2, lower at
 *            part load than near best efficiency.
 *   Caution: The affinity laws scale a pump's curve, not a system's duty: with static head the new duty is where the
 *            scaled curve meets the system curve.
 *   Caution: Above the speed at which the pump was rated its pressure grows with the square and its power with the cube
 *            of the speed: stay within the pump maker's greatest speed, the pressure ratings of casing, seal and
 *            flanges, the motor's rating and the rotor's limits, whatever this gives.
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
 *   exponent                     1 in the set (1, 2, 3), 2 in the set (2, 2, 4); from 0.8 to 2.2; 1 if left out
 *   -> trimmed_flow_m3h          flow of the corresponding point
 *
 *   Equation: Q' = Q (D'/D)^x
 *   Must hold of trimmed_diameter: the trimmed diameter must be at most the full diameter: an impeller is cut, not grown
 *   Must hold of trimmed_diameter: the trimmed diameter must be at least 0.7 of the full diameter, the limit set here
 *                                  for the trim laws
 *   Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2,
 *           2, 4): common practice; limit of the ratio 0.7: set here
 *   Caution: Trim laws are approximate: the Hydraulic Institute's Engineering Data Book (text of 2026, read) takes them
 *            for cuts within 5 % of the diameter only, and below about 80 % they depart far. Have the trim confirmed by
 *            the pump maker.
 *   Caution: Two sets of exponents are in use for flow, head and power: (1, 2, 3) and (2, 2, 4), the second for radial
 *            impellers whose outlet width stays. Take all three from one set; the defaults are the first. The second
 *            predicts less flow and power after the cut.
 *   Caution: Efficiency falls a little with the trim; cut in two steps and test between them.
 *   Caution: NPSH3 does not fall with the trim: at the same flow it stays or rises, the more the deeper the cut, and no
 *            published rule predicts it. Ask for the curve of the trimmed impeller; between two known diameters see
 *            npsh3_at_trim.
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
 *   exponent                     2 in both sets; from 1.8 to 3; 2 if left out
 *   -> trimmed_head_m            head of the corresponding point
 *
 *   Equation: H' = H (D'/D)^x
 *   Must hold of trimmed_diameter: the trimmed diameter must be at most the full diameter: an impeller is cut, not grown
 *   Must hold of trimmed_diameter: the trimmed diameter must be at least 0.7 of the full diameter, the limit set here
 *                                  for the trim laws
 *   Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2,
 *           2, 4): common practice; limit of the ratio 0.7: set here
 *   Caution: Trim laws are approximate: the Hydraulic Institute's Engineering Data Book (text of 2026, read) takes them
 *            for cuts within 5 % of the diameter only, and below about 80 % they depart far. Have the trim confirmed by
 *            the pump maker.
 *   Caution: Two sets of exponents are in use for flow, head and power: (1, 2, 3) and (2, 2, 4), the second for radial
 *            impellers whose outlet width stays. Take all three from one set; the defaults are the first. The second
 *            predicts less flow and power after the cut.
 *   Caution: Efficiency falls a little with the trim; cut in two steps and test between them.
 *   Caution: NPSH3 does not fall with the trim: at the same flow it stays or rises, the more the deeper the cut, and no
 *            published rule predicts it. Ask for the curve of the trimmed impeller; between two known diameters see
 *            npsh3_at_trim.
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
 *   exponent                     3 in the set (1, 2, 3), 4 in the set (2, 2, 4); from 2.5 to 5; 3 if left out
 *   -> trimmed_power_kW          power of the corresponding point
 *
 *   Equation: P' = P (D'/D)^x
 *   Must hold of trimmed_diameter: the trimmed diameter must be at most the full diameter: an impeller is cut, not grown
 *   Must hold of trimmed_diameter: the trimmed diameter must be at least 0.7 of the full diameter, the limit set here
 *                                  for the trim laws
 *   Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2,
 *           2, 4): common practice; limit of the ratio 0.7: set here
 *   Caution: Trim laws are approximate: the Hydraulic Institute's Engineering Data Book (text of 2026, read) takes them
 *            for cuts within 5 % of the diameter only, and below about 80 % they depart far. Have the trim confirmed by
 *            the pump maker.
 *   Caution: Two sets of exponents are in use for flow, head and power: (1, 2, 3) and (2, 2, 4), the second for radial
 *            impellers whose outlet width stays. Take all three from one set; the defaults are the first. The second
 *            predicts less flow and power after the cut.
 *   Caution: Efficiency falls a little with the trim; cut in two steps and test between them.
 *   Caution: NPSH3 does not fall with the trim: at the same flow it stays or rises, the more the deeper the cut, and no
 *            published rule predicts it. Ask for the curve of the trimmed impeller; between two known diameters see
 *            npsh3_at_trim.
 */
CUTWATER_API cutwater_status cutwater_power_at_trim(double power_kW, double diameter_mm, double trimmed_diameter_mm,
                                       double exponent, double *trimmed_power_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_power_at_trim_rows(size_t rows, cutwater_column power_kW, cutwater_column diameter_mm,
                                            cutwater_column trimmed_diameter_mm, cutwater_column exponent,
                                            cutwater_result_column trimmed_power_kW, cutwater_rows_report *report);

/*
 * Flow and head of a point of a pump's curve after a cut of up to 5 %, by ISO 9906.
 *
 *   flow_m3h                     flow at the full diameter; at least 0 m3/h
 *   head_m                       head at the full diameter; at least 0 m
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   trimmed_diameter_mm          diameter after the cut; from 5 to 10000 mm
 *   inlet_diameter_mm            mean diameter of the vanes' leading edges, from the impeller's drawing; above 0 up to
 *                                10000 mm
 *   -> trimmed_flow_m3h          flow of the corresponding point
 *   -> trimmed_head_m            head of the corresponding point
 *
 *   Equation: Q' = R Q; H' = R^2 H; R = sqrt((D'^2 - D_1^2)/(D^2 - D_1^2))
 *   Must hold of trimmed_diameter: the trimmed diameter must be at most the full diameter: an impeller is cut, not grown
 *   Must hold of trimmed_diameter: the trimmed diameter must be at least 0.95 of the full diameter: the relation is for
 *                                  small trims, see curve_at_trim for larger ones
 *   Must hold of inlet_diameter: the mean inlet diameter must be less than the trimmed diameter
 *   Source: ISO 9906:2012, reduction of the impeller diameter after a test (relation from memory of it); its limits, a
 *           cut of 5 %, type number up to 1.5, the same vane shape after the cut, and that it takes the mean diameter of
 *           the vanes' leading edges: read in a trade encyclopaedia (excerpt)
 *   Caution: For a type number up to 1.5 and vanes whose angle and shape stay as they are. The efficiency may be taken
 *            as unchanged up to a cut of 3 % and a type number of 1.
 *   Caution: NPSH3 does not fall with the trim: at the same flow it stays or rises, the more the deeper the cut, and no
 *            published rule predicts it. Ask for the curve of the trimmed impeller; between two known diameters see
 *            npsh3_at_trim.
 */
CUTWATER_API cutwater_status cutwater_point_at_small_trim(double flow_m3h, double head_m, double diameter_mm,
                                             double trimmed_diameter_mm, double inlet_diameter_mm,
                                             double *trimmed_flow_m3h, double *trimmed_head_m,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_point_at_small_trim_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                  cutwater_column diameter_mm, cutwater_column trimmed_diameter_mm,
                                                  cutwater_column inlet_diameter_mm,
                                                  cutwater_result_column trimmed_flow_m3h,
                                                  cutwater_result_column trimmed_head_m, cutwater_rows_report *report);

/*
 * NPSH3 with a trimmed impeller at one flow, between two diameters for which the pump maker tells it.
 *
 *   npsh3_at_greatest_m          NPSH3 at that flow with the greatest diameter; at least 0 m
 *   greatest_diameter_mm         greatest diameter that the maker shows; from 10 to 10000 mm
 *   npsh3_at_least_m             NPSH3 at the same flow with the least diameter; at least 0 m
 *   least_diameter_mm            least diameter that the maker shows; from 5 to 10000 mm
 *   trimmed_diameter_mm          diameter after the cut; from 5 to 10000 mm
 *   -> npsh3_m                   NPSH3 at that flow with the trimmed impeller
 *
 *   Equation: NPSH3' = NPSH3_D + (NPSH3_d - NPSH3_D)(D - D')/(D - d)
 *   Must hold of least_diameter: it must be less than the greatest diameter
 *   Must hold of trimmed_diameter: it must lie between the two diameters for which NPSH3 is known: nothing is told
 *                                  beyond them
 *   Source: straight line between two tested diameters; common practice. That no rule predicts the change, and that a
 *           smaller impeller needs more at the same flow: a trade magazine's series on NPSH (read)
 *   Caution: NPSH3 does not fall with the trim: at the same flow it stays or rises, the more the deeper the cut, and no
 *            published rule predicts it. Ask for the curve of the trimmed impeller; between two known diameters see
 *            npsh3_at_trim.
 *   Caution: Between the two diameters the true value may lie off the line: take the greater of the two when in doubt.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_npsh3_at_trim(double npsh3_at_greatest_m, double greatest_diameter_mm,
                                       double npsh3_at_least_m, double least_diameter_mm, double trimmed_diameter_mm,
                                       double *npsh3_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh3_at_trim_rows(size_t rows, cutwater_column npsh3_at_greatest_m,
                                            cutwater_column greatest_diameter_mm, cutwater_column npsh3_at_least_m,
                                            cutwater_column least_diameter_mm, cutwater_column trimmed_diameter_mm,
                                            cutwater_result_column npsh3_m, cutwater_rows_report *report);

/*
 * Specific speed in metric units: 1/min, m3/s, m.
 *
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   flow_m3h                     the pump's whole flow at best efficiency, full diameter; above 0 m3/h
 *   head_m                       the pump's head at best efficiency: of all its stages; above 0 m
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; a whole number
 *                                from 1 to 2; 1 if left out
 *   stages                       stages that share the head; leave at 1 when the head is one stage's; a whole number
 *                                from 1 to 100; 1 if left out
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
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; a whole number
 *                                from 1 to 2; 1 if left out
 *   stages                       stages that share the head; leave at 1 when the head is one stage's; a whole number
 *                                from 1 to 100; 1 if left out
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
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; a whole number
 *                                from 1 to 2; 1 if left out
 *   stages                       stages that share the head; leave at 1 when the head is one stage's; a whole number
 *                                from 1 to 100; 1 if left out
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
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; a whole number
 *                                from 1 to 2; 1 if left out
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
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; a whole number
 *                                from 1 to 2; 1 if left out
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
 *                                MS-V: vertical multistage; MSS: submersible multistage; "ESOB", "ESCC", "ESCCi", "MS-V"
 *                                or "MSS"
 *   minimum_efficiency_index     0.1 (in force from 2013) or 0.4 (from 2015); from 0.1 to 0.7; 0.4 if left out
 *   stages                       stages that share the head; 1 for end suction; a whole number from 1 to 100; 1 if left
 *                                out
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
 *           431, subpart Y, appendix A, read in 80 FR 22939, turned into US units, the flow taken to 60 Hz by a factor
 *           of 1.2)
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
 *   Caution: Below 18 m3/h it is not used: usual_efficiency reaches down to 11.4 m3/h, what law asks at least
 *            (minimum_efficiency_eu) to 6 m3/h; below that only a test tells.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_attainable_efficiency(double flow_m3h, double head_m, double speed_rpm, double *efficiency,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_attainable_efficiency_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                    cutwater_column speed_rpm, cutwater_result_column efficiency,
                                                    cutwater_rows_report *report);

/*
 * Efficiency to be expected of a usual centrifugal pump by its flow alone: an estimate for costs.
 *
 *   flow_m3h                     flow at the duty; 50 to 5000 US gal/min; from 11.4 to 1135 m3/h
 *   -> efficiency                pump efficiency to be expected
 *
 *   Equation: eta = -0.316 + 0.24015 ln Q - 0.01199 (ln Q)^2, Q in US gal/min
 *   Source: A. B. Corripio, K. S. Chrien and L. B. Evans, Chemical Engineering 89 (1982), as in W. D. Seider et al.,
 *           Product and Process Design Principles (from memory of both; read and run in the open-source library fluids
 *           1.0.22)
 *   Caution: An estimate for budgets, made from pumps of about 1980: head, speed and shape do not enter.
 *            attainable_efficiency takes them, from 18 m3/h on.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_usual_efficiency(double flow_m3h, double *efficiency, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_usual_efficiency_rows(size_t rows, cutwater_column flow_m3h,
                                               cutwater_result_column efficiency, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

/* generated from the catalogue by cutwater-generate; do not edit. */
/* Curves. */
#ifndef CUTWATER_FAMILIES_CURVES_H
#define CUTWATER_FAMILIES_CURVES_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Value of any curve between its points, in plain numbers.
 *
 *   x_values                     the points' abscissas, in any one unit; a series of at least 2 points, rising; each a
 *                                finite number
 *   y_values                     the points' ordinates, in any one unit; a series of at least 2 points; each a finite
 *                                number
 *   x                            where to read the curve; between the first and the last point; a finite number
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
 *   x_values                     the points' abscissas, in any one unit; a series of at least 2 points, rising; each a
 *                                finite number
 *   y_values                     the points' ordinates, in any one unit; a series of at least 2 points; each a finite
 *                                number
 *   x                            where to take the slope; between the first and the last point; a finite number
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
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   heads_m                      heads of the curve's points; a series of at least 2 points; each from -20000 to 20000 m
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
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   powers_kW                    power inputs of the curve's points; a series of at least 2 points; each at least 0 kW
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
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   efficiencies                 efficiencies of the curve's points; a series of at least 2 points; each from 0 to 1
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
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   npsh3_values_m               NPSH3 of the curve's points; a series of at least 2 points; each from 0 to 20000 m
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
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the pump curve's points; a series of at least 2 points; each from -20000 to
 *                                20000 m
 *   static_head_m                head of the system at no flow; negative when the system flows by itself; from -20000 to
 *                                20000 m
 *   resistance_h2m5              system resistance: friction head over flow squared; from 0 to 1000000000 h2/m5
 *   -> duty_flow_m3h             flow through pump and system
 *
 *   Equation: H_pump(Q) = H_s + k Q^2; all meetings over the curve's range are looked for
 *   Must hold of heads: both series must have the same number of points
 *   Source: definition of the duty point, common practice; the pump curve between its points as in curve_head
 *   Caution: A curve that droops towards closed valve may meet a flat system curve twice, one with a dip three times,
 *            and pumps in parallel may hunt: see curve_is_stable.
 *   Caution: Curve and system must belong to the same liquid: a pump's curve for water does not hold for a viscous one,
 *            see curve_viscous.
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
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the pump curve's points; a series of at least 2 points; each from -20000 to
 *                                20000 m
 *   static_head_m                head of the system at no flow; negative when the system flows by itself; from -20000 to
 *                                20000 m
 *   resistance_h2m5              system resistance: friction head over flow squared; from 0 to 1000000000 h2/m5
 *   -> duty_head_m               head of pump and system there
 *
 *   Equation: H_pump(Q) = H_s + k Q^2; all meetings over the curve's range are looked for
 *   Must hold of heads: both series must have the same number of points
 *   Source: definition of the duty point, common practice; the pump curve between its points as in curve_head
 *   Caution: A curve that droops towards closed valve may meet a flat system curve twice, one with a dip three times,
 *            and pumps in parallel may hunt: see curve_is_stable.
 *   Caution: Curve and system must belong to the same liquid: a pump's curve for water does not hold for a viscous one,
 *            see curve_viscous.
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
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   heads_m                      heads of the curve's points; a series of at least 2 points; each from -20000 to 20000 m
 *   speed_rpm                    speed of that curve; above 0 up to 100000 1/min
 *   duty_flow_m3h                flow wanted; above 0 m3/h
 *   duty_head_m                  head wanted; above 0 up to 20000 m
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
 *   flows_m3h                    flows of the curve's points at full diameter; a series of at least 2 points, rising;
 *                                each at least 0 m3/h
 *   heads_m                      heads of the curve's points at full diameter; a series of at least 2 points; each from
 *                                -20000 to 20000 m
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   duty_flow_m3h                flow wanted; above 0 m3/h
 *   duty_head_m                  head wanted; above 0 up to 20000 m
 *   trim_law                     line, for the exponents (2, 2, 4) of flow, head and power, which cuts the less;
 *                                parabola, for (1, 2, 3); "parabola" or "line"; "line" if left out
 *   -> trimmed_diameter_mm       diameter after the cut, by the trim law
 *
 *   Equation: D' = D Q_d/Q_x, where H = H_d (Q/Q_d)^2 meets the curve at Q_x; for the line D' = D sqrt(Q_d/Q_x), H = H_d
 *             Q/Q_d
 *   Must hold of heads: both series must have the same number of points
 *   Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2,
 *           2, 4): common practice; limit of the ratio 0.7: set here
 *   Caution: Metal does not grow back: cut to the larger of the two laws' diameters first, test, and cut again. On a
 *            falling curve the line gives the larger; curve_at_trim goes through the duty when it is given the same law.
 *   Caution: The root of the ratio of heads at the duty's flow is not the answer: the similar point lies at another
 *            flow.
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
 * Impeller diameter at which a pump gives a duty a little below its curve, by ISO 9906's relation for cuts of up to 5 %.
 *
 *   flows_m3h                    flows of the curve's points at full diameter, as tested; a series of at least 2 points,
 *                                rising; each at least 0 m3/h
 *   heads_m                      heads of the curve's points at full diameter, as tested; a series of at least 2 points;
 *                                each from -20000 to 20000 m
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   inlet_diameter_mm            mean diameter of the vanes' leading edges, from the impeller's drawing; above 0 up to
 *                                10000 mm
 *   duty_flow_m3h                flow wanted; above 0 m3/h
 *   duty_head_m                  head wanted; above 0 up to 20000 m
 *   -> trimmed_diameter_mm       diameter after the cut
 *
 *   Equation: D' = sqrt(D_1^2 + R^2 (D^2 - D_1^2)), R = Q_d/Q_x, where H = H_d (Q/Q_d)^2 meets the curve at Q_x
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of inlet_diameter: the mean inlet diameter must be less than the full diameter
 *   Source: ISO 9906:2012, reduction of the impeller diameter after a test (relation from memory of it); its limits, a
 *           cut of 5 %, type number up to 1.5, the same vane shape after the cut, and that it takes the mean diameter of
 *           the vanes' leading edges: read in a trade encyclopaedia (excerpt)
 *   Caution: For a type number up to 1.5 and vanes whose angle and shape stay as they are. The efficiency may be taken
 *            as unchanged up to a cut of 3 % and a type number of 1.
 *   Caution: Metal does not grow back: leave a little, test, and cut again.
 *   Caution: NPSH3 does not fall with the trim: at the same flow it stays or rises, the more the deeper the cut, and no
 *            published rule predicts it. Ask for the curve of the trimmed impeller; between two known diameters see
 *            npsh3_at_trim.
 */
CUTWATER_API cutwater_status cutwater_small_trim_for_duty(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                             size_t heads_m_count, double diameter_mm, double inlet_diameter_mm,
                                             double duty_flow_m3h, double duty_head_m, double *trimmed_diameter_mm,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_small_trim_for_duty_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                  const double *heads_m, size_t heads_m_count,
                                                  cutwater_column diameter_mm, cutwater_column inlet_diameter_mm,
                                                  cutwater_column duty_flow_m3h, cutwater_column duty_head_m,
                                                  cutwater_result_column trimmed_diameter_mm,
                                                  cutwater_rows_report *report);

/*
 * Flow at which a pump's efficiency is highest.
 *
 *   flows_m3h                    flows of the curve's points; a series of at least 3 points, rising; each at least 0
 *                                m3/h
 *   efficiencies                 efficiencies of the curve's points; a series of at least 3 points; each from 0 to 1
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
 *   flows_m3h                    flows of the curve's points; a series of at least 3 points, rising; each at least 0
 *                                m3/h
 *   efficiencies                 efficiencies of the curve's points; a series of at least 3 points; each from 0 to 1
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
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   heads_m                      heads of the curve's points; a series of at least 2 points; each from -20000 to 20000 m
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
 *   Caution: Above the speed at which the pump was rated its pressure grows with the square and its power with the cube
 *            of the speed: stay within the pump maker's greatest speed, the pressure ratings of casing, seal and
 *            flanges, the motor's rating and the rotor's limits, whatever this gives.
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
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   powers_kW                    power inputs of the curve's points; a series of at least 2 points; each at least 0 kW
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
 *   Caution: Above the speed at which the pump was rated its pressure grows with the square and its power with the cube
 *            of the speed: stay within the pump maker's greatest speed, the pressure ratings of casing, seal and
 *            flanges, the motor's rating and the rotor's limits, whatever this gives.
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
 *   flows_m3h                    flows of the curve's points at full diameter; a series of at least 2 points, rising;
 *                                each at least 0 m3/h
 *   heads_m                      heads of the curve's points at full diameter; a series of at least 2 points; each from
 *                                -20000 to 20000 m
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   trimmed_diameter_mm          diameter after the cut; from 5 to 10000 mm
 *   trim_law                     similarity line of the cut: parabola for the exponents (1, 2, 3) of flow, head and
 *                                power, line for (2, 2, 4); "parabola" or "line"; "parabola" if left out
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
CUTWATER_API cutwater_status cutwater_curve_at_trim(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                       size_t heads_m_count, double diameter_mm, double trimmed_diameter_mm,
                                       const char *trim_law, double *trimmed_flows_m3h,
                                       size_t trimmed_flows_m3h_capacity, size_t *trimmed_flows_m3h_count,
                                       double *trimmed_heads_m, size_t trimmed_heads_m_capacity,
                                       size_t *trimmed_heads_m_count, cutwater_refusal *refusal);

/*
 * Power curve of a pump with its impeller trimmed.
 *
 *   flows_m3h                    flows of the curve's points at full diameter; a series of at least 2 points, rising;
 *                                each at least 0 m3/h
 *   powers_kW                    power inputs of the curve's points at full diameter; a series of at least 2 points;
 *                                each at least 0 kW
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   trimmed_diameter_mm          diameter after the cut; from 5 to 10000 mm
 *   trim_law                     similarity line of the cut: parabola for the exponents (1, 2, 3) of flow, head and
 *                                power, line for (2, 2, 4); "parabola" or "line"; "parabola" if left out
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
CUTWATER_API cutwater_status cutwater_power_curve_at_trim(const double *flows_m3h, size_t flows_m3h_count, const double *powers_kW,
                                             size_t powers_kW_count, double diameter_mm, double trimmed_diameter_mm,
                                             const char *trim_law, double *trimmed_flows_m3h,
                                             size_t trimmed_flows_m3h_capacity, size_t *trimmed_flows_m3h_count,
                                             double *trimmed_powers_kW, size_t trimmed_powers_kW_capacity,
                                             size_t *trimmed_powers_kW_count, cutwater_refusal *refusal);

/*
 * Curves of head and efficiency on a viscous liquid, from those on water.
 *
 *   flows_m3h                    flows of the points on water; a series of at least 3 points, rising; each at least 0
 *                                m3/h
 *   heads_m                      heads of the points on water, of the whole pump; a series of at least 3 points; each
 *                                above 0 up to 20000 m
 *   efficiencies                 efficiencies of the points on water; a series of at least 3 points; each from 0 to 1
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; below 1 mm2/s nothing is to be corrected,
 *                                above 3000 mm2/s the method does not hold; from 1 to 3000 mm2/s
 *   stages                       number of stages; a whole number from 1 to 100; 1 if left out
 *   water_viscosity_mm2s         kinematic viscosity of the water that the pump was tested on; from 0.2 to 2 mm2/s; 1 if
 *                                left out
 *   near_one                     as printed: the two branches, which jump at B = 1; safe: above B = 1 no higher than the
 *                                other branch ends there; "as printed" or "safe"; "as printed" if left out
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
 *           two worked examples as reproduced in public literature); this edition only
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow. Later editions of ANSI/HI 9.6.7 are reported to go
 *            up to 4000 mm2/s and a specific speed of 58 (3000 in US units); they were not read.
 *   Caution: The method's two branches do not join: above B = 1 the efficiency ratio begins again at 1, higher by (1 -
 *            eta_BEP)((nu/nu_W)^0.07 - 1)/eta_BEP, which is 3 % at eta_BEP 0.8 and 5 mm2/s, 17 % at 0.5 and 10 mm2/s.
 *            Near B = 1 take near_one as safe, which is never above the standard's value.
 */
CUTWATER_API cutwater_status cutwater_curve_viscous(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                       size_t heads_m_count, const double *efficiencies, size_t efficiencies_count,
                                       double speed_rpm, double viscosity_mm2s, double stages,
                                       double water_viscosity_mm2s, const char *near_one, double *viscous_flows_m3h,
                                       size_t viscous_flows_m3h_capacity, size_t *viscous_flows_m3h_count,
                                       double *viscous_heads_m, size_t viscous_heads_m_capacity,
                                       size_t *viscous_heads_m_count, double *viscous_efficiencies,
                                       size_t viscous_efficiencies_capacity, size_t *viscous_efficiencies_count,
                                       cutwater_refusal *refusal);

/*
 * Head curve of equal pumps in parallel.
 *
 *   flows_m3h                    flows of one pump's points; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_m                      heads of one pump's points; a series of at least 2 points; each from -20000 to 20000 m
 *   pumps                        number of pumps running; a whole number from 1 to 100
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
 *   flows_m3h                    flows of one pump's points; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_m                      heads of one pump's points; a series of at least 2 points; each from -20000 to 20000 m
 *   pumps                        number of pumps or stages; a whole number from 1 to 100
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
 *   flows_1_m3h                  flows of pump 1, from 0 on; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_1_m                    heads of pump 1, falling; a series of at least 2 points; each from -20000 to 20000 m
 *   flows_2_m3h                  flows of pump 2, from 0 on; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_2_m                    heads of pump 2, falling; a series of at least 2 points; each from -20000 to 20000 m
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
 *   flows_1_m3h                  flows of pump 1; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_1_m                    heads of pump 1; a series of at least 2 points; each from -20000 to 20000 m
 *   flows_2_m3h                  flows of pump 2; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_2_m                    heads of pump 2; a series of at least 2 points; each from -20000 to 20000 m
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
 *   flows_1_m3h                  flows of pump 1, from 0 on; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_1_m                    heads of pump 1, falling; a series of at least 2 points; each from -20000 to 20000 m
 *   flows_2_m3h                  flows of pump 2, from 0 on; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_2_m                    heads of pump 2, falling; a series of at least 2 points; each from -20000 to 20000 m
 *   static_head_m                head of the system at no flow; from -20000 to 20000 m
 *   resistance_h2m5              system resistance: friction head over flow squared; from 0 to 1000000000 h2/m5
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
 *   flows_1_m3h                  flows of pump 1, from 0 on; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_1_m                    heads of pump 1, falling; a series of at least 2 points; each from -20000 to 20000 m
 *   flows_2_m3h                  flows of pump 2, from 0 on; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_2_m                    heads of pump 2, falling; a series of at least 2 points; each from -20000 to 20000 m
 *   flows_3_m3h                  flows of pump 3, from 0 on; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_3_m                    heads of pump 3, falling; a series of at least 2 points; each from -20000 to 20000 m
 *   static_head_m                head of the system at no flow; from -20000 to 20000 m
 *   resistance_h2m5              system resistance: friction head over flow squared; from 0 to 1000000000 h2/m5
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
 *            flow_at_head; near a kink of the sum its rounding shows, so give the curves many points. On a system given
 *            by points put two of them together so and take flow_balance_on_system_points.
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
 *   flows_m3h                    flows of the pump curve's points, from 0 on; a series of at least 2 points, rising;
 *                                each at least 0 m3/h
 *   heads_m                      heads of the curve's points, falling; a series of at least 2 points; each from -20000
 *                                to 20000 m
 *   head_m                       head that the pump works against; not below the curve's last; from -20000 to 20000 m
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
 *   flows_m3h                    flows of the curve's points, from 0 on; a series of at least 2 points, rising; each at
 *                                least 0 m3/h
 *   heads_m                      heads of the curve's points; a series of at least 2 points; each above 0 up to 20000 m
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
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   heads_m                      heads of the curve's points; a series of at least 2 points; each from -20000 to 20000 m
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
 *   x_values                     the points' abscissas, in any one unit; a series of at least 2 points, rising; each a
 *                                finite number
 *   y_values                     the points' ordinates, in any one unit; a series of at least 2 points; each a finite
 *                                number
 *   degree                       greatest power of x; a whole number from 1 to 6
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
 *   x_values                     the points' abscissas, in any one unit; a series of at least 2 points, rising; each a
 *                                finite number
 *   y_values                     the points' ordinates, in any one unit; a series of at least 2 points; each a finite
 *                                number
 *   degree                       greatest power of x; a whole number from 1 to 6
 *   x                            where to read the curve; between the first and the last point; a finite number
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

#ifdef __cplusplus
}
#endif

#endif

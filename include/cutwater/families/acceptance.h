/* generated from the catalogue by cutwater-generate; do not edit. */
/* Acceptance test. */
#ifndef CUTWATER_FAMILIES_ACCEPTANCE_H
#define CUTWATER_FAMILIES_ACCEPTANCE_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Tolerances of an acceptance grade, as parts of the guaranteed values.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others; "1U",
 *                                "1E", "1B", "2B", "2U" or "3B"
 *   power_input_kW               greatest power input over the range of operation; up to 10 kW the standard has a rule
 *                                of its own; above 0 kW
 *   small_pump_rule              counts up to 10 kW: standard, the rule of 4.4.2 in place of the grade, which holds
 *                                unless otherwise agreed; grade, where the contract keeps to the grade; "standard" or
 *                                "grade"; "standard" if left out
 *   -> flow_low                  lowest flow, -0.05 for 5 % below
 *   -> flow_high                 highest flow
 *   -> head_low                  lowest head
 *   -> head_high                 highest head
 *   -> power_high                highest power; no lower limit
 *   -> efficiency_low            lowest efficiency, as a part of the guaranteed one; no upper limit
 *
 *   Equation: by the grade; up to 10 kW, by the standard's rule: tau_Q = +-10 %, tau_H = +-8 %, tau_eta = -[10 (1 - P/10
 *             kW) + 7] %, tau_P = sqrt(7^2 + tau_eta^2) %
 *   Must hold of power_input: the standard's rule for small pumps begins at 1 kW: below, the tolerances are a matter of
 *                             agreement; give small_pump_rule as grade where a grade was agreed
 *   Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it; its 10 % of flow and 8 %
 *           of head read in two trade articles)
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the standard's wider rule for small pumps takes the grade's place, unless otherwise agreed. It
 *            knows no one-sided tolerance: under 1U and 2U a pump may then fall 10 % short of its flow and 8 % of its
 *            head, under 1U and 1E short of its efficiency too. Where such a grade was meant, agree on it and give
 *            small_pump_rule as grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_tolerances(const char *grade, double power_input_kW, const char *small_pump_rule,
                                               double *flow_low, double *flow_high, double *head_low,
                                               double *head_high, double *power_high, double *efficiency_low,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_tolerances_rows(size_t rows, const char *grade, cutwater_column power_input_kW,
                                                    const char *small_pump_rule, cutwater_result_column flow_low,
                                                    cutwater_result_column flow_high, cutwater_result_column head_low,
                                                    cutwater_result_column head_high,
                                                    cutwater_result_column power_high,
                                                    cutwater_result_column efficiency_low,
                                                    cutwater_rows_report *report);

/*
 * Lowest and highest measured value that an acceptance grade allows.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others; "1U",
 *                                "1E", "1B", "2B", "2U" or "3B"
 *   quantity                     what is guaranteed; "flow", "head", "power" or "efficiency"
 *   guaranteed_value             guaranteed value in any unit; an efficiency as a fraction; above 0
 *   power_input_kW               greatest power input over the range of operation; up to 10 kW the standard has a rule
 *                                of its own; above 0 kW
 *   small_pump_rule              counts up to 10 kW: standard, the rule of 4.4.2 in place of the grade, which holds
 *                                unless otherwise agreed; grade, where the contract keeps to the grade; "standard" or
 *                                "grade"; "standard" if left out
 *   -> lowest                    in the same unit; 0 for power, which has no lower limit
 *   -> highest                   in the same unit; 1 for efficiency, which has no upper limit
 *
 *   Equation: G_low = G (1 + tau_low), G_high = G (1 + tau_high)
 *   Must hold of guaranteed_value: an efficiency must be given as a fraction, up to 1
 *   Must hold of power_input: the standard's rule for small pumps begins at 1 kW: below, the tolerances are a matter of
 *                             agreement; give small_pump_rule as grade where a grade was agreed
 *   Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it; its 10 % of flow and 8 %
 *           of head read in two trade articles)
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the standard's wider rule for small pumps takes the grade's place, unless otherwise agreed. It
 *            knows no one-sided tolerance: under 1U and 2U a pump may then fall 10 % short of its flow and 8 % of its
 *            head, under 1U and 1E short of its efficiency too. Where such a grade was meant, agree on it and give
 *            small_pump_rule as grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_limits(const char *grade, const char *quantity, double guaranteed_value,
                                           double power_input_kW, const char *small_pump_rule, double *lowest,
                                           double *highest, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_limits_rows(size_t rows, const char *grade, const char *quantity,
                                                cutwater_column guaranteed_value, cutwater_column power_input_kW,
                                                const char *small_pump_rule, cutwater_result_column lowest,
                                                cutwater_result_column highest, cutwater_rows_report *report);

/*
 * Whether a measured head curve keeps the guaranteed flow and head.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others; "1U",
 *                                "1E", "1B", "2B", "2U" or "3B"
 *   guaranteed_flow_m3h          guaranteed flow; above 0 m3/h
 *   guaranteed_head_m            guaranteed head; above 0 m
 *   flows_m3h                    measured flows, translated to the guaranteed speed; a series of at least 2 points,
 *                                rising; each at least 0 m3/h
 *   heads_m                      measured heads, translated to the guaranteed speed; a series of at least 2 points; each
 *                                a finite number in m
 *   power_input_kW               greatest power input over the range of operation; up to 10 kW the standard has a rule
 *                                of its own; above 0 kW
 *   small_pump_rule              counts up to 10 kW: standard, the rule of 4.4.2 in place of the grade, which holds
 *                                unless otherwise agreed; grade, where the contract keeps to the grade; "standard" or
 *                                "grade"; "standard" if left out
 *   -> verdict                   pass when the curve crosses or touches at least one bar of the tolerance cross
 *   -> head_at_flow_m            measured head at the guaranteed flow
 *   -> flow_at_head_m3h          measured flow at the guaranteed head, the one on the level bar if there are several;
 *                                where the curve comes nearest to it if it has it nowhere
 *
 *   Equation: H_G (1 + tau_H-) <= H(Q_G) <= H_G (1 + tau_H+), or Q_G (1 + tau_Q-) <= Q(H_G) <= Q_G (1 + tau_Q+)
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of power_input: the standard's rule for small pumps begins at 1 kW: below, the tolerances are a matter of
 *                             agreement; give small_pump_rule as grade where a grade was agreed
 *   Source: ISO 9906:2012, 4.4 and evaluation of flow and head (from memory of it; an excerpt on the tolerance cross
 *           read)
 *   Caution: Translate the measured points to the guaranteed speed first: see test_to_rated_speed.
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the standard's wider rule for small pumps takes the grade's place, unless otherwise agreed. It
 *            knows no one-sided tolerance: under 1U and 2U a pump may then fall 10 % short of its flow and 8 % of its
 *            head, under 1U and 1E short of its efficiency too. Where such a grade was meant, agree on it and give
 *            small_pump_rule as grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_verdict(const char *grade, double guaranteed_flow_m3h, double guaranteed_head_m,
                                            const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                            size_t heads_m_count, double power_input_kW, const char *small_pump_rule,
                                            const char **verdict, double *head_at_flow_m, double *flow_at_head_m3h,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_verdict_rows(size_t rows, const char *grade, cutwater_column guaranteed_flow_m3h,
                                                 cutwater_column guaranteed_head_m, const double *flows_m3h,
                                                 size_t flows_m3h_count, const double *heads_m, size_t heads_m_count,
                                                 cutwater_column power_input_kW, const char *small_pump_rule,
                                                 cutwater_result_column verdict,
                                                 cutwater_result_column head_at_flow_m,
                                                 cutwater_result_column flow_at_head_m3h,
                                                 cutwater_rows_report *report);

/*
 * Whether measured curves keep the guaranteed efficiency.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others; "1U",
 *                                "1E", "1B", "2B", "2U" or "3B"
 *   guaranteed_flow_m3h          guaranteed flow; above 0 m3/h
 *   guaranteed_head_m            guaranteed head; above 0 m
 *   guaranteed_efficiency        guaranteed efficiency; above 0 up to 1
 *   flows_m3h                    measured flows, translated to the guaranteed speed; a series of at least 2 points,
 *                                rising; each at least 0 m3/h
 *   heads_m                      measured heads, translated to the guaranteed speed; a series of at least 2 points; each
 *                                a finite number in m
 *   efficiencies                 measured efficiencies at those flows; a series of at least 2 points; each from 0 to 1
 *   power_input_kW               greatest power input over the range of operation; up to 10 kW the standard has a rule
 *                                of its own; above 0 kW
 *   small_pump_rule              counts up to 10 kW: standard, the rule of 4.4.2 in place of the grade, which holds
 *                                unless otherwise agreed; grade, where the contract keeps to the grade; "standard" or
 *                                "grade"; "standard" if left out
 *   -> verdict                   pass when the efficiency there is not below its limit
 *   -> efficiency                measured efficiency there
 *   -> flow_m3h                  flow at which the line from the origin through the guaranteed point meets the head
 *                                curve, the nearest to Q_G if it meets it more than once
 *
 *   Equation: eta(Q) >= eta_G (1 + tau_eta) where H(Q) = H_G Q/Q_G
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of efficiencies: both series must have the same number of points
 *   Must hold of power_input: the standard's rule for small pumps begins at 1 kW: below, the tolerances are a matter of
 *                             agreement; give small_pump_rule as grade where a grade was agreed
 *   Source: ISO 9906:2012, 4.4 and evaluation of efficiency and power on the line through the origin (from memory of it)
 *   Caution: Translate the measured points to the guaranteed speed first: see test_to_rated_speed.
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the standard's wider rule for small pumps takes the grade's place, unless otherwise agreed. It
 *            knows no one-sided tolerance: under 1U and 2U a pump may then fall 10 % short of its flow and 8 % of its
 *            head, under 1U and 1E short of its efficiency too. Where such a grade was meant, agree on it and give
 *            small_pump_rule as grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_verdict_efficiency(const char *grade, double guaranteed_flow_m3h,
                                                       double guaranteed_head_m, double guaranteed_efficiency,
                                                       const double *flows_m3h, size_t flows_m3h_count,
                                                       const double *heads_m, size_t heads_m_count,
                                                       const double *efficiencies, size_t efficiencies_count,
                                                       double power_input_kW, const char *small_pump_rule,
                                                       const char **verdict, double *efficiency, double *flow_m3h,
                                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_verdict_efficiency_rows(size_t rows, const char *grade,
                                                            cutwater_column guaranteed_flow_m3h,
                                                            cutwater_column guaranteed_head_m,
                                                            cutwater_column guaranteed_efficiency,
                                                            const double *flows_m3h, size_t flows_m3h_count,
                                                            const double *heads_m, size_t heads_m_count,
                                                            const double *efficiencies, size_t efficiencies_count,
                                                            cutwater_column power_input_kW,
                                                            const char *small_pump_rule,
                                                            cutwater_result_column verdict,
                                                            cutwater_result_column efficiency,
                                                            cutwater_result_column flow_m3h,
                                                            cutwater_rows_report *report);

/*
 * Whether measured curves keep the guaranteed power input.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others; "1U",
 *                                "1E", "1B", "2B", "2U" or "3B"
 *   guaranteed_flow_m3h          guaranteed flow; above 0 m3/h
 *   guaranteed_head_m            guaranteed head; above 0 m
 *   guaranteed_power_kW          guaranteed power input; above 0 kW
 *   flows_m3h                    measured flows, translated to the guaranteed speed; a series of at least 2 points,
 *                                rising; each at least 0 m3/h
 *   heads_m                      measured heads, translated to the guaranteed speed; a series of at least 2 points; each
 *                                a finite number in m
 *   powers_kW                    measured power inputs at those flows, translated to the guaranteed speed; a series of
 *                                at least 2 points; each at least 0 kW
 *   power_input_kW               greatest power input over the range of operation; up to 10 kW the standard has a rule
 *                                of its own; above 0 kW
 *   small_pump_rule              counts up to 10 kW: standard, the rule of 4.4.2 in place of the grade, which holds
 *                                unless otherwise agreed; grade, where the contract keeps to the grade; "standard" or
 *                                "grade"; "standard" if left out
 *   -> verdict                   pass when the power there is not above its limit
 *   -> power_kW                  measured power input there
 *   -> flow_m3h                  flow at which the line from the origin through the guaranteed point meets the head
 *                                curve, the nearest to Q_G if it meets it more than once
 *
 *   Equation: P(Q) <= P_G (1 + tau_P) where H(Q) = H_G Q/Q_G
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of powers: both series must have the same number of points
 *   Must hold of power_input: the standard's rule for small pumps begins at 1 kW: below, the tolerances are a matter of
 *                             agreement; give small_pump_rule as grade where a grade was agreed
 *   Must hold of power_input: the greatest power input over the range cannot be less than the guaranteed one
 *   Source: ISO 9906:2012, 4.4 and evaluation of efficiency and power on the line through the origin (from memory of it)
 *   Caution: Translate the measured points to the guaranteed speed first: see test_to_rated_speed.
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the standard's wider rule for small pumps takes the grade's place, unless otherwise agreed. It
 *            knows no one-sided tolerance: under 1U and 2U a pump may then fall 10 % short of its flow and 8 % of its
 *            head, under 1U and 1E short of its efficiency too. Where such a grade was meant, agree on it and give
 *            small_pump_rule as grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_verdict_power(const char *grade, double guaranteed_flow_m3h,
                                                  double guaranteed_head_m, double guaranteed_power_kW,
                                                  const double *flows_m3h, size_t flows_m3h_count,
                                                  const double *heads_m, size_t heads_m_count,
                                                  const double *powers_kW, size_t powers_kW_count,
                                                  double power_input_kW, const char *small_pump_rule,
                                                  const char **verdict, double *power_kW, double *flow_m3h,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_verdict_power_rows(size_t rows, const char *grade,
                                                       cutwater_column guaranteed_flow_m3h,
                                                       cutwater_column guaranteed_head_m,
                                                       cutwater_column guaranteed_power_kW, const double *flows_m3h,
                                                       size_t flows_m3h_count, const double *heads_m,
                                                       size_t heads_m_count, const double *powers_kW,
                                                       size_t powers_kW_count, cutwater_column power_input_kW,
                                                       const char *small_pump_rule, cutwater_result_column verdict,
                                                       cutwater_result_column power_kW,
                                                       cutwater_result_column flow_m3h, cutwater_rows_report *report);

/*
 * Deviation of a measured value from the guaranteed one, and its margin in an acceptance grade.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others; "1U",
 *                                "1E", "1B", "2B", "2U" or "3B"
 *   quantity                     what is guaranteed; "flow", "head", "power" or "efficiency"
 *   guaranteed_value             guaranteed value in any unit; an efficiency as a fraction; above 0
 *   measured_value               measured value in the same unit, as a verdict's function gives it; at least 0
 *   power_input_kW               greatest power input over the range of operation; up to 10 kW the standard has a rule
 *                                of its own; above 0 kW
 *   small_pump_rule              counts up to 10 kW: standard, the rule of 4.4.2 in place of the grade, which holds
 *                                unless otherwise agreed; grade, where the contract keeps to the grade; "standard" or
 *                                "grade"; "standard" if left out
 *   -> deviation                 part of the guaranteed value, -0.02 for 2 % below
 *   -> margin                    distance to the nearer limit; negative when outside its tolerance
 *
 *   Equation: d = M/G - 1; m = min(d - tau_low, tau_high - d); power: m = tau_P - d; efficiency: m = d - tau_eta
 *   Must hold of measured_value: an efficiency, guaranteed or measured, must be a fraction, up to 1
 *   Must hold of power_input: the standard's rule for small pumps begins at 1 kW: below, the tolerances are a matter of
 *                             agreement; give small_pump_rule as grade where a grade was agreed
 *   Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it; its 10 % of flow and 8 %
 *           of head read in two trade articles)
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the standard's wider rule for small pumps takes the grade's place, unless otherwise agreed. It
 *            knows no one-sided tolerance: under 1U and 2U a pump may then fall 10 % short of its flow and 8 % of its
 *            head, under 1U and 1E short of its efficiency too. Where such a grade was meant, agree on it and give
 *            small_pump_rule as grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 *   Caution: Flow and head need not both keep their tolerances: it is enough that the curve touches one bar of the
 *            cross, see acceptance_verdict.
 */
CUTWATER_API cutwater_status cutwater_acceptance_margin(const char *grade, const char *quantity, double guaranteed_value,
                                           double measured_value, double power_input_kW, const char *small_pump_rule,
                                           double *deviation, double *margin, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_margin_rows(size_t rows, const char *grade, const char *quantity,
                                                cutwater_column guaranteed_value, cutwater_column measured_value,
                                                cutwater_column power_input_kW, const char *small_pump_rule,
                                                cutwater_result_column deviation, cutwater_result_column margin,
                                                cutwater_rows_report *report);

/*
 * Deviations of a measured head curve from the guaranteed point, and their margins in an acceptance grade.
 *
 *   grade                        acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others; "1U",
 *                                "1E", "1B", "2B", "2U" or "3B"
 *   guaranteed_flow_m3h          guaranteed flow; above 0 m3/h
 *   guaranteed_head_m            guaranteed head; above 0 m
 *   flows_m3h                    measured flows, translated to the guaranteed speed; a series of at least 2 points,
 *                                rising; each at least 0 m3/h
 *   heads_m                      measured heads, translated to the guaranteed speed; a series of at least 2 points; each
 *                                a finite number in m
 *   power_input_kW               greatest power input over the range of operation; up to 10 kW the standard has a rule
 *                                of its own; above 0 kW
 *   small_pump_rule              counts up to 10 kW: standard, the rule of 4.4.2 in place of the grade, which holds
 *                                unless otherwise agreed; grade, where the contract keeps to the grade; "standard" or
 *                                "grade"; "standard" if left out
 *   -> head_deviation            of the head at the guaranteed flow, as a part of the guaranteed head
 *   -> head_margin               distance to the nearer limit; negative when outside its tolerance
 *   -> flow_deviation            of the flow at the guaranteed head, as a part of the guaranteed flow
 *   -> flow_margin               distance to the nearer limit; negative when outside its tolerance
 *
 *   Equation: d_H = H(Q_G)/H_G - 1; d_Q = Q(H_G)/Q_G - 1; m = min(d - tau_low, tau_high - d); the guarantee is kept when
 *             either margin is not negative
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of power_input: the standard's rule for small pumps begins at 1 kW: below, the tolerances are a matter of
 *                             agreement; give small_pump_rule as grade where a grade was agreed
 *   Source: ISO 9906:2012, 4.4 and evaluation of flow and head (from memory of it; an excerpt on the tolerance cross
 *           read)
 *   Caution: Translate the measured points to the guaranteed speed first: see test_to_rated_speed.
 *   Caution: The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to
 *            them.
 *   Caution: Up to 10 kW the standard's wider rule for small pumps takes the grade's place, unless otherwise agreed. It
 *            knows no one-sided tolerance: under 1U and 2U a pump may then fall 10 % short of its flow and 8 % of its
 *            head, under 1U and 1E short of its efficiency too. Where such a grade was meant, agree on it and give
 *            small_pump_rule as grade.
 *   Caution: What was agreed in the contract goes before: grade, rated point and whether power or efficiency is
 *            guaranteed.
 */
CUTWATER_API cutwater_status cutwater_acceptance_margins(const char *grade, double guaranteed_flow_m3h, double guaranteed_head_m,
                                            const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                            size_t heads_m_count, double power_input_kW, const char *small_pump_rule,
                                            double *head_deviation, double *head_margin, double *flow_deviation,
                                            double *flow_margin, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_acceptance_margins_rows(size_t rows, const char *grade, cutwater_column guaranteed_flow_m3h,
                                                 cutwater_column guaranteed_head_m, const double *flows_m3h,
                                                 size_t flows_m3h_count, const double *heads_m, size_t heads_m_count,
                                                 cutwater_column power_input_kW, const char *small_pump_rule,
                                                 cutwater_result_column head_deviation,
                                                 cutwater_result_column head_margin,
                                                 cutwater_result_column flow_deviation,
                                                 cutwater_result_column flow_margin, cutwater_rows_report *report);

/*
 * Measured values translated to the rated speed and density.
 *
 *   flow_m3h                     measured flow; at least 0 m3/h
 *   head_m                       measured head; a finite number in m
 *   power_kW                     measured power input; at least 0 kW
 *   npsh3_m                      measured NPSH3; 0 when it was not measured; at least 0 m
 *   test_speed_rpm               speed at the test; above 0 up to 100000 1/min
 *   rated_speed_rpm              rated speed; above 0 up to 100000 1/min
 *   test_density_kgm3            density of the test liquid; from 50 to 25000 kg/m3
 *   rated_density_kgm3           density of the rated liquid; from 50 to 25000 kg/m3
 *   npsh_exponent                2 while speed and flow lie within the standard's limits; down to 1.3 otherwise, by
 *                                agreement; from 1.3 to 2; 2 if left out
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
 *   Caution: The square flatters NPSH3 when the test ran faster than rated: agree the exponent, see npsh3_at_speed.
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
 *   flows_m3h                    measured flows; a series of at least 1 point; each at least 0 m3/h
 *   heads_m                      measured heads; a series of at least 1 point; each at least 0 m
 *   powers_kW                    measured pump power inputs; a series of at least 1 point; each above 0 kW
 *   test_speeds_rpm              speed at each point, as measured; a series of at least 1 point; each above 0 up to
 *                                100000 1/min
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
 *   readings                     repeated readings of one quantity, in any unit; a series of at least 3 points; each a
 *                                finite number
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
 *   speed_uncertainty_percent    overall uncertainty of the speed, when the torque is measured; from 0 to 100 %; 0 if
 *                                left out
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
 *   test_grade                   grade of the test: 1, 2 or 3; "1", "2" or "3"
 *   quantity                     what is measured; "flow", "speed", "torque", "head", "driver power", "power from torque
 *                                and speed", "power from driver power", "efficiency from torque and speed" or
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

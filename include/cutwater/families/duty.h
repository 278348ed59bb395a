/* generated from the catalogue by cutwater-generate; do not edit. */
/* The whole duty. */
#ifndef CUTWATER_FAMILIES_DUTY_H
#define CUTWATER_FAMILIES_DUTY_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * The whole duty of a pump on its system: flow, head, efficiency, power, and NPSH needed and offered.
 *
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the pump curve's points; a series of at least 2 points; each from -20000 to
 *                                20000 m
 *   efficiencies                 pump efficiencies at the curve's points; 0 at no flow; a series of at least 2 points;
 *                                each from 0 to 1
 *   npsh3_values_m               NPSH3 of the curve's points; a series of at least 2 points; each from 0 to 20000 m
 *   static_head_m                head of the system at no flow; from -20000 to 20000 m
 *   resistance_h2m5              system resistance: friction head over flow squared; from 0 to 1000000000 h2/m5
 *   density_kgm3                 density of the liquid; a viscous one wants its own curves, see curve_viscous; from 50
 *                                to 25000 kg/m3
 *   npsh_at_rest_m               net positive suction head available at no flow: npsh_available without friction; from
 *                                -20000 to 20000 m
 *   suction_resistance_h2m5      losses of the suction line over the square of the flow, its entry included; from 0 to
 *                                1000000000 h2/m5
 *   -> flow_m3h                  flow through pump and system
 *   -> head_m                    head there
 *   -> efficiency                pump efficiency there
 *   -> power_kW                  pump power input there
 *   -> npsh3_m                   NPSH at 3 % head drop there
 *   -> npsh_m                    NPSH available there
 *   -> margin_m                  what is left; negative: the pump cavitates and the duty does not hold
 *
 *   Equation: H_pump(Q) = H_s + k Q^2; P = rho g Q H/eta(Q); NPSHA = NPSHA_0 - k_s Q^2
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of efficiencies: both series must have the same number of points
 *   Must hold of npsh3_values: both series must have the same number of points
 *   Source: definitions of ISO 17769-1:2012 (from memory of it); the curves between their points as in curve_head
 *   Caution: A curve that droops towards closed valve may meet a flat system curve twice, one with a dip three times,
 *            and pumps in parallel may hunt: see curve_is_stable.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: NPSH datum: the centre of the circle through the outermost points of the leading edges of the first-stage
 *            impeller's vanes. Measure elevations from there, or add the shift.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_whole_duty(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                    size_t heads_m_count, const double *efficiencies, size_t efficiencies_count,
                                    const double *npsh3_values_m, size_t npsh3_values_m_count, double static_head_m,
                                    double resistance_h2m5, double density_kgm3, double npsh_at_rest_m,
                                    double suction_resistance_h2m5, double *flow_m3h, double *head_m,
                                    double *efficiency, double *power_kW, double *npsh3_m, double *npsh_m,
                                    double *margin_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_whole_duty_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                         const double *heads_m, size_t heads_m_count, const double *efficiencies,
                                         size_t efficiencies_count, const double *npsh3_values_m,
                                         size_t npsh3_values_m_count, cutwater_column static_head_m,
                                         cutwater_column resistance_h2m5, cutwater_column density_kgm3,
                                         cutwater_column npsh_at_rest_m, cutwater_column suction_resistance_h2m5,
                                         cutwater_result_column flow_m3h, cutwater_result_column head_m,
                                         cutwater_result_column efficiency, cutwater_result_column power_kW,
                                         cutwater_result_column npsh3_m, cutwater_result_column npsh_m,
                                         cutwater_result_column margin_m, cutwater_rows_report *report);

/*
 * The whole duty of a pump on a system given by points: flow, head, efficiency, power, NPSH needed and offered.
 *
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the pump curve's points; a series of at least 2 points; each from -20000 to
 *                                20000 m
 *   efficiencies                 pump efficiencies at the curve's points; 0 at no flow; a series of at least 2 points;
 *                                each from 0 to 1
 *   npsh3_values_m               NPSH3 of the curve's points; a series of at least 2 points; each from 0 to 20000 m
 *   system_flows_m3h             flows of the system curve's points; a series of at least 2 points, rising; each at
 *                                least 0 m3/h
 *   system_heads_m               heads that the system asks for at those flows; a series of at least 2 points; each from
 *                                -20000 to 20000 m
 *   npsh_values_m                net positive suction head available at the system's flows; a series of at least 2
 *                                points; each from -20000 to 20000 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   -> flow_m3h                  flow through pump and system
 *   -> head_m                    head there
 *   -> efficiency                pump efficiency there
 *   -> power_kW                  pump power input there
 *   -> npsh3_m                   NPSH at 3 % head drop there
 *   -> npsh_m                    NPSH available there
 *   -> margin_m                  what is left; negative: the pump cavitates and the duty does not hold
 *
 *   Equation: H_pump(Q) = H_system(Q); P = rho g Q H/eta(Q); all curves between their points as in curve_head
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of efficiencies: both series must have the same number of points
 *   Must hold of npsh3_values: both series must have the same number of points
 *   Must hold of system_heads: both series must have the same number of points
 *   Must hold of npsh_values: both series must have the same number of points
 *   Source: definitions of ISO 17769-1:2012 (from memory of it); the curves between their points as in curve_head
 *   Caution: A curve that droops towards closed valve may meet a flat system curve twice, one with a dip three times,
 *            and pumps in parallel may hunt: see curve_is_stable.
 *   Caution: Curve and system must belong to the same liquid: a pump's curve for water does not hold for a viscous one,
 *            see curve_viscous.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: NPSH datum: the centre of the circle through the outermost points of the leading edges of the first-stage
 *            impeller's vanes. Measure elevations from there, or add the shift.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_whole_duty_on_system_points(const double *flows_m3h, size_t flows_m3h_count,
                                                     const double *heads_m, size_t heads_m_count,
                                                     const double *efficiencies, size_t efficiencies_count,
                                                     const double *npsh3_values_m, size_t npsh3_values_m_count,
                                                     const double *system_flows_m3h, size_t system_flows_m3h_count,
                                                     const double *system_heads_m, size_t system_heads_m_count,
                                                     const double *npsh_values_m, size_t npsh_values_m_count,
                                                     double density_kgm3, double *flow_m3h, double *head_m,
                                                     double *efficiency, double *power_kW, double *npsh3_m,
                                                     double *npsh_m, double *margin_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_whole_duty_on_system_points_rows(size_t rows, const double *flows_m3h,
                                                          size_t flows_m3h_count, const double *heads_m,
                                                          size_t heads_m_count, const double *efficiencies,
                                                          size_t efficiencies_count, const double *npsh3_values_m,
                                                          size_t npsh3_values_m_count, const double *system_flows_m3h,
                                                          size_t system_flows_m3h_count, const double *system_heads_m,
                                                          size_t system_heads_m_count, const double *npsh_values_m,
                                                          size_t npsh_values_m_count, cutwater_column density_kgm3,
                                                          cutwater_result_column flow_m3h,
                                                          cutwater_result_column head_m,
                                                          cutwater_result_column efficiency,
                                                          cutwater_result_column power_kW,
                                                          cutwater_result_column npsh3_m,
                                                          cutwater_result_column npsh_m,
                                                          cutwater_result_column margin_m,
                                                          cutwater_rows_report *report);

/*
 * Duty of one pump, or of equal pumps in parallel, on a system curve that is given by points.
 *
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the pump curve's points; a series of at least 2 points; each from -20000 to
 *                                20000 m
 *   system_flows_m3h             flows of the system curve's points; a series of at least 2 points, rising; each at
 *                                least 0 m3/h
 *   system_heads_m               heads that the system asks for at those flows; a series of at least 2 points; each a
 *                                finite number in m
 *   pumps                        equal pumps running in parallel; a whole number from 1 to 20; 1 if left out
 *   -> flow_m3h                  flow through the system, of all pumps together
 *   -> head_m                    head of pumps and system there
 *   -> flow_of_each_m3h          flow of each pump
 *
 *   Equation: H_pump(Q/N) = H_system(Q), both curves read as by curve_head; all meetings over the flows that both cover
 *             are looked for
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of system_heads: both series must have the same number of points
 *   Source: definition of the duty point, common practice; the pump curve between its points as in curve_head
 *   Caution: A curve that droops towards closed valve may meet a flat system curve twice, one with a dip three times,
 *            and pumps in parallel may hunt: see curve_is_stable.
 *   Caution: Every pump in parallel needs a non-return valve, and one that delivers nothing runs at closed valve: see
 *            closed_valve_heating_rate.
 *   Caution: Losses between each pump and the common pipe are left out: take them off each pump's curve first.
 *   Caution: Curve and system must belong to the same liquid: a pump's curve for water does not hold for a viscous one,
 *            see curve_viscous.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_duty_on_system_points(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                               size_t heads_m_count, const double *system_flows_m3h,
                                               size_t system_flows_m3h_count, const double *system_heads_m,
                                               size_t system_heads_m_count, double pumps, double *flow_m3h,
                                               double *head_m, double *flow_of_each_m3h, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_duty_on_system_points_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                    const double *heads_m, size_t heads_m_count,
                                                    const double *system_flows_m3h, size_t system_flows_m3h_count,
                                                    const double *system_heads_m, size_t system_heads_m_count,
                                                    cutwater_column pumps, cutwater_result_column flow_m3h,
                                                    cutwater_result_column head_m,
                                                    cutwater_result_column flow_of_each_m3h,
                                                    cutwater_rows_report *report);

/*
 * Duty of one pump, or of equal pumps in parallel, on a system with laminar and turbulent friction.
 *
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the pump curve's points, falling; a series of at least 2 points; each from
 *                                -20000 to 20000 m
 *   static_head_m                head of the system at no flow; from -20000 to 20000 m
 *   reference_flow_m3h           flow at which the friction heads are known; above 0 m3/h
 *   laminar_friction_head_m      friction head at that flow of what rises with the flow itself: laminar lines, filter
 *                                cakes, packed beds; from 0 to 10000000 m
 *   turbulent_friction_head_m    friction head at that flow of what rises faster: turbulent lines, fittings, valves;
 *                                from 0 to 10000000 m
 *   exponent                     of the faster part: 2 for rough pipes and fittings, about 1.75 for smooth pipes; from 1
 *                                to 2; 2 if left out
 *   pumps                        equal pumps running in parallel; a whole number from 1 to 20; 1 if left out
 *   -> flow_m3h                  flow through the system, of all pumps together
 *   -> head_m                    head of pumps and system there
 *   -> flow_of_each_m3h          flow of each pump
 *
 *   Equation: H_pump(Q/N) = H_s + h_1 Q/Q_r + h_2 (Q/Q_r)^m
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of heads: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                       give the falling part from closed valve on
 *   Source: laminar friction rises with the flow (Hagen and Poiseuille), turbulent with its square in rough pipes (Darcy
 *           and Weisbach) and its power 1.75 in smooth ones (Blasius); any textbook of hydraulics
 *   Caution: A line that is laminar at the reference flow may not be at a larger one, nor at a lower viscosity: check
 *            the Reynolds number at the duty.
 *   Caution: Curve and system must belong to the same liquid: a pump's curve for water does not hold for a viscous one,
 *            see curve_viscous.
 *   Caution: Every pump in parallel needs a non-return valve, and one that delivers nothing runs at closed valve: see
 *            closed_valve_heating_rate.
 *   Caution: Losses between each pump and the common pipe are left out: take them off each pump's curve first.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_duty_on_mixed_friction(const double *flows_m3h, size_t flows_m3h_count,
                                                const double *heads_m, size_t heads_m_count, double static_head_m,
                                                double reference_flow_m3h, double laminar_friction_head_m,
                                                double turbulent_friction_head_m, double exponent, double pumps,
                                                double *flow_m3h, double *head_m, double *flow_of_each_m3h,
                                                cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_duty_on_mixed_friction_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                     const double *heads_m, size_t heads_m_count,
                                                     cutwater_column static_head_m,
                                                     cutwater_column reference_flow_m3h,
                                                     cutwater_column laminar_friction_head_m,
                                                     cutwater_column turbulent_friction_head_m,
                                                     cutwater_column exponent, cutwater_column pumps,
                                                     cutwater_result_column flow_m3h, cutwater_result_column head_m,
                                                     cutwater_result_column flow_of_each_m3h,
                                                     cutwater_rows_report *report);

/*
 * System curve with laminar and turbulent friction, point by point.
 *
 *   flows_m3h                    flows at which the system's head is wanted; a series of at least 1 point; each at least
 *                                0 m3/h
 *   static_head_m                head of the system at no flow; from -20000 to 20000 m
 *   reference_flow_m3h           flow at which the friction heads are known; above 0 m3/h
 *   laminar_friction_head_m      friction head at that flow of what rises with the flow itself: laminar lines, filter
 *                                cakes, packed beds; from 0 to 10000000 m
 *   turbulent_friction_head_m    friction head at that flow of what rises faster: turbulent lines, fittings, valves;
 *                                from 0 to 10000000 m
 *   exponent                     of the faster part: 2 for rough pipes and fittings, about 1.75 for smooth pipes; from 1
 *                                to 2; 2 if left out
 *   -> system_heads_m            heads that the system asks for at those flows
 *
 *   Equation: H_i = H_s + h_1 Q_i/Q_r + h_2 (Q_i/Q_r)^m
 *   Source: laminar friction rises with the flow (Hagen and Poiseuille), turbulent with its square in rough pipes (Darcy
 *           and Weisbach) and its power 1.75 in smooth ones (Blasius); any textbook of hydraulics
 *   Caution: A line that is laminar at the reference flow may not be at a larger one, nor at a lower viscosity: check
 *            the Reynolds number at the duty.
 */
CUTWATER_API cutwater_status cutwater_mixed_friction_heads(const double *flows_m3h, size_t flows_m3h_count, double static_head_m,
                                              double reference_flow_m3h, double laminar_friction_head_m,
                                              double turbulent_friction_head_m, double exponent,
                                              double *system_heads_m, size_t system_heads_m_capacity,
                                              size_t *system_heads_m_count, cutwater_refusal *refusal);

/*
 * System curve of a line, its friction laminar or turbulent as it comes at each flow.
 *
 *   flows_m3h                    flows at which the system's head is wanted; a series of at least 1 point; each at least
 *                                0 m3/h
 *   static_head_m                head of the system at no flow; from -20000 to 20000 m
 *   bore_mm                      inside diameter of the line; from 1 to 10000 mm
 *   length_m                     length of straight pipe; at least 0 m
 *   roughness_mm                 roughness of the wall: new commercial steel 0.046; at least 0 mm
 *   kinematic_viscosity_mm2s     kinematic viscosity at the temperature in the line; from 0.01 to 1000000 mm2/s
 *   loss_coefficient             sum of the fittings' loss coefficients; at least 0; 0 if left out
 *   -> system_heads_m            heads that the system asks for at those flows
 *
 *   Equation: H_i = H_s + h_f(Q_i) + K v_i^2/(2 g), h_f as in pipe_friction_head
 *   Must hold of roughness: the roughness must be at most 0.05 of the bore, the end of the method's range
 *   Must hold of flows: the Reynolds number must be at most 1e9, the end of the method's range
 *   Source: Darcy and Weisbach; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.1 to 3.A.5 (excerpt
 *           read)
 *   Caution: Where the flow turns turbulent, near Re 2000, the curve jumps: give points close together there, and mind
 *            that a duty in the jump is none.
 *   Caution: Loss coefficients of fittings grow in laminar flow: see fitting_loss_coefficient.
 *   Caution: Between Re 2000 and 4000 the flow may be laminar, turbulent or change between them: the factor returned
 *            there is the turbulent one, which is the higher. Just above Re 2000 it jumps.
 *   Caution: Friction factors of commercial pipe scatter by 10 to 15 %, and roughness grows with age: add a margin for
 *            an old or fouled line.
 */
CUTWATER_API cutwater_status cutwater_line_heads(const double *flows_m3h, size_t flows_m3h_count, double static_head_m,
                                    double bore_mm, double length_m, double roughness_mm,
                                    double kinematic_viscosity_mm2s, double loss_coefficient, double *system_heads_m,
                                    size_t system_heads_m_capacity, size_t *system_heads_m_count,
                                    cutwater_refusal *refusal);

/*
 * Duty of two unlike pumps in parallel on a system curve that is given by points, and each pump's share.
 *
 *   flows_1_m3h                  flows of pump 1, from 0 on; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_1_m                    heads of pump 1, falling; a series of at least 2 points; each from -20000 to 20000 m
 *   flows_2_m3h                  flows of pump 2, from 0 on; a series of at least 2 points, rising; each at least 0 m3/h
 *   heads_2_m                    heads of pump 2, falling; a series of at least 2 points; each from -20000 to 20000 m
 *   system_flows_m3h             flows of the system curve's points; a series of at least 2 points, rising; each at
 *                                least 0 m3/h
 *   system_heads_m               heads that the system asks for at those flows, never falling; from flow 0 on; a series
 *                                of at least 2 points; each from -20000 to 20000 m
 *   -> total_flow_m3h            flow through the system
 *   -> head_m                    head common to both
 *   -> flow_1_m3h                flow of pump 1
 *   -> flow_2_m3h                flow of pump 2
 *   -> delivering                whether one of them delivers nothing, the head being above its closed-valve head
 *
 *   Equation: Q = Q_1(H) + Q_2(H), H = H_system(Q)
 *   Must hold of heads_1: both series must have the same number of points
 *   Must hold of heads_2: both series must have the same number of points
 *   Must hold of system_heads: both series must have the same number of points
 *   Must hold of heads_1: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                         give the falling part from closed valve on
 *   Must hold of flows_1: the curve must begin at closed valve, flow 0
 *   Must hold of heads_2: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                         give the falling part from closed valve on
 *   Must hold of flows_2: the curve must begin at closed valve, flow 0
 *   Must hold of system_flows: the system's curve must begin at flow 0
 *   Must hold of system_heads: the system's head must not fall from point to point
 *   Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it)
 *   Caution: Every pump in parallel needs a non-return valve, and one that delivers nothing runs at closed valve: see
 *            closed_valve_heating_rate.
 *   Caution: Losses between each pump and the common pipe are left out: take them off each pump's curve first.
 *   Caution: Curve and system must belong to the same liquid: a pump's curve for water does not hold for a viscous one,
 *            see curve_viscous.
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 */
CUTWATER_API cutwater_status cutwater_flow_balance_on_system_points(const double *flows_1_m3h, size_t flows_1_m3h_count,
                                                       const double *heads_1_m, size_t heads_1_m_count,
                                                       const double *flows_2_m3h, size_t flows_2_m3h_count,
                                                       const double *heads_2_m, size_t heads_2_m_count,
                                                       const double *system_flows_m3h, size_t system_flows_m3h_count,
                                                       const double *system_heads_m, size_t system_heads_m_count,
                                                       double *total_flow_m3h, double *head_m, double *flow_1_m3h,
                                                       double *flow_2_m3h, const char **delivering,
                                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_flow_balance_on_system_points_rows(size_t rows, const double *flows_1_m3h,
                                                            size_t flows_1_m3h_count, const double *heads_1_m,
                                                            size_t heads_1_m_count, const double *flows_2_m3h,
                                                            size_t flows_2_m3h_count, const double *heads_2_m,
                                                            size_t heads_2_m_count, const double *system_flows_m3h,
                                                            size_t system_flows_m3h_count,
                                                            const double *system_heads_m, size_t system_heads_m_count,
                                                            cutwater_result_column total_flow_m3h,
                                                            cutwater_result_column head_m,
                                                            cutwater_result_column flow_1_m3h,
                                                            cutwater_result_column flow_2_m3h,
                                                            cutwater_result_column delivering,
                                                            cutwater_rows_report *report);

/*
 * Energy of a year's duty profile on a system of any kind, its head given at each flow.
 *
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the curve's points; a series of at least 2 points; each a finite number in m
 *   efficiencies                 pump efficiencies at the curve's points; 0 at no flow; a series of at least 2 points;
 *                                each from 0 to 1
 *   profile_flows_m3h            flow wanted at each point of the duty profile; 0 while the pump stands still; a series
 *                                of at least 1 point; each at least 0 m3/h
 *   profile_heads_m              head that the system, its control valve open, asks for at that flow; a series of at
 *                                least 1 point; each from -20000 to 20000 m
 *   hours_h                      hours a year at each point of the profile; a series of at least 1 point; each at least
 *                                0 h
 *   control                      throttling at full speed; speed, by a frequency converter; "throttling" or "speed"
 *   motor_rating_kW              rated output of the motor; from 0.12 to 1000 kW
 *   motor_efficiency             efficiency of the motor at its rated output; above 0 up to 1
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; 998.2 if left out
 *   drive_efficiency             efficiency of the converter at full load; of use for speed control only; above 0 up to
 *                                1; 0.96 if left out
 *   constant_loss_share          share of the motor's full-load losses that does not change with load; 0.36 puts its
 *                                best efficiency at 75 % load; from 0 to 1; 0.36 if left out
 *   -> energy_kWh                energy from the mains in the year
 *   -> volume_m3                 volume pumped in the year
 *   -> specific_energy_kWhm3     energy for each volume, mean of the year
 *   -> least_speed_ratio         lowest speed over full speed; 1 without speed control
 *
 *   Equation: E = sum(P_el,j t_j), as in duty_profile_energy with H_j in place of H_s + k Q_j^2
 *   Must hold of heads: there must be as many heads as flows
 *   Must hold of efficiencies: there must be as many efficiencies as flows
 *   Must hold of profile_heads: there must be as many heads as flows of the profile
 *   Must hold of hours: there must be as many hours as flows of the profile
 *   Must hold of hours: the hours must add up to at most a year, 8784 h
 *   Must hold of profile_flows: the profile must pump something: give at least one flow above 0 with hours above 0
 *   Source: as for duty_profile_energy: energy balance at the meeting of pump and system, losses of motor and converter
 *           at part load
 *   Caution: Give the system's head and not the pump's: what a throttle valve wastes is found here.
 *   Caution: Speed: the pump's efficiency is taken as unchanged along the similarity parabola, the affinity laws down to
 *            a quarter of the speed.
 *   Caution: Mind the least speed of the motor's cooling, the seal and the bearings, and the pump's least flow when
 *            throttled.
 */
CUTWATER_API cutwater_status cutwater_energy_by_profile_heads(const double *flows_m3h, size_t flows_m3h_count,
                                                 const double *heads_m, size_t heads_m_count,
                                                 const double *efficiencies, size_t efficiencies_count,
                                                 const double *profile_flows_m3h, size_t profile_flows_m3h_count,
                                                 const double *profile_heads_m, size_t profile_heads_m_count,
                                                 const double *hours_h, size_t hours_h_count, const char *control,
                                                 double motor_rating_kW, double motor_efficiency, double density_kgm3,
                                                 double drive_efficiency, double constant_loss_share,
                                                 double *energy_kWh, double *volume_m3, double *specific_energy_kWhm3,
                                                 double *least_speed_ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_energy_by_profile_heads_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                      const double *heads_m, size_t heads_m_count,
                                                      const double *efficiencies, size_t efficiencies_count,
                                                      const double *profile_flows_m3h, size_t profile_flows_m3h_count,
                                                      const double *profile_heads_m, size_t profile_heads_m_count,
                                                      const double *hours_h, size_t hours_h_count,
                                                      const char *control, cutwater_column motor_rating_kW,
                                                      cutwater_column motor_efficiency, cutwater_column density_kgm3,
                                                      cutwater_column drive_efficiency,
                                                      cutwater_column constant_loss_share,
                                                      cutwater_result_column energy_kWh,
                                                      cutwater_result_column volume_m3,
                                                      cutwater_result_column specific_energy_kWhm3,
                                                      cutwater_result_column least_speed_ratio,
                                                      cutwater_rows_report *report);

/*
 * Where the rated point lies against best efficiency, and what the distance costs.
 *
 *   flows_m3h                    flows of the curve's points; a series of at least 3 points, rising; each at least 0
 *                                m3/h
 *   efficiencies                 efficiencies of the curve's points; a series of at least 3 points; each from 0 to 1
 *   rated_flow_m3h               rated flow; between the first and the last point; at least 0 m3/h
 *   -> flow_ratio                rated flow over best efficiency flow
 *   -> best_flow_m3h             best efficiency flow
 *   -> efficiency                efficiency at the rated flow
 *   -> efficiency_lost           how much less than the best
 *
 *   Equation: Q_r/Q_BEP, Q_BEP as in best_efficiency_flow
 *   Must hold of efficiencies: both series must have the same number of points
 *   Source: best efficiency point by ISO 17769-1:2012 (from memory of it); the parabola is common practice
 *   Caution: API 610 wants the rated flow within 80 to 110 % of the best efficiency flow of the pump as furnished
 *            (secondary excerpt read); other standards differ: see standard_limit and operating_region.
 *   Caution: A calculated margin moves the rated point away from where the plant will run: look at the normal flow too.
 */
CUTWATER_API cutwater_status cutwater_rated_against_best(const double *flows_m3h, size_t flows_m3h_count,
                                            const double *efficiencies, size_t efficiencies_count,
                                            double rated_flow_m3h, double *flow_ratio, double *best_flow_m3h,
                                            double *efficiency, double *efficiency_lost, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_rated_against_best_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                 const double *efficiencies, size_t efficiencies_count,
                                                 cutwater_column rated_flow_m3h, cutwater_result_column flow_ratio,
                                                 cutwater_result_column best_flow_m3h,
                                                 cutwater_result_column efficiency,
                                                 cutwater_result_column efficiency_lost, cutwater_rows_report *report);

/*
 * Greatest power along a pump's curve, to be held against the motor.
 *
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   powers_kW                    power inputs of the curve's points; a series of at least 2 points; each at least 0 kW
 *   -> power_kW                  greatest power input
 *   -> flow_m3h                  where it is taken
 *   -> place                     at its end: the power may go on rising beyond, at a larger flow
 *
 *   Equation: P_max = max(P_i): curve_power passes no point's power between the points
 *   Must hold of powers: both series must have the same number of points
 *   Source: definition; the curve between its points as in curve_power
 *   Caution: At the density and viscosity, the speed and diameter that the curve is for: power grows with the density
 *            and the cube of the speed.
 *   Caution: A pump whose power still rises at the end of its curve overloads its motor when the system takes more than
 *            was thought: line broken, valve wide open, one pump of several.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_greatest_power_on_curve(const double *flows_m3h, size_t flows_m3h_count,
                                                 const double *powers_kW, size_t powers_kW_count, double *power_kW,
                                                 double *flow_m3h, const char **place, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_greatest_power_on_curve_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                      const double *powers_kW, size_t powers_kW_count,
                                                      cutwater_result_column power_kW,
                                                      cutwater_result_column flow_m3h, cutwater_result_column place,
                                                      cutwater_rows_report *report);

/*
 * Speed below which a pump delivers nothing against the static head.
 *
 *   shutoff_head_m               head at closed valve, flow 0, at the known speed; above 0 up to 20000 m
 *   speed_rpm                    speed at which the point is known; above 0 up to 100000 1/min
 *   static_head_m                head of the system at no flow, the greatest that occurs; from 0 to 20000 m
 *   -> least_speed_rpm           speed at which delivery begins
 *
 *   Equation: n_min = n sqrt(H_s/H_0)
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25
 *           to 2: set here
 *   Caution: The pump must run well above it: near it the flow is below the least that heating and steady running
 *            permit, and the non-return valve chatters.
 *   Caution: Above the speed at which the pump was rated its pressure grows with the square and its power with the cube
 *            of the speed: stay within the pump maker's greatest speed, the pressure ratings of casing, seal and
 *            flanges, the motor's rating and the rotor's limits, whatever this gives.
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 */
CUTWATER_API cutwater_status cutwater_least_speed_against_static_head(double shutoff_head_m, double speed_rpm,
                                                         double static_head_m, double *least_speed_rpm,
                                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_least_speed_against_static_head_rows(size_t rows, cutwater_column shutoff_head_m,
                                                              cutwater_column speed_rpm,
                                                              cutwater_column static_head_m,
                                                              cutwater_result_column least_speed_rpm,
                                                              cutwater_rows_report *report);

/*
 * Greatest flow at which NPSH available still covers NPSH3 and a margin.
 *
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   npsh3_values_m               NPSH3 of the curve's points; a series of at least 2 points; each from 0 to 20000 m
 *   npsh_at_rest_m               net positive suction head available at no flow: npsh_available without friction; from
 *                                -20000 to 20000 m
 *   suction_resistance_h2m5      losses of the suction line over the square of the flow, its entry included; from 0 to
 *                                1000000000 h2/m5
 *   margin_m                     NPSH to be left above NPSH3; from 0 to 20000 m
 *   -> flow_m3h                  greatest flow
 *   -> npsh_m                    NPSH available there
 *
 *   Equation: NPSHA_0 - k_s Q^2 = NPSH3(Q) + m; all meetings over the curve's range are looked for
 *   Must hold of npsh3_values: both series must have the same number of points
 *   Source: ISO 17769-1:2012, NPSH available and NPSH3 (from memory of it); the curve between its points as in
 *           curve_npsh3
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: NPSH datum: the centre of the circle through the outermost points of the leading edges of the first-stage
 *            impeller's vanes. Measure elevations from there, or add the shift.
 *   Caution: The level falls and the liquid warms while plant runs: take the worst of both.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_greatest_flow_by_suction(const double *flows_m3h, size_t flows_m3h_count,
                                                  const double *npsh3_values_m, size_t npsh3_values_m_count,
                                                  double npsh_at_rest_m, double suction_resistance_h2m5,
                                                  double margin_m, double *flow_m3h, double *npsh_m,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_greatest_flow_by_suction_rows(size_t rows, const double *flows_m3h, size_t flows_m3h_count,
                                                       const double *npsh3_values_m, size_t npsh3_values_m_count,
                                                       cutwater_column npsh_at_rest_m,
                                                       cutwater_column suction_resistance_h2m5,
                                                       cutwater_column margin_m, cutwater_result_column flow_m3h,
                                                       cutwater_result_column npsh_m, cutwater_rows_report *report);

/*
 * Greatest flow at which NPSH available, given by points, still covers NPSH3 and a margin.
 *
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   npsh3_values_m               NPSH3 of the curve's points; a series of at least 2 points; each from 0 to 20000 m
 *   system_flows_m3h             flows of the system curve's points; a series of at least 2 points, rising; each at
 *                                least 0 m3/h
 *   npsh_values_m                net positive suction head available at the system's flows; a series of at least 2
 *                                points; each from -20000 to 20000 m
 *   margin_m                     NPSH to be left above NPSH3; from 0 to 20000 m
 *   -> flow_m3h                  greatest flow
 *   -> npsh_m                    NPSH available there
 *
 *   Equation: NPSHA(Q) = NPSH3(Q) + m; all meetings over the flows that both cover are looked for
 *   Must hold of npsh3_values: both series must have the same number of points
 *   Must hold of npsh_values: both series must have the same number of points
 *   Source: ISO 17769-1:2012, NPSH available and NPSH3 (from memory of it); the curves between their points as in
 *           curve_npsh3
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: NPSH datum: the centre of the circle through the outermost points of the leading edges of the first-stage
 *            impeller's vanes. Measure elevations from there, or add the shift.
 *   Caution: In a laminar suction line the loss rises with the flow and with the viscosity: take the coldest liquid for
 *            the loss and the warmest for the vapour pressure.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_greatest_flow_by_suction_points(const double *flows_m3h, size_t flows_m3h_count,
                                                         const double *npsh3_values_m, size_t npsh3_values_m_count,
                                                         const double *system_flows_m3h,
                                                         size_t system_flows_m3h_count, const double *npsh_values_m,
                                                         size_t npsh_values_m_count, double margin_m,
                                                         double *flow_m3h, double *npsh_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_greatest_flow_by_suction_points_rows(size_t rows, const double *flows_m3h,
                                                              size_t flows_m3h_count, const double *npsh3_values_m,
                                                              size_t npsh3_values_m_count,
                                                              const double *system_flows_m3h,
                                                              size_t system_flows_m3h_count,
                                                              const double *npsh_values_m, size_t npsh_values_m_count,
                                                              cutwater_column margin_m,
                                                              cutwater_result_column flow_m3h,
                                                              cutwater_result_column npsh_m,
                                                              cutwater_rows_report *report);

/*
 * Greatest speed at which a pump of a given suction specific speed keeps its NPSH3 within what there is.
 *
 *   flow_m3h                     the pump's whole flow at best efficiency, full diameter; above 0 m3/h
 *   npsh3_m                      greatest NPSH3 permitted: NPSH available less the margin; above 0 up to 20000 m
 *   suction_specific_speed       suction specific speed at best efficiency in 1/min, m3/s, m, per eye, of the pump
 *                                maker; unknown, the lower is the safe side: ordinary pumps have 150 to 200; from 50 to
 *                                1000
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; a whole number
 *                                from 1 to 2; 1 if left out
 *   -> speed_rpm                 greatest speed of rotation
 *
 *   Equation: n = n_ss NPSH3^(3/4)/sqrt(Q/i); n in 1/min, Q in m3/s, NPSH3 in m
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read), solved for the
 *           speed
 *   Caution: Common practice looks for at most about 213 (11 000 in US units): a pump of more draws deeper near best
 *            efficiency and has a narrower range of steady flow. Where the pump is not known 213 flatters: at 165 (8500
 *            in US units, common practice) NPSH3 is 1.4 times, the permitted speed 0.77 times as much.
 *   Caution: An estimate for best efficiency flow: NPSH3 of a pump is what its maker tested.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_greatest_speed_by_suction(double flow_m3h, double npsh3_m, double suction_specific_speed,
                                                   double eyes, double *speed_rpm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_greatest_speed_by_suction_rows(size_t rows, cutwater_column flow_m3h,
                                                        cutwater_column npsh3_m,
                                                        cutwater_column suction_specific_speed, cutwater_column eyes,
                                                        cutwater_result_column speed_rpm,
                                                        cutwater_rows_report *report);

/*
 * NPSH3 to be expected of a pump of a given suction specific speed.
 *
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   flow_m3h                     the pump's whole flow at best efficiency, full diameter; above 0 m3/h
 *   suction_specific_speed       suction specific speed at best efficiency in 1/min, m3/s, m, per eye, of the pump
 *                                maker; unknown, the lower is the safe side: ordinary pumps have 150 to 200; from 50 to
 *                                1000
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; a whole number
 *                                from 1 to 2; 1 if left out
 *   -> npsh3_m                   NPSH3 to be expected at best efficiency flow
 *
 *   Equation: NPSH3 = (n sqrt(Q/i)/n_ss)^(4/3); n in 1/min, Q in m3/s, NPSH3 in m
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read), solved for
 *           NPSH3
 *   Caution: Common practice looks for at most about 213 (11 000 in US units): a pump of more draws deeper near best
 *            efficiency and has a narrower range of steady flow. Where the pump is not known 213 flatters: at 165 (8500
 *            in US units, common practice) NPSH3 is 1.4 times, the permitted speed 0.77 times as much.
 *   Caution: An estimate for best efficiency flow: NPSH3 of a pump is what its maker tested.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_npsh3_expected(double speed_rpm, double flow_m3h, double suction_specific_speed, double eyes,
                                        double *npsh3_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh3_expected_rows(size_t rows, cutwater_column speed_rpm, cutwater_column flow_m3h,
                                             cutwater_column suction_specific_speed, cutwater_column eyes,
                                             cutwater_result_column npsh3_m, cutwater_rows_report *report);

/*
 * Pressure of a vessel of boiling water over time once its heating steam fails and cold water still comes in.
 *
 *   times_s                      times since the steam failed; a series of at least 1 point; each at least 0 s
 *   first_pressure_bara          pressure in the vessel before; from 0.02 to 100 bara
 *   stored_volume_m3             boiling water in the vessel, its level held; above 0 m3
 *   feed_flow_m3h                cold water that comes in, as much as goes out; above 0 m3/h
 *   feed_temperature_degC        temperature of the cold water; from 0 to 300 degC
 *   -> temperatures_degC         temperatures in the vessel
 *   -> pressures_bara            pressures in the vessel: for npsh_in_pressure_decay
 *   -> time_constant_s           time in which the difference falls to 37 %
 *
 *   Equation: T = T_c + (T_0 - T_c) e^(-t/tau), tau = V/Q; T_0 and p on the saturation line
 *   Must hold of feed_temperature: it must be colder than the boiling water in the vessel
 *   Source: heat balance of a well mixed vessel, one specific heat; saturation line: IAPWS-IF97, region 4. Articles of a
 *           power engineers' magazine on deaerators tell the event (excerpts read)
 *   Caution: Water alone, and all of it mixed at once. A balance by enthalpies gives up to 2 % more pressure. But cold
 *            water that reaches only the spray zone pulls the pressure down faster at first. The metal's heat and the
 *            flashing water, left out, slow it down.
 *   Caution: For npsh_in_pressure_decay give times closer together than the suction line's time, at first above all:
 *            wide steps hide the steepest fall and flatter.
 *   Caution: Steam that still comes, or a blanket of gas, holds the pressure up; do not count on it.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_deaerator_decay(const double *times_s, size_t times_s_count, double first_pressure_bara,
                                         double stored_volume_m3, double feed_flow_m3h, double feed_temperature_degC,
                                         double *temperatures_degC, size_t temperatures_degC_capacity,
                                         size_t *temperatures_degC_count, double *pressures_bara,
                                         size_t pressures_bara_capacity, size_t *pressures_bara_count,
                                         double *time_constant_s, cutwater_refusal *refusal);

/*
 * Least NPSH available while a boiling vessel loses its pressure and the suction line still holds hot liquid.
 *
 *   times_s                      times of the vessel's pressures, from the beginning of the fall on; a series of at
 *                                least 2 points, rising; each at least 0 s
 *   vessel_pressures_bara        pressures in the vessel, its liquid boiling all the while; a series of at least 2
 *                                points; each above 0 up to 500 bara
 *   liquid_level_m               lowest surface above the pump's NPSH datum; from -20000 to 20000 m
 *   friction_head_m              losses of the suction line at that flow; from 0 to 20000 m
 *   line_volume_m3               volume of the suction line from the vessel to the pump; above 0 m3
 *   flow_m3h                     flow through the line meanwhile: the least of it keeps the hot liquid longest; above 0
 *                                m3/h
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   -> least_npsh_m              least net positive suction head available
 *   -> at_time_s                 when it is least, for the first time
 *   -> line_time_s               time that the liquid takes from the vessel to the pump
 *
 *   Equation: NPSHA(t) = z - h_f + [p(t) - p(t - tau)]/(rho g), tau = V/Q; p straight between the points
 *   Must hold of vessel_pressures: both series must have the same number of points
 *   Source: the liquid at the pump has the vapour pressure of the vessel a line's time ago: articles of a power
 *           engineers' magazine on deaerators (excerpts read); definition of NPSH as in npsh_available
 *   Caution: Flow that stops or falls meanwhile leaves hot liquid in the line for longer: take the least flow of the
 *            event.
 *   Caution: The vessel's pressure over time comes from a heat balance or a measurement; a relief valve or cold make-up
 *            makes it fall faster. Heat held by the pipe's wall and mixing in the line are left out.
 *   Caution: Give points closer together than the line's time where the pressure falls fastest, mostly at first: a
 *            straight line over a longer step hides the steepest fall and flatters.
 *   Caution: A negative result is a true answer: the liquid boils before it reaches the pump, and nothing can be pumped
 *            as drawn.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_npsh_in_pressure_decay(const double *times_s, size_t times_s_count,
                                                const double *vessel_pressures_bara,
                                                size_t vessel_pressures_bara_count, double liquid_level_m,
                                                double friction_head_m, double line_volume_m3, double flow_m3h,
                                                double density_kgm3, double *least_npsh_m, double *at_time_s,
                                                double *line_time_s, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh_in_pressure_decay_rows(size_t rows, const double *times_s, size_t times_s_count,
                                                     const double *vessel_pressures_bara,
                                                     size_t vessel_pressures_bara_count,
                                                     cutwater_column liquid_level_m, cutwater_column friction_head_m,
                                                     cutwater_column line_volume_m3, cutwater_column flow_m3h,
                                                     cutwater_column density_kgm3,
                                                     cutwater_result_column least_npsh_m,
                                                     cutwater_result_column at_time_s,
                                                     cutwater_result_column line_time_s, cutwater_rows_report *report);

/*
 * NPSH3 curve of a pump at another speed.
 *
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   npsh3_values_m               NPSH3 of the curve's points; a series of at least 2 points; each from 0 to 20000 m
 *   speed_rpm                    speed at which the point is known; above 0 up to 100000 1/min
 *   new_speed_rpm                speed asked about; above 0 up to 100000 1/min
 *   exponent                     1 to 2, as agreed or tested; 0: the cautious one, 1.3 when slowing down and 2 when
 *                                speeding up; from 0 to 2; 0 if left out
 *   -> new_flows_m3h             flows at the new speed
 *   -> new_npsh3_values_m        NPSH3 at the new speed
 *
 *   Equation: Q' = Q n'/n; NPSH3' = NPSH3 (n'/n)^x; x not given: 1.3 for n' < n, 2 for n' > n
 *   Must hold of npsh3_values: both series must have the same number of points
 *   Must hold of new_speed: the new speed must be 0.25 to 2 times the speed: beyond that the affinity laws are not
 *                           relied upon here
 *   Must hold of exponent: it must be 0, for the cautious one, or from 1 to 2
 *   Source: the relations of flow_at_speed and npsh3_at_speed, point by point: see there
 *   Caution: The square flatters when slowing down; tests lie between 1.3 and 2.
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
CUTWATER_API cutwater_status cutwater_npsh3_curve_at_speed(const double *flows_m3h, size_t flows_m3h_count,
                                              const double *npsh3_values_m, size_t npsh3_values_m_count,
                                              double speed_rpm, double new_speed_rpm, double exponent,
                                              double *new_flows_m3h, size_t new_flows_m3h_capacity,
                                              size_t *new_flows_m3h_count, double *new_npsh3_values_m,
                                              size_t new_npsh3_values_m_capacity, size_t *new_npsh3_values_m_count,
                                              cutwater_refusal *refusal);

/*
 * Efficiency curve of a pump at another speed, each point's efficiency taken as unchanged.
 *
 *   flows_m3h                    flows of the curve's points; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   efficiencies                 efficiencies of the curve's points; a series of at least 2 points; each from 0 to 1
 *   speed_rpm                    speed at which the point is known; above 0 up to 100000 1/min
 *   new_speed_rpm                speed asked about; above 0 up to 100000 1/min
 *   -> new_flows_m3h             flows at the new speed
 *   -> same_efficiencies         efficiencies there, unchanged
 *
 *   Equation: Q' = Q n'/n; eta' = eta
 *   Must hold of efficiencies: both series must have the same number of points
 *   Must hold of new_speed: the new speed must be 0.25 to 2 times the speed: beyond that the affinity laws are not
 *                           relied upon here
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25
 *           to 2: set here
 *   Caution: At low speed the true efficiency is lower: friction in bearings and seals does not fall with the cube of
 *            the speed, and the Reynolds number falls.
 *   Caution: The affinity laws scale a pump's curve, not a system's duty: with static head the new duty is where the
 *            scaled curve meets the system curve.
 *   Caution: ISO 9906 converts test results within 50 to 120 % of the speed (80 to 120 % for efficiency and NPSH; from
 *            memory of it): further away the efficiency shifts and the result is an estimate.
 */
CUTWATER_API cutwater_status cutwater_efficiency_curve_at_speed(const double *flows_m3h, size_t flows_m3h_count,
                                                   const double *efficiencies, size_t efficiencies_count,
                                                   double speed_rpm, double new_speed_rpm, double *new_flows_m3h,
                                                   size_t new_flows_m3h_capacity, size_t *new_flows_m3h_count,
                                                   double *same_efficiencies, size_t same_efficiencies_capacity,
                                                   size_t *same_efficiencies_count, cutwater_refusal *refusal);

/*
 * NPSH3 curve with a trimmed impeller, between two diameters for which the pump maker shows it.
 *
 *   flows_m3h                    flows of the points, the same for both curves: flow does not scale here; a series of at
 *                                least 2 points, rising; each at least 0 m3/h
 *   npsh3_at_greatest_m          NPSH3 at those flows with the greatest diameter; a series of at least 2 points; each
 *                                from 0 to 20000 m
 *   greatest_diameter_mm         greatest diameter that the maker shows; from 10 to 10000 mm
 *   npsh3_at_least_m             NPSH3 at the same flows with the least diameter; the other one's again where the maker
 *                                shows one curve for all diameters; a series of at least 2 points; each from 0 to 20000
 *                                m
 *   least_diameter_mm            least diameter that the maker shows; from 5 to 10000 mm
 *   trimmed_diameter_mm          diameter after the cut; from 5 to 10000 mm
 *   -> same_flows_m3h            flows, unchanged
 *   -> npsh3_values_m            NPSH3 there with the trimmed impeller
 *
 *   Equation: NPSH3' = NPSH3_D + (NPSH3_d - NPSH3_D)(D - D')/(D - d) at each flow
 *   Must hold of npsh3_at_greatest: both series must have the same number of points
 *   Must hold of npsh3_at_least: both series must have the same number of points
 *   Must hold of least_diameter: it must be less than the greatest diameter
 *   Must hold of trimmed_diameter: it must lie between the two diameters for which NPSH3 is known: nothing is told
 *                                  beyond them
 *   Source: straight line between two tested diameters, point by point; common practice. That NPSH3 at one flow and
 *           speed hardly changes with a small trim, since the inlet stays as it is, and why it may rise: a trade
 *           newsletter of 2006 (excerpt read); a rise of 0.5 m between two diameters of one pump: a trade page (read)
 *   Caution: NPSH3 does not follow the affinity laws in a trim: never scale it with head or flow.
 *   Caution: NPSH3 does not fall with the trim: at the same flow it stays or rises, the more the deeper the cut, and no
 *            published rule predicts it. Ask for the curve of the trimmed impeller; between two known diameters see
 *            npsh3_at_trim.
 *   Caution: Where a suction test of the full diameter is at hand: the cavities cost the trimmed impeller about the same
 *            head, which is a larger part of its own; npsh3_from_test with a drop of 0.03 (D'/D)^2 gives the NPSH at
 *            which that is 3 % (own reasoning after that newsletter).
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_npsh3_curve_at_trim(const double *flows_m3h, size_t flows_m3h_count,
                                             const double *npsh3_at_greatest_m, size_t npsh3_at_greatest_m_count,
                                             double greatest_diameter_mm, const double *npsh3_at_least_m,
                                             size_t npsh3_at_least_m_count, double least_diameter_mm,
                                             double trimmed_diameter_mm, double *same_flows_m3h,
                                             size_t same_flows_m3h_capacity, size_t *same_flows_m3h_count,
                                             double *npsh3_values_m, size_t npsh3_values_m_capacity,
                                             size_t *npsh3_values_m_count, cutwater_refusal *refusal);

/*
 * Efficiency curve of a pump with its impeller trimmed.
 *
 *   flows_m3h                    flows of the curve's points at full diameter; a series of at least 2 points, rising;
 *                                each at least 0 m3/h
 *   efficiencies                 efficiencies of the curve's points at full diameter; a series of at least 2 points;
 *                                each from 0 to 1
 *   diameter_mm                  full diameter, at which the point is known; from 10 to 10000 mm
 *   trimmed_diameter_mm          diameter after the cut; from 5 to 10000 mm
 *   efficiency_loss              best efficiency lost over the part cut off: 0.2 takes two points off for a cut of 10 %;
 *                                0 for cuts up to 3 % and a type number up to 1; from 0 to 1
 *   trim_law                     similarity line of the cut: parabola for the exponents (1, 2, 3) of flow, head and
 *                                power, line for (2, 2, 4); "parabola" or "line"; "parabola" if left out
 *   -> trimmed_flows_m3h         flows at the trimmed diameter
 *   -> trimmed_efficiencies      efficiencies there
 *   -> lost                      what the best point lost
 *
 *   Equation: Q' = Q (D'/D)^1 or ^2; eta' = eta (1 - d eta/eta_max), d eta = eps (1 - D'/D); eta_max: the highest point
 *   Must hold of efficiencies: both series must have the same number of points
 *   Must hold of trimmed_diameter: the trimmed diameter must be at most the full diameter: an impeller is cut, not grown
 *   Must hold of trimmed_diameter: the trimmed diameter must be at least 0.7 of the full diameter, the limit set here
 *                                  for the trim laws
 *   Source: unchanged up to a cut of 3 % and a type number of 1: ISO 9906:2012 (as a trade encyclopaedia tells it,
 *           excerpt read); that it falls: Hydraulic Institute, Engineering Data Book (text of 2026, read); eps of 0.15
 *           to 0.25 for volutes, 0.4 to 0.5 for diffusers: J. F. Guelich, Centrifugal Pumps (from memory of it)
 *   Caution: The loss is an input because no rule foretells it: it grows with the specific speed and with the gap to the
 *            casing. Without a test take the greater value.
 *   Caution: Trim laws are approximate: the Hydraulic Institute's Engineering Data Book (text of 2026, read) takes them
 *            for cuts within 5 % of the diameter only, and below about 80 % they depart far. Have the trim confirmed by
 *            the pump maker.
 *   Caution: Two sets of exponents are in use for flow, head and power: (1, 2, 3) and (2, 2, 4), the second for radial
 *            impellers whose outlet width stays. Take all three from one set; the defaults are the first. The second
 *            predicts less flow and power after the cut.
 */
CUTWATER_API cutwater_status cutwater_efficiency_curve_at_trim(const double *flows_m3h, size_t flows_m3h_count,
                                                  const double *efficiencies, size_t efficiencies_count,
                                                  double diameter_mm, double trimmed_diameter_mm,
                                                  double efficiency_loss, const char *trim_law,
                                                  double *trimmed_flows_m3h, size_t trimmed_flows_m3h_capacity,
                                                  size_t *trimmed_flows_m3h_count, double *trimmed_efficiencies,
                                                  size_t trimmed_efficiencies_capacity,
                                                  size_t *trimmed_efficiencies_count, double *lost,
                                                  cutwater_refusal *refusal);

/*
 * Share of free gas in a liquid at another pressure, the temperature the same.
 *
 *   gas_share                    free gas over the whole mixture, by volume at the first pressure; from 0 to below 1
 *   pressure_bara                pressure at which the share is known; above 0 up to 500 bara
 *   new_pressure_bara            pressure asked about; above 0 up to 500 bara
 *   -> new_share                 free gas over the whole mixture at that pressure
 *
 *   Equation: alpha' = alpha (p/p')/(alpha (p/p') + 1 - alpha)
 *   Source: Boyle's law; any textbook
 *   Caution: Gas that dissolves or comes out of solution meanwhile is left out, and so is the vapour's own part of the
 *            pressure.
 */
CUTWATER_API cutwater_status cutwater_gas_share_at_pressure(double gas_share, double pressure_bara, double new_pressure_bara,
                                               double *new_share, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_gas_share_at_pressure_rows(size_t rows, cutwater_column gas_share,
                                                    cutwater_column pressure_bara, cutwater_column new_pressure_bara,
                                                    cutwater_result_column new_share, cutwater_rows_report *report);

/*
 * NPSH3 with a little free gas at the inlet, from that on gas-free liquid.
 *
 *   npsh3_m                      NPSH3 on gas-free liquid at the same flow; above 0 up to 20000 m
 *   gas_share                    free gas over the whole mixture, by volume at the inlet; from 0 to 0.02
 *   rise                         rise for each per cent of gas: 0.5 is half of NPSH3; from 0 to 2; 0.5 if left out
 *   -> npsh3_with_gas_m          NPSH3 with the gas
 *
 *   Equation: NPSH3' = NPSH3 (1 + c alpha/1 %)
 *   Source: US Nuclear Regulatory Commission, Regulatory Guide 1.82, air ingestion up to 2 % by volume, 0.5 (from memory
 *           of it; the text could not be read)
 *   Caution: By volume at the pump's inlet, where the gas is largest: a share measured at another pressure goes through
 *            gas_share_at_pressure first.
 *   Caution: Gas gathers in the impeller's eye, most at low flow and with a small margin of NPSH: a pump that starts
 *            with it may lose its prime. Open impellers and inducers bear more, closed ones of low specific speed less.
 *   Caution: Gas dissolved in the liquid comes out at low pressure and adds to it.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_npsh3_with_gas(double npsh3_m, double gas_share, double rise, double *npsh3_with_gas_m,
                                        cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh3_with_gas_rows(size_t rows, cutwater_column npsh3_m, cutwater_column gas_share,
                                             cutwater_column rise, cutwater_result_column npsh3_with_gas_m,
                                             cutwater_rows_report *report);

/*
 * Head that a pump may fall to with free gas at its inlet: a cautious guide.
 *
 *   head_m                       head on gas-free liquid at the same flow; from 0 to 20000 m
 *   gas_share                    free gas over the whole mixture, by volume at the inlet; from 0 to 0.04
 *   -> head_with_gas_m           head that it may fall to
 *   -> ratio                     share of the performance that is left
 *
 *   Equation: H' = H r; r straight between 1, 0.88 and 0.60 at 0, 2 and 4 % of gas
 *   Source: a pump trader's guide: 2 % of air can cost 12 % of the performance, 4 % cost 40 %, and at 10 % the pump
 *           likely stalls (read); a care manual's 10 % of capacity lost at 2 % (as two trade pages quote it, read)
 *   Caution: A guide for ordinary pumps with closed impellers, and a cautious one: tests on large pumps near best
 *            efficiency found little loss up to 2 % (NUREG/CR-2792, from memory). Single pumps scatter widely.
 *   Caution: Beyond 4 % no answer is given: the pump may stop delivering. Keep the gas out: submergence, return lines
 *            below the level, tight glands.
 *   Caution: By volume at the pump's inlet, where the gas is largest: a share measured at another pressure goes through
 *            gas_share_at_pressure first.
 *   Caution: Gas gathers in the impeller's eye, most at low flow and with a small margin of NPSH: a pump that starts
 *            with it may lose its prime. Open impellers and inducers bear more, closed ones of low specific speed less.
 *   Caution: Gas at the shaft seal runs it dry; that of a toxic liquid leaks then.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_head_with_gas(double head_m, double gas_share, double *head_with_gas_m, double *ratio,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_head_with_gas_rows(size_t rows, cutwater_column head_m, cutwater_column gas_share,
                                            cutwater_result_column head_with_gas_m, cutwater_result_column ratio,
                                            cutwater_rows_report *report);

/*
 * Torque that a pump takes on its way up to speed, its discharge valve closed or open against the static head.
 *
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the pump curve's points, falling; a series of at least 2 points; each from
 *                                -20000 to 20000 m
 *   powers_kW                    power inputs of those points; a series of at least 2 points; each at least 0 kW
 *   speed_rpm                    full speed, at which the curves hold; above 0 up to 100000 1/min
 *   speed_ratios                 parts of the full speed asked about; a series of at least 1 point; each from 0 to 1
 *   static_head_m                head of the system at no flow; it keeps the non-return valve shut at first; from 0 to
 *                                20000 m
 *   resistance_h2m5              system resistance: friction head over flow squared; from 0 to 1000000000 h2/m5
 *   breakaway_torque_Nm          torque that sets the rotor turning, of seals, bearings and packing: 0.10 to 0.25 of
 *                                rated is usual; from 0 to 10000000 N m
 *   discharge_valve              closed: it is opened at full speed; open: the pump delivers as soon as its head exceeds
 *                                the static head; "closed" or "open"; "open" if left out
 *   breakaway_end                speed ratio at which sticking friction has gone; above 0 up to 1; 0.15 if left out
 *   -> torques_Nm                torques that the pump takes at those speeds
 *   -> passing_flows_m3h         flows that pass at those speeds
 *
 *   Equation: T = max[r^2 P(x)/(2 pi n), T_b (1 - r/r_b)], Q = r x; x = 0 while r^2 H(0) <= H_s or with the valve
 *             closed, else H(x) = H_s/r^2 + k x^2 on the curves at full speed
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of powers: both series must have the same number of points
 *   Must hold of heads: the head must fall from point to point: on a drooping curve the flow at one head is not one;
 *                       give the falling part from closed valve on
 *   Must hold of flows: the curve must begin at closed valve, flow 0
 *   Source: affinity laws; that the torque follows the line of no flow until the speed overcomes the static head and
 *           rises to the system's then: an engineers' forum on a handbook's figure (read); breakaway common practice
 *   Caution: The powers must be those of the liquid that is there at the start: they grow with its density, and with its
 *            viscosity when it is cold.
 *   Caution: Flow is taken as it would be in steady running: the inertia of a long line's liquid keeps it lower while
 *            the motor runs up, and the torque nearer to that of the closed valve.
 *   Caution: A pump of high specific speed takes more at closed valve than at its duty: start that one against an open
 *            valve.
 *   Caution: An empty line gives no resistance at first: the flow runs to the end of the curve and beyond.
 *   Caution: Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.
 *   Caution: Never reach into a guard or touch a coupling while the machine can turn or start: isolate and lock it
 *            first.
 */
CUTWATER_API cutwater_status cutwater_starting_torque_curve(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                               size_t heads_m_count, const double *powers_kW, size_t powers_kW_count,
                                               double speed_rpm, const double *speed_ratios,
                                               size_t speed_ratios_count, double static_head_m,
                                               double resistance_h2m5, double breakaway_torque_Nm,
                                               const char *discharge_valve, double breakaway_end, double *torques_Nm,
                                               size_t torques_Nm_capacity, size_t *torques_Nm_count,
                                               double *passing_flows_m3h, size_t passing_flows_m3h_capacity,
                                               size_t *passing_flows_m3h_count, cutwater_refusal *refusal);

/*
 * Time that a motor needs to bring a pump up to speed, the load's torque given speed by speed.
 *
 *   speeds_rpm                   speeds, from rest to the one that counts as reached; a series of at least 2 points,
 *                                rising; each from 0 to 100000 1/min
 *   motor_torques_Nm             motor torques at these speeds, at the voltage that the start leaves; a series of at
 *                                least 2 points; each from 0 to 10000000 N m
 *   load_torques_Nm              torques that the pump takes at these speeds: see starting_torque_curve; a series of at
 *                                least 2 points; each from 0 to 10000000 N m
 *   inertia_kgm2                 moment of inertia of motor, coupling and pump with its liquid, about the shaft; above 0
 *                                up to 1000000 kg m2
 *   -> time_s                    time from the first speed to the last
 *   -> least_spare_Nm            least torque left over for speeding up
 *
 *   Equation: t = J Integral domega/(T_m - T_l), T_m - T_l straight between the points
 *   Must hold of motor_torques: both series must have the same number of points
 *   Must hold of load_torques: both series must have the same number of points
 *   Must hold of speeds: they must begin at rest, at 0 1/min
 *   Source: moment of momentum
 *   Caution: Give points close together where the motor's torque has its saddle and its peak: between points it is taken
 *            as straight.
 *   Caution: The motor's torque falls with the square of the voltage: a weak supply, a star start or a soft starter may
 *            leave too little.
 *   Caution: Compare with the motor's permitted starting time, hot and cold, and the number of starts in a row.
 *   Caution: Never reach into a guard or touch a coupling while the machine can turn or start: isolate and lock it
 *            first.
 */
CUTWATER_API cutwater_status cutwater_run_up_time_on_torques(const double *speeds_rpm, size_t speeds_rpm_count,
                                                const double *motor_torques_Nm, size_t motor_torques_Nm_count,
                                                const double *load_torques_Nm, size_t load_torques_Nm_count,
                                                double inertia_kgm2, double *time_s, double *least_spare_Nm,
                                                cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_run_up_time_on_torques_rows(size_t rows, const double *speeds_rpm, size_t speeds_rpm_count,
                                                     const double *motor_torques_Nm, size_t motor_torques_Nm_count,
                                                     const double *load_torques_Nm, size_t load_torques_Nm_count,
                                                     cutwater_column inertia_kgm2, cutwater_result_column time_s,
                                                     cutwater_result_column least_spare_Nm,
                                                     cutwater_rows_report *report);

/*
 * NPSH3 from a test in which the NPSH is lowered at one flow until the head falls.
 *
 *   npsh_values_m                NPSH of the readings, rising, at one flow and speed; a series of at least 3 points,
 *                                rising; each from 0 to 20000 m
 *   heads_m                      total heads of those readings: of the first stage where there are several; a series of
 *                                at least 3 points; each from 0 to 20000 m
 *   full_head_m                  head without cavitation at that flow: the mean of the readings at high NPSH; above 0 up
 *                                to 20000 m
 *   drop                         head drop that counts; above 0 up to 0.1; 0.03 if left out
 *   -> npsh3_m                   NPSH at which the head has fallen by that part
 *   -> head_m                    head there
 *
 *   Equation: H(NPSH3) = (1 - d) H, between the readings as in curve_head
 *   Must hold of heads: both series must have the same number of points
 *   Source: ISO 9906:2012, NPSH test, 3 % of head of the first stage (from memory of it); interpolation as in
 *           curve_value
 *   Caution: Cavitation begins at a much higher NPSH than NPSH3 and may erode the impeller there: see npsh_margin.
 *   Caution: Bring all readings to one flow and one speed first: see test_to_rated_speed.
 *   Caution: Take the drop from the first stage's head: the same drop of a pump of several stages hides a deeper one.
 *   Caution: Gas that comes out of the water at low pressure lowers the head too: the test wants degassed liquid.
 */
CUTWATER_API cutwater_status cutwater_npsh3_from_test(const double *npsh_values_m, size_t npsh_values_m_count,
                                         const double *heads_m, size_t heads_m_count, double full_head_m, double drop,
                                         double *npsh3_m, double *head_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh3_from_test_rows(size_t rows, const double *npsh_values_m, size_t npsh_values_m_count,
                                              const double *heads_m, size_t heads_m_count,
                                              cutwater_column full_head_m, cutwater_column drop,
                                              cutwater_result_column npsh3_m, cutwater_result_column head_m,
                                              cutwater_rows_report *report);

/*
 * Whether a measured NPSH3 keeps the guaranteed one, its uncertainty counted against the pump.
 *
 *   npsh3_m                      measured, at the guaranteed flow and speed; above 0 up to 20000 m
 *   uncertainty_m                of the measurement, instruments and scatter together; from 0 to 20000 m
 *   guaranteed_npsh3_m           guaranteed at that flow; above 0 up to 20000 m
 *   -> verdict                   pass when even the most that it may be keeps the guarantee
 *   -> most_m                    the most that NPSH3 may be
 *   -> reserve_m                 what is left of the guarantee; negative: what is wanting
 *
 *   Equation: NPSH3 + e <= NPSH3_G
 *   Source: ISO 9906:2012, annex J (informative; read in the identical GOST ISO 9906-2015): no plus tolerance on NPSH;
 *           measuring uncertainty and scatter together must not let NPSH3 exceed what was agreed
 *   Caution: What the contract says of the NPSH test goes before this: the annex is informative.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_npsh3_verdict(double npsh3_m, double uncertainty_m, double guaranteed_npsh3_m,
                                       const char **verdict, double *most_m, double *reserve_m,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh3_verdict_rows(size_t rows, cutwater_column npsh3_m, cutwater_column uncertainty_m,
                                            cutwater_column guaranteed_npsh3_m, cutwater_result_column verdict,
                                            cutwater_result_column most_m, cutwater_result_column reserve_m,
                                            cutwater_rows_report *report);

/*
 * Two offers compared by what they cost over their lives.
 *
 *   purchase_1                   first offer: price with installation; at least 0
 *   energy_1_kWh                 first offer: energy a year, from the mains, at the duty profile; at least 0 kWh
 *   upkeep_1                     first offer: maintenance, downtime and all else a year; at least 0
 *   purchase_2                   second offer: price with installation; at least 0
 *   energy_2_kWh                 second offer: energy a year, at the same profile; at least 0 kWh
 *   upkeep_2                     second offer: maintenance, downtime and all else a year; at least 0
 *   price_per_kWh                price of a kilowatt-hour today; at least 0
 *   interest_rate                interest a year; from -0.2 to 1
 *   years                        years of life; a whole number from 1 to 60
 *   inflation_rate               rise of prices a year; from -0.2 to 1; 0 if left out
 *   energy_price_rise            rise of the energy price a year over and above inflation; from -0.2 to 1; 0 if left out
 *   -> better                    the offer that costs less over its life
 *   -> cost_1                    present value of the first offer's costs
 *   -> cost_2                    present value of the second offer's costs
 *   -> difference                what the second costs more; negative: less
 *
 *   Equation: LCC = C + F_e c E + F U; F = q + ... + q^n, q = (1 + p)/(1 + i); F_e the same with q (1 + p_e)
 *   Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs: A Guide to LCC Analysis
 *           for Pumping Systems, 2001 (from memory of it; the four results of its example come out to the unit)
 *   Caution: Exact compounding, payments at the ends of the years, as in the guide's own example. Interest less
 *            inflation taken for one rate gives a little less.
 *   Caution: All sums in one currency, at the prices of the same day.
 *   Caution: A difference smaller than the uncertainty of the hours, the efficiencies offered and the energy price
 *            decides nothing.
 *   Caution: Offers must be for the same duty profile, scope and life; efficiency is worth what its test tolerance
 *            leaves of it.
 */
CUTWATER_API cutwater_status cutwater_two_offers(double purchase_1, double energy_1_kWh, double upkeep_1, double purchase_2,
                                    double energy_2_kWh, double upkeep_2, double price_per_kWh, double interest_rate,
                                    double years, double inflation_rate, double energy_price_rise,
                                    const char **better, double *cost_1, double *cost_2, double *difference,
                                    cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_two_offers_rows(size_t rows, cutwater_column purchase_1, cutwater_column energy_1_kWh,
                                         cutwater_column upkeep_1, cutwater_column purchase_2,
                                         cutwater_column energy_2_kWh, cutwater_column upkeep_2,
                                         cutwater_column price_per_kWh, cutwater_column interest_rate,
                                         cutwater_column years, cutwater_column inflation_rate,
                                         cutwater_column energy_price_rise, cutwater_result_column better,
                                         cutwater_result_column cost_1, cutwater_result_column cost_2,
                                         cutwater_result_column difference, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

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
 *   heads_m                      heads of the pump curve's points; a series of at least 2 points; each a finite number
 *   efficiencies                 pump efficiencies at the curve's points; 0 at no flow; a series of at least 2 points;
 *                                each from 0 to 1
 *   npsh3_values_m               NPSH3 of the curve's points; a series of at least 2 points; each at least 0 m
 *   static_head_m                head of the system at no flow; a finite number
 *   resistance_h2m5              system resistance: friction head over flow squared; at least 0 h2/m5
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   npsh_at_rest_m               net positive suction head available at no flow: npsh_available without friction; a
 *                                finite number
 *   suction_resistance_h2m5      losses of the suction line over the square of the flow, its entry included; at least 0
 *                                h2/m5
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
 * Duty of one pump, or of equal pumps in parallel, on a system curve that is given by points.
 *
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the pump curve's points; a series of at least 2 points; each a finite number
 *   system_flows_m3h             flows of the system curve's points; a series of at least 2 points, rising; each at
 *                                least 0 m3/h
 *   system_heads_m               heads that the system asks for at those flows; a series of at least 2 points; each a
 *                                finite number
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
 *   heads_m                      heads of the pump curve's points, falling; a series of at least 2 points; each a finite
 *                                number
 *   static_head_m                head of the system at no flow; a finite number
 *   reference_flow_m3h           flow at which the friction heads are known; above 0 m3/h
 *   laminar_friction_head_m      friction head at that flow of what rises with the flow itself: laminar lines, filter
 *                                cakes, packed beds; at least 0 m
 *   turbulent_friction_head_m    friction head at that flow of what rises faster: turbulent lines, fittings, valves; at
 *                                least 0 m
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
 *   static_head_m                head of the system at no flow; a finite number
 *   reference_flow_m3h           flow at which the friction heads are known; above 0 m3/h
 *   laminar_friction_head_m      friction head at that flow of what rises with the flow itself: laminar lines, filter
 *                                cakes, packed beds; at least 0 m
 *   turbulent_friction_head_m    friction head at that flow of what rises faster: turbulent lines, fittings, valves; at
 *                                least 0 m
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
 * Energy of a year's duty profile on a system of any kind, its head given at each flow.
 *
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the curve's points; a series of at least 2 points; each a finite number
 *   efficiencies                 pump efficiencies at the curve's points; 0 at no flow; a series of at least 2 points;
 *                                each from 0 to 1
 *   profile_flows_m3h            flow wanted at each point of the duty profile; 0 while the pump stands still; a series
 *                                of at least 1 point; each at least 0 m3/h
 *   profile_heads_m              head that the system, its control valve open, asks for at that flow; a series of at
 *                                least 1 point; each a finite number
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
 *   shutoff_head_m               head at closed valve, flow 0, at the known speed; above 0 m
 *   speed_rpm                    speed at which the point is known; above 0 up to 100000 1/min
 *   static_head_m                head of the system at no flow, the greatest that occurs; at least 0 m
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
 *   npsh3_values_m               NPSH3 of the curve's points; a series of at least 2 points; each at least 0 m
 *   npsh_at_rest_m               net positive suction head available at no flow: npsh_available without friction; a
 *                                finite number
 *   suction_resistance_h2m5      losses of the suction line over the square of the flow, its entry included; at least 0
 *                                h2/m5
 *   margin_m                     NPSH to be left above NPSH3; at least 0 m
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
 * Greatest speed at which a pump of a given suction specific speed keeps its NPSH3 within what there is.
 *
 *   flow_m3h                     the pump's whole flow at best efficiency, full diameter; above 0 m3/h
 *   npsh3_m                      greatest NPSH3 permitted: NPSH available less the margin; above 0 m
 *   suction_specific_speed       suction specific speed at best efficiency in 1/min, m3/s, m, per eye: of the pump
 *                                maker, or 213 for a cautious choice; from 50 to 1000
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; a whole number
 *                                from 1 to 2; 1 if left out
 *   -> speed_rpm                 greatest speed of rotation
 *
 *   Equation: n = n_ss NPSH3^(3/4)/sqrt(Q/i); n in 1/min, Q in m3/s, NPSH3 in m
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read), solved for the
 *           speed
 *   Caution: Common practice looks for at most about 213 (11 000 in US units): a pump of more draws deeper near best
 *            efficiency and has a narrower range of steady flow.
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
 *   suction_specific_speed       suction specific speed at best efficiency in 1/min, m3/s, m, per eye: of the pump
 *                                maker, or 213 for a cautious choice; from 50 to 1000
 *   eyes                         eyes of the impeller that share the flow: 1, or 2 with double suction; a whole number
 *                                from 1 to 2; 1 if left out
 *   -> npsh3_m                   NPSH3 to be expected at best efficiency flow
 *
 *   Equation: NPSH3 = (n sqrt(Q/i)/n_ss)^(4/3); n in 1/min, Q in m3/s, NPSH3 in m
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read), solved for
 *           NPSH3
 *   Caution: Common practice looks for at most about 213 (11 000 in US units): a pump of more draws deeper near best
 *            efficiency and has a narrower range of steady flow.
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
 * Least NPSH available while a boiling vessel loses its pressure and the suction line still holds hot liquid.
 *
 *   times_s                      times of the vessel's pressures, from the beginning of the fall on; a series of at
 *                                least 2 points, rising; each at least 0 s
 *   vessel_pressures_bara        pressures in the vessel, its liquid boiling all the while; a series of at least 2
 *                                points; each above 0 up to 500 bara
 *   liquid_level_m               lowest surface above the pump's NPSH datum; a finite number
 *   friction_head_m              losses of the suction line at that flow; at least 0 m
 *   line_volume_m3               volume of the suction line from the vessel to the pump; above 0 m3
 *   flow_m3h                     flow through the line meanwhile: the least of it keeps the hot liquid longest; above 0
 *                                m3/h
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   -> least_npsh_m              least net positive suction head available
 *   -> at_time_s                 when it is least
 *   -> line_time_s               time that the liquid takes from the vessel to the pump
 *
 *   Equation: NPSHA(t) = z - h_f + [p(t) - p(t - tau)]/(rho g), tau = V/Q; p straight between the points
 *   Must hold of vessel_pressures: both series must have the same number of points
 *   Source: the liquid at the pump has the vapour pressure of the vessel a line's time ago: articles of a power
 *           engineers' magazine on deaerators (excerpts read); definition of NPSH as in npsh_available
 *   Caution: Flow that stops or falls meanwhile leaves hot liquid in the line for longer: take the least flow of the
 *            event.
 *   Caution: The vessel's pressure over time comes from a heat balance or a measurement; a relief valve or cold make-up
 *            makes it fall faster.
 *   Caution: Heat held by the pipe's wall and mixing in the line are left out.
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
 *   npsh3_values_m               NPSH3 of the curve's points; a series of at least 2 points; each at least 0 m
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
 * NPSH3 from a test in which the NPSH is lowered at one flow until the head falls.
 *
 *   npsh_values_m                NPSH of the readings, rising, at one flow and speed; a series of at least 3 points,
 *                                rising; each at least 0 m
 *   heads_m                      total heads of those readings: of the first stage where there are several; a series of
 *                                at least 3 points; each at least 0 m
 *   full_head_m                  head without cavitation at that flow: the mean of the readings at high NPSH; above 0 m
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
 *   npsh3_m                      measured, at the guaranteed flow and speed; above 0 m
 *   uncertainty_m                of the measurement, instruments and scatter together; at least 0 m
 *   guaranteed_npsh3_m           guaranteed at that flow; above 0 m
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

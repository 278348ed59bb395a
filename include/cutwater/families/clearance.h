/* generated from the catalogue by cutwater-generate; do not edit. */
/* Running clearance, wear and wall. */
#ifndef CUTWATER_FAMILIES_CLEARANCE_H
#define CUTWATER_FAMILIES_CLEARANCE_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Head across a wear ring: what the impeller's rim has, less the fall along the turning shroud.
 *
 *   rim_head_m                   static head at the impeller's rim over the suction, about 0.75 of the total head of a
 *                                radial wheel; above 0 m
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   impeller_diameter_mm         outer diameter of the shroud; from 1 to 10000 mm
 *   ring_diameter_mm             diameter of the ring; from 1 to 10000 mm
 *   core_rotation                speed of the liquid's core over the impeller's; from 0 to 0.9; 0.5 if left out
 *   -> head_difference_m         head across the ring
 *
 *   Equation: dH = H_p - k^2 (u_2^2 - u_r^2)/(2 g), u = pi n D
 *   Must hold of ring_diameter: it must be less than the outer diameter
 *   Source: A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd ed. 1957, leakage, with k = 1/2: (u_2^2 - u_r^2)/(8
 *           g) (from memory of it)
 *   Caution: The core turns faster with much inward leakage and slower before a rough casing wall: +-20 % of the head.
 */
CUTWATER_API cutwater_status cutwater_ring_head_difference(double rim_head_m, double speed_rpm, double impeller_diameter_mm,
                                              double ring_diameter_mm, double core_rotation,
                                              double *head_difference_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_ring_head_difference_rows(size_t rows, cutwater_column rim_head_m, cutwater_column speed_rpm,
                                                   cutwater_column impeller_diameter_mm,
                                                   cutwater_column ring_diameter_mm, cutwater_column core_rotation,
                                                   cutwater_result_column head_difference_m,
                                                   cutwater_rows_report *report);

/*
 * Leakage through the clearance of a plain wear ring.
 *
 *   head_difference_m            head across the ring, as from ring_head_difference; above 0 up to 10000 m
 *   ring_diameter_mm             diameter of the clearance; from 1 to 10000 mm
 *   radial_clearance_mm          radial clearance, half the difference of the diameters; above 0 up to 20 mm
 *   ring_length_mm               length of the clearance along the shaft; 0 for a sharp edge; from 0 to 1000 mm
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   viscosity_mm2s               kinematic viscosity of the liquid; from 0.01 to 1000000 mm2/s
 *   end_loss                     entrance and exit, in velocity heads: 0.5 and 1; from 0.5 to 10; 1.5 if left out
 *   friction_factor              Darcy friction factor on twice the clearance; 0: of a smooth gap round a turning hub;
 *                                from 0 to 2; 0 if left out
 *   -> leakage_m3h               leakage of one ring
 *   -> velocity_ms               axial velocity in the gap
 *   -> friction                  Darcy friction factor as used
 *
 *   Equation: Q_L = pi D s v, v = sqrt(2 g dH/(zeta + lambda L/(2 s))), lambda = 0.316 (2 s v/nu)^-0.25 [1 + (7/8)^2
 *             (u/(2 v))^2]^0.375, u = pi n D
 *   Source: end losses: Pump Handbook, 1976, 2.1 (as quoted by practitioners, excerpt read); friction: Y. Yamada, Bull.
 *           JSME 5 (1962) 302-310, in H. F. Black's form (from memory of both); within -2 and +12 % of H. Kanki and T.
 *           Kawakami's measurements, 1984 (values read in an open seal code)
 *   Caution: A rough, grooved or eccentric ring leaks otherwise, eccentric ones up to a fifth more: +-15 %.
 *   Caution: Part of the ring's wear is on one side: measure the clearance across, and take the mean.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_ring_clearance_leakage(double head_difference_m, double ring_diameter_mm,
                                                double radial_clearance_mm, double ring_length_mm, double speed_rpm,
                                                double viscosity_mm2s, double end_loss, double friction_factor,
                                                double *leakage_m3h, double *velocity_ms, double *friction,
                                                cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_ring_clearance_leakage_rows(size_t rows, cutwater_column head_difference_m,
                                                     cutwater_column ring_diameter_mm,
                                                     cutwater_column radial_clearance_mm,
                                                     cutwater_column ring_length_mm, cutwater_column speed_rpm,
                                                     cutwater_column viscosity_mm2s, cutwater_column end_loss,
                                                     cutwater_column friction_factor,
                                                     cutwater_result_column leakage_m3h,
                                                     cutwater_result_column velocity_ms,
                                                     cutwater_result_column friction, cutwater_rows_report *report);

/*
 * Leakage over the vanes of an open impeller, and the head that it costs.
 *
 *   flow_m3h                     flow delivered; above 0 m3/h
 *   head_m                       total head of the impeller at that flow; above 0 m
 *   hydraulic_efficiency         head over the impeller's theoretical head, about 0.8 to 0.92; from 0.3 to 1
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   vanes                        number of vanes; a whole number from 2 to 30
 *   clearance_mm                 gap between the vanes' edges and the casing; from 0 to 20 mm
 *   impeller_diameter_mm         diameter of the impeller; from 1 to 10000 mm
 *   mean_diameter_mm             mean diameter of the vanes' open edge, inlet to outlet; from 1 to 10000 mm
 *   mean_width_mm                mean width of the vanes; from 1 to 10000 mm
 *   vane_length_mm               length of a vane along the flow; from 1 to 10000 mm
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   -> leakage_m3h               flow over all vanes' edges
 *   -> head_loss_m               head that it costs
 *   -> vane_load_bar             mean pressure difference across a vane
 *
 *   Equation: dp_v = rho Q (r_2 c_u2)/(Z r_av b_av L), r_2 c_u2 = g H/(eta_h w); U_L = 0.816 sqrt(2 dp_v/rho); Q_L = Z e
 *             L U_L; dH = (Q_L/Q) U_L u_2/(2 g)
 *   Must hold of mean_diameter: it must not exceed the impeller diameter
 *   Source: R. H. Aungier, Centrifugal Compressors, ASME Press 2000, clearance leakage, as set in open compressor codes
 *           (their source read)
 *   Caution: Made for compressors and carried over to a liquid: +-50 %. Measured loss of the pump itself goes before it:
 *            see clearance_head_ratio.
 *   Caution: Without prerotation at the inlet.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_vane_edge_leakage(double flow_m3h, double head_m, double hydraulic_efficiency,
                                           double speed_rpm, double vanes, double clearance_mm,
                                           double impeller_diameter_mm, double mean_diameter_mm, double mean_width_mm,
                                           double vane_length_mm, double density_kgm3, double *leakage_m3h,
                                           double *head_loss_m, double *vane_load_bar, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_vane_edge_leakage_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                cutwater_column hydraulic_efficiency, cutwater_column speed_rpm,
                                                cutwater_column vanes, cutwater_column clearance_mm,
                                                cutwater_column impeller_diameter_mm,
                                                cutwater_column mean_diameter_mm, cutwater_column mean_width_mm,
                                                cutwater_column vane_length_mm, cutwater_column density_kgm3,
                                                cutwater_result_column leakage_m3h,
                                                cutwater_result_column head_loss_m,
                                                cutwater_result_column vane_load_bar, cutwater_rows_report *report);

/*
 * Head that the clearance at an open impeller's vanes costs.
 *
 *   flow_m3h                     flow delivered; above 0 m3/h
 *   head_m                       total head of the impeller at that flow; above 0 m
 *   hydraulic_efficiency         head over the impeller's theoretical head, about 0.8 to 0.92; from 0.3 to 1
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   vanes                        number of vanes; a whole number from 2 to 30
 *   clearance_mm                 gap between the vanes' edges and the casing; from 0 to 20 mm
 *   impeller_diameter_mm         diameter of the impeller; from 1 to 10000 mm
 *   vane_width_mm                width of the vanes at the outlet; from 1 to 10000 mm
 *   eye_diameter_mm              diameter of the eye; from 1 to 10000 mm
 *   -> head_loss_m               head that the clearance costs
 *   -> part_of_head              the same as a part of the head
 *
 *   Equation: dH = 0.6 (e/b_2) (c_u2/g) sqrt(2 Q c_u2/(b_2 Z (r_2 - r_1))), c_u2 = g H/(eta_h u_2)
 *   Must hold of eye_diameter: it must be less than the impeller diameter
 *   Source: W. Jansen 1967, in the set of H. W. Oh, E. S. Yoon and M. K. Chung 1997, as set in open compressor codes
 *           (their source read); liquid: equal densities, the inlet area cancelled
 *   Caution: Made for compressors and carried over to a liquid: +-50 %. Measured loss of the pump itself goes before it:
 *            see clearance_head_ratio.
 *   Caution: Five pumps tested by A. Engeda and M. Rautenberg (1987, abstract read) had no slope in common: two wheels
 *            of one size may differ by a factor of three.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_vane_clearance_head_loss(double flow_m3h, double head_m, double hydraulic_efficiency,
                                                  double speed_rpm, double vanes, double clearance_mm,
                                                  double impeller_diameter_mm, double vane_width_mm,
                                                  double eye_diameter_mm, double *head_loss_m, double *part_of_head,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_vane_clearance_head_loss_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                       cutwater_column hydraulic_efficiency,
                                                       cutwater_column speed_rpm, cutwater_column vanes,
                                                       cutwater_column clearance_mm,
                                                       cutwater_column impeller_diameter_mm,
                                                       cutwater_column vane_width_mm, cutwater_column eye_diameter_mm,
                                                       cutwater_result_column head_loss_m,
                                                       cutwater_result_column part_of_head,
                                                       cutwater_rows_report *report);

/*
 * Head of an open impeller at a clearance, over that at the reference clearance.
 *
 *   clearance_mm                 clearance at the vanes as it is; from 0 to 20 mm
 *   reference_clearance_mm       clearance at which the curve was taken; from 0 to 20 mm
 *   vane_width_mm                width of the vanes at the outlet; from 1 to 10000 mm
 *   head_slope                   part of the head lost for each part of the vanes' width that the clearance grows;
 *                                measured; from 0 to 10
 *   -> head_ratio                at the same flow and speed
 *
 *   Equation: H/H_0 = 1 - c_H (e - e_0)/b_2
 *   Source: straight line in e/b_2, its slope from a test of the pump: A. Engeda and M. Rautenberg, ASME J.
 *           Turbomachinery 109 (1987) 545, found no slope common to five pumps (abstract read); closing 1.5 to 0.25 mm
 *           may gain as much as 10 % of efficiency: Pump Handbook, vane-tip clearance (page read)
 *   Caution: Find the slope from two tests of this pump at known clearances, at the same flow and speed; a slope from
 *            another pump may be wrong by a factor of three.
 *   Caution: At one flow: a steep curve loses less flow, a flat one more.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_clearance_head_ratio(double clearance_mm, double reference_clearance_mm,
                                              double vane_width_mm, double head_slope, double *head_ratio,
                                              cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_clearance_head_ratio_rows(size_t rows, cutwater_column clearance_mm,
                                                   cutwater_column reference_clearance_mm,
                                                   cutwater_column vane_width_mm, cutwater_column head_slope,
                                                   cutwater_result_column head_ratio, cutwater_rows_report *report);

/*
 * Efficiency of an open impeller at a clearance, over that at the reference clearance.
 *
 *   clearance_mm                 clearance at the vanes as it is; from 0 to 20 mm
 *   reference_clearance_mm       clearance at which the curve was taken; from 0 to 20 mm
 *   vane_width_mm                width of the vanes at the outlet; from 1 to 10000 mm
 *   efficiency_slope             part of the efficiency lost for each part of the vanes' width that the clearance grows;
 *                                measured; from 0 to 10
 *   -> efficiency_ratio          a part of the efficiency, not points
 *
 *   Equation: eta/eta_0 = 1 - c_eta (e - e_0)/b_2
 *   Source: straight line in e/b_2, its slope from a test of the pump: A. Engeda and M. Rautenberg, ASME J.
 *           Turbomachinery 109 (1987) 545, found no slope common to five pumps (abstract read); closing 1.5 to 0.25 mm
 *           may gain as much as 10 % of efficiency: Pump Handbook, vane-tip clearance (page read)
 *   Caution: Find the slope from two tests of this pump at known clearances, at the same flow and speed; a slope from
 *            another pump may be wrong by a factor of three.
 *   Caution: A ratio of efficiencies: 0.94 of 70 % is 65.8 %, four points less.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_clearance_efficiency_ratio(double clearance_mm, double reference_clearance_mm,
                                                    double vane_width_mm, double efficiency_slope,
                                                    double *efficiency_ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_clearance_efficiency_ratio_rows(size_t rows, cutwater_column clearance_mm,
                                                         cutwater_column reference_clearance_mm,
                                                         cutwater_column vane_width_mm,
                                                         cutwater_column efficiency_slope,
                                                         cutwater_result_column efficiency_ratio,
                                                         cutwater_rows_report *report);

/*
 * Efficiency with worn rings over that with rings as new, at the same flow delivered.
 *
 *   flow_m3h                     flow delivered; above 0 m3/h
 *   leakage_m3h                  leakage of all rings as they are; at least 0 m3/h
 *   reference_leakage_m3h        leakage of all rings at the reference clearance; at least 0 m3/h
 *   -> efficiency_ratio          ratio of the volumetric efficiencies
 *
 *   Equation: eta/eta_0 = (Q + Q_L0)/(Q + Q_L)
 *   Source: volumetric efficiency Q/(Q + Q_L) as a factor of the whole: A. J. Stepanoff, Centrifugal and Axial Flow
 *           Pumps, 2nd ed. 1957 (from memory of it); Pump Handbook, 2.1
 *   Caution: Hydraulic and mechanical losses are taken as unchanged; disc friction falls a little as leakage grows.
 *   Caution: The head at that flow falls as well: see head_with_leakage.
 */
CUTWATER_API cutwater_status cutwater_leakage_efficiency_ratio(double flow_m3h, double leakage_m3h, double reference_leakage_m3h,
                                                  double *efficiency_ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_leakage_efficiency_ratio_rows(size_t rows, cutwater_column flow_m3h,
                                                       cutwater_column leakage_m3h,
                                                       cutwater_column reference_leakage_m3h,
                                                       cutwater_result_column efficiency_ratio,
                                                       cutwater_rows_report *report);

/*
 * Head that a pump with worn rings still gives: its impeller passes the flow and the leakage that came on top.
 *
 *   flow_m3h                     flow delivered; at least 0 m3/h
 *   extra_leakage_m3h            leakage over that of the rings as new; at least 0 m3/h
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the pump curve's points; a series of at least 2 points; each from -20000 to
 *                                20000 m
 *   -> head_m                    head at that flow now
 *   -> head_loss_m               less than on the curve
 *
 *   Equation: H = H_new(Q + dQ_L)
 *   Must hold of heads: both series must have the same number of points
 *   Source: leakage shifts the curve towards less flow: A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd ed. 1957
 *           (from memory of it)
 *   Caution: For leakage round the impeller, through wear rings; worn vanes and open edges change the curve's shape: see
 *            clearance_head_ratio.
 */
CUTWATER_API cutwater_status cutwater_head_with_leakage(double flow_m3h, double extra_leakage_m3h, const double *flows_m3h,
                                           size_t flows_m3h_count, const double *heads_m, size_t heads_m_count,
                                           double *head_m, double *head_loss_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_head_with_leakage_rows(size_t rows, cutwater_column flow_m3h,
                                                cutwater_column extra_leakage_m3h, const double *flows_m3h,
                                                size_t flows_m3h_count, const double *heads_m, size_t heads_m_count,
                                                cutwater_result_column head_m, cutwater_result_column head_loss_m,
                                                cutwater_rows_report *report);

/*
 * Power that a lost efficiency costs at the same duty.
 *
 *   flow_m3h                     flow delivered; above 0 m3/h
 *   head_m                       total head, the same before and after; above 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   efficiency                   pump efficiency at the reference clearance; above 0 up to 1
 *   efficiency_ratio             efficiency now over that; above 1 a gain; above 0 up to 1.2
 *   motor_efficiency             of motor and drive; above 0 up to 1
 *   -> shaft_power_kW            at the shaft
 *   -> electrical_power_kW       from the mains
 *
 *   Equation: dP = (rho g Q H/eta_0)(1/r - 1); dP_el = dP/eta_M
 *   Source: pump efficiency, ISO 17769-1:2012 (from memory of it), before and after
 *   Caution: At the same duty. A pump at fixed speed that lost head moves down the system's curve instead: it takes less
 *            power and delivers less.
 */
CUTWATER_API cutwater_status cutwater_clearance_power_penalty(double flow_m3h, double head_m, double density_kgm3,
                                                 double efficiency, double efficiency_ratio, double motor_efficiency,
                                                 double *shaft_power_kW, double *electrical_power_kW,
                                                 cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_clearance_power_penalty_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                      cutwater_column density_kgm3, cutwater_column efficiency,
                                                      cutwater_column efficiency_ratio,
                                                      cutwater_column motor_efficiency,
                                                      cutwater_result_column shaft_power_kW,
                                                      cutwater_result_column electrical_power_kW,
                                                      cutwater_rows_report *report);

/*
 * How far a pump on site is from its head curve, and whether that is more than the uncertainty.
 *
 *   flow_m3h                     flow measured; at least 0 m3/h
 *   head_m                       total head measured, as from total_head_from_gauges; above 0 m
 *   speed_rpm                    speed measured; above 0 up to 100000 1/min
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   heads_m                      heads of the pump curve's points; a series of at least 2 points; each from -20000 to
 *                                20000 m
 *   curve_speed_rpm              speed of the curve; above 0 up to 100000 1/min
 *   flow_uncertainty_percent     of the flow measured; from 0 to 50 %; 3 if left out
 *   head_uncertainty_percent     of the head measured; from 0 to 50 %; 2 if left out
 *   curve_tolerance_percent      of the curve itself: its acceptance tolerance; from 0 to 50 %; 3 if left out
 *   -> verdict                   below the curve, within uncertainty, or above the curve
 *   -> expected_head_m           head of the curve at that flow, at the curve's speed
 *   -> head_lost_m               expected less measured, at the curve's speed; negative when above
 *   -> part_lost                 the same as a part
 *   -> part_uncertain            uncertainty of it as a part
 *
 *   Equation: dH = H_0(Q n_0/n) - H (n_0/n)^2; u^2 = (e_H H (n_0/n)^2)^2 + (e_Q Q (n_0/n) dH_0/dQ)^2 + (tau H_0)^2
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of speed: it must lie within 20 % of the curve's speed
 *   Source: affinity laws, and uncertainties combined as ISO 9906 and the GUM have it (from memory of both); the flow's
 *           uncertainty counts with the curve's slope
 *   Caution: One reading may mislead: take several, with the instruments' zero checked, away from valves and bends; a
 *            wrong liquid density, speed or gauge height looks like wear.
 *   Caution: A worn impeller or ring, gas, viscosity, a blocked impeller, wrong rotation or a bypass that passes shift a
 *            pump alike.
 *   Caution: Within 20 % of the curve's speed and for a thin liquid.
 */
CUTWATER_API cutwater_status cutwater_field_head_check(double flow_m3h, double head_m, double speed_rpm, const double *flows_m3h,
                                          size_t flows_m3h_count, const double *heads_m, size_t heads_m_count,
                                          double curve_speed_rpm, double flow_uncertainty_percent,
                                          double head_uncertainty_percent, double curve_tolerance_percent,
                                          const char **verdict, double *expected_head_m, double *head_lost_m,
                                          double *part_lost, double *part_uncertain, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_field_head_check_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                               cutwater_column speed_rpm, const double *flows_m3h,
                                               size_t flows_m3h_count, const double *heads_m, size_t heads_m_count,
                                               cutwater_column curve_speed_rpm,
                                               cutwater_column flow_uncertainty_percent,
                                               cutwater_column head_uncertainty_percent,
                                               cutwater_column curve_tolerance_percent,
                                               cutwater_result_column verdict, cutwater_result_column expected_head_m,
                                               cutwater_result_column head_lost_m, cutwater_result_column part_lost,
                                               cutwater_result_column part_uncertain, cutwater_rows_report *report);

/*
 * Efficiency of a pump on site against its curve, and whether it differs by more than the uncertainty.
 *
 *   flow_m3h                     flow measured; above 0 m3/h
 *   head_m                       total head measured, as from total_head_from_gauges; above 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   electrical_power_kW          power drawn from the mains; above 0 kW
 *   motor_efficiency             of motor and drive at that load; above 0 up to 1
 *   flows_m3h                    flows of the pump curve's points; a series of at least 2 points, rising; each at least
 *                                0 m3/h
 *   efficiencies                 efficiencies of the curve's points; the first flow above 0; a series of at least 2
 *                                points; each above 0 up to 1
 *   flow_uncertainty_percent     of the flow measured; from 0 to 50 %; 3 if left out
 *   head_uncertainty_percent     of the head measured; from 0 to 50 %; 2 if left out
 *   power_uncertainty_percent    of the power measured and of the motor's efficiency; from 0 to 50 %; 3 if left out
 *   curve_tolerance_percent      of the curve itself, as a part of the efficiency; from 0 to 50 %; 3 if left out
 *   -> verdict                   below the curve, within uncertainty, or above the curve
 *   -> efficiency                of the pump as measured
 *   -> expected_efficiency       of the curve at that flow
 *   -> efficiency_ratio          measured over expected
 *   -> part_uncertain            uncertainty of it as a part
 *
 *   Equation: eta = rho g Q H/(P_el eta_M); u^2 = eta^2 (e_Q^2 + e_H^2 + e_P^2) + (tau eta_0)^2
 *   Must hold of efficiencies: both series must have the same number of points
 *   Source: affinity laws, and uncertainties combined as ISO 9906 and the GUM have it (from memory of both); the flow's
 *           uncertainty counts with the curve's slope
 *   Caution: One reading may mislead: take several, with the instruments' zero checked, away from valves and bends; a
 *            wrong liquid density, speed or gauge height looks like wear.
 *   Caution: A worn impeller or ring, gas, viscosity, a blocked impeller, wrong rotation or a bypass that passes shift a
 *            pump alike.
 *   Caution: Near the curve's speed: a few per cent of speed hardly move the efficiency at the same flow.
 */
CUTWATER_API cutwater_status cutwater_field_efficiency_check(double flow_m3h, double head_m, double density_kgm3,
                                                double electrical_power_kW, double motor_efficiency,
                                                const double *flows_m3h, size_t flows_m3h_count,
                                                const double *efficiencies, size_t efficiencies_count,
                                                double flow_uncertainty_percent, double head_uncertainty_percent,
                                                double power_uncertainty_percent, double curve_tolerance_percent,
                                                const char **verdict, double *efficiency, double *expected_efficiency,
                                                double *efficiency_ratio, double *part_uncertain,
                                                cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_field_efficiency_check_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                     cutwater_column density_kgm3,
                                                     cutwater_column electrical_power_kW,
                                                     cutwater_column motor_efficiency, const double *flows_m3h,
                                                     size_t flows_m3h_count, const double *efficiencies,
                                                     size_t efficiencies_count,
                                                     cutwater_column flow_uncertainty_percent,
                                                     cutwater_column head_uncertainty_percent,
                                                     cutwater_column power_uncertainty_percent,
                                                     cutwater_column curve_tolerance_percent,
                                                     cutwater_result_column verdict,
                                                     cutwater_result_column efficiency,
                                                     cutwater_result_column expected_efficiency,
                                                     cutwater_result_column efficiency_ratio,
                                                     cutwater_result_column part_uncertain,
                                                     cutwater_rows_report *report);

/*
 * Clearance of an open impeller that a lost head tells of, with its bounds.
 *
 *   part_lost                    part of the head lost, as from field_head_check; from -0.5 to 0.5
 *   part_uncertain               its uncertainty, as from field_head_check; from 0 to 0.5
 *   reference_clearance_mm       clearance at which the curve was taken; from 0 to 20 mm
 *   vane_width_mm                width of the vanes at the outlet; from 1 to 10000 mm
 *   head_slope                   part of the head lost for each part of the vanes' width that the clearance grows;
 *                                measured; above 0 up to 10
 *   -> clearance_mm              clearance that explains the loss
 *   -> low_mm                    its lower bound, not below 0
 *   -> high_mm                   its upper bound
 *
 *   Equation: e = e_0 + b_2 x/c_H; bounds with x - u and x + u
 *   Source: clearance_head_ratio, solved for the clearance
 *   Caution: When it is the clearance: see it by feeler or by turning the shaft until it touches before believing it.
 *   Caution: A worn impeller or ring, gas, viscosity, a blocked impeller, wrong rotation or a bypass that passes shift a
 *            pump alike.
 *   Caution: The slope's own scatter comes on top.
 */
CUTWATER_API cutwater_status cutwater_clearance_from_head_loss(double part_lost, double part_uncertain,
                                                  double reference_clearance_mm, double vane_width_mm,
                                                  double head_slope, double *clearance_mm, double *low_mm,
                                                  double *high_mm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_clearance_from_head_loss_rows(size_t rows, cutwater_column part_lost,
                                                       cutwater_column part_uncertain,
                                                       cutwater_column reference_clearance_mm,
                                                       cutwater_column vane_width_mm, cutwater_column head_slope,
                                                       cutwater_result_column clearance_mm,
                                                       cutwater_result_column low_mm, cutwater_result_column high_mm,
                                                       cutwater_rows_report *report);

/*
 * Turn of a threaded bearing carrier, or of adjusting nuts, that brings an axial clearance to its setting.
 *
 *   clearance_mm                 clearance as it is; 0 when turned until it touches; from 0 to 50 mm
 *   wanted_clearance_mm          clearance to set; from 0 to 50 mm
 *   thread_lead_mm               axial movement of one turn: the pitch of a single thread; from 0.1 to 25 mm
 *   divisions                    marks, lugs or flats in one turn; a whole number from 1 to 360; 1 if left out
 *   -> direction                 close, open, or leave as it is
 *   -> move_mm                   axial movement, positive when it closes
 *   -> exact_divisions           divisions to turn
 *   -> whole_divisions           the same, whole, so that no less than the wanted clearance is set
 *   -> set_clearance_mm          clearance after the whole divisions
 *
 *   Equation: x = e - e_w; m = N x/P, m_w = floor(m); e_s = e - m_w P/N
 *   Source: geometry of a thread; H. P. Bloch and F. K. Geitner, Major Process Equipment Maintenance and Repair, p. 93:
 *           12 threads an inch and 12 places, 0.007 in each (page read)
 *   Caution: The clearance to set is the pump maker's, cold or for the pumping temperature as he states; isolate, lock
 *            off and drain before the shaft is turned.
 *   Caution: Tightening the lock screws takes up the thread's play and moves the shaft once more: measure again with a
 *            dial gauge.
 */
CUTWATER_API cutwater_status cutwater_clearance_adjustment(double clearance_mm, double wanted_clearance_mm, double thread_lead_mm,
                                              double divisions, const char **direction, double *move_mm,
                                              double *exact_divisions, double *whole_divisions,
                                              double *set_clearance_mm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_clearance_adjustment_rows(size_t rows, cutwater_column clearance_mm,
                                                   cutwater_column wanted_clearance_mm,
                                                   cutwater_column thread_lead_mm, cutwater_column divisions,
                                                   cutwater_result_column direction, cutwater_result_column move_mm,
                                                   cutwater_result_column exact_divisions,
                                                   cutwater_result_column whole_divisions,
                                                   cutwater_result_column set_clearance_mm,
                                                   cutwater_rows_report *report);

/*
 * Running clearance that is left when rotor and casing have warmed.
 *
 *   cold_clearance_mm            clearance as set or measured cold; above 0 up to 50 mm
 *   dimension_mm                 length from the thrust bearing to an axial clearance, or the diameter of a ring with
 *                                its diametral clearance; above 0 up to 20000 mm
 *   rotor_expansion_umperK       mean expansion of the turning part; 16 to 16.5 for austenitic, 13 for duplex, 10.5 to
 *                                11 for 13 % chromium steel; from -20 to 300 1e-6/K
 *   rotor_temperature_degC       its mean temperature over that dimension; from -270 to 1200 degC
 *   casing_expansion_umperK      mean expansion of the stationary part; from -20 to 300 1e-6/K
 *   casing_temperature_degC      its mean temperature over that dimension; from -270 to 1200 degC
 *   cold_temperature_degC        temperature at which the clearance was set; from -270 to 1200 degC; 20 if left out
 *   -> hot_clearance_mm          clearance running
 *   -> change_mm                 what heat adds; negative when it closes
 *
 *   Equation: e_h = e_c + L [a_s (T_s - T_0) - a_r (T_r - T_0)]
 *   Source: linear expansion; mean coefficients from 20 degC: EN 10088-1 as tabled by the British Stainless Steel
 *           Association (excerpt read)
 *   Caution: Where the rotor grows towards the stationary part. For the gap on its other side exchange the two parts.
 *   Caution: A warming rotor runs ahead of its casing: the least clearance comes at start and at a sudden change, not in
 *            steady running.
 *   Caution: The clearance to set is the pump maker's, cold or for the pumping temperature as he states; isolate, lock
 *            off and drain before the shaft is turned.
 */
CUTWATER_API cutwater_status cutwater_hot_running_clearance(double cold_clearance_mm, double dimension_mm,
                                               double rotor_expansion_umperK, double rotor_temperature_degC,
                                               double casing_expansion_umperK, double casing_temperature_degC,
                                               double cold_temperature_degC, double *hot_clearance_mm,
                                               double *change_mm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_hot_running_clearance_rows(size_t rows, cutwater_column cold_clearance_mm,
                                                    cutwater_column dimension_mm,
                                                    cutwater_column rotor_expansion_umperK,
                                                    cutwater_column rotor_temperature_degC,
                                                    cutwater_column casing_expansion_umperK,
                                                    cutwater_column casing_temperature_degC,
                                                    cutwater_column cold_temperature_degC,
                                                    cutwater_result_column hot_clearance_mm,
                                                    cutwater_result_column change_mm, cutwater_rows_report *report);

/*
 * Rate at which a clearance grows, and the time until it reaches a limit.
 *
 *   set_clearance_mm             clearance as set or as new; from 0 to 50 mm
 *   clearance_mm                 clearance as it is; above 0 up to 50 mm
 *   time_since_month             time since it was set; running time when the pump stands much; above 0 up to 1200 month
 *   limit_mm                     clearance not to be exceeded; twice that of new rings is common practice; above 0 up to
 *                                50 mm
 *   -> rate_mmyear               growth in a year
 *   -> time_left_month           time until the limit, at that rate
 *
 *   Equation: r = (e - e_0)/T; T_l = (e_l - e)/r
 *   Must hold of clearance: it must exceed the set clearance: without wear there is no rate
 *   Must hold of limit: it must not be less than the clearance: the limit is passed already
 *   Source: straight line through two measurements; wearing rings to be renewed when their clearance has doubled: Pump
 *           Handbook (page read)
 *   Caution: Abrasion grows with leakage: the last part goes faster than the first.
 */
CUTWATER_API cutwater_status cutwater_clearance_wear(double set_clearance_mm, double clearance_mm, double time_since_month,
                                        double limit_mm, double *rate_mmyear, double *time_left_month,
                                        cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_clearance_wear_rows(size_t rows, cutwater_column set_clearance_mm,
                                             cutwater_column clearance_mm, cutwater_column time_since_month,
                                             cutwater_column limit_mm, cutwater_result_column rate_mmyear,
                                             cutwater_result_column time_left_month, cutwater_rows_report *report);

/*
 * What a grown clearance costs in a year, and the time in which a reset pays back.
 *
 *   extra_power_kW               power from the mains that the clearance costs now, as from clearance_power_penalty;
 *                                above 0 kW
 *   hours_h                      hours run in a year; above 0 up to 8784 h
 *   price_per_kWh                price of a kilowatt-hour, in any one currency; above 0
 *   reset_cost                   cost of the reset: labour, stoppage and parts; at least 0
 *   -> yearly_cost               cost of the lost energy in a year, in that currency
 *   -> payback_month             time until the reset has paid
 *
 *   Equation: C_y = c dP t; T = C/C_y
 *   Source: simple payback; common practice
 *   Caution: Energy alone: lost flow, a hotter seal, thrust on the bearings or a risk to people can ask for the reset
 *            long before the money does.
 *   Caution: The clearance goes on growing, before the reset and after: see clearance_reset_interval.
 */
CUTWATER_API cutwater_status cutwater_clearance_payback(double extra_power_kW, double hours_h, double price_per_kWh,
                                           double reset_cost, double *yearly_cost, double *payback_month,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_clearance_payback_rows(size_t rows, cutwater_column extra_power_kW, cutwater_column hours_h,
                                                cutwater_column price_per_kWh, cutwater_column reset_cost,
                                                cutwater_result_column yearly_cost,
                                                cutwater_result_column payback_month, cutwater_rows_report *report);

/*
 * Interval between resets that costs least, energy and resets together, and whether one is due.
 *
 *   extra_power_kW               power from the mains that the clearance costs now, as from clearance_power_penalty;
 *                                above 0 kW
 *   time_since_month             time since the last setting; above 0 up to 1200 month
 *   hours_h                      hours run in a year; above 0 up to 8784 h
 *   price_per_kWh                price of a kilowatt-hour, in any one currency; above 0
 *   reset_cost                   cost of the reset: labour, stoppage and parts; at least 0
 *   -> verdict                   due, or not yet
 *   -> best_interval_month       interval of the least cost
 *   -> time_left_month           until then; negative when it is past
 *   -> least_yearly_cost         energy and resets in a year, at that interval
 *
 *   Equation: T_b = sqrt(2 C/g), g = c dP t/T; C_min = sqrt(2 C g)
 *   Source: least of C/T + g T/2, lost power growing in proportion to time: R. S. Beebe, Predictive Maintenance of Pumps
 *           Using Condition Monitoring, Elsevier 2004 (from memory of it)
 *   Caution: Energy alone: lost flow, a hotter seal, thrust on the bearings or a risk to people can ask for the reset
 *            long before the money does.
 *   Caution: For a loss that grows steadily from nothing; test at least twice to see whether it does.
 */
CUTWATER_API cutwater_status cutwater_clearance_reset_interval(double extra_power_kW, double time_since_month, double hours_h,
                                                  double price_per_kWh, double reset_cost, const char **verdict,
                                                  double *best_interval_month, double *time_left_month,
                                                  double *least_yearly_cost, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_clearance_reset_interval_rows(size_t rows, cutwater_column extra_power_kW,
                                                       cutwater_column time_since_month, cutwater_column hours_h,
                                                       cutwater_column price_per_kWh, cutwater_column reset_cost,
                                                       cutwater_result_column verdict,
                                                       cutwater_result_column best_interval_month,
                                                       cutwater_result_column time_left_month,
                                                       cutwater_result_column least_yearly_cost,
                                                       cutwater_rows_report *report);

/*
 * Rate of uniform corrosion from the mass that a specimen lost.
 *
 *   mass_loss_g                  mass lost, after cleaning; from 0 to 1000000 g
 *   area_cm2                     area exposed; above 0 up to 10000000 cm2
 *   exposure_h                   time of exposure; above 0 up to 10000000 h
 *   density_kgm3                 density of the metal; from 500 to 25000 kg/m3
 *   -> rate_mmyear               depth lost in a year of 8760 h
 *
 *   Equation: r = W/(A T D)
 *   Source: ASTM G1, corrosion rate (from memory of it; the constants 87.6 and 534 for mg, cm2 or in2 are these units,
 *           read in several texts)
 *   Caution: For uniform attack alone: pitting, crevice and stress corrosion, erosion and attack at welds go faster and
 *            break through without warning.
 *   Caution: A coupon in the vessel tells nothing of the velocity in a pump.
 */
CUTWATER_API cutwater_status cutwater_corrosion_rate(double mass_loss_g, double area_cm2, double exposure_h, double density_kgm3,
                                        double *rate_mmyear, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_corrosion_rate_rows(size_t rows, cutwater_column mass_loss_g, cutwater_column area_cm2,
                                             cutwater_column exposure_h, cutwater_column density_kgm3,
                                             cutwater_result_column rate_mmyear, cutwater_rows_report *report);

/*
 * Time until corrosion has brought a wall down to what it needs.
 *
 *   wall_mm                      least thickness measured, or the new wall less its tolerance; above 0 up to 500 mm
 *   wall_needed_mm               thickness that pressure and stiffness need, as from wall_needed without allowance; from
 *                                0 to 500 mm
 *   corrosion_rate_mmyear        rate of uniform corrosion; of both sides together where both are wetted; above 0 up to
 *                                1000 mm/year
 *   -> life_year                 time left, running at that rate
 *   -> allowance_mm              thickness that may still corrode
 *
 *   Equation: L = (t - t_n)/r
 *   Must hold of wall_needed: it must not exceed the wall that there is: nothing is left to corrode, take the part out
 *                             of service
 *   Source: API 570, remaining life (from memory of it; the same relation in an inspection sheet, excerpt read)
 *   Caution: For uniform attack alone: pitting, crevice and stress corrosion, erosion and attack at welds go faster and
 *            break through without warning.
 *   Caution: Inspection codes set the interval and the method; a measured minimum counts, not the mean.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_corrosion_life(double wall_mm, double wall_needed_mm, double corrosion_rate_mmyear,
                                        double *life_year, double *allowance_mm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_corrosion_life_rows(size_t rows, cutwater_column wall_mm, cutwater_column wall_needed_mm,
                                             cutwater_column corrosion_rate_mmyear, cutwater_result_column life_year,
                                             cutwater_result_column allowance_mm, cutwater_rows_report *report);

/*
 * Wall that a cylinder under inside pressure needs, with corrosion allowance and tolerance.
 *
 *   pressure_bar                 inside pressure over the outside one, the highest: test pressure apart; above 0 up to
 *                                10000 bar
 *   outside_diameter_mm          outside diameter; above 0 up to 10000 mm
 *   allowable_stress_MPa         of the material at the temperature, from the code that applies; from 1 to 2000 MPa
 *   joint_factor                 quality of casting or weld: 0.80 for an ordinary steel casting by ASME B31.3, 1 for
 *                                seamless pipe; from 0.3 to 1; 0.8 if left out
 *   coefficient                  0.4 for ductile metals up to 482 degC; from 0 to 0.7; 0.4 if left out
 *   corrosion_allowance_mm       thickness to be left for corrosion; from 0 to 100 mm; 0 if left out
 *   under_tolerance              part by which the wall may come out thin; 0.125 for most pipe; from 0 to 0.5; 0 if left
 *                                out
 *   -> pressure_wall_mm          thickness for the pressure alone
 *   -> ordered_wall_mm           thickness to order, allowance and tolerance in
 *
 *   Equation: t = P D/(2 (S E + P Y)); t_n = (t + c)/(1 - u); for t < D/6 and P <= 0.385 S E
 *   Source: ASME B31.3, 304.1.2, equation 3a, W = 1 (excerpts read in plant calculations of the 2008 and 2012 editions)
 *   Caution: For straight cylinders: a volute's cut-water, flanges, nozzles and flat covers need the pump maker's design
 *            or a stress analysis.
 *   Caution: The test pressure can ask for more than the hot case: check both.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_wall_needed(double pressure_bar, double outside_diameter_mm, double allowable_stress_MPa,
                                     double joint_factor, double coefficient, double corrosion_allowance_mm,
                                     double under_tolerance, double *pressure_wall_mm, double *ordered_wall_mm,
                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_wall_needed_rows(size_t rows, cutwater_column pressure_bar,
                                          cutwater_column outside_diameter_mm, cutwater_column allowable_stress_MPa,
                                          cutwater_column joint_factor, cutwater_column coefficient,
                                          cutwater_column corrosion_allowance_mm, cutwater_column under_tolerance,
                                          cutwater_result_column pressure_wall_mm,
                                          cutwater_result_column ordered_wall_mm, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

/* generated from the catalogue by cutwater-generate; do not edit. */
/* Viscous liquids. */
#ifndef CUTWATER_FAMILIES_VISCOUS_H
#define CUTWATER_FAMILIES_VISCOUS_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Parameter B of the viscosity correction, from the pump's best efficiency point on water.
 *
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; below 1 mm2/s nothing is to be corrected,
 *                                above 3000 mm2/s the method does not hold; from 1 to 3000 mm2/s
 *   best_efficiency_flow_m3h     flow at best efficiency on water, of the whole pump, at this diameter and speed; above
 *                                0 up to 10000000 m3/h
 *   best_efficiency_head_m       head of one stage at best efficiency on water; above 0 up to 20000 m
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   -> viscosity_parameter       up to 1 flow and head stay as on water; from 40 on the method does not hold
 *
 *   Equation: B = 16.5 nu^0.50 H_BEP^0.0625/(Q_BEP^0.375 n^0.25), in mm2/s, m, m3/h, 1/min
 *   Must hold of speed: the specific speed n Q^0.5/H^0.75 (1/min, m3/s, m a stage) must not exceed 60: the method is for
 *                       impellers of radial type
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature); this edition only
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow. Later editions of ANSI/HI 9.6.7 are reported to go
 *            up to 4000 mm2/s and a specific speed of 58 (3000 in US units); they were not read.
 *   Caution: The standard's constants for m3/h and for US gal/min differ by 0.4 %: the metric one is used, whatever unit
 *            the input came in.
 */
CUTWATER_API cutwater_status cutwater_viscosity_parameter(double viscosity_mm2s, double best_efficiency_flow_m3h,
                                             double best_efficiency_head_m, double speed_rpm,
                                             double *viscosity_parameter, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscosity_parameter_rows(size_t rows, cutwater_column viscosity_mm2s,
                                                  cutwater_column best_efficiency_flow_m3h,
                                                  cutwater_column best_efficiency_head_m, cutwater_column speed_rpm,
                                                  cutwater_result_column viscosity_parameter,
                                                  cutwater_rows_report *report);

/*
 * Parameter B of the viscosity correction, estimated from a duty while no pump is chosen.
 *
 *   flow_m3h                     flow wanted of the viscous liquid; above 0 up to 10000000 m3/h
 *   head_m                       head wanted of the viscous liquid, of one stage; above 0 up to 20000 m
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; below 1 mm2/s nothing is to be corrected,
 *                                above 3000 mm2/s the method does not hold; from 1 to 3000 mm2/s
 *   -> viscosity_parameter       estimate; repeat with viscosity_parameter when the pump is known
 *
 *   Equation: B = 2.80 nu^0.50/(Q_vis^0.25 H_vis^0.125), in mm2/s, m3/h, m
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature); this edition only
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow. Later editions of ANSI/HI 9.6.7 are reported to go
 *            up to 4000 mm2/s and a specific speed of 58 (3000 in US units); they were not read.
 *   Caution: The standard's constants for m3/h and for US gal/min differ by 0.4 %: the metric one is used, whatever unit
 *            the input came in.
 */
CUTWATER_API cutwater_status cutwater_viscosity_parameter_from_duty(double flow_m3h, double head_m, double viscosity_mm2s,
                                                       double *viscosity_parameter, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscosity_parameter_from_duty_rows(size_t rows, cutwater_column flow_m3h,
                                                            cutwater_column head_m, cutwater_column viscosity_mm2s,
                                                            cutwater_result_column viscosity_parameter,
                                                            cutwater_rows_report *report);

/*
 * Flow of a pump on a viscous liquid over its flow on water.
 *
 *   viscosity_parameter          viscosity parameter B; from 40 on the correction is too uncertain and the losses have
 *                                to be analysed one by one; above 0 to below 40
 *   -> flow_ratio                also the ratio of heads at best efficiency
 *
 *   Equation: C_Q = 2.71^(-0.165 (log10 B)^3.15) for B > 1; 1 for B <= 1
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature); this edition only
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow. Later editions of ANSI/HI 9.6.7 are reported to go
 *            up to 4000 mm2/s and a specific speed of 58 (3000 in US units); they were not read.
 */
CUTWATER_API cutwater_status cutwater_viscous_flow_ratio(double viscosity_parameter, double *flow_ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscous_flow_ratio_rows(size_t rows, cutwater_column viscosity_parameter,
                                                 cutwater_result_column flow_ratio, cutwater_rows_report *report);

/*
 * Head of a pump on a viscous liquid over its head on water, at a point of its curve.
 *
 *   viscosity_parameter          viscosity parameter B; from 40 on the correction is too uncertain and the losses have
 *                                to be analysed one by one; above 0 to below 40
 *   flow_ratio                   the point's flow on water over the best efficiency flow on water; from 0 to 1.5; 1 if
 *                                left out
 *   -> head_ratio                1 at closed valve, falling with the flow
 *
 *   Equation: C_H = 1 - (1 - C_Q)(Q_W/Q_BEP)^0.75 for B > 1; 1 for B <= 1
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature); this edition only
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow. Later editions of ANSI/HI 9.6.7 are reported to go
 *            up to 4000 mm2/s and a specific speed of 58 (3000 in US units); they were not read.
 */
CUTWATER_API cutwater_status cutwater_viscous_head_ratio(double viscosity_parameter, double flow_ratio, double *head_ratio,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscous_head_ratio_rows(size_t rows, cutwater_column viscosity_parameter,
                                                 cutwater_column flow_ratio, cutwater_result_column head_ratio,
                                                 cutwater_rows_report *report);

/*
 * Efficiency of a pump on a viscous liquid over its efficiency on water.
 *
 *   viscosity_parameter          viscosity parameter B; from 40 on the correction is too uncertain and the losses have
 *                                to be analysed one by one; above 0 to below 40
 *   best_efficiency              best efficiency on water; counts for B up to 1, and above for the safe branch; above 0
 *                                to below 1
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; counts for B up to 1, and above for the
 *                                safe branch; from 1 to 3000 mm2/s
 *   water_viscosity_mm2s         kinematic viscosity of the water that the pump was tested on; from 0.2 to 2 mm2/s; 1 if
 *                                left out
 *   near_one                     as printed: the two branches, which jump at B = 1; safe: above B = 1 no higher than the
 *                                other branch ends there; "as printed" or "safe"; "as printed" if left out
 *   -> efficiency_ratio          the same at every flow
 *
 *   Equation: C_eta = B^(-0.0547 B^0.69) for B > 1; [1 - (1 - eta_BEP)(nu/nu_W)^0.07]/eta_BEP for B <= 1; safe, B > 1:
 *             at most that value with nu/B^2, where B would be 1
 *   Must hold of viscosity: the liquid must not be thinner than the water of the pump's test: no correction is needed
 *                           then
 *   Must hold of best_efficiency: the method's formula for B up to 1 leaves no efficiency with so low a best efficiency
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it; the branch for B > 1
 *           checked against its worked examples, the branch for B up to 1 not)
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow. Later editions of ANSI/HI 9.6.7 are reported to go
 *            up to 4000 mm2/s and a specific speed of 58 (3000 in US units); they were not read.
 *   Caution: The method's two branches do not join: above B = 1 the efficiency ratio begins again at 1, higher by (1 -
 *            eta_BEP)((nu/nu_W)^0.07 - 1)/eta_BEP, which is 3 % at eta_BEP 0.8 and 5 mm2/s, 17 % at 0.5 and 10 mm2/s.
 *            Near B = 1 take near_one as safe, which is never above the standard's value.
 */
CUTWATER_API cutwater_status cutwater_viscous_efficiency_ratio(double viscosity_parameter, double best_efficiency,
                                                  double viscosity_mm2s, double water_viscosity_mm2s,
                                                  const char *near_one, double *efficiency_ratio,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscous_efficiency_ratio_rows(size_t rows, cutwater_column viscosity_parameter,
                                                       cutwater_column best_efficiency,
                                                       cutwater_column viscosity_mm2s,
                                                       cutwater_column water_viscosity_mm2s, const char *near_one,
                                                       cutwater_result_column efficiency_ratio,
                                                       cutwater_rows_report *report);

/*
 * Flow, head, efficiency and power on a viscous liquid, from one point of the curve on water.
 *
 *   flow_m3h                     flow of the point on water; above 0 up to 10000000 m3/h
 *   head_m                       head of the point on water, of the whole pump; above 0 up to 20000 m
 *   efficiency                   efficiency of the point on water; above 0 to below 1
 *   best_efficiency_flow_m3h     flow at best efficiency on water, of the whole pump, at this diameter and speed; above
 *                                0 up to 10000000 m3/h
 *   best_efficiency_head_m       head of one stage at best efficiency on water; above 0 up to 20000 m
 *   best_efficiency              best efficiency on water; above 0 to below 1
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; below 1 mm2/s nothing is to be corrected,
 *                                above 3000 mm2/s the method does not hold; from 1 to 3000 mm2/s
 *   density_kgm3                 density of the viscous liquid; from 50 to 25000 kg/m3
 *   water_viscosity_mm2s         kinematic viscosity of the water that the pump was tested on; from 0.2 to 2 mm2/s; 1 if
 *                                left out
 *   near_one                     as printed: the two branches, which jump at B = 1; safe: above B = 1 no higher than the
 *                                other branch ends there; "as printed" or "safe"; "as printed" if left out
 *   -> viscous_flow_m3h          flow of that point on the viscous liquid
 *   -> viscous_head_m            head of that point on the viscous liquid
 *   -> viscous_efficiency        efficiency of that point on the viscous liquid
 *   -> power_kW                  pump power input there
 *
 *   Equation: Q_vis = C_Q Q_W; H_vis = C_H H_W; eta_vis = C_eta eta_W; P_vis = rho g Q_vis H_vis/eta_vis
 *   Must hold of speed: the specific speed n Q^0.5/H^0.75 (1/min, m3/s, m a stage) must not exceed 60: the method is for
 *                       impellers of radial type
 *   Must hold of viscosity: the viscosity parameter B must stay below 40: beyond it the correction is too uncertain
 *   Must hold of flow: it must not exceed 1.5 times the best efficiency flow: the method is for the normal operating
 *                      range
 *   Must hold of efficiency: it must not exceed the best efficiency
 *   Must hold of viscosity: the liquid must not be thinner than the water of the pump's test: no correction is needed
 *                           then
 *   Must hold of best_efficiency: the method's formula for B up to 1 leaves no efficiency with so low a best efficiency
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature); this edition only
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow. Later editions of ANSI/HI 9.6.7 are reported to go
 *            up to 4000 mm2/s and a specific speed of 58 (3000 in US units); they were not read.
 *   Caution: The standard's constants for m3/h and for US gal/min differ by 0.4 %: the metric one is used, whatever unit
 *            the input came in.
 *   Caution: The method's two branches do not join: above B = 1 the efficiency ratio begins again at 1, higher by (1 -
 *            eta_BEP)((nu/nu_W)^0.07 - 1)/eta_BEP, which is 3 % at eta_BEP 0.8 and 5 mm2/s, 17 % at 0.5 and 10 mm2/s.
 *            Near B = 1 take near_one as safe, which is never above the standard's value.
 *   Caution: Losses of seals, bearings and magnetic couplings rise with viscosity too and are not in it; check NPSH on
 *            the viscous liquid.
 */
CUTWATER_API cutwater_status cutwater_viscous_performance(double flow_m3h, double head_m, double efficiency,
                                             double best_efficiency_flow_m3h, double best_efficiency_head_m,
                                             double best_efficiency, double speed_rpm, double viscosity_mm2s,
                                             double density_kgm3, double water_viscosity_mm2s, const char *near_one,
                                             double *viscous_flow_m3h, double *viscous_head_m,
                                             double *viscous_efficiency, double *power_kW, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_viscous_performance_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                  cutwater_column efficiency,
                                                  cutwater_column best_efficiency_flow_m3h,
                                                  cutwater_column best_efficiency_head_m,
                                                  cutwater_column best_efficiency, cutwater_column speed_rpm,
                                                  cutwater_column viscosity_mm2s, cutwater_column density_kgm3,
                                                  cutwater_column water_viscosity_mm2s, const char *near_one,
                                                  cutwater_result_column viscous_flow_m3h,
                                                  cutwater_result_column viscous_head_m,
                                                  cutwater_result_column viscous_efficiency,
                                                  cutwater_result_column power_kW, cutwater_rows_report *report);

/*
 * Flow and head on water to choose a pump by, for a duty on a viscous liquid.
 *
 *   flow_m3h                     flow wanted of the viscous liquid; above 0 up to 10000000 m3/h
 *   head_m                       head wanted of the viscous liquid, of one stage; above 0 up to 20000 m
 *   viscosity_mm2s               kinematic viscosity at pumping temperature; below 1 mm2/s nothing is to be corrected,
 *                                above 3000 mm2/s the method does not hold; from 1 to 3000 mm2/s
 *   -> water_flow_m3h            flow to look for on the curve on water
 *   -> water_head_m              head to look for on the curve on water, of one stage
 *
 *   Equation: Q_W = Q_vis/C_Q; H_W = H_vis/C_H; C_Q = C_H = 2.71^(-0.165 (log10 B)^3.15), B from
 *             viscosity_parameter_from_duty
 *   Must hold of viscosity: the viscosity parameter B must stay below 40: beyond it the correction is too uncertain
 *   Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its
 *           two worked examples as reproduced in public literature); this edition only
 *   Caution: A first choice only: check the pump found with viscous_performance at its own best efficiency point and
 *            speed.
 *   Caution: The viscosity correction is an empirical average of tests: single pumps may depart from it by several per
 *            cent.
 *   Caution: Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less
 *            certain outside; not for slurries, axial or mixed flow. Later editions of ANSI/HI 9.6.7 are reported to go
 *            up to 4000 mm2/s and a specific speed of 58 (3000 in US units); they were not read.
 *   Caution: The standard's constants for m3/h and for US gal/min differ by 0.4 %: the metric one is used, whatever unit
 *            the input came in.
 */
CUTWATER_API cutwater_status cutwater_water_equivalent_duty(double flow_m3h, double head_m, double viscosity_mm2s,
                                               double *water_flow_m3h, double *water_head_m,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_water_equivalent_duty_rows(size_t rows, cutwater_column flow_m3h, cutwater_column head_m,
                                                    cutwater_column viscosity_mm2s,
                                                    cutwater_result_column water_flow_m3h,
                                                    cutwater_result_column water_head_m, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

/* generated from the catalogue by cutwater-generate; do not edit. */
/* Solids-bearing liquids. */
#ifndef CUTWATER_FAMILIES_SOLIDS_H
#define CUTWATER_FAMILIES_SOLIDS_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Head of a pump in metres of slurry over its head in metres of water at the same flow.
 *
 *   solids_mass_fraction         mass of solids over mass of slurry; from 0 to 0.65
 *   solids_relative_density      density of the solids over that of the liquid; above 1 up to 6.3
 *   median_size_mm               size that half of the solids' mass lies below; above 0 up to 20 mm
 *   impeller_diameter_mm         diameter of the impeller; Engin and Gur's tests had 150 to 850 mm; from 50 to 850 mm
 *   correlation                  whose correlation to use; "Engin and Gur" or "Cave"; "Engin and Gur" if left out
 *   -> head_ratio                head on slurry over head on water
 *
 *   Equation: 1 - K; Engin and Gur: K = 2.705 C_w (s - 1)^0.64 (d50/D)^0.313; Cave: K = 0.0385 (s - 1)(1 + 4/s) C_w
 *             ln(d50/0.0227 mm)
 *   Must hold of median_size: Cave's correlation begins at 0.0227 mm: finer solids do not settle and act as a thicker
 *                             liquid
 *   Must hold of impeller_diameter: Engin and Gur's correlation begins at 150 mm: for a smaller impeller take Cave's,
 *                                   which knows no pump size, or the pump maker's tests on slurry
 *   Must hold of solids_mass_fraction: more than 60 % would be lost, outside anything that was tested
 *   Source: T. Engin and M. Gur, J. Fluids Eng. 125 (2003) 149-157 (abstract read, formula from memory); I. Cave,
 *           Hydrotransport 4, BHRA 1976, paper H3 (from memory)
 *   Caution: Settling, narrowly graded solids in a thin liquid only; Engin and Gur report a mean deviation of 8 % of the
 *            head ratio and 12 % of the efficiency ratio. Not for pastes, clays or fibres.
 *   Caution: Cave's correlation knows no pump size and gives too much loss for large pumps: with sand of 2.2 mm and 35 %
 *            by volume in an impeller of 625 mm it takes off 43 %, Engin and Gur 37 %, where up to 30 % was measured (A.
 *            Sellgren et al. 2000, excerpt read). Small pumps lose more than large ones: below 150 mm take it as the
 *            least to expect.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_slurry_head_ratio(double solids_mass_fraction, double solids_relative_density,
                                           double median_size_mm, double impeller_diameter_mm,
                                           const char *correlation, double *head_ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_slurry_head_ratio_rows(size_t rows, cutwater_column solids_mass_fraction,
                                                cutwater_column solids_relative_density,
                                                cutwater_column median_size_mm, cutwater_column impeller_diameter_mm,
                                                const char *correlation, cutwater_result_column head_ratio,
                                                cutwater_rows_report *report);

/*
 * Efficiency of a pump on slurry over its efficiency on water; both authors take the head ratio for it.
 *
 *   solids_mass_fraction         mass of solids over mass of slurry; from 0 to 0.65
 *   solids_relative_density      density of the solids over that of the liquid; above 1 up to 6.3
 *   median_size_mm               size that half of the solids' mass lies below; above 0 up to 20 mm
 *   impeller_diameter_mm         diameter of the impeller; Engin and Gur's tests had 150 to 850 mm; from 50 to 850 mm
 *   correlation                  whose correlation to use; "Engin and Gur" or "Cave"; "Engin and Gur" if left out
 *   -> efficiency_ratio          efficiency on slurry over efficiency on water
 *
 *   Equation: 1 - K; Engin and Gur: K = 2.705 C_w (s - 1)^0.64 (d50/D)^0.313; Cave: K = 0.0385 (s - 1)(1 + 4/s) C_w
 *             ln(d50/0.0227 mm)
 *   Must hold of median_size: Cave's correlation begins at 0.0227 mm: finer solids do not settle and act as a thicker
 *                             liquid
 *   Must hold of impeller_diameter: Engin and Gur's correlation begins at 150 mm: for a smaller impeller take Cave's,
 *                                   which knows no pump size, or the pump maker's tests on slurry
 *   Must hold of solids_mass_fraction: more than 60 % would be lost, outside anything that was tested
 *   Source: T. Engin and M. Gur, J. Fluids Eng. 125 (2003) 149-157 (abstract read, formula from memory); I. Cave,
 *           Hydrotransport 4, BHRA 1976, paper H3 (from memory)
 *   Caution: Settling, narrowly graded solids in a thin liquid only; Engin and Gur report a mean deviation of 8 % of the
 *            head ratio and 12 % of the efficiency ratio. Not for pastes, clays or fibres.
 *   Caution: Cave's correlation knows no pump size and gives too much loss for large pumps: with sand of 2.2 mm and 35 %
 *            by volume in an impeller of 625 mm it takes off 43 %, Engin and Gur 37 %, where up to 30 % was measured (A.
 *            Sellgren et al. 2000, excerpt read). Small pumps lose more than large ones: below 150 mm take it as the
 *            least to expect.
 *   Caution: Impellers above about 0.4 m usually lose less efficiency than head; above about 20 % by volume efficiency
 *            may fall more than head (common practice; a handbook read in excerpt).
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_slurry_efficiency_ratio(double solids_mass_fraction, double solids_relative_density,
                                                 double median_size_mm, double impeller_diameter_mm,
                                                 const char *correlation, double *efficiency_ratio,
                                                 cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_slurry_efficiency_ratio_rows(size_t rows, cutwater_column solids_mass_fraction,
                                                      cutwater_column solids_relative_density,
                                                      cutwater_column median_size_mm,
                                                      cutwater_column impeller_diameter_mm, const char *correlation,
                                                      cutwater_result_column efficiency_ratio,
                                                      cutwater_rows_report *report);

/*
 * Power, head and efficiency of a pump on slurry, from a point of its curve on water.
 *
 *   flow_m3h                     flow of the slurry; above 0 m3/h
 *   water_head_m                 head on water at that flow; above 0 m
 *   water_efficiency             efficiency on water at that flow; above 0 up to 1
 *   slurry_density_kgm3          density of the slurry; from 50 to 25000 kg/m3
 *   head_ratio                   as from slurry_head_ratio; above 0 up to 1
 *   efficiency_ratio             as from slurry_efficiency_ratio; above 0 up to 1
 *   -> power_kW                  pump power input
 *   -> slurry_head_m             head in metres of slurry
 *   -> slurry_efficiency         efficiency on slurry
 *
 *   Equation: H_m = HR H_w; eta_m = ER eta_w; P = rho_m g Q H_m/eta_m
 *   Source: ISO 17769-1:2012, pump power input (from memory of it), with the ratios put in
 *   Caution: The head is in metres of slurry: do not multiply it by the relative density again.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_slurry_power(double flow_m3h, double water_head_m, double water_efficiency,
                                      double slurry_density_kgm3, double head_ratio, double efficiency_ratio,
                                      double *power_kW, double *slurry_head_m, double *slurry_efficiency,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_slurry_power_rows(size_t rows, cutwater_column flow_m3h, cutwater_column water_head_m,
                                           cutwater_column water_efficiency, cutwater_column slurry_density_kgm3,
                                           cutwater_column head_ratio, cutwater_column efficiency_ratio,
                                           cutwater_result_column power_kW, cutwater_result_column slurry_head_m,
                                           cutwater_result_column slurry_efficiency, cutwater_rows_report *report);

/*
 * Curves of head and efficiency on a slurry, from those on water.
 *
 *   flows_m3h                    flows of the points on water; a series of at least 2 points, rising; each at least 0
 *                                m3/h
 *   heads_m                      heads of the points on water; a series of at least 2 points; each a finite number in m
 *   efficiencies                 efficiencies of the points on water; a series of at least 2 points; each from 0 to 1
 *   head_ratio                   as from slurry_head_ratio, or from the pump maker's tests; above 0 up to 1
 *   efficiency_ratio             as from slurry_efficiency_ratio, or from the pump maker's tests; above 0 up to 1
 *   -> slurry_flows_m3h          flows of the points on the slurry: those on water
 *   -> slurry_heads_m            heads in metres of slurry
 *   -> slurry_efficiencies       efficiencies on the slurry
 *
 *   Equation: Q = Q; H_m = HR H_w; eta_m = ER eta_w
 *   Must hold of heads: both series must have the same number of points
 *   Must hold of efficiencies: both series must have the same number of points
 *   Source: definition of the head and efficiency ratios at equal flow and speed, ANSI/HI 12.1-12.6 (from memory of it);
 *           the same at every flow: common practice
 *   Caution: The head is in metres of slurry: do not multiply it by the relative density again.
 *   Caution: One pair of ratios for the whole curve is a simplification: at small flows the loss may be greater. NPSH3
 *            on the slurry is not found here; it is no less than on water.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_curve_slurry(const double *flows_m3h, size_t flows_m3h_count, const double *heads_m,
                                      size_t heads_m_count, const double *efficiencies, size_t efficiencies_count,
                                      double head_ratio, double efficiency_ratio, double *slurry_flows_m3h,
                                      size_t slurry_flows_m3h_capacity, size_t *slurry_flows_m3h_count,
                                      double *slurry_heads_m, size_t slurry_heads_m_capacity,
                                      size_t *slurry_heads_m_count, double *slurry_efficiencies,
                                      size_t slurry_efficiencies_capacity, size_t *slurry_efficiencies_count,
                                      cutwater_refusal *refusal);

/*
 * Velocity at which a single sphere sinks in still liquid.
 *
 *   particle_size_mm             diameter of the sphere; above 0 up to 1000 mm
 *   solids_density_kgm3          density of the solids; from 50 to 25000 kg/m3
 *   liquid_density_kgm3          density of the liquid; from 50 to 25000 kg/m3
 *   dynamic_viscosity_mPas       dynamic viscosity of the liquid; above 0 mPa s
 *   -> velocity_ms               velocity of sinking, alone and far from walls
 *   -> reynolds_number           Reynolds number of the sphere
 *   -> drag_coefficient          drag coefficient of the sphere
 *
 *   Equation: w = sqrt(4 g d (rho_s - rho_l)/(3 C_D rho_l)), C_D = 24/Re (1 + 0.1806 Re^0.6459) + 0.4251/(1 +
 *             6880.95/Re)
 *   Must hold of solids_density: the solids must be denser than the liquid, or they float
 *   Source: A. Haider and O. Levenspiel, Powder Technology 58 (1989) 63-70 (from memory of it; coefficients agree with
 *           the open-source library fluids 1.0.22)
 *   Caution: Grains that are no spheres sink more slowly, and all do in company: see hindered_settling_velocity.
 */
CUTWATER_API cutwater_status cutwater_settling_velocity(double particle_size_mm, double solids_density_kgm3,
                                           double liquid_density_kgm3, double dynamic_viscosity_mPas,
                                           double *velocity_ms, double *reynolds_number, double *drag_coefficient,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_settling_velocity_rows(size_t rows, cutwater_column particle_size_mm,
                                                cutwater_column solids_density_kgm3,
                                                cutwater_column liquid_density_kgm3,
                                                cutwater_column dynamic_viscosity_mPas,
                                                cutwater_result_column velocity_ms,
                                                cutwater_result_column reynolds_number,
                                                cutwater_result_column drag_coefficient, cutwater_rows_report *report);

/*
 * Velocity at which solids sink among each other.
 *
 *   settling_velocity_ms         velocity of one alone, as from settling_velocity; at least 0 m/s
 *   volume_fraction              volume of solids over volume of slurry; from 0 to 0.4
 *   reynolds_number              Reynolds number of one alone; from 0 to 260000
 *   -> velocity_ms               velocity of sinking in company
 *
 *   Equation: w_h = w (1 - C_v)^m, m = (4.7 + 0.41 Re^0.75)/(1 + 0.175 Re^0.75)
 *   Source: J. F. Richardson and W. N. Zaki 1954, exponent by P. N. Rowe, Chem. Eng. Sci. 42 (1987) 2795 (from memory of
 *           both)
 *   Caution: For solids of one size, far from walls; fine or flocculating ones sink otherwise.
 */
CUTWATER_API cutwater_status cutwater_hindered_settling_velocity(double settling_velocity_ms, double volume_fraction,
                                                    double reynolds_number, double *velocity_ms,
                                                    cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_hindered_settling_velocity_rows(size_t rows, cutwater_column settling_velocity_ms,
                                                         cutwater_column volume_fraction,
                                                         cutwater_column reynolds_number,
                                                         cutwater_result_column velocity_ms,
                                                         cutwater_rows_report *report);

/*
 * Mean velocity in a horizontal pipe below which solids settle out.
 *
 *   pipe_bore_mm                 inside diameter of the pipe; from 25 to 1000 mm
 *   solids_relative_density      density of the solids over that of the liquid; above 1 up to 8
 *   volume_fraction              volume of solids over volume of slurry; from 0.005 to 0.4
 *   median_size_mm               size that half of the solids' mass lies below; finer ones hardly settle; from 0.05 to
 *                                10 mm
 *   durand_factor                Durand's factor for sqrt(2 g D (s - 1)); 0: by the fit of Schiller and Herbich; from 0
 *                                to 2; 0 if left out
 *   -> velocity_ms               deposition velocity
 *   -> factor                    Durand's factor as used
 *
 *   Equation: V_D = F_L sqrt(2 g D (s - 1)), F_L = 1.3 C_v^0.125 (1 - e^(-6.9 d50/mm))
 *   Must hold of durand_factor: it must be 0, for the fit, or from 0.1 up
 *   Source: R. Durand and E. Condolios 1952; F_L by R. E. Schiller and P. E. Herbich, Handbook of Dredging Engineering,
 *           1991 (as reproduced in a public program, checked against B. E. Abulnaga, Slurry Systems Handbook, 2002,
 *           example 4-2)
 *   Caution: Keep the line above it by a margin, commonly 0.3 m/s or 10 to 20 %; for narrow grading in a horizontal
 *            pipe.
 *   Caution: The fit lies below Durand's own chart, whose factor for coarse sand of one size reaches 1.34 (from memory
 *            of it): give that factor to be safe.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_deposition_velocity(double pipe_bore_mm, double solids_relative_density,
                                             double volume_fraction, double median_size_mm, double durand_factor,
                                             double *velocity_ms, double *factor, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_deposition_velocity_rows(size_t rows, cutwater_column pipe_bore_mm,
                                                  cutwater_column solids_relative_density,
                                                  cutwater_column volume_fraction, cutwater_column median_size_mm,
                                                  cutwater_column durand_factor, cutwater_result_column velocity_ms,
                                                  cutwater_result_column factor, cutwater_rows_report *report);

/*
 * Friction of a settling slurry in a horizontal pipe, by Durand and Condolios.
 *
 *   flow_m3h                     flow of the slurry, liquid and solids together; above 0 m3/h
 *   pipe_bore_mm                 inside diameter of the pipe; from 20 to 600 mm
 *   length_m                     length of horizontal pipe; at least 0 m
 *   roughness_mm                 roughness of the wall; settling slurry polishes steel: 0.05 at most is usual; at least
 *                                0 mm
 *   liquid_viscosity_mm2s        kinematic viscosity of the liquid that carries the solids; from 0.01 to 1000000 mm2/s
 *   liquid_density_kgm3          density of the liquid that carries the solids; from 50 to 25000 kg/m3
 *   solids_density_kgm3          density of the solids; from 50 to 25000 kg/m3
 *   volume_fraction              volume of solids over volume of slurry, as delivered: see slurry_volume_fraction; from
 *                                0 to 0.35
 *   drag_coefficient             drag coefficient of a grain that sinks in the still liquid: see settling_velocity; from
 *                                0.3 to 200
 *   durand_constant              150, the safe side, goes with C_D and Durand's sands; later authors print 81 or 82 with
 *                                the same C_D; from 60 to 200; 150 if left out
 *   -> friction_head_m           head lost, in metres of slurry
 *   -> liquid_head_m             the same loss in metres of the liquid
 *   -> pressure_drop_bar         the same loss as a pressure
 *   -> gradient_ratio            loss over that of the liquid alone
 *   -> velocity_ms               mean velocity
 *   -> regime                    heterogeneous, where the relation holds; saltation: the solids leap along the bottom
 *                                and the result is only a guess; pseudo-homogeneous: the solids are carried evenly, and
 *                                the loss of a liquid as heavy as the slurry is given
 *
 *   Equation: h = h_l max(1 + K C_v psi^-1.5, rho_m/rho_l), psi = v^2 sqrt(C_D)/(g D (s - 1)), s = rho_s/rho_l; h_l by
 *             Darcy-Weisbach for the liquid alone; h_m = h rho_l/rho_m; saltation below v_s = sqrt(40 g D C_v (s -
 *             1)/sqrt(C_D))
 *   Must hold of solids_density: the solids must be denser than the liquid, or they float
 *   Must hold of roughness: the roughness must be at most 0.05 of the bore, the end of the method's range
 *   Must hold of flow: the liquid's Reynolds number in the pipe must be 4000 to 1e9: settling solids are carried by
 *                      turbulence
 *   Must hold of flow: the mean velocity must be 0.6 to 6 m/s, as in Durand's tests
 *   Source: R. Durand and E. Condolios 1952 (from memory of it; its range, bore 20 to 600 mm, grains 0.1 to 25 mm, 0.6
 *           to 6 m/s, read in excerpt). K = 150 and v_s: J. S. Arora's slurry pipeline exercise as an open solution
 *           codes it (read); Durand's own 180 for sand, with V^2 sqrt(C_x)/(g D), C_x = g d/w^2, comes to 153 in C_D and
 *           s - 1 (by hand); 82 in another open code (read), 81 and 82 of I. Zandi and of E. J. Wasp (from memory); the
 *           floor rho_m/rho_l: the model of an equivalent liquid (common practice; the greatest loss in the homogeneous
 *           part of an open dredging code, read)
 *   Caution: 81 or 82 in place of 150 lowers what the solids add by nearly half: choose it only with tests of your
 *            slurry.
 *   Caution: Fast or with fine solids the relation by itself goes down to the loss of the liquid alone. A liquid as
 *            heavy as the slurry loses rho_m/rho_l of that, and no less is answered here: fine solids come near it, very
 *            coarse ones may lose a little less.
 *   Caution: Keep the velocity above deposition_velocity with a margin: below it solids lie on the bottom, no relation
 *            of this kind holds and the line may plug.
 *   Caution: Horizontal pipe, narrowly graded solids in a Newtonian liquid. Upright pipes, pastes, clays and solids
 *            finer than about 0.05 mm need another method: the finest thicken the liquid instead, see
 *            suspension_viscosity. Such relations scatter by tens of per cent: for a line that matters take tests of the
 *            very slurry.
 *   Caution: The pump's curve asks for metres of slurry; in metres of the liquid the same pressure is more.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_slurry_pipe_friction(double flow_m3h, double pipe_bore_mm, double length_m,
                                              double roughness_mm, double liquid_viscosity_mm2s,
                                              double liquid_density_kgm3, double solids_density_kgm3,
                                              double volume_fraction, double drag_coefficient, double durand_constant,
                                              double *friction_head_m, double *liquid_head_m,
                                              double *pressure_drop_bar, double *gradient_ratio, double *velocity_ms,
                                              const char **regime, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_slurry_pipe_friction_rows(size_t rows, cutwater_column flow_m3h,
                                                   cutwater_column pipe_bore_mm, cutwater_column length_m,
                                                   cutwater_column roughness_mm,
                                                   cutwater_column liquid_viscosity_mm2s,
                                                   cutwater_column liquid_density_kgm3,
                                                   cutwater_column solids_density_kgm3,
                                                   cutwater_column volume_fraction, cutwater_column drag_coefficient,
                                                   cutwater_column durand_constant,
                                                   cutwater_result_column friction_head_m,
                                                   cutwater_result_column liquid_head_m,
                                                   cutwater_result_column pressure_drop_bar,
                                                   cutwater_result_column gradient_ratio,
                                                   cutwater_result_column velocity_ms, cutwater_result_column regime,
                                                   cutwater_rows_report *report);

/*
 * Friction of a settling slurry in a horizontal pipe, from the velocity at which half of the solids are carried by
 * turbulence.
 *
 *   flow_m3h                     flow of the slurry, liquid and solids together; above 0 m3/h
 *   pipe_bore_mm                 inside diameter of the pipe; from 50 to 1000 mm
 *   length_m                     length of horizontal pipe; above 0 m
 *   roughness_mm                 roughness of the wall; settling slurry polishes steel: 0.05 at most is usual; at least
 *                                0 mm
 *   liquid_viscosity_mm2s        kinematic viscosity of the liquid that carries the solids; from 0.01 to 1000000 mm2/s
 *   liquid_density_kgm3          density of the liquid that carries the solids; from 50 to 25000 kg/m3
 *   solids_density_kgm3          density of the solids; from 50 to 25000 kg/m3
 *   volume_fraction              volume of solids over volume of slurry, as delivered: see slurry_volume_fraction; from
 *                                0 to 0.35
 *   half_carried_velocity_ms     velocity at which turbulence carries half of the solids and the pipe's bottom the other
 *                                half: from tests, or as the source estimates it; from 0.1 to 20 m/s
 *   exponent                     1.7 for narrow grading, less for wide grading, never below 0.25; from 0.25 to 1.7
 *   added_gradient               gradient that the solids add there, over C_v (s - 1): half of the sliding friction;
 *                                from 0.1 to 0.3; 0.22 if left out
 *   -> friction_head_m           head lost, in metres of slurry
 *   -> liquid_head_m             the same loss in metres of the liquid
 *   -> pressure_drop_bar         the same loss as a pressure
 *   -> gradient_ratio            loss over that of the liquid alone
 *   -> velocity_ms               mean velocity
 *
 *   Equation: h = max[h_l + L (mu_s/2) C_v (s - 1)(V_50/v)^M, h_l rho_m/rho_l], s = rho_s/rho_l; h_l by Darcy-Weisbach
 *             for the liquid alone; h_m = h rho_l/rho_m
 *   Must hold of solids_density: the solids must be denser than the liquid, or they float
 *   Must hold of roughness: the roughness must be at most 0.05 of the bore, the end of the method's range
 *   Must hold of flow: the liquid's Reynolds number in the pipe must be 4000 to 1e9: settling solids are carried by
 *                      turbulence
 *   Source: K. C. Wilson, G. R. Addie, A. Sellgren and R. Clift, Slurry Transport Using Centrifugal Pumps (not read;
 *           relation and 0.22 in a pump handbook's slurry chapter, excerpt read; case study 6.1 as an open code tests
 *           against it, read); the floor: see slurry_pipe_friction
 *   Caution: V_50 estimated by formula and not tested carries all the uncertainty of the answer.
 *   Caution: Fast or with fine solids the relation by itself goes down to the loss of the liquid alone. A liquid as
 *            heavy as the slurry loses rho_m/rho_l of that, and no less is answered here: fine solids come near it, very
 *            coarse ones may lose a little less.
 *   Caution: Keep the velocity above deposition_velocity with a margin: below it solids lie on the bottom, no relation
 *            of this kind holds and the line may plug.
 *   Caution: Horizontal pipe, narrowly graded solids in a Newtonian liquid. Upright pipes, pastes, clays and solids
 *            finer than about 0.05 mm need another method: the finest thicken the liquid instead, see
 *            suspension_viscosity. Such relations scatter by tens of per cent: for a line that matters take tests of the
 *            very slurry.
 *   Caution: The pump's curve asks for metres of slurry; in metres of the liquid the same pressure is more.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_slurry_friction_from_v50(double flow_m3h, double pipe_bore_mm, double length_m,
                                                  double roughness_mm, double liquid_viscosity_mm2s,
                                                  double liquid_density_kgm3, double solids_density_kgm3,
                                                  double volume_fraction, double half_carried_velocity_ms,
                                                  double exponent, double added_gradient, double *friction_head_m,
                                                  double *liquid_head_m, double *pressure_drop_bar,
                                                  double *gradient_ratio, double *velocity_ms,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_slurry_friction_from_v50_rows(size_t rows, cutwater_column flow_m3h,
                                                       cutwater_column pipe_bore_mm, cutwater_column length_m,
                                                       cutwater_column roughness_mm,
                                                       cutwater_column liquid_viscosity_mm2s,
                                                       cutwater_column liquid_density_kgm3,
                                                       cutwater_column solids_density_kgm3,
                                                       cutwater_column volume_fraction,
                                                       cutwater_column half_carried_velocity_ms,
                                                       cutwater_column exponent, cutwater_column added_gradient,
                                                       cutwater_result_column friction_head_m,
                                                       cutwater_result_column liquid_head_m,
                                                       cutwater_result_column pressure_drop_bar,
                                                       cutwater_result_column gradient_ratio,
                                                       cutwater_result_column velocity_ms,
                                                       cutwater_rows_report *report);

/*
 * Life against erosion at another speed, over the life now.
 *
 *   speed_ratio                  new speed over the speed now; from 0.2 to 2
 *   exponent                     power of the velocity that wear goes with; 2 to 3.5 reported, 2.5 to 3 common practice;
 *                                from 1 to 5; 2.5 if left out
 *   -> life_ratio                life at the new speed over the life now
 *
 *   Equation: L'/L = (n'/n)^-x
 *   Source: erosive wear goes with a power of velocity, W. Wiedenroth 1984 (as quoted in trade literature, excerpt
 *           read); common practice
 *   Caution: Same pump, slurry and place on the curve. The exponent decides: take it from your own wear records where
 *            you can.
 */
CUTWATER_API cutwater_status cutwater_wear_life_ratio(double speed_ratio, double exponent, double *life_ratio,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_wear_life_ratio_rows(size_t rows, cutwater_column speed_ratio, cutwater_column exponent,
                                              cutwater_result_column life_ratio, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

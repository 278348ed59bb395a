/* generated from the catalogue by cutwater-generate; do not edit. */
/* Pipes, fittings and tanks. */
#ifndef CUTWATER_FAMILIES_PIPING_H
#define CUTWATER_FAMILIES_PIPING_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Static head of a system from the levels and pressures of its two vessels.
 *
 *   suction_level_m              surface in the suction vessel above any datum; a finite number in m
 *   discharge_level_m            surface in the discharge vessel above the same datum; of a line that ends above the
 *                                surface, its outlet; a finite number in m
 *   suction_surface_pressure_bara pressure on the surface in the suction vessel; from 0 to 500 bara
 *   discharge_surface_pressure_bara pressure on the surface in the discharge vessel; from 0 to 500 bara
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   -> static_head_m             head at no flow; negative: the liquid flows by itself
 *
 *   Equation: H_s = z_2 - z_1 + (p_2 - p_1)/(rho g)
 *   Source: Bernoulli's equation between two surfaces at rest; Hydraulic Institute, Engineering Data Book, system curves
 *           (public text read)
 *   Caution: Take the lowest suction level and the highest discharge level for the greatest head, and the reverse for
 *            the least: a pump must suit both.
 *   Caution: A siphon's crest may ask for more head while the line is filled than afterwards.
 */
CUTWATER_API cutwater_status cutwater_static_head_from_levels(double suction_level_m, double discharge_level_m,
                                                 double suction_surface_pressure_bara,
                                                 double discharge_surface_pressure_bara, double density_kgm3,
                                                 double *static_head_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_static_head_from_levels_rows(size_t rows, cutwater_column suction_level_m,
                                                      cutwater_column discharge_level_m,
                                                      cutwater_column suction_surface_pressure_bara,
                                                      cutwater_column discharge_surface_pressure_bara,
                                                      cutwater_column density_kgm3,
                                                      cutwater_result_column static_head_m,
                                                      cutwater_rows_report *report);

/*
 * Inside diameter of a steel pipe by its nominal size and schedule.
 *
 *   nominal_diameter             nominal size DN: 100 for NPS 4, 50 for NPS 2, 25 for NPS 1; a whole number from 6 to
 *                                1200
 *   schedule                     schedule or weight class; with S for stainless steel; "5", "10", "20", "30", "40",
 *                                "60", "80", "100", "120", "140", "160", "STD", "XS", "XXS", "5S", "10S", "40S" or
 *                                "80S"; "40" if left out
 *   -> bore_mm                   inside diameter of the nominal wall
 *   -> outside_diameter_mm       outside diameter
 *   -> wall_mm                   nominal wall
 *
 *   Equation: d = D - 2 t
 *   Source: ASME B36.10M and B36.19M dimensions (as the open library fluids 1.0.22 carries them, read)
 *   Caution: Mill tolerance on the wall is 12.5 %: a bore may be larger or smaller. Lined, plastic and metric (EN 10220)
 *            pipes are other pipes.
 */
CUTWATER_API cutwater_status cutwater_nominal_pipe_bore(double nominal_diameter, const char *schedule, double *bore_mm,
                                           double *outside_diameter_mm, double *wall_mm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_nominal_pipe_bore_rows(size_t rows, cutwater_column nominal_diameter, const char *schedule,
                                                cutwater_result_column bore_mm,
                                                cutwater_result_column outside_diameter_mm,
                                                cutwater_result_column wall_mm, cutwater_rows_report *report);

/*
 * Loss coefficient of a fitting or valve by the method of two constants, laminar flow included.
 *
 *   fitting                      kind of fitting or valve, fully open; "90 deg elbow, standard, screwed", "90 deg elbow,
 *                                standard, flanged or welded", "90 deg elbow, long radius", "90 deg mitre, one weld",
 *                                "90 deg mitre, three welds", "45 deg elbow, standard", "45 deg elbow, long radius",
 *                                "180 deg return, standard, flanged or welded", "180 deg return, long radius", "tee,
 *                                run, screwed", "tee, run, flanged or welded", "tee, branch, flanged or welded", "tee,
 *                                branch, stub-in", "gate valve", "ball valve, reduced bore", "plug valve, reduced bore",
 *                                "globe valve", "angle or Y valve", "diaphragm valve, weir", "butterfly valve", "lift
 *                                check valve", "swing check valve" or "tilting-disc check valve"
 *   reynolds_number              Reynolds number on the fitting's bore; from 1 to 1000000000
 *   bore_mm                      inside diameter; from 10 to 2000 mm
 *   -> loss_coefficient          times the velocity head gives the head lost
 *
 *   Equation: K = K_1/Re + K_inf (1 + 1/d), d in inches
 *   Source: W. B. Hooper, Chem. Eng. 88 (1981) no. 17, 96-100 (constants as the open library fluids 1.0.22 carries them,
 *           read)
 *   Caution: Loss coefficients of one kind of fitting scatter by 25 to 50 % from maker to maker.
 *   Caution: The coefficient goes with the velocity head in the fitting's own bore: of another bore it must be turned by
 *            the fourth power of the ratio of bores.
 */
CUTWATER_API cutwater_status cutwater_fitting_loss_coefficient(const char *fitting, double reynolds_number, double bore_mm,
                                                  double *loss_coefficient, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_fitting_loss_coefficient_rows(size_t rows, const char *fitting,
                                                       cutwater_column reynolds_number, cutwater_column bore_mm,
                                                       cutwater_result_column loss_coefficient,
                                                       cutwater_rows_report *report);

/*
 * Loss coefficient of a fitting or valve by the method of three constants, which follows the size better.
 *
 *   fitting                      kind of fitting or valve, fully open; "90 deg elbow, standard, screwed", "90 deg elbow,
 *                                long radius, screwed", "90 deg elbow, standard, flanged or welded", "90 deg bend,
 *                                radius 2 diameters", "90 deg bend, radius 4 diameters", "90 deg bend, radius 6
 *                                diameters", "90 deg mitre, one weld", "90 deg mitre, two welds", "90 deg mitre, three
 *                                welds", "45 deg elbow, standard", "45 deg elbow, long radius", "180 deg return,
 *                                standard, screwed", "180 deg return, standard, flanged or welded", "180 deg return,
 *                                long radius", "tee, branch, flanged or welded", "tee, branch, screwed", "tee, branch,
 *                                stub-in", "tee, run, screwed", "tee, run, flanged or welded", "angle valve, 45 deg",
 *                                "angle valve, 90 deg", "globe valve", "plug valve, straight through", "plug valve,
 *                                branch", "gate valve", "ball valve, full bore", "diaphragm valve, weir", "swing check
 *                                valve" or "lift check valve"
 *   reynolds_number              Reynolds number on the fitting's bore; from 1 to 1000000000
 *   nominal_diameter             nominal size DN: 100 for NPS 4, 50 for NPS 2, 25 for NPS 1; a whole number from 15 to
 *                                1200
 *   -> loss_coefficient          times the velocity head gives the head lost
 *
 *   Equation: K = K_m/Re + K_i (1 + K_d/D_n^0.3), D_n the NPS of that DN, in inches
 *   Source: R. Darby, Chem. Eng. 108 (2001) no. 4, 127-130 (constants as the open library fluids 1.0.22 carries them,
 *           read)
 *   Caution: Loss coefficients of one kind of fitting scatter by 25 to 50 % from maker to maker.
 *   Caution: The coefficient goes with the velocity head in the fitting's own bore: of another bore it must be turned by
 *            the fourth power of the ratio of bores.
 */
CUTWATER_API cutwater_status cutwater_fitting_loss_coefficient_by_size(const char *fitting, double reynolds_number,
                                                          double nominal_diameter, double *loss_coefficient,
                                                          cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_fitting_loss_coefficient_by_size_rows(size_t rows, const char *fitting,
                                                               cutwater_column reynolds_number,
                                                               cutwater_column nominal_diameter,
                                                               cutwater_result_column loss_coefficient,
                                                               cutwater_rows_report *report);

/*
 * Loss coefficient of a pipe's entrance flush with the vessel's wall, sharp or rounded.
 *
 *   bore_mm                      inside diameter of the pipe; from 1 to 10000 mm
 *   rounding_radius_mm           radius of the entrance's edge; 0 for a sharp one; at least 0 mm; 0 if left out
 *   -> loss_coefficient          times the velocity head in the pipe gives the head lost
 *
 *   Equation: K = 0.0696 (1 - 0.569 r/d) x^2 + (x - 1)^2, x = 1 + 0.622 (1 - 0.30 sqrt(r/d) - 0.70 r/d)^4; r/d at most 1
 *   Source: D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012 (as the open library fluids 1.0.22 carries it, read)
 *   Caution: For turbulent flow, Re above about 10 000; in laminar flow the losses are larger.
 *   Caution: A strainer or foot valve comes on top. Handbooks give 0.5 for a sharp edge: this is a little more.
 */
CUTWATER_API cutwater_status cutwater_entrance_loss_coefficient(double bore_mm, double rounding_radius_mm,
                                                   double *loss_coefficient, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_entrance_loss_coefficient_rows(size_t rows, cutwater_column bore_mm,
                                                        cutwater_column rounding_radius_mm,
                                                        cutwater_result_column loss_coefficient,
                                                        cutwater_rows_report *report);

/*
 * Loss coefficient of a pipe's entrance that projects into the vessel.
 *
 *   bore_mm                      inside diameter of the pipe; from 1 to 10000 mm
 *   wall_mm                      thickness of the pipe's edge; at least 0 mm
 *   -> loss_coefficient          times the velocity head in the pipe gives the head lost
 *
 *   Equation: K = 1.12 - 22 t/d + 216 (t/d)^2 + 80 (t/d)^3; t/d at most 0.05
 *   Source: D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012 (as the open library fluids 1.0.22 carries it, read)
 *   Caution: For turbulent flow, Re above about 10 000; in laminar flow the losses are larger.
 */
CUTWATER_API cutwater_status cutwater_projecting_entrance_loss_coefficient(double bore_mm, double wall_mm,
                                                              double *loss_coefficient, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_projecting_entrance_loss_coefficient_rows(size_t rows, cutwater_column bore_mm,
                                                                   cutwater_column wall_mm,
                                                                   cutwater_result_column loss_coefficient,
                                                                   cutwater_rows_report *report);

/*
 * Loss coefficient of a sudden enlargement of the bore.
 *
 *   bore_mm                      inside diameter before it; from 1 to 10000 mm
 *   larger_bore_mm               inside diameter after it; from 1 to 10000 mm
 *   -> loss_coefficient          times the velocity head in the smaller bore gives the head lost
 *
 *   Equation: K = (1 - (d_1/d_2)^2)^2
 *   Must hold of larger_bore: the bore after an enlargement must not be smaller than before
 *   Source: Borda and Carnot, momentum balance, any textbook of hydraulics; the open library fluids 1.0.22 agrees
 *   Caution: For turbulent flow, Re above about 10 000; in laminar flow the losses are larger.
 *   Caution: A pipe's exit into a vessel loses the whole velocity head: K = 1.
 */
CUTWATER_API cutwater_status cutwater_enlargement_loss_coefficient(double bore_mm, double larger_bore_mm, double *loss_coefficient,
                                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_enlargement_loss_coefficient_rows(size_t rows, cutwater_column bore_mm,
                                                           cutwater_column larger_bore_mm,
                                                           cutwater_result_column loss_coefficient,
                                                           cutwater_rows_report *report);

/*
 * Loss coefficient of a sudden contraction of the bore.
 *
 *   larger_bore_mm               inside diameter before it; from 1 to 10000 mm
 *   bore_mm                      inside diameter after it; from 1 to 10000 mm
 *   -> loss_coefficient          times the velocity head in the smaller bore gives the head lost
 *
 *   Equation: K = 0.0696 (1 - b^5) x^2 + (x - 1)^2, x = 1 + 0.622 (1 - 0.215 b^2 - 0.785 b^5), b = d_2/d_1
 *   Must hold of bore: the bore after a contraction must not be larger than before
 *   Source: D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012 (as the open library fluids 1.0.22 carries it, read)
 *   Caution: For turbulent flow, Re above about 10 000; in laminar flow the losses are larger.
 *   Caution: A tapered reducer loses less.
 */
CUTWATER_API cutwater_status cutwater_contraction_loss_coefficient(double larger_bore_mm, double bore_mm, double *loss_coefficient,
                                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_contraction_loss_coefficient_rows(size_t rows, cutwater_column larger_bore_mm,
                                                           cutwater_column bore_mm,
                                                           cutwater_result_column loss_coefficient,
                                                           cutwater_rows_report *report);

/*
 * Loss coefficient that goes with the velocity head in another bore.
 *
 *   loss_coefficient             loss coefficient on the velocity head in its own bore; at least 0
 *   bore_mm                      the bore that it goes with; from 1 to 10000 mm
 *   other_bore_mm                the bore to turn it to; from 1 to 10000 mm
 *   -> other_loss_coefficient    loss coefficient on the velocity head in the other bore
 *
 *   Equation: K' = K (d'/d)^4
 *   Source: continuity: the same head lost, the same flow
 */
CUTWATER_API cutwater_status cutwater_loss_coefficient_at_bore(double loss_coefficient, double bore_mm, double other_bore_mm,
                                                  double *other_loss_coefficient, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_loss_coefficient_at_bore_rows(size_t rows, cutwater_column loss_coefficient,
                                                       cutwater_column bore_mm, cutwater_column other_bore_mm,
                                                       cutwater_result_column other_loss_coefficient,
                                                       cutwater_rows_report *report);

/*
 * Head lost by friction of cold water in a pipe by the formula of Hazen and Williams.
 *
 *   flow_m3h                     volume flow of water; at least 0 m3/h
 *   bore_mm                      inside diameter; from 50 to 3000 mm
 *   length_m                     length of the pipe; at least 0 m
 *   roughness_coefficient        150 smooth plastic, 140 new steel or cement lining, 130 new cast iron, 100 old iron
 *                                (common practice); from 60 to 160
 *   -> friction_head_m           head lost
 *
 *   Equation: h_f = 10.6668 L (Q/C)^1.852/d^4.871 with Q in m3/s, L and d in m
 *   Must hold of flow: the velocity must not exceed 3 m/s, the end of the formula's use
 *   Source: G. S. Williams and A. Hazen, Hydraulic Tables, with the constants of the open network library WNTR and
 *           EPANET (read); textbooks print 10.67 and 4.87, up to 0.3 % apart
 *   Caution: Water of about 5 to 25 degC only, turbulent, at ordinary velocities: other liquids, hot or viscous, need
 *            pipe_friction_head.
 */
CUTWATER_API cutwater_status cutwater_hazen_williams_head(double flow_m3h, double bore_mm, double length_m,
                                             double roughness_coefficient, double *friction_head_m,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_hazen_williams_head_rows(size_t rows, cutwater_column flow_m3h, cutwater_column bore_mm,
                                                  cutwater_column length_m, cutwater_column roughness_coefficient,
                                                  cutwater_result_column friction_head_m,
                                                  cutwater_rows_report *report);

/*
 * Time in which an upright open tank empties by gravity from one level to another.
 *
 *   surface_m2                   surface of the liquid, the same at every level; above 0 m2
 *   first_level_m                level above the outlet at the beginning; at least 0 m
 *   last_level_m                 level above the outlet at the end; at least 0 m
 *   outlet_bore_mm               bore of the outlet; from 1 to 10000 mm
 *   discharge_coefficient        of outlet and line: about 0.6 for a sharp-edged hole; with a line of loss coefficients
 *                                K in all, 1/sqrt(1 + K); above 0 up to 1
 *   -> time_s                    time taken
 *
 *   Equation: t = A/(C a) sqrt(2/g) (sqrt(z_1) - sqrt(z_2)), a = pi/4 d^2
 *   Must hold of last_level: the tank empties: the last level must not be above the first
 *   Source: Torricelli's law integrated over the level, any textbook of hydraulics
 *   Caution: A wide tank whose surface moves slowly; a vortex at the outlet draws air and slows the flow.
 *   Caution: Both surfaces are at the same pressure: a closed tank without a vent stops, or is crushed.
 */
CUTWATER_API cutwater_status cutwater_tank_discharge_time(double surface_m2, double first_level_m, double last_level_m,
                                             double outlet_bore_mm, double discharge_coefficient, double *time_s,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_tank_discharge_time_rows(size_t rows, cutwater_column surface_m2,
                                                  cutwater_column first_level_m, cutwater_column last_level_m,
                                                  cutwater_column outlet_bore_mm,
                                                  cutwater_column discharge_coefficient,
                                                  cutwater_result_column time_s, cutwater_rows_report *report);

/*
 * Time in which a volume fills, or empties, by steady flows in and out.
 *
 *   volume_m3                    volume to fill; at least 0 m3
 *   inflow_m3h                   flow in; at least 0 m3/h
 *   outflow_m3h                  flow out at the same time; at least 0 m3/h; 0 if left out
 *   -> time_min                  time taken
 *
 *   Equation: t = V/(Q_in - Q_out)
 *   Must hold of inflow: more must flow in than out
 *   Source: volume balance
 *   Caution: Leave room for the liquid's expansion and for the time in which the level switch and the valve act.
 */
CUTWATER_API cutwater_status cutwater_filling_time(double volume_m3, double inflow_m3h, double outflow_m3h, double *time_min,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_filling_time_rows(size_t rows, cutwater_column volume_m3, cutwater_column inflow_m3h,
                                           cutwater_column outflow_m3h, cutwater_result_column time_min,
                                           cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

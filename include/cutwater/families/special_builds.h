/* generated from the catalogue by cutwater-generate; do not edit. */
/* Vertical, self-priming, recessed and close-coupled pumps. */
#ifndef CUTWATER_FAMILIES_SPECIAL_BUILDS_H
#define CUTWATER_FAMILIES_SPECIAL_BUILDS_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * How much the line shaft of a vertical pump stretches under hydraulic thrust and weight.
 *
 *   thrust_N                     hydraulic thrust downwards; at least 0 N
 *   impeller_mass_kg             impellers and what else hangs at the lower end; at least 0 kg
 *   length_m                     length of the shaft from thrust bearing to impeller; above 0 up to 500 m
 *   shaft_diameter_mm            diameter of the solid shaft; from 1 to 1000 mm
 *   modulus_GPa                  elastic modulus: steel 206, austenitic steel 195, titanium 105; above 0 up to 1000 GPa;
 *                                206 if left out
 *   metal_density_kgm3           density of its metal; 0 leaves its own weight out; from 0 to 25000 kg/m3; 7850 if left
 *                                out
 *   -> stretch_mm                lengthening of the shaft
 *
 *   Equation: dl = (F + m g + W_s/2) L/(A E), A = pi d^2/4, W_s = rho_s g A L
 *   Source: Hooke's law, the bar's own weight counted half; the line-shaft relation without weights as published for
 *           vertical turbine pumps (elongation = head x setting x thrust factor/(area x 29e6 psi), read)
 *   Caution: Heat lengthens shaft and column too, unlike when their materials or temperatures differ. Set the lift as
 *            the pump maker says, running loads and all.
 *   Caution: At closed valve the thrust is greatest; in run-out it may turn upwards.
 */
CUTWATER_API cutwater_status cutwater_line_shaft_stretch(double thrust_N, double impeller_mass_kg, double length_m,
                                            double shaft_diameter_mm, double modulus_GPa, double metal_density_kgm3,
                                            double *stretch_mm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_line_shaft_stretch_rows(size_t rows, cutwater_column thrust_N,
                                                 cutwater_column impeller_mass_kg, cutwater_column length_m,
                                                 cutwater_column shaft_diameter_mm, cutwater_column modulus_GPa,
                                                 cutwater_column metal_density_kgm3,
                                                 cutwater_result_column stretch_mm, cutwater_rows_report *report);

/*
 * How much the column pipe of a vertical pump stretches under the liquid and what hangs from it.
 *
 *   load_N                       what hangs at the lower end: bowls or casing, their liquid, and discharge pressure
 *                                times the bore's area where it pulls; at least 0 N
 *   length_m                     length of the column; above 0 up to 500 m
 *   outside_diameter_mm          outside diameter of the column; from 1 to 10000 mm
 *   wall_mm                      wall of the column; above 0 mm
 *   modulus_GPa                  elastic modulus: steel 206, austenitic steel 195, titanium 105; above 0 up to 1000 GPa;
 *                                206 if left out
 *   metal_density_kgm3           density of its metal; 0 leaves its own weight out; from 0 to 25000 kg/m3; 7850 if left
 *                                out
 *   -> stretch_mm                lengthening of the column
 *
 *   Equation: dl = (F + W_c/2) L/(A E), A = pi (D^2 - (D - 2 w)^2)/4, W_c = rho_s g A L
 *   Must hold of wall: it must be at most half the outside diameter
 *   Source: Hooke's law, the bar's own weight counted half; the line-shaft relation without weights as published for
 *           vertical turbine pumps (elongation = head x setting x thrust factor/(area x 29e6 psi), read)
 *   Caution: Heat lengthens shaft and column too, unlike when their materials or temperatures differ. Set the lift as
 *            the pump maker says, running loads and all.
 *   Caution: For line_shaft_clearance only what comes after the lift was set counts: metal_density 0, and of the load
 *            liquid and pressure alone.
 */
CUTWATER_API cutwater_status cutwater_column_stretch(double load_N, double length_m, double outside_diameter_mm, double wall_mm,
                                        double modulus_GPa, double metal_density_kgm3, double *stretch_mm,
                                        cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_column_stretch_rows(size_t rows, cutwater_column load_N, cutwater_column length_m,
                                             cutwater_column outside_diameter_mm, cutwater_column wall_mm,
                                             cutwater_column modulus_GPa, cutwater_column metal_density_kgm3,
                                             cutwater_result_column stretch_mm, cutwater_rows_report *report);

/*
 * Clearance that a lifted impeller keeps below it once the shaft has stretched.
 *
 *   lift_mm                      height that the impeller was raised from its lowest place, unloaded; at least 0 mm
 *   shaft_stretch_mm             as from line_shaft_stretch; at least 0 mm
 *   column_stretch_mm            only what comes after the lift was set: liquid and discharge pressure, as from
 *                                column_stretch with metal_density 0 and no hanging weight; 0 is the safe side; at least
 *                                0 mm; 0 if left out
 *   differential_expansion_mm    by how much more heat lengthens the shaft than the column; a finite number in mm; 0 if
 *                                left out
 *   -> verdict                   clear, or touches when nothing is left
 *   -> clearance_mm              clearance left under load; negative: it rubs
 *
 *   Equation: s = s_0 - (dl_s - dl_c) - dl_t
 *   Source: geometry
 *   Caution: Heat lengthens shaft and column too, unlike when their materials or temperatures differ. Set the lift as
 *            the pump maker says, running loads and all.
 *   Caution: The weight of column and bowls has stretched the column before the lift is set: never credit it.
 *   Caution: Check the way up too: upthrust at run-out and at start must not lift the impeller into the casing.
 */
CUTWATER_API cutwater_status cutwater_line_shaft_clearance(double lift_mm, double shaft_stretch_mm, double column_stretch_mm,
                                              double differential_expansion_mm, const char **verdict,
                                              double *clearance_mm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_line_shaft_clearance_rows(size_t rows, cutwater_column lift_mm,
                                                   cutwater_column shaft_stretch_mm,
                                                   cutwater_column column_stretch_mm,
                                                   cutwater_column differential_expansion_mm,
                                                   cutwater_result_column verdict,
                                                   cutwater_result_column clearance_mm, cutwater_rows_report *report);

/*
 * First bending critical speed of a line shaft between two guide bearings.
 *
 *   span_mm                      distance between guide bearings; from 50 to 20000 mm
 *   shaft_diameter_mm            diameter of the solid shaft; from 1 to 1000 mm
 *   liquid_density_kgm3          density of the liquid round the shaft, which moves with it; 0 for a shaft in air; the
 *                                oil's in a full tube; from 0 to 25000 kg/m3
 *   modulus_GPa                  elastic modulus: steel 206, austenitic steel 195, titanium 105; above 0 up to 1000 GPa;
 *                                206 if left out
 *   metal_density_kgm3           density of the shaft; from 500 to 25000 kg/m3; 7850 if left out
 *   tension_N                    pull in the shaft; at least 0 N; 0 if left out
 *   -> critical_speed_rpm        first critical speed
 *
 *   Equation: n_c = (pi/(2 l^2)) sqrt(E I/((rho_s + rho_l) A)) sqrt(1 + F l^2/(pi^2 E I)), in revolutions
 *   Source: beam on pinned supports under tension: W. Thomson, Theory of Vibration with Applications; S. Timoshenko,
 *           Vibration Problems in Engineering (from memory of both), checked against a finite-element computation; added
 *           mass of a cylinder in wide liquid: 1 (same)
 *   Caution: Real bearings hold the shaft stiffer than pins while new, softer when worn; a narrow column raises the
 *            liquid's added mass; whirl in worn or dry guide bearings is another thing.
 *   Caution: Keep the first critical at least 10 to 30 % above the greatest speed: see standard_limit.
 */
CUTWATER_API cutwater_status cutwater_line_shaft_critical_speed(double span_mm, double shaft_diameter_mm,
                                                   double liquid_density_kgm3, double modulus_GPa,
                                                   double metal_density_kgm3, double tension_N,
                                                   double *critical_speed_rpm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_line_shaft_critical_speed_rows(size_t rows, cutwater_column span_mm,
                                                        cutwater_column shaft_diameter_mm,
                                                        cutwater_column liquid_density_kgm3,
                                                        cutwater_column modulus_GPa,
                                                        cutwater_column metal_density_kgm3, cutwater_column tension_N,
                                                        cutwater_result_column critical_speed_rpm,
                                                        cutwater_rows_report *report);

/*
 * Greatest distance between guide bearings that keeps a line shaft's critical speed above its own.
 *
 *   speed_rpm                    greatest speed; above 0 up to 100000 1/min
 *   separation                   critical speed over greatest speed; 1.1 to 1.3 is asked for; from 1 to 5
 *   shaft_diameter_mm            diameter of the solid shaft; from 1 to 1000 mm
 *   liquid_density_kgm3          density of the liquid round the shaft, which moves with it; 0 for a shaft in air; the
 *                                oil's in a full tube; from 0 to 25000 kg/m3
 *   modulus_GPa                  elastic modulus: steel 206, austenitic steel 195, titanium 105; above 0 up to 1000 GPa;
 *                                206 if left out
 *   metal_density_kgm3           density of the shaft; from 500 to 25000 kg/m3; 7850 if left out
 *   -> span_mm                   greatest distance between guide bearings
 *
 *   Equation: l = sqrt((pi/2) sqrt(E I/((rho_s + rho_l) A))/(n n_c/n)), the tension left out
 *   Source: beam on pinned supports under tension: W. Thomson, Theory of Vibration with Applications; S. Timoshenko,
 *           Vibration Problems in Engineering (from memory of both), checked against a finite-element computation; added
 *           mass of a cylinder in wide liquid: 1 (same)
 *   Caution: Real bearings hold the shaft stiffer than pins while new, softer when worn; a narrow column raises the
 *            liquid's added mass; whirl in worn or dry guide bearings is another thing.
 *   Caution: ISO 13709 gives a largest spacing by diameter and speed in a figure that could not be read: the lesser of
 *            both counts.
 */
CUTWATER_API cutwater_status cutwater_line_shaft_bearing_span(double speed_rpm, double separation, double shaft_diameter_mm,
                                                 double liquid_density_kgm3, double modulus_GPa,
                                                 double metal_density_kgm3, double *span_mm,
                                                 cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_line_shaft_bearing_span_rows(size_t rows, cutwater_column speed_rpm,
                                                      cutwater_column separation, cutwater_column shaft_diameter_mm,
                                                      cutwater_column liquid_density_kgm3,
                                                      cutwater_column modulus_GPa, cutwater_column metal_density_kgm3,
                                                      cutwater_result_column span_mm, cutwater_rows_report *report);

/*
 * Pressure at the inlet of a submerged pump.
 *
 *   surface_pressure_bara        absolute pressure on the liquid in the sump; above 0 up to 500 bara
 *   submergence_m                lowest level above the inlet datum of the first impeller; at least 0 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   losses_m                     losses of strainer, bell and tail pipe; at least 0 m; 0 if left out
 *   -> inlet_pressure_bara       total absolute pressure at the datum, velocity head included
 *
 *   Equation: p_1 = p_s + rho g (h - h_f)
 *   Must hold of losses: the losses are more than the pressure at the inlet: no liquid can flow so
 *   Source: hydrostatics
 *   Caution: Against boiling hold it by npsh_available; against vortices by minimum_submergence: a low sump fails by air
 *            before it fails by pressure.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_pressure_at_inlet(double surface_pressure_bara, double submergence_m, double density_kgm3,
                                           double losses_m, double *inlet_pressure_bara, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pressure_at_inlet_rows(size_t rows, cutwater_column surface_pressure_bara,
                                                cutwater_column submergence_m, cutwater_column density_kgm3,
                                                cutwater_column losses_m, cutwater_result_column inlet_pressure_bara,
                                                cutwater_rows_report *report);

/*
 * Greatest height to which a self-priming unit can draw the liquid up.
 *
 *   surface_pressure_bara        absolute pressure on the liquid; above 0 up to 500 bara
 *   vapour_pressure_bara         vapour pressure at the liquid's temperature; from 0 to 300 bara
 *   attainable_vacuum_bar        pressure below the surface's that the unit reaches with air, closed suction; from the
 *                                pump maker's test; from 0 to 1.1 bar
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   margin_m                     kept back for leaks, foam and wear; at least 0 m; 0.5 if left out
 *   -> lift_m                    greatest height of the highest point of the suction above the liquid; negative: none
 *   -> lift_by_vacuum_m          what the vacuum could hold
 *   -> lift_by_vapour_m          where the liquid would boil
 *
 *   Equation: L = min(dp_v, p_s - p_v)/(rho g) - m
 *   Must hold of vapour_pressure: the vapour pressure must be at most the surface pressure: the liquid would boil at its
 *                                 surface
 *   Source: hydrostatics; common practice. No published derating could be read
 *   Caution: While it primes it moves air only: the discharge must be open to let the air out and hold no column of
 *            liquid on the check valve; the casing must keep its charge; foam and leaks stop it.
 *   Caution: Drawing up is not pumping: at the duty the lift must also leave NPSH3 and a margin, see
 *            greatest_suction_lift. The time it takes: see priming_time.
 *   Caution: A hot or volatile charge reaches less than the cold test: take off its vapour pressure less that of the
 *            test's liquid.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_self_priming_lift(double surface_pressure_bara, double vapour_pressure_bara,
                                           double attainable_vacuum_bar, double density_kgm3, double margin_m,
                                           double *lift_m, double *lift_by_vacuum_m, double *lift_by_vapour_m,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_self_priming_lift_rows(size_t rows, cutwater_column surface_pressure_bara,
                                                cutwater_column vapour_pressure_bara,
                                                cutwater_column attainable_vacuum_bar, cutwater_column density_kgm3,
                                                cutwater_column margin_m, cutwater_result_column lift_m,
                                                cutwater_result_column lift_by_vacuum_m,
                                                cutwater_result_column lift_by_vapour_m, cutwater_rows_report *report);

/*
 * Impeller diameter, tip speed and power from a tested head coefficient and efficiency, for builds without a rule of
 * their own such as recessed impellers.
 *
 *   flow_m3h                     flow; above 0 m3/h
 *   head_m                       head of one stage; above 0 m
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   head_coefficient             g H/u2^2 of the same build at the same flow coefficient, from a test; from 0.05 to 1.2
 *   efficiency                   efficiency of the same build there, from a test; above 0 up to 1
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; 998.2 if left out
 *   -> diameter_mm               impeller outside diameter
 *   -> tip_speed_ms              its peripheral speed
 *   -> power_kW                  pump power input
 *
 *   Equation: u_2 = sqrt(g H/psi), D = u_2/(pi n), P = rho g Q H/eta
 *   Source: definition of the head coefficient as in head_coefficient; no citable correlation for recessed impellers
 *           could be read, so both coefficients are inputs
 *   Caution: Coefficients of a build hold for geometrically similar pumps at one flow coefficient alone. Fibres and
 *            solids change them: rankings in clean water do not carry over.
 *   Caution: Some books define psi with a factor of 2.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_impeller_from_coefficients(double flow_m3h, double head_m, double speed_rpm,
                                                    double head_coefficient, double efficiency, double density_kgm3,
                                                    double *diameter_mm, double *tip_speed_ms, double *power_kW,
                                                    cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_impeller_from_coefficients_rows(size_t rows, cutwater_column flow_m3h,
                                                         cutwater_column head_m, cutwater_column speed_rpm,
                                                         cutwater_column head_coefficient, cutwater_column efficiency,
                                                         cutwater_column density_kgm3,
                                                         cutwater_result_column diameter_mm,
                                                         cutwater_result_column tip_speed_ms,
                                                         cutwater_result_column power_kW,
                                                         cutwater_rows_report *report);

/*
 * How hot a shaft still is at its far end, where a close-coupled motor's bearing sits, and the heat that goes along it.
 *
 *   hot_temperature_degC         temperature at the hot end: the liquid at the seal; from -200 to 1000 degC
 *   ambient_temperature_degC     temperature of the air round the shaft; from -60 to 100 degC
 *   diameter_mm                  diameter of the shaft; from 1 to 1000 mm
 *   length_mm                    length of shaft in the air between them; above 0 up to 10000 mm
 *   conductivity_WmK             of the shaft: austenitic and duplex steel 15, 13 % chromium steel 25 to 30, carbon
 *                                steel 50; from 0.1 to 500 W/(m K)
 *   surface_coefficient_Wm2K     heat given to the air: a turning shaft 20 to 60 (judgement), a standing one 10; above 0
 *                                up to 1000 W/(m2 K); 10 if left out
 *   -> end_temperature_degC      temperature of the far end, which gives off no heat itself: the safe side
 *   -> heat_W                    heat that leaves the hot end along the shaft
 *
 *   Equation: T_L = T_a + (T_0 - T_a)/cosh(m L), Q = sqrt(h pi d k pi d^2/4)(T_0 - T_a) tanh(m L), m = sqrt(4 h/(k d))
 *   Source: rod with an insulated end: F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer, table
 *           3.4 case B (from memory of it); a textbook example of it in an open Python companion read whole
 *   Caution: The adapter carries heat too, often more than the shaft, and seal and bearing make their own: the motor
 *            maker's limits of ambient and bearing temperature stand.
 *   Caution: Close-coupled motors take the pump's thrust and radial load on their own bearings.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_shaft_end_temperature(double hot_temperature_degC, double ambient_temperature_degC,
                                               double diameter_mm, double length_mm, double conductivity_WmK,
                                               double surface_coefficient_Wm2K, double *end_temperature_degC,
                                               double *heat_W, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shaft_end_temperature_rows(size_t rows, cutwater_column hot_temperature_degC,
                                                    cutwater_column ambient_temperature_degC,
                                                    cutwater_column diameter_mm, cutwater_column length_mm,
                                                    cutwater_column conductivity_WmK,
                                                    cutwater_column surface_coefficient_Wm2K,
                                                    cutwater_result_column end_temperature_degC,
                                                    cutwater_result_column heat_W, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

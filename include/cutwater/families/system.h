/* generated from the catalogue by cutwater-generate; do not edit. */
/* System and suction. */
#ifndef CUTWATER_FAMILIES_SYSTEM_H
#define CUTWATER_FAMILIES_SYSTEM_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Mean velocity in a full round pipe.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   bore_mm                      inside diameter, not the nominal size; from 1 to 10000 mm
 *   -> velocity_ms               mean velocity
 *
 *   Equation: v = Q/(pi/4 d^2)
 *   Source: continuity; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_pipe_velocity(double flow_m3h, double bore_mm, double *velocity_ms,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pipe_velocity_rows(size_t rows, cutwater_column flow_m3h, cutwater_column bore_mm,
                                            cutwater_result_column velocity_ms, cutwater_rows_report *report);

/*
 * Bore at which a flow has a given mean velocity.
 *
 *   flow_m3h                     volume flow; above 0 m3/h
 *   velocity_ms                  mean velocity wished for; above 0 m/s
 *   -> bore_mm                   inside diameter; take the next larger pipe
 *
 *   Equation: d = sqrt(Q/(pi/4 v))
 *   Source: continuity; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_bore_for_velocity(double flow_m3h, double velocity_ms, double *bore_mm,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_bore_for_velocity_rows(size_t rows, cutwater_column flow_m3h, cutwater_column velocity_ms,
                                                cutwater_result_column bore_mm, cutwater_rows_report *report);

/*
 * Head of the liquid's kinetic energy at its mean velocity in a pipe.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   bore_mm                      inside diameter, not the nominal size; from 1 to 10000 mm
 *   -> velocity_head_m           velocity head
 *
 *   Equation: h_v = v^2/(2 g), v = Q/(pi/4 d^2)
 *   Source: ISO 17769-1:2012, velocity head (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition
 *           (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_velocity_head(double flow_m3h, double bore_mm, double *velocity_head_m,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_velocity_head_rows(size_t rows, cutwater_column flow_m3h, cutwater_column bore_mm,
                                            cutwater_result_column velocity_head_m, cutwater_rows_report *report);

/*
 * Reynolds number of the flow in a full round pipe.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   bore_mm                      inside diameter, not the nominal size; from 1 to 10000 mm
 *   kinematic_viscosity_mm2s     kinematic viscosity at the temperature in the pipe; from 0.01 to 1000000 mm2/s
 *   -> reynolds_number           Reynolds number on the bore
 *
 *   Equation: Re = v d/nu, v = Q/(pi/4 d^2)
 *   Source: O. Reynolds (1883); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read)
 */
CUTWATER_API cutwater_status cutwater_reynolds_number(double flow_m3h, double bore_mm, double kinematic_viscosity_mm2s,
                                         double *reynolds_number, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_reynolds_number_rows(size_t rows, cutwater_column flow_m3h, cutwater_column bore_mm,
                                              cutwater_column kinematic_viscosity_mm2s,
                                              cutwater_result_column reynolds_number, cutwater_rows_report *report);

/*
 * Friction factor of a round pipe as Darcy defines it (four times Fanning's).
 *
 *   reynolds_number              Reynolds number on the bore; above 0 up to 1000000000
 *   roughness_mm                 roughness of the wall: new commercial steel 0.046, drawn tube and plastic 0.0015,
 *                                galvanised 0.15, cast iron 0.26; at least 0 mm
 *   bore_mm                      inside diameter, not the nominal size; from 1 to 10000 mm
 *   -> friction_factor           Darcy friction factor
 *
 *   Equation: Re <= 2000: f = 64/Re; above: 1/sqrt(f) = -2 log10(eps/(3.7 d) + 2.51/(Re sqrt(f)))
 *   Must hold of roughness: the roughness must be at most 0.05 of the bore, the end of the method's range
 *   Source: C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133 (from memory of it); Hydraulic Institute, Engineering Data
 *           Book, 2nd edition, Eq. 3.A.2 and 3.A.5, table of roughness and critical zone (excerpt read)
 *   Caution: Between Re 2000 and 4000 the flow may be laminar, turbulent or change between them: the factor returned
 *            there is the turbulent one, which is the higher. Just above Re 2000 it jumps.
 *   Caution: Friction factors of commercial pipe scatter by 10 to 15 %, and roughness grows with age: add a margin for
 *            an old or fouled line.
 */
CUTWATER_API cutwater_status cutwater_friction_factor(double reynolds_number, double roughness_mm, double bore_mm,
                                         double *friction_factor, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_friction_factor_rows(size_t rows, cutwater_column reynolds_number,
                                              cutwater_column roughness_mm, cutwater_column bore_mm,
                                              cutwater_result_column friction_factor, cutwater_rows_report *report);

/*
 * Head lost by friction in a straight round pipe.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   bore_mm                      inside diameter, not the nominal size; from 1 to 10000 mm
 *   length_m                     length of straight pipe; at least 0 m
 *   roughness_mm                 roughness of the wall: new commercial steel 0.046, drawn tube and plastic 0.0015,
 *                                galvanised 0.15, cast iron 0.26; at least 0 mm
 *   kinematic_viscosity_mm2s     kinematic viscosity at the temperature in the pipe; from 0.01 to 1000000 mm2/s
 *   -> friction_head_m           head lost, of the liquid that flows
 *
 *   Equation: h_f = f (L/d) v^2/(2 g); Re <= 2000: f = 64/Re; above: f by Colebrook-White
 *   Must hold of roughness: the roughness must be at most 0.05 of the bore, the end of the method's range
 *   Must hold of flow: the Reynolds number must be at most 1e9, the end of the method's range
 *   Source: Darcy and Weisbach; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.1 to 3.A.5 (excerpt
 *           read)
 *   Caution: Between Re 2000 and 4000 the flow may be laminar, turbulent or change between them: the factor returned
 *            there is the turbulent one, which is the higher. Just above Re 2000 it jumps.
 *   Caution: Friction factors of commercial pipe scatter by 10 to 15 %, and roughness grows with age: add a margin for
 *            an old or fouled line.
 */
CUTWATER_API cutwater_status cutwater_pipe_friction_head(double flow_m3h, double bore_mm, double length_m, double roughness_mm,
                                            double kinematic_viscosity_mm2s, double *friction_head_m,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pipe_friction_head_rows(size_t rows, cutwater_column flow_m3h, cutwater_column bore_mm,
                                                 cutwater_column length_m, cutwater_column roughness_mm,
                                                 cutwater_column kinematic_viscosity_mm2s,
                                                 cutwater_result_column friction_head_m, cutwater_rows_report *report);

/*
 * Head lost in fittings, from their loss coefficient.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   bore_mm                      the bore that the loss coefficient refers to; from 1 to 10000 mm
 *   loss_coefficient             loss coefficient, or the sum of several on one bore; at least 0
 *   -> head_loss_m               head lost, of the liquid that flows
 *
 *   Equation: h = K v^2/(2 g), v = Q/(pi/4 d^2)
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, losses of fittings (excerpt read)
 *   Caution: Loss coefficients hold for turbulent flow; in viscous liquid below about Re 2000 a fitting loses far more.
 */
CUTWATER_API cutwater_status cutwater_fitting_head(double flow_m3h, double bore_mm, double loss_coefficient, double *head_loss_m,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_fitting_head_rows(size_t rows, cutwater_column flow_m3h, cutwater_column bore_mm,
                                           cutwater_column loss_coefficient, cutwater_result_column head_loss_m,
                                           cutwater_rows_report *report);

/*
 * Head and pressure lost in a valve, from its flow coefficient.
 *
 *   flow_m3h                     volume flow; at least 0 m3/h
 *   flow_coefficient_Kv          flow coefficient of the valve at its opening; text may say 46 Cv; above 0 Kv
 *   relative_density             density of the liquid over that of water at 15 degC; from 0.05 to 25; 1 if left out
 *   -> head_loss_m               head lost, of the liquid that flows; the density cancels out of it
 *   -> pressure_loss_bar         pressure lost
 *
 *   Equation: dp = d (Q/Kv)^2 bar with Q in m3/h; h = dp/(d rho_0 g), rho_0 = 999.1 kg/m3
 *   Source: IEC 60534-2-1:2011, 7.1, turbulent incompressible flow, N1 = 1, no reducers (from memory of it); density of
 *           water at 15 degC: IAPWS-IF97
 *   Caution: Holds for turbulent flow that neither flashes nor chokes: the pressure loss must stay below the valve's
 *            limiting pressure drop (recovery factor F_L of the valve's maker).
 *   Caution: Reducers at the valve lower its flow coefficient.
 */
CUTWATER_API cutwater_status cutwater_valve_head_loss(double flow_m3h, double flow_coefficient_Kv, double relative_density,
                                         double *head_loss_m, double *pressure_loss_bar, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_valve_head_loss_rows(size_t rows, cutwater_column flow_m3h,
                                              cutwater_column flow_coefficient_Kv, cutwater_column relative_density,
                                              cutwater_result_column head_loss_m,
                                              cutwater_result_column pressure_loss_bar, cutwater_rows_report *report);

/*
 * Resistance of a system from its losses at one flow.
 *
 *   flow_m3h                     flow at which the losses are known; above 0 m3/h
 *   friction_head_m              all losses of pipes, fittings and equipment at that flow; at least 0 m
 *   -> resistance_h2m5           losses over the square of the flow
 *
 *   Equation: k = h_f/Q^2
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.7 and 1.A.8 (excerpt read)
 *   Caution: Losses grow with the square of the flow in turbulent flow only; in laminar flow they grow with the flow
 *            itself.
 */
CUTWATER_API cutwater_status cutwater_system_resistance(double flow_m3h, double friction_head_m, double *resistance_h2m5,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_system_resistance_rows(size_t rows, cutwater_column flow_m3h,
                                                cutwater_column friction_head_m,
                                                cutwater_result_column resistance_h2m5, cutwater_rows_report *report);

/*
 * Head that a system asks for at a flow.
 *
 *   static_head_m                head at no flow: difference of levels and of the vessels' pressures as head; negative
 *                                when it runs downhill; a finite number in m
 *   resistance_h2m5              losses over the square of the flow; from 0 to 1000000000 h2/m5
 *   flow_m3h                     flow through the system; at least 0 m3/h
 *   -> head_m                    system head
 *
 *   Equation: H = H_s + k Q^2
 *   Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.8 (excerpt read)
 *   Caution: Losses grow with the square of the flow in turbulent flow only; in laminar flow they grow with the flow
 *            itself.
 */
CUTWATER_API cutwater_status cutwater_system_head(double static_head_m, double resistance_h2m5, double flow_m3h, double *head_m,
                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_system_head_rows(size_t rows, cutwater_column static_head_m, cutwater_column resistance_h2m5,
                                          cutwater_column flow_m3h, cutwater_result_column head_m,
                                          cutwater_rows_report *report);

/*
 * Total head of a pump from its discharge and suction gauges.
 *
 *   discharge_pressure_barg      discharge gauge reading; above -1.1 up to 1000 barg
 *   suction_pressure_barg        suction gauge reading; negative for a vacuum; above -1.1 up to 500 barg
 *   discharge_gauge_elevation_m  centre of the discharge gauge above the datum; a finite number in m
 *   suction_gauge_elevation_m    centre of the suction gauge above the same datum; a finite number in m
 *   discharge_bore_mm            bore at the discharge tapping; from 1 to 10000 mm
 *   suction_bore_mm              bore at the suction tapping; from 1 to 10000 mm
 *   flow_m3h                     flow through both; at least 0 m3/h
 *   density_kgm3                 density of the liquid, the same in the gauge lines; from 50 to 25000 kg/m3
 *   -> total_head_m              pump total head between the tappings
 *
 *   Equation: H = (p_2 - p_1)/(rho g) + z_2 - z_1 + (v_2^2 - v_1^2)/(2 g)
 *   Source: ISO 9906:2012, pump total head (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition,
 *           Eq. 1.A.3 to 1.A.6 (excerpt read)
 *   Caution: Gauge lines must be full of the liquid; with an air-filled line take the tapping's elevation. Losses
 *            between tappings and flanges are to be added.
 */
CUTWATER_API cutwater_status cutwater_total_head_from_gauges(double discharge_pressure_barg, double suction_pressure_barg,
                                                double discharge_gauge_elevation_m, double suction_gauge_elevation_m,
                                                double discharge_bore_mm, double suction_bore_mm, double flow_m3h,
                                                double density_kgm3, double *total_head_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_total_head_from_gauges_rows(size_t rows, cutwater_column discharge_pressure_barg,
                                                     cutwater_column suction_pressure_barg,
                                                     cutwater_column discharge_gauge_elevation_m,
                                                     cutwater_column suction_gauge_elevation_m,
                                                     cutwater_column discharge_bore_mm,
                                                     cutwater_column suction_bore_mm, cutwater_column flow_m3h,
                                                     cutwater_column density_kgm3,
                                                     cutwater_result_column total_head_m,
                                                     cutwater_rows_report *report);

/*
 * Net positive suction head that the installation offers.
 *
 *   surface_pressure_bara        pressure on the liquid's surface in the suction vessel; above 0 up to 500 bara
 *   vapour_pressure_bara         vapour pressure at the temperature of the liquid at the inlet; from 0 to 300 bara
 *   density_kgm3                 density of the liquid at the same temperature; from 50 to 25000 kg/m3
 *   liquid_level_m               lowest surface above the pump's NPSH datum; negative for a lift; a finite number in m
 *   friction_head_m              losses of the suction line at the duty, its entry included; at least 0 m
 *   -> npsh_m                    net positive suction head available at the datum
 *
 *   Equation: NPSHA = (p_s - p_v)/(rho g) + z - h_f
 *   Must hold of vapour_pressure: the vapour pressure must be at most the surface pressure: the liquid would boil at its
 *                                 surface
 *   Source: ISO 17769-1:2012, net positive suction head and its datum; ANSI/HI 9.6.1-2012 (from memory of both);
 *           Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read)
 *   Caution: NPSH datum: the centre of the circle through the outermost points of the leading edges of the first-stage
 *            impeller's vanes. Measure elevations from there, or add the shift.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: A negative result is a true answer: the liquid boils before it reaches the pump, and nothing can be pumped
 *            as drawn.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_npsh_available(double surface_pressure_bara, double vapour_pressure_bara,
                                        double density_kgm3, double liquid_level_m, double friction_head_m,
                                        double *npsh_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh_available_rows(size_t rows, cutwater_column surface_pressure_bara,
                                             cutwater_column vapour_pressure_bara, cutwater_column density_kgm3,
                                             cutwater_column liquid_level_m, cutwater_column friction_head_m,
                                             cutwater_result_column npsh_m, cutwater_rows_report *report);

/*
 * Net positive suction head at the pump, from a suction gauge reading.
 *
 *   suction_pressure_barg        suction gauge reading; negative for a vacuum; above -1.1 up to 500 barg
 *   ambient_pressure_bara        barometric pressure at the gauge; from 0.3 to 2 bara
 *   gauge_elevation_m            centre of the gauge above the pump's NPSH datum; a finite number in m
 *   bore_mm                      inside diameter of the pipe at the gauge; from 1 to 10000 mm
 *   flow_m3h                     flow through that pipe; at least 0 m3/h
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   vapour_pressure_bara         vapour pressure at the temperature of the liquid at the inlet; from 0 to 300 bara
 *   -> npsh_m                    net positive suction head available at the datum
 *
 *   Equation: NPSHA = (p_1 + p_amb - p_v)/(rho g) + z_1 + v^2/(2 g)
 *   Must hold of suction_pressure: the gauge pressure and the ambient pressure must add up to an absolute pressure above
 *                                  0 bara
 *   Must hold of vapour_pressure: the vapour pressure must be at most the absolute pressure at the gauge: the liquid
 *                                 would boil there and the reading mean nothing
 *   Source: ISO 9906:2012, NPSH at the reference plane (from memory of it); Hydraulic Institute, Engineering Data Book,
 *           2nd edition, Eq. 1.D.6 (excerpt read)
 *   Caution: NPSH datum: the centre of the circle through the outermost points of the leading edges of the first-stage
 *            impeller's vanes. Measure elevations from there, or add the shift.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: A negative result is a true answer: the liquid boils before it reaches the pump, and nothing can be pumped
 *            as drawn.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_npsh_available_from_gauge(double suction_pressure_barg, double ambient_pressure_bara,
                                                   double gauge_elevation_m, double bore_mm, double flow_m3h,
                                                   double density_kgm3, double vapour_pressure_bara, double *npsh_m,
                                                   cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh_available_from_gauge_rows(size_t rows, cutwater_column suction_pressure_barg,
                                                        cutwater_column ambient_pressure_bara,
                                                        cutwater_column gauge_elevation_m, cutwater_column bore_mm,
                                                        cutwater_column flow_m3h, cutwater_column density_kgm3,
                                                        cutwater_column vapour_pressure_bara,
                                                        cutwater_result_column npsh_m, cutwater_rows_report *report);

/*
 * Net positive suction head, available or needed, referred to another height.
 *
 *   npsh_m                       available NPSH or NPSH3 at the first datum; a finite number in m
 *   datum_rise_m                 second datum above the first: half the inlet diameter from the ISO datum to the top of
 *                                the vanes of a horizontal pump; from -200 to 200 m
 *   -> npsh_at_new_datum_m       the same at the second datum
 *
 *   Equation: NPSH' = NPSH - dz
 *   Source: ISO 17769-1:2012, NPSH datum plane (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd
 *           edition, Eq. 1.D.6 (excerpt read), the level put from one height to another
 *   Caution: NPSH available and NPSH3 must stand at one datum before they are compared: bid sheets mix the shaft's
 *            centre line, the branch and the foundation.
 *   Caution: NPSH datum: the centre of the circle through the outermost points of the leading edges of the first-stage
 *            impeller's vanes. Measure elevations from there, or add the shift.
 */
CUTWATER_API cutwater_status cutwater_npsh_at_datum(double npsh_m, double datum_rise_m, double *npsh_at_new_datum_m,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh_at_datum_rows(size_t rows, cutwater_column npsh_m, cutwater_column datum_rise_m,
                                            cutwater_result_column npsh_at_new_datum_m, cutwater_rows_report *report);

/*
 * NPSH margin as a difference.
 *
 *   npsh_available_m             net positive suction head available; a finite number in m
 *   npsh3_m                      the pump's NPSH at 3 % head drop, at the same flow; above 0 m
 *   -> margin_m                  what is left above NPSH3; negative: too little
 *
 *   Equation: m = NPSHA - NPSH3
 *   Source: ANSI/HI 9.6.1-2012, NPSH margin (from memory of it)
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_npsh_margin(double npsh_available_m, double npsh3_m, double *margin_m,
                                     cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh_margin_rows(size_t rows, cutwater_column npsh_available_m, cutwater_column npsh3_m,
                                          cutwater_result_column margin_m, cutwater_rows_report *report);

/*
 * NPSH margin as a ratio.
 *
 *   npsh_available_m             net positive suction head available; a finite number in m
 *   npsh3_m                      the pump's NPSH at 3 % head drop, at the same flow; above 0 m
 *   -> margin_ratio              available over NPSH3; below 1: too little
 *
 *   Equation: ratio = NPSHA/NPSH3
 *   Source: ANSI/HI 9.6.1-2012, NPSH margin ratio (from memory of it)
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: The ratio to ask for grows with suction energy and by service, from about 1.1 to 2.5 and more (ANSI/HI
 *            9.6.1, from memory).
 */
CUTWATER_API cutwater_status cutwater_npsh_margin_ratio(double npsh_available_m, double npsh3_m, double *margin_ratio,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh_margin_ratio_rows(size_t rows, cutwater_column npsh_available_m,
                                                cutwater_column npsh3_m, cutwater_result_column margin_ratio,
                                                cutwater_rows_report *report);

/*
 * NPSH3 on a viscous liquid from NPSH3 on water, an estimate of the trend.
 *
 *   npsh3_m                      NPSH3 on water at the flow asked about; above 0 m
 *   best_efficiency_npsh3_m      NPSH3 on water at best efficiency; above 0 m
 *   head_ratio                   viscous over water head at best efficiency, from viscous_head_ratio; above 0.1 up to 1
 *   best_efficiency_flow_m3h     the pump's whole flow on water at best efficiency; above 0 m3/h
 *   speed_rpm                    speed of rotation; above 0 up to 100000 1/min
 *   inlet                        end suction: straight into the impeller, A = 0.1; side suction: turned before it, A =
 *                                0.5; "end suction" or "side suction"
 *   -> viscous_npsh3_m           NPSH3 on the viscous liquid, gas-free
 *
 *   Equation: NPSH3_vis = NPSH3_W (1 + A (1/C_H - 1) 274000 NPSH3_BEP/(Q_BEP^0.667 n^1.33)); m, m3/h, 1/min
 *   Source: ISO/TR 17766:2005 and ANSI/HI 9.6.7-2010, NPSH3 on viscous liquids (from memory of both; the metric constant
 *           agrees with the 225 000 of the US form within 0.3 %)
 *   Caution: Little test data lie behind this correction; dissolved or entrained gas raises the true need well above it.
 *   Caution: With a double-suction impeller it is doubtful whether the whole flow is meant; the whole flow is taken
 *            here.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 */
CUTWATER_API cutwater_status cutwater_npsh3_with_viscosity(double npsh3_m, double best_efficiency_npsh3_m, double head_ratio,
                                              double best_efficiency_flow_m3h, double speed_rpm, const char *inlet,
                                              double *viscous_npsh3_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_npsh3_with_viscosity_rows(size_t rows, cutwater_column npsh3_m,
                                                   cutwater_column best_efficiency_npsh3_m,
                                                   cutwater_column head_ratio,
                                                   cutwater_column best_efficiency_flow_m3h,
                                                   cutwater_column speed_rpm, const char *inlet,
                                                   cutwater_result_column viscous_npsh3_m,
                                                   cutwater_rows_report *report);

/*
 * Greatest height of a pump above the liquid that leaves NPSH3 and a margin.
 *
 *   surface_pressure_bara        pressure on the liquid's surface in the suction vessel; above 0 up to 500 bara
 *   vapour_pressure_bara         vapour pressure at the temperature of the liquid at the inlet; from 0 to 300 bara
 *   density_kgm3                 density of the liquid at the same temperature; from 50 to 25000 kg/m3
 *   friction_head_m              losses of the suction line at the duty, its entry included; at least 0 m
 *   npsh3_m                      the pump's NPSH at 3 % head drop, at the duty's flow; above 0 m
 *   margin_m                     NPSH to be left above NPSH3; at least 0 m
 *   -> lift_m                    NPSH datum above the lowest surface; negative: the pump must stand so far below it
 *
 *   Equation: z_max = (p_s - p_v)/(rho g) - h_f - NPSH3 - m
 *   Must hold of vapour_pressure: the vapour pressure must be at most the surface pressure: the liquid would boil at its
 *                                 surface
 *   Source: ISO 17769-1:2012, net positive suction head (from memory of it), solved for the level; Hydraulic Institute,
 *           Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read)
 *   Caution: NPSH datum: the centre of the circle through the outermost points of the leading edges of the first-stage
 *            impeller's vanes. Measure elevations from there, or add the shift.
 *   Caution: Take the vapour pressure at the highest temperature the liquid can have at the impeller's inlet, heating
 *            included.
 *   Caution: NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, larger for hot, gassy or
 *            high-energy suction, as agreed with the pump maker.
 *   Caution: A pump that is not self-priming must be primed before it can lift.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_greatest_suction_lift(double surface_pressure_bara, double vapour_pressure_bara,
                                               double density_kgm3, double friction_head_m, double npsh3_m,
                                               double margin_m, double *lift_m, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_greatest_suction_lift_rows(size_t rows, cutwater_column surface_pressure_bara,
                                                    cutwater_column vapour_pressure_bara,
                                                    cutwater_column density_kgm3, cutwater_column friction_head_m,
                                                    cutwater_column npsh3_m, cutwater_column margin_m,
                                                    cutwater_result_column lift_m, cutwater_rows_report *report);

/*
 * Least depth of an inlet below the surface, against vortices that draw air.
 *
 *   flow_m3h                     flow into the inlet; at least 0 m3/h
 *   inlet_diameter_mm            outside diameter of the bell, or inside diameter of a plain pipe's end; from 1 to 10000
 *                                mm
 *   -> submergence_m             lowest surface above the bell's lip or above the centre of a horizontal pipe's end
 *
 *   Equation: S = D (1 + 2.3 F_D), F_D = V/sqrt(g D), V = Q/(pi/4 D^2)
 *   Source: ANSI/HI 9.8, required submergence against vortices (from memory of it, after Hecker 1987); formula read in
 *           Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.E.1 and 1.E.2 (excerpt read)
 *   Caution: Look at the velocity V at the bell too, shown in the working: about 1.7 m/s is usual (ANSI/HI 9.8, from
 *            memory), 1.5 m/s a limit for wet wells (US Unified Facilities Criteria 4-832-01N, read). A bell too small
 *            wants more depth and still draws vortices.
 *   Caution: Holds for even approach flow; a poor sump draws vortices at any depth. NPSH may ask for more.
 */
CUTWATER_API cutwater_status cutwater_minimum_submergence(double flow_m3h, double inlet_diameter_mm, double *submergence_m,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_minimum_submergence_rows(size_t rows, cutwater_column flow_m3h,
                                                  cutwater_column inlet_diameter_mm,
                                                  cutwater_result_column submergence_m, cutwater_rows_report *report);

/*
 * Least sump volume between the start and stop levels of one pump.
 *
 *   flow_m3h                     the pump's flow; above 0 m3/h
 *   starts_perh                  starts that the motor and its gear allow in an hour; above 0 up to 60 1/h
 *   -> volume_m3                 volume between the start and stop levels
 *
 *   Equation: V = T Q/4, T = 1/Z; the shortest cycle comes at an inflow of Q/2
 *   Source: ANSI/HI 9.8, minimum sump volume of a constant-speed pump (from memory of it); the least of T = V/q + V/(Q -
 *           q) is at q = Q/2
 *   Caution: For one pump alone. Pumps that take turns may share it; pumps that start one after another need a step
 *            each.
 */
CUTWATER_API cutwater_status cutwater_wet_well_volume(double flow_m3h, double starts_perh, double *volume_m3,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_wet_well_volume_rows(size_t rows, cutwater_column flow_m3h, cutwater_column starts_perh,
                                              cutwater_result_column volume_m3, cutwater_rows_report *report);

/*
 * Time to draw the air out of a suction line, the liquid rising after it.
 *
 *   pipe_volume_m3               air in the suction line and pump before priming; above 0 m3
 *   air_handling_rate_m3h        air drawn, measured at the line's own pressure; take the mean over the lift; above 0
 *                                m3/h
 *   lift_m                       height from the liquid's surface to the highest point to be filled; at least 0 m
 *   ambient_pressure_bara        pressure on the liquid's surface, and of the air at first; from 0.1 to 10 bara; 1.01325
 *                                if left out
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3; 998.2 if left out
 *   -> time_s                    time until the line is full
 *
 *   Equation: t = (V/S)(1 + ln(p_amb/(p_amb - rho g L)))
 *   Must hold of lift: the lift must be less than the head of the ambient pressure: no vacuum raises the liquid so far
 *   Source: mass balance of ideal isothermal air at a constant volume rate, all of it above the lift (the slowest case);
 *           own model, checked against a numerical march
 *   Caution: The vacuum needed must lie within what the priming device reaches, and the pressure at the top above the
 *            liquid's vapour pressure.
 *   Caution: Makers often state the rate of free air, or one that falls with the vacuum: convert it before use. Leaks
 *            are left out.
 */
CUTWATER_API cutwater_status cutwater_priming_time(double pipe_volume_m3, double air_handling_rate_m3h, double lift_m,
                                      double ambient_pressure_bara, double density_kgm3, double *time_s,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_priming_time_rows(size_t rows, cutwater_column pipe_volume_m3,
                                           cutwater_column air_handling_rate_m3h, cutwater_column lift_m,
                                           cutwater_column ambient_pressure_bara, cutwater_column density_kgm3,
                                           cutwater_result_column time_s, cutwater_rows_report *report);

/*
 * Pressure rise when a flow is stopped faster than the pressure wave returns.
 *
 *   velocity_change_ms           velocity taken away; negative for a flow that is started; a finite number in m/s
 *   wave_speed_ms                speed of the pressure wave, from pressure_wave_speed; from 10 to 5000 m/s
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   -> pressure_rise_bar         pressure rise; negative: a fall
 *
 *   Equation: dp = rho a dv
 *   Source: N. Joukowsky (1898); Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it)
 *   Caution: An upper bound for one change in a plain line, made faster than the pressure wave's return. Column
 *            separation, branches and check-valve slam can give more: have the line analysed where people or plant
 *            depend on it.
 *   Caution: In a long line the pressure at the valve goes on rising after the wave has left, as the friction's slope
 *            levels out: see line_packing_surge.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_pressure_surge(double velocity_change_ms, double wave_speed_ms, double density_kgm3,
                                        double *pressure_rise_bar, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pressure_surge_rows(size_t rows, cutwater_column velocity_change_ms,
                                             cutwater_column wave_speed_ms, cutwater_column density_kgm3,
                                             cutwater_result_column pressure_rise_bar, cutwater_rows_report *report);

/*
 * Speed of a pressure wave in a thin-walled pipe full of liquid.
 *
 *   bulk_modulus_GPa             bulk modulus of the liquid; water at 20 degC 2.19; above 0 up to 50 GPa
 *   pipe_modulus_GPa             elastic modulus of the pipe: steel 207, cast iron 100, PVC 2.8; above 0 up to 1000 GPa
 *   bore_mm                      inside diameter of the pipe; from 1 to 10000 mm
 *   wall_mm                      wall thickness of the pipe; above 0 mm
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   anchorage                    expansion joints, one end or throughout: c = 1, 1 - mu/2, 1 - mu^2 (Wylie and
 *                                Streeter); expansion joints ASCE, one end ASCE: 1 - mu/2, 1.25 - mu (ASCE 1975, the
 *                                pipe's change of length counted). The default gives the fastest wave of the first set;
 *                                "expansion joints", "one end", "throughout", "expansion joints ASCE" or "one end ASCE";
 *                                "one end" if left out
 *   poisson_ratio                Poisson's ratio of the pipe: steel 0.3, cast iron 0.25, PVC 0.46; from 0 to 0.5; 0.3 if
 *                                left out
 *   -> wave_speed_ms             speed of the pressure wave
 *
 *   Equation: a = sqrt(K/rho)/sqrt(1 + c K d/(E e)), c by the anchorage
 *   Must hold of wall: the wall must be at most a quarter of the bore: the formula is for thin walls
 *   Source: D. J. Korteweg (1878); factors c = 1, 1 - mu/2, 1 - mu^2: E. B. Wylie and V. L. Streeter, Fluid Transients
 *           in Systems, 1993 (from memory of it; the set read in a multiphysics manual); 1.25 - mu, 1 - mu/2: ASCE 1975,
 *           for pipes with d/e above 40 (as credited in a transients manual, excerpt read)
 *   Caution: A little free gas in the liquid lowers the wave speed greatly.
 *   Caution: The formula is for thin walls: above about a tenth of the bore the result is only near.
 */
CUTWATER_API cutwater_status cutwater_pressure_wave_speed(double bulk_modulus_GPa, double pipe_modulus_GPa, double bore_mm,
                                             double wall_mm, double density_kgm3, const char *anchorage,
                                             double poisson_ratio, double *wave_speed_ms, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_pressure_wave_speed_rows(size_t rows, cutwater_column bulk_modulus_GPa,
                                                  cutwater_column pipe_modulus_GPa, cutwater_column bore_mm,
                                                  cutwater_column wall_mm, cutwater_column density_kgm3,
                                                  const char *anchorage, cutwater_column poisson_ratio,
                                                  cutwater_result_column wave_speed_ms, cutwater_rows_report *report);

/*
 * Time of the pressure wave to the end of a line and back: a faster closure counts as sudden.
 *
 *   length_m                     length of the line to the next free surface or large vessel; above 0 m
 *   wave_speed_ms                speed of the pressure wave, from pressure_wave_speed; from 10 to 5000 m/s
 *   -> period_s                  return time of the wave
 *
 *   Equation: T = 2 L/a
 *   Source: Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it)
 *   Caution: An upper bound for one change in a plain line, made faster than the pressure wave's return. Column
 *            separation, branches and check-valve slam can give more: have the line analysed where people or plant
 *            depend on it.
 */
CUTWATER_API cutwater_status cutwater_surge_period(double length_m, double wave_speed_ms, double *period_s,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_surge_period_rows(size_t rows, cutwater_column length_m, cutwater_column wave_speed_ms,
                                           cutwater_result_column period_s, cutwater_rows_report *report);

/*
 * Pressure rise when a valve takes a flow away evenly in a given time.
 *
 *   velocity_change_ms           velocity taken away; negative for a flow that is started; a finite number in m/s
 *   wave_speed_ms                speed of the pressure wave, from pressure_wave_speed; from 10 to 5000 m/s
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   length_m                     length of the line to the next free surface or large vessel; above 0 m
 *   closure_time_s               time in which the flow falls evenly; not the valve's whole stroke; above 0 s
 *   -> pressure_rise_bar         greatest pressure rise at the valve; negative: a fall
 *   -> closure                   sudden when the valve closes before the wave returns, else slow
 *
 *   Equation: dp = rho a dv for t_c <= 2 L/a; dp = 2 rho L dv/t_c above
 *   Source: N. Joukowsky (1898) and J. Michaud (1878); K. Subramanya, 1000 Solved Problems in Fluid Mechanics, unsteady
 *           flow (its worked examples read)
 *   Caution: The rule takes the flow to fall evenly. A valve does most of its work in the last part of its stroke: give
 *            that part of the time, often a fifth to a third of the stroke.
 *   Caution: Column separation, branches and check-valve slam can give more: have the line analysed where people or
 *            plant depend on it.
 *   Caution: In a long line the pressure at the valve goes on rising after the wave has left, as the friction's slope
 *            levels out: see line_packing_surge.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_closure_surge(double velocity_change_ms, double wave_speed_ms, double density_kgm3,
                                       double length_m, double closure_time_s, double *pressure_rise_bar,
                                       const char **closure, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_closure_surge_rows(size_t rows, cutwater_column velocity_change_ms,
                                            cutwater_column wave_speed_ms, cutwater_column density_kgm3,
                                            cutwater_column length_m, cutwater_column closure_time_s,
                                            cutwater_result_column pressure_rise_bar, cutwater_result_column closure,
                                            cutwater_rows_report *report);

/*
 * Greatest pressure rise at a valve that stops the flow of a long line suddenly, line packing included: an upper bound.
 *
 *   velocity_ms                  velocity stopped; at least 0 m/s
 *   wave_speed_ms                speed of the pressure wave, from pressure_wave_speed; from 10 to 5000 m/s
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   friction_head_m              friction of the line at that velocity, from the reservoir or pump to the valve; at
 *                                least 0 m
 *   -> pressure_rise_bar         rise above the pressure at the valve while the liquid flowed, at most
 *   -> packing_bar               of which by packing: the friction's pressure comes back
 *
 *   Equation: dp <= rho a v + rho g h_f
 *   Source: Joukowsky's rise above the head of the line at rest, which friction can only lower: own bound, tried by the
 *           method of characteristics on lines of 1 to 100 km, which came to 100 to 83 % of it; E. B. Wylie and V. L.
 *           Streeter, Fluid Transients in Systems, 1993, line packing (from memory of it)
 *   Caution: A pump that runs on against the closed valve adds its rise towards closed valve.
 *   Caution: Column separation, branches and check-valve slam can give more: have the line analysed where people or
 *            plant depend on it.
 *   Caution: Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.
 */
CUTWATER_API cutwater_status cutwater_line_packing_surge(double velocity_ms, double wave_speed_ms, double density_kgm3,
                                            double friction_head_m, double *pressure_rise_bar, double *packing_bar,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_line_packing_surge_rows(size_t rows, cutwater_column velocity_ms,
                                                 cutwater_column wave_speed_ms, cutwater_column density_kgm3,
                                                 cutwater_column friction_head_m,
                                                 cutwater_result_column pressure_rise_bar,
                                                 cutwater_result_column packing_bar, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

/* generated from the catalogue by cutwater-generate; do not edit. */
/* Rotor: thrusts, shaft, vibration. */
#ifndef CUTWATER_FAMILIES_ROTOR_H
#define CUTWATER_FAMILIES_ROTOR_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Radial thrust coefficient of an impeller at a flow, by the form of its casing.
 *
 *   casing                       form of the casing around the impeller; "single volute", "double volute", "concentric"
 *                                or "diffuser"
 *   flow_m3h                     flow at which the pump runs; at least 0 m3/h
 *   best_efficiency_flow_m3h     best efficiency flow at the actual speed and diameter; above 0 m3/h
 *   reference_coefficient        single volute: at closed valve, 0.15 to 0.38; concentric: at best efficiency; double
 *                                volute and diffuser: at every flow; from 0 to 1
 *   specific_speed               specific speed n Q^0.5/H^0.75 in 1/min, m3/s, m at best efficiency; only a single
 *                                volute's K depends on it; from 9.6 to 68
 *   least_coefficient            residue that remains where the steady force would vanish; about 0.10 was measured on a
 *                                single volute; from 0 to 1; 0.1 if left out
 *   -> coefficient               radial thrust coefficient, as a magnitude
 *
 *   Equation: single volute: K = K_0 |1 - (Q/Q_BEP)^x|, x = 0.7 + 2.6 (51.645 n_s - 500)/3000; concentric: K = K_0
 *             Q/Q_BEP; double volute, diffuser: K = K_0; never below K_min
 *   Must hold of flow: it must not exceed 1.5 times the best efficiency flow: beyond that nothing was measured
 *   Source: single volute: R. Mackay, The Practical Pumping Handbook, Elsevier 2004, pp. 28 and 29 (read), K_0 0.15 to
 *           0.38 and x from 0.7 to 3.3 between US specific speeds of 500 and 3500; the residue: B. Abulnaga, Slurry
 *           Systems Handbook, on radial thrust (excerpt read); a concentric casing's force rises with flow: V. S.
 *           Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 193 (read), taken linear here
 *   Caution: No chart of double volutes, concentric casings and diffusers could be read: K_0 is the user's there.
 *            Guidance, from memory of J. F. Guelich, Centrifugal Pumps: a double volute with a rib over 180 degrees
 *            about a quarter of the single volute's value at closed valve, a diffuser 0.02 to 0.09.
 *   Caution: The zero of the steady force at best efficiency is a fiction; whether the force turns round beyond it is
 *            disputed: K is a magnitude here, and its direction is not told.
 *   Caution: Guide: take plus or minus 30 %, more below half of the best efficiency flow; an unsteady force of about the
 *            same size may ride on it. Measured values of the pump maker go before it.
 */
CUTWATER_API cutwater_status cutwater_radial_thrust_coefficient(const char *casing, double flow_m3h,
                                                   double best_efficiency_flow_m3h, double reference_coefficient,
                                                   double specific_speed, double least_coefficient,
                                                   double *coefficient, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_radial_thrust_coefficient_rows(size_t rows, const char *casing, cutwater_column flow_m3h,
                                                        cutwater_column best_efficiency_flow_m3h,
                                                        cutwater_column reference_coefficient,
                                                        cutwater_column specific_speed,
                                                        cutwater_column least_coefficient,
                                                        cutwater_result_column coefficient,
                                                        cutwater_rows_report *report);

/*
 * Radial force of the liquid on the impeller.
 *
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   head_m                       head of the stage: at closed valve where the coefficient is a single volute's by
 *                                radial_thrust_coefficient, else at the flow; from 0 to 5000 m
 *   impeller_diameter_mm         outside diameter of the impeller, as trimmed; from 1 to 5000 mm
 *   outlet_width_mm              width of the impeller at its outside diameter, shrouds included; from 0.5 to 2000 mm
 *   coefficient                  radial thrust coefficient, by radial_thrust_coefficient or measured; from 0 to 1
 *   -> force_N                   radial force
 *
 *   Equation: F_r = K rho g H D_2 b_2
 *   Source: A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd edition, 1957 (from memory of it), whose print leaves
 *           the density out; with the pressure instead of the head in R. Mackay, The Practical Pumping Handbook, 2004,
 *           p. 28 (read)
 *   Caution: Leaving the density out would understate the force for an acid of 1840 kg/m3 by nearly half.
 *   Caution: Guide: take plus or minus 30 %, more below half of the best efficiency flow; an unsteady force of about the
 *            same size may ride on it. Measured values of the pump maker go before it.
 *   Caution: A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's
 *            limits and a licensed engineer's judgement go before this figure.
 */
CUTWATER_API cutwater_status cutwater_radial_thrust(double density_kgm3, double head_m, double impeller_diameter_mm,
                                       double outlet_width_mm, double coefficient, double *force_N,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_radial_thrust_rows(size_t rows, cutwater_column density_kgm3, cutwater_column head_m,
                                            cutwater_column impeller_diameter_mm, cutwater_column outlet_width_mm,
                                            cutwater_column coefficient, cutwater_result_column force_N,
                                            cutwater_rows_report *report);

/*
 * Static pressure at the impeller's rim over that at its suction.
 *
 *   head_m                       head of the stage at the flow; from 0 to 5000 m
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   static_part                  part of the head that is static pressure at the rim: 0.7 to 0.8 for radial impellers;
 *                                from 0 to 1; 0.75 if left out
 *   -> pressure_bar              pressure at the rim over the suction pressure
 *
 *   Equation: dp_2 = c rho g H
 *   Source: Bernoulli's equation; c of 0.7 to 0.8 from memory of A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd
 *           edition, 1957
 *   Caution: The part changes with the flow and the impeller's form: take both ends where thrust or seal chamber
 *            pressure hang on it.
 *   Caution: Guide: a side's force is known to about plus or minus 30 %; wall distance, roughness, ring clearance and
 *            leakage all act on it (Lobanoff and Ross, p. 343).
 */
CUTWATER_API cutwater_status cutwater_rim_pressure(double head_m, double density_kgm3, double static_part, double *pressure_bar,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_rim_pressure_rows(size_t rows, cutwater_column head_m, cutwater_column density_kgm3,
                                           cutwater_column static_part, cutwater_result_column pressure_bar,
                                           cutwater_rows_report *report);

/*
 * Pressure beside a shroud at a diameter, over the suction pressure.
 *
 *   rim_pressure_bar             pressure at the impeller's rim over that at its suction; from -100 to 1000 bar
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   impeller_diameter_mm         outside diameter of the impeller, as trimmed; from 1 to 5000 mm
 *   diameter_mm                  diameter at which the pressure is wanted; from 0 to 5000 mm
 *   core_rotation                turning of the liquid over that of the impeller: 0.5 beside smooth walls with little
 *                                leakage, more with leakage inward, less outward; from 0 to 1; 0.5 if left out
 *   -> pressure_bar              pressure over the suction pressure; negative below it
 *
 *   Equation: dp = dp_2 - rho (k omega)^2 (D_2^2 - D^2)/8
 *   Must hold of diameter: it must not exceed the impeller's diameter
 *   Source: forced vortex beside a disc, dp/dr = rho (k omega)^2 r, integrated; core rotation 0.5 beside smooth walls:
 *           V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, ch. 16, and A. J. Stepanoff (both from memory)
 *   Caution: Where it falls below the suction pressure, compare the absolute pressure with the vapour pressure: liquid
 *            that boils behind the impeller can run the seal dry.
 *   Caution: Guide: a side's force is known to about plus or minus 30 %; wall distance, roughness, ring clearance and
 *            leakage all act on it (Lobanoff and Ross, p. 343).
 */
CUTWATER_API cutwater_status cutwater_shroud_pressure(double rim_pressure_bar, double density_kgm3, double speed_rpm,
                                         double impeller_diameter_mm, double diameter_mm, double core_rotation,
                                         double *pressure_bar, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shroud_pressure_rows(size_t rows, cutwater_column rim_pressure_bar,
                                              cutwater_column density_kgm3, cutwater_column speed_rpm,
                                              cutwater_column impeller_diameter_mm, cutwater_column diameter_mm,
                                              cutwater_column core_rotation, cutwater_result_column pressure_bar,
                                              cutwater_rows_report *report);

/*
 * Axial force of the liquid on a shroud from the rim in to a diameter, over that of the suction pressure.
 *
 *   rim_pressure_bar             pressure at the impeller's rim over that at its suction; from -100 to 1000 bar
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   impeller_diameter_mm         outside diameter of the impeller, as trimmed; from 1 to 5000 mm
 *   inner_diameter_mm            inner diameter: front, of the wear ring or eye; back, of the ring or sleeve; from 0 to
 *                                5000 mm
 *   core_rotation                turning of the liquid over that of the impeller: 0.5 beside smooth walls with little
 *                                leakage, more with leakage inward, less outward; from 0 to 1; 0.5 if left out
 *   -> force_N                   axial force, pressing on the shroud
 *
 *   Equation: F = pi/4 (D_2^2 - D_i^2) [dp_2 - rho (k omega)^2 (D_2^2 - D_i^2)/16]
 *   Must hold of inner_diameter: it must not exceed the impeller's diameter
 *   Source: forced vortex beside a disc, dp/dr = rho (k omega)^2 r, integrated; core rotation 0.5 beside smooth walls:
 *           V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, ch. 16, and A. J. Stepanoff (both from memory)
 *   Caution: Guide: a side's force is known to about plus or minus 30 %; wall distance, roughness, ring clearance and
 *            leakage all act on it (Lobanoff and Ross, p. 343).
 */
CUTWATER_API cutwater_status cutwater_shroud_force(double rim_pressure_bar, double density_kgm3, double speed_rpm,
                                      double impeller_diameter_mm, double inner_diameter_mm, double core_rotation,
                                      double *force_N, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shroud_force_rows(size_t rows, cutwater_column rim_pressure_bar,
                                           cutwater_column density_kgm3, cutwater_column speed_rpm,
                                           cutwater_column impeller_diameter_mm, cutwater_column inner_diameter_mm,
                                           cutwater_column core_rotation, cutwater_result_column force_N,
                                           cutwater_rows_report *report);

/*
 * Turning of the liquid between back vanes over that of the impeller.
 *
 *   vane_height_mm               height of the back vanes; 0 for none; from 0 to 500 mm
 *   space_mm                     from the shroud's face to the wall behind it: vane height and running gap; above 0 up
 *                                to 500 mm
 *   core_rotation                turning of the liquid over that of the impeller: 0.5 beside smooth walls with little
 *                                leakage, more with leakage inward, less outward; from 0 to 1; 0.5 if left out
 *   -> vane_rotation             turning of the liquid over that of the impeller
 *
 *   Equation: k_v = k + (1 - k) t/s
 *   Must hold of vane_height: the vanes must not be higher than the space
 *   Source: core rotation between back vanes k_v = k + (1 - k) t/s, for k = 1/2 that of A. J. Stepanoff, Centrifugal and
 *           Axial Flow Pumps, 2nd edition, 1957 (from memory of it); with no gap it gives the handbooks' relief 3/8 A
 *           rho (u_2^2 - u_1^2)/2; that the relief falls as the gap grows: V. S. Lobanoff, R. R. Ross, Centrifugal
 *           Pumps, 2nd edition, p. 346 (read)
 *   Caution: The gap decides: as an open impeller is set away from its front wall, the back gap closes or opens with it
 *            and the thrust changes.
 *   Caution: Guide: a side's force is known to about plus or minus 30 %; wall distance, roughness, ring clearance and
 *            leakage all act on it (Lobanoff and Ross, p. 343).
 */
CUTWATER_API cutwater_status cutwater_back_vane_core_rotation(double vane_height_mm, double space_mm, double core_rotation,
                                                 double *vane_rotation, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_back_vane_core_rotation_rows(size_t rows, cutwater_column vane_height_mm,
                                                      cutwater_column space_mm, cutwater_column core_rotation,
                                                      cutwater_result_column vane_rotation,
                                                      cutwater_rows_report *report);

/*
 * How much less the back vanes let the liquid press on the impeller's back than a smooth shroud would.
 *
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   vane_outer_diameter_mm       outer diameter of the back vanes; from 1 to 5000 mm
 *   vane_inner_diameter_mm       inner diameter of the back vanes; from 0 to 5000 mm
 *   vane_height_mm               height of the back vanes; 0 for none; from 0 to 500 mm
 *   space_mm                     from the shroud's face to the wall behind it: vane height and running gap; above 0 up
 *                                to 500 mm
 *   core_rotation                turning of the liquid over that of the impeller: 0.5 beside smooth walls with little
 *                                leakage, more with leakage inward, less outward; from 0 to 1; 0.5 if left out
 *   -> relief_N                  force taken off, over the vanes' own ring
 *
 *   Equation: dF = pi/64 rho omega^2 (k_v^2 - k^2) (D_v^2 - D_h^2)^2, k_v = k + (1 - k) t/s
 *   Must hold of vane_height: the vanes must not be higher than the space
 *   Must hold of vane_inner_diameter: it must not exceed the vanes' outer diameter
 *   Source: core rotation between back vanes k_v = k + (1 - k) t/s, for k = 1/2 that of A. J. Stepanoff, Centrifugal and
 *           Axial Flow Pumps, 2nd edition, 1957 (from memory of it); with no gap it gives the handbooks' relief 3/8 A
 *           rho (u_2^2 - u_1^2)/2; that the relief falls as the gap grows: V. S. Lobanoff, R. R. Ross, Centrifugal
 *           Pumps, 2nd edition, p. 346 (read)
 *   Caution: The pressure falls further inside the vanes too: back_force_with_vanes takes that in.
 *   Caution: The gap decides: as an open impeller is set away from its front wall, the back gap closes or opens with it
 *            and the thrust changes.
 *   Caution: Guide: a side's force is known to about plus or minus 30 %; wall distance, roughness, ring clearance and
 *            leakage all act on it (Lobanoff and Ross, p. 343).
 */
CUTWATER_API cutwater_status cutwater_back_vane_relief(double density_kgm3, double speed_rpm, double vane_outer_diameter_mm,
                                          double vane_inner_diameter_mm, double vane_height_mm, double space_mm,
                                          double core_rotation, double *relief_N, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_back_vane_relief_rows(size_t rows, cutwater_column density_kgm3, cutwater_column speed_rpm,
                                               cutwater_column vane_outer_diameter_mm,
                                               cutwater_column vane_inner_diameter_mm, cutwater_column vane_height_mm,
                                               cutwater_column space_mm, cutwater_column core_rotation,
                                               cutwater_result_column relief_N, cutwater_rows_report *report);

/*
 * Pressure between the back ring and the balance holes, over the suction pressure.
 *
 *   ring_pressure_bar            pressure outside of the back ring over the suction pressure, by shroud_pressure; from 0
 *                                to 1000 bar
 *   ring_diameter_mm             diameter of the back ring; from 1 to 5000 mm
 *   diametral_clearance_mm       running clearance of the back ring, difference of the diameters; from 0 to 20 mm
 *   hole_diameter_mm             diameter of a balance hole; from 0 to 500 mm
 *   holes                        number of balance holes; a whole number from 0 to 100
 *   coefficient_ratio            flow coefficient of the holes over that of the ring; from 0.1 to 10; 1 if left out
 *   -> pressure_bar              pressure behind the impeller inside the ring, over the suction pressure
 *
 *   Equation: dp_b = dp_r/[1 + (C_h A_h/(C_r A_r))^2], A_r = pi D_r c/2, A_h = z pi d_h^2/4
 *   Must hold of hole_diameter: there must be holes or a clearance: with neither the pressure is not determined
 *   Source: ring and holes in series, each as an orifice, derived here; that the holes should have at least 4 to 5 times
 *           the ring's area: common practice
 *   Caution: The clearance here is diametral; balance_hole_chamber_pressure asks for the radial one.
 *   Caution: The pressure grows with the square of the worn clearance: check thrust and seal chamber at the clearance at
 *            which the ring is replaced.
 *   Caution: Blocked holes put the whole ring pressure behind the impeller.
 *   Caution: Guide: a side's force is known to about plus or minus 30 %; wall distance, roughness, ring clearance and
 *            leakage all act on it (Lobanoff and Ross, p. 343).
 */
CUTWATER_API cutwater_status cutwater_balance_hole_pressure(double ring_pressure_bar, double ring_diameter_mm,
                                               double diametral_clearance_mm, double hole_diameter_mm, double holes,
                                               double coefficient_ratio, double *pressure_bar,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_balance_hole_pressure_rows(size_t rows, cutwater_column ring_pressure_bar,
                                                    cutwater_column ring_diameter_mm,
                                                    cutwater_column diametral_clearance_mm,
                                                    cutwater_column hole_diameter_mm, cutwater_column holes,
                                                    cutwater_column coefficient_ratio,
                                                    cutwater_result_column pressure_bar, cutwater_rows_report *report);

/*
 * Axial force of the liquid on the back of an impeller with a back ring and balance holes, over that of the suction
 * pressure.
 *
 *   rim_pressure_bar             pressure at the impeller's rim over that at its suction; from -100 to 1000 bar
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   impeller_diameter_mm         outside diameter of the impeller, as trimmed; from 1 to 5000 mm
 *   ring_diameter_mm             diameter of the back ring; from 1 to 5000 mm
 *   sleeve_diameter_mm           diameter at which the shaft, sleeve or seal leaves the space; from 0 to 5000 mm
 *   balance_pressure_bar         pressure inside of the ring over the suction pressure, by balance_hole_pressure; from
 *                                -100 to 1000 bar
 *   core_rotation                turning of the liquid over that of the impeller: 0.5 beside smooth walls with little
 *                                leakage, more with leakage inward, less outward; from 0 to 1; 0.5 if left out
 *   -> force_N                   force towards the suction
 *
 *   Equation: F_b = pi/4 (D_2^2 - D_r^2) [dp_2 - rho (k omega)^2 (D_2^2 - D_r^2)/16] + pi/4 (D_r^2 - d_s^2) dp_b
 *   Must hold of ring_diameter: it must not exceed the impeller's diameter
 *   Must hold of sleeve_diameter: it must not exceed the ring's diameter
 *   Source: forced vortex beside a disc, dp/dr = rho (k omega)^2 r, integrated; core rotation 0.5 beside smooth walls:
 *           V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, ch. 16, and A. J. Stepanoff (both from memory)
 *   Caution: Guide: a side's force is known to about plus or minus 30 %; wall distance, roughness, ring clearance and
 *            leakage all act on it (Lobanoff and Ross, p. 343).
 */
CUTWATER_API cutwater_status cutwater_back_force_with_ring(double rim_pressure_bar, double density_kgm3, double speed_rpm,
                                              double impeller_diameter_mm, double ring_diameter_mm,
                                              double sleeve_diameter_mm, double balance_pressure_bar,
                                              double core_rotation, double *force_N, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_back_force_with_ring_rows(size_t rows, cutwater_column rim_pressure_bar,
                                                   cutwater_column density_kgm3, cutwater_column speed_rpm,
                                                   cutwater_column impeller_diameter_mm,
                                                   cutwater_column ring_diameter_mm,
                                                   cutwater_column sleeve_diameter_mm,
                                                   cutwater_column balance_pressure_bar,
                                                   cutwater_column core_rotation, cutwater_result_column force_N,
                                                   cutwater_rows_report *report);

/*
 * Axial force of the liquid on the back of an impeller with back vanes, over that of the suction pressure, and the
 * pressure at the sleeve.
 *
 *   rim_pressure_bar             pressure at the impeller's rim over that at its suction; from -100 to 1000 bar
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   impeller_diameter_mm         outside diameter of the impeller, as trimmed; from 1 to 5000 mm
 *   vane_outer_diameter_mm       outer diameter of the back vanes; from 1 to 5000 mm
 *   vane_inner_diameter_mm       inner diameter of the back vanes; from 0 to 5000 mm
 *   sleeve_diameter_mm           diameter at which the shaft, sleeve or seal leaves the space; from 0 to 5000 mm
 *   vane_height_mm               height of the back vanes; 0 for none; from 0 to 500 mm
 *   space_mm                     from the shroud's face to the wall behind it: vane height and running gap; above 0 up
 *                                to 500 mm
 *   core_rotation                turning of the liquid over that of the impeller: 0.5 beside smooth walls with little
 *                                leakage, more with leakage inward, less outward; from 0 to 1; 0.5 if left out
 *   -> force_N                   force towards the suction
 *   -> sleeve_pressure_bar       pressure at the sleeve over the suction pressure; negative below it
 *
 *   Equation: three rings in a row, each F = pi/4 (D_o^2 - D_i^2) [dp_o - rho (k omega)^2 (D_o^2 - D_i^2)/16] and dp_i =
 *             dp_o - rho (k omega)^2 (D_o^2 - D_i^2)/8: smooth with k, vanes with k_v = k + (1 - k) t/s, smooth with k
 *   Must hold of vane_height: the vanes must not be higher than the space
 *   Must hold of vane_outer_diameter: it must not exceed the impeller's diameter
 *   Must hold of vane_inner_diameter: it must not exceed the vanes' outer diameter
 *   Must hold of sleeve_diameter: it must not exceed the vanes' inner diameter
 *   Source: core rotation between back vanes k_v = k + (1 - k) t/s, for k = 1/2 that of A. J. Stepanoff, Centrifugal and
 *           Axial Flow Pumps, 2nd edition, 1957 (from memory of it); with no gap it gives the handbooks' relief 3/8 A
 *           rho (u_2^2 - u_1^2)/2; that the relief falls as the gap grows: V. S. Lobanoff, R. R. Ross, Centrifugal
 *           Pumps, 2nd edition, p. 346 (read)
 *   Caution: A pressure at the sleeve below the vapour pressure lets the liquid boil there and the shaft seal run dry:
 *            compare absolute pressures at the liquid's temperature.
 *   Caution: The gap decides: as an open impeller is set away from its front wall, the back gap closes or opens with it
 *            and the thrust changes.
 *   Caution: Guide: a side's force is known to about plus or minus 30 %; wall distance, roughness, ring clearance and
 *            leakage all act on it (Lobanoff and Ross, p. 343).
 */
CUTWATER_API cutwater_status cutwater_back_force_with_vanes(double rim_pressure_bar, double density_kgm3, double speed_rpm,
                                               double impeller_diameter_mm, double vane_outer_diameter_mm,
                                               double vane_inner_diameter_mm, double sleeve_diameter_mm,
                                               double vane_height_mm, double space_mm, double core_rotation,
                                               double *force_N, double *sleeve_pressure_bar,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_back_force_with_vanes_rows(size_t rows, cutwater_column rim_pressure_bar,
                                                    cutwater_column density_kgm3, cutwater_column speed_rpm,
                                                    cutwater_column impeller_diameter_mm,
                                                    cutwater_column vane_outer_diameter_mm,
                                                    cutwater_column vane_inner_diameter_mm,
                                                    cutwater_column sleeve_diameter_mm,
                                                    cutwater_column vane_height_mm, cutwater_column space_mm,
                                                    cutwater_column core_rotation, cutwater_result_column force_N,
                                                    cutwater_result_column sleeve_pressure_bar,
                                                    cutwater_rows_report *report);

/*
 * How thrust and pressure at the sleeve change when the gap behind the back vanes changes, as by wear or by resetting an
 * open impeller.
 *
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   vane_outer_diameter_mm       outer diameter of the back vanes; from 1 to 5000 mm
 *   vane_inner_diameter_mm       inner diameter of the back vanes; from 0 to 5000 mm
 *   sleeve_diameter_mm           diameter at which the shaft, sleeve or seal leaves the space; from 0 to 5000 mm
 *   vane_height_mm               height of the back vanes; 0 for none; from 0 to 500 mm
 *   space_before_mm              from the shroud's face to the wall behind it, before: vane height and gap; above 0 up
 *                                to 500 mm
 *   space_after_mm               the same after the change; above 0 up to 500 mm
 *   core_rotation                turning of the liquid over that of the impeller: 0.5 beside smooth walls with little
 *                                leakage, more with leakage inward, less outward; from 0 to 1; 0.5 if left out
 *   -> thrust_change_N           change of the force towards the suction; positive where the gap has grown
 *   -> pressure_change_bar       change of the pressure at the sleeve
 *
 *   Equation: dp_s = rho omega^2 (k_1^2 - k_2^2) (D_v^2 - D_h^2)/8; dF_b = pi/64 rho omega^2 (k_1^2 - k_2^2) (D_v^2 -
 *             D_h^2)^2 + pi/4 (D_h^2 - d_s^2) dp_s; k_1, k_2 = k + (1 - k) t/s
 *   Must hold of vane_height: the vanes must not be higher than the space was before
 *   Must hold of vane_height: the vanes must not be higher than the space is after
 *   Must hold of vane_inner_diameter: it must not exceed the vanes' outer diameter
 *   Must hold of sleeve_diameter: it must not exceed the vanes' inner diameter
 *   Source: core rotation between back vanes k_v = k + (1 - k) t/s, for k = 1/2 that of A. J. Stepanoff, Centrifugal and
 *           Axial Flow Pumps, 2nd edition, 1957 (from memory of it); with no gap it gives the handbooks' relief 3/8 A
 *           rho (u_2^2 - u_1^2)/2; that the relief falls as the gap grows: V. S. Lobanoff, R. R. Ross, Centrifugal
 *           Pumps, 2nd edition, p. 346 (read)
 *   Caution: With an open impeller the front gap changes too: its force on the vanes is not in this figure.
 *   Caution: Closing the back gap lowers the pressure at the seal: check that the liquid does not boil there.
 *   Caution: Guide: a side's force is known to about plus or minus 30 %; wall distance, roughness, ring clearance and
 *            leakage all act on it (Lobanoff and Ross, p. 343).
 */
CUTWATER_API cutwater_status cutwater_back_vane_gap_change(double density_kgm3, double speed_rpm, double vane_outer_diameter_mm,
                                              double vane_inner_diameter_mm, double sleeve_diameter_mm,
                                              double vane_height_mm, double space_before_mm, double space_after_mm,
                                              double core_rotation, double *thrust_change_N,
                                              double *pressure_change_bar, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_back_vane_gap_change_rows(size_t rows, cutwater_column density_kgm3,
                                                   cutwater_column speed_rpm, cutwater_column vane_outer_diameter_mm,
                                                   cutwater_column vane_inner_diameter_mm,
                                                   cutwater_column sleeve_diameter_mm, cutwater_column vane_height_mm,
                                                   cutwater_column space_before_mm, cutwater_column space_after_mm,
                                                   cutwater_column core_rotation,
                                                   cutwater_result_column thrust_change_N,
                                                   cutwater_result_column pressure_change_bar,
                                                   cutwater_rows_report *report);

/*
 * Force away from the suction that turning the flow from axial to radial puts on a radial impeller.
 *
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   flow_m3h                     flow through the eye; at least 0 m3/h
 *   eye_diameter_mm              diameter of the impeller eye; from 1 to 5000 mm
 *   hub_diameter_mm              hub or shaft diameter in the eye; 0 for an open eye; from 0 to 5000 mm; 0 if left out
 *   -> force_N                   force away from the suction
 *
 *   Equation: F_m = rho Q^2/[pi/4 (D_1^2 - d_h^2)]
 *   Must hold of hub_diameter: it must be less than the eye's diameter
 *   Source: momentum theorem; V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 353 (read), F = Q^2 s/(722
 *           A), US gal/min, in2, lbf
 *   Caution: For a radial impeller: a mixed-flow impeller turns the flow only in part and its force is less.
 */
CUTWATER_API cutwater_status cutwater_inlet_momentum_force(double density_kgm3, double flow_m3h, double eye_diameter_mm,
                                              double hub_diameter_mm, double *force_N, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_inlet_momentum_force_rows(size_t rows, cutwater_column density_kgm3,
                                                   cutwater_column flow_m3h, cutwater_column eye_diameter_mm,
                                                   cutwater_column hub_diameter_mm, cutwater_result_column force_N,
                                                   cutwater_rows_report *report);

/*
 * Force away from the suction that the suction pressure puts on a shaft which leaves the casing on one side only.
 *
 *   suction_pressure_barg        gauge pressure at the suction; above -1.1 up to 1000 barg
 *   shaft_diameter_mm            diameter at which the shaft seal parts liquid from air; a mechanical seal's balance
 *                                diameter; from 1 to 5000 mm
 *   -> force_N                   force away from the suction; negative with a vacuum
 *
 *   Equation: F_s = p_s pi d_s^2/4
 *   Source: pressure times area; V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, ch. 16 (from memory of it)
 *   Caution: High suction pressure can turn the thrust of an overhung pump round and is felt before the pump turns: tell
 *            the pump maker the highest one.
 */
CUTWATER_API cutwater_status cutwater_shaft_end_force(double suction_pressure_barg, double shaft_diameter_mm, double *force_N,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shaft_end_force_rows(size_t rows, cutwater_column suction_pressure_barg,
                                              cutwater_column shaft_diameter_mm, cutwater_result_column force_N,
                                              cutwater_rows_report *report);

/*
 * Axial force on the vane side of an open impeller from a mean pressure over the suction pressure.
 *
 *   mean_pressure_bar            mean pressure on the hub disc between the vanes, over the suction pressure; from -100
 *                                to 1000 bar
 *   impeller_diameter_mm         outside diameter of the impeller, as trimmed; from 1 to 5000 mm
 *   eye_diameter_mm              diameter inside of which the suction pressure acts; from 0 to 5000 mm
 *   -> force_N                   force away from the suction
 *
 *   Equation: F_f = dp_m pi/4 (D_2^2 - D_1^2)
 *   Must hold of eye_diameter: it must not exceed the impeller's diameter
 *   Source: pressure times area; no relation for the mean pressure could be read, so it is an input: measured, by
 *           computed flow, or from the pump maker
 *   Caution: The mean pressure falls as the running clearance in front of the vanes grows, and the thrust towards the
 *            suction grows with it.
 *   Caution: Guide: a side's force is known to about plus or minus 30 %; wall distance, roughness, ring clearance and
 *            leakage all act on it (Lobanoff and Ross, p. 343).
 */
CUTWATER_API cutwater_status cutwater_vane_side_force(double mean_pressure_bar, double impeller_diameter_mm,
                                         double eye_diameter_mm, double *force_N, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_vane_side_force_rows(size_t rows, cutwater_column mean_pressure_bar,
                                              cutwater_column impeller_diameter_mm, cutwater_column eye_diameter_mm,
                                              cutwater_result_column force_N, cutwater_rows_report *report);

/*
 * Axial thrust that is left on a single-stage rotor, how far it may differ, and its direction.
 *
 *   back_force_N                 force on the back, by back_force_with_ring, back_force_with_vanes or shroud_force; from
 *                                -10000000 to 10000000 N
 *   front_force_N                force on the front, by shroud_force, or vane_side_force for an open impeller; from
 *                                -10000000 to 10000000 N
 *   momentum_force_N             force of the turned flow, by inlet_momentum_force; from -10000000 to 10000000 N
 *   shaft_end_force_N            force of the suction pressure on the shaft, by shaft_end_force; 0 where the shaft
 *                                passes through both sides; from -10000000 to 10000000 N
 *   weight_N                     part of the rotor's weight that acts along the shaft, towards the suction; 0 when
 *                                level; from -10000000 to 10000000 N; 0 if left out
 *   scatter                      how far each side's force may differ, as a part of it; from 0 to 1; 0.3 if left out
 *   -> thrust_N                  thrust towards the suction; negative away from it
 *   -> least_N                   thrust if both sides differ by the scatter one way
 *   -> greatest_N                thrust if both sides differ by the scatter the other way
 *   -> direction                 direction over the whole range, or either
 *
 *   Equation: F_ax = F_b - F_f - F_m - F_s + W; F_ax- and F_ax+: F_ax -+ u (|F_b| + |F_f|)
 *   Source: sum of forces; scatter of 30 % a side: judgement from V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd
 *           edition, p. 343 (read), which calls calculated thrust approximate at best
 *   Caution: A small rest of two large forces: size the thrust bearing for the whole range, in both directions where the
 *            direction is either.
 *   Caution: Forces over the suction pressure on both sides: do not mix with forces from gauge pressures.
 *   Caution: A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's
 *            limits and a licensed engineer's judgement go before this figure.
 */
CUTWATER_API cutwater_status cutwater_axial_thrust(double back_force_N, double front_force_N, double momentum_force_N,
                                      double shaft_end_force_N, double weight_N, double scatter, double *thrust_N,
                                      double *least_N, double *greatest_N, const char **direction,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_axial_thrust_rows(size_t rows, cutwater_column back_force_N, cutwater_column front_force_N,
                                           cutwater_column momentum_force_N, cutwater_column shaft_end_force_N,
                                           cutwater_column weight_N, cutwater_column scatter,
                                           cutwater_result_column thrust_N, cutwater_result_column least_N,
                                           cutwater_result_column greatest_N, cutwater_result_column direction,
                                           cutwater_rows_report *report);

/*
 * Which row of a fixed pair of angular contact bearings takes the axial thrust of an overhung impeller.
 *
 *   thrust_N                     axial thrust towards the suction; negative away from it; from -10000000 to 10000000 N
 *   arrangement                  of the pair, or of the two rows of a double-row bearing, which is mostly back to back;
 *                                "back to back" or "face to face"
 *   -> row                       the row that carries the thrust; the other one carries at most its preload
 *
 *   Equation: towards the suction: back to back the row farther from the impeller, face to face the nearer one; away
 *             from it the other row
 *   Source: contact lines by the definitions of back-to-back and face-to-face arrangement, ISO 5593 (from memory of it)
 *   Caution: The row that is not loaded must still keep enough load to roll: without it balls skid and fail; follow the
 *            bearing maker on preload.
 */
CUTWATER_API cutwater_status cutwater_thrust_row(double thrust_N, const char *arrangement, const char **row,
                                    cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_thrust_row_rows(size_t rows, cutwater_column thrust_N, const char *arrangement,
                                         cutwater_result_column row, cutwater_rows_report *report);

/*
 * Deflection of a stepped overhung shaft at the seal faces under a radial force at the impeller.
 *
 *   force_N                      radial force at the impeller, with the rotor's weight where the two may add; from
 *                                -10000000 to 10000000 N
 *   lengths_mm                   lengths of the shaft's sections, from the impeller on; a series of at least 1 point;
 *                                each above 0 up to 20000 mm
 *   diameters_mm                 diameters of the sections that bear, without sleeves; a series of at least 1 point;
 *                                each from 1 to 5000 mm
 *   overhang_mm                  from the impeller's middle, where the sections begin, to the bearing nearer the
 *                                impeller; the last section ends at the other one; above 0 up to 20000 mm
 *   seal_distance_mm             from the impeller's middle to the seal faces; from 0 to 20000 mm
 *   elastic_modulus_GPa          modulus of elasticity of the shaft; about 205 for carbon steel, 200 duplex, 193
 *                                austenitic; from 10 to 1000 GPa; 205 if left out
 *   inboard_stiffness_Nmm1       radial stiffness of the bearing nearer the impeller with its housing; left out, rigid;
 *                                from 100 to 1e+12 N/mm; 1e+12 if left out
 *   outboard_stiffness_Nmm1      radial stiffness of the other bearing with its housing; left out, rigid; from 100 to
 *                                1e+12 N/mm; 1e+12 if left out
 *   shear_modulus_GPa            shear modulus of the shaft, about 80 for steel; 0 leaves the deflection by shear out;
 *                                from 0 to 500 GPa; 0 if left out
 *   limit_mm                     greatest deflection allowed at the seal faces; from 0.001 to 10 mm; 0.05 if left out
 *   -> at_seal_mm                deflection at the seal faces
 *   -> at_impeller_mm            deflection at the impeller
 *   -> inboard_load_N            load on the bearing nearer the impeller
 *   -> outboard_load_N           load on the other bearing; negative where it holds the shaft down
 *   -> verdict                   whether the deflection at the seal keeps the limit
 *
 *   Equation: y = F [Integral M m/(E I) dx + Integral V v/(kappa G A) dx + R_1 r_1/k_1 + R_2 r_2/k_2], m, v, r of a
 *             force of 1 at the seal, I = pi d^4/64
 *   Must hold of lengths: both series must have the same number of points
 *   Must hold of overhang: it must be shorter than all the sections together
 *   Must hold of seal_distance: it must not be longer than all the sections together
 *   Must hold of shear_modulus: it must be 0, or between a third and half of the modulus of elasticity
 *   Source: beam: theory of bending by virtual work, as in S. P. Timoshenko, Strength of Materials; limit 0.05 mm: ISO
 *           5199:2002, 4.11 and ISO 13709:2009, 6.9.1.3 (all from memory); overhung formula for the impeller: R. Mackay,
 *           The Practical Pumping Handbook, 2004, p. 29 (read)
 *   Caution: The limit holds for the worst radial force in the allowable range of flow, at the seal: the handbooks'
 *            formula for the impeller reads two to six times more.
 *   Caution: Deflection that keeps the limit does not show that the shaft will not tire: see shaft_fatigue_safety.
 *   Caution: Support by wear rings, bushes and packing is left out, and so are looseness, tilt of the bearings and the
 *            pull of pipes on the casing.
 *   Caution: Left out, bearings are rigid and shear counts for nothing, which flatters: springs of 1e5 N/mm make a
 *            typical overhung shaft bend 2.6 times as far at the seal and cost 20 % of its critical speed, shear 3 to 5
 *            %.
 *   Caution: A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's
 *            limits and a licensed engineer's judgement go before this figure.
 */
CUTWATER_API cutwater_status cutwater_shaft_deflection_at_seal(double force_N, const double *lengths_mm, size_t lengths_mm_count,
                                                  const double *diameters_mm, size_t diameters_mm_count,
                                                  double overhang_mm, double seal_distance_mm,
                                                  double elastic_modulus_GPa, double inboard_stiffness_Nmm1,
                                                  double outboard_stiffness_Nmm1, double shear_modulus_GPa,
                                                  double limit_mm, double *at_seal_mm, double *at_impeller_mm,
                                                  double *inboard_load_N, double *outboard_load_N,
                                                  const char **verdict, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shaft_deflection_at_seal_rows(size_t rows, cutwater_column force_N, const double *lengths_mm,
                                                       size_t lengths_mm_count, const double *diameters_mm,
                                                       size_t diameters_mm_count, cutwater_column overhang_mm,
                                                       cutwater_column seal_distance_mm,
                                                       cutwater_column elastic_modulus_GPa,
                                                       cutwater_column inboard_stiffness_Nmm1,
                                                       cutwater_column outboard_stiffness_Nmm1,
                                                       cutwater_column shear_modulus_GPa, cutwater_column limit_mm,
                                                       cutwater_result_column at_seal_mm,
                                                       cutwater_result_column at_impeller_mm,
                                                       cutwater_result_column inboard_load_N,
                                                       cutwater_result_column outboard_load_N,
                                                       cutwater_result_column verdict, cutwater_rows_report *report);

/*
 * Deflection of a stepped shaft on two bearings at any place, under any forces in one plane.
 *
 *   forces_N                     forces across the shaft, in one plane; opposite ones negative; a series of at least 1
 *                                point; each from -10000000 to 10000000 N
 *   places_mm                    their places, from the end where the sections begin; a series of at least 1 point; each
 *                                from 0 to 20000 mm
 *   lengths_mm                   lengths of the shaft's sections, from the impeller on; a series of at least 1 point;
 *                                each above 0 up to 20000 mm
 *   diameters_mm                 diameters of the sections that bear, without sleeves; a series of at least 1 point;
 *                                each from 1 to 5000 mm
 *   first_bearing_mm             place of the first bearing; from 0 to 20000 mm
 *   second_bearing_mm            place of the second bearing; from 0 to 20000 mm
 *   place_mm                     where the deflection is wanted; from 0 to 20000 mm
 *   elastic_modulus_GPa          modulus of elasticity of the shaft; about 205 for carbon steel, 200 duplex, 193
 *                                austenitic; from 10 to 1000 GPa; 205 if left out
 *   inboard_stiffness_Nmm1       radial stiffness of the bearing nearer the impeller with its housing; left out, rigid;
 *                                from 100 to 1e+12 N/mm; 1e+12 if left out
 *   outboard_stiffness_Nmm1      radial stiffness of the other bearing with its housing; left out, rigid; from 100 to
 *                                1e+12 N/mm; 1e+12 if left out
 *   shear_modulus_GPa            shear modulus of the shaft, about 80 for steel; 0 leaves the deflection by shear out;
 *                                from 0 to 500 GPa; 0 if left out
 *   -> deflection_mm             deflection in the direction of positive forces
 *   -> first_load_N              load on the first bearing
 *   -> second_load_N             load on the second bearing
 *
 *   Equation: y = Sum F_i [Integral M_i m/(E I) dx + Integral V_i v/(kappa G A) dx + R_1i r_1/k_1 + R_2i r_2/k_2], m, v,
 *             r of a force of 1 at x
 *   Must hold of forces: there must not be more than 1000 of them
 *   Must hold of lengths: there must not be more than 1000 of them
 *   Must hold of places: both series must have the same number of points
 *   Must hold of lengths: both series must have the same number of points
 *   Must hold of second_bearing: it must lie beyond the first bearing
 *   Must hold of second_bearing: it must lie on the shaft
 *   Must hold of place: it must lie on the shaft
 *   Must hold of places: every force must act on the shaft
 *   Must hold of shear_modulus: it must be 0, or between a third and half of the modulus of elasticity
 *   Source: theory of bending by virtual work, each section's M m/(E I) integrated, bearings as springs; S. P.
 *           Timoshenko, Strength of Materials; shear with the coefficient 6 (1 + nu)/(7 + 6 nu) of G. R. Cowper, J.
 *           Applied Mechanics 1966 (both from memory)
 *   Caution: Support by wear rings, bushes and packing is left out, and so are looseness, tilt of the bearings and the
 *            pull of pipes on the casing.
 *   Caution: Left out, bearings are rigid and shear counts for nothing, which flatters: springs of 1e5 N/mm make a
 *            typical overhung shaft bend 2.6 times as far at the seal and cost 20 % of its critical speed, shear 3 to 5
 *            %.
 *   Caution: A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's
 *            limits and a licensed engineer's judgement go before this figure.
 */
CUTWATER_API cutwater_status cutwater_shaft_deflection(const double *forces_N, size_t forces_N_count, const double *places_mm,
                                          size_t places_mm_count, const double *lengths_mm, size_t lengths_mm_count,
                                          const double *diameters_mm, size_t diameters_mm_count,
                                          double first_bearing_mm, double second_bearing_mm, double place_mm,
                                          double elastic_modulus_GPa, double inboard_stiffness_Nmm1,
                                          double outboard_stiffness_Nmm1, double shear_modulus_GPa,
                                          double *deflection_mm, double *first_load_N, double *second_load_N,
                                          cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shaft_deflection_rows(size_t rows, const double *forces_N, size_t forces_N_count,
                                               const double *places_mm, size_t places_mm_count,
                                               const double *lengths_mm, size_t lengths_mm_count,
                                               const double *diameters_mm, size_t diameters_mm_count,
                                               cutwater_column first_bearing_mm, cutwater_column second_bearing_mm,
                                               cutwater_column place_mm, cutwater_column elastic_modulus_GPa,
                                               cutwater_column inboard_stiffness_Nmm1,
                                               cutwater_column outboard_stiffness_Nmm1,
                                               cutwater_column shear_modulus_GPa,
                                               cutwater_result_column deflection_mm,
                                               cutwater_result_column first_load_N,
                                               cutwater_result_column second_load_N, cutwater_rows_report *report);

/*
 * Slenderness L^3/D^4 of an overhung shaft, a screening figure.
 *
 *   overhang_mm                  from the middle of the bearing nearer the impeller to the middle of the impeller's
 *                                vanes; above 0 up to 20000 mm
 *   diameter_mm                  diameter of the solid shaft under the sleeve; from 1 to 5000 mm
 *   -> ratio_permm               slenderness; it has a unit
 *
 *   Equation: L^3/D^4
 *   Source: common practice; McNally Institute, glossary (read): below 60 in^-1 or 2.0 mm^-1
 *   Caution: 60 in^-1 is 2.36 mm^-1 and not 2.0: say which limit is meant, and in which unit.
 *   Caution: It knows neither span, bearings nor steps, nor the force: shaft_deflection_at_seal answers the question
 *            itself.
 */
CUTWATER_API cutwater_status cutwater_shaft_stiffness_ratio(double overhang_mm, double diameter_mm, double *ratio_permm,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shaft_stiffness_ratio_rows(size_t rows, cutwater_column overhang_mm,
                                                    cutwater_column diameter_mm, cutwater_result_column ratio_permm,
                                                    cutwater_rows_report *report);

/*
 * Bounds of a rotor's first critical speed in bending, dry and undamped, from its masses and stepped shaft.
 *
 *   masses_kg                    masses on the shaft: impeller with the liquid in it, coupling half; a series of at
 *                                least 1 point; each above 0 up to 100000 kg
 *   places_mm                    their places, from the end where the sections begin; a series of at least 1 point; each
 *                                from 0 to 20000 mm
 *   lengths_mm                   lengths of the shaft's sections, from the impeller on; a series of at least 1 point;
 *                                each above 0 up to 20000 mm
 *   diameters_mm                 diameters of the sections that bear, without sleeves; a series of at least 1 point;
 *                                each from 1 to 5000 mm
 *   first_bearing_mm             place of the first bearing; from 0 to 20000 mm
 *   second_bearing_mm            place of the second bearing; from 0 to 20000 mm
 *   shaft_density_kgm3           density of the shaft; 0 leaves its mass out; from 0 to 25000 kg/m3; 7850 if left out
 *   elastic_modulus_GPa          modulus of elasticity of the shaft; about 205 for carbon steel, 200 duplex, 193
 *                                austenitic; from 10 to 1000 GPa; 205 if left out
 *   inboard_stiffness_Nmm1       radial stiffness of the bearing nearer the impeller with its housing; left out, rigid;
 *                                from 100 to 1e+12 N/mm; 1e+12 if left out
 *   outboard_stiffness_Nmm1      radial stiffness of the other bearing with its housing; left out, rigid; from 100 to
 *                                1e+12 N/mm; 1e+12 if left out
 *   shear_modulus_GPa            shear modulus of the shaft, about 80 for steel; 0 leaves the deflection by shear out;
 *                                from 0 to 500 GPa; 0 if left out
 *   -> lower_bound_rpm           of point masses by Dunkerley: their first critical speed is not below it
 *   -> upper_bound_rpm           of point masses by Rayleigh: their first critical speed is not above it
 *
 *   Equation: n_D = 1/(2 pi) [Sum m_i a_ii + Integral mu a(x, x) dx]^-0.5; n_R = 1/(2 pi) {a_jj/[Sum m_i a_ij^2 +
 *             Integral mu a(x, x_j)^2 dx]}^0.5; a: deflection by a force of 1, j: the mass with the greatest m a
 *   Must hold of masses: there must not be more than 1000 of them
 *   Must hold of lengths: there must not be more than 1000 of them
 *   Must hold of places: both series must have the same number of points
 *   Must hold of lengths: both series must have the same number of points
 *   Must hold of second_bearing: it must lie beyond the first bearing
 *   Must hold of second_bearing: it must lie on the shaft
 *   Must hold of places: every mass must sit on the shaft
 *   Must hold of shear_modulus: it must be 0, or between a third and half of the modulus of elasticity
 *   Source: S. Dunkerley, Phil. Trans. Royal Society A 185 (1894); Lord Rayleigh, The Theory of Sound; S. P. Timoshenko,
 *           Vibration Problems in Engineering (all from memory); deflections by virtual work
 *   Caution: Bounds of a model of point masses: the disc's own inertia lowers the frequency at rest and the gyroscopic
 *            effect raises it when turning, each by some per cent; wear rings wetted by the liquid raise it. Take plus
 *            or minus 10 %.
 *   Caution: Left out, bearings are rigid and shear counts for nothing, which flatters: springs of 1e5 N/mm make a
 *            typical overhung shaft bend 2.6 times as far at the seal and cost 20 % of its critical speed, shear 3 to 5
 *            %.
 *   Caution: A rotor that may run dry has no help from its rings: judge it by the dry figure.
 *   Caution: A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's
 *            limits and a licensed engineer's judgement go before this figure.
 */
CUTWATER_API cutwater_status cutwater_first_critical_speed(const double *masses_kg, size_t masses_kg_count,
                                              const double *places_mm, size_t places_mm_count,
                                              const double *lengths_mm, size_t lengths_mm_count,
                                              const double *diameters_mm, size_t diameters_mm_count,
                                              double first_bearing_mm, double second_bearing_mm,
                                              double shaft_density_kgm3, double elastic_modulus_GPa,
                                              double inboard_stiffness_Nmm1, double outboard_stiffness_Nmm1,
                                              double shear_modulus_GPa, double *lower_bound_rpm,
                                              double *upper_bound_rpm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_first_critical_speed_rows(size_t rows, const double *masses_kg, size_t masses_kg_count,
                                                   const double *places_mm, size_t places_mm_count,
                                                   const double *lengths_mm, size_t lengths_mm_count,
                                                   const double *diameters_mm, size_t diameters_mm_count,
                                                   cutwater_column first_bearing_mm,
                                                   cutwater_column second_bearing_mm,
                                                   cutwater_column shaft_density_kgm3,
                                                   cutwater_column elastic_modulus_GPa,
                                                   cutwater_column inboard_stiffness_Nmm1,
                                                   cutwater_column outboard_stiffness_Nmm1,
                                                   cutwater_column shear_modulus_GPa,
                                                   cutwater_result_column lower_bound_rpm,
                                                   cutwater_result_column upper_bound_rpm,
                                                   cutwater_rows_report *report);

/*
 * How far the first critical speed lies above the highest running speed, and whether that is enough.
 *
 *   critical_speed_rpm           first critical speed, the lower bound; above 0 up to 100000 1/min
 *   highest_speed_rpm            highest continuous running speed, with a converter its greatest; above 0 up to 100000
 *                                1/min
 *   separation                   separation asked for: 0.10 by ISO 5199, 0.20 wet or 0.30 dry by ISO 13709; from 0 to 5
 *   -> ratio                     critical speed over highest running speed
 *   -> verdict                   whether the separation is kept
 *
 *   Equation: n_c/n_max >= 1 + s
 *   Source: ISO 5199:2002, 4.3.1: 10 %; ISO 13709:2009, 6.9.1.2: 20 % for rotors that run wet, 30 % for those that may
 *           run dry (both from memory)
 *   Caution: A calculated critical speed is good to 10 % at best: a separation of less is no proof.
 *   Caution: For rotors that run below their first critical speed; those that run above it need a full rotordynamic
 *            analysis.
 *   Caution: A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's
 *            limits and a licensed engineer's judgement go before this figure.
 */
CUTWATER_API cutwater_status cutwater_critical_speed_separation(double critical_speed_rpm, double highest_speed_rpm,
                                                   double separation, double *ratio, const char **verdict,
                                                   cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_critical_speed_separation_rows(size_t rows, cutwater_column critical_speed_rpm,
                                                        cutwater_column highest_speed_rpm, cutwater_column separation,
                                                        cutwater_result_column ratio, cutwater_result_column verdict,
                                                        cutwater_rows_report *report);

/*
 * Shear stress at the surface of a shaft under torque.
 *
 *   torque_Nm                    torque at the section, start-up and service factor included where they count; from 0 to
 *                                10000000 N m
 *   diameter_mm                  outside diameter; from 1 to 5000 mm
 *   bore_mm                      bore of a hollow shaft; 0 for a solid one; from 0 to 5000 mm; 0 if left out
 *   -> stress_MPa                nominal shear stress at the surface
 *
 *   Equation: tau = 16 T d/[pi (d^4 - d_i^4)]
 *   Must hold of bore: it must be less than the outside diameter
 *   Source: theory of torsion; T. H. Wentzell, Machine Design, ex. 17.1, in a published companion (read)
 *   Caution: Key seats, threads, grooves and shoulders raise the stress locally, corrosion and fretting take strength
 *            away: a shaft in a corrosive liquid has no endurance limit.
 *   Caution: A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's
 *            limits and a licensed engineer's judgement go before this figure.
 */
CUTWATER_API cutwater_status cutwater_shaft_shear_stress(double torque_Nm, double diameter_mm, double bore_mm, double *stress_MPa,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shaft_shear_stress_rows(size_t rows, cutwater_column torque_Nm, cutwater_column diameter_mm,
                                                 cutwater_column bore_mm, cutwater_result_column stress_MPa,
                                                 cutwater_rows_report *report);

/*
 * Stresses in a solid shaft under bending, torque and axial force together.
 *
 *   bending_moment_Nm            bending moment at the section: radial force times its distance for an overhung
 *                                impeller; from 0 to 10000000 N m
 *   torque_Nm                    torque at the section; from 0 to 10000000 N m
 *   axial_force_N                axial force at the section, either direction; from -10000000 to 10000000 N
 *   diameter_mm                  diameter of the solid shaft at the section; from 1 to 5000 mm
 *   -> normal_stress_MPa         greatest normal stress, from bending and axial force
 *   -> shear_stress_MPa          shear stress at the surface
 *   -> greatest_shear_MPa        greatest shear stress, to compare with half the yield strength
 *   -> equivalent_stress_MPa     equivalent stress by von Mises, to compare with the yield strength
 *
 *   Equation: sigma = 32 M/(pi d^3) + 4 |F_ax|/(pi d^2); tau = 16 T/(pi d^3); tau_max = (sigma^2/4 + tau^2)^0.5; sigma_v
 *             = (sigma^2 + 3 tau^2)^0.5
 *   Source: theory of bending and torsion, greatest shear and von Mises; T. H. Wentzell, Machine Design, ex. 17.1 and
 *           17.2, in a published companion (read)
 *   Caution: Key seats, threads, grooves and shoulders raise the stress locally, corrosion and fretting take strength
 *            away: a shaft in a corrosive liquid has no endurance limit.
 *   Caution: A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's
 *            limits and a licensed engineer's judgement go before this figure.
 */
CUTWATER_API cutwater_status cutwater_shaft_combined_stress(double bending_moment_Nm, double torque_Nm, double axial_force_N,
                                               double diameter_mm, double *normal_stress_MPa,
                                               double *shear_stress_MPa, double *greatest_shear_MPa,
                                               double *equivalent_stress_MPa, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shaft_combined_stress_rows(size_t rows, cutwater_column bending_moment_Nm,
                                                    cutwater_column torque_Nm, cutwater_column axial_force_N,
                                                    cutwater_column diameter_mm,
                                                    cutwater_result_column normal_stress_MPa,
                                                    cutwater_result_column shear_stress_MPa,
                                                    cutwater_result_column greatest_shear_MPa,
                                                    cutwater_result_column equivalent_stress_MPa,
                                                    cutwater_rows_report *report);

/*
 * Endurance limit of a steel shaft in rotating bending, estimated from its tensile strength.
 *
 *   tensile_strength_MPa         tensile strength of the steel; from 100 to 3000 MPa
 *   surface_factor               surface: about 0.8 machined, 0.5 as forged, far less where corroded; above 0 up to 1
 *   size_factor                  size: 0.86 at 30 mm, 0.82 at 50 mm, 0.79 at 60 mm; above 0 up to 1
 *   other_factors                reliability, temperature and the rest; 0.81 for 99 % reliability; above 0 up to 1
 *   -> endurance_limit_MPa       endurance limit of the shaft, without notches
 *
 *   Equation: S_e = k_a k_b k_c min(0.5 S_u, 700 MPa)
 *   Source: J. E. Shigley, Mechanical Engineering Design (from memory of it): half the tensile strength, at most 700
 *           MPa, times Marin's factors; T. H. Wentzell, Machine Design, ex. 17.4, in a published companion (read)
 *   Caution: For steels in air. In seawater, acids and chlorides there is no endurance limit at all, and stainless
 *            steels lose most of it: take the maker's data for the liquid, or keep it off the shaft.
 *   Caution: An estimate to about plus or minus 20 %; tested strength of the bar goes before it.
 */
CUTWATER_API cutwater_status cutwater_shaft_endurance_limit(double tensile_strength_MPa, double surface_factor, double size_factor,
                                               double other_factors, double *endurance_limit_MPa,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shaft_endurance_limit_rows(size_t rows, cutwater_column tensile_strength_MPa,
                                                    cutwater_column surface_factor, cutwater_column size_factor,
                                                    cutwater_column other_factors,
                                                    cutwater_result_column endurance_limit_MPa,
                                                    cutwater_rows_report *report);

/*
 * Safety of a turning solid shaft against fatigue and against yield, under a bending moment that stands still and a
 * torque.
 *
 *   bending_moment_Nm            bending moment at the section; it reverses with every turn; from 0 to 10000000 N m
 *   torque_Nm                    mean torque at the section; from 0 to 10000000 N m
 *   torque_swing_Nm              amplitude of a swinging torque; 0 for a steady one; from 0 to 10000000 N m
 *   diameter_mm                  diameter of the solid shaft at the section; from 1 to 5000 mm
 *   endurance_limit_MPa          endurance limit, by shaft_endurance_limit; above 0 up to 5000 MPa
 *   tensile_strength_MPa         tensile strength; above 0 up to 5000 MPa
 *   yield_strength_MPa           yield strength; above 0 up to 5000 MPa
 *   bending_notch                fatigue notch factor in bending: 1 smooth, about 2 for a key seat; from 1 to 10
 *   torsion_notch                fatigue notch factor in torsion: 1 smooth, about 3 for a key seat; from 1 to 10
 *   -> fatigue_safety            safety against fatigue
 *   -> yield_safety              safety against first yield, notches counted
 *
 *   Equation: 1/n_f = 16/(pi d^3) {[4 (K_f M_a)^2 + 3 (K_fs T_a)^2]^0.5/S_e + 3^0.5 K_fs T_m/S_u}; 1/n_y = 16/(pi d^3)
 *             {4 (K_f M_a)^2 + 3 [K_fs (T_m + T_a)]^2}^0.5/S_y
 *   Must hold of yield_strength: it must not exceed the tensile strength
 *   Must hold of endurance_limit: it must not exceed the tensile strength
 *   Must hold of bending_moment: moment, torque or swing must be above 0: without any there is no stress
 *   Source: distortion energy with Goodman's line, J. E. Shigley and others, Mechanical Engineering Design, 9th edition,
 *           eq. 7-7 and 7-15 (from memory of it)
 *   Caution: Key seats, threads, grooves and shoulders raise the stress locally, corrosion and fretting take strength
 *            away: a shaft in a corrosive liquid has no endurance limit.
 *   Caution: Aim at 1.5 to 2 and more where loads are uncertain: radial thrust is known to about 30 %.
 *   Caution: A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's
 *            limits and a licensed engineer's judgement go before this figure.
 */
CUTWATER_API cutwater_status cutwater_shaft_fatigue_safety(double bending_moment_Nm, double torque_Nm, double torque_swing_Nm,
                                              double diameter_mm, double endurance_limit_MPa,
                                              double tensile_strength_MPa, double yield_strength_MPa,
                                              double bending_notch, double torsion_notch, double *fatigue_safety,
                                              double *yield_safety, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_shaft_fatigue_safety_rows(size_t rows, cutwater_column bending_moment_Nm,
                                                   cutwater_column torque_Nm, cutwater_column torque_swing_Nm,
                                                   cutwater_column diameter_mm, cutwater_column endurance_limit_MPa,
                                                   cutwater_column tensile_strength_MPa,
                                                   cutwater_column yield_strength_MPa, cutwater_column bending_notch,
                                                   cutwater_column torsion_notch,
                                                   cutwater_result_column fatigue_safety,
                                                   cutwater_result_column yield_safety, cutwater_rows_report *report);

/*
 * Shear stress and bearing pressure of a parallel key.
 *
 *   torque_Nm                    torque with its service factor; from 0 to 10000000 N m
 *   shaft_diameter_mm            diameter of the shaft; from 1 to 5000 mm
 *   key_length_mm                bearing length, without the round ends; from 1 to 5000 mm
 *   key_width_mm                 width of the key; from 1 to 5000 mm
 *   bearing_height_mm            height that bears on the weaker side, about half of the key's height; from 0.5 to 500
 *                                mm
 *   -> force_N                   force at the shaft's surface
 *   -> shear_stress_MPa          shear stress in the key
 *   -> bearing_pressure_MPa      pressure on the side of key or seat
 *
 *   Equation: F = 2 T/d; tau = F/(l b); p = F/(l t)
 *   Must hold of bearing_height: it must be less than the shaft's radius
 *   Source: common practice; V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, pp. 342 and 343 (read); T. H.
 *           Wentzell, Machine Design, ex. 15.1, in a published companion (read)
 *   Caution: Compare with the weakest of key, shaft and hub. The taper or shrink fit that shares the torque is left out,
 *            and so is a second key that may carry little.
 *   Caution: Key seats, threads, grooves and shoulders raise the stress locally, corrosion and fretting take strength
 *            away: a shaft in a corrosive liquid has no endurance limit.
 */
CUTWATER_API cutwater_status cutwater_key_pressure(double torque_Nm, double shaft_diameter_mm, double key_length_mm,
                                      double key_width_mm, double bearing_height_mm, double *force_N,
                                      double *shear_stress_MPa, double *bearing_pressure_MPa,
                                      cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_key_pressure_rows(size_t rows, cutwater_column torque_Nm, cutwater_column shaft_diameter_mm,
                                           cutwater_column key_length_mm, cutwater_column key_width_mm,
                                           cutwater_column bearing_height_mm, cutwater_result_column force_N,
                                           cutwater_result_column shear_stress_MPa,
                                           cutwater_result_column bearing_pressure_MPa, cutwater_rows_report *report);

/*
 * Torque that a coupling must be rated for.
 *
 *   power_kW                     power passed on: the motor's rating rather than the shaft power at the duty; above 0 up
 *                                to 1000000 kW
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   service_factor               service factor for drive and duty; 1.5 at least is asked of process pumps by ISO 13709
 *                                (from memory); from 1 to 10; 1.5 if left out
 *   -> torque_Nm                 torque that the coupling must carry continuously
 *
 *   Equation: T = f P/(2 pi n)
 *   Source: common practice; U. C. Jindal, Machine Design, ex. 14-4, in a published companion (read)
 *   Caution: Check the motor's peak and start-up torque, bore, speed, misalignment and balance against the coupling
 *            maker's figures too.
 *   Caution: Never reach into a guard or touch a coupling while the machine can turn or start: isolate and lock it
 *            first.
 */
CUTWATER_API cutwater_status cutwater_coupling_torque(double power_kW, double speed_rpm, double service_factor, double *torque_Nm,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_coupling_torque_rows(size_t rows, cutwater_column power_kW, cutwater_column speed_rpm,
                                              cutwater_column service_factor, cutwater_result_column torque_Nm,
                                              cutwater_rows_report *report);

/*
 * Torque that the pump takes at a part of its speed during start-up.
 *
 *   torque_at_speed_Nm           torque at full speed in the state in which it is started: valve closed, or open against
 *                                no head; from 0 to 10000000 N m
 *   speed_ratio                  speed over full speed; from 0 to 1
 *   breakaway_torque_Nm          torque that sets the rotor turning, of seals, bearings and packing: 0.10 to 0.25 of
 *                                rated is usual; from 0 to 10000000 N m
 *   breakaway_end                speed ratio at which sticking friction has gone; above 0 up to 1; 0.15 if left out
 *   -> torque_Nm                 torque that the pump takes
 *
 *   Equation: T = max[T_n (n/n_n)^2, T_b (1 - n/n_b)]; beyond n_b: T_n (n/n_n)^2
 *   Source: torque with the square of the speed by affinity; breakaway falling straight to nothing: common practice
 *   Caution: Axial and mixed-flow pumps take more torque at closed valve than at the duty: start them as their maker
 *            says.
 *   Caution: A pump that fills a long empty line starts against little head and takes the torque of a high flow.
 *   Caution: Never reach into a guard or touch a coupling while the machine can turn or start: isolate and lock it
 *            first.
 */
CUTWATER_API cutwater_status cutwater_starting_torque(double torque_at_speed_Nm, double speed_ratio, double breakaway_torque_Nm,
                                         double breakaway_end, double *torque_Nm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_starting_torque_rows(size_t rows, cutwater_column torque_at_speed_Nm,
                                              cutwater_column speed_ratio, cutwater_column breakaway_torque_Nm,
                                              cutwater_column breakaway_end, cutwater_result_column torque_Nm,
                                              cutwater_rows_report *report);

/*
 * Time that a motor needs to bring the pump up to speed.
 *
 *   speeds_rpm                   speeds of the motor's torque curve, from rest to the speed that counts as reached; a
 *                                series of at least 2 points, rising; each from 0 to 100000 1/min
 *   motor_torques_Nm             motor torques at these speeds, at the voltage that the start leaves; a series of at
 *                                least 2 points; each from 0 to 10000000 N m
 *   pump_torque_Nm               torque of the pump at the last speed, in the state in which it is started; from 0 to
 *                                10000000 N m
 *   breakaway_torque_Nm          torque that sets the rotor turning; from 0 to 10000000 N m
 *   inertia_kgm2                 moment of inertia of motor, coupling and pump with its liquid, about the shaft; above 0
 *                                up to 1000000 kg m2
 *   breakaway_end                speed ratio at which sticking friction has gone; above 0 up to 1; 0.15 if left out
 *   -> time_s                    time from the first speed to the last
 *
 *   Equation: t = J Integral domega/(T_motor - T_pump); T_motor straight between points; T_pump = max[T_n (n/n_n)^2, T_b
 *             (1 - n/n_b)]
 *   Must hold of motor_torques: both series must have the same number of points
 *   Must hold of speeds: they must begin at rest, at 0 1/min
 *   Source: moment of momentum; motor curve as IEC 60034-12 gives its least values (from memory of it)
 *   Caution: The motor's torque falls with the square of the voltage: a weak supply, a star start or a soft starter may
 *            leave too little.
 *   Caution: Stop the curve a little short of full load speed: there the torques meet and the time has no end.
 *   Caution: Compare with the motor's permitted starting time, hot and cold, and the number of starts in a row.
 *   Caution: Never reach into a guard or touch a coupling while the machine can turn or start: isolate and lock it
 *            first.
 */
CUTWATER_API cutwater_status cutwater_run_up_time(const double *speeds_rpm, size_t speeds_rpm_count,
                                     const double *motor_torques_Nm, size_t motor_torques_Nm_count,
                                     double pump_torque_Nm, double breakaway_torque_Nm, double inertia_kgm2,
                                     double breakaway_end, double *time_s, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_run_up_time_rows(size_t rows, const double *speeds_rpm, size_t speeds_rpm_count,
                                          const double *motor_torques_Nm, size_t motor_torques_Nm_count,
                                          cutwater_column pump_torque_Nm, cutwater_column breakaway_torque_Nm,
                                          cutwater_column inertia_kgm2, cutwater_column breakaway_end,
                                          cutwater_result_column time_s, cutwater_rows_report *report);

/*
 * Zone of a pump's vibration on its bearing housings.
 *
 *   category                     I: high reliability, availability or safety asked for, dangerous liquids; II: general
 *                                or less critical use; "I" or "II"
 *   power_kW                     rated power of the pump; above 1 up to 1000000 kW
 *   velocity_mms                 greatest r.m.s. velocity measured on the bearing housings; from 0 to below 1000 mm/s
 *   -> zone                      A: newly commissioned; B: unrestricted; C: for a limited time only; D: can cause
 *                                damage; on a limit, the better zone
 *   -> upper_a_mms               upper limit of zone A
 *   -> upper_b_mms               upper limit of zone B
 *   -> upper_c_mms               upper limit of zone C
 *
 *   Equation: I up to 200 kW: A 2.5, B 4.0, C 6.6; I above: 3.5, 5.0, 7.6; II up to 200 kW: 3.2, 5.1, 8.5; II above:
 *             4.2, 6.1, 9.5 mm/s
 *   Source: ISO 10816-7:2009, Table 1: limits as quoted from it in Europump, Guidelines on Pump Vibration, 2013, pp. 8
 *           and 9, by a public audit (excerpts read), and in two public programs; alarm and trip above 200 kW worked out
 *           here as 1.25 times the upper limits of zones B and C, which the printed ones fit
 *   Caution: For the r.m.s. velocity on the bearing housings, 10 to 1000 Hz, at steady running in the allowable range of
 *            flow, from 600 1/min up (from memory of the standard); the stiffness of the support does not enter. Limits
 *            of ISO 10816-3 are others.
 *   Caution: A rise from the machine's own baseline tells more than the zone: look into a change of 25 % of the upper
 *            limit of zone B even within zone B.
 *   Caution: A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's
 *            limits and a licensed engineer's judgement go before this figure.
 *   Caution: Never reach into a guard or touch a coupling while the machine can turn or start: isolate and lock it
 *            first.
 */
CUTWATER_API cutwater_status cutwater_vibration_zone(const char *category, double power_kW, double velocity_mms, const char **zone,
                                        double *upper_a_mms, double *upper_b_mms, double *upper_c_mms,
                                        cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_vibration_zone_rows(size_t rows, const char *category, cutwater_column power_kW,
                                             cutwater_column velocity_mms, cutwater_result_column zone,
                                             cutwater_result_column upper_a_mms, cutwater_result_column upper_b_mms,
                                             cutwater_result_column upper_c_mms, cutwater_rows_report *report);

/*
 * Presets for vibration alarm and trip of a pump from its baseline.
 *
 *   category                     I: high reliability, availability or safety asked for, dangerous liquids; II: general
 *                                or less critical use; "I" or "II"
 *   power_kW                     rated power of the pump; above 1 up to 1000000 kW
 *   baseline_mms                 r.m.s. velocity at the same place when in good order; from 0 to below 1000 mm/s
 *   -> alarm_mms                 alarm: baseline and a quarter of the upper limit of zone B, at most the greatest alarm
 *   -> greatest_alarm_mms        greatest alarm
 *   -> greatest_trip_mms         greatest trip, one for all machines of a design
 *
 *   Equation: v_al = min(v_0 + 0.25 v_B, v_al,max); greatest alarm and trip: I up to 200 kW 5.0 and 8.3, above 6.3 and
 *             9.5; II up to 200 kW 6.4 and 10.6, above 7.6 and 11.9 mm/s
 *   Source: ISO 10816-7:2009, Table 1: limits as quoted from it in Europump, Guidelines on Pump Vibration, 2013, pp. 8
 *           and 9, by a public audit (excerpts read), and in two public programs; alarm and trip above 200 kW worked out
 *           here as 1.25 times the upper limits of zones B and C, which the printed ones fit
 *   Caution: For the r.m.s. velocity on the bearing housings, 10 to 1000 Hz, at steady running in the allowable range of
 *            flow, from 600 1/min up (from memory of the standard); the stiffness of the support does not enter. Limits
 *            of ISO 10816-3 are others.
 *   Caution: A baseline near the greatest alarm shows a machine that needs work, not a preset.
 *   Caution: A rotor that fails in service can release hot, toxic or flammable liquid at the seal: the pump maker's
 *            limits and a licensed engineer's judgement go before this figure.
 *   Caution: Never reach into a guard or touch a coupling while the machine can turn or start: isolate and lock it
 *            first.
 */
CUTWATER_API cutwater_status cutwater_vibration_alarm_trip(const char *category, double power_kW, double baseline_mms,
                                              double *alarm_mms, double *greatest_alarm_mms,
                                              double *greatest_trip_mms, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_vibration_alarm_trip_rows(size_t rows, const char *category, cutwater_column power_kW,
                                                   cutwater_column baseline_mms, cutwater_result_column alarm_mms,
                                                   cutwater_result_column greatest_alarm_mms,
                                                   cutwater_result_column greatest_trip_mms,
                                                   cutwater_rows_report *report);

/*
 * Frequency at which the impeller's vanes pass the cutwater.
 *
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   vanes                        vanes of the impeller; a whole number from 1 to 50
 *   -> frequency_Hz              vane passing frequency; its multiples show too
 *
 *   Equation: f = z n
 *   Source: common practice
 *   Caution: Strong at low flow, with a small gap to the cutwater, or where it meets a natural frequency of piping or
 *            base; a double volute can double it.
 */
CUTWATER_API cutwater_status cutwater_vane_passing_frequency(double speed_rpm, double vanes, double *frequency_Hz,
                                                cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_vane_passing_frequency_rows(size_t rows, cutwater_column speed_rpm, cutwater_column vanes,
                                                     cutwater_result_column frequency_Hz,
                                                     cutwater_rows_report *report);

/*
 * Residual unbalance that a balance quality grade permits.
 *
 *   grade_mms                    balance quality grade: 6.3 for process pump impellers, 2.5 where ISO 13709 applies;
 *                                from 0.1 to 4000 mm/s
 *   mass_kg                      mass of the rotor or impeller that is balanced; above 0 up to 1000000 kg
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   -> unbalance_gmm             permissible residual unbalance, of all planes together
 *   -> eccentricity_um           permissible eccentricity of the mass; in g mm/kg the same number
 *
 *   Equation: e_per = G/omega; U_per = m e_per
 *   Source: ISO 21940-11:2016 (before: ISO 1940-1), G = e_per omega (from memory); an article on balance standards in a
 *           trade journal gives U = 6.015 G W/N oz in (excerpt read)
 *   Caution: Split over two planes by the bearings' shares, not by halves for an overhung impeller; its grade does not
 *            hold for a rotor that bends in service.
 *   Caution: Balance with the key convention of shaft and hub; a new impeller alone does not balance the rotor.
 */
CUTWATER_API cutwater_status cutwater_permissible_unbalance(double grade_mms, double mass_kg, double speed_rpm,
                                               double *unbalance_gmm, double *eccentricity_um,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_permissible_unbalance_rows(size_t rows, cutwater_column grade_mms, cutwater_column mass_kg,
                                                    cutwater_column speed_rpm, cutwater_result_column unbalance_gmm,
                                                    cutwater_result_column eccentricity_um,
                                                    cutwater_rows_report *report);

/*
 * Balance quality grade that a residual unbalance amounts to.
 *
 *   unbalance_gmm                residual unbalance; from 0 to 1000000000 g mm
 *   mass_kg                      mass of the rotor or impeller that is balanced; above 0 up to 1000000 kg
 *   speed_rpm                    highest running speed in service; above 0 up to 100000 1/min
 *   -> grade_mms                 the residual unbalance times the angular velocity, over the mass; to compare with the
 *                                grade asked for
 *
 *   Equation: G = U omega/m
 *   Source: ISO 21940-11:2016 (before: ISO 1940-1), G = e_per omega (from memory); an article on balance standards in a
 *           trade journal gives U = 6.015 G W/N oz in (excerpt read)
 *   Caution: Judge it at the speed of service, not at that of the balancing machine.
 */
CUTWATER_API cutwater_status cutwater_balance_grade(double unbalance_gmm, double mass_kg, double speed_rpm, double *grade_mms,
                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_balance_grade_rows(size_t rows, cutwater_column unbalance_gmm, cutwater_column mass_kg,
                                            cutwater_column speed_rpm, cutwater_result_column grade_mms,
                                            cutwater_rows_report *report);

/*
 * Turning force of an unbalance.
 *
 *   unbalance_gmm                unbalance: mass times its radius; from 0 to 1000000000 g mm
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   -> force_N                   force, turning with the shaft
 *
 *   Equation: F_u = U omega^2
 *   Source: centripetal force, common practice
 *   Caution: It turns with the shaft and bends it the same way all the time: it loads bearings and base, and tires the
 *            shaft less than a radial force that stands still.
 *   Caution: Grows with the square of the speed: check at the highest speed of a converter drive.
 */
CUTWATER_API cutwater_status cutwater_unbalance_force(double unbalance_gmm, double speed_rpm, double *force_N,
                                         cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_unbalance_force_rows(size_t rows, cutwater_column unbalance_gmm, cutwater_column speed_rpm,
                                              cutwater_result_column force_N, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

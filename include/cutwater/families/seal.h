/* generated from the catalogue by cutwater-generate; do not edit. */
/* Shaft seal and its chamber. */
#ifndef CUTWATER_FAMILIES_SEAL_H
#define CUTWATER_FAMILIES_SEAL_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/*
 * Part of the differential pressure that stands in the seal chamber, by the pump's arrangement.
 *
 *   arrangement                  balance holes behind a back ring; back vanes (pump-out vanes) at full diameter near
 *                                best efficiency; no back ring and no holes; double suction; "balance holes", "back
 *                                vanes", "no back ring" or "double suction"
 *   -> fraction                  part of the differential pressure
 *   -> low                       low end of its scatter, for the margin to boiling
 *   -> high                      high end of its scatter, for the seal's rating
 *
 *   Equation: C, C_low to C_high = 0.15, 0.05 to 0.25 balance holes; 0.10, -0.10 to 0.30 back vanes; 1, 0.50 to 1 no
 *             back ring; 0, 0 to 0.10 double suction
 *   Source: arrangements: J. E. Pope (ed.), Rules of Thumb for Mechanical Engineers, Gulf 1997, p. 82 (page read; its
 *           numbers stand in pictures, 0.15 and 0.10 from memory of it); the ends of the ranges are estimates
 *   Caution: Back vanes: up to 0.3 at the least impeller diameter, near 0 and below suction at closed valve; with known
 *            sizes use back_vane_chamber_pressure.
 *   Caution: Blocked holes or a missing ring put far more than C_high behind the impeller. Without a back ring the
 *            turning liquid takes off part of the discharge pressure: 1 is its upper end.
 *   Caution: Balance holes: with known ring and holes use balance_hole_chamber_pressure. Vertical multistage pumps have
 *            no such rule.
 *   Caution: Read the chamber's own gauge where there is one: worn rings, a blocked balance hole or a changed gap move
 *            this pressure without moving the curve.
 */
CUTWATER_API cutwater_status cutwater_seal_chamber_fraction(const char *arrangement, double *fraction, double *low, double *high,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_chamber_fraction_rows(size_t rows, const char *arrangement,
                                                    cutwater_result_column fraction, cutwater_result_column low,
                                                    cutwater_result_column high, cutwater_rows_report *report);

/*
 * Pressure in the seal chamber from suction and discharge pressure.
 *
 *   suction_pressure_barg        pressure at the pump's suction, gauge; above -1.1 up to 500 barg
 *   discharge_pressure_barg      pressure at the pump's discharge, gauge; above -1.1 up to 1000 barg
 *   fraction                     part of the differential pressure in the chamber: seal_chamber_fraction's, or measured;
 *                                below 0 for strong back vanes; from -0.5 to 1
 *   ambient_pressure_bara        barometric pressure on site, for the absolute pressure; from 0.3 to 2 bara; 1.01325 if
 *                                left out
 *   -> chamber_pressure_barg     pressure in the chamber, gauge
 *   -> absolute_pressure_bara    the same, absolute
 *
 *   Equation: p_c = p_s + C (p_d - p_s)
 *   Must hold of suction_pressure: it must lie above vacuum at this ambient pressure
 *   Must hold of discharge_pressure: it must not be lower than the suction pressure
 *   Source: J. E. Pope (ed.), Rules of Thumb for Mechanical Engineers, Gulf 1997, p. 82 (page read, equations in
 *           pictures)
 *   Caution: Take the lowest pressure for the margin to boiling and the highest for the seal's rating; at closed valve
 *            and at start both differ.
 *   Caution: Read the chamber's own gauge where there is one: worn rings, a blocked balance hole or a changed gap move
 *            this pressure without moving the curve.
 *   Caution: Below the ambient pressure the faces draw air in and a single seal may run dry.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_seal_chamber_pressure(double suction_pressure_barg, double discharge_pressure_barg,
                                               double fraction, double ambient_pressure_bara,
                                               double *chamber_pressure_barg, double *absolute_pressure_bara,
                                               cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_chamber_pressure_rows(size_t rows, cutwater_column suction_pressure_barg,
                                                    cutwater_column discharge_pressure_barg, cutwater_column fraction,
                                                    cutwater_column ambient_pressure_bara,
                                                    cutwater_result_column chamber_pressure_barg,
                                                    cutwater_result_column absolute_pressure_bara,
                                                    cutwater_rows_report *report);

/*
 * Pressure behind an impeller with a back ring and balance holes, by the ring's clearance and the holes.
 *
 *   suction_pressure_barg        pressure at the pump's suction, gauge; above -1.1 up to 500 barg
 *   ring_pressure_difference_bar pressure outside the back ring over the suction pressure; at least 0 bar
 *   ring_diameter_mm             diameter of the back ring; from 1 to 10000 mm
 *   radial_clearance_mm          radial clearance of the back ring, half the difference of the diameters; above 0 up to
 *                                10 mm
 *   holes                        number of balance holes; a whole number from 1 to 100
 *   hole_diameter_mm             diameter of each hole; above 0 up to 200 mm
 *   coefficient_ratio            discharge coefficient of the holes over that of the ring; from 0.3 to 3; 1 if left out
 *   ambient_pressure_bara        barometric pressure on site, for the absolute pressure; from 0.3 to 2 bara; 1.01325 if
 *                                left out
 *   -> chamber_pressure_barg     pressure inside the back ring, gauge
 *   -> absolute_pressure_bara    the same, absolute
 *   -> area_ratio                area of the holes over that of the ring's clearance
 *
 *   Equation: p_c = p_s + dp_r/(1 + (c A_h/A_r)^2), A_h = z (pi/4) d_h^2, A_r = pi D_r s
 *   Must hold of suction_pressure: it must lie above vacuum at this ambient pressure
 *   Source: ring and holes as orifices in series: continuity and Bernoulli's equation; common practice
 *   Caution: The clearance here is radial; balance_hole_pressure asks for the diametral one.
 *   Caution: As the back ring wears its area grows and with it the chamber's pressure and the axial thrust; the holes
 *            should have 4 to 5 times the ring's area (common practice).
 *   Caution: Swirl before the holes and the throttling of a long ring are left out: +-30 % of the difference.
 *   Caution: Read the chamber's own gauge where there is one: worn rings, a blocked balance hole or a changed gap move
 *            this pressure without moving the curve.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_balance_hole_chamber_pressure(double suction_pressure_barg,
                                                       double ring_pressure_difference_bar, double ring_diameter_mm,
                                                       double radial_clearance_mm, double holes,
                                                       double hole_diameter_mm, double coefficient_ratio,
                                                       double ambient_pressure_bara, double *chamber_pressure_barg,
                                                       double *absolute_pressure_bara, double *area_ratio,
                                                       cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_balance_hole_chamber_pressure_rows(size_t rows, cutwater_column suction_pressure_barg,
                                                            cutwater_column ring_pressure_difference_bar,
                                                            cutwater_column ring_diameter_mm,
                                                            cutwater_column radial_clearance_mm,
                                                            cutwater_column holes, cutwater_column hole_diameter_mm,
                                                            cutwater_column coefficient_ratio,
                                                            cutwater_column ambient_pressure_bara,
                                                            cutwater_result_column chamber_pressure_barg,
                                                            cutwater_result_column absolute_pressure_bara,
                                                            cutwater_result_column area_ratio,
                                                            cutwater_rows_report *report);

/*
 * Pressure in the seal chamber behind back vanes, by their height and gap, and the force on the impeller's back.
 *
 *   suction_pressure_barg        pressure at the pump's suction, gauge; above -1.1 up to 500 barg
 *   rim_pressure_difference_bar  static pressure at the impeller's rim over the suction pressure, about 0.75 of the
 *                                total; at least 0 bar
 *   density_kgm3                 density of the liquid; from 50 to 25000 kg/m3
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   impeller_diameter_mm         diameter of the impeller's back shroud; from 1 to 10000 mm
 *   vane_diameter_mm             outer diameter of the back vanes; equal to the inner one without vanes; from 1 to 10000
 *                                mm
 *   inner_diameter_mm            diameter at which the chamber begins and the vanes end; from 1 to 10000 mm
 *   vane_height_mm               axial height of the back vanes; from 0 to 200 mm
 *   vane_gap_mm                  axial gap between the vanes and the back cover: clearance as it is now; above 0 up to
 *                                200 mm
 *   core_rotation                speed of the liquid's core before a smooth shroud over the impeller's; from 0.2 to 0.9;
 *                                0.5 if left out
 *   ambient_pressure_bara        barometric pressure on site, for the absolute pressure; from 0.3 to 2 bara; 1.01325 if
 *                                left out
 *   -> chamber_pressure_barg     pressure at the inner diameter, gauge
 *   -> absolute_pressure_bara    the same, absolute
 *   -> back_force_N              force on the back shroud from the inner diameter out, over the suction pressure;
 *                                towards the suction
 *
 *   Equation: p_c = p_s + dp_2 - (rho w^2/2) [k^2 (R_2^2 - R_v^2) + k_v^2 (R_v^2 - r^2)], k_v = k + (1 - k) t/(t + g)
 *   Must hold of suction_pressure: it must lie above vacuum at this ambient pressure
 *   Must hold of vane_diameter: it must not exceed the impeller diameter
 *   Must hold of inner_diameter: it must not exceed the outer diameter of the vanes
 *   Source: forced vortex; the vanes' core rotation after A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd ed.
 *           1957, for k = 1/2 (1/2)(1 + t/(t + g)) (from memory of it)
 *   Caution: A small difference of large numbers: each side carries +-30 %. Check it once against a gauge on the
 *            chamber.
 *   Caution: The pressure falls as the gap closes and as the impeller loses head; it may come below suction: the vanes
 *            then empty the chamber.
 *   Caution: Below the ambient pressure the faces draw air in and a single seal may run dry.
 *   Caution: Take the lowest pressure for the margin to boiling and the highest for the seal's rating; at closed valve
 *            and at start both differ.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_back_vane_chamber_pressure(double suction_pressure_barg, double rim_pressure_difference_bar,
                                                    double density_kgm3, double speed_rpm,
                                                    double impeller_diameter_mm, double vane_diameter_mm,
                                                    double inner_diameter_mm, double vane_height_mm,
                                                    double vane_gap_mm, double core_rotation,
                                                    double ambient_pressure_bara, double *chamber_pressure_barg,
                                                    double *absolute_pressure_bara, double *back_force_N,
                                                    cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_back_vane_chamber_pressure_rows(size_t rows, cutwater_column suction_pressure_barg,
                                                         cutwater_column rim_pressure_difference_bar,
                                                         cutwater_column density_kgm3, cutwater_column speed_rpm,
                                                         cutwater_column impeller_diameter_mm,
                                                         cutwater_column vane_diameter_mm,
                                                         cutwater_column inner_diameter_mm,
                                                         cutwater_column vane_height_mm, cutwater_column vane_gap_mm,
                                                         cutwater_column core_rotation,
                                                         cutwater_column ambient_pressure_bara,
                                                         cutwater_result_column chamber_pressure_barg,
                                                         cutwater_result_column absolute_pressure_bara,
                                                         cutwater_result_column back_force_N,
                                                         cutwater_rows_report *report);

/*
 * Pressure to hold on the barrier liquid of a pressurised double seal.
 *
 *   chamber_pressure_barg        highest pressure that the chamber can have, gauge: closed valve and worn back ring
 *                                included; above -1.1 up to 1000 barg
 *   margin_bar                   what the barrier liquid keeps above it; above 0 up to 50 bar; 1.4 if left out
 *   ambient_pressure_bara        barometric pressure on site, for the absolute pressure; from 0.3 to 2 bara; 1.01325 if
 *                                left out
 *   -> barrier_pressure_barg     least pressure of the barrier liquid, gauge; the outer seal holds it against the
 *                                ambient
 *   -> absolute_pressure_bara    the same, absolute
 *
 *   Equation: p_b = p_c + dp
 *   Must hold of chamber_pressure: it must lie above vacuum at this ambient pressure
 *   Source: ISO 21049 / API 682: at least 0.14 MPa (20 psi) above the seal chamber (from memory of it; guidance pages
 *           repeat 1.4, 1.5 and 2 bar)
 *   Caution: Below the chamber's pressure the product enters the barrier liquid and the seal's faces may open: alarm on
 *            a falling barrier pressure.
 *   Caution: Both seals warm the barrier liquid: its own cooling and its vapour pressure want checking.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_seal_barrier_pressure(double chamber_pressure_barg, double margin_bar,
                                               double ambient_pressure_bara, double *barrier_pressure_barg,
                                               double *absolute_pressure_bara, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_barrier_pressure_rows(size_t rows, cutwater_column chamber_pressure_barg,
                                                    cutwater_column margin_bar, cutwater_column ambient_pressure_bara,
                                                    cutwater_result_column barrier_pressure_barg,
                                                    cutwater_result_column absolute_pressure_bara,
                                                    cutwater_rows_report *report);

/*
 * Part of the sealed pressure that closes the faces of a mechanical seal.
 *
 *   face_outer_diameter_mm       outer diameter of the contact of the faces; above 0 up to 1000 mm
 *   face_inner_diameter_mm       inner diameter of the contact of the faces; above 0 up to 1000 mm
 *   balance_diameter_mm          diameter on which the sliding ring is sealed; bellows: their effective diameter; above
 *                                0 up to 1000 mm
 *   pressure_side                where the sealed pressure stands: outside of the faces, or inside; "outside" or
 *                                "inside"; "outside" if left out
 *   -> balance_ratio             loaded area over the area of the faces; above 1 the seal is unbalanced
 *
 *   Equation: B = (D_o^2 - D_b^2)/(D_o^2 - D_i^2) outside; B = (D_b^2 - D_i^2)/(D_o^2 - D_i^2) inside
 *   Must hold of face_inner_diameter: it must be less than the outer diameter of the faces
 *   Must hold of balance_diameter: it must be less than the outer diameter of the faces
 *   Must hold of balance_diameter: under pressure from inside it must exceed the inner diameter of the faces
 *   Source: ISO 21049:2004 / API 682, annex F (from memory of it), the same as I. J. Karassik et al., Pump Handbook,
 *           mechanical seals (excerpt read)
 *   Caution: A bellows' effective diameter moves with pressure: take the seal maker's.
 */
CUTWATER_API cutwater_status cutwater_seal_balance_ratio(double face_outer_diameter_mm, double face_inner_diameter_mm,
                                            double balance_diameter_mm, const char *pressure_side,
                                            double *balance_ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_balance_ratio_rows(size_t rows, cutwater_column face_outer_diameter_mm,
                                                 cutwater_column face_inner_diameter_mm,
                                                 cutwater_column balance_diameter_mm, const char *pressure_side,
                                                 cutwater_result_column balance_ratio, cutwater_rows_report *report);

/*
 * Rubbing speed of the faces at their mean diameter.
 *
 *   face_outer_diameter_mm       outer diameter of the contact of the faces; above 0 up to 1000 mm
 *   face_inner_diameter_mm       inner diameter of the contact of the faces; above 0 up to 1000 mm
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   -> face_speed_ms             speed at the mean diameter
 *
 *   Equation: v = pi n (D_o + D_i)/2
 *   Must hold of face_inner_diameter: it must be less than the outer diameter of the faces
 *   Source: ISO 21049:2004 / API 682, annex F (from memory of it), the same as I. J. Karassik et al., Pump Handbook,
 *           mechanical seals (excerpt read)
 *   Caution: From about 23 m/s (4500 ft/min) up the flexible part should stand still (API 682, from memory of it).
 */
CUTWATER_API cutwater_status cutwater_seal_face_speed(double face_outer_diameter_mm, double face_inner_diameter_mm,
                                         double speed_rpm, double *face_speed_ms, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_face_speed_rows(size_t rows, cutwater_column face_outer_diameter_mm,
                                              cutwater_column face_inner_diameter_mm, cutwater_column speed_rpm,
                                              cutwater_result_column face_speed_ms, cutwater_rows_report *report);

/*
 * Pressure between the faces of a mechanical seal that the film does not carry.
 *
 *   sealed_pressure_bar          pressure across the faces: the chamber's over what stands on their other side; at least
 *                                0 bar
 *   balance_ratio                part of it that closes the faces, as from seal_balance_ratio; from 0 to 3
 *   spring_force_N               force of spring or bellows at working length; at least 0 N
 *   face_outer_diameter_mm       outer diameter of the contact of the faces; above 0 up to 1000 mm
 *   face_inner_diameter_mm       inner diameter of the contact of the faces; above 0 up to 1000 mm
 *   pressure_drop_coefficient    mean pressure in the film over the sealed one: 0.5 for flat faces and a liquid that
 *                                stays one, 0.5 to 0.8 when it flashes; from 0 to 1; 0.5 if left out
 *   -> face_pressure_bar         net pressure on the area of the faces
 *   -> spring_pressure_bar       the spring's part of it
 *   -> face_area_mm2             area of the faces
 *
 *   Equation: p_f = dp (B - K) + F_sp/A, A = (pi/4)(D_o^2 - D_i^2)
 *   Must hold of face_inner_diameter: it must be less than the outer diameter of the faces
 *   Source: ISO 21049:2004 / API 682, annex F (from memory of it), the same as I. J. Karassik et al., Pump Handbook,
 *           mechanical seals (excerpt read)
 *   Caution: Distortion by heat and pressure moves K either way; a flashing liquid raises it until the faces part.
 *   Caution: The seal maker's limits for the pair of face materials, the liquid and the cooling go before any general
 *            figure.
 */
CUTWATER_API cutwater_status cutwater_seal_face_pressure(double sealed_pressure_bar, double balance_ratio, double spring_force_N,
                                            double face_outer_diameter_mm, double face_inner_diameter_mm,
                                            double pressure_drop_coefficient, double *face_pressure_bar,
                                            double *spring_pressure_bar, double *face_area_mm2,
                                            cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_face_pressure_rows(size_t rows, cutwater_column sealed_pressure_bar,
                                                 cutwater_column balance_ratio, cutwater_column spring_force_N,
                                                 cutwater_column face_outer_diameter_mm,
                                                 cutwater_column face_inner_diameter_mm,
                                                 cutwater_column pressure_drop_coefficient,
                                                 cutwater_result_column face_pressure_bar,
                                                 cutwater_result_column spring_pressure_bar,
                                                 cutwater_result_column face_area_mm2, cutwater_rows_report *report);

/*
 * Product of face pressure and face speed, the measure of a seal's wear.
 *
 *   face_pressure_bar            net pressure between the faces, as from seal_face_pressure; at least 0 bar
 *   face_speed_ms                rubbing speed, as from seal_face_speed; at least 0 m/s
 *   -> pressure_velocity_barms   to compare with the limit for the pair of materials
 *
 *   Equation: p v = p_f v
 *   Source: ISO 21049:2004 / API 682, annex F (from memory of it), the same as I. J. Karassik et al., Pump Handbook,
 *           mechanical seals (excerpt read)
 *   Caution: Makers' limits differ in what they call p: some take the whole sealed pressure. Compare like with like.
 *   Caution: The seal maker's limits for the pair of face materials, the liquid and the cooling go before any general
 *            figure.
 */
CUTWATER_API cutwater_status cutwater_seal_pressure_velocity(double face_pressure_bar, double face_speed_ms,
                                                double *pressure_velocity_barms, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_pressure_velocity_rows(size_t rows, cutwater_column face_pressure_bar,
                                                     cutwater_column face_speed_ms,
                                                     cutwater_result_column pressure_velocity_barms,
                                                     cutwater_rows_report *report);

/*
 * Heat that one pair of faces makes, and the seal's torque.
 *
 *   face_pressure_bar            net pressure between the faces, as from seal_face_pressure; at least 0 bar
 *   face_outer_diameter_mm       outer diameter of the contact of the faces; above 0 up to 1000 mm
 *   face_inner_diameter_mm       inner diameter of the contact of the faces; above 0 up to 1000 mm
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   friction_coefficient         of the pair of faces in this liquid; 0.07 in the standard's example; above 0 up to 1
 *   start_factor                 torque at start over the running one; from 1 to 10; 5 if left out
 *   -> heat_kW                   heat of one pair of faces
 *   -> torque_Nm                 running torque of one pair
 *   -> start_torque_Nm           torque to break it away
 *
 *   Equation: P = f p_f A v; T = f p_f A (D_o + D_i)/4; T_st = c_st T
 *   Must hold of face_inner_diameter: it must be less than the outer diameter of the faces
 *   Source: ISO 21049:2004 / API 682, annex F (from memory of it); starting power about five times the running one: Pump
 *           Handbook (excerpt read), 3 to 5 in annex F
 *   Caution: The friction coefficient carries +-50 %: higher in oil, and it grows when the film boils.
 *   Caution: A double seal makes the heat of both pairs.
 *   Caution: The seal maker's limits for the pair of face materials, the liquid and the cooling go before any general
 *            figure.
 */
CUTWATER_API cutwater_status cutwater_seal_face_heat(double face_pressure_bar, double face_outer_diameter_mm,
                                        double face_inner_diameter_mm, double speed_rpm, double friction_coefficient,
                                        double start_factor, double *heat_kW, double *torque_Nm,
                                        double *start_torque_Nm, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_face_heat_rows(size_t rows, cutwater_column face_pressure_bar,
                                             cutwater_column face_outer_diameter_mm,
                                             cutwater_column face_inner_diameter_mm, cutwater_column speed_rpm,
                                             cutwater_column friction_coefficient, cutwater_column start_factor,
                                             cutwater_result_column heat_kW, cutwater_result_column torque_Nm,
                                             cutwater_result_column start_torque_Nm, cutwater_rows_report *report);

/*
 * Heat transfer coefficient from a rotating seal ring to the liquid around it.
 *
 *   ring_diameter_mm             outer diameter of the ring; above 0 up to 1000 mm
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   viscosity_mm2s               kinematic viscosity of the liquid; from 0.01 to 1000000 mm2/s
 *   prandtl_number               Prandtl number of the liquid, c_p mu/lambda; from 0.5 to 1000
 *   conductivity_WmK             thermal conductivity of the liquid; from 0.1 to 1000 W/(m K)
 *   -> film_coefficient_Wm2K     heat transfer coefficient
 *   -> reynolds_number           pi n D^2/nu
 *   -> nusselt_number            Nusselt number
 *
 *   Equation: Nu = h D/lambda = 0.133 Re^(2/3) Pr^(1/3), Re = w D^2/(2 nu)
 *   Source: K. M. Becker, Int. J. Heat Mass Transfer 6 (1963) 1053-1062, a cylinder turning in water, Re 1000 to 46000
 *           (from memory of it); beyond that an extrapolation, as the literature of seals has it
 *   Caution: +-30 %. Beyond Re 46000 it lies low, so that the faces come out too warm rather than too cool: the analogy
 *            of W. M. Kays and I. S. Bjorklund (1958, from memory of it) agrees within a fifth at Re 40000 and gives 1.5
 *            to 2 times as much at 1 to 4 millions.
 *   Caution: For a ring in much liquid; in a narrow chamber the liquid turns along and takes up less.
 */
CUTWATER_API cutwater_status cutwater_rotating_ring_film_coefficient(double ring_diameter_mm, double speed_rpm,
                                                        double viscosity_mm2s, double prandtl_number,
                                                        double conductivity_WmK, double *film_coefficient_Wm2K,
                                                        double *reynolds_number, double *nusselt_number,
                                                        cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_rotating_ring_film_coefficient_rows(size_t rows, cutwater_column ring_diameter_mm,
                                                             cutwater_column speed_rpm,
                                                             cutwater_column viscosity_mm2s,
                                                             cutwater_column prandtl_number,
                                                             cutwater_column conductivity_WmK,
                                                             cutwater_result_column film_coefficient_Wm2K,
                                                             cutwater_result_column reynolds_number,
                                                             cutwater_result_column nusselt_number,
                                                             cutwater_rows_report *report);

/*
 * How much warmer the faces of a mechanical seal are than the liquid in the chamber.
 *
 *   face_heat_kW                 heat of this pair of faces, as from seal_face_heat; from 0 to 1000 kW
 *   face_outer_diameter_mm       outer diameter of the contact of the faces; above 0 up to 1000 mm
 *   face_inner_diameter_mm       inner diameter of the contact of the faces; above 0 up to 1000 mm
 *   rotating_film_Wm2K           heat transfer coefficient at the rotating ring, as from rotating_ring_film_coefficient;
 *                                above 0 up to 1000000 W/(m2 K)
 *   rotating_length_mm           wetted length of the rotating ring; above 0 up to 500 mm
 *   rotating_conductivity_WmK    thermal conductivity of the rotating ring; from 0.1 to 1000 W/(m K)
 *   stationary_film_Wm2K         heat transfer coefficient at the stationary ring, below the rotating one's; above 0 up
 *                                to 1000000 W/(m2 K)
 *   stationary_length_mm         wetted length of the stationary ring; above 0 up to 500 mm
 *   stationary_conductivity_WmK  thermal conductivity of the stationary ring; from 0.1 to 1000 W/(m K)
 *   -> face_rise_K               mean temperature of the faces over the liquid in the chamber
 *   -> rotating_share            part of the heat that leaves through the rotating ring
 *
 *   Equation: dT_f = P/(G_r + G_s), G = sqrt(h pi D_o k A) tanh(m L), m = sqrt(h pi D_o/(k A)), A = (pi/4)(D_o^2 -
 *             D_i^2)
 *   Must hold of face_inner_diameter: it must be less than the outer diameter of the faces
 *   Source: each ring a straight fin of uniform section, cooled at its outer diameter, far end insulated: F. P.
 *           Incropera et al., Fundamentals of Heat and Mass Transfer, table of fins (from memory of it)
 *   Caution: +-40 % with the film coefficients; the inner diameter, the leakage and the evaporating film carry heat that
 *            is left out, scale and coking keep it in.
 *   Caution: The hottest spot is warmer than the mean, and a start with hot faces warmer still.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_seal_face_temperature_rise(double face_heat_kW, double face_outer_diameter_mm,
                                                    double face_inner_diameter_mm, double rotating_film_Wm2K,
                                                    double rotating_length_mm, double rotating_conductivity_WmK,
                                                    double stationary_film_Wm2K, double stationary_length_mm,
                                                    double stationary_conductivity_WmK, double *face_rise_K,
                                                    double *rotating_share, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_face_temperature_rise_rows(size_t rows, cutwater_column face_heat_kW,
                                                         cutwater_column face_outer_diameter_mm,
                                                         cutwater_column face_inner_diameter_mm,
                                                         cutwater_column rotating_film_Wm2K,
                                                         cutwater_column rotating_length_mm,
                                                         cutwater_column rotating_conductivity_WmK,
                                                         cutwater_column stationary_film_Wm2K,
                                                         cutwater_column stationary_length_mm,
                                                         cutwater_column stationary_conductivity_WmK,
                                                         cutwater_result_column face_rise_K,
                                                         cutwater_result_column rotating_share,
                                                         cutwater_rows_report *report);

/*
 * Heat that flows from the pump into a cooler seal chamber through metal and shaft.
 *
 *   soak_coefficient_WmmK        conductance for each millimetre of balance diameter; 0.25 W/(mm K) in the standard's
 *                                example for stainless parts; above 0 up to 10 W/(mm K)
 *   balance_diameter_mm          balance diameter of the seal; above 0 up to 1000 mm
 *   pump_temperature_degC        temperature of the pumped liquid; above -273.15 to below 1000 degC
 *   chamber_temperature_degC     temperature of the liquid in the chamber; above -273.15 to below 1000 degC
 *   -> heat_kW                   heat flow into the chamber; negative out of it
 *   -> conductance_WK            heat flow for each kelvin
 *
 *   Equation: Q = U A (T_p - T_c), U A = u D_b
 *   Source: ISO 21049:2004 / API 682, annex F, heat soak (from memory of it)
 *   Caution: One published coefficient for one build: +-50 %; a jacket, a gasketed cover or a hollow shaft change it.
 *            Prefer one found from measured temperatures.
 */
CUTWATER_API cutwater_status cutwater_seal_heat_soak(double soak_coefficient_WmmK, double balance_diameter_mm,
                                        double pump_temperature_degC, double chamber_temperature_degC,
                                        double *heat_kW, double *conductance_WK, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_heat_soak_rows(size_t rows, cutwater_column soak_coefficient_WmmK,
                                             cutwater_column balance_diameter_mm,
                                             cutwater_column pump_temperature_degC,
                                             cutwater_column chamber_temperature_degC, cutwater_result_column heat_kW,
                                             cutwater_result_column conductance_WK, cutwater_rows_report *report);

/*
 * Temperature of the liquid in the seal chamber, from the heat that comes and goes.
 *
 *   face_heat_kW                 heat of all pairs of faces in the chamber, as from seal_face_heat; from 0 to 1000 kW
 *   pump_temperature_degC        temperature of the pumped liquid; above -273.15 to below 1000 degC
 *   exchange_flow_lmin           liquid that the chamber and the pump exchange of themselves; 0 for a closed throat
 *                                bush, or where the pump is the cooler; from 0 to 10000 l/min
 *   soak_conductance_WK          conductance between chamber and pump through the metal, as from seal_heat_soak; from 0
 *                                to 100000 W/K
 *   flush_flow_lmin              flush led into the chamber; 0 without; from 0 to 10000 l/min
 *   flush_temperature_degC       temperature of the flush; the pump's for one taken from the discharge; above -273.15 to
 *                                below 1000 degC
 *   density_kgm3                 density of the liquid in the chamber; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat capacity of the liquid in the chamber; from 0.1 to 15 kJ/(kg K)
 *   stirring_heat_kW             heat of stirring by collar, springs or pumping ring; from 0 to 1000 kW; 0 if left out
 *   cooling_conductance_WK       conductance to a cooling jacket or to the surroundings; from 0 to 100000 W/K; 0 if left
 *                                out
 *   cooling_temperature_degC     temperature of that jacket or of the surroundings; above -273.15 to below 1000 degC; 20
 *                                if left out
 *   -> chamber_temperature_degC  temperature of the liquid in the chamber
 *
 *   Equation: T_c = T_p + [P + P_s + rho c_p q_f (T_f - T_p) + G_c (T_k - T_p)]/[rho c_p (q_x + q_f) + U A + G_c]
 *   Source: steady heat balance of a well-mixed chamber; heat soak as in ISO 21049 / API 682, annex F (from memory of
 *           it)
 *   Caution: The chamber is taken for well mixed; at the faces the liquid is warmer still: see
 *            seal_face_temperature_rise.
 *   Caution: Exchange with the pump through the throat is known from a measured chamber temperature or not at all: a
 *            closed throat bush gives almost none.
 *   Caution: A flush of another liquid: take density and specific heat of what fills the chamber.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_seal_chamber_temperature(double face_heat_kW, double pump_temperature_degC,
                                                  double exchange_flow_lmin, double soak_conductance_WK,
                                                  double flush_flow_lmin, double flush_temperature_degC,
                                                  double density_kgm3, double specific_heat_kJkgK,
                                                  double stirring_heat_kW, double cooling_conductance_WK,
                                                  double cooling_temperature_degC, double *chamber_temperature_degC,
                                                  cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_chamber_temperature_rows(size_t rows, cutwater_column face_heat_kW,
                                                       cutwater_column pump_temperature_degC,
                                                       cutwater_column exchange_flow_lmin,
                                                       cutwater_column soak_conductance_WK,
                                                       cutwater_column flush_flow_lmin,
                                                       cutwater_column flush_temperature_degC,
                                                       cutwater_column density_kgm3,
                                                       cutwater_column specific_heat_kJkgK,
                                                       cutwater_column stirring_heat_kW,
                                                       cutwater_column cooling_conductance_WK,
                                                       cutwater_column cooling_temperature_degC,
                                                       cutwater_result_column chamber_temperature_degC,
                                                       cutwater_rows_report *report);

/*
 * Margin of the seal chamber's pressure over the liquid's vapour pressure.
 *
 *   chamber_pressure_bara        lowest pressure in the chamber, absolute, as from seal_chamber_pressure; above 0 up to
 *                                1000 bara
 *   vapour_pressure_bara         vapour pressure at the chamber's temperature, absolute; above 0 up to 300 bara
 *   -> margin_bar                pressure over the vapour pressure; negative: it boils
 *   -> ratio                     chamber pressure over vapour pressure, both absolute
 *
 *   Equation: dp = p_c - p_v; r = p_c/p_v
 *   Source: 345 kPa (50 psi) over the vapour pressure: W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery
 *           2011, pp. 508 and 523 (pages read); 3.5 bar, or a ratio of 1.3, or 20 K below boiling: API 682 / ISO 21049,
 *           which one depends on the edition (from memory of it); ln p linear in 1/T between the points
 *   Caution: Take the chamber's temperature with the seal running, never the pump's alone; the faces are warmer still:
 *            give their rise.
 *   Caution: A liquid that flashes between the faces runs them dry, and hot or toxic liquid may escape when they part.
 *   Caution: For a mixture or a liquid with dissolved gas take the bubble-point curve: it gives off vapour long before
 *            its main part boils.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_seal_vapour_margin(double chamber_pressure_bara, double vapour_pressure_bara,
                                            double *margin_bar, double *ratio, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_vapour_margin_rows(size_t rows, cutwater_column chamber_pressure_bara,
                                                 cutwater_column vapour_pressure_bara,
                                                 cutwater_result_column margin_bar, cutwater_result_column ratio,
                                                 cutwater_rows_report *report);

/*
 * Margins to boiling in the seal chamber or at its faces: pressure, ratio and temperature side by side.
 *
 *   chamber_pressure_bara        lowest pressure in the chamber, absolute, as from seal_chamber_pressure; above 0 up to
 *                                1000 bara
 *   chamber_temperature_degC     temperature of the liquid in the chamber, as from seal_chamber_temperature; above
 *                                -273.15 to below 1000 degC
 *   temperatures_degC            the liquid's vapour-pressure curve: temperatures; a series of at least 2 points,
 *                                rising; each above -273.15 degC
 *   vapour_pressures_bara        the liquid's vapour-pressure curve: pressures; a series of at least 2 points, rising;
 *                                each above 0 up to 300 bara
 *   face_rise_K                  how much warmer the film between the faces is than the chamber; from 0 to 300 K; 0 if
 *                                left out
 *   -> vapour_pressure_bara      vapour pressure at the chamber's temperature and the faces' rise
 *   -> margin_bar                chamber pressure over it; negative: it boils
 *   -> ratio                     chamber pressure over it
 *   -> boiling_temperature_degC  temperature at which the liquid boils under the chamber's pressure
 *   -> below_boiling_K           how far the liquid is below it; negative: it boils
 *
 *   Equation: dp = p_c - p_v(T_c + dT_f); r = p_c/p_v; dT = T_b(p_c) - T_c - dT_f
 *   Must hold of vapour_pressures: both series must have the same number of points
 *   Source: 345 kPa (50 psi) over the vapour pressure: W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery
 *           2011, pp. 508 and 523 (pages read); 3.5 bar, or a ratio of 1.3, or 20 K below boiling: API 682 / ISO 21049,
 *           which one depends on the edition (from memory of it); ln p linear in 1/T between the points
 *   Caution: Take the chamber's temperature with the seal running, never the pump's alone; the faces are warmer still:
 *            give their rise.
 *   Caution: A liquid that flashes between the faces runs them dry, and hot or toxic liquid may escape when they part.
 *   Caution: For a mixture or a liquid with dissolved gas take the bubble-point curve: it gives off vapour long before
 *            its main part boils.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_seal_temperature_margin(double chamber_pressure_bara, double chamber_temperature_degC,
                                                 const double *temperatures_degC, size_t temperatures_degC_count,
                                                 const double *vapour_pressures_bara,
                                                 size_t vapour_pressures_bara_count, double face_rise_K,
                                                 double *vapour_pressure_bara, double *margin_bar, double *ratio,
                                                 double *boiling_temperature_degC, double *below_boiling_K,
                                                 cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_temperature_margin_rows(size_t rows, cutwater_column chamber_pressure_bara,
                                                      cutwater_column chamber_temperature_degC,
                                                      const double *temperatures_degC, size_t temperatures_degC_count,
                                                      const double *vapour_pressures_bara,
                                                      size_t vapour_pressures_bara_count, cutwater_column face_rise_K,
                                                      cutwater_result_column vapour_pressure_bara,
                                                      cutwater_result_column margin_bar, cutwater_result_column ratio,
                                                      cutwater_result_column boiling_temperature_degC,
                                                      cutwater_result_column below_boiling_K,
                                                      cutwater_rows_report *report);

/*
 * Whether the seal chamber keeps its margin to boiling, by the criterion chosen.
 *
 *   chamber_pressure_bara        lowest pressure in the chamber, absolute, as from seal_chamber_pressure; above 0 up to
 *                                1000 bara
 *   chamber_temperature_degC     temperature of the liquid in the chamber, as from seal_chamber_temperature; above
 *                                -273.15 to below 1000 degC
 *   temperatures_degC            the liquid's vapour-pressure curve: temperatures; a series of at least 2 points,
 *                                rising; each above -273.15 degC
 *   vapour_pressures_bara        the liquid's vapour-pressure curve: pressures; a series of at least 2 points, rising;
 *                                each above 0 up to 300 bara
 *   criterion                    which margin decides: pressure over the vapour pressure, ratio of the two, or
 *                                temperature below boiling; "pressure", "ratio" or "temperature"
 *   face_rise_K                  how much warmer the film between the faces is than the chamber; from 0 to 300 K; 0 if
 *                                left out
 *   least_margin_bar             pressure over the vapour pressure to keep: 3.45 is 50 psi as read; API 682's round 3.5
 *                                is from memory; at least 0 bar; 3.45 if left out
 *   least_ratio                  chamber pressure over vapour pressure to keep; at least 1; 1.3 if left out
 *   least_below_boiling_K        temperature below boiling to keep; at least 0 K; 20 if left out
 *   -> verdict                   enough, too small, or boils
 *   -> margin_bar                chamber pressure over the vapour pressure
 *   -> ratio                     chamber pressure over the vapour pressure
 *   -> below_boiling_K           how far the liquid is below boiling
 *
 *   Equation: enough when dp >= dp_min, or r >= r_min, or dT >= dT_min, whichever is chosen; boils when dp <= 0
 *   Must hold of vapour_pressures: both series must have the same number of points
 *   Source: 345 kPa (50 psi) over the vapour pressure: W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery
 *           2011, pp. 508 and 523 (pages read); 3.5 bar, or a ratio of 1.3, or 20 K below boiling: API 682 / ISO 21049,
 *           which one depends on the edition (from memory of it); ln p linear in 1/T between the points
 *   Caution: The three rules do not agree: a light hydrocarbon passes by pressure and fails by temperature, cold water
 *            the other way. Choose the contract's own.
 *   Caution: Take the chamber's temperature with the seal running, never the pump's alone; the faces are warmer still:
 *            give their rise.
 *   Caution: A liquid that flashes between the faces runs them dry, and hot or toxic liquid may escape when they part.
 *   Caution: For a mixture or a liquid with dissolved gas take the bubble-point curve: it gives off vapour long before
 *            its main part boils.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_seal_margin_verdict(double chamber_pressure_bara, double chamber_temperature_degC,
                                             const double *temperatures_degC, size_t temperatures_degC_count,
                                             const double *vapour_pressures_bara, size_t vapour_pressures_bara_count,
                                             const char *criterion, double face_rise_K, double least_margin_bar,
                                             double least_ratio, double least_below_boiling_K, const char **verdict,
                                             double *margin_bar, double *ratio, double *below_boiling_K,
                                             cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_margin_verdict_rows(size_t rows, cutwater_column chamber_pressure_bara,
                                                  cutwater_column chamber_temperature_degC,
                                                  const double *temperatures_degC, size_t temperatures_degC_count,
                                                  const double *vapour_pressures_bara,
                                                  size_t vapour_pressures_bara_count, const char *criterion,
                                                  cutwater_column face_rise_K, cutwater_column least_margin_bar,
                                                  cutwater_column least_ratio, cutwater_column least_below_boiling_K,
                                                  cutwater_result_column verdict, cutwater_result_column margin_bar,
                                                  cutwater_result_column ratio,
                                                  cutwater_result_column below_boiling_K,
                                                  cutwater_rows_report *report);

/*
 * Highest temperature of the seal chamber that keeps the margin to boiling.
 *
 *   chamber_pressure_bara        lowest pressure in the chamber, absolute, as from seal_chamber_pressure; above 0 up to
 *                                1000 bara
 *   temperatures_degC            the liquid's vapour-pressure curve: temperatures; a series of at least 2 points,
 *                                rising; each above -273.15 degC
 *   vapour_pressures_bara        the liquid's vapour-pressure curve: pressures; a series of at least 2 points, rising;
 *                                each above 0 up to 300 bara
 *   criterion                    which margin decides: pressure over the vapour pressure, ratio of the two, or
 *                                temperature below boiling; "pressure", "ratio" or "temperature"
 *   face_rise_K                  how much warmer the film between the faces is than the chamber; from 0 to 300 K; 0 if
 *                                left out
 *   least_margin_bar             pressure over the vapour pressure to keep: 3.45 is 50 psi as read; API 682's round 3.5
 *                                is from memory; at least 0 bar; 3.45 if left out
 *   least_ratio                  chamber pressure over vapour pressure to keep; at least 1; 1.3 if left out
 *   least_below_boiling_K        temperature below boiling to keep; at least 0 K; 20 if left out
 *   -> allowed_temperature_degC  highest temperature of the chamber
 *   -> vapour_pressure_bara      vapour pressure at the faces then
 *
 *   Equation: p_v(T_a + dT_f) = p_c - dp_min, or p_c/r_min; or T_a = T_b(p_c) - dT_min - dT_f
 *   Must hold of vapour_pressures: both series must have the same number of points
 *   Source: 345 kPa (50 psi) over the vapour pressure: W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery
 *           2011, pp. 508 and 523 (pages read); 3.5 bar, or a ratio of 1.3, or 20 K below boiling: API 682 / ISO 21049,
 *           which one depends on the edition (from memory of it); ln p linear in 1/T between the points
 *   Caution: Take the chamber's temperature with the seal running, never the pump's alone; the faces are warmer still:
 *            give their rise.
 *   Caution: A liquid that flashes between the faces runs them dry, and hot or toxic liquid may escape when they part.
 *   Caution: For a mixture or a liquid with dissolved gas take the bubble-point curve: it gives off vapour long before
 *            its main part boils.
 *   Caution: The seal's elastomers and faces have temperature limits of their own.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_seal_allowed_temperature(double chamber_pressure_bara, const double *temperatures_degC,
                                                  size_t temperatures_degC_count, const double *vapour_pressures_bara,
                                                  size_t vapour_pressures_bara_count, const char *criterion,
                                                  double face_rise_K, double least_margin_bar, double least_ratio,
                                                  double least_below_boiling_K, double *allowed_temperature_degC,
                                                  double *vapour_pressure_bara, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_allowed_temperature_rows(size_t rows, cutwater_column chamber_pressure_bara,
                                                       const double *temperatures_degC,
                                                       size_t temperatures_degC_count,
                                                       const double *vapour_pressures_bara,
                                                       size_t vapour_pressures_bara_count, const char *criterion,
                                                       cutwater_column face_rise_K, cutwater_column least_margin_bar,
                                                       cutwater_column least_ratio,
                                                       cutwater_column least_below_boiling_K,
                                                       cutwater_result_column allowed_temperature_degC,
                                                       cutwater_result_column vapour_pressure_bara,
                                                       cutwater_rows_report *report);

/*
 * Whether a seal chamber needs a flush to stay at an allowed temperature, and how much.
 *
 *   face_heat_kW                 heat of all pairs of faces in the chamber, as from seal_face_heat; from 0 to 1000 kW
 *   pump_temperature_degC        temperature of the pumped liquid; above -273.15 to below 1000 degC
 *   exchange_flow_lmin           liquid that the chamber and the pump exchange of themselves; 0 for a closed throat
 *                                bush, or where the pump is the cooler; from 0 to 10000 l/min
 *   soak_conductance_WK          conductance between chamber and pump through the metal, as from seal_heat_soak; from 0
 *                                to 100000 W/K
 *   allowed_temperature_degC     highest temperature allowed in the chamber, as from seal_allowed_temperature; above
 *                                -273.15 to below 1000 degC
 *   flush_temperature_degC       temperature of the flush; above -273.15 to below 1000 degC
 *   density_kgm3                 density of the liquid in the chamber; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat capacity of the liquid in the chamber; from 0.1 to 15 kJ/(kg K)
 *   stirring_heat_kW             heat of stirring by collar, springs or pumping ring; from 0 to 1000 kW; 0 if left out
 *   cooling_conductance_WK       conductance to a cooling jacket or to the surroundings; from 0 to 100000 W/K; 0 if left
 *                                out
 *   cooling_temperature_degC     temperature of that jacket or of the surroundings; above -273.15 to below 1000 degC; 20
 *                                if left out
 *   -> flush_flow_lmin           least flush; 0 when none is needed
 *   -> need                      whether one is needed
 *   -> heat_kW                   heat that the flush has to carry away
 *
 *   Equation: q_f = Q/[rho c_p (T_a - T_f)], Q = P + P_s + (rho c_p q_x + U A)(T_p - T_a) + G_c (T_k - T_a)
 *   Source: steady heat balance of a well-mixed chamber; heat soak as in ISO 21049 / API 682, annex F (from memory of
 *           it)
 *   Caution: For temperature alone: solids, gas, a bad lubricant or the keeping out of air can ask for a flush where
 *            temperature does not.
 *   Caution: The chamber is taken for well mixed; at the faces the liquid is warmer still: see
 *            seal_face_temperature_rise.
 *   Caution: Exchange with the pump through the throat is known from a measured chamber temperature or not at all: a
 *            closed throat bush gives almost none.
 *   Caution: The flush enters the product: see that it may, and that its supply does not fail.
 *   Caution: With hot, toxic or flammable liquid, vaporising at the seal or impeller can release it: follow the site's
 *            rules and the pump maker's limits.
 */
CUTWATER_API cutwater_status cutwater_seal_flush_needed(double face_heat_kW, double pump_temperature_degC,
                                           double exchange_flow_lmin, double soak_conductance_WK,
                                           double allowed_temperature_degC, double flush_temperature_degC,
                                           double density_kgm3, double specific_heat_kJkgK, double stirring_heat_kW,
                                           double cooling_conductance_WK, double cooling_temperature_degC,
                                           double *flush_flow_lmin, const char **need, double *heat_kW,
                                           cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_flush_needed_rows(size_t rows, cutwater_column face_heat_kW,
                                                cutwater_column pump_temperature_degC,
                                                cutwater_column exchange_flow_lmin,
                                                cutwater_column soak_conductance_WK,
                                                cutwater_column allowed_temperature_degC,
                                                cutwater_column flush_temperature_degC, cutwater_column density_kgm3,
                                                cutwater_column specific_heat_kJkgK, cutwater_column stirring_heat_kW,
                                                cutwater_column cooling_conductance_WK,
                                                cutwater_column cooling_temperature_degC,
                                                cutwater_result_column flush_flow_lmin, cutwater_result_column need,
                                                cutwater_result_column heat_kW, cutwater_rows_report *report);

/*
 * Flush that carries a heat away with an allowed rise of its temperature.
 *
 *   heat_kW                      heat to carry away: every pair of faces, heat soak and stirring; from 0 to 1000 kW
 *   allowed_rise_K               rise from inlet to chamber; API 682 has 5.6 K for a single seal's flush, 8 K for watery
 *                                and 16 K for oily barrier liquids (from memory of it); above 0 up to 200 K
 *   density_kgm3                 density of the flush; from 50 to 25000 kg/m3
 *   specific_heat_kJkgK          specific heat capacity of the flush; from 0.1 to 15 kJ/(kg K)
 *   -> flow_lmin                 flow of the flush
 *
 *   Equation: q = Q/(rho c_p dT)
 *   Source: heat balance; in US units q = Q/(500 c_p s dT), gpm, Btu/h, degF: W. E. Forsthoffer, Best Practice Handbook
 *           for Rotating Machinery 2011, p. 508 (page read)
 *   Caution: Forsthoffer's 125 for litres a minute is rounded: the balance itself is used here.
 *   Caution: The chamber is taken for well mixed; at the faces the liquid is warmer still: see
 *            seal_face_temperature_rise.
 */
CUTWATER_API cutwater_status cutwater_seal_flush_flow(double heat_kW, double allowed_rise_K, double density_kgm3,
                                         double specific_heat_kJkgK, double *flow_lmin, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_flush_flow_rows(size_t rows, cutwater_column heat_kW, cutwater_column allowed_rise_K,
                                              cutwater_column density_kgm3, cutwater_column specific_heat_kJkgK,
                                              cutwater_result_column flow_lmin, cutwater_rows_report *report);

/*
 * Bore of the orifice that lets a seal's flush through.
 *
 *   flow_lmin                    flush wanted; above 0 up to 10000 l/min
 *   pressure_drop_bar            pressure from the flush's source to the chamber, all orifices together; above 0 up to
 *                                1000 bar
 *   density_kgm3                 density of the flush; from 50 to 25000 kg/m3
 *   discharge_coefficient        of each orifice; from 0.4 to 1; 0.62 if left out
 *   orifices                     equal orifices in series, far enough apart to slow the jet; a whole number from 1 to
 *                                20; 1 if left out
 *   least_bore_mm                bore below which it may block; from 0 to 50 mm; 3 if left out
 *   -> bore_mm                   bore of each orifice
 *   -> size                      large enough, or may block
 *
 *   Equation: d = sqrt(4 q/(pi C_d v)), v = sqrt(2 dp/(N rho))
 *   Source: Bernoulli's equation with a discharge coefficient of a sharp-edged orifice, about 0.62; least bore 3 mm: API
 *           682 (both from memory)
 *   Caution: Below about 3 mm an orifice blocks with the first scale: take several in series instead.
 *   Caution: For a sharp-edged plate in a line at least four times as wide; short bores and choke tubes have other
 *            coefficients. +-5 %.
 *   Caution: A hot liquid may flash in the jet and pass less: check bypass_orifice_cavitation.
 */
CUTWATER_API cutwater_status cutwater_seal_flush_orifice_bore(double flow_lmin, double pressure_drop_bar, double density_kgm3,
                                                 double discharge_coefficient, double orifices, double least_bore_mm,
                                                 double *bore_mm, const char **size, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_flush_orifice_bore_rows(size_t rows, cutwater_column flow_lmin,
                                                      cutwater_column pressure_drop_bar, cutwater_column density_kgm3,
                                                      cutwater_column discharge_coefficient, cutwater_column orifices,
                                                      cutwater_column least_bore_mm, cutwater_result_column bore_mm,
                                                      cutwater_result_column size, cutwater_rows_report *report);

/*
 * Flush that an orifice lets into the seal chamber.
 *
 *   bore_mm                      bore of each orifice; above 0 up to 100 mm
 *   pressure_drop_bar            pressure from the flush's source to the chamber, all orifices together; above 0 up to
 *                                1000 bar
 *   density_kgm3                 density of the flush; from 50 to 25000 kg/m3
 *   discharge_coefficient        of each orifice; from 0.4 to 1; 0.62 if left out
 *   orifices                     equal orifices in series, far enough apart to slow the jet; a whole number from 1 to
 *                                20; 1 if left out
 *   -> flow_lmin                 flush
 *   -> jet_velocity_ms           velocity of the jet, before contraction
 *
 *   Equation: q = C_d (pi/4) d^2 v, v = sqrt(2 dp/(N rho))
 *   Source: Bernoulli's equation with a discharge coefficient of a sharp-edged orifice, about 0.62; least bore 3 mm: API
 *           682 (both from memory)
 *   Caution: A flush from the discharge falls with the pump's head: work it out again for the worn pump.
 *   Caution: For a sharp-edged plate in a line at least four times as wide; short bores and choke tubes have other
 *            coefficients. +-5 %.
 *   Caution: A hot liquid may flash in the jet and pass less: check bypass_orifice_cavitation.
 */
CUTWATER_API cutwater_status cutwater_seal_flush_orifice_flow(double bore_mm, double pressure_drop_bar, double density_kgm3,
                                                 double discharge_coefficient, double orifices, double *flow_lmin,
                                                 double *jet_velocity_ms, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_flush_orifice_flow_rows(size_t rows, cutwater_column bore_mm,
                                                      cutwater_column pressure_drop_bar, cutwater_column density_kgm3,
                                                      cutwater_column discharge_coefficient, cutwater_column orifices,
                                                      cutwater_result_column flow_lmin,
                                                      cutwater_result_column jet_velocity_ms,
                                                      cutwater_rows_report *report);

/*
 * Velocity of the flush through the throat bush, against the liquid and solids of the pump.
 *
 *   flow_lmin                    flush into the chamber; from 0 to 10000 l/min
 *   bush_bore_mm                 bore of the throat bush; above 0 up to 1000 mm
 *   shaft_diameter_mm            diameter of shaft or sleeve in it; above 0 up to 1000 mm
 *   -> velocity_ms               mean velocity towards the impeller
 *
 *   Equation: v = q/[(pi/4)(D_t^2 - d_s^2)]
 *   Must hold of shaft_diameter: it must be less than the bore of the throat bush
 *   Source: continuity; common practice
 *   Caution: What keeps solids back is for the seal maker to say: a few metres a second through a close bush is common
 *            practice.
 *   Caution: A worn bush lets the same flush through more slowly.
 */
CUTWATER_API cutwater_status cutwater_seal_throat_velocity(double flow_lmin, double bush_bore_mm, double shaft_diameter_mm,
                                              double *velocity_ms, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_throat_velocity_rows(size_t rows, cutwater_column flow_lmin,
                                                   cutwater_column bush_bore_mm, cutwater_column shaft_diameter_mm,
                                                   cutwater_result_column velocity_ms, cutwater_rows_report *report);

/*
 * How fast and which way a particle or bubble drifts in the swirl of a seal chamber.
 *
 *   particle_size_um             diameter of the particle or bubble; from 0.1 to 20000 um
 *   particle_density_kgm3        its density; about 1 for a gas bubble; from 0 to 25000 kg/m3
 *   liquid_density_kgm3          density of the liquid; from 50 to 25000 kg/m3
 *   dynamic_viscosity_mPas       dynamic viscosity of the liquid; from 0.01 to 1000000 mPa s
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   radius_mm                    distance from the shaft's axis; above 0 up to 1000 mm
 *   swirl_ratio                  speed of the liquid's swirl over the shaft's: about 0.5 in a narrow smooth chamber;
 *                                from 0 to 1; 0.5 if left out
 *   -> velocity_mms              radial velocity; positive outwards
 *   -> direction                 which way it goes
 *   -> acceleration_ms2          centrifugal acceleration there
 *   -> reynolds_number           Reynolds number of the drift
 *
 *   Equation: v = sqrt(4 a d |rho_p - rho_l|/(3 C_D rho_l)), a = (k w)^2 r, C_D = 24/Re (1 + 0.1806 Re^0.6459) +
 *             0.4251/(1 + 6880.95/Re)
 *   Source: solid-body swirl at k w and a sphere's drag by A. Haider and O. Levenspiel, Powder Technology 58 (1989)
 *           63-70 (from memory of it); a model of its own kind: the studies of flow in seal chambers could not be read
 *   Caution: It tells the direction and an order of speed, no efficiency of separation: secondary flow, vanes and ribs
 *            in the chamber, wear grooves and the throat can do otherwise.
 *   Caution: For a single rigid sphere: a clean bubble rises faster, fine or sticky solids more slowly, and all do in
 *            company.
 *   Caution: Gas that gathers at the faces runs them dry: vent the chamber and see that it stays full.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_seal_chamber_drift(double particle_size_um, double particle_density_kgm3,
                                            double liquid_density_kgm3, double dynamic_viscosity_mPas,
                                            double speed_rpm, double radius_mm, double swirl_ratio,
                                            double *velocity_mms, const char **direction, double *acceleration_ms2,
                                            double *reynolds_number, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_chamber_drift_rows(size_t rows, cutwater_column particle_size_um,
                                                 cutwater_column particle_density_kgm3,
                                                 cutwater_column liquid_density_kgm3,
                                                 cutwater_column dynamic_viscosity_mPas, cutwater_column speed_rpm,
                                                 cutwater_column radius_mm, cutwater_column swirl_ratio,
                                                 cutwater_result_column velocity_mms,
                                                 cutwater_result_column direction,
                                                 cutwater_result_column acceleration_ms2,
                                                 cutwater_result_column reynolds_number, cutwater_rows_report *report);

/*
 * Where solids or gas end up in a cylindrical or tapered seal chamber.
 *
 *   particle_size_um             diameter of the particle or bubble; from 0.1 to 20000 um
 *   particle_density_kgm3        its density; about 1 for a gas bubble; from 0 to 25000 kg/m3
 *   liquid_density_kgm3          density of the liquid; from 50 to 25000 kg/m3
 *   dynamic_viscosity_mPas       dynamic viscosity of the liquid; from 0.01 to 1000000 mPa s
 *   speed_rpm                    rotational speed; above 0 up to 100000 1/min
 *   bore_at_faces_mm             bore of the chamber beside the faces; above 0 up to 2000 mm
 *   bore_at_impeller_mm          bore of its end towards the impeller: equal for a cylinder, larger for a taper, smaller
 *                                behind a throat; above 0 up to 2000 mm
 *   length_mm                    length of the chamber; above 0 up to 2000 mm
 *   inward_velocity_mms          velocity of the liquid along the wall towards the faces; 0 for still or flushed; at
 *                                least 0 mm/s; 0 if left out
 *   swirl_ratio                  speed of the liquid's swirl over the shaft's: about 0.5 in a narrow smooth chamber;
 *                                from 0 to 1; 0.5 if left out
 *   -> fate                      where it ends up
 *   -> radial_velocity_mms       drift across the chamber; positive outwards
 *   -> wall_velocity_mms         drift along the wall towards the impeller, for what lies on the wall
 *   -> taper                     slope of the wall; positive when it opens towards the impeller
 *
 *   Equation: v_w = v(a sin alpha), tan alpha = (D_2 - D_1)/(2 L), a = (k w)^2 (D_1 + D_2)/4; clears when v_w > u
 *   Source: solid-body swirl at k w and a sphere's drag by A. Haider and O. Levenspiel, Powder Technology 58 (1989)
 *           63-70 (from memory of it); a model of its own kind: the studies of flow in seal chambers could not be read
 *   Caution: It tells the direction and an order of speed, no efficiency of separation: secondary flow, vanes and ribs
 *            in the chamber, wear grooves and the throat can do otherwise.
 *   Caution: For a single rigid sphere: a clean bubble rises faster, fine or sticky solids more slowly, and all do in
 *            company.
 *   Caution: Solids that lie on the wall also rub on it, which the model leaves out; a taper that keeps them circling
 *            wears through unless it has ribs (common practice).
 *   Caution: At standstill gas leaves a chamber that opens towards the impeller upwards along its roof; running, it
 *            gathers at the shaft.
 *   Caution: A calculated value is a guide: the pump maker's tested data, local codes and a licensed engineer's
 *            judgement go before it.
 */
CUTWATER_API cutwater_status cutwater_seal_chamber_clearing(double particle_size_um, double particle_density_kgm3,
                                               double liquid_density_kgm3, double dynamic_viscosity_mPas,
                                               double speed_rpm, double bore_at_faces_mm, double bore_at_impeller_mm,
                                               double length_mm, double inward_velocity_mms, double swirl_ratio,
                                               const char **fate, double *radial_velocity_mms,
                                               double *wall_velocity_mms, double *taper, cutwater_refusal *refusal);
CUTWATER_API cutwater_status cutwater_seal_chamber_clearing_rows(size_t rows, cutwater_column particle_size_um,
                                                    cutwater_column particle_density_kgm3,
                                                    cutwater_column liquid_density_kgm3,
                                                    cutwater_column dynamic_viscosity_mPas, cutwater_column speed_rpm,
                                                    cutwater_column bore_at_faces_mm,
                                                    cutwater_column bore_at_impeller_mm, cutwater_column length_mm,
                                                    cutwater_column inward_velocity_mms, cutwater_column swirl_ratio,
                                                    cutwater_result_column fate,
                                                    cutwater_result_column radial_velocity_mms,
                                                    cutwater_result_column wall_velocity_mms,
                                                    cutwater_result_column taper, cutwater_rows_report *report);

#ifdef __cplusplus
}
#endif

#endif

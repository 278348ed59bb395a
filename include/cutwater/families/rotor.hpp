// generated from the catalogue by cutwater-generate; do not edit.
// Rotor: thrusts, shaft, vibration.
#pragma once

#include <cutwater/families/rotor.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Radial thrust coefficient of an impeller at a flow, by the form of its casing: single volute: K = K_0 |1 - (Q/Q_BEP)^x|, x = 0.7 + 2.6 (51.645 n_s - 500)/3000; concentric: K = K_0 Q/Q_BEP; double volute, diffuser: K = K_0; never below K_min. Source: single volute: R. Mackay, The Practical Pumping Handbook, Elsevier 2004, pp. 28 and 29 (read), K_0 0.15 to 0.38 and x from 0.7 to 3.3 between US specific speeds of 500 and 3500; the residue: B. Abulnaga, Slurry Systems Handbook, on radial thrust (excerpt read); a concentric casing's force rises with flow: V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 193 (read), taken linear here.
inline Ratio radial_thrust_coefficient(const char* casing, Flow flow, Flow best_efficiency_flow, Ratio reference_coefficient, SpecificSpeed specific_speed, Ratio least_coefficient = unit<Ratio>("")(0.1))
{
    cutwater_refusal refusal;
    double coefficient_out;
    detail::check(cutwater_radial_thrust_coefficient(casing, detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Flow>("m3/h"), best_efficiency_flow), detail::number_in(unit<Ratio>(""), reference_coefficient), detail::number_in(unit<SpecificSpeed>(""), specific_speed), detail::number_in(unit<Ratio>(""), least_coefficient), &coefficient_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), coefficient_out);
}

/// Radial force of the liquid on the impeller: F_r = K rho g H D_2 b_2. Source: A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd edition, 1957 (from memory of it), whose print leaves the density out; with the pressure instead of the head in R. Mackay, The Practical Pumping Handbook, 2004, p. 28 (read).
inline Force radial_thrust(Density density, Length head, Length impeller_diameter, Length outlet_width, Ratio coefficient)
{
    cutwater_refusal refusal;
    double force_out;
    detail::check(cutwater_radial_thrust(detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Length>("mm"), impeller_diameter), detail::number_in(unit<Length>("mm"), outlet_width), detail::number_in(unit<Ratio>(""), coefficient), &force_out, &refusal), refusal);
    return detail::quantity_of(unit<Force>("N"), force_out);
}

/// Static pressure at the impeller's rim over that at its suction: dp_2 = c rho g H. Source: Bernoulli's equation; c of 0.7 to 0.8 from memory of A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd edition, 1957.
inline PressureDifference rim_pressure(Length head, Density density, Fraction static_part = unit<Fraction>("")(0.75))
{
    cutwater_refusal refusal;
    double pressure_out;
    detail::check(cutwater_rim_pressure(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), static_part), &pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<PressureDifference>("bar"), pressure_out);
}

/// Pressure beside a shroud at a diameter, over the suction pressure: dp = dp_2 - rho (k omega)^2 (D_2^2 - D^2)/8. Source: forced vortex beside a disc, dp/dr = rho (k omega)^2 r, integrated; core rotation 0.5 beside smooth walls: V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, ch. 16, and A. J. Stepanoff (both from memory).
inline PressureDifference shroud_pressure(PressureDifference rim_pressure, Density density, RotationalSpeed speed, Length impeller_diameter, Length diameter, Ratio core_rotation = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    double pressure_out;
    detail::check(cutwater_shroud_pressure(detail::number_in(unit<PressureDifference>("bar"), rim_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("mm"), impeller_diameter), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Ratio>(""), core_rotation), &pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<PressureDifference>("bar"), pressure_out);
}

/// Axial force of the liquid on a shroud from the rim in to a diameter, over that of the suction pressure: F = pi/4 (D_2^2 - D_i^2) [dp_2 - rho (k omega)^2 (D_2^2 - D_i^2)/16]. Source: forced vortex beside a disc, dp/dr = rho (k omega)^2 r, integrated; core rotation 0.5 beside smooth walls: V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, ch. 16, and A. J. Stepanoff (both from memory).
inline Force shroud_force(PressureDifference rim_pressure, Density density, RotationalSpeed speed, Length impeller_diameter, Length inner_diameter, Ratio core_rotation = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    double force_out;
    detail::check(cutwater_shroud_force(detail::number_in(unit<PressureDifference>("bar"), rim_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("mm"), impeller_diameter), detail::number_in(unit<Length>("mm"), inner_diameter), detail::number_in(unit<Ratio>(""), core_rotation), &force_out, &refusal), refusal);
    return detail::quantity_of(unit<Force>("N"), force_out);
}

/// Turning of the liquid between back vanes over that of the impeller: k_v = k + (1 - k) t/s. Source: core rotation between back vanes k_v = k + (1 - k) t/s, for k = 1/2 that of A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd edition, 1957 (from memory of it); with no gap it gives the handbooks' relief 3/8 A rho (u_2^2 - u_1^2)/2; that the relief falls as the gap grows: V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 346 (read).
inline Ratio back_vane_core_rotation(Length vane_height, Length space, Ratio core_rotation = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    double vane_rotation_out;
    detail::check(cutwater_back_vane_core_rotation(detail::number_in(unit<Length>("mm"), vane_height), detail::number_in(unit<Length>("mm"), space), detail::number_in(unit<Ratio>(""), core_rotation), &vane_rotation_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), vane_rotation_out);
}

/// How much less the back vanes let the liquid press on the impeller's back than a smooth shroud would: dF = pi/64 rho omega^2 (k_v^2 - k^2) (D_v^2 - D_h^2)^2, k_v = k + (1 - k) t/s. Source: core rotation between back vanes k_v = k + (1 - k) t/s, for k = 1/2 that of A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd edition, 1957 (from memory of it); with no gap it gives the handbooks' relief 3/8 A rho (u_2^2 - u_1^2)/2; that the relief falls as the gap grows: V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 346 (read).
inline Force back_vane_relief(Density density, RotationalSpeed speed, Length vane_outer_diameter, Length vane_inner_diameter, Length vane_height, Length space, Ratio core_rotation = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    double relief_out;
    detail::check(cutwater_back_vane_relief(detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("mm"), vane_outer_diameter), detail::number_in(unit<Length>("mm"), vane_inner_diameter), detail::number_in(unit<Length>("mm"), vane_height), detail::number_in(unit<Length>("mm"), space), detail::number_in(unit<Ratio>(""), core_rotation), &relief_out, &refusal), refusal);
    return detail::quantity_of(unit<Force>("N"), relief_out);
}

/// Pressure between the back ring and the balance holes, over the suction pressure: dp_b = dp_r/[1 + (C_h A_h/(C_r A_r))^2], A_r = pi D_r c/2, A_h = z pi d_h^2/4. Source: ring and holes in series, each as an orifice, derived here; that the holes should have at least 4 to 5 times the ring's area: common practice.
inline PressureDifference balance_hole_pressure(PressureDifference ring_pressure, Length ring_diameter, Length diametral_clearance, Length hole_diameter, Count holes, Ratio coefficient_ratio = unit<Ratio>("")(1))
{
    cutwater_refusal refusal;
    double pressure_out;
    detail::check(cutwater_balance_hole_pressure(detail::number_in(unit<PressureDifference>("bar"), ring_pressure), detail::number_in(unit<Length>("mm"), ring_diameter), detail::number_in(unit<Length>("mm"), diametral_clearance), detail::number_in(unit<Length>("mm"), hole_diameter), detail::number_in(unit<Count>(""), holes), detail::number_in(unit<Ratio>(""), coefficient_ratio), &pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<PressureDifference>("bar"), pressure_out);
}

/// Axial force of the liquid on the back of an impeller with a back ring and balance holes, over that of the suction pressure: F_b = pi/4 (D_2^2 - D_r^2) [dp_2 - rho (k omega)^2 (D_2^2 - D_r^2)/16] + pi/4 (D_r^2 - d_s^2) dp_b. Source: forced vortex beside a disc, dp/dr = rho (k omega)^2 r, integrated; core rotation 0.5 beside smooth walls: V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, ch. 16, and A. J. Stepanoff (both from memory).
inline Force back_force_with_ring(PressureDifference rim_pressure, Density density, RotationalSpeed speed, Length impeller_diameter, Length ring_diameter, Length sleeve_diameter, PressureDifference balance_pressure, Ratio core_rotation = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    double force_out;
    detail::check(cutwater_back_force_with_ring(detail::number_in(unit<PressureDifference>("bar"), rim_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("mm"), impeller_diameter), detail::number_in(unit<Length>("mm"), ring_diameter), detail::number_in(unit<Length>("mm"), sleeve_diameter), detail::number_in(unit<PressureDifference>("bar"), balance_pressure), detail::number_in(unit<Ratio>(""), core_rotation), &force_out, &refusal), refusal);
    return detail::quantity_of(unit<Force>("N"), force_out);
}

struct back_force_with_vanes_results {
    Force force;  // force towards the suction
    PressureDifference sleeve_pressure;  // pressure at the sleeve over the suction pressure; negative below it
};

/// Axial force of the liquid on the back of an impeller with back vanes, over that of the suction pressure, and the pressure at the sleeve: three rings in a row, each F = pi/4 (D_o^2 - D_i^2) [dp_o - rho (k omega)^2 (D_o^2 - D_i^2)/16] and dp_i = dp_o - rho (k omega)^2 (D_o^2 - D_i^2)/8: smooth with k, vanes with k_v = k + (1 - k) t/s, smooth with k. Source: core rotation between back vanes k_v = k + (1 - k) t/s, for k = 1/2 that of A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd edition, 1957 (from memory of it); with no gap it gives the handbooks' relief 3/8 A rho (u_2^2 - u_1^2)/2; that the relief falls as the gap grows: V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 346 (read).
inline back_force_with_vanes_results back_force_with_vanes(PressureDifference rim_pressure, Density density, RotationalSpeed speed, Length impeller_diameter, Length vane_outer_diameter, Length vane_inner_diameter, Length sleeve_diameter, Length vane_height, Length space, Ratio core_rotation = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    double force_out;
    double sleeve_pressure_out;
    detail::check(cutwater_back_force_with_vanes(detail::number_in(unit<PressureDifference>("bar"), rim_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("mm"), impeller_diameter), detail::number_in(unit<Length>("mm"), vane_outer_diameter), detail::number_in(unit<Length>("mm"), vane_inner_diameter), detail::number_in(unit<Length>("mm"), sleeve_diameter), detail::number_in(unit<Length>("mm"), vane_height), detail::number_in(unit<Length>("mm"), space), detail::number_in(unit<Ratio>(""), core_rotation), &force_out, &sleeve_pressure_out, &refusal), refusal);
    return {detail::quantity_of(unit<Force>("N"), force_out), detail::quantity_of(unit<PressureDifference>("bar"), sleeve_pressure_out)};
}

struct back_vane_gap_change_results {
    Force thrust_change;  // change of the force towards the suction; positive where the gap has grown
    PressureDifference pressure_change;  // change of the pressure at the sleeve
};

/// How thrust and pressure at the sleeve change when the gap behind the back vanes changes, as by wear or by resetting an open impeller: dp_s = rho omega^2 (k_1^2 - k_2^2) (D_v^2 - D_h^2)/8; dF_b = pi/64 rho omega^2 (k_1^2 - k_2^2) (D_v^2 - D_h^2)^2 + pi/4 (D_h^2 - d_s^2) dp_s; k_1, k_2 = k + (1 - k) t/s. Source: core rotation between back vanes k_v = k + (1 - k) t/s, for k = 1/2 that of A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd edition, 1957 (from memory of it); with no gap it gives the handbooks' relief 3/8 A rho (u_2^2 - u_1^2)/2; that the relief falls as the gap grows: V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 346 (read).
inline back_vane_gap_change_results back_vane_gap_change(Density density, RotationalSpeed speed, Length vane_outer_diameter, Length vane_inner_diameter, Length sleeve_diameter, Length vane_height, Length space_before, Length space_after, Ratio core_rotation = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    double thrust_change_out;
    double pressure_change_out;
    detail::check(cutwater_back_vane_gap_change(detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("mm"), vane_outer_diameter), detail::number_in(unit<Length>("mm"), vane_inner_diameter), detail::number_in(unit<Length>("mm"), sleeve_diameter), detail::number_in(unit<Length>("mm"), vane_height), detail::number_in(unit<Length>("mm"), space_before), detail::number_in(unit<Length>("mm"), space_after), detail::number_in(unit<Ratio>(""), core_rotation), &thrust_change_out, &pressure_change_out, &refusal), refusal);
    return {detail::quantity_of(unit<Force>("N"), thrust_change_out), detail::quantity_of(unit<PressureDifference>("bar"), pressure_change_out)};
}

/// Force away from the suction that turning the flow from axial to radial puts on a radial impeller: F_m = rho Q^2/[pi/4 (D_1^2 - d_h^2)]. Source: momentum theorem; V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 353 (read), F = Q^2 s/(722 A), US gal/min, in2, lbf.
inline Force inlet_momentum_force(Density density, Flow flow, Length eye_diameter, Length hub_diameter = unit<Length>("mm")(0))
{
    cutwater_refusal refusal;
    double force_out;
    detail::check(cutwater_inlet_momentum_force(detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), eye_diameter), detail::number_in(unit<Length>("mm"), hub_diameter), &force_out, &refusal), refusal);
    return detail::quantity_of(unit<Force>("N"), force_out);
}

/// Force away from the suction that the suction pressure puts on a shaft which leaves the casing on one side only: F_s = p_s pi d_s^2/4. Source: pressure times area; V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, ch. 16 (from memory of it).
inline Force shaft_end_force(GaugePressure suction_pressure, Length shaft_diameter)
{
    cutwater_refusal refusal;
    double force_out;
    detail::check(cutwater_shaft_end_force(detail::number_in(unit<GaugePressure>("barg"), suction_pressure), detail::number_in(unit<Length>("mm"), shaft_diameter), &force_out, &refusal), refusal);
    return detail::quantity_of(unit<Force>("N"), force_out);
}

/// Axial force on the vane side of an open impeller from a mean pressure over the suction pressure: F_f = dp_m pi/4 (D_2^2 - D_1^2). Source: pressure times area; no relation for the mean pressure could be read, so it is an input: measured, by computed flow, or from the pump maker.
inline Force vane_side_force(PressureDifference mean_pressure, Length impeller_diameter, Length eye_diameter)
{
    cutwater_refusal refusal;
    double force_out;
    detail::check(cutwater_vane_side_force(detail::number_in(unit<PressureDifference>("bar"), mean_pressure), detail::number_in(unit<Length>("mm"), impeller_diameter), detail::number_in(unit<Length>("mm"), eye_diameter), &force_out, &refusal), refusal);
    return detail::quantity_of(unit<Force>("N"), force_out);
}

struct axial_thrust_results {
    Force thrust;  // thrust towards the suction; negative away from it
    Force least;  // thrust if both sides differ by the scatter one way
    Force greatest;  // thrust if both sides differ by the scatter the other way
    const char* direction;  // direction over the whole range, or either
};

/// Axial thrust that is left on a single-stage rotor, how far it may differ, and its direction: F_ax = F_b - F_f - F_m - F_s + W; F_ax- and F_ax+: F_ax -+ u (|F_b| + |F_f|). Source: sum of forces; scatter of 30 % a side: judgement from V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 343 (read), which calls calculated thrust approximate at best.
inline axial_thrust_results axial_thrust(Force back_force, Force front_force, Force momentum_force, Force shaft_end_force, Force weight = unit<Force>("N")(0), Fraction scatter = unit<Fraction>("")(0.3))
{
    cutwater_refusal refusal;
    double thrust_out;
    double least_out;
    double greatest_out;
    const char* direction_out;
    detail::check(cutwater_axial_thrust(detail::number_in(unit<Force>("N"), back_force), detail::number_in(unit<Force>("N"), front_force), detail::number_in(unit<Force>("N"), momentum_force), detail::number_in(unit<Force>("N"), shaft_end_force), detail::number_in(unit<Force>("N"), weight), detail::number_in(unit<Fraction>(""), scatter), &thrust_out, &least_out, &greatest_out, &direction_out, &refusal), refusal);
    return {detail::quantity_of(unit<Force>("N"), thrust_out), detail::quantity_of(unit<Force>("N"), least_out), detail::quantity_of(unit<Force>("N"), greatest_out), direction_out};
}

/// Which row of a fixed pair of angular contact bearings takes the axial thrust of an overhung impeller: towards the suction: back to back the row farther from the impeller, face to face the nearer one; away from it the other row. Source: contact lines by the definitions of back-to-back and face-to-face arrangement, ISO 5593 (from memory of it).
inline const char* thrust_row(Force thrust, const char* arrangement)
{
    cutwater_refusal refusal;
    const char* row_out;
    detail::check(cutwater_thrust_row(detail::number_in(unit<Force>("N"), thrust), arrangement, &row_out, &refusal), refusal);
    return row_out;
}

struct shaft_deflection_at_seal_results {
    Length at_seal;  // deflection at the seal faces
    Length at_impeller;  // deflection at the impeller
    Force inboard_load;  // load on the bearing nearer the impeller
    Force outboard_load;  // load on the other bearing; negative where it holds the shaft down
    const char* verdict;  // whether the deflection at the seal keeps the limit
};

/// Deflection of a stepped overhung shaft at the seal faces under a radial force at the impeller: y = F [Integral M m/(E I) dx + Integral V v/(kappa G A) dx + R_1 r_1/k_1 + R_2 r_2/k_2], m, v, r of a force of 1 at the seal, I = pi d^4/64. Source: beam: theory of bending by virtual work, as in S. P. Timoshenko, Strength of Materials; limit 0.05 mm: ISO 5199:2002, 4.11 and ISO 13709:2009, 6.9.1.3 (all from memory); overhung formula for the impeller: R. Mackay, The Practical Pumping Handbook, 2004, p. 29 (read).
inline shaft_deflection_at_seal_results shaft_deflection_at_seal(Force force, const std::vector<Length>& lengths, const std::vector<Length>& diameters, Length overhang, Length seal_distance, PressureDifference elastic_modulus = unit<PressureDifference>("GPa")(205), Stiffness inboard_stiffness = unit<Stiffness>("N/mm")(1000000000000), Stiffness outboard_stiffness = unit<Stiffness>("N/mm")(1000000000000), PressureDifference shear_modulus = unit<PressureDifference>("GPa")(0), Length limit = unit<Length>("mm")(0.05))
{
    const std::vector<double> lengths_numbers = detail::numbers(unit<Length>("mm"), lengths);
    const std::vector<double> diameters_numbers = detail::numbers(unit<Length>("mm"), diameters);
    cutwater_refusal refusal;
    double at_seal_out;
    double at_impeller_out;
    double inboard_load_out;
    double outboard_load_out;
    const char* verdict_out;
    detail::check(cutwater_shaft_deflection_at_seal(detail::number_in(unit<Force>("N"), force), lengths_numbers.data(), lengths_numbers.size(), diameters_numbers.data(), diameters_numbers.size(), detail::number_in(unit<Length>("mm"), overhang), detail::number_in(unit<Length>("mm"), seal_distance), detail::number_in(unit<PressureDifference>("GPa"), elastic_modulus), detail::number_in(unit<Stiffness>("N/mm"), inboard_stiffness), detail::number_in(unit<Stiffness>("N/mm"), outboard_stiffness), detail::number_in(unit<PressureDifference>("GPa"), shear_modulus), detail::number_in(unit<Length>("mm"), limit), &at_seal_out, &at_impeller_out, &inboard_load_out, &outboard_load_out, &verdict_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("mm"), at_seal_out), detail::quantity_of(unit<Length>("mm"), at_impeller_out), detail::quantity_of(unit<Force>("N"), inboard_load_out), detail::quantity_of(unit<Force>("N"), outboard_load_out), verdict_out};
}

struct shaft_deflection_results {
    Length deflection;  // deflection in the direction of positive forces
    Force first_load;  // load on the first bearing
    Force second_load;  // load on the second bearing
};

/// Deflection of a stepped shaft on two bearings at any place, under any forces in one plane: y = Sum F_i [Integral M_i m/(E I) dx + Integral V_i v/(kappa G A) dx + R_1i r_1/k_1 + R_2i r_2/k_2], m, v, r of a force of 1 at x. Source: theory of bending by virtual work, each section's M m/(E I) integrated, bearings as springs; S. P. Timoshenko, Strength of Materials; shear with the coefficient 6 (1 + nu)/(7 + 6 nu) of G. R. Cowper, J. Applied Mechanics 1966 (both from memory).
inline shaft_deflection_results shaft_deflection(const std::vector<Force>& forces, const std::vector<Length>& places, const std::vector<Length>& lengths, const std::vector<Length>& diameters, Length first_bearing, Length second_bearing, Length place, PressureDifference elastic_modulus = unit<PressureDifference>("GPa")(205), Stiffness inboard_stiffness = unit<Stiffness>("N/mm")(1000000000000), Stiffness outboard_stiffness = unit<Stiffness>("N/mm")(1000000000000), PressureDifference shear_modulus = unit<PressureDifference>("GPa")(0))
{
    const std::vector<double> forces_numbers = detail::numbers(unit<Force>("N"), forces);
    const std::vector<double> places_numbers = detail::numbers(unit<Length>("mm"), places);
    const std::vector<double> lengths_numbers = detail::numbers(unit<Length>("mm"), lengths);
    const std::vector<double> diameters_numbers = detail::numbers(unit<Length>("mm"), diameters);
    cutwater_refusal refusal;
    double deflection_out;
    double first_load_out;
    double second_load_out;
    detail::check(cutwater_shaft_deflection(forces_numbers.data(), forces_numbers.size(), places_numbers.data(), places_numbers.size(), lengths_numbers.data(), lengths_numbers.size(), diameters_numbers.data(), diameters_numbers.size(), detail::number_in(unit<Length>("mm"), first_bearing), detail::number_in(unit<Length>("mm"), second_bearing), detail::number_in(unit<Length>("mm"), place), detail::number_in(unit<PressureDifference>("GPa"), elastic_modulus), detail::number_in(unit<Stiffness>("N/mm"), inboard_stiffness), detail::number_in(unit<Stiffness>("N/mm"), outboard_stiffness), detail::number_in(unit<PressureDifference>("GPa"), shear_modulus), &deflection_out, &first_load_out, &second_load_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("mm"), deflection_out), detail::quantity_of(unit<Force>("N"), first_load_out), detail::quantity_of(unit<Force>("N"), second_load_out)};
}

/// Slenderness L^3/D^4 of an overhung shaft, a screening figure: L^3/D^4. Source: common practice; McNally Institute, glossary (read): below 60 in^-1 or 2.0 mm^-1.
inline InverseLength shaft_stiffness_ratio(Length overhang, Length diameter)
{
    cutwater_refusal refusal;
    double ratio_out;
    detail::check(cutwater_shaft_stiffness_ratio(detail::number_in(unit<Length>("mm"), overhang), detail::number_in(unit<Length>("mm"), diameter), &ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<InverseLength>("1/mm"), ratio_out);
}

struct first_critical_speed_results {
    RotationalSpeed lower_bound;  // of point masses by Dunkerley: their first critical speed is not below it
    RotationalSpeed upper_bound;  // of point masses by Rayleigh: their first critical speed is not above it
};

/// Bounds of a rotor's first critical speed in bending, dry and undamped, from its masses and stepped shaft: n_D = 1/(2 pi) [Sum m_i a_ii + Integral mu a(x, x) dx]^-0.5; n_R = 1/(2 pi) {a_jj/[Sum m_i a_ij^2 + Integral mu a(x, x_j)^2 dx]}^0.5; a: deflection by a force of 1, j: the mass with the greatest m a. Source: S. Dunkerley, Phil. Trans. Royal Society A 185 (1894); Lord Rayleigh, The Theory of Sound; S. P. Timoshenko, Vibration Problems in Engineering (all from memory); deflections by virtual work.
inline first_critical_speed_results first_critical_speed(const std::vector<Mass>& masses, const std::vector<Length>& places, const std::vector<Length>& lengths, const std::vector<Length>& diameters, Length first_bearing, Length second_bearing, Density shaft_density = unit<Density>("kg/m3")(7850), PressureDifference elastic_modulus = unit<PressureDifference>("GPa")(205), Stiffness inboard_stiffness = unit<Stiffness>("N/mm")(1000000000000), Stiffness outboard_stiffness = unit<Stiffness>("N/mm")(1000000000000), PressureDifference shear_modulus = unit<PressureDifference>("GPa")(0))
{
    const std::vector<double> masses_numbers = detail::numbers(unit<Mass>("kg"), masses);
    const std::vector<double> places_numbers = detail::numbers(unit<Length>("mm"), places);
    const std::vector<double> lengths_numbers = detail::numbers(unit<Length>("mm"), lengths);
    const std::vector<double> diameters_numbers = detail::numbers(unit<Length>("mm"), diameters);
    cutwater_refusal refusal;
    double lower_bound_out;
    double upper_bound_out;
    detail::check(cutwater_first_critical_speed(masses_numbers.data(), masses_numbers.size(), places_numbers.data(), places_numbers.size(), lengths_numbers.data(), lengths_numbers.size(), diameters_numbers.data(), diameters_numbers.size(), detail::number_in(unit<Length>("mm"), first_bearing), detail::number_in(unit<Length>("mm"), second_bearing), detail::number_in(unit<Density>("kg/m3"), shaft_density), detail::number_in(unit<PressureDifference>("GPa"), elastic_modulus), detail::number_in(unit<Stiffness>("N/mm"), inboard_stiffness), detail::number_in(unit<Stiffness>("N/mm"), outboard_stiffness), detail::number_in(unit<PressureDifference>("GPa"), shear_modulus), &lower_bound_out, &upper_bound_out, &refusal), refusal);
    return {detail::quantity_of(unit<RotationalSpeed>("1/min"), lower_bound_out), detail::quantity_of(unit<RotationalSpeed>("1/min"), upper_bound_out)};
}

struct critical_speed_separation_results {
    Ratio ratio;  // critical speed over highest running speed
    const char* verdict;  // whether the separation is kept
};

/// How far the first critical speed lies above the highest running speed, and whether that is enough: n_c/n_max >= 1 + s. Source: ISO 5199:2002, 4.3.1: 10 %; ISO 13709:2009, 6.9.1.2: 20 % for rotors that run wet, 30 % for those that may run dry (both from memory).
inline critical_speed_separation_results critical_speed_separation(RotationalSpeed critical_speed, RotationalSpeed highest_speed, Fraction separation)
{
    cutwater_refusal refusal;
    double ratio_out;
    const char* verdict_out;
    detail::check(cutwater_critical_speed_separation(detail::number_in(unit<RotationalSpeed>("1/min"), critical_speed), detail::number_in(unit<RotationalSpeed>("1/min"), highest_speed), detail::number_in(unit<Fraction>(""), separation), &ratio_out, &verdict_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), ratio_out), verdict_out};
}

/// Shear stress at the surface of a shaft under torque: tau = 16 T d/[pi (d^4 - d_i^4)]. Source: theory of torsion; T. H. Wentzell, Machine Design, ex. 17.1, in a published companion (read).
inline PressureDifference shaft_shear_stress(Torque torque, Length diameter, Length bore = unit<Length>("mm")(0))
{
    cutwater_refusal refusal;
    double stress_out;
    detail::check(cutwater_shaft_shear_stress(detail::number_in(unit<Torque>("N m"), torque), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), bore), &stress_out, &refusal), refusal);
    return detail::quantity_of(unit<PressureDifference>("MPa"), stress_out);
}

struct shaft_combined_stress_results {
    PressureDifference normal_stress;  // greatest normal stress, from bending and axial force
    PressureDifference shear_stress;  // shear stress at the surface
    PressureDifference greatest_shear;  // greatest shear stress, to compare with half the yield strength
    PressureDifference equivalent_stress;  // equivalent stress by von Mises, to compare with the yield strength
};

/// Stresses in a solid shaft under bending, torque and axial force together: sigma = 32 M/(pi d^3) + 4 |F_ax|/(pi d^2); tau = 16 T/(pi d^3); tau_max = (sigma^2/4 + tau^2)^0.5; sigma_v = (sigma^2 + 3 tau^2)^0.5. Source: theory of bending and torsion, greatest shear and von Mises; T. H. Wentzell, Machine Design, ex. 17.1 and 17.2, in a published companion (read).
inline shaft_combined_stress_results shaft_combined_stress(Torque bending_moment, Torque torque, Force axial_force, Length diameter)
{
    cutwater_refusal refusal;
    double normal_stress_out;
    double shear_stress_out;
    double greatest_shear_out;
    double equivalent_stress_out;
    detail::check(cutwater_shaft_combined_stress(detail::number_in(unit<Torque>("N m"), bending_moment), detail::number_in(unit<Torque>("N m"), torque), detail::number_in(unit<Force>("N"), axial_force), detail::number_in(unit<Length>("mm"), diameter), &normal_stress_out, &shear_stress_out, &greatest_shear_out, &equivalent_stress_out, &refusal), refusal);
    return {detail::quantity_of(unit<PressureDifference>("MPa"), normal_stress_out), detail::quantity_of(unit<PressureDifference>("MPa"), shear_stress_out), detail::quantity_of(unit<PressureDifference>("MPa"), greatest_shear_out), detail::quantity_of(unit<PressureDifference>("MPa"), equivalent_stress_out)};
}

/// Endurance limit of a steel shaft in rotating bending, estimated from its tensile strength: S_e = k_a k_b k_c min(0.5 S_u, 700 MPa). Source: J. E. Shigley, Mechanical Engineering Design (from memory of it): half the tensile strength, at most 700 MPa, times Marin's factors; T. H. Wentzell, Machine Design, ex. 17.4, in a published companion (read).
inline PressureDifference shaft_endurance_limit(PressureDifference tensile_strength, Fraction surface_factor, Fraction size_factor, Fraction other_factors)
{
    cutwater_refusal refusal;
    double endurance_limit_out;
    detail::check(cutwater_shaft_endurance_limit(detail::number_in(unit<PressureDifference>("MPa"), tensile_strength), detail::number_in(unit<Fraction>(""), surface_factor), detail::number_in(unit<Fraction>(""), size_factor), detail::number_in(unit<Fraction>(""), other_factors), &endurance_limit_out, &refusal), refusal);
    return detail::quantity_of(unit<PressureDifference>("MPa"), endurance_limit_out);
}

struct shaft_fatigue_safety_results {
    Ratio fatigue_safety;  // safety against fatigue
    Ratio yield_safety;  // safety against first yield, notches counted
};

/// Safety of a turning solid shaft against fatigue and against yield, under a bending moment that stands still and a torque: 1/n_f = 16/(pi d^3) {[4 (K_f M_a)^2 + 3 (K_fs T_a)^2]^0.5/S_e + 3^0.5 K_fs T_m/S_u}; 1/n_y = 16/(pi d^3) {4 (K_f M_a)^2 + 3 [K_fs (T_m + T_a)]^2}^0.5/S_y. Source: distortion energy with Goodman's line, J. E. Shigley and others, Mechanical Engineering Design, 9th edition, eq. 7-7 and 7-15 (from memory of it).
inline shaft_fatigue_safety_results shaft_fatigue_safety(Torque bending_moment, Torque torque, Torque torque_swing, Length diameter, PressureDifference endurance_limit, PressureDifference tensile_strength, PressureDifference yield_strength, Ratio bending_notch, Ratio torsion_notch)
{
    cutwater_refusal refusal;
    double fatigue_safety_out;
    double yield_safety_out;
    detail::check(cutwater_shaft_fatigue_safety(detail::number_in(unit<Torque>("N m"), bending_moment), detail::number_in(unit<Torque>("N m"), torque), detail::number_in(unit<Torque>("N m"), torque_swing), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<PressureDifference>("MPa"), endurance_limit), detail::number_in(unit<PressureDifference>("MPa"), tensile_strength), detail::number_in(unit<PressureDifference>("MPa"), yield_strength), detail::number_in(unit<Ratio>(""), bending_notch), detail::number_in(unit<Ratio>(""), torsion_notch), &fatigue_safety_out, &yield_safety_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), fatigue_safety_out), detail::quantity_of(unit<Ratio>(""), yield_safety_out)};
}

struct key_pressure_results {
    Force force;  // force at the shaft's surface
    PressureDifference shear_stress;  // shear stress in the key
    PressureDifference bearing_pressure;  // pressure on the side of key or seat
};

/// Shear stress and bearing pressure of a parallel key: F = 2 T/d; tau = F/(l b); p = F/(l t). Source: common practice; V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, pp. 342 and 343 (read); T. H. Wentzell, Machine Design, ex. 15.1, in a published companion (read).
inline key_pressure_results key_pressure(Torque torque, Length shaft_diameter, Length key_length, Length key_width, Length bearing_height)
{
    cutwater_refusal refusal;
    double force_out;
    double shear_stress_out;
    double bearing_pressure_out;
    detail::check(cutwater_key_pressure(detail::number_in(unit<Torque>("N m"), torque), detail::number_in(unit<Length>("mm"), shaft_diameter), detail::number_in(unit<Length>("mm"), key_length), detail::number_in(unit<Length>("mm"), key_width), detail::number_in(unit<Length>("mm"), bearing_height), &force_out, &shear_stress_out, &bearing_pressure_out, &refusal), refusal);
    return {detail::quantity_of(unit<Force>("N"), force_out), detail::quantity_of(unit<PressureDifference>("MPa"), shear_stress_out), detail::quantity_of(unit<PressureDifference>("MPa"), bearing_pressure_out)};
}

/// Torque that a coupling must be rated for: T = f P/(2 pi n). Source: common practice; U. C. Jindal, Machine Design, ex. 14-4, in a published companion (read).
inline Torque coupling_torque(Power power, RotationalSpeed speed, Ratio service_factor = unit<Ratio>("")(1.5))
{
    cutwater_refusal refusal;
    double torque_out;
    detail::check(cutwater_coupling_torque(detail::number_in(unit<Power>("kW"), power), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Ratio>(""), service_factor), &torque_out, &refusal), refusal);
    return detail::quantity_of(unit<Torque>("N m"), torque_out);
}

/// Torque that the pump takes at a part of its speed during start-up: T = max[T_n (n/n_n)^2, T_b (1 - n/n_b)]; beyond n_b: T_n (n/n_n)^2. Source: torque with the square of the speed by affinity; breakaway falling straight to nothing: common practice.
inline Torque starting_torque(Torque torque_at_speed, Ratio speed_ratio, Torque breakaway_torque, Ratio breakaway_end = unit<Ratio>("")(0.15))
{
    cutwater_refusal refusal;
    double torque_out;
    detail::check(cutwater_starting_torque(detail::number_in(unit<Torque>("N m"), torque_at_speed), detail::number_in(unit<Ratio>(""), speed_ratio), detail::number_in(unit<Torque>("N m"), breakaway_torque), detail::number_in(unit<Ratio>(""), breakaway_end), &torque_out, &refusal), refusal);
    return detail::quantity_of(unit<Torque>("N m"), torque_out);
}

/// Time that a motor needs to bring the pump up to speed: t = J Integral domega/(T_motor - T_pump); T_motor straight between points; T_pump = max[T_n (n/n_n)^2, T_b (1 - n/n_b)]. Source: moment of momentum; motor curve as IEC 60034-12 gives its least values (from memory of it).
inline Time run_up_time(const std::vector<RotationalSpeed>& speeds, const std::vector<Torque>& motor_torques, Torque pump_torque, Torque breakaway_torque, MomentOfInertia inertia, Ratio breakaway_end = unit<Ratio>("")(0.15))
{
    const std::vector<double> speeds_numbers = detail::numbers(unit<RotationalSpeed>("1/min"), speeds);
    const std::vector<double> motor_torques_numbers = detail::numbers(unit<Torque>("N m"), motor_torques);
    cutwater_refusal refusal;
    double time_out;
    detail::check(cutwater_run_up_time(speeds_numbers.data(), speeds_numbers.size(), motor_torques_numbers.data(), motor_torques_numbers.size(), detail::number_in(unit<Torque>("N m"), pump_torque), detail::number_in(unit<Torque>("N m"), breakaway_torque), detail::number_in(unit<MomentOfInertia>("kg m2"), inertia), detail::number_in(unit<Ratio>(""), breakaway_end), &time_out, &refusal), refusal);
    return detail::quantity_of(unit<Time>("s"), time_out);
}

struct vibration_zone_results {
    const char* zone;  // A: newly commissioned; B: unrestricted; C: for a limited time only; D: can cause damage; on a limit, the better zone
    Velocity upper_a;  // upper limit of zone A
    Velocity upper_b;  // upper limit of zone B
    Velocity upper_c;  // upper limit of zone C
};

/// Zone of a pump's vibration on its bearing housings: I up to 200 kW: A 2.5, B 4.0, C 6.6; I above: 3.5, 5.0, 7.6; II up to 200 kW: 3.2, 5.1, 8.5; II above: 4.2, 6.1, 9.5 mm/s. Source: ISO 10816-7:2009, Table 1: limits as quoted from it in Europump, Guidelines on Pump Vibration, 2013, pp. 8 and 9, by a public audit (excerpts read), and in two public programs; alarm and trip above 200 kW worked out here as 1.25 times the upper limits of zones B and C, which the printed ones fit.
inline vibration_zone_results vibration_zone(const char* category, Power power, Velocity velocity)
{
    cutwater_refusal refusal;
    const char* zone_out;
    double upper_a_out;
    double upper_b_out;
    double upper_c_out;
    detail::check(cutwater_vibration_zone(category, detail::number_in(unit<Power>("kW"), power), detail::number_in(unit<Velocity>("mm/s"), velocity), &zone_out, &upper_a_out, &upper_b_out, &upper_c_out, &refusal), refusal);
    return {zone_out, detail::quantity_of(unit<Velocity>("mm/s"), upper_a_out), detail::quantity_of(unit<Velocity>("mm/s"), upper_b_out), detail::quantity_of(unit<Velocity>("mm/s"), upper_c_out)};
}

struct vibration_alarm_trip_results {
    Velocity alarm;  // alarm: baseline and a quarter of the upper limit of zone B, at most the greatest alarm
    Velocity greatest_alarm;  // greatest alarm
    Velocity greatest_trip;  // greatest trip, one for all machines of a design
};

/// Presets for vibration alarm and trip of a pump from its baseline: v_al = min(v_0 + 0.25 v_B, v_al,max); greatest alarm and trip: I up to 200 kW 5.0 and 8.3, above 6.3 and 9.5; II up to 200 kW 6.4 and 10.6, above 7.6 and 11.9 mm/s. Source: ISO 10816-7:2009, Table 1: limits as quoted from it in Europump, Guidelines on Pump Vibration, 2013, pp. 8 and 9, by a public audit (excerpts read), and in two public programs; alarm and trip above 200 kW worked out here as 1.25 times the upper limits of zones B and C, which the printed ones fit.
inline vibration_alarm_trip_results vibration_alarm_trip(const char* category, Power power, Velocity baseline)
{
    cutwater_refusal refusal;
    double alarm_out;
    double greatest_alarm_out;
    double greatest_trip_out;
    detail::check(cutwater_vibration_alarm_trip(category, detail::number_in(unit<Power>("kW"), power), detail::number_in(unit<Velocity>("mm/s"), baseline), &alarm_out, &greatest_alarm_out, &greatest_trip_out, &refusal), refusal);
    return {detail::quantity_of(unit<Velocity>("mm/s"), alarm_out), detail::quantity_of(unit<Velocity>("mm/s"), greatest_alarm_out), detail::quantity_of(unit<Velocity>("mm/s"), greatest_trip_out)};
}

/// Frequency at which the impeller's vanes pass the cutwater: f = z n. Source: common practice.
inline Frequency vane_passing_frequency(RotationalSpeed speed, Count vanes)
{
    cutwater_refusal refusal;
    double frequency_out;
    detail::check(cutwater_vane_passing_frequency(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Count>(""), vanes), &frequency_out, &refusal), refusal);
    return detail::quantity_of(unit<Frequency>("Hz"), frequency_out);
}

struct permissible_unbalance_results {
    Unbalance unbalance;  // permissible residual unbalance, of all planes together
    Length eccentricity;  // permissible eccentricity of the mass; in g mm/kg the same number
};

/// Residual unbalance that a balance quality grade permits: e_per = G/omega; U_per = m e_per. Source: ISO 21940-11:2016 (before: ISO 1940-1), G = e_per omega (from memory); an article on balance standards in a trade journal gives U = 6.015 G W/N oz in (excerpt read).
inline permissible_unbalance_results permissible_unbalance(Velocity grade, Mass mass, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double unbalance_out;
    double eccentricity_out;
    detail::check(cutwater_permissible_unbalance(detail::number_in(unit<Velocity>("mm/s"), grade), detail::number_in(unit<Mass>("kg"), mass), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &unbalance_out, &eccentricity_out, &refusal), refusal);
    return {detail::quantity_of(unit<Unbalance>("g mm"), unbalance_out), detail::quantity_of(unit<Length>("um"), eccentricity_out)};
}

/// Balance quality grade that a residual unbalance amounts to: G = U omega/m. Source: ISO 21940-11:2016 (before: ISO 1940-1), G = e_per omega (from memory); an article on balance standards in a trade journal gives U = 6.015 G W/N oz in (excerpt read).
inline Velocity balance_grade(Unbalance unbalance, Mass mass, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double grade_out;
    detail::check(cutwater_balance_grade(detail::number_in(unit<Unbalance>("g mm"), unbalance), detail::number_in(unit<Mass>("kg"), mass), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &grade_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("mm/s"), grade_out);
}

/// Turning force of an unbalance: F_u = U omega^2. Source: centripetal force, common practice.
inline Force unbalance_force(Unbalance unbalance, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double force_out;
    detail::check(cutwater_unbalance_force(detail::number_in(unit<Unbalance>("g mm"), unbalance), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &force_out, &refusal), refusal);
    return detail::quantity_of(unit<Force>("N"), force_out);
}

}  // namespace cutwater

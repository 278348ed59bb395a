// generated from the catalogue by cutwater-generate; do not edit.
// Vertical, self-priming, recessed and close-coupled pumps.
#pragma once

#include <cutwater/families/special_builds.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// How much the line shaft of a vertical pump stretches under hydraulic thrust and weight: dl = (F + m g + W_s/2) L/(A E), A = pi d^2/4, W_s = rho_s g A L. Source: Hooke's law, the bar's own weight counted half; the line-shaft relation without weights as published for vertical turbine pumps (elongation = head x setting x thrust factor/(area x 29e6 psi), read).
inline Length line_shaft_stretch(Force thrust, Mass impeller_mass, Length length, Length shaft_diameter, PressureDifference modulus = unit<PressureDifference>("GPa")(206), Density metal_density = unit<Density>("kg/m3")(7850))
{
    cutwater_refusal refusal;
    double stretch_out;
    detail::check(cutwater_line_shaft_stretch(detail::number_in(unit<Force>("N"), thrust), detail::number_in(unit<Mass>("kg"), impeller_mass), detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Length>("mm"), shaft_diameter), detail::number_in(unit<PressureDifference>("GPa"), modulus), detail::number_in(unit<Density>("kg/m3"), metal_density), &stretch_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("mm"), stretch_out);
}

/// How much the column pipe of a vertical pump stretches under the liquid and what hangs from it: dl = (F + W_c/2) L/(A E), A = pi (D^2 - (D - 2 w)^2)/4, W_c = rho_s g A L. Source: Hooke's law, the bar's own weight counted half; the line-shaft relation without weights as published for vertical turbine pumps (elongation = head x setting x thrust factor/(area x 29e6 psi), read).
inline Length column_stretch(Force load, Length length, Length outside_diameter, Length wall, PressureDifference modulus = unit<PressureDifference>("GPa")(206), Density metal_density = unit<Density>("kg/m3")(7850))
{
    cutwater_refusal refusal;
    double stretch_out;
    detail::check(cutwater_column_stretch(detail::number_in(unit<Force>("N"), load), detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Length>("mm"), outside_diameter), detail::number_in(unit<Length>("mm"), wall), detail::number_in(unit<PressureDifference>("GPa"), modulus), detail::number_in(unit<Density>("kg/m3"), metal_density), &stretch_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("mm"), stretch_out);
}

struct line_shaft_clearance_results {
    const char* verdict;  // clear, or touches when nothing is left
    Length clearance;  // clearance left under load; negative: it rubs
};

/// Clearance that a lifted impeller keeps below it once the shaft has stretched: s = s_0 - (dl_s - dl_c) - dl_t. Source: geometry.
inline line_shaft_clearance_results line_shaft_clearance(Length lift, Length shaft_stretch, Length column_stretch = unit<Length>("mm")(0), Length differential_expansion = unit<Length>("mm")(0))
{
    cutwater_refusal refusal;
    const char* verdict_out;
    double clearance_out;
    detail::check(cutwater_line_shaft_clearance(detail::number_in(unit<Length>("mm"), lift), detail::number_in(unit<Length>("mm"), shaft_stretch), detail::number_in(unit<Length>("mm"), column_stretch), detail::number_in(unit<Length>("mm"), differential_expansion), &verdict_out, &clearance_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Length>("mm"), clearance_out)};
}

/// First bending critical speed of a line shaft between two guide bearings: n_c = (pi/(2 l^2)) sqrt(E I/((rho_s + rho_l) A)) sqrt(1 + F l^2/(pi^2 E I)), in revolutions. Source: beam on pinned supports under tension: W. Thomson, Theory of Vibration with Applications; S. Timoshenko, Vibration Problems in Engineering (from memory of both), checked against a finite-element computation; added mass of a cylinder in wide liquid: 1 (same).
inline RotationalSpeed line_shaft_critical_speed(Length span, Length shaft_diameter, Density liquid_density, PressureDifference modulus = unit<PressureDifference>("GPa")(206), Density metal_density = unit<Density>("kg/m3")(7850), Force tension = unit<Force>("N")(0))
{
    cutwater_refusal refusal;
    double critical_speed_out;
    detail::check(cutwater_line_shaft_critical_speed(detail::number_in(unit<Length>("mm"), span), detail::number_in(unit<Length>("mm"), shaft_diameter), detail::number_in(unit<Density>("kg/m3"), liquid_density), detail::number_in(unit<PressureDifference>("GPa"), modulus), detail::number_in(unit<Density>("kg/m3"), metal_density), detail::number_in(unit<Force>("N"), tension), &critical_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<RotationalSpeed>("1/min"), critical_speed_out);
}

/// Greatest distance between guide bearings that keeps a line shaft's critical speed above its own: l = sqrt((pi/2) sqrt(E I/((rho_s + rho_l) A))/(n n_c/n)), the tension left out. Source: beam on pinned supports under tension: W. Thomson, Theory of Vibration with Applications; S. Timoshenko, Vibration Problems in Engineering (from memory of both), checked against a finite-element computation; added mass of a cylinder in wide liquid: 1 (same).
inline Length line_shaft_bearing_span(RotationalSpeed speed, Ratio separation, Length shaft_diameter, Density liquid_density, PressureDifference modulus = unit<PressureDifference>("GPa")(206), Density metal_density = unit<Density>("kg/m3")(7850))
{
    cutwater_refusal refusal;
    double span_out;
    detail::check(cutwater_line_shaft_bearing_span(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Ratio>(""), separation), detail::number_in(unit<Length>("mm"), shaft_diameter), detail::number_in(unit<Density>("kg/m3"), liquid_density), detail::number_in(unit<PressureDifference>("GPa"), modulus), detail::number_in(unit<Density>("kg/m3"), metal_density), &span_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("mm"), span_out);
}

/// Pressure at the inlet of a submerged pump: p_1 = p_s + rho g (h - h_f). Source: hydrostatics.
inline AbsolutePressure pressure_at_inlet(AbsolutePressure surface_pressure, Length submergence, Density density, Length losses = unit<Length>("m")(0))
{
    cutwater_refusal refusal;
    double inlet_pressure_out;
    detail::check(cutwater_pressure_at_inlet(detail::number_in(unit<AbsolutePressure>("bara"), surface_pressure), detail::number_in(unit<Length>("m"), submergence), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Length>("m"), losses), &inlet_pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<AbsolutePressure>("bara"), inlet_pressure_out);
}

struct self_priming_lift_results {
    Length lift;  // greatest height of the highest point of the suction above the liquid; negative: none
    Length lift_by_vacuum;  // what the vacuum could hold
    Length lift_by_vapour;  // where the liquid would boil
};

/// Greatest height to which a self-priming unit can draw the liquid up: L = min(dp_v, p_s - p_v)/(rho g) - m. Source: hydrostatics; common practice. No published derating could be read.
inline self_priming_lift_results self_priming_lift(AbsolutePressure surface_pressure, AbsolutePressure vapour_pressure, PressureDifference attainable_vacuum, Density density, Length margin = unit<Length>("m")(0.5))
{
    cutwater_refusal refusal;
    double lift_out;
    double lift_by_vacuum_out;
    double lift_by_vapour_out;
    detail::check(cutwater_self_priming_lift(detail::number_in(unit<AbsolutePressure>("bara"), surface_pressure), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), detail::number_in(unit<PressureDifference>("bar"), attainable_vacuum), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Length>("m"), margin), &lift_out, &lift_by_vacuum_out, &lift_by_vapour_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("m"), lift_out), detail::quantity_of(unit<Length>("m"), lift_by_vacuum_out), detail::quantity_of(unit<Length>("m"), lift_by_vapour_out)};
}

struct impeller_from_coefficients_results {
    Length diameter;  // impeller outside diameter
    Velocity tip_speed;  // its peripheral speed
    Power power;  // pump power input
};

/// Impeller diameter, tip speed and power from a tested head coefficient and efficiency, for builds without a rule of their own such as recessed impellers: u_2 = sqrt(g H/psi), D = u_2/(pi n), P = rho g Q H/eta. Source: definition of the head coefficient as in head_coefficient; no citable correlation for recessed impellers could be read, so both coefficients are inputs.
inline impeller_from_coefficients_results impeller_from_coefficients(Flow flow, Length head, RotationalSpeed speed, Ratio head_coefficient, Fraction efficiency, Density density = unit<Density>("kg/m3")(998.2))
{
    cutwater_refusal refusal;
    double diameter_out;
    double tip_speed_out;
    double power_out;
    detail::check(cutwater_impeller_from_coefficients(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Ratio>(""), head_coefficient), detail::number_in(unit<Fraction>(""), efficiency), detail::number_in(unit<Density>("kg/m3"), density), &diameter_out, &tip_speed_out, &power_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("mm"), diameter_out), detail::quantity_of(unit<Velocity>("m/s"), tip_speed_out), detail::quantity_of(unit<Power>("kW"), power_out)};
}

struct shaft_end_temperature_results {
    Temperature end_temperature;  // temperature of the far end, which gives off no heat itself: the safe side
    Power heat;  // heat that leaves the hot end along the shaft
};

/// How hot a shaft still is at its far end, where a close-coupled motor's bearing sits, and the heat that goes along it: T_L = T_a + (T_0 - T_a)/cosh(m L), Q = sqrt(h pi d k pi d^2/4)(T_0 - T_a) tanh(m L), m = sqrt(4 h/(k d)). Source: rod with an insulated end: F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer, table 3.4 case B (from memory of it); a textbook example of it in an open Python companion read whole.
inline shaft_end_temperature_results shaft_end_temperature(Temperature hot_temperature, Temperature ambient_temperature, Length diameter, Length length, ThermalConductivity conductivity, HeatTransfer surface_coefficient = unit<HeatTransfer>("W/(m2 K)")(10))
{
    cutwater_refusal refusal;
    double end_temperature_out;
    double heat_out;
    detail::check(cutwater_shaft_end_temperature(detail::number_in(unit<Temperature>("degC"), hot_temperature), detail::number_in(unit<Temperature>("degC"), ambient_temperature), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), length), detail::number_in(unit<ThermalConductivity>("W/(m K)"), conductivity), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), surface_coefficient), &end_temperature_out, &heat_out, &refusal), refusal);
    return {detail::quantity_of(unit<Temperature>("degC"), end_temperature_out), detail::quantity_of(unit<Power>("W"), heat_out)};
}

}  // namespace cutwater

// generated from the catalogue by cutwater-generate; do not edit.
// System and suction.
#pragma once

#include <cutwater/families/system.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Mean velocity in a full round pipe: v = Q/(pi/4 d^2). Source: continuity; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read).
inline Velocity pipe_velocity(Flow flow, Length bore)
{
    cutwater_refusal refusal;
    double velocity_out;
    detail::check(cutwater_pipe_velocity(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), bore), &velocity_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("m/s"), velocity_out);
}

/// Bore at which a flow has a given mean velocity: d = sqrt(Q/(pi/4 v)). Source: continuity; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read).
inline Length bore_for_velocity(Flow flow, Velocity velocity)
{
    cutwater_refusal refusal;
    double bore_out;
    detail::check(cutwater_bore_for_velocity(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Velocity>("m/s"), velocity), &bore_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("mm"), bore_out);
}

/// Head of the liquid's kinetic energy at its mean velocity in a pipe: h_v = v^2/(2 g), v = Q/(pi/4 d^2). Source: ISO 17769-1:2012, velocity head (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition (excerpt read).
inline Length velocity_head(Flow flow, Length bore)
{
    cutwater_refusal refusal;
    double velocity_head_out;
    detail::check(cutwater_velocity_head(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), bore), &velocity_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), velocity_head_out);
}

/// Reynolds number of the flow in a full round pipe: Re = v d/nu, v = Q/(pi/4 d^2). Source: O. Reynolds (1883); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read).
inline Ratio reynolds_number(Flow flow, Length bore, KinematicViscosity kinematic_viscosity)
{
    cutwater_refusal refusal;
    double reynolds_number_out;
    detail::check(cutwater_reynolds_number(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity), &reynolds_number_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), reynolds_number_out);
}

/// Friction factor of a round pipe as Darcy defines it (four times Fanning's): Re <= 2000: f = 64/Re; above: 1/sqrt(f) = -2 log10(eps/(3.7 d) + 2.51/(Re sqrt(f))). Source: C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133 (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.2 and 3.A.5, table of roughness and critical zone (excerpt read).
inline Ratio friction_factor(Ratio reynolds_number, Length roughness, Length bore)
{
    cutwater_refusal refusal;
    double friction_factor_out;
    detail::check(cutwater_friction_factor(detail::number_in(unit<Ratio>(""), reynolds_number), detail::number_in(unit<Length>("mm"), roughness), detail::number_in(unit<Length>("mm"), bore), &friction_factor_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), friction_factor_out);
}

/// Head lost by friction in a straight round pipe: h_f = f (L/d) v^2/(2 g); Re <= 2000: f = 64/Re; above: f by Colebrook-White. Source: Darcy and Weisbach; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.1 to 3.A.5 (excerpt read).
inline Length pipe_friction_head(Flow flow, Length bore, Length length, Length roughness, KinematicViscosity kinematic_viscosity)
{
    cutwater_refusal refusal;
    double friction_head_out;
    detail::check(cutwater_pipe_friction_head(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Length>("mm"), roughness), detail::number_in(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity), &friction_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), friction_head_out);
}

/// Head lost in fittings, from their loss coefficient: h = K v^2/(2 g), v = Q/(pi/4 d^2). Source: Hydraulic Institute, Engineering Data Book, 2nd edition, losses of fittings (excerpt read).
inline Length fitting_head(Flow flow, Length bore, Ratio loss_coefficient)
{
    cutwater_refusal refusal;
    double head_loss_out;
    detail::check(cutwater_fitting_head(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Ratio>(""), loss_coefficient), &head_loss_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), head_loss_out);
}

struct valve_head_loss_results {
    Length head_loss;  // head lost, of the liquid that flows; the density cancels out of it
    PressureDifference pressure_loss;  // pressure lost
};

/// Head and pressure lost in a valve, from its flow coefficient: dp = d (Q/Kv)^2 bar with Q in m3/h; h = dp/(d rho_0 g), rho_0 = 999.1 kg/m3. Source: IEC 60534-2-1:2011, 7.1, turbulent incompressible flow, N1 = 1, no reducers (from memory of it); density of water at 15 degC: IAPWS-IF97.
inline valve_head_loss_results valve_head_loss(Flow flow, ValveCoefficient flow_coefficient, Ratio relative_density = unit<Ratio>("")(1))
{
    cutwater_refusal refusal;
    double head_loss_out;
    double pressure_loss_out;
    detail::check(cutwater_valve_head_loss(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<ValveCoefficient>("Kv"), flow_coefficient), detail::number_in(unit<Ratio>(""), relative_density), &head_loss_out, &pressure_loss_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("m"), head_loss_out), detail::quantity_of(unit<PressureDifference>("bar"), pressure_loss_out)};
}

/// Resistance of a system from its losses at one flow: k = h_f/Q^2. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.7 and 1.A.8 (excerpt read).
inline SystemResistance system_resistance(Flow flow, Length friction_head)
{
    cutwater_refusal refusal;
    double resistance_out;
    detail::check(cutwater_system_resistance(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), friction_head), &resistance_out, &refusal), refusal);
    return detail::quantity_of(unit<SystemResistance>("h2/m5"), resistance_out);
}

/// Head that a system asks for at a flow: H = H_s + k Q^2. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.8 (excerpt read).
inline Length system_head(Length static_head, SystemResistance resistance, Flow flow)
{
    cutwater_refusal refusal;
    double head_out;
    detail::check(cutwater_system_head(detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), detail::number_in(unit<Flow>("m3/h"), flow), &head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), head_out);
}

/// Total head of a pump from its discharge and suction gauges: H = (p_2 - p_1)/(rho g) + z_2 - z_1 + (v_2^2 - v_1^2)/(2 g). Source: ISO 9906:2012, pump total head (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.A.3 to 1.A.6 (excerpt read).
inline Length total_head_from_gauges(GaugePressure discharge_pressure, GaugePressure suction_pressure, Length discharge_gauge_elevation, Length suction_gauge_elevation, Length discharge_bore, Length suction_bore, Flow flow, Density density)
{
    cutwater_refusal refusal;
    double total_head_out;
    detail::check(cutwater_total_head_from_gauges(detail::number_in(unit<GaugePressure>("barg"), discharge_pressure), detail::number_in(unit<GaugePressure>("barg"), suction_pressure), detail::number_in(unit<Length>("m"), discharge_gauge_elevation), detail::number_in(unit<Length>("m"), suction_gauge_elevation), detail::number_in(unit<Length>("mm"), discharge_bore), detail::number_in(unit<Length>("mm"), suction_bore), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Density>("kg/m3"), density), &total_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), total_head_out);
}

/// Net positive suction head that the installation offers: NPSHA = (p_s - p_v)/(rho g) + z - h_f. Source: ISO 17769-1:2012, net positive suction head and its datum; ANSI/HI 9.6.1-2012 (from memory of both); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read).
inline Length npsh_available(AbsolutePressure surface_pressure, AbsolutePressure vapour_pressure, Density density, Length liquid_level, Length friction_head)
{
    cutwater_refusal refusal;
    double npsh_out;
    detail::check(cutwater_npsh_available(detail::number_in(unit<AbsolutePressure>("bara"), surface_pressure), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Length>("m"), liquid_level), detail::number_in(unit<Length>("m"), friction_head), &npsh_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh_out);
}

/// Net positive suction head at the pump, from a suction gauge reading: NPSHA = (p_1 + p_amb - p_v)/(rho g) + z_1 + v^2/(2 g). Source: ISO 9906:2012, NPSH at the reference plane (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read).
inline Length npsh_available_from_gauge(GaugePressure suction_pressure, AbsolutePressure ambient_pressure, Length gauge_elevation, Length bore, Flow flow, Density density, AbsolutePressure vapour_pressure)
{
    cutwater_refusal refusal;
    double npsh_out;
    detail::check(cutwater_npsh_available_from_gauge(detail::number_in(unit<GaugePressure>("barg"), suction_pressure), detail::number_in(unit<AbsolutePressure>("bara"), ambient_pressure), detail::number_in(unit<Length>("m"), gauge_elevation), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), &npsh_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh_out);
}

/// Net positive suction head, available or needed, referred to another height: NPSH' = NPSH - dz. Source: ISO 17769-1:2012, NPSH datum plane (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read), the level put from one height to another.
inline Length npsh_at_datum(Length npsh, Length datum_rise)
{
    cutwater_refusal refusal;
    double npsh_at_new_datum_out;
    detail::check(cutwater_npsh_at_datum(detail::number_in(unit<Length>("m"), npsh), detail::number_in(unit<Length>("m"), datum_rise), &npsh_at_new_datum_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh_at_new_datum_out);
}

/// NPSH margin as a difference: m = NPSHA - NPSH3. Source: ANSI/HI 9.6.1-2012, NPSH margin (from memory of it).
inline Length npsh_margin(Length npsh_available, Length npsh3)
{
    cutwater_refusal refusal;
    double margin_out;
    detail::check(cutwater_npsh_margin(detail::number_in(unit<Length>("m"), npsh_available), detail::number_in(unit<Length>("m"), npsh3), &margin_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), margin_out);
}

/// NPSH margin as a ratio: ratio = NPSHA/NPSH3. Source: ANSI/HI 9.6.1-2012, NPSH margin ratio (from memory of it).
inline Ratio npsh_margin_ratio(Length npsh_available, Length npsh3)
{
    cutwater_refusal refusal;
    double margin_ratio_out;
    detail::check(cutwater_npsh_margin_ratio(detail::number_in(unit<Length>("m"), npsh_available), detail::number_in(unit<Length>("m"), npsh3), &margin_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), margin_ratio_out);
}

/// NPSH3 on a viscous liquid from NPSH3 on water, an estimate of the trend: NPSH3_vis = NPSH3_W (1 + A (1/C_H - 1) 274000 NPSH3_BEP/(Q_BEP^0.667 n^1.33)); m, m3/h, 1/min. Source: ISO/TR 17766:2005 and ANSI/HI 9.6.7-2010, NPSH3 on viscous liquids (from memory of both; the metric constant agrees with the 225 000 of the US form within 0.3 %).
inline Length npsh3_with_viscosity(Length npsh3, Length best_efficiency_npsh3, Ratio head_ratio, Flow best_efficiency_flow, RotationalSpeed speed, const char* inlet)
{
    cutwater_refusal refusal;
    double viscous_npsh3_out;
    detail::check(cutwater_npsh3_with_viscosity(detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Length>("m"), best_efficiency_npsh3), detail::number_in(unit<Ratio>(""), head_ratio), detail::number_in(unit<Flow>("m3/h"), best_efficiency_flow), detail::number_in(unit<RotationalSpeed>("1/min"), speed), inlet, &viscous_npsh3_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), viscous_npsh3_out);
}

/// Greatest height of a pump above the liquid that leaves NPSH3 and a margin: z_max = (p_s - p_v)/(rho g) - h_f - NPSH3 - m. Source: ISO 17769-1:2012, net positive suction head (from memory of it), solved for the level; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read).
inline Length greatest_suction_lift(AbsolutePressure surface_pressure, AbsolutePressure vapour_pressure, Density density, Length friction_head, Length npsh3, Length margin)
{
    cutwater_refusal refusal;
    double lift_out;
    detail::check(cutwater_greatest_suction_lift(detail::number_in(unit<AbsolutePressure>("bara"), surface_pressure), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Length>("m"), friction_head), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Length>("m"), margin), &lift_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), lift_out);
}

/// Least depth of an inlet below the surface, against vortices that draw air: S = D (1 + 2.3 F_D), F_D = V/sqrt(g D), V = Q/(pi/4 D^2). Source: ANSI/HI 9.8, required submergence against vortices (from memory of it, after Hecker 1987); formula read in Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.E.1 and 1.E.2 (excerpt read).
inline Length minimum_submergence(Flow flow, Length inlet_diameter)
{
    cutwater_refusal refusal;
    double submergence_out;
    detail::check(cutwater_minimum_submergence(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("mm"), inlet_diameter), &submergence_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), submergence_out);
}

/// Least sump volume between the start and stop levels of one pump: V = T Q/4, T = 1/Z; the shortest cycle comes at an inflow of Q/2. Source: ANSI/HI 9.8, minimum sump volume of a constant-speed pump (from memory of it); the least of T = V/q + V/(Q - q) is at q = Q/2.
inline Volume wet_well_volume(Flow flow, Frequency starts)
{
    cutwater_refusal refusal;
    double volume_out;
    detail::check(cutwater_wet_well_volume(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Frequency>("1/h"), starts), &volume_out, &refusal), refusal);
    return detail::quantity_of(unit<Volume>("m3"), volume_out);
}

/// Time to draw the air out of a suction line, the liquid rising after it: t = (V/S)(1 + ln(p_amb/(p_amb - rho g L))). Source: mass balance of ideal isothermal air at a constant volume rate, all of it above the lift (the slowest case); own model, checked against a numerical march.
inline Time priming_time(Volume pipe_volume, Flow air_handling_rate, Length lift, AbsolutePressure ambient_pressure = unit<AbsolutePressure>("bara")(1.01325), Density density = unit<Density>("kg/m3")(998.2))
{
    cutwater_refusal refusal;
    double time_out;
    detail::check(cutwater_priming_time(detail::number_in(unit<Volume>("m3"), pipe_volume), detail::number_in(unit<Flow>("m3/h"), air_handling_rate), detail::number_in(unit<Length>("m"), lift), detail::number_in(unit<AbsolutePressure>("bara"), ambient_pressure), detail::number_in(unit<Density>("kg/m3"), density), &time_out, &refusal), refusal);
    return detail::quantity_of(unit<Time>("s"), time_out);
}

/// Pressure rise when a flow is stopped faster than the pressure wave returns: dp = rho a dv. Source: N. Joukowsky (1898); Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it).
inline PressureDifference pressure_surge(Velocity velocity_change, Velocity wave_speed, Density density)
{
    cutwater_refusal refusal;
    double pressure_rise_out;
    detail::check(cutwater_pressure_surge(detail::number_in(unit<Velocity>("m/s"), velocity_change), detail::number_in(unit<Velocity>("m/s"), wave_speed), detail::number_in(unit<Density>("kg/m3"), density), &pressure_rise_out, &refusal), refusal);
    return detail::quantity_of(unit<PressureDifference>("bar"), pressure_rise_out);
}

/// Speed of a pressure wave in a thin-walled pipe full of liquid: a = sqrt(K/rho)/sqrt(1 + c K d/(E e)), c by the anchorage. Source: D. J. Korteweg (1878); factors c = 1, 1 - mu/2, 1 - mu^2: E. B. Wylie and V. L. Streeter, Fluid Transients in Systems, 1993 (from memory of it; the set read in a multiphysics manual); 1.25 - mu, 1 - mu/2: ASCE 1975, for pipes with d/e above 40 (as credited in a transients manual, excerpt read).
inline Velocity pressure_wave_speed(PressureDifference bulk_modulus, PressureDifference pipe_modulus, Length bore, Length wall, Density density, const char* anchorage = "one end", Ratio poisson_ratio = unit<Ratio>("")(0.3))
{
    cutwater_refusal refusal;
    double wave_speed_out;
    detail::check(cutwater_pressure_wave_speed(detail::number_in(unit<PressureDifference>("GPa"), bulk_modulus), detail::number_in(unit<PressureDifference>("GPa"), pipe_modulus), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Length>("mm"), wall), detail::number_in(unit<Density>("kg/m3"), density), anchorage, detail::number_in(unit<Ratio>(""), poisson_ratio), &wave_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("m/s"), wave_speed_out);
}

/// Time of the pressure wave to the end of a line and back: a faster closure counts as sudden: T = 2 L/a. Source: Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it).
inline Time surge_period(Length length, Velocity wave_speed)
{
    cutwater_refusal refusal;
    double period_out;
    detail::check(cutwater_surge_period(detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Velocity>("m/s"), wave_speed), &period_out, &refusal), refusal);
    return detail::quantity_of(unit<Time>("s"), period_out);
}

struct closure_surge_results {
    PressureDifference pressure_rise;  // greatest pressure rise at the valve; negative: a fall
    const char* closure;  // sudden when the valve closes before the wave returns, else slow
};

/// Pressure rise when a valve takes a flow away evenly in a given time: dp = rho a dv for t_c <= 2 L/a; dp = 2 rho L dv/t_c above. Source: N. Joukowsky (1898) and J. Michaud (1878); K. Subramanya, 1000 Solved Problems in Fluid Mechanics, unsteady flow (its worked examples read).
inline closure_surge_results closure_surge(Velocity velocity_change, Velocity wave_speed, Density density, Length length, Time closure_time)
{
    cutwater_refusal refusal;
    double pressure_rise_out;
    const char* closure_out;
    detail::check(cutwater_closure_surge(detail::number_in(unit<Velocity>("m/s"), velocity_change), detail::number_in(unit<Velocity>("m/s"), wave_speed), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Time>("s"), closure_time), &pressure_rise_out, &closure_out, &refusal), refusal);
    return {detail::quantity_of(unit<PressureDifference>("bar"), pressure_rise_out), closure_out};
}

struct line_packing_surge_results {
    PressureDifference pressure_rise;  // rise above the pressure at the valve while the liquid flowed, at most
    PressureDifference packing;  // of which by packing: the friction's pressure comes back
};

/// Greatest pressure rise at a valve that stops the flow of a long line suddenly, line packing included: an upper bound: dp <= rho a v + rho g h_f. Source: Joukowsky's rise above the head of the line at rest, which friction can only lower: own bound, tried by the method of characteristics on lines of 1 to 100 km, which came to 100 to 83 % of it; E. B. Wylie and V. L. Streeter, Fluid Transients in Systems, 1993, line packing (from memory of it).
inline line_packing_surge_results line_packing_surge(Velocity velocity, Velocity wave_speed, Density density, Length friction_head)
{
    cutwater_refusal refusal;
    double pressure_rise_out;
    double packing_out;
    detail::check(cutwater_line_packing_surge(detail::number_in(unit<Velocity>("m/s"), velocity), detail::number_in(unit<Velocity>("m/s"), wave_speed), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Length>("m"), friction_head), &pressure_rise_out, &packing_out, &refusal), refusal);
    return {detail::quantity_of(unit<PressureDifference>("bar"), pressure_rise_out), detail::quantity_of(unit<PressureDifference>("bar"), packing_out)};
}

}  // namespace cutwater

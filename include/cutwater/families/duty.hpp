// generated from the catalogue by cutwater-generate; do not edit.
// The whole duty.
#pragma once

#include <cutwater/families/duty.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

struct whole_duty_results {
    Flow flow;  // flow through pump and system
    Length head;  // head there
    Fraction efficiency;  // pump efficiency there
    Power power;  // pump power input there
    Length npsh3;  // NPSH at 3 % head drop there
    Length npsh;  // NPSH available there
    Length margin;  // what is left; negative: the pump cavitates and the duty does not hold
};

/// The whole duty of a pump on its system: flow, head, efficiency, power, and NPSH needed and offered: H_pump(Q) = H_s + k Q^2; P = rho g Q H/eta(Q); NPSHA = NPSHA_0 - k_s Q^2. Source: definitions of ISO 17769-1:2012 (from memory of it); the curves between their points as in curve_head.
inline whole_duty_results whole_duty(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, const std::vector<Length>& npsh3_values, Length static_head, SystemResistance resistance, Density density, Length npsh_at_rest, SystemResistance suction_resistance)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    const std::vector<double> npsh3_values_numbers = detail::numbers(unit<Length>("m"), npsh3_values);
    cutwater_refusal refusal;
    double flow_out;
    double head_out;
    double efficiency_out;
    double power_out;
    double npsh3_out;
    double npsh_out;
    double margin_out;
    detail::check(cutwater_whole_duty(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), npsh3_values_numbers.data(), npsh3_values_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Length>("m"), npsh_at_rest), detail::number_in(unit<SystemResistance>("h2/m5"), suction_resistance), &flow_out, &head_out, &efficiency_out, &power_out, &npsh3_out, &npsh_out, &margin_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), flow_out), detail::quantity_of(unit<Length>("m"), head_out), detail::quantity_of(unit<Fraction>(""), efficiency_out), detail::quantity_of(unit<Power>("kW"), power_out), detail::quantity_of(unit<Length>("m"), npsh3_out), detail::quantity_of(unit<Length>("m"), npsh_out), detail::quantity_of(unit<Length>("m"), margin_out)};
}

struct whole_duty_on_system_points_results {
    Flow flow;  // flow through pump and system
    Length head;  // head there
    Fraction efficiency;  // pump efficiency there
    Power power;  // pump power input there
    Length npsh3;  // NPSH at 3 % head drop there
    Length npsh;  // NPSH available there
    Length margin;  // what is left; negative: the pump cavitates and the duty does not hold
};

/// The whole duty of a pump on a system given by points: flow, head, efficiency, power, NPSH needed and offered: H_pump(Q) = H_system(Q); P = rho g Q H/eta(Q); all curves between their points as in curve_head. Source: definitions of ISO 17769-1:2012 (from memory of it); the curves between their points as in curve_head.
inline whole_duty_on_system_points_results whole_duty_on_system_points(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, const std::vector<Length>& npsh3_values, const std::vector<Flow>& system_flows, const std::vector<Length>& system_heads, const std::vector<Length>& npsh_values, Density density)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    const std::vector<double> npsh3_values_numbers = detail::numbers(unit<Length>("m"), npsh3_values);
    const std::vector<double> system_flows_numbers = detail::numbers(unit<Flow>("m3/h"), system_flows);
    const std::vector<double> system_heads_numbers = detail::numbers(unit<Length>("m"), system_heads);
    const std::vector<double> npsh_values_numbers = detail::numbers(unit<Length>("m"), npsh_values);
    cutwater_refusal refusal;
    double flow_out;
    double head_out;
    double efficiency_out;
    double power_out;
    double npsh3_out;
    double npsh_out;
    double margin_out;
    detail::check(cutwater_whole_duty_on_system_points(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), npsh3_values_numbers.data(), npsh3_values_numbers.size(), system_flows_numbers.data(), system_flows_numbers.size(), system_heads_numbers.data(), system_heads_numbers.size(), npsh_values_numbers.data(), npsh_values_numbers.size(), detail::number_in(unit<Density>("kg/m3"), density), &flow_out, &head_out, &efficiency_out, &power_out, &npsh3_out, &npsh_out, &margin_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), flow_out), detail::quantity_of(unit<Length>("m"), head_out), detail::quantity_of(unit<Fraction>(""), efficiency_out), detail::quantity_of(unit<Power>("kW"), power_out), detail::quantity_of(unit<Length>("m"), npsh3_out), detail::quantity_of(unit<Length>("m"), npsh_out), detail::quantity_of(unit<Length>("m"), margin_out)};
}

struct duty_on_system_points_results {
    Flow flow;  // flow through the system, of all pumps together
    Length head;  // head of pumps and system there
    Flow flow_of_each;  // flow of each pump
};

/// Duty of one pump, or of equal pumps in parallel, on a system curve that is given by points: H_pump(Q/N) = H_system(Q), both curves read as by curve_head; all meetings over the flows that both cover are looked for. Source: definition of the duty point, common practice; the pump curve between its points as in curve_head.
inline duty_on_system_points_results duty_on_system_points(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Flow>& system_flows, const std::vector<Length>& system_heads, Count pumps = unit<Count>("")(1))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> system_flows_numbers = detail::numbers(unit<Flow>("m3/h"), system_flows);
    const std::vector<double> system_heads_numbers = detail::numbers(unit<Length>("m"), system_heads);
    cutwater_refusal refusal;
    double flow_out;
    double head_out;
    double flow_of_each_out;
    detail::check(cutwater_duty_on_system_points(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), system_flows_numbers.data(), system_flows_numbers.size(), system_heads_numbers.data(), system_heads_numbers.size(), detail::number_in(unit<Count>(""), pumps), &flow_out, &head_out, &flow_of_each_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), flow_out), detail::quantity_of(unit<Length>("m"), head_out), detail::quantity_of(unit<Flow>("m3/h"), flow_of_each_out)};
}

struct duty_on_mixed_friction_results {
    Flow flow;  // flow through the system, of all pumps together
    Length head;  // head of pumps and system there
    Flow flow_of_each;  // flow of each pump
};

/// Duty of one pump, or of equal pumps in parallel, on a system with laminar and turbulent friction: H_pump(Q/N) = H_s + h_1 Q/Q_r + h_2 (Q/Q_r)^m. Source: laminar friction rises with the flow (Hagen and Poiseuille), turbulent with its square in rough pipes (Darcy and Weisbach) and its power 1.75 in smooth ones (Blasius); any textbook of hydraulics.
inline duty_on_mixed_friction_results duty_on_mixed_friction(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length static_head, Flow reference_flow, Length laminar_friction_head, Length turbulent_friction_head, Ratio exponent = unit<Ratio>("")(2), Count pumps = unit<Count>("")(1))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double flow_out;
    double head_out;
    double flow_of_each_out;
    detail::check(cutwater_duty_on_mixed_friction(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<Flow>("m3/h"), reference_flow), detail::number_in(unit<Length>("m"), laminar_friction_head), detail::number_in(unit<Length>("m"), turbulent_friction_head), detail::number_in(unit<Ratio>(""), exponent), detail::number_in(unit<Count>(""), pumps), &flow_out, &head_out, &flow_of_each_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), flow_out), detail::quantity_of(unit<Length>("m"), head_out), detail::quantity_of(unit<Flow>("m3/h"), flow_of_each_out)};
}

/// System curve with laminar and turbulent friction, point by point: H_i = H_s + h_1 Q_i/Q_r + h_2 (Q_i/Q_r)^m. Source: laminar friction rises with the flow (Hagen and Poiseuille), turbulent with its square in rough pipes (Darcy and Weisbach) and its power 1.75 in smooth ones (Blasius); any textbook of hydraulics.
inline std::vector<Length> mixed_friction_heads(const std::vector<Flow>& flows, Length static_head, Flow reference_flow, Length laminar_friction_head, Length turbulent_friction_head, Ratio exponent = unit<Ratio>("")(2))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    cutwater_refusal refusal;
    std::vector<double> system_heads_out;
    std::size_t system_heads_count = 0;
    cutwater_status status = cutwater_mixed_friction_heads(flows_numbers.data(), flows_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<Flow>("m3/h"), reference_flow), detail::number_in(unit<Length>("m"), laminar_friction_head), detail::number_in(unit<Length>("m"), turbulent_friction_head), detail::number_in(unit<Ratio>(""), exponent), system_heads_out.data(), system_heads_out.size(), &system_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        system_heads_out.resize(system_heads_count);
        status = cutwater_mixed_friction_heads(flows_numbers.data(), flows_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<Flow>("m3/h"), reference_flow), detail::number_in(unit<Length>("m"), laminar_friction_head), detail::number_in(unit<Length>("m"), turbulent_friction_head), detail::number_in(unit<Ratio>(""), exponent), system_heads_out.data(), system_heads_out.size(), &system_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return detail::quantities(unit<Length>("m"), system_heads_out);
}

/// System curve of a line, its friction laminar or turbulent as it comes at each flow: H_i = H_s + h_f(Q_i) + K v_i^2/(2 g), h_f as in pipe_friction_head. Source: Darcy and Weisbach; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.1 to 3.A.5 (excerpt read).
inline std::vector<Length> line_heads(const std::vector<Flow>& flows, Length static_head, Length bore, Length length, Length roughness, KinematicViscosity kinematic_viscosity, Ratio loss_coefficient = unit<Ratio>("")(0))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    cutwater_refusal refusal;
    std::vector<double> system_heads_out;
    std::size_t system_heads_count = 0;
    cutwater_status status = cutwater_line_heads(flows_numbers.data(), flows_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Length>("mm"), roughness), detail::number_in(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity), detail::number_in(unit<Ratio>(""), loss_coefficient), system_heads_out.data(), system_heads_out.size(), &system_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        system_heads_out.resize(system_heads_count);
        status = cutwater_line_heads(flows_numbers.data(), flows_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Length>("m"), length), detail::number_in(unit<Length>("mm"), roughness), detail::number_in(unit<KinematicViscosity>("mm2/s"), kinematic_viscosity), detail::number_in(unit<Ratio>(""), loss_coefficient), system_heads_out.data(), system_heads_out.size(), &system_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return detail::quantities(unit<Length>("m"), system_heads_out);
}

struct flow_balance_on_system_points_results {
    Flow total_flow;  // flow through the system
    Length head;  // head common to both
    Flow flow_1;  // flow of pump 1
    Flow flow_2;  // flow of pump 2
    const char* delivering;  // whether one of them delivers nothing, the head being above its closed-valve head
};

/// Duty of two unlike pumps in parallel on a system curve that is given by points, and each pump's share: Q = Q_1(H) + Q_2(H), H = H_system(Q). Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it).
inline flow_balance_on_system_points_results flow_balance_on_system_points(const std::vector<Flow>& flows_1, const std::vector<Length>& heads_1, const std::vector<Flow>& flows_2, const std::vector<Length>& heads_2, const std::vector<Flow>& system_flows, const std::vector<Length>& system_heads)
{
    const std::vector<double> flows_1_numbers = detail::numbers(unit<Flow>("m3/h"), flows_1);
    const std::vector<double> heads_1_numbers = detail::numbers(unit<Length>("m"), heads_1);
    const std::vector<double> flows_2_numbers = detail::numbers(unit<Flow>("m3/h"), flows_2);
    const std::vector<double> heads_2_numbers = detail::numbers(unit<Length>("m"), heads_2);
    const std::vector<double> system_flows_numbers = detail::numbers(unit<Flow>("m3/h"), system_flows);
    const std::vector<double> system_heads_numbers = detail::numbers(unit<Length>("m"), system_heads);
    cutwater_refusal refusal;
    double total_flow_out;
    double head_out;
    double flow_1_out;
    double flow_2_out;
    const char* delivering_out;
    detail::check(cutwater_flow_balance_on_system_points(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), system_flows_numbers.data(), system_flows_numbers.size(), system_heads_numbers.data(), system_heads_numbers.size(), &total_flow_out, &head_out, &flow_1_out, &flow_2_out, &delivering_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), total_flow_out), detail::quantity_of(unit<Length>("m"), head_out), detail::quantity_of(unit<Flow>("m3/h"), flow_1_out), detail::quantity_of(unit<Flow>("m3/h"), flow_2_out), delivering_out};
}

struct energy_by_profile_heads_results {
    Energy energy;  // energy from the mains in the year
    Volume volume;  // volume pumped in the year
    EnergyPerVolume specific_energy;  // energy for each volume, mean of the year
    Ratio least_speed_ratio;  // lowest speed over full speed; 1 without speed control
};

/// Energy of a year's duty profile on a system of any kind, its head given at each flow: E = sum(P_el,j t_j), as in duty_profile_energy with H_j in place of H_s + k Q_j^2. Source: as for duty_profile_energy: energy balance at the meeting of pump and system, losses of motor and converter at part load.
inline energy_by_profile_heads_results energy_by_profile_heads(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, const std::vector<Flow>& profile_flows, const std::vector<Length>& profile_heads, const std::vector<Time>& hours, const char* control, Power motor_rating, Fraction motor_efficiency, Density density = unit<Density>("kg/m3")(998.2), Fraction drive_efficiency = unit<Fraction>("")(0.96), Fraction constant_loss_share = unit<Fraction>("")(0.36))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    const std::vector<double> profile_flows_numbers = detail::numbers(unit<Flow>("m3/h"), profile_flows);
    const std::vector<double> profile_heads_numbers = detail::numbers(unit<Length>("m"), profile_heads);
    const std::vector<double> hours_numbers = detail::numbers(unit<Time>("h"), hours);
    cutwater_refusal refusal;
    double energy_out;
    double volume_out;
    double specific_energy_out;
    double least_speed_ratio_out;
    detail::check(cutwater_energy_by_profile_heads(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), profile_flows_numbers.data(), profile_flows_numbers.size(), profile_heads_numbers.data(), profile_heads_numbers.size(), hours_numbers.data(), hours_numbers.size(), control, detail::number_in(unit<Power>("kW"), motor_rating), detail::number_in(unit<Fraction>(""), motor_efficiency), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), drive_efficiency), detail::number_in(unit<Fraction>(""), constant_loss_share), &energy_out, &volume_out, &specific_energy_out, &least_speed_ratio_out, &refusal), refusal);
    return {detail::quantity_of(unit<Energy>("kWh"), energy_out), detail::quantity_of(unit<Volume>("m3"), volume_out), detail::quantity_of(unit<EnergyPerVolume>("kWh/m3"), specific_energy_out), detail::quantity_of(unit<Ratio>(""), least_speed_ratio_out)};
}

struct rated_against_best_results {
    Ratio flow_ratio;  // rated flow over best efficiency flow
    Flow best_flow;  // best efficiency flow
    Fraction efficiency;  // efficiency at the rated flow
    Fraction efficiency_lost;  // how much less than the best
};

/// Where the rated point lies against best efficiency, and what the distance costs: Q_r/Q_BEP, Q_BEP as in best_efficiency_flow. Source: best efficiency point by ISO 17769-1:2012 (from memory of it); the parabola is common practice.
inline rated_against_best_results rated_against_best(const std::vector<Flow>& flows, const std::vector<Fraction>& efficiencies, Flow rated_flow)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    double flow_ratio_out;
    double best_flow_out;
    double efficiency_out;
    double efficiency_lost_out;
    detail::check(cutwater_rated_against_best(flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Flow>("m3/h"), rated_flow), &flow_ratio_out, &best_flow_out, &efficiency_out, &efficiency_lost_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), flow_ratio_out), detail::quantity_of(unit<Flow>("m3/h"), best_flow_out), detail::quantity_of(unit<Fraction>(""), efficiency_out), detail::quantity_of(unit<Fraction>(""), efficiency_lost_out)};
}

struct greatest_power_on_curve_results {
    Power power;  // greatest power input
    Flow flow;  // where it is taken
    const char* place;  // at its end: the power may go on rising beyond, at a larger flow
};

/// Greatest power along a pump's curve, to be held against the motor: P_max = max(P_i): curve_power passes no point's power between the points. Source: definition; the curve between its points as in curve_power.
inline greatest_power_on_curve_results greatest_power_on_curve(const std::vector<Flow>& flows, const std::vector<Power>& powers)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    cutwater_refusal refusal;
    double power_out;
    double flow_out;
    const char* place_out;
    detail::check(cutwater_greatest_power_on_curve(flows_numbers.data(), flows_numbers.size(), powers_numbers.data(), powers_numbers.size(), &power_out, &flow_out, &place_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), power_out), detail::quantity_of(unit<Flow>("m3/h"), flow_out), place_out};
}

/// Speed below which a pump delivers nothing against the static head: n_min = n sqrt(H_s/H_0). Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline RotationalSpeed least_speed_against_static_head(Length shutoff_head, RotationalSpeed speed, Length static_head)
{
    cutwater_refusal refusal;
    double least_speed_out;
    detail::check(cutwater_least_speed_against_static_head(detail::number_in(unit<Length>("m"), shutoff_head), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("m"), static_head), &least_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<RotationalSpeed>("1/min"), least_speed_out);
}

struct greatest_flow_by_suction_results {
    Flow flow;  // greatest flow
    Length npsh;  // NPSH available there
};

/// Greatest flow at which NPSH available still covers NPSH3 and a margin: NPSHA_0 - k_s Q^2 = NPSH3(Q) + m; all meetings over the curve's range are looked for. Source: ISO 17769-1:2012, NPSH available and NPSH3 (from memory of it); the curve between its points as in curve_npsh3.
inline greatest_flow_by_suction_results greatest_flow_by_suction(const std::vector<Flow>& flows, const std::vector<Length>& npsh3_values, Length npsh_at_rest, SystemResistance suction_resistance, Length margin)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> npsh3_values_numbers = detail::numbers(unit<Length>("m"), npsh3_values);
    cutwater_refusal refusal;
    double flow_out;
    double npsh_out;
    detail::check(cutwater_greatest_flow_by_suction(flows_numbers.data(), flows_numbers.size(), npsh3_values_numbers.data(), npsh3_values_numbers.size(), detail::number_in(unit<Length>("m"), npsh_at_rest), detail::number_in(unit<SystemResistance>("h2/m5"), suction_resistance), detail::number_in(unit<Length>("m"), margin), &flow_out, &npsh_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), flow_out), detail::quantity_of(unit<Length>("m"), npsh_out)};
}

struct greatest_flow_by_suction_points_results {
    Flow flow;  // greatest flow
    Length npsh;  // NPSH available there
};

/// Greatest flow at which NPSH available, given by points, still covers NPSH3 and a margin: NPSHA(Q) = NPSH3(Q) + m; all meetings over the flows that both cover are looked for. Source: ISO 17769-1:2012, NPSH available and NPSH3 (from memory of it); the curves between their points as in curve_npsh3.
inline greatest_flow_by_suction_points_results greatest_flow_by_suction_points(const std::vector<Flow>& flows, const std::vector<Length>& npsh3_values, const std::vector<Flow>& system_flows, const std::vector<Length>& npsh_values, Length margin)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> npsh3_values_numbers = detail::numbers(unit<Length>("m"), npsh3_values);
    const std::vector<double> system_flows_numbers = detail::numbers(unit<Flow>("m3/h"), system_flows);
    const std::vector<double> npsh_values_numbers = detail::numbers(unit<Length>("m"), npsh_values);
    cutwater_refusal refusal;
    double flow_out;
    double npsh_out;
    detail::check(cutwater_greatest_flow_by_suction_points(flows_numbers.data(), flows_numbers.size(), npsh3_values_numbers.data(), npsh3_values_numbers.size(), system_flows_numbers.data(), system_flows_numbers.size(), npsh_values_numbers.data(), npsh_values_numbers.size(), detail::number_in(unit<Length>("m"), margin), &flow_out, &npsh_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), flow_out), detail::quantity_of(unit<Length>("m"), npsh_out)};
}

/// Greatest speed at which a pump of a given suction specific speed keeps its NPSH3 within what there is: n = n_ss NPSH3^(3/4)/sqrt(Q/i); n in 1/min, Q in m3/s, NPSH3 in m. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read), solved for the speed.
inline RotationalSpeed greatest_speed_by_suction(Flow flow, Length npsh3, SpecificSpeed suction_specific_speed, Count eyes = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double speed_out;
    detail::check(cutwater_greatest_speed_by_suction(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<SpecificSpeed>(""), suction_specific_speed), detail::number_in(unit<Count>(""), eyes), &speed_out, &refusal), refusal);
    return detail::quantity_of(unit<RotationalSpeed>("1/min"), speed_out);
}

/// NPSH3 to be expected of a pump of a given suction specific speed: NPSH3 = (n sqrt(Q/i)/n_ss)^(4/3); n in 1/min, Q in m3/s, NPSH3 in m. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read), solved for NPSH3.
inline Length npsh3_expected(RotationalSpeed speed, Flow flow, SpecificSpeed suction_specific_speed, Count eyes = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double npsh3_out;
    detail::check(cutwater_npsh3_expected(detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<SpecificSpeed>(""), suction_specific_speed), detail::number_in(unit<Count>(""), eyes), &npsh3_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh3_out);
}

struct deaerator_decay_results {
    std::vector<Temperature> temperatures;  // temperatures in the vessel
    std::vector<AbsolutePressure> pressures;  // pressures in the vessel: for npsh_in_pressure_decay
    Time time_constant;  // time in which the difference falls to 37 %
};

/// Pressure of a vessel of boiling water over time once its heating steam fails and cold water still comes in: T = T_c + (T_0 - T_c) e^(-t/tau), tau = V/Q; T_0 and p on the saturation line. Source: heat balance of a well mixed vessel, one specific heat; saturation line: IAPWS-IF97, region 4. Articles of a power engineers' magazine on deaerators tell the event (excerpts read).
inline deaerator_decay_results deaerator_decay(const std::vector<Time>& times, AbsolutePressure first_pressure, Volume stored_volume, Flow feed_flow, Temperature feed_temperature)
{
    const std::vector<double> times_numbers = detail::numbers(unit<Time>("s"), times);
    cutwater_refusal refusal;
    std::vector<double> temperatures_out;
    std::size_t temperatures_count = 0;
    std::vector<double> pressures_out;
    std::size_t pressures_count = 0;
    double time_constant_out;
    cutwater_status status = cutwater_deaerator_decay(times_numbers.data(), times_numbers.size(), detail::number_in(unit<AbsolutePressure>("bara"), first_pressure), detail::number_in(unit<Volume>("m3"), stored_volume), detail::number_in(unit<Flow>("m3/h"), feed_flow), detail::number_in(unit<Temperature>("degC"), feed_temperature), temperatures_out.data(), temperatures_out.size(), &temperatures_count, pressures_out.data(), pressures_out.size(), &pressures_count, &time_constant_out, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        temperatures_out.resize(temperatures_count);
        pressures_out.resize(pressures_count);
        status = cutwater_deaerator_decay(times_numbers.data(), times_numbers.size(), detail::number_in(unit<AbsolutePressure>("bara"), first_pressure), detail::number_in(unit<Volume>("m3"), stored_volume), detail::number_in(unit<Flow>("m3/h"), feed_flow), detail::number_in(unit<Temperature>("degC"), feed_temperature), temperatures_out.data(), temperatures_out.size(), &temperatures_count, pressures_out.data(), pressures_out.size(), &pressures_count, &time_constant_out, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Temperature>("degC"), temperatures_out), detail::quantities(unit<AbsolutePressure>("bara"), pressures_out), detail::quantity_of(unit<Time>("s"), time_constant_out)};
}

struct npsh_in_pressure_decay_results {
    Length least_npsh;  // least net positive suction head available
    Time at_time;  // when it is least, for the first time
    Time line_time;  // time that the liquid takes from the vessel to the pump
};

/// Least NPSH available while a boiling vessel loses its pressure and the suction line still holds hot liquid: NPSHA(t) = z - h_f + [p(t) - p(t - tau)]/(rho g), tau = V/Q; p straight between the points. Source: the liquid at the pump has the vapour pressure of the vessel a line's time ago: articles of a power engineers' magazine on deaerators (excerpts read); definition of NPSH as in npsh_available.
inline npsh_in_pressure_decay_results npsh_in_pressure_decay(const std::vector<Time>& times, const std::vector<AbsolutePressure>& vessel_pressures, Length liquid_level, Length friction_head, Volume line_volume, Flow flow, Density density)
{
    const std::vector<double> times_numbers = detail::numbers(unit<Time>("s"), times);
    const std::vector<double> vessel_pressures_numbers = detail::numbers(unit<AbsolutePressure>("bara"), vessel_pressures);
    cutwater_refusal refusal;
    double least_npsh_out;
    double at_time_out;
    double line_time_out;
    detail::check(cutwater_npsh_in_pressure_decay(times_numbers.data(), times_numbers.size(), vessel_pressures_numbers.data(), vessel_pressures_numbers.size(), detail::number_in(unit<Length>("m"), liquid_level), detail::number_in(unit<Length>("m"), friction_head), detail::number_in(unit<Volume>("m3"), line_volume), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Density>("kg/m3"), density), &least_npsh_out, &at_time_out, &line_time_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("m"), least_npsh_out), detail::quantity_of(unit<Time>("s"), at_time_out), detail::quantity_of(unit<Time>("s"), line_time_out)};
}

struct npsh3_curve_at_speed_results {
    std::vector<Flow> new_flows;  // flows at the new speed
    std::vector<Length> new_npsh3_values;  // NPSH3 at the new speed
};

/// NPSH3 curve of a pump at another speed: Q' = Q n'/n; NPSH3' = NPSH3 (n'/n)^x; x not given: 1.3 for n' < n, 2 for n' > n. Source: the relations of flow_at_speed and npsh3_at_speed, point by point: see there.
inline npsh3_curve_at_speed_results npsh3_curve_at_speed(const std::vector<Flow>& flows, const std::vector<Length>& npsh3_values, RotationalSpeed speed, RotationalSpeed new_speed, Ratio exponent = unit<Ratio>("")(0))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> npsh3_values_numbers = detail::numbers(unit<Length>("m"), npsh3_values);
    cutwater_refusal refusal;
    std::vector<double> new_flows_out;
    std::size_t new_flows_count = 0;
    std::vector<double> new_npsh3_values_out;
    std::size_t new_npsh3_values_count = 0;
    cutwater_status status = cutwater_npsh3_curve_at_speed(flows_numbers.data(), flows_numbers.size(), npsh3_values_numbers.data(), npsh3_values_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), detail::number_in(unit<Ratio>(""), exponent), new_flows_out.data(), new_flows_out.size(), &new_flows_count, new_npsh3_values_out.data(), new_npsh3_values_out.size(), &new_npsh3_values_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        new_flows_out.resize(new_flows_count);
        new_npsh3_values_out.resize(new_npsh3_values_count);
        status = cutwater_npsh3_curve_at_speed(flows_numbers.data(), flows_numbers.size(), npsh3_values_numbers.data(), npsh3_values_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), detail::number_in(unit<Ratio>(""), exponent), new_flows_out.data(), new_flows_out.size(), &new_flows_count, new_npsh3_values_out.data(), new_npsh3_values_out.size(), &new_npsh3_values_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), new_flows_out), detail::quantities(unit<Length>("m"), new_npsh3_values_out)};
}

struct efficiency_curve_at_speed_results {
    std::vector<Flow> new_flows;  // flows at the new speed
    std::vector<Fraction> same_efficiencies;  // efficiencies there, unchanged
};

/// Efficiency curve of a pump at another speed, each point's efficiency taken as unchanged: Q' = Q n'/n; eta' = eta. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline efficiency_curve_at_speed_results efficiency_curve_at_speed(const std::vector<Flow>& flows, const std::vector<Fraction>& efficiencies, RotationalSpeed speed, RotationalSpeed new_speed)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    std::vector<double> new_flows_out;
    std::size_t new_flows_count = 0;
    std::vector<double> same_efficiencies_out;
    std::size_t same_efficiencies_count = 0;
    cutwater_status status = cutwater_efficiency_curve_at_speed(flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), new_flows_out.data(), new_flows_out.size(), &new_flows_count, same_efficiencies_out.data(), same_efficiencies_out.size(), &same_efficiencies_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        new_flows_out.resize(new_flows_count);
        same_efficiencies_out.resize(same_efficiencies_count);
        status = cutwater_efficiency_curve_at_speed(flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), new_flows_out.data(), new_flows_out.size(), &new_flows_count, same_efficiencies_out.data(), same_efficiencies_out.size(), &same_efficiencies_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), new_flows_out), detail::quantities(unit<Fraction>(""), same_efficiencies_out)};
}

struct npsh3_curve_at_trim_results {
    std::vector<Flow> same_flows;  // flows, unchanged
    std::vector<Length> npsh3_values;  // NPSH3 there with the trimmed impeller
};

/// NPSH3 curve with a trimmed impeller, between two diameters for which the pump maker shows it: NPSH3' = NPSH3_D + (NPSH3_d - NPSH3_D)(D - D')/(D - d) at each flow. Source: straight line between two tested diameters, point by point; common practice. That NPSH3 at one flow and speed hardly changes with a small trim, since the inlet stays as it is, and why it may rise: a trade newsletter of 2006 (excerpt read); a rise of 0.5 m between two diameters of one pump: a trade page (read).
inline npsh3_curve_at_trim_results npsh3_curve_at_trim(const std::vector<Flow>& flows, const std::vector<Length>& npsh3_at_greatest, Length greatest_diameter, const std::vector<Length>& npsh3_at_least, Length least_diameter, Length trimmed_diameter)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> npsh3_at_greatest_numbers = detail::numbers(unit<Length>("m"), npsh3_at_greatest);
    const std::vector<double> npsh3_at_least_numbers = detail::numbers(unit<Length>("m"), npsh3_at_least);
    cutwater_refusal refusal;
    std::vector<double> same_flows_out;
    std::size_t same_flows_count = 0;
    std::vector<double> npsh3_values_out;
    std::size_t npsh3_values_count = 0;
    cutwater_status status = cutwater_npsh3_curve_at_trim(flows_numbers.data(), flows_numbers.size(), npsh3_at_greatest_numbers.data(), npsh3_at_greatest_numbers.size(), detail::number_in(unit<Length>("mm"), greatest_diameter), npsh3_at_least_numbers.data(), npsh3_at_least_numbers.size(), detail::number_in(unit<Length>("mm"), least_diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), same_flows_out.data(), same_flows_out.size(), &same_flows_count, npsh3_values_out.data(), npsh3_values_out.size(), &npsh3_values_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        same_flows_out.resize(same_flows_count);
        npsh3_values_out.resize(npsh3_values_count);
        status = cutwater_npsh3_curve_at_trim(flows_numbers.data(), flows_numbers.size(), npsh3_at_greatest_numbers.data(), npsh3_at_greatest_numbers.size(), detail::number_in(unit<Length>("mm"), greatest_diameter), npsh3_at_least_numbers.data(), npsh3_at_least_numbers.size(), detail::number_in(unit<Length>("mm"), least_diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), same_flows_out.data(), same_flows_out.size(), &same_flows_count, npsh3_values_out.data(), npsh3_values_out.size(), &npsh3_values_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), same_flows_out), detail::quantities(unit<Length>("m"), npsh3_values_out)};
}

struct efficiency_curve_at_trim_results {
    std::vector<Flow> trimmed_flows;  // flows at the trimmed diameter
    std::vector<Fraction> trimmed_efficiencies;  // efficiencies there
    Ratio lost;  // what the best point lost
};

/// Efficiency curve of a pump with its impeller trimmed: Q' = Q (D'/D)^1 or ^2; eta' = eta (1 - d eta/eta_max), d eta = eps (1 - D'/D); eta_max: the highest point. Source: unchanged up to a cut of 3 % and a type number of 1: ISO 9906:2012 (as a trade encyclopaedia tells it, excerpt read); that it falls: Hydraulic Institute, Engineering Data Book (text of 2026, read); eps of 0.15 to 0.25 for volutes, 0.4 to 0.5 for diffusers: J. F. Guelich, Centrifugal Pumps (from memory of it).
inline efficiency_curve_at_trim_results efficiency_curve_at_trim(const std::vector<Flow>& flows, const std::vector<Fraction>& efficiencies, Length diameter, Length trimmed_diameter, Ratio efficiency_loss, const char* trim_law = "parabola")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    std::vector<double> trimmed_flows_out;
    std::size_t trimmed_flows_count = 0;
    std::vector<double> trimmed_efficiencies_out;
    std::size_t trimmed_efficiencies_count = 0;
    double lost_out;
    cutwater_status status = cutwater_efficiency_curve_at_trim(flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), detail::number_in(unit<Ratio>(""), efficiency_loss), trim_law, trimmed_flows_out.data(), trimmed_flows_out.size(), &trimmed_flows_count, trimmed_efficiencies_out.data(), trimmed_efficiencies_out.size(), &trimmed_efficiencies_count, &lost_out, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        trimmed_flows_out.resize(trimmed_flows_count);
        trimmed_efficiencies_out.resize(trimmed_efficiencies_count);
        status = cutwater_efficiency_curve_at_trim(flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), detail::number_in(unit<Ratio>(""), efficiency_loss), trim_law, trimmed_flows_out.data(), trimmed_flows_out.size(), &trimmed_flows_count, trimmed_efficiencies_out.data(), trimmed_efficiencies_out.size(), &trimmed_efficiencies_count, &lost_out, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), trimmed_flows_out), detail::quantities(unit<Fraction>(""), trimmed_efficiencies_out), detail::quantity_of(unit<Ratio>(""), lost_out)};
}

/// Share of free gas in a liquid at another pressure, the temperature the same: alpha' = alpha (p/p')/(alpha (p/p') + 1 - alpha). Source: Boyle's law; any textbook.
inline Fraction gas_share_at_pressure(Fraction gas_share, AbsolutePressure pressure, AbsolutePressure new_pressure)
{
    cutwater_refusal refusal;
    double new_share_out;
    detail::check(cutwater_gas_share_at_pressure(detail::number_in(unit<Fraction>(""), gas_share), detail::number_in(unit<AbsolutePressure>("bara"), pressure), detail::number_in(unit<AbsolutePressure>("bara"), new_pressure), &new_share_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), new_share_out);
}

/// NPSH3 with a little free gas at the inlet, from that on gas-free liquid: NPSH3' = NPSH3 (1 + c alpha/1 %). Source: US Nuclear Regulatory Commission, Regulatory Guide 1.82, air ingestion up to 2 % by volume, 0.5 (from memory of it; the text could not be read).
inline Length npsh3_with_gas(Length npsh3, Fraction gas_share, Ratio rise = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    double npsh3_with_gas_out;
    detail::check(cutwater_npsh3_with_gas(detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Fraction>(""), gas_share), detail::number_in(unit<Ratio>(""), rise), &npsh3_with_gas_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh3_with_gas_out);
}

struct head_with_gas_results {
    Length head_with_gas;  // head that it may fall to
    Ratio ratio;  // share of the performance that is left
};

/// Head that a pump may fall to with free gas at its inlet: a cautious guide: H' = H r; r straight between 1, 0.88 and 0.60 at 0, 2 and 4 % of gas. Source: a pump trader's guide: 2 % of air can cost 12 % of the performance, 4 % cost 40 %, and at 10 % the pump likely stalls (read); a care manual's 10 % of capacity lost at 2 % (as two trade pages quote it, read).
inline head_with_gas_results head_with_gas(Length head, Fraction gas_share)
{
    cutwater_refusal refusal;
    double head_with_gas_out;
    double ratio_out;
    detail::check(cutwater_head_with_gas(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Fraction>(""), gas_share), &head_with_gas_out, &ratio_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("m"), head_with_gas_out), detail::quantity_of(unit<Ratio>(""), ratio_out)};
}

struct starting_torque_curve_results {
    std::vector<Torque> torques;  // torques that the pump takes at those speeds
    std::vector<Flow> passing_flows;  // flows that pass at those speeds
};

/// Torque that a pump takes on its way up to speed, its discharge valve closed or open against the static head: T = max[r^2 P(x)/(2 pi n), T_b (1 - r/r_b)], Q = r x; x = 0 while r^2 H(0) <= H_s or with the valve closed, else H(x) = H_s/r^2 + k x^2 on the curves at full speed. Source: affinity laws; that the torque follows the line of no flow until the speed overcomes the static head and rises to the system's then: an engineers' forum on a handbook's figure (read); breakaway common practice.
inline starting_torque_curve_results starting_torque_curve(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Power>& powers, RotationalSpeed speed, const std::vector<Ratio>& speed_ratios, Length static_head, SystemResistance resistance, Torque breakaway_torque, const char* discharge_valve = "open", Ratio breakaway_end = unit<Ratio>("")(0.15))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    const std::vector<double> speed_ratios_numbers = detail::numbers(unit<Ratio>(""), speed_ratios);
    cutwater_refusal refusal;
    std::vector<double> torques_out;
    std::size_t torques_count = 0;
    std::vector<double> passing_flows_out;
    std::size_t passing_flows_count = 0;
    cutwater_status status = cutwater_starting_torque_curve(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), speed_ratios_numbers.data(), speed_ratios_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), detail::number_in(unit<Torque>("N m"), breakaway_torque), discharge_valve, detail::number_in(unit<Ratio>(""), breakaway_end), torques_out.data(), torques_out.size(), &torques_count, passing_flows_out.data(), passing_flows_out.size(), &passing_flows_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        torques_out.resize(torques_count);
        passing_flows_out.resize(passing_flows_count);
        status = cutwater_starting_torque_curve(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), speed_ratios_numbers.data(), speed_ratios_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), detail::number_in(unit<Torque>("N m"), breakaway_torque), discharge_valve, detail::number_in(unit<Ratio>(""), breakaway_end), torques_out.data(), torques_out.size(), &torques_count, passing_flows_out.data(), passing_flows_out.size(), &passing_flows_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Torque>("N m"), torques_out), detail::quantities(unit<Flow>("m3/h"), passing_flows_out)};
}

struct run_up_time_on_torques_results {
    Time time;  // time from the first speed to the last
    Torque least_spare;  // least torque left over for speeding up
};

/// Time that a motor needs to bring a pump up to speed, the load's torque given speed by speed: t = J Integral domega/(T_m - T_l), T_m - T_l straight between the points. Source: moment of momentum.
inline run_up_time_on_torques_results run_up_time_on_torques(const std::vector<RotationalSpeed>& speeds, const std::vector<Torque>& motor_torques, const std::vector<Torque>& load_torques, MomentOfInertia inertia)
{
    const std::vector<double> speeds_numbers = detail::numbers(unit<RotationalSpeed>("1/min"), speeds);
    const std::vector<double> motor_torques_numbers = detail::numbers(unit<Torque>("N m"), motor_torques);
    const std::vector<double> load_torques_numbers = detail::numbers(unit<Torque>("N m"), load_torques);
    cutwater_refusal refusal;
    double time_out;
    double least_spare_out;
    detail::check(cutwater_run_up_time_on_torques(speeds_numbers.data(), speeds_numbers.size(), motor_torques_numbers.data(), motor_torques_numbers.size(), load_torques_numbers.data(), load_torques_numbers.size(), detail::number_in(unit<MomentOfInertia>("kg m2"), inertia), &time_out, &least_spare_out, &refusal), refusal);
    return {detail::quantity_of(unit<Time>("s"), time_out), detail::quantity_of(unit<Torque>("N m"), least_spare_out)};
}

struct npsh3_from_test_results {
    Length npsh3;  // NPSH at which the head has fallen by that part
    Length head;  // head there
};

/// NPSH3 from a test in which the NPSH is lowered at one flow until the head falls: H(NPSH3) = (1 - d) H, between the readings as in curve_head. Source: ISO 9906:2012, NPSH test, 3 % of head of the first stage (from memory of it); interpolation as in curve_value.
inline npsh3_from_test_results npsh3_from_test(const std::vector<Length>& npsh_values, const std::vector<Length>& heads, Length full_head, Fraction drop = unit<Fraction>("")(0.03))
{
    const std::vector<double> npsh_values_numbers = detail::numbers(unit<Length>("m"), npsh_values);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double npsh3_out;
    double head_out;
    detail::check(cutwater_npsh3_from_test(npsh_values_numbers.data(), npsh_values_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("m"), full_head), detail::number_in(unit<Fraction>(""), drop), &npsh3_out, &head_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("m"), npsh3_out), detail::quantity_of(unit<Length>("m"), head_out)};
}

struct npsh3_verdict_results {
    const char* verdict;  // pass when even the most that it may be keeps the guarantee
    Length most;  // the most that NPSH3 may be
    Length reserve;  // what is left of the guarantee; negative: what is wanting
};

/// Whether a measured NPSH3 keeps the guaranteed one, its uncertainty counted against the pump: NPSH3 + e <= NPSH3_G. Source: ISO 9906:2012, annex J (informative; read in the identical GOST ISO 9906-2015): no plus tolerance on NPSH; measuring uncertainty and scatter together must not let NPSH3 exceed what was agreed.
inline npsh3_verdict_results npsh3_verdict(Length npsh3, Length uncertainty, Length guaranteed_npsh3)
{
    cutwater_refusal refusal;
    const char* verdict_out;
    double most_out;
    double reserve_out;
    detail::check(cutwater_npsh3_verdict(detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<Length>("m"), uncertainty), detail::number_in(unit<Length>("m"), guaranteed_npsh3), &verdict_out, &most_out, &reserve_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Length>("m"), most_out), detail::quantity_of(unit<Length>("m"), reserve_out)};
}

struct two_offers_results {
    const char* better;  // the offer that costs less over its life
    Money cost_1;  // present value of the first offer's costs
    Money cost_2;  // present value of the second offer's costs
    Money difference;  // what the second costs more; negative: less
};

/// Two offers compared by what they cost over their lives: LCC = C + F_e c E + F U; F = q + ... + q^n, q = (1 + p)/(1 + i); F_e the same with q (1 + p_e). Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs: A Guide to LCC Analysis for Pumping Systems, 2001 (from memory of it; the four results of its example come out to the unit).
inline two_offers_results two_offers(Money purchase_1, Energy energy_1, Money upkeep_1, Money purchase_2, Energy energy_2, Money upkeep_2, Money price_per_kWh, Fraction interest_rate, Count years, Fraction inflation_rate = unit<Fraction>("")(0), Fraction energy_price_rise = unit<Fraction>("")(0))
{
    cutwater_refusal refusal;
    const char* better_out;
    double cost_1_out;
    double cost_2_out;
    double difference_out;
    detail::check(cutwater_two_offers(detail::number_in(unit<Money>(""), purchase_1), detail::number_in(unit<Energy>("kWh"), energy_1), detail::number_in(unit<Money>(""), upkeep_1), detail::number_in(unit<Money>(""), purchase_2), detail::number_in(unit<Energy>("kWh"), energy_2), detail::number_in(unit<Money>(""), upkeep_2), detail::number_in(unit<Money>(""), price_per_kWh), detail::number_in(unit<Fraction>(""), interest_rate), detail::number_in(unit<Count>(""), years), detail::number_in(unit<Fraction>(""), inflation_rate), detail::number_in(unit<Fraction>(""), energy_price_rise), &better_out, &cost_1_out, &cost_2_out, &difference_out, &refusal), refusal);
    return {better_out, detail::quantity_of(unit<Money>(""), cost_1_out), detail::quantity_of(unit<Money>(""), cost_2_out), detail::quantity_of(unit<Money>(""), difference_out)};
}

}  // namespace cutwater

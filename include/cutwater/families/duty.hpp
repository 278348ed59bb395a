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

struct npsh_in_pressure_decay_results {
    Length least_npsh;  // least net positive suction head available
    Time at_time;  // when it is least
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

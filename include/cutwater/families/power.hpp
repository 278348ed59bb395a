// generated from the catalogue by cutwater-generate; do not edit.
// Power, motor, energy.
#pragma once

#include <cutwater/families/power.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Power that a pump gives to the liquid (pump power output): P_u = rho g Q H. Source: ISO 17769-1:2012, pump power output (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.3 (excerpt read).
inline Power hydraulic_power(Flow flow, Length head, Density density)
{
    cutwater_refusal refusal;
    double hydraulic_power_out;
    detail::check(cutwater_hydraulic_power(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), &hydraulic_power_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), hydraulic_power_out);
}

/// Power that a pump takes at its shaft: P = rho g Q H/eta. Source: ISO 17769-1:2012, pump power input (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.4 (excerpt read).
inline Power pump_power_input(Flow flow, Length head, Density density, Fraction efficiency)
{
    cutwater_refusal refusal;
    double power_input_out;
    detail::check(cutwater_pump_power_input(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), efficiency), &power_input_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), power_input_out);
}

/// Efficiency of a pump from its flow, head and shaft power: eta = rho g Q H/P. Source: ISO 17769-1:2012, pump efficiency (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.5 (excerpt read).
inline Fraction pump_efficiency(Flow flow, Length head, Density density, Power power_input)
{
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_pump_efficiency(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Power>("kW"), power_input), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

/// Torque of a shaft from its power and speed: T = P/(2 pi n). Source: mechanics; common practice.
inline Torque shaft_torque(Power power_input, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double torque_out;
    detail::check(cutwater_shaft_torque(detail::number_in(unit<Power>("kW"), power_input), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &torque_out, &refusal), refusal);
    return detail::quantity_of(unit<Torque>("N m"), torque_out);
}

/// Least ratio of a motor's rating to the pump's power input: ISO 13709: 1.25 for P_N < 22 kW; 1.15 for P_N <= 55 kW; 1.10 above. process: 1.20 for P_N <= 7.5 kW; 1.15 for P_N <= 40 kW; 1.10 above. Source: "ISO 13709": ISO 13709:2009, 7.1.5, driver margin (from memory of it); "process": common practice for pumps to ISO 5199, ISO 9905 and ISO 9908, whose own curve could not be read.
inline Ratio motor_power_margin(Power motor_rating, const char* rule = "ISO 13709")
{
    cutwater_refusal refusal;
    double margin_out;
    detail::check(cutwater_motor_power_margin(detail::number_in(unit<Power>("kW"), motor_rating), rule, &margin_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), margin_out);
}

struct motor_rating_needed_results {
    Power motor_rating;  // rated output of the motor
    Ratio margin_obtained;  // that rating over the pump power input
};

/// Smallest listed motor rating that leaves the margin over the pump's power input: P_N = the least rating of the series with P_N >= m(P_N) P, m the margin for that rating. Source: IEC 60072-1:1991, table 7, both series (from memory of it). Margin: "ISO 13709": ISO 13709:2009, 7.1.5 (from memory of it); "process" and "trade": common practice.
inline motor_rating_needed_results motor_rating_needed(Power power_input, const char* rule = "ISO 13709", const char* series = "trade")
{
    cutwater_refusal refusal;
    double motor_rating_out;
    double margin_obtained_out;
    detail::check(cutwater_motor_rating_needed(detail::number_in(unit<Power>("kW"), power_input), rule, series, &motor_rating_out, &margin_obtained_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), motor_rating_out), detail::quantity_of(unit<Ratio>(""), margin_obtained_out)};
}

/// Nominal full-load efficiency that a motor of an efficiency class has at least: 50 Hz, up to 200 kW: eta_M = A x^3 + B x^2 + C x + D per cent, x = log10(P_N/kW), rounded to a tenth; IE1, above 200 kW and 60 Hz: tables; 60 Hz between ratings: the nearer rating; IE5: 0.8 of the losses of IE4, eta = 1/(1 + 0.8 (1/eta_IE4 - 1)), rounded to a tenth. Source: IEC 60034-30-1:2014; its 50 Hz coefficients for IE2 to IE4 and the rules between ratings: Regulation (EU) 2019/1781, Annex I, read as retained in UK SI 2021/745, Schedule 16; IE1, above 200 kW, and 60 Hz tables (from memory of it, 129 of the IE2 and IE3 values at 60 Hz checked against 10 CFR 431.25, 10 CFR 431.446 and 42 U.S.C. 6313; IE2 at 0.75 kW, 1.1 kW 8 poles, 150 kW 8 poles and 185 kW 4 and 8 poles differ from the North American table and stay unconfirmed). IE5: a fifth less loss than IE4, named as its goal (secondary); IEC TS 60034-30-2:2016 has a table of its own, not read. The edition of 2025 was not read.
inline Fraction motor_efficiency(Power rated_power, Count poles, Frequency frequency = unit<Frequency>("Hz")(50), const char* efficiency_class = "IE3")
{
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_motor_efficiency(detail::number_in(unit<Power>("kW"), rated_power), detail::number_in(unit<Count>(""), poles), detail::number_in(unit<Frequency>("Hz"), frequency), efficiency_class, &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

/// Least efficiency class that Regulation (EU) 2019/1781 asks of a motor placed on the market: from 1 July 2021: IE2 below 0.75 kW, IE3 from 0.75 kW, but for Ex eb and single-phase; from 1 July 2023: IE2 for these, IE4 for three-phase motors of 75 to 200 kW with 2, 4 or 6 poles that are neither brake nor explosion-protected motors. Source: Commission Regulation (EU) 2019/1781, Annex I, as amended by (EU) 2021/341: its steps as told by the IEA's Electric Motor Systems Annex and by trade notices (read); its scope, article 2 (excerpt read).
inline const char* motor_class_required_eu(Power rated_power, Count poles, const char* kind = "three-phase", const char* in_force_from = "1 July 2023")
{
    cutwater_refusal refusal;
    const char* efficiency_class_out;
    detail::check(cutwater_motor_class_required_eu(detail::number_in(unit<Power>("kW"), rated_power), detail::number_in(unit<Count>(""), poles), kind, in_force_from, &efficiency_class_out, &refusal), refusal);
    return efficiency_class_out;
}

/// Efficiency of a motor at part load and full speed, from that at its rated output: eta_M = x/(x + (1/eta_N - 1)(c + (1 - c) x^2)). Source: motor losses a constant part and a part with the square of the load: IEC TS 60034-31, efficiency at part load (from memory of it); best efficiency near 75 % load: US Department of Energy, Determining Electric Motor Load and Efficiency (from memory of it), common practice.
inline Fraction motor_efficiency_at_load(Fraction rated_efficiency, Fraction load, Fraction constant_loss_share = unit<Fraction>("")(0.36))
{
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_motor_efficiency_at_load(detail::number_in(unit<Fraction>(""), rated_efficiency), detail::number_in(unit<Fraction>(""), load), detail::number_in(unit<Fraction>(""), constant_loss_share), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

/// Speed of the turning field of a motor: n_s = 2 f/(2p), 120 f/(2p) in 1/min. Source: IEC 60034-1, synchronous speed (from memory of it).
inline RotationalSpeed synchronous_speed(Frequency frequency, Count poles)
{
    cutwater_refusal refusal;
    double speed_out;
    detail::check(cutwater_synchronous_speed(detail::number_in(unit<Frequency>("Hz"), frequency), detail::number_in(unit<Count>(""), poles), &speed_out, &refusal), refusal);
    return detail::quantity_of(unit<RotationalSpeed>("1/min"), speed_out);
}

/// Speed of an induction motor with its slip: n = (1 - s) 2 f/(2p). Source: IEC 60034-1, slip (from memory of it).
inline RotationalSpeed motor_speed(Frequency frequency, Count poles, Fraction slip)
{
    cutwater_refusal refusal;
    double speed_out;
    detail::check(cutwater_motor_speed(detail::number_in(unit<Frequency>("Hz"), frequency), detail::number_in(unit<Count>(""), poles), detail::number_in(unit<Fraction>(""), slip), &speed_out, &refusal), refusal);
    return detail::quantity_of(unit<RotationalSpeed>("1/min"), speed_out);
}

/// Line current of a three-phase motor: I = P/(sqrt(3) U eta_M cos phi). Source: three-phase power; common practice.
inline ElectricCurrent motor_current(Power shaft_power, Voltage voltage, Fraction motor_efficiency, Fraction power_factor)
{
    cutwater_refusal refusal;
    double current_out;
    detail::check(cutwater_motor_current(detail::number_in(unit<Power>("kW"), shaft_power), detail::number_in(unit<Voltage>("V"), voltage), detail::number_in(unit<Fraction>(""), motor_efficiency), detail::number_in(unit<Fraction>(""), power_factor), &current_out, &refusal), refusal);
    return detail::quantity_of(unit<ElectricCurrent>("A"), current_out);
}

/// Power drawn from the mains for a power at the shaft: P_el = P/(eta_M eta_D). Source: definition of efficiency; IEC 60034-1 (from memory of it).
inline Power electrical_power(Power shaft_power, Fraction motor_efficiency, Fraction drive_efficiency = unit<Fraction>("")(1))
{
    cutwater_refusal refusal;
    double electrical_power_out;
    detail::check(cutwater_electrical_power(detail::number_in(unit<Power>("kW"), shaft_power), detail::number_in(unit<Fraction>(""), motor_efficiency), detail::number_in(unit<Fraction>(""), drive_efficiency), &electrical_power_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), electrical_power_out);
}

/// Efficiency of a frequency converter at part load: a representative value: table of efficiency by rating and load, straight lines between its points. Source: US Department of Energy, Motor Systems Tip Sheet 11, Adjustable Speed Drive Part-Load Efficiency, table 1, pulse-width modulated drives (from memory of it; python3-fluids 1.0.22 holds the same values).
inline Fraction drive_efficiency(Power rated_power, Fraction load)
{
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_drive_efficiency(detail::number_in(unit<Power>("kW"), rated_power), detail::number_in(unit<Fraction>(""), load), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

/// Efficiency from wire to water, of pump, motor and drive together: eta = eta_P eta_M eta_D. Source: ISO 17769-1:2012, overall efficiency (from memory of it).
inline Fraction overall_efficiency(Fraction pump_efficiency, Fraction motor_efficiency, Fraction drive_efficiency = unit<Fraction>("")(1))
{
    cutwater_refusal refusal;
    double overall_efficiency_out;
    detail::check(cutwater_overall_efficiency(detail::number_in(unit<Fraction>(""), pump_efficiency), detail::number_in(unit<Fraction>(""), motor_efficiency), detail::number_in(unit<Fraction>(""), drive_efficiency), &overall_efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), overall_efficiency_out);
}

/// Efficiency from wire to water as measured: flow and head against power from the mains: eta = rho g Q H/P_el. Source: ISO 17769-1:2012, overall efficiency (from memory of it).
inline Fraction wire_to_water_efficiency(Flow flow, Length head, Density density, Power electrical_power)
{
    cutwater_refusal refusal;
    double overall_efficiency_out;
    detail::check(cutwater_wire_to_water_efficiency(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Power>("kW"), electrical_power), &overall_efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), overall_efficiency_out);
}

/// Energy from the mains for each cubic metre pumped: e = rho g H/eta. Source: ISO 17769-1:2012, pump power output over flow (from memory of it); common practice.
inline EnergyPerVolume specific_energy(Length head, Density density, Fraction overall_efficiency)
{
    cutwater_refusal refusal;
    double specific_energy_out;
    detail::check(cutwater_specific_energy(detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), overall_efficiency), &specific_energy_out, &refusal), refusal);
    return detail::quantity_of(unit<EnergyPerVolume>("kWh/m3"), specific_energy_out);
}

/// Energy for each cubic metre pumped, from power and flow as measured: e = P_el/Q. Source: definition; common practice.
inline EnergyPerVolume specific_energy_from_power(Power electrical_power, Flow flow)
{
    cutwater_refusal refusal;
    double specific_energy_out;
    detail::check(cutwater_specific_energy_from_power(detail::number_in(unit<Power>("kW"), electrical_power), detail::number_in(unit<Flow>("m3/h"), flow), &specific_energy_out, &refusal), refusal);
    return detail::quantity_of(unit<EnergyPerVolume>("kWh/m3"), specific_energy_out);
}

struct annual_energy_results {
    Energy energy;  // energy from the mains in the year
    Volume volume;  // volume pumped in the year
    EnergyPerVolume specific_energy;  // energy for each volume, mean of the year
};

/// Energy that a year's duty profile takes from the mains: E = sum(rho g Q_i H_i/eta_i t_i); V = sum(Q_i t_i). Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs, 2001, energy costs (from memory of it).
inline annual_energy_results annual_energy(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& overall_efficiencies, const std::vector<Time>& hours, Density density = unit<Density>("kg/m3")(998.2))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> overall_efficiencies_numbers = detail::numbers(unit<Fraction>(""), overall_efficiencies);
    const std::vector<double> hours_numbers = detail::numbers(unit<Time>("h"), hours);
    cutwater_refusal refusal;
    double energy_out;
    double volume_out;
    double specific_energy_out;
    detail::check(cutwater_annual_energy(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), overall_efficiencies_numbers.data(), overall_efficiencies_numbers.size(), hours_numbers.data(), hours_numbers.size(), detail::number_in(unit<Density>("kg/m3"), density), &energy_out, &volume_out, &specific_energy_out, &refusal), refusal);
    return {detail::quantity_of(unit<Energy>("kWh"), energy_out), detail::quantity_of(unit<Volume>("m3"), volume_out), detail::quantity_of(unit<EnergyPerVolume>("kWh/m3"), specific_energy_out)};
}

/// Energy of a year from the power drawn at each point of the duty profile: E = sum(P_i t_i). Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs, 2001, energy costs (from memory of it).
inline Energy annual_energy_from_power(const std::vector<Power>& electrical_powers, const std::vector<Time>& hours)
{
    const std::vector<double> electrical_powers_numbers = detail::numbers(unit<Power>("kW"), electrical_powers);
    const std::vector<double> hours_numbers = detail::numbers(unit<Time>("h"), hours);
    cutwater_refusal refusal;
    double energy_out;
    detail::check(cutwater_annual_energy_from_power(electrical_powers_numbers.data(), electrical_powers_numbers.size(), hours_numbers.data(), hours_numbers.size(), &energy_out, &refusal), refusal);
    return detail::quantity_of(unit<Energy>("kWh"), energy_out);
}

/// Cost of a year's energy: C = c E. Source: definition; common practice.
inline Money annual_energy_cost(Energy energy, Money price_per_kWh)
{
    cutwater_refusal refusal;
    double cost_out;
    detail::check(cutwater_annual_energy_cost(detail::number_in(unit<Energy>("kWh"), energy), detail::number_in(unit<Money>(""), price_per_kWh), &cost_out, &refusal), refusal);
    return detail::quantity_of(unit<Money>(""), cost_out);
}

/// Carbon dioxide that goes with an amount of energy: m = f E. Source: definition; common practice.
inline Mass carbon_emission(Energy energy, MassPerEnergy emission_factor)
{
    cutwater_refusal refusal;
    double emission_out;
    detail::check(cutwater_carbon_emission(detail::number_in(unit<Energy>("kWh"), energy), detail::number_in(unit<MassPerEnergy>("kg/kWh"), emission_factor), &emission_out, &refusal), refusal);
    return detail::quantity_of(unit<Mass>("kg"), emission_out);
}

/// Present value of a cost that returns every year, for one unit of it at today's prices: F = q + q^2 + ... + q^n, q = (1 + p)/(1 + i). Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs: A Guide to LCC Analysis for Pumping Systems, 2001 (from memory of it; the four results of its example come out to the unit).
inline Ratio present_value_factor(Fraction interest_rate, Count years, Fraction inflation_rate = unit<Fraction>("")(0))
{
    cutwater_refusal refusal;
    double present_value_factor_out;
    detail::check(cutwater_present_value_factor(detail::number_in(unit<Fraction>(""), interest_rate), detail::number_in(unit<Count>(""), years), detail::number_in(unit<Fraction>(""), inflation_rate), &present_value_factor_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), present_value_factor_out);
}

struct life_cycle_cost_results {
    Money life_cycle_cost;  // present value of all costs
    Money energy_present_value;  // of which energy
};

/// Present value of all that a pump costs over its life: LCC = C_ic + C_in + F_e C_e + F (C_o + C_m + C_s + C_env) + q^n C_d; F = q + ... + q^n, q = (1 + p)/(1 + i); F_e the same with q (1 + p_e). Source: Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs: A Guide to LCC Analysis for Pumping Systems, 2001 (from memory of it; the four results of its example come out to the unit).
inline life_cycle_cost_results life_cycle_cost(Money purchase, Money installation, Money energy, Money operation, Money maintenance, Money downtime, Money environment, Money disposal, Fraction interest_rate, Count years, Fraction inflation_rate = unit<Fraction>("")(0), Fraction energy_price_rise = unit<Fraction>("")(0))
{
    cutwater_refusal refusal;
    double life_cycle_cost_out;
    double energy_present_value_out;
    detail::check(cutwater_life_cycle_cost(detail::number_in(unit<Money>(""), purchase), detail::number_in(unit<Money>(""), installation), detail::number_in(unit<Money>(""), energy), detail::number_in(unit<Money>(""), operation), detail::number_in(unit<Money>(""), maintenance), detail::number_in(unit<Money>(""), downtime), detail::number_in(unit<Money>(""), environment), detail::number_in(unit<Money>(""), disposal), detail::number_in(unit<Fraction>(""), interest_rate), detail::number_in(unit<Count>(""), years), detail::number_in(unit<Fraction>(""), inflation_rate), detail::number_in(unit<Fraction>(""), energy_price_rise), &life_cycle_cost_out, &energy_present_value_out, &refusal), refusal);
    return {detail::quantity_of(unit<Money>(""), life_cycle_cost_out), detail::quantity_of(unit<Money>(""), energy_present_value_out)};
}

/// Years until the savings of every year have repaid an outlay: n = C/S for i = 0; n = -ln(1 - i C/S)/ln(1 + i). Source: present value of equal payments, solved for their number; common practice.
inline Ratio payback_time(Money outlay, Money yearly_saving, Fraction interest_rate = unit<Fraction>("")(0))
{
    cutwater_refusal refusal;
    double payback_time_out;
    detail::check(cutwater_payback_time(detail::number_in(unit<Money>(""), outlay), detail::number_in(unit<Money>(""), yearly_saving), detail::number_in(unit<Fraction>(""), interest_rate), &payback_time_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), payback_time_out);
}

struct throttling_power_loss_results {
    Power power_loss;  // shaft power that goes into the valve
    Length valve_head;  // head lost in the valve
};

/// Shaft power spent on the head that a throttle valve destroys: P_v = rho g Q h_v/eta(Q), h_v = H(Q) - (H_s + k Q^2). Source: energy balance at the duty of the pump's and the system's curves; Hydraulic Institute, Europump and US Department of Energy, Variable Speed Pumping, 2004 (from memory of it).
inline throttling_power_loss_results throttling_power_loss(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, Length static_head, SystemResistance resistance, Flow flow, Density density = unit<Density>("kg/m3")(998.2))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    double power_loss_out;
    double valve_head_out;
    detail::check(cutwater_throttling_power_loss(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Density>("kg/m3"), density), &power_loss_out, &valve_head_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), power_loss_out), detail::quantity_of(unit<Length>("m"), valve_head_out)};
}

struct speed_control_saving_results {
    Power saving;  // power saved; negative when the converter loses more than the speed gains
    RotationalSpeed reduced_speed;  // speed that gives the duty with the valve open
    Power throttled_power;  // shaft power at full speed, throttled
    Power controlled_power;  // shaft power at the reduced speed, over the converter's efficiency
};

/// Power that speed control saves at a flow against throttling: dP = rho g Q H(Q)/eta(Q) - rho g Q H_sys/(eta(Q_x) eta_D); H_sys = H_s + k Q^2; n' = n Q/Q_x, where H = H_sys (Q_x/Q)^2 on the curve. Source: energy balance at the duty of the pump's and the system's curves; Hydraulic Institute, Europump and US Department of Energy, Variable Speed Pumping, 2004 (from memory of it).
inline speed_control_saving_results speed_control_saving(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, RotationalSpeed speed, Length static_head, SystemResistance resistance, Flow flow, Density density = unit<Density>("kg/m3")(998.2), Fraction drive_efficiency = unit<Fraction>("")(0.96))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    double saving_out;
    double reduced_speed_out;
    double throttled_power_out;
    double controlled_power_out;
    detail::check(cutwater_speed_control_saving(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), drive_efficiency), &saving_out, &reduced_speed_out, &throttled_power_out, &controlled_power_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), saving_out), detail::quantity_of(unit<RotationalSpeed>("1/min"), reduced_speed_out), detail::quantity_of(unit<Power>("kW"), throttled_power_out), detail::quantity_of(unit<Power>("kW"), controlled_power_out)};
}

struct duty_profile_energy_results {
    Energy energy;  // energy from the mains in the year
    Volume volume;  // volume pumped in the year
    EnergyPerVolume specific_energy;  // energy for each volume, mean of the year
    Time running_time;  // hours that the pump runs in the year
    Ratio least_speed_ratio;  // lowest speed over full speed; 1 without speed control
};

/// Energy of a year's duty profile, the pump throttled, speed-controlled or switched on and off: E = sum(P_el,j t_run,j). Throttling: P = rho g Q_j H(Q_j)/eta(Q_j). Speed: P = rho g Q_j H_sys/eta(Q_x), H_sys = H_s + k Q_j^2 = H(Q_x) (Q_j/Q_x)^2, n'/n = Q_j/Q_x. On-off: P at the duty Q_d for t_run,j = t_j Q_j/Q_d. Motor: P_M = P + P_N (1/eta_N - 1)(c + (1 - c) x^2), x = (P/P_N)/(n'/n). P_el = P_M; with a converter P_el = P_M + (P_N/eta_N)(1/eta_D - 1) l(y)/l(1), y = P_M eta_N/P_N (0.016 at least), l(y) = y (1/eta_T(y) - 1), eta_T from drive_efficiency at P_N. Source: energy balance at the meeting of pump and system curve, as for speed_control_saving; motor losses a constant part and a part with the square of the load: IEC TS 60034-31, efficiency at part load (from memory of it); best efficiency near 75 % load: US Department of Energy, Determining Electric Motor Load and Efficiency (from memory of it), common practice; converter losses: see drive_efficiency; on-off: volume balance, common practice.
inline duty_profile_energy_results duty_profile_energy(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, Length static_head, SystemResistance resistance, const std::vector<Flow>& profile_flows, const std::vector<Time>& hours, const char* control, Power motor_rating, Fraction motor_efficiency, Density density = unit<Density>("kg/m3")(998.2), Fraction drive_efficiency = unit<Fraction>("")(0.96), Fraction constant_loss_share = unit<Fraction>("")(0.36))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    const std::vector<double> profile_flows_numbers = detail::numbers(unit<Flow>("m3/h"), profile_flows);
    const std::vector<double> hours_numbers = detail::numbers(unit<Time>("h"), hours);
    cutwater_refusal refusal;
    double energy_out;
    double volume_out;
    double specific_energy_out;
    double running_time_out;
    double least_speed_ratio_out;
    detail::check(cutwater_duty_profile_energy(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), profile_flows_numbers.data(), profile_flows_numbers.size(), hours_numbers.data(), hours_numbers.size(), control, detail::number_in(unit<Power>("kW"), motor_rating), detail::number_in(unit<Fraction>(""), motor_efficiency), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), drive_efficiency), detail::number_in(unit<Fraction>(""), constant_loss_share), &energy_out, &volume_out, &specific_energy_out, &running_time_out, &least_speed_ratio_out, &refusal), refusal);
    return {detail::quantity_of(unit<Energy>("kWh"), energy_out), detail::quantity_of(unit<Volume>("m3"), volume_out), detail::quantity_of(unit<EnergyPerVolume>("kWh/m3"), specific_energy_out), detail::quantity_of(unit<Time>("h"), running_time_out), detail::quantity_of(unit<Ratio>(""), least_speed_ratio_out)};
}

/// Pump power at another flow by the cube law: speed control on a system that is all friction, refused where there is static head: P' = P (Q'/Q)^3, where H_s = 0, so that Q'/Q = n'/n. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline Power cube_law_power(Power power, Flow flow, Flow new_flow, Length static_head)
{
    cutwater_refusal refusal;
    double new_power_out;
    detail::check(cutwater_cube_law_power(detail::number_in(unit<Power>("kW"), power), detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Flow>("m3/h"), new_flow), detail::number_in(unit<Length>("m"), static_head), &new_power_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), new_power_out);
}

}  // namespace cutwater

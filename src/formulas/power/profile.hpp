// A year's energy of one pump on one system over a duty profile, by the way its flow is controlled. Every point is the
// meeting of the pump's curve with the system's, static head and all; the losses of motor and converter at part load go
// with it.
#pragma once

#include "formulas/power/energy.hpp"
#include "formulas/power/motor.hpp"
#include "formulas/power/saving.hpp"

#include "formulas/curves/duty.hpp"

#include <string_view>
#include <tuple>

namespace cutwater::formulas {

enum class FlowControl { throttling, speed, on_off };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<3> cutwater::words_of<cutwater::formulas::FlowControl>{"throttling", "speed",
                                                                                        "on-off"};

namespace cutwater::formulas {

namespace profile {

/// Shaft power, and the speed over the full speed at which it is taken.
struct Running {
    Power shaft_power;
    double speed_ratio = 1;
    double share_of_time = 1;
};

/// The curve readers blame their own "flow": here it is one of the profile's.
inline NoValue of_profile(NoValue why)
{
    if (std::string_view(why.argument) == "flow") why.argument = "profile_flows";
    return why;
}

inline Outcome<Running> at_full_speed(const Series<Flow>& flows, const Series<Head>& heads,
                                      const Series<Fraction>& efficiencies, Head static_head,
                                      SystemResistance resistance, Flow flow, Density density)
{
    const auto full = saving::throttled(flows, heads, efficiencies, static_head, resistance, flow);
    if (!full) return of_profile(full.why());
    return Running{.shaft_power = hydraulic_power(flow, full->pump_head, density) / full->efficiency};
}

inline Outcome<Running> at_reduced_speed(const Series<Flow>& flows, const Series<Head>& heads,
                                         const Series<Fraction>& efficiencies, Head static_head,
                                         SystemResistance resistance, Flow flow, Density density)
{
    const auto slow = saving::slowed(flows, heads, efficiencies, static_head, resistance, flow);
    if (!slow) return of_profile(slow.why());
    return Running{.shaft_power = hydraulic_power(flow, slow->head, density) / slow->efficiency,
                   .speed_ratio = slow->speed_ratio};
}

/// The unthrottled duty that an on-off pump always runs at.
struct Duty {
    Flow flow{};
    Power shaft_power{};
};

inline Outcome<Duty> unthrottled(const Series<Flow>& flows, const Series<Head>& heads,
                                 const Series<Fraction>& efficiencies, Head static_head, SystemResistance resistance,
                                 Density density)
{
    const auto flow = curves::duty(flows, heads, static_head, resistance);
    if (!flow) return flow.why();
    const auto efficiency = saving::efficiency_at(flows, efficiencies, *flow);
    if (!efficiency) return efficiency.why();
    const Head head = curves::read_within(flows, heads, *flow);
    return Duty{*flow, hydraulic_power(*flow, head, density) / *efficiency};
}

inline Outcome<Running> on_and_off(const Duty& duty, Flow flow)
{
    const double share = Ratio(flow / duty.flow).value();
    if (share > 1 + saving::rounding)
        return NoValue{.status = CUTWATER_NO_ANSWER,
                       .argument = "profile_flows",
                       .sentence = "{0} is beyond the duty: running without a stop the pump gives {1}",
                       .numbers = {number_in(flow, units::m3h), number_in(duty.flow, units::m3h)}};
    return Running{.shaft_power = duty.shaft_power, .share_of_time = std::min(share, 1.0)};
}

struct Machine {
    Power rating;
    double motor_efficiency;
    double constant_share;
    double drive_efficiency;

    /// Power that the motor takes: of its losses at full load one part is constant, the rest goes with the torque
    /// squared.
    Power motor_input(const Running& running) const
    {
        const double torque = Ratio(running.shaft_power / rating).value() / running.speed_ratio;
        return running.shaft_power + rating * motor::losses(motor_efficiency, constant_share, torque);
    }

    /// Power that the converter takes: its losses fall with the load as in the table of drive_efficiency, scaled to its
    /// efficiency at full load. Full load is what the motor takes at its rating.
    Power drive_input(Power output) const
    {
        const Power full_output = rating / motor_efficiency;
        const double load = std::max(Ratio(output / full_output).value(), drive::loads[0]);
        const double in_table = load * (1 / drive_efficiency_of(load) - 1) / (1 / drive_efficiency_of(1) - 1);
        return output + full_output * ((1 / drive_efficiency - 1) * in_table);
    }

private:
    double drive_efficiency_of(double load) const { return formulas::drive_efficiency(rating, Fraction{load}).value; }
};

inline bool pumps_something(const Series<Flow>& flows, const Series<Time>& hours)
{
    bool any_volume = false;
    for (std::size_t i = 0; i < flows.size(); ++i)
        any_volume = any_volume || (flows[i].value() > 0 && hours[i].value() > 0);
    return any_volume;
}

}  // namespace profile

inline Outcome<std::tuple<Energy, Volume, EnergyPerVolume, Time, Ratio>> duty_profile_energy(
    Series<Flow> flows, Series<Head> heads, Series<Fraction> efficiencies, Head static_head,
    SystemResistance resistance, Series<Flow> profile_flows, Series<Time> hours, FlowControl control,
    Power motor_rating, Fraction motor_efficiency, Density density, Fraction drive_efficiency,
    Fraction constant_loss_share, Steps steps)
{
    const profile::Machine machine{motor_rating, motor_efficiency.value, constant_loss_share.value,
                                   drive_efficiency.value};
    profile::Duty duty;
    if (control == FlowControl::on_off) {
        const auto found = profile::unthrottled(flows, heads, efficiencies, static_head, resistance, density);
        if (!found) return found.why();
        duty = *found;
        steps("Q_d", "unthrottled duty flow", duty.flow, units::m3h);
    }
    Energy energy{};
    Volume volume{};
    Time running_time{};
    double least_ratio = 1;
    for (std::size_t i = 0; i < profile_flows.size(); ++i) {
        const Flow flow = profile_flows[i];
        if (!(flow.value() > 0)) continue;  // the pump stands still
        const auto running = control == FlowControl::on_off ? profile::on_and_off(duty, flow)
                             : control == FlowControl::speed
                                 ? profile::at_reduced_speed(flows, heads, efficiencies, static_head, resistance, flow,
                                                             density)
                                 : profile::at_full_speed(flows, heads, efficiencies, static_head, resistance, flow,
                                                          density);
        if (!running) return running.why();
        if (running->shaft_power > motor_rating * running->speed_ratio * (1 + saving::rounding))
            return NoValue{.status = CUTWATER_NO_ANSWER,
                           .argument = "motor_rating",
                           .sentence = "at {0} the pump takes {1} and the motor can give {2} at that speed",
                           .numbers = {number_in(flow, units::m3h), number_in(running->shaft_power, units::kW),
                                       number_in(Power(motor_rating * running->speed_ratio), units::kW)}};
        const Power motor_input = machine.motor_input(*running);
        const Power mains = control == FlowControl::speed ? machine.drive_input(motor_input) : motor_input;
        steps("Q_j", "flow of the profile", flow, units::m3h);
        steps("P_j", "shaft power while the pump runs", running->shaft_power, units::kW);
        steps("P_el,j", "power from the mains while the pump runs", mains, units::kW);
        const Time time = hours[i] * running->share_of_time;
        energy += mains * time;
        volume += flow * hours[i];
        running_time += time;
        if (time.value() > 0) least_ratio = std::min(least_ratio, running->speed_ratio);
    }
    return std::tuple(energy, volume, EnergyPerVolume(bu::quantity<EnergyPerVolumeUnit>(energy / volume)), running_time,
                      Ratio(least_ratio));
}

/// What a year's duty profile asks for, whatever tells the system's head.
namespace profile {

constexpr auto flows()
{
    return series("profile_flows", "Q_j", units::m3h, from(0),
                  "flow wanted at each point of the duty profile; 0 while the pump stands still", 1);
}
constexpr auto hours()
{
    return series("hours", "t_j", units::hour, from(0), "hours a year at each point of the profile", 1);
}
constexpr auto motor_rating()
{
    return input("motor_rating", "P_N", units::kW, between(0.12, 1000), "rated output of the motor");
}
constexpr auto motor_efficiency()
{
    return input("motor_efficiency", "eta_N", units::fraction, above_up_to(0, 1),
                 "efficiency of the motor at its rated output");
}
constexpr auto drive_efficiency()
{
    return input("drive_efficiency", "eta_D", units::fraction, above_up_to(0, 1),
                 "efficiency of the converter at full load; of use for speed control only", 0.96);
}

}  // namespace profile

inline constexpr auto duty_profile_energy_record = record<&duty_profile_energy>(
    {.name = "duty_profile_energy",
     .meaning = "Energy of a year's duty profile, the pump throttled, speed-controlled or switched on and off",
     .also = "load profile|VFD or valve|on-off control",
     .inputs =
         {saving::flows(), saving::heads(), saving::efficiencies(), saving::static_head(), saving::resistance(),
          profile::flows(), profile::hours(),
          choice<FlowControl>(
              "control", "control",
              "throttling at full speed; speed, by a frequency converter; on-off, at the unthrottled duty into a tank"),
          profile::motor_rating(), profile::motor_efficiency(), saving::density(), profile::drive_efficiency(),
          motor::constant_loss_share()},
     .results = {output("energy", "E", units::kWh, "energy from the mains in the year"),
                 output("volume", "V", units::m3, "volume pumped in the year"),
                 output("specific_energy", "E/V", units::kWhm3, "energy for each volume, mean of the year"),
                 output("running_time", "t_run", units::hour, "hours that the pump runs in the year"),
                 output("least_speed_ratio", "n'/n", units::number,
                        "lowest speed over full speed; 1 without speed control")},
     .equation =
         "E = sum(P_el,j t_run,j). Throttling: P = rho g Q_j H(Q_j)/eta(Q_j). Speed: P = rho g Q_j H_sys/eta(Q_x), "
         "H_sys = H_s + k Q_j^2 = "
         "H(Q_x) (Q_j/Q_x)^2, n'/n = Q_j/Q_x. On-off: P at the duty Q_d for t_run,j = t_j Q_j/Q_d. "
         "Motor: P_M = P + P_N (1/eta_N - 1)(c + (1 - c) x^2), x = (P/P_N)/(n'/n). P_el = P_M; with a converter P_el = "
         "P_M + (P_N/eta_N)(1/eta_D - 1) "
         "l(y)/l(1), y = P_M eta_N/P_N (0.016 at least), l(y) = y (1/eta_T(y) - 1), eta_T from drive_efficiency at P_N",
     .source = "energy balance at the meeting of pump and system curve, as for speed_control_saving; motor losses a "
               "constant part and a part with the square of the "
               "load: IEC TS 60034-31, efficiency at part load (from memory of it); best efficiency near 75 % load: US "
               "Department of Energy, Determining "
               "Electric Motor Load and Efficiency (from memory of it), common practice; converter losses: see "
               "drive_efficiency; on-off: volume balance, common practice",
     .cautions = {"On-off: a tank takes up the difference between profile and pump; its change of level, starting "
                  "losses and the permitted starts an hour are left out.",
                  "Speed: the pump's efficiency is taken as unchanged along the similarity parabola, the affinity laws "
                  "down to a quarter of the speed.",
                  "Speed: the motor's constant losses are held at their value of full speed, which is rather too much, "
                  "and the losses from the converter's harmonics "
                  "left out, which is too little.",
                  "The converter's losses at part load follow a representative table for 2.2 to 300 kW, the nearest "
                  "end beyond: take the maker's where they are known.",
                  "Nothing is counted while the pump stands still; converters and controls on standby take a little.",
                  "Mind the least speed of the motor's cooling, the seal and the bearings, and the pump's least flow "
                  "when throttled."},
     .example =
         {"[0, 25, 50, 75, 100, 125], [60, 55, 50, 45, 40, 35], [0.7, 0.7, 0.7, 0.7, 0.7, 0.7], 10, 0.001, [60, 0], "
          "[4000, 2000], \"throttling\", 15, 0.92, 998.2, 0.96, 0.36",
          "48485.39, 240000, 0.202022, 4000, 1",
          "hand calculation: x = 11.18743/15, P_el = 11.18743 + 15 (1/0.92 - 1)(0.36 + 0.64 x^2)"}},
    pairs::equal_length<"heads", "flows">("there must be as many heads as flows"),
    pairs::equal_length<"efficiencies", "flows">("there must be as many efficiencies as flows"),
    pairs::equal_length<"hours", "profile_flows">("there must be as many hours as flows of the profile"),
    relation<"hours">([](Series<Time> t) { return energy::within_a_year(t); }, energy::year),
    relation<"profile_flows", "hours">(
        [](Series<Flow> q, Series<Time> t) { return profile::pumps_something(q, t); },
        "the profile must pump something: give at least one flow above 0 with hours above 0"));

}  // namespace cutwater::formulas

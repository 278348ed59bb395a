// A year's energy on a system of any kind: the head that it asks for stands beside each flow of the profile.
#pragma once

#include "formulas/power/profile.hpp"
#include "formulas/limits.hpp"

#include <string_view>
#include <tuple>

namespace cutwater::formulas {

enum class FlowRegulation { throttling, speed };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::FlowRegulation>{"throttling", "speed"};

namespace cutwater::formulas {

namespace duty {

/// The helpers blame a single flow or head: here it is one of the profile's.
inline NoValue of_profile_points(NoValue why)
{
    const std::string_view blamed = why.argument;
    if (blamed == "flow") why.argument = "profile_flows";
    if (blamed == "static_head" || blamed == "head") why.argument = "profile_heads";
    return why;
}

}  // namespace duty

inline Outcome<std::tuple<Energy, Volume, EnergyPerVolume, Ratio>> energy_by_profile_heads(
    Series<Flow> flows, Series<Head> heads, Series<Fraction> efficiencies, Series<Flow> profile_flows,
    Series<Head> profile_heads, Series<Time> hours, FlowRegulation control, Power motor_rating,
    Fraction motor_efficiency, Density density, Fraction drive_efficiency, Fraction constant_loss_share, Steps steps)
{
    const profile::Machine machine{motor_rating, motor_efficiency.value, constant_loss_share.value,
                                   drive_efficiency.value};
    const bool by_speed = control == FlowRegulation::speed;
    Energy energy{};
    Volume volume{};
    double least_ratio = 1;
    for (std::size_t i = 0; i < profile_flows.size(); ++i) {
        const Flow flow = profile_flows[i];
        if (!(flow.value() > 0)) continue;  // the pump stands still
        const SystemResistance none{};      // the head at this flow is given, whatever it is made of
        const auto running = by_speed ? profile::at_reduced_speed(flows, heads, efficiencies, profile_heads[i], none,
                                                                  flow, density)
                                      : profile::at_full_speed(flows, heads, efficiencies, profile_heads[i], none, flow,
                                                               density);
        if (!running) return duty::of_profile_points(running.why());
        if (running->shaft_power > motor_rating * running->speed_ratio * (1 + saving::rounding))
            return NoValue{.status = CUTWATER_NO_ANSWER,
                           .argument = "motor_rating",
                           .sentence = "at {0} the pump takes {1} and the motor can give {2} at that speed",
                           .numbers = {number_in(flow, units::m3h), number_in(running->shaft_power, units::kW),
                                       number_in(Power(motor_rating * running->speed_ratio), units::kW)}};
        const Power motor_input = machine.motor_input(*running);
        const Power mains = by_speed ? machine.drive_input(motor_input) : motor_input;
        steps("Q_j", "flow of the profile", flow, units::m3h);
        steps("P_j", "shaft power", running->shaft_power, units::kW);
        steps("P_el,j", "power from the mains", mains, units::kW);
        energy += mains * hours[i];
        volume += flow * hours[i];
        if (hours[i].value() > 0) least_ratio = std::min(least_ratio, running->speed_ratio);
    }
    return std::tuple(energy, volume, EnergyPerVolume(bu::quantity<EnergyPerVolumeUnit>(energy / volume)),
                      Ratio(least_ratio));
}

inline constexpr auto energy_by_profile_heads_record = record<&energy_by_profile_heads>(
    {.name = "energy_by_profile_heads",
     .meaning = "Energy of a year's duty profile on a system of any kind, its head given at each flow",
     .also = "load profile|VFD or valve|laminar line|system curve points|annual energy",
     .inputs = {saving::flows(), saving::heads(), saving::efficiencies(), profile::flows(),
                series("profile_heads", "H_j", units::metre, limits::head_m,
                       "head that the system, its control valve open, asks for at that flow", 1),
                profile::hours(),
                choice<FlowRegulation>("control", "control",
                                       "throttling at full speed; speed, by a frequency converter"),
                profile::motor_rating(), profile::motor_efficiency(), saving::density(), profile::drive_efficiency(),
                motor::constant_loss_share()},
     .results = {output("energy", "E", units::kWh, "energy from the mains in the year"),
                 output("volume", "V", units::m3, "volume pumped in the year"),
                 output("specific_energy", "E/V", units::kWhm3, "energy for each volume, mean of the year"),
                 output("least_speed_ratio", "n'/n", units::number,
                        "lowest speed over full speed; 1 without speed control")},
     .equation = "E = sum(P_el,j t_j), as in duty_profile_energy with H_j in place of H_s + k Q_j^2",
     .source = "as for duty_profile_energy: energy balance at the meeting of pump and system, losses of motor and "
               "converter at part load",
     .cautions = {"Give the system's head and not the pump's: what a throttle valve wastes is found here.",
                  "Speed: the pump's efficiency is taken as unchanged along the similarity parabola, the affinity laws "
                  "down to a quarter of the speed.",
                  "Mind the least speed of the motor's cooling, the seal and the bearings, and the pump's least flow "
                  "when throttled."},
     .example = {"[0, 25, 50, 75, 100, 125], [60, 55, 50, 45, 40, 35], [0.7, 0.7, 0.7, 0.7, 0.7, 0.7], "
                 "[60, 0], [13.6, 0], [4000, 2000], \"throttling\", 15, 0.92, 998.2, 0.96, 0.36",
                 "48485.39, 240000, 0.202022, 1", "as the example of duty_profile_energy: 10 + 0.001 x 60^2 = 13.6"}},
    pairs::equal_length<"heads", "flows">("there must be as many heads as flows"),
    pairs::equal_length<"efficiencies", "flows">("there must be as many efficiencies as flows"),
    pairs::equal_length<"profile_heads", "profile_flows">("there must be as many heads as flows of the profile"),
    pairs::equal_length<"hours", "profile_flows">("there must be as many hours as flows of the profile"),
    relation<"hours">([](Series<Time> t) { return energy::within_a_year(t); }, energy::year),
    relation<"profile_flows", "hours">(
        [](Series<Flow> q, Series<Time> t) { return profile::pumps_something(q, t); },
        "the profile must pump something: give at least one flow above 0 with hours above 0"));

}  // namespace cutwater::formulas

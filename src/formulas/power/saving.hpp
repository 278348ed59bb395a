// What a throttle valve wastes, and what a speed control saves against it: from the pump's curve and the system's.
#pragma once

#include "formulas/curves/similar_duty.hpp"
#include "formulas/power/hydraulic.hpp"
#include "formulas/system/resistance.hpp"

#include <tuple>

namespace cutwater::formulas {

namespace saving {

struct Throttled {
    Head pump_head;
    Head system_head;
    double efficiency;
};

inline Outcome<double> efficiency_at(const Series<Flow>& flows, const Series<Fraction>& efficiencies, Flow flow)
{
    const auto read = curves::read(flows, efficiencies, flow, "flow", units::m3h);
    if (!read) return read.why();
    if (!(read->value > 0))
        return NoValue{.status = CUTWATER_NO_ANSWER, .argument = "efficiencies",
                       .sentence = "the efficiency curve gives nothing at {0}, so that the power there is unknown", .numbers = {number_in(flow, units::m3h)}};
    return read->value;
}

/// The pump at full speed, throttled to a flow that the system would take with less head.
inline Outcome<Throttled> throttled(const Series<Flow>& flows, const Series<Head>& heads, const Series<Fraction>& efficiencies, Head static_head,
                                    SystemResistance resistance, Flow flow)
{
    const auto pump_head = curves::read(flows, heads, flow, "flow", units::m3h);
    if (!pump_head) return pump_head.why();
    const Head asked = system_head(static_head, resistance, flow);
    if (*pump_head < asked)
        return NoValue{.status = CUTWATER_NO_ANSWER, .argument = "flow",
                       .sentence = "the pump gives {0} at that flow and the system asks for {1}: the flow is beyond the duty, there is nothing to throttle",
                       .numbers = {number_in(*pump_head, units::metre), number_in(asked, units::metre)}};
    const auto efficiency = efficiency_at(flows, efficiencies, flow);
    if (!efficiency) return efficiency.why();
    return Throttled{*pump_head, asked, *efficiency};
}

template <class... Rest>
bool heads_match(Series<Flow> flows, Series<Head> heads, Series<Fraction>, Rest...)
{
    return heads.size() == flows.size();
}
template <class... Rest>
bool efficiencies_match(Series<Flow> flows, Series<Head>, Series<Fraction> efficiencies, Rest...)
{
    return efficiencies.size() == flows.size();
}

constexpr auto flows() { return series("flows", "Q_i", units::m3h, from(0), "flows of the pump curve's points", 2, Order::rising); }
constexpr auto heads() { return series("heads", "H_i", units::metre, any, "heads of the curve's points", 2); }
constexpr auto efficiencies()
{
    return series("efficiencies", "eta_i", units::fraction, between(0, 1), "pump efficiencies at the curve's points; 0 at no flow", 2);
}
constexpr auto static_head()
{
    return input("static_head", "H_s", units::metre, any, "system head at no flow: levels and the vessels' pressures");
}
constexpr auto resistance()
{
    return input("resistance", "k", units::h2m5, from(0), "system losses over the square of the flow, the valve open");
}
constexpr auto flow() { return input("flow", "Q", units::m3h, above(0), "flow wanted, less than the unthrottled duty"); }
constexpr auto density() { return input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid", 998.2); }

inline constexpr const char* source =
    "energy balance at the duty of the pump's and the system's curves; Hydraulic Institute, Europump and US Department of Energy, Variable Speed "
    "Pumping, 2004 (from memory of it)";

}  // namespace saving

inline Outcome<std::tuple<Power, Head>> throttling_power_loss(Series<Flow> flows, Series<Head> heads, Series<Fraction> efficiencies, Head static_head,
                                                              SystemResistance resistance, Flow flow, Density density, Steps steps)
{
    const auto found = saving::throttled(flows, heads, efficiencies, static_head, resistance, flow);
    if (!found) return found.why();
    const Head valve = found->pump_head - found->system_head;
    steps("H", "pump head at the flow", found->pump_head, units::metre);
    steps("H_sys", "H_s + k Q^2", found->system_head, units::metre);
    steps("eta", "pump efficiency at the flow", Fraction{found->efficiency}, units::fraction);
    return std::tuple(Power(hydraulic_power(flow, valve, density) / found->efficiency), valve);
}

inline constexpr Record<&throttling_power_loss> throttling_power_loss_record{
    .name = "throttling_power_loss",
    .meaning = "Shaft power spent on the head that a throttle valve destroys",
    .inputs = {saving::flows(), saving::heads(), saving::efficiencies(), saving::static_head(), saving::resistance(), saving::flow(), saving::density()},
    .results = {output("power_loss", "P_v", units::kW, "shaft power that goes into the valve"), output("valve_head", "h_v", units::metre, "head lost in the valve")},
    .equation = "P_v = rho g Q h_v/eta(Q), h_v = H(Q) - (H_s + k Q^2)",
    .relations = {{"heads", &saving::heads_match<Head, SystemResistance, Flow, Density>, "there must be as many heads as flows"},
                  {"efficiencies", &saving::efficiencies_match<Head, SystemResistance, Flow, Density>, "there must be as many efficiencies as flows"}},
    .source = saving::source,
    .cautions = {"Not all of it can be saved: another pump, trim or speed has its own efficiency at the duty."},
    .example = {"[0, 25, 50, 75, 100, 125], [60, 55, 50, 45, 40, 35], [0.7, 0.7, 0.7, 0.7, 0.7, 0.7], 10, 0.001, 60, 998.2", "8.017656, 34.4",
                "hand calculation: 998.2 x 9.80665 x 34.4/60/0.7"}};

inline Outcome<std::tuple<Power, RotationalSpeed, Power, Power>> speed_control_saving(Series<Flow> flows, Series<Head> heads, Series<Fraction> efficiencies,
                                                                                      RotationalSpeed speed, Head static_head, SystemResistance resistance,
                                                                                      Flow flow, Density density, Fraction drive_efficiency, Steps steps)
{
    const auto full = saving::throttled(flows, heads, efficiencies, static_head, resistance, flow);
    if (!full) return full.why();
    if (!(full->system_head.value() > 0))
        return NoValue{.status = CUTWATER_NO_ANSWER, .argument = "static_head",
                       .sentence = "the system takes that flow by itself, its head there being {0}: no pump is needed", .numbers = {number_in(full->system_head, units::metre)}};
    const auto similar = curves::similar_flow(flows, heads, flow, full->system_head, false);
    if (!similar) return similar.why();
    const Ratio ratio = flow / *similar;
    if (ratio.value() < affinity::least_ratio)
        return NoValue{.status = CUTWATER_NO_ANSWER, .argument = "flow",
                       .sentence = "the speed would have to fall to {0} of the full one; the affinity laws are relied upon down to 0.25 only",
                       .numbers = {{ratio.value(), ""}}};
    const auto slow_efficiency = saving::efficiency_at(flows, efficiencies, *similar);
    if (!slow_efficiency) return slow_efficiency.why();
    const Power throttled = hydraulic_power(flow, full->pump_head, density) / full->efficiency;
    const Power controlled = hydraulic_power(flow, full->system_head, density) / (*slow_efficiency * drive_efficiency.value);
    steps("H_sys", "H_s + k Q^2", full->system_head, units::metre);
    steps("Q_x", "flow at which the similarity parabola through the duty meets the curve", *similar, units::m3h);
    steps("eta(Q_x)", "pump efficiency at the similar point", Fraction{*slow_efficiency}, units::fraction);
    return std::tuple(Power(throttled - controlled), speed * ratio, throttled, controlled);
}

inline constexpr Record<&speed_control_saving> speed_control_saving_record{
    .name = "speed_control_saving",
    .meaning = "Power that speed control saves at a flow against throttling",
    .inputs = {saving::flows(), saving::heads(), saving::efficiencies(), input("speed", "n", units::rpm, limits::speed_rpm, "speed of that curve"),
               saving::static_head(), saving::resistance(), saving::flow(), saving::density(),
               input("drive_efficiency", "eta_D", units::fraction, above_up_to(0, 1), "efficiency of the converter at that load; 1 leaves its losses out", 1)},
    .results = {output("saving", "dP", units::kW, "power saved; negative when the converter loses more than the speed gains"),
                output("reduced_speed", "n'", units::rpm, "speed that gives the duty with the valve open"),
                output("throttled_power", "P_1", units::kW, "shaft power at full speed, throttled"),
                output("controlled_power", "P_2", units::kW, "shaft power at the reduced speed, over the converter's efficiency")},
    .equation = "dP = rho g Q H(Q)/eta(Q) - rho g Q H_sys/(eta(Q_x) eta_D); H_sys = H_s + k Q^2; n' = n Q/Q_x, where H = H_sys (Q_x/Q)^2 on the curve",
    .relations = {{"heads", &saving::heads_match<RotationalSpeed, Head, SystemResistance, Flow, Density, Fraction>, "there must be as many heads as flows"},
                  {"efficiencies", &saving::efficiencies_match<RotationalSpeed, Head, SystemResistance, Flow, Density, Fraction>,
                   "there must be as many efficiencies as flows"}},
    .source = saving::source,
    .cautions = {caution::affinity, "Efficiency is taken as unchanged along the similarity parabola; motor losses at part load are left out.",
                 "Mind the least speed of the motor's cooling, the seal and the bearings, and resonances in the range."},
    .example = {"[0, 25, 50, 75, 100, 125], [60, 55, 50, 45, 40, 35], [0.7, 0.7, 0.7, 0.7, 0.7, 0.7], 2900, 10, 0.001, 60, 998.2, 0.96", "7.88558, 1700.80, 11.18743, 3.30184",
                "hand calculation: Q_x from 60 - 0.2 Q = 13.6 (Q/60)^2"}};

}  // namespace cutwater::formulas

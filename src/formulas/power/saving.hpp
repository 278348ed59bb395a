// What a throttle valve wastes, and what a speed control saves against it: from the pump's curve and the system's.
#pragma once

#include "formulas/curves/similar_duty.hpp"
#include "formulas/power/hydraulic.hpp"
#include "formulas/system/resistance.hpp"
#include "formulas/limits.hpp"

#include <algorithm>
#include <tuple>

namespace cutwater::formulas {

namespace saving {

inline constexpr double rounding = 1e-9;  // a flow that is the duty but for rounding is not beyond it

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
        return NoValue{.status = CUTWATER_NO_ANSWER,
                       .argument = "efficiencies",
                       .sentence = "the efficiency curve gives nothing at {0}, so that the power there is unknown",
                       .numbers = {number_in(flow, units::m3h)}};
    return read->value;
}

inline NoValue beyond_duty(Flow flow, Head given, Head asked)
{
    return {.status = CUTWATER_NO_ANSWER,
            .argument = "flow",
            .sentence = "at {0} the pump gives {1} and the system asks for {2}: that flow is beyond the duty, there is "
                        "nothing to control",
            .numbers = {number_in(flow, units::m3h), number_in(given, units::metre), number_in(asked, units::metre)}};
}

/// The pump at full speed, throttled to a flow that the system would take with less head.
inline Outcome<Throttled> throttled(const Series<Flow>& flows, const Series<Head>& heads,
                                    const Series<Fraction>& efficiencies, Head static_head, SystemResistance resistance,
                                    Flow flow)
{
    const auto pump_head = curves::read(flows, heads, flow, "flow", units::m3h);
    if (!pump_head) return pump_head.why();
    const Head asked = system_head(static_head, resistance, flow);
    if (*pump_head < asked * (1 - rounding)) return beyond_duty(flow, *pump_head, asked);
    const auto efficiency = efficiency_at(flows, efficiencies, flow);
    if (!efficiency) return efficiency.why();
    return Throttled{std::max(*pump_head, asked), asked, *efficiency};
}

struct Slowed {
    Head head;
    Flow similar_flow;
    double speed_ratio;
    double efficiency;
};

/// The pump slowed down until it gives the flow with the valve open.
inline Outcome<Slowed> slowed(const Series<Flow>& flows, const Series<Head>& heads,
                              const Series<Fraction>& efficiencies, Head static_head, SystemResistance resistance,
                              Flow flow)
{
    const auto pump_head = curves::read(flows, heads, flow, "flow", units::m3h);
    if (!pump_head) return pump_head.why();
    const Head asked = system_head(static_head, resistance, flow);
    if (*pump_head < asked * (1 - rounding)) return beyond_duty(flow, *pump_head, asked);
    if (!(asked.value() > 0))
        return NoValue{.status = CUTWATER_NO_ANSWER,
                       .argument = "static_head",
                       .sentence = "the system takes {0} by itself, its head there being {1}: no pump is needed",
                       .numbers = {number_in(flow, units::m3h), number_in(asked, units::metre)}};
    const auto similar = curves::similar_flow(flows, heads, flow, asked, false);
    if (!similar) return similar.why();
    const double ratio = Ratio(flow / *similar).value();
    if (ratio < affinity::least_ratio)
        return NoValue{.status = CUTWATER_NO_ANSWER,
                       .argument = "flow",
                       .sentence = "for {0} the speed would have to fall to {1} of the full one; the affinity laws are "
                                   "relied upon down to 0.25 only",
                       .numbers = {number_in(flow, units::m3h), {ratio, ""}}};
    const auto efficiency = efficiency_at(flows, efficiencies, *similar);
    if (!efficiency) return efficiency.why();
    return Slowed{asked, *similar, ratio, *efficiency};
}

constexpr auto flows()
{
    return series("flows", "Q_i", units::m3h, from(0), "flows of the pump curve's points", 2, Order::rising);
}
constexpr auto heads() { return series("heads", "H_i", units::metre, any, "heads of the curve's points", 2); }
constexpr auto efficiencies()
{
    return series("efficiencies", "eta_i", units::fraction, between(0, 1),
                  "pump efficiencies at the curve's points; 0 at no flow", 2);
}
constexpr auto static_head()
{
    return input("static_head", "H_s", units::metre, any, "system head at no flow: levels and the vessels' pressures");
}
constexpr auto resistance()
{
    return input("resistance", "k", units::h2m5, limits::resistance_h2m5,
                 "system losses over the square of the flow, the valve open");
}
constexpr auto flow()
{
    return input("flow", "Q", units::m3h, above(0), "flow wanted, less than the unthrottled duty");
}
constexpr auto density()
{
    return input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid", 998.2);
}

inline constexpr const char* any_system =
    "A system of another kind, laminar or given by points: put its head at this flow in for the static head, and 0 for "
    "the resistance.";
inline constexpr const char* source = "energy balance at the duty of the pump's and the system's curves; Hydraulic "
                                      "Institute, Europump and US Department of Energy, Variable Speed "
                                      "Pumping, 2004 (from memory of it)";

}  // namespace saving

inline Outcome<std::tuple<Power, Head>> throttling_power_loss(Series<Flow> flows, Series<Head> heads,
                                                              Series<Fraction> efficiencies, Head static_head,
                                                              SystemResistance resistance, Flow flow, Density density,
                                                              Steps steps)
{
    const auto found = saving::throttled(flows, heads, efficiencies, static_head, resistance, flow);
    if (!found) return found.why();
    const Head valve = found->pump_head - found->system_head;
    steps("H", "pump head at the flow", found->pump_head, units::metre);
    steps("H_sys", "H_s + k Q^2", found->system_head, units::metre);
    steps("eta", "pump efficiency at the flow", Fraction{found->efficiency}, units::fraction);
    return std::tuple(Power(hydraulic_power(flow, valve, density) / found->efficiency), valve);
}

inline constexpr auto throttling_power_loss_record = record<&throttling_power_loss>(
    {.name = "throttling_power_loss",
     .meaning = "Shaft power spent on the head that a throttle valve destroys",
     .also = "control valve loss|wasted power|throttle",
     .inputs = {saving::flows(), saving::heads(), saving::efficiencies(), saving::static_head(), saving::resistance(),
                saving::flow(), saving::density()},
     .results = {output("power_loss", "P_v", units::kW, "shaft power that goes into the valve"),
                 output("valve_head", "h_v", units::metre, "head lost in the valve")},
     .equation = "P_v = rho g Q h_v/eta(Q), h_v = H(Q) - (H_s + k Q^2)",
     .source = saving::source,
     .cautions = {"Not all of it can be saved: another pump, trim or speed has its own efficiency at the duty.",
                  saving::any_system},
     .example =
         {"[0, 25, 50, 75, 100, 125], [60, 55, 50, 45, 40, 35], [0.7, 0.7, 0.7, 0.7, 0.7, 0.7], 10, 0.001, 60, 998.2",
          "8.017656, 34.4", "hand calculation: 998.2 x 9.80665 x 34.4/60/0.7"}},
    pairs::equal_length<"heads", "flows">("there must be as many heads as flows"),
    pairs::equal_length<"efficiencies", "flows">("there must be as many efficiencies as flows"));

inline Outcome<std::tuple<Power, RotationalSpeed, Power, Power>> speed_control_saving(
    Series<Flow> flows, Series<Head> heads, Series<Fraction> efficiencies, RotationalSpeed speed, Head static_head,
    SystemResistance resistance, Flow flow, Density density, Fraction drive_efficiency, Steps steps)
{
    const auto full = saving::throttled(flows, heads, efficiencies, static_head, resistance, flow);
    if (!full) return full.why();
    const auto slow = saving::slowed(flows, heads, efficiencies, static_head, resistance, flow);
    if (!slow) return slow.why();
    const Power throttled = hydraulic_power(flow, full->pump_head, density) / full->efficiency;
    const Power controlled = hydraulic_power(flow, full->system_head, density) /
                             (slow->efficiency * drive_efficiency.value);
    steps("H_sys", "H_s + k Q^2", full->system_head, units::metre);
    steps("Q_x", "flow at which the similarity parabola through the duty meets the curve", slow->similar_flow,
          units::m3h);
    steps("eta(Q_x)", "pump efficiency at the similar point", Fraction{slow->efficiency}, units::fraction);
    return std::tuple(Power(throttled - controlled), speed * Ratio(slow->speed_ratio), throttled, controlled);
}

inline constexpr auto speed_control_saving_record = record<&speed_control_saving>(
    {.name = "speed_control_saving",
     .meaning = "Power that speed control saves at a flow against throttling",
     .also = "VFD savings|variable speed saving|inverter savings|variable speed drive saving|"
             "variable frequency drive saving|VFD|VSD",
     .inputs = {saving::flows(), saving::heads(), saving::efficiencies(),
                input("speed", "n", units::rpm, limits::speed_rpm, "speed of that curve"), saving::static_head(),
                saving::resistance(), saving::flow(), saving::density(),
                input("drive_efficiency", "eta_D", units::fraction, above_up_to(0, 1),
                      "efficiency of the converter at that load; 1 leaves its losses out", 0.96)},
     .results = {output("saving", "dP", units::kW,
                        "power saved; negative when the converter loses more than the speed gains"),
                 output("reduced_speed", "n'", units::rpm, "speed that gives the duty with the valve open"),
                 output("throttled_power", "P_1", units::kW, "shaft power at full speed, throttled"),
                 output("controlled_power", "P_2", units::kW,
                        "shaft power at the reduced speed, over the converter's efficiency")},
     .equation = "dP = rho g Q H(Q)/eta(Q) - rho g Q H_sys/(eta(Q_x) eta_D); H_sys = H_s + k Q^2; n' = n Q/Q_x, where "
                 "H = H_sys (Q_x/Q)^2 on the curve",
     .source = saving::source,
     .cautions =
         {caution::affinity,
          "The default of 0.96 is a converter's efficiency at full load; at part load it loses more, see "
          "drive_efficiency, and below about a quarter of the load much more.",
          "Efficiency is taken as unchanged along the similarity parabola; motor losses at part load are left "
          "out.",
          saving::any_system,
          "Mind the least speed of the motor's cooling, the seal and the bearings, and resonances in the range."},
     .example = {"[0, 25, 50, 75, 100, 125], [60, 55, 50, 45, 40, 35], [0.7, 0.7, 0.7, 0.7, 0.7, 0.7], 2900, 10, "
                 "0.001, 60, 998.2, 0.96",
                 "7.88558, 1700.80, 11.18743, 3.30184", "hand calculation: Q_x from 60 - 0.2 Q = 13.6 (Q/60)^2"}},
    pairs::equal_length<"heads", "flows">("there must be as many heads as flows"),
    pairs::equal_length<"efficiencies", "flows">("there must be as many efficiencies as flows"));

}  // namespace cutwater::formulas

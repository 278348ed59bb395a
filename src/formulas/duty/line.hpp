// Systems of any kind: a line's own curve with its true friction, unlike pumps on it, and the whole duty.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/curves/balance.hpp"
#include "formulas/duty/suction_limit.hpp"
#include "formulas/duty/system_points.hpp"
#include "formulas/power/saving.hpp"
#include "formulas/system/friction.hpp"
#include "formulas/limits.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <tuple>

namespace cutwater::formulas {

namespace duty {

constexpr auto system_flows()
{
    return series("system_flows", "Q_s,i", units::m3h, from(0), "flows of the system curve's points", 2, Order::rising);
}
constexpr auto system_heads(const char* meaning = "heads that the system asks for at those flows")
{
    return series("system_heads", "H_s,i", units::metre, limits::head_m, meaning, 2);
}

inline bool never_falls(const Series<Head>& heads)
{
    for (std::size_t i = 1; i < heads.size(); ++i)
        if (heads[i] < heads[i - 1]) return false;
    return true;
}

}  // namespace duty

inline Points<Head> line_heads(Series<Flow> flows, Head static_head, Length bore, Length length, Length roughness,
                               KinematicViscosity viscosity, Ratio loss_coefficient)
{
    Points<Head> heads;
    heads.reserve(flows.size());
    for (std::size_t i = 0; i < flows.size(); ++i) {
        const Head fittings = loss_coefficient.value() * head_of_velocity(pipe_velocity(flows[i], bore));
        heads.push_back(static_head + fittings +
                        pipe_friction_head(flows[i], bore, length, roughness, viscosity, Steps{}));
    }
    return heads;
}

inline constexpr auto line_heads_record = record<&line_heads>(
    {.name = "line_heads",
     .meaning = "System curve of a line, its friction laminar or turbulent as it comes at each flow",
     .also = "system curve|laminar line|viscous line|system head curve|line curve",
     .inputs = {series("flows", "Q_i", units::m3h, from(0), "flows at which the system's head is wanted", 1),
                curves::static_head(), input("bore", "d", units::mm, limits::bore_mm, "inside diameter of the line"),
                input("length", "L", units::metre, from(0), "length of straight pipe"),
                input("roughness", "eps", units::mm, from(0), "roughness of the wall: new commercial steel 0.046"),
                input("kinematic_viscosity", "nu", units::mm2s, limits::kinematic_viscosity_mm2s,
                      "kinematic viscosity at the temperature in the line"),
                input("loss_coefficient", "K", units::number, from(0), "sum of the fittings' loss coefficients", 0)},
     .results = {output_series<Head>("system_heads", "H_i", units::metre,
                                     "heads that the system asks for at those flows")},
     .equation = "H_i = H_s + h_f(Q_i) + K v_i^2/(2 g), h_f as in pipe_friction_head",
     .source = "Darcy and Weisbach; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.1 to 3.A.5 "
               "(excerpt read)",
     .cautions =
         {"Where the flow turns turbulent, near Re 2000, the curve jumps: give points close together there, and "
          "mind that a duty in the jump is none.",
          "Loss coefficients of fittings grow in laminar flow: see fitting_loss_coefficient.", friction::critical_zone,
          friction::scatter},
     .example = {"[0, 50, 100], 10, 150, 200, 0.0457, 500, 4", "[10, 21.5243, 33.3006]",
                 "computed apart: laminar, 32 nu L v/(g d^2) + 4 v^2/(2 g)"}},
    relation<"roughness", "bore">([](Length roughness, Length bore) { return roughness <= friction::roughest * bore; },
                                  friction::rough_enough),
    relation<"flows", "bore", "kinematic_viscosity">(
        [](Series<Flow> flows, Length bore, KinematicViscosity viscosity) {
            for (std::size_t i = 0; i < flows.size(); ++i)
                if (reynolds_number(flows[i], bore, viscosity).value() > friction::highest_reynolds) return false;
            return true;
        },
        "the Reynolds number must be at most 1e9, the end of the method's range"));

inline Outcome<std::tuple<Flow, Head, Flow, Flow, Delivering>> flow_balance_on_system_points(
    Series<Flow> flows_1, Series<Head> heads_1, Series<Flow> flows_2, Series<Head> heads_2, Series<Flow> system_flows,
    Series<Head> system_heads)
{
    const curves::Knots<Flow, Head> pumps[] = {{flows_1, heads_1}, {flows_2, heads_2}};
    const curves::Knots<Flow, Head> system(system_flows, system_heads);
    constexpr double wall = 1e9;  // beyond its last point the system lets nothing through: a meeting there is none
    const auto asked = [&](double flow) {
        return flow <= system.last() * (1 + 1e-12) ? curves::value_at(system, std::min(flow, system.last())) : wall;
    };
    const auto balance = curves::balanced(pumps, asked, "system_heads");
    if (!balance) return balance.why();
    const auto& [head, flows] = *balance;
    const Flow total = Flow::from_value(flows[0] + flows[1]);
    if (curves::value_at(system, std::min(total.value(), system.last())) < head - 1e-9 * std::abs(head))
        return NoValue{.status = CUTWATER_NO_ANSWER,
                       .argument = "system_flows",
                       .sentence = "the system's curve is too short: at its last point, {0}, the pumps still give more "
                                   "than it takes",
                       .numbers = {number_in(system_flows.back(), units::m3h)}};
    return std::tuple(total, Head::from_value(head), Flow::from_value(flows[0]), Flow::from_value(flows[1]),
                      curves::delivering_at(pumps[0], pumps[1], head));
}

inline constexpr auto flow_balance_on_system_points_record = record<&flow_balance_on_system_points>(
    {.name = "flow_balance_on_system_points",
     .meaning = "Duty of two unlike pumps in parallel on a system curve that is given by points, and each pump's share",
     .also = "load sharing|pumps in parallel|laminar line|two pumps give less than twice|measured system curve",
     .inputs = {curves::flows_of<1>(), curves::falling_heads_of<1>(), curves::flows_of<2>(),
                curves::falling_heads_of<2>(), duty::system_flows(),
                duty::system_heads("heads that the system asks for at those flows, never falling; from flow 0 on")},
     .results = {output("total_flow", "Q", units::m3h, "flow through the system"),
                 output("head", "H", units::metre, "head common to both"),
                 output("flow_1", "Q_1", units::m3h, "flow of pump 1"),
                 output("flow_2", "Q_2", units::m3h, "flow of pump 2"),
                 output_word<Delivering>(
                     "delivering", "who",
                     "whether one of them delivers nothing, the head being above its closed-valve head")},
     .equation = "Q = Q_1(H) + Q_2(H), H = H_system(Q)",
     .source = curves::parallel_source,
     .cautions = {curves::no_return, curves::own_losses, curves::same_liquid, caution::closed_valve},
     .example = {"[0, 100], [40, 30], [0, 60], [38, 32], [0, 160], [20, 36]",
                 "126.667, 32.6667, 73.3333, 53.3333, \"both pumps\"",
                 "hand calculation: 400 - 10 H + 380 - 10 H = 10 (H - 20)"}},
    pairs::equal_length<"heads_1", "flows_1">(), pairs::equal_length<"heads_2", "flows_2">(),
    pairs::equal_length<"system_heads", "system_flows">(), curves::falls<"heads_1">(),
    curves::begins_at_closed_valve<"flows_1">(), curves::falls<"heads_2">(),
    curves::begins_at_closed_valve<"flows_2">(),
    relation<"system_flows">([](Series<Flow> flows) { return flows.front() == Flow{}; },
                             "the system's curve must begin at flow 0"),
    relation<"system_heads">(&duty::never_falls, "the system's head must not fall from point to point"));

inline Outcome<std::tuple<Flow, Head, Fraction, Power, Head, Head, Head>> whole_duty_on_system_points(
    Series<Flow> flows, Series<Head> heads, Series<Fraction> efficiencies, Series<Head> npsh3_values,
    Series<Flow> system_flows, Series<Head> system_heads, Series<Head> npsh_values, Density density)
{
    const auto found = duty_on_system_points(flows, heads, system_flows, system_heads, Count{1});
    if (!found) return found.why();
    const auto [flow, head, each] = *found;
    const auto efficiency = saving::efficiency_at(flows, efficiencies, flow);
    if (!efficiency) return efficiency.why();
    const Head npsh3 = curves::read_within(flows, npsh3_values, flow);
    const Head offered = curves::read_within(system_flows, npsh_values, flow);
    const Power power = hydraulic_power(flow, head, density) / *efficiency;
    return std::tuple(flow, head, Fraction{*efficiency}, power, npsh3, offered, Head(offered - npsh3));
}

inline constexpr auto whole_duty_on_system_points_record = record<&whole_duty_on_system_points>(
    {.name = "whole_duty_on_system_points",
     .meaning = "The whole duty of a pump on a system given by points: flow, head, efficiency, power, NPSH needed and "
                "offered",
     .also = "duty point|operating point|pump check|everything at once|laminar line|BHP|NPSH margin",
     .inputs = {curves::pump_flows(), curves::pump_heads(), saving::efficiencies(), duty::npsh3_values(),
                duty::system_flows(), duty::system_heads(),
                series("npsh_values", "NPSHA_i", units::metre, limits::head_m,
                       "net positive suction head available at the system's flows", 2),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid")},
     .results = {output("flow", "Q", units::m3h, "flow through pump and system"),
                 output("head", "H", units::metre, "head there"),
                 output("efficiency", "eta", units::fraction, "pump efficiency there"),
                 output("power", "P", units::kW, "pump power input there"),
                 output("npsh3", "NPSH3", units::metre, "NPSH at 3 % head drop there"),
                 output("npsh", "NPSHA", units::metre, "NPSH available there"),
                 output("margin", "NPSHA - NPSH3", units::metre,
                        "what is left; negative: the pump cavitates and the duty does not hold")},
     .equation = "H_pump(Q) = H_system(Q); P = rho g Q H/eta(Q); all curves between their points as in curve_head",
     .source = "definitions of ISO 17769-1:2012 (from memory of it); the curves between their points as in curve_head",
     .cautions = {curves::drooping, curves::same_liquid, caution::npsh_margin, caution::inlet_vapour_pressure,
                  suction::datum, caution::hot_or_toxic},
     .example = {"[0, 50, 100], [40, 38, 30], [0, 0.6, 0.7], [2, 3, 6], [0, 100], [20, 30], [9, 8], 998.2",
                 "100, 30, 0.7, 11.65357, 6, 8, 2", "hand calculation: P = 998.2 x 9.80665 x 100/3600 x 30/0.7 W"}},
    pairs::equal_length<"heads", "flows">(), pairs::equal_length<"efficiencies", "flows">(),
    pairs::equal_length<"npsh3_values", "flows">(), pairs::equal_length<"system_heads", "system_flows">(),
    pairs::equal_length<"npsh_values", "system_flows">());

inline Outcome<std::tuple<Flow, Head>> greatest_flow_by_suction_points(Series<Flow> flows, Series<Head> npsh3_values,
                                                                       Series<Flow> system_flows,
                                                                       Series<Head> npsh_values, Head margin)
{
    const curves::Knots<Flow, Head> needed(flows, npsh3_values);
    const curves::Knots<Flow, Head> offered(system_flows, npsh_values);
    if (!(offered.first() < needed.last() && needed.first() < offered.last()))
        return NoValue{
            .status = CUTWATER_NO_ANSWER,
            .argument = "system_flows",
            .sentence = "NPSH available, which is given from {0} to {1}, and the pump's curve have no flow "
                        "in common",
            .numbers = {number_in(system_flows.front(), units::m3h), number_in(system_flows.back(), units::m3h)}};
    const curves::Meetings found = duty::meetings_of(duty::Raised(needed, margin.value()), offered);
    const bool only_limit = found.count == 1 && !found.along && found.first_gap <= 0 && found.last_gap >= 0;
    if (!only_limit) {
        NoValue why = duty::no_suction_limit(found, Flow::from_value(std::min(needed.last(), offered.last())));
        const bool ends_first = why.argument == std::string_view("flows") && offered.last() < needed.last();
        why.argument = ends_first                                         ? "system_flows"
                       : why.argument == std::string_view("npsh_at_rest") ? "npsh_values"
                                                                          : why.argument;
        return why;
    }
    return std::tuple(Flow::from_value(found.at[0]), Head::from_value(curves::value_at(offered, found.at[0])));
}

inline constexpr auto greatest_flow_by_suction_points_record = record<&greatest_flow_by_suction_points>(
    {.name = "greatest_flow_by_suction_points",
     .meaning = "Greatest flow at which NPSH available, given by points, still covers NPSH3 and a margin",
     .also = "NPSHA meets NPSHR|laminar suction line|viscous suction line|run-out limit|suction limit",
     .inputs = {curves::flows(), duty::npsh3_values(), duty::system_flows(),
                series("npsh_values", "NPSHA_i", units::metre, limits::head_m,
                       "net positive suction head available at the system's flows", 2),
                input("margin", "m", units::metre, limits::head_from_0_m, "NPSH to be left above NPSH3")},
     .results = {output("flow", "Q_max", units::m3h, "greatest flow"),
                 output("npsh", "NPSHA", units::metre, "NPSH available there")},
     .equation = "NPSHA(Q) = NPSH3(Q) + m; all meetings over the flows that both cover are looked for",
     .source = "ISO 17769-1:2012, NPSH available and NPSH3 (from memory of it); the curves between their points as in "
               "curve_npsh3",
     .cautions = {caution::npsh_margin, caution::inlet_vapour_pressure, suction::datum,
                  "In a laminar suction line the loss rises with the flow and with the viscosity: take the coldest "
                  "liquid for the loss and the warmest for the vapour pressure.",
                  caution::hot_or_toxic},
     .example = {"[0, 100], [1, 5], [0, 100], [9, 5], 1", "87.5, 5.5",
                 "hand calculation: 9 - 0.04 Q = 1 + 0.04 Q + 1"}},
    pairs::equal_length<"npsh3_values", "flows">(), pairs::equal_length<"npsh_values", "system_flows">());

}  // namespace cutwater::formulas

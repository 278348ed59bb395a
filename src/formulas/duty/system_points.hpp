// Duties on systems whose head is no constant and square: given by points, or with friction that rises otherwise,
// laminar lines above all.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"
#include "formulas/curves/combined.hpp"
#include "formulas/curves/duty.hpp"
#include "formulas/curves/inputs.hpp"
#include "formulas/duty/two_curves.hpp"

#include <tuple>

namespace cutwater::formulas {

namespace duty {

constexpr auto pumps()
{
    return input("pumps", "N", units::count, between(1, 20), "equal pumps running in parallel", 1);
}
constexpr auto system_flow()
{
    return output("flow", "Q", units::m3h, "flow through the system, of all pumps together");
}
constexpr auto system_head() { return output("head", "H", units::metre, "head of pumps and system there"); }
constexpr auto flow_of_each() { return output("flow_of_each", "Q/N", units::m3h, "flow of each pump"); }

/// Friction with a part that rises with the flow itself, of laminar lines, filters and beds, and one that rises faster.
struct MixedFriction {
    double static_head, reference_flow, laminar, turbulent, exponent;

    double head(double flow) const
    {
        const double share = flow / reference_flow;
        const double faster = exponent == 2 ? share * share : share > 0 ? elementary::positive_pow(share, exponent) : 0;
        return static_head + laminar * share + turbulent * faster;
    }
};

constexpr auto reference_flow()
{
    return input("reference_flow", "Q_r", units::m3h, above(0), "flow at which the friction heads are known");
}
inline constexpr Interval friction_m = between(0, 1e7);  // the flow it belongs to may lie far beyond the curve
constexpr auto laminar_friction()
{
    return input(
        "laminar_friction_head", "h_1", units::metre, friction_m,
        "friction head at that flow of what rises with the flow itself: laminar lines, filter cakes, packed beds");
}
constexpr auto turbulent_friction()
{
    return input("turbulent_friction_head", "h_2", units::metre, friction_m,
                 "friction head at that flow of what rises faster: turbulent lines, fittings, valves");
}
constexpr auto exponent()
{
    return input("exponent", "m", units::number, between(1, 2),
                 "of the faster part: 2 for rough pipes and fittings, about 1.75 for smooth pipes", 2);
}

inline constexpr const char* mixed_source = "laminar friction rises with the flow (Hagen and Poiseuille), turbulent "
                                            "with its square in rough pipes (Darcy and Weisbach) and its "
                                            "power 1.75 in smooth ones (Blasius); any textbook of hydraulics";
inline constexpr const char* stays_laminar = "A line that is laminar at the reference flow may not be at a larger one, "
                                             "nor at a lower viscosity: check the Reynolds number at the duty.";

}  // namespace duty

inline Outcome<std::tuple<Flow, Head, Flow>> duty_on_system_points(Series<Flow> flows, Series<Head> heads,
                                                                   Series<Flow> system_flows, Series<Head> system_heads,
                                                                   Count pumps)
{
    const curves::Knots<Flow, Head> one(flows, heads);
    const duty::InParallel all(one, pumps.value);
    const curves::Knots<Flow, Head> system(system_flows, system_heads);
    if (!(system.first() < all.last() && all.first() < system.last()))
        return NoValue{
            .status = CUTWATER_NO_ANSWER,
            .argument = "system_flows",
            .sentence =
                "the system's curve, which begins at {0} and ends at {1}, and the pumps' have no flow in common",
            .numbers = {number_in(system_flows.front(), units::m3h), number_in(system_flows.back(), units::m3h)}};
    const curves::Meetings found = duty::meetings_of(all, system);
    if (found.count != 1 || found.along) {
        NoValue why = curves::no_duty(found, std::max(all.first(), system.first()),
                                      std::min(all.last(), system.last()));
        if (found.count == 0 && found.last_gap > 0 && system.last() < all.last()) why.argument = "system_flows";
        return why;
    }
    const double flow = found.at[0];
    return std::tuple(Flow::from_value(flow), Head::from_value(curves::value_at(system, flow)),
                      Flow::from_value(flow / pumps.value));
}

inline constexpr auto duty_on_system_points_record = record<&duty_on_system_points>(
    {.name = "duty_on_system_points",
     .meaning = "Duty of one pump, or of equal pumps in parallel, on a system curve that is given by points",
     .also = "operating point|duty point|measured system curve|system curve points|parallel pumps|laminar line",
     .inputs = {curves::pump_flows(), curves::pump_heads(),
                series("system_flows", "Q_s,i", units::m3h, from(0), "flows of the system curve's points", 2,
                       Order::rising),
                series("system_heads", "H_s,i", units::metre, any, "heads that the system asks for at those flows", 2),
                duty::pumps()},
     .results = {duty::system_flow(), duty::system_head(), duty::flow_of_each()},
     .equation = "H_pump(Q/N) = H_system(Q), both curves read as by curve_head; all meetings over the flows that both "
                 "cover are looked for",
     .source = curves::duty_source,
     .cautions = {curves::drooping, curves::no_return, curves::own_losses, curves::same_liquid, caution::guide_only},
     .example = {"[0, 50, 100], [40, 38, 30], [0, 50, 100], [20, 22, 30], 1", "100, 30, 100",
                 "hand calculation: both curves end in that point"}},
    pairs::equal_length<"heads", "flows">(), pairs::equal_length<"system_heads", "system_flows">());

inline Outcome<std::tuple<Flow, Head, Flow>> duty_on_mixed_friction(Series<Flow> flows, Series<Head> heads,
                                                                    Head static_head, Flow reference_flow, Head laminar,
                                                                    Head turbulent, Ratio exponent, Count pumps)
{
    const curves::Knots<Flow, Head> one(flows, heads);
    const duty::InParallel all(one, pumps.value);
    const duty::MixedFriction system{static_head.value(), reference_flow.value(), laminar.value(), turbulent.value(),
                                     exponent.value()};
    const auto gap_at = [&](std::size_t i) { return all.y(i) - system.head(all.x(i)); };
    const std::size_t last = all.size() - 1;
    curves::Meetings ends;  // the pump's head falls and the system's does not: they meet once at the most
    ends.first_gap = ends.nearest_gap = gap_at(0);
    ends.nearest_at = all.first();
    ends.last_gap = gap_at(last);
    if (ends.first_gap < 0 || ends.last_gap > 0) return curves::no_duty(ends, all.first(), all.last());
    std::size_t low = 0;
    while (low + 1 < last && gap_at(low + 1) >= 0) ++low;
    const curves::Piece piece = curves::piece_at(all, low);
    const double flow = piece.x(
        curves::sign_change([&](double t) { return piece.value(t) - system.head(piece.x(t)); }, 0, 1));
    return std::tuple(Flow::from_value(flow), Head::from_value(system.head(flow)),
                      Flow::from_value(flow / pumps.value));
}

inline constexpr auto duty_on_mixed_friction_record = record<&duty_on_mixed_friction>(
    {.name = "duty_on_mixed_friction",
     .meaning = "Duty of one pump, or of equal pumps in parallel, on a system with laminar and turbulent friction",
     .also = "operating point|duty point|laminar line|viscous line|filter|system curve with exponent|parallel pumps",
     .inputs = {curves::flows("flows of the pump curve's points"),
                curves::heads("heads of the pump curve's points, falling"), curves::static_head(),
                duty::reference_flow(), duty::laminar_friction(), duty::turbulent_friction(), duty::exponent(),
                duty::pumps()},
     .results = {duty::system_flow(), duty::system_head(), duty::flow_of_each()},
     .equation = "H_pump(Q/N) = H_s + h_1 Q/Q_r + h_2 (Q/Q_r)^m",
     .source = duty::mixed_source,
     .cautions = {duty::stays_laminar, curves::same_liquid, curves::no_return, curves::own_losses, caution::guide_only},
     .example = {"[0, 50, 100], [40, 38, 30], 10, 100, 15, 5, 2, 1", "100, 30, 100",
                 "hand calculation: 10 + 15 + 5 = 30, the last point"}},
    pairs::equal_length<"heads", "flows">(), curves::falls<"heads">());

inline Points<Head> mixed_friction_heads(Series<Flow> flows, Head static_head, Flow reference_flow, Head laminar,
                                         Head turbulent, Ratio exponent)
{
    const duty::MixedFriction system{static_head.value(), reference_flow.value(), laminar.value(), turbulent.value(),
                                     exponent.value()};
    Points<Head> heads;
    heads.reserve(flows.size());
    for (std::size_t i = 0; i < flows.size(); ++i) heads.push_back(Head::from_value(system.head(flows[i].value())));
    return heads;
}

inline constexpr Record<&mixed_friction_heads> mixed_friction_heads_record{
    .name = "mixed_friction_heads",
    .meaning = "System curve with laminar and turbulent friction, point by point",
    .also = "system curve|laminar line|system head curve",
    .inputs = {series("flows", "Q_i", units::m3h, from(0), "flows at which the system's head is wanted", 1),
               curves::static_head(), duty::reference_flow(), duty::laminar_friction(), duty::turbulent_friction(),
               duty::exponent()},
    .results = {output_series<Head>("system_heads", "H_i", units::metre,
                                    "heads that the system asks for at those flows")},
    .equation = "H_i = H_s + h_1 Q_i/Q_r + h_2 (Q_i/Q_r)^m",
    .source = duty::mixed_source,
    .cautions = {duty::stays_laminar},
    .example = {"[0, 50, 100], 10, 100, 15, 5, 2", "[10, 18.75, 30]", "hand calculation"}};

}  // namespace cutwater::formulas

// How two unlike pumps in parallel share a system's flow.
#pragma once

#include "formulas/curves/combined.hpp"

namespace cutwater::formulas {

/// Solved for the common head: with it both pumps' flows fall, and the head the system takes for their sum falls too, so
/// there is one answer at most.
inline Outcome<std::tuple<Flow, Head, Flow, Flow, Delivering>> flow_balance(Series<Flow> flows_1, Series<Head> heads_1, Series<Flow> flows_2,
                                                                            Series<Head> heads_2, Head static_head, SystemResistance resistance)
{
    const curves::Knots<Flow, Head> one(flows_1, heads_1), two(flows_2, heads_2);
    const auto taken = [&](double head) {
        const double flow = curves::delivered(one, head) + curves::delivered(two, head);
        return static_head.value() + resistance.value() * flow * flow;
    };
    const double highest = std::max(one.y(0), two.y(0));
    const double end_1 = one.y(one.size() - 1), end_2 = two.y(two.size() - 1);
    const double lowest = std::max(end_1, end_2);
    const auto in_metres = [](double head) { return number_in(Head::from_value(head), units::metre); };
    if (taken(highest) > highest)
        return NoValue{CUTWATER_NO_ANSWER, "static_head", "the static head, {0}, lies above the higher closed-valve head, {1}: neither pump delivers",
                       {number_in(static_head, units::metre), in_metres(highest)}};
    if (!(taken(lowest) >= lowest))
        return NoValue{CUTWATER_NO_ANSWER, end_1 >= end_2 ? "flows_1" : "flows_2",
                       "this curve is too short: at its last head, {0}, the system takes only {1}", {in_metres(lowest), in_metres(taken(lowest))}};
    const double head = curves::sign_change([&](double h) { return taken(h) - h; }, lowest, highest);
    const double flow_1 = curves::delivered(one, head);
    const double flow_2 = curves::delivered(two, head);
    const Delivering who = head >= two.y(0) ? Delivering::first : head >= one.y(0) ? Delivering::second : Delivering::both;
    return std::tuple(Flow::from_value(flow_1 + flow_2), Head::from_value(head), Flow::from_value(flow_1), Flow::from_value(flow_2), who);
}

namespace curves {

template <std::size_t I, std::size_t K>
bool equal_length(Series<Flow> a, Series<Head> b, Series<Flow> c, Series<Head> d, Head, SystemResistance)
{
    const std::size_t sizes[] = {a.size(), b.size(), c.size(), d.size()};
    return sizes[I] == sizes[K];
}

}  // namespace curves

inline constexpr Record<&flow_balance> flow_balance_record{
    .name = "flow_balance",
    .meaning = "Duty of two unlike pumps in parallel on one system, and each pump's share",
    .inputs = {series("flows_1", "Q_1,i", units::m3h, from(0), "flows of pump 1, from 0 on", 2, Order::rising),
               series("heads_1", "H_1,i", units::metre, any, "heads of pump 1, falling", 2),
               series("flows_2", "Q_2,i", units::m3h, from(0), "flows of pump 2, from 0 on", 2, Order::rising),
               series("heads_2", "H_2,i", units::metre, any, "heads of pump 2, falling", 2),
               input("static_head", "H_s", units::metre, any, "head of the system at no flow"),
               input("resistance", "k", units::h2m5, from(0), "system resistance: friction head over flow squared")},
    .results = {output("total_flow", "Q", units::m3h, "flow through the system"), output("head", "H", units::metre, "head common to both"),
                output("flow_1", "Q_1", units::m3h, "flow of pump 1"), output("flow_2", "Q_2", units::m3h, "flow of pump 2"),
                output_word<Delivering>("delivering", "who", "whether one of them delivers nothing, the head being above its closed-valve head")},
    .equation = "Q = Q_1(H) + Q_2(H), H = H_s + k Q^2",
    .relations = {{"heads_1", &curves::equal_length<0, 1>, curves::same_length},
                  {"heads_2", &curves::equal_length<2, 3>, curves::same_length},
                  {"heads_1", [](Series<Flow>, Series<Head> b, Series<Flow>, Series<Head>, Head, SystemResistance) { return curves::falls(b); }, curves::must_fall},
                  {"heads_2", [](Series<Flow>, Series<Head>, Series<Flow>, Series<Head> b, Head, SystemResistance) { return curves::falls(b); }, curves::must_fall},
                  {"flows_1", [](Series<Flow> a, Series<Head>, Series<Flow>, Series<Head>, Head, SystemResistance) { return a.front() == Flow{}; },
                   curves::from_closed_valve},
                  {"flows_2", [](Series<Flow>, Series<Head>, Series<Flow> a, Series<Head>, Head, SystemResistance) { return a.front() == Flow{}; },
                   curves::from_closed_valve}},
    .source = curves::parallel_source,
    .cautions = {curves::no_return, curves::own_losses, caution::closed_valve},
    .example = {"[0, 50, 100], [40, 38, 30], [0, 60], [38, 30], 30, 0", "160, 30, 100, 60, \"both pumps\"", "hand calculation: both curves end at 30 m"}};

}  // namespace cutwater::formulas

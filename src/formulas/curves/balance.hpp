// How two unlike pumps in parallel share a system's flow.
#pragma once

#include "formulas/curves/combined.hpp"

#include <iterator>

namespace cutwater::formulas {

namespace curves {

template <std::size_t N>
struct Balance {
    double head = 0;
    double flows[N]{};
};

/// Solved for the common head: with it every pump's flow falls, and the head the system takes for their sum falls too,
/// so there is one answer at most. The system's head at a flow must not fall with it.
template <std::size_t N, class SystemHead>
Outcome<Balance<N>> balanced(const Knots<Flow, Head> (&pumps)[N], SystemHead system, const char* static_argument)
{
    const auto taken = [&](double head) {
        double flow = 0;
        for (const auto& pump : pumps) flow += delivered(pump, head);
        return system(flow);
    };
    const Head static_head = Head::from_value(system(0));
    double highest = pumps[0].y(0);
    double lowest = pumps[0].y(pumps[0].size() - 1);
    std::size_t shortest = 0;  // the pump whose curve ends at the highest head
    for (std::size_t i = 1; i < N; ++i) {
        highest = std::max(highest, pumps[i].y(0));
        const double end = pumps[i].y(pumps[i].size() - 1);
        if (end > lowest) {
            lowest = end;
            shortest = i;
        }
    }
    constexpr const char* flows[] = {"flows_1", "flows_2", "flows_3"};
    constexpr const char* too_short[] = {
        "the curve of pump 1 is too short: at its last head, {0}, the system takes only {1}",
        "the curve of pump 2 is too short: at its last head, {0}, the system takes only {1}",
        "the curve of pump 3 is too short: at its last head, {0}, the system takes only {1}"};
    static_assert(N <= std::size(flows));
    const auto in_metres = [](double head) { return number_in(Head::from_value(head), units::metre); };
    if (static_head.value() >= highest)
        return NoValue{CUTWATER_NO_ANSWER,
                       static_argument,
                       "the static head, {0}, is not below the highest closed-valve head, {1}: no pump delivers",
                       {number_in(static_head, units::metre), in_metres(highest)}};
    if (!(taken(lowest) >= lowest))
        return NoValue{CUTWATER_NO_ANSWER,
                       flows[shortest],
                       too_short[shortest],
                       {in_metres(lowest), in_metres(taken(lowest))}};
    Balance<N> balance{.head = sign_change([&](double h) { return taken(h) - h; }, lowest, highest)};
    for (std::size_t i = 0; i < N; ++i) balance.flows[i] = delivered(pumps[i], balance.head);
    return balance;
}

template <std::size_t N>
Outcome<Balance<N>> balanced(const Knots<Flow, Head> (&pumps)[N], Head static_head, SystemResistance resistance)
{
    return balanced(
        pumps, [&](double flow) { return static_head.value() + resistance.value() * flow * flow; }, "static_head");
}

/// Which of two pumps delivers at a common head.
inline Delivering delivering_at(const Knots<Flow, Head>& first, const Knots<Flow, Head>& second, double head)
{
    return head >= second.y(0) ? Delivering::first : head >= first.y(0) ? Delivering::second : Delivering::both;
}

}  // namespace curves

inline Outcome<std::tuple<Flow, Head, Flow, Flow, Delivering>> flow_balance(Series<Flow> flows_1, Series<Head> heads_1,
                                                                            Series<Flow> flows_2, Series<Head> heads_2,
                                                                            Head static_head,
                                                                            SystemResistance resistance)
{
    const curves::Knots<Flow, Head> pumps[] = {{flows_1, heads_1}, {flows_2, heads_2}};
    const auto balance = curves::balanced(pumps, static_head, resistance);
    if (!balance) return balance.why();
    const auto& [head, flows] = *balance;
    return std::tuple(Flow::from_value(flows[0] + flows[1]), Head::from_value(head), Flow::from_value(flows[0]),
                      Flow::from_value(flows[1]), curves::delivering_at(pumps[0], pumps[1], head));
}

inline constexpr auto flow_balance_record = record<&flow_balance>(
    {.name = "flow_balance",
     .meaning = "Duty of two unlike pumps in parallel on one system, and each pump's share",
     .also = "load sharing|two pumps give less than twice|pumps in parallel",
     .inputs = {curves::flows_of<1>(), curves::falling_heads_of<1>(), curves::flows_of<2>(),
                curves::falling_heads_of<2>(), curves::static_head(), curves::resistance()},
     .results = {output("total_flow", "Q", units::m3h, "flow through the system"),
                 output("head", "H", units::metre, "head common to both"),
                 output("flow_1", "Q_1", units::m3h, "flow of pump 1"),
                 output("flow_2", "Q_2", units::m3h, "flow of pump 2"),
                 output_word<Delivering>(
                     "delivering", "who",
                     "whether one of them delivers nothing, the head being above its closed-valve head")},
     .equation = "Q = Q_1(H) + Q_2(H), H = H_s + k Q^2",
     .source = curves::parallel_source,
     .cautions = {curves::no_return, curves::own_losses, caution::closed_valve},
     .example = {"[0, 50, 100], [40, 38, 30], [0, 60], [38, 30], 30, 0", "160, 30, 100, 60, \"both pumps\"",
                 "hand calculation: both curves end at 30 m"}},
    pairs::equal_length<"heads_1", "flows_1">(), pairs::equal_length<"heads_2", "flows_2">(),
    curves::falls<"heads_1">(), curves::begins_at_closed_valve<"flows_1">(), curves::falls<"heads_2">(),
    curves::begins_at_closed_valve<"flows_2">());

}  // namespace cutwater::formulas

// How three unlike pumps in parallel share a system's flow.
#pragma once

#include "formulas/curves/balance.hpp"

#include <algorithm>

namespace cutwater::formulas {

enum class DeliveringOfThree {
    first,
    second,
    first_second,
    third,
    first_third,
    second_third,
    all
};  // bits 1, 2, 4, less one

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<7> words_of<formulas::DeliveringOfThree>{
    "pump 1 alone", "pump 2 alone", "pumps 1 and 2", "pump 3 alone", "pumps 1 and 3", "pumps 2 and 3", "all pumps"};

}  // namespace cutwater

namespace cutwater::formulas {

inline Outcome<std::tuple<Flow, Head, Flow, Flow, Flow, DeliveringOfThree>> flow_balance_of_three(
    Series<Flow> flows_1, Series<Head> heads_1, Series<Flow> flows_2, Series<Head> heads_2, Series<Flow> flows_3,
    Series<Head> heads_3, Head static_head, SystemResistance resistance)
{
    const curves::Knots<Flow, Head> pumps[] = {{flows_1, heads_1}, {flows_2, heads_2}, {flows_3, heads_3}};
    const auto balance = curves::balanced(pumps, static_head, resistance);
    if (!balance) return balance.why();
    const double highest = std::max({pumps[0].y(0), pumps[1].y(0), pumps[2].y(0)});
    int who = 0;  // never nobody: the head may round to the highest closed-valve head
    for (std::size_t i = 0; i < 3; ++i)
        if (balance->head < pumps[i].y(0) || pumps[i].y(0) == highest) who |= 1 << i;
    return std::tuple(Flow::from_value(balance->flows[0] + balance->flows[1] + balance->flows[2]),
                      Head::from_value(balance->head), Flow::from_value(balance->flows[0]),
                      Flow::from_value(balance->flows[1]), Flow::from_value(balance->flows[2]),
                      static_cast<DeliveringOfThree>(who - 1));
}

inline constexpr auto flow_balance_of_three_record = record<&flow_balance_of_three>(
    {.name = "flow_balance_of_three",
     .meaning = "Duty of three unlike pumps in parallel on one system, and each pump's share",
     .also = "load sharing|pumps in parallel",
     .inputs = {curves::flows_of<1>(), curves::falling_heads_of<1>(), curves::flows_of<2>(),
                curves::falling_heads_of<2>(), curves::flows_of<3>(), curves::falling_heads_of<3>(),
                curves::static_head(), curves::resistance()},
     .results = {output("total_flow", "Q", units::m3h, "flow through the system"),
                 output("head", "H", units::metre, "head common to all"),
                 output("flow_1", "Q_1", units::m3h, "flow of pump 1"),
                 output("flow_2", "Q_2", units::m3h, "flow of pump 2"),
                 output("flow_3", "Q_3", units::m3h, "flow of pump 3"),
                 output_word<DeliveringOfThree>(
                     "delivering", "who",
                     "the pumps that deliver; the head is above the closed-valve head of any other")},
     .equation = "Q = Q_1(H) + Q_2(H) + Q_3(H), H = H_s + k Q^2; a pump gives nothing above its own closed-valve head",
     .source = curves::parallel_source,
     .cautions = {curves::no_return, curves::own_losses, caution::closed_valve,
                  "More than three: combine with two_curves_in_parallel, find the duty_head, and read each share with "
                  "flow_at_head; near a kink of the "
                  "sum its rounding shows, so give the curves many points. On a system given by points put two of them "
                  "together "
                  "so and take flow_balance_on_system_points."},
     .example = {"[0, 50, 100], [40, 38, 30], [0, 60], [38, 30], [0, 20], [29, 10], 30, 0",
                 "160, 30, 100, 60, 0, \"pumps 1 and 2\"",
                 "hand calculation: the first two curves end at 30 m, above the third's closed-valve head"}},
    pairs::equal_length<"heads_1", "flows_1">(), pairs::equal_length<"heads_2", "flows_2">(),
    pairs::equal_length<"heads_3", "flows_3">(), curves::falls<"heads_1">(),
    curves::begins_at_closed_valve<"flows_1">(), curves::falls<"heads_2">(),
    curves::begins_at_closed_valve<"flows_2">(), curves::falls<"heads_3">(),
    curves::begins_at_closed_valve<"flows_3">());

}  // namespace cutwater::formulas

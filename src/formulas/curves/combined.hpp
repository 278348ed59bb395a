// Pumps working together: in parallel flows add at one head, in series heads add at one flow.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/curves/meeting.hpp"
#include "formulas/curves/scaled.hpp"
#include "formulas/curves/value.hpp"

namespace cutwater::formulas {

enum class Delivering { both, first, second };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<3> words_of<formulas::Delivering>{"both pumps", "pump 1 alone", "pump 2 alone"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace curves {

/// What a pump behind its non-return valve delivers against a head: nothing from its own closed-valve head on.
inline double delivered(const Knots<Flow, Head>& pump, double head)
{
    return head >= pump.y(0) ? 0 : abscissa_of(pump, head);
}

inline constexpr const char* parallel_source =
    "flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it)";
inline constexpr const char* series_source =
    "heads add at the same flow; common practice, as in ISO 17769-1:2012, series operation (from memory of it)";
inline constexpr const char* drooping_in_parallel = "Pumps in parallel need stable curves: with drooping ones the flow "
                                                    "may swing from pump to pump; see curve_is_stable.";
inline constexpr const char* no_return = "Every pump in parallel needs a non-return valve, and one that delivers "
                                         "nothing runs at closed valve: see closed_valve_heating_rate.";
inline constexpr const char* own_losses =
    "Losses between each pump and the common pipe are left out: take them off each pump's curve first.";
inline constexpr const char* series_pressure =
    "In series the second casing and seal stand the first pump's outlet pressure: check their ratings.";

using TwoCurves = std::tuple<Points<Flow>, Points<Head>>;

}  // namespace curves

inline std::tuple<Points<Flow>, Points<Head>> curve_in_parallel(Series<Flow> flows, Series<Head> heads, Count pumps)
{
    return {curves::scaled(flows, pumps.value), curves::scaled(heads, 1)};
}

inline constexpr auto curve_in_parallel_record = record<&curve_in_parallel>(
    {.name = "curve_in_parallel",
     .meaning = "Head curve of equal pumps in parallel",
     .also = "two pumps|pumps in parallel|standby pump started",
     .inputs = {curves::flows("flows of one pump's points"), curves::heads("heads of one pump's points"),
                input("pumps", "z", units::count, between(1, 100), "number of pumps running")},
     .results = {output_series<Flow>("total_flows", "Q_sum,i", units::m3h, "flows of all together"),
                 output_series<Head>("total_heads", "H_sum,i", units::metre, "heads of all together")},
     .equation = "Q_sum = z Q at the same H",
     .source = curves::parallel_source,
     .cautions = {curves::drooping_in_parallel, curves::no_return, curves::own_losses},
     .example = {"[0, 50, 100], [40, 38, 30], 2", "[0, 100, 200], [40, 38, 30]", "hand calculation"}},
    pairs::equal_length<"heads", "flows">());

inline std::tuple<Points<Flow>, Points<Head>> curve_in_series(Series<Flow> flows, Series<Head> heads, Count pumps)
{
    return {curves::scaled(flows, 1), curves::scaled(heads, pumps.value)};
}

inline constexpr auto curve_in_series_record = record<&curve_in_series>(
    {.name = "curve_in_series",
     .meaning = "Head curve of equal pumps or stages in series",
     .also = "booster|pumps in series|stages",
     .inputs = {curves::flows("flows of one pump's points"), curves::heads("heads of one pump's points"),
                input("pumps", "z", units::count, between(1, 100), "number of pumps or stages")},
     .results = {output_series<Flow>("total_flows", "Q_sum,i", units::m3h, "flows of all together"),
                 output_series<Head>("total_heads", "H_sum,i", units::metre, "heads of all together")},
     .equation = "H_sum = z H at the same Q",
     .source = curves::series_source,
     .cautions = {curves::series_pressure},
     .example = {"[0, 50, 100], [40, 38, 30], 2", "[0, 50, 100], [80, 76, 60]", "hand calculation"}},
    pairs::equal_length<"heads", "flows">());

/// One point for every head that either curve lists, from the higher closed-valve head down to where the first curve
/// ends.
inline std::tuple<Points<Flow>, Points<Head>> two_curves_in_parallel(Series<Flow> flows_1, Series<Head> heads_1,
                                                                     Series<Flow> flows_2, Series<Head> heads_2)
{
    const curves::Knots<Flow, Head> one(flows_1, heads_1), two(flows_2, heads_2);
    const double lowest = std::max(one.y(one.size() - 1), two.y(two.size() - 1));
    curves::TwoCurves sum;
    std::size_t i = 0, k = 0;
    double flow_before = -1;
    while (true) {
        const bool take_one = i < one.size() && (k >= two.size() || one.y(i) >= two.y(k));
        if (!take_one && k >= two.size()) break;
        const double head = take_one ? one.y(i) : two.y(k);
        if (head < lowest) break;
        while (i < one.size() && one.y(i) >= head) ++i;
        while (k < two.size() && two.y(k) >= head) ++k;
        const double flow = curves::delivered(one, head) + curves::delivered(two, head);
        if (!(flow > flow_before)) continue;  // two heads so close that the flow is the same number
        flow_before = flow;
        std::get<0>(sum).push_back(Flow::from_value(flow));
        std::get<1>(sum).push_back(Head::from_value(head));
    }
    return sum;
}

inline constexpr auto two_curves_in_parallel_record = record<&two_curves_in_parallel>(
    {.name = "two_curves_in_parallel",
     .meaning = "Head curve of two unlike pumps in parallel, each behind a non-return valve",
     .also = "unlike pumps in parallel|two pumps",
     .inputs = {curves::flows_of<1>(), curves::falling_heads_of<1>(), curves::flows_of<2>(),
                curves::falling_heads_of<2>()},
     .results = {output_series<Flow>("total_flows", "Q_sum,i", units::m3h,
                                     "flows of both together, down to the head at which one curve ends"),
                 output_series<Head>("total_heads", "H_sum,i", units::metre, "heads of both together")},
     .equation = "Q_sum(H) = Q_1(H) + Q_2(H); a pump gives nothing above its own closed-valve head",
     .source = curves::parallel_source,
     .cautions = {curves::no_return, curves::own_losses,
                  "Exact at its points only: a curve drawn through them smooths the kink where the weaker pump begins "
                  "to deliver. For shares use flow_balance, "
                  "flow_balance_of_three or flow_at_head."},
     .example = {"[0, 50, 100], [40, 38, 30], [0, 60], [38, 30]", "[0, 50, 160], [40, 38, 30]", "hand calculation"}},
    pairs::equal_length<"heads_1", "flows_1">(), pairs::equal_length<"heads_2", "flows_2">(),
    curves::falls<"heads_1">(), curves::begins_at_closed_valve<"flows_1">(), curves::falls<"heads_2">(),
    curves::begins_at_closed_valve<"flows_2">());

/// One point for every flow that either curve lists and both reach.
inline Outcome<std::tuple<Points<Flow>, Points<Head>>> two_curves_in_series(Series<Flow> flows_1, Series<Head> heads_1,
                                                                            Series<Flow> flows_2, Series<Head> heads_2)
{
    const curves::Knots<Flow, Head> one(flows_1, heads_1), two(flows_2, heads_2);
    const double begin = std::max(one.first(), two.first());
    const double end = std::min(one.last(), two.last());
    if (!(begin < end))
        return NoValue{CUTWATER_NO_ANSWER,
                       "flows_2",
                       "the two curves have no flows in common: one begins at {0}, where the other has ended at {1}",
                       {number_in(Flow::from_value(begin), units::m3h), number_in(Flow::from_value(end), units::m3h)}};
    curves::TwoCurves sum;
    std::size_t i = 0, k = 0;
    while (i < one.size() || k < two.size()) {
        const bool take_one = i < one.size() && (k >= two.size() || one.x(i) <= two.x(k));
        const double flow = take_one ? one.x(i) : two.x(k);
        if (i < one.size() && one.x(i) == flow) ++i;
        if (k < two.size() && two.x(k) == flow) ++k;
        if (flow < begin || flow > end) continue;
        std::get<0>(sum).push_back(Flow::from_value(flow));
        std::get<1>(sum).push_back(Head::from_value(curves::value_at(one, flow) + curves::value_at(two, flow)));
    }
    return sum;
}

inline constexpr auto two_curves_in_series_record = record<&two_curves_in_series>(
    {.name = "two_curves_in_series",
     .meaning = "Head curve of two unlike pumps in series",
     .also = "booster|unlike pumps in series",
     .inputs = {curves::flows_of<1>("flows of pump 1"), curves::heads_of<1>("heads of pump 1"),
                curves::flows_of<2>("flows of pump 2"), curves::heads_of<2>("heads of pump 2")},
     .results = {output_series<Flow>("total_flows", "Q_sum,i", units::m3h, "flows that both curves reach"),
                 output_series<Head>("total_heads", "H_sum,i", units::metre, "heads of both together")},
     .equation = "H_sum(Q) = H_1(Q) + H_2(Q)",
     .source = curves::series_source,
     .cautions = {curves::series_pressure,
                  "Beyond the smaller pump's last flow it is a throttle and nothing is told here."},
     .example = {"[0, 50, 100], [40, 38, 30], [0, 50], [20, 18]", "[0, 50], [60, 56]", "hand calculation"}},
    pairs::equal_length<"heads_1", "flows_1">(), pairs::equal_length<"heads_2", "flows_2">());

}  // namespace cutwater::formulas

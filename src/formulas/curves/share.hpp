// The flow of one pump at a head that others set: its share of a parallel set of any number of pumps.
#pragma once

#include "formulas/curves/combined.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas {

enum class Share { delivering, pushed_back };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::Share>{"delivering", "pushed back"};

}  // namespace cutwater

namespace cutwater::formulas {

inline Outcome<std::tuple<Flow, Share>> flow_at_head(Series<Flow> flows, Series<Head> heads, Head head)
{
    const curves::Knots<Flow, Head> pump(flows, heads);
    const double last = pump.y(pump.size() - 1);
    const double asked = curves::snapped_to(last, head.value());
    if (asked < last)
        return NoValue{
            CUTWATER_OUT_OF_INTERVAL,
            "head",
            "{0} lies below the curve's last head, {1}: a curve is not extrapolated; give a curve that reaches so far",
            {number_in(head, units::metre), number_in(Head::from_value(last), units::metre)}};
    const double flow = curves::delivered(pump, asked);
    return std::tuple(Flow::from_value(flow), flow > 0 ? Share::delivering : Share::pushed_back);
}

inline constexpr auto flow_at_head_record = record<&flow_at_head>(
    {.name = "flow_at_head",
     .meaning =
         "Flow of a pump behind its non-return valve at a given head: its share when others in parallel set the head",
     .also = "load sharing|share of one pump|check valve",
     .inputs = {curves::flows("flows of the pump curve's points, from 0 on"),
                curves::heads("heads of the curve's points, falling"),
                input("head", "H", units::metre, limits::head_m,
                      "head that the pump works against; not below the curve's last")},
     .results = {output("flow", "Q", units::m3h, "flow at that head; 0 from the closed-valve head on"),
                 output_word<Share>("share", "who", "whether the pump delivers or is pushed back to no flow")},
     .equation = "H_pump(Q) = H; Q = 0 where H >= H_pump(0)",
     .source = curves::parallel_source,
     .cautions = {curves::no_return, curves::own_losses, caution::closed_valve},
     .example = {"[0, 50, 100], [40, 38, 30], 38", "50, \"delivering\"", "the curve goes through its points"}},
    pairs::equal_length<"heads", "flows">(), curves::falls<"heads">(), curves::begins_at_closed_valve<"flows">());

}  // namespace cutwater::formulas

// The shape of a head curve: rise to closed valve, stable or not.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/curves/value.hpp"
#include "formulas/limits.hpp"

#include <numbers>

namespace cutwater::formulas {

enum class CurveShape { stable, flat, drooping, dipping };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<4> words_of<formulas::CurveShape>{"stable", "flat", "drooping", "dipping"};

}  // namespace cutwater

namespace cutwater::formulas {

inline Outcome<Ratio> shutoff_head_rise(Series<Flow> flows, Series<Head> heads, Flow rated_flow)
{
    const Outcome<Head> rated = curves::read(flows, heads, rated_flow, "rated_flow", units::m3h);
    if (!rated) return rated.why();
    return (heads.front() - *rated) / *rated;
}

inline constexpr auto shutoff_head_rise_record = record<&shutoff_head_rise>(
    {.name = "shutoff_head_rise",
     .meaning = "Rise of the head from the rated flow to closed valve, as a part of the rated head",
     .also = "dead head|deadhead|shut-off head|shutoff|rise to shut-off|closed valve head",
     .inputs = {curves::flows("flows of the curve's points, from 0 on"),
                series("heads", "H_i", units::metre, limits::head_above_0_m, "heads of the curve's points", 2),
                input("rated_flow", "Q_r", units::m3h, above(0), "rated flow")},
     .results = {output("head_rise", "(H_0 - H_r)/H_r", units::number,
                        "0.12 for a rise of 12 %; negative when the head falls towards closed valve")},
     .equation = "(H_0 - H_r)/H_r, H_0 at no flow, H_r of the curve at Q_r",
     .source = "definition; common practice, as in ISO 13709:2009, head rise from rated point to shut-off (from memory "
               "of it)",
     .cautions = {"For pumps in parallel a rise of 10 % or more is commonly asked; pressure parts must stand the "
                  "closed-valve head."},
     .example = {"[0, 50, 100], [40, 38, 32], 100", "0.25", "hand calculation: 8/32"}},
    pairs::equal_length<"heads", "flows">(),
    relation<"flows">([](Series<Flow> x) { return x.front() == Flow{}; },
                      "the curve must begin at closed valve, flow 0"));

inline std::tuple<CurveShape, Flow, Head> curve_is_stable(Series<Flow> flows, Series<Head> heads)
{
    std::size_t top = 0;
    bool rose = false, fell = false, level = false, rose_after_fall = false;
    for (std::size_t i = 1; i < heads.size(); ++i) {
        if (heads[i] > heads[top]) top = i;
        if (heads[i] > heads[i - 1]) {
            rose = true;
            rose_after_fall = rose_after_fall || fell;
        } else if (heads[i] < heads[i - 1]) {
            fell = true;
        } else {
            level = true;
        }
    }
    const CurveShape shape = rose_after_fall ? CurveShape::dipping
                             : rose          ? CurveShape::drooping
                             : level         ? CurveShape::flat
                                             : CurveShape::stable;
    return {shape, flows[top], heads[top]};
}

inline constexpr auto curve_is_stable_record = record<&curve_is_stable>(
    {.name = "curve_is_stable",
     .meaning = "Whether the head falls all the way with rising flow",
     .also = "drooping curve|hunting|shut-off head|stable curve",
     .inputs = {curves::flows(), curves::heads()},
     .results = {output_word<CurveShape>("shape", "shape",
                                         "stable: falls from point to point; flat: level between some; drooping: rises "
                                         "first; dipping: rises after it has fallen"),
                 output("top_flow", "Q_top", units::m3h, "flow of the greatest listed head"),
                 output("top_head", "H_top", units::metre, "greatest listed head")},
     .equation = "stable when every H_i is less than the one before it",
     .source = "stable and unstable curve, ISO 17769-1:2012 (from memory of it)",
     .cautions = {"Judged by the listed points: a droop between them, or below the first flow, is not seen.",
                  "Pumps in parallel, and systems with a flat curve, need a stable pump curve."},
     .example = {"[0, 20, 40, 60], [55, 57, 58, 50]", "\"drooping\", 40, 58", "by inspection"}},
    pairs::equal_length<"heads", "flows">());

inline Flow flow_through_bore(Length bore, Velocity velocity) { return std::numbers::pi / 4 * bore * bore * velocity; }

inline constexpr Record<&flow_through_bore> flow_through_bore_record{
    .name = "flow_through_bore",
    .meaning = "Flow that a bore carries at a mean velocity",
    .inputs = {input("bore", "d", units::mm, limits::bore_mm, "inside diameter"),
               input("velocity", "v", units::ms, from(0), "mean velocity")},
    .results = {output("flow", "Q", units::m3h, "volume flow")},
    .equation = "Q = pi/4 d^2 v",
    .source = "continuity; common practice",
    .example = {"150, 2", "127.23", "hand calculation"}};

}  // namespace cutwater::formulas

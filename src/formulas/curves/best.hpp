// The best efficiency point of a curve.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/curves/value.hpp"

namespace cutwater::formulas {

namespace curves {

struct Best {
    double flow;
    double efficiency;
};

/// A curve read point by point has its peak at a point, so the peak is taken from a parabola through the three points
/// around it.
inline Outcome<Best> best_point(const Series<Flow>& flows, const Series<Fraction>& efficiencies)
{
    const Knots<Flow, Fraction> knots(flows, efficiencies);
    const std::size_t last = knots.size() - 1;
    const auto flow = [&](std::size_t i) { return number_in(flows[i], units::m3h); };
    std::size_t top = 0;
    std::size_t another = 0;  // the last point as high as the top
    for (std::size_t i = 1; i <= last; ++i) {
        if (knots.y(i) > knots.y(top)) top = another = i;
        if (knots.y(i) == knots.y(top)) another = i;
    }
    if (another > top + 1)
        return NoValue{CUTWATER_SEVERAL_ANSWERS,
                       "efficiencies",
                       "the efficiency is equally high at {0} and at {1}: the best point cannot be told",
                       {flow(top), flow(another)}};
    if (top == last || another == 0)
        return NoValue{CUTWATER_NO_ANSWER,
                       "flows",
                       "the efficiency is highest at the end of the curve, {0}: the best point may lie beyond it; give "
                       "points on both sides",
                       {flow(top)}};
    const std::size_t middle = top == 0 ? 1 : top;
    const double x0 = knots.x(middle - 1), x1 = knots.x(middle), x2 = knots.x(middle + 1);
    const double y0 = knots.y(middle - 1), y1 = knots.y(middle), y2 = knots.y(middle + 1);
    const double rise = (y1 - y0) / (x1 - x0);
    const double bend = ((y2 - y1) / (x2 - x1) - rise) / (x2 - x0);
    const double at = 0.5 * (x0 + x1) - rise / (2 * bend);
    const double best = y0 + (at - x0) * (rise + bend * (at - x1));
    if (best > 1)
        return NoValue{CUTWATER_NO_ANSWER,
                       "efficiencies",
                       "the parabola through the three highest points rises above 1: give more points around {0}",
                       {flow(middle)}};
    return Best{at, best};
}

inline constexpr const char* best_equation =
    "peak of the parabola through the point of highest efficiency and its two neighbours";
inline constexpr const char* best_source =
    "best efficiency point by ISO 17769-1:2012 (from memory of it); the parabola is common practice";

}  // namespace curves

inline Outcome<Flow> best_efficiency_flow(Series<Flow> flows, Series<Fraction> efficiencies)
{
    const auto best = curves::best_point(flows, efficiencies);
    if (!best) return best.why();
    return Flow::from_value(best->flow);
}

inline constexpr auto best_efficiency_flow_record = record<&best_efficiency_flow>(
    {.name = "best_efficiency_flow",
     .meaning = "Flow at which a pump's efficiency is highest",
     .also = "BEP|best efficiency point",
     .inputs = {series("flows", "Q_i", units::m3h, from(0), "flows of the curve's points", 3, Order::rising),
                series("efficiencies", "eta_i", units::fraction, between(0, 1), "efficiencies of the curve's points",
                       3)},
     .results = {output("flow", "Q_BEP", units::m3h, "best efficiency flow")},
     .equation = curves::best_equation,
     .source = curves::best_source,
     .example = {"[60, 80, 100], [0.6, 0.7, 0.6]", "80", "by symmetry"}},
    pairs::equal_length<"efficiencies", "flows">());

inline Outcome<Fraction> best_efficiency(Series<Flow> flows, Series<Fraction> efficiencies)
{
    const auto best = curves::best_point(flows, efficiencies);
    if (!best) return best.why();
    return Fraction{best->efficiency};
}

inline constexpr auto best_efficiency_record = record<&best_efficiency>(
    {.name = "best_efficiency",
     .meaning = "Highest efficiency of a pump's curve",
     .also = "BEP|best efficiency point",
     .inputs = {series("flows", "Q_i", units::m3h, from(0), "flows of the curve's points", 3, Order::rising),
                series("efficiencies", "eta_i", units::fraction, between(0, 1), "efficiencies of the curve's points",
                       3)},
     .results = {output("efficiency", "eta_BEP", units::fraction, "best efficiency")},
     .equation = curves::best_equation,
     .source = curves::best_source,
     .example = {"[60, 80, 100], [0.6, 0.7, 0.6]", "0.7", "by symmetry"}},
    pairs::equal_length<"efficiencies", "flows">());

}  // namespace cutwater::formulas

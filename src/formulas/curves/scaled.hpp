// Whole curves at another speed, with a trimmed impeller, on a viscous liquid.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/curves/best.hpp"
#include "formulas/similarity/affinity.hpp"
#include "formulas/similarity/trim.hpp"
#include "formulas/viscous/ratios.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas {

enum class TrimLaw { parabola, line };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::TrimLaw>{"parabola", "line"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace curves {

template <class Q>
Points<Q> scaled(const Series<Q>& series, double factor)
{
    Points<Q> points;
    points.reserve(series.size());
    for (std::size_t i = 0; i < series.size(); ++i) points.push_back(series[i] * factor);
    return points;
}

inline double flow_factor(Length diameter, Length trimmed, TrimLaw law)
{
    const double ratio = Ratio(trimmed / diameter).value();
    return law == TrimLaw::parabola ? ratio : ratio * ratio;
}

using trim::least_cut;

inline double square_factor(double ratio) { return ratio * ratio; }

inline constexpr const char* law_meaning =
    "similarity line of the cut: parabola for the exponents (1, 2, 3) of flow, head and power, line for (2, 2, 4)";

}  // namespace curves

inline std::tuple<Points<Flow>, Points<Head>> curve_at_speed(Series<Flow> flows, Series<Head> heads,
                                                             RotationalSpeed speed, RotationalSpeed new_speed)
{
    const double ratio = Ratio(new_speed / speed).value();
    return {curves::scaled(flows, ratio), curves::scaled(heads, ratio * ratio)};
}

inline constexpr auto curve_at_speed_record = record<&curve_at_speed>(
    {.name = "curve_at_speed",
     .meaning = "Head curve of a pump at another speed",
     .also = "affinity laws|VFD curve|slow it down",
     .inputs = {curves::flows(), curves::heads(), affinity::speed(), affinity::new_speed()},
     .results = {output_series<Flow>("new_flows", "Q'_i", units::m3h, "flows at the new speed"),
                 output_series<Head>("new_heads", "H'_i", units::metre, "heads at the new speed")},
     .equation = "Q' = Q n'/n; H' = H (n'/n)^2",
     .source = affinity::source,
     .cautions = {caution::affinity, affinity::speeding_up, affinity::standard_range},
     .example = {"[0, 100], [40, 30], 2900, 1450", "[0, 50], [10, 7.5]", "hand calculation"}},
    pairs::equal_length<"heads", "flows">(),
    relation<"new_speed", "speed">([](RotationalSpeed m, RotationalSpeed n) { return affinity::in_limits(n, m); },
                                   affinity::ratio_limits));

inline std::tuple<Points<Flow>, Points<Power>> power_curve_at_speed(Series<Flow> flows, Series<Power> powers,
                                                                    RotationalSpeed speed, RotationalSpeed new_speed)
{
    const double ratio = Ratio(new_speed / speed).value();
    return {curves::scaled(flows, ratio), curves::scaled(powers, ratio * ratio * ratio)};
}

inline constexpr auto power_curve_at_speed_record = record<&power_curve_at_speed>(
    {.name = "power_curve_at_speed",
     .meaning = "Power curve of a pump at another speed",
     .also = "affinity laws|BHP curve|VFD curve",
     .inputs = {curves::flows(), series("powers", "P_i", units::kW, from(0), "power inputs of the curve's points", 2),
                affinity::speed(), affinity::new_speed()},
     .results = {output_series<Flow>("new_flows", "Q'_i", units::m3h, "flows at the new speed"),
                 output_series<Power>("new_powers", "P'_i", units::kW, "power inputs at the new speed")},
     .equation = "Q' = Q n'/n; P' = P (n'/n)^3",
     .source = affinity::source,
     .cautions = {caution::affinity, affinity::speeding_up, affinity::standard_range},
     .example = {"[0, 100], [8, 16], 2900, 1450", "[0, 50], [1, 2]", "hand calculation"}},
    pairs::equal_length<"powers", "flows">(),
    relation<"new_speed", "speed">([](RotationalSpeed m, RotationalSpeed n) { return affinity::in_limits(n, m); },
                                   affinity::ratio_limits));

inline std::tuple<Points<Flow>, Points<Head>> curve_at_trim(Series<Flow> flows, Series<Head> heads, Length diameter,
                                                            Length trimmed, TrimLaw law)
{
    const double ratio = Ratio(trimmed / diameter).value();
    return {curves::scaled(flows, curves::flow_factor(diameter, trimmed, law)),
            curves::scaled(heads, curves::square_factor(ratio))};
}

inline constexpr auto curve_at_trim_record = record<&curve_at_trim>(
    {.name = "curve_at_trim",
     .meaning = "Head curve of a pump with its impeller trimmed",
     .also = "impeller trim|cut impeller",
     .inputs = {curves::flows("flows of the curve's points at full diameter"),
                curves::heads("heads of the curve's points at full diameter"), trim::diameter(),
                trim::trimmed_diameter(), choice<TrimLaw>("trim_law", "law", curves::law_meaning, TrimLaw::parabola)},
     .results = {output_series<Flow>("trimmed_flows", "Q'_i", units::m3h, "flows at the trimmed diameter"),
                 output_series<Head>("trimmed_heads", "H'_i", units::metre, "heads at the trimmed diameter")},
     .equation = "Q' = Q (D'/D)^1 or ^2; H' = H (D'/D)^2",
     .source = trim::source,
     .cautions = {caution::trim, trim::two_sets, trim::efficiency, trim::npsh_after},
     .example = {"[0, 100], [50, 40], 250, 200", "[0, 80], [32, 25.6]", "hand calculation"}},
    pairs::equal_length<"heads", "flows">(), trim::not_grown, trim::near_enough);

inline std::tuple<Points<Flow>, Points<Power>> power_curve_at_trim(Series<Flow> flows, Series<Power> powers,
                                                                   Length diameter, Length trimmed, TrimLaw law)
{
    const double factor = curves::flow_factor(diameter, trimmed, law);
    return {curves::scaled(flows, factor),
            curves::scaled(powers, factor * curves::square_factor(Ratio(trimmed / diameter).value()))};
}

inline constexpr auto power_curve_at_trim_record = record<&power_curve_at_trim>(
    {.name = "power_curve_at_trim",
     .meaning = "Power curve of a pump with its impeller trimmed",
     .also = "impeller trim|cut impeller|BHP curve",
     .inputs = {curves::flows("flows of the curve's points at full diameter"),
                series("powers", "P_i", units::kW, from(0), "power inputs of the curve's points at full diameter", 2),
                trim::diameter(), trim::trimmed_diameter(),
                choice<TrimLaw>("trim_law", "law", curves::law_meaning, TrimLaw::parabola)},
     .results = {output_series<Flow>("trimmed_flows", "Q'_i", units::m3h, "flows at the trimmed diameter"),
                 output_series<Power>("trimmed_powers", "P'_i", units::kW, "power inputs at the trimmed diameter")},
     .equation = "Q' = Q (D'/D)^1 or ^2; P' = P (D'/D)^3 or ^4",
     .source = trim::source,
     .cautions = {caution::trim, trim::two_sets, trim::efficiency, trim::npsh_after},
     .example = {"[0, 100], [10, 20], 250, 200", "[0, 80], [5.12, 10.24]", "hand calculation"}},
    pairs::equal_length<"powers", "flows">(), trim::not_grown, trim::near_enough);

/// The best efficiency point, which the method hangs on, is found from the curve itself.
inline Outcome<std::tuple<Points<Flow>, Points<Head>, Points<Fraction>>> curve_viscous(
    Series<Flow> flows, Series<Head> heads, Series<Fraction> efficiencies, RotationalSpeed speed,
    KinematicViscosity viscosity, Count stages, KinematicViscosity water_viscosity, NearOne near, Steps steps)
{
    const auto best = curves::best_point(flows, efficiencies);
    if (!best) return best.why();
    const Flow best_flow = Flow::from_value(best->flow);
    const Head best_head = Head::from_value(curves::value_at(curves::Knots<Flow, Head>(flows, heads), best->flow)) /
                           stages.value;
    steps("Q_BEP", "best efficiency flow on water", best_flow, units::m3h);
    steps("H_BEP", "head of a stage there", best_head, units::metre);
    if (!viscous::radial(best_flow, best_head, speed))
        return NoValue{CUTWATER_CONTRADICTION, "speed", viscous::radial_sentence};
    const double b = viscous::parameter(viscosity, best_flow, best_head, speed).value();
    steps("B", "viscosity parameter", Ratio(b), units::number);
    if (!(b < 40))
        return NoValue{CUTWATER_NO_ANSWER,
                       "viscosity",
                       "the viscosity parameter B would be {0}; from 40 on the correction is too uncertain",
                       {{b, ""}}};
    if (flows.back() > 1.5 * (1 + 1e-9) * best_flow)
        return NoValue{
            CUTWATER_OUT_OF_INTERVAL,
            "flows",
            "the last point, {0}, lies beyond 1.5 times the best efficiency flow, {1}, where the method does not hold",
            {number_in(flows.back(), units::m3h), number_in(best_flow, units::m3h)}};
    const double c_eta = viscous::efficiency_ratio(b, best->efficiency, (viscosity / water_viscosity).value(), near);
    if (!(c_eta > 0)) return NoValue{CUTWATER_NO_ANSWER, "efficiencies", viscous::nothing_left};
    std::tuple<Points<Flow>, Points<Head>, Points<Fraction>> curve;
    const double c_q = viscous::flow_ratio(b);
    steps("C_Q", "ratio of flows", Ratio(c_q), units::number);
    steps("C_eta", "ratio of efficiencies", Ratio(c_eta), units::number);
    for (std::size_t i = 0; i < flows.size(); ++i) {
        std::get<0>(curve).push_back(c_q * flows[i]);
        std::get<1>(curve).push_back(viscous::head_ratio(b, (flows[i] / best_flow).value()) * heads[i]);
        std::get<2>(curve).push_back(Fraction{c_eta * efficiencies[i].value});
    }
    return curve;
}

inline constexpr auto curve_viscous_record = record<&curve_viscous>(
    {.name = "curve_viscous",
     .meaning = "Curves of head and efficiency on a viscous liquid, from those on water",
     .also = "viscosity correction|oil curve",
     .inputs = {series("flows", "Q_i", units::m3h, from(0), "flows of the points on water", 3, Order::rising),
                series("heads", "H_i", units::metre, limits::head_above_0_m,
                       "heads of the points on water, of the whole pump", 3),
                series("efficiencies", "eta_i", units::fraction, between(0, 1), "efficiencies of the points on water",
                       3),
                input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"),
                input("viscosity", "nu", units::mm2s, viscous::viscosities, viscous::viscosity_meaning),
                input("stages", "z", units::count, between(1, 100), "number of stages", 1),
                input("water_viscosity", "nu_W", units::mm2s, between(0.2, 2),
                      "kinematic viscosity of the water that the pump was tested on", 1),
                viscous::near_one()},
     .results = {output_series<Flow>("viscous_flows", "Q_vis,i", units::m3h, "flows on the viscous liquid"),
                 output_series<Head>("viscous_heads", "H_vis,i", units::metre, "heads on the viscous liquid"),
                 output_series<Fraction>("viscous_efficiencies", "eta_vis,i", units::fraction,
                                         "efficiencies on the viscous liquid")},
     .equation = "Q_vis = C_Q Q; H_vis = C_H(Q/Q_BEP) H; eta_vis = C_eta eta; Q_BEP and H_BEP from the curve on water",
     .source = viscous::method,
     .cautions = {caution::viscous_method, viscous::tested_range, viscous::jump},
     .example =
         {"[0, 110, 165], [95, 77, 60], [0, 0.68, 0.51], 2950, 120",
          "[0, 103.2, 154.7], [95, 72.2, 54.9], [0, 0.502, 0.376]",
          "first example of ISO/TR 17766 with points added so that its best point is the peak; the others by hand"}},
    pairs::equal_length<"heads", "flows">(), pairs::equal_length<"efficiencies", "flows">(),
    relation<"viscosity", "water_viscosity">(
        [](KinematicViscosity nu, KinematicViscosity water) { return nu >= water; }, viscous::thinner_than_water));

}  // namespace cutwater::formulas

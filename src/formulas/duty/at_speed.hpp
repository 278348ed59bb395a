// Curves of NPSH3 and efficiency at another speed and after a trim, beside those of head and power.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/curves/inputs.hpp"
#include "formulas/curves/scaled.hpp"
#include "formulas/similarity/affinity.hpp"
#include "formulas/limits.hpp"

#include <tuple>

namespace cutwater::formulas {

inline std::tuple<Points<Flow>, Points<Head>> npsh3_curve_at_speed(Series<Flow> flows, Series<Head> npsh3_values,
                                                                   RotationalSpeed speed, RotationalSpeed new_speed,
                                                                   Ratio exponent, Steps steps)
{
    const double ratio = Ratio(new_speed / speed).value();
    const double x = affinity::npsh_exponent(exponent.value(), ratio);
    steps("x", "exponent used", Ratio(x), units::number);
    return {curves::scaled(flows, ratio), curves::scaled(npsh3_values, elementary::positive_pow(ratio, x))};
}

inline constexpr auto npsh3_curve_at_speed_record = record<&npsh3_curve_at_speed>(
    {.name = "npsh3_curve_at_speed",
     .meaning = "NPSH3 curve of a pump at another speed",
     .also = "NPSHR curve|NPSH required at another speed|VFD curve|affinity laws",
     .inputs = {curves::flows(),
                series("npsh3_values", "NPSH3_i", units::metre, limits::head_from_0_m, "NPSH3 of the curve's points",
                       2),
                affinity::speed(), affinity::new_speed(),
                input("exponent", "x", units::number, between(0, 2),
                      "1 to 2, as agreed or tested; 0: the cautious one, 1.3 when slowing down and 2 when speeding up",
                      0)},
     .results = {output_series<Flow>("new_flows", "Q'_i", units::m3h, "flows at the new speed"),
                 output_series<Head>("new_npsh3_values", "NPSH3'_i", units::metre, "NPSH3 at the new speed")},
     .equation = "Q' = Q n'/n; NPSH3' = NPSH3 (n'/n)^x; x not given: 1.3 for n' < n, 2 for n' > n",
     .source = "the relations of flow_at_speed and npsh3_at_speed, point by point: see there",
     .cautions = {"The square flatters when slowing down; tests lie between 1.3 and 2.", caution::affinity,
                  affinity::speeding_up, affinity::standard_range, caution::npsh_margin},
     .example = {"[0, 100], [2, 5], 2900, 1450, 2", "[0, 50], [0.5, 1.25]", "hand calculation"}},
    pairs::equal_length<"npsh3_values", "flows">(),
    relation<"new_speed", "speed">([](RotationalSpeed m, RotationalSpeed n) { return affinity::in_limits(n, m); },
                                   affinity::ratio_limits),
    relation<"exponent">([](Ratio x) { return x.value() == 0 || x.value() >= 1; },
                         "it must be 0, for the cautious one, or from 1 to 2"));

inline std::tuple<Points<Flow>, Points<Fraction>> efficiency_curve_at_speed(Series<Flow> flows,
                                                                            Series<Fraction> efficiencies,
                                                                            RotationalSpeed speed,
                                                                            RotationalSpeed new_speed)
{
    const double ratio = Ratio(new_speed / speed).value();
    Points<Fraction> same;
    same.reserve(efficiencies.size());
    for (std::size_t i = 0; i < efficiencies.size(); ++i) same.push_back(efficiencies[i]);
    return {curves::scaled(flows, ratio), same};
}

inline constexpr auto efficiency_curve_at_speed_record = record<&efficiency_curve_at_speed>(
    {.name = "efficiency_curve_at_speed",
     .meaning = "Efficiency curve of a pump at another speed, each point's efficiency taken as unchanged",
     .also = "efficiency at reduced speed|VFD curve|affinity laws",
     .inputs = {curves::flows(),
                series("efficiencies", "eta_i", units::fraction, between(0, 1), "efficiencies of the curve's points",
                       2),
                affinity::speed(), affinity::new_speed()},
     .results = {output_series<Flow>("new_flows", "Q'_i", units::m3h, "flows at the new speed"),
                 output_series<Fraction>("same_efficiencies", "eta_i", units::fraction,
                                         "efficiencies there, unchanged")},
     .equation = "Q' = Q n'/n; eta' = eta",
     .source = affinity::source,
     .cautions = {"At low speed the true efficiency is lower: friction in bearings and seals does not fall with the "
                  "cube of the speed, and the Reynolds "
                  "number falls.",
                  caution::affinity, affinity::standard_range},
     .example = {"[0, 100], [0, 0.7], 2900, 1450", "[0, 50], [0, 0.7]", "hand calculation"}},
    pairs::equal_length<"efficiencies", "flows">(),
    relation<"new_speed", "speed">([](RotationalSpeed m, RotationalSpeed n) { return affinity::in_limits(n, m); },
                                   affinity::ratio_limits));

}  // namespace cutwater::formulas

// A pump's whole curve on a slurry, from its curve on water.
#pragma once

#include "formulas/curves/value.hpp"
#include "formulas/solids/slurry.hpp"

namespace cutwater::formulas {

inline std::tuple<Points<Flow>, Points<Head>, Points<Fraction>> curve_slurry(Series<Flow> flows, Series<Head> heads,
                                                                             Series<Fraction> efficiencies,
                                                                             Ratio head_ratio, Ratio efficiency_ratio)
{
    std::tuple<Points<Flow>, Points<Head>, Points<Fraction>> curve;
    for (std::size_t i = 0; i < flows.size(); ++i) {
        std::get<0>(curve).push_back(flows[i]);
        std::get<1>(curve).push_back(head_ratio * heads[i]);
        std::get<2>(curve).push_back(Fraction{efficiency_ratio.value() * efficiencies[i].value});
    }
    return curve;
}

inline constexpr auto curve_slurry_record = record<&curve_slurry>(
    {.name = "curve_slurry",
     .meaning = "Curves of head and efficiency on a slurry, from those on water",
     .also = "slurry derating|slurry curve",
     .inputs = {curves::flows("flows of the points on water"),
                series("heads", "H_w,i", units::metre, any, "heads of the points on water", 2),
                series("efficiencies", "eta_w,i", units::fraction, between(0, 1), "efficiencies of the points on water",
                       2),
                input("head_ratio", "HR", units::number, above_up_to(0, 1),
                      "as from slurry_head_ratio, or from the pump maker's tests"),
                input("efficiency_ratio", "ER", units::number, above_up_to(0, 1),
                      "as from slurry_efficiency_ratio, or from the pump maker's tests")},
     .results = {output_series<Flow>("slurry_flows", "Q_i", units::m3h,
                                     "flows of the points on the slurry: those on water"),
                 output_series<Head>("slurry_heads", "H_m,i", units::metre, "heads in metres of slurry"),
                 output_series<Fraction>("slurry_efficiencies", "eta_m,i", units::fraction,
                                         "efficiencies on the slurry")},
     .equation = "Q = Q; H_m = HR H_w; eta_m = ER eta_w",
     .source = "definition of the head and efficiency ratios at equal flow and speed, ANSI/HI 12.1-12.6 (from memory "
               "of it); the same at every flow: common practice",
     .cautions = {"The head is in metres of slurry: do not multiply it by the relative density again.",
                  "One pair of ratios for the whole curve is a simplification: at small flows the loss may be greater. "
                  "NPSH3 on the slurry is not found here; it is no less than on water.",
                  caution::guide_only},
     .example = {"[0, 100, 200], [30, 28, 22], [0, 0.7, 0.6], 0.9, 0.85",
                 "[0, 100, 200], [27, 25.2, 19.8], [0, 0.595, 0.51]", "hand calculation"}},
    pairs::equal_length<"heads", "flows">(), pairs::equal_length<"efficiencies", "flows">());

}  // namespace cutwater::formulas

// Curves of NPSH3 and efficiency with a trimmed impeller, beside those of head and power.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/curves/inputs.hpp"
#include "formulas/curves/scaled.hpp"
#include "formulas/duty/suction_limit.hpp"
#include "formulas/similarity/small_trim.hpp"
#include "formulas/limits.hpp"

#include <algorithm>
#include <tuple>

namespace cutwater::formulas {

inline std::tuple<Points<Flow>, Points<Head>> npsh3_curve_at_trim(Series<Flow> flows, Series<Head> at_greatest,
                                                                  Length greatest, Series<Head> at_least, Length least,
                                                                  Length trimmed)
{
    Points<Head> between;
    between.reserve(flows.size());
    for (std::size_t i = 0; i < flows.size(); ++i)
        between.push_back(npsh3_at_trim(at_greatest[i], greatest, at_least[i], least, trimmed));
    return {curves::scaled(flows, 1), between};
}

inline constexpr auto npsh3_curve_at_trim_record = record<&npsh3_curve_at_trim>(
    {.name = "npsh3_curve_at_trim",
     .meaning = "NPSH3 curve with a trimmed impeller, between two diameters for which the pump maker shows it",
     .also = "NPSHR curve after impeller trim|NPSH required trimmed impeller",
     .inputs = {curves::flows("flows of the points, the same for both curves: flow does not scale here"),
                series("npsh3_at_greatest", "NPSH3_D,i", units::metre, limits::head_from_0_m,
                       "NPSH3 at those flows with the greatest diameter", 2),
                input("greatest_diameter", "D", units::mm, between(10, 10000),
                      "greatest diameter that the maker shows"),
                series("npsh3_at_least", "NPSH3_d,i", units::metre, limits::head_from_0_m,
                       "NPSH3 at the same flows with the least diameter; the other one's again where the maker shows "
                       "one curve for all diameters",
                       2),
                input("least_diameter", "d", units::mm, between(5, 10000), "least diameter that the maker shows"),
                input("trimmed_diameter", "D'", units::mm, between(5, 10000), "diameter after the cut")},
     .results = {output_series<Flow>("same_flows", "Q_i", units::m3h, "flows, unchanged"),
                 output_series<Head>("npsh3_values", "NPSH3'_i", units::metre,
                                     "NPSH3 there with the trimmed impeller")},
     .equation = "NPSH3' = NPSH3_D + (NPSH3_d - NPSH3_D)(D - D')/(D - d) at each flow",
     .source =
         "straight line between two tested diameters, point by point; common practice. That NPSH3 at one flow and "
         "speed hardly changes with a small trim, since the inlet stays as it is, and why it may rise: a trade "
         "newsletter of 2006 (excerpt read); a rise of 0.5 m between two diameters of one pump: a trade page (read)",
     .cautions =
         {"NPSH3 does not follow the affinity laws in a trim: never scale it with head or flow.", trim::npsh_after,
          "Where a suction test of the full diameter is at hand: the cavities cost the trimmed impeller about "
          "the same head, which is a larger part of its own; npsh3_from_test with a drop of 0.03 (D'/D)^2 gives "
          "the NPSH at which that is 3 % (own reasoning after that newsletter).",
          caution::npsh_margin},
     .example = {"[50, 100], [2, 4], 260, [2.4, 5], 220, 240", "[50, 100], [2.2, 4.5]", "hand calculation: halfway"}},
    pairs::equal_length<"npsh3_at_greatest", "flows">(), pairs::equal_length<"npsh3_at_least", "flows">(),
    relation<"least_diameter", "greatest_diameter">([](Length least, Length greatest) { return least < greatest; },
                                                    "it must be less than the greatest diameter"),
    relation<"trimmed_diameter", "least_diameter", "greatest_diameter">(
        [](Length t, Length least, Length greatest) { return t >= least && t <= greatest; },
        "it must lie between the two diameters for which NPSH3 is known: nothing is told beyond them"));

inline Outcome<std::tuple<Points<Flow>, Points<Fraction>, Ratio>> efficiency_curve_at_trim(
    Series<Flow> flows, Series<Fraction> efficiencies, Length diameter, Length trimmed, Ratio efficiency_loss,
    TrimLaw law)
{
    double best = 0;
    for (std::size_t i = 0; i < efficiencies.size(); ++i) best = std::max(best, efficiencies[i].value);
    const double lost = efficiency_loss.value() * (1 - Ratio(trimmed / diameter).value());
    if (!(lost < best))
        return NoValue{.status = CUTWATER_NO_ANSWER,
                       .argument = "efficiencies",
                       .sentence = "the trim would cost {0} of efficiency and the best point has only {1}",
                       .numbers = {{lost, ""}, {best, ""}}};
    Points<Fraction> left;
    left.reserve(efficiencies.size());
    for (std::size_t i = 0; i < efficiencies.size(); ++i)
        left.push_back(Fraction{efficiencies[i].value * (1 - lost / best)});
    return std::tuple(curves::scaled(flows, curves::flow_factor(diameter, trimmed, law)), left, Ratio(lost));
}

inline constexpr auto efficiency_curve_at_trim_record = record<&efficiency_curve_at_trim>(
    {.name = "efficiency_curve_at_trim",
     .meaning = "Efficiency curve of a pump with its impeller trimmed",
     .also = "efficiency after impeller trim|trimmed impeller efficiency|cut impeller",
     .inputs = {curves::flows("flows of the curve's points at full diameter"),
                series("efficiencies", "eta_i", units::fraction, between(0, 1),
                       "efficiencies of the curve's points at full diameter", 2),
                trim::diameter(), trim::trimmed_diameter(),
                input("efficiency_loss", "eps", units::number, between(0, 1),
                      "best efficiency lost over the part cut off: 0.2 takes two points off for a cut of 10 %; 0 for "
                      "cuts up to 3 % and a type number up to 1"),
                choice<TrimLaw>("trim_law", "law", curves::law_meaning, TrimLaw::parabola)},
     .results = {output_series<Flow>("trimmed_flows", "Q'_i", units::m3h, "flows at the trimmed diameter"),
                 output_series<Fraction>("trimmed_efficiencies", "eta'_i", units::fraction, "efficiencies there"),
                 output("lost", "d eta", units::number, "what the best point lost")},
     .equation = "Q' = Q (D'/D)^1 or ^2; eta' = eta (1 - d eta/eta_max), d eta = eps (1 - D'/D); eta_max: the highest "
                 "point",
     .source = "unchanged up to a cut of 3 % and a type number of 1: ISO 9906:2012 (as a trade encyclopaedia tells it, "
               "excerpt read); that it falls: Hydraulic Institute, Engineering Data Book (text of 2026, read); eps of "
               "0.15 to 0.25 for volutes, 0.4 to 0.5 for diffusers: J. F. Guelich, Centrifugal Pumps (from memory of "
               "it)",
     .cautions =
         {"The loss is an input because no rule foretells it: it grows with the specific speed and with the gap "
          "to the casing. Without a test take the greater value.",
          caution::trim, trim::two_sets},
     .example = {"[0, 100], [0, 0.8], 250, 225, 0.2, \"parabola\"", "[0, 90], [0, 0.78], 0.02",
                 "hand calculation: 0.2 x 0.1; 0.8 - 0.02"}},
    pairs::equal_length<"efficiencies", "flows">(), trim::not_grown, trim::near_enough);

}  // namespace cutwater::formulas

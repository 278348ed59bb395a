// A small trim by ISO 9906's relation, which knows where the vanes begin; and NPSH3 after a trim.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"
#include "formulas/similarity/trim.hpp"

#include <tuple>

namespace cutwater::formulas {

namespace small_trim {

inline constexpr double least_cut = 0.95 * (1 - 1e-9);  // 237.5 mm of 250 mm is 0.95, but for rounding
inline constexpr const char* too_far =
    "the trimmed diameter must be at least 0.95 of the full diameter: the relation is for small trims, see "
    "curve_at_trim for larger ones";
inline constexpr const char* inlet_inside = "the mean inlet diameter must be less than the trimmed diameter";
inline constexpr const char* source =
    "ISO 9906:2012, reduction of the impeller diameter after a test (relation from memory of it); its limits, a cut of "
    "5 %, type number up to 1.5, the same vane shape after the cut, and that it takes the mean diameter of the vanes' "
    "leading edges: read in a trade encyclopaedia (excerpt)";
inline constexpr const char* limits_of_use =
    "For a type number up to 1.5 and vanes whose angle and shape stay as they are. The efficiency may be taken as "
    "unchanged up to a cut of 3 % and a type number of 1.";

constexpr auto inlet_diameter()
{
    return input("inlet_diameter", "D_1", units::mm, above_up_to(0, 10000),
                 "mean diameter of the vanes' leading edges, from the impeller's drawing");
}

/// Ratio of flows; the heads go with its square.
inline double ratio(Length diameter, Length trimmed, Length inlet)
{
    return std::sqrt(Ratio((trimmed * trimmed - inlet * inlet) / (diameter * diameter - inlet * inlet)).value());
}

}  // namespace small_trim

inline std::tuple<Flow, Head> point_at_small_trim(Flow flow, Head head, Length diameter, Length trimmed, Length inlet,
                                                  Steps steps)
{
    const double r = small_trim::ratio(diameter, trimmed, inlet);
    steps("R", "sqrt((D'^2 - D_1^2)/(D^2 - D_1^2))", Ratio(r), units::number);
    return {flow * r, head * (r * r)};
}

inline constexpr auto point_at_small_trim_record = record<&point_at_small_trim>(
    {.name = "point_at_small_trim",
     .meaning = "Flow and head of a point of a pump's curve after a cut of up to 5 %, by ISO 9906",
     .also = "impeller trim|impeller turn-down|impeller cut",
     .inputs = {input("flow", "Q", units::m3h, from(0), "flow at the full diameter"),
                input("head", "H", units::metre, from(0), "head at the full diameter"), trim::diameter(),
                trim::trimmed_diameter(), small_trim::inlet_diameter()},
     .results = {output("trimmed_flow", "Q'", units::m3h, "flow of the corresponding point"),
                 output("trimmed_head", "H'", units::metre, "head of the corresponding point")},
     .equation = "Q' = R Q; H' = R^2 H; R = sqrt((D'^2 - D_1^2)/(D^2 - D_1^2))",
     .source = small_trim::source,
     .cautions = {small_trim::limits_of_use, trim::npsh_after},
     .example = {"100, 50, 250, 240, 120", "94.770, 44.906",
                 "hand calculation: R^2 = (57600 - 14400)/(62500 - 14400)"}},
    trim::not_grown,
    relation<"trimmed_diameter", "diameter">([](Length t, Length d) { return t >= small_trim::least_cut * d; },
                                             small_trim::too_far),
    relation<"inlet_diameter", "trimmed_diameter">([](Length inlet, Length t) { return inlet < t; },
                                                   small_trim::inlet_inside));

inline Head npsh3_at_trim(Head at_greatest, Length greatest, Head at_least, Length least, Length trimmed)
{
    const Ratio along = (greatest - trimmed) / (greatest - least);
    return at_greatest + along * (at_least - at_greatest);
}

inline constexpr auto npsh3_at_trim_record = record<&npsh3_at_trim>(
    {.name = "npsh3_at_trim",
     .meaning = "NPSH3 with a trimmed impeller at one flow, between two diameters for which the pump maker tells it",
     .also = "NPSHR after impeller trim",
     .inputs =
         {input("npsh3_at_greatest", "NPSH3_D", units::metre, from(0), "NPSH3 at that flow with the greatest diameter"),
          input("greatest_diameter", "D", units::mm, between(10, 10000), "greatest diameter that the maker shows"),
          input("npsh3_at_least", "NPSH3_d", units::metre, from(0), "NPSH3 at the same flow with the least diameter"),
          input("least_diameter", "d", units::mm, between(5, 10000), "least diameter that the maker shows"),
          input("trimmed_diameter", "D'", units::mm, between(5, 10000), "diameter after the cut")},
     .results = {output("npsh3", "NPSH3'", units::metre, "NPSH3 at that flow with the trimmed impeller")},
     .equation = "NPSH3' = NPSH3_D + (NPSH3_d - NPSH3_D)(D - D')/(D - d)",
     .source =
         "straight line between two tested diameters; common practice. That no rule predicts the change, and that "
         "a smaller impeller needs more at the same flow: a trade magazine's series on NPSH (read)",
     .cautions = {trim::npsh_after,
                  "Between the two diameters the true value may lie off the line: take the greater of "
                  "the two when in doubt.",
                  caution::npsh_margin},
     .sound_anywhere = true,
     .example = {"3, 260, 3.6, 220, 240", "3.3", "hand calculation: halfway"}},
    relation<"least_diameter", "greatest_diameter">([](Length least, Length greatest) { return least < greatest; },
                                                    "it must be less than the greatest diameter"),
    relation<"trimmed_diameter", "least_diameter", "greatest_diameter">(
        [](Length t, Length least, Length greatest) { return (t >= least) & (t <= greatest); },
        "it must lie between the two diameters for which NPSH3 is known: nothing is told beyond them"));

}  // namespace cutwater::formulas

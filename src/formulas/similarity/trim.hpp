// Trim laws: a point of a pump's curve with the impeller turned down.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/as_given.hpp"
#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas {

namespace trim {

inline constexpr double least_ratio = 0.7;
inline constexpr double least_cut = least_ratio * (1 - 1e-9);  // 245 mm of 350 mm is 0.7, but for rounding
inline constexpr const char* two_sets = "Two sets of exponents are in use for flow, head and power: (1, 2, 3) and (2, "
                                        "2, 4), the second for radial impellers whose outlet "
                                        "width stays. Take all three from one set; the defaults are the first. The "
                                        "second predicts less flow and power after the cut.";
inline constexpr const char* npsh_after =
    "NPSH3 does not fall with the trim: at the same flow it stays or rises, the more the deeper the cut, and no "
    "published rule predicts it. Ask for the curve of the trimmed impeller; between two known diameters see "
    "npsh3_at_trim.";
inline constexpr const char* efficiency =
    "Efficiency falls a little with the trim; cut in two steps and test between them.";
inline constexpr const char* source = "exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, "
                                      "Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; "
                                      "limit of the ratio 0.7: set here";

constexpr auto diameter()
{
    return input("diameter", "D", units::mm, between(10, 10000), "full diameter, at which the point is known");
}
constexpr auto trimmed_diameter()
{
    return input("trimmed_diameter", "D'", units::mm, between(5, 10000), "diameter after the cut");
}

using Diameter = AsGiven<units::mm>;

inline Ratio scale(Diameter diameter, Diameter trimmed, Ratio exponent)
{
    return Ratio(elementary::positive_pow(Ratio(trimmed / diameter).value(), exponent.value()));
}

inline constexpr auto not_grown = relation<"trimmed_diameter", "diameter">(
    []<class D>(D trimmed, D diameter) { return trimmed <= diameter; },
    "the trimmed diameter must be at most the full diameter: an impeller is cut, not grown");
inline constexpr auto near_enough = relation<"trimmed_diameter", "diameter">(
    []<class D>(D trimmed, D diameter) { return trimmed >= diameter * Ratio(least_cut); },
    "the trimmed diameter must be at least 0.7 of the full diameter, the limit set here for the trim laws");

}  // namespace trim

inline AsGiven<units::m3h> flow_at_trim(AsGiven<units::m3h> flow, trim::Diameter diameter,
                                        trim::Diameter trimmed_diameter, Ratio exponent)
{
    return flow * trim::scale(diameter, trimmed_diameter, exponent);
}

inline constexpr auto flow_at_trim_record = record<&flow_at_trim>(
    {.name = "flow_at_trim",
     .meaning = "Flow of a point of a pump's curve with the impeller trimmed",
     .also = "impeller trim|cut impeller|turn down impeller|impeller turn-down|affinity laws by diameter",
     .inputs = {input("flow", "Q", units::m3h, from(0), "flow at the full diameter"), trim::diameter(),
                trim::trimmed_diameter(),
                input("exponent", "x", units::number, between(0.8, 2.2),
                      "1 in the set (1, 2, 3), 2 in the set (2, 2, 4)", 1)},
     .results = {output("trimmed_flow", "Q'", units::m3h, "flow of the corresponding point")},
     .equation = "Q' = Q (D'/D)^x",
     .source = trim::source,
     .cautions = {caution::trim, trim::two_sets, trim::efficiency, trim::npsh_after},
     .sound_anywhere = true,
     .example = {"100, 250, 230, 1", "92", "hand calculation"}},
    trim::not_grown, trim::near_enough);

inline Head head_at_trim(Head head, trim::Diameter diameter, trim::Diameter trimmed_diameter, Ratio exponent)
{
    return head * trim::scale(diameter, trimmed_diameter, exponent);
}

inline constexpr auto head_at_trim_record = record<&head_at_trim>(
    {.name = "head_at_trim",
     .meaning = "Head of a point of a pump's curve with the impeller trimmed",
     .also = "impeller trim|cut impeller|turn down impeller|impeller turn-down|affinity laws by diameter",
     .inputs = {input("head", "H", units::metre, from(0), "head at the full diameter"), trim::diameter(),
                trim::trimmed_diameter(), input("exponent", "x", units::number, between(1.8, 3), "2 in both sets", 2)},
     .results = {output("trimmed_head", "H'", units::metre, "head of the corresponding point")},
     .equation = "H' = H (D'/D)^x",
     .source = trim::source,
     .cautions = {caution::trim, trim::two_sets, trim::efficiency, trim::npsh_after},
     .sound_anywhere = true,
     .example = {"50, 250, 230, 2", "42.32", "hand calculation"}},
    trim::not_grown, trim::near_enough);

inline AsGiven<units::kW> power_at_trim(AsGiven<units::kW> power, trim::Diameter diameter,
                                        trim::Diameter trimmed_diameter, Ratio exponent)
{
    return power * trim::scale(diameter, trimmed_diameter, exponent);
}

inline constexpr auto power_at_trim_record = record<&power_at_trim>(
    {.name = "power_at_trim",
     .meaning = "Power of a point of a pump's curve with the impeller trimmed, its efficiency taken as unchanged",
     .also = "impeller trim|cut impeller|turn down impeller|impeller turn-down|affinity laws by diameter",
     .inputs = {input("power", "P", units::kW, from(0), "pump power input at the full diameter"), trim::diameter(),
                trim::trimmed_diameter(),
                input("exponent", "x", units::number, between(2.5, 5), "3 in the set (1, 2, 3), 4 in the set (2, 2, 4)",
                      3)},
     .results = {output("trimmed_power", "P'", units::kW, "power of the corresponding point")},
     .equation = "P' = P (D'/D)^x",
     .source = trim::source,
     .cautions = {caution::trim, trim::two_sets, trim::efficiency, trim::npsh_after},
     .sound_anywhere = true,
     .example = {"20, 250, 230, 3", "15.57376", "hand calculation"}},
    trim::not_grown, trim::near_enough);

}  // namespace cutwater::formulas

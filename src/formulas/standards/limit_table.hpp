// What pump standards set, item by item, each with its clause and how it was come by.
#pragma once

#include "catalogue/words.hpp"

#include <array>
#include <cstddef>
#include <string_view>

namespace cutwater::formulas {

enum class PumpStandard { iso_5199, iso_9905, iso_9908, iso_13709, asme_b73_1 };

enum class LimitItem {
    deflection_at_seal,
    deflection_at_impeller,
    runout_below_50,
    runout_50_to_100,
    runout_above_100,
    bearing_life_rated,
    bearing_life_worst,
    critical_running,
    critical_dry_if_wet,
    critical_dry_if_dry,
    balance_grade,
    vibration_preferred,
    vibration_allowable,
    test_factor,
    test_time,
    corrosion_allowance,
    rated_flow_least,
    rated_flow_most,
    preferred_least,
    preferred_most,
    head_rise,
    head_increase,
    rating_margin,
    nozzle_combined,
    nozzle_component,
};

enum class LimitUnit { mm, hours, ratio, mm_per_s, minutes, share };
enum class LimitSide { at_most, at_least };
enum class LimitBasis { excerpt_read, second_hand, from_memory };
enum class LimitClause {};  // a place in the list of clauses

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<5> words_of<formulas::PumpStandard>{"ISO 5199", "ISO 9905", "ISO 9908", "ISO 13709",
                                                           "ASME B73.1"};
template <>
inline constexpr Words<25> words_of<formulas::LimitItem>{"shaft deflection at the seal",
                                                         "shaft deflection at the impeller",
                                                         "shaft runout, below 50 mm",
                                                         "shaft runout, 50 to 100 mm",
                                                         "shaft runout, above 100 mm",
                                                         "bearing life, rated",
                                                         "bearing life, worst load",
                                                         "critical speed ratio, running",
                                                         "dry critical speed ratio, wet running",
                                                         "dry critical speed ratio, may run dry",
                                                         "balance grade",
                                                         "vibration, horizontal, preferred region",
                                                         "vibration, horizontal, allowable region",
                                                         "hydrostatic test factor",
                                                         "hydrostatic test time",
                                                         "corrosion allowance",
                                                         "rated flow, least",
                                                         "rated flow, greatest",
                                                         "preferred region, least",
                                                         "preferred region, greatest",
                                                         "head rise to shut-off",
                                                         "head increase by impeller",
                                                         "rating margin",
                                                         "nozzle loads, combined",
                                                         "nozzle loads, component"};
template <>
inline constexpr Words<6> words_of<formulas::LimitUnit>{"mm", "h", "ratio", "mm/s", "min", "share"};
template <>
inline constexpr Words<2> words_of<formulas::LimitSide>{"at most", "at least"};
template <>
inline constexpr Words<3> words_of<formulas::LimitBasis>{"excerpt read", "second hand", "from memory"};
template <>
inline constexpr Words<21> words_of<formulas::LimitClause>{
    "4.3.1",  "4.3.2.1", "4.4",     "4.10.3",  "4.10.5",  "4.11",  "4.12.2",
    "6.1.11", "6.1.12",  "6.3",     "6.9.1.2", "6.9.1.3", "6.9.4", "6.10.1",
    "8.3.2",  "Table 8", "Annex B", "Annex F", "5.5",     "5.7.1", "not recalled"};

}  // namespace cutwater

namespace cutwater::formulas::standards {

/// A clause that is not in the list does not compile.
consteval LimitClause clause(std::string_view text)
{
    for (std::size_t i = 0; i < words_of<LimitClause>.size(); ++i)
        if (text == words_of<LimitClause>[i]) return static_cast<LimitClause>(i);
    throw "no such clause in the list";
}

struct Row {
    PumpStandard standard;
    LimitItem item;
    double limit;
    LimitUnit unit;
    LimitSide side;
    LimitClause clause;
    LimitBasis basis;
};

using enum PumpStandard;
using enum LimitItem;
using enum LimitSide;
using enum LimitBasis;

inline constexpr Row rows[] = {
    {iso_5199, deflection_at_seal, 0.05, LimitUnit::mm, at_most, clause("4.11"), from_memory},
    {iso_5199, bearing_life_rated, 17500, LimitUnit::hours, at_least, clause("4.12.2"), from_memory},
    {iso_5199, critical_running, 1.10, LimitUnit::ratio, at_least, clause("4.3.1"), from_memory},
    {iso_5199, balance_grade, 6.3, LimitUnit::mm_per_s, at_most, clause("4.3.2.1"), from_memory},
    {iso_5199, test_factor, 1.5, LimitUnit::ratio, at_least, clause("6.3"), from_memory},
    {iso_5199, test_time, 10, LimitUnit::minutes, at_least, clause("6.3"), from_memory},
    {iso_5199, corrosion_allowance, 3, LimitUnit::mm, at_least, clause("4.4"), from_memory},
    {iso_5199, nozzle_combined, 2, LimitUnit::ratio, at_most, clause("Annex B"), from_memory},
    {iso_5199, nozzle_component, 1.4, LimitUnit::ratio, at_most, clause("Annex B"), from_memory},

    {iso_9908, deflection_at_seal, 0.05, LimitUnit::mm, at_most, clause("4.10.3"), excerpt_read},
    {iso_9908, runout_below_50, 0.05, LimitUnit::mm, at_most, clause("4.10.5"), excerpt_read},
    {iso_9908, runout_50_to_100, 0.08, LimitUnit::mm, at_most, clause("4.10.5"), excerpt_read},
    {iso_9908, runout_above_100, 0.1, LimitUnit::mm, at_most, clause("4.10.5"), excerpt_read},

    {iso_13709, deflection_at_seal, 0.05, LimitUnit::mm, at_most, clause("6.9.1.3"), from_memory},
    {iso_13709, bearing_life_rated, 25000, LimitUnit::hours, at_least, clause("6.10.1"), second_hand},
    {iso_13709, bearing_life_worst, 16000, LimitUnit::hours, at_least, clause("6.10.1"), second_hand},
    // Both of the dry critical speed: 1.2 where the rotor only runs wet, 1.3 where it may run dry.
    {iso_13709, critical_dry_if_wet, 1.2, LimitUnit::ratio, at_least, clause("6.9.1.2"), second_hand},
    {iso_13709, critical_dry_if_dry, 1.3, LimitUnit::ratio, at_least, clause("6.9.1.2"), second_hand},
    {iso_13709, balance_grade, 2.5, LimitUnit::mm_per_s, at_most, clause("6.9.4"), from_memory},
    // Horizontal pumps, up to 300 kW a stage (from memory).
    {iso_13709, vibration_preferred, 3.0, LimitUnit::mm_per_s, at_most, clause("Table 8"), second_hand},
    {iso_13709, vibration_allowable, 3.9, LimitUnit::mm_per_s, at_most, clause("Table 8"), second_hand},
    {iso_13709, test_factor, 1.5, LimitUnit::ratio, at_least, clause("8.3.2"), from_memory},
    {iso_13709, test_time, 30, LimitUnit::minutes, at_least, clause("8.3.2"), from_memory},
    {iso_13709, corrosion_allowance, 3, LimitUnit::mm, at_least, clause("6.3"), from_memory},
    {iso_13709, rated_flow_least, 0.8, LimitUnit::share, at_least, clause("6.1.12"), second_hand},
    {iso_13709, rated_flow_most, 1.1, LimitUnit::share, at_most, clause("6.1.12"), second_hand},
    {iso_13709, preferred_least, 0.7, LimitUnit::share, at_least, clause("6.1.12"), second_hand},
    {iso_13709, preferred_most, 1.2, LimitUnit::share, at_most, clause("6.1.12"), second_hand},
    {iso_13709, head_rise, 0.1, LimitUnit::share, at_least, clause("6.1.11"), second_hand},
    {iso_13709, head_increase, 0.05, LimitUnit::share, at_least, clause("not recalled"), second_hand},
    {iso_13709, rating_margin, 0.1, LimitUnit::share, at_least, clause("6.3"), second_hand},
    {iso_13709, nozzle_combined, 2, LimitUnit::ratio, at_most, clause("Annex F"), from_memory},
    {iso_13709, nozzle_component, 2, LimitUnit::ratio, at_most, clause("Annex F"), from_memory},

    {asme_b73_1, deflection_at_impeller, 0.13, LimitUnit::mm, at_most, clause("5.5"), from_memory},
    {asme_b73_1, bearing_life_rated, 17500, LimitUnit::hours, at_least, clause("5.7.1"), from_memory},
    {asme_b73_1, test_factor, 1.5, LimitUnit::ratio, at_least, clause("not recalled"), from_memory},
    {asme_b73_1, corrosion_allowance, 3, LimitUnit::mm, at_least, clause("not recalled"), from_memory},
};

/// Why there is no number, where more can be said than that the text could not be read.
struct None {
    PumpStandard standard;
    LimitItem item;
    const char* why;
};

inline constexpr None none[] = {
    {iso_5199, rated_flow_least,
     "ISO 5199 sets no place of the rated flow against best efficiency (from memory of it)"},
    {iso_5199, rated_flow_most, "ISO 5199 sets no place of the rated flow against best efficiency (from memory of it)"},
    {iso_5199, preferred_least,
     "ISO 5199 sets no preferred region (from memory of it); see preferred_region for that of ANSI/HI 9.6.3"},
    {iso_5199, preferred_most,
     "ISO 5199 sets no preferred region (from memory of it); see preferred_region for that of ANSI/HI 9.6.3"},
    {iso_5199, head_rise, "ISO 5199 sets no head rise to shut-off (from memory of it)"},
    {iso_5199, vibration_preferred,
     "ISO 5199 4.3.2.2 sets vibration by a table that could not be read; see vibration_zone for ISO 10816-7"},
    {iso_5199, vibration_allowable,
     "ISO 5199 4.3.2.2 sets vibration by a table that could not be read; see vibration_zone for ISO 10816-7"},
    {iso_13709, critical_running, "ISO 13709 sets ratios of the dry critical speed (digest read); ask for those items"},
    {iso_13709, deflection_at_impeller,
     "ISO 13709 sets the shaft's deflection at the seal faces, not at the impeller (from memory of it)"},
};

/// Where each standard's item stands among the rows, -1: nowhere. Looked up and not searched for, so that an array's
/// rows are written as quickly as a number.
inline constexpr std::size_t items = words_of<LimitItem>.size();
inline constexpr auto places = [] {
    std::array<int, words_of<PumpStandard>.size() * items> made{};
    made.fill(-1);
    int place = 0;
    for (const Row& row : rows)
        made[static_cast<std::size_t>(row.standard) * items + static_cast<std::size_t>(row.item)] = place++;
    return made;
}();

constexpr int place_of(PumpStandard standard, LimitItem item)
{
    return places[static_cast<std::size_t>(standard) * items + static_cast<std::size_t>(item)];
}

/// A sentence that names the standard.
constexpr const char* why_none(PumpStandard standard, LimitItem item)
{
    for (const None& n : none)
        if (n.standard == standard && n.item == item) return n.why;
    switch (standard) {
    case iso_5199:
        return "ISO 5199:2002: no number for this item is held; what it says, if anything, could not be read";
    case iso_9905: return "ISO 9905:1994: no number of it is held; its text could not be read";
    case iso_9908:
        return "ISO 9908:1993: no number for this item is held; of its text only clauses 4.9 to 4.11 could be read";
    case iso_13709:
        return "ISO 13709:2009: no number for this item is held; what it says, if anything, could not be read";
    case asme_b73_1: break;
    }
    return "ASME B73.1-2012: no number for this item is held; what it says, if anything, could not be read";
}

}  // namespace cutwater::formulas::standards

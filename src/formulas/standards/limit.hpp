// The number that a pump standard sets for an item, and a figure held against it.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/standards/limit_table.hpp"

#include <algorithm>
#include <tuple>

namespace cutwater::formulas {

enum class LimitVerdict { met, not_met };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::LimitVerdict>{"met", "not met"};

namespace cutwater::formulas {

namespace standards {

inline constexpr const char* source =
    "ISO 5199:2002, ISO 13709:2009 (API 610 11th edition), ASME B73.1-2012 (from memory of them); ISO 9908:1993, 4.10 "
    "(excerpt read); of ISO 13709 second hand: flows, head rise, margins (an anonymous summary of API 610, read), "
    "bearing life (study texts), critical speeds (a digest of API 610 8th edition, 5.2.4.1.1, read; the clause of the "
    "11th from memory), vibration (Europump, Guidelines on Pump Vibration 2013, as quoted); each answer says "
    "which";
inline constexpr const char* editions =
    "Each number belongs to the edition named; newer editions (API 610 of 2021 and after) renumber and change. Read "
    "the clause itself before it goes into a contract: the answer tells how the number was come by.";
inline constexpr const char* conditions =
    "A clause carries conditions that a number leaves out: at which flows, loads and place it holds. The vibration of "
    "ISO 13709 held here is for horizontal pumps up to 300 kW a stage (from memory).";

constexpr auto standard()
{
    return choice<PumpStandard>("pump_standard", "standard",
                                "ISO 5199:2002, ISO 9905:1994, ISO 9908:1993, ISO 13709:2009 (= API 610 11th edition) "
                                "or ASME B73.1-2012");
}
constexpr auto item() { return choice<LimitItem>("item", "item", "what the limit is about"); }

/// A per cent typed as a number meets every "at least" and would pass unseen. True ratios may be large: a stiff shaft's
/// critical speed, an overloaded branch.
inline bool can_be(LimitUnit unit, Ratio value)
{
    return !(((unit == LimitUnit::share) & (value.value() > 2)) | ((unit == LimitUnit::ratio) & (value.value() > 50)));
}

inline NoValue no_number(PumpStandard standard, LimitItem item)
{
    return {CUTWATER_NO_ANSWER, "item", why_none(standard, item), {}};
}
inline NoValue no_such_value(LimitUnit unit, Ratio value)
{
    return {CUTWATER_OUT_OF_INTERVAL,
            "value",
            unit == LimitUnit::share ? "{0} is no share: give a part of one, 0.65 for 65 %"
                                     : "{0} is no ratio to be held against this: give 1.3 for 130 %",
            {number_in(value, units::number)}};
}

}  // namespace standards

inline Outcome<std::tuple<Ratio, LimitUnit, LimitSide, LimitClause, LimitBasis>> standard_limit(PumpStandard standard,
                                                                                                LimitItem item)
{
    const int place = standards::place_of(standard, item);
    const standards::Row& row = standards::rows[std::max(place, 0)];  // a row of an array is judged after
    return {std::tuple{Ratio(row.limit), row.unit, row.side, row.clause, row.basis}, place >= 0,
            place >= 0 ? NoValue{} : standards::no_number(standard, item)};
}

inline constexpr Record<&standard_limit> standard_limit_record{
    .name = "standard_limit",
    .meaning = "The number that a pump standard sets for an item, with its clause and how it was come by",
    .also =
        "API 610 limit|ISO 5199 requirement|clause|what the standard says|allowable value|acceptance limit|class II "
        "pump|process pump specification",
    .inputs = {standards::standard(), standards::item()},
    .results = {output("limit", "limit", units::number, "the number, in the unit that follows"),
                output_word<LimitUnit>("limit_unit", "unit",
                                       "unit of the number; share: a part of the best efficiency flow, of the rated "
                                       "head or of the greatest rise"),
                output_word<LimitSide>("side", "side", "at most or at least"),
                output_word<LimitClause>("clause", "clause", "clause of the standard"),
                output_word<LimitBasis>("basis", "basis",
                                        "whether the clause's text was read, quoted by others, or remembered")},
    .equation = "table of standards and items",
    .source = standards::source,
    .cautions = {standards::editions, standards::conditions},
    .example = {R"("ISO 9908", "shaft deflection at the seal")", R"(0.05, "mm", "at most", "4.10.3", "excerpt read")",
                "ISO 9908:1993, 4.10.3 (excerpt read): 50 um"}};

inline Outcome<std::tuple<LimitVerdict, Ratio, LimitUnit, LimitSide, LimitClause, LimitBasis>> standard_check(
    PumpStandard standard, LimitItem item, Ratio value)
{
    const int place = standards::place_of(standard, item);
    const standards::Row& row = standards::rows[std::max(place, 0)];
    const bool not_above = value <= Ratio(row.limit), not_below = value >= Ratio(row.limit);
    const bool at_most = row.side == LimitSide::at_most;
    const bool met = (at_most & not_above) | (!at_most & not_below);
    const bool holds = (place >= 0) & standards::can_be(row.unit, value);
    return {std::tuple{static_cast<LimitVerdict>(!met), Ratio(row.limit), row.unit, row.side, row.clause, row.basis},
            holds,
            holds        ? NoValue{}
            : place >= 0 ? standards::no_such_value(row.unit, value)
                         : standards::no_number(standard, item)};
}

inline constexpr Record<&standard_check> standard_check_record{
    .name = "standard_check",
    .meaning = "A figure held against the number that a pump standard sets for it",
    .also = "compliance check|meets API 610|meets ISO 5199|specification check|limit check",
    .inputs =
        {standards::standard(), standards::item(),
         input(
             "value", "x", units::number, from(0),
             "the figure, as a bare number in the unit that standard_limit tells; a share up to 2, a ratio up to 50")},
    .results = {output_word<LimitVerdict>("verdict", "verdict", "met or not met; a figure equal to the limit meets it"),
                output("limit", "limit", units::number, "the number that is set"),
                output_word<LimitUnit>("limit_unit", "unit",
                                       "unit of both; share: a part of the best efficiency flow, of the rated head or "
                                       "of the greatest rise"),
                output_word<LimitSide>("side", "side", "at most or at least"),
                output_word<LimitClause>("clause", "clause", "clause of the standard"),
                output_word<LimitBasis>("basis", "basis",
                                        "whether the clause's text was read, quoted by others, or remembered")},
    .equation = "x <= limit or x >= limit, by the table of standards and items",
    .source = standards::source,
    .cautions = {standards::editions, standards::conditions, "The figure is a bare number: give it in the unit named."},
    .example = {R"("ISO 13709", "bearing life, rated", 31000)",
                R"("met", 25000, "h", "at least", "6.10.1", "second hand")", "by inspection"}};

}  // namespace cutwater::formulas

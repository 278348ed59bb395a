// generated from the catalogue by cutwater-generate; do not edit.
// What the standards ask.
#pragma once

#include <cutwater/families/standards.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

struct standard_limit_results {
    Ratio limit;  // the number, in the unit that follows
    const char* limit_unit;  // unit of the number; share: a part of the best efficiency flow, of the rated head or of the greatest rise
    const char* side;  // at most or at least
    const char* clause;  // clause of the standard
    const char* basis;  // whether the clause's text was read, quoted by others, or remembered
};

/// The number that a pump standard sets for an item, with its clause and how it was come by: table of standards and items. Source: ISO 5199:2002, ISO 13709:2009 (API 610 11th edition), ASME B73.1-2012 (from memory of them); ISO 9908:1993, 4.10 (excerpt read); of ISO 13709 second hand: flows, head rise, margins (an anonymous summary of API 610, read), bearing life (study texts), critical speeds (a digest of API 610 8th edition, 5.2.4.1.1, read; the clause of the 11th from memory), vibration (Europump, Guidelines on Pump Vibration 2013, as quoted); each answer says which.
inline standard_limit_results standard_limit(const char* pump_standard, const char* item)
{
    cutwater_refusal refusal;
    double limit_out;
    const char* limit_unit_out;
    const char* side_out;
    const char* clause_out;
    const char* basis_out;
    detail::check(cutwater_standard_limit(pump_standard, item, &limit_out, &limit_unit_out, &side_out, &clause_out, &basis_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), limit_out), limit_unit_out, side_out, clause_out, basis_out};
}

struct standard_check_results {
    const char* verdict;  // met or not met; a figure equal to the limit meets it
    Ratio limit;  // the number that is set
    const char* limit_unit;  // unit of both; share: a part of the best efficiency flow, of the rated head or of the greatest rise
    const char* side;  // at most or at least
    const char* clause;  // clause of the standard
    const char* basis;  // whether the clause's text was read, quoted by others, or remembered
};

/// A figure held against the number that a pump standard sets for it: x <= limit or x >= limit, by the table of standards and items. Source: ISO 5199:2002, ISO 13709:2009 (API 610 11th edition), ASME B73.1-2012 (from memory of them); ISO 9908:1993, 4.10 (excerpt read); of ISO 13709 second hand: flows, head rise, margins (an anonymous summary of API 610, read), bearing life (study texts), critical speeds (a digest of API 610 8th edition, 5.2.4.1.1, read; the clause of the 11th from memory), vibration (Europump, Guidelines on Pump Vibration 2013, as quoted); each answer says which.
inline standard_check_results standard_check(const char* pump_standard, const char* item, Ratio value)
{
    cutwater_refusal refusal;
    const char* verdict_out;
    double limit_out;
    const char* limit_unit_out;
    const char* side_out;
    const char* clause_out;
    const char* basis_out;
    detail::check(cutwater_standard_check(pump_standard, item, detail::number_in(unit<Ratio>(""), value), &verdict_out, &limit_out, &limit_unit_out, &side_out, &clause_out, &basis_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Ratio>(""), limit_out), limit_unit_out, side_out, clause_out, basis_out};
}

}  // namespace cutwater

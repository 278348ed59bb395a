// NPSH3 out of a test at one flow, and whether it keeps the guarantee.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/acceptance/verdict.hpp"
#include "formulas/curves/meeting.hpp"
#include "formulas/curves/value.hpp"
#include "formulas/limits.hpp"

#include <tuple>

namespace cutwater::formulas {

inline Outcome<std::tuple<Head, Head>> npsh3_from_test(Series<Head> npsh_values, Series<Head> heads, Head full_head,
                                                       Fraction drop)
{
    const curves::Knots<Head, Head> test(npsh_values, heads);
    const double limit = full_head.value() * (1 - drop.value);
    const curves::Meetings found = curves::meetings(test, {.base = limit});
    const auto at = [](double x) { return number_in(Head::from_value(x), units::metre); };
    if (found.count > 1 || found.along)
        return NoValue{.status = CUTWATER_SEVERAL_ANSWERS,
                       .argument = "heads",
                       .sentence = "the head passes {0} more than once, first at an NPSH of {1} and of {2}: the "
                                   "readings scatter too much, or the first head is "
                                   "not one without cavitation",
                       .numbers = {at(limit), at(found.along ? found.along_from : found.at[0]),
                                   at(found.along ? found.along_to : found.at[1])}};
    if (found.first_gap > 0)
        return NoValue{.status = CUTWATER_NO_ANSWER,
                       .argument = "npsh_values",
                       .sentence = "at the lowest NPSH of the test, {0}, the head is still above {1}: NPSH3 lies "
                                   "below; lower the NPSH further",
                       .numbers = {number_in(npsh_values.front(), units::metre), at(limit)}};
    if (found.count == 0 || found.last_gap < 0)
        return NoValue{.status = CUTWATER_NO_ANSWER,
                       .argument = "full_head",
                       .sentence = "at the highest NPSH of the test, {0}, the head is below {1} already: the head "
                                   "without cavitation is not reached",
                       .numbers = {number_in(npsh_values.back(), units::metre), at(limit)}};
    return std::tuple(Head::from_value(found.at[0]), Head::from_value(limit));
}

inline constexpr auto npsh3_from_test_record = record<&npsh3_from_test>(
    {.name = "npsh3_from_test",
     .meaning = "NPSH3 from a test in which the NPSH is lowered at one flow until the head falls",
     .also = "NPSHR test|3 % head drop|suction test|cavitation test|incipient cavitation",
     .inputs = {series("npsh_values", "NPSH_i", units::metre, limits::head_from_0_m,
                       "NPSH of the readings, rising, at one flow and speed", 3, Order::rising),
                series("heads", "H_i", units::metre, limits::head_from_0_m,
                       "total heads of those readings: of the first stage where there are several", 3),
                input("full_head", "H", units::metre, limits::head_above_0_m,
                      "head without cavitation at that flow: the mean of the readings at high NPSH"),
                input("drop", "d", units::fraction, above_up_to(0, 0.1), "head drop that counts", 0.03)},
     .results = {output("npsh3", "NPSH3", units::metre, "NPSH at which the head has fallen by that part"),
                 output("head", "H_3", units::metre, "head there")},
     .equation = "H(NPSH3) = (1 - d) H, between the readings as in curve_head",
     .source = "ISO 9906:2012, NPSH test, 3 % of head of the first stage (from memory of it); interpolation as in "
               "curve_value",
     .cautions =
         {"Cavitation begins at a much higher NPSH than NPSH3 and may erode the impeller there: see npsh_margin.",
          "Bring all readings to one flow and one speed first: see test_to_rated_speed.",
          "Take the drop from the first stage's head: the same drop of a pump of several stages hides a deeper one.",
          "Gas that comes out of the water at low pressure lowers the head too: the test wants degassed liquid."},
     .example = {"[2, 3, 4], [38, 38.8, 40], 40, 0.03", "3, 38.8", "hand calculation: 0.97 x 40 = 38.8, a reading"}},
    pairs::equal_length<"heads", "npsh_values">());

inline std::tuple<Verdict, Head, Head> npsh3_verdict(Head measured, Head uncertainty, Head guaranteed)
{
    const Head most = measured + uncertainty;
    const double rounding = 1e-12 * guaranteed.value();
    return {most.value() <= guaranteed.value() + rounding ? Verdict::pass : Verdict::fail, most, guaranteed - most};
}

inline constexpr Record<&npsh3_verdict> npsh3_verdict_record{
    .name = "npsh3_verdict",
    .meaning = "Whether a measured NPSH3 keeps the guaranteed one, its uncertainty counted against the pump",
    .also = "NPSHR acceptance|NPSH guarantee|NPSH test acceptance",
    .inputs = {input("npsh3", "NPSH3", units::metre, limits::head_above_0_m,
                     "measured, at the guaranteed flow and speed"),
               input("uncertainty", "e", units::metre, limits::head_from_0_m,
                     "of the measurement, instruments and scatter together"),
               input("guaranteed_npsh3", "NPSH3_G", units::metre, limits::head_above_0_m, "guaranteed at that flow")},
    .results = {output_word<Verdict>("verdict", "verdict",
                                     "pass when even the most that it may be keeps the guarantee"),
                output("most", "NPSH3 + e", units::metre, "the most that NPSH3 may be"),
                output("reserve", "NPSH3_G - NPSH3 - e", units::metre,
                       "what is left of the guarantee; negative: what is wanting")},
    .equation = "NPSH3 + e <= NPSH3_G",
    .source = "ISO 9906:2012, annex J (informative; read in the identical GOST ISO 9906-2015): no plus tolerance on "
              "NPSH; measuring uncertainty and "
              "scatter together must not let NPSH3 exceed what was agreed",
    .cautions = {"What the contract says of the NPSH test goes before this: the annex is informative.",
                 caution::npsh_margin},
    .example = {"3.2, 0.15, 3.5", "\"pass\", 3.35, 0.15", "hand calculation"}};

}  // namespace cutwater::formulas

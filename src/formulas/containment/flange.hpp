// What a flange of a class and material may hold at its temperature.
#pragma once

#include "catalogue/lookup.hpp"
#include "elementary/elementary.hpp"
#include "formulas/containment/casing_pressure.hpp"
#include "formulas/containment/flange_tables.hpp"
#include "formulas/pairs.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <tuple>

namespace cutwater::formulas {

enum class FlangeMaterial { group_1_1, group_1_2, group_2_1, group_2_2, group_2_3 };
enum class RatingVerdict { within, exceeded };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<5> cutwater::words_of<cutwater::formulas::FlangeMaterial>{
    "group 1.1", "group 1.2", "group 2.1", "group 2.2", "group 2.3"};
template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::RatingVerdict>{"within", "exceeded"};

namespace cutwater::formulas {

namespace flange {

inline constexpr const char* source =
    "ASME B16.5-2009, tables 2-1.1 (standard's page read), 2-1.2 (excerpt read, to 300 degC), 2-2.1 to 2-2.3 (whole "
    "data files of an open "
    "library read, two agree); linear between temperatures, never between classes: its 2.1 and 2.5 (quoted in "
    "engineers' articles, excerpts read)";
inline constexpr const char* which_group =
    "Ask the casting's certificate for the group, not the alloy's trade name: cast CF3M is listed with 2.2 by some and "
    "with 2.3 by others.";
inline constexpr const char* flange_only =
    "A flange's rating is not the pump's: the casing, cover, seal, gasket and bolts may hold less; the pump maker's "
    "rating goes before it.";
inline constexpr const char* leakage =
    "Class 150 above 200 degC and other classes above 400 degC may leak under pipe loads or fast changes of "
    "temperature; carbon steel is not "
    "recommended for long use above 425 degC; some plates and forgings of a group stop earlier.";
inline constexpr const char* shell_temperature =
    "Take the temperature of the wall that holds the pressure, as a rule the liquid's greatest.";
inline constexpr const char* no_such_class = "the classes held are 150, 300 and 600";

constexpr auto material()
{
    return choice<FlangeMaterial>("material_group", "group",
                                  "1.1: A105, A216 WCB, A350 LF2; 1.2: A216 WCC, A352 LCC; 2.1: 304, CF8, CF3 (to 425 "
                                  "degC); 2.2: 316, CF8M; 2.3: 304L (to 425 degC), 316L");
}
constexpr auto pressure_class()
{
    return input("pressure_class", "class", units::count, between(150, 600), "150, 300 or 600");
}
constexpr auto temperature()
{
    return input("temperature", "T", units::degC, between(coldest_degc, 538),
                 "temperature of the wall that holds the pressure");
}

inline bool is_class(Count c) { return (c.value == 150) | (c.value == 300) | (c.value == 600); }

inline constexpr NoValue not_held{CUTWATER_NO_ANSWER,
                                  "pressure_class",
                                  "class 600 of group 1.2 could not be read and is not held; take classes 150 or 300",
                                  {}};

inline NoValue no_rating(Temperature temperature, bool held, double last_degc)
{
    if (!held) return not_held;
    return {CUTWATER_OUT_OF_INTERVAL,
            "temperature",
            "{0} lies above {1}, where the table held for this group ends",
            {number_in(temperature, units::degC), {last_degc, "degC"}}};
}

/// Where a class's pressures begin.
inline std::size_t column_of(FlangeMaterial material, Count pressure_class)
{
    const auto place = std::size_t{pressure_class.value > 150} + std::size_t{pressure_class.value > 300};
    return (static_cast<std::size_t>(material) * 3 + place) * longest;
}

inline Outcome<GaugePressure> rating(Temperature temperature, FlangeMaterial material, Count pressure_class)
{
    const auto group = static_cast<std::size_t>(material);
    const std::size_t rows = group * longest, column = column_of(material, pressure_class);
    const double degc = units::degC.in(temperature);
    // The line that reaches up to the temperature, and the one before it; the first row's pressure holds below it too.
    const std::size_t line = std::max(passed<longest - 1>(&columns.degc[rows], degc), std::size_t{1});
    const double from = columns.degc[rows + line - 1], to = columns.degc[rows + line];
    const double low = columns.bar[column + line - 1], high = columns.bar[column + line];
    const double share = (degc - from) / (to - from);
    const double first_degc = columns.degc[rows], last_degc = columns.degc[rows + longest - 1];
    const double bar = elementary::select(degc <= first_degc, low, low + share * (high - low));
    const bool held = low > 0, holds = held & (degc <= last_degc);
    return {units::barg(bar), holds, no_rating(temperature, held, last_degc)};
}

}  // namespace flange

inline Outcome<GaugePressure> flange_rating(Temperature temperature, FlangeMaterial material, Count pressure_class)
{
    return flange::rating(temperature, material, pressure_class);
}

inline constexpr auto flange_rating_record = record<&flange_rating>(
    {.name = "flange_rating",
     .meaning = "Greatest working pressure of a steel flange by class, material group and temperature",
     .also = "flange pressure-temperature rating|pressure temperature rating|P-T rating|class 150|class 300|ANSI "
             "flange rating|working pressure by class",
     .inputs = {flange::temperature(), flange::material(), flange::pressure_class()},
     .results = {output("rating", "p_F", units::barg, "greatest working gauge pressure at that temperature")},
     .equation = "p_F = table 2 of the standard by group and class, linear between its temperatures; from -29 to 38 "
                 "degC the first row",
     .source = flange::source,
     .cautions = {flange::shell_temperature, "-29 degC is where the table begins, not how cold the steel stays tough.",
                  flange::which_group, flange::leakage, flange::flange_only, caution::pressure_containment},
     .example = {R"(120, "group 2.2", 300)", "40.72", "hand calculation: 42.2 - 0.4 x 3.7"}},
    relation<"pressure_class">([](Count c) { return flange::is_class(c); }, flange::no_such_class));

inline Outcome<std::tuple<RatingVerdict, GaugePressure, PressureDifference, Fraction>> flange_check(
    GaugePressure casing, Temperature temperature, FlangeMaterial material, Count pressure_class)
{
    const Outcome<GaugePressure> rating = flange::rating(temperature, material, pressure_class);
    return {std::tuple{static_cast<RatingVerdict>(casing > *rating), *rating, *rating - casing,
                       Fraction{casing.above_zero() / rating->above_zero()}},
            static_cast<bool>(rating), rating.why()};
}

inline constexpr auto flange_check_record = record<&flange_check>(
    {.name = "flange_check",
     .meaning = "Greatest casing pressure held against the rating of its flanges",
     .also = "flange rating check|casing pressure check|pressure rating margin|required flange class",
     .inputs = {input("casing_pressure", "p_c", units::barg, between(-1.1, 1000),
                      "greatest gauge pressure in the casing, as from casing_pressure"),
                flange::temperature(), flange::material(), flange::pressure_class()},
     .results = {output_word<RatingVerdict>("verdict", "verdict",
                                            "within: the pressure is at most the rating; exceeded: it is not"),
                 output("rating", "p_F", units::barg, "greatest working gauge pressure at that temperature"),
                 output("margin", "p_F - p_c", units::bar, "rating less casing pressure; negative: exceeded"),
                 output("share", "p_c/p_F", units::fraction, "part of the rating that is used")},
     .equation = "p_c <= p_F, p_F from table 2 of the standard by group and class, linear between its temperatures",
     .source = flange::source,
     .cautions = {containment::surge_apart, flange::shell_temperature, flange::which_group, flange::leakage,
                  flange::flange_only, caution::pressure_containment},
     .example = {R"(13.306, 80, "group 2.2", 150)", R"("within", 17.08, 3.774, 0.7790)",
                 "hand calculation: 18.4 - 0.6 x 2.2"}},
    relation<"pressure_class">([](Count c) { return flange::is_class(c); }, flange::no_such_class));

inline Outcome<GaugePressure> flange_test_pressure(FlangeMaterial material, Count pressure_class)
{
    const double cold = flange::columns.bar[flange::column_of(material, pressure_class)];
    // 1.5 x 102.0 is no more than 153
    return {units::barg(std::ceil(1.5 * cold - 1e-9)), cold > 0, flange::not_held};
}

inline constexpr auto flange_test_pressure_record = record<&flange_test_pressure>(
    {.name = "flange_test_pressure",
     .meaning = "Pressure of a system's hydrostatic test that a flange's class stands for",
     .also = "flange hydrotest pressure|system hydrostatic test|shell test pressure",
     .inputs = {flange::material(), flange::pressure_class()},
     .results = {output("test_pressure", "p_T", units::barg,
                        "greatest gauge pressure of a system test, a whole number of bar")},
     .equation = "p_T = 1.5 p_F(38 degC), rounded up to the next whole bar",
     .source = "ASME B16.5-2009, 2.6 (quoted in engineers' articles, excerpts read); ratings as for flange_rating",
     .cautions = {flange::which_group, flange::flange_only, caution::pressure_containment},
     .example = {R"("group 1.1", 150)", "30", "hand calculation: 1.5 x 19.6 = 29.4, rounded up"}},
    relation<"pressure_class">([](Count c) { return flange::is_class(c); }, flange::no_such_class));

inline Outcome<GaugePressure> rating_at_temperature(Temperature temperature, Series<Temperature> temperatures,
                                                    Series<GaugePressure> ratings)
{
    if (temperature < temperatures.front() || temperature > temperatures.back())
        return NoValue{CUTWATER_OUT_OF_INTERVAL,
                       "temperature",
                       "{0} lies outside the table, which reaches from {1} to {2}: a rating is never extrapolated",
                       {number_in(temperature, units::degC), number_in(temperatures.front(), units::degC),
                        number_in(temperatures.back(), units::degC)}};
    std::size_t i = 1;
    while (i + 1 < temperatures.size() && temperatures[i] < temperature) ++i;
    const double share = (temperature - temperatures[i - 1]) / (temperatures[i] - temperatures[i - 1]);
    return ratings[i - 1] + share * (ratings[i] - ratings[i - 1]);
}

inline constexpr auto rating_at_temperature_record = record<&rating_at_temperature>(
    {.name = "rating_at_temperature",
     .meaning = "Rated pressure at a temperature from a pressure-temperature table of your own",
     .also = "pressure-temperature diagram|EN 1092-1 rating|PN flange rating|ductile iron rating|derating with "
             "temperature|p-t limits",
     .inputs = {input("temperature", "T", units::degC, above(-273.15),
                      "temperature of the wall that holds the pressure"),
                series("temperatures", "T_i", units::degC, above(-273.15), "temperatures of the table", 2,
                       Order::rising),
                series("ratings", "p_i", units::barg, from(0), "greatest working gauge pressures of the table", 2)},
     .results = {output("rating", "p_F", units::barg, "greatest working gauge pressure at that temperature")},
     .equation = "p_F linear between the table's temperatures",
     .source = "linear interpolation, as ASME B16.5 2.5 allows (excerpt read) and EN 1092-1 annex G does (from memory "
               "of it)",
     .cautions = {"For tables that are not held here: EN 1092-1, ductile iron, other material groups, the pump maker's "
                  "own diagram.",
                  flange::shell_temperature, flange::flange_only, caution::pressure_containment},
     .example = {"120, [50, 100, 150, 200], [16, 14.8, 14.0, 13.3]", "14.48", "hand calculation: 14.8 - 0.4 x 0.8"}},
    pairs::equal_length<"temperatures", "ratings">());

}  // namespace cutwater::formulas

// The motor that a pump asks for: margin by the motor's rating, and the next rating in the list.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/lookup.hpp"
#include "catalogue/record.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>
#include <span>
#include <tuple>

namespace cutwater::formulas {

enum class MarginRule { iso_13709, process };
enum class RatingSeries { primary, secondary, trade };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::MarginRule>{"ISO 13709", "process"};
template <>
inline constexpr cutwater::Words<3> cutwater::words_of<cutwater::formulas::RatingSeries>{"primary", "secondary",
                                                                                         "trade"};

namespace cutwater::formulas {

namespace rating {

// kW. IEC 60072-1:1991, table 7.
inline constexpr double primary[] = {0.06, 0.09, 0.12, 0.18, 0.25, 0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 3.7, 5.5, 7.5,
                                     11,   15,   18.5, 22,   30,   37,   45,   55,   75,  90,  110, 132, 150, 160,
                                     185,  200,  220,  250,  280,  300,  315,  335,  355, 375, 400, 425, 450, 475,
                                     500,  530,  560,  600,  630,  670,  710,  750,  800, 850, 900, 950, 1000};
// Both series of that table in one list.
inline constexpr double secondary[] = {
    0.06, 0.09, 0.12, 0.18, 0.25, 0.37, 0.55, 0.75, 1.1, 1.5, 1.8, 2.2, 3,   3.7, 4,   5.5, 6.3, 7.5,
    10,   11,   13,   15,   17,   18.5, 20,   22,   25,  30,  33,  37,  40,  45,  50,  55,  63,  75,
    80,   90,   100,  110,  125,  132,  150,  160,  185, 200, 220, 250, 280, 300, 315, 335, 355, 375,
    400,  425,  450,  475,  500,  530,  560,  600,  630, 670, 710, 750, 800, 850, 900, 950, 1000};
// What is kept in stock: the ratings of the efficiency tables, a mixture of both series.
inline constexpr double trade[] = {0.12, 0.18, 0.25, 0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 3,   4,   5.5, 7.5,
                                   11,   15,   18.5, 22,   30,   37,   45,  55,  75,  90,  110, 132, 160,
                                   200,  250,  315,  355,  400,  450,  500, 560, 630, 710, 800, 900, 1000};

constexpr std::span<const double> list(RatingSeries series)
{
    switch (series) {
    case RatingSeries::primary: return primary;
    case RatingSeries::secondary: return secondary;
    case RatingSeries::trade: return trade;
    }
    return primary;
}

/// Least ratio of the motor's rating to the pump's power, by the motor's rating.
constexpr double margin(double rating_kw, MarginRule rule)
{
    if (rule == MarginRule::iso_13709) return rating_kw < 22 ? 1.25 : rating_kw <= 55 ? 1.15 : 1.10;
    return rating_kw <= 7.5 ? 1.20 : rating_kw <= 40 ? 1.15 : 1.10;
}

/// The greatest power of which a rating is the margin or more: 17.6 kW x 1.25 is 22 kW, whatever the rounding.
constexpr double carries(double rating_kw, MarginRule rule)
{
    const double least = margin(rating_kw, rule), most = rating_kw * (1 + 1e-12);
    const auto next = [](double x, std::uint64_t step) {
        return std::bit_cast<double>(std::bit_cast<std::uint64_t>(x) + step);
    };
    double power_kw = most / least;
    while (least * power_kw > most) power_kw = next(power_kw, static_cast<std::uint64_t>(-1));
    while (least * next(power_kw, 1) <= most) power_kw = next(power_kw, 1);
    return power_kw;
}

/// The three series one after another, each filled up to the longest, and what their ratings carry by either rule.
inline constexpr std::size_t longest = std::size(secondary);
struct Columns {
    std::array<double, 3 * longest> rating_kw, carries_kw[2];
};
inline constexpr Columns columns = [] {
    Columns made{};
    for (std::size_t series = 0; series < 3; ++series)
        for (std::size_t place = 0; place < longest; ++place) {
            const std::span<const double> of = list(static_cast<RatingSeries>(series));
            const std::size_t at = series * longest + place;
            made.rating_kw[at] = of[std::min(place, of.size() - 1)];
            for (const MarginRule rule : {MarginRule::iso_13709, MarginRule::process})
                made.carries_kw[static_cast<std::size_t>(rule)][at] = carries(made.rating_kw[at], rule);
        }
    return made;
}();

inline NoValue above_the_last(Power input, Power last)
{
    return {.status = CUTWATER_NO_ANSWER,
            .argument = "power_input",
            .sentence = "a pump power input of {0} asks for a motor above {1}, the last rating of the series",
            .numbers = {number_in(input, units::kW), number_in(last, units::kW)}};
}

inline constexpr const char* by_rating =
    "The bracket goes by the motor's rating, not by the pump's power; a motor's service factor is no margin.";
inline constexpr const char* whole_range = "Check the power at the end of the curve too, and at the greatest density "
                                           "and viscosity the pump will meet, starting cold included.";
inline constexpr const char* source_margin = "\"ISO 13709\": ISO 13709:2009, 7.1.5, driver margin (from memory of it); "
                                             "\"process\": common practice for pumps to ISO 5199, ISO 9905 and "
                                             "ISO 9908, whose own curve could not be read";

constexpr auto rule()
{
    return choice<MarginRule>("rule", "rule",
                              "\"ISO 13709\": 1.25 below 22 kW, 1.15 from 22 to 55 kW, 1.10 above; \"process\": 1.20 "
                              "up to 7.5 kW, 1.15 up to 40 kW, 1.10 above",
                              MarginRule::iso_13709);
}

}  // namespace rating

inline Ratio motor_power_margin(Power motor_rating, MarginRule rule)
{
    return Ratio(rating::margin(units::kW.in(motor_rating), rule));
}

inline constexpr Record<&motor_power_margin> motor_power_margin_record{
    .name = "motor_power_margin",
    .meaning = "Least ratio of a motor's rating to the pump's power input",
    .also = "driver margin|motor oversize|service factor",
    .inputs = {input("motor_rating", "P_N", units::kW, above_up_to(0, 100000), "rated output of the motor"),
               rating::rule()},
    .results = {output("margin", "P_N/P", units::number,
                       "rated motor output over pump power input at the rated duty, at least")},
    .equation = "ISO 13709: 1.25 for P_N < 22 kW; 1.15 for P_N <= 55 kW; 1.10 above. process: 1.20 for P_N <= 7.5 kW; "
                "1.15 for P_N <= 40 kW; 1.10 above",
    .source = rating::source_margin,
    .cautions = {rating::by_rating, rating::whole_range,
                 "ISO 5199's own curve asks more of small motors (from memory)."},
    .example = {"30", "1.15", "the bracket as stated"}};

inline Outcome<std::tuple<Power, Ratio>> motor_rating_needed(Power power_input, MarginRule rule, RatingSeries series)
{
    const double needed = units::kW.in(power_input);
    const std::size_t first = static_cast<std::size_t>(series) * rating::longest;
    const double* carries = &rating::columns.carries_kw[static_cast<std::size_t>(rule)][first];
    const std::size_t place = passed<rating::longest>(carries, needed);
    const double rating_kw = rating::columns.rating_kw[first + std::min(place, rating::longest - 1)];
    return {std::tuple(units::kW(rating_kw), Ratio(rating_kw / needed)), place < rating::longest,
            rating::above_the_last(power_input, units::kW(rating_kw))};
}

inline constexpr Record<&motor_rating_needed> motor_rating_needed_record{
    .name = "motor_rating_needed",
    .meaning = "Smallest listed motor rating that leaves the margin over the pump's power input",
    .also = "motor size|driver sizing|motor nameplate|HP of the motor|horsepower needed|which motor|motor too small|"
            "motor sizing|driver margin",
    .inputs = {input("power_input", "P", units::kW, above(0), "pump power input at the rated duty"), rating::rule(),
               choice<RatingSeries>("series", "series",
                                    "\"primary\": first series of IEC 60072-1; \"secondary\": both its series; "
                                    "\"trade\": ratings kept in stock",
                                    RatingSeries::trade)},
    .results = {output("motor_rating", "P_N", units::kW, "rated output of the motor"),
                output("margin_obtained", "P_N/P", units::number, "that rating over the pump power input")},
    .equation = "P_N = the least rating of the series with P_N >= m(P_N) P, m the margin for that rating",
    .source = "IEC 60072-1:1991, table 7, both series (from memory of it). Margin: \"ISO 13709\": ISO 13709:2009, "
              "7.1.5 (from memory of it); "
              "\"process\" and \"trade\": common practice",
    .cautions = {rating::by_rating, rating::whole_range,
                 "What is kept in stock differs from maker to maker and by country: some list 280 kW between 250 and "
                 "315; North American motors go by horsepower."},
    .example = {R"(20, "ISO 13709", "trade")", "30, 1.5", "hand calculation: 22 < 1.15 x 20; 30 >= 1.15 x 20"}};

}  // namespace cutwater::formulas

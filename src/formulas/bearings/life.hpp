// Rating life of rolling bearings by ISO 281.
#pragma once

#include "formulas/bearings/shared.hpp"
#include "formulas/pairs.hpp"

#include <algorithm>
#include <cmath>

namespace cutwater::formulas {

enum class RollingElement { ball, roller };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::RollingElement>{"ball", "roller"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace bearings {

inline constexpr double millions = 1e6;

/// Revolutions of the basic rating life.
inline double rating_life(Force rating, Force load, RollingElement element)
{
    const double ratio = rating / load;
    const double cube = ratio * ratio * ratio;
    return millions * (element == RollingElement::ball ? cube : cube * elementary::cbrt(ratio));
}

inline Time running(double revolutions, RotationalSpeed speed)
{
    return Time::from_value(revolutions / speed.revolutions().value());
}

inline constexpr const char* load_scope =
    "it must not exceed half the dynamic rating: beyond that the standard's life does not hold";
constexpr auto within_scope()
{
    return relation<"equivalent_load", "dynamic_rating">([](Force load, Force rating) { return 2.0 * load <= rating; },
                                                         load_scope);
}

}  // namespace bearings

inline std::tuple<Time, Ratio> bearing_life_hours(Force rating, Force load, RotationalSpeed speed,
                                                  RollingElement element)
{
    const double life = bearings::rating_life(rating, load, element);
    return {bearings::running(life, speed), Ratio(life / bearings::millions)};
}

inline constexpr auto bearing_life_hours_record = record<&bearing_life_hours>(
    {.name = "bearing_life_hours",
     .meaning = "Basic rating life of a rolling bearing",
     .also = "L10h|L10 life|B10 life|bearing life|rating life|fatigue life",
     .inputs = {bearings::dynamic_rating(), bearings::equivalent_load(), bearings::speed(),
                choice<RollingElement>("element", "element", "ball or roller", RollingElement::ball)},
     .results = {output("hours", "L_10h", units::hour, "life that nine of ten bearings reach or exceed"),
                 output("million_revolutions", "L_10", units::number, "the same in millions of revolutions")},
     .equation = "L_10 = (C/P)^3, rollers (C/P)^(10/3), in millions of revolutions; L_10h = L_10/n",
     .source = "ISO 281:2007, 5.3 (from memory of it); U. C. Jindal, Machine Design, ex. 18-2 and 18-4, in a published "
               "companion (read)",
     .cautions = {"Check the static load too: see static_safety.", bearings::life_guide, bearings::least_load},
     .sound_anywhere = true,
     .example = {"41000, 20000, 720", "199.42, 8.6151", "U. C. Jindal, Machine Design, ex. 18-4"}},
    bearings::within_scope());

inline Time bearing_pair_life(Time first, Time second, Ratio exponent)
{
    // Written from the shorter life, so that nothing overflows on the way.
    const double shorter = std::min(first.value(), second.value()), longer = std::max(first.value(), second.value());
    const double part = elementary::positive_pow(shorter / longer, exponent);
    return Time::from_value(shorter / elementary::positive_pow(1 + part, 1 / exponent.value()));
}

namespace bearings {

inline constexpr Interval life_h = above_up_to(0, 1e9);
inline constexpr Interval exponents = between(1, 3);
constexpr auto slope()
{
    return input(
        "exponent", "e", units::number, exponents,
        "slope of the distribution of lives: 1.5 where ISO 13709 is followed, 10/9 by the theory behind ISO 281", 1.5);
}
inline constexpr const char* system_source =
    "product of the bearings' chances to survive, lives by Weibull's distribution: L = (Sum L_i^-e)^(-1/e); exponent "
    "1.5 by ISO 13709:2009, Annex K, 10/9 by ISO/TR 1281 (both from memory)";

}  // namespace bearings

inline constexpr Record<&bearing_pair_life> bearing_pair_life_record{
    .name = "bearing_pair_life",
    .meaning = "Life that both bearings of a shaft reach together",
    .also = "system life|combined bearing life|bearing system L10h",
    .inputs = {input("first_life", "L_1", units::hour, bearings::life_h, "rating life of one bearing"),
               input("second_life", "L_2", units::hour, bearings::life_h, "rating life of the other"),
               bearings::slope()},
    .results = {output("life", "L", units::hour, "life that both reach with the reliability of the single lives")},
    .equation = "L = (L_1^-e + L_2^-e)^(-1/e)",
    .source = bearings::system_source,
    .cautions = {"The exponent is not agreed on: two equal lives give 0.63 of one with 1.5 and 0.54 with 10/9. Say "
                 "which one a figure rests on.",
                 bearings::life_guide},
    .sound_anywhere = true,
    .example = {"40000, 40000", "25198", "hand calculation: 40000/2^(2/3)"}};

inline Time bearing_system_life(Series<Time> lives, Ratio exponent)
{
    double shortest = lives[0].value();
    for (std::size_t i = 1; i < lives.size(); ++i) shortest = std::min(shortest, lives[i].value());
    double sum = 0;
    for (std::size_t i = 0; i < lives.size(); ++i)
        sum += elementary::positive_pow(shortest / lives[i].value(), exponent);
    return Time::from_value(shortest / elementary::positive_pow(sum, 1 / exponent.value()));
}

inline constexpr Record<&bearing_system_life> bearing_system_life_record{
    .name = "bearing_system_life",
    .meaning = "Life that all bearings of a machine reach together",
    .also = "system life|combined bearing life|machine bearing life",
    .inputs = {series("lives", "L_i", units::hour, bearings::life_h, "rating lives of the bearings", 1),
               bearings::slope()},
    .results = {output("life", "L", units::hour, "life that all reach with the reliability of the single lives")},
    .equation = "L = (Sum L_i^-e)^(-1/e)",
    .source = bearings::system_source,
    .cautions = {"A pair that was counted as one bearing enters once.", bearings::life_guide},
    .example = {"[50000, 30000]", "23260", "hand calculation"}};

inline Outcome<Force> mean_bearing_load(Series<Force> loads, Series<RotationalSpeed> speeds, Series<Time> times)
{
    double turned = 0, sum = 0;
    for (std::size_t i = 0; i < loads.size(); ++i) {
        const double turns = speeds[i].revolutions().value() * times[i].value(), p = loads[i].value();
        turned += turns;
        sum += turns * p * p * p;
    }
    if (!(turned > 0)) return NoValue{CUTWATER_NO_ANSWER, "times", "the shaft turns at no time"};
    return Force::from_value(elementary::cbrt(sum / turned));
}

inline constexpr auto mean_bearing_load_record = record<&mean_bearing_load>(
    {.name = "mean_bearing_load",
     .meaning = "Steady equivalent load that wears a ball bearing as much as a duty profile does",
     .also = "cubic mean load|equivalent mean load|duty cycle bearing load|variable load",
     .inputs = {series("loads", "P_i", units::newton, bearings::load_n, "equivalent loads of the parts", 1),
                series("speeds", "n_i", units::rpm, between(0, 100000), "speeds of the parts", 1),
                series("times", "t_i", units::hour, from(0), "times of the parts; shares of a whole do as well", 1)},
     .results = {output("load", "P_m", units::newton, "mean equivalent load, to use with the mean speed")},
     .equation = "P_m = (Sum n_i t_i P_i^3/Sum n_i t_i)^(1/3)",
     .source = "linear damage with lives by the third power (from memory of ISO 281 texts); U. C. Jindal, Machine "
               "Design, ex. 18-9, in a published companion (read)",
     .cautions = {"A short time at closed valve, where the radial thrust is greatest, can outweigh the rest.",
                  bearings::life_guide},
     .example = {"[3000, 4000, 5000], [1440, 1080, 720], [0.25, 0.5, 0.25]", "3954.3",
                 "U. C. Jindal, Machine Design, ex. 18-9"}},
    pairs::equal_length<"speeds", "loads">(), pairs::equal_length<"times", "loads">());

}  // namespace cutwater::formulas

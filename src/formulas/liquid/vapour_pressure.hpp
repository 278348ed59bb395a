// Vapour pressure of other liquids: Antoine's equation with constants from a table, or a line through two known points.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"

#include <algorithm>
#include <cmath>

namespace cutwater {

/// The pressure and temperature that a table's Antoine constants are for. All with the logarithm to base 10.
enum class AntoineUnits { bar_K, bar_degC, mmHg_degC, mmHg_K, kPa_degC, kPa_K };
template <>
inline constexpr Words<6> words_of<AntoineUnits>{"bar_K", "bar_degC", "mmHg_degC", "mmHg_K", "kPa_degC", "kPa_K"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace antoine {

constexpr bool in_celsius(AntoineUnits u)
{
    return (u == AntoineUnits::bar_degC) | (u == AntoineUnits::mmHg_degC) | (u == AntoineUnits::kPa_degC);
}
inline constexpr Unit<AbsolutePressure> pressure_units[] = {units::bara,   units::bara,  units::mmHg_a,
                                                            units::mmHg_a, units::kPa_a, units::kPa_a};
constexpr Unit<AbsolutePressure> pressure_unit(AntoineUnits u) { return pressure_units[static_cast<int>(u)]; }
inline constexpr double zero_of_scale_K[] = {0, 273.15, 273.15, 0, 0, 273.15};
constexpr double temperature_number(Temperature t, AntoineUnits u)
{
    return units::kelvin.in(t)-zero_of_scale_K[static_cast<int>(u)];
}

// What the constants may give at the ends of their range, log10 of bara. Constants taken for other units mostly still
// give a number between.
inline constexpr double log_least = -9;                         // 1e-9 bara: far below what any pump could notice
inline constexpr double log_most_at_lowest = 1.30102999566398;  // 20 bara: tables begin near the boiling point at 1 atm
inline constexpr double log_most_at_highest =
    2.39794000867204;  // 250 bara: above water's critical pressure, the highest

}  // namespace antoine

inline Outcome<AbsolutePressure> vapour_pressure_antoine(Ratio a, Ratio b, Ratio c, Temperature temperature,
                                                         Temperature lowest_temperature,
                                                         Temperature highest_temperature, AntoineUnits constants_for,
                                                         Steps steps)
{
    const Unit<AbsolutePressure> unit = antoine::pressure_unit(constants_for);
    // Judged by their logarithms: a row of an array needs the power of one only.
    const auto log_at = [&](Temperature t) {
        return double(a - b / (antoine::temperature_number(t, constants_for) + c));
    };
    const double log_vapour = log_at(temperature), log_bar = elementary::log10(unit.in(units::bara(1)));
    const double log_lowest = log_at(lowest_temperature), log_highest = log_at(highest_temperature);
    const bool pumped = (log_vapour - log_bar >= antoine::log_least) &
                        (log_lowest - log_bar <= antoine::log_most_at_lowest) &
                        (log_highest - log_bar <= antoine::log_most_at_highest);
    const auto pressure = [&](double log) { return unit(elementary::exp10(log)); };
    const AbsolutePressure vapour = pressure(log_vapour);
    if (!pumped)
        return NoValue{
            .status = CUTWATER_NO_ANSWER,
            .argument = "constants_for",
            .sentence =
                "constants_for does not fit: the constants give {0} here, {1} at their lowest temperature and {2} at "
                "their highest, which no liquid to be pumped has: they are for other units of pressure or "
                "temperature, or for the natural logarithm",
            .numbers = {number_in(vapour, units::bara), number_in(pressure(log_lowest), units::bara),
                        number_in(pressure(log_highest), units::bara)}};
    const double boiling = b / (a - elementary::log10(unit.in(units::atm_a(1)))) - c;
    steps("T_b", "where the constants reach 1 atm; compare it with the liquid's known boiling point",
          antoine::in_celsius(constants_for) ? units::degC(boiling) : units::kelvin(boiling), units::degC);
    return vapour;
}

inline constexpr auto vapour_pressure_antoine_record = record<&vapour_pressure_antoine>(
    {.name = "vapour_pressure_antoine",
     .meaning = "Vapour pressure of a liquid from its Antoine constants",
     .also = "vapor pressure|Antoine equation|saturation pressure of a liquid",
     .inputs = {input("constant_a", "A", units::number, between(-20, 30), "constant A, for the logarithm to base 10"),
                input("constant_b", "B", units::number, above_up_to(0, 20000), "constant B"),
                input("constant_c", "C", units::number, between(-300, 600), "constant C"),
                input("temperature", "T", units::degC, above_up_to(-273.15, 1000), "temperature of the liquid"),
                input("lowest_temperature", "T_min", units::degC, above_up_to(-273.15, 1000),
                      "lowest temperature that the constants hold for"),
                input("highest_temperature", "T_max", units::degC, above_up_to(-273.15, 1000),
                      "highest temperature that the constants hold for"),
                choice<AntoineUnits>("constants_for", "-",
                                     "pressure and temperature unit of the table that the constants come from; "
                                     "the temperatures given here do not follow it")},
     .results = {output("vapour_pressure", "p_v", units::bara, "vapour pressure at the temperature")},
     .equation = "log10(p_v) = A - B/(T + C), p_v and T in the units of the constants",
     .source = "C. Antoine, Comptes Rendus 107 (1888) 681; form as in Poling, Prausnitz, O'Connell, The Properties of "
               "Gases and "
               "Liquids, 5th ed. 2001, chapter 7 (from memory of both)",
     .cautions =
         {"Tables of Antoine constants differ in the unit of pressure, of temperature and in the logarithm: check the "
          "constants against the liquid's known boiling point.",
          "Antoine's equation is for a pure liquid; the light parts of a mixture raise its vapour pressure.",
          caution::inlet_vapour_pressure, caution::hot_or_toxic},
     .given_once = {"constant_a", "constant_b", "constant_c", "lowest_temperature", "highest_temperature"},
     .sound_anywhere = true,
     .example = {"4.02232, 1206.53, 220.291, 80.1, 5.5, 104, \"bar_degC\"", "1.01",
                 "benzene boils at 80.1 degC at 1.01325 bara; constants as tabulated for bar and degC"}},
    relation<"highest_temperature", "lowest_temperature">(
        [](Temperature highest, Temperature lowest) { return lowest < highest; },
        "the constants' highest temperature must lie above their lowest"),
    relation<"temperature", "lowest_temperature", "highest_temperature">(
        [](Temperature t, Temperature lowest, Temperature highest) { return (t >= lowest) & (t <= highest); },
        "the constants hold only from lowest_temperature to highest_temperature"),
    relation<"constant_c", "lowest_temperature", "constants_for">(
        [](Ratio c, Temperature lowest, AntoineUnits u) { return antoine::temperature_number(lowest, u) + c > 0; },
        "T + C must stay above 0 over the constants' whole range: the constants are for another unit of temperature"));

namespace two_point {
// Own rules. Closer points than this let a reading's error rule the slope; further out the straight line is a guess.
inline constexpr double least_span_K = 5;
inline constexpr double share_beyond = 0.5;
inline constexpr double most_beyond_K = 25;
inline constexpr double rounding_K = 1e-6;

inline double span_K(Temperature first, Temperature second)
{
    return std::abs(units::kelvin_difference.in(second - first));
}
inline bool near(double t, double first, double second)
{
    const double low = std::min(first, second);
    const double high = std::max(first, second);
    const double allowed = std::min(share_beyond * (high - low), most_beyond_K) + rounding_K;
    return (t >= low - allowed) & (t <= high + allowed);
}
}  // namespace two_point

inline AbsolutePressure vapour_pressure_two_point(Temperature first_temperature, AbsolutePressure first_pressure,
                                                  Temperature second_temperature, AbsolutePressure second_pressure,
                                                  Temperature temperature)
{
    const auto inverse = [](Temperature t) { return 1.0 / t.above_zero(); };
    const double along = (inverse(temperature) - inverse(first_temperature)) /
                         (inverse(second_temperature) - inverse(first_temperature));
    const double rise = elementary::log(second_pressure.above_zero() / first_pressure.above_zero());
    return AbsolutePressure::at(first_pressure.above_zero() * elementary::exp(along * rise));
}

inline constexpr auto vapour_pressure_two_point_record = record<&vapour_pressure_two_point>(
    {.name = "vapour_pressure_two_point",
     .meaning = "Vapour pressure of a liquid between two known points",
     .also = "vapor pressure|Clausius-Clapeyron|boiling point at another pressure",
     .inputs = {input("first_temperature", "T_1", units::degC, above_up_to(-273.15, 1000),
                      "temperature of the first point"),
                input("first_pressure", "p_1", units::bara, above_up_to(0, 1000), "vapour pressure at the first point"),
                input("second_temperature", "T_2", units::degC, above_up_to(-273.15, 1000),
                      "temperature of the second point"),
                input("second_pressure", "p_2", units::bara, above_up_to(0, 1000),
                      "vapour pressure at the second point"),
                input("temperature", "T", units::degC, above_up_to(-273.15, 1000), "temperature of the liquid")},
     .results = {output("vapour_pressure", "p_v", units::bara, "vapour pressure at the temperature")},
     .equation = "ln p_v = ln p_1 + (ln p_2 - ln p_1) (1/T - 1/T_1)/(1/T_2 - 1/T_1), T in kelvin",
     .source = "Clausius-Clapeyron equation, integrated with a constant heat of vaporisation; Poling, Prausnitz, "
               "O'Connell, The "
               "Properties of Gases and Liquids, 5th ed. 2001, chapter 7 (from memory of it); limits of span: common "
               "practice",
     .cautions = {"Between the points the line reads a little low, for water 0.7 % half-way from 60 to 100 degC; "
                  "beyond them it is "
                  "less certain.",
                  caution::inlet_vapour_pressure, caution::hot_or_toxic},
     .given_once = {"first_temperature", "first_pressure", "second_temperature", "second_pressure"},
     .sound_anywhere = true,
     .example = {"60, 0.199458, 100, 1.01418, 80", "0.47096",
                 "calculation by hand; the true value for water is 0.47415 bara"}},
    relation<"second_temperature", "first_temperature">(
        [](Temperature t2, Temperature t1) {
            return two_point::span_K(t1, t2) >= two_point::least_span_K - two_point::rounding_K;
        },
        "the two points must lie at least 5 K apart"),
    relation<"second_pressure", "first_temperature", "first_pressure", "second_temperature">(
        [](AbsolutePressure p2, Temperature t1, AbsolutePressure p1, Temperature t2) {
            return ((t2 > t1) == (p2 > p1)) & !(p1 == p2);
        },
        "the warmer point must have the higher vapour pressure"),
    relation<"temperature", "first_temperature", "second_temperature">(
        [](Temperature t, Temperature t1, Temperature t2) {
            return two_point::near(units::kelvin.in(t), units::kelvin.in(t1), units::kelvin.in(t2));
        },
        "it may lie outside the two points by no more than half the distance between them, and by no more than 25 K"));

}  // namespace cutwater::formulas

// The wall that a pressure needs, and how long corrosion leaves it.
#pragma once

#include "catalogue/as_given.hpp"
#include "formulas/containment/casing_pressure.hpp"

#include <tuple>

namespace cutwater::formulas {

namespace wall {

inline constexpr const char* plain_cylinder =
    "A plain cylinder. A volute with its flat sides, tongue and nozzles needs more: for a pump casing it is a lower "
    "bound, and the pump maker's wall goes before it.";
inline constexpr const char* test_may_govern =
    "The hydrostatic test at cold stress, not the hot duty, may set the wall: work out both.";
inline constexpr const char* uniform =
    "Uniform attack only. Pits, cracks, erosion at the tongue and under deposits go faster than a mean rate and are "
    "the usual end of a casing.";

constexpr auto pressure() { return input("pressure", "P", units::barg, above_up_to(0, 1000), "design gauge pressure"); }
constexpr auto stress()
{
    return input("allowable_stress", "S", units::MPa, above_up_to(0, 1000),
                 "allowable stress of the material at its temperature, by the code that governs");
}
constexpr auto quality()
{
    return input(
        "quality_factor", "E", units::number, between(0.5, 1),
        "quality factor of the casting or weld: 0.80 for an ordinary steel casting by ASME B31.3, 1 for seamless pipe",
        0.8);
}
constexpr auto y_factor()
{
    return input("y_factor", "Y", units::number, between(0, 0.7),
                 "0.4 for ductile metals to 482 degC, 0 for cast iron, by ASME B31.3", 0.4);
}
constexpr auto allowance()
{
    return input("corrosion_allowance", "c", units::mm, between(0, 100),
                 "corrosion and wear allowance; 3 mm is usual for pump casings", 0);
}
constexpr auto undertolerance()
{
    return input("undertolerance", "u", units::fraction, from_below(0, 0.5),
                 "part by which the wall may be thinner than ordered: 12.5 % for pipe", 0);
}

inline constexpr const char* source =
    "ASME B31.3 304.1.2, equation (3b), for t < D/6 and P/(S E) <= 0.385 (excerpts of five plant "
    "calculations, 2008 and 2012 editions, read)";

using Walls = std::tuple<Length, Length, Length>;

inline NoValue loaded_too_much(Ratio load)
{
    return {CUTWATER_NO_ANSWER,
            "pressure",
            "it is {0} of the allowable stress; above 0.385 the formula does not hold and the code asks for special "
            "study",
            {number_in(load, units::number)}};
}
inline NoValue too_thick(Length pressure_wall)
{
    return {CUTWATER_NO_ANSWER,
            "pressure",
            "the wall for the pressure comes to {0}, a sixth of the diameter or more: the formula is for thinner walls",
            {number_in(pressure_wall, units::mm)}};
}

inline Outcome<Walls> thin(Length pressure_wall, Length outside, Stress pressure, Stress strength, Length allowance,
                           Fraction undertolerance)
{
    const Ratio load = pressure / strength;
    const bool within = load <= Ratio(0.385);
    const bool holds = within & (6.0 * pressure_wall < outside);
    const Length least = pressure_wall + allowance;
    return {Walls{pressure_wall, least, least / (1.0 - undertolerance.value)}, holds,
            within ? too_thick(pressure_wall) : loaded_too_much(load)};
}

}  // namespace wall

inline Outcome<wall::Walls> wall_needed_from_bore(GaugePressure pressure, Length bore, Stress stress, Ratio quality,
                                                  Ratio y, Length allowance, Fraction undertolerance)
{
    const Stress p = pressure.above_zero();
    const Stress strength = stress * quality;
    const Length corroded_bore = bore + 2.0 * allowance;
    const Length t = p * corroded_bore / (2.0 * (strength - p * (1.0 - y)));
    return wall::thin(t, corroded_bore + 2.0 * t, p, strength, allowance, undertolerance);
}

inline constexpr Record<&wall_needed_from_bore> wall_needed_from_bore_record{
    .name = "wall_needed_from_bore",
    .meaning = "Wall that a cylinder under inside pressure needs, from its bore",
    .also = "minimum wall thickness|required wall|barrel wall|casing wall|pressure design thickness",
    .inputs = {wall::pressure(), input("bore", "d", units::mm, limits::bore_mm, "inside diameter as new"),
               wall::stress(), wall::quality(), wall::y_factor(), wall::allowance(), wall::undertolerance()},
    .results = {output("pressure_wall", "t", units::mm, "wall for the pressure alone"),
                output("least_wall", "t_m", units::mm, "least wall, corrosion allowance included"),
                output("nominal_wall", "t_n", units::mm, "wall to order, undertolerance included")},
    .equation = "t = P (d + 2 c)/(2 (S E - P (1 - Y))), t_m = t + c, t_n = t_m/(1 - u)",
    .source = wall::source,
    .cautions = {wall::plain_cylinder, wall::test_may_govern, wall::uniform, caution::pressure_containment},
    .example = {"20, 250, 115, 0.8, 0.4, 3", "2.8194, 5.8194, 5.8194", "hand calculation: 2 x 256/(2 (92 - 2 x 0.6))"}};

inline std::tuple<AsGiven<units::mm_year>, AsGiven<units::year>> corrosion_life_from_readings(
    AsGiven<units::mm> wall_before, AsGiven<units::mm> wall_now, AsGiven<units::year> between_readings,
    AsGiven<units::mm> wall_needed)
{
    const auto rate = quotient<units::mm_year>(wall_before - wall_now, between_readings);
    return {rate, quotient<units::year>(wall_now - wall_needed, rate)};
}

inline constexpr auto corrosion_life_from_readings_record = record<&corrosion_life_from_readings>(
    {.name = "corrosion_life_from_readings",
     .meaning = "Time until corrosion has taken the wall down to what the pressure needs, from two readings",
     .also = "remaining life|remnant life|corrosion allowance life|wall thinning|wall loss|UT readings",
     .inputs = {input("wall_before", "t_1", units::mm, above_up_to(0, 1000),
                      "wall at the earlier reading, or as new; take the thinnest place"),
                input("wall_now", "t_2", units::mm, above_up_to(0, 1000),
                      "wall at the later reading, at the same place"),
                input("interval", "dt", units::year, above_up_to(0, 1000), "time between the readings"),
                input("wall_needed", "t_m", units::mm, between(0, 1000),
                      "least wall for the pressure, as from wall_needed or wall_needed_from_bore without allowance")},
     .results = {output("rate", "r", units::mm_year, "mean rate between the readings"),
                 output("life", "L", units::year, "time from the later reading on")},
     .equation = "r = (t_1 - t_2)/dt, L = (t_2 - t_m)/r",
     .source = "remaining life as in API 570 (a course text and a worked sheet read, the standard from memory)",
     .cautions = {wall::uniform,
                  "Inspect again at half of it at the latest: the rate of the next years need not be the last ones'. "
                  "Take the greater of the short and the long term rate.",
                  caution::pressure_containment},
     .sound_anywhere = true,
     .example = {"9, 6.6, 3, 3.2", "0.8, 4.25", "hand calculation: 2.4/3; 3.4/0.8"}},
    relation<"wall_now", "wall_before">([](AsGiven<units::mm> now, AsGiven<units::mm> before) { return now < before; },
                                        "it must be less than the earlier wall: without a loss between the readings "
                                        "there is no rate"),
    relation<"wall_needed", "wall_now">([](AsGiven<units::mm> needed, AsGiven<units::mm> now) { return needed <= now; },
                                        "it must be at most the wall that is left: the wall is used up already"));

}  // namespace cutwater::formulas

// Wall: what pressure needs, what corrosion takes, how long it lasts.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/as_given.hpp"
#include "catalogue/record.hpp"

#include <tuple>

namespace cutwater::formulas {

namespace corrosion {

inline constexpr Interval thickness_mm = above_up_to(0, 500);
inline constexpr Interval rate_mm_year = above_up_to(0, 1000);
inline constexpr const char* uniform_only = "For uniform attack alone: pitting, crevice and stress corrosion, erosion "
                                            "and attack at welds go faster and break through without warning.";
inline constexpr const char* inspection =
    "Inspection codes set the interval and the method; a measured minimum counts, not the mean.";

}  // namespace corrosion

inline Velocity corrosion_rate(Mass loss, Area area, Time exposure, Density density)
{
    return loss / (area * exposure * density);
}

inline constexpr auto corrosion_rate_record = record<&corrosion_rate>(
    {.name = "corrosion_rate",
     .meaning = "Rate of uniform corrosion from the mass that a specimen lost",
     .also = "corrosion coupon|penetration rate|mils per year|mpy",
     .inputs = {input("mass_loss", "W", units::gram, between(0, 1e6), "mass lost, after cleaning"),
                input("area", "A", units::cm2, above_up_to(0, 1e7), "area exposed"),
                input("exposure", "T", units::hour, above_up_to(0, 1e7), "time of exposure"),
                input("density", "D", units::kgm3, between(500, 25000), "density of the metal")},
     .results = {output("rate", "r", units::mm_year, "depth lost in a year of 8760 h")},
     .equation = "r = W/(A T D)",
     .source = "ASTM G1, corrosion rate (from memory of it; the constants 87.6 and 534 for mg, cm2 or in2 are these "
               "units, read in several texts)",
     .cautions = {corrosion::uniform_only, "A coupon in the vessel tells nothing of the velocity in a pump."},
     .sound_anywhere = true,
     .example = {"485, \"100 in2\", 8760, 7900", "0.951584",
                 "W. D. Callister, Materials Science and Engineering, steel plate: printed 0.952 (second hand)"}});

inline std::tuple<AsGiven<units::year>, AsGiven<units::mm>> corrosion_life(AsGiven<units::mm> wall,
                                                                           AsGiven<units::mm> needed,
                                                                           AsGiven<units::mm_year> rate)
{
    const AsGiven<units::mm> spare = wall - needed;
    return {quotient<units::year>(spare, rate), spare};
}

inline constexpr auto corrosion_life_record = record<&corrosion_life>(
    {.name = "corrosion_life",
     .meaning = "Time until corrosion has brought a wall down to what it needs",
     .also = "remaining life|retirement thickness|corrosion allowance life",
     .inputs = {input("wall", "t", units::mm, corrosion::thickness_mm,
                      "least thickness measured, or the new wall less its tolerance"),
                input("wall_needed", "t_n", units::mm, between(0, 500),
                      "thickness that pressure and stiffness need, as from wall_needed without allowance"),
                input("corrosion_rate", "r", units::mm_year, corrosion::rate_mm_year,
                      "rate of uniform corrosion; of both sides together where both are wetted")},
     .results = {output("life", "L", units::year, "time left, running at that rate"),
                 output("allowance", "c", units::mm, "thickness that may still corrode")},
     .equation = "L = (t - t_n)/r",
     .source = "API 570, remaining life (from memory of it; the same relation in an inspection sheet, excerpt read)",
     .cautions = {corrosion::uniform_only, corrosion::inspection, caution::pressure_containment},
     .sound_anywhere = true,
     .example = {"3.24, 0.37, 0.34", "8.44118, 2.87", "an inspection sheet: printed 8.441"}},
    relation<"wall_needed", "wall">(
        [](AsGiven<units::mm> needed, AsGiven<units::mm> t) { return needed <= t; },
        "it must not exceed the wall that there is: nothing is left to corrode, take the part out of service"));

inline Outcome<std::tuple<Length, Length>> wall_needed(PressureDifference pressure, Length outside, Stress allowable,
                                                       Fraction joint, Ratio coefficient, Length allowance,
                                                       Fraction tolerance)
{
    const double d = outside.value();
    const Length for_pressure = Length::from_value(
        pressure.value() * d / (2 * (allowable.value() * joint.value + pressure.value() * coefficient.value())));
    if (!(for_pressure < outside / 6.0) | (pressure.value() > 0.385 * allowable.value() * joint.value))
        return NoValue{
            CUTWATER_NO_ANSWER,
            "pressure",
            "{0} asks for a wall of {1}; the formula holds below a sixth of the diameter and up to 0.385 of the stress",
            {number_in(pressure, units::bar), number_in(for_pressure, units::mm)}};
    return std::tuple(for_pressure, (for_pressure + allowance) / (1 - tolerance.value));
}

inline constexpr auto wall_needed_record = record<&wall_needed>(
    {.name = "wall_needed",
     .meaning = "Wall that a cylinder under inside pressure needs, with corrosion allowance and tolerance",
     .also = "minimum wall thickness|pressure design thickness|retirement thickness",
     .inputs = {input("pressure", "P", units::bar, above_up_to(0, 10000),
                      "inside pressure over the outside one, the highest: test pressure apart"),
                input("outside_diameter", "D", units::mm, above_up_to(0, 10000), "outside diameter"),
                input("allowable_stress", "S", units::MPa, between(1, 2000),
                      "of the material at the temperature, from the code that applies"),
                input(
                    "joint_factor", "E", units::fraction, between(0.3, 1),
                    "quality of casting or weld: 0.80 for an ordinary steel casting by ASME B31.3, 1 for seamless pipe",
                    0.8),
                input("coefficient", "Y", units::number, between(0, 0.7), "0.4 for ductile metals up to 482 degC", 0.4),
                input("corrosion_allowance", "c", units::mm, between(0, 100), "thickness to be left for corrosion", 0),
                input("under_tolerance", "u", units::fraction, between(0, 0.5),
                      "part by which the wall may come out thin; 0.125 for most pipe", 0)},
     .results = {output("pressure_wall", "t", units::mm, "thickness for the pressure alone"),
                 output("ordered_wall", "t_n", units::mm, "thickness to order, allowance and tolerance in")},
     .equation = "t = P D/(2 (S E + P Y)); t_n = (t + c)/(1 - u); for t < D/6 and P <= 0.385 S E",
     .source =
         "ASME B31.3, 304.1.2, equation 3a, W = 1 (excerpts read in plant calculations of the 2008 and 2012 editions)",
     .cautions = {"For straight cylinders: a volute's cut-water, flanges, nozzles and flat covers need the pump "
                  "maker's design or a stress analysis.",
                  "The test pressure can ask for more than the hot case: check both.", caution::pressure_containment},
     .example = {"45.1, 762, 142.7215, 1", "11.8893, 11.8893", "a plant sheet to B31.3-2008: printed 11.889"}});

}  // namespace cutwater::formulas

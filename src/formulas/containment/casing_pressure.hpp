// The greatest pressure that a casing can see, and the pressure it is tested at.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <tuple>

namespace cutwater::formulas {

namespace containment {

inline constexpr const char* casing_source =
    "ISO 13709:2003 5.3.1 and 5.3.2 by a published comparison with the edition before it (excerpt read): greatest "
    "suction pressure and the rise of the impeller as supplied; on request at "
    "the greatest density, the largest impeller, the trip speed; margin of 10 % of the rise: a summary of API 610 "
    "(read); ISO 5199:2002 4.4 (from memory of it)";
inline constexpr const char* largest_impeller =
    "Take the head of the largest impeller that may ever be fitted, and the highest point of the curve: a drooping "
    "curve peaks away from closed valve.";
inline constexpr const char* suction_at_worst =
    "The greatest suction pressure is that of the relief valve or of blocked-in upstream plant, with the highest "
    "level, not of the normal duty.";
inline constexpr const char* surge_apart =
    "Surge, trapped liquid that warms and a relief valve's accumulation come on top of it.";

constexpr auto shutoff_head()
{
    return input("shutoff_head", "H_0", units::metre, above(0),
                 "greatest head of the largest impeller at rated speed, mostly at closed valve");
}
constexpr auto greatest_density()
{
    return input("density", "rho", units::kgm3, limits::density_kgm3,
                 "greatest density that the pump may meet, start-up and flushing included");
}
constexpr auto head_tolerance()
{
    return input(
        "head_tolerance", "t", units::fraction, between(0, 0.3),
        "head by which the curve may exceed the published one; ISO 9906 (from memory): 2B 5 %, 1U 6 %, 3B 7 %, "
        "2U 10 %, up to 10 kW 8 %",
        0.05);
}
constexpr auto speed_ratio()
{
    return input("speed_ratio", "n/n_0", units::number, between(1, 1.5),
                 "greatest speed over rated speed: a turbine's trip speed, a converter's upper limit", 1);
}

inline PressureDifference greatest_rise(Head shutoff, Density density, Fraction tolerance, Ratio speed)
{
    return density * standard_gravity * shutoff * (1.0 + tolerance.value) * (speed * speed);
}

}  // namespace containment

inline PressureDifference shutoff_pressure(Head shutoff, Density density, Fraction tolerance, Ratio speed)
{
    return containment::greatest_rise(shutoff, density, tolerance, speed);
}

inline constexpr Record<&shutoff_pressure> shutoff_pressure_record{
    .name = "shutoff_pressure",
    .meaning = "Greatest pressure rise of a pump: at closed valve, greatest density, head tolerance and speed",
    .also = "deadhead pressure|dead head pressure|pressure at closed discharge|shut-off differential pressure",
    .inputs = {containment::shutoff_head(), containment::greatest_density(), containment::head_tolerance(),
               containment::speed_ratio()},
    .results = {output("pressure_rise", "dp_0", units::bar, "greatest pressure rise between the branches")},
    .equation = "dp_0 = rho g H_0 (1 + t)(n/n_0)^2",
    .source = containment::casing_source,
    .cautions = {containment::largest_impeller, caution::closed_valve},
    .example = {"60, 1830, 0.05, 1", "11.306", "hand calculation: 1830 x 9.80665 x 60 x 1.05 Pa"}};

inline std::tuple<GaugePressure, GaugePressure> casing_pressure(GaugePressure suction, Head shutoff, Density density,
                                                                Fraction tolerance, Ratio speed, Fraction margin,
                                                                Steps steps)
{
    const PressureDifference rise = containment::greatest_rise(shutoff, density, tolerance, speed);
    steps("dp_0", "rho g H_0 (1 + t)(n/n_0)^2", rise, units::bar);
    return {suction + rise, suction + rise * (1.0 + margin.value)};
}

inline constexpr Record<&casing_pressure> casing_pressure_record{
    .name = "casing_pressure",
    .meaning = "Greatest pressure in a pump's casing, to be held against its rating",
    .also = "maximum discharge pressure|maximum casing pressure|basic design pressure|maximum allowable working "
            "pressure|MAWP|required casing rating",
    .inputs = {input("suction_pressure", "p_1", units::barg, limits::suction_barg,
                     "greatest gauge pressure at the suction branch"),
               containment::shutoff_head(), containment::greatest_density(), containment::head_tolerance(),
               containment::speed_ratio(),
               input("rating_margin", "m", units::fraction, between(0, 1),
                     "part of the rise to be kept below the rating: ISO 13709 10 %, others leave it open", 0.1)},
    .results = {output("casing_pressure", "p_c", units::barg, "greatest gauge pressure in the casing"),
                output("rating_needed", "p_R", units::barg, "rating that the casing needs at its temperature")},
    .equation = "p_c = p_1 + dp_0, p_R = p_1 + (1 + m) dp_0, dp_0 = rho g H_0 (1 + t)(n/n_0)^2",
    .source = containment::casing_source,
    .cautions = {containment::largest_impeller, containment::suction_at_worst, containment::surge_apart,
                 caution::pressure_containment},
    .example = {"2, 60, 1830, 0.05, 1, 0.1", "13.306, 14.437", "hand calculation: 2 + 11.306; 2 + 1.1 x 11.306"}};

inline GaugePressure hydrostatic_test_pressure(GaugePressure allowable, Ratio factor, Ratio strength)
{
    return GaugePressure::at(allowable.above_zero() * factor * strength);
}

inline constexpr Record<&hydrostatic_test_pressure> hydrostatic_test_pressure_record{
    .name = "hydrostatic_test_pressure",
    .meaning = "Pressure of the hydrostatic test of a casing",
    .also = "hydrotest pressure|hydro test|proof pressure|strength test",
    .inputs =
        {input("allowable_pressure", "p", units::barg, above_up_to(0, 1000),
               "allowable working pressure, at the temperature the strength ratio belongs to"),
         input("factor", "f", units::number, between(1, 2),
               "1.5 by the pump standards; for vessels 1.3 by ASME VIII-1; 2014/68/EU: the greater of 1.43 with ratio "
               "1 and 1.25 with the ratio",
               1.5),
         input("strength_ratio", "S_T/S", units::number, between(1, 6.5),
               "allowable stress at the test's temperature over that at the working temperature", 1)},
    .results = {output("test_pressure", "p_T", units::barg, "least gauge pressure of the test")},
    .equation = "p_T = f p (S_T/S)",
    .source =
        "f = 1.5: ISO 5199:2002 6.3 and ISO 13709:2009 8.3.2 (from memory of both); strength ratio, at most 6.5: ASME "
        "B31.3 345.4.2(b) "
        "(excerpts of plant calculations read, the limit from memory)",
    .cautions = {"Water below 7 degC or a brittle casing is no test medium; austenitic steel wants water low in "
                 "chloride. Vent all air: compressed air makes the test dangerous.",
                 "Do not pass the yield of casing or bolts at the test.",
                 "Weaker parts joined to the casing (seal, cooling jacket, shell of a sealed drive) have limits of "
                 "their own.",
                 caution::pressure_containment},
    .sound_anywhere = true,
    .example = {"13.306", "19.959", "hand calculation: 1.5 x 13.306"}};

}  // namespace cutwater::formulas

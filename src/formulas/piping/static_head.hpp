// Static head of a system, and the times in which tanks empty and fill.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <cmath>
#include <numbers>

namespace cutwater::formulas {

inline Head static_head_from_levels(Length suction_level, Length discharge_level, AbsolutePressure suction_pressure,
                                    AbsolutePressure discharge_pressure, Density density, Steps steps)
{
    const Head pressure = (discharge_pressure - suction_pressure) / (density * standard_gravity);
    steps("z_2 - z_1", "difference of the levels", discharge_level - suction_level, units::metre);
    steps("(p_2 - p_1)/(rho g)", "head of the vessels' pressures", pressure, units::metre);
    return discharge_level - suction_level + pressure;
}

inline constexpr Record<&static_head_from_levels> static_head_from_levels_record{
    .name = "static_head_from_levels",
    .meaning = "Static head of a system from the levels and pressures of its two vessels",
    .also = "total static head|static lift|elevation head|level difference",
    .inputs =
        {input("suction_level", "z_1", units::metre, any, "surface in the suction vessel above any datum"),
         input(
             "discharge_level", "z_2", units::metre, any,
             "surface in the discharge vessel above the same datum; of a line that ends above the surface, its outlet"),
         input("suction_surface_pressure", "p_1", units::bara, between(0, 500),
               "pressure on the surface in the suction vessel"),
         input("discharge_surface_pressure", "p_2", units::bara, between(0, 500),
               "pressure on the surface in the discharge vessel"),
         input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid")},
    .results = {output("static_head", "H_s", units::metre, "head at no flow; negative: the liquid flows by itself")},
    .equation = "H_s = z_2 - z_1 + (p_2 - p_1)/(rho g)",
    .source =
        "Bernoulli's equation between two surfaces at rest; Hydraulic Institute, Engineering Data Book, system curves "
        "(public text read)",
    .cautions = {"Take the lowest suction level and the highest discharge level for the greatest head, and the reverse "
                 "for the least: "
                 "a pump must suit both.",
                 "A siphon's crest may ask for more head while the line is filled than afterwards."},
    .sound_anywhere = true,
    .example = {"2, 30, 1.01325, 1.01325, 998.2", "28", "hand calculation"}};

namespace tanks {

inline constexpr const char* still =
    "A wide tank whose surface moves slowly; a vortex at the outlet draws air and slows the flow.";

inline double root_between(Length high, Length low) { return std::sqrt(high.value()) - std::sqrt(low.value()); }

}  // namespace tanks

inline Time tank_discharge_time(Area surface, Length first_level, Length last_level, Length outlet_bore,
                                Ratio discharge_coefficient)
{
    const Area outlet = std::numbers::pi / 4 * outlet_bore * outlet_bore;
    const double per_root = std::sqrt(2 / standard_gravity.value());
    return Time::from_value(Ratio(surface / outlet).value() / discharge_coefficient.value() * per_root *
                            tanks::root_between(first_level, last_level));
}

inline constexpr auto tank_discharge_time_record = record<&tank_discharge_time>(
    {.name = "tank_discharge_time",
     .meaning = "Time in which an upright open tank empties by gravity from one level to another",
     .also = "drain time|emptying time|draining a tank",
     .inputs = {input("surface", "A", units::m2, above(0), "surface of the liquid, the same at every level"),
                input("first_level", "z_1", units::metre, from(0), "level above the outlet at the beginning"),
                input("last_level", "z_2", units::metre, from(0), "level above the outlet at the end"),
                input("outlet_bore", "d", units::mm, limits::bore_mm, "bore of the outlet"),
                input(
                    "discharge_coefficient", "C", units::number, above_up_to(0, 1),
                    "of outlet and line: about 0.6 for a sharp-edged hole; with a line of loss coefficients K in all, "
                    "1/sqrt(1 + K)")},
     .results = {output("time", "t", units::second, "time taken")},
     .equation = "t = A/(C a) sqrt(2/g) (sqrt(z_1) - sqrt(z_2)), a = pi/4 d^2",
     .source = "Torricelli's law integrated over the level, any textbook of hydraulics",
     .cautions = {tanks::still,
                  "Both surfaces are at the same pressure: a closed tank without a vent stops, or is crushed."},
     .example = {"3, 2, 0.5, 50, 0.6", "813.17", "hand calculation: 3/(0.6 x 0.0019635) x 0.451601 x 0.707107"}},
    relation<"last_level", "first_level">([](Length last, Length first) { return last <= first; },
                                          "the tank empties: the last level must not be above the first"));

inline Time filling_time(Volume volume, Flow inflow, Flow outflow) { return volume / (inflow - outflow); }

inline constexpr auto filling_time_record = record<&filling_time>(
    {.name = "filling_time",
     .meaning = "Time in which a volume fills, or empties, by steady flows in and out",
     .also = "fill time|turnover time|hold-up time|pump-out time",
     .inputs = {input("volume", "V", units::m3, from(0), "volume to fill"),
                input("inflow", "Q_in", units::m3h, from(0), "flow in"),
                input("outflow", "Q_out", units::m3h, from(0), "flow out at the same time", 0)},
     .results = {output("time", "t", units::minute, "time taken")},
     .equation = "t = V/(Q_in - Q_out)",
     .source = "volume balance",
     .cautions =
         {"Leave room for the liquid's expansion and for the time in which the level switch and the valve act."},
     .sound_anywhere = true,
     .example = {"14.95, 5", "179.4", "hand calculation"}},
    relation<"inflow", "outflow">([](Flow in, Flow out) { return in > out; }, "more must flow in than out"));

}  // namespace cutwater::formulas

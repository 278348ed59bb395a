// Suction side: net positive suction head offered by the installation, and the greatest lift.
#pragma once

#include "formulas/system/pipe.hpp"

namespace cutwater::formulas {

namespace suction {

inline constexpr const char* negative = "A negative result is a true answer: the liquid boils before it reaches the "
                                        "pump, and nothing can be pumped as drawn.";
inline constexpr const char* datum = "NPSH datum: the centre of the circle through the outermost points of the leading "
                                     "edges of the first-stage impeller's vanes. "
                                     "Measure elevations from there, or add the shift.";
inline constexpr const char* both_or_none =
    "NPSH available and NPSH3 must stand at one datum before they are compared: "
    "bid sheets mix the shaft's centre line, the branch and the foundation.";
inline constexpr const char* not_boiling =
    "the vapour pressure must be at most the surface pressure: the liquid would boil at its surface";

}  // namespace suction

/// Head of the liquid above its vapour pressure at the impeller's inlet datum.
inline Head npsh_available(AbsolutePressure surface, AbsolutePressure vapour, Density density, Length level,
                           Head friction, Steps steps)
{
    steps("p_s/(rho g)", "head of the surface pressure", surface.above_zero() / (density * standard_gravity),
          units::metre);
    steps("p_v/(rho g)", "head of the vapour pressure", vapour.above_zero() / (density * standard_gravity),
          units::metre);
    steps("z - h_f", "static head less losses", level - friction, units::metre);
    return (surface - vapour) / (density * standard_gravity) + level - friction;
}

inline constexpr auto npsh_available_record = record<&npsh_available>(
    {.name = "npsh_available",
     .meaning = "Net positive suction head that the installation offers",
     .also = "NPSHA|NPSH available|suction head|suction safe|is it safe on suction|cavitation|"
             "flooded suction|suction lift",
     .inputs = {input("surface_pressure", "p_s", units::bara, limits::surface_bara,
                      "pressure on the liquid's surface in the suction vessel"),
                input("vapour_pressure", "p_v", units::bara, limits::vapour_bara,
                      "vapour pressure at the temperature of the liquid at the inlet"),
                input("density", "rho", units::kgm3, limits::density_kgm3,
                      "density of the liquid at the same temperature"),
                input("liquid_level", "z", units::metre, any,
                      "lowest surface above the pump's NPSH datum; negative for a lift"),
                input("friction_head", "h_f", units::metre, from(0),
                      "losses of the suction line at the duty, its entry included")},
     .results = {output("npsh", "NPSHA", units::metre, "net positive suction head available at the datum")},
     .equation = "NPSHA = (p_s - p_v)/(rho g) + z - h_f",
     .source = "ISO 17769-1:2012, net positive suction head and its datum; ANSI/HI 9.6.1-2012 (from memory of both); "
               "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read)",
     .cautions = {suction::datum, caution::inlet_vapour_pressure, caution::npsh_margin, suction::negative,
                  caution::hot_or_toxic},
     .sound_anywhere = true,
     .example = {"1.01325, 0.02339, 998.2, 2, 0.5", "11.612", "hand calculation: 98986/(998.2 x 9.80665) + 2 - 0.5"}},
    relation<"vapour_pressure", "surface_pressure">(
        [](AbsolutePressure vapour, AbsolutePressure surface) { return vapour <= surface; }, suction::not_boiling));

/// The same from a gauge at the pump's suction branch, where the liquid moves: its velocity head counts.
inline Head npsh_available_from_gauge(GaugePressure gauge, AbsolutePressure ambient, Length gauge_elevation,
                                      Length bore, Flow flow, Density density, AbsolutePressure vapour, Steps steps)
{
    const PressureDifference above_vapour = gauge.above_zero() + (ambient - vapour);
    const Head pressure = above_vapour / (density * standard_gravity);
    const Velocity velocity = pipe_velocity(flow, bore);
    const Head moving = head_of_velocity(velocity);
    steps("(p_1 + p_amb - p_v)/(rho g)", "head of the absolute pressure above the vapour pressure", pressure,
          units::metre);
    steps("v", "Q/(pi/4 d^2)", velocity, units::ms);
    steps("v^2/(2 g)", "velocity head at the gauge", moving, units::metre);
    return pressure + gauge_elevation + moving;
}

inline constexpr auto npsh_available_from_gauge_record = record<&npsh_available_from_gauge>(
    {.name = "npsh_available_from_gauge",
     .meaning = "Net positive suction head at the pump, from a suction gauge reading",
     .also = "NPSHA|suction gauge|field NPSH|compound gauge",
     .inputs = {input("suction_pressure", "p_1", units::barg, limits::suction_barg,
                      "suction gauge reading; negative for a vacuum"),
                input("ambient_pressure", "p_amb", units::bara, limits::ambient_bara,
                      "barometric pressure at the gauge"),
                input("gauge_elevation", "z_1", units::metre, any, "centre of the gauge above the pump's NPSH datum"),
                input("bore", "d", units::mm, limits::bore_mm, "inside diameter of the pipe at the gauge"),
                input("flow", "Q", units::m3h, from(0), "flow through that pipe"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
                input("vapour_pressure", "p_v", units::bara, limits::vapour_bara,
                      "vapour pressure at the temperature of the liquid at the inlet")},
     .results = {output("npsh", "NPSHA", units::metre, "net positive suction head available at the datum")},
     .equation = "NPSHA = (p_1 + p_amb - p_v)/(rho g) + z_1 + v^2/(2 g)",
     .source =
         "ISO 9906:2012, NPSH at the reference plane (from memory of it); Hydraulic Institute, Engineering Data Book, "
         "2nd edition, Eq. 1.D.6 (excerpt read)",
     .cautions = {suction::datum, caution::inlet_vapour_pressure, caution::npsh_margin, suction::negative,
                  caution::hot_or_toxic},
     .example = {"-0.4, 1.01325, 0, 100, 60, 998.2, 0.023392", "6.25532", "hand calculation: 6.02566 + 0.22966"}},
    relation<"suction_pressure", "ambient_pressure">(
        [](GaugePressure gauge, AbsolutePressure ambient) {
            return gauge.above_zero() + ambient.above_zero() > PressureDifference{};
        },
        "the gauge pressure and the ambient pressure must add up to an absolute pressure above 0 bara"),
    relation<"vapour_pressure", "suction_pressure", "ambient_pressure">(
        [](AbsolutePressure vapour, GaugePressure gauge, AbsolutePressure ambient) {
            return vapour.above_zero() <= gauge.above_zero() + ambient.above_zero();
        },
        "the vapour pressure must be at most the absolute pressure at the gauge: the liquid would boil there and the "
        "reading mean nothing"));

inline Length greatest_suction_lift(AbsolutePressure surface, AbsolutePressure vapour, Density density, Head friction,
                                    Head npsh3, Head margin, Steps steps)
{
    const Head offered = (surface - vapour) / (density * standard_gravity);
    steps("(p_s - p_v)/(rho g)", "head of the surface pressure above the vapour pressure", offered, units::metre);
    steps("NPSH3 + m", "suction head to be kept", npsh3 + margin, units::metre);
    return offered - friction - npsh3 - margin;
}

inline constexpr auto greatest_suction_lift_record = record<&greatest_suction_lift>(
    {.name = "greatest_suction_lift",
     .meaning = "Greatest height of a pump above the liquid that leaves NPSH3 and a margin",
     .also = "maximum suction lift|how high can it lift|how deep can it draw|static lift",
     .inputs = {input("surface_pressure", "p_s", units::bara, limits::surface_bara,
                      "pressure on the liquid's surface in the suction vessel"),
                input("vapour_pressure", "p_v", units::bara, limits::vapour_bara,
                      "vapour pressure at the temperature of the liquid at the inlet"),
                input("density", "rho", units::kgm3, limits::density_kgm3,
                      "density of the liquid at the same temperature"),
                input("friction_head", "h_f", units::metre, from(0),
                      "losses of the suction line at the duty, its entry included"),
                input("npsh3", "NPSH3", units::metre, above(0), "the pump's NPSH at 3 % head drop, at the duty's flow"),
                input("margin", "m", units::metre, from(0), "NPSH to be left above NPSH3")},
     .results = {output("lift", "z_max", units::metre,
                        "NPSH datum above the lowest surface; negative: the pump must stand so far below it")},
     .equation = "z_max = (p_s - p_v)/(rho g) - h_f - NPSH3 - m",
     .source = "ISO 17769-1:2012, net positive suction head (from memory of it), solved for the level; "
               "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.6 (excerpt read)",
     .cautions = {suction::datum, caution::inlet_vapour_pressure, caution::npsh_margin,
                  "A pump that is not self-priming must be primed before it can lift.", caution::hot_or_toxic},
     .sound_anywhere = true,
     .example = {"1.01325, 0.023392, 998.2, 0.8, 3, 1", "5.31194", "hand calculation: 10.11194 - 0.8 - 3 - 1"}},
    relation<"vapour_pressure", "surface_pressure">(
        [](AbsolutePressure vapour, AbsolutePressure surface) { return vapour <= surface; }, suction::not_boiling));

inline Head npsh_at_datum(Head npsh, Length rise) { return npsh - rise; }

inline constexpr Record<&npsh_at_datum> npsh_at_datum_record{
    .name = "npsh_at_datum",
    .meaning = "Net positive suction head, available or needed, referred to another height",
    .also = "NPSH datum|NPSH reference|shaft centreline|baseplate|first-stage impeller height|reference plane",
    .inputs = {input("npsh", "NPSH", units::metre, any, "available NPSH or NPSH3 at the first datum"),
               input("datum_rise", "dz", units::metre, between(-200, 200),
                     "second datum above the first: half the inlet diameter from the ISO datum to the top of the vanes "
                     "of a horizontal pump")},
    .results = {output("npsh_at_new_datum", "NPSH'", units::metre, "the same at the second datum")},
    .equation = "NPSH' = NPSH - dz",
    .source = "ISO 17769-1:2012, NPSH datum plane (from memory of it); Hydraulic Institute, Engineering Data Book, 2nd "
              "edition, Eq. 1.D.6 (excerpt read), the level put from one height to another",
    .cautions = {suction::both_or_none, suction::datum},
    .example = {"4, 0.6", "3.4", "hand calculation"}};

}  // namespace cutwater::formulas

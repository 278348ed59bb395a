// Suction side: net positive suction head offered, and its margin over what the pump needs.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/system/pipe.hpp"

namespace cutwater::formulas {

/// Head of the liquid above its vapour pressure at the impeller's inlet datum.
inline Head npsh_available(AbsolutePressure surface, AbsolutePressure vapour, Density density, Length level, Head friction,
                           Steps steps)
{
    const Head surface_head = surface.above_zero() / (density * standard_gravity);
    const Head vapour_head = vapour.above_zero() / (density * standard_gravity);
    steps("p_s/(rho g)", "head of the surface pressure", surface_head, units::metre);
    steps("p_v/(rho g)", "head of the vapour pressure", vapour_head, units::metre);
    steps("z - h_f", "static head less losses", level - friction, units::metre);
    return (surface - vapour) / (density * standard_gravity) + level - friction;
}

inline constexpr Record<&npsh_available> npsh_available_record{
    .name = "npsh_available",
    .meaning = "Net positive suction head that the installation offers",
    .inputs = {input("surface_pressure", "p_s", units::bara, above(0), "pressure on the liquid's surface in the suction vessel"),
               input("vapour_pressure", "p_v", units::bara, from(0), "vapour pressure at the temperature of the liquid at the inlet"),
               input("density", "rho", units::kgm3, above(0), "density of the liquid at the same temperature"),
               input("liquid_level", "z", units::metre, any, "surface above the pump's NPSH datum; negative for a lift"),
               input("friction_head", "h_f", units::metre, from(0), "losses of the suction line at the duty")},
    .results = {output("npsh", "NPSHA", units::metre, "net positive suction head available at the datum")},
    .equation = "NPSHA = (p_s - p_v)/(rho g) + z - h_f",
    .source = "ISO 17769-1:2012, definition of NPSH available; ANSI/HI 9.6.1-2012 (from memory of both)",
    .cautions = {caution::inlet_vapour_pressure, caution::npsh_margin, caution::hot_or_toxic},
    .example = {"1.01325, 0.02339, 998.2, 2, 0.5", "11.612", "hand calculation: 98986/(998.2 x 9.80665) + 2 - 0.5"}};

/// The same from a gauge at the pump's suction branch, where the liquid moves: its velocity head counts.
inline Head npsh_available_from_gauge(GaugePressure gauge, AbsolutePressure ambient, Length gauge_elevation, Length bore,
                                      Flow flow, Density density, AbsolutePressure vapour, Steps steps)
{
    const Velocity velocity = pipe_velocity(flow, bore);
    const Head moving = velocity_head(velocity);
    steps("v", "Q/(pi/4 d^2)", velocity, units::ms);
    steps("v^2/(2 g)", "velocity head at the gauge", moving, units::metre);
    const PressureDifference above_vapour = gauge.above_zero() + (ambient - vapour);
    return above_vapour / (density * standard_gravity) + gauge_elevation + moving;
}

inline constexpr Record<&npsh_available_from_gauge> npsh_available_from_gauge_record{
    .name = "npsh_available_from_gauge",
    .meaning = "Net positive suction head at the pump, from a suction gauge reading",
    .inputs = {input("gauge_pressure", "p_M", units::barg, any, "suction gauge reading; negative for a vacuum"),
               input("ambient_pressure", "p_amb", units::bara, above(0), "barometric pressure at the gauge"),
               input("gauge_elevation", "z_M", units::metre, any, "gauge above the pump's NPSH datum"),
               input("bore", "d", units::mm, above(0), "inside diameter of the pipe at the gauge"),
               input("flow", "Q", units::m3h, from(0), "flow through that pipe"),
               input("density", "rho", units::kgm3, above(0), "density of the liquid"),
               input("vapour_pressure", "p_v", units::bara, from(0), "vapour pressure at the temperature of the liquid at the inlet")},
    .results = {output("npsh", "NPSHA", units::metre, "net positive suction head available at the datum")},
    .equation = "NPSHA = (p_M + p_amb - p_v)/(rho g) + z_M + v^2/(2 g)",
    .relations = {{"gauge_pressure",
                   [](GaugePressure gauge, AbsolutePressure ambient, Length, Length, Flow, Density, AbsolutePressure) {
                       return gauge.above_zero() + ambient.above_zero() > PressureDifference{};
                   },
                   "the gauge pressure and the ambient pressure must add up to an absolute pressure above 0 bara"}},
    .source = "ISO 9906:2012, NPSH at the reference plane (from memory of it)",
    .cautions = {caution::inlet_vapour_pressure, caution::npsh_margin, caution::hot_or_toxic},
    .example = {"-0.3, 1.013, 0.2, 100, 60, 998.2, 0.02339", "7.4464", "hand calculation"}};

}  // namespace cutwater::formulas

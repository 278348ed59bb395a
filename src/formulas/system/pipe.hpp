// Flow in a pipe: velocity, velocity head, Reynolds number.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"

#include <numbers>

namespace cutwater::formulas {

inline Velocity pipe_velocity(Flow flow, Length bore) { return flow / (std::numbers::pi / 4 * bore * bore); }

inline constexpr Record<&pipe_velocity> pipe_velocity_record{
    .name = "pipe_velocity",
    .meaning = "Mean velocity in a full round pipe",
    .inputs = {input("flow", "Q", units::m3h, from(0), "volume flow"),
               input("bore", "d", units::mm, above(0), "inside diameter")},
    .results = {output("velocity", "v", units::ms, "mean velocity")},
    .equation = "v = Q/(pi/4 d^2)",
    .source = "continuity; common practice",
    .example = {"100, 150", "1.5719", "hand calculation"}};

inline Head velocity_head(Velocity velocity) { return velocity * velocity / (2.0 * standard_gravity); }

inline constexpr Record<&velocity_head> velocity_head_record{
    .name = "velocity_head",
    .meaning = "Head of the liquid's kinetic energy at its mean velocity",
    .inputs = {input("velocity", "v", units::ms, from(0), "mean velocity")},
    .results = {output("head", "h_v", units::metre, "velocity head")},
    .equation = "h_v = v^2/(2 g)",
    .source = "ISO 17769-1:2012, velocity head (from memory of it)",
    .example = {"2", "0.20394", "hand calculation"}};

}  // namespace cutwater::formulas

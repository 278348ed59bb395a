// Flow in a pipe: velocity, velocity head, Reynolds number.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <numbers>

namespace cutwater::formulas {

inline Velocity pipe_velocity(Flow flow, Length bore) { return flow / (std::numbers::pi / 4 * bore * bore); }

inline constexpr Record<&pipe_velocity> pipe_velocity_record{
    .name = "pipe_velocity",
    .meaning = "Mean velocity in a full round pipe",
    .also = "line velocity|flow velocity|speed in the pipe",
    .inputs = {input("flow", "Q", units::m3h, from(0), "volume flow"),
               input("bore", "d", units::mm, limits::bore_mm, "inside diameter, not the nominal size")},
    .results = {output("velocity", "v", units::ms, "mean velocity")},
    .equation = "v = Q/(pi/4 d^2)",
    .source = "continuity; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read)",
    .example = {"100, 150", "1.57190", "hand calculation: 0.0277778/0.0176715"}};

inline Length bore_for_velocity(Flow flow, Velocity velocity)
{
    return square_root(flow / (std::numbers::pi / 4 * velocity));
}

inline constexpr Record<&bore_for_velocity> bore_for_velocity_record{
    .name = "bore_for_velocity",
    .meaning = "Bore at which a flow has a given mean velocity",
    .also = "pipe size|line size|pipe sizing|diameter for a velocity",
    .inputs = {input("flow", "Q", units::m3h, above(0), "volume flow"),
               input("velocity", "v", units::ms, above(0), "mean velocity wished for")},
    .results = {output("bore", "d", units::mm, "inside diameter; take the next larger pipe")},
    .equation = "d = sqrt(Q/(pi/4 v))",
    .source = "continuity; Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read)",
    .example = {"100, 2", "132.98", "hand calculation: sqrt(0.0277778/1.570796) m"}};

inline Head head_of_velocity(Velocity velocity) { return velocity * velocity / (2.0 * standard_gravity); }

inline Head velocity_head(Flow flow, Length bore, Steps steps)
{
    const Velocity velocity = pipe_velocity(flow, bore);
    steps("v", "Q/(pi/4 d^2)", velocity, units::ms);
    return head_of_velocity(velocity);
}

inline constexpr Record<&velocity_head> velocity_head_record{
    .name = "velocity_head",
    .meaning = "Head of the liquid's kinetic energy at its mean velocity in a pipe",
    .also = "dynamic head|kinetic head",
    .inputs = {input("flow", "Q", units::m3h, from(0), "volume flow"),
               input("bore", "d", units::mm, limits::bore_mm, "inside diameter, not the nominal size")},
    .results = {output("velocity_head", "h_v", units::metre, "velocity head")},
    .equation = "h_v = v^2/(2 g), v = Q/(pi/4 d^2)",
    .source = "ISO 17769-1:2012, velocity head (from memory of it); "
              "Hydraulic Institute, Engineering Data Book, 2nd edition (excerpt read)",
    .example = {"100, 150", "0.125979", "hand calculation: 1.57190^2/19.6133"}};

inline Ratio reynolds_number(Flow flow, Length bore, KinematicViscosity viscosity)
{
    return pipe_velocity(flow, bore) * bore / viscosity;
}

inline constexpr Record<&reynolds_number> reynolds_number_record{
    .name = "reynolds_number",
    .meaning = "Reynolds number of the flow in a full round pipe",
    .also = "laminar or turbulent|Re",
    .inputs = {input("flow", "Q", units::m3h, from(0), "volume flow"),
               input("bore", "d", units::mm, limits::bore_mm, "inside diameter, not the nominal size"),
               input("kinematic_viscosity", "nu", units::mm2s, limits::kinematic_viscosity_mm2s,
                     "kinematic viscosity at the temperature in the pipe")},
    .results = {output("reynolds_number", "Re", units::number, "Reynolds number on the bore")},
    .equation = "Re = v d/nu, v = Q/(pi/4 d^2)",
    .source = "O. Reynolds (1883); Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 3.A.4 (excerpt read)",
    .example = {"100, 150, 1.0034", "234986", "hand calculation: 1.57190 x 0.15/1.0034e-6"}};

}  // namespace cutwater::formulas

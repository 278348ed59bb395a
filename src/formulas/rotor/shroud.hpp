// Pressure in the space beside a shroud, where the liquid turns with a part of the impeller's speed, and its force.
// Pressures are differences over the suction pressure, forces likewise.
#pragma once

#include "formulas/rotor/shared.hpp"

namespace cutwater::formulas {

namespace rotor {

inline constexpr Interval core_rotations = between(0, 1);
constexpr auto core_rotation()
{
    return input("core_rotation", "k", units::number, core_rotations,
                 "turning of the liquid over that of the impeller: 0.5 beside smooth walls with little leakage, more "
                 "with leakage inward, less outward",
                 0.5);
}
constexpr auto rim_pressure_input()
{
    return input("rim_pressure", "dp_2", units::bar, between(-100, 1000),
                 "pressure at the impeller's rim over that at its suction");
}

/// A ring of a shroud, its radii and the turning of the liquid beside it.
struct Ring {
    Length outer, inner;  // radii

    /// How much less the pressure is at the inner radius than at the outer.
    PressureDifference drop(Density density, RotationalSpeed speed, Ratio turning) const
    {
        const double w = turning * speed.angular().value();
        const double r = outer.value(), s = inner.value();
        return PressureDifference::from_value(0.5 * density.value() * w * w * (r * r - s * s));
    }
    Force force(PressureDifference at_outer, Density density, RotationalSpeed speed, Ratio turning) const
    {
        const Area area = pi * (outer * outer - inner * inner);
        return area *
               (at_outer - 0.5 * drop(density, speed, turning));  // the pressure is linear in the square of the radius
    }
};

inline constexpr const char* core_source =
    "forced vortex beside a disc, dp/dr = rho (k omega)^2 r, integrated; core rotation 0.5 beside smooth walls: V. S. "
    "Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, ch. 16, and A. J. Stepanoff (both from memory)";
inline constexpr const char* side_scatter =
    "Guide: a side's force is known to about plus or minus 30 %; wall distance, roughness, ring clearance and leakage "
    "all act on it (Lobanoff and Ross, p. 343).";

}  // namespace rotor

inline PressureDifference rim_pressure(Head head, Density density, Fraction part)
{
    return part.value * density * standard_gravity * head;
}

inline constexpr Record<&rim_pressure> rim_pressure_record{
    .name = "rim_pressure",
    .meaning = "Static pressure at the impeller's rim over that at its suction",
    .also = "impeller outlet pressure|pressure at impeller periphery|volute pressure",
    .inputs = {input("head", "H", units::metre, rotor::head_m, "head of the stage at the flow"), rotor::density(),
               input("static_part", "c", units::fraction, between(0, 1),
                     "part of the head that is static pressure at the rim: 0.7 to 0.8 for radial impellers", 0.75)},
    .results = {output("pressure", "dp_2", units::bar, "pressure at the rim over the suction pressure")},
    .equation = "dp_2 = c rho g H",
    .source = "Bernoulli's equation; c of 0.7 to 0.8 from memory of A. J. Stepanoff, Centrifugal and Axial Flow Pumps, "
              "2nd edition, 1957",
    .cautions = {"The part changes with the flow and the impeller's form: take both ends where thrust or seal chamber "
                 "pressure hang on it.",
                 rotor::side_scatter},
    .sound_anywhere = true,
    .example = {"50, 1000", "3.6775", "hand calculation"}};

inline PressureDifference shroud_pressure(PressureDifference rim, Density density, RotationalSpeed speed, Length outer,
                                          Length diameter, Ratio turning)
{
    return rim - rotor::Ring{0.5 * outer, 0.5 * diameter}.drop(density, speed, turning);
}

inline constexpr auto shroud_pressure_record = record<&shroud_pressure>(
    {.name = "shroud_pressure",
     .meaning = "Pressure beside a shroud at a diameter, over the suction pressure",
     .also = "pressure behind impeller|back shroud pressure|pressure distribution on the shroud",
     .inputs = {rotor::rim_pressure_input(), rotor::density(), rotor::speed(), rotor::impeller_diameter(),
                input("diameter", "D", units::mm, between(0, 5000), "diameter at which the pressure is wanted"),
                rotor::core_rotation()},
     .results = {output("pressure", "dp", units::bar, "pressure over the suction pressure; negative below it")},
     .equation = "dp = dp_2 - rho (k omega)^2 (D_2^2 - D^2)/8",
     .source = rotor::core_source,
     .cautions = {"Where it falls below the suction pressure, compare the absolute pressure with the vapour pressure: "
                  "liquid that boils behind the impeller can run the seal dry.",
                  rotor::side_scatter},
     .sound_anywhere = true,
     .example = {"3.6775, 1000, 2900, 200, 60", "2.6284", "hand calculation: 3.6775 - 1.0491"}},
    relation<"diameter", "impeller_diameter">([](Length at, Length outer) { return at <= outer; },
                                              "it must not exceed the impeller's diameter"));

inline Force shroud_force(PressureDifference rim, Density density, RotationalSpeed speed, Length outer, Length inner,
                          Ratio turning)
{
    return rotor::Ring{0.5 * outer, 0.5 * inner}.force(rim, density, speed, turning);
}

inline constexpr auto shroud_force_record = record<&shroud_force>(
    {.name = "shroud_force",
     .meaning =
         "Axial force of the liquid on a shroud from the rim in to a diameter, over that of the suction pressure",
     .also = "front shroud force|back shroud force|shroud thrust",
     .inputs = {rotor::rim_pressure_input(), rotor::density(), rotor::speed(), rotor::impeller_diameter(),
                input("inner_diameter", "D_i", units::mm, between(0, 5000),
                      "inner diameter: front, of the wear ring or eye; back, of the ring or sleeve"),
                rotor::core_rotation()},
     .results = {output("force", "F", units::newton, "axial force, pressing on the shroud")},
     .equation = "F = pi/4 (D_2^2 - D_i^2) [dp_2 - rho (k omega)^2 (D_2^2 - D_i^2)/16]",
     .source = rotor::core_source,
     .scatter = {plus_minus("force", 0.3)},
     .cautions = {rotor::side_scatter},
     .example = {"3.6775, 1000, 2900, 200, 60", "9014", "hand calculation: 0.0285885 m2 (3.6775 - 0.52456) bar"}},
    relation<"inner_diameter", "impeller_diameter">([](Length inner, Length outer) { return inner <= outer; },
                                                    "it must not exceed the impeller's diameter"));

}  // namespace cutwater::formulas

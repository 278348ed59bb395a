// A liquid that carries fine solids and flows as one.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"

namespace cutwater::formulas {

inline DynamicViscosity suspension_viscosity(DynamicViscosity liquid, Fraction volume_fraction)
{
    const double phi = volume_fraction.value;
    return liquid * (1 + phi * (2.5 + 10.05 * phi) + 0.00273 * elementary::exp(16.6 * phi));
}

inline constexpr Record<&suspension_viscosity> suspension_viscosity_record{
    .name = "suspension_viscosity",
    .meaning = "Viscosity of a suspension of fine particles that do not settle",
    .also = "slurry viscosity|apparent viscosity|Thomas equation|Einstein viscosity|fine slurry",
    .inputs = {input("liquid_viscosity", "mu_l", units::mPas, above_up_to(0, 1e6),
                     "dynamic viscosity of the liquid alone"),
               input("volume_fraction", "phi", units::fraction, between(0, 0.6), "the solids' share by volume")},
    .results = {output("viscosity", "mu", units::mPas, "dynamic viscosity of the suspension")},
    .equation = "mu = mu_l (1 + 2.5 phi + 10.05 phi^2 + 0.00273 exp(16.6 phi))",
    .source = "D. G. Thomas, J. Colloid Sci. 20 (1965) 267 (as three open codes print it, read; the paper not read); "
              "its second term is A. Einstein's, "
              "Ann. Phys. 19 (1906) 289",
    .cautions = {"For spheres of one size in a Newtonian liquid. Plates, fibres, flocculated or very fine solids make "
                 "it many times thicker, and give it a "
                 "yield stress: then measure.",
                 "By volume, not by mass: see slurry_volume_fraction.",
                 "Particles that settle do not thicken the liquid so: see slurry_pipe_friction.", caution::guide_only},
    .example = {"1.5, 0.25", "3.639", "hand calculation: 1.5 (1 + 0.625 + 0.628125 + 0.00273 x 63.434)"}};

}  // namespace cutwater::formulas

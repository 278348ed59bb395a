// Solids that sink: in still liquid, and to the bottom of a pipe.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

#include <cmath>

namespace cutwater::formulas {

namespace solids {

/// Haider and Levenspiel's drag of a sphere, times Re^2, which rises with Re from 0 on; and its slope on logarithmic
/// scales.
struct Drag {
    double times_square;
    double slope;
};
inline Drag drag(double re)
{
    const double stokes = 24 * re;
    const double intermediate = stokes * 0.1806 * elementary::positive_pow(re, 0.6459);
    const double share = re / (re + 6880.95);
    const double newton = 0.4251 * re * re * share;
    const double sum = stokes + intermediate + newton;
    return {sum, (stokes + 1.6459 * intermediate + newton * (3 - share)) / sum};
}

/// The Reynolds number at which a sphere's drag carries its weight in the liquid. Newton's steps: two on logarithmic
/// scales, where the drag is all but a straight line, leave 4e-8 at most from this start (Re 1e-12 to 1e7), and one on
/// plain scales rounding error. Their count is fixed so that rows of an array take the same path.
inline double terminal_reynolds(double archimedes)
{
    const double weight = 4.0 / 3 * archimedes;
    const auto nearer = [weight](double re) {
        const Drag at = drag(re);
        return re * elementary::exp(-elementary::log(at.times_square / weight) / at.slope);
    };
    const double re = nearer(nearer(archimedes / (18 + 0.6 * std::sqrt(archimedes))));
    const Drag at = drag(re);
    return re - (at.times_square - weight) / at.times_square * re / at.slope;
}

}  // namespace solids

inline Outcome<std::tuple<Velocity, Ratio, Ratio>> settling_velocity(Length size, Density solids_density,
                                                                     Density liquid_density, DynamicViscosity viscosity,
                                                                     Steps steps)
{
    const double d = size.value();
    const double rho = liquid_density.value();
    const double mu = viscosity.value();
    const double archimedes = standard_gravity.value() * d * d * d * rho * (solids_density.value() - rho) / (mu * mu);
    steps("Ar", "g d^3 rho_l (rho_s - rho_l)/mu^2", Ratio(archimedes), units::number);
    const double re = solids::terminal_reynolds(archimedes);
    if (!(re <= 2.6e5))
        return NoValue{CUTWATER_NO_ANSWER,
                       "particle_size",
                       "a sphere of {0} would sink at a Reynolds number of {1}; the drag law holds up to 260000",
                       {number_in(size, units::mm), {re, ""}}};
    return std::tuple(Velocity::from_value(re * mu / (rho * d)), Ratio(re),
                      Ratio(solids::drag(re).times_square / (re * re)));
}

inline constexpr auto settling_velocity_record = record<&settling_velocity>(
    {.name = "settling_velocity",
     .meaning = "Velocity at which a single sphere sinks in still liquid",
     .also = "terminal velocity|fall velocity|Stokes",
     .inputs = {input("particle_size", "d", units::mm, above_up_to(0, 1000), "diameter of the sphere"),
                input("solids_density", "rho_s", units::kgm3, limits::density_kgm3, "density of the solids"),
                input("liquid_density", "rho_l", units::kgm3, limits::density_kgm3, "density of the liquid"),
                input("dynamic_viscosity", "mu", units::mPas, above(0), "dynamic viscosity of the liquid")},
     .results = {output("velocity", "w", units::ms, "velocity of sinking, alone and far from walls"),
                 output("reynolds_number", "Re", units::number, "Reynolds number of the sphere"),
                 output("drag_coefficient", "C_D", units::number, "drag coefficient of the sphere")},
     .equation =
         "w = sqrt(4 g d (rho_s - rho_l)/(3 C_D rho_l)), C_D = 24/Re (1 + 0.1806 Re^0.6459) + 0.4251/(1 + 6880.95/Re)",
     .source = "A. Haider and O. Levenspiel, Powder Technology 58 (1989) 63-70 (from memory of it; coefficients agree "
               "with the open-source library fluids 1.0.22)",
     .cautions =
         {"Grains that are no spheres sink more slowly, and all do in company: see hindered_settling_velocity."},
     .example = {"0.3, 2650, 998.2, 1.0016", "0.041986, 12.553, 3.6822",
                 "independent computation, agrees with fluids 1.0.22"}},
    relation<"solids_density", "liquid_density">([](Density s, Density l) { return s > l; },
                                                 "the solids must be denser than the liquid, or they float"));

inline Velocity hindered_settling_velocity(Velocity velocity, Fraction volume_fraction, Ratio reynolds)
{
    const double root = std::sqrt(reynolds.value()), r = root * std::sqrt(root);  // Re^0.75
    const double exponent = (4.7 + 0.41 * r) / (1 + 0.175 * r);
    return velocity * elementary::positive_pow(1 - volume_fraction.value, exponent);
}

inline constexpr Record<&hindered_settling_velocity> hindered_settling_velocity_record{
    .name = "hindered_settling_velocity",
    .meaning = "Velocity at which solids sink among each other",
    .also = "Richardson-Zaki|terminal velocity",
    .inputs = {input("settling_velocity", "w", units::ms, from(0), "velocity of one alone, as from settling_velocity"),
               input("volume_fraction", "C_v", units::fraction, between(0, 0.4),
                     "volume of solids over volume of slurry"),
               input("reynolds_number", "Re", units::number, between(0, 2.6e5), "Reynolds number of one alone")},
    .results = {output("velocity", "w_h", units::ms, "velocity of sinking in company")},
    .equation = "w_h = w (1 - C_v)^m, m = (4.7 + 0.41 Re^0.75)/(1 + 0.175 Re^0.75)",
    .source = "J. F. Richardson and W. N. Zaki 1954, exponent by P. N. Rowe, Chem. Eng. Sci. 42 (1987) 2795 (from "
              "memory of both)",
    .cautions = {"For solids of one size, far from walls; fine or flocculating ones sink otherwise."},
    .example = {"0.042, 0.1, 12.55", "0.029260", "hand calculation"}};

inline std::tuple<Velocity, Ratio> deposition_velocity(Length bore, Ratio relative_density, Fraction volume_fraction,
                                                       Length size, Ratio given)
{
    const double fitted = 1.3 * elementary::positive_pow(volume_fraction.value, 0.125) *
                          (1 - elementary::exp(-6.9 * units::mm.in(size)));
    const double factor = given.value() > 0 ? given.value() : fitted;
    return {factor * square_root(2.0 * standard_gravity * bore * (relative_density - Ratio(1.0))), Ratio(factor)};
}

inline constexpr auto deposition_velocity_record = record<&deposition_velocity>(
    {.name = "deposition_velocity",
     .meaning = "Mean velocity in a horizontal pipe below which solids settle out",
     .also = "critical velocity|settling slurry|Durand|limit deposit velocity|line plugging",
     .inputs = {input("pipe_bore", "D", units::mm, between(25, 1000), "inside diameter of the pipe"),
                input("solids_relative_density", "s", units::number, above_up_to(1, 8),
                      "density of the solids over that of the liquid"),
                input("volume_fraction", "C_v", units::fraction, between(0.005, 0.4),
                      "volume of solids over volume of slurry"),
                input("median_size", "d50", units::mm, between(0.05, 10),
                      "size that half of the solids' mass lies below; finer ones hardly settle"),
                input("durand_factor", "F_given", units::number, between(0, 2),
                      "Durand's factor for sqrt(2 g D (s - 1)); 0: by the fit of Schiller and Herbich", 0)},
     .results = {output("velocity", "V_D", units::ms, "deposition velocity"),
                 output("factor", "F_L", units::number, "Durand's factor as used")},
     .equation = "V_D = F_L sqrt(2 g D (s - 1)), F_L = 1.3 C_v^0.125 (1 - e^(-6.9 d50/mm))",
     .source = "R. Durand and E. Condolios 1952; F_L by R. E. Schiller and P. E. Herbich, Handbook of Dredging "
               "Engineering, 1991 (as reproduced in a "
               "public program, checked against B. E. Abulnaga, Slurry Systems Handbook, 2002, example 4-2)",
     .cautions = {"Keep the line above it by a margin, commonly 0.3 m/s or 10 to 20 %; for narrow grading in a "
                  "horizontal pipe.",
                  "The fit lies below Durand's own chart, whose factor for coarse sand of one size reaches 1.34 (from "
                  "memory of it): give that factor to be safe.",
                  caution::guide_only},
     .sound_anywhere = true,
     .example = {"717.55, 2.65, 0.27, 0.3", "4.6476, 0.96446", "Abulnaga, example 4-2"}},
    relation<"durand_factor">([](Ratio given) { return (given.value() == 0) | (given.value() >= 0.1); },
                              "it must be 0, for the fit, or from 0.1 up"));

}  // namespace cutwater::formulas

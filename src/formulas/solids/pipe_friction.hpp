// Friction of a settling slurry in a horizontal pipe.
#pragma once

#include "formulas/system/friction.hpp"

#include <cmath>
#include <tuple>

namespace cutwater::formulas {

enum class SlurryFlow { saltation, heterogeneous, pseudo_homogeneous };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<3> cutwater::words_of<cutwater::formulas::SlurryFlow>{"saltation", "heterogeneous",
                                                                                       "pseudo-homogeneous"};

namespace cutwater::formulas {

namespace solids {

constexpr auto slurry_flow()
{
    return input("flow", "Q", units::m3h, above(0), "flow of the slurry, liquid and solids together");
}
constexpr auto pipe_bore(Interval tested)
{
    return input("pipe_bore", "D", units::mm, tested, "inside diameter of the pipe");
}
constexpr auto pipe_length() { return input("length", "L", units::metre, from(0), "length of horizontal pipe"); }
constexpr auto pipe_roughness()
{
    return input("roughness", "eps", units::mm, from(0),
                 "roughness of the wall; settling slurry polishes steel: 0.05 at most is usual");
}
constexpr auto liquid_viscosity()
{
    return input("liquid_viscosity", "nu", units::mm2s, limits::kinematic_viscosity_mm2s,
                 "kinematic viscosity of the liquid that carries the solids");
}
constexpr auto liquid_density()
{
    return input("liquid_density", "rho_l", units::kgm3, limits::density_kgm3,
                 "density of the liquid that carries the solids");
}
constexpr auto solids_density()
{
    return input("solids_density", "rho_s", units::kgm3, limits::density_kgm3, "density of the solids");
}
constexpr auto volume_fraction(double highest)
{
    return input("volume_fraction", "C_v", units::fraction, between(0, highest),
                 "volume of solids over volume of slurry, as delivered: see slurry_volume_fraction");
}

inline constexpr auto solids_sink = relation<"solids_density", "liquid_density">(
    [](Density s, Density l) { return s > l; }, "the solids must be denser than the liquid, or they float");
inline constexpr auto smooth_enough = relation<"roughness", "pipe_bore">(
    [](Length roughness, Length bore) { return roughness <= friction::roughest * bore; }, friction::rough_enough);
inline constexpr auto carrier_turbulent = relation<"flow", "pipe_bore", "liquid_viscosity">(
    [](Flow flow, Length bore, KinematicViscosity viscosity) {
        const double re = (pipe_velocity(flow, bore) * bore / viscosity).value();
        return (re >= 4000) & (re <= friction::highest_reynolds);
    },
    "the liquid's Reynolds number in the pipe must be 4000 to 1e9: settling solids are carried by turbulence");

inline constexpr const char* slurry_flow_limits =
    "Horizontal pipe, narrowly graded solids in a Newtonian liquid. Upright pipes, pastes, clays and solids finer than "
    "about 0.05 mm need another method: the finest thicken the liquid instead, see suspension_viscosity. "
    "Such relations scatter by tens of per cent: for a line that matters take tests of the very slurry.";
inline constexpr const char* keep_above_deposit =
    "Keep the velocity above deposition_velocity with a margin: below it solids lie on the bottom, no relation of this "
    "kind holds and the line may plug.";
inline constexpr const char* in_metres_of_slurry =
    "The pump's curve asks for metres of slurry; in metres of the liquid the same pressure is more.";

inline constexpr const char* evenly_carried =
    "Fast or with fine solids the relation by itself goes down to the loss of the liquid alone. A liquid as heavy as "
    "the slurry loses rho_m/rho_l of that, and no less is answered here: fine solids come near it, very coarse ones "
    "may lose a little less.";

/// Loss over that of the liquid alone: never less than that of a liquid which is as heavy as the slurry.
inline Ratio at_least_equivalent(Ratio by_relation, Density liquid, Density slurry)
{
    const double equivalent = Ratio(slurry / liquid).value(), relation = by_relation.value();
    return Ratio(elementary::select(relation < equivalent, equivalent, relation));
}

/// Head lost, of the liquid and of the slurry, and the pressure, from the gradient's rise over the liquid's.
using SlurryLoss = std::tuple<Head, Head, PressureDifference>;
inline SlurryLoss slurry_loss(Head of_liquid, Density liquid, Density slurry)
{
    return {of_liquid * Ratio(liquid / slurry), of_liquid, liquid * standard_gravity * of_liquid};
}
inline Density slurry_density_of(Density liquid, Density solids, Fraction share)
{
    return liquid + (solids - liquid) * share.value;
}

}  // namespace solids

inline std::tuple<Head, Head, PressureDifference, Ratio, Velocity, SlurryFlow> slurry_pipe_friction(
    Flow flow, Length bore, Length length, Length roughness, KinematicViscosity viscosity, Density liquid,
    Density solids_density, Fraction share, Ratio drag, Ratio constant, Steps steps)
{
    const Velocity velocity = pipe_velocity(flow, bore);
    const Ratio excess = solids_density / liquid - Ratio(1.0);
    const Head alone = pipe_friction_head(flow, bore, length, roughness, viscosity, steps);
    const Ratio psi = velocity * velocity * std::sqrt(drag.value()) / (standard_gravity * bore * excess);
    const Ratio rise(constant.value() * share.value / (psi.value() * std::sqrt(psi.value())));
    const Velocity saltation = square_root(40.0 * share.value * excess.value() / std::sqrt(drag.value()) *
                                           (standard_gravity * bore));
    steps("h_l", "friction of the liquid alone", alone, units::metre);
    steps("psi", "v^2 sqrt(C_D)/[g D (s - 1)]", psi, units::number);
    steps("v_s", "below it the solids leap along the bottom", saltation, units::ms);
    const Density slurry = solids::slurry_density_of(liquid, solids_density, share);
    const Ratio ratio = solids::at_least_equivalent(1.0 + rise, liquid, slurry);
    const auto [of_slurry, of_liquid, pressure] = solids::slurry_loss(alone * ratio, liquid, slurry);
    // Without a branch: 0 saltation, 1 heterogeneous, 2 pseudo-homogeneous.
    const bool leaping = velocity < saltation, even = ratio > 1.0 + rise;
    const auto regime = static_cast<SlurryFlow>(int{!leaping} + int{!leaping & even});
    return {of_slurry, of_liquid, pressure, ratio, velocity, regime};
}

inline constexpr auto slurry_pipe_friction_record = record<&slurry_pipe_friction>(
    {.name = "slurry_pipe_friction",
     .meaning = "Friction of a settling slurry in a horizontal pipe, by Durand and Condolios",
     .also = "slurry pipeline|settling slurry|Durand|slurry line loss|heterogeneous slurry|pressure drop of slurry|"
             "slurry friction loss",
     .inputs = {solids::slurry_flow(), solids::pipe_bore(between(20, 600)), solids::pipe_length(),
                solids::pipe_roughness(), solids::liquid_viscosity(), solids::liquid_density(),
                solids::solids_density(), solids::volume_fraction(0.35),
                input("drag_coefficient", "C_D", units::number, between(0.3, 200),
                      "drag coefficient of a grain that sinks in the still liquid: see settling_velocity"),
                input("durand_constant", "K", units::number, between(60, 200),
                      "150, the safe side, goes with C_D and Durand's sands; later authors print 81 or 82 with the "
                      "same C_D",
                      150)},
     .results = {output("friction_head", "h_m", units::metre, "head lost, in metres of slurry"),
                 output("liquid_head", "h", units::metre, "the same loss in metres of the liquid"),
                 output("pressure_drop", "dp", units::bar, "the same loss as a pressure"),
                 output("gradient_ratio", "i_m/i_l", units::number, "loss over that of the liquid alone"),
                 output("velocity", "v", units::ms, "mean velocity"),
                 output_word<SlurryFlow>(
                     "regime", "regime",
                     "heterogeneous, where the relation holds; saltation: the solids leap along "
                     "the bottom and the result is only a guess; pseudo-homogeneous: the solids are carried "
                     "evenly, and the loss of a liquid as heavy as the slurry is given")},
     .equation =
         "h = h_l max(1 + K C_v psi^-1.5, rho_m/rho_l), psi = v^2 sqrt(C_D)/(g D (s - 1)), s = rho_s/rho_l; h_l by "
         "Darcy-Weisbach for the liquid alone; h_m = h rho_l/rho_m; saltation below v_s = sqrt(40 g D C_v (s - "
         "1)/sqrt(C_D))",
     .source =
         "R. Durand and E. Condolios 1952 (from memory of it; its range, bore 20 to 600 mm, grains 0.1 to 25 mm, 0.6 "
         "to 6 m/s, read in excerpt). K = 150 and v_s: J. S. Arora's slurry pipeline exercise as an open solution "
         "codes it (read); Durand's own 180 for sand, with V^2 sqrt(C_x)/(g D), C_x = g d/w^2, comes to 153 in C_D and "
         "s - 1 (by hand); 82 in another open code (read), 81 and 82 of I. Zandi and of E. J. Wasp (from memory)"
         "; the floor rho_m/rho_l: the model of an equivalent liquid (common practice; the greatest loss in the "
         "homogeneous part of an open dredging code, read)",
     .cautions = {"81 or 82 in place of 150 lowers what the solids add by nearly half: choose it only with tests of "
                  "your slurry.",
                  solids::evenly_carried, solids::keep_above_deposit, solids::slurry_flow_limits,
                  solids::in_metres_of_slurry, caution::guide_only},
     .example = {"450, 200, 100, 0.05, 1.0, 998.2, 2650, 0.1, 1.0",
                 "12.7427, 14.8514, 1.45380, 2.39234, 3.97887, \"heterogeneous\"",
                 "computed apart with fluids 1.0.22"}},
    solids::solids_sink, solids::smooth_enough, solids::carrier_turbulent,
    relation<"flow", "pipe_bore">(
        [](Flow flow, Length bore) {
            const double v = units::ms.in(pipe_velocity(flow, bore));
            return (v >= 0.6 * (1 - 1e-9)) & (v <= 6 * (1 + 1e-9));
        },
        "the mean velocity must be 0.6 to 6 m/s, as in Durand's tests"));

inline std::tuple<Head, Head, PressureDifference, Ratio, Velocity> slurry_friction_from_v50(
    Flow flow, Length bore, Length length, Length roughness, KinematicViscosity viscosity, Density liquid,
    Density solids_density, Fraction share, Velocity v50, Ratio exponent, Ratio at_v50, Steps steps)
{
    const Velocity velocity = pipe_velocity(flow, bore);
    const Head alone = pipe_friction_head(flow, bore, length, roughness, viscosity, steps);
    const double part = at_v50.value() * share.value * (Ratio(solids_density / liquid).value() - 1) *
                        elementary::positive_pow(Ratio(v50 / velocity).value(), exponent.value());
    const Density slurry = solids::slurry_density_of(liquid, solids_density, share);
    const Ratio ratio = solids::at_least_equivalent((alone + length * part) / alone, liquid, slurry);
    const Head by_solids = alone * (ratio - Ratio(1.0));
    steps("h_l", "friction of the liquid alone", alone, units::metre);
    steps("h_s", "what the solids add", by_solids, units::metre);
    const auto [of_slurry, of_liquid, pressure] = solids::slurry_loss(alone * ratio, liquid, slurry);
    return {of_slurry, of_liquid, pressure, ratio, velocity};
}

inline constexpr auto slurry_friction_from_v50_record = record<&slurry_friction_from_v50>(
    {.name = "slurry_friction_from_v50",
     .meaning = "Friction of a settling slurry in a horizontal pipe, from the velocity at which half of the solids are "
                "carried by turbulence",
     .also = "V50|Wilson|slurry pipeline|settling slurry|heterogeneous slurry|slurry friction loss",
     .inputs =
         {solids::slurry_flow(), solids::pipe_bore(between(50, 1000)),
          input("length", "L", units::metre, above(0), "length of horizontal pipe"), solids::pipe_roughness(),
          solids::liquid_viscosity(), solids::liquid_density(), solids::solids_density(), solids::volume_fraction(0.35),
          input("half_carried_velocity", "V_50", units::ms, between(0.1, 20),
                "velocity at which turbulence carries half of the solids and the pipe's bottom the other half: from "
                "tests, or as the source estimates it"),
          input("exponent", "M", units::number, between(0.25, 1.7),
                "1.7 for narrow grading, less for wide grading, never below 0.25"),
          input("added_gradient", "mu_s/2", units::number, between(0.1, 0.3),
                "gradient that the solids add there, over C_v (s - 1): half of the sliding friction", 0.22)},
     .results = {output("friction_head", "h_m", units::metre, "head lost, in metres of slurry"),
                 output("liquid_head", "h", units::metre, "the same loss in metres of the liquid"),
                 output("pressure_drop", "dp", units::bar, "the same loss as a pressure"),
                 output("gradient_ratio", "i_m/i_l", units::number, "loss over that of the liquid alone"),
                 output("velocity", "v", units::ms, "mean velocity")},
     .equation = "h = max[h_l + L (mu_s/2) C_v (s - 1)(V_50/v)^M, h_l rho_m/rho_l], s = rho_s/rho_l; h_l by "
                 "Darcy-Weisbach for the liquid "
                 "alone; h_m = h rho_l/rho_m",
     .source = "K. C. Wilson, G. R. Addie, A. Sellgren and R. Clift, Slurry Transport Using Centrifugal Pumps (not "
               "read; relation and 0.22 in a pump handbook's slurry chapter, excerpt read; case study 6.1 as an open "
               "code tests against it, read); the floor: see slurry_pipe_friction",
     .cautions = {"V_50 estimated by formula and not tested carries all the uncertainty of the answer.",
                  solids::evenly_carried, solids::keep_above_deposit, solids::slurry_flow_limits,
                  solids::in_metres_of_slurry, caution::guide_only},
     .example = {"7525.9, 650, 100, 0.05, 1.003, 998.2, 2650, 0.2, 3.47, 1.7, 0.2",
                 "4.59447, 6.11504, 0.598601, 1.64669, 6.29998",
                 "computed apart with fluids 1.0.22; the case study: 0.0612 m a metre"}},
    solids::solids_sink, solids::smooth_enough, solids::carrier_turbulent);

}  // namespace cutwater::formulas

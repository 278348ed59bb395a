// Where solids and bubbles go in a seal chamber: swirl against drag, nothing else.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"
#include "formulas/solids/settling.hpp"

#include <cmath>
#include <tuple>

namespace cutwater::formulas {

enum class ChamberDrift { outwards, inwards, neither };
enum class ChamberFate { clears, held, trapped, carried_in, at_faces, drifts };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<3> words_of<formulas::ChamberDrift>{"outwards to the wall", "inwards to the shaft", "neither"};
template <>
inline constexpr Words<6> words_of<formulas::ChamberFate>{"may clear to the impeller",      "held at the wall",
                                                          "trapped behind the throat",      "carried to the faces",
                                                          "gathers at the shaft and faces", "drifts with the liquid"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace seal {

inline constexpr double greatest_reynolds = 2.6e5;  // of the drag law

inline constexpr const char* drift_source =
    "solid-body swirl at k w and a sphere's drag by A. Haider and O. Levenspiel, Powder Technology 58 (1989) 63-70 "
    "(from memory of it); a model of its own kind: "
    "the studies of flow in seal chambers could not be read";
inline constexpr const char* direction_only =
    "It tells the direction and an order of speed, no efficiency of separation: secondary flow, vanes and ribs in the "
    "chamber, wear grooves and the throat can do otherwise.";
inline constexpr const char* single_sphere =
    "For a single rigid sphere: a clean bubble rises faster, fine or sticky solids more slowly, and all do in company.";

constexpr auto particle_size()
{
    return input("particle_size", "d", units::um, between(0.1, 20000), "diameter of the particle or bubble");
}
constexpr auto particle_density()
{
    return input("particle_density", "rho_p", units::kgm3, between(0, 25000), "its density; about 1 for a gas bubble");
}
constexpr auto liquid_density()
{
    return input("liquid_density", "rho_l", units::kgm3, limits::density_kgm3, "density of the liquid");
}
constexpr auto viscosity()
{
    return input("dynamic_viscosity", "mu", units::mPas, between(0.01, 1e6), "dynamic viscosity of the liquid");
}
constexpr auto swirl()
{
    return input("swirl_ratio", "k", units::number, between(0, 1),
                 "speed of the liquid's swirl over the shaft's: about 0.5 in a narrow smooth chamber", 0.5);
}

struct Sphere {
    double size, density, liquid, viscosity;  // SI

    /// Its Reynolds number when it drifts under an acceleration, whichever way.
    double reynolds(double acceleration) const
    {
        const double archimedes = acceleration * size * size * size * liquid * std::abs(density - liquid) /
                                  (viscosity * viscosity);
        return elementary::select(archimedes > 0, solids::terminal_reynolds(archimedes), 0);
    }
    double velocity(double re) const { return re * viscosity / (liquid * size); }
};

inline NoValue too_fast(Length size, double re)
{
    return {CUTWATER_NO_ANSWER,
            "particle_size",
            "a sphere of {0} would drift at a Reynolds number of {1}; the drag law holds up to 260000",
            {number_in(size, units::um), {re, ""}}};
}

}  // namespace seal

inline Outcome<std::tuple<Velocity, ChamberDrift, Acceleration, Ratio>> seal_chamber_drift(
    Length size, Density particle, Density liquid, DynamicViscosity viscosity, RotationalSpeed speed, Length radius,
    Ratio swirl)
{
    const double turning = swirl.value() * speed.angular().value();
    const double acceleration = turning * turning * radius.value();
    const seal::Sphere sphere{size.value(), particle.value(), liquid.value(), viscosity.value()};
    const double re = sphere.reynolds(acceleration);
    if (!(re <= seal::greatest_reynolds)) return seal::too_fast(size, re);
    const bool out = particle > liquid;
    const double velocity = sphere.velocity(re);
    const ChamberDrift drift = !(velocity > 0) ? ChamberDrift::neither
                               : out           ? ChamberDrift::outwards
                                               : ChamberDrift::inwards;
    return std::tuple(Velocity::from_value(out ? velocity : -velocity), drift, Acceleration::from_value(acceleration),
                      Ratio(re));
}

inline constexpr auto seal_chamber_drift_record = record<&seal_chamber_drift>(
    {.name = "seal_chamber_drift",
     .meaning = "How fast and which way a particle or bubble drifts in the swirl of a seal chamber",
     .also = "centrifugal separation|solids in the stuffing box|gas in the seal chamber|air bubbles at the seal",
     .inputs = {seal::particle_size(), seal::particle_density(), seal::liquid_density(), seal::viscosity(),
                input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"),
                input("radius", "r", units::mm, above_up_to(0, 1000), "distance from the shaft's axis"), seal::swirl()},
     .results = {output("velocity", "v", units::mms, "radial velocity; positive outwards"),
                 output_word<ChamberDrift>("direction", "direction", "which way it goes"),
                 output("acceleration", "a", units::ms2, "centrifugal acceleration there"),
                 output("reynolds_number", "Re", units::number, "Reynolds number of the drift")},
     .equation = "v = sqrt(4 a d |rho_p - rho_l|/(3 C_D rho_l)), a = (k w)^2 r, C_D = 24/Re (1 + 0.1806 Re^0.6459) + "
                 "0.4251/(1 + 6880.95/Re)",
     .source = seal::drift_source,
     .cautions = {seal::direction_only, seal::single_sphere,
                  "Gas that gathers at the faces runs them dry: vent the chamber and see that it stays full.",
                  caution::guide_only},
     .example = {"50, 2650, 998, 1, 2900, 30", "104.156, \"outwards to the wall\", 691.695, 5.19740",
                 "independent computation"}});

inline Outcome<std::tuple<ChamberFate, Velocity, Velocity, Ratio>> seal_chamber_clearing(
    Length size, Density particle, Density liquid, DynamicViscosity viscosity, RotationalSpeed speed,
    Length bore_at_faces, Length bore_at_impeller, Length length, Velocity inward, Ratio swirl, Steps steps)
{
    const double slope = (bore_at_impeller - bore_at_faces).value() / (2 * length.value());
    const double sine = slope / std::sqrt(1 + slope * slope);
    const double turning = swirl.value() * speed.angular().value();
    const double acceleration = turning * turning * (bore_at_faces + bore_at_impeller).value() / 4;
    steps("a", "centrifugal acceleration at the wall, mid-length", Acceleration::from_value(acceleration), units::ms2);
    const seal::Sphere sphere{size.value(), particle.value(), liquid.value(), viscosity.value()};
    const double re = sphere.reynolds(acceleration);
    if (!(re <= seal::greatest_reynolds)) return seal::too_fast(size, re);
    const double radial = sphere.velocity(re);
    const bool out = particle > liquid;
    const double down_the_wall = sphere.velocity(sphere.reynolds(acceleration * std::abs(sine)));
    const double along = elementary::select(out, std::copysign(down_the_wall, sine), 0);
    const ChamberFate at_the_wall = along > inward.value() ? ChamberFate::clears
                                    : inward.value() > 0   ? ChamberFate::carried_in
                                    : along < 0            ? ChamberFate::trapped
                                                           : ChamberFate::held;
    const ChamberFate fate = !(radial > 0) ? ChamberFate::drifts : out ? at_the_wall : ChamberFate::at_faces;
    return std::tuple(fate, Velocity::from_value(out ? radial : -radial), Velocity::from_value(along), Ratio(slope));
}

inline constexpr auto seal_chamber_clearing_record = record<&seal_chamber_clearing>(
    {.name = "seal_chamber_clearing",
     .meaning = "Where solids or gas end up in a cylindrical or tapered seal chamber",
     .also = "taper bore seal chamber|big bore stuffing box|self-venting chamber|solids in the seal chamber",
     .inputs = {seal::particle_size(), seal::particle_density(), seal::liquid_density(), seal::viscosity(),
                input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"),
                input("bore_at_faces", "D_1", units::mm, above_up_to(0, 2000), "bore of the chamber beside the faces"),
                input("bore_at_impeller", "D_2", units::mm, above_up_to(0, 2000),
                      "bore of its end towards the impeller: equal for a cylinder, larger for a taper, smaller behind "
                      "a throat"),
                input("length", "L", units::mm, above_up_to(0, 2000), "length of the chamber"),
                input("inward_velocity", "u", units::mms, from(0),
                      "velocity of the liquid along the wall towards the faces; 0 for still or flushed", 0),
                seal::swirl()},
     .results = {output_word<ChamberFate>("fate", "fate", "where it ends up"),
                 output("radial_velocity", "v_r", units::mms, "drift across the chamber; positive outwards"),
                 output("wall_velocity", "v_w", units::mms,
                        "drift along the wall towards the impeller, for what lies on the wall"),
                 output("taper", "tan a", units::number,
                        "slope of the wall; positive when it opens towards the impeller")},
     .equation = "v_w = v(a sin alpha), tan alpha = (D_2 - D_1)/(2 L), a = (k w)^2 (D_1 + D_2)/4; clears when v_w > u",
     .source = seal::drift_source,
     .cautions = {seal::direction_only, seal::single_sphere,
                  "Solids that lie on the wall also rub on it, which the model leaves out; a taper that keeps them "
                  "circling wears through unless it has ribs (common practice).",
                  "At standstill gas leaves a chamber that opens towards the impeller upwards along its roof; running, "
                  "it gathers at the shaft.",
                  caution::guide_only},
     .example = {"50, 2650, 998, 1, 2900, 80, 100, 60", "\"may clear to the impeller\", 144.526, 31.5125, 0.166667",
                 "independent computation"}});

}  // namespace cutwater::formulas

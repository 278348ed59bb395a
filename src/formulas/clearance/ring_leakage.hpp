// Leakage through the running clearance of a wear ring.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

#include <cmath>
#include <numbers>
#include <tuple>

namespace cutwater::formulas {

namespace ring {

/// A smooth ring round a turning hub. Velocities in m/s, everything in SI.
struct Gap {
    double clearance, viscosity, rim;  // radial, kinematic, speed of the surface

    /// Blasius' Darcy friction factor on twice the clearance, of the axial flow alone.
    double still_friction(double v) const { return 0.316 / std::sqrt(std::sqrt(2 * clearance * v / viscosity)); }
    /// What the liquid's turning along adds to the axial velocity in it.
    double turning() const { return 7.0 / 8 * rim / 2; }
    double friction(double v) const
    {
        const double part = turning() / v;
        return still_friction(v) * elementary::positive_pow(1 + part * part, 3.0 / 8);
    }
    /// Reynolds number of the velocity that the walls feel, on twice the clearance.
    double felt_reynolds(double v) const { return 2 * clearance * std::sqrt(v * v + rim * rim / 4) / viscosity; }
};

/// Root of x^2 + k x (x^2 + t^2)^(3/8) = 1 for k and t from 0 on, by Halley's steps. From the explicit start, within
/// 7 % of it everywhere, the first leaves 2e-5 and the second rounding error. The count is fixed so that rows of an
/// array take the same path.
inline double part_of_fastest(double k, double t)
{
    const auto raised = [](double square) { return elementary::positive_pow(square, 3.0 / 8); };
    const double still_square = 1 / (1 + elementary::positive_pow(k, 8.0 / 7));  // exact at both ends where t is 0
    const double middle = k * raised(still_square + t * t);
    double x = 2 / (middle + std::sqrt(middle * middle + 4));
    for (int step = 0; step < 2; ++step) {
        const double square = x * x + t * t;
        const double rubbed = k * raised(square);
        const double part = x * x / square;
        const double slope = 2 * x + rubbed * (1 + 0.75 * part);
        const double newton = (x * x + x * rubbed - 1) / slope;
        const double bend = (2 + 0.75 * rubbed * x / square * (3 - 1.25 * part)) / (2 * slope);
        x -= newton / (1 - newton * bend);
    }
    return x;
}

/// Velocity for which end losses and friction together use up the head: both terms rise with it.
inline double velocity(const Gap& gap, double two_g_head, double end_loss, double slenderness, double given)
{
    const double fastest = std::sqrt(two_g_head / end_loss);
    constexpr double all_friction = 1e30;  // a gap with more lies far below the turbulence that is asked for
    const double friction = slenderness / end_loss * gap.still_friction(fastest);
    const double k = elementary::select(friction < all_friction, friction, all_friction);
    return elementary::select(given > 0, std::sqrt(two_g_head / (end_loss + given * slenderness)),
                              fastest * part_of_fastest(k, gap.turning() / fastest));
}

inline constexpr double least_turbulent = 2000;

}  // namespace ring

inline Outcome<Head> ring_head_difference(Head rim_head, RotationalSpeed speed, Length impeller, Length ring_diameter,
                                          Ratio core)
{
    const double w = core.value() * speed.angular().value();
    const double fall = w * w * (impeller.value() * impeller.value() - ring_diameter.value() * ring_diameter.value()) /
                        (8 * standard_gravity.value());
    const Head left = rim_head - Head::from_value(fall);
    if (!(left.value() > 0))
        return NoValue{CUTWATER_NO_ANSWER,
                       "rim_head",
                       "the turning liquid would use up all of it: {0} against a fall of {1} from rim to ring",
                       {number_in(rim_head, units::metre), number_in(Head::from_value(fall), units::metre)}};
    return left;
}

inline constexpr auto ring_head_difference_record = record<&ring_head_difference>(
    {.name = "ring_head_difference",
     .meaning = "Head across a wear ring: what the impeller's rim has, less the fall along the turning shroud",
     .also = "wear ring differential|wearing ring head",
     .inputs =
         {input("rim_head", "H_p", units::metre, above(0),
                "static head at the impeller's rim over the suction, about 0.75 of the total head of a radial wheel"),
          input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"),
          input("impeller_diameter", "D_2", units::mm, limits::bore_mm, "outer diameter of the shroud"),
          input("ring_diameter", "D_r", units::mm, limits::bore_mm, "diameter of the ring"),
          input("core_rotation", "k", units::number, between(0, 0.9), "speed of the liquid's core over the impeller's",
                0.5)},
     .results = {output("head_difference", "dH", units::metre, "head across the ring")},
     .equation = "dH = H_p - k^2 (u_2^2 - u_r^2)/(2 g), u = pi n D",
     .source = "A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd ed. 1957, leakage, with k = 1/2: (u_2^2 - "
               "u_r^2)/(8 g) (from memory of it)",
     .cautions =
         {"The core turns faster with much inward leakage and slower before a rough casing wall: +-20 % of the head."},
     .example = {"40, 2900, 210, 120", "31.2715", "hand calculation: u_2 31.887, u_r 18.221 m/s"}},
    relation<"ring_diameter", "impeller_diameter">([](Length r, Length d) { return r < d; },
                                                   "it must be less than the outer diameter"));

inline Outcome<std::tuple<Flow, Velocity, Ratio>> ring_clearance_leakage(Head head, Length diameter, Length clearance,
                                                                         Length length, RotationalSpeed speed,
                                                                         KinematicViscosity viscosity, Ratio end_loss,
                                                                         Ratio given)
{
    const double slenderness = length.value() / (2 * clearance.value());
    const ring::Gap gap{clearance.value(), viscosity.value(),
                        std::numbers::pi * diameter.value() * speed.revolutions().value()};
    const double v = ring::velocity(gap, 2 * standard_gravity.value() * head.value(), end_loss.value(), slenderness,
                                    given.value());
    const double felt = gap.felt_reynolds(v);
    const bool known = (given.value() > 0) | (length.value() == 0) | (felt >= ring::least_turbulent);
    const double friction = elementary::select(given.value() > 0, given.value(), gap.friction(v));
    return {std::tuple(std::numbers::pi * diameter * clearance * Velocity::from_value(v), Velocity::from_value(v),
                       Ratio(friction)),
            known,
            NoValue{CUTWATER_NO_ANSWER,
                    "viscosity",
                    "the gap's Reynolds number would be {0}; the friction is known from {1} on: give a friction "
                    "factor",
                    {{felt, ""}, {ring::least_turbulent, ""}}}};
}

inline constexpr auto ring_clearance_leakage_record = record<&ring_clearance_leakage>(
    {.name = "ring_clearance_leakage",
     .meaning = "Leakage through the clearance of a plain wear ring",
     .also = "wear ring leakage|wearing ring|annular seal leakage|neck ring|recirculation",
     .inputs = {input("head_difference", "dH", units::metre, above_up_to(0, 10000),
                      "head across the ring, as from ring_head_difference"),
                input("ring_diameter", "D", units::mm, limits::bore_mm, "diameter of the clearance"),
                input("radial_clearance", "s", units::mm, above_up_to(0, 20),
                      "radial clearance, half the difference of the diameters"),
                input("ring_length", "L", units::mm, between(0, 1000),
                      "length of the clearance along the shaft; 0 for a sharp edge"),
                input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"),
                input("viscosity", "nu", units::mm2s, limits::kinematic_viscosity_mm2s,
                      "kinematic viscosity of the liquid"),
                input("end_loss", "zeta", units::number, between(0.5, 10),
                      "entrance and exit, in velocity heads: 0.5 and 1", 1.5),
                input("friction_factor", "lambda", units::number, between(0, 2),
                      "Darcy friction factor on twice the clearance; 0: of a smooth gap round a turning hub", 0)},
     .results = {output("leakage", "Q_L", units::m3h, "leakage of one ring"),
                 output("velocity", "v", units::ms, "axial velocity in the gap"),
                 output("friction", "lambda", units::number, "Darcy friction factor as used")},
     .equation = "Q_L = pi D s v, v = sqrt(2 g dH/(zeta + lambda L/(2 s))), lambda = 0.316 (2 s v/nu)^-0.25 [1 + "
                 "(7/8)^2 (u/(2 v))^2]^0.375, u = pi n D",
     .source = "end losses: Pump Handbook, 1976, 2.1 (as quoted by practitioners, excerpt read); friction: Y. Yamada, "
               "Bull. JSME 5 (1962) 302-310, in H. F. Black's form "
               "(from memory of both); within -2 and +12 % of H. Kanki and T. Kawakami's measurements, 1984 (values "
               "read in an open seal code)",
     .cautions = {"A rough, grooved or eccentric ring leaks otherwise, eccentric ones up to a fifth more: +-15 %.",
                  "Part of the ring's wear is on one side: measure the clearance across, and take the mean.",
                  caution::guide_only},
     .example = {"100.383, 200, 0.5, 40, 2000, 0.792366", "32.0332, 28.3236, 0.0238557",
                 "independent computation; measured 32.57 (Kanki and Kawakami)"}});

}  // namespace cutwater::formulas

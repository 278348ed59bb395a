// Stress in the shaft: shear, bending and torque together, fatigue.
#pragma once

#include "formulas/rotor/shared.hpp"

#include <cmath>
#include <tuple>

namespace cutwater::formulas {

namespace rotor {

inline constexpr Interval torque_nm = between(0, 1e7);
inline constexpr Interval stress_mpa = above_up_to(0, 5000);
inline constexpr Interval concentration = between(1, 10);

constexpr auto shaft_diameter()
{
    return input("diameter", "d", units::mm, size_mm, "diameter of the solid shaft at the section");
}
inline constexpr const char* notch =
    "Key seats, threads, grooves and shoulders raise the stress locally, corrosion and fretting take strength away: a "
    "shaft in a corrosive liquid has no endurance limit.";

inline Stress torsion(Torque torque, Length d, Length bore)
{
    const double D = d.value(), b = bore.value();
    return Stress::from_value(16 * torque.value() * D / (pi * (D * D * D * D - b * b * b * b)));
}

}  // namespace rotor

inline Stress shaft_shear_stress(Torque torque, Length diameter, Length bore)
{
    return rotor::torsion(torque, diameter, bore);
}

inline constexpr auto shaft_shear_stress_record = record<&shaft_shear_stress>(
    {.name = "shaft_shear_stress",
     .meaning = "Shear stress at the surface of a shaft under torque",
     .also = "torsional stress|torsion shear stress",
     .inputs = {input("torque", "T", units::Nm, rotor::torque_nm,
                      "torque at the section, start-up and service factor included where they count"),
                input("diameter", "d", units::mm, rotor::size_mm, "outside diameter"),
                input("bore", "d_i", units::mm, between(0, 5000), "bore of a hollow shaft; 0 for a solid one", 0)},
     .results = {output("stress", "tau", units::MPa, "nominal shear stress at the surface")},
     .equation = "tau = 16 T d/[pi (d^4 - d_i^4)]",
     .source = "theory of torsion; T. H. Wentzell, Machine Design, ex. 17.1, in a published companion (read)",
     .cautions = {rotor::notch, rotor::release},
     .example = {"98.786, 32", "15.354", "hand calculation"}},
    relation<"bore", "diameter">([](Length bore, Length outside) { return bore < outside; },
                                 "it must be less than the outside diameter"));

inline std::tuple<Stress, Stress, Stress, Stress> shaft_combined_stress(Torque moment, Torque torque, Force axial,
                                                                        Length diameter)
{
    const double d = diameter.value();
    const double bending = 32 * moment.value() / (rotor::pi * d * d * d) +
                           std::abs(axial.value()) / rotor::circle(diameter).value();
    const double shear = rotor::torsion(torque, diameter, {}).value();
    return {Stress::from_value(bending), Stress::from_value(shear),
            Stress::from_value(std::sqrt(0.25 * bending * bending + shear * shear)),
            Stress::from_value(std::sqrt(bending * bending + 3 * shear * shear))};
}

inline constexpr Record<&shaft_combined_stress> shaft_combined_stress_record{
    .name = "shaft_combined_stress",
    .meaning = "Stresses in a solid shaft under bending, torque and axial force together",
    .also = "combined stress|von Mises stress|maximum shear stress|equivalent stress",
    .inputs = {input("bending_moment", "M", units::Nm, rotor::torque_nm,
                     "bending moment at the section: radial force times its distance for an overhung impeller"),
               input("torque", "T", units::Nm, rotor::torque_nm, "torque at the section"),
               input("axial_force", "F_ax", units::newton, rotor::force_n,
                     "axial force at the section, either direction"),
               rotor::shaft_diameter()},
    .results = {output("normal_stress", "sigma", units::MPa, "greatest normal stress, from bending and axial force"),
                output("shear_stress", "tau", units::MPa, "shear stress at the surface"),
                output("greatest_shear", "tau_max", units::MPa,
                       "greatest shear stress, to compare with half the yield strength"),
                output("equivalent_stress", "sigma_v", units::MPa,
                       "equivalent stress by von Mises, to compare with the yield strength")},
    .equation = "sigma = 32 M/(pi d^3) + 4 |F_ax|/(pi d^2); tau = 16 T/(pi d^3); tau_max = (sigma^2/4 + tau^2)^0.5; "
                "sigma_v = (sigma^2 + 3 tau^2)^0.5",
    .source = "theory of bending and torsion, greatest shear and von Mises; T. H. Wentzell, Machine Design, ex. 17.1 "
              "and 17.2, in a published companion (read)",
    .cautions = {rotor::notch, rotor::release},
    .example = {"100, 60, 1000, 30", "39.140, 11.318, 22.607, 43.775", "hand calculation"}};

inline Stress shaft_endurance_limit(Stress ultimate, Fraction surface, Fraction size, Fraction other)
{
    const Stress smooth = lesser(Stress(0.5 * ultimate), units::MPa(700));
    return surface.value * size.value * other.value * smooth;
}

inline constexpr Record<&shaft_endurance_limit> shaft_endurance_limit_record{
    .name = "shaft_endurance_limit",
    .meaning = "Endurance limit of a steel shaft in rotating bending, estimated from its tensile strength",
    .also = "fatigue limit|fatigue strength|corrected endurance limit",
    .inputs = {input("tensile_strength", "S_u", units::MPa, between(100, 3000), "tensile strength of the steel"),
               input("surface_factor", "k_a", units::fraction, above_up_to(0, 1),
                     "surface: about 0.8 machined, 0.5 as forged, far less where corroded"),
               input("size_factor", "k_b", units::fraction, above_up_to(0, 1),
                     "size: 0.86 at 30 mm, 0.82 at 50 mm, 0.79 at 60 mm"),
               input("other_factors", "k_c", units::fraction, above_up_to(0, 1),
                     "reliability, temperature and the rest; 0.81 for 99 % reliability")},
    .results = {output("endurance_limit", "S_e", units::MPa, "endurance limit of the shaft, without notches")},
    .equation = "S_e = k_a k_b k_c min(0.5 S_u, 700 MPa)",
    .source =
        "J. E. Shigley, Mechanical Engineering Design (from memory of it): half the tensile strength, at most 700 MPa, "
        "times Marin's factors; T. H. Wentzell, Machine Design, ex. 17.4, in a published companion (read)",
    .scatter = {plus_minus("endurance_limit", 0.2)},
    .cautions = {"For steels in air. In seawater, acids and chlorides there is no endurance limit at all, and "
                 "stainless steels lose most of it: take the maker's data for the liquid, or keep it off the shaft.",
                 "An estimate to about plus or minus 20 %; tested strength of the bar goes before it."},
    .example = {"607, 0.88, 0.85, 0.81", "183.88", "hand calculation"}};

inline std::tuple<Ratio, Ratio> shaft_fatigue_safety(Torque moment, Torque torque, Torque swing, Length diameter,
                                                     Stress endurance, Stress ultimate, Stress yield,
                                                     Ratio bending_notch, Ratio torsion_notch)
{
    const double d3 = diameter.value() * diameter.value() * diameter.value();
    const double m = 2 * bending_notch.value() * moment.value();
    const double t = std::sqrt(3.0) * torsion_notch.value() * swing.value();
    const double mean = std::sqrt(3.0) * torsion_notch.value() * torque.value();
    const double amplitude = std::sqrt(m * m + t * t);
    const double fatigue = rotor::pi * d3 / 16 / (amplitude / endurance.value() + mean / ultimate.value());
    const double whole = std::sqrt(m * m + (mean + t) * (mean + t));
    return {Ratio(fatigue), Ratio(rotor::pi * d3 / 16 * yield.value() / whole)};
}

inline constexpr auto shaft_fatigue_safety_record = record<&shaft_fatigue_safety>(
    {.name = "shaft_fatigue_safety",
     .meaning = "Safety of a turning solid shaft against fatigue and against yield, under a bending moment that stands "
                "still and a torque",
     .also = "fatigue factor of safety|Goodman|shaft fatigue|distortion energy Goodman",
     .inputs = {input("bending_moment", "M_a", units::Nm, rotor::torque_nm,
                      "bending moment at the section; it reverses with every turn"),
                input("torque", "T_m", units::Nm, rotor::torque_nm, "mean torque at the section"),
                input("torque_swing", "T_a", units::Nm, rotor::torque_nm,
                      "amplitude of a swinging torque; 0 for a steady one"),
                rotor::shaft_diameter(),
                input("endurance_limit", "S_e", units::MPa, rotor::stress_mpa,
                      "endurance limit, by shaft_endurance_limit"),
                input("tensile_strength", "S_u", units::MPa, rotor::stress_mpa, "tensile strength"),
                input("yield_strength", "S_y", units::MPa, rotor::stress_mpa, "yield strength"),
                input("bending_notch", "K_f", units::number, rotor::concentration,
                      "fatigue notch factor in bending: 1 smooth, about 2 for a key seat"),
                input("torsion_notch", "K_fs", units::number, rotor::concentration,
                      "fatigue notch factor in torsion: 1 smooth, about 3 for a key seat")},
     .results = {output("fatigue_safety", "n_f", units::number, "safety against fatigue"),
                 output("yield_safety", "n_y", units::number, "safety against first yield, notches counted")},
     .equation = "1/n_f = 16/(pi d^3) {[4 (K_f M_a)^2 + 3 (K_fs T_a)^2]^0.5/S_e + 3^0.5 K_fs T_m/S_u}; 1/n_y = 16/(pi "
                 "d^3) {4 (K_f M_a)^2 + 3 [K_fs (T_m + T_a)]^2}^0.5/S_y",
     .source = "distortion energy with Goodman's line, J. E. Shigley and others, Mechanical Engineering Design, 9th "
               "edition, eq. 7-7 and 7-15 (from memory of it)",
     .cautions = {rotor::notch,
                  "Aim at 1.5 to 2 and more where loads are uncertain: radial thrust is known to about 30 %.",
                  rotor::release},
     .example = {"142.36, 124.28, 0, \"1.1 in\", 202, 724, 565, 1.58, 1.39", "1.6220, 4.4786",
                 "Shigley, ex. 7-1 (from memory of it): 1.62 by Goodman"}},
    relation<"yield_strength", "tensile_strength">([](Stress yield, Stress ultimate) { return yield <= ultimate; },
                                                   "it must not exceed the tensile strength"),
    relation<"endurance_limit", "tensile_strength">(
        [](Stress endurance, Stress ultimate) { return endurance <= ultimate; },
        "it must not exceed the tensile strength"),
    relation<"bending_moment", "torque", "torque_swing">(
        [](Torque moment, Torque torque, Torque swing) { return moment + torque + swing > Torque{}; },
        "moment, torque or swing must be above 0: without any there is no stress"));

}  // namespace cutwater::formulas

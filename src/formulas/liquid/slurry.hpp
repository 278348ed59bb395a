// Mixtures of a liquid and solids: density, and the solids' share by mass and by volume.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas {

namespace slurry {

inline constexpr const char* say_which =
    "Say whether a solids concentration is by mass (weight) or by volume: 30 % of sand by mass is 14 % by volume.";
inline constexpr const char* packed = "Solids of one size lie packed at about 60 % by volume, coarse and mixed ones "
                                      "somewhat above: near that it is no slurry to pump.";
inline constexpr const char* balance =
    "mass balance; Hydraulic Institute, Engineering Data Book, 2nd ed. 1990, II-B, equation 2.B.1 (public text read)";

inline constexpr Input<Density> liquid_input = input("liquid_density", "rho_l", units::kgm3, limits::density_kgm3,
                                                     "density of the carrying liquid");
inline constexpr Input<Density> solids_input = input("solids_density", "rho_s", units::kgm3, limits::density_kgm3,
                                                     "density of the solids, without pores between them");
inline constexpr Input<Fraction> by_mass_input = input("mass_fraction", "C_w", units::fraction, between(0, 1),
                                                       "solids' share of the mixture by mass");

}  // namespace slurry

inline Density slurry_density(Density liquid, Density solids, Fraction mass_fraction)
{
    const Ratio w = mass_fraction.value;
    return 1.0 / (w / solids + (1.0 - w) / liquid);
}

inline constexpr Record<&slurry_density> slurry_density_record{
    .name = "slurry_density",
    .meaning = "Density of a slurry from its solids' share by mass",
    .also = "slurry specific gravity|mixture density|weight per cent solids",
    .inputs = {slurry::liquid_input, slurry::solids_input, slurry::by_mass_input},
    .results = {output("slurry_density", "rho_m", units::kgm3, "density of the mixture")},
    .equation = "1/rho_m = C_w/rho_s + (1 - C_w)/rho_l",
    .source = slurry::balance,
    .cautions = {slurry::say_which, slurry::packed},
    .example = {"1000, 2700, 0.3", "1232.877",
                "hand calculation; Hydraulic Institute, Engineering Data Book, II-B: relative density 1.23"}};

inline Fraction slurry_volume_fraction(Density liquid, Density solids, Fraction mass_fraction)
{
    const Ratio w = mass_fraction.value;
    return {(w * liquid) / (w * liquid + (1.0 - w) * solids)};
}

inline constexpr Record<&slurry_volume_fraction> slurry_volume_fraction_record{
    .name = "slurry_volume_fraction",
    .meaning = "Solids' share of a slurry by volume, from their share by mass",
    .also = "per cent solids by volume|volume concentration",
    .inputs = {slurry::liquid_input, slurry::solids_input, slurry::by_mass_input},
    .results = {output("volume_fraction", "C_v", units::fraction, "solids' share of the mixture by volume")},
    .equation = "C_v = (C_w/rho_s)/(C_w/rho_s + (1 - C_w)/rho_l)",
    .source = slurry::balance,
    .cautions = {slurry::say_which, slurry::packed},
    .example = {"1000, 2700, 0.3", "0.136986", "hand calculation: 300/2700 over 300/2700 + 700/1000"}};

inline Fraction slurry_mass_fraction(Density liquid, Density solids, Fraction volume_fraction)
{
    const Ratio v = volume_fraction.value;
    return {(v * solids) / (v * solids + (1.0 - v) * liquid)};
}

inline constexpr Record<&slurry_mass_fraction> slurry_mass_fraction_record{
    .name = "slurry_mass_fraction",
    .meaning = "Solids' share of a slurry by mass, from their share by volume",
    .also = "per cent solids by weight|weight concentration",
    .inputs = {slurry::liquid_input, slurry::solids_input,
               input("volume_fraction", "C_v", units::fraction, between(0, 1),
                     "solids' share of the mixture by volume")},
    .results = {output("mass_fraction", "C_w", units::fraction, "solids' share of the mixture by mass")},
    .equation = "C_w = C_v rho_s/(C_v rho_s + (1 - C_v) rho_l)",
    .source = slurry::balance,
    .cautions = {slurry::say_which, slurry::packed},
    .example = {"1000, 2650, 0.2", "0.398496", "hand calculation: 530/(530 + 800)"}};

}  // namespace cutwater::formulas

// Density at another temperature, relative density, and the two viscosities that density joins.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas {

inline Density density_at_temperature(Density density, Temperature first_temperature, ThermalExpansion expansion,
                                      Temperature second_temperature)
{
    return density / (1.0 + expansion * (second_temperature - first_temperature));
}

inline constexpr Record<&density_at_temperature> density_at_temperature_record{
    .name = "density_at_temperature",
    .meaning = "Density of a liquid at another temperature, from its cubic expansion coefficient",
    .inputs = {input("density", "rho_1", units::kgm3, limits::density_kgm3, "density at the first temperature"),
               input("first_temperature", "T_1", units::degC, above_up_to(-273.15, 1000),
                     "temperature at which the density is known"),
               input("expansion", "beta", units::per_K, between(-0.01, 0.01),
                     "mean cubic expansion coefficient between the temperatures"),
               input("second_temperature", "T_2", units::degC, above_up_to(-273.15, 1000),
                     "temperature at which the density is wanted")},
    .results = {output("new_density", "rho_2", units::kgm3, "density at the second temperature")},
    .equation = "rho_2 = rho_1/(1 + beta (T_2 - T_1))",
    .relations = {{"second_temperature",
                   [](Density, Temperature t1, ThermalExpansion beta, Temperature t2) { return 1.0 + beta * (t2 - t1) > 0.2; },
                   "over so many kelvin this expansion coefficient cannot hold: 1 + beta (T_2 - T_1) must stay above 0.2"}},
    .source = "definition of the mean cubic expansion coefficient, V_2 = V_1 (1 + beta (T_2 - T_1)); common practice",
    .cautions = {"One expansion coefficient holds over some tens of kelvin. For water use water_density: near 4 degC water's "
                 "coefficient changes sign."},
    .example = {"870, 15, 0.0007, 75", "834.9328", "hand calculation: 870/1.042"}};

namespace relative {
inline constexpr Input<Density> reference_input =
    input("reference_density", "rho_0", units::kgm3, limits::density_kgm3, "density that the relative density refers to", 1000);
inline constexpr const char* which_reference =
    "State the reference: 1000 kg/m3 is the rounded figure of pump practice; water has 999.97 kg/m3 at 4 degC, 999.10 at 15 degC, "
    "999.02 at 60 degF and 998.21 at 20 degC.";
}  // namespace relative

inline Ratio relative_density(Density density, Density reference_density) { return density / reference_density; }

inline constexpr Record<&relative_density> relative_density_record{
    .name = "relative_density",
    .meaning = "Relative density (specific gravity) of a liquid",
    .inputs = {input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"), relative::reference_input},
    .results = {output("relative_density", "d", units::number, "density over reference density")},
    .equation = "d = rho/rho_0",
    .source = "ISO 80000-4:2019, 4-4, relative density (from memory of it); reference of 1000 kg/m3: common practice",
    .cautions = {relative::which_reference},
    .example = {"850, 999.016", "0.850837", "hand calculation"}};

inline Density density_from_relative(Ratio relative_density, Density reference_density) { return relative_density * reference_density; }

inline constexpr Record<&density_from_relative> density_from_relative_record{
    .name = "density_from_relative",
    .meaning = "Density of a liquid from its relative density (specific gravity)",
    .inputs = {input("relative_density", "d", units::number, above_up_to(0, 25), "relative density of the liquid"),
               relative::reference_input},
    .results = {output("density", "rho", units::kgm3, "density of the liquid")},
    .equation = "rho = d rho_0",
    .source = "ISO 80000-4:2019, 4-4, relative density (from memory of it); reference of 1000 kg/m3: common practice",
    .cautions = {relative::which_reference},
    .example = {"0.85, 999.016", "849.1636", "hand calculation"}};

inline KinematicViscosity kinematic_from_dynamic(DynamicViscosity dynamic_viscosity, Density density)
{
    return dynamic_viscosity / density;
}

inline constexpr Record<&kinematic_from_dynamic> kinematic_from_dynamic_record{
    .name = "kinematic_from_dynamic",
    .meaning = "Kinematic viscosity from dynamic viscosity",
    .inputs = {input("dynamic_viscosity", "mu", units::mPas, above_up_to(0, 1e9), "dynamic viscosity"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density at the same temperature")},
    .results = {output("kinematic_viscosity", "nu", units::mm2s, "kinematic viscosity")},
    .equation = "nu = mu/rho",
    .source = "ISO 80000-4:2019, 4-25, kinematic viscosity (from memory of it)",
    .example = {"1.0016, 998.2", "1.003406", "hand calculation"}};

inline DynamicViscosity dynamic_from_kinematic(KinematicViscosity kinematic_viscosity, Density density)
{
    return kinematic_viscosity * density;
}

inline constexpr Record<&dynamic_from_kinematic> dynamic_from_kinematic_record{
    .name = "dynamic_from_kinematic",
    .meaning = "Dynamic viscosity from kinematic viscosity",
    .inputs = {input("kinematic_viscosity", "nu", units::mm2s, above_up_to(0, 1e9), "kinematic viscosity"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density at the same temperature")},
    .results = {output("dynamic_viscosity", "mu", units::mPas, "dynamic viscosity")},
    .equation = "mu = nu rho",
    .source = "ISO 80000-4:2019, 4-25, kinematic viscosity (from memory of it)",
    .example = {"32, 870", "27.84", "hand calculation"}};

}  // namespace cutwater::formulas

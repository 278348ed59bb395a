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

inline constexpr auto density_at_temperature_record = record<&density_at_temperature>(
    {.name = "density_at_temperature",
     .meaning = "Density of a liquid at another temperature, from its cubic expansion coefficient",
     .also = "specific gravity at temperature|hot density",
     .inputs = {input("density", "rho_1", units::kgm3, limits::density_kgm3, "density at the first temperature"),
                input("first_temperature", "T_1", units::degC, above_up_to(-273.15, 1000),
                      "temperature at which the density is known"),
                input("expansion", "beta", units::per_K, between(-0.01, 0.01),
                      "mean cubic expansion coefficient between the temperatures"),
                input("second_temperature", "T_2", units::degC, above_up_to(-273.15, 1000),
                      "temperature at which the density is wanted")},
     .results = {output("new_density", "rho_2", units::kgm3, "density at the second temperature")},
     .equation = "rho_2 = rho_1/(1 + beta (T_2 - T_1))",
     .source = "definition of the mean cubic expansion coefficient, V_2 = V_1 (1 + beta (T_2 - T_1)); common practice",
     .cautions =
         {"One expansion coefficient holds over some tens of kelvin. For water use water_density: near 4 degC water's "
          "coefficient changes sign."},
     .sound_anywhere = true,
     .example = {"870, 15, 0.0007, 75", "834.9328", "hand calculation: 870/1.042"}},
    relation<"second_temperature", "first_temperature", "expansion">(
        [](Temperature t2, Temperature t1, ThermalExpansion beta) { return 1.0 + beta * (t2 - t1) > 0.2; },
        "over so many kelvin this expansion coefficient cannot hold: 1 + beta (T_2 - T_1) must stay above 0.2"));

inline Density density_two_point(Temperature first_temperature, Density first_density, Temperature second_temperature,
                                 Density second_density, Temperature temperature)
{
    const Ratio along = (temperature - first_temperature) / (second_temperature - first_temperature);
    return first_density + along * (second_density - first_density);
}

inline constexpr auto density_two_point_record = record<&density_two_point>(
    {.name = "density_two_point",
     .meaning = "Density of a liquid between two temperatures at which it is known",
     .also = "thermal oil density|heat transfer fluid|hot density|specific gravity at temperature",
     .inputs = {input("first_temperature", "T_1", units::degC, above_up_to(-273.15, 1000), "lower temperature"),
                input("first_density", "rho_1", units::kgm3, limits::density_kgm3, "density there"),
                input("second_temperature", "T_2", units::degC, above_up_to(-273.15, 1000), "higher temperature"),
                input("second_density", "rho_2", units::kgm3, limits::density_kgm3, "density there"),
                input("temperature", "T", units::degC, above_up_to(-273.15, 1000),
                      "temperature at which the density is wanted, between the two")},
     .results = {output("density", "rho", units::kgm3, "density there")},
     .equation = "rho = rho_1 + (rho_2 - rho_1)(T - T_1)/(T_2 - T_1)",
     .source = "straight line between two points; common practice",
     .cautions = {"A liquid's density bends a little: over 100 K the line lies up to about half a per cent below it. "
                  "Take points close by; near the boiling point at high pressure it falls much faster.",
                  "Size the motor and the casing for the greatest density, the coldest start."},
     .example = {"20, 870, 220, 730, 120", "800", "hand calculation: halfway"}},
    relation<"second_temperature", "first_temperature">([](Temperature t2, Temperature t1) { return t2 > t1; },
                                                        "it must be higher than the first temperature"),
    relation<"temperature", "first_temperature", "second_temperature">(
        [](Temperature t, Temperature t1, Temperature t2) { return (t >= t1) & (t <= t2); },
        "it must lie between the two temperatures: the line is not drawn on beyond them"));

namespace relative {
inline constexpr Input<Density> reference_input = input("reference_density", "rho_0", units::kgm3, limits::density_kgm3,
                                                        "density that the relative density refers to", 1000);
inline constexpr const char* which_reference = "State the reference: 1000 kg/m3 is the rounded figure of pump "
                                               "practice; water has 999.97 kg/m3 at 4 degC, 999.10 at 15 degC, "
                                               "999.02 at 60 degF and 998.21 at 20 degC.";
}  // namespace relative

inline Ratio relative_density(Density density, Density reference_density) { return density / reference_density; }

inline constexpr Record<&relative_density> relative_density_record{
    .name = "relative_density",
    .meaning = "Relative density (specific gravity) of a liquid",
    .also = "specific gravity|SG|s.g.",
    .inputs = {input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
               relative::reference_input},
    .results = {output("relative_density", "d", units::number, "density over reference density")},
    .equation = "d = rho/rho_0",
    .source = "ISO 80000-4:2019, 4-4, relative density (from memory of it); reference of 1000 kg/m3: common practice",
    .cautions = {relative::which_reference},
    .sound_anywhere = true,
    .example = {"850, 999.016", "0.850837", "hand calculation"}};

inline Density density_from_relative(Ratio relative_density, Density reference_density)
{
    return relative_density * reference_density;
}

inline constexpr Record<&density_from_relative> density_from_relative_record{
    .name = "density_from_relative",
    .meaning = "Density of a liquid from its relative density (specific gravity)",
    .also = "specific gravity|SG|s.g.",
    .inputs = {input("relative_density", "d", units::number, above_up_to(0, 25), "relative density of the liquid"),
               relative::reference_input},
    .results = {output("density", "rho", units::kgm3, "density of the liquid")},
    .equation = "rho = d rho_0",
    .source = "ISO 80000-4:2019, 4-4, relative density (from memory of it); reference of 1000 kg/m3: common practice",
    .cautions = {relative::which_reference},
    .sound_anywhere = true,
    .example = {"0.85, 999.016", "849.1636", "hand calculation"},
    .turns = true};

namespace api_gravity {
inline constexpr Density water = units::kgm3(999.016);
inline constexpr const char* source = "API Manual of Petroleum Measurement Standards, chapter 11: definition of API "
                                      "gravity (from memory of it); water at 60 degF 999.016 kg/m3";
inline constexpr const char* at_60 = "Holds at 60 degF (15.56 degC): bring the density to the pumping temperature "
                                     "afterwards, see density_at_temperature.";
}  // namespace api_gravity

inline Density density_from_api_gravity(Ratio gravity)
{
    return api_gravity::water * (141.5 / (gravity.value() + 131.5));
}

inline constexpr Record<&density_from_api_gravity> density_from_api_gravity_record{
    .name = "density_from_api_gravity",
    .meaning = "Density of a petroleum liquid at 60 degF from its API gravity",
    .also = "API gravity|degrees API|crude oil",
    .inputs = {input("api_gravity", "G", units::number, between(-40, 150), "degrees API")},
    .results = {output("density", "rho", units::kgm3, "density at 60 degF")},
    .equation = "rho = 999.016 kg/m3 x 141.5/(G + 131.5)",
    .source = api_gravity::source,
    .cautions = {api_gravity::at_60},
    .sound_anywhere = true,
    .example = {"10", "999.016", "definition: 10 degrees API is water's density"}};

inline Ratio api_gravity_from_density(Density density)
{
    return Ratio(141.5 * (api_gravity::water / density).value() - 131.5);
}

inline constexpr Record<&api_gravity_from_density> api_gravity_from_density_record{
    .name = "api_gravity_from_density",
    .meaning = "API gravity of a petroleum liquid from its density at 60 degF",
    .also = "API gravity|degrees API|crude oil",
    .inputs = {input("density", "rho", units::kgm3, between(502.2, 1544.8), "density at 60 degF")},
    .results = {output("api_gravity", "G", units::number, "degrees API")},
    .equation = "G = 141.5 x 999.016 kg/m3/rho - 131.5",
    .source = api_gravity::source,
    .cautions = {api_gravity::at_60},
    .sound_anywhere = true,
    .example = {"999.016", "10", "definition"}};

inline KinematicViscosity kinematic_from_dynamic(DynamicViscosity dynamic_viscosity, Density density)
{
    return dynamic_viscosity / density;
}

inline constexpr Record<&kinematic_from_dynamic> kinematic_from_dynamic_record{
    .name = "kinematic_from_dynamic",
    .meaning = "Kinematic viscosity from dynamic viscosity",
    .also = "cSt from cP|absolute viscosity",
    .inputs = {input("dynamic_viscosity", "mu", units::mPas, above_up_to(0, 1e9), "dynamic viscosity"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density at the same temperature")},
    .results = {output("kinematic_viscosity", "nu", units::mm2s, "kinematic viscosity")},
    .equation = "nu = mu/rho",
    .source = "ISO 80000-4:2019, 4-25, kinematic viscosity (from memory of it)",
    .sound_anywhere = true,
    .example = {"1.0016, 998.2", "1.003406", "hand calculation"},
    .turns = true};

inline DynamicViscosity dynamic_from_kinematic(KinematicViscosity kinematic_viscosity, Density density)
{
    return kinematic_viscosity * density;
}

inline constexpr Record<&dynamic_from_kinematic> dynamic_from_kinematic_record{
    .name = "dynamic_from_kinematic",
    .meaning = "Dynamic viscosity from kinematic viscosity",
    .also = "cP from cSt|absolute viscosity",
    .inputs = {input("kinematic_viscosity", "nu", units::mm2s, above_up_to(0, 1e9), "kinematic viscosity"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density at the same temperature")},
    .results = {output("dynamic_viscosity", "mu", units::mPas, "dynamic viscosity")},
    .equation = "mu = nu rho",
    .source = "ISO 80000-4:2019, 4-25, kinematic viscosity (from memory of it)",
    .sound_anywhere = true,
    .example = {"32, 870", "27.84", "hand calculation"},
    .turns = true};

}  // namespace cutwater::formulas

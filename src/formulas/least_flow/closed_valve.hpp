// Heating of a pump that runs against a closed valve.
#pragma once

#include "formulas/least_flow/heating.hpp"

namespace cutwater::formulas {

namespace least_flow {

inline constexpr const char* both_valves =
    "With the valves on both sides closed the liquid has nowhere to expand: in a casing full of cold water the "
    "pressure rises by some 4 bar for every kelvin, by more when hot, and bursts it long before the liquid boils.";

}  // namespace least_flow

inline TemperatureRate closed_valve_heating_rate(Power shutoff_power, Volume liquid, Density density,
                                                 SpecificHeat specific_heat, Mass metal,
                                                 SpecificHeat metal_specific_heat)
{
    return shutoff_power / (liquid * density * specific_heat + metal * metal_specific_heat);
}

inline constexpr Record<&closed_valve_heating_rate> closed_valve_heating_rate_record{
    .name = "closed_valve_heating_rate",
    .meaning = "How fast a pump at closed valve heats its liquid",
    .also = "dead head|deadhead|shut valve|blocked discharge|blocked in|run shut|heats up closed valve",
    .inputs = {input("shutoff_power", "P_0", units::kW, above(0), "pump power input at closed valve"),
               input("liquid_volume", "V", units::litre, above(0), "liquid held in the casing"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
               input("specific_heat", "c_p", units::kJkgK, least_flow::specific_heats,
                     least_flow::specific_heat_meaning),
               input("metal_mass", "m", units::kg, from(0), "metal that warms with it; 0 is the safe side", 0),
               input("metal_specific_heat", "c_m", units::kJkgK, between(0.1, 2),
                     "specific heat of the metal; iron and steel 0.46 to 0.50", 0.46)},
    .results = {output("heating_rate", "dT/dt", units::K_min, "with no heat lost to the surroundings")},
    .equation = "dT/dt = P_0/(V rho c_p + m c_m)",
    .source = "energy balance; the relation of I. J. Karassik et al., Pump Handbook (from memory of it)",
    .cautions = {caution::closed_valve, least_flow::both_valves, caution::hot_or_toxic, caution::pressure_containment},
    .sound_anywhere = true,
    .example = {"15, 10, 998, 4.184, 60", "12.976", "hand calculation"}};

inline Time time_to_temperature(TemperatureRate rate, Temperature start, Temperature end)
{
    return (end - start) / rate;
}

inline constexpr auto time_to_temperature_record = record<&time_to_temperature>(
    {.name = "time_to_temperature",
     .meaning = "Time in which a steady heating reaches a temperature",
     .also = "dead head|deadhead|how long can it run shut|minutes to boiling|blocked in|heats up closed valve",
     .inputs = {input("heating_rate", "dT/dt", units::K_min, above(0), "as from closed_valve_heating_rate"),
                input("start_temperature", "T_1", units::degC, above(-273.15), "temperature at the beginning"),
                input("end_temperature", "T_2", units::degC, above(-273.15),
                      "temperature to be reached, such as the boiling temperature")},
     .results = {output("time", "t", units::minute, "time until then")},
     .equation = "t = (T_2 - T_1)/(dT/dt)",
     .source = "steady heating without loss; common practice",
     .cautions = {caution::closed_valve, least_flow::both_valves, caution::hot_or_toxic},
     .sound_anywhere = true,
     .example = {"12.96, 20, 85", "5.0154", "hand calculation: 65 K at 12.96 K/min"}},
    relation<"end_temperature", "start_temperature">([](Temperature end, Temperature start) { return end > start; },
                                                     "it must lie above the start temperature"));

}  // namespace cutwater::formulas

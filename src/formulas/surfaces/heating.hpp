// A pump that heats itself: against a closed valve, or dry. One lump of heat that loses some to the air.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/surfaces/explosive_atmosphere.hpp"
#include "formulas/limits.hpp"

#include <tuple>

namespace cutwater::formulas {

namespace lump {

/// Where it ends when it is left alone.
inline Temperature settled(Power heat, Area surface, HeatTransfer coefficient, Temperature ambient)
{
    return ambient + heat / (surface * coefficient);
}

inline Time time_constant(HeatCapacity capacity, Area surface, HeatTransfer coefficient)
{
    return capacity / (surface * coefficient);
}

constexpr auto capacity(const char* meaning) { return input("heat_capacity", "C", units::kJK, above(0), meaning); }
constexpr auto surface(const char* meaning) { return input("surface", "A", units::m2, above_up_to(0, 1000), meaning); }
constexpr auto coefficient()
{
    return input("surface_coefficient", "h", units::Wm2K, above_up_to(0, 1000),
                 "heat given to still air, radiation included: about 10 bare, less when insulated; see "
                 "surface_coefficient",
                 10);
}
/// Cooling is feared, so the default is a windy one.
constexpr auto coefficient_outdoors()
{
    return input("surface_coefficient", "h", units::Wm2K, above_up_to(0, 1000),
                 "heat given to the air, radiation included: bare about 10 in still air, 25 in wind (judgement), less "
                 "when insulated; the greater is the safe side",
                 25);
}
constexpr auto ambient()
{
    return input("ambient_temperature", "T_a", units::degC, between(-60, 100), "temperature of the air");
}
constexpr auto start()
{
    return input("start_temperature", "T_0", units::degC, between(-273.15, 1000), "temperature at the beginning");
}

inline constexpr const char* one_lump =
    "One lump of even temperature: places where the heat arises are hotter and get hot sooner. Draughts, rain and "
    "pipes carry more heat away.";
inline constexpr const char* no_boiling =
    "Liquid that boils keeps its temperature and raises pressure instead, or leaves the seal dry: find its boiling "
    "temperature at the casing's pressure.";

inline constexpr const char* source =
    "balance of heat of one body, C dT/dt = P - h A (T - T_a); Newton's law of cooling; common practice, checked "
    "against a numerical integration";

}  // namespace lump

inline HeatCapacity pump_heat_capacity(Volume liquid, Density density, SpecificHeat specific_heat, Mass metal,
                                       SpecificHeat metal_specific_heat)
{
    return liquid * density * specific_heat + metal * metal_specific_heat;
}

inline constexpr Record<&pump_heat_capacity> pump_heat_capacity_record{
    .name = "pump_heat_capacity",
    .meaning = "Heat that liquid and metal of a pump take up for each kelvin",
    .also = "thermal mass|heat storage|heat capacity of pump and liquid",
    .inputs = {input("liquid_volume", "V", units::litre, from(0), "liquid held in the casing; 0 when dry"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
               input("specific_heat", "c_p", units::kJkgK, between(0.1, 20),
                     "specific heat of the liquid: water 4.18, oils about 2, 98 % sulphuric acid 1.4"),
               input("metal_mass", "m", units::kg, from(0),
                     "metal that warms with it; 0 is the safe side for heating and freezing times, not for "
                     "jacket_heat_duty",
                     0),
               input("metal_specific_heat", "c_m", units::kJkgK, between(0.1, 2),
                     "specific heat of the metal; iron and steel 0.46 to 0.50", 0.46)},
    .results = {output("heat_capacity", "C", units::kJK, "of liquid and metal together")},
    .equation = "C = V rho c_p + m c_m",
    .source = "definition",
    .sound_anywhere = true,
    .example = {"10, 998, 4.184, 60", "69.356", "hand calculation: 41.756 + 27.6"}};

inline std::tuple<Temperature, Temperature, Time> dead_headed_temperature(Power heat, HeatCapacity capacity,
                                                                          Temperature start, Time time, Area surface,
                                                                          Temperature ambient, HeatTransfer coefficient)
{
    const Temperature settled = lump::settled(heat, surface, coefficient, ambient);
    const Time constant = lump::time_constant(capacity, surface, coefficient);
    return {settled - (settled - start) * elementary::exp(-(time / constant).value()), settled, constant};
}

inline constexpr Record<&dead_headed_temperature> dead_headed_temperature_record{
    .name = "dead_headed_temperature",
    .meaning = "Temperature of a pump that runs against a closed valve, after a time and in the end",
    .also = "deadhead|dead head|closed discharge|blocked discharge|shut-off heating|churning",
    .inputs = {input("shutoff_power", "P_0", units::kW, from(0), "pump power input at closed valve"),
               lump::capacity("liquid and metal, as from pump_heat_capacity"), lump::start(),
               input("time", "t", units::minute, from(0), "time at closed valve"),
               lump::surface("outside surface of the casing and cover"), lump::ambient(), lump::coefficient()},
    .results = {output("temperature", "T", units::degC, "temperature after that time"),
                output("settled_temperature", "T_e", units::degC, "temperature in the end, if nothing stops it"),
                output("time_constant", "tau", units::minute, "time in which 63 % of the change is done")},
    .equation = "T = T_e - (T_e - T_0) exp(-t/tau), T_e = T_a + P_0/(h A), tau = C/(h A)",
    .source = lump::source,
    .cautions = {caution::closed_valve, lump::no_boiling, lump::one_lump, explosive::upsets, caution::hot_or_toxic},
    .sound_anywhere = true,
    .example = {"15, 69.356, 20, 5, 0.6, 20, 10", "84.05, 2520, 192.66",
                "hand calculation: tau = 69356/6 s = 192.66 min, 2500 K x (1 - exp(-0.025953))"}};

inline Outcome<std::tuple<Time, Temperature>> dead_headed_time(Power heat, HeatCapacity capacity, Temperature start,
                                                               Temperature limit, Area surface, Temperature ambient,
                                                               HeatTransfer coefficient)
{
    const Temperature settled = lump::settled(heat, surface, coefficient, ambient);
    if (settled <= limit)
        return NoValue{
            CUTWATER_NO_ANSWER,
            "limit_temperature",
            "by this balance the pump settles at {0}, below the limit; that hangs on the surface coefficient: "
            "give a smaller one (3 when insulated) before relying on it, and never run against a closed "
            "valve",
            {number_in(settled, units::degC)}};
    const Ratio left = (settled - start) / (settled - limit);
    return std::tuple{lump::time_constant(capacity, surface, coefficient) * elementary::log(left.value()), settled};
}

inline constexpr auto dead_headed_time_record = record<&dead_headed_time>(
    {.name = "dead_headed_time",
     .meaning = "Time until a pump at closed valve reaches a temperature, heat lost to the air counted",
     .also = "deadhead time|dead head time|time to boil|time to flash|blocked discharge|closed valve",
     .inputs = {input("shutoff_power", "P_0", units::kW, above(0), "pump power input at closed valve"),
                lump::capacity("liquid and metal, as from pump_heat_capacity"), lump::start(),
                input("limit_temperature", "T_1", units::degC, between(-273.15, 1000),
                      "temperature to be reached: the boiling temperature, a lining's limit, a class's"),
                lump::surface("outside surface of the casing and cover"), lump::ambient(), lump::coefficient()},
     .results = {output("time", "t", units::minute, "time until then"),
                 output("settled_temperature", "T_e", units::degC, "temperature in the end, if nothing stops it")},
     .equation = "t = tau ln((T_e - T_0)/(T_e - T_1)), T_e = T_a + P_0/(h A), tau = C/(h A)",
     .source = lump::source,
     .cautions = {caution::closed_valve, lump::no_boiling, lump::one_lump, explosive::upsets, caution::hot_or_toxic},
     .sound_anywhere = true,
     .example = {"15, 69.356, 20, 85, 0.6, 20, 10", "5.0753, 2520", "hand calculation: 192.66 min x ln(2500/2435)"}},
    relation<"limit_temperature", "start_temperature">(
        [](Temperature limit, Temperature start) { return limit > start; }, "it must lie above the start temperature"));

inline std::tuple<Temperature, Temperature, Time> dry_running_temperature(Power friction, HeatCapacity capacity,
                                                                          Temperature start, Time time, Area surface,
                                                                          Temperature ambient, HeatTransfer coefficient)
{
    return dead_headed_temperature(friction, capacity, start, time, surface, ambient, coefficient);
}

inline constexpr Record<&dry_running_temperature> dry_running_temperature_record{
    .name = "dry_running_temperature",
    .meaning = "Mean temperature of a part that rubs dry: seal faces, a bush, a ring",
    .also = "dry running|run dry|dry run|loss of liquid|seal running dry|bush running dry",
    .inputs = {input("friction_power", "P", units::kW, from(0),
                     "heat of the dry rubbing: friction coefficient x load x rubbing speed, dry coefficients are "
                     "several times the wet ones"),
               lump::capacity("metal that warms with it; the parts next to the rubbing alone are the safe side"),
               lump::start(), input("time", "t", units::minute, from(0), "time of running dry"),
               lump::surface("surface that gives heat to the air"), lump::ambient(), lump::coefficient()},
    .results = {output("temperature", "T", units::degC, "mean temperature after that time"),
                output("settled_temperature", "T_e", units::degC, "mean temperature in the end"),
                output("time_constant", "tau", units::minute, "time in which 63 % of the change is done")},
    .equation = "T = T_e - (T_e - T_0) exp(-t/tau), T_e = T_a + P/(h A), tau = C/(h A)",
    .source = lump::source,
    .cautions = {"The rubbing faces themselves are far hotter than the mean, within seconds: this tells how the parts "
                 "around them fare, not the faces.",
                 "The dry friction coefficient is the weak point: take both ends of its range.", lump::one_lump,
                 explosive::upsets},
    .sound_anywhere = true,
    .example = {"0.8, 9.2, 20, 3, 0.4, 20, 10", "35.055, 220, 38.333",
                "hand calculation: tau = 9200/4 s, 200 K x (1 - exp(-0.078261)) = 15.055"}};

inline Outcome<Time> cooling_time(HeatCapacity capacity, Temperature start, Temperature limit, Area surface,
                                  Temperature ambient, HeatTransfer coefficient)
{
    if (limit <= ambient)
        return NoValue{CUTWATER_NO_ANSWER,
                       "limit_temperature",
                       "it is never reached: the liquid cools no further than the air, {0}",
                       {number_in(ambient, units::degC)}};
    const Ratio left = (start - ambient) / (limit - ambient);
    return lump::time_constant(capacity, surface, coefficient) * elementary::log(left.value());
}

inline constexpr auto cooling_time_record = record<&cooling_time>(
    {.name = "cooling_time",
     .meaning = "Time until the liquid in a standing pump has cooled to a temperature, such as where it freezes or "
                "crystallises",
     .also = "freezing time|time to freeze|solidification|crystallisation|standby cooling|winterising",
     .inputs = {lump::capacity("liquid and metal, as from pump_heat_capacity"), lump::start(),
                input("limit_temperature", "T_1", units::degC, between(-273.15, 1000),
                      "temperature not to be reached: freezing, crystallising, greatest viscosity"),
                lump::surface("outside surface"), lump::ambient(), lump::coefficient_outdoors()},
     .results = {output("time", "t", units::hour, "time until then")},
     .equation = "t = tau ln((T_0 - T_a)/(T_1 - T_a)), tau = C/(h A)",
     .source = "Newton's law of cooling, one body; common practice, checked against a numerical integration",
     .cautions = {"Small bores, drains, seal lines and instrument tappings freeze long before the casing does.",
                  lump::one_lump, caution::guide_only},
     .sound_anywhere = true,
     .example = {"150, 60, 30, 0.8, 0, 3", "12.034", "hand calculation: 150000/2.4 s x ln 2"}},
    relation<"limit_temperature", "start_temperature">(
        [](Temperature limit, Temperature start) { return limit < start; }, "it must lie below the start temperature"));

}  // namespace cutwater::formulas

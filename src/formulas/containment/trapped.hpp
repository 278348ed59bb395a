// Pressure of a liquid that warms between closed valves.
#pragma once

#include "formulas/containment/casing_pressure.hpp"
#include "formulas/liquid/water.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <cstdint>

namespace cutwater::formulas {

namespace trapped {

inline constexpr const char* no_gas =
    "Holds only while the space is full of liquid, nothing leaks, nothing yields and no relief valve opens: a little "
    "gas lowers it, and it says when something must give.";
inline constexpr const char* relieve =
    "Give every space that can be shut in full of liquid a relief or a vent to a safe place: sun, tracing, a running "
    "pump or fire can burst it.";

/// Share by which the space grows for a pressure: thin cylinder with closed ends.
inline Compressibility stretch(Length diameter, Length wall, Stress modulus, Ratio poisson)
{
    return diameter / (2.0 * modulus * wall) * (2.5 - 2.0 * poisson);
}

constexpr auto wall_expansion()
{
    return input("wall_expansion", "alpha_w", units::um_per_K, between(0, 50),
                 "linear expansion of the wall: carbon steel 12, austenitic steel 16, lined or clad by the wall", 12);
}
constexpr auto diameter()
{
    return input("diameter", "D", units::mm, limits::bore_mm, "inside diameter of the pipe or casing");
}
constexpr auto wall()
{
    return input("wall", "w", units::mm, between(0.01, 1000), "wall thickness; a thick one is the safe side");
}
constexpr auto modulus()
{
    return input("modulus", "E", units::GPa, between(1e-4, 1000), "elastic modulus of the wall: steel 200", 200);
}
constexpr auto poisson()
{
    return input("poisson", "mu", units::number, between(0, 0.5), "Poisson's ratio of the wall", 0.3);
}

inline constexpr const char* source =
    "API 521 5th edition 2007, 5.14 (its variables read, the formula from memory: it is the thin cylinder with closed "
    "ends); simplified form with "
    "D/(E w) and its example: an engineers' forum, 2007 (derivation read whole)";
inline constexpr const char* thin = "the wall must be at most a quarter of the diameter: the formula is for thin walls";

inline bool is_thin(Length wall, Length diameter) { return 4.0 * wall <= diameter; }

/// Relative volume of water at the hot end over the cold end, less that of the space: rises steadily with falling
/// pressure.
struct Mismatch {
    double cold_volume;  // m3/kg
    double cold_pascal;
    Temperature hot;
    double grown;       // space's growth by temperature alone
    double per_pascal;  // its growth by pressure
    double operator()(double pascal) const
    {
        const AbsolutePressure p = AbsolutePressure::at(PressureDifference::from_value(pascal));
        const double volume = 1 / water::Liquid(hot, p).density().value();
        return volume / cold_volume - grown * (1 + (pascal - cold_pascal) * per_pascal);
    }
};

}  // namespace trapped

inline PressureDifference trapped_liquid_pressure_rise(TemperatureDifference warming, ThermalExpansion liquid,
                                                       Compressibility compressibility, Length diameter, Length wall,
                                                       ThermalExpansion metal, Stress modulus, Ratio poisson,
                                                       Steps steps)
{
    const Compressibility space = trapped::stretch(diameter, wall, modulus, poisson);
    steps("X", "(D/(2 E w))(2.5 - 2 mu)", space, units::per_GPa);
    return (liquid - 3.0 * metal) * warming / (compressibility + space);
}

inline constexpr auto trapped_liquid_pressure_rise_record = record<&trapped_liquid_pressure_rise>(
    {.name = "trapped_liquid_pressure_rise",
     .meaning = "Pressure rise of a liquid that warms in a closed space full of it",
     .also = "thermal expansion|blocked-in liquid|blocked in|thermal relief|liquid lock|hydraulic expansion|solar "
             "heating of a shut-in line",
     .inputs = {input("warming", "dT", units::kelvin_difference, above_up_to(0, 100),
                      "temperature rise of liquid and wall"),
                input("liquid_expansion", "alpha_v", units::um_per_K, above_up_to(0, 5000),
                      "volume expansion of the liquid, mean over the rise: water at 20 degC 207, at 100 degC 750"),
                input("compressibility", "kappa", units::per_GPa, above_up_to(0, 10),
                      "isothermal compressibility of the liquid: water 0.45, light hydrocarbons 1 to 2"),
                trapped::diameter(), trapped::wall(), trapped::wall_expansion(), trapped::modulus(),
                trapped::poisson()},
     .results = {output("pressure_rise", "dp", units::bar,
                        "pressure rise; negative: the space grows faster than the liquid")},
     .equation = "dp = (alpha_v - 3 alpha_w) dT/(kappa + X), X = (D/(2 E w))(2.5 - 2 mu)",
     .source = trapped::source,
     .cautions = {trapped::no_gas, trapped::relieve,
                  "Both coefficients change with temperature: take small rises, or for water trapped_water_pressure.",
                  caution::hot_or_toxic, caution::pressure_containment},
     .sound_anywhere = true,
     .example = {"10, 210, 0.4, 100, 1", "19.886", "hand calculation: 174e-6 x 10/(0.4e-9 + 0.475e-9)"}},
    relation<"wall", "diameter">([](Length wall, Length diameter) { return trapped::is_thin(wall, diameter); },
                                 trapped::thin));

inline Outcome<std::tuple<AbsolutePressure, PressureDifference>> trapped_water_pressure(
    Temperature cold, AbsolutePressure start, Temperature hot, Length diameter, Length wall, ThermalExpansion metal,
    Stress modulus, Ratio poisson)
{
    using Result = std::tuple<AbsolutePressure, PressureDifference>;
    if (water::boils(cold, start))
        return NoValue{CUTWATER_NO_ANSWER,
                       "start_pressure",
                       "at {0} water boils below {1}: the space would not be full of liquid",
                       {number_in(cold, units::degC), number_in(water::saturation_pressure(cold), units::bara)}};
    const double most = units::bara(1000).above_zero().value();
    const double least = water::saturation_pressure(hot).above_zero().value();
    const double grown_once = 1 + (metal * (hot - cold)).value();
    const trapped::Mismatch mismatch{1 / water::Liquid(cold, start).density().value(), start.above_zero().value(), hot,
                                     grown_once * grown_once * grown_once,
                                     trapped::stretch(diameter, wall, modulus, poisson).value()};
    const double at_least = mismatch(least), at_most = mismatch(most);
    if (at_most > 0)
        return NoValue{CUTWATER_NO_ANSWER,
                       "end_temperature",
                       "the pressure would pass 1000 bar, where the properties of water end, before {0}: the space "
                       "would burst first",
                       {number_in(hot, units::degC)}};
    if (at_least < 0)
        return NoValue{CUTWATER_NO_ANSWER,
                       "end_temperature",
                       "at {0} the space has outgrown the water and vapour fills the rest: the pressure is the vapour "
                       "pressure, {1}",
                       {number_in(hot, units::degC), number_in(water::saturation_pressure(hot), units::bara)}};
    std::uintmax_t rounds = 100;
    const auto [low, high] = boost::math::tools::toms748_solve(mismatch, least, most, at_least, at_most,
                                                               boost::math::tools::eps_tolerance<double>(48), rounds);
    const AbsolutePressure end = AbsolutePressure::at(PressureDifference::from_value((low + high) / 2));
    return Result{end, end - start};
}

inline constexpr auto trapped_water_pressure_record = record<&trapped_water_pressure>(
    {.name = "trapped_water_pressure",
     .meaning = "Pressure of water that warms in a closed space full of it, by the steam tables",
     .also = "thermal expansion of water|blocked-in water|thermal relief|shut-in water|pressure of trapped water",
     .inputs = {input("start_temperature", "T_1", units::degC, between(0, 349), "temperature when the space was shut"),
                input("start_pressure", "p_1", units::bara, above_up_to(0, 1000), "absolute pressure then"),
                input("end_temperature", "T_2", units::degC, between(0, 350), "temperature that it warms to"),
                trapped::diameter(), trapped::wall(), trapped::wall_expansion(), trapped::modulus(),
                trapped::poisson()},
     .results = {output("end_pressure", "p_2", units::bara, "absolute pressure then"),
                 output("pressure_rise", "dp", units::bar,
                        "rise; negative near 0 degC, where water shrinks as it warms")},
     .equation = "v(T_2, p_2)/v(T_1, p_1) = (1 + alpha_w (T_2 - T_1))^3 (1 + X (p_2 - p_1)), X = (D/(2 E w))(2.5 - 2 "
                 "mu), v by IAPWS-IF97 region 1",
     .source = "balance of volumes; v: IAPWS R7-97(2012), clause 5.1; X: API 521 5th edition 2007, 5.14 (its variables "
               "read, the formula from memory)",
     .cautions = {trapped::no_gas, trapped::relieve, caution::pressure_containment},
     .example = {"20, 1.01325, 30, 100, 5", "41.837, 40.824",
                 "independent computation with the open library iapws 1.5.2 and SciPy"}},
    relation<"wall", "diameter">([](Length wall, Length diameter) { return trapped::is_thin(wall, diameter); },
                                 trapped::thin),
    relation<"end_temperature", "start_temperature">([](Temperature end, Temperature start) { return end > start; },
                                                     "it must lie above the start temperature"));

}  // namespace cutwater::formulas

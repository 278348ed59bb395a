// The liquid that carries off the heat of a sealed drive: how warm it gets, whether it boils, and what happens when it
// stops.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "catalogue/once_for_rows.hpp"
#include "formulas/vapour_curve.hpp"
#include "formulas/limits.hpp"
#include "formulas/pairs.hpp"
#include "formulas/sealed_drives/coupling.hpp"
#include "formulas/surfaces/explosive_atmosphere.hpp"

#include <numbers>
#include <tuple>

namespace cutwater::formulas {

enum class ShellMargin { kept, lost };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::ShellMargin>{"kept", "lost"};

namespace cutwater::formulas {

namespace sealed {

constexpr auto heat()
{
    return input("heat", "P", units::watt, from(0),
                 "shell loss, friction of liquid and plain bearings; for a canned motor its losses");
}
constexpr auto flow() { return input("flow", "q", units::lmin, above(0), "liquid recirculated through the drive"); }
constexpr auto density() { return input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"); }
constexpr auto specific_heat()
{
    return input("specific_heat", "c_p", units::kJkgK, between(0.1, 20),
                 "specific heat of the liquid: water 4.18, oils about 2, light hydrocarbons 2.2");
}

inline TemperatureDifference rise(Power heat, Flow flow, Density density, SpecificHeat specific_heat)
{
    return heat / (flow * density * specific_heat);
}

inline constexpr const char* no_monitor =
    "Monitor it: shell temperature, power or flow. Dry running, a shut suction or a blocked path destroys plain "
    "bearings and shell within a minute.";

}  // namespace sealed

inline TemperatureDifference recirculation_temperature_rise(Power heat, Flow flow, Density density,
                                                            SpecificHeat specific_heat)
{
    return sealed::rise(heat, flow, density, specific_heat);
}

inline constexpr Record<&recirculation_temperature_rise> recirculation_temperature_rise_record{
    .name = "recirculation_temperature_rise",
    .meaning = "Warming of the liquid that cools the shell, bearings or canned motor of a sealed drive",
    .also =
        "internal flush|shell cooling|canned motor cooling|mag drive cooling|circulation flow|temperature rise in the "
        "can",
    .inputs = {sealed::heat(), sealed::flow(), sealed::density(), sealed::specific_heat()},
    .results = {output("rise", "dT", units::kelvin_difference, "mean rise from inlet to outlet of the path")},
    .equation = "dT = P/(q rho c_p)",
    .source = "balance of heat; common practice",
    .cautions = {"Mean of the stream: at the shell's wall, in eddies and behind the bearings it is warmer.",
                 sealed::no_monitor},
    .sound_anywhere = true,
    .example = {"600, 8, 998, 4.18", "1.0787", "hand calculation: 600/(1.33333e-4 x 998 x 4180)"}};

inline TemperatureDifference shell_temperature_rise(Power heat, Length diameter, Length length, HeatTransfer film)
{
    return heat / (std::numbers::pi * diameter * length * film);
}

inline constexpr Record<&shell_temperature_rise> shell_temperature_rise_record{
    .name = "shell_temperature_rise",
    .meaning = "How much hotter the wall of a shell is than the liquid that cools it",
    .also = "shell wall temperature|can wall temperature|containment shell temperature|film temperature drop",
    .inputs = {sealed::heat(), input("diameter", "D", units::mm, limits::bore_mm, "inside diameter of the shell"),
               input("length", "L", units::mm, above_up_to(0, 2000), "length of the heated zone"),
               input("film_coefficient", "h", units::Wm2K, above_up_to(0, 50000),
                     "from wall to liquid: water in the turning gap 2000 to 10 000, oils 200 to 800 (judgement)")},
    .results = {output("rise", "dT", units::kelvin_difference, "mean rise of the wetted wall above the liquid's mean")},
    .equation = "dT = P/(pi D L h)",
    .source = "definition of the film coefficient; all heat taken to the liquid inside, the safe side for it",
    .cautions = {"The film coefficient is the weak point, and the magnets' pattern makes hot strips. The liquid at the "
                 "wall may boil before its mean does.",
                 sealed::no_monitor},
    .sound_anywhere = true,
    .example = {"402, 98.5, 60, 3000", "7.217", "hand calculation: 402/(pi x 0.0985 x 0.06 x 3000)"}};

namespace sealed {

inline NoValue outside_curve(Temperature outlet, Temperature coldest, Temperature warmest)
{
    return {CUTWATER_OUT_OF_INTERVAL,
            "temperatures",
            "the liquid warms to {0}, outside the vapour-pressure curve, which reaches from {1} to {2}",
            {number_in(outlet, units::degC), number_in(coldest, units::degC), number_in(warmest, units::degC)}};
}

using OverVapour = std::tuple<ShellMargin, PressureDifference, Ratio, Temperature, AbsolutePressure>;
struct OverVapourOn {
    template <class Curve>
    Outcome<OverVapour> operator()(const Curve& curve, Temperature inlet, Power heat, Flow flow, Density density,
                                   SpecificHeat specific_heat, AbsolutePressure lowest, PressureDifference wanted) const
    {
        const Temperature outlet = inlet + rise(heat, flow, density, specific_heat);
        const AbsolutePressure vapour = curve.pressure(outlet);
        const PressureDifference margin = lowest - vapour;
        const bool kept = (margin >= wanted) & (margin > PressureDifference{});
        return {OverVapour(kept ? ShellMargin::kept : ShellMargin::lost, margin,
                           lowest.above_zero() / vapour.above_zero(), outlet, vapour),
                curve.holds(outlet), outside_curve(outlet, curve.coldest(), curve.warmest())};
    }
};
inline constexpr OverVapourOn over_vapour;

}  // namespace sealed

inline Outcome<sealed::OverVapour> shell_vapour_margin(Temperature inlet, Power heat, Flow flow, Density density,
                                                       SpecificHeat specific_heat, AbsolutePressure lowest,
                                                       PressureDifference wanted, Series<Temperature> temperatures,
                                                       Series<AbsolutePressure> vapour_pressures)
{
    return on_vapour_curve(sealed::over_vapour, temperatures, vapour_pressures, inlet, heat, flow, density,
                           specific_heat, lowest, wanted);
}

inline constexpr auto shell_vapour_margin_record = record<&shell_vapour_margin>(
    {.name = "shell_vapour_margin",
     .meaning = "How far the liquid that cools a sealed drive stays from boiling",
     .also = "vapour margin|flashing in the can|boiling in the shell|mag drive vapour pressure|canned motor vapour "
             "margin|recirculation return to suction",
     .inputs = {input("inlet_temperature", "T_1", units::degC, above(-273.15),
                      "temperature of the liquid where it enters the path"),
                sealed::heat(), sealed::flow(), sealed::density(), sealed::specific_heat(),
                input("lowest_pressure", "p", units::bara, limits::surface_bara,
                      "lowest absolute pressure where the liquid is warm: the return's end, near suction pressure when "
                      "it returns to the eye"),
                input("margin_wanted", "dp_w", units::bar, from(0), "margin to be kept above the vapour pressure"),
                series("temperatures", "T_i", units::degC, above(-273.15), "temperatures of the vapour-pressure curve",
                       2, Order::rising),
                series("vapour_pressures", "p_v,i", units::bara, above_up_to(0, 300), "vapour pressures at them", 2,
                       Order::rising)},
     .results = {output_word<ShellMargin>(
                     "verdict", "verdict",
                     "kept: the margin is at least the one wanted and more than none; lost: it is not"),
                 output("margin", "p - p_v", units::bar, "pressure above the vapour pressure; negative: it boils"),
                 output("pressure_ratio", "p/p_v", units::number, "of the absolute pressures"),
                 output("outlet_temperature", "T_2", units::degC, "temperature of the warmed liquid"),
                 output("vapour_pressure", "p_v", units::bara, "vapour pressure there")},
     .equation = "T_2 = T_1 + P/(q rho c_p), margin = p - p_v(T_2), ln p_v linear in 1/T between the points",
     .source = "balance of heat; Clausius-Clapeyron between neighbouring points; common practice",
     .cautions = {"Judged at the stream's mean: the shell's wall is hotter by shell_temperature_rise; add that to the "
                  "inlet temperature for the wall.",
                  "After a stop the heat in magnets and shell goes on into liquid that stands: a hot restart is the "
                  "worst case.",
                  sealed::no_monitor, caution::hot_or_toxic, caution::guide_only},
     .example = {"85, 1500, 3, 968, 4.2, 1.2, 0.35, [80, 90, 100], [0.4741472, 0.7018236, 1.01418]",
                 R"("kept", 0.43254, 1.5636, 92.379, 0.76746)",
                 "hand calculation: 7.379 K warmer, p_v by the points at 90 and 100 degC"}},
    pairs::equal_length<"vapour_pressures", "temperatures">());

inline std::tuple<Time, TemperatureRate> loss_of_flow_time(Power heat, Volume liquid, Density density,
                                                           SpecificHeat specific_heat, Mass metal,
                                                           SpecificHeat metal_specific_heat, Temperature start,
                                                           Temperature limit)
{
    const TemperatureRate rate = heat / (liquid * density * specific_heat + metal * metal_specific_heat);
    return {(limit - start) / rate, rate};
}

inline constexpr auto loss_of_flow_time_record = record<&loss_of_flow_time>(
    {.name = "loss_of_flow_time",
     .meaning = "Time in which a sealed drive reaches a temperature once its cooling liquid stands still",
     .also = "loss of cooling|loss of recirculation|blocked flush|dry shell|shell temperature after decoupling|time to "
             "demagnetise",
     .inputs = {input("heat", "P", units::watt, above(0),
                      "shell loss; after decoupling it stays, since the outer magnets go on turning"),
                input("liquid_volume", "V", units::ml, from(0),
                      "liquid that stands in the shell; 0 when it has run or boiled dry"),
                sealed::density(), sealed::specific_heat(),
                input("metal_mass", "m", units::kg, above(0),
                      "metal that warms with it: the shell alone is the safe side"),
                input("metal_specific_heat", "c_m", units::kJkgK, between(0.1, 2),
                      "specific heat of the metal: austenitic steel 0.50, nickel alloys 0.43, titanium 0.53"),
                input("start_temperature", "T_0", units::degC, between(-273.15, 1000), "temperature at the beginning"),
                input("limit_temperature", "T_1", units::degC, between(-273.15, 1000),
                      "temperature not to be reached: boiling, magnets' limit, class of the surface")},
     .results = {output("time", "t", units::second, "time until then, nothing lost to the air"),
                 output("heating_rate", "dT/dt", units::K_s, "rate of warming")},
     .equation = "dT/dt = P/(V rho c_p + m c_m), t = (T_1 - T_0)/(dT/dt)",
     .source = "balance of heat; common practice",
     .cautions = {sealed::no_monitor, magnetic::irreversible, explosive::upsets, caution::hot_or_toxic},
     .sound_anywhere = true,
     .example = {"402, 150, 998, 4.18, 0.8, 0.5, 60, 100", "102.06, 0.39191", "hand calculation: 402/(625.75 + 400)"}},
    relation<"limit_temperature", "start_temperature">(
        [](Temperature limit, Temperature start) { return limit > start; }, "it must lie above the start temperature"));

}  // namespace cutwater::formulas

namespace cutwater {

template <>
struct OnceForRows<&formulas::shell_vapour_margin> : formulas::WithVapourCurve<formulas::sealed::OverVapourOn> {
    using WithVapourCurve::WithVapourCurve;
};

}  // namespace cutwater

// Heat that hot or traced casings and pipes give to the air, and what a jacket or tracing has to bring.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

#include <cmath>
#include <numbers>
#include <tuple>

namespace cutwater::formulas {

enum class SurfaceShape { horizontal_cylinder, vertical_wall, sphere };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<3> cutwater::words_of<cutwater::formulas::SurfaceShape>{"horizontal cylinder",
                                                                                         "vertical wall", "sphere"};

namespace cutwater::formulas {

namespace heat {

inline constexpr double stefan_boltzmann = 5.670374419e-8;  // W/(m2 K4), CODATA 2018
inline constexpr double gas_constant_of_air = 287.05287;    // J/(kg K), U.S. Standard Atmosphere 1976
inline constexpr double specific_heat_of_air = 3.5 * gas_constant_of_air;

/// Dry air at a film temperature. U.S. Standard Atmosphere 1976, equations 51 and 53.
struct Air {
    double conductivity;  // W/(m K)
    double kinematic;     // m2/s
    double prandtl;
};

inline Air air(double kelvin, double pascal)
{
    const double root = kelvin * std::sqrt(kelvin);
    const double viscosity = 1.458e-6 * root / (kelvin + 110.4);
    const double conductivity = 2.64638e-3 * root / (kelvin + 245.4 * elementary::exp10(-12 / kelvin));
    const double density = pascal / (gas_constant_of_air * kelvin);
    return {conductivity, viscosity / density, viscosity * specific_heat_of_air / conductivity};
}

/// Free convection. Cylinder and wall: Churchill and Chu 1975; sphere: Churchill 1983. What depends on the shape is
/// chosen before the powers, so that a row of an array raises each once.
inline double nusselt(SurfaceShape shape, double rayleigh, double prandtl)
{
    const bool sphere = shape == SurfaceShape::sphere, wall = shape == SurfaceShape::vertical_wall;
    const auto of_shape = [&](double of_sphere, double of_wall, double of_cylinder) {
        return elementary::select(sphere, of_sphere, elementary::select(wall, of_wall, of_cylinder));
    };
    const double a = 1 + elementary::positive_pow(of_shape(0.469, 0.492, 0.559) / prandtl, 9.0 / 16);
    const double a_raised = elementary::positive_pow(a, of_shape(4.0 / 9, 8.0 / 27, 8.0 / 27));
    const double a_16_9 = (a_raised * a_raised) * (a_raised * a_raised);  // of a sphere
    const double rising = elementary::select(sphere, 1 + 7.44e-8 * rayleigh / a_16_9, rayleigh);
    const double raised = elementary::positive_pow(rising, elementary::select(sphere, 1.0 / 12, 1.0 / 6));
    const double root = elementary::select(wall, 0.825, 0.60) + 0.387 * raised / a_raised;
    const double of_sphere = 2 + 0.589 * std::sqrt(std::sqrt(rayleigh)) / a_raised * raised;
    return elementary::select(sphere, of_sphere, root * root);
}

inline constexpr const char* still_air =
    "Still air. Wind, draughts and rain double or treble it; a casing taken as a cylinder or box of equal area: plus "
    "or minus 25 % (judgement).";
inline constexpr const char* burns =
    "Bare metal above about 60 degC burns the hand that touches it: guard or insulate it.";

inline constexpr const char* cladding =
    "Bright cladding gives off about half: take 5 for its temperature, 10 and more for the loss.";

constexpr auto hot(const char* meaning)
{
    return input("hot_temperature", "T_1", units::degC, between(-100, 1000), meaning);
}
constexpr auto ambient()
{
    return input("ambient_temperature", "T_a", units::degC, between(-60, 100),
                 "temperature of the air; the lowest, for tracing and jackets");
}
constexpr auto thickness()
{
    return input("insulation_thickness", "s", units::mm, between(0, 1000), "thickness of the insulation; 0 for bare");
}
constexpr auto conductivity()
{
    return input("conductivity", "k", units::WmK, between(0.01, 10),
                 "conductivity of the insulation at its mean temperature: mineral wool 0.04 to 0.06, wet far more");
}
constexpr auto coefficient()
{
    return input("surface_coefficient", "h", units::Wm2K, above_up_to(0, 1000),
                 "heat given to still air, radiation included; see surface_coefficient", 10);
}

/// Loss of a pipe for each metre of it, and its outside temperature.
inline std::tuple<HeatPerLength, Temperature> along_pipe(Temperature hot, Temperature ambient, Length outside,
                                                         Length insulation, ThermalConductivity conductivity,
                                                         HeatTransfer coefficient)
{
    const Length surface = outside + 2.0 * insulation;
    const double wool = elementary::log((surface / outside).value()) / conductivity.value() / (2 * std::numbers::pi);
    const double film = 1 / (coefficient.value() * std::numbers::pi * surface.value());
    const HeatPerLength loss = HeatPerLength::from_value((hot - ambient).value() / (wool + film));
    return {loss, ambient + TemperatureDifference::from_value(loss.value() * film)};
}

inline std::tuple<Power, Temperature> through_wall(Temperature hot, Temperature ambient, Area area, Length insulation,
                                                   ThermalConductivity conductivity, HeatTransfer coefficient)
{
    const HeatFlux flux = (hot - ambient) / (insulation / conductivity + 1.0 / coefficient);
    return {flux * area, ambient + flux / coefficient};
}

inline constexpr const char* conduction =
    "conduction through a plane or cylindrical layer and a surface film in series; J. P. Holman, Heat Transfer, and "
    "any text on it (from memory)";

}  // namespace heat

inline Outcome<std::tuple<HeatTransfer, HeatTransfer, HeatTransfer>> surface_coefficient(
    Temperature surface, Temperature ambient, Length size, SurfaceShape shape, Fraction emissivity,
    AbsolutePressure pressure, Steps steps)
{
    const double hot = surface.above_zero().value(), cold = ambient.above_zero().value(), film = (hot + cold) / 2,
                 d = size.value();
    const heat::Air air = heat::air(film, pressure.above_zero().value());
    const double rayleigh = 9.80665 / film * std::abs(hot - cold) * (d * d * d) / (air.kinematic * air.kinematic) *
                            air.prandtl;
    if (rayleigh > 1e12)
        return NoValue{CUTWATER_NO_ANSWER,
                       "size",
                       "its Rayleigh number is {0}, above 1e12, where the correlations end: take a smaller piece of "
                       "the surface",
                       {{rayleigh, ""}}};
    const double nusselt = heat::nusselt(shape, rayleigh, air.prandtl);
    steps("Ra", "g |T_s - T_a| L^3 Pr/(T_f nu^2)", Ratio(rayleigh), units::number);
    steps("Nu", "of the shape", Ratio(nusselt), units::number);
    const HeatTransfer convection = HeatTransfer::from_value(nusselt * air.conductivity / d);
    const HeatTransfer radiation = HeatTransfer::from_value(emissivity.value * heat::stefan_boltzmann *
                                                            (hot * hot + cold * cold) * (hot + cold));
    return std::tuple{convection + radiation, convection, radiation};
}

inline constexpr Record<&surface_coefficient> surface_coefficient_record{
    .name = "surface_coefficient",
    .meaning = "Heat that a surface gives to still air, by free convection and radiation",
    .also =
        "heat transfer coefficient|film coefficient|free convection|natural convection|radiation|outside coefficient",
    .inputs = {input("surface_temperature", "T_s", units::degC, between(-60, 400), "temperature of the surface"),
               input("ambient_temperature", "T_a", units::degC, between(-60, 100),
                     "temperature of the air and of what stands around"),
               input("size", "L", units::mm, between(10, 10000),
                     "diameter of the cylinder or sphere, height of the wall"),
               choice<SurfaceShape>("shape", "shape", "what the surface is most like",
                                    SurfaceShape::horizontal_cylinder),
               input("emissivity", "eps", units::fraction, between(0, 1),
                     "paint or rust 0.9, aluminium cladding 0.1 to 0.3, bright steel 0.3", 0.9),
               input("ambient_pressure", "p", units::bara, between(0.5, 1.2), "barometric pressure", 1.01325)},
    .results = {output("surface_coefficient", "h", units::Wm2K, "both together"),
                output("convection", "h_c", units::Wm2K, "by free convection"),
                output("radiation", "h_r", units::Wm2K, "by radiation")},
    .equation = "h = h_c + h_r, h_c = Nu k/L, h_r = eps sigma (T_s^2 + T_a^2)(T_s + T_a); Nu of Ra and Pr: cylinder "
                "(0.60 + 0.387 Ra^(1/6)/[1 + (0.559/Pr)^(9/16)]^(8/27))^2, "
                "wall 0.825 and 0.492 for 0.60 and 0.559, sphere 2 + 0.589 Ra^(1/4)/a^(4/9) (1 + 7.44e-8 "
                "Ra/a^(16/9))^(1/12), a = 1 + (0.469/Pr)^(9/16)",
    .source =
        "S. W. Churchill and H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049 and 1323; S. W. Churchill 1983 "
        "(the three as in the open library ht 1.0.7, read and run); "
        "air: U.S. Standard Atmosphere 1976, equations 51 and 53 (as in python3-fluids 1.0.22)",
    .scatter = {plus_minus("surface_coefficient", 0.25)},
    .cautions = {heat::still_air, heat::burns},
    .example = {"165, 23, 100, \"horizontal cylinder\", 0.85", "17.184, 7.2852, 9.8984",
                "independent computation with the open libraries ht 1.0.7 and fluids 1.0.22"}};

inline Power casing_heat_loss(Temperature surface, Temperature ambient, Area area, HeatTransfer coefficient)
{
    return coefficient * area * (surface - ambient);
}

inline constexpr Record<&casing_heat_loss> casing_heat_loss_record{
    .name = "casing_heat_loss",
    .meaning = "Heat that a bare casing gives to the air",
    .also = "heat loss of casing|heat dissipation|convection loss|bare surface loss",
    .inputs = {input("surface_temperature", "T_s", units::degC, between(-100, 1000), "temperature of the surface"),
               heat::ambient(),
               input("area", "A", units::m2, above_up_to(0, 1000), "surface of the casing, cover and feet"),
               heat::coefficient()},
    .results = {output("heat_loss", "Q", units::kW, "heat lost; negative: heat taken up")},
    .equation = "Q = h A (T_s - T_a)",
    .source = "Newton's law of cooling; common practice",
    .cautions = {heat::still_air, heat::burns},
    .sound_anywhere = true,
    .example = {"120, 20, 0.6, 14", "0.84", "hand calculation: 14 x 0.6 x 100 W"}};

inline std::tuple<Power, Temperature> insulated_casing_heat_loss(Temperature hot, Temperature ambient, Area area,
                                                                 Length thickness, ThermalConductivity conductivity,
                                                                 HeatTransfer coefficient)
{
    return heat::through_wall(hot, ambient, area, thickness, conductivity, coefficient);
}

inline constexpr Record<&insulated_casing_heat_loss> insulated_casing_heat_loss_record{
    .name = "insulated_casing_heat_loss",
    .meaning = "Heat that an insulated casing gives to the air, and how hot the cladding is",
    .also = "insulation|lagging|cladding temperature|heat loss of insulated pump|surface temperature of lagging",
    .inputs = {heat::hot("temperature of the liquid and casing"), heat::ambient(),
               input("area", "A", units::m2, above_up_to(0, 1000), "outside surface of the insulation"),
               heat::thickness(), heat::conductivity(), heat::coefficient()},
    .results = {output("heat_loss", "Q", units::kW, "heat lost; negative: heat taken up"),
                output("surface_temperature", "T_s", units::degC, "temperature of the cladding")},
    .equation = "Q = A (T_1 - T_a)/(s/k + 1/h), T_s = T_a + Q/(h A)",
    .source = heat::conduction,
    .cautions = {"Feet, nozzles, bolts and the bearing bracket are bridges through the insulation: add for them. Never "
                 "insulate bearing housings or what the pump maker leaves bare.",
                 heat::still_air, heat::burns, heat::cladding, "Wet insulation hardly insulates, and hides corrosion."},
    .sound_anywhere = true,
    .example = {"140, 10, 1.2, 50, 0.05, 10", "0.14182, 21.818", "hand calculation: 130/(1 + 0.1) x 1.2 W"}};

inline std::tuple<HeatPerLength, Temperature> pipe_heat_loss(Temperature hot, Temperature ambient, Length outside,
                                                             Length thickness, ThermalConductivity conductivity,
                                                             HeatTransfer coefficient)
{
    return heat::along_pipe(hot, ambient, outside, thickness, conductivity, coefficient);
}

inline constexpr Record<&pipe_heat_loss> pipe_heat_loss_record{
    .name = "pipe_heat_loss",
    .meaning = "Heat that each metre of an insulated or bare pipe gives to the air",
    .also = "pipe insulation|lagging|heat loss per metre|heat loss per foot|traced pipe",
    .inputs = {heat::hot("temperature of the liquid, which the pipe wall shares"), heat::ambient(),
               input("outside_diameter", "D", units::mm, limits::bore_mm, "outside diameter of the pipe"),
               heat::thickness(), heat::conductivity(), heat::coefficient()},
    .results = {output("heat_per_length", "q", units::Wm, "heat lost by each metre"),
                output("surface_temperature", "T_s", units::degC, "temperature of the surface")},
    .equation = "q = (T_1 - T_a)/(ln((D + 2 s)/D)/(2 pi k) + 1/(h pi (D + 2 s))), T_s = T_a + q/(h pi (D + 2 s))",
    .source = heat::conduction,
    .cautions = {"Valves, flanges and supports lose as much as some metres of pipe each: add them.", heat::still_air,
                 heat::burns, heat::cladding, "Wet insulation hardly insulates, and hides corrosion."},
    .sound_anywhere = true,
    .example = {"180, 28, 88.9, 50, 0.0598535265, 22.697193", "73.13, 33.43",
                "open library ht, printed example with the pipe wall's 5.5 mm counted: 73.12 W/m, 33.43 degC"}};

inline std::tuple<Power, Power, Power> heat_tracing_duty(Temperature hot, Temperature ambient, Length outside,
                                                         Length thickness, ThermalConductivity conductivity,
                                                         Length length, Area casing, HeatTransfer coefficient,
                                                         Fraction margin)
{
    const double more = 1 + margin.value;
    const Power line = more *
                       std::get<0>(heat::along_pipe(hot, ambient, outside, thickness, conductivity, coefficient)) *
                       length;
    const Power pump = more *
                       std::get<0>(heat::through_wall(hot, ambient, casing, thickness, conductivity, coefficient));
    return {line + pump, line, pump};
}

inline constexpr auto heat_tracing_duty_record = record<&heat_tracing_duty>(
    {.name = "heat_tracing_duty",
     .meaning = "Heat that tracing must bring to hold insulated lines and a pump at a temperature",
     .also = "heat tracing|trace heating|steam tracing|electric tracing|maintain temperature|winterising",
     .inputs = {heat::hot("temperature to be held"), heat::ambient(),
                input("outside_diameter", "D", units::mm, limits::bore_mm, "outside diameter of the pipe"),
                heat::thickness(), heat::conductivity(),
                input("length", "l", units::metre, from(0),
                      "length of traced pipe, with the lengths that valves and flanges stand for"),
                input("casing_area", "A", units::m2, from(0), "outside surface of the pump's insulation", 0),
                heat::coefficient(),
                input("margin", "m", units::fraction, between(0, 1),
                      "margin for wind, gaps, voltage and ageing: 10 to 30 % is usual", 0.2)},
     .results = {output("duty", "Q", units::kW, "heat for pipe and pump together"),
                 output("pipe_duty", "Q_l", units::kW, "heat for the pipe"),
                 output("casing_duty", "Q_c", units::kW, "heat for the pump")},
     .equation = "Q = (1 + m)(q l + A (T_1 - T_a)/(s/k + 1/h)), q as in pipe_heat_loss",
     .source = "conduction in series as in pipe_heat_loss and insulated_casing_heat_loss; the margin: common practice",
     .cautions = {"It holds a temperature; it does not melt what has set: see jacket_heat_duty for warming up.",
                  "Tracing that stays on against closed valves heats trapped liquid: see trapped_liquid_pressure_rise. "
                  "Electric tracing in explosive atmospheres needs its own certificate.",
                  heat::still_air},
     .example = {"60, -10, 88.9, 50, 0.05, 20, 1, 10, 0.2", "0.73066, 0.65430, 0.07636",
                 "hand calculation: 1.2 (27.2625 x 20 + 63.636) W"}},
    relation<"hot_temperature", "ambient_temperature">(
        [](Temperature hot, Temperature ambient) { return hot > ambient; },
        "it must be above the temperature of the air"));

inline Power jacket_heat_duty(Power loss, HeatCapacity capacity, TemperatureDifference warming, Time time)
{
    return loss + capacity * warming / time;
}

inline constexpr Record<&jacket_heat_duty> jacket_heat_duty_record{
    .name = "jacket_heat_duty",
    .meaning = "Heat that a jacket must bring: what the casing loses, and what warming it up takes",
    .also = "jacketed casing|heating jacket|steam jacket|warm-up|preheating|melting out",
    .inputs = {input("heat_loss", "Q_0", units::kW, from(0), "heat lost when hot, as from insulated_casing_heat_loss"),
               input("heat_capacity", "C", units::kJK, from(0),
                     "liquid and metal, as from pump_heat_capacity; add the heat of melting over the warming, where "
                     "there is one"),
               input("warming", "dT", units::kelvin_difference, from(0),
                     "warming from standstill; 0 for holding alone"),
               input("time", "t", units::hour, above(0), "time allowed for it", 1)},
    .results = {output("duty", "Q", units::kW, "heat at the end of the warming, when the loss is whole")},
    .equation = "Q = Q_0 + C dT/t",
    .source = "balance of heat; common practice",
    .cautions = {"Warm up as slowly as the pump maker and the lining allow; a cast iron or enamelled casing cracks. Do "
                 "not start until what has set has melted everywhere.",
                 "Liquid shut in while it warms bursts the casing: leave a way out, see trapped_liquid_pressure_rise."},
    .sound_anywhere = true,
    .example = {"0.8, 150, 120, 2", "3.3", "hand calculation: 0.8 + 150 x 120/7200"}};

inline Temperature jacket_temperature_needed(Power duty, Temperature product, Area area, HeatTransfer overall)
{
    return product + duty / (area * overall);
}

inline constexpr Record<&jacket_temperature_needed> jacket_temperature_needed_record{
    .name = "jacket_temperature_needed",
    .meaning = "Temperature that the heating medium in a jacket must have",
    .also = "jacket temperature|steam temperature|hot oil temperature|overall coefficient|U A dT",
    .inputs = {input("duty", "Q", units::kW, from(0), "heat to bring, as from jacket_heat_duty"),
               input("product_temperature", "T", units::degC, between(-100, 1000), "temperature of the pumped liquid"),
               input("area", "A", units::m2, above_up_to(0, 1000), "heated surface between jacket and liquid"),
               input("overall_coefficient", "U", units::Wm2K, above_up_to(0, 10000),
                     "overall coefficient: standing viscous liquid 30 to 100, water stirred by the pump 300 to 800 "
                     "(judgement); measure it")},
    .results = {output("jacket_temperature", "T_j", units::degC, "mean temperature of the medium")},
    .equation = "T_j = T + Q/(U A)",
    .source = "definition of the overall coefficient",
    .cautions = {"The jacket's wall may reach the medium's temperature: check it against the liquid's decomposition, "
                 "the lining and the seal.",
                 "A jacket is a pressure part with its own rating."},
    .sound_anywhere = true,
    .example = {"3.3, 140, 0.5, 150", "184", "hand calculation: 140 + 3300/75"}};

inline MassFlow jacket_steam_flow(Power duty, SpecificEnergy latent) { return duty / latent; }

inline constexpr Record<&jacket_steam_flow> jacket_steam_flow_record{
    .name = "jacket_steam_flow",
    .meaning = "Steam that condenses in a jacket or tracer",
    .also = "steam consumption|condensate|condensing steam|steam load",
    .inputs = {input("duty", "Q", units::kW, from(0), "heat to bring, as from jacket_heat_duty or heat_tracing_duty"),
               input("latent_heat", "r", units::kJkg, between(500, 2600),
                     "heat of condensation: 2202 at 2 bara, 2133 at 4, 2086 at 6, 2014 at 10 (IAPWS-IF97)")},
    .results = {output("steam", "m", units::kgh, "dry saturated steam; wet steam is more")},
    .equation = "m = Q/r",
    .source = "balance of heat; latent heats by IAPWS-IF97 (library iapws 1.5.2, run)",
    .cautions = {"At start-up cold metal takes several times as much for a while."},
    .sound_anywhere = true,
    .example = {"10, 2133.333", "16.875", "hand calculation with IAPWS-IF97's latent heat at 4 bara"}};

}  // namespace cutwater::formulas

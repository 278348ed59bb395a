// Self-priming units, recessed impellers, close-coupled motors.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>

namespace cutwater::formulas {

namespace special {

inline constexpr const char* while_priming =
    "While it primes it moves air only: the discharge must be open to let the air out and hold no column of liquid on "
    "the check valve; the casing must keep its charge; foam and leaks stop it.";

}  // namespace special

inline std::tuple<Length, Length, Length> self_priming_lift(AbsolutePressure surface, AbsolutePressure vapour,
                                                            PressureDifference vacuum, Density density, Length margin)
{
    const auto specific_weight = density * standard_gravity;
    const Length by_vacuum = vacuum / specific_weight, by_vapour = (surface - vapour) / specific_weight;
    return {lesser(by_vacuum, by_vapour) - margin, by_vacuum, by_vapour};
}

inline constexpr auto self_priming_lift_record = record<&self_priming_lift>(
    {.name = "self_priming_lift",
     .meaning = "Greatest height to which a self-priming unit can draw the liquid up",
     .also = "self-priming|suction lift|priming lift|dry suction lift|static lift|attainable vacuum",
     .inputs = {input("surface_pressure", "p_s", units::bara, limits::surface_bara, "absolute pressure on the liquid"),
                input("vapour_pressure", "p_v", units::bara, limits::vapour_bara,
                      "vapour pressure at the liquid's temperature"),
                input("attainable_vacuum", "dp_v", units::bar, between(0, 1.1),
                      "pressure below the surface's that the unit reaches with air, closed suction; from the pump "
                      "maker's test"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
                input("margin", "m", units::metre, from(0), "kept back for leaks, foam and wear", 0.5)},
     .results = {output("lift", "L", units::metre,
                        "greatest height of the highest point of the suction above the liquid; negative: none"),
                 output("lift_by_vacuum", "L_1", units::metre, "what the vacuum could hold"),
                 output("lift_by_vapour", "L_2", units::metre, "where the liquid would boil")},
     .equation = "L = min(dp_v, p_s - p_v)/(rho g) - m",
     .source = "hydrostatics; common practice. No published derating could be read",
     .cautions = {special::while_priming,
                  "Drawing up is not pumping: at the duty the lift must also leave NPSH3 and a margin, see "
                  "greatest_suction_lift. The time it takes: see priming_time.",
                  "A hot or volatile charge reaches less than the cold test: take off its vapour pressure less that of "
                  "the test's liquid.",
                  caution::hot_or_toxic},
     .sound_anywhere = true,
     .example = {"1.013, 0.0234, 0.7, 998.2, 0.5", "6.651, 7.151, 10.109", "hand calculation: 70000/9789.0 - 0.5"}},
    relation<"vapour_pressure", "surface_pressure">(
        [](AbsolutePressure vapour, AbsolutePressure surface) { return vapour <= surface; },
        "the vapour pressure must be at most the surface pressure: the liquid would boil at its surface"));

inline std::tuple<Length, Velocity, Power> impeller_from_coefficients(Flow flow, Head head, RotationalSpeed speed,
                                                                      Ratio head_coefficient, Fraction efficiency,
                                                                      Density density)
{
    const Velocity tip = square_root(standard_gravity * head / head_coefficient);
    return {tip / (std::numbers::pi * speed.revolutions()), tip,
            density * standard_gravity * flow * head / efficiency.value};
}

inline constexpr Record<&impeller_from_coefficients> impeller_from_coefficients_record{
    .name = "impeller_from_coefficients",
    .meaning =
        "Impeller diameter, tip speed and power from a tested head coefficient and efficiency, for builds without a "
        "rule of their own such as recessed impellers",
    .also = "recessed impeller|vortex impeller|torque-flow pump|free-flow impeller|impeller sizing|impeller diameter",
    .inputs = {input("flow", "Q", units::m3h, above(0), "flow"),
               input("head", "H", units::metre, above(0), "head of one stage"),
               input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"),
               input("head_coefficient", "psi", units::number, between(0.05, 1.2),
                     "g H/u2^2 of the same build at the same flow coefficient, from a test"),
               input("efficiency", "eta", units::fraction, above_up_to(0, 1),
                     "efficiency of the same build there, from a test"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid", 998.2)},
    .results = {output("diameter", "D", units::mm, "impeller outside diameter"),
                output("tip_speed", "u_2", units::ms, "its peripheral speed"),
                output("power", "P", units::kW, "pump power input")},
    .equation = "u_2 = sqrt(g H/psi), D = u_2/(pi n), P = rho g Q H/eta",
    .source =
        "definition of the head coefficient as in head_coefficient; no citable correlation for recessed impellers "
        "could be read, so both coefficients are inputs",
    .cautions = {"Coefficients of a build hold for geometrically similar pumps at one flow coefficient alone. Fibres "
                 "and solids change them: rankings in clean water do not carry over.",
                 "Some books define psi with a factor of 2.", caution::guide_only},
    .sound_anywhere = true,
    .example = {"60, 20, 1450, 0.36, 0.48, 1050", "307.44, 23.341, 7.1507", "hand calculation: sqrt(196.133/0.36)"}};

inline std::tuple<Temperature, Power> shaft_end_temperature(Temperature hot, Temperature ambient, Length diameter,
                                                            Length length, ThermalConductivity conductivity,
                                                            HeatTransfer coefficient)
{
    const double d = diameter.value(), k = conductivity.value(), h = coefficient.value();
    const double ml = std::sqrt(4 * h / (k * d)) * length.value();
    const TemperatureDifference excess = hot - ambient;
    const double flow = std::sqrt(h * std::numbers::pi * d * k * (std::numbers::pi / 4 * d * d)) * excess.value() *
                        elementary::tanh(ml);
    return {ambient + excess / elementary::cosh(ml), Power::from_value(flow)};
}

inline constexpr Record<&shaft_end_temperature> shaft_end_temperature_record{
    .name = "shaft_end_temperature",
    .meaning =
        "How hot a shaft still is at its far end, where a close-coupled motor's bearing sits, and the heat that goes "
        "along it",
    .also =
        "close-coupled motor|monobloc|heat soak along the shaft|fin equation|bearing temperature from hot liquid|hot "
        "liquid limit of block pumps",
    .inputs = {input("hot_temperature", "T_0", units::degC, between(-200, 1000),
                     "temperature at the hot end: the liquid at the seal"),
               input("ambient_temperature", "T_a", units::degC, between(-60, 100),
                     "temperature of the air round the shaft"),
               input("diameter", "d", units::mm, between(1, 1000), "diameter of the shaft"),
               input("length", "L", units::mm, above_up_to(0, 10000), "length of shaft in the air between them"),
               input("conductivity", "k", units::WmK, between(0.1, 500),
                     "of the shaft: austenitic and duplex steel 15, 13 % chromium steel 25 to 30, carbon steel 50"),
               input("surface_coefficient", "h", units::Wm2K, above_up_to(0, 1000),
                     "heat given to the air: a turning shaft 20 to 60 (judgement), a standing one 10", 10)},
    .results = {output("end_temperature", "T_L", units::degC,
                       "temperature of the far end, which gives off no heat itself: the safe side"),
                output("heat", "Q", units::watt, "heat that leaves the hot end along the shaft")},
    .equation =
        "T_L = T_a + (T_0 - T_a)/cosh(m L), Q = sqrt(h pi d k pi d^2/4)(T_0 - T_a) tanh(m L), m = sqrt(4 h/(k d))",
    .source =
        "rod with an insulated end: F. P. Incropera and D. P. DeWitt, Fundamentals of Heat and Mass Transfer, table "
        "3.4 case B (from memory of it); a textbook example of it "
        "in an open Python companion read whole",
    .cautions = {"The adapter carries heat too, often more than the shaft, and seal and bearing make their own: the "
                 "motor maker's limits of ambient and bearing temperature stand.",
                 "Close-coupled motors take the pump's thrust and radial load on their own bearings.",
                 caution::guide_only},
    .example = {"180, 40, 35, 120, 15, 20", "100.53, 22.489", "hand calculation: m L = 1.4813"}};

}  // namespace cutwater::formulas

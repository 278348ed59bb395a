// Pressure surge (water hammer).
#pragma once

#include "formulas/system/pipe.hpp"

namespace cutwater::formulas {

namespace surge {

inline constexpr const char* bound =
    "An upper bound for one change in a plain line, made faster than the pressure wave's return. Column separation, branches and "
    "check-valve slam can give more: have the line analysed where people or plant depend on it.";

}  // namespace surge

inline PressureDifference pressure_surge(Velocity velocity_change, Velocity wave_speed, Density density)
{
    return density * wave_speed * velocity_change;
}

inline constexpr Record<&pressure_surge> pressure_surge_record{
    .name = "pressure_surge",
    .meaning = "Pressure rise when a flow is stopped faster than the pressure wave returns",
    .also = "water hammer|hammer|Joukowsky|sudden valve closure|surge",
    .inputs = {input("velocity_change", "dv", units::ms, any, "velocity taken away; negative for a flow that is started"),
               input("wave_speed", "a", units::ms, between(10, 5000), "speed of the pressure wave, from pressure_wave_speed"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid")},
    .results = {output("pressure_rise", "dp", units::bar, "pressure rise; negative: a fall")},
    .equation = "dp = rho a dv",
    .source = "N. Joukowsky (1898); Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it)",
    .cautions = {surge::bound, caution::pressure_containment},
    .example = {"1.5, 1250, 998.2", "18.71625", "hand calculation: 998.2 x 1250 x 1.5 Pa"}};

inline Velocity pressure_wave_speed(Stress bulk_modulus, Stress pipe_modulus, Length bore, Length wall, Density density, Ratio restraint,
                                    Steps steps)
{
    const Velocity unconfined = square_root(bulk_modulus / density);
    const Ratio pipe_share = restraint * (bulk_modulus / pipe_modulus) * (bore / wall);
    steps("sqrt(K/rho)", "wave speed in a rigid pipe", unconfined, units::ms);
    steps("c K d/(E e)", "share of the pipe's own stretch", pipe_share, units::number);
    return unconfined / square_root(Ratio(1.0) + pipe_share);
}

inline constexpr auto pressure_wave_speed_record = record<&pressure_wave_speed>({
    .name = "pressure_wave_speed",
    .meaning = "Speed of a pressure wave in a thin-walled pipe full of liquid",
    .also = "water hammer|celerity|wave speed|Korteweg",
    .inputs = {input("bulk_modulus", "K", units::GPa, above_up_to(0, 50), "bulk modulus of the liquid; water at 20 degC 2.19"),
               input("pipe_modulus", "E", units::GPa, above_up_to(0, 1000), "elastic modulus of the pipe: steel 207, cast iron 100, PVC 2.8"),
               input("bore", "d", units::mm, limits::bore_mm, "inside diameter of the pipe"),
               input("wall", "e", units::mm, above(0), "wall thickness of the pipe"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid", 998.2),
               input("restraint", "c", units::number, between(0.5, 1.25),
                     "axial restraint: 1 expansion joints, 1 - mu^2 anchored throughout, 1.25 - mu anchored upstream only", 1)},
    .results = {output("wave_speed", "a", units::ms, "speed of the pressure wave")},
    .equation = "a = sqrt(K/rho)/sqrt(1 + c K d/(E e))",
    .source = "D. J. Korteweg (1878); restraint after Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it)",
    .cautions = {"A little free gas in the liquid lowers the wave speed greatly.",
                 "The formula is for thin walls: above about a tenth of the bore the result is only near."},
    .example = {"2.19, 207, 200, 6.3, 998.2, 1", "1281.54", "hand calculation"}},
    relation<"wall", "bore">([](Length wall, Length bore) { return 4.0 * wall <= bore; },
        "the wall must be at most a quarter of the bore: the formula is for thin walls"));

inline Time surge_period(Length length, Velocity wave_speed) { return 2.0 * length / wave_speed; }

inline constexpr Record<&surge_period> surge_period_record{
    .name = "surge_period",
    .meaning = "Time of the pressure wave to the end of a line and back: a faster closure counts as sudden",
    .also = "water hammer|critical closure time|pipe period",
    .inputs = {input("length", "L", units::metre, above(0), "length of the line to the next free surface or large vessel"),
               input("wave_speed", "a", units::ms, between(10, 5000), "speed of the pressure wave, from pressure_wave_speed")},
    .results = {output("period", "T", units::second, "return time of the wave")},
    .equation = "T = 2 L/a",
    .source = "Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it)",
    .cautions = {surge::bound},
    .example = {"500, 1250", "0.8", "hand calculation: 1000/1250"}};

}  // namespace cutwater::formulas

// Pressure surge (water hammer).
#pragma once

#include "formulas/system/pipe.hpp"

#include <tuple>

namespace cutwater::formulas {

enum class Anchorage { expansion_joints, one_end, throughout, expansion_joints_asce, one_end_asce };
enum class Closure { sudden, slow };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<5> words_of<formulas::Anchorage>{"expansion joints", "one end", "throughout",
                                                        "expansion joints ASCE", "one end ASCE"};
template <>
inline constexpr Words<2> words_of<formulas::Closure>{"sudden", "slow"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace surge {

/// a, b, c of a + b mu + c mu^2 for each anchorage in its order; a table, so that rows of an array meet no branch.
inline constexpr double terms[][3] = {{1, 0, 0}, {1, -0.5, 0}, {1, 0, -1}, {1, -0.5, 0}, {1.25, -1, 0}};
static_assert(std::size(terms) == words_of<Anchorage>.size());

/// How much of the hoop's stretch the pipe's anchorage leaves.
inline double restraint(Anchorage anchorage, double mu)
{
    const auto of = static_cast<int>(anchorage);
    return terms[of][0] + mu * (terms[of][1] + terms[of][2] * mu);
}

constexpr auto velocity_change()
{
    return input("velocity_change", "dv", units::ms, any, "velocity taken away; negative for a flow that is started");
}
constexpr auto wave_speed()
{
    return input("wave_speed", "a", units::ms, between(10, 5000),
                 "speed of the pressure wave, from pressure_wave_speed");
}
constexpr auto density() { return input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"); }

inline constexpr const char* bound =
    "An upper bound for one change in a plain line, made faster than the pressure wave's return. Column separation, "
    "branches and "
    "check-valve slam can give more: have the line analysed where people or plant depend on it.";

inline constexpr const char* elsewhere =
    "Column separation, branches and check-valve slam can give more: have the line analysed where people or plant "
    "depend on it.";
inline constexpr const char* packing =
    "In a long line the pressure at the valve goes on rising after the wave has left, as the friction's slope levels "
    "out: see line_packing_surge.";

}  // namespace surge

inline PressureDifference pressure_surge(Velocity velocity_change, Velocity wave_speed, Density density)
{
    return density * wave_speed * velocity_change;
}

inline constexpr Record<&pressure_surge> pressure_surge_record{
    .name = "pressure_surge",
    .meaning = "Pressure rise when a flow is stopped faster than the pressure wave returns",
    .also = "water hammer|hammer|Joukowsky|sudden valve closure|surge|hydraulic shock",
    .inputs = {surge::velocity_change(), surge::wave_speed(), surge::density()},
    .results = {output("pressure_rise", "dp", units::bar, "pressure rise; negative: a fall")},
    .equation = "dp = rho a dv",
    .source = "N. Joukowsky (1898); Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it)",
    .cautions = {surge::bound, surge::packing, caution::pressure_containment},
    .sound_anywhere = true,
    .example = {"1.5, 1250, 998.2", "18.71625", "hand calculation: 998.2 x 1250 x 1.5 Pa"}};

inline Velocity pressure_wave_speed(Stress bulk_modulus, Stress pipe_modulus, Length bore, Length wall, Density density,
                                    Anchorage anchorage, Ratio poisson_ratio, Steps steps)
{
    const Ratio restraint(surge::restraint(anchorage, poisson_ratio.value()));
    const Velocity unconfined = square_root(bulk_modulus / density);
    const Ratio pipe_share = restraint * (bulk_modulus / pipe_modulus) * (bore / wall);
    steps("sqrt(K/rho)", "wave speed in a rigid pipe", unconfined, units::ms);
    steps("c", "factor of the anchorage", restraint, units::number);
    steps("c K d/(E e)", "share of the pipe's own stretch", pipe_share, units::number);
    return unconfined / square_root(Ratio(1.0) + pipe_share);
}

inline constexpr auto pressure_wave_speed_record = record<&pressure_wave_speed>(
    {.name = "pressure_wave_speed",
     .meaning = "Speed of a pressure wave in a thin-walled pipe full of liquid",
     .also = "water hammer|celerity|wave speed|Korteweg|water hammer wave speed",
     .inputs = {input("bulk_modulus", "K", units::GPa, above_up_to(0, 50),
                      "bulk modulus of the liquid; water at 20 degC 2.19"),
                input("pipe_modulus", "E", units::GPa, above_up_to(0, 1000),
                      "elastic modulus of the pipe: steel 207, cast iron 100, PVC 2.8"),
                input("bore", "d", units::mm, limits::bore_mm, "inside diameter of the pipe"),
                input("wall", "e", units::mm, above(0), "wall thickness of the pipe"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
                choice<Anchorage>("anchorage", "anchorage",
                                  "expansion joints, one end or throughout: c = 1, 1 - mu/2, 1 - mu^2 (Wylie and "
                                  "Streeter); expansion joints ASCE, one end ASCE: 1 - mu/2, 1.25 - mu (ASCE 1975, the "
                                  "pipe's change of length counted). The default gives the fastest wave of the first "
                                  "set",
                                  Anchorage::one_end),
                input("poisson_ratio", "mu", units::number, between(0, 0.5),
                      "Poisson's ratio of the pipe: steel 0.3, cast iron 0.25, PVC 0.46", 0.3)},
     .results = {output("wave_speed", "a", units::ms, "speed of the pressure wave")},
     .equation = "a = sqrt(K/rho)/sqrt(1 + c K d/(E e)), c by the anchorage",
     .source = "D. J. Korteweg (1878); factors c = 1, 1 - mu/2, 1 - mu^2: E. B. Wylie and V. L. Streeter, Fluid "
               "Transients in Systems, 1993 (from memory of it; the set read in a multiphysics manual); 1.25 - mu, 1 - "
               "mu/2: ASCE 1975, for pipes with d/e above 40 (as credited in a transients manual, excerpt read)",
     .cautions = {"A little free gas in the liquid lowers the wave speed greatly.",
                  "The formula is for thin walls: above about a tenth of the bore the result is only near."},
     .example = {"2.19, 207, 200, 6.3, 998.2, \"expansion joints\"", "1281.54", "hand calculation"}},
    relation<"wall", "bore">([](Length wall, Length bore) { return 4.0 * wall <= bore; },
                             "the wall must be at most a quarter of the bore: the formula is for thin walls"));

inline Time surge_period(Length length, Velocity wave_speed) { return 2.0 * length / wave_speed; }

inline constexpr Record<&surge_period> surge_period_record{
    .name = "surge_period",
    .meaning = "Time of the pressure wave to the end of a line and back: a faster closure counts as sudden",
    .also = "water hammer|critical closure time|pipe period",
    .inputs = {input("length", "L", units::metre, above(0),
                     "length of the line to the next free surface or large vessel"),
               surge::wave_speed()},
    .results = {output("period", "T", units::second, "return time of the wave")},
    .equation = "T = 2 L/a",
    .source = "Wylie and Streeter, Fluid Transients in Systems, 1993 (from memory of it)",
    .cautions = {surge::bound},
    .sound_anywhere = true,
    .example = {"500, 1250", "0.8", "hand calculation: 1000/1250"}};

inline std::tuple<PressureDifference, Closure> closure_surge(Velocity velocity_change, Velocity wave_speed,
                                                             Density density, Length length, Time closure, Steps steps)
{
    const Time period = surge_period(length, wave_speed);
    const PressureDifference sudden = pressure_surge(velocity_change, wave_speed, density);
    steps("2 L/a", "return time of the wave", period, units::second);
    steps("rho a dv", "rise for a sudden closure", sudden, units::bar);
    if (closure <= period) return {sudden, Closure::sudden};
    return {2.0 * density * length * velocity_change / closure,
            Closure::slow};  // without the wave's speed, which cancels
}

inline constexpr Record<&closure_surge> closure_surge_record{
    .name = "closure_surge",
    .meaning = "Pressure rise when a valve takes a flow away evenly in a given time",
    .also = "slow closure|Michaud|water hammer|valve closing time",
    .inputs = {surge::velocity_change(), surge::wave_speed(), surge::density(),
               input("length", "L", units::metre, above(0),
                     "length of the line to the next free surface or large vessel"),
               input("closure_time", "t_c", units::second, above(0),
                     "time in which the flow falls evenly; not the valve's whole stroke")},
    .results = {output("pressure_rise", "dp", units::bar, "greatest pressure rise at the valve; negative: a fall"),
                output_word<Closure>("closure", "closure",
                                     "sudden when the valve closes before the wave returns, else slow")},
    .equation = "dp = rho a dv for t_c <= 2 L/a; dp = 2 rho L dv/t_c above",
    .source = "N. Joukowsky (1898) and J. Michaud (1878); K. Subramanya, 1000 Solved Problems in Fluid Mechanics, "
              "unsteady flow (its worked examples read)",
    .cautions = {"The rule takes the flow to fall evenly. A valve does most of its work in the last part of its "
                 "stroke: give that part of the time, often a fifth to a third of the stroke.",
                 surge::elsewhere, surge::packing, caution::pressure_containment},
    .example = {"3, 1080.4, 998, 800, 2", "23.952, \"slow\"", "hand calculation: 2 x 998 x 800 x 3/2 Pa"}};

inline std::tuple<PressureDifference, PressureDifference> line_packing_surge(Velocity velocity_change,
                                                                             Velocity wave_speed, Density density,
                                                                             Head friction)
{
    const PressureDifference packing = density * standard_gravity * friction;
    return {pressure_surge(velocity_change, wave_speed, density) + packing, packing};
}

inline constexpr Record<&line_packing_surge> line_packing_surge_record{
    .name = "line_packing_surge",
    .meaning = "Greatest pressure rise at a valve that stops the flow of a long line suddenly, line packing included: "
               "an upper bound",
    .also = "line pack|pipeline packing|water hammer",
    .inputs = {input("velocity", "v", units::ms, from(0), "velocity stopped"), surge::wave_speed(), surge::density(),
               input("friction_head", "h_f", units::metre, from(0),
                     "friction of the line at that velocity, from the reservoir or pump to the valve")},
    .results = {output("pressure_rise", "dp", units::bar,
                       "rise above the pressure at the valve while the liquid flowed, at most"),
                output("packing", "dp_p", units::bar, "of which by packing: the friction's pressure comes back")},
    .equation = "dp <= rho a v + rho g h_f",
    .source = "Joukowsky's rise above the head of the line at rest, which friction can only lower: own bound, tried by "
              "the method of characteristics on lines of 1 to 100 km, which came to 100 to 83 % of it; E. B. Wylie and "
              "V. L. Streeter, Fluid Transients in Systems, 1993, line packing (from memory of it)",
    .cautions = {"A pump that runs on against the closed valve adds its rise towards closed valve.", surge::elsewhere,
                 caution::pressure_containment},
    .example = {"1.5, 1250, 998.2, 80", "26.5474, 7.8312", "hand calculation: 18.71625 + 998.2 x 9.80665 x 80 Pa"}};

}  // namespace cutwater::formulas

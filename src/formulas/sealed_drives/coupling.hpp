// What a magnetic coupling can carry, and what it has to.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <algorithm>
#include <tuple>

namespace cutwater::formulas {

namespace magnetic {

inline constexpr const char* decouples =
    "A coupling that is overloaded slips and does not catch again while it runs: the drive turns, nothing is pumped, "
    "shell and magnets heat within seconds. Stop it.";
inline constexpr const char* irreversible =
    "Above the magnets' limit part of their strength is lost for good, well below the Curie point: the pump maker's "
    "limit of the magnets' temperature stands.";

}  // namespace magnetic

inline std::tuple<Torque, Ratio> magnetic_coupling_torque(Torque cold, Temperature inner, Temperature outer,
                                                          TemperatureCoefficient inner_coefficient,
                                                          TemperatureCoefficient outer_coefficient,
                                                          Temperature reference)
{
    const Ratio of_inner = 1.0 + inner_coefficient.plain() * (inner - reference);
    const Ratio of_outer = 1.0 + outer_coefficient.plain() * (outer - reference);
    return {cold * (of_inner * of_outer), of_inner * of_outer};
}

inline constexpr auto magnetic_coupling_torque_record = record<&magnetic_coupling_torque>(
    {.name = "magnetic_coupling_torque",
     .meaning = "Pull-out torque of a magnetic coupling at the temperature of its magnets",
     .also = "mag drive|magnetic drive|pull-out torque|break-away torque|decoupling torque|slip torque|magnet derating",
     .inputs = {input("cold_torque", "T_0", units::Nm, above(0),
                      "pull-out torque at the reference temperature, from the pump maker"),
                input("inner_temperature", "t_i", units::degC, between(-100, 400),
                      "greatest temperature of the inner magnets, near that of the liquid round them"),
                input("outer_temperature", "t_o", units::degC, between(-100, 400),
                      "greatest temperature of the outer magnets"),
                input("inner_coefficient", "alpha_i", units::percent_per_K, between(-0.5, 0),
                      "of the inner magnets' remanence: Nd-Fe-B -0.10 to -0.13, Sm2Co17 -0.03 to -0.05, SmCo5 -0.043"),
                input("outer_coefficient", "alpha_o", units::percent_per_K, between(-0.5, 0),
                      "the same of the outer magnets"),
                input("reference_temperature", "t_0", units::degC, between(0, 100),
                      "temperature that the torque is stated at", 20)},
     .results = {output("torque", "T", units::Nm, "pull-out torque at those temperatures"),
                 output("share", "T/T_0", units::number, "part of the cold torque that is left")},
     .equation = "T = T_0 (1 + alpha_i (t_i - t_0))(1 + alpha_o (t_o - t_0))",
     .source = "torque of a synchronous coupling goes with the product of both remanences (common practice); "
               "coefficients: IEC TR 62518:2009 as summarised by a digest (excerpt "
               "read), records of the open Modelica Standard Library (read), a laboratory's page for SmCo5 (read)",
     .cautions = {magnetic::irreversible, "Reversible change alone, linear: good to some per cent over 100 K.",
                  magnetic::decouples, caution::guide_only},
     .sound_anywhere = true,
     .example = {"100, 120, 60, -0.12, -0.12", "83.776, 0.83776", "hand calculation: 0.88 x 0.952"}},
    relation<"inner_temperature", "inner_coefficient", "reference_temperature">(
        [](Temperature t, TemperatureCoefficient a, Temperature t0) { return 1.0 + a.plain() * (t - t0) > Ratio(0.3); },
        "with that coefficient less than 30 % of the magnet's strength would be left: a linear change does not reach "
        "so far"),
    relation<"outer_temperature", "outer_coefficient", "reference_temperature">(
        [](Temperature t, TemperatureCoefficient a, Temperature t0) { return 1.0 + a.plain() * (t - t0) > Ratio(0.3); },
        "with that coefficient less than 30 % of the magnet's strength would be left: a linear change does not reach "
        "so far"));

inline Torque magnetic_coupling_start_torque(Torque motor, Torque load, MomentOfInertia motor_inertia,
                                             MomentOfInertia pump_inertia)
{
    return load + (motor - load) * (pump_inertia / (motor_inertia + pump_inertia));
}

inline constexpr auto magnetic_coupling_start_torque_record = record<&magnetic_coupling_start_torque>(
    {.name = "magnetic_coupling_start_torque",
     .meaning = "Torque through a coupling while the motor runs the pump up",
     .also = "starting torque|start-up torque|direct on line start|DOL start|acceleration torque|mag drive start",
     .inputs = {input("motor_torque", "T_M", units::Nm, above(0),
                      "greatest torque of the motor during the start: locked-rotor or breakdown torque"),
                input("load_torque", "T_L", units::Nm, from(0), "torque that the pump asks for at that moment"),
                input("motor_inertia", "J_M", units::kgm2, above(0), "motor and outer magnets"),
                input("pump_inertia", "J_P", units::kgm2, above(0),
                      "inner magnets, shaft, impeller and the liquid in it")},
     .results = {output("torque", "T_C", units::Nm, "torque that the coupling must pass on")},
     .equation = "T_C = T_L + (T_M - T_L) J_P/(J_M + J_P)",
     .source = "Newton's second law for two masses on a stiff shaft; common practice",
     .cautions = {"Mean torque: a start on the mains swings, and the first peaks reach about twice the mean. Starting "
                  "direct on line decouples more drives than running does; use a soft start or a converter.",
                  magnetic::decouples},
     .example = {"120, 10, 0.05, 0.015", "35.385", "hand calculation: 10 + 110 x 0.015/0.065"}},
    relation<"load_torque", "motor_torque">([](Torque load, Torque motor) { return load < motor; },
                                            "it must be less than the motor's: the motor would not start the pump"));

inline std::tuple<Ratio, Torque> magnetic_coupling_margin(Torque available, Power greatest_power, RotationalSpeed speed,
                                                          Torque start)
{
    const Torque running = greatest_power / speed.angular();
    return {available / greater(running, start), running};
}

inline constexpr Record<&magnetic_coupling_margin> magnetic_coupling_margin_record{
    .name = "magnetic_coupling_margin",
    .meaning = "Pull-out torque of a magnetic coupling over the greatest torque it has to carry",
    .also = "mag drive margin|magnetic coupling safety factor|torque margin|service factor of a magnetic "
            "coupling|decoupling margin",
    .inputs = {input("coupling_torque", "T", units::Nm, above(0),
                     "pull-out torque hot, as from magnetic_coupling_torque"),
               input("greatest_power", "P", units::kW, above(0),
                     "greatest shaft power: end of curve, greatest density, cold and viscous start, losses behind the "
                     "coupling"),
               input("speed", "n", units::rpm, limits::speed_rpm, "speed at that power"),
               input("start_torque", "T_C", units::Nm, from(0),
                     "torque during the start, as from magnetic_coupling_start_torque; 0 for none")},
    .results = {output("margin", "T/T_max", units::number,
                       "coupling torque over the greater of running and starting torque; must exceed 1 with a margin"),
                output("running_torque", "T_R", units::Nm, "torque at the greatest power")},
    .equation = "T_R = P/(2 pi n), margin = T/max(T_R, T_C)",
    .source = "mechanics; the margin itself is for user and pump maker to agree",
    .cautions = {magnetic::decouples, magnetic::irreversible, "T_C is a mean: on a direct start double it.",
                 "Solids, crystals, ice and worn plain bearings raise the torque without notice.", caution::guide_only},
    .sound_anywhere = true,
    .example = {"83.776, 15, 2900, 35.385", "1.6961, 49.393", "hand calculation: 15000/303.687"}};

}  // namespace cutwater::formulas

// What the shaft passes on: key, coupling, and the run up to speed.
#pragma once

#include "formulas/pairs.hpp"
#include "formulas/rotor/strength.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace cutwater::formulas {

inline std::tuple<Force, Stress, Stress> key_pressure(Torque torque, Length shaft, Length length, Length width,
                                                      Length bearing_height)
{
    const Force force = Force::from_value(2 * torque.value() / shaft.value());
    return {force, force / (length * width), force / (length * bearing_height)};
}

inline constexpr auto key_pressure_record = record<&key_pressure>(
    {.name = "key_pressure",
     .meaning = "Shear stress and bearing pressure of a parallel key",
     .also = "key shear|key crushing stress|key bearing stress|keyway pressure",
     .inputs = {input("torque", "T", units::Nm, rotor::torque_nm, "torque with its service factor"),
                input("shaft_diameter", "d", units::mm, rotor::size_mm, "diameter of the shaft"),
                input("key_length", "l", units::mm, rotor::size_mm, "bearing length, without the round ends"),
                input("key_width", "b", units::mm, rotor::size_mm, "width of the key"),
                input("bearing_height", "t", units::mm, between(0.5, 500),
                      "height that bears on the weaker side, about half of the key's height")},
     .results = {output("force", "F", units::newton, "force at the shaft's surface"),
                 output("shear_stress", "tau", units::MPa, "shear stress in the key"),
                 output("bearing_pressure", "p", units::MPa, "pressure on the side of key or seat")},
     .equation = "F = 2 T/d; tau = F/(l b); p = F/(l t)",
     .source = "common practice; V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, pp. 342 and 343 (read); "
               "T. H. Wentzell, Machine Design, ex. 15.1, in a published companion (read)",
     .cautions = {"Compare with the weakest of key, shaft and hub. The taper or shrink fit that shares the torque is "
                  "left out, and so is a second key that may carry little.",
                  rotor::notch},
     .sound_anywhere = true,
     .example = {"98.786, 32, 40, 10, 4", "6174.1, 15.435, 38.588", "hand calculation"}},
    relation<"bearing_height", "shaft_diameter">([](Length height, Length shaft) { return height < 0.5 * shaft; },
                                                 "it must be less than the shaft's radius"));

inline Torque coupling_torque(Power power, RotationalSpeed speed, Ratio service_factor)
{
    return Torque::from_value(service_factor.value() * power.value() / speed.angular().value());
}

inline constexpr Record<&coupling_torque> coupling_torque_record{
    .name = "coupling_torque",
    .meaning = "Torque that a coupling must be rated for",
    .also = "coupling rating|coupling selection torque|design torque|nominal coupling torque",
    .inputs =
        {input("power", "P", units::kW, above_up_to(0, 1e6),
               "power passed on: the motor's rating rather than the shaft power at the duty"),
         rotor::speed(),
         input("service_factor", "f", units::number, between(1, 10),
               "service factor for drive and duty; 1.5 at least is asked of process pumps by ISO 13709 (from memory)",
               1.5)},
    .results = {output("torque", "T", units::Nm, "torque that the coupling must carry continuously")},
    .equation = "T = f P/(2 pi n)",
    .source = "common practice; U. C. Jindal, Machine Design, ex. 14-4, in a published companion (read)",
    .cautions = {"Check the motor's peak and start-up torque, bore, speed, misalignment and balance against the "
                 "coupling maker's figures too.",
                 rotor::vibrating},
    .sound_anywhere = true,
    .example = {"30, 2900, 1", "98.786", "hand calculation"}};

inline Torque starting_torque(Torque at_speed, Ratio part, Torque breakaway, Ratio breakaway_end)
{
    const double n = part.value();
    const double square = at_speed.value() * n * n;
    const double sticking = n < breakaway_end.value() ? breakaway.value() * (1 - n / breakaway_end.value()) : 0;
    return Torque::from_value(std::max(square, sticking));
}

inline constexpr Record<&starting_torque> starting_torque_record{
    .name = "starting_torque",
    .meaning = "Torque that the pump takes at a part of its speed during start-up",
    .also = "start-up torque|speed-torque curve|breakaway torque|load torque at starting",
    .inputs =
        {input("torque_at_speed", "T_n", units::Nm, rotor::torque_nm,
               "torque at full speed in the state in which it is started: valve closed, or open against no head"),
         input("speed_ratio", "n/n_n", units::number, between(0, 1), "speed over full speed"),
         input("breakaway_torque", "T_b", units::Nm, rotor::torque_nm,
               "torque that sets the rotor turning, of seals, bearings and packing: 0.10 to 0.25 of rated is usual"),
         input("breakaway_end", "n_b/n_n", units::number, above_up_to(0, 1),
               "speed ratio at which sticking friction has gone", 0.15)},
    .results = {output("torque", "T", units::Nm, "torque that the pump takes")},
    .equation = "T = max[T_n (n/n_n)^2, T_b (1 - n/n_b)]; beyond n_b: T_n (n/n_n)^2",
    .source = "torque with the square of the speed by affinity; breakaway falling straight to nothing: common practice",
    .cautions = {"Axial and mixed-flow pumps take more torque at closed valve than at the duty: start them as their "
                 "maker says.",
                 "A pump that fills a long empty line starts against little head and takes the torque of a high flow.",
                 rotor::vibrating},
    .example = {"100, 0.5, 15", "25", "hand calculation"}};

inline Outcome<Time> run_up_time(Series<RotationalSpeed> speeds, Series<Torque> motor, Torque at_end, Torque breakaway,
                                 MomentOfInertia inertia, Ratio breakaway_end)
{
    // Eight Gauss-Legendre points on each of sixteen parts between two points of the motor's curve.
    static constexpr double points[] = {0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363};
    static constexpr double weights[] = {0.3626837833783620, 0.3137066458778873, 0.2223810344533745,
                                         0.1012285362903763};
    const double full = speeds.back().angular().value();
    double seconds = 0;
    NoValue stuck{};
    bool starts = true;
    const auto at = [&](std::size_t i, double w) {
        const double low = speeds[i].angular().value(), high = speeds[i + 1].angular().value();
        const double of_motor = motor[i].value() + (motor[i + 1].value() - motor[i].value()) * (w - low) / (high - low);
        const double of_pump = starting_torque(at_end, Ratio(w / full), breakaway, breakaway_end).value();
        if (!(of_motor > of_pump) && starts) {
            starts = false;
            stuck = NoValue{CUTWATER_NO_ANSWER,
                            "motor_torques",
                            "at {0} the motor's torque, {1}, does not exceed the pump's, {2}: it will not reach speed",
                            {{w * 60 / (2 * rotor::pi), units::rpm.info->symbol},
                             number_in(Torque::from_value(of_motor), units::Nm),
                             number_in(Torque::from_value(of_pump), units::Nm)}};
        }
        return 1 / (of_motor - of_pump);
    };
    for (std::size_t i = 0; i + 1 < speeds.size() && starts; ++i) {
        const double low = speeds[i].angular().value(), step = (speeds[i + 1].angular().value() - low) / 16;
        at(i, low);  // the ends of a piece are no points of the rule
        for (int part = 0; part < 16; ++part)
            for (int k = 0; k < 4; ++k)
                for (const double side : {-points[k], points[k]})
                    seconds += weights[k] * 0.5 * step * at(i, low + (part + 0.5 + 0.5 * side) * step);
        at(i, speeds[i + 1].angular().value());
    }
    if (!starts) return stuck;
    return Time::from_value(inertia.value() * seconds);
}

inline constexpr auto run_up_time_record = record<&run_up_time>(
    {.name = "run_up_time",
     .meaning = "Time that a motor needs to bring the pump up to speed",
     .also = "acceleration time|starting time|start-up time|run-up",
     .inputs = {series("speeds", "n_i", units::rpm, between(0, 100000),
                       "speeds of the motor's torque curve, from rest to the speed that counts as reached", 2,
                       Order::rising),
                series("motor_torques", "T_i", units::Nm, rotor::torque_nm,
                       "motor torques at these speeds, at the voltage that the start leaves", 2),
                input("pump_torque", "T_n", units::Nm, rotor::torque_nm,
                      "torque of the pump at the last speed, in the state in which it is started"),
                input("breakaway_torque", "T_b", units::Nm, rotor::torque_nm, "torque that sets the rotor turning"),
                input("inertia", "J", units::kgm2, above_up_to(0, 1e6),
                      "moment of inertia of motor, coupling and pump with its liquid, about the shaft"),
                input("breakaway_end", "n_b/n_n", units::number, above_up_to(0, 1),
                      "speed ratio at which sticking friction has gone", 0.15)},
     .results = {output("time", "t", units::second, "time from the first speed to the last")},
     .equation = "t = J Integral domega/(T_motor - T_pump); T_motor straight between points; T_pump = max[T_n "
                 "(n/n_n)^2, T_b (1 - n/n_b)]",
     .source = "moment of momentum; motor curve as IEC 60034-12 gives its least values (from memory of it)",
     .cautions = {"The motor's torque falls with the square of the voltage: a weak supply, a star start or a soft "
                  "starter may leave too little.",
                  "Stop the curve a little short of full load speed: there the torques meet and the time has no end.",
                  "Compare with the motor's permitted starting time, hot and cold, and the number of starts in a row.",
                  rotor::vibrating},
     .example = {"[0, 2900], [100, 100], 50, 0, 0.5", "1.8927",
                 "closed form J omega/(T_m T_n)^0.5 artanh (T_n/T_m)^0.5"}},
    pairs::equal_length<"motor_torques", "speeds">(),
    relation<"speeds">([](Series<RotationalSpeed> speeds) { return speeds[0] == RotationalSpeed{}; },
                       "they must begin at rest, at 0 1/min"));

}  // namespace cutwater::formulas

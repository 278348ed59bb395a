// Starting a pump on its system: the torque on the way up, and the time against any torque.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/curves/duty.hpp"
#include "formulas/curves/inputs.hpp"
#include "formulas/rotor/drive.hpp"
#include "formulas/limits.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace cutwater::formulas {

enum class DischargeValve { closed, open };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::DischargeValve>{"closed", "open"};

namespace cutwater::formulas {

namespace duty {

/// The flow that passes at a part of the speed, as flow of the curve at full speed: 0 while the non-return valve is
/// shut.
inline Outcome<double> similar_flow_at(const curves::Knots<Flow, Head>& pump, double static_head, double resistance,
                                       double speed_ratio)
{
    const double lifted = static_head / (speed_ratio * speed_ratio);
    if (!(lifted < pump.y(0))) return 0.0;
    const curves::Meetings found = curves::meetings(pump, {.base = lifted, .factor = resistance});
    if (found.count == 1) return found.at[0];  // the head falls, and so they meet once or not
    return curves::no_duty(found, pump.first(), pump.last());
}

}  // namespace duty

inline Outcome<std::tuple<Points<Torque>, Points<Flow>>> starting_torque_curve(
    Series<Flow> flows, Series<Head> heads, Series<Power> powers, RotationalSpeed speed, Series<Ratio> speed_ratios,
    Head static_head, SystemResistance resistance, Torque breakaway, DischargeValve valve, Ratio breakaway_end)
{
    const curves::Knots<Flow, Head> pump(flows, heads);
    const curves::Knots<Flow, Power> power(flows, powers);
    std::tuple<Points<Torque>, Points<Flow>> on_the_way;
    for (std::size_t i = 0; i < speed_ratios.size(); ++i) {
        const double n = speed_ratios[i].value();
        double at_full_speed = 0;
        if (valve == DischargeValve::open && n > 0) {
            const auto passing = duty::similar_flow_at(pump, static_head.value(), resistance.value(), n);
            if (!passing) return passing.why();
            at_full_speed = *passing;
        }
        const Torque similar = Torque::from_value(curves::value_at(power, at_full_speed) / speed.angular().value());
        std::get<0>(on_the_way).push_back(starting_torque(similar, speed_ratios[i], breakaway, breakaway_end));
        std::get<1>(on_the_way).push_back(Flow::from_value(at_full_speed * n));
    }
    return on_the_way;
}

inline constexpr auto starting_torque_curve_record = record<&starting_torque_curve>(
    {.name = "starting_torque_curve",
     .meaning =
         "Torque that a pump takes on its way up to speed, its discharge valve closed or open against the static "
         "head",
     .also = "speed-torque curve|torque speed curve|start against open valve|start-up torque|load torque at starting|"
             "starting torque with static head",
     .inputs = {curves::pump_flows(), curves::heads("heads of the pump curve's points, falling"),
                series("powers", "P_i", units::kW, from(0), "power inputs of those points", 2),
                input("speed", "n", units::rpm, limits::speed_rpm, "full speed, at which the curves hold"),
                series("speed_ratios", "r_i", units::number, between(0, 1), "parts of the full speed asked about", 1),
                input("static_head", "H_s", units::metre, limits::head_from_0_m,
                      "head of the system at no flow; it keeps the non-return valve shut at first"),
                curves::resistance(),
                input("breakaway_torque", "T_b", units::Nm, rotor::torque_nm,
                      "torque that sets the rotor turning, of seals, bearings and packing: 0.10 to 0.25 of rated is "
                      "usual"),
                choice<DischargeValve>("discharge_valve", "valve",
                                       "closed: it is opened at full speed; open: the pump delivers as soon as its "
                                       "head exceeds the static head",
                                       DischargeValve::open),
                input("breakaway_end", "n_b/n", units::number, above_up_to(0, 1),
                      "speed ratio at which sticking friction has gone", 0.15)},
     .results = {output_series<Torque>("torques", "T_i", units::Nm, "torques that the pump takes at those speeds"),
                 output_series<Flow>("passing_flows", "Q_i", units::m3h, "flows that pass at those speeds")},
     .equation = "T = max[r^2 P(x)/(2 pi n), T_b (1 - r/r_b)], Q = r x; x = 0 while r^2 H(0) <= H_s or with the valve "
                 "closed, else H(x) = H_s/r^2 + k x^2 on the curves at full speed",
     .source = "affinity laws; that the torque follows the line of no flow until the speed overcomes the static head "
               "and rises to the system's then: an engineers' forum on a handbook's figure (read); breakaway common "
               "practice",
     .cautions = {"The powers must be those of the liquid that is there at the start: they grow with its density, and "
                  "with its viscosity when it is cold.",
                  "Flow is taken as it would be in steady running: the inertia of a long line's liquid keeps it lower "
                  "while the motor runs up, and the torque nearer to that of the closed valve.",
                  "A pump of high specific speed takes more at closed valve than at its duty: start that one against "
                  "an open valve.",
                  "An empty line gives no resistance at first: the flow runs to the end of the curve and beyond.",
                  caution::closed_valve, rotor::vibrating},
     .example = {"[0, 50, 100], [40, 38, 30], [6, 9, 12], 2900, [0, 0.5, 1], 20, 0.001, 8, \"open\"",
                 "[8, 4.9393, 39.5143], [0, 0, 100]",
                 "hand calculation: 0.25 x 6000 W/303.687 1/s; 12000 W/303.687 1/s"}},
    pairs::equal_length<"heads", "flows">(), pairs::equal_length<"powers", "flows">(), curves::falls<"heads">(),
    curves::begins_at_closed_valve<"flows">());

inline Outcome<std::tuple<Time, Torque>> run_up_time_on_torques(Series<RotationalSpeed> speeds, Series<Torque> motor,
                                                                Series<Torque> load, MomentOfInertia inertia)
{
    double seconds = 0;
    double least = motor[0].value() - load[0].value();
    for (std::size_t i = 0; i < speeds.size(); ++i) {
        const double spare = motor[i].value() - load[i].value();
        if (!(spare > 0))
            return NoValue{
                CUTWATER_NO_ANSWER,
                "motor_torques",
                "at {0} the motor's torque, {1}, does not exceed the load's, {2}: it will not reach speed",
                {number_in(speeds[i], units::rpm), number_in(motor[i], units::Nm), number_in(load[i], units::Nm)}};
        if (i > 0) {
            const double before = motor[i - 1].value() - load[i - 1].value();
            const double step = speeds[i].angular().value() - speeds[i - 1].angular().value();
            const double change = spare / before - 1;  // of a straight line: step ln(b/a)/(b - a)
            const double mean = change == 0 ? 1 : elementary::log1p(change) / change;
            seconds += step * mean / before;
        }
        least = std::min(least, spare);
    }
    return std::tuple(Time::from_value(inertia.value() * seconds), Torque::from_value(least));
}

inline constexpr auto run_up_time_on_torques_record = record<&run_up_time_on_torques>(
    {.name = "run_up_time_on_torques",
     .meaning = "Time that a motor needs to bring a pump up to speed, the load's torque given speed by speed",
     .also = "acceleration time|starting time|run-up|start against open valve",
     .inputs = {series("speeds", "n_i", units::rpm, between(0, 100000),
                       "speeds, from rest to the one that counts as reached", 2, Order::rising),
                series("motor_torques", "T_m,i", units::Nm, rotor::torque_nm,
                       "motor torques at these speeds, at the voltage that the start leaves", 2),
                series("load_torques", "T_l,i", units::Nm, rotor::torque_nm,
                       "torques that the pump takes at these speeds: see starting_torque_curve", 2),
                input("inertia", "J", units::kgm2, above_up_to(0, 1e6),
                      "moment of inertia of motor, coupling and pump with its liquid, about the shaft")},
     .results = {output("time", "t", units::second, "time from the first speed to the last"),
                 output("least_spare", "T_m - T_l", units::Nm, "least torque left over for speeding up")},
     .equation = "t = J Integral domega/(T_m - T_l), T_m - T_l straight between the points",
     .source = "moment of momentum",
     .cautions = {"Give points close together where the motor's torque has its saddle and its peak: between points it "
                  "is taken as straight.",
                  "The motor's torque falls with the square of the voltage: a weak supply, a star start or a soft "
                  "starter may leave too little.",
                  "Compare with the motor's permitted starting time, hot and cold, and the number of starts in a row.",
                  rotor::vibrating},
     .example = {"[0, 2900], [100, 100], [50, 50], 0.5", "3.03687, 50", "hand calculation: 0.5 x 303.687/50"}},
    pairs::equal_length<"motor_torques", "speeds">(), pairs::equal_length<"load_torques", "speeds">(),
    relation<"speeds">([](Series<RotationalSpeed> speeds) { return speeds[0] == RotationalSpeed{}; },
                       "they must begin at rest, at 0 1/min"));

}  // namespace cutwater::formulas

// Vibration of pumps by zones, and balance.
#pragma once

#include "formulas/rotor/shared.hpp"

#include <algorithm>
#include <tuple>

namespace cutwater::formulas {

enum class VibrationCategory { one, two };
enum class VibrationZone { a, b, c, d };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::VibrationCategory>{"I", "II"};
template <>
inline constexpr Words<4> words_of<formulas::VibrationZone>{"A", "B", "C", "D"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace rotor {

struct VibrationLimits {
    double a, b, c, alarm, trip;  // mm/s, upper limits of the zones, greatest alarm and trip
};

constexpr VibrationLimits vibration_limits(VibrationCategory category, Power power)
{
    const bool large = power.value() > 200e3;
    if (category == VibrationCategory::one)
        return large ? VibrationLimits{3.5, 5.0, 7.6, 6.3, 9.5} : VibrationLimits{2.5, 4.0, 6.6, 5.0, 8.3};
    return large ? VibrationLimits{4.2, 6.1, 9.5, 7.6, 11.9} : VibrationLimits{3.2, 5.1, 8.5, 6.4, 10.6};
}

constexpr auto vibration_category()
{
    return choice<VibrationCategory>(
        "category", "category",
        "I: high reliability, availability or safety asked for, dangerous liquids; II: general or less critical use");
}
constexpr auto vibration_power()
{
    return input("power", "P", units::kW, above_up_to(1, 1e6), "rated power of the pump");
}
inline constexpr const char* vibration_source =
    "ISO 10816-7:2009, Table 1: limits as quoted from it in Europump, Guidelines on Pump Vibration, 2013, pp. 8 and 9, "
    "by a public audit (excerpts read), and in two public programs; alarm and trip above 200 kW worked out here as "
    "1.25 times the upper limits of zones B and C, which the printed ones fit";
inline constexpr const char* vibration_scope =
    "For the r.m.s. velocity on the bearing housings, 10 to 1000 Hz, at steady running in the allowable range of flow, "
    "from 600 1/min up (from memory of the standard); the stiffness of the support does not enter. Limits of ISO "
    "10816-3 are others.";

}  // namespace rotor

inline std::tuple<VibrationZone, Velocity, Velocity, Velocity> vibration_zone(VibrationCategory category, Power power,
                                                                              Velocity velocity)
{
    const rotor::VibrationLimits limit = rotor::vibration_limits(category, power);
    const auto keeps = [&](double most) {
        return units::mms.in(velocity) <= most * (1 + 1e-12);
    };  // a reading on a limit keeps it
    return {keeps(limit.a)   ? VibrationZone::a
            : keeps(limit.b) ? VibrationZone::b
            : keeps(limit.c) ? VibrationZone::c
                             : VibrationZone::d,
            units::mms(limit.a), units::mms(limit.b), units::mms(limit.c)};
}

inline constexpr Record<&vibration_zone> vibration_zone_record{
    .name = "vibration_zone",
    .meaning = "Zone of a pump's vibration on its bearing housings",
    .also = "vibration severity|vibration assessment|vibration class|RMS velocity",
    .inputs = {rotor::vibration_category(), rotor::vibration_power(),
               input("velocity", "v", units::mms, from_below(0, 1000),
                     "greatest r.m.s. velocity measured on the bearing housings")},
    .results = {output_word<VibrationZone>("zone", "zone",
                                           "A: newly commissioned; B: unrestricted; C: for a limited time only; D: can "
                                           "cause damage; on a limit, the better zone"),
                output("upper_a", "v_A", units::mms, "upper limit of zone A"),
                output("upper_b", "v_B", units::mms, "upper limit of zone B"),
                output("upper_c", "v_C", units::mms, "upper limit of zone C")},
    .equation = "I up to 200 kW: A 2.5, B 4.0, C 6.6; I above: 3.5, 5.0, 7.6; II up to 200 kW: 3.2, 5.1, 8.5; II "
                "above: 4.2, 6.1, 9.5 mm/s",
    .source = rotor::vibration_source,
    .cautions = {rotor::vibration_scope,
                 "A rise from the machine's own baseline tells more than the zone: look into a change of 25 % of the "
                 "upper limit of zone B even within zone B.",
                 rotor::release, rotor::vibrating},
    .example = {"\"I\", 150, 4.01", "\"C\", 2.5, 4.0, 6.6", "by inspection"}};

inline std::tuple<Velocity, Velocity, Velocity> vibration_alarm_trip(VibrationCategory category, Power power,
                                                                     Velocity baseline)
{
    const rotor::VibrationLimits limit = rotor::vibration_limits(category, power);
    const double alarm = std::min(units::mms.in(baseline) + 0.25 * limit.b, limit.alarm);
    return {units::mms(alarm), units::mms(limit.alarm), units::mms(limit.trip)};
}

inline constexpr Record<&vibration_alarm_trip> vibration_alarm_trip_record{
    .name = "vibration_alarm_trip",
    .meaning = "Presets for vibration alarm and trip of a pump from its baseline",
    .also = "vibration alarm|vibration trip|alarm limit|shutdown limit",
    .inputs = {rotor::vibration_category(), rotor::vibration_power(),
               input("baseline", "v_0", units::mms, from_below(0, 1000),
                     "r.m.s. velocity at the same place when in good order")},
    .results = {output("alarm", "v_al", units::mms,
                       "alarm: baseline and a quarter of the upper limit of zone B, at most the greatest alarm"),
                output("greatest_alarm", "v_al,max", units::mms, "greatest alarm"),
                output("greatest_trip", "v_tr,max", units::mms, "greatest trip, one for all machines of a design")},
    .equation = "v_al = min(v_0 + 0.25 v_B, v_al,max); greatest alarm and trip: I up to 200 kW 5.0 and 8.3, above 6.3 "
                "and 9.5; II up to 200 kW 6.4 and 10.6, above 7.6 and 11.9 mm/s",
    .source = rotor::vibration_source,
    .cautions = {rotor::vibration_scope,
                 "A baseline near the greatest alarm shows a machine that needs work, not a preset.", rotor::release,
                 rotor::vibrating},
    .example = {"\"I\", 150, 2", "3, 5, 8.3", "hand calculation"}};

inline Frequency vane_passing_frequency(RotationalSpeed speed, Count vanes)
{
    return vanes.value * speed.revolutions();
}

inline constexpr Record<&vane_passing_frequency> vane_passing_frequency_record{
    .name = "vane_passing_frequency",
    .meaning = "Frequency at which the impeller's vanes pass the cutwater",
    .also = "blade passing frequency|blade pass|BPF|VPF",
    .inputs = {rotor::speed(), input("vanes", "z", units::count, between(1, 50), "vanes of the impeller")},
    .results = {output("frequency", "f", units::hertz, "vane passing frequency; its multiples show too")},
    .equation = "f = z n",
    .source = "common practice",
    .cautions = {"Strong at low flow, with a small gap to the cutwater, or where it meets a natural frequency of "
                 "piping or base; a double volute can double it."},
    .sound_anywhere = true,
    .example = {"2900, 5", "241.67", "hand calculation"}};

namespace rotor {

constexpr auto rotor_mass()
{
    return input("mass", "m", units::kg, above_up_to(0, 1e6), "mass of the rotor or impeller that is balanced");
}
inline constexpr const char* balance_source = "ISO 21940-11:2016 (before: ISO 1940-1), G = e_per omega (from memory); "
                                              "an article on balance standards in a trade journal gives "
                                              "U = 6.015 G W/N oz in (excerpt read)";

}  // namespace rotor

inline std::tuple<Unbalance, Length> permissible_unbalance(Velocity grade, Mass mass, RotationalSpeed speed)
{
    const Length eccentricity = Length::from_value(grade.value() / speed.angular().value());
    return {mass * eccentricity, eccentricity};
}

inline constexpr Record<&permissible_unbalance> permissible_unbalance_record{
    .name = "permissible_unbalance",
    .meaning = "Residual unbalance that a balance quality grade permits",
    .also = "residual unbalance|balance tolerance|G6.3|G2.5|ISO 1940",
    .inputs = {input("grade", "G", units::mms, between(0.1, 4000),
                     "balance quality grade: 6.3 for process pump impellers, 2.5 where ISO 13709 applies"),
               rotor::rotor_mass(), rotor::speed()},
    .results = {output("unbalance", "U_per", units::gmm, "permissible residual unbalance, of all planes together"),
                output("eccentricity", "e_per", units::um,
                       "permissible eccentricity of the mass; in g mm/kg the same number")},
    .equation = "e_per = G/omega; U_per = m e_per",
    .source = rotor::balance_source,
    .cautions = {"Split over two planes by the bearings' shares, not by halves for an overhung impeller; its grade "
                 "does not hold for a rotor that bends in service.",
                 "Balance with the key convention of shaft and hub; a new impeller alone does not balance the rotor."},
    .sound_anywhere = true,
    .example = {"6.3, 10, 2900", "207.45, 20.745", "hand calculation"}};

inline Velocity balance_grade(Unbalance unbalance, Mass mass, RotationalSpeed speed)
{
    return Velocity::from_value(unbalance.value() / mass.value() * speed.angular().value());
}

inline constexpr Record<&balance_grade> balance_grade_record{
    .name = "balance_grade",
    .meaning = "Balance quality grade that a residual unbalance amounts to",
    .also = "balance quality|achieved balance grade|G grade",
    .inputs = {input("unbalance", "U", units::gmm, between(0, 1e9), "residual unbalance"), rotor::rotor_mass(),
               input("speed", "n", units::rpm, limits::speed_rpm, "highest running speed in service")},
    .results = {output(
        "grade", "G", units::mms,
        "the residual unbalance times the angular velocity, over the mass; to compare with the grade asked for")},
    .equation = "G = U omega/m",
    .source = rotor::balance_source,
    .cautions = {"Judge it at the speed of service, not at that of the balancing machine."},
    .sound_anywhere = true,
    .example = {"207.45, 10, 2900", "6.3", "hand calculation"}};

inline Force unbalance_force(Unbalance unbalance, RotationalSpeed speed)
{
    const double w = speed.angular().value();
    return Force::from_value(unbalance.value() * w * w);
}

inline constexpr Record<&unbalance_force> unbalance_force_record{
    .name = "unbalance_force",
    .meaning = "Turning force of an unbalance",
    .also = "centrifugal force of unbalance|rotating force",
    .inputs = {input("unbalance", "U", units::gmm, between(0, 1e9), "unbalance: mass times its radius"),
               rotor::speed()},
    .results = {output("force", "F_u", units::newton, "force, turning with the shaft")},
    .equation = "F_u = U omega^2",
    .source = "centripetal force, common practice",
    .cautions = {"It turns with the shaft and bends it the same way all the time: it loads bearings and base, and "
                 "tires the shaft less than a radial force that stands still.",
                 "Grows with the square of the speed: check at the highest speed of a converter drive."},
    .example = {"207.45, 2900", "19.132", "hand calculation"}};

}  // namespace cutwater::formulas

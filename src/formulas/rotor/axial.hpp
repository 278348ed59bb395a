// The axial forces on a single-stage rotor put together: towards the suction counts as positive.
#pragma once

#include "formulas/rotor/shroud.hpp"

#include <cmath>
#include <tuple>

namespace cutwater::formulas {

enum class ThrustDirection { towards_suction, away_from_suction, either };
enum class PairArrangement { back_to_back, face_to_face };
enum class ThrustRow { nearer, farther, neither };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<3> words_of<formulas::ThrustDirection>{"towards suction", "away from suction", "either"};
template <>
inline constexpr Words<2> words_of<formulas::PairArrangement>{"back to back", "face to face"};
template <>
inline constexpr Words<3> words_of<formulas::ThrustRow>{"nearer the impeller", "farther from the impeller", "neither"};

}  // namespace cutwater

namespace cutwater::formulas {

inline Force inlet_momentum_force(Density density, Flow flow, Length eye, Length hub)
{
    return density * flow * flow / (rotor::circle(eye) - rotor::circle(hub));
}

inline constexpr auto inlet_momentum_force_record = record<&inlet_momentum_force>(
    {.name = "inlet_momentum_force",
     .meaning = "Force away from the suction that turning the flow from axial to radial puts on a radial impeller",
     .also = "momentum thrust|impulse force|change of momentum",
     .inputs = {rotor::density(), input("flow", "Q", units::m3h, from(0), "flow through the eye"),
                input("eye_diameter", "D_1", units::mm, rotor::size_mm, "diameter of the impeller eye"),
                input("hub_diameter", "d_h", units::mm, between(0, 5000),
                      "hub or shaft diameter in the eye; 0 for an open eye", 0)},
     .results = {output("force", "F_m", units::newton, "force away from the suction")},
     .equation = "F_m = rho Q^2/[pi/4 (D_1^2 - d_h^2)]",
     .source = "momentum theorem; V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 353 (read), F = Q^2 "
               "s/(722 A), US gal/min, in2, lbf",
     .cautions = {"For a radial impeller: a mixed-flow impeller turns the flow only in part and its force is less."},
     .example = {"1000, 100, 100", "98.24", "hand calculation"}},
    relation<"hub_diameter", "eye_diameter">([](Length hub, Length eye) { return hub < eye; },
                                             "it must be less than the eye's diameter"));

inline Force shaft_end_force(GaugePressure suction, Length shaft)
{
    return rotor::circle(shaft) * suction.above_zero();
}

inline constexpr Record<&shaft_end_force> shaft_end_force_record{
    .name = "shaft_end_force",
    .meaning = "Force away from the suction that the suction pressure puts on a shaft which leaves the casing on one "
               "side only",
    .also = "suction pressure thrust|shaft end thrust|unbalanced shaft area",
    .inputs = {input("suction_pressure", "p_s", units::barg, limits::gauge_barg, "gauge pressure at the suction"),
               input("shaft_diameter", "d_s", units::mm, rotor::size_mm,
                     "diameter at which the shaft seal parts liquid from air; a mechanical seal's balance diameter")},
    .results = {output("force", "F_s", units::newton, "force away from the suction; negative with a vacuum")},
    .equation = "F_s = p_s pi d_s^2/4",
    .source =
        "pressure times area; V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, ch. 16 (from memory of it)",
    .cautions = {"High suction pressure can turn the thrust of an overhung pump round and is felt before the pump "
                 "turns: tell the pump maker the highest one."},
    .example = {"10, 50", "1963.5", "hand calculation"}};

inline Force vane_side_force(PressureDifference mean, Length outer, Length eye)
{
    return mean * (rotor::circle(outer) - rotor::circle(eye));
}

inline constexpr auto vane_side_force_record = record<&vane_side_force>(
    {.name = "vane_side_force",
     .meaning = "Axial force on the vane side of an open impeller from a mean pressure over the suction pressure",
     .also = "open impeller front force|semi-open impeller thrust",
     .inputs = {input("mean_pressure", "dp_m", units::bar, between(-100, 1000),
                      "mean pressure on the hub disc between the vanes, over the suction pressure"),
                rotor::impeller_diameter(),
                input("eye_diameter", "D_1", units::mm, between(0, 5000),
                      "diameter inside of which the suction pressure acts")},
     .results = {output("force", "F_f", units::newton, "force away from the suction")},
     .equation = "F_f = dp_m pi/4 (D_2^2 - D_1^2)",
     .source = "pressure times area; no relation for the mean pressure could be read, so it is an input: measured, by "
               "computed flow, or from the pump maker",
     .cautions = {"The mean pressure falls as the running clearance in front of the vanes grows, and the thrust "
                  "towards the suction grows with it.",
                  rotor::side_scatter},
     .example = {"1.5, 200, 80", "3958.4", "hand calculation"}},
    relation<"eye_diameter", "impeller_diameter">([](Length eye, Length outer) { return eye <= outer; },
                                                  "it must not exceed the impeller's diameter"));

inline std::tuple<Force, Force, Force, ThrustDirection> axial_thrust(Force back, Force front, Force momentum,
                                                                     Force shaft_end, Force weight, Fraction scatter)
{
    const Force net = back - front - momentum - shaft_end + weight;
    const Force doubt = Force::from_value(scatter.value * (std::abs(back.value()) + std::abs(front.value())));
    const Force least = net - doubt, greatest = net + doubt;
    return {net, least, greatest,
            least > Force{}      ? ThrustDirection::towards_suction
            : greatest < Force{} ? ThrustDirection::away_from_suction
                                 : ThrustDirection::either};
}

inline constexpr Record<&axial_thrust> axial_thrust_record{
    .name = "axial_thrust",
    .meaning = "Axial thrust that is left on a single-stage rotor, how far it may differ, and its direction",
    .also = "net thrust|end thrust|hydraulic thrust|residual axial thrust",
    .inputs = {input("back_force", "F_b", units::newton, rotor::force_n,
                     "force on the back, by back_force_with_ring, back_force_with_vanes or shroud_force"),
               input("front_force", "F_f", units::newton, rotor::force_n,
                     "force on the front, by shroud_force, or vane_side_force for an open impeller"),
               input("momentum_force", "F_m", units::newton, rotor::force_n,
                     "force of the turned flow, by inlet_momentum_force"),
               input("shaft_end_force", "F_s", units::newton, rotor::force_n,
                     "force of the suction pressure on the shaft, by shaft_end_force; 0 where the shaft passes through "
                     "both sides"),
               input("weight", "W", units::newton, rotor::force_n,
                     "part of the rotor's weight that acts along the shaft, towards the suction; 0 when level", 0),
               input("scatter", "u", units::fraction, between(0, 1),
                     "how far each side's force may differ, as a part of it", 0.3)},
    .results = {output("thrust", "F_ax", units::newton, "thrust towards the suction; negative away from it"),
                output("least", "F_ax-", units::newton, "thrust if both sides differ by the scatter one way"),
                output("greatest", "F_ax+", units::newton, "thrust if both sides differ by the scatter the other way"),
                output_word<ThrustDirection>("direction", "direction", "direction over the whole range, or either")},
    .equation = "F_ax = F_b - F_f - F_m - F_s + W; F_ax- and F_ax+: F_ax -+ u (|F_b| + |F_f|)",
    .source = "sum of forces; scatter of 30 % a side: judgement from V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, "
              "2nd edition, p. 343 (read), which calls calculated thrust approximate at best",
    .cautions = {"A small rest of two large forces: size the thrust bearing for the whole range, in both directions "
                 "where the direction is either.",
                 "Forces over the suction pressure on both sides: do not mix with forces from gauge pressures.",
                 rotor::release},
    .example = {"7778.2, 6500, 98.24, 0", "1179.96, -3103.5, 5463.42, \"either\"", "hand calculation"}};

inline ThrustRow thrust_row(Force thrust, PairArrangement arrangement)
{
    if (thrust == Force{}) return ThrustRow::neither;
    const bool towards = thrust > Force{};
    return towards == (arrangement == PairArrangement::back_to_back) ? ThrustRow::farther : ThrustRow::nearer;
}

inline constexpr Record<&thrust_row> thrust_row_record{
    .name = "thrust_row",
    .meaning = "Which row of a fixed pair of angular contact bearings takes the axial thrust of an overhung impeller",
    .also = "thrust bearing row|active bearing|loaded row|which bearing takes the thrust",
    .inputs = {input("thrust", "F_ax", units::newton, rotor::force_n,
                     "axial thrust towards the suction; negative away from it"),
               choice<PairArrangement>(
                   "arrangement", "arrangement",
                   "of the pair, or of the two rows of a double-row bearing, which is mostly back to back")},
    .results = {output_word<ThrustRow>("row", "row",
                                       "the row that carries the thrust; the other one carries at most its preload")},
    .equation = "towards the suction: back to back the row farther from the impeller, face to face the nearer one; "
                "away from it the other row",
    .source =
        "contact lines by the definitions of back-to-back and face-to-face arrangement, ISO 5593 (from memory of it)",
    .cautions = {"The row that is not loaded must still keep enough load to roll: without it balls skid and fail; "
                 "follow the bearing maker on preload."},
    .example = {"1248, \"back to back\"", "\"farther from the impeller\"", "by inspection"}};

}  // namespace cutwater::formulas

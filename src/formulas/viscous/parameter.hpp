// The viscosity parameter B, on which the whole correction hangs: a pump's Reynolds number in the trade's units.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

#include <cmath>

namespace cutwater::formulas {

namespace viscous {

// The correlation is dimensional: m3/h, m of one stage, mm2/s and 1/min.
inline Ratio parameter(KinematicViscosity viscosity, Flow best_flow, Head best_head, RotationalSpeed speed)
{
    const double q = units::m3h.in(best_flow), n = units::rpm.in(speed);
    const double product = q * q * q * (n * n);  // one power, of H/(Q^6 n^4), for three
    return Ratio(16.5 * std::sqrt(units::mm2s.in(viscosity)) *
                 elementary::positive_pow(units::metre.in(best_head) / (product * product), 0.0625));
}

inline Ratio parameter_from_duty(KinematicViscosity viscosity, Flow flow, Head head)
{
    const double q = units::m3h.in(flow);
    return Ratio(2.80 * std::sqrt(units::mm2s.in(viscosity)) *
                 elementary::positive_pow(q * q * units::metre.in(head), -0.125));
}

/// The method was made from pumps with impellers of radial type.
inline bool radial(Flow best_flow, Head best_head, RotationalSpeed speed)
{
    return units::rpm.in(speed)*std::sqrt(units::m3s.in(best_flow)) <= 60 * three_quarter_power(best_head).value();
}

inline constexpr Interval viscosities = between(1, 3000);
inline constexpr Interval flows_m3h = above_up_to(0, 1e7);  // far above any pump; its sixth power still is a number
inline constexpr const char* viscosity_meaning = "kinematic viscosity at pumping temperature; below 1 mm2/s nothing is "
                                                 "to be corrected, above 3000 mm2/s the method does not hold";
inline constexpr const char* best_flow_meaning =
    "flow at best efficiency on water, of the whole pump, at this diameter and speed";
inline constexpr const char* best_head_meaning = "head of one stage at best efficiency on water";
inline constexpr const char* radial_sentence = "the specific speed n Q^0.5/H^0.75 (1/min, m3/s, m a stage) must not "
                                               "exceed 60: the method is for impellers of radial type";
inline constexpr const char* method = "ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory "
                                      "of it, checked against its two worked examples as "
                                      "reproduced in public literature); this edition only";
inline constexpr const char* tested_range =
    "Made from tests on Newtonian liquids with 3 to 260 m3/h and 6 to 130 m a stage at best efficiency: less certain "
    "outside; not for slurries, axial or mixed flow. Later editions of ANSI/HI 9.6.7 are reported to go up to 4000 "
    "mm2/s and a specific speed of 58 (3000 in US units); they were not read.";
inline constexpr const char* metric_constant = "The standard's constants for m3/h and for US gal/min differ by 0.4 %: "
                                               "the metric one is used, whatever unit the input came in.";

}  // namespace viscous

inline Ratio viscosity_parameter(KinematicViscosity viscosity, Flow best_flow, Head best_head, RotationalSpeed speed)
{
    return viscous::parameter(viscosity, best_flow, best_head, speed);
}

inline constexpr auto viscosity_parameter_record = record<&viscosity_parameter>(
    {.name = "viscosity_parameter",
     .meaning = "Parameter B of the viscosity correction, from the pump's best efficiency point on water",
     .also = "viscosity correction|viscous correction|HI 9.6.7|B parameter",
     .inputs = {input("viscosity", "nu", units::mm2s, viscous::viscosities, viscous::viscosity_meaning),
                input("best_efficiency_flow", "Q_BEP", units::m3h, viscous::flows_m3h, viscous::best_flow_meaning),
                input("best_efficiency_head", "H_BEP", units::metre, limits::head_above_0_m,
                      viscous::best_head_meaning),
                input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed")},
     .results = {output("viscosity_parameter", "B", units::number,
                        "up to 1 flow and head stay as on water; from 40 on the method does not hold")},
     .equation = "B = 16.5 nu^0.50 H_BEP^0.0625/(Q_BEP^0.375 n^0.25), in mm2/s, m, m3/h, 1/min",
     .source = viscous::method,
     .cautions = {caution::viscous_method, viscous::tested_range, viscous::metric_constant},
     .sound_anywhere = true,
     .example = {"120, 110, 77, 2950", "5.52", "the standard's first example"}},
    relation<"speed", "best_efficiency_flow", "best_efficiency_head">(
        [](RotationalSpeed n, Flow flow, Head head) { return viscous::radial(flow, head, n); },
        viscous::radial_sentence));

inline Ratio viscosity_parameter_from_duty(Flow flow, Head head, KinematicViscosity viscosity)
{
    return viscous::parameter_from_duty(viscosity, flow, head);
}

inline constexpr Record<&viscosity_parameter_from_duty> viscosity_parameter_from_duty_record{
    .name = "viscosity_parameter_from_duty",
    .meaning = "Parameter B of the viscosity correction, estimated from a duty while no pump is chosen",
    .also = "B parameter from the duty",
    .inputs = {input("flow", "Q_vis", units::m3h, viscous::flows_m3h, "flow wanted of the viscous liquid"),
               input("head", "H_vis", units::metre, limits::head_above_0_m,
                     "head wanted of the viscous liquid, of one stage"),
               input("viscosity", "nu", units::mm2s, viscous::viscosities, viscous::viscosity_meaning)},
    .results = {output("viscosity_parameter", "B", units::number,
                       "estimate; repeat with viscosity_parameter when the pump is known")},
    .equation = "B = 2.80 nu^0.50/(Q_vis^0.25 H_vis^0.125), in mm2/s, m3/h, m",
    .source = viscous::method,
    .cautions = {caution::viscous_method, viscous::tested_range, viscous::metric_constant},
    .example = {"100, 70, 120", "5.70", "the standard's second example"}};

}  // namespace cutwater::formulas

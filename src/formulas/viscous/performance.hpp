// A pump's whole performance on a viscous liquid, and the way back when a pump is to be chosen.
#pragma once

#include "formulas/viscous/ratios.hpp"

namespace cutwater::formulas {

inline std::tuple<Flow, Head, Fraction, Power> viscous_performance(Flow flow, Head head, Fraction efficiency,
                                                                   Flow best_flow, Head best_head,
                                                                   Fraction best_efficiency, RotationalSpeed speed,
                                                                   KinematicViscosity viscosity, Density density,
                                                                   KinematicViscosity water_viscosity, NearOne near,
                                                                   Steps steps)
{
    const double b = viscous::parameter(viscosity, best_flow, best_head, speed).value();
    const double c_q = viscous::flow_ratio(b);
    const double c_h = viscous::head_ratio(b, (flow / best_flow).value());
    const double c_eta = viscous::efficiency_ratio(b, best_efficiency.value, (viscosity / water_viscosity).value(),
                                                   near);
    steps("B", "viscosity parameter", Ratio(b), units::number);
    steps("C_Q", "ratio of flows", Ratio(c_q), units::number);
    steps("C_H", "ratio of heads", Ratio(c_h), units::number);
    steps("C_eta", "ratio of efficiencies", Ratio(c_eta), units::number);
    const Flow thick_flow = c_q * flow;
    const Head thick_head = c_h * head;
    const Fraction thick_efficiency{c_eta * efficiency.value};
    return {thick_flow, thick_head, thick_efficiency,
            Power(density * standard_gravity * thick_flow * thick_head / thick_efficiency.value)};
}

inline constexpr auto viscous_performance_record = record<&viscous_performance>(
    {.name = "viscous_performance",
     .meaning = "Flow, head, efficiency and power on a viscous liquid, from one point of the curve on water",
     .also = "viscosity correction|oil duty|performance on oil|viscous liquid|thick liquid",
     .inputs = {input("flow", "Q_W", units::m3h, viscous::flows_m3h, "flow of the point on water"),
                input("head", "H_W", units::metre, limits::head_above_0_m,
                      "head of the point on water, of the whole pump"),
                input("efficiency", "eta_W", units::fraction, inside(0, 1), "efficiency of the point on water"),
                input("best_efficiency_flow", "Q_BEP", units::m3h, viscous::flows_m3h, viscous::best_flow_meaning),
                input("best_efficiency_head", "H_BEP", units::metre, limits::head_above_0_m,
                      viscous::best_head_meaning),
                input("best_efficiency", "eta_BEP", units::fraction, inside(0, 1), "best efficiency on water"),
                input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"),
                input("viscosity", "nu", units::mm2s, viscous::viscosities, viscous::viscosity_meaning),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the viscous liquid"),
                input("water_viscosity", "nu_W", units::mm2s, between(0.2, 2),
                      "kinematic viscosity of the water that the pump was tested on", 1),
                viscous::near_one()},
     .results = {output("viscous_flow", "Q_vis", units::m3h, "flow of that point on the viscous liquid"),
                 output("viscous_head", "H_vis", units::metre, "head of that point on the viscous liquid"),
                 output("viscous_efficiency", "eta_vis", units::fraction,
                        "efficiency of that point on the viscous liquid"),
                 output("power", "P_vis", units::kW, "pump power input there")},
     .equation = "Q_vis = C_Q Q_W; H_vis = C_H H_W; eta_vis = C_eta eta_W; P_vis = rho g Q_vis H_vis/eta_vis",
     .source = viscous::method,
     .cautions = {caution::viscous_method, viscous::tested_range, viscous::metric_constant, viscous::jump,
                  "Losses of seals, bearings and magnetic couplings rise with viscosity too and are not in it; check "
                  "NPSH on the viscous liquid."},
     .given_once = {"best_efficiency_flow", "best_efficiency_head", "best_efficiency", "speed", "viscosity", "density",
                    "water_viscosity"},
     .sound_within_intervals = true,
     .example = {"110, 77, 0.68, 110, 77, 0.68, 2950, 120, 900", "103.2, 72.2, 0.502, 36.4",
                 "the standard's first example"}},
    relation<"speed", "best_efficiency_flow", "best_efficiency_head">(
        [](RotationalSpeed n, Flow q, Head h) { return viscous::radial(q, h, n); }, viscous::radial_sentence),
    relation<"viscosity", "best_efficiency_flow", "best_efficiency_head", "speed">(
        [](KinematicViscosity nu, Flow q, Head h, RotationalSpeed n) {
            return viscous::parameter(nu, q, h, n).value() < 40;
        },
        "the viscosity parameter B must stay below 40: beyond it the correction is too uncertain"),
    relation<"flow", "best_efficiency_flow">(
        [](Flow flow, Flow best) { return flow <= 1.5 * (1 + 1e-9) * best; },
        "it must not exceed 1.5 times the best efficiency flow: the method is for the normal operating range"),
    relation<"efficiency", "best_efficiency">(
        [](Fraction eta, Fraction best) { return eta.value <= best.value + 1e-9; },
        "it must not exceed the best efficiency"),
    relation<"viscosity", "water_viscosity">(
        [](KinematicViscosity nu, KinematicViscosity water) { return nu >= water; }, viscous::thinner_than_water),
    relation<"best_efficiency", "best_efficiency_flow", "best_efficiency_head", "speed", "viscosity", "water_viscosity",
             "near_one">(
        [](Fraction best, Flow q, Head h, RotationalSpeed n, KinematicViscosity nu, KinematicViscosity water,
           NearOne near) {
            return viscous::leaves_efficiency(viscous::parameter(nu, q, h, n).value(), best.value, (nu / water).value(),
                                              near);
        },
        viscous::nothing_left));

inline std::tuple<Flow, Head> water_equivalent_duty(Flow flow, Head head, KinematicViscosity viscosity, Steps steps)
{
    const double b = viscous::parameter_from_duty(viscosity, flow, head).value();
    const double ratio = viscous::flow_ratio(b);
    steps("B", "viscosity parameter, estimated from the duty", Ratio(b), units::number);
    steps("C_Q = C_H", "ratio of flows and of heads", Ratio(ratio), units::number);
    return {flow / ratio, head / ratio};
}

inline constexpr auto water_equivalent_duty_record = record<&water_equivalent_duty>(
    {.name = "water_equivalent_duty",
     .meaning = "Flow and head on water to choose a pump by, for a duty on a viscous liquid",
     .also = "viscosity correction|water equivalent|select on oil",
     .inputs = {input("flow", "Q_vis", units::m3h, viscous::flows_m3h, "flow wanted of the viscous liquid"),
                input("head", "H_vis", units::metre, limits::head_above_0_m,
                      "head wanted of the viscous liquid, of one stage"),
                input("viscosity", "nu", units::mm2s, viscous::viscosities, viscous::viscosity_meaning)},
     .results = {output("water_flow", "Q_W", units::m3h, "flow to look for on the curve on water"),
                 output("water_head", "H_W", units::metre, "head to look for on the curve on water, of one stage")},
     .equation = "Q_W = Q_vis/C_Q; H_W = H_vis/C_H; C_Q = C_H = 2.71^(-0.165 (log10 B)^3.15), B from "
                 "viscosity_parameter_from_duty",
     .source = viscous::method,
     .cautions = {"A first choice only: check the pump found with viscous_performance at its own best efficiency point "
                  "and speed.",
                  caution::viscous_method, viscous::tested_range, viscous::metric_constant},
     .sound_anywhere = true,
     .example = {"100, 70, 120", "107.1, 74.9", "the standard's second example"}},
    relation<"viscosity", "flow", "head">(
        [](KinematicViscosity nu, Flow flow, Head head) {
            return viscous::parameter_from_duty(nu, flow, head).value() < 40;
        },
        "the viscosity parameter B must stay below 40: beyond it the correction is too uncertain"));

}  // namespace cutwater::formulas

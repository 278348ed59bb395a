// generated from the catalogue by cutwater-generate; do not edit.
// Viscous liquids.
#pragma once

#include <cutwater/families/viscous.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Parameter B of the viscosity correction, from the pump's best efficiency point on water: B = 16.5 nu^0.50 H_BEP^0.0625/(Q_BEP^0.375 n^0.25), in mm2/s, m, m3/h, 1/min. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature); this edition only.
inline Ratio viscosity_parameter(KinematicViscosity viscosity, Flow best_efficiency_flow, Length best_efficiency_head, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double viscosity_parameter_out;
    detail::check(cutwater_viscosity_parameter(detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Flow>("m3/h"), best_efficiency_flow), detail::number_in(unit<Length>("m"), best_efficiency_head), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &viscosity_parameter_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), viscosity_parameter_out);
}

/// Parameter B of the viscosity correction, estimated from a duty while no pump is chosen: B = 2.80 nu^0.50/(Q_vis^0.25 H_vis^0.125), in mm2/s, m3/h, m. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature); this edition only.
inline Ratio viscosity_parameter_from_duty(Flow flow, Length head, KinematicViscosity viscosity)
{
    cutwater_refusal refusal;
    double viscosity_parameter_out;
    detail::check(cutwater_viscosity_parameter_from_duty(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), &viscosity_parameter_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), viscosity_parameter_out);
}

/// Flow of a pump on a viscous liquid over its flow on water: C_Q = 2.71^(-0.165 (log10 B)^3.15) for B > 1; 1 for B <= 1. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature); this edition only.
inline Ratio viscous_flow_ratio(Ratio viscosity_parameter)
{
    cutwater_refusal refusal;
    double flow_ratio_out;
    detail::check(cutwater_viscous_flow_ratio(detail::number_in(unit<Ratio>(""), viscosity_parameter), &flow_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), flow_ratio_out);
}

/// Head of a pump on a viscous liquid over its head on water, at a point of its curve: C_H = 1 - (1 - C_Q)(Q_W/Q_BEP)^0.75 for B > 1; 1 for B <= 1. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature); this edition only.
inline Ratio viscous_head_ratio(Ratio viscosity_parameter, Ratio flow_ratio = unit<Ratio>("")(1))
{
    cutwater_refusal refusal;
    double head_ratio_out;
    detail::check(cutwater_viscous_head_ratio(detail::number_in(unit<Ratio>(""), viscosity_parameter), detail::number_in(unit<Ratio>(""), flow_ratio), &head_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), head_ratio_out);
}

/// Efficiency of a pump on a viscous liquid over its efficiency on water: C_eta = B^(-0.0547 B^0.69) for B > 1; [1 - (1 - eta_BEP)(nu/nu_W)^0.07]/eta_BEP for B <= 1; safe, B > 1: at most that value with nu/B^2, where B would be 1. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it; the branch for B > 1 checked against its worked examples, the branch for B up to 1 not).
inline Ratio viscous_efficiency_ratio(Ratio viscosity_parameter, Fraction best_efficiency, KinematicViscosity viscosity, KinematicViscosity water_viscosity = unit<KinematicViscosity>("mm2/s")(1), const char* near_one = "as printed")
{
    cutwater_refusal refusal;
    double efficiency_ratio_out;
    detail::check(cutwater_viscous_efficiency_ratio(detail::number_in(unit<Ratio>(""), viscosity_parameter), detail::number_in(unit<Fraction>(""), best_efficiency), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<KinematicViscosity>("mm2/s"), water_viscosity), near_one, &efficiency_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), efficiency_ratio_out);
}

struct viscous_performance_results {
    Flow viscous_flow;  // flow of that point on the viscous liquid
    Length viscous_head;  // head of that point on the viscous liquid
    Fraction viscous_efficiency;  // efficiency of that point on the viscous liquid
    Power power;  // pump power input there
};

/// Flow, head, efficiency and power on a viscous liquid, from one point of the curve on water: Q_vis = C_Q Q_W; H_vis = C_H H_W; eta_vis = C_eta eta_W; P_vis = rho g Q_vis H_vis/eta_vis. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature); this edition only.
inline viscous_performance_results viscous_performance(Flow flow, Length head, Fraction efficiency, Flow best_efficiency_flow, Length best_efficiency_head, Fraction best_efficiency, RotationalSpeed speed, KinematicViscosity viscosity, Density density, KinematicViscosity water_viscosity = unit<KinematicViscosity>("mm2/s")(1), const char* near_one = "as printed")
{
    cutwater_refusal refusal;
    double viscous_flow_out;
    double viscous_head_out;
    double viscous_efficiency_out;
    double power_out;
    detail::check(cutwater_viscous_performance(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Fraction>(""), efficiency), detail::number_in(unit<Flow>("m3/h"), best_efficiency_flow), detail::number_in(unit<Length>("m"), best_efficiency_head), detail::number_in(unit<Fraction>(""), best_efficiency), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<KinematicViscosity>("mm2/s"), water_viscosity), near_one, &viscous_flow_out, &viscous_head_out, &viscous_efficiency_out, &power_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), viscous_flow_out), detail::quantity_of(unit<Length>("m"), viscous_head_out), detail::quantity_of(unit<Fraction>(""), viscous_efficiency_out), detail::quantity_of(unit<Power>("kW"), power_out)};
}

struct water_equivalent_duty_results {
    Flow water_flow;  // flow to look for on the curve on water
    Length water_head;  // head to look for on the curve on water, of one stage
};

/// Flow and head on water to choose a pump by, for a duty on a viscous liquid: Q_W = Q_vis/C_Q; H_W = H_vis/C_H; C_Q = C_H = 2.71^(-0.165 (log10 B)^3.15), B from viscosity_parameter_from_duty. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature); this edition only.
inline water_equivalent_duty_results water_equivalent_duty(Flow flow, Length head, KinematicViscosity viscosity)
{
    cutwater_refusal refusal;
    double water_flow_out;
    double water_head_out;
    detail::check(cutwater_water_equivalent_duty(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), &water_flow_out, &water_head_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), water_flow_out), detail::quantity_of(unit<Length>("m"), water_head_out)};
}

}  // namespace cutwater

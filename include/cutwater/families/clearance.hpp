// generated from the catalogue by cutwater-generate; do not edit.
// Running clearance, wear and wall.
#pragma once

#include <cutwater/families/clearance.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Head across a wear ring: what the impeller's rim has, less the fall along the turning shroud: dH = H_p - k^2 (u_2^2 - u_r^2)/(2 g), u = pi n D. Source: A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd ed. 1957, leakage, with k = 1/2: (u_2^2 - u_r^2)/(8 g) (from memory of it).
inline Length ring_head_difference(Length rim_head, RotationalSpeed speed, Length impeller_diameter, Length ring_diameter, Ratio core_rotation = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    double head_difference_out;
    detail::check(cutwater_ring_head_difference(detail::number_in(unit<Length>("m"), rim_head), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("mm"), impeller_diameter), detail::number_in(unit<Length>("mm"), ring_diameter), detail::number_in(unit<Ratio>(""), core_rotation), &head_difference_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), head_difference_out);
}

struct ring_clearance_leakage_results {
    Flow leakage;  // leakage of one ring
    Velocity velocity;  // axial velocity in the gap
    Ratio friction;  // Darcy friction factor as used
};

/// Leakage through the clearance of a plain wear ring: Q_L = pi D s v, v = sqrt(2 g dH/(zeta + lambda L/(2 s))), lambda = 0.316 (2 s v/nu)^-0.25 [1 + (7/8)^2 (u/(2 v))^2]^0.375, u = pi n D. Source: end losses: Pump Handbook, 1976, 2.1 (as quoted by practitioners, excerpt read); friction: Y. Yamada, Bull. JSME 5 (1962) 302-310, in H. F. Black's form (from memory of both); within -2 and +12 % of H. Kanki and T. Kawakami's measurements, 1984 (values read in an open seal code).
inline ring_clearance_leakage_results ring_clearance_leakage(Length head_difference, Length ring_diameter, Length radial_clearance, Length ring_length, RotationalSpeed speed, KinematicViscosity viscosity, Ratio end_loss = unit<Ratio>("")(1.5), Ratio friction_factor = unit<Ratio>("")(0))
{
    cutwater_refusal refusal;
    double leakage_out;
    double velocity_out;
    double friction_out;
    detail::check(cutwater_ring_clearance_leakage(detail::number_in(unit<Length>("m"), head_difference), detail::number_in(unit<Length>("mm"), ring_diameter), detail::number_in(unit<Length>("mm"), radial_clearance), detail::number_in(unit<Length>("mm"), ring_length), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Ratio>(""), end_loss), detail::number_in(unit<Ratio>(""), friction_factor), &leakage_out, &velocity_out, &friction_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), leakage_out), detail::quantity_of(unit<Velocity>("m/s"), velocity_out), detail::quantity_of(unit<Ratio>(""), friction_out)};
}

struct vane_edge_leakage_results {
    Flow leakage;  // flow over all vanes' edges
    Length head_loss;  // head that it costs
    PressureDifference vane_load;  // mean pressure difference across a vane
};

/// Leakage over the vanes of an open impeller, and the head that it costs: dp_v = rho Q (r_2 c_u2)/(Z r_av b_av L), r_2 c_u2 = g H/(eta_h w); U_L = 0.816 sqrt(2 dp_v/rho); Q_L = Z e L U_L; dH = (Q_L/Q) U_L u_2/(2 g). Source: R. H. Aungier, Centrifugal Compressors, ASME Press 2000, clearance leakage, as set in open compressor codes (their source read).
inline vane_edge_leakage_results vane_edge_leakage(Flow flow, Length head, Fraction hydraulic_efficiency, RotationalSpeed speed, Count vanes, Length clearance, Length impeller_diameter, Length mean_diameter, Length mean_width, Length vane_length, Density density)
{
    cutwater_refusal refusal;
    double leakage_out;
    double head_loss_out;
    double vane_load_out;
    detail::check(cutwater_vane_edge_leakage(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Fraction>(""), hydraulic_efficiency), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Count>(""), vanes), detail::number_in(unit<Length>("mm"), clearance), detail::number_in(unit<Length>("mm"), impeller_diameter), detail::number_in(unit<Length>("mm"), mean_diameter), detail::number_in(unit<Length>("mm"), mean_width), detail::number_in(unit<Length>("mm"), vane_length), detail::number_in(unit<Density>("kg/m3"), density), &leakage_out, &head_loss_out, &vane_load_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), leakage_out), detail::quantity_of(unit<Length>("m"), head_loss_out), detail::quantity_of(unit<PressureDifference>("bar"), vane_load_out)};
}

struct vane_clearance_head_loss_results {
    Length head_loss;  // head that the clearance costs
    Fraction part_of_head;  // the same as a part of the head
};

/// Head that the clearance at an open impeller's vanes costs: dH = 0.6 (e/b_2) (c_u2/g) sqrt(2 Q c_u2/(b_2 Z (r_2 - r_1))), c_u2 = g H/(eta_h u_2). Source: W. Jansen 1967, in the set of H. W. Oh, E. S. Yoon and M. K. Chung 1997, as set in open compressor codes (their source read); liquid: equal densities, the inlet area cancelled.
inline vane_clearance_head_loss_results vane_clearance_head_loss(Flow flow, Length head, Fraction hydraulic_efficiency, RotationalSpeed speed, Count vanes, Length clearance, Length impeller_diameter, Length vane_width, Length eye_diameter)
{
    cutwater_refusal refusal;
    double head_loss_out;
    double part_of_head_out;
    detail::check(cutwater_vane_clearance_head_loss(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Fraction>(""), hydraulic_efficiency), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Count>(""), vanes), detail::number_in(unit<Length>("mm"), clearance), detail::number_in(unit<Length>("mm"), impeller_diameter), detail::number_in(unit<Length>("mm"), vane_width), detail::number_in(unit<Length>("mm"), eye_diameter), &head_loss_out, &part_of_head_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("m"), head_loss_out), detail::quantity_of(unit<Fraction>(""), part_of_head_out)};
}

/// Head of an open impeller at a clearance, over that at the reference clearance: H/H_0 = 1 - c_H (e - e_0)/b_2. Source: straight line in e/b_2, its slope from a test of the pump: A. Engeda and M. Rautenberg, ASME J. Turbomachinery 109 (1987) 545, found no slope common to five pumps (abstract read); closing 1.5 to 0.25 mm may gain as much as 10 % of efficiency: Pump Handbook, vane-tip clearance (page read).
inline Fraction clearance_head_ratio(Length clearance, Length reference_clearance, Length vane_width, Ratio head_slope)
{
    cutwater_refusal refusal;
    double head_ratio_out;
    detail::check(cutwater_clearance_head_ratio(detail::number_in(unit<Length>("mm"), clearance), detail::number_in(unit<Length>("mm"), reference_clearance), detail::number_in(unit<Length>("mm"), vane_width), detail::number_in(unit<Ratio>(""), head_slope), &head_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), head_ratio_out);
}

/// Efficiency of an open impeller at a clearance, over that at the reference clearance: eta/eta_0 = 1 - c_eta (e - e_0)/b_2. Source: straight line in e/b_2, its slope from a test of the pump: A. Engeda and M. Rautenberg, ASME J. Turbomachinery 109 (1987) 545, found no slope common to five pumps (abstract read); closing 1.5 to 0.25 mm may gain as much as 10 % of efficiency: Pump Handbook, vane-tip clearance (page read).
inline Fraction clearance_efficiency_ratio(Length clearance, Length reference_clearance, Length vane_width, Ratio efficiency_slope)
{
    cutwater_refusal refusal;
    double efficiency_ratio_out;
    detail::check(cutwater_clearance_efficiency_ratio(detail::number_in(unit<Length>("mm"), clearance), detail::number_in(unit<Length>("mm"), reference_clearance), detail::number_in(unit<Length>("mm"), vane_width), detail::number_in(unit<Ratio>(""), efficiency_slope), &efficiency_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_ratio_out);
}

/// Efficiency with worn rings over that with rings as new, at the same flow delivered: eta/eta_0 = (Q + Q_L0)/(Q + Q_L). Source: volumetric efficiency Q/(Q + Q_L) as a factor of the whole: A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd ed. 1957 (from memory of it); Pump Handbook, 2.1.
inline Fraction leakage_efficiency_ratio(Flow flow, Flow leakage, Flow reference_leakage)
{
    cutwater_refusal refusal;
    double efficiency_ratio_out;
    detail::check(cutwater_leakage_efficiency_ratio(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Flow>("m3/h"), leakage), detail::number_in(unit<Flow>("m3/h"), reference_leakage), &efficiency_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_ratio_out);
}

struct head_with_leakage_results {
    Length head;  // head at that flow now
    Length head_loss;  // less than on the curve
};

/// Head that a pump with worn rings still gives: its impeller passes the flow and the leakage that came on top: H = H_new(Q + dQ_L). Source: leakage shifts the curve towards less flow: A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd ed. 1957 (from memory of it).
inline head_with_leakage_results head_with_leakage(Flow flow, Flow extra_leakage, const std::vector<Flow>& flows, const std::vector<Length>& heads)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double head_out;
    double head_loss_out;
    detail::check(cutwater_head_with_leakage(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Flow>("m3/h"), extra_leakage), flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), &head_out, &head_loss_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("m"), head_out), detail::quantity_of(unit<Length>("m"), head_loss_out)};
}

struct clearance_power_penalty_results {
    Power shaft_power;  // at the shaft
    Power electrical_power;  // from the mains
};

/// Power that a lost efficiency costs at the same duty: dP = (rho g Q H/eta_0)(1/r - 1); dP_el = dP/eta_M. Source: pump efficiency, ISO 17769-1:2012 (from memory of it), before and after.
inline clearance_power_penalty_results clearance_power_penalty(Flow flow, Length head, Density density, Fraction efficiency, Fraction efficiency_ratio, Fraction motor_efficiency)
{
    cutwater_refusal refusal;
    double shaft_power_out;
    double electrical_power_out;
    detail::check(cutwater_clearance_power_penalty(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), efficiency), detail::number_in(unit<Fraction>(""), efficiency_ratio), detail::number_in(unit<Fraction>(""), motor_efficiency), &shaft_power_out, &electrical_power_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), shaft_power_out), detail::quantity_of(unit<Power>("kW"), electrical_power_out)};
}

struct field_head_check_results {
    const char* verdict;  // below the curve, within uncertainty, or above the curve
    Length expected_head;  // head of the curve at that flow, at the curve's speed
    Length head_lost;  // expected less measured, at the curve's speed; negative when above
    Fraction part_lost;  // the same as a part
    Fraction part_uncertain;  // uncertainty of it as a part
};

/// How far a pump on site is from its head curve, and whether that is more than the uncertainty: dH = H_0(Q n_0/n) - H (n_0/n)^2; u^2 = (e_H H (n_0/n)^2)^2 + (e_Q Q (n_0/n) dH_0/dQ)^2 + (tau H_0)^2. Source: affinity laws, and uncertainties combined as ISO 9906 and the GUM have it (from memory of both); the flow's uncertainty counts with the curve's slope.
inline field_head_check_results field_head_check(Flow flow, Length head, RotationalSpeed speed, const std::vector<Flow>& flows, const std::vector<Length>& heads, RotationalSpeed curve_speed, Ratio flow_uncertainty = unit<Ratio>("%")(3), Ratio head_uncertainty = unit<Ratio>("%")(2), Ratio curve_tolerance = unit<Ratio>("%")(3))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    const char* verdict_out;
    double expected_head_out;
    double head_lost_out;
    double part_lost_out;
    double part_uncertain_out;
    detail::check(cutwater_field_head_check(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<RotationalSpeed>("1/min"), speed), flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), curve_speed), detail::number_in(unit<Ratio>("%"), flow_uncertainty), detail::number_in(unit<Ratio>("%"), head_uncertainty), detail::number_in(unit<Ratio>("%"), curve_tolerance), &verdict_out, &expected_head_out, &head_lost_out, &part_lost_out, &part_uncertain_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Length>("m"), expected_head_out), detail::quantity_of(unit<Length>("m"), head_lost_out), detail::quantity_of(unit<Fraction>(""), part_lost_out), detail::quantity_of(unit<Fraction>(""), part_uncertain_out)};
}

struct field_efficiency_check_results {
    const char* verdict;  // below the curve, within uncertainty, or above the curve
    Fraction efficiency;  // of the pump as measured
    Fraction expected_efficiency;  // of the curve at that flow
    Fraction efficiency_ratio;  // measured over expected
    Fraction part_uncertain;  // uncertainty of it as a part
};

/// Efficiency of a pump on site against its curve, and whether it differs by more than the uncertainty: eta = rho g Q H/(P_el eta_M); u^2 = eta^2 (e_Q^2 + e_H^2 + e_P^2) + (tau eta_0)^2. Source: affinity laws, and uncertainties combined as ISO 9906 and the GUM have it (from memory of both); the flow's uncertainty counts with the curve's slope.
inline field_efficiency_check_results field_efficiency_check(Flow flow, Length head, Density density, Power electrical_power, Fraction motor_efficiency, const std::vector<Flow>& flows, const std::vector<Fraction>& efficiencies, Ratio flow_uncertainty = unit<Ratio>("%")(3), Ratio head_uncertainty = unit<Ratio>("%")(2), Ratio power_uncertainty = unit<Ratio>("%")(3), Ratio curve_tolerance = unit<Ratio>("%")(3))
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    const char* verdict_out;
    double efficiency_out;
    double expected_efficiency_out;
    double efficiency_ratio_out;
    double part_uncertain_out;
    detail::check(cutwater_field_efficiency_check(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Power>("kW"), electrical_power), detail::number_in(unit<Fraction>(""), motor_efficiency), flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Ratio>("%"), flow_uncertainty), detail::number_in(unit<Ratio>("%"), head_uncertainty), detail::number_in(unit<Ratio>("%"), power_uncertainty), detail::number_in(unit<Ratio>("%"), curve_tolerance), &verdict_out, &efficiency_out, &expected_efficiency_out, &efficiency_ratio_out, &part_uncertain_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Fraction>(""), efficiency_out), detail::quantity_of(unit<Fraction>(""), expected_efficiency_out), detail::quantity_of(unit<Fraction>(""), efficiency_ratio_out), detail::quantity_of(unit<Fraction>(""), part_uncertain_out)};
}

struct clearance_from_head_loss_results {
    Length clearance;  // clearance that explains the loss
    Length low;  // its lower bound, not below 0
    Length high;  // its upper bound
};

/// Clearance of an open impeller that a lost head tells of, with its bounds: e = e_0 + b_2 x/c_H; bounds with x - u and x + u. Source: clearance_head_ratio, solved for the clearance.
inline clearance_from_head_loss_results clearance_from_head_loss(Fraction part_lost, Fraction part_uncertain, Length reference_clearance, Length vane_width, Ratio head_slope)
{
    cutwater_refusal refusal;
    double clearance_out;
    double low_out;
    double high_out;
    detail::check(cutwater_clearance_from_head_loss(detail::number_in(unit<Fraction>(""), part_lost), detail::number_in(unit<Fraction>(""), part_uncertain), detail::number_in(unit<Length>("mm"), reference_clearance), detail::number_in(unit<Length>("mm"), vane_width), detail::number_in(unit<Ratio>(""), head_slope), &clearance_out, &low_out, &high_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("mm"), clearance_out), detail::quantity_of(unit<Length>("mm"), low_out), detail::quantity_of(unit<Length>("mm"), high_out)};
}

struct clearance_adjustment_results {
    const char* direction;  // close, open, or leave as it is
    Length move;  // axial movement, positive when it closes
    Ratio exact_divisions;  // divisions to turn
    Ratio whole_divisions;  // the same, whole, so that no less than the wanted clearance is set
    Length set_clearance;  // clearance after the whole divisions
};

/// Turn of a threaded bearing carrier, or of adjusting nuts, that brings an axial clearance to its setting: x = e - e_w; m = N x/P, m_w = floor(m); e_s = e - m_w P/N. Source: geometry of a thread; H. P. Bloch and F. K. Geitner, Major Process Equipment Maintenance and Repair, p. 93: 12 threads an inch and 12 places, 0.007 in each (page read).
inline clearance_adjustment_results clearance_adjustment(Length clearance, Length wanted_clearance, Length thread_lead, Count divisions = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    const char* direction_out;
    double move_out;
    double exact_divisions_out;
    double whole_divisions_out;
    double set_clearance_out;
    detail::check(cutwater_clearance_adjustment(detail::number_in(unit<Length>("mm"), clearance), detail::number_in(unit<Length>("mm"), wanted_clearance), detail::number_in(unit<Length>("mm"), thread_lead), detail::number_in(unit<Count>(""), divisions), &direction_out, &move_out, &exact_divisions_out, &whole_divisions_out, &set_clearance_out, &refusal), refusal);
    return {direction_out, detail::quantity_of(unit<Length>("mm"), move_out), detail::quantity_of(unit<Ratio>(""), exact_divisions_out), detail::quantity_of(unit<Ratio>(""), whole_divisions_out), detail::quantity_of(unit<Length>("mm"), set_clearance_out)};
}

struct hot_running_clearance_results {
    Length hot_clearance;  // clearance running
    Length change;  // what heat adds; negative when it closes
};

/// Running clearance that is left when rotor and casing have warmed: e_h = e_c + L [a_s (T_s - T_0) - a_r (T_r - T_0)]. Source: linear expansion; mean coefficients from 20 degC: EN 10088-1 as tabled by the British Stainless Steel Association (excerpt read).
inline hot_running_clearance_results hot_running_clearance(Length cold_clearance, Length dimension, ThermalExpansion rotor_expansion, Temperature rotor_temperature, ThermalExpansion casing_expansion, Temperature casing_temperature, Temperature cold_temperature = unit<Temperature>("degC")(20))
{
    cutwater_refusal refusal;
    double hot_clearance_out;
    double change_out;
    detail::check(cutwater_hot_running_clearance(detail::number_in(unit<Length>("mm"), cold_clearance), detail::number_in(unit<Length>("mm"), dimension), detail::number_in(unit<ThermalExpansion>("1e-6/K"), rotor_expansion), detail::number_in(unit<Temperature>("degC"), rotor_temperature), detail::number_in(unit<ThermalExpansion>("1e-6/K"), casing_expansion), detail::number_in(unit<Temperature>("degC"), casing_temperature), detail::number_in(unit<Temperature>("degC"), cold_temperature), &hot_clearance_out, &change_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("mm"), hot_clearance_out), detail::quantity_of(unit<Length>("mm"), change_out)};
}

struct clearance_wear_results {
    Velocity rate;  // growth in a year
    Time time_left;  // time until the limit, at that rate
};

/// Rate at which a clearance grows, and the time until it reaches a limit: r = (e - e_0)/T; T_l = (e_l - e)/r. Source: straight line through two measurements; wearing rings to be renewed when their clearance has doubled: Pump Handbook (page read).
inline clearance_wear_results clearance_wear(Length set_clearance, Length clearance, Time time_since, Length limit)
{
    cutwater_refusal refusal;
    double rate_out;
    double time_left_out;
    detail::check(cutwater_clearance_wear(detail::number_in(unit<Length>("mm"), set_clearance), detail::number_in(unit<Length>("mm"), clearance), detail::number_in(unit<Time>("month"), time_since), detail::number_in(unit<Length>("mm"), limit), &rate_out, &time_left_out, &refusal), refusal);
    return {detail::quantity_of(unit<Velocity>("mm/year"), rate_out), detail::quantity_of(unit<Time>("month"), time_left_out)};
}

struct clearance_payback_results {
    Money yearly_cost;  // cost of the lost energy in a year, in that currency
    Time payback;  // time until the reset has paid
};

/// What a grown clearance costs in a year, and the time in which a reset pays back: C_y = c dP t; T = C/C_y. Source: simple payback; common practice.
inline clearance_payback_results clearance_payback(Power extra_power, Time hours, Money price_per_kWh, Money reset_cost)
{
    cutwater_refusal refusal;
    double yearly_cost_out;
    double payback_out;
    detail::check(cutwater_clearance_payback(detail::number_in(unit<Power>("kW"), extra_power), detail::number_in(unit<Time>("h"), hours), detail::number_in(unit<Money>(""), price_per_kWh), detail::number_in(unit<Money>(""), reset_cost), &yearly_cost_out, &payback_out, &refusal), refusal);
    return {detail::quantity_of(unit<Money>(""), yearly_cost_out), detail::quantity_of(unit<Time>("month"), payback_out)};
}

struct clearance_reset_interval_results {
    const char* verdict;  // due, or not yet
    Time best_interval;  // interval of the least cost
    Time time_left;  // until then; negative when it is past
    Money least_yearly_cost;  // energy and resets in a year, at that interval
};

/// Interval between resets that costs least, energy and resets together, and whether one is due: T_b = sqrt(2 C/g), g = c dP t/T; C_min = sqrt(2 C g). Source: least of C/T + g T/2, lost power growing in proportion to time: R. S. Beebe, Predictive Maintenance of Pumps Using Condition Monitoring, Elsevier 2004 (from memory of it).
inline clearance_reset_interval_results clearance_reset_interval(Power extra_power, Time time_since, Time hours, Money price_per_kWh, Money reset_cost)
{
    cutwater_refusal refusal;
    const char* verdict_out;
    double best_interval_out;
    double time_left_out;
    double least_yearly_cost_out;
    detail::check(cutwater_clearance_reset_interval(detail::number_in(unit<Power>("kW"), extra_power), detail::number_in(unit<Time>("month"), time_since), detail::number_in(unit<Time>("h"), hours), detail::number_in(unit<Money>(""), price_per_kWh), detail::number_in(unit<Money>(""), reset_cost), &verdict_out, &best_interval_out, &time_left_out, &least_yearly_cost_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Time>("month"), best_interval_out), detail::quantity_of(unit<Time>("month"), time_left_out), detail::quantity_of(unit<Money>(""), least_yearly_cost_out)};
}

/// Rate of uniform corrosion from the mass that a specimen lost: r = W/(A T D). Source: ASTM G1, corrosion rate (from memory of it; the constants 87.6 and 534 for mg, cm2 or in2 are these units, read in several texts).
inline Velocity corrosion_rate(Mass mass_loss, Area area, Time exposure, Density density)
{
    cutwater_refusal refusal;
    double rate_out;
    detail::check(cutwater_corrosion_rate(detail::number_in(unit<Mass>("g"), mass_loss), detail::number_in(unit<Area>("cm2"), area), detail::number_in(unit<Time>("h"), exposure), detail::number_in(unit<Density>("kg/m3"), density), &rate_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("mm/year"), rate_out);
}

struct corrosion_life_results {
    Time life;  // time left, running at that rate
    Length allowance;  // thickness that may still corrode
};

/// Time until corrosion has brought a wall down to what it needs: L = (t - t_n)/r. Source: API 570, remaining life (from memory of it; the same relation in an inspection sheet, excerpt read).
inline corrosion_life_results corrosion_life(Length wall, Length wall_needed, Velocity corrosion_rate)
{
    cutwater_refusal refusal;
    double life_out;
    double allowance_out;
    detail::check(cutwater_corrosion_life(detail::number_in(unit<Length>("mm"), wall), detail::number_in(unit<Length>("mm"), wall_needed), detail::number_in(unit<Velocity>("mm/year"), corrosion_rate), &life_out, &allowance_out, &refusal), refusal);
    return {detail::quantity_of(unit<Time>("year"), life_out), detail::quantity_of(unit<Length>("mm"), allowance_out)};
}

struct wall_needed_results {
    Length pressure_wall;  // thickness for the pressure alone
    Length ordered_wall;  // thickness to order, allowance and tolerance in
};

/// Wall that a cylinder under inside pressure needs, with corrosion allowance and tolerance: t = P D/(2 (S E + P Y)); t_n = (t + c)/(1 - u); for t < D/6 and P <= 0.385 S E. Source: ASME B31.3, 304.1.2, equation 3a, W = 1 (excerpts read in plant calculations of the 2008 and 2012 editions).
inline wall_needed_results wall_needed(PressureDifference pressure, Length outside_diameter, PressureDifference allowable_stress, Fraction joint_factor = unit<Fraction>("")(0.8), Ratio coefficient = unit<Ratio>("")(0.4), Length corrosion_allowance = unit<Length>("mm")(0), Fraction under_tolerance = unit<Fraction>("")(0))
{
    cutwater_refusal refusal;
    double pressure_wall_out;
    double ordered_wall_out;
    detail::check(cutwater_wall_needed(detail::number_in(unit<PressureDifference>("bar"), pressure), detail::number_in(unit<Length>("mm"), outside_diameter), detail::number_in(unit<PressureDifference>("MPa"), allowable_stress), detail::number_in(unit<Fraction>(""), joint_factor), detail::number_in(unit<Ratio>(""), coefficient), detail::number_in(unit<Length>("mm"), corrosion_allowance), detail::number_in(unit<Fraction>(""), under_tolerance), &pressure_wall_out, &ordered_wall_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("mm"), pressure_wall_out), detail::quantity_of(unit<Length>("mm"), ordered_wall_out)};
}

}  // namespace cutwater

// generated from the catalogue by cutwater-generate; do not edit.
// Shaft seal and its chamber.
#pragma once

#include <cutwater/families/seal.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

struct seal_chamber_fraction_results {
    Ratio fraction;  // part of the differential pressure
    Ratio low;  // low end of its scatter, for the margin to boiling
    Ratio high;  // high end of its scatter, for the seal's rating
};

/// Part of the differential pressure that stands in the seal chamber, by the pump's arrangement: C, C_low to C_high = 0.15, 0.05 to 0.25 balance holes; 0.10, -0.10 to 0.30 back vanes; 1, 0.50 to 1 no back ring; 0, 0 to 0.10 double suction. Source: arrangements: J. E. Pope (ed.), Rules of Thumb for Mechanical Engineers, Gulf 1997, p. 82 (page read; its numbers stand in pictures, 0.15 and 0.10 from memory of it); the ends of the ranges are estimates.
inline seal_chamber_fraction_results seal_chamber_fraction(const char* arrangement)
{
    cutwater_refusal refusal;
    double fraction_out;
    double low_out;
    double high_out;
    detail::check(cutwater_seal_chamber_fraction(arrangement, &fraction_out, &low_out, &high_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), fraction_out), detail::quantity_of(unit<Ratio>(""), low_out), detail::quantity_of(unit<Ratio>(""), high_out)};
}

struct seal_chamber_pressure_results {
    GaugePressure chamber_pressure;  // pressure in the chamber, gauge
    AbsolutePressure absolute_pressure;  // the same, absolute
};

/// Pressure in the seal chamber from suction and discharge pressure: p_c = p_s + C (p_d - p_s). Source: J. E. Pope (ed.), Rules of Thumb for Mechanical Engineers, Gulf 1997, p. 82 (page read, equations in pictures).
inline seal_chamber_pressure_results seal_chamber_pressure(GaugePressure suction_pressure, GaugePressure discharge_pressure, Ratio fraction, AbsolutePressure ambient_pressure = unit<AbsolutePressure>("bara")(1.01325))
{
    cutwater_refusal refusal;
    double chamber_pressure_out;
    double absolute_pressure_out;
    detail::check(cutwater_seal_chamber_pressure(detail::number_in(unit<GaugePressure>("barg"), suction_pressure), detail::number_in(unit<GaugePressure>("barg"), discharge_pressure), detail::number_in(unit<Ratio>(""), fraction), detail::number_in(unit<AbsolutePressure>("bara"), ambient_pressure), &chamber_pressure_out, &absolute_pressure_out, &refusal), refusal);
    return {detail::quantity_of(unit<GaugePressure>("barg"), chamber_pressure_out), detail::quantity_of(unit<AbsolutePressure>("bara"), absolute_pressure_out)};
}

struct balance_hole_chamber_pressure_results {
    GaugePressure chamber_pressure;  // pressure inside the back ring, gauge
    AbsolutePressure absolute_pressure;  // the same, absolute
    Ratio area_ratio;  // area of the holes over that of the ring's clearance
};

/// Pressure behind an impeller with a back ring and balance holes, by the ring's clearance and the holes: p_c = p_s + dp_r/(1 + (c A_h/A_r)^2), A_h = z (pi/4) d_h^2, A_r = pi D_r s. Source: ring and holes as orifices in series: continuity and Bernoulli's equation; common practice.
inline balance_hole_chamber_pressure_results balance_hole_chamber_pressure(GaugePressure suction_pressure, PressureDifference ring_pressure_difference, Length ring_diameter, Length radial_clearance, Count holes, Length hole_diameter, Ratio coefficient_ratio = unit<Ratio>("")(1), AbsolutePressure ambient_pressure = unit<AbsolutePressure>("bara")(1.01325))
{
    cutwater_refusal refusal;
    double chamber_pressure_out;
    double absolute_pressure_out;
    double area_ratio_out;
    detail::check(cutwater_balance_hole_chamber_pressure(detail::number_in(unit<GaugePressure>("barg"), suction_pressure), detail::number_in(unit<PressureDifference>("bar"), ring_pressure_difference), detail::number_in(unit<Length>("mm"), ring_diameter), detail::number_in(unit<Length>("mm"), radial_clearance), detail::number_in(unit<Count>(""), holes), detail::number_in(unit<Length>("mm"), hole_diameter), detail::number_in(unit<Ratio>(""), coefficient_ratio), detail::number_in(unit<AbsolutePressure>("bara"), ambient_pressure), &chamber_pressure_out, &absolute_pressure_out, &area_ratio_out, &refusal), refusal);
    return {detail::quantity_of(unit<GaugePressure>("barg"), chamber_pressure_out), detail::quantity_of(unit<AbsolutePressure>("bara"), absolute_pressure_out), detail::quantity_of(unit<Ratio>(""), area_ratio_out)};
}

struct back_vane_chamber_pressure_results {
    GaugePressure chamber_pressure;  // pressure at the inner diameter, gauge
    AbsolutePressure absolute_pressure;  // the same, absolute
    Force back_force;  // force on the back shroud from the inner diameter out, over the suction pressure; towards the suction
};

/// Pressure in the seal chamber behind back vanes, by their height and gap, and the force on the impeller's back: p_c = p_s + dp_2 - (rho w^2/2) [k^2 (R_2^2 - R_v^2) + k_v^2 (R_v^2 - r^2)], k_v = k + (1 - k) t/(t + g). Source: forced vortex; the vanes' core rotation after A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd ed. 1957, for k = 1/2 (1/2)(1 + t/(t + g)) (from memory of it).
inline back_vane_chamber_pressure_results back_vane_chamber_pressure(GaugePressure suction_pressure, PressureDifference rim_pressure_difference, Density density, RotationalSpeed speed, Length impeller_diameter, Length vane_diameter, Length inner_diameter, Length vane_height, Length vane_gap, Ratio core_rotation = unit<Ratio>("")(0.5), AbsolutePressure ambient_pressure = unit<AbsolutePressure>("bara")(1.01325))
{
    cutwater_refusal refusal;
    double chamber_pressure_out;
    double absolute_pressure_out;
    double back_force_out;
    detail::check(cutwater_back_vane_chamber_pressure(detail::number_in(unit<GaugePressure>("barg"), suction_pressure), detail::number_in(unit<PressureDifference>("bar"), rim_pressure_difference), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("mm"), impeller_diameter), detail::number_in(unit<Length>("mm"), vane_diameter), detail::number_in(unit<Length>("mm"), inner_diameter), detail::number_in(unit<Length>("mm"), vane_height), detail::number_in(unit<Length>("mm"), vane_gap), detail::number_in(unit<Ratio>(""), core_rotation), detail::number_in(unit<AbsolutePressure>("bara"), ambient_pressure), &chamber_pressure_out, &absolute_pressure_out, &back_force_out, &refusal), refusal);
    return {detail::quantity_of(unit<GaugePressure>("barg"), chamber_pressure_out), detail::quantity_of(unit<AbsolutePressure>("bara"), absolute_pressure_out), detail::quantity_of(unit<Force>("N"), back_force_out)};
}

struct seal_barrier_pressure_results {
    GaugePressure barrier_pressure;  // least pressure of the barrier liquid, gauge; the outer seal holds it against the ambient
    AbsolutePressure absolute_pressure;  // the same, absolute
};

/// Pressure to hold on the barrier liquid of a pressurised double seal: p_b = p_c + dp. Source: ISO 21049 / API 682: at least 0.14 MPa (20 psi) above the seal chamber (from memory of it; guidance pages repeat 1.4, 1.5 and 2 bar).
inline seal_barrier_pressure_results seal_barrier_pressure(GaugePressure chamber_pressure, PressureDifference margin = unit<PressureDifference>("bar")(1.4), AbsolutePressure ambient_pressure = unit<AbsolutePressure>("bara")(1.01325))
{
    cutwater_refusal refusal;
    double barrier_pressure_out;
    double absolute_pressure_out;
    detail::check(cutwater_seal_barrier_pressure(detail::number_in(unit<GaugePressure>("barg"), chamber_pressure), detail::number_in(unit<PressureDifference>("bar"), margin), detail::number_in(unit<AbsolutePressure>("bara"), ambient_pressure), &barrier_pressure_out, &absolute_pressure_out, &refusal), refusal);
    return {detail::quantity_of(unit<GaugePressure>("barg"), barrier_pressure_out), detail::quantity_of(unit<AbsolutePressure>("bara"), absolute_pressure_out)};
}

/// Part of the sealed pressure that closes the faces of a mechanical seal: B = (D_o^2 - D_b^2)/(D_o^2 - D_i^2) outside; B = (D_b^2 - D_i^2)/(D_o^2 - D_i^2) inside. Source: ISO 21049:2004 / API 682, annex F (from memory of it), the same as I. J. Karassik et al., Pump Handbook, mechanical seals (excerpt read).
inline Ratio seal_balance_ratio(Length face_outer_diameter, Length face_inner_diameter, Length balance_diameter, const char* pressure_side = "outside")
{
    cutwater_refusal refusal;
    double balance_ratio_out;
    detail::check(cutwater_seal_balance_ratio(detail::number_in(unit<Length>("mm"), face_outer_diameter), detail::number_in(unit<Length>("mm"), face_inner_diameter), detail::number_in(unit<Length>("mm"), balance_diameter), pressure_side, &balance_ratio_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), balance_ratio_out);
}

/// Rubbing speed of the faces at their mean diameter: v = pi n (D_o + D_i)/2. Source: ISO 21049:2004 / API 682, annex F (from memory of it), the same as I. J. Karassik et al., Pump Handbook, mechanical seals (excerpt read).
inline Velocity seal_face_speed(Length face_outer_diameter, Length face_inner_diameter, RotationalSpeed speed)
{
    cutwater_refusal refusal;
    double face_speed_out;
    detail::check(cutwater_seal_face_speed(detail::number_in(unit<Length>("mm"), face_outer_diameter), detail::number_in(unit<Length>("mm"), face_inner_diameter), detail::number_in(unit<RotationalSpeed>("1/min"), speed), &face_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("m/s"), face_speed_out);
}

struct seal_face_pressure_results {
    PressureDifference face_pressure;  // net pressure on the area of the faces
    PressureDifference spring_pressure;  // the spring's part of it
    Area face_area;  // area of the faces
};

/// Pressure between the faces of a mechanical seal that the film does not carry: p_f = dp (B - K) + F_sp/A, A = (pi/4)(D_o^2 - D_i^2). Source: ISO 21049:2004 / API 682, annex F (from memory of it), the same as I. J. Karassik et al., Pump Handbook, mechanical seals (excerpt read).
inline seal_face_pressure_results seal_face_pressure(PressureDifference sealed_pressure, Ratio balance_ratio, Force spring_force, Length face_outer_diameter, Length face_inner_diameter, Ratio pressure_drop_coefficient = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    double face_pressure_out;
    double spring_pressure_out;
    double face_area_out;
    detail::check(cutwater_seal_face_pressure(detail::number_in(unit<PressureDifference>("bar"), sealed_pressure), detail::number_in(unit<Ratio>(""), balance_ratio), detail::number_in(unit<Force>("N"), spring_force), detail::number_in(unit<Length>("mm"), face_outer_diameter), detail::number_in(unit<Length>("mm"), face_inner_diameter), detail::number_in(unit<Ratio>(""), pressure_drop_coefficient), &face_pressure_out, &spring_pressure_out, &face_area_out, &refusal), refusal);
    return {detail::quantity_of(unit<PressureDifference>("bar"), face_pressure_out), detail::quantity_of(unit<PressureDifference>("bar"), spring_pressure_out), detail::quantity_of(unit<Area>("mm2"), face_area_out)};
}

/// Product of face pressure and face speed, the measure of a seal's wear: p v = p_f v. Source: ISO 21049:2004 / API 682, annex F (from memory of it), the same as I. J. Karassik et al., Pump Handbook, mechanical seals (excerpt read).
inline HeatFlux seal_pressure_velocity(PressureDifference face_pressure, Velocity face_speed)
{
    cutwater_refusal refusal;
    double pressure_velocity_out;
    detail::check(cutwater_seal_pressure_velocity(detail::number_in(unit<PressureDifference>("bar"), face_pressure), detail::number_in(unit<Velocity>("m/s"), face_speed), &pressure_velocity_out, &refusal), refusal);
    return detail::quantity_of(unit<HeatFlux>("bar m/s"), pressure_velocity_out);
}

struct seal_face_heat_results {
    Power heat;  // heat of one pair of faces
    Torque torque;  // running torque of one pair
    Torque start_torque;  // torque to break it away
};

/// Heat that one pair of faces makes, and the seal's torque: P = f p_f A v; T = f p_f A (D_o + D_i)/4; T_st = c_st T. Source: ISO 21049:2004 / API 682, annex F (from memory of it); starting power about five times the running one: Pump Handbook (excerpt read), 3 to 5 in annex F.
inline seal_face_heat_results seal_face_heat(PressureDifference face_pressure, Length face_outer_diameter, Length face_inner_diameter, RotationalSpeed speed, Ratio friction_coefficient, Ratio start_factor = unit<Ratio>("")(5))
{
    cutwater_refusal refusal;
    double heat_out;
    double torque_out;
    double start_torque_out;
    detail::check(cutwater_seal_face_heat(detail::number_in(unit<PressureDifference>("bar"), face_pressure), detail::number_in(unit<Length>("mm"), face_outer_diameter), detail::number_in(unit<Length>("mm"), face_inner_diameter), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Ratio>(""), friction_coefficient), detail::number_in(unit<Ratio>(""), start_factor), &heat_out, &torque_out, &start_torque_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), heat_out), detail::quantity_of(unit<Torque>("N m"), torque_out), detail::quantity_of(unit<Torque>("N m"), start_torque_out)};
}

struct rotating_ring_film_coefficient_results {
    HeatTransfer film_coefficient;  // heat transfer coefficient
    Ratio reynolds_number;  // pi n D^2/nu
    Ratio nusselt_number;  // Nusselt number
};

/// Heat transfer coefficient from a rotating seal ring to the liquid around it: Nu = h D/lambda = 0.133 Re^(2/3) Pr^(1/3), Re = w D^2/(2 nu). Source: K. M. Becker, Int. J. Heat Mass Transfer 6 (1963) 1053-1062, a cylinder turning in water, Re 1000 to 46000 (from memory of it); beyond that an extrapolation, as the literature of seals has it.
inline rotating_ring_film_coefficient_results rotating_ring_film_coefficient(Length ring_diameter, RotationalSpeed speed, KinematicViscosity viscosity, Ratio prandtl_number, ThermalConductivity conductivity)
{
    cutwater_refusal refusal;
    double film_coefficient_out;
    double reynolds_number_out;
    double nusselt_number_out;
    detail::check(cutwater_rotating_ring_film_coefficient(detail::number_in(unit<Length>("mm"), ring_diameter), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Ratio>(""), prandtl_number), detail::number_in(unit<ThermalConductivity>("W/(m K)"), conductivity), &film_coefficient_out, &reynolds_number_out, &nusselt_number_out, &refusal), refusal);
    return {detail::quantity_of(unit<HeatTransfer>("W/(m2 K)"), film_coefficient_out), detail::quantity_of(unit<Ratio>(""), reynolds_number_out), detail::quantity_of(unit<Ratio>(""), nusselt_number_out)};
}

struct seal_face_temperature_rise_results {
    TemperatureDifference face_rise;  // mean temperature of the faces over the liquid in the chamber
    Fraction rotating_share;  // part of the heat that leaves through the rotating ring
};

/// How much warmer the faces of a mechanical seal are than the liquid in the chamber: dT_f = P/(G_r + G_s), G = sqrt(h pi D_o k A) tanh(m L), m = sqrt(h pi D_o/(k A)), A = (pi/4)(D_o^2 - D_i^2). Source: each ring a straight fin of uniform section, cooled at its outer diameter, far end insulated: F. P. Incropera et al., Fundamentals of Heat and Mass Transfer, table of fins (from memory of it).
inline seal_face_temperature_rise_results seal_face_temperature_rise(Power face_heat, Length face_outer_diameter, Length face_inner_diameter, HeatTransfer rotating_film, Length rotating_length, ThermalConductivity rotating_conductivity, HeatTransfer stationary_film, Length stationary_length, ThermalConductivity stationary_conductivity)
{
    cutwater_refusal refusal;
    double face_rise_out;
    double rotating_share_out;
    detail::check(cutwater_seal_face_temperature_rise(detail::number_in(unit<Power>("kW"), face_heat), detail::number_in(unit<Length>("mm"), face_outer_diameter), detail::number_in(unit<Length>("mm"), face_inner_diameter), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), rotating_film), detail::number_in(unit<Length>("mm"), rotating_length), detail::number_in(unit<ThermalConductivity>("W/(m K)"), rotating_conductivity), detail::number_in(unit<HeatTransfer>("W/(m2 K)"), stationary_film), detail::number_in(unit<Length>("mm"), stationary_length), detail::number_in(unit<ThermalConductivity>("W/(m K)"), stationary_conductivity), &face_rise_out, &rotating_share_out, &refusal), refusal);
    return {detail::quantity_of(unit<TemperatureDifference>("K"), face_rise_out), detail::quantity_of(unit<Fraction>(""), rotating_share_out)};
}

struct seal_heat_soak_results {
    Power heat;  // heat flow into the chamber; negative out of it
    ThermalConductance conductance;  // heat flow for each kelvin
};

/// Heat that flows from the pump into a cooler seal chamber through metal and shaft: Q = U A (T_p - T_c), U A = u D_b. Source: ISO 21049:2004 / API 682, annex F, heat soak (from memory of it).
inline seal_heat_soak_results seal_heat_soak(ThermalConductivity soak_coefficient, Length balance_diameter, Temperature pump_temperature, Temperature chamber_temperature)
{
    cutwater_refusal refusal;
    double heat_out;
    double conductance_out;
    detail::check(cutwater_seal_heat_soak(detail::number_in(unit<ThermalConductivity>("W/(mm K)"), soak_coefficient), detail::number_in(unit<Length>("mm"), balance_diameter), detail::number_in(unit<Temperature>("degC"), pump_temperature), detail::number_in(unit<Temperature>("degC"), chamber_temperature), &heat_out, &conductance_out, &refusal), refusal);
    return {detail::quantity_of(unit<Power>("kW"), heat_out), detail::quantity_of(unit<ThermalConductance>("W/K"), conductance_out)};
}

/// Temperature of the liquid in the seal chamber, from the heat that comes and goes: T_c = T_p + [P + P_s + rho c_p q_f (T_f - T_p) + G_c (T_k - T_p)]/[rho c_p (q_x + q_f) + U A + G_c]. Source: steady heat balance of a well-mixed chamber; heat soak as in ISO 21049 / API 682, annex F (from memory of it).
inline Temperature seal_chamber_temperature(Power face_heat, Temperature pump_temperature, Flow exchange_flow, ThermalConductance soak_conductance, Flow flush_flow, Temperature flush_temperature, Density density, SpecificHeat specific_heat, Power stirring_heat = unit<Power>("kW")(0), ThermalConductance cooling_conductance = unit<ThermalConductance>("W/K")(0), Temperature cooling_temperature = unit<Temperature>("degC")(20))
{
    cutwater_refusal refusal;
    double chamber_temperature_out;
    detail::check(cutwater_seal_chamber_temperature(detail::number_in(unit<Power>("kW"), face_heat), detail::number_in(unit<Temperature>("degC"), pump_temperature), detail::number_in(unit<Flow>("l/min"), exchange_flow), detail::number_in(unit<ThermalConductance>("W/K"), soak_conductance), detail::number_in(unit<Flow>("l/min"), flush_flow), detail::number_in(unit<Temperature>("degC"), flush_temperature), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<Power>("kW"), stirring_heat), detail::number_in(unit<ThermalConductance>("W/K"), cooling_conductance), detail::number_in(unit<Temperature>("degC"), cooling_temperature), &chamber_temperature_out, &refusal), refusal);
    return detail::quantity_of(unit<Temperature>("degC"), chamber_temperature_out);
}

struct seal_vapour_margin_results {
    PressureDifference margin;  // pressure over the vapour pressure; negative: it boils
    Ratio ratio;  // chamber pressure over vapour pressure, both absolute
};

/// Margin of the seal chamber's pressure over the liquid's vapour pressure: dp = p_c - p_v; r = p_c/p_v. Source: 345 kPa (50 psi) over the vapour pressure: W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery 2011, pp. 508 and 523 (pages read); 3.5 bar, or a ratio of 1.3, or 20 K below boiling: API 682 / ISO 21049, which one depends on the edition (from memory of it); ln p linear in 1/T between the points.
inline seal_vapour_margin_results seal_vapour_margin(AbsolutePressure chamber_pressure, AbsolutePressure vapour_pressure)
{
    cutwater_refusal refusal;
    double margin_out;
    double ratio_out;
    detail::check(cutwater_seal_vapour_margin(detail::number_in(unit<AbsolutePressure>("bara"), chamber_pressure), detail::number_in(unit<AbsolutePressure>("bara"), vapour_pressure), &margin_out, &ratio_out, &refusal), refusal);
    return {detail::quantity_of(unit<PressureDifference>("bar"), margin_out), detail::quantity_of(unit<Ratio>(""), ratio_out)};
}

struct seal_temperature_margin_results {
    AbsolutePressure vapour_pressure;  // vapour pressure at the chamber's temperature and the faces' rise
    PressureDifference margin;  // chamber pressure over it; negative: it boils
    Ratio ratio;  // chamber pressure over it
    Temperature boiling_temperature;  // temperature at which the liquid boils under the chamber's pressure
    TemperatureDifference below_boiling;  // how far the liquid is below it; negative: it boils
};

/// Margins to boiling in the seal chamber or at its faces: pressure, ratio and temperature side by side: dp = p_c - p_v(T_c + dT_f); r = p_c/p_v; dT = T_b(p_c) - T_c - dT_f. Source: 345 kPa (50 psi) over the vapour pressure: W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery 2011, pp. 508 and 523 (pages read); 3.5 bar, or a ratio of 1.3, or 20 K below boiling: API 682 / ISO 21049, which one depends on the edition (from memory of it); ln p linear in 1/T between the points.
inline seal_temperature_margin_results seal_temperature_margin(AbsolutePressure chamber_pressure, Temperature chamber_temperature, const std::vector<Temperature>& temperatures, const std::vector<AbsolutePressure>& vapour_pressures, TemperatureDifference face_rise = unit<TemperatureDifference>("K")(0))
{
    const std::vector<double> temperatures_numbers = detail::numbers(unit<Temperature>("degC"), temperatures);
    const std::vector<double> vapour_pressures_numbers = detail::numbers(unit<AbsolutePressure>("bara"), vapour_pressures);
    cutwater_refusal refusal;
    double vapour_pressure_out;
    double margin_out;
    double ratio_out;
    double boiling_temperature_out;
    double below_boiling_out;
    detail::check(cutwater_seal_temperature_margin(detail::number_in(unit<AbsolutePressure>("bara"), chamber_pressure), detail::number_in(unit<Temperature>("degC"), chamber_temperature), temperatures_numbers.data(), temperatures_numbers.size(), vapour_pressures_numbers.data(), vapour_pressures_numbers.size(), detail::number_in(unit<TemperatureDifference>("K"), face_rise), &vapour_pressure_out, &margin_out, &ratio_out, &boiling_temperature_out, &below_boiling_out, &refusal), refusal);
    return {detail::quantity_of(unit<AbsolutePressure>("bara"), vapour_pressure_out), detail::quantity_of(unit<PressureDifference>("bar"), margin_out), detail::quantity_of(unit<Ratio>(""), ratio_out), detail::quantity_of(unit<Temperature>("degC"), boiling_temperature_out), detail::quantity_of(unit<TemperatureDifference>("K"), below_boiling_out)};
}

struct seal_margin_verdict_results {
    const char* verdict;  // enough, too small, or boils
    PressureDifference margin;  // chamber pressure over the vapour pressure
    Ratio ratio;  // chamber pressure over the vapour pressure
    TemperatureDifference below_boiling;  // how far the liquid is below boiling
};

/// Whether the seal chamber keeps its margin to boiling, by the criterion chosen: enough when dp >= dp_min, or r >= r_min, or dT >= dT_min, whichever is chosen; boils when dp <= 0. Source: 345 kPa (50 psi) over the vapour pressure: W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery 2011, pp. 508 and 523 (pages read); 3.5 bar, or a ratio of 1.3, or 20 K below boiling: API 682 / ISO 21049, which one depends on the edition (from memory of it); ln p linear in 1/T between the points.
inline seal_margin_verdict_results seal_margin_verdict(AbsolutePressure chamber_pressure, Temperature chamber_temperature, const std::vector<Temperature>& temperatures, const std::vector<AbsolutePressure>& vapour_pressures, const char* criterion, TemperatureDifference face_rise = unit<TemperatureDifference>("K")(0), PressureDifference least_margin = unit<PressureDifference>("bar")(3.45), Ratio least_ratio = unit<Ratio>("")(1.3), TemperatureDifference least_below_boiling = unit<TemperatureDifference>("K")(20))
{
    const std::vector<double> temperatures_numbers = detail::numbers(unit<Temperature>("degC"), temperatures);
    const std::vector<double> vapour_pressures_numbers = detail::numbers(unit<AbsolutePressure>("bara"), vapour_pressures);
    cutwater_refusal refusal;
    const char* verdict_out;
    double margin_out;
    double ratio_out;
    double below_boiling_out;
    detail::check(cutwater_seal_margin_verdict(detail::number_in(unit<AbsolutePressure>("bara"), chamber_pressure), detail::number_in(unit<Temperature>("degC"), chamber_temperature), temperatures_numbers.data(), temperatures_numbers.size(), vapour_pressures_numbers.data(), vapour_pressures_numbers.size(), criterion, detail::number_in(unit<TemperatureDifference>("K"), face_rise), detail::number_in(unit<PressureDifference>("bar"), least_margin), detail::number_in(unit<Ratio>(""), least_ratio), detail::number_in(unit<TemperatureDifference>("K"), least_below_boiling), &verdict_out, &margin_out, &ratio_out, &below_boiling_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<PressureDifference>("bar"), margin_out), detail::quantity_of(unit<Ratio>(""), ratio_out), detail::quantity_of(unit<TemperatureDifference>("K"), below_boiling_out)};
}

struct seal_allowed_temperature_results {
    Temperature allowed_temperature;  // highest temperature of the chamber
    AbsolutePressure vapour_pressure;  // vapour pressure at the faces then
};

/// Highest temperature of the seal chamber that keeps the margin to boiling: p_v(T_a + dT_f) = p_c - dp_min, or p_c/r_min; or T_a = T_b(p_c) - dT_min - dT_f. Source: 345 kPa (50 psi) over the vapour pressure: W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery 2011, pp. 508 and 523 (pages read); 3.5 bar, or a ratio of 1.3, or 20 K below boiling: API 682 / ISO 21049, which one depends on the edition (from memory of it); ln p linear in 1/T between the points.
inline seal_allowed_temperature_results seal_allowed_temperature(AbsolutePressure chamber_pressure, const std::vector<Temperature>& temperatures, const std::vector<AbsolutePressure>& vapour_pressures, const char* criterion, TemperatureDifference face_rise = unit<TemperatureDifference>("K")(0), PressureDifference least_margin = unit<PressureDifference>("bar")(3.45), Ratio least_ratio = unit<Ratio>("")(1.3), TemperatureDifference least_below_boiling = unit<TemperatureDifference>("K")(20))
{
    const std::vector<double> temperatures_numbers = detail::numbers(unit<Temperature>("degC"), temperatures);
    const std::vector<double> vapour_pressures_numbers = detail::numbers(unit<AbsolutePressure>("bara"), vapour_pressures);
    cutwater_refusal refusal;
    double allowed_temperature_out;
    double vapour_pressure_out;
    detail::check(cutwater_seal_allowed_temperature(detail::number_in(unit<AbsolutePressure>("bara"), chamber_pressure), temperatures_numbers.data(), temperatures_numbers.size(), vapour_pressures_numbers.data(), vapour_pressures_numbers.size(), criterion, detail::number_in(unit<TemperatureDifference>("K"), face_rise), detail::number_in(unit<PressureDifference>("bar"), least_margin), detail::number_in(unit<Ratio>(""), least_ratio), detail::number_in(unit<TemperatureDifference>("K"), least_below_boiling), &allowed_temperature_out, &vapour_pressure_out, &refusal), refusal);
    return {detail::quantity_of(unit<Temperature>("degC"), allowed_temperature_out), detail::quantity_of(unit<AbsolutePressure>("bara"), vapour_pressure_out)};
}

struct seal_flush_needed_results {
    Flow flush_flow;  // least flush; 0 when none is needed
    const char* need;  // whether one is needed
    Power heat;  // heat that the flush has to carry away
};

/// Whether a seal chamber needs a flush to stay at an allowed temperature, and how much: q_f = Q/[rho c_p (T_a - T_f)], Q = P + P_s + (rho c_p q_x + U A)(T_p - T_a) + G_c (T_k - T_a). Source: steady heat balance of a well-mixed chamber; heat soak as in ISO 21049 / API 682, annex F (from memory of it).
inline seal_flush_needed_results seal_flush_needed(Power face_heat, Temperature pump_temperature, Flow exchange_flow, ThermalConductance soak_conductance, Temperature allowed_temperature, Temperature flush_temperature, Density density, SpecificHeat specific_heat, Power stirring_heat = unit<Power>("kW")(0), ThermalConductance cooling_conductance = unit<ThermalConductance>("W/K")(0), Temperature cooling_temperature = unit<Temperature>("degC")(20))
{
    cutwater_refusal refusal;
    double flush_flow_out;
    const char* need_out;
    double heat_out;
    detail::check(cutwater_seal_flush_needed(detail::number_in(unit<Power>("kW"), face_heat), detail::number_in(unit<Temperature>("degC"), pump_temperature), detail::number_in(unit<Flow>("l/min"), exchange_flow), detail::number_in(unit<ThermalConductance>("W/K"), soak_conductance), detail::number_in(unit<Temperature>("degC"), allowed_temperature), detail::number_in(unit<Temperature>("degC"), flush_temperature), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), detail::number_in(unit<Power>("kW"), stirring_heat), detail::number_in(unit<ThermalConductance>("W/K"), cooling_conductance), detail::number_in(unit<Temperature>("degC"), cooling_temperature), &flush_flow_out, &need_out, &heat_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("l/min"), flush_flow_out), need_out, detail::quantity_of(unit<Power>("kW"), heat_out)};
}

/// Flush that carries a heat away with an allowed rise of its temperature: q = Q/(rho c_p dT). Source: heat balance; in US units q = Q/(500 c_p s dT), gpm, Btu/h, degF: W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery 2011, p. 508 (page read).
inline Flow seal_flush_flow(Power heat, TemperatureDifference allowed_rise, Density density, SpecificHeat specific_heat)
{
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_seal_flush_flow(detail::number_in(unit<Power>("kW"), heat), detail::number_in(unit<TemperatureDifference>("K"), allowed_rise), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<SpecificHeat>("kJ/(kg K)"), specific_heat), &flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("l/min"), flow_out);
}

struct seal_flush_orifice_bore_results {
    Length bore;  // bore of each orifice
    const char* size;  // large enough, or may block
};

/// Bore of the orifice that lets a seal's flush through: d = sqrt(4 q/(pi C_d v)), v = sqrt(2 dp/(N rho)). Source: Bernoulli's equation with a discharge coefficient of a sharp-edged orifice, about 0.62; least bore 3 mm: API 682 (both from memory).
inline seal_flush_orifice_bore_results seal_flush_orifice_bore(Flow flow, PressureDifference pressure_drop, Density density, Ratio discharge_coefficient = unit<Ratio>("")(0.62), Count orifices = unit<Count>("")(1), Length least_bore = unit<Length>("mm")(3))
{
    cutwater_refusal refusal;
    double bore_out;
    const char* size_out;
    detail::check(cutwater_seal_flush_orifice_bore(detail::number_in(unit<Flow>("l/min"), flow), detail::number_in(unit<PressureDifference>("bar"), pressure_drop), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Ratio>(""), discharge_coefficient), detail::number_in(unit<Count>(""), orifices), detail::number_in(unit<Length>("mm"), least_bore), &bore_out, &size_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("mm"), bore_out), size_out};
}

struct seal_flush_orifice_flow_results {
    Flow flow;  // flush
    Velocity jet_velocity;  // velocity of the jet, before contraction
};

/// Flush that an orifice lets into the seal chamber: q = C_d (pi/4) d^2 v, v = sqrt(2 dp/(N rho)). Source: Bernoulli's equation with a discharge coefficient of a sharp-edged orifice, about 0.62; least bore 3 mm: API 682 (both from memory).
inline seal_flush_orifice_flow_results seal_flush_orifice_flow(Length bore, PressureDifference pressure_drop, Density density, Ratio discharge_coefficient = unit<Ratio>("")(0.62), Count orifices = unit<Count>("")(1))
{
    cutwater_refusal refusal;
    double flow_out;
    double jet_velocity_out;
    detail::check(cutwater_seal_flush_orifice_flow(detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<PressureDifference>("bar"), pressure_drop), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Ratio>(""), discharge_coefficient), detail::number_in(unit<Count>(""), orifices), &flow_out, &jet_velocity_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("l/min"), flow_out), detail::quantity_of(unit<Velocity>("m/s"), jet_velocity_out)};
}

/// Velocity of the flush through the throat bush, against the liquid and solids of the pump: v = q/[(pi/4)(D_t^2 - d_s^2)]. Source: continuity; common practice.
inline Velocity seal_throat_velocity(Flow flow, Length bush_bore, Length shaft_diameter)
{
    cutwater_refusal refusal;
    double velocity_out;
    detail::check(cutwater_seal_throat_velocity(detail::number_in(unit<Flow>("l/min"), flow), detail::number_in(unit<Length>("mm"), bush_bore), detail::number_in(unit<Length>("mm"), shaft_diameter), &velocity_out, &refusal), refusal);
    return detail::quantity_of(unit<Velocity>("m/s"), velocity_out);
}

struct seal_chamber_drift_results {
    Velocity velocity;  // radial velocity; positive outwards
    const char* direction;  // which way it goes
    Acceleration acceleration;  // centrifugal acceleration there
    Ratio reynolds_number;  // Reynolds number of the drift
};

/// How fast and which way a particle or bubble drifts in the swirl of a seal chamber: v = sqrt(4 a d |rho_p - rho_l|/(3 C_D rho_l)), a = (k w)^2 r, C_D = 24/Re (1 + 0.1806 Re^0.6459) + 0.4251/(1 + 6880.95/Re). Source: solid-body swirl at k w and a sphere's drag by A. Haider and O. Levenspiel, Powder Technology 58 (1989) 63-70 (from memory of it); a model of its own kind: the studies of flow in seal chambers could not be read.
inline seal_chamber_drift_results seal_chamber_drift(Length particle_size, Density particle_density, Density liquid_density, DynamicViscosity dynamic_viscosity, RotationalSpeed speed, Length radius, Ratio swirl_ratio = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    double velocity_out;
    const char* direction_out;
    double acceleration_out;
    double reynolds_number_out;
    detail::check(cutwater_seal_chamber_drift(detail::number_in(unit<Length>("um"), particle_size), detail::number_in(unit<Density>("kg/m3"), particle_density), detail::number_in(unit<Density>("kg/m3"), liquid_density), detail::number_in(unit<DynamicViscosity>("mPa s"), dynamic_viscosity), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("mm"), radius), detail::number_in(unit<Ratio>(""), swirl_ratio), &velocity_out, &direction_out, &acceleration_out, &reynolds_number_out, &refusal), refusal);
    return {detail::quantity_of(unit<Velocity>("mm/s"), velocity_out), direction_out, detail::quantity_of(unit<Acceleration>("m/s2"), acceleration_out), detail::quantity_of(unit<Ratio>(""), reynolds_number_out)};
}

struct seal_chamber_clearing_results {
    const char* fate;  // where it ends up
    Velocity radial_velocity;  // drift across the chamber; positive outwards
    Velocity wall_velocity;  // drift along the wall towards the impeller, for what lies on the wall
    Ratio taper;  // slope of the wall; positive when it opens towards the impeller
};

/// Where solids or gas end up in a cylindrical or tapered seal chamber: v_w = v(a sin alpha), tan alpha = (D_2 - D_1)/(2 L), a = (k w)^2 (D_1 + D_2)/4; clears when v_w > u. Source: solid-body swirl at k w and a sphere's drag by A. Haider and O. Levenspiel, Powder Technology 58 (1989) 63-70 (from memory of it); a model of its own kind: the studies of flow in seal chambers could not be read.
inline seal_chamber_clearing_results seal_chamber_clearing(Length particle_size, Density particle_density, Density liquid_density, DynamicViscosity dynamic_viscosity, RotationalSpeed speed, Length bore_at_faces, Length bore_at_impeller, Length length, Velocity inward_velocity = unit<Velocity>("mm/s")(0), Ratio swirl_ratio = unit<Ratio>("")(0.5))
{
    cutwater_refusal refusal;
    const char* fate_out;
    double radial_velocity_out;
    double wall_velocity_out;
    double taper_out;
    detail::check(cutwater_seal_chamber_clearing(detail::number_in(unit<Length>("um"), particle_size), detail::number_in(unit<Density>("kg/m3"), particle_density), detail::number_in(unit<Density>("kg/m3"), liquid_density), detail::number_in(unit<DynamicViscosity>("mPa s"), dynamic_viscosity), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Length>("mm"), bore_at_faces), detail::number_in(unit<Length>("mm"), bore_at_impeller), detail::number_in(unit<Length>("mm"), length), detail::number_in(unit<Velocity>("mm/s"), inward_velocity), detail::number_in(unit<Ratio>(""), swirl_ratio), &fate_out, &radial_velocity_out, &wall_velocity_out, &taper_out, &refusal), refusal);
    return {fate_out, detail::quantity_of(unit<Velocity>("mm/s"), radial_velocity_out), detail::quantity_of(unit<Velocity>("mm/s"), wall_velocity_out), detail::quantity_of(unit<Ratio>(""), taper_out)};
}

}  // namespace cutwater

// generated from the catalogue by cutwater-generate; do not edit.
// Containment: casing, flanges, walls, loads.
#pragma once

#include <cutwater/families/containment.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Greatest pressure rise of a pump: at closed valve, greatest density, head tolerance and speed: dp_0 = rho g H_0 (1 + t)(n/n_0)^2. Source: ISO 13709:2003 5.3.1 and 5.3.2 by a published comparison with the edition before it (excerpt read): greatest suction pressure and the rise of the impeller as supplied; on request at the greatest density, the largest impeller, the trip speed; margin of 10 % of the rise: a summary of API 610 (read); ISO 5199:2002 4.4 (from memory of it).
inline PressureDifference shutoff_pressure(Length shutoff_head, Density density, Fraction head_tolerance = unit<Fraction>("")(0.05), Ratio speed_ratio = unit<Ratio>("")(1))
{
    cutwater_refusal refusal;
    double pressure_rise_out;
    detail::check(cutwater_shutoff_pressure(detail::number_in(unit<Length>("m"), shutoff_head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), head_tolerance), detail::number_in(unit<Ratio>(""), speed_ratio), &pressure_rise_out, &refusal), refusal);
    return detail::quantity_of(unit<PressureDifference>("bar"), pressure_rise_out);
}

struct casing_pressure_results {
    GaugePressure casing_pressure;  // greatest gauge pressure in the casing
    GaugePressure rating_needed;  // rating that the casing needs at its temperature
};

/// Greatest pressure in a pump's casing, to be held against its rating: p_c = p_1 + dp_0, p_R = p_1 + (1 + m) dp_0, dp_0 = rho g H_0 (1 + t)(n/n_0)^2. Source: ISO 13709:2003 5.3.1 and 5.3.2 by a published comparison with the edition before it (excerpt read): greatest suction pressure and the rise of the impeller as supplied; on request at the greatest density, the largest impeller, the trip speed; margin of 10 % of the rise: a summary of API 610 (read); ISO 5199:2002 4.4 (from memory of it).
inline casing_pressure_results casing_pressure(GaugePressure suction_pressure, Length shutoff_head, Density density, Fraction head_tolerance = unit<Fraction>("")(0.05), Ratio speed_ratio = unit<Ratio>("")(1), Fraction rating_margin = unit<Fraction>("")(0.1))
{
    cutwater_refusal refusal;
    double casing_pressure_out;
    double rating_needed_out;
    detail::check(cutwater_casing_pressure(detail::number_in(unit<GaugePressure>("barg"), suction_pressure), detail::number_in(unit<Length>("m"), shutoff_head), detail::number_in(unit<Density>("kg/m3"), density), detail::number_in(unit<Fraction>(""), head_tolerance), detail::number_in(unit<Ratio>(""), speed_ratio), detail::number_in(unit<Fraction>(""), rating_margin), &casing_pressure_out, &rating_needed_out, &refusal), refusal);
    return {detail::quantity_of(unit<GaugePressure>("barg"), casing_pressure_out), detail::quantity_of(unit<GaugePressure>("barg"), rating_needed_out)};
}

/// Pressure of the hydrostatic test of a casing: p_T = f p (S_T/S). Source: f = 1.5: ISO 5199:2002 6.3 and ISO 13709:2009 8.3.2 (from memory of both); strength ratio, at most 6.5: ASME B31.3 345.4.2(b) (excerpts of plant calculations read, the limit from memory).
inline GaugePressure hydrostatic_test_pressure(GaugePressure allowable_pressure, Ratio factor = unit<Ratio>("")(1.5), Ratio strength_ratio = unit<Ratio>("")(1))
{
    cutwater_refusal refusal;
    double test_pressure_out;
    detail::check(cutwater_hydrostatic_test_pressure(detail::number_in(unit<GaugePressure>("barg"), allowable_pressure), detail::number_in(unit<Ratio>(""), factor), detail::number_in(unit<Ratio>(""), strength_ratio), &test_pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<GaugePressure>("barg"), test_pressure_out);
}

/// Greatest working pressure of a steel flange by class, material group and temperature: p_F = table 2 of the standard by group and class, linear between its temperatures; from -29 to 38 degC the first row. Source: ASME B16.5-2009, tables 2-1.1 (standard's page read), 2-1.2 (excerpt read, to 300 degC), 2-2.1 to 2-2.3 (whole data files of an open library read, two agree); linear between temperatures, never between classes: its 2.1 and 2.5 (quoted in engineers' articles, excerpts read).
inline GaugePressure flange_rating(Temperature temperature, const char* material_group, Count pressure_class)
{
    cutwater_refusal refusal;
    double rating_out;
    detail::check(cutwater_flange_rating(detail::number_in(unit<Temperature>("degC"), temperature), material_group, detail::number_in(unit<Count>(""), pressure_class), &rating_out, &refusal), refusal);
    return detail::quantity_of(unit<GaugePressure>("barg"), rating_out);
}

struct flange_check_results {
    const char* verdict;  // within: the pressure is at most the rating; exceeded: it is not
    GaugePressure rating;  // greatest working gauge pressure at that temperature
    PressureDifference margin;  // rating less casing pressure; negative: exceeded
    Fraction share;  // part of the rating that is used
};

/// Greatest casing pressure held against the rating of its flanges: p_c <= p_F, p_F from table 2 of the standard by group and class, linear between its temperatures. Source: ASME B16.5-2009, tables 2-1.1 (standard's page read), 2-1.2 (excerpt read, to 300 degC), 2-2.1 to 2-2.3 (whole data files of an open library read, two agree); linear between temperatures, never between classes: its 2.1 and 2.5 (quoted in engineers' articles, excerpts read).
inline flange_check_results flange_check(GaugePressure casing_pressure, Temperature temperature, const char* material_group, Count pressure_class)
{
    cutwater_refusal refusal;
    const char* verdict_out;
    double rating_out;
    double margin_out;
    double share_out;
    detail::check(cutwater_flange_check(detail::number_in(unit<GaugePressure>("barg"), casing_pressure), detail::number_in(unit<Temperature>("degC"), temperature), material_group, detail::number_in(unit<Count>(""), pressure_class), &verdict_out, &rating_out, &margin_out, &share_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<GaugePressure>("barg"), rating_out), detail::quantity_of(unit<PressureDifference>("bar"), margin_out), detail::quantity_of(unit<Fraction>(""), share_out)};
}

/// Pressure of a system's hydrostatic test that a flange's class stands for: p_T = 1.5 p_F(38 degC), rounded up to the next whole bar. Source: ASME B16.5-2009, 2.6 (quoted in engineers' articles, excerpts read); ratings as for flange_rating.
inline GaugePressure flange_test_pressure(const char* material_group, Count pressure_class)
{
    cutwater_refusal refusal;
    double test_pressure_out;
    detail::check(cutwater_flange_test_pressure(material_group, detail::number_in(unit<Count>(""), pressure_class), &test_pressure_out, &refusal), refusal);
    return detail::quantity_of(unit<GaugePressure>("barg"), test_pressure_out);
}

/// Rated pressure at a temperature from a pressure-temperature table of your own: p_F linear between the table's temperatures. Source: linear interpolation, as ASME B16.5 2.5 allows (excerpt read) and EN 1092-1 annex G does (from memory of it).
inline GaugePressure rating_at_temperature(Temperature temperature, const std::vector<Temperature>& temperatures, const std::vector<GaugePressure>& ratings)
{
    const std::vector<double> temperatures_numbers = detail::numbers(unit<Temperature>("degC"), temperatures);
    const std::vector<double> ratings_numbers = detail::numbers(unit<GaugePressure>("barg"), ratings);
    cutwater_refusal refusal;
    double rating_out;
    detail::check(cutwater_rating_at_temperature(detail::number_in(unit<Temperature>("degC"), temperature), temperatures_numbers.data(), temperatures_numbers.size(), ratings_numbers.data(), ratings_numbers.size(), &rating_out, &refusal), refusal);
    return detail::quantity_of(unit<GaugePressure>("barg"), rating_out);
}

struct nozzle_load_limits_results {
    Force force_x;  // along the shaft
    Force force_y;  // across the shaft, horizontal
    Force force_z;  // vertical
    Torque moment_x;  // about the shaft's direction
    Torque moment_y;  // about the horizontal across it
    Torque moment_z;  // about the vertical
};

/// Forces and moments that each branch of an ISO 13709 pump bears, in steel: table of the standard by size and position; either sign. Source: ISO 13709:2003, table 4 (= API 610 9th and 10th edition; table 5 of the 2009 edition from memory): forces and US moments as printed in W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery, 2011, tables 2.20.1 and 2.20.2 (read); SI moments from memory, agree with the US ones.
inline nozzle_load_limits_results nozzle_load_limits(Count nominal_size, const char* position)
{
    cutwater_refusal refusal;
    double force_x_out;
    double force_y_out;
    double force_z_out;
    double moment_x_out;
    double moment_y_out;
    double moment_z_out;
    detail::check(cutwater_nozzle_load_limits(detail::number_in(unit<Count>(""), nominal_size), position, &force_x_out, &force_y_out, &force_z_out, &moment_x_out, &moment_y_out, &moment_z_out, &refusal), refusal);
    return {detail::quantity_of(unit<Force>("N"), force_x_out), detail::quantity_of(unit<Force>("N"), force_y_out), detail::quantity_of(unit<Force>("N"), force_z_out), detail::quantity_of(unit<Torque>("N m"), moment_x_out), detail::quantity_of(unit<Torque>("N m"), moment_y_out), detail::quantity_of(unit<Torque>("N m"), moment_z_out)};
}

struct nozzle_load_check_results {
    const char* verdict;  // within: the rule holds; exceeded: it does not; open: ISO 13709 F.1.2.1 and F.1.2.2 hold, F.1.2.3 (all loads at the pump's centre) is still to be shown
    Ratio combined;  // combined load; may be 2
    Ratio largest_force;  // largest component's share; may be 1.4 (ISO 5199) or 2 (ISO 13709)
    Ratio largest_moment;  // the same of the moments
};

/// Pipe forces and moments on a pump's branches against the allowable ones, by the combined rule: ISO 5199: U = (sum|F|/sum F_max)^2 + (sum|M|/sum M_max)^2, of components or of resultants, the greater, all branches together; ISO 13709: U = (F_R/F_R,max + M_R/M_R,max)/1.5 of each branch, the greatest. Source: ISO 5199:2002 Annex B (place of it read, rule from memory; whether it sums components or resultants could not be read, the stricter is taken); ISO 13709:2009 Annex F, F.1.2.1 and F.1.2.2 (from memory of it).
inline nozzle_load_check_results nozzle_load_check(const char* rule, const std::vector<Force>& forces, const std::vector<Force>& allowed_forces, const std::vector<Torque>& moments, const std::vector<Torque>& allowed_moments)
{
    const std::vector<double> forces_numbers = detail::numbers(unit<Force>("N"), forces);
    const std::vector<double> allowed_forces_numbers = detail::numbers(unit<Force>("N"), allowed_forces);
    const std::vector<double> moments_numbers = detail::numbers(unit<Torque>("N m"), moments);
    const std::vector<double> allowed_moments_numbers = detail::numbers(unit<Torque>("N m"), allowed_moments);
    cutwater_refusal refusal;
    const char* verdict_out;
    double combined_out;
    double largest_force_out;
    double largest_moment_out;
    detail::check(cutwater_nozzle_load_check(rule, forces_numbers.data(), forces_numbers.size(), allowed_forces_numbers.data(), allowed_forces_numbers.size(), moments_numbers.data(), moments_numbers.size(), allowed_moments_numbers.data(), allowed_moments_numbers.size(), &verdict_out, &combined_out, &largest_force_out, &largest_moment_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Ratio>(""), combined_out), detail::quantity_of(unit<Ratio>(""), largest_force_out), detail::quantity_of(unit<Ratio>(""), largest_moment_out)};
}

struct wall_needed_from_bore_results {
    Length pressure_wall;  // wall for the pressure alone
    Length least_wall;  // least wall, corrosion allowance included
    Length nominal_wall;  // wall to order, undertolerance included
};

/// Wall that a cylinder under inside pressure needs, from its bore: t = P (d + 2 c)/(2 (S E - P (1 - Y))), t_m = t + c, t_n = t_m/(1 - u). Source: ASME B31.3 304.1.2, equation (3b), for t < D/6 and P/(S E) <= 0.385 (excerpts of five plant calculations, 2008 and 2012 editions, read).
inline wall_needed_from_bore_results wall_needed_from_bore(GaugePressure pressure, Length bore, PressureDifference allowable_stress, Ratio quality_factor = unit<Ratio>("")(0.8), Ratio y_factor = unit<Ratio>("")(0.4), Length corrosion_allowance = unit<Length>("mm")(0), Fraction undertolerance = unit<Fraction>("")(0))
{
    cutwater_refusal refusal;
    double pressure_wall_out;
    double least_wall_out;
    double nominal_wall_out;
    detail::check(cutwater_wall_needed_from_bore(detail::number_in(unit<GaugePressure>("barg"), pressure), detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<PressureDifference>("MPa"), allowable_stress), detail::number_in(unit<Ratio>(""), quality_factor), detail::number_in(unit<Ratio>(""), y_factor), detail::number_in(unit<Length>("mm"), corrosion_allowance), detail::number_in(unit<Fraction>(""), undertolerance), &pressure_wall_out, &least_wall_out, &nominal_wall_out, &refusal), refusal);
    return {detail::quantity_of(unit<Length>("mm"), pressure_wall_out), detail::quantity_of(unit<Length>("mm"), least_wall_out), detail::quantity_of(unit<Length>("mm"), nominal_wall_out)};
}

struct corrosion_life_from_readings_results {
    Velocity rate;  // mean rate between the readings
    Time life;  // time from the later reading on
};

/// Time until corrosion has taken the wall down to what the pressure needs, from two readings: r = (t_1 - t_2)/dt, L = (t_2 - t_m)/r. Source: remaining life as in API 570 (a course text and a worked sheet read, the standard from memory).
inline corrosion_life_from_readings_results corrosion_life_from_readings(Length wall_before, Length wall_now, Time interval, Length wall_needed)
{
    cutwater_refusal refusal;
    double rate_out;
    double life_out;
    detail::check(cutwater_corrosion_life_from_readings(detail::number_in(unit<Length>("mm"), wall_before), detail::number_in(unit<Length>("mm"), wall_now), detail::number_in(unit<Time>("year"), interval), detail::number_in(unit<Length>("mm"), wall_needed), &rate_out, &life_out, &refusal), refusal);
    return {detail::quantity_of(unit<Velocity>("mm/year"), rate_out), detail::quantity_of(unit<Time>("year"), life_out)};
}

/// Pressure rise of a liquid that warms in a closed space full of it: dp = (alpha_v - 3 alpha_w) dT/(kappa + X), X = (D/(2 E w))(2.5 - 2 mu). Source: API 521 5th edition 2007, 5.14 (its variables read, the formula from memory: it is the thin cylinder with closed ends); simplified form with D/(E w) and its example: an engineers' forum, 2007 (derivation read whole).
inline PressureDifference trapped_liquid_pressure_rise(TemperatureDifference warming, ThermalExpansion liquid_expansion, Compressibility compressibility, Length diameter, Length wall, ThermalExpansion wall_expansion = unit<ThermalExpansion>("1e-6/K")(12), PressureDifference modulus = unit<PressureDifference>("GPa")(200), Ratio poisson = unit<Ratio>("")(0.3))
{
    cutwater_refusal refusal;
    double pressure_rise_out;
    detail::check(cutwater_trapped_liquid_pressure_rise(detail::number_in(unit<TemperatureDifference>("K"), warming), detail::number_in(unit<ThermalExpansion>("1e-6/K"), liquid_expansion), detail::number_in(unit<Compressibility>("1/GPa"), compressibility), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), wall), detail::number_in(unit<ThermalExpansion>("1e-6/K"), wall_expansion), detail::number_in(unit<PressureDifference>("GPa"), modulus), detail::number_in(unit<Ratio>(""), poisson), &pressure_rise_out, &refusal), refusal);
    return detail::quantity_of(unit<PressureDifference>("bar"), pressure_rise_out);
}

struct trapped_water_pressure_results {
    AbsolutePressure end_pressure;  // absolute pressure then
    PressureDifference pressure_rise;  // rise; negative near 0 degC, where water shrinks as it warms
};

/// Pressure of water that warms in a closed space full of it, by the steam tables: v(T_2, p_2)/v(T_1, p_1) = (1 + alpha_w (T_2 - T_1))^3 (1 + X (p_2 - p_1)), X = (D/(2 E w))(2.5 - 2 mu), v by IAPWS-IF97 region 1. Source: balance of volumes; v: IAPWS R7-97(2012), clause 5.1; X: API 521 5th edition 2007, 5.14 (its variables read, the formula from memory).
inline trapped_water_pressure_results trapped_water_pressure(Temperature start_temperature, AbsolutePressure start_pressure, Temperature end_temperature, Length diameter, Length wall, ThermalExpansion wall_expansion = unit<ThermalExpansion>("1e-6/K")(12), PressureDifference modulus = unit<PressureDifference>("GPa")(200), Ratio poisson = unit<Ratio>("")(0.3))
{
    cutwater_refusal refusal;
    double end_pressure_out;
    double pressure_rise_out;
    detail::check(cutwater_trapped_water_pressure(detail::number_in(unit<Temperature>("degC"), start_temperature), detail::number_in(unit<AbsolutePressure>("bara"), start_pressure), detail::number_in(unit<Temperature>("degC"), end_temperature), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), wall), detail::number_in(unit<ThermalExpansion>("1e-6/K"), wall_expansion), detail::number_in(unit<PressureDifference>("GPa"), modulus), detail::number_in(unit<Ratio>(""), poisson), &end_pressure_out, &pressure_rise_out, &refusal), refusal);
    return {detail::quantity_of(unit<AbsolutePressure>("bara"), end_pressure_out), detail::quantity_of(unit<PressureDifference>("bar"), pressure_rise_out)};
}

}  // namespace cutwater

// generated from the catalogue by cutwater-generate; do not edit.
// Curves.
#pragma once

#include <cutwater/families/curves.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

/// Value of any curve between its points, in plain numbers: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Ratio curve_value(const std::vector<Ratio>& x_values, const std::vector<Ratio>& y_values, Ratio x)
{
    const std::vector<double> x_values_numbers = detail::numbers(unit<Ratio>(""), x_values);
    const std::vector<double> y_values_numbers = detail::numbers(unit<Ratio>(""), y_values);
    cutwater_refusal refusal;
    double y_out;
    detail::check(cutwater_curve_value(x_values_numbers.data(), x_values_numbers.size(), y_values_numbers.data(), y_values_numbers.size(), detail::number_in(unit<Ratio>(""), x), &y_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), y_out);
}

/// Slope of any curve between its points, in plain numbers: dy/dx of the curve that curve_value reads. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Ratio curve_slope(const std::vector<Ratio>& x_values, const std::vector<Ratio>& y_values, Ratio x)
{
    const std::vector<double> x_values_numbers = detail::numbers(unit<Ratio>(""), x_values);
    const std::vector<double> y_values_numbers = detail::numbers(unit<Ratio>(""), y_values);
    cutwater_refusal refusal;
    double slope_out;
    detail::check(cutwater_curve_slope(x_values_numbers.data(), x_values_numbers.size(), y_values_numbers.data(), y_values_numbers.size(), detail::number_in(unit<Ratio>(""), x), &slope_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), slope_out);
}

/// Head of a pump at a flow, from its curve: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Length curve_head(const std::vector<Flow>& flows, const std::vector<Length>& heads, Flow flow)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double head_out;
    detail::check(cutwater_curve_head(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Flow>("m3/h"), flow), &head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), head_out);
}

/// Pump power input at a flow, from its curve: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Power curve_power(const std::vector<Flow>& flows, const std::vector<Power>& powers, Flow flow)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    cutwater_refusal refusal;
    double power_out;
    detail::check(cutwater_curve_power(flows_numbers.data(), flows_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<Flow>("m3/h"), flow), &power_out, &refusal), refusal);
    return detail::quantity_of(unit<Power>("kW"), power_out);
}

/// Pump efficiency at a flow, from its curve: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Fraction curve_efficiency(const std::vector<Flow>& flows, const std::vector<Fraction>& efficiencies, Flow flow)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_curve_efficiency(flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Flow>("m3/h"), flow), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

/// NPSH3 of a pump at a flow, from its curve: cubic between neighbouring points, with slopes that keep their rise and fall; exact at the points. Source: F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, slopes inside; C. Moler, Numerical Computing with MATLAB (2004), 3.4, slopes at the ends (from memory of both; agrees with SciPy's PchipInterpolator).
inline Length curve_npsh3(const std::vector<Flow>& flows, const std::vector<Length>& npsh3_values, Flow flow)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> npsh3_values_numbers = detail::numbers(unit<Length>("m"), npsh3_values);
    cutwater_refusal refusal;
    double npsh3_out;
    detail::check(cutwater_curve_npsh3(flows_numbers.data(), flows_numbers.size(), npsh3_values_numbers.data(), npsh3_values_numbers.size(), detail::number_in(unit<Flow>("m3/h"), flow), &npsh3_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), npsh3_out);
}

/// Flow at which the pump's curve meets the system's: H_pump(Q) = H_s + k Q^2; all meetings over the curve's range are looked for. Source: definition of the duty point, common practice; the pump curve between its points as in curve_head.
inline Flow duty_flow(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length static_head, SystemResistance resistance)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double duty_flow_out;
    detail::check(cutwater_duty_flow(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), &duty_flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), duty_flow_out);
}

/// Head at which the pump's curve meets the system's: H_pump(Q) = H_s + k Q^2; all meetings over the curve's range are looked for. Source: definition of the duty point, common practice; the pump curve between its points as in curve_head.
inline Length duty_head(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length static_head, SystemResistance resistance)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double duty_head_out;
    detail::check(cutwater_duty_head(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), &duty_head_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("m"), duty_head_out);
}

/// Speed at which a pump gives a duty: n' = n Q_d/Q_x; Q_x is where H = H_d (Q/Q_d)^2 meets the curve. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline RotationalSpeed speed_for_duty(const std::vector<Flow>& flows, const std::vector<Length>& heads, RotationalSpeed speed, Flow duty_flow, Length duty_head)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double new_speed_out;
    detail::check(cutwater_speed_for_duty(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<Flow>("m3/h"), duty_flow), detail::number_in(unit<Length>("m"), duty_head), &new_speed_out, &refusal), refusal);
    return detail::quantity_of(unit<RotationalSpeed>("1/min"), new_speed_out);
}

/// Impeller diameter at which a pump gives a duty: D' = D Q_d/Q_x, where H = H_d (Q/Q_d)^2 meets the curve at Q_x; for the line D' = D sqrt(Q_d/Q_x), H = H_d Q/Q_d. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline Length trim_for_duty(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length diameter, Flow duty_flow, Length duty_head, const char* trim_law = "line")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double trimmed_diameter_out;
    detail::check(cutwater_trim_for_duty(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Flow>("m3/h"), duty_flow), detail::number_in(unit<Length>("m"), duty_head), trim_law, &trimmed_diameter_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("mm"), trimmed_diameter_out);
}

/// Impeller diameter at which a pump gives a duty a little below its curve, by ISO 9906's relation for cuts of up to 5 %: D' = sqrt(D_1^2 + R^2 (D^2 - D_1^2)), R = Q_d/Q_x, where H = H_d (Q/Q_d)^2 meets the curve at Q_x. Source: ISO 9906:2012, reduction of the impeller diameter after a test (relation from memory of it); its limits, a cut of 5 %, type number up to 1.5, the same vane shape after the cut, and that it takes the mean diameter of the vanes' leading edges: read in a trade encyclopaedia (excerpt).
inline Length small_trim_for_duty(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length diameter, Length inlet_diameter, Flow duty_flow, Length duty_head)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double trimmed_diameter_out;
    detail::check(cutwater_small_trim_for_duty(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), inlet_diameter), detail::number_in(unit<Flow>("m3/h"), duty_flow), detail::number_in(unit<Length>("m"), duty_head), &trimmed_diameter_out, &refusal), refusal);
    return detail::quantity_of(unit<Length>("mm"), trimmed_diameter_out);
}

/// Flow at which a pump's efficiency is highest: peak of the parabola through the point of highest efficiency and its two neighbours. Source: best efficiency point by ISO 17769-1:2012 (from memory of it); the parabola is common practice.
inline Flow best_efficiency_flow(const std::vector<Flow>& flows, const std::vector<Fraction>& efficiencies)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_best_efficiency_flow(flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), &flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), flow_out);
}

/// Highest efficiency of a pump's curve: peak of the parabola through the point of highest efficiency and its two neighbours. Source: best efficiency point by ISO 17769-1:2012 (from memory of it); the parabola is common practice.
inline Fraction best_efficiency(const std::vector<Flow>& flows, const std::vector<Fraction>& efficiencies)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    double efficiency_out;
    detail::check(cutwater_best_efficiency(flows_numbers.data(), flows_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), &efficiency_out, &refusal), refusal);
    return detail::quantity_of(unit<Fraction>(""), efficiency_out);
}

struct curve_at_speed_results {
    std::vector<Flow> new_flows;  // flows at the new speed
    std::vector<Length> new_heads;  // heads at the new speed
};

/// Head curve of a pump at another speed: Q' = Q n'/n; H' = H (n'/n)^2. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline curve_at_speed_results curve_at_speed(const std::vector<Flow>& flows, const std::vector<Length>& heads, RotationalSpeed speed, RotationalSpeed new_speed)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    std::vector<double> new_flows_out;
    std::size_t new_flows_count = 0;
    std::vector<double> new_heads_out;
    std::size_t new_heads_count = 0;
    cutwater_status status = cutwater_curve_at_speed(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), new_flows_out.data(), new_flows_out.size(), &new_flows_count, new_heads_out.data(), new_heads_out.size(), &new_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        new_flows_out.resize(new_flows_count);
        new_heads_out.resize(new_heads_count);
        status = cutwater_curve_at_speed(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), new_flows_out.data(), new_flows_out.size(), &new_flows_count, new_heads_out.data(), new_heads_out.size(), &new_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), new_flows_out), detail::quantities(unit<Length>("m"), new_heads_out)};
}

struct power_curve_at_speed_results {
    std::vector<Flow> new_flows;  // flows at the new speed
    std::vector<Power> new_powers;  // power inputs at the new speed
};

/// Power curve of a pump at another speed: Q' = Q n'/n; P' = P (n'/n)^3. Source: Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt read); limits of the ratio 0.25 to 2: set here.
inline power_curve_at_speed_results power_curve_at_speed(const std::vector<Flow>& flows, const std::vector<Power>& powers, RotationalSpeed speed, RotationalSpeed new_speed)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    cutwater_refusal refusal;
    std::vector<double> new_flows_out;
    std::size_t new_flows_count = 0;
    std::vector<double> new_powers_out;
    std::size_t new_powers_count = 0;
    cutwater_status status = cutwater_power_curve_at_speed(flows_numbers.data(), flows_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), new_flows_out.data(), new_flows_out.size(), &new_flows_count, new_powers_out.data(), new_powers_out.size(), &new_powers_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        new_flows_out.resize(new_flows_count);
        new_powers_out.resize(new_powers_count);
        status = cutwater_power_curve_at_speed(flows_numbers.data(), flows_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<RotationalSpeed>("1/min"), new_speed), new_flows_out.data(), new_flows_out.size(), &new_flows_count, new_powers_out.data(), new_powers_out.size(), &new_powers_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), new_flows_out), detail::quantities(unit<Power>("kW"), new_powers_out)};
}

struct curve_at_trim_results {
    std::vector<Flow> trimmed_flows;  // flows at the trimmed diameter
    std::vector<Length> trimmed_heads;  // heads at the trimmed diameter
};

/// Head curve of a pump with its impeller trimmed: Q' = Q (D'/D)^1 or ^2; H' = H (D'/D)^2. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline curve_at_trim_results curve_at_trim(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length diameter, Length trimmed_diameter, const char* trim_law = "parabola")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    std::vector<double> trimmed_flows_out;
    std::size_t trimmed_flows_count = 0;
    std::vector<double> trimmed_heads_out;
    std::size_t trimmed_heads_count = 0;
    cutwater_status status = cutwater_curve_at_trim(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), trim_law, trimmed_flows_out.data(), trimmed_flows_out.size(), &trimmed_flows_count, trimmed_heads_out.data(), trimmed_heads_out.size(), &trimmed_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        trimmed_flows_out.resize(trimmed_flows_count);
        trimmed_heads_out.resize(trimmed_heads_count);
        status = cutwater_curve_at_trim(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), trim_law, trimmed_flows_out.data(), trimmed_flows_out.size(), &trimmed_flows_count, trimmed_heads_out.data(), trimmed_heads_out.size(), &trimmed_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), trimmed_flows_out), detail::quantities(unit<Length>("m"), trimmed_heads_out)};
}

struct power_curve_at_trim_results {
    std::vector<Flow> trimmed_flows;  // flows at the trimmed diameter
    std::vector<Power> trimmed_powers;  // power inputs at the trimmed diameter
};

/// Power curve of a pump with its impeller trimmed: Q' = Q (D'/D)^1 or ^2; P' = P (D'/D)^3 or ^4. Source: exponents (1, 2, 3): Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.7 (excerpt read); (2, 2, 4): common practice; limit of the ratio 0.7: set here.
inline power_curve_at_trim_results power_curve_at_trim(const std::vector<Flow>& flows, const std::vector<Power>& powers, Length diameter, Length trimmed_diameter, const char* trim_law = "parabola")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    cutwater_refusal refusal;
    std::vector<double> trimmed_flows_out;
    std::size_t trimmed_flows_count = 0;
    std::vector<double> trimmed_powers_out;
    std::size_t trimmed_powers_count = 0;
    cutwater_status status = cutwater_power_curve_at_trim(flows_numbers.data(), flows_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), trim_law, trimmed_flows_out.data(), trimmed_flows_out.size(), &trimmed_flows_count, trimmed_powers_out.data(), trimmed_powers_out.size(), &trimmed_powers_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        trimmed_flows_out.resize(trimmed_flows_count);
        trimmed_powers_out.resize(trimmed_powers_count);
        status = cutwater_power_curve_at_trim(flows_numbers.data(), flows_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<Length>("mm"), diameter), detail::number_in(unit<Length>("mm"), trimmed_diameter), trim_law, trimmed_flows_out.data(), trimmed_flows_out.size(), &trimmed_flows_count, trimmed_powers_out.data(), trimmed_powers_out.size(), &trimmed_powers_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), trimmed_flows_out), detail::quantities(unit<Power>("kW"), trimmed_powers_out)};
}

struct curve_viscous_results {
    std::vector<Flow> viscous_flows;  // flows on the viscous liquid
    std::vector<Length> viscous_heads;  // heads on the viscous liquid
    std::vector<Fraction> viscous_efficiencies;  // efficiencies on the viscous liquid
};

/// Curves of head and efficiency on a viscous liquid, from those on water: Q_vis = C_Q Q; H_vis = C_H(Q/Q_BEP) H; eta_vis = C_eta eta; Q_BEP and H_BEP from the curve on water. Source: ISO/TR 17766:2005, clause 6, the same method as ANSI/HI 9.6.7-2004 (from memory of it, checked against its two worked examples as reproduced in public literature); this edition only.
inline curve_viscous_results curve_viscous(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, RotationalSpeed speed, KinematicViscosity viscosity, Count stages = unit<Count>("")(1), KinematicViscosity water_viscosity = unit<KinematicViscosity>("mm2/s")(1), const char* near_one = "as printed")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    std::vector<double> viscous_flows_out;
    std::size_t viscous_flows_count = 0;
    std::vector<double> viscous_heads_out;
    std::size_t viscous_heads_count = 0;
    std::vector<double> viscous_efficiencies_out;
    std::size_t viscous_efficiencies_count = 0;
    cutwater_status status = cutwater_curve_viscous(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Count>(""), stages), detail::number_in(unit<KinematicViscosity>("mm2/s"), water_viscosity), near_one, viscous_flows_out.data(), viscous_flows_out.size(), &viscous_flows_count, viscous_heads_out.data(), viscous_heads_out.size(), &viscous_heads_count, viscous_efficiencies_out.data(), viscous_efficiencies_out.size(), &viscous_efficiencies_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        viscous_flows_out.resize(viscous_flows_count);
        viscous_heads_out.resize(viscous_heads_count);
        viscous_efficiencies_out.resize(viscous_efficiencies_count);
        status = cutwater_curve_viscous(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), speed), detail::number_in(unit<KinematicViscosity>("mm2/s"), viscosity), detail::number_in(unit<Count>(""), stages), detail::number_in(unit<KinematicViscosity>("mm2/s"), water_viscosity), near_one, viscous_flows_out.data(), viscous_flows_out.size(), &viscous_flows_count, viscous_heads_out.data(), viscous_heads_out.size(), &viscous_heads_count, viscous_efficiencies_out.data(), viscous_efficiencies_out.size(), &viscous_efficiencies_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), viscous_flows_out), detail::quantities(unit<Length>("m"), viscous_heads_out), detail::quantities(unit<Fraction>(""), viscous_efficiencies_out)};
}

struct curve_in_parallel_results {
    std::vector<Flow> total_flows;  // flows of all together
    std::vector<Length> total_heads;  // heads of all together
};

/// Head curve of equal pumps in parallel: Q_sum = z Q at the same H. Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it).
inline curve_in_parallel_results curve_in_parallel(const std::vector<Flow>& flows, const std::vector<Length>& heads, Count pumps)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    std::vector<double> total_flows_out;
    std::size_t total_flows_count = 0;
    std::vector<double> total_heads_out;
    std::size_t total_heads_count = 0;
    cutwater_status status = cutwater_curve_in_parallel(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Count>(""), pumps), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        total_flows_out.resize(total_flows_count);
        total_heads_out.resize(total_heads_count);
        status = cutwater_curve_in_parallel(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Count>(""), pumps), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), total_flows_out), detail::quantities(unit<Length>("m"), total_heads_out)};
}

struct curve_in_series_results {
    std::vector<Flow> total_flows;  // flows of all together
    std::vector<Length> total_heads;  // heads of all together
};

/// Head curve of equal pumps or stages in series: H_sum = z H at the same Q. Source: heads add at the same flow; common practice, as in ISO 17769-1:2012, series operation (from memory of it).
inline curve_in_series_results curve_in_series(const std::vector<Flow>& flows, const std::vector<Length>& heads, Count pumps)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    std::vector<double> total_flows_out;
    std::size_t total_flows_count = 0;
    std::vector<double> total_heads_out;
    std::size_t total_heads_count = 0;
    cutwater_status status = cutwater_curve_in_series(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Count>(""), pumps), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        total_flows_out.resize(total_flows_count);
        total_heads_out.resize(total_heads_count);
        status = cutwater_curve_in_series(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Count>(""), pumps), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), total_flows_out), detail::quantities(unit<Length>("m"), total_heads_out)};
}

struct two_curves_in_parallel_results {
    std::vector<Flow> total_flows;  // flows of both together, down to the head at which one curve ends
    std::vector<Length> total_heads;  // heads of both together
};

/// Head curve of two unlike pumps in parallel, each behind a non-return valve: Q_sum(H) = Q_1(H) + Q_2(H); a pump gives nothing above its own closed-valve head. Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it).
inline two_curves_in_parallel_results two_curves_in_parallel(const std::vector<Flow>& flows_1, const std::vector<Length>& heads_1, const std::vector<Flow>& flows_2, const std::vector<Length>& heads_2)
{
    const std::vector<double> flows_1_numbers = detail::numbers(unit<Flow>("m3/h"), flows_1);
    const std::vector<double> heads_1_numbers = detail::numbers(unit<Length>("m"), heads_1);
    const std::vector<double> flows_2_numbers = detail::numbers(unit<Flow>("m3/h"), flows_2);
    const std::vector<double> heads_2_numbers = detail::numbers(unit<Length>("m"), heads_2);
    cutwater_refusal refusal;
    std::vector<double> total_flows_out;
    std::size_t total_flows_count = 0;
    std::vector<double> total_heads_out;
    std::size_t total_heads_count = 0;
    cutwater_status status = cutwater_two_curves_in_parallel(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        total_flows_out.resize(total_flows_count);
        total_heads_out.resize(total_heads_count);
        status = cutwater_two_curves_in_parallel(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), total_flows_out), detail::quantities(unit<Length>("m"), total_heads_out)};
}

struct two_curves_in_series_results {
    std::vector<Flow> total_flows;  // flows that both curves reach
    std::vector<Length> total_heads;  // heads of both together
};

/// Head curve of two unlike pumps in series: H_sum(Q) = H_1(Q) + H_2(Q). Source: heads add at the same flow; common practice, as in ISO 17769-1:2012, series operation (from memory of it).
inline two_curves_in_series_results two_curves_in_series(const std::vector<Flow>& flows_1, const std::vector<Length>& heads_1, const std::vector<Flow>& flows_2, const std::vector<Length>& heads_2)
{
    const std::vector<double> flows_1_numbers = detail::numbers(unit<Flow>("m3/h"), flows_1);
    const std::vector<double> heads_1_numbers = detail::numbers(unit<Length>("m"), heads_1);
    const std::vector<double> flows_2_numbers = detail::numbers(unit<Flow>("m3/h"), flows_2);
    const std::vector<double> heads_2_numbers = detail::numbers(unit<Length>("m"), heads_2);
    cutwater_refusal refusal;
    std::vector<double> total_flows_out;
    std::size_t total_flows_count = 0;
    std::vector<double> total_heads_out;
    std::size_t total_heads_count = 0;
    cutwater_status status = cutwater_two_curves_in_series(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        total_flows_out.resize(total_flows_count);
        total_heads_out.resize(total_heads_count);
        status = cutwater_two_curves_in_series(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), total_flows_out.data(), total_flows_out.size(), &total_flows_count, total_heads_out.data(), total_heads_out.size(), &total_heads_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), total_flows_out), detail::quantities(unit<Length>("m"), total_heads_out)};
}

struct flow_balance_results {
    Flow total_flow;  // flow through the system
    Length head;  // head common to both
    Flow flow_1;  // flow of pump 1
    Flow flow_2;  // flow of pump 2
    const char* delivering;  // whether one of them delivers nothing, the head being above its closed-valve head
};

/// Duty of two unlike pumps in parallel on one system, and each pump's share: Q = Q_1(H) + Q_2(H), H = H_s + k Q^2. Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it).
inline flow_balance_results flow_balance(const std::vector<Flow>& flows_1, const std::vector<Length>& heads_1, const std::vector<Flow>& flows_2, const std::vector<Length>& heads_2, Length static_head, SystemResistance resistance)
{
    const std::vector<double> flows_1_numbers = detail::numbers(unit<Flow>("m3/h"), flows_1);
    const std::vector<double> heads_1_numbers = detail::numbers(unit<Length>("m"), heads_1);
    const std::vector<double> flows_2_numbers = detail::numbers(unit<Flow>("m3/h"), flows_2);
    const std::vector<double> heads_2_numbers = detail::numbers(unit<Length>("m"), heads_2);
    cutwater_refusal refusal;
    double total_flow_out;
    double head_out;
    double flow_1_out;
    double flow_2_out;
    const char* delivering_out;
    detail::check(cutwater_flow_balance(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), &total_flow_out, &head_out, &flow_1_out, &flow_2_out, &delivering_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), total_flow_out), detail::quantity_of(unit<Length>("m"), head_out), detail::quantity_of(unit<Flow>("m3/h"), flow_1_out), detail::quantity_of(unit<Flow>("m3/h"), flow_2_out), delivering_out};
}

struct flow_balance_of_three_results {
    Flow total_flow;  // flow through the system
    Length head;  // head common to all
    Flow flow_1;  // flow of pump 1
    Flow flow_2;  // flow of pump 2
    Flow flow_3;  // flow of pump 3
    const char* delivering;  // the pumps that deliver; the head is above the closed-valve head of any other
};

/// Duty of three unlike pumps in parallel on one system, and each pump's share: Q = Q_1(H) + Q_2(H) + Q_3(H), H = H_s + k Q^2; a pump gives nothing above its own closed-valve head. Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it).
inline flow_balance_of_three_results flow_balance_of_three(const std::vector<Flow>& flows_1, const std::vector<Length>& heads_1, const std::vector<Flow>& flows_2, const std::vector<Length>& heads_2, const std::vector<Flow>& flows_3, const std::vector<Length>& heads_3, Length static_head, SystemResistance resistance)
{
    const std::vector<double> flows_1_numbers = detail::numbers(unit<Flow>("m3/h"), flows_1);
    const std::vector<double> heads_1_numbers = detail::numbers(unit<Length>("m"), heads_1);
    const std::vector<double> flows_2_numbers = detail::numbers(unit<Flow>("m3/h"), flows_2);
    const std::vector<double> heads_2_numbers = detail::numbers(unit<Length>("m"), heads_2);
    const std::vector<double> flows_3_numbers = detail::numbers(unit<Flow>("m3/h"), flows_3);
    const std::vector<double> heads_3_numbers = detail::numbers(unit<Length>("m"), heads_3);
    cutwater_refusal refusal;
    double total_flow_out;
    double head_out;
    double flow_1_out;
    double flow_2_out;
    double flow_3_out;
    const char* delivering_out;
    detail::check(cutwater_flow_balance_of_three(flows_1_numbers.data(), flows_1_numbers.size(), heads_1_numbers.data(), heads_1_numbers.size(), flows_2_numbers.data(), flows_2_numbers.size(), heads_2_numbers.data(), heads_2_numbers.size(), flows_3_numbers.data(), flows_3_numbers.size(), heads_3_numbers.data(), heads_3_numbers.size(), detail::number_in(unit<Length>("m"), static_head), detail::number_in(unit<SystemResistance>("h2/m5"), resistance), &total_flow_out, &head_out, &flow_1_out, &flow_2_out, &flow_3_out, &delivering_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), total_flow_out), detail::quantity_of(unit<Length>("m"), head_out), detail::quantity_of(unit<Flow>("m3/h"), flow_1_out), detail::quantity_of(unit<Flow>("m3/h"), flow_2_out), detail::quantity_of(unit<Flow>("m3/h"), flow_3_out), delivering_out};
}

struct flow_at_head_results {
    Flow flow;  // flow at that head; 0 from the closed-valve head on
    const char* share;  // whether the pump delivers or is pushed back to no flow
};

/// Flow of a pump behind its non-return valve at a given head: its share when others in parallel set the head: H_pump(Q) = H; Q = 0 where H >= H_pump(0). Source: flows add at the same head; common practice, as in ISO 17769-1:2012, parallel operation (from memory of it).
inline flow_at_head_results flow_at_head(const std::vector<Flow>& flows, const std::vector<Length>& heads, Length head)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double flow_out;
    const char* share_out;
    detail::check(cutwater_flow_at_head(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Length>("m"), head), &flow_out, &share_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), flow_out), share_out};
}

/// Flow that a bore carries at a mean velocity: Q = pi/4 d^2 v. Source: continuity; common practice.
inline Flow flow_through_bore(Length bore, Velocity velocity)
{
    cutwater_refusal refusal;
    double flow_out;
    detail::check(cutwater_flow_through_bore(detail::number_in(unit<Length>("mm"), bore), detail::number_in(unit<Velocity>("m/s"), velocity), &flow_out, &refusal), refusal);
    return detail::quantity_of(unit<Flow>("m3/h"), flow_out);
}

/// Rise of the head from the rated flow to closed valve, as a part of the rated head: (H_0 - H_r)/H_r, H_0 at no flow, H_r of the curve at Q_r. Source: definition; common practice, as in ISO 13709:2009, head rise from rated point to shut-off (from memory of it).
inline Ratio shutoff_head_rise(const std::vector<Flow>& flows, const std::vector<Length>& heads, Flow rated_flow)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double head_rise_out;
    detail::check(cutwater_shutoff_head_rise(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Flow>("m3/h"), rated_flow), &head_rise_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), head_rise_out);
}

struct curve_is_stable_results {
    const char* shape;  // stable: falls from point to point; flat: level between some; drooping: rises first; dipping: rises after it has fallen
    Flow top_flow;  // flow of the greatest listed head
    Length top_head;  // greatest listed head
};

/// Whether the head falls all the way with rising flow: stable when every H_i is less than the one before it. Source: stable and unstable curve, ISO 17769-1:2012 (from memory of it).
inline curve_is_stable_results curve_is_stable(const std::vector<Flow>& flows, const std::vector<Length>& heads)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    const char* shape_out;
    double top_flow_out;
    double top_head_out;
    detail::check(cutwater_curve_is_stable(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), &shape_out, &top_flow_out, &top_head_out, &refusal), refusal);
    return {shape_out, detail::quantity_of(unit<Flow>("m3/h"), top_flow_out), detail::quantity_of(unit<Length>("m"), top_head_out)};
}

struct curve_fit_results {
    std::vector<Ratio> coefficients;  // y = a_0 + a_1 x + a_2 x^2 + …
    Ratio determination;  // 1 when the curve goes through every point
    Ratio deviation;  // standard deviation of the points about the curve, in the unit of y; 0 when no point is to spare
};

/// Polynomial through measured points by least squares, with its goodness of fit: sum of (y_i - y(x_i))^2 least; R^2 = 1 - sum (y_i - y(x_i))^2/sum (y_i - mean)^2; s^2 = sum (y_i - y(x_i))^2/(N - m - 1). Source: least squares by orthogonal polynomials, G. E. Forsythe, J. SIAM 5 (1957) 74-88 (from memory of it; agrees with NumPy's polyfit).
inline curve_fit_results curve_fit(const std::vector<Ratio>& x_values, const std::vector<Ratio>& y_values, Count degree)
{
    const std::vector<double> x_values_numbers = detail::numbers(unit<Ratio>(""), x_values);
    const std::vector<double> y_values_numbers = detail::numbers(unit<Ratio>(""), y_values);
    cutwater_refusal refusal;
    std::vector<double> coefficients_out;
    std::size_t coefficients_count = 0;
    double determination_out;
    double deviation_out;
    cutwater_status status = cutwater_curve_fit(x_values_numbers.data(), x_values_numbers.size(), y_values_numbers.data(), y_values_numbers.size(), detail::number_in(unit<Count>(""), degree), coefficients_out.data(), coefficients_out.size(), &coefficients_count, &determination_out, &deviation_out, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        coefficients_out.resize(coefficients_count);
        status = cutwater_curve_fit(x_values_numbers.data(), x_values_numbers.size(), y_values_numbers.data(), y_values_numbers.size(), detail::number_in(unit<Count>(""), degree), coefficients_out.data(), coefficients_out.size(), &coefficients_count, &determination_out, &deviation_out, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Ratio>(""), coefficients_out), detail::quantity_of(unit<Ratio>(""), determination_out), detail::quantity_of(unit<Ratio>(""), deviation_out)};
}

/// Value of the least-squares polynomial through measured points: y(x) of the polynomial that curve_fit finds. Source: least squares by orthogonal polynomials, G. E. Forsythe, J. SIAM 5 (1957) 74-88 (from memory of it; agrees with NumPy's polyfit).
inline Ratio fitted_value(const std::vector<Ratio>& x_values, const std::vector<Ratio>& y_values, Count degree, Ratio x)
{
    const std::vector<double> x_values_numbers = detail::numbers(unit<Ratio>(""), x_values);
    const std::vector<double> y_values_numbers = detail::numbers(unit<Ratio>(""), y_values);
    cutwater_refusal refusal;
    double y_out;
    detail::check(cutwater_fitted_value(x_values_numbers.data(), x_values_numbers.size(), y_values_numbers.data(), y_values_numbers.size(), detail::number_in(unit<Count>(""), degree), detail::number_in(unit<Ratio>(""), x), &y_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>(""), y_out);
}

}  // namespace cutwater

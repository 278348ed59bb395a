// generated from the catalogue by cutwater-generate; do not edit.
// Acceptance test.
#pragma once

#include <cutwater/families/acceptance.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <cstddef>
#include <vector>

namespace cutwater {

struct acceptance_tolerances_results {
    Ratio flow_low;  // lowest flow, -0.05 for 5 % below
    Ratio flow_high;  // highest flow
    Ratio head_low;  // lowest head
    Ratio head_high;  // highest head
    Ratio power_high;  // highest power; no lower limit
    Ratio efficiency_low;  // lowest efficiency, as a part of the guaranteed one; no upper limit
};

/// Tolerances of an acceptance grade, as parts of the guaranteed values: by the grade; up to 10 kW, by the standard's rule: tau_Q = +-10 %, tau_H = +-8 %, tau_eta = -[10 (1 - P/10 kW) + 7] %, tau_P = sqrt(7^2 + tau_eta^2) %. Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it; its 10 % of flow and 8 % of head read in two trade articles).
inline acceptance_tolerances_results acceptance_tolerances(const char* grade, Power power_input, const char* small_pump_rule = "standard")
{
    cutwater_refusal refusal;
    double flow_low_out;
    double flow_high_out;
    double head_low_out;
    double head_high_out;
    double power_high_out;
    double efficiency_low_out;
    detail::check(cutwater_acceptance_tolerances(grade, detail::number_in(unit<Power>("kW"), power_input), small_pump_rule, &flow_low_out, &flow_high_out, &head_low_out, &head_high_out, &power_high_out, &efficiency_low_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), flow_low_out), detail::quantity_of(unit<Ratio>(""), flow_high_out), detail::quantity_of(unit<Ratio>(""), head_low_out), detail::quantity_of(unit<Ratio>(""), head_high_out), detail::quantity_of(unit<Ratio>(""), power_high_out), detail::quantity_of(unit<Ratio>(""), efficiency_low_out)};
}

struct acceptance_limits_results {
    Ratio lowest;  // in the same unit; 0 for power, which has no lower limit
    Ratio highest;  // in the same unit; 1 for efficiency, which has no upper limit
};

/// Lowest and highest measured value that an acceptance grade allows: G_low = G (1 + tau_low), G_high = G (1 + tau_high). Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it; its 10 % of flow and 8 % of head read in two trade articles).
inline acceptance_limits_results acceptance_limits(const char* grade, const char* quantity, Ratio guaranteed_value, Power power_input, const char* small_pump_rule = "standard")
{
    cutwater_refusal refusal;
    double lowest_out;
    double highest_out;
    detail::check(cutwater_acceptance_limits(grade, quantity, detail::number_in(unit<Ratio>(""), guaranteed_value), detail::number_in(unit<Power>("kW"), power_input), small_pump_rule, &lowest_out, &highest_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), lowest_out), detail::quantity_of(unit<Ratio>(""), highest_out)};
}

struct acceptance_verdict_results {
    const char* verdict;  // pass when the curve crosses or touches at least one bar of the tolerance cross
    Length head_at_flow;  // measured head at the guaranteed flow
    Flow flow_at_head;  // measured flow at the guaranteed head, the one on the level bar if there are several; where the curve comes nearest to it if it has it nowhere
};

/// Whether a measured head curve keeps the guaranteed flow and head: H_G (1 + tau_H-) <= H(Q_G) <= H_G (1 + tau_H+), or Q_G (1 + tau_Q-) <= Q(H_G) <= Q_G (1 + tau_Q+). Source: ISO 9906:2012, 4.4 and evaluation of flow and head (from memory of it; an excerpt on the tolerance cross read).
inline acceptance_verdict_results acceptance_verdict(const char* grade, Flow guaranteed_flow, Length guaranteed_head, const std::vector<Flow>& flows, const std::vector<Length>& heads, Power power_input, const char* small_pump_rule = "standard")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    const char* verdict_out;
    double head_at_flow_out;
    double flow_at_head_out;
    detail::check(cutwater_acceptance_verdict(grade, detail::number_in(unit<Flow>("m3/h"), guaranteed_flow), detail::number_in(unit<Length>("m"), guaranteed_head), flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Power>("kW"), power_input), small_pump_rule, &verdict_out, &head_at_flow_out, &flow_at_head_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Length>("m"), head_at_flow_out), detail::quantity_of(unit<Flow>("m3/h"), flow_at_head_out)};
}

struct acceptance_verdict_efficiency_results {
    const char* verdict;  // pass when the efficiency there is not below its limit
    Fraction efficiency;  // measured efficiency there
    Flow flow;  // flow at which the line from the origin through the guaranteed point meets the head curve, the nearest to Q_G if it meets it more than once
};

/// Whether measured curves keep the guaranteed efficiency: eta(Q) >= eta_G (1 + tau_eta) where H(Q) = H_G Q/Q_G. Source: ISO 9906:2012, 4.4 and evaluation of efficiency and power on the line through the origin (from memory of it).
inline acceptance_verdict_efficiency_results acceptance_verdict_efficiency(const char* grade, Flow guaranteed_flow, Length guaranteed_head, Fraction guaranteed_efficiency, const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Fraction>& efficiencies, Power power_input, const char* small_pump_rule = "standard")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> efficiencies_numbers = detail::numbers(unit<Fraction>(""), efficiencies);
    cutwater_refusal refusal;
    const char* verdict_out;
    double efficiency_out;
    double flow_out;
    detail::check(cutwater_acceptance_verdict_efficiency(grade, detail::number_in(unit<Flow>("m3/h"), guaranteed_flow), detail::number_in(unit<Length>("m"), guaranteed_head), detail::number_in(unit<Fraction>(""), guaranteed_efficiency), flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), efficiencies_numbers.data(), efficiencies_numbers.size(), detail::number_in(unit<Power>("kW"), power_input), small_pump_rule, &verdict_out, &efficiency_out, &flow_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Fraction>(""), efficiency_out), detail::quantity_of(unit<Flow>("m3/h"), flow_out)};
}

struct acceptance_verdict_power_results {
    const char* verdict;  // pass when the power there is not above its limit
    Power power;  // measured power input there
    Flow flow;  // flow at which the line from the origin through the guaranteed point meets the head curve, the nearest to Q_G if it meets it more than once
};

/// Whether measured curves keep the guaranteed power input: P(Q) <= P_G (1 + tau_P) where H(Q) = H_G Q/Q_G. Source: ISO 9906:2012, 4.4 and evaluation of efficiency and power on the line through the origin (from memory of it).
inline acceptance_verdict_power_results acceptance_verdict_power(const char* grade, Flow guaranteed_flow, Length guaranteed_head, Power guaranteed_power, const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Power>& powers, Power power_input, const char* small_pump_rule = "standard")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    cutwater_refusal refusal;
    const char* verdict_out;
    double power_out;
    double flow_out;
    detail::check(cutwater_acceptance_verdict_power(grade, detail::number_in(unit<Flow>("m3/h"), guaranteed_flow), detail::number_in(unit<Length>("m"), guaranteed_head), detail::number_in(unit<Power>("kW"), guaranteed_power), flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), powers_numbers.data(), powers_numbers.size(), detail::number_in(unit<Power>("kW"), power_input), small_pump_rule, &verdict_out, &power_out, &flow_out, &refusal), refusal);
    return {verdict_out, detail::quantity_of(unit<Power>("kW"), power_out), detail::quantity_of(unit<Flow>("m3/h"), flow_out)};
}

struct acceptance_margin_results {
    Ratio deviation;  // part of the guaranteed value, -0.02 for 2 % below
    Ratio margin;  // distance to the nearer limit; negative when outside its tolerance
};

/// Deviation of a measured value from the guaranteed one, and its margin in an acceptance grade: d = M/G - 1; m = min(d - tau_low, tau_high - d); power: m = tau_P - d; efficiency: m = d - tau_eta. Source: ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of it; its 10 % of flow and 8 % of head read in two trade articles).
inline acceptance_margin_results acceptance_margin(const char* grade, const char* quantity, Ratio guaranteed_value, Ratio measured_value, Power power_input, const char* small_pump_rule = "standard")
{
    cutwater_refusal refusal;
    double deviation_out;
    double margin_out;
    detail::check(cutwater_acceptance_margin(grade, quantity, detail::number_in(unit<Ratio>(""), guaranteed_value), detail::number_in(unit<Ratio>(""), measured_value), detail::number_in(unit<Power>("kW"), power_input), small_pump_rule, &deviation_out, &margin_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), deviation_out), detail::quantity_of(unit<Ratio>(""), margin_out)};
}

struct acceptance_margins_results {
    Ratio head_deviation;  // of the head at the guaranteed flow, as a part of the guaranteed head
    Ratio head_margin;  // distance to the nearer limit; negative when outside its tolerance
    Ratio flow_deviation;  // of the flow at the guaranteed head, as a part of the guaranteed flow
    Ratio flow_margin;  // distance to the nearer limit; negative when outside its tolerance
};

/// Deviations of a measured head curve from the guaranteed point, and their margins in an acceptance grade: d_H = H(Q_G)/H_G - 1; d_Q = Q(H_G)/Q_G - 1; m = min(d - tau_low, tau_high - d); the guarantee is kept when either margin is not negative. Source: ISO 9906:2012, 4.4 and evaluation of flow and head (from memory of it; an excerpt on the tolerance cross read).
inline acceptance_margins_results acceptance_margins(const char* grade, Flow guaranteed_flow, Length guaranteed_head, const std::vector<Flow>& flows, const std::vector<Length>& heads, Power power_input, const char* small_pump_rule = "standard")
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    cutwater_refusal refusal;
    double head_deviation_out;
    double head_margin_out;
    double flow_deviation_out;
    double flow_margin_out;
    detail::check(cutwater_acceptance_margins(grade, detail::number_in(unit<Flow>("m3/h"), guaranteed_flow), detail::number_in(unit<Length>("m"), guaranteed_head), flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), detail::number_in(unit<Power>("kW"), power_input), small_pump_rule, &head_deviation_out, &head_margin_out, &flow_deviation_out, &flow_margin_out, &refusal), refusal);
    return {detail::quantity_of(unit<Ratio>(""), head_deviation_out), detail::quantity_of(unit<Ratio>(""), head_margin_out), detail::quantity_of(unit<Ratio>(""), flow_deviation_out), detail::quantity_of(unit<Ratio>(""), flow_margin_out)};
}

struct test_to_rated_speed_results {
    Flow rated_flow;  // flow at the rated speed
    Length rated_head;  // head at the rated speed
    Power rated_power;  // power input at the rated speed and density
    Length rated_npsh3;  // NPSH3 at the rated speed
};

/// Measured values translated to the rated speed and density: Q_T = Q n_sp/n; H_T = H (n_sp/n)^2; P_T = P (n_sp/n)^3 rho_sp/rho; NPSH3_T = NPSH3 (n_sp/n)^x; the efficiency stays. Source: ISO 9906:2012, 6.1.2, translation of the test results (from memory of it).
inline test_to_rated_speed_results test_to_rated_speed(Flow flow, Length head, Power power, Length npsh3, RotationalSpeed test_speed, RotationalSpeed rated_speed, Density test_density, Density rated_density, Ratio npsh_exponent = unit<Ratio>("")(2))
{
    cutwater_refusal refusal;
    double rated_flow_out;
    double rated_head_out;
    double rated_power_out;
    double rated_npsh3_out;
    detail::check(cutwater_test_to_rated_speed(detail::number_in(unit<Flow>("m3/h"), flow), detail::number_in(unit<Length>("m"), head), detail::number_in(unit<Power>("kW"), power), detail::number_in(unit<Length>("m"), npsh3), detail::number_in(unit<RotationalSpeed>("1/min"), test_speed), detail::number_in(unit<RotationalSpeed>("1/min"), rated_speed), detail::number_in(unit<Density>("kg/m3"), test_density), detail::number_in(unit<Density>("kg/m3"), rated_density), detail::number_in(unit<Ratio>(""), npsh_exponent), &rated_flow_out, &rated_head_out, &rated_power_out, &rated_npsh3_out, &refusal), refusal);
    return {detail::quantity_of(unit<Flow>("m3/h"), rated_flow_out), detail::quantity_of(unit<Length>("m"), rated_head_out), detail::quantity_of(unit<Power>("kW"), rated_power_out), detail::quantity_of(unit<Length>("m"), rated_npsh3_out)};
}

struct test_points_to_rated_speed_results {
    std::vector<Flow> rated_flows;  // flows at the rated speed, in the order given
    std::vector<Length> rated_heads;  // heads at the rated speed
    std::vector<Power> rated_powers;  // power inputs at the rated speed and density
    std::vector<Fraction> efficiencies;  // pump efficiencies, which the translation keeps
};

/// All points of a test translated to the rated speed and density, with their efficiencies: Q_T = Q n_sp/n_i; H_T = H (n_sp/n_i)^2; P_T = P (n_sp/n_i)^3 rho_sp/rho; eta = rho g Q H/P. Source: ISO 9906:2012, 6.1.2, translation of the test results (from memory of it); efficiency by ISO 17769-1 (from memory of it).
inline test_points_to_rated_speed_results test_points_to_rated_speed(const std::vector<Flow>& flows, const std::vector<Length>& heads, const std::vector<Power>& powers, const std::vector<RotationalSpeed>& test_speeds, RotationalSpeed rated_speed, Density test_density, Density rated_density)
{
    const std::vector<double> flows_numbers = detail::numbers(unit<Flow>("m3/h"), flows);
    const std::vector<double> heads_numbers = detail::numbers(unit<Length>("m"), heads);
    const std::vector<double> powers_numbers = detail::numbers(unit<Power>("kW"), powers);
    const std::vector<double> test_speeds_numbers = detail::numbers(unit<RotationalSpeed>("1/min"), test_speeds);
    cutwater_refusal refusal;
    std::vector<double> rated_flows_out;
    std::size_t rated_flows_count = 0;
    std::vector<double> rated_heads_out;
    std::size_t rated_heads_count = 0;
    std::vector<double> rated_powers_out;
    std::size_t rated_powers_count = 0;
    std::vector<double> efficiencies_out;
    std::size_t efficiencies_count = 0;
    cutwater_status status = cutwater_test_points_to_rated_speed(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), powers_numbers.data(), powers_numbers.size(), test_speeds_numbers.data(), test_speeds_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), rated_speed), detail::number_in(unit<Density>("kg/m3"), test_density), detail::number_in(unit<Density>("kg/m3"), rated_density), rated_flows_out.data(), rated_flows_out.size(), &rated_flows_count, rated_heads_out.data(), rated_heads_out.size(), &rated_heads_count, rated_powers_out.data(), rated_powers_out.size(), &rated_powers_count, efficiencies_out.data(), efficiencies_out.size(), &efficiencies_count, &refusal);
    if (status == CUTWATER_BUFFER_TOO_SMALL) {  // the first call told the lengths
        rated_flows_out.resize(rated_flows_count);
        rated_heads_out.resize(rated_heads_count);
        rated_powers_out.resize(rated_powers_count);
        efficiencies_out.resize(efficiencies_count);
        status = cutwater_test_points_to_rated_speed(flows_numbers.data(), flows_numbers.size(), heads_numbers.data(), heads_numbers.size(), powers_numbers.data(), powers_numbers.size(), test_speeds_numbers.data(), test_speeds_numbers.size(), detail::number_in(unit<RotationalSpeed>("1/min"), rated_speed), detail::number_in(unit<Density>("kg/m3"), test_density), detail::number_in(unit<Density>("kg/m3"), rated_density), rated_flows_out.data(), rated_flows_out.size(), &rated_flows_count, rated_heads_out.data(), rated_heads_out.size(), &rated_heads_count, rated_powers_out.data(), rated_powers_out.size(), &rated_powers_count, efficiencies_out.data(), efficiencies_out.size(), &efficiencies_count, &refusal);
    }
    detail::check(status, refusal);
    return {detail::quantities(unit<Flow>("m3/h"), rated_flows_out), detail::quantities(unit<Length>("m"), rated_heads_out), detail::quantities(unit<Power>("kW"), rated_powers_out), detail::quantities(unit<Fraction>(""), efficiencies_out)};
}

/// Random part of a measured value's uncertainty, from repeated readings: e_R = 100 t s/(mean sqrt(N)), t by Student, 95 %, N - 1 degrees of freedom. Source: ISO 9906:2012, 4.3 (from memory of it).
inline Ratio random_uncertainty(const std::vector<Ratio>& readings)
{
    const std::vector<double> readings_numbers = detail::numbers(unit<Ratio>(""), readings);
    cutwater_refusal refusal;
    double random_out;
    detail::check(cutwater_random_uncertainty(readings_numbers.data(), readings_numbers.size(), &random_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>("%"), random_out);
}

/// Overall uncertainty of a measured value: e = sqrt(e_S^2 + e_R^2). Source: ISO 9906:2012, 4.3 (from memory of it).
inline Ratio measurement_uncertainty(Ratio systematic, Ratio random)
{
    cutwater_refusal refusal;
    double overall_out;
    detail::check(cutwater_measurement_uncertainty(detail::number_in(unit<Ratio>("%"), systematic), detail::number_in(unit<Ratio>("%"), random), &overall_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>("%"), overall_out);
}

/// Uncertainty of a measured efficiency, from those of what it is made of: e_eta = sqrt(e_Q^2 + e_H^2 + e_P^2 + e_n^2). Source: ISO 9906:2012, 4.3 (from memory of it).
inline Ratio efficiency_uncertainty(Ratio flow_uncertainty, Ratio head_uncertainty, Ratio power_uncertainty, Ratio speed_uncertainty = unit<Ratio>("%")(0))
{
    cutwater_refusal refusal;
    double efficiency_uncertainty_out;
    detail::check(cutwater_efficiency_uncertainty(detail::number_in(unit<Ratio>("%"), flow_uncertainty), detail::number_in(unit<Ratio>("%"), head_uncertainty), detail::number_in(unit<Ratio>("%"), power_uncertainty), detail::number_in(unit<Ratio>("%"), speed_uncertainty), &efficiency_uncertainty_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>("%"), efficiency_uncertainty_out);
}

/// Greatest overall uncertainty that an acceptance test may have: by the table; grades 2 and 3 have the same. Source: ISO 9906:2012, 4.3, Table 7 (from memory of it; the values for power and efficiency follow from the others by root-sum-square).
inline Ratio allowed_uncertainty(const char* test_grade, const char* quantity)
{
    cutwater_refusal refusal;
    double overall_out;
    detail::check(cutwater_allowed_uncertainty(test_grade, quantity, &overall_out, &refusal), refusal);
    return detail::quantity_of(unit<Ratio>("%"), overall_out);
}

}  // namespace cutwater

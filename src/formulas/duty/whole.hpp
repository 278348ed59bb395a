// The whole duty in one call, and what is asked of a duty besides.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/curves/best.hpp"
#include "formulas/curves/duty.hpp"
#include "formulas/duty/suction_limit.hpp"
#include "formulas/power/saving.hpp"
#include "formulas/limits.hpp"

#include <cmath>
#include <tuple>

namespace cutwater::formulas {

inline Outcome<std::tuple<Flow, Head, Fraction, Power, Head, Head, Head>> whole_duty(
    Series<Flow> flows, Series<Head> heads, Series<Fraction> efficiencies, Series<Head> npsh3_values, Head static_head,
    SystemResistance resistance, Density density, Head npsh_at_rest, SystemResistance suction_resistance)
{
    const auto flow = curves::duty(flows, heads, static_head, resistance);
    if (!flow) return flow.why();
    const Head head = curves::read_within(flows, heads, *flow);
    const auto efficiency = saving::efficiency_at(flows, efficiencies, *flow);
    if (!efficiency) return efficiency.why();
    const Head npsh3 = curves::read_within(flows, npsh3_values, *flow);
    const Power power = hydraulic_power(*flow, head, density) / *efficiency;
    const Head offered = system_head(npsh_at_rest, SystemResistance(-suction_resistance), *flow);
    return std::tuple(*flow, head, Fraction{*efficiency}, power, npsh3, offered, Head(offered - npsh3));
}

inline constexpr auto whole_duty_record = record<&whole_duty>(
    {.name = "whole_duty",
     .meaning = "The whole duty of a pump on its system: flow, head, efficiency, power, and NPSH needed and offered",
     .also = "duty point|operating point|pump check|everything at once|BHP|NPSH margin",
     .inputs = {curves::pump_flows(), curves::pump_heads(), saving::efficiencies(), duty::npsh3_values(),
                curves::static_head(), curves::resistance(),
                input("density", "rho", units::kgm3, limits::density_kgm3,
                      "density of the liquid; a viscous one wants its own curves, see curve_viscous"),
                duty::npsh_at_rest(), duty::suction_resistance()},
     .results = {output("flow", "Q", units::m3h, "flow through pump and system"),
                 output("head", "H", units::metre, "head there"),
                 output("efficiency", "eta", units::fraction, "pump efficiency there"),
                 output("power", "P", units::kW, "pump power input there"),
                 output("npsh3", "NPSH3", units::metre, "NPSH at 3 % head drop there"),
                 output("npsh", "NPSHA", units::metre, "NPSH available there"),
                 output("margin", "NPSHA - NPSH3", units::metre,
                        "what is left; negative: the pump cavitates and the duty does not hold")},
     .equation = "H_pump(Q) = H_s + k Q^2; P = rho g Q H/eta(Q); NPSHA = NPSHA_0 - k_s Q^2",
     .source = "definitions of ISO 17769-1:2012 (from memory of it); the curves between their points as in curve_head",
     .cautions = {curves::drooping, caution::npsh_margin, caution::inlet_vapour_pressure, suction::datum,
                  caution::guide_only, caution::hot_or_toxic},
     .example = {"[0, 50, 100], [40, 38, 30], [0, 0.6, 0.7], [2, 3, 6], 20, 0.001, 998.2, 9, 0.0001",
                 "100, 30, 0.7, 11.65357, 6, 8, 2", "hand calculation: P = 998.2 x 9.80665 x 100/3600 x 30/0.7 W"}},
    pairs::equal_length<"heads", "flows">(), pairs::equal_length<"efficiencies", "flows">(),
    pairs::equal_length<"npsh3_values", "flows">());

inline Outcome<std::tuple<Ratio, Flow, Fraction, Fraction>> rated_against_best(Series<Flow> flows,
                                                                               Series<Fraction> efficiencies,
                                                                               Flow rated_flow)
{
    const auto best = curves::best_point(flows, efficiencies);
    if (!best) return best.why();
    const auto rated = curves::read(flows, efficiencies, rated_flow, "rated_flow", units::m3h);
    if (!rated) return rated.why();
    const Flow best_flow = Flow::from_value(best->flow);
    return std::tuple(Ratio(rated_flow / best_flow), best_flow, *rated, Fraction{best->efficiency - rated->value});
}

inline constexpr auto rated_against_best_record = record<&rated_against_best>(
    {.name = "rated_against_best",
     .meaning = "Where the rated point lies against best efficiency, and what the distance costs",
     .also = "percent of BEP|rated flow over BEP|BEP|how far from best efficiency",
     .inputs = {series("flows", "Q_i", units::m3h, from(0), "flows of the curve's points", 3, Order::rising),
                series("efficiencies", "eta_i", units::fraction, between(0, 1), "efficiencies of the curve's points",
                       3),
                input("rated_flow", "Q_r", units::m3h, from(0), "rated flow; between the first and the last point")},
     .results = {output("flow_ratio", "Q_r/Q_BEP", units::number, "rated flow over best efficiency flow"),
                 output("best_flow", "Q_BEP", units::m3h, "best efficiency flow"),
                 output("efficiency", "eta_r", units::fraction, "efficiency at the rated flow"),
                 output("efficiency_lost", "eta_BEP - eta_r", units::fraction, "how much less than the best")},
     .equation = "Q_r/Q_BEP, Q_BEP as in best_efficiency_flow",
     .source = curves::best_source,
     .cautions =
         {"API 610 wants the rated flow within 80 to 110 % of the best efficiency flow of the pump as furnished "
          "(secondary excerpt read); "
          "other standards differ: see standard_limit and operating_region.",
          "A calculated margin moves the rated point away from where the plant will run: look at the normal flow too."},
     .example = {"[60, 80, 100], [0.6, 0.7, 0.6], 60", "0.75, 80, 0.6, 0.1", "by symmetry"}},
    pairs::equal_length<"efficiencies", "flows">());

enum class PowerPeak { inside, at_end };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::PowerPeak>{"inside the curve", "at its end"};

namespace cutwater::formulas {

inline std::tuple<Power, Flow, PowerPeak> greatest_power_on_curve(Series<Flow> flows, Series<Power> powers)
{
    std::size_t top = 0;
    for (std::size_t i = 1; i < powers.size(); ++i)
        if (powers[i] > powers[top]) top = i;
    return {powers[top], flows[top], top + 1 == powers.size() ? PowerPeak::at_end : PowerPeak::inside};
}

inline constexpr auto greatest_power_on_curve_record = record<&greatest_power_on_curve>(
    {.name = "greatest_power_on_curve",
     .meaning = "Greatest power along a pump's curve, to be held against the motor",
     .also = "non-overloading|end of curve power|maximum BHP|run-out power",
     .inputs = {curves::flows(), series("powers", "P_i", units::kW, from(0), "power inputs of the curve's points", 2)},
     .results = {output("power", "P_max", units::kW, "greatest power input"),
                 output("flow", "Q", units::m3h, "where it is taken"),
                 output_word<PowerPeak>("place", "where",
                                        "at its end: the power may go on rising beyond, at a larger flow")},
     .equation = "P_max = max(P_i): curve_power passes no point's power between the points",
     .source = "definition; the curve between its points as in curve_power",
     .cautions = {"At the density and viscosity, the speed and diameter that the curve is for: power grows with the "
                  "density and the cube of the speed.",
                  "A pump whose power still rises at the end of its curve overloads its motor when the system takes "
                  "more than was thought: line "
                  "broken, valve wide open, one pump of several.",
                  caution::guide_only},
     .example = {"[0, 50, 100], [4, 7, 6]", "7, 50, \"inside the curve\"", "the highest point"}},
    pairs::equal_length<"powers", "flows">());

inline RotationalSpeed least_speed_against_static_head(Head shutoff_head, RotationalSpeed speed, Head static_head)
{
    return speed * Ratio(std::sqrt(Ratio(static_head / shutoff_head).value()));
}

inline constexpr Record<&least_speed_against_static_head> least_speed_against_static_head_record{
    .name = "least_speed_against_static_head",
    .meaning = "Speed below which a pump delivers nothing against the static head",
    .also = "minimum speed|VFD minimum speed|minimum frequency|shut-off speed",
    .inputs = {input("shutoff_head", "H_0", units::metre, limits::head_above_0_m,
                     "head at closed valve, flow 0, at the known speed"),
               affinity::speed(),
               input("static_head", "H_s", units::metre, limits::head_from_0_m,
                     "head of the system at no flow, the greatest that occurs")},
    .results = {output("least_speed", "n_min", units::rpm, "speed at which delivery begins")},
    .equation = "n_min = n sqrt(H_s/H_0)",
    .source = affinity::source,
    .cautions = {"The pump must run well above it: near it the flow is below the least that heating and steady running "
                 "permit, and the non-return "
                 "valve chatters.",
                 affinity::speeding_up, caution::closed_valve},
    .example = {"40, 1200, 10", "600", "hand calculation: 1200 sqrt(1/4)"}};

}  // namespace cutwater::formulas

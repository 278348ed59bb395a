// Whether a measured curve keeps what was guaranteed.
#pragma once

#include "formulas/acceptance/tolerances.hpp"
#include "formulas/curves/meeting.hpp"
#include "formulas/curves/value.hpp"

#include <algorithm>
#include <cmath>

namespace cutwater::formulas {

enum class Verdict { pass, fail };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::Verdict>{"pass", "fail"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace acceptance {

constexpr auto guaranteed_flow() { return input("guaranteed_flow", "Q_G", units::m3h, above(0), "guaranteed flow"); }
constexpr auto guaranteed_head() { return input("guaranteed_head", "H_G", units::metre, above(0), "guaranteed head"); }
constexpr auto flows()
{
    return series("flows", "Q_i", units::m3h, from(0), "measured flows, translated to the guaranteed speed", 2,
                  Order::rising);
}
constexpr auto heads()
{
    return series("heads", "H_i", units::metre, any, "measured heads, translated to the guaranteed speed", 2);
}

/// The level bar of the tolerance cross: these flows, at the guaranteed head.
struct LevelBar {
    double low, high, head;
    bool holds(double flow) const { return touches(flow, low, high); }
};

/// A flow at which the curve has the bar's head; where it comes nearest to it, when it has it nowhere.
struct AtHead {
    bool reached;
    double flow;
};

/// Of several such flows the one on the bar, then the nearest to the guaranteed flow. Between two points the curve only
/// rises or only falls, so each piece holds the head once, or not, or all along.
inline AtHead flow_at_head(const curves::Knots<Flow, Head>& curve, double flow, const LevelBar& bar)
{
    AtHead best{false, curve.first()};
    const auto offer = [&](double next) {
        const bool nearer = std::abs(next - flow) < std::abs(best.flow - flow);
        if (!best.reached || (bar.holds(next) != bar.holds(best.flow) ? bar.holds(next) : nearer)) best = {true, next};
    };
    const auto side = [&](double gap) { return std::abs(gap) <= 1e-12 * bar.head ? 0 : gap > 0 ? 1 : -1; };
    double least = std::abs(curve.y(0) - bar.head);
    double nearest_at = curve.first();
    for (std::size_t i = 0;; ++i) {
        const double gap = curve.y(i) - bar.head;
        if (std::abs(gap) < least) {
            least = std::abs(gap);
            nearest_at = curve.x(i);
        }
        if (side(gap) == 0) offer(curve.x(i));
        if (i + 1 == curve.size()) break;
        const int next_side = side(curve.y(i + 1) - bar.head);
        if (side(gap) == 0 && next_side == 0) offer(std::clamp(flow, curve.x(i), curve.x(i + 1)));
        if (side(gap) * next_side < 0) {
            const curves::Piece piece = curves::piece_at(curve, i);
            offer(piece.x(curves::sign_change([&](double t) { return piece.value(t) - bar.head; }, 0, 1)));
        }
    }
    return best.reached ? best : AtHead{false, nearest_at};
}

inline LevelBar level_bar(const Tolerances& t, Flow flow, Head head)
{
    return {flow.value() * (1 + t.flow_low), flow.value() * (1 + t.flow_high), head.value()};
}

/// Where the line from the origin through the guaranteed point meets the measured curve: of several meetings, as an
/// unstable curve may have, the one closest to the guaranteed flow.
inline Outcome<Flow> flow_on_line(const Series<Flow>& flows, const Series<Head>& heads, Flow flow, Head head)
{
    const curves::Knots<Flow, Head> curve(flows, heads);
    const curves::Meetings found = curves::meetings(curve, {.linear = head.value() / flow.value()}, flow.value());
    if (found.count) return Flow::from_value(found.closest);
    return NoValue{CUTWATER_NO_ANSWER,
                   "flows",
                   "the line from the origin through the guaranteed point does not meet the measured curve between {0} "
                   "and {1}: measure over a wider range",
                   {number_in(flows.front(), units::m3h), number_in(flows.back(), units::m3h)}};
}

inline constexpr const char* cross_source =
    "ISO 9906:2012, 4.4 and evaluation of flow and head (from memory of it; an excerpt on the tolerance cross read)";
inline constexpr const char* line_source =
    "ISO 9906:2012, 4.4 and evaluation of efficiency and power on the line through the origin (from memory of it)";
inline constexpr const char* translate_first =
    "Translate the measured points to the guaranteed speed first: see test_to_rated_speed.";

}  // namespace acceptance

inline Outcome<std::tuple<Verdict, Head, Flow>> acceptance_verdict(AcceptanceGrade grade, Flow flow, Head head,
                                                                   Series<Flow> flows, Series<Head> heads,
                                                                   Power greatest, SmallPumpRule rule, Steps steps)
{
    const Outcome<Head> measured = curves::read(flows, heads, flow, "guaranteed_flow", units::m3h);
    if (!measured) return measured.why();
    const acceptance::Tolerances t = acceptance::tolerances(grade, greatest, rule);
    const curves::Knots<Flow, Head> curve(flows, heads);
    const acceptance::LevelBar bar = acceptance::level_bar(t, flow, head);
    const acceptance::AtHead at_head = acceptance::flow_at_head(curve, flow.value(), bar);
    steps("H_low", "lowest head at the guaranteed flow", head * (1 + t.head_low), units::metre);
    steps("H_high", "highest head at the guaranteed flow", head * (1 + t.head_high), units::metre);
    steps("Q_low", "lowest flow at the guaranteed head", flow * (1 + t.flow_low), units::m3h);
    steps("Q_high", "highest flow at the guaranteed head", flow * (1 + t.flow_high), units::m3h);
    const bool upright = acceptance::touches(measured->value(), head.value() * (1 + t.head_low),
                                             head.value() * (1 + t.head_high));
    const bool level = at_head.reached && bar.holds(at_head.flow);
    return std::tuple(upright || level ? Verdict::pass : Verdict::fail, *measured, Flow::from_value(at_head.flow));
}

inline constexpr auto acceptance_verdict_record = record<&acceptance_verdict>(
    {.name = "acceptance_verdict",
     .meaning = "Whether a measured head curve keeps the guaranteed flow and head",
     .also = "ISO 9906|factory acceptance test|FAT|test fell short|witnessed test|performance test|acceptance test",
     .inputs = {acceptance::grade(), acceptance::guaranteed_flow(), acceptance::guaranteed_head(), acceptance::flows(),
                acceptance::heads(), acceptance::greatest_power(), acceptance::small_pump_rule()},
     .results = {output_word<Verdict>("verdict", "verdict",
                                      "pass when the curve crosses or touches at least one bar of the tolerance cross"),
                 output("head_at_flow", "H(Q_G)", units::metre, "measured head at the guaranteed flow"),
                 output("flow_at_head", "Q(H_G)", units::m3h,
                        "measured flow at the guaranteed head, the one on the level bar if there are several; where "
                        "the curve comes nearest to it if it has it nowhere")},
     .equation = "H_G (1 + tau_H-) <= H(Q_G) <= H_G (1 + tau_H+), or Q_G (1 + tau_Q-) <= Q(H_G) <= Q_G (1 + tau_Q+)",
     .source = acceptance::cross_source,
     .cautions = {acceptance::translate_first, acceptance::no_second_addition, acceptance::small_rule,
                  acceptance::contract},
     .example = {"\"1B\", 100, 41, [0, 25, 50, 75, 100, 125], [60, 55, 50, 45, 40, 35], 20", "\"pass\", 40, 95",
                 "hand calculation on the straight line H = 60 - 0.2 Q"}},
    pairs::equal_length<"heads", "flows">(), acceptance::not_too_small);

inline Outcome<std::tuple<Verdict, Fraction, Flow>> acceptance_verdict_efficiency(
    AcceptanceGrade grade, Flow flow, Head head, Fraction guaranteed, Series<Flow> flows, Series<Head> heads,
    Series<Fraction> efficiencies, Power greatest, SmallPumpRule rule, Steps steps)
{
    const auto at = acceptance::flow_on_line(flows, heads, flow, head);
    if (!at) return at.why();
    const double measured = curves::value_at(curves::Knots<Flow, Fraction>(flows, efficiencies), at->value());
    const double lowest = guaranteed.value * (1 + acceptance::tolerances(grade, greatest, rule).efficiency);
    steps("eta_low", "lowest efficiency", Fraction{lowest}, units::fraction);
    return std::tuple(acceptance::touches(measured, lowest, 1) ? Verdict::pass : Verdict::fail, Fraction{measured},
                      *at);
}

inline constexpr auto acceptance_verdict_efficiency_record = record<&acceptance_verdict_efficiency>(
    {.name = "acceptance_verdict_efficiency",
     .meaning = "Whether measured curves keep the guaranteed efficiency",
     .also = "ISO 9906|guaranteed efficiency|test fell short",
     .inputs = {acceptance::grade(), acceptance::guaranteed_flow(), acceptance::guaranteed_head(),
                input("guaranteed_efficiency", "eta_G", units::fraction, above_up_to(0, 1), "guaranteed efficiency"),
                acceptance::flows(), acceptance::heads(),
                series("efficiencies", "eta_i", units::fraction, between(0, 1), "measured efficiencies at those flows",
                       2),
                acceptance::greatest_power(), acceptance::small_pump_rule()},
     .results = {output_word<Verdict>("verdict", "verdict", "pass when the efficiency there is not below its limit"),
                 output("efficiency", "eta", units::fraction, "measured efficiency there"),
                 output("flow", "Q", units::m3h,
                        "flow at which the line from the origin through the guaranteed point meets the head curve, the "
                        "nearest to Q_G if it meets it more than once")},
     .equation = "eta(Q) >= eta_G (1 + tau_eta) where H(Q) = H_G Q/Q_G",
     .source = acceptance::line_source,
     .cautions = {acceptance::translate_first, acceptance::no_second_addition, acceptance::small_rule,
                  acceptance::contract},
     .example = {"\"1B\", 100, 40, 0.8, [0, 50, 100, 150], [60, 50, 40, 30], [0, 0.6, 0.78, 0.7], 16",
                 "\"pass\", 0.78, 100", "by inspection: 0.78 against 0.776"}},
    pairs::equal_length<"heads", "flows">(), pairs::equal_length<"efficiencies", "flows">(), acceptance::not_too_small);

inline Outcome<std::tuple<Verdict, Power, Flow>> acceptance_verdict_power(AcceptanceGrade grade, Flow flow, Head head,
                                                                          Power guaranteed, Series<Flow> flows,
                                                                          Series<Head> heads, Series<Power> powers,
                                                                          Power greatest, SmallPumpRule rule,
                                                                          Steps steps)
{
    const auto at = acceptance::flow_on_line(flows, heads, flow, head);
    if (!at) return at.why();
    const double measured = curves::value_at(curves::Knots<Flow, Power>(flows, powers), at->value());
    const Power highest = guaranteed * (1 + acceptance::tolerances(grade, greatest, rule).power);
    steps("P_high", "highest power", highest, units::kW);
    return std::tuple(acceptance::touches(measured, 0, highest.value()) ? Verdict::pass : Verdict::fail,
                      Power::from_value(measured), *at);
}

inline constexpr auto acceptance_verdict_power_record = record<&acceptance_verdict_power>(
    {.name = "acceptance_verdict_power",
     .meaning = "Whether measured curves keep the guaranteed power input",
     .also = "ISO 9906|guaranteed power|test fell short",
     .inputs = {acceptance::grade(), acceptance::guaranteed_flow(), acceptance::guaranteed_head(),
                input("guaranteed_power", "P_G", units::kW, above(0), "guaranteed power input"), acceptance::flows(),
                acceptance::heads(),
                series("powers", "P_i", units::kW, from(0),
                       "measured power inputs at those flows, translated to the guaranteed speed", 2),
                acceptance::greatest_power(), acceptance::small_pump_rule()},
     .results = {output_word<Verdict>("verdict", "verdict", "pass when the power there is not above its limit"),
                 output("power", "P", units::kW, "measured power input there"),
                 output("flow", "Q", units::m3h,
                        "flow at which the line from the origin through the guaranteed point meets the head curve, the "
                        "nearest to Q_G if it meets it more than once")},
     .equation = "P(Q) <= P_G (1 + tau_P) where H(Q) = H_G Q/Q_G",
     .source = acceptance::line_source,
     .cautions = {acceptance::translate_first, acceptance::no_second_addition, acceptance::small_rule,
                  acceptance::contract},
     .example = {"\"1B\", 100, 40, 14, [0, 50, 100, 150], [60, 50, 40, 30], [8, 12, 14.5, 16], 16",
                 "\"pass\", 14.5, 100", "by inspection: 14.5 against 14.56"}},
    pairs::equal_length<"heads", "flows">(), pairs::equal_length<"powers", "flows">(), acceptance::not_too_small,
    relation<"power_input", "guaranteed_power">(
        [](Power p, Power guaranteed) { return p >= guaranteed * (1 - 1e-12); },
        "the greatest power input over the range cannot be less than the guaranteed one"));

}  // namespace cutwater::formulas

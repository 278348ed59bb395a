// Tolerances of an acceptance test by ISO 9906:2012.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"

#include <cmath>

namespace cutwater::formulas {

enum class AcceptanceGrade { g1u, g1e, g1b, g2b, g2u, g3b };
enum class GuaranteedQuantity { flow, head, power, efficiency };
enum class SmallPumpRule { standard, grade };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<6> words_of<formulas::AcceptanceGrade>{"1U", "1E", "1B", "2B", "2U", "3B"};
template <>
inline constexpr Words<4> words_of<formulas::GuaranteedQuantity>{"flow", "head", "power", "efficiency"};
template <>
inline constexpr Words<2> words_of<formulas::SmallPumpRule>{"standard", "grade"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace acceptance {

/// Parts of the guaranteed value, the efficiency's too.
struct Tolerances {
    double flow_low, flow_high, head_low, head_high, power, efficiency;
};

inline constexpr Tolerances by_grade[] = {
    {0.00, 0.10, 0.00, 0.06, 0.10, 0.00},     // 1U
    {-0.05, 0.05, -0.03, 0.03, 0.04, 0.00},   // 1E
    {-0.05, 0.05, -0.03, 0.03, 0.04, -0.03},  // 1B
    {-0.08, 0.08, -0.05, 0.05, 0.08, -0.05},  // 2B
    {0.00, 0.16, 0.00, 0.10, 0.16, -0.05},    // 2U
    {-0.09, 0.09, -0.07, 0.07, 0.09, -0.07},  // 3B
};

inline bool is_small(Power greatest) { return units::kW.in(greatest) <= 10 * (1 + 1e-12); }

/// Up to 10 kW the standard has a rule of its own, which takes the grade's place unless something else was agreed.
inline Tolerances tolerances(AcceptanceGrade grade, Power greatest, SmallPumpRule rule)
{
    const Tolerances& of_grade = by_grade[static_cast<std::size_t>(grade)];
    const bool small = (rule == SmallPumpRule::standard) & is_small(greatest);
    const double efficiency = -(10 * (1 - units::kW.in(greatest) / 10) + 7) / 100;
    const double power = std::sqrt(0.07 * 0.07 + efficiency * efficiency);
    return {elementary::select(small, -0.10, of_grade.flow_low),
            elementary::select(small, 0.10, of_grade.flow_high),
            elementary::select(small, -0.08, of_grade.head_low),
            elementary::select(small, 0.08, of_grade.head_high),
            elementary::select(small, power, of_grade.power),
            elementary::select(small, efficiency, of_grade.efficiency)};
}

inline double of_quantity(GuaranteedQuantity quantity, double flow, double head, double power, double efficiency)
{
    using elementary::select;
    return select(quantity == GuaranteedQuantity::flow, flow,
                  select(quantity == GuaranteedQuantity::head, head,
                         select(quantity == GuaranteedQuantity::power, power, efficiency)));
}

constexpr auto grade()
{
    return choice<AcceptanceGrade>("grade", "grade",
                                   "acceptance grade of ISO 9906:2012; the 1999 edition's grades 1 and 2 are others");
}
constexpr auto greatest_power()
{
    return input("power_input", "P_max", units::kW, above(0),
                 "greatest power input over the range of operation; up to 10 kW the standard has a rule of its own");
}
constexpr auto small_pump_rule()
{
    return choice<SmallPumpRule>("small_pump_rule", "rule",
                                 "counts up to 10 kW: standard, the rule of 4.4.2 in place of the grade, which holds "
                                 "unless otherwise agreed; grade, where the contract keeps to the grade",
                                 SmallPumpRule::standard);
}

inline constexpr auto not_too_small = relation<"power_input", "small_pump_rule">(
    [](Power p, SmallPumpRule rule) { return (rule == SmallPumpRule::grade) | (units::kW.in(p) >= 1); },
    "the standard's rule for small pumps begins at 1 kW: below, the tolerances are a matter of agreement; give "
    "small_pump_rule as grade where a grade was agreed");

inline bool touches(double value, double low, double high)
{
    const double rounding = 1e-12 * std::abs(value);
    return value >= low - rounding && value <= high + rounding;
}

inline constexpr const char* source = "ISO 9906:2012, 4.4.1, Table 8, and 4.4.2 for pumps up to 10 kW (from memory of "
                                      "it; its 10 % of flow and 8 % of head read in two trade articles)";
inline constexpr const char* no_second_addition =
    "The tolerances hold the measuring uncertainty and the making's scatter already: nothing is to be added to them.";
inline constexpr const char* small_rule =
    "Up to 10 kW the standard's wider rule for small pumps takes the grade's place, unless otherwise agreed. It knows "
    "no one-sided tolerance: under 1U and 2U a pump may then fall 10 % short of its flow and 8 % of its head, under 1U "
    "and 1E short of its efficiency too. Where such a grade was meant, agree on it and give small_pump_rule as grade.";
inline constexpr const char* contract =
    "What was agreed in the contract goes before: grade, rated point and whether power or efficiency is guaranteed.";

}  // namespace acceptance

inline std::tuple<Ratio, Ratio, Ratio, Ratio, Ratio, Ratio> acceptance_tolerances(AcceptanceGrade grade, Power greatest,
                                                                                  SmallPumpRule rule)
{
    const acceptance::Tolerances t = acceptance::tolerances(grade, greatest, rule);
    return {Ratio(t.flow_low),  Ratio(t.flow_high), Ratio(t.head_low),
            Ratio(t.head_high), Ratio(t.power),     Ratio(t.efficiency)};
}

inline constexpr auto acceptance_tolerances_record = record<&acceptance_tolerances>(
    {.name = "acceptance_tolerances",
     .meaning = "Tolerances of an acceptance grade, as parts of the guaranteed values",
     .also = "ISO 9906|test tolerance|grade 1B|grade 2B",
     .inputs = {acceptance::grade(), acceptance::greatest_power(), acceptance::small_pump_rule()},
     .results = {output("flow_low", "tau_Q-", units::number, "lowest flow, -0.05 for 5 % below"),
                 output("flow_high", "tau_Q+", units::number, "highest flow"),
                 output("head_low", "tau_H-", units::number, "lowest head"),
                 output("head_high", "tau_H+", units::number, "highest head"),
                 output("power_high", "tau_P", units::number, "highest power; no lower limit"),
                 output("efficiency_low", "tau_eta", units::number,
                        "lowest efficiency, as a part of the guaranteed one; no upper limit")},
     .equation =
         "by the grade; up to 10 kW, by the standard's rule: tau_Q = +-10 %, tau_H = +-8 %, tau_eta = -[10 (1 - "
         "P/10 kW) + 7] %, tau_P = sqrt(7^2 + tau_eta^2) %",
     .source = acceptance::source,
     .cautions = {acceptance::no_second_addition, acceptance::small_rule, acceptance::contract},
     .sound_anywhere = true,
     .example = {"\"1B\", 30", "-0.05, 0.05, -0.03, 0.03, 0.04, -0.03", "the standard's table, from memory"}},
    acceptance::not_too_small);

inline std::tuple<Ratio, Ratio> acceptance_limits(AcceptanceGrade grade, GuaranteedQuantity quantity, Ratio guaranteed,
                                                  Power greatest, SmallPumpRule rule)
{
    const acceptance::Tolerances t = acceptance::tolerances(grade, greatest, rule);
    const double g = guaranteed.value();
    const double low = acceptance::of_quantity(quantity, t.flow_low, t.head_low, -1, t.efficiency);
    const double high = acceptance::of_quantity(quantity, t.flow_high, t.head_high, t.power, 0);
    const bool efficiency = quantity == GuaranteedQuantity::efficiency;
    return {Ratio(g * (1 + low)), Ratio(elementary::select(efficiency, 1, g * (1 + high)))};
}

inline constexpr auto acceptance_limits_record = record<&acceptance_limits>(
    {.name = "acceptance_limits",
     .meaning = "Lowest and highest measured value that an acceptance grade allows",
     .also = "ISO 9906|test tolerance",
     .inputs = {acceptance::grade(), choice<GuaranteedQuantity>("quantity", "quantity", "what is guaranteed"),
                input("guaranteed_value", "G", units::number, above(0),
                      "guaranteed value in any unit; an efficiency as a fraction"),
                acceptance::greatest_power(), acceptance::small_pump_rule()},
     .results = {output("lowest", "G_low", units::number, "in the same unit; 0 for power, which has no lower limit"),
                 output("highest", "G_high", units::number,
                        "in the same unit; 1 for efficiency, which has no upper limit")},
     .equation = "G_low = G (1 + tau_low), G_high = G (1 + tau_high)",
     .source = acceptance::source,
     .cautions = {acceptance::no_second_addition, acceptance::small_rule, acceptance::contract},
     .example = {"\"1B\", \"head\", 50, 30", "48.5, 51.5", "hand calculation"}},
    relation<"guaranteed_value", "quantity">(
        [](Ratio g, GuaranteedQuantity q) { return (q != GuaranteedQuantity::efficiency) | (g.value() <= 1); },
        "an efficiency must be given as a fraction, up to 1"),
    acceptance::not_too_small);

}  // namespace cutwater::formulas

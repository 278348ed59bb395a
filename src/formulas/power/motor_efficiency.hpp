// Efficiency that a motor's class stands for.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/power/motor_tables.hpp"

#include <cmath>
#include <cstddef>
#include <span>

namespace cutwater::formulas {

enum class EfficiencyClass { ie1, ie2, ie3, ie4, ie5 };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<5> cutwater::words_of<cutwater::formulas::EfficiencyClass>{"IE1", "IE2", "IE3", "IE4",
                                                                                            "IE5"};

namespace cutwater::formulas {

namespace motor {

inline Fraction to_a_tenth(double percent) { return {std::floor(10 * percent + 0.5) / 1000}; }

inline Fraction on_curve(const Cubic& k, double rating_kw)
{
    const double x = elementary::log10(rating_kw);
    return to_a_tenth(((k.a * x + k.b) * x + k.c) * x + k.d);
}

/// Percent of the rating in the table; 0 when it is not listed.
inline double listed(std::span<const Row> table, double rating_kw, std::size_t column)
{
    for (const Row& row : table)
        if (std::abs(row.rating_kw - rating_kw) <= 1e-9 * rating_kw) return row.percent[column];
    return 0;
}

/// The 60 Hz rule: between two ratings the nearer one's value, the upper one's from the middle on.
inline double nearest(std::span<const Row> table, double rating_kw, std::size_t column)
{
    std::size_t i = 0;
    while (i + 1 < table.size() && rating_kw >= (table[i].rating_kw + table[i + 1].rating_kw) / 2) ++i;
    return table[i].percent[column];
}

inline double above_200kw(EfficiencyClass of, std::size_t column, double rating_kw)
{
    if (of == EfficiencyClass::ie4 && column == 2 && rating_kw >= 250) return rating_kw < 315 ? 96.5 : 96.6;
    return above_200kw_50hz[static_cast<int>(of)][column];
}

inline Outcome<Fraction> at_50hz(double rating_kw, std::size_t column, EfficiencyClass of)
{
    if (rating_kw > 200) return to_a_tenth(above_200kw(of, column, rating_kw));
    const bool small = rating_kw <= 0.55;
    const bool gap = !small && rating_kw < 0.75;
    if (of == EfficiencyClass::ie1) {
        if (const double percent = listed(ie1_50hz, rating_kw, column); percent > 0) return to_a_tenth(percent);
        if (!small && !gap && column < 3) return on_curve(ie1_50hz_between[column], rating_kw);
        return NoValue{.status = CUTWATER_NO_ANSWER,
                       .argument = "rated_power",
                       .sentence = "{0} is no rating that class IE1 lists; between the ratings it has a rule from 0.75 "
                                   "to 200 kW with 2, 4 and 6 poles only",
                       .numbers = {{rating_kw, "kW"}}};
    }
    if (gap)
        return NoValue{.status = CUTWATER_NO_ANSWER,
                       .argument = "rated_power",
                       .sentence = "{0} lies between 0.55 and 0.75 kW, where the standard has no value",
                       .numbers = {{rating_kw, "kW"}}};
    const int row = static_cast<int>(of) - 1;
    return on_curve(small ? small_50hz[row][column] : large_50hz[row][column], rating_kw);
}

inline Outcome<Fraction> at_60hz(double rating_kw, std::size_t column, EfficiencyClass of)
{
    switch (of) {
    case EfficiencyClass::ie2: return to_a_tenth(nearest(ie2_60hz, rating_kw, column));
    case EfficiencyClass::ie3: return to_a_tenth(nearest(ie3_60hz, rating_kw, column));
    case EfficiencyClass::ie4: return to_a_tenth(nearest(ie4_60hz, rating_kw, column));
    case EfficiencyClass::ie1:
    case EfficiencyClass::ie5: break;
    }
    return NoValue{.status = CUTWATER_NO_ANSWER,
                   .argument = "efficiency_class",
                   .sentence = "class IE1 is held here for 50 Hz only; take IE2, IE3 or IE4 at 60 Hz"};
}

inline bool is_mains(Frequency f)
{
    const double hz = units::hertz.in(f);
    return hz == 50 || hz == 60;
}

inline constexpr const char* even_poles = "a motor's poles come in pairs: give an even number";
inline bool even(Count poles) { return poles.value == 2 * std::floor(poles.value / 2); }

}  // namespace motor

inline Outcome<Fraction> motor_efficiency(Power rated_power, Count poles, Frequency frequency,
                                          EfficiencyClass efficiency_class)
{
    if (efficiency_class == EfficiencyClass::ie5) {
        const auto below = motor_efficiency(rated_power, poles, frequency, EfficiencyClass::ie4);
        if (!below) return below.why();
        return motor::to_a_tenth(100 / (1 + 0.8 * (1 / below->value - 1)));
    }
    const double rating_kw = units::kW.in(rated_power);
    const std::size_t column = static_cast<std::size_t>(poles.value) / 2 - 1;
    return units::hertz.in(frequency) == 50 ? motor::at_50hz(rating_kw, column, efficiency_class)
                                            : motor::at_60hz(rating_kw, column, efficiency_class);
}

inline constexpr auto motor_efficiency_record = record<&motor_efficiency>(
    {.name = "motor_efficiency",
     .meaning = "Nominal full-load efficiency that a motor of an efficiency class has at least",
     .also = "IE class|IE2|IE3|IE4|premium efficiency|NEMA premium",
     .inputs = {input("rated_power", "P_N", units::kW, between(0.12, 1000), "rated output of the motor"),
                input("poles", "2p", units::count, between(2, 8), "number of poles: 2, 4, 6 or 8"),
                input("frequency", "f", units::hertz, between(50, 60), "mains frequency: 50 or 60 Hz", 50),
                choice<EfficiencyClass>("efficiency_class", "class",
                                        "efficiency class of the motor; what law asks: see motor_class_required_eu",
                                        EfficiencyClass::ie3)},
     .results = {output("efficiency", "eta_M", units::fraction, "nominal efficiency at rated output")},
     .equation =
         "50 Hz, up to 200 kW: eta_M = A x^3 + B x^2 + C x + D per cent, x = log10(P_N/kW), rounded to a tenth; "
         "IE1, above 200 kW and 60 Hz: tables; 60 Hz between ratings: the nearer rating; IE5: 0.8 of the losses "
         "of IE4, eta = 1/(1 + 0.8 (1/eta_IE4 - 1)), rounded to a tenth",
     .source =
         "IEC 60034-30-1:2014; its 50 Hz coefficients for IE2 to IE4 and the rules between ratings: Regulation "
         "(EU) 2019/1781, Annex I, read as retained in UK SI 2021/745, Schedule 16; IE1, above 200 kW, and 60 Hz "
         "tables (from memory of it, 129 of the IE2 and IE3 values at 60 Hz checked against 10 CFR 431.25, 10 CFR "
         "431.446 and 42 U.S.C. 6313; IE2 at 0.75 kW, 1.1 kW 8 poles, 150 kW 8 poles and 185 kW 4 and 8 poles "
         "differ from the North American table and stay unconfirmed). IE5: a fifth less loss than IE4, named as "
         "its goal (secondary); IEC TS 60034-30-2:2016 has a table of its own, not read. The edition of 2025 was "
         "not read",
     .cautions = {"IE5 is tabled by IEC TS 60034-30-2 for motors made for converters only; from memory its table lies "
                  "within 0.1 points of this, for four poles from 0.75 kW on.",
                  "The class's least nominal value at full load: real motors differ, are less efficient at low load, "
                  "and may be off by the tolerance of IEC 60034-1."},
     .example = {R"(11, 4, 50, "IE3")", "0.914", "IEC 60034-30-1:2014, table (from memory): 91.4 %"}},
    relation<"poles">([](Count poles) { return motor::even(poles); }, motor::even_poles),
    relation<"frequency">([](Frequency f) { return motor::is_mains(f); },
                          "the classes are set for 50 Hz and 60 Hz only"));

}  // namespace cutwater::formulas

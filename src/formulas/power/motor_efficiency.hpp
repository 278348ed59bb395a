// Efficiency that a motor's class stands for.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/lookup.hpp"
#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/power/motor_tables.hpp"

#include <cmath>
#include <cstddef>

namespace cutwater::formulas {

enum class EfficiencyClass { ie1, ie2, ie3, ie4, ie5 };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<5> cutwater::words_of<cutwater::formulas::EfficiencyClass>{"IE1", "IE2", "IE3", "IE4",
                                                                                            "IE5"};

namespace cutwater::formulas {

namespace motor {

inline Fraction to_a_tenth(double percent) { return {std::floor(10 * percent + 0.5) / 1000}; }

/// One of four numbers by the poles, without a branch, so that rows of an array stay vectors.
inline double by_poles(Count poles, double two, double four, double six, double eight)
{
    return elementary::select(poles.value < 6, elementary::select(poles.value < 4, two, four),
                              elementary::select(poles.value < 8, six, eight));
}
inline double by_poles(Count poles, const double (&of)[4]) { return by_poles(poles, of[0], of[1], of[2], of[3]); }
inline Cubic by_poles(Count poles, const Cubic (&of)[4])
{
    return {by_poles(poles, of[0].a, of[1].a, of[2].a, of[3].a), by_poles(poles, of[0].b, of[1].b, of[2].b, of[3].b),
            by_poles(poles, of[0].c, of[1].c, of[2].c, of[3].c), by_poles(poles, of[0].d, of[1].d, of[2].d, of[3].d)};
}

inline double on_curve(const Curves& of, Count poles, double rating_kw)
{
    const bool small = rating_kw <= 0.55;
    const Cubic low = by_poles(poles, of.small), high = by_poles(poles, of.large);
    const double x = elementary::log10(rating_kw);
    const double a = elementary::select(small, low.a, high.a), b = elementary::select(small, low.b, high.b);
    const double c = elementary::select(small, low.c, high.c), d = elementary::select(small, low.d, high.d);
    return ((a * x + b) * x + c) * x + d;
}

/// The listed rating nearest to one, the upper from the middle on, as the 60 Hz rule has it; in per cent.
struct Nearest {
    double rating_kw, percent;
};
inline Nearest nearest(std::size_t table, Count poles, double rating_kw)
{
    const std::size_t first = table * longest_table;
    const std::size_t place = first + reached<longest_table - 1>(&listed.middle_kw[first], rating_kw);
    const auto column = std::size_t{poles.value >= 4} + std::size_t{poles.value >= 6} + std::size_t{poles.value >= 8};
    return {listed.rating_kw[place], listed.percent[4 * place + column]};
}

inline double above_200kw(std::size_t table, Count poles, double rating_kw)
{
    const bool two_steps = (table == 3) & (poles.value == 6) & (rating_kw >= 250);
    return elementary::select(two_steps, elementary::select(rating_kw < 315, 96.5, 96.6),
                              by_poles(poles, above_200kw_50hz[table]));
}

inline NoValue no_value(bool at_50hz, bool ie1, double rating_kw)
{
    if (!at_50hz)
        return {CUTWATER_NO_ANSWER,
                "efficiency_class",
                "class IE1 is held here for 50 Hz only; take IE2, IE3 or IE4 at 60 Hz",
                {}};
    return {CUTWATER_NO_ANSWER,
            "rated_power",
            ie1 ? "{0} is no rating that class IE1 lists; between the ratings it has a rule from 0.75 to 200 kW with "
                  "2, 4 and 6 poles only"
                : "{0} lies between 0.55 and 0.75 kW, where the standard has no value",
            {{rating_kw, "kW"}}};
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
                                          EfficiencyClass efficiency_class, Steps steps)
{
    // A row of an array computes every way and takes one; a single call goes the one alone.
    const auto where = [&](bool needed, auto way) { return steps.in_rows() | needed ? way() : decltype(way()){}; };
    const double rating_kw = units::kW.in(rated_power);
    const bool at_50hz = units::hertz.in(frequency) == 50;
    const bool ie1 = efficiency_class == EfficiencyClass::ie1, ie5 = efficiency_class == EfficiencyClass::ie5;
    const auto table = static_cast<std::size_t>(ie5 ? EfficiencyClass::ie4 : efficiency_class);
    const auto listed = where(ie1 | !at_50hz, [&] { return motor::nearest(table, poles, rating_kw); });
    const bool is_listed = ie1 & (std::abs(listed.rating_kw - rating_kw) <= 1e-9 * rating_kw);
    const bool large = rating_kw > 200, on_curve = (rating_kw >= 0.75) | !(ie1 | (rating_kw > 0.55));
    const bool held_at_50hz = large | is_listed | (on_curve & !(ie1 & (poles.value == 8)));
    const bool holds = (at_50hz & held_at_50hz) | !(at_50hz | ie1);
    const bool from_table = is_listed | !at_50hz, above = large & at_50hz;
    const double curve = where(!(from_table | above),
                               [&] { return motor::on_curve(motor::curves_50hz[table], poles, rating_kw); });
    const double percent = elementary::select(above, motor::above_200kw(table, poles, rating_kw),
                                              elementary::select(from_table, listed.percent, curve));
    const Fraction efficiency = motor::to_a_tenth(percent);
    const Fraction fifth_less_loss = where(
        ie5, [&] { return motor::to_a_tenth(100 / (1 + 0.8 * (1 / efficiency.value - 1))); });
    return {Fraction{elementary::select(ie5, fifth_less_loss.value, efficiency.value)}, holds,
            motor::no_value(at_50hz, ie1, rating_kw)};
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
     .given_once = {"poles", "frequency"},
     .example = {R"(11, 4, 50, "IE3")", "0.914", "IEC 60034-30-1:2014, table (from memory): 91.4 %"}},
    relation<"poles">([](Count poles) { return motor::even(poles); }, motor::even_poles),
    relation<"frequency">([](Frequency f) { return motor::is_mains(f); },
                          "the classes are set for 50 Hz and 60 Hz only"));

}  // namespace cutwater::formulas

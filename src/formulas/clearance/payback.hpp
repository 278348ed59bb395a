// What a grown clearance costs, and when a reset pays.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"

#include <cmath>
#include <tuple>

namespace cutwater::formulas {

enum class ResetVerdict { due, not_yet };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::ResetVerdict>{"due", "not yet"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace reset {

inline constexpr const char* more_than_energy = "Energy alone: lost flow, a hotter seal, thrust on the bearings or a "
                                                "risk to people can ask for the reset long before the money does.";

constexpr auto extra_power()
{
    return input("extra_power", "dP", units::kW, above(0),
                 "power from the mains that the clearance costs now, as from clearance_power_penalty");
}
constexpr auto hours() { return input("hours", "t", units::hour, above_up_to(0, 8784), "hours run in a year"); }
constexpr auto price()
{
    return input("price_per_kWh", "c", units::money, above(0), "price of a kilowatt-hour, in any one currency");
}
constexpr auto cost()
{
    return input("reset_cost", "C", units::money, from(0), "cost of the reset: labour, stoppage and parts");
}

inline double yearly(Power extra, Time hours, Money price) { return units::kWh.in(extra * hours) * price.value; }

}  // namespace reset

inline std::tuple<Money, Time> clearance_payback(Power extra, Time hours, Money price, Money cost)
{
    const double yearly = reset::yearly(extra, hours, price);
    return {{yearly}, units::year(cost.value / yearly)};
}

inline constexpr auto clearance_payback_record = record<&clearance_payback>(
    {.name = "clearance_payback",
     .meaning = "What a grown clearance costs in a year, and the time in which a reset pays back",
     .also = "payback of impeller adjustment|payback of new wear rings|overhaul payback",
     .inputs = {reset::extra_power(), reset::hours(), reset::price(), reset::cost()},
     .results = {output("yearly_cost", "C_y", units::money, "cost of the lost energy in a year, in that currency"),
                 output("payback", "T", units::month, "time until the reset has paid")},
     .equation = "C_y = c dP t; T = C/C_y",
     .source = "simple payback; common practice",
     .cautions = {reset::more_than_energy,
                  "The clearance goes on growing, before the reset and after: see clearance_reset_interval."},
     .sound_anywhere = true,
     .example = {"1.333, 8000, 0.15, 400", "1599.6, 3.00075", "hand calculation"}});

inline std::tuple<ResetVerdict, Time, Time, Money> clearance_reset_interval(Power extra, Time since, Time hours,
                                                                            Money price, Money cost)
{
    const double years = units::year.in(since);
    const double growth = reset::yearly(extra, hours, price) / years;  // of the yearly cost, in a year
    const double best = std::sqrt(2 * cost.value / growth);
    return {years >= best ? ResetVerdict::due : ResetVerdict::not_yet,
            units::year(best),
            units::year(best - years),
            {std::sqrt(2 * cost.value * growth)}};
}

inline constexpr auto clearance_reset_interval_record = record<&clearance_reset_interval>(
    {.name = "clearance_reset_interval",
     .meaning = "Interval between resets that costs least, energy and resets together, and whether one is due",
     .also = "optimum overhaul time|overhaul interval|when to adjust the impeller",
     .inputs = {reset::extra_power(),
                input("time_since", "T", units::month, above_up_to(0, 1200), "time since the last setting"),
                reset::hours(), reset::price(), reset::cost()},
     .results = {output_word<ResetVerdict>("verdict", "verdict", "due, or not yet"),
                 output("best_interval", "T_b", units::month, "interval of the least cost"),
                 output("time_left", "T_l", units::month, "until then; negative when it is past"),
                 output("least_yearly_cost", "C_min", units::money, "energy and resets in a year, at that interval")},
     .equation = "T_b = sqrt(2 C/g), g = c dP t/T; C_min = sqrt(2 C g)",
     .source = "least of C/T + g T/2, lost power growing in proportion to time: R. S. Beebe, Predictive Maintenance of "
               "Pumps Using Condition Monitoring, Elsevier 2004 (from memory of it)",
     .cautions = {reset::more_than_energy,
                  "For a loss that grows steadily from nothing; test at least twice to see whether it does."},
     .example = {"1.333, 18, 8000, 0.15, 400", "\"due\", 10.3936, -7.6064, 923.64", "hand calculation"}});

}  // namespace cutwater::formulas

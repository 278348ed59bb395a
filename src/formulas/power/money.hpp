// What a pump costs over its life.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"

#include <cstdint>
#include <tuple>

namespace cutwater::formulas {

namespace money {

inline constexpr Interval rate = between(-0.2, 1);
inline constexpr const char* exact_rate = "Exact compounding, payments at the ends of the years, as in the guide's own "
                                          "example. Interest less inflation taken for one rate gives a little less.";
inline constexpr const char* source =
    "Hydraulic Institute, Europump and US Department of Energy, Pump Life Cycle Costs: A Guide to LCC Analysis for "
    "Pumping Systems, 2001 (from memory of it; the four results of its example come out to the unit)";

/// Sum of q + q^2 + … + q^years: no difference of near numbers. By doubling the years, at most 63, and the same steps
/// for any.
struct Annuity {
    double sum, last;  // q + … + q^m, and q^m, q the growth over the interest
};

inline Annuity annuity(double growth, double interest, Count years)
{
    const double q = (1 + growth) / (1 + interest);
    const auto all = static_cast<std::uint64_t>(static_cast<std::int32_t>(years.value));
    double power = 1;
    double sum = 0;
    for (int bit = 5; bit >= 0; --bit) {
        sum += power * sum;
        power *= power;
        const std::uint64_t one_more = 0 - (all >> bit & 1);  // as select takes it
        power = elementary::select(one_more, power * q, power);
        sum = elementary::select(one_more, sum + power, sum);
    }
    return {sum, power};
}

constexpr auto interest() { return input("interest_rate", "i", units::fraction, rate, "interest a year"); }
constexpr auto years() { return input("years", "n", units::count, between(1, 60), "years of life"); }
constexpr auto inflation() { return input("inflation_rate", "p", units::fraction, rate, "rise of prices a year", 0); }
constexpr auto yearly(const char* name, const char* symbol, const char* meaning)
{
    return input(name, symbol, units::money, from(0), meaning);
}

}  // namespace money

inline Money annual_energy_cost(Energy energy, Money price) { return {units::kWh.in(energy)*price.value}; }

inline constexpr Record<&annual_energy_cost> annual_energy_cost_record{
    .name = "annual_energy_cost",
    .meaning = "Cost of a year's energy",
    .also = "energy bill|cost of power|operating cost",
    .inputs = {input("energy", "E", units::kWh, from(0), "energy from the mains in the year"),
               input("price_per_kWh", "c", units::money, from(0), "price of a kilowatt-hour, in any one currency")},
    .results = {output("cost", "C", units::money, "cost in that currency")},
    .equation = "C = c E",
    .source = "definition; common practice",
    .cautions = {"Charges for peak demand and reactive power are not in it."},
    .sound_anywhere = true,
    .example = {"105000, 0.18", "18900", "hand calculation"}};

inline Ratio present_value_factor(Fraction interest, Count years, Fraction inflation)
{
    return Ratio(money::annuity(inflation.value, interest.value, years).sum);
}

inline constexpr Record<&present_value_factor> present_value_factor_record{
    .name = "present_value_factor",
    .meaning = "Present value of a cost that returns every year, for one unit of it at today's prices",
    .also = "net present value|discount|annuity",
    .inputs = {money::interest(), money::years(), money::inflation()},
    .results = {output("present_value_factor", "F", units::number, "factor on the yearly cost")},
    .equation = "F = q + q^2 + ... + q^n, q = (1 + p)/(1 + i)",
    .source = money::source,
    .cautions = {money::exact_rate},
    .example = {"0.08, 8, 0.04", "6.77572", "hand calculation: q = 0.962963"}};

inline std::tuple<Money, Money> life_cycle_cost(Money purchase, Money installation, Money energy, Money operation,
                                                Money maintenance, Money downtime, Money environment, Money disposal,
                                                Fraction interest, Count years, Fraction inflation,
                                                Fraction energy_rise, Steps steps)
{
    const auto [factor, end] = money::annuity(inflation.value, interest.value, years);
    const double energy_growth = (1 + inflation.value) * (1 + energy_rise.value) - 1;
    const double energy_factor = money::annuity(energy_growth, interest.value, years).sum;
    const double energy_value = energy_factor * energy.value;
    steps("F", "present value factor of the yearly costs", Ratio(factor), units::number);
    steps("F_e", "present value factor of the energy", Ratio(energy_factor), units::number);
    steps("F_e C_e", "present value of the energy", Money{energy_value}, units::money);
    const double running = operation.value + maintenance.value + downtime.value + environment.value;
    return {{purchase.value + installation.value + energy_value + factor * running + end * disposal.value},
            {energy_value}};
}

inline constexpr Record<&life_cycle_cost> life_cycle_cost_record{
    .name = "life_cycle_cost",
    .meaning = "Present value of all that a pump costs over its life",
    .also = "LCC|cost of ownership|total cost over life",
    .inputs = {money::yearly("purchase", "C_ic", "initial cost: pump, motor, drive, pipework"),
               money::yearly("installation", "C_in", "installation and commissioning"),
               money::yearly("energy", "C_e", "energy a year, at today's price"),
               money::yearly("operation", "C_o", "operation a year: supervision"),
               money::yearly("maintenance", "C_m", "maintenance and repair a year"),
               money::yearly("downtime", "C_s", "loss of production a year"),
               money::yearly("environment", "C_env", "environmental cost a year"),
               money::yearly("disposal", "C_d", "decommissioning at the end, at today's price"), money::interest(),
               money::years(), money::inflation(),
               input("energy_price_rise", "p_e", units::fraction, money::rate,
                     "rise of the energy price a year over and above inflation", 0)},
    .results = {output("life_cycle_cost", "LCC", units::money, "present value of all costs"),
                output("energy_present_value", "F_e C_e", units::money, "of which energy")},
    .equation = "LCC = C_ic + C_in + F_e C_e + F (C_o + C_m + C_s + C_env) + q^n C_d; F = q + ... + q^n, q = (1 + "
                "p)/(1 + i); F_e the same with q (1 + p_e)",
    .source = money::source,
    .cautions = {money::exact_rate, "All sums in one currency, at the prices of the same day."},
    .example = {"5000, 0, 11088, 0, 500, 0, 0, 0, 0.08, 8, 0.04, 0", "83517.08, 75129.22",
                "hand calculation: 5000 + 6.775723 x (11088 + 500)"}};

namespace money {

/// Years until the savings' present value reaches the outlay; the rate's limit at 0 is the plain ratio.
inline double years_to_repay(double ratio, double interest)
{
    return interest == 0 ? ratio : -elementary::log1p(-interest * ratio) / elementary::log1p(interest);
}

inline constexpr const char* never =
    "the savings of a year must be more than a year's interest on the outlay, or it is never repaid";

}  // namespace money

inline Ratio payback_time(Money outlay, Money saving, Fraction interest)
{
    return Ratio(money::years_to_repay(outlay.value / saving.value, interest.value));
}

inline constexpr auto payback_time_record = record<&payback_time>(
    {.name = "payback_time",
     .meaning = "Years until the savings of every year have repaid an outlay",
     .also = "payback|return on investment|pay back",
     .inputs = {input("outlay", "C", units::money, from(0), "what the measure costs more than going on as before, now"),
                input("yearly_saving", "S", units::money, above(0), "what it saves a year, at the end of each year"),
                input("interest_rate", "i", units::fraction, between(0, 1), "interest a year; 0 for simple payback",
                      0)},
     .results = {output("payback_time", "n", units::number, "years; parts of a year by the same formula")},
     .equation = "n = C/S for i = 0; n = -ln(1 - i C/S)/ln(1 + i)",
     .source = "present value of equal payments, solved for their number; common practice",
     .cautions = {"Simple payback leaves out interest and all that comes after; to choose between measures compare "
                  "life_cycle_cost."},
     .sound_anywhere = true,
     .example = {"10000, 2500", "4", "hand calculation"}},
    relation<"yearly_saving", "outlay", "interest_rate">(
        [](Money s, Money c, Fraction i) { return i.value * c.value < s.value; }, money::never));

}  // namespace cutwater::formulas

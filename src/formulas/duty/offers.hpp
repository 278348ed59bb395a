// Two offers held against each other over their lives.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/power/money.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace cutwater::formulas {

enum class BetterOffer { first, second, equal };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<3> cutwater::words_of<cutwater::formulas::BetterOffer>{"first", "second", "equal"};

namespace cutwater::formulas {

namespace offers {

inline constexpr double same = 1e-12;  // of the dearer one: rounding, no difference

}  // namespace offers

inline std::tuple<BetterOffer, Money, Money, Money> two_offers(Money purchase_1, Energy energy_1, Money upkeep_1,
                                                               Money purchase_2, Energy energy_2, Money upkeep_2,
                                                               Money price_per_kWh, Fraction interest, Count years,
                                                               Fraction inflation, Fraction energy_rise, Steps steps)
{
    const double factor = money::annuity(inflation.value, interest.value, years).sum;
    const double energy_growth = (1 + inflation.value) * (1 + energy_rise.value) - 1;
    const double energy_factor = money::annuity(energy_growth, interest.value, years).sum;
    steps("F", "present value factor of the yearly upkeep", Ratio(factor), units::number);
    steps("F_e", "present value factor of the energy", Ratio(energy_factor), units::number);
    const auto life = [&](Money purchase, Energy energy, Money upkeep) {
        return purchase.value + energy_factor * price_per_kWh.value * units::kWh.in(energy) + factor * upkeep.value;
    };
    const double first = life(purchase_1, energy_1, upkeep_1);
    const double second = life(purchase_2, energy_2, upkeep_2);
    const double difference = second - first;
    const bool equal = std::abs(difference) <= offers::same * std::max(first, second);
    return {equal            ? BetterOffer::equal
            : difference > 0 ? BetterOffer::first
                             : BetterOffer::second,
            Money{first}, Money{second}, Money{difference}};
}

inline constexpr Record<&two_offers> two_offers_record{
    .name = "two_offers",
    .meaning = "Two offers compared by what they cost over their lives",
    .also = "bid comparison|bid tab|LCC comparison|cheaper pump or better pump|evaluated price|total cost of ownership",
    .inputs = {input("purchase_1", "C_1", units::money, from(0), "first offer: price with installation"),
               input("energy_1", "E_1", units::kWh, from(0),
                     "first offer: energy a year, from the mains, at the duty profile"),
               input("upkeep_1", "U_1", units::money, from(0),
                     "first offer: maintenance, downtime and all else a year"),
               input("purchase_2", "C_2", units::money, from(0), "second offer: price with installation"),
               input("energy_2", "E_2", units::kWh, from(0), "second offer: energy a year, at the same profile"),
               input("upkeep_2", "U_2", units::money, from(0),
                     "second offer: maintenance, downtime and all else a year"),
               input("price_per_kWh", "c", units::money, from(0), "price of a kilowatt-hour today"), money::interest(),
               money::years(), money::inflation(),
               input("energy_price_rise", "p_e", units::fraction, money::rate,
                     "rise of the energy price a year over and above inflation", 0)},
    .results = {output_word<BetterOffer>("better", "better", "the offer that costs less over its life"),
                output("cost_1", "LCC_1", units::money, "present value of the first offer's costs"),
                output("cost_2", "LCC_2", units::money, "present value of the second offer's costs"),
                output("difference", "LCC_2 - LCC_1", units::money, "what the second costs more; negative: less")},
    .equation = "LCC = C + F_e c E + F U; F = q + ... + q^n, q = (1 + p)/(1 + i); F_e the same with q (1 + p_e)",
    .source = money::source,
    .cautions = {money::exact_rate, "All sums in one currency, at the prices of the same day.",
                 "A difference smaller than the uncertainty of the hours, the efficiencies offered and the energy "
                 "price decides nothing.",
                 "Offers must be for the same duty profile, scope and life; efficiency is worth what its test "
                 "tolerance leaves of it."},
    .example = {"5000, 61600, 500, 9000, 50000, 500, 0.18, 0.08, 8, 0.04, 0",
                "\"second\", 83517.08, 73369.37, -10147.71",
                "hand calculation: 5000 + 6.775723 x 11588; 9000 + 6.775723 x 9500"}};

}  // namespace cutwater::formulas

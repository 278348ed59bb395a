// Free gas in the liquid at the pump's inlet.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <cstddef>
#include <iterator>
#include <tuple>

namespace cutwater::formulas {

namespace gas {

/// Share of the performance that is left at a share of gas.
struct Left {
    double share, ratio;
};
inline constexpr Left left[] = {{0, 1}, {0.02, 0.88}, {0.04, 0.60}};

inline constexpr const char* at_the_inlet =
    "By volume at the pump's inlet, where the gas is largest: a share measured at another pressure goes through "
    "gas_share_at_pressure first.";
inline constexpr const char* collects =
    "Gas gathers in the impeller's eye, most at low flow and with a small margin of NPSH: a pump that starts with it "
    "may lose its prime. Open impellers and inducers bear more, closed ones of low specific speed less.";
inline constexpr const char* dissolved = "Gas dissolved in the liquid comes out at low pressure and adds to it.";
inline constexpr const char* dry_seal = "Gas at the shaft seal runs it dry; that of a toxic liquid leaks then.";

constexpr auto share(double highest)
{
    return input("gas_share", "alpha", units::fraction, between(0, highest),
                 "free gas over the whole mixture, by volume at the inlet");
}

}  // namespace gas

inline Fraction gas_share_at_pressure(Fraction share, AbsolutePressure pressure, AbsolutePressure new_pressure)
{
    const double gas = share.value * Ratio(pressure.above_zero() / new_pressure.above_zero()).value();
    return {gas / (gas + 1 - share.value)};
}

inline constexpr Record<&gas_share_at_pressure> gas_share_at_pressure_record{
    .name = "gas_share_at_pressure",
    .meaning = "Share of free gas in a liquid at another pressure, the temperature the same",
    .also = "void fraction|entrained air at suction pressure|gas volume fraction|GVF",
    .inputs = {input("gas_share", "alpha", units::fraction, from_below(0, 1),
                     "free gas over the whole mixture, by volume at the first pressure"),
               input("pressure", "p", units::bara, limits::surface_bara, "pressure at which the share is known"),
               input("new_pressure", "p'", units::bara, limits::surface_bara, "pressure asked about")},
    .results = {output("new_share", "alpha'", units::fraction, "free gas over the whole mixture at that pressure")},
    .equation = "alpha' = alpha (p/p')/(alpha (p/p') + 1 - alpha)",
    .source = "Boyle's law; any textbook",
    .cautions =
        {"Gas that dissolves or comes out of solution meanwhile is left out, and so is the vapour's own part of "
         "the pressure."},
    .example = {"0.02, 1.01325, 0.5", "0.0397147", "hand calculation: 0.04053/(0.04053 + 0.98)"}};

inline Head npsh3_with_gas(Head npsh3, Fraction share, Ratio rise)
{
    return npsh3 * (1 + rise.value() * 100 * share.value);
}

inline constexpr Record<&npsh3_with_gas> npsh3_with_gas_record{
    .name = "npsh3_with_gas",
    .meaning = "NPSH3 with a little free gas at the inlet, from that on gas-free liquid",
    .also = "NPSHR with entrained air|air ingestion|gas content",
    .inputs = {input("npsh3", "NPSH3", units::metre, limits::head_above_0_m,
                     "NPSH3 on gas-free liquid at the same flow"),
               gas::share(0.02),
               input("rise", "c", units::number, between(0, 2), "rise for each per cent of gas: 0.5 is half of NPSH3",
                     0.5)},
    .results = {output("npsh3_with_gas", "NPSH3'", units::metre, "NPSH3 with the gas")},
    .equation = "NPSH3' = NPSH3 (1 + c alpha/1 %)",
    .source = "US Nuclear Regulatory Commission, Regulatory Guide 1.82, air ingestion up to 2 % by volume, 0.5 (from "
              "memory of it; the text could not be read)",
    .cautions = {gas::at_the_inlet, gas::collects, gas::dissolved, caution::npsh_margin},
    .example = {"4, 0.01", "6", "hand calculation: 4 x 1.5"}};

inline std::tuple<Head, Ratio> head_with_gas(Head head, Fraction share)
{
    std::size_t i = 1;
    while (i + 1 < std::size(gas::left) && gas::left[i].share < share.value) ++i;
    const gas::Left &low = gas::left[i - 1], &high = gas::left[i];
    const double ratio = low.ratio + (high.ratio - low.ratio) * (share.value - low.share) / (high.share - low.share);
    return {head * ratio, Ratio(ratio)};
}

inline constexpr Record<&head_with_gas> head_with_gas_record{
    .name = "head_with_gas",
    .meaning = "Head that a pump may fall to with free gas at its inlet: a cautious guide",
    .also = "entrained air|air in the pump|gas binding|air content|gas content|loss of head by air",
    .inputs = {input("head", "H", units::metre, limits::head_from_0_m, "head on gas-free liquid at the same flow"),
               gas::share(0.04)},
    .results = {output("head_with_gas", "H'", units::metre, "head that it may fall to"),
                output("ratio", "H'/H", units::number, "share of the performance that is left")},
    .equation = "H' = H r; r straight between 1, 0.88 and 0.60 at 0, 2 and 4 % of gas",
    .source = "a pump trader's guide: 2 % of air can cost 12 % of the performance, 4 % cost 40 %, and at 10 % the pump "
              "likely stalls (read); a care manual's 10 % of capacity lost at 2 % (as two trade pages quote it, read)",
    .cautions = {"A guide for ordinary pumps with closed impellers, and a cautious one: tests on large pumps near best "
                 "efficiency found little loss up to 2 % (NUREG/CR-2792, from memory). Single pumps scatter widely.",
                 "Beyond 4 % no answer is given: the pump may stop delivering. Keep the gas out: submergence, return "
                 "lines below the level, tight glands.",
                 gas::at_the_inlet, gas::collects, gas::dry_seal, caution::guide_only},
    .example = {"50, 0.01", "47, 0.94", "hand calculation: halfway between 1 and 0.88"}};

}  // namespace cutwater::formulas

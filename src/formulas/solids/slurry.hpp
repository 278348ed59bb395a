// What solids in the liquid do to a pump's head, efficiency and power.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas {

enum class SlurryCorrelation { engin_gur, cave };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::SlurryCorrelation>{"Engin and Gur", "Cave"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace solids {

/// What is lost, as a part of the value on water. Both correlations take the median size in mm.
inline double loss(Fraction mass_fraction, Ratio relative_density, Length size, Length diameter,
                   SlurryCorrelation correlation)
{
    const double s = relative_density.value();
    if (correlation == SlurryCorrelation::cave)
        return 0.0385 * (s - 1) * (1 + 4 / s) * mass_fraction.value * elementary::log(units::mm.in(size) / 0.0227);
    return 2.705 * mass_fraction.value * elementary::positive_pow(s - 1, 0.64) *
           elementary::positive_pow((size / diameter).value(), 0.313);
}

inline Ratio kept(Fraction mass_fraction, Ratio relative_density, Length size, Length diameter,
                  SlurryCorrelation correlation)
{
    return Ratio(1 - loss(mass_fraction, relative_density, size, diameter, correlation));
}

constexpr auto mass_fraction()
{
    return input("solids_mass_fraction", "C_w", units::fraction, between(0, 0.65),
                 "mass of solids over mass of slurry");
}
constexpr auto relative_density()
{
    return input("solids_relative_density", "s", units::number, above_up_to(1, 6.3),
                 "density of the solids over that of the liquid");
}
constexpr auto median_size()
{
    return input("median_size", "d50", units::mm, above_up_to(0, 20), "size that half of the solids' mass lies below");
}
constexpr auto diameter()
{
    return input("impeller_diameter", "D", units::mm, between(50, 850),
                 "diameter of the impeller; Engin and Gur's tests had 150 to 850 mm");
}
constexpr auto correlation()
{
    return choice<SlurryCorrelation>("correlation", "correlation", "whose correlation to use",
                                     SlurryCorrelation::engin_gur);
}

inline constexpr auto size_in_cave = relation<"median_size", "correlation">(
    [](Length size, SlurryCorrelation c) { return (c != SlurryCorrelation::cave) | (units::mm.in(size) >= 0.0227); },
    "Cave's correlation begins at 0.0227 mm: finer solids do not settle and act as a thicker liquid");
inline constexpr auto size_in_tests = relation<"impeller_diameter", "correlation">(
    [](Length diameter, SlurryCorrelation c) {
        return (c != SlurryCorrelation::engin_gur) | (units::mm.in(diameter) >= 150 * (1 - 1e-9));
    },
    "Engin and Gur's correlation begins at 150 mm: for a smaller impeller take Cave's, which knows no pump size, or "
    "the pump maker's tests on slurry");
inline constexpr const char* not_tested = "more than 60 % would be lost, outside anything that was tested";
inline constexpr auto tested =
    relation<"solids_mass_fraction", "solids_relative_density", "median_size", "impeller_diameter", "correlation">(
        [](Fraction f, Ratio s, Length size, Length diameter, SlurryCorrelation c) {
            return loss(f, s, size, diameter, c) <= 0.6;
        },
        not_tested);

inline constexpr const char* equation = "1 - K; Engin and Gur: K = 2.705 C_w (s - 1)^0.64 (d50/D)^0.313; Cave: K = "
                                        "0.0385 (s - 1)(1 + 4/s) C_w ln(d50/0.0227 mm)";
inline constexpr const char* source = "T. Engin and M. Gur, J. Fluids Eng. 125 (2003) 149-157 (abstract read, formula "
                                      "from memory); I. Cave, Hydrotransport 4, BHRA 1976, "
                                      "paper H3 (from memory)";
inline constexpr const char* scatter = "Settling, narrowly graded solids in a thin liquid only; Engin and Gur report a "
                                       "mean deviation of 8 % of the head ratio and 12 % of the "
                                       "efficiency ratio. Not for pastes, clays or fibres.";
inline constexpr const char* size_of_pump =
    "Cave's correlation knows no pump size and gives too much loss for large pumps: with sand of 2.2 mm and 35 % by "
    "volume in an impeller of 625 mm it takes off 43 %, Engin and Gur 37 %, where up to 30 % was measured (A. Sellgren "
    "et al. 2000, excerpt read). Small pumps lose more than large ones: below 150 mm take it as the least to expect.";
inline constexpr const char* efficiency_apart =
    "Impellers above about 0.4 m usually lose less efficiency than head; above about 20 % by volume efficiency may "
    "fall more than head (common practice; "
    "a handbook read in excerpt).";

}  // namespace solids

inline Ratio slurry_head_ratio(Fraction mass_fraction, Ratio relative_density, Length size, Length diameter,
                               SlurryCorrelation correlation)
{
    return solids::kept(mass_fraction, relative_density, size, diameter, correlation);
}

inline constexpr auto slurry_head_ratio_record = record<&slurry_head_ratio>(
    {.name = "slurry_head_ratio",
     .meaning = "Head of a pump in metres of slurry over its head in metres of water at the same flow",
     .also = "slurry derating|HR|solids effect",
     .inputs = {solids::mass_fraction(), solids::relative_density(), solids::median_size(), solids::diameter(),
                solids::correlation()},
     .results = {output("head_ratio", "HR", units::number, "head on slurry over head on water")},
     .equation = solids::equation,
     .source = solids::source,
     .cautions = {solids::scatter, solids::size_of_pump, caution::guide_only},
     .sound_anywhere = true,
     .example = {"0.3, 2.65, 0.5, 400", "0.86202", "independent computation"}},
    solids::size_in_cave, solids::size_in_tests, solids::tested);

inline Ratio slurry_efficiency_ratio(Fraction mass_fraction, Ratio relative_density, Length size, Length diameter,
                                     SlurryCorrelation correlation)
{
    return solids::kept(mass_fraction, relative_density, size, diameter, correlation);
}

inline constexpr auto slurry_efficiency_ratio_record = record<&slurry_efficiency_ratio>(
    {.name = "slurry_efficiency_ratio",
     .meaning = "Efficiency of a pump on slurry over its efficiency on water; both authors take the head ratio for it",
     .also = "slurry derating|ER|solids effect",
     .inputs = {solids::mass_fraction(), solids::relative_density(), solids::median_size(), solids::diameter(),
                solids::correlation()},
     .results = {output("efficiency_ratio", "ER", units::number, "efficiency on slurry over efficiency on water")},
     .equation = solids::equation,
     .source = solids::source,
     .cautions = {solids::scatter, solids::size_of_pump, solids::efficiency_apart, caution::guide_only},
     .sound_anywhere = true,
     .example = {"0.3, 2.65, 0.5, 400", "0.86202", "independent computation"}},
    solids::size_in_cave, solids::size_in_tests, solids::tested);

inline std::tuple<Power, Head, Fraction> slurry_power(Flow flow, Head water_head, Fraction water_efficiency,
                                                      Density density, Ratio head_ratio, Ratio efficiency_ratio)
{
    const Head head = head_ratio * water_head;
    const double efficiency = efficiency_ratio.value() * water_efficiency.value;
    return {Power(density * standard_gravity * flow * head / efficiency), head, Fraction{efficiency}};
}

inline constexpr Record<&slurry_power> slurry_power_record{
    .name = "slurry_power",
    .meaning = "Power, head and efficiency of a pump on slurry, from a point of its curve on water",
    .also = "slurry derating|slurry horsepower",
    .inputs = {input("flow", "Q", units::m3h, above(0), "flow of the slurry"),
               input("water_head", "H_w", units::metre, above(0), "head on water at that flow"),
               input("water_efficiency", "eta_w", units::fraction, above_up_to(0, 1),
                     "efficiency on water at that flow"),
               input("slurry_density", "rho_m", units::kgm3, limits::density_kgm3, "density of the slurry"),
               input("head_ratio", "HR", units::number, above_up_to(0, 1), "as from slurry_head_ratio"),
               input("efficiency_ratio", "ER", units::number, above_up_to(0, 1), "as from slurry_efficiency_ratio")},
    .results = {output("power", "P", units::kW, "pump power input"),
                output("slurry_head", "H_m", units::metre, "head in metres of slurry"),
                output("slurry_efficiency", "eta_m", units::fraction, "efficiency on slurry")},
    .equation = "H_m = HR H_w; eta_m = ER eta_w; P = rho_m g Q H_m/eta_m",
    .source = "ISO 17769-1:2012, pump power input (from memory of it), with the ratios put in",
    .cautions = {"The head is in metres of slurry: do not multiply it by the relative density again.",
                 caution::guide_only},
    .sound_anywhere = true,
    .example = {"200, 40, 0.7, 1230, 0.9, 0.9", "38.293, 36, 0.63", "hand calculation"}};

inline Ratio wear_life_ratio(Ratio speed_ratio, Ratio exponent)
{
    return Ratio(elementary::positive_pow(speed_ratio.value(), -exponent.value()));
}

inline constexpr Record<&wear_life_ratio> wear_life_ratio_record{
    .name = "wear_life_ratio",
    .meaning = "Life against erosion at another speed, over the life now",
    .also = "erosion|abrasion|impeller life|wear life",
    .inputs = {input("speed_ratio", "n'/n", units::number, between(0.2, 2), "new speed over the speed now"),
               input("exponent", "x", units::number, between(1, 5),
                     "power of the velocity that wear goes with; 2 to 3.5 reported, 2.5 to 3 common practice", 2.5)},
    .results = {output("life_ratio", "L'/L", units::number, "life at the new speed over the life now")},
    .equation = "L'/L = (n'/n)^-x",
    .source = "erosive wear goes with a power of velocity, W. Wiedenroth 1984 (as quoted in trade literature, excerpt "
              "read); common practice",
    .cautions = {"Same pump, slurry and place on the curve. The exponent decides: take it from your own wear records "
                 "where you can."},
    .sound_anywhere = true,
    .example = {"0.8", "1.7469", "hand calculation"}};

}  // namespace cutwater::formulas

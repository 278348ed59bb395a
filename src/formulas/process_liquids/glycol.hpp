// Ethylene and propylene glycol in water: what a pump of a cooling or heating circuit meets.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"

namespace cutwater::formulas {

enum class Glycol { ethylene, propylene };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::Glycol>{"ethylene glycol",
                                                                                   "propylene glycol"};

namespace cutwater::formulas {

namespace glycols {

/// Coefficients of (x - x_m)^i (t - t_m)^j: four of j for i 0 to 2, then three, two and one.
using Coefficients = double[18];

struct Constants {
    double mean_share, mean_temperature;  // x_m in per cent by mass, t_m in degC
    Coefficients freezing, density, viscosity, specific_heat;
};

inline constexpr Constants table[] = {
    {30.8462,
     31.728,
     {-1.5250e+01, -1.5660e-06, -2.2780e-07, 2.1690e-09, -8.0800e-01, -1.3390e-06, 2.0470e-08, -2.7170e-11, -1.3340e-02,
      6.3220e-08, 2.3730e-10, -2.1830e-12, -7.2930e-05, 1.7640e-09, -2.4420e-11, 1.0060e-06, -7.6620e-11, 1.1400e-09},
     {1.0340e+03, -4.7810e-01, -2.6920e-03, 4.7250e-06, 1.3110e+00, -6.8760e-03, 4.8050e-05, 1.6900e-08, 7.4900e-05,
      7.8550e-05, -3.9950e-07, 4.9820e-09, -1.0620e-04, 1.2290e-06, -1.1530e-08, -9.6230e-07, -7.2110e-08, 4.8910e-08},
     {4.7050e-01, -2.5500e-02, 1.7820e-04, -7.6690e-07, 2.4710e-02, -1.1710e-04, 1.0520e-06, -1.6340e-08, 3.3280e-06,
      1.0860e-06, 1.0510e-08, -6.4750e-10, 1.6590e-06, 3.1570e-09, 4.0630e-10, 3.0890e-08, 1.8310e-10, -1.8650e-09},
     {3.7370e+03, 2.9300e+00, -4.6750e-03, -1.3890e-05, -1.7990e+01, 1.0460e-01, -4.1470e-04, 1.8470e-07, -9.9330e-02,
      3.5160e-04, 5.1090e-06, -7.1380e-08, 2.6100e-03, -1.1890e-06, -1.6430e-07, 1.5370e-05, -4.2720e-07, -1.6180e-06}},
    {30.7031,
     32.7083,
     {-1.3250e+01, -3.8200e-05, 7.8650e-07, -1.7330e-09, -6.6310e-01, 6.7740e-06, -6.2420e-08, -7.8190e-10, -1.0940e-02,
      5.3320e-08, -4.1690e-09, 3.2880e-11, -2.2830e-04, -1.1310e-08, 1.9180e-10, -3.4090e-06, 8.0350e-11, 1.4650e-08},
     {1.0180e+03, -5.4060e-01, -2.6660e-03, 1.3470e-05, 7.6040e-01, -9.4500e-03, 5.5410e-05, -1.3430e-07, -2.4980e-03,
      2.7000e-05, -4.0180e-07, 3.3760e-09, -1.5500e-04, 2.8290e-06, -7.1750e-09, -1.1310e-06, -2.2210e-08, 2.3420e-08},
     {6.8370e-01, -3.0450e-02, 2.5250e-04, -1.3990e-06, 3.3280e-02, -3.9840e-04, 4.3320e-06, -1.8600e-08, 5.4530e-05,
      -8.6000e-08, -1.5930e-08, -4.4650e-11, -3.9000e-06, 1.0540e-07, -1.5890e-09, -1.5870e-08, 4.4750e-10, 3.5640e-09},
     {3.8820e+03, 2.6990e+00, -1.6590e-03, -1.0320e-05, -1.3040e+01, 5.0700e-02, -4.7520e-05, 1.5220e-06, -1.5980e-01,
      9.5340e-05, 1.1670e-05, -4.8700e-08, 3.5390e-04, 3.1020e-05, -2.9500e-07, 5.0000e-05, -7.1350e-07, -4.9590e-07}}};

inline const Constants& constants(Glycol glycol) { return table[static_cast<int>(glycol)]; }

inline double polynomial(const Coefficients& c, double x, double y)
{
    const auto cubic = [&](int i) { return c[i] + y * (c[i + 1] + y * (c[i + 2] + y * c[i + 3])); };
    const double square = c[12] + y * (c[13] + y * c[14]);
    const double linear = c[15] + y * c[16];
    return cubic(0) + x * (cubic(4) + x * (cubic(8) + x * (square + x * (linear + x * c[17]))));
}

/// Melinder's terms in t are nearly nothing here; they are taken at t_m, as the library read does.
inline double freezing_celsius(const Constants& of, double share)
{
    return polynomial(of.freezing, 100 * share - of.mean_share, of.mean_temperature);
}

inline double property(const Constants& of, const Coefficients& c, double share, double celsius)
{
    return polynomial(c, 100 * share - of.mean_share, celsius - of.mean_temperature);
}

inline bool liquid(const Constants& of, double share, double celsius) { return celsius >= freezing_celsius(of, share); }

inline NoValue frozen(const Constants& of, Fraction share, Temperature t)
{
    return {CUTWATER_OUT_OF_INTERVAL,
            "temperature",
            "{0} lies below {1}, where crystals begin to form in the mixture",
            {number_in(t, units::degC), {freezing_celsius(of, share.value), units::degC.info->symbol}}};
}

constexpr auto glycol() { return choice<Glycol>("glycol", "glycol", "which glycol is in the water"); }
constexpr auto mass_fraction()
{
    return input("mass_fraction", "x", units::fraction, between(0, 0.6), "the glycol's share by mass");
}
constexpr auto temperature()
{
    return input("temperature", "t", units::degC, between(-60, 100),
                 "temperature of the mixture; not below its freezing point");
}

inline constexpr const char* source =
    "A. Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd edition, International Institute of "
    "Refrigeration, 2010 (not "
    "read; polynomials and constants as the open library SecondaryCoolantProps carries them, read and run)";
inline constexpr const char* by_mass = "By mass: trade names its mixtures by volume as often. 30 % by volume of "
                                       "ethylene glycol is about 32 % by mass, by the densities of the two.";
inline constexpr const char* inhibited =
    "Inhibitors of technical grades change density and viscosity a little: ask their maker.";
inline constexpr const char* cold_start =
    "Size for the coldest start: glycol mixtures thicken many times over before they freeze.";

}  // namespace glycols

inline Temperature glycol_freezing_point(Glycol glycol, Fraction mass_fraction)
{
    return glycols::freezing_celsius(glycols::constants(glycol), mass_fraction.value) * units::degC;
}

inline constexpr Record<&glycol_freezing_point> glycol_freezing_point_record{
    .name = "glycol_freezing_point",
    .meaning = "Temperature at which crystals begin to form in a mixture of glycol and water",
    .also = "antifreeze|freeze protection|freeze point|burst protection",
    .inputs = {glycols::glycol(), glycols::mass_fraction()},
    .results = {output("freezing_point", "t_f", units::degC, "temperature at which the first crystals form")},
    .equation = "polynomial in x - x_m and t - t_m, up to the fifth power, with the constants of the source",
    .source = glycols::source,
    .cautions = {glycols::by_mass,
                 "Keep a margin of several kelvins: slush blocks small passages, seal flushing lines first."},
    .example = {"\"ethylene glycol\", 0.3", "-14.576", "the library's printed test value"}};

inline Outcome<Density> glycol_density(Glycol glycol, Fraction mass_fraction, Temperature temperature)
{
    const glycols::Constants& of = glycols::constants(glycol);
    const double t = units::degC.in(temperature);
    const bool liquid = glycols::liquid(of, mass_fraction.value, t);
    return {glycols::property(of, of.density, mass_fraction.value, t) * units::kgm3, liquid,
            liquid ? NoValue{} : glycols::frozen(of, mass_fraction, temperature)};
}

inline constexpr Record<&glycol_density> glycol_density_record{
    .name = "glycol_density",
    .meaning = "Density of a mixture of glycol and water",
    .also = "antifreeze|coolant density|MEG|PG|specific gravity of glycol",
    .inputs = {glycols::glycol(), glycols::mass_fraction(), glycols::temperature()},
    .results = {output("density", "rho", units::kgm3, "density of the mixture")},
    .equation = "rho = polynomial in x - x_m and t - t_m, with the constants of the source",
    .source = glycols::source,
    .cautions = {glycols::by_mass, glycols::inhibited},
    .example = {"\"ethylene glycol\", 0.3, 20", "1038.0455", "the open library, run"}};

inline Outcome<DynamicViscosity> glycol_dynamic_viscosity(Glycol glycol, Fraction mass_fraction,
                                                          Temperature temperature)
{
    const glycols::Constants& of = glycols::constants(glycol);
    const double t = units::degC.in(temperature);
    const bool liquid = glycols::liquid(of, mass_fraction.value, t);
    return {elementary::exp(glycols::property(of, of.viscosity, mass_fraction.value, t)) * units::mPas, liquid,
            liquid ? NoValue{} : glycols::frozen(of, mass_fraction, temperature)};
}

inline constexpr Record<&glycol_dynamic_viscosity> glycol_dynamic_viscosity_record{
    .name = "glycol_dynamic_viscosity",
    .meaning = "Dynamic viscosity of a mixture of glycol and water",
    .also = "antifreeze|coolant viscosity|MEG|PG",
    .inputs = {glycols::glycol(), glycols::mass_fraction(), glycols::temperature()},
    .results = {output("viscosity", "mu", units::mPas, "dynamic viscosity of the mixture")},
    .equation = "ln mu = polynomial in x - x_m and t - t_m, with the constants of the source, mu in mPa s",
    .source = glycols::source,
    .cautions = {glycols::by_mass, glycols::inhibited, glycols::cold_start},
    .example = {"\"ethylene glycol\", 0.3, 20", "2.166449", "the open library, run"}};

inline Outcome<SpecificHeat> glycol_specific_heat(Glycol glycol, Fraction mass_fraction, Temperature temperature)
{
    const glycols::Constants& of = glycols::constants(glycol);
    const double t = units::degC.in(temperature);
    const bool liquid = glycols::liquid(of, mass_fraction.value, t);
    return {1e-3 * glycols::property(of, of.specific_heat, mass_fraction.value, t) * units::kJkgK, liquid,
            liquid ? NoValue{} : glycols::frozen(of, mass_fraction, temperature)};
}

inline constexpr Record<&glycol_specific_heat> glycol_specific_heat_record{
    .name = "glycol_specific_heat",
    .meaning = "Specific heat capacity of a mixture of glycol and water",
    .also = "antifreeze|coolant heat capacity|MEG|PG",
    .inputs = {glycols::glycol(), glycols::mass_fraction(), glycols::temperature()},
    .results = {output("specific_heat", "c_p", units::kJkgK, "specific heat of the mixture")},
    .equation = "c_p = polynomial in x - x_m and t - t_m, with the constants of the source",
    .source = glycols::source,
    .cautions = {glycols::by_mass, glycols::inhibited},
    .example = {"\"ethylene glycol\", 0.3, 20", "3.718251", "the open library, run"}};

}  // namespace cutwater::formulas

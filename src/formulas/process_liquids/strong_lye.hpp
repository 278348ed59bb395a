// Strong caustic soda solution: its vapour pressure, far below water's, and its density when hot.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/process_liquids/solutions.hpp"

#include <cmath>
#include <cstddef>
#include <utility>

namespace cutwater::formulas {

namespace lye {

// Of powers of the logarithm of the water's share, from the zeroth on; temperatures in degC, the pressure in kPa.
inline constexpr double a[] = {-113.93947, 209.82305,  494.77153,  6860.8330, 2676.6433,
                               -21740.328, -34750.872, -20122.157, -4102.9890};
inline constexpr double b[] = {16.240074,  -11.864008, -223.47305, -1650.3997, -5997.3118, -12318.744,
                               -15303.153, -11707.480, -5364.9554, -1338.5412, -137.96889};
inline constexpr double c[] = {-226.80157, 293.17155, 5081.8791, 36752.126, 131262.00, 259399.54,
                               301696.22,  208617.90, 81774.024, 15648.526, 906.29769};

template <std::size_t N>
double polynomial(const double (&of)[N], double x)
{
    return [&]<std::size_t... I>(std::index_sequence<I...>) {
        double sum = 0;
        ((sum = sum * x + of[N - 1 - I]), ...);
        return sum;
    }(std::make_index_sequence<N>());
}

// Of powers of the root of the water's share; in kg/m3, with the temperature in degC to the powers 0, 1 and 2.
inline constexpr double d[][6] = {
    {5007.2279636, -25131.164248, 74107.692582, -104657.48684, 69821.773186, -18145.911810},
    {-64.786269079, 525.34360564, -1608.4471903, 2350.9753235, -1660.9035108, 457.6437435},
    {0.24436776978, -1.9737722344, 6.04601497138, -8.9090614947, 6.37146769397, -1.7816083111}};

/// The strongest lye that the correlation covers at a temperature.
inline double strongest(double celsius)
{
    using elementary::select;
    const double warm = select(celsius < 70, 0.647, select(celsius < 150, 0.7, 0.8));
    return select(celsius < 20, 0.418, select(celsius < 60, 0.5, warm));
}

}  // namespace lye

inline Outcome<AbsolutePressure> caustic_soda_vapour_pressure(Fraction mass_fraction, Temperature temperature)
{
    const double t = units::degC.in(temperature);
    const double strongest = lye::strongest(t + 1e-9);
    const double x = elementary::log(1 - mass_fraction.value);
    const double kPa = elementary::exp((lye::polynomial(lye::a, x) + lye::polynomial(lye::b, x) * t) /
                                       (t - lye::polynomial(lye::c, x)));
    return {units::kPa_a(kPa), mass_fraction.value <= strongest + 1e-12,
            NoValue{CUTWATER_OUT_OF_INTERVAL,
                    "mass_fraction",
                    "{0} is stronger than the correlation covers at {1}, up to {2}",
                    {number_in(mass_fraction, units::fraction), number_in(temperature, units::degC), {strongest, ""}}}};
}

inline constexpr Record<&caustic_soda_vapour_pressure> caustic_soda_vapour_pressure_record{
    .name = "caustic_soda_vapour_pressure",
    .meaning = "Vapour pressure of caustic soda solution by its concentration and temperature",
    .also = "lye vapour pressure|NaOH vapour pressure|caustic vapor pressure|boiling point of lye|sodium hydroxide",
    .inputs = {input("mass_fraction", "w", units::fraction, between(0, 0.8),
                     "caustic soda's share by mass; 0.418 at most below 20 degC, 0.5 below 60, 0.647 below 70, 0.7 "
                     "below 150, 0.8 above"),
               input("temperature", "t", units::degC, between(0, 200), "temperature of the lye")},
    .results = {output("vapour_pressure", "p_v", units::bara, "its vapour pressure")},
    .equation = "ln p_v = (a + b t)/(t - c), in kPa and degC; a, b, c: polynomials in ln(1 - w) with the constants of "
                "the source",
    .source = "J. Olsson, A. Jernqvist and G. Aly, Int. J. Thermophysics 18 (1997) 779 (as two open codes print it, "
              "read; the paper not read)",
    .cautions =
        {"Water in place of the lye would give a lower NPSH available: the safe side. Do not count on the lye's "
         "low pressure where it may be diluted or flushed.",
         "Without caustic soda it is within 1 % of water's.", solutions::pure_solute, caution::inlet_vapour_pressure,
         solutions::corrosive},
    .example = {"0.5, 100", "0.176841", "the equation computed apart"}};

inline Density strong_caustic_soda_density(Fraction mass_fraction, Temperature temperature)
{
    const double root = std::sqrt(1 - mass_fraction.value);
    const double t = units::degC.in(temperature);
    return (lye::polynomial(lye::d[0], root) +
            t * (lye::polynomial(lye::d[1], root) + t * lye::polynomial(lye::d[2], root))) *
           units::kgm3;
}

inline constexpr Record<&strong_caustic_soda_density> strong_caustic_soda_density_record{
    .name = "strong_caustic_soda_density",
    .meaning = "Density of strong caustic soda solution, 20 to 50 % by mass, warm and hot",
    .also = "50 % caustic|lye density|NaOH density|sodium hydroxide|specific gravity of caustic",
    .inputs = {input("mass_fraction", "w", units::fraction, between(0.2, 0.5), "caustic soda's share by mass"),
               input("temperature", "t", units::degC, between(20, 100), "temperature of the lye")},
    .results = {output("density", "rho", units::kgm3, "density of the lye near atmospheric pressure")},
    .equation = "rho = b_1 + b_2 t + b_3 t^2; b: polynomials in (1 - w)^0.5 with the constants of the source",
    .source = "J. Olsson, A. Jernqvist and G. Aly, Int. J. Thermophysics 18 (1997) 779 (as an open package prints it, "
              "read; the paper not read); interval of its use: set here, where it could be checked",
    .cautions = {"Against the International Critical Tables (as a trade table prints them, read) it is within 0.2 %, "
                 "where solution_density is within 1.6 %.",
                 "Lye of 50 % freezes at about 12 to 14 degC: trace the lines.", solutions::pure_solute,
                 solutions::corrosive},
    .example = {"0.5, 100", "1467.74", "the equation computed apart; the tables: 1469.0"}};

}  // namespace cutwater::formulas

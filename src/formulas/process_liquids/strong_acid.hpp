// Sulphuric acid stronger than the correlation of solution_density reaches, from a table.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/lookup.hpp"
#include "catalogue/record.hpp"
#include "formulas/process_liquids/solutions.hpp"

#include <cstddef>
#include <iterator>

namespace cutwater::formulas {

namespace strong_acid {

/// Density in g/cm3 at a share in per cent by mass: a + b T, T in kelvin.
struct Row {
    double percent, a, b;
};

inline constexpr Row table[] = {
    {74, 1.92395, -0.000908778},  {75, 1.93904, -0.000920012}, {76, 1.95438, -0.000932184}, {78, 1.98574, -0.000959514},
    {79, 2.00151, -0.000974043},  {80, 2.01703, -0.000988264}, {81, 2.03234, -0.00100258},  {82, 2.04716, -0.00101634},
    {83, 2.06082, -0.00102762},   {84, 2.07363, -0.00103757},  {85, 2.08461, -0.00104337},  {86, 2.09386, -0.00104563},
    {87, 2.10143, -0.00104458},   {88, 2.10764, -0.00104144},  {89, 2.11283, -0.00103719},  {90, 2.11671, -0.00103089},
    {91, 2.11938, -0.00102262},   {92, 2.12125, -0.00101355},  {93, 2.1219, -0.00100249},   {94, 2.12723, -0.00100934},
    {95, 2.12654, -0.000998299},  {96, 2.12621, -0.000990961}, {97, 2.12561, -0.000985845}, {98, 2.12494, -0.000984529},
    {100, 2.12093, -0.000989315},
};

inline double at(const Row& row, double kelvin) { return row.a + row.b * kelvin; }

}  // namespace strong_acid

inline Density strong_sulphuric_acid_density(Fraction mass_fraction, Temperature temperature)
{
    const double kelvin = units::kelvin.in(temperature);
    const double percent = 100 * mass_fraction.value;
    const std::size_t i = 1 + passed<std::size(strong_acid::table) - 2>(strong_acid::table + 1,
                                                                        &strong_acid::Row::percent, percent);
    const strong_acid::Row &below = strong_acid::table[i - 1], &above = strong_acid::table[i];
    const double along = (percent - below.percent) / (above.percent - below.percent);
    const double low = strong_acid::at(below, kelvin);
    return 1000 * (low + along * (strong_acid::at(above, kelvin) - low)) * units::kgm3;
}

inline constexpr Record<&strong_sulphuric_acid_density> strong_sulphuric_acid_density_record{
    .name = "strong_sulphuric_acid_density",
    .meaning = "Density of strong sulphuric acid, 74 to 100 % by mass, by its concentration and temperature",
    .also = "98 % sulphuric acid|sulfuric acid|oil of vitriol|H2SO4|concentrated acid|specific gravity of acid",
    .inputs = {input("mass_fraction", "w", units::fraction, between(0.74, 1), "the acid's share by mass"),
               input("temperature", "t", units::degC, between(0, 100), "temperature of the acid")},
    .results = {output("density", "rho", units::kgm3, "density near atmospheric pressure")},
    .equation = "rho = a(w) + b(w) T with the table's a and b, straight between its shares; T in kelvin",
    .source = "International Critical Tables 3 (1928), 0 to 100 degC, as straight lines of an open atmospheric code "
              "(read); the tables not read",
    .cautions =
        {"Against a handbook's table at 20 degC (read) it is within 0.03 %; a few tenths of a per cent from the "
         "correlation of solution_density where both reach.",
         "Density does not tell the strength here: it is greatest near 97.5 % and falls again to 100 %.",
         "Near 85 %, and above 98 %, the acid freezes a few degrees above 0 degC (from memory): it is not checked. "
         "Oleum is not covered.",
         "Its viscosity is not held: no open table could be read. One textbook chart (read) gives 12 mPa s for 98 % at "
         "45 degC; take measured data.",
         solutions::corrosive},
    .example = {"0.98, 20", "1836.33", "hand calculation: 2124.94 - 0.984529 x 293.15; a handbook's table: 1836.1"}};

}  // namespace cutwater::formulas

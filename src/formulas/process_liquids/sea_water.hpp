// Sea water, and brine of the same salts.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"

namespace cutwater::formulas {

namespace sea_water {

constexpr auto salinity()
{
    return input("salinity", "S", units::fraction, between(0, 0.12),
                 "salts by mass: 0.035 is 35 g/kg, the oceans' mean");
}
constexpr auto temperature()
{
    return input("temperature", "t", units::degC, between(0, 120), "temperature of the water");
}

inline constexpr const char* ordinary = "Near atmospheric pressure, above 100 degC at boiling pressure. For salts in "
                                        "the proportions of the sea: brackish and mine water differ.";

}  // namespace sea_water

inline Density sea_water_density(Fraction salinity, Temperature temperature)
{
    const double t = units::degC.in(temperature);
    const double s = salinity.value;
    const double water = 999.9 + t * (2.034e-2 + t * (-6.162e-3 + t * (2.261e-5 - t * 4.657e-8)));
    const double salts = s * (802.0 + t * (-2.001 + t * (1.677e-2 + t * -3.060e-5)) - 1.613e-5 * s * t * t);
    return (water + salts) * units::kgm3;
}

inline constexpr Record<&sea_water_density> sea_water_density_record{
    .name = "sea_water_density",
    .meaning = "Density of sea water by its salinity and temperature",
    .also = "seawater|salt water|brine|cooling water intake|desalination",
    .inputs = {sea_water::salinity(), sea_water::temperature()},
    .results = {output("density", "rho", units::kgm3, "density")},
    .equation = "rho = 999.9 + 2.034e-2 t - 6.162e-3 t^2 + 2.261e-5 t^3 - 4.657e-8 t^4 "
                "+ S (802.0 - 2.001 t + 1.677e-2 t^2 - 3.060e-5 t^3 - 1.613e-5 S t^2)",
    .source = "M. H. Sharqawy, J. H. Lienhard and S. M. Zubair, Desalination and Water Treatment 16 (2010) 354, "
              "equation (8) (as two open codes "
              "print it, read; the paper not read)",
    .cautions = {sea_water::ordinary, "Against IAPWS R13-08 it is within 0.07 % up to 40 degC."},
    .example = {"0.035, 25", "1023.56156", "the polynomial computed apart; IAPWS R13-08: 1023.220"}};

inline DynamicViscosity sea_water_dynamic_viscosity(Fraction salinity, Temperature temperature)
{
    const double t = units::degC.in(temperature);
    const double s = salinity.value;
    const double water = 4.2844e-5 + 1 / (0.157 * (t + 64.993) * (t + 64.993) - 91.296);
    const double a = 1.541 + t * (1.998e-2 - t * 9.52e-5);
    const double b = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
    return water * (1 + s * (a + b * s)) * units::Pas;
}

inline constexpr Record<&sea_water_dynamic_viscosity> sea_water_dynamic_viscosity_record{
    .name = "sea_water_dynamic_viscosity",
    .meaning = "Dynamic viscosity of sea water by its salinity and temperature",
    .also = "seawater|salt water|brine|desalination",
    .inputs = {sea_water::salinity(), sea_water::temperature()},
    .results = {output("viscosity", "mu", units::mPas, "dynamic viscosity")},
    .equation = "mu = mu_w (1 + A S + B S^2); mu_w = 4.2844e-5 + 1/(0.157 (t + 64.993)^2 - 91.296) Pa s; A = 1.541 + "
                "1.998e-2 t - 9.52e-5 t^2; "
                "B = 7.974 - 7.561e-2 t + 4.724e-4 t^2",
    .source = "M. H. Sharqawy, J. H. Lienhard and S. M. Zubair, Desalination and Water Treatment 16 (2010) 354, "
              "equations (22) and (23) (as two "
              "open codes print them, read; the paper not read)",
    .cautions = {sea_water::ordinary},
    .example = {"0.035, 25", "0.95882827", "the equations computed apart"}};

}  // namespace cutwater::formulas

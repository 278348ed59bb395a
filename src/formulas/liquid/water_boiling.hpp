// Water's vapour pressure and boiling temperature.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/liquid/water_saturation.hpp"

#include <algorithm>

namespace cutwater::formulas {

namespace water {
inline constexpr Temperature freezing = units::degC(0), critical = units::degC(373.946);
}

inline AbsolutePressure water_vapour_pressure(Temperature temperature)
{
    return water::saturation_pressure(temperature);
}

inline constexpr Record<&water_vapour_pressure> water_vapour_pressure_record{
    .name = "water_vapour_pressure",
    .meaning = "Vapour pressure of water",
    .also = "vapor pressure of water|saturation pressure|boiling pressure|steam pressure|"
            "flash point of water",
    .inputs = {input("temperature", "T", units::degC, between(0, 373.946),
                     "temperature of the water, up to its critical point")},
    .results = {output("vapour_pressure", "p_v", units::bara,
                       "absolute pressure at which water boils at that temperature")},
    .equation = "p_v = (2 C/(-B + sqrt(B^2 - 4 A C)))^4 MPa; A, B, C quadratics in theta = T + n9/(T - n10)",
    .source = "IAPWS R7-97(2012), clause 8, equation (30), Table 34 (coefficients as in python3-iapws 1.5.2, which "
              "reproduces "
              "the release's Table 35)",
    .cautions = {caution::inlet_vapour_pressure, "Pure water: dissolved air comes out of solution well above the "
                                                 "vapour pressure and can upset a pump before that."},
    .example = {"226.85", "26.3889776", "IAPWS R7-97(2012), Table 35: 2.63889776 MPa at 500 K"}};

/// Equations (30) and (31) agree but for a rounding, which must not carry an end beyond what water_vapour_pressure
/// takes back.
inline Temperature water_boiling_temperature(AbsolutePressure pressure)
{
    const double kelvin = units::kelvin.in(water::saturation_temperature(pressure));
    return units::kelvin(
        std::min(std::max(kelvin, units::kelvin.in(water::freezing)), units::kelvin.in(water::critical)));
}

inline constexpr Record<&water_boiling_temperature> water_boiling_temperature_record{
    .name = "water_boiling_temperature",
    .meaning = "Temperature at which water boils",
    .also = "boiling point of water|saturation temperature",
    .inputs = {input("pressure", "p", units::bara, between(0.006112126774, 220.64000001),
                     "absolute pressure, from the vapour pressure at 0 degC to the critical pressure")},
    .results = {output("boiling_temperature", "T_s", units::degC, "boiling temperature at that pressure")},
    .equation = "T_s = (n10 + D - sqrt((n10 + D)^2 - 4 (n9 + n10 D)))/2; D from beta = (p/MPa)^(1/4)",
    .source = "IAPWS R7-97(2012), clause 8, equation (31), Table 34 (coefficients as in python3-iapws 1.5.2, which "
              "reproduces "
              "the release's Table 36)",
    .cautions = {caution::hot_or_toxic},
    .example = {"1.01325", "99.974",
                "ITS-90 boiling point of water, 99.974 degC at one atmosphere (from memory of it)"}};

}  // namespace cutwater::formulas

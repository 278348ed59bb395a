// Pressures and heads: the barometer at an altitude, gauge and absolute, pressure difference and head.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/as_given.hpp"
#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas {

namespace atmosphere {  // ISO 2533:1975, constants of the layer from sea level to 11 km
inline constexpr auto sea_level_pressure = PressureDifference::from_value(101325.0);
inline constexpr auto sea_level_temperature = TemperatureDifference::from_value(288.15);
inline constexpr auto gradient = TemperatureDifference::from_value(-0.0065) / Length::from_value(1.0);
inline constexpr auto gas_constant = SpecificHeat::from_value(287.05287);
inline constexpr auto earth_radius = Length::from_value(6356766.0);
}  // namespace atmosphere

inline AbsolutePressure barometric_pressure(Length altitude, Steps steps)
{
    using namespace atmosphere;
    const Length geopotential = earth_radius * altitude / (earth_radius + altitude);
    const TemperatureDifference temperature = sea_level_temperature + gradient * geopotential;
    steps("H", "r h/(r + h), geopotential altitude", geopotential, units::metre);
    steps("T", "T_0 + beta H, temperature of the standard atmosphere", Temperature::at(temperature), units::degC);
    const double exponent = -standard_gravity / (gradient * gas_constant);
    return AbsolutePressure::at(sea_level_pressure *
                                elementary::positive_pow(double(temperature / sea_level_temperature), exponent));
}

inline constexpr Record<&barometric_pressure> barometric_pressure_record{
    .name = "barometric_pressure",
    .meaning = "Pressure of the standard atmosphere at an altitude",
    .also = "atmospheric pressure|altitude|elevation above sea level|barometer",
    .inputs = {input("altitude", "h", units::metre, between(-5000, 11020), "height above mean sea level")},
    .results = {output("ambient_pressure", "p_amb", units::bara, "pressure of the standard atmosphere")},
    .equation =
        "p = p_0 (1 + beta H/T_0)^(-g/(beta R)), H = r h/(r + h); p_0 = 101325 Pa, T_0 = 288.15 K, beta = -0.0065 K/m, "
        "R = 287.05287 J/(kg K), r = 6356766 m",
    .source = "ISO 2533:1975, clause 2 (from memory of it); below -2000 m: ISO 2533:1975/Add 2:1997 (excerpt of its "
              "scope read)",
    .cautions = {"Weather moves the barometer by about 3 % either way: for suction, take 20 to 30 mbar off, or the "
                 "site's lowest reading."},
    .sound_anywhere = true,
    .example = {"2000", "0.79501", "ISO 2533:1975, table: 795.01 hPa at 2000 m (from memory of it)"}};

inline AsGiven<units::bara> absolute_from_gauge(AsGiven<units::barg> gauge_pressure,
                                                AsGiven<units::bara> ambient_pressure)
{
    return AsGiven<units::bara>(ambient_pressure.number + number_in<units::bara>(gauge_pressure));
}

inline constexpr auto absolute_from_gauge_record = record<&absolute_from_gauge>(
    {.name = "absolute_from_gauge",
     .meaning = "Absolute pressure from a gauge reading",
     .also = "psia from psig|bara from barg|gage pressure",
     .inputs = {input("gauge_pressure", "p_M", units::barg, between(-2, 10000), "gauge reading; negative for a vacuum"),
                input("ambient_pressure", "p_amb", units::bara, limits::ambient_bara,
                      "barometric pressure at the gauge")},
     .results = {output("absolute_pressure", "p", units::bara, "absolute pressure")},
     .equation = "p = p_M + p_amb",
     .source = "definition; ISO 17769-1:2012, gauge pressure (from memory of it)",
     .sound_anywhere = true,
     .example = {"-0.3, 1.013", "0.713", "hand calculation"},
     .turns = true},
    relation<"gauge_pressure", "ambient_pressure">(
        [](AsGiven<units::barg> gauge, AsGiven<units::bara> ambient) {
            return number_in<units::bara>(gauge) + ambient.number >= 0;
        },
        "that is below an absolute vacuum at this ambient pressure"));

inline AsGiven<units::barg> gauge_from_absolute(AsGiven<units::bara> absolute_pressure,
                                                AsGiven<units::bara> ambient_pressure)
{
    return AsGiven<units::barg>(number_in<units::barg>(absolute_pressure) - number_in<units::barg>(ambient_pressure));
}

inline constexpr Record<&gauge_from_absolute> gauge_from_absolute_record{
    .name = "gauge_from_absolute",
    .meaning = "What a gauge shows at an absolute pressure",
    .also = "psig from psia|barg from bara|gage pressure",
    .inputs = {input("absolute_pressure", "p", units::bara, between(0, 10000), "absolute pressure"),
               input("ambient_pressure", "p_amb", units::bara, limits::ambient_bara,
                     "barometric pressure at the gauge")},
    .results = {output("gauge_pressure", "p_M", units::barg, "gauge pressure; negative for a vacuum")},
    .equation = "p_M = p - p_amb",
    .source = "definition; ISO 17769-1:2012, gauge pressure (from memory of it)",
    .sound_anywhere = true,
    .example = {"3.5, 1.013", "2.487", "hand calculation"},
    .turns = true};

inline Head head_from_pressure(PressureDifference pressure_difference, Density density)
{
    return pressure_difference / (density * standard_gravity);
}

inline constexpr Record<&head_from_pressure> head_from_pressure_record{
    .name = "head_from_pressure",
    .meaning = "Head of liquid that a pressure difference stands for",
    .also = "feet of head|psi to feet|pressure to head|bar to metres",
    .inputs = {input("pressure_difference", "dp", units::bar, between(-10000, 10000), "pressure difference"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid")},
    .results = {output("head", "H", units::metre, "head of that liquid")},
    .equation = "H = dp/(rho g), g = 9.80665 m/s2",
    .source = "hydrostatics; ISO 17769-1:2012, pressure head (from memory of it)",
    .example = {"1, 1000", "10.197162", "hand calculation: 100000/9806.65"},
    .turns = true};

inline PressureDifference pressure_from_head(Head head, Density density) { return head * density * standard_gravity; }

inline constexpr Record<&pressure_from_head> pressure_from_head_record{
    .name = "pressure_from_head",
    .meaning = "Pressure difference of a head of liquid",
    .also = "feet to psi|head to pressure|metres to bar|differential pressure",
    .inputs = {input("head", "H", units::metre, between(-100000, 100000), "head of that liquid"),
               input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid")},
    .results = {output("pressure_difference", "dp", units::bar, "pressure difference")},
    .equation = "dp = rho g H, g = 9.80665 m/s2",
    .source = "hydrostatics; ISO 17769-1:2012, pressure head (from memory of it)",
    .sound_anywhere = true,
    .example = {"10, 1000", "0.980665", "hand calculation: 10 x 1000 x 9.80665 Pa"},
    .turns = true};

}  // namespace cutwater::formulas

// What the liquid family's golden cases cannot reach through its functions' inputs.
#include "formulas/liquid/records.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace cutwater;
using namespace cutwater::formulas;

TEST_CASE("viscosity of water from temperature and density", "[liquid]")
{
    // IAPWS R12-08, Table 4: K, kg/m3, uPa s, with mu2 = 1.
    const double table[][3] = {{298.15, 998, 889.735100}, {298.15, 1200, 1437.649467}, {373.15, 1000, 307.883622},
                               {433.15, 1, 14.538324},    {433.15, 1000, 217.685358},  {873.15, 1, 32.619287},
                               {873.15, 100, 35.802262},  {873.15, 600, 77.430195},    {1173.15, 1, 44.217245},
                               {1173.15, 100, 47.640433}, {1173.15, 400, 64.154608}};
    for (const auto& [t, density, expected] : table) {
        CAPTURE(t, density);
        const double got = units::uPas.in(water::viscosity(units::kelvin(t), units::kgm3(density)));
        CHECK(std::abs(got - expected) <= 0.51e-6);
    }
}

TEST_CASE("boiling temperature and vapour pressure of water undo each other", "[liquid]")
{
    // The release's two directions are one equation: they agree to rounding.
    for (double t = 0; t <= 373; t += 0.5) {
        CAPTURE(t);
        CHECK(std::abs(units::degC.in(water_boiling_temperature(water_vapour_pressure(units::degC(t))))-t) <= 1e-8);
    }
}

TEST_CASE("saturated liquid is a liquid, and the steam beside it is refused", "[liquid]")
{
    for (double t = 0; t <= 350; t += 0.5) {
        CAPTURE(t);
        const AbsolutePressure boiling = water_vapour_pressure(units::degC(t));
        const auto liquid = water_density(units::degC(t), boiling, Steps{});
        REQUIRE(liquid);
        CHECK(units::kgm3.in(*liquid) > 570);
        const AbsolutePressure below = AbsolutePressure::at(boiling.above_zero() * 0.999999);
        CHECK_FALSE(water_density(units::degC(t), below, Steps{}));
    }
}

TEST_CASE("the D341 scale agrees with the standard's approximate pair", "[liquid]")
{
    // The appendix to ASTM D341 gives one exponential in place of six.
    for (double nu = 0.21; nu < 10; nu += 0.01) {
        CAPTURE(nu);
        const double approximate = nu + 0.7 + std::exp(-1.47 - 1.84 * nu - 0.51 * nu * nu);
        CHECK(std::abs(walther::z_of(nu).value - approximate) <= 0.006);
    }
}

TEST_CASE("the D341 scale is undone to the last digits", "[liquid]")
{
    double last = 0;
    for (double nu = 0.21; nu < 2e7; nu *= 1.003) {
        CAPTURE(nu);
        const walther::Z z = walther::z_of(nu);
        CHECK(z.value > last);
        last = z.value;
        // Where Z is steep or flat in nu, the error is that of Z's own last digit.
        CHECK(std::abs(walther::viscosity_of(z.value) - nu) <= 4e-16 * (z.value / z.slope + nu));
    }
}

TEST_CASE("Saybolt seconds are undone to the last digits", "[liquid]")
{
    for (const double t : {0.0, 40.0, 100.0, 176.0})
        for (double nu = 1.95; nu < 9.9e4; nu *= 1.01) {
            CAPTURE(t, nu);
            const SayboltSeconds seconds = saybolt_from_viscosity(units::mm2s(nu), units::degC(t));
            const double back = units::mm2s.in(viscosity_from_saybolt(seconds, units::degC(t), Steps{}));
            const double steepness = saybolt::at_100F(nu).value / saybolt::at_100F(nu).slope;
            CHECK(std::abs(back - nu) <= 6e-16 * (steepness + nu));
        }
}

TEST_CASE("Antoine constants taken for other units are refused", "[liquid]")
{
    const auto ask = [](AntoineUnits u) {
        return vapour_pressure_antoine(8.07131, 1730.63, 233.426, units::degC(50), units::degC(1), units::degC(100), u,
                                       Steps{});
    };
    CHECK(ask(AntoineUnits::mmHg_degC));
    CHECK_FALSE(ask(AntoineUnits::bar_degC));
    CHECK_FALSE(ask(AntoineUnits::bar_K));
    CHECK_FALSE(ask(AntoineUnits::mmHg_K));
}

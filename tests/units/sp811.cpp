// Factors as NIST SP 811 (2008), appendix B.8 prints them, to its seven figures (from memory of the table).
// What SP 811 marks as exact is checked to the last bit.
#include <cutwater/unit_table.hpp>

#include <catch2/catch.hpp>

#include <cmath>

using namespace cutwater;

TEST_CASE("factors that are exact by definition are exact")
{
    CHECK((1 * units::in).value() == 0.0254);
    CHECK((1 * units::ft).value() == 0.3048);
    CHECK((1 * units::ft2).value() == 0.09290304);
    CHECK((1 * units::in2).value() == 6.4516e-4);
    CHECK((1 * units::ft3).value() == 0.028316846592);
    CHECK((1 * units::us_gal).value() == 3.785411784e-3);
    CHECK((1 * units::imp_gal).value() == 4.54609e-3);
    CHECK((1 * units::bbl).value() == 0.158987294928);
    CHECK((1 * units::lb).value() == 0.45359237);
    CHECK((1 * units::us_ton).value() == 907.18474);
    CHECK((1 * units::imp_ton).value() == 1016.0469088);
    CHECK((1 * units::lbf).value() == 4.4482216152605);
    CHECK((1 * units::kgf).value() == 9.80665);
    CHECK((1 * units::gn).value() == standard_gravity.value());
    CHECK((1 * units::atm).value() == 101325);
    CHECK((1 * units::kgfcm2).value() == 98066.5);
    CHECK((1 * units::mH2O).value() == 9806.65);
    CHECK((1 * units::ftH2O).value() == 2989.06692);
    CHECK((1 * units::inH2O).value() == 249.08891);
    CHECK((1 * units::mmHg).value() == 133.322387415);
    CHECK((1 * units::inHg).value() == 3386.388640341);
    CHECK((1 * units::btu).value() == 1055.05585262);
    CHECK((1 * units::metric_hp).value() == 735.49875);
    CHECK((1 * units::electrical_hp).value() == 746);
    CHECK((1 * units::lbfft).value() == 1.3558179483314004);
    CHECK((1 * units::btulbF).value() == 4186.8);
    CHECK((1 * units::kWh).value() == 3.6e6);
    CHECK((1 * units::kWhm3).plain().value() == 3.6e6);
    CHECK(std::fma(1.0, (550 * units::lbfft).value(), 0.0) == Approx((1 * units::hp).value()).epsilon(3e-16));
    CHECK(units::mmHg.in(1 * units::inHg) == 25.4);
    CHECK(units::us_gal.in(1 * units::bbl) == 42);
    CHECK(units::in2.in(1 * units::ft2) == 144);
    CHECK(units::rpm.in(1 * units::rps) == 60);
    CHECK(units::degF.in(100 * units::degC) == Approx(212).epsilon(1e-15));
    CHECK(units::degC.in(-40 * units::degF) == Approx(-40).epsilon(2e-15));
    CHECK((1 * units::h2m5).value() == 3600.0 * 3600.0);
    CHECK((2900 * units::rpm).revolutions().value() == 2900.0 / 60);
}

TEST_CASE("factors as NIST SP 811 prints them")
{
    const auto seven_figures = [](double factor, double printed) {
        INFO(printed);
        CHECK(std::abs(factor - printed) <= 0.5001e-6 * std::pow(10, std::floor(std::log10(printed))));
    };
    seven_figures((1 * units::us_gpm).value(), 6.309020e-5);
    seven_figures((1 * units::imp_gpm).value(), 7.576817e-5);
    seven_figures((1 * units::ft3min).value(), 4.719474e-4);
    seven_figures((1 * units::us_mgd).value(), 4.381264e-2);
    seven_figures((1 * units::bbl_d).value(), 1.840131e-6);
    seven_figures((1 * units::lbh).value(), 1.259979e-4);
    seven_figures((1 * units::lbft3).value(), 1.601846e1);
    seven_figures((1 * units::lbgal).value(), 1.198264e2);
    seven_figures((1 * units::lbimpgal).value(), 9.977637e1);
    seven_figures((1 * units::psi).value(), 6.894757e3);
    seven_figures((1 * units::ksi).value(), 6.894757e6);
    seven_figures((1 * units::psia).above_zero().value(), 6.894757e3);
    seven_figures((1 * units::psig).above_zero().value(), 6.894757e3);
    seven_figures((1 * units::torr_a).above_zero().value(), 1.333224e2);
    seven_figures((1 * units::hp).value(), 7.456999e2);
    seven_figures((1 * units::btuh).value(), 2.930711e-1);
    seven_figures((1 * units::lbfin).value(), 1.129848e-1);
    seven_figures((1 * units::lbfsft2).value(), 4.788026e1);
    seven_figures((1 * units::lbfin_stiff).value(), 1.751268e2);
    seven_figures((1 * units::btuhft2F).value(), 5.678263);
    seven_figures((1 * units::btuhftF).value(), 1.730735);
    seven_figures((1 * units::btuF).value(), 1.899101e3);
    seven_figures((1 * units::thou).value(), 2.54e-5);
    seven_figures((1 * units::year).value(), 3.1536e7);
    seven_figures((1 * units::rpm).angular().value(), 1.047198e-1);
    seven_figures((1 * units::rad_s).angular().value(), 1.0);
}

TEST_CASE("the valve coefficients' factor is what their definitions make it, to the figures published")
{
    // Kv: m3/h at 1 bar; Cv: US gal/min at 1 psi; flow goes with the root of the pressure
    const double kv_of_one_cv = units::m3h.in(1 * units::us_gpm) / std::sqrt(units::bar.in(1 * units::psi));
    CHECK((1 * units::cv).value == 0.865);
    CHECK(std::abs(kv_of_one_cv - 0.865) < 0.0005);
}

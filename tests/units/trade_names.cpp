// The typed names that the trade writes are the units that they say.
#include <cutwater/unit_table.hpp>

#include <catch2/catch.hpp>

using namespace cutwater;

TEST_CASE("the typed names are the units of the same spelling in a text")
{
    static_assert(units::cSt.info == units::mm2s.info && units::cP.info == units::mPas.info &&
                  units::usgpm.info == units::us_gpm.info);
    static_assert(units::delta_degF.info == units::degF_difference.info && units::PS.info == units::metric_hp.info);
    CHECK(units::m3h.in(440 * units::usgpm) == Approx(99.9348710976).epsilon(1e-15));
    CHECK(units::m2s.in(1 * units::cSt) == 1e-6);
    CHECK(units::kelvin_difference.in(9 * units::delta_degF) == 5);
    CHECK(units::Pa.in(1 * units::psid) == units::Pa.in(1 * units::psi));
    CHECK(units::bara.in(760 * units::torr) == 1.01325);
    CHECK(units::kW.in(1 * units::PS) == 0.73549875);
    CHECK(units::ls.in(60 * units::lpm) == 1);
}

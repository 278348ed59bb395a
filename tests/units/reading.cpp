// Text to quantity: what is read, and to what number.
#include "units/text.hpp"

#include <cutwater/unit_table.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <string>
#include <string_view>

using namespace cutwater;

namespace {

template <class Q>
double read(Unit<Q> bare, std::string_view text)
{
    double value = 0;
    cutwater_refusal refusal;
    const cutwater_status status = read_quantity(quantity_info<Q>, *bare.info, text, value, &refusal);
    INFO(text);
    if (status != CUTWATER_OK) UNSCOPED_INFO(refusal.message);
    CHECK(status == CUTWATER_OK);
    return value;
}

}  // namespace

TEST_CASE("a bare number is left alone, bit for bit")
{
    for (const char* text :
         {"0", "1", "0.1", "440", "1e-300", "123456789.123456789", "5e-324", "1.7976931348623157e308", "-2.5"})
        CHECK(read(units::m3h, text) == std::strtod(text, nullptr));
    CHECK(read(units::degC, "25.3") == 25.3);
    CHECK(read(units::degC, "25.3 degC") == 25.3);
    CHECK(read(units::mm, "0.1 mm") == 0.1);
}

TEST_CASE("numbers in the ways they are written")
{
    CHECK(read(units::metre, "+5") == 5);
    CHECK(read(units::metre, "-5") == -5);
    CHECK(read(units::metre, "\u22125 m") == -5);
    CHECK(read(units::metre, "\u20135 m") == -5);
    CHECK(read(units::metre, ".5 m") == 0.5);
    CHECK(read(units::metre, "5. m") == 5);
    CHECK(read(units::metre, "1.5e-3") == 1.5e-3);
    CHECK(read(units::metre, "1.5E+3 m") == 1500);
    CHECK(read(units::metre, "1.5e\u22123 m") == 1.5e-3);
    CHECK(read(units::metre, "  12 m\t") == 12);
    CHECK(read(units::metre, "\u00A012\u202Fm\u2009") == 12);
    CHECK(read(units::metre, "12m") == 12);
    CHECK(read(units::metre, "007") == 7);
    CHECK(read(units::mbar_a, "1 013 mbar(a)") == 1013);
    CHECK(read(units::mbar_a, "1\u2009013.25 mbar(a)") == 1013.25);
    CHECK(read(units::mbar_a, "1\u202F013") == 1013);
    CHECK(read(units::money, "1'250'000") == 1250000);
    CHECK(read(units::money, "1\u2019250\u2019000.50") == 1250000.5);
    CHECK(read(units::money, "12 345 678") == 12345678);
    CHECK(read(units::rpm, "2 900 1/min") == 2900);
    CHECK(read(units::rpm, "2900 1/min") == 2900);
    CHECK(read(units::um_per_K, "17 1e-6/K") == 17);
}

TEST_CASE("a comma that can be nothing but the decimal sign is read as it")
{
    // what a sheet in a language with decimal commas makes of =A1&" m3/h"
    CHECK(read(units::m3h, "18,5 m3/h") == 18.5);
    CHECK(read(units::m3h, "18,5") == 18.5);
    CHECK(read(units::m3h, "-0,5") == -0.5);
    CHECK(read(units::m3h, "18,1256") == 18.1256);
    CHECK(read(units::m3h, "18,12") == 18.12);
    CHECK(read(units::m3h, "0,013 m3/h") == 0.013);        // no group begins with 0
    CHECK(read(units::m3h, "1013,125 m3/h") == 1013.125);  // nor has four digits
    CHECK(read(units::mbar_a, "1 013,125 mbar(a)") == 1013.125);
    CHECK(read(units::money, "1'250'000,50") == 1250000.5);
    CHECK(read(units::m3h, "1,5e3") == 1500);
    CHECK(read(units::m3h, "1,5E+20") == 1.5e20);
    CHECK(read(units::percent, "72,5 %") == 72.5);
}

TEST_CASE("a unit in text is turned into the one a bare number carries, with one rounding")
{
    CHECK(read(units::mm, "1 in") == 25.4);
    CHECK(read(units::mm, "3 in") == 76.2);
    CHECK(read(units::mm, "6\"") == 152.4);
    CHECK(read(units::mm, "0.1 in") == 2.54);
    CHECK(read(units::in, "25.4 mm") == 1);
    CHECK(read(units::in, "2.54 mm") == 0.1);
    CHECK(read(units::ft, "1.8288 m") == 6);
    CHECK(read(units::m3h, "1 l/s") == 3.6);
    CHECK(read(units::m3h, "1 013 l/s") == 3646.8);
    CHECK(read(units::us_gpm, "1 bbl/d") == 42.0 / 1440);
    CHECK(read(units::m3h, "440 US gpm") == 99.9348710976);
    CHECK(read(units::bara, "1 atm(a)") == 1.01325);
    CHECK(read(units::bara, "760 torr") == 1.01325);
    CHECK(read(units::bara, "1013.25 mbar(a)") == 1.01325);
    CHECK(read(units::bara, "101.325 kPa abs") == 1.01325);
    CHECK(read(units::bara, "14.7 psia") == Approx(1.01352932209575).epsilon(1e-14));
    CHECK(read(units::barg, "250 kPa(g)") == 2.5);
    CHECK(read(units::degC, "212 degF") == 100);
    CHECK(read(units::degC, "98.6 F") == 37);
    CHECK(read(units::degC, "-40 degF") == -40);
    CHECK(read(units::degC, "0 K") == -273.15);
    CHECK(read(units::degF, "100 \u00B0C") == 212);
    CHECK(read(units::degF, "-459.67") == -459.67);
    CHECK(read(units::kelvin, "25 degC") == 298.15);
    CHECK(read(units::kelvin_difference, "9 delta degF") == 5);
    CHECK(read(units::fraction, "72 %") == 0.72);
    CHECK(read(units::fraction, "72%") == 0.72);
    CHECK(read(units::fraction, "0.72") == 0.72);
    CHECK(read(units::percent, "72") == 72);
    CHECK(read(units::number, "150 %") == 1.5);
    CHECK(read(units::rpm, "25 rps") == 1500);
    CHECK(read(units::kW, "100 hp") == Approx(74.569987158227022).epsilon(1e-15));
    CHECK(read(units::kW, "100 PS") == 73.549875);
    CHECK(read(units::mPas, "1 Pa s") == 1000);
    CHECK(read(units::kv, "100 Cv") == 86.5);
    CHECK(read(units::h2m5, "12960000 s2/m5") == 1);
}

TEST_CASE("the trade's spellings")
{
    for (const char* text : {"1 m3/h", "1 m\u00B3/h", "1 m^3/h", "1 m3/hr", "1 m\u00B3\u00B7h\u207B\u00B9", "1m3h",
                             "1 M3/H", "1 cbm/h", "1 m3 / h"})
        CHECK(read(units::m3h, text) == 1);
    for (const char* text : {"1 US gpm", "1 USgpm", "1 usgpm", "1 U.S. gpm", "1 US gal/min", "1 gpm (US)", "1 us GPM"})
        CHECK(read(units::us_gpm, text) == 1);
    for (const char* text : {"1 mPa s", "1 mPa\u00B7s", "1 mPa*s", "1 mPas", "1 cP", "1 CP", "1 mPa.s"})
        CHECK(read(units::mPas, text) == 1);
    for (const char* text : {"1 cSt", "1 mm2/s", "1 mm\u00B2/s", "1 cst", "1 mm\u00B2 s\u207B\u00B9"})
        CHECK(read(units::mm2s, text) == 1);
    for (const char* text : {"1 bara", "1 bar(a)", "1 bar a", "1 bar abs", "1 bar abs.", "1 BARA", "1 Bar (abs)"})
        CHECK(read(units::bara, text) == 1);
    for (const char* text : {"1 barg", "1 bar(g)", "1 bar g", "1 bar gauge"}) CHECK(read(units::barg, text) == 1);
    for (const char* text : {"1 degC", "1 \u00B0C", "1\u00B0C", "1 \u2103", "1 deg C", "1 C", "1 Cel", "1 \u00BAC"})
        CHECK(read(units::degC, text) == 1);
    for (const char* text : {"1 K", "1 \u212A", "1 \u0394K", "1 delta C", "1 \u2206\u00B0C", "1 degC difference"})
        CHECK(read(units::kelvin_difference, text) == 1);
    for (const char* text : {"1 um", "1 \u00B5m", "1 \u03BCm", "1 micron"}) CHECK(read(units::um, text) == 1);
    for (const char* text : {"1 N m", "1 Nm", "1 N\u00B7m", "1 N.m"}) CHECK(read(units::Nm, text) == 1);
    for (const char* text : {"1 rpm", "1 1/min", "1 min-1", "1 min\u207B\u00B9", "1 r/min", "1 RPM", "1/min"})
        CHECK(read(units::rpm, text) == 1);
    for (const char* text : {"1 kJ/(kg K)", "1 kJ/(kg\u00B7K)", "1 kJ/kg/K", "1 kJ/kgK", "1 kJ/kg \u00B0C"})
        CHECK(read(units::kJkgK, text) == 1);
    for (const char* text : {"1 W/(m2 K)", "1 W/m\u00B2K", "1 W/m2/K"}) CHECK(read(units::Wm2K, text) == 1);
    for (const char* text : {"1 lbf ft", "1 ft-lb", "1 lb\u00B7ft"}) CHECK(read(units::lbfft, text) == 1);
    for (const char* text : {"1 mH2O", "1 mH\u2082O", "1 mWC", "1 m WC"}) CHECK(read(units::mH2O, text) == 1);
    for (const char* text : {"1 kJ/(kg\u00B7K)", "1 kJ/kg \u00B0C", "1 kJ/(kg \u00B0 C)", "1 kJ kg-1 K-1"})
        CHECK(read(units::kJkgK, text) == 1);
    for (const char* text : {"1 delta degF", "1 \u0394\u00B0F", "1 delta deg F", "1 deg F difference", "1 deltadegF"})
        CHECK(read(units::degF_difference, text) == 1);
    for (const char* text : {"1 CV", "1 cv", "1 ch", "1 PS"}) CHECK(read(units::metric_hp, text) == 1);
    for (const char* text : {"1 Cv", "1 cv", "1 CV"}) CHECK(read(units::cv, text) == 1);
    for (const char* text : {"1 s-1", "1 s^-1", "1 s^(-1)", "1 s\u207B\u00B9"}) CHECK(read(units::rps, text) == 1);
    for (const char* text : {"1 sq. ft.", "1 sq ft", "1 ft^2"}) CHECK(read(units::ft2, text) == 1);
    for (const char* text : {"1 r.p.m.", "1 rpm."}) CHECK(read(units::rpm, text) == 1);
    for (const char* text : {"0.5 (-)", "0.5"}) CHECK(read(units::number, text) == 0.5);
    for (const char* text : {"1 lb/U.S. gal", "1 lb/US gal"}) CHECK(read(units::lbgal, text) == 1);
    CHECK(read(units::metre, "5 M") == 5);
    for (const char* text : {"1 MPa", "1 Mpa", "1 MPA"}) CHECK(read(units::MPa, text) == 1);
}

TEST_CASE("every symbol, suffix and alias of every unit reads as itself")
{
    for (const QuantityInfo* quantity : all_quantities())
        for (const UnitInfo& unit : *quantity) {
            const auto check = [&](std::string_view spelling) {
                double value = 0;
                cutwater_refusal refusal;
                INFO(quantity->name << ": " << spelling);
                // a value of 7 in the unit itself comes back untouched only if the spelling led to that very unit
                REQUIRE(read_quantity(*quantity, unit, "7 " + std::string(spelling), value, &refusal) == CUTWATER_OK);
                CHECK(value == 7);
            };
            check(unit.symbol);
            check(unit.suffix);
            std::string_view rest = unit.aliases;
            while (!rest.empty()) {
                check(rest.substr(0, rest.find('|')));
                rest = rest.find('|') == rest.npos ? std::string_view() : rest.substr(rest.find('|') + 1);
            }
        }
}

TEST_CASE("numbers written are read back to the same bits, in every unit")
{
    std::uint64_t state = 88172645463325252u;
    const auto random = [&] {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        return state;
    };
    for (int i = 0; i < 20000; ++i) {
        double value = 0;
        const std::uint64_t bits = random();
        static_assert(sizeof bits == sizeof value);
        std::memcpy(&value, &bits, sizeof value);
        if (!std::isfinite(value)) continue;
        char text[40];
        std::snprintf(text, sizeof text, "%.17g", value);  // 17 digits tell every double apart
        CHECK(read(units::bar, text) == value);
    }
}

TEST_CASE("from a unit and back loses no more than a rounding each way")
{
    for (const QuantityInfo* quantity : all_quantities())
        for (const UnitInfo& from : *quantity)
            for (const UnitInfo& to : *quantity)
                for (const double x : {1.0, 0.3, 1013.25, 7e-5}) {
                    INFO(x << " " << from.symbol << " -> " << to.symbol);
                    const double there = rescale(x, from, to);
                    // where zero points differ, the rounding is that of the larger number
                    const double shift = from.offset == to.offset ? 0 : std::abs(from.offset) + std::abs(to.offset);
                    CHECK(std::abs(rescale(there, to, from) - x) <= 4e-16 * (std::abs(x) + shift));
                }
}

// Text that must be refused, with the status, the place and the word that helps.
#include "units/text.hpp"

#include <cutwater/unit_table.hpp>

#include <catch2/catch.hpp>

#include <cmath>
#include <cstdint>
#include <cstring>
#include <string>
#include <string_view>

using namespace cutwater;
using Catch::Matchers::Contains;

namespace {

struct Outcome {
    cutwater_status status;
    std::string message;
};

template <class Q>
Outcome refuse(Unit<Q> bare, std::string_view text)
{
    double value = 0;
    cutwater_refusal refusal;
    std::memset(&refusal, 0x7E, sizeof refusal);
    const cutwater_status status = read_quantity(quantity_info<Q>, *bare.info, text, value, &refusal);
    INFO(text);
    REQUIRE(status != CUTWATER_OK);
    CHECK(std::isnan(value));
    CHECK(refusal.status == status);
    CHECK(refusal.argument == -1);
    CHECK(refusal.element == -1);
    CHECK(std::isnan(refusal.value));
    CHECK(std::string(refusal.name).empty());
    CHECK(std::string(refusal.unit) == bare.info->symbol);
    CHECK(std::memchr(refusal.message, 0, sizeof refusal.message));
    // the same without a record to fill
    CHECK(read_quantity(quantity_info<Q>, *bare.info, text, value, nullptr) == status);
    return {status, refusal.message};
}

template <class Q>
void refused(Unit<Q> bare, std::string_view text, cutwater_status status, const char* says)
{
    const Outcome outcome = refuse(bare, text);
    INFO(text);
    CHECK(outcome.status == status);
    CHECK_THAT(outcome.message, Contains(says));
}

cutwater_refusal convert_refused(double value, const char* from, const char* to, cutwater_status expected)
{
    double out = 0;
    cutwater_refusal refusal;
    INFO(value << " " << from << " -> " << to);
    CHECK(convert(value, from, to, out, &refusal) == expected);
    CHECK(convert(value, from, to, out, nullptr) == expected);
    CHECK(std::isnan(out));
    CHECK(refusal.status == expected);
    return refusal;
}

}  // namespace

TEST_CASE("text that is no number")
{
    refused(units::m3h, "", CUTWATER_BAD_TEXT, "empty");
    refused(units::m3h, "   \t ", CUTWATER_BAD_TEXT, "empty");
    refused(units::m3h, "m3/h", CUTWATER_BAD_TEXT, "a number must come first");
    refused(units::m3h, "abc", CUTWATER_BAD_TEXT, "character 1");
    refused(units::m3h, "  abc", CUTWATER_BAD_TEXT, "character 3");
    refused(units::m3h, "-", CUTWATER_BAD_TEXT, "character 2");
    refused(units::m3h, "+-5", CUTWATER_BAD_TEXT, "a number must come first");
    refused(units::m3h, "- 5", CUTWATER_BAD_TEXT, "a number must come first");
    refused(units::m3h, ".", CUTWATER_BAD_TEXT, "a number must come first");
    refused(units::m3h, "(5)", CUTWATER_BAD_TEXT, "a number must come first");
    refused(units::m3h, "=A1", CUTWATER_BAD_TEXT, "a number must come first");
    refused(units::m3h, "nan", CUTWATER_NOT_FINITE, "finite");
    refused(units::m3h, "NaN m3/h", CUTWATER_NOT_FINITE, "finite");
    refused(units::m3h, "-inf", CUTWATER_NOT_FINITE, "finite");
    refused(units::m3h, "Infinity", CUTWATER_NOT_FINITE, "finite");
    refused(units::m3h, "1e999", CUTWATER_BAD_TEXT, "too large or too small");
    refused(units::m3h, "1e-999", CUTWATER_BAD_TEXT, "too large or too small");
    refused(units::m3h, "0x1F", CUTWATER_BAD_TEXT, "hexadecimal");
    refused(units::m3h, "\xFF", CUTWATER_BAD_TEXT, "UTF-8");
    refused(units::m3h, "5 m\xC2", CUTWATER_BAD_TEXT, "character 4");
    refused(units::m3h, std::string_view("5\0 m3/h", 7), CUTWATER_BAD_TEXT, "character 2");
    refused(units::m3h, "\uFF15", CUTWATER_BAD_TEXT, "a number must come first");  // a full-width five
    refused(units::m3h, std::string(129, '1'), CUTWATER_BAD_TEXT, "too long");
    refused(units::m3h, std::string(100000, ' '), CUTWATER_BAD_TEXT, "too long");
}

TEST_CASE("numbers that could be read in two ways")
{
    refused(units::m3h, "1,5,3", CUTWATER_BAD_TEXT, "second comma");
    refused(units::m3h, "1,234,567", CUTWATER_BAD_TEXT, "second comma");
    refused(units::m3h, "1,234.5", CUTWATER_BAD_TEXT, "a comma and a point");
    refused(units::m3h, "1.234,5", CUTWATER_BAD_TEXT, "a comma behind the decimal point");
    refused(units::m3h, "18,125 m3/h", CUTWATER_BAD_TEXT, "two ways");
    refused(units::m3h, "999,125 m3/h", CUTWATER_BAD_TEXT, "two ways");
    refused(units::m3h, "1,125e3", CUTWATER_BAD_TEXT, "two ways");
    refused(units::m3h, "5,", CUTWATER_BAD_TEXT, "behind the decimal sign");
    refused(units::m3h, "5, m3/h", CUTWATER_BAD_TEXT, "behind the decimal sign");
    refused(units::m3h, "5, 3", CUTWATER_BAD_TEXT, "behind the decimal sign");
    refused(units::m3h, ",5", CUTWATER_BAD_TEXT, "write 0.5");
    refused(units::m3h, "1,013 m3/h", CUTWATER_BAD_TEXT, "two ways");
    refused(units::m3h, "1.013,5", CUTWATER_BAD_TEXT, "comma");
    refused(units::m3h, "1.2.3", CUTWATER_BAD_TEXT, "second decimal point");
    refused(units::m3h, "1..2", CUTWATER_BAD_TEXT, "second decimal point");
    refused(units::m3h, "1e2.5", CUTWATER_BAD_TEXT, "whole number");
    refused(units::m3h, "5 10", CUTWATER_BAD_TEXT, "second number");
    refused(units::m3h, "5 10 m3/h", CUTWATER_BAD_TEXT, "second number");
    refused(units::m3h, "2900 100", CUTWATER_BAD_TEXT, "second number");
    refused(units::m3h, "1 0134", CUTWATER_BAD_TEXT, "second number");
    refused(units::m3h, "1 013 25", CUTWATER_BAD_TEXT, "second number");
    refused(units::m3h, "1  013", CUTWATER_BAD_TEXT, "second number");
    refused(units::m3h, "1'01", CUTWATER_BAD_TEXT, "apostrophe");
    refused(units::m3h, "1 000'000", CUTWATER_BAD_TEXT, "apostrophe");
    refused(units::m3h, "5 m3/h 3", CUTWATER_BAD_TEXT, "second number");
    refused(units::metre, "5 ft 3 in", CUTWATER_BAD_TEXT, "second number");
    refused(units::metre, "2 1/2 in", CUTWATER_BAD_TEXT, "second number");
    refused(units::metre, "1/2 in", CUTWATER_BAD_TEXT, "decimal number");
    refused(units::metre, "2 x 10^3", CUTWATER_BAD_TEXT, "1.5e3");
    refused(units::metre, "2\u00D710\u00B3", CUTWATER_BAD_TEXT, "1.5e3");
    refused(units::metre, "5 + 3", CUTWATER_BAD_TEXT, "");
    refused(units::metre, "5-3", CUTWATER_BAD_TEXT, "");
    refused(units::metre, "5 \u00B1 1", CUTWATER_BAD_TEXT, "");
    refused(units::metre, "5;", CUTWATER_BAD_TEXT, "");
    refused(units::metre, "5)", CUTWATER_BAD_TEXT, "");
    refused(units::metre, "5 m)", CUTWATER_UNKNOWN_UNIT, "'m)'");
    refused(units::metre, "5 m(", CUTWATER_UNKNOWN_UNIT, "'m('");
    refused(units::metre, "5 .m", CUTWATER_BAD_TEXT, "");
}

TEST_CASE("a sign behind the number is not passed over: some systems write -5 as 5-")
{
    for (const char* text : {"5-", "5 -", "5\u2212", "5 \u2212", "5 \u2010", "5\u2011", "5\u2013", "5\u2014", "5+",
                             "5 +", "5- m", "5 - m", "1e3-"}) {
        refused(units::metre, text, CUTWATER_BAD_TEXT, "a sign stands before its number");
        refused(units::number, text, CUTWATER_BAD_TEXT, "a sign stands before its number");
        refused(units::count, text, CUTWATER_BAD_TEXT, "a sign stands before its number");
    }
}

TEST_CASE("a product is not read as the unit whose letters it has")
{
    for (const char* text :
         {"5 m*m", "5 m\u00B7m", "5 m m", "5 m.m", "5 m(m)", "5 m\u00D7m", "5 m\u22C5m", "5 m^m", "5 m^(m)"})
        refused(units::metre, text, CUTWATER_UNKNOWN_UNIT, "no unit that is known here");
    refused(units::second, "5 m s", CUTWATER_UNKNOWN_UNIT, "'m s'");
    refused(units::second, "5 m\u00B7s", CUTWATER_UNKNOWN_UNIT, "");
    refused(units::bar, "5 m bar", CUTWATER_UNKNOWN_UNIT, "");
    refused(units::bar, "5 k\u00B7Pa", CUTWATER_UNKNOWN_UNIT, "");
    refused(units::kW, "5 k*W", CUTWATER_UNKNOWN_UNIT, "");
    for (const char* text : {"5 *m", "5 \u00B7m", "5 m*", "5 m\u00B7", "5 m^", "5 m()", "5 ()m", "5 m*/s", "5 m/*s",
                             "5 m..", "5 m*.", "5 /.m"})
        CHECK(refuse(units::metre, text).status != CUTWATER_OK);
}

TEST_CASE("letters that are another quantity's unit are that unit, whatever their case")
{
    refused(units::second, "5 A", CUTWATER_WRONG_QUANTITY, "'A' is a unit of electric current; time is needed");
    refused(units::ampere, "5 a", CUTWATER_WRONG_QUANTITY, "'a' is a unit of time");
    refused(units::kg, "5 G", CUTWATER_WRONG_QUANTITY, "magnetic flux density");
    refused(units::kg, "5 T", CUTWATER_WRONG_QUANTITY, "magnetic flux density");
    refused(units::kv, "40 kV", CUTWATER_WRONG_QUANTITY, "voltage");
    double out = 0;
    CHECK(convert(1, "A", "h", out, nullptr) == CUTWATER_WRONG_QUANTITY);
    CHECK(convert(1, "a", "kA", out, nullptr) == CUTWATER_WRONG_QUANTITY);
    CHECK(convert(1, "a", "h", out, nullptr) == CUTWATER_OK);
    CHECK(out == 8760);
}

TEST_CASE("units that are not known, or not well enough said")
{
    refused(units::m3h, "5 furlong", CUTWATER_UNKNOWN_UNIT, "volume flow is needed, in m3/h");
    refused(units::m3h, "5 gpm", CUTWATER_UNKNOWN_UNIT, "US gpm or imp gpm");
    refused(units::m3h, "5 GPM", CUTWATER_UNKNOWN_UNIT, "say which gallon");
    refused(units::m3h, "5 gal/min", CUTWATER_UNKNOWN_UNIT, "say which gallon");
    refused(units::m3h, "5 mgd", CUTWATER_UNKNOWN_UNIT, "say which gallon");
    refused(units::m3, "5 gal", CUTWATER_UNKNOWN_UNIT, "US gal or imp gal");
    refused(units::kg, "5 ton", CUTWATER_UNKNOWN_UNIT, "say which ton");
    refused(units::m3h, "  5   wibble", CUTWATER_UNKNOWN_UNIT, "character 7");
    refused(units::m3h, "5 m3 h", CUTWATER_UNKNOWN_UNIT, "m3 h");  // a product, no quotient
    refused(units::m3h, "5 m3.h", CUTWATER_UNKNOWN_UNIT, "m3.h");
    refused(units::count, "3 pumps", CUTWATER_UNKNOWN_UNIT, "without unit");
    refused(units::money, "3 EUR", CUTWATER_UNKNOWN_UNIT, "currency");
    refused(units::fraction, "5 \u2030", CUTWATER_UNKNOWN_UNIT, "fraction is needed, without unit or in %");
}

TEST_CASE("milli is never taken for mega")
{
    refused(units::mPas, "5 MPa s", CUTWATER_UNKNOWN_UNIT, "milli or mega");
    refused(units::mPas, "5 MPAS", CUTWATER_UNKNOWN_UNIT, "mPa s");
    refused(units::bar, "5 mPa", CUTWATER_UNKNOWN_UNIT, "MPa");
    refused(units::bar, "5 mpa", CUTWATER_UNKNOWN_UNIT, "MPa");
    refused(units::bar, "5 Mbar", CUTWATER_UNKNOWN_UNIT, "mbar");
    refused(units::kW, "5 mW", CUTWATER_UNKNOWN_UNIT, "MW");
    refused(units::kWh, "5 mJ", CUTWATER_UNKNOWN_UNIT, "MJ");
    refused(units::kWh, "5 mWh", CUTWATER_UNKNOWN_UNIT, "MWh");
    refused(units::metre, "5 Mm", CUTWATER_UNKNOWN_UNIT, "mm");
    refused(units::second, "5 Ms", CUTWATER_UNKNOWN_UNIT, "ms");
    refused(units::tesla, "5 MT", CUTWATER_UNKNOWN_UNIT, "mT");
    refused(units::MSm, "5 mS/m", CUTWATER_UNKNOWN_UNIT, "MS/m");
    refused(units::bar_ms, "5 mPa m/s", CUTWATER_UNKNOWN_UNIT, "MPa m/s");
    refused(units::m3, "5 ML", CUTWATER_UNKNOWN_UNIT, "ml");
}

TEST_CASE("units of other quantities are refused by name")
{
    refused(units::m3h, "5 kg/h", CUTWATER_WRONG_QUANTITY, "'kg/h' is a unit of mass flow; volume flow is needed");
    refused(units::bara, "2 bar", CUTWATER_WRONG_QUANTITY, "neither gauge nor absolute");
    refused(units::bara, "2 bar", CUTWATER_WRONG_QUANTITY, "write bara");
    refused(units::bara, "30 psi", CUTWATER_WRONG_QUANTITY, "write psia");
    refused(units::bara, "200 kPa", CUTWATER_WRONG_QUANTITY, "write kPa(a)");
    refused(units::bara, "2 atm", CUTWATER_WRONG_QUANTITY, "write atm(a)");
    refused(units::bara, "2 barg", CUTWATER_WRONG_QUANTITY, "add the ambient pressure with absolute_from_gauge");
    refused(units::bara, "20 psig", CUTWATER_WRONG_QUANTITY, "'psig' is gauge pressure; absolute pressure is needed");
    refused(units::barg, "2 bar", CUTWATER_WRONG_QUANTITY, "write barg");
    refused(units::barg, "30 PSI", CUTWATER_WRONG_QUANTITY, "write psig");
    refused(units::barg, "2 bara", CUTWATER_WRONG_QUANTITY, "gauge_from_absolute");
    refused(units::bar, "2 bara", CUTWATER_WRONG_QUANTITY, "if the number is one, write bar");
    refused(units::bar, "760 torr", CUTWATER_WRONG_QUANTITY, "if the number is one, write mmHg");
    refused(units::barg, "10 mH2O", CUTWATER_WRONG_QUANTITY, "write it in barg, kPa(g)");  // not: write barg
    refused(units::bara, "10 ftH2O", CUTWATER_WRONG_QUANTITY, "write it in bara, Pa(a)");
    refused(units::bar, "20 psig", CUTWATER_WRONG_QUANTITY, "write psi");
    refused(units::bar, "1 kWh/m3", CUTWATER_WRONG_QUANTITY, "energy per volume");
    refused(units::kWhm3, "1 bar", CUTWATER_WRONG_QUANTITY, "pressure difference");
    refused(units::kelvin_difference, "5 degC", CUTWATER_WRONG_QUANTITY, "write it in K");
    refused(units::kelvin_difference, "5 \u00B0F", CUTWATER_WRONG_QUANTITY, "write it in K");
    refused(units::kelvin_difference, "10 degF", CUTWATER_WRONG_QUANTITY, "or in delta degF");
    refused(units::degC, "5 \u0394K", CUTWATER_WRONG_QUANTITY, "temperature difference");
    refused(units::Nm, "5 kWh", CUTWATER_WRONG_QUANTITY, "energy");
    refused(units::kWh, "5 N m", CUTWATER_WRONG_QUANTITY, "torque");
    refused(units::rpm, "50 Hz", CUTWATER_WRONG_QUANTITY, "synchronous_speed");
    refused(units::hertz, "300 rpm", CUTWATER_WRONG_QUANTITY, "rotational speed");
    refused(units::metre, "10 mWC", CUTWATER_WRONG_QUANTITY, "head_from_pressure");
    refused(units::metre, "3 bar", CUTWATER_WRONG_QUANTITY, "pressure");
    refused(units::mm2s, "150 SUS", CUTWATER_WRONG_QUANTITY, "viscosity_from_saybolt");
    refused(units::mm2s, "5 cP", CUTWATER_WRONG_QUANTITY, "dynamic viscosity");
    refused(units::fraction, "5 bar", CUTWATER_WRONG_QUANTITY, "without unit or in %");
    refused(units::lbf, "5 lb", CUTWATER_WRONG_QUANTITY, "mass");
    refused(units::kgm3, "0.9 %", CUTWATER_WRONG_QUANTITY, "density_from_relative");
}

TEST_CASE("overflow in the conversion")
{
    refused(units::um, "1e305 km", CUTWATER_OVERFLOW, "too large");
    CHECK(std::string(convert_refused(1e305, "km", "um", CUTWATER_OVERFLOW).name) == "value");
}

TEST_CASE("conversions that are refused")
{
    cutwater_refusal refusal = convert_refused(2, "barg", "bara", CUTWATER_WRONG_QUANTITY);
    CHECK_THAT(refusal.message, Contains("an ambient pressure is needed") && Contains("absolute_from_gauge"));
    CHECK(refusal.argument == 2);
    CHECK_THAT(convert_refused(2, "psia", "kPa(g)", CUTWATER_WRONG_QUANTITY).message, Contains("gauge_from_absolute"));
    CHECK_THAT(convert_refused(2, "bar", "bara", CUTWATER_WRONG_QUANTITY).message,
               Contains("neither gauge nor absolute"));
    CHECK_THAT(convert_refused(2, "psig", "psi", CUTWATER_WRONG_QUANTITY).message,
               Contains("gauge pressure") && Contains("ask for psig"));
    CHECK_THAT(convert_refused(760, "torr", "Pa", CUTWATER_WRONG_QUANTITY).message,
               Contains("ask for Pa(a)") && !Contains("write bar"));
    CHECK_THAT(convert_refused(760, "torr", "mmHg", CUTWATER_WRONG_QUANTITY).message, Contains("ask for mmHg(a)"));
    CHECK_THAT(convert_refused(2, "bara", "kPa", CUTWATER_WRONG_QUANTITY).message, Contains("ask for kPa(a)"));
    CHECK_THAT(convert_refused(2, "bara", "mH2O", CUTWATER_WRONG_QUANTITY).message,
               Contains("absolute pressure") && Contains("write bar"));
    CHECK_THAT(convert_refused(2, "m3/h", "kg/h", CUTWATER_WRONG_QUANTITY).message,
               Contains("volume flow") && Contains("mass flow"));
    CHECK_THAT(convert_refused(2, "kWh", "N m", CUTWATER_WRONG_QUANTITY).message,
               Contains("energy") && Contains("torque"));
    CHECK_THAT(convert_refused(2, "gal", "l", CUTWATER_UNKNOWN_UNIT).message, Contains("say which gallon"));
    CHECK_THAT(convert_refused(2, "t", "ton", CUTWATER_UNKNOWN_UNIT).message, Contains("say which ton"));
    refusal = convert_refused(2, "wibble", "l", CUTWATER_UNKNOWN_UNIT);
    CHECK(refusal.argument == 1);
    CHECK(std::string(refusal.name) == "from");
    CHECK(convert_refused(2, "l", "wibble", CUTWATER_UNKNOWN_UNIT).argument == 2);
    CHECK(convert_refused(NAN, "l", "m3", CUTWATER_NOT_FINITE).argument == 0);
    CHECK(convert_refused(INFINITY, "l", "m3", CUTWATER_NOT_FINITE).argument == 0);
    refusal = convert_refused(-300, "degC", "K", CUTWATER_OUT_OF_INTERVAL);
    CHECK(refusal.low == -273.15);
    CHECK(refusal.value == -300);
    CHECK(std::string(refusal.unit) == "degC");
    CHECK_THAT(convert_refused(-1, "bara", "psia", CUTWATER_OUT_OF_INTERVAL).message, Contains("vacuum"));
}

TEST_CASE("a text read in a unit that was asked for is told which unit to ask for")
{
    const auto asks = [](const char* text, const char* unit, const char* says) {
        double value = 0;
        cutwater_refusal refusal;
        INFO(text << " in " << unit);
        CHECK(read_in_unit(unit, text, value, &refusal) == CUTWATER_WRONG_QUANTITY);
        CHECK_THAT(refusal.message, Contains(says));
        CHECK(refusal.low_open == 1);
        CHECK(refusal.high_open == 1);
    };
    asks("760 torr", "Pa", "ask for Pa(a)");
    asks("2 bara", "Pa", "ask for Pa(a)");
    asks("2 barg", "bar", "ask for barg");
    asks("2 barg", "psi", "ask for psig");
    asks("2 bar", "bara", "write bara if that is meant");
    asks("10 degF", "K", "delta degF");
}

TEST_CASE("a unit of several quantities goes with its partner")
{
    double out = 0;
    const auto converts = [&](double value, const char* from, const char* to) {
        cutwater_refusal refusal;
        INFO(from << " -> " << to);
        CHECK(convert(value, from, to, out, &refusal) == CUTWATER_OK);
        return out;
    };
    CHECK(converts(300, "K", "degC") == Approx(26.85));
    CHECK(converts(5, "K", "delta degF") == 9);
    CHECK(converts(5, "ms", "s") == 0.005);
    CHECK(converts(5, "ms", "km/h") == 18);
    CHECK(converts(60, "1/min", "Hz") == 1);
    CHECK(converts(60, "1/min", "rps") == 1);
    CHECK(converts(1, "%", "ppm") == 10000);
    CHECK(converts(5, "bar", "kPa") == 500);
}

TEST_CASE("two units that several quantities share convert alike in all of them")
{
    // otherwise convert would depend on the order of the list
    for (const QuantityInfo* a : all_quantities())
        for (const QuantityInfo* b : all_quantities())
            for (const UnitInfo& from_a : *a)
                for (const UnitInfo& to_a : *a)
                    for (const UnitInfo& from_b : *b)
                        for (const UnitInfo& to_b : *b)
                            if (!std::strcmp(from_a.symbol, from_b.symbol) && !std::strcmp(to_a.symbol, to_b.symbol)) {
                                INFO(a->name << ", " << b->name << ": " << from_a.symbol << " -> " << to_a.symbol);
                                CHECK(rescale(7, from_a, to_a) == rescale(7, from_b, to_b));
                            }
}

TEST_CASE("no spelling means two units of one quantity")
{
    for (const QuantityInfo* quantity : all_quantities())
        for (const UnitInfo& unit : *quantity) {
            double value = 0;
            const std::string text = std::string("1 ") + unit.symbol;
            INFO(quantity->name << ": " << text);
            CHECK(read_quantity(*quantity, unit, text, value, nullptr) == CUTWATER_OK);
            for (const UnitInfo& other : *quantity)
                if (&other != &unit) CHECK(std::string(other.symbol) != unit.symbol);
        }
}

TEST_CASE("whatever the bytes, there is a status and a number that agrees with it")
{
    std::uint64_t state = 0x9E3779B97F4A7C15u;
    const auto random = [&](std::uint64_t below) {
        state ^= state << 13;
        state ^= state >> 7;
        state ^= state << 17;
        return state % below;
    };
    const char* const pieces[] = {"1",
                                  "0",
                                  "25.4",
                                  "-",
                                  "+",
                                  ".",
                                  ",",
                                  "e",
                                  "E5",
                                  " ",
                                  "\u00A0",
                                  "\u2009",
                                  "'",
                                  "m3/h",
                                  "bar",
                                  "a",
                                  "(g)",
                                  "\u00B0",
                                  "C",
                                  "K",
                                  "\u00B3",
                                  "US ",
                                  "gpm",
                                  "%",
                                  "/",
                                  "^",
                                  "*",
                                  "(",
                                  ")",
                                  "nan",
                                  "inf",
                                  "0x",
                                  "\xC3",
                                  "\xED\xA0\x80",
                                  "\xF4\x90\x80\x80",
                                  "\u2212",
                                  "\t"};
    const auto quantities = all_quantities();
    std::string text;
    std::size_t read = 0;
    for (int i = 0; i < 100000; ++i) {
        text.clear();
        if (i % 2) {
            for (std::uint64_t n = random(12); n > 0; --n) text += pieces[random(std::size(pieces))];
        } else {
            for (std::uint64_t n = random(200); n > 0; --n) text += static_cast<char>(random(256));
        }
        const QuantityInfo& quantity = *quantities[random(quantities.size())];
        const UnitInfo& bare = quantity.units[random(quantity.count)];
        double value = 0;
        cutwater_refusal refusal;
        std::memset(&refusal, 0x7E, sizeof refusal);
        const cutwater_status status = read_quantity(quantity, bare, text, value, &refusal);
        if (status == CUTWATER_OK) {
            REQUIRE(std::isfinite(value));
            ++read;
        } else {
            REQUIRE(std::isnan(value));
            REQUIRE(refusal.status == status);
            REQUIRE(std::memchr(refusal.message, 0, sizeof refusal.message));
            REQUIRE(std::strlen(refusal.message) > 10);
        }
        double out = 0;
        const std::size_t half = text.size() / 2;
        const cutwater_status converted = convert(1, std::string_view(text).substr(0, half),
                                                  std::string_view(text).substr(half), out, &refusal);
        REQUIRE(std::isnan(out) == (converted != CUTWATER_OK));
    }
    CHECK(read > 300);
}

// Conversions against exact rational arithmetic: a decimal of up to 15 digits comes out as the double nearest to the
// true result.
#include "units/text.hpp"

#include <cutwater/unit_table.hpp>

#include <boost/multiprecision/cpp_int.hpp>
#include <catch2/catch.hpp>

#include <cmath>
#include <cstdint>
#include <string>

using namespace cutwater;
using Rational = boost::multiprecision::cpp_rational;

namespace {

bool is_whole(double x) { return x == std::floor(x); }

Rational hundredths(double offset) { return Rational(std::llround(offset * 100), 100); }

/// Distance of the result from the exact value, in units of the result's last place.
double error_in_ulps(double result, const Rational& exact)
{
    const double ulp = std::nextafter(std::abs(result), INFINITY) - std::abs(result);
    const Rational error = (Rational(result) - exact) / Rational(ulp);
    return std::abs(error.convert_to<double>());
}

/// Can the reduced factor and the number's power of ten be held in doubles exactly?
bool fits(const UnitInfo& from, const UnitInfo& to, const boost::multiprecision::cpp_int& power)
{
    const Rational factor = Rational(from.numerator) * Rational(to.denominator) /
                            (Rational(from.denominator) * Rational(to.numerator));
    const boost::multiprecision::cpp_int most = boost::multiprecision::cpp_int(1) << 53;
    const int hundred = from.offset != 0 || to.offset != 0 ? 100 : 1;
    return numerator(factor) * hundred < most && denominator(factor) * hundred * power < most;
}

}  // namespace

TEST_CASE("conversions are the exact result, rounded once")
{
    const struct {
        const char* text;
        std::int64_t digits;
        int places;
    } numbers[] = {
        {"1", 1, 0},
        {"25.4", 254, 1},
        {"0.1", 1, 1},
        {"98.6", 986, 1},
        {"1013.25", 101325, 2},
        {"440", 440, 0},
        {"0.000123", 123, 6},
        {"-40", -40, 0},
        {"299792458", 299792458, 0},
        {"3.14159265", 314159265, 8},
        {"6.02e23", 602, -21},
    };
    double worst = 0;
    std::size_t compared = 0;
    for (const QuantityInfo* quantity : all_quantities())
        for (const UnitInfo& from : *quantity)
            for (const UnitInfo& to : *quantity) {
                if (!is_whole(from.numerator) || !is_whole(from.denominator) || !is_whole(to.numerator) ||
                    !is_whole(to.denominator))
                    continue;
                for (const auto& number : numbers) {
                    const boost::multiprecision::cpp_int power = boost::multiprecision::pow(
                        boost::multiprecision::cpp_int(10), unsigned(std::abs(number.places)));
                    const Rational x = number.places < 0 ? Rational(number.digits) * power
                                                         : Rational(number.digits) / power;
                    const Rational exact = (x + hundredths(from.offset)) * Rational(from.numerator) *
                                               Rational(to.denominator) /
                                               (Rational(from.denominator) * Rational(to.numerator)) -
                                           hundredths(to.offset);
                    const double result = rescale(std::strtod(number.text, nullptr), from, to);
                    if (exact == 0) {
                        CHECK(result == 0);
                        continue;
                    }
                    const double error = error_in_ulps(result, exact);
                    INFO(number.text << " " << from.symbol << " -> " << to.symbol << " = " << result);
                    // where a factor has more digits than a double holds, a rounding of the factor comes on top
                    CHECK(error < 2.0);
                    const bool factors_fit = fits(from, to, power);
                    if (factors_fit && number.places >= 0) CHECK(error < 0.5001);
                    worst = std::max(worst, error);
                    ++compared;
                }
            }
    CHECK(compared > 5000);
    CHECK(worst < 2.0);
}

TEST_CASE("units whose ratio is an integer or a short decimal convert without a trace")
{
    double out = 0;
    const auto converts = [&](double value, const char* from, const char* to, double expected) {
        cutwater_refusal refusal;
        INFO(value << " " << from << " -> " << to);
        REQUIRE(convert(value, from, to, out, &refusal) == CUTWATER_OK);
        CHECK(out == expected);
    };
    converts(1, "in", "mm", 25.4);
    converts(25.4, "mm", "in", 1);
    converts(7.3, "m", "mm", 7300);
    converts(100, "degC", "degF", 212);
    converts(98.6, "degF", "degC", 37);
    converts(-273.15, "degC", "K", 0);
    converts(-459.67, "degF", "K", 0);
    converts(20, "degC", "K", 293.15);
    converts(1, "bbl", "US gal", 42);
    converts(1, "bara", "mbar(a)", 1000);
    converts(1, "atm(a)", "torr", 760);
    converts(1, "ft3", "in3", 1728);
    converts(1, "kWh", "MJ", 3.6);
    converts(3.6, "m3/h", "l/s", 1);
    converts(1, "inHg", "mmHg", 25.4);
    converts(72, "%", "", 0.72);
    converts(0.72, "", "%", 72);
    converts(1450, "rpm", "1/s", 1450.0 / 60);
    converts(1, "lbf ft", "lbf in", 12);
    converts(1, "lb/US gal", "lb/ft3", 1728.0 / 231);
}

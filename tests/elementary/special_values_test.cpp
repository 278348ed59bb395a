// Zeros with their signs, infinities, no number, the ends of the range: as ISO/IEC 9899:2011, annex F.10, has them
// (from memory of it; the C library of this machine, which follows it, is asked as well).
#include "elementary/elementary.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>
#include <vector>

namespace el = cutwater::elementary;

namespace {

constexpr double inf = std::numeric_limits<double>::infinity();
const double none = std::numeric_limits<double>::quiet_NaN();

bool same(double a, double b) { return std::isnan(a) ? std::isnan(b) : a == b && std::signbit(a) == std::signbit(b); }

const std::vector<double> specials = {
    0.0,        -0.0,          1,      -1,        2,           -2,         3,     -3,     0.5,        -0.5,
    inf,        -inf,          none,   0x1p-1074, -0x1p-1074,  0x1p-1022,  1e300, -1e300, 0x1p52 + 1, -(0x1p52 + 1),
    0x1p53 - 1, -(0x1p53 - 1), 0x1p54, -0x1p54,   1 - 0x1p-53, 1 + 0x1p-52};

/// Where the C library's own value is exact: zero, infinity, one, or no number at all; else closely.
bool agrees(double ours, double theirs)
{
    if (std::isnan(theirs) || theirs == 0 || std::isinf(theirs) || std::abs(theirs) == 1) return same(ours, theirs);
    return std::signbit(ours) == std::signbit(theirs) &&
           std::abs(ours - theirs) <= 4e-16 * std::abs(theirs) + 0x1p-1074;
}

}  // namespace

TEST_CASE("Functions of one number at special values", "[elementary]")
{
    struct Both {
        const char* name;
        double (*ours)(double);
        double (*theirs)(double);
    };
    const Both functions[] = {
        {"log", el::log, std::log},    {"log10", el::log10, std::log10}, {"log1p", el::log1p, std::log1p},
        {"exp", el::exp, std::exp},    {"expm1", el::expm1, std::expm1}, {"asin", el::asin, std::asin},
        {"acos", el::acos, std::acos}, {"atan", el::atan, std::atan},    {"sinh", el::sinh, std::sinh},
        {"cosh", el::cosh, std::cosh}, {"tanh", el::tanh, std::tanh},    {"cbrt", el::cbrt, std::cbrt}};
    for (const Both& f : functions)
        for (const double x : specials) {
            CAPTURE(f.name, x, f.ours(x), f.theirs(x));
            CHECK(agrees(f.ours(x), f.theirs(x)));
        }
    CHECK(same(el::log(1), 0));
    CHECK(same(el::log(-0.0), -inf));
    CHECK(same(el::log1p(-1), -inf));
    CHECK(std::isnan(el::log1p(std::nextafter(-1, -2))));
    CHECK(el::exp(709.7827128933842) == inf);
    CHECK(el::exp(709.782712893383) < inf);
    CHECK(same(el::exp(-746), 0));
    CHECK(el::exp(-745.13) == 0x1p-1074);
    CHECK(same(el::exp10(-inf), 0));
    CHECK(el::exp10(309) == inf);
    CHECK(std::isnan(el::exp10(none)));
    CHECK(el::expm1(709.79) == inf);
    CHECK(el::sinh(710.4758) < inf);
    CHECK(el::sinh(-710.4759) == -inf);
}

TEST_CASE("Angles that are too large have no sine, small ones keep their sign", "[elementary]")
{
    for (double (*f)(double) : {el::sin, el::cos, el::tan})
        for (const double x : {inf, -inf, none, std::nextafter(el::greatest_angle, inf), -1e300})
            CHECK(std::isnan(f(x)));
    for (double (*f)(double) : {el::sin, el::tan})
        for (const double x : {0.0, -0.0, 0x1p-1074, -0x1p-1074, 1e-300}) CHECK(same(f(x), x));
    CHECK(el::cos(0x1p-30) == 1);
    CHECK(same(el::cos(-0.0), 1));
}

TEST_CASE("Functions of two numbers at special values", "[elementary]")
{
    for (const double x : specials)
        for (const double y : specials) {
            CAPTURE(x, y);
            CHECK(agrees(el::atan2(x, y), std::atan2(x, y)));
            if (std::isinf(x) || std::isinf(y) || x == 0 || y == 0) CHECK(agrees(el::hypot(x, y), std::hypot(x, y)));
        }
    CHECK(el::hypot(3e307, 4e307) == 5e307);
    CHECK(el::hypot(1.7e308, 1.7e308) == inf);
    CHECK(std::isnan(el::hypot(none, 1)));
}

TEST_CASE("Powers of zero, of infinity, out of reach and of what has none", "[elementary]")
{
    for (const double y : {-1e300, -2.0, -0x1p-60, 0.0, 0x1p-60, 0.5, 3.0, 1e300})
        for (const double x : {0.0, inf, 1.0}) {
            CAPTURE(x, y);
            CHECK(same(el::positive_pow(x, y), std::pow(x, y)));
        }
    CHECK(el::positive_pow(2, 1021) == 0x1p1021);
    CHECK(el::positive_pow(2, -1021) == 0x1p-1021);
    CHECK(el::positive_pow(2, 1022) == inf);
    CHECK(same(el::positive_pow(2, -1022), 0));
    CHECK(el::positive_pow(1e-300, -1.1) == inf);
    CHECK(same(el::positive_pow(1e300, -1.1), 0));
    for (const double y : {-3.0, -0.5, 0.0, 0.5, 2.0})
        for (const double x : {none, -inf, -1e300, -1.0, -0x1p-1074, 0x1p-1074, std::nextafter(0x1p-1022, 0.0)}) {
            CAPTURE(x, y);
            CHECK(std::isnan(el::positive_pow(x, y)));
        }
}

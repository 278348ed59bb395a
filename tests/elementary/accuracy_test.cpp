// Every elementary function against Boost.Multiprecision with 60 digits: no further than its stated bound over its
// whole range, at random, beside powers of two and where it is hard.
#include "elementary/elementary.hpp"
#include "elementary/wide.hpp"

#include <catch2/catch.hpp>

#include <functional>
#include <random>
#include <vector>

namespace el = cutwater::elementary;
using wide::Wide;

namespace {

std::mt19937_64 random_bits(20261126);

double uniform(double low, double high) { return std::uniform_real_distribution<double>(low, high)(random_bits); }

/// Both signs, every order of magnitude alike.
double of_any_size(double low, double high)
{
    const double size = std::exp2(uniform(std::log2(low), std::log2(high)));
    return random_bits() & 1 ? size : -size;
}

/// Powers of two and their neighbours from low to high, with the signs that lie there.
std::vector<double> beside_powers_of_two(double low, double high)
{
    std::vector<double> points;
    for (int exponent = -1074; exponent < 1024; exponent += exponent < -60 || exponent > 60 ? 37 : 1)
        for (const double sign : {1.0, -1.0}) {
            const double power = std::ldexp(sign, exponent);
            for (const double x : {std::nextafter(power, -INFINITY), power, std::nextafter(power, INFINITY)})
                if (x >= low && x <= high && x != 0) points.push_back(x);
        }
    return points;
}

struct Range {
    double low;
    double high;
};

struct Function {
    const char* name;
    double (*ours)(double);
    Wide (*exact)(const Wide&);
    double bound;
    Range range;
    std::vector<double> hard = {};
};

std::vector<double> points_of(const Function& f)
{
    std::vector<double> points = beside_powers_of_two(f.range.low, f.range.high);
    points.insert(points.end(), f.hard.begin(), f.hard.end());
    for (int i = 0; i < 400; ++i) points.push_back(uniform(f.range.low, f.range.high));
    const double largest = std::max(std::abs(f.range.low), f.range.high);
    for (int i = 0; i < 400; ++i)
        if (const double x = of_any_size(0x1p-1074, largest); x >= f.range.low && x <= f.range.high && x != 0)
            points.push_back(x);
    for (int i = 0; i < 400; ++i)  // where most arguments lie
        if (const double x = uniform(std::max(f.range.low, -4.0), std::min(f.range.high, 4.0)); x != 0)
            points.push_back(x);
    return points;
}

/// Multiples of a quarter turn, where the reduced angle all but vanishes.
std::vector<double> quarter_turns()
{
    std::vector<double> points;
    for (double n = 1; n < 6e5; n = std::ceil(n * 1.13)) {
        const double x = n * 1.57079632679489661923;
        points.insert(points.end(), {std::nextafter(x, 0), x, std::nextafter(x, INFINITY), -x});
    }
    return points;
}

const Wide one = 1;

Wide exact_log1p(const Wide& x)
{
    return wide::Wider(1 + wide::Wider(x)).convert_to<Wide>() == 1 ? x - x * x / 2 : Wide(log(1 + wide::Wider(x)));
}
Wide exact_expm1(const Wide& x) { return abs(x) < 1e-30 ? x + x * x / 2 : Wide(exp(wide::Wider(x)) - 1); }
Wide exact_sinh(const Wide& x)
{
    return abs(x) < 1e-20 ? x + x * x * x / 6 : Wide((exp(wide::Wider(x)) - exp(-wide::Wider(x))) / 2);
}
Wide exact_tanh(const Wide& x) { return exact_sinh(x) / cosh(x); }
Wide exact_atan(const Wide& x) { return abs(x) < 1e-25 ? x - x * x * x / 3 : Wide(atan(x)); }
Wide exact_asin(const Wide& x) { return abs(x) < 1e-25 ? x + x * x * x / 6 : Wide(asin(x)); }

const Function functions[] = {
    {"log",
     el::log,
     [](const Wide& x) { return Wide(log(x)); },
     0.9,
     {0x1p-1074, 0x1.fffffffffffffp1023},
     {0.99, 1.01, 1 + 0x1p-52, 1 - 0x1p-53}},
    {"log10",
     el::log10,
     [](const Wide& x) { return Wide(log10(x)); },
     0.8,
     {0x1p-1074, 0x1.fffffffffffffp1023},
     {0.99, 1.01, 1 + 0x1p-52, 1 - 0x1p-53}},
    {"log1p", el::log1p, exact_log1p, 0.9, {-0x1.fffffffffffffp-1, 1e300}},
    {"exp", el::exp, [](const Wide& x) { return Wide(exp(x)); }, 0.8, {-745.1, 709.78}, {-708.4, -708.3, 709.78}},
    {"exp10", el::exp10, [](const Wide& x) { return Wide(pow(Wide(10), x)); }, 0.8, {-323.3, 308.25}, {-307.7, -307.6}},
    {"expm1", el::expm1, exact_expm1, 0.9, {-60, 709.78}, {-37.1, 37.2, 0.3466, -0.3466}},
    {"sin",
     el::sin,
     [](const Wide& x) { return Wide(sin(x)); },
     0.85,
     {-el::greatest_angle, el::greatest_angle},
     quarter_turns()},
    {"cos",
     el::cos,
     [](const Wide& x) { return Wide(cos(x)); },
     0.85,
     {-el::greatest_angle, el::greatest_angle},
     quarter_turns()},
    {"tan",
     el::tan,
     [](const Wide& x) { return Wide(tan(x)); },
     1.05,
     {-el::greatest_angle, el::greatest_angle},
     quarter_turns()},
    {"asin", el::asin, exact_asin, 0.95, {-1, 1}, {0.5, std::nextafter(0.5, 0), 0.975}},
    {"acos",
     el::acos,
     [](const Wide& x) { return Wide(acos(x)); },
     0.95,
     {-1, 0x1.fffffffffffffp-1},
     {0.5, -0.5, std::nextafter(0.5, 0)}},
    {"atan", el::atan, exact_atan, 0.9, {-1e300, 1e300}, {0.4375, 0.6875, 1.1875, 2.4375}},
    {"sinh", el::sinh, exact_sinh, 0.8, {-710.4, 710.4}, {22, std::nextafter(22, 0), 1, -1}},
    {"cosh", el::cosh, [](const Wide& x) { return Wide(cosh(x)); }, 1.2, {-710.4, 710.4}},
    {"tanh", el::tanh, exact_tanh, 0.75, {-40, 40}, {18.5, 19.1}},
    {"cbrt",
     el::cbrt,
     [](const Wide& x) { return Wide(x < 0 ? -pow(-x, one / 3) : pow(x, one / 3)); },
     0.7,
     {-1e308, 1e308},
     {27, -8, 1e-320}},
};

}  // namespace

TEST_CASE("Elementary functions lie within their bounds", "[elementary]")
{
    for (const Function& f : functions) {
        double worst = 0, where = 0;
        for (const double x : points_of(f))
            if (const double error = wide::error_in_ulps(f.ours(x), f.exact(x)); !(error <= worst))
                worst = error, where = x;
        CAPTURE(f.name, where, worst);
        CHECK(worst < f.bound);
        CHECK(worst > 0.49);  // else nothing was measured
    }
}

namespace {

struct Pair {
    double x;
    double y;
};

void check_pairs(const char* name, double (*ours)(double, double),
                 const std::function<Wide(const Wide&, const Wide&)>& exact, double bound,
                 const std::vector<Pair>& pairs)
{
    double worst = 0;
    Pair where{};
    for (const Pair p : pairs)
        if (const double error = wide::error_in_ulps(ours(p.x, p.y), exact(p.x, p.y)); !(error <= worst))
            worst = error, where = p;
    CAPTURE(name, where.x, where.y, worst);
    CHECK(worst < bound);
    CHECK(worst > 0.49);
}

}  // namespace

TEST_CASE("Powers lie within their bounds", "[elementary]")
{
    struct Reach {
        double greatest;  // of |y ln(x)|
        double bound;
    };
    for (const Reach reach : {Reach{100, 0.96}, Reach{707.99, 1.5}}) {
        std::vector<Pair> pairs{{1.5, 0.5}, {10, 22}, {3, 40}, {0x1p-1022, 0.1}, {0x1.fffffffffffffp1023, -0.1}};
        for (int i = 0; i < 3000; ++i) {
            const double any = std::abs(of_any_size(0x1p-1022, 0x1.fp1023));
            pairs.push_back({any, uniform(-reach.greatest, reach.greatest) / std::log(any)});
            pairs.push_back({std::exp(uniform(-9, 9)), uniform(-4, 4)});
            const double near_one = 1 + of_any_size(0x1p-52, 0.41);
            pairs.push_back({near_one, uniform(-reach.greatest, reach.greatest) / std::log(near_one)});
        }
        const auto exact = [](const Wide& x, const Wide& y) { return Wide(pow(x, y)); };
        check_pairs("positive_pow", el::positive_pow, exact, reach.bound, pairs);
    }
    for (const double x : beside_powers_of_two(0x1p-1021, 1e307))
        if (x > 0) CHECK(el::positive_pow(x, 1) == x);
    for (int n = 0; n <= 22; ++n) CHECK(el::positive_pow(10, n) == std::stod("1e" + std::to_string(n)));  // exact
    for (int n = 0; n <= 22; ++n) CHECK(el::exp10(n) == std::stod("1e" + std::to_string(n)));
    for (int n = -300; n <= 300; ++n) CHECK(el::log10(std::stod("1e" + std::to_string(n))) == n);
}

TEST_CASE("Angles of points and hypotenuses lie within their bounds", "[elementary]")
{
    std::vector<Pair> pairs;
    for (int i = 0; i < 1000; ++i) {
        pairs.push_back({uniform(-1, 1), uniform(-1, 1)});
        pairs.push_back({of_any_size(1e-150, 1e150), of_any_size(1e-150, 1e150)});
        pairs.push_back({uniform(-1, 1) * 1.7e308, uniform(-1, 1) * 1.7e308});
    }
    check_pairs(
        "atan2", el::atan2, [](const Wide& y, const Wide& x) { return x > 0 ? exact_atan(y / x) : Wide(atan2(y, x)); },
        1.3, pairs);
    for (Pair& p : pairs) p = std::abs(p.x) > 1e308 || std::abs(p.y) > 1e308 ? Pair{1, 1} : p;
    for (int i = 0; i < 1000; ++i) pairs.push_back({of_any_size(1e-323, 1e-300), of_any_size(1e-323, 1e-300)});
    check_pairs(
        "hypot", el::hypot, [](const Wide& x, const Wide& y) { return Wide(sqrt(x * x + y * y)); }, 0.65, pairs);
}

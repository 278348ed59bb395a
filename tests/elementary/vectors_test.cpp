// A loop has the bits of single calls at every width of vector that this machine has.
#include "elementary/elementary.hpp"

#include <catch2/catch.hpp>

#include <bit>
#include <cstdint>
#include <limits>
#include <random>
#include <vector>

namespace el = cutwater::elementary;

namespace {

template <double (*F)(double)>
[[gnu::noinline]] void one_by_one(const std::vector<double>& x, std::vector<double>& y)
{
    for (std::size_t i = 0; i < x.size(); ++i) {
        y[i] = F(x[i]);
        asm volatile("" ::: "memory");  // no vectors here
    }
}

#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__)
#define CUTWATER_WIDE(name, features)                                                                                  \
    template <double (*F)(double)>                                                                                     \
    [[gnu::target(features), gnu::flatten, gnu::optimize("O3"), gnu::noinline]] void name(const double* x, double* y,  \
                                                                                          std::size_t n)               \
    {                                                                                                                  \
        _Pragma("GCC ivdep") for (std::size_t i = 0; i < n; ++i) y[i] = F(x[i]);                                       \
    }
CUTWATER_WIDE(by_two, "sse2")
CUTWATER_WIDE(by_four, "avx2")
CUTWATER_WIDE(by_eight, "avx512f,avx512dq,avx512vl,avx512bw,prefer-vector-width=512")

bool same_bits(const std::vector<double>& a, const std::vector<double>& b)
{
    for (std::size_t i = 0; i < a.size(); ++i)
        if (std::bit_cast<std::uint64_t>(a[i]) != std::bit_cast<std::uint64_t>(b[i]) && !(a[i] != a[i] && b[i] != b[i]))
            return false;
    return true;
}

template <double (*F)(double)>
void check(const char* name, const std::vector<double>& x)
{
    CAPTURE(name);
    std::vector<double> single(x.size()), wide(x.size());
    one_by_one<F>(x, single);
    by_two<F>(x.data(), wide.data(), x.size());
    CHECK(same_bits(single, wide));
    if (__builtin_cpu_supports("avx2")) {
        by_four<F>(x.data(), wide.data(), x.size());
        CHECK(same_bits(single, wide));
    }
    if (__builtin_cpu_supports("avx512dq") && __builtin_cpu_supports("avx512vl")) {
        by_eight<F>(x.data(), wide.data(), x.size());
        CHECK(same_bits(single, wide));
    }
}

double power_of_pump(double x) { return el::positive_pow(x, -0.0547); }
double pump_to_power(double x) { return el::positive_pow(2.71, x); }
double angle_beside_3(double x) { return el::atan2(x, 3); }
double beside_3(double x) { return el::hypot(x, 3); }

TEST_CASE("Loops in vectors have the bits of single calls", "[elementary]")
{
    std::mt19937_64 random(7);
    std::vector<double> x;
    for (int i = 0; i < 20000; ++i) x.push_back(std::bit_cast<double>(random()));  // every kind of number
    std::uniform_real_distribution<double> usual(-20, 20), near_one(0, 2);
    for (int i = 0; i < 20000; ++i) x.push_back(usual(random)), x.push_back(near_one(random));
    constexpr double inf = std::numeric_limits<double>::infinity();
    for (const double special : {0.0, -0.0, inf, -inf, inf - inf, 1.0, -1.0, 0x1p-1074}) x.push_back(special);
    check<el::log>("log", x), check<el::log10>("log10", x), check<el::log1p>("log1p", x), check<el::exp>("exp", x),
        check<el::exp10>("exp10", x);
    check<el::expm1>("expm1", x), check<el::sin>("sin", x), check<el::cos>("cos", x), check<el::tan>("tan", x),
        check<el::asin>("asin", x);
    check<el::acos>("acos", x), check<el::atan>("atan", x), check<el::sinh>("sinh", x), check<el::cosh>("cosh", x),
        check<el::tanh>("tanh", x);
    check<el::cbrt>("cbrt", x), check<power_of_pump>("pow of x", x), check<pump_to_power>("pow to x", x);
    check<angle_beside_3>("atan2", x), check<beside_3>("hypot", x);
}
#endif

}  // namespace

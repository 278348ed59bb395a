// Doubles as bits, the way the elementary functions take them apart and put them together. Everything here and in the
// functions is free of branches, tables and fused multiply-adds, so that a loop of them becomes vectors of any width
// and gives the same bits as one call.
#pragma once

#include <bit>
#include <cstdint>
#include <limits>

namespace cutwater::elementary::detail {

inline constexpr double infinity = std::numeric_limits<double>::infinity();
inline constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
inline constexpr std::uint64_t sign_bit = 0x8000000000000000;
inline constexpr std::uint64_t fraction_bits = 0x000fffffffffffff;
inline constexpr std::uint64_t bits_of_one = 0x3ff0000000000000;

[[gnu::always_inline]] constexpr std::uint64_t bits(double x) { return std::bit_cast<std::uint64_t>(x); }
[[gnu::always_inline]] constexpr double from_bits(std::uint64_t b) { return std::bit_cast<double>(b); }
[[gnu::always_inline]] constexpr double magnitude(double x) { return from_bits(bits(x) & ~sign_bit); }
[[gnu::always_inline]] constexpr double with_sign_of(double x, double sign)
{
    return from_bits(bits(magnitude(x)) | (bits(sign) & sign_bit));
}

/// A condition as bits, all set or none: what the compiler leaves alone. Of a conditional it makes branches and a copy
/// of what follows for each, and truth values that are joined and kept it cannot put into vectors.
[[gnu::always_inline]] constexpr std::uint64_t mask(bool condition)
{
    return 0 - static_cast<std::uint64_t>(condition);
}
[[gnu::always_inline]] constexpr double select(std::uint64_t mask, double a, double b)
{
    return from_bits((bits(a) & mask) | (bits(b) & ~mask));
}
[[gnu::always_inline]] constexpr double select(bool condition, double a, double b)
{
    return select(mask(condition), a, b);
}

/// The upper 21 bits of the significand: the product of two such is exact.
[[gnu::always_inline]] constexpr double upper(double x) { return from_bits(bits(x) & 0xffffffff00000000); }

/// A value and what its rounding lost.
struct Precise {
    double value;
    double rest;
};
[[gnu::always_inline]] constexpr Precise precise_sum_of_any(double a, double b)
{
    const double sum = a + b;
    const double from_b = sum - a;
    return {sum, (a - (sum - from_b)) + (b - from_b)};
}
[[gnu::always_inline]] constexpr Precise precise_sum(double large, double small)
{
    const double sum = large + small;
    return {sum, (large - sum) + small};
}

/// a - q b for q near a/b, almost exactly.
[[gnu::always_inline]] constexpr double remainder_of(double a, double b, double q)
{
    const double b_upper = upper(b), q_upper = upper(q);
    return ((a - q_upper * b_upper) - (q - q_upper) * b_upper) - q * (b - b_upper);
}

[[gnu::always_inline]] constexpr Precise precise_quotient(Precise a, Precise b)
{
    const double q = a.value / b.value;
    return {q, (remainder_of(a.value, b.value, q) + (a.rest - q * b.rest)) / b.value};
}

/// A small whole number that lies in the low bits, as a double, less an offset: vectors of two and four cannot convert.
[[gnu::always_inline]] constexpr double as_double(std::uint64_t whole, double offset)
{
    return from_bits(0x4330000000000000 | whole) - (0x1p52 + offset);
}

/// The nearest whole number, as a double and as bits; for |x| < 2^51.
struct Whole {
    double value;
    std::uint64_t bits;
};
[[gnu::always_inline]] constexpr Whole nearest_whole(double x)
{
    const double shifted = x + 0x1.8p52;
    return {shifted - 0x1.8p52, bits(shifted) - bits(0x1.8p52)};
}

/// y 2^k for k from -1100 to 1030, rounded once: the first of two steps is exact.
[[gnu::always_inline]] constexpr double scaled(double y, std::uint64_t k)
{
    const std::uint64_t first = ((k + 2048) >> 1) - 1024;
    const std::uint64_t second = k - first;
    return y * from_bits((first + 1023) << 52) * from_bits((second + 1023) << 52);
}

/// x = 2^k m with m from a bound (below 1, its bits given) to twice that; for x > 0.
struct Parts {
    double k;
    double m;
};
[[gnu::always_inline]] constexpr Parts parts(double x, std::uint64_t bound)
{
    const bool subnormal = x < 0x1p-1022;
    const std::uint64_t moved = bits(select(subnormal, x * 0x1p54, x)) + (bits_of_one - bound);
    return {as_double(moved >> 52, select(subnormal, 1023 + 54, 1023)), from_bits((moved & fraction_bits) + bound)};
}

/// What a logarithm makes of values that have none: of zero, of negative numbers, of infinity, of no number.
[[gnu::always_inline]] constexpr double with_poles(double x, double value)
{
    return select(x > 0, select(x < infinity, value, x), select(x == 0, -infinity, not_a_number));
}

}  // namespace cutwater::elementary::detail

namespace cutwater::elementary {

/// a or b without a branch, so that a formula with two ways stays fit for vectors; both are computed.
using detail::select;

}  // namespace cutwater::elementary

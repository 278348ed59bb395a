// Sine, cosine and tangent. After k_sin.c, k_cos.c and e_rem_pio2.c of FDLIBM in FreeBSD's and OpenLibm's editions,
// without branches:
//
// ====================================================
// Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
//
// Developed at SunPro, a Sun Microsystems, Inc. business.
// Permission to use, copy, modify, and distribute this
// software is freely granted, provided that this notice
// is preserved.
// ====================================================
#pragma once

#include "elementary/bits.hpp"

namespace cutwater::elementary {

/// Beyond this an angle in radians has no sine, cosine or tangent here: no number is returned. No machine's angle comes
/// near.
inline constexpr double greatest_angle = 1e6;

namespace detail {

/// x less a whole number of quarter turns, as a sum; the quarters.
struct Angle {
    double high;
    double low;
    std::uint64_t quarters;
};

[[gnu::always_inline]] inline Angle reduced_angle(double x)
{
    constexpr double over_half_pi = 6.36619772367581382433e-01;
    constexpr double first = 1.57079632673412561417e+00;  // pi/2 in pieces of 33 bits: exact products with up to 2^20
    constexpr double second = 6.07710050630396597660e-11;
    constexpr double third = 2.02226624871116645580e-21;
    constexpr double fourth = 8.47842766036889956997e-32;
    const double within = select(magnitude(x) <= greatest_angle, x, not_a_number);
    const Whole n = nearest_whole(within * over_half_pi);
    const double a = within - n.value * first;
    const Precise b = precise_sum_of_any(a, -(n.value * second));
    const double c = n.value * third;
    const double high = b.value - c;
    return {high, ((b.value - high) - c) + (b.rest - n.value * fourth), n.bits};
}

[[gnu::always_inline]] constexpr Precise sine_of(double x, double low)
{
    const double z = x * x;
    const double w = z * z;
    const double r = 8.33333333332248946124e-03 + z * (-1.98412698298579493134e-04 + z * 2.75573137070700676789e-06) +
                     z * w * (-2.50507602534068634195e-08 + z * 1.58969099521155010221e-10);
    const double v = z * x;
    return {x, v * -1.66666666666666324348e-01 - (z * (0.5 * low - v * r) - low)};
}

[[gnu::always_inline]] constexpr Precise cosine_of(double x, double low)
{
    const double z = x * x;
    const double w = z * z;
    const double r =
        z * (4.16666666666666019037e-02 + z * (-1.38888888888741095749e-03 + z * 2.48015872894767294178e-05)) +
        w * w * (-2.75573143513906633035e-07 + z * (2.08757232129817482790e-09 + z * -1.13596475577881948265e-11));
    const double half = 0.5 * z;
    const double first = 1.0 - half;
    return {first, ((1.0 - first) - half) + (z * r - x * low)};
}

[[gnu::always_inline]] constexpr double of_parity(std::uint64_t quarters, double even, double odd)
{
    const std::uint64_t mask = 0 - (quarters & 1);
    return from_bits((bits(odd) & mask) | (bits(even) & ~mask));
}

[[gnu::always_inline]] inline double sine_after(double x, std::uint64_t more_quarters)
{
    const Angle angle = reduced_angle(x);
    const std::uint64_t quarters = angle.quarters + more_quarters;
    const Precise s = sine_of(angle.high, angle.low);
    const Precise c = cosine_of(angle.high, angle.low);
    const double value = of_parity(quarters, s.value + s.rest, c.value + c.rest);
    return from_bits(bits(value) ^ ((quarters & 2) << 62));
}

}  // namespace detail

/// Sine of an angle in radians, up to greatest_angle.
[[gnu::always_inline]] inline double sin(double x) { return detail::select(x == 0, x, detail::sine_after(x, 0)); }

/// Cosine of an angle in radians, up to greatest_angle.
[[gnu::always_inline]] inline double cos(double x) { return detail::sine_after(x, 1); }

/// Tangent of an angle in radians, up to greatest_angle.
[[gnu::always_inline]] inline double tan(double x)
{
    using namespace detail;
    const Angle angle = reduced_angle(x);
    const Precise s = sine_of(angle.high, angle.low);
    const Precise c = cosine_of(angle.high, angle.low);
    const Precise sine = precise_sum(s.value, s.rest);
    const Precise cosine = precise_sum(c.value, c.rest);
    const Precise above{of_parity(angle.quarters, sine.value, -cosine.value),
                        of_parity(angle.quarters, sine.rest, -cosine.rest)};
    const Precise below{of_parity(angle.quarters, cosine.value, sine.value),
                        of_parity(angle.quarters, cosine.rest, sine.rest)};
    const Precise tangent = precise_quotient(above, below);
    return select(x == 0, x, tangent.value + tangent.rest);
}

}  // namespace cutwater::elementary

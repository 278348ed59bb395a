// Logarithms. After e_log.c, e_log10.c, k_log.h and s_log1p.c of FDLIBM in FreeBSD's and OpenLibm's editions, without
// branches:
//
// ====================================================
// Copyright (C) 1993 by Sun Microsystems, Inc. All rights reserved.
//
// Developed at SunSoft, a Sun Microsystems, Inc. business.
// Permission to use, copy, modify, and distribute this
// software is freely granted, provided that this notice
// is preserved.
// ====================================================
#pragma once

#include "elementary/bits.hpp"

namespace cutwater::elementary {

namespace detail {

inline constexpr std::uint64_t bits_of_root_half = 0x3fe6a09e667f3bcd;
inline constexpr double ln2_upper = 0x1.62e42feep-1;  // 33 bits: its product with an exponent is exact
inline constexpr double ln2_lower = 0x1.a39ef35793c76p-33;

/// s (f^2/2 + R) of log(1 + f) = f - f^2/2 + s (f^2/2 + R), s = f/(2 + f), for 1 + f from sqrt(1/2) to sqrt(2).
[[gnu::always_inline]] constexpr double log_tail(double f, double half_square)
{
    const double s = f / (2.0 + f);
    const double z = s * s;
    const double w = z * z;
    const double even = w * (3.999999999940941908e-01 + w * (2.222219843214978396e-01 + w * 1.531383769920937332e-01));
    const double odd = z *
                       (6.666666666666735130e-01 +
                        w * (2.857142874366239149e-01 + w * (1.818357216161805012e-01 + w * 1.479819860511658591e-01)));
    return s * (half_square + (even + odd));
}

}  // namespace detail

/// Natural logarithm.
[[gnu::always_inline]] inline double log(double x)
{
    using namespace detail;
    const auto [k, m] = parts(x, bits_of_root_half);
    const double f = m - 1.0;
    const double half_square = 0.5 * f * f;
    return with_poles(x, k * ln2_upper - ((half_square - (log_tail(f, half_square) + k * ln2_lower)) - f));
}

/// Logarithm to base 10.
[[gnu::always_inline]] inline double log10(double x)
{
    using namespace detail;
    const auto [k, m] = parts(x, bits_of_root_half);
    const double f = m - 1.0;
    const double half_square = 0.5 * f * f;
    const double high = upper(f - half_square);
    const double low = (f - high) - half_square + log_tail(f, half_square);
    constexpr double over_ln10_upper = 4.34294481878168880939e-01;
    constexpr double over_ln10_lower = 2.50829467116452752298e-11;
    constexpr double log10_2_upper = 3.01029995663611771306e-01;
    constexpr double log10_2_lower = 3.69423907715893078616e-13;
    const double of_fraction = high * over_ln10_upper;
    const double of_exponent = k * log10_2_upper;
    const double sum = of_exponent + of_fraction;
    const double rest = k * log10_2_lower + (low + high) * over_ln10_lower + low * over_ln10_upper;
    return with_poles(x, (rest + ((of_exponent - sum) + of_fraction)) + sum);
}

/// log(1 + x), exact where x is small beside 1.
[[gnu::always_inline]] inline double log1p(double x)
{
    using namespace detail;
    const double u = 1.0 + x;
    const double lost = select(magnitude(x) < 1, x - (u - 1.0), 1.0 - (u - x));
    const auto [k, m] = parts(u, bits_of_root_half);
    const double f = m - 1.0;
    const double half_square = 0.5 * f * f;
    const double value = k * ln2_upper - ((half_square - (log_tail(f, half_square) + (k * ln2_lower + lost / u))) - f);
    return with_sign_of(with_poles(u, value), x);
}

}  // namespace cutwater::elementary

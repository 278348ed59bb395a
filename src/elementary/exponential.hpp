// Exponentials. After e_exp.c and s_expm1.c of FDLIBM in FreeBSD's and OpenLibm's editions, without branches:
//
// ====================================================
// Copyright (C) 1993, 2004 by Sun Microsystems, Inc. All rights reserved.
//
// Permission to use, copy, modify, and distribute this
// software is freely granted, provided that this notice
// is preserved.
// ====================================================
#pragma once

#include "elementary/logarithm.hpp"

namespace cutwater::elementary {

namespace detail {

inline constexpr double over_ln2 = 0x1.71547652b82fep0;

[[gnu::always_inline]] constexpr double clamped(double x, double low, double high)
{
    return select(x < low, low, select(x > high, high, x));
}  // NaN stays

/// r - r^2 (1/6 - r^2/360 + …) of exp(r) = 1 + 2 r/(that function of r^2 - r), for |r| up to ln(2)/2.
[[gnu::always_inline]] constexpr double exp_remainder(double r)
{
    const double t = r * r;
    const double t2 = t * t;
    const double first = 1.66666666666666019037e-01 + t * -2.77777777770155933842e-03;
    const double rest = (6.61375632143793436117e-05 + t * -1.65339022054652515390e-06) +
                        t2 * 4.13813679705723846039e-08;
    return r - t * (first + t2 * rest);
}

/// exp(high - low) for a sum up to ln(2)/2.
[[gnu::always_inline]] constexpr double exp_of_sum(double high, double low)
{
    const double r = high - low;
    const double c = exp_remainder(r);
    const double sum = 1.0 + high;
    return sum + ((high - (sum - 1.0)) + ((r * c) / (2.0 - c) - low));
}

/// exp(x) 2^shift, for a small shift.
[[gnu::always_inline]] inline double exp_shifted(double x, std::uint64_t shift)
{
    const double within = clamped(x, -746, 711);
    const Whole k = nearest_whole(within * over_ln2);
    return scaled(exp_of_sum(within - k.value * ln2_upper, k.value * ln2_lower), k.bits + shift);
}

}  // namespace detail

/// e to the power x.
[[gnu::always_inline]] inline double exp(double x) { return detail::exp_shifted(x, 0); }

/// 10 to the power x; whole powers up to 22 are exact.
[[gnu::always_inline]] inline double exp10(double x)
{
    using namespace detail;
    constexpr double log2_10 = 0x1.a934f0979a371p1;
    constexpr double log10_2_upper = 3.01029995663611771306e-01;
    constexpr double log10_2_lower_ln10 = 0x1.dedcb33129b26p-41;
    constexpr double ln10 = 2.302585092994045684;
    constexpr double ln10_upper = 0x1.26bb1bp1;
    constexpr double ln10_lower = 0x1.76aaa2b05ba96p-24;
    const double within = clamped(x, -325, 309);
    const Whole k = nearest_whole(within * log2_10);
    const double d = within - k.value * log10_2_upper;
    const double d_upper = upper(d);
    const double low = k.value * log10_2_lower_ln10 - ((d - d_upper) * ln10 + d_upper * ln10_lower);
    return scaled(exp_of_sum(d_upper * ln10_upper, low), k.bits);
}

namespace detail {

/// exp(x) - 1 as a sum, over 2 where x lies beyond 710.
struct Expm1 {
    double first;
    double rest;
    double factor;
};

[[gnu::always_inline]] inline Expm1 expm1_sum(double x)
{
    const double within = clamped(x, -50, 709.9);
    const Whole k = nearest_whole(within * over_ln2);
    const double high = within - k.value * ln2_upper;
    const double low = k.value * ln2_lower;
    const double r = high - low;
    const double c = (high - r) - low;
    const double half = 0.5 * r;
    const double half_square = r * half;
    const double square2 = half_square * half_square;
    const double first = -3.33333333333331316428e-02 + half_square * 1.58730158725481460165e-03;
    const double rest = (-7.93650757867487942473e-05 + half_square * 4.00821782732936239552e-06) +
                        square2 * -2.01099218183624371326e-07;
    const double series = 1.0 + half_square * (first + square2 * rest);
    const double t = 3.0 - series * half;
    const double e = r * (half_square * ((series - t) / (6.0 - r * t)) - c) - c - half_square;  // expm1(r + c) = r - e
    // 2^k (r - e) + (2^k - 1), the larger terms added without loss; 2^1024 is out of reach.
    const double power = from_bits((k.bits - static_cast<std::uint64_t>(k.value > 1023) + 1023) << 52);
    const Precise whole = precise_sum_of_any(power, -1.0);
    const Precise sum = precise_sum_of_any(whole.value, power * r);
    return {sum.value, sum.rest + (whole.rest - power * e), select(k.value > 1023, 2.0, 1.0)};
}

}  // namespace detail

/// exp(x) - 1, exact where x is small beside 1.
[[gnu::always_inline]] inline double expm1(double x)
{
    const detail::Expm1 e = detail::expm1_sum(x);
    return detail::with_sign_of((e.first + e.rest) * e.factor, x);
}

}  // namespace cutwater::elementary

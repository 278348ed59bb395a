// Powers. After e_pow.c of FDLIBM in FreeBSD's and OpenLibm's editions, without branches, with natural logarithms and
// with a polynomial for the exponential's quotient:
//
// ====================================================
// Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
//
// Permission to use, copy, modify, and distribute this
// software is freely granted, provided that this notice
// is preserved.
// ====================================================
//
// A row's powers are as fast as their longest chain of operations is short: what can be begun with an estimate is, and
// what the estimate leaves is carried in the lower part.
#pragma once

#include "elementary/exponential.hpp"

namespace cutwater::elementary {

namespace detail {

/// A number as the sum of two, the first with 21 bits.
struct Sum {
    double upper;
    double lower;
};

/// 3/2 ln(x) to about 64 bits, for a normal x > 0; beyond +-1062 for any other x.
[[gnu::always_inline]] inline Sum log_sum(double x)
{
    // x = 2^k (2 half), and half x = (1 + s)/(1 - s) 1/2 from sqrt(1/2) to sqrt(2), halved.
    const std::uint64_t moved = bits(x) + (bits_of_one - bits_of_root_half);
    const double k = as_double(moved >> 52, 1023);
    constexpr std::uint64_t one_power = std::uint64_t{1} << 52;
    const double half = from_bits((moved & fraction_bits) + (bits_of_root_half - one_power));
    const double of_power = k * (1.5 * ln2_upper);
    const double of_power_rest = k * (1.5 * ln2_lower);
    const double u = half - 0.5;
    const double v = half + 0.5;
    const double v_upper = upper(v);
    const double v_lower = half - (v_upper - 0.5);
    const double s = u / v;
    const double s_upper = upper(s);
    const double s_lower = (1.0 - s) * ((u - s_upper * v_upper) - s_upper * v_lower);
    // 3/2 ln(x) = k 3/2 ln(2) + s t, t = 3 + s^2 + s^4 (3/5 + …); the series is the best of its degree.
    const double s2 = s * s;
    const double s4 = s2 * s2;
    const double first = s4 * (6.000000000000338e-01 + s2 * 4.2857142855148117e-01);
    const double middle = 3.3333333780121144e-01 + s2 * 2.727267652885527e-01;
    const double last = 2.3080137047810134e-01 + s2 * 1.9885201184083645e-01;
    const double s8 = s4 * s4;
    const double tail = first + s8 * ((middle + s4 * last) + s8 * 1.9794737402682047e-01);
    const double t = 3.0 + (s2 + first);
    const double t_upper = upper(t);
    const double t_lower = tail - ((t_upper - 3.0) - s_upper * s_upper);  // what of t the sum with s_upper needs
    const double log_upper = upper(of_power + s * t);
    const double rest = of_power_rest - ((log_upper - of_power) - s_upper * t_upper);
    return {log_upper, rest + (s * t_lower + s_lower * (t_upper + s * (s_upper + s)))};
}

/// r^2/2 + r^3/6 + … of exp(r) = 1 + r + that, for |r| up to ln(2)/2; the series is the best of its degree.
[[gnu::always_inline]] constexpr double exp_tail(double r)
{
    const double r2 = r * r;
    const double r4 = r2 * r2;
    const double first = (5.000000000000012e-01 + r * 1.66666666666667e-01) +
                         r2 * (4.166666666651545e-02 + r * 8.333333333307092e-03);
    const double second = (1.3888888947008893e-03 + r * 1.9841269917605066e-04) +
                          r2 * (2.4801489948710897e-05 + r * 2.755721612357781e-06);
    const double third = 2.7631278253447583e-07 + r * 2.5117910889662052e-08;
    return r2 * (first + r4 * (second + r4 * third));
}

}  // namespace detail

/// x to the power y for a finite y and an x that is 0 or from 2^-1022 on; of any other x, no number. Where y ln(x) lies
/// beyond +-708, 0 or infinity.
[[gnu::always_inline]] inline double positive_pow(double x, double y)
{
    using namespace detail;
    const Sum log = log_sum(x);
    constexpr double two_thirds = 2.0 / 3.0;
    const double part = y * two_thirds;
    const double part_upper = upper(part);
    const double part_lower = (y - part_upper * 1.5) * two_thirds;
    const double high = part_upper * log.upper;
    const double shifted = (part_upper * over_ln2) * log.upper + 0x1.8p52;
    const double n = shifted - 0x1.8p52;
    const double rest = high - n * ln2_upper;  // exact
    const double low = (part_lower * log.upper - n * ln2_lower) + part * log.lower;
    const double fraction = 1.0 + (rest + (low + exp_tail(rest + low)));
    const double value = from_bits(bits(fraction) + (bits(shifted) << 52));
    const double pole = select(high < 0, 0.0, select(high == 0, 1.0, infinity));
    const std::uint64_t normal = mask(x >= 0x1p-1022);
    return select(normal & mask(x < infinity) & mask(magnitude(high) < 708), value,
                  select(normal | mask(x == 0), pole, not_a_number));
}

}  // namespace cutwater::elementary

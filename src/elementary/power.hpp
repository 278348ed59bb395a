// Powers. After e_pow.c of FDLIBM in FreeBSD's and OpenLibm's editions, without branches:
//
// ====================================================
// Copyright (C) 2004 by Sun Microsystems, Inc. All rights reserved.
//
// Permission to use, copy, modify, and distribute this
// software is freely granted, provided that this notice
// is preserved.
// ====================================================
#pragma once

#include "elementary/exponential.hpp"

namespace cutwater::elementary {

namespace detail {

/// A number as the sum of two, the first with 21 bits.
struct Sum {
    double upper;
    double lower;
};

/// log2(x) to about 70 bits, for x > 0.
[[gnu::always_inline]] inline Sum log2_sum(double x)
{
    constexpr std::uint64_t bits_of_half_root_3 = 0x3febb67ae8584caa;
    const auto [k, m] = parts(x, bits_of_half_root_3);
    // log2 of m from that of 1 or 1.5, whichever is near: m/c = (1 + s)/(1 - s).
    const bool near_one = m < 1.22474487139158904910;
    const double c = select(near_one, 1.0, 1.5);
    const double log2_c_upper = select(near_one, 0.0, 5.84962487220764160156e-01);
    const double log2_c_lower = select(near_one, 0.0, 1.35003920212974897128e-08);
    const double u = m - c;
    const double v = 1.0 / (m + c);
    const double s = u * v;
    const double s_upper = upper(s);
    const double sum_upper = upper(m + c);
    const double sum_lower = m - (sum_upper - c);
    const double s_lower = v * ((u - s_upper * sum_upper) - s_upper * sum_lower);
    const double s2 = s * s;
    const double s4 = s2 * s2;
    const double first = 5.99999999999994648725e-01 + s2 * 4.28571428578550184252e-01;
    const double second = 3.33333329818377432918e-01 + s2 * 2.72728123808534006489e-01;
    const double third = 2.30660745775561754067e-01 + s2 * 2.06975017800338417784e-01;
    const double r = s4 * ((first + s4 * second) + (s4 * s4) * third) + s_lower * (s_upper + s);
    const double s_upper2 = s_upper * s_upper;
    const double t_upper = upper(3.0 + s_upper2 + r);
    const double t_lower = r - ((t_upper - 3.0) - s_upper2);
    const double p_first = s_upper * t_upper;
    const double p_rest = s_lower * t_upper + t_lower * s;
    const double p_upper = upper(p_first + p_rest);
    const double p_lower = p_rest - (p_upper - p_first);
    constexpr double factor = 9.61796693925975554329e-01;  // 2/(3 ln 2), and that in two parts
    constexpr double factor_upper = 9.61796700954437255859e-01;
    constexpr double factor_lower = -7.02846165095275826516e-09;
    const double z_upper = factor_upper * p_upper;
    const double z_lower = factor_lower * p_upper + p_lower * factor + log2_c_lower;
    const double log_upper = upper(((z_upper + z_lower) + log2_c_upper) + k);
    return {log_upper, z_lower - (((log_upper - k) - log2_c_upper) - z_upper)};
}

/// 2 to the power of a sum, low below 1 unless high is out of reach, which goes to infinity or zero; no number stays
/// none.
[[gnu::always_inline]] inline double exp2_of_sum(double high, double low)
{
    const double whole_high = clamped(high, -1100, 1030);
    const double whole_low = clamped(low, -1, 1);
    const Whole n = nearest_whole(whole_low + whole_high);
    const double rest = whole_high - n.value;
    const double t = upper(whole_low + rest);
    constexpr double ln2 = 6.93147180559945286227e-01;
    constexpr double ln2_first = 6.93147182464599609375e-01;
    constexpr double ln2_rest = -1.90465429995776804525e-09;
    const double u = t * ln2_first;
    const double v = (whole_low - (t - rest)) * ln2 + t * ln2_rest;
    const double z = u + v;
    const double w = v - (z - u);
    const double c = exp_remainder(z);
    const double r = (z * c) / (2.0 - c) + (w + z * w);
    const double one_and = 1.0 + z;
    return scaled(one_and + ((z - (one_and - 1.0)) + r), n.bits);
}

[[gnu::always_inline]] constexpr std::uint64_t is_whole(double magnitude)
{
    return mask((magnitude + 0x1p52) - 0x1p52 == magnitude) | mask(magnitude >= 0x1p52);
}

}  // namespace detail

/// x to the power y for x from 0 on and a finite y, with the bits of pow: what formulas need, at three quarters of its
/// cost. Of a negative x it is no number, whatever y.
[[gnu::always_inline]] inline double positive_pow(double x, double y)
{
    using namespace detail;
    const Sum log2 = log2_sum(x);
    const double y_upper = upper(y);
    const double value = exp2_of_sum(y_upper * log2.upper, (y - y_upper) * log2.upper + y * log2.lower);
    const double pole = select(y == 0, 1, from_bits((mask(x == 0) ^ mask(y > 0)) & bits(infinity)));
    return select(mask(x > 0) & mask(x < infinity), value,
                  select(mask(x == 0) | mask(x == infinity), pole, not_a_number));
}

/// x to the power y.
[[gnu::always_inline]] inline double pow(double x, double y)
{
    using namespace detail;
    const double base = magnitude(x);
    const double exponent = clamped(y, -0x1p64, 0x1p64);  // beyond, every power of anything but 1 is 0 or infinite
    const Sum log2 = log2_sum(base);
    const double y_upper = upper(exponent);
    double value = exp2_of_sum(y_upper * log2.upper, (exponent - y_upper) * log2.upper + exponent * log2.lower);
    const double pole = from_bits((mask(base == 0) ^ mask(y > 0)) & bits(infinity));
    value = select(mask(base == 0) | mask(base == infinity), pole, value);
    const std::uint64_t whole = is_whole(magnitude(y));
    const std::uint64_t odd = whole & ~is_whole(0.5 * magnitude(y));
    value = from_bits(bits(value) | (odd & bits(x) & sign_bit));
    value = select(mask(x < 0) & mask(base < infinity) & ~whole, not_a_number, value);
    value = select(mask(x != x) | mask(y != y), x + y, value);
    return select(mask(y == 0) | mask(x == 1), 1, value);
}

}  // namespace cutwater::elementary

// Cube root and hypotenuse. The cube root after s_cbrt.c of FDLIBM in FreeBSD's and OpenLibm's editions, without
// branches:
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

#include <cmath>

namespace cutwater::elementary {

/// Cube root, of negative numbers too.
[[gnu::always_inline]] inline double cbrt(double x)
{
    using namespace detail;
    const double a = magnitude(x);
    const bool subnormal = a < 0x1p-1022;
    const double b = select(subnormal, a * 0x1p54, a);
    // The bits of the upper half divided by 3 are a cube root to 5 bits.
    const double third = as_double(bits(b) >> 32, 0) * (1.0 / 3) + 715094163.0;
    const double rough = from_bits(nearest_whole(third).bits << 32);
    const double r = (rough * rough) * (rough / b);
    const double better = rough *
                          ((1.87595182427177009643 + r * (-1.88497979543377169875 + r * 1.621429720105354466140)) +
                           ((r * r) * r) * (-0.758397934778766047437 + r * 0.145996192886612446982));
    const double t = from_bits((bits(better) + 0x80000000) & 0xffffffffc0000000);  // 23 bits: its square is exact
    const double quotient = b / (t * t);
    const double root = t + t * ((quotient - t) / (t + t + quotient));
    const double value = select(subnormal, root * 0x1p-18, root);
    return with_sign_of(select(mask(a > 0) & mask(a < infinity), value, a), x);
}

/// sqrt(x^2 + y^2), without overflow on the way.
[[gnu::always_inline]] inline double hypot(double x, double y)
{
    using namespace detail;
    const double a = magnitude(x);
    const double b = magnitude(y);
    const double large = select(a > b, a, b);
    const double scale = select(large > 0x1p500, 0x1p-600, select(large < 0x1p-500, 0x1p600, 1));
    const double p = a * scale;
    const double q = b * scale;
    const double root = std::sqrt(p * p + q * q);
    // What the root lacks: the squares' sum less its square, the upper halves first.
    const double p_upper = upper(p), q_upper = upper(q), root_upper = upper(root);
    const double greater = select(a > b, p_upper, q_upper), smaller = select(a > b, q_upper, p_upper);
    const double uppers = (greater * greater - root_upper * root_upper) + smaller * smaller;
    const double lowers = ((p - p_upper) * (p + p_upper) + (q - q_upper) * (q + q_upper)) -
                          (root - root_upper) * (root + root_upper);
    const double value = (root + select(root > 0, (uppers + lowers) / (2 * root), 0)) * (1 / scale);
    return select(mask(a == infinity) | mask(b == infinity), infinity, value);
}

}  // namespace cutwater::elementary

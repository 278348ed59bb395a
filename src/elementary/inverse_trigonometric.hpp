// Angles from sines, cosines and tangents. After s_atan.c, e_asin.c and e_acos.c of FDLIBM in FreeBSD's and OpenLibm's
// editions, without branches:
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

namespace detail {

inline constexpr double half_pi = 1.57079632679489655800e+00;
inline constexpr double half_pi_rest = 6.12323399573676603587e-17;

/// Angle whose tangent is above/below, both from zero on: that of 0, 1/2, 1, 3/2 or infinity, whichever is near, and a
/// rest.
template <bool ToTheLast>
[[gnu::always_inline]] inline double angle_of(double above, double below)
{
    const bool from_0 = above < 0.4375 * below;
    const bool from_half = above < 0.6875 * below;
    const bool from_1 = above < 1.1875 * below;
    const bool from_3_halves = above < 2.4375 * below;
    const auto nearest = [=](double half, double one, double three_halves, double beyond) {
        return select(from_0, 0,
                      select(from_half, half, select(from_1, one, select(from_3_halves, three_halves, beyond))));
    };
    const double c = nearest(0.5, 1, 1.5, 1.5);
    const double high = nearest(4.63647609000806093515e-01, 7.85398163397448278999e-01, 9.82793723247329054082e-01,
                                half_pi);
    const double low = nearest(2.26987774529616870924e-17, 3.06161699786838301793e-17, 1.39033110312309984516e-17,
                               half_pi_rest);
    const double num = select(from_3_halves, above - c * below, -below);
    const double den = select(from_3_halves, below + c * above, above);
    const double t = num / den;
    const double z = t * t;
    const double w = z * z;
    const double w2 = w * w;
    const double even = z * ((3.33333333333329318027e-01 + w * 1.42857142725034663711e-01) +
                             w2 * ((9.09088713343650656196e-02 + w * 6.66107313738753120669e-02) +
                                   w2 * (4.97687799461593236017e-02 + w * 1.62858201153657823623e-02)));
    const double odd = w * ((-1.99999999998764832476e-01 + w * -1.11111104054623557880e-01) +
                            w2 * ((-7.69187620504482999495e-02 + w * -5.83357013379057348645e-02) +
                                  w2 * -3.65315727442169155270e-02));
    double rest = t * (even + odd) - low;
    if constexpr (ToTheLast) rest -= select(magnitude(num) > 0x1p-900, (1 - z) * (remainder_of(num, den, t) / den), 0);
    return high - (rest - t);
}

/// (asin(r) - r)/r from r^2, for r up to 1/2.
[[gnu::always_inline]] constexpr double arcsine_rest(double z)
{
    const double above = z * (1.66666666666666657415e-01 +
                              z * (-3.25565818622400915405e-01 +
                                   z * (2.01212532134862925881e-01 +
                                        z * (-4.00555345006794114027e-02 +
                                             z * (7.91534994289814532176e-04 + z * 3.47933107596021167570e-05)))));
    const double below = 1.0 + z * (-2.40339491173441421878e+00 +
                                    z * (2.02094576023350569471e+00 +
                                         z * (-6.88283971605453293030e-01 + z * 7.70381505559019352791e-02)));
    return above / below;
}

/// sqrt(z) as a sum, for z from 0 on.
[[gnu::always_inline]] inline void root_as_sum(double z, double& root, double& high, double& low)
{
    root = std::sqrt(z);
    high = upper(root);
    low = (z - high * high) / select(z == 0, 1, root + high);
}

}  // namespace detail

/// Angle in radians from -pi/2 to pi/2 whose tangent is x.
[[gnu::always_inline]] inline double atan(double x)
{
    return detail::with_sign_of(detail::angle_of<false>(detail::magnitude(x), 1), x);
}

/// Angle in radians from -pi to pi of the point (x, y), as <cmath> has it for zeros and infinities.
[[gnu::always_inline]] inline double atan2(double y, double x)
{
    using namespace detail;
    const double a = magnitude(y);
    const double b = magnitude(x);
    const double largest = select(a > b, a, b);
    const double scale = select(largest > 0x1p1000, 0x1p-100, select(largest < 0x1p-900, 0x1p100, 1));
    const std::uint64_t infinite = mask(a == infinity) | mask(b == infinity);
    const double above = select(infinite, select(a == infinity, 1, 0), a * scale);
    const double below = select(infinite, select(b == infinity, 1, 0), select(largest == 0, 1, b * scale));
    const double z = angle_of<true>(above, below);
    const double turned = with_sign_of(select((bits(x) & sign_bit) != 0, 2 * half_pi - (z - 2 * half_pi_rest), z), y);
    return select(mask(x != x) | mask(y != y), not_a_number, turned);
}

/// Angle in radians from -pi/2 to pi/2 whose sine is x.
[[gnu::always_inline]] inline double asin(double x)
{
    using namespace detail;
    const double a = magnitude(x);
    const double z = select(a < 0.5, a * a, (1.0 - a) * 0.5);
    const double rest = arcsine_rest(z);
    double root, high, low;
    root_as_sum(z, root, high, low);
    constexpr double quarter_pi = 7.85398163397448278999e-01;
    const double p = 2.0 * root * rest - (half_pi_rest - 2.0 * low);
    const double of_large = quarter_pi - (p - (quarter_pi - 2.0 * high));
    return with_sign_of(select(a < 0.5, a + a * rest, of_large), x);
}

/// Angle in radians from 0 to pi whose cosine is x.
[[gnu::always_inline]] inline double acos(double x)
{
    using namespace detail;
    const double a = magnitude(x);
    const double z = select(a < 0.5, a * a, (1.0 - a) * 0.5);
    const double rest = arcsine_rest(z);
    double root, high, low;
    root_as_sum(z, root, high, low);
    const double of_large = select(x < 0, 2 * half_pi - 2.0 * (root + (rest * root - half_pi_rest)),
                                   2.0 * (high + (rest * root + low)));
    return select(a < 0.5, half_pi - (x - (half_pi_rest - x * rest)), of_large);
}

}  // namespace cutwater::elementary

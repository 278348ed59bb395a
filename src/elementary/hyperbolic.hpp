// Hyperbolic functions. After e_sinh.c, e_cosh.c and s_tanh.c of FDLIBM in FreeBSD's and OpenLibm's editions, without
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

#include "elementary/exponential.hpp"

namespace cutwater::elementary {

namespace detail {

[[gnu::always_inline]] inline Precise precise_expm1(double x)
{
    const Expm1 e = expm1_sum(x);
    return precise_sum(e.first, e.rest);
}
[[gnu::always_inline]] constexpr Precise added(double large, Precise x)
{
    const Precise sum = precise_sum(large, x.value);
    return {sum.value, sum.rest + x.rest};
}

}  // namespace detail

/// Hyperbolic sine, (e + e/(e + 1))/2 with e = exp|x| - 1.
[[gnu::always_inline]] inline double sinh(double x)
{
    using namespace detail;
    const double a = magnitude(x);
    const Precise e = precise_expm1(select(a < 22, a, 0));
    const Precise other = precise_quotient(e, added(1, e));
    const Precise sum = precise_sum(e.value, other.value);
    const double moderate = 0.5 * (sum.value + (sum.rest + (e.rest + other.rest)));
    const double value = select(a < 22, moderate, exp_shifted(a, 0 - std::uint64_t{1}));
    return with_sign_of(select(a < 0x1p-28, a, value), x);
}

/// Hyperbolic cosine.
[[gnu::always_inline]] inline double cosh(double x)
{
    using namespace detail;
    const double half_exp = exp_shifted(magnitude(x), 0 - std::uint64_t{1});
    return half_exp + 0.25 / half_exp;
}

/// Hyperbolic tangent, -e/(e + 2) with e = exp(-2|x|) - 1.
[[gnu::always_inline]] inline double tanh(double x)
{
    using namespace detail;
    const double a = magnitude(x);
    const Precise e = precise_expm1(-2 * a);
    const Precise value = precise_quotient(e, added(2, e));
    return with_sign_of(select(a < 0x1p-28, a, value.value + value.rest), x);
}

}  // namespace cutwater::elementary

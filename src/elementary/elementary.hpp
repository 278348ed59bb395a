// The elementary functions that formulas call: one definition for every platform, so that a result has the same bits in
// a cell on Windows, in a browser and in a script on Linux, in one call and in a row of an array.
//
// Greatest errors in units in the last place, 3 million random arguments a function and range, against the 64-bit
// significands of the C library's long double functions; tests/elementary holds them against Boost.Multiprecision:
//   log 0.84, log10 0.77, log1p 0.86, exp 0.79, exp10 0.76, expm1 0.85
//   positive_pow 0.94 where |y ln(x)| < 100, 1.5 to 708
//   sin 0.81, cos 0.79, tan 0.98, asin 0.86, acos 0.89, atan 0.83, atan2 1.26 (1.5 where the result is subnormal)
//   sinh 0.72, cosh 1.15, tanh 0.69, cbrt 0.67, hypot 0.63
// Zeros keep their sign, infinities and no number go where <cmath> sends them, subnormal numbers are taken and given;
// sin, cos and tan stop at greatest_angle, positive_pow has ends of its own. Square roots are the machine's: IEEE 754
// leaves them no choice of bits.
#pragma once

#include "elementary/exponential.hpp"
#include "elementary/hyperbolic.hpp"
#include "elementary/inverse_trigonometric.hpp"
#include "elementary/logarithm.hpp"
#include "elementary/power.hpp"
#include "elementary/roots.hpp"
#include "elementary/trigonometric.hpp"

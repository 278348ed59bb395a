// The same functions with 60 decimal digits, by Boost.Multiprecision, and how far a double lies from what they give.
#pragma once

#include <boost/multiprecision/cpp_bin_float.hpp>

#include <cmath>
#include <limits>

namespace wide {

using Wide = boost::multiprecision::number<boost::multiprecision::cpp_bin_float<60>, boost::multiprecision::et_off>;

/// Whatever a double's smallest difference may cancel is still there in 60 digits plus these.
using Wider = boost::multiprecision::number<boost::multiprecision::cpp_bin_float<400>, boost::multiprecision::et_off>;

/// Distance from the exact value in units in the last place of a double there; the exact value must not be 0.
template <class W>
double error_in_ulps(double got, const W& exact)
{
    int exponent = 0;
    frexp(exact, &exponent);
    const int last_place = std::max(exponent - 53, -1074);
    return abs((W(got) - exact) * ldexp(W(1), -last_place)).template convert_to<double>();
}

}  // namespace wide

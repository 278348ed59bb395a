// One of two quantities, by value and without a branch: std::min and std::max hand out references, which keep a row of
// an array out of vectors where they are to more than a number.
#pragma once

#include <cutwater/unit.hpp>

#include "elementary/bits.hpp"

namespace cutwater {

template <class Q>
constexpr Q either(bool first, Q a, Q b)
{
    return Si<Q>::make(elementary::select(first, Si<Q>::value(a), Si<Q>::value(b)));
}
template <class Q>
constexpr Q lesser(Q a, Q b)
{
    return either(b < a, b, a);
}
template <class Q>
constexpr Q greater(Q a, Q b)
{
    return either(a < b, b, a);
}

}  // namespace cutwater

// A quantity kept as the number in which it was given, in its record's unit: for a formula that only scales it, so that
// a ratio of 1 gives back the very number, which two conversions would round. The record gives such an input and such a
// result the same unit.
#pragma once

#include "catalogue/describe.hpp"
#include "catalogue/record.hpp"

namespace cutwater {

template <class Q>
struct AsGiven {
    double number;

    friend constexpr AsGiven operator*(AsGiven a, Ratio b) { return {a.number * b.value()}; }
};

template <class Q>
struct Input<AsGiven<Q>> : Input<Q> {
    constexpr Input(const Input<Q>& in) : Input<Q>(in) {}
};
template <class Q>
struct Output<AsGiven<Q>> : Output<Q> {
    constexpr Output(const Output<Q>& out) : Output<Q>(out) {}
};

template <class Q>
constexpr Input<AsGiven<Q>> as_given(const Input<Q>& in)
{
    return in;
}
template <class Q>
constexpr Output<AsGiven<Q>> as_given(const Output<Q>& out)
{
    return out;
}

// What the binding asks of an input and a result; found beside their types.
template <class Q>
constexpr InputInfo describe_input(const Input<AsGiven<Q>>& in, const char* full)
{
    return binding::describe_input(static_cast<const Input<Q>&>(in), full);
}
template <class Q>
constexpr ResultInfo describe_result(const Output<AsGiven<Q>>& out, const char* full)
{
    return binding::describe_result(static_cast<const Output<Q>&>(out), full);
}
template <class Q>
constexpr AsGiven<Q> typed(const Input<AsGiven<Q>>&, double x)
{
    return {x};
}
template <class Q>
constexpr double number(const Output<AsGiven<Q>>&, const AsGiven<Q>& value)
{
    return value.number;
}

}  // namespace cutwater

// A quantity kept as the number in which it was given, in a unit that is part of its type: for a formula that scales
// it, or takes its ratio to another in the same unit. A ratio of 1 gives back the very number, which two conversions
// would round, and neither costs a row of an array its time.
#pragma once

#include "catalogue/describe.hpp"
#include "catalogue/record.hpp"

#include <cstdint>
#include <numeric>

namespace cutwater {

template <const auto& U>
struct AsGiven {
    using Quantity = typename std::remove_cvref_t<decltype(U)>::Quantity;
    double number = 0;

    constexpr explicit AsGiven(double x) : number(x) {}
    // Number by number: a loop over rows that copies a structure does not become vectors.
    constexpr AsGiven(const AsGiven& other) : number(other.number) {}
    constexpr AsGiven& operator=(const AsGiven& other)
    {
        number = other.number;
        return *this;
    }

    friend constexpr AsGiven operator*(AsGiven a, Ratio b) { return AsGiven(a.number * b.value()); }
    friend constexpr Ratio operator/(AsGiven a, AsGiven b) { return Ratio(a.number / b.number); }
    friend constexpr bool operator<(AsGiven a, AsGiven b) { return a.number < b.number; }
    friend constexpr bool operator<=(AsGiven a, AsGiven b) { return a.number <= b.number; }
    friend constexpr bool operator>(AsGiven a, AsGiven b) { return a.number > b.number; }
    friend constexpr bool operator>=(AsGiven a, AsGiven b) { return a.number >= b.number; }
};

/// a - b, where two of the quantity differ by one of it.
template <const auto& U>
    requires std::same_as<decltype(U(1) - U(1)), decltype(U(1))>
constexpr AsGiven<U> operator-(AsGiven<U> a, AsGiven<U> b)
{
    return AsGiven<U>(a.number - b.number);
}

namespace as_given_detail {

template <class Q>
constexpr auto plain(Q q)
{
    if constexpr (requires { q.plain(); })
        return q.plain();
    else
        return q;
}

struct Factor {
    double numerator, denominator;
};

/// How many of U one of A over one of B is, in lowest terms. A product that a double does not hold does not compile.
consteval Factor factor(const UnitInfo& a, const UnitInfo& b, const UnitInfo& u)
{
    const auto exact = [](double x, double y, double z) {
        if (x * y * z > 0x1p53) throw "the units' factor is no fraction of whole numbers that a double holds";
        return static_cast<std::uint64_t>(x) * static_cast<std::uint64_t>(y) * static_cast<std::uint64_t>(z);
    };
    const std::uint64_t over = exact(a.numerator, b.denominator, u.denominator);
    const std::uint64_t under = exact(a.denominator, b.numerator, u.numerator);
    const std::uint64_t common = std::gcd(over, under);
    return {static_cast<double>(over / common), static_cast<double>(under / common)};
}

}  // namespace as_given_detail

/// a/b as a number of U, whose quantity is that of a over that of b.
template <const auto& U, const auto& A, const auto& B>
constexpr AsGiven<U> quotient(AsGiven<A> a, AsGiven<B> b)
{
    using namespace as_given_detail;
    static_assert(std::is_convertible_v<decltype(plain(A(1)) / plain(B(1))), decltype(plain(U(1)))>,
                  "the quotient is of another dimension");
    constexpr Factor f = factor(*A.info, *B.info, *U.info);
    return AsGiven<U>(a.number / b.number * f.numerator / f.denominator);
}

/// How many of V there are, told in U, which is as large: bar of gauge pressure in bar of absolute.
template <const auto& U, const auto& V>
constexpr double number_in(AsGiven<V> v)
{
    static_assert(U.info->numerator == V.info->numerator && U.info->denominator == V.info->denominator &&
                      U.info->offset == 0 && V.info->offset == 0,
                  "the units are of different size");
    return v.number;
}

template <const auto& U>
struct binding::QuantityOf<AsGiven<U>> {
    using type = typename AsGiven<U>::Quantity;
};

template <const auto& U>
struct Input<AsGiven<U>> : Input<typename AsGiven<U>::Quantity> {
    constexpr Input(const Input<typename AsGiven<U>::Quantity>& in) : Input<typename AsGiven<U>::Quantity>(in)
    {
        if (in.unit.info != U.info) throw "the record gives an input another unit than its formula takes";
    }
};
template <const auto& U>
struct Output<AsGiven<U>> : Output<typename AsGiven<U>::Quantity> {
    constexpr Output(const Output<typename AsGiven<U>::Quantity>& out) : Output<typename AsGiven<U>::Quantity>(out)
    {
        if (out.unit.info != U.info) throw "the record gives a result another unit than its formula returns";
    }
};

// What the binding asks of an input and a result; found beside their types.
template <const auto& U>
constexpr InputInfo describe_input(const Input<AsGiven<U>>& in, const char* full)
{
    return binding::describe_input(static_cast<const Input<typename AsGiven<U>::Quantity>&>(in), full);
}
template <const auto& U>
constexpr ResultInfo describe_result(const Output<AsGiven<U>>& out, const char* full)
{
    return binding::describe_result(static_cast<const Output<typename AsGiven<U>::Quantity>&>(out), full);
}
template <const auto& U>
constexpr AsGiven<U> typed(const Input<AsGiven<U>>&, double x)
{
    return AsGiven<U>(x);
}
template <const auto& U>
constexpr double number(const Output<AsGiven<U>>&, const AsGiven<U>& value)
{
    return value.number;
}

}  // namespace cutwater

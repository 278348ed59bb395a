// A unit bound to its quantity's type.
#pragma once

#include <cutwater/unit_info.hpp>
#include <cutwater/units.hpp>

#include <cstddef>
#include <string_view>

namespace cutwater {

/// Specialised for every quantity's type: `static constexpr UnitInfo units[]`, `name`, `type`, `hint`.
template <class Q>
struct UnitTable;

template <class Q>
constexpr const char* mistaken_for()
{
    if constexpr (requires { UnitTable<Q>::mistaken; })
        return UnitTable<Q>::mistaken;
    else
        return "";
}

template <class Q>
inline constexpr QuantityInfo quantity_info{UnitTable<Q>::name,  UnitTable<Q>::type,
                                            UnitTable<Q>::units, sizeof(UnitTable<Q>::units) / sizeof(UnitInfo),
                                            UnitTable<Q>::hint,  mistaken_for<Q>()};

/// A unit that knows the type of what it measures, so that a wrong one does not compile.
template <class Q>
struct Unit {
    using Quantity = Q;
    const UnitInfo* info;

    constexpr Q operator()(double x) const { return Si<Q>::make(info->to_si(x)); }
    constexpr double in(Q q) const { return info->from_si(Si<Q>::value(q)); }
    friend constexpr Q operator*(double x, Unit u) { return u(x); }
};

/// The unit with that symbol; one that is not in the table does not compile.
template <class Q>
consteval Unit<Q> unit(std::string_view symbol)
{
    for (const UnitInfo& candidate : UnitTable<Q>::units)
        if (symbol == candidate.symbol) return {&candidate};
    throw "no such unit in the quantity's table";
}

}  // namespace cutwater

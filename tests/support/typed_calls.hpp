// Every typed C++ function by its position; the body is generated. Throws cutwater::Refused.
#pragma once

#include <cutwater/refused.hpp>

#include <vector>

void typed_call(int function, const cutwater_value* in, cutwater_result* out);

namespace cutwater::test {

template <class Q>
std::vector<Q> series(const cutwater_value& value, Unit<Q> unit)
{
    std::vector<Q> made;
    for (std::size_t i = 0; i < value.length; ++i) made.push_back(unit(value.series[i]));
    return made;
}

template <class Q>
void store(cutwater_result& to, const std::vector<Q>& from, Unit<Q> unit)
{
    to.length = from.size();
    for (std::size_t i = 0; i < from.size() && i < to.capacity; ++i) to.series[i] = unit.in(from[i]);
}

}  // namespace cutwater::test

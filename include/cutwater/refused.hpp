// What the typed C++ door throws, and how it turns series of quantities into numbers and back.
#pragma once

#include <cutwater/base.h>
#include <cutwater/unit.hpp>

#include <stdexcept>
#include <vector>

namespace cutwater {

/// A refusal with everything that the C API told of it.
class Refused : public std::invalid_argument {
public:
    explicit Refused(const cutwater_refusal& refusal) : std::invalid_argument(refusal.message), refusal_(refusal) {}
    cutwater_status status() const noexcept { return static_cast<cutwater_status>(refusal_.status); }
    const cutwater_refusal& refusal() const noexcept { return refusal_; }

private:
    cutwater_refusal refusal_;
};

namespace detail {

inline void check(cutwater_status status, const cutwater_refusal& refusal)
{
    if (status != CUTWATER_OK) throw Refused(refusal);
}

template <class Q>
std::vector<double> numbers(Unit<Q> unit, const std::vector<Q>& series)
{
    std::vector<double> made;
    made.reserve(series.size());
    for (const Q& q : series) made.push_back(unit.in(q));
    return made;
}

template <class Q>
std::vector<Q> quantities(Unit<Q> unit, const std::vector<double>& numbers)
{
    std::vector<Q> made;
    made.reserve(numbers.size());
    for (const double x : numbers) made.push_back(unit(x));
    return made;
}

}  // namespace detail
}  // namespace cutwater

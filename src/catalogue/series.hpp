// A series of a quantity: numbers as the caller keeps them, read as quantities one at a time, never copied.
#pragma once

#include <cutwater/unit.hpp>

#include "catalogue/raw_series.hpp"

#include <cstddef>
#include <vector>

namespace cutwater {

template <class Q>
class Series {
public:
    using Quantity = Q;
    Series(RawSeries raw, const UnitInfo& unit) : raw_(raw), unit_(&unit) {}

    std::size_t size() const { return raw_.length; }
    Q operator[](std::size_t i) const { return Si<Q>::make(unit_->to_si(raw_[i])); }
    Q front() const { return (*this)[0]; }
    Q back() const { return (*this)[size() - 1]; }

private:
    RawSeries raw_;
    const UnitInfo* unit_;
};

/// A series as a result.
template <class Q>
using Points = std::vector<Q>;

}  // namespace cutwater

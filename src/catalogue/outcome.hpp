// What a formula that can fail inside returns: a value, or why there is none.
#pragma once

#include <cutwater/unit.hpp>

#include "catalogue/no_value.hpp"

#include <utility>

namespace cutwater {

template <class Q>
constexpr NoValue::Number number_in(Q quantity, Unit<Q> unit)
{
    return {unit.in(quantity), unit.info->symbol};
}

template <class T>
class Outcome {
public:
    using Value = T;
    Outcome(T value) : value_(std::move(value)), holds_(true) {}
    Outcome(NoValue why) : why_(why) {}

    explicit operator bool() const { return holds_; }
    const T& operator*() const { return value_; }
    const T* operator->() const { return &value_; }
    const NoValue& why() const { return why_; }

private:
    // Side by side and no variant: a row of an array is computed first and judged after, and nobody asks it why.
    T value_{};
    NoValue why_{};
    bool holds_ = false;
};

}  // namespace cutwater

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

/// What a formula returns in a row of an array that its quick way does not settle; see Steps::in_rows.
struct Unsettled {};
inline constexpr Unsettled unsettled{};

template <class T>
class Outcome {
public:
    using Value = T;
    Outcome(T value) : value_(std::move(value)), holds_(true) {}
    Outcome(NoValue why) : why_(why) {}
    Outcome(Unsettled) : unsettled_(true) {}
    /// For formulas in which a branch would keep rows out of vectors: the value, unless there is none or not yet.
    Outcome(T value, bool holds, NoValue why, bool is_unsettled = false)
        : value_(std::move(value)), why_(why), holds_(holds), unsettled_(is_unsettled)
    {
    }

    explicit operator bool() const { return holds_; }
    const T& operator*() const { return value_; }
    const T* operator->() const { return &value_; }
    const NoValue& why() const { return why_; }
    bool is_unsettled() const { return unsettled_; }

private:
    // Side by side and no variant: a row of an array is computed first and judged after, and nobody asks it why.
    T value_{};
    NoValue why_{};
    bool holds_ = false;
    bool unsettled_ = false;
};

}  // namespace cutwater

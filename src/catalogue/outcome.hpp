// What a formula that can fail inside returns: a value, or why there is none.
#pragma once

#include <cutwater/unit.hpp>

#include "catalogue/no_value.hpp"

#include <utility>
#include <variant>

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
    Outcome(T value) : held_(std::move(value)) {}
    Outcome(NoValue why) : held_(why) {}

    explicit operator bool() const { return held_.index() == 0; }
    const T& operator*() const { return *std::get_if<0>(&held_); }
    const T* operator->() const { return std::get_if<0>(&held_); }
    const NoValue& why() const { return *std::get_if<1>(&held_); }

private:
    std::variant<T, NoValue> held_;
};

}  // namespace cutwater

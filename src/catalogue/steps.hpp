// Intermediate results, named by a formula as it computes them. Costs nothing when nobody listens: the listener is a
// constant null there, and the compiler removes the calls.
#pragma once

#include <cutwater/unit.hpp>

namespace cutwater {

struct StepListener {
    virtual void step(const char* symbol, const char* equation, double value, const char* unit) = 0;

protected:
    ~StepListener() = default;
};

class Steps {
public:
    constexpr Steps() = default;
    constexpr explicit Steps(StepListener* listener) : listener_(listener) {}

    /// For instance steps("f", "Colebrook-White", factor, units::number).
    template <class Q>
    constexpr void operator()(const char* symbol, const char* equation, Q value, Unit<Q> unit) const
    {
        if (listener_) listener_->step(symbol, equation, unit.in(value), unit.info->symbol);
    }

private:
    StepListener* listener_ = nullptr;
};

}  // namespace cutwater

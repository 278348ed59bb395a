// What a call tells of its course: intermediate results, named by a formula as it computes them, and the relation that
// stopped it. Costs nothing when nobody listens: the listener is a constant null there, and the compiler removes the
// calls.
#pragma once

#include <cutwater/unit.hpp>

#include "catalogue/step_listener.hpp"

namespace cutwater {

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
    constexpr void broken(std::size_t relation) const
    {
        if (listener_) listener_->broken(relation);
    }

private:
    StepListener* listener_ = nullptr;
};

}  // namespace cutwater

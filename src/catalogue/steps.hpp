// What a call tells of its course: intermediate results, named by a formula as it computes them, and the relation that
// stopped it. Costs nothing when nobody listens: the listener is a constant null there, and the compiler removes the
// calls. And whether the call is a row of an array, which may leave the long way to a call of its own.
#pragma once

#include <cutwater/unit.hpp>

#include "catalogue/step_listener.hpp"

namespace cutwater {

class Steps {
public:
    constexpr Steps() = default;
    constexpr explicit Steps(StepListener* listener) : listener_(listener) {}
    static constexpr Steps of_a_row()
    {
        Steps steps;
        steps.in_rows_ = true;
        return steps;
    }

    /// Of a row of an array: a formula whose quick way does not settle this one may return `unsettled`, and is called
    /// again for it alone. Where it goes on must not hang on this in any other way: a row has the bits of a single
    /// call.
    constexpr bool in_rows() const { return in_rows_; }

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
    bool in_rows_ = false;
};

}  // namespace cutwater

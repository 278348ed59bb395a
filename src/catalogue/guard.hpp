// The one place where exceptions end. Formulas throw nothing of their own; memory for a series can run out.
#pragma once

#include "catalogue/refusal.hpp"

#include <new>

namespace cutwater {

template <class Body>
cutwater_status guard(cutwater_refusal* refusal, Body&& body) noexcept
{
    try {
        const cutwater_status status = body();
        if (refusal && status == CUTWATER_OK) refusal->status = CUTWATER_OK;
        return status;
    } catch (const std::bad_alloc&) {
        return refuse(CUTWATER_OUT_OF_MEMORY, "There is not enough memory for this series.", refusal);
    } catch (...) {
        return refuse(CUTWATER_INTERNAL, "The library failed inside; please report this call.", refusal);
    }
}

}  // namespace cutwater

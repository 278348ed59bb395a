// The array form on NumPy arrays.
#pragma once

#include "argument.hpp"

namespace cutwater_door {

struct RowsAnswer {
    Owned results;            // an array, or a named tuple of arrays
    Owned mask;               // of truth values, when it was asked for
    std::size_t rows = 0;
    std::size_t refused = 0;
    cutwater_refusal first;   // of refused > 0; its element counts rows as C orders them
};

/// arguments: one an input. out: null, None, an array for the one result, or a tuple of arrays and None.
/// False with Python's error set.
bool compute_rows(const Function &function, Argument *arguments, PyObject *out, bool want_mask, RowsAnswer &answer);

}  // namespace cutwater_door

// The array form on NumPy arrays.
#pragma once

#include "argument.hpp"

namespace cutwater_door {

struct RowsAnswer {
    Owned results;  // an array, or a named tuple of arrays
    Owned mask;     // of truth values, when it was asked for
    std::size_t rows = 0;
    std::size_t refused = 0;
    cutwater_refusal first;  // of refused > 0; its element counts rows as C orders them
};

struct RowsWanted {
    PyObject* out = nullptr;  // null, None, an array for the one result, or a tuple of arrays and None
    bool mask = false;
    int threads = 1;  // as in cutwater_rows_report
};

/// arguments: one an input. False with Python's error set.
bool compute_rows(const Function& function, Argument* arguments, const RowsWanted& wanted, RowsAnswer& answer);

}  // namespace cutwater_door

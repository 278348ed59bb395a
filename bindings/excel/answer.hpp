// Answers as Excel takes them: in memory of ours, which it hands back.
#pragma once

#include "host.hpp"

#include "common/grid.hpp"

namespace cutwater::excel {

/// A single value, or a block of cells with #N/A in the gaps. Excel hands it back to release().
Value* answer(const cutwater_door::Grid& grid);
void release(Value* answer);

/// An error, which nobody hands back; it lives as long as the add-in.
Value* error_answer(std::int32_t error);

}  // namespace cutwater::excel

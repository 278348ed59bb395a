// A refusal as Python's exception. rows and refused are of an array call, else 0.
#pragma once

#include "given.hpp"

namespace cutwater_door {

/// Finds the exception's class.
bool start_refused();

Owned refused_from(const cutwater_refusal& refusal, std::size_t refused = 0, std::size_t rows = 0);
void raise_refused(const cutwater_refusal& refusal, std::size_t refused = 0, std::size_t rows = 0);

}  // namespace cutwater_door

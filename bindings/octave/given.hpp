// The Octave door: what comes and goes is a value of Octave's.
#pragma once

#include "octave.hpp"

#include <cstddef>
#include <cstdint>

namespace cutwater_door {

struct Given {
    octave_value value;  // undefined, or an empty matrix, for an argument left out
};

struct Answer {
    octave_value value;  // several results are a struct with their names
};

/// The function at that position. A refusal is raised as Octave's error, with the whole sentence.
Answer answer(std::int32_t position, const Given* given, std::size_t count);

/// A call that is not one formula, by its name; arguments: a cell array.
Answer question(Given name, Given arguments);

}  // namespace cutwater_door

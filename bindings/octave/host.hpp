// Octave's values, as the doors' common parts ask for them.
#pragma once

#include "octave.hpp"

#include "common/host.hpp"

namespace cutwater_door {

struct OctaveHost {
    using Value = octave_value;
    static constexpr bool by_element = true;
    static Kind kind(const octave_value& given);
    static double number(const octave_value& given) { return given.double_value(); }
    static std::string text(const octave_value& given) { return given.string_value(); }
    static Cells<octave_value> cells(const octave_value& given);
    static std::string what(const octave_value& given);
    /// A real matrix of doubles lies as one block; Octave keeps it while the argument lives.
    static std::optional<Numbers> numbers(const octave_value& given);
};

}  // namespace cutwater_door

// The calls that are not one formula: questions put to the library about its functions and units. Each is a record of
// its own, told once, that every door, its help and the reference page come from.
#pragma once

#include <cstddef>
#include <span>
#include <string_view>

namespace cutwater {

/// What an argument of a question is.
enum class Asked {
    number,  // a plain number
    text,
    unit,           // a unit's symbol
    value,          // a number, or a text with a unit
    function,       // a function's name
    input,          // an input's name, with or without its unit
    result,         // a result's name; left out for the first that is a number
    uncertainties,  // a row or list, one an argument of the function
    arguments       // the rest: the function's own arguments
};

struct QuestionArgument {
    const char* name;
    Asked asked;
    const char* meaning;
    bool optional = false;
};

struct QuestionResult {
    const char* name;
    bool word;  // a text, not a number
    const char* meaning;
};

/// How the results lie where there are cells.
enum class Layout { one, row, column, table };

struct QuestionInfo {
    const char* name;    // at every door; in capitals in a cell
    const char* c_name;  // of the C function that answers it
    const char* meaning;
    std::span<const QuestionArgument> arguments;
    std::span<const QuestionResult> results;
    Layout layout;
    const char* example;  // as in a cell; "" where none is needed
};

std::span<const QuestionInfo> questions() noexcept;

}  // namespace cutwater

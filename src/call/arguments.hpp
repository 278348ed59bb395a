// Arguments as a door hands them over (numbers, texts with units, words, series) made into what a record wants.
#pragma once

#include "catalogue/info.hpp"

#include <array>

namespace cutwater {

inline constexpr std::size_t most_inputs = CUTWATER_MOST_INPUTS;
inline constexpr std::size_t most_results = CUTWATER_MOST_RESULTS;
using GivenInputs = std::array<Given, most_inputs>;

/// Reads one argument. Neither its interval nor its relations are judged here: the call does that.
cutwater_status read_argument(const FunctionText& f, std::size_t input, const cutwater_value& value, Given& given,
                              cutwater_refusal* refusal) noexcept;

/// Reads a whole list, filling defaults for what was left out.
cutwater_status read_arguments(const FunctionText& f, std::span<const cutwater_value> values, Given* given,
                               cutwater_refusal* refusal) noexcept;
inline cutwater_status read_arguments(const FunctionText& f, std::span<const cutwater_value> values, GivenInputs& given,
                                      cutwater_refusal* refusal) noexcept
{
    return read_arguments(f, values, given.data(), refusal);
}

/// Reads a text that stands for one number of an input, or for one element of it when that is a series.
cutwater_status read_text(const FunctionText& f, std::size_t input, const char* text, std::int64_t element,
                          double& number, cutwater_refusal* refusal) noexcept;

}  // namespace cutwater

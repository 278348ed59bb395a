// Writes refusals. All of it is off the path of a call that succeeds; every function takes a null refusal.
#pragma once

#include "catalogue/info.hpp"
#include "catalogue/no_value.hpp"

namespace cutwater {

/// Empties a refusal: status OK, nothing blamed.
void clear(cutwater_refusal* refusal) noexcept;

/// An input, or one element of a series, that is not finite, not whole, or outside its interval.
cutwater_status refuse_number(const FunctionText& f, std::size_t input, double value, std::int64_t element,
                              cutwater_refusal* refusal) noexcept;
/// A word that is not among the choices; word may be null.
cutwater_status refuse_word(const FunctionText& f, std::size_t input, const char* word,
                            cutwater_refusal* refusal) noexcept;
/// A series without a pointer, too short, or one that does not rise where it must.
cutwater_status refuse_series(const FunctionText& f, std::size_t input, RawSeries series,
                              cutwater_refusal* refusal) noexcept;
/// value: that of the input to blame where it is a number; points: its length where it is a series, else 0.
cutwater_status refuse_relation(const FunctionText& f, std::size_t relation, double value, std::size_t points,
                                cutwater_refusal* refusal) noexcept;
/// value: that of the input blamed; NaN for a series, a word or none.
cutwater_status refuse_no_value(const FunctionText& f, const NoValue& why, double value,
                                cutwater_refusal* refusal) noexcept;
/// Of the results at least one is not a finite number; the first such is named.
cutwater_status refuse_overflow(const FunctionText& f, const bool* are_finite, cutwater_refusal* refusal) noexcept;
cutwater_status refuse_missing(const FunctionText& f, std::size_t input, cutwater_refusal* refusal) noexcept;
cutwater_status refuse_kind(const FunctionText& f, std::size_t input, const char* given,
                            cutwater_refusal* refusal) noexcept;
cutwater_status refuse_buffer(const FunctionText& f, std::size_t result, std::size_t needed, std::size_t capacity,
                              cutwater_refusal* refusal) noexcept;
/// Anything else: blames no input.
cutwater_status refuse(cutwater_status status, std::string_view sentence, cutwater_refusal* refusal) noexcept;

/// Names the input in a refusal that the text reader made.
void blame(const FunctionText& f, std::size_t input, std::int64_t element, cutwater_refusal* refusal) noexcept;

/// Position of an input by its name, with or without its unit; inputs.size() when there is none.
std::size_t find_input(const FunctionText& f, std::string_view name) noexcept;

}  // namespace cutwater

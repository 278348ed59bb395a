// Numbers and texts as people read them.
#pragma once

#include <cutwater/unit.hpp>

#include <string>
#include <string_view>

namespace cutwater {

inline constexpr int result_digits = 6;  // more than any measured input carries, few enough to read
inline constexpr int given_digits = 12;  // a number as it was given, without the noise of its last bits

/// So many significant digits; whole up to 1e9, no trailing zeros.
void add_number(std::string& to, double value, int digits);
/// The same with the unit's symbol, if it has one.
void add_quantity(std::string& to, double value, const char* unit, int digits);

/// Characters, not bytes, of a UTF-8 text.
std::size_t width(std::string_view text) noexcept;

/// Plain ASCII: signs by their usual spelling, letters without their marks, anything else as '?'.
std::string ascii(std::string_view text);

/// A caller's text as it can be shown on one line: what is no UTF-8 becomes U+FFFD, what is no character a blank.
std::string readable(std::string_view text);

}  // namespace cutwater

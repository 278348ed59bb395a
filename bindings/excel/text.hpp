// Texts between Windows and the library.
#pragma once

#include <string>
#include <string_view>

namespace cutwater::excel {

/// What is half a character becomes the sign for an unknown one.
std::string utf8(std::u16string_view text);
std::u16string utf16(std::string_view text);

}  // namespace cutwater::excel

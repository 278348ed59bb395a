// What a name that the catalogue does not have may have meant.
#pragma once

#include <cutwater/base.h>

#include <cstddef>
#include <span>
#include <string_view>

namespace cutwater {

/// Functions whose names are alike, the likeliest first; none when none is.
struct Nearest {
    static constexpr std::size_t most = 3;
    const char* names[most] = {};
    std::size_t count = 0;
};
Nearest nearest_functions(std::string_view asked) noexcept;

/// Which of the words was likely meant; how many there are when none is like it.
std::size_t nearest_word(std::string_view asked, std::span<const char* const> words) noexcept;

/// CUTWATER_UNKNOWN_FUNCTION with the names that may have been meant; null for no name.
cutwater_status refuse_unknown_function(const char* asked, cutwater_refusal* refusal) noexcept;

}  // namespace cutwater

// What a name that the catalogue does not have may have meant.
#pragma once

#include <cutwater/base.h>

#include <cstddef>
#include <string_view>

namespace cutwater {

/// Functions whose names are alike, the likeliest first; none when none is.
struct Nearest {
    static constexpr std::size_t most = 3;
    const char* names[most] = {};
    std::size_t count = 0;
};
Nearest nearest_functions(std::string_view asked) noexcept;

/// CUTWATER_UNKNOWN_FUNCTION with the names that may have been meant; null for no name.
cutwater_status refuse_unknown_function(const char* asked, cutwater_refusal* refusal) noexcept;

}  // namespace cutwater

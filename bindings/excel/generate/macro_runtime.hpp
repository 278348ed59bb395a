// The part of cutwater.bas that does not come from the catalogue.
#pragma once

#include <string_view>

namespace cutwater::generate {

/// Its head, before the declarations; and what every function calls, after them.
extern const std::string_view macro_head;
extern const std::string_view macro_body;

}  // namespace cutwater::generate

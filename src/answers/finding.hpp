// Functions by words of the trade.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

namespace cutwater {

/// Positions in the catalogue, best first; empty when no word is known.
std::vector<std::int32_t> find_functions(std::string_view words);

}  // namespace cutwater

// Which function turns one quantity into another: told by the records, which the units know nothing of.
#pragma once

#include <cutwater/unit_info.hpp>

namespace cutwater {

/// The function whose record says that it turns its first input, of the first quantity, into its result, of the second;
/// null when there is none. The catalogue defines it.
const char* function_between(const QuantityInfo& from, const QuantityInfo& to) noexcept;

}  // namespace cutwater

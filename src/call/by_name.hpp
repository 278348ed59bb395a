// A call of any function with values as a door hands them over.
#pragma once

#include "catalogue/info.hpp"

namespace cutwater {

/// Results that were not computed are left as they are.
cutwater_status call_by_name(const FunctionInfo& f, std::span<const cutwater_value> inputs, cutwater_result* results,
                             std::size_t result_count, cutwater_refusal* refusal);

}  // namespace cutwater

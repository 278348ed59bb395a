// A record's example, computed and held against what it says.
#pragma once

#include "catalogue/info.hpp"

namespace cutwater {

/// Whether the example's results come out, each number to the last place that it is written with; else why not.
cutwater_status check_example(const FunctionInfo& f, cutwater_refusal* refusal);

}  // namespace cutwater

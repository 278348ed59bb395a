// What matters most: the result's relative change for each input's.
#pragma once

#include "answers/probe.hpp"

#include <cutwater/answers.h>

#include <vector>

namespace cutwater {

cutwater_status sensitivity(const FunctionInfo& f, std::span<const cutwater_value> values, const char* result,
                            std::vector<cutwater_sensitivity_row>& rows, double& value, cutwater_refusal* refusal);

}  // namespace cutwater

// The C signatures of a function, shared by the header and the bodies.
#pragma once

#include "catalogue/info.hpp"

#include <string>

namespace cutwater::generate {

std::string direct_signature(const FunctionInfo& f);
std::string rows_signature(const FunctionInfo& f);

}  // namespace cutwater::generate

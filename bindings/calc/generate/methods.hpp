// What the Calc door's products are made from: one method a function, and those that are not one formula.
#pragma once

#include "generate/product.hpp"

namespace cutwater::generate {

struct CalcParameter {
    std::string name;   // in the interface's own language, which has no underscores
    std::string shown;  // in the function wizard
    std::string meaning;
    bool rest = false;  // all further arguments of the call
};

struct CalcMethod {
    std::string name;
    std::string meaning;
    std::vector<CalcParameter> parameters;
    bool table = false;  // several cells
    std::string body;    // C++; the arguments are a0, a1, …
};

/// In the order of the catalogue, so that a method's place is its function's number.
std::vector<CalcMethod> calc_functions();

/// Those that are not one formula.
std::vector<CalcMethod> calc_questions();

/// "flow_m3h" as "flowM3h".
std::string camel_case(std::string_view name);

}  // namespace cutwater::generate

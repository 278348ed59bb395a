// Reads the golden files of tests/reference: published values, each with its source and how far a result may differ.
#pragma once

#include "call/argument_list.hpp"

#include <string>
#include <vector>

namespace cutwater::test {

struct GoldenCase {
    std::string where;  // file:line
    std::string call;   // as written, for messages
    std::string source;
    std::string function;
    std::vector<ListedArgument> arguments;
    std::vector<ListedArgument> expected;
    double within = 0;
    bool relative = true;
    bool refused = false;
    std::string blamed;  // of a refused call: the input's name without its unit; empty for any
};

/// Every case of every file, in the order of the files' names. A line that cannot be read throws.
std::vector<GoldenCase> golden_cases();

}  // namespace cutwater::test

// Why a formula gave no value.
#pragma once

#include <cutwater/base.h>

namespace cutwater {

/// The sentence may hold {0}, {1}, {2} for the numbers that tell the case.
struct NoValue {
    struct Number {
        double value = 0;
        const char* unit = "";
    };
    cutwater_status status = CUTWATER_NO_ANSWER;
    const char* argument = "";  // the input to blame, by its name; "" for none
    const char* sentence = "";
    Number numbers[3] = {};
};

}  // namespace cutwater

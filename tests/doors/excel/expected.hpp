// What cells should show, by the C API of cutwater.dll.
#pragma once

#include "play.hpp"

#include "support/golden.hpp"

#include <cutwater/library.h>

namespace play {

struct Asked {
    cutwater_status status;
    cutwater_refusal refusal{};
    Answer answer;  // as the cells should show it
};
Asked asked_of_library(const cutwater::test::GoldenCase& golden);

std::string capitals(std::string text);
bool same_bits(double a, double b);
bool same_cells(const Answer& a, const Answer& b);

/// Only what a cell can show: a finite number, a text, an error that Excel knows.
bool shows(const Answer& answer);

}  // namespace play

// Calc's and Basic's values, as the doors' common parts ask for them.
#pragma once

#include "cell.hpp"

#include "common/host.hpp"

namespace cutwater::calc {

struct CellHost {
    using Value = Any;
    static constexpr bool by_element = false;
    static cutwater_door::Kind kind(const Any& given);
    static double number(const Any& given);
    static std::string text(const Any& given);
    static cutwater_door::Cells<Any> cells(const Any& given);
    static std::string what(const Any& given);
};

}  // namespace cutwater::calc

// The values of Visual Basic, as the doors' common parts ask for them.
#pragma once

#include "common/grid.hpp"
#include "common/host.hpp"

#include <windows.h>

#include <oleauto.h>  // after it

namespace cutwater::excel {

/// Where a value lies and of what type it is: in a variant of its own, or in an array of one type.
struct BasicValue {
    VARTYPE type = VT_ERROR;
    const void* place = nullptr;  // null for what was left out
};

BasicValue view(const VARIANT& variant);

struct BasicHost {
    using Value = BasicValue;
    static constexpr bool by_element = false;
    static cutwater_door::Kind kind(const Value& given);
    static double number(const Value& given);
    static std::string text(const Value& given);
    static cutwater_door::Cells<Value> cells(const Value& given);
    static std::string what(const Value& given);
};

/// The caller, Visual Basic, frees what is put there. Several results: an array as a range's Value, both indices from
/// 1, the error #N/A in the gaps.
void put_answer(const cutwater_door::Grid& grid, VARIANT& to);
void put_text(const std::string& text, VARIANT& to);

}  // namespace cutwater::excel

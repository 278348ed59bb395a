// Excel's values, as the doors' common parts ask for them.
#pragma once

#include "excel.hpp"
#include "text.hpp"

#include "common/host.hpp"

namespace cutwater::excel {

struct CellHost {
    /// Null for what was left out. Excel keeps the values until the call is over.
    using Value = const excel::Value*;
    static constexpr bool by_element = false;
    static cutwater_door::Kind kind(Value given);
    static double number(Value given);
    static std::string text(Value given);
    static cutwater_door::Cells<Value> cells(Value given);
    static std::string what(Value given);
};

/// The first error of the sheet's own among the arguments; null when there is none.
const Value* error_among(const Value* const* arguments, std::size_t count);

}  // namespace cutwater::excel

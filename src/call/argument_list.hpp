// Argument lists as the records' examples and the golden files write them: 1.5, "72 %", [1, 2, 3], default.
#pragma once

#include <cutwater/base.h>

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cutwater {

struct ListedArgument {
    std::int32_t kind = CUTWATER_LEFT_OUT;
    double number = 0;
    std::string text;  // of a text; as it was written, of a number
    std::vector<double> series;
    std::vector<std::string> written;  // the series' numbers, as they were written

    cutwater_value value() const
    {
        return {kind, number, kind == CUTWATER_TEXT ? text.c_str() : nullptr, series.data(), series.size(), 1};
    }
};

/// Nothing when the text is no such list.
std::optional<std::vector<ListedArgument>> read_argument_list(std::string_view text);

/// Half a unit in the last place that a number was written with: how far a value may lie from it and still round to it.
double written_precision(std::string_view number);

}  // namespace cutwater

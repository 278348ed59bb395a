// PostgreSQL's values as they come over the bridge, as the doors' common parts ask for them.
#pragma once

#include "bridge.h"

#include "common/host.hpp"

namespace cutwater_door {

struct PostgresqlHost {
    using Value = cw_given;
    static constexpr bool by_element = false;
    static Kind kind(const cw_given& given)
    {
        switch (given.kind) {
        case CW_NOTHING: return Kind::left_out;
        case CW_NUMBER: return Kind::number;
        case CW_TEXT: return Kind::text;
        case CW_MANY: return Kind::cells;
        default: return Kind::other;
        }
    }
    static double number(const cw_given& given) { return given.number; }
    static std::string text(const cw_given& given) { return given.text; }
    static std::string what(const cw_given& given) { return given.text; }
    static Cells<cw_given> cells(const cw_given& given)
    {
        Cells<cw_given> made;
        made.rows = given.rows;
        made.columns = given.columns;
        for (std::size_t i = 0; i < given.rows * given.columns; ++i)
            made.cells.push_back(given.cells ? given.cells[i] : of(given.numbers[i]));
        return made;
    }
    static std::optional<Numbers> numbers(const cw_given& given)
    {
        if (!given.numbers || given.rows * given.columns < 2) return std::nullopt;
        return Numbers{given.numbers, given.rows, given.columns};
    }

private:
    static cw_given of(double number)
    {
        cw_given made{};
        made.kind = CW_NUMBER;
        made.number = number;
        return made;
    }
};

}  // namespace cutwater_door

// SQL values, as the doors' common parts ask for them.
#pragma once

#include "common/host.hpp"

#include <sqlite3ext.h>

#include <string>
#include <vector>

namespace cutwater_door {

struct Given {
    Kind kind = Kind::left_out;
    bool null = false;  // NULL was given, which is not the same as giving nothing
    double number = 0;
    std::string text;  // of Kind::other: what it is
    std::vector<Given> cells;
};

/// A text that begins with [ is a JSON array: a series.
Given given_from(sqlite3_value* value);

struct SqliteHost {
    using Value = Given;
    static constexpr bool by_element = false;
    static Kind kind(const Given& given) { return given.kind; }
    static double number(const Given& given) { return given.number; }
    static std::string text(const Given& given) { return given.text; }
    static Cells<Given> cells(const Given& given) { return {given.cells, 1, given.cells.size()}; }
    static std::string what(const Given& given) { return given.text; }
};

}  // namespace cutwater_door

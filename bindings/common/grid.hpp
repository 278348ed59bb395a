// Results as cells: side by side, a series down its column, gaps where there is nothing.
#pragma once

#include "common/call.hpp"

#include <string>
#include <vector>

namespace cutwater_door {

struct Cell {
    enum class Kind { gap, number, text } kind = Kind::gap;
    double number = 0;
    std::string text;

    Cell() = default;
    /// Of what is not a finite number, a gap.
    explicit Cell(double value);
    explicit Cell(std::string value) : kind(Kind::text), text(std::move(value)) {}
};

struct Grid {
    std::size_t rows = 0;
    std::size_t columns = 0;
    std::vector<Cell> cells;  // row by row

    static Grid row(std::vector<Cell> cells);
    static Grid column(const std::vector<double>& numbers);
    const Cell& at(std::size_t r, std::size_t c) const { return cells[r * columns + c]; }
};

Grid results_of(const Function& function, const Call& call);

}  // namespace cutwater_door

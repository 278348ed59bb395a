#include "common/grid.hpp"

#include <algorithm>
#include <cmath>

namespace cutwater_door {

Cell::Cell(double value) : kind(std::isfinite(value) ? Kind::number : Kind::gap), number(value) {}

Grid Grid::row(std::vector<Cell> cells)
{
    const std::size_t columns = cells.size();
    return {1, columns, std::move(cells)};
}

Grid Grid::column(const std::vector<double>& numbers)
{
    Grid grid{numbers.size(), 1, {}};
    for (const double number : numbers) grid.cells.emplace_back(number);
    return grid;
}

Grid results_of(const Function& function, const Call& call)
{
    Grid grid{1, function.results.size(), {}};
    for (std::size_t c = 0; c < grid.columns; ++c)
        if (function.results[c] == CUTWATER_SERIES) grid.rows = std::max(grid.rows, call.result(c).length);
    for (std::size_t r = 0; r < grid.rows; ++r)
        for (std::size_t c = 0; c < grid.columns; ++c) {
            const cutwater_result& result = call.result(c);
            if (function.results[c] == CUTWATER_SERIES)
                grid.cells.push_back(r < result.length ? Cell(result.series[r]) : Cell());
            else if (r > 0)
                grid.cells.emplace_back();
            else
                grid.cells.push_back(function.results[c] == CUTWATER_TEXT ? Cell(std::string(result.text))
                                                                          : Cell(result.number));
        }
    return grid;
}

}  // namespace cutwater_door

// The array form for hosts that compute element by element: arguments of one shape, or one number for all.
#pragma once

#include "common/arguments.hpp"

namespace cutwater_door {

struct Columns {
    std::size_t rows = 0;  // the shape of every result
    std::size_t columns = 0;
    std::vector<std::vector<double>> results;  // a word by its position among the words
    std::size_t refused = 0;
};

/// Whether any argument is many numbers for one quantity.
template <class Host>
bool by_element(const Function& f, const Arguments<Host>& arguments)
{
    for (std::size_t i = 0; i < arguments.values().size() && i < f.inputs.size(); ++i)
        if (arguments.by_element(i)) return true;
    return false;
}

/// A function with a series among its results has no array form, and takes no such arguments.
template <class Host>
cutwater_status compute_columns(const Function& f, const Arguments<Host>& arguments, Columns& to,
                                cutwater_refusal& refusal)
{
    if (f.has_series_result)
        return refuse(CUTWATER_WRONG_KIND,
                      f.name + ": a function with a series among its results takes one number for a quantity.",
                      refusal);
    std::vector<double> numbers(f.inputs.size());
    std::vector<cutwater_column> in(f.inputs.size(), cutwater_column{nullptr, 0});
    std::vector<cutwater_value> shared(f.inputs.size(), cutwater_value{});
    to.rows = to.columns = 0;
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        const cutwater_value value = i < arguments.values().size() ? arguments.values()[i] : cutwater_value{};
        if (f.inputs[i] != CUTWATER_NUMBER) {
            shared[i] = value;
            continue;
        }
        if (value.kind == CUTWATER_LEFT_OUT) continue;
        if (value.kind == CUTWATER_SERIES) {
            if (to.rows * to.columns == 0) {
                to.rows = arguments.rows(i);
                to.columns = arguments.columns(i);
            } else if (arguments.rows(i) != to.rows || arguments.columns(i) != to.columns) {
                return refuse(CUTWATER_CONTRADICTION,
                              place_of(f, i) + " has " + std::to_string(arguments.rows(i)) + " rows and " +
                                  std::to_string(arguments.columns(i)) + " columns, another argument " +
                                  std::to_string(to.rows) + " and " + std::to_string(to.columns) + ".",
                              refusal);
            }
            in[i] = {value.series, 1};
            continue;
        }
        numbers[i] = value.number;
        if (value.kind == CUTWATER_TEXT)
            if (const auto status = cutwater_read(f.position, static_cast<std::int32_t>(i), value.text, &numbers[i],
                                                  &refusal);
                status != CUTWATER_OK)
                return status;
        in[i] = {&numbers[i], 0};
    }
    const std::size_t count = to.rows * to.columns;
    std::vector<cutwater_result_column> out;
    to.results.assign(f.results.size(), std::vector<double>(count));
    for (auto& column : to.results) out.push_back({column.data(), 1});
    cutwater_rows_report report{};
    const auto status = cutwater_rows_at(f.position, count, in.data(), shared.data(), out.data(), &report);
    to.refused = report.refused;
    refusal = report.first;
    return status;
}

}  // namespace cutwater_door

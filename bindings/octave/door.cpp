#include "given.hpp"
#include "host.hpp"

#include "common/columns.hpp"
#include "common/questions.hpp"

#include <cctype>

namespace cutwater_door {
namespace {

using Arguments_ = Arguments<OctaveHost>;

/// The identifier is the status: cutwater:out_of_interval.
[[noreturn]] void raise(const cutwater_refusal& refusal, const std::string& tail = "")
{
    std::string id = "cutwater:";
    for (const char* c = cutwater_status_name(refusal.status); *c; ++c)
        id += static_cast<char>(std::tolower(static_cast<unsigned char>(*c)));
    error_with_id(id.c_str(), "%s%s", refusal.message, tail.c_str());
    throw;  // not reached: error_with_id throws
}

octave_value in_octave(const cutwater_door::Cell& cell)
{
    switch (cell.kind) {
    case cutwater_door::Cell::Kind::number: return octave_value(cell.number);
    case cutwater_door::Cell::Kind::text: return octave_value(cell.text);
    default: return octave_value(octave_NaN);
    }
}

octave_value one_result(const Function& f, const Call& call, std::size_t i)
{
    const cutwater_result& result = call.result(i);
    if (f.results[i] == CUTWATER_NUMBER) return octave_value(result.number);
    if (f.results[i] == CUTWATER_TEXT) return octave_value(std::string(result.text));
    RowVector series(static_cast<octave_idx_type>(result.length));
    std::copy_n(result.series, result.length, series.fortran_vec());
    return octave_value(series);
}

/// Words as a cell array of texts, numbers as a matrix.
octave_value one_column(const Function& f, const Columns& columns, std::size_t i)
{
    const dim_vector shape(static_cast<octave_idx_type>(columns.rows), static_cast<octave_idx_type>(columns.columns));
    const std::vector<double>& numbers = columns.results[i];
    if (f.results[i] == CUTWATER_NUMBER) {
        NDArray array(shape);
        std::copy(numbers.begin(), numbers.end(), array.fortran_vec());
        return octave_value(array);
    }
    ::Cell words(shape);
    for (std::size_t k = 0; k < numbers.size(); ++k)
        words(static_cast<octave_idx_type>(k)) = std::string(
            cutwater_result_word(f.position, static_cast<std::int32_t>(i), static_cast<std::int32_t>(numbers[k])));
    return octave_value(words);
}

template <class Make>
octave_value named(const Function& f, Make&& make)
{
    if (f.results.size() == 1) return make(0);
    octave_scalar_map map;
    for (std::size_t i = 0; i < f.results.size(); ++i)
        map.setfield(cutwater_result_name(f.position, static_cast<std::int32_t>(i)), make(i));
    return octave_value(map);
}

octave_value computed(const Function& f, const Arguments_& arguments)
{
    if (by_element(f, arguments)) {
        Columns columns;
        cutwater_refusal refusal{};
        if (compute_columns(f, arguments, columns, refusal) != CUTWATER_OK)
            raise(refusal, columns.refused ? " (" + std::to_string(columns.refused) + " of " +
                                                 std::to_string(columns.rows * columns.columns) +
                                                 " elements refused; the first is element " +
                                                 std::to_string(refusal.element + 1) + ".)"
                                           : "");
        return named(f, [&](std::size_t i) { return one_column(f, columns, i); });
    }
    Call call;
    if (call.run(f, arguments.values().data(), arguments.values().size()) != CUTWATER_OK) raise(call.refusal());
    return named(f, [&](std::size_t i) { return one_result(f, call, i); });
}

/// One cell is itself; a row has named fields; a column of numbers is a vector; a table is a struct array.
octave_value laid_out(const Question& q, const Grid& grid)
{
    if (q.layout == CUTWATER_ONE) return in_octave(grid.cells.front());
    if (q.layout == CUTWATER_COLUMN) {
        ColumnVector column(static_cast<octave_idx_type>(grid.rows));
        for (std::size_t r = 0; r < grid.rows; ++r)
            column(static_cast<octave_idx_type>(r)) = in_octave(grid.at(r, 0)).double_value();
        return octave_value(column);
    }
    octave_map map(dim_vector(static_cast<octave_idx_type>(grid.rows), 1));
    for (std::size_t c = 0; c < grid.columns; ++c) {
        ::Cell field(static_cast<octave_idx_type>(grid.rows), 1);
        for (std::size_t r = 0; r < grid.rows; ++r) field(static_cast<octave_idx_type>(r)) = in_octave(grid.at(r, c));
        map.setfield(q.results[c], field);
    }
    return octave_value(map);
}

}  // namespace

Answer answer(std::int32_t position, const Given* given, std::size_t count)
{
    const Function* f = function_at(position);
    if (!f) error("cutwater: the library beside this package is of another version than the package");
    std::vector<octave_value> list;
    for (std::size_t i = 0; i < count; ++i) list.push_back(given[i].value);
    while (!list.empty() && OctaveHost::kind(list.back()) == Kind::left_out) list.pop_back();
    Arguments_ arguments;
    cutwater_refusal refusal{};
    if (arguments.read(*f, list, refusal) != CUTWATER_OK) raise(refusal);
    return {computed(*f, arguments)};
}

Answer question(Given name, Given arguments)
{
    const std::int32_t position = question_named(name.value.string_value());
    const Question* q = question_at(position);
    if (!q || !arguments.value.iscell()) error("cutwater: there is no such question");
    const ::Cell cell = arguments.value.cell_value();
    std::vector<octave_value> list;
    for (octave_idx_type i = 0; i < cell.numel(); ++i) list.push_back(cell(i));
    Grid grid;
    cutwater_refusal refusal{};
    if (Asking<OctaveHost>().answer(position, list, grid, refusal) != CUTWATER_OK) raise(refusal);
    return {laid_out(*q, grid)};
}

}  // namespace cutwater_door

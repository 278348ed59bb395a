#include "host.hpp"

namespace cutwater_door {
namespace {

bool is_number(const octave_value& given) { return given.isnumeric() && given.isreal(); }

}  // namespace

Kind OctaveHost::kind(const octave_value& given)
{
    if (given.is_undefined()) return Kind::left_out;
    if (given.is_string()) return given.rows() > 1 ? Kind::other : given.isempty() ? Kind::empty : Kind::text;
    if (given.iscell()) return Kind::cells;
    if (!is_number(given)) return Kind::other;
    if (given.isempty()) return Kind::left_out;  // [] stands for nothing
    if (given.numel() == 1) return Kind::number;
    return given.ndims() == 2 ? Kind::cells : Kind::other;
}

// Octave's order is column by column; a series has only one of either, and elements keep their places.
Cells<octave_value> OctaveHost::cells(const octave_value& given)
{
    Cells<octave_value> made;
    made.rows = static_cast<std::size_t>(given.rows());
    made.columns = static_cast<std::size_t>(given.columns());
    const octave_idx_type count = given.numel();
    if (given.iscell()) {
        const Cell cell = given.cell_value();
        for (octave_idx_type i = 0; i < count; ++i) made.cells.push_back(cell(i));
    } else {
        const NDArray array = given.array_value();
        for (octave_idx_type i = 0; i < count; ++i) made.cells.emplace_back(array(i));
    }
    return made;
}

std::string OctaveHost::what(const octave_value& given)
{
    if (given.islogical()) return "true or false";
    if (given.iscomplex()) return "a complex number";
    if (given.is_string()) return "a text of several rows";
    return "a " + given.class_name() + ", neither a number nor a text";
}

std::optional<Numbers> OctaveHost::numbers(const octave_value& given)
{
    if (!given.is_double_type() || !given.is_matrix_type() || !given.isreal() || given.is_range() ||
        given.is_diag_matrix() || given.is_perm_matrix() || given.issparse())
        return std::nullopt;
    return Numbers{given.array_value().data(), static_cast<std::size_t>(given.rows()),
                   static_cast<std::size_t>(given.columns())};
}

}  // namespace cutwater_door

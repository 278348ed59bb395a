#include "host.hpp"

#include "common/questions.hpp"

#include <com/sun/star/lang/IllegalArgumentException.hpp>
#include <rtl/ustring.hxx>

#include <cstring>

namespace cutwater::calc {
namespace {

using cutwater_door::Cell;
using cutwater_door::Grid;

rtl::OUString text_for_cell(const std::string& text)
{
    return rtl::OUString(text.data(), static_cast<sal_Int32>(text.size()), RTL_TEXTENCODING_UTF8);
}

/// A cell shows it as an error; Basic's Error$ tells it whole.
[[noreturn]] void throw_refused(const cutwater_refusal& refusal)
{
    throw com::sun::star::lang::IllegalArgumentException(text_for_cell(refusal.message), {},
                                                         static_cast<sal_Int16>(refusal.argument));
}

/// What Calc shows as #N/A.
Any not_available()
{
    const std::uint64_t bits = 0x7ff0000000000000U | 32767U;  // an error's code as the payload of a NaN
    double number = 0;
    std::memcpy(&number, &bits, sizeof number);
    return Any(number);
}

Any in_cell(const Cell& cell)
{
    if (cell.kind == Cell::Kind::text) return Any(text_for_cell(cell.text));
    return cell.kind == Cell::Kind::number ? Any(cell.number) : not_available();
}

Table in_cells(const Grid& grid)
{
    Table table(static_cast<sal_Int32>(grid.rows));
    Row* const row = table.getArray();
    for (std::size_t r = 0; r < grid.rows; ++r) {
        row[r].realloc(static_cast<sal_Int32>(grid.columns));
        for (std::size_t c = 0; c < grid.columns; ++c) row[r].getArray()[c] = in_cell(grid.at(r, c));
    }
    return table;
}

std::vector<Any> list_of(std::initializer_list<const Any*> arguments)
{
    std::vector<Any> list;
    list.reserve(arguments.size());
    for (const Any* argument : arguments) list.push_back(*argument);
    return list;
}

/// Runs the function; its answers are in call.
const cutwater_door::Function& run(std::int32_t position, std::initializer_list<const Any*> given,
                                   cutwater_door::Call& call)
{
    cutwater_refusal refusal{};
    const cutwater_door::Function* f = cutwater_door::function_at(position);
    cutwater_door::Arguments<CellHost> arguments;
    if (!f)
        cutwater_door::refuse(CUTWATER_UNKNOWN_FUNCTION, "The library beside this add-in is of another version.",
                              refusal);
    if (!f || arguments.read(*f, list_of(given), refusal) != CUTWATER_OK) throw_refused(refusal);
    if (call.run(*f, arguments.values().data(), arguments.values().size()) != CUTWATER_OK)
        throw_refused(call.refusal());
    return *f;
}

Grid answered(std::int32_t question, std::initializer_list<const Any*> arguments, const Row& rest)
{
    std::vector<Any> further;
    for (sal_Int32 i = 0; i < rest.getLength(); ++i) further.push_back(rest[i]);
    Grid grid;
    cutwater_refusal refusal{};
    if (cutwater_door::Asking<CellHost>().answer(question, list_of(arguments), further, grid, refusal) != CUTWATER_OK)
        throw_refused(refusal);
    return grid;
}

}  // namespace

std::vector<std::int32_t> positions_of(std::initializer_list<const char*> names)
{
    std::vector<std::int32_t> positions;
    for (const char* name : names) positions.push_back(cutwater_find(name));
    return positions;
}

Any cell(std::int32_t function, std::initializer_list<const Any*> arguments)
{
    cutwater_door::Call call;
    const auto& f = run(function, arguments, call);
    return f.results.front() == CUTWATER_TEXT ? Any(text_for_cell(call.result(0).text))
                                              : in_cell(Cell(call.result(0).number));
}

Table cells(std::int32_t function, std::initializer_list<const Any*> arguments)
{
    cutwater_door::Call call;
    const auto& f = run(function, arguments, call);
    return in_cells(results_of(f, call));
}

Any question_cell(std::int32_t question, std::initializer_list<const Any*> arguments, const Row& rest)
{
    return in_cell(answered(question, arguments, rest).cells.front());
}

Table question_cells(std::int32_t question, std::initializer_list<const Any*> arguments, const Row& rest)
{
    return in_cells(answered(question, arguments, rest));
}

}  // namespace cutwater::calc

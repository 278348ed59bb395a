#include "host.hpp"

#include <algorithm>

namespace cutwater::excel {
namespace {

using cutwater_door::Kind;

std::size_t cell_count(const Value& block)
{
    if (block.block.rows < 1 || block.block.columns < 1 || !block.block.cells) return 0;
    return static_cast<std::size_t>(block.block.rows) * static_cast<std::size_t>(block.block.columns);
}

}  // namespace

Kind CellHost::kind(Value given)
{
    if (!given) return Kind::left_out;
    switch (given->type & type_bits) {
    case number_type:
    case whole_type: return Kind::number;
    case text_type: return given->text && given->text[0] ? Kind::text : Kind::empty;
    case error_type: return Kind::error;
    case block_type: return cell_count(*given) ? Kind::cells : Kind::empty;
    case missing_type: return Kind::left_out;
    case nothing_type: return Kind::empty;
    default: return Kind::other;
    }
}

double CellHost::number(Value given) { return (given->type & type_bits) == whole_type ? given->whole : given->number; }

std::string CellHost::text(Value given)
{
    return utf8({given->text + 1, std::min<std::size_t>(given->text[0], longest_text)});
}

cutwater_door::Cells<const Value*> CellHost::cells(Value given)
{
    cutwater_door::Cells<Value> block;
    block.rows = static_cast<std::size_t>(given->block.rows);
    block.columns = static_cast<std::size_t>(given->block.columns);
    for (std::size_t i = 0; i < cell_count(*given); ++i) block.cells.push_back(given->block.cells + i);
    return block;
}

std::string CellHost::what(Value given)
{
    return (given->type & type_bits) == truth_type ? "true or false" : "neither a number nor a text";
}

const Value* error_among(const Value* const* arguments, std::size_t count)
{
    for (std::size_t i = 0; i < count; ++i) {
        const Value* given = arguments[i];
        const auto kind = CellHost::kind(given);
        if (kind == Kind::error) return given;
        if (kind != Kind::cells) continue;
        const Value* const cells = given->block.cells;
        const Value* const end = cells + cell_count(*given);
        const Value* const found = std::find_if(cells, end,
                                                [](const Value& cell) { return CellHost::kind(&cell) == Kind::error; });
        if (found != end) return found;
    }
    return nullptr;
}

}  // namespace cutwater::excel

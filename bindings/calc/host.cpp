#include "host.hpp"

#include <rtl/string.hxx>
#include <rtl/ustring.hxx>

#include <algorithm>

namespace cutwater::calc {
namespace {

using com::sun::star::uno::Sequence;
using com::sun::star::uno::TypeClass_BOOLEAN;
using com::sun::star::uno::TypeClass_SEQUENCE;
using cutwater_door::Kind;
using Block = cutwater_door::Cells<Any>;

template <class Element>
bool add_row(const Any& given, std::vector<Any>& cells)
{
    Sequence<Element> row;
    if (!(given >>= row)) return false;
    for (sal_Int32 i = 0; i < row.getLength(); ++i) cells.emplace_back(row[i]);
    return true;
}

template <class Element>
bool read_rows(const Any& given, Block& block)
{
    Sequence<Sequence<Element>> table;
    if (!(given >>= table)) return false;
    block.rows = static_cast<std::size_t>(table.getLength());
    for (sal_Int32 r = 0; r < table.getLength(); ++r) {
        block.columns = std::max(block.columns, static_cast<std::size_t>(table[r].getLength()));
        for (sal_Int32 c = 0; c < table[r].getLength(); ++c) block.cells.emplace_back(table[r][c]);
    }
    return true;
}

bool is_sequence(const Any& given) { return given.getValueTypeClass() == TypeClass_SEQUENCE; }

// Calc sends rows of anything. Basic sends an array under the type that all its elements share: numbers of any width,
// texts.
template <class... Element>
bool add_row_of_any(const Any& given, std::vector<Any>& cells)
{
    return (add_row<Element>(given, cells) || ...);
}
template <class... Element>
bool read_rows_of_any(const Any& given, Block& block)
{
    return (read_rows<Element>(given, block) || ...);
}
bool add_some_row(const Any& given, std::vector<Any>& cells)
{
    return add_row_of_any<Any, double, float, sal_Int32, sal_Int16, sal_Int8, rtl::OUString>(given, cells);
}

bool read_block(const Any& given, Block& block)
{
    if (read_rows_of_any<Any, double, float, sal_Int32, sal_Int16, sal_Int8, rtl::OUString>(given, block)) return true;
    std::vector<Any> list;
    if (!add_some_row(given, list)) return false;
    if (list.empty() || !is_sequence(list.front())) {
        block.rows = 1;
        block.columns = list.size();
        block.cells = std::move(list);
        return true;
    }
    block.rows = list.size();
    for (const Any& row : list) {
        const std::size_t before = block.cells.size();
        if (!add_some_row(row, block.cells)) return false;
        block.columns = std::max(block.columns, block.cells.size() - before);
    }
    return true;
}

std::string utf8(const rtl::OUString& text)
{
    const rtl::OString bytes = rtl::OUStringToOString(text, RTL_TEXTENCODING_UTF8);
    return {bytes.getStr(), static_cast<std::size_t>(bytes.getLength())};
}

}  // namespace

Kind CellHost::kind(const Any& given)
{
    if (!given.hasValue()) return Kind::left_out;
    if (double number = 0; given >>= number) return Kind::number;  // of every number type, not of booleans
    if (rtl::OUString text; given >>= text) return text.isEmpty() ? Kind::empty : Kind::text;
    Block block;
    return is_sequence(given) && read_block(given, block) ? Kind::cells : Kind::other;
}

double CellHost::number(const Any& given)
{
    double number = 0;
    given >>= number;
    return number;
}

std::string CellHost::text(const Any& given)
{
    rtl::OUString text;
    given >>= text;
    return utf8(text);
}

Block CellHost::cells(const Any& given)
{
    Block block;
    read_block(given, block);
    return block;
}

std::string CellHost::what(const Any& given)
{
    if (given.getValueTypeClass() == TypeClass_BOOLEAN) return "true or false";
    return utf8(given.getValueTypeName()) + ", neither a number nor a text";
}

}  // namespace cutwater::calc

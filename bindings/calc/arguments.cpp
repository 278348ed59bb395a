#include "arguments.hpp"

#include <rtl/string.hxx>
#include <rtl/ustring.hxx>

#include <algorithm>

namespace cutwater::calc {
namespace {

using com::sun::star::uno::Sequence;
using com::sun::star::uno::TypeClass_BOOLEAN;
using com::sun::star::uno::TypeClass_SEQUENCE;

/// A range, or an array of Basic's.
struct Block {
    std::vector<Any> cells;
    sal_Int32 rows = 0;
    sal_Int32 columns = 0;
};

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
    block.rows = table.getLength();
    for (sal_Int32 r = 0; r < table.getLength(); ++r) {
        block.columns = std::max(block.columns, table[r].getLength());
        for (sal_Int32 c = 0; c < table[r].getLength(); ++c) block.cells.emplace_back(table[r][c]);
    }
    return true;
}

bool is_sequence(const Any& given) { return given.getValueTypeClass() == TypeClass_SEQUENCE; }

// Calc sends rows of anything. Basic sends an array under the type that all its elements share: numbers of any width, texts.
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
    if (!is_sequence(given)) return false;
    if (read_rows_of_any<Any, double, float, sal_Int32, sal_Int16, sal_Int8, rtl::OUString>(given, block)) return true;
    std::vector<Any> list;
    if (!add_some_row(given, list)) return false;
    if (list.empty() || !is_sequence(list.front())) {
        block.rows = 1;
        block.columns = static_cast<sal_Int32>(list.size());
        block.cells = std::move(list);
        return true;
    }
    block.rows = static_cast<sal_Int32>(list.size());
    for (const Any& row : list) {
        const std::size_t before = block.cells.size();
        if (!add_some_row(row, block.cells)) return false;
        block.columns = std::max(block.columns, static_cast<sal_Int32>(block.cells.size() - before));
    }
    return true;
}

std::string place(std::int32_t function, std::size_t input)
{
    return std::string(cutwater_function_name(function)) + ": " + cutwater_input_name(function, static_cast<std::int32_t>(input));
}

std::string point_text(std::size_t point) { return ", point " + std::to_string(point + 1) + " (counted from 1)"; }

std::string type_text(const Any& given)
{
    if (given.getValueTypeClass() == TypeClass_BOOLEAN) return "true or false";
    return text_in(Any(given.getValueTypeName())).value_or("") + ", neither a number nor a text";
}

}  // namespace

std::optional<double> number_in(const Any& given)
{
    double number = 0;
    if (given >>= number) return number;  // of every number type, not of booleans
    return std::nullopt;
}

std::optional<std::string> text_in(const Any& given)
{
    rtl::OUString text;
    if (!(given >>= text)) return std::nullopt;
    const rtl::OString bytes = rtl::OUStringToOString(text, RTL_TEXTENCODING_UTF8);
    return std::string(bytes.getStr(), static_cast<std::size_t>(bytes.getLength()));
}

std::optional<std::vector<Any>> cells_in(const Any& given)
{
    if (!is_sequence(given)) return std::vector<Any>{given};
    Block block;
    if (!read_block(given, block)) return std::nullopt;
    return std::move(block.cells);
}

Any unwrapped(const Any& given)
{
    const auto cells = cells_in(given);
    return cells && cells->size() == 1 ? cells->front() : given;
}

bool left_out(const Any& given)
{
    if (!given.hasValue()) return true;
    rtl::OUString text;
    return (given >>= text) && text.isEmpty();
}

cutwater_status refuse(cutwater_status status, const std::string& sentence, cutwater_refusal& refusal)
{
    refusal = cutwater_refusal{};
    refusal.status = status;
    refusal.argument = -1;
    refusal.element = -1;
    std::size_t length = std::min(sentence.size(), sizeof refusal.message - 1);
    while (length < sentence.size() && length > 0 && (static_cast<unsigned char>(sentence[length]) & 0xC0U) == 0x80U) --length;
    std::copy_n(sentence.data(), length, refusal.message);
    return status;
}

cutwater_status Arguments::read(std::int32_t function, std::span<const Any* const> given, cutwater_refusal& refusal)
{
    function_ = function;
    values_.assign(given.size(), cutwater_value{});
    if (given.size() > static_cast<std::size_t>(cutwater_input_count(function))) return CUTWATER_OK;  // the library counts
    held_.resize(given.size());
    for (std::size_t i = 0; i < given.size(); ++i)
        if (const auto status = read_one(i, *given[i], refusal); status != CUTWATER_OK) return status;
    return CUTWATER_OK;
}

cutwater_status Arguments::read_one(std::size_t input, const Any& given, cutwater_refusal& refusal)
{
    cutwater_value& value = values_[input];
    const bool wants_series = cutwater_input_kind(function_, static_cast<std::int32_t>(input)) == CUTWATER_SERIES;
    Block block;
    if (is_sequence(given) && !read_block(given, block))
        return refuse(CUTWATER_WRONG_KIND, place(function_, input) + " was given " + type_text(given) + ".", refusal);
    const bool one = !is_sequence(given) || block.cells.size() == 1;
    if (!is_sequence(given)) block = {{given}, 1, 1};
    while (!block.cells.empty() && left_out(block.cells.back())) block.cells.pop_back();  // room kept for more points
    if (block.cells.empty()) return CUTWATER_OK;
    if (!one && !wants_series) {
        value.kind = CUTWATER_SERIES;  // refused in the library's words
        return CUTWATER_OK;
    }
    Held& held = held_[input];
    if (wants_series) {
        if (block.rows > 1 && block.columns > 1)
            return refuse(CUTWATER_BAD_SERIES,
                          place(function_, input) + " is a block of " + std::to_string(block.rows) + " rows and " +
                              std::to_string(block.columns) + " columns; a series is one row or one column.",
                          refusal);
        held.series.reserve(block.cells.size());
        for (const Any& point : block.cells)
            if (const auto status = read_point(input, point, held.series, refusal); status != CUTWATER_OK) return status;
        value = {CUTWATER_SERIES, 0, nullptr, held.series.data(), held.series.size(), 1};
        return CUTWATER_OK;
    }
    const Any& only = block.cells.front();
    if (const auto number = number_in(only)) {
        value.kind = CUTWATER_NUMBER;
        value.number = *number;
    } else if (auto text = text_in(only)) {
        held.text = std::move(*text);
        value.kind = CUTWATER_TEXT;
        value.text = held.text.c_str();
    } else {
        return refuse(CUTWATER_WRONG_KIND, place(function_, input) + " was given " + type_text(only) + ".", refusal);
    }
    return CUTWATER_OK;
}

cutwater_status Arguments::read_point(std::size_t input, const Any& given, std::vector<double>& series, cutwater_refusal& refusal)
{
    const std::string where = place(function_, input) + point_text(series.size());
    if (left_out(given)) return refuse(CUTWATER_BAD_SERIES, where + ": the cell is empty; only the last cells may be.", refusal);
    if (const auto number = number_in(given)) {
        series.push_back(*number);
        return CUTWATER_OK;
    }
    const auto text = text_in(given);
    if (!text) return refuse(CUTWATER_WRONG_KIND, where + " is " + type_text(given) + ".", refusal);
    double number = 0;
    const auto status = cutwater_read(function_, static_cast<std::int32_t>(input), text->c_str(), &number, &refusal);
    if (status == CUTWATER_OK) {
        series.push_back(number);
        return status;
    }
    // The library blames the input; say which point of it.
    std::string sentence(refusal.message);
    const std::string lead = place(function_, input) + ":";
    if (sentence.compare(0, lead.size(), lead) == 0) sentence = where + sentence.substr(lead.size() - 1);
    return refuse(status, sentence, refusal);
}

}  // namespace cutwater::calc

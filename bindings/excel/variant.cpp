#include "variant.hpp"

#include "text.hpp"

#include <new>

namespace cutwater::excel {
namespace {

using cutwater_door::Cell;
using cutwater_door::Kind;

constexpr SCODE cell_not_available = static_cast<SCODE>(0x800A0000U + 2042U);  // CVErr(xlErrNA)

const SAFEARRAY& array_of(const BasicValue& given) { return *static_cast<const SAFEARRAY*>(given.place); }

template <class T>
double as_number(const BasicValue& given)
{
    return static_cast<double>(*static_cast<const T*>(given.place));
}

std::u16string_view units_of(const BasicValue& given)
{
    const BSTR text = *static_cast<const BSTR*>(given.place);
    return {reinterpret_cast<const char16_t*>(text), SysStringLen(text)};
}

std::size_t element_count(const SAFEARRAY& array)
{
    std::size_t count = 1;
    for (USHORT i = 0; i < array.cDims; ++i) count *= array.rgsabound[i].cElements;
    return array.pvData ? count : 0;
}

}  // namespace

BasicValue view(const VARIANT& variant)
{
    if (variant.vt == (VT_BYREF | VT_VARIANT)) return view(*variant.pvarVal);
    const bool elsewhere = variant.vt & VT_BYREF;
    const auto type = static_cast<VARTYPE>(variant.vt & ~VT_BYREF);
    if (type & VT_ARRAY) return {type, elsewhere ? *variant.pparray : variant.parray};
    if (elsewhere) return {type, variant.byref};
    return {type, type == VT_DECIMAL ? static_cast<const void*>(&variant) : &variant.byref};
}

Kind BasicHost::kind(const Value& given)
{
    if (!given.place) return given.type & VT_ARRAY ? Kind::empty : Kind::left_out;
    if (given.type & VT_ARRAY) {
        const SAFEARRAY& array = array_of(given);
        if (element_count(array) == 0) return Kind::empty;
        return array.cDims > 2 ? Kind::other : Kind::cells;
    }
    switch (given.type) {
    case VT_I1:
    case VT_UI1:
    case VT_I2:
    case VT_UI2:
    case VT_I4:
    case VT_UI4:
    case VT_I8:
    case VT_UI8:
    case VT_INT:
    case VT_UINT:
    case VT_R4:
    case VT_R8:
    case VT_CY:
    case VT_DECIMAL: return Kind::number;
    case VT_BSTR: return units_of(given).empty() ? Kind::empty : Kind::text;
    case VT_EMPTY: return Kind::empty;
    case VT_ERROR:
        return *static_cast<const SCODE*>(given.place) == DISP_E_PARAMNOTFOUND ? Kind::left_out : Kind::error;
    default: return Kind::other;
    }
}

double BasicHost::number(const Value& given)
{
    double number = 0;
    DECIMAL decimal{};
    switch (given.type) {
    case VT_I1: return as_number<signed char>(given);
    case VT_UI1: return as_number<unsigned char>(given);
    case VT_I2: return as_number<SHORT>(given);
    case VT_UI2: return as_number<USHORT>(given);
    case VT_I4:
    case VT_INT: return as_number<LONG>(given);
    case VT_UI4:
    case VT_UINT: return as_number<ULONG>(given);
    case VT_I8: return as_number<LONGLONG>(given);
    case VT_UI8: return as_number<ULONGLONG>(given);
    case VT_R4: return as_number<float>(given);
    case VT_CY: VarR8FromCy(*static_cast<const CY*>(given.place), &number); return number;
    case VT_DECIMAL:
        decimal = *static_cast<const DECIMAL*>(given.place);
        VarR8FromDec(&decimal, &number);
        return number;
    default: return as_number<double>(given);
    }
}

std::string BasicHost::text(const Value& given) { return utf8(units_of(given)); }

cutwater_door::Cells<BasicValue> BasicHost::cells(const Value& given)
{
    const SAFEARRAY& array = array_of(given);
    const auto type = static_cast<VARTYPE>(given.type & ~VT_ARRAY);
    cutwater_door::Cells<Value> block;
    // The last index's bound comes first; elements lie with the first index running fastest.
    block.columns = array.rgsabound[0].cElements;
    block.rows = array.cDims == 2 ? array.rgsabound[1].cElements : 1;
    const auto* const data = static_cast<const char*>(array.pvData);
    for (std::size_t r = 0; r < block.rows; ++r)
        for (std::size_t c = 0; c < block.columns; ++c) {
            const void* const element = data + (r + c * block.rows) * array.cbElements;
            block.cells.push_back(type == VT_VARIANT ? view(*static_cast<const VARIANT*>(element))
                                                     : Value{type, element});
        }
    return block;
}

std::string BasicHost::what(const Value& given)
{
    if (given.type & VT_ARRAY) return "an array of more than two dimensions";
    switch (given.type) {
    case VT_BOOL: return "true or false";
    case VT_DATE: return "a date";
    case VT_NULL: return "Null";
    case VT_DISPATCH:
    case VT_UNKNOWN: return "an object";
    default: return "neither a number nor a text";
    }
}

void put_text(const std::string& text, VARIANT& to)
{
    const std::u16string units = utf16(text);
    const BSTR made = SysAllocStringLen(reinterpret_cast<const OLECHAR*>(units.data()),
                                        static_cast<UINT>(units.size()));
    if (!made) throw std::bad_alloc();
    VariantClear(&to);
    to.vt = VT_BSTR;
    to.bstrVal = made;
}

namespace {

void put_cell(const Cell& cell, VARIANT& to)
{
    if (cell.kind == Cell::Kind::text) return put_text(cell.text, to);
    VariantClear(&to);
    if (cell.kind == Cell::Kind::number) {
        to.vt = VT_R8;
        to.dblVal = cell.number;
    } else {
        to.vt = VT_ERROR;
        to.scode = cell_not_available;
    }
}

}  // namespace

void put_answer(const cutwater_door::Grid& grid, VARIANT& to)
{
    if (grid.cells.size() == 1) return put_cell(grid.cells.front(), to);
    SAFEARRAYBOUND bounds[] = {{static_cast<ULONG>(grid.rows), 1}, {static_cast<ULONG>(grid.columns), 1}};
    SAFEARRAY* const array = SafeArrayCreate(VT_VARIANT, 2, bounds);
    if (!array) throw std::bad_alloc();
    VARIANT whole{};
    whole.vt = VT_ARRAY | VT_VARIANT;
    whole.parray = array;
    try {
        auto* const cells = static_cast<VARIANT*>(array->pvData);  // empty, all of them
        for (std::size_t r = 0; r < grid.rows; ++r)
            for (std::size_t c = 0; c < grid.columns; ++c) put_cell(grid.at(r, c), cells[r + c * grid.rows]);
    } catch (...) {
        VariantClear(&whole);
        throw;
    }
    VariantClear(&to);
    to = whole;
}

}  // namespace cutwater::excel

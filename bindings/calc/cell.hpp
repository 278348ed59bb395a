// Between a worksheet's cell and the flat C API. Every generated method is one call of cell() or cells().
#pragma once

#include <com/sun/star/uno/Any.hxx>
#include <com/sun/star/uno/Sequence.hxx>

#include <cstdint>
#include <initializer_list>
#include <vector>

namespace cutwater::calc {

using com::sun::star::uno::Any;
using Row = com::sun::star::uno::Sequence<Any>;
using Table = com::sun::star::uno::Sequence<Row>;

/// Where the library keeps these functions.
std::vector<std::int32_t> positions_of(std::initializer_list<const char*> names);

/// A function with one result, a number or a word. A refusal is thrown as IllegalArgumentException, which a cell shows as
/// an error that ISERROR and IFERROR see.
Any cell(std::int32_t function, std::initializer_list<const Any*> arguments);

/// A function with several results, or with a series: side by side, a series down its column, #N/A in the gaps.
Table cells(std::int32_t function, std::initializer_list<const Any*> arguments);

// What is not one formula; src/generate/calc_component_library.cpp says what each does.
Any refusal(const Any& name, const Row& arguments);
Any working(const Any& name, const Row& arguments);
Any working_line(const Any& line, const Any& name, const Row& arguments);
Any solve_for(const Any& name, const Any& unknown, const Any& result, const Any& target, const Row& arguments);
Table solutions(const Any& name, const Any& unknown, const Any& result, const Any& target, const Row& arguments);
Table uncertainty(const Any& name, const Any& result, const Any& uncertainties, const Row& arguments);
Table uncertainty_shares(const Any& name, const Any& result, const Any& uncertainties, const Row& arguments);
Table sensitivity(const Any& name, const Any& result, const Row& arguments);
Any convert_unit(const Any& value, const Any& from, const Any& to);
Any quantity(const Any& value, const Any& unit);
Any version();

}  // namespace cutwater::calc

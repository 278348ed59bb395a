// Between a worksheet's cell and the flat C API. Every generated method is one of these calls.
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

/// A function with one result, a number or a word. A refusal is thrown as IllegalArgumentException, which a cell shows
/// as an error that ISERROR and IFERROR see.
Any cell(std::int32_t function, std::initializer_list<const Any*> arguments);

/// A function with several results, or with a series: side by side, a series down its column, #N/A in the gaps.
Table cells(std::int32_t function, std::initializer_list<const Any*> arguments);

/// The calls that are not one formula, likewise; rest: the arguments of the function that is asked about.
Any question_cell(std::int32_t question, std::initializer_list<const Any*> arguments, const Row& rest);
Table question_cells(std::int32_t question, std::initializer_list<const Any*> arguments, const Row& rest);

}  // namespace cutwater::calc

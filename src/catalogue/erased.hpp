// A record as the catalogue lists it, with every way to call its formula. Instantiated once, in its family's
// translation unit.
#pragma once

#include "catalogue/direct.hpp"
#include "catalogue/erased_call.hpp"
#include "catalogue/rows.hpp"

namespace cutwater::binding {

template <const auto& R>
inline constexpr FunctionInfo info{{text_of<R>}, &erased_call<R>, rows_of<R>(), flat_of<R>};

}  // namespace cutwater::binding

namespace cutwater {

/// `constexpr const FunctionInfo* functions[] = {entry<one_record>, …};` in a family's translation unit.
template <const auto& R>
inline constexpr const FunctionInfo* entry = &binding::info<R>;

}  // namespace cutwater

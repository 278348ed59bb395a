// What the generated bodies of the flat functions call.
#pragma once

#include "catalogue/families.hpp"

namespace cutwater::capi {

/// The function at that place in its family. Its parameters are those of the record: both were made from it.
template <class... P>
cutwater_status flat(const Family& family, std::size_t place, P... parameters)
{
    return static_cast<const Flat<cutwater_status(P...)>*>(family.functions[place]->flat)->function(parameters...);
}

/// The array form. columns, shared and words have one entry an input.
cutwater_status flat_rows(const FunctionInfo& f, std::size_t rows, const cutwater_column* columns, const Given* shared,
                          const char* const* words, const cutwater_result_column* results,
                          cutwater_rows_report* report) noexcept;

}  // namespace cutwater::capi

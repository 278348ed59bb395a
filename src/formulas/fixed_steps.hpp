// A number of steps that is the same for every row of an array.
#pragma once

#include <cstddef>
#include <utility>

namespace cutwater::formulas {

/// Calls step() Count times, written out: a loop that the compiler leaves one keeps rows of an array out of vectors.
template <std::size_t Count, class Step>
[[gnu::always_inline]] inline void fixed_steps(Step&& step)
{
    [&]<std::size_t... I>(std::index_sequence<I...>)
        __attribute__((always_inline)) { ((static_cast<void>(I), step()), ...); }(std::make_index_sequence<Count>());
}

}  // namespace cutwater::formulas

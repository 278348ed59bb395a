// A place in a printed table, found by one comparison an edge and without a branch: a search that stops where it has
// found keeps a row of an array out of vectors.
#pragma once

#include <cstddef>
#include <utility>

namespace cutwater {

/// How many of N rising edges lie below x.
template <std::size_t N>
inline std::size_t passed(const double* edges, double x)
{
    return [&]<std::size_t... I>(std::index_sequence<I...>) {
        return (std::size_t{edges[I] < x} + ...);
    }(std::make_index_sequence<N>());
}

/// The same of edges that stand in a table's lines.
template <std::size_t N, class Line>
inline std::size_t passed(const Line* lines, double Line::* edge, double x)
{
    return [&]<std::size_t... I>(std::index_sequence<I...>) {
        return (std::size_t{lines[I].*edge < x} + ...);
    }(std::make_index_sequence<N>());
}

/// How many of N rising edges lie at x or below.
template <std::size_t N>
inline std::size_t reached(const double* edges, double x)
{
    return [&]<std::size_t... I>(std::index_sequence<I...>) {
        return (std::size_t{edges[I] <= x} + ...);
    }(std::make_index_sequence<N>());
}

/// Whether x is one of N numbers.
template <std::size_t N>
inline bool is_one_of(const double* numbers, double x)
{
    return [&]<std::size_t... I>(std::index_sequence<I...>) {
        return ((numbers[I] == x) | ...);
    }(std::make_index_sequence<N>());
}

}  // namespace cutwater

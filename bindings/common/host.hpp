// What a door tells of its host's values. A door with cells, vectors or lists writes one such adapter; arguments,
// questions and results then come from here.
//
//     struct Host {
//         using Value = …;
//         static Kind kind(const Value &);
//         static double number(const Value &);              // of Kind::number
//         static std::string text(const Value &);           // of Kind::text, UTF-8
//         static Cells<Value> cells(const Value &);         // of Kind::cells
//         static std::string what(const Value &);           // of Kind::other: "true or false"
//         static constexpr bool by_element = …;             // whether many numbers for one quantity are computed one
//         by one static std::optional<Numbers> numbers(const Value &);   // where Kind::cells may be plain numbers,
//         taken as they lie
//     };
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace cutwater_door {

enum class Kind { left_out, empty, number, text, cells, error, other };

/// A range, a list, a cell array, row by row.
template <class Value>
struct Cells {
    std::vector<Value> cells;
    std::size_t rows = 0;
    std::size_t columns = 0;
};

/// Plain numbers that stay where they are.
struct Numbers {
    const double* data = nullptr;
    std::size_t rows = 0;
    std::size_t columns = 0;
};

/// The one value of a range of one cell, which unlike a plain reference may tell an empty cell from 0.
template <class Host>
typename Host::Value single(const typename Host::Value& given)
{
    if (Host::kind(given) != Kind::cells) return given;
    auto block = Host::cells(given);
    return block.cells.size() == 1 ? block.cells.front() : given;
}

/// Nothing was given: left out, an empty cell, an empty text.
template <class Host>
bool nothing(const typename Host::Value& given)
{
    const Kind kind = Host::kind(given);
    return kind == Kind::left_out || kind == Kind::empty || (kind == Kind::text && Host::text(given).empty());
}

/// What a value is, for a refusal's sentence.
template <class Host>
std::string what(const typename Host::Value& given)
{
    switch (Host::kind(given)) {
    case Kind::left_out:
    case Kind::empty: return "nothing";
    case Kind::number: return "a number";
    case Kind::text: return "a text";
    case Kind::cells: return "several cells";
    case Kind::error: return "an error of the sheet's own";
    case Kind::other: break;
    }
    return Host::what(given);
}

}  // namespace cutwater_door

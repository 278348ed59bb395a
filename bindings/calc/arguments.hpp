// A call's arguments, from what Calc or Basic hands over to what the C API takes.
#pragma once

#include "cell.hpp"

#include <cutwater/library.h>

#include <optional>
#include <span>
#include <string>

namespace cutwater::calc {

class Arguments {
public:
    /// Not CUTWATER_OK when something can be no argument at all; the library judges the rest.
    cutwater_status read(std::int32_t function, std::span<const Any* const> given, cutwater_refusal& refusal);

    const std::vector<cutwater_value>& values() const { return values_; }

private:
    struct Held {
        std::string text;
        std::vector<double> series;
    };
    cutwater_status read_one(std::size_t input, const Any& given, cutwater_refusal& refusal);
    cutwater_status read_point(std::size_t input, const Any& given, std::vector<double>& series, cutwater_refusal& refusal);

    std::int32_t function_ = -1;
    std::vector<cutwater_value> values_;
    std::vector<Held> held_;
};

/// A cell's number; nothing for texts, empty cells, and true and false.
std::optional<double> number_in(const Any& given);

/// A cell's text as UTF-8; nothing for what is no text.
std::optional<std::string> text_in(const Any& given);

/// The cells of a range or of an array of Basic's, row by row; of one cell, that cell. Nothing for an array of unknown type.
std::optional<std::vector<Any>> cells_in(const Any& given);

/// The one cell of a one-cell range, which unlike a plain reference tells an empty cell from 0.
Any unwrapped(const Any& given);

/// Nothing was given: an empty cell, an empty text, an argument left out.
bool left_out(const Any& given);

cutwater_status refuse(cutwater_status status, const std::string& sentence, cutwater_refusal& refusal);

}  // namespace cutwater::calc

// A call's arguments, from a host's values to what the C API takes.
#pragma once

#include "common/functions.hpp"
#include "common/host.hpp"

#include <span>

namespace cutwater_door {

template <class Host>
class Arguments {
public:
    using Value = typename Host::Value;

    /// Not CUTWATER_OK when something can be no argument at all; the library judges the rest.
    cutwater_status read(const Function& function, std::span<const Value> given, cutwater_refusal& refusal)
    {
        function_ = &function;
        values_.assign(given.size(), cutwater_value{});
        held_.clear();
        held_.resize(given.size());
        if (given.size() > function.inputs.size()) return CUTWATER_OK;  // the library counts
        for (std::size_t i = 0; i < given.size(); ++i)
            if (const auto status = read_one(i, given[i], refusal); status != CUTWATER_OK) return status;
        return CUTWATER_OK;
    }

    const std::vector<cutwater_value>& values() const { return values_; }

    /// Whether this argument gives a quantity many numbers, to be computed one by one; then values() holds them as a
    /// series.
    bool by_element(std::size_t input) const { return held_[input].column; }
    std::size_t rows(std::size_t input) const { return held_[input].rows; }
    std::size_t columns(std::size_t input) const { return held_[input].columns; }

private:
    struct Held {
        Value value{};  // keeps alive what numbers point into
        std::string text;
        std::vector<double> series;
        std::size_t rows = 0;
        std::size_t columns = 0;
        bool column = false;
    };

    cutwater_status read_one(std::size_t input, const Value& given, cutwater_refusal& refusal)
    {
        if (Host::kind(given) == Kind::cells) return read_many(input, given, refusal);
        return read_single(input, given, refusal);
    }

    cutwater_status read_single(std::size_t input, const Value& given, cutwater_refusal& refusal)
    {
        if (nothing<Host>(given)) return CUTWATER_OK;
        cutwater_value& value = values_[input];
        const bool wants_series = function_->inputs[input] == CUTWATER_SERIES;
        switch (Host::kind(given)) {
        case Kind::number:
            if (wants_series) return one_point(input, given, refusal);
            value.kind = CUTWATER_NUMBER;
            value.number = Host::number(given);
            return CUTWATER_OK;
        case Kind::text:
            if (wants_series) return one_point(input, given, refusal);
            return keep_text(input, Host::text(given), refusal);
        default: return refuse_kind(input, -1, given, refusal);
        }
    }

    /// In a sheet a series may come down to one cell; the library says how many points it needs.
    cutwater_status one_point(std::size_t input, const Value& given, cutwater_refusal& refusal)
    {
        if (const auto status = read_point(input, given, refusal); status != CUTWATER_OK) return status;
        return give_series(input, 1, 1);
    }

    cutwater_status keep_text(std::size_t input, std::string text, cutwater_refusal& refusal)
    {
        if (text.find('\0') != std::string::npos)
            return blame(CUTWATER_BAD_TEXT, input, -1, " has a null character in it.", refusal);
        held_[input].text = std::move(text);
        values_[input].kind = CUTWATER_TEXT;
        values_[input].text = held_[input].text.c_str();
        return CUTWATER_OK;
    }

    cutwater_status read_many(std::size_t input, const Value& given, cutwater_refusal& refusal)
    {
        const bool wants_series = function_->inputs[input] == CUTWATER_SERIES;
        if constexpr (requires { Host::numbers(given); })
            if (const auto numbers = Host::numbers(given)) return take_numbers(input, given, *numbers, refusal);
        auto block = Host::cells(given);
        const bool one = block.cells.size() == 1;
        const bool shaped = block.rows > 1 && block.columns > 1;
        while (!block.cells.empty() && nothing<Host>(block.cells.back()))
            block.cells.pop_back();  // room kept for more points
        if (block.cells.empty()) return CUTWATER_OK;
        if (one && !wants_series) return read_single(input, block.cells.front(), refusal);
        const bool column = Host::by_element && function_->inputs[input] == CUTWATER_NUMBER;
        if (!wants_series && !column) {
            values_[input].kind = CUTWATER_SERIES;  // refused in the library's words
            return CUTWATER_OK;
        }
        if (wants_series && shaped) return refuse_block(input, block.rows, block.columns, refusal);
        for (const Value& point : block.cells)
            if (const auto status = read_point(input, point, refusal); status != CUTWATER_OK) return status;
        held_[input].column = column;
        return give_series(input, block.rows, block.columns);
    }

    cutwater_status take_numbers(std::size_t input, const Value& given, const Numbers& numbers,
                                 cutwater_refusal& refusal)
    {
        const std::size_t length = numbers.rows * numbers.columns;
        Held& held = held_[input];
        held.value = given;
        if (function_->inputs[input] == CUTWATER_NUMBER && Host::by_element) {
            held.column = true;
        } else if (function_->inputs[input] == CUTWATER_SERIES && numbers.rows > 1 && numbers.columns > 1) {
            return refuse_block(input, numbers.rows, numbers.columns, refusal);
        }
        held.rows = numbers.rows;
        held.columns = numbers.columns;
        values_[input] = {CUTWATER_SERIES, 0, nullptr, numbers.data, length, 1};
        return CUTWATER_OK;
    }

    cutwater_status give_series(std::size_t input, std::size_t rows, std::size_t columns)
    {
        Held& held = held_[input];
        held.rows = rows;
        held.columns = columns;
        values_[input] = {CUTWATER_SERIES, 0, nullptr, held.series.data(), held.series.size(), 1};
        return CUTWATER_OK;
    }

    cutwater_status read_point(std::size_t input, const Value& given, cutwater_refusal& refusal)
    {
        std::vector<double>& series = held_[input].series;
        const auto element = static_cast<std::int64_t>(series.size());
        if (nothing<Host>(given))
            return blame(CUTWATER_BAD_SERIES, input, element, ": the cell is empty; only the last cells may be.",
                         refusal);
        double number = 0;
        switch (Host::kind(given)) {
        case Kind::number: number = Host::number(given); break;
        case Kind::text:
            if (const auto status = read_text(input, element, Host::text(given), number, refusal);
                status != CUTWATER_OK)
                return status;
            break;
        default: return refuse_kind(input, element, given, refusal);
        }
        series.push_back(number);
        return CUTWATER_OK;
    }

    cutwater_status read_text(std::size_t input, std::int64_t element, const std::string& text, double& number,
                              cutwater_refusal& refusal)
    {
        if (text.find('\0') != std::string::npos)
            return blame(CUTWATER_BAD_TEXT, input, element, " has a null character in it.", refusal);
        const auto status = cutwater_read(function_->position, static_cast<std::int32_t>(input), text.c_str(), &number,
                                          &refusal);
        if (status == CUTWATER_OK) return status;
        // The library blames the input; say which point of it.
        const std::string lead = place_of(*function_, input) + ":";
        const std::string sentence(refusal.message);
        if (sentence.compare(0, lead.size(), lead) == 0)
            return blame(status, input, element, sentence.substr(lead.size() - 1), refusal);
        refuse(status, sentence, refusal);
        refusal.argument = static_cast<std::int32_t>(input);
        refusal.element = element;
        return status;
    }

    cutwater_status refuse_kind(std::size_t input, std::int64_t element, const Value& given, cutwater_refusal& refusal)
    {
        return blame(CUTWATER_WRONG_KIND, input, element,
                     (element < 0 ? " was given " : " is ") + what<Host>(given) + ".", refusal);
    }

    cutwater_status refuse_block(std::size_t input, std::size_t rows, std::size_t columns, cutwater_refusal& refusal)
    {
        return blame(CUTWATER_BAD_SERIES, input, -1,
                     " is a block of " + std::to_string(rows) + " rows and " + std::to_string(columns) +
                         " columns; a series is one row or one column.",
                     refusal);
    }

    /// A refusal of the door's own names the argument as the library's do.
    cutwater_status blame(cutwater_status status, std::size_t input, std::int64_t element, const std::string& tail,
                          cutwater_refusal& refusal)
    {
        refuse(status, place_of(*function_, input, element) + tail, refusal);
        refusal.argument = static_cast<std::int32_t>(input);
        refusal.element = element;
        const std::string_view name = cutwater_input_name(function_->position, refusal.argument);
        name.copy(refusal.name, sizeof refusal.name - 1);
        return status;
    }

    const Function* function_ = nullptr;
    std::vector<cutwater_value> values_;
    std::vector<Held> held_;
};

}  // namespace cutwater_door

// The functions that speak of functions.
#include "ask.hpp"

#include <algorithm>

namespace cutwater::calc {

namespace {

/// Cells write names in capitals.
std::string function_name(const Any& given)
{
    std::string name = text_in(unwrapped(given)).value_or("");
    std::transform(name.begin(), name.end(), name.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return name;
}

/// The number of a function; refuses what is no name.
std::int32_t function_called(const Any& given)
{
    const std::string name = function_name(given);
    const std::int32_t function = cutwater_find(name.c_str());
    if (function < 0) throw_refused(name.empty() ? "The first argument must be a function's name." : "There is no function \"" + name + "\".");
    return function;
}

std::vector<const Any*> pointers(const Row& row)
{
    std::vector<const Any*> made;
    for (sal_Int32 i = 0; i < row.getLength(); ++i) made.push_back(&row[i]);
    return made;
}

/// The sentence for a conversion that cannot be; empty, and the result, for one that can.
std::string convert(const Any& value, const Any& from, const Any& to, double& result)
{
    const auto number = number_in(unwrapped(value));
    const auto from_unit = text_in(unwrapped(from));
    const auto to_unit = text_in(unwrapped(to));
    if (!number) return "convert_unit: value must be a number; its unit is given apart.";
    if (!from_unit || from_unit->empty()) return "convert_unit: from must be a unit, as a text.";
    if (!to_unit || to_unit->empty()) return "convert_unit: to must be a unit, as a text.";
    cutwater_refusal refusal{};
    return cutwater_convert(*number, from_unit->c_str(), to_unit->c_str(), &result, &refusal) == CUTWATER_OK ? "" : refusal.message;
}

}  // namespace

Any refusal(const Any& name, const Row& arguments)
{
    if (function_name(name) == "convert_unit") {
        if (arguments.getLength() != 3) return Any(text_for_cell("convert_unit takes 3 inputs; " + std::to_string(arguments.getLength()) + " were given."));
        double result = 0;
        return Any(text_for_cell(convert(arguments[0], arguments[1], arguments[2], result)));
    }
    Answer answer;
    const auto status = ask(function_called(name), pointers(arguments), answer);
    return Any(text_for_cell(status == CUTWATER_OK ? "" : answer.refusal.message));
}

Any convert_unit(const Any& value, const Any& from, const Any& to)
{
    double result = 0;
    if (const std::string sentence = convert(value, from, to, result); !sentence.empty()) throw_refused(sentence);
    return Any(result);
}

Any version() { return Any(text_for_cell(cutwater_version())); }

}  // namespace cutwater::calc

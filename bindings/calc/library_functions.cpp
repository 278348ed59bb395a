// The functions that speak of functions.
#include "ask.hpp"

namespace cutwater::calc {

namespace {

std::string miscounted(const std::string& name, int count, const Row& arguments)
{
    return name + " takes " + std::to_string(count) + " inputs; " + std::to_string(arguments.getLength()) + " were given.";
}

/// The library's sentence about a unit does not name the function that asked.
std::string prefixed(const std::string& name, const cutwater_refusal& refusal) { return name + ": " + refusal.message; }

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

/// The same for a cell that is to be a number in a unit.
std::string read(const Any& value, const Any& unit, double& result)
{
    const Any one = unwrapped(value);
    const auto wanted = text_in(unwrapped(unit));
    if (!wanted) return "quantity: unit must be a unit, as a text.";
    cutwater_refusal refusal{};
    if (const auto number = number_in(one)) {
        double judged = 0;  // of a number only the unit is in question: whether -5 K is permitted is for the function that takes it
        const bool known = cutwater_quantity("0", wanted->c_str(), &judged, &refusal) == CUTWATER_OK;
        result = *number;
        return known ? "" : prefixed("quantity", refusal);
    }
    if (left_out(one)) return "quantity: value is not given.";
    const auto text = text_in(one);
    if (!text) return "quantity: value must be a number, or a text with a unit.";
    return cutwater_quantity(text->c_str(), wanted->c_str(), &result, &refusal) == CUTWATER_OK ? "" : prefixed("quantity", refusal);
}

}  // namespace

Any refusal(const Any& name, const Row& arguments)
{
    const std::string called = text_in(unwrapped(name)).value_or("");
    double result = 0;
    if (called == "CONVERT_UNIT" || called == "convert_unit")
        return Any(text_for_cell(arguments.getLength() == 3 ? convert(arguments[0], arguments[1], arguments[2], result) : miscounted("convert_unit", 3, arguments)));
    if (called == "QUANTITY" || called == "quantity")
        return Any(text_for_cell(arguments.getLength() == 2 ? read(arguments[0], arguments[1], result) : miscounted("quantity", 2, arguments)));
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

Any quantity(const Any& value, const Any& unit)
{
    double result = 0;
    if (const std::string sentence = read(value, unit, result); !sentence.empty()) throw_refused(sentence);
    return Any(result);
}

Any version() { return Any(text_for_cell(cutwater_version())); }

}  // namespace cutwater::calc

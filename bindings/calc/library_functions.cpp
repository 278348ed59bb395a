// The functions that speak of functions.
#include "ask.hpp"

namespace cutwater::calc {

namespace {

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
    const std::string called = text_in(unwrapped(name)).value_or("");
    if (called == "CONVERT_UNIT" || called == "convert_unit") {
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

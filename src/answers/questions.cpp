#include "answers/questions.hpp"

namespace cutwater {
namespace {

constexpr QuestionArgument function{"function", Asked::function, "name of a function, such as \"npsh_available\""};
constexpr QuestionArgument result{"result", Asked::result,
                                  "which of its results, by name; nothing for the first that is a number", true};
constexpr QuestionArgument unknown{"unknown", Asked::input, "name of the input to find, with or without its unit"};
constexpr QuestionArgument target{"target", Asked::value,
                                  "what the result shall come to: a number in its unit, or a text with a unit"};
constexpr QuestionArgument arguments{"arguments", Asked::arguments, "the arguments of the function, in its own order"};
constexpr QuestionArgument around{
    "arguments", Asked::arguments,
    "the arguments of the function, in its own order; what stands at the unknown's place does not matter"};
constexpr QuestionArgument spread{
    "uncertainties", Asked::uncertainties,
    "a row, column or list with one entry an argument: its standard uncertainty, a number in its "
    "unit or a text with a unit; nothing or 0 for one that is exact. One entry more is the relation's own: nothing for "
    "the scatter that its page states, 0 for none"};
constexpr QuestionArgument line{"line", Asked::number, "number of the line, from 1"};
constexpr QuestionArgument value{"value", Asked::number, "the number to convert"};
constexpr QuestionArgument from_unit{"from_unit", Asked::unit, "its unit, such as \"US gpm\""};
constexpr QuestionArgument to_unit{"to_unit", Asked::unit, "the unit wanted, such as \"m3/h\""};
constexpr QuestionArgument amount{"value", Asked::value, "a number, or a text with a unit of the same quantity"};
constexpr QuestionArgument unit{"unit", Asked::unit, "the unit wanted, such as \"m3/h\"; \"-\" for a plain number"};
constexpr QuestionArgument words{"words", Asked::text,
                                 "words of the trade, in any order: \"suction safe\", \"NPSHR\", \"dead head\""};

constexpr QuestionArgument of_call[] = {function, arguments};
constexpr QuestionArgument of_line[] = {line, function, arguments};
constexpr QuestionArgument of_search[] = {function, unknown, result, target, around};
constexpr QuestionArgument of_uncertainty[] = {function, result, spread, arguments};
constexpr QuestionArgument of_sensitivity[] = {function, result, arguments};
constexpr QuestionArgument of_conversion[] = {value, from_unit, to_unit};
constexpr QuestionArgument of_quantity[] = {amount, unit};
constexpr QuestionArgument of_finding[] = {words};

constexpr QuestionResult sentence[] = {
    {"refusal", true, "why the call is refused and what would be accepted; an empty text when it is answered"}};
constexpr QuestionResult text[] = {
    {"working", true,
     "equation, numbers put in, steps, results, limits, source and cautions; for a call that is refused, why"}};
constexpr QuestionResult one_line[] = {{"text", true, "that line; an empty text past the last"}};
constexpr QuestionResult root[] = {{"found", false, "in the unknown's unit"}};
constexpr QuestionResult roots[] = {{"found", false, "all the values found, rising, in the unknown's unit"}};
constexpr QuestionResult spread_of[] = {
    {"value", false, "the result for the arguments as given"},
    {"standard_uncertainty", false, "to first order, JCGM 100; of the trials, JCGM 101, where that will not do"},
    {"low", false, "lower end of the 95 % interval"},
    {"high", false, "upper end of the 95 % interval"},
    {"remark", true, "how they were found, and why"}};
constexpr QuestionResult shares[] = {
    {"shares", false,
     "part of the result's variance that comes from each argument, to first order, and last from the relation's own "
     "scatter where it has one; they add up to 1"}};
constexpr QuestionResult sensitivities[] = {
    {"input", true, "name of an input that is a number or a series, what matters most first"},
    {"relative_change", false,
     "change of the result over the change of the input, both relative; none where one of them is 0"},
    {"slope", false, "change of the result per unit of the input; none for a series"}};
constexpr QuestionResult converted[] = {{"converted", false, "the number in the unit wanted"}};
constexpr QuestionResult number[] = {{"number", false, "in the unit wanted; a bare number has it already"}};
constexpr QuestionResult found[] = {{"function", true, "name of a function, best first"},
                                    {"meaning", true, "what it answers"}};
constexpr QuestionResult version[] = {{"version", true, "as 1.2.3"}};

constexpr QuestionInfo list[] = {
    {"refusal", "cutwater_call",
     "The sentence that says why a function refuses these arguments, and what it would accept", of_call, sentence,
     Layout::one, "REFUSAL(\"npsh_available\"; \"1.013 barg\"; 0.0234; 998.2; 2; 0.5)"},
    {"working", "cutwater_working", "The whole calculation of a call as a text", of_call, text, Layout::one,
     "WORKING(\"npsh_available\"; 1.013; 0.0234; 998.2; 2; 0.5)"},
    {"working_line", "cutwater_working", "One line of the working of a call, to print it line by line", of_line,
     one_line, Layout::one, "WORKING_LINE(1; \"npsh_available\"; 1.013; 0.0234; 998.2; 2; 0.5)"},
    {"solve_for", "cutwater_solve_for",
     "The value of one input for which a result comes to a target; refused when there is none, or several", of_search,
     root, Layout::one, "SOLVE_FOR(\"npsh_available\"; \"liquid_level\"; ; 5; 1.013; 0.0234; 998.2; ; 0.5)"},
    {"solutions", "cutwater_solutions", "All values of one input for which a result comes to a target", of_search,
     roots, Layout::column, "SOLUTIONS(\"velocity_head\"; \"velocity\"; ; 0.5)"},
    {"uncertainty", "cutwater_uncertainty",
     "A result with its standard uncertainty and 95 % interval, from those of the arguments", of_uncertainty, spread_of,
     Layout::row, ""},
    {"uncertainty_shares", "cutwater_uncertainty", "What part of a result's variance comes from each argument",
     of_uncertainty, shares, Layout::column, ""},
    {"sensitivity", "cutwater_sensitivity", "How much each input matters to a result, what matters most first",
     of_sensitivity, sensitivities, Layout::table, "SENSITIVITY(\"npsh_available\"; ; 1.013; 0.0234; 998.2; 2; 0.5)"},
    {"convert_unit", "cutwater_convert_unit",
     "A number converted between two units of one quantity; gauge and absolute pressure are two quantities",
     of_conversion, converted, Layout::one, "CONVERT_UNIT(440; \"US gpm\"; \"m3/h\")"},
    {"quantity", "cutwater_quantity",
     "A value as a number in a unit: a text brings its own, a bare number has it already", of_quantity, number,
     Layout::one, "QUANTITY(\"440 US gpm\"; \"m3/h\")"},
    {"find_function", "cutwater_find_function", "Functions that words of the trade point to, best first", of_finding,
     found, Layout::table, "FIND_FUNCTION(\"suction safe\")"},
    {"cutwater_version",
     "cutwater_version",
     "The version of the library",
     {},
     version,
     Layout::one,
     "CUTWATER_VERSION()"},
};

}  // namespace

std::span<const QuestionInfo> questions() noexcept { return list; }

}  // namespace cutwater

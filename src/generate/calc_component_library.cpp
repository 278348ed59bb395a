// The Calc component's methods that are not one formula; bindings/calc/{library_functions,answers}.cpp compute them.
#include "generate/calc_component.hpp"

namespace cutwater::generate {

std::vector<CalcMethod> calc_library_functions()
{
    const CalcParameter function{"name", "function", "Name of a function, such as \"npsh_available\"."};
    const CalcParameter result{"result", "result",
                               "Which of its results, by name; an empty text or nothing for the first that is a number."};
    const CalcParameter unknown{"unknown", "unknown", "Name of the input to find."};
    const CalcParameter target{"target", "target", "What the result shall come to: a number in its unit, or a text with a unit."};
    const CalcParameter arguments{"arguments", "arguments", "The arguments of the function, in its own order.", true};
    const CalcParameter around{"arguments", "arguments",
                               "The arguments of the function, in its own order; what stands at the unknown's place does not matter.", true};
    const CalcParameter spread{"uncertainties", "uncertainties",
                               "A row or column with one cell an argument: its standard uncertainty, a number in its unit or a text "
                               "with a unit; an empty cell or 0 for one that is exact."};
    return {
        {"REFUSAL",
         "Cutwater. The sentence that says why a function refuses these arguments, and what it would accept; an empty text "
         "when it accepts them.",
         {function, arguments}, false, "return refusal(a0, a1);"},
        {"WORKING",
         "Cutwater. The working of a call as one text: equation, numbers put in, results, limits, source and cautions; for a "
         "call that is refused, why.",
         {function, arguments}, false, "return working(a0, a1);"},
        {"WORKING_LINE", "Cutwater. One line of the working of a call, to print it line by line; an empty text past its end.",
         {{"line", "line", "Number of the line, from 1."}, function, arguments}, false, "return working_line(a0, a1, a2);"},
        {"SOLVE_FOR",
         "Cutwater. The value of one input for which a result comes to a target, in that input's unit. An error when there is "
         "none, or more than one.",
         {function, unknown, result, target, around}, false, "return solve_for(a0, a1, a2, a3, a4);"},
        {"SOLUTIONS", "Cutwater. All values of one input for which a result comes to a target, rising down a column.",
         {function, unknown, result, target, around}, true, "return solutions(a0, a1, a2, a3, a4);"},
        {"UNCERTAINTY",
         "Cutwater. Gives side by side a result, its standard uncertainty, the ends of its 95 % interval, and a remark on how they "
         "were found: to first order (JCGM 100), or by Monte Carlo (JCGM 101) where that will not do.",
         {function, result, spread, arguments}, true, "return uncertainty(a0, a1, a2, a3);"},
        {"UNCERTAINTY_SHARES",
         "Cutwater. What part of the result's variance comes from each argument, to first order, down a column in the arguments' order.",
         {function, result, spread, arguments}, true, "return uncertainty_shares(a0, a1, a2, a3);"},
        {"SENSITIVITY",
         "Cutwater. One row an input, what matters most first: its name, the result's relative change per relative change of it, and "
         "the result's change per unit of it. #N/A where that has no meaning.",
         {function, result, arguments}, true, "return sensitivity(a0, a1, a2);"},
        {"CONVERT_UNIT",
         "Cutwater. A number converted between two units of one quantity. Gauge and absolute pressure are two quantities.",
         {{"value", "value", "The number to convert."},
          {"from", "from", "Its unit, such as \"US gpm\"."},
          {"to", "to", "The unit wanted, such as \"m3/h\"."}},
         false, "return convert_unit(a0, a1, a2);"},
        {"QUANTITY",
         "Cutwater. A cell as a number in a unit: a text brings its own (440 US gpm), a bare number has it already.",
         {{"value", "value", "A number, or a text with a unit of the same quantity."},
          {"unit", "unit", "The unit wanted, such as \"m3/h\"."}},
         false, "return quantity(a0, a1);"},
        {"CUTWATER_VERSION", "Cutwater. The version of the library that computes in this workbook.", {}, false, "return version();"},
    };
}

}  // namespace cutwater::generate

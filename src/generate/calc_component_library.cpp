// The Calc component's methods that are not one formula; bindings/calc/library_functions.cpp computes them.
#include "generate/calc_component.hpp"

namespace cutwater::generate {

std::vector<CalcMethod> calc_library_functions()
{
    const CalcParameter function{"name", "function", "Name of a function, such as \"npsh_available\"."};
    const CalcParameter arguments{"arguments", "arguments", "The same arguments, in the same order, as the function is given.", true};
    return {
        {"REFUSAL",
         "Cutwater. The sentence that says why a function refuses these arguments, and what it would accept; an empty text "
         "when it accepts them.",
         {function, arguments}, false, "return refusal(a0, a1);"},
        {"CONVERT_UNIT",
         "Cutwater. A number converted between two units of one quantity. Gauge and absolute pressure are two quantities.",
         {{"value", "value", "The number to convert."},
          {"from", "from", "Its unit, such as \"US gpm\"."},
          {"to", "to", "The unit wanted, such as \"m3/h\"."}},
         false, "return convert_unit(a0, a1, a2);"},
        {"CUTWATER_VERSION", "Cutwater. The version of the library that computes in this workbook.", {}, false, "return version();"},
    };
}

}  // namespace cutwater::generate

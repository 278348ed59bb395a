// For the tests: every flat C function and every typed C++ function called from the same list of values, so that the
// golden files run through both.
#include "generate/product.hpp"

namespace cutwater::generate {
namespace {

std::string flat_case(const FunctionInfo& f, std::size_t position)
{
    std::string arguments;
    for (std::size_t i = 0; i < f.inputs.size(); ++i) switch (f.inputs[i].kind) {
        case Kind::quantity: put(arguments, "in[{}].number, ", i); break;
        case Kind::choice: put(arguments, "in[{}].text, ", i); break;
        case Kind::series: put(arguments, "in[{0}].series, in[{0}].length, ", i); break;
        }
    for (std::size_t i = 0; i < f.results.size(); ++i) switch (f.results[i].kind) {
        case Kind::quantity: put(arguments, "GIVEN(out[{}], number), ", i); break;
        case Kind::choice: put(arguments, "GIVEN(out[{}], text), ", i); break;
        case Kind::series: put(arguments, "out[{0}].series, out[{0}].capacity, GIVEN(out[{0}], length), ", i); break;
        }
    return formatted("    case {}: return cutwater_{}({}refusal);\n", position, f.name, arguments);
}

std::string typed_unit(const QuantityInfo& quantity, const UnitInfo& unit)
{
    return formatted("unit<{}>(\"{}\")", quantity.type, unit.symbol);
}

std::string typed_case(const FunctionInfo& f, std::size_t position)
{
    std::string arguments;
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        const InputInfo& in = f.inputs[i];
        arguments += i ? ", " : "";
        switch (in.kind) {
        case Kind::quantity: put(arguments, "{}(in[{}].number)", typed_unit(*in.quantity, *in.unit), i); break;
        case Kind::choice: put(arguments, "in[{}].text", i); break;
        case Kind::series: put(arguments, "series(in[{}], {})", i, typed_unit(*in.quantity, *in.unit)); break;
        }
    }
    std::string text = formatted("    case {}: {{\n        const auto r = cutwater::{}({});\n", position, f.name,
                                 arguments);
    for (std::size_t i = 0; i < f.results.size(); ++i) {
        const ResultInfo& out = f.results[i];
        const std::string value = f.results.size() > 1 ? formatted("r.{}", out.name) : "r";
        switch (out.kind) {
        case Kind::quantity:
            put(text, "        out[{}].number = {}.in({});\n", i, typed_unit(*out.quantity, *out.unit), value);
            break;
        case Kind::choice: put(text, "        out[{}].text = {};\n", i, value); break;
        case Kind::series:
            put(text, "        store(out[{}], {}, {});\n", i, value, typed_unit(*out.quantity, *out.unit));
            break;
        }
    }
    return text + "        return;\n    }\n";
}

std::vector<Product> test_calls()
{
    std::string flat;
    put(flat,
        "/* {}. */\n#include <cutwater/cutwater.h>\n\ncutwater_status flat_call(int function, const cutwater_value "
        "*in, cutwater_result *out, cutwater_refusal *refusal);\n\n"
        "/* A result of a kind below 0 is left out. */\n#define GIVEN(result, part) ((result).kind < 0 ? 0 : "
        "&(result).part)\n\n"
        "cutwater_status flat_call(int function, const cutwater_value *in, cutwater_result *out, cutwater_refusal "
        "*refusal)\n{{\n    switch (function) {{\n",
        made_by);
    std::string typed;
    put(typed,
        "// {}.\n#include <cutwater/cutwater.hpp>\n\n#include \"support/typed_calls.hpp\"\n\nusing namespace "
        "cutwater;\nusing namespace cutwater::test;\n\n"
        "void typed_call(int function, const cutwater_value* in, cutwater_result* out)\n{{\n    switch (function) {{\n",
        made_by);
    std::size_t position = 0;
    for (const Family* family : families())
        for (const FunctionInfo* f : family->functions) {
            flat += flat_case(*f, position);
            typed += typed_case(*f, position);
            ++position;
        }
    put(flat, "    default: return CUTWATER_UNKNOWN_FUNCTION;\n    }}\n}}\n");
    put(typed, "    default: break;\n    }}\n}}\n");
    return {{"tests/flat_calls.c", flat}, {"tests/typed_calls.cpp", typed}};
}

const Registered registered(test_calls);

}  // namespace
}  // namespace cutwater::generate

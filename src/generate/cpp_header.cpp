// include/cutwater/cutwater.hpp and function_types.hpp: the C API again, taking and giving quantities, refusing by an
// exception.
#include "generate/product.hpp"

namespace cutwater::generate {
namespace {

/// C++ name of a unit's constant as the typed header looks it up: by its type and symbol.
std::string unit_constant(const QuantityInfo& quantity, const UnitInfo& unit)
{
    return formatted("unit<{}>(\"{}\")", quantity.type, unit.symbol);
}

std::string input_type(const InputInfo& in)
{
    switch (in.kind) {
    case Kind::quantity: return in.quantity->type;
    case Kind::choice: return "const char*";
    case Kind::series: return formatted("const std::vector<{}>&", in.quantity->type);
    }
    return "";
}

std::string result_type(const ResultInfo& out)
{
    switch (out.kind) {
    case Kind::quantity: return out.quantity->type;
    case Kind::choice: return "const char*";
    case Kind::series: return formatted("std::vector<{}>", out.quantity->type);
    }
    return "";
}

bool has_series_result(const FunctionInfo& f)
{
    for (const ResultInfo& out : f.results)
        if (out.kind == Kind::series) return true;
    return false;
}

std::string parameters(const FunctionInfo& f)
{
    std::string text;
    for (const InputInfo& in : f.inputs) {
        put(text, "{}{} {}", text.empty() ? "" : ", ", input_type(in), in.name);
        if (!in.has_default) continue;
        if (in.kind == Kind::choice)
            put(text, " = \"{}\"", in.words[static_cast<std::size_t>(in.fallback)]);
        else
            put(text, " = {}({})", unit_constant(*in.quantity, *in.unit), in.fallback);
    }
    return text;
}

/// The arguments of the C call, results last.
std::string c_arguments(const FunctionInfo& f)
{
    std::string text;
    for (const InputInfo& in : f.inputs) switch (in.kind) {
        case Kind::quantity:
            put(text, "detail::number_in({}, {}), ", unit_constant(*in.quantity, *in.unit), in.name);
            break;
        case Kind::choice: put(text, "{}, ", in.name); break;
        case Kind::series: put(text, "{0}_numbers.data(), {0}_numbers.size(), ", in.name); break;
        }
    for (const ResultInfo& out : f.results)
        if (out.kind == Kind::series)
            put(text, "{0}_out.data(), {0}_out.size(), &{0}_count, ", out.name);
        else
            put(text, "&{}_out, ", out.name);
    return text + "&refusal";
}

void write_struct(std::string& to, const FunctionInfo& f)
{
    put(to, "\nstruct {}_results {{\n", f.name);
    for (const ResultInfo& out : f.results) put(to, "    {} {};  // {}\n", result_type(out), out.name, out.meaning);
    put(to, "}};\n");
}

std::string typed_result(const ResultInfo& out)
{
    switch (out.kind) {
    case Kind::quantity:
        return formatted("detail::quantity_of({}, {}_out)", unit_constant(*out.quantity, *out.unit), out.name);
    case Kind::choice: return formatted("{}_out", out.name);
    case Kind::series:
        return formatted("detail::quantities({}, {}_out)", unit_constant(*out.quantity, *out.unit), out.name);
    }
    return "";
}

void write_function(std::string& to, const FunctionInfo& f)
{
    const bool several = f.results.size() > 1;
    if (several) write_struct(to, f);
    put(to, "\n/// {}: {}. Source: {}.\n", f.meaning, f.equation, f.source);
    put(to, "inline {} {}({})\n{{\n", several ? formatted("{}_results", f.name) : result_type(f.results.front()),
        f.name, parameters(f));
    for (const InputInfo& in : f.inputs)
        if (in.kind == Kind::series)
            put(to, "    const std::vector<double> {0}_numbers = detail::numbers({1}, {0});\n", in.name,
                unit_constant(*in.quantity, *in.unit));
    put(to, "    cutwater_refusal refusal;\n");
    for (const ResultInfo& out : f.results) switch (out.kind) {
        case Kind::quantity: put(to, "    double {}_out;\n", out.name); break;
        case Kind::choice: put(to, "    const char* {}_out;\n", out.name); break;
        case Kind::series:
            put(to, "    std::vector<double> {0}_out;\n    std::size_t {0}_count = 0;\n", out.name);
            break;
        }
    const std::string call = formatted("cutwater_{}({})", f.name, c_arguments(f));
    if (has_series_result(f)) {
        put(to,
            "    cutwater_status status = {};\n    if (status == CUTWATER_BUFFER_TOO_SMALL) {{  // the first call told "
            "the lengths\n",
            call);
        for (const ResultInfo& out : f.results)
            if (out.kind == Kind::series) put(to, "        {0}_out.resize({0}_count);\n", out.name);
        put(to, "        status = {};\n    }}\n    detail::check(status, refusal);\n", call);
    } else {
        put(to, "    detail::check({}, refusal);\n", call);
    }
    std::string results;
    for (const ResultInfo& out : f.results) put(results, "{}{}", results.empty() ? "" : ", ", typed_result(out));
    put(to, "    return {};\n}}\n", several ? "{" + results + "}" : results);
}

/// Type names parted by blanks, "-" for a word.
template <class Entry>
std::string type_list(std::span<const Entry> entries)
{
    std::string text;
    for (const Entry& entry : entries)
        put(text, "{}{}", text.empty() ? "" : " ", entry.quantity ? entry.quantity->type : "-");
    return text;
}

/// For calls by name that take quantities: a unit's symbol alone does not tell a temperature from a difference of two.
std::string function_types()
{
    std::string text;
    put(text,
        "// {}.\n// The quantities of every function, by their C++ types in the record's order; \"-\" stands for a "
        "word.\n",
        made_by);
    put(text, "#pragma once\n\nnamespace cutwater::detail {{\n\nstruct FunctionTypes {{\n    const char* function;\n   "
              " const char* inputs;\n"
              "    const char* results;\n}};\n\ninline constexpr FunctionTypes function_types[] = {{\n");
    for (const Family* family : families())
        for (const FunctionInfo* f : family->functions)
            put(text, "    {{\"{}\", \"{}\", \"{}\"}},\n", f->name, type_list(f->inputs), type_list(f->results));
    put(text, "}};\n\n}}  // namespace cutwater::detail\n");
    return text;
}

Product family_header(const Family& family)
{
    std::string text;
    put(text,
        "// {}.\n// {}.\n#pragma once\n\n#include <cutwater/families/{}.h>\n#include <cutwater/refused.hpp>\n"
        "#include <cutwater/unit_table.hpp>\n\n#include <cstddef>\n#include <vector>\n\nnamespace cutwater {{\n",
        made_by, family.title, family.name);
    for (const FunctionInfo* f : family.functions) write_function(text, *f);
    put(text, "\n}}  // namespace cutwater\n");
    return {formatted("include/cutwater/families/{}.hpp", family.name), text};
}

std::vector<Product> cpp_header()
{
    std::string text;
    put(text, "// {}.\n", made_by);
    put(text, "// The typed C++ door, header only over the flat C API: quantities in and out, a refusal thrown as "
              "cutwater::Refused.\n"
              "#pragma once\n\n#include <cutwater/cutwater.h>\n\n");
    std::vector<Product> products{{"include/cutwater/function_types.hpp", function_types()}};
    for (const Family* family : families()) {
        put(text, "#include <cutwater/families/{}.hpp>  // {}\n", family->name, family->title);
        products.push_back(family_header(*family));
    }
    products.push_back({"include/cutwater/cutwater.hpp", text});
    return products;
}

const Registered registered(cpp_header);

}  // namespace
}  // namespace cutwater::generate

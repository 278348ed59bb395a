// The catalogue's functions as methods of the Calc component, with the texts that its function wizard shows.
#include "methods.hpp"

#include <algorithm>
#include <set>

namespace cutwater::generate {
namespace {

/// Words of the interface language; a parameter called so gets a tail.
const std::set<std::string_view> idl_words{
    "any",         "attribute",  "boolean",  "bound",     "byte",      "char",           "const",        "constants",
    "constrained", "context",    "double",   "ellipsis",  "enum",      "exception",      "float",        "get",
    "hyper",       "in",         "inout",    "interface", "long",      "maybeambiguous", "maybedefault", "maybevoid",
    "method",      "module",     "needs",    "observes",  "oneway",    "optional",       "out",          "property",
    "published",   "raises",     "readonly", "removable", "sequence",  "service",        "set",          "short",
    "singleton",   "singletons", "string",   "struct",    "transient", "type",           "typedef",      "unsigned",
    "void"};

char upper(char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; }

std::string parameter_meaning(const InputInfo& in)
{
    const std::string takes = in.kind == Kind::choice ? "" : sentence(kind_text(in)) + " ";
    return formatted("{} {}Permitted: {}.", sentence(in.meaning), takes, permitted_text(in));
}

std::string results_text(const FunctionInfo& f)
{
    std::string text = f.results.size() == 1 ? "Gives" : "Gives side by side";
    for (std::size_t i = 0; i < f.results.size(); ++i) {
        const ResultInfo& out = f.results[i];
        text += formatted("{} {}", i ? ";" : "", out.meaning);
        if (out.kind == Kind::choice)
            text += formatted(" ({})", words_text(out.words));
        else if (*out.unit->suffix)
            text += formatted(" in {}", out.unit->symbol);
        if (out.kind == Kind::series) text += ", down a column";
    }
    return text + ".";
}

CalcMethod method(const Family& family, const FunctionInfo& f, std::size_t position)
{
    CalcMethod made;
    made.name = capitals(f.name);
    made.meaning = formatted("Cutwater, {}. {} {}", family.title, sentence(f.meaning), results_text(f));
    made.table = f.results.size() > 1 || f.results.front().kind == Kind::series;
    std::string list;
    for (const InputInfo& in : f.inputs) {
        list += formatted("{}&a{}", list.empty() ? "" : ", ", made.parameters.size());
        made.parameters.push_back({camel_case(in.full_name), in.full_name, parameter_meaning(in)});
    }
    made.body = formatted("return {}(position[{}], {{{}}});", made.table ? "cells" : "cell", position, list);
    return made;
}

}  // namespace

std::string camel_case(std::string_view name)
{
    std::string made;
    bool after = false;
    for (const char c : name) {
        if (c != '_') made += after ? upper(c) : c;
        after = c == '_';
    }
    if (idl_words.contains(made)) made += "Given";
    return made;
}

std::vector<CalcMethod> calc_functions()
{
    std::vector<CalcMethod> made;
    for (const Family* family : families())
        for (const FunctionInfo* f : family->functions) made.push_back(method(*family, *f, made.size()));
    return made;
}

}  // namespace cutwater::generate

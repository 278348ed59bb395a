// The catalogue's functions as methods of the Calc component, with the texts that its function wizard shows.
#include "generate/calc_component.hpp"

#include <algorithm>
#include <set>

namespace cutwater::generate {
namespace {

/// Words of the interface language; a parameter called so gets a tail.
const std::set<std::string_view> idl_words{
    "any", "attribute", "boolean", "bound", "byte", "char", "const", "constants", "constrained", "context", "double",
    "ellipsis", "enum", "exception", "float", "get", "hyper", "in", "inout", "interface", "long", "maybeambiguous",
    "maybedefault", "maybevoid", "method", "module", "needs", "observes", "oneway", "optional", "out", "property",
    "published", "raises", "readonly", "removable", "sequence", "service", "set", "short", "singleton", "singletons",
    "string", "struct", "transient", "type", "typedef", "unsigned", "void"};

char upper(char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; }

/// A sentence: begins with a capital, ends with a stop.
std::string sentence(std::string_view text)
{
    std::string made(text);
    if (made.empty()) return made;
    made.front() = upper(made.front());
    if (made.back() != '.') made += '.';
    return made;
}

std::string words_text(std::span<const char* const> words)
{
    std::string text;
    for (const char* word : words) text += fmt::format("{}\"{}\"", text.empty() ? "" : ", ", word);
    return text;
}

std::string unit_text(const UnitInfo* unit) { return unit && *unit->suffix ? fmt::format("in {}", unit->symbol) : "without unit"; }

std::string parameter_meaning(const InputInfo& in)
{
    std::string text = sentence(in.meaning);
    switch (in.kind) {
    case Kind::choice: text += fmt::format(" One of {}.", words_text(in.words)); break;
    case Kind::quantity:
        text += fmt::format(" A number {}, or a text with its unit. Permitted: {}.", unit_text(in.unit), interval_text(in));
        break;
    case Kind::series:
        text += fmt::format(" A row or column of at least {} cell{}{}: numbers {}, or texts with their units. Permitted for each: {}.",
                            in.least_points, in.least_points == 1 ? "" : "s", in.rising ? ", rising" : "", unit_text(in.unit),
                            interval_text(in));
        break;
    }
    if (in.has_default)
        text += in.kind == Kind::choice ? fmt::format(" If left out: \"{}\".", in.words[static_cast<std::size_t>(in.fallback)])
                                        : fmt::format(" If left out: {:.10g}.", in.fallback);
    return text;
}

std::string results_text(const FunctionInfo& f)
{
    std::string text = f.results.size() == 1 ? "Gives" : "Gives side by side";
    for (std::size_t i = 0; i < f.results.size(); ++i) {
        const ResultInfo& out = f.results[i];
        text += fmt::format("{} {}", i ? ";" : "", out.meaning);
        if (out.kind == Kind::choice) text += fmt::format(" ({})", words_text(out.words));
        else if (*out.unit->suffix) text += fmt::format(" in {}", out.unit->symbol);
        if (out.kind == Kind::series) text += ", down a column";
    }
    return text + ".";
}

CalcMethod method(const Family& family, const FunctionInfo& f, std::size_t position)
{
    CalcMethod made;
    made.name = capitals(f.name);
    made.meaning = fmt::format("Cutwater, {}. {} {}", family.title, sentence(f.meaning), results_text(f));
    made.table = f.results.size() > 1 || f.results.front().kind == Kind::series;
    std::string list;
    for (const InputInfo& in : f.inputs) {
        list += fmt::format("{}&a{}", list.empty() ? "" : ", ", made.parameters.size());
        made.parameters.push_back({camel_case(in.full_name), in.full_name, parameter_meaning(in)});
    }
    made.body = fmt::format("return {}(position[{}], {{{}}});", made.table ? "cells" : "cell", position, list);
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

std::string capitals(std::string_view name)
{
    std::string made(name);
    std::transform(made.begin(), made.end(), made.begin(), upper);
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

// The catalogue as JSON: a file for tools, and the same text in the library. Its shape is part of the interface.
#include "generate/json.hpp"
#include "generate/product.hpp"

#include "answers/questions.hpp"
#include "call/argument_list.hpp"

#include <cutwater/base.h>
#include <cutwater/unit_table.hpp>

namespace cutwater::generate {
namespace {

const char* kind_name(Kind kind, bool whole)
{
    switch (kind) {
    case Kind::choice: return "choice";
    case Kind::series: return "series";
    default: return whole ? "count" : "quantity";
    }
}

std::string words(std::span<const char* const> list)
{
    return json_list(list, [](const char* w) { return json_text(w); });
}

std::string input_json(const InputInfo& in)
{
    JsonObject json;
    json.text("name", in.full_name)
        .text("short_name", in.name)
        .text("symbol", in.symbol)
        .text("kind", kind_name(in.kind, in.whole));
    if (in.quantity) json.text("quantity", in.quantity->name).text("unit", in.unit->symbol);
    if (in.kind != Kind::choice)
        json.number("low", in.interval.low)
            .flag("low_open", in.interval.low_open)
            .number("high", in.interval.high)
            .flag("high_open", in.interval.high_open);
    if (in.kind == Kind::series)
        json.number("least_points", static_cast<double>(in.least_points)).flag("rising", in.rising);
    if (in.has_default) {
        if (in.kind == Kind::choice)
            json.text("default", in.words[static_cast<std::size_t>(in.fallback)]);
        else
            json.number("default", in.fallback);
    }
    if (in.kind == Kind::choice) json.raw("choices", words(in.words));
    return json.text("meaning", in.meaning).done();
}

std::string result_json(const ResultInfo& out)
{
    JsonObject json;
    json.text("name", out.full_name)
        .text("short_name", out.name)
        .text("symbol", out.symbol)
        .text("kind", out.kind == Kind::choice ? "word" : kind_name(out.kind, false));
    if (out.quantity) json.text("quantity", out.quantity->name).text("unit", out.unit->symbol);
    if (out.kind == Kind::choice) json.raw("choices", words(out.words));
    if (out.scatter.amount > 0) json.number("scatter", out.scatter.amount).flag("scatter_in_unit", out.scatter.in_unit);
    return json.text("meaning", out.meaning).done();
}

std::string argument_json(const ListedArgument& argument)
{
    switch (argument.kind) {
    case CUTWATER_NUMBER: return json_number(argument.number);
    case CUTWATER_TEXT: return json_text(argument.text);
    case CUTWATER_SERIES: return json_list(argument.series, [](double x) { return json_number(x); });
    default: return "null";
    }
}

template <class Info>
std::string arguments_json(std::span<const Info> infos, const char* list)
{
    JsonObject json;
    const auto arguments = read_argument_list(list);
    for (std::size_t i = 0; arguments && i < arguments->size() && i < infos.size(); ++i)
        json.raw(infos[i].full_name, argument_json((*arguments)[i]));
    return json.done();
}

std::string aliases_json(std::string_view aliases)
{
    std::vector<std::string_view> list;
    while (!aliases.empty()) {
        const std::size_t end = std::min(aliases.find('|'), aliases.size());
        list.push_back(aliases.substr(0, end));
        aliases.remove_prefix(std::min(end + 1, aliases.size()));
    }
    return json_list(list, [](std::string_view a) { return json_text(a); });
}

/// The input named first is the one that a refusal blames.
std::string relation_json(const FunctionInfo& f, const RelationInfo& relation)
{
    return JsonObject()
        .raw("inputs", json_list(relation.inputs, [&](std::size_t i) { return json_text(f.inputs[i].full_name); }))
        .text("sentence", relation.sentence)
        .done();
}

std::string function_json(const FunctionInfo& f, const Family& family)
{
    const auto sentences = [](std::span<const char* const> list) {
        return json_list(list, [](const char* s) { return json_text(s); });
    };
    return JsonObject()
        .text("name", f.name)
        .text("type_name", f.type_name)
        .text("family", family.name)
        .text("summary", f.meaning)
        .raw("also", aliases_json(f.also))
        .raw("inputs", json_list(f.inputs, input_json))
        .raw("results", json_list(f.results, result_json))
        .text("equation", f.equation)
        .raw("relations", json_list(f.relations, [&](const RelationInfo& r) { return relation_json(f, r); }))
        .text("source", f.source)
        .raw("cautions", sentences(f.cautions))
        .raw("example", JsonObject()
                            .raw("inputs", arguments_json(f.inputs, f.example.inputs))
                            .raw("results", arguments_json(f.results, f.example.results))
                            .text("source", f.example.source)
                            .done())
        .done();
}

std::string question_json(const QuestionInfo& q)
{
    return JsonObject()
        .text("name", q.name)
        .text("c_name", q.c_name)
        .text("meaning", q.meaning)
        .raw("arguments", json_list(q.arguments,
                                    [](const QuestionArgument& a) {
                                        return JsonObject()
                                            .text("name", a.name)
                                            .text("meaning", a.meaning)
                                            .flag("optional", a.optional)
                                            .flag("rest", a.asked == Asked::arguments)
                                            .done();
                                    }))
        .raw("results",
             json_list(
                 q.results,
                 [](const QuestionResult& r) {
                     return JsonObject().text("name", r.name).text("meaning", r.meaning).flag("word", r.word).done();
                 }))
        .done();
}

std::string unit_json(const UnitInfo& unit)
{
    return JsonObject()
        .text("symbol", unit.symbol)
        .raw("aliases", aliases_json(unit.aliases))
        .text("ucum", unit.ucum)
        .number("factor", unit.numerator / unit.denominator)
        .number("offset", unit.offset)
        .done();
}

std::string whole_json()
{
    std::string functions;
    for (const Family* family : families())
        for (const FunctionInfo* f : family->functions)
            put(functions, "{}\n{}", functions.empty() ? "" : ",", function_json(*f, *family));
    std::string units;
    for (const QuantityInfo* quantity : all_quantities())
        put(units, "{}\n{}: {}", units.empty() ? "" : ",", json_text(quantity->name), json_list(*quantity, unit_json));
    return formatted(
        "{{\"cutwater\": {}, \"interface\": {}, \"functions\": [{}\n], \"questions\": {}, \"units\": {{{}\n}}}}\n",
        json_text(CUTWATER_VERSION), CUTWATER_INTERFACE, functions, json_list(questions(), question_json), units);
}

/// Compilers limit the length of one literal: a line of JSON a literal, all in one array of characters.
std::string as_source(const std::string& json)
{
    std::string text = formatted("// {}.\n#include <cutwater/library.h>\n\nstatic const unsigned char json[] = {{",
                                 made_by);
    std::size_t column = 200;
    for (const char c : json + '\0') {
        if (column > 110) {
            text += "\n    ";
            column = 4;
        }
        const std::string number = std::to_string(static_cast<unsigned>(static_cast<unsigned char>(c)));
        text += number + ",";
        column += number.size() + 1;
    }
    return text + "\n};\n\nextern \"C\" const char* cutwater_catalogue_json(void) { return reinterpret_cast<const "
                  "char*>(json); }\n";
}

std::vector<Product> catalogue_json()
{
    const std::string json = whole_json();
    return {{"catalogue.json", json}, {"capi/catalogue_json.cpp", as_source(json)}};
}

const Registered registered(catalogue_json);

}  // namespace
}  // namespace cutwater::generate

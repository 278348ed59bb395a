// The extension's SQL: a declaration of each function for numbers, for texts and for both, and of each question;
// and the script that brings any earlier version's declarations up to date.
#include "generate/product.hpp"

#include "answers/questions.hpp"

namespace cutwater::generate {
namespace {

// What the planner shall think of a call, in units of one of its own operators, as measured: npsh_available costs what
// sixteen of the operators of its own relation do; see docs/benchmarks.md.
constexpr int cost_of_numbers = 20;
constexpr int cost_of_texts = 100;
constexpr int cost_of_series = 100;
constexpr int cost_of_question = 1000;
constexpr int cost_of_trials = 10000;  // of trials by the thousand, where the first order will not do

constexpr std::string_view told = ", OUT refusal text, OUT refusal_status text, OUT refusal_input text";

constexpr const char* any = "\"any\"";

struct Declaration {
    std::string name;
    std::string arguments;  // but for quotes as PostgreSQL itself writes them: the upgrade compares
    std::string result;
    std::string symbol;
    bool strict = false;
    bool immutable = true;
    bool rows = false;
    int cost = 1;
    std::string meaning;
};

void join(std::string& to, std::string_view text) { put(to, "{}{}", to.empty() ? "" : ", ", text); }

/// SQL folds what is not quoted: `weight_N` finds weight_n.
std::string folded(std::string_view name)
{
    std::string made(name);
    for (char& c : made) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return made;
}

/// A function is declared up to three times. The mixed one takes numbers beside texts. Where a quantity must be given,
/// PostgreSQL chooses it only when neither of the others fits; without one it could not choose at all.
enum class Given { numbers, texts, mixed };

std::string type_of(Kind kind, Given given)
{
    if (kind == Kind::choice) return "text";
    if (given == Given::mixed) return any;
    return formatted("{}{}", given == Given::texts ? "text" : "double precision", kind == Kind::series ? "[]" : "");
}

bool makes_sense(const FunctionInfo& f, Given given)
{
    std::size_t quantities = 0;
    std::size_t needed = 0;
    for (const InputInfo& in : f.inputs) {
        if (in.kind != Kind::choice) ++quantities;
        if (in.kind == Kind::quantity && !in.has_default) ++needed;
    }
    if (given == Given::mixed) return needed > 0 && quantities > 1;
    return given == Given::numbers || quantities > 0;
}

Declaration of_function(const FunctionInfo& f, Given given, bool checked)
{
    Declaration d;
    bool series = false;
    d.strict = !checked;
    for (const InputInfo& in : f.inputs) {
        const std::string type = type_of(in.kind, given);
        join(d.arguments, formatted("\"{}\" {}", folded(in.full_name), type));
        if (in.has_default) put(d.arguments, " DEFAULT NULL::{}", type == any ? "unknown" : type);
        series = series || in.kind == Kind::series;
        d.strict = d.strict && !in.has_default;
    }
    if (f.results.size() == 1 && !checked) {
        d.result = type_of(f.results[0].kind, Given::numbers);
    } else {
        for (const ResultInfo& out : f.results)
            join(d.arguments, formatted("OUT \"{}\" {}", folded(out.full_name), type_of(out.kind, Given::numbers)));
        if (checked) d.arguments += told;
        d.result = "record";
    }
    d.name = formatted("{}{}", f.name, checked ? "_checked" : "");
    d.symbol = checked ? "cutwater_checked" : "cutwater_function";
    d.cost = series ? cost_of_series : given == Given::numbers ? cost_of_numbers : cost_of_texts;
    d.meaning = checked ? formatted("{}. What is refused is NULL, with the reason beside it.", sentence(f.meaning))
                        : sentence(f.meaning);
    return d;
}

std::string_view type_of(Asked asked)
{
    switch (asked) {
    case Asked::number: return "double precision";
    case Asked::value:
    case Asked::uncertainties:
    case Asked::arguments: return "\"any\"";
    default: return "text";
    }
}

/// Without its rest where `bare`: a variadic list has one argument at least.
Declaration of_question(const QuestionInfo& q, bool bare)
{
    Declaration d;
    d.cost = cost_of_question;
    for (const QuestionArgument& a : q.arguments) {
        if (a.asked == Asked::uncertainties) d.cost = cost_of_trials;
        if (bare && a.asked == Asked::arguments) continue;
        join(d.arguments,
             formatted("{}\"{}\" {}", a.asked == Asked::arguments ? "VARIADIC " : "", a.name, type_of(a.asked)));
    }
    const auto type = [](const QuestionResult& r) { return r.word ? "text" : "double precision"; };
    if (q.layout == Layout::one || q.layout == Layout::column) {
        d.result = formatted("{}{}", type(q.results[0]), q.layout == Layout::column ? "[]" : "");
    } else if (q.layout == Layout::row) {
        for (const QuestionResult& r : q.results) join(d.arguments, formatted("OUT \"{}\" {}", r.name, type(r)));
        d.result = "record";
    } else {
        for (const QuestionResult& r : q.results) join(d.result, formatted("\"{}\" {}", r.name, type(r)));
        d.result = formatted("TABLE({})", d.result);
        d.rows = true;
    }
    d.name = q.name;
    d.symbol = d.rows ? "cutwater_question_rows" : "cutwater_question";
    d.immutable = !q.arguments.empty();  // else it tells of the library
    d.meaning = sentence(q.meaning);
    return d;
}

std::vector<Declaration> declarations()
{
    std::vector<Declaration> list;
    for (const Family* family : families())
        for (const FunctionInfo* f : family->functions) {
            for (const bool checked : {false, true})
                for (const Given given : {Given::numbers, Given::texts, Given::mixed})
                    if (makes_sense(*f, given)) list.push_back(of_function(*f, given, checked));
        }
    for (const QuestionInfo& q : questions()) {
        list.push_back(of_question(q, false));
        if (!q.arguments.empty() && q.arguments.back().asked == Asked::arguments) list.push_back(of_question(q, true));
    }
    return list;
}

std::string quoted(std::string_view text)
{
    std::string made = "'";
    for (const char c : text) made += c == '\'' ? "''" : std::string(1, c);
    return made + "'";
}

std::string without_quotes(std::string text)
{
    std::erase(text, '"');
    return text;
}

/// The arguments' types alone, which tell overloads apart.
std::string signature(const Declaration& d)
{
    std::string arguments = d.arguments.substr(0, d.arguments.find("OUT "));
    if (arguments.ends_with(", ")) arguments.resize(arguments.size() - 2);
    for (std::size_t at; (at = arguments.find(" DEFAULT NULL::")) != std::string::npos;)
        arguments.erase(at, arguments.find(',', at) - at);
    return arguments;
}

std::string body(const std::vector<Declaration>& list)
{
    std::string text;
    for (const Declaration& d : list) {
        put(text, "CREATE OR REPLACE FUNCTION {}({})\n  RETURNS {} AS 'MODULE_PATHNAME', '{}'\n", d.name, d.arguments,
            d.result, d.symbol);
        put(text, "  LANGUAGE C {}{} PARALLEL SAFE COST {}{};\n", d.immutable ? "IMMUTABLE" : "STABLE",
            d.strict ? " STRICT" : "", d.cost, d.rows ? " ROWS 10" : "");
        put(text, "COMMENT ON FUNCTION {}({}) IS {};\n", d.name, signature(d), quoted(d.meaning));
    }
    return text;
}

constexpr std::string_view no_source = "\\echo This file is read by CREATE EXTENSION cutwater. \\quit\n";

/// Drops of the extension what is no longer, or is declared otherwise: no declaration can be replaced by one with other
/// names or results.
std::string dropping(const std::vector<Declaration>& list)
{
    std::string wanted;
    for (const Declaration& d : list)
        put(wanted, "{}    {}", wanted.empty() ? "" : ",\n",
            quoted(without_quotes(formatted("{}({}) {}", d.name, d.arguments, d.result))));
    std::string text;
    put(text,
        "DO $drop$\nDECLARE\n  kept text[] := ARRAY[\n{}];\n  gone regprocedure;\nBEGIN\n"
        "  FOR gone IN\n"
        "    SELECT p.oid FROM pg_catalog.pg_depend d\n"
        "      JOIN pg_catalog.pg_extension e ON d.refclassid = 'pg_catalog.pg_extension'::pg_catalog.regclass\n"
        "        AND d.refobjid = e.oid\n"
        "      JOIN pg_catalog.pg_proc p ON d.classid = 'pg_catalog.pg_proc'::pg_catalog.regclass AND d.objid = p.oid\n"
        "    WHERE d.deptype = 'e' AND e.extname = 'cutwater' AND pg_catalog.replace(p.proname || '('\n"
        "      || pg_catalog.pg_get_function_arguments(p.oid) || ') ' || pg_catalog.pg_get_function_result(p.oid),\n"
        "      '\"', '') <> ALL (kept)\n"
        "  LOOP\n"
        "    EXECUTE pg_catalog.format('ALTER EXTENSION cutwater DROP FUNCTION %s', gone);\n"
        "    EXECUTE pg_catalog.format('DROP FUNCTION %s', gone);\n"
        "  END LOOP;\nEND\n$drop$;\n",
        wanted);
    return text;
}

std::vector<Product> extension()
{
    const std::vector<Declaration> list = declarations();
    const std::string lead = formatted("-- {}.\n{}", made_by, no_source);
    const std::string declared = body(list);
    return {{"postgresql/install.sql", lead + declared}, {"postgresql/upgrade.sql", lead + dropping(list) + declared}};
}

const Registered registered(extension);

}  // namespace
}  // namespace cutwater::generate

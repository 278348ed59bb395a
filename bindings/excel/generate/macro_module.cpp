// excel/cutwater.bas: the declarations of cutwater.dll for Visual Basic, and every function and question as a function
// of its own.
#include "macro_runtime.hpp"

#include "answers/questions.hpp"
#include "generate/product.hpp"

#include <algorithm>
#include <set>

namespace cutwater::generate {
namespace {

/// Words that Visual Basic keeps for itself (MS-VBAL 3.3.5.2), in small letters.
const std::set<std::string_view> basic_words{
    "abs",        "addressof",  "and",      "any",      "array",      "as",      "attribute",  "boolean",  "byref",
    "byte",       "byval",      "call",     "case",     "cbool",      "cbyte",   "ccur",       "cdate",    "cdbl",
    "cdec",       "cdecl",      "cint",     "circle",   "clng",       "clnglng", "clngptr",    "close",    "const",
    "csng",       "cstr",       "currency", "cvar",     "cverr",      "date",    "debug",      "decimal",  "declare",
    "defbool",    "defbyte",    "defcur",   "defdate",  "defdbl",     "defint",  "deflng",     "defobj",   "defsng",
    "defstr",     "defvar",     "dim",      "do",       "doevents",   "double",  "each",       "else",     "elseif",
    "empty",      "end",        "endif",    "enum",     "eqv",        "erase",   "event",      "exit",     "false",
    "fix",        "for",        "friend",   "function", "get",        "global",  "gosub",      "goto",     "if",
    "imp",        "implements", "in",       "input",    "inputb",     "int",     "integer",    "is",       "lbound",
    "len",        "lenb",       "let",      "like",     "linput",     "local",   "lock",       "long",     "longlong",
    "longptr",    "loop",       "lset",     "me",       "mod",        "new",     "next",       "not",      "nothing",
    "null",       "on",         "open",     "option",   "optional",   "or",      "paramarray", "preserve", "print",
    "private",    "pset",       "public",   "put",      "raiseevent", "redim",   "rem",        "resume",   "return",
    "rset",       "scale",      "seek",     "select",   "set",        "sgn",     "shared",     "single",   "spc",
    "static",     "stop",       "string",   "sub",      "tab",        "then",    "to",         "true",     "type",
    "typeof",     "ubound",     "unlock",   "until",    "variant",    "vb_base", "wend",       "while",    "with",
    "withevents", "write",      "xor"};

constexpr std::size_t longest_line = 110;

std::string basic_name(std::string_view name)
{
    std::string made(name);
    std::string small = made;
    std::transform(small.begin(), small.end(), small.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    if (basic_words.contains(small)) made += "_given";
    return made;
}

/// A statement with a list in it, continued from line to line; Visual Basic takes 24 continuations.
std::string statement(std::string head, const std::vector<std::string>& list, std::string_view tail)
{
    std::string text;
    std::string line = std::move(head);
    for (std::size_t i = 0; i < list.size(); ++i) {
        const std::string piece = list[i] + (i + 1 < list.size() ? "," : std::string(tail));
        if (line.size() + piece.size() + 3 > longest_line) {
            put(text, "{} _\n", line);
            line = "    ";
        }
        if (i > 0 && line.back() == ',') line += ' ';
        line += piece;
    }
    if (list.empty()) line += tail;
    return text + line + "\n";
}

std::string declaration(const FunctionInfo& f)
{
    std::vector<std::string> list;
    for (const InputInfo& in : f.inputs) {
        const std::string name = basic_name(in.full_name);
        switch (in.kind) {
        case Kind::quantity: list.push_back(formatted("ByVal {} As Double", name)); break;
        case Kind::choice: list.push_back(formatted("ByVal {} As String", name)); break;
        case Kind::series:
            list.push_back(formatted("ByRef {} As Double", name));
            list.push_back(formatted("ByVal {}_count As LongPtr", in.full_name));
            break;
        }
    }
    for (const ResultInfo& out : f.results) {
        const std::string name = basic_name(out.full_name);
        switch (out.kind) {
        case Kind::quantity: list.push_back(formatted("ByRef {} As Double", name)); break;
        case Kind::choice: list.push_back(formatted("ByRef {} As LongPtr", name)); break;
        case Kind::series:
            list.push_back(formatted("ByRef {} As Double", name));
            list.push_back(formatted("ByVal {}_capacity As LongPtr", out.full_name));
            list.push_back(formatted("ByRef {}_count As LongPtr", out.full_name));
            break;
        }
    }
    list.emplace_back("ByRef refusal As cutwater_refusal");
    return statement(formatted("Public Declare PtrSafe Function cutwater_{} Lib \"cutwater.dll\" (", f.name), list,
                     ") As Long");
}

std::string function_text(const FunctionInfo& f)
{
    std::vector<std::string> parameters;
    std::vector<std::string> given;
    for (const InputInfo& in : f.inputs) {
        given.push_back(basic_name(in.full_name));
        parameters.push_back(formatted("{}ByVal {} As Variant", in.has_default ? "Optional " : "", given.back()));
    }
    const std::string name = capitals(f.name);
    return formatted("\n' {}\n", sentence(f.meaning)) +
           statement(formatted("Public Function {}(", name), parameters, ") As Variant") +
           statement(formatted("    {} = CutwaterAnswer(\"{}\", Array(", name, f.name), given, "))") + "End Function\n";
}

std::string question_text(const QuestionInfo& q)
{
    std::vector<std::string> parameters;
    std::vector<std::string> given;
    std::string rest;
    for (const QuestionArgument& a : q.arguments) {
        const std::string name = basic_name(a.name);
        if (a.asked == Asked::arguments) {
            parameters.push_back(formatted("ParamArray {}() As Variant", name));
            rest = name;
        } else {
            parameters.push_back(formatted("ByVal {} As Variant", name));
            given.push_back(name);
        }
    }
    const std::string name = capitals(q.name);
    std::string text = formatted("\n' {}\n", sentence(q.meaning)) +
                       statement(formatted("Public Function {}(", name), parameters, ") As Variant");
    text += rest.empty() ? statement(formatted("    {} = CutwaterAnswer(\"{}\", Array(", name, q.name), given, "))")
                         : statement(formatted("    {} = CutwaterAnswer(\"{}\", CutwaterJoined(Array(", name, q.name),
                                     given, formatted("), {}))", rest));
    return text + "End Function\n";
}

std::vector<Product> macro_module()
{
    std::string text = "Attribute VB_Name = \"cutwater\"\n";
    put(text, "' {}.\n{}", made_by, macro_head);
    for (const Family* family : families()) {
        put(text, "\n' {}.\n", family->title);
        for (const FunctionInfo* f : family->functions) text += declaration(*f);
    }
    text += macro_body;
    for (const QuestionInfo& q : questions()) text += question_text(q);
    for (const Family* family : families()) {
        put(text, "\n' ---- {} ----\n", family->title);
        for (const FunctionInfo* f : family->functions) text += function_text(*f);
    }
    std::string lines;  // ended as Visual Basic's editor wants to read them
    for (const char c : text) lines += c == '\n' ? std::string("\r\n") : std::string(1, c);
    return {{"excel/cutwater.bas", lines}};
}

const Registered registered(macro_module);

}  // namespace
}  // namespace cutwater::generate

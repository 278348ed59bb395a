// What no door could carry, found before anything is written.
#include "generate/product.hpp"

#include "call/arguments.hpp"

#include <algorithm>
#include <cctype>
#include <set>

namespace cutwater::generate {
namespace {

/// Words that a function or parameter cannot be called by in one of the languages that a door serves.
const std::set<std::string_view> keywords{
    "alignas",  "and",      "as",        "assert",   "async",   "auto",     "await",     "bool",     "break",
    "call",     "case",     "catch",     "char",     "class",   "const",    "continue",  "def",      "default",
    "del",      "delete",   "dim",       "do",       "double",  "elif",     "else",      "elseif",   "end",
    "enum",     "event",    "except",    "explicit", "export",  "extern",   "false",     "finally",  "float",
    "for",      "friend",   "from",      "function", "get",     "global",   "goto",      "if",       "import",
    "in",       "inline",   "int",       "is",       "lambda",  "let",      "like",      "long",     "loop",
    "mod",      "mutable",  "namespace", "new",      "next",    "none",     "nonlocal",  "not",      "null",
    "on",       "operator", "or",        "pass",     "private", "property", "protected", "public",   "raise",
    "register", "repeat",   "resume",    "return",   "select",  "set",      "short",     "signed",   "sizeof",
    "static",   "step",     "stop",      "struct",   "sub",     "switch",   "template",  "then",     "this",
    "throw",    "to",       "true",      "try",      "type",    "typedef",  "union",     "unsigned", "until",
    "using",    "virtual",  "void",      "volatile", "wend",    "while",    "with",      "xor",      "yield",
    "refusal",  "rows",     "report"};

constexpr std::size_t longest_function = 40;
constexpr std::size_t longest_meaning = 255;  // a sheet's function wizard cuts what is longer

/// A1 to XFD1048576 would read as a cell, with or without digits that are written.
bool cell_address(std::string_view name)
{
    const std::size_t letters = static_cast<std::size_t>(
        std::find_if(name.begin(), name.end(), [](unsigned char c) { return !std::isalpha(c); }) - name.begin());
    const std::string_view digits = name.substr(letters);
    if (letters == 0 || letters > 3 || digits.empty() || digits.size() > 7) return false;
    if (!std::all_of(digits.begin(), digits.end(), [](unsigned char c) { return std::isdigit(c); })) return false;
    std::string column(name.substr(0, letters));
    std::transform(column.begin(), column.end(), column.begin(),
                   [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    const bool in_columns = column.size() < 3 || column <= "XFD";
    const unsigned long row = std::stoul(std::string(digits));
    return in_columns && row >= 1 && row <= 1048576;
}

bool identifier(std::string_view name)
{
    if (name.empty() || !std::isalpha(static_cast<unsigned char>(name.front()))) return false;
    return std::all_of(name.begin(), name.end(), [](unsigned char c) { return std::isalnum(c) || c == '_'; });
}

class Finder {
public:
    std::vector<std::string> faults;

    void look_at(const FunctionInfo& f)
    {
        f_ = &f;
        name(f.name, "function");
        need(std::string_view(f.name).size() <= longest_function, "its name is too long");
        need(functions_.insert(f.name).second, "there are two of that name");
        text(f.meaning, "its meaning");
        need(std::string_view(f.meaning).size() <= longest_meaning, "its meaning is too long for a function wizard");
        text(f.equation, "its equation");
        text(f.source, "its source");
        text(f.example.inputs, "its example's inputs");
        text(f.example.results, "its example's results");
        text(f.example.source, "its example's source");
        need(f.inputs.size() <= most_inputs && f.results.size() <= most_results, "it has too many inputs or results");
        std::set<std::string_view> seen;
        bool optional = false;
        for (const InputInfo& in : f.inputs) {
            name(in.full_name, "input");
            text(in.symbol, "an input's symbol");
            text(in.meaning, "an input's meaning");
            need(seen.insert(in.full_name).second, formatted("two inputs or results are called {}", in.full_name));
            need(std::string_view(in.meaning).size() <= longest_meaning,
                 "an input's meaning is too long for a function wizard");
            need(in.has_default || !optional,
                 formatted("{} must be given but follows an input that need not be", in.full_name));
            optional = in.has_default;
        }
        for (const ResultInfo& out : f.results) {
            name(out.full_name, "result");
            text(out.meaning, "a result's meaning");
            need(seen.insert(out.full_name).second, formatted("two inputs or results are called {}", out.full_name));
        }
    }

private:
    void need(bool holds, std::string_view fault)
    {
        if (!holds) faults.push_back(formatted("{}: {}", f_->name, fault));
    }
    void text(const char* given, std::string_view what) { need(given && *given, formatted("{} is missing", what)); }
    void name(std::string_view given, std::string_view what)
    {
        need(identifier(given), formatted("the {} \"{}\" is no identifier", what, given));
        need(!keywords.contains(given), formatted("the {} \"{}\" is a keyword of a language", what, given));
        need(!cell_address(given), formatted("the {} \"{}\" is a cell's address", what, given));
    }

    const FunctionInfo* f_ = nullptr;
    std::set<std::string_view> functions_;
};

}  // namespace

std::vector<std::string> faults_in_catalogue() { return faults_in({families().begin(), families().end()}); }

std::vector<std::string> faults_in(const std::vector<const Family*>& list)
{
    Finder finder;
    for (const Family* family : list)
        for (const FunctionInfo* f : family->functions) finder.look_at(*f);
    return finder.faults;
}

}  // namespace cutwater::generate

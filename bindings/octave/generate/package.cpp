// The Octave package's files: one for each function, with its help, and the package's index.
#include "generate/product.hpp"

#include "answers/questions.hpp"

namespace cutwater::generate {
namespace {

void comment(std::string& to, std::string_view text, std::string_view lead = "")
{
    const std::string blank(lead.size(), ' ');
    bool first = true;
    for (const std::string& line : wrap(text, 100 - lead.size())) {
        put(to, "## {}{}\n", first ? lead : std::string_view(blank), line);
        first = false;
    }
}

constexpr std::string_view load = "  persistent loaded = cutwater.load_library ();  # loads the compiled part once\n";

Product function_file(const FunctionInfo& f)
{
    std::string names;
    for (const InputInfo& in : f.inputs) put(names, "{}{}", names.empty() ? "" : ", ", in.full_name);
    std::string text;
    comment(text, formatted("result = cutwater.{} ({})", f.name, names));
    put(text, "##\n");
    comment(text, sentence(f.meaning));
    put(text, "##\n## Inputs; [] leaves out one that has a default, a matrix for a quantity is computed element by "
              "element:\n");
    for (const InputInfo& in : f.inputs)
        comment(text, formatted("{}; {}: {}", in.meaning, kind_text(in), permitted_text(in)),
                formatted("  {}: ", in.full_name));
    put(text, "## {}:\n", f.results.size() == 1 ? "Result" : "Results, fields of a struct");
    for (const ResultInfo& out : f.results) {
        std::string meaning = out.meaning;
        if (out.kind == Kind::choice) meaning += formatted(": {}", words_text(out.words));
        comment(text, meaning, formatted("  {}: ", out.full_name));
    }
    put(text, "##\n");
    comment(text, f.equation, "Equation: ");
    for (const RelationInfo& r : f.relations)
        comment(text, r.sentence, formatted("Must hold of {}: ", f.inputs[r.inputs.front()].full_name));
    comment(text, f.source, "Source: ");
    for (const char* caution : f.cautions) comment(text, caution, "Caution: ");
    comment(text, formatted("{} gives {}", f.example.inputs, f.example.results), "Example: ");
    put(text, "\nfunction result = {} (varargin)\n{}", f.name, load);
    put(text,
        "  if (nargin > {0})\n    error (\"cutwater:wrong_count\", \"{1} takes {0} inputs; %d were given.\", "
        "nargin);\n  endif\n",
        f.inputs.size(), f.name);
    put(text, "  varargin(nargin + 1 : {}) = {{[]}};\n  result = cutwater_{} (varargin{{:}});\nendfunction\n\n# {}.\n",
        f.inputs.size(), f.name, made_by);
    return {formatted("octave/+cutwater/{}.m", f.name), text};
}

Product question_file(const QuestionInfo& q)
{
    std::string names;
    for (const QuestionArgument& a : q.arguments)
        put(names, "{}{}", names.empty() ? "" : ", ", a.asked == Asked::arguments ? "..." : a.name);
    std::string text;
    comment(text, formatted("result = cutwater.{} ({})", q.name, names));
    put(text, "##\n");
    comment(text, sentence(q.meaning));
    put(text, "##\n");
    for (const QuestionArgument& a : q.arguments)
        comment(text, formatted("{}{}", a.meaning, a.optional ? "; [] for none" : ""), formatted("  {}: ", a.name));
    for (const QuestionResult& r : q.results) comment(text, r.meaning, formatted("  -> {}: ", r.name));
    put(text,
        "\nfunction result = {} (varargin)\n{}  result = cutwater_question (\"{}\", varargin);\nendfunction\n\n# {}.\n",
        q.name, load, q.name, made_by);
    return {formatted("octave/+cutwater/{}.m", q.name), text};
}

std::vector<Product> octave_package()
{
    std::vector<Product> products;
    std::string index = "cutwater >> Cutwater\n";
    for (const Family* family : families()) {
        put(index, "{}\n", family->title);
        for (const FunctionInfo* f : family->functions) {
            products.push_back(function_file(*f));
            put(index, " cutwater.{}\n", f->name);
        }
    }
    put(index, "Questions\n");
    for (const QuestionInfo& q : questions()) {
        products.push_back(question_file(q));
        put(index, " cutwater.{}\n", q.name);
    }
    products.push_back({"octave/INDEX", index});
    return products;
}

const Registered registered(octave_package);

}  // namespace
}  // namespace cutwater::generate

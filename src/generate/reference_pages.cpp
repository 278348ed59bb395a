// docs/functions: a page a family and an index.
#include "generate/c_signature.hpp"
#include "generate/product.hpp"

#include "answers/questions.hpp"
#include "catalogue/prose.hpp"

namespace cutwater::generate {
namespace {

/// A cell of a Markdown table.
std::string cell(std::string_view text)
{
    std::string made;
    for (const char c : text) {
        if (c == '|') made += '\\';
        made += c;
    }
    return made;
}

std::string unit_text(const UnitInfo* unit) { return unit && *unit->suffix ? unit->symbol : "-"; }

void write_function(std::string& to, const FunctionInfo& f)
{
    put(to, "\n## {}\n\n{}.\n\n", f.name, f.meaning);
    if (*f.also) {
        std::string also(f.also);
        for (std::size_t at = 0; (at = also.find('|', at)) != std::string::npos;) also.replace(at, 1, ", ");
        put(to, "Also: {}.\n\n", also);
    }
    put(to, "    {}\n\n", f.equation);
    put(to, "| given | symbol | unit | permitted | meaning |\n|---|---|---|---|---|\n");
    for (const InputInfo& in : f.inputs)
        put(to, "| `{}` | {} | {} | {} | {} |\n", in.full_name, cell(in.symbol), cell(unit_text(in.unit)),
            cell(permitted_text(in)), cell(in.meaning));
    put(to, "\n| returned | symbol | unit | meaning |\n|---|---|---|---|\n");
    for (const ResultInfo& out : f.results) {
        std::string meaning = out.meaning;
        for (std::size_t i = 0; i < out.words.size(); ++i)
            meaning += formatted("{}\"{}\"", i ? ", " : ": ", out.words[i]);
        put(to, "| `{}` | {} | {} | {} |\n", out.full_name, cell(out.symbol), cell(unit_text(out.unit)), cell(meaning));
    }
    put(to, "\n");
    for (const ResultInfo& out : f.results)
        if (const std::string scatter = prose<const ResultInfo&>(write_scatter, out); !scatter.empty())
            put(to, "Scatter of `{}`: {}; `uncertainty` adds it.\n\n", out.name, scatter);
    for (std::size_t i = 0; i < f.relations.size(); ++i)
        put(to, "Must hold of `{}`: {}.\n\n", f.inputs[f.relations[i].inputs.front()].name, f.relations[i].sentence);
    put(to, "Source: {}.\n\n", f.source);
    for (const char* caution : f.cautions) put(to, "> Caution: {}\n>\n", caution);
    if (!f.cautions.empty()) to.resize(to.size() - 2), put(to, "\n");
    put(to, "Example: `{}({})` gives `{}` ({}).\n", f.name, f.example.inputs, f.example.results, f.example.source);
}

const char* layout_text(Layout layout)
{
    switch (layout) {
    case Layout::row: return "side by side in one row";
    case Layout::column: return "down one column";
    case Layout::table: return "a row each";
    case Layout::one: break;
    }
    return "one cell";
}

Product questions_page()
{
    std::string page;
    put(page,
        "<!-- {} -->\n\n# Questions\n\nThe calls that are not one formula. They have the same name at every door, in "
        "capitals in a cell; what is told here is "
        "what every door and its help say. In a script arguments may also be named; "
        "[../guide/answers.md](../guide/answers.md) shows each.\n",
        made_by);
    for (const QuestionInfo& q : questions()) {
        put(page, "\n## {}\n\n{}.\n\n", q.name, q.meaning);
        if (!q.arguments.empty()) put(page, "| given | meaning |\n|---|---|\n");
        for (const QuestionArgument& a : q.arguments)
            put(page, "| `{}` | {}{} |\n", a.name, cell(a.meaning), a.optional ? "; may be left out" : "");
        put(page, "\n| returned | meaning |\n|---|---|\n");
        for (const QuestionResult& r : q.results) put(page, "| `{}` | {} |\n", r.name, cell(r.meaning));
        put(page, "\nIn cells: `{}`, {}. In C: `{}`.\n", capitals(q.name), layout_text(q.layout), q.c_name);
        if (*q.example) put(page, "\nExample: `={}`\n", q.example);
    }
    return {"docs/functions/questions.md", page};
}

std::vector<Product> reference_pages()
{
    std::vector<Product> pages;
    std::string index;
    put(index,
        "<!-- {} -->\n\n# Functions\n\nOne page a family. Numbers without a unit carry the unit that the name ends in; "
        "a text may carry any other unit of the "
        "quantity. `each` speaks of every number of a series.\n",
        made_by);
    for (const Family* family : families()) {
        std::string page;
        put(page, "<!-- {} -->\n\n# {}\n", made_by, family->title);
        put(index, "\n## [{}]({}.md)\n\n", family->title, family->name);
        for (const FunctionInfo* f : family->functions) {
            write_function(page, *f);
            put(index, "- [{0}]({1}.md#{0}): {2}\n", f->name, family->name, f->meaning);
        }
        pages.push_back({formatted("docs/functions/{}.md", family->name), page});
    }
    put(index, "\n## [Questions](questions.md)\n\n");
    for (const QuestionInfo& q : questions()) put(index, "- [{0}](questions.md#{0}): {1}\n", q.name, q.meaning);
    put(index, "\n## [Units](units.md)\n\nEvery spelling that is read, a list a quantity.\n");
    pages.push_back(questions_page());
    pages.push_back({"docs/functions/README.md", index});
    return pages;
}

const Registered registered(reference_pages);

}  // namespace
}  // namespace cutwater::generate

// docs/functions: a page a family and an index.
#include "generate/c_signature.hpp"
#include "generate/product.hpp"

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

std::string permitted(const InputInfo& in)
{
    std::string text;
    if (in.kind == Kind::choice) {
        for (const char* word : in.words) text += fmt::format("{}\"{}\"", text.empty() ? "" : ", ", word);
    } else {
        text = interval_text(in);
        if (in.kind == Kind::series)
            text = fmt::format("series of at least {}{}; each {}", in.least_points, in.rising ? ", rising" : "", text);
    }
    if (in.has_default)
        text += in.kind == Kind::choice ? fmt::format("; if left out: \"{}\"", in.words[static_cast<std::size_t>(in.fallback)])
                                        : fmt::format("; if left out: {:.10g}", in.fallback);
    return text;
}

void write_function(std::string& to, const FunctionInfo& f)
{
    put(to, "\n## {}\n\n{}.\n\n    {}\n\n", f.name, f.meaning, f.equation);
    put(to, "| given | symbol | unit | permitted | meaning |\n|---|---|---|---|---|\n");
    for (const InputInfo& in : f.inputs)
        put(to, "| `{}` | {} | {} | {} | {} |\n", in.full_name, cell(in.symbol), cell(unit_text(in.unit)), cell(permitted(in)), cell(in.meaning));
    put(to, "\n| returned | symbol | unit | meaning |\n|---|---|---|---|\n");
    for (const ResultInfo& out : f.results) {
        std::string meaning = out.meaning;
        for (std::size_t i = 0; i < out.words.size(); ++i) meaning += fmt::format("{}\"{}\"", i ? ", " : ": ", out.words[i]);
        put(to, "| `{}` | {} | {} | {} |\n", out.full_name, cell(out.symbol), cell(unit_text(out.unit)), cell(meaning));
    }
    put(to, "\n");
    for (std::size_t i = 0; i < f.relations.size(); ++i) put(to, "Must hold of `{}`: {}.\n\n", f.inputs[f.relations[i].inputs.front()].name, f.relations[i].sentence);
    put(to, "Source: {}.\n\n", f.source);
    for (const char* caution : f.cautions) put(to, "> Caution: {}\n>\n", caution);
    if (!f.cautions.empty()) to.resize(to.size() - 2), put(to, "\n");
    put(to, "Example: `{}({})` gives `{}` ({}).\n", f.name, f.example.inputs, f.example.results, f.example.source);
}

}  // namespace

std::vector<Product> reference_pages()
{
    std::vector<Product> pages;
    std::string index;
    put(index, "<!-- {} -->\n\n# Functions\n\nOne page a family. Numbers without a unit carry the unit that the name ends in; a text may carry any other unit of the "
               "quantity. `each` speaks of every number of a series.\n", made_by);
    for (const Family* family : families()) {
        std::string page;
        put(page, "<!-- {} -->\n\n# {}\n", made_by, family->title);
        put(index, "\n## [{}]({}.md)\n\n", family->title, family->name);
        for (const FunctionInfo* f : family->functions) {
            write_function(page, *f);
            put(index, "- [{0}]({1}.md#{0}): {2}\n", f->name, family->name, f->meaning);
        }
        pages.push_back({fmt::format("docs/functions/{}.md", family->name), page});
    }
    pages.push_back({"docs/functions/README.md", index});
    return pages;
}

}  // namespace cutwater::generate

// include/cutwater/cutwater.h: every function with what an engineer must know of it.
#include "generate/product.hpp"
#include "generate/c_signature.hpp"

namespace cutwater::generate {
namespace {

void comment_lines(std::string& to, std::string_view lead, std::string_view text)
{
    const std::string blank(lead.size(), ' ');
    bool first = true;
    for (const std::string& line : wrap(text, 118 - lead.size())) {
        put(to, " * {}{}\n", first ? lead : std::string_view(blank), line);
        first = false;
    }
}

void describe(std::string& to, const FunctionInfo& f)
{
    put(to, "/*\n");
    comment_lines(to, "", formatted("{}.", f.meaning));
    put(to, " *\n");
    for (const InputInfo& in : f.inputs)
        comment_lines(to, formatted("  {:<28} ", in.full_name), formatted("{}; {}", in.meaning, permitted_text(in)));
    for (const ResultInfo& out : f.results) comment_lines(to, formatted("  -> {:<25} ", out.full_name), out.meaning);
    put(to, " *\n");
    comment_lines(to, "  Equation: ", f.equation);
    for (std::size_t i = 0; i < f.relations.size(); ++i)
        comment_lines(to, formatted("  Must hold of {}: ", f.inputs[f.relations[i].inputs.front()].name),
                      f.relations[i].sentence);
    comment_lines(to, "  Source: ", f.source);
    for (const char* caution : f.cautions) comment_lines(to, "  Caution: ", caution);
    put(to, " */\n");
}

Product family_header(const Family& family)
{
    const std::string guard = formatted("CUTWATER_FAMILIES_{}_H", capitals(family.name));
    std::string text;
    put(text,
        "/* {}. */\n/* {}. */\n#ifndef {}\n#define {}\n\n#include <cutwater/base.h>\n\n#ifdef __cplusplus\nextern "
        "\"C\" {{\n#endif\n",
        made_by, family.title, guard, guard);
    for (const FunctionInfo* f : family.functions) {
        put(text, "\n");
        describe(text, *f);
        put(text, "CUTWATER_API {};\n", direct_signature(*f));
        if (f->rows) put(text, "CUTWATER_API {};\n", rows_signature(*f));
    }
    put(text, "\n#ifdef __cplusplus\n}}\n#endif\n\n#endif\n");
    return {formatted("include/cutwater/families/{}.h", family.name), text};
}

std::vector<Product> c_header()
{
    std::string text;
    put(text, "/* {}. */\n", made_by);
    put(text, "/* The flat C API. Every function returns a cutwater_status; on refusal numbers are NaN, words are \"\" "
              "and refusal, if not\n"
              "   null, tells which argument, its value, what is permitted and why. Numbers carry the unit that their "
              "name ends in. An input\n"
              "   with a default is left out by cutwater_left_out(), a choice by a null pointer. The form ending in "
              "_rows computes a column\n"
              "   a call; it stores a word as its position among the words. */\n"
              "#ifndef CUTWATER_H\n#define CUTWATER_H\n\n#include <cutwater/library.h>\n\n");
    std::vector<Product> products;
    for (const Family* family : families()) {
        put(text, "#include <cutwater/families/{}.h>  /* {} */\n", family->name, family->title);
        products.push_back(family_header(*family));
    }
    put(text, "\n#endif\n");
    products.push_back({"include/cutwater/cutwater.h", text});
    return products;
}

const Registered registered(c_header);

}  // namespace
}  // namespace cutwater::generate

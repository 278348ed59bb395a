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
    comment_lines(to, "", fmt::format("{}.", f.meaning));
    put(to, " *\n");
    for (const InputInfo& in : f.inputs) {
        std::string text = fmt::format("{}", in.meaning);
        if (in.kind == Kind::choice) {
            text += ": one of";
            for (const char* word : in.words) text += fmt::format(" \"{}\"", word);
        } else {
            if (in.kind == Kind::series) text += fmt::format("; at least {} points{}", in.least_points, in.rising ? ", rising" : "");
            text += fmt::format("; {}", interval_text(in));
        }
        if (in.has_default)
            text += in.kind == Kind::choice ? fmt::format("; usually \"{}\"", in.words[static_cast<std::size_t>(in.fallback)])
                                            : fmt::format("; usually {:.10g}", in.fallback);
        comment_lines(to, fmt::format("  {:<28} ", in.full_name), text);
    }
    for (const ResultInfo& out : f.results) comment_lines(to, fmt::format("  -> {:<25} ", out.full_name), out.meaning);
    put(to, " *\n");
    comment_lines(to, "  Equation: ", f.equation);
    for (std::size_t i = 0; i < f.relations.size(); ++i) comment_lines(to, fmt::format("  Must hold of {}: ", f.inputs[f.relations[i].inputs.front()].name), f.relations[i].sentence);
    comment_lines(to, "  Source: ", f.source);
    for (const char* caution : f.cautions) comment_lines(to, "  Caution: ", caution);
    put(to, " */\n");
}

}  // namespace

std::vector<Product> c_header()
{
    std::string text;
    put(text, "/* {}. */\n", made_by);
    put(text,
        "/* The flat C API. Every function returns a cutwater_status; on refusal numbers are NaN, words are \"\" and refusal, if not\n"
        "   null, tells which argument, its value, what is permitted and why. Numbers carry the unit that their name ends in.\n"
        "   The form ending in _rows computes a column a call; it stores a word as its position among the words. */\n"
        "#ifndef CUTWATER_H\n#define CUTWATER_H\n\n#include <cutwater/base.h>\n#include <cutwater/library.h>\n\n"
        "#ifdef __cplusplus\nextern \"C\" {{\n#endif\n");
    for (const Family* family : families()) {
        put(text, "\n/* ---- {} ---- */\n", family->title);
        for (const FunctionInfo* f : family->functions) {
            put(text, "\n");
            describe(text, *f);
            put(text, "CUTWATER_API {};\n", direct_signature(*f));
            if (f->rows) put(text, "CUTWATER_API {};\n", rows_signature(*f));
        }
    }
    put(text, "\n#ifdef __cplusplus\n}}\n#endif\n\n#endif\n");
    return {{"include/cutwater/cutwater.h", text}};
}

}  // namespace cutwater::generate

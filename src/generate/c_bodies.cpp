// The bodies of the flat functions, one file a family: each only hands its arguments on.
#include "generate/c_signature.hpp"
#include "generate/product.hpp"

namespace cutwater::generate {
namespace {

/// Parameters joined, broken into lines that hang under the opening bracket.
std::string parameter_list(std::string head, const std::vector<std::string>& parameters)
{
    const std::string hang(head.size() + 1, ' ');
    std::string text = head + "(";
    std::size_t column = text.size();
    for (std::size_t i = 0; i < parameters.size(); ++i) {
        const std::string piece = parameters[i] + (i + 1 < parameters.size() ? "," : ")");
        if (i > 0 && column + 1 + piece.size() > 118) {
            text += "\n" + hang;
            column = hang.size();
        } else if (i > 0) {
            text += " ";
            ++column;
        }
        text += piece;
        column += piece.size();
    }
    return text;
}

std::string joined(const std::vector<std::string>& pieces)
{
    std::string text;
    for (const std::string& piece : pieces) text += (text.empty() ? "" : ", ") + piece;
    return text;
}

std::string direct_body(const Family& family, std::size_t place)
{
    const FunctionInfo& f = *family.functions[place];
    std::vector<std::string> handed;
    for (const InputInfo& in : f.inputs) {
        handed.emplace_back(in.full_name);
        if (in.kind == Kind::series) handed.push_back(formatted("{}_count", in.full_name));
    }
    for (const ResultInfo& out : f.results) {
        handed.emplace_back(out.full_name);
        if (out.kind == Kind::series)
            handed.insert(handed.end(),
                          {formatted("{}_capacity", out.full_name), formatted("{}_count", out.full_name)});
    }
    return formatted("{}\n{{\n    return flat({}_family, {}, {}, refusal);\n}}\n", direct_signature(f), family.name,
                     place, joined(handed));
}

std::string rows_body(const Family& family, std::size_t place)
{
    const FunctionInfo& f = *family.functions[place];
    std::vector<std::string> columns;
    std::vector<std::string> shared;
    std::vector<std::string> words;
    std::vector<std::string> results;
    for (const InputInfo& i : f.inputs) {
        columns.push_back(i.kind == Kind::quantity ? i.full_name : "{}");
        shared.push_back(i.kind == Kind::series ? formatted("Given{{0, {{{0}, {0}_count, 1}}, 0}}", i.full_name)
                                                : "{}");
        words.push_back(i.kind == Kind::choice ? i.full_name : "nullptr");
    }
    for (const ResultInfo& o : f.results) results.push_back(o.full_name);
    return formatted(
        "{}\n{{\n    const cutwater_column columns[] = {{{}}};\n    const Given shared[] = {{{}}};\n"
        "    const char* const words[] = {{{}}};\n    const cutwater_result_column results[] = {{{}}};\n"
        "    return flat_rows(*{}_family.functions[{}], rows, columns, shared, words, results, report);\n}}\n",
        rows_signature(f), joined(columns), joined(shared), joined(words), joined(results), family.name, place);
}

}  // namespace

std::string direct_signature(const FunctionInfo& f)
{
    std::vector<std::string> parameters;
    for (const InputInfo& in : f.inputs) switch (in.kind) {
        case Kind::quantity: parameters.push_back(formatted("double {}", in.full_name)); break;
        case Kind::choice: parameters.push_back(formatted("const char *{}", in.full_name)); break;
        case Kind::series:
            parameters.push_back(formatted("const double *{}", in.full_name));
            parameters.push_back(formatted("size_t {}_count", in.full_name));
            break;
        }
    for (const ResultInfo& out : f.results) switch (out.kind) {
        case Kind::quantity: parameters.push_back(formatted("double *{}", out.full_name)); break;
        case Kind::choice: parameters.push_back(formatted("const char **{}", out.full_name)); break;
        case Kind::series:
            parameters.push_back(formatted("double *{}", out.full_name));
            parameters.push_back(formatted("size_t {}_capacity", out.full_name));
            parameters.push_back(formatted("size_t *{}_count", out.full_name));
            break;
        }
    parameters.emplace_back("cutwater_refusal *refusal");
    return parameter_list(formatted("cutwater_status cutwater_{}", f.name), parameters);
}

std::string rows_signature(const FunctionInfo& f)
{
    std::vector<std::string> parameters{"size_t rows"};
    for (const InputInfo& in : f.inputs) switch (in.kind) {
        case Kind::quantity: parameters.push_back(formatted("cutwater_column {}", in.full_name)); break;
        case Kind::choice: parameters.push_back(formatted("const char *{}", in.full_name)); break;
        case Kind::series:
            parameters.push_back(formatted("const double *{}", in.full_name));
            parameters.push_back(formatted("size_t {}_count", in.full_name));
            break;
        }
    for (const ResultInfo& out : f.results) parameters.push_back(formatted("cutwater_result_column {}", out.full_name));
    parameters.emplace_back("cutwater_rows_report *report");
    return parameter_list(formatted("cutwater_status cutwater_{}_rows", f.name), parameters);
}

namespace {

std::vector<Product> c_bodies()
{
    std::vector<Product> products;
    for (const Family* family : families()) {
        std::string text;
        put(text, "// {}.\n#include <cutwater/cutwater.h>\n\n#include \"capi/flat.hpp\"\n\n", made_by);
        put(text, "namespace cutwater {{\nextern const Family {}_family;\n}}\n\n", family->name);
        put(text, "using namespace cutwater;\nusing namespace cutwater::capi;\n\nextern \"C\" {{\n");
        for (std::size_t place = 0; place < family->functions.size(); ++place) {
            put(text, "\n{}", direct_body(*family, place));
            if (family->functions[place]->rows) put(text, "\n{}", rows_body(*family, place));
        }
        put(text, "\n}}  // extern \"C\"\n");
        products.push_back({formatted("capi/{}.cpp", family->name), text});
    }
    return products;
}

const Registered registered(c_bodies);

}  // namespace
}  // namespace cutwater::generate

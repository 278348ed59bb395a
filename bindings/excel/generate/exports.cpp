// excel/exports.cpp: an entry point each function and question, which is how Excel tells one from another.
#include "generate/product.hpp"

#include "answers/questions.hpp"

#include <cutwater/base.h>

namespace cutwater::generate {
namespace {

std::string entry_point(std::string_view name, std::string_view call, std::size_t position, std::size_t arguments)
{
    std::string parameters;
    std::string given;
    for (std::size_t i = 0; i < arguments; ++i) {
        put(parameters, "{}const Value* a{}", i ? ", " : "", i);
        put(given, "{}a{}", i ? ", " : "", i);
    }
    return formatted("CUTWATER_ENTRY Value* {}({})\n{{\n    return {}({}, {{{}}});\n}}\n", capitals(name), parameters,
                     call, position, given);
}

std::vector<Product> excel_exports()
{
    std::string text;
    put(text,
        "// {}.\n#include \"cell.hpp\"\n\n#define CUTWATER_ENTRY extern \"C\" __declspec(dllexport)\n\n"
        "using namespace cutwater::excel;\n\n",
        made_by);
    std::size_t position = 0;
    for (const Family* family : families())
        for (const FunctionInfo* f : family->functions)
            text += entry_point(f->name, "function_cell", position++, f->inputs.size());
    position = 0;
    for (const QuestionInfo& q : questions()) {
        std::size_t arguments = 0;
        for (const QuestionArgument& a : q.arguments)
            arguments += a.asked == Asked::arguments ? CUTWATER_MOST_INPUTS : 1;
        text += entry_point(q.name, "question_cell", position++, arguments);
    }
    return {{"excel/exports.cpp", text}};
}

const Registered registered(excel_exports);

}  // namespace
}  // namespace cutwater::generate

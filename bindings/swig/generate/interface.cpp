// One SWIG interface for every language: each function hands its arguments on with its own position in the catalogue.
#include "generate/product.hpp"

namespace cutwater::generate {
namespace {

void declare(std::string& to, const FunctionInfo& f)
{
    std::string parameters;
    std::string names;
    for (const InputInfo& in : f.inputs) {
        parameters += formatted("{}Given {}{}", parameters.empty() ? "" : ", ", in.full_name,
                                in.has_default ? " = Given()" : "");
        names += formatted("{}{}", names.empty() ? "" : ", ", in.full_name);
    }
    put(to, "\ninline Answer {}({})\n{{\n", f.name, parameters);
    put(to, "    static const int32_t position_ = cutwater_find(\"{}\");\n", f.name);
    put(to, "    const Given given_[] = {{{}}};\n    return answer(position_, given_, {});\n}}\n", names,
        f.inputs.size());
}

std::vector<Product> swig_interface()
{
    std::string text;
    put(text, "// {}.\n// What each language makes of Given and Answer, its typemaps and its door say.\n", made_by);
    put(text, "%inline %{{\nnamespace cutwater_door {{\n");
    for (const Family* family : families())
        for (const FunctionInfo* f : family->functions) declare(text, *f);
    put(text, "\n}}  // namespace cutwater_door\n%}}\n");
    return {{"swig/functions.i", text}};
}

const Registered registered(swig_interface);

}  // namespace
}  // namespace cutwater::generate

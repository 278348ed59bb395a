// calc/: the Calc component's interface, its class, and what the function wizard shows.
#include "methods.hpp"

namespace cutwater::generate {
namespace {

std::string escaped(std::string_view text)
{
    std::string made;
    for (const char c : text) switch (c) {
        case '&': made += "&amp;"; break;
        case '<': made += "&lt;"; break;
        case '>': made += "&gt;"; break;
        case '"': made += "&quot;"; break;
        default: made += c;
        }
    return made;
}

std::string interface_text(const std::vector<CalcMethod>& methods)
{
    std::string text;
    put(text, "// {}.\nmodule org {{ module cutwater {{\n\ninterface XCalc\n{{\n", made_by);
    for (const CalcMethod& m : methods) {
        std::string list;
        for (const CalcParameter& p : m.parameters)
            put(list, "{}\n        [in] {} {}", list.empty() ? "" : ",", p.rest ? "sequence< any >" : "any", p.name);
        put(text, "    {} {}({})\n        raises (com::sun::star::lang::IllegalArgumentException);\n",
            m.table ? "sequence< sequence< any > >" : "any", m.name, list);
    }
    put(text, "}};\n\nservice Calc : XCalc;\n\n}}; }};\n");
    return text;
}

std::string class_text(const std::vector<CalcMethod>& methods)
{
    std::string text;
    put(text,
        "// {}.\n#pragma once\n\n#include \"cell.hpp\"\n\n#include <com/sun/star/lang/XServiceInfo.hpp>\n"
        "#include <cppuhelper/implbase2.hxx>\n#include <org/cutwater/XCalc.hpp>\n\nnamespace cutwater::calc {{\n\n",
        made_by);
    put(text, "// Looked up by name when the component is loaded.\ninline const std::vector<std::int32_t> position = "
              "positions_of({{\n");
    for (const Family* family : families())
        for (const FunctionInfo* f : family->functions) put(text, "    \"{}\",\n", f->name);
    put(text, "}});\n\nclass Functions : public cppu::WeakImplHelper2<org::cutwater::XCalc, "
              "com::sun::star::lang::XServiceInfo> {{\npublic:\n");
    for (const CalcMethod& m : methods) {
        std::string list;
        for (std::size_t i = 0; i < m.parameters.size(); ++i)
            put(list, "{}const {}& a{}", i ? ", " : "", m.parameters[i].rest ? "Row" : "Any", i);
        put(text, "    {} SAL_CALL {}({}) override\n    {{\n        {}\n    }}\n", m.table ? "Table" : "Any", m.name,
            list, m.body);
    }
    put(text, "}};\n\n}}  // namespace cutwater::calc\n");
    return text;
}

std::string localised(std::string_view property, std::string_view text)
{
    return formatted("<prop oor:name=\"{}\"><value xml:lang=\"en\">{}</value></prop>", property, escaped(text));
}

std::string wizard_text(const std::vector<CalcMethod>& methods)
{
    std::string text;
    put(text, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<!-- {} -->\n", made_by);
    put(text, "<oor:component-data xmlns:oor=\"http://openoffice.org/2001/registry\" "
              "xmlns:xs=\"http://www.w3.org/2001/XMLSchema\" "
              "oor:name=\"CalcAddIns\" oor:package=\"org.openoffice.Office\">\n<node oor:name=\"AddInInfo\">\n"
              "<node oor:name=\"org.cutwater.Calc\" oor:op=\"replace\">\n<node oor:name=\"AddInFunctions\">\n");
    for (const CalcMethod& m : methods) {
        put(text, "<node oor:name=\"{}\" oor:op=\"replace\">\n {}\n {}\n", m.name, localised("DisplayName", m.name),
            localised("Description", m.meaning));
        // Calc's categories are a closed list; ours is told by the description.
        put(text, " <prop oor:name=\"Category\"><value>Add-In</value></prop>\n {}\n <node oor:name=\"Parameters\">\n",
            localised("CompatibilityName", m.name));
        for (const CalcParameter& p : m.parameters)
            put(text, "  <node oor:name=\"{}\" oor:op=\"replace\">{}{}</node>\n", p.name,
                localised("DisplayName", p.shown), localised("Description", p.meaning));
        put(text, " </node>\n</node>\n");
    }
    put(text, "</node>\n</node>\n</node>\n</oor:component-data>\n");
    return text;
}

std::vector<Product> calc_component()
{
    std::vector<CalcMethod> methods = calc_functions();
    for (CalcMethod& m : calc_questions()) methods.push_back(std::move(m));
    return {{"calc/calc.idl", interface_text(methods)},
            {"calc/functions.hpp", class_text(methods)},
            {"calc/CalcAddIns.xcu", wizard_text(methods)}};
}

const Registered registered(calc_component);

}  // namespace
}  // namespace cutwater::generate

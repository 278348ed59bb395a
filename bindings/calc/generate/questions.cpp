// The calls that are not one formula as methods of the Calc component.
#include "methods.hpp"

#include "answers/questions.hpp"

namespace cutwater::generate {

std::vector<CalcMethod> calc_questions()
{
    std::vector<CalcMethod> made;
    for (const QuestionInfo& q : questions()) {
        CalcMethod m;
        m.name = capitals(q.name);
        m.meaning = formatted("Cutwater. {}", sentence(q.meaning));
        m.table = q.layout != Layout::one;
        std::string list;
        std::string rest = "Row()";
        for (const QuestionArgument& a : q.arguments) {
            const std::string place = formatted("a{}", m.parameters.size());
            if (a.asked == Asked::arguments)
                rest = place;
            else
                list += formatted("{}&{}", list.empty() ? "" : ", ", place);
            m.parameters.push_back({camel_case(a.name), a.name, sentence(a.meaning), a.asked == Asked::arguments});
        }
        m.body = formatted("return {}({}, {{{}}}, {});", m.table ? "question_cells" : "question_cell", made.size(),
                           list, rest);
        made.push_back(std::move(m));
    }
    return made;
}

}  // namespace cutwater::generate

#include "callee.hpp"

#include <algorithm>

namespace cutwater_door {
namespace {

Callee of_function(const Function& f, bool checked)
{
    Callee callee;
    callee.name = checked ? f.name + "_checked" : f.name;
    callee.function = &f;
    callee.checked = checked;
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        const auto input = static_cast<std::int32_t>(i);
        callee.arguments.emplace_back(cutwater_input_name(f.position, input));
        callee.required.push_back(!checked && !cutwater_input_optional(f.position, input));
    }
    for (std::size_t i = 0; i < f.results.size(); ++i)
        callee.results.emplace_back(cutwater_result_name(f.position, static_cast<std::int32_t>(i)));
    if (checked) callee.results.insert(callee.results.end(), {"refusal", "refusal_status", "refusal_input"});
    return callee;
}

Callee of_question(std::int32_t position, const Question& q)
{
    Callee callee;
    callee.name = q.name;
    callee.question = position;
    callee.results = q.results;
    cutwater_question_part part{};
    part.size = sizeof part;
    for (std::size_t i = 0; i < q.asked.size(); ++i) {
        cutwater_describe_question_argument(position, static_cast<std::int32_t>(i), &part);
        if (q.asked[i] != CUTWATER_ASKED_ARGUMENTS) {
            callee.arguments.push_back(q.arguments[i]);
            callee.required.push_back(!part.optional);
            continue;
        }
        for (std::size_t k = 1; k <= most_inputs; ++k) {
            callee.arguments.push_back("argument_" + std::to_string(k));
            callee.required.push_back(false);
        }
    }
    return callee;
}

std::vector<Callee> functions(bool checked)
{
    std::vector<Callee> list;
    for (std::int32_t i = 0; i < cutwater_function_count(); ++i) list.push_back(of_function(*function_at(i), checked));
    return list;
}

}  // namespace

const std::vector<Callee>& callees()
{
    static const std::vector<Callee> list = [] {
        std::vector<Callee> all = functions(false);
        for (std::int32_t i = 0; i < cutwater_question_count(); ++i) all.push_back(of_question(i, *question_at(i)));
        return all;
    }();
    return list;
}

const std::vector<Callee>& checked_callees()
{
    static const std::vector<Callee> list = functions(true);
    return list;
}

bool null_given(const Callee& callee, std::span<const Given> given)
{
    if (given.size() > callee.arguments.size()) return false;  // the library counts
    for (std::size_t i = 0; i < given.size(); ++i)
        if (callee.required[i] && given[i].null) return true;
    return false;
}

cutwater_status ask(const Callee& callee, std::span<const Given> given, Grid& grid, bool& null,
                    cutwater_refusal& refusal)
{
    const auto status = Asking<SqliteHost>().answer(callee.question, given, grid, refusal);
    null = status == CUTWATER_MISSING && std::any_of(given.begin(), given.end(), [](const Given& g) { return g.null; });
    return status;
}

std::string blamed(const Callee& callee, const cutwater_refusal& refusal)
{
    if (refusal.name[0]) return refusal.name;
    const auto argument = static_cast<std::size_t>(refusal.argument);
    return refusal.argument >= 0 && argument < callee.arguments.size() ? callee.arguments[argument] : std::string();
}

}  // namespace cutwater_door

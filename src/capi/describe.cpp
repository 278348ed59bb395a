// Everything that the records say, for doors that know no formula.
#include <cutwater/library.h>

#include "answers/finding.hpp"
#include "answers/questions.hpp"
#include "catalogue/guard.hpp"
#include "capi/sized.hpp"
#include "catalogue/families.hpp"
#include "catalogue/prose.hpp"
#include "catalogue/statuses.hpp"

#include <algorithm>
#include <limits>
#include <string>
#include <vector>

using namespace cutwater;

namespace {

const FunctionInfo* at(int32_t function)
{
    return function >= 0 && static_cast<std::size_t>(function) < function_count()
               ? &function_at(static_cast<std::size_t>(function))
               : nullptr;
}

template <class List>
auto entry_at(const List& list, int32_t position) -> decltype(&list[0])
{
    return position >= 0 && static_cast<std::size_t>(position) < list.size() ? &list[static_cast<std::size_t>(position)]
                                                                             : nullptr;
}

template <class Info>
cutwater_status hand_over(const Info& made, Info* to)
{
    if (!to || to->size < sizeof(std::size_t)) return CUTWATER_MISSING;
    capi::write_sized(made, *to);
    return CUTWATER_OK;
}

const char* unit_of(const UnitInfo* unit) { return unit_symbol(unit); }

int32_t kind_of(Kind kind)
{
    return kind == Kind::quantity ? CUTWATER_NUMBER : kind == Kind::choice ? CUTWATER_TEXT : CUTWATER_SERIES;
}

/// Sentences of every input, made when the first is asked for and kept.
struct Sentences {
    struct Input {
        std::string takes;
        std::string permitted;
    };
    std::vector<std::vector<Input>> of;

    Sentences()
    {
        for (std::size_t i = 0; i < function_count(); ++i) {
            std::vector<Input>& inputs = of.emplace_back();
            for (const InputInfo& in : function_at(i).inputs)
                inputs.push_back(
                    {prose<const InputInfo&>(write_kind, in), prose<const InputInfo&>(write_permitted, in)});
        }
    }
};

const Sentences& sentences()
{
    static const Sentences made;
    return made;
}

}  // namespace

extern "C" {

const char* cutwater_status_name(int32_t status)
{
    const StatusInfo* s = entry_at(statuses(), status);
    return s ? s->name : "";
}

const char* cutwater_status_meaning(int32_t status)
{
    const StatusInfo* s = entry_at(statuses(), status);
    return s ? s->meaning : "";
}

cutwater_status cutwater_describe_function(int32_t function, cutwater_function_info* info)
{
    const FunctionInfo* f = at(function);
    if (!f) return CUTWATER_WRONG_COUNT;
    const Family& family = family_of(static_cast<std::size_t>(function));
    cutwater_function_info made{};
    made.name = f->name;
    made.type_name = f->type_name;
    made.family = family.name;
    made.family_title = family.title;
    made.meaning = f->meaning;
    made.also = f->also;
    made.equation = f->equation;
    made.source = f->source;
    made.example_inputs = f->example.inputs;
    made.example_results = f->example.results;
    made.example_source = f->example.source;
    made.inputs = static_cast<int32_t>(f->inputs.size());
    made.results = static_cast<int32_t>(f->results.size());
    made.relations = static_cast<int32_t>(f->relations.size());
    made.cautions = static_cast<int32_t>(f->cautions.size());
    made.has_rows = f->rows != nullptr;
    return hand_over(made, info);
}

cutwater_status cutwater_describe_input(int32_t function, int32_t input, cutwater_input_info* info)
{
    cutwater_refusal refusal;
    return guard(&refusal, [&]() -> cutwater_status {
        const FunctionInfo* f = at(function);
        const InputInfo* in = f ? entry_at(f->inputs, input) : nullptr;
        if (!in) return CUTWATER_WRONG_COUNT;
        const auto& said = sentences().of[static_cast<std::size_t>(function)][static_cast<std::size_t>(input)];
        cutwater_input_info made{};
        made.name = in->full_name;
        made.short_name = in->name;
        made.symbol = in->symbol;
        made.meaning = in->meaning;
        made.quantity = in->quantity ? in->quantity->name : "";
        made.unit = unit_of(in->unit);
        made.kind = kind_of(in->kind);
        made.optional = in->has_default;
        made.whole = in->whole;
        made.rising = in->rising;
        made.least_points = in->least_points;
        made.low = in->interval.low;
        made.high = in->interval.high;
        made.low_open = in->interval.low_open;
        made.high_open = in->interval.high_open;
        const bool word = in->kind == Kind::choice;
        made.fallback = in->has_default && !word ? in->fallback : std::numeric_limits<double>::quiet_NaN();
        made.fallback_word = in->has_default && word ? in->words[static_cast<std::size_t>(in->fallback)] : "";
        made.words = static_cast<int32_t>(in->words.size());
        made.takes = said.takes.c_str();
        made.permitted = said.permitted.c_str();
        return hand_over(made, info);
    });
}

cutwater_status cutwater_describe_result(int32_t function, int32_t result, cutwater_result_info* info)
{
    const FunctionInfo* f = at(function);
    const ResultInfo* out = f ? entry_at(f->results, result) : nullptr;
    if (!out) return CUTWATER_WRONG_COUNT;
    cutwater_result_info made{};
    made.name = out->full_name;
    made.short_name = out->name;
    made.symbol = out->symbol;
    made.meaning = out->meaning;
    made.quantity = out->quantity ? out->quantity->name : "";
    made.unit = unit_of(out->unit);
    made.kind = kind_of(out->kind);
    made.words = static_cast<int32_t>(out->words.size());
    made.scatter = out->scatter.amount;
    made.scatter_in_unit = out->scatter.in_unit;
    return hand_over(made, info);
}

const char* cutwater_relation(int32_t function, int32_t relation)
{
    const FunctionInfo* f = at(function);
    const RelationInfo* found = f ? entry_at(f->relations, relation) : nullptr;
    return found ? found->sentence : "";
}

int32_t cutwater_relation_input(int32_t function, int32_t relation, int32_t place)
{
    const FunctionInfo* f = at(function);
    const RelationInfo* found = f ? entry_at(f->relations, relation) : nullptr;
    const std::size_t* input = found ? entry_at(found->inputs, place) : nullptr;
    return input ? static_cast<int32_t>(*input) : -1;
}

const char* cutwater_caution(int32_t function, int32_t caution)
{
    const FunctionInfo* f = at(function);
    const char* const* found = f ? entry_at(f->cautions, caution) : nullptr;
    return found ? *found : "";
}

cutwater_status cutwater_find_function(const char* words, int32_t* functions, size_t capacity, size_t* count,
                                       cutwater_refusal* refusal)
{
    if (count) *count = 0;
    if (!words || !count || (!functions && capacity))
        return refuse(CUTWATER_MISSING, "find_function: a pointer is null.", refusal);
    return guard(refusal, [&]() -> cutwater_status {
        const auto found = find_functions(words);
        *count = found.size();
        std::copy_n(found.begin(), std::min(found.size(), capacity), functions);
        return CUTWATER_OK;
    });
}

int32_t cutwater_question_count(void) { return static_cast<int32_t>(questions().size()); }

cutwater_status cutwater_describe_question(int32_t question, cutwater_question_info* info)
{
    const QuestionInfo* q = entry_at(questions(), question);
    if (!q) return CUTWATER_WRONG_COUNT;
    cutwater_question_info made{};
    made.name = q->name;
    made.c_name = q->c_name;
    made.meaning = q->meaning;
    made.example = q->example;
    made.arguments = static_cast<int32_t>(q->arguments.size());
    made.results = static_cast<int32_t>(q->results.size());
    made.layout = static_cast<int32_t>(q->layout);
    return hand_over(made, info);
}

cutwater_status cutwater_describe_question_argument(int32_t question, int32_t argument, cutwater_question_part* part)
{
    const QuestionInfo* q = entry_at(questions(), question);
    const QuestionArgument* found = q ? entry_at(q->arguments, argument) : nullptr;
    if (!found) return CUTWATER_WRONG_COUNT;
    cutwater_question_part made{};
    made.name = found->name;
    made.meaning = found->meaning;
    made.asked = static_cast<int32_t>(found->asked);
    made.optional = found->optional;
    return hand_over(made, part);
}

cutwater_status cutwater_describe_question_result(int32_t question, int32_t result, cutwater_question_part* part)
{
    const QuestionInfo* q = entry_at(questions(), question);
    const QuestionResult* found = q ? entry_at(q->results, result) : nullptr;
    if (!found) return CUTWATER_WRONG_COUNT;
    cutwater_question_part made{};
    made.name = found->name;
    made.meaning = found->meaning;
    made.word = found->word;
    return hand_over(made, part);
}

}  // extern "C"

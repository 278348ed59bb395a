#include "bridge.h"

#include "host.hpp"

#include "common/questions.hpp"

#include <memory>
#include <new>

namespace cutwater_door {
namespace {

struct Held {
    Call call;
    Grid grid;
    std::vector<cw_cell> cells;
};

cw_cell cell_of(const cutwater_result& result)
{
    if (result.kind == CUTWATER_NUMBER) return {CW_NUMBER, result.number, nullptr, 0, nullptr, 0};
    if (result.kind == CUTWATER_TEXT)
        return {CW_TEXT, 0, result.text, std::char_traits<char>::length(result.text), nullptr, 0};
    return {CW_MANY, 0, nullptr, 0, result.series, result.length};
}

cw_cell cell_of(const Cell& cell)
{
    switch (cell.kind) {
    case Cell::Kind::number: return {CW_NUMBER, cell.number, nullptr, 0, nullptr, 0};
    case Cell::Kind::text: return {CW_TEXT, 0, cell.text.data(), cell.text.size(), nullptr, 0};
    default: return {};
    }
}

cutwater_status run(Held& held, const Function& f, std::span<const cw_given> given, cw_answer& answer)
{
    Arguments<PostgresqlHost> arguments;
    if (const auto status = arguments.read(f, given, answer.refusal); status != CUTWATER_OK) return status;
    const auto status = held.call.run(f, arguments.values().data(), arguments.values().size());
    answer.refusal = held.call.refusal();
    if (status != CUTWATER_OK) return status;
    for (std::size_t i = 0; i < f.results.size(); ++i) held.cells.push_back(cell_of(held.call.result(i)));
    answer.rows = 1;
    answer.columns = f.results.size();
    return status;
}

cutwater_status ask(Held& held, std::int32_t question, std::span<const cw_given> given, cw_answer& answer)
{
    const auto status = Asking<PostgresqlHost>().answer(question, given, held.grid, answer.refusal);
    if (status != CUTWATER_OK) return status;
    for (const Cell& cell : held.grid.cells) held.cells.push_back(cell_of(cell));
    answer.rows = held.grid.rows;
    answer.columns = held.grid.columns;
    return status;
}

/// No exception passes; what C++ holds is the answer's.
template <class Work>
cutwater_status guarded(cw_answer& answer, Work&& work)
{
    answer = cw_answer{};
    try {
        auto held = std::make_unique<Held>();
        const cutwater_status status = work(*held);
        if (status != CUTWATER_OK) return status;
        answer.cells = held->cells.data();
        answer.owner = held.release();
        return status;
    } catch (const std::bad_alloc&) {
        return refuse(CUTWATER_OUT_OF_MEMORY, "Memory ran out.", answer.refusal);
    } catch (...) {
        return refuse(CUTWATER_INTERNAL, "The library failed inside; please report the call.", answer.refusal);
    }
}

void blame(cw_answer& answer, std::string_view name)
{
    if (answer.refusal.name[0]) name = answer.refusal.name;
    name.copy(answer.blamed, sizeof answer.blamed - 1);
}

}  // namespace
}  // namespace cutwater_door

using namespace cutwater_door;

extern "C" cutwater_status cw_function(int32_t function, const cw_given* given, size_t count, cw_answer* answer)
{
    const cutwater_status status = guarded(*answer, [&](Held& held) {
        const Function* f = function_at(function);
        if (!f) return refuse(CUTWATER_UNKNOWN_FUNCTION, "There is no such function.", answer->refusal);
        return run(held, *f, {given, count}, *answer);
    });
    if (status != CUTWATER_OK) blame(*answer, "");
    return status;
}

extern "C" cutwater_status cw_question(int32_t question, const cw_given* given, size_t count, cw_answer* answer)
{
    return guarded(*answer, [&](Held& held) {
        const cutwater_status status = ask(held, question, {given, count}, *answer);
        const Question* q = question_at(question);
        const auto argument = static_cast<std::size_t>(answer->refusal.argument);
        const bool own = q && answer->refusal.argument >= 0 && argument < q->arguments.size();
        if (status != CUTWATER_OK) blame(*answer, own ? std::string_view(q->arguments[argument]) : "");
        return status;
    });
}

extern "C" void cw_release(cw_answer* answer)
{
    delete static_cast<Held*>(answer->owner);
    answer->owner = nullptr;
}

extern "C" int32_t cw_question_named(const char* name)
{
    try {
        return question_named(name);
    } catch (...) {
        return -1;
    }
}

// What the macro module calls in cutwater.dll: any function or question by its name, with Visual Basic's own values.
#include "variant.hpp"

#include "common/questions.hpp"

namespace cutwater::excel {
namespace {

using cutwater_door::Grid;
using cutwater_door::Kind;
using Given = std::span<const BasicValue>;

cutwater_status ask(const std::string& name, Given given, Grid& grid, cutwater_refusal& refusal)
{
    if (const std::int32_t question = cutwater_door::question_named(name); question >= 0)
        return cutwater_door::Asking<BasicHost>().answer(question, given, grid, refusal);
    const cutwater_door::Function* f = cutwater_door::function_named(name, refusal);
    if (!f) return CUTWATER_UNKNOWN_FUNCTION;
    cutwater_door::Arguments<BasicHost> arguments;
    if (const auto status = arguments.read(*f, given, refusal); status != CUTWATER_OK) return status;
    cutwater_door::Call call;
    const auto status = call.run(*f, arguments.values().data(), arguments.values().size());
    refusal = call.refusal();
    if (status == CUTWATER_OK) grid = results_of(*f, call);
    return status;
}

}  // namespace
}  // namespace cutwater::excel

/// given: an array of the arguments; those left out are missing. answer and sentence are variants of the caller's, in
/// each of which what was there before is freed. Answers a cutwater_status; sentence says why a call was refused.
extern "C" __declspec(dllexport) std::int32_t cutwater_macro_call(const VARIANT* name, const VARIANT* given,
                                                                  VARIANT* answer, VARIANT* sentence) noexcept
{
    using namespace cutwater::excel;
    if (!name || !given || !answer || !sentence) return CUTWATER_MISSING;
    try {
        const BasicValue called = view(*name);
        const BasicValue list = view(*given);
        std::vector<BasicValue> values;
        if (BasicHost::kind(list) == Kind::cells) values = BasicHost::cells(list).cells;
        while (!values.empty() && BasicHost::kind(values.back()) == Kind::left_out) values.pop_back();
        Grid grid;
        cutwater_refusal refusal{};
        const auto status = ask(BasicHost::kind(called) == Kind::text ? BasicHost::text(called) : "", values, grid,
                                refusal);
        if (status == CUTWATER_OK)
            put_answer(grid, *answer);
        else
            put_text(refusal.message, *sentence);
        return status;
    } catch (...) {
        return CUTWATER_OUT_OF_MEMORY;
    }
}

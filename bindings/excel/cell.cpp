#include "cell.hpp"

#include "answer.hpp"

#include "common/questions.hpp"

namespace cutwater::excel {
namespace {

using cutwater_door::Grid;
using Given = std::span<const Value* const>;

/// The arguments without those left out at the end: Excel sends all that a function could take.
Given given_of(std::initializer_list<const Value*> arguments)
{
    std::size_t count = arguments.size();
    while (count > 0 && CellHost::kind(arguments.begin()[count - 1]) == cutwater_door::Kind::left_out) --count;
    return {arguments.begin(), count};
}

cutwater_status run(std::int32_t position, Given given, Grid& grid)
{
    const cutwater_door::Function* f = cutwater_door::function_at(position);
    if (!f) return CUTWATER_UNKNOWN_FUNCTION;
    cutwater_refusal refusal{};
    cutwater_door::Arguments<CellHost> arguments;
    if (const auto status = arguments.read(*f, given, refusal); status != CUTWATER_OK) return status;
    cutwater_door::Call call;
    const auto status = call.run(*f, arguments.values().data(), arguments.values().size());
    if (status == CUTWATER_OK) grid = results_of(*f, call);
    return status;
}

template <class Call>
Value* guarded(std::initializer_list<const Value*> arguments, Call call) noexcept
{
    try {
        const Given given = given_of(arguments);
        Grid grid;
        if (call(given, grid) == CUTWATER_OK && !grid.cells.empty()) return answer(grid);
        const Value* error = error_among(given.data(), given.size());
        return error_answer(error ? error->error : value_error);
    } catch (...) {  // no memory
        return error_answer(value_error);
    }
}

}  // namespace

Value* function_cell(std::int32_t function, std::initializer_list<const Value*> arguments) noexcept
{
    return guarded(arguments, [=](Given given, Grid& grid) { return run(function, given, grid); });
}

Value* question_cell(std::int32_t question, std::initializer_list<const Value*> arguments) noexcept
{
    return guarded(arguments, [=](Given given, Grid& grid) {
        cutwater_refusal refusal{};
        return cutwater_door::Asking<CellHost>().answer(question, given, grid, refusal);
    });
}

}  // namespace cutwater::excel

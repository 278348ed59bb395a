#include "ask.hpp"


#include <algorithm>
#include <cmath>

namespace cutwater::calc {
namespace {

Any number_in_cell(double number)
{
    if (std::isfinite(number)) return Any(number);
    throw_refused("A result is not a finite number.");  // the library does not let it come to that
}

Any in_cell(const cutwater_result& result)
{
    return result.kind == CUTWATER_TEXT ? Any(text_for_cell(result.text)) : number_in_cell(result.number);
}

Answer answer_or_throw(std::int32_t function, std::initializer_list<const Any*> arguments)
{
    Answer answer;
    const auto status = ask(function, {arguments.begin(), arguments.size()}, answer);
    if (status != CUTWATER_OK) throw_refused(answer.refusal.message, answer.refusal.argument);
    return answer;
}

}  // namespace

std::vector<std::int32_t> positions_of(std::initializer_list<const char*> names)
{
    std::vector<std::int32_t> positions;
    for (const char* name : names) positions.push_back(cutwater_find(name));
    return positions;
}

Any cell(std::int32_t function, std::initializer_list<const Any*> arguments)
{
    const Answer answer = answer_or_throw(function, arguments);
    return in_cell(answer.results.front());
}

Table cells(std::int32_t function, std::initializer_list<const Any*> arguments)
{
    const Answer answer = answer_or_throw(function, arguments);
    std::size_t rows = 1;
    for (const cutwater_result& result : answer.results)
        if (result.kind == CUTWATER_SERIES) rows = std::max(rows, result.length);
    Table table(static_cast<sal_Int32>(rows));
    Row* const row = table.getArray();
    for (std::size_t r = 0; r < rows; ++r) {
        row[r].realloc(static_cast<sal_Int32>(answer.results.size()));
        Any* const out = row[r].getArray();
        for (std::size_t c = 0; c < answer.results.size(); ++c) {
            const cutwater_result& result = answer.results[c];
            const std::size_t length = result.kind == CUTWATER_SERIES ? result.length : 1;
            if (r >= length) out[c] = not_available();
            else out[c] = result.kind == CUTWATER_SERIES ? number_in_cell(result.series[r]) : in_cell(result);
        }
    }
    return table;
}

}  // namespace cutwater::calc

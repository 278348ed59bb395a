#include "expected.hpp"

#include <algorithm>
#include <bit>
#include <cmath>
#include <set>

namespace play {
namespace {

using namespace cutwater::excel;

Answer number(double value)
{
    Answer made;
    made.type = number_type;
    made.number = value;
    return made;
}

Answer text(const std::string& value)
{
    Answer made;
    made.type = text_type;
    made.text = value;
    return made;
}

Answer gap()
{
    Answer made;
    made.type = error_type;
    made.error = not_available;
    return made;
}

}  // namespace

std::string capitals(std::string text)
{
    for (char& c : text)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
    return text;
}

bool same_bits(double a, double b) { return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b); }

namespace {

bool same(const Answer& a, const Answer& b)
{
    return a.type == b.type && same_bits(a.number, b.number) && a.text == b.text && a.error == b.error;
}

}  // namespace

Asked asked_of_library(const cutwater::test::GoldenCase& golden)
{
    const std::int32_t position = cutwater_find(golden.function.c_str());
    std::vector<cutwater_value> values;
    for (const auto& argument : golden.arguments) values.push_back(argument.value());
    const auto count = static_cast<std::size_t>(cutwater_result_count(position));
    std::vector<cutwater_result> results(count);
    std::vector<std::vector<double>> room(count, std::vector<double>(10000));
    for (std::size_t i = 0; i < count; ++i) {
        results[i].series = room[i].data();
        results[i].capacity = room[i].size();
    }
    Asked made{};
    made.status = cutwater_call_at(position, values.data(), values.size(), results.data(), count, &made.refusal);
    if (made.status != CUTWATER_OK) {
        made.answer.type = error_type;
        made.answer.error = value_error;
        return made;
    }
    std::size_t rows = 1;
    for (const cutwater_result& result : results)
        if (result.kind == CUTWATER_SERIES) rows = std::max(rows, result.length);
    for (std::size_t r = 0; r < rows; ++r)
        for (const cutwater_result& result : results) {
            if (result.kind == CUTWATER_SERIES)
                made.answer.cells.push_back(r < result.length ? number(result.series[r]) : gap());
            else if (r > 0)
                made.answer.cells.push_back(gap());
            else
                made.answer.cells.push_back(result.kind == CUTWATER_TEXT ? text(result.text) : number(result.number));
        }
    if (made.answer.cells.size() == 1) {
        made.answer = Answer(made.answer.cells.front());
    } else {
        made.answer.type = block_type;
        made.answer.rows = rows;
        made.answer.columns = count;
    }
    return made;
}

bool same_cells(const Answer& a, const Answer& b)
{
    if (!same(a, b) || a.rows != b.rows || a.columns != b.columns || a.cells.size() != b.cells.size()) return false;
    for (std::size_t i = 0; i < a.cells.size(); ++i)
        if (!same(a.cells[i], b.cells[i])) return false;
    return true;
}

bool shows(const Answer& answer)
{
    static const std::set<std::int32_t> errors{0, 7, 15, 23, 29, 36, 42, 43};
    switch (answer.type) {
    case number_type: return std::isfinite(answer.number);
    case text_type: return answer.text.size() <= 4 * longest_text;
    case error_type: return errors.contains(answer.error);
    case block_type:
        return !answer.cells.empty() && std::all_of(answer.cells.begin(), answer.cells.end(), [](const Answer& cell) {
            return cell.type != block_type && shows(cell);
        });
    default: return false;
    }
}

}  // namespace play

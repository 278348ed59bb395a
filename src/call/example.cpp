#include "call/example.hpp"

#include "call/argument_list.hpp"
#include "call/arguments.hpp"
#include "catalogue/sentence.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <vector>

namespace cutwater {
namespace {

bool agrees(double got, double expected, const std::string& written)
{
    return std::abs(got - expected) <= 1.001 * written_precision(written);
}

bool agrees(const ListedArgument& expected, const Result& got)
{
    if (expected.kind == CUTWATER_TEXT) return expected.text == std::string_view(got.word ? got.word : "");
    if (expected.kind == CUTWATER_NUMBER) return agrees(got.number, expected.number, expected.text);
    if (got.length != expected.series.size()) return false;
    for (std::size_t i = 0; i < got.length; ++i)
        if (!agrees(got.data[i], expected.series[i], expected.written[i])) return false;
    return true;
}

}  // namespace

cutwater_status check_example(const FunctionInfo& f, cutwater_refusal* refusal)
{
    const auto inputs = read_argument_list(f.example.inputs);
    const auto expected = read_argument_list(f.example.results);
    if (!inputs || !expected || expected->size() != f.results.size())
        return refuse_saying(CUTWATER_INTERNAL, refusal, "{}: its example cannot be read.", f.name);
    std::vector<cutwater_value> values;
    for (const ListedArgument& input : *inputs) values.push_back(input.value());
    GivenInputs given;
    if (const auto status = read_arguments(f, values, given, refusal); status != CUTWATER_OK) return status;
    std::vector<Result> results(f.results.size());
    std::vector<std::vector<double>> series(f.results.size(), std::vector<double>(1000));
    for (std::size_t i = 0; i < results.size(); ++i) {
        results[i].data = series[i].data();
        results[i].capacity = series[i].size();
    }
    if (const auto status = f.call(given.data(), results.data(), nullptr, refusal); status != CUTWATER_OK)
        return status;
    for (std::size_t i = 0; i < results.size(); ++i)
        if (!agrees((*expected)[i], results[i]))
            return refuse_saying(CUTWATER_INTERNAL, refusal, "{}: its example does not come out: {} should be {}.",
                                 f.name, f.results[i].full_name, f.example.results);
    return CUTWATER_OK;
}

}  // namespace cutwater

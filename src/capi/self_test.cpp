#include <cutwater/library.h>

#include "call/argument_list.hpp"
#include "call/arguments.hpp"
#include "catalogue/guard.hpp"
#include "catalogue/families.hpp"

#include "units/format.hpp"

#include <cmath>
#include <vector>

namespace cutwater {
namespace {

bool agrees(double got, double expected, const std::string& written)
{
    return std::abs(got - expected) <= 1.001 * written_precision(written);
}

bool agrees(const ListedArgument& expected, const Result& got, const std::vector<double>& series)
{
    switch (expected.kind) {
    case CUTWATER_TEXT: return got.word && expected.text == got.word;
    case CUTWATER_NUMBER: return agrees(got.number, expected.number, expected.text);
    default: break;
    }
    if (got.length != expected.series.size()) return false;
    for (std::size_t i = 0; i < got.length; ++i)
        if (!agrees(series[i], expected.series[i], expected.written[i])) return false;
    return true;
}

cutwater_status check_example(const FunctionInfo& f, cutwater_refusal* refusal)
{
    const auto inputs = read_argument_list(f.example.inputs);
    const auto expected = read_argument_list(f.example.results);
    if (!inputs || !expected || expected->size() != f.results.size())
        return refuse(CUTWATER_INTERNAL, formatted("{}: its example cannot be read.", f.name), refusal);
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
        if (!agrees((*expected)[i], results[i], series[i]))
            return refuse(CUTWATER_INTERNAL,
                          formatted("{}: its example does not come out: {} should be {}.", f.name,
                                    f.results[i].full_name, f.example.results),
                          refusal);
    return CUTWATER_OK;
}

}  // namespace
}  // namespace cutwater

extern "C" cutwater_status cutwater_self_test(cutwater_refusal* refusal)
{
    using namespace cutwater;
    return guard(refusal, [&]() -> cutwater_status {
        for (std::size_t i = 0; i < function_count(); ++i)
            if (const auto status = check_example(function_at(i), refusal); status != CUTWATER_OK) return status;
        return CUTWATER_OK;
    });
}

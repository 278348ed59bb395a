// Prints what the C API answers to every golden case, to the last bit, for the tests of doors that are not C++:
//   system.txt:3<tab>ok<tab>0x1.8p+1<tab>"word"<tab>[0x1p+0 0x1p+1]
//   system.txt:9<tab>refused<tab>status<tab>argument<tab>element
#include "support/golden.hpp"

#include <cutwater/library.h>

#include <cstdio>
#include <exception>

namespace {

using cutwater::test::GoldenCase;

constexpr std::size_t most_results = 16;
constexpr std::size_t most_points = 10000;

void print_result(const cutwater_result& result)
{
    if (result.kind == CUTWATER_NUMBER) std::printf("\t%a", result.number);
    if (result.kind == CUTWATER_TEXT) std::printf("\t\"%s\"", result.text);
    if (result.kind != CUTWATER_SERIES) return;
    std::printf("\t[");
    for (std::size_t i = 0; i < result.length; ++i) std::printf("%s%a", i ? " " : "", result.series[i]);
    std::printf("]");
}

void print_case(const GoldenCase& golden)
{
    static double buffers[most_results][most_points];
    const int32_t position = cutwater_find(golden.function.c_str());
    std::vector<cutwater_value> inputs;
    for (const auto& argument : golden.arguments) inputs.push_back(argument.value());
    cutwater_result results[most_results] = {};
    for (std::size_t i = 0; i < most_results; ++i) {
        results[i].series = buffers[i];
        results[i].capacity = most_points;
    }
    cutwater_refusal refusal;
    const cutwater_status status = cutwater_call_at(position, inputs.data(), inputs.size(), results, most_results,
                                                    &refusal);
    std::printf("%s\t", golden.where.c_str());
    if (status != CUTWATER_OK) {
        std::printf("refused\t%d\t%d\t%lld\n", static_cast<int>(status), static_cast<int>(refusal.argument),
                    static_cast<long long>(refusal.element));
        return;
    }
    std::printf("ok");
    for (int32_t i = 0; i < cutwater_result_count(position); ++i) print_result(results[i]);
    std::printf("\n");
}

}  // namespace

int main()
{
    try {
        for (const GoldenCase& golden : cutwater::test::golden_cases()) print_case(golden);
        return 0;
    } catch (const std::exception& error) {
        std::fprintf(stderr, "golden_bits: %s\n", error.what());
        return 1;
    }
}

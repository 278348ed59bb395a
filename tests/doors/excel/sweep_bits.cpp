// Prints what the C API answers to permitted and hostile numbers at every input of every function, to the last bit, so
// that two platforms' answers can be held against each other: function, input, given bits, status, results' bits, the
// refusal's sentence.
#include "call/argument_list.hpp"

#include <cutwater/library.h>

#include <bit>
#include <cinttypes>
#include <cmath>
#include <cstdio>
#include <cstring>
#include <limits>

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();

std::uint64_t bits(double number) { return std::bit_cast<std::uint64_t>(number); }

/// The interval's ends and their neighbours, numbers between them and about the example's, numbers that nothing
/// permits.
std::vector<double> numbers_for(const cutwater_input_info& in, double example)
{
    std::vector<double> numbers{
        infinite, -infinite, std::numeric_limits<double>::quiet_NaN(), 0, -0.0, 5e-324, 1e300, -1e300, 1e18, 2e9, -1};
    for (const double end : {in.low, in.high})
        if (std::isfinite(end))
            numbers.insert(numbers.end(), {end, std::nextafter(end, infinite), std::nextafter(end, -infinite)});
    double part = 0.5;
    for (int i = 0; i < 40; ++i) {
        part = std::fmod(part + 0.6180339887498949, 1.0);  // evenly spread, never the same
        if (std::isfinite(in.low) && std::isfinite(in.high)) numbers.push_back(in.low + part * (in.high - in.low));
        numbers.push_back(example * (0.5 + part));
    }
    return numbers;
}

void print_result(const cutwater_result& result)
{
    if (result.kind == CUTWATER_NUMBER) std::printf(" %016" PRIx64, bits(result.number));
    if (result.kind == CUTWATER_TEXT) std::printf(" \"%s\"", result.text);
    if (result.kind != CUTWATER_SERIES) return;
    std::printf(" [");
    for (std::size_t i = 0; i < result.length; ++i) std::printf(" %016" PRIx64, bits(result.series[i]));
    std::printf("]");
}

void call(std::int32_t function, const std::vector<cutwater_value>& values)
{
    constexpr std::size_t points = 4096;
    static std::vector<double> room(CUTWATER_MOST_RESULTS * points);
    cutwater_result results[CUTWATER_MOST_RESULTS] = {};
    for (std::size_t i = 0; i < CUTWATER_MOST_RESULTS; ++i) {
        results[i].series = room.data() + points * i;
        results[i].capacity = points;
    }
    cutwater_refusal refusal;
    const auto count = static_cast<std::size_t>(cutwater_result_count(function));
    const auto status = cutwater_call_at(function, values.data(), values.size(), results, count, &refusal);
    std::printf(" %d", static_cast<int>(status));
    if (status == CUTWATER_OK)
        for (std::size_t i = 0; i < count; ++i) print_result(results[i]);
    else
        std::printf(" %s", refusal.message);
    std::printf("\n");
}

}  // namespace

int main()
{
    cutwater_function_info f{};
    f.size = sizeof f;
    cutwater_input_info in{};
    in.size = sizeof in;
    for (std::int32_t k = 0; k < cutwater_function_count(); ++k) {
        cutwater_describe_function(k, &f);
        const auto arguments = cutwater::read_argument_list(f.example_inputs);
        if (!arguments) return 1;
        std::vector<cutwater_value> good;
        for (const auto& argument : *arguments) good.push_back(argument.value());
        for (std::size_t i = 0; i < good.size(); ++i) {
            cutwater_describe_input(k, static_cast<std::int32_t>(i), &in);
            if (good[i].kind != CUTWATER_NUMBER) continue;
            for (const double number : numbers_for(in, good[i].number)) {
                auto values = good;
                values[i].number = number;
                std::printf("%s %s %016" PRIx64, f.name, in.name, bits(number));
                call(k, values);
            }
        }
    }
    return 0;
}

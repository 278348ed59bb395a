// The by-name call, the flat functions, their array form and the typed C++ functions give the same bits for every
// golden case.
#include "support/golden.hpp"
#include "support/typed_calls.hpp"

#include <cutwater/cutwater.h>

#include <catch2/catch.hpp>

#include <bit>
#include <cmath>

using namespace cutwater;
using namespace cutwater::test;

extern "C" cutwater_status flat_call(int function, const cutwater_value* in, cutwater_result* out,
                                     cutwater_refusal* refusal);

namespace {

struct Room {
    std::vector<cutwater_result> results;
    std::vector<std::vector<double>> buffers;

    explicit Room(int32_t function)
        : results(static_cast<std::size_t>(cutwater_result_count(function))),
          buffers(results.size(), std::vector<double>(10000))
    {
        for (std::size_t i = 0; i < results.size(); ++i) {
            results[i] = {};
            results[i].text = "";
            results[i].series = buffers[i].data();
            results[i].capacity = buffers[i].size();
        }
    }
};

bool same_bits(double a, double b) { return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b); }

bool same(int32_t function, const Room& a, const Room& b)
{
    for (std::size_t i = 0; i < a.results.size(); ++i) {
        const cutwater_result& x = a.results[i];
        const cutwater_result& y = b.results[i];
        switch (cutwater_result_kind(function, static_cast<int32_t>(i))) {
        case CUTWATER_NUMBER:
            if (!same_bits(x.number, y.number)) return false;
            break;
        case CUTWATER_TEXT:
            if (std::string(x.text) != y.text) return false;
            break;
        default:
            if (x.length != y.length) return false;
            for (std::size_t k = 0; k < x.length; ++k)
                if (!same_bits(x.series[k], y.series[k])) return false;
        }
    }
    return true;
}

/// The case's arguments with every text read and every default filled in: what the flat functions take.
bool plain_values(int32_t function, const GoldenCase& golden, std::vector<cutwater_value>& values)
{
    for (const auto& argument : golden.arguments) values.push_back(argument.value());
    values.resize(static_cast<std::size_t>(cutwater_input_count(function)), cutwater_value{});
    for (std::size_t i = 0; i < values.size(); ++i) {
        const auto input = static_cast<int32_t>(i);
        if (values[i].kind == CUTWATER_LEFT_OUT) return false;  // the flat functions have no defaults
        const int32_t kind = cutwater_input_kind(function, input);
        if (kind == CUTWATER_TEXT && values[i].kind != CUTWATER_TEXT) return false;
        if (kind == CUTWATER_NUMBER && values[i].kind == CUTWATER_TEXT) {
            if (cutwater_read(function, input, values[i].text, &values[i].number, nullptr) != CUTWATER_OK) return false;
            values[i].kind = CUTWATER_NUMBER;
        }
    }
    return true;
}

void check_rows(int32_t function, const std::vector<cutwater_value>& values, const Room& expected, bool refused)
{
    std::vector<cutwater_column> columns;
    for (const cutwater_value& value : values) columns.push_back({&value.number, 0});
    std::vector<std::vector<double>> stored(expected.results.size(), std::vector<double>(3));
    std::vector<cutwater_result_column> results;
    for (auto& column : stored) results.push_back({column.data(), 1});
    std::uint8_t bitmap = 0xff;
    cutwater_rows_report report{};
    report.bitmap = &bitmap;
    const cutwater_status status = cutwater_rows_at(function, 3, columns.data(), values.data(), results.data(),
                                                    &report);
    CHECK((status != CUTWATER_OK) == refused);
    if (refused) return;
    CHECK(bitmap == 0);
    for (std::size_t i = 0; i < results.size(); ++i)
        for (const double got : stored[i]) {
            if (cutwater_result_kind(function, static_cast<int32_t>(i)) == CUTWATER_TEXT)
                CHECK(std::string(cutwater_result_word(function, static_cast<int32_t>(i), static_cast<int32_t>(got))) ==
                      expected.results[i].text);
            else
                CHECK(same_bits(got, expected.results[i].number));
        }
}

bool has_series_result(int32_t function)
{
    for (int32_t i = 0; i < cutwater_result_count(function); ++i)
        if (cutwater_result_kind(function, i) == CUTWATER_SERIES) return true;
    return false;
}

}  // namespace

TEST_CASE("every way to call gives the same bits", "[doors]")
{
    std::size_t compared = 0;
    for (const GoldenCase& golden : golden_cases()) {
        INFO(golden.where << " " << golden.call);
        const int32_t function = cutwater_find(golden.function.c_str());
        REQUIRE(function >= 0);
        std::vector<cutwater_value> values;
        if (!plain_values(function, golden, values)) continue;
        ++compared;
        Room named(function);
        Room flat(function);
        cutwater_refusal named_refusal{};
        cutwater_refusal flat_refusal{};
        const cutwater_status status = cutwater_call_at(function, values.data(), values.size(), named.results.data(),
                                                        named.results.size(), &named_refusal);
        CHECK(flat_call(function, values.data(), flat.results.data(), &flat_refusal) == status);
        CHECK(std::string(named_refusal.message) == flat_refusal.message);
        CHECK(same(function, named, flat));
        if (!has_series_result(function)) check_rows(function, values, named, status != CUTWATER_OK);
        Room typed(function);
        if (status == CUTWATER_OK) {
            REQUIRE_NOTHROW(typed_call(function, values.data(), typed.results.data()));
            CHECK(same(function, named, typed));
        } else {
            CHECK_THROWS_AS(typed_call(function, values.data(), typed.results.data()), Refused);
        }
    }
    CHECK(compared > 100);
}

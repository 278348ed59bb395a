// Every flat function with what callers get wrong: a result's pointer left out, no refusal to fill, an input that is
// not permitted, room too small. What the header promises of each: a status, a refusal that names the input, and no
// result.
#include "call/argument_list.hpp"

#include <cutwater/cutwater.h>

#include <catch2/catch.hpp>

#include <bit>
#include <cmath>
#include <limits>
#include <string>
#include <vector>

using namespace cutwater;

/// A result of a kind below 0 is handed over as a null pointer.
extern "C" cutwater_status flat_call(int function, const cutwater_value* in, cutwater_result* out,
                                     cutwater_refusal* refusal);

namespace {

constexpr double no_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

/// Room for every result, with a mark in each.
struct Room {
    std::vector<cutwater_result> results;
    std::vector<std::vector<double>> points;

    explicit Room(int32_t function)
        : results(static_cast<std::size_t>(cutwater_result_count(function))),
          points(results.size(), std::vector<double>(10000, 7))
    {
        for (std::size_t j = 0; j < results.size(); ++j)
            results[j] = {0, 7, "marked", points[j].data(), points[j].size(), 7};
    }
};

/// A function with its example's inputs as a flat call takes them: texts read, what is left out marked.
struct Example {
    int32_t function;
    std::string name;
    std::vector<ListedArgument> listed;
    std::vector<cutwater_input_info> inputs;
    std::vector<cutwater_value> values;

    explicit Example(int32_t f) : function(f), name(cutwater_function_name(f))
    {
        cutwater_function_info info{};
        info.size = sizeof info;
        REQUIRE(cutwater_describe_function(f, &info) == CUTWATER_OK);
        listed = read_argument_list(info.example_inputs).value();
        for (int32_t i = 0; i < info.inputs; ++i) {
            const auto at = static_cast<std::size_t>(i);
            inputs.emplace_back().size = sizeof(cutwater_input_info);
            REQUIRE(cutwater_describe_input(f, i, &inputs.back()) == CUTWATER_OK);
            values.push_back(at < listed.size() ? listed[at].value() : cutwater_value{});
            cutwater_value& value = values.back();
            if (value.kind == CUTWATER_LEFT_OUT) value.number = cutwater_left_out();
            if (inputs.back().kind == CUTWATER_TEXT && value.kind == CUTWATER_NUMBER)
                value.text = listed[at].text.c_str();  // a word that looks like a number
            if (inputs.back().kind == CUTWATER_NUMBER && value.kind == CUTWATER_TEXT)
                REQUIRE(cutwater_read(f, i, value.text, &value.number, nullptr) == CUTWATER_OK);
        }
    }
    cutwater_status call(Room& room, cutwater_refusal* refusal) const
    {
        return flat_call(function, values.data(), room.results.data(), refusal);
    }
    int32_t kind(std::size_t result) const { return cutwater_result_kind(function, static_cast<int32_t>(result)); }

    /// Whether no result is left standing.
    bool nothing_in(const Room& room) const
    {
        for (std::size_t j = 0; j < room.results.size(); ++j) {
            const cutwater_result& r = room.results[j];
            if (r.kind < 0) continue;
            if (kind(j) == CUTWATER_NUMBER ? !std::isnan(r.number)
                : kind(j) == CUTWATER_TEXT ? *r.text != 0
                                           : r.length != 0)
                return false;
        }
        return true;
    }
};

template <class Try>
void each_example(Try&& look)
{
    for (int32_t f = 0; f < cutwater_function_count(); ++f) {
        const Example example(f);
        INFO(example.name);
        look(example);
    }
}

/// Refused with a record of it and without, and no result in either.
void refused(const Example& example, cutwater_status status, std::int32_t input)
{
    for (const bool told : {true, false}) {
        cutwater_refusal refusal{};
        Room room(example.function);
        CHECK(example.call(room, told ? &refusal : nullptr) == status);
        CHECK(example.nothing_in(room));
        if (!told) continue;
        INFO(refusal.message);
        CHECK(refusal.status == status);
        CHECK(refusal.argument == input);
        CHECK(std::string(refusal.name) == example.inputs[static_cast<std::size_t>(input)].name);
    }
}

void refuse_number(Example example, std::size_t i, double number, cutwater_status status)
{
    INFO("input " << i << " is " << number);
    example.values[i].number = number;
    refused(example, status, static_cast<std::int32_t>(i));
}

}  // namespace

TEST_CASE("a flat call without a refusal to fill answers the same", "[doors]")
{
    each_example([](const Example& example) {
        Room told(example.function), untold(example.function);
        cutwater_refusal refusal{};
        CHECK(example.call(told, &refusal) == CUTWATER_OK);
        CHECK(example.call(untold, nullptr) == CUTWATER_OK);
        CHECK(refusal.status == CUTWATER_OK);
        for (std::size_t j = 0; j < told.results.size(); ++j) {
            CHECK(std::bit_cast<std::uint64_t>(told.results[j].number) ==
                  std::bit_cast<std::uint64_t>(untold.results[j].number));
            CHECK(std::string(told.results[j].text) == untold.results[j].text);
            CHECK(told.points[j] == untold.points[j]);
        }
    });
}

TEST_CASE("a flat call with a result's pointer left out is refused, and leaves no other result", "[doors]")
{
    each_example([](const Example& example) {
        for (std::size_t j = 0; j < Room(example.function).results.size(); ++j)
            for (const bool told : {true, false}) {
                Room room(example.function);
                room.results[j].kind = -1;
                cutwater_refusal refusal{};
                CHECK(example.call(room, told ? &refusal : nullptr) == CUTWATER_MISSING);
                CHECK(example.nothing_in(room));
                if (told) CHECK(std::string(refusal.message) == "A pointer for a result is null.");
            }
    });
}

TEST_CASE("each input of each flat function is refused by name where the record does not permit it", "[doors]")
{
    each_example([](const Example& given) {
        for (std::size_t i = 0; i < given.inputs.size(); ++i) {
            const cutwater_input_info& in = given.inputs[i];
            const auto number = static_cast<std::int32_t>(i);
            Example example = given;
            switch (in.kind) {
            case CUTWATER_NUMBER:
                for (const double none : {no_number, infinite, -infinite})
                    refuse_number(given, i, none, CUTWATER_NOT_FINITE);
                if (std::isfinite(in.low))
                    refuse_number(given, i, in.low_open ? in.low : std::nextafter(in.low, -infinite),
                                  CUTWATER_OUT_OF_INTERVAL);
                if (std::isfinite(in.high))
                    refuse_number(given, i, in.high_open ? in.high : std::nextafter(in.high, infinite),
                                  CUTWATER_OUT_OF_INTERVAL);
                if (in.whole) refuse_number(given, i, in.low + 0.5, CUTWATER_OUT_OF_INTERVAL);
                break;
            case CUTWATER_TEXT:
                example.values[i].text = "no such word";
                refused(example, CUTWATER_UNKNOWN_WORD, number);
                example.values[i].text = nullptr;
                if (!in.optional) refused(example, CUTWATER_UNKNOWN_WORD, number);
                break;
            default:
                example.values[i].series = nullptr;
                refused(example, CUTWATER_MISSING, number);
                example.values[i].length = 0;
                refused(example, CUTWATER_BAD_SERIES, number);
                example = given;
                std::vector<double> points(in.least_points > 0 ? static_cast<std::size_t>(in.least_points) : 1,
                                           no_number);
                example.values[i].series = points.data();
                example.values[i].length = points.size();
                refused(example, CUTWATER_NOT_FINITE, number);
                example.values[i].length = points.size() - 1;
                refused(example, CUTWATER_BAD_SERIES, number);
            }
        }
    });
}

TEST_CASE("a flat call with too little room for a series says how much it needs, and keeps no number", "[doors]")
{
    each_example([](const Example& example) {
        Room whole(example.function);
        REQUIRE(example.call(whole, nullptr) == CUTWATER_OK);
        for (std::size_t j = 0; j < whole.results.size(); ++j) {
            if (example.kind(j) != CUTWATER_SERIES) continue;
            for (const std::size_t capacity : {std::size_t{0}, std::size_t{1}}) {
                Room room(example.function);
                cutwater_refusal refusal{};
                room.results[j].capacity = capacity;
                if (capacity == 0) room.results[j].series = nullptr;
                CHECK(example.call(room, &refusal) == CUTWATER_BUFFER_TOO_SMALL);
                CHECK(room.results[j].length == whole.results[j].length);
                if (capacity) CHECK(std::isnan(room.points[j][0]));
                CHECK(room.points[j][1] == 7);
                CHECK(std::string(refusal.message).find("the buffer holds") != std::string::npos);
                CHECK(example.call(room, nullptr) == CUTWATER_BUFFER_TOO_SMALL);
                Room named(example.function);
                cutwater_refusal of_named{};
                named.results[j].capacity = capacity;
                CHECK(cutwater_call_at(example.function, example.values.data(), example.values.size(),
                                       named.results.data(), named.results.size(),
                                       &of_named) == CUTWATER_BUFFER_TOO_SMALL);
                CHECK(named.results[j].length == whole.results[j].length);
                CHECK(std::string(of_named.message) == refusal.message);
            }
            Room room(example.function);
            room.results[j].series = nullptr;  // with a capacity: a pointer is missing
            CHECK(example.call(room, nullptr) == CUTWATER_MISSING);
        }
    });
}

TEST_CASE("a flat call with permitted numbers of any size gives what the call by name gives", "[doors]")
{
    each_example([](const Example& given) {
        const auto compare = [&](const Example& example) {
            Room flat(example.function), named(example.function);
            cutwater_refusal of_flat{}, of_named{};
            std::vector<cutwater_value> values = example.values;
            const auto status = cutwater_call_at(example.function, values.data(), values.size(), named.results.data(),
                                                 named.results.size(), &of_named);
            INFO(of_named.message);
            CHECK(example.call(flat, &of_flat) == status);
            CHECK(std::string(of_flat.message) == of_named.message);
            for (std::size_t j = 0; j < flat.results.size(); ++j)
                if (example.kind(j) == CUTWATER_NUMBER)
                    CHECK((flat.results[j].number == named.results[j].number ||
                           (status != CUTWATER_OK && std::isnan(flat.results[j].number))));
        };
        Example lowest = given, highest = given;
        for (std::size_t i = 0; i < given.inputs.size(); ++i) {
            const cutwater_input_info& in = given.inputs[i];
            if (in.kind != CUTWATER_NUMBER) continue;
            const double low = !std::isfinite(in.low) ? -1e300
                               : in.low_open          ? std::nextafter(in.low, infinite)
                                                      : in.low;
            const double high = !std::isfinite(in.high) ? 1e300
                                : in.high_open          ? std::nextafter(in.high, -infinite)
                                                        : in.high;
            for (const double end : {low, high}) {
                Example one = given;
                one.values[i] = {CUTWATER_NUMBER, end, nullptr, nullptr, 0, 1};
                compare(one);
                (end == low ? lowest : highest).values[i] = one.values[i];
            }
        }
        compare(lowest);
        compare(highest);
    });
}

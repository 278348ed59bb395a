// The answers' calls about functions that there are not, without inputs, and without a refusal to fill.
#include "call/argument_list.hpp"

#include <cutwater/answers.h>
#include <cutwater/library.h>

#include <catch2/catch.hpp>

#include <cmath>
#include <cstring>
#include <functional>
#include <string>
#include <utility>
#include <vector>

using Catch::Matchers::Contains;

namespace {

cutwater_value number(double x) { return {CUTWATER_NUMBER, x, nullptr, nullptr, 0, 1}; }

using Asked = std::function<cutwater_status(const char*, const cutwater_value*, size_t, cutwater_refusal*)>;

/// Each of the answers, asked of a function with inputs.
std::vector<std::pair<const char*, Asked>> answers()
{
    static char text[4096];
    static double found = 0;
    static cutwater_sensitivity_row rows[8];
    static const cutwater_value target = number(10);
    static cutwater_uncertainty_report report{};
    report.size = sizeof report;
    return {{"working",
             [](auto* f, auto* in, auto n, auto* r) {
                 return cutwater_working(f, in, n, CUTWATER_TEXT_UTF8, text, sizeof text, nullptr, r);
             }},
            {"solve for",
             [](auto* f, auto* in, auto n, auto* r) {
                 return cutwater_solve_for(f, in, n, "static_head", nullptr, &target, NAN, NAN, &found, r);
             }},
            {"solutions",
             [](auto* f, auto* in, auto n, auto* r) {
                 size_t count = 0;
                 return cutwater_solutions(f, in, n, "static_head", nullptr, &target, NAN, NAN, &found, 1, &count, r);
             }},
            {"uncertainty", [](auto* f, auto* in, auto n,
                               auto* r) { return cutwater_uncertainty(f, in, n, nullptr, 0, nullptr, &report, r); }},
            {"sensitivity", [](auto* f, auto* in, auto n, auto* r) {
                 size_t count = 0;
                 return cutwater_sensitivity(f, in, n, nullptr, rows, 8, &count, nullptr, r);
             }}};
}

}  // namespace

TEST_CASE("an answer about no function, or without inputs, is refused, told or not", "[capi]")
{
    const cutwater_value inputs[] = {number(1), number(0.02), number(998), number(2), number(1)};
    for (const auto& [name, ask] : answers()) {
        INFO(name);
        cutwater_refusal r{};
        CHECK(ask(nullptr, inputs, 5, &r) == CUTWATER_UNKNOWN_FUNCTION);
        CHECK_THAT(r.message, Contains("The name of a function is missing."));
        CHECK(ask("npsh_availabel", inputs, 5, &r) == CUTWATER_UNKNOWN_FUNCTION);
        CHECK_THAT(r.message, Contains("is it npsh_available"));
        CHECK(ask("npsh_available", nullptr, 5, &r) == CUTWATER_MISSING);
        CHECK_THAT(r.message, Contains("The pointer to the inputs is null."));
        CHECK(ask("no such", inputs, 5, nullptr) == CUTWATER_UNKNOWN_FUNCTION);
        CHECK(ask("npsh_available", nullptr, 5, nullptr) == CUTWATER_MISSING);
        CHECK(ask("npsh_available", nullptr, 0, nullptr) != CUTWATER_OK);  // no inputs at all are none given
        CHECK(ask("npsh_available", inputs, 5, &r) == (std::strcmp(name, "solve for") && std::strcmp(name, "solutions")
                                                           ? CUTWATER_OK
                                                           : CUTWATER_WRONG_KIND));  // it has no static_head
    }
}

TEST_CASE("a text for which there is a buffer without room tells how much it needs", "[capi]")
{
    cutwater_refusal refusal{};
    refusal.status = CUTWATER_WRONG_KIND;
    std::strcpy(refusal.message, "the cell holds a text.");
    char text[] = "kept";
    size_t needed = 0;
    CHECK(cutwater_refusal_text(&refusal, CUTWATER_TEXT_UTF8, text, 0, &needed) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK(needed >= std::strlen(refusal.message));
    CHECK(std::string(text) == "kept");
}

TEST_CASE("what reads texts and converts refuses alike without a refusal to fill", "[capi]")
{
    double read = 7;
    const cutwater_value five{CUTWATER_TEXT, 0, "5", nullptr, 0, 1}, ftlb{CUTWATER_TEXT, 0, "5 kW", nullptr, 0, 1};
    CHECK(cutwater_quantity(&five, "", &read, nullptr) == CUTWATER_OK);  // a number without unit
    CHECK(read == 5);
    CHECK(cutwater_quantity(&ftlb, "m", &read, nullptr) == CUTWATER_WRONG_QUANTITY);
    CHECK(std::isnan(read));
    CHECK(cutwater_quantity(&ftlb, "furlong", &read, nullptr) == CUTWATER_UNKNOWN_UNIT);
    CHECK(cutwater_convert_unit(NAN, "m", "ft", &read, nullptr) == CUTWATER_NOT_FINITE);
    CHECK(cutwater_convert_unit(1, "m", "kW", &read, nullptr) == CUTWATER_WRONG_QUANTITY);
    CHECK(cutwater_read(cutwater_find("npsh_available"), 3, "6 kW", &read, nullptr) == CUTWATER_WRONG_QUANTITY);
    CHECK(std::isnan(read));
    CHECK(cutwater_input_optional(-1, 0) == 0);
    CHECK(std::string(cutwater_status_meaning(-1)).empty());
    CHECK(std::string(cutwater_status_meaning(9999)).empty());
}

TEST_CASE("what may be left out is told of every input as its record says", "[capi]")
{
    int optional = 0;
    for (int32_t f = 0; f < cutwater_function_count(); ++f)
        for (int32_t i = 0; i < cutwater_input_count(f); ++i) {
            cutwater_input_info info{};
            info.size = sizeof info;
            REQUIRE(cutwater_describe_input(f, i, &info) == CUTWATER_OK);
            CHECK(cutwater_input_optional(f, i) == info.optional);
            optional += info.optional;
        }
    CHECK(optional > 0);
}

TEST_CASE("a text that is read clears the refusal", "[capi]")
{
    cutwater_refusal r{};
    double read = 0;
    const int32_t npsh = cutwater_find("npsh_available");
    CHECK(cutwater_read(npsh, 3, "6 kW", &read, &r) == CUTWATER_WRONG_QUANTITY);
    CHECK(r.status == CUTWATER_WRONG_QUANTITY);
    CHECK(cutwater_read(npsh, 3, "6 ft", &read, &r) == CUTWATER_OK);
    CHECK(r.status == CUTWATER_OK);
    CHECK(read == 1.8288);
}

TEST_CASE("room for fewer results than there are is refused", "[capi]")
{
    const std::vector<cutwater_value> inputs{number(100)};
    cutwater_result one{};
    cutwater_refusal r{};
    CHECK(cutwater_call("nominal_pipe_bore", inputs.data(), 1, &one, 1, &r) == CUTWATER_WRONG_COUNT);
    CHECK_THAT(r.message, Contains("nominal_pipe_bore has ") && Contains("room was given for 1"));
    CHECK(cutwater_call("nominal_pipe_bore", inputs.data(), 1, &one, 0, nullptr) == CUTWATER_WRONG_COUNT);
}

TEST_CASE("a column left out is the record's default for every row", "[capi]")
{
    int compared = 0;
    for (int32_t f = 0; f < cutwater_function_count(); ++f) {
        cutwater_function_info info{};
        info.size = sizeof info;
        REQUIRE(cutwater_describe_function(f, &info) == CUTWATER_OK);
        bool plain = true;
        std::vector<cutwater_input_info> described(static_cast<std::size_t>(info.inputs));
        for (int32_t i = 0; i < info.inputs; ++i) {
            cutwater_input_info& in = described[static_cast<std::size_t>(i)];
            in.size = sizeof in;
            REQUIRE(cutwater_describe_input(f, i, &in) == CUTWATER_OK);
            plain = plain && in.kind == CUTWATER_NUMBER;
        }
        for (int32_t j = 0; j < info.results; ++j) plain = plain && cutwater_result_kind(f, j) == CUTWATER_NUMBER;
        if (!plain) continue;
        const auto listed = cutwater::read_argument_list(info.example_inputs).value();
        std::vector<double> numbers;
        for (std::size_t i = 0; i < described.size(); ++i) {
            numbers.push_back(i < listed.size() && listed[i].kind == CUTWATER_NUMBER ? listed[i].number
                                                                                     : described[i].fallback);
            if (i < listed.size() && listed[i].kind == CUTWATER_TEXT)
                CHECK(cutwater_read(f, static_cast<int32_t>(i), listed[i].text.c_str(), &numbers[i], nullptr) ==
                      CUTWATER_OK);
        }
        for (std::size_t i = 0; i < described.size(); ++i) {
            if (!described[i].optional) continue;
            numbers[i] = described[i].fallback;
            const auto rows = [&](bool left_out) {
                std::vector<cutwater_column> in;
                for (const double& x : numbers) in.push_back({&x, 0});
                if (left_out) in[i].data = nullptr;
                std::vector<std::vector<double>> out(static_cast<std::size_t>(info.results), std::vector<double>(3));
                std::vector<cutwater_result_column> to;
                for (auto& column : out) to.push_back({column.data(), 1});
                cutwater_rows_report report{};
                CHECK(cutwater_rows_at(f, 3, in.data(), nullptr, to.data(), &report) == CUTWATER_OK);
                return out;
            };
            INFO(cutwater_function_name(f) << " " << described[i].name);
            CHECK(rows(true) == rows(false));
            ++compared;
        }
    }
    CHECK(compared > 20);
}

TEST_CASE("a function with a series among its results has no array form", "[capi]")
{
    const int32_t f = cutwater_find("curve_at_speed");
    const double points[] = {0, 100}, heads[] = {40, 30}, speed = 2900, slower = 1450;
    const cutwater_column columns[] = {{nullptr, 0}, {nullptr, 0}, {&speed, 0}, {&slower, 0}};
    const cutwater_value shared[] = {{CUTWATER_SERIES, 0, nullptr, points, 2, 1},
                                     {CUTWATER_SERIES, 0, nullptr, heads, 2, 1},
                                     {},
                                     {}};
    double one[3] = {7, 7, 7}, other[3] = {7, 7, 7};
    const cutwater_result_column results[] = {{one, 1}, {other, 1}};
    cutwater_rows_report report{};
    CHECK(cutwater_rows_at(f, 3, columns, shared, results, &report) == CUTWATER_WRONG_KIND);
    CHECK_THAT(report.first.message, Contains("has no array form"));
    CHECK(report.refused == 3);
    CHECK((std::isnan(one[0]) && std::isnan(other[2])));
}

TEST_CASE("gauge and absolute pressure convert in neither direction without an ambient one", "[capi]")
{
    cutwater_refusal r{};
    double read = 0;
    CHECK(cutwater_convert_unit(1, "barg", "bara", &read, &r) == CUTWATER_WRONG_QUANTITY);
    CHECK_THAT(r.message, Contains("'barg' is gauge pressure and 'bara' is absolute pressure") &&
                              Contains("use absolute_from_gauge"));
    CHECK(cutwater_convert_unit(1, "bara", "barg", &read, &r) == CUTWATER_WRONG_QUANTITY);
    CHECK_THAT(r.message, Contains("'bara' is absolute pressure and 'barg' is gauge pressure") &&
                              Contains("use gauge_from_absolute"));
}

TEST_CASE("a viscosity of the other kind is told what lies between them", "[capi]")
{
    cutwater_refusal r{};
    double read = 0;
    const auto refused = [&](const char* text, const char* unit) {
        const cutwater_value value{CUTWATER_TEXT, 0, text, nullptr, 0, 1};
        CHECK(cutwater_quantity(&value, unit, &read, &r) == CUTWATER_WRONG_QUANTITY);
        return std::string(r.message);
    };
    CHECK_THAT(refused("5 cSt", "mPa s"), Contains("'cSt' is kinematic viscosity") &&
                                              Contains("multiply by the density with dynamic_from_kinematic"));
    CHECK_THAT(refused("5 cP", "cSt"),
               Contains("'cP' is dynamic viscosity") && Contains("divide by the density with kinematic_from_dynamic"));
}

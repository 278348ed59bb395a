// What is not there, asked for through the flat C API: numbers out of range, null pointers, results of another kind.
#include <cutwater/answers.h>
#include <cutwater/cutwater.h>

#include "answers/records.hpp"
#include "call/argument_list.hpp"
#include "catalogue/families.hpp"
#include "catalogue/nearest.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>
#include <vector>

using namespace cutwater;
using cutwater::test::number;
using cutwater::test::text;
using Catch::Matchers::Contains;

namespace {

cutwater_value points(const std::vector<double>& x) { return {CUTWATER_SERIES, 0, nullptr, x.data(), x.size(), 1}; }

std::string working(const std::vector<double>& flows, const std::vector<double>& heads, int32_t form)
{
    const cutwater_value values[] = {points(flows), points(heads), number(1)};
    std::vector<char> page(20000);
    size_t needed = 0;
    cutwater_refusal r;
    cutwater_working("curve_head", values, 3, form, page.data(), page.size(), &needed, &r);
    return page.data();
}

}  // namespace

TEST_CASE("numbers of functions, inputs, results and words that there are not", "[capi]")
{
    const int32_t count = cutwater_function_count();
    for (const int32_t f : {-1, count}) {
        CHECK(std::string(cutwater_function_name(f)).empty());
        CHECK((cutwater_input_count(f) == 0 && cutwater_result_count(f) == 0));
        CHECK(std::string(cutwater_result_name(f, 0)).empty());
        CHECK((cutwater_input_kind(f, 0) == -1 && cutwater_result_kind(f, 0) == -1));
        CHECK((*cutwater_input_unit(f, 0) == 0 && *cutwater_result_unit(f, 0) == 0));
        CHECK(*cutwater_result_word(f, 0, 0) == 0);
        CHECK(
            (*cutwater_relation(f, 0) == 0 && *cutwater_caution(f, 0) == 0 && cutwater_relation_input(f, 0, 0) == -1));
    }
    CHECK((cutwater_result_kind(0, -1) == -1 && *cutwater_result_unit(0, 99) == 0 && *cutwater_caution(0, -1) == 0));
    cutwater_input_info input{};
    cutwater_result_info result{};
    cutwater_question_info question{};
    cutwater_question_part part{};
    input.size = sizeof input, result.size = sizeof result, question.size = sizeof question, part.size = sizeof part;
    CHECK(cutwater_describe_input(-1, 0, &input) == CUTWATER_WRONG_COUNT);
    CHECK(cutwater_describe_input(0, 99, &input) == CUTWATER_WRONG_COUNT);
    CHECK(cutwater_describe_input(0, 0, nullptr) == CUTWATER_MISSING);
    CHECK(cutwater_describe_result(-1, 0, &result) == CUTWATER_WRONG_COUNT);
    CHECK(cutwater_describe_result(0, 99, &result) == CUTWATER_WRONG_COUNT);
    CHECK(cutwater_describe_question(-1, &question) == CUTWATER_WRONG_COUNT);
    CHECK(cutwater_describe_question_argument(99, 0, &part) == CUTWATER_WRONG_COUNT);
    CHECK(cutwater_describe_question_result(99, 0, &part) == CUTWATER_WRONG_COUNT);
    CHECK(cutwater_describe_question_result(0, 99, &part) == CUTWATER_WRONG_COUNT);
    input.size = 1;  // the caller has not set it
    CHECK(cutwater_describe_input(0, 0, &input) == CUTWATER_MISSING);
}

TEST_CASE("pointers left out of what finds and reads", "[capi]")
{
    cutwater_refusal r;
    int32_t found[3];
    size_t count = 9;
    double read = 7;
    CHECK(cutwater_find_function(nullptr, found, 3, &count, &r) == CUTWATER_MISSING);
    CHECK(count == 0);
    CHECK(cutwater_find_function("suction", found, 3, nullptr, &r) == CUTWATER_MISSING);
    CHECK(cutwater_find_function("suction", nullptr, 3, &count, &r) == CUTWATER_MISSING);
    CHECK(cutwater_find_function("suction", nullptr, 0, &count, nullptr) == CUTWATER_OK);
    CHECK(count > 0);
    const cutwater_value no_text = text(nullptr);
    CHECK(cutwater_quantity(&no_text, "m", &read, &r) == CUTWATER_MISSING);
    CHECK(cutwater_convert_unit(1, "m", nullptr, &read, &r) == CUTWATER_MISSING);
    CHECK(std::isnan(read));
    const int32_t npsh = cutwater_find("npsh_available"), bore = cutwater_find("nominal_pipe_bore");
    CHECK(cutwater_read(npsh, 3, "6 ft", &read, nullptr) == CUTWATER_OK);
    CHECK(read == 1.8288);
    CHECK(cutwater_read(-1, 0, "1", &read, &r) == CUTWATER_UNKNOWN_FUNCTION);
    CHECK(cutwater_read(npsh, -1, "1", &read, &r) == CUTWATER_WRONG_COUNT);
    CHECK(cutwater_read(bore, 1, "1", &read, &r) == CUTWATER_WRONG_KIND);
    CHECK_THAT(r.message, Contains("a text where a word stands"));
    CHECK(std::isnan(read));

    const std::vector<cutwater_value> suction{number(1), number(0.02), number(998), number(2), number(1)};
    cutwater_result result{};
    CHECK(cutwater_call("npsh_available", suction.data(), 5, nullptr, 1, &r) == CUTWATER_WRONG_COUNT);
    CHECK_THAT(r.message, Contains("room was given for 0"));
    const std::vector<double> some{1, 2, 3};
    const cutwater_value a_series_for_a_word[] = {number(100), points(some)};
    CHECK(cutwater_call("nominal_pipe_bore", a_series_for_a_word, 2, std::vector<cutwater_result>(3).data(), 3, &r) ==
          CUTWATER_WRONG_KIND);
    const cutwater_value no_word[] = {number(100), no_text};
    CHECK(cutwater_call("nominal_pipe_bore", no_word, 2, std::vector<cutwater_result>(3).data(), 3, &r) ==
          CUTWATER_UNKNOWN_WORD);
    for (const auto& [value, said] : {std::pair{text("1 m"), "one text"}, {number(1), "one number"}}) {
        const cutwater_value not_a_series[] = {points(some), value, number(2)};
        CHECK(cutwater_call("curve_head", not_a_series, 3, &result, 1, &r) == CUTWATER_WRONG_KIND);
        CHECK_THAT(r.message, Contains(said));
    }
}

TEST_CASE("array calls without a report, without columns, and on threads that are not worth it", "[capi]")
{
    const int32_t npsh = cutwater_find("npsh_available");
    const double numbers[] = {1, 0.02, 998, 2, 1}, bad = -1;
    std::vector<cutwater_column> in;
    for (const double& x : numbers) in.push_back({&x, 0});
    std::vector<double> out(5, 7);
    const cutwater_result_column to{out.data(), 1};
    cutwater_rows_report report{};
    CHECK(cutwater_rows_at(npsh, 5, in.data(), nullptr, nullptr, &report) == CUTWATER_MISSING);
    CHECK(report.refused == 5);
    for (const int32_t threads : {1, -1, 300}) {
        report.threads = threads;
        CHECK(cutwater_rows_at(npsh, 5, in.data(), nullptr, &to, &report) == CUTWATER_OK);
        CHECK(out[4] == Approx((1 - 0.02) * 1e5 / (998 * 9.80665) + 2 - 1).epsilon(1e-12));
    }
    in[0] = {&bad, 0};
    CHECK(cutwater_rows_at(npsh, 5, in.data(), nullptr, &to, nullptr) == CUTWATER_OUT_OF_INTERVAL);
    CHECK((std::isnan(out[0]) && std::isnan(out[4])));
    in[0] = {nullptr, 0};  // it has no default
    CHECK(cutwater_rows_at(npsh, 5, in.data(), nullptr, &to, nullptr) == CUTWATER_MISSING);
    CHECK(cutwater_rows_at(-1, 5, in.data(), nullptr, &to, nullptr) == CUTWATER_UNKNOWN_FUNCTION);
}

TEST_CASE("a result that is no number cannot be asked about", "[capi]")
{
    int named = 0;
    for (std::size_t k = 0; k < function_count(); ++k) {
        const FunctionInfo& f = function_at(k);
        cutwater_refusal r;
        size_t count = 0;
        const bool any_number = std::any_of(f.results.begin(), f.results.end(),
                                            [](const ResultInfo& out) { return out.kind == Kind::quantity; });
        INFO(f.name);
        for (const ResultInfo& out : f.results) {
            if (out.kind == Kind::quantity) continue;
            ++named;
            CHECK(cutwater_sensitivity(f.name, nullptr, 0, out.name, nullptr, 0, &count, nullptr, &r) ==
                  CUTWATER_WRONG_KIND);
            CHECK_THAT(r.message, Contains("is not a single number"));
        }
        if (any_number) continue;
        CHECK(cutwater_sensitivity(f.name, nullptr, 0, nullptr, nullptr, 0, &count, nullptr, &r) ==
              CUTWATER_WRONG_KIND);
        CHECK_THAT(r.message, Contains("no result that is a single number"));
    }
    CHECK(named > 0);
}

TEST_CASE("an abbreviation asked for as a function leads to what it stands for", "[capi]")
{
    int tried = 0;
    for (std::size_t k = 0; k < function_count(); ++k) {
        const FunctionInfo& f = function_at(k);
        for (std::string_view rest = f.also ? f.also : ""; !rest.empty();) {
            const std::size_t end = std::min(rest.find('|'), rest.size());
            const std::string word(rest.substr(0, end));
            rest.remove_prefix(std::min(end + 1, rest.size()));
            if (word.size() < 2 || word.size() > 4) continue;
            const Nearest near = nearest_functions(word);
            INFO(word << " for " << f.name);
            ++tried;
            CHECK((near.count == Nearest::most || std::any_of(near.names, near.names + near.count, [&](const char* n) {
                       return std::string_view(n) == f.name;
                   })));
        }
    }
    CHECK(tried > 0);
}

TEST_CASE("a series in the working: none of it, one point, and more than are shown", "[capi]")
{
    std::vector<double> flows, heads;
    for (int i = 0; i < 12; ++i) flows.push_back(i), heads.push_back(50 - i);
    CHECK_THAT(working(flows, heads, CUTWATER_TEXT_UTF8), Contains("0, 1, 2, 3, 4, 5, …, 11 m3/h (12 points)"));
    CHECK_THAT(working({1}, {5}, CUTWATER_TEXT_UTF8), Contains("1 m3/h (1 point)"));
    CHECK_THAT(working({}, {}, CUTWATER_TEXT_UTF8), Contains("no points"));
    const cutwater_value in_kilograms[] = {text("1 kg")};
    char page[4000];
    CHECK(cutwater_working("npsh_available", in_kilograms, 1, CUTWATER_TEXT_MARKDOWN, page, sizeof page, nullptr,
                           nullptr) == CUTWATER_WRONG_QUANTITY);
    CHECK_THAT(page, Contains("**not read**") && Contains("any finite number") && Contains("not looked at"));
}

TEST_CASE("lists of arguments as examples write them", "[capi]")
{
    const auto list = read_argument_list(" 1.5e+3,\"6 ft\" , default,[ ] ,[1, -inf,inf , nan]");
    REQUIRE(list);
    REQUIRE(list->size() == 5);
    CHECK(((*list)[0].kind == CUTWATER_NUMBER && (*list)[0].number == 1500 && (*list)[0].text == "1.5e+3"));
    CHECK(((*list)[1].kind == CUTWATER_TEXT && (*list)[1].text == "6 ft"));
    CHECK((*list)[2].kind == CUTWATER_LEFT_OUT);
    CHECK(((*list)[3].kind == CUTWATER_SERIES && (*list)[3].series.empty()));
    REQUIRE((*list)[4].series.size() == 4);
    CHECK(((*list)[4].series[1] == -HUGE_VAL && (*list)[4].series[2] == HUGE_VAL && std::isnan((*list)[4].series[3])));
    CHECK(read_argument_list("")->empty());
    CHECK(read_argument_list("  ")->empty());
    for (const char* wrong :
         {"1 2", "1,", ",1", "[1, 2", "[1 2]", "[1,]", "\"6 ft", "six", "1.5.2", "1e999", "[1] 2"}) {
        INFO(wrong);
        CHECK_FALSE(read_argument_list(wrong));
    }
    CHECK(written_precision("12") == Approx(0.5));
    CHECK(written_precision("12.50") == Approx(0.005));
    CHECK(written_precision("1.5e+3") == Approx(50));
    CHECK(written_precision("1.5E-3") == Approx(5e-5));
}

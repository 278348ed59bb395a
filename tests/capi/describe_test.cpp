// What the C API tells of records, against the records; and how a C caller leaves an optional input out.
#include <cutwater/cutwater.h>

#include "answers/questions.hpp"
#include "catalogue/families.hpp"
#include "catalogue/statuses.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstring>
#include <limits>
#include <string>
#include <vector>

using namespace cutwater;

namespace {

template <class Info>
Info sized()
{
    Info info{};
    info.size = sizeof info;
    return info;
}

std::string_view text(const char* given)
{
    REQUIRE(given);
    return given;
}

}  // namespace

TEST_CASE("every function is described as its record says", "[describe]")
{
    REQUIRE(cutwater_function_count() == static_cast<int32_t>(function_count()));
    for (int32_t k = 0; k < cutwater_function_count(); ++k) {
        const FunctionInfo& f = function_at(static_cast<std::size_t>(k));
        auto info = sized<cutwater_function_info>();
        REQUIRE(cutwater_describe_function(k, &info) == CUTWATER_OK);
        INFO(f.name);
        CHECK(text(info.name) == f.name);
        CHECK(text(info.meaning) == f.meaning);
        CHECK(text(info.also) == f.also);
        CHECK(text(info.equation) == f.equation);
        CHECK(text(info.source) == f.source);
        CHECK(text(info.family) == family_of(static_cast<std::size_t>(k)).name);
        CHECK(text(info.family_title) == family_of(static_cast<std::size_t>(k)).title);
        CHECK(text(info.example_inputs) == f.example.inputs);
        CHECK(info.inputs == static_cast<int32_t>(f.inputs.size()));
        CHECK(info.results == static_cast<int32_t>(f.results.size()));
        CHECK((info.has_rows != 0) == (f.rows != nullptr));
        std::string flat = f.name;  // the type's name is the function's without its underscores, capitals apart
        std::erase(flat, '_');
        std::string type(info.type_name);
        for (char& c : type) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        CHECK(type == flat);
        for (int32_t i = 0; i < info.relations; ++i) {
            CHECK(text(cutwater_relation(k, i)) == f.relations[static_cast<std::size_t>(i)].sentence);
            CHECK(cutwater_relation_input(k, i, 0) ==
                  static_cast<int32_t>(f.relations[static_cast<std::size_t>(i)].inputs.front()));
            CHECK(cutwater_relation_input(k, i, 99) == -1);
        }
        CHECK(text(cutwater_relation(k, info.relations)).empty());
        for (int32_t i = 0; i < info.cautions; ++i)
            CHECK(text(cutwater_caution(k, i)) == f.cautions[static_cast<std::size_t>(i)]);
        CHECK(text(cutwater_caution(k, info.cautions)).empty());
    }
}

TEST_CASE("every input and result is described as its record says", "[describe]")
{
    for (int32_t k = 0; k < cutwater_function_count(); ++k) {
        const FunctionInfo& f = function_at(static_cast<std::size_t>(k));
        for (std::size_t i = 0; i < f.inputs.size(); ++i) {
            const InputInfo& in = f.inputs[i];
            auto info = sized<cutwater_input_info>();
            REQUIRE(cutwater_describe_input(k, static_cast<int32_t>(i), &info) == CUTWATER_OK);
            INFO(f.name << " " << in.full_name);
            CHECK(text(info.name) == in.full_name);
            CHECK(text(info.short_name) == in.name);
            CHECK(text(info.symbol) == in.symbol);
            CHECK(text(info.meaning) == in.meaning);
            CHECK(text(info.quantity) == (in.quantity ? in.quantity->name : ""));
            CHECK(info.kind == cutwater_input_kind(k, static_cast<int32_t>(i)));
            CHECK((info.optional != 0) == in.has_default);
            CHECK((info.low == in.interval.low && info.high == in.interval.high));
            CHECK(((info.low_open != 0) == in.interval.low_open && (info.high_open != 0) == in.interval.high_open));
            CHECK(info.words == static_cast<int32_t>(in.words.size()));
            CHECK(info.least_points == in.least_points);
            CHECK((info.rising != 0) == in.rising);
            CHECK((info.whole != 0) == in.whole);
            const bool word = in.kind == Kind::choice;
            if (in.has_default && !word)
                CHECK(info.fallback == in.fallback);
            else
                CHECK(std::isnan(info.fallback));
            CHECK(text(info.fallback_word) ==
                  (in.has_default && word ? in.words[static_cast<std::size_t>(in.fallback)] : ""));
            CHECK_FALSE(text(info.takes).empty());
            CHECK_FALSE(text(info.permitted).empty());
            if (in.has_default) CHECK(std::string(info.permitted).find("if left out") != std::string::npos);
        }
        for (std::size_t i = 0; i < f.results.size(); ++i) {
            auto info = sized<cutwater_result_info>();
            REQUIRE(cutwater_describe_result(k, static_cast<int32_t>(i), &info) == CUTWATER_OK);
            CHECK(text(info.name) == f.results[i].full_name);
            CHECK(text(info.short_name) == f.results[i].name);
            CHECK(text(info.meaning) == f.results[i].meaning);
            CHECK(info.words == static_cast<int32_t>(f.results[i].words.size()));
        }
    }
}

TEST_CASE("questions and statuses are told as they stand", "[describe]")
{
    REQUIRE(cutwater_question_count() == static_cast<int32_t>(questions().size()));
    for (int32_t k = 0; k < cutwater_question_count(); ++k) {
        const QuestionInfo& q = questions()[static_cast<std::size_t>(k)];
        auto info = sized<cutwater_question_info>();
        REQUIRE(cutwater_describe_question(k, &info) == CUTWATER_OK);
        CHECK(text(info.name) == q.name);
        CHECK(text(info.meaning) == q.meaning);
        auto part = sized<cutwater_question_part>();
        for (int32_t i = 0; i < info.arguments; ++i) {
            REQUIRE(cutwater_describe_question_argument(k, i, &part) == CUTWATER_OK);
            CHECK(text(part.name) == q.arguments[static_cast<std::size_t>(i)].name);
            CHECK(part.asked == static_cast<int32_t>(q.arguments[static_cast<std::size_t>(i)].asked));
        }
        CHECK(cutwater_describe_question_argument(k, info.arguments, &part) == CUTWATER_WRONG_COUNT);
        for (int32_t i = 0; i < info.results; ++i) {
            REQUIRE(cutwater_describe_question_result(k, i, &part) == CUTWATER_OK);
            CHECK((part.word != 0) == q.results[static_cast<std::size_t>(i)].word);
        }
    }
    for (const StatusInfo& s : statuses()) {
        CHECK(text(cutwater_status_name(s.value)) == s.name);
        CHECK(text(cutwater_status_meaning(s.value)) == s.meaning);
    }
    CHECK(text(cutwater_status_name(-1)).empty());
    CHECK(text(cutwater_status_name(1000)).empty());
}

TEST_CASE("descriptions of what is not there, and callers of an older header", "[describe]")
{
    auto whole = sized<cutwater_function_info>();
    CHECK(cutwater_describe_function(-1, &whole) == CUTWATER_WRONG_COUNT);
    CHECK(cutwater_describe_function(cutwater_function_count(), &whole) == CUTWATER_WRONG_COUNT);
    CHECK(cutwater_describe_function(0, nullptr) != CUTWATER_OK);
    CHECK(text(cutwater_relation(-1, 0)).empty());
    CHECK(cutwater_relation_input(0, -1, 0) == -1);
    cutwater_function_info older;
    std::memset(&older, 0x5A, sizeof older);
    older.size = offsetof(cutwater_function_info, family);  // knows the names only
    REQUIRE(cutwater_describe_function(0, &older) == CUTWATER_OK);
    CHECK(text(older.name) == function_at(0).name);
    unsigned char after = 0;
    std::memcpy(&after, reinterpret_cast<const char*>(&older) + older.size, 1);
    CHECK(after == 0x5A);  // nothing is written past what the caller has
    CHECK(older.size == offsetof(cutwater_function_info, family));
}

TEST_CASE("an optional input of a direct call is left out by its own number, a choice by a null pointer", "[describe]")
{
    const double left_out = cutwater_left_out();
    CHECK(std::isnan(left_out));
    cutwater_refusal r;
    double told = 0, given = 0;
    REQUIRE(cutwater_viscous_head_ratio(5.52, left_out, &told, &r) == CUTWATER_OK);
    REQUIRE(cutwater_viscous_head_ratio(5.52, 1, &given, &r) == CUTWATER_OK);
    CHECK(told == given);
    CHECK(cutwater_viscous_head_ratio(5.52, std::numeric_limits<double>::quiet_NaN(), &told, &r) ==
          CUTWATER_NOT_FINITE);
    CHECK(cutwater_viscous_head_ratio(left_out, 1, &told, &r) == CUTWATER_NOT_FINITE);  // it has no default
    double bore = 0, outside = 0, wall = 0;
    REQUIRE(cutwater_nominal_pipe_bore(100, nullptr, &bore, &outside, &wall, &r) == CUTWATER_OK);
    CHECK(bore == Approx(102.26));
    CHECK(cutwater_fitting_loss_coefficient(nullptr, 1e5, 100, &told, &r) == CUTWATER_UNKNOWN_WORD);  // no default
}

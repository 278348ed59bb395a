// Refusals and the prose of what is permitted, word by word, for records of no catalogue: shapes that none there has.
#include <cutwater/unit_table.hpp>

#include "catalogue/families.hpp"
#include "catalogue/guard.hpp"
#include "catalogue/prose.hpp"
#include "catalogue/refusal.hpp"
#include "catalogue/sentence.hpp"
#include "units/turning.hpp"

#include <catch2/catch.hpp>

#include <limits>
#include <string>

using namespace cutwater;

namespace {

constexpr double none = std::numeric_limits<double>::quiet_NaN();

InputInfo number(Interval interval, const UnitInfo* unit = units::metre.info, bool whole = false)
{
    return {.name = "x",
            .full_name = "x_m",
            .symbol = "x",
            .kind = Kind::quantity,
            .quantity = &quantity_info<Length>,
            .unit = unit,
            .interval = interval,
            .meaning = "a length",
            .words = {},
            .has_default = false,
            .fallback = 0,
            .whole = whole,
            .least_points = 0,
            .rising = false};
}

/// A function of one input, with a relation that blames it.
struct Asked {
    InputInfo input = number(between(0, 1));
    ResultInfo results[2] = {
        {"y", "y_m", "y", Kind::quantity, &quantity_info<Length>, units::metre.info, "a length", {}},
        {"z", "z_m", "z", Kind::quantity, &quantity_info<Length>, units::metre.info, "a length", {}}};
    std::size_t first = 0;
    RelationInfo relation{"it must be another", {&first, 1}};
    FunctionText text{.name = "f",
                      .type_name = "F",
                      .meaning = "",
                      .also = "",
                      .inputs = {&input, 1},
                      .results = results,
                      .equation = "",
                      .relations = {&relation, 1},
                      .source = "",
                      .cautions = {},
                      .example = {},
                      .turns = false};
    cutwater_refusal refusal{};
    std::string message() const { return refusal.message; }
};

std::string interval(const InputInfo& in) { return prose<const InputInfo&>(write_interval, in); }

}  // namespace

TEST_CASE("an interval in words", "[refusals]")
{
    CHECK(interval(number(any)) == "a finite number in m");
    CHECK(interval(number(any, units::number.info)) == "a finite number");
    CHECK(interval(number(any, units::number.info, true)) == "a whole number");
    CHECK(interval(number(between(1, 9), units::number.info, true)) == "a whole number from 1 to 9");
    CHECK(interval(number(from(3), units::number.info, true)) == "a whole number from 3");
    CHECK(interval(number(from(3))) == "at least 3 m");
    CHECK(interval(number(above(3))) == "above 3 m");
    const double infinite = std::numeric_limits<double>::infinity();
    CHECK(interval(number({.low = -infinite, .high = 5, .low_open = true, .high_open = false})) == "up to 5 m");
    CHECK(interval(number({.low = -infinite, .high = 5, .low_open = true, .high_open = true})) == "below 5 m");
    CHECK(interval(number({.low = 2, .high = 5, .low_open = false, .high_open = true})) == "from 2 to below 5 m");
    CHECK(interval(number(above_up_to(2, 5))) == "above 2 up to 5 m");
}

TEST_CASE("prose longer than a refusal's sentence is whole", "[refusals]")
{
    const std::string longest(5000, 'x');
    ProseText text;
    text.add("<{}>", longest);
    CHECK(text.take() == "<" + longest + ">");
}

TEST_CASE("a scatter in words", "[refusals]")
{
    ResultInfo out{"t", "t_degC", "t", Kind::quantity, &quantity_info<Temperature>, units::degC.info, "", {}};
    const auto scatter = [&] { return prose<const ResultInfo&>(write_scatter, out); };
    CHECK(scatter() == "");
    out.scatter = {3, true};
    CHECK(scatter() == "plus or minus 3 K in about 95 of 100 cases");
    out.unit = units::metre.info;
    CHECK(scatter() == "plus or minus 3 m in about 95 of 100 cases");
    out.unit = units::number.info;
    CHECK(scatter() == "plus or minus 3 in about 95 of 100 cases");
    out.scatter = {0.25, false};
    CHECK(scatter() == "plus or minus 25 % in about 95 of 100 cases");
}

TEST_CASE("a relation says of the input it blames what there is to say", "[refusals]")
{
    Asked f;
    CHECK(refuse_relation(f.text, 0, 5, 0, &f.refusal) == CUTWATER_CONTRADICTION);
    CHECK(f.message() == "f: x_m is 5 m, but it must be another.");
    refuse_relation(f.text, 0, none, 1, &f.refusal);
    CHECK(f.message() == "f: x_m, a series of 1 point: it must be another.");
    refuse_relation(f.text, 0, none, 7, &f.refusal);
    CHECK(f.message() == "f: x_m, a series of 7 points: it must be another.");
    refuse_relation(f.text, 0, none, 0, &f.refusal);  // a word
    CHECK(f.message() == "f: it must be another.");
}

TEST_CASE("a formula's own sentence takes its numbers in, and keeps braces that hold none", "[refusals]")
{
    Asked f;
    const auto said = [&](const char* argument, const char* sentence) {
        const NoValue why{CUTWATER_OUT_OF_INTERVAL, argument, sentence, {{1.5, "m"}, {2, ""}, {3, "s"}}};
        CHECK(refuse_no_value(f.text, why, 5, &f.refusal) == CUTWATER_OUT_OF_INTERVAL);
        return f.message();
    };
    CHECK(said("x", "{0} lies below {1}") == "f: x_m: 1.5 m lies below 2.");
    CHECK(f.refusal.argument == 0);
    CHECK(said("", "{2} after {0}") == "f: 3 s after 1.5 m.");
    CHECK(f.refusal.argument == -1);
    for (const char* sentence :
         {"a set {}", "a set {a}", "a set {3}", "a set {1", "a set {", "a set {12}", "a set {/}"})
        CHECK(said("", sentence) == "f: " + std::string(sentence) + ".");
}

TEST_CASE("the first result that overflows is named", "[refusals]")
{
    Asked f;
    const bool first[] = {false, false}, second[] = {true, false};
    CHECK(refuse_overflow(f.text, first, &f.refusal) == CUTWATER_OVERFLOW);
    CHECK(f.message().starts_with("f: y_m would not be a finite number"));
    CHECK(refuse_overflow(f.text, second, &f.refusal) == CUTWATER_OVERFLOW);
    CHECK(f.message().starts_with("f: z_m would not be a finite number"));
}

TEST_CASE("every refusal has its status when there is no refusal to fill", "[refusals]")
{
    Asked f;
    f.input.least_points = 2;
    const bool none_finite[] = {false, false};
    clear(nullptr);
    blame(f.text, 0, -1, nullptr);
    CHECK(refuse_number(f.text, 0, 5, -1, nullptr) == CUTWATER_OUT_OF_INTERVAL);
    CHECK(refuse_number(f.text, 0, none, -1, nullptr) == CUTWATER_NOT_FINITE);
    CHECK(refuse_word(f.text, 0, "no", nullptr) == CUTWATER_UNKNOWN_WORD);
    CHECK(refuse_series(f.text, 0, {}, nullptr) == CUTWATER_BAD_SERIES);
    CHECK(refuse_relation(f.text, 0, 5, 0, nullptr) == CUTWATER_CONTRADICTION);
    CHECK(refuse_no_value(f.text, {CUTWATER_NO_ANSWER, "x", "no", {}}, 5, nullptr) == CUTWATER_NO_ANSWER);
    CHECK(refuse_overflow(f.text, none_finite, nullptr) == CUTWATER_OVERFLOW);
    CHECK(refuse_missing(f.text, 0, nullptr) == CUTWATER_MISSING);
    CHECK(refuse_kind(f.text, 0, "a series", nullptr) == CUTWATER_WRONG_KIND);
    CHECK(refuse_buffer(f.text, 0, 9, 8, nullptr) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK(refuse(CUTWATER_INTERNAL, "no", nullptr) == CUTWATER_INTERNAL);
    CHECK(refuse_saying(CUTWATER_INTERNAL, nullptr, "{}", 1) == CUTWATER_INTERNAL);
}

TEST_CASE("what is thrown ends at the guard", "[refusals]")
{
    cutwater_refusal r{};
    CHECK(guard(&r, []() -> cutwater_status { throw 1; }) == CUTWATER_INTERNAL);
    CHECK(r.status == CUTWATER_INTERNAL);
    CHECK(std::string(r.message) == "The library failed inside; please report this call.");
    CHECK(guard(&r, []() -> cutwater_status { throw std::bad_alloc(); }) == CUTWATER_OUT_OF_MEMORY);
    CHECK(r.status == CUTWATER_OUT_OF_MEMORY);
    CHECK(guard(&r, [] { return CUTWATER_OK; }) == CUTWATER_OK);
    CHECK(r.status == CUTWATER_OK);
}

TEST_CASE("a function is told that turns one quantity into the other, where there is one", "[refusals]")
{
    CHECK(function_between(quantity_info<GaugePressure>, quantity_info<AbsolutePressure>) != nullptr);
    CHECK(function_between(quantity_info<GaugePressure>, quantity_info<Power>) == nullptr);
    CHECK(function_between(quantity_info<Length>, quantity_info<Power>) == nullptr);
}

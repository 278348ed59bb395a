#include "answers/records.hpp"
#include "answers/shown.hpp"
#include "answers/substitution.hpp"
#include "answers/working.hpp"

#include <catch2/catch.hpp>

using namespace cutwater;
using namespace cutwater::test;
using Catch::Matchers::Contains;

namespace cutwater::test {

inline Head fall(Velocity v, Acceleration g, Steps steps)
{
    const Head h = v * v / (2.0 * g);
    steps("h", "v^2/(2 g)", h, units::metre);
    return h;
}
inline constexpr auto fall_record = record<&fall>(
    {.name = "fall",
     .meaning = "Height that a body falls from to gain a velocity",
     .inputs = {input("velocity", "v", units::ms, between(0, 100), "at the end"),
                input("gravity", "g", unit<Acceleration>("m/s2"), above(0), "of the place", 9.80665)},
     .results = {output("height", "h", units::metre, "fallen through")},
     .equation = "h = v^2/(2 g)",
     .source = "Galilei, 1638",
     .cautions = {"Mind your head: 3 ≤ h, in plain air."},
     .example = {"10", "5.0986", "hand"}},
    relation<"velocity">([](Velocity v) { return v.value() != 13; }, "the velocity must not be 13"));

inline Ratio ordered(Ratio a, Ratio b, Ratio c) { return a + b + c; }
inline constexpr auto ordered_record = record<&ordered>(
    {.name = "ordered",
     .meaning = "a test",
     .inputs = {plain("a"), plain("b"), plain("c")},
     .results = {answer()},
     .equation = "y = a + b + c",
     .source = "none",
     .example = {}},
    relation<"a", "b">([](Ratio a, Ratio b) { return a < b; }, "each must be larger than the one before"),
    relation<"b", "c">([](Ratio b, Ratio c) { return b < c; }, "each must be larger than the one before"));

}  // namespace cutwater::test

namespace {

std::string shown(std::vector<cutwater_value> values, bool plain = false)
{
    std::string made;
    write_text(work(binding::info<fall_record>, values), plain, made);
    return made;
}

std::string put(const char* equation, std::initializer_list<Replacement> inputs,
                std::vector<std::string_view> results = {"y"})
{
    return substituted(equation, {inputs.begin(), inputs.size()}, results);
}

}  // namespace

TEST_CASE("the working as a reader sees it", "[working]")
{
    CHECK(shown({text("36 km/h")}) == R"(fall: Height that a body falls from to gain a velocity

Equation
  h = v^2/(2 g)
  h = (10 m/s)^2/(2 (9.80665 m/s2))

Put in
  v  velocity  36 km/h = 10 m/s        at the end
  g  gravity   9.80665 m/s2 (default)  of the place

Steps
  h  5.09858 m  v^2/(2 g)

Result
  h  height  5.09858 m  fallen through

Limits
  velocity  from 0 to 100 m/s  inside: 10 m/s above 0, 100 % of it
  gravity   above 0 m/s2       inside: 9.807 m/s2 above 0, 100 % of it

Relations
  - held: the velocity must not be 13

Source
  Galilei, 1638

Caution
  - Mind your head: 3 ≤ h, in plain air.
)");
    CHECK_THAT(shown({number(10)}, true), Contains("3 <= h"));
    CHECK_THAT(shown({number(99)}), Contains("inside: 1 m/s below 100, 1.01 % of it"));
    CHECK_THAT(shown({number(100)}), Contains("inside: at 100 m/s"));
}

TEST_CASE("the working of a refused call says why and what was still looked at", "[working]")
{
    const std::string outside = shown({number(101)});
    CHECK_THAT(outside, Contains("Refused\n  fall: velocity_ms is 101 m/s") && Contains("OUTSIDE: 101 m/s") &&
                            Contains("not looked at: the velocity"));
    CHECK_THAT(outside, !Contains("Result") && !Contains("Steps"));
    CHECK_THAT(shown({number(13)}), Contains("did not hold: the velocity must not be 13") && Contains("Refused"));
    CHECK_THAT(shown({text("10 kg")}),
               Contains("\"10 kg\" not read") && Contains("Refused") && Contains("from 0 to 100 m/s  not looked at"));
    CHECK_THAT(shown({text("10\n\xFFkg")}),
               Contains("\"10 \uFFFDkg\" not read"));  // whatever was given, the page is text
    CHECK_THAT(shown({}), Contains("velocity_ms was not given"));
    CHECK_THAT(shown({number(1), number(2), number(3)}), Contains("takes 2 inputs; 3 were given"));
    CHECK_THAT(shown({number(NAN)}), Contains("NaN") && Contains("OUTSIDE"));
}

TEST_CASE("the relation that did not hold is the one marked, also when another has the same sentence", "[working]")
{
    const auto relations = [](double a, double b, double c) {
        return work(binding::info<ordered_record>, std::vector<cutwater_value>{number(a), number(b), number(c)})
            .relations;
    };
    using State = Working::Relation;
    CHECK(relations(1, 2, 3) == std::vector{State::held, State::held});
    CHECK(relations(2, 1, 3) == std::vector{State::broken, State::not_looked_at});
    CHECK(relations(1, 3, 2) == std::vector{State::held, State::broken});
    CHECK(relations(1, NAN, 2) == std::vector{State::not_looked_at, State::not_looked_at});
}

TEST_CASE("numbers are put into equations only where that is safe", "[working]")
{
    CHECK(put("y = a + b", {{"a", "2 m"}, {"b", "-3 m"}}) == "y = 2 m + (-3 m)");
    CHECK(put("y = a b/(c - a)^2", {{"a", "2"}, {"b", "3 m"}, {"c", "7"}}) == "y = (2) (3 m)/(7 - 2)^2");
    CHECK(put("y = a^2/b", {{"a", "2"}, {"b", "4"}}) == "y = (2)^2/4");
    CHECK(put("y = sqrt(a)", {{"a", "2 m"}}) == "y = sqrt(2 m)");
    CHECK(put("y = a_1 + alpha", {{"a", "2"}}).empty());  // on the borders of names only
    CHECK(put("y = a + a_1, g = 9.80665 m/s2", {{"a", "2"}, {"m", "5"}}) == "y = 2 + a_1");  // a unit's m is no mass
    CHECK(put("y = m + 1; m in metres", {{"m", "5 mm"}}).empty());                           // another unit is meant
    CHECK(put("solves the balance of a and b", {{"a", "2"}}).empty());
    CHECK(put("y = a for a below 3", {{"a", "2"}}).empty());
    CHECK(put("a = b", {{"a", "2"}, {"b", "3"}}, {"a"}).empty());  // a is a result too
    CHECK(put("y = a", {{"a", "2"}, {"a", "3"}}).empty());
    CHECK(put("y = a + s", {{"a", "2"}, {"s", ""}}) == "y = 2 + s");  // a series keeps its symbol
}

TEST_CASE("numbers and texts as people read them", "[working]")
{
    const auto shown_number = [](double x, int digits) {
        std::string made;
        add_number(made, x, digits);
        return made;
    };
    CHECK(shown_number(0.1 + 0.2, given_digits) == "0.3");
    CHECK(shown_number(1234567.8, 6) == "1234568");
    CHECK(shown_number(2.5e12, 6) == "2.5e+12");
    CHECK(shown_number(-0.0, 6) == "0");
    CHECK(shown_number(11.6147935, 6) == "11.6148");
    CHECK(ascii("20 °C ≤ 5 m²·s – ρ 漢") == "20 deg C <= 5 m2.s - rho ?");
    CHECK(ascii("cut \xC3") == "cut ?");
    CHECK(width("m²") == 2);
}

TEST_CASE("no line of the text is wider than 96 columns", "[working]")
{
    const std::string page = shown({text("36 km/h")});
    for (std::size_t begin = 0; begin < page.size();) {
        const std::size_t end = std::min(page.find('\n', begin), page.size());
        CHECK(width(std::string_view(page).substr(begin, end - begin)) <= 96);
        begin = end + 1;
    }
}

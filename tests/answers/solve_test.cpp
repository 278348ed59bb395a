#include "answers/records.hpp"
#include "answers/search_points.hpp"
#include "answers/solve.hpp"
#include "catalogue/refusal.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace cutwater;
using namespace cutwater::test;
using Catch::Matchers::Contains;

namespace {

struct Found {
    cutwater_status status;
    double value;
    std::string message;
    Solutions all;
};

Found solve_for(const FunctionInfo& f, const char* unknown, double target, std::vector<cutwater_value> values = {},
                double low = NAN, double high = NAN)
{
    Found found{CUTWATER_OK, NAN, "", {}};
    cutwater_refusal refusal;
    clear(&refusal);
    SolveQuestion q;
    const cutwater_value wanted = number(target);
    found.status = ask_solve(f, values, unknown, nullptr, &wanted, low, high, q, &refusal);
    if (found.status == CUTWATER_OK) {
        found.all = solve(q);
        found.status = one_solution(q, found.all, found.value, &refusal);
    }
    found.message = refusal.message;
    return found;
}

template <const auto& R>
constexpr const FunctionInfo& f = binding::info<R>;

}  // namespace

TEST_CASE("one answer is found to the last bits", "[solve]")
{
    CHECK(solve_for(f<reciprocal_record>, "x", 0.3).value == Approx(1 / 0.3).epsilon(1e-15));
    CHECK(solve_for(f<reciprocal_record>, "x", -7e5).value == Approx(-1 / 7e5).epsilon(1e-15));
    CHECK(solve_for(f<square_root_record>, "x", 1e5).value == Approx(1e10).epsilon(1e-15));
    CHECK(solve_for(f<square_root_record>, "x", 0).value == 0);
    CHECK(solve_for(f<shelf_record>, "x", 7.25).value == 12.25);
    CHECK(solve_for(f<resistance_curve_record>, "flow", 40, {number(10), number(0.003)}).value ==
          Approx(100).epsilon(1e-15));
    CHECK(solve_for(f<resistance_curve_record>, "k", 40, {number(10), {}, number(100)}).value ==
          Approx(0.003).epsilon(1e-14));
}

TEST_CASE("several answers are named", "[solve]")
{
    const Found both = solve_for(f<parabola_record>, "x", 8);
    CHECK(both.status == CUTWATER_SEVERAL_ANSWERS);
    REQUIRE(both.all.answers.size() == 2);
    CHECK(both.all.answers[0].low == Approx(1).epsilon(1e-14));
    CHECK(both.all.answers[1].low == Approx(7).epsilon(1e-14));
    CHECK_THAT(both.message, Contains("1 and 7"));
    CHECK(solve_for(f<parabola_record>, "x", 8, {}, 2).value == Approx(7).epsilon(1e-14));
    // two that lie closer together than the points first looked at, and one that is only touched
    CHECK(solve_for(f<parabola_record>, "x", -0.9999).all.answers.size() == 2);
    CHECK(solve_for(f<power_of_one_plus_record>, "x", 1).value == 0);  // rounding crosses the target about it
    CHECK(solve_for(f<parabola_record>, "x", -1).value == Approx(4).margin(1e-7));
    CHECK(solve_for(f<wave_record>, "x", 0.5).all.answers.size() == 10);
    CHECK(solve_for(f<wave_record>, "x", 0.999999).all.answers.size() == 10);
}

TEST_CASE("no answer says what was seen, not what is", "[solve]")
{
    const Found none = solve_for(f<square_root_record>, "x", -2, {}, 4, 9);
    CHECK(none.status == CUTWATER_NO_ANSWER);
    CHECK_THAT(none.message,
               Contains("y = -2") && Contains("2 (at 4)") && Contains("3 (at 9)") && Contains("searched: 4 to 9"));
    CHECK(solve_for(f<parabola_record>, "x", -1.0001).status == CUTWATER_NO_ANSWER);
    CHECK_THAT(solve_for(f<resistance_curve_record>, "flow", 12, {number(10), number(0)}).message,
               Contains("all give 10"));
}

TEST_CASE("a flat stretch is told with its ends", "[solve]")
{
    const Found flat = solve_for(f<shelf_record>, "x", 0);
    CHECK(flat.status == CUTWATER_SEVERAL_ANSWERS);
    REQUIRE(flat.all.answers.size() == 1);
    CHECK(flat.all.answers[0].low == 0);
    CHECK(flat.all.answers[0].high == Approx(5).epsilon(1e-9));
    CHECK_THAT(flat.message, Contains("every value from 0 to 5 gives y = 0"));
    const Found steady = solve_for(f<resistance_curve_record>, "flow", 10, {number(10), number(0)});
    REQUIRE(steady.all.answers.size() == 1);
    CHECK(steady.all.answers[0].wide());
    // level only by rounding: the foot of a parabola
    const Found foot = solve_for(f<resistance_curve_record>, "flow", 50, {number(50), number(0.001)});
    CHECK(foot.status == CUTWATER_OK);
    CHECK(foot.value == 0);
}

TEST_CASE("every stretch is told, also one that lies between the points first looked at", "[solve]")
{
    // x^2 from 0 to 4 in whole steps of the result: 7 is given from sqrt(7) to below sqrt(8)
    const Found one = solve_for(f<square_in_steps_record>, "x", 7, {}, 0);
    CHECK(one.status == CUTWATER_SEVERAL_ANSWERS);
    REQUIRE(one.all.answers.size() == 1);
    CHECK(one.all.answers[0].low == Approx(std::sqrt(7.0)).epsilon(1e-14));
    CHECK(one.all.answers[0].high == Approx(std::sqrt(8.0)).epsilon(1e-14));
    CHECK_THAT(one.message, Contains("every value from 2.6457513 to 2.8284271"));
    const Found two = solve_for(f<square_in_steps_record>, "x", 7);
    REQUIRE(two.all.answers.size() == 2);
    CHECK_THAT(two.message, Contains("several answers: from -2.8284271 to -2.6457513 and from 2.6457513 to 2.8284271"));
    const Found whole = solve_for(f<halved_record>, "number", 3);
    REQUIRE(whole.all.answers.size() == 1);
    CHECK(whole.all.answers[0].low == 6);
    CHECK(whole.all.answers[0].high == 7);
}

TEST_CASE("an end at 0 is approached", "[solve]")
{
    for (const double x : {1e-11, 3e-15, 7e-40, 1e-200}) {
        CHECK(solve_for(f<logarithm_record>, "x", std::log(x)).value == Approx(x).epsilon(1e-9));
        CHECK(solve_for(f<logarithm_record>, "x", std::log(x), {}, 0, 50).value == Approx(x).epsilon(1e-9));
        CHECK(solve_for(f<reciprocal_record>, "x", -1 / x, {}, -50, 0).value == Approx(-x).epsilon(1e-14));
    }
}

TEST_CASE("two answers close together are found before they are denied", "[solve]")
{
    const Found pair = solve_for(f<narrow_peak_record>, "x", 0.5);
    REQUIRE(pair.all.answers.size() == 2);
    CHECK(pair.all.answers[0].low ==
          Approx(3.7234 - 0.00878).margin(1e-4));  // sqrt(-ln(0.5 - 0.0372)) hundredths to each side
    CHECK(pair.all.answers[1].low == Approx(3.7234 + 0.00878).margin(1e-4));
    const Found none = solve_for(f<narrow_peak_record>, "x", 2);
    CHECK_THAT(none.message,
               Contains("none of the ") && Contains(" values computed gives y = 2") && Contains("the greatest 1.0"));
}

TEST_CASE("a jump is no answer", "[solve]")
{
    const Found step = solve_for(f<staircase_record>, "x", 3.5);
    CHECK(step.status == CUTWATER_NO_ANSWER);
    CHECK_THAT(step.message, Contains("leaps from 3 to 4"));
    CHECK(step.all.leap.high == Approx(4).epsilon(1e-15));
    CHECK(solve_for(f<reciprocal_record>, "x", 0).status ==
          CUTWATER_NO_ANSWER);  // the sign changes at the pole, no value is 0
}

TEST_CASE("refused stretches are skipped", "[solve]")
{
    CHECK(solve_for(f<with_a_hole_record>, "x", 1).value == Approx(1).epsilon(1e-15));
    CHECK(solve_for(f<with_a_hole_record>, "x", 3.99).value ==
          Approx(std::sqrt(3.99)).epsilon(1e-15));  // beside the border
    CHECK(solve_for(f<with_a_hole_record>, "x", 16.01).value == Approx(std::sqrt(16.01)).epsilon(1e-15));
    const Found none = solve_for(f<with_a_hole_record>, "x", 9);
    CHECK(none.status == CUTWATER_NO_ANSWER);
    const Found nowhere = solve_for(f<with_a_hole_record>, "x", 9, {}, 2.5, 3.5);
    CHECK(nowhere.status == CUTWATER_NO_ANSWER);
    CHECK_THAT(nowhere.message, Contains("nothing is known between 2 and 4"));
}

TEST_CASE("whole numbers stay whole", "[solve]")
{
    CHECK(solve_for(f<of_count_record>, "number", 21, {number(3)}).value == 7);
    CHECK(solve_for(f<of_count_record>, "number", 3, {number(3)}).value == 1);
    const Found between_two = solve_for(f<of_count_record>, "number", 22, {number(3)});
    CHECK(between_two.status == CUTWATER_NO_ANSWER);
    CHECK_THAT(between_two.message, Contains("no whole number") && Contains("from 7 to 8") && Contains("21 to 24"));
    CHECK(solve_for(f<of_count_record>, "each", 21, {{}, number(7)}).value == Approx(3).epsilon(1e-15));
}

TEST_CASE("questions that cannot be asked are refused", "[solve]")
{
    CHECK_THAT(solve_for(f<parabola_record>, "z", 1).message, Contains("no input \"z\"") && Contains("it has x"));
    CHECK(solve_for(f<parabola_record>, "x", NAN).status == CUTWATER_NOT_FINITE);
    CHECK(solve_for(f<staircase_record>, "x", 1, {}, 20, 30).status == CUTWATER_OUT_OF_INTERVAL);
    CHECK(solve_for(f<resistance_curve_record>, "flow", 40, {number(10)}).status == CUTWATER_MISSING);
    const Found other = solve_for(f<resistance_curve_record>, "flow", 40, {number(10), number(-1)});
    CHECK(other.status == CUTWATER_OUT_OF_INTERVAL);
    CHECK_THAT(other.message, Contains("k is -1"));
}

TEST_CASE("search points keep to the interval", "[solve]")
{
    for (const Interval i : {any, above(0), from(-273.15), up_to(10), between(0, 1), inside(0, 1), inside(-5, 7),
                             between(3, 3), between(1, 1e9)})
        for (const bool whole : {false, true})
            for (const double x : search_points(i, whole)) CHECK((i.contains(x) && (!whole || x == std::floor(x))));
    CHECK(search_points(between(3, 3), false).size() == 1);
}

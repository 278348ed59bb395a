// What solving says of a question that has no value to look at, of one value, or of an input that is at fault
// elsewhere.
#include <cutwater/answers.h>

#include "answers/records.hpp"
#include "answers/solve.hpp"
#include "catalogue/refusal.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <string>
#include <vector>

using namespace cutwater;
using namespace cutwater::test;
using Catch::Matchers::Contains;

namespace cutwater::test {

inline Ratio log_odds(Ratio x) { return Ratio(std::log(x.value() / (1 - x.value()))); }
inline constexpr Record<&log_odds> log_odds_record{.name = "log_odds",
                                                   .meaning = "a test",
                                                   .inputs = {plain("x", inside(0, 1))},
                                                   .results = {answer()},
                                                   .equation = "y = ln(x/(1 - x))",
                                                   .source = "none",
                                                   .example = {}};

}  // namespace cutwater::test

namespace {

struct Found {
    cutwater_status status;
    double value = NAN;
    cutwater_refusal refusal{};
};

/// Asked with a refusal to fill, and once more without: the status must be the same.
Found solve_for(const FunctionInfo& f, const char* unknown, double target, std::vector<cutwater_value> values = {},
                double low = NAN, double high = NAN)
{
    Found found{};
    const cutwater_value wanted = number(target);
    const auto ask = [&](cutwater_refusal* refusal) {
        SolveQuestion q;
        const auto status = ask_solve(f, values, unknown, nullptr, &wanted, low, high, q, refusal);
        return status == CUTWATER_OK ? one_solution(q, solve(q), found.value, refusal) : status;
    };
    clear(&found.refusal);
    found.status = ask(&found.refusal);
    CHECK(ask(nullptr) == found.status);
    return found;
}

template <const auto& R>
constexpr const FunctionInfo& f = binding::info<R>;

cutwater_value points(const std::vector<double>& x) { return {CUTWATER_SERIES, 0, nullptr, x.data(), x.size(), 1}; }

}  // namespace

TEST_CASE("ends that are open are not looked at, and are come near to", "[solve]")
{
    for (const double y : {-30.0, -3.0, 0.0, 3.0, 15.0})  // x = 1/(1 + e^-y)
        CHECK(solve_for(f<log_odds_record>, "x", y).value == Approx(1 / (1 + std::exp(-y))).epsilon(1e-12));
    CHECK(solve_for(f<log_odds_record>, "x", 0, {}, 1, 1).status == CUTWATER_OUT_OF_INTERVAL);
    CHECK(solve_for(f<logarithm_record>, "x", 0, {}, 0, 0).status == CUTWATER_OUT_OF_INTERVAL);
    CHECK(solve_for(f<staircase_record>, "x", 1, {}, 6, 5).status == CUTWATER_OUT_OF_INTERVAL);
}

TEST_CASE("an interval of one value, and one of none", "[solve]")
{
    CHECK(solve_for(f<staircase_record>, "x", 5, {}, 5, 5).value == 5);
    const Found other = solve_for(f<staircase_record>, "x", 6, {}, 5, 5);
    CHECK(other.status == CUTWATER_NO_ANSWER);
    CHECK_THAT(other.refusal.message, Contains("all give 5"));
    const Found none = solve_for(f<of_count_record>, "number", 4, {number(3)}, 1.2, 1.8);
    CHECK(none.status == CUTWATER_NO_ANSWER);
    CHECK_THAT(none.refusal.message, Contains("no value to look at"));
}

TEST_CASE("what makes every value be refused is told", "[solve]")
{
    const Found not_finite = solve_for(f<resistance_curve_record>, "flow", 40, {number(NAN), number(1)});
    CHECK(not_finite.status == CUTWATER_NOT_FINITE);
    CHECK(std::string(not_finite.refusal.name) == "head");
    const Found overflow = solve_for(f<resistance_curve_record>, "flow", 40, {number(10), number(1e300)}, 1e10, 1e20);
    CHECK(overflow.status == CUTWATER_NO_ANSWER);
    CHECK_THAT(overflow.refusal.message, Contains("can be computed; for one of them") && Contains("finite number"));

    cutwater_refusal r;
    double found = 0;
    const auto flow_for = [&](const std::vector<double>& flows, const std::vector<double>& heads, const char* unknown) {
        const cutwater_value values[] = {points(flows), points(heads)}, target = number(36);
        return cutwater_solve_for("curve_head", values, 2, unknown, nullptr, &target, NAN, NAN, &found, &r);
    };
    CHECK(flow_for({0, 50, 100}, {40, 36, 24}, "flow") == CUTWATER_OK);
    CHECK(flow_for({0, 100, 50}, {40, 36, 24}, "flow") == CUTWATER_BAD_SERIES);
    CHECK(r.argument == 0);
    CHECK(flow_for({0, 50, 100}, {40, 36}, "flow") == CUTWATER_NO_ANSWER);
    CHECK_THAT(r.message, Contains("none of the values looked at") && Contains("for one of them"));
    CHECK(flow_for({0, 50, 100}, {40, 36, 24}, "heads") == CUTWATER_WRONG_KIND);
    CHECK_THAT(r.message, Contains("single number"));
    CHECK(r.argument == 1);
}

TEST_CASE("many answers are named up to eight, the rest counted", "[solve]")
{
    const Found ten = solve_for(f<wave_record>, "x", 0.5);  // pi/6 and 5 pi/6 of each of the five turns up to 30
    CHECK(ten.status == CUTWATER_SEVERAL_ANSWERS);
    CHECK_THAT(ten.refusal.message, Contains("0.5235987") && Contains("2.617993") && Contains("and 2 more"));
    const Found zeros = solve_for(f<wave_record>, "x", 0, {}, 0.5, 7);
    CHECK_THAT(zeros.refusal.message, Contains("3.1415927 and 6.2831853"));
}

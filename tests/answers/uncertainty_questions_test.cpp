// How uncertainties are given (texts, words, points, correlations, the relation's own), and what is said of the answer;
// numbers against closed forms, or against the same question asked in another way.
#include <cutwater/answers.h>
#include <cutwater/library.h>

#include "answers/records.hpp"
#include "answers/uncertainty.hpp"
#include "catalogue/refusal.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <string>
#include <vector>

using namespace cutwater;
using cutwater::test::number;
using cutwater::test::text;
using Catch::Matchers::Contains;

namespace {

struct Answer {
    cutwater_status status;
    cutwater_uncertainty_report report{};
    std::vector<double> slopes;
    cutwater_refusal refusal{};
};

struct Wish {
    std::vector<cutwater_correlation> correlations{};
    std::vector<std::int32_t> spreads{};
    std::int32_t monte_carlo = CUTWATER_NEVER;
    std::size_t trials = 100000;
    const char* result = nullptr;
};

cutwater_uncertainty_options options_of(const Wish& wish)
{
    cutwater_uncertainty_options o{};
    o.size = sizeof o;
    o.correlations = wish.correlations.data();
    o.correlation_count = wish.correlations.size();
    o.spreads = wish.spreads.empty() ? nullptr : wish.spreads.data();
    o.monte_carlo = wish.monte_carlo;
    o.trials = wish.trials;
    o.result = wish.result;
    return o;
}

Answer ask(const char* function, const std::vector<cutwater_value>& values,
           const std::vector<cutwater_value>& standards, const Wish& wish = {})
{
    Answer a{};
    a.slopes.resize(values.size());
    a.report.size = sizeof a.report;
    a.report.slopes = a.slopes.data();
    const cutwater_uncertainty_options o = options_of(wish);
    a.status = cutwater_uncertainty(function, values.data(), values.size(), standards.data(), standards.size(), &o,
                                    &a.report, &a.refusal);
    return a;
}

template <const auto& R>
Answer of(const std::vector<double>& x, const std::vector<double>& u, const Wish& wish = {})
{
    Answer a{};
    std::vector<cutwater_value> values, standards;
    for (const double v : x) values.push_back(number(v));
    for (const double v : u) standards.push_back(number(v));
    clear(&a.refusal);
    a.status = uncertainty(binding::info<R>, values, standards, options_of(wish), a.report, &a.refusal);
    return a;
}

cutwater_value points(const std::vector<double>& x) { return {CUTWATER_SERIES, 0, nullptr, x.data(), x.size(), 1}; }

}  // namespace

TEST_CASE("an uncertainty may carry any unit of its input, whose offset cancels", "[uncertainty]")
{
    const auto standard = [](const cutwater_value& u) {
        const Answer a = ask("water_vapour_pressure", {number(60)}, {u});
        INFO(a.refusal.message);
        CHECK(a.status == CUTWATER_OK);
        return a.report.standard;
    };
    const double half = standard(number(0.5));
    for (const char* same : {"0.5", "0.5 degC", "0.5 K", "0.9 degF", "5e-1 degC"}) {
        INFO(same);
        CHECK(standard(text(same)) == Approx(half).epsilon(1e-9));
    }
    const std::vector<double> flows{0, 50, 100}, heads{40, 36, 24};
    const auto read = [&](const cutwater_value& u) {
        return ask("curve_value", {points(flows), points(heads), number(50)}, {{}, u}).report.standard;
    };
    CHECK(read(text("0.5")) == Approx(read(number(0.5))).epsilon(1e-12));  // one text for every point
    const std::vector<double> only_others{3, 0, 3};  // the second point is exact, and it alone is read
    CHECK(read(points(only_others)) == Approx(0).margin(1e-9));
}

TEST_CASE("an uncertainty that cannot be read is refused with the input's name", "[uncertainty]")
{
    const auto refused = [](const cutwater_value& u, cutwater_status status) {
        const Answer a = ask("water_vapour_pressure", {number(60)}, {u});
        CHECK(a.status == status);
        CHECK(a.refusal.argument == 0);
        CHECK(std::isnan(a.report.standard));
        CHECK_THAT(a.refusal.message, Contains("temperature_degC"));
    };
    refused(text("a little"), CUTWATER_BAD_TEXT);
    refused(text("1 kg"), CUTWATER_WRONG_QUANTITY);
    refused(text("-0.5 K"), CUTWATER_OUT_OF_INTERVAL);
    refused(text(nullptr), CUTWATER_MISSING);
    const Answer word = ask("nominal_pipe_bore", {number(100)}, {{}, number(1)});
    CHECK(word.status == CUTWATER_WRONG_KIND);
    CHECK(word.refusal.argument == 1);
    CHECK_THAT(word.refusal.message, Contains("of a word has no meaning"));
    const std::vector<double> flows{0, 50, 100}, heads{40, 36, 24};
    const auto of_heads = [&](const cutwater_value& given, const cutwater_value& u) {
        return ask("curve_value", {points(flows), given, number(50)}, {{}, u}).status;
    };
    CHECK(of_heads(points(heads), {CUTWATER_SERIES, 0, nullptr, nullptr, 3, 1}) == CUTWATER_BAD_SERIES);
    CHECK(of_heads({CUTWATER_SERIES, 0, nullptr, nullptr, 3, 1}, number(1)) == CUTWATER_MISSING);
    const std::vector<double> with_nan{1, NAN, 1};
    CHECK(of_heads(points(heads), points(with_nan)) == CUTWATER_OUT_OF_INTERVAL);
    const Answer result = ask("water_vapour_pressure", {number(60)}, {number(1)}, {.result = "no_such"});
    CHECK(result.status == CUTWATER_WRONG_KIND);
}

TEST_CASE("a correlation must be of two inputs that have an uncertainty", "[uncertainty]")
{
    const auto asked = [](const cutwater_correlation& c) {
        return of<test::additive_record>({1, 2, 3, 4}, {1, 1, 0, 0}, {.correlations = {c}});
    };
    CHECK(asked({0, 1, 0.5}).status == CUTWATER_OK);
    for (const cutwater_correlation& c : {cutwater_correlation{-1, 1, 0.5}, {0, 9, 0.5}, {0, 0, 1}, {2, 0, 0.5}}) {
        CHECK(asked(c).status == CUTWATER_WRONG_KIND);
        CHECK_THAT(asked(c).refusal.message, Contains("two different inputs"));
    }
    for (const double r : {-1.5, 1.0000001, static_cast<double>(NAN)})
        CHECK(asked({0, 1, r}).status == CUTWATER_OUT_OF_INTERVAL);
    // three of which two pairs move as one and the third pair does not
    const auto three = [](double last) {
        return of<test::additive_record>({1, 2, 3, 4}, {1, 1, 1, 0},
                                         {.correlations = {{0, 1, 1}, {0, 2, 1}, {1, 2, last}}});
    };
    CHECK(three(1).report.standard == Approx(3).epsilon(1e-9));
    CHECK(three(0.5).status == CUTWATER_CONTRADICTION);
}

TEST_CASE("correlated numbers beside a curve's uncertain points", "[uncertainty]")
{
    // JCGM 100:2008, 5.2.2: the points' part and that of the two numbers add as variances, twice r times both beside it
    const std::vector<double> flows{0, 50, 100}, heads{40, 36, 24};
    const std::vector<cutwater_value> values{points(flows), points(heads), number(10), number(0.002)};
    const Answer points_only = ask("duty_flow", values, {{}, number(0.4)});
    const Answer numbers = ask("duty_flow", values, {{}, {}, number(0.5), number(1e-4)});
    REQUIRE(points_only.status == CUTWATER_OK);
    REQUIRE(numbers.status == CUTWATER_OK);
    const double a = numbers.slopes[2] * 0.5, b = numbers.slopes[3] * 1e-4, of_points = points_only.report.standard;
    CHECK(numbers.report.standard == Approx(std::hypot(a, b)).epsilon(1e-9));
    for (const std::int32_t way : {CUTWATER_NEVER, CUTWATER_ALWAYS}) {
        const Answer all = ask("duty_flow", values, {{}, number(0.4), number(0.5), number(1e-4)},
                               {.correlations = {{2, 3, 0.7}}, .monte_carlo = way, .trials = 20000});
        REQUIRE(all.status == CUTWATER_OK);
        const double expected = std::sqrt(of_points * of_points + a * a + b * b + 2 * 0.7 * a * b);
        CHECK(all.report.standard == Approx(expected).epsilon(1e-9));
        if (way == CUTWATER_ALWAYS) CHECK(all.report.deviation == Approx(expected).epsilon(0.03));
    }
}

TEST_CASE("thousands of uncertain points", "[uncertainty]")
{
    // the mean of n points with the same uncertainty u, each as likely: here the one that is read
    std::vector<double> flows(3000), heads(3000);
    for (std::size_t i = 0; i < flows.size(); ++i) {
        flows[i] = static_cast<double>(i);
        heads[i] = 100 - 0.01 * static_cast<double>(i);
    }
    const Answer a = ask("curve_value", {points(flows), points(heads), number(1500)}, {{}, number(0.001)},
                         {.monte_carlo = CUTWATER_ALWAYS, .trials = 2000});
    REQUIRE(a.status == CUTWATER_OK);
    CHECK(a.report.standard == Approx(0.001).epsilon(1e-6));
    CHECK(a.report.deviation == Approx(0.001).epsilon(0.06));  // 4 of its own standard deviations, 1/sqrt(2 n)
    CHECK(a.report.trials == 2000);
}

TEST_CASE("the uncertainty of the relation itself in the caller's words", "[uncertainty]")
{
    const std::vector<cutwater_value> housing{number(90), number(0.25), number(12), number(30)};  // 60 degC
    const auto standard = [&](const cutwater_value& own) {
        return ask("bearing_housing_temperature", housing, {{}, {}, {}, {}, own});
    };
    CHECK(standard(number(4)).report.standard == Approx(4).epsilon(1e-12));
    CHECK(standard(text("4")).report.standard == Approx(4).epsilon(1e-12));
    CHECK(standard(text("7.2 degF")).report.standard == Approx(4).epsilon(1e-9));
    CHECK(standard(text("5 %")).report.standard == Approx(0.05 * 60).epsilon(1e-9));
    CHECK(standard({}).report.standard == Approx(15 / 1.959963984540054).epsilon(1e-9));  // as the record states
    const auto refused = [&](const cutwater_value& own, cutwater_status status, const char* why) {
        const Answer a = standard(own);
        CHECK(a.status == status);
        CHECK_THAT(a.refusal.message, Contains("of the relation itself") && Contains(why));
    };
    refused(text("some %"), CUTWATER_BAD_TEXT, "cannot be read");
    refused(text("4 kg"), CUTWATER_BAD_TEXT, "in the result's unit");
    refused(text(nullptr), CUTWATER_BAD_TEXT, "in the result's unit");
    refused(number(-1), CUTWATER_OUT_OF_INTERVAL, "from 0 up");
    refused(number(NAN), CUTWATER_OUT_OF_INTERVAL, "from 0 up");
    refused(points({}), CUTWATER_WRONG_KIND, "one number");
    // alone it is normal, and the trials find no more than that
    const Answer trials = ask("bearing_housing_temperature", housing, {}, {.monte_carlo = CUTWATER_ALWAYS});
    CHECK(trials.report.trusted);
    CHECK(trials.report.trial_high - 60 == Approx(15).epsilon(0.02));
}

TEST_CASE("why the first order is doubted", "[uncertainty]")
{
    // y = x^2 at x = 1 with a standard uncertainty u: first order 2 u, the mean's shift u^2, which is u/2 of it; the
    // skewness moves an end by (z^2 - 1)/6 times 3 gHg/(2 u)^3 = 1.42 u of it, z = 1.96
    const auto square = [](double u) { return of<test::microwave_record>({1, 0}, {u, 0}).report; };
    CHECK(square(0.2).standard == Approx(0.4).epsilon(1e-6));
    CHECK_THAT(square(0.2).remark, Contains("moves the result by 10 % of its standard uncertainty"));
    CHECK_THAT(square(0.08).remark, Contains("skewed") && Contains("by 15 %"));  // 0.04 + 1.42 * 0.08
    CHECK_FALSE(square(0.08).trusted);
    CHECK(square(0.01).trusted);
    CHECK_THAT(of<test::shelf_record>({5}, {0.1}).report.remark, Contains("corner or a leap where the inputs lie"));
    CHECK_THAT(of<test::square_root_record>({1}, {0.6}).report.remark, Contains("refused by the function"));
    // 0.82 of the variance triangular: flatter than normal at the top (by 0.6 times 0.82 squared), hardly at the ends
    const Answer flat = of<test::additive_record>(
        {0, 0, 0, 0}, {std::sqrt(0.82), std::sqrt(0.18), 0, 0},
        {.spreads = {CUTWATER_TRIANGULAR, 0, 0, 0}, .monte_carlo = CUTWATER_ALWAYS, .trials = 400000});
    CHECK(flat.report.standard == Approx(1).epsilon(1e-9));
    CHECK(flat.report.trusted);
    CHECK_THAT(flat.report.remark, Contains("agree") && Contains(", although the inputs that matter are not spread"));
    const Answer far_off = of<test::microwave_record>({1, 0}, {0.2, 0}, {.monte_carlo = CUTWATER_ALWAYS});
    CHECK_THAT(far_off.report.remark, Contains("its interval lie up to") && Contains("; the next term moves"));
}

// Against the worked examples of JCGM 100:2008 and JCGM 101:2008 (numbers from memory of the guides, checked by the
// closed forms given beside them), and against closed forms.
#include "answers/philox.hpp"
#include "answers/records.hpp"
#include "answers/uncertainty.hpp"
#include "catalogue/refusal.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace cutwater;
using namespace cutwater::test;
using Catch::Matchers::Contains;

namespace {

struct Asked {
    cutwater_status status;
    cutwater_uncertainty_report report{};
    std::vector<double> shares, slopes;
    std::string message;
};

struct Extra {
    std::vector<int32_t> spreads{};
    std::vector<cutwater_correlation> correlations{};
    int32_t monte_carlo = CUTWATER_NEVER;
    size_t trials = 0;
    uint64_t seed = 0;
    const char* result = nullptr;
};

Asked ask(const FunctionInfo& f, const std::vector<double>& x, const std::vector<double>& u, const Extra& extra = {})
{
    Asked made{};
    std::vector<cutwater_value> values, standards;
    for (const double v : x) values.push_back(number(v));
    for (const double v : u) standards.push_back(number(v));
    made.shares.resize(x.size());
    made.slopes.resize(x.size());
    made.report.shares = made.shares.data();
    made.report.slopes = made.slopes.data();
    cutwater_uncertainty_options o{};
    o.result = extra.result;
    o.spreads = extra.spreads.empty() ? nullptr : extra.spreads.data();
    o.correlations = extra.correlations.data();
    o.correlation_count = extra.correlations.size();
    o.monte_carlo = extra.monte_carlo;
    o.trials = extra.trials;
    o.seed = extra.seed;
    cutwater_refusal refusal;
    clear(&refusal);
    made.status = uncertainty(f, values, standards, o, made.report, &refusal);
    made.message = refusal.message;
    return made;
}

template <const auto& R>
constexpr const FunctionInfo& f = binding::info<R>;

constexpr int32_t R = CUTWATER_RECTANGULAR, N = CUTWATER_NORMAL;

}  // namespace

TEST_CASE("JCGM 100 H.1: end gauge", "[uncertainty]")
{
    const Asked a = ask(f<gauge_block_record>, {50.000623, 215e-6, 11.5e-6, -0.1, 0, 0},
                        {25e-6, 9.7e-6, 1.2e-6, 0.41, 0.58e-6, 0.029});
    REQUIRE(a.status == CUTWATER_OK);
    CHECK(a.report.value == Approx(50.000838).epsilon(1e-9));
    CHECK(a.report.standard == Approx(31.71e-6).epsilon(2e-3));  // 32 nm in the guide
    CHECK(a.slopes[5] == Approx(-50.000623 * 11.5e-6).epsilon(1e-6));
    CHECK(a.report.standard * (1 + a.report.second_order) ==
          Approx(33.9e-6).epsilon(3e-3));  // 34 nm with second order, H.1.7
    CHECK_FALSE(a.report.trusted);
    CHECK_THAT(a.report.remark, Contains("next term changes the standard uncertainty by 6.9 %"));
}

TEST_CASE("JCGM 100 H.2: correlated voltage, current and phase", "[uncertainty]")
{
    Extra e;
    e.correlations = {{0, 1, -0.36}, {0, 2, 0.86}, {1, 2, -0.65}};
    const std::vector<double> x{4.9990, 19.6610e-3, 1.04446}, u{0.0032, 0.0095e-3, 0.00075};
    const auto result = [&](const char* name) {
        e.result = name;
        return ask(f<impedance_record>, x, u, e).report;
    };
    // python3-uncertainties 3.1.6 for the same rounded correlations; the guide, from unrounded ones: 0.071, 0.295,
    // 0.236
    CHECK(result("r").value == Approx(127.732169928).epsilon(1e-11));
    CHECK(result("r").standard == Approx(0.06997872798837179).epsilon(1e-7));
    CHECK(result("x").value == Approx(219.846511913).epsilon(1e-11));
    CHECK(result("x").standard == Approx(0.29571682684612355).epsilon(1e-7));
    CHECK(result("z").value == Approx(254.259701948).epsilon(1e-11));
    CHECK(result("z").standard == Approx(0.23660297183529752).epsilon(1e-7));
    e.monte_carlo = CUTWATER_ALWAYS;
    const auto trials = result("x");
    CHECK(trials.deviation == Approx(trials.standard).epsilon(0.01));
    CHECK(trials.trusted);
    e.correlations = {{0, 1, 0.9}, {0, 2, 0.9}, {1, 2, -0.9}};
    CHECK(ask(f<impedance_record>, x, u, e).status == CUTWATER_CONTRADICTION);
}

TEST_CASE("JCGM 101 9.2: sums", "[uncertainty]")
{
    Extra e{.monte_carlo = CUTWATER_ALWAYS, .trials = 1000000, .seed = 1};
    const Asked normal = ask(f<additive_record>, {0, 0, 0, 0}, {1, 1, 1, 1}, e);
    CHECK(normal.report.standard == Approx(2).epsilon(1e-9));
    CHECK(normal.report.low == Approx(-3.92).margin(0.005));
    CHECK(normal.report.deviation == Approx(2).margin(0.005));
    CHECK(normal.report.trial_low == Approx(-3.92).margin(0.02));
    CHECK(normal.report.trial_high == Approx(3.92).margin(0.02));
    CHECK(normal.report.trusted);
    for (const double share : normal.shares) CHECK(share == Approx(0.25));
    e.spreads = {R, R, R, R};
    const Asked flat = ask(f<additive_record>, {0, 0, 0, 0}, {1, 1, 1, 1}, e);
    CHECK(flat.report.trial_low == Approx(-3.88).margin(0.015));  // Table 3
    CHECK(flat.report.trial_high == Approx(3.88).margin(0.015));
    CHECK(flat.report.trusted);
    const Asked one_large = ask(f<additive_record>, {0, 0, 0, 0}, {1, 1, 1, 10}, e);
    CHECK(one_large.report.deviation == Approx(std::sqrt(103.0)).margin(0.02));
    CHECK(one_large.report.low == Approx(-19.9).margin(0.05));  // Table 4: the first order's interval is too wide
    CHECK(one_large.report.trial_low == Approx(-17.0).margin(0.05));
    CHECK(one_large.report.trial_high == Approx(17.0).margin(0.05));
    CHECK_FALSE(one_large.report.trusted);
    CHECK_THAT(one_large.report.remark, Contains("not spread normally"));
}

TEST_CASE("JCGM 101 9.3: mass calibration", "[uncertainty]")
{
    const double s3 = std::sqrt(3.0);
    const Extra e{.spreads = {N, N, R, R, R}, .monte_carlo = CUTWATER_WHEN_NEEDED, .trials = 1000000, .seed = 7};
    const Asked a = ask(f<mass_calibration_record>, {100000, 1.234, 1.2, 8000, 8000},
                        {0.050, 0.020, 0.1 / s3, 1000 / s3, 50 / s3}, e);
    CHECK(a.report.value == Approx(1.2340).margin(5e-5));
    CHECK(a.report.standard == Approx(std::hypot(0.050, 0.020)).epsilon(1e-5));             // 0.0539
    CHECK(a.report.standard * (1 + a.report.second_order) == Approx(0.0750).margin(3e-4));  // second order, Table 6
    CHECK(a.report.trials == 1000000);                                                      // run of its own accord
    CHECK_FALSE(a.report.trusted);
    CHECK(a.report.mean == Approx(1.2341).margin(5e-4));
    CHECK(a.report.deviation == Approx(0.0754).margin(5e-4));
    CHECK(a.report.trial_low == Approx(1.0834).margin(2e-3));
    CHECK(a.report.trial_high == Approx(1.3825).margin(2e-3));
}

TEST_CASE("JCGM 101 9.4: comparison loss in microwave power meter calibration", "[uncertainty]")
{
    const auto at = [](double x, double r) {
        Extra e{.monte_carlo = CUTWATER_ALWAYS, .trials = 1000000, .seed = 3};
        if (r != 0) e.correlations = {{0, 1, r}};
        return ask(f<microwave_record>, {x, 0}, {0.005, 0.005}, e).report;
    };
    // mean x^2 + 2 u^2; variance 4 u^2 x^2 + 4 u^4 (1 + r^2)
    CHECK(at(0, 0).standard == Approx(0).margin(1e-12));
    CHECK(at(0, 0).mean == Approx(50e-6).epsilon(0.005));
    CHECK(at(0, 0).deviation == Approx(50e-6).epsilon(0.01));
    CHECK_FALSE(at(0, 0).trusted);
    CHECK(at(0.010, 0).standard == Approx(100e-6).epsilon(1e-6));
    CHECK(at(0.010, 0).mean == Approx(150e-6).epsilon(0.005));
    CHECK(at(0.010, 0).deviation == Approx(112e-6).epsilon(0.01));
    CHECK(at(0.010, 0.9).deviation == Approx(std::sqrt(1e-8 + 4 * 6.25e-10 * 1.81)).epsilon(0.01));  // 121e-6
    CHECK(at(0.050, 0).deviation == Approx(502e-6).epsilon(0.005));
    // u^2 times a noncentral chi-square variable of two degrees: quantiles by scipy 1.10 (the guide gives the shortest
    // interval)
    CHECK(at(0.050, 0).trial_low == Approx(1638.48e-6).epsilon(0.003));
    CHECK(at(0.050, 0).trial_high == Approx(3603.36e-6).epsilon(0.003));
    CHECK(at(0.010, 0).trial_low == Approx(8.5468e-6).epsilon(0.03));
    CHECK(at(0.010, 0).trial_high == Approx(427.123e-6).epsilon(0.01));
    CHECK(at(0, 0).trial_high == Approx(184.444e-6).epsilon(0.01));
    CHECK(at(0.050, 0).low == Approx(1520e-6).epsilon(0.001));
    CHECK(at(0.050, 0.9).deviation == Approx(505e-6).epsilon(0.005));
}

TEST_CASE("full correlation adds or cancels", "[uncertainty]")
{
    Extra e{.correlations = {{0, 1, 1.0}}, .monte_carlo = CUTWATER_ALWAYS};
    const Asked adds = ask(f<additive_record>, {1, 2, 3, 4}, {1, 2, 0, 0}, e);
    CHECK(adds.report.standard == Approx(3));
    CHECK(adds.report.deviation == Approx(3).epsilon(0.01));
    CHECK(adds.shares[0] + adds.shares[1] == Approx(1));
    CHECK(std::isnan(adds.slopes[2]));  // exact
    e.correlations = {{1, 0, -1.0}};
    const Asked cancels = ask(f<additive_record>, {1, 2, 3, 4}, {2, 2, 0.5, 0}, e);
    CHECK(cancels.report.standard == Approx(0.5));
    CHECK(cancels.report.deviation == Approx(0.5).epsilon(0.01));
    e.spreads = {R, R, N, N};
    CHECK(ask(f<additive_record>, {1, 2, 3, 4}, {2, 2, 0.5, 0}, e).status == CUTWATER_CONTRADICTION);
}

TEST_CASE("correlations that cannot be are refused by either way", "[uncertainty]")
{
    // the determinant of the matrix is 1 - 3 r^2 - 2 r^3: below 0 from r = 0.5 up
    const auto asked = [](double r, int32_t monte_carlo) {
        return ask(f<additive_record>, {1, 2, 3, 4}, {1, 1, 1, 0.1},
                   {.correlations = {{0, 1, r}, {0, 2, r}, {1, 2, -r}}, .monte_carlo = monte_carlo});
    };
    for (const int32_t way : {CUTWATER_NEVER, CUTWATER_ALWAYS}) {
        CHECK(asked(0.49, way).status == CUTWATER_OK);
        CHECK(asked(0.51, way).status == CUTWATER_CONTRADICTION);
        CHECK_THAT(asked(0.51, way).message, Contains("no values can have them all"));
    }
    const Asked twice = ask(f<additive_record>, {1, 2, 3, 4}, {1, 1, 1, 1},
                            {.correlations = {{0, 1, 0.5}, {2, 3, 0.1}, {1, 0, 0.5}}});
    CHECK(twice.status == CUTWATER_CONTRADICTION);
    CHECK_THAT(twice.message, Contains("correlation of b and a is given twice"));
}

TEST_CASE("a step or a corner further off is seen", "[uncertainty]")
{
    // 1.25 times 8.744 rounds up to 11, and so it does from above 8 to 8.8: the step lies an eighth of the uncertainty
    // away
    const Asked step = ask(f<rating_record>, {8.744, 1.25}, {0.437, 0});
    CHECK(step.report.standard == 0);
    CHECK_FALSE(step.report.trusted);
    CHECK_THAT(step.report.remark, Contains("no input moves the result"));
    const Asked tried = ask(f<rating_record>, {8.744, 1.25}, {0.437, 0}, {.monte_carlo = CUTWATER_WHEN_NEEDED});
    CHECK(tried.report.trials == 200000);
    CHECK_FALSE(tried.report.trusted);
    CHECK(tried.report.deviation > 0.3);
    // beside an input that does move the result: one step, at 1.9 standard uncertainties, by a fifth of the standard
    // uncertainty
    const Asked beside = ask(f<stepped_sum_record>, {0, 0}, {1, 1});
    CHECK(beside.report.standard == Approx(1));
    CHECK_FALSE(beside.report.trusted);
    CHECK_THAT(beside.report.remark, Contains("corner or a leap within"));
    // of two inputs together only: neither meets the corner alone
    const Asked together = ask(f<corner_of_sum_record>, {0, 0}, {1, 1});
    CHECK(together.report.standard == Approx(std::sqrt(2.0)));
    CHECK_FALSE(together.report.trusted);
    // further than a rectangular spread reaches nothing matters
    CHECK(ask(f<stepped_sum_record>, {0, 0}, {1, 1}, {.spreads = {R, N}}).report.trusted);
    // where no input moves the result and no trial does, that is told and trusted
    const Asked still = ask(f<rating_record>, {8.4, 1.25}, {0.001, 0}, {.monte_carlo = CUTWATER_WHEN_NEEDED});
    CHECK(still.report.trusted);
    CHECK_THAT(still.report.remark, Contains("No trial moved the result"));
}

TEST_CASE("the same seed gives the same bits, another seed others", "[uncertainty]")
{
    const auto deviation = [](uint64_t seed) {
        return ask(f<microwave_record>, {1, 2}, {0.1, 0.1},
                   {.monte_carlo = CUTWATER_ALWAYS, .trials = 5000, .seed = seed})
            .report.deviation;
    };
    CHECK(deviation(5) == deviation(5));
    CHECK(deviation(5) != deviation(6));
}

TEST_CASE("trials that are refused are counted, and said", "[uncertainty]")
{
    const Asked a = ask(f<square_root_record>, {1}, {0.6}, {.monte_carlo = CUTWATER_WHEN_NEEDED, .trials = 100000});
    REQUIRE(a.status == CUTWATER_OK);
    CHECK(static_cast<double>(a.report.refused) ==
          Approx(0.0478 * 100000).epsilon(0.05));  // below 0: 1/0.6 standard deviations
    CHECK_FALSE(a.report.trusted);
    CHECK_THAT(a.report.remark, Contains("trials were refused"));
    CHECK(ask(f<square_root_record>, {0}, {0.6}).status == CUTWATER_OK);  // one-sided at its end
    CHECK_FALSE(ask(f<square_root_record>, {0}, {0.6}).report.trusted);
    CHECK(ask(f<with_a_hole_record>, {1.99}, {50}, {.monte_carlo = CUTWATER_ALWAYS}).status == CUTWATER_NO_ANSWER);
}

TEST_CASE("questions about uncertainty that cannot be asked are refused", "[uncertainty]")
{
    CHECK(ask(f<additive_record>, {0, 0, 0, 0}, {-1}).status == CUTWATER_OUT_OF_INTERVAL);
    CHECK(ask(f<additive_record>, {0, 0, 0, 0}, {NAN}).status == CUTWATER_OUT_OF_INTERVAL);
    CHECK(ask(f<of_count_record>, {1, 2}, {0.1, 0.1}).status == CUTWATER_WRONG_KIND);
    CHECK(ask(f<additive_record>, {0, 0, 0, 0}, {1, 1}, {.spreads = {9, 0, 0, 0}}).status == CUTWATER_UNKNOWN_WORD);
    CHECK(ask(f<additive_record>, {0, 0, 0, 0}, {1, 1}, {.correlations = {{0, 1, 1.5}}}).status ==
          CUTWATER_OUT_OF_INTERVAL);
    CHECK(ask(f<additive_record>, {0, 0, 0, 0}, {1, 1}, {.correlations = {{0, 2, 0.5}}}).status == CUTWATER_WRONG_KIND);
    CHECK(ask(f<additive_record>, {0, 0, 0, NAN}, {1, 1}).status == CUTWATER_NOT_FINITE);
    CHECK(ask(f<additive_record>, {0, 0, 0, 0}, {}).report.standard == 0);
}

TEST_CASE("Philox4x64-10 gives its published bits", "[uncertainty]")
{
    // Random123's known answers, kat_vectors
    CHECK(Philox::block({0, 0, 0, 0}, {0, 0}) ==
          Philox::Block{0x16554d9eca36314cu, 0xdb20fe9d672d0fdcu, 0xd7e772cee186176bu, 0x7e68b68aec7ba23bu});
    constexpr uint64_t ones = ~uint64_t{0};
    CHECK(Philox::block({ones, ones, ones, ones}, {ones, ones}) ==
          Philox::Block{0x87b092c3013fe90bu, 0x438c3c67be8d0224u, 0x9cc7d7c69cd777b6u, 0xa09caebf594f0ba0u});
}

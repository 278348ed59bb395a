// Uncertainties of other spreads than the normal one, and of a series: against closed forms.
#include <cutwater/answers.h>
#include <cutwater/library.h>

#include "answers/records.hpp"
#include "answers/uncertainty.hpp"
#include "catalogue/refusal.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstring>
#include <vector>

using namespace cutwater;

namespace {

cutwater_value number_value(double x) { return {CUTWATER_NUMBER, x, nullptr, nullptr, 0, 1}; }
cutwater_value series_value(const std::vector<double>& x)
{
    return {CUTWATER_SERIES, 0, nullptr, x.data(), x.size(), 1};
}

const std::vector<double> flows{0, 50, 100}, heads{40, 36, 24};

/// Of the head read at 50 m3/h, which is the second point's whatever is laid through the points.
cutwater_status head_read(const cutwater_value& of_flows, const cutwater_value& of_heads, const cutwater_value& of_flow,
                          cutwater_uncertainty_report& report, cutwater_refusal& refusal)
{
    const cutwater_value values[] = {series_value(flows), series_value(heads), number_value(50)};
    const cutwater_value standards[] = {of_flows, of_heads, of_flow};
    cutwater_uncertainty_options options{};
    options.size = sizeof options;
    options.monte_carlo = CUTWATER_ALWAYS;
    options.trials = 20000;
    report.size = sizeof report;
    return cutwater_uncertainty("curve_value", values, 3, standards, 3, &options, &report, &refusal);
}

}  // namespace

TEST_CASE("triangular and arcsine spreads have the coverage intervals of their closed forms", "[uncertainty]")
{
    // JCGM 101:2008, 6.4.5 and 6.4.6 (from memory of them): half-widths sqrt(6) u and sqrt(2) u; the ends follow from
    // the distribution functions.
    const double triangular = std::sqrt(6.0) * (1 - std::sqrt(0.05));
    const double arcsine = std::sqrt(2.0) * std::sin(std::acos(-1.0) / 2 * 0.95);
    for (const auto& [spread, half] : {std::pair{CUTWATER_TRIANGULAR, triangular}, {CUTWATER_ARCSINE, arcsine}}) {
        const std::vector<cutwater_value> values{number_value(1), number_value(2), number_value(3), number_value(4)};
        const std::vector<cutwater_value> standards{number_value(0.1), {}, {}, {}};
        const std::vector<int32_t> spreads{spread, 0, 0, 0};
        cutwater_uncertainty_options options{};
        options.spreads = spreads.data();
        options.monte_carlo = CUTWATER_ALWAYS;
        options.trials = 200000;
        cutwater_uncertainty_report report{};
        cutwater_refusal refusal;
        clear(&refusal);
        REQUIRE(uncertainty(binding::info<test::additive_record>, values, standards, options, report, &refusal) ==
                CUTWATER_OK);
        INFO(spread);
        CHECK(report.standard == Approx(0.1).epsilon(1e-9));
        CHECK(report.mean == Approx(10).margin(0.001));
        CHECK(report.deviation == Approx(0.1).epsilon(0.01));
        CHECK(report.trial_high - 10 == Approx(0.1 * half).epsilon(0.02));
        CHECK(10 - report.trial_low == Approx(0.1 * half).epsilon(0.02));
    }
}

TEST_CASE("a curve's points have uncertainties of their own, or one for all", "[uncertainty]")
{
    cutwater_refusal refusal;
    cutwater_uncertainty_report report{};
    REQUIRE(head_read({}, number_value(0.5), {}, report, refusal) == CUTWATER_OK);
    CHECK(report.standard == Approx(0.5).epsilon(1e-9));
    CHECK(report.deviation == Approx(report.standard).epsilon(0.03));
    const std::vector<double> each{9, 0.3, 0.4};
    REQUIRE(head_read({}, series_value(each), {}, report, refusal) == CUTWATER_OK);
    CHECK(report.standard == Approx(0.3).epsilon(1e-9));
}

TEST_CASE("an uncertainty that has no meaning is refused by name", "[uncertainty]")
{
    cutwater_refusal refusal;
    cutwater_uncertainty_report report{};
    const std::vector<double> two{1, 1}, negative{1, -1, 1};
    const auto refused = [&](const cutwater_value& of_heads, const cutwater_value& of_flow, cutwater_status status) {
        CHECK(head_read({}, of_heads, of_flow, report, refusal) == status);
        CHECK(refusal.argument == (of_flow.kind == CUTWATER_LEFT_OUT ? 1 : 2));
        CHECK(std::isnan(report.standard));
        CHECK(std::strlen(refusal.message) > 20);
    };
    refused(series_value(two), {}, CUTWATER_BAD_SERIES);
    refused(series_value(negative), {}, CUTWATER_OUT_OF_INTERVAL);
    refused(number_value(-1), {}, CUTWATER_OUT_OF_INTERVAL);
    refused({}, series_value(two), CUTWATER_WRONG_KIND);
    refused({}, number_value(NAN), CUTWATER_OUT_OF_INTERVAL);
}

// What a relation's own scatter adds to the uncertainty, against the closed form for a product: with e independent of
// y, Var(y (1 + e)) = Var(y) (1 + Var(e)) + y^2 Var(e); the normal 95 % point 1.959964 is any table's.
#include <cutwater/answers.h>
#include <cutwater/library.h>

#include "answers/records.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstddef>
#include <string>
#include <vector>

using cutwater::test::number;
using Catch::Matchers::Contains;

namespace {

constexpr double normal_95 = 1.959963984540054;

struct Asked {
    cutwater_status status;
    cutwater_uncertainty_report report{};
    std::vector<double> shares;
    std::string message;
};

Asked ask(const char* function, const std::vector<double>& x, std::vector<cutwater_value> u,
          std::int32_t monte_carlo = CUTWATER_NEVER, std::size_t size = sizeof(cutwater_uncertainty_report))
{
    Asked made{};
    std::vector<cutwater_value> values;
    for (const double v : x) values.push_back(number(v));
    made.shares.resize(x.size());
    made.report.size = size;
    made.report.shares = made.shares.data();
    cutwater_uncertainty_options options{};
    options.size = sizeof options;
    options.monte_carlo = monte_carlo;
    options.trials = 400000;
    options.seed = 11;
    cutwater_refusal refusal{};
    made.status = cutwater_uncertainty(function, values.data(), values.size(), u.data(), u.size(), &options,
                                       &made.report, &refusal);
    made.message = refusal.message;
    return made;
}

cutwater_value text(const char* t)
{
    cutwater_value v{};
    v.kind = CUTWATER_TEXT;
    v.text = t;
    return v;
}

const std::vector<double> shroud = {3.6775, 1000, 2900, 200, 60, 0.5};
const std::vector<double> housing = {90, 0.25, 12, 30};
const cutwater_value exact = number(0);
constexpr double rim = 100000 * 0.028588493147667117;  // pi/4 (0.2^2 - 0.06^2) m2 a bar

}  // namespace

TEST_CASE("a stated scatter is the 95 % interval of a call with exact inputs", "[answers]")
{
    const Asked force = ask("shroud_force", shroud, {});
    REQUIRE(force.status == CUTWATER_OK);
    const double value = force.report.value;
    CHECK(force.report.standard == Approx(0.3 * value / normal_95).epsilon(1e-12));
    CHECK(force.report.low == Approx(0.7 * value).epsilon(1e-12));
    CHECK(force.report.high == Approx(1.3 * value).epsilon(1e-12));
    CHECK(force.report.relation == force.report.standard);
    CHECK(force.report.relation_share == 1);
    CHECK(force.report.trusted == 1);
    CHECK_THAT(force.report.remark, Contains("the relation itself scatters"));

    const Asked warm = ask("bearing_housing_temperature", housing, {});
    CHECK(warm.report.value == Approx(60));
    CHECK(warm.report.low == Approx(45).epsilon(1e-12));
    CHECK(warm.report.high == Approx(75).epsilon(1e-12));
}

TEST_CASE("it joins the inputs by the sum of squares, and all shares make 1", "[answers]")
{
    const Asked with = ask("shroud_force", shroud, {number(0.2)});
    const double by_rim = 0.2 * rim, own = 0.3 * with.report.value / normal_95;
    CHECK(with.report.standard == Approx(std::hypot(by_rim, own)).epsilon(1e-9));
    CHECK(with.report.relation == Approx(own).epsilon(1e-12));
    CHECK(with.shares[0] + with.report.relation_share == Approx(1).epsilon(1e-12));
    CHECK(with.shares[0] == Approx(by_rim * by_rim / (by_rim * by_rim + own * own)).epsilon(1e-9));
    const Asked plain = ask("npsh_available", {1.013, 0.0234, 998.2, 2, 0.5}, {number(0.001)});
    CHECK(plain.report.relation == 0);
    CHECK(plain.report.relation_share == 0);
    CHECK(plain.shares[0] == 1);
}

TEST_CASE("trials draw it too", "[answers]")
{
    const Asked tried = ask("shroud_force", shroud, {number(0.2)}, CUTWATER_ALWAYS);
    REQUIRE(tried.status == CUTWATER_OK);
    const double by_rim = 0.2 * rim, part = 0.3 / normal_95, y = tried.report.value;
    const double deviation = std::sqrt(by_rim * by_rim * (1 + part * part) + y * y * part * part);
    CHECK(tried.report.trials == 400000);
    CHECK(tried.report.deviation == Approx(deviation).epsilon(4e-3));
    CHECK(tried.report.mean == Approx(y).epsilon(1e-3));

    const Asked alone = ask("bearing_housing_temperature", housing, {}, CUTWATER_ALWAYS);
    CHECK(alone.report.deviation == Approx(15 / normal_95).epsilon(5e-3));
    CHECK(alone.report.trial_low == Approx(45).margin(0.3));
    CHECK(alone.report.trial_high == Approx(75).margin(0.3));
}

TEST_CASE("one entry more than inputs says otherwise", "[answers]")
{
    const std::vector<cutwater_value> none = {number(0.2), exact, exact, exact, exact, exact, number(0)};
    const Asked off = ask("shroud_force", shroud, none);
    CHECK(off.report.relation == 0);
    CHECK(off.report.standard == Approx(0.2 * rim).epsilon(1e-9));
    CHECK(off.shares[0] == 1);

    auto own = none;
    own.back() = number(100);
    CHECK(ask("shroud_force", shroud, own).report.standard == Approx(std::hypot(0.2 * rim, 100)).epsilon(1e-9));
    own.back() = text("0.1 kN");
    CHECK(ask("shroud_force", shroud, own).report.relation == Approx(100).epsilon(1e-12));
    own.back() = text("4 %");
    const Asked percent = ask("shroud_force", shroud, own);
    CHECK(percent.report.relation == Approx(0.04 * percent.report.value).epsilon(1e-12));
    // A difference of temperatures, and a function that states none.
    CHECK(ask("bearing_housing_temperature", housing, {exact, exact, exact, exact, text("9 degF")}).report.relation ==
          Approx(5).epsilon(1e-9));
    CHECK(ask("pressure_from_head", {100, 998}, {exact, exact, text("2 %")}).report.standard ==
          Approx(0.02 * 100 * 998 * 9.80665e-5).epsilon(1e-12));

    own.back() = number(-1);
    CHECK(ask("shroud_force", shroud, own).status == CUTWATER_OUT_OF_INTERVAL);
    own.back() = text("3 K");
    CHECK(ask("shroud_force", shroud, own).status == CUTWATER_BAD_TEXT);
    own.push_back(number(0));
    CHECK(ask("shroud_force", shroud, own).status == CUTWATER_WRONG_COUNT);
}

TEST_CASE("a caller of an older header gets what it got", "[answers]")
{
    constexpr std::size_t older = offsetof(cutwater_uncertainty_report, relation);
    const Asked old = ask("shroud_force", shroud, {number(0.2)}, CUTWATER_NEVER, older);
    REQUIRE(old.status == CUTWATER_OK);
    CHECK(old.report.standard == Approx(0.2 * rim).epsilon(1e-9));
    CHECK(old.shares[0] == 1);
}

TEST_CASE("records and workings tell their scatter", "[answers]")
{
    cutwater_result_info info{};
    info.size = sizeof info;
    REQUIRE(cutwater_describe_result(cutwater_find("shroud_force"), 0, &info) == CUTWATER_OK);
    CHECK(info.scatter == 0.3);
    CHECK(info.scatter_in_unit == 0);
    REQUIRE(cutwater_describe_result(cutwater_find("bearing_housing_temperature"), 0, &info) == CUTWATER_OK);
    CHECK(info.scatter == 15);
    CHECK(info.scatter_in_unit == 1);
    REQUIRE(cutwater_describe_result(cutwater_find("npsh_available"), 0, &info) == CUTWATER_OK);
    CHECK(info.scatter == 0);

    std::vector<cutwater_value> values;
    for (const double v : housing) values.push_back(number(v));
    char page[8192];
    cutwater_refusal refusal{};
    REQUIRE(cutwater_working("bearing_housing_temperature", values.data(), values.size(), CUTWATER_TEXT_ASCII, page,
                             sizeof page, nullptr, &refusal) == CUTWATER_OK);
    CHECK_THAT(page, Contains("Scatter\n  - temperature: plus or minus 15 K in about 95 of 100 cases, 45 to 75 degC"));
}

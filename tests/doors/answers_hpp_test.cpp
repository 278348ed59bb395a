// The four answers through the C++ header: the same as the C API gives, quantities in their units, refusals thrown.
#include <cutwater/answers.hpp>
#include <cutwater/cutwater.hpp>

#include <catch2/catch.hpp>

#include <algorithm>

#include <cmath>
#include <type_traits>

using namespace cutwater;
using Catch::Matchers::Contains;

namespace {

constexpr double g = 9.80665;

Arguments suction(const Argument& level) { return {1.01325, 0.02339, 998.2, level, 0.5}; }

static_assert(std::is_convertible_v<int, Argument> && std::is_convertible_v<const char*, Argument>);
static_assert(!std::is_convertible_v<bool, Argument> && !std::is_convertible_v<std::nullptr_t, Argument>);
static_assert(
    !std::is_convertible_v<Head, PlainArgument>);  // an uncertainty is a difference, which a quantity need not be

template <class Call>
cutwater_refusal refusal_of(Call&& call)
{
    try {
        call();
    } catch (const Refused& refused) {
        return refused.refusal();
    }
    cutwater_refusal none{};
    return none;
}

}  // namespace

TEST_CASE("working by the header", "[answers.hpp]")
{
    const std::string text = working("npsh_available", suction("2 m"));
    CHECK_THAT(text, Contains("998.2 kg/m3") && Contains("11.612") && Contains("ISO 17769-1"));
    CHECK_THAT(working("npsh_available", suction(2), CUTWATER_TEXT_JSON), Contains("\"npsh_m\""));
    CHECK_THAT(working("npsh_available", {-1.0}), Contains("Refused"));
    CHECK_THAT(working("no_such", {1, 2}), Contains("no function"));
    // longer than the buffer first tried
    std::vector<double> flows, heads;
    for (int i = 0; i < 5000; ++i) flows.push_back(i), heads.push_back(100 - 1e-3 * i);
    const std::string longer = working("curve_head", {flows, heads, 100.5}, CUTWATER_TEXT_JSON);
    CHECK(longer.size() > 20000);
    CHECK(longer.find('\0') == std::string::npos);
    CHECK_THAT(longer, Contains("4999"));
}

TEST_CASE("solved backwards by the header", "[answers.hpp]")
{
    SECTION("static level for a suction margin")
    {
        const double level = solve_for("npsh_available", suction({}), "liquid_level", 4.5);
        CHECK(level == Approx(4.5 - (1.01325 - 0.02339) * 1e5 / (998.2 * g) + 0.5).epsilon(1e-13));
        CHECK(solve_for("npsh_available", suction(0), "liquid_level_m", "4500 mm") == level);
        CHECK(solve_for("npsh_available", suction({}), "liquid_level", 4.5 * units::metre) == level);
    }
    SECTION("speed for a power")
    {
        const double speed = solve_for("power_at_speed", {15 * units::kW, 1480}, "new_speed", 11 * units::kW);
        CHECK(speed == Approx(1480 * std::cbrt(11.0 / 15)).epsilon(1e-13));
    }
    SECTION("temperature at which a margin is gone")
    {
        const double vapour = solve_for("npsh_available", {1.01325, {}, 960, 1, 0.5}, "vapour_pressure", 3.2);
        CHECK(vapour == Approx(1.01325 - (3.2 - 1 + 0.5) * 960 * g / 1e5).epsilon(1e-13));
        const double temperature = solve_for("water_vapour_pressure", {}, "temperature", vapour * units::bara);
        CHECK(units::bara.in(water_vapour_pressure(temperature * units::degC)) == Approx(vapour).epsilon(1e-13));
    }
    SECTION("bore for a friction loss")
    {
        const double bore = solve_for("pipe_friction_head", {90 * units::m3h, {}, 120, 0.046, 1}, "bore", 2.5);
        CHECK(units::metre.in(pipe_friction_head(90 * units::m3h, bore * units::mm, 120 * units::metre,
                                                 0.046 * units::mm, 1 * units::mm2s)) == Approx(2.5).epsilon(1e-12));
    }
    SECTION("none and several")
    {
        const cutwater_refusal none = refusal_of(
            [] { solve_for("npsh_available", suction({}), "liquid_level", 5, {.low = 50, .high = 60}); });
        CHECK(none.status == CUTWATER_NO_ANSWER);
        CHECK_THAT(none.message, Contains("searched: 50 to 60 m"));
        const Arguments humped{std::vector<double>{0, 50, 100}, std::vector<double>{30, 34, 20}};
        CHECK(refusal_of([&] { solve_for("curve_head", humped, "flow", 32); }).status == CUTWATER_SEVERAL_ANSWERS);
        const std::vector<double> both = solutions("curve_head", humped, "flow", 32);
        REQUIRE(both.size() == 2);
        CHECK(both[0] < both[1]);
        CHECK(solve_for("curve_head", humped, "flow", 32, {.low = 50}) == Approx(both[1]).epsilon(1e-14));
        CHECK_THROWS_AS(solutions("curve_head", humped, "flow", 99), Refused);
        CHECK_THROWS_AS(solve_for("npsh_available", suction({}), "no_such", 1), Refused);
        CHECK_THROWS_AS(solve_for("npsh_available", suction({}), "liquid_level", 1, {.result = "no_such"}), Refused);
        CHECK(refusal_of([] { solve_for("no_such", {1 * units::metre}, "x", 1 * units::metre); }).status ==
              CUTWATER_UNKNOWN_FUNCTION);
    }
}

TEST_CASE("quantities in their units", "[answers.hpp]")
{
    // the same bits as a number: 0.1 m3/h is no whole number of m3/s
    CHECK(working("pipe_friction_head", {0.1 * units::m3h, 50, 1, 0, 1}) ==
          working("pipe_friction_head", {0.1, 50, 1, 0, 1}));
    CHECK(solve_for("npsh_available", {14.7 * units::psia, 0, 1000 * units::kgm3, {}, 0 * units::metre}, "liquid_level",
                    10) == Approx(10 - 14.7 * 0.45359237 * g / (0.0254 * 0.0254) / (1000 * g)).epsilon(1e-12));
    const std::vector<Flow> flows{0 * units::m3h, 50 * units::m3h, 100 * units::m3h};
    const std::vector<Head> heads{40 * units::metre, 38 * units::metre, 30 * units::metre};
    CHECK(solve_for("curve_head", {flows, heads}, "flow", 38 * units::metre, {.low = 10}) == Approx(50).epsilon(1e-13));
    // another quantity is turned away, also one of the same unit
    const cutwater_refusal wrong = refusal_of([] { working("npsh_available", suction(2 * units::kgm3)); });
    CHECK(wrong.status == CUTWATER_WRONG_QUANTITY);
    CHECK(wrong.argument == 3);
    CHECK(std::string(wrong.name) == "liquid_level_m");
    CHECK_THAT(wrong.message, Contains("density") && Contains("Length"));
    CHECK(refusal_of([] { working("water_vapour_pressure", {20 * unit<TemperatureDifference>("K")}); }).status ==
          CUTWATER_WRONG_QUANTITY);
    CHECK(refusal_of([] { working("npsh_available", {1.0 * units::barg}); }).status == CUTWATER_WRONG_QUANTITY);
    CHECK(refusal_of([] { solve_for("npsh_available", suction({}), "liquid_level", 1 * units::bara); }).status ==
          CUTWATER_WRONG_QUANTITY);
    // more than the function has: the library says so
    CHECK(refusal_of([] { sensitivity("water_vapour_pressure", {20, 30}); }).status == CUTWATER_WRONG_COUNT);
}

TEST_CASE("uncertainty by the header", "[answers.hpp]")
{
    // P = rho g Q H / eta: relative uncertainties add by squares
    const Arguments power{120, 40, 998, 0.72};
    const UncertaintyAnswer a = uncertainty("pump_power_input", power,
                                            {{"flow", 1.2}, {"head_m", "40 cm"}, {"efficiency", "0.72 %"}});
    CHECK(a.value == Approx(998 * g * 120 / 3600 * 40 / 0.72 / 1000).epsilon(1e-13));
    CHECK(a.standard / a.value == Approx(std::sqrt(3e-4)).epsilon(1e-6));
    REQUIRE(a.shares.size() == 4);
    CHECK(a.shares[0] == Approx(1 / 3.0).epsilon(1e-5));
    CHECK(a.shares[2] == 0);
    CHECK(a.slopes[1] == Approx(a.value / 40).epsilon(1e-7));
    CHECK(std::isnan(a.slopes[2]));
    CHECK(a.trusted);
    CHECK(a.trials == 0);
    CHECK(std::isnan(a.mean));
    CHECK_FALSE(a.remark.empty());

    UncertaintyOptions options;
    options.correlations = {{"flow", "head", -1}};
    CHECK(uncertainty("pump_power_input", power, {{"flow", 1.2}, {"head", 0.4}}, options).standard ==
          Approx(0).margin(1e-7));

    options = {};
    options.monte_carlo = CUTWATER_ALWAYS;
    options.trials = 100000;
    options.seed = 3;
    const std::vector<Standard> flat{{"flow", 1.2, CUTWATER_RECTANGULAR}};
    const UncertaintyAnswer m = uncertainty("pump_power_input", power, flat, options);
    CHECK(m.trials == 100000);
    CHECK(m.deviation == Approx(m.standard).epsilon(0.01));
    CHECK(m.trial_high - m.trial_low ==
          Approx(0.95 * 2 * std::sqrt(3) * m.standard).epsilon(0.01));  // a rectangle's, not a bell's
    CHECK(uncertainty("pump_power_input", power, flat, options).mean == m.mean);

    // A guide to plus or minus 15 K, which the caller can leave out or put in its own words.
    const Arguments housing{90, 0.25, 12, 30};
    const UncertaintyAnswer warm = uncertainty("bearing_housing_temperature", housing, {{"heat", 9}});
    CHECK(warm.relation == Approx(15 / 1.959963984540054));
    CHECK(warm.standard == Approx(std::hypot(3, warm.relation)).epsilon(1e-6));
    CHECK(warm.shares[0] + warm.relation_share == Approx(1));
    options = {};
    options.relation = 0;
    CHECK(uncertainty("bearing_housing_temperature", housing, {{"heat", 9}}, options).standard ==
          Approx(3).epsilon(1e-6));
    options.relation = "4 K";
    CHECK(uncertainty("bearing_housing_temperature", housing, {{"heat", 9}}, options).standard ==
          Approx(5).epsilon(1e-6));

    CHECK(refusal_of([&] { uncertainty("pump_power_input", power, {{"no_such", 1}}); }).status == CUTWATER_WRONG_KIND);
    CHECK(refusal_of([&] { uncertainty("pump_power_input", power, {{"flow", 1}, {"flow_m3h", 1}}); }).status ==
          CUTWATER_CONTRADICTION);
    CHECK(refusal_of([&] { uncertainty("pump_power_input", power, {{"flow", -1}}); }).status ==
          CUTWATER_OUT_OF_INTERVAL);
    CHECK(refusal_of([&] { uncertainty("no_such", power, {{"flow", 1}}); }).status == CUTWATER_UNKNOWN_FUNCTION);
}

TEST_CASE("sensitivity by the header", "[answers.hpp]")
{
    const std::vector<SensitivityRow> rows = sensitivity("power_at_speed", {15, 1480, 1200});
    REQUIRE(rows.size() == 3);
    CHECK(rows[2].input == "power_kW");
    CHECK(rows[2].relative_change == Approx(1).epsilon(1e-7));
    CHECK(std::abs(rows[0].relative_change) == Approx(3).epsilon(1e-6));
    CHECK(rows[2].slope == Approx(std::pow(1200.0 / 1480, 3)).epsilon(1e-7));
    CHECK_FALSE(sensitivity("npsh_available", suction(0)).back().relative);
    CHECK_THROWS_AS(sensitivity("power_at_speed", {-1, 1480, 1200}), Refused);
}

TEST_CASE("words of the trade find functions through the header")
{
    const auto found = cutwater::find_function("is it safe on suction");
    REQUIRE_FALSE(found.empty());
    CHECK(std::find(found.begin(), found.end(), "npsh_margin") != found.end());
    CHECK(cutwater::find_function("xyzzyqq").empty());
}

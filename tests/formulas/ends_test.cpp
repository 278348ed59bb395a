// The ends of what functions take: what one gives, its partner takes back; a number in a wrong unit lies outside.
#include <cutwater/answers.h>
#include <cutwater/cutwater.h>
#include <cutwater/unit_table.hpp>

#include "catalogue/families.hpp"
#include "formulas/limits.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstring>
#include <limits>
#include <string>
#include <vector>

using namespace cutwater;

TEST_CASE("water boils at the temperature whose vapour pressure it is, ends included", "[ends]")
{
    cutwater_refusal r;
    for (const double t : {0.0, std::nextafter(0.0, 1.0), 1e-9, 1e-6, 0.01, 50.0, 99.974, 200.0, 373.9, 373.946,
                           std::nextafter(373.946, 0.0)}) {
        double pressure = 0, boiling = 0, again = 0;
        INFO(t);
        REQUIRE(cutwater_water_vapour_pressure(t, &pressure, &r) == CUTWATER_OK);
        REQUIRE(cutwater_water_boiling_temperature(pressure, &boiling, &r) == CUTWATER_OK);
        CHECK(std::abs(boiling - t) < 1e-9 * (t + 273.15));
        CHECK(cutwater_water_vapour_pressure(boiling, &again, &r) == CUTWATER_OK);
        CHECK(std::abs(again - pressure) <= 1e-9 * pressure);
    }
    double low = 0, high = 0;
    for (const double p : {0.006112126774, 220.64000001}) {  // the interval's own ends
        REQUIRE(cutwater_water_boiling_temperature(p, &low, &r) == CUTWATER_OK);
        CHECK(cutwater_water_vapour_pressure(low, &high, &r) == CUTWATER_OK);
        CHECK(std::abs(high - p) <= 1e-9 * p);
    }
}

TEST_CASE("a fitted curve reaches its own ends through other units", "[ends]")
{
    const double ys[] = {3, 2, 1, 0};
    cutwater_refusal r;
    std::size_t moved = 0;
    for (double end = 10.1; end < 200; end += 1.3) {
        const double xs[] = {0.1 * end, 0.4 * end, 0.7 * end, end};
        double there = 0;
        REQUIRE(cutwater_convert_unit(end, "m3/h", "US gpm", &there, &r) == CUTWATER_OK);
        REQUIRE(cutwater_convert_unit(there, "US gpm", "m3/h", &there, &r) == CUTWATER_OK);
        for (const double x : {there, std::nextafter(end, 1e9), std::nextafter(xs[0], 0.0)}) {
            moved += x < xs[0] || x > end;
            double read = 0, fitted = 0;
            INFO(x << " of " << end);
            CHECK(cutwater_curve_value(xs, 4, ys, 4, x, &read, &r) == CUTWATER_OK);
            CHECK(cutwater_fitted_value(xs, 4, ys, 4, 2, x, &fitted, &r) == CUTWATER_OK);
        }
        double y = 0;
        CHECK(cutwater_fitted_value(xs, 4, ys, 4, 2, end * (1 + 1e-12), &y, &r) == CUTWATER_OUT_OF_INTERVAL);
    }
    CHECK(moved > 100);
}

TEST_CASE("a suction pressure in pascals or millibars does not pass for bar", "[ends]")
{
    // every pressure of a vessel and of the air, and every suction gauge
    std::size_t seen = 0;
    for (std::size_t f = 0; f < function_count(); ++f)
        for (const InputInfo& in : function_at(f).inputs) {
            const std::string name = in.name;
            if (!in.unit || (in.unit != units::bara.info && in.unit != units::barg.info)) continue;
            if (name != "surface_pressure" && name != "ambient_pressure" && name != "suction_pressure") continue;
            ++seen;
            INFO(function_at(f).name << " " << in.full_name);
            CHECK_FALSE(in.interval.contains(101325));
            CHECK_FALSE(in.interval.contains(1013.25));
        }
    CHECK(seen > 6);
}

TEST_CASE("no absolute pressure takes the air's in pascals", "[ends]")
{
    cutwater_refusal r;
    double flow = 0;
    std::size_t seen = 0;
    for (std::size_t f = 0; f < function_count(); ++f)
        for (const InputInfo& in : function_at(f).inputs) {
            if (!in.unit || in.unit != units::bara.info) continue;
            ++seen;
            INFO(function_at(f).name << " " << in.full_name);
            CHECK_FALSE(in.interval.contains(101325));
            CHECK_FALSE(in.interval.contains(-1));
        }
    CHECK(seen > 50);
    double c = 0, reynolds = 0, limit = 0;
    const char* word = nullptr;
    CHECK(cutwater_bypass_flow(20, 52.5, 1.2e6, 2, 0.023, 998, 1, 0, &flow, &c, &reynolds, &limit, &word, &r) ==
          CUTWATER_OUT_OF_INTERVAL);
    CHECK(std::string(r.message).find("upstream_pressure_bara is 1200000 bara; it must be above 0 up to 1000 bara") !=
          std::string::npos);
}

TEST_CASE("what is overridden by a number is overridden by a sensible one", "[ends]")
{
    double velocity = 0, factor = 0;
    cutwater_refusal r;
    for (const double tiny : {1e-300, 1e-9, 0.05}) {
        CHECK(cutwater_deposition_velocity(717.55, 2.65, 0.27, 0.3, tiny, &velocity, &factor, &r) ==
              CUTWATER_CONTRADICTION);
        CHECK(std::string(r.name) == "durand_factor");
    }
    CHECK(cutwater_deposition_velocity(717.55, 2.65, 0.27, 0.3, 0, &velocity, &factor, &r) == CUTWATER_OK);
}

TEST_CASE("a buffer too small leaves lengths and no numbers", "[ends]")
{
    // curve_fit has a series and two numbers
    const double xs[] = {0, 1, 2, 3}, ys[] = {1, 3, 7, 13};
    double coefficients[2] = {7, 7}, determination = 7, deviation = 7;
    std::size_t length = 0;
    cutwater_refusal r;
    CHECK(cutwater_curve_fit(xs, 4, ys, 4, 2, coefficients, 2, &length, &determination, &deviation, &r) ==
          CUTWATER_BUFFER_TOO_SMALL);
    CHECK(length == 3);
    CHECK(std::isnan(determination));
    CHECK(std::isnan(deviation));
    for (const double c : coefficients) CHECK((c == 7 || std::isnan(c)));

    cutwater_value values[3] = {};
    values[0] = {.kind = CUTWATER_SERIES, .number = 0, .text = nullptr, .series = xs, .length = 4, .stride = 1};
    values[1] = {.kind = CUTWATER_SERIES, .number = 0, .text = nullptr, .series = ys, .length = 4, .stride = 1};
    values[2] = {.kind = CUTWATER_NUMBER, .number = 2, .text = nullptr, .series = nullptr, .length = 0, .stride = 1};
    cutwater_result results[3] = {};
    results[0].series = coefficients;
    results[0].capacity = 2;
    results[1].number = results[2].number = 7;
    CHECK(cutwater_call("curve_fit", values, 3, results, 3, &r) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK(results[0].length == 3);
    CHECK(std::isnan(results[1].number));
    CHECK(std::isnan(results[2].number));
}

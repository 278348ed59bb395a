// The four questions through the flat C API: pointers left out, rooms too small, names that are not there.
#include <cutwater/answers.h>
#include <cutwater/library.h>

#include "answers/records.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstring>
#include <string>
#include <vector>

using cutwater::test::number;
using cutwater::test::text;
using Catch::Matchers::Contains;

namespace {

/// Suction with the pressure, the vapour pressure, the density, the level and the loss that the guide uses.
const std::vector<cutwater_value> suction{number(1.01325), number(0.02339), number(998.2), number(2), number(0.5)};
/// A curve that rises to 34 m before it falls: 32 m is given twice.
const double flows[] = {0, 50, 100}, heads[] = {30, 34, 20};
const std::vector<cutwater_value> humped{{CUTWATER_SERIES, 0, nullptr, flows, 3, 1},
                                         {CUTWATER_SERIES, 0, nullptr, heads, 3, 1}};

}  // namespace

TEST_CASE("the working goes into any room, and says how much it needs", "[capi]")
{
    cutwater_refusal r;
    size_t needed = 7;
    const auto work = [&](const std::vector<cutwater_value>& inputs, std::int32_t form, char* buffer, size_t capacity,
                          size_t* room, cutwater_refusal* refusal) {
        return cutwater_working("npsh_available", inputs.data(), inputs.size(), form, buffer, capacity, room, refusal);
    };
    CHECK(work(suction, CUTWATER_TEXT_UTF8, nullptr, 0, &needed, &r) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK_THAT(r.message, Contains("the buffer holds 0"));
    std::vector<char> room(needed + 1);
    CHECK(work(suction, CUTWATER_TEXT_UTF8, room.data(), room.size(), nullptr, nullptr) == CUTWATER_OK);
    CHECK(std::strlen(room.data()) == needed);
    CHECK(work(suction, CUTWATER_TEXT_UTF8, room.data(), needed, &needed, &r) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK_THAT(r.message, Contains(std::to_string(needed) + " bytes") && Contains("holds " + std::to_string(needed)));
    CHECK(work(suction, CUTWATER_TEXT_UTF8, nullptr, 100, nullptr, &r) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK(work(suction, CUTWATER_TEXT_UTF8, room.data(), 0, nullptr, &r) == CUTWATER_BUFFER_TOO_SMALL);
    for (const std::int32_t form : {-1, 4}) {
        CHECK(work(suction, form, room.data(), room.size(), &needed, &r) == CUTWATER_UNKNOWN_WORD);
        CHECK_THAT(r.message, Contains("form must be"));
        CHECK(*room.data() == 0);
    }
    std::vector<cutwater_value> impossible = suction;
    impossible[0] = number(-1);
    // a refused call keeps its own status, however little of its working fits
    CHECK(work(impossible, CUTWATER_TEXT_UTF8, room.data(), 10, &needed, &r) == CUTWATER_OUT_OF_INTERVAL);
    CHECK(std::strlen(room.data()) == 9);
    CHECK(work(impossible, CUTWATER_TEXT_UTF8, nullptr, 0, nullptr, nullptr) == CUTWATER_OUT_OF_INTERVAL);
    CHECK(cutwater_working(nullptr, nullptr, 0, CUTWATER_TEXT_UTF8, room.data(), room.size(), &needed, &r) ==
          CUTWATER_UNKNOWN_FUNCTION);
    CHECK_THAT(room.data(), Contains("Refused") && Contains("name of a function is missing"));
    CHECK(cutwater_working("npsh_available", nullptr, 5, CUTWATER_TEXT_JSON, room.data(), room.size(), &needed, &r) ==
          CUTWATER_MISSING);
    CHECK_THAT(room.data(), Contains("\"The pointer to the inputs is null.\""));
}

TEST_CASE("solving without a pointer, a name, a target or room", "[capi]")
{
    cutwater_refusal r;
    double found = 0, roots[2] = {7, 7};
    size_t count = 9;
    const auto solve = [&](const char* function, const char* unknown, const char* result,
                           const cutwater_value* target) {
        found = 7;
        const auto status = cutwater_solve_for(function, suction.data(), 5, unknown, result, target, NAN, NAN, &found,
                                               &r);
        CHECK(std::isnan(found) == (status != CUTWATER_OK));
        return status;
    };
    const cutwater_value eleven = number(11), in_feet = text("36 ft"), in_kilograms = text("11 kg"),
                         no_text = text(nullptr), not_a_number = number(NAN), a_series = humped[0];
    CHECK(solve("npsh_available", "liquid_level", nullptr, &eleven) == CUTWATER_OK);
    CHECK(solve("npsh_available", "liquid_level", "", &in_feet) == CUTWATER_OK);
    CHECK(solve("npsh_available", "liquid_level", "npsh_m", &eleven) == CUTWATER_OK);
    CHECK(solve(nullptr, "liquid_level", nullptr, &eleven) == CUTWATER_UNKNOWN_FUNCTION);
    CHECK(solve("npsh_available", nullptr, nullptr, &eleven) == CUTWATER_WRONG_KIND);
    CHECK_THAT(r.message, Contains("it has surface_pressure_bara, "));
    CHECK(solve("npsh_available", "liquid_level", "power", &eleven) == CUTWATER_WRONG_KIND);
    CHECK(solve("npsh_available", "liquid_level", nullptr, &in_kilograms) == CUTWATER_WRONG_QUANTITY);
    CHECK(solve("npsh_available", "liquid_level", nullptr, &not_a_number) == CUTWATER_NOT_FINITE);
    for (const cutwater_value* target : {static_cast<const cutwater_value*>(nullptr), &no_text, &a_series}) {
        CHECK(solve("npsh_available", "liquid_level", nullptr, target) == CUTWATER_MISSING);
        CHECK_THAT(r.message, Contains("the target for npsh_m is missing"));
    }
    const std::vector<cutwater_value> six(6, number(1));
    CHECK(cutwater_solve_for("npsh_available", six.data(), 6, "liquid_level", nullptr, &eleven, NAN, NAN, &found, &r) ==
          CUTWATER_WRONG_COUNT);

    const cutwater_value height = number(32), too_high = number(99);
    const auto solve_all = [&](const cutwater_value& target, double* to, size_t capacity, size_t* room) {
        return cutwater_solutions("curve_head", humped.data(), 2, "flow", nullptr, &target, NAN, NAN, to, capacity,
                                  room, &r);
    };
    CHECK(solve_all(height, roots, 2, &count) == CUTWATER_OK);
    CHECK(count == 2);
    const double both[] = {roots[0], roots[1]};
    roots[0] = roots[1] = 7;
    CHECK(solve_all(height, roots, 1, &count) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK((count == 2 && roots[0] == both[0] && roots[1] == 7));
    CHECK(solve_all(height, nullptr, 0, &count) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK(solve_all(height, nullptr, 2, &count) == CUTWATER_MISSING);
    CHECK(solve_all(height, roots, 2, nullptr) == CUTWATER_MISSING);
    CHECK(solve_all(too_high, roots, 2, &count) == CUTWATER_NO_ANSWER);
    CHECK(count == 0);
    CHECK(solve_all(no_text, roots, 2, &count) == CUTWATER_MISSING);
}

TEST_CASE("uncertainty and sensitivity without a pointer or room", "[capi]")
{
    cutwater_refusal r;
    cutwater_uncertainty_report report{};
    report.size = sizeof report;
    const std::vector<cutwater_value> standards{number(0.01), {}, number(1)};
    const auto uncertain = [&](const char* function, const cutwater_value* inputs, cutwater_uncertainty_report* to) {
        return cutwater_uncertainty(function, inputs, 5, standards.data(), standards.size(), nullptr, to, &r);
    };
    CHECK(uncertain("npsh_available", suction.data(), &report) == CUTWATER_OK);  // no shares, no slopes wanted
    CHECK(uncertain("npsh_available", suction.data(), nullptr) == CUTWATER_MISSING);
    CHECK(uncertain("npsh_available", nullptr, &report) == CUTWATER_MISSING);
    CHECK(uncertain("no_such_function", suction.data(), &report) == CUTWATER_UNKNOWN_FUNCTION);
    CHECK((std::isnan(report.value) && std::isnan(report.standard) && *report.remark == 0));

    cutwater_sensitivity_row rows[5];
    size_t count = 9;
    double value = 7;
    const auto sensitive = [&](cutwater_sensitivity_row* to, size_t capacity, size_t* room, double* at) {
        return cutwater_sensitivity("npsh_available", suction.data(), 5, nullptr, to, capacity, room, at, &r);
    };
    CHECK(sensitive(rows, 5, nullptr, nullptr) == CUTWATER_OK);
    const cutwater_sensitivity_row first = rows[0];
    CHECK(sensitive(rows, 1, &count, &value) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK((count == 5 && value == Approx(11.612) && rows[0].input == first.input));
    CHECK(sensitive(nullptr, 0, &count, &value) == CUTWATER_BUFFER_TOO_SMALL);
    CHECK(sensitive(nullptr, 5, &count, &value) == CUTWATER_MISSING);
    CHECK((count == 0 && std::isnan(value)));
    CHECK(cutwater_sensitivity("npsh_available", suction.data(), 5, "power", rows, 5, &count, &value, &r) ==
          CUTWATER_WRONG_KIND);
    CHECK_THAT(r.message, Contains("has no result \"power\"; its first is npsh_m"));
    CHECK(cutwater_sensitivity(nullptr, suction.data(), 5, nullptr, rows, 5, &count, &value, &r) ==
          CUTWATER_UNKNOWN_FUNCTION);
}

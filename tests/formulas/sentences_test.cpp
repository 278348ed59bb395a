// What refusals from inside a formula say where curves only touch, or lie on each other: the numbers that tell the
// case.
#include "call/argument_list.hpp"

#include <cutwater/library.h>

#include <catch2/catch.hpp>

#include <string>
#include <vector>

using Catch::Matchers::Contains;

namespace {

std::string refusal_of(const char* function, const char* arguments)
{
    const auto listed = cutwater::read_argument_list(arguments);
    std::vector<cutwater_value> values;
    for (const auto& one : listed.value()) values.push_back(one.value());
    std::vector<cutwater_result> results(static_cast<std::size_t>(cutwater_result_count(cutwater_find(function))));
    cutwater_refusal refusal{};
    CHECK(cutwater_call(function, values.data(), values.size(), results.data(), results.size(), &refusal) !=
          CUTWATER_OK);
    return refusal.message;
}

}  // namespace

TEST_CASE("an NPSH test whose head stays at the limit tells from where to where", "[sentences]")
{
    CHECK_THAT(refusal_of("npsh3_from_test", "[2, 3, 4, 5], [37, 38.8, 38.8, 40], 40"),
               Contains("the head passes 38.8 m more than once, first at an NPSH of 3 m and of 4 m"));
    CHECK_THAT(refusal_of("npsh3_from_test", "[2, 3, 4, 5], [38.8, 38, 38.8, 40], 40"),
               Contains("first at an NPSH of 2 m and of 4 m"));
}

TEST_CASE("a suction that just suffices over a stretch, or at one flow, is told as what it is", "[sentences]")
{
    // NPSHA less the margin is 3 m at all flows
    CHECK_THAT(refusal_of("greatest_flow_by_suction", "[0, 50, 100], [2, 3, 3], 4, 0, 1"),
               Contains("from 50 m3/h to 100 m3/h NPSH available is just NPSH3 with its margin"));
    CHECK_THAT(refusal_of("greatest_flow_by_suction", "[0, 50, 100], [2, 3, 2], 4, 0, 1"),
               Contains("up to the curve's last point, 100 m3/h, where 1 m is left"));
    CHECK_THAT(refusal_of("greatest_flow_by_suction", "[0, 50, 100], [4, 3, 4], 4, 0, 1"),
               Contains("the suction just suffices at 50 m3/h, and at no other flow"));
    CHECK_THAT(refusal_of("greatest_flow_by_suction", "[0, 50, 100], [4, 3, 2], 4, 0, 1"),
               Contains("the suction suffices from 50 m3/h on only"));
    CHECK_THAT(refusal_of("greatest_flow_by_suction_points", "[0, 50, 100], [2, 3, 3], [0, 100], [4, 4], 1"),
               Contains("from 50 m3/h to 100 m3/h NPSH available is just NPSH3 with its margin"));
    CHECK_THAT(refusal_of("greatest_flow_by_suction_points", "[0, 50, 100], [2, 3, 2], [0, 100], [4, 4], 1"),
               Contains("up to the curve's last point, 100 m3/h, where 1 m is left"));
}

TEST_CASE("of several stretches on which two curves are one the first is told", "[sentences]")
{
    CHECK_THAT(refusal_of("duty_flow", "[0, 10, 20, 30, 40], [20, 20, 25, 20, 20], 20, 0"),
               Contains("lie on each other from 0 m3/h to 10 m3/h"));
    CHECK_THAT(refusal_of("duty_flow", "[0, 10, 20, 30, 40, 50, 60, 70], [20, 25, 20, 25, 20, 25, 20, 25], 20, 0"),
               Contains("meets the system curve several times, first at 0 m3/h, 20 m3/h and 40 m3/h"));
}

TEST_CASE("masses on rigid bearings alone tell nothing of the shaft", "[sentences]")
{
    for (const char* shaft : {"[6], [220], [460], [40], 220, 380", "[6, 3], [220, 380], [460], [40], 220, 380, 0"})
        CHECK_THAT(refusal_of("first_critical_speed", shaft), Contains("none shows how the shaft bends"));
}

// The self-test holds every record's example against its formula: here examples that are wrong.
#include "call/example.hpp"
#include "catalogue/families.hpp"

#include <catch2/catch.hpp>

#include <string>

using namespace cutwater;

namespace {

cutwater_refusal refusal;

/// Of a function of the catalogue with another example.
cutwater_status with_example(const char* function, const char* inputs, const char* results)
{
    FunctionInfo f = function_at(static_cast<std::size_t>(find_function(function)));
    f.example = {inputs, results, ""};
    refusal = {};
    const cutwater_status status = check_example(f, &refusal);
    CHECK(refusal.status == status);
    CHECK(check_example(f, nullptr) == status);
    return status;
}

std::string message() { return refusal.message; }

}  // namespace

TEST_CASE("an example that comes out agrees to the last place written", "[example]")
{
    CHECK(with_example("curve_at_speed", "[0, 100], [40, 30], 2900, 1450", "[0, 50], [10, 7.5]") == CUTWATER_OK);
    CHECK(with_example("curve_value", "[0, 50, 100], [40, 38, 30], 75", "34.98") == CUTWATER_OK);
    CHECK(with_example("curve_value", "[0, 50, 100], [40, 38, 30], 75", "35.0") == CUTWATER_OK);
    CHECK(with_example("curve_value", "[0, 50, 100], [40, 38, 30], 75", "35") == CUTWATER_OK);
}

TEST_CASE("an example that does not come out is told with its result", "[example]")
{
    for (const char* wrong : {"34.96", "34.99", "34.9"})
        CHECK(with_example("curve_value", "[0, 50, 100], [40, 38, 30], 75", wrong) == CUTWATER_INTERNAL);
    CHECK(message() == "curve_value: its example does not come out: y should be 34.9.");
    const char* const speeds = "[0, 100], [40, 30], 2900, 1450";
    CHECK(with_example("curve_at_speed", speeds, "[0, 50], [10, 7.4]") == CUTWATER_INTERNAL);
    CHECK(message().find("new_heads_m should be") != std::string::npos);
    CHECK(with_example("curve_at_speed", speeds, "[0], [10, 7.5]") == CUTWATER_INTERNAL);
    CHECK(message().find("new_flows_m3h should be") != std::string::npos);
    CHECK(with_example("curve_is_stable", "[0, 20, 40], [55, 57, 50]", "\"stable\", 20, 57") == CUTWATER_INTERNAL);
    CHECK(message().find("shape should be") != std::string::npos);
    CHECK(with_example("curve_value", "[0, 50, 100], [40, 38, 30], 75", "\"34.975\"") == CUTWATER_INTERNAL);
}

TEST_CASE("an example that cannot be read, or is refused, is told", "[example]")
{
    const char* const inputs = "[0, 50, 100], [40, 38, 30], 75";
    CHECK(with_example("curve_value", "[0, 50", "34.975") == CUTWATER_INTERNAL);
    CHECK(with_example("curve_value", inputs, "34.975,") == CUTWATER_INTERNAL);
    CHECK(with_example("curve_value", inputs, "34.975, 1") == CUTWATER_INTERNAL);
    CHECK(message() == "curve_value: its example cannot be read.");
    CHECK(with_example("curve_value", "[0, 50, 100], 5, 75", "34.975") == CUTWATER_WRONG_KIND);
    CHECK(with_example("curve_value", "[0, 50, 100], [40, 38, 30], 175", "34.975") == CUTWATER_OUT_OF_INTERVAL);
}

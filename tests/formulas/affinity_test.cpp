// A point of a curve at its own speed or diameter is that point, to the last bit and in any unit: what is only scaled
// goes through no conversion.
#include <cutwater/cutwater.h>

#include <catch2/catch.hpp>

#include <random>

TEST_CASE("At a ratio of 1 the affinity and trim laws change no bit", "[affinity]")
{
    std::mt19937_64 random(11);
    std::uniform_real_distribution<double> between(0, 3000);
    for (int i = 0; i < 20000; ++i) {
        const double x = between(random), speed = 100 + between(random), diameter = 10 + between(random);
        double out = -1;
        CHECK_FALSE(cutwater_flow_at_speed(x, speed, speed, &out, nullptr));
        REQUIRE(out == x);
        CHECK_FALSE(cutwater_head_at_speed(x, speed, speed, &out, nullptr));
        REQUIRE(out == x);
        CHECK_FALSE(cutwater_power_at_speed(x, speed, speed, &out, nullptr));
        REQUIRE(out == x);
        CHECK_FALSE(cutwater_npsh3_at_speed(x, speed, speed, 1.3, &out, nullptr));
        REQUIRE(out == x);
        CHECK_FALSE(cutwater_flow_at_trim(x, diameter, diameter, 1, &out, nullptr));
        REQUIRE(out == x);
        CHECK_FALSE(cutwater_head_at_trim(x, diameter, diameter, 2, &out, nullptr));
        REQUIRE(out == x);
        CHECK_FALSE(cutwater_power_at_trim(x, diameter, diameter, 3, &out, nullptr));
        REQUIRE(out == x);
    }
}

// The curve between its points against Boost.Math's pchip (which copies its points and takes other slopes at the ends
// unless it is told), and the search for meetings against curves whose meetings are known.
#include "formulas/curves/meeting.hpp"

#include <cutwater/unit_table.hpp>

#include <boost/math/interpolators/pchip.hpp>
#include <catch2/catch.hpp>

#include <chrono>
#include <random>

using namespace cutwater;
using namespace cutwater::formulas::curves;

namespace {

struct Given {
    std::vector<double> x, y;
    Series<Ratio> xs() const { return {{x.data(), x.size(), 1}, *units::number.info}; }
    Series<Ratio> ys() const { return {{y.data(), y.size(), 1}, *units::number.info}; }
};

Given random_curve(std::mt19937& random, std::size_t points)
{
    std::uniform_real_distribution<double> step(0.1, 9);
    std::uniform_int_distribution<int> level(-4, 6);  // whole numbers, so that level pieces and equal slopes come up
    Given given;
    double x = 0;
    for (std::size_t i = 0; i < points; ++i) {
        given.x.push_back(x);
        given.y.push_back(level(random));
        x += step(random);
    }
    return given;
}

}  // namespace

TEST_CASE("a curve between its points is Boost.Math's pchip", "[curves]")
{
    std::mt19937 random(7);
    for (int round = 0; round < 300; ++round) {
        const Given given = random_curve(random, 4 + static_cast<std::size_t>(round % 9));
        const auto xs = given.xs(), ys = given.ys();
        const Knots<Ratio, Ratio> knots(xs, ys);
        auto x = given.x, y = given.y;
        const boost::math::interpolators::pchip<std::vector<double>> other(
            std::move(x), std::move(y), slope_at(knots, 0), slope_at(knots, given.x.size() - 1));
        for (int k = 0; k <= 100; ++k) {
            const double at = k == 100 ? given.x.back() : given.x.back() * k / 100;
            CHECK(value_at(knots, at) == Approx(other(at)).margin(1e-12));
            CHECK(slope_of(knots, at) == Approx(other.prime(at)).margin(1e-10));
        }
        for (std::size_t i = 0; i < given.x.size(); ++i) CHECK(value_at(knots, given.x[i]) == given.y[i]);
    }
}

TEST_CASE("a curve stays between neighbouring points", "[curves]")
{
    std::mt19937 random(11);
    for (int round = 0; round < 300; ++round) {
        const Given given = random_curve(random, 2 + static_cast<std::size_t>(round % 7));
        const auto xs = given.xs(), ys = given.ys();
        const Knots<Ratio, Ratio> knots(xs, ys);
        for (std::size_t i = 0; i + 1 < given.x.size(); ++i)
            for (int k = 0; k <= 20; ++k) {
                const double y = value_at(knots, given.x[i] + (given.x[i + 1] - given.x[i]) * k / 20);
                CHECK(y >= std::min(given.y[i], given.y[i + 1]) - 1e-12);
                CHECK(y <= std::max(given.y[i], given.y[i + 1]) + 1e-12);
            }
    }
}

TEST_CASE("every meeting with a parabola is found once", "[curves]")
{
    std::mt19937 random(3);
    std::uniform_real_distribution<double> base(-5, 6), factor(-0.01, 0.02);
    for (int round = 0; round < 2000; ++round) {
        const Given given = random_curve(random, 2 + static_cast<std::size_t>(round % 9));
        const auto xs = given.xs(), ys = given.ys();
        const Knots<Ratio, Ratio> knots(xs, ys);
        const Parabola parabola{base(random), round % 3 ? factor(random) : 0};
        const auto gap = [&](double x) { return value_at(knots, x) - parabola.value(x); };
        std::size_t crossings = 0;
        const int fine = 4000;
        for (int k = 0; k < fine; ++k)
            crossings += gap(given.x.back() * k / fine) * gap(given.x.back() * (k + 1) / fine) < 0;
        const Meetings found = meetings(knots, parabola);
        CHECK(found.count >= crossings);  // the grid may step over a pair that lies close together
        CHECK((found.count - crossings) % 2 == 0);
        for (std::size_t i = 0; i < std::min<std::size_t>(found.count, 3); ++i) {
            CHECK(std::abs(gap(found.at[i])) < 1e-11);
            if (i) CHECK(found.at[i] > found.at[i - 1]);
        }
    }
}

TEST_CASE("meetings at points, touching, and along a stretch", "[curves]")
{
    const Given droop{{0, 20, 40, 60, 80}, {55, 57, 58, 57, 53}};
    const auto xs = droop.xs(), ys = droop.ys();
    const Knots<Ratio, Ratio> knots(xs, ys);
    CHECK(meetings(knots, {58, 0}).count == 1);
    CHECK(meetings(knots, {58, 0}).at[0] == 40);
    CHECK(meetings(knots, {57, 0}).count == 2);
    CHECK(meetings(knots, {57, 0}).at[0] == 20);
    CHECK(meetings(knots, {57, 0}).at[1] == 60);
    CHECK(meetings(knots, {58.0001, 0}).count == 0);
    CHECK(meetings(knots, {55, 0}).count == 2);  // its very first point, and once more where it falls
    const Given level{{0, 10, 20, 30}, {5, 5, 5, 4}};
    const auto level_x = level.xs(), level_y = level.ys();
    const Meetings along = meetings(Knots<Ratio, Ratio>(level_x, level_y), {5, 0});
    CHECK(along.along);
    CHECK(along.along_from == 0);
    CHECK(along.along_to == 20);
}

TEST_CASE("a long series costs a search, not a copy", "[curves]")
{
    Given given;
    for (int i = 0; i < 1'000'000; ++i) {
        given.x.push_back(i);
        given.y.push_back(1e6 - 1e-7 * i * i);
    }
    const auto xs = given.xs(), ys = given.ys();
    const Knots<Ratio, Ratio> knots(xs, ys);
    const auto start = std::chrono::steady_clock::now();
    double sum = 0;
    for (int k = 0; k < 10'000; ++k) sum += value_at(knots, 99.37 * k);
    CHECK(sum > 0);
    CHECK(std::chrono::steady_clock::now() - start < std::chrono::seconds(1));  // copying would take a minute
    CHECK(meetings(knots, {9.5e5, 1e-7}).count == 1);
}

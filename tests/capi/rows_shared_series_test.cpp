// Rows on a series that they share: vectors where its points are few, a row at a time where they are many, and each
// with the bits and the refusal of a single call.
#include "capi/columns.hpp"

#include <cutwater/cutwater.h>

#include <catch2/catch.hpp>

#include <cmath>
#include <vector>

using columns::drawn, columns::rows, columns::same;

namespace {

cutwater_column whole(const std::vector<double>& column) { return {column.data(), 1}; }
cutwater_result_column into(std::vector<double>& column) { return {column.data(), 1}; }

struct Curve {
    std::vector<double> temperatures, pressures;
};

/// Water's vapour pressure by Antoine's equation from 80 degC on, in so many points; any curve would do.
Curve curve_of(std::size_t points)
{
    Curve made;
    for (std::size_t i = 0; i < points; ++i) {
        const double t = 80 + 60.0 * static_cast<double>(i) / static_cast<double>(points - 1);
        made.temperatures.push_back(t);
        made.pressures.push_back(std::pow(10, 5.11564 - 1687.537 / (t + 230.17)));
    }
    return made;
}

}  // namespace

TEST_CASE("Rows on a vapour-pressure curve of few and of many points", "[rows]")
{
    for (const std::size_t points : {2u, 3u, 15u, 16u, 17u, 40u}) {
        CAPTURE(points);
        const Curve curve = curve_of(points);
        const auto& t = curve.temperatures;
        const auto& p = curve.pressures;
        auto chamber = drawn(0.4, 3.8, 1), temperature = drawn(75, 145, 2), rise = drawn(0, 5, 3);  // some refused
        temperature[0] = 80, rise[0] = 0, chamber[0] = p.back();                                    // both ends
        temperature[1] = 140, rise[1] = 0, chamber[1] = p.front();
        chamber[2] = std::nan("");
        std::vector<double> vapour(rows), margin(rows), ratio(rows), boils(rows), below(rows);
        cutwater_rows_report told{};
        cutwater_seal_temperature_margin_rows(rows, whole(chamber), whole(temperature), t.data(), points, p.data(),
                                              points, whole(rise), into(vapour), into(margin), into(ratio), into(boils),
                                              into(below), &told);
        std::size_t refused = 0, apart = 0;
        for (std::size_t r = 0; r < rows; ++r) {
            double one[5];
            const cutwater_status s = cutwater_seal_temperature_margin(chamber[r], temperature[r], t.data(), points,
                                                                       p.data(), points, rise[r], &one[0], &one[1],
                                                                       &one[2], &one[3], &one[4], nullptr);
            refused += s != CUTWATER_OK;
            apart += !same(one[0], vapour[r]) || !same(one[1], margin[r]) || !same(one[2], ratio[r]) ||
                     !same(one[3], boils[r]) || !same(one[4], below[r]);
        }
        CHECK(apart == 0);
        CHECK(told.refused == refused);
        CHECK(refused > 100);
        CHECK(refused < rows / 2);
        CHECK(std::isfinite(boils[0]));
        CHECK(std::isfinite(boils[1]));
    }
}

TEST_CASE("Rows of fitted polynomials of every degree", "[rows]")
{
    for (const std::size_t points : {2u, 5u, 9u}) {
        CAPTURE(points);
        std::vector<double> xs, ys;
        for (std::size_t i = 0; i < points; ++i) {
            xs.push_back(10.0 * static_cast<double>(i));
            ys.push_back(40 - 0.01 * xs.back() * xs.back() + std::sin(static_cast<double>(7 * i)));
        }
        auto degree = drawn(0.5, 7.5, 4), x = drawn(-2, xs.back() + 2, 5);
        for (double& m : degree) m = std::round(m);
        degree[0] = 1.5, degree[1] = std::nan(""), degree[2] = 1e300;
        std::vector<double> y(rows);
        cutwater_rows_report told{};
        cutwater_fitted_value_rows(rows, xs.data(), points, ys.data(), points, whole(degree), whole(x), into(y), &told);
        std::size_t refused = 0, apart = 0;
        for (std::size_t r = 0; r < rows; ++r) {
            double one = 0;
            refused += cutwater_fitted_value(xs.data(), points, ys.data(), points, degree[r], x[r], &one, nullptr) !=
                       CUTWATER_OK;
            apart += !same(one, y[r]);
        }
        CHECK(apart == 0);
        CHECK(told.refused == refused);
        CHECK(refused < rows);
    }
}

// Inputs given once for all rows take a loop of their own, in which what depends on them alone is computed once: every
// row has the bits of a row of whole columns and of a single call, and what is refused is the same.
#include "capi/columns.hpp"

#include <cutwater/cutwater.h>

#include <catch2/catch.hpp>

#include <utility>
#include <vector>

using columns::drawn, columns::rows, columns::same;

namespace {

struct Given {
    double once;
    std::vector<double> column;

    explicit Given(double value) : once(value), column(rows, value) {}
    cutwater_column shared() const { return {&once, 0}; }
    cutwater_column whole() const { return {column.data(), 1}; }
};

cutwater_column varying(const std::vector<double>& column) { return {column.data(), 1}; }

/// call(inputs given once, or whole): fills out and the report.
template <class Once, class Whole, class Single>
void check(Once once, Whole whole, Single single, std::size_t least_refused)
{
    std::vector<double> by_once(rows), by_whole(rows);
    cutwater_rows_report told_once{}, told_whole{};
    once(cutwater_result_column{by_once.data(), 1}, &told_once);
    whole(cutwater_result_column{by_whole.data(), 1}, &told_whole);
    CHECK(told_once.refused == told_whole.refused);
    CHECK(told_once.refused >= least_refused);
    CHECK(told_once.refused < rows);
    std::size_t apart = 0;
    for (std::size_t r = 0; r < rows; ++r) {
        double one = 0;
        single(r, &one);
        apart += !same(by_once[r], by_whole[r]) || !same(by_once[r], one);
    }
    CHECK(apart == 0);
}

}  // namespace

TEST_CASE("A pipe given once", "[rows]")
{
    const auto flow = drawn(-5, 300, 1);  // some of them refused
    const Given bore(150), length(200), roughness(0.0457), viscosity(1.0034);
    check(
        [&](cutwater_result_column out, cutwater_rows_report* told) {
            cutwater_pipe_friction_head_rows(rows, varying(flow), bore.shared(), length.shared(), roughness.shared(),
                                             viscosity.shared(), out, told);
        },
        [&](cutwater_result_column out, cutwater_rows_report* told) {
            cutwater_pipe_friction_head_rows(rows, varying(flow), bore.whole(), length.whole(), roughness.whole(),
                                             viscosity.whole(), out, told);
        },
        [&](std::size_t r, double* out) {
            cutwater_pipe_friction_head(flow[r], 150, 200, 0.0457, 1.0034, out, nullptr);
        },
        5);
}

TEST_CASE("An oil's two points given once", "[rows]")
{
    const auto temperature = drawn(-100, 120, 2);
    const Given t1(40), nu1(32), t2(100), nu2(5.4);
    check(
        [&](cutwater_result_column out, cutwater_rows_report* told) {
            cutwater_viscosity_at_temperature_rows(rows, t1.shared(), nu1.shared(), t2.shared(), nu2.shared(),
                                                   varying(temperature), out, told);
        },
        [&](cutwater_result_column out, cutwater_rows_report* told) {
            cutwater_viscosity_at_temperature_rows(rows, t1.whole(), nu1.whole(), t2.whole(), nu2.whole(),
                                                   varying(temperature), out, told);
        },
        [&](std::size_t r, double* out) {
            cutwater_viscosity_at_temperature(40, 32, 100, 5.4, temperature[r], out, nullptr);
        },
        5);
}

// The array form undoes the relation without steps where the oil is thick, and leaves thinner rows to a call of their
// own.
TEST_CASE("An oil that is thick in some rows and thin in others", "[rows]")
{
    const auto temperature = drawn(-80, 390, 7);
    for (const auto& [first, second] : {std::pair(32.0, 5.4), std::pair(2.0, 0.7), std::pair(3.2, 0.9)}) {
        const Given t1(20), nu1(first), t2(100), nu2(second);
        check(
            [&](cutwater_result_column out, cutwater_rows_report* told) {
                cutwater_viscosity_at_temperature_rows(rows, t1.shared(), nu1.shared(), t2.shared(), nu2.shared(),
                                                       varying(temperature), out, told);
            },
            [&](cutwater_result_column out, cutwater_rows_report* told) {
                cutwater_viscosity_at_temperature_rows(rows, t1.whole(), nu1.whole(), t2.whole(), nu2.whole(),
                                                       varying(temperature), out, told);
            },
            [&, first = first, second = second](std::size_t r, double* out) {
                cutwater_viscosity_at_temperature(20, first, 100, second, temperature[r], out, nullptr);
            },
            5);
    }
}

TEST_CASE("Antoine's constants given once, with their unit's word", "[rows]")
{
    const auto temperature = drawn(0, 110, 3);
    const Given a(4.02232), b(1206.53), c(220.291), low(5.5), high(104);
    check(
        [&](cutwater_result_column out, cutwater_rows_report* told) {
            cutwater_vapour_pressure_antoine_rows(rows, a.shared(), b.shared(), c.shared(), varying(temperature),
                                                  low.shared(), high.shared(), "bar_degC", out, told);
        },
        [&](cutwater_result_column out, cutwater_rows_report* told) {
            cutwater_vapour_pressure_antoine_rows(rows, a.whole(), b.whole(), c.whole(), varying(temperature),
                                                  low.whole(), high.whole(), "bar_degC", out, told);
        },
        [&](std::size_t r, double* out) {
            cutwater_vapour_pressure_antoine(4.02232, 1206.53, 220.291, temperature[r], 5.5, 104, "bar_degC", out,
                                             nullptr);
        },
        5);
}

TEST_CASE("An input given once that is not permitted refuses every row", "[rows]")
{
    const auto flow = drawn(10, 300, 4);
    const Given bore(-1), length(200), roughness(0.0457), viscosity(1.0034);
    std::vector<double> out(rows);
    cutwater_rows_report told{};
    CHECK(cutwater_pipe_friction_head_rows(rows, varying(flow), bore.shared(), length.shared(), roughness.shared(),
                                           viscosity.shared(), {out.data(), 1}, &told) != CUTWATER_OK);
    CHECK(told.refused == rows);
    CHECK(out[rows - 1] != out[rows - 1]);
}

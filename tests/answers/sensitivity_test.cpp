#include "answers/records.hpp"
#include "answers/sensitivity.hpp"

#include <catch2/catch.hpp>

using namespace cutwater;
using namespace cutwater::test;

namespace cutwater::test {

inline Ratio power_law(Ratio a, Ratio b, Ratio c) { return a * a * a / std::sqrt(b.value()) + 0.0 * c; }
inline constexpr Record<&power_law> power_law_record{.name = "power_law",
                                                     .meaning = "a test",
                                                     .inputs = {plain("a"), plain("b", from(0)), plain("c")},
                                                     .results = {answer()},
                                                     .equation = "y = a^3/sqrt(b)",
                                                     .source = "none",
                                                     .example = {}};
inline Temperature same(Temperature t, Ratio factor)
{
    return Si<Temperature>::make(Si<Temperature>::value(t) * factor.value());
}
inline constexpr Record<&same> same_record{
    .name = "same",
    .meaning = "a test",
    .inputs = {input("temperature", "t", unit<Temperature>("degC"), any, "of it"), plain("factor")},
    .results = {output("temperature_out", "T", unit<Temperature>("degC"), "of it")},
    .equation = "T = t",
    .source = "none",
    .example = {}};
inline Ratio total(Series<Ratio> each, Ratio more)
{
    Ratio sum = more;
    for (std::size_t i = 0; i < each.size(); ++i) sum += each[i];
    return sum;
}
inline constexpr Record<&total> total_record{
    .name = "total",
    .meaning = "a test",
    .inputs = {series("each", "x_i", units::number, any, "numbers"), plain("more")},
    .results = {answer()},
    .equation = "y = sum of x_i + more",
    .source = "none",
    .example = {}};

}  // namespace cutwater::test

namespace {

std::vector<cutwater_sensitivity_row> ask(const FunctionInfo& f, std::vector<cutwater_value> values,
                                          cutwater_status expected = CUTWATER_OK)
{
    std::vector<cutwater_sensitivity_row> rows;
    double value = 0;
    CHECK(sensitivity(f, values, nullptr, rows, value, nullptr) == expected);
    return rows;
}

}  // namespace

TEST_CASE("exponents come out as relative changes, the largest first", "[sensitivity]")
{
    const auto rows = ask(binding::info<power_law_record>, {number(2), number(4), number(5)});
    REQUIRE(rows.size() == 3);
    CHECK(rows[0].input == 0);
    CHECK(rows[0].relative_change == Approx(3).epsilon(1e-9));
    CHECK(rows[0].slope == Approx(6).epsilon(1e-9));
    CHECK(rows[1].input == 1);
    CHECK(rows[1].relative_change == Approx(-0.5).epsilon(1e-9));
    CHECK(rows[2].relative_change == 0);
}

TEST_CASE("where an input is 0 the slope stands alone and comes after", "[sensitivity]")
{
    const auto rows = ask(binding::info<additive_record>, {number(0), number(2), number(3), number(-1)});
    REQUIRE(rows.size() == 4);
    CHECK(rows[0].input == 2);
    CHECK(rows[3].input == 0);
    CHECK(rows[3].relative == 0);
    CHECK(std::isnan(rows[3].relative_change));
    CHECK(rows[3].slope == Approx(1));
    for (const auto& row : ask(binding::info<additive_record>, {number(1), number(2), number(-3), number(0)}))
        CHECK(row.relative == 0);  // result 0
}

TEST_CASE("temperatures are taken from absolute zero", "[sensitivity]")
{
    const auto rows = ask(binding::info<same_record>, {number(20), number(1.25)});
    CHECK(rows[0].relative_change == Approx(1).epsilon(1e-8));
    CHECK(rows[1].relative_change == Approx(1).epsilon(1e-8));
    CHECK(ask(binding::info<same_record>, {number(0), number(1)})[0].relative == 1);
}

TEST_CASE("one-sided at an end, none where refused, whole numbers by one, series as a whole", "[sensitivity]")
{
    const auto root = ask(binding::info<resistance_curve_record>, {number(5), number(0), number(10)});
    for (const auto& row : root)
        if (row.input == 1) CHECK(row.slope == Approx(100).epsilon(1e-9));
    const auto whole = ask(binding::info<of_count_record>, {number(3), number(50)});
    CHECK(whole[0].relative_change == Approx(1));
    const double points[] = {1, 2, 3};
    const auto rows = ask(binding::info<total_record>, {{CUTWATER_SERIES, 0, nullptr, points, 3, 1}, number(4)});
    CHECK(rows[0].input == 0);
    CHECK(rows[0].relative_change == Approx(0.6).epsilon(1e-9));
    CHECK(std::isnan(rows[0].slope));
    ask(binding::info<square_root_record>, {number(-1)}, CUTWATER_OUT_OF_INTERVAL);
}

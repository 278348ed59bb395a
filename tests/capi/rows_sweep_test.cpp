// Hostile rows among good ones, for every function with an array form: each row comes to what the scalar call gives.
#include <cutwater/library.h>

#include "call/argument_list.hpp"
#include "call/arguments.hpp"
#include "answers/records.hpp"
#include "catalogue/erased.hpp"
#include "catalogue/families.hpp"

#include <catch2/catch.hpp>

#include <bit>
#include <cmath>
#include <limits>
#include <random>
#include <vector>

using namespace cutwater;

namespace {

constexpr double infinite = std::numeric_limits<double>::infinity();
constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();

bool same_bits(double a, double b) { return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b); }

/// The interval's ends and their neighbours, and numbers that break what is not looked at first.
std::vector<double> hostile_numbers(const InputInfo& in)
{
    std::vector<double> numbers{not_a_number, infinite, -infinite, 2e9, -2e9, 1e300, -1e300, 0,
                                -0.0,         5e-324,   -5e-324,   0.5, 1,    1e18};
    for (const double end : {in.interval.low, in.interval.high})
        if (std::isfinite(end))
            numbers.insert(numbers.end(), {end, std::nextafter(end, infinite), std::nextafter(end, -infinite)});
    return numbers;
}

struct Sample {
    const FunctionInfo& f;
    std::vector<ListedArgument> arguments;
    GivenInputs given{};

    explicit Sample(const FunctionInfo& function) : f(function)
    {
        const auto read = read_argument_list(f.example.inputs);
        REQUIRE(read);
        arguments = *read;
        std::vector<cutwater_value> values;
        for (const ListedArgument& a : arguments) values.push_back(a.value());
        REQUIRE(read_arguments(f, values, given, nullptr) == CUTWATER_OK);
    }
};

using Column = std::vector<double>;

/// Good rows, with every hostile number of every input in a row of its own and rows with several between them.
std::vector<Column> columns_of(const Sample& example, bool good_first)
{
    const auto inputs = example.f.inputs;
    std::vector<Column> columns(inputs.size());
    const auto add_row = [&] {
        for (std::size_t i = 0; i < inputs.size(); ++i) columns[i].push_back(example.given[i].number);
    };
    if (good_first) add_row();
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        if (inputs[i].kind != Kind::quantity) continue;
        for (const double bad : hostile_numbers(inputs[i])) {
            add_row();
            columns[i].back() = bad;
            add_row();
        }
    }
    std::mt19937 engine(20261126);
    for (int n = 0; n < 1500; ++n) {
        add_row();
        for (std::size_t i = 0; i < inputs.size(); ++i) {
            if (inputs[i].kind != Kind::quantity || engine() % 3) continue;
            const auto numbers = hostile_numbers(inputs[i]);
            columns[i].back() = numbers[engine() % numbers.size()];
        }
    }
    return columns;
}

void compare_with_scalar(const Sample& example, const std::vector<Column>& columns)
{
    const FunctionInfo& f = example.f;
    const std::size_t rows = columns[0].size();
    std::vector<cutwater_column> in;
    std::vector<cutwater_value> shared;
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        in.push_back({columns[i].data(), 1});
        shared.push_back(i < example.arguments.size() ? example.arguments[i].value() : cutwater_value{});
    }
    std::vector<Column> results(f.results.size(), Column(rows, 7));
    std::vector<cutwater_result_column> out;
    for (Column& column : results) out.push_back({column.data(), 1});
    std::vector<std::uint8_t> bitmap((rows + 7) / 8);
    cutwater_rows_report report{};
    report.bitmap = bitmap.data();
    const std::int32_t position = cutwater_find(f.name);
    const cutwater_status status = cutwater_rows_at(position, rows, in.data(), shared.data(), out.data(), &report);

    std::size_t refused = 0;
    for (std::size_t r = 0; r < rows; ++r) {
        GivenInputs given = example.given;
        for (std::size_t i = 0; i < f.inputs.size(); ++i) given[i].number = columns[i][r];
        std::array<Result, most_results> alone{};
        cutwater_refusal why{};
        const cutwater_status scalar = f.call(given.data(), alone.data(), nullptr, &why);
        INFO(f.name << ", row " << r << ": " << why.message);
        REQUIRE((bitmap[r / 8] >> (r % 8) & 1) == (scalar != CUTWATER_OK));
        for (std::size_t j = 0; j < results.size(); ++j)
            if (scalar == CUTWATER_OK ? !same_bits(results[j][r], alone[j].number) : !std::isnan(results[j][r]))
                REQUIRE(results[j][r] == alone[j].number);
        if (scalar == CUTWATER_OK || refused++ > 0) continue;
        CHECK(status == scalar);
        CHECK(report.first.element == static_cast<std::int64_t>(r));
        CHECK(report.first.argument == why.argument);
        CHECK(std::string(report.first.message) == why.message);
    }
    CHECK(report.refused == refused);
    CHECK(refused > 0);
}

/// Counts how often it is asked what its record does not permit.
int forbidden = 0;

Ratio wary(Ratio whole, Count steps)
{
    if (!(whole.value() >= 1) || !(steps.value <= 10)) ++forbidden;
    return whole * steps.value;
}

constexpr Record<&wary> wary_record{
    .name = "wary",
    .meaning = "a test",
    .inputs = {test::plain("whole", from(1)), input("steps", "n", units::count, between(1, 10), "how many")},
    .results = {test::answer()},
    .equation = "y = w n",
    .source = "none",
    .example = {}};

}  // namespace

TEST_CASE("hostile rows among good ones come to what the scalar call gives, for every function", "[capi][sweep]")
{
    std::size_t swept = 0;
    for (std::size_t k = 0; k < function_count(); ++k) {
        const FunctionInfo& f = function_at(k);
        const bool numbers = std::any_of(f.inputs.begin(), f.inputs.end(),
                                         [](const InputInfo& in) { return in.kind == Kind::quantity; });
        if (!f.rows || !numbers) continue;
        const Sample example(f);
        for (const bool good_first : {true, false}) compare_with_scalar(example, columns_of(example, good_first));
        ++swept;
    }
    CHECK(10 * swept > 9 * function_count());  // the others take no number, or give a series
}

TEST_CASE("a formula sees only what its record permits, also in the array form", "[capi]")
{
    const std::vector<double> whole{not_a_number, 2, 0.5, 3, 1e300, -infinite};
    const std::vector<double> steps{2, 1e9, 3, 3, 11, not_a_number};
    for (const std::size_t begin : {0, 4}) {  // from the fourth row on no row is permitted
        std::vector<double> out(whole.size(), 7);
        const cutwater_column columns[] = {{whole.data() + begin, 1}, {steps.data() + begin, 1}};
        cutwater_result_column results[] = {{out.data(), 1}};
        GivenInputs first{};
        const GivenInputs shared{};
        RowsJob job{.rows = whole.size() - begin,
                    .columns = columns,
                    .shared = shared.data(),
                    .results = results,
                    .first_given = first.data()};
        forbidden = 0;
        entry<wary_record>->rows(job);
        CHECK(forbidden == 0);
        CHECK(job.refused == (begin ? 2 : 5));
        CHECK(job.first_refused == 0);
        for (std::size_t r = 0; r < job.rows; ++r) CHECK((begin + r == 3 ? out[r] == 9 : std::isnan(out[r])));
    }
}

TEST_CASE("a refused row costs no more than a good one", "[capi]")
{
    const double interest = 0.05, inflation = 0;  // the years of a refused row once became the turns of a loop
    std::vector<double> years(20000, 1e9), factor(years.size());
    years.back() = 10;
    cutwater_rows_report report{};
    const cutwater_column columns[] = {{&interest, 0}, {years.data(), 1}, {&inflation, 0}};
    const cutwater_result_column results[] = {{factor.data(), 1}};
    CHECK(cutwater_rows_at(cutwater_find("present_value_factor"), years.size(), columns, nullptr, results, &report) ==
          CUTWATER_OUT_OF_INTERVAL);
    CHECK(report.refused == years.size() - 1);
    CHECK(factor.back() ==
          Approx((1 - std::pow(1.05, -10)) / 0.05).epsilon(1e-12));  // of an annuity in arrears, common practice
}

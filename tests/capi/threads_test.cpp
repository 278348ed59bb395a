// Every kind of call from many threads at once, the first of them racing for whatever is made on first use.
#include <cutwater/library.h>

#include <catch2/catch.hpp>

#include <atomic>
#include <cmath>
#include <cstring>
#include <string>
#include <thread>
#include <vector>

namespace {

cutwater_value number(double x) { return {CUTWATER_NUMBER, x, nullptr, nullptr, 0, 1}; }

struct Answers {
    double value = 0, solved = 0, deviation = 0, first_row = 0, last_row = 0;
    std::string working, permitted;
    std::size_t rows_of_sensitivity = 0, refused = 0, found = 0;
    bool operator==(const Answers&) const = default;
};

/// One of each, for inputs that depend on k; the same k must give the same bits on any thread.
Answers all_calls(int k)
{
    Answers made;
    const int function = cutwater_find("npsh_available");
    const std::vector<cutwater_value> values{number(1.01),
                                             {CUTWATER_TEXT, 0, "20 mbar(a)", nullptr, 0, 1},
                                             number(998),
                                             number(0.1 * k),
                                             number(0.5)};
    cutwater_result result{};
    cutwater_refusal refusal;
    cutwater_call("npsh_available", values.data(), values.size(), &result, 1, &refusal);
    made.value = result.number;
    const cutwater_value target = number(8 + 0.01 * k);
    cutwater_solve_for("npsh_available", values.data(), values.size(), "liquid_level", nullptr, &target, NAN, NAN,
                       &made.solved, &refusal);
    std::vector<char> text(1 << 14);
    std::size_t needed = 0;
    cutwater_working("npsh_available", values.data(), values.size(), k % 4, text.data(), text.size(), &needed,
                     &refusal);
    made.working = text.data();
    const std::vector<cutwater_value> standard{number(0.01), {}, {}, number(0.05)};
    cutwater_uncertainty_options options{};
    options.size = sizeof options;
    options.monte_carlo = CUTWATER_ALWAYS;
    options.trials = 1000;
    options.seed = static_cast<uint64_t>(k);
    cutwater_uncertainty_report told{};
    told.size = sizeof told;
    cutwater_uncertainty("npsh_available", values.data(), values.size(), standard.data(), standard.size(), &options,
                         &told, &refusal);
    made.deviation = told.deviation;
    cutwater_sensitivity_row rows[8];
    cutwater_sensitivity("npsh_available", values.data(), values.size(), nullptr, rows, 8, &made.rows_of_sensitivity,
                         nullptr, &refusal);
    cutwater_input_info described{};
    described.size = sizeof described;
    cutwater_describe_input(function, 0, &described);
    made.permitted = described.permitted;
    cutwater_find_function("suction safe", nullptr, 0, &made.found, &refusal);
    constexpr std::size_t count = 50000;
    std::vector<double> level(count), npsh(count);
    for (std::size_t r = 0; r < count; ++r)
        level[r] = r % 1000 == 7 ? NAN : static_cast<double>(k) + 1e-4 * static_cast<double>(r);
    const double surface = 1.01, vapour = 0.02, density = 998, friction = 0.5;
    const cutwater_column columns[] = {{&surface, 0}, {&vapour, 0}, {&density, 0}, {level.data(), 1}, {&friction, 0}};
    const cutwater_result_column results[] = {{npsh.data(), 1}};
    std::vector<std::uint8_t> bitmap(count / 8 + 1);
    cutwater_rows_report report{};
    report.bitmap = bitmap.data();
    report.threads = 3;
    cutwater_rows_at(function, count, columns, nullptr, results, &report);
    made.refused = report.refused;
    made.first_row = npsh.front();
    made.last_row = npsh.back();
    return made;
}

}  // namespace

TEST_CASE("every kind of call from many threads at once gives the same bits", "[capi][threads]")
{
    constexpr int threads = 8, rounds = 6;
    std::vector<std::vector<Answers>> made(threads, std::vector<Answers>(rounds));
    std::atomic<int> waiting{threads};
    std::vector<std::thread> all;
    for (int t = 0; t < threads; ++t)
        all.emplace_back([&, t] {
            --waiting;
            while (waiting > 0) std::this_thread::yield();
            if (t == 0) cutwater_self_test(nullptr);
            if (t == 1) static_cast<void>(std::strlen(cutwater_catalogue_json()));
            for (int k = 0; k < rounds; ++k)
                made[static_cast<std::size_t>(t)][static_cast<std::size_t>(k)] = all_calls(k);
        });
    for (std::thread& thread : all) thread.join();
    for (int t = 1; t < threads; ++t) CHECK(made[static_cast<std::size_t>(t)] == made[0]);
    CHECK(made[0][0].value == Approx((1.01 - 0.02) * 1e5 / (998 * 9.80665) - 0.5).epsilon(1e-12));
    CHECK(made[0][0].solved == Approx(8 - made[0][0].value).epsilon(1e-12));
    CHECK(made[0][0].refused == 50);
    CHECK(made[0][0].rows_of_sensitivity == 5);
}

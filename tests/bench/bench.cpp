// Ratios in one run: the flat C API against the same relations written by hand on doubles at the same flags.
#include "by_hand.hpp"

#include <cutwater/cutwater.h>

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstring>
#include <random>
#include <vector>

namespace {

volatile double sink;

/// Least seconds a call of work takes, over rounds of about a hundredth of a second each.
template <class Work>
double seconds(Work&& work, int rounds = 15)
{
    using Clock = std::chrono::steady_clock;
    const auto time = [&](long n) {
        const auto start = Clock::now();
        for (long i = 0; i < n; ++i) work();
        return std::chrono::duration<double>(Clock::now() - start).count();
    };
    long n = 1;
    while (n < 100'000'000 && time(n) < 0.01) n *= 2;
    double least = time(n);
    for (int i = 0; i < rounds; ++i) least = std::min(least, time(n));
    return least / static_cast<double>(n);
}

void report(const char* what, double ours, double theirs, const char* unit, double scale)
{
    fmt::print("{:<62} {:>9.2f} {:>9.2f} {:<3} ratio {:5.2f}\n", what, ours * scale, theirs * scale, unit,
               ours / theirs);
}

std::vector<double> random_column(std::size_t rows, double low, double high, unsigned seed)
{
    std::mt19937_64 engine(seed);
    std::uniform_real_distribution<double> between(low, high);
    std::vector<double> column(rows);
    for (double& x : column) x = between(engine);
    return column;
}

void scalar()
{
    double level = 2, out = 0;
    cutwater_refusal refusal;
    const double by_hand = seconds([&] { sink = by_hand::npsh_available(1.01, 0.02, 998, level, 0.5); });
    const double flat = seconds([&] {
        cutwater_npsh_available(1.01, 0.02, 998, level, 0.5, &out, &refusal);
        sink = out;
    });
    const double refused = seconds([&] {
        cutwater_npsh_available(-1.01, 0.02, 998, level, 0.5, &out, nullptr);
        sink = out;
    });
    const double refused_told = seconds([&] {
        cutwater_npsh_available(-1.01, 0.02, 998, level, 0.5, &out, &refusal);
        sink = out;
    });
    report("npsh_available: flat C call / not-inlined double function", flat, by_hand, "ns", 1e9);
    report("npsh_available: refused, no record wanted / double function", refused, by_hand, "ns", 1e9);
    report("npsh_available: refused with its whole record / double function", refused_told, by_hand, "ns", 1e9);
    const cutwater_value values[] = {{CUTWATER_NUMBER, 1.01, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 0.02, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 998, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 2, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 0.5, nullptr, nullptr, 0, 0}};
    cutwater_result result{};
    const double named = seconds([&] {
        cutwater_call("npsh_available", values, 5, &result, 1, &refusal);
        sink = result.number;
    });
    report("npsh_available: by name / double function", named, by_hand, "ns", 1e9);
    const double losses = seconds([&] { sink = by_hand::friction_head(100, 150, 200, 0.0457, 1.0034); });
    const double ours = seconds([&] {
        cutwater_pipe_friction_head(100, 150, 200, 0.0457, 1.0034, &out, &refusal);
        sink = out;
    });
    report("pipe_friction_head: flat C call / double function", ours, losses, "ns", 1e9);
}

void rows(std::size_t count)
{
    const auto surface = random_column(count, 0.9, 1.1, 1), vapour = random_column(count, 0.01, 0.2, 2),
               density = random_column(count, 900, 1100, 3), level = random_column(count, -3, 3, 4),
               friction = random_column(count, 0, 1, 5);
    std::vector<double> out(count);
    cutwater_rows_report told{};
    const double by_hand = seconds([&] {
        by_hand::npsh_available_rows(count, surface.data(), vapour.data(), density.data(), level.data(),
                                     friction.data(), out.data());
    });
    const double ours = seconds([&] {
        cutwater_npsh_available_rows(count, {surface.data(), 1}, {vapour.data(), 1}, {density.data(), 1},
                                     {level.data(), 1}, {friction.data(), 1}, {out.data(), 1}, &told);
    });
    report(fmt::format("npsh_available, {} rows: array form / loop on doubles", count).c_str(), ours, by_hand, "us",
           1e6);
    const double one = 998;
    const double shared = seconds([&] {
        cutwater_npsh_available_rows(count, {surface.data(), 1}, {vapour.data(), 1}, {&one, 0}, {level.data(), 1},
                                     {friction.data(), 1}, {out.data(), 1}, &told);
    });
    report(fmt::format("  the same with one density for all rows").c_str(), shared, by_hand, "us", 1e6);

    const auto flow = random_column(count, 10, 300, 6);
    const double bore = 150, length = 200, roughness = 0.0457, viscosity = 1.0034;
    const double loop = seconds(
        [&] { by_hand::friction_head_rows(count, flow.data(), bore, length, roughness, viscosity, out.data()); }, 5);
    const double friction_rows = seconds(
        [&] {
            cutwater_pipe_friction_head_rows(count, {flow.data(), 1}, {&bore, 0}, {&length, 0}, {&roughness, 0},
                                             {&viscosity, 0}, {out.data(), 1}, &told);
        },
        5);
    report(fmt::format("pipe_friction_head, {} rows: array form / loop on doubles", count).c_str(), friction_rows, loop,
           "us", 1e6);
}

void report_alone(const char* what, double ours, const char* unit, double scale)
{
    fmt::print("{:<62} {:>9.2f} {:<13}\n", what, ours * scale, unit);
}

void answers()
{
    const cutwater_value values[] = {{CUTWATER_NUMBER, 1.01, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 0.02, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 998, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 2, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 0.5, nullptr, nullptr, 0, 0}};
    std::vector<char> text(1 << 16);
    std::size_t needed = 0;
    cutwater_refusal refusal;
    report_alone("working shown of npsh_available, UTF-8", seconds([&] {
                     cutwater_working("npsh_available", values, 5, CUTWATER_TEXT_UTF8, text.data(), text.size(),
                                      &needed, &refusal);
                 }),
                 "us", 1e6);
    const cutwater_value target{CUTWATER_NUMBER, 11.0, nullptr, nullptr, 0, 0};
    double found = 0;
    report_alone("solved backwards for its liquid level, -50 to 50 m given", seconds([&] {
                     cutwater_solve_for("npsh_available", values, 5, "liquid_level", nullptr, &target, -50, 50, &found,
                                        &refusal);
                     sink = found;
                 }),
                 "us", 1e6);
    const cutwater_value uncertainties[] = {{CUTWATER_NUMBER, 0.01, nullptr, nullptr, 0, 0},
                                            {CUTWATER_NUMBER, 0.001, nullptr, nullptr, 0, 0},
                                            {CUTWATER_NUMBER, 5, nullptr, nullptr, 0, 0},
                                            {CUTWATER_NUMBER, 0.05, nullptr, nullptr, 0, 0},
                                            {CUTWATER_NUMBER, 0.05, nullptr, nullptr, 0, 0}};
    cutwater_uncertainty_options options{};
    options.size = sizeof options;
    options.monte_carlo = CUTWATER_ALWAYS;
    options.trials = 1'000'000;
    cutwater_uncertainty_report told{};
    told.size = sizeof told;
    report_alone("a million Monte Carlo trials, five uncertain inputs",
                 seconds(
                     [&] {
                         cutwater_uncertainty("npsh_available", values, 5, uncertainties, 5, &options, &told, &refusal);
                         sink = told.deviation;
                     },
                     5),
                 "ms", 1e3);
}

void threads(std::size_t count)
{
    const auto flow = random_column(count, 10, 300, 6);
    std::vector<double> out(count);
    const double bore = 150, length = 200, roughness = 0.0457, viscosity = 1.0034;
    const auto run = [&](int asked) {
        cutwater_rows_report told{};
        told.threads = asked;
        return seconds(
            [&] {
                cutwater_pipe_friction_head_rows(count, {flow.data(), 1}, {&bore, 0}, {&length, 0}, {&roughness, 0},
                                                 {&viscosity, 0}, {out.data(), 1}, &told);
            },
            3);
    };
    report(fmt::format("pipe_friction_head, {} rows: all processors / one thread", count).c_str(), run(-1), run(1),
           "us", 1e6);
}

/// A hundred million rows, a chunk at a time: memory stays that of one chunk.
void chunks()
{
    constexpr std::size_t chunk = 1'000'000;
    constexpr std::size_t all = 100'000'000;
    std::vector<double> level = random_column(chunk, -3, 3, 4), out(chunk);
    const double surface = 1.01, vapour = 0.02, density = 998, friction = 0.5;
    const auto start = std::chrono::steady_clock::now();
    cutwater_rows_report told{};
    for (std::size_t begin = 0; begin < all; begin += chunk)
        cutwater_npsh_available_rows(chunk, {&surface, 0}, {&vapour, 0}, {&density, 0}, {level.data(), 1},
                                     {&friction, 0}, {out.data(), 1}, &told);
    const double took = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    report_alone("npsh_available, 1e8 rows by chunks of 1e6, one column varying", took, "s", 1);
}

}  // namespace

int main()
{
    fmt::print("{:<62} {:>9} {:>9}\n", "", "cutwater", "by hand");
    scalar();
    for (const std::size_t count : {1000u, 100000u, 1000000u}) rows(count);
    threads(200000);
    chunks();
    answers();
}

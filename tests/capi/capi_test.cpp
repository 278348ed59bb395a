// The flat C API's manners: null pointers, refusals whole in the call, no state, no locale, threads.
#include <cutwater/cutwater.h>

#include "support/allocation.hpp"

#include <catch2/catch.hpp>

#include <atomic>
#include <bit>
#include <clocale>
#include <cmath>
#include <cstring>
#include <limits>
#include <string>
#include <thread>
#include <vector>

namespace {

cutwater_status quantity_of_text(const char* text, const char* unit, double* out, cutwater_refusal* refusal)
{
    const cutwater_value value{CUTWATER_TEXT, 0, text, nullptr, 0, 1};
    return cutwater_quantity(&value, unit, out, refusal);
}

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinite = std::numeric_limits<double>::infinity();

cutwater_status npsh(double surface, double vapour, double density, double level, double friction, double* out,
                     cutwater_refusal* refusal)
{
    return cutwater_npsh_available(surface, vapour, density, level, friction, out, refusal);
}

}  // namespace

TEST_CASE("a refusal is whole in the call that made it", "[capi]")
{
    double out = 1;
    cutwater_refusal refusal{};
    CHECK(npsh(-0.5, 0.02, 998, 2, 1, &out, &refusal) == CUTWATER_OUT_OF_INTERVAL);
    CHECK(std::isnan(out));
    CHECK(refusal.status == CUTWATER_OUT_OF_INTERVAL);
    CHECK(refusal.argument == 0);
    CHECK(refusal.element == -1);
    CHECK(refusal.value == -0.5);
    CHECK(refusal.low == 0);
    CHECK(refusal.low_open == 1);
    CHECK(refusal.high == 500);
    CHECK(std::string(refusal.name) == "surface_pressure_bara");
    CHECK(std::string(refusal.unit) == "bara");
    const std::string message = refusal.message;
    CHECK(message.find("-0.5 bara") != std::string::npos);
    CHECK(message.find("above 0 up to 500 bara") != std::string::npos);

    CHECK(npsh(1, 0.02, 998, not_a_number, 1, &out, &refusal) == CUTWATER_NOT_FINITE);
    CHECK(refusal.argument == 3);
    CHECK(npsh(1, 0.02, infinite, 2, 1, &out, &refusal) == CUTWATER_NOT_FINITE);
    CHECK(refusal.argument == 2);
    CHECK(npsh(1, 0.02, 998, 2, -1, &out, nullptr) == CUTWATER_OUT_OF_INTERVAL);
    CHECK(std::isnan(out));
    CHECK(cutwater_fitting_head(1e300, 100, 1, &out, &refusal) == CUTWATER_OVERFLOW);
    CHECK(std::isnan(out));
    CHECK(npsh(1, 0.02, 998, 2, 1, &out, &refusal) == CUTWATER_OK);
    CHECK(refusal.status == CUTWATER_OK);
}

TEST_CASE("a text becomes a number in the unit asked for", "[capi]")
{
    double out = 0;
    cutwater_refusal refusal{};
    const auto read = [&](const char* text, const char* unit) {
        REQUIRE(quantity_of_text(text, unit, &out, &refusal) == CUTWATER_OK);
        return out;
    };
    CHECK(read("440 US gpm", "m3/h") ==
          Approx(440 * 0.003785411784 * 60).epsilon(1e-15));  // NIST SP 811: 1 US gal = 3.785411784 L
    CHECK(read("100", "m3/h") == 100);
    CHECK(read("72 %", "-") == 0.72);
    CHECK(read("6 ft", "m") == 1.8288);
    CHECK(read("50 degF", "degC") == 10);
    CHECK(read("14.5 psi", "bar") == Approx(14.5 * 0.06894757293168361).epsilon(1e-15));

    const auto refused = [&](const char* text, const char* unit) {
        const auto status = quantity_of_text(text, unit, &out, &refusal);
        CHECK(std::isnan(out));
        CHECK(status == refusal.status);
        return std::pair(status, std::string(refusal.name));
    };
    CHECK(refused("1 bara", "m3/h") == std::pair(CUTWATER_WRONG_QUANTITY, std::string("value")));
    CHECK(refused("1.2 barg", "bara") == std::pair(CUTWATER_WRONG_QUANTITY, std::string("value")));
    CHECK(refused("440 gpm", "m3/h") == std::pair(CUTWATER_UNKNOWN_UNIT, std::string("value")));
    CHECK(read("8", "K") == 8);
    CHECK(refused("8 degC", "K") ==
          std::pair(CUTWATER_WRONG_QUANTITY, std::string("value")));  // of a difference, never 281 K
    CHECK(refused("", "m3/h") == std::pair(CUTWATER_BAD_TEXT, std::string("value")));
    CHECK(refused("1", "furlong") == std::pair(CUTWATER_UNKNOWN_UNIT, std::string("unit")));
}

TEST_CASE("a refusal from inside a formula carries the blamed input's value", "[capi]")
{
    const double flows[] = {0, 50, 100};
    const double heads[] = {40, 38, 30};
    double head = 0;
    cutwater_refusal refusal;
    REQUIRE(cutwater_curve_head(flows, 3, heads, 3, 120, &head, &refusal) == CUTWATER_OUT_OF_INTERVAL);
    CHECK(std::string(refusal.name) == "flow_m3h");
    CHECK(refusal.value == 120);
    REQUIRE(cutwater_duty_flow(flows, 3, heads, 3, 50, 0.001, &head, &refusal) == CUTWATER_NO_ANSWER);
    CHECK(std::string(refusal.name) == "heads_m");  // a series has no one value
    CHECK(std::isnan(refusal.value));
}

TEST_CASE("null pointers are refused", "[capi]")
{
    cutwater_refusal refusal{};
    double out = 0;
    CHECK(npsh(1, 0.02, 998, 2, 1, nullptr, &refusal) == CUTWATER_MISSING);
    CHECK(npsh(1, 0.02, 998, 2, 1, nullptr, nullptr) == CUTWATER_MISSING);
    const double flows[] = {0, 50, 100};
    const double heads[] = {40, 38, 30};
    CHECK(cutwater_curve_value(nullptr, 3, heads, 3, 75, &out, &refusal) == CUTWATER_MISSING);
    CHECK(refusal.argument == 0);
    CHECK(cutwater_curve_value(flows, 0, heads, 3, 75, &out, &refusal) != CUTWATER_OK);
    CHECK(cutwater_call(nullptr, nullptr, 0, nullptr, 0, nullptr) == CUTWATER_UNKNOWN_FUNCTION);
    CHECK(cutwater_call("npsh_available", nullptr, 0, nullptr, 0, &refusal) != CUTWATER_OK);
    CHECK(cutwater_call("npsh_available", nullptr, 5, nullptr, 0, &refusal) != CUTWATER_OK);
    CHECK(cutwater_call_at(-1, nullptr, 0, nullptr, 0, &refusal) == CUTWATER_UNKNOWN_FUNCTION);
    CHECK(cutwater_call_at(1 << 30, nullptr, 0, nullptr, 0, &refusal) == CUTWATER_UNKNOWN_FUNCTION);
    CHECK(cutwater_rows_at(0, 1, nullptr, nullptr, nullptr, nullptr) == CUTWATER_MISSING);
    CHECK(cutwater_read(0, 0, nullptr, &out, &refusal) == CUTWATER_MISSING);
    CHECK(cutwater_read(0, 0, "1", nullptr, &refusal) == CUTWATER_MISSING);
    CHECK(cutwater_read(0, 99, "1", &out, &refusal) != CUTWATER_OK);
    CHECK(cutwater_quantity(nullptr, "m", &out, &refusal) == CUTWATER_MISSING);
    CHECK(quantity_of_text("1", nullptr, &out, &refusal) == CUTWATER_MISSING);
    CHECK(quantity_of_text("1", "m", nullptr, &refusal) == CUTWATER_MISSING);
    CHECK(cutwater_convert_unit(1, nullptr, "m", &out, &refusal) == CUTWATER_MISSING);
    CHECK(cutwater_convert_unit(1, "m", "m", nullptr, &refusal) == CUTWATER_MISSING);
    CHECK(cutwater_find(nullptr) == -1);
    CHECK(std::string(cutwater_function_name(-5)).empty());
    CHECK(std::string(cutwater_input_name(0, 1000)).empty());
    CHECK(cutwater_input_kind(0, -1) == -1);
}

TEST_CASE("texts with units in the by-name call", "[capi]")
{
    const cutwater_value texts[] = {{CUTWATER_TEXT, 0, "14.7 psia", nullptr, 0, 0},
                                    {CUTWATER_TEXT, 0, "23.39 mbar(a)", nullptr, 0, 0},
                                    {CUTWATER_NUMBER, 998.2, nullptr, nullptr, 0, 0},
                                    {CUTWATER_TEXT, 0, "6 ft", nullptr, 0, 0},
                                    {CUTWATER_NUMBER, 0.5, nullptr, nullptr, 0, 0}};
    cutwater_result result{};
    cutwater_refusal refusal{};
    REQUIRE(cutwater_call("npsh_available", texts, 5, &result, 1, &refusal) == CUTWATER_OK);
    CHECK(result.kind == CUTWATER_NUMBER);
    // 14.7 psia = 1.0135293 bara: hand calculation
    CHECK(result.number == Approx((1.01352932 - 0.02339) * 1e5 / (998.2 * 9.80665) + 1.8288 - 0.5).epsilon(1e-8));

    const auto refused = [&](std::size_t input, const char* text) {
        cutwater_value values[5];
        std::copy(std::begin(texts), std::end(texts), values);
        values[input] = {CUTWATER_TEXT, 0, text, nullptr, 0, 0};
        const cutwater_status status = cutwater_call("npsh_available", values, 5, &result, 1, &refusal);
        CHECK(refusal.argument == static_cast<std::int32_t>(input));
        CHECK(std::isnan(result.number));
        INFO(refusal.message);
        CHECK(std::string(refusal.message)
                  .find(cutwater_input_name(cutwater_find("npsh_available"), static_cast<std::int32_t>(input))) !=
              std::string::npos);
        return status;
    };
    CHECK(refused(0, "1.013 barg") == CUTWATER_WRONG_QUANTITY);
    CHECK(refused(0, "1 bar") != CUTWATER_OK);
    CHECK(refused(0, "hello") == CUTWATER_BAD_TEXT);
    CHECK(refused(0, "") != CUTWATER_OK);
    CHECK(refused(3, "2 kg") == CUTWATER_WRONG_QUANTITY);
    CHECK(refused(3, "2 furlong") == CUTWATER_UNKNOWN_UNIT);
    CHECK(refused(3, "1,500 m") == CUTWATER_BAD_TEXT);
    CHECK(refused(3, "nan") == CUTWATER_NOT_FINITE);
    CHECK(refused(4, "-3 ft") == CUTWATER_OUT_OF_INTERVAL);
}

TEST_CASE("wrong counts and kinds in the by-name call", "[capi]")
{
    cutwater_refusal refusal{};
    cutwater_result result{};
    std::vector<cutwater_value> values(6, cutwater_value{CUTWATER_NUMBER, 1, nullptr, nullptr, 0, 0});
    CHECK(cutwater_call("npsh_available", values.data(), 6, &result, 1, &refusal) == CUTWATER_WRONG_COUNT);
    CHECK(cutwater_call("npsh_available", values.data(), 4, &result, 1, &refusal) == CUTWATER_MISSING);
    CHECK(refusal.argument == 4);
    const double series[] = {1, 2};
    values.resize(5);
    values[2] = {CUTWATER_SERIES, 0, nullptr, series, 2, 1};
    CHECK(cutwater_call("npsh_available", values.data(), 5, &result, 1, &refusal) == CUTWATER_WRONG_KIND);
    CHECK(refusal.argument == 2);
    CHECK(cutwater_call("no_such_function", values.data(), 5, &result, 1, &refusal) == CUTWATER_UNKNOWN_FUNCTION);
}

TEST_CASE("scalar calls allocate nothing, also when they refuse", "[capi]")
{
    double out = 0;
    cutwater_refusal refusal{};
    const cutwater_value values[] = {{CUTWATER_TEXT, 0, "1.5 bara", nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 0.02, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 998, nullptr, nullptr, 0, 0},
                                     {CUTWATER_TEXT, 0, "2 parsec", nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 1, nullptr, nullptr, 0, 0}};
    cutwater_result result{};
    npsh(1, 0.02, 998, 2, 1, &out, &refusal);
    const long before = cutwater::test::allocations;
    for (int i = 0; i < 100; ++i) {
        npsh(1, 0.02, 998, 2, 1, &out, &refusal);
        npsh(-1, 0.02, 998, 2, 1, &out, &refusal);
        cutwater_call("npsh_available", values, 5, &result, 1, &refusal);
        cutwater_convert_unit(1, "m", "ft", &out, &refusal);
        cutwater_convert_unit(1, "m", "kg", &out, &refusal);
    }
    CHECK(cutwater::test::allocations == before);
}

TEST_CASE("the process's locale changes nothing", "[capi]")
{
    const cutwater_value values[] = {{CUTWATER_TEXT, 0, "1.5 bara", nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 0.02, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, 998, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, -2.5, nullptr, nullptr, 0, 0},
                                     {CUTWATER_NUMBER, -1.5, nullptr, nullptr, 0, 0}};
    cutwater_result result{};
    cutwater_refusal plain{};
    cutwater_refusal local{};
    cutwater_call("npsh_available", values, 5, &result, 1, &plain);
    const char* set = nullptr;
    for (const char* name : {"de_DE.UTF-8", "de_DE", "fr_FR.UTF-8", "C.UTF-8"})
        if ((set = std::setlocale(LC_ALL, name))) break;
    REQUIRE(set);
    cutwater_call("npsh_available", values, 5, &result, 1, &local);
    std::setlocale(LC_ALL, "C");
    CHECK(std::string(plain.message) == local.message);
    CHECK(plain.argument == 4);
}

TEST_CASE("any thread may call", "[capi]")
{
    std::atomic<int> wrong{0};
    std::vector<std::thread> threads;
    for (int t = 0; t < 8; ++t)
        threads.emplace_back([&wrong, t] {
            for (int i = 0; i < 20000; ++i) {
                double out = 0;
                cutwater_refusal refusal{};
                const double level = (t * 20000 + i) * 1e-3;
                if (npsh(1, 0.02, 998, level, 1, &out, &refusal) != CUTWATER_OK) ++wrong;
                if (npsh(1, -level - 1, 998, level, 1, &out, &refusal) != CUTWATER_OUT_OF_INTERVAL ||
                    refusal.value != -level - 1)
                    ++wrong;
            }
        });
    for (auto& thread : threads) thread.join();
    CHECK(wrong == 0);
}

TEST_CASE("array form: broadcast, strides, refused rows, in place", "[capi]")
{
    constexpr std::size_t rows = 1500;  // over several blocks
    std::vector<double> surface(rows), level(2 * rows), out(3 * rows, 0);
    for (std::size_t r = 0; r < rows; ++r) {
        surface[r] = r == 700 || r == 1499 ? -1.0 : 1 + 1e-3 * static_cast<double>(r);
        level[2 * r] = static_cast<double>(r % 7);
    }
    const double vapour = 0.02, density = 998, friction = 0.5;
    std::vector<std::uint8_t> bitmap((rows + 7) / 8, 0xaa);
    cutwater_rows_report report{};
    report.bitmap = bitmap.data();
    CHECK(cutwater_npsh_available_rows(rows, {surface.data(), 1}, {&vapour, 0}, {&density, 0}, {level.data(), 2},
                                       {&friction, 0}, {out.data(), 3}, &report) == CUTWATER_OUT_OF_INTERVAL);
    CHECK(report.refused == 2);
    CHECK(report.first.element == 700);
    CHECK(report.first.argument == 0);
    CHECK(report.first.value == -1);
    const auto same = [](double a, double b) {
        return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b);
    };
    for (std::size_t r = 0; r < rows; ++r) {
        const bool marked = bitmap[r / 8] >> (r % 8) & 1;
        CHECK(marked == (r == 700 || r == 1499));
        double alone = 0;
        npsh(surface[r], vapour, density, level[2 * r], friction, &alone, nullptr);
        if (!marked)
            REQUIRE(same(alone, out[3 * r]));
        else
            REQUIRE(std::isnan(out[3 * r]));
    }
    const std::vector<double> kept = surface;
    report.bitmap = nullptr;
    cutwater_npsh_available_rows(rows, {surface.data(), 1}, {&vapour, 0}, {&density, 0}, {level.data(), 2},
                                 {&friction, 0}, {surface.data(), 1}, &report);
    CHECK(report.first.value == -1);
    for (std::size_t r = 0; r < rows; ++r)
        if (kept[r] > 0) REQUIRE(same(surface[r], out[3 * r]));
    CHECK(cutwater_npsh_available_rows(0, {nullptr, 1}, {nullptr, 0}, {nullptr, 0}, {nullptr, 2}, {nullptr, 0},
                                       {nullptr, 1}, nullptr) == CUTWATER_OK);
    CHECK(cutwater_npsh_available_rows(1, {nullptr, 1}, {&vapour, 0}, {&density, 0}, {level.data(), 2}, {&friction, 0},
                                       {out.data(), 1}, &report) == CUTWATER_MISSING);
}

TEST_CASE("the array form gives the same bits on any number of threads", "[capi]")
{
    constexpr std::size_t rows = 200003;
    std::vector<double> level(rows), one(rows), several(rows);
    for (std::size_t r = 0; r < rows; ++r) level[r] = r % 50021 == 50000 ? infinite : static_cast<double>(r) * 1e-3;
    std::vector<std::uint8_t> one_bitmap((rows + 7) / 8), several_bitmap((rows + 7) / 8, 0xff);
    const double surface = 1, vapour = 0.02, density = 998, friction = 0.5;
    const auto run = [&](std::vector<double>& out, std::vector<std::uint8_t>& bitmap, int threads) {
        cutwater_rows_report report{};
        report.bitmap = bitmap.data();
        report.threads = threads;
        cutwater_npsh_available_rows(rows, {&surface, 0}, {&vapour, 0}, {&density, 0}, {level.data(), 1},
                                     {&friction, 0}, {out.data(), 1}, &report);
        return report;
    };
    const cutwater_rows_report alone = run(one, one_bitmap, 0);
    CHECK(alone.refused == 3);
    CHECK(alone.first.element == 50000);
    for (const int threads : {2, 3, 7, -1, 1000}) {
        const cutwater_rows_report shared = run(several, several_bitmap, threads);
        CHECK(shared.refused == alone.refused);
        CHECK(shared.first.element == alone.first.element);
        CHECK(std::string(shared.first.message) == alone.first.message);
        CHECK(one_bitmap == several_bitmap);
        CHECK(std::memcmp(one.data(), several.data(), rows * sizeof(double)) == 0);
    }
}

TEST_CASE("version, interface, self-test and catalogue", "[capi]")
{
    CHECK(std::string(cutwater_version()) == CUTWATER_VERSION);
    CHECK(cutwater_interface() == CUTWATER_INTERFACE);
    cutwater_refusal refusal{};
    INFO(refusal.message);
    CHECK(cutwater_self_test(&refusal) == CUTWATER_OK);
    const std::string json = cutwater_catalogue_json();
    CHECK(json.front() == '{');
    CHECK(json.find("\"npsh_available\"") != std::string::npos);
}

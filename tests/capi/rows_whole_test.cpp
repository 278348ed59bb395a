// Array calls as a whole: refused before a row is computed, results over inputs, exceptions on other threads.
#include <cutwater/cutwater.h>

#include "answers/records.hpp"
#include "call/overlap.hpp"
#include "call/rows.hpp"
#include "catalogue/erased.hpp"
#include "support/allocation.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstring>
#include <new>
#include <random>
#include <string>
#include <vector>

using namespace cutwater;

namespace {

constexpr std::size_t rows = 21;  // no whole number of bytes in the bitmap

struct Call {
    std::vector<double> surface = std::vector<double>(rows, 1), out = std::vector<double>(rows, 7);
    std::vector<std::uint8_t> bitmap = std::vector<std::uint8_t>(4, 0x55);
    double vapour = 0.02, density = 998, level = 2, friction = 0.5;
    cutwater_rows_report report{};

    Call() { report.bitmap = bitmap.data(), report.refused = 99; }

    cutwater_status npsh(std::size_t count, cutwater_column surfaces, cutwater_column levels,
                         cutwater_result_column results)
    {
        return cutwater_npsh_available_rows(count, surfaces, {&vapour, 0}, {&density, 0}, levels, {&friction, 0},
                                            results, &report);
    }

    void check_refused_whole() const
    {
        CHECK(report.refused == rows);
        CHECK(report.first.element == -1);
        CHECK(bitmap == std::vector<std::uint8_t>{0xff, 0xff, 0x1f, 0x55});  // nothing past the last row's byte
        for (const double x : out) CHECK(std::isnan(x));
    }
};

Outcome<Ratio> hungry(Ratio x)
{
    if (x.value() == 13) throw std::bad_alloc();
    return x;
}
constexpr Record<&hungry> hungry_record{.name = "hungry",
                                        .meaning = "a test",
                                        .inputs = {test::plain("x")},
                                        .results = {test::answer()},
                                        .equation = "y = x",
                                        .source = "none",
                                        .example = {}};

bool told(const cutwater_rows_report& report, const char* what) { return std::strstr(report.first.message, what); }

}  // namespace

TEST_CASE("an array call refused as a whole refuses every row", "[capi]")
{
    SECTION("a column is missing")
    {
        Call c;
        CHECK(c.npsh(rows, {nullptr, 1}, {&c.level, 0}, {c.out.data(), 1}) == CUTWATER_MISSING);
        c.check_refused_whole();
    }
    SECTION("a result is missing")
    {
        Call c;
        CHECK(c.npsh(rows, {c.surface.data(), 1}, {&c.level, 0}, {nullptr, 1}) == CUTWATER_MISSING);
        std::fill(c.out.begin(), c.out.end(), std::nan(""));
        c.check_refused_whole();
    }
    SECTION("a word is not known")
    {
        Call c;
        const double power = 5;
        CHECK(cutwater_motor_rating_needed_rows(rows, {&power, 0}, "no such rule", "R5", {c.out.data(), 1},
                                                {c.out.data(), 1}, &c.report) == CUTWATER_UNKNOWN_WORD);
        c.check_refused_whole();
    }
    SECTION("by number")
    {
        Call c;
        const std::int32_t f = cutwater_find("npsh_available");
        const cutwater_result_column out{c.out.data(), 1};
        CHECK(cutwater_rows_at(f, rows, nullptr, nullptr, &out, &c.report) == CUTWATER_MISSING);
        c.check_refused_whole();
        c.report.refused = 0;
        CHECK(cutwater_rows_at(-1, rows, nullptr, nullptr, &out, &c.report) == CUTWATER_UNKNOWN_FUNCTION);
        c.check_refused_whole();
        std::fill(c.out.begin(), c.out.end(), 7);
        const std::vector<cutwater_column> columns(8, cutwater_column{&c.level, 0});
        const std::int32_t curve = cutwater_find("curve_value");  // its series are not given
        CHECK(cutwater_rows_at(curve, rows, columns.data(), nullptr, &out, &c.report) == CUTWATER_MISSING);
        c.check_refused_whole();
    }
    SECTION("without rows there is none to refuse")
    {
        Call c;
        CHECK(cutwater_rows_at(-1, 0, nullptr, nullptr, nullptr, &c.report) == CUTWATER_UNKNOWN_FUNCTION);
        CHECK(c.report.refused == 0);
        CHECK(c.bitmap == std::vector<std::uint8_t>(4, 0x55));
    }
}

TEST_CASE("a result takes exactly an input's column, or none of its memory", "[capi]")
{
    Call c;
    std::vector<double> both(3 * rows + 1, 1);
    double* const x = both.data();
    const auto put = [&](std::size_t count, cutwater_column in, cutwater_result_column out) {
        std::fill(both.begin(), both.end(), 1.0);
        return c.npsh(count, in, {&c.level, 0}, out);
    };
    const double expected = (1 - 0.02) * 1e5 / (998 * 9.80665) + 2 - 0.5;
    const auto right = [&](std::size_t count, const double* out, std::ptrdiff_t stride) {
        for (std::size_t r = 0; r < count; ++r)
            if (out[static_cast<std::ptrdiff_t>(r) * stride] != Approx(expected).epsilon(1e-14)) return false;
        return true;
    };
    CHECK(put(rows, {x, 1}, {x, 1}) == CUTWATER_OK);
    CHECK(right(rows, x, 1));
    CHECK(put(rows, {x, 2}, {x, 2}) == CUTWATER_OK);
    CHECK(right(rows, x, 2));
    CHECK(put(rows, {x + 2 * rows, -2}, {x + 2 * rows, -2}) == CUTWATER_OK);
    CHECK(right(rows, x + 2 * rows, -2));
    CHECK(put(rows, {x, 3}, {x + 1, 3}) == CUTWATER_OK);  // columns of one matrix
    CHECK(right(rows, x + 1, 3));
    CHECK(put(rows, {x, 1}, {x + rows, 1}) == CUTWATER_OK);
    CHECK(put(1, {x, 0}, {x, 1}) == CUTWATER_OK);

    const auto refused = [&](cutwater_column in, cutwater_result_column out) {
        CHECK(put(rows, in, out) == CUTWATER_CONTRADICTION);
        CHECK(c.report.refused == rows);
        CHECK(std::isnan(out.data[0]));
        CHECK(std::isnan(out.data[static_cast<std::ptrdiff_t>(rows - 1) * out.stride]));
        return std::string(c.report.first.name);
    };
    CHECK(refused({x, 1}, {x + 1, 1}) == "surface_pressure_bara");
    CHECK(refused({x + 1, 1}, {x, 1}) == "surface_pressure_bara");
    CHECK(refused({x, 1}, {x, 2}) == "surface_pressure_bara");
    CHECK(refused({x, 2}, {x + rows, -1}) == "surface_pressure_bara");
    CHECK(refused({x, 1}, {x + rows - 1, -1}) == "surface_pressure_bara");
    CHECK(refused({x + 5, 0}, {x, 1}) == "surface_pressure_bara");
    CHECK(told(c.report, "npsh"));
    CHECK(refused({x, 0}, {x + 1, 0}).empty());
    CHECK(told(c.report, "stride of 0"));
}

TEST_CASE("results lie apart from each other and from series", "[capi]")
{
    std::vector<double> out(4 * rows, 7);
    const double number = 1;
    cutwater_rows_report report{};
    const std::int32_t f = cutwater_find("life_cycle_cost");
    REQUIRE(cutwater_result_count(f) == 2);
    const std::vector<cutwater_column> columns(16, cutwater_column{&number, 0});
    const cutwater_result_column crossed[] = {{out.data(), 2}, {out.data() + 3, 1}};
    CHECK(cutwater_rows_at(f, rows, columns.data(), nullptr, crossed, &report) == CUTWATER_CONTRADICTION);
    CHECK(told(report, "overlaps that of"));
    const cutwater_result_column combed[] = {{out.data(), 2}, {out.data() + 3, 2}};
    CHECK(cutwater_rows_at(f, rows, columns.data(), nullptr, combed, &report) == CUTWATER_OK);

    const std::vector<double> flows{0, 50, 100};
    std::vector<double> heads{40, 38, 30};
    std::vector<double> at(3, 75);
    CHECK(cutwater_curve_value_rows(3, flows.data(), 3, heads.data(), 3, {at.data(), 1}, {heads.data(), 1}, &report) ==
          CUTWATER_CONTRADICTION);
    CHECK(report.first.argument == 1);
}

TEST_CASE("memory that runs out on another thread comes back to the caller", "[capi]")
{
    std::vector<double> x(100000, 1), out(x.size());
    cutwater_rows_report report{};
    report.threads = 4;
    const cutwater_column in{x.data(), 1};
    const cutwater_result_column to{out.data(), 1};
    for (const std::size_t where : {std::size_t{5}, x.size() / 2, x.size() - 1}) {
        x[where] = 13;
        const Given unused{};
        CHECK_THROWS_AS(call_rows(*entry<hungry_record>, x.size(), &in, &unused, nullptr, &to, &report),
                        std::bad_alloc);
        x[where] = 1;
    }
}

TEST_CASE("an array call without memory for its threads is refused whole, or does without them", "[capi]")
{
    const std::vector<double> x(100000, 1);
    const double density = 998;
    int refused = 0;
    for (long left = 0; left < 12; ++left) {
        std::vector<double> out(x.size(), 7);
        cutwater_rows_report report{};
        report.threads = 4;
        test::allocations_left = left;
        const cutwater_status status = cutwater_pressure_from_head_rows(x.size(), {x.data(), 1}, {&density, 0},
                                                                        {out.data(), 1}, &report);
        test::allocations_left = -1;
        if (status == CUTWATER_OK) {
            CHECK(out.back() == Approx(998 * 9.80665e-5).epsilon(1e-14));  // rho g h
            continue;
        }
        ++refused;
        CHECK(status == CUTWATER_OUT_OF_MEMORY);
        CHECK(report.refused == x.size());
        for (const double y : out)
            if (!std::isnan(y)) FAIL("a result of a refused call");
    }
    CHECK(refused > 0);
    CHECK(refused < 12);
}

TEST_CASE("whether strided columns overlap, against looking at every byte", "[capi]")
{
    std::mt19937 engine(7);
    const auto upto = [&](int most) { return static_cast<std::ptrdiff_t>(engine() % static_cast<unsigned>(most + 1)); };
    std::vector<double> memory(600);
    int overlapping = 0;
    for (int n = 0; n < 20000; ++n) {
        struct {
            const double* data;
            std::size_t count;
            std::ptrdiff_t stride;
        } column[2];
        std::vector<char> bytes(memory.size() * sizeof(double));
        bool met = false;
        for (auto& c : column) {
            c.count = static_cast<std::size_t>(upto(9));
            c.stride = upto(16) - 8;
            if (n % 3 == 0) c.count = column[0].count, c.stride = std::abs(column[0].stride) * (upto(1) ? 1 : -1);
            const std::ptrdiff_t first = (200 + upto(60)) * 8 + (n % 2 ? upto(7) : 0);  // aligned or not
            c.data = reinterpret_cast<const double*>(reinterpret_cast<const char*>(memory.data()) + first);
            std::vector<char> own(bytes.size());
            for (std::size_t i = 0; i < c.count; ++i)
                for (std::ptrdiff_t b = 0; b < 8; ++b)
                    own[static_cast<std::size_t>(first + static_cast<std::ptrdiff_t>(i) * c.stride * 8 + b)] = 1;
            for (std::size_t b = 0; b < bytes.size(); ++b)
                met = met || (own[b] && bytes[b]), bytes[b] = static_cast<char>(bytes[b] | own[b]);
        }
        const Place one(column[0].data, column[0].count, column[0].stride),
            other(column[1].data, column[1].count, column[1].stride);
        REQUIRE(overlap(one, other) == met);
        REQUIRE(overlap(other, one) == met);
        overlapping += met;
    }
    CHECK(overlapping > 2000);
    CHECK(overlapping < 18000);
}

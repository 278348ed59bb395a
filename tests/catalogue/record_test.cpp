// The record format itself, on records of its own: what the templates make of names, quantities, relations, series and
// words.
#include <cutwater/unit_table.hpp>

#include "catalogue/erased.hpp"
#include "catalogue/record.hpp"

#include <catch2/catch.hpp>

#include <array>
#include <cmath>
#include <limits>
#include <string>
#include <vector>

namespace cutwater::test {

enum class Way { up, down };

}  // namespace cutwater::test

template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::test::Way>{"up", "down"};

namespace cutwater::test {

/// Every kind of input, three kinds of result, steps, and a way to fail inside.
inline Outcome<std::tuple<Head, Points<Flow>, Way>> everything(Series<Flow> flows, Series<Head> heads, Density density,
                                                               Way way, Count pumps, Fraction share, Steps steps)
{
    if (share.value == 0.5)
        return NoValue{CUTWATER_NO_ANSWER,
                       "share",
                       "half of it is neither one nor the other at {0}",
                       {number_in(density, units::kgm3)}};
    Points<Flow> scaled;
    for (std::size_t i = 0; i < flows.size(); ++i) scaled.push_back(flows[i] * pumps.value);
    steps("H_1", "first head", heads.front(), units::metre);
    return std::tuple(heads.front() * share.value, scaled, way);
}

inline constexpr auto everything_record = record<&everything>(
    {.name = "every_kind",
     .meaning = "Something of every kind",
     .also = "this|that",
     .inputs = {series("flows", "Q_i", units::m3h, from(0), "flows", 2, Order::rising),
                series("heads", "H_i", units::metre, any, "heads", 1),
                input("density", "rho", units::kgm3, inside(0, 2000), "density"),
                choice<Way>("way", "w", "which way", Way::down),
                input("pumps", "n", units::count, between(1, 9), "pumps", 2),
                input("share", "s", units::fraction, from_below(0, 1), "share", 0.25)},
     .results = {output("head", "H", units::metre, "head"),
                 output_series<Flow>("scaled_flows", "Q", units::m3h, "flows"),
                 output_word<Way>("way_taken", "w", "way")},
     .equation = "H = s H_1",
     .source = "none: a record for the tests of the record format",
     .cautions = {"one", "two"},
     .example = {"[0, 1], [5, 6], 1000", "1.25, [0, 2], \"down\"", "by inspection"}},
    relation<"heads", "flows">([](Series<Head> h, Series<Flow> q) { return h.size() == q.size(); },
                               "as many heads as flows"),
    relation<"share", "way", "pumps">(
        [](Fraction s, Way w, Count n) { return w == Way::down || s.value * n.value < 1; },
        "upwards the shares must stay below 1"));

inline constexpr const FunctionInfo& f = binding::info<everything_record>;

struct Called {
    cutwater_status status;
    std::array<Result, 3> results{};
    std::vector<double> buffer = std::vector<double>(8);
    cutwater_refusal refusal{};
};

struct Heard final : StepListener {
    std::string text;
    void step(const char* symbol, const char*, double value, const char* unit) override
    {
        text += std::string(symbol) + "=" + std::to_string(value) + unit;
    }
    void broken(std::size_t relation) override { text += "relation " + std::to_string(relation); }
};

inline Called ask(std::vector<double> flows, std::vector<double> heads, double density = 1000, int way = 1,
                  double pumps = 2, double share = 0.25, std::size_t capacity = 8, StepListener* listener = nullptr)
{
    Called c;
    const Given given[] = {{0, {flows.data(), flows.size(), 1}, 0},
                           {0, {heads.data(), heads.size(), 1}, 0},
                           {density, {}, 0},
                           {0, {}, way},
                           {pumps, {}, 0},
                           {share, {}, 0}};
    c.results[1].data = c.buffer.data();
    c.results[1].capacity = capacity;
    c.status = f.call(given, c.results.data(), listener, &c.refusal);
    return c;
}

}  // namespace cutwater::test

using namespace cutwater;
using namespace cutwater::test;

TEST_CASE("A record's texts are all there without its types")
{
    STATIC_REQUIRE(binding::relation_count<everything_record> == 2);
    CHECK(std::string(f.name) == "every_kind");
    CHECK(std::string(f.type_name) == "EveryKind");
    CHECK(std::string(f.also) == "this|that");
    CHECK(f.cautions.size() == 2);
    CHECK(f.rows == nullptr);  // a series among the results
    REQUIRE(f.inputs.size() == 6);
    CHECK(std::string(f.inputs[0].full_name) == "flows_m3h");
    CHECK(std::string(f.inputs[3].full_name) == "way");
    CHECK(std::string(f.inputs[4].full_name) == "pumps");
    CHECK(f.inputs[0].kind == Kind::series);
    CHECK(f.inputs[0].rising);
    CHECK(f.inputs[0].least_points == 2);
    CHECK_FALSE(f.inputs[1].rising);
    CHECK(f.inputs[3].kind == Kind::choice);
    CHECK(f.inputs[3].has_default);
    CHECK(f.inputs[3].fallback == 1);
    CHECK(f.inputs[4].whole);
    CHECK_FALSE(f.inputs[2].has_default);
    CHECK(f.inputs[5].fallback == 0.25);
    CHECK(f.inputs[5].interval.high_open);
    REQUIRE(f.results.size() == 3);
    CHECK(std::string(f.results[1].full_name) == "scaled_flows_m3h");
    CHECK(f.results[1].kind == Kind::series);
    CHECK(f.results[2].words.size() == 2);
}

TEST_CASE("Relations know their inputs by place, the one to blame first")
{
    REQUIRE(f.relations.size() == 2);
    CHECK(std::vector<std::size_t>(f.relations[0].inputs.begin(), f.relations[0].inputs.end()) ==
          std::vector<std::size_t>{1, 0});
    CHECK(std::vector<std::size_t>(f.relations[1].inputs.begin(), f.relations[1].inputs.end()) ==
          std::vector<std::size_t>{5, 3, 4});
    const Called broken = ask({0, 1}, {5, 6, 7});
    CHECK(broken.status == CUTWATER_CONTRADICTION);
    CHECK(broken.refusal.argument == 1);
    CHECK(std::string(broken.refusal.message) == "every_kind: heads_m, a series of 3 points: as many heads as flows.");
    const Called second = ask({0, 1}, {5, 6}, 1000, 0, 9, 0.25);
    CHECK(second.status == CUTWATER_CONTRADICTION);
    CHECK(second.refusal.argument == 5);
    CHECK(second.refusal.value == 0.25);
    Heard heard;
    CHECK(ask({0, 1}, {5, 6}, 1000, 0, 9, 0.25, 8, &heard).status == CUTWATER_CONTRADICTION);
    CHECK(heard.text == "relation 1");
    CHECK(ask({0, 1}, {5, 6}, 1000, 0, 3, 0.25).status == CUTWATER_OK);
}

TEST_CASE("Values, series and words come back as the record says")
{
    Heard heard;
    const Called c = ask({0, 1}, {5, 6}, 1000, 0, 3, 0.25, 8, &heard);
    REQUIRE(c.status == CUTWATER_OK);
    CHECK(c.results[0].number == 1.25);
    CHECK(c.results[1].length == 2);
    CHECK(c.buffer[1] == Approx(3).epsilon(1e-15));
    CHECK(std::string(c.results[2].word) == "up");
    CHECK(heard.text == "H_1=5.000000m");
    const Called small = ask({0, 1, 2}, {5, 6, 7}, 1000, 1, 2, 0.25, 2);
    CHECK(small.status == CUTWATER_BUFFER_TOO_SMALL);
    CHECK(small.results[1].length == 3);
}

TEST_CASE("Everything that is not permitted is refused before the formula runs")
{
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
    CHECK(ask({0}, {5}).status == CUTWATER_BAD_SERIES);
    CHECK(ask({0, 0}, {5, 6}).refusal.element == 1);
    CHECK(ask({-1, 0}, {5, 6}).status == CUTWATER_OUT_OF_INTERVAL);
    CHECK(ask({0, nan}, {5, 6}).status == CUTWATER_NOT_FINITE);
    for (const double density : {0.0, 2000.0, -1.0, nan, std::numeric_limits<double>::infinity()}) {
        const Called c = ask({0, 1}, {5, 6}, density);
        CHECK(c.status != CUTWATER_OK);
        CHECK(c.refusal.argument == 2);
        CHECK(c.refusal.low_open == 1);
    }
    CHECK(ask({0, 1}, {5, 6}, 1000, 2).status == CUTWATER_UNKNOWN_WORD);
    CHECK(ask({0, 1}, {5, 6}, 1000, 1, 2.5).status == CUTWATER_OUT_OF_INTERVAL);  // half a pump
    CHECK(ask({0, 1}, {5, 6}, 1000, 1, 2, 1).status == CUTWATER_OUT_OF_INTERVAL);
    CHECK(ask({0, 1}, {5, 6}, 1000, 1, 2, 0).status == CUTWATER_OK);
}

TEST_CASE("A formula that fails inside says why, with its numbers put in and its input blamed")
{
    const Called c = ask({0, 1}, {5, 6}, 900, 1, 2, 0.5);
    CHECK(c.status == CUTWATER_NO_ANSWER);
    CHECK(c.refusal.argument == 5);
    CHECK(std::string(c.refusal.message) == "every_kind: half of it is neither one nor the other at 900 kg/m3.");
}

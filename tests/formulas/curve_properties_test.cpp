// What must hold of curves whatever their numbers: pumps combined with themselves, scaled there and back, and unlike
// pumps that share a system. By name through the flat C API.
#include <cutwater/cutwater.h>

#include <catch2/catch.hpp>

#include <cmath>
#include <limits>
#include <random>
#include <string>
#include <variant>
#include <vector>

namespace {

using Numbers = std::vector<double>;
using Given = std::variant<double, const char*, Numbers>;

struct Answer {
    cutwater_status status;
    cutwater_refusal refusal{};
    std::vector<cutwater_result> results;
    std::vector<Numbers> series;
    double number(std::size_t i = 0) const { return results[i].number; }
    std::string word(std::size_t i) const { return results[i].text; }
};

Answer call(const char* function, const std::vector<Given>& given, std::size_t results = 1)
{
    std::vector<cutwater_value> inputs;
    for (const Given& g : given) {
        cutwater_value value{CUTWATER_NUMBER, 0, nullptr, nullptr, 0, 1};
        if (const double* number = std::get_if<double>(&g)) value.number = *number;
        if (const auto* text = std::get_if<const char*>(&g)) value.kind = CUTWATER_TEXT, value.text = *text;
        if (const Numbers* list = std::get_if<Numbers>(&g))
            value.kind = CUTWATER_SERIES, value.series = list->data(), value.length = list->size();
        inputs.push_back(value);
    }
    Answer answer;
    answer.results.resize(results);
    answer.series.assign(results, Numbers(200));
    for (std::size_t i = 0; i < results; ++i) {
        answer.results[i] = {};
        answer.results[i].series = answer.series[i].data();
        answer.results[i].capacity = answer.series[i].size();
    }
    answer.status = static_cast<cutwater_status>(
        cutwater_call(function, inputs.data(), inputs.size(), answer.results.data(), results, &answer.refusal));
    for (std::size_t i = 0; i < results; ++i)
        if (answer.results[i].kind == CUTWATER_SERIES) answer.series[i].resize(answer.results[i].length);
    return answer;
}

Answer answered(const char* function, const std::vector<Given>& given, std::size_t results = 1)
{
    Answer answer = call(function, given, results);
    INFO(function << ": " << answer.refusal.message);
    REQUIRE(answer.status == CUTWATER_OK);
    return answer;
}

struct Pump {
    Numbers flows, heads;
    double shutoff() const { return heads.front(); }
    double head_at(double flow) const { return answered("curve_head", {flows, heads, flow}).number(); }
};

const Pump strong{{0, 20, 40, 60, 80, 100, 120}, {62, 61.5, 60, 57, 52, 44, 33}};
const Pump middle{{0, 15, 30, 45, 60, 75}, {54, 53, 50.5, 46, 39, 29}};
const Pump weak{{0, 10, 25, 40, 50}, {46, 45, 41, 33, 25}};
const Pump drooping{{0, 20, 40, 60, 80, 100, 120}, {55, 57, 58, 57, 53, 46, 36}};

Pump random_falling(std::mt19937& random)
{
    std::uniform_real_distribution<double> step(3, 25), fall(0.2, 9);
    Pump pump{{0}, {std::uniform_real_distribution<double>(30, 80)(random)}};
    const int points = std::uniform_int_distribution<int>(2, 9)(random);
    for (int i = 1; i < points; ++i) {
        pump.flows.push_back(pump.flows.back() + step(random));
        pump.heads.push_back(pump.heads.back() - fall(random));
    }
    return pump;
}

Pump pair_of(const Answer& answer) { return {answer.series[0], answer.series[1]}; }

void check_same(const Pump& a, const Pump& b, double relative)
{
    REQUIRE(a.flows.size() == b.flows.size());
    for (std::size_t i = 0; i < a.flows.size(); ++i) {
        CHECK(a.flows[i] == Approx(b.flows[i]).epsilon(relative).margin(1e-13));
        CHECK(a.heads[i] == Approx(b.heads[i]).epsilon(relative).margin(1e-13));
    }
}

double share_of(const Pump& pump, double head)
{
    return answered("flow_at_head", {pump.flows, pump.heads, head}, 2).number();
}

/// A share lies on the pump's own curve, or is nothing above its closed-valve head.
void check_share(const Pump& pump, double share, double head)
{
    CHECK(share >= 0);
    if (head >= pump.shutoff())
        CHECK(share == 0);
    else
        CHECK(pump.head_at(share) == Approx(head).epsilon(1e-11));
    CHECK(share_of(pump, head) == Approx(share).epsilon(1e-9).margin(1e-9));
}

}  // namespace

TEST_CASE("a pump in parallel with itself doubles the flow at each head", "[curves]")
{
    std::mt19937 random(5);
    for (int round = 0; round < 60; ++round) {
        const Pump pump = random_falling(random);
        const Pump both = pair_of(
            answered("two_curves_in_parallel", {pump.flows, pump.heads, pump.flows, pump.heads}, 2));
        const Pump doubled = pair_of(answered("curve_in_parallel", {pump.flows, pump.heads, 2.0}, 2));
        check_same(both, doubled, 1e-13);
        for (int k = 0; k <= 20; ++k) {
            const double head = pump.heads.back() + (pump.heads.front() - pump.heads.back()) * k / 20;
            CHECK(share_of(both, head) == Approx(2 * share_of(pump, head)).epsilon(1e-10).margin(1e-9));
        }
    }
}

TEST_CASE("a pump in series with itself doubles the head at each flow", "[curves]")
{
    std::mt19937 random(6);
    for (int round = 0; round < 60; ++round) {
        const Pump pump = random_falling(random);
        const Pump both = pair_of(
            answered("two_curves_in_series", {pump.flows, pump.heads, pump.flows, pump.heads}, 2));
        check_same(both, pair_of(answered("curve_in_series", {pump.flows, pump.heads, 2.0}, 2)), 1e-14);
        for (int k = 0; k <= 20; ++k) {
            const double flow = pump.flows.back() * k / 20;
            CHECK(both.head_at(flow) == Approx(2 * pump.head_at(flow)).epsilon(1e-12));
        }
    }
}

TEST_CASE("speed and trim there and back return the curve", "[curves]")
{
    for (const Pump& pump : {strong, middle, weak, drooping})
        for (const double ratio : {0.5, 0.7013, 1.0, 1.31, 2.0}) {
            const Pump there = pair_of(answered("curve_at_speed", {pump.flows, pump.heads, 1450.0, 1450.0 * ratio}, 2));
            check_same(pair_of(answered("curve_at_speed", {there.flows, there.heads, 1450.0 * ratio, 1450.0}, 2)), pump,
                       1e-14);
        }
    // A cut cannot be undone, so the way back is the search: the diameter for a duty on the cut curve is the cut one.
    for (const Pump& pump : {strong, middle, weak})
        for (const char* law : {"parabola", "line"})
            for (const double cut : {250.0, 237.5, 201.3, 175.1}) {
                const Pump trimmed = pair_of(answered("curve_at_trim", {pump.flows, pump.heads, 250.0, cut, law}, 2));
                const double flow = 0.6 * trimmed.flows.back();
                const Answer back = answered("trim_for_duty",
                                             {pump.flows, pump.heads, 250.0, flow, trimmed.head_at(flow), law});
                CHECK(back.number() == Approx(cut).epsilon(1e-11));
            }
}

TEST_CASE("the duty at reduced speed lies on both curves", "[curves]")
{
    const double static_head = 18, resistance = 0.0025;
    for (const Pump& pump : {strong, drooping})
        for (const double flow : {35.0, 50.0, 65.0, 80.0}) {
            const double head = static_head + resistance * flow * flow;
            const double speed = answered("speed_for_duty", {pump.flows, pump.heads, 2950.0, flow, head}).number();
            CHECK(speed < 2950);
            const Pump slow = pair_of(answered("curve_at_speed", {pump.flows, pump.heads, 2950.0, speed}, 2));
            CHECK(slow.head_at(flow) == Approx(head).epsilon(1e-11));
            CHECK(answered("duty_flow", {slow.flows, slow.heads, static_head, resistance}).number() ==
                  Approx(flow).epsilon(1e-10));
            CHECK(answered("duty_head", {slow.flows, slow.heads, static_head, resistance}).number() ==
                  Approx(head).epsilon(1e-10));
        }
}

TEST_CASE("three unlike pumps in parallel share the system's flow", "[curves]")
{
    struct System {
        double static_head, resistance;
        const char* delivering;
    };
    for (const System& system : {System{20, 0.0006, "all pumps"}, System{40, 0.0012, "pumps 1 and 2"},
                                 System{0, 0.03, "pump 1 alone"}, System{53, 0.0008, "pump 1 alone"}}) {
        const Answer all = answered("flow_balance_of_three",
                                    {strong.flows, strong.heads, middle.flows, middle.heads, weak.flows, weak.heads,
                                     system.static_head, system.resistance},
                                    6);
        const double flow = all.number(0), head = all.number(1);
        CHECK(all.word(5) == system.delivering);
        CHECK(all.number(2) + all.number(3) + all.number(4) == Approx(flow).epsilon(1e-14));
        CHECK(head == Approx(system.static_head + system.resistance * flow * flow).epsilon(1e-12));
        check_share(strong, all.number(2), head);
        check_share(middle, all.number(3), head);
        check_share(weak, all.number(4), head);
        // Whichever order they are named in.
        const Answer turned = answered("flow_balance_of_three",
                                       {weak.flows, weak.heads, strong.flows, strong.heads, middle.flows, middle.heads,
                                        system.static_head, system.resistance},
                                       6);
        CHECK(turned.number(0) == Approx(flow).epsilon(1e-12));
        CHECK(turned.number(2) == Approx(all.number(4)).epsilon(1e-10).margin(1e-10));
    }
    const Answer word = answered("flow_at_head", {weak.flows, weak.heads, weak.shutoff()}, 2);
    CHECK(word.word(1) == "pushed back");
    CHECK(answered("flow_at_head", {weak.flows, weak.heads, 45.999}, 2).word(1) == "delivering");
}

TEST_CASE("a third pump that never delivers leaves the balance of two", "[curves]")
{
    const Pump feeble{{0, 30}, {20, 10}};
    const Answer two = answered("flow_balance", {strong.flows, strong.heads, middle.flows, middle.heads, 30.0, 0.0008},
                                5);
    const Answer three = answered(
        "flow_balance_of_three",
        {strong.flows, strong.heads, middle.flows, middle.heads, feeble.flows, feeble.heads, 30.0, 0.0008}, 6);
    for (std::size_t i = 0; i < 4; ++i) CHECK(three.number(i) == Approx(two.number(i)).epsilon(1e-12));
    CHECK(three.number(4) == 0);
    CHECK(three.word(5) == "pumps 1 and 2");
}

TEST_CASE("curves combined pair by pair are exact at their points, kinks among them", "[curves]")
{
    const Pump two = pair_of(
        answered("two_curves_in_parallel", {strong.flows, strong.heads, middle.flows, middle.heads}, 2));
    const Pump three = pair_of(answered("two_curves_in_parallel", {two.flows, two.heads, weak.flows, weak.heads}, 2));
    bool middle_begins = false, weak_begins = false;
    for (std::size_t i = 0; i < three.heads.size(); ++i) {
        const double head = three.heads[i];
        middle_begins = middle_begins || head == middle.shutoff();
        weak_begins = weak_begins || head == weak.shutoff();
        if (i) CHECK(three.heads[i] < three.heads[i - 1]);
        if (i) CHECK(three.flows[i] > three.flows[i - 1]);
        // at heads that the weak pump alone lists, the first pair is read between its points
        CHECK(three.flows[i] ==
              Approx(share_of(strong, head) + share_of(middle, head) + share_of(weak, head)).epsilon(5e-3));
        if (head >= middle.shutoff())
            CHECK(three.flows[i] == Approx(share_of(strong, head)).epsilon(1e-11).margin(1e-11));
    }
    CHECK(middle_begins);
    CHECK(weak_begins);
    const double head = answered("duty_head", {three.flows, three.heads, 20.0, 0.0006}).number();
    const Answer exact = answered(
        "flow_balance_of_three",
        {strong.flows, strong.heads, middle.flows, middle.heads, weak.flows, weak.heads, 20.0, 0.0006}, 6);
    CHECK(head == Approx(exact.number(1)).epsilon(2e-3));
}

TEST_CASE("duties that do not exist or are two are told apart", "[curves]")
{
    const auto refused = [](const Pump& pump, double static_head, double resistance) {
        return call("duty_flow", {pump.flows, pump.heads, static_head, resistance});
    };
    CHECK(refused(strong, 63, 0.001).status == CUTWATER_NO_ANSWER);
    CHECK(std::string(refused(strong, 63, 0.001).refusal.message).find("too small") != std::string::npos);
    CHECK(refused(strong, 10, 0.0001).status == CUTWATER_NO_ANSWER);
    CHECK(std::string(refused(strong, 10, 0.0001).refusal.message).find("too short") != std::string::npos);
    CHECK(refused(drooping, 56, 0).status == CUTWATER_SEVERAL_ANSWERS);
    CHECK(std::string(refused(drooping, 56, 0).refusal.message).find("twice") != std::string::npos);
    CHECK(refused(drooping, 54, 0).status == CUTWATER_OK);
    CHECK(call("flow_balance_of_three",
               {drooping.flows, drooping.heads, middle.flows, middle.heads, weak.flows, weak.heads, 20.0, 0.0006}, 6)
              .status == CUTWATER_CONTRADICTION);
}

TEST_CASE("the ends of what curves permit", "[curves]")
{
    constexpr double infinite = std::numeric_limits<double>::infinity();
    constexpr double nothing = std::numeric_limits<double>::quiet_NaN();
    for (const double head : {infinite, -infinite, nothing})
        CHECK(call("flow_at_head", {weak.flows, weak.heads, head}, 2).status == CUTWATER_NOT_FINITE);
    CHECK(answered("flow_at_head", {weak.flows, weak.heads, 25.0}, 2).number() == 50);
    CHECK(answered("flow_at_head", {weak.flows, weak.heads, std::nextafter(25.0, 0.0)}, 2).number() ==
          50);  // the end but for its last bit
    CHECK(call("flow_at_head", {weak.flows, weak.heads, 25 * (1 - 1e-13)}, 2).status == CUTWATER_OUT_OF_INTERVAL);
    CHECK(answered("flow_at_head", {weak.flows, weak.heads, 46.0}, 2).number() == 0);
    CHECK(answered("flow_at_head", {weak.flows, weak.heads, 20000.0}, 2).number() == 0);
    CHECK(call("flow_at_head", {weak.flows, weak.heads, 20000.1}, 2).status == CUTWATER_OUT_OF_INTERVAL);
    // no delivery at the highest closed-valve head, a little below it a little delivery
    CHECK(call("flow_balance", {strong.flows, strong.heads, middle.flows, middle.heads, 62.0, 0.001}, 5).status ==
          CUTWATER_NO_ANSWER);
    const Answer little = answered("flow_balance",
                                   {strong.flows, strong.heads, middle.flows, middle.heads, 61.999, 0.001}, 5);
    CHECK(little.number() > 0);
    CHECK(little.number() < 2);
    CHECK(little.word(4) == "pump 1 alone");
    for (const double below : {1e-6, 1e-12, 1e-14}) {
        const Answer hardly = answered(
            "flow_balance_of_three",
            {strong.flows, strong.heads, middle.flows, middle.heads, weak.flows, weak.heads, 62 - 62 * below, 0.001},
            6);
        CHECK(hardly.number() >= 0);
        CHECK(hardly.word(5) == "pump 1 alone");
    }
    CHECK(answered("curve_in_parallel", {weak.flows, weak.heads, 1.0}, 2).series[0] == weak.flows);
    CHECK(call("curve_in_parallel", {weak.flows, weak.heads, 101.0}, 2).status == CUTWATER_OUT_OF_INTERVAL);
    CHECK(answered("curve_at_speed", {weak.flows, weak.heads, 1000.0, 250.0}, 2).status == CUTWATER_OK);
    CHECK(call("curve_at_speed", {weak.flows, weak.heads, 1000.0, 249.0}, 2).status == CUTWATER_CONTRADICTION);
    CHECK(answered("curve_at_trim", {weak.flows, weak.heads, 250.0, 175.0}, 2).status == CUTWATER_OK);
    CHECK(call("curve_at_trim", {weak.flows, weak.heads, 250.0, 174.9}, 2).status == CUTWATER_CONTRADICTION);
}

TEST_CASE("speed control against static head takes more than the cube law says", "[curves]")
{
    const Numbers efficiencies{0, 0.28, 0.48, 0.61, 0.68, 0.69, 0.62};
    const auto energy = [&](double static_head, double resistance, double flow, const char* control) {
        return answered("duty_profile_energy",
                        {strong.flows, strong.heads, efficiencies, static_head, resistance, Numbers{flow},
                         Numbers{1000}, control, 22.0, 1.0, 998.2, 1.0},
                        5)
            .number();
    };
    const double duty = 90, head = strong.head_at(duty);
    for (const double share : {0.0, 0.2, 0.5, 0.8}) {
        const double static_head = share * head, resistance = (1 - share) * head / (duty * duty);
        const double full = energy(static_head, resistance, duty, "throttling");
        CHECK(energy(static_head, resistance, duty, "speed") == Approx(full).epsilon(1e-8));
        CHECK(energy(static_head, resistance, duty, "on-off") == Approx(full).epsilon(1e-8));
        const double slow = energy(static_head, resistance, 60, "speed");
        const double cube = full * std::pow(60.0 / duty, 3);
        if (share == 0)
            CHECK(slow == Approx(cube).epsilon(1e-8));
        else
            CHECK(slow > 1.1 * cube);
        CHECK(energy(static_head, resistance, 60, "throttling") > slow);
        // emptying and filling a tank at the duty takes its share of the time, no more
        CHECK(energy(static_head, resistance, 60, "on-off") == Approx(full * 60 / duty).epsilon(1e-8));
        const Answer law = call("cube_law_power", {full / 1000, duty, 60.0, static_head});
        CHECK(law.status == (share == 0 ? CUTWATER_OK : CUTWATER_CONTRADICTION));
    }
}

// What formulas find in a fixed number of steps satisfies the equation that its record states, over random inputs of
// every permitted size. The equations are written here as their sources have them, in long double.
#include <cutwater/cutwater.h>

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>
#include <string>

namespace {

using Long = long double;

constexpr Long g = 9.80665L, pi = std::numbers::pi_v<Long>;

class Random {
public:
    explicit Random(unsigned seed) : engine_(seed) {}
    double even(double low, double high) { return std::uniform_real_distribution<>(low, high)(engine_); }
    double by_size(double low, double high) { return std::exp(even(std::log(low), std::log(high))); }
    bool one_in(int n) { return std::uniform_int_distribution<>(1, n)(engine_) == 1; }

private:
    std::mt19937 engine_;
};

Long apart(Long a, Long b) { return std::abs(a - b) / std::max(std::abs(a), std::abs(b)); }

}  // namespace

TEST_CASE("a ring's gap uses up the head", "[iterations]")
{
    Random random(11);
    int answered = 0;
    Long worst = 0;
    for (int i = 0; i < 100000; ++i) {
        const double head = random.by_size(1e-6, 1e4), ring = random.by_size(1, 1e4), gap = random.by_size(1e-3, 20);
        const double length = random.one_in(10) ? 0 : random.by_size(1e-2, 1e3), speed = random.by_size(1e-3, 1e5);
        const double viscosity = random.by_size(0.01, 1e4), end_loss = random.even(0.5, 10);
        double leakage, velocity, friction;
        if (cutwater_ring_clearance_leakage(head, ring, gap, length, speed, viscosity, end_loss, 0, &leakage, &velocity,
                                            &friction, nullptr) != CUTWATER_OK)
            continue;
        ++answered;
        const Long v = velocity, s = gap * 1e-3L, u = pi * ring * 1e-3L * speed / 60;
        const Long part = 7 * u / (16 * v);
        const Long factor = 0.316L * std::pow(2 * s * v / (viscosity * 1e-6L), -0.25L) *
                            std::pow(1 + part * part, 0.375L);
        INFO(head << ", " << ring << ", " << gap << ", " << length << ", " << speed << ", " << viscosity << ", "
                  << end_loss);
        worst = std::max(worst, apart(v * v * (end_loss + factor * length * 1e-3L / (2 * s)), 2 * g * head));
        CHECK(apart(factor, friction) < 1e-14L);
        CHECK(apart(pi * ring * 1e-3L * s * v * 3600, leakage) < 1e-14L);
    }
    CHECK(worst < 1e-14L);
    CHECK(answered > 20000);
}

namespace {

struct Plate {
    Long b, pipe;  // m

    /// ISO 5167-2:2003, 5.3.2.1, tappings at D and D/2: L1 = 1, L2' = 0.47.
    Long coefficient(Long re) const
    {
        const Long a = std::pow(19000 * b / re, 0.8L), m = 2 * 0.47L / (1 - b), b4 = b * b * b * b;
        Long c = 0.5961L + 0.0261L * b * b - 0.216L * b4 * b4 + 0.000521L * std::pow(1e6L * b / re, 0.7L) +
                 (0.0188L + 0.0063L * a) * std::pow(b, 3.5L) * std::pow(1e6L / re, 0.3L) +
                 (0.043L + 0.080L * std::exp(-10.0L) - 0.123L * std::exp(-7.0L)) * (1 - 0.11L * a) * b4 / (1 - b4) -
                 0.031L * (m - 0.8L * std::pow(m, 1.1L)) * std::pow(b, 1.3L);
        if (pipe < 0.07112L) c += 0.011L * (0.75L - b) * (2.8L - pipe / 0.0254L);
        return c;
    }
    /// Lost for good over the difference at the tappings: 5.4.
    Long loss_ratio(Long c) const
    {
        const Long r = std::sqrt(1 - b * b * b * b * (1 - c * c));
        return (r - c * b * b) / (r + c * b * b);
    }
    Long flow(Long c, Long difference, Long density) const
    {
        const Long d = b * pipe;
        return c / std::sqrt(1 - b * b * b * b) * pi / 4 * d * d * std::sqrt(2 * difference / density);
    }
};

struct Bypass {
    double bore, pipe, upstream, downstream, vapour, density, viscosity, given;

    explicit Bypass(Random& random)
        : pipe(random.by_size(50, 1000)), upstream(random.by_size(0.5, 1000)), density(random.even(300, 3000)),
          viscosity(random.by_size(0.01, 1000)), given(random.one_in(4) ? random.even(0.5, 0.99) : 0)
    {
        bore = pipe * random.even(0.1, 0.75);
        downstream = upstream * (1 - random.by_size(0.01, 0.9999));  // a smaller difference has fewer digits
        vapour = std::min(300.0, upstream * random.even(0, 0.99));
    }
};

}  // namespace

TEST_CASE("a plate's coefficient and its flow agree", "[iterations]")
{
    Random random(12);
    int answered = 0, held = 0;
    Long worst_flow = 0, worst_coefficient = 0, worst_limit = 0;
    for (int i = 0; i < 100000; ++i) {
        const Bypass in(random);
        double flow, coefficient, reynolds, limit;
        const char* choking;
        if (cutwater_bypass_flow(in.bore, in.pipe, in.upstream, in.downstream, in.vapour, in.density, in.viscosity,
                                 in.given, &flow, &coefficient, &reynolds, &limit, &choking, nullptr) != CUTWATER_OK)
            continue;
        ++answered;
        const Plate plate{static_cast<Long>(in.bore) / in.pipe, in.pipe * 1e-3L};
        const Long lost = static_cast<Long>(in.upstream) - in.downstream, c = coefficient;
        const Long most = static_cast<Long>(in.upstream) - in.vapour, end = plate.loss_ratio(c) * most;
        const bool choked = lost >= end;
        const Long q = plate.flow(c, 1e5L * (choked ? most : lost / plate.loss_ratio(c)), in.density);
        const Long re = 4 * q / (pi * plate.pipe * in.viscosity * 1e-6L);
        held += choked;
        worst_flow = std::max({worst_flow, apart(q * 3600, flow), apart(re, reynolds)});
        worst_limit = std::max(worst_limit, apart(end, limit));
        worst_coefficient = std::max(worst_coefficient, apart(in.given > 0 ? in.given : plate.coefficient(re), c));
        if (apart(lost, end) > 1e-12L) CHECK((choking == std::string("choked")) == choked);
    }
    CHECK(worst_flow < 2e-14L);
    CHECK(worst_limit < 2e-14L);
    CHECK(worst_coefficient < 2e-14L);
    CHECK(answered > 20000);
    CHECK(held > 2000);
}

TEST_CASE("the bore that is found passes the flow", "[iterations]")
{
    Random random(13);
    int answered = 0;
    double worst = 0;
    for (int i = 0; i < 100000; ++i) {
        const Bypass in(random);
        const double wanted = random.by_size(0.1, 30000);
        double bore, flow, coefficient, reynolds, limit;
        const char* choking;
        const char* again;
        if (cutwater_bypass_orifice_bore(wanted, in.pipe, in.upstream, in.downstream, in.vapour, in.density,
                                         in.viscosity, in.given, &bore, &choking, nullptr) != CUTWATER_OK)
            continue;
        INFO(wanted << ", " << in.pipe << ", " << bore);
        CHECK(cutwater_bypass_flow(bore, in.pipe, in.upstream, in.downstream, in.vapour, in.density, in.viscosity,
                                   in.given, &flow, &coefficient, &reynolds, &limit, &again, nullptr) == CUTWATER_OK);
        worst = std::max(worst, std::abs(flow / wanted - 1));
        ++answered;
    }
    CHECK(worst < 1e-13);
    CHECK(answered > 10000);
}

TEST_CASE("a bearing housing gives off what its bearings make", "[iterations]")
{
    Random random(14);
    int answered = 0;
    Long worst = 0, worst_viscosity = 0;
    for (int i = 0; i < 30000; ++i) {
        const double speed = random.by_size(10, 1e5), mean = random.by_size(5, 1000), factor = random.by_size(0.1, 100);
        const double torque = random.one_in(3) ? 0 : random.by_size(1, 1e6);
        const double other = random.one_in(2) ? 0 : random.by_size(1, 1e4) * (random.one_in(3) ? -1 : 1);
        const double first = random.even(-20, 100), second = random.even(first + 10, 200);
        const double thin = random.by_size(1, 500), thick = thin * random.by_size(1.01, 200);
        const double area = random.by_size(0.01, 100), transfer = random.by_size(1, 1000);
        const double ambient = random.even(-40, 60);
        double temperature, viscosity, heat, on_line;
        if (cutwater_bearing_temperature(speed, mean, factor, torque, other, first, thick, second, thin, area, transfer,
                                         ambient, &temperature, &viscosity, &heat, nullptr) != CUTWATER_OK ||
            temperature < -70)  // where viscosity_at_temperature ends
            continue;
        INFO(speed << ", " << mean << ", " << factor << ", " << torque << ", " << other << ", " << first << ", "
                   << thick << ", " << second << ", " << thin << ", " << area << ", " << transfer << ", " << ambient);
        REQUIRE(cutwater_viscosity_at_temperature(first, thick, second, thin, temperature, &on_line, nullptr) ==
                CUTWATER_OK);
        worst_viscosity = std::max(worst_viscosity, apart(on_line, viscosity));
        const Long fast = static_cast<Long>(viscosity) * speed, cube = static_cast<Long>(mean) * mean * mean;
        const Long lubricant = factor * cube * (fast >= 2000 ? 1e-7L * std::pow(fast, 2.0L / 3) : 160e-7L);
        const Long made = (lubricant + torque) * 1e-3L * (2 * pi * speed / 60) + other;
        CHECK(apart(made, heat) < 1e-12L * (1 + std::abs(other / made)));
        // As a temperature: what the two differ by, over what gives off the heat.
        worst = std::max(worst, std::abs((made / (static_cast<Long>(area) * transfer) + ambient - temperature) /
                                         (temperature + 273.15L)));
        ++answered;
    }
    CHECK(worst < 1e-11L);
    CHECK(worst_viscosity < 1e-11L);
    CHECK(answered > 5000);
}

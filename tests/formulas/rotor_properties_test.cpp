// What must hold of rotors and bearings whatever their numbers: reciprocity, bounds, meeting branches, scaling.
#include "formulas/bearings/records.hpp"
#include "formulas/rotor/records.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <random>
#include <vector>

using namespace cutwater;
using namespace cutwater::formulas;

namespace {

using Numbers = std::vector<double>;

template <class Q>
Series<Q> series_of(const Numbers& numbers, Unit<Q> unit)
{
    return {RawSeries{numbers.data(), numbers.size(), 1}, *unit.info};
}

/// A stepped shaft of any form on springs.
struct AnyShaft {
    Numbers lengths, diameters;
    double total = 0, first = 0, second = 0, spring = 0, shear = 0;

    explicit AnyShaft(std::mt19937& random)
    {
        const auto pick = [&](double low, double high) { return std::uniform_real_distribution<>(low, high)(random); };
        const int sections = std::uniform_int_distribution<>(1, 6)(random);
        for (int i = 0; i < sections; ++i) {
            lengths.push_back(pick(20, 300));
            diameters.push_back(pick(15, 90));
            total += lengths.back();
        }
        first = pick(0, 0.6) * total;
        second = first + pick(0.2, 1) * (total - first);
        spring = pick(1e4, 1e6);
        shear = pick(70, 90);
    }

    double deflection(double force_at, double at) const
    {
        const Numbers force{1000}, place{force_at};
        const auto y = shaft_deflection(series_of(force, units::newton), series_of(place, units::mm),
                                        series_of(lengths, units::mm), series_of(diameters, units::mm),
                                        units::mm(first), units::mm(second), units::mm(at), units::GPa(205),
                                        units::Nmm_stiff(spring), units::Nmm_stiff(2 * spring), units::GPa(shear));
        return units::mm.in(std::get<0>(y));
    }
};

}  // namespace

TEST_CASE("a shaft bends at one place by a force at another as the other way round")
{
    std::mt19937 random(7);
    for (int i = 0; i < 200; ++i) {
        const AnyShaft shaft(random);
        std::uniform_real_distribution<> along(0, shaft.total);
        const double here = along(random), there = along(random);
        const double one = shaft.deflection(here, there), other = shaft.deflection(there, here);
        CHECK(one == Approx(other).epsilon(1e-10).margin(1e-12));
        CHECK(shaft.deflection(here, here) > 0);
        // Betti and Maxwell: the work of two forces is positive whatever their signs.
        CHECK(one * one <= shaft.deflection(here, here) * shaft.deflection(there, there) * (1 + 1e-9));
    }
}

TEST_CASE("cutting a section in two changes nothing")
{
    std::mt19937 random(11);
    for (int i = 0; i < 100; ++i) {
        const AnyShaft whole(random);
        AnyShaft cut = whole;
        cut.lengths.insert(cut.lengths.begin(), 0.3 * whole.lengths[0]);
        cut.lengths[1] *= 0.7;
        cut.diameters.insert(cut.diameters.begin(), whole.diameters[0]);
        CHECK(cut.deflection(0, 0.4 * whole.total) ==
              Approx(whole.deflection(0, 0.4 * whole.total)).epsilon(1e-9).margin(1e-12));
    }
}

TEST_CASE("a shaft twice as large everywhere bends half as much, on springs twice as stiff")
{
    std::mt19937 random(13);
    for (int i = 0; i < 100; ++i) {
        const AnyShaft small(random);
        AnyShaft large = small;
        for (double& l : large.lengths) l *= 2;
        for (double& d : large.diameters) d *= 2;
        large.total *= 2, large.first *= 2, large.second *= 2, large.spring *= 2;
        CHECK(large.deflection(0, 0.8 * small.total) ==
              Approx(0.5 * small.deflection(0, 0.4 * small.total)).epsilon(1e-9).margin(1e-12));
    }
}

TEST_CASE("Dunkerley's critical speed is never above Rayleigh's")
{
    std::mt19937 random(17);
    for (int i = 0; i < 200; ++i) {
        const AnyShaft shaft(random);
        std::uniform_real_distribution<> along(0, shaft.total), kilograms(0.5, 60);
        const Numbers masses{kilograms(random), kilograms(random)}, places{along(random), along(random)};
        const auto bounds = first_critical_speed(
            series_of(masses, units::kg), series_of(places, units::mm), series_of(shaft.lengths, units::mm),
            series_of(shaft.diameters, units::mm), units::mm(shaft.first), units::mm(shaft.second), units::kgm3(7850),
            units::GPa(205), units::Nmm_stiff(shaft.spring), units::Nmm_stiff(shaft.spring), units::GPa(0));
        REQUIRE(bounds);
        CHECK(units::rpm.in(std::get<0>(*bounds)) > 0);
        CHECK(std::get<0>(*bounds) <= std::get<1>(*bounds));
    }
}

TEST_CASE("the printed factors of a pair are those of a single row, scaled, and the branches meet")
{
    using namespace bearings;
    for (std::size_t i = 0; i < contact.size(); ++i) {
        CHECK(pair_x[i] == Approx(1.63 * single_x[i]).margin(0.006));
        CHECK(pair_y[i] == Approx(1.63 * single_y[i]).margin(0.015));
        CHECK(1 + pair_y_low[i] * contact_e[i] == Approx(pair_x[i] + pair_y[i] * contact_e[i]).margin(0.015));
        CHECK(single_x[i] + single_y[i] * contact_e[i] == Approx(1).margin(0.007));
    }
    for (std::size_t i = 0; i < groove_e.size(); ++i)
        CHECK(0.56 + groove_y[i] * groove_e[i] == Approx(1).margin(0.007));
}

TEST_CASE("an equivalent load is never below the radial load and never falls as the axial load grows")
{
    std::mt19937 random(19);
    std::uniform_real_distribution<> load(0, 5000), angle(20, 45);
    for (int i = 0; i < 2000; ++i) {
        const Force radial = units::newton(load(random)), axial = units::newton(load(random));
        const Angle alpha = units::deg(angle(random));
        for (const BearingSet rows : {BearingSet::single, BearingSet::pair}) {
            const Force p = angular_contact_equivalent_load(radial, axial, alpha, rows, {});
            CHECK(p >= radial);
            // The print's rounding lets the branches miss each other by under 1 %.
            CHECK(angular_contact_equivalent_load(radial, 1.1 * axial, alpha, rows, {}) >= 0.99 * p);
        }
        const auto groove = deep_groove_equivalent_load(radial, axial, units::newton(20000), Ratio(13), {});
        REQUIRE(groove);
        CHECK(*groove >= radial);
    }
}

TEST_CASE("thicker oil and cleaner oil never shorten the life, and the bands meet")
{
    for (double x = 0.01; x < 1; x += 0.01) {
        double before = 0;
        for (double kappa = 0.1; kappa < 5; kappa *= 1.01) {
            const double now = bearings::life_modification(kappa, x);
            CHECK(now >= before * (1 - 2e-3));  // the standard's rounded constants miss each other a little
            CHECK(now >= 0.1);
            CHECK(now <= 50);
            CHECK(bearings::life_modification(kappa, std::min(1.0, 1.1 * x)) >= now);
            before = now;
        }
        for (const double end : {0.4, 1.0}) {
            const double below = bearings::life_modification(end * (1 - 1e-12), x),
                         above = bearings::life_modification(end, x);
            CHECK(below == Approx(above).epsilon(x < 0.5 ? 5e-3 : 0.05));
        }
    }
}

TEST_CASE("back vanes without height are a smooth shroud, and full ones leave the least pressure")
{
    const auto side = [](double height) {
        return back_force_with_vanes(units::bar(4), units::kgm3(1000), units::rpm(2900), units::mm(220), units::mm(200),
                                     units::mm(70), units::mm(40), units::mm(height), units::mm(6), Ratio(0.5), {});
    };
    const Force smooth = shroud_force(units::bar(4), units::kgm3(1000), units::rpm(2900), units::mm(220), units::mm(40),
                                      Ratio(0.5));
    CHECK(std::get<0>(side(0)).value() == Approx(smooth.value()).epsilon(1e-12));
    for (double height = 1; height <= 6; height += 1) {
        CHECK(std::get<0>(side(height)) < std::get<0>(side(height - 1)));
        CHECK(std::get<1>(side(height)) < std::get<1>(side(height - 1)));
    }
    // Forces grow with density and with the square of speed times diameter.
    const Force twice = back_vane_relief(units::kgm3(2000), units::rpm(2900), units::mm(200), units::mm(60),
                                         units::mm(4), units::mm(5), Ratio(0.5));
    const Force fast = back_vane_relief(units::kgm3(1000), units::rpm(5800), units::mm(200), units::mm(60),
                                        units::mm(4), units::mm(5), Ratio(0.5));
    const Force once = back_vane_relief(units::kgm3(1000), units::rpm(2900), units::mm(200), units::mm(60),
                                        units::mm(4), units::mm(5), Ratio(0.5));
    CHECK(twice.value() == Approx(2 * once.value()).epsilon(1e-12));
    CHECK(fast.value() == Approx(4 * once.value()).epsilon(1e-12));
}

TEST_CASE("a motor's curve may be cut where one likes")
{
    const Numbers two{0, 2900}, torque{150, 90}, many{0, 100, 500, 1000, 2000, 2900};
    Numbers torques;
    for (const double n : many) torques.push_back(150 - 60 * n / 2900);
    const auto time = [](const Numbers& speeds, const Numbers& motor) {
        return run_up_time(series_of(speeds, units::rpm), series_of(motor, units::Nm), units::Nm(80), units::Nm(0),
                           units::kgm2(0.4), Ratio(0.15));
    };
    REQUIRE(time(two, torque));
    REQUIRE(time(many, torques));
    CHECK(time(two, torque)->value() == Approx(time(many, torques)->value()).epsilon(1e-9));
}

// The temperature at which a bearing housing gives off what its bearings' friction makes: warm oil rubs less.
#pragma once

#include "formulas/bearings/running.hpp"
#include "formulas/fixed_steps.hpp"
#include "formulas/liquid/viscosity_temperature.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <cmath>
#include <cstdint>

namespace cutwater::formulas {

namespace bearings {

inline constexpr double hottest_degC = 200;

/// The balance for an oil that is thick at both its points and where it is found: T - T_0 = k nu^(2/3), T_0 being the
/// temperature without the oil's friction.
struct ThickBalance {
    walther::Line line;
    double without;   // T_0, K
    double k;         // K per (mm2/s)^(2/3)
    double slow;      // the rise where nu n is below 2000, K
    double greatest;  // the rise to the hottest, K

    struct Oil {
        double z, ln_z;
    };
    Oil at(double kelvin) const
    {
        const double height = line.constant - line.slope * elementary::log(kelvin);
        const double ln_z = elementary::exp(elementary::select(height < 3.1, height, 3.1));  // 3.1: beyond any oil
        return {elementary::exp(ln_z), ln_z};
    }
    static double no_thinner(double nu) { return elementary::select(nu > 0.5, nu, 0.5); }  // still good to a per cent

    struct Found {
        double kelvin, viscosity;
        bool cold_enough, settled;
    };
    /// Solved for u = ln(T - T_0): Halley's steps with nu = Z - 0.7, which leave 1e-10 of T in 99 of 100 balances of
    /// all permitted sizes, and a last one of Newton's with what thick oils have besides. What is not settled then is
    /// left to a bracket. The count is fixed so that rows of an array take the same path.
    Found find(double speed_rpm) const
    {
        const double ln_k = elementary::log(k), most = elementary::log(greatest);
        double u = most - 1.2;
        const auto step_to = [&](double next) {
            const double change = next - u;
            u = elementary::select(next < most, next, most);
            return change;
        };
        fixed_steps<3>([&] {
            const double rise = elementary::exp(u), kelvin = without + rise, part = rise / kelvin;
            const Oil oil = at(kelvin);
            const double nu = no_thinner(oil.z - walther::offset), ratio = oil.z / nu, fall = line.slope * oil.ln_z;
            const double off = ln_k + 2.0 / 3 * elementary::log(nu) - u;
            // Of ln nu: -s for ln T, and for u twice.
            const double s = fall * ratio;
            const double twice = line.slope * fall * ratio * (1 - walther::offset * oil.ln_z / nu);
            const double slope = -2.0 / 3 * s * part - 1;
            const double bend = 2.0 / 3 * (twice * part * part - s * part * (1 - part));
            const double newton = -off / slope, halley = 1 + 0.5 * newton * bend / slope;
            step_to(u + newton / elementary::select(halley > 0.25, halley, 0.25));
        });
        const double rise = elementary::exp(u), kelvin = without + rise;
        const Oil oil = at(kelvin);
        const double nu = no_thinner(walther::thick_viscosity_of(oil.z));
        const double excess = ln_k + 2.0 / 3 * elementary::log(nu) - u;
        const double change = step_to(u + excess / (1 + 2.0 / 3 * line.slope * oil.ln_z * oil.z / nu * rise / kelvin));
        const bool slows = nu * speed_rpm < 2000;
        const double found = without + elementary::select(slows, slow, elementary::exp(u));
        const double viscosity = walther::thick_viscosity_of(at(found).z);
        const bool hot = (greatest <= 0) | (slows & (slow > greatest)) | (!slows & (u == most) & (excess > 0.05));
        const bool balanced = slows | ((u < most) & (std::abs(change) * rise <= 1e-8 * kelvin));
        const bool settled = hot | (balanced & (viscosity >= walther::thick));
        return {found, viscosity, !hot, settled};
    }
};

inline NoValue too_hot()
{
    return {CUTWATER_NO_ANSWER,
            "heat_transfer",
            "the housing would be hotter than {0}: it cannot give off the friction heat",
            {{hottest_degC, "degC"}}};
}
inline NoValue line_has_ended(double celsius)
{
    return {CUTWATER_NO_ANSWER, "ambient", "at {0} the oil's viscosity line has ended", {{celsius, "degC"}}};
}

}  // namespace bearings

inline Outcome<std::tuple<Temperature, KinematicViscosity, Power>> bearing_temperature(
    RotationalSpeed speed, Length mean, Ratio f0, Torque load_torque, Power other_heat, Temperature first,
    KinematicViscosity first_viscosity, Temperature second, KinematicViscosity second_viscosity, Area area,
    HeatTransfer transfer, Temperature ambient, Steps steps)
{
    const double n = units::rpm.in(speed), d = units::mm.in(mean), w = speed.angular().value();
    const double conductance = transfer.value() * area.value();
    const auto heat_at = [&](double viscosity) {
        return (bearings::lubricant_torque(f0, viscosity, n, d) + load_torque.value()) * w + other_heat.value();
    };

    // Friction falls as the oil warms and the heat given off rises: they meet once.
    const double other_rise = other_heat.value() / conductance;
    const double low = units::degC.in(ambient) + elementary::select(other_rise < 0, other_rise, 0.0);
    const walther::Point one{first, first_viscosity}, two{second, second_viscosity};
    const walther::Line line = walther::line(one, two, units::degC(low), [](double x) { return walther::thick_z(x); });
    const double without = units::kelvin.in(ambient) + (load_torque.value() * w + other_heat.value()) / conductance;
    const double per_square = 1e-3 * 1e-7 * f0.value() * (d * d * d) * w / conductance;
    const bearings::ThickBalance balance{line, without, per_square * elementary::cbrt(n * n), 160 * per_square,
                                         units::kelvin.in(units::degC(bearings::hottest_degC))-without};
    const auto quick = balance.find(n);
    const bool thick = walther::is_thick(one) & walther::is_thick(two), begins = line.z <= walther::most;
    const auto values = [&](Temperature found, double viscosity) {
        return std::tuple(found, KinematicViscosity(units::mm2s(viscosity)), Power::from_value(heat_at(viscosity)));
    };
    const bool settled = thick & ((line.z > walther::most) | quick.settled);
    const bool holds = settled & begins & quick.cold_enough;
    if (steps.in_rows()) return {values(units::kelvin(quick.kelvin), quick.viscosity), holds, NoValue{}, !settled};
    if (settled) {
        if (!begins) return bearings::line_has_ended(low);
        if (!holds) return bearings::too_hot();
        return values(units::kelvin(quick.kelvin), quick.viscosity);
    }

    const walther::Oil oil(one, two);
    const auto viscosity_at = [&](double celsius) { return oil.viscosity_mm2s(units::degC(celsius)); };
    // Between two temperatures that the line reaches it reaches all.
    const auto surplus = [&](double celsius) {
        return heat_at(viscosity_at(celsius)) - conductance * (celsius - units::degC.in(ambient));
    };
    constexpr double high = bearings::hottest_degC;
    if (std::isnan(viscosity_at(low))) return bearings::line_has_ended(low);
    const double at_low = surplus(low), at_high = surplus(high);
    if (std::isnan(viscosity_at(high)) || at_high > 0) return bearings::too_hot();
    using namespace boost::math::policies;
    using Quiet = policy<domain_error<ignore_error>, evaluation_error<ignore_error>>;
    std::uintmax_t most = 200;
    const auto [below, above] = boost::math::tools::toms748_solve(
        surplus, low, high, at_low, at_high, boost::math::tools::eps_tolerance<double>(52), most, Quiet());
    const double found = std::abs(surplus(below)) <= std::abs(surplus(above)) ? below : above;
    return values(units::degC(found), viscosity_at(found));
}

inline constexpr auto bearing_temperature_record = record<&bearing_temperature>(
    {.name = "bearing_temperature",
     .meaning = "Temperature that bearings and housing reach, with the oil's thinning as it warms",
     .also = "bearing housing temperature|oil sump temperature|steady bearing temperature",
     .inputs = {bearings::speed(), bearings::mean_diameter(),
                input("lubricant_factor", "f_0", units::number, between(0.1, 100),
                      "sum of the factors f_0 of all bearings of this size: see bearing_friction_heat"),
                input("load_torque", "M_1", units::Nmm, between(0, 1e7),
                      "friction torque from the loads of all bearings, by bearing_friction_heat"),
                input("other_heat", "P_x", units::watt, between(-1e5, 1e5),
                      "heat of rubbing seals and along the shaft from a hot pump; negative into a cold one"),
                input("first_temperature", "T_1", units::degC, between(-70, 370),
                      "temperature of a point on the oil's viscosity line, mostly 40"),
                input("first_viscosity", "nu_1", units::mm2s, between(1, 1e5), "viscosity of the oil there"),
                input("second_temperature", "T_2", units::degC, between(-70, 370),
                      "temperature of a second point, mostly 100"),
                input("second_viscosity", "nu_2", units::mm2s, between(1, 1e5), "viscosity of the oil there"),
                bearings::housing_area(), bearings::housing_transfer(), bearings::ambient()},
     .results = {output("temperature", "T", units::degC, "temperature of housing and oil in steady running"),
                 output("viscosity", "nu", units::mm2s, "viscosity of the oil at it"),
                 output("heat", "P_f", units::watt, "heat given off at it")},
     .equation = "U A (T - T_a) = 2 pi n [M_0(nu(T)) + M_1] + P_x, solved for T; M_0 as for bearing_friction_heat, "
                 "nu(T) by ASTM D341",
     .source = "heat balance; friction by A. Palmgren and T. A. Harris (from memory of both); viscosity by ASTM "
               "D341-09 (from memory of it)",
     .scatter = {plus_minus_in_unit("temperature", 15)},
     .cautions = {bearings::housing_scatter, bearings::friction_scatter, bearings::touch},
     .example = {"2900, 80, 4, 50, 0, 40, 46, 100, 6.8, 0.3, 12, 25", "57.352, 22.661, 116.47",
                 "solved by another program's root finder (SciPy)"}},
    relation<"second_temperature", "first_temperature">(
        [](Temperature second, Temperature first) { return second >= first + units::kelvin_difference(5 - 1e-6); },
        "it must lie at least 5 K above the first one"),
    relation<"second_viscosity", "first_viscosity">(
        [](KinematicViscosity second, KinematicViscosity first) { return second < first; },
        "the warmer point must have the lower viscosity"));

}  // namespace cutwater::formulas

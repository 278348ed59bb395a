// The temperature at which a bearing housing gives off what its bearings' friction makes: warm oil rubs less.
#pragma once

#include "formulas/bearings/running.hpp"
#include "formulas/liquid/viscosity_temperature.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <cmath>
#include <cstdint>

namespace cutwater::formulas {

inline Outcome<std::tuple<Temperature, KinematicViscosity, Power>> bearing_temperature(
    RotationalSpeed speed, Length mean, Ratio f0, Torque load_torque, Power other_heat, Temperature first,
    KinematicViscosity first_viscosity, Temperature second, KinematicViscosity second_viscosity, Area area,
    HeatTransfer transfer, Temperature ambient)
{
    const double n = units::rpm.in(speed), d = units::mm.in(mean), w = speed.angular().value();
    struct State {
        KinematicViscosity viscosity;
        double heat;  // W
    };
    const auto at = [&](Temperature t) -> Outcome<State> {
        const auto nu = viscosity_at_temperature(first, first_viscosity, second, second_viscosity, t, Steps{});
        if (!nu) return nu.why();
        const double torque = bearings::lubricant_torque(f0, units::mm2s.in(*nu), n, d) + load_torque.value();
        return State{*nu, torque * w + other_heat.value()};
    };
    const double conductance = transfer.value() * area.value();

    // Friction falls as the oil warms and the heat given off rises: they meet once.
    const double low = units::degC.in(ambient) + std::min(0.0, other_heat.value()) / conductance, high = 200;
    const auto at_low = at(units::degC(low));
    if (!at_low)
        return NoValue{CUTWATER_NO_ANSWER, "ambient", "at {0} the oil's viscosity line has ended", {{low, "degC"}}};
    const auto at_high = at(units::degC(high));
    if (!at_high || at_high->heat > conductance * (high - units::degC.in(ambient)))
        return NoValue{CUTWATER_NO_ANSWER,
                       "heat_transfer",
                       "the housing would be hotter than {0}: it cannot give off the friction heat",
                       {{high, "degC"}}};
    const auto surplus = [&](double celsius) {
        const auto state = at(units::degC(celsius));
        return (state ? state->heat : 0) - conductance * (celsius - units::degC.in(ambient));
    };
    using namespace boost::math::policies;
    using Quiet = policy<domain_error<ignore_error>, evaluation_error<ignore_error>>;
    std::uintmax_t most = 200;
    const auto [below, above] = boost::math::tools::toms748_solve(
        surplus, low, high, surplus(low), surplus(high), boost::math::tools::eps_tolerance<double>(52), most, Quiet());
    const Temperature found = units::degC(std::abs(surplus(below)) <= std::abs(surplus(above)) ? below : above);
    const auto state = at(found);
    if (!state) return state.why();
    return std::tuple(found, state->viscosity, Power::from_value(state->heat));
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

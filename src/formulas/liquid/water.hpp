// Properties of liquid water from temperature and pressure.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/liquid/water_region1.hpp"
#include "formulas/liquid/water_saturation.hpp"
#include "formulas/liquid/water_viscosity.hpp"

namespace cutwater::formulas {

namespace water {

inline constexpr const char* pure_only =
    "Pure water: dissolved salts, gas and solids change it; sea water is 2 to 3 % denser.";

/// Why there is no liquid at that state. A saturation pressure that went through a cell and back may be a few bits low.
inline bool boils(Temperature t, AbsolutePressure p)
{
    return p.above_zero() < saturation_pressure(t).above_zero() * (1 - 1e-9);
}
[[gnu::cold]] inline NoValue no_liquid(Temperature t, AbsolutePressure p)
{
    return {.status = CUTWATER_NO_ANSWER,
            .argument = "pressure",
            .sentence =
                "pressure_bara is {0}, but at {1} water boils at {2} and is steam below that: the pressure must be at "
                "least so high",
            .numbers = {number_in(p, units::bara), number_in(t, units::degC),
                        number_in(saturation_pressure(t), units::bara)}};
}

inline void show(const Liquid& liquid, Temperature t, Steps steps)
{
    steps("p_s", "vapour pressure, IAPWS-IF97 region 4", saturation_pressure(t), units::bara);
    steps("pi", "p/(16.53 MPa)", liquid.pi(), units::number);
    steps("tau", "(1386 K)/T", liquid.tau(), units::number);
}

// The inputs that every property of liquid water takes.
inline constexpr Input<Temperature> temperature_input = input("temperature", "T", units::degC, between(0, 350),
                                                              "temperature of the water");
inline constexpr Input<AbsolutePressure> pressure_input = input(
    "pressure", "p", units::bara, above_up_to(0, 1000),
    "absolute pressure of the water; not below its vapour pressure");

}  // namespace water

inline Outcome<Density> water_density(Temperature temperature, AbsolutePressure pressure, Steps steps)
{
    if (water::boils(temperature, pressure)) return water::no_liquid(temperature, pressure);
    const water::Liquid liquid(temperature, pressure);
    water::show(liquid, temperature, steps);
    steps("gamma_pi", "d gamma/d pi", Ratio(liquid.gamma().pi), units::number);
    return liquid.density();
}

inline constexpr Record<&water_density> water_density_record{
    .name = "water_density",
    .meaning = "Density of liquid water",
    .also = "specific weight of water|mass of water",
    .inputs = {water::temperature_input, water::pressure_input},
    .results = {output("density", "rho", units::kgm3, "density")},
    .equation = "rho = 16.53 MPa/(R T gamma_pi(pi, tau)), pi = p/16.53 MPa, tau = 1386 K/T",
    .source = "IAPWS R7-97(2012), clause 5.1, equation (7), Tables 2 and 3 (coefficients as in python3-iapws 1.5.2, "
              "which reproduces the release's Table 5)",
    .cautions = {water::pure_only},
    .example = {"26.85, 30", "997.85294", "IAPWS R7-97(2012), Table 5: 0.100215168e-2 m3/kg at 300 K, 3 MPa"}};

inline Outcome<SpecificHeat> water_specific_heat(Temperature temperature, AbsolutePressure pressure, Steps steps)
{
    if (water::boils(temperature, pressure)) return water::no_liquid(temperature, pressure);
    const water::Liquid liquid(temperature, pressure);
    water::show(liquid, temperature, steps);
    steps("gamma_tautau", "d2 gamma/d tau2", Ratio(liquid.gamma().tau_tau), units::number);
    return liquid.specific_heat();
}

inline constexpr Record<&water_specific_heat> water_specific_heat_record{
    .name = "water_specific_heat",
    .meaning = "Specific heat capacity of liquid water at constant pressure",
    .also = "heat capacity of water",
    .inputs = {water::temperature_input, water::pressure_input},
    .results = {output("specific_heat", "c_p", units::kJkgK, "specific heat capacity at constant pressure")},
    .equation = "c_p = -R tau^2 gamma_tautau(pi, tau), pi = p/16.53 MPa, tau = 1386 K/T",
    .source = "IAPWS R7-97(2012), clause 5.1, equation (7), Tables 2 and 3 (coefficients as in python3-iapws 1.5.2, "
              "which reproduces the release's Table 5)",
    .cautions = {water::pure_only},
    .example = {"26.85, 30", "4.17301218", "IAPWS R7-97(2012), Table 5, at 300 K, 3 MPa"}};

inline Outcome<ThermalExpansion> water_thermal_expansion(Temperature temperature, AbsolutePressure pressure,
                                                         Steps steps)
{
    if (water::boils(temperature, pressure)) return water::no_liquid(temperature, pressure);
    const water::Liquid liquid(temperature, pressure);
    water::show(liquid, temperature, steps);
    return liquid.expansion();
}

inline constexpr Record<&water_thermal_expansion> water_thermal_expansion_record{
    .name = "water_thermal_expansion",
    .meaning = "Cubic expansion coefficient of liquid water at constant pressure",
    .also = "coefficient of expansion of water",
    .inputs = {water::temperature_input, water::pressure_input},
    .results = {output("expansion", "alpha_v", units::per_K,
                       "growth of the volume a kelvin; negative below about 4 degC")},
    .equation = "alpha_v = (1 - tau gamma_pitau/gamma_pi)/T, pi = p/16.53 MPa, tau = 1386 K/T",
    .source =
        "IAPWS R7-97(2012), clause 5.1, equation (7), derived by differentiation: alpha_v = (1/v)(dv/dT) at constant p",
    .cautions = {water::pure_only},
    .example = {"26.85, 30", "0.00027735453", "python3-iapws 1.5.2, IAPWS-IF97 region 1"}};

inline Outcome<Stress> water_bulk_modulus(Temperature temperature, AbsolutePressure pressure, Steps steps)
{
    if (water::boils(temperature, pressure)) return water::no_liquid(temperature, pressure);
    const water::Liquid liquid(temperature, pressure);
    water::show(liquid, temperature, steps);
    const Velocity sound = square_root(liquid.isentropic_bulk_modulus() / liquid.density());
    steps("rho", "density", liquid.density(), units::kgm3);
    steps("w", "speed of sound in free water", sound, units::ms);
    return liquid.isentropic_bulk_modulus();
}

inline constexpr Record<&water_bulk_modulus> water_bulk_modulus_record{
    .name = "water_bulk_modulus",
    .meaning = "Isentropic bulk modulus of liquid water, as pressure waves meet it",
    .also = "compressibility of water",
    .inputs = {water::temperature_input, water::pressure_input},
    .results = {output("bulk_modulus", "K_s", units::GPa, "isentropic bulk modulus, rho w^2")},
    .equation =
        "K_s = rho w^2, w^2 = R T gamma_pi^2/((gamma_pi - tau gamma_pitau)^2/(tau^2 gamma_tautau) - gamma_pipi)",
    .source = "IAPWS R7-97(2012), clause 5.1, equation (7), Tables 2 and 3, speed of sound w (coefficients as in "
              "python3-iapws "
              "1.5.2, which reproduces the release's Table 5)",
    .cautions = {water::pure_only, "IAPWS-IF97 lies up to 0.4 % from the scientific equation IAPWS-95 here.",
                 "A trace of undissolved gas, even 0.1 % by volume, lowers the bulk modulus of water at low pressure "
                 "many times."},
    .example = {"26.85, 30", "2.26839666",
                "IAPWS R7-97(2012), Table 5, at 300 K, 3 MPa: w = 1507.73921 m/s, v = 0.100215168e-2 m3/kg"}};

inline Outcome<DynamicViscosity> water_dynamic_viscosity(Temperature temperature, AbsolutePressure pressure,
                                                         Steps steps)
{
    if (water::boils(temperature, pressure)) return water::no_liquid(temperature, pressure);
    const Density density = water::Liquid(temperature, pressure).density();
    steps("rho", "density, IAPWS-IF97 region 1", density, units::kgm3);
    return water::viscosity(temperature, density);
}

inline constexpr Record<&water_dynamic_viscosity> water_dynamic_viscosity_record{
    .name = "water_dynamic_viscosity",
    .meaning = "Dynamic viscosity of liquid water",
    .also = "absolute viscosity of water|cP of water",
    .inputs = {water::temperature_input, water::pressure_input},
    .results = {output("dynamic_viscosity", "mu", units::mPas, "dynamic viscosity")},
    .equation = "mu = mu_0(T) mu_1(T, rho) x 1e-6 Pa s, rho from IAPWS-IF97",
    .source =
        "IAPWS R12-08, equations (10) to (12), Tables 1 and 2, without critical enhancement (clause 3); density: IAPWS "
        "R7-97(2012), region 1 (coefficients as in python3-iapws 1.5.2, which reproduces Table 4 of R12-08)",
    .cautions = {water::pure_only},
    .example = {"20, 1.01325", "1.0016", "ISO/TR 3666:1998: 1.0016 mPa s at 20 degC and one atmosphere"}};

inline Outcome<KinematicViscosity> water_kinematic_viscosity(Temperature temperature, AbsolutePressure pressure,
                                                             Steps steps)
{
    if (water::boils(temperature, pressure)) return water::no_liquid(temperature, pressure);
    const Density density = water::Liquid(temperature, pressure).density();
    const DynamicViscosity dynamic = water::viscosity(temperature, density);
    steps("rho", "density, IAPWS-IF97 region 1", density, units::kgm3);
    steps("mu", "dynamic viscosity, IAPWS R12-08", dynamic, units::mPas);
    return KinematicViscosity(dynamic / density);
}

inline constexpr Record<&water_kinematic_viscosity> water_kinematic_viscosity_record{
    .name = "water_kinematic_viscosity",
    .meaning = "Kinematic viscosity of liquid water",
    .also = "cSt of water",
    .inputs = {water::temperature_input, water::pressure_input},
    .results = {output("kinematic_viscosity", "nu", units::mm2s, "kinematic viscosity")},
    .equation = "nu = mu/rho, mu from IAPWS R12-08, rho from IAPWS-IF97",
    .source =
        "IAPWS R12-08, equations (10) to (12), Tables 1 and 2, without critical enhancement (clause 3); density: IAPWS "
        "R7-97(2012), region 1 (coefficients as in python3-iapws 1.5.2, which reproduces Table 4 of R12-08)",
    .cautions = {water::pure_only},
    .example = {"20, 1.01325", "1.0034", "ISO/TR 3666:1998: 1.0034 mm2/s at 20 degC and one atmosphere"}};

}  // namespace cutwater::formulas

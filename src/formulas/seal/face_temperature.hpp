// How much warmer the film between the faces is than the liquid around them.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"
#include "formulas/seal/faces.hpp"

#include <cmath>
#include <numbers>
#include <tuple>

namespace cutwater::formulas {

namespace seal {

/// Heat that a ring carries off for each kelvin of its face: a fin of uniform section, its far end insulated.
inline double fin_conductance(double film, double perimeter, double conductivity, double area, double length)
{
    const double m = std::sqrt(film * perimeter / (conductivity * area));
    return std::sqrt(film * perimeter * conductivity * area) * elementary::tanh(m * length);
}

constexpr auto conductivity(const char* name, const char* symbol, const char* meaning)
{
    return input(name, symbol, units::WmK, between(0.1, 1000), meaning);
}
constexpr auto film(const char* name, const char* symbol, const char* meaning)
{
    return input(name, symbol, units::Wm2K, above_up_to(0, 1e6), meaning);
}
constexpr auto wetted(const char* name, const char* symbol, const char* meaning)
{
    return input(name, symbol, units::mm, above_up_to(0, 500), meaning);
}

}  // namespace seal

inline Outcome<std::tuple<HeatTransfer, Ratio, Ratio>> rotating_ring_film_coefficient(Length diameter,
                                                                                      RotationalSpeed speed,
                                                                                      KinematicViscosity viscosity,
                                                                                      Ratio prandtl,
                                                                                      ThermalConductivity conductivity)
{
    const double re = speed.angular().value() * diameter.value() * diameter.value() / (2 * viscosity.value());
    if (!(re >= 1000 && re <= 5e6))
        return NoValue{CUTWATER_NO_ANSWER,
                       "speed",
                       "the ring's Reynolds number would be {0}; the correlation is used here from 1000 to 5000000",
                       {{re, ""}}};
    const double nu = 0.133 * elementary::cbrt(re * re) * elementary::cbrt(prandtl.value());
    return std::tuple(HeatTransfer(nu * conductivity / diameter), Ratio(re), Ratio(nu));
}

inline constexpr auto rotating_ring_film_coefficient_record = record<&rotating_ring_film_coefficient>(
    {.name = "rotating_ring_film_coefficient",
     .meaning = "Heat transfer coefficient from a rotating seal ring to the liquid around it",
     .also = "convection coefficient at the seal|Becker correlation|heat transfer from a rotating cylinder",
     .inputs = {input("ring_diameter", "D", units::mm, above_up_to(0, 1000), "outer diameter of the ring"),
                input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"),
                input("viscosity", "nu", units::mm2s, limits::kinematic_viscosity_mm2s,
                      "kinematic viscosity of the liquid"),
                input("prandtl_number", "Pr", units::number, between(0.5, 1000),
                      "Prandtl number of the liquid, c_p mu/lambda"),
                seal::conductivity("conductivity", "lambda", "thermal conductivity of the liquid")},
     .results = {output("film_coefficient", "h", units::Wm2K, "heat transfer coefficient"),
                 output("reynolds_number", "Re", units::number, "pi n D^2/nu"),
                 output("nusselt_number", "Nu", units::number, "Nusselt number")},
     .equation = "Nu = h D/lambda = 0.133 Re^(2/3) Pr^(1/3), Re = w D^2/(2 nu)",
     .source = "K. M. Becker, Int. J. Heat Mass Transfer 6 (1963) 1053-1062, a cylinder turning in water, Re 1000 to "
               "46000 (from memory of it); "
               "beyond that an extrapolation, as the literature of seals has it",
     .cautions =
         {"+-30 %. Beyond Re 46000 it lies low, so that the faces come out too warm rather than too cool: the analogy "
          "of W. M. Kays and I. S. Bjorklund (1958, from "
          "memory of it) agrees within a fifth at Re 40000 and gives 1.5 to 2 times as much at 1 to 4 millions.",
          "For a ring in much liquid; in a narrow chamber the liquid turns along and takes up less."},
     .sound_anywhere = true,
     .example = {"60, 2900, 0.365, 2.22, 0.67", "25360.8, 1497636, 2271.12", "independent computation"}});

inline std::tuple<TemperatureDifference, Fraction> seal_face_temperature_rise(
    Power heat, Length outer, Length inner, HeatTransfer film, Length rotating_length,
    ThermalConductivity rotating_conductivity, HeatTransfer stationary_film, Length stationary_length,
    ThermalConductivity stationary_conductivity, Steps steps)
{
    const double area = seal::face_area(outer, inner).value();
    const double perimeter = std::numbers::pi * outer.value();
    const double rotating = seal::fin_conductance(film.value(), perimeter, rotating_conductivity.value(), area,
                                                  rotating_length.value());
    const double stationary = seal::fin_conductance(stationary_film.value(), perimeter, stationary_conductivity.value(),
                                                    area, stationary_length.value());
    steps("G_r", "rotating ring", ThermalConductance::from_value(rotating), units::WK);
    steps("G_s", "stationary ring", ThermalConductance::from_value(stationary), units::WK);
    return {TemperatureDifference::from_value(heat.value() / (rotating + stationary)),
            {rotating / (rotating + stationary)}};
}

inline constexpr auto seal_face_temperature_rise_record = record<&seal_face_temperature_rise>(
    {.name = "seal_face_temperature_rise",
     .meaning = "How much warmer the faces of a mechanical seal are than the liquid in the chamber",
     .also = "face temperature|interface temperature|film temperature rise",
     .inputs = {input("face_heat", "P", units::kW, between(0, 1000),
                      "heat of this pair of faces, as from seal_face_heat"),
                seal::outer(), seal::inner(),
                seal::film("rotating_film", "h_r",
                           "heat transfer coefficient at the rotating ring, as from rotating_ring_film_coefficient"),
                seal::wetted("rotating_length", "L_r", "wetted length of the rotating ring"),
                seal::conductivity("rotating_conductivity", "k_r", "thermal conductivity of the rotating ring"),
                seal::film("stationary_film", "h_s",
                           "heat transfer coefficient at the stationary ring, below the rotating one's"),
                seal::wetted("stationary_length", "L_s", "wetted length of the stationary ring"),
                seal::conductivity("stationary_conductivity", "k_s", "thermal conductivity of the stationary ring")},
     .results = {output("face_rise", "dT_f", units::kelvin_difference,
                        "mean temperature of the faces over the liquid in the chamber"),
                 output("rotating_share", "s_r", units::fraction,
                        "part of the heat that leaves through the rotating ring")},
     .equation =
         "dT_f = P/(G_r + G_s), G = sqrt(h pi D_o k A) tanh(m L), m = sqrt(h pi D_o/(k A)), A = (pi/4)(D_o^2 - D_i^2)",
     .source = "each ring a straight fin of uniform section, cooled at its outer diameter, far end insulated: F. P. "
               "Incropera et al., Fundamentals of Heat and Mass Transfer, "
               "table of fins (from memory of it)",
     .cautions = {"+-40 % with the film coefficients; the inner diameter, the leakage and the evaporating film carry "
                  "heat that is left out, scale and coking keep it in.",
                  "The hottest spot is warmer than the mean, and a start with hot faces warmer still.",
                  caution::guide_only},
     .example = {"0.447, 61.6, 48.9, 15000, 15, 120, 5000, 10, 10", "19.9663, 0.854906", "independent computation"}},
    relation<"face_inner_diameter", "face_outer_diameter">(&seal::less, seal::wider));

}  // namespace cutwater::formulas

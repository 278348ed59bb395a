// The radial force that the casing's uneven pressure puts on the impeller.
#pragma once

#include "formulas/rotor/shared.hpp"

#include <algorithm>
#include <cmath>

namespace cutwater::formulas {

enum class Casing { single_volute, double_volute, concentric, diffuser };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<4> words_of<formulas::Casing>{"single volute", "double volute", "concentric", "diffuser"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace rotor {

// Mackay's straight line: 0.7 at a US specific speed of 500, 3.3 at 3500.
inline constexpr Interval radial_specific_speeds = between(9.6, 68);
inline double radial_exponent(SpecificSpeed n_s)
{
    constexpr double us_over_metric = 51.6452379006990730341;  // 1/min, US gal/min, ft over 1/min, m3/s, m
    return 0.7 + 2.6 * (us_over_metric * n_s.value - 500) / 3000;
}

inline constexpr const char* radial_scatter =
    "Guide: take plus or minus 30 %, more below half of the best efficiency flow; an unsteady force of about the same "
    "size may ride on it. Measured values of the pump maker go before it.";

}  // namespace rotor

inline Ratio radial_thrust_coefficient(Casing casing, Flow flow, Flow best, Ratio reference, SpecificSpeed n_s,
                                       Ratio least, Steps steps)
{
    const double q = flow / best;
    const bool single = casing == Casing::single_volute;
    const double x = rotor::radial_exponent(n_s);
    if (single) steps("x", "0.7 + 2.6 (51.645 n_s - 500)/3000", Ratio(x), units::number);
    const double otherwise = elementary::select(casing == Casing::concentric, q, 1);
    const double shape = elementary::select(single, std::abs(1 - elementary::positive_pow(q, x)), otherwise);
    return greater(Ratio(reference * shape), least);
}

inline constexpr auto radial_thrust_coefficient_record = record<&radial_thrust_coefficient>(
    {.name = "radial_thrust_coefficient",
     .meaning = "Radial thrust coefficient of an impeller at a flow, by the form of its casing",
     .also = "radial load factor|K factor|side load factor|radial thrust factor",
     .inputs =
         {choice<Casing>("casing", "casing", "form of the casing around the impeller"),
          input("flow", "Q", units::m3h, from(0), "flow at which the pump runs"),
          input("best_efficiency_flow", "Q_BEP", units::m3h, above(0),
                "best efficiency flow at the actual speed and diameter"),
          input("reference_coefficient", "K_0", units::number, between(0, 1),
                "single volute: at closed valve, 0.15 to 0.38; concentric: at best efficiency; double volute and "
                "diffuser: at every flow"),
          input("specific_speed", "n_s", units::specific_speed, rotor::radial_specific_speeds,
                "specific speed n Q^0.5/H^0.75 in 1/min, m3/s, m at best efficiency; only a single volute's K depends "
                "on it"),
          input("least_coefficient", "K_min", units::number, between(0, 1),
                "residue that remains where the steady force would vanish; about 0.10 was measured on a single volute",
                0.1)},
     .results = {output("coefficient", "K", units::number, "radial thrust coefficient, as a magnitude")},
     .equation = "single volute: K = K_0 |1 - (Q/Q_BEP)^x|, x = 0.7 + 2.6 (51.645 n_s - 500)/3000; concentric: K = K_0 "
                 "Q/Q_BEP; double volute, diffuser: K = K_0; never below K_min",
     .source =
         "single volute: R. Mackay, The Practical Pumping Handbook, Elsevier 2004, pp. 28 and 29 (read), K_0 0.15 to "
         "0.38 and x from 0.7 to 3.3 between US specific speeds of 500 and 3500; the residue: B. Abulnaga, Slurry "
         "Systems Handbook, on radial thrust (excerpt read); a concentric casing's force rises with flow: V. S. "
         "Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 193 (read), taken linear here",
     .scatter = {plus_minus("coefficient", 0.3)},
     .cautions = {"No chart of double volutes, concentric casings and diffusers could be read: K_0 is the user's "
                  "there. Guidance, from memory of J. F. Guelich, Centrifugal Pumps: a double volute with a rib over "
                  "180 degrees about a quarter of the single volute's value at closed valve, a diffuser 0.02 to 0.09.",
                  "The zero of the steady force at best efficiency is a fiction; whether the force turns round beyond "
                  "it is disputed: K is a magnitude here, and its direction is not told.",
                  rotor::radial_scatter},
     .sound_anywhere = true,
     .example = {"\"single volute\", 50, 100, 0.36, 30", "0.24202",
                 "hand calculation: x = 1.60944, 0.36 (1 - 0.5^1.60945)"}},
    relation<"flow", "best_efficiency_flow">(
        [](Flow flow, Flow best) { return flow <= 1.5 * best; },
        "it must not exceed 1.5 times the best efficiency flow: beyond that nothing was measured"));

inline Force radial_thrust(Density density, Head head, Length diameter, Length width, Ratio coefficient)
{
    return coefficient * density * standard_gravity * head * diameter * width;
}

inline constexpr Record<&radial_thrust> radial_thrust_record{
    .name = "radial_thrust",
    .meaning = "Radial force of the liquid on the impeller",
    .also = "radial load|side load|hydraulic radial force|radial hydraulic thrust",
    .inputs = {rotor::density(),
               input("head", "H", units::metre, rotor::head_m,
                     "head of the stage: at closed valve where the coefficient is a single volute's by "
                     "radial_thrust_coefficient, else at the flow"),
               rotor::impeller_diameter(),
               input("outlet_width", "b_2", units::mm, between(0.5, 2000),
                     "width of the impeller at its outside diameter, shrouds included"),
               input("coefficient", "K", units::number, between(0, 1),
                     "radial thrust coefficient, by radial_thrust_coefficient or measured")},
    .results = {output("force", "F_r", units::newton, "radial force")},
    .equation = "F_r = K rho g H D_2 b_2",
    .source = "A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd edition, 1957 (from memory of it), whose print "
              "leaves the density out; with the pressure instead of the head in R. Mackay, The Practical Pumping "
              "Handbook, 2004, p. 28 (read)",
    .cautions = {"Leaving the density out would understate the force for an acid of 1840 kg/m3 by nearly half.",
                 rotor::radial_scatter, rotor::release},
    .sound_anywhere = true,
    .example = {"1000, 50, 200, 20, 0.27", "529.56", "hand calculation"}};

}  // namespace cutwater::formulas

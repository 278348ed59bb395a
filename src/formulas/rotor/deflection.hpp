// How far a stepped shaft bends: at the seal faces of an overhung pump, and anywhere under any loads.
#pragma once

#include "formulas/pairs.hpp"
#include "formulas/rotor/beam.hpp"

#include <cmath>
#include <tuple>

namespace cutwater::formulas {

inline std::tuple<Length, Length, Force, Force, Kept> shaft_deflection_at_seal(
    Force force, Series<Length> lengths, Series<Length> diameters, Length overhang, Length seal, Stress modulus,
    Stiffness inboard, Stiffness outboard, Stress shear_modulus, Length limit)
{
    const rotor::Beam shaft(lengths, diameters,
                            {overhang.value(), rotor::total(lengths), inboard.value(), outboard.value()},
                            modulus.value(), shear_modulus.value());
    const double f = force.value();
    const double at_seal = f * shaft.flexibility(0, std::min(seal.value(), rotor::total(lengths)));
    const bool kept = std::abs(at_seal) <= limit.value() * (1 + 1e-12);
    return {Length::from_value(at_seal), Length::from_value(f * shaft.flexibility(0, 0)),
            Force::from_value(f * shaft.first_reaction(0)), Force::from_value(f * shaft.second_reaction(0)),
            kept ? Kept::within : Kept::beyond};
}

inline constexpr auto shaft_deflection_at_seal_record = record<&shaft_deflection_at_seal>(
    {.name = "shaft_deflection_at_seal",
     .meaning = "Deflection of a stepped overhung shaft at the seal faces under a radial force at the impeller",
     .also = "shaft deflection|shaft runout at seal|shaft bending|overhung shaft deflection",
     .inputs = {input("force", "F", units::newton, rotor::force_n,
                      "radial force at the impeller, with the rotor's weight where the two may add"),
                rotor::lengths(), rotor::diameters(),
                input("overhang", "a", units::mm, rotor::length_mm,
                      "from the impeller's middle, where the sections begin, to the bearing nearer the impeller; the "
                      "last section ends at the other one"),
                input("seal_distance", "z", units::mm, between(0, 20000),
                      "from the impeller's middle to the seal faces"),
                rotor::elastic_modulus(205), rotor::inboard_stiffness(), rotor::outboard_stiffness(),
                rotor::shear_modulus(),
                input("limit", "y_max", units::mm, between(0.001, 10), "greatest deflection allowed at the seal faces",
                      0.05)},
     .results = {output("at_seal", "y", units::mm, "deflection at the seal faces"),
                 output("at_impeller", "y_0", units::mm, "deflection at the impeller"),
                 output("inboard_load", "R_1", units::newton, "load on the bearing nearer the impeller"),
                 output("outboard_load", "R_2", units::newton,
                        "load on the other bearing; negative where it holds the shaft down"),
                 output_word<Kept>("verdict", "verdict", "whether the deflection at the seal keeps the limit")},
     .equation = "y = F [Integral M m/(E I) dx + Integral V v/(kappa G A) dx + R_1 r_1/k_1 + R_2 r_2/k_2], m, v, r of "
                 "a force of 1 at the seal, I = pi d^4/64",
     .source = "beam: theory of bending by virtual work, as in S. P. Timoshenko, Strength of Materials; limit 0.05 mm: "
               "ISO 5199:2002, 4.11 and ISO 13709:2009, 6.9.1.3 (all from memory); overhung formula for the impeller: "
               "R. Mackay, The Practical Pumping Handbook, 2004, p. 29 (read)",
     .cautions =
         {"The limit holds for the worst radial force in the allowable range of flow, at the seal: the handbooks' "
          "formula for the impeller reads two to six times more.",
          "Deflection that keeps the limit does not show that the shaft will not tire: see shaft_fatigue_safety.",
          rotor::beam_limits, rotor::beam_defaults, rotor::release},
     .example = {"1000, [200, 150], [40, 40], 200, 100", "0.07117, 0.18115, 2333.3, -1333.3, \"beyond\"",
                 "closed form F z^2 (3 a - z)/(6 E I) + F a b z/(3 E I) of a uniform shaft, by hand"}},
    pairs::equal_length<"lengths", "diameters">(),
    relation<"overhang", "lengths">(
        [](Length overhang, Series<Length> lengths) { return overhang.value() < rotor::total(lengths); },
        "it must be shorter than all the sections together"),
    relation<"seal_distance", "lengths">(
        [](Length seal, Series<Length> lengths) { return rotor::on_shaft(seal, lengths); },
        "it must not be longer than all the sections together"),
    rotor::shear_fits());

inline std::tuple<Length, Force, Force> shaft_deflection(Series<Force> forces, Series<Length> places,
                                                         Series<Length> lengths, Series<Length> diameters, Length first,
                                                         Length second, Length at, Stress modulus,
                                                         Stiffness first_stiffness, Stiffness second_stiffness,
                                                         Stress shear_modulus)
{
    const rotor::Beam shaft(lengths, diameters,
                            {first.value(), second.value(), first_stiffness.value(), second_stiffness.value()},
                            modulus.value(), shear_modulus.value());
    const double end = rotor::total(lengths);
    double y = 0, r_1 = 0, r_2 = 0;
    for (std::size_t i = 0; i < forces.size(); ++i) {
        const double f = forces[i].value(), place = std::min(places[i].value(), end);
        y += f * shaft.flexibility(place, std::min(at.value(), end));
        r_1 += f * shaft.first_reaction(place);
        r_2 += f * shaft.second_reaction(place);
    }
    return {Length::from_value(y), Force::from_value(r_1), Force::from_value(r_2)};
}

inline constexpr auto shaft_deflection_record = record<&shaft_deflection>(
    {.name = "shaft_deflection",
     .meaning = "Deflection of a stepped shaft on two bearings at any place, under any forces in one plane",
     .also = "beam deflection|shaft sag|shaft bending",
     .inputs = {series("forces", "F_i", units::newton, rotor::force_n,
                       "forces across the shaft, in one plane; opposite ones negative", 1),
                series("places", "x_i", units::mm, between(0, 20000),
                       "their places, from the end where the sections begin", 1),
                rotor::lengths(), rotor::diameters(),
                input("first_bearing", "x_1", units::mm, between(0, 20000), "place of the first bearing"),
                input("second_bearing", "x_2", units::mm, between(0, 20000), "place of the second bearing"),
                input("place", "x", units::mm, between(0, 20000), "where the deflection is wanted"),
                rotor::elastic_modulus(205), rotor::inboard_stiffness(), rotor::outboard_stiffness(),
                rotor::shear_modulus()},
     .results = {output("deflection", "y", units::mm, "deflection in the direction of positive forces"),
                 output("first_load", "R_1", units::newton, "load on the first bearing"),
                 output("second_load", "R_2", units::newton, "load on the second bearing")},
     .equation = "y = Sum F_i [Integral M_i m/(E I) dx + Integral V_i v/(kappa G A) dx + R_1i r_1/k_1 + R_2i "
                 "r_2/k_2], m, v, r of a force of 1 at x",
     .source = rotor::beam_source,
     .cautions = {rotor::beam_limits, rotor::beam_defaults, rotor::release},
     .example = {"[1000], [500], [1000], [50], 0, 1000, 500", "0.33125, 500, 500", "F L^3/(48 E I), by hand"}},
    rotor::few_enough<"forces">(), rotor::few_enough<"lengths">(), pairs::equal_length<"places", "forces">(),
    pairs::equal_length<"lengths", "diameters">(),
    relation<"second_bearing", "first_bearing">([](Length second, Length first) { return second > first; },
                                                "it must lie beyond the first bearing"),
    relation<"second_bearing", "lengths">(
        [](Length second, Series<Length> lengths) { return rotor::on_shaft(second, lengths); },
        "it must lie on the shaft"),
    relation<"place", "lengths">([](Length at, Series<Length> lengths) { return rotor::on_shaft(at, lengths); },
                                 "it must lie on the shaft"),
    relation<"places", "lengths">(
        [](Series<Length> places, Series<Length> lengths) {
            for (std::size_t i = 0; i < places.size(); ++i)
                if (!rotor::on_shaft(places[i], lengths)) return false;
            return true;
        },
        "every force must act on the shaft"),
    rotor::shear_fits());

inline InverseLength shaft_stiffness_ratio(Length overhang, Length diameter)
{
    return InverseLength::from_value(overhang.value() * overhang.value() * overhang.value() /
                                     (diameter.value() * diameter.value() * diameter.value() * diameter.value()));
}

inline constexpr Record<&shaft_stiffness_ratio> shaft_stiffness_ratio_record{
    .name = "shaft_stiffness_ratio",
    .meaning = "Slenderness L^3/D^4 of an overhung shaft, a screening figure",
    .also = "L3/D4|L cubed over D fourth|shaft flexibility ratio|flexibility index|stiffness ratio",
    .inputs = {input("overhang", "L", units::mm, rotor::length_mm,
                     "from the middle of the bearing nearer the impeller to the middle of the impeller's vanes"),
               input("diameter", "D", units::mm, rotor::size_mm, "diameter of the solid shaft under the sleeve")},
    .results = {output("ratio", "L^3/D^4", units::per_mm, "slenderness; it has a unit")},
    .equation = "L^3/D^4",
    .source = "common practice; McNally Institute, glossary (read): below 60 in^-1 or 2.0 mm^-1",
    .cautions = {"60 in^-1 is 2.36 mm^-1 and not 2.0: say which limit is meant, and in which unit.",
                 "It knows neither span, bearings nor steps, nor the force: shaft_deflection_at_seal answers the "
                 "question itself."},
    .example = {"200, 40", "3.125", "hand calculation"}};

}  // namespace cutwater::formulas

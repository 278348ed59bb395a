// The first critical speed of a rotor in bending: a lower and an upper bound.
#pragma once

#include "formulas/pairs.hpp"
#include "formulas/rotor/beam.hpp"

#include <cmath>
#include <tuple>

namespace cutwater::formulas {

inline Outcome<std::tuple<RotationalSpeed, RotationalSpeed>> first_critical_speed(
    Series<Mass> masses, Series<Length> places, Series<Length> lengths, Series<Length> diameters, Length first,
    Length second, Density density, Stress modulus, Stiffness first_stiffness, Stiffness second_stiffness,
    Stress shear_modulus)
{
    const rotor::Beam shaft(lengths, diameters,
                            {first.value(), second.value(), first_stiffness.value(), second_stiffness.value()},
                            modulus.value(), shear_modulus.value());
    const double end = rotor::total(lengths);
    const auto place = [&](std::size_t i) { return std::min(places[i].value(), end); };

    // Dunkerley: 1/omega^2 is at most the sum of what each mass would give alone. Rayleigh: any shape gives an omega^2
    // that is not too small; the shape here is that under a force at the mass that weighs most in Dunkerley's sum.
    double dunkerley = 0, most = -1, middle = 0;
    for (std::size_t i = 0; i < masses.size(); ++i) {
        const double term = masses[i].value() * shaft.flexibility(place(i), place(i));
        dunkerley += term;
        if (term > most) {
            most = term;
            middle = place(i);
        }
    }
    double moving = 0;
    for (std::size_t i = 0; i < masses.size(); ++i) {
        const double y = shaft.flexibility(middle, place(i));
        moving += masses[i].value() * y * y;
    }
    shaft.along(middle, density.value(), [&](double x, double mass) {
        const double y = shaft.flexibility(middle, x);
        moving += mass * y * y;
        dunkerley += mass * shaft.flexibility(x, x);
    });
    if (!(moving > 0))
        return NoValue{CUTWATER_NO_ANSWER, "places",
                       "every mass sits on a rigid bearing, and none shows how the shaft bends: give a mass between "
                       "the bearings or beyond them, such as a part of the shaft's own"};
    const double rayleigh = shaft.flexibility(middle, middle) / moving;
    const auto turning = [](double omega_squared) {
        return RotationalSpeed::revolutions(Frequency::from_value(std::sqrt(omega_squared) / (2 * rotor::pi)));
    };
    return std::tuple(turning(1 / dunkerley), turning(rayleigh));
}

inline constexpr auto first_critical_speed_record = record<&first_critical_speed>(
    {.name = "first_critical_speed",
     .meaning =
         "Bounds of a rotor's first critical speed in bending, dry and undamped, from its masses and stepped shaft",
     .also = "whirling speed|natural frequency of the rotor|lateral critical speed|resonance speed",
     .inputs = {series("masses", "m_i", units::kg, above_up_to(0, 100000),
                       "masses on the shaft: impeller with the liquid in it, coupling half", 1),
                series("places", "x_i", units::mm, between(0, 20000),
                       "their places, from the end where the sections begin", 1),
                rotor::lengths(), rotor::diameters(),
                input("first_bearing", "x_1", units::mm, between(0, 20000), "place of the first bearing"),
                input("second_bearing", "x_2", units::mm, between(0, 20000), "place of the second bearing"),
                input("shaft_density", "rho_s", units::kgm3, between(0, 25000),
                      "density of the shaft; 0 leaves its mass out", 7850),
                rotor::elastic_modulus(205), rotor::inboard_stiffness(), rotor::outboard_stiffness(),
                rotor::shear_modulus()},
     .results = {output("lower_bound", "n_D", units::rpm,
                        "of point masses by Dunkerley: their first critical speed is not below it"),
                 output("upper_bound", "n_R", units::rpm,
                        "of point masses by Rayleigh: their first critical speed is not above it")},
     .equation = "n_D = 1/(2 pi) [Sum m_i a_ii + Integral mu a(x, x) dx]^-0.5; n_R = 1/(2 pi) {a_jj/[Sum m_i a_ij^2 + "
                 "Integral mu a(x, x_j)^2 dx]}^0.5; a: deflection by a force of 1, j: the mass with the greatest m a",
     .source = "S. Dunkerley, Phil. Trans. Royal Society A 185 (1894); Lord Rayleigh, The Theory of Sound; S. P. "
               "Timoshenko, Vibration Problems in Engineering (all from memory); deflections by virtual work",
     .scatter = {plus_minus("lower_bound", 0.1), plus_minus("upper_bound", 0.1)},
     .cautions = {"Bounds of a model of point masses: the disc's own inertia lowers the frequency at rest and the "
                  "gyroscopic effect raises it when turning, each by some per cent; wear rings wetted by the liquid "
                  "raise it. Take plus or minus 10 %.",
                  rotor::beam_defaults,
                  "A rotor that may run dry has no help from its rings: judge it by the dry figure.", rotor::release},
     .example = {"[51.525], [1500], [1500], [50], 0, 1000, 7810, 211, 10000, 10000", "865.15, 877.46",
                 "overhung rotor of Friswell and others, Dynamics of Rotating Machines, 2010, ex. 5.9.9; beam elements "
                 "with a point mass: 877.39"}},
    rotor::few_enough<"masses">(), rotor::few_enough<"lengths">(), pairs::equal_length<"places", "masses">(),
    pairs::equal_length<"lengths", "diameters">(),
    relation<"second_bearing", "first_bearing">([](Length second, Length first) { return second > first; },
                                                "it must lie beyond the first bearing"),
    relation<"second_bearing", "lengths">(
        [](Length second, Series<Length> lengths) { return rotor::on_shaft(second, lengths); },
        "it must lie on the shaft"),
    relation<"places", "lengths">(
        [](Series<Length> places, Series<Length> lengths) {
            for (std::size_t i = 0; i < places.size(); ++i)
                if (!rotor::on_shaft(places[i], lengths)) return false;
            return true;
        },
        "every mass must sit on the shaft"),
    rotor::shear_fits());

inline std::tuple<Ratio, Kept> critical_speed_separation(RotationalSpeed critical, RotationalSpeed highest,
                                                         Fraction separation)
{
    const Ratio ratio = critical / highest;
    return {ratio, ratio.value() >= (1 + separation.value) * (1 - 1e-12) ? Kept::within : Kept::beyond};
}

inline constexpr Record<&critical_speed_separation> critical_speed_separation_record{
    .name = "critical_speed_separation",
    .meaning = "How far the first critical speed lies above the highest running speed, and whether that is enough",
    .also = "separation margin|critical speed margin",
    .inputs = {input("critical_speed", "n_c", units::rpm, limits::speed_rpm, "first critical speed, the lower bound"),
               input("highest_speed", "n_max", units::rpm, limits::speed_rpm,
                     "highest continuous running speed, with a converter its greatest"),
               input("separation", "s", units::fraction, between(0, 5),
                     "separation asked for: 0.10 by ISO 5199, 0.20 wet or 0.30 dry by ISO 13709")},
    .results = {output("ratio", "n_c/n_max", units::number, "critical speed over highest running speed"),
                output_word<Kept>("verdict", "verdict", "whether the separation is kept")},
    .equation = "n_c/n_max >= 1 + s",
    .source = "ISO 5199:2002, 4.3.1: 10 %; ISO 13709:2009, 6.9.1.2: 20 % for rotors that run wet, 30 % for those that "
              "may run dry (both from memory)",
    .cautions = {"A calculated critical speed is good to 10 % at best: a separation of less is no proof.",
                 "For rotors that run below their first critical speed; those that run above it need a full "
                 "rotordynamic analysis.",
                 rotor::release},
    .example = {"3500, 2950, 0.1", "1.18644, \"within\"", "hand calculation"}};

}  // namespace cutwater::formulas

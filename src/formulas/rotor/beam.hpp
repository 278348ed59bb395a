// A stepped shaft on two bearings, by the principle of virtual work: what a force at one place does at another.
#pragma once

#include "formulas/rotor/shared.hpp"

#include <algorithm>

namespace cutwater::formulas::rotor {

inline constexpr double rigid = 1e15;  // N/m

/// All in SI. Places are counted from the shaft's end at the impeller.
class Beam {
public:
    struct Bearings {
        double first, second;              // places
        double first_stiff, second_stiff;  // N/m
    };

    Beam(const Series<Length>& lengths, const Series<Length>& diameters, Bearings bearings, double modulus,
         double shear_modulus)
        : lengths_(lengths), diameters_(diameters), bearings_(bearings), modulus_(modulus),
          shear_modulus_(shear_modulus)
    {
    }

    /// What the two bearings bear of a force of 1 at a place.
    double first_reaction(double place) const { return 1 - second_reaction(place); }
    double second_reaction(double place) const
    {
        return (place - bearings_.first) / (bearings_.second - bearings_.first);
    }

    /// Deflection at one place by a force of 1 at the other.
    double flexibility(double here, double there) const
    {
        const Unit a = unit(here), b = unit(there);
        double sum = a.first * b.first * give(bearings_.first_stiff) +
                     a.second * b.second * give(bearings_.second_stiff);
        double x = 0, section_end = 0;
        for (std::size_t i = 0; i < lengths_.size(); ++i) {
            const double d = diameters_[i].value();
            section_end += lengths_[i].value();
            const double bending = 64 / (modulus_ * pi * d * d * d * d);
            const double shearing = shear_modulus_ > 0 ? 4 / (shear_coefficient() * shear_modulus_ * pi * d * d) : 0;
            while (x < section_end) {
                const double end = std::min({section_end, after(x, here), after(x, there), after(x, bearings_.first),
                                             after(x, bearings_.second)});
                const double middle = 0.5 * (x + end), length = end - x;
                // Both moments are linear here and both shear forces constant: Simpson's rule is exact.
                sum += bending * length / 6 *
                       (moment(a, x) * moment(b, x) + 4 * moment(a, middle) * moment(b, middle) +
                        moment(a, end) * moment(b, end));
                sum += shearing * length * shear(a, middle) * shear(b, middle);
                x = end;
            }
        }
        return sum;
    }

    /// Calls visit(place, mass) along the shaft; the sum of mass f(place) is the integral of mu f. Gauss-Legendre rule,
    /// four points a piece, exact up to the seventh degree between steps, bearings and the given place.
    template <class Visit>
    void along(double place, double density, Visit visit) const
    {
        static constexpr double points[] = {0.8611363115940526, 0.3399810435848563};
        static constexpr double weights[] = {0.3478548451374538, 0.6521451548625461};
        double x = 0, section_end = 0;
        for (std::size_t i = 0; i < lengths_.size(); ++i) {
            const double d = diameters_[i].value();
            section_end += lengths_[i].value();
            while (x < section_end) {
                const double end = std::min(
                    {section_end, after(x, place), after(x, bearings_.first), after(x, bearings_.second)});
                const double middle = 0.5 * (x + end), half = 0.5 * (end - x);
                const double mass = density * pi / 4 * d * d * half;
                for (int k = 0; k < 2; ++k) {
                    visit(middle - half * points[k], weights[k] * mass);
                    visit(middle + half * points[k], weights[k] * mass);
                }
                x = end;
            }
        }
    }

private:
    struct Unit {
        double place, first, second;
    };

    Unit unit(double place) const { return {place, first_reaction(place), second_reaction(place)}; }
    double moment(const Unit& u, double x) const
    {
        return u.first * ramp(x - bearings_.first) + u.second * ramp(x - bearings_.second) - ramp(x - u.place);
    }
    double shear(const Unit& u, double x) const
    {
        return u.first * (x > bearings_.first) + u.second * (x > bearings_.second) - (x > u.place);
    }
    /// The greatest stiffness that may be given stands for a rigid bearing.
    static double give(double stiffness) { return stiffness < rigid ? 1 / stiffness : 0; }
    static double ramp(double x) { return std::max(x, 0.0); }
    static double after(double x, double place) { return place > x ? place : 1e300; }
    /// Cowper's, for a solid circle.
    double shear_coefficient() const
    {
        const double nu = modulus_ / (2 * shear_modulus_) - 1;
        return 6 * (1 + nu) / (7 + 6 * nu);
    }

    const Series<Length>& lengths_;
    const Series<Length>& diameters_;
    Bearings bearings_;
    double modulus_, shear_modulus_;
};

inline double total(const Series<Length>& lengths)
{
    double sum = 0;
    for (std::size_t i = 0; i < lengths.size(); ++i) sum += lengths[i].value();
    return sum;
}

/// A place that may be the shaft's very end, but for rounding in the sum of the sections.
inline bool on_shaft(Length place, const Series<Length>& lengths)
{
    return place.value() <= total(lengths) * (1 + 1e-12);
}

constexpr auto lengths()
{
    return series("lengths", "L_i", units::mm, length_mm, "lengths of the shaft's sections, from the impeller on", 1);
}
constexpr auto diameters()
{
    return series("diameters", "d_i", units::mm, size_mm, "diameters of the sections that bear, without sleeves", 1);
}
constexpr auto elastic_modulus(double fallback)
{
    return input("elastic_modulus", "E", units::GPa, modulus_gpa,
                 "modulus of elasticity of the shaft; about 205 for carbon steel, 200 duplex, 193 austenitic",
                 fallback);
}
inline constexpr Interval stiffness_nmm = between(100, 1e12);
constexpr auto inboard_stiffness()
{
    return input("inboard_stiffness", "k_1", units::Nmm_stiff, stiffness_nmm,
                 "radial stiffness of the bearing nearer the impeller with its housing; left out, rigid", 1e12);
}
constexpr auto outboard_stiffness()
{
    return input("outboard_stiffness", "k_2", units::Nmm_stiff, stiffness_nmm,
                 "radial stiffness of the other bearing with its housing; left out, rigid", 1e12);
}
constexpr auto shear_modulus()
{
    return input("shear_modulus", "G", units::GPa, between(0, 500),
                 "shear modulus of the shaft, about 80 for steel; 0 leaves the deflection by shear out", 0);
}
inline constexpr const char* beam_source =
    "theory of bending by virtual work, each section's M m/(E I) integrated, bearings as springs; S. P. Timoshenko, "
    "Strength of Materials; shear with the coefficient 6 (1 + nu)/(7 + 6 nu) of G. R. Cowper, J. Applied Mechanics "
    "1966 (both from memory)";
inline constexpr const char* beam_limits = "Support by wear rings, bushes and packing is left out, and so are "
                                           "looseness, tilt of the bearings and the pull of pipes on the casing.";
inline constexpr const char* beam_defaults =
    "Left out, bearings are rigid and shear counts for nothing, which flatters: springs of 1e5 N/mm make a typical "
    "overhung shaft bend 2.6 times as far at the seal and cost 20 % of its critical speed, shear 3 to 5 %.";
/// The work grows with the square of the number of points; no shaft has more.
inline constexpr const char* not_too_many = "there must not be more than 1000 of them";
template <Name Input>
constexpr auto few_enough()
{
    return relation<Input>([](const auto& points) { return points.size() <= 1000; }, not_too_many);
}

/// Steel gives one Poisson's ratio, other metals others; none has a shear modulus over half of the other.
inline constexpr const char* shear_below = "it must be 0, or between a third and half of the modulus of elasticity";
constexpr auto shear_fits()
{
    return relation<"shear_modulus", "elastic_modulus">(
        [](Stress shear, Stress modulus) {
            return shear == Stress{} || (3.0 * shear >= modulus && 2.0 * shear <= modulus);
        },
        shear_below);
}

}  // namespace cutwater::formulas::rotor

// Eddy currents in the shell of a magnetic drive.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

#include <numbers>
#include <tuple>

namespace cutwater::formulas {

namespace eddy {

inline constexpr double magnetic_constant = 1.25663706212e-6;  // N/A2, CODATA 2018

inline constexpr const char* field_is_input =
    "The flux density in the shell is the weak point, and its square counts: take the pump maker's, or a loss that was "
    "measured. Plus or minus 30 %.";

}  // namespace eddy

inline Ratio shell_end_factor(Count pole_pairs, Length length, Length diameter)
{
    const double x = pole_pairs.value * (length / diameter).value();  // p L/(2 r)
    if (x < 1e-2) return Ratio(x * x / 3);                            // the series' first term, good to 4e-5
    const double e = elementary::expm1(-2 * x);                       // tanh(x) = -e/(e + 2)
    return Ratio(1 + e / ((e + 2) * x));
}

inline constexpr Record<&shell_end_factor> shell_end_factor_record{
    .name = "shell_end_factor",
    .meaning =
        "Part of the eddy loss of a long shell that a short one has, since its currents must turn back at the ends",
    .also = "end effect|Russell-Norsworthy factor|end correction|eddy current return path|containment shell",
    .inputs = {input("pole_pairs", "p", units::count, between(1, 50), "pairs of magnet poles round the coupling"),
               input("length", "L", units::mm, above_up_to(0, 2000), "length of the magnets along the shell"),
               input("diameter", "D", units::mm, limits::bore_mm, "mean diameter of the shell")},
    .results = {output("end_factor", "k_e", units::number, "factor of the loss; near 1 for a long shell")},
    .equation = "k_e = 1 - tanh(x)/x, x = p L/D",
    .source =
        "R. L. Russell and K. H. Norsworthy, Proc. IEE 105A (1958) 166 (from memory of it): currents that close within "
        "the length of the magnets",
    .cautions = {"Real shells reach past the magnets and let the currents close outside, which brings the loss back "
                 "up: without the factor the loss is on the safe side."},
    .example = {"6, 60, 100", "0.72264", "hand calculation: 1 - tanh(3.6)/3.6"}};

inline std::tuple<Power, Torque, Ratio> shell_eddy_loss(MagneticFluxDensity field, ElectricalConductivity conductivity,
                                                        RotationalSpeed speed, Length diameter, Length wall,
                                                        Length length, Ratio end_factor)
{
    const double w = speed.angular().value(), r = diameter.value() / 2, b = field.value();
    const double loss = std::numbers::pi * conductivity.value() * (w * w) * (r * r * r) * wall.value() *
                        length.value() * (b * b) * end_factor.value();
    const double shielding = eddy::magnetic_constant * conductivity.value() * w * r * wall.value() / 2;
    return {Power::from_value(loss), Torque::from_value(w > 0 ? loss / w : 0), Ratio(shielding)};
}

inline constexpr auto shell_eddy_loss_record = record<&shell_eddy_loss>(
    {.name = "shell_eddy_loss",
     .meaning = "Heat that eddy currents make in the metal shell of a magnetic drive",
     .also = "eddy current loss|containment shell|isolation shell|separating can|shroud loss|mag drive losses|magnetic "
             "loss",
     .inputs = {input("flux_density", "B", units::tesla, above_up_to(0, 3),
                      "peak flux density in the shell's wall, of a wave that is taken for a sine"),
                input("conductivity", "sigma", units::MSm, above_up_to(0, 70),
                      "of the shell hot: 316 1.3, Ni-Mo-Cr alloys 0.77 to 0.8, titanium alloy 0.6; plastic and ceramic "
                      "none"),
                input("speed", "n", units::rpm, limits::speed_rpm, "speed of the magnets against the shell"),
                input("diameter", "D", units::mm, limits::bore_mm, "mean diameter of the shell"),
                input("wall", "t", units::mm, above_up_to(0, 50), "wall of the shell in the magnets' gap"),
                input("length", "L", units::mm, above_up_to(0, 2000), "length of the magnets along the shell"),
                input("end_factor", "k_e", units::number, above_up_to(0, 1),
                      "as from shell_end_factor; 1 is the safe side", 1)},
     .results = {output("loss", "P_e", units::watt, "heat in the shell, which the motor pays for"),
                 output("torque", "T_e", units::Nm, "torque on the outer magnets that it takes"),
                 output("shielding", "s", units::number,
                        "how much the currents weaken the field that makes them; the loss is high by 1 + s^2 at most")},
     .equation = "P_e = k_e pi sigma (2 pi n)^2 (D/2)^3 t L B^2, T_e = P_e/(2 pi n), s = mu_0 sigma (2 pi n)(D/2) t/2; "
                 "pole pairs do not appear",
     .source = "induced current in a thin shell, integral of sigma (v B)^2; agrees with the low-speed limit of N. H. "
               "Frank's solid shaft, MIT RLE Technical Report 23, 1946 (abstract and "
               "set-up read), whose difference for two radii it is",
     .cautions = {eddy::field_is_input,
                  "It grows with the square of speed and field and the cube of the diameter. It heats the liquid that "
                  "cools the shell: see shell_vapour_margin.",
                  "The conductivity falls as the shell gets hot, and the loss with it.", caution::guide_only},
     .example = {"0.3, 1.37, 2900, 100, 1.5, 60", "401.90, 1.3234, 0.01961",
                 "hand calculation; as the difference of two solid shafts 401.99 W"}},
    relation<"wall", "diameter">([](Length wall, Length diameter) { return 10.0 * wall <= diameter; },
                                 "the wall must be at most a tenth of the diameter: the relation is for a thin shell"),
    relation<"conductivity", "speed", "diameter", "wall">(
        [](ElectricalConductivity sigma, RotationalSpeed n, Length diameter, Length wall) {
            return eddy::magnetic_constant * sigma.value() * n.angular().value() * diameter.value() / 2 * wall.value() /
                       2 <=
                   0.3;
        },
        "the currents in so conductive, thick or fast a shell would weaken the field by more than the relation allows "
        "(mu_0 sigma v t/2 above 0.3)"));

}  // namespace cutwater::formulas

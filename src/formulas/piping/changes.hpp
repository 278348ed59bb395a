// Loss coefficients of entrances, exits and sudden changes of bore, in turbulent flow.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <algorithm>
#include <cmath>

namespace cutwater::formulas {

namespace changes {

inline constexpr const char* source =
    "D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012 (as the open library fluids 1.0.22 carries it, read)";
inline constexpr const char* turbulent =
    "For turbulent flow, Re above about 10 000; in laminar flow the losses are larger.";

/// The jet narrows to 1/lambda of the bore's area; its loss from friction and from the widening after it.
inline double of_jet(double share_of_friction, double lambda)
{
    return 0.0696 * share_of_friction * lambda * lambda + (lambda - 1) * (lambda - 1);
}

}  // namespace changes

inline Ratio entrance_loss_coefficient(Length bore, Length rounding_radius)
{
    const double r = std::min(Ratio(rounding_radius / bore).value(), 1.0);
    const double narrowing = 1 - 0.30 * std::sqrt(r) - 0.70 * r;
    const double lambda = 1 + 0.622 * narrowing * narrowing * narrowing * narrowing;
    return Ratio(changes::of_jet(1 - 0.569 * r, lambda));
}

inline constexpr Record<&entrance_loss_coefficient> entrance_loss_coefficient_record{
    .name = "entrance_loss_coefficient",
    .meaning = "Loss coefficient of a pipe's entrance flush with the vessel's wall, sharp or rounded",
    .also = "inlet loss|entry loss|bellmouth|sharp-edged entrance|suction nozzle of a tank",
    .inputs = {input("bore", "d", units::mm, limits::bore_mm, "inside diameter of the pipe"),
               input("rounding_radius", "r", units::mm, from(0), "radius of the entrance's edge; 0 for a sharp one",
                     0)},
    .results = {output("loss_coefficient", "K", units::number,
                       "times the velocity head in the pipe gives the head lost")},
    .equation =
        "K = 0.0696 (1 - 0.569 r/d) x^2 + (x - 1)^2, x = 1 + 0.622 (1 - 0.30 sqrt(r/d) - 0.70 r/d)^4; r/d at most 1",
    .source = changes::source,
    .cautions = {changes::turbulent,
                 "A strainer or foot valve comes on top. Handbooks give 0.5 for a sharp edge: this is a little more."},
    .example = {"100", "0.56999", "hand calculation: 0.0696 x 1.622^2 + 0.622^2"}};

inline Ratio projecting_entrance_loss_coefficient(Length bore, Length wall)
{
    const double t = std::min(Ratio(wall / bore).value(), 0.05);
    return Ratio(1.12 + t * (t * (80 * t + 216) - 22));
}

inline constexpr Record<&projecting_entrance_loss_coefficient> projecting_entrance_loss_coefficient_record{
    .name = "projecting_entrance_loss_coefficient",
    .meaning = "Loss coefficient of a pipe's entrance that projects into the vessel",
    .also = "Borda entrance|re-entrant inlet|inward projecting pipe",
    .inputs = {input("bore", "d", units::mm, limits::bore_mm, "inside diameter of the pipe"),
               input("wall", "t", units::mm, from(0), "thickness of the pipe's edge")},
    .results = {output("loss_coefficient", "K", units::number,
                       "times the velocity head in the pipe gives the head lost")},
    .equation = "K = 1.12 - 22 t/d + 216 (t/d)^2 + 80 (t/d)^3; t/d at most 0.05",
    .source = changes::source,
    .cautions = {changes::turbulent},
    .example = {"100, 2", "0.76704", "hand calculation: 1.12 - 0.44 + 0.0864 + 0.00064"}};

inline Ratio enlargement_loss_coefficient(Length bore, Length larger_bore)
{
    const double area_ratio = Ratio(bore / larger_bore).value() * Ratio(bore / larger_bore).value();
    return Ratio((1 - area_ratio) * (1 - area_ratio));
}

inline constexpr auto enlargement_loss_coefficient_record = record<&enlargement_loss_coefficient>(
    {.name = "enlargement_loss_coefficient",
     .meaning = "Loss coefficient of a sudden enlargement of the bore",
     .also = "Borda-Carnot|expansion loss|exit loss|increaser",
     .inputs = {input("bore", "d_1", units::mm, limits::bore_mm, "inside diameter before it"),
                input("larger_bore", "d_2", units::mm, limits::bore_mm, "inside diameter after it")},
     .results = {output("loss_coefficient", "K", units::number,
                        "times the velocity head in the smaller bore gives the head lost")},
     .equation = "K = (1 - (d_1/d_2)^2)^2",
     .source = "Borda and Carnot, momentum balance, any textbook of hydraulics; the open library fluids 1.0.22 agrees",
     .cautions = {changes::turbulent, "A pipe's exit into a vessel loses the whole velocity head: K = 1."},
     .sound_anywhere = true,
     .example = {"50, 100", "0.5625", "hand calculation: (1 - 0.25)^2"}},
    relation<"larger_bore", "bore">([](Length larger, Length bore) { return larger >= bore; },
                                    "the bore after an enlargement must not be smaller than before"));

inline Ratio contraction_loss_coefficient(Length larger_bore, Length bore)
{
    const double beta = Ratio(bore / larger_bore).value();
    const double beta2 = beta * beta;
    const double beta5 = beta2 * beta2 * beta;
    return Ratio(changes::of_jet(1 - beta5, 1 + 0.622 * (1 - 0.215 * beta2 - 0.785 * beta5)));
}

inline constexpr auto contraction_loss_coefficient_record = record<&contraction_loss_coefficient>(
    {.name = "contraction_loss_coefficient",
     .meaning = "Loss coefficient of a sudden contraction of the bore",
     .also = "reducer loss|reduction|vena contracta",
     .inputs = {input("larger_bore", "d_1", units::mm, limits::bore_mm, "inside diameter before it"),
                input("bore", "d_2", units::mm, limits::bore_mm, "inside diameter after it")},
     .results = {output("loss_coefficient", "K", units::number,
                        "times the velocity head in the smaller bore gives the head lost")},
     .equation = "K = 0.0696 (1 - b^5) x^2 + (x - 1)^2, x = 1 + 0.622 (1 - 0.215 b^2 - 0.785 b^5), b = d_2/d_1",
     .source = changes::source,
     .cautions = {changes::turbulent, "A tapered reducer loses less."},
     .example = {"100, 40", "0.53013", "the open library fluids 1.0.22, printed in its documentation: 0.5301269161"}},
    relation<"bore", "larger_bore">([](Length bore, Length larger) { return bore <= larger; },
                                    "the bore after a contraction must not be larger than before"));

inline Ratio loss_coefficient_at_bore(Ratio loss_coefficient, Length bore, Length other_bore)
{
    const double ratio = Ratio(other_bore / bore).value();
    return loss_coefficient * (ratio * ratio * ratio * ratio);
}

inline constexpr Record<&loss_coefficient_at_bore> loss_coefficient_at_bore_record{
    .name = "loss_coefficient_at_bore",
    .meaning = "Loss coefficient that goes with the velocity head in another bore",
    .also = "convert K to another pipe size|reference velocity",
    .inputs = {input("loss_coefficient", "K", units::number, from(0),
                     "loss coefficient on the velocity head in its own bore"),
               input("bore", "d", units::mm, limits::bore_mm, "the bore that it goes with"),
               input("other_bore", "d'", units::mm, limits::bore_mm, "the bore to turn it to")},
    .results = {output("other_loss_coefficient", "K'", units::number,
                       "loss coefficient on the velocity head in the other bore")},
    .equation = "K' = K (d'/d)^4",
    .source = "continuity: the same head lost, the same flow",
    .sound_anywhere = true,
    .example = {"0.5, 100, 150", "2.53125", "hand calculation: 0.5 x 1.5^4"}};

}  // namespace cutwater::formulas

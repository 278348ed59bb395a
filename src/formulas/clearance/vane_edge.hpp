// The running clearance at the vanes of an open or semi-open impeller: what leaks over them and the head that it costs.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <cmath>
#include <numbers>
#include <tuple>

namespace cutwater::formulas {

namespace vane_edge {

inline constexpr const char* made_for_compressors =
    "Made for compressors and carried over to a liquid: +-50 %. Measured loss of the pump itself goes before it: see "
    "clearance_head_ratio.";

constexpr auto flow() { return input("flow", "Q", units::m3h, above(0), "flow delivered"); }
constexpr auto head() { return input("head", "H", units::metre, above(0), "total head of the impeller at that flow"); }
constexpr auto hydraulic()
{
    return input("hydraulic_efficiency", "eta_h", units::fraction, between(0.3, 1),
                 "head over the impeller's theoretical head, about 0.8 to 0.92");
}
constexpr auto speed() { return input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"); }
constexpr auto vanes() { return input("vanes", "Z", units::count, between(2, 30), "number of vanes"); }
constexpr auto clearance()
{
    return input("clearance", "e", units::mm, between(0, 20), "gap between the vanes' edges and the casing");
}
constexpr auto diameter()
{
    return input("impeller_diameter", "D_2", units::mm, limits::bore_mm, "diameter of the impeller");
}

}  // namespace vane_edge

inline std::tuple<Flow, Head, PressureDifference> vane_edge_leakage(Flow flow, Head head, Fraction hydraulic,
                                                                    RotationalSpeed speed, Count vanes,
                                                                    Length clearance, Length impeller,
                                                                    Length mean_diameter, Length mean_width,
                                                                    Length vane_length, Density density, Steps steps)
{
    const double w = speed.angular().value();
    const double moment = standard_gravity.value() * head.value() / (hydraulic.value * w);  // r_2 c_u2 - r_1 c_u1
    const double load = density.value() * flow.value() * moment /
                        (vanes.value * mean_diameter.value() / 2 * mean_width.value() * vane_length.value());
    const double velocity = 0.816 * std::sqrt(2 * load / density.value());
    const double leakage = vanes.value * clearance.value() * vane_length.value() * velocity;
    const double tip = w * impeller.value() / 2;
    steps("U_L", "0.816 sqrt(2 dp_v/rho)", Velocity::from_value(velocity), units::ms);
    return {Flow::from_value(leakage),
            Head::from_value(leakage / flow.value() * velocity * tip / (2 * standard_gravity.value())),
            PressureDifference::from_value(load)};
}

inline constexpr auto vane_edge_leakage_record = record<&vane_edge_leakage>(
    {.name = "vane_edge_leakage",
     .meaning = "Leakage over the vanes of an open impeller, and the head that it costs",
     .also = "tip leakage|vane tip clearance|semi-open impeller clearance|front clearance",
     .inputs = {vane_edge::flow(), vane_edge::head(), vane_edge::hydraulic(), vane_edge::speed(), vane_edge::vanes(),
                vane_edge::clearance(), vane_edge::diameter(),
                input("mean_diameter", "D_av", units::mm, limits::bore_mm,
                      "mean diameter of the vanes' open edge, inlet to outlet"),
                input("mean_width", "b_av", units::mm, limits::bore_mm, "mean width of the vanes"),
                input("vane_length", "L", units::mm, limits::bore_mm, "length of a vane along the flow"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid")},
     .results = {output("leakage", "Q_L", units::m3h, "flow over all vanes' edges"),
                 output("head_loss", "dH", units::metre, "head that it costs"),
                 output("vane_load", "dp_v", units::bar, "mean pressure difference across a vane")},
     .equation = "dp_v = rho Q (r_2 c_u2)/(Z r_av b_av L), r_2 c_u2 = g H/(eta_h w); U_L = 0.816 sqrt(2 dp_v/rho); Q_L "
                 "= Z e L U_L; dH = (Q_L/Q) U_L u_2/(2 g)",
     .source = "R. H. Aungier, Centrifugal Compressors, ASME Press 2000, clearance leakage, as set in open compressor "
               "codes (their source read)",
     .cautions = {vane_edge::made_for_compressors, "Without prerotation at the inlet.", caution::guide_only},
     .example = {"50, 50, 0.85, 2900, 5, 0.4, 210, 140, 20, 110, 998", "5.34985, 1.17504, 0.341942",
                 "independent computation"}},
    relation<"mean_diameter", "impeller_diameter">([](Length m, Length d) { return m <= d; },
                                                   "it must not exceed the impeller diameter"));

inline std::tuple<Head, Fraction> vane_clearance_head_loss(Flow flow, Head head, Fraction hydraulic,
                                                           RotationalSpeed speed, Count vanes, Length clearance,
                                                           Length impeller, Length width, Length eye, Steps steps)
{
    const double g = standard_gravity.value();
    const double r2 = impeller.value() / 2, r1 = eye.value() / 2, b = width.value();
    const double swirl = g * head.value() / (hydraulic.value * speed.angular().value() * r2);
    steps("c_u2", "g H/(eta_h u_2)", Velocity::from_value(swirl), units::ms);
    // Jansen's inlet area cancels against the inlet velocity, which is the flow over that area.
    const double through = 2 * flow.value() / (b * vanes.value * (r2 - r1));
    const double loss = 0.6 * clearance.value() / b * swirl * std::sqrt(through * swirl) / g;
    return {Head::from_value(loss), {loss / head.value()}};
}

inline constexpr auto vane_clearance_head_loss_record = record<&vane_clearance_head_loss>(
    {.name = "vane_clearance_head_loss",
     .meaning = "Head that the clearance at an open impeller's vanes costs",
     .also = "tip clearance loss|open impeller clearance loss|Jansen clearance loss",
     .inputs = {vane_edge::flow(), vane_edge::head(), vane_edge::hydraulic(), vane_edge::speed(), vane_edge::vanes(),
                vane_edge::clearance(), vane_edge::diameter(),
                input("vane_width", "b_2", units::mm, limits::bore_mm, "width of the vanes at the outlet"),
                input("eye_diameter", "D_1", units::mm, limits::bore_mm, "diameter of the eye")},
     .results = {output("head_loss", "dH", units::metre, "head that the clearance costs"),
                 output("part_of_head", "dH/H", units::fraction, "the same as a part of the head")},
     .equation = "dH = 0.6 (e/b_2) (c_u2/g) sqrt(2 Q c_u2/(b_2 Z (r_2 - r_1))), c_u2 = g H/(eta_h u_2)",
     .source = "W. Jansen 1967, in the set of H. W. Oh, E. S. Yoon and M. K. Chung 1997, as set in open compressor "
               "codes (their source read); liquid: equal densities, the inlet area cancelled",
     .cautions = {vane_edge::made_for_compressors,
                  "Five pumps tested by A. Engeda and M. Rautenberg (1987, abstract read) had no slope in common: two "
                  "wheels of one size may differ by a factor of three.",
                  caution::guide_only},
     .sound_anywhere = true,
     .example = {"50, 50, 0.85, 2900, 5, 0.4, 210, 15, 80", "0.299671, 0.00599342", "independent computation"}},
    relation<"eye_diameter", "impeller_diameter">([](Length e, Length d) { return e < d; },
                                                  "it must be less than the impeller diameter"));

}  // namespace cutwater::formulas

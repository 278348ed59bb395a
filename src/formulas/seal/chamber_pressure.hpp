// Pressure in the seal chamber, by what stands between it and the impeller.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <algorithm>
#include <numbers>
#include <tuple>

namespace cutwater::formulas {

enum class ChamberArrangement { balance_holes, back_vanes, no_back_ring, double_suction };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<4> words_of<formulas::ChamberArrangement>{"balance holes", "back vanes", "no back ring",
                                                                 "double suction"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace seal {

inline constexpr const char* read_on_site =
    "Read the chamber's own gauge where there is one: worn rings, a blocked balance hole or a changed gap move this "
    "pressure without moving the curve.";
inline constexpr const char* both_ends = "Take the lowest pressure for the margin to boiling and the highest for the "
                                         "seal's rating; at closed valve and at start both differ.";
inline constexpr const char* air_drawn_in =
    "Below the ambient pressure the faces draw air in and a single seal may run dry.";

constexpr auto suction()
{
    return input("suction_pressure", "p_s", units::barg, limits::suction_barg, "pressure at the pump's suction, gauge");
}
constexpr auto ambient()
{
    return input("ambient_pressure", "p_amb", units::bara, limits::ambient_bara,
                 "barometric pressure on site, for the absolute pressure", 1.01325);
}

inline AbsolutePressure absolute(GaugePressure gauge, AbsolutePressure ambient) { return ambient + gauge.above_zero(); }
inline bool above_vacuum(GaugePressure gauge, AbsolutePressure ambient)
{
    return absolute(gauge, ambient).above_zero().value() > 0;
}
inline constexpr const char* vacuum_sentence = "it must lie above vacuum at this ambient pressure";

/// A chamber cannot hold less than vacuum: the liquid has boiled or drawn air long before.
inline NoValue below_vacuum(GaugePressure chamber, const char* argument)
{
    return {CUTWATER_NO_ANSWER,
            argument,
            "the chamber would come to {0}, below vacuum: there the liquid boils or air is drawn in",
            {number_in(chamber, units::barg)}};
}

// The part itself, low and high end; in the order of the arrangements' words.
inline constexpr double chamber_shares[][3] = {{0.15, 0.05, 0.25}, {0.10, -0.10, 0.30}, {1, 0.50, 1}, {0, 0, 0.10}};

}  // namespace seal

inline std::tuple<Ratio, Ratio, Ratio> seal_chamber_fraction(ChamberArrangement arrangement)
{
    const auto& c = seal::chamber_shares[static_cast<int>(arrangement)];
    return {Ratio(c[0]), Ratio(c[1]), Ratio(c[2])};
}

inline constexpr auto seal_chamber_fraction_record = record<&seal_chamber_fraction>(
    {.name = "seal_chamber_fraction",
     .meaning = "Part of the differential pressure that stands in the seal chamber, by the pump's arrangement",
     .also = "stuffing box pressure factor|seal chamber factor",
     .inputs = {choice<ChamberArrangement>(
         "arrangement", "arrangement",
         "balance holes behind a back ring; back vanes (pump-out vanes) at full diameter near best "
         "efficiency; no back ring and no holes; double suction")},
     .results = {output("fraction", "C", units::number, "part of the differential pressure"),
                 output("low", "C_low", units::number, "low end of its scatter, for the margin to boiling"),
                 output("high", "C_high", units::number, "high end of its scatter, for the seal's rating")},
     .equation =
         "C, C_low to C_high = 0.15, 0.05 to 0.25 balance holes; 0.10, -0.10 to 0.30 back vanes; 1, 0.50 to 1 no back "
         "ring; 0, 0 to 0.10 double suction",
     .source = "arrangements: J. E. Pope (ed.), Rules of Thumb for Mechanical Engineers, Gulf 1997, p. 82 (page read; "
               "its numbers stand in pictures, "
               "0.15 and 0.10 from memory of it); the ends of the ranges are estimates",
     .cautions =
         {"Back vanes: up to 0.3 at the least impeller diameter, near 0 and below suction at closed valve; with known "
          "sizes use back_vane_chamber_pressure.",
          "Blocked holes or a missing ring put far more than C_high behind the impeller. Without a back ring "
          "the turning liquid takes off part of the discharge pressure: 1 is its upper end.",
          "Balance holes: with known ring and holes use balance_hole_chamber_pressure. Vertical multistage "
          "pumps have no such rule.",
          seal::read_on_site},
     .example = {"\"balance holes\"", "0.15, 0.05, 0.25", "the rule itself"}});

inline Outcome<std::tuple<GaugePressure, AbsolutePressure>> seal_chamber_pressure(GaugePressure suction,
                                                                                  GaugePressure discharge,
                                                                                  Ratio fraction,
                                                                                  AbsolutePressure ambient)
{
    const GaugePressure chamber = suction + fraction * (discharge - suction);
    if (!seal::above_vacuum(chamber, ambient)) return seal::below_vacuum(chamber, "fraction");
    return std::tuple(chamber, seal::absolute(chamber, ambient));
}

inline constexpr auto seal_chamber_pressure_record = record<&seal_chamber_pressure>(
    {.name = "seal_chamber_pressure",
     .meaning = "Pressure in the seal chamber from suction and discharge pressure",
     .also = "stuffing box pressure|seal cavity pressure|box pressure",
     .inputs = {seal::suction(),
                input("discharge_pressure", "p_d", units::barg, limits::gauge_barg,
                      "pressure at the pump's discharge, gauge"),
                input("fraction", "C", units::number, between(-0.5, 1),
                      "part of the differential pressure in the chamber: seal_chamber_fraction's, or measured; below 0 "
                      "for strong back vanes"),
                seal::ambient()},
     .results = {output("chamber_pressure", "p_c", units::barg, "pressure in the chamber, gauge"),
                 output("absolute_pressure", "p_c", units::bara, "the same, absolute")},
     .equation = "p_c = p_s + C (p_d - p_s)",
     .source = "J. E. Pope (ed.), Rules of Thumb for Mechanical Engineers, Gulf 1997, p. 82 (page read, equations in "
               "pictures)",
     .cautions = {seal::both_ends, seal::read_on_site, seal::air_drawn_in, caution::hot_or_toxic},
     .sound_anywhere = true,
     .example = {"1, 8, 0.15", "2.05, 3.06325", "hand calculation"}},
    relation<"suction_pressure", "ambient_pressure">(&seal::above_vacuum, seal::vacuum_sentence),
    relation<"discharge_pressure", "suction_pressure">([](GaugePressure d, GaugePressure s) { return d >= s; },
                                                       "it must not be lower than the suction pressure"));

inline std::tuple<GaugePressure, AbsolutePressure, Ratio> balance_hole_chamber_pressure(
    GaugePressure suction, PressureDifference ring_difference, Length ring_diameter, Length clearance, Count holes,
    Length hole_diameter, Ratio coefficient_ratio, AbsolutePressure ambient)
{
    const Area ring = std::numbers::pi * ring_diameter * clearance;
    const Area through = holes.value * (std::numbers::pi / 4) * hole_diameter * hole_diameter;
    const Ratio areas = through / ring;
    const Ratio effective = coefficient_ratio * areas;
    const GaugePressure chamber = suction + ring_difference / (1.0 + effective * effective);
    return {chamber, seal::absolute(chamber, ambient), areas};
}

inline constexpr auto balance_hole_chamber_pressure_record = record<&balance_hole_chamber_pressure>(
    {.name = "balance_hole_chamber_pressure",
     .meaning = "Pressure behind an impeller with a back ring and balance holes, by the ring's clearance and the holes",
     .also = "balance holes|back wear ring|stuffing box pressure",
     .inputs = {seal::suction(),
                input("ring_pressure_difference", "dp_r", units::bar, from(0),
                      "pressure outside the back ring over the suction pressure"),
                input("ring_diameter", "D_r", units::mm, limits::bore_mm, "diameter of the back ring"),
                input("radial_clearance", "s", units::mm, above_up_to(0, 10),
                      "radial clearance of the back ring, half the difference of the diameters"),
                input("holes", "z", units::count, between(1, 100), "number of balance holes"),
                input("hole_diameter", "d_h", units::mm, above_up_to(0, 200), "diameter of each hole"),
                input("coefficient_ratio", "c", units::number, between(0.3, 3),
                      "discharge coefficient of the holes over that of the ring", 1),
                seal::ambient()},
     .results = {output("chamber_pressure", "p_c", units::barg, "pressure inside the back ring, gauge"),
                 output("absolute_pressure", "p_c", units::bara, "the same, absolute"),
                 output("area_ratio", "A_h/A_r", units::number, "area of the holes over that of the ring's clearance")},
     .equation = "p_c = p_s + dp_r/(1 + (c A_h/A_r)^2), A_h = z (pi/4) d_h^2, A_r = pi D_r s",
     .source = "ring and holes as orifices in series: continuity and Bernoulli's equation; common practice",
     .cautions = {"The clearance here is radial; balance_hole_pressure asks for the diametral one.",
                  "As the back ring wears its area grows and with it the chamber's pressure and the axial thrust; the "
                  "holes should have 4 to 5 times the ring's area "
                  "(common practice).",
                  "Swirl before the holes and the throttling of a long ring are left out: +-30 % of the difference.",
                  seal::read_on_site, caution::guide_only},
     .sound_anywhere = true,
     .example = {"0, 4, 120, 0.2, 6, 8", "0.235294, 1.248544, 4", "hand calculation: area ratio 301.593/75.398 = 4"}},
    relation<"suction_pressure", "ambient_pressure">(&seal::above_vacuum, seal::vacuum_sentence));

inline Outcome<std::tuple<GaugePressure, AbsolutePressure, Force>> back_vane_chamber_pressure(
    GaugePressure suction, PressureDifference rim_difference, Density density, RotationalSpeed speed,
    Length impeller_diameter, Length vane_diameter, Length inner_diameter, Length height, Length gap, Ratio core,
    AbsolutePressure ambient, Steps steps)
{
    const double pi = std::numbers::pi;
    const double w = speed.angular().value();
    const double outer = impeller_diameter.value() * impeller_diameter.value() / 4;
    const double vane = vane_diameter.value() * vane_diameter.value() / 4;
    const double inner = inner_diameter.value() * inner_diameter.value() / 4;
    const double k = core.value();
    const double k_v = k + (1 - k) * Ratio(height / (height + gap)).value();
    const double half = density.value() * w * w / 2;
    const double at_rim = rim_difference.value();
    const double at_vanes = at_rim - half * k * k * (outer - vane);
    const double at_shaft = at_vanes - half * k_v * k_v * (vane - inner);
    steps("k_v", "k + (1 - k) t/(t + g)", Ratio(k_v), units::number);
    steps("dp_v", "pressure over suction at the vanes' outer end", PressureDifference::from_value(at_vanes),
          units::bar);
    const GaugePressure chamber = suction + PressureDifference::from_value(at_shaft);
    if (!seal::above_vacuum(chamber, ambient)) return seal::below_vacuum(chamber, "vane_gap");
    const double force = pi * ((outer - vane) * at_rim - half / 2 * k * k * (outer - vane) * (outer - vane)) +
                         pi * ((vane - inner) * at_vanes - half / 2 * k_v * k_v * (vane - inner) * (vane - inner));
    return std::tuple(chamber, seal::absolute(chamber, ambient), Force::from_value(force));
}

inline constexpr auto back_vane_chamber_pressure_record = record<&back_vane_chamber_pressure>(
    {.name = "back_vane_chamber_pressure",
     .meaning = "Pressure in the seal chamber behind back vanes, by their height and gap, and the force on the "
                "impeller's back",
     .also = "pump-out vanes|expeller vanes|stuffing box pressure|back vane clearance",
     .inputs = {seal::suction(),
                input("rim_pressure_difference", "dp_2", units::bar, from(0),
                      "static pressure at the impeller's rim over the suction pressure, about 0.75 of the total"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
                input("speed", "n", units::rpm, limits::speed_rpm, "rotational speed"),
                input("impeller_diameter", "D_2", units::mm, limits::bore_mm, "diameter of the impeller's back shroud"),
                input("vane_diameter", "D_v", units::mm, limits::bore_mm,
                      "outer diameter of the back vanes; equal to the inner one without vanes"),
                input("inner_diameter", "d", units::mm, limits::bore_mm,
                      "diameter at which the chamber begins and the vanes end"),
                input("vane_height", "t", units::mm, between(0, 200), "axial height of the back vanes"),
                input("vane_gap", "g", units::mm, above_up_to(0, 200),
                      "axial gap between the vanes and the back cover: clearance as it is now"),
                input("core_rotation", "k", units::number, between(0.2, 0.9),
                      "speed of the liquid's core before a smooth shroud over the impeller's", 0.5),
                seal::ambient()},
     .results =
         {output("chamber_pressure", "p_c", units::barg, "pressure at the inner diameter, gauge"),
          output("absolute_pressure", "p_c", units::bara, "the same, absolute"),
          output(
              "back_force", "F_b", units::newton,
              "force on the back shroud from the inner diameter out, over the suction pressure; towards the suction")},
     .equation =
         "p_c = p_s + dp_2 - (rho w^2/2) [k^2 (R_2^2 - R_v^2) + k_v^2 (R_v^2 - r^2)], k_v = k + (1 - k) t/(t + g)",
     .source = "forced vortex; the vanes' core rotation after A. J. Stepanoff, Centrifugal and Axial Flow Pumps, 2nd "
               "ed. 1957, for k = 1/2 (1/2)(1 + t/(t + g)) "
               "(from memory of it)",
     .cautions = {"A small difference of large numbers: each side carries +-30 %. Check it once against a gauge on the "
                  "chamber.",
                  "The pressure falls as the gap closes and as the impeller loses head; it may come below suction: the "
                  "vanes then empty the chamber.",
                  seal::air_drawn_in, seal::both_ends, caution::guide_only},
     .example = {"0.5, 4, 1000, 2900, 200, 200, 60, 4, 1", "1.10101, 2.11426, 6576.80", "independent computation"}},
    relation<"suction_pressure", "ambient_pressure">(&seal::above_vacuum, seal::vacuum_sentence),
    relation<"vane_diameter", "impeller_diameter">([](Length v, Length d) { return v <= d; },
                                                   "it must not exceed the impeller diameter"),
    relation<"inner_diameter", "vane_diameter">([](Length r, Length v) { return r <= v; },
                                                "it must not exceed the outer diameter of the vanes"));

inline std::tuple<GaugePressure, AbsolutePressure> seal_barrier_pressure(GaugePressure chamber,
                                                                         PressureDifference margin,
                                                                         AbsolutePressure ambient)
{
    const GaugePressure barrier = chamber + margin;
    return {barrier, seal::absolute(barrier, ambient)};
}

inline constexpr auto seal_barrier_pressure_record = record<&seal_barrier_pressure>(
    {.name = "seal_barrier_pressure",
     .meaning = "Pressure to hold on the barrier liquid of a pressurised double seal",
     .also = "barrier fluid pressure|double seal|dual pressurized seal",
     .inputs = {input("chamber_pressure", "p_c", units::barg, limits::gauge_barg,
                      "highest pressure that the chamber can have, gauge: closed valve and worn back ring included"),
                input("margin", "dp", units::bar, above_up_to(0, 50), "what the barrier liquid keeps above it", 1.4),
                seal::ambient()},
     .results = {output("barrier_pressure", "p_b", units::barg,
                        "least pressure of the barrier liquid, gauge; the outer seal holds it against the ambient"),
                 output("absolute_pressure", "p_b", units::bara, "the same, absolute")},
     .equation = "p_b = p_c + dp",
     .source = "ISO 21049 / API 682: at least 0.14 MPa (20 psi) above the seal chamber (from memory of it; guidance "
               "pages repeat 1.4, 1.5 and 2 bar)",
     .cautions = {"Below the chamber's pressure the product enters the barrier liquid and the seal's faces may open: "
                  "alarm on a falling barrier pressure.",
                  "Both seals warm the barrier liquid: its own cooling and its vapour pressure want checking.",
                  caution::hot_or_toxic, caution::guide_only},
     .sound_anywhere = true,
     .example = {"3.2", "4.6, 5.61325", "hand calculation"}},
    relation<"chamber_pressure", "ambient_pressure">(&seal::above_vacuum, seal::vacuum_sentence));

}  // namespace cutwater::formulas

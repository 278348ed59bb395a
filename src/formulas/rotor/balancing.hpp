// What takes pressure off the back of an impeller: balance holes behind a ring, and back vanes.
#pragma once

#include "formulas/rotor/shroud.hpp"

#include <tuple>

namespace cutwater::formulas {

namespace rotor {

inline constexpr const char* vane_source =
    "core rotation between back vanes k_v = k + (1 - k) t/s, for k = 1/2 that of A. J. Stepanoff, Centrifugal and "
    "Axial Flow Pumps, 2nd "
    "edition, 1957 (from memory of it); with no gap it gives the handbooks' relief 3/8 A rho (u_2^2 - u_1^2)/2; that "
    "the relief falls as the gap grows: V. S. Lobanoff, R. R. Ross, Centrifugal Pumps, 2nd edition, p. 346 (read)";
inline constexpr const char* vane_gap = "The gap decides: as an open impeller is set away from its front wall, the "
                                        "back gap closes or opens with it and the thrust changes.";

/// From the smooth shroud's turning without vanes to the impeller's own without a gap.
inline Ratio turning_between_vanes(Length height, Length space, Ratio smooth)
{
    return smooth + (1 - smooth.value()) * (height / space);
}

constexpr auto vane_height()
{
    return input("vane_height", "t", units::mm, between(0, 500), "height of the back vanes; 0 for none");
}
constexpr auto vane_space()
{
    return input("space", "s", units::mm, above_up_to(0, 500),
                 "from the shroud's face to the wall behind it: vane height and running gap");
}
inline constexpr const char* height_within = "the vanes must not be higher than the space";
constexpr auto vanes_fit()
{
    return relation<"vane_height", "space">([](Length height, Length space) { return height <= space; }, height_within);
}

}  // namespace rotor

inline Ratio back_vane_core_rotation(Length height, Length space, Ratio smooth)
{
    return rotor::turning_between_vanes(height, space, smooth);
}

inline constexpr auto back_vane_core_rotation_record = record<&back_vane_core_rotation>(
    {.name = "back_vane_core_rotation",
     .meaning = "Turning of the liquid between back vanes over that of the impeller",
     .also = "pump-out vane rotation|back rib rotation|rotation factor of expelling vanes",
     .inputs = {rotor::vane_height(), rotor::vane_space(), rotor::core_rotation()},
     .results = {output("vane_rotation", "k_v", units::number, "turning of the liquid over that of the impeller")},
     .equation = "k_v = k + (1 - k) t/s",
     .source = rotor::vane_source,
     .cautions = {rotor::vane_gap, rotor::side_scatter},
     .sound_anywhere = true,
     .example = {"4, 5", "0.9", "hand calculation"}},
    rotor::vanes_fit());

inline Force back_vane_relief(Density density, RotationalSpeed speed, Length outer, Length inner, Length height,
                              Length space, Ratio smooth)
{
    const rotor::Ring ring{0.5 * outer, 0.5 * inner};
    const Force with_smooth = ring.force({}, density, speed, smooth);
    return with_smooth - ring.force({}, density, speed, rotor::turning_between_vanes(height, space, smooth));
}

inline constexpr auto back_vane_relief_record = record<&back_vane_relief>(
    {.name = "back_vane_relief",
     .meaning = "How much less the back vanes let the liquid press on the impeller's back than a smooth shroud would",
     .also = "pump-out vane thrust reduction|back rib relief|expelling vanes",
     .inputs = {rotor::density(), rotor::speed(),
                input("vane_outer_diameter", "D_v", units::mm, rotor::size_mm, "outer diameter of the back vanes"),
                input("vane_inner_diameter", "D_h", units::mm, between(0, 5000), "inner diameter of the back vanes"),
                rotor::vane_height(), rotor::vane_space(), rotor::core_rotation()},
     .results = {output("relief", "dF", units::newton, "force taken off, over the vanes' own ring")},
     .equation = "dF = pi/64 rho omega^2 (k_v^2 - k^2) (D_v^2 - D_h^2)^2, k_v = k + (1 - k) t/s",
     .source = rotor::vane_source,
     .cautions = {"The pressure falls further inside the vanes too: back_force_with_vanes takes that in.",
                  rotor::vane_gap, rotor::side_scatter},
     .example = {"1000, 2900, 200, 60, 5, 5", "4498.7", "3/8 A rho (u_2^2 - u_1^2)/2, by hand"}},
    rotor::vanes_fit(),
    relation<"vane_inner_diameter", "vane_outer_diameter">([](Length inner, Length outer) { return inner <= outer; },
                                                           "it must not exceed the vanes' outer diameter"));

inline PressureDifference balance_hole_pressure(PressureDifference before, Length ring, Length clearance, Length hole,
                                                Count holes, Ratio coefficients)
{
    const double gap = 0.5 * rotor::pi * ring.value() * clearance.value();
    const double open = holes.value * rotor::circle(hole).value() * coefficients;
    // Both flow the same: C_r A_r sqrt(dp_r - dp) = C_h A_h sqrt(dp). Written so that no clearance is no special case.
    return before * (gap * gap / (gap * gap + open * open));
}

inline constexpr auto balance_hole_pressure_record = record<&balance_hole_pressure>(
    {.name = "balance_hole_pressure",
     .meaning = "Pressure between the back ring and the balance holes, over the suction pressure",
     .also = "balance chamber pressure|pressure behind balancing holes",
     .inputs = {input("ring_pressure", "dp_r", units::bar, between(0, 1000),
                      "pressure outside of the back ring over the suction pressure, by shroud_pressure"),
                input("ring_diameter", "D_r", units::mm, rotor::size_mm, "diameter of the back ring"),
                input("diametral_clearance", "c", units::mm, rotor::clearance_mm,
                      "running clearance of the back ring, difference of the diameters"),
                input("hole_diameter", "d_h", units::mm, between(0, 500), "diameter of a balance hole"),
                input("holes", "z", units::count, between(0, 100), "number of balance holes"),
                input("coefficient_ratio", "C_h/C_r", units::number, between(0.1, 10),
                      "flow coefficient of the holes over that of the ring", 1)},
     .results = {output("pressure", "dp_b", units::bar,
                        "pressure behind the impeller inside the ring, over the suction pressure")},
     .equation = "dp_b = dp_r/[1 + (C_h A_h/(C_r A_r))^2], A_r = pi D_r c/2, A_h = z pi d_h^2/4",
     .source = "ring and holes in series, each as an orifice, derived here; that the holes should have at least 4 to 5 "
               "times the ring's area: common practice",
     .cautions = {"The clearance here is diametral; balance_hole_chamber_pressure asks for the radial one.",
                  "The pressure grows with the square of the worn clearance: check thrust and seal chamber at the "
                  "clearance at which the ring is replaced.",
                  "Blocked holes put the whole ring pressure behind the impeller.", rotor::side_scatter},
     .sound_anywhere = true,
     .example = {"3, 100, 0.4, 8, 5", "0.17647", "hand calculation: areas 251.33 and 62.83 mm2, 3/17"}},
    relation<"hole_diameter", "diametral_clearance", "holes">(
        [](Length hole, Length clearance, Count holes) {
            return ((hole > Length{}) & (holes.value > 0)) | (clearance > Length{});
        },
        "there must be holes or a clearance: with neither the pressure is not determined"));

inline Force back_force_with_ring(PressureDifference rim, Density density, RotationalSpeed speed, Length outer,
                                  Length ring, Length sleeve, PressureDifference inside, Ratio turning)
{
    return rotor::Ring{0.5 * outer, 0.5 * ring}.force(rim, density, speed, turning) +
           (rotor::circle(ring) - rotor::circle(sleeve)) * inside;
}

inline constexpr auto back_force_with_ring_record = record<&back_force_with_ring>(
    {.name = "back_force_with_ring",
     .meaning = "Axial force of the liquid on the back of an impeller with a back ring and balance holes, over that of "
                "the suction pressure",
     .also = "back shroud force with balance holes|hub side thrust",
     .inputs = {rotor::rim_pressure_input(), rotor::density(), rotor::speed(), rotor::impeller_diameter(),
                input("ring_diameter", "D_r", units::mm, rotor::size_mm, "diameter of the back ring"),
                input("sleeve_diameter", "d_s", units::mm, between(0, 5000),
                      "diameter at which the shaft, sleeve or seal leaves the space"),
                input("balance_pressure", "dp_b", units::bar, between(-100, 1000),
                      "pressure inside of the ring over the suction pressure, by balance_hole_pressure"),
                rotor::core_rotation()},
     .results = {output("force", "F_b", units::newton, "force towards the suction")},
     .equation = "F_b = pi/4 (D_2^2 - D_r^2) [dp_2 - rho (k omega)^2 (D_2^2 - D_r^2)/16] + pi/4 (D_r^2 - d_s^2) dp_b",
     .source = rotor::core_source,
     .scatter = {plus_minus("force", 0.3)},
     .cautions = {rotor::side_scatter},
     .example = {"3.6775, 1000, 2900, 200, 100, 40, 0.2", "7778.2", "hand calculation"}},
    relation<"ring_diameter", "impeller_diameter">([](Length ring, Length outer) { return ring <= outer; },
                                                   "it must not exceed the impeller's diameter"),
    relation<"sleeve_diameter", "ring_diameter">([](Length sleeve, Length ring) { return sleeve <= ring; },
                                                 "it must not exceed the ring's diameter"));

inline std::tuple<Force, PressureDifference> back_force_with_vanes(PressureDifference rim, Density density,
                                                                   RotationalSpeed speed, Length outer,
                                                                   Length vane_outer, Length vane_inner, Length sleeve,
                                                                   Length height, Length space, Ratio smooth,
                                                                   Steps steps)
{
    const Ratio between = rotor::turning_between_vanes(height, space, smooth);
    const rotor::Ring rings[] = {{0.5 * outer, 0.5 * vane_outer},
                                 {0.5 * vane_outer, 0.5 * vane_inner},
                                 {0.5 * vane_inner, 0.5 * sleeve}};
    const Ratio turning[] = {smooth, between, smooth};
    Force force{};
    PressureDifference pressure = rim;
    for (int i = 0; i < 3; ++i) {
        force += rings[i].force(pressure, density, speed, turning[i]);
        pressure -= rings[i].drop(density, speed, turning[i]);
        if (i == 0) steps("dp_v", "at the vanes' outer diameter", pressure, units::bar);
        if (i == 1) steps("dp_h", "at the vanes' inner diameter", pressure, units::bar);
    }
    steps("k_v", "k + (1 - k) t/s", between, units::number);
    return {force, pressure};
}

inline constexpr auto back_force_with_vanes_record = record<&back_force_with_vanes>(
    {.name = "back_force_with_vanes",
     .meaning = "Axial force of the liquid on the back of an impeller with back vanes, over that of the suction "
                "pressure, and the pressure at the sleeve",
     .also = "pump-out vane thrust|hub side thrust with back vanes|stuffing box pressure with back vanes",
     .inputs = {rotor::rim_pressure_input(), rotor::density(), rotor::speed(), rotor::impeller_diameter(),
                input("vane_outer_diameter", "D_v", units::mm, rotor::size_mm, "outer diameter of the back vanes"),
                input("vane_inner_diameter", "D_h", units::mm, between(0, 5000), "inner diameter of the back vanes"),
                input("sleeve_diameter", "d_s", units::mm, between(0, 5000),
                      "diameter at which the shaft, sleeve or seal leaves the space"),
                rotor::vane_height(), rotor::vane_space(), rotor::core_rotation()},
     .results = {output("force", "F_b", units::newton, "force towards the suction"),
                 output("sleeve_pressure", "dp_s", units::bar,
                        "pressure at the sleeve over the suction pressure; negative below it")},
     .equation =
         "three rings in a row, each F = pi/4 (D_o^2 - D_i^2) [dp_o - rho (k omega)^2 (D_o^2 - D_i^2)/16] and dp_i = "
         "dp_o - rho (k omega)^2 (D_o^2 - D_i^2)/8: smooth with k, vanes with k_v = k + (1 - k) t/s, smooth with k",
     .source = rotor::vane_source,
     .scatter = {plus_minus("force", 0.3)},
     .cautions = {"A pressure at the sleeve below the vapour pressure lets the liquid boil there and the shaft seal "
                  "run dry: compare absolute pressures at the liquid's temperature.",
                  rotor::vane_gap, rotor::side_scatter},
     .example = {"3.6775, 1000, 2900, 200, 200, 60, 40, 5, 5", "4429.1, -0.57642", "hand calculation"}},
    rotor::vanes_fit(),
    relation<"vane_outer_diameter", "impeller_diameter">([](Length vanes, Length outer) { return vanes <= outer; },
                                                         "it must not exceed the impeller's diameter"),
    relation<"vane_inner_diameter", "vane_outer_diameter">([](Length inner, Length outer) { return inner <= outer; },
                                                           "it must not exceed the vanes' outer diameter"),
    relation<"sleeve_diameter", "vane_inner_diameter">([](Length sleeve, Length vanes) { return sleeve <= vanes; },
                                                       "it must not exceed the vanes' inner diameter"));

inline std::tuple<Force, PressureDifference> back_vane_gap_change(Density density, RotationalSpeed speed, Length outer,
                                                                  Length inner, Length sleeve, Length height,
                                                                  Length before, Length after, Ratio smooth)
{
    const rotor::Ring vanes{0.5 * outer, 0.5 * inner};
    const Ratio first = rotor::turning_between_vanes(height, before, smooth),
                second = rotor::turning_between_vanes(height, after, smooth);
    const PressureDifference pressure = vanes.drop(density, speed, first) - vanes.drop(density, speed, second);
    const Force force = vanes.force({}, density, speed, second) - vanes.force({}, density, speed, first);
    return {force + pressure * (rotor::circle(inner) - rotor::circle(sleeve)), pressure};
}

inline constexpr auto back_vane_gap_change_record = record<&back_vane_gap_change>(
    {.name = "back_vane_gap_change",
     .meaning = "How thrust and pressure at the sleeve change when the gap behind the back vanes changes, as by wear "
                "or by resetting an open impeller",
     .also = "thrust change after impeller adjustment|pump-out vane clearance|back clearance effect",
     .inputs = {rotor::density(), rotor::speed(),
                input("vane_outer_diameter", "D_v", units::mm, rotor::size_mm, "outer diameter of the back vanes"),
                input("vane_inner_diameter", "D_h", units::mm, between(0, 5000), "inner diameter of the back vanes"),
                input("sleeve_diameter", "d_s", units::mm, between(0, 5000),
                      "diameter at which the shaft, sleeve or seal leaves the space"),
                rotor::vane_height(),
                input("space_before", "s_1", units::mm, above_up_to(0, 500),
                      "from the shroud's face to the wall behind it, before: vane height and gap"),
                input("space_after", "s_2", units::mm, above_up_to(0, 500), "the same after the change"),
                rotor::core_rotation()},
     .results = {output("thrust_change", "dF_b", units::newton,
                        "change of the force towards the suction; positive where the gap has grown"),
                 output("pressure_change", "dp_s", units::bar, "change of the pressure at the sleeve")},
     .equation = "dp_s = rho omega^2 (k_1^2 - k_2^2) (D_v^2 - D_h^2)/8; dF_b = pi/64 rho omega^2 (k_1^2 - k_2^2) "
                 "(D_v^2 - D_h^2)^2 + pi/4 (D_h^2 - d_s^2) dp_s; k_1, k_2 = k + (1 - k) t/s",
     .source = rotor::vane_source,
     .cautions = {"With an open impeller the front gap changes too: its force on the vanes is not in this figure.",
                  "Closing the back gap lowers the pressure at the seal: check that the liquid does not boil there.",
                  rotor::side_scatter},
     .example = {"1000, 2900, 180, 60, 40, 4, 5, 6", "494.17, 0.38366", "hand calculation"}},
    relation<"vane_height", "space_before">([](Length height, Length space) { return height <= space; },
                                            "the vanes must not be higher than the space was before"),
    relation<"vane_height", "space_after">([](Length height, Length space) { return height <= space; },
                                           "the vanes must not be higher than the space is after"),
    relation<"vane_inner_diameter", "vane_outer_diameter">([](Length inner, Length outer) { return inner <= outer; },
                                                           "it must not exceed the vanes' outer diameter"),
    relation<"sleeve_diameter", "vane_inner_diameter">([](Length sleeve, Length vanes) { return sleeve <= vanes; },
                                                       "it must not exceed the vanes' inner diameter"));

}  // namespace cutwater::formulas

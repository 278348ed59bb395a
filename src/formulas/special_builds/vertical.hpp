// Vertical sump pumps: what the long shaft and column do, and the pressure at the inlet below.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <algorithm>
#include <numbers>
#include <tuple>

namespace cutwater::formulas {

enum class ClearanceVerdict { clear, touches };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<2> cutwater::words_of<cutwater::formulas::ClearanceVerdict>{"clear", "touches"};

namespace cutwater::formulas {

namespace vertical {

constexpr auto length(const char* meaning) { return input("length", "L", units::metre, above_up_to(0, 500), meaning); }
constexpr auto modulus()
{
    return input("modulus", "E", units::GPa, above_up_to(0, 1000),
                 "elastic modulus: steel 206, austenitic steel 195, titanium 105", 206);
}
constexpr auto density()
{
    return input("metal_density", "rho_s", units::kgm3, between(0, 25000),
                 "density of its metal; 0 leaves its own weight out", 7850);
}

inline Area round(Length outside, Length inside)
{
    return std::numbers::pi / 4 * (outside * outside - inside * inside);
}

inline constexpr const char* source =
    "Hooke's law, the bar's own weight counted half; the line-shaft relation without weights as published for vertical "
    "turbine pumps "
    "(elongation = head x setting x thrust factor/(area x 29e6 psi), read)";
inline constexpr const char* set_warm =
    "Heat lengthens shaft and column too, unlike when their materials or temperatures differ. Set the lift as the pump "
    "maker says, running loads and all.";

/// First critical speed of a shaft that is pinned at both ends of a span.
inline RotationalSpeed pinned(Length span, Length diameter, Stress modulus, Density metal, Density liquid,
                              Force tension)
{
    const auto second_moment = std::numbers::pi / 64 * (diameter * diameter) * (diameter * diameter);
    const auto mass_per_length = (metal + liquid) * round(diameter, Length{});
    const auto stiffness = modulus * second_moment;
    const Ratio pulled = 1.0 + tension * span * span / (std::numbers::pi * std::numbers::pi * stiffness);
    const Frequency turns = std::numbers::pi / 2 / (span * span) * square_root(stiffness / mass_per_length) *
                            square_root(pulled);
    return RotationalSpeed::revolutions(turns);
}

constexpr auto shaft_diameter()
{
    return input("shaft_diameter", "d", units::mm, between(1, 1000), "diameter of the solid shaft");
}
constexpr auto liquid_density()
{
    return input("liquid_density", "rho_l", units::kgm3, between(0, 25000),
                 "density of the liquid round the shaft, which moves with it; 0 for a shaft in air; the oil's in a "
                 "full tube");
}

inline constexpr const char* pinned_source =
    "beam on pinned supports under tension: W. Thomson, Theory of Vibration with Applications; S. Timoshenko, "
    "Vibration Problems in Engineering (from memory of "
    "both), checked against a finite-element computation; added mass of a cylinder in wide liquid: 1 (same)";
inline constexpr const char* pins =
    "Real bearings hold the shaft stiffer than pins while new, softer when worn; a narrow column raises the liquid's "
    "added mass; whirl in worn or dry guide bearings is another thing.";

}  // namespace vertical

inline Length line_shaft_stretch(Force thrust, Mass impellers, Length length, Length diameter, Stress modulus,
                                 Density metal, Steps steps)
{
    const Area section = vertical::round(diameter, Length{});
    const Force below = thrust + impellers * standard_gravity;
    const Force own = metal * standard_gravity * section * length;
    steps("W_s", "weight of the shaft", own, units::newton);
    return (below + own / 2.0) * length / (section * modulus);
}

inline constexpr Record<&line_shaft_stretch> line_shaft_stretch_record{
    .name = "line_shaft_stretch",
    .meaning = "How much the line shaft of a vertical pump stretches under hydraulic thrust and weight",
    .also = "shaft elongation|line shaft elongation|shaft stretch|impeller lift|lateral setting|vertical turbine pump",
    .inputs = {input("thrust", "F", units::newton, from(0), "hydraulic thrust downwards"),
               input("impeller_mass", "m", units::kg, from(0), "impellers and what else hangs at the lower end"),
               vertical::length("length of the shaft from thrust bearing to impeller"), vertical::shaft_diameter(),
               vertical::modulus(), vertical::density()},
    .results = {output("stretch", "dl", units::mm, "lengthening of the shaft")},
    .equation = "dl = (F + m g + W_s/2) L/(A E), A = pi d^2/4, W_s = rho_s g A L",
    .source = vertical::source,
    .cautions = {vertical::set_warm, "At closed valve the thrust is greatest; in run-out it may turn upwards."},
    .example = {"10000, 20, 5, 40", "0.20161", "hand calculation: (10000 + 196.13 + 241.85) x 5/(1.25664e-3 x 206e9)"}};

inline Length column_stretch(Force load, Length length, Length outside, Length wall, Stress modulus, Density metal,
                             Steps steps)
{
    const Area section = vertical::round(outside, outside - 2.0 * wall);
    const Force own = metal * standard_gravity * section * length;
    steps("W_c", "weight of the column", own, units::newton);
    return (load + own / 2.0) * length / (section * modulus);
}

inline constexpr auto column_stretch_record = record<&column_stretch>(
    {.name = "column_stretch",
     .meaning = "How much the column pipe of a vertical pump stretches under the liquid and what hangs from it",
     .also = "column elongation|riser stretch|column pipe|discharge column",
     .inputs = {input("load", "F", units::newton, from(0),
                      "what hangs at the lower end: bowls or casing, their liquid, and discharge pressure times the "
                      "bore's area where it pulls"),
                vertical::length("length of the column"),
                input("outside_diameter", "D", units::mm, limits::bore_mm, "outside diameter of the column"),
                input("wall", "w", units::mm, above(0), "wall of the column"), vertical::modulus(),
                vertical::density()},
     .results = {output("stretch", "dl", units::mm, "lengthening of the column")},
     .equation = "dl = (F + W_c/2) L/(A E), A = pi (D^2 - (D - 2 w)^2)/4, W_c = rho_s g A L",
     .source = vertical::source,
     .cautions = {vertical::set_warm,
                  "For line_shaft_clearance only what comes after the lift was set counts: metal_density 0, and of the "
                  "load liquid and pressure alone."},
     .example = {"30000, 5, 219.1, 6.35", "0.17624", "hand calculation: (30000 + 816.8) x 5/(4.2442e-3 x 206e9)"}},
    relation<"wall", "outside_diameter">([](Length wall, Length outside) { return 2.0 * wall <= outside; },
                                         "it must be at most half the outside diameter"));

inline std::tuple<ClearanceVerdict, Length> line_shaft_clearance(Length set, Length shaft, Length column, Length heat)
{
    const Length left = set - (shaft - column) - heat;
    return {left > Length{} ? ClearanceVerdict::clear : ClearanceVerdict::touches, left};
}

inline constexpr Record<&line_shaft_clearance> line_shaft_clearance_record{
    .name = "line_shaft_clearance",
    .meaning = "Clearance that a lifted impeller keeps below it once the shaft has stretched",
    .also = "impeller lift|lateral|impeller setting|end play|bowl clearance|shaft adjustment",
    .inputs = {input("lift", "s_0", units::mm, from(0),
                     "height that the impeller was raised from its lowest place, unloaded"),
               input("shaft_stretch", "dl_s", units::mm, from(0), "as from line_shaft_stretch"),
               input("column_stretch", "dl_c", units::mm, from(0),
                     "only what comes after the lift was set: liquid and discharge pressure, as from column_stretch "
                     "with metal_density 0 and no hanging weight; 0 is the safe side",
                     0),
               input("differential_expansion", "dl_t", units::mm, any,
                     "by how much more heat lengthens the shaft than the column", 0)},
    .results = {output_word<ClearanceVerdict>("verdict", "verdict", "clear, or touches when nothing is left"),
                output("clearance", "s", units::mm, "clearance left under load; negative: it rubs")},
    .equation = "s = s_0 - (dl_s - dl_c) - dl_t",
    .source = "geometry",
    .cautions = {vertical::set_warm,
                 "The weight of column and bowls has stretched the column before the lift is set: never credit it.",
                 "Check the way up too: upthrust at run-out and at start must not lift the impeller into the casing."},
    .sound_anywhere = true,
    .example = {"1.5, 0.20161, 0.08578", R"("clear", 1.38417)", "hand calculation: 1.5 - 0.11583"}};

inline RotationalSpeed line_shaft_critical_speed(Length span, Length diameter, Density liquid, Stress modulus,
                                                 Density metal, Force tension)
{
    return vertical::pinned(span, diameter, modulus, metal, liquid, tension);
}

inline constexpr Record<&line_shaft_critical_speed> line_shaft_critical_speed_record{
    .name = "line_shaft_critical_speed",
    .meaning = "First bending critical speed of a line shaft between two guide bearings",
    .also = "critical speed|line shaft bearing spacing|whirl speed|lateral critical|guide bearing span",
    .inputs = {input("span", "l", units::mm, between(50, 20000), "distance between guide bearings"),
               vertical::shaft_diameter(), vertical::liquid_density(), vertical::modulus(),
               input("metal_density", "rho_s", units::kgm3, between(500, 25000), "density of the shaft", 7850),
               input("tension", "F", units::newton, from(0), "pull in the shaft", 0)},
    .results = {output("critical_speed", "n_c", units::rpm, "first critical speed")},
    .equation = "n_c = (pi/(2 l^2)) sqrt(E I/((rho_s + rho_l) A)) sqrt(1 + F l^2/(pi^2 E I)), in revolutions",
    .source = vertical::pinned_source,
    .cautions = {vertical::pins,
                 "Keep the first critical at least 10 to 30 % above the greatest speed: see standard_limit."},
    .example = {"1500, 40, 1000", "2020.9", "hand calculation: 35.763 x sqrt(7850/8850) revolutions a second"}};

inline Length line_shaft_bearing_span(RotationalSpeed speed, Ratio separation, Length diameter, Density liquid,
                                      Stress modulus, Density metal)
{
    const Length metre = Length::from_value(1);
    const Ratio over = vertical::pinned(metre, diameter, modulus, metal, liquid, Force{}) / (speed * separation);
    return metre * square_root(over);
}

inline constexpr Record<&line_shaft_bearing_span> line_shaft_bearing_span_record{
    .name = "line_shaft_bearing_span",
    .meaning = "Greatest distance between guide bearings that keeps a line shaft's critical speed above its own",
    .also = "bearing spacing|line shaft bearing spacing|guide bearing distance|maximum bearing span|steady bearing",
    .inputs = {input("speed", "n", units::rpm, limits::speed_rpm, "greatest speed"),
               input("separation", "n_c/n", units::number, between(1, 5),
                     "critical speed over greatest speed; 1.1 to 1.3 is asked for"),
               vertical::shaft_diameter(), vertical::liquid_density(), vertical::modulus(),
               input("metal_density", "rho_s", units::kgm3, between(500, 25000), "density of the shaft", 7850)},
    .results = {output("span", "l", units::mm, "greatest distance between guide bearings")},
    .equation = "l = sqrt((pi/2) sqrt(E I/((rho_s + rho_l) A))/(n n_c/n)), the tension left out",
    .source = vertical::pinned_source,
    .cautions = {vertical::pins,
                 "ISO 13709 gives a largest spacing by diameter and speed in a figure that could not be read: the "
                 "lesser of both counts."},
    .example = {"1450, 1.3, 40, 1000", "1553.1", "hand calculation: 1500 x sqrt(2020.93/1885)"}};

inline AbsolutePressure pressure_at_inlet(AbsolutePressure surface, Length submergence, Density density, Head losses)
{
    return surface + density * standard_gravity * (submergence - losses);
}

inline constexpr auto pressure_at_inlet_record = record<&pressure_at_inlet>(
    {.name = "pressure_at_inlet",
     .meaning = "Pressure at the inlet of a submerged pump",
     .also = "inlet pressure|sump pump|submergence pressure|vertical pump suction pressure|bell pressure",
     .inputs = {input("surface_pressure", "p_s", units::bara, limits::surface_bara,
                      "absolute pressure on the liquid in the sump"),
                input("submergence", "h", units::metre, from(0),
                      "lowest level above the inlet datum of the first impeller"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid"),
                input("losses", "h_f", units::metre, from(0), "losses of strainer, bell and tail pipe", 0)},
     .results = {output("inlet_pressure", "p_1", units::bara,
                        "total absolute pressure at the datum, velocity head included")},
     .equation = "p_1 = p_s + rho g (h - h_f)",
     .source = "hydrostatics",
     .cautions = {"Against boiling hold it by npsh_available; against vortices by minimum_submergence: a low sump "
                  "fails by air before it fails by pressure.",
                  caution::hot_or_toxic},
     .sound_anywhere = true,
     .example = {"1.013, 1.2, 1830, 0.3", "1.17452", "hand calculation: 1830 x 9.80665 x 0.9 = 16151.6 Pa"}},
    relation<"losses", "surface_pressure", "density", "submergence">(
        [](Head losses, AbsolutePressure surface, Density density, Length submergence) {
            return surface.above_zero() + density * standard_gravity * (submergence - losses) > PressureDifference{};
        },
        "the losses are more than the pressure at the inlet: no liquid can flow so"));

}  // namespace cutwater::formulas

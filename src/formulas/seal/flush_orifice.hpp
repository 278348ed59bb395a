// What lets the flush into the chamber, and how fast it leaves through the throat.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <numbers>
#include <tuple>

namespace cutwater::formulas {

enum class OrificeBore { free_to_pass, may_block };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::OrificeBore>{"large enough", "may block"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace seal {

inline constexpr const char* orifice_source = "Bernoulli's equation with a discharge coefficient of a sharp-edged "
                                              "orifice, about 0.62; least bore 3 mm: API 682 (both from memory)";
inline constexpr const char* small_plates = "For a sharp-edged plate in a line at least four times as wide; short "
                                            "bores and choke tubes have other coefficients. +-5 %.";
inline constexpr const char* flashing_jet =
    "A hot liquid may flash in the jet and pass less: check bypass_orifice_cavitation.";

constexpr auto pressure_drop()
{
    return input("pressure_drop", "dp", units::bar, above_up_to(0, 1000),
                 "pressure from the flush's source to the chamber, all orifices together");
}
constexpr auto flush_density()
{
    return input("density", "rho", units::kgm3, limits::density_kgm3, "density of the flush");
}
constexpr auto coefficient()
{
    return input("discharge_coefficient", "C_d", units::number, between(0.4, 1), "of each orifice", 0.62);
}
constexpr auto in_series()
{
    return input("orifices", "N", units::count, between(1, 20),
                 "equal orifices in series, far enough apart to slow the jet", 1);
}

inline Velocity orifice_velocity(PressureDifference drop, Density density, Count orifices)
{
    return square_root(2.0 * drop / (orifices.value * density));
}

}  // namespace seal

inline std::tuple<Length, OrificeBore> seal_flush_orifice_bore(Flow flow, PressureDifference drop, Density density,
                                                               Ratio coefficient, Count orifices, Length least)
{
    const Velocity jet = seal::orifice_velocity(drop, density, orifices);
    const Length bore = square_root(Area(flow / (coefficient * jet * (std::numbers::pi / 4))));
    return {bore, bore < least ? OrificeBore::may_block : OrificeBore::free_to_pass};
}

inline constexpr auto seal_flush_orifice_bore_record = record<&seal_flush_orifice_bore>(
    {.name = "seal_flush_orifice_bore",
     .meaning = "Bore of the orifice that lets a seal's flush through",
     .also = "flush orifice|restriction orifice|flow control orifice",
     .inputs = {input("flow", "q", units::lmin, above_up_to(0, 10000), "flush wanted"), seal::pressure_drop(),
                seal::flush_density(), seal::coefficient(), seal::in_series(),
                input("least_bore", "d_min", units::mm, between(0, 50), "bore below which it may block", 3)},
     .results = {output("bore", "d", units::mm, "bore of each orifice"),
                 output_word<OrificeBore>("size", "size", "large enough, or may block")},
     .equation = "d = sqrt(4 q/(pi C_d v)), v = sqrt(2 dp/(N rho))",
     .source = seal::orifice_source,
     .cautions = {"Below about 3 mm an orifice blocks with the first scale: take several in series instead.",
                  seal::small_plates, seal::flashing_jet},
     .example = {"8.3236, 5, 998", "3.00000, \"large enough\"", "hand calculation"}});

inline std::tuple<Flow, Velocity> seal_flush_orifice_flow(Length bore, PressureDifference drop, Density density,
                                                          Ratio coefficient, Count orifices)
{
    const Velocity jet = seal::orifice_velocity(drop, density, orifices);
    return {coefficient * (std::numbers::pi / 4) * bore * bore * jet, jet};
}

inline constexpr auto seal_flush_orifice_flow_record = record<&seal_flush_orifice_flow>(
    {.name = "seal_flush_orifice_flow",
     .meaning = "Flush that an orifice lets into the seal chamber",
     .also = "flush orifice|restriction orifice|recirculation flow to the seal",
     .inputs = {input("bore", "d", units::mm, above_up_to(0, 100), "bore of each orifice"), seal::pressure_drop(),
                seal::flush_density(), seal::coefficient(), seal::in_series()},
     .results = {output("flow", "q", units::lmin, "flush"),
                 output("jet_velocity", "v", units::ms, "velocity of the jet, before contraction")},
     .equation = "q = C_d (pi/4) d^2 v, v = sqrt(2 dp/(N rho))",
     .source = seal::orifice_source,
     .cautions = {"A flush from the discharge falls with the pump's head: work it out again for the worn pump.",
                  seal::small_plates, seal::flashing_jet},
     .example = {"3, 5, 998", "8.32358, 31.6544", "hand calculation"}});

inline Velocity seal_throat_velocity(Flow flow, Length bush, Length shaft)
{
    return flow / ((std::numbers::pi / 4) * (bush * bush - shaft * shaft));
}

inline constexpr auto seal_throat_velocity_record = record<&seal_throat_velocity>(
    {.name = "seal_throat_velocity",
     .meaning = "Velocity of the flush through the throat bush, against the liquid and solids of the pump",
     .also = "throat bushing velocity|flush velocity",
     .inputs = {input("flow", "q", units::lmin, between(0, 10000), "flush into the chamber"),
                input("bush_bore", "D_t", units::mm, above_up_to(0, 1000), "bore of the throat bush"),
                input("shaft_diameter", "d_s", units::mm, above_up_to(0, 1000), "diameter of shaft or sleeve in it")},
     .results = {output("velocity", "v", units::ms, "mean velocity towards the impeller")},
     .equation = "v = q/[(pi/4)(D_t^2 - d_s^2)]",
     .source = "continuity; common practice",
     .cautions = {"What keeps solids back is for the seal maker to say: a few metres a second through a close bush is "
                  "common practice.",
                  "A worn bush lets the same flush through more slowly."},
     .sound_anywhere = true,
     .example = {"4, 41, 40", "1.04793", "hand calculation"}},
    relation<"shaft_diameter", "bush_bore">([](Length d, Length bore) { return d < bore; },
                                            "it must be less than the bore of the throat bush"));

}  // namespace cutwater::formulas

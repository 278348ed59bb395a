// Heat balance of the seal chamber, and the flush that it asks for.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <tuple>

namespace cutwater::formulas {

enum class FlushNeed { none, flush };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::FlushNeed>{"no flush needed", "flush needed"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace seal {

inline constexpr Interval temperatures_degC = inside(-273.15, 1000);
inline constexpr Interval specific_heats = between(0.1, 15);  // kJ/(kg K): 4184 meant as J is refused
inline constexpr const char* well_mixed =
    "The chamber is taken for well mixed; at the faces the liquid is warmer still: see seal_face_temperature_rise.";
inline constexpr const char* uncertain_exchange =
    "Exchange with the pump through the throat is known from a measured chamber temperature or not at all: a closed "
    "throat bush gives almost none.";
inline constexpr const char* flush_source =
    "steady heat balance of a well-mixed chamber; heat soak as in ISO 21049 / API 682, annex F (from memory of it)";

constexpr auto density()
{
    return input("density", "rho", units::kgm3, limits::density_kgm3, "density of the liquid in the chamber");
}
constexpr auto specific_heat()
{
    return input("specific_heat", "c_p", units::kJkgK, specific_heats,
                 "specific heat capacity of the liquid in the chamber");
}
constexpr auto temperature(const char* name, const char* symbol, const char* meaning)
{
    return input(name, symbol, units::degC, temperatures_degC, meaning);
}

inline ThermalConductance carried(Flow flow, Density density, SpecificHeat heat) { return flow * density * heat; }

}  // namespace seal

inline std::tuple<Power, ThermalConductance> seal_heat_soak(ThermalConductivity coefficient, Length balance,
                                                            Temperature pump, Temperature chamber)
{
    const ThermalConductance conductance = coefficient * balance;
    return {conductance * (pump - chamber), conductance};
}

inline constexpr auto seal_heat_soak_record = record<&seal_heat_soak>(
    {.name = "seal_heat_soak",
     .meaning = "Heat that flows from the pump into a cooler seal chamber through metal and shaft",
     .also = "heat soak|conduction from the casing",
     .inputs = {input("soak_coefficient", "u", units::WmmK, above_up_to(0, 10),
                      "conductance for each millimetre of balance diameter; 0.25 W/(mm K) in the standard's example "
                      "for stainless parts"),
                input("balance_diameter", "D_b", units::mm, above_up_to(0, 1000), "balance diameter of the seal"),
                seal::temperature("pump_temperature", "T_p", "temperature of the pumped liquid"),
                seal::temperature("chamber_temperature", "T_c", "temperature of the liquid in the chamber")},
     .results = {output("heat", "Q", units::kW, "heat flow into the chamber; negative out of it"),
                 output("conductance", "U A", units::WK, "heat flow for each kelvin")},
     .equation = "Q = U A (T_p - T_c), U A = u D_b",
     .source = "ISO 21049:2004 / API 682, annex F, heat soak (from memory of it)",
     .cautions = {"One published coefficient for one build: +-50 %; a jacket, a gasketed cover or a hollow shaft "
                  "change it. Prefer one found from measured temperatures."},
     .sound_anywhere = true,
     .example = {"0.25, 55, 175, 65", "1.5125, 13.75",
                 "ISO 21049 annex F, example: printed 1.5 kW (from memory of it)"}});

inline Outcome<Temperature> seal_chamber_temperature(Power face_heat, Temperature pump, Flow exchange,
                                                     ThermalConductance soak, Flow flush, Temperature flush_temperature,
                                                     Density density, SpecificHeat specific_heat, Power stirring,
                                                     ThermalConductance cooling, Temperature cooling_temperature,
                                                     Steps steps)
{
    const ThermalConductance by_pump = seal::carried(exchange, density, specific_heat) + soak;
    const ThermalConductance by_flush = seal::carried(flush, density, specific_heat);
    const ThermalConductance all = by_pump + by_flush + cooling;
    if (!(all.value() > 0))
        return NoValue{
            CUTWATER_NO_ANSWER, "exchange_flow",
            "nothing carries heat away: give an exchange with the pump, a heat soak, a flush or a cooling above 0"};
    steps("G_p", "rho c_p q_x + U A", by_pump, units::WK);
    steps("G_f", "rho c_p q_f", by_flush, units::WK);
    // Over the pump's temperature, so that no large sum of kelvins hides a small rise.
    const TemperatureDifference rise = (face_heat + stirring + by_flush * (flush_temperature - pump) +
                                        cooling * (cooling_temperature - pump)) /
                                       all;
    steps("T_c - T_p", "chamber over pump", rise, units::kelvin_difference);
    return pump + rise;
}

inline constexpr auto seal_chamber_temperature_record = record<&seal_chamber_temperature>(
    {.name = "seal_chamber_temperature",
     .meaning = "Temperature of the liquid in the seal chamber, from the heat that comes and goes",
     .also = "stuffing box temperature|seal cavity temperature|seal chamber heat balance",
     .inputs = {input("face_heat", "P", units::kW, between(0, 1000),
                      "heat of all pairs of faces in the chamber, as from seal_face_heat"),
                seal::temperature("pump_temperature", "T_p", "temperature of the pumped liquid"),
                input("exchange_flow", "q_x", units::lmin, between(0, 10000),
                      "liquid that the chamber and the pump exchange of themselves; 0 for a closed throat bush, or "
                      "where the pump is the cooler"),
                input("soak_conductance", "U A", units::WK, between(0, 100000),
                      "conductance between chamber and pump through the metal, as from seal_heat_soak"),
                input("flush_flow", "q_f", units::lmin, between(0, 10000), "flush led into the chamber; 0 without"),
                seal::temperature("flush_temperature", "T_f",
                                  "temperature of the flush; the pump's for one taken from the discharge"),
                seal::density(), seal::specific_heat(),
                input("stirring_heat", "P_s", units::kW, between(0, 1000),
                      "heat of stirring by collar, springs or pumping ring", 0),
                input("cooling_conductance", "G_c", units::WK, between(0, 100000),
                      "conductance to a cooling jacket or to the surroundings", 0),
                input("cooling_temperature", "T_k", units::degC, seal::temperatures_degC,
                      "temperature of that jacket or of the surroundings", 20)},
     .results = {output("chamber_temperature", "T_c", units::degC, "temperature of the liquid in the chamber")},
     .equation = "T_c = T_p + [P + P_s + rho c_p q_f (T_f - T_p) + G_c (T_k - T_p)]/[rho c_p (q_x + q_f) + U A + G_c]",
     .source = seal::flush_source,
     .cautions = {seal::well_mixed, seal::uncertain_exchange,
                  "A flush of another liquid: take density and specific heat of what fills the chamber.",
                  caution::hot_or_toxic},
     .sound_anywhere = true,
     .example = {"0.45, 80, 1, 13.75, 0, 80, 972, 4.197", "85.5052",
                 "hand calculation: 450 W over 67.99 + 13.75 W/K"}});

inline Flow seal_flush_flow(Power heat, TemperatureDifference rise, Density density, SpecificHeat specific_heat)
{
    return heat / (density * specific_heat * rise);
}

inline constexpr auto seal_flush_flow_record = record<&seal_flush_flow>(
    {.name = "seal_flush_flow",
     .meaning = "Flush that carries a heat away with an allowed rise of its temperature",
     .also = "flush rate|seal flush rate|barrier liquid circulation",
     .inputs = {input("heat", "Q", units::kW, between(0, 1000),
                      "heat to carry away: every pair of faces, heat soak and stirring"),
                input("allowed_rise", "dT", units::kelvin_difference, above_up_to(0, 200),
                      "rise from inlet to chamber; API 682 has 5.6 K for a single seal's flush, 8 K for watery and 16 "
                      "K for oily barrier liquids (from memory of it)"),
                input("density", "rho", units::kgm3, limits::density_kgm3, "density of the flush"),
                input("specific_heat", "c_p", units::kJkgK, seal::specific_heats,
                      "specific heat capacity of the flush")},
     .results = {output("flow", "q", units::lmin, "flow of the flush")},
     .equation = "q = Q/(rho c_p dT)",
     .source = "heat balance; in US units q = Q/(500 c_p s dT), gpm, Btu/h, degF: W. E. Forsthoffer, Best Practice "
               "Handbook for Rotating Machinery 2011, p. 508 (page read)",
     .cautions = {"Forsthoffer's 125 for litres a minute is rounded: the balance itself is used here.",
                  seal::well_mixed},
     .sound_anywhere = true,
     .example = {"0.44664, 5.6, 998, 4.18", "1.14713", "hand calculation"}});

inline Outcome<std::tuple<Flow, FlushNeed, Power>> seal_flush_needed(Power face_heat, Temperature pump, Flow exchange,
                                                                     ThermalConductance soak, Temperature allowed,
                                                                     Temperature flush_temperature, Density density,
                                                                     SpecificHeat specific_heat, Power stirring,
                                                                     ThermalConductance cooling,
                                                                     Temperature cooling_temperature)
{
    const ThermalConductance by_pump = seal::carried(exchange, density, specific_heat) + soak;
    const Power left = face_heat + stirring + by_pump * (pump - allowed) + cooling * (cooling_temperature - allowed);
    const bool flows = left.value() > 0;
    if (flows & !(flush_temperature < allowed))
        return NoValue{CUTWATER_NO_ANSWER,
                       "flush_temperature",
                       "a flush of {0} cannot hold the chamber at {1}; it must be colder",
                       {number_in(flush_temperature, units::degC), number_in(allowed, units::degC)}};
    return std::tuple(either(flows, seal_flush_flow(left, allowed - flush_temperature, density, specific_heat), Flow{}),
                      flows ? FlushNeed::flush : FlushNeed::none, either(flows, left, Power{}));
}

inline constexpr auto seal_flush_needed_record = record<&seal_flush_needed>(
    {.name = "seal_flush_needed",
     .meaning = "Whether a seal chamber needs a flush to stay at an allowed temperature, and how much",
     .also = "external flush|flush requirement",
     .inputs = {input("face_heat", "P", units::kW, between(0, 1000),
                      "heat of all pairs of faces in the chamber, as from seal_face_heat"),
                seal::temperature("pump_temperature", "T_p", "temperature of the pumped liquid"),
                input("exchange_flow", "q_x", units::lmin, between(0, 10000),
                      "liquid that the chamber and the pump exchange of themselves; 0 for a closed throat bush, or "
                      "where the pump is the cooler"),
                input("soak_conductance", "U A", units::WK, between(0, 100000),
                      "conductance between chamber and pump through the metal, as from seal_heat_soak"),
                seal::temperature("allowed_temperature", "T_a",
                                  "highest temperature allowed in the chamber, as from seal_allowed_temperature"),
                seal::temperature("flush_temperature", "T_f", "temperature of the flush"), seal::density(),
                seal::specific_heat(),
                input("stirring_heat", "P_s", units::kW, between(0, 1000),
                      "heat of stirring by collar, springs or pumping ring", 0),
                input("cooling_conductance", "G_c", units::WK, between(0, 100000),
                      "conductance to a cooling jacket or to the surroundings", 0),
                input("cooling_temperature", "T_k", units::degC, seal::temperatures_degC,
                      "temperature of that jacket or of the surroundings", 20)},
     .results = {output("flush_flow", "q_f", units::lmin, "least flush; 0 when none is needed"),
                 output_word<FlushNeed>("need", "need", "whether one is needed"),
                 output("heat", "Q", units::kW, "heat that the flush has to carry away")},
     .equation = "q_f = Q/[rho c_p (T_a - T_f)], Q = P + P_s + (rho c_p q_x + U A)(T_p - T_a) + G_c (T_k - T_a)",
     .source = seal::flush_source,
     .cautions = {"For temperature alone: solids, gas, a bad lubricant or the keeping out of air can ask for a flush "
                  "where temperature does not.",
                  seal::well_mixed, seal::uncertain_exchange,
                  "The flush enters the product: see that it may, and that its supply does not fail.",
                  caution::hot_or_toxic},
     .sound_anywhere = true,
     .example = {"0.45, 80, 0.5, 13.75, 83, 40, 972, 4.197", "0.104925, \"flush needed\", 0.306763",
                 "hand calculation"}});

}  // namespace cutwater::formulas

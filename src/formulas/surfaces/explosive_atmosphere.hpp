// Surface temperatures in explosive atmospheres: classes, and what a gas or dust allows.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"

#include <tuple>

namespace cutwater::formulas {

enum class TemperatureClass { t1, t2, t3, t4, t5, t6 };

}  // namespace cutwater::formulas

template <>
inline constexpr cutwater::Words<6> cutwater::words_of<cutwater::formulas::TemperatureClass>{"T1", "T2", "T3",
                                                                                             "T4", "T5", "T6"};

namespace cutwater::formulas {

namespace explosive {

inline constexpr double class_degc[] = {450, 300, 200, 135, 100, 85};

inline constexpr const char* source =
    "IEC 60079-0, table of temperature classes (quoted alike in six places, excerpts read; clause 5.3.2.2 from "
    "memory): surface at most the class's "
    "value, the gas's ignition temperature above it";
inline constexpr const char* certificate =
    "The equipment's certificate and marking rule, with their ambient range, usually -20 to 40 degC; this tells no "
    "more than a number. Zoning, selection and "
    "inspection belong to a competent person under the local code.";
inline constexpr const char* liquid_sets =
    "The pumped liquid often sets the surface temperature: take its greatest temperature, heating in the pump "
    "included, when that is above the pump's own.";
inline constexpr const char* upsets =
    "Dry running, a closed valve, a failed bearing, seal or sealed-drive circuit make surfaces hotter than the duty "
    "does: they are outside the class unless the certificate covers them.";
inline constexpr const char* class_is_no_ignition =
    "A class is no ignition temperature: take the substance's own from its data sheet or IEC 60079-20-1.";

/// A class and its greatest temperature, T1 to begin with; another is taken without a branch, so that rows of an array
/// stay vectors.
struct Class {
    double place = 0;
    Temperature most = units::degC(class_degc[0]);

    void take(bool taken, int other)
    {
        place = elementary::select(taken, other, place);
        most = either(taken, units::degC(class_degc[other]), most);
    }
    std::tuple<TemperatureClass, Temperature> result() const
    {
        return {static_cast<TemperatureClass>(static_cast<int>(place)), most};
    }
};

}  // namespace explosive

inline Outcome<std::tuple<TemperatureClass, Temperature>> temperature_class(Temperature surface,
                                                                            TemperatureDifference margin,
                                                                            TemperatureDifference margin_hot)
{
    const auto keeps = [&](int i) {
        return surface + (i >= 3 ? margin : margin_hot) <= units::degC(explosive::class_degc[i]);
    };
    explosive::Class coolest;  // the coolest of those that hold the surface
    for (int i = 1; i < 6; ++i) coolest.take(keeps(i), i);
    return {coolest.result(), keeps(0),
            NoValue{CUTWATER_NO_ANSWER,
                    "surface_temperature",
                    "{0} and the margin of {1} pass 450 degC: no temperature class holds it",
                    {number_in(surface, units::degC), number_in(margin_hot, units::kelvin_difference)}}};
}

inline constexpr Record<&temperature_class> temperature_class_record{
    .name = "temperature_class",
    .meaning = "Temperature class of equipment by its greatest surface temperature",
    .also = "T-class|T-code|T rating|T4|ATEX temperature class|explosive atmosphere|hazardous area|Ex marking",
    .inputs = {input("surface_temperature", "T_s", units::degC, between(-273.15, 2000),
                     "greatest temperature of any surface that the atmosphere can reach, at the greatest ambient "
                     "temperature"),
               input("margin", "dT", units::kelvin_difference, between(0, 50),
                     "margin for classes T4, T5 and T6; 0 for a value that already holds it", 5),
               input("margin_hot", "dT_h", units::kelvin_difference, between(0, 50),
                     "margin for classes T1, T2 and T3; for T3 one source has 5 K, another 10 K", 10)},
    .results = {output_word<TemperatureClass>("temperature_class", "class",
                                              "class that the surface keeps, T6 the coolest"),
                output("class_limit", "T_class", units::degC, "greatest surface temperature of the class")},
    .equation = "first class of T6 85, T5 100, T4 135, T3 200, T2 300, T1 450 degC with T_s + margin <= T_class",
    .source =
        "IEC 60079-0, table of temperature classes (quoted alike in six places, excerpts read; clause 5.3.2.2 from "
        "memory); margins: IEC 60079-0:2017 "
        "26.5.1.3 and ISO 80079-36:2016 8.2 (from memory of both, 5 K to T3, 10 K above; another supplier's page has "
        "10 K for T3, taken here)",
    .cautions = {explosive::certificate, explosive::liquid_sets, explosive::upsets},
    .example = {"121", R"("T4", 135)", "by inspection: 121 + 5 is at most 135 and above 100"}};

inline Outcome<std::tuple<TemperatureClass, Temperature>> temperature_class_for_gas(Temperature ignition)
{
    const auto is_above = [&](int i) { return ignition > units::degC(explosive::class_degc[i]); };
    explosive::Class first;  // the hottest of those that the substance allows
    for (int i = 5; i >= 0; --i) first.take(is_above(i), i);
    return {first.result(), is_above(5),
            NoValue{CUTWATER_NO_ANSWER,
                    "ignition_temperature",
                    "{0} is not above 85 degC, the value of T6: no class is cool enough",
                    {number_in(ignition, units::degC)}}};
}

inline constexpr Record<&temperature_class_for_gas> temperature_class_for_gas_record{
    .name = "temperature_class_for_gas",
    .meaning = "Temperature class that equipment needs at least in the vapour of a substance",
    .also = "required T-class|T-code needed|auto-ignition temperature|AIT|ATEX temperature class|hazardous area",
    .inputs = {input("ignition_temperature", "T_i", units::degC, between(0, 1000),
                     "ignition (auto-ignition) temperature of the gas or vapour")},
    .results = {output_word<TemperatureClass>("temperature_class", "class",
                                              "class needed; a class with a higher number does too"),
                output("class_limit", "T_class", units::degC, "greatest surface temperature of the class")},
    .equation = "first class of T1 450, T2 300, T3 200, T4 135, T5 100, T6 85 degC with T_i > T_class",
    .source = explosive::source,
    .cautions = {explosive::class_is_no_ignition, explosive::certificate, explosive::upsets},
    .example = {"160", R"("T4", 135)", "IEC 60079-20-1 (from memory of it): diethyl ether, 160 degC, class T4"}};

inline Temperature surface_temperature_allowed(Temperature ignition, Fraction share, TemperatureDifference margin)
{
    return units::degC(share.value * units::degC.in(ignition)) - margin;
}

inline constexpr Record<&surface_temperature_allowed> surface_temperature_allowed_record{
    .name = "surface_temperature_allowed",
    .meaning = "Greatest surface temperature beside a gas or vapour",
    .also =
        "80 % rule|permitted surface temperature|maximum surface temperature|auto-ignition temperature|AIT|hot surface",
    .inputs = {input("ignition_temperature", "T_i", units::degC, between(0, 1000),
                     "ignition (auto-ignition) temperature of the gas or vapour"),
               input("share", "f", units::fraction, between(0.5, 1),
                     "part of the ignition temperature in degC: 0.80, demanded for zone 0; 1 for what may have the "
                     "full value",
                     0.8),
               input("margin", "dT", units::kelvin_difference, between(0, 100), "further margin", 0)},
    .results = {output("allowed_temperature", "T_max", units::degC, "greatest surface temperature")},
    .equation = "T_max = f T_i - dT, both temperatures in degC",
    .source =
        "80 %: a test laboratory's page (read; it limits it to no zone); EN 1127-1 6.4.2 and ISO 80079-36 (from memory "
        "of both): demanded for category 1 and EPL Ga",
    .cautions = {explosive::certificate, explosive::liquid_sets, explosive::upsets,
                 "The part is taken of degrees Celsius, as the rule has it, not of kelvins or degrees Fahrenheit."},
    .sound_anywhere = true,
    .example = {"425", "340", "hand calculation: 0.8 x 425"}};

inline Temperature surface_temperature_allowed_dust(Temperature cloud, Temperature layer)
{
    return lesser(units::degC(2.0 / 3.0 * units::degC.in(cloud)), layer - TemperatureDifference::from_value(75));
}

inline constexpr Record<&surface_temperature_allowed_dust> surface_temperature_allowed_dust_record{
    .name = "surface_temperature_allowed_dust",
    .meaning = "Greatest surface temperature among combustible dust",
    .also = "dust layer|dust cloud|combustible dust|two thirds rule|75 K rule|minimum ignition temperature",
    .inputs = {input("cloud_ignition", "T_c", units::degC, between(0, 1000), "ignition temperature of the dust cloud"),
               input("layer_ignition", "T_5", units::degC, between(0, 1000),
                     "ignition (smouldering) temperature of a layer 5 mm thick")},
    .results = {output("allowed_temperature", "T_max", units::degC, "greatest surface temperature")},
    .equation = "T_max = lesser of (2/3) T_c and T_5 - 75 K, in degC",
    .source = "IEC 60079-14 for layers up to 5 mm, as quoted by a trade page on ISO/IEC 80079-20-2 (read)",
    .cautions = {"For layers up to 5 mm. A thicker layer insulates and ignites far below; keep surfaces clean.",
                 "Dust has no temperature classes: the value itself is marked.", explosive::certificate,
                 explosive::upsets},
    .sound_anywhere = true,
    .example = {"420, 270", "195", "hand calculation: the lesser of 280 and 195"}};

}  // namespace cutwater::formulas

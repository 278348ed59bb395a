// How far the liquid in the seal chamber, and between the faces, is from boiling.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/once_for_rows.hpp"
#include "catalogue/record.hpp"
#include "formulas/pairs.hpp"
#include "formulas/seal/chamber_temperature.hpp"
#include "formulas/vapour_curve.hpp"

#include <tuple>

namespace cutwater::formulas {

enum class MarginCriterion { pressure, ratio, temperature };
enum class MarginVerdict { enough, too_small, boils };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<3> words_of<formulas::MarginCriterion>{"pressure", "ratio", "temperature"};
template <>
inline constexpr Words<3> words_of<formulas::MarginVerdict>{"enough", "too small", "boils"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace seal {

inline constexpr Interval pressures_bara = above_up_to(0, 1000);
inline constexpr Interval vapours_bara = above_up_to(0, 300);
inline constexpr const char* margin_source =
    "345 kPa (50 psi) over the vapour pressure: W. E. Forsthoffer, Best Practice Handbook for Rotating Machinery 2011, "
    "pp. 508 and 523 (pages read); 3.5 bar, "
    "or a ratio of 1.3, or 20 K below boiling: API 682 / ISO 21049, which one depends on the edition (from memory of "
    "it); ln p linear in 1/T between the points";
inline constexpr const char* at_the_chamber = "Take the chamber's temperature with the seal running, never the pump's "
                                              "alone; the faces are warmer still: give their rise.";
inline constexpr const char* flashing =
    "A liquid that flashes between the faces runs them dry, and hot or toxic liquid may escape when they part.";
inline constexpr const char* mixtures = "For a mixture or a liquid with dissolved gas take the bubble-point curve: it "
                                        "gives off vapour long before its main part boils.";

constexpr auto chamber_pressure()
{
    return input("chamber_pressure", "p_c", units::bara, pressures_bara,
                 "lowest pressure in the chamber, absolute, as from seal_chamber_pressure");
}
constexpr auto curve_temperatures()
{
    return series("temperatures", "T_i", units::degC, above(-273.15),
                  "the liquid's vapour-pressure curve: temperatures", 2, Order::rising);
}
constexpr auto curve_pressures()
{
    return series("vapour_pressures", "p_v,i", units::bara, seal::vapours_bara,
                  "the liquid's vapour-pressure curve: pressures", 2, Order::rising);
}
constexpr auto face_rise()
{
    return input("face_rise", "dT_f", units::kelvin_difference, between(0, 300),
                 "how much warmer the film between the faces is than the chamber", 0);
}
constexpr auto criterion()
{
    return choice<MarginCriterion>(
        "criterion", "criterion",
        "which margin decides: pressure over the vapour pressure, ratio of the two, or temperature below boiling");
}
constexpr auto least_margin()
{
    return input(
        "least_margin", "dp_min", units::bar, from(0),
        "pressure over the vapour pressure to keep: 3.45 is 50 psi as read; API 682's round 3.5 is from memory", 3.45);
}
constexpr auto least_ratio()
{
    return input("least_ratio", "r_min", units::number, from(1), "chamber pressure over vapour pressure to keep", 1.3);
}
constexpr auto least_below_boiling()
{
    return input("least_below_boiling", "dT_min", units::kelvin_difference, from(0),
                 "temperature below boiling to keep", 20);
}

inline NoValue outside_curve(Temperature t, Temperature coldest, Temperature warmest, const char* argument)
{
    return {CUTWATER_OUT_OF_INTERVAL,
            argument,
            "{0} with the faces' rise lies outside the vapour-pressure curve, which reaches from {1} to {2}",
            {number_in(t, units::degC), number_in(coldest, units::degC), number_in(warmest, units::degC)}};
}
inline NoValue outside_curve(AbsolutePressure p, AbsolutePressure lowest, AbsolutePressure highest)
{
    return {CUTWATER_OUT_OF_INTERVAL,
            "chamber_pressure",
            "the vapour-pressure curve reaches from {1} to {2}; give points that hold {0}",
            {number_in(p, units::bara), number_in(lowest, units::bara), number_in(highest, units::bara)}};
}

/// In the liquid between the faces.
template <class Curve>
struct Margins {
    Margins(const Curve& of, AbsolutePressure chamber, Temperature liquid, TemperatureDifference face_rise)
        : curve(of), at(chamber), warmest(liquid + face_rise), vapour(of.pressure(warmest)), pressure(chamber - vapour),
          ratio(chamber.above_zero() / vapour.above_zero()), boiling(of.temperature(chamber)),
          temperature(boiling - warmest)
    {
    }
    bool hold() const { return curve.holds(warmest) & curve.holds(at); }
    NoValue why() const
    {
        return curve.holds(warmest) ? outside_curve(at, curve.lowest(), curve.highest())
                                    : outside_curve(warmest, curve.coldest(), curve.warmest(), "chamber_temperature");
    }

    const Curve& curve;
    AbsolutePressure at;
    Temperature warmest;
    AbsolutePressure vapour;
    PressureDifference pressure;
    Ratio ratio;
    Temperature boiling;
    TemperatureDifference temperature;
};

using AllMargins = std::tuple<AbsolutePressure, PressureDifference, Ratio, Temperature, TemperatureDifference>;
struct AllMarginsOn {
    template <class Curve>
    Outcome<AllMargins> operator()(const Curve& curve, AbsolutePressure chamber, Temperature temperature,
                                   TemperatureDifference face_rise) const
    {
        const Margins<Curve> m(curve, chamber, temperature, face_rise);
        return {AllMargins(m.vapour, m.pressure, m.ratio, m.boiling, m.temperature), m.hold(), m.why()};
    }
};
inline constexpr AllMarginsOn all_margins;

using Verdict = std::tuple<MarginVerdict, PressureDifference, Ratio, TemperatureDifference>;
struct MarginVerdictOn {
    template <class Curve>
    Outcome<Verdict> operator()(const Curve& curve, MarginCriterion criterion, AbsolutePressure chamber,
                                Temperature temperature, TemperatureDifference face_rise,
                                PressureDifference least_margin, Ratio least_ratio,
                                TemperatureDifference least_below) const
    {
        const Margins<Curve> m(curve, chamber, temperature, face_rise);
        const bool by_pressure = criterion == MarginCriterion::pressure, by_ratio = criterion == MarginCriterion::ratio;
        const bool kept = (by_pressure & (m.pressure >= least_margin)) | (by_ratio & (m.ratio >= least_ratio)) |
                          (!by_pressure & !by_ratio & (m.temperature >= least_below));
        const bool boils = !(m.pressure.value() > 0);
        const MarginVerdict verdict = boils  ? MarginVerdict::boils
                                      : kept ? MarginVerdict::enough
                                             : MarginVerdict::too_small;
        return {Verdict(verdict, m.pressure, m.ratio, m.temperature), m.hold(), m.why()};
    }
};
inline constexpr MarginVerdictOn margin_verdict;

inline NoValue no_room(AbsolutePressure chamber, PressureDifference least_margin)
{
    return {
        CUTWATER_NO_ANSWER,
        "chamber_pressure",
        "at {0} no temperature leaves {1} above the vapour pressure: raise the chamber's pressure or choose another "
        "criterion",
        {number_in(chamber, units::bara), number_in(least_margin, units::bar)}};
}
inline NoValue no_temperature(TemperatureDifference face_rise)
{
    return {CUTWATER_NO_ANSWER,
            "face_rise",
            "a rise of {0} leaves no temperature for the chamber",
            {number_in(face_rise, units::kelvin_difference)}};
}

using Allowed = std::tuple<Temperature, AbsolutePressure>;
struct AllowedTemperature {
    template <class Curve>
    Outcome<Allowed> operator()(const Curve& curve, MarginCriterion criterion, AbsolutePressure chamber,
                                TemperatureDifference face_rise, PressureDifference least_margin, Ratio least_ratio,
                                TemperatureDifference least_below) const
    {
        AbsolutePressure vapour = chamber;
        if (criterion == MarginCriterion::pressure) vapour = chamber - least_margin;
        if (criterion == MarginCriterion::ratio) vapour = AbsolutePressure::at(chamber.above_zero() / least_ratio);
        const Temperature boils = curve.temperature(vapour);
        const Temperature faces = criterion == MarginCriterion::temperature ? boils - least_below : boils;
        const Temperature liquid = faces - face_rise;
        const bool room = vapour.above_zero().value() > 0, on_curve = curve.holds(vapour), kept = curve.holds(faces);
        const bool warm = liquid.above_zero().value() > 0, holds = room & on_curve & kept & warm;
        return {Allowed(liquid, curve.pressure(faces)), holds,
                !room       ? no_room(chamber, least_margin)
                : !on_curve ? outside_curve(vapour, curve.lowest(), curve.highest())
                : !kept     ? outside_curve(faces, curve.coldest(), curve.warmest(), "least_below_boiling")
                            : no_temperature(face_rise)};
    }
};
inline constexpr AllowedTemperature allowed_temperature;

}  // namespace seal

inline std::tuple<PressureDifference, Ratio> seal_vapour_margin(AbsolutePressure chamber, AbsolutePressure vapour)
{
    return {chamber - vapour, chamber.above_zero() / vapour.above_zero()};
}

inline constexpr auto seal_vapour_margin_record = record<&seal_vapour_margin>(
    {.name = "seal_vapour_margin",
     .meaning = "Margin of the seal chamber's pressure over the liquid's vapour pressure",
     .also = "vapor margin|vapour pressure margin|flash margin|seal chamber margin",
     .inputs = {seal::chamber_pressure(), input("vapour_pressure", "p_v", units::bara, seal::vapours_bara,
                                                "vapour pressure at the chamber's temperature, absolute")},
     .results = {output("margin", "dp", units::bar, "pressure over the vapour pressure; negative: it boils"),
                 output("ratio", "r", units::number, "chamber pressure over vapour pressure, both absolute")},
     .equation = "dp = p_c - p_v; r = p_c/p_v",
     .source = seal::margin_source,
     .cautions = {seal::at_the_chamber, seal::flashing, seal::mixtures, caution::hot_or_toxic},
     .sound_anywhere = true,
     .example = {"5, 1.2", "3.8, 4.16667", "hand calculation"}});

inline Outcome<std::tuple<AbsolutePressure, PressureDifference, Ratio, Temperature, TemperatureDifference>>
seal_temperature_margin(AbsolutePressure chamber, Temperature temperature, Series<Temperature> temperatures,
                        Series<AbsolutePressure> pressures, TemperatureDifference face_rise)
{
    return on_vapour_curve(seal::all_margins, temperatures, pressures, chamber, temperature, face_rise);
}

inline constexpr auto seal_temperature_margin_record = record<&seal_temperature_margin>(
    {.name = "seal_temperature_margin",
     .meaning = "Margins to boiling in the seal chamber or at its faces: pressure, ratio and temperature side by side",
     .also = "vapor margin|temperature margin|subcooling at the seal|flash margin",
     .inputs = {seal::chamber_pressure(),
                seal::temperature("chamber_temperature", "T_c",
                                  "temperature of the liquid in the chamber, as from seal_chamber_temperature"),
                seal::curve_temperatures(), seal::curve_pressures(), seal::face_rise()},
     .results = {output("vapour_pressure", "p_v", units::bara,
                        "vapour pressure at the chamber's temperature and the faces' rise"),
                 output("margin", "dp", units::bar, "chamber pressure over it; negative: it boils"),
                 output("ratio", "r", units::number, "chamber pressure over it"),
                 output("boiling_temperature", "T_b", units::degC,
                        "temperature at which the liquid boils under the chamber's pressure"),
                 output("below_boiling", "dT", units::kelvin_difference,
                        "how far the liquid is below it; negative: it boils")},
     .equation = "dp = p_c - p_v(T_c + dT_f); r = p_c/p_v; dT = T_b(p_c) - T_c - dT_f",
     .source = seal::margin_source,
     .cautions = {seal::at_the_chamber, seal::flashing, seal::mixtures, caution::hot_or_toxic},
     .example = {"3, 85, [80, 90, 100, 110, 120, 130, 140], [0.4741472, 0.7018236, 1.01418, 1.43376, 1.986654, "
                 "2.702596, 3.61501]",
                 "0.578441, 2.42156, 5.18635, 133.533, 48.5329",
                 "hand calculation with water's vapour pressures from IAPWS-IF97"}},
    pairs::equal_length<"vapour_pressures", "temperatures">());

inline Outcome<std::tuple<MarginVerdict, PressureDifference, Ratio, TemperatureDifference>> seal_margin_verdict(
    AbsolutePressure chamber, Temperature temperature, Series<Temperature> temperatures,
    Series<AbsolutePressure> pressures, MarginCriterion criterion, TemperatureDifference face_rise,
    PressureDifference least_margin, Ratio least_ratio, TemperatureDifference least_below)
{
    return on_vapour_curve(seal::margin_verdict, temperatures, pressures, criterion, chamber, temperature, face_rise,
                           least_margin, least_ratio, least_below);
}

inline constexpr auto seal_margin_verdict_record = record<&seal_margin_verdict>(
    {.name = "seal_margin_verdict",
     .meaning = "Whether the seal chamber keeps its margin to boiling, by the criterion chosen",
     .also = "vapor margin check|seal chamber acceptance|flash check",
     .inputs = {seal::chamber_pressure(),
                seal::temperature("chamber_temperature", "T_c",
                                  "temperature of the liquid in the chamber, as from seal_chamber_temperature"),
                seal::curve_temperatures(), seal::curve_pressures(), seal::criterion(), seal::face_rise(),
                seal::least_margin(), seal::least_ratio(), seal::least_below_boiling()},
     .results = {output_word<MarginVerdict>("verdict", "verdict", "enough, too small, or boils"),
                 output("margin", "dp", units::bar, "chamber pressure over the vapour pressure"),
                 output("ratio", "r", units::number, "chamber pressure over the vapour pressure"),
                 output("below_boiling", "dT", units::kelvin_difference, "how far the liquid is below boiling")},
     .equation = "enough when dp >= dp_min, or r >= r_min, or dT >= dT_min, whichever is chosen; boils when dp <= 0",
     .source = seal::margin_source,
     .cautions = {"The three rules do not agree: a light hydrocarbon passes by pressure and fails by temperature, cold "
                  "water the other way. Choose the contract's own.",
                  seal::at_the_chamber, seal::flashing, seal::mixtures, caution::hot_or_toxic},
     .example = {"3, 85, [80, 90, 100, 110, 120, 130, 140], [0.4741472, 0.7018236, 1.01418, 1.43376, 1.986654, "
                 "2.702596, 3.61501], \"pressure\"",
                 "\"too small\", 2.42156, 5.18635, 48.5329",
                 "hand calculation with water's vapour pressures from IAPWS-IF97"}},
    pairs::equal_length<"vapour_pressures", "temperatures">());

inline Outcome<std::tuple<Temperature, AbsolutePressure>> seal_allowed_temperature(
    AbsolutePressure chamber, Series<Temperature> temperatures, Series<AbsolutePressure> pressures,
    MarginCriterion criterion, TemperatureDifference face_rise, PressureDifference least_margin, Ratio least_ratio,
    TemperatureDifference least_below)
{
    return on_vapour_curve(seal::allowed_temperature, temperatures, pressures, criterion, chamber, face_rise,
                           least_margin, least_ratio, least_below);
}

inline constexpr auto seal_allowed_temperature_record = record<&seal_allowed_temperature>(
    {.name = "seal_allowed_temperature",
     .meaning = "Highest temperature of the seal chamber that keeps the margin to boiling",
     .also = "maximum seal chamber temperature|flush temperature target",
     .inputs = {seal::chamber_pressure(), seal::curve_temperatures(), seal::curve_pressures(), seal::criterion(),
                seal::face_rise(), seal::least_margin(), seal::least_ratio(), seal::least_below_boiling()},
     .results = {output("allowed_temperature", "T_a", units::degC, "highest temperature of the chamber"),
                 output("vapour_pressure", "p_v", units::bara, "vapour pressure at the faces then")},
     .equation = "p_v(T_a + dT_f) = p_c - dp_min, or p_c/r_min; or T_a = T_b(p_c) - dT_min - dT_f",
     .source = seal::margin_source,
     .cautions = {seal::at_the_chamber, seal::flashing, seal::mixtures,
                  "The seal's elastomers and faces have temperature limits of their own.", caution::hot_or_toxic},
     .example = {"5, [80, 90, 100, 110, 120], [0.4741472, 0.7018236, 1.01418, 1.43376, 1.986654], \"pressure\"",
                 "112.344, 1.55", "hand calculation with water's vapour pressures from IAPWS-IF97"}},
    pairs::equal_length<"vapour_pressures", "temperatures">());

}  // namespace cutwater::formulas

namespace cutwater {

template <>
struct OnceForRows<&formulas::seal_temperature_margin> : formulas::WithVapourCurve<formulas::seal::AllMarginsOn> {
    using WithVapourCurve::WithVapourCurve;
};
template <>
struct OnceForRows<&formulas::seal_margin_verdict>
    : formulas::WithVapourCurve<formulas::seal::MarginVerdictOn, formulas::MarginCriterion> {
    using WithVapourCurve::WithVapourCurve;
};
template <>
struct OnceForRows<&formulas::seal_allowed_temperature>
    : formulas::WithVapourCurve<formulas::seal::AllowedTemperature, formulas::MarginCriterion> {
    using WithVapourCurve::WithVapourCurve;
};

}  // namespace cutwater

// Specific speed, type number, suction specific speed, and how they convert.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/record.hpp"
#include "formulas/limits.hpp"

#include <cmath>
#include <numbers>

namespace cutwater::formulas {

namespace shape {

inline constexpr const char* per_eye =
    "Flow per impeller eye is used throughout, as ISO 17769-1 has it for the type number. The Hydraulic Institute's "
    "own specific speed takes "
    "the whole flow: for that leave eyes at 1 with a double-suction impeller. The two differ by a factor of 0.707.";
inline constexpr const char* at_best_efficiency =
    "Take flow and head at best efficiency, full diameter, whatever the duty.";
inline constexpr const char* suction_ceiling =
    "Common practice looks for a ceiling of about 213 (11 000 in US units): above it the range of steady flow narrows.";

inline double three_quarters(double x)
{
    const double root = std::sqrt(x);
    return root * std::sqrt(root);
}

/// In 1/min, m3/s and m: the definition is a product of numbers, not of quantities.
inline double metric(RotationalSpeed speed, Flow flow, Head head, Count eyes, Count stages)
{
    return units::rpm.in(speed)*std::sqrt(units::m3s.in(flow) / eyes.value) /
           three_quarters(units::metre.in(head) / stages.value);
}

/// In 1/min, US gal/min and ft.
inline double us(RotationalSpeed speed, Flow flow, Head head, Count eyes, Count stages)
{
    return units::rpm.in(speed)*std::sqrt(units::us_gpm.in(flow) / eyes.value) /
           three_quarters(units::ft.in(head) / stages.value);
}

// sqrt(60/0.003785411784) 0.3048^(3/4), the US gallon and the foot being exact.
inline constexpr double us_over_metric = 51.6452379006990730341;
// (2 pi/60)/9.80665^(3/4)
inline constexpr double type_over_metric = 0.0188967932420013143305;

constexpr auto speed() { return input("speed", "n", units::rpm, limits::speed_rpm, "speed of rotation"); }
constexpr auto flow()
{
    return input("flow", "Q", units::m3h, above(0), "the pump's whole flow at best efficiency, full diameter");
}
constexpr auto head()
{
    return input("head", "H", units::metre, above(0), "the pump's head at best efficiency: of all its stages");
}
constexpr auto npsh3()
{
    return input("npsh3", "NPSH3", units::metre, above(0), "NPSH3 at best efficiency, full diameter");
}
constexpr auto eyes()
{
    return input("eyes", "i", units::count, between(1, 2),
                 "eyes of the impeller that share the flow: 1, or 2 with double suction", 1);
}
constexpr auto stages()
{
    return input("stages", "z", units::count, between(1, 100),
                 "stages that share the head; leave at 1 when the head is one stage's", 1);
}

}  // namespace shape

inline SpecificSpeed specific_speed(RotationalSpeed speed, Flow flow, Head head, Count eyes, Count stages)
{
    return {shape::metric(speed, flow, head, eyes, stages)};
}

inline constexpr Record<&specific_speed> specific_speed_record{
    .name = "specific_speed",
    .meaning = "Specific speed in metric units: 1/min, m3/s, m",
    .also = "Ns|nq",
    .inputs = {shape::speed(), shape::flow(), shape::head(), shape::eyes(), shape::stages()},
    .results = {output("specific_speed", "n_s", units::specific_speed, "specific speed, per eye and stage")},
    .equation = "n_s = n sqrt(Q/i)/(H/z)^(3/4); n in 1/min, Q in m3/s, H in m",
    .source = "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.1 to 1.D.3 (excerpt read); flow per "
              "eye as in ISO 17769-1 "
              "(from memory of it)",
    .cautions = {shape::at_best_efficiency, shape::per_eye,
                 "With m3/h in place of m3/s the number is 60 times as large: check which form a source uses."},
    .example = {"2900, 100, 50, 1, 1", "25.7051", "hand calculation: 2900 x 0.166667/18.8030"}};

inline SpecificSpeedUs specific_speed_us(RotationalSpeed speed, Flow flow, Head head, Count eyes, Count stages)
{
    return {shape::us(speed, flow, head, eyes, stages)};
}

inline constexpr Record<&specific_speed_us> specific_speed_us_record{
    .name = "specific_speed_us",
    .meaning = "Specific speed in US units: 1/min, US gal/min, ft",
    .also = "Ns|US specific speed",
    .inputs = {shape::speed(), shape::flow(), shape::head(), shape::eyes(), shape::stages()},
    .results = {output("specific_speed_us", "N_s", units::specific_speed_us, "specific speed, per eye and stage")},
    .equation = "N_s = n sqrt(Q/i)/(H/z)^(3/4); n in 1/min, Q in US gal/min, H in ft",
    .source = "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.1 and 1.D.2 (excerpt read); flow per "
              "eye as in ISO 17769-1 "
              "(from memory of it)",
    .cautions = {shape::at_best_efficiency, shape::per_eye},
    .example = {"2900, 100, 50, 1, 1", "1327.55", "hand calculation: 51.6452 x 25.7051"}};

inline Ratio type_number(RotationalSpeed speed, Flow flow, Head head, Count eyes, Count stages)
{
    const auto energy = standard_gravity * head / stages.value;
    return 2 * std::numbers::pi * speed.revolutions() * square_root(flow / eyes.value) / three_quarter_power(energy);
}

inline constexpr Record<&type_number> type_number_record{
    .name = "type_number",
    .meaning = "Type number: specific speed without units",
    .also = "dimensionless specific speed",
    .inputs = {shape::speed(), shape::flow(), shape::head(), shape::eyes(), shape::stages()},
    .results = {output("type_number", "K", units::number, "type number, per eye and stage")},
    .equation = "K = 2 pi n sqrt(Q/i)/(g H/z)^(3/4)",
    .source = "ISO 17769-1:2012 and ISO 9906:2012, type number (from memory of both); Hydraulic Institute, Engineering "
              "Data Book, 2nd edition, "
              "Eq. 1.D.3 (excerpt read)",
    .cautions = {shape::at_best_efficiency, shape::per_eye},
    .example = {"2900, 100, 50, 1, 1", "0.485744", "hand calculation: 303.687 x 0.166667/104.199"}};

inline SpecificSpeed suction_specific_speed(RotationalSpeed speed, Flow flow, Head npsh3, Count eyes)
{
    return {shape::metric(speed, flow, npsh3, eyes, {1})};
}

inline constexpr Record<&suction_specific_speed> suction_specific_speed_record{
    .name = "suction_specific_speed",
    .meaning = "Suction specific speed in metric units: 1/min, m3/s, m, always per eye",
    .also = "Nss|S|suction energy",
    .inputs = {shape::speed(), shape::flow(), shape::npsh3(), shape::eyes()},
    .results = {output("suction_specific_speed", "n_ss", units::specific_speed, "suction specific speed")},
    .equation = "n_ss = n sqrt(Q/i)/NPSH3^(3/4); n in 1/min, Q in m3/s, NPSH3 in m",
    .source = "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read)",
    .cautions = {shape::at_best_efficiency, shape::suction_ceiling},
    .example = {"2900, 100, 3.5, 1", "188.884", "hand calculation: 2900 x 0.166667/2.55889"}};

inline SpecificSpeedUs suction_specific_speed_us(RotationalSpeed speed, Flow flow, Head npsh3, Count eyes)
{
    return {shape::us(speed, flow, npsh3, eyes, {1})};
}

inline constexpr Record<&suction_specific_speed_us> suction_specific_speed_us_record{
    .name = "suction_specific_speed_us",
    .meaning = "Suction specific speed in US units: 1/min, US gal/min, ft, always per eye",
    .also = "Nss|suction specific speed 11000",
    .inputs = {shape::speed(), shape::flow(), shape::npsh3(), shape::eyes()},
    .results = {output("suction_specific_speed_us", "N_ss", units::specific_speed_us, "suction specific speed")},
    .equation = "N_ss = n sqrt(Q/i)/NPSH3^(3/4); n in 1/min, Q in US gal/min, NPSH3 in ft",
    .source = "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.D.4 and 1.D.5 (excerpt read)",
    .cautions = {shape::at_best_efficiency, shape::suction_ceiling},
    .example = {"2900, 100, 3.5, 1", "9754.97", "hand calculation: 51.6452 x 188.884"}};

inline SpecificSpeed specific_speed_from_us(SpecificSpeedUs us) { return {us.value * (1 / shape::us_over_metric)}; }

inline constexpr Record<&specific_speed_from_us> specific_speed_from_us_record{
    .name = "specific_speed_from_us",
    .meaning = "Metric specific speed (or suction specific speed) from that in US units",
    .also = "Ns to nq",
    .inputs = {input("specific_speed_us", "N_s", units::specific_speed_us, above(0), "in 1/min, US gal/min, ft")},
    .results = {output("specific_speed", "n_s", units::specific_speed, "in 1/min, m3/s, m")},
    .equation = "n_s = N_s/51.6452",
    .source = "definitions of the US gallon and the foot (NIST SP 811); Hydraulic Institute, Engineering Data Book, "
              "2nd edition, prints 51.6 (excerpt read)",
    .sound_anywhere = true,
    .example = {"2000", "38.7257", "hand calculation: 2000/51.6452"}};

inline SpecificSpeedUs specific_speed_us_from_metric(SpecificSpeed metric)
{
    return {metric.value * shape::us_over_metric};
}

inline constexpr Record<&specific_speed_us_from_metric> specific_speed_us_from_metric_record{
    .name = "specific_speed_us_from_metric",
    .meaning = "Specific speed (or suction specific speed) in US units from the metric one",
    .also = "nq to Ns",
    .inputs = {input("specific_speed", "n_s", units::specific_speed, above(0), "in 1/min, m3/s, m")},
    .results = {output("specific_speed_us", "N_s", units::specific_speed_us, "in 1/min, US gal/min, ft")},
    .equation = "N_s = 51.6452 n_s",
    .source = "definitions of the US gallon and the foot (NIST SP 811); Hydraulic Institute, Engineering Data Book, "
              "2nd edition, prints 51.6 (excerpt read)",
    .sound_anywhere = true,
    .example = {"25", "1291.13", "hand calculation: 25 x 51.6452"}};

inline Ratio type_number_from_specific_speed(SpecificSpeed metric)
{
    return Ratio(metric.value * shape::type_over_metric);
}

inline constexpr Record<&type_number_from_specific_speed> type_number_from_specific_speed_record{
    .name = "type_number_from_specific_speed",
    .meaning = "Type number from the metric specific speed",
    .inputs = {input("specific_speed", "n_s", units::specific_speed, above(0), "in 1/min, m3/s, m")},
    .results = {output("type_number", "K", units::number, "type number")},
    .equation = "K = n_s (2 pi/60)/g^(3/4) = n_s/52.919",
    .source = "ISO 17769-1:2012, type number (from memory of it); g = 9.80665 m/s2",
    .sound_anywhere = true,
    .example = {"25", "0.472420", "hand calculation: 25/52.9190"}};

inline SpecificSpeed specific_speed_from_type_number(Ratio type_number)
{
    return {type_number.value() * (1 / shape::type_over_metric)};
}

inline constexpr Record<&specific_speed_from_type_number> specific_speed_from_type_number_record{
    .name = "specific_speed_from_type_number",
    .meaning = "Metric specific speed from the type number",
    .inputs = {input("type_number", "K", units::number, above(0), "type number")},
    .results = {output("specific_speed", "n_s", units::specific_speed, "in 1/min, m3/s, m")},
    .equation = "n_s = K g^(3/4)/(2 pi/60) = 52.919 K",
    .source = "ISO 17769-1:2012, type number (from memory of it); g = 9.80665 m/s2",
    .sound_anywhere = true,
    .example = {"0.5", "26.4595", "hand calculation: 0.5 x 52.9190"}};

inline Ratio type_number_from_us(SpecificSpeedUs us)
{
    return Ratio(us.value * (shape::type_over_metric / shape::us_over_metric));
}

inline constexpr Record<&type_number_from_us> type_number_from_us_record{
    .name = "type_number_from_us",
    .meaning = "Type number from the specific speed in US units",
    .inputs = {input("specific_speed_us", "N_s", units::specific_speed_us, above(0), "in 1/min, US gal/min, ft")},
    .results = {output("type_number", "K", units::number, "type number")},
    .equation = "K = N_s/2733.0",
    .source =
        "ISO 17769-1:2012, type number (from memory of it); definitions of the US gallon and the foot (NIST SP 811)",
    .sound_anywhere = true,
    .example = {"2000", "0.731792", "hand calculation: 2000/2733.016"}};

inline SpecificSpeedUs specific_speed_us_from_type_number(Ratio type_number)
{
    return {type_number.value() * (shape::us_over_metric / shape::type_over_metric)};
}

inline constexpr Record<&specific_speed_us_from_type_number> specific_speed_us_from_type_number_record{
    .name = "specific_speed_us_from_type_number",
    .meaning = "Specific speed in US units from the type number",
    .inputs = {input("type_number", "K", units::number, above(0), "type number")},
    .results = {output("specific_speed_us", "N_s", units::specific_speed_us, "in 1/min, US gal/min, ft")},
    .equation = "N_s = 2733.0 K",
    .source =
        "ISO 17769-1:2012, type number (from memory of it); definitions of the US gallon and the foot (NIST SP 811)",
    .sound_anywhere = true,
    .example = {"0.5", "1366.508", "hand calculation: 0.5 x 2733.016"}};

}  // namespace cutwater::formulas

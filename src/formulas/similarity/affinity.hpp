// Affinity laws: a point of a pump's curve at another speed.
#pragma once

#include <cutwater/unit_table.hpp>

#include "catalogue/as_given.hpp"
#include "catalogue/record.hpp"
#include "elementary/elementary.hpp"
#include "formulas/limits.hpp"

namespace cutwater::formulas {

namespace affinity {

inline constexpr double least_ratio = 0.25;
inline constexpr double greatest_ratio = 2;
inline constexpr const char* ratio_limits =
    "the new speed must be 0.25 to 2 times the speed: beyond that the affinity laws are not relied upon here";
inline constexpr const char* standard_range = "ISO 9906 converts test results within 50 to 120 % of the speed (80 to "
                                              "120 % for efficiency and NPSH; from memory of it): "
                                              "further away the efficiency shifts and the result is an estimate.";
inline constexpr const char* speeding_up =
    "Above the speed at which the pump was rated its pressure grows with the square and its power with the cube of the "
    "speed: stay within the pump maker's greatest speed, the pressure ratings of casing, seal and flanges, the motor's "
    "rating and the rotor's limits, whatever this gives.";
inline constexpr const char* source = "Hydraulic Institute, Engineering Data Book, 2nd edition, Eq. 1.B.6 (excerpt "
                                      "read); limits of the ratio 0.25 to 2: set here";

template <class Speed>
bool in_limits(Speed speed, Speed new_speed)
{
    const double ratio = Ratio(new_speed / speed).value();
    return (ratio >= least_ratio) & (ratio <= greatest_ratio);
}

using Speed = AsGiven<units::rpm>;

constexpr auto speed()
{
    return input("speed", "n", units::rpm, limits::speed_rpm, "speed at which the point is known");
}
constexpr auto new_speed() { return input("new_speed", "n'", units::rpm, limits::speed_rpm, "speed asked about"); }

}  // namespace affinity

inline AsGiven<units::m3h> flow_at_speed(AsGiven<units::m3h> flow, affinity::Speed speed, affinity::Speed new_speed)
{
    return flow * (new_speed / speed);
}

inline constexpr auto flow_at_speed_record = record<&flow_at_speed>(
    {.name = "flow_at_speed",
     .meaning = "Flow of a point of a pump's curve at another speed",
     .also = "affinity laws|variable speed|VFD|slow it down",
     .inputs = {input("flow", "Q", units::m3h, from(0), "flow at the known speed"), affinity::speed(),
                affinity::new_speed()},
     .results = {output("flow_at_new_speed", "Q'", units::m3h, "flow of the similar point")},
     .equation = "Q' = Q n'/n",
     .source = affinity::source,
     .cautions = {caution::affinity, affinity::speeding_up, affinity::standard_range},
     .sound_anywhere = true,
     .example = {"100, 2900, 1450", "50", "hand calculation"}},
    relation<"new_speed", "speed">(
        [](affinity::Speed new_n, affinity::Speed n) { return affinity::in_limits(n, new_n); },
        affinity::ratio_limits));

inline Head head_at_speed(Head head, affinity::Speed speed, affinity::Speed new_speed)
{
    const Ratio ratio = new_speed / speed;
    return head * ratio * ratio;
}

inline constexpr auto head_at_speed_record = record<&head_at_speed>(
    {.name = "head_at_speed",
     .meaning = "Head of a point of a pump's curve at another speed",
     .also = "affinity laws|variable speed|VFD|slow it down",
     .inputs = {input("head", "H", units::metre, from(0), "head at the known speed"), affinity::speed(),
                affinity::new_speed()},
     .results = {output("head_at_new_speed", "H'", units::metre, "head of the similar point")},
     .equation = "H' = H (n'/n)^2",
     .source = affinity::source,
     .cautions = {caution::affinity, affinity::speeding_up, affinity::standard_range},
     .sound_anywhere = true,
     .example = {"100, 2900, 1450", "25", "hand calculation"}},
    relation<"new_speed", "speed">(
        [](affinity::Speed new_n, affinity::Speed n) { return affinity::in_limits(n, new_n); },
        affinity::ratio_limits));

inline AsGiven<units::kW> power_at_speed(AsGiven<units::kW> power, affinity::Speed speed, affinity::Speed new_speed)
{
    const Ratio ratio = new_speed / speed;
    return power * ratio * ratio * ratio;
}

inline constexpr auto power_at_speed_record = record<&power_at_speed>(
    {.name = "power_at_speed",
     .meaning = "Power of a point of a pump's curve at another speed, its efficiency taken as unchanged",
     .also = "affinity laws|cube law|variable speed|VFD|BHP at another speed",
     .inputs = {input("power", "P", units::kW, from(0), "pump power input at the known speed"), affinity::speed(),
                affinity::new_speed()},
     .results = {output("power_at_new_speed", "P'", units::kW, "power of the similar point")},
     .equation = "P' = P (n'/n)^3",
     .source = affinity::source,
     .cautions = {caution::affinity, affinity::speeding_up, affinity::standard_range,
                  "The losses of bearings and seals do not fall with the cube of the speed: at low speed the true "
                  "power is higher."},
     .sound_anywhere = true,
     .example = {"100, 2900, 1450", "12.5", "hand calculation"}},
    relation<"new_speed", "speed">(
        [](affinity::Speed new_n, affinity::Speed n) { return affinity::in_limits(n, new_n); },
        affinity::ratio_limits));

namespace affinity {

inline constexpr double cautious_down = 1.3, cautious_up = 2;  // the ends of what ISO 9906 lets the parties agree

inline double npsh_exponent(double given, double speed_ratio)
{
    return given > 0 ? given : speed_ratio < 1 ? cautious_down : cautious_up;
}

}  // namespace affinity

inline Head npsh3_at_speed(Head npsh3, affinity::Speed speed, affinity::Speed new_speed, Ratio exponent, Steps steps)
{
    const double ratio = Ratio(new_speed / speed).value();
    const double x = affinity::npsh_exponent(exponent.value(), ratio);
    steps("x", "exponent used", Ratio(x), units::number);
    return npsh3 * elementary::positive_pow(ratio, x);
}

inline constexpr auto npsh3_at_speed_record = record<&npsh3_at_speed>(
    {.name = "npsh3_at_speed",
     .meaning = "NPSH3 of a point of a pump's curve at another speed",
     .also = "NPSHR at another speed|NPSH required|affinity laws|NPSHR at speed|net positive suction head required",
     .inputs = {input("npsh3", "NPSH3", units::metre, from(0), "NPSH3 at the known speed"), affinity::speed(),
                affinity::new_speed(),
                input("exponent", "x", units::number, between(0, 2),
                      "1 to 2, as agreed or tested; 0: the cautious one, 1.3 when slowing down and 2 when speeding up",
                      0)},
     .results = {output("npsh3_at_new_speed", "NPSH3'", units::metre, "NPSH3 of the similar point")},
     .equation = "NPSH3' = NPSH3 (n'/n)^x; x not given: 1.3 for n' < n, 2 for n' > n",
     .source =
         "ISO 9906:2012, translation of NPSH3 to the specified speed (from memory of it), exponent 1.3 to 2 to be "
         "agreed (a public test procedure after it read in excerpt); 1.5 when slowing down and 2 when speeding "
         "up: trade literature (read); limits of the ratio: set here",
     .cautions = {"The square is a first approximation that flatters when slowing down; tests lie between 1.3 and 2, "
                  "lower at part load than near best efficiency.",
                  caution::affinity, affinity::speeding_up, affinity::standard_range, caution::npsh_margin},
     .given_once = {"speed", "exponent"},
     .sound_anywhere = true,
     .example = {"5, 2900, 1450, 2", "1.25", "hand calculation"}},
    relation<"new_speed", "speed">(
        [](affinity::Speed new_n, affinity::Speed n) { return affinity::in_limits(n, new_n); }, affinity::ratio_limits),
    relation<"exponent">([](Ratio x) { return (x.value() == 0) | (x.value() >= 1); },
                         "it must be 0, for the cautious one, or from 1 to 2"));

}  // namespace cutwater::formulas

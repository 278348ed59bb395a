// Dynamic equivalent load of radial ball bearings by ISO 281.
#pragma once

#include "formulas/bearings/shared.hpp"

#include <algorithm>

namespace cutwater::formulas {

namespace bearings {

/// Table 3, deep groove: by f0 Fa/C0r.
inline constexpr std::array<double, 9> groove_load{0.172, 0.345, 0.689, 1.03, 1.38, 2.07, 3.45, 5.17, 6.89};
inline constexpr std::array<double, 9> groove_e{0.19, 0.22, 0.26, 0.28, 0.30, 0.34, 0.38, 0.42, 0.44};
inline constexpr std::array<double, 9> groove_y{2.30, 1.99, 1.71, 1.55, 1.45, 1.31, 1.15, 1.04, 1.00};

/// Table 3, angular contact: by the contact angle in degrees.
inline constexpr std::array<double, 6> contact{20, 25, 30, 35, 40, 45};
inline constexpr std::array<double, 6> contact_e{0.57, 0.68, 0.80, 0.95, 1.14, 1.34};
inline constexpr std::array<double, 6> single_x{0.43, 0.41, 0.39, 0.37, 0.35, 0.33};
inline constexpr std::array<double, 6> single_y{1.00, 0.87, 0.76, 0.66, 0.57, 0.50};
inline constexpr std::array<double, 6> pair_y_low{1.09, 0.92, 0.78, 0.66, 0.55, 0.47};
inline constexpr std::array<double, 6> pair_x{0.70, 0.67, 0.63, 0.60, 0.57, 0.54};
inline constexpr std::array<double, 6> pair_y{1.63, 1.41, 1.24, 1.07, 0.93, 0.81};

inline constexpr const char* factors_source =
    "ISO 281:2007, Table 3, deep groove and single-row angular contact as transcribed in an open contact solver and in "
    "other public programs (read); ";

}  // namespace bearings

inline Outcome<Force> deep_groove_equivalent_load(Force radial, Force axial, Force static_rating, Ratio f0, Steps steps)
{
    const double relative = f0 * (axial / static_rating);
    if (relative > bearings::groove_load.back())
        return NoValue{
            CUTWATER_NO_ANSWER,
            "axial_load",
            "f0 Fa/C0 is {0}; the standard's table ends at {1}: the bearing is too small for this axial load",
            {{relative, ""}, {bearings::groove_load.back(), ""}}};
    const double e = bearings::interpolated(bearings::groove_load, bearings::groove_e, relative);
    const double y = bearings::interpolated(bearings::groove_load, bearings::groove_y, relative);
    steps("f0 Fa/C0", "relative axial load", Ratio(relative), units::number);
    steps("e", "Table 3", Ratio(e), units::number);
    steps("Y", "Table 3, where Fa/Fr > e", Ratio(y), units::number);
    return either(axial <= e * radial, radial, greater(radial, Force(0.56 * radial + y * axial)));
}

inline constexpr Record<&deep_groove_equivalent_load> deep_groove_equivalent_load_record{
    .name = "deep_groove_equivalent_load",
    .meaning = "Dynamic equivalent load of a deep groove ball bearing",
    .also = "equivalent dynamic load|equivalent bearing load|X Y factors|Conrad bearing load",
    .inputs = {bearings::radial_load(), bearings::axial_load(), bearings::static_rating(),
               input("f0", "f_0", units::number, between(2, 30),
                     "calculation factor of the bearing by its maker, from ISO 76; about 12 to 16")},
    .results = {output("equivalent_load", "P", units::newton, "dynamic equivalent load")},
    .equation = "F_a/F_r <= e: P = F_r; else P = 0.56 F_r + Y F_a, at least F_r; e and Y by f_0 F_a/C_0, linear "
                "between the lines of the table",
    .source =
        "ISO 281:2007, 5.2 and Table 3, as transcribed in an open contact solver and in other public programs (read)",
    .cautions = {"For normal internal clearance. Below the table's first line, 0.172, its factors are kept: the "
                 "standard gives none.",
                 bearings::least_load, bearings::life_guide},
    .example = {"2000, 1000, 38000, 13", "3115.2", "hand calculation: e 0.2195, Y 1.9952"}};

inline Force angular_contact_equivalent_load(Force radial, Force axial, Angle angle, BearingSet rows, Steps steps)
{
    using namespace bearings;
    const double degrees = units::deg.in(angle);
    const bool pair = rows == BearingSet::pair;
    const auto factor = [&](const auto& of_pair, const auto& of_single) {
        return interpolated(
            contact, [&](std::size_t i) { return elementary::select(pair, of_pair[i], of_single[i]); }, degrees);
    };
    constexpr std::array<double, 6> none{};
    const double e = factor(contact_e, contact_e);
    const bool light = axial <= e * radial;
    const double x = elementary::select(light, 1, factor(pair_x, single_x));
    const double y = elementary::select(light, factor(pair_y_low, none), factor(pair_y, single_y));
    steps("e", "Table 3", Ratio(e), units::number);
    steps("X", "Table 3", Ratio(x), units::number);
    steps("Y", "Table 3", Ratio(y), units::number);
    return greater(radial, Force(x * radial + y * axial));
}

inline constexpr Record<&angular_contact_equivalent_load> angular_contact_equivalent_load_record{
    .name = "angular_contact_equivalent_load",
    .meaning = "Dynamic equivalent load of an angular contact ball bearing, single or paired",
    .also = "equivalent dynamic load|thrust bearing equivalent load|double-row bearing load|duplex bearing load",
    .inputs = {bearings::radial_load(), bearings::axial_load(),
               input("contact_angle", "alpha", units::deg, between(20, 45),
                     "contact angle, mostly 40 degrees in pumps"),
               bearings::bearing_set()},
    .results = {output("equivalent_load", "P", units::newton, "dynamic equivalent load; of the pair where paired")},
    .equation =
        "P = X F_r + Y F_a, at least F_r; X, Y and e by the contact angle, linear between the lines of the table",
    .source = "ISO 281:2007, 5.2 and Table 3: single row as transcribed in an open contact solver (read); pair and "
              "double row from memory of it, found to be 1.63 times the single row within rounding and to meet at "
              "F_a/F_r = e on every line",
    .cautions = {"A pair goes with the rating of the pair, 2^0.7 times that of one: see bearing_set_rating.",
                 "A single row under a radial load makes an axial force of its own, which the opposite bearing must "
                 "bear: it is not added here.",
                 bearings::least_load, bearings::life_guide},
    .example = {"1200, 3000, 40, \"pair\"", "3474", "hand calculation: 0.57 x 1200 + 0.93 x 3000"}};

inline std::tuple<Force, Force> bearing_set_rating(Force dynamic, Force stationary, Count count)
{
    return {elementary::positive_pow(count.value, 0.7) * dynamic, count.value * stationary};
}

inline constexpr Record<&bearing_set_rating> bearing_set_rating_record{
    .name = "bearing_set_rating",
    .meaning = "Load ratings of equal single-row angular contact bearings mounted as one set",
    .also = "paired bearing rating|duplex bearing rating|set of bearings|matched pair",
    .inputs = {input("dynamic_rating", "C_1", units::newton, bearings::rating_n,
                     "basic dynamic load rating of one bearing"),
               input("static_rating", "C_01", units::newton, bearings::rating_n,
                     "basic static load rating of one bearing"),
               input("bearings", "i", units::count, between(1, 6),
                     "2 for a pair; in a set of three or more all must carry alike, as in tandem")},
    .results = {output("set_dynamic_rating", "C", units::newton, "basic dynamic load rating of the set"),
                output("set_static_rating", "C_0", units::newton, "basic static load rating of the set")},
    .equation = "C = i^0.7 C_1; C_0 = i C_01",
    .source = "ISO 281:2007, 5.1.2 and ISO 76:2006, 5.1.2 (from memory of both)",
    .cautions =
        {"Only for bearings made and fitted to share the load: matched, or universally matchable by their maker."},
    .sound_anywhere = true,
    .example = {"70000, 60000, 2", "113715, 120000", "hand calculation"}};

}  // namespace cutwater::formulas

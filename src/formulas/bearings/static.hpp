// Static load of ball bearings by ISO 76.
#pragma once

#include "formulas/bearings/shared.hpp"

#include <algorithm>

namespace cutwater::formulas {

enum class BallBearing { deep_groove, angular_single, angular_pair };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<3> words_of<formulas::BallBearing>{"deep groove", "angular contact", "angular contact pair"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace bearings {

inline constexpr std::array<double, 7> static_contact{15, 20, 25, 30, 35, 40, 45};
inline constexpr std::array<double, 7> static_y_single{0.46, 0.42, 0.38, 0.33, 0.29, 0.26, 0.22};
inline constexpr std::array<double, 7> static_y_pair{0.92, 0.84, 0.76, 0.66, 0.58, 0.52, 0.44};

}  // namespace bearings

inline Force static_equivalent_load(BallBearing type, Force radial, Force axial, Angle angle)
{
    const double degrees = units::deg.in(angle);
    const bool groove = type == BallBearing::deep_groove, pair = type == BallBearing::angular_pair;
    const double angular_y = bearings::interpolated(
        bearings::static_contact,
        [&](std::size_t i) {
            return elementary::select(pair, bearings::static_y_pair[i], bearings::static_y_single[i]);
        },
        degrees);
    const double x = elementary::select(groove, 0.6, elementary::select(pair, 1, 0.5));
    const double y = elementary::select(groove, 0.5, angular_y);
    return greater(radial, Force(x * radial + y * axial));
}

inline constexpr Record<&static_equivalent_load> static_equivalent_load_record{
    .name = "static_equivalent_load",
    .meaning = "Static equivalent load of a ball bearing",
    .also = "equivalent static load|P0|X0 Y0 factors",
    .inputs = {choice<BallBearing>("bearing_type", "type",
                                   "deep groove, single or double row; angular contact; a pair of it back to back or "
                                   "face to face, or a double row"),
               bearings::radial_load(), bearings::axial_load(),
               input("contact_angle", "alpha", units::deg, between(15, 45),
                     "contact angle, of use for angular contact only: a deep groove bearing's counts in its factors",
                     40)},
    .results = {output("static_equivalent_load", "P_0", units::newton,
                       "static equivalent load; of the pair where paired")},
    .equation = "P_0 = max(F_r, X_0 F_r + Y_0 F_a); deep groove X_0 0.6, Y_0 0.5; angular contact X_0 0.5, pair X_0 1, "
                "Y_0 by alpha, straight between the table's angles",
    .source = "ISO 76:2006, table of X0 and Y0, as transcribed in an open mechanical library (excerpt read)",
    .cautions =
        {"Take the greatest load that ever acts, start-up, water hammer and transport included, not that of the duty."},
    .example = {"\"angular contact pair\", 1200, 3000", "2760", "hand calculation: 1200 + 0.52 x 3000"}};

inline Ratio static_safety(Force rating, Force load) { return rating / load; }

inline constexpr Record<&static_safety> static_safety_record{
    .name = "static_safety",
    .meaning = "Static safety factor of a rolling bearing",
    .also = "static safety factor|S0|C0/P0",
    .inputs = {bearings::static_rating(), input("static_equivalent_load", "P_0", units::newton, above_up_to(0, 1e7),
                                                "static equivalent load, by static_equivalent_load")},
    .results = {output("safety", "S_0", units::number,
                       "static safety factor; 1 to 2 for quiet running of ball bearings, more with shocks")},
    .equation = "S_0 = C_0/P_0",
    .source = "ISO 76:2006 (from memory of it)",
    .cautions = {"Below the safety that its maker asks for, the bearing is dented at rest and runs rough from then on, "
                 "whatever life is calculated.",
                 bearings::life_guide},
    .sound_anywhere = true,
    .example = {"38000, 2760", "13.768", "hand calculation"}};

}  // namespace cutwater::formulas

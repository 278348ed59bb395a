// Bearings in service: loads from the rotor, frequencies, grease, friction heat and temperature.
#pragma once

#include "catalogue/as_given.hpp"
#include "formulas/bearings/shared.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace cutwater::formulas {

enum class LoadDirections { worst, one_plane };
enum class GreasedBearing { deep_groove, cylindrical_roller, other_roller };

}  // namespace cutwater::formulas

namespace cutwater {

template <>
inline constexpr Words<2> words_of<formulas::LoadDirections>{"worst", "one plane"};
template <>
inline constexpr Words<3> words_of<formulas::GreasedBearing>{"deep groove ball", "cylindrical roller",
                                                             "spherical or taper roller"};

}  // namespace cutwater

namespace cutwater::formulas {

namespace bearings {

inline constexpr Interval signed_load_n = between(-1e7, 1e7);
inline constexpr Interval place_mm = between(-20000, 20000);
constexpr Force magnitude(Force f) { return f < Force{} ? -f : f; }

}  // namespace bearings

inline std::tuple<Force, Force> bearing_loads(Force impeller, Length overhang, Length span, Force weight,
                                              Length weight_place, Force drive, Length drive_place, Force unbalance,
                                              LoadDirections directions)
{
    // Places from the inboard bearing, towards the outboard one; the impeller lies at -overhang.
    const auto outboard = [&](Force force, Length place) { return force * (place / span); };
    const Force at_2[] = {outboard(impeller, -overhang), outboard(unbalance, -overhang), outboard(weight, weight_place),
                          outboard(drive, drive_place)};
    const Force at_1[] = {impeller - at_2[0], unbalance - at_2[1], weight - at_2[2], drive - at_2[3]};
    Force first{}, second{};
    for (int i = 0; i < 4; ++i) {
        first += directions == LoadDirections::worst ? bearings::magnitude(at_1[i]) : at_1[i];
        second += directions == LoadDirections::worst ? bearings::magnitude(at_2[i]) : at_2[i];
    }
    return {bearings::magnitude(first), bearings::magnitude(second)};
}

inline constexpr Record<&bearing_loads> bearing_loads_record{
    .name = "bearing_loads",
    .meaning =
        "Radial loads on the two bearings of an overhung pump from impeller, weight, unbalance and belt or coupling",
    .also = "bearing reactions|radial bearing load|inboard and outboard bearing load",
    .inputs = {input("impeller_force", "F", units::newton, bearings::signed_load_n,
                     "radial force at the impeller, by radial_thrust"),
               input("overhang", "a", units::mm, between(0, 20000),
                     "from the impeller's middle to the inboard bearing, the one nearer the impeller"),
               input("span", "b", units::mm, above_up_to(0, 20000), "between the bearings"),
               input("weight", "W", units::newton, bearings::signed_load_n,
                     "weight of rotor and liquid in the impeller", 0),
               input("weight_place", "x_W", units::mm, bearings::place_mm,
                     "centre of that weight, from the inboard bearing towards the outboard one; negative on the "
                     "impeller's side",
                     0),
               input("drive_force", "F_d", units::newton, bearings::signed_load_n,
                     "belt pull, or the force of a misaligned coupling", 0),
               input("drive_place", "x_d", units::mm, bearings::place_mm,
                     "place of the drive's force, from the inboard bearing towards the outboard one", 0),
               input("unbalance_force", "F_u", units::newton, bearings::signed_load_n,
                     "force of the impeller's unbalance, by unbalance_force", 0),
               choice<LoadDirections>("directions", "directions",
                                      "worst: every force turned so that it adds; one plane: with their signs",
                                      LoadDirections::worst)},
    .results = {output("inboard", "R_1", units::newton,
                       "radial load on the bearing nearer the impeller, as a magnitude"),
                output("outboard", "R_2", units::newton, "radial load on the other bearing, as a magnitude")},
    .equation = "R_2i = F_i x_i/b, R_1i = F_i (1 - x_i/b), x = -a for impeller and unbalance; worst: sums of "
                "magnitudes; one plane: magnitudes of sums",
    .source = "balance of forces and moments",
    .cautions = {"The direction of the radial thrust is not known well: take the worst unless it was measured. Closed "
                 "valve and the greatest flow are the cases to check.",
                 "The whole axial thrust goes to the fixed bearing; the other one must be free to move along.",
                 bearings::life_guide},
    .example = {"1000, 200, 150", "2333.3, 1333.3", "hand calculation"}};

inline std::tuple<Frequency, Frequency, Frequency, Frequency> bearing_frequencies(RotationalSpeed speed, Count balls,
                                                                                  Length ball, Length pitch,
                                                                                  Angle angle)
{
    const double ratio = ball / pitch;
    const double g = ratio * elementary::cos(units::rad.in(angle));
    const Frequency f = speed.revolutions();
    return {0.5 * balls.value * (1 - g) * f, 0.5 * balls.value * (1 + g) * f, 0.5 * (1 - g) * f,
            0.5 / ratio * (1 - g * g) * f};
}

inline constexpr auto bearing_frequencies_record = record<&bearing_frequencies>(
    {.name = "bearing_frequencies",
     .meaning = "Frequencies at which defects of a rolling bearing show, its outer ring standing still",
     .also = "BPFO BPFI FTF BSF|ball pass frequency|defect frequencies|fault frequencies|cage frequency",
     .inputs = {bearings::speed(), input("elements", "Z", units::count, between(3, 200), "balls or rollers in a row"),
                input("element_diameter", "d", units::mm, bearings::diameter_mm, "diameter of ball or roller"),
                input("pitch_diameter", "D_pw", units::mm, bearings::diameter_mm,
                      "pitch diameter of the rolling elements"),
                input("contact_angle", "alpha", units::deg, between(0, 60),
                      "contact angle; 0 for a deep groove bearing under radial load", 0)},
     .results = {output("outer", "BPFO", units::hertz, "defect of the outer ring"),
                 output("inner", "BPFI", units::hertz, "defect of the inner ring"),
                 output("cage", "FTF", units::hertz, "cage"),
                 output("spin", "BSF", units::hertz,
                        "spin of a rolling element; a defect on it strikes both rings, at twice this")},
     .equation = "g = (d/D_pw) cos alpha; BPFO = Z n (1 - g)/2; BPFI = Z n (1 + g)/2; FTF = n (1 - g)/2; BSF = n D_pw "
                 "(1 - g^2)/(2 d)",
     .source = "kinematics of rolling without slip, common practice; geometry and frequencies of a published "
               "run-to-failure test, H. Qiu and others, J. Sound and Vibration 2006 (as its users state them, read)",
     .cautions = {"Slip makes the real ones 1 to 2 % lower, and the contact angle grows with axial load: look for a "
                  "family of lines with side bands, not for one number.",
                  "A rising defect frequency is a reason to plan a repair, its absence no proof of a sound bearing."},
     .example = {"2000, 16, \"0.331 in\", \"2.815 in\", 15.17", "236.40, 296.93, 14.775, 139.92",
                 "H. Qiu and others, 2006"}},
    relation<"element_diameter", "pitch_diameter">([](Length element, Length pitch) { return element < pitch; },
                                                   "it must be less than the pitch diameter"));

inline Outcome<Time> relubrication_interval(GreasedBearing type, RotationalSpeed speed, Length bore,
                                            Temperature temperature, Fraction other)
{
    static constexpr double factors[] = {10, 5, 1};
    const double n = units::rpm.in(speed), d = units::mm.in(bore);
    const double hours = factors[static_cast<int>(type)] * (14e6 / (n * std::sqrt(d)) - 4 * d);
    if (!(hours > 0))
        return NoValue{CUTWATER_NO_ANSWER,
                       "speed",
                       "at {0} and a bore of {1} the rule gives no interval: too fast for relubrication by it",
                       {number_in(speed, units::rpm), number_in(bore, units::mm)}};
    const double warm = std::max(0.0, units::degC.in(temperature)-70);
    return units::hour(hours * elementary::positive_pow(2, -warm / 15) * other.value);
}

inline constexpr Record<&relubrication_interval> relubrication_interval_record{
    .name = "relubrication_interval",
    .meaning = "Interval for relubricating a rolling bearing with grease",
    .also = "regreasing interval|grease interval|lubrication interval|grease life",
    .inputs = {choice<GreasedBearing>(
                   "bearing_type", "type",
                   "type of bearing; take an angular contact ball bearing as deep groove, with a factor of its own"),
               bearings::speed(), input("bore", "d", units::mm, bearings::diameter_mm, "bore of the bearing"),
               input("temperature", "T", units::degC, between(-30, 120),
                     "temperature of the bearing's outer ring; halved for every 15 K above 70 degC"),
               input("other_factors", "f", units::fraction, above_up_to(0, 1),
                     "contamination (1 to 0.2), moisture (1 to 0.1), vibration (1 to 0.3), vertical shaft (0.5 to "
                     "0.3), multiplied")},
    .results = {output("interval", "t_f", units::hour, "running hours between greasings")},
    .equation = "t_f = K [14e6/(n d^0.5) - 4 d] 2^(-(T - 70)/15) f, hours, 1/min, mm, degC; K: deep groove ball 10, "
                "cylindrical roller 5, spherical or taper roller 1; no bonus below 70 degC",
    .source =
        "rule of lubrication practice, as in guides on relubrication intervals (excerpts read); ranges of the other "
        "factors from memory of the same literature",
    .cautions = {"Good to a factor of two to three; the makers of bearing and grease go before it, and the grease's "
                 "own temperature limit too.",
                 "Too much grease overheats a bearing. Never mix greases that are not known to agree."},
    .example = {"\"deep groove ball\", 1450, 50, 70, 1", "11654.5", "hand calculation"}};

inline AsGiven<units::gram> grease_quantity(AsGiven<units::mm> outside, AsGiven<units::mm> width)
{
    return AsGiven<units::gram>(0.005 * outside.number * width.number);
}

inline constexpr Record<&grease_quantity> grease_quantity_record{
    .name = "grease_quantity",
    .meaning = "Grease for one relubrication of a rolling bearing",
    .also = "grease amount|regreasing quantity|grease volume",
    .inputs = {input("outside_diameter", "D", units::mm, bearings::diameter_mm, "outside diameter of the bearing"),
               input("width", "B", units::mm, bearings::diameter_mm, "width of the bearing")},
    .results = {output("quantity", "m", units::gram, "grease through the side of the bearing")},
    .equation = "m = 0.005 D B, g, mm",
    .source = "rule of lubrication practice, in guides on relubrication (excerpts read)",
    .cautions = {"Grease while turning where that is safe from outside the guard, and let the old grease out."},
    .sound_anywhere = true,
    .example = {"110, 27", "14.85", "hand calculation"}};

namespace bearings {

/// Palmgren's friction torque of the lubricant alone, N m.
inline double lubricant_torque(double f0, double viscosity_mm2s, double speed_rpm, double mean_mm)
{
    const double fast = viscosity_mm2s * speed_rpm;
    const double cube = mean_mm * mean_mm * mean_mm;
    const double newton_mm = elementary::select(fast >= 2000, 1e-7 * f0 * elementary::cbrt(fast * fast) * cube,
                                                160e-7 * f0 * cube);
    return 1e-3 * newton_mm;
}

constexpr auto mean_diameter()
{
    return input("mean_diameter", "d_m", units::mm, diameter_mm, "half the sum of bore and outside diameter");
}
constexpr auto lubricant_factor()
{
    return input("lubricant_factor", "f_0", units::number, between(0.1, 30),
                 "deep groove: oil bath 2, grease 0.7 to 2, mist 1; angular contact: 3.3, 2, 1.7; double-row angular: "
                 "6.5, 4, 3.4; vertical or flooded twice");
}
constexpr auto load_factor()
{
    return input("load_factor", "f_1", units::number, between(0, 0.01),
                 "deep groove 0.0006 to 0.0009 times (P_0/C_0)^0.55; angular contact 0.001 (P_0/C_0)^0.33");
}
constexpr auto friction_load()
{
    return input("friction_load", "P_1", units::newton, load_n,
                 "deep groove 3 F_a - 0.1 F_r, angular contact F_a - 0.1 F_r, a pair 1.4 F_a - 0.1 F_r; at least F_r");
}
inline constexpr const char* friction_source =
    "A. Palmgren, Ball and Roller Bearing Engineering, and T. A. Harris, Rolling Bearing Analysis (from memory of "
    "both); factors are the same texts' guidance";
inline constexpr const char* friction_scatter =
    "Guide: plus or minus 50 %; rubbing seals and freshly greased bearings take more. The two branches of the relation "
    "are 1 % apart at nu n = 2000.";

}  // namespace bearings

inline std::tuple<Power, Torque, Torque> bearing_friction_heat(RotationalSpeed speed, KinematicViscosity viscosity,
                                                               Length mean, Ratio f0, Ratio f1, Force load)
{
    const Torque lubricant = Torque::from_value(
        bearings::lubricant_torque(f0, units::mm2s.in(viscosity), units::rpm.in(speed), units::mm.in(mean)));
    const Torque loaded = Torque::from_value(f1 * load.value() * mean.value());
    return {Power::from_value((lubricant + loaded).value() * speed.angular().value()), lubricant, loaded};
}

inline constexpr Record<&bearing_friction_heat> bearing_friction_heat_record{
    .name = "bearing_friction_heat",
    .meaning = "Friction heat and torque of a rolling bearing",
    .also = "bearing friction loss|bearing heat|friction torque|bearing power loss",
    .inputs = {bearings::speed(),
               input("viscosity", "nu", units::mm2s, between(1, 1e5),
                     "viscosity of the oil, or of the grease's base oil, at the running temperature"),
               bearings::mean_diameter(), bearings::lubricant_factor(), bearings::load_factor(),
               bearings::friction_load()},
    .results = {output("heat", "P_f", units::watt, "friction heat"),
                output("lubricant_torque", "M_0", units::Nmm, "torque from the lubricant"),
                output("load_torque", "M_1", units::Nmm, "torque from the load")},
    .equation = "nu n >= 2000: M_0 = 1e-7 f_0 (nu n)^(2/3) d_m^3, else 160e-7 f_0 d_m^3; M_1 = f_1 P_1 d_m; P_f = (M_0 "
                "+ M_1) 2 pi n; N mm, mm2/s, 1/min, mm, N",
    .source = bearings::friction_source,
    .scatter = {plus_minus("heat", 0.5), plus_minus("lubricant_torque", 0.5), plus_minus("load_torque", 0.5)},
    .cautions = {bearings::friction_scatter},
    .sound_anywhere = true,
    .example = {"2900, 20, 80, 2, 0, 0", "46.596, 153.43, 0", "hand calculation"}};

inline Outcome<Temperature> bearing_housing_temperature(Power heat, Area area, HeatTransfer transfer,
                                                        Temperature ambient)
{
    const Temperature found = ambient + heat / (transfer * area);
    if (units::degC.in(found) > 300)
        return NoValue{CUTWATER_NO_ANSWER,
                       "heat",
                       "the housing would be at {0}: no bearing runs so hot; check heat, area and heat transfer",
                       {number_in(found, units::degC)}};
    return found;
}

namespace bearings {

constexpr auto housing_area()
{
    return input("area", "A", units::m2, above_up_to(0, 100),
                 "outer surface of the bearing housing that gives off heat");
}
constexpr auto housing_transfer()
{
    return input("heat_transfer", "U", units::Wm2K, between(1, 5000),
                 "heat transfer to the air: 8 to 12 in still air with radiation, 20 and more with the motor's draught");
}
constexpr auto ambient()
{
    return input("ambient", "T_a", units::degC, between(-60, 100),
                 "air around the housing, sun and hot neighbours counted");
}
inline constexpr const char* housing_scatter = "Guide: plus or minus 15 K. Heat along the shaft from a hot pump, or "
                                               "into a cold one, is left out unless it is added to the heat.";
inline constexpr const char* touch = "A housing above about 60 degC burns the hand; above about 80 degC the oil ages "
                                     "fast. In explosive atmospheres the certificate's surface temperature governs.";

}  // namespace bearings

inline constexpr Record<&bearing_housing_temperature> bearing_housing_temperature_record{
    .name = "bearing_housing_temperature",
    .meaning = "Temperature of a bearing housing that gives a known heat to the air",
    .also = "housing temperature|bearing temperature rise|bearing frame temperature",
    .inputs = {input("heat", "P_f", units::watt, between(0, 1e6),
                     "friction heat of all bearings in the housing, with heat that comes along the shaft"),
               bearings::housing_area(), bearings::housing_transfer(), bearings::ambient()},
    .results = {output("temperature", "T", units::degC, "temperature of the housing in steady running")},
    .equation = "T = T_a + P_f/(U A)",
    .source = "heat balance; U of 8 to 12 W/(m2 K) for free convection with radiation: common practice",
    .scatter = {plus_minus_in_unit("temperature", 15)},
    .cautions = {bearings::housing_scatter, bearings::touch},
    .sound_anywhere = true,
    .example = {"90, 0.25, 12, 30", "60", "hand calculation"}};

}  // namespace cutwater::formulas

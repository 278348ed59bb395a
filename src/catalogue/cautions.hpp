// Cautions that several records share. They travel with the answer.
#pragma once

namespace cutwater::caution {

inline constexpr const char* guide_only = "A calculated value is a guide: the pump maker's tested data, local codes "
                                          "and a licensed engineer's judgement go before it.";
inline constexpr const char* npsh_margin = "NPSH3 is already 3 % of head lost to cavitation: keep a margin above it, "
                                           "larger for hot, gassy or high-energy suction, "
                                           "as agreed with the pump maker.";
inline constexpr const char* inlet_vapour_pressure = "Take the vapour pressure at the highest temperature the liquid "
                                                     "can have at the impeller's inlet, heating included.";
inline constexpr const char* hot_or_toxic = "With hot, toxic or flammable liquid, vaporising at the seal or impeller "
                                            "can release it: follow the site's rules and the pump maker's limits.";
inline constexpr const char* affinity = "The affinity laws scale a pump's curve, not a system's duty: with static head "
                                        "the new duty is where the scaled curve meets the system curve.";
inline constexpr const char* trim =
    "Trim laws are approximate: the Hydraulic Institute's Engineering Data Book (text of 2026, read) takes them for "
    "cuts within 5 % of the diameter only, and below about 80 % they depart far. Have the trim confirmed by the pump "
    "maker.";
inline constexpr const char* closed_valve =
    "Never run a pump against a closed valve: the liquid heats, may boil and can burst the casing.";
inline constexpr const char* pressure_containment =
    "Never exceed the pump maker's rated pressure and temperature; pressure equipment falls under local codes.";
inline constexpr const char* viscous_method =
    "The viscosity correction is an empirical average of tests: single pumps may depart from it by several per cent.";

}  // namespace cutwater::caution

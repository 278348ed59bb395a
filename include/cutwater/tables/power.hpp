// Units of energy, power, torque and turning. Factors: NIST SP 811 (2008), appendix B.
#pragma once

#include <cutwater/unit.hpp>

namespace cutwater {

template <>
struct UnitTable<Energy> {
    static constexpr const char* type = "Energy";
    static constexpr const char* name = "energy";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"kWh", "kWh", "kW.h", "kW h|kW.h|kW*h|kWhr", 3600000, 1},
        {"MWh", "MWh", "MW.h", "MW h|MW.h", 3.6e9, 1},
        {"Wh", "Wh", "W.h", "W h", 3600, 1},
        {"kJ", "kJ", "kJ", "kilojoule|kilojoules", 1000, 1},
        {"MJ", "MJ", "MJ", "megajoule|megajoules", 1000000, 1},
        {"GJ", "GJ", "GJ", "", 1e9, 1},
        {"J", "J", "J", "joule|joules|W s"},
        {"Btu", "btu", "[Btu_IT]", "BTU", 105505585262, 100000000},
        {"kcal", "kcal", "kcal_IT", "", 41868, 10},  // International Table calorie
    };
};

template <>
struct UnitTable<Power> {
    static constexpr const char* type = "Power";
    static constexpr const char* name = "power";
    static constexpr const char* hint = "hp is 550 ft lbf/s; write PS for metric, hp(E) for electrical horsepower";
    static constexpr UnitInfo units[] = {
        {"kW", "kW", "kW", "kilowatt|kilowatts", 1000, 1},
        {"W", "W", "W", "watt|watts|J/s"},
        {"MW", "MW", "MW", "megawatt|megawatts", 1000000, 1},
        // 550 ft lbf/s = 745.69987158227022 W exactly; its numerator over a power of ten has 17 digits, hence the
        // nearest double
        {"hp", "hp", "[HP]", "bhp|whp|h.p.|b.h.p.|mechanical hp|hp(I)", 745.69987158227022, 1},
        {"PS", "PS", "", "ch|cv|CV|metric hp|hp(M)|hp metric|pk", 73549875, 100000},  // 75 kgf m/s
        {"hp(E)", "hpE", "", "electric hp|electrical hp|hp electric|hp electrical", 746, 1},
        {"Btu/h", "btuh", "[Btu_IT]/h", "BTU/h|Btu/hr|BTU/hr|btuh", 105505585262, 360000000000},
        {"kcal/h", "kcalh", "kcal_IT/h", "kcal/hr", 41868, 36000},
    };
};

template <>
struct UnitTable<Torque> {
    static constexpr const char* type = "Torque";
    static constexpr const char* name = "torque or moment";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"N m", "Nm", "N.m", "N·m|N*m|newton metre|newton metres"},
        {"kN m", "kNm", "kN.m", "kN·m|kN*m", 1000, 1},
        {"N mm", "Nmm", "N.mm", "N·mm|N*mm", 1, 1000},
        {"lbf ft", "lbfft", "[lbf_av].[ft_i]", "lb ft|lb-ft|lbf-ft|ft lbf|ft lb|ft-lb|ft-lbf", 3389544870828501, 25e14},
        {"lbf in", "lbfin", "[lbf_av].[in_i]", "lb in|lb-in|lbf-in|in lbf|in lb|in-lb|in-lbf", 1129848290276167, 1e16},
        {"kgf m", "kgfm", "kgf.m", "kg m|kp m|m kgf|m kp", 980665, 100000},
    };
};

template <>
struct UnitTable<RotationalSpeed> {
    static constexpr const char* type = "RotationalSpeed";
    static constexpr const char* name = "rotational speed";
    static constexpr const char* hint = "Hz is a supply frequency, no speed";
    static constexpr const char* mistaken = "Frequency";
    static constexpr UnitInfo units[] = {
        {"1/min", "rpm", "/min", "rpm|r.p.m.|r/min|min-1|rev/min|/min|U/min|tr/min", 1, 60},
        {"1/s", "rps", "/s", "rps|r/s|s-1|rev/s|/s"},
        {"rad/s", "rads", "rad/s", "rad s-1|radian/s", 1, 6.283185307179586476925},  // 2 pi, nearest double
    };
};

template <>
struct UnitTable<AngularVelocity> {
    static constexpr const char* type = "AngularVelocity";
    static constexpr const char* name = "angular velocity";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"rad/s", "rads", "rad/s", "rad s-1|radian/s"},
        {"deg/s", "degs", "deg/s", "", 0.017453292519943295769, 1},  // pi/180, nearest double
    };
};

template <>
struct UnitTable<Frequency> {
    static constexpr const char* type = "Frequency";
    static constexpr const char* name = "frequency";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"Hz", "Hz", "Hz", "hertz|1/s|s-1|/s|c/s"},
        {"kHz", "kHz", "kHz", "", 1000, 1},
        {"1/min", "permin", "/min", "min-1|/min|cpm|cycles/min|c/min", 1, 60},
        {"1/h", "perh", "/h", "h-1|/h|per hour|starts/h|starts per hour", 1, 3600},
    };
};

template <>
struct UnitTable<EnergyPerVolume> {
    static constexpr const char* type = "EnergyPerVolume";
    static constexpr const char* name = "energy per volume";
    static constexpr const char* hint = "say which gallon: kWh/US gal";
    static constexpr UnitInfo units[] = {
        {"kWh/m3", "kWhm3", "kW.h/m3", "kWh/m³|kWh/m^3|kW h/m3|kWh/cbm", 3600000, 1},
        {"Wh/m3", "Whm3", "W.h/m3", "Wh/m³|Wh/m^3", 3600, 1},
        {"J/m3", "Jm3", "J/m3", "J/m³|J/m^3"},
        {"kJ/m3", "kJm3", "kJ/m3", "kJ/m³|J/l|J/L", 1000, 1},
        {"MJ/m3", "MJm3", "MJ/m3", "MJ/m³|kJ/l|kJ/L", 1000000, 1},
        {"kWh/US gal", "kWhusgal", "kW.h/[gal_us]", "kWh/gal US", 36e17, 3785411784},
    };
};

/// What a unit of energy brings with it, as emissions.
using MassPerEnergy = decltype(Mass() / Energy());

template <>
struct UnitTable<MassPerEnergy> {
    static constexpr const char* type = "MassPerEnergy";
    static constexpr const char* name = "mass per energy";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"kg/kWh", "kgkWh", "kg/(kW.h)", "kg/kW h|t/MWh|kg CO2/kWh|kgCO2/kWh", 1, 3600000},
        {"g/kWh", "gkWh", "g/(kW.h)", "g/kW h|kg/MWh|g CO2/kWh|gCO2/kWh", 1, 3.6e9},
        {"kg/GJ", "kgGJ", "kg/GJ", "", 1, 1e9},
        {"lb/MWh", "lbMWh", "[lb_av]/(MW.h)", "lbs/MWh", 45359237, 3.6e17},
    };
};

}  // namespace cutwater

// Units of length, time, mass, force and what they make. Factors: NIST SP 811 (2008), appendix B, unless said
// otherwise.
#pragma once

#include <cutwater/unit.hpp>

namespace cutwater {

template <>
struct UnitTable<Length> {
    static constexpr const char* type = "Length";
    static constexpr const char* name = "length or head";
    static constexpr const char* hint = "a pressure in metres of water is no head";
    static constexpr const char* mistaken = "PressureDifference";
    static constexpr UnitInfo units[] = {
        {"m", "m", "m", "metre|metres|meter|meters|m LC|mLC"},
        {"mm", "mm", "mm", "MM|millimetre|millimetres|millimeter|millimeters", 1, 1000},
        {"cm", "cm", "cm", "centimetre|centimetres|centimeter|centimeters", 1, 100},
        {"um", "um", "um", "µm|micron|microns|micrometre|micrometres|micrometer|micrometers", 1, 1000000},
        {"km", "km", "km", "kilometre|kilometres|kilometer|kilometers", 1000, 1},
        {"ft", "ft", "[ft_i]", "foot|feet", 3048, 10000},
        {"in", "in", "[in_i]", "inch|inches|\"", 254, 10000},
        {"thou", "thou", "[mil_i]", "mil|mils", 254, 10000000},
    };
};

/// Slenderness of a shaft, L^3/D^4.
using InverseLength = decltype(Ratio() / Length());

template <>
struct UnitTable<InverseLength> {
    static constexpr const char* type = "InverseLength";
    static constexpr const char* name = "inverse of a length";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"1/mm", "permm", "/mm", "mm-1|/mm", 1000, 1},
        {"1/m", "perm", "/m", "m-1|/m"},
        {"1/in", "perin", "/[in_i]", "in-1|/in", 10000, 254},
    };
};

template <>
struct UnitTable<Area> {
    static constexpr const char* type = "Area";
    static constexpr const char* name = "area";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"m2", "m2", "m2", "m²|m^2|sq m|sqm|square metre|square metres"},
        {"mm2", "mm2", "mm2", "mm²|mm^2|sq mm|sqmm", 1, 1000000},
        {"cm2", "cm2", "cm2", "cm²|cm^2|sq cm|sqcm", 1, 10000},
        {"ft2", "ft2", "[sft_i]", "ft²|ft^2|sq ft|sqft|square foot|square feet", 9290304, 100000000},
        {"in2", "in2", "[sin_i]", "in²|in^2|sq in|sqin|square inch|square inches", 64516, 100000000},
    };
};

using SecondMoment = decltype(Area() * Area());

template <>
struct UnitTable<SecondMoment> {
    static constexpr const char* type = "SecondMoment";
    static constexpr const char* name = "second moment of area";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"mm4", "mm4", "mm4", "mm^4", 1, 1e12},
        {"cm4", "cm4", "cm4", "cm^4", 1, 1e8},
        {"m4", "m4", "m4", "m^4"},
    };
};

template <>
struct UnitTable<Volume> {
    static constexpr const char* type = "Volume";
    static constexpr const char* name = "volume";
    static constexpr const char* hint = "say which gallon: US gal or imp gal";
    static constexpr UnitInfo units[] = {
        {"m3", "m3", "m3", "m³|m^3|cbm|cu m|cubic metre|cubic metres|cubic meter|cubic meters"},
        {"l", "l", "L", "L|ltr|litre|litres|liter|liters|dm3", 1, 1000},
        {"ml", "ml", "mL", "mL|cm3|cc|cu cm", 1, 1000000},
        {"US gal", "usgal", "[gal_us]", "gal US|US gallon|US gallons", 3785411784, 1e12},
        {"imp gal", "impgal", "[gal_br]", "gal imp|imperial gallon|imperial gallons|UK gal|gal UK", 454609, 100000000},
        {"ft3", "ft3", "[cft_i]", "ft³|ft^3|cu ft|cuft|cubic foot|cubic feet", 28316846592, 1e12},
        {"in3", "in3", "[cin_i]", "in³|in^3|cu in|cuin|cubic inch|cubic inches", 16387064, 1e12},
        {"bbl", "bbl", "[bbl_us]", "barrel|barrels|oil barrel|oil barrels", 158987294928, 1e12},  // 42 US gallons
    };
};

template <>
struct UnitTable<Time> {
    static constexpr const char* type = "Time";
    static constexpr const char* name = "time";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"s", "s", "s", "sec|secs|second|seconds"},
        {"min", "min", "min", "mins|minute|minutes", 60, 1},
        {"h", "h", "h", "hr|hrs|hour|hours", 3600, 1},
        {"d", "d", "d", "day|days", 86400, 1},
        {"month", "month", "", "mo|months", 2628000, 1},  // a twelfth of the year below
        {"year", "year", "", "a|yr|yrs|years|annum", 31536000,
         1},  // NIST SP 811 "year (365 d)": the 8760 h of running costs
        {"ms", "ms", "ms", "millisecond|milliseconds", 1, 1000},
    };
};

template <>
struct UnitTable<Velocity> {
    static constexpr const char* type = "Velocity";
    static constexpr const char* name = "velocity";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"m/s", "ms", "m/s", "m s-1|m/sec|mps"},
        {"mm/s", "mms", "mm/s", "mm s-1|mm/sec", 1, 1000},
        {"km/h", "kmh", "km/h", "km h-1|kph|km/hr", 1000, 3600},
        {"ft/s", "fts", "[ft_i]/s", "fps|ft/sec|ft s-1", 3048, 10000},
        {"ft/min", "ftmin", "[ft_i]/min", "fpm", 3048, 600000},
        {"in/s", "ins", "[in_i]/s", "ips|in/sec", 254, 10000},
        {"mm/year", "mmyear", "", "mm/a|mm/yr|mm per year", 1, 31536000000},  // corrosion; the year of 365 d
        {"thou/year", "thouyear", "", "mpy|mil/year|mils/year|mil/yr", 254, 315360000000000},
    };
};

template <>
struct UnitTable<Acceleration> {
    static constexpr const char* type = "Acceleration";
    static constexpr const char* name = "acceleration";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"m/s2", "ms2", "m/s2", "m/s²|m/s^2|m s-2"},
        {"mm/s2", "mms2", "mm/s2", "mm/s²|mm/s^2", 1, 1000},
        {"gn", "gn", "[g]", "g|standard gravity", 980665, 100000},
        {"ft/s2", "fts2", "[ft_i]/s2", "ft/s²|ft/s^2", 3048, 10000},
    };
};

template <>
struct UnitTable<Mass> {
    static constexpr const char* type = "Mass";
    static constexpr const char* name = "mass";
    static constexpr const char* hint = "say which ton: t (1000 kg), US ton or imp ton";
    static constexpr UnitInfo units[] = {
        {"kg", "kg", "kg", "kilogram|kilograms|kilo|kilos"},
        {"g", "g", "g", "gram|grams|gramme|grammes", 1, 1000},
        {"t", "t", "t", "tonne|tonnes|metric ton|metric tons|metric tonne", 1000, 1},
        {"lb", "lb", "[lb_av]", "lbs|lbm|pound|pounds", 45359237, 100000000},
        {"US ton", "uston", "[ston_av]", "short ton|short tons|US tons", 90718474, 100000},
        {"imp ton", "impton", "[lton_av]", "long ton|long tons|UK ton", 10160469088, 10000000},
    };
};

template <>
struct UnitTable<Force> {
    static constexpr const char* type = "Force";
    static constexpr const char* name = "force";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"N", "N", "N", "newton|newtons"},
        {"kN", "kN", "kN", "kilonewton|kilonewtons", 1000, 1},
        {"daN", "daN", "daN", "", 10, 1},
        {"lbf", "lbf", "[lbf_av]", "pound-force|pounds-force|lb force", 44482216152605, 1e13},
        {"kgf", "kgf", "kgf", "kp|kilopond|kg force", 980665, 100000},
    };
};

template <>
struct UnitTable<Stiffness> {
    static constexpr const char* type = "Stiffness";
    static constexpr const char* name = "stiffness";
    static constexpr const char* hint = "";
    static constexpr UnitInfo units[] = {
        {"N/m", "Nm1", "N/m", "N m-1"},
        {"N/mm", "Nmm1", "N/mm", "N mm-1", 1000, 1},
        {"kN/mm", "kNmm1", "kN/mm", "kN mm-1", 1000000, 1},
        {"lbf/in", "lbfin1", "[lbf_av]/[in_i]", "lb/in", 44482216152605, 254000000000},
    };
};

using Angle = bu::quantity<si::plane_angle>;

template <>
struct UnitTable<Angle> {
    static constexpr const char* type = "Angle";
    static constexpr const char* name = "angle";
    static constexpr const char* hint = "write deg or rad";
    static constexpr UnitInfo units[] = {
        {"deg", "deg", "deg", "°|degree|degrees", 0.017453292519943295769, 1},  // pi/180, nearest double
        {"rad", "rad", "rad", "radian|radians"},
    };
};

/// Moment of inertia of a mass, m k^2.
using MomentOfInertia = decltype(Mass() * Area());

template <>
struct UnitTable<MomentOfInertia> {
    static constexpr const char* type = "MomentOfInertia";
    static constexpr const char* name = "moment of inertia";
    static constexpr const char* hint = "a GD2 in kg m2 is four times the moment of inertia; in kgf m2 likewise";
    static constexpr UnitInfo units[] = {
        {"kg m2", "kgm2", "kg.m2", "kg·m2|kg m²|kg·m²|kg m^2|kg*m2"},
        {"lb ft2", "lbft2", "[lb_av].[sft_i]", "lb ft²|lb·ft2|lb-ft2|lbm ft2|WK2 lb ft2", 6584392202157,
         156250000000000},
        {"lb in2", "lbin2", "[lb_av].[sin_i]", "lb in²|lb·in2|lb-in2|lbm in2", 731599133573, 2500000000000000},
    };
};

/// A mass times its distance from the axis.
using Unbalance = decltype(Mass() * Length());

template <>
struct UnitTable<Unbalance> {
    static constexpr const char* type = "Unbalance";
    static constexpr const char* name = "unbalance";
    static constexpr const char* hint = "a mass times its radius: g mm, oz in";
    static constexpr UnitInfo units[] = {
        {"g mm", "gmm", "g.mm", "g·mm|g*mm|gmm", 1, 1000000},
        {"kg mm", "kgmm", "kg.mm", "kg·mm|kg*mm", 1, 1000},
        {"kg m", "kgm", "kg.m", "kg·m|kg*m"},
        {"oz in", "ozin", "[oz_av].[in_i]", "oz·in|oz-in|oz*in|ounce inch|ounce inches", 5760623099, 8000000000000},
    };
};

}  // namespace cutwater

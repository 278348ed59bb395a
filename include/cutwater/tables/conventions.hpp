// Numbers without a dimension, and numbers that carry a convention instead of one.
#pragma once

#include <cutwater/unit.hpp>

namespace cutwater {

template <>
struct UnitTable<Ratio> {
    static constexpr const char* type = "Ratio";
    static constexpr const char* name = "plain number";
    static constexpr const char* hint = "a number without unit, or with %";
    static constexpr UnitInfo units[] = {
        {"", "", "1", "(-)"},
        {"%", "percent", "%", "percent|per cent|pct", 1, 100},
    };
};

template <>
struct UnitTable<Fraction> {
    static constexpr const char* type = "Fraction";
    static constexpr const char* name = "fraction";
    static constexpr const char* hint = "a fraction of one (0.72), or with % (72 %)";
    static constexpr UnitInfo units[] = {
        {"", "", "1", "(-)"},
        {"%", "percent", "%", "percent|per cent|pct", 1, 100},
        {"ppm", "ppm", "[ppm]", "1e-6", 1, 1000000},
    };
};

template <>
struct UnitTable<Count> {
    static constexpr const char* type = "Count";
    static constexpr const char* name = "count";
    static constexpr const char* hint = "a whole number without unit";
    static constexpr UnitInfo units[] = {{"", "", "1", "(-)|off|pcs"}};
};

template <>
struct UnitTable<Money> {
    static constexpr const char* type = "Money";
    static constexpr const char* name = "money";
    static constexpr const char* hint = "the amount alone, everywhere in one currency";
    static constexpr UnitInfo units[] = {{"", "", "", ""}};
};

template <>
struct UnitTable<SpecificSpeed> {
    static constexpr const char* type = "SpecificSpeed";
    static constexpr const char* name = "specific speed (1/min, m3/s, m)";
    static constexpr const char* hint =
        "the number alone; convert from US units or to the type number by the functions for it";
    static constexpr UnitInfo units[] = {{"", "", "", "1/min|rpm|min-1"}};
};

template <>
struct UnitTable<SpecificSpeedUs> {
    static constexpr const char* type = "SpecificSpeedUs";
    static constexpr const char* name = "specific speed (1/min, US gal/min, ft)";
    static constexpr const char* hint =
        "the number alone; convert to metric units or to the type number by the functions for it";
    static constexpr UnitInfo units[] = {{"", "", "", "1/min|rpm|min-1"}};
};

template <>
struct UnitTable<SayboltSeconds> {
    static constexpr const char* type = "SayboltSeconds";
    static constexpr const char* name = "Saybolt Universal viscosity";
    static constexpr const char* hint = "mm2/s is a viscosity, and these are seconds";
    static constexpr const char* mistaken = "KinematicViscosity";
    static constexpr UnitInfo units[] = {{"SUS", "SUS", "", "SSU|SUV|Saybolt Universal seconds"}};
};

template <>
struct UnitTable<ValveCoefficient> {
    static constexpr const char* type = "ValveCoefficient";
    static constexpr const char* name = "valve flow coefficient";
    static constexpr const char* hint = "write 40 Kv, or 46 Cv (US gal/min at 1 psi)";
    static constexpr UnitInfo units[] = {
        {"Kv", "Kv", "", "KV"},
        // Kv/Cv = 0.865, the figure of IEC 60534 (N1 for Cv), from memory; the units alone make it 0.86498 for equal
        // density
        {"Cv", "Cv", "", "CV|cv", 865, 1000},
    };
};

}  // namespace cutwater

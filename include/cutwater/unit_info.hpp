// What a unit and a quantity are as data, without their types.
#pragma once

#include <cstddef>

namespace cutwater {

/// SI value = (x + offset) * numerator / denominator. Two exact integers keep factors exact to their definition's last
/// bit.
struct UnitInfo {
    const char* symbol;   // as printed, UTF-8
    const char* suffix;   // as the end of a parameter's name; "" for a number without unit
    const char* ucum;     // Unified Code for Units of Measure; "" where it has none
    const char* aliases;  // the trade's other spellings, parted by '|'
    double numerator = 1;
    double denominator = 1;
    double offset = 0;

    // A zero offset is not added: most units have none, and x + 0 is work that a compiler may not leave out.
    constexpr double to_si(double x) const { return (offset == 0 ? x : x + offset) * numerator / denominator; }
    constexpr double from_si(double v) const
    {
        const double x = v * denominator / numerator;
        return offset == 0 ? x : x - offset;
    }
};

/// A quantity's name and its closed list of units; the first unit is the one to suggest.
struct QuantityInfo {
    const char* name;
    const char* type;  // its C++ name
    const UnitInfo* units;
    std::size_t count;
    const char* hint;      // what to say when its unit was not understood; "" for nothing
    const char* mistaken;  // C++ name of the quantity that the hint speaks of; "" for none

    constexpr const UnitInfo* begin() const { return units; }
    constexpr const UnitInfo* end() const { return units + count; }
};

}  // namespace cutwater

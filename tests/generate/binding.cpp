// Compiled once for each fault, named by a macro: a record that does not fit its formula must not compile.
#include <cutwater/unit_table.hpp>

#include "catalogue/erased.hpp"
#include "catalogue/record.hpp"

namespace cutwater {

inline Head head_of(AbsolutePressure high, AbsolutePressure low, Density density)
{
    return (high - low) / (density * standard_gravity);
}

inline constexpr auto head_of_record = record<&head_of>(
    {.name = "head_of",
     .meaning = "Head between two absolute pressures",
     .inputs =
         {
#if defined(WRONG_QUANTITY)
             input("high", "p_2", units::metre, above(0), "the higher pressure"),
#elif defined(GAUGE_FOR_ABSOLUTE)
             input("high", "p_2", units::barg, above(0), "the higher pressure"),
#elif defined(WRONG_UNIT)
             input("high", "p_2", units::bar, above(0), "the higher pressure"),  // of a difference
#elif defined(UNKNOWN_UNIT)
        input("high", "p_2", unit<AbsolutePressure>("bar"), above(0), "the higher pressure"),
#else
        input("high", "p_2", units::bara, above(0), "the higher pressure"),
#endif
#if defined(WRONG_ORDER)
             input("density", "rho", units::kgm3, above(0), "density"),
             input("low", "p_1", units::bara, above(0), "the lower pressure")
#elif defined(TOO_FEW)
             input("low", "p_1", units::bara, above(0), "the lower pressure")
#else
             input("low", "p_1", units::bara, above(0), "the lower pressure"),
             input("density", "rho", units::kgm3, above(0), "density")
#endif
#if defined(TOO_MANY)
                 ,
             input("more", "m", units::metre, any, "an input that the formula does not have")
#endif
         },
#if defined(WRONG_RESULT)
     .results = {output("head", "H", units::bara, "head")},
#else
     .results = {output("head", "H", units::metre, "head")},
#endif
     .equation = "H = (p_2 - p_1)/(rho g)",
     .source = "common practice",
     .example = {"2, 1, 1000", "10.197", "hand calculation"}},
#if defined(BLAMED_INPUT)
    relation<"highest", "low">(
#elif defined(RELATED_INPUT)
    relation<"high", "lowest">(
#else
    relation<"high", "low">(
#endif
#if defined(RELATED_QUANTITY)
        [](AbsolutePressure high, Density low) { return high.above_zero().value() > low.value(); },
#else
        [](AbsolutePressure high, AbsolutePressure low) { return high > low; },
#endif
        "the higher pressure must be higher"));

// As a family's file lists it.
constexpr const FunctionInfo* listed = entry<head_of_record>;
static_assert(listed != nullptr);

}  // namespace cutwater

// Quantities as text, in and out. Nothing here throws, allocates, or asks a locale.
#pragma once

#include <cutwater/base.h>
#include <cutwater/unit.hpp>

#include <cstddef>
#include <string_view>

namespace cutwater {

/// Reads a number with an optional unit of the expected quantity. A bare number is in `bare`, and so is the value that
/// comes back. On refusal the value is NaN and `refusal`, unless null, says why; which argument it was is left to the
/// caller.
enum class UnitIs { given, asked_for };  // asked for: the caller chose `bare` and may be told to choose another
cutwater_status read_quantity(const QuantityInfo& expected, const UnitInfo& bare, std::string_view text, double& value,
                              cutwater_refusal* refusal, UnitIs unit = UnitIs::given) noexcept;

/// The same for any quantity that has the unit named, which is then the bare one. The refusal blames argument 0 (value)
/// or 1 (unit).
cutwater_status read_in_unit(std::string_view unit, std::string_view text, double& value,
                             cutwater_refusal* refusal) noexcept;

/// A value from one unit into another of the same quantity. The refusal blames argument 0 (value), 1 (from) or 2 (to).
cutwater_status convert(double value, std::string_view from, std::string_view to, double& out,
                        cutwater_refusal* refusal) noexcept;

/// The same for two units that are known to belong together: within one rounding of the exact factor.
double rescale(double value, const UnitInfo& from, const UnitInfo& to) noexcept;

}  // namespace cutwater

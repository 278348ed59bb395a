// The sentences that refuse a text or a unit.
#pragma once

#include "spelling.hpp"

#include <cutwater/base.h>
#include <cutwater/unit_table.hpp>

#include <string_view>

namespace cutwater {

class Message;

/// Sets every field; the message is the caller's to write.
void clear_refusal(cutwater_refusal* refusal, cutwater_status status, std::string_view unit) noexcept;

/// "in m3/h, l/s, US gpm, ...", the units of a quantity.
void list_units(Message& message, const QuantityInfo& quantity) noexcept;

/// Quantities that know the spelling: exact spellings first, and alone if there are any.
struct Owners {
    explicit Owners(const Spelling& spelling) noexcept;
    static constexpr int most = 4;
    const QuantityInfo* quantity[most] = {};
    const UnitInfo* unit[most] = {};
    int count = 0;
    bool has(const QuantityInfo& which) const noexcept;
};

/// " (a relative density has no unit: use …)", where the quantity's table has a hint.
void add_hint(Message& message, const QuantityInfo& expected) noexcept;

/// Why a unit that others know does not fit the quantity, and what to do. The unit is named by the caller's words;
/// asked is the unit that he named for the answer, null where an input has its own.
void explain_wrong_quantity(Message& message, std::string_view given, const Owners& owners,
                            const QuantityInfo& expected, const UnitInfo* asked) noexcept;

}  // namespace cutwater

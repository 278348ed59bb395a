#include "text.hpp"

#include "message.hpp"
#include "number.hpp"
#include "spelling.hpp"
#include "unit_refusal.hpp"

#include <cmath>
#include <limits>

namespace cutwater {

namespace {

void say_what_is_needed(Message& message, const QuantityInfo& expected) noexcept
{
    message.add("; {} is needed, ", expected.name);
    list_units(message, expected);
}

/// A digit behind a blank: a second number, not a unit.
bool holds_second_number(const Characters& text, std::size_t from) noexcept
{
    for (std::size_t i = from; i < text.end(); ++i) {
        const bool digit = text[i] >= '0' && text[i] <= '9';
        if (digit && (i == from || is_blank(text[i - 1]))) return true;
    }
    return false;
}

bool could_begin_a_unit(char32_t c) noexcept
{
    return (c | 0x20) >= 'a' ? (c | 0x20) <= 'z' || c >= 0x80
                             : c == '%' || c == '/' || c == '"' || (c >= '0' && c <= '9');
}

/// The refusal of a text whose number was read and whose unit was not found in the quantity.
cutwater_status refuse_unit(const QuantityInfo& expected, const UnitInfo& bare, std::string_view whole,
                            const Characters& text, std::size_t at, const Spelling& spelling, UnitIs unit,
                            cutwater_refusal* refusal) noexcept
{
    const Owners owners(spelling);
    const Quoted given(spelling.text());
    const Quoted shown(whole);
    cutwater_status status = CUTWATER_UNKNOWN_UNIT;
    if (owners.count)
        status = CUTWATER_WRONG_QUANTITY;
    else if (holds_second_number(text, at) || !could_begin_a_unit(text[at]))
        status = CUTWATER_BAD_TEXT;

    clear_refusal(refusal, status, bare.symbol);
    if (!refusal) return status;
    Message message(refusal->message, sizeof refusal->message);
    message.add("'{}', character {}: ", shown.view(), at + 1);
    if (owners.count) {
        explain_wrong_quantity(message, given.view(), owners, expected, unit == UnitIs::asked_for ? &bare : nullptr);
    } else if (status == CUTWATER_BAD_TEXT && holds_second_number(text, at)) {
        message.add("'{}' holds a second number (digits are grouped only by threes)", given.view());
        say_what_is_needed(message, expected);
    } else if (const UnitInfo* meant = find_regardless_of_case(expected, spelling)) {
        message.add("'{}' could be milli or mega: if {} is meant, write it so", given.view(), meant->symbol);
    } else {
        message.add("'{}' is no unit that is known here", given.view());
        say_what_is_needed(message, expected);
        add_hint(message, expected);
    }
    return status;
}

}  // namespace

cutwater_status read_quantity(const QuantityInfo& expected, const UnitInfo& bare, std::string_view text, double& value,
                              cutwater_refusal* refusal, UnitIs unit) noexcept
{
    value = std::numeric_limits<double>::quiet_NaN();
    const auto refuse = [&](cutwater_status status, std::size_t at, std::string_view trouble) {
        clear_refusal(refusal, status, bare.symbol);
        if (refusal) {
            Message message(refusal->message, sizeof refusal->message);
            message.add("'{}', character {}: {}", Quoted(text).view(), at + 1, trouble);
            say_what_is_needed(message, expected);
        }
        return status;
    };

    if (text.size() > Characters::most)
        return refuse(CUTWATER_BAD_TEXT, Characters::most, "the text is too long for a number with a unit");
    const Characters characters(text);
    if (characters.bad() != Characters::npos)
        return refuse(CUTWATER_BAD_TEXT, characters.bad(), "a character that is not text (UTF-8)");
    if (characters.begin() == characters.end()) return refuse(CUTWATER_BAD_TEXT, 0, "the text is empty");

    const ScannedNumber number = scan_number(characters);
    if (number.status != CUTWATER_OK) return refuse(number.status, number.rest, number.trouble);
    if (number.rest == characters.end()) {
        value = number.value;
        return CUTWATER_OK;
    }

    const Spelling spelling(characters.from(number.rest));
    const FoundUnit found = find_unit(expected, spelling);
    if (!found) return refuse_unit(expected, bare, text, characters, number.rest, spelling, unit, refusal);
    const double converted = rescale(number.value, *found.unit, bare);
    if (!std::isfinite(converted))
        return refuse(CUTWATER_OVERFLOW, characters.begin(), "the number is too large in the unit needed");
    value = converted;
    return CUTWATER_OK;
}

}  // namespace cutwater

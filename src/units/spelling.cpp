#include "spelling.hpp"

#include "utf8.hpp"

namespace cutwater {

namespace {

enum class Match { none, caseless, exact };

constexpr char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

/// What a character beyond ASCII stands for; null for one that no unit is written with.
constexpr const char* stands_for(char32_t c)
{
    switch (c) {
    case 0x00A0: case 0x2007: case 0x2009: case 0x202F:                           // blanks
    case 0x00B7: case 0x00D7: case 0x2022: case 0x2219: case 0x22C5: return "";  // multiplication
    case 0x00B9: return "1";
    case 0x00B2: case 0x2082: return "2";
    case 0x00B3: return "3";
    case 0x2070: return "0";
    case 0x2074: return "4";
    case 0x2075: return "5";
    case 0x2076: return "6";
    case 0x207B: case 0x2212: case 0x2010: case 0x2011: case 0x2013: return "-";
    case 0x2044: case 0x2215: return "/";
    case 0x00B5: case 0x03BC: return "u";
    case 0x00B0: case 0x00BA: case 0x02DA: return "deg";
    case 0x2103: return "degC";
    case 0x2109: return "degF";
    case 0x212A: return "K";
    case 0x0394: case 0x2206: return "delta";
    case 0x03A9: case 0x2126: return "ohm";
    case 0x2113: return "l";
    case 0x2033: case 0x201D: return "\"";
    case 0xFF05: return "%";
    default: return nullptr;
    }
}

constexpr bool is_dropped(char c)
{
    return c == ' ' || c == '.' || c == '*' || c == '^' || c == '(' || c == ')' || (c >= '\t' && c <= '\r');
}

/// Does the alias, folded as it is read, say the same as the folded text? Most aliases fail at their first letter.
Match compare(std::string_view alias, std::string_view folded) noexcept
{
    const char first = alias[0];
    if (static_cast<unsigned char>(first) < 0x80 && !is_dropped(first) && lower(first) != lower(folded[0])) return Match::none;
    Match match = Match::exact;
    std::size_t k = 0;
    const auto take = [&](char c) {
        if (k == folded.size()) return false;
        const char given = folded[k++];
        if (given == c) return true;
        match = Match::caseless;
        return lower(given) == lower(c);
    };
    for (std::size_t i = 0; i < alias.size();) {
        const CodePoint c = decode(alias, i);
        if (c.bytes == 0) return Match::none;
        i += c.bytes;
        if (c.value < 0x80) {
            const char plain = static_cast<char>(c.value);
            if (!is_dropped(plain) && !take(plain)) return Match::none;
            continue;
        }
        const char* piece = stands_for(c.value);
        if (!piece) return Match::none;
        for (; *piece; ++piece)
            if (!take(*piece)) return Match::none;
    }
    return k == folded.size() ? match : Match::none;
}

/// Calls visit(spelling) for the symbol and every alias until it returns true.
template <class Visit>
bool any_spelling(const UnitInfo& unit, Visit visit)
{
    if (*unit.symbol && visit(std::string_view(unit.symbol))) return true;
    for (const char* begin = unit.aliases; *begin;) {
        const char* end = begin;
        while (*end && *end != '|') ++end;
        if (visit(std::string_view(begin, static_cast<std::size_t>(end - begin)))) return true;
        begin = *end ? end + 1 : end;
    }
    return false;
}

bool is_spelled(const QuantityInfo& quantity, std::string_view folded) noexcept
{
    for (const UnitInfo& unit : quantity)
        if (any_spelling(unit, [&](std::string_view alias) { return compare(alias, folded) != Match::none; })) return true;
    return false;
}

/// Would taking the text for the alias turn milli into mega, or mega into milli?
bool swaps_prefix(const QuantityInfo& quantity, const UnitInfo& unit, std::string_view alias, std::string_view folded) noexcept
{
    if (alias[0] == 'M' && folded[0] == 'm') return true;
    const bool milli = alias[0] == 'm' || unit.symbol[0] == 'm';
    return milli && folded[0] == 'M' && is_spelled(quantity, folded.substr(1));
}

}  // namespace

bool is_blank(char32_t c) noexcept
{
    return c == ' ' || (c >= '\t' && c <= '\r') || c == 0x00A0 || c == 0x2007 || c == 0x2009 || c == 0x202F;
}

Spelling::Spelling(std::string_view text) noexcept : text_(text)
{
    int depth = 0;
    char before = ' ';
    for (std::size_t i = 0; i < text.size() && valid_;) {
        const CodePoint c = decode(text, i);
        if (c.bytes == 0) {
            valid_ = false;
            return;
        }
        i += c.bytes;
        if (c.value >= 0x80) {
            const char* piece = stands_for(c.value);
            if (piece)
                append(piece);
            else
                valid_ = false;
            before = 'x';
            continue;
        }
        const char plain = static_cast<char>(c.value);
        if (plain == '(') ++depth;
        if (plain == ')' && --depth < 0) valid_ = false;
        // a dot or a power sign stands behind something, and one at a time
        if ((plain == '.' || plain == '*' || plain == '^') && (length_ == 0 || before == '.' || before == '*' || before == '^'))
            valid_ = false;
        if (!is_dropped(plain)) append(std::string_view(&plain, 1));
        before = plain;
    }
    if (depth != 0 || length_ == 0) valid_ = false;
}

void Spelling::append(std::string_view piece) noexcept
{
    if (length_ + piece.size() > sizeof folded_) {
        valid_ = false;
        return;
    }
    for (const char c : piece) folded_[length_++] = c;
}

FoundUnit find_unit(const QuantityInfo& quantity, const Spelling& spelling) noexcept
{
    if (!spelling.valid()) return {};
    const std::string_view folded = spelling.folded();
    const UnitInfo* caseless = nullptr;
    bool several = false;
    for (const UnitInfo& unit : quantity) {
        // a suffix leaves its signs out ("m3h"), so that a blank in it would read as a product: only as it stands
        if (*unit.suffix && spelling.text() == unit.suffix) return {&unit, true};
        const bool exact = any_spelling(unit, [&](std::string_view alias) {
            const Match match = compare(alias, folded);
            if (match == Match::caseless && !swaps_prefix(quantity, unit, alias, folded)) {
                several = several || (caseless && caseless != &unit);
                caseless = &unit;
            }
            return match == Match::exact;
        });
        if (exact) return {&unit, true};
    }
    if (several) return {};
    return {caseless, false};
}

const UnitInfo* find_regardless_of_case(const QuantityInfo& quantity, const Spelling& spelling) noexcept
{
    if (!spelling.valid()) return nullptr;
    for (const UnitInfo& unit : quantity)
        if (any_spelling(unit, [&](std::string_view alias) { return compare(alias, spelling.folded()) != Match::none; })) return &unit;
    return nullptr;
}

}  // namespace cutwater

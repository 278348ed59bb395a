#include "spelling.hpp"

#include "utf8.hpp"

#include <cutwater/unit_table.hpp>

namespace cutwater {

namespace {

enum class Match { none, caseless, exact };

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
constexpr char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

/// What a character beyond ASCII stands for; null for one that no unit is written with.
constexpr const char* stands_for(char32_t c)
{
    switch (c) {
    case 0x00A0:
    case 0x2007:
    case 0x2009:
    case 0x202F: return " ";
    case 0x00B7:
    case 0x00D7:
    case 0x2022:
    case 0x2219:
    case 0x22C5: return "*";
    case 0x00B9: return "1";
    case 0x00B2:
    case 0x2082: return "2";
    case 0x00B3: return "3";
    case 0x2070: return "0";
    case 0x2074: return "4";
    case 0x2075: return "5";
    case 0x2076: return "6";
    case 0x207B:
    case 0x2212:
    case 0x2010:
    case 0x2011:
    case 0x2013: return "-";
    case 0x2044:
    case 0x2215: return "/";
    case 0x00B5:
    case 0x03BC: return "u";
    case 0x00B0:
    case 0x00BA:
    case 0x02DA: return "deg";
    case 0x2103: return "degC";
    case 0x2109: return "degF";
    case 0x212A: return "K";
    case 0x0394:
    case 0x2206: return "delta";
    case 0x03A9:
    case 0x2126: return "ohm";
    case 0x2113: return "l";
    case 0x2033:
    case 0x201D: return "\"";
    case 0xFF05: return "%";
    default: return nullptr;
    }
}

/// Writes a unit's text folded, sign by sign, and sees that the signs stand where they can.
class Fold {
public:
    explicit Fold(char (&to)[Spelling::most]) noexcept : to_(to) {}

    bool read(std::string_view text) noexcept
    {
        for (std::size_t i = 0; i < text.size();) {
            const CodePoint c = decode(text, i);
            if (c.bytes == 0) return false;
            i += c.bytes;
            if (c.value < 0x80) {
                if (!put(static_cast<char>(c.value))) return false;
                continue;
            }
            const char* piece = stands_for(c.value);
            if (!piece) return false;
            const bool raised = is_digit(*piece) || c.value == 0x207B;
            if (raised && before_ == '^') return false;  // a power sign is written or its digits are raised, not both
            for (; *piece; ++piece)
                if (!put(*piece)) return false;
        }
        return depth_ == 0 && length_ > 0 && before_ != '*' && before_ != '^';
    }

    std::size_t length() const noexcept { return length_; }

private:
    bool put(char c) noexcept
    {
        const bool behind_sign = before_ == '*' || before_ == '^' || before_ == '.' || before_ == '-' || before_ == 0;
        switch (c) {
        case ' ':
        case '\t':
        case '\n':
        case '\v':
        case '\f':
        case '\r': gap_ = true; return true;  // before_ stays: a blank parts no sign from what it belongs to
        case '.':
        case '*':
            // one at a time, between two things; a point may also end an abbreviation
            if (behind_sign || before_ == '/' || before_ == '(') return false;
            gap_ = true;
            break;
        case '^':
            if (behind_sign || before_ == '/' || before_ == '(') return false;
            break;
        case '(':
            ++depth_;
            if (before_ == '^') return true;  // s^(-1): a power still must follow
            gap_ = true;
            break;
        case ')':
            if (--depth_ < 0 || before_ == '(' || before_ == '*' || before_ == '^') return false;
            gap_ = true;
            break;
        default:
            if (before_ == '^' && c != '-' && !is_digit(c)) return false;
            if (c == '/' && before_ == '*') return false;
            if (!append(c)) return false;
            if (before_ == '^' && c == '-') return true;  // its digits still must follow
        }
        before_ = c;
        return true;
    }

    bool append(char c) noexcept
    {
        if (length_ + 2 > Spelling::most) return false;
        if (gap_ && length_ > 0 && parts(c)) to_[length_++] = Spelling::gap;
        gap_ = false;
        to_[length_++] = c;
        return true;
    }

    /// Nothing is parted beside a stroke or hyphen, behind deg or before a power; U.S. is US. "s- 1" is no power.
    bool parts(char c) const noexcept
    {
        const std::string_view done(to_, length_);
        const char last = done.back();
        if (last == '-') return is_digit(c);
        if (c == '/' || c == '-' || last == '/' || before_ == '^') return false;
        if (done.ends_with("deg") && before_ != '*') return false;
        const bool begins = length_ == 1 || to_[length_ - 2] == '/' || to_[length_ - 2] == Spelling::gap;
        return !(before_ == '.' && last == 'U' && begins && (c == 'S' || c == 'K'));
    }

    char (&to_)[Spelling::most];
    std::size_t length_ = 0;
    int depth_ = 0;
    bool gap_ = false;
    char before_ = 0;
};

/// Does the alias say the same as the folded text? Its gaps may be left out of the text, but the text has none that it
/// has not: "Nm" is N m, "m m" is not mm. Most aliases fail at their first letter.
Match compare(std::string_view alias, std::string_view folded) noexcept
{
    if (folded.empty()) return Match::none;
    if (static_cast<unsigned char>(alias[0]) < 0x80 && alias[0] != '(' && lower(alias[0]) != lower(folded[0]))
        return Match::none;
    char buffer[Spelling::most];
    Fold fold(buffer);
    if (!fold.read(alias)) return Match::none;
    Match match = Match::exact;
    std::size_t k = 0;
    for (const char c : std::string_view(buffer, fold.length())) {
        const char given = k < folded.size() ? folded[k] : '\0';
        if (given == c)
            ++k;
        else if (c == Spelling::gap)
            continue;
        else if (given != '\0' && lower(given) == lower(c))
            match = Match::caseless, ++k;
        else
            return Match::none;
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
        if (any_spelling(unit, [&](std::string_view alias) { return compare(alias, folded) != Match::none; }))
            return true;
    return false;
}

/// Would taking the text for the alias turn milli into mega, or mega into milli?
bool swaps_prefix(const QuantityInfo& quantity, const UnitInfo& unit, std::string_view alias,
                  std::string_view folded) noexcept
{
    if (alias[0] == 'M' && folded[0] == 'm') return true;
    const bool milli = alias[0] == 'm' || unit.symbol[0] == 'm';
    return milli && folded[0] == 'M' && is_spelled(quantity, folded.substr(1));
}

/// The unit of exactly that spelling, and of the others the only one that differs in case alone.
FoundUnit look_up(const QuantityInfo& quantity, const Spelling& spelling) noexcept
{
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
    return {several ? nullptr : caseless, false};
}

/// Is it some quantity's unit as it stands? Then its letters mean that, and not another's in the wrong case: A is no
/// year.
bool is_exact_anywhere(const Spelling& spelling) noexcept
{
    const std::string_view folded = spelling.folded();
    const auto says_it = [&](std::string_view alias) {
        const bool may = alias[0] == folded[0] || alias[0] == '(' || static_cast<unsigned char>(alias[0]) >= 0x80;
        return may && compare(alias, folded) == Match::exact;
    };
    for (const QuantityInfo* candidate : all_quantities())
        for (const UnitInfo& unit : *candidate)
            if ((*unit.suffix && spelling.text() == unit.suffix) || any_spelling(unit, says_it)) return true;
    return false;
}

}  // namespace

bool is_blank(char32_t c) noexcept
{
    return c == ' ' || (c >= '\t' && c <= '\r') || c == 0x00A0 || c == 0x2007 || c == 0x2009 || c == 0x202F;
}

Spelling::Spelling(std::string_view text) noexcept : text_(text)
{
    Fold fold(folded_);
    valid_ = fold.read(text);
    length_ = fold.length();
}

FoundUnit find_unit(const QuantityInfo& quantity, const Spelling& spelling) noexcept
{
    if (!spelling.valid()) return {};
    const FoundUnit found = look_up(quantity, spelling);
    return found && !found.exact && is_exact_anywhere(spelling) ? FoundUnit{} : found;
}

const UnitInfo* find_regardless_of_case(const QuantityInfo& quantity, const Spelling& spelling) noexcept
{
    if (!spelling.valid()) return nullptr;
    for (const UnitInfo& unit : quantity)
        if (any_spelling(unit,
                         [&](std::string_view alias) { return compare(alias, spelling.folded()) != Match::none; }))
            return &unit;
    return nullptr;
}

}  // namespace cutwater

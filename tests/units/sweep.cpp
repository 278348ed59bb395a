// Every spelling of every unit as people and programs bend it: letter case, blanks, signs, exponents, cut at every
// byte, with a stray character at every place. A text is refused, or it comes to what another reader makes of it. That
// reader works otherwise: it takes the text apart by regular expressions into factors with powers, and UDUNITS-2 says
// what they come to.
#include "units/definitions.hpp"
#include "units/text.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <map>
#include <optional>
#include <regex>
#include <set>
#include <string>
#include <tuple>
#include <vector>

using namespace cutwater;
using namespace cutwater::tests;

namespace {

std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    for (std::size_t at = 0; (at = text.find(from, at)) != text.npos; at += to.size())
        text.replace(at, from.size(), to);
    return text;
}

/// The signs beyond ASCII as ASCII; nothing for a text that still holds others.
std::optional<std::string> plain(std::string text)
{
    static const std::pair<const char*, const char*> signs[] = {
        {"\u00A0", " "},  {"\u2009", " "}, {"\u202F", " "},    {"\u00B7", "*"}, {"\u00B2", "^2"}, {"\u00B3", "^3"},
        {"\u2075", "^5"}, {"\u00B5", "u"}, {"\u00B0", "deg "}, {"\u2212", "-"}, {"\u2013", "-"}};
    for (const auto& [from, to] : signs) text = replaced(text, from, to);
    for (const unsigned char c : text)
        if (c < 0x20 || c >= 0x7F) return std::nullopt;
    return text;
}

struct Number {
    double value;
    std::string rest;
};

/// The number at the head, as ISO 80000-1 and common practice write one; a decimal comma where it cannot group digits.
std::optional<Number> read_number(const std::string& text)
{
    static const std::regex form(
        R"(^ *([+-]?)(\d{1,3}(?: \d{3})+|\d+)(?:([.,])(\d*))?(?:[eE]([+-]?\d+))?(?![.,\d]) *(.*?) *$)");
    std::smatch m;
    if (!std::regex_match(text, m, form)) return std::nullopt;
    const std::string whole = m[2], mark = m[3], part = m[4];
    if (mark == "," && (part.empty() || (part.size() == 3 && whole.size() <= 3 && whole[0] != '0')))
        return std::nullopt;
    const std::string digits = m[1].str() + replaced(whole, " ", "") + "." + part + "0e" +
                               (m[5].length() ? m[5].str() : "0");
    return Number{std::stod(digits), m[6]};
}

/// A unit's factors in the order written: each a word with its power, below the stroke with the power turned round.
/// "m3/h" is m 3, h -1; "m*m" is m 1, m 1; nothing for what is built otherwise.
using Factors = std::vector<std::pair<std::string, int>>;

/// What may stand within a word, taken out of it.
std::string tidied(std::string text)
{
    text = std::regex_replace(text, std::regex(R"(\bU\.([SK])\b\.?)"), "U$1 ");            // U.S.
    text = std::regex_replace(text, std::regex(R"(deg[ .]+)", std::regex::icase), "deg");  // deg C
    return std::regex_replace(text, std::regex(R"(\^ *(\(?)(-?\d))"), "^$1$2");
}

std::optional<Factors> factors_of(const std::string& text)
{
    if (std::count(text.begin(), text.end(), '(') != std::count(text.begin(), text.end(), ')')) return std::nullopt;
    static const std::regex token(R"( *(\^?\((?!\^|\))|\)|/|[.*]|[A-Za-z%"]+|\^?-?\d+|[-+]))");
    Factors factors;
    std::vector<int> directions{1};  // of every open bracket
    int direction = 1;
    bool behind_product = true;  // at the beginning, too: no product sign may stand there
    std::string rest = text;
    std::smatch m;
    while (!rest.empty() && rest.find_first_not_of(' ') != rest.npos) {
        if (!std::regex_search(rest, m, token, std::regex_constants::match_continuous)) return std::nullopt;
        const std::string t = m[1];
        const bool apart = m[0].str()[0] == ' ';
        rest = std::string(m.suffix());
        if (t == "(" || t == "^(") {
            directions.push_back(direction);
        } else if (t == ")") {
            if (directions.size() < 2) return std::nullopt;
            direction = directions.back();
            directions.pop_back();
        } else if (t == "/") {
            direction = -1;
        } else if (t == "." || t == "*") {
            if (behind_product) return std::nullopt;
            behind_product = true;
            if (t == "*" && rest.find_first_not_of(' ') == rest.npos) return std::nullopt;
            continue;
        } else if (t == "-" || t == "+") {
            factors.push_back({t, 1});
        } else if (std::isdigit(static_cast<unsigned char>(t.back()))) {
            const std::string digits = t[0] == '^' ? t.substr(1) : t;
            if (!factors.empty() && (!apart || t[0] == '^') && factors.back().first != "-")
                factors.back().second *= std::stoi(digits);  // its power
            else
                factors.push_back({digits, direction});
        } else {
            factors.push_back({t, direction});
        }
        behind_product = t == "/";
    }
    if (factors.empty() || directions.size() != 1) return std::nullopt;
    return factors;
}

std::string lower(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return static_cast<char>(std::tolower(static_cast<unsigned char>(c))); });
    return text;
}

Factors lower(Factors factors)
{
    for (auto& f : factors) f.first = lower(f.first);
    return factors;
}

struct Spelled {
    const QuantityInfo* quantity;
    const UnitInfo* unit;
    std::string text;  // as in the table
    std::optional<Factors> factors;
    std::string joined;
    std::set<std::size_t> joints;
};

/// The letters without what parts them ("Nm" for "N m"), and where in them something did.
std::string joined(const std::string& text, std::set<std::size_t>& joints)
{
    std::string letters;
    for (const char c : std::regex_replace(text, std::regex(R"( *([/-]) *)"), "$1")) {
        if (std::strchr(" .*()", c))
            joints.insert(letters.size());
        else if (c != '^')
            letters += c;
    }
    joints.erase(letters.size());
    joints.erase(0);
    return letters;
}

const std::vector<Spelled>& spellings()
{
    static const std::vector<Spelled> all = [] {
        std::vector<Spelled> made;
        for (const QuantityInfo* quantity : all_quantities())
            for (const UnitInfo& unit : *quantity) {
                std::vector<std::string> texts;
                if (*unit.symbol) texts.push_back(unit.symbol);
                for (std::string_view rest = unit.aliases; !rest.empty();) {
                    texts.emplace_back(rest.substr(0, rest.find('|')));
                    rest = rest.find('|') == rest.npos ? std::string_view() : rest.substr(rest.find('|') + 1);
                }
                for (const std::string& text : texts) {
                    const std::string ascii = tidied(plain(text).value());
                    Spelled s{quantity, &unit, text, factors_of(ascii), "", {}};
                    s.joined = joined(ascii, s.joints);
                    made.push_back(s);
                }
            }
        return made;
    }();
    return all;
}

/// A unit as it was typed.
struct Typed {
    explicit Typed(const std::string& unit) : factors(factors_of(tidied(unit))), letters(joined(tidied(unit), joints))
    {
    }

    std::set<std::size_t> joints;
    std::optional<Factors> factors;
    std::string letters;

    /// Typing may leave out what parts two factors; it may not part what is one.
    bool parts_no_more_than(const Spelled& s) const
    {
        return std::includes(s.joints.begin(), s.joints.end(), joints.begin(), joints.end());
    }
    bool is(const Spelled& s) const
    {
        return factors && (s.factors == factors || (s.joined == letters && parts_no_more_than(s)));
    }
    bool is_but_for_case(const Spelled& s) const
    {
        return factors && ((s.factors && lower(*s.factors) == lower(*factors)) ||
                           (lower(s.joined) == lower(letters) && parts_no_more_than(s)));
    }
};

/// Units of the quantity that the text may mean.
std::set<const UnitInfo*> meant(const QuantityInfo& quantity, const std::string& given, const std::string& unit)
{
    std::set<const UnitInfo*> found;
    for (const UnitInfo& candidate : quantity)
        if (given == candidate.suffix) found.insert(&candidate);
    const Typed typed(unit);
    bool elsewhere = false;
    for (const Spelled& s : spellings())
        if (typed.is(s))
            (s.quantity == &quantity ? static_cast<void>(found.insert(s.unit)) : static_cast<void>(elsewhere = true));
    if (!found.empty() || elsewhere) return found;
    for (const Spelled& s : spellings()) {
        if (s.quantity != &quantity || !typed.is_but_for_case(s)) continue;
        const bool m_for_M = s.text[0] == 'M' && unit[0] == 'm';
        const bool M_for_m = s.text[0] == 'm' && unit[0] == 'M' && unit.size() > 1 &&
                             [&] {  // is the rest a unit, and m its prefix?
                                 const Typed rest(unit.substr(1));
                                 return std::any_of(spellings().begin(), spellings().end(), [&](const Spelled& o) {
                                     return o.quantity == &quantity && rest.is_but_for_case(o);
                                 });
                             }();
        if (!m_for_M && !M_for_m) found.insert(s.unit);
    }
    return found;
}

class Sweep {
public:
    void text(const Spelled& s, const std::string& text)
    {
        ++texts;
        double value = 0;
        const UnitInfo& bare = s.quantity->units[0];
        cutwater_refusal refusal;
        if (read_quantity(*s.quantity, bare, text, value, &refusal) != CUTWATER_OK) {
            if (!std::isnan(value) || std::strlen(refusal.message) < 10) wrong(s, text, "refused without a word");
            return;
        }
        ++read;
        const auto ascii = plain(text);
        const auto number = ascii ? read_number(*ascii) : std::nullopt;
        if (!number) return wrong(s, text, "is no number to the other reader");
        if (number->rest.empty()) {
            if (value != number->value) wrong(s, text, "bare, another number");
            return;
        }
        const std::size_t at = text.find_last_not_of(' ') + 1;
        const std::string given = text.substr(0, at).substr(at - std::min(at, number->rest.size()));
        const auto [known, is_new] = known_.try_emplace({s.quantity, given, number->rest});
        std::set<const UnitInfo*>& units = known->second;
        if (is_new) units = meant(*s.quantity, given, number->rest);
        if (units.size() != 1)
            return wrong(s, text, units.empty() ? "means no unit to the other reader" : "means several");
        const double expected = in_bare(*s.quantity, **units.begin(), number->value);
        if (!(std::abs(value - expected) <= 4e-15 * (std::abs(expected) + bare.offset)))
            wrong(s, text, "comes to something else");
    }

    std::size_t texts = 0;
    std::size_t read = 0;
    std::vector<std::string> faults;

private:
    double in_bare(const QuantityInfo& quantity, const UnitInfo& unit, double number) const
    {
        const UnitInfo& bare = quantity.units[0];
        if (&unit == &bare) return number;
        const Definitions* definitions = definitions_of(&quantity);
        if (is_convention(&quantity) || !definitions) return bare.from_si(unit.to_si(number));
        return by_udunits(system_, definitions->units.at(unit.symbol), definitions->units.at(bare.symbol), number);
    }

    void wrong(const Spelled& s, const std::string& text, const char* what)
    {
        if (faults.size() < 40) faults.push_back(std::string(s.quantity->name) + ": '" + text + "' " + what);
    }

    System system_;
    std::map<std::tuple<const QuantityInfo*, std::string, std::string>, std::set<const UnitInfo*>> known_;
};

/// The spelling with a blank at each place, cut at each byte, each letter's case turned, a stray character at each
/// place.
void bend(Sweep& sweep, const Spelled& s, const std::string& head)
{
    static const char* const strays[] = {" ",      "\u00A0", "-",  "+", ".", ",",      "*",      "^",
                                         "/",      "(",      ")",  "x", "m", "M",      "k",      "a",
                                         "A",      "g",      "e",  "2", "0", "\u00B2", "\u00B7", "\u00B0",
                                         "\u2212", "%",      "\"", "'", ";", "\xC3",   "\x01",   "\x7F"};
    const std::string& unit = s.text;
    sweep.text(s, head + unit);
    for (std::size_t i = 0; i <= unit.size(); ++i) {
        sweep.text(s, head + unit.substr(0, i));
        sweep.text(s, head + unit.substr(i));
        for (const char* stray : strays) sweep.text(s, head + unit.substr(0, i) + stray + unit.substr(i));
        sweep.text(s, head + unit.substr(0, i) + std::string(1, '\0') + unit.substr(i));
        if (i == unit.size()) break;
        std::string without = unit, turned = unit;
        without.erase(i, 1);
        const auto c = static_cast<unsigned char>(unit[i]);
        turned[i] = static_cast<char>(std::isupper(c) ? std::tolower(c) : c < 0x80 ? std::toupper(c) : c);
        sweep.text(s, head + without);
        sweep.text(s, head + turned);
    }
    std::string upper = unit;
    std::transform(upper.begin(), upper.end(), upper.begin(),
                   [](unsigned char c) { return static_cast<char>(c < 0x80 ? std::toupper(c) : c); });
    sweep.text(s, head + upper);
    sweep.text(s, head + lower(unit));
}

}  // namespace

TEST_CASE("a text bent in any way is refused, or means what another reader reads", "[sweep][long]")
{
    Sweep sweep;
    for (const Spelled& s : spellings()) {
        REQUIRE(s.factors);
        bend(sweep, s, "7 ");
        if (!std::isdigit(static_cast<unsigned char>(s.text[0]))) bend(sweep, s, "7");
        for (const char* head : {"-7", "+7", "\u22127", "7.", "7.5", "7,5", "7,125", "0,125", "1234,125", "7e2", "7E-2",
                                 "7e+02", "7,5e1", " 7 ", "7  "})
            for (const char* tail : {"", " ", "-", " -", " \u2212", "+", "."})
                sweep.text(s, std::string(head) + " " + s.text + tail);
    }
    for (const std::string& fault : sweep.faults) UNSCOPED_INFO(fault);
    CHECK(sweep.faults.empty());
    CHECK(sweep.texts > 300000);
    CHECK(sweep.read > 20000);
}

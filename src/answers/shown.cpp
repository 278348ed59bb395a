#include "answers/shown.hpp"

#include "elementary/elementary.hpp"
#include "units/format.hpp"
#include "units/utf8.hpp"

#include <algorithm>
#include <cmath>

namespace cutwater {
namespace {

struct Spelt {
    char32_t character;
    const char* text;
};

constexpr Spelt spellings[] = {
    {U'°', "deg "},   {U'²', "2"},      {U'³', "3"},       {U'⁴', "4"},     {U'⁵', "5"},     {U'·', "."},
    {U'×', "x"},      {U'µ', "u"},      {U'μ', "mu"},      {U'–', "-"},     {U'—', "-"},     {U'−', "-"},
    {U'…', "..."},    {U'≤', "<="},     {U'≥', ">="},      {U'±', "+/-"},   {U'√', "sqrt"},  {U'π', "pi"},
    {U'ρ', "rho"},    {U'η', "eta"},    {U'ν', "nu"},      {U'α', "alpha"}, {U'β', "beta"},  {U'γ', "gamma"},
    {U'δ', "delta"},  {U'Δ', "Delta"},  {U'ε', "epsilon"}, {U'ζ', "zeta"},  {U'θ', "theta"}, {U'κ', "kappa"},
    {U'λ', "lambda"}, {U'σ', "sigma"},  {U'τ', "tau"},     {U'φ', "phi"},   {U'ω', "omega"}, {U'‘', "'"},
    {U'’', "'"},      {U'“', "\""},     {U'”', "\""},      {U'½', "1/2"},   {U'¼', "1/4"},   {U'→', "->"},
    {U'\u00A0', " "}, {U'\u2009', " "}, {U'\u202F', " "},  {U'ä', "a"},     {U'ö', "o"},     {U'ü', "u"},
    {U'ß', "ss"},     {U'á', "a"},      {U'à', "a"},       {U'é', "e"},     {U'è', "e"},     {U'ê', "e"},
    {U'ç', "c"},      {U'ñ', "n"},
};

bool continues(char c) { return (static_cast<unsigned char>(c) & 0xC0u) == 0x80u; }

char32_t take_character(std::string_view& rest)
{
    const auto lead = static_cast<unsigned char>(rest.front());
    const std::size_t length = lead < 0x80 ? 1 : lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
    if (length > rest.size() || (lead >= 0x80 && lead < 0xC2)) {  // not UTF-8
        rest.remove_prefix(1);
        return U'\uFFFD';
    }
    char32_t character = lead < 0x80 ? lead : lead & (0x7Fu >> length);
    for (std::size_t i = 1; i < length; ++i) character = character << 6 | (static_cast<unsigned char>(rest[i]) & 0x3Fu);
    rest.remove_prefix(length);
    return character;
}

}  // namespace

void add_number(std::string& to, double value, int digits)
{
    const double size = std::abs(value);
    const double whole = digits >= 9 ? 1e9 : digits == result_digits ? 1e6 : elementary::exp10(digits);
    char text[40];
    const std::size_t length = size >= whole && size < 1e9
                                   ? format_into(text, sizeof text, "{:.0f}", value)
                                   : format_into(text, sizeof text, "{:.{}g}", value == 0 ? 0.0 : value, digits);
    to.append(text, std::min(length, sizeof text));
}

void add_quantity(std::string& to, double value, const char* unit, int digits)
{
    add_number(to, value, digits);
    if (*unit) (to += ' ') += unit;
}

std::size_t width(std::string_view text) noexcept
{
    std::size_t count = 0;
    for (const char c : text) count += !continues(c);
    return count;
}

std::string ascii(std::string_view text)
{
    std::string made;
    if (std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; }))
        return made = text;
    made.reserve(text.size());
    while (!text.empty()) {
        const char32_t character = take_character(text);
        if (character < 0x80) {
            made += static_cast<char>(character);
            continue;
        }
        const char* found = "?";
        for (const Spelt& spelt : spellings)
            if (spelt.character == character) found = spelt.text;
        made += found;
    }
    return made;
}

std::string readable(std::string_view text)
{
    std::string made;
    for (std::size_t at = 0; at < text.size();) {
        const CodePoint c = decode(text, at);
        const bool control = c.bytes && (c.value < 0x20 || (c.value >= 0x7F && c.value < 0xA0));
        made += !c.bytes ? "\uFFFD" : control ? " " : text.substr(at, c.bytes);
        at += std::max<std::size_t>(1, c.bytes);
    }
    return made;
}

}  // namespace cutwater

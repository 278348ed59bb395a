#include "number.hpp"

#include "spelling.hpp"
#include "utf8.hpp"

#include <charconv>
#include <cmath>
#include <cstdlib>
#include <limits>

namespace cutwater {

namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

constexpr bool is_digit(char32_t c) { return c >= '0' && c <= '9'; }
constexpr bool is_minus(char32_t c) { return c == '-' || c == 0x2212 || c == 0x2013; }
constexpr bool is_sign(char32_t c) { return c == '+' || is_minus(c); }
bool is_group_mark(char32_t c) { return c == '\'' || c == 0x2019 || (is_blank(c) && !(c >= '\t' && c <= '\r')); }

std::size_t digits_at(const Characters& text, std::size_t i)
{
    std::size_t n = 0;
    while (is_digit(text[i + n])) ++n;
    return n;
}

bool word_at(const Characters& text, std::size_t i, const char* word)
{
    for (; *word; ++word, ++i)
        if ((text[i] | 0x20) != static_cast<char32_t>(*word)) return false;
    return true;
}

/// Behind a number none of these belongs to a unit: some systems write -5 as 5-.
bool is_dash(char32_t c) { return is_sign(c) || c == 0x2010 || c == 0x2011 || c == 0x2014; }

const char* no_number(const Characters& text, std::size_t i)
{
    if (text[i] == ',' && is_digit(text[i + 1])) return "a digit must stand before the decimal sign: write 0.5, not ,5";
    return "a number must come first";
}

/// What is wrong with a comma behind so many digits; null where it can be nothing but the decimal sign, as a sheet in
/// half of Europe's languages writes it. Before three digits it may group them: then a thousandfold error hangs on it.
const char* comma(const Characters& text, std::size_t i, std::size_t before, bool grouped, bool zero)
{
    const std::size_t behind = digits_at(text, i + 1);
    if (behind == 0) return "a digit must stand behind the decimal sign";
    if (text[i + 1 + behind] == ',') return "a second comma: leave out what groups digits, or group them by blanks";
    if (text[i + 1 + behind] == '.') return "a comma and a point: group digits by blanks, if at all";
    if (behind == 3 && before <= 3 && !grouped && !zero)
        return "a comma can be read in two ways: leave it out (1013) if it groups digits, write a point (1.013) if it "
               "is the decimal sign";
    return nullptr;
}

/// The digits gathered, in the form that from_chars reads.
class Canonical {
public:
    void add(char32_t c) { text_[length_++] = static_cast<char>(c); }

    bool read(double& value) const
    {
#if defined(__cpp_lib_to_chars)
        const auto [end, error] = std::from_chars(text_.data(), text_.data() + length_, value);
        return error == std::errc() && end == text_.data() + length_;
#else
        // a C++ library without from_chars for doubles (WebAssembly's); its strtod knows no locale
        char* end = nullptr;
        value = std::strtod(text_.data(), &end);
        return end == text_.data() + length_ && std::isfinite(value);
#endif
    }

private:
    std::array<char, Characters::most + 2> text_{};  // ended by 0
    std::size_t length_ = 0;
};

}  // namespace

Characters::Characters(std::string_view text) noexcept : text_(text)
{
    std::size_t n = 0;
    for (std::size_t at = 0; at < text.size() && at < most; ++n) {
        const CodePoint c = decode(text, at);
        const bool control = c.value < 0x20 ? !is_blank(c.value) : c.value == 0x7F;
        if (c.bytes == 0 || control) {
            bad_ = n;
            break;
        }
        points_[n] = c.value;
        offsets_[n] = static_cast<unsigned char>(at);
        at += c.bytes;
        offsets_[n + 1] = static_cast<unsigned char>(at);
    }
    end_ = n;
    while (end_ > 0 && is_blank(points_[end_ - 1])) --end_;
    while (begin_ < end_ && is_blank(points_[begin_])) ++begin_;
}

std::string_view Characters::from(std::size_t i) const noexcept
{
    if (i >= end_) return {};
    return text_.substr(offsets_[i], static_cast<std::size_t>(offsets_[end_] - offsets_[i]));
}

ScannedNumber scan_number(const Characters& text) noexcept
{
    const auto refuse = [](std::size_t at, const char* trouble, cutwater_status status = CUTWATER_BAD_TEXT) {
        return ScannedNumber{status, nan, at, trouble};
    };

    Canonical number;
    std::size_t i = text.begin();
    if (is_sign(text[i])) {
        if (is_minus(text[i])) number.add('-');
        ++i;
    }
    if (word_at(text, i, "nan") || word_at(text, i, "inf"))
        return refuse(i, "a finite number is needed", CUTWATER_NOT_FINITE);
    if (!is_digit(text[i]) && !(text[i] == '.' && is_digit(text[i + 1]))) return refuse(i, no_number(text, i));
    if (text[i] == '0' && (text[i + 1] | 0x20) == 'x') return refuse(i, "hexadecimal numbers are not read");

    const std::size_t begin = i;
    std::size_t group = digits_at(text, i);
    const std::size_t first = group;
    char32_t mark = 0;
    for (;;) {
        for (; group > 0; --group) number.add(text[i++]);
        // digits go on behind a mark only in whole threes, as ISO 80000-1 groups them
        const bool goes_on = first <= 3 && first > 0 && is_group_mark(text[i]) && (mark == 0 || text[i] == mark) &&
                             digits_at(text, i + 1) == 3;
        if (!goes_on) break;
        mark = text[i++];
        group = 3;
    }
    if (text[i] == ',')
        if (const char* trouble = comma(text, i, i - begin, mark != 0, text[begin] == '0')) return refuse(i, trouble);
    if (text[i] == '.' || text[i] == ',') {
        number.add('.');
        ++i;
        while (is_digit(text[i])) number.add(text[i++]);
        if (text[i] == '.') return refuse(i, "a second decimal point");
        if (text[i] == ',') return refuse(i, "a comma behind the decimal point");
    }
    const bool signed_exponent = is_sign(text[i + 1]);
    if ((text[i] | 0x20) == 'e' && is_digit(text[i + (signed_exponent ? 2 : 1)])) {
        number.add('e');
        if (signed_exponent) number.add(is_minus(text[i + 1]) ? '-' : '+');
        i += signed_exponent ? 2 : 1;
        while (is_digit(text[i])) number.add(text[i++]);
        if (text[i] == '.' || text[i] == ',') return refuse(i, "a power of ten is a whole number");
    }

    double value = nan;
    if (!number.read(value)) return refuse(text.begin(), "the number is too large or too small to be held");

    while (is_blank(text[i])) ++i;
    const char32_t next = text[i];
    if (is_dash(next)) return refuse(i, "a sign stands before its number: -5, not 5-");
    if (next == '\'' || next == 0x2019) return refuse(i, "an apostrophe may only part digits in groups of three");
    if (next == '/' && is_digit(text[i + 1])) return refuse(i, "write a vulgar fraction as a decimal number");
    if (next == '^') return refuse(i, "write a power of ten as 1.5e3");
    if (next == 'x' || next == 'X' || next == 0x00D7 || next == '*') {
        std::size_t k = i + 1;
        while (is_blank(text[k])) ++k;
        if (is_digit(text[k])) return refuse(i, "write a power of ten as 1.5e3");
    }
    return {CUTWATER_OK, value, i, nullptr};
}

}  // namespace cutwater

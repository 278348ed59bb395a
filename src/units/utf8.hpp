// Reading UTF-8, strictly.
#pragma once

#include <cstddef>
#include <string_view>

namespace cutwater {

struct CodePoint {
    char32_t value;
    std::size_t bytes;  // 0: not UTF-8 here
};

/// The character at `at`, which must lie inside the text.
constexpr CodePoint decode(std::string_view text, std::size_t at) noexcept
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[at + i]); };
    const unsigned lead = byte(0);
    if (lead < 0x80) return {lead, 1};
    const std::size_t bytes = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : 2;
    if (lead < 0xC2 || lead > 0xF4 || at + bytes > text.size()) return {0, 0};
    char32_t value = lead & (0x7Fu >> bytes);
    for (std::size_t i = 1; i < bytes; ++i) {
        if ((byte(i) & 0xC0) != 0x80) return {0, 0};
        value = value << 6 | (byte(i) & 0x3Fu);
    }
    const bool overlong = (bytes == 3 && value < 0x800) || (bytes == 4 && value < 0x10000);
    if (overlong || value > 0x10FFFF || (value >= 0xD800 && value <= 0xDFFF)) return {0, 0};
    return {value, bytes};
}

/// How much of a text goes into so many bytes without the half of a character at its end.
constexpr std::size_t whole_characters(std::string_view text, std::size_t room) noexcept
{
    if (text.size() <= room) return text.size();
    const auto continues = [&](std::size_t i) { return (static_cast<unsigned char>(text[i]) & 0xC0) == 0x80; };
    std::size_t end = room;
    while (end > 0 && room - end < 3 && continues(end)) --end;
    return continues(end) ? room : end;  // more than three in a row are no UTF-8: nothing to keep whole
}

}  // namespace cutwater

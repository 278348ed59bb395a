// Scanning the number at the head of a text.
#pragma once

#include <cutwater/base.h>

#include <array>
#include <cstddef>
#include <string_view>

namespace cutwater {

/// A text as characters, so that places are counted as a reader counts them. Blanks at both ends are left out of
/// [begin, end).
class Characters {
public:
    static constexpr std::size_t most = 128;  // bytes; a quantity that needs more is no quantity

    explicit Characters(std::string_view text) noexcept;

    /// 0 past the end: no character of a valid text is 0.
    char32_t operator[](std::size_t i) const noexcept { return i < end_ ? points_[i] : 0; }
    std::size_t begin() const noexcept { return begin_; }
    std::size_t end() const noexcept { return end_; }
    std::string_view from(std::size_t i) const noexcept;
    std::size_t bad() const noexcept { return bad_; }  // place of a character that no text may hold; npos for none
    static constexpr std::size_t npos = static_cast<std::size_t>(-1);

private:
    std::string_view text_;
    std::array<char32_t, most> points_{};
    std::array<unsigned char, most + 1> offsets_{};
    std::size_t begin_ = 0;
    std::size_t end_ = 0;
    std::size_t bad_ = npos;
};

struct ScannedNumber {
    cutwater_status status;
    double value;
    std::size_t rest;     // where the unit begins; or where the trouble is
    const char* trouble;  // what is wrong, when the status is not CUTWATER_OK
};

ScannedNumber scan_number(const Characters& text) noexcept;

}  // namespace cutwater

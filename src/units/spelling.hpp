// Finding a unit by the way people spell it.
#pragma once

#include <cutwater/unit.hpp>

#include <cstddef>
#include <string_view>

namespace cutwater {

/// A unit's text with what typing varies made one: blanks, points, brackets, raised digits, the degree and micro signs.
class Spelling {
public:
    static constexpr std::size_t most = 64;  // bytes, folded
    static constexpr char gap = '\x1F';      // where a blank, a point, a product sign or a bracket parts two things

    explicit Spelling(std::string_view text) noexcept;
    bool valid() const noexcept { return valid_; }
    std::string_view folded() const noexcept { return {folded_, length_}; }
    std::string_view text() const noexcept { return text_; }

private:
    std::string_view text_;
    char folded_[most];
    std::size_t length_ = 0;
    bool valid_ = true;
};

struct FoundUnit {
    const UnitInfo* unit = nullptr;
    bool exact = false;  // false: only when upper and lower case are taken as one
    explicit operator bool() const noexcept { return unit != nullptr; }
};

/// The quantity's unit of that spelling. Case is ignored only where one unit alone can be meant, of this quantity or
/// any, and never makes milli mega.
FoundUnit find_unit(const QuantityInfo& quantity, const Spelling& spelling) noexcept;

/// The first unit whose letters these are, in whatever case: to suggest, never to take.
const UnitInfo* find_regardless_of_case(const QuantityInfo& quantity, const Spelling& spelling) noexcept;

bool is_blank(char32_t c) noexcept;

}  // namespace cutwater

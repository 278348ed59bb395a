// Closed lists of words: a choice among the inputs, a verdict or band among the results.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

namespace cutwater {

/// Specialised beside each enum: `template <> inline constexpr Words<3> words_of<Grade>{"1B", "1E", "1U"};`
template <std::size_t N>
using Words = std::array<const char*, N>;

template <class Enum>
inline constexpr Words<0> words_of{};

/// Position of a word, letter case aside (a sheet's user types as he pleases); -1 when it is none of them.
constexpr int find_word(const char* const* words, std::size_t count, std::string_view word)
{
    const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + ('a' - 'A')) : c; };
    for (std::size_t i = 0; i < count; ++i) {
        const std::string_view candidate = words[i];
        if (candidate.size() != word.size()) continue;
        bool same = true;
        for (std::size_t k = 0; k < word.size(); ++k) same = same && lower(candidate[k]) == lower(word[k]);
        if (same) return static_cast<int>(i);
    }
    return -1;
}

}  // namespace cutwater

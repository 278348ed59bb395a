#include "catalogue/nearest.hpp"

#include "catalogue/families.hpp"
#include "catalogue/sentence.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace cutwater {
namespace {

constexpr std::size_t longest = 48;   // of a name; more of what was asked is not looked at
constexpr double least_alike = 0.55;  // below it a suggestion only misleads; typing errors stay above
constexpr double as_alike = 0.1;      // of two names this near to each other neither is the likelier

/// As the catalogue spells names: small letters, words parted by '_'.
class AskedName {
public:
    explicit AskedName(std::string_view asked) noexcept
    {
        for (const char c : asked.substr(0, longest)) {
            const bool parts = c == ' ' || c == '-' || c == '.';
            letters_[length_++] = parts ? '_' : c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }
    std::string_view view() const noexcept { return {letters_, length_}; }

private:
    char letters_[longest];
    std::size_t length_ = 0;
};

/// Letters to change, insert, drop or swap with their neighbour to make one of the other.
std::size_t edits(std::string_view a, std::string_view b) noexcept
{
    std::size_t rows[3][longest + 1];
    std::size_t *before = rows[0], *above = rows[1], *row = rows[2];
    for (std::size_t j = 0; j <= b.size(); ++j) above[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            row[j] = std::min({above[j] + 1, row[j - 1] + 1, above[j - 1] + (a[i - 1] != b[j - 1])});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[j] = std::min(row[j], before[j - 2] + 1);
        }
        std::swap(before, above);
        std::swap(above, row);
    }
    return above[b.size()];
}

std::string_view next_word(std::string_view& rest) noexcept
{
    const std::size_t end = std::min(rest.find('_'), rest.size());
    const std::string_view word = rest.substr(0, end);
    rest.remove_prefix(std::min(end + 1, rest.size()));
    return word;
}

/// Letters of the words that both have, in whatever order; of a word begun, from three letters on, the letters given.
std::size_t shared_letters(std::string_view asked, std::string_view name) noexcept
{
    std::size_t shared = 0;
    while (!asked.empty()) {
        const std::string_view wanted = next_word(asked);
        std::size_t most = 0;
        for (std::string_view rest = name; !rest.empty();) {
            const std::string_view word = next_word(rest);
            if (word == wanted || (wanted.size() >= 3 && word.starts_with(wanted))) most = wanted.size();
        }
        shared += most;
    }
    return shared;
}

/// 1 for the same name, 0 for nothing in common.
double likeness(std::string_view asked, std::string_view name) noexcept
{
    name = name.substr(0, longest);
    const double both = static_cast<double>(asked.size() + name.size());
    const double by_letters = 1 - 2 * static_cast<double>(edits(asked, name)) / both;
    const double by_words = 2 * static_cast<double>(shared_letters(asked, name)) / both;
    return std::max(by_letters, by_words);
}

/// To the function's name, or to the other words for it.
double likeness(std::string_view asked, const FunctionInfo& f) noexcept
{
    double most = likeness(asked, std::string_view(f.name));
    if (most == 1) return 2;  // its own name goes before another's other words
    for (std::string_view rest = f.also; !rest.empty();) {
        const std::size_t end = std::min(rest.find('|'), rest.size());
        const AskedName other(rest.substr(0, end));
        // abbreviations are like too many words: SUS is no likely SUM
        if (other.view().size() > 4)
            most = std::max(most, likeness(asked, other.view()));
        else if (other.view() == asked)
            most = 1;
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return most;
}

}  // namespace

Nearest nearest_functions(std::string_view asked) noexcept
{
    const AskedName wanted(asked);
    Nearest found;
    double likenesses[Nearest::most] = {};
    for (std::size_t i = 0; i < function_count(); ++i) {
        const char* name = function_at(i).name;
        double like = likeness(wanted.view(), function_at(i));
        if (like < least_alike) continue;
        for (std::size_t k = 0; k < Nearest::most; ++k) {  // in its place, the others one down
            if (k < found.count && likenesses[k] >= like) continue;
            std::swap(likenesses[k], like);
            std::swap(found.names[k], name);
            if (k >= found.count) {
                ++found.count;
                break;
            }
        }
    }
    while (found.count > 1 && likenesses[found.count - 1] < likenesses[0] - as_alike) --found.count;
    return found;
}

std::size_t nearest_word(std::string_view asked, std::span<const char* const> words) noexcept
{
    const AskedName wanted(asked);
    std::size_t nearest = words.size();
    double most = std::nextafter(least_alike, 0);
    for (std::size_t i = 0; i < words.size(); ++i) {
        const AskedName word(words[i]);
        const double like = likeness(wanted.view(), word.view());
        if (like <= most) continue;  // of two as like the first
        most = like;
        nearest = i;
    }
    return nearest;
}

cutwater_status refuse_unknown_function(const char* asked, cutwater_refusal* refusal) noexcept
{
    const std::string_view name = asked ? asked : "";
    if (name.empty()) return refuse(CUTWATER_UNKNOWN_FUNCTION, "The name of a function is missing.", refusal);
    refuse(CUTWATER_UNKNOWN_FUNCTION, "", refusal);
    Message message = sentence_of(refusal);
    message.add("There is no function \"{}\"", Quoted(name).view());
    const Nearest near = nearest_functions(name);
    for (std::size_t i = 0; i < near.count; ++i)
        message.add("{}{}", i == 0 ? "; is it " : i + 1 == near.count ? " or " : ", ", near.names[i]);
    message.add("{}", near.count ? "?" : ".");
    return CUTWATER_UNKNOWN_FUNCTION;
}

}  // namespace cutwater

#include "answers/finding.hpp"

#include "catalogue/families.hpp"
#include "elementary/elementary.hpp"

#include <algorithm>
#include <cctype>
#include <string>
#include <tuple>
#include <unordered_map>

namespace cutwater {
namespace {

using Word = std::string;

bool small_word(std::string_view w)
{
    constexpr std::string_view list[] = {"a",    "an",  "the",  "of",   "for",  "to",   "in",   "is",  "it", "my",
                                         "be",   "and", "or",   "on",   "at",   "by",   "as",   "its", "i",  "do",
                                         "what", "how", "does", "with", "from", "that", "this", "are", "can"};
    return std::find(std::begin(list), std::end(list), w) != std::end(list);
}

/// What endings differ in is left out, so that "cavitating", "margins" and "losses" meet "cavitation", "margin" and
/// "loss".
Word stem(Word w)
{
    const auto drop = [&](std::string_view end, std::size_t least) {
        if (w.size() < least + end.size() || !w.ends_with(end)) return false;
        w.resize(w.size() - end.size());
        return true;
    };
    if (w.size() > 4 && w.ends_with("ies")) return w.substr(0, w.size() - 3) + "y";
    if (w.size() > 4 && (w.ends_with("sses") || w.ends_with("xes"))) return w.substr(0, w.size() - 2);
    if (w.size() > 3 && w.ends_with('s') && !w.ends_with("ss") && !w.ends_with("us") && !w.ends_with("is"))
        w.pop_back();
    static_cast<void>(drop("ation", 4) || drop("ating", 4) || drop("ing", 4) || drop("ed", 4));
    return w;
}

std::vector<Word> words_in(std::string_view text)
{
    std::vector<Word> made;
    Word word;
    const auto close = [&] {
        if (!word.empty() && !small_word(word)) made.push_back(stem(word));
        word.clear();
    };
    for (const char c : text) {
        const auto u = static_cast<unsigned char>(c);
        if (std::isalnum(u) || u >= 0x80)
            word += static_cast<char>(std::tolower(u));
        else
            close();
    }
    close();
    return made;
}

/// One function's words with how much each tells of it, and its own phrases whole.
struct Card {
    std::unordered_map<Word, double> weight;
    std::vector<std::vector<Word>> phrases;  // name and other names
};

struct Index {
    std::vector<Card> cards;
    std::unordered_map<Word, double> rarity;

    Index()
    {
        cards.resize(function_count());
        for (std::size_t i = 0; i < cards.size(); ++i) fill(cards[i], function_at(i), family_of(i));
        std::unordered_map<Word, std::size_t> seen;
        for (const Card& card : cards)
            for (const auto& [word, weight] : card.weight) ++seen[word];
        for (const auto& [word, count] : seen)
            rarity[word] = elementary::log(1 + static_cast<double>(cards.size()) / static_cast<double>(count));
    }

    static void fill(Card& card, const FunctionInfo& f, const Family& family)
    {
        const auto add = [&](std::string_view text, double weight) {
            for (const Word& word : words_in(text)) {
                double& had = card.weight[word];
                had = std::max(had, weight);
            }
        };
        add(f.name, 4);
        card.phrases.push_back(words_in(f.name));
        for (std::string_view also = f.also; !also.empty();) {
            const std::size_t end = std::min(also.find('|'), also.size());
            card.phrases.push_back(words_in(also.substr(0, end)));
            add(also.substr(0, end), 3.5);
            also.remove_prefix(std::min(end + 1, also.size()));
        }
        add(f.meaning, 2);
        for (const ResultInfo& out : f.results) {
            add(out.name, 1.5);
            add(out.meaning, 1);
            for (const char* word : out.words) add(word, 0.5);
        }
        for (const InputInfo& in : f.inputs) {
            add(in.name, 0.7);
            add(in.meaning, 0.5);
            for (const char* word : in.words) add(word, 0.5);
        }
        add(family.title, 0.7);
        for (const char* caution : f.cautions) add(caution, 0.3);
    }
};

const Index& index()
{
    static const Index built;
    return built;
}

/// Letters to change, leave out or put in, as far as one.
bool one_letter_apart(const Word& a, const Word& b)
{
    if (a.size() > b.size()) return one_letter_apart(b, a);
    if (b.size() - a.size() > 1) return false;
    const auto [at, in] = std::mismatch(a.begin(), a.end(), b.begin());
    return a.size() == b.size() ? std::equal(at + 1, a.end(), in + 1) : std::equal(at, a.end(), in + 1);
}

/// How near a word that is not known comes to one that is: one that begins alike, or differs by a letter.
double nearness(const Word& asked, const Word& known)
{
    const std::size_t shorter = std::min(asked.size(), known.size());
    if (shorter < 4) return 0;
    if (shorter >= 5 && one_letter_apart(asked, known)) return 0.9;
    const auto common = static_cast<std::size_t>(
        std::mismatch(asked.begin(), asked.begin() + static_cast<std::ptrdiff_t>(shorter), known.begin()).first -
        asked.begin());
    if (common < std::min<std::size_t>(shorter, 5)) return 0;
    return 0.8 * static_cast<double>(common) / static_cast<double>(std::max(asked.size(), known.size()));
}

/// Known words that an asked one may stand for.
std::vector<std::pair<Word, double>> meant(const Word& asked)
{
    if (index().rarity.contains(asked)) return {{asked, 1}};
    std::vector<std::pair<Word, double>> made;
    for (const auto& [word, rarity] : index().rarity)
        if (const double near = nearness(asked, word); near > 0) made.emplace_back(word, near);
    return made;
}

bool contains(const std::vector<Word>& asked, const std::vector<Word>& phrase)
{
    return !phrase.empty() && std::search(asked.begin(), asked.end(), phrase.begin(), phrase.end()) != asked.end();
}

double score(const Card& card, const std::vector<Word>& asked,
             const std::vector<std::vector<std::pair<Word, double>>>& stand_for)
{
    double total = 0;
    std::size_t met = 0;
    for (const auto& candidates : stand_for) {
        double best = 0;
        for (const auto& [word, near] : candidates)
            if (const auto at = card.weight.find(word); at != card.weight.end())
                best = std::max(best, near * at->second * index().rarity.at(word));
        total += best;
        met += best > 0;
    }
    if (met == 0) return 0;
    // A function that meets all of the words comes before one that meets a single one well.
    const double part = static_cast<double>(met) / static_cast<double>(stand_for.size());
    total *= part * part;
    for (const auto& phrase : card.phrases) {
        if (phrase == asked)
            total += 40;
        else if (contains(asked, phrase))
            total += 6 * static_cast<double>(phrase.size());
    }
    return total;
}

}  // namespace

std::vector<std::int32_t> find_functions(std::string_view words)
{
    const std::vector<Word> asked = words_in(words);
    std::string name(words);  // as it may be typed: "NPSH available"
    for (char& c : name) c = c == ' ' ? '_' : static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    const std::ptrdiff_t named = find_function(name);
    std::vector<std::vector<std::pair<Word, double>>> stand_for;
    for (const Word& word : asked) stand_for.push_back(meant(word));
    std::vector<std::pair<double, std::int32_t>> found;
    double best = 0;
    for (std::size_t i = 0; i < index().cards.size(); ++i)
        if (const double points = score(index().cards[i], asked, stand_for);
            points > 0 || named == static_cast<std::ptrdiff_t>(i)) {
            found.emplace_back(points, static_cast<std::int32_t>(i));
            best = std::max(best, points);
        }
    std::erase_if(found, [&](const auto& one) { return one.first < 0.25 * best && one.second != named; });
    std::sort(found.begin(), found.end(), [&](const auto& a, const auto& b) {
        return std::tuple(a.second != named, -a.first, a.second) < std::tuple(b.second != named, -b.first, b.second);
    });
    constexpr std::size_t most = 12;
    std::vector<std::int32_t> made;
    for (const auto& one : found)
        if (made.size() < most) made.push_back(one.second);
    return made;
}

}  // namespace cutwater

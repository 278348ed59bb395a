#include "answers/substitution.hpp"

#include <algorithm>
#include <vector>

namespace cutwater {
namespace {

bool letter(char c)
{
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}
bool digit(char c) { return c >= '0' && c <= '9'; }
bool of_identifier(char c) { return letter(c) || digit(c) || c == '_' || c == '\''; }

/// End of the identifier or number that starts at i.
std::size_t token_end(std::string_view text, std::size_t i)
{
    while (i < text.size() && of_identifier(text[i])) ++i;
    return i;
}

constexpr std::string_view mathematics[] = {"alpha", "beta",  "gamma",  "delta", "epsilon", "eps", "zeta",  "eta",
                                            "theta", "kappa", "lambda", "mu",    "nu",      "rho", "sigma", "tau",
                                            "phi",   "omega", "pi",     "sqrt",  "log",     "exp", "sin",   "cos",
                                            "tan",   "asin",  "acos",   "atan",  "tanh",    "abs", "min",   "max",
                                            "sum",   "log10", "sinh",   "cosh",  "cbrt",    "ln",  "xi",    "psi"};
constexpr std::string_view short_words[] = {"in", "of", "at", "is", "by", "if", "as",
                                            "or", "to", "on", "no", "so", "be", "it"};

template <class List>
bool among(const List& list, std::string_view token)
{
    return std::find(std::begin(list), std::end(list), token) != std::end(list);
}

class Clause {
public:
    Clause(std::string_view text, std::span<const Replacement> inputs, std::span<const std::string_view> results)
        : text_(text), inputs_(inputs), results_(results)
    {
    }

    /// Whether it is a formula from its first character to its last.
    bool formula() const
    {
        const std::size_t sign = text_.find('=');
        if (sign == std::string_view::npos || text_.find(':') != std::string_view::npos) return false;
        if (sign > 0 && (text_[sign - 1] == '<' || text_[sign - 1] == '>')) return false;
        if (gives_constant(text_.substr(sign + 1))) return false;
        for (std::size_t i = 0; i < text_.size();) {
            if (!of_identifier(text_[i])) {
                ++i;
                continue;
            }
            const std::size_t end = token_end(text_, i);
            if (prose(text_.substr(i, end - i))) return false;
            i = end;
        }
        return true;
    }

    /// Whether it says what unit a symbol is taken in: "T in kelvin". A number in the record's unit must not stand
    /// there.
    bool gives_unit_of(std::string_view symbol) const
    {
        bool names = false, in = false;
        for (std::size_t i = 0; i < text_.size();) {
            const std::size_t end = std::max(token_end(text_, i), i + 1);
            names = names || text_.substr(i, end - i) == symbol;
            in = in || text_.substr(i, end - i) == "in";
            i = end;
        }
        return names && in;
    }

    /// Appends the clause; true when a symbol was replaced. The left side of "y = …" keeps its symbols when it is one
    /// symbol.
    bool write(std::string& to) const
    {
        bool replaced = false;
        for (std::size_t i = 0; i < text_.size();) {
            if (!of_identifier(text_[i])) {
                to += text_[i++];
                continue;
            }
            const std::size_t end = token_end(text_, i);
            const Replacement* found = find(text_.substr(i, end - i));
            if (found && !found->text.empty()) {
                put(to, *found, i, end);
                replaced = true;
            } else {
                to += text_.substr(i, end - i);
            }
            i = end;
        }
        return replaced;
    }

private:
    const Replacement* find(std::string_view token) const
    {
        for (const Replacement& input : inputs_)
            if (input.symbol == token) return &input;
        return nullptr;
    }

    bool prose(std::string_view token) const
    {
        if (among(short_words, token)) return true;
        if (token.size() < 3 || !std::all_of(token.begin(), token.end(), [](char c) { return c >= 'a' && c <= 'z'; }))
            return false;
        return !find(token) && !among(results_, token) && !among(mathematics, token);
    }

    /// "g = 9.80665 m/s2": the letters after the number are its unit.
    static bool gives_constant(std::string_view right)
    {
        while (!right.empty() && right.front() == ' ') right.remove_prefix(1);
        if (!right.empty() && right.front() == '-') right.remove_prefix(1);
        std::size_t end = 0;
        while (end < right.size() && (digit(right[end]) || right[end] == '.')) ++end;
        const std::string_view number = right.substr(0, end);
        const bool decimal = number.find('.') != std::string_view::npos || number.size() >= 3;
        return decimal && right.find_first_of("()+-*^", end) == std::string_view::npos;
    }

    /// Brackets where the number stands beside anything but a sum's sign, a bracket or a comma.
    void put(std::string& to, const Replacement& r, std::size_t begin, std::size_t end) const
    {
        while (begin > 0 && text_[begin - 1] == ' ') --begin;
        while (end < text_.size() && text_[end] == ' ') ++end;
        const char before = begin > 0 ? text_[begin - 1] : '=';
        const char after = end < text_.size() ? text_[end] : '=';
        const bool alone = std::string_view("=+-(,").find(before) != std::string_view::npos &&
                           std::string_view("=+-),").find(after) != std::string_view::npos;
        const bool negative = r.text.front() == '-' && (before == '-' || before == '+');
        const bool bare = r.text.find(' ') == std::string_view::npos && after != '^' && r.text.front() != '-';
        const bool factor = of_identifier(before) || of_identifier(after) || before == ')' || after == '(';
        if ((alone && !negative) || (bare && !factor))
            to += r.text;
        else
            ((to += '(') += r.text) += ')';
    }

    std::string_view text_;
    std::span<const Replacement> inputs_;
    std::span<const std::string_view> results_;
};

/// Cuts at ';' and at commas outside of brackets.
std::string_view next_clause(std::string_view& rest)
{
    int depth = 0;
    std::size_t i = 0;
    for (; i < rest.size(); ++i) {
        if (rest[i] == '(' || rest[i] == '[') ++depth;
        if (rest[i] == ')' || rest[i] == ']') --depth;
        if (depth == 0 && (rest[i] == ';' || rest[i] == ',')) break;
    }
    std::string_view clause = rest.substr(0, i);
    rest.remove_prefix(std::min(i + 1, rest.size()));
    while (!clause.empty() && clause.front() == ' ') clause.remove_prefix(1);
    while (!clause.empty() && clause.back() == ' ') clause.remove_suffix(1);
    return clause;
}

bool ambiguous(std::span<const Replacement> inputs, std::span<const std::string_view> results)
{
    for (std::size_t i = 0; i < inputs.size(); ++i) {
        if (among(results, inputs[i].symbol)) return true;
        for (std::size_t k = 0; k < i; ++k)
            if (inputs[k].symbol == inputs[i].symbol) return true;
    }
    return false;
}

}  // namespace

std::string substituted(std::string_view equation, std::span<const Replacement> inputs,
                        std::span<const std::string_view> results)
{
    std::string made;
    if (ambiguous(inputs, results)) return made;
    std::vector<Replacement> kept(inputs.begin(), inputs.end());
    for (std::string_view rest = equation; !rest.empty();) {
        const Clause clause(next_clause(rest), inputs, results);
        if (clause.formula()) continue;
        for (Replacement& r : kept)
            if (clause.gives_unit_of(r.symbol)) r.text = {};
    }
    while (!equation.empty()) {
        const Clause clause(next_clause(equation), kept, results);
        if (!clause.formula()) continue;
        std::string written;
        if (!clause.write(written)) continue;
        if (!made.empty()) made += "; ";
        made += written;
    }
    return made;
}

}  // namespace cutwater

#include "call/argument_list.hpp"

#include "elementary/elementary.hpp"

#include <charconv>
#include <limits>

namespace cutwater {
namespace {

class Reader {
public:
    explicit Reader(std::string_view text) : rest_(text) { skip_blanks(); }

    bool at_end() const { return rest_.empty(); }

    bool take(char c)
    {
        if (rest_.empty() || rest_.front() != c) return false;
        rest_.remove_prefix(1);
        skip_blanks();
        return true;
    }

    bool take_number(double& value, std::string& written)
    {
        const std::string_view token = rest_.substr(0, std::min(rest_.find_first_of(" ,]"), rest_.size()));
        if (token == "nan")
            value = std::numeric_limits<double>::quiet_NaN();
        else if (token == "inf")
            value = std::numeric_limits<double>::infinity();
        else if (token == "-inf")
            value = -std::numeric_limits<double>::infinity();
        else {
            const auto [end, error] = std::from_chars(token.data(), token.data() + token.size(), value);
            if (error != std::errc() || end != token.data() + token.size()) return false;
        }
        written = token;
        rest_.remove_prefix(token.size());
        skip_blanks();
        return true;
    }

    bool take_text(std::string& text)
    {
        if (rest_.empty() || rest_.front() != '"') return false;
        const std::size_t end = rest_.find('"', 1);
        if (end == std::string_view::npos) return false;
        text = rest_.substr(1, end - 1);
        rest_.remove_prefix(end + 1);
        skip_blanks();
        return true;
    }

    bool take_word(std::string_view word)
    {
        if (!rest_.starts_with(word)) return false;
        rest_.remove_prefix(word.size());
        skip_blanks();
        return true;
    }

private:
    void skip_blanks()
    {
        while (!rest_.empty() && rest_.front() == ' ') rest_.remove_prefix(1);
    }
    std::string_view rest_;
};

bool read_one(Reader& reader, ListedArgument& argument)
{
    if (reader.take_word("default")) return true;
    if (reader.take_text(argument.text)) {
        argument.kind = CUTWATER_TEXT;
        return true;
    }
    if (!reader.take('[')) {
        argument.kind = CUTWATER_NUMBER;
        return reader.take_number(argument.number, argument.text);
    }
    argument.kind = CUTWATER_SERIES;
    if (reader.take(']')) return true;
    do {
        double number = 0;
        std::string written;
        if (!reader.take_number(number, written)) return false;
        argument.series.push_back(number);
        argument.written.push_back(written);
    } while (reader.take(','));
    return reader.take(']');
}

}  // namespace

std::optional<std::vector<ListedArgument>> read_argument_list(std::string_view text)
{
    std::vector<ListedArgument> list;
    Reader reader(text);
    if (reader.at_end()) return list;
    do {
        list.emplace_back();
        if (!read_one(reader, list.back())) return std::nullopt;
    } while (reader.take(','));
    if (!reader.at_end()) return std::nullopt;
    return list;
}

double written_precision(std::string_view number)
{
    const std::size_t mark = std::min(number.find_first_of("eE"), number.size());
    const std::string_view digits = number.substr(0, mark);
    int exponent = 0;
    if (mark < number.size()) {
        std::string_view power = number;
        power.remove_prefix(mark + 1);
        if (power.starts_with('+')) power.remove_prefix(1);
        std::from_chars(power.data(), power.data() + power.size(), exponent);
    }
    const std::size_t point = digits.find('.');
    if (point != std::string_view::npos) exponent -= static_cast<int>(digits.size() - point - 1);
    return 0.5 * elementary::exp10(exponent);
}

}  // namespace cutwater

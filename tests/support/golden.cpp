#include "support/golden.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <stdexcept>

namespace cutwater::test {
namespace {

struct State {
    std::string source;
    double within = 0;
    bool relative = true;
};

std::string trimmed(const std::string& text)
{
    const auto begin = text.find_first_not_of(" \t\r");
    if (begin == std::string::npos) return "";
    return text.substr(begin, text.find_last_not_of(" \t\r") - begin + 1);
}

[[noreturn]] void fail(const std::string& where, const std::string& line)
{
    throw std::runtime_error(where + ": cannot read: " + line);
}

std::vector<ListedArgument> list(const std::string& text, const std::string& where)
{
    const auto read = read_argument_list(text);
    if (!read) fail(where, text);
    return *read;
}

GoldenCase read_case(std::string line, const State& state, const std::string& where)
{
    GoldenCase made;
    made.where = where;
    made.source = state.source;
    made.within = state.within;
    made.relative = state.relative;
    made.call = line;
    if (made.source.empty()) throw std::runtime_error(where + ": no source is in force");
    if (line.starts_with("refused:")) {
        made.refused = true;
        line = trimmed(line.substr(8));
    }
    const auto open = line.find('(');
    const auto close = line.rfind(')');
    if (open == std::string::npos || close == std::string::npos || close < open) fail(where, line);
    made.function = trimmed(line.substr(0, open));
    made.arguments = list(line.substr(open + 1, close - open - 1), where);
    const std::string rest = trimmed(line.substr(close + 1));
    if (made.refused)
        made.blamed = rest.starts_with(":") ? trimmed(rest.substr(1)) : "";
    else if (rest.starts_with("="))
        made.expected = list(trimmed(rest.substr(1)), where);
    else
        fail(where, line);
    return made;
}

}  // namespace

std::vector<GoldenCase> golden_cases()
{
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator(CUTWATER_REFERENCE_FOLDER))
        if (entry.path().extension() == ".txt") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    std::vector<GoldenCase> cases;
    for (const auto& path : files) {
        std::ifstream file(path);
        State state;
        std::string line;
        for (int number = 1; std::getline(file, line); ++number) {
            const std::string where = path.filename().string() + ":" + std::to_string(number);
            line = trimmed(line);
            // What argues why a function has no outside witness is for the validation record alone.
            if (line.empty() || line.starts_with("#") || line.starts_with("no outside witness:")) continue;
            if (line.starts_with("source:")) {
                state.source = trimmed(line.substr(7));
            } else if (line.starts_with("within:")) {
                std::size_t end = 0;
                const std::string bound = trimmed(line.substr(7));
                state.within = std::stod(bound, &end);
                const std::string sort = trimmed(bound.substr(end));
                if (sort != "relative" && sort != "absolute") fail(where, line);
                state.relative = sort == "relative";
            } else {
                cases.push_back(read_case(line, state, where));
            }
        }
    }
    return cases;
}

}  // namespace cutwater::test

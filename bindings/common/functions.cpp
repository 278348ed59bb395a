#include "common/functions.hpp"

#include <algorithm>
#include <limits>
#include <stdexcept>

namespace cutwater_door {
namespace {

std::vector<Function> functions()
{
    std::vector<Function> list(static_cast<std::size_t>(cutwater_function_count()));
    for (std::size_t i = 0; i < list.size(); ++i) {
        Function& f = list[i];
        f.position = static_cast<std::int32_t>(i);
        f.name = cutwater_function_name(f.position);
        for (std::int32_t k = 0; k < cutwater_input_count(f.position); ++k)
            f.inputs.push_back(cutwater_input_kind(f.position, k));
        for (std::int32_t k = 0; k < cutwater_result_count(f.position); ++k) {
            f.results.push_back(cutwater_result_kind(f.position, k));
            f.has_series_result = f.has_series_result || f.results.back() == CUTWATER_SERIES;
        }
        if (f.inputs.size() > most_inputs || f.results.size() > most_results)
            throw std::length_error(f.name + " has more inputs or results than this door has room for");
    }
    return list;
}

std::vector<Question> questions()
{
    std::vector<Question> list(static_cast<std::size_t>(cutwater_question_count()));
    for (std::size_t i = 0; i < list.size(); ++i) {
        const auto position = static_cast<std::int32_t>(i);
        cutwater_question_info info{};
        info.size = sizeof info;
        cutwater_describe_question(position, &info);
        Question& q = list[i];
        q.name = info.name;
        q.layout = info.layout;
        cutwater_question_part part{};
        part.size = sizeof part;
        for (std::int32_t k = 0; k < info.arguments; ++k) {
            cutwater_describe_question_argument(position, k, &part);
            q.arguments.emplace_back(part.name);
            q.asked.push_back(part.asked);
            q.takes_rest = part.asked == CUTWATER_ASKED_ARGUMENTS;
        }
        for (std::int32_t k = 0; k < info.results; ++k) {
            cutwater_describe_question_result(position, k, &part);
            q.results.emplace_back(part.name);
        }
    }
    return list;
}

const std::vector<Question>& all_questions()
{
    static const std::vector<Question> list = questions();
    return list;
}

std::string lower(std::string_view text)
{
    std::string made(text);
    std::transform(made.begin(), made.end(), made.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return made;
}

}  // namespace

const Function* function_at(std::int32_t position)
{
    static const std::vector<Function> list = functions();
    return position >= 0 && static_cast<std::size_t>(position) < list.size() ? &list[static_cast<std::size_t>(position)]
                                                                             : nullptr;
}

const Function* function_named(std::string_view name, cutwater_refusal& refusal)
{
    const std::string wanted = lower(name);
    if (wanted.empty()) {
        refuse(CUTWATER_UNKNOWN_FUNCTION, "The name of a function must be given, as a text.", refusal);
        return nullptr;
    }
    if (wanted.find('\0') == std::string::npos)
        if (const Function* found = function_at(cutwater_find(wanted.c_str()))) return found;
    cutwater_call(wanted.c_str(), nullptr, 0, nullptr, 0, &refusal);  // the library's own sentence
    return nullptr;
}

const Question* question_at(std::int32_t position)
{
    const auto& list = all_questions();
    return position >= 0 && static_cast<std::size_t>(position) < list.size() ? &list[static_cast<std::size_t>(position)]
                                                                             : nullptr;
}

std::int32_t question_named(std::string_view name)
{
    const std::string wanted = lower(name);
    const auto& list = all_questions();
    const auto at = std::find_if(list.begin(), list.end(), [&](const Question& q) { return q.name == wanted; });
    return at == list.end() ? -1 : static_cast<std::int32_t>(at - list.begin());
}

cutwater_status refuse(cutwater_status status, std::string_view sentence, cutwater_refusal& refusal)
{
    constexpr double infinite = std::numeric_limits<double>::infinity();
    refusal = cutwater_refusal{};
    refusal.status = status;
    refusal.argument = -1;
    refusal.element = -1;
    refusal.value = std::numeric_limits<double>::quiet_NaN();
    refusal.low = -infinite;
    refusal.high = infinite;
    refusal.low_open = refusal.high_open = 1;
    std::size_t length = std::min(sentence.size(), sizeof refusal.message - 1);
    while (length < sentence.size() && length > 0 && (static_cast<unsigned char>(sentence[length]) & 0xC0U) == 0x80U)
        --length;
    std::copy_n(sentence.data(), length, refusal.message);
    return status;
}

std::string place_of(const Function& function, std::size_t input, std::int64_t element)
{
    std::string text = function.name + ": " + cutwater_input_name(function.position, static_cast<std::int32_t>(input));
    if (element >= 0) text += ", point " + std::to_string(element + 1) + " (counted from 1)";
    return text;
}

}  // namespace cutwater_door

#include "registration.hpp"

#include "common/functions.hpp"

#include <algorithm>

namespace cutwater::excel {
namespace {

std::string capitals(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(),
                   [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
    return text;
}

std::string sentence(std::string text)
{
    if (text.empty()) return text;
    text.front() = capitals(text.substr(0, 1)).front();
    if (text.back() != '.') text += '.';
    return text;
}

/// Cut at a blank, with a sign that it was; the texts are UTF-8, and bytes are no fewer than characters.
std::string cut(const std::string& text)
{
    if (text.size() <= longest_told) return text;
    constexpr const char* tail = " ...";
    return text.substr(0, text.rfind(' ', longest_told - 4)) + tail;
}

/// The first that fits, else the last cut short.
std::string fitting(const std::vector<std::string>& texts)
{
    const auto fits = std::find_if(texts.begin(), texts.end(),
                                   [](const std::string& t) { return t.size() <= longest_told; });
    return fits != texts.end() ? *fits : cut(texts.back());
}

std::string joined(const std::vector<std::string>& names)
{
    std::string made;
    for (const std::string& name : names) made += (made.empty() ? "" : ",") + name;
    return made;
}

std::string types(std::size_t arguments) { return std::string(arguments + 1, 'Q') + "$"; }

std::string results_text(std::int32_t function, std::int32_t count, bool units_only)
{
    std::string text = count == 1 ? "Gives" : "Gives side by side";
    cutwater_result_info out{};
    out.size = sizeof out;
    for (std::int32_t i = 0; i < count; ++i) {
        cutwater_describe_result(function, i, &out);
        text += std::string(i ? "; " : " ") + (units_only ? out.name : out.meaning);
        if (!units_only && *out.unit) text += std::string(" in ") + out.unit;
        if (out.kind == CUTWATER_SERIES) text += ", down a column";
    }
    return text + ".";
}

Registration function_registration(std::int32_t position)
{
    cutwater_function_info f{};
    f.size = sizeof f;
    cutwater_describe_function(position, &f);
    Registration made;
    made.procedure = made.name = capitals(f.name);
    made.types = types(static_cast<std::size_t>(f.inputs));
    made.category = fitting({std::string("Cutwater: ") + f.family_title});
    const std::string meaning = sentence(f.meaning);
    made.help = fitting({meaning + " " + results_text(position, f.results, false),
                         meaning + " " + results_text(position, f.results, true), meaning});
    std::vector<std::string> names;
    std::vector<std::string> short_names;
    cutwater_input_info in{};
    in.size = sizeof in;
    for (std::int32_t i = 0; i < f.inputs; ++i) {
        cutwater_describe_input(position, i, &in);
        names.emplace_back(in.name);
        short_names.emplace_back(in.short_name);
        const std::string told = sentence(in.meaning);
        const std::string permitted = std::string("Permitted: ") + in.permitted + ".";
        made.argument_help.push_back(
            fitting({*in.quantity ? told + " " + sentence(in.takes) + " " + permitted : told + " " + permitted,
                     told + " " + permitted, sentence(in.short_name) + " " + permitted, told}));
    }
    made.arguments = fitting({joined(names), joined(short_names)});
    return made;
}

Registration question_registration(std::int32_t position)
{
    cutwater_question_info q{};
    q.size = sizeof q;
    cutwater_describe_question(position, &q);
    Registration made;
    made.procedure = made.name = capitals(q.name);
    made.category = "Cutwater: answers";
    made.help = fitting({sentence(q.meaning)});
    std::vector<std::string> names;
    cutwater_question_part part{};
    part.size = sizeof part;
    for (std::int32_t i = 0; i < q.arguments; ++i) {
        cutwater_describe_question_argument(position, i, &part);
        const bool rest = part.asked == CUTWATER_ASKED_ARGUMENTS;
        for (int k = 1; k <= (rest ? CUTWATER_MOST_INPUTS : 1); ++k) {
            names.push_back(rest ? "arg" + std::to_string(k) : std::string(part.name));
            made.argument_help.push_back(fitting({sentence(part.meaning)}));
        }
    }
    made.types = types(names.size());
    made.arguments = fitting({joined(names)});
    return made;
}

}  // namespace

std::vector<Registration> registrations()
{
    std::vector<Registration> list;
    for (std::int32_t i = 0; i < cutwater_function_count(); ++i) list.push_back(function_registration(i));
    for (std::int32_t i = 0; i < cutwater_question_count(); ++i) list.push_back(question_registration(i));
    return list;
}

std::string calc_name(const std::string& name) { return "ORG.CUTWATER.CALC." + name; }

}  // namespace cutwater::excel

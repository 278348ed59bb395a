#include "ask.hpp"

#include <com/sun/star/lang/IllegalArgumentException.hpp>

#include <algorithm>
#include <cstring>

namespace cutwater::calc {
namespace {

constexpr std::size_t usual_points = 64;

}  // namespace

cutwater_status ask(std::int32_t function, std::span<const Any* const> given, Answer& answer)
{
    Arguments arguments;
    if (const auto status = arguments.read(function, given, answer.refusal); status != CUTWATER_OK) return status;
    const auto count = static_cast<std::size_t>(cutwater_result_count(function));
    answer.results.assign(count, cutwater_result{});
    answer.series.resize(count);
    for (std::size_t i = 0; i < count; ++i)
        if (cutwater_result_kind(function, static_cast<std::int32_t>(i)) == CUTWATER_SERIES) answer.series[i].resize(usual_points);
    for (;;) {
        bool grown = false;
        for (std::size_t i = 0; i < count; ++i) {
            answer.results[i].series = answer.series[i].data();
            answer.results[i].capacity = answer.series[i].size();
        }
        const auto status = cutwater_call_at(function, arguments.values().data(), arguments.values().size(),
                                             answer.results.data(), count, &answer.refusal);
        if (status != CUTWATER_BUFFER_TOO_SMALL) return status;
        for (std::size_t i = 0; i < count; ++i)
            if (answer.results[i].length > answer.series[i].size()) {
                answer.series[i].resize(answer.results[i].length);
                grown = true;
            }
        if (!grown) return status;
    }
}

std::int32_t function_called(const Any& given)
{
    std::string name = text_in(unwrapped(given)).value_or("");
    std::transform(name.begin(), name.end(), name.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    if (name.empty()) throw_refused("The name of a function must be given, as a text.");
    const std::int32_t function = cutwater_find(name.c_str());
    if (function < 0) throw_refused("There is no function \"" + name + "\".");
    return function;
}

std::vector<const Any*> pointers(const Row& row)
{
    std::vector<const Any*> made;
    for (sal_Int32 i = 0; i < row.getLength(); ++i) made.push_back(&row[i]);
    return made;
}

Any not_available()
{
    const std::uint64_t bits = 0x7ff0000000000000U | 32767U;  // an error's code as the payload of a NaN
    double number = 0;
    std::memcpy(&number, &bits, sizeof number);
    return Any(number);
}

rtl::OUString text_for_cell(const std::string& text)
{
    return rtl::OUString(text.data(), static_cast<sal_Int32>(text.size()), RTL_TEXTENCODING_UTF8);
}

void throw_refused(const std::string& sentence, std::int32_t argument)
{
    throw com::sun::star::lang::IllegalArgumentException(text_for_cell(sentence), {}, static_cast<sal_Int16>(argument));
}

}  // namespace cutwater::calc

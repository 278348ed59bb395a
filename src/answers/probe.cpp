#include "answers/probe.hpp"

#include "catalogue/refusal.hpp"

#include <fmt/format.h>

namespace cutwater {

std::size_t find_result(const FunctionText& f, std::string_view name) noexcept
{
    for (std::size_t j = 0; j < f.results.size(); ++j) {
        const ResultInfo& out = f.results[j];
        if (name.empty() ? out.kind == Kind::quantity : name == out.name || name == out.full_name) return j;
    }
    return f.results.size();
}

cutwater_status choose_result(const FunctionText& f, const char* name, std::size_t& result, cutwater_refusal* refusal) noexcept
{
    const std::string_view wanted = name ? name : "";
    result = find_result(f, wanted);
    if (result < f.results.size() && f.results[result].kind == Kind::quantity) return CUTWATER_OK;
    char sentence[240];
    if (result < f.results.size())
        *fmt::format_to_n(sentence, sizeof sentence - 1, "{}: {} is not a single number.", f.name, f.results[result].full_name).out = 0;
    else if (wanted.empty())
        *fmt::format_to_n(sentence, sizeof sentence - 1, "{} has no result that is a single number.", f.name).out = 0;
    else
        *fmt::format_to_n(sentence, sizeof sentence - 1, "{} has no result \"{:.60}\"; its first is {}.", f.name, wanted,
                          f.results[0].full_name)
             .out = 0;
    return refuse(CUTWATER_WRONG_KIND, sentence, refusal);
}

}  // namespace cutwater

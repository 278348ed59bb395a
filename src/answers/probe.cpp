#include "answers/probe.hpp"

#include "catalogue/sentence.hpp"

namespace cutwater {

std::size_t find_result(const FunctionText& f, std::string_view name) noexcept
{
    for (std::size_t j = 0; j < f.results.size(); ++j) {
        const ResultInfo& out = f.results[j];
        if (name.empty() ? out.kind == Kind::quantity : name == out.name || name == out.full_name) return j;
    }
    return f.results.size();
}

cutwater_status choose_result(const FunctionText& f, const char* name, std::size_t& result,
                              cutwater_refusal* refusal) noexcept
{
    const std::string_view wanted = name ? name : "";
    result = find_result(f, wanted);
    if (result < f.results.size() && f.results[result].kind == Kind::quantity) return CUTWATER_OK;
    if (result < f.results.size())
        return refuse_saying(CUTWATER_WRONG_KIND, refusal, "{}: {} is not a single number.", f.name,
                             f.results[result].full_name);
    if (wanted.empty())
        return refuse_saying(CUTWATER_WRONG_KIND, refusal, "{} has no result that is a single number.", f.name);
    return refuse_saying(CUTWATER_WRONG_KIND, refusal, "{} has no result \"{}\"; its first is {}.", f.name,
                         Quoted(wanted).view(), f.results[0].full_name);
}

}  // namespace cutwater

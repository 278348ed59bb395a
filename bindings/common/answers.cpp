#include "common/answers.hpp"

#include <algorithm>
#include <limits>

namespace cutwater_door {

cutwater_status working_of(const char* function, Values values, std::int32_t form, std::string& text,
                           cutwater_refusal& refusal)
{
    text.resize(4096);
    for (;;) {
        std::size_t needed = 0;
        const auto status = cutwater_working(function, values.data, values.count, form, text.data(), text.size(),
                                             &needed, &refusal);
        if (needed < text.size()) {
            text.resize(needed);
            return status;
        }
        text.resize(needed + 1);
    }
}

std::string text_of_refusal(const cutwater_refusal& refusal, std::int32_t form)
{
    std::string text(2048, '\0');
    std::size_t needed = 0;
    while (cutwater_refusal_text(&refusal, form, text.data(), text.size(), &needed) == CUTWATER_BUFFER_TOO_SMALL)
        text.resize(needed + 1);
    text.resize(needed);
    return text;
}

Search::Search() : low(std::numeric_limits<double>::quiet_NaN()), high(low) {}

cutwater_status solution_of(const Function& function, Values values, const Search& search, double& found,
                            cutwater_refusal& refusal)
{
    return cutwater_solve_for(function.name.c_str(), values.data, values.count, search.unknown, search.result,
                              &search.target, search.low, search.high, &found, &refusal);
}

cutwater_status solutions_of(const Function& function, Values values, const Search& search, std::vector<double>& roots,
                             cutwater_refusal& refusal)
{
    roots.resize(16);
    for (;;) {
        std::size_t count = 0;
        const auto status = cutwater_solutions(function.name.c_str(), values.data, values.count, search.unknown,
                                               search.result, &search.target, search.low, search.high, roots.data(),
                                               roots.size(), &count, &refusal);
        if (status == CUTWATER_BUFFER_TOO_SMALL && count > roots.size()) {
            roots.resize(count);
            continue;
        }
        roots.resize(status == CUTWATER_OK ? std::min(count, roots.size()) : 0);
        return status;
    }
}

cutwater_status uncertainty_of(const Function& function, Values values, Values uncertainties,
                               cutwater_uncertainty_options options, Uncertainty& answer, cutwater_refusal& refusal)
{
    answer.shares.assign(function.inputs.size(), 0);
    answer.slopes.assign(function.inputs.size(), 0);
    answer.report = {};
    answer.report.size = sizeof answer.report;
    answer.report.shares = answer.shares.data();
    answer.report.slopes = answer.slopes.data();
    options.size = sizeof options;
    return cutwater_uncertainty(function.name.c_str(), values.data, values.count, uncertainties.data,
                                uncertainties.count, &options, &answer.report, &refusal);
}

cutwater_status sensitivity_of(const Function& function, Values values, const char* result,
                               std::vector<cutwater_sensitivity_row>& rows, cutwater_refusal& refusal)
{
    rows.resize(function.inputs.size());
    std::size_t count = 0;
    const auto status = cutwater_sensitivity(function.name.c_str(), values.data, values.count, result, rows.data(),
                                             rows.size(), &count, nullptr, &refusal);
    rows.resize(status == CUTWATER_OK ? std::min(count, rows.size()) : 0);
    return status;
}

std::vector<std::int32_t> functions_found(const std::string& words, cutwater_refusal& refusal)
{
    std::vector<std::int32_t> found(64);
    std::size_t count = 0;
    if (cutwater_find_function(words.c_str(), found.data(), found.size(), &count, &refusal) != CUTWATER_OK) count = 0;
    found.resize(std::min(count, found.size()));
    return found;
}

}  // namespace cutwater_door

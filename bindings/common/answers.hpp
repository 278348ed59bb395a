// The other answers of a function, with room that grows to what they need. values: the call's arguments, as they were
// read.
#pragma once

#include "common/functions.hpp"

#include <cutwater/answers.h>

namespace cutwater_door {

struct Values {
    const cutwater_value* data = nullptr;
    std::size_t count = 0;
};

/// The text of a call, or of its refusal; the status is the call's.
cutwater_status working_of(const char* function, Values values, std::int32_t form, std::string& text,
                           cutwater_refusal& refusal);
/// The same for a call that could not be made.
std::string text_of_refusal(const cutwater_refusal& refusal, std::int32_t form);

struct Search {
    const char* unknown = nullptr;
    const char* result = nullptr;  // null for the first that is a number
    cutwater_value target{};
    double low;  // NaN for the record's end
    double high;

    Search();
};

cutwater_status solution_of(const Function& function, Values values, const Search& search, double& found,
                            cutwater_refusal& refusal);
cutwater_status solutions_of(const Function& function, Values values, const Search& search, std::vector<double>& roots,
                             cutwater_refusal& refusal);

struct Uncertainty {
    cutwater_uncertainty_report report{};
    std::vector<double> shares;
    std::vector<double> slopes;
};

cutwater_status uncertainty_of(const Function& function, Values values, Values uncertainties,
                               cutwater_uncertainty_options options, Uncertainty& answer, cutwater_refusal& refusal);

cutwater_status sensitivity_of(const Function& function, Values values, const char* result,
                               std::vector<cutwater_sensitivity_row>& rows, cutwater_refusal& refusal);

std::vector<std::int32_t> functions_found(const std::string& words, cutwater_refusal& refusal);

}  // namespace cutwater_door

// One result of a function as a plain function of its inputs: what solving, uncertainty and sensitivity ask again and
// again.
#pragma once

#include "call/arguments.hpp"
#include "catalogue/prose.hpp"

#include <limits>

namespace cutwater {

/// Position of a result by its name, with or without its unit; for an empty name the first that is a number.
/// results.size() when there is none.
std::size_t find_result(const FunctionText& f, std::string_view name) noexcept;

/// The same with a refusal for a name that is not there, and for one that is not a number.
cutwater_status choose_result(const FunctionText& f, const char* name, std::size_t& result,
                              cutwater_refusal* refusal) noexcept;

class Probe {
public:
    Probe(const FunctionInfo& f, const GivenInputs& inputs, std::size_t result) : given(inputs), f_(&f), result_(result)
    {
    }

    /// NaN when the call is refused. A series among the results needs no room for the others to be computed.
    double operator()()
    {
        const cutwater_status status = f_->call(given.data(), results_.data(), nullptr, nullptr);
        return status == CUTWATER_OK || status == CUTWATER_BUFFER_TOO_SMALL ? results_[result_].number
                                                                            : std::numeric_limits<double>::quiet_NaN();
    }

    /// The same with what a refused call has to say.
    cutwater_status ask(double& value, cutwater_refusal* refusal)
    {
        cutwater_status status = f_->call(given.data(), results_.data(), nullptr, refusal);
        if (status == CUTWATER_BUFFER_TOO_SMALL) status = CUTWATER_OK;
        value = status == CUTWATER_OK ? results_[result_].number : std::numeric_limits<double>::quiet_NaN();
        return status;
    }

    GivenInputs given;

private:
    const FunctionInfo* f_;
    std::size_t result_;
    std::array<Result, most_results> results_{};
};

}  // namespace cutwater

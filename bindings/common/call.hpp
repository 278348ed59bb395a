// A call by position whose series results find room: their buffers grow to what the library says is needed.
#pragma once

#include "common/functions.hpp"

namespace cutwater_door {

class Call {
public:
    cutwater_status run(const Function& function, const cutwater_value* values, std::size_t count)
    {
        return function.has_series_result ? growing(function, values, count) : once(function, values, count);
    }

    const cutwater_result& result(std::size_t i) const { return results_[i]; }
    const cutwater_refusal& refusal() const { return refusal_; }

private:
    cutwater_status once(const Function& function, const cutwater_value* values, std::size_t count)
    {
        return cutwater_call_at(function.position, values, count, results_, function.results.size(), &refusal_);
    }
    cutwater_status growing(const Function& function, const cutwater_value* values, std::size_t count);

    cutwater_result results_[most_results];
    std::vector<std::vector<double>> buffers_;
    cutwater_refusal refusal_;
};

}  // namespace cutwater_door

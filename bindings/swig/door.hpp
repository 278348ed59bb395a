// What every language's door is made of. A language completes Given, an argument as it came, and Answer, what its call
// gives back; cutwater.i and the generated functions.i know no more of them than their names.
#pragma once

#include <cutwater/library.h>

#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace cutwater_door {

inline constexpr std::size_t most_inputs = 32;
inline constexpr std::size_t most_results = 16;

/// What a door must know of a function on every call, asked of the library once.
struct Function {
    std::int32_t position = -1;
    std::string name;
    std::vector<std::int32_t> inputs;   // cutwater_kind
    std::vector<std::int32_t> results;  // cutwater_kind
    bool has_series_result = false;
};

/// Null for a position that is not there.
const Function *function_at(std::int32_t position);

/// A call by position whose series results find room: their buffers grow to what the library says is needed.
class Call {
public:
    cutwater_status run(const Function &function, const cutwater_value *values, std::size_t count);

    const cutwater_result &result(std::size_t i) const { return results_[i]; }
    const cutwater_refusal &refusal() const { return refusal_; }

private:
    cutwater_status once(const Function &function, const cutwater_value *values, std::size_t count);

    cutwater_result results_[most_results];
    std::vector<std::vector<double>> buffers_;
    cutwater_refusal refusal_;
};

}  // namespace cutwater_door

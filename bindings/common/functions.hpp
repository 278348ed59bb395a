// What every door knows of the library, asked of it once through the flat C API.
#pragma once

#include <cutwater/library.h>

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace cutwater_door {

inline constexpr std::size_t most_inputs = CUTWATER_MOST_INPUTS;
inline constexpr std::size_t most_results = CUTWATER_MOST_RESULTS;

struct Function {
    std::int32_t position = -1;
    std::string name;
    std::vector<std::int32_t> inputs;   // cutwater_kind
    std::vector<std::int32_t> results;  // cutwater_kind
    bool has_series_result = false;
};

/// Null for a position that is not there.
const Function* function_at(std::int32_t position);

/// By its name, letter case aside; null and a refusal when there is none.
const Function* function_named(std::string_view name, cutwater_refusal& refusal);

/// One of the calls that are not one formula.
struct Question {
    std::string name;
    std::vector<std::int32_t> asked;  // cutwater_asked, an argument each
    std::vector<std::string> arguments;
    std::vector<std::string> results;
    std::int32_t layout = CUTWATER_ONE;
    bool takes_rest = false;  // its last argument is all the further ones
};

/// Null for a position that is not there.
const Question* question_at(std::int32_t position);
/// -1 when there is none of that name.
std::int32_t question_named(std::string_view name);

/// Fills a refusal that the library did not make; cut at a character's border.
cutwater_status refuse(cutwater_status status, std::string_view sentence, cutwater_refusal& refusal);

/// "npsh_available: vapour_pressure_bara", with ", point 3 (counted from 1)" for an element.
std::string place_of(const Function& function, std::size_t input, std::int64_t element = -1);

}  // namespace cutwater_door

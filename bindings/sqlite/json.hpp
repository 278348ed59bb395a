// A series as a JSON array, to the last bit both ways; SQLite's own JSON functions keep 15 digits of a number.
#pragma once

#include "host.hpp"

#include "common/functions.hpp"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

namespace cutwater_door {

using Json = nlohmann::ordered_json;

bool begins_array(std::string_view text);

/// Cells of numbers, texts and nothing (null); what is no such array becomes Kind::other and says why.
Given read_array(std::string_view text);

Json array_of(const double* numbers, std::size_t count);
std::string written(const Json& json);

}  // namespace cutwater_door

// The statuses by name and meaning: the C header, every language's names and the guide come from here.
#pragma once

#include <span>

namespace cutwater {

struct StatusInfo {
    int value;
    const char* name;  // without the C API's lead
    const char* meaning;
};

/// In the order of their values, from 0 without a gap.
std::span<const StatusInfo> statuses() noexcept;

}  // namespace cutwater

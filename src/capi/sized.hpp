// Structures that begin with their size: a caller may have been compiled against a header that knew fewer fields, or
// more.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstring>

namespace cutwater::capi {

inline constexpr std::size_t most_unknown = 1024;  // bytes that a later header may have added; more is no size

/// The caller's struct as this library knows it, what the caller's header did not know being 0. False where the size
/// cannot be, or where the caller asks, past what this library knows, for anything but 0.
template <class T>
bool read_sized(const T& given, std::size_t least, T& own)
{
    own = T{};
    if (given.size < least || given.size > sizeof own + most_unknown) return false;
    std::memcpy(&own, &given, std::min(given.size, sizeof own));
    own.size = sizeof own;
    const char* const bytes = reinterpret_cast<const char*>(&given);
    return given.size <= sizeof own ||
           std::all_of(bytes + sizeof own, bytes + given.size, [](char byte) { return byte == 0; });
}

/// Gives back those fields that the caller's header knows.
template <class T>
void write_sized(const T& own, T& given)
{
    const std::size_t size = given.size;
    std::memcpy(&given, &own, std::min(size, sizeof own));
    given.size = size;
}

}  // namespace cutwater::capi

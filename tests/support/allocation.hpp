// Counts the program's allocations, also those of the shared library, and lets them fail.
#pragma once

#include <atomic>

namespace cutwater::test {

inline std::atomic<long> allocations{0};
/// How many more succeed; below 0 all do.
inline std::atomic<long> allocations_left{-1};

}  // namespace cutwater::test

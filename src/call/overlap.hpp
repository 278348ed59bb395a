// Whether the columns of an array call share memory.
#pragma once

#include <cstddef>
#include <cstdint>

namespace cutwater {

/// Where a strided column of doubles lies: its lowest address, and bytes from one number to the next.
struct Place {
    std::uintptr_t begin;
    std::uintptr_t step;
    std::size_t count;

    Place(const double* data, std::size_t numbers, std::ptrdiff_t stride);
    std::uintptr_t last() const { return begin + step * (count - 1); }
};

bool overlap(const Place& one, const Place& other);

}  // namespace cutwater

// Numbers as the caller keeps them, never copied.
#pragma once

#include <cstddef>

namespace cutwater {

struct RawSeries {
    const double* data = nullptr;
    std::size_t length = 0;
    std::ptrdiff_t stride = 1;

    double operator[](std::size_t i) const { return data[static_cast<std::ptrdiff_t>(i) * stride]; }
};

}  // namespace cutwater

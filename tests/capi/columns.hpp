// Columns of three blocks, the last one odd, and when two numbers are the same to a test.
#pragma once

#include <bit>
#include <cstddef>
#include <cstdint>
#include <random>
#include <vector>

namespace columns {

inline constexpr std::size_t rows = 2731;

inline std::vector<double> drawn(double low, double high, unsigned seed)
{
    std::mt19937_64 random(seed);
    std::uniform_real_distribution<double> between(low, high);
    std::vector<double> column(rows);
    for (double& x : column) x = between(random);
    return column;
}

inline bool same(double a, double b)
{
    return std::bit_cast<std::uint64_t>(a) == std::bit_cast<std::uint64_t>(b) || (a != a && b != b);
}

}  // namespace columns

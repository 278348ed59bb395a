// Philox4x64-10, a counter-based generator (Salmon, Moraes, Dror, Shaw: Parallel random numbers: as easy as 1, 2, 3;
// SC11). Streams of one seed are independent, and the same seed gives the same bits on every machine.
#pragma once

#include <array>
#include <cstdint>

namespace cutwater {

class Philox {
public:
    using result_type = std::uint64_t;
    using Block = std::array<std::uint64_t, 4>;

    Philox(std::uint64_t seed, std::uint64_t stream) : key_{seed, stream} {}

    static constexpr result_type min() { return 0; }
    static constexpr result_type max() { return ~result_type{0}; }

    result_type operator()()
    {
        if (used_ == 4) {
            block_ = block(counter_, key_);
            if (++counter_[0] == 0) ++counter_[1];
            used_ = 0;
        }
        return block_[used_++];
    }

    static Block block(Block c, std::array<std::uint64_t, 2> k)
    {
        for (int round = 0; round < 10; ++round) {
            const Wide a = wide(0xD2E7470EE14C6C93u, c[0]);
            const Wide b = wide(0xCA5A826395121157u, c[2]);
            c = {b.high ^ c[1] ^ k[0], b.low, a.high ^ c[3] ^ k[1], a.low};
            k[0] += 0x9E3779B97F4A7C15u;
            k[1] += 0xBB67AE8584CAA73Bu;
        }
        return c;
    }

private:
    struct Wide {
        std::uint64_t high, low;
    };
    static Wide wide(std::uint64_t x, std::uint64_t y)
    {
#if defined(__SIZEOF_INT128__)
        __extension__ using Int128 = unsigned __int128;
        const Int128 product = static_cast<Int128>(x) * y;
        return {static_cast<std::uint64_t>(product >> 64), static_cast<std::uint64_t>(product)};
#else
        const std::uint64_t x0 = x & 0xFFFFFFFFu, x1 = x >> 32, y0 = y & 0xFFFFFFFFu, y1 = y >> 32;
        const std::uint64_t low = x0 * y0, mid1 = x1 * y0, mid2 = x0 * y1;
        const std::uint64_t carry = ((low >> 32) + (mid1 & 0xFFFFFFFFu) + (mid2 & 0xFFFFFFFFu)) >> 32;
        return {x1 * y1 + (mid1 >> 32) + (mid2 >> 32) + carry, x * y};
#endif
    }

    std::array<std::uint64_t, 2> key_;
    Block counter_{};
    Block block_{};
    unsigned used_ = 4;
};

}  // namespace cutwater

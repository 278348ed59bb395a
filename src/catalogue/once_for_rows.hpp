// What a formula computes once for all rows of an array.
#pragma once

namespace cutwater {

/// From the inputs that all rows share, its series and words. A formula that gains by it specialises this: with a
/// constructor that takes those inputs and a call that takes the others, each in the formula's order. The call returns
/// what the formula returns, bit for bit. It may keep memory: a formula itself allocates nothing. With `static
/// constexpr bool straight = true` its call is const and free of branches, and rows become vectors. Where that hangs on
/// what is shared it says so by `fits_vectors()`, and `in_vectors(…)` is then the call without branches.
template <auto Formula>
struct OnceForRows {
    using Nothing = void;
};

}  // namespace cutwater

#include "support/allocation.hpp"

#include <cstdlib>
#include <new>

namespace {

void* allocate(std::size_t size) noexcept
{
    ++cutwater::test::allocations;
    if (cutwater::test::allocations_left >= 0 && cutwater::test::allocations_left-- == 0) {
        cutwater::test::allocations_left = 0;
        return nullptr;
    }
    return std::malloc(size);
}

}  // namespace

void* operator new(std::size_t size)
{
    if (void* p = allocate(size)) return p;
    throw std::bad_alloc();
}
void* operator new(std::size_t size, const std::nothrow_t&) noexcept { return allocate(size); }
void operator delete(void* p) noexcept { std::free(p); }
void operator delete(void* p, std::size_t) noexcept { std::free(p); }

#include "call/overlap.hpp"

namespace cutwater {
namespace {

constexpr std::uintptr_t width = sizeof(double);

/// Whether one number at this address shares a byte with a number of the column.
bool holds_part_of(const Place& column, std::uintptr_t address)
{
    if (address + width <= column.begin || address >= column.last() + width) return false;
    if (address < column.begin || column.step == 0) return true;
    // The numbers of the column on either side of the address.
    const std::uintptr_t past = (address - column.begin) % column.step;
    if (past < width) return true;
    return column.step - past < width && address - past + column.step <= column.last();
}

}  // namespace

Place::Place(const double* data, std::size_t numbers, std::ptrdiff_t stride)
    : begin(reinterpret_cast<std::uintptr_t>(data)), step(0), count(numbers)
{
    if (!data) count = 0;
    if (stride == 0 && count > 1) count = 1;
    if (count < 2) return;
    const auto signed_step = static_cast<std::uintptr_t>(stride) * width;  // wraps round, as addresses do
    step = stride < 0 ? 0 - signed_step : signed_step;
    if (stride < 0) begin -= step * (count - 1);
}

bool overlap(const Place& one, const Place& other)
{
    if (one.count == 0 || other.count == 0) return false;
    if (one.last() + width <= other.begin || other.last() + width <= one.begin) return false;
    if (one.step <= width && other.step <= width) return true;
    if (one.step == other.step && one.count == other.count) {  // as the columns of one matrix are: told without walking
        const std::uintptr_t apart = one.begin < other.begin ? other.begin - one.begin : one.begin - other.begin;
        const std::uintptr_t past = apart % one.step;
        return past < width || one.step - past < width;
    }
    const Place& walked = one.count <= other.count ? one : other;
    const Place& searched = one.count <= other.count ? other : one;
    for (std::size_t i = 0; i < walked.count; ++i)
        if (holds_part_of(searched, walked.begin + walked.step * i)) return true;
    return false;
}

}  // namespace cutwater

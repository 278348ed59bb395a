#include "catalogue/statuses.hpp"

#include <cstddef>

namespace cutwater {
namespace {

// A number here is an interface: a status is added at the end and none is ever given another number.
constexpr StatusInfo list[] = {
    {0, "OK", "answered"},
    {1, "NOT_FINITE", "an input is NaN or infinite"},
    {2, "OUT_OF_INTERVAL", "an input lies outside its permitted interval"},
    {3, "CONTRADICTION", "inputs do not go together"},
    {4, "NO_ANSWER", "the question has no answer, or it was not found"},
    {5, "SEVERAL_ANSWERS", "the question has more than one answer"},
    {6, "BAD_TEXT", "a text that is not a number with a unit"},
    {7, "WRONG_QUANTITY", "a unit of another quantity"},
    {8, "UNKNOWN_UNIT", "a unit that is in no table"},
    {9, "UNKNOWN_WORD", "a word that is not among the choices"},
    {10, "MISSING", "an input that has no default was left out, or a pointer is null"},
    {11, "WRONG_KIND", "a series for a number, a number for a series, a truth value"},
    {12, "BAD_SERIES", "a series too short, not rising, or with an empty point"},
    {13, "BUFFER_TOO_SMALL", "the caller's buffer; the length needed was stored"},
    {14, "OVERFLOW", "the result is not a finite number"},
    {15, "UNKNOWN_FUNCTION", "there is no function or question of that name"},
    {16, "WRONG_COUNT", "too many or too few arguments"},
    {17, "OUT_OF_MEMORY", "memory ran out"},
    {18, "INTERNAL", "the library failed inside; please report the call"},
};

constexpr bool in_order()
{
    for (std::size_t i = 0; i < std::size(list); ++i)
        if (list[i].value != static_cast<int>(i)) return false;
    return true;
}
static_assert(in_order());

}  // namespace

std::span<const StatusInfo> statuses() noexcept { return list; }

}  // namespace cutwater

#include "units/format.hpp"

#include <fmt/format.h>

#include <iterator>

namespace cutwater::erased {

std::size_t format_into(char* to, std::size_t room, fmt::string_view form, fmt::format_args values)
{
    return fmt::vformat_to_n(to, room, form, values).size;
}

void format_onto(std::string& to, fmt::string_view form, fmt::format_args values)
{
    fmt::vformat_to(std::back_inserter(to), form, values);
}

}  // namespace cutwater::erased

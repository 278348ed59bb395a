// Texts from patterns, by fmt. Its templates, which take longer to compile than all that uses them, are compiled in
// format.cpp alone: everything else sees only fmt's core.
#pragma once

#include <fmt/core.h>

#include <cstddef>
#include <string>

namespace cutwater {
namespace erased {

std::size_t format_into(char* to, std::size_t room, fmt::string_view form, fmt::format_args values);
void format_onto(std::string& to, fmt::string_view form, fmt::format_args values);

}  // namespace erased

/// Stores at most room bytes and no ending 0; answers how many bytes there were to store. Allocates nothing.
template <class... T>
std::size_t format_into(char* to, std::size_t room, fmt::format_string<T...> form, T&&... values)
{
    return erased::format_into(to, room, form, fmt::make_format_args(values...));
}

/// Appends.
template <class... T>
void format_onto(std::string& to, fmt::format_string<T...> form, T&&... values)
{
    erased::format_onto(to, form, fmt::make_format_args(values...));
}

template <class... T>
std::string formatted(fmt::format_string<T...> form, T&&... values)
{
    std::string made;
    erased::format_onto(made, form, fmt::make_format_args(values...));
    return made;
}

}  // namespace cutwater

// The generator's frame: each product is a file's path and text, made from the catalogue alone.
#pragma once

#include "catalogue/families.hpp"

#include "units/format.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace cutwater::generate {

struct Product {
    std::string path;  // below the output folder; the same path in the source tree when the product is committed
    std::string text;
};

/// First line of every product.
inline constexpr std::string_view made_by = "generated from the catalogue by cutwater-generate; do not edit";

/// Appends formatted text.
template <class... T>
void put(std::string& to, fmt::format_string<T...> form, T&&... values)
{
    format_onto(to, form, std::forward<T>(values)...);
}

/// A text broken at blanks into lines of at most that many bytes.
std::vector<std::string> wrap(std::string_view text, std::size_t width);

/// What the library itself says of an input: what is permitted of it, and what it takes.
std::string permitted_text(const InputInfo& input);
std::string kind_text(const InputInfo& input);
std::string words_text(std::span<const char* const> words);

std::string capitals(std::string_view name);

/// Begins with a capital, ends with a stop.
std::string sentence(std::string_view text);

/// Refuses what a door could not carry: names that are cell addresses, keywords, too long; missing sources. Empty when
/// all is well.
std::vector<std::string> faults_in_catalogue();
std::vector<std::string> faults_in(const std::vector<const Family*>& list);

using Maker = std::vector<Product> (*)();

/// What makes products says so beside itself, `const Registered made(make);`, and the generator's main knows none of
/// them.
struct Registered {
    explicit Registered(Maker maker);
};
std::vector<Product> all_products();

}  // namespace cutwater::generate

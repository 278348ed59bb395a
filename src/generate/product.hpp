// The generator's frame: each product is a file's path and text, made from the catalogue alone.
#pragma once

#include "catalogue/families.hpp"

#include <fmt/format.h>

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
    fmt::format_to(std::back_inserter(to), form, std::forward<T>(values)...);
}

/// A text broken at blanks into lines of at most that many bytes.
std::vector<std::string> wrap(std::string_view text, std::size_t width);

/// "from 0 to 1 bar" as pages and headers say it; "any" when every finite number will do.
std::string interval_text(const InputInfo& input);

/// Refuses what a door could not carry: names that are cell addresses, keywords, too long; missing sources. Empty when all is well.
std::vector<std::string> faults_in_catalogue();
std::vector<std::string> faults_in(const std::vector<const Family*>& list);

// One file each.
std::vector<Product> c_header();
std::vector<Product> c_bodies();
std::vector<Product> cpp_header();
std::vector<Product> swig_interface();
std::vector<Product> python_stubs();
std::vector<Product> calc_component();
std::vector<Product> reference_pages();
std::vector<Product> catalogue_json();
std::vector<Product> test_calls();

}  // namespace cutwater::generate

#include "catalogue/families.hpp"

#include "units/turning.hpp"

#include <algorithm>
#include <array>
#include <tuple>

namespace cutwater {

// One for each folder of src/formulas; the list of them is made when the build is configured.
extern const std::span<const Family* const> family_folders;

namespace {

struct Place {
    const FunctionInfo* function;
    const Family* family;
};

// Sorted once, before the first call; read only after that.
struct Index {
    std::array<const Family*, 64> families{};
    std::size_t family_count = 0;
    std::array<Place, 1024> places{};
    std::array<std::uint16_t, 1024> by_name{};
    std::size_t count = 0;

    Index()
    {
        for (const Family* family : family_folders) families.at(family_count++) = family;
        std::sort(families.begin(), families.begin() + static_cast<std::ptrdiff_t>(family_count), [](auto a, auto b) {
            return std::tuple(a->place, std::string_view(a->name)) < std::tuple(b->place, std::string_view(b->name));
        });
        for (const Family* family : std::span(families).first(family_count))
            for (const FunctionInfo* function : family->functions) places.at(count++) = {function, family};
        for (std::size_t i = 0; i < count; ++i) by_name[i] = static_cast<std::uint16_t>(i);
        std::sort(by_name.begin(), by_name.begin() + static_cast<std::ptrdiff_t>(count),
                  [this](auto a, auto b) { return name(a) < name(b); });
    }
    std::string_view name(std::size_t i) const { return places[i].function->name; }
};

const Index& index() noexcept
{
    static const Index built;
    return built;
}

}  // namespace

std::span<const Family* const> families() noexcept { return std::span(index().families).first(index().family_count); }

std::size_t function_count() noexcept { return index().count; }

const FunctionInfo& function_at(std::size_t position) noexcept { return *index().places[position].function; }

const Family& family_of(std::size_t position) noexcept { return *index().places[position].family; }

const char* function_between(const QuantityInfo& from, const QuantityInfo& to) noexcept
{
    for (const Place& place : std::span(index().places).first(index().count)) {
        const FunctionInfo& f = *place.function;
        if (f.turns && f.inputs.front().quantity == &from && f.results.front().quantity == &to) return f.name;
    }
    return nullptr;
}

std::ptrdiff_t find_function(std::string_view name) noexcept
{
    const Index& built = index();
    const auto begin = built.by_name.begin();
    const auto end = begin + static_cast<std::ptrdiff_t>(built.count);
    const auto at = std::lower_bound(begin, end, name, [&](auto i, std::string_view n) { return built.name(i) < n; });
    return at != end && built.name(*at) == name ? *at : -1;
}

}  // namespace cutwater

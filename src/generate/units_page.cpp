// docs/functions/units.md: every quantity with its units and every spelling of each that is read.
#include "generate/product.hpp"

#include "units/text.hpp"

#include <cutwater/unit_table.hpp>

#include <algorithm>

namespace cutwater::generate {
namespace {

constexpr std::string_view introduction = R"(
What a text may carry beside its number, a list a quantity. A bare number has the unit that the input's name ends in;
the unit in the first row is the one that refusals suggest. `convert_unit` and `quantity` turn one unit of a list into
another of the same list and nothing else: gauge and absolute pressure are two quantities, and so are a temperature
and a difference of temperature.

Not told apart: blanks (`m3/h`, `m3 / h`), raised and plain digits (`m²`, `m2`, `m^2`), points and blanks between the
parts of a product, micro and degree signs (`µm`, `um`; `°C`, `degC`). Capitals are looked at first as they are
written; where no unit fits, they are taken as small ones if only one unit can be meant. The decimal sign may be a
point or a comma ("18,5 m3/h"); a comma that could group digits ("1,000") is refused, and so is everything that is not
listed here.
)";

/// Spellings as code, so that quotes, points and raised digits stand as they are typed.
std::string spellings(const UnitInfo& unit)
{
    std::string made;
    std::string_view rest = unit.aliases;
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find('|'), rest.size());
        put(made, "{}`{}`", made.empty() ? "" : ", ", rest.substr(0, end));
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return made;
}

/// A scale with a zero of its own is told at 100, where a mistaken zero would show.
std::string worth(const UnitInfo& unit, const UnitInfo& first)
{
    const double amount = unit.offset == 0 && first.offset == 0 ? 1 : 100;
    return formatted("{} = {:.10g} {}", amount, rescale(amount, unit, first), first.symbol);
}

std::vector<Product> units_page()
{
    std::string page;
    put(page, "<!-- {} -->\n\n# Units\n{}", made_by, introduction);
    for (const QuantityInfo* quantity : all_quantities()) {
        std::string title = quantity->name;
        if (title[0] >= 'a' && title[0] <= 'z') title[0] = static_cast<char>(title[0] - 'a' + 'A');
        put(page, "\n## {}\n\n", title);
        if (*quantity->hint) put(page, "{}\n\n", sentence(quantity->hint));
        put(page, "| unit | also read | worth | as the end of a name |\n|---|---|---|---|\n");
        for (const UnitInfo& unit : *quantity)
            put(page, "| {} | {} | {} | {} |\n", *unit.symbol ? formatted("`{}`", unit.symbol) : "a bare number",
                spellings(unit), worth(unit, *quantity->begin()), *unit.suffix ? formatted("`_{}`", unit.suffix) : "");
    }
    return {{"docs/functions/units.md", page}};
}

const Registered registered(units_page);

}  // namespace
}  // namespace cutwater::generate

#include "catalogue/prose.hpp"

#include <cmath>

namespace cutwater {

void Prose::add_erased(fmt::string_view form, fmt::format_args values)
{
    char made[640];  // a refusal's sentences all fit, and so allocate nothing
    const std::size_t length = erased::format_into(made, sizeof made, form, values);
    if (length <= sizeof made) return put({made, length});
    std::string longer;
    erased::format_onto(longer, form, values);
    put(longer);
}

const char* unit_symbol(const UnitInfo* unit) noexcept { return unit && *unit->suffix ? unit->symbol : ""; }

void write_interval(Prose& to, const InputInfo& in)
{
    const Interval& i = in.interval;
    const bool low = std::isfinite(i.low);
    const bool high = std::isfinite(i.high);
    if (in.whole) to.put("a whole number");
    if (!low && !high) {
        if (!in.whole) to.put("a finite number");
        if (*unit_symbol(in.unit)) to.add(" in {}", unit_symbol(in.unit));
        return;
    }
    if (in.whole) to.put(" ");
    if (low) to.add("{} {:.10g}", i.low_open ? "above" : in.whole || high ? "from" : "at least", i.low);
    if (low && high) to.put(" ");
    if (high)
        to.add("{} {:.10g}", i.high_open ? (low ? "to below" : "below") : (low && !i.low_open ? "to" : "up to"),
               i.high);
    if (*unit_symbol(in.unit)) to.add(" {}", unit_symbol(in.unit));
}

void write_words(Prose& to, std::span<const char* const> words)
{
    constexpr std::size_t longest_end = std::string_view(", ... (123 more)").size();
    std::size_t needed = 0;
    for (const char* word : words) needed += std::string_view(word).size() + std::string_view(" or \"\"").size();
    const bool all = needed <= to.room();
    for (std::size_t i = 0; i < words.size(); ++i) {
        const char* before = i == 0 ? "" : i + 1 == words.size() ? " or " : ", ";
        if (!all && std::string_view(words[i]).size() + std::string_view(", \"\"").size() + longest_end > to.room())
            return to.add("{}... ({} more)", i == 0 ? "" : ", ", words.size() - i);
        to.add("{}\"{}\"", before, words[i]);
    }
}

void write_kind(Prose& to, const InputInfo& in)
{
    const char* unit = unit_symbol(in.unit);
    if (in.kind == Kind::choice) {
        to.put("one of the words ");
        write_words(to, in.words);
    } else if (in.kind == Kind::quantity) {
        if (*unit)
            to.add("a number in {}, or a text with its unit", unit);
        else
            to.put(in.whole ? "a whole number" : "a number without unit");
    } else {
        to.put("a series: ");
        if (*unit)
            to.add("numbers in {}, or texts with their units", unit);
        else
            to.put("numbers without unit");
    }
}

void write_permitted(Prose& to, const InputInfo& in)
{
    if (in.kind == Kind::choice) {
        write_words(to, in.words);
    } else {
        if (in.kind == Kind::series)
            to.add("a series of at least {} point{}{}; each ", in.least_points, in.least_points == 1 ? "" : "s",
                   in.rising ? ", rising" : "");
        write_interval(to, in);
    }
    if (!in.has_default) return;
    if (in.kind == Kind::choice)
        to.add("; \"{}\" if left out", in.words[static_cast<std::size_t>(in.fallback)]);
    else
        to.add("; {:.10g} if left out", in.fallback);
}

void write_scatter(Prose& to, const ResultInfo& out)
{
    if (out.scatter.amount == 0) return;
    if (!out.scatter.in_unit)
        to.add("plus or minus {} %", 100 * out.scatter.amount);
    else
        to.add("plus or minus {}{}{}", out.scatter.amount, *unit_symbol(out.unit) ? " " : "",
               out.unit->offset != 0 ? "K" : unit_symbol(out.unit));
    to.put(" in about 95 of 100 cases");
}

}  // namespace cutwater

#include "generate/product.hpp"

#include <cmath>

namespace cutwater::generate {

std::vector<std::string> wrap(std::string_view text, std::size_t width)
{
    std::vector<std::string> lines(1);
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        const std::string_view word = text.substr(0, end);
        if (!lines.back().empty() && lines.back().size() + 1 + word.size() > width) lines.emplace_back();
        if (!lines.back().empty()) lines.back() += ' ';
        lines.back() += word;
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

std::string interval_text(const InputInfo& in)
{
    const Interval& i = in.interval;
    const bool low = std::isfinite(i.low);
    const bool high = std::isfinite(i.high);
    const std::string whole = in.whole ? "whole number, " : "";
    if (!low && !high) return whole + "any";
    const std::string unit = in.unit && *in.unit->suffix ? fmt::format(" {}", in.unit->symbol) : "";
    if (!low) return fmt::format("{}{} {:.10g}{}", whole, i.high_open ? "below" : "up to", i.high, unit);
    if (!high) return fmt::format("{}{} {:.10g}{}", whole, i.low_open ? "above" : "at least", i.low, unit);
    return fmt::format("{}{} {:.10g} {} {:.10g}{}", whole, i.low_open ? "above" : "from", i.low,
                       i.high_open ? "to below" : (i.low_open ? "up to" : "to"), i.high, unit);
}

}  // namespace cutwater::generate

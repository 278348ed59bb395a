// The phrases that every form of the working shares.
#include "answers/probe.hpp"
#include "answers/shown.hpp"
#include "answers/working.hpp"

#include "units/format.hpp"

#include <cmath>

namespace cutwater {

std::string interval_text(const InputInfo& in)
{
    const bool bounded = std::isfinite(in.interval.low) || std::isfinite(in.interval.high);
    return in.kind == Kind::choice || !(bounded || in.whole) ? "" : prose<const InputInfo&>(write_interval, in);
}

std::string series_text(const double* data, std::size_t length, std::ptrdiff_t stride, const char* unit, int digits)
{
    constexpr std::size_t most_shown = 8;
    std::string made;
    if (!data) return "no points";
    for (std::size_t k = 0; k < length; ++k) {
        if (length > most_shown && k == most_shown - 2) {
            made += ", …";
            k = length - 1;
        }
        if (k) made += ", ";
        add_number(made, data[static_cast<std::ptrdiff_t>(k) * stride], digits);
    }
    if (*unit) (made += ' ') += unit;
    format_onto(made, " ({} point{})", length, length == 1 ? "" : "s");
    return made;
}

std::string value_text(const InputInfo& in, const Working::Input& input)
{
    const char* unit = unit_symbol(in.unit);
    if (input.state != Working::Input::State::read) return "";
    switch (in.kind) {
    case Kind::choice: return in.words[static_cast<std::size_t>(input.given.word)];
    case Kind::series:
        return series_text(input.given.series.data, input.given.series.length, input.given.series.stride, unit,
                           result_digits);
    case Kind::quantity: break;
    }
    std::string made;
    add_quantity(made, input.given.number, unit, input.text ? result_digits : given_digits);
    return made;
}

std::string given_text(const InputInfo& in, const Working::Input& input)
{
    if (input.state == Working::Input::State::not_read) return input.text ? readable(input.text) : "";
    if (in.kind != Kind::quantity || !input.text || value_text(in, input) == input.text) return "";
    return readable(input.text);
}

std::string result_text(const ResultInfo& out, const Working::Result& result, int digits)
{
    const char* unit = unit_symbol(out.unit);
    if (out.kind == Kind::choice) return result.word ? result.word : "";
    if (out.kind == Kind::series) return series_text(result.series.data(), result.series.size(), 1, unit, digits);
    std::string made;
    add_quantity(made, result.number, unit, digits);
    return made;
}

std::string closeness_text(const InputInfo& in, const Working::Limit& limit)
{
    std::string made;
    const char* unit = unit_symbol(in.unit);
    if (!limit.any_end) return made;
    if (limit.distance == 0) {
        made = "at ";
        add_quantity(made, limit.end, unit, given_digits);
        return made;
    }
    add_quantity(made, limit.distance, unit, 4);
    made += limit.worst > limit.end ? " above " : " below ";
    add_number(made, limit.end, given_digits);
    if (limit.worst == 0) return made;
    made += ", ";
    add_number(made, 100 * limit.distance / std::abs(limit.worst), 3);
    return made += " % of it";
}

std::vector<std::string> scatter(const Working& w)
{
    std::vector<std::string> made;
    for (std::size_t j = 0; j < w.results.size(); ++j) {
        const ResultInfo& out = w.function->results[j];
        if (out.scatter.amount == 0) continue;
        std::string row = std::string(out.name) + ": " + prose<const ResultInfo&>(write_scatter, out);
        if (const double x = w.results[j].number; std::isfinite(x)) {
            const double half = out.scatter.in_unit ? out.scatter.amount : std::abs(x) * out.scatter.amount;
            row += ", ";
            add_number(row, x - half, 4);
            row += " to ";
            add_quantity(row, x + half, unit_symbol(out.unit), 4);
        }
        made.push_back(row);
    }
    return made;
}

const char* relation_text(Working::Relation state)
{
    switch (state) {
    case Working::Relation::held: return "held";
    case Working::Relation::broken: return "did not hold";
    default: return "not looked at";
    }
}

}  // namespace cutwater

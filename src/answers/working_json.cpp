// The working as JSON, with every number to its last bit. A number that is not finite is null.
#include "answers/probe.hpp"
#include "answers/shown.hpp"
#include "answers/working.hpp"

#include "units/format.hpp"

#include <cmath>

namespace cutwater {
namespace {

class Json {
public:
    explicit Json(std::string& to) : to_(&to) {}

    Json& open(char bracket) { return begin_value(), *to_ += bracket, first_ = true, *this; }
    Json& close(char bracket) { return *to_ += bracket, first_ = false, *this; }
    Json& key(std::string_view name)
    {
        if (!first_) *to_ += ", ";
        first_ = true;
        quote(name);
        *to_ += ": ";
        return *this;
    }
    Json& text(std::string_view value) { return begin_value(), quote(value), *this; }
    Json& raw(std::string_view value) { return begin_value(), *to_ += value, *this; }
    Json& flag(bool value) { return raw(value ? "true" : "false"); }
    Json& number(double value)
    {
        if (!std::isfinite(value)) return raw("null");
        begin_value();
        format_onto(*to_, "{}", value);
        return *this;
    }
    Json& numbers(const double* data, std::size_t length, std::ptrdiff_t stride)
    {
        open('[');
        for (std::size_t k = 0; data && k < length; ++k) number(data[static_cast<std::ptrdiff_t>(k) * stride]);
        return close(']');
    }

private:
    void begin_value()
    {
        if (!first_) *to_ += ", ";
        first_ = false;
    }
    void quote(std::string_view text)
    {
        *to_ += '"';
        for (const char c : text) {
            if (c == '"' || c == '\\')
                (*to_ += '\\') += c;
            else if (static_cast<unsigned char>(c) < 0x20)
                format_onto(*to_, "\\u{:04x}", static_cast<unsigned>(c));
            else
                *to_ += c;
        }
        *to_ += '"';
    }

    std::string* to_;
    bool first_ = true;  // nothing stands before the next value at this depth
};

void write_refusal(Json& json, const cutwater_refusal& r)
{
    json.open('{').key("message").text(r.message).key("argument").text(r.name).key("value").number(r.value);
    json.key("low").number(r.low).key("high").number(r.high).key("unit").text(r.unit);
    if (r.element >= 0) json.key("element").number(static_cast<double>(r.element));
    json.close('}');
}

void write_input(Json& json, const InputInfo& in, const Working::Input& input)
{
    json.open('{').key("name").text(in.full_name).key("symbol").text(in.symbol).key("meaning").text(in.meaning);
    if (input.text)
        json.key("given").text(readable(input.text));
    else
        json.key("given").raw("null");
    json.key("default").flag(input.by_default).key("unit").text(unit_symbol(in.unit)).key("value");
    if (input.state != Working::Input::State::read)
        json.raw("null");
    else if (in.kind == Kind::choice)
        json.text(in.words[static_cast<std::size_t>(input.given.word)]);
    else if (in.kind == Kind::series)
        json.numbers(input.given.series.data, input.given.series.length, input.given.series.stride);
    else
        json.number(input.given.number);
    json.close('}');
}

void write_result(Json& json, const ResultInfo& out, const Working::Result& result)
{
    json.open('{').key("name").text(out.full_name).key("symbol").text(out.symbol).key("meaning").text(out.meaning);
    json.key("unit").text(unit_symbol(out.unit)).key("value");
    if (out.kind == Kind::choice)
        json.text(result.word ? result.word : "");
    else if (out.kind == Kind::series)
        json.numbers(result.series.data(), result.series.size(), 1);
    else
        json.number(result.number);
    json.key("shown").text(result_text(out, result, result_digits));
    if (out.scatter.amount > 0)
        json.key("scatter").number(out.scatter.amount).key("scatter_in_unit").flag(out.scatter.in_unit);
    json.close('}');
}

void write_limit(Json& json, const InputInfo& in, const Working::Limit& limit)
{
    using State = Working::Limit::State;
    json.open('{').key("name").text(in.full_name).key("unit").text(unit_symbol(in.unit));
    json.key("low").number(in.interval.low).key("low_open").flag(in.interval.low_open);
    json.key("high").number(in.interval.high).key("high_open").flag(in.interval.high_open);
    json.key("inside");
    if (limit.state == State::not_looked_at)
        json.raw("null");
    else
        json.flag(limit.state == State::inside);
    if (limit.state != State::not_looked_at) json.key("value").number(limit.worst);
    if (limit.any_end) {
        json.key("nearest_end").number(limit.end).key("distance").number(limit.distance);
        json.key("per_cent").number(limit.worst == 0 ? INFINITY : 100 * limit.distance / std::abs(limit.worst));
    }
    json.close('}');
}

}  // namespace

void write_json(const Working& w, std::string& to)
{
    const FunctionInfo& f = *w.function;
    to.reserve(4096);
    Json json(to);
    json.open('{').key("function").text(f.name).key("meaning").text(f.meaning);
    json.key("status").number(w.status).key("refusal");
    if (w.status == CUTWATER_OK)
        json.raw("null");
    else
        write_refusal(json, w.refusal);
    json.key("equation").text(f.equation).key("substituted");
    if (w.substituted.empty())
        json.raw("null");
    else
        json.text(w.substituted);
    json.key("inputs").open('[');
    for (std::size_t i = 0; i < w.inputs.size(); ++i) write_input(json, f.inputs[i], w.inputs[i]);
    json.close(']').key("steps").open('[');
    for (const Working::Step& step : w.steps)
        json.open('{')
            .key("symbol")
            .text(step.symbol)
            .key("equation")
            .text(step.equation)
            .key("value")
            .number(step.value)
            .key("unit")
            .text(step.unit)
            .close('}');
    json.close(']').key("results").open('[');
    for (std::size_t j = 0; j < w.results.size(); ++j) write_result(json, f.results[j], w.results[j]);
    json.close(']').key("limits").open('[');
    for (std::size_t i = 0; i < w.limits.size(); ++i)
        if (f.inputs[i].kind != Kind::choice) write_limit(json, f.inputs[i], w.limits[i]);
    json.close(']').key("relations").open('[');
    for (std::size_t i = 0; i < w.relations.size(); ++i) {
        json.open('{').key("sentence").text(f.relations[i].sentence).key("held");
        if (w.relations[i] == Working::Relation::not_looked_at)
            json.raw("null");
        else
            json.flag(w.relations[i] == Working::Relation::held);
        json.close('}');
    }
    json.close(']').key("source").text(f.source).key("cautions").open('[');
    for (const char* caution : f.cautions) json.text(caution);
    json.close(']').close('}');
}

std::string refusal_alone(const cutwater_refusal& refusal, std::int32_t form)
{
    std::string made;
    switch (form) {
    case CUTWATER_TEXT_MARKDOWN: return std::string("**Refused:** ") + refusal.message + "\n";
    case CUTWATER_TEXT_JSON: {
        Json json(made);
        json.open('{').key("status").number(refusal.status).key("refusal");
        write_refusal(json, refusal);
        json.close('}');
        return made;
    }
    default:
        made = std::string("Refused\n  ") + refusal.message + "\n";
        return form == CUTWATER_TEXT_ASCII ? ascii(made) : made;
    }
}

}  // namespace cutwater

#include "answers/working.hpp"

#include "answers/probe.hpp"
#include "answers/shown.hpp"
#include "answers/substitution.hpp"
#include "catalogue/refusal.hpp"

#include <cmath>

namespace cutwater {
namespace {

struct Course final : StepListener {
    explicit Course(Working& w) : working(w) {}
    void step(const char* symbol, const char* equation, double value, const char* unit) override
    {
        working.steps.push_back({symbol, equation, value, unit});
    }
    void broken(std::size_t relation) override { working.relations[relation] = Working::Relation::broken; }
    Working& working;
};

void read_inputs(Working& w, std::span<const cutwater_value> values, GivenInputs& given)
{
    const FunctionInfo& f = *w.function;
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        const cutwater_value value = i < values.size() ? values[i] : cutwater_value{};
        Working::Input& in = w.inputs[i];
        if (value.kind == CUTWATER_TEXT) in.text = value.text;
        cutwater_refusal trouble;
        clear(&trouble);
        const cutwater_status status = read_argument(f, i, value, given[i], &trouble);
        in.given = given[i];
        in.by_default = value.kind == CUTWATER_LEFT_OUT && status == CUTWATER_OK;
        in.state = status == CUTWATER_OK ? Working::Input::State::read : Working::Input::State::not_read;
        if (status != CUTWATER_OK && w.status == CUTWATER_OK) {
            w.status = status;
            w.refusal = trouble;
        }
    }
    if (values.size() <= f.inputs.size()) return;
    GivenInputs unused;
    w.status = read_arguments(f, values, unused, &w.refusal);  // too many: that comes before all else
}

/// Runs the formula; a series that did not fit is asked for again with room for it.
void run(Working& w, const GivenInputs& given)
{
    const FunctionInfo& f = *w.function;
    std::array<Result, most_results> out;
    std::vector<std::vector<double>> room(f.results.size());
    std::size_t first_room = 64;
    for (int attempt = 0; attempt < 2; ++attempt) {
        for (std::size_t j = 0; j < f.results.size(); ++j) {
            if (f.results[j].kind != Kind::series) continue;
            room[j].resize(std::max(first_room, out[j].length));
            out[j].data = room[j].data();
            out[j].capacity = room[j].size();
        }
        w.steps.clear();
        Course listener(w);
        w.status = f.call(given.data(), out.data(), &listener, &w.refusal);
        if (w.status != CUTWATER_BUFFER_TOO_SMALL) break;
    }
    if (w.status != CUTWATER_OK) return;
    w.results.resize(f.results.size());
    for (std::size_t j = 0; j < f.results.size(); ++j) {
        w.results[j].number = out[j].number;
        w.results[j].word = out[j].word;
        if (f.results[j].kind != Kind::series) continue;
        room[j].resize(out[j].length);
        w.results[j].series = std::move(room[j]);
    }
}

/// Takes one number into a limit: the one outside, else the one nearest to an end.
void look_at(Working::Limit& limit, const InputInfo& in, double x)
{
    if (limit.state == Working::Limit::State::outside) return;
    const bool whole = !in.whole || x == std::floor(x);
    const bool inside = in.interval.contains(x) && whole;
    const bool first = limit.state == Working::Limit::State::not_looked_at;
    limit.state = inside ? Working::Limit::State::inside : Working::Limit::State::outside;
    if (!inside) {
        limit.worst = x;
        limit.any_end = false;
    } else if (first) {
        limit.worst = x;
    }
    for (const double end : {in.interval.low, in.interval.high}) {
        const double distance = std::abs(x - end);
        if (!std::isfinite(end) || !std::isfinite(x) || (limit.any_end && distance >= limit.distance)) continue;
        limit.any_end = true;
        limit.worst = x;
        limit.end = end;
        limit.distance = distance;
    }
}

void look_at_limits(Working& w)
{
    const FunctionInfo& f = *w.function;
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        const InputInfo& in = f.inputs[i];
        if (w.inputs[i].state != Working::Input::State::read || in.kind == Kind::choice) continue;
        const Given& given = w.inputs[i].given;
        if (in.kind == Kind::quantity) {
            look_at(w.limits[i], in, given.number);
        } else if (given.series.data) {
            for (std::size_t k = 0; k < given.series.length; ++k) look_at(w.limits[i], in, given.series[k]);
        }
    }
}

void look_at_relations(Working& w)
{
    const FunctionInfo& f = *w.function;
    if (f.relations.empty()) return;
    bool reached = true;
    for (std::size_t i = 0; i < f.inputs.size(); ++i)
        reached = reached && w.inputs[i].state == Working::Input::State::read &&
                  w.limits[i].state != Working::Limit::State::outside;
    if (!reached || w.status == CUTWATER_BAD_SERIES) return;
    for (Working::Relation& relation : w.relations) {
        if (relation == Working::Relation::broken) return;  // those after it were not looked at
        relation = Working::Relation::held;
    }
}

void substitute(Working& w)
{
    const FunctionInfo& f = *w.function;
    std::array<std::string, most_inputs> texts;
    std::array<Replacement, most_inputs> replacements;
    std::array<std::string_view, most_results> symbols;
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        const InputInfo& in = f.inputs[i];
        if (in.kind == Kind::quantity && w.inputs[i].state == Working::Input::State::read &&
            std::isfinite(w.inputs[i].given.number))
            add_quantity(texts[i], w.inputs[i].given.number, unit_symbol(in.unit), result_digits);
        replacements[i] = {in.symbol, texts[i]};
    }
    for (std::size_t j = 0; j < f.results.size(); ++j) symbols[j] = f.results[j].symbol;
    w.substituted = substituted(f.equation, {replacements.data(), f.inputs.size()}, {symbols.data(), f.results.size()});
}

}  // namespace

Working work(const FunctionInfo& f, std::span<const cutwater_value> values)
{
    Working w;
    w.function = &f;
    w.inputs.resize(f.inputs.size());
    w.limits.resize(f.inputs.size());
    w.relations.assign(f.relations.size(), Working::Relation::not_looked_at);
    clear(&w.refusal);
    GivenInputs given;
    read_inputs(w, values, given);
    if (w.status == CUTWATER_OK) run(w, given);
    w.refusal.status = w.status;
    look_at_limits(w);
    look_at_relations(w);
    substitute(w);
    return w;
}

}  // namespace cutwater

// The working as plain text, for a cell, a terminal and a design file: no line above 96 columns but for what cannot be
// cut.
#include "answers/probe.hpp"
#include "answers/shown.hpp"
#include "answers/working.hpp"

#include <algorithm>
#include <utility>

namespace cutwater {
namespace {

constexpr std::size_t widest = 96;

class Page {
public:
    Page(std::string& to, bool plain) : to_(&to), plain_(plain) {}

    void heading(std::string_view text) { ((*to_ += to_->empty() ? "" : "\n") += text) += '\n'; }

    void paragraph(std::string_view text)
    {
        *to_ += "  ";
        flow(text, 2, 2);
        *to_ += '\n';
    }

    /// One of several.
    void point(std::string_view text)
    {
        *to_ += "  - ";
        flow(text, 4, 4);
        *to_ += '\n';
    }

    /// Rows of cells, each column as wide as its widest cell; the last one flows.
    template <std::size_t N>
    void table(std::vector<std::array<std::string, N>> rows)
    {
        std::array<std::size_t, N> wide{};
        for (auto& row : rows)
            for (std::size_t i = 0; i < N; ++i) {
                if (plain_) row[i] = ascii(row[i]);
                if (i + 1 < N) wide[i] = std::max(wide[i], width(row[i]));
            }
        for (const auto& row : rows) {
            std::size_t at = 2;
            *to_ += "  ";
            for (std::size_t i = 0; i + 1 < N; ++i) {
                if (wide[i] == 0) continue;
                const std::size_t cell = wide[i];
                *to_ += row[i];
                to_->append(cell - width(row[i]) + 2, ' ');
                at += cell + 2;
            }
            flow_plain(row[N - 1], at, at > 60 ? 8 : at);
            while (!to_->empty() && to_->back() == ' ') to_->pop_back();
            *to_ += '\n';
        }
    }

    void text(std::string_view t) { flow(t, 0, 0); }

private:
    void flow(std::string_view text, std::size_t at, std::size_t indent)
    {
        if (plain_)
            flow_plain(ascii(text), at, indent);
        else
            flow_plain(text, at, indent);
    }

    void flow_plain(std::string_view text, std::size_t at, std::size_t indent)
    {
        if (at + width(text) <= widest) {
            *to_ += text;
            return;
        }
        while (!text.empty()) {
            const std::size_t end = std::min(text.find(' '), text.size());
            const std::string_view word = text.substr(0, end);
            const std::size_t wide = width(word);
            if (at + wide > widest && at > indent) {
                while (to_->back() == ' ') to_->pop_back();
                *to_ += '\n';
                to_->append(indent, ' ');
                at = indent;
            }
            *to_ += word;
            at += wide;
            text.remove_prefix(std::min(end + 1, text.size()));
            if (!text.empty()) {
                *to_ += ' ';
                ++at;
            }
        }
    }

    std::string* to_;
    bool plain_;
};

std::string put_in_text(const InputInfo& in, const Working::Input& input)
{
    const std::string given = given_text(in, input);
    if (input.state == Working::Input::State::not_read)
        return given.empty() ? "not read" : "\"" + given + "\" not read";
    const std::string value = value_text(in, input) + (input.by_default ? " (default)" : "");
    return given.empty() ? value : given + " = " + value;
}

void put_in(Page& page, const Working& w)
{
    page.heading("Put in");
    std::vector<std::array<std::string, 4>> rows;
    for (std::size_t i = 0; i < w.inputs.size(); ++i) {
        const InputInfo& in = w.function->inputs[i];
        rows.push_back({in.symbol, in.name, put_in_text(in, w.inputs[i]), in.meaning});
        if (width(rows.back()[2]) <= 34) continue;
        rows.back()[3] = std::exchange(rows.back()[2], "") + "; " +
                         rows.back()[3];  // a long text does not widen its column
    }
    page.table(std::move(rows));
}

void limits(Page& page, const Working& w)
{
    std::vector<std::array<std::string, 3>> rows;
    for (std::size_t i = 0; i < w.limits.size(); ++i) {
        const InputInfo& in = w.function->inputs[i];
        if (in.kind == Kind::choice) continue;
        const Working::Limit& limit = w.limits[i];
        std::string interval = interval_text(in);
        if (interval.empty()) interval = "any finite number";
        std::string state = limit.state == Working::Limit::State::outside         ? "OUTSIDE: "
                            : limit.state == Working::Limit::State::not_looked_at ? "not looked at"
                                                                                  : "inside";
        const std::string close = closeness_text(in, limit);
        if (limit.state == Working::Limit::State::outside) {
            add_quantity(state, limit.worst, unit_symbol(in.unit), result_digits);
        } else if (!close.empty()) {
            state += ": " + close;
        }
        rows.push_back({in.name, interval, state});
    }
    if (rows.empty()) return;
    page.heading("Limits");
    page.table(std::move(rows));
}

}  // namespace

void write_text(const Working& w, bool plain_ascii, std::string& to)
{
    const FunctionInfo& f = *w.function;
    Page page(to, plain_ascii);
    to.reserve(4096);
    page.text(std::string(f.name) + ": " + f.meaning);
    to += '\n';
    if (w.status != CUTWATER_OK) {
        page.heading("Refused");
        page.paragraph(w.refusal.message);
    }
    page.heading("Equation");
    page.paragraph(f.equation);
    if (!w.substituted.empty()) page.paragraph(w.substituted);
    if (!w.inputs.empty()) put_in(page, w);
    if (!w.steps.empty()) {
        page.heading("Steps");
        std::vector<std::array<std::string, 3>> rows;
        for (const Working::Step& step : w.steps) {
            std::string value;
            add_quantity(value, step.value, step.unit.c_str(), result_digits);
            rows.push_back({step.symbol, value, step.equation});
        }
        page.table(std::move(rows));
    }
    if (!w.results.empty()) {
        page.heading(w.results.size() == 1 ? "Result" : "Results");
        std::vector<std::array<std::string, 4>> rows;
        for (std::size_t j = 0; j < w.results.size(); ++j) {
            const ResultInfo& out = f.results[j];
            rows.push_back({out.symbol, out.name, result_text(out, w.results[j], result_digits), out.meaning});
            if (width(rows.back()[2]) > 34) rows.back()[3] = std::exchange(rows.back()[2], "") + "; " + rows.back()[3];
        }
        page.table(std::move(rows));
    }
    if (const auto rows = scatter(w); !rows.empty()) {
        page.heading("Scatter");
        for (const std::string& row : rows) page.point(row);
    }
    limits(page, w);
    if (!w.relations.empty()) {
        page.heading("Relations");
        for (std::size_t i = 0; i < w.relations.size(); ++i)
            page.point(std::string(relation_text(w.relations[i])) + ": " + f.relations[i].sentence);
    }
    page.heading("Source");
    page.paragraph(f.source);
    if (!f.cautions.empty()) {
        page.heading(f.cautions.size() == 1 ? "Caution" : "Cautions");
        for (const char* caution : f.cautions) page.point(caution);
    }
}

}  // namespace cutwater

// The working as Markdown: headings, tables, the equation as code.
#include "answers/probe.hpp"
#include "answers/shown.hpp"
#include "answers/working.hpp"

namespace cutwater {
namespace {

/// Signs that Markdown would take for its own.
std::string plain(std::string_view text)
{
    std::string made;
    for (const char c : text) {
        switch (c) {
        case '\\':
        case '`':
        case '*':
        case '_':
        case '{':
        case '}':
        case '[':
        case ']':
        case '<':
        case '>':
        case '#':
        case '|':
        case '~':
        case '$': made += '\\'; break;
        default: break;
        }
        made += c;
    }
    return made;
}

/// In a table's cell a bar would end it, also inside of code.
std::string code(std::string_view text)
{
    std::string made = "`";
    for (const char c : text) made += c == '`' ? '\'' : c == '|' ? '/' : c;
    return made + '`';
}

void row(std::string& to, std::initializer_list<std::string> cells)
{
    to += '|';
    for (const std::string& cell : cells) ((to += ' ') += cell) += " |";
    to += '\n';
}

void put_in(std::string& to, const Working& w)
{
    to += "\n| Symbol | Input | Given | Value | Meaning |\n|---|---|---|---:|---|\n";
    for (std::size_t i = 0; i < w.inputs.size(); ++i) {
        const InputInfo& in = w.function->inputs[i];
        const Working::Input& input = w.inputs[i];
        const std::string value = input.state == Working::Input::State::read ? plain(value_text(in, input))
                                                                             : "**not read**";
        row(to, {code(in.symbol), code(in.name), input.by_default ? "default" : plain(given_text(in, input)), value,
                 plain(in.meaning)});
    }
}

void limits(std::string& to, const Working& w)
{
    to += "\n**Limits**\n\n| Input | Permitted | Checked |\n|---|---|---|\n";
    for (std::size_t i = 0; i < w.limits.size(); ++i) {
        const InputInfo& in = w.function->inputs[i];
        if (in.kind == Kind::choice) continue;
        const Working::Limit& limit = w.limits[i];
        std::string state = closeness_text(in, limit);
        if (limit.state == Working::Limit::State::not_looked_at) state = "not looked at";
        if (limit.state == Working::Limit::State::inside) state = state.empty() ? "inside" : "inside: " + state;
        if (limit.state == Working::Limit::State::outside) {
            state = "**outside:** ";
            add_quantity(state, limit.worst, unit_symbol(in.unit), result_digits);
        }
        const std::string interval = interval_text(in);
        row(to, {code(in.name), interval.empty() ? "any finite number" : plain(interval), state});
    }
}

}  // namespace

void write_markdown(const Working& w, std::string& to)
{
    const FunctionInfo& f = *w.function;
    to.reserve(4096);
    ((((to += "### ") += plain(f.name)) += "\n\n") += plain(f.meaning)) += "\n";
    if (w.status != CUTWATER_OK) ((to += "\n**Refused:** ") += plain(w.refusal.message)) += "\n";
    ((to += "\n**Equation**\n\n```\n") += f.equation) += '\n';
    if (!w.substituted.empty()) (to += w.substituted) += '\n';
    to += "```\n";
    if (!w.inputs.empty()) put_in(to, w);
    if (!w.steps.empty()) {
        to += "\n**Steps**\n\n| Symbol | Value | By |\n|---|---:|---|\n";
        for (const Working::Step& step : w.steps) {
            std::string value;
            add_quantity(value, step.value, step.unit.c_str(), result_digits);
            row(to, {code(step.symbol), plain(value), code(step.equation)});
        }
    }
    if (!w.results.empty()) {
        to += "\n| Symbol | Result | Value | Meaning |\n|---|---|---:|---|\n";
        for (std::size_t j = 0; j < w.results.size(); ++j) {
            const ResultInfo& out = f.results[j];
            row(to, {code(out.symbol), code(out.name),
                     "**" + plain(result_text(out, w.results[j], result_digits)) + "**", plain(out.meaning)});
        }
    }
    if (const auto rows = scatter(w); !rows.empty()) {
        to += "\n**Scatter**\n\n";
        for (const std::string& row : rows) ((to += "- ") += plain(row)) += '\n';
    }
    if (!w.limits.empty()) limits(to, w);
    if (!w.relations.empty()) {
        to += "\n**Relations**\n\n";
        for (std::size_t i = 0; i < w.relations.size(); ++i)
            ((((to += "- ") += relation_text(w.relations[i])) += ": ") += plain(f.relations[i].sentence)) += '\n';
    }
    ((to += "\n**Source:** ") += plain(f.source)) += '\n';
    if (!f.cautions.empty()) to += "\n**Caution**\n\n";
    for (const char* caution : f.cautions) ((to += "- ") += plain(caution)) += '\n';
}

}  // namespace cutwater

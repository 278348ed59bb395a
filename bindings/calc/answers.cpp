// The other answers of a function, in cells: its working, itself solved backwards, its uncertainty and sensitivity.
#include "ask.hpp"

#include <cutwater/answers.h>

#include <cmath>
#include <limits>

namespace cutwater::calc {
namespace {

constexpr double no_end = std::numeric_limits<double>::quiet_NaN();
constexpr std::size_t most_solutions = 64;

/// A function and its arguments, read; throws for what can be no argument.
struct Call {
    Call(const Any& name, const Row& given) : function(function_called(name))
    {
        cutwater_refusal refusal{};
        if (arguments.read(function, pointers(given), refusal) != CUTWATER_OK) throw_refused(refusal.message, refusal.argument);
    }
    const char* name() const { return cutwater_function_name(function); }
    const cutwater_value* inputs() const { return arguments.values().data(); }
    std::size_t count() const { return arguments.values().size(); }

    std::int32_t function;
    Arguments arguments;
};

/// A number, or a text that stays in held.
cutwater_value plain_value(const Any& given, std::string& held, const char* what)
{
    const Any one = unwrapped(given);
    cutwater_value value{};
    if (left_out(one)) return value;
    if (const auto number = number_in(one)) {
        value.kind = CUTWATER_NUMBER;
        value.number = *number;
    } else if (auto text = text_in(one)) {
        held = std::move(*text);
        value.kind = CUTWATER_TEXT;
        value.text = held.c_str();
    } else {
        throw_refused(std::string(what) + " must be a number or a text with a unit.");
    }
    return value;
}

/// A name, or nothing.
struct Name {
    explicit Name(const Any& given) : text(text_in(unwrapped(given)).value_or("")) {}
    const char* or_null() const { return text.empty() ? nullptr : text.c_str(); }
    std::string text;
};

Any number_or_gap(double number) { return std::isfinite(number) ? Any(number) : not_available(); }

Row row_of(std::initializer_list<Any> cells) { return {cells.begin(), static_cast<sal_Int32>(cells.size())}; }

Table column_of(const std::vector<double>& numbers)
{
    Table table(static_cast<sal_Int32>(numbers.size()));
    Row* const rows = table.getArray();
    for (std::size_t i = 0; i < numbers.size(); ++i) rows[i] = row_of({number_or_gap(numbers[i])});
    return table;
}

std::string working_text(const Any& name, const Row& given)
{
    const std::int32_t function = function_called(name);
    cutwater_refusal refusal{};
    Arguments arguments;
    if (arguments.read(function, pointers(given), refusal) != CUTWATER_OK) return refusal.message;
    const auto& values = arguments.values();
    std::size_t needed = 0;
    cutwater_working(cutwater_function_name(function), values.data(), values.size(), CUTWATER_TEXT_UTF8, nullptr, 0, &needed, nullptr);
    std::string text(needed + 1, '\0');
    cutwater_working(cutwater_function_name(function), values.data(), values.size(), CUTWATER_TEXT_UTF8, text.data(), text.size(),
                     &needed, nullptr);
    text.resize(needed);
    while (!text.empty() && text.back() == '\n') text.pop_back();
    return text;
}

std::vector<double> solve_all(const Any& name, const Any& unknown, const Any& result, const Any& target, const Row& given)
{
    const Call call(name, given);
    const Name input(unknown);
    const Name which(result);
    if (input.text.empty()) throw_refused("The unknown must be the name of an input, as a text.");
    std::string held;
    const cutwater_value wanted = plain_value(target, held, "The target");
    std::vector<double> roots(most_solutions);
    std::size_t count = 0;
    cutwater_refusal refusal{};
    const auto status = cutwater_solutions(call.name(), call.inputs(), call.count(), input.or_null(), which.or_null(), &wanted, no_end,
                                           no_end, roots.data(), roots.size(), &count, &refusal);
    if (status != CUTWATER_OK) throw_refused(refusal.message, refusal.argument);
    roots.resize(std::min(count, roots.size()));
    return roots;
}

struct Spread {
    cutwater_uncertainty_report report{};
    std::vector<double> shares;
};

Spread spread_of(const Any& name, const Any& result, const Any& uncertainties, const Row& given, std::int32_t monte_carlo)
{
    const Call call(name, given);
    const Name which(result);
    const auto cells = cells_in(uncertainties);
    if (!cells) throw_refused("The uncertainties must be numbers, or texts with units, in one row or column.");
    std::vector<std::string> held(cells->size());
    std::vector<cutwater_value> values;
    for (std::size_t i = 0; i < cells->size(); ++i) values.push_back(plain_value((*cells)[i], held[i], "An uncertainty"));
    while (!values.empty() && values.back().kind == CUTWATER_LEFT_OUT) values.pop_back();
    Spread spread;
    spread.shares.resize(static_cast<std::size_t>(cutwater_input_count(call.function)));
    spread.report.size = sizeof spread.report;
    spread.report.shares = spread.shares.data();
    cutwater_uncertainty_options options{};
    options.size = sizeof options;
    options.result = which.or_null();
    options.monte_carlo = monte_carlo;
    cutwater_refusal refusal{};
    const auto status = cutwater_uncertainty(call.name(), call.inputs(), call.count(), values.data(), values.size(), &options,
                                             &spread.report, &refusal);
    if (status != CUTWATER_OK) throw_refused(refusal.message, refusal.argument);
    return spread;
}

}  // namespace

Any working(const Any& name, const Row& arguments) { return Any(text_for_cell(working_text(name, arguments))); }

Any working_line(const Any& line, const Any& name, const Row& arguments)
{
    const auto number = number_in(unwrapped(line));
    if (!number || !(*number >= 1) || *number != std::floor(*number)) throw_refused("The line must be a whole number from 1.");
    const std::string text = working_text(name, arguments);
    std::size_t begin = 0;
    for (double at = 1; at < *number; ++at) {
        begin = text.find('\n', begin);
        if (begin == std::string::npos) return Any(text_for_cell(""));
        ++begin;
    }
    return Any(text_for_cell(text.substr(begin, text.find('\n', begin) - begin)));
}

Any solve_for(const Any& name, const Any& unknown, const Any& result, const Any& target, const Row& arguments)
{
    const Call call(name, arguments);
    const Name input(unknown);
    const Name which(result);
    if (input.text.empty()) throw_refused("The unknown must be the name of an input, as a text.");
    std::string held;
    const cutwater_value wanted = plain_value(target, held, "The target");
    double found = 0;
    cutwater_refusal refusal{};
    const auto status = cutwater_solve(call.name(), call.inputs(), call.count(), input.or_null(), which.or_null(), &wanted, no_end,
                                       no_end, &found, &refusal);
    if (status != CUTWATER_OK) throw_refused(refusal.message, refusal.argument);
    return Any(found);
}

Table solutions(const Any& name, const Any& unknown, const Any& result, const Any& target, const Row& arguments)
{
    const auto roots = solve_all(name, unknown, result, target, arguments);
    if (roots.empty()) throw_refused("There is no such value.");
    return column_of(roots);
}

Table uncertainty(const Any& name, const Any& result, const Any& uncertainties, const Row& arguments)
{
    const auto [r, shares] = spread_of(name, result, uncertainties, arguments, CUTWATER_WHEN_NEEDED);
    const bool tried = r.trials > 0;
    const Row row = row_of({number_or_gap(r.value), number_or_gap(tried ? r.deviation : r.standard),
                            number_or_gap(tried ? r.trial_low : r.low), number_or_gap(tried ? r.trial_high : r.high),
                            Any(text_for_cell(r.remark))});
    return Table(&row, 1);
}

Table uncertainty_shares(const Any& name, const Any& result, const Any& uncertainties, const Row& arguments)
{
    return column_of(spread_of(name, result, uncertainties, arguments, CUTWATER_NEVER).shares);
}

Table sensitivity(const Any& name, const Any& result, const Row& arguments)
{
    const Call call(name, arguments);
    const Name which(result);
    std::vector<cutwater_sensitivity_row> found(static_cast<std::size_t>(cutwater_input_count(call.function)));
    std::size_t count = 0;
    cutwater_refusal refusal{};
    const auto status = cutwater_sensitivity(call.name(), call.inputs(), call.count(), which.or_null(), found.data(), found.size(),
                                             &count, nullptr, &refusal);
    if (status != CUTWATER_OK) throw_refused(refusal.message, refusal.argument);
    count = std::min(count, found.size());
    if (count == 0) throw_refused("The function has no input that is a number.");
    Table table(static_cast<sal_Int32>(count));
    Row* const rows = table.getArray();
    for (std::size_t i = 0; i < count; ++i)
        rows[i] = row_of({Any(text_for_cell(cutwater_input_name(call.function, found[i].input))),
                          found[i].relative ? number_or_gap(found[i].relative_change) : not_available(), number_or_gap(found[i].slope)});
    return table;
}

}  // namespace cutwater::calc

// The four answers for C++, header only over cutwater/answers.h: a function's working, itself solved backwards, its
// uncertainty and its sensitivity, asked by name. A refusal is thrown as Refused.
//
//     solve_for("npsh_available", {14.7 * units::psia, "23.4 mbar(a)", 998.2, {}, 0.5}, "liquid_level", "4.5 m");
#pragma once

#include <cutwater/answers.h>
#include <cutwater/function_types.hpp>
#include <cutwater/library.h>
#include <cutwater/refused.hpp>
#include <cutwater/unit_table.hpp>

#include <algorithm>
#include <concepts>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

namespace cutwater {

template <class T>
concept PlainNumber = std::integral<T> && !std::same_as<T, bool> && !std::same_as<T, char>;

template <class Q>
concept QuantityType = requires { UnitTable<Q>::units; };

/// A number in the input's unit, a text with a unit, a word, a series of numbers; {} for one left out.
class PlainArgument {
public:
    PlainArgument() = default;
    PlainArgument(double number) : held_(number) {}
    template <PlainNumber T>
    PlainArgument(T number) : held_(static_cast<double>(number))
    {
    }
    PlainArgument(bool) = delete;
    PlainArgument(std::nullptr_t) = delete;
    PlainArgument(const char* text) : held_(std::string(text)) {}
    PlainArgument(std::string text) : held_(std::move(text)) {}
    PlainArgument(std::vector<double> series) : held_(std::move(series)) {}

    /// Points into this argument.
    cutwater_value value() const
    {
        cutwater_value made{CUTWATER_LEFT_OUT, 0, nullptr, nullptr, 0, 1};
        if (const double* number = std::get_if<double>(&held_)) {
            made.kind = CUTWATER_NUMBER;
            made.number = *number;
        } else if (const std::string* text = std::get_if<std::string>(&held_)) {
            made.kind = CUTWATER_TEXT;
            made.text = text->c_str();
        } else if (const auto* series = std::get_if<std::vector<double>>(&held_)) {
            made.kind = CUTWATER_SERIES;
            made.series = series->data();
            made.length = series->size();
        }
        return made;
    }

private:
    std::variant<std::monostate, double, std::string, std::vector<double>> held_;
};

/// The same, or a quantity or series of quantities, which carry their units.
class Argument {
public:
    Argument() = default;
    template <class T>
        requires std::constructible_from<PlainArgument, T> && (!QuantityType<std::remove_cvref_t<T>>) &&
                 (!std::same_as<std::remove_cvref_t<T>, Argument>)
    Argument(T&& given) : plain_(std::forward<T>(given))
    {
    }
    template <QuantityType Q>
    Argument(Q quantity) : quantity_(&quantity_info<Q>), si_{Si<Q>::value(quantity)}
    {
    }
    template <QuantityType Q>
    Argument(const std::vector<Q>& series) : quantity_(&quantity_info<Q>), series_(true)
    {
        si_.reserve(series.size());
        for (const Q& q : series) si_.push_back(Si<Q>::value(q));
    }

    /// Null for a plain one.
    const QuantityInfo* quantity() const noexcept { return quantity_; }

    /// A plain one in whatever unit it came; a quantity in this one.
    PlainArgument in(const UnitInfo& unit) const
    {
        if (!quantity_) return plain_;
        std::vector<double> numbers;
        numbers.reserve(si_.size());
        for (const double si : si_)
            numbers.push_back(detail::inverse(unit.from_si(si), si, [&](double x) { return unit.to_si(x); }));
        if (series_) return numbers;
        return numbers.front();
    }
    const PlainArgument& plain() const noexcept { return plain_; }

private:
    PlainArgument plain_;
    const QuantityInfo* quantity_ = nullptr;
    std::vector<double> si_;
    bool series_ = false;
};

/// One an input, in the record's order; what is left out at the end takes its default.
using Arguments = std::vector<Argument>;

/// Where to search, in the unknown's unit, and for which result; NaN and null for what the record gives.
struct Search {
    double low = std::numeric_limits<double>::quiet_NaN();
    double high = std::numeric_limits<double>::quiet_NaN();
    const char* result = nullptr;
};

/// An input's standard uncertainty, by its name with or without its unit. A text is a difference: "0.5 degC" is half a
/// kelvin.
struct Standard {
    std::string_view input;
    PlainArgument uncertainty;
    cutwater_spread spread = CUTWATER_NORMAL;
};

/// Between two inputs that are numbers.
struct Correlation {
    std::string_view first;
    std::string_view second;
    double coefficient = 0;
};

struct UncertaintyOptions {
    std::vector<Correlation> correlations{};
    cutwater_monte_carlo monte_carlo = CUTWATER_WHEN_NEEDED;
    std::size_t trials = 0;  // 0: 200 000
    std::uint64_t seed = 0;
    double coverage = 0.95;
    const char* result = nullptr;
    PlainArgument relation{};  // the relation's own standard uncertainty; {}: by the scatter that is stated, 0: none
};

/// cutwater_uncertainty_report with its arrays, one entry an input.
struct UncertaintyAnswer {
    double value, standard, low, high;
    std::vector<double> shares, slopes;
    double second_order;
    bool trusted;
    std::string remark;
    std::size_t trials, refused;
    double mean, deviation, trial_low, trial_high;
    double relation, relation_share;  // what the relation itself adds: with the shares of the inputs 1
};

struct SensitivityRow {
    std::string input;
    bool relative;           // false: input or result is 0 and only slope tells
    double relative_change;  // of the result per relative change of the input
    double slope;            // change of the result per unit of the input; NaN for a series
};

namespace detail {

[[noreturn]] inline void throw_refused(cutwater_status status, std::int32_t argument, const std::string& name,
                                       const std::string& message)
{
    constexpr double infinite = std::numeric_limits<double>::infinity();
    cutwater_refusal refusal{};
    refusal.status = status;
    refusal.argument = argument;
    refusal.element = -1;
    refusal.value = std::numeric_limits<double>::quiet_NaN();
    refusal.low = -infinite;
    refusal.high = infinite;
    name.copy(refusal.name, sizeof refusal.name - 1);
    message.copy(refusal.message, sizeof refusal.message - 1);
    throw Refused(refusal);
}

/// The C++ type at a place of a list parted by blanks; empty past its end.
inline std::string_view type_at(std::string_view list, std::size_t place)
{
    for (;; --place) {
        const std::size_t end = std::min(list.find(' '), list.size());
        if (place == 0) return list.substr(0, end);
        if (end == list.size()) return {};
        list.remove_prefix(end + 1);
    }
}

inline const FunctionTypes* types_of(std::string_view function)
{
    for (const FunctionTypes& types : function_types)
        if (function == types.function) return &types;
    return nullptr;
}

/// A name with or without its unit's suffix.
inline bool is_called(std::string_view full, std::string_view unit, std::string_view name)
{
    return name == full || (!unit.empty() && name == full.substr(0, full.rfind('_')));
}

/// A quantity goes as the number in the record's unit, so that the answer is that of the typed functions to the last
/// bit.
inline PlainArgument plain_of(const Argument& argument, const char* type_list, std::size_t place, const char* symbol,
                              std::int32_t input, const std::string& what)
{
    const QuantityInfo* quantity = argument.quantity();
    if (!quantity) return argument.plain();
    if (type_at(type_list, place) == quantity->type)
        for (const UnitInfo& unit : *quantity)
            if (std::string_view(symbol) == unit.symbol) return argument.in(unit);
    const std::string needed = *symbol ? " with the unit " + std::string(symbol) : " without unit";
    throw_refused(CUTWATER_WRONG_QUANTITY, input, input < 0 ? "" : what,
                  what + " was given a quantity of another kind (" + quantity->name + "); one" + needed +
                      " is needed, of the type " + std::string(type_at(type_list, place)) + ".");
}

/// A function's inputs as the C API takes them. Of a function that does not exist the library says so when it is asked.
class Inputs {
public:
    Inputs(const char* function, const Arguments& arguments) : function_(function), position_(cutwater_find(function))
    {
        const FunctionTypes* types = types_of(function);
        held_.reserve(arguments.size());
        for (std::size_t i = 0; i < arguments.size(); ++i) {
            const auto input = static_cast<std::int32_t>(i);
            held_.push_back(position_ < 0 ? arguments[i].plain()
                                          : plain_of(arguments[i], types ? types->inputs : "", i,
                                                     cutwater_input_unit(position_, input), input,
                                                     cutwater_input_name(position_, input)));
        }
        for (const PlainArgument& argument : held_) values_.push_back(argument.value());
    }

    const char* function() const noexcept { return function_; }
    const cutwater_value* data() const noexcept { return values_.data(); }
    std::size_t count() const noexcept { return values_.size(); }
    std::size_t inputs() const { return static_cast<std::size_t>(cutwater_input_count(position_)); }
    std::string name(std::int32_t input) const { return cutwater_input_name(position_, input); }

    std::int32_t place(std::string_view name) const
    {
        for (std::int32_t i = 0; i < cutwater_input_count(position_); ++i)
            if (is_called(cutwater_input_name(position_, i), cutwater_input_unit(position_, i), name)) return i;
        if (position_ < 0) return -1;
        throw_refused(CUTWATER_WRONG_KIND, -1, "",
                      std::string(function_) + " has no input \"" + std::string(name) + "\".");
    }

    /// A target in its result's unit.
    PlainArgument target(const Argument& given, const char* result) const
    {
        const FunctionTypes* types = types_of(function_);
        for (std::int32_t i = 0; i < cutwater_result_count(position_); ++i) {
            const char* unit = cutwater_result_unit(position_, i);
            if (result ? is_called(cutwater_result_name(position_, i), unit, result)
                       : cutwater_result_kind(position_, i) == CUTWATER_NUMBER)
                return plain_of(given, types ? types->results : "", static_cast<std::size_t>(i), unit, -1,
                                "the target");
        }
        return given.plain();  // no such result, which the library will say
    }

private:
    const char* function_;
    std::int32_t position_;
    std::vector<PlainArgument> held_;
    std::vector<cutwater_value> values_;
};

}  // namespace detail

/// The whole calculation as a text. A call that is refused has a working too: it says why.
inline std::string working(const char* function, const Arguments& arguments, cutwater_form form = CUTWATER_TEXT_UTF8)
{
    const detail::Inputs inputs(function, arguments);
    std::string text(8000, '\0');
    cutwater_refusal refusal;
    for (;;) {
        std::size_t needed = 0;
        const cutwater_status status = cutwater_working(function, inputs.data(), inputs.count(), form, text.data(),
                                                        text.size(), &needed, &refusal);
        if (needed == 0) detail::check(status, refusal);  // not even a reason could be written
        const bool fits = needed < text.size();
        text.resize(fits ? needed : needed + 1);
        if (fits) return text;
    }
}

/// The value of the input `unknown`, in its unit, for which the result comes to target. Give {} in the unknown's place.
inline double solve_for(const char* function, const Arguments& arguments, const char* unknown, const Argument& target,
                        const Search& search = {})
{
    const detail::Inputs inputs(function, arguments);
    const PlainArgument wanted = inputs.target(target, search.result);
    const cutwater_value value = wanted.value();
    double found = 0;
    cutwater_refusal refusal;
    detail::check(cutwater_solve_for(function, inputs.data(), inputs.count(), unknown, search.result, &value,
                                     search.low, search.high, &found, &refusal),
                  refusal);
    return found;
}

/// All the values found, rising.
inline std::vector<double> solutions(const char* function, const Arguments& arguments, const char* unknown,
                                     const Argument& target, const Search& search = {})
{
    const detail::Inputs inputs(function, arguments);
    const PlainArgument wanted = inputs.target(target, search.result);
    const cutwater_value value = wanted.value();
    std::vector<double> found(16);
    cutwater_refusal refusal;
    for (;;) {
        std::size_t count = 0;
        const cutwater_status status = cutwater_solutions(function, inputs.data(), inputs.count(), unknown,
                                                          search.result, &value, search.low, search.high, found.data(),
                                                          found.size(), &count, &refusal);
        const bool more = status == CUTWATER_BUFFER_TOO_SMALL && count > found.size();
        if (!more) detail::check(status, refusal);
        found.resize(count);
        if (!more) return found;
    }
}

/// The result's standard uncertainty. Inputs that are not named in standards are exact.
inline UncertaintyAnswer uncertainty(const char* function, const Arguments& arguments,
                                     const std::vector<Standard>& standards, const UncertaintyOptions& wanted = {})
{
    const detail::Inputs inputs(function, arguments);
    std::vector<cutwater_value> values(inputs.inputs(), PlainArgument().value());
    std::vector<std::int32_t> spreads(values.size(), CUTWATER_NORMAL);
    for (const Standard& standard : standards) {
        const std::int32_t place = inputs.place(standard.input);
        if (place < 0) continue;
        if (values[static_cast<std::size_t>(place)].kind != CUTWATER_LEFT_OUT)
            detail::throw_refused(CUTWATER_CONTRADICTION, place, inputs.name(place),
                                  inputs.name(place) + " was given two uncertainties.");
        values[static_cast<std::size_t>(place)] = standard.uncertainty.value();
        spreads[static_cast<std::size_t>(place)] = standard.spread;
    }
    values.push_back(wanted.relation.value());
    std::vector<cutwater_correlation> pairs;
    for (const Correlation& c : wanted.correlations)
        pairs.push_back({inputs.place(c.first), inputs.place(c.second), c.coefficient});
    const cutwater_uncertainty_options options{sizeof options, wanted.result, spreads.data(),
                                               pairs.data(),   pairs.size(),  wanted.monte_carlo,
                                               wanted.trials,  wanted.seed,   wanted.coverage};
    UncertaintyAnswer answer{};
    answer.shares.resize(inputs.inputs());
    answer.slopes.resize(inputs.inputs());
    cutwater_uncertainty_report report{};
    report.size = sizeof report;
    report.shares = answer.shares.data();
    report.slopes = answer.slopes.data();
    cutwater_refusal refusal;
    detail::check(cutwater_uncertainty(function, inputs.data(), inputs.count(), values.data(), values.size(), &options,
                                       &report, &refusal),
                  refusal);
    answer.value = report.value;
    answer.standard = report.standard;
    answer.low = report.low;
    answer.high = report.high;
    answer.second_order = report.second_order;
    answer.trusted = report.trusted != 0;
    answer.remark = report.remark;
    answer.trials = report.trials;
    answer.refused = report.refused;
    answer.mean = report.mean;
    answer.deviation = report.deviation;
    answer.trial_low = report.trial_low;
    answer.trial_high = report.trial_high;
    answer.relation = report.relation;
    answer.relation_share = report.relation_share;
    return answer;
}

/// One row for each input that is a number or a series, what matters most first.
inline std::vector<SensitivityRow> sensitivity(const char* function, const Arguments& arguments,
                                               const char* result = nullptr)
{
    const detail::Inputs inputs(function, arguments);
    std::vector<cutwater_sensitivity_row> rows(inputs.inputs());
    std::size_t count = 0;
    cutwater_refusal refusal;
    detail::check(cutwater_sensitivity(function, inputs.data(), inputs.count(), result, rows.data(), rows.size(),
                                       &count, nullptr, &refusal),
                  refusal);
    std::vector<SensitivityRow> made;
    for (std::size_t i = 0; i < std::min(count, rows.size()); ++i)
        made.push_back({inputs.name(rows[i].input), rows[i].relative != 0, rows[i].relative_change, rows[i].slope});
    return made;
}

/// Names of functions that words of the trade point to ("suction safe", "NPSHR"), best first.
inline std::vector<std::string> find_function(const char* words)
{
    std::vector<std::int32_t> positions(32);
    std::size_t count = 0;
    cutwater_refusal refusal;
    detail::check(cutwater_find_function(words, positions.data(), positions.size(), &count, &refusal), refusal);
    std::vector<std::string> names;
    for (std::size_t i = 0; i < std::min(count, positions.size()); ++i)
        names.emplace_back(cutwater_function_name(positions[i]));
    return names;
}

}  // namespace cutwater

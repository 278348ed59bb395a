// Reads what is asked, has it answered, and says how far the first order is to be trusted.
#include "answers/shown.hpp"
#include "answers/uncertainty.hpp"
#include "catalogue/refusal.hpp"
#include "units/message.hpp"
#include "units/text.hpp"

#include <cutwater/unit_table.hpp>

#include <boost/math/special_functions/erf.hpp>

#include <algorithm>
#include <cmath>

namespace cutwater {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();
constexpr std::size_t usual_trials = 200000;
constexpr double normal_95 = 1.959963984540054;  // half-width of a normal 95 % interval in standard deviations
constexpr std::size_t most_trials = 100000000;
constexpr double enough =
    0.05;  // of the standard uncertainty: agreement to one significant digit of it, whatever the digit

cutwater_status refuse_uncertainty(const FunctionInfo& f, std::size_t input, cutwater_status status,
                                   const std::string& sentence, cutwater_refusal* refusal)
{
    refuse(status, "the uncertainty " + sentence + '.', refusal);
    blame(f, input, -1, refusal);
    return status;
}

/// A text's uncertainty in the input's unit; an offset cancels: 0.5 degC is half a kelvin.
cutwater_status read_standard(const FunctionInfo& f, std::size_t input, const cutwater_value& u, double& standard,
                              cutwater_refusal* refusal)
{
    const InputInfo& in = f.inputs[input];
    if (u.kind == CUTWATER_NUMBER) {
        standard = u.number;
    } else {
        double with_offset = 0, zero = 0;
        if (const auto status = read_text(f, input, u.text, -1, with_offset, refusal); status != CUTWATER_OK)
            return status;
        const std::string_view text = u.text;
        const std::size_t unit = text.find_first_not_of("0123456789+-.,eE \t");
        if (unit != std::string_view::npos && in.unit) {  // what nought of that unit would be
            const std::string none = "0 " + std::string(text.substr(unit));
            if (read_quantity(*in.quantity, *in.unit, none, zero, nullptr) != CUTWATER_OK) zero = 0;
        }
        standard = with_offset - zero;
    }
    if (std::isfinite(standard) && standard >= 0) return CUTWATER_OK;
    return refuse_uncertainty(f, input, CUTWATER_OUT_OF_INTERVAL, "must be a finite number from 0 up", refusal);
}

cutwater_status add_variables(UncertainCall& call, std::size_t input, const cutwater_value& u, cutwater_spread spread,
                              cutwater_refusal* refusal)
{
    const FunctionInfo& f = *call.function;
    const InputInfo& in = f.inputs[input];
    if (u.kind == CUTWATER_LEFT_OUT) return CUTWATER_OK;
    if (in.kind == Kind::choice)
        return refuse_uncertainty(f, input, CUTWATER_WRONG_KIND, "of a word has no meaning", refusal);
    double standard = 0;
    if (u.kind != CUTWATER_SERIES)
        if (const auto status = read_standard(f, input, u, standard, refusal); status != CUTWATER_OK) return status;
    if (in.kind == Kind::quantity) {
        if (u.kind == CUTWATER_SERIES)
            return refuse_uncertainty(f, input, CUTWATER_WRONG_KIND, "of a number is one number", refusal);
        if (standard == 0) return CUTWATER_OK;
        if (in.whole)
            return refuse_uncertainty(f, input, CUTWATER_WRONG_KIND,
                                      "of a whole number cannot be told: compare the results for its neighbours",
                                      refusal);
        call.variables.push_back({input, 0, false, call.given[input].number, standard, spread});
        return CUTWATER_OK;
    }
    const RawSeries points = call.given[input].series;
    if (!points.data) return CUTWATER_OK;  // the call itself will refuse it
    if (u.kind == CUTWATER_SERIES && (u.length != points.length || !u.series))
        return refuse_uncertainty(f, input, CUTWATER_BAD_SERIES, "needs one number, or one for each point", refusal);
    std::vector<double>& own = call.series[input];
    own.resize(points.length);
    for (std::size_t k = 0; k < points.length; ++k) own[k] = points[k];
    call.given[input].series = {own.data(), own.size(), 1};
    for (std::size_t k = 0; k < points.length; ++k) {
        if (u.kind == CUTWATER_SERIES) standard = u.series[static_cast<std::ptrdiff_t>(k) * u.stride];
        if (!std::isfinite(standard) || standard < 0)
            return refuse_uncertainty(f, input, CUTWATER_OUT_OF_INTERVAL, "must be finite numbers from 0 up", refusal);
        if (standard > 0) call.variables.push_back({input, k, true, own[k], standard, spread});
    }
    return CUTWATER_OK;
}

cutwater_status add_correlations(UncertainCall& call, std::span<const cutwater_correlation> list,
                                 cutwater_refusal* refusal)
{
    const FunctionInfo& f = *call.function;
    for (std::size_t v = 0; v < call.variables.size(); ++v)
        if (!call.variables[v].in_series) call.numbers.push_back(v);
    const std::size_t n = call.numbers.size();
    if (list.empty()) return CUTWATER_OK;
    constexpr double unsaid = 2;
    std::vector<double> matrix(n * n, unsaid);
    const auto number_of = [&](std::int32_t input) {
        std::size_t i = 0;
        while (i < n && call.variables[call.numbers[i]].input != static_cast<std::size_t>(input)) ++i;
        return i;
    };
    for (const cutwater_correlation& c : list) {
        if (!(std::abs(c.coefficient) <= 1))
            return refuse(CUTWATER_OUT_OF_INTERVAL, "A correlation coefficient must lie from -1 to 1.", refusal);
        const std::size_t i = number_of(c.first), k = number_of(c.second);
        if (i == n || k == n || i == k)
            return refuse(CUTWATER_WRONG_KIND,
                          "A correlation is between two different inputs that are numbers and have an uncertainty.",
                          refusal);
        if (matrix[i * n + k] != unsaid)
            return refuse(CUTWATER_CONTRADICTION,
                          std::string(f.name) + ": the correlation of " +
                              f.inputs[static_cast<std::size_t>(c.first)].full_name + " and " +
                              f.inputs[static_cast<std::size_t>(c.second)].full_name + " is given twice.",
                          refusal);
        matrix[i * n + k] = matrix[k * n + i] = c.coefficient;
    }
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t k = 0; k < n; ++k)
            if (matrix[i * n + k] == unsaid) matrix[i * n + k] = i == k ? 1 : 0;
    call.correlation = std::move(matrix);
    if (factorise(call)) return CUTWATER_OK;
    return refuse(CUTWATER_CONTRADICTION,
                  "The correlation coefficients contradict each other: no values can have them all.", refusal);
}

/// The relation's own standard uncertainty as the caller gives it.
cutwater_status read_relation(UncertainCall& call, const cutwater_value& u, cutwater_refusal* refusal)
{
    const ResultInfo& out = call.function->results[call.result];
    const auto fail = [&](cutwater_status status, const char* sentence) {
        return refuse(status, std::string("the uncertainty of the relation itself ") + sentence, refusal);
    };
    call.relation = {u.number, true};
    if (u.kind == CUTWATER_TEXT) {
        double zero = 0;
        const std::string_view text = u.text ? u.text : "";
        const std::size_t unit = text.find_first_not_of("0123456789+-.,eE \t");
        const QuantityInfo& fractions = quantity_info<Fraction>;
        if (text.ends_with('%') && out.quantity != &fractions) {
            call.relation.in_unit = false;
            if (read_quantity(fractions, fractions.units[0], text, call.relation.amount, nullptr) != CUTWATER_OK)
                return fail(CUTWATER_BAD_TEXT, "cannot be read.");
        } else if (read_quantity(*out.quantity, *out.unit, text, call.relation.amount, nullptr) != CUTWATER_OK) {
            return fail(CUTWATER_BAD_TEXT,
                        "must be a number in the result's unit, or a text with such a unit or in %.");
        } else if (unit != std::string_view::npos &&
                   read_quantity(*out.quantity, *out.unit, "0 " + std::string(text.substr(unit)), zero, nullptr) ==
                       CUTWATER_OK) {
            call.relation.amount -= zero;  // an offset cancels
        }
    } else if (u.kind != CUTWATER_NUMBER) {
        return fail(CUTWATER_WRONG_KIND, "is one number.");
    }
    if (std::isfinite(call.relation.amount) && call.relation.amount >= 0) return CUTWATER_OK;
    return fail(CUTWATER_OUT_OF_INTERVAL, "must be a finite number from 0 up.");
}

cutwater_status make_ready(UncertainCall& call, std::span<const cutwater_value> values,
                           std::span<const cutwater_value> uncertainties, const cutwater_uncertainty_options& o,
                           bool stated, cutwater_refusal* refusal)
{
    const FunctionInfo& f = *call.function;
    if (const auto status = choose_result(f, o.result, call.result, refusal); status != CUTWATER_OK) return status;
    if (const auto status = read_arguments(f, values, call.given, refusal); status != CUTWATER_OK) return status;
    if (uncertainties.size() > f.inputs.size() + 1)
        return refuse(CUTWATER_WRONG_COUNT,
                      "There are more uncertainties than inputs, and one that the relation itself may have.", refusal);
    if (uncertainties.size() > f.inputs.size()) {
        const cutwater_value& own = uncertainties.back();
        uncertainties = uncertainties.first(f.inputs.size());
        if (own.kind != CUTWATER_LEFT_OUT) {
            stated = false;
            if (const auto status = read_relation(call, own, refusal); status != CUTWATER_OK) return status;
        }
    }
    if (stated) call.relation = f.results[call.result].scatter, call.relation.amount /= normal_95;
    call.series.resize(f.inputs.size());
    for (std::size_t i = 0; i < uncertainties.size(); ++i) {
        const std::int32_t spread = o.spreads ? o.spreads[i] : CUTWATER_NORMAL;
        if (spread < CUTWATER_NORMAL || spread > CUTWATER_ARCSINE)
            return refuse_uncertainty(
                f, i, CUTWATER_UNKNOWN_WORD,
                "has a spread that is not known: 0 normal, 1 rectangular, 2 triangular, 3 arcsine", refusal);
        if (const auto status = add_variables(call, i, uncertainties[i], static_cast<cutwater_spread>(spread), refusal);
            status != CUTWATER_OK)
            return status;
    }
    if (!o.correlations && o.correlation_count)
        return refuse(CUTWATER_MISSING, "The pointer to the correlations is null.", refusal);
    return add_correlations(call, {o.correlations, o.correlation_count}, refusal);
}

void store_by_input(const UncertainCall& call, const FirstOrder& first, cutwater_uncertainty_report& report)
{
    const std::size_t inputs = call.function->inputs.size();
    if (report.shares) std::fill_n(report.shares, inputs, 0.0);
    if (report.slopes) std::fill_n(report.slopes, inputs, nan);
    for (std::size_t v = 0; v < call.variables.size(); ++v) {
        const Uncertain& u = call.variables[v];
        if (report.shares) report.shares[u.input] += first.shares[v];
        if (report.slopes && !u.in_series) report.slopes[u.input] = first.slopes[v];
    }
}

/// Why the first order is doubted before any trial; empty when it is not.
std::string doubt(const FirstOrder& first)
{
    std::string made;
    const auto per_cent = [](double x) {
        std::string text;
        add_number(text, 100 * std::abs(x), 2);
        return text + " %";
    };
    if (first.near_end) return "part of what the inputs may be is refused by the function";
    if (first.by_inputs == 0)
        return "close to the estimates no input moves the result, and what lies further off it does not see";
    if (first.kinked) return "the result has a corner or a leap where the inputs lie";
    if (first.strays) return "the result has a corner or a leap within what the inputs may be";
    if (std::abs(first.second_order) > enough)
        return "the next term changes the standard uncertainty by " + per_cent(first.second_order);
    if (std::abs(first.shift) > enough)
        return "the next term moves the result by " + per_cent(first.shift) + " of its standard uncertainty";
    if (std::abs(first.bend) > enough)
        return "the result is skewed: the next term moves an end of the interval by " + per_cent(first.bend) +
               " of the standard uncertainty";
    if (std::abs(first.flattening) > 0.4)
        return "the inputs that matter are not spread normally, and neither is the result";
    return made;
}

void say(cutwater_uncertainty_report& report, const std::string& sentence)
{
    Message(report.remark, sizeof report.remark).add("{}", sentence);
}

/// JCGM 101, clause 8: the two intervals' ends against each other.
void compare(cutwater_uncertainty_report& report, const std::string& doubted)
{
    const double far = std::max(std::abs(report.low - report.trial_low), std::abs(report.high - report.trial_high));
    std::string sentence;
    report.trusted = far <= enough * report.standard && report.refused == 0 &&
                     (report.standard > 0 || report.deviation == 0);
    if (report.trusted && report.standard == 0)
        sentence = "No trial moved the result";
    else if (report.standard == 0 && report.refused == 0)
        sentence = "The first order is not to be trusted: it finds no uncertainty, and the trials do";
    else if (report.trusted)
        sentence = "First order and Monte Carlo agree: the ends of their intervals differ by less than 5 % of the "
                   "standard uncertainty";
    else if (report.refused)
        sentence = "The first order is not to be trusted: " + std::to_string(report.refused) + " of " +
                   std::to_string(report.trials) + " trials were refused by the function and are left out";
    else
        sentence = "The first order is not to be trusted: the ends of its interval lie up to " + [&] {
            std::string text;
            add_number(text, far / report.standard, 2);
            return text;
        }() + " standard uncertainties from those of the trials";
    if (!doubted.empty() && report.standard > 0) sentence += (report.trusted ? ", although " : "; ") + doubted;
    say(report, sentence + ".");
}

}  // namespace

double& UncertainCall::place(GivenInputs& inputs, std::size_t variable)
{
    const Uncertain& u = variables[variable];
    return u.in_series ? series[u.input][u.point] : inputs[u.input].number;
}

void spoil(cutwater_uncertainty_report& r) noexcept
{
    r.value = r.standard = r.low = r.high = r.second_order = r.mean = r.deviation = r.trial_low = r.trial_high = nan;
    r.relation = r.relation_share = nan;
    r.trusted = 0;
    r.trials = r.refused = 0;
    r.remark[0] = 0;
}

cutwater_status uncertainty(const FunctionInfo& f, std::span<const cutwater_value> values,
                            std::span<const cutwater_value> uncertainties, const cutwater_uncertainty_options& o,
                            cutwater_uncertainty_report& report, cutwater_refusal* refusal, bool stated)
{
    UncertainCall call;
    call.function = &f;
    const double coverage = o.coverage == 0 ? 0.95 : o.coverage;
    if (!(coverage > 0 && coverage < 1))
        return refuse(CUTWATER_OUT_OF_INTERVAL, "coverage must lie above 0 and below 1 (0.95 is usual).", refusal);
    if (o.monte_carlo < CUTWATER_WHEN_NEEDED || o.monte_carlo > CUTWATER_NEVER)
        return refuse(CUTWATER_UNKNOWN_WORD, "monte_carlo must be 0 (when needed), 1 (always) or 2 (never).", refusal);
    const std::size_t trials = o.trials ? o.trials : usual_trials;
    if (trials < 1000 || trials > most_trials)
        return refuse(CUTWATER_OUT_OF_INTERVAL, "trials must lie from 1000 to 100 000 000.", refusal);
    if (const auto status = make_ready(call, values, uncertainties, o, stated, refusal); status != CUTWATER_OK)
        return status;
    const double factor = std::sqrt(2.0) * boost::math::erf_inv(coverage);
    FirstOrder first;
    if (const auto status = first_order(call, std::max(2.0, factor), first, refusal); status != CUTWATER_OK)
        return status;
    store_by_input(call, first, report);
    report.value = first.value;
    report.standard = first.standard;
    report.low = first.value - factor * first.standard;
    report.high = first.value + factor * first.standard;
    report.second_order = first.second_order;
    report.relation = first.by_relation;
    report.relation_share = first.relation_share;
    const std::string doubted = call.variables.empty() ? std::string() : doubt(first);
    report.trusted = doubted.empty();
    say(report, doubted.empty() ? "The first order will do: the next terms change it by less than 5 %."
                                : "The first order is not to be trusted: " + doubted + ".");
    if (call.variables.empty())
        say(report,
            first.by_relation > 0 ? "All inputs are exact; the relation itself scatters." : "All inputs are exact.");
    const bool nothing_moves = call.variables.empty() && first.by_relation == 0;
    if (nothing_moves || o.monte_carlo == CUTWATER_NEVER || (o.monte_carlo == CUTWATER_WHEN_NEEDED && doubted.empty()))
        return CUTWATER_OK;
    Trials made;
    if (const auto status = monte_carlo(call, trials, o.seed, coverage, made, refusal); status != CUTWATER_OK) {
        spoil(report);
        return status;
    }
    report.trials = made.count;
    report.refused = made.refused;
    report.mean = made.mean;
    report.deviation = made.deviation;
    report.trial_low = made.low;
    report.trial_high = made.high;
    compare(report, doubted);
    return CUTWATER_OK;
}

}  // namespace cutwater

// What may be asked of solving, and what it says when it finds none or several.
#include "answers/shown.hpp"
#include "answers/solve.hpp"
#include "catalogue/sentence.hpp"
#include "units/text.hpp"

#include <algorithm>
#include <cmath>

namespace cutwater {
namespace {

constexpr int shown = 8;

std::string in_unit(double value, const UnitInfo* unit)
{
    std::string made;
    add_quantity(made, value, unit_symbol(unit), shown);
    return made;
}

const InputInfo& unknown_of(const SolveQuestion& q) { return q.function->inputs[q.unknown]; }

std::string searched_text(const SolveQuestion& q, const Stretch& s)
{
    std::string made;
    add_number(made, s.low, 4);
    made += " to ";
    add_quantity(made, s.high, unit_symbol(unknown_of(q).unit), 4);
    return made;
}

std::string answer_text(const SolveQuestion& q, const Stretch& a)
{
    const UnitInfo* unit = unknown_of(q).unit;
    if (!a.wide()) return in_unit(a.low, unit);
    return "from " + in_unit(a.low, unit) + " to " + in_unit(a.high, unit);
}

std::string answers_text(const SolveQuestion& q, const Solutions& s)
{
    constexpr std::size_t most = 8;
    const std::size_t count = s.answers.size();
    std::string made;
    for (std::size_t i = 0; i < count && i < most; ++i)
        (made += i == 0 ? "" : i + 1 == count ? " and " : ", ") += answer_text(q, s.answers[i]);
    if (count > most) made += " and " + std::to_string(count - most) + " more";
    return made;
}

cutwater_status refuse_unknown(const SolveQuestion& q, cutwater_status status, const std::string& sentence,
                               cutwater_refusal* refusal)
{
    refuse(status, sentence.ends_with('.') ? sentence : sentence + '.', refusal);
    blame(*q.function, q.unknown, -1, refusal);
    if (refusal) {
        refusal->low = q.where.low;
        refusal->high = q.where.high;
        refusal->low_open = q.where.low_open;
        refusal->high_open = q.where.high_open;
    }
    return status;
}

std::string target_text(const SolveQuestion& q)
{
    const ResultInfo& out = q.function->results[q.result];
    return std::string(out.name) + " = " + in_unit(q.target, out.unit);
}

cutwater_status read_target(const SolveQuestion& q, const cutwater_value* target, double& number,
                            cutwater_refusal* refusal)
{
    const ResultInfo& out = q.function->results[q.result];
    if (target && target->kind == CUTWATER_NUMBER) {
        number = target->number;
    } else if (target && target->kind == CUTWATER_TEXT && target->text) {
        if (const auto status = read_quantity(*out.quantity, *out.unit, target->text, number, refusal);
            status != CUTWATER_OK)
            return status;
    } else {
        return refuse(CUTWATER_MISSING,
                      std::string(q.function->name) + ": the target for " + out.full_name +
                          " is missing: a number or a text with a unit.",
                      refusal);
    }
    if (std::isfinite(number)) return CUTWATER_OK;
    return refuse(CUTWATER_NOT_FINITE,
                  std::string(q.function->name) + ": the target for " + out.full_name + " is not a finite number.",
                  refusal);
}

/// The record's interval, narrowed; NaN leaves an end as it is.
bool narrow(Interval& where, double low, double high)
{
    if (low > where.low) {
        where.low = low;
        where.low_open = false;
    }
    if (high < where.high) {
        where.high = high;
        where.high_open = false;
    }
    return where.low < where.high || (where.low == where.high && !where.low_open && !where.high_open);
}

/// Whether the call is refused for another input, whatever the unknown is.
bool another_input_at_fault(const SolveQuestion& q, const cutwater_refusal& r)
{
    if (r.argument < 0 || static_cast<std::size_t>(r.argument) == q.unknown) return false;
    return r.status == CUTWATER_OUT_OF_INTERVAL || r.status == CUTWATER_NOT_FINITE || r.status == CUTWATER_BAD_SERIES ||
           r.status == CUTWATER_UNKNOWN_WORD;
}

}  // namespace

cutwater_status ask_solve(const FunctionInfo& f, std::span<const cutwater_value> values, const char* unknown,
                          const char* result, const cutwater_value* target, double low, double high, SolveQuestion& q,
                          cutwater_refusal* refusal)
{
    q.function = &f;
    q.unknown = find_input(f, unknown ? unknown : "");
    if (q.unknown == f.inputs.size()) {
        std::string names;
        for (const InputInfo& in : f.inputs)
            if (in.kind == Kind::quantity) (names += names.empty() ? "" : ", ") += in.full_name;
        return refuse_saying(CUTWATER_WRONG_KIND, refusal, "{} has no input \"{}\" to solve for; it has {}.", f.name,
                             Quoted(unknown ? unknown : "").view(), names);
    }
    const InputInfo& in = f.inputs[q.unknown];
    if (in.kind != Kind::quantity)
        return refuse_unknown(q, CUTWATER_WRONG_KIND, "only an input that is a single number can be solved for",
                              refusal);
    if (const auto status = choose_result(f, result, q.result, refusal); status != CUTWATER_OK) return status;
    if (const auto status = read_target(q, target, q.target, refusal); status != CUTWATER_OK) return status;
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        if (i == q.unknown) continue;
        const cutwater_value value = i < values.size() ? values[i] : cutwater_value{};
        if (const auto status = read_argument(f, i, value, q.given[i], refusal); status != CUTWATER_OK) return status;
    }
    if (values.size() > f.inputs.size()) return read_arguments(f, values, q.given, refusal);
    q.where = in.interval;
    if (narrow(q.where, low, high)) return CUTWATER_OK;
    return refuse_unknown(q, CUTWATER_OUT_OF_INTERVAL,
                          "between the two ends to search lies nothing that the function permits", refusal);
}

cutwater_status refuse_solutions(const SolveQuestion& q, const Solutions& s, cutwater_refusal* refusal)
{
    const InputInfo& in = unknown_of(q);
    const ResultInfo& out = q.function->results[q.result];
    if (!s.computed && another_input_at_fault(q, s.example)) {
        if (refusal) *refusal = s.example;
        return static_cast<cutwater_status>(s.example.status);
    }
    if (!s.computed && s.example.status != CUTWATER_OK)
        return refuse_unknown(q, CUTWATER_NO_ANSWER,
                              "none of the values looked at, from " + searched_text(q, s.searched) +
                                  ", can be computed; for one of them: " + s.example.message,
                              refusal);
    if (!s.computed)
        return refuse_unknown(q, CUTWATER_NO_ANSWER, "there is no value to look at in the interval", refusal);
    const std::string searched = " (searched: " + searched_text(q, s.searched) +
                                 (s.skipped ? "; can be computed: " + searched_text(q, s.computable) : std::string()) +
                                 ")";
    if (s.answers.size() == 1 && s.answers.front().wide())
        return refuse_unknown(
            q, CUTWATER_SEVERAL_ANSWERS,
            "every value " + answer_text(q, s.answers.front()) + " gives " + target_text(q) + searched, refusal);
    if (!s.answers.empty())
        return refuse_unknown(q, CUTWATER_SEVERAL_ANSWERS,
                              target_text(q) + " has several answers: " + answers_text(q, s) + searched, refusal);
    const std::string none = (in.whole ? std::string("no whole number looked at")
                                       : "none of the " + std::to_string(s.computed) + " values computed") +
                             " gives " + target_text(q) + ": ";
    if (s.jump)
        return refuse_unknown(q, CUTWATER_NO_ANSWER,
                              none + "from " + in_unit(s.leap.low, in.unit) + " to " +
                                  (in.whole ? in_unit(s.leap.high, in.unit) : std::string("the next number")) +
                                  " it leaps from " + in_unit(s.before, out.unit) + " to " +
                                  in_unit(s.after, out.unit) + searched,
                              refusal);
    if (s.results.low == s.results.high)
        return refuse_unknown(q, CUTWATER_NO_ANSWER, none + "all give " + in_unit(s.results.low, out.unit) + searched,
                              refusal);
    return refuse_unknown(q, CUTWATER_NO_ANSWER,
                          none + "the least seen is " + in_unit(s.results.low, out.unit) + " (at " +
                              in_unit(s.least_at, in.unit) + "), the greatest " + in_unit(s.results.high, out.unit) +
                              " (at " + in_unit(s.greatest_at, in.unit) + ")" + searched,
                          refusal);
}

cutwater_status one_solution(const SolveQuestion& q, const Solutions& s, double& found, cutwater_refusal* refusal)
{
    if (s.answers.size() != 1 || s.answers.front().wide()) return refuse_solutions(q, s, refusal);
    found = s.answers.front().low;
    return CUTWATER_OK;
}

cutwater_status all_solutions(const SolveQuestion& q, const Solutions& s, std::vector<double>& found,
                              cutwater_refusal* refusal)
{
    const bool any_wide = std::ranges::any_of(s.answers, &Stretch::wide);
    if (s.answers.empty() || any_wide) return refuse_solutions(q, s, refusal);
    for (const Stretch& a : s.answers) found.push_back(a.low);
    return CUTWATER_OK;
}

}  // namespace cutwater

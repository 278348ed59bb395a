// The calls that are not one formula, answered for any host: what each argument is, the library's records say.
#pragma once

#include "common/answers.hpp"
#include "common/arguments.hpp"
#include "common/grid.hpp"

#include <cmath>

namespace cutwater_door {

template <class Host>
class Asking {
public:
    using Value = typename Host::Value;

    /// given: the question's own arguments; rest: those of the function it asks about.
    cutwater_status answer(std::int32_t position, std::span<const Value> given, std::span<const Value> rest, Grid& grid,
                           cutwater_refusal& refusal)
    {
        const Question* q = question_at(position);
        if (!q) return refuse(CUTWATER_UNKNOWN_FUNCTION, "There is no such question.", refusal);
        question_ = q;
        rest_ = rest;
        refusal_ = &refusal;
        if (const auto status = read_all(given); status != CUTWATER_OK) return status;
        return put(grid);
    }

    /// All in one row: the question's own arguments, then the rest.
    cutwater_status answer(std::int32_t position, std::span<const Value> all, Grid& grid, cutwater_refusal& refusal)
    {
        const Question* q = question_at(position);
        const std::size_t own = q ? q->asked.size() - (q->takes_rest ? 1 : 0) : 0;
        if (q && !q->takes_rest && all.size() > own)
            return refuse(CUTWATER_WRONG_COUNT,
                          q->name + " takes " + std::to_string(own) + " inputs; " + std::to_string(all.size()) +
                              " were given.",
                          refusal);
        const std::size_t split = std::min(own, all.size());
        return answer(position, all.first(split), all.subspan(split), grid, refusal);
    }

private:
    // What the question was given, by what each argument is.
    double number_ = 0;
    std::string text_;
    std::string units_[2];
    std::size_t unit_count_ = 0;
    cutwater_value value_{};
    std::string value_text_;
    std::string function_;
    std::string input_;
    std::string result_;
    Value uncertainties_{};

    const Question* question_ = nullptr;
    std::span<const Value> rest_;
    cutwater_refusal* refusal_ = nullptr;

    cutwater_status fail(std::size_t argument, const std::string& sentence,
                         cutwater_status status = CUTWATER_WRONG_KIND)
    {
        refuse(status, question_->name + ": " + question_->arguments[argument] + " " + sentence, *refusal_);
        refusal_->argument = static_cast<std::int32_t>(argument);
        return status;
    }

    cutwater_status read_all(std::span<const Value> given)
    {
        for (std::size_t i = 0; i < question_->asked.size(); ++i) {
            if (question_->asked[i] == CUTWATER_ASKED_ARGUMENTS) continue;
            const Value one = i < given.size() ? single<Host>(given[i]) : Value{};
            if (const auto status = read_one(i, i < given.size() ? given[i] : Value{}, one); status != CUTWATER_OK)
                return status;
        }
        return CUTWATER_OK;
    }

    cutwater_status read_one(std::size_t i, const Value& whole, const Value& one)
    {
        const Kind kind = Host::kind(one);
        switch (question_->asked[i]) {
        case CUTWATER_ASKED_NUMBER:
            if (kind != Kind::number) return fail(i, "must be a number.");
            number_ = Host::number(one);
            return CUTWATER_OK;
        case CUTWATER_ASKED_TEXT: return read_text(i, one, "must be a text.", text_);
        case CUTWATER_ASKED_UNIT: return read_text(i, one, "must be a unit, as a text.", units_[unit_count_++]);
        case CUTWATER_ASKED_FUNCTION: return read_text(i, one, "must be the name of a function, as a text.", function_);
        case CUTWATER_ASKED_INPUT: return read_text(i, one, "must be the name of an input, as a text.", input_);
        case CUTWATER_ASKED_RESULT:
            return nothing<Host>(one) ? CUTWATER_OK
                                      : read_text(i, one, "must be the name of a result, as a text.", result_);
        case CUTWATER_ASKED_VALUE: return read_value(i, one);
        default: uncertainties_ = whole; return CUTWATER_OK;
        }
    }

    cutwater_status read_text(std::size_t i, const Value& one, const char* wanted, std::string& to)
    {
        if (Host::kind(one) != Kind::text) return fail(i, wanted);
        to = Host::text(one);
        if (to.find('\0') != std::string::npos) return fail(i, "has a null character in it.", CUTWATER_BAD_TEXT);
        return to.empty() ? fail(i, wanted) : CUTWATER_OK;
    }

    cutwater_status read_value(std::size_t i, const Value& one)
    {
        if (nothing<Host>(one)) return fail(i, "is not given.", CUTWATER_MISSING);
        switch (Host::kind(one)) {
        case Kind::number:
            value_.kind = CUTWATER_NUMBER;
            value_.number = Host::number(one);
            return CUTWATER_OK;
        case Kind::text:
            if (const auto status = read_text(i, one, "must be a number, or a text with a unit.", value_text_);
                status != CUTWATER_OK)
                return status;
            value_.kind = CUTWATER_TEXT;
            value_.text = value_text_.c_str();
            return CUTWATER_OK;
        default: return fail(i, "must be a number, or a text with a unit.");
        }
    }

    cutwater_status put(Grid& grid)
    {
        const std::string& name = question_->name;
        if (name == "refusal") return put_refusal(grid);
        if (name == "working") return put_working(grid);
        if (name == "working_line") return put_line(grid);
        if (name == "convert_unit") {
            double converted = 0;
            const auto status = cutwater_convert_unit(number_, units_[0].c_str(), units_[1].c_str(), &converted,
                                                      refusal_);
            grid = Grid::row({Cell(converted)});
            return status;
        }
        if (name == "quantity") {
            double number = 0;
            const auto status = cutwater_quantity(&value_, units_[0].c_str(), &number, refusal_);
            grid = Grid::row({Cell(number)});
            return status;
        }
        if (name == "find_function") return put_found(grid);
        if (name == "cutwater_version") {
            grid = Grid::row({Cell(std::string(cutwater_version()))});
            return CUTWATER_OK;
        }
        const Function* f = function_named(function_, *refusal_);
        if (!f) return static_cast<cutwater_status>(refusal_->status);
        Arguments<Host> arguments;
        if (const auto status = arguments.read(*f, rest_, *refusal_); status != CUTWATER_OK) return status;
        const Values values{arguments.values().data(), arguments.values().size()};
        if (name == "solve_for" || name == "solutions") return put_search(*f, values, grid);
        if (name == "sensitivity") return put_sensitivity(*f, values, grid);
        if (name == "uncertainty" || name == "uncertainty_shares") return put_uncertainty(*f, values, grid);
        return refuse(CUTWATER_UNKNOWN_FUNCTION, name + ": this door does not know the question.", *refusal_);
    }

    /// Also of another question: REFUSAL("quantity"; …).
    cutwater_status put_refusal(Grid& grid)
    {
        const auto tell = [&](cutwater_status status) {
            grid = Grid::row({Cell(std::string(status == CUTWATER_OK ? "" : refusal_->message))});
            return CUTWATER_OK;
        };
        if (const std::int32_t other = question_named(function_); other >= 0) {
            Grid unused;
            return tell(Asking().answer(other, rest_, unused, *refusal_));
        }
        const Function* f = function_named(function_, *refusal_);
        if (!f) return tell(CUTWATER_UNKNOWN_FUNCTION);
        Arguments<Host> arguments;
        cutwater_status status = arguments.read(*f, rest_, *refusal_);
        Call call;
        if (status == CUTWATER_OK) {
            status = call.run(*f, arguments.values().data(), arguments.values().size());
            *refusal_ = call.refusal();
        }
        return tell(status);
    }

    std::string working_text()
    {
        std::string text;
        const Function* f = function_named(function_, *refusal_);
        Arguments<Host> arguments;
        if (!f || arguments.read(*f, rest_, *refusal_) != CUTWATER_OK)
            return text_of_refusal(*refusal_, CUTWATER_TEXT_UTF8);
        working_of(f->name.c_str(), {arguments.values().data(), arguments.values().size()}, CUTWATER_TEXT_UTF8, text,
                   *refusal_);
        return text;
    }

    cutwater_status put_working(Grid& grid)
    {
        grid = Grid::row({Cell(working_text())});
        return CUTWATER_OK;
    }

    cutwater_status put_line(Grid& grid)
    {
        if (!(number_ >= 1) || number_ != std::floor(number_))
            return fail(0, "must be a whole number from 1.", CUTWATER_OUT_OF_INTERVAL);
        const std::string text = working_text();
        std::size_t begin = 0;
        for (double at = 1; at < number_ && begin != std::string::npos; ++at) {
            begin = text.find('\n', begin);
            if (begin != std::string::npos) ++begin;
        }
        grid = Grid::row(
            {Cell(begin == std::string::npos ? std::string() : text.substr(begin, text.find('\n', begin) - begin))});
        return CUTWATER_OK;
    }

    const char* result_or_null() const { return result_.empty() ? nullptr : result_.c_str(); }

    cutwater_status put_search(const Function& f, Values values, Grid& grid)
    {
        Search search;
        search.unknown = input_.c_str();
        search.result = result_or_null();
        search.target = value_;
        std::vector<double> roots(1);
        const bool all = question_->name == "solutions";
        const auto status = all ? solutions_of(f, values, search, roots, *refusal_)
                                : solution_of(f, values, search, roots[0], *refusal_);
        if (status == CUTWATER_OK && roots.empty())
            return refuse(CUTWATER_NO_ANSWER, "There is no such value.", *refusal_);
        grid = Grid::column(roots);
        return status;
    }

    cutwater_status put_sensitivity(const Function& f, Values values, Grid& grid)
    {
        std::vector<cutwater_sensitivity_row> rows;
        if (const auto status = sensitivity_of(f, values, result_or_null(), rows, *refusal_); status != CUTWATER_OK)
            return status;
        if (rows.empty()) return refuse(CUTWATER_NO_ANSWER, "The function has no input that is a number.", *refusal_);
        grid = {rows.size(), 3, {}};
        for (const cutwater_sensitivity_row& row : rows) {
            grid.cells.emplace_back(std::string(cutwater_input_name(f.position, row.input)));
            grid.cells.push_back(row.relative ? Cell(row.relative_change) : Cell());
            grid.cells.emplace_back(row.slope);
        }
        return CUTWATER_OK;
    }

    cutwater_status put_uncertainty(const Function& f, Values values, Grid& grid)
    {
        std::vector<Value> cells;
        if (Host::kind(uncertainties_) == Kind::cells)
            cells = Host::cells(uncertainties_).cells;
        else if (!nothing<Host>(uncertainties_))
            cells.push_back(uncertainties_);
        std::vector<std::string> texts(cells.size());
        std::vector<cutwater_value> standard(cells.size());
        for (std::size_t i = 0; i < cells.size(); ++i) {
            if (nothing<Host>(cells[i])) continue;
            const Kind kind = Host::kind(cells[i]);
            if (kind == Kind::number) {
                standard[i].kind = CUTWATER_NUMBER;
                standard[i].number = Host::number(cells[i]);
            } else if (kind == Kind::text) {
                texts[i] = Host::text(cells[i]);
                standard[i].kind = CUTWATER_TEXT;
                standard[i].text = texts[i].c_str();
            } else {
                return refuse(CUTWATER_WRONG_KIND,
                              question_->name + ": an uncertainty must be a number, or a text with a unit.", *refusal_);
            }
        }
        while (!standard.empty() && standard.back().kind == CUTWATER_LEFT_OUT) standard.pop_back();
        const bool shares = question_->name == "uncertainty_shares";
        cutwater_uncertainty_options options{};
        options.result = result_or_null();
        options.monte_carlo = shares ? CUTWATER_NEVER : CUTWATER_WHEN_NEEDED;
        Uncertainty found;
        const auto status = uncertainty_of(f, values, {standard.data(), standard.size()}, options, found, *refusal_);
        if (status != CUTWATER_OK) return status;
        const cutwater_uncertainty_report& r = found.report;
        const bool tried = r.trials > 0;
        if (r.relation > 0) found.shares.push_back(r.relation_share);
        grid = shares ? Grid::column(found.shares)
                      : Grid::row({Cell(r.value), Cell(tried ? r.deviation : r.standard),
                                   Cell(tried ? r.trial_low : r.low), Cell(tried ? r.trial_high : r.high),
                                   Cell(std::string(r.remark))});
        return CUTWATER_OK;
    }

    cutwater_status put_found(Grid& grid)
    {
        const auto found = functions_found(text_, *refusal_);
        if (found.empty())
            return refuse(CUTWATER_NO_ANSWER,
                          "find_function: no function is known for \"" + text_ + "\"; try other words.", *refusal_);
        grid = {found.size(), 2, {}};
        cutwater_function_info info{};
        info.size = sizeof info;
        for (const std::int32_t position : found) {
            cutwater_describe_function(position, &info);
            grid.cells.emplace_back(std::string(info.name));
            grid.cells.emplace_back(std::string(info.meaning));
        }
        return CUTWATER_OK;
    }
};

}  // namespace cutwater_door

// JCGM 101:2008, clauses 6 and 7: values drawn for the inputs, the function's own array form for the results.
#include "answers/philox.hpp"
#include "answers/uncertainty.hpp"
#include "catalogue/refusal.hpp"
#include "elementary/elementary.hpp"

#include <boost/random/normal_distribution.hpp>

#include <algorithm>
#include <cmath>

namespace cutwater {
namespace {

constexpr std::size_t most_block_trials = 2048;  // some columns of them stay in the second-level cache

/// Fewer where thousands of points vary, so that memory stays within bounds.
std::size_t trials_of_block(std::size_t variables)
{
    return std::clamp<std::size_t>((std::size_t{1} << 22) / std::max<std::size_t>(1, variables), 1, most_block_trials);
}

/// From 0 to below 1.
double unit(Philox& random) { return static_cast<double>(random() >> 11) * 0x1p-53; }

/// Fills with values of expectation 0 and standard deviation 1.
void draw(Philox& random, cutwater_spread spread, double* to, std::size_t count)
{
    switch (spread) {
    case CUTWATER_NORMAL: {
        boost::random::normal_distribution<double> normal;
        for (std::size_t r = 0; r < count; ++r) to[r] = normal(random);
        break;
    }
    case CUTWATER_RECTANGULAR:
        for (std::size_t r = 0; r < count; ++r) to[r] = std::sqrt(3.0) * (2 * unit(random) - 1);
        break;
    case CUTWATER_TRIANGULAR:
        for (std::size_t r = 0; r < count; ++r) {
            const double first = unit(random);
            to[r] = std::sqrt(6.0) * (first + unit(random) - 1);
        }
        break;
    case CUTWATER_ARCSINE:
        for (std::size_t r = 0; r < count; ++r)
            to[r] = std::sqrt(2.0) * elementary::sin(2 * 3.14159265358979323846 * unit(random));
        break;
    }
}

class Run {
public:
    Run(UncertainCall& call, std::uint64_t seed)
        : call_(&call), most_(trials_of_block(call.variables.size())), columns_(call.variables.size())
    {
        for (std::size_t v = 0; v < columns_.size(); ++v) {
            columns_[v].resize(most_);
            random_.emplace_back(seed, v);
        }
        random_.emplace_back(seed, columns_.size());  // the relation's own: those of the inputs stay as they were
        if (call.relation.amount > 0) own_.resize(most_);
    }

    std::size_t most() const { return most_; }

    /// The next block's results; NaN where refused.
    void next(double* results, std::size_t count)
    {
        for (std::size_t v = 0; v < columns_.size(); ++v)
            draw(random_[v], call_->variables[v].spread, columns_[v].data(), count);
        if (call_->correlated()) mix(count);
        for (std::size_t v = 0; v < columns_.size(); ++v) {
            const Uncertain& u = call_->variables[v];
            for (double& x : columns_[v]) x = u.at + u.standard * x;
        }
        if (in_columns())
            by_rows(results, count);
        else
            one_by_one(results, count);
        if (own_.empty()) return;
        draw(random_.back(), CUTWATER_NORMAL, own_.data(), count);
        const Scatter& relation = call_->relation;
        for (std::size_t r = 0; r < count; ++r)
            results[r] += relation.amount * own_[r] * (relation.in_unit ? 1 : results[r]);
    }

private:
    /// Whether the array form can take it: all that varies are numbers, and no result is a series.
    bool in_columns() const
    {
        return call_->function->rows && std::ranges::none_of(call_->variables, &Uncertain::in_series);
    }

    void mix(std::size_t count)
    {
        const std::vector<std::size_t>& numbers = call_->numbers;
        const std::size_t n = numbers.size();
        for (std::size_t i = n; i-- > 0;)  // from the last, so that those before it are still as drawn
            for (std::size_t r = 0; r < count; ++r) {
                double sum = 0;
                for (std::size_t j = 0; j <= i; ++j) sum += call_->factor[i * n + j] * columns_[numbers[j]][r];
                columns_[numbers[i]][r] = sum;
            }
    }

    void by_rows(double* results, std::size_t count)
    {
        const FunctionInfo& f = *call_->function;
        std::array<cutwater_column, most_inputs> in{};
        std::array<cutwater_result_column, most_results> out{};
        for (std::size_t i = 0; i < f.inputs.size(); ++i) in[i] = {&call_->given[i].number, 0};
        for (std::size_t v = 0; v < columns_.size(); ++v) in[call_->variables[v].input] = {columns_[v].data(), 1};
        others_.resize(f.results.size());
        for (std::size_t j = 0; j < f.results.size(); ++j) {
            others_[j].resize(j == call_->result ? 0 : most_);
            out[j] = {j == call_->result ? results : others_[j].data(), 1};
        }
        GivenInputs first = call_->given;
        RowsJob job{.rows = count,
                    .columns = in.data(),
                    .shared = call_->given.data(),
                    .results = out.data(),
                    .bitmap = nullptr,
                    .first_given = first.data()};
        f.rows(job);
    }

    void one_by_one(double* results, std::size_t count)
    {
        Probe probe(*call_->function, call_->given, call_->result);
        for (std::size_t r = 0; r < count; ++r) {
            for (std::size_t v = 0; v < columns_.size(); ++v) call_->place(probe.given, v) = columns_[v][r];
            results[r] = probe();
        }
        for (std::size_t v = 0; v < columns_.size(); ++v) call_->place(call_->given, v) = call_->variables[v].at;
    }

    UncertainCall* call_;
    std::size_t most_;  // trials a block
    std::vector<std::vector<double>> columns_;
    std::vector<std::vector<double>> others_;
    std::vector<double> own_;
    std::vector<Philox> random_;
};

/// JCGM 101, 7.7: the ends by order statistics, as many trials below as above.
void coverage_interval(std::vector<double>& y, double coverage, Trials& made)
{
    const auto last = static_cast<double>(y.size() - 1);
    const auto low = y.begin() + static_cast<std::ptrdiff_t>(std::llround(last * (1 - coverage) / 2));
    const auto high = y.begin() + static_cast<std::ptrdiff_t>(std::llround(last * (1 + coverage) / 2));
    std::nth_element(y.begin(), low, y.end());
    made.low = *low;
    if (high > low) std::nth_element(low + 1, high, y.end());
    made.high = *high;
}

}  // namespace

/// A pivot of 0 is full correlation.
bool factorise(UncertainCall& call)
{
    const std::size_t n = call.numbers.size();
    std::vector<double>& c = call.factor = call.correlation;
    for (std::size_t k = 0; k < n; ++k) {
        double pivot = c[k * n + k];
        for (std::size_t j = 0; j < k; ++j) pivot -= c[k * n + j] * c[k * n + j];
        if (pivot < -1e-12) return false;
        const double root = pivot > 1e-14 ? std::sqrt(pivot) : 0;
        c[k * n + k] = root;
        for (std::size_t i = k + 1; i < n; ++i) {
            double sum = c[i * n + k];
            for (std::size_t j = 0; j < k; ++j) sum -= c[i * n + j] * c[k * n + j];
            if (root == 0 && std::abs(sum) > 1e-7) return false;
            c[i * n + k] = root > 0 ? sum / root : 0;
        }
    }
    return true;
}

cutwater_status monte_carlo(UncertainCall& call, std::size_t trials, std::uint64_t seed, double coverage, Trials& made,
                            cutwater_refusal* refusal)
{
    const auto normal = std::ranges::count(call.variables, CUTWATER_NORMAL, &Uncertain::spread);
    if (call.correlated() && normal != std::ssize(call.variables))
        return refuse(CUTWATER_CONTRADICTION,
                      "Monte Carlo with a correlation needs all inputs normal (JCGM 101, 6.4.8): leave the other "
                      "spreads, or the trials.",
                      refusal);
    Run run(call, seed);
    std::vector<double> y(trials);
    std::size_t kept = 0;
    double sum = 0, squares = 0, origin = 0;
    for (std::size_t begin = 0; begin < trials; begin += run.most()) {
        const std::size_t count = std::min(run.most(), trials - begin);
        double* const block = y.data() + kept;  // what is refused is overwritten by the next block
        run.next(block, count);
        std::size_t good = 0;
        for (std::size_t r = 0; r < count; ++r)
            if (block[r] == block[r]) block[good++] = block[r];
        if (kept == 0 && good) origin = block[0];
        for (std::size_t r = 0; r < good; ++r) {
            const double d = block[r] - origin;
            sum += d;
            squares += d * d;
        }
        kept += good;
    }
    if (kept < trials / 2)
        return refuse(
            CUTWATER_NO_ANSWER,
            "More than half of the trials were refused by the function: the uncertainties reach too far beyond what it "
            "permits.",
            refusal);
    y.resize(kept);
    const auto n = static_cast<double>(kept);
    made.count = trials;
    made.refused = trials - kept;
    made.mean = origin + sum / n;
    made.deviation = std::sqrt(std::max(0.0, (squares - sum * sum / n) / (n - 1)));
    coverage_interval(y, coverage, made);
    return CUTWATER_OK;
}

}  // namespace cutwater

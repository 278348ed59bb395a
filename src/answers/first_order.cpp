// JCGM 100:2008, 5.1.2 and 5.2.2, and the second-order terms of the note to 5.1.2 as a check.
#include "answers/slope.hpp"
#include "answers/uncertainty.hpp"
#include "catalogue/refusal.hpp"

#include <cmath>

namespace cutwater {
namespace {

/// Excess kurtosis of each spread.
double flatness(cutwater_spread spread)
{
    switch (spread) {
    case CUTWATER_RECTANGULAR: return -1.2;
    case CUTWATER_TRIANGULAR: return -0.6;
    case CUTWATER_ARCSINE: return -1.5;
    default: return 0;
    }
}

/// The function about the estimates, in steps of the standard uncertainties.
class Around {
public:
    Around(UncertainCall& call, Probe& probe) : call_(&call), probe_(&probe) {}

    double moved(std::size_t i, double by_i) { return moved(i, by_i, i, by_i); }
    double moved(std::size_t i, double by_i, std::size_t k, double by_k)
    {
        set(i, by_i);
        set(k, by_k);
        const double y = (*probe_)();
        set(i, 0);
        set(k, 0);
        return y;
    }

private:
    void set(std::size_t v, double by)
    {
        const Uncertain& u = call_->variables[v];
        call_->place(probe_->given, v) = u.at + by * u.standard;
    }
    UncertainCall* call_;
    Probe* probe_;
};

/// Variance added by the second-order terms, and the mean's shift, from differences over one standard uncertainty.
void second_order(UncertainCall& call, Probe& probe, FirstOrder& made)
{
    constexpr std::size_t most_crossed = 24;  // variables; above it only the terms of each alone
    const std::size_t n = call.variables.size();
    Around around(call, probe);
    std::vector<double> up(n), down(n);
    double added = 0, shift = 0, skew = 0;
    for (std::size_t i = 0; i < n; ++i) {
        up[i] = around.moved(i, 1);
        down[i] = around.moved(i, -1);
        if (std::isnan(up[i]) || std::isnan(down[i]) || std::isnan(around.moved(i, 2)) || std::isnan(around.moved(i, -2))) {
            made.near_end = true;
            return;
        }
        const double first = made.slopes[i] * call.variables[i].standard;
        const double second = up[i] - 2 * made.value + down[i];
        const double third = 6 * ((up[i] - down[i]) / 2 - first);
        added += second * second / 2 + first * third;
        shift += second / 2;
        skew += first * first * second;
    }
    for (std::size_t i = 0; i < n && n <= most_crossed; ++i) {
        for (std::size_t k = 0; k < i; ++k) {
            const double pp = around.moved(i, 1, k, 1), pm = around.moved(i, 1, k, -1);
            const double mp = around.moved(i, -1, k, 1), mm = around.moved(i, -1, k, -1);
            if (std::isnan(pp + pm + mp + mm)) {
                made.near_end = true;
                return;
            }
            const double mixed = (pp - pm - mp + mm) / 4;
            const double ikk = ((pp + pm - mp - mm) - 2 * (up[i] - down[i])) / 2;
            const double kii = ((pp + mp - pm - mm) - 2 * (up[k] - down[k])) / 2;
            added += mixed * mixed + made.slopes[i] * call.variables[i].standard * ikk + made.slopes[k] * call.variables[k].standard * kii;
            shift += call.correlation_of(i, k) * mixed;
            skew += 2 * made.slopes[i] * call.variables[i].standard * made.slopes[k] * call.variables[k].standard * mixed;
        }
    }
    const double variance = made.standard * made.standard;
    if (variance > 0) {
        made.second_order = std::sqrt(std::max(0.0, variance + added) / variance) - 1;
        made.shift = shift / made.standard;
        // Cornish-Fisher: an end moves by (z^2 - 1)/6 times the skewness, which is 3 gHg/u^3 to this order; z = 1.96
        made.bend = made.shift + 1.42 * skew / (variance * made.standard);
    } else if (added > 0 || shift != 0) {
        made.second_order = HUGE_VAL;
    }
}

}  // namespace

cutwater_status first_order(UncertainCall& call, FirstOrder& made, cutwater_refusal* refusal)
{
    const std::size_t n = call.variables.size();
    Probe probe(*call.function, call.given, call.result);
    if (const auto status = probe.ask(made.value, refusal); status != CUTWATER_OK) return status;
    made.slopes.resize(n);
    made.shares.assign(n, 0.0);
    for (std::size_t i = 0; i < n; ++i) {
        const Uncertain& u = call.variables[i];
        double& x = call.place(probe.given, i);
        const Slope slope = slope_at([&](double moved) { return x = moved, probe(); }, u.at, made.value, u.standard, false);
        x = u.at;
        if (std::isnan(slope.value)) {
            refuse(CUTWATER_NO_ANSWER, "the function refuses the values beside it, so that its influence cannot be told.", refusal);
            blame(*call.function, u.input, u.in_series ? static_cast<std::int64_t>(u.point) : -1, refusal);
            return CUTWATER_NO_ANSWER;
        }
        made.slopes[i] = slope.value;
        made.kinked = made.kinked || slope.kinked;
    }
    double variance = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const double mine = made.slopes[i] * call.variables[i].standard;
        for (std::size_t k = 0; k < n; ++k)
            made.shares[i] += call.correlation_of(i, k) * mine * made.slopes[k] * call.variables[k].standard;
        variance += made.shares[i];
    }
    double largest = 0;
    for (std::size_t i = 0; i < n; ++i) largest += std::pow(made.slopes[i] * call.variables[i].standard, 2);
    if (variance < -1e-12 * largest)
        return refuse(CUTWATER_CONTRADICTION, "The correlation coefficients contradict each other: the variance would be negative.", refusal);
    if (variance <= 1e-15 * largest) variance = 0;  // full correlation that cancels
    made.standard = std::sqrt(variance);
    for (std::size_t i = 0; i < n; ++i) {
        const double mine = std::pow(made.slopes[i] * call.variables[i].standard, 2);
        made.shares[i] = variance > 0 ? made.shares[i] / variance : 0;
        if (variance > 0) made.flattening += flatness(call.variables[i].spread) * std::pow(mine / variance, 2);
    }
    if (n) second_order(call, probe, made);
    return CUTWATER_OK;
}

}  // namespace cutwater

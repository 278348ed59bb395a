// JCGM 100:2008, 5.1.2 and 5.2.2, and the second-order terms of the note to 5.1.2 as a check.
#include "answers/slope.hpp"
#include "answers/uncertainty.hpp"
#include "catalogue/refusal.hpp"

#include <algorithm>
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

/// How far from its estimate an input can lie, in standard uncertainties; just inside, where rounding cannot lead out.
double farthest(cutwater_spread spread)
{
    constexpr double just_inside = 1 - 1e-9;
    switch (spread) {
    case CUTWATER_RECTANGULAR: return std::sqrt(3.0) * just_inside;
    case CUTWATER_TRIANGULAR: return std::sqrt(6.0) * just_inside;
    case CUTWATER_ARCSINE: return std::sqrt(2.0) * just_inside;
    default: return HUGE_VAL;
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
    double moved(const std::vector<double>& direction, double by)
    {
        for (std::size_t v = 0; v < direction.size(); ++v) set(v, direction[v] * by);
        const double y = (*probe_)();
        for (std::size_t v = 0; v < direction.size(); ++v) set(v, 0);
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

/// A result along one direction: its differences over one standard uncertainty, and how far off the cubic that they
/// make the result lies further out, where a corner or a leap shows that is not at the estimates.
struct Course {
    double up, down, second, third, off;
    bool refused;

    template <class Moved>
    Course(double centre, double first, double reach, Moved&& moved)
        : up(moved(1.0)), down(moved(-1.0)), second(up - 2 * centre + down), third(6 * ((up - down) / 2 - first))
    {
        const auto beyond = [&](double z) {
            return std::abs(moved(z) - (centre + z * (first + z * (second / 2 + z * third / 6))));
        };
        const double above = beyond(reach), below = beyond(-reach);
        off = std::max(above, below);
        refused = std::isnan(up) || std::isnan(down) || std::isnan(above) || std::isnan(below);
    }
};

/// What one standard uncertainty of a variable moves the result by.
double part(const UncertainCall& call, const FirstOrder& made, std::size_t v)
{
    return made.slopes[v] * call.variables[v].standard;
}

/// The direction, in standard uncertainties of each variable, along which the result moves most for how likely it is.
std::vector<double> likeliest(const UncertainCall& call, const FirstOrder& made)
{
    const std::size_t n = call.variables.size();
    std::vector<double> direction(n);
    for (std::size_t v = 0; v < n; ++v) direction[v] = part(call, made, v) / made.standard;
    if (!call.correlated()) return direction;
    const std::size_t count = call.numbers.size();
    for (std::size_t i = 0; i < count; ++i) {
        double& mine = direction[call.numbers[i]] = 0;
        for (std::size_t k = 0; k < count; ++k)
            mine += call.correlation[i * count + k] * part(call, made, call.numbers[k]) / made.standard;
    }
    return direction;
}

double correlation_of(const UncertainCall& call, std::size_t i, std::size_t k)
{
    if (!call.correlated()) return 0;
    const auto at = [&](std::size_t v) {
        return std::find(call.numbers.begin(), call.numbers.end(), v) - call.numbers.begin();
    };
    const auto count = static_cast<std::ptrdiff_t>(call.numbers.size());
    const std::ptrdiff_t a = at(i), b = at(k);
    return a < count && b < count ? call.correlation[static_cast<std::size_t>(a * count + b)] : 0;
}

/// Variance added by the second-order terms, and the mean's shift, from differences over one standard uncertainty; and
/// whether the result keeps its course as far as it is looked at.
void second_order(UncertainCall& call, double reach, Probe& probe, FirstOrder& made)
{
    constexpr std::size_t most_crossed = 24;  // variables; above it only the terms of each alone
    constexpr double told = 0.05;             // of the standard uncertainty, as for the other doubts
    const std::size_t n = call.variables.size();
    Around around(call, probe);
    std::vector<double> up(n), down(n);
    double added = 0, shift = 0, skew = 0, off = 0;
    for (std::size_t i = 0; i < n; ++i) {
        const double first = part(call, made, i);
        const Course course(made.value, first, std::min(reach, farthest(call.variables[i].spread)),
                            [&](double z) { return around.moved(i, z); });
        made.near_end = course.refused;
        if (made.near_end) return;
        up[i] = course.up;
        down[i] = course.down;
        off = std::max(off, course.off);
        added += course.second * course.second / 2 + first * course.third;
        shift += course.second / 2;
        skew += first * first * course.second;
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
            added += mixed * mixed + part(call, made, i) * ikk + part(call, made, k) * kii;
            shift += correlation_of(call, i, k) * mixed;
            skew += 2 * part(call, made, i) * part(call, made, k) * mixed;
        }
    }
    if (n > 1 && made.standard > 0) {
        const std::vector<double> direction = likeliest(call, made);
        double least = reach;
        for (std::size_t v = 0; v < n; ++v)
            least = std::min(least, farthest(call.variables[v].spread) / std::max(1e-300, std::abs(direction[v])));
        const Course course(made.value, made.standard, least, [&](double z) { return around.moved(direction, z); });
        made.near_end = course.refused;
        if (made.near_end) return;
        off = std::max(off, course.off);
    }
    made.strays = off > told * made.standard && off > 1e-10 * std::abs(made.value);
    const double variance = made.standard * made.standard;
    made.skew = skew;
    if (variance > 0) {
        made.second_order = std::sqrt(std::max(0.0, variance + added) / variance) - 1;
        made.shift = shift / made.standard;
        // Cornish-Fisher: an end moves by (z^2 - 1)/6 times the skewness, which is 3 gHg/u^3 to this order; z = 1.96
        made.bend = made.shift + 1.42 * skew / (variance * made.standard);
    } else if (added > 0 || shift != 0) {
        made.second_order = HUGE_VAL;
    }
}

double square(double x) { return x * x; }

/// Each variable's part of the variance, with what it has in common with others; the sum of them.
double share_out(const UncertainCall& call, FirstOrder& made)
{
    const std::size_t n = call.variables.size(), count = call.numbers.size();
    made.shares.resize(n);
    for (std::size_t v = 0; v < n; ++v) made.shares[v] = square(part(call, made, v));
    for (std::size_t i = 0; i < count && call.correlated(); ++i)
        for (std::size_t k = 0; k < count; ++k)
            if (i != k)
                made.shares[call.numbers[i]] += call.correlation[i * count + k] * part(call, made, call.numbers[i]) *
                                                part(call, made, call.numbers[k]);
    double variance = 0;
    for (const double share : made.shares) variance += share;
    return variance;
}

/// Joins the relation's own contribution e to what the inputs make: y (1 + e), or y + e, with e normal. What the inputs
/// were doubted for weighs less beside it.
void join_relation(const Scatter& relation, FirstOrder& made)
{
    made.by_inputs = made.standard;
    if (relation.amount == 0) return;
    made.by_relation = relation.in_unit ? relation.amount : std::abs(made.value) * relation.amount;
    const double mixed = relation.in_unit ? 0 : relation.amount * relation.amount;  // of e with each input
    const double inputs = made.by_inputs * made.by_inputs, own = made.by_relation * made.by_relation;
    const double variance = inputs + own;
    if (variance == 0) return;
    made.standard = std::sqrt(variance);
    made.relation_share = own / variance;
    for (double& share : made.shares) share *= inputs / variance;
    if (inputs > 0) {
        const double second = inputs * std::pow(1 + made.second_order, 2) + mixed * inputs + own;
        made.second_order = std::sqrt(second / variance) - 1;
    }
    made.shift *= made.by_inputs / made.standard;
    made.skew += 2 * made.value * mixed * inputs;
    made.bend = made.shift + 1.42 * made.skew / (variance * made.standard);
    made.flattening *= std::pow(inputs / variance, 2);
}

}  // namespace

cutwater_status first_order(UncertainCall& call, double reach, FirstOrder& made, cutwater_refusal* refusal)
{
    const std::size_t n = call.variables.size();
    Probe probe(*call.function, call.given, call.result);
    if (const auto status = probe.ask(made.value, refusal); status != CUTWATER_OK) return status;
    made.slopes.resize(n);
    for (std::size_t i = 0; i < n; ++i) {
        const Uncertain& u = call.variables[i];
        double& x = call.place(probe.given, i);
        const Slope slope = slope_at([&](double moved) { return x = moved, probe(); }, u.at, made.value, u.standard,
                                     false);
        x = u.at;
        if (std::isnan(slope.value)) {
            refuse(CUTWATER_NO_ANSWER,
                   "the function refuses the values beside it, so that its influence cannot be told.", refusal);
            blame(*call.function, u.input, u.in_series ? static_cast<std::int64_t>(u.point) : -1, refusal);
            return CUTWATER_NO_ANSWER;
        }
        made.slopes[i] = slope.value;
        made.kinked = made.kinked || slope.kinked;
    }
    double variance = share_out(call, made);
    double largest = 0;
    for (std::size_t i = 0; i < n; ++i) largest += square(part(call, made, i));
    if (variance <= 1e-15 * largest) variance = 0;  // full correlation that cancels
    made.standard = std::sqrt(variance);
    for (std::size_t i = 0; i < n; ++i) {
        made.shares[i] = variance > 0 ? made.shares[i] / variance : 0;
        if (variance > 0)
            made.flattening += flatness(call.variables[i].spread) * square(square(part(call, made, i)) / variance);
    }
    if (n) second_order(call, reach, probe, made);
    join_relation(call.relation, made);
    return CUTWATER_OK;
}

}  // namespace cutwater

// The uncertainty of a result: first order by JCGM 100:2008, Monte Carlo by JCGM 101:2008.
#pragma once

#include "answers/probe.hpp"

#include <cutwater/answers.h>

#include <vector>

namespace cutwater {

/// All numbers NaN, all counts 0; arrays are left alone.
void spoil(cutwater_uncertainty_report& report) noexcept;

/// stated: the scatter that the record states counts where the caller does not say otherwise.
cutwater_status uncertainty(const FunctionInfo& f, std::span<const cutwater_value> values,
                            std::span<const cutwater_value> uncertainties, const cutwater_uncertainty_options& options,
                            cutwater_uncertainty_report& report, cutwater_refusal* refusal, bool stated = true);

/// One number that is not exact: an input, or a point of a series.
struct Uncertain {
    std::size_t input;
    std::size_t point;  // of a series
    bool in_series;
    double at;        // the estimate
    double standard;  // standard uncertainty, above 0
    cutwater_spread spread;
};

/// A question made ready: all that first order and Monte Carlo have in common.
struct UncertainCall {
    const FunctionInfo* function = nullptr;
    std::size_t result = 0;
    GivenInputs given;
    std::vector<std::vector<double>> series;  // own copies, one an input, of those whose points are moved
    std::vector<Uncertain> variables;
    std::vector<std::size_t> numbers;  // the variables that are inputs of their own: only they can be correlated
    std::vector<double> correlation;   // square, by numbers; empty when there is none
    std::vector<double> factor;        // lower triangle L with L Lᵀ the correlation, likewise
    Scatter relation;                  // its own standard uncertainty: a part of the result, or in its unit; normal

    double& place(GivenInputs& inputs, std::size_t variable);
    bool correlated() const { return !correlation.empty(); }
};

/// Fills call.factor; false when no joint distribution has these coefficients.
bool factorise(UncertainCall& call);

struct FirstOrder {
    double value = 0;
    double standard = 0;
    double by_inputs = 0;    // the inputs' part of it
    double by_relation = 0;  // the relation's own
    double relation_share = 0;
    std::vector<double> slopes;  // by variables
    std::vector<double> shares;
    double second_order = 0;  // relative change of the standard uncertainty by the second-order terms
    double shift = 0;         // of the mean by them, in standard uncertainties
    double skew = 0;          // third moment of the result by them
    double bend = 0;          // of the 95 % interval's ends by them, likewise: shift and skewness together
    double flattening = 0;    // excess kurtosis of the result as far as the inputs' spreads make it
    bool kinked = false;      // a corner or a leap at the estimates
    bool strays = false;      // or further off, as far as was looked
    bool near_end = false;    // part of what the inputs may be is refused
};

/// reach: how many standard uncertainties about the estimates are looked at.
cutwater_status first_order(UncertainCall& call, double reach, FirstOrder& made, cutwater_refusal* refusal);

struct Trials {
    std::size_t count = 0, refused = 0;
    double mean = 0, deviation = 0, low = 0, high = 0;
};

cutwater_status monte_carlo(UncertainCall& call, std::size_t trials, std::uint64_t seed, double coverage, Trials& made,
                            cutwater_refusal* refusal);

}  // namespace cutwater

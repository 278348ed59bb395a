// What a search has seen of a result along one input: the points looked at, where it is refused, what it runs from and
// to.
#pragma once

#include "answers/solve.hpp"

#include <cmath>

namespace cutwater {

struct Sample {
    double x;
    double g;  // result less target; NaN where refused
    bool known() const { return !std::isnan(g); }
};

class Samples {
public:
    explicit Samples(const SolveQuestion& q);

    double g(double x)
    {
        *x_ = x;
        return probe_() - target_;
    }
    Sample at(double x) { return {x, g(x)}; }
    cutwater_status ask(double x, cutwater_refusal* refusal);

    const std::vector<Sample>& points() const { return points_; }  // rising, once look_first has been
    bool whole() const { return whole_; }
    double target() const { return target_; }
    const Interval& where() const { return where_; }

    /// The first look: from end to end, at other inputs of the same quantity, and closer if nothing could be computed.
    void look_first();
    /// Once more between each two points.
    void look_between();
    /// Before an answer is denied: some thousand points, closer towards the ends, and their borders settled (as below).
    bool look_closely();

    bool any_known() const;
    std::size_t count_known() const;
    /// Finds the last value that can be computed wherever computable and refused points are neighbours. False: there
    /// were none.
    bool settle_borders();
    /// The last value beside `known` that can be computed, on the way to `refused`.
    Sample border(Sample known, Sample refused);
    /// First and last value that can be computed.
    Stretch computable() const;
    /// Whether the results seen only rise, or only fall, over one stretch.
    bool single_slope() const;
    /// Between two values: a whole number where the input is one.
    double middle(double a, double b) const;

private:
    void look(const std::vector<double>& rising);
    void take_in(std::vector<Sample> rising);
    std::vector<double> kindred(bool numbers) const;
    void approach_zero();
    void look_inside();

    const SolveQuestion* question_;
    Probe probe_;
    double* x_;
    double target_;
    bool whole_;
    Interval where_;
    std::vector<Sample> points_;
};

}  // namespace cutwater

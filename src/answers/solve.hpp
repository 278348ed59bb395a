// A function solved backwards for one of its inputs.
#pragma once

#include "answers/probe.hpp"

#include <cutwater/answers.h>

#include <vector>

namespace cutwater {

struct SolveQuestion {
    const FunctionInfo* function = nullptr;
    GivenInputs given;
    std::size_t unknown = 0;
    std::size_t result = 0;
    double target = 0;
    Interval where;  // the record's interval, narrowed to what the caller wants
};

struct Stretch {
    double low, high;
    bool wide() const { return low < high; }
};

struct Solutions {
    std::vector<Stretch>
        answers;        // rising: a value that gives the target, or a wide stretch where all that were looked at do
    bool jump = false;  // the result leaps over the target inside of `leap`
    Stretch leap{};
    double before = 0, after = 0;  // the results at the leap's two sides
    std::size_t computed = 0;      // values looked at that could be computed
    Stretch searched{};            // first and last value looked at
    Stretch results{};             // least and greatest result seen
    double least_at = 0, greatest_at = 0;
    bool skipped = false;        // parts of the interval are refused
    Stretch computable{};        // the first and last value that could be computed
    cutwater_refusal example{};  // a refusal, when nothing could be computed
};

/// Reads the question. A refusal blames the unknown or says what is wrong with the target.
cutwater_status ask_solve(const FunctionInfo& f, std::span<const cutwater_value> values, const char* unknown,
                          const char* result, const cutwater_value* target, double low, double high,
                          SolveQuestion& question, cutwater_refusal* refusal);

Solutions solve(const SolveQuestion& question);

/// The only solution, or a refusal.
cutwater_status one_solution(const SolveQuestion& q, const Solutions& s, double& found, cutwater_refusal* refusal);

/// All solutions as numbers, or a refusal: there is none, or one is a wide stretch.
cutwater_status all_solutions(const SolveQuestion& q, const Solutions& s, std::vector<double>& found,
                              cutwater_refusal* refusal);

/// The sentence for none, several, a stretch, a jump.
cutwater_status refuse_solutions(const SolveQuestion& q, const Solutions& s, cutwater_refusal* refusal);

}  // namespace cutwater

// The working shown: what a call was given, did, found and checked. Gathered once, then written in one of four forms.
#pragma once

#include "call/arguments.hpp"

#include <cutwater/answers.h>

#include <string>
#include <vector>

namespace cutwater {

struct Working {
    struct Input {
        enum class State { read, not_read, not_looked_at } state = State::not_looked_at;
        bool by_default = false;
        Given given{};
        const char* text = nullptr;  // as it was given, when that was a text
    };
    struct Step {
        std::string symbol;
        std::string equation;
        double value;
        std::string unit;
    };
    struct Result {
        double number = 0;
        const char* word = nullptr;
        std::vector<double> series;
    };
    struct Limit {
        enum class State { inside, outside, not_looked_at } state = State::not_looked_at;
        double worst = 0;      // the number nearest to an end, or the one outside; of a series any of its points
        bool any_end = false;  // whether there is an end to come near to
        double end = 0;        // the nearest finite one
        double distance = 0;   // to it
    };
    enum class Relation { held, broken, not_looked_at };

    const FunctionInfo* function = nullptr;
    std::vector<Input> inputs;
    std::vector<Step> steps;
    std::vector<Result> results;  // empty when refused
    std::vector<Limit> limits;    // one an input; not_looked_at for a choice
    std::vector<Relation> relations;
    cutwater_status status = CUTWATER_OK;
    cutwater_refusal refusal{};
    std::string substituted;  // empty when it could not be done safely
};

Working work(const FunctionInfo& f, std::span<const cutwater_value> values);

void write_text(const Working& w, bool plain_ascii, std::string& to);
void write_markdown(const Working& w, std::string& to);
void write_json(const Working& w, std::string& to);

/// The refusal alone, for a function that does not exist.
std::string refusal_alone(const cutwater_refusal& refusal, std::int32_t form);

/// "above 0 bara", "from 0 to 1"; empty for an input without ends.
std::string interval_text(const InputInfo& in);
/// The number or word that an input has, in the record's unit; a series by its first points.
std::string value_text(const InputInfo& in, const Working::Input& input);
/// What was given where that says more than the value: "440 US gpm"; else empty.
std::string given_text(const InputInfo& in, const Working::Input& input);
std::string series_text(const double* data, std::size_t length, std::ptrdiff_t stride, const char* unit, int digits);
std::string result_text(const ResultInfo& out, const Working::Result& result, int digits);
/// "0.28 below 1 (38.9 % of the value)"; empty when there is no end.
std::string closeness_text(const InputInfo& in, const Working::Limit& limit);
/// What is stated of how far the relation may be off, a sentence a result.
std::vector<std::string> scatter(const Working& w);
const char* relation_text(Working::Relation state);

}  // namespace cutwater

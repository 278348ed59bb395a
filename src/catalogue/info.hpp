// A record without its types: what the generator, the answers and every door read.
#pragma once

#include <cutwater/base.h>
#include <cutwater/unit_info.hpp>

#include "catalogue/interval.hpp"
#include "catalogue/raw_series.hpp"
#include "catalogue/step_listener.hpp"

#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>

namespace cutwater {

enum class Kind { quantity, choice, series };

struct InputInfo {
    const char* name;       // without its unit
    const char* full_name;  // ends in the unit's suffix; the name at every door
    const char* symbol;
    Kind kind;
    const QuantityInfo* quantity;  // null for a choice
    const UnitInfo* unit;          // null for a choice
    Interval interval;             // of every element, for a series
    const char* meaning;
    std::span<const char* const> words;
    bool has_default;
    double fallback;           // a number, or the position of a word
    bool whole;                // a count
    std::size_t least_points;  // of a series
    bool rising;               // of a series: strictly
};

/// How far a relation itself may be off, by its literature: about 95 of 100 cases lie within plus or minus so much.
struct Scatter {
    double amount = 0;  // a part of the result, or in its unit; 0 where nothing is stated
    bool in_unit = false;
};

struct ResultInfo {
    const char* name;
    const char* full_name;
    const char* symbol;
    Kind kind;  // choice: a word
    const QuantityInfo* quantity;
    const UnitInfo* unit;
    const char* meaning;
    std::span<const char* const> words;
    Scatter scatter{};
};

/// The one NaN that leaves out an optional number.
inline constexpr std::uint64_t left_out_bits = 0x7ff8'6c65'6674'6f75;

/// One input of a call, as the record wants it: a number in the record's unit, a series likewise, or a word's position.
struct Given {
    double number = 0;
    RawSeries series{};
    int word = 0;
};

/// One result, in the record's unit. A series goes to the caller's buffer; length is what there was to store.
struct Result {
    double number = 0;
    const char* word = nullptr;
    double* data = nullptr;
    std::size_t capacity = 0;
    std::size_t length = 0;
};

struct Example {
    const char* inputs = "";  // an argument list as in the golden files
    const char* results = "";
    const char* source = "";
};

/// Rows of an array call. Series and words are shared by all rows.
struct RowsJob {
    std::size_t rows = 0;
    const cutwater_column* columns = nullptr;  // one an input, unused for series and choices
    const Given* shared = nullptr;             // one an input, used for series and choices
    cutwater_result_column* results = nullptr;
    std::uint8_t* bitmap = nullptr;
    std::size_t refused = 0;
    std::size_t first_refused = 0;
    Given* first_given = nullptr;  // the first refused row's inputs, kept before a result can overwrite them
};

/// A condition between inputs, by their positions; the first is the one to blame.
struct RelationInfo {
    const char* sentence;
    std::span<const std::size_t> inputs;
};

/// All that a record says.
struct FunctionText {
    const char* name;
    const char* type_name;  // of several results together, where a language has types: NpshAvailable
    const char* meaning;
    const char* also;  // other words for it, parted by '|'
    std::span<const InputInfo> inputs;
    std::span<const ResultInfo> results;
    const char* equation;
    std::span<const RelationInfo> relations;
    const char* source;
    std::span<const char* const> cautions;
    Example example;
    bool turns;  // its first input into its result
};

/// A function of plain numbers, words and series whose signature only those know who make it from the same record.
struct AnyFlat {};
template <class Signature>
struct Flat : AnyFlat {
    constexpr explicit Flat(Signature* of) : function(of) {}
    Signature* function;
};

/// The same with what can be called without knowing the formula's types.
struct FunctionInfo : FunctionText {
    /// Checks, computes, stores. Numbers refused are reported to refusal, which may be null.
    cutwater_status (*call)(const Given* given, Result* results, StepListener* listener, cutwater_refusal* refusal);
    /// Null for a function with a series or a word among its results.
    void (*rows)(RowsJob& job);
    /// What the flat C API exports.
    const AnyFlat* flat;
};

struct Family {
    const char* name;   // in identifiers and file names
    const char* title;  // for people
    int place;          // families are told in this order; of two with the same, by name
    std::span<const FunctionInfo* const> functions;
};

}  // namespace cutwater

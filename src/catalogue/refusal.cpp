#include "catalogue/refusal.hpp"

#include "catalogue/nearest.hpp"
#include "catalogue/prose.hpp"
#include "catalogue/sentence.hpp"
#include "units/message.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <limits>

namespace cutwater {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

/// Prose into a fixed buffer.
class Writer final : public Prose {
public:
    Writer(char* buffer, std::size_t capacity) : message_(buffer, capacity) {}
    void put(std::string_view text) override { message_.add("{}", text); }
    std::size_t room() const noexcept override
    {
        const std::size_t room = message_.room();
        return room > kept_ ? room - kept_ : 0;
    }
    /// For what is to follow a list: its cut must not cost the sentence its end.
    void keep(std::size_t bytes) { kept_ = bytes; }

private:
    Message message_;
    std::size_t kept_ = 0;
};

const char* symbol_of(const InputInfo& in) { return unit_symbol(in.unit); }
const char* space_before(const char* unit) { return *unit ? " " : ""; }

/// Of a number or a series.
bool is_fraction(const InputInfo& in) { return std::string_view(in.quantity->type) == "Fraction"; }

/// Blames an input in the record; the message is still empty.
void start(const FunctionText& f, std::size_t input, double value, std::int64_t element, cutwater_status status,
           cutwater_refusal& r)
{
    r.status = status;
    r.argument = input < f.inputs.size() ? static_cast<std::int32_t>(input) : -1;
    r.element = element;
    r.value = value;
    r.low = -std::numeric_limits<double>::infinity();
    r.high = std::numeric_limits<double>::infinity();
    r.low_open = r.high_open = 1;
    r.name[0] = r.unit[0] = r.message[0] = 0;
    if (input >= f.inputs.size()) return;
    const InputInfo& in = f.inputs[input];
    Message(r.name, sizeof r.name).add("{}", in.full_name);
    Message(r.unit, sizeof r.unit).add("{}", symbol_of(in));
    r.low = in.interval.low;
    r.high = in.interval.high;
    r.low_open = in.interval.low_open;
    r.high_open = in.interval.high_open;
}

/// " (meaning).", which ends most sentences.
std::size_t meaning_length(const InputInfo& in) { return std::string_view(in.meaning).size() + 4; }

template <class Write>
cutwater_status refuse_input(const FunctionText& f, std::size_t input, double value, std::int64_t element,
                             cutwater_status status, cutwater_refusal* refusal, Write&& write) noexcept
{
    if (refusal) {
        start(f, input, value, element, status, *refusal);
        Writer to(refusal->message, sizeof refusal->message);
        to.add("{}: ", f.name);
        write(to, f.inputs[std::min(input, f.inputs.size() - 1)]);
    }
    return status;
}

}  // namespace

void clear(cutwater_refusal* refusal) noexcept
{
    if (!refusal) return;
    *refusal = cutwater_refusal{};
    refusal->argument = -1;
    refusal->element = -1;
    refusal->value = nan;
    refusal->low = -std::numeric_limits<double>::infinity();
    refusal->high = std::numeric_limits<double>::infinity();
    refusal->low_open = refusal->high_open = 1;
}

cutwater_status refuse_number(const FunctionText& f, std::size_t input, double value, std::int64_t element,
                              cutwater_refusal* refusal) noexcept
{
    const cutwater_status status = std::isfinite(value) ? CUTWATER_OUT_OF_INTERVAL : CUTWATER_NOT_FINITE;
    return refuse_input(f, input, value, element, status, refusal, [&](Writer& to, const InputInfo& in) {
        to.add("{}", in.full_name);
        if (element >= 0) to.add(" has at point {} (counted from 1)", element + 1);
        if (std::isnan(value))
            to.add("{} no number (NaN)", element >= 0 ? "" : " is");
        else
            to.add("{} {:.10g}{}{}", element >= 0 ? "" : " is", value, space_before(symbol_of(in)), symbol_of(in));
        to.add("; it must be ");
        write_interval(to, in);
        if (is_fraction(in) && value > 1 && value <= 100)
            to.add(", as a fraction: write {:.10g} or \"{:.10g} %\"", value / 100, value);
        to.add(" ({}).", in.meaning);
    });
}

cutwater_status refuse_word(const FunctionText& f, std::size_t input, const char* word,
                            cutwater_refusal* refusal) noexcept
{
    return refuse_input(f, input, nan, -1, CUTWATER_UNKNOWN_WORD, refusal, [&](Writer& to, const InputInfo& in) {
        if (word) {
            to.add("{} is \"{}\"; ", in.full_name, Quoted(word).view());
            const std::size_t near = nearest_word(word, in.words);
            if (near < in.words.size()) to.add("is it \"{}\"? ", in.words[near]);
            to.put(near < in.words.size() ? "It must be " : "it must be ");
        } else {
            to.add("{} must be ", in.full_name);
        }
        to.keep(meaning_length(in));
        write_words(to, in.words);
        to.add(" ({}).", in.meaning);
    });
}

cutwater_status refuse_series(const FunctionText& f, std::size_t input, RawSeries series,
                              cutwater_refusal* refusal) noexcept
{
    if (!series.data && series.length) return refuse_missing(f, input, refusal);
    const InputInfo& in = f.inputs[input];
    if (series.length < in.least_points)
        return refuse_input(f, input, nan, -1, CUTWATER_BAD_SERIES, refusal, [&](Writer& to, const InputInfo&) {
            to.add("{} has {} point{}; at least {} are needed ({}).", in.full_name, series.length,
                   series.length == 1 ? "" : "s", in.least_points, in.meaning);
        });
    std::size_t fall = 1;
    while (series[fall] > series[fall - 1]) ++fall;
    return refuse_input(
        f, input, series[fall], static_cast<std::int64_t>(fall), CUTWATER_BAD_SERIES, refusal,
        [&](Writer& to, const InputInfo&) {
            to.add("{} must rise from point to point; point {} (counted from 1) is {:.10g}{}{} after {:.10g}.",
                   in.full_name, fall + 1, series[fall], space_before(symbol_of(in)), symbol_of(in), series[fall - 1]);
        });
}

cutwater_status refuse_relation(const FunctionText& f, std::size_t relation, double value, std::size_t points,
                                cutwater_refusal* refusal) noexcept
{
    const std::size_t input = f.relations[relation].inputs.front();
    return refuse_input(f, input, value, -1, CUTWATER_CONTRADICTION, refusal, [&](Writer& to, const InputInfo& in) {
        if (!std::isnan(value))
            to.add("{} is {:.10g}{}{}, but ", in.full_name, value, space_before(symbol_of(in)), symbol_of(in));
        else if (points > 0)
            to.add("{}, a series of {} point{}: ", in.full_name, points, points == 1 ? "" : "s");
        to.add("{}.", f.relations[relation].sentence);
    });
}

cutwater_status refuse_no_value(const FunctionText& f, const NoValue& why, double value,
                                cutwater_refusal* refusal) noexcept
{
    const std::size_t input = find_input(f, why.argument);
    return refuse_input(f, input, value, -1, why.status, refusal, [&](Writer& to, const InputInfo& in) {
        // A number outside what the call can answer is named, as it would be outside its interval.
        if (why.status == CUTWATER_OUT_OF_INTERVAL && input < f.inputs.size()) to.add("{}: ", in.full_name);
        // our own reader of {0}…: fmt's would throw on a wrong pattern
        std::string_view rest = why.sentence;
        for (std::size_t at; (at = rest.find('{')) != rest.npos; rest.remove_prefix(at + 3)) {
            const bool placed = at + 2 < rest.size() && rest[at + 1] >= '0' && rest[at + 1] <= '2' &&
                                rest[at + 2] == '}';
            if (!placed) break;
            const NoValue::Number& n = why.numbers[rest[at + 1] - '0'];
            to.add("{}{:.6g}{}{}", rest.substr(0, at), n.value, space_before(n.unit), n.unit);
        }
        to.put(rest);
        to.add(".");
    });
}

cutwater_status refuse_overflow(const FunctionText& f, const bool* are_finite, cutwater_refusal* refusal) noexcept
{
    std::size_t result = 0;
    while (are_finite[result]) ++result;
    return refuse_input(f, f.inputs.size(), nan, -1, CUTWATER_OVERFLOW, refusal, [&](Writer& to, const InputInfo&) {
        to.add("{} would not be a finite number: the inputs are too large or too small together.",
               f.results[result].full_name);
    });
}

cutwater_status refuse_missing(const FunctionText& f, std::size_t input, cutwater_refusal* refusal) noexcept
{
    return refuse_input(f, input, nan, -1, CUTWATER_MISSING, refusal, [&](Writer& to, const InputInfo& in) {
        to.add("{} was not given ({}; ", in.full_name, in.meaning);
        to.keep(std::string_view(").").size());
        write_permitted(to, in);
        to.add(").");
    });
}

cutwater_status refuse_kind(const FunctionText& f, std::size_t input, const char* given,
                            cutwater_refusal* refusal) noexcept
{
    return refuse_input(f, input, nan, -1, CUTWATER_WRONG_KIND, refusal, [&](Writer& to, const InputInfo& in) {
        to.add("{} was given {}; it must be ", in.full_name, given);
        to.keep(meaning_length(in));
        write_kind(to, in);
        to.add(" ({}).", in.meaning);
    });
}

cutwater_status refuse_buffer(const FunctionText& f, std::size_t result, std::size_t needed, std::size_t capacity,
                              cutwater_refusal* refusal) noexcept
{
    return refuse_input(
        f, f.inputs.size(), nan, -1, CUTWATER_BUFFER_TOO_SMALL, refusal, [&](Writer& to, const InputInfo&) {
            to.add("{} has {} points and the buffer holds {}.", f.results[result].full_name, needed, capacity);
        });
}

cutwater_status refuse(cutwater_status status, std::string_view sentence, cutwater_refusal* refusal) noexcept
{
    if (refusal) {
        clear(refusal);
        refusal->status = status;
        sentence_of(refusal).add("{}", sentence);
    }
    return status;
}

Message sentence_of(cutwater_refusal* refusal) noexcept
{
    return refusal ? Message(refusal->message, sizeof refusal->message) : Message(nullptr, 0);
}

void blame(const FunctionText& f, std::size_t input, std::int64_t element, cutwater_refusal* refusal) noexcept
{
    if (!refusal) return;
    const InputInfo& in = f.inputs[input];
    char sentence[sizeof refusal->message];
    std::copy(std::begin(refusal->message), std::end(refusal->message), sentence);
    refusal->argument = static_cast<std::int32_t>(input);
    refusal->element = element;
    refusal->low = in.interval.low;
    refusal->high = in.interval.high;
    refusal->low_open = in.interval.low_open;
    refusal->high_open = in.interval.high_open;
    Message(refusal->name, sizeof refusal->name).add("{}", in.full_name);
    Writer to(refusal->message, sizeof refusal->message);
    to.add("{}: {}", f.name, in.full_name);
    if (element >= 0) to.add(", point {} (counted from 1)", element + 1);
    to.add(": {}", static_cast<const char*>(sentence));
}

std::size_t find_input(const FunctionText& f, std::string_view name) noexcept
{
    for (std::size_t i = 0; i < f.inputs.size(); ++i)
        if (name == f.inputs[i].name || name == f.inputs[i].full_name) return i;
    return f.inputs.size();
}

}  // namespace cutwater

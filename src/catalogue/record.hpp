// A record tells the whole of a formula. It is bound to the formula's signature: a wrong quantity, order or count of
// inputs or results does not compile.
#pragma once

#include "catalogue/cautions.hpp"
#include "catalogue/choosing.hpp"
#include "catalogue/info.hpp"
#include "catalogue/outcome.hpp"
#include "catalogue/series.hpp"
#include "catalogue/steps.hpp"
#include "catalogue/words.hpp"

#include <algorithm>
#include <array>
#include <concepts>
#include <optional>
#include <tuple>
#include <type_traits>

namespace cutwater {

/// What a record says of one input; P is the formula's parameter type.
template <class P>
struct Input {
    using Quantity = P;
    const char* name;
    const char* symbol;
    Unit<P> unit;
    Interval interval;
    const char* meaning;
    std::optional<double> fallback{};
};

template <class Q>
struct Input<Series<Q>> {
    using Quantity = Q;
    const char* name;
    const char* symbol;
    Unit<Q> unit;
    Interval interval;
    const char* meaning;
    std::size_t least_points;
    bool rising;
};

template <class E>
    requires std::is_enum_v<E>
struct Input<E> {
    const char* name;
    const char* symbol;
    const char* meaning;
    std::optional<E> fallback{};
};

template <class Q>
constexpr Input<Q> input(const char* name, const char* symbol, Unit<Q> unit, Interval interval, const char* meaning)
{
    return {name, symbol, unit, interval, meaning, {}};
}

/// An input that may be left out.
template <class Q>
constexpr Input<Q> input(const char* name, const char* symbol, Unit<Q> unit, Interval interval, const char* meaning,
                         double fallback)
{
    return {name, symbol, unit, interval, meaning, fallback};
}

enum class Order { free, rising };

template <class Q>
constexpr Input<Series<Q>> series(const char* name, const char* symbol, Unit<Q> unit, Interval each,
                                  const char* meaning, std::size_t least_points = 2, Order order = Order::free)
{
    return {name, symbol, unit, each, meaning, least_points, order == Order::rising};
}

template <class E>
constexpr Input<E> choice(const char* name, const char* symbol, const char* meaning, std::optional<E> fallback = {})
{
    return {name, symbol, meaning, fallback};
}

/// What a record says of one result; T is a quantity, Points of one, or an enum with words.
template <class T>
struct Output {
    const char* name;
    const char* symbol;
    Unit<T> unit;
    const char* meaning;
};

template <class Q>
struct Output<Points<Q>> {
    const char* name;
    const char* symbol;
    Unit<Q> unit;
    const char* meaning;
};

template <class E>
    requires std::is_enum_v<E>
struct Output<E> {
    const char* name;
    const char* symbol;
    const char* meaning;
};

template <class Q>
constexpr Output<Q> output(const char* name, const char* symbol, Unit<Q> unit, const char* meaning)
{
    return {name, symbol, unit, meaning};
}

template <class Q>
constexpr Output<Points<Q>> output_series(const char* name, const char* symbol, Unit<Q> unit, const char* meaning)
{
    return {name, symbol, unit, meaning};
}

template <class E>
constexpr Output<E> output_word(const char* name, const char* symbol, const char* meaning)
{
    return {name, symbol, meaning};
}

/// The scatter of one result, by its name here.
struct ScatterOf {
    const char* result = nullptr;
    Scatter scatter{};
};

inline constexpr std::size_t most_scatters = 4;

/// A list of its own and no bare array: GCC 12 cannot convert a record that skips one of these.
struct Scatters {
    ScatterOf of[most_scatters]{};
    constexpr Scatters() = default;
    template <std::same_as<ScatterOf>... S>
    constexpr Scatters(S... given) : of{given...}
    {
    }
};

/// As a part of the result: plus_minus("force", 0.3) is plus or minus 30 %.
constexpr ScatterOf plus_minus(const char* result, double part) { return {result, {part, false}}; }

/// In the result's unit; of a temperature, a difference.
constexpr ScatterOf plus_minus_in_unit(const char* result, double amount) { return {result, {amount, true}}; }

/// A name as a template's argument.
template <std::size_t N>
struct Name {
    char text[N]{};
    consteval Name(const char (&name)[N]) { std::copy_n(name, N, text); }
};

/// A condition between inputs and the sentence that says it. The input named first is the one to blame.
template <class Holds, std::size_t N>
struct Relation {
    std::array<const char*, N> inputs;
    Holds holds;
    const char* sentence;
};

/// `relation<"vapour_pressure", "surface_pressure">([](AbsolutePressure vapour, AbsolutePressure surface) { … }, "…")`:
/// the inputs by the record's names, without their units, and a predicate that takes just those, in that order.
template <Name... Inputs, class Holds>
constexpr auto relation(Holds holds, const char* sentence)
{
    return Relation<Holds, sizeof...(Inputs)>{{Inputs.text...}, holds, sentence};
}

namespace binding {

/// The quantity that a record gives for a formula's parameter or result: itself, but for one that is kept as given.
template <class T>
struct QuantityOf {
    using type = T;
};

/// A tuple of what the record says that tells a wrong count or quantity in one sentence.
template <template <class> class Put, class... P>
struct Matched : std::tuple<Put<P>...> {
    template <class... Q>
    constexpr Matched(Put<Q>... put) : std::tuple<Put<P>...>(take(put...))
    {
    }

private:
    template <class... Q>
    static constexpr std::tuple<Put<P>...> take(Put<Q>... put)
    {
        constexpr bool same_count = sizeof...(Q) == sizeof...(P);
        static_assert(same_count, "the record has more or fewer inputs or results than its formula");
        if constexpr (same_count) {
            constexpr bool same_quantities = (std::is_same_v<typename QuantityOf<P>::type, Q> && ...);
            static_assert(
                same_quantities,
                "the record gives an input or result the unit of another quantity than its formula has there");
            if constexpr (same_quantities) return {put...};
        }
    }
};

template <class T>
struct ResultsOf {
    using Values = std::tuple<T>;
    using Outputs = Matched<Output, T>;
    static constexpr bool may_fail = false;
};
template <class... T>
struct ResultsOf<std::tuple<T...>> {
    using Values = std::tuple<T...>;
    using Outputs = Matched<Output, T...>;
    static constexpr bool may_fail = false;
};
template <class T>
struct ResultsOf<Outcome<T>> : ResultsOf<T> {
    static constexpr bool may_fail = true;
};

template <class List, class... P>
struct Signature;

// Peels the parameters off one by one; a last parameter of type Steps is the listener and no input.
template <class... Done, class First, class... Rest>
struct Signature<std::tuple<Done...>, First, Rest...> : Signature<std::tuple<Done..., First>, Rest...> {};
template <class... Done>
struct Signature<std::tuple<Done...>, Steps> : Signature<std::tuple<Done...>> {
    static constexpr bool shows_steps = true;
};
template <class... Done>
struct Signature<std::tuple<Done...>> {
    using Parameters = std::tuple<Done...>;
    using Inputs = Matched<Input, Done...>;
    static constexpr bool shows_steps = false;
};

template <class F>
struct FormulaTraits;
template <class R, class... P>
struct FormulaTraits<R (*)(P...)> : Signature<std::tuple<>, P...>, ResultsOf<R> {};

}  // namespace binding

inline constexpr std::size_t most_cautions = 6;
inline constexpr std::size_t most_given_once = 8;

template <auto Formula>
struct Record {
    using Traits = binding::FormulaTraits<decltype(Formula)>;
    static constexpr auto formula = Formula;

    const char* name;
    const char* meaning;
    const char* also = "";  // the trade's other words for it, parted by '|'; where `find` looks besides
    typename Traits::Inputs inputs;
    typename Traits::Outputs results;
    const char* equation;
    const char* source;
    Scatters scatter{};  // of results, where the literature states it; `uncertainty` adds it
    const char* cautions[most_cautions]{};
    /// Inputs, by their names here, that callers of the array form usually give once for all rows: a loop of its own
    /// then computes once what depends on them alone.
    const char* given_once[most_given_once]{};
    /// The formula does no harm with inputs within their intervals that break a relation: then a row's relations and
    /// its formula share what both compute. Not for a formula that would loop long or convert what C++ does not define.
    bool sound_within_intervals = false;
    /// The formula does no harm with any numbers at all, NaN and infinities included: it is arithmetic and elementary
    /// functions. Then a row is computed with what it was given, whether permitted or not, and judged beside.
    bool sound_anywhere = false;
    Example example;
    bool turns =
        false;  // turns its first input into its result: what refuses the one where the other is wanted names it

    static constexpr std::tuple<> relations{};
};

/// A record with conditions between its inputs.
template <auto Formula, class... Relations>
struct RelatedRecord : Record<Formula> {
    std::tuple<Relations...> relations;
};

template <auto Formula, class... Relations>
constexpr auto record(const Record<Formula>& text, Relations... relations)
{
    return RelatedRecord<Formula, Relations...>{text, {relations...}};
}

}  // namespace cutwater

// Checks and runs a formula: the record's intervals, then its relations, then the formula, then its outcome.
#pragma once

#include "catalogue/describe.hpp"
#include "catalogue/refusal.hpp"

#include <cmath>
#include <limits>
#include <new>

namespace cutwater::binding {

/// What stands for a parameter before it is checked: a number in the record's unit, a series, or a word's position.
template <class P>
struct RawOf {
    using type = double;
};
template <class Q>
struct RawOf<Series<Q>> {
    using type = RawSeries;
};
template <class E>
    requires std::is_enum_v<E>
struct RawOf<E> {
    using type = int;
};
template <class List>
struct RawTuple;
template <class... P>
struct RawTuple<std::tuple<P...>> {
    using type = std::tuple<typename RawOf<P>::type...>;
};
template <const auto& R>
using Raws = typename RawTuple<typename TraitsOf<R>::Parameters>::type;
template <const auto& R>
using Values = typename TraitsOf<R>::Values;

template <class P>
constexpr bool permitted(const Input<P>& in, double x)
{
    if constexpr (std::is_same_v<P, Count>)
        return in.interval.contains(x) & (x == std::floor(x));
    else
        return in.interval.contains(x);
}

template <class P>
P typed(const Input<P>& in, double x)
{
    return in.unit(x);
}
template <class Q>
Series<Q> typed(const Input<Series<Q>>& in, RawSeries s)
{
    return Series<Q>(s, *in.unit.info);
}
template <class E>
    requires std::is_enum_v<E>
E typed(const Input<E>&, int word)
{
    return static_cast<E>(word);
}

/// Position of the first element that the record does not permit; length when all are.
template <class Q>
std::size_t first_bad_element(const Input<Series<Q>>& in, RawSeries s)
{
    for (std::size_t i = 0; i < s.length; ++i)
        if (!in.interval.contains(s[i])) return i;
    return s.length;
}

inline bool rises(RawSeries s)
{
    for (std::size_t i = 1; i < s.length; ++i)
        if (!(s[i] > s[i - 1])) return false;
    return true;
}

template <const auto& R, std::size_t I>
cutwater_status check_input(const std::tuple_element_t<I, Raws<R>>& raw, cutwater_refusal* refusal)
{
    constexpr const auto& in = std::get<I>(R.inputs);
    using Raw = std::tuple_element_t<I, Raws<R>>;
    if constexpr (std::is_same_v<Raw, double>) {
        if (permitted(in, raw)) [[likely]]
            return CUTWATER_OK;
        return refuse_number(text_of<R>, I, raw, -1, refusal);
    } else if constexpr (std::is_same_v<Raw, RawSeries>) {
        if ((!raw.data && raw.length) || raw.length < in.least_points)
            return refuse_series(text_of<R>, I, raw, refusal);
        const std::size_t bad = first_bad_element(in, raw);
        if (bad < raw.length) return refuse_number(text_of<R>, I, raw[bad], static_cast<std::int64_t>(bad), refusal);
        if (in.rising && !rises(raw)) return refuse_series(text_of<R>, I, raw, refusal);
        return CUTWATER_OK;
    } else {
        if (raw >= 0 && raw < static_cast<int>(inputs_of<R>[I].words.size())) return CUTWATER_OK;
        return refuse_word(text_of<R>, I, nullptr, refusal);
    }
}

template <const auto& R>
cutwater_status check_inputs(const Raws<R>& raws, cutwater_refusal* refusal)
{
    cutwater_status status = CUTWATER_OK;
    [&]<std::size_t... I>(std::index_sequence<I...>) {
        static_cast<void>(((status = check_input<R, I>(std::get<I>(raws), refusal), status == CUTWATER_OK) && ...));
    }(std::make_index_sequence<input_count<R>>());
    return status;
}

template <const auto& R, std::size_t... I>
auto typed_all(const Raws<R>& raws, std::index_sequence<I...>)
{
    return typename TraitsOf<R>::Parameters(typed(std::get<I>(R.inputs), std::get<I>(raws))...);
}

/// Of a tuple of what the formula is given, or of references to it.
template <const auto& R, std::size_t K, class Parameters>
bool holds(const Parameters& parameters)
{
    return [&]<std::size_t... N>(std::index_sequence<N...>) {
        return std::get<K>(R.relations).holds(std::get<related_inputs<R, K>[N]>(parameters)...);
    }(std::make_index_sequence<related_inputs<R, K>.size()>());
}

/// Position of the first relation that does not hold; relation_count when all do.
template <const auto& R>
std::size_t broken_relation(const typename TraitsOf<R>::Parameters& parameters)
{
    std::size_t broken = relation_count<R>;
    [&]<std::size_t... I>(std::index_sequence<I...>) {
        static_cast<void>(((holds<R, I>(parameters) || (broken = I, false)) && ...));
    }(std::make_index_sequence<relation_count<R>>());
    return broken;
}

/// The formula's own return: the value, the tuple of values, or an outcome.
template <const auto& R>
auto run(const typename TraitsOf<R>::Parameters& parameters, [[maybe_unused]] Steps steps)
{
    constexpr auto formula = std::remove_cvref_t<decltype(R)>::formula;
    return std::apply(
        [&](const auto&... p) {
            if constexpr (TraitsOf<R>::shows_steps)
                return formula(p..., steps);
            else
                return formula(p...);
        },
        parameters);
}

template <class T>
std::tuple<T> as_tuple(T value)
{
    return std::tuple<T>(std::move(value));
}
template <class... T>
std::tuple<T...> as_tuple(std::tuple<T...> values)
{
    return values;
}

/// A result in its record's unit.
template <class T>
double number(const Output<T>& out, const T& value)
{
    return out.unit.in(value);
}

template <const auto& R, std::size_t I>
bool finite(const Values<R>& values)
{
    using T = std::tuple_element_t<I, Values<R>>;
    constexpr const auto& out = std::get<I>(R.results);
    const T& value = std::get<I>(values);
    if constexpr (std::is_enum_v<T>)
        return true;
    else if constexpr (IsPoints<T>::value)
        return std::all_of(value.begin(), value.end(), [](auto q) { return std::isfinite(out.unit.in(q)); });
    else
        return std::isfinite(number(out, value));
}

/// Position of the first result that is not a finite number; result_count when all are.
template <const auto& R>
std::size_t first_overflow(const Values<R>& values)
{
    std::size_t bad = result_count<R>;
    [&]<std::size_t... I>(std::index_sequence<I...>) {
        static_cast<void>(((finite<R, I>(values) || (bad = I, false)) && ...));
    }(std::make_index_sequence<result_count<R>>());
    return bad;
}

/// The input's value for a refusal's record: NaN for a series or a word.
template <const auto& R>
double raw_number(const Raws<R>& raws, std::size_t input)
{
    double value = std::numeric_limits<double>::quiet_NaN();
    [&]<std::size_t... I>(std::index_sequence<I...>) {
        (
            [&] {
                if constexpr (std::is_same_v<std::tuple_element_t<I, Raws<R>>, double>)
                    if (I == input) value = std::get<I>(raws);
            }(),
            ...);
    }(std::make_index_sequence<input_count<R>>());
    return value;
}

/// The input's length for a refusal's sentence: 0 where it is no series.
template <const auto& R>
std::size_t raw_points(const Raws<R>& raws, std::size_t input)
{
    std::size_t points = 0;
    [&]<std::size_t... I>(std::index_sequence<I...>) {
        (
            [&] {
                if constexpr (std::is_same_v<std::tuple_element_t<I, Raws<R>>, RawSeries>)
                    if (I == input) points = std::get<I>(raws).length;
            }(),
            ...);
    }(std::make_index_sequence<input_count<R>>());
    return points;
}

template <const auto& R>
[[gnu::cold, gnu::noinline]] cutwater_status refuse_broken(std::size_t broken, const Raws<R>& raws,
                                                           cutwater_refusal* refusal)
{
    const std::size_t blamed = text_of<R>.relations[broken].inputs.front();
    return refuse_relation(text_of<R>, broken, raw_number<R>(raws, blamed), raw_points<R>(raws, blamed), refusal);
}

template <const auto& R>
[[gnu::cold, gnu::noinline]] cutwater_status refuse_returned(const NoValue& why, const Raws<R>& raws,
                                                             cutwater_refusal* refusal)
{
    return refuse_no_value(text_of<R>, why, raw_number<R>(raws, find_input(text_of<R>, why.argument)), refusal);
}

/// Checks, runs, and hands the values to store(values), which answers with a status.
template <const auto& R, class Store>
inline cutwater_status evaluate(const Raws<R>& raws, Steps steps, cutwater_refusal* refusal, Store&& store)
{
    if (const cutwater_status status = check_inputs<R>(raws, refusal); status != CUTWATER_OK) return status;
    const auto parameters = typed_all<R>(raws, std::make_index_sequence<input_count<R>>());
    if constexpr (relation_count<R> > 0)
        if (const std::size_t broken = broken_relation<R>(parameters); broken < relation_count<R>) {
            steps.broken(broken);
            return refuse_broken<R>(broken, raws, refusal);
        }
    auto returned = run<R>(parameters, steps);
    if constexpr (TraitsOf<R>::may_fail)
        if (!returned) return refuse_returned<R>(returned.why(), raws, refusal);
    const Values<R> values = [&] {
        if constexpr (TraitsOf<R>::may_fail)
            return as_tuple(*returned);
        else
            return as_tuple(std::move(returned));
    }();
    if (const std::size_t bad = first_overflow<R>(values); bad < result_count<R>) [[unlikely]]
        return refuse_overflow(text_of<R>, bad, refusal);
    return store(values);
}

}  // namespace cutwater::binding

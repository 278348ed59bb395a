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
        if (static_cast<unsigned>(raw) < inputs_of<R>[I].words.size()) return CUTWATER_OK;  // of none it is -1
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

template <class Q>
bool finite_points(const Points<Q>& points, Unit<Q> unit)
{
    bool all = true;
    for (const Q& point : points) all = all & std::isfinite(unit.in(point));
    return all;
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
        return finite_points(value, out.unit);
    else
        return std::isfinite(number(out, value));
}

/// Whether all results are finite numbers, judged together: which one is not is asked only when one is not.
template <const auto& R>
bool all_finite(const Values<R>& values)
{
    return [&]<std::size_t... I>(std::index_sequence<I...>) {
        return (finite<R, I>(values) & ...);
    }(std::make_index_sequence<result_count<R>>());
}

inline double number_of(double raw) { return raw; }
inline double number_of(const RawSeries&) { return std::numeric_limits<double>::quiet_NaN(); }
inline double number_of(int) { return std::numeric_limits<double>::quiet_NaN(); }

/// The input's value for a refusal's record: NaN for a series, a word, or input_count, which is none.
template <const auto& R>
double raw_number(const Raws<R>& raws, std::size_t input)
{
    return std::apply(
        [&](const auto&... raw) {
            const double numbers[] = {number_of(raw)..., std::numeric_limits<double>::quiet_NaN()};
            return numbers[input];
        },
        raws);
}

inline std::size_t points_of(double) { return 0; }
inline std::size_t points_of(const RawSeries& raw) { return raw.length; }
inline std::size_t points_of(int) { return 0; }

/// The input's length for a refusal's sentence: 0 where it is no series.
template <const auto& R>
std::size_t raw_points(const Raws<R>& raws, std::size_t input)
{
    return std::apply(
        [&](const auto&... raw) {
            const std::size_t points[] = {points_of(raw)...};
            return points[input];
        },
        raws);
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

template <const auto& R>
[[gnu::cold, gnu::noinline]] cutwater_status refuse_infinite(const Values<R>& values, cutwater_refusal* refusal)
{
    return [&]<std::size_t... I>(std::index_sequence<I...>) {
        const bool are_finite[] = {finite<R, I>(values)...};
        return refuse_overflow(text_of<R>, are_finite, refusal);
    }(std::make_index_sequence<result_count<R>>());
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
    if (!all_finite<R>(values)) [[unlikely]]
        return refuse_infinite<R>(values, refusal);
    return store(values);
}

}  // namespace cutwater::binding

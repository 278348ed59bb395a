// A record as a function of plain numbers, words and series, behind the guard: what the flat C API calls under the
// function's name. Instantiated once, in its family's translation unit.
#pragma once

#include "catalogue/erased_call.hpp"
#include "catalogue/guard.hpp"

#include <algorithm>
#include <array>
#include <bit>
#include <cstdint>
#include <limits>
#include <tuple>

namespace cutwater::binding {

/// A choice as the caller wrote it.
struct WordIn {
    const char* word;
};

struct SeriesOut {
    double* data;
    std::size_t capacity;
    std::size_t* length;
};

inline void spoil(double* to) { *to = std::numeric_limits<double>::quiet_NaN(); }
inline void spoil(const char** to) { *to = ""; }
inline void spoil(const SeriesOut& to) { *to.length = 0; }

inline bool usable(const double* to) { return to; }
inline bool usable(const char* const* to) { return to; }
inline bool usable(const SeriesOut& to) { return to.length && (to.data || to.capacity == 0); }

/// Whether there was room for it, of a series.
template <const auto& R, std::size_t I, class To>
auto put(const Values<R>& values, const To& to, [[maybe_unused]] cutwater_refusal* refusal)
{
    const auto& value = std::get<I>(values);
    using T = std::remove_cvref_t<decltype(value)>;
    if constexpr (std::is_enum_v<T>)
        *to = words_of<T>[static_cast<std::size_t>(value)];
    else if constexpr (IsPoints<T>::value)
        return store_points<R, I>(value, to.data, to.capacity, *to.length, refusal);
    else
        *to = number(std::get<I>(R.results), value);
}

/// An optional input that was left out is the record's default; everything else is as it was given.
template <const auto& R, std::size_t I, class Raw>
auto raw_of(const Raw& raw)
{
    constexpr const InputInfo& in = inputs_of<R>[I];
    if constexpr (std::is_same_v<Raw, WordIn>)
        return raw.word         ? find_word(in.words.data(), in.words.size(), raw.word)
               : in.has_default ? static_cast<int>(in.fallback)
                                : -1;
    else if constexpr (in.has_default && std::is_same_v<Raw, double>)
        return std::bit_cast<std::uint64_t>(raw) == left_out_bits ? in.fallback : raw;
    else
        return raw;
}

inline void put_erased(double* to, const Result& result) { *to = result.number; }
inline void put_erased(const char** to, const Result& result) { *to = result.word; }

template <const auto& R, class In, class Out>
[[gnu::cold, gnu::noinline]] cutwater_status refuse_direct(cutwater_status status, const In& in, const Out& out,
                                                           cutwater_refusal* refusal)
{
    [&]<std::size_t... I>(std::index_sequence<I...>) {  // say the word that was not understood
        const auto say = [&](std::size_t i, const auto& raw) {
            if constexpr (std::is_same_v<std::remove_cvref_t<decltype(raw)>, WordIn>)
                if (status == CUTWATER_UNKNOWN_WORD && refusal && refusal->argument == static_cast<std::int32_t>(i))
                    refuse_word(text_of<R>, i, raw.word, refusal);
        };
        (say(I, std::get<I>(in)), ...);
    }(std::make_index_sequence<std::tuple_size_v<In>>());
    const auto spoil_one = [&](const auto& to) {
        constexpr bool is_series = std::is_same_v<std::remove_cvref_t<decltype(to)>, SeriesOut>;
        if (!usable(to)) return;
        if constexpr (is_series)  // its length says how much is needed
            if (status == CUTWATER_BUFFER_TOO_SMALL) {
                std::fill_n(to.data, std::min(*to.length, to.capacity), std::numeric_limits<double>::quiet_NaN());
                return;
            }
        spoil(to);
    };
    std::apply([&](const auto&... to) { (spoil_one(to), ...); }, out);
    return status;
}

/// Every kind of formula, refusals included.
template <const auto& R, class... In, class... Out>
inline cutwater_status whole_call(cutwater_refusal* refusal, const std::tuple<In...>& in,
                                  const std::tuple<Out...>& out) noexcept
{
    return guard(refusal, [&]() -> cutwater_status {
        cutwater_status status;
        if (std::apply([](const auto&... to) { return (usable(to) && ...); }, out)) [[likely]] {
            const auto raws = [&]<std::size_t... I>(std::index_sequence<I...>) {
                return Raws<R>(raw_of<R, I>(std::get<I>(in))...);
            }(std::index_sequence_for<In...>());
            status = evaluate<R>(raws, Steps{}, refusal, [&](const Values<R>& values) {
                return store_all<R>([&]<std::size_t I>(std::integral_constant<std::size_t, I>) {
                    return put<R, I>(values, std::get<I>(out), refusal);
                });
            });
            if (status == CUTWATER_OK) [[likely]]
                return status;
        } else {
            status = refuse(CUTWATER_MISSING, "A pointer for a result is null.", refusal);
        }
        return refuse_direct<R>(status, in, out, refusal);
    });
}

template <const auto& R>
inline constexpr bool may_leave_out = std::any_of(inputs_of<R>.begin(), inputs_of<R>.end(),
                                                  [](const InputInfo& in) { return in.has_default; });

/// The same out of line, its arguments by value: a quick call that comes here has kept nothing in memory for it. What
/// it could not answer is answered here only where an input was left out.
template <const auto& R, class... Out, class... In>
[[gnu::cold, gnu::noinline]] cutwater_status slow_call(cutwater_refusal* refusal, Out... out, In... in) noexcept
{
    return guard(refusal, [&]() -> cutwater_status {
        cutwater_status status = CUTWATER_MISSING;
        if ((usable(out) && ...)) {
            const Given given[] = {Given{.number = in}...};
            Result results[sizeof...(Out)];
            status = erased_call<R>(given, results, nullptr, refusal);
            if constexpr (may_leave_out<R>) {
                const Result* next = results;
                if (status == CUTWATER_OK) return (put_erased(out, *next++), ...), status;
            }
        } else {
            refuse(status, "A pointer for a result is null.", refusal);
        }
        ((usable(out) ? spoil(out) : void()), ...);
        return status;
    });
}

/// A formula of numbers that cannot fail inside is computed at once; whatever is amiss is left to the slow call.
template <const auto& R, std::size_t... I, std::size_t... J, class... In, class... Out>
[[gnu::always_inline]] inline cutwater_status quick_call(cutwater_refusal* refusal, const std::tuple<In...>& in,
                                                         const std::tuple<Out...>& out, std::index_sequence<I...>,
                                                         std::index_sequence<J...>) noexcept
{
    if ((usable(std::get<J>(out)) && ...) && (permitted(std::get<I>(R.inputs), std::get<I>(in)) && ...)) [[likely]] {
        const typename TraitsOf<R>::Parameters parameters(typed(std::get<I>(R.inputs), std::get<I>(in))...);
        if (broken_relation<R>(parameters) == relation_count<R>) [[likely]] {
            const Values<R> values = as_tuple(run<R>(parameters, Steps{}));
            if (all_finite<R>(values)) [[likely]] {
                (put<R, J>(values, std::get<J>(out), refusal), ...);
                if (refusal) refusal->status = CUTWATER_OK;
                return CUTWATER_OK;
            }
        }
    }
    return slow_call<R, Out...>(refusal, std::get<J>(out)..., raw_of<R, I>(std::get<I>(in))...);
}

template <const auto& R, class... In, class... Out>
[[gnu::always_inline]] inline cutwater_status direct(cutwater_refusal* refusal, const std::tuple<In...>& in,
                                                     const std::tuple<Out...>& out) noexcept
{
    if constexpr (!TraitsOf<R>::may_fail && (std::is_same_v<In, double> && ...) &&
                  (!std::is_same_v<Out, SeriesOut> && ...))
        return quick_call<R>(refusal, in, out, std::index_sequence_for<In...>(), std::index_sequence_for<Out...>());
    else
        return whole_call<R>(refusal, in, out);
}

template <class P>
struct FlatInput {
    using Plain = std::tuple<double>;
};
template <class E>
    requires std::is_enum_v<E>
struct FlatInput<E> {
    using Plain = std::tuple<const char*>;
};
template <class Q>
struct FlatInput<Series<Q>> {
    using Plain = std::tuple<const double*, std::size_t>;
};

template <class T>
struct FlatResult {
    using Plain = std::tuple<double*>;
};
template <class E>
    requires std::is_enum_v<E>
struct FlatResult<E> {
    using Plain = std::tuple<const char**>;
};
template <class Q>
struct FlatResult<Points<Q>> {
    using Plain = std::tuple<double*, std::size_t, std::size_t*>;
};

/// Places of the first plain arguments of so many things, each of which takes as many as its size says.
template <std::size_t N>
constexpr std::array<std::size_t, N> places(const std::array<std::size_t, N>& sizes, std::size_t from)
{
    std::array<std::size_t, N> made{};
    for (std::size_t i = 0; i < N; from += sizes[i++]) made[i] = from;
    return made;
}

template <const auto& R, class Inputs, class Results>
struct DirectForm;

template <const auto& R, class... P, class... T>
struct DirectForm<R, std::tuple<P...>, std::tuple<T...>> {
    using Plain = decltype(std::tuple_cat(std::declval<typename FlatInput<P>::Plain>()...,
                                          std::declval<typename FlatResult<T>::Plain>()...));

    static constexpr std::array<std::size_t, sizeof...(P)> input_sizes{
        std::tuple_size_v<typename FlatInput<P>::Plain>...};
    static constexpr std::array<std::size_t, sizeof...(T)> result_sizes{
        std::tuple_size_v<typename FlatResult<T>::Plain>...};
    static constexpr auto input_places = places(input_sizes, 0);
    static constexpr auto result_places = places(result_sizes, input_places.back() + input_sizes.back());

    template <std::size_t I>
    static auto input(const Plain& plain)
    {
        constexpr std::size_t at = input_places[I];
        using Q = std::tuple_element_t<I, std::tuple<P...>>;
        if constexpr (std::is_enum_v<Q>)
            return WordIn{std::get<at>(plain)};
        else if constexpr (input_sizes[I] == 2)
            return RawSeries{std::get<at>(plain), std::get<at + 1>(plain), 1};
        else
            return std::get<at>(plain);
    }

    template <std::size_t J>
    static auto result(const Plain& plain)
    {
        constexpr std::size_t at = result_places[J];
        if constexpr (result_sizes[J] == 3)
            return SeriesOut{std::get<at>(plain), std::get<at + 1>(plain), std::get<at + 2>(plain)};
        else
            return std::get<at>(plain);
    }

    template <class List>
    struct As;
    template <class... A>
    struct As<std::tuple<A...>> {
        static cutwater_status call(A... arguments, cutwater_refusal* refusal) noexcept
        {
            const Plain plain(arguments...);
            return [&]<std::size_t... I, std::size_t... J>(std::index_sequence<I...>, std::index_sequence<J...>) {
                return direct<R>(refusal, std::make_tuple(input<I>(plain)...), std::make_tuple(result<J>(plain)...));
            }(std::index_sequence_for<P...>(), std::index_sequence_for<T...>());
        }
        static constexpr Flat<cutwater_status(A..., cutwater_refusal*)> flat{&call};
    };
    static constexpr const AnyFlat* flat = &As<Plain>::flat;
};

template <const auto& R>
constexpr const AnyFlat* flat_of = DirectForm<R, typename TraitsOf<R>::Parameters, typename TraitsOf<R>::Values>::flat;

}  // namespace cutwater::binding

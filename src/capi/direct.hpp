// What the generated bodies of the flat functions call: checks, formula and guard compiled together for each record.
#pragma once

#include "capi/guard.hpp"
#include "catalogue/evaluate.hpp"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <limits>
#include <tuple>

namespace cutwater::capi {

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

template <const auto& R, std::size_t I, class To>
cutwater_status put(const binding::Values<R>& values, const To& to, cutwater_refusal* refusal)
{
    const auto& value = std::get<I>(values);
    using T = std::remove_cvref_t<decltype(value)>;
    if constexpr (std::is_enum_v<T>) {
        *to = words_of<T>[static_cast<std::size_t>(value)];
    } else if constexpr (binding::IsPoints<T>::value) {
        *to.length = value.size();
        if (value.size() > to.capacity)
            return refuse_buffer(binding::text_of<R>, I, value.size(), to.capacity, refusal);
        for (std::size_t k = 0; k < value.size(); ++k) to.data[k] = std::get<I>(R.results).unit.in(value[k]);
    } else {
        *to = binding::number(std::get<I>(R.results), value);
    }
    return CUTWATER_OK;
}

/// The one NaN that leaves out an optional number.
inline constexpr std::uint64_t left_out_bits = 0x7ff8'6c65'6674'6f75;

/// An optional input that was left out is the record's default; everything else is as it was given.
template <const auto& R, std::size_t I, class Raw>
auto raw_of(const Raw& raw)
{
    constexpr const InputInfo& in = binding::inputs_of<R>[I];
    if constexpr (std::is_same_v<Raw, WordIn>)
        return raw.word ? find_word(in.words.data(), in.words.size(), raw.word) : in.has_default ? static_cast<int>(in.fallback) : -1;
    else if constexpr (in.has_default && std::is_same_v<Raw, double>)
        return std::bit_cast<std::uint64_t>(raw) == left_out_bits ? in.fallback : raw;
    else
        return raw;
}

template <const auto& R, class In, class Out>
[[gnu::cold, gnu::noinline]] cutwater_status refuse_direct(cutwater_status status, const In& in, const Out& out,
                                                           cutwater_refusal* refusal)
{
    [&]<std::size_t... I>(std::index_sequence<I...>) {  // say the word that was not understood
        const auto say = [&](std::size_t i, const auto& raw) {
            if constexpr (std::is_same_v<std::remove_cvref_t<decltype(raw)>, WordIn>)
                if (status == CUTWATER_UNKNOWN_WORD && refusal && refusal->argument == static_cast<std::int32_t>(i))
                    refuse_word(binding::text_of<R>, i, raw.word, refusal);
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
inline cutwater_status whole_call(cutwater_refusal* refusal, const std::tuple<In...>& in, const std::tuple<Out...>& out) noexcept
{
    return guard(refusal, [&]() -> cutwater_status {
        cutwater_status status;
        if (std::apply([](const auto&... to) { return (usable(to) && ...); }, out)) [[likely]] {
            const auto raws = [&]<std::size_t... I>(std::index_sequence<I...>) {
                return binding::Raws<R>(raw_of<R, I>(std::get<I>(in))...);
            }(std::index_sequence_for<In...>());
            status = binding::evaluate<R>(raws, Steps{}, refusal, [&](const binding::Values<R>& values) {
                cutwater_status worst = CUTWATER_OK;
                [&]<std::size_t... I>(std::index_sequence<I...>) {
                    const auto keep = [&](cutwater_status s) { if (worst == CUTWATER_OK) worst = s; };
                    (keep(put<R, I>(values, std::get<I>(out), refusal)), ...);
                }(std::index_sequence_for<Out...>());
                return worst;
            });
            if (status == CUTWATER_OK) [[likely]]
                return status;
        } else {
            status = refuse(CUTWATER_MISSING, "A pointer for a result is null.", refusal);
        }
        return refuse_direct<R>(status, in, out, refusal);
    });
}

/// The same out of line, its arguments by value: a quick call that comes here has kept nothing in memory for it.
template <const auto& R, class... Out, class... In>
[[gnu::cold, gnu::noinline]] cutwater_status slow_call(cutwater_refusal* refusal, Out... out, In... in) noexcept
{
    return whole_call<R>(refusal, std::tuple<In...>(in...), std::tuple<Out...>(out...));
}

/// A formula of numbers that cannot fail inside is computed at once; whatever is amiss is left to the slow call.
template <const auto& R, std::size_t... I, std::size_t... J, class... In, class... Out>
[[gnu::always_inline]] inline cutwater_status quick_call(cutwater_refusal* refusal, const std::tuple<In...>& in, const std::tuple<Out...>& out,
                                                         std::index_sequence<I...>, std::index_sequence<J...>) noexcept
{
    if ((usable(std::get<J>(out)) && ...) && (binding::permitted(std::get<I>(R.inputs), std::get<I>(in)) && ...)) [[likely]] {
        const typename binding::TraitsOf<R>::Parameters parameters(binding::typed(std::get<I>(R.inputs), std::get<I>(in))...);
        if (binding::broken_relation<R>(parameters) == binding::relation_count<R>) [[likely]] {
            const binding::Values<R> values = binding::as_tuple(binding::run<R>(parameters, Steps{}));
            if ((binding::finite<R, J>(values) && ...)) [[likely]] {
                (static_cast<void>(put<R, J>(values, std::get<J>(out), refusal)), ...);
                if (refusal) refusal->status = CUTWATER_OK;
                return CUTWATER_OK;
            }
        }
    }
    return slow_call<R, Out...>(refusal, std::get<J>(out)..., std::get<I>(in)...);
}

template <const auto& R, class... In, class... Out>
[[gnu::always_inline]] inline cutwater_status direct(cutwater_refusal* refusal, const std::tuple<In...>& in, const std::tuple<Out...>& out) noexcept
{
    if constexpr (!binding::TraitsOf<R>::may_fail && (std::is_same_v<In, double> && ...) && (!std::is_same_v<Out, SeriesOut> && ...))
        return quick_call<R>(refusal, in, out, std::index_sequence_for<In...>(), std::index_sequence_for<Out...>());
    else
        return whole_call<R>(refusal, in, out);
}

/// The array form of the function at that place in the catalogue. columns and shared have one entry an input.
cutwater_status direct_rows(std::size_t position, std::size_t rows, const cutwater_column* columns, const Given* shared,
                            const char* const* words, const cutwater_result_column* results,
                            cutwater_rows_report* report) noexcept;

}  // namespace cutwater::capi

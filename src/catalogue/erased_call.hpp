// A formula called without knowing its types.
#pragma once

#include "catalogue/evaluate.hpp"

namespace cutwater::binding {

template <class Raw>
Raw raw_from(const Given& given)
{
    if constexpr (std::is_same_v<Raw, double>)
        return given.number;
    else if constexpr (std::is_same_v<Raw, RawSeries>)
        return given.series;
    else
        return given.word;
}

/// Stores a series in the caller's buffer; length is always what there was to store.
template <const auto& R, std::size_t I, class Q>
cutwater_status store_points(const Points<Q>& points, double* data, std::size_t capacity, std::size_t& length,
                             cutwater_refusal* refusal)
{
    length = points.size();
    if (points.size() > capacity || !data)
        return refuse_buffer(text_of<R>, I, points.size(), data ? capacity : 0, refusal);
    for (std::size_t k = 0; k < points.size(); ++k) data[k] = std::get<I>(R.results).unit.in(points[k]);
    return CUTWATER_OK;
}

template <const auto& R, std::size_t I>
cutwater_status store_result(const Values<R>& values, Result& result, cutwater_refusal* refusal)
{
    using T = std::tuple_element_t<I, Values<R>>;
    const T& value = std::get<I>(values);
    if constexpr (std::is_enum_v<T>) {
        result.word = words_of<T>[static_cast<std::size_t>(value)];
        result.number = static_cast<double>(value);
    } else if constexpr (IsPoints<T>::value) {
        return store_points<R, I>(value, result.data, result.capacity, result.length, refusal);
    } else {
        result.number = number(std::get<I>(R.results), value);
    }
    return CUTWATER_OK;
}

template <const auto& R>
cutwater_status erased_call(const Given* given, Result* results, StepListener* listener, cutwater_refusal* refusal)
{
    const Raws<R> raws = [&]<std::size_t... I>(std::index_sequence<I...>) {
        return Raws<R>(raw_from<std::tuple_element_t<I, Raws<R>>>(given[I])...);
    }(std::make_index_sequence<input_count<R>>());
    return evaluate<R>(raws, Steps(listener), refusal, [&](const Values<R>& values) {
        cutwater_status worst = CUTWATER_OK;
        [&]<std::size_t... I>(std::index_sequence<I...>) {
            const auto keep = [&](cutwater_status s) {
                if (worst == CUTWATER_OK) worst = s;
            };
            (keep(store_result<R, I>(values, results[I], refusal)),
             ...);  // every length is told, also after one was too long
        }(std::make_index_sequence<result_count<R>>());
        return worst;
    });
}

}  // namespace cutwater::binding

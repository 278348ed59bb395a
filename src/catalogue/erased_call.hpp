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

/// Stores a series if there is room for it; length is always what there was to store. Whether there was.
template <const auto& R, std::size_t I, class Q>
bool store_points(const Points<Q>& points, double* data, std::size_t capacity, std::size_t& length,
                  cutwater_refusal* refusal)
{
    length = points.size();
    if (length > capacity) {
        refuse_buffer(text_of<R>, I, length, capacity, refusal);
        return false;
    }
    for (std::size_t k = 0; k < length; ++k) data[k] = std::get<I>(R.results).unit.in(points[k]);
    return true;
}

/// Calls store with every result's place, also after a series that was too long for its room: its length is told all
/// the same. Only a series can be, and only for one is asked.
template <const auto& R, class Store>
inline cutwater_status store_all(Store&& store)
{
    return [&]<std::size_t... I>(std::index_sequence<I...>) {
        constexpr bool is_series[] = {IsPoints<std::tuple_element_t<I, Values<R>>>::value...};
        bool fits = true;
        const auto one = [&]<std::size_t J>(std::integral_constant<std::size_t, J> place) {
            if constexpr (is_series[J])
                fits = store(place) & fits;
            else
                store(place);
        };
        (one(std::integral_constant<std::size_t, I>()), ...);
        if constexpr ((is_series[I] || ...))
            return fits ? CUTWATER_OK : CUTWATER_BUFFER_TOO_SMALL;
        else
            return CUTWATER_OK;
    }(std::make_index_sequence<result_count<R>>());
}

/// Whether there was room for it, of a series.
template <const auto& R, std::size_t I>
auto store_result(const Values<R>& values, Result& result, [[maybe_unused]] cutwater_refusal* refusal)
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
}

template <const auto& R>
cutwater_status erased_call(const Given* given, Result* results, StepListener* listener, cutwater_refusal* refusal)
{
    const Raws<R> raws = [&]<std::size_t... I>(std::index_sequence<I...>) {
        return Raws<R>(raw_from<std::tuple_element_t<I, Raws<R>>>(given[I])...);
    }(std::make_index_sequence<input_count<R>>());
    return evaluate<R>(raws, Steps(listener), refusal, [&](const Values<R>& values) {
        return store_all<R>([&]<std::size_t I>(std::integral_constant<std::size_t, I>) {
            return store_result<R, I>(values, results[I], refusal);
        });
    });
}

}  // namespace cutwater::binding

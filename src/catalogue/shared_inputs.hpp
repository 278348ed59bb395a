// A row of an array by the single call's way, with what all rows share judged, and computed, once.
#pragma once

#include "catalogue/evaluate.hpp"
#include "catalogue/once_for_rows.hpp"

#include <array>
#include <optional>

namespace cutwater::binding {

template <const auto& R, std::size_t I>
inline constexpr bool is_column = std::is_same_v<std::tuple_element_t<I, Raws<R>>, double>;

/// Whether a relation is between inputs that all rows share.
template <const auto& R, std::size_t K>
inline constexpr bool is_shared_relation = []<std::size_t... N>(std::index_sequence<N...>) {
    return (!is_column<R, related_inputs<R, K>[N]> && ...);
}(std::make_index_sequence<related_inputs<R, K>.size()>());

template <const auto& R>
inline constexpr auto formula_of = std::remove_cvref_t<decltype(R)>::formula;

template <const auto& R>
inline constexpr bool computes_once = !requires { typename OnceForRows<formula_of<R>>::Nothing; };

template <const auto& R>
inline constexpr bool straight_once = requires { requires OnceForRows<formula_of<R>>::straight; };

template <const auto& R>
inline constexpr bool may_not_fit = requires(const OnceForRows<formula_of<R>>& once) { once.fits_vectors(); };

/// What the formula is given in a row that becomes part of a vector: of series a reference, nothing is copied for a
/// row.
template <class Q>
struct RowParameter {
    using type = Q;
};
template <class Q>
struct RowParameter<Series<Q>> {
    using type = const Series<Q>&;
};
template <class Parameters>
struct RowTuple;
template <class... Q>
struct RowTuple<std::tuple<Q...>> {
    using type = std::tuple<typename RowParameter<Q>::type...>;
};
template <const auto& R>
using RowParameters = typename RowTuple<typename TraitsOf<R>::Parameters>::type;

template <const auto& R>
class SharedInputs {
public:
    using Parameters = typename TraitsOf<R>::Parameters;

    explicit SharedInputs(const Given* shared) : SharedInputs(shared, Inputs()) {}

    /// Whether inputs and relations that all rows share are permitted: else no row is answered.
    bool permitted() const
    {
        if constexpr (shares_nothing)
            return true;
        else
            return permitted_;
    }

    /// Whether rows can become vectors with them.
    bool fit_vectors() const
    {
        if constexpr (may_not_fit<R>)
            return once_ && once_->fits_vectors();
        else
            return true;
    }

    /// What the formula is given of them; anything in the place of columns.
    const Parameters& parameters() const { return parameters_; }

    /// The formula in such a row.
    auto straight_run(const RowParameters<R>& parameters) const
    {
        if constexpr (computes_once<R>)
            return [&]<std::size_t... I>(std::index_sequence<I...>) {
                if constexpr (may_not_fit<R>)
                    return once_->in_vectors(std::get<columns[I]>(parameters)...);
                else
                    return (*once_)(std::get<columns[I]>(parameters)...);
            }(std::make_index_sequence<columns.size()>());
        else
            return run<R>(parameters, Steps::of_a_row());
    }

    /// Relations that no row changes are judged with the shared inputs.
    static bool relations_of_row(const RowParameters<R>& parameters)
    {
        return [&]<std::size_t... K>(std::index_sequence<K...>) {
            return (holds_in_row<K>(parameters) & ... & true);
        }(Relations());
    }

    /// The values of a row, handed to store; whether it is answered. number(i) is input i of it.
    template <class Number, class Store>
    bool row(Number&& number, Store&& store)
    {
        return row(number, store, Inputs());
    }

private:
    using Inputs = std::make_index_sequence<input_count<R>>;
    using Relations = std::make_index_sequence<relation_count<R>>;
    static constexpr bool shares_nothing = []<std::size_t... I>(std::index_sequence<I...>) {
        return (is_column<R, I> && ...);
    }(Inputs());
    static constexpr auto columns = []<std::size_t... I>(std::index_sequence<I...>) {
        std::array<std::size_t, (std::size_t{is_column<R, I>} + ... + 0)> made{};
        std::size_t next = 0;
        static_cast<void>(((is_column<R, I> && (made[next++] = I, true)), ...));
        return made;
    }(Inputs());
    struct Nothing {};
    static auto once()
    {
        if constexpr (computes_once<R>)
            return std::type_identity<OnceForRows<formula_of<R>>>();
        else
            return std::type_identity<Nothing>();
    }
    using Once = typename decltype(once())::type;

    template <std::size_t... I>
    SharedInputs(const Given* shared, std::index_sequence<I...>) : parameters_(shared_at<I>(shared[I])...)
    {
        if constexpr (!shares_nothing)
            permitted_ = (input_permitted<I>(shared[I]) && ...) && relations_hold<true>(parameters_, Relations());
        if constexpr (computes_once<R>)
            if (permitted_)
                std::apply([&](const auto&... q) { once_.emplace(q...); },
                           std::tuple_cat(picked<I, false>(parameters_)...));
    }

    template <std::size_t I>
    static auto raw_at(const Given& given)
    {
        using Raw = std::tuple_element_t<I, Raws<R>>;
        if constexpr (std::is_same_v<Raw, double>)
            return 0.0;  // in nobody's way: a row puts its own there
        else if constexpr (std::is_same_v<Raw, RawSeries>)
            return given.series;
        else
            return given.word;
    }
    template <std::size_t I>
    static auto shared_at(const Given& given)
    {
        return typed(std::get<I>(R.inputs), raw_at<I>(given));
    }
    template <std::size_t I>
    static bool input_permitted(const Given& given)
    {
        if constexpr (is_column<R, I>)
            return true;
        else
            return check_input<R, I>(raw_at<I>(given), nullptr) == CUTWATER_OK;
    }

    template <std::size_t I, bool Column>
    static auto picked(const Parameters& parameters)
    {
        if constexpr (is_column<R, I> == Column)
            return std::tuple(std::get<I>(parameters));
        else
            return std::tuple<>();
    }
    template <std::size_t I>
    auto parameter(double x) const
    {
        if constexpr (is_column<R, I>)
            return typed(std::get<I>(R.inputs), x);
        else
            return std::get<I>(parameters_);
    }
    template <std::size_t I>
    static bool number_permitted(double x)
    {
        if constexpr (is_column<R, I>)
            return binding::permitted(std::get<I>(R.inputs), x);
        else
            return true;
    }

    template <std::size_t K>
    static bool holds_in_row(const RowParameters<R>& parameters)
    {
        if constexpr (is_shared_relation<R, K>)
            return true;
        else
            return holds<R, K>(parameters);
    }

    template <bool Shared, std::size_t... K>
    static bool relations_hold(const Parameters& parameters, std::index_sequence<K...>)
    {
        [[maybe_unused]] const auto one = [&]<std::size_t N>(std::integral_constant<std::size_t, N>) {
            if constexpr (is_shared_relation<R, N> == Shared)
                return holds<R, N>(parameters);
            else
                return true;
        };
        return (one(std::integral_constant<std::size_t, K>()) && ...);
    }

    template <std::size_t... I>
    auto run_row(const Parameters& parameters, std::index_sequence<I...>)
    {
        if constexpr (computes_once<R>)
            return std::apply(*once_, std::tuple_cat(picked<I, true>(parameters)...));
        else
            return run<R>(parameters, Steps{});
    }

    template <class Number, class Store, std::size_t... I>
    bool row(Number& number, Store& store, std::index_sequence<I...> inputs)
    {
        const double x[] = {(is_column<R, I> ? number(I) : 0.0)...};
        if (!(number_permitted<I>(x[I]) && ...)) return false;
        const Parameters parameters(parameter<I>(x[I])...);
        if (!relations_hold<false>(parameters, Relations())) return false;
        auto returned = run_row(parameters, inputs);
        if constexpr (TraitsOf<R>::may_fail) {
            if (!returned) return false;
            return store_finite(as_tuple(*returned), store);
        } else {
            return store_finite(as_tuple(std::move(returned)), store);
        }
    }
    template <class Store>
    static bool store_finite(const Values<R>& values, Store& store)
    {
        if (!all_finite<R>(values)) return false;
        store(values);
        return true;
    }

    Parameters parameters_;
    bool permitted_ = true;
    std::optional<Once> once_;
};

}  // namespace cutwater::binding

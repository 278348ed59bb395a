// From a typed record to its untyped text, all at compile time.
#pragma once

#include "catalogue/record.hpp"

#include <algorithm>
#include <array>
#include <string_view>

namespace cutwater::binding {

template <const auto& R>
using TraitsOf = typename std::remove_cvref_t<decltype(R)>::Traits;

template <const auto& R>
inline constexpr std::size_t input_count = std::tuple_size_v<typename TraitsOf<R>::Parameters>;
template <const auto& R>
inline constexpr std::size_t result_count = std::tuple_size_v<typename TraitsOf<R>::Values>;

inline constexpr std::size_t longest_name = 48;  // with its 0: what cutwater_refusal.name holds

/// "flow" and "m3h" make "flow_m3h"; a number without unit keeps its name.
constexpr std::array<char, longest_name> full_name(std::string_view name, std::string_view suffix)
{
    if (name.size() + suffix.size() + 2 > longest_name) throw "the name of an input or result is too long";
    std::array<char, longest_name> text{};
    auto at = std::copy(name.begin(), name.end(), text.begin());
    if (!suffix.empty()) {
        *at++ = '_';
        std::copy(suffix.begin(), suffix.end(), at);
    }
    return text;
}

/// "npsh_available" makes "NpshAvailable".
constexpr std::array<char, longest_name> type_name(std::string_view name)
{
    if (name.size() + 1 > longest_name) throw "the name of a function is too long";
    std::array<char, longest_name> text{};
    auto at = text.begin();
    bool start = true;
    for (const char c : name) {
        if (c != '_') *at++ = start && c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
        start = c == '_';
    }
    return text;
}

template <class T>
constexpr std::string_view suffix_of(const T& put)
{
    if constexpr (requires { put.unit; })
        return put.unit.info->suffix;
    else
        return "";
}

template <const auto& R, std::size_t I>
inline constexpr auto input_full_name = full_name(std::get<I>(R.inputs).name, suffix_of(std::get<I>(R.inputs)));
template <const auto& R, std::size_t I>
inline constexpr auto result_full_name = full_name(std::get<I>(R.results).name, suffix_of(std::get<I>(R.results)));

template <class Q>
constexpr InputInfo describe_input(const Input<Q>& in, const char* full)
{
    return {.name = in.name,
            .full_name = full,
            .symbol = in.symbol,
            .kind = Kind::quantity,
            .quantity = &quantity_info<Q>,
            .unit = in.unit.info,
            .interval = in.interval,
            .meaning = in.meaning,
            .words = {},
            .has_default = in.fallback.has_value(),
            .fallback = in.fallback.value_or(0),
            .whole = std::is_same_v<Q, Count>,
            .least_points = 0,
            .rising = false};
}

template <class Q>
constexpr InputInfo describe_input(const Input<Series<Q>>& in, const char* full)
{
    return {.name = in.name,
            .full_name = full,
            .symbol = in.symbol,
            .kind = Kind::series,
            .quantity = &quantity_info<Q>,
            .unit = in.unit.info,
            .interval = in.interval,
            .meaning = in.meaning,
            .words = {},
            .has_default = false,
            .fallback = 0,
            .whole = false,
            .least_points = in.least_points,
            .rising = in.rising};
}

template <class E>
    requires std::is_enum_v<E>
constexpr InputInfo describe_input(const Input<E>& in, const char* full)
{
    static_assert(words_of<E>.size() > 0, "the choice has no words: specialise words_of beside its enum");
    return {.name = in.name,
            .full_name = full,
            .symbol = in.symbol,
            .kind = Kind::choice,
            .quantity = nullptr,
            .unit = nullptr,
            .interval = any,
            .meaning = in.meaning,
            .words = words_of<E>,
            .has_default = in.fallback.has_value(),
            .fallback = in.fallback ? static_cast<double>(*in.fallback) : 0,
            .whole = false,
            .least_points = 0,
            .rising = false};
}

template <class T>
struct IsPoints : std::false_type {};
template <class Q>
struct IsPoints<Points<Q>> : std::true_type {
    using Quantity = Q;
};

template <class T>
constexpr ResultInfo describe_result(const Output<T>& out, const char* full)
{
    if constexpr (std::is_enum_v<T>) {
        static_assert(words_of<T>.size() > 0, "the result has no words: specialise words_of beside its enum");
        return {out.name, full, out.symbol, Kind::choice, nullptr, nullptr, out.meaning, words_of<T>};
    } else if constexpr (IsPoints<T>::value) {
        return {out.name,      full,        out.symbol, Kind::series, &quantity_info<typename IsPoints<T>::Quantity>,
                out.unit.info, out.meaning, {}};
    } else {
        return {out.name, full, out.symbol, Kind::quantity, &quantity_info<T>, out.unit.info, out.meaning, {}};
    }
}

template <const auto& R>
inline constexpr auto inputs_of = []<std::size_t... I>(std::index_sequence<I...>) {
    return std::array<InputInfo, sizeof...(I)>{describe_input(std::get<I>(R.inputs), input_full_name<R, I>.data())...};
}(std::make_index_sequence<input_count<R>>());

template <const auto& R>
inline constexpr auto results_of = []<std::size_t... I>(std::index_sequence<I...>) {
    std::array<ResultInfo, sizeof...(I)> made{
        describe_result(std::get<I>(R.results), result_full_name<R, I>.data())...};
    for (const ScatterOf& of : R.scatter.of) {
        if (!of.result) continue;
        bool found = false;
        for (ResultInfo& out : made)
            if (std::string_view(of.result) == out.name && out.kind == Kind::quantity) {
                out.scatter = of.scatter;
                found = true;
            }
        if (!found) throw "the scatter names a result that the record does not have, or that is no number";
        if (!(of.scatter.amount > 0)) throw "a scatter must be above 0";
    }
    return made;
}(std::make_index_sequence<result_count<R>>());

template <const auto& R>
inline constexpr std::size_t relation_count = std::tuple_size_v<std::remove_cvref_t<decltype(R.relations)>>;

/// Position of an input by the record's name for it; input_count when there is none.
template <const auto& R>
constexpr std::size_t position_of(std::string_view name)
{
    for (std::size_t i = 0; i < input_count<R>; ++i)
        if (name == inputs_of<R>[i].name) return i;
    return input_count<R>;
}

/// Positions of the inputs that relation K names.
template <const auto& R, std::size_t K>
inline constexpr auto related_inputs = [] {
    std::array<std::size_t, std::get<K>(R.relations).inputs.size()> positions{};
    for (std::size_t i = 0; i < positions.size(); ++i)
        positions[i] = position_of<R>(std::get<K>(R.relations).inputs[i]);
    return positions;
}();

template <const auto& R, std::size_t K>
constexpr bool relation_fits()
{
    constexpr auto& positions = related_inputs<R, K>;
    constexpr bool inputs_exist = std::find(positions.begin(), positions.end(), input_count<R>) == positions.end();
    static_assert(inputs_exist, "a relation names an input that its record does not have");
    if constexpr (inputs_exist) {
        using Parameters = typename TraitsOf<R>::Parameters;
        constexpr bool takes_them = []<std::size_t... N>(std::index_sequence<N...>) {
            return std::is_invocable_r_v<bool, decltype(std::get<K>(R.relations).holds),
                                         std::tuple_element_t<related_inputs<R, K>[N], Parameters>...>;
        }(std::make_index_sequence<positions.size()>());
        static_assert(takes_them, "a relation's predicate does not take the quantities of the inputs that it names");
    }
    return true;
}

template <const auto& R>
inline constexpr auto relations_of = []<std::size_t... K>(std::index_sequence<K...>) {
    static_assert((relation_fits<R, K>() && ...));
    return std::array<RelationInfo, sizeof...(K)>{
        RelationInfo{std::get<K>(R.relations).sentence, related_inputs<R, K>}...};
}(std::make_index_sequence<relation_count<R>>());

template <const auto& R>
inline constexpr std::size_t caution_count = std::find(std::begin(R.cautions), std::end(R.cautions), nullptr) -
                                             std::begin(R.cautions);

template <const auto& R>
inline constexpr auto type_name_of = type_name(R.name);

template <const auto& R>
inline constexpr FunctionText text_of{.name = R.name,
                                      .type_name = type_name_of<R>.data(),
                                      .meaning = R.meaning,
                                      .also = R.also,
                                      .inputs = inputs_of<R>,
                                      .results = results_of<R>,
                                      .equation = R.equation,
                                      .relations = relations_of<R>,
                                      .source = R.source,
                                      .cautions = {R.cautions, caution_count<R>},
                                      .example = R.example,
                                      .turns = R.turns};

}  // namespace cutwater::binding

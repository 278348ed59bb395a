// The array form: blocks of rows that stay in the first-level cache, so that broadcast and strided columns cost no more
// than plain ones, and a loop without branches for formulas that are arithmetic, which the compiler turns into vectors.
#pragma once

#include "catalogue/evaluate.hpp"

#include <bit>

namespace cutwater::binding {

inline constexpr std::size_t block_rows = 512;

template <const auto& R>
inline constexpr bool has_series_result = []<class... T>(std::type_identity<std::tuple<T...>>) {
    return (IsPoints<T>::value || ...);
}(std::type_identity<Values<R>>());

/// A result as a column holds it: a word by its position among the record's words.
template <const auto& R, std::size_t I>
double column_number(const Values<R>& values)
{
    using T = std::tuple_element_t<I, Values<R>>;
    if constexpr (std::is_enum_v<T>)
        return static_cast<double>(std::get<I>(values));
    else
        return number(std::get<I>(R.results), std::get<I>(values));
}

/// Whether a row can be computed first and judged after: no failing inside, no series, no words to look up.
template <const auto& R>
inline constexpr bool straight = !TraitsOf<R>::may_fail && []<class... Raw>(std::type_identity<std::tuple<Raw...>>) {
    return (std::is_same_v<Raw, double> && ...);
}(std::type_identity<Raws<R>>());

template <const auto& R>
struct Block {
    static constexpr std::size_t inputs = input_count<R>;
    static constexpr std::size_t results = result_count<R>;
    const double* in[inputs];
    double* out[results];
    double in_stage[inputs][block_rows];
    double out_stage[results][block_rows];
    double permitted_row[inputs];  // computed in place of a refused row's inputs
    std::int64_t refused;  // of this block; a refused row's results are NaN, and no other row's are
};

template <const auto& R>
bool relations_hold(const typename TraitsOf<R>::Parameters& parameters)
{
    return [&]<std::size_t... K>(std::index_sequence<K...>) {
        return (holds<R, K>(parameters) & ... & true);
    }(std::make_index_sequence<relation_count<R>>());
}

/// One of two numbers, without a branch that would keep the loop from becoming vectors.
inline double chosen(bool first, double one, double other)
{
    const std::uint64_t mask = -static_cast<std::uint64_t>(first);
    return std::bit_cast<double>((std::bit_cast<std::uint64_t>(one) & mask) | (std::bit_cast<std::uint64_t>(other) & ~mask));
}

template <const auto& R, std::size_t... I, std::size_t... J>
[[gnu::always_inline]] inline void straight_loop(Block<R>& block, std::size_t rows, std::index_sequence<I...>, std::index_sequence<J...>)
{
    const double* const in[] = {block.in[I]...};
    double* const out[] = {block.out[J]...};
    const double instead[] = {block.permitted_row[I]...};
    std::int64_t refused = 0;  // as wide as a double, so that it is counted in vectors
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
#if defined(__clang__)
#pragma clang loop vectorize(assume_safety)
#else
#pragma GCC ivdep
#endif
    for (std::size_t r = 0; r < rows; ++r) {
        // A formula sees permitted inputs only: with others it could take for ever, or do what C++ does not define. Relations
        // compare numbers, and may see any.
        bool ok = (permitted(std::get<I>(R.inputs), in[I][r]) & ...);
        ok = ok & relations_hold<R>(typename TraitsOf<R>::Parameters(typed(std::get<I>(R.inputs), in[I][r])...));
        const typename TraitsOf<R>::Parameters parameters(typed(std::get<I>(R.inputs), chosen(ok, in[I][r], instead[I]))...);
        const Values<R> values = as_tuple(run<R>(parameters, Steps{}));
        const double numbers[] = {column_number<R, J>(values)...};
        ok = ok & ((numbers[J] - numbers[J] == 0) & ...);
        ((out[J][r] = ok ? numbers[J] : nan), ...);
        refused += !ok;
    }
    block.refused = refused;
}

template <const auto& R>
void straight_block(Block<R>& block, std::size_t rows)
{
    straight_loop<R>(block, rows, std::make_index_sequence<input_count<R>>(), std::make_index_sequence<result_count<R>>());
}

#if defined(__x86_64__) && defined(__GNUC__)
/// The same loop for machines with wider vectors; without contraction it gives the same bits.
template <const auto& R>
[[gnu::target("avx2")]] void straight_block_avx2(Block<R>& block, std::size_t rows)
{
    straight_loop<R>(block, rows, std::make_index_sequence<input_count<R>>(), std::make_index_sequence<result_count<R>>());
}

template <const auto& R>
auto best_straight_block() -> void (*)(Block<R>&, std::size_t)
{
    return __builtin_cpu_supports("avx2") ? &straight_block_avx2<R> : &straight_block<R>;
}
#else
template <const auto& R>
auto best_straight_block() -> void (*)(Block<R>&, std::size_t)
{
    return &straight_block<R>;
}
#endif

template <const auto& R, std::size_t... I, std::size_t... J>
void branching_block(Block<R>& block, std::size_t rows, const Given* shared, std::index_sequence<I...>,
                     std::index_sequence<J...>)
{
    block.refused = 0;
    for (std::size_t r = 0; r < rows; ++r) {
        const auto raw = [&]<std::size_t K>(std::integral_constant<std::size_t, K>) {
            using Raw = std::tuple_element_t<K, Raws<R>>;
            if constexpr (std::is_same_v<Raw, double>)
                return block.in[K][r];
            else if constexpr (std::is_same_v<Raw, RawSeries>)
                return shared[K].series;
            else
                return shared[K].word;
        };
        const Raws<R> raws(raw(std::integral_constant<std::size_t, I>())...);
        double numbers[] = {(static_cast<void>(J), std::numeric_limits<double>::quiet_NaN())...};
        const cutwater_status status = evaluate<R>(raws, Steps{}, nullptr, [&](const Values<R>& values) {
            ((numbers[J] = column_number<R, J>(values)), ...);
            return CUTWATER_OK;
        });
        ((block.out[J][r] = numbers[J]), ...);
        block.refused += status != CUTWATER_OK;
    }
}

inline void stage(double* to, cutwater_column column, std::size_t begin, std::size_t rows)
{
    const double* from = column.data + static_cast<std::ptrdiff_t>(begin) * column.stride;
    for (std::size_t r = 0; r < rows; ++r) to[r] = from[static_cast<std::ptrdiff_t>(r) * column.stride];
}

template <const auto& R>
void count_refused(RowsJob& job, const Block<R>& block, std::size_t begin, std::size_t rows)
{
    if (!block.refused) return;
    for (std::size_t r = 0; r < rows; ++r) {
        if (!std::isnan(block.out[0][r])) continue;
        if (job.refused++ == 0) {
            job.first_refused = begin + r;
            for (std::size_t i = 0; i < input_count<R>; ++i)
                if (inputs_of<R>[i].kind == Kind::quantity) job.first_given[i].number = block.in[i][r];
        }
        if (job.bitmap) job.bitmap[(begin + r) / 8] |= static_cast<std::uint8_t>(1u << ((begin + r) % 8));
    }
}

/// Whether a result's column is also an input's: then it is written only when its whole block has been judged.
template <const auto& R>
bool in_place(const RowsJob& job, std::size_t result)
{
    for (std::size_t i = 0; i < input_count<R>; ++i)
        if (inputs_of<R>[i].kind == Kind::quantity && job.columns[i].data == job.results[result].data) return true;
    return false;
}

/// Finds a row whose inputs are permitted, for the refused ones to be computed with.
template <const auto& R, std::size_t... I>
bool find_permitted_row(const RowsJob& job, Block<R>& block, std::index_sequence<I...>)
{
    for (std::size_t r = 0; r < job.rows; ++r) {
        const auto row = static_cast<std::ptrdiff_t>(r);
        const double x[] = {job.columns[I].data[row * job.columns[I].stride]...};
        if (!(permitted(std::get<I>(R.inputs), x[I]) && ...)) continue;
        if (!relations_hold<R>(typename TraitsOf<R>::Parameters(typed(std::get<I>(R.inputs), x[I])...))) continue;
        std::copy(std::begin(x), std::end(x), block.permitted_row);
        return true;
    }
    return false;
}

/// Every row, computed or not, as a refused one.
template <const auto& R>
void refuse_block(Block<R>& block, std::size_t rows)
{
    for (double* out : block.out) std::fill_n(out, rows, std::numeric_limits<double>::quiet_NaN());
    block.refused = static_cast<std::int64_t>(rows);
}

/// The caller has cleared the bitmap and the count.
template <const auto& R>
void erased_rows(RowsJob& job)
{
    Block<R> block;
    for (std::size_t i = 0; i < input_count<R>; ++i)
        if (inputs_of<R>[i].kind == Kind::quantity && job.columns[i].stride == 0) {
            block.in[i] = block.in_stage[i];
            stage(block.in_stage[i], job.columns[i], 0, std::min(job.rows, block_rows));
        }
    bool any_permitted = true;
    if constexpr (straight<R>) any_permitted = find_permitted_row<R>(job, block, std::make_index_sequence<input_count<R>>());
    bool direct[result_count<R>];
    for (std::size_t j = 0; j < result_count<R>; ++j) direct[j] = job.results[j].stride == 1 && !in_place<R>(job, j);
    for (std::size_t begin = 0; begin < job.rows; begin += block_rows) {
        const std::size_t rows = std::min(block_rows, job.rows - begin);
        for (std::size_t i = 0; i < input_count<R>; ++i) {
            const cutwater_column column = job.columns[i];
            if (inputs_of<R>[i].kind != Kind::quantity || column.stride == 0) continue;
            if (column.stride == 1) {
                block.in[i] = column.data + begin;
            } else {
                block.in[i] = block.in_stage[i];
                stage(block.in_stage[i], column, begin, rows);
            }
        }
        for (std::size_t j = 0; j < result_count<R>; ++j)
            block.out[j] = direct[j] ? job.results[j].data + begin : block.out_stage[j];
        if (!any_permitted)
            refuse_block<R>(block, rows);
        else if constexpr (straight<R>)
            best_straight_block<R>()(block, rows);
        else
            branching_block<R>(block, rows, job.shared, std::make_index_sequence<input_count<R>>(), std::make_index_sequence<result_count<R>>());
        count_refused<R>(job, block, begin, rows);
        for (std::size_t j = 0; j < result_count<R>; ++j) {
            const cutwater_result_column column = job.results[j];
            if (direct[j]) continue;
            double* to = column.data + static_cast<std::ptrdiff_t>(begin) * column.stride;
            for (std::size_t r = 0; r < rows; ++r) to[static_cast<std::ptrdiff_t>(r) * column.stride] = block.out_stage[j][r];
        }
    }
}

template <const auto& R>
constexpr auto rows_of() -> void (*)(RowsJob&)
{
    if constexpr (has_series_result<R>)
        return nullptr;
    else
        return &erased_rows<R>;
}

}  // namespace cutwater::binding

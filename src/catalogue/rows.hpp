// The array form: blocks of rows that stay in the first-level cache, so that broadcast and strided columns cost no more
// than plain ones, and a loop without branches for formulas that are arithmetic, which the compiler turns into vectors.
#pragma once

#include "catalogue/evaluate.hpp"
#include "catalogue/shared_inputs.hpp"
#include "elementary/bits.hpp"

namespace cutwater::binding {

inline constexpr std::size_t block_rows = 1024;

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

/// The same of what a formula returned: a value, a tuple of values, or an outcome with either.
template <const auto& R, std::size_t I, class Returned>
double returned_number(const Returned& returned)
{
    using T = std::tuple_element_t<I, Values<R>>;
    const auto put = [](const T& value) {
        if constexpr (std::is_enum_v<T>)
            return static_cast<double>(value);
        else
            return number(std::get<I>(R.results), value);
    };
    if constexpr (requires { returned.why(); })
        return returned_number<R, I>(*returned);
    else if constexpr (std::is_same_v<Returned, Values<R>>)
        return put(std::get<I>(returned));
    else
        return put(returned);
}

/// Whether a row can be computed first and judged after, in a loop of its own: numbers from columns, words the same for
/// all rows, series only where what is computed of them once is fit for it.
template <const auto& R>
inline constexpr bool straight = straight_once<R> || []<class... Raw>(std::type_identity<std::tuple<Raw...>>) {
    return (!std::is_same_v<Raw, RawSeries> && ...);
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
    std::int64_t refused;          // of this block; a refused row's results are NaN, and no other row's are
};

/// Whether the record says of an input that callers usually give it once for all rows.
template <const auto& R>
consteval bool once_at(std::size_t input)
{
    for (const char* name : R.given_once)
        if (name && std::string_view(name) == inputs_of<R>[input].name) return true;
    return false;
}

template <const auto& R>
consteval std::size_t count_once()
{
    std::size_t count = 0;
    for (std::size_t i = 0; i < input_count<R>; ++i) count += once_at<R>(i);
    return count;
}

/// One of two numbers, without a branch that would keep the loop from becoming vectors.
inline double chosen(bool first, double one, double other) { return elementary::detail::select(first, one, other); }

/// What a formula is given for an input of a row; words and series are the same for all rows.
template <const auto& R, std::size_t I>
decltype(auto) typed_at(double x, const typename TraitsOf<R>::Parameters& shared)
{
    if constexpr (is_column<R, I>)
        return typed(std::get<I>(R.inputs), x);
    else
        return std::get<I>(shared);  // a reference
}

template <const auto& R, std::size_t I>
constexpr bool permitted_at(double x)
{
    if constexpr (is_column<R, I>)
        return permitted(std::get<I>(R.inputs), x);
    else
        return true;  // judged once for the call
}

/// Whether a row's formula may leave it to a call of its own: only one that takes Steps can know that it is in a row.
template <const auto& R>
inline constexpr bool may_be_unsettled = TraitsOf<R>::may_fail && TraitsOf<R>::shows_steps;

/// What the loop leaves in the first result of such a row: no number that arithmetic makes.
inline constexpr double unsettled_mark = std::bit_cast<double>(std::uint64_t{0x7ff8'756e'7365'7474});

/// A row's verdict as the loop stores it. Narrower than a double, it makes the compiler take several vectors of rows
/// abreast, so that their long chains of operations overlap; vectors of two have no instructions to narrow it with.
using WideFlag = std::uint16_t;
using PlainFlag = std::int64_t;

/// With Given, the inputs that the record names as given once are the same for all rows: what depends on them alone is
/// computed before the loop.
template <const auto& R, class Flag, bool Given, std::size_t... I, std::size_t... J>
[[gnu::always_inline]] inline void straight_loop(Block<R>& block, std::size_t rows, const SharedInputs<R>& all_rows,
                                                 std::index_sequence<I...>, std::index_sequence<J...>)
{
    using Parameters = RowParameters<R>;
    constexpr std::size_t inputs = sizeof...(I);
    // A word has no column: it is the same for all rows too.
    constexpr bool once[inputs] = {(!is_column<R, I> || (Given && once_at<R>(I)))...};
    const double* const in[] = {block.in[I]...};
    double* const out[] = {block.out[J]...};
    const typename TraitsOf<R>::Parameters shared = all_rows.parameters();
    const double instead[] = {block.permitted_row[I]...};  // of an input given once: itself
    Flag good{0};
    constexpr double nan = std::numeric_limits<double>::quiet_NaN();
#if defined(__clang__)
#pragma clang loop vectorize(assume_safety)
#else
#pragma GCC ivdep
#endif
    for (std::size_t r = 0; r < rows; ++r) {
        // A formula sees permitted inputs only, unless its record says otherwise: with others it could take for ever,
        // or do what C++ does not define. Relations compare numbers, and may see any.
        const double given[] = {(once[I] ? instead[I] : in[I][r])...};
        bool ok = ((once[I] || permitted_at<R, I>(given[I])) & ...);
        constexpr bool as_given = R.sound_anywhere, both = as_given || R.sound_within_intervals;
        if constexpr (!both)
            ok = ok & SharedInputs<R>::relations_of_row(Parameters(typed_at<R, I>(given[I], shared)...));
        const Parameters parameters(
            typed_at<R, I>(once[I] || as_given ? given[I] : chosen(ok, given[I], instead[I]), shared)...);
        if constexpr (both) ok = ok & SharedInputs<R>::relations_of_row(parameters);
        const auto returned = all_rows.straight_run(parameters);
        double otherwise = nan;
        if constexpr (may_be_unsettled<R>) otherwise = chosen(ok & returned.is_unsettled(), unsettled_mark, nan);
        if constexpr (TraitsOf<R>::may_fail) ok = ok & static_cast<bool>(returned);
        const double numbers[] = {returned_number<R, J>(returned)...};
        ok = ok & ((numbers[J] - numbers[J] == 0) & ...);
        ((out[J][r] = chosen(ok, numbers[J], otherwise)), ...);
        good = static_cast<Flag>(good + (ok ? Flag{1} : Flag{0}));
    }
    block.refused = static_cast<std::int64_t>(rows) - static_cast<std::int64_t>(good);
}

template <const auto& R>
using StraightBlock = void(Block<R>&, std::size_t, const SharedInputs<R>&);

template <const auto& R, class Flag, bool Given>
[[gnu::always_inline]] inline void straight_loop(Block<R>& block, std::size_t rows, const SharedInputs<R>& shared)
{
    straight_loop<R, Flag, Given>(block, rows, shared, std::make_index_sequence<input_count<R>>(),
                                  std::make_index_sequence<result_count<R>>());
}

template <const auto& R, bool Given>
[[gnu::flatten]] void straight_block(Block<R>& block, std::size_t rows, const SharedInputs<R>& shared)
{
    straight_loop<R, PlainFlag, Given>(block, rows, shared);
}

#if defined(__x86_64__) && defined(__GNUC__) && !defined(CUTWATER_ONE_WIDTH)  // one: for builds that only test
/// The same loop for machines with wider vectors; without contraction it gives the same bits.
template <const auto& R, bool Given>
[[gnu::flatten, gnu::target("avx2")]] void straight_block_avx2(Block<R>& block, std::size_t rows,
                                                               const SharedInputs<R>& shared)
{
    straight_loop<R, WideFlag, Given>(block, rows, shared);
}

#if defined(__clang__)
#define CUTWATER_AVX512 "avx512f,avx512dq,avx512vl,avx512bw"
#else
#define CUTWATER_AVX512 "avx512f,avx512dq,avx512vl,avx512bw,prefer-vector-width=512"
#endif
template <const auto& R, bool Given>
[[gnu::flatten, gnu::target(CUTWATER_AVX512)]] void straight_block_avx512(Block<R>& block, std::size_t rows,
                                                                          const SharedInputs<R>& shared)
{
    straight_loop<R, WideFlag, Given>(block, rows, shared);
}
#undef CUTWATER_AVX512

template <const auto& R, bool Given>
auto best_straight_block() -> StraightBlock<R>*
{
    if (__builtin_cpu_supports("avx512dq") && __builtin_cpu_supports("avx512vl") && __builtin_cpu_supports("avx512bw"))
        return &straight_block_avx512<R, Given>;
    return __builtin_cpu_supports("avx2") ? &straight_block_avx2<R, Given> : &straight_block<R, Given>;
}
#else
template <const auto& R, bool Given>
auto best_straight_block() -> StraightBlock<R>*
{
    return &straight_block<R, Given>;
}
#endif

/// A row by the single call's way; whether it was answered.
template <const auto& R, std::size_t... J>
bool branching_row(Block<R>& block, std::size_t r, SharedInputs<R>& shared, std::index_sequence<J...>)
{
    ((block.out[J][r] = std::numeric_limits<double>::quiet_NaN()), ...);
    return shared.row([&](std::size_t input) { return block.in[input][r]; },
                      [&](const Values<R>& values) { ((block.out[J][r] = column_number<R, J>(values)), ...); });
}

template <const auto& R>
void branching_block(Block<R>& block, std::size_t rows, SharedInputs<R>& shared)
{
    block.refused = 0;
    for (std::size_t r = 0; r < rows; ++r)
        block.refused += !branching_row<R>(block, r, shared, std::make_index_sequence<result_count<R>>());
}

/// The rows that the loop has left unsettled.
template <const auto& R>
void settle(Block<R>& block, std::size_t rows, SharedInputs<R>& shared)
{
    if (!block.refused) return;
    for (std::size_t r = 0; r < rows; ++r)
        if (std::bit_cast<std::uint64_t>(block.out[0][r]) == std::bit_cast<std::uint64_t>(unsettled_mark))
            block.refused -= branching_row<R>(block, r, shared, std::make_index_sequence<result_count<R>>());
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
bool find_permitted_row(const RowsJob& job, Block<R>& block, const SharedInputs<R>& shared, std::index_sequence<I...>)
{
    for (std::size_t r = 0; r < job.rows; ++r) {
        const auto row = static_cast<std::ptrdiff_t>(r);
        const double x[] = {
            (inputs_of<R>[I].kind == Kind::quantity ? job.columns[I].data[row * job.columns[I].stride] : 0.0)...};
        if (!(permitted_at<R, I>(x[I]) && ...)) continue;
        const RowParameters<R> parameters(typed_at<R, I>(x[I], shared.parameters())...);
        if (!SharedInputs<R>::relations_of_row(parameters)) continue;
        std::copy(std::begin(x), std::end(x), block.permitted_row);
        return true;
    }
    return false;
}

/// Whether the caller gives once all that the record names so.
template <const auto& R, std::size_t... I>
bool given_once(const RowsJob& job, std::index_sequence<I...>)
{
    return ((!once_at<R>(I) || job.columns[I].stride == 0) && ...);
}

/// Every row, computed or not, as a refused one.
template <const auto& R>
void refuse_block(Block<R>& block, std::size_t rows)
{
    for (double* out : block.out) std::fill_n(out, rows, std::numeric_limits<double>::quiet_NaN());
    block.refused = static_cast<std::int64_t>(rows);
}

template <const auto& R>
void compute_block(Block<R>& block, std::size_t rows, SharedInputs<R>& shared, StraightBlock<R>* straight_rows)
{
    if constexpr (straight<R>) {
        if (shared.fit_vectors()) return straight_rows(block, rows, shared);
    }
    if constexpr (!straight<R> || may_not_fit<R>) branching_block<R>(block, rows, shared);
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
    SharedInputs<R> shared(job.shared);
    bool any_permitted = shared.permitted();
    StraightBlock<R>* straight_rows = nullptr;
    if constexpr (straight<R>) {
        any_permitted = any_permitted &&
                        find_permitted_row<R>(job, block, shared, std::make_index_sequence<input_count<R>>());
        straight_rows = best_straight_block<R, false>();
        constexpr std::size_t named = count_once<R>();
        static_assert(named == std::size(R.given_once) -
                                   static_cast<std::size_t>(
                                       std::count(std::begin(R.given_once), std::end(R.given_once), nullptr)),
                      "the record names an input as given once that it does not have");
        if constexpr (named > 0) {
            if (given_once<R>(job, std::make_index_sequence<input_count<R>>()))
                straight_rows = best_straight_block<R, true>();
        }
    }
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
        else
            compute_block<R>(block, rows, shared, straight_rows);
        if constexpr (straight<R> && may_be_unsettled<R>) settle<R>(block, rows, shared);
        count_refused<R>(job, block, begin, rows);
        for (std::size_t j = 0; j < result_count<R>; ++j) {
            const cutwater_result_column column = job.results[j];
            if (direct[j]) continue;
            double* to = column.data + static_cast<std::ptrdiff_t>(begin) * column.stride;
            for (std::size_t r = 0; r < rows; ++r)
                to[static_cast<std::ptrdiff_t>(r) * column.stride] = block.out_stage[j][r];
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

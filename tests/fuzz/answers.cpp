// The four answers, over every function: each ends, with what it promises.
#include "fuzz/feed.hpp"

#include <algorithm>
#include <array>

using namespace cutwater::fuzz;

namespace {

void working(Feed& feed, const char* name, const Arguments& given)
{
    const int form = feed.one_in(40) ? feed.below(256) : feed.below(4);
    const auto capacity = static_cast<std::size_t>(feed.one_in(2) ? 1 << 16 : feed.below(3000));
    const auto buffer = std::make_unique<char[]>(capacity);
    std::size_t needed = 0;
    cutwater_refusal refusal;
    const cutwater_status status = cutwater_working(name, given.values.data(), given.values.size(), form, buffer.get(),
                                                    capacity, &needed, &refusal);
    check_refusal(status, refusal, 64);
    if (!capacity) return;
    must(std::memchr(buffer.get(), 0, capacity), "the text is ended");
    must(is_utf8(buffer.get()), "the text is UTF-8");
    const std::size_t length = std::strlen(buffer.get());
    must(length == needed || (length < capacity && needed >= capacity), "the length needed is told");
    if (status == CUTWATER_OK) must(length == needed, "a text that is cut is refused");
}

double result_at(const char* name, std::vector<cutwater_value> values, std::size_t input, double x, std::size_t result)
{
    if (values.size() <= input) values.resize(input + 1);
    values[input] = {CUTWATER_NUMBER, x, nullptr, nullptr, 0, 1};
    const auto count = static_cast<std::size_t>(cutwater_result_count(cutwater_find(name)));
    std::vector<cutwater_result> results(count);
    std::array<double, 64> room{};  // a series of results beside, which may not be left without
    for (cutwater_result& r : results) r.series = room.data(), r.capacity = room.size();
    cutwater_call(name, values.data(), values.size(), results.data(), count, nullptr);
    return results[result].number;
}

void solve(Feed& feed, int function, const char* name, const Arguments& given)
{
    const int unknown = feed.below(cutwater_input_count(function)),
              result = feed.below(cutwater_result_count(function));
    const std::string text = feed.quantity();
    const bool by_text = feed.one_in(4);
    const double wanted = feed.number(), low = feed.one_in(2) ? NAN : feed.number(),
                 high = feed.one_in(2) ? NAN : feed.number();
    const cutwater_value target{by_text ? CUTWATER_TEXT : CUTWATER_NUMBER, wanted, text.c_str(), nullptr, 0, 1};
    double found = 0;
    cutwater_refusal refusal;
    const char* unknown_name = cutwater_input_name(function, unknown);
    const cutwater_status status = cutwater_solve_for(name, given.values.data(), given.values.size(), unknown_name,
                                                      cutwater_result_name(function, result), &target, low, high,
                                                      &found, &refusal);
    check_refusal(status, refusal, cutwater_input_count(function));
    must(std::isfinite(found) == (status == CUTWATER_OK), "a value found is finite, and none is left by a refusal");
    if (status == CUTWATER_OK) {
        must(!(found < low) && !(found > high), "the value found lies where it was looked for");
        const double here = result_at(name, given.values, static_cast<std::size_t>(unknown), found,
                                      static_cast<std::size_t>(result));
        must(std::isfinite(here), "the function can be computed there");
    }
    double roots[8];
    std::size_t count = 0;
    const cutwater_status all = cutwater_solutions(name, given.values.data(), given.values.size(), unknown_name,
                                                   cutwater_result_name(function, result), &target, low, high, roots, 8,
                                                   &count, nullptr);
    if (status == CUTWATER_OK)
        must(all == CUTWATER_OK && count == 1 && roots[0] == found, "all values found are the one");
    for (std::size_t k = 1; k < std::min<std::size_t>(count, 8); ++k) must(roots[k] > roots[k - 1], "they rise");
}

void uncertainty(Feed& feed, int function, const char* name, const Arguments& given)
{
    const Arguments standard(feed, function);
    const auto inputs = static_cast<std::size_t>(cutwater_input_count(function));
    std::vector<int32_t> spreads(standard.values.size());
    for (int32_t& spread : spreads)
        spread = feed.one_in(50) ? feed.below(256) - 128 : feed.one_in(3) ? feed.below(4) : 0;
    std::vector<cutwater_correlation> correlations(static_cast<std::size_t>(feed.one_in(2) ? 0 : feed.below(5)));
    for (cutwater_correlation& c : correlations)
        c = {feed.below(12) - 1, feed.below(12) - 1, feed.one_in(4) ? feed.number() : feed.below(21) / 10.0 - 1};
    cutwater_uncertainty_options options{};
    options.size = sizeof options;
    options.spreads = feed.one_in(2) ? spreads.data() : nullptr;
    options.correlations = correlations.data();
    options.correlation_count = correlations.size();
    options.monte_carlo = feed.one_in(4) ? CUTWATER_ALWAYS : CUTWATER_NEVER;
    options.trials = 1000;
    options.coverage = feed.one_in(3) ? feed.number() : 0;
    std::vector<double> shares(inputs), slopes(inputs);
    cutwater_uncertainty_report report{};
    report.size = sizeof report;
    report.shares = shares.data();
    report.slopes = slopes.data();
    cutwater_refusal refusal;
    const cutwater_status status = cutwater_uncertainty(name, given.values.data(), given.values.size(),
                                                        standard.values.data(), standard.values.size(), &options,
                                                        &report, &refusal);
    check_refusal(status, refusal, cutwater_input_count(function));
    must(is_utf8(report.remark), "the remark is UTF-8");
    must(std::isfinite(report.value) == (status == CUTWATER_OK), "a value is finite, and none is left by a refusal");
    if (status == CUTWATER_OK)
        must(report.standard >= 0 && *report.remark, "the standard uncertainty is told, with a remark");
}

void sensitivity(Feed& feed, int function, const char* name, const Arguments& given)
{
    const auto capacity = static_cast<std::size_t>(feed.below(30));
    const auto rows = std::make_unique<cutwater_sensitivity_row[]>(capacity);
    std::size_t count = 0;
    double value = 0;
    cutwater_refusal refusal;
    const cutwater_status status = cutwater_sensitivity(name, given.values.data(), given.values.size(), nullptr,
                                                        rows.get(), capacity, &count, &value, &refusal);
    check_refusal(status, refusal, cutwater_input_count(function));
    if (status != CUTWATER_OK) return;
    must(std::isfinite(value), "the value is finite");
    for (std::size_t k = 0; k < count; ++k)
        must(rows[k].input >= 0 && rows[k].input < cutwater_input_count(function), "a row is an input's");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Feed feed(data, size);
    const int function = feed.below(cutwater_function_count());
    const char* name = cutwater_function_name(function);
    const int which = feed.below(4);
    const Arguments given(feed, function);
    switch (which) {
    case 0: working(feed, name, given); break;
    case 1: solve(feed, function, name, given); break;
    case 2: uncertainty(feed, function, name, given); break;
    default: sensitivity(feed, function, name, given); break;
    }
    return 0;
}

// The by-name call with every kind of value, and room for series that is too small.
#include "fuzz/feed.hpp"

using namespace cutwater::fuzz;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Feed feed(data, size);
    const int function = feed.below(cutwater_function_count());
    const Arguments given(feed, function);
    const auto count = static_cast<std::size_t>(cutwater_result_count(function));
    const std::size_t room = feed.one_in(20) ? static_cast<std::size_t>(feed.below(static_cast<int>(count) + 2))
                                             : count;
    std::vector<cutwater_result> results(room);
    std::vector<std::unique_ptr<double[]>> series;
    for (cutwater_result& result : results) {
        result.capacity = static_cast<std::size_t>(feed.one_in(3) ? feed.below(8) : 256);
        series.push_back(std::make_unique<double[]>(result.capacity));
        result.series = feed.one_in(10) ? nullptr : series.back().get();
    }
    cutwater_refusal refusal;
    const char* name = cutwater_function_name(function);
    const cutwater_status status = cutwater_call(name, given.values.data(), given.values.size(), results.data(), room,
                                                 &refusal);
    check_refusal(status, refusal, cutwater_input_count(function));
    for (std::size_t j = 0; j < room; ++j) {
        const cutwater_result& result = results[j];
        if (status != CUTWATER_OK) {
            must(status == CUTWATER_BUFFER_TOO_SMALL || std::isnan(result.number), "no number is left by a refusal");
            continue;
        }
        if (j >= count) continue;
        must(result.kind == cutwater_result_kind(function, static_cast<int>(j)), "the kind is the record's");
        if (result.kind == CUTWATER_NUMBER) must(std::isfinite(result.number), "an answer is finite");
        if (result.kind == CUTWATER_TEXT) must(*result.text != 0, "a word is not empty");
        for (std::size_t k = 0; result.kind == CUTWATER_SERIES && k < result.length; ++k)
            must(std::isfinite(result.series[k]), "a point is finite");
    }
    return 0;
}

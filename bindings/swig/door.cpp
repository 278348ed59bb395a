#include "door.hpp"

#include <stdexcept>

namespace cutwater_door {
namespace {

std::vector<Function> look_up()
{
    std::vector<Function> list(static_cast<std::size_t>(cutwater_function_count()));
    for (std::size_t i = 0; i < list.size(); ++i) {
        Function &f = list[i];
        f.position = static_cast<std::int32_t>(i);
        f.name = cutwater_function_name(f.position);
        for (std::int32_t k = 0; k < cutwater_input_count(f.position); ++k) f.inputs.push_back(cutwater_input_kind(f.position, k));
        for (std::int32_t k = 0; k < cutwater_result_count(f.position); ++k) {
            f.results.push_back(cutwater_result_kind(f.position, k));
            f.has_series_result = f.has_series_result || f.results.back() == CUTWATER_SERIES;
        }
        if (f.inputs.size() > most_inputs || f.results.size() > most_results)
            throw std::length_error(f.name + " has more inputs or results than this door has room for");
    }
    return list;
}

}  // namespace

const Function *function_at(std::int32_t position)
{
    static const std::vector<Function> list = look_up();
    return position >= 0 && static_cast<std::size_t>(position) < list.size() ? &list[static_cast<std::size_t>(position)] : nullptr;
}

cutwater_status Call::once(const Function &function, const cutwater_value *values, std::size_t count)
{
    return cutwater_call_at(function.position, values, count, results_, function.results.size(), &refusal_);
}

cutwater_status Call::run(const Function &function, const cutwater_value *values, std::size_t count)
{
    if (!function.has_series_result) return once(function, values, count);
    buffers_.assign(function.results.size(), {});
    std::size_t room = 64;  // more than most curves have points
    for (std::size_t i = 0; i < count; ++i)
        if (values[i].kind == CUTWATER_SERIES && values[i].length > room) room = values[i].length;
    for (;;) {
        for (std::size_t i = 0; i < buffers_.size(); ++i) {
            if (function.results[i] != CUTWATER_SERIES) continue;
            if (buffers_[i].size() < room) buffers_[i].resize(room);
            results_[i].series = buffers_[i].data();
            results_[i].capacity = buffers_[i].size();
        }
        const cutwater_status status = once(function, values, count);
        if (status != CUTWATER_BUFFER_TOO_SMALL) return status;
        const std::size_t had = room;
        for (std::size_t i = 0; i < buffers_.size(); ++i)
            if (function.results[i] == CUTWATER_SERIES && results_[i].length > room) room = results_[i].length;
        if (room == had) return status;
    }
}

}  // namespace cutwater_door

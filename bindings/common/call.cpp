#include "common/call.hpp"

namespace cutwater_door {

cutwater_status Call::growing(const Function& function, const cutwater_value* values, std::size_t count)
{
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

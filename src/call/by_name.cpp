#include "call/by_name.hpp"

#include "call/arguments.hpp"
#include "catalogue/sentence.hpp"

#include <cstddef>
#include <memory>
#include <type_traits>

namespace cutwater {
namespace {

/// Room on the stack for as many as are needed: clearing all that there could be would take longer than a call.
template <class T, std::size_t N>
class Room {
public:
    explicit Room(std::size_t count)
    {
        for (std::size_t i = 0; i < count; ++i) std::construct_at(data() + i);
    }
    T* data() { return reinterpret_cast<T*>(bytes_); }

private:
    static_assert(std::is_trivially_destructible_v<T>);
    alignas(T) std::byte bytes_[N * sizeof(T)];
};

cutwater_status refuse_count(const FunctionInfo& f, const char* what, std::size_t wanted, std::size_t given,
                             cutwater_refusal* refusal)
{
    return refuse_saying(CUTWATER_WRONG_COUNT, refusal, "{} has {} {}; room was given for {}.", f.name, wanted, what,
                         given);
}

}  // namespace

cutwater_status call_by_name(const FunctionInfo& f, std::span<const cutwater_value> inputs, cutwater_result* results,
                             std::size_t result_count, cutwater_refusal* refusal)
{
    if (!results || result_count < f.results.size())
        return refuse_count(f, "results", f.results.size(), results ? result_count : 0, refusal);
    Room<Given, most_inputs> given(f.inputs.size());
    if (const auto status = read_arguments(f, inputs, given.data(), refusal); status != CUTWATER_OK) return status;
    Room<Result, most_results> room(f.results.size());
    Result* const out = room.data();
    for (std::size_t i = 0; i < f.results.size(); ++i) {
        out[i].data = results[i].series;
        out[i].capacity = results[i].series ? results[i].capacity : 0;
    }
    const cutwater_status status = f.call(given.data(), out, nullptr, refusal);
    const bool computed = status == CUTWATER_OK || status == CUTWATER_BUFFER_TOO_SMALL;
    if (!computed) return status;
    for (std::size_t i = 0; i < f.results.size(); ++i) {
        results[i].kind = f.results[i].kind == Kind::quantity ? CUTWATER_NUMBER
                          : f.results[i].kind == Kind::choice ? CUTWATER_TEXT
                                                              : CUTWATER_SERIES;
        results[i].number = out[i].number;
        results[i].text = out[i].word ? out[i].word : "";
        results[i].length = out[i].length;
    }
    return status;
}

}  // namespace cutwater

// Texts with units: read for an input, in a unit of one's own, converted; words to find a function by.
#include "fuzz/feed.hpp"

#include <algorithm>

using namespace cutwater::fuzz;

namespace {

void read_for_an_input(Feed& feed)
{
    const int function = feed.below(cutwater_function_count());
    const int input = feed.below(cutwater_input_count(function));
    const std::string text = feed.quantity();
    double number = 0;
    cutwater_refusal refusal;
    const cutwater_status status = cutwater_read(function, input, text.c_str(), &number, &refusal);
    check_refusal(status, refusal, cutwater_input_count(function));
    must(std::isfinite(number) == (status == CUTWATER_OK),
         "a number that is read is finite, and none is left by a refusal");
    double again = 0;
    must(cutwater_read(function, input, text.c_str(), &again, nullptr) == status &&
             std::memcmp(&number, &again, sizeof number) == 0,
         "the same text reads the same, with and without a refusal to fill");
}

void read_in_a_unit(Feed& feed)
{
    const std::string text = feed.quantity(), unit = feed.unit();
    const bool bare = feed.one_in(4);
    const cutwater_value value{
        bare ? CUTWATER_NUMBER : CUTWATER_TEXT, bare ? feed.number() : 0, text.c_str(), nullptr, 0, 1};
    double number = 0;
    cutwater_refusal refusal;
    const cutwater_status status = cutwater_quantity(&value, unit.c_str(), &number, &refusal);
    check_refusal(status, refusal, 2);
    must(std::isfinite(number) == (status == CUTWATER_OK), "likewise in a unit that is named");
}

void convert_between(Feed& feed)
{
    const std::string from = feed.unit(), to = feed.one_in(2) ? from : feed.unit();
    const double value = feed.number();
    double result = 0;
    cutwater_refusal refusal;
    const cutwater_status status = cutwater_convert_unit(value, from.c_str(), to.c_str(), &result, &refusal);
    check_refusal(status, refusal, 3);
    must(std::isfinite(result) == (status == CUTWATER_OK), "a conversion is finite or refused");
    if (status == CUTWATER_OK && from == to) must(result == value, "into the same unit nothing changes");
}

void find(Feed& feed)
{
    const std::string words = feed.text(80);
    const auto capacity = static_cast<std::size_t>(feed.below(12));
    const auto functions = std::make_unique<std::int32_t[]>(capacity);
    std::size_t count = 0;
    cutwater_refusal refusal;
    const cutwater_status status = cutwater_find_function(words.c_str(), functions.get(), capacity, &count, &refusal);
    check_refusal(status, refusal, 1);
    for (std::size_t k = 0; k < std::min(capacity, count); ++k)
        must(functions[k] >= 0 && functions[k] < cutwater_function_count(), "what is found is there");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Feed feed(data, size);
    const int which = feed.below(100);  // 0 where nothing is left to read
    if (which < 55)
        read_for_an_input(feed);
    else if (which < 80)
        read_in_a_unit(feed);
    else if (which < 99)
        convert_between(feed);
    else
        find(feed);  // takes a hundred times as long as the others
    return 0;
}

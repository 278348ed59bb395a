// Texts with units: read for an input, in a unit of one's own, converted.
#include "fuzz/feed.hpp"

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
    must(std::isfinite(number) == (status == CUTWATER_OK), "a number that is read is finite, and none is left by a refusal");
    double again = 0;
    must(cutwater_read(function, input, text.c_str(), &again, nullptr) == status && std::memcmp(&number, &again, sizeof number) == 0,
         "the same text reads the same, with and without a refusal to fill");
}

void read_in_a_unit(Feed& feed)
{
    const std::string text = feed.quantity(), unit = feed.text(16);
    double number = 0;
    cutwater_refusal refusal;
    const cutwater_status status = cutwater_quantity(text.c_str(), unit.c_str(), &number, &refusal);
    check_refusal(status, refusal, 2);
    must(std::isfinite(number) == (status == CUTWATER_OK), "likewise in a unit that is named");
}

void convert_between(Feed& feed)
{
    const std::string from = feed.text(16), to = feed.one_in(2) ? from : feed.text(16);
    const double value = feed.number();
    double result = 0;
    cutwater_refusal refusal;
    const cutwater_status status = cutwater_convert(value, from.c_str(), to.c_str(), &result, &refusal);
    check_refusal(status, refusal, 3);
    must(std::isfinite(result) == (status == CUTWATER_OK), "a conversion is finite or refused");
    if (status == CUTWATER_OK && from == to) must(result == value, "into the same unit nothing changes");
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    Feed feed(data, size);
    switch (feed.below(3)) {
    case 0: read_in_a_unit(feed); break;
    case 1: convert_between(feed); break;
    default: read_for_an_input(feed); break;
    }
    return 0;
}

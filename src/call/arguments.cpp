#include "call/arguments.hpp"

#include "catalogue/sentence.hpp"
#include "catalogue/words.hpp"
#include "units/format.hpp"
#include "units/text.hpp"

namespace cutwater {
namespace {

cutwater_status read_word(const FunctionText& f, std::size_t input, const cutwater_value& value, Given& given,
                          cutwater_refusal* refusal) noexcept
{
    const InputInfo& in = f.inputs[input];
    if (value.kind == CUTWATER_SERIES) return refuse_kind(f, input, "a series", refusal);
    char digits[32] = "";
    const char* word = value.text;
    if (value.kind == CUTWATER_NUMBER) {  // a choice may look like a number: a cell holding 2 for the two-pole motor
        digits[format_into(digits, sizeof digits - 1, "{}", value.number)] = 0;
        word = digits;
    }
    given.word = word ? find_word(in.words.data(), in.words.size(), word) : -1;
    return given.word >= 0 ? CUTWATER_OK : refuse_word(f, input, word, refusal);
}

}  // namespace

cutwater_status read_text(const FunctionText& f, std::size_t input, const char* text, std::int64_t element,
                          double& number, cutwater_refusal* refusal) noexcept
{
    if (!text) return refuse_missing(f, input, refusal);
    const InputInfo& in = f.inputs[input];
    if (in.kind == Kind::choice) return refuse_kind(f, input, "a text where a word stands", refusal);
    const cutwater_status status = read_quantity(*in.quantity, *in.unit, text, number, refusal);
    if (status != CUTWATER_OK) blame(f, input, element, refusal);
    return status;
}

cutwater_status read_argument(const FunctionText& f, std::size_t input, const cutwater_value& value, Given& given,
                              cutwater_refusal* refusal) noexcept
{
    const InputInfo& in = f.inputs[input];
    if (value.kind == CUTWATER_LEFT_OUT) {
        if (!in.has_default) return refuse_missing(f, input, refusal);
        if (in.kind == Kind::choice)
            given.word = static_cast<int>(in.fallback);
        else
            given.number = in.fallback;
        return CUTWATER_OK;
    }
    if (in.kind == Kind::choice) return read_word(f, input, value, given, refusal);
    if (in.kind == Kind::series) {
        if (value.kind != CUTWATER_SERIES)
            return refuse_kind(f, input, value.kind == CUTWATER_TEXT ? "one text" : "one number", refusal);
        given.series = {value.series, value.length, value.stride};
        return CUTWATER_OK;
    }
    switch (value.kind) {
    case CUTWATER_NUMBER: given.number = value.number; return CUTWATER_OK;
    case CUTWATER_TEXT: return read_text(f, input, value.text, -1, given.number, refusal);
    default: return refuse_kind(f, input, "a series", refusal);
    }
}

cutwater_status read_arguments(const FunctionText& f, std::span<const cutwater_value> values, Given* given,
                               cutwater_refusal* refusal) noexcept
{
    if (values.size() > f.inputs.size())
        return refuse_saying(CUTWATER_WRONG_COUNT, refusal, "{} takes {} inputs; {} were given.", f.name,
                             f.inputs.size(), values.size());
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        const cutwater_value value = i < values.size() ? values[i] : cutwater_value{};
        if (const auto status = read_argument(f, i, value, given[i], refusal); status != CUTWATER_OK) return status;
    }
    return CUTWATER_OK;
}

}  // namespace cutwater

#include <cutwater/library.h>

#include "catalogue/families.hpp"
#include "catalogue/prose.hpp"
#include "catalogue/sentence.hpp"
#include "units/text.hpp"

#include <bit>
#include <cmath>
#include <cstring>
#include <limits>

using namespace cutwater;

namespace {

const FunctionInfo* at(int32_t function)
{
    return function >= 0 && static_cast<std::size_t>(function) < function_count()
               ? &function_at(static_cast<std::size_t>(function))
               : nullptr;
}

template <class T>
const T* entry_at(std::span<const T> list, int32_t position)
{
    return position >= 0 && static_cast<std::size_t>(position) < list.size() ? &list[static_cast<std::size_t>(position)]
                                                                             : nullptr;
}

const InputInfo* input_at(int32_t function, int32_t input)
{
    const FunctionInfo* f = at(function);
    return f ? entry_at(f->inputs, input) : nullptr;
}

const ResultInfo* result_at(int32_t function, int32_t result)
{
    const FunctionInfo* f = at(function);
    return f ? entry_at(f->results, result) : nullptr;
}

template <class Info>
int32_t kind_of(const Info* info)
{
    if (!info) return -1;
    return info->kind == Kind::quantity ? CUTWATER_NUMBER
           : info->kind == Kind::choice ? CUTWATER_TEXT
                                        : CUTWATER_SERIES;
}

template <class Info>
const char* word_of(const Info* info, int32_t word)
{
    const char* const* found = info ? entry_at(info->words, word) : nullptr;
    return found ? *found : "";
}

template <class Info>
const char* unit_of(const Info* info)
{
    return info ? unit_symbol(info->unit) : "";
}

cutwater_status quantity_of(const cutwater_value& value, const char* unit, double& number, cutwater_refusal* refusal)
{
    switch (value.kind) {
    case CUTWATER_TEXT:
        if (!value.text) return refuse(CUTWATER_MISSING, "quantity: a pointer is null.", refusal);
        return read_in_unit(unit, value.text, number, refusal);
    case CUTWATER_NUMBER: {
        // Whether -5 K is permitted is for the function that takes it.
        double judged = 0;
        if (const auto status = read_in_unit(unit, "0", judged, refusal); status != CUTWATER_OK) return status;
        if (!std::isfinite(value.number))
            return refuse(CUTWATER_NOT_FINITE, "quantity: value is not a finite number.", refusal);
        number = value.number;
        return CUTWATER_OK;
    }
    case CUTWATER_LEFT_OUT: return refuse(CUTWATER_MISSING, "quantity: value is not given.", refusal);
    default: return refuse(CUTWATER_WRONG_KIND, "quantity: value must be a number, or a text with a unit.", refusal);
    }
}

}  // namespace

extern "C" {

double cutwater_left_out(void) { return std::bit_cast<double>(left_out_bits); }
const char* cutwater_version(void) { return CUTWATER_VERSION; }
int32_t cutwater_interface(void) { return CUTWATER_INTERFACE; }

int32_t cutwater_function_count(void) { return static_cast<int32_t>(function_count()); }
int32_t cutwater_find(const char* function) { return function ? static_cast<int32_t>(find_function(function)) : -1; }

const char* cutwater_function_name(int32_t function)
{
    const FunctionInfo* f = at(function);
    return f ? f->name : "";
}
int32_t cutwater_input_count(int32_t function)
{
    const FunctionInfo* f = at(function);
    return f ? static_cast<int32_t>(f->inputs.size()) : 0;
}
int32_t cutwater_result_count(int32_t function)
{
    const FunctionInfo* f = at(function);
    return f ? static_cast<int32_t>(f->results.size()) : 0;
}
const char* cutwater_input_name(int32_t function, int32_t input)
{
    const InputInfo* in = input_at(function, input);
    return in ? in->full_name : "";
}
const char* cutwater_result_name(int32_t function, int32_t result)
{
    const ResultInfo* out = result_at(function, result);
    return out ? out->full_name : "";
}
int32_t cutwater_input_kind(int32_t function, int32_t input) { return kind_of(input_at(function, input)); }
int32_t cutwater_result_kind(int32_t function, int32_t result) { return kind_of(result_at(function, result)); }
int32_t cutwater_input_optional(int32_t function, int32_t input)
{
    const InputInfo* in = input_at(function, input);
    return in && in->has_default;
}
const char* cutwater_input_word(int32_t function, int32_t input, int32_t word)
{
    return word_of(input_at(function, input), word);
}
const char* cutwater_result_word(int32_t function, int32_t result, int32_t word)
{
    return word_of(result_at(function, result), word);
}
const char* cutwater_input_unit(int32_t function, int32_t input) { return unit_of(input_at(function, input)); }
const char* cutwater_result_unit(int32_t function, int32_t result) { return unit_of(result_at(function, result)); }

cutwater_status cutwater_convert_unit(double value, const char* from, const char* to, double* result,
                                      cutwater_refusal* refusal)
{
    if (!result || !from || !to) {
        if (result) *result = std::numeric_limits<double>::quiet_NaN();
        return refuse(CUTWATER_MISSING, "convert_unit: a pointer is null.", refusal);
    }
    double converted = 0;
    const cutwater_status status = convert(value, from, to, converted, refusal);
    *result = status == CUTWATER_OK ? converted : std::numeric_limits<double>::quiet_NaN();
    if (refusal && status == CUTWATER_OK) refusal->status = CUTWATER_OK;
    return status;
}

cutwater_status cutwater_quantity(const cutwater_value* value, const char* unit, double* number,
                                  cutwater_refusal* refusal)
{
    if (number) *number = std::numeric_limits<double>::quiet_NaN();
    if (!number || !value || !unit) return refuse(CUTWATER_MISSING, "quantity: a pointer is null.", refusal);
    const cutwater_status status = quantity_of(*value, unit, *number, refusal);
    if (refusal && status == CUTWATER_OK) refusal->status = CUTWATER_OK;
    if (refusal && status != CUTWATER_OK && std::strncmp(refusal->message, "quantity: ", 10) != 0) {
        const cutwater_refusal unnamed = *refusal;  // the reader of texts does not know who asked
        sentence_of(refusal).add("quantity: {}", static_cast<const char*>(unnamed.message));
    }
    return status;
}

}  // extern "C"

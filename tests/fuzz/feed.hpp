// What the fuzz targets share: arguments of every kind made from bytes, and what must hold of every answer.
#pragma once

#include <cutwater/library.h>

#include <fuzzer/FuzzedDataProvider.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <memory>
#include <string>
#include <vector>

namespace cutwater::fuzz {

/// Ends the run, so that the fuzzer keeps the input.
inline void must(bool holds, const char* what)
{
    if (holds) return;
    std::fprintf(stderr, "does not hold: %s\n", what);
    std::abort();
}

inline bool is_utf8(const char* text)
{
    for (const auto* p = reinterpret_cast<const unsigned char*>(text); *p;) {
        const int more = *p < 0x80 ? 0 : *p < 0xC2 ? -1 : *p < 0xE0 ? 1 : *p < 0xF0 ? 2 : *p < 0xF5 ? 3 : -1;
        if (more < 0) return false;
        ++p;
        for (int k = 0; k < more; ++k, ++p)
            if ((*p & 0xC0) != 0x80) return false;
    }
    return true;
}

/// A refusal is complete: its status, a sentence, an argument that there is.
inline void check_refusal(cutwater_status status, const cutwater_refusal& refusal, int inputs)
{
    must(refusal.status == status, "the refusal has the status returned");
    if (status == CUTWATER_OK) return;
    must(status > CUTWATER_OK && status < CUTWATER_INTERNAL, "the status is a known one, and not an inner failure");
    must(std::memchr(refusal.message, 0, sizeof refusal.message) && std::memchr(refusal.name, 0, sizeof refusal.name) &&
             std::memchr(refusal.unit, 0, sizeof refusal.unit),
         "texts are ended");
    must(std::strlen(refusal.message) > 10, "there is a sentence");
    must(is_utf8(refusal.message) && is_utf8(refusal.name) && is_utf8(refusal.unit), "texts are UTF-8");
    must(refusal.argument >= -1 && refusal.argument < inputs, "the argument blamed is there");
}

class Feed {
public:
    Feed(const std::uint8_t* data, std::size_t size) : bytes_(data, size) {}

    int below(int count) { return bytes_.ConsumeIntegralInRange<int>(0, count - 1); }
    bool one_in(int count) { return below(count) == 0; }
    std::size_t remaining() { return bytes_.remaining_bytes(); }

    /// Mostly of ordinary size, else an end of something, else any bits at all.
    double number()
    {
        static constexpr double special[] = {
            0,    -0.0, 1,       -1,     0.5,   2,   1e-300, -1e-300, 5e-324, 1e300,   -1e300,   1.7976931348623157e308,
            1e15, 100,  -273.15, 273.15, 1e-15, 2e9, 4e18,   -4e18,   64,     9.80665, HUGE_VAL, -HUGE_VAL,
            NAN};
        switch (below(8)) {
        case 0: return special[below(static_cast<int>(sizeof special / sizeof *special))];
        case 1: {
            const auto bits = bytes_.ConsumeIntegral<std::uint64_t>();
            double x;
            std::memcpy(&x, &bits, sizeof x);
            return x;
        }
        case 2: return below(65);
        default: return bytes_.ConsumeIntegralInRange<int>(-20000, 30000) * std::pow(10.0, below(8) - 4);
        }
    }

    std::string text(std::size_t most = 64) { return bytes_.ConsumeRandomLengthString(most); }

    std::string unit()
    {
        static const char* const units[] = {"m3/h", "US gpm", "l/s",      "bara",  "bar", "barg",  "mbar(a)", "psia",
                                            "kPa",  "m",      "ft",       "mm",    "in",  "kg/m3", "degC",    "degF",
                                            "K",    "cP",     "mPa s",    "mm2/s", "cSt", "rpm",   "1/min",   "kW",
                                            "hp",   "%",      "J/(kg K)", "m/s",   "N m", "Pa s"};
        return one_in(4) ? text(16) : units[below(static_cast<int>(sizeof units / sizeof *units))];
    }

    /// A text as people write it, or what is left of one.
    std::string quantity()
    {
        if (one_in(3)) return text();
        std::string made = std::to_string(number());
        if (one_in(4)) made = text(8) + made;
        made += one_in(3) ? "" : " ";
        made += unit();
        if (one_in(6)) made += text(4);
        return made;
    }

private:
    FuzzedDataProvider bytes_;
};

/// Inputs of one call. Every series lies in a block of exactly its size, so that the address sanitizer sees a step
/// outside.
class Arguments {
public:
    Arguments(Feed& feed, int function)
    {
        const int wanted = cutwater_input_count(function);
        const int count = feed.one_in(16) ? feed.below(wanted + 3) : wanted;
        for (int i = 0; i < count; ++i) values.push_back(one(feed, function, i));
    }

    std::vector<cutwater_value> values;

private:
    cutwater_value one(Feed& feed, int function, int input)
    {
        const int kind = cutwater_input_kind(function, input);
        switch (feed.one_in(12)           ? feed.below(5)
                : kind == CUTWATER_SERIES ? 3
                : kind == CUTWATER_TEXT   ? 2
                : feed.one_in(5)          ? 4
                : feed.one_in(8)          ? 0
                                          : 1) {
        case 0: return {CUTWATER_LEFT_OUT, 0, nullptr, nullptr, 0, 1};
        case 1: return {CUTWATER_NUMBER, feed.number(), nullptr, nullptr, 0, 1};
        case 2: return word(feed, function, input);
        case 3: return series(feed);
        default: return kept(feed.quantity());
        }
    }

    cutwater_value word(Feed& feed, int function, int input)
    {
        if (feed.one_in(16)) return kept(feed.text(20));
        if (feed.one_in(64)) return {CUTWATER_TEXT, 0, nullptr, nullptr, 0, 1};
        int words = 0;
        while (*cutwater_input_word(function, input, words)) ++words;
        return words ? kept(cutwater_input_word(function, input, feed.below(words))) : kept(feed.quantity());
    }

    cutwater_value kept(std::string text)
    {
        auto room = std::make_unique<char[]>(text.size() + 1);
        std::memcpy(room.get(), text.c_str(), text.size() + 1);
        texts_.push_back(std::move(room));
        return {CUTWATER_TEXT, 0, texts_.back().get(), nullptr, 0, 1};
    }

    cutwater_value series(Feed& feed)
    {
        const auto length = static_cast<std::size_t>(feed.one_in(20) ? feed.below(200) : feed.below(9));
        const std::ptrdiff_t strides[] = {1, 2, 3, -1, -2, 0};
        const std::ptrdiff_t stride = feed.one_in(4) ? strides[feed.below(6)] : 1;
        const std::size_t span = length ? (length - 1) * static_cast<std::size_t>(std::abs(stride)) + 1 : 0;
        auto room = std::make_unique<double[]>(span);
        const bool rising = !feed.one_in(4);
        double last = feed.number();
        for (std::size_t k = 0; k < length; ++k) {
            last = rising ? last + 0.01 * feed.below(10000) : feed.number();
            room[stride < 0 ? span - 1 - k * static_cast<std::size_t>(-stride) : k * static_cast<std::size_t>(stride)] =
                last;
        }
        const double* first = stride < 0 && span ? room.get() + span - 1 : room.get();
        numbers_.push_back(std::move(room));
        return {CUTWATER_SERIES, 0, nullptr, feed.one_in(100) ? nullptr : first, length, stride};
    }

    std::vector<std::unique_ptr<char[]>> texts_;
    std::vector<std::unique_ptr<double[]>> numbers_;
};

}  // namespace cutwater::fuzz

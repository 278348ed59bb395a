// What is said of an input in words, once for refusals, workings, headers, wizards and pages.
#pragma once

#include "catalogue/info.hpp"

#include "units/format.hpp"

#include <string>
#include <string_view>
#include <type_traits>

namespace cutwater {

/// Where prose goes: a text, or a buffer that must not grow.
class Prose {
public:
    virtual void put(std::string_view text) = 0;
    /// Bytes that a list may still take.
    virtual std::size_t room() const noexcept { return std::string_view::npos; }

    template <class... T>
    void add(fmt::format_string<T...> form, T&&... values)
    {
        add_erased(form, fmt::make_format_args(values...));
    }

protected:
    ~Prose() = default;

private:
    void add_erased(fmt::string_view form, fmt::format_args values);
};

class ProseText final : public Prose {
public:
    void put(std::string_view text) override { text_ += text; }
    std::string take() { return std::move(text_); }

private:
    std::string text_;
};

/// The unit to print: "" for a number without one.
const char* unit_symbol(const UnitInfo* unit) noexcept;

/// "from 0 to below 1 bar", "a whole number above 0", "a finite number".
void write_interval(Prose& to, const InputInfo& in);
/// "\"1B\", \"1E\" or \"1U\""; where there is no room for all, whole words and how many more there are.
void write_words(Prose& to, std::span<const char* const> words);
/// What an input takes: "a number in m3/h, or a text with its unit", "one of the words …", "a series: …".
void write_kind(Prose& to, const InputInfo& in);
/// What is permitted of it, and what stands for it when it is left out: "from 0 to 1; 0.4 if left out".
void write_permitted(Prose& to, const InputInfo& in);

/// "plus or minus 30 % in about 95 of 100 cases"; nothing where the record states no scatter.
void write_scatter(Prose& to, const ResultInfo& out);

template <class... T>
std::string prose(void (*write)(Prose&, T...), std::type_identity_t<T>... what)
{
    ProseText made;
    write(made, what...);
    return made.take();
}

}  // namespace cutwater

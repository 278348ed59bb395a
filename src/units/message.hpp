// A sentence written into a caller's fixed buffer, cut at a whole character, never allocated.
#pragma once

#include "units/format.hpp"
#include "utf8.hpp"

#include <cstddef>
#include <string_view>

namespace cutwater {

class Message {
public:
    /// capacity counts the ending 0; a null buffer takes nothing.
    Message(char* buffer, std::size_t capacity) noexcept;

    template <class... Args>
    Message& add(fmt::format_string<Args...> form, Args&&... args) noexcept
    {
        add_erased(form, fmt::make_format_args(args...));
        return *this;
    }

    /// Bytes that may still follow.
    std::size_t room() const noexcept { return room_ - length_; }

private:
    void add_erased(fmt::string_view form, fmt::format_args values) noexcept;

    char* begin_;
    std::size_t room_;
    std::size_t length_ = 0;
};

/// A foreign text made fit for a message: control characters and broken UTF-8 become '?', long ones are cut with "...".
struct Quoted {
    explicit Quoted(std::string_view text) noexcept;
    std::string_view view() const noexcept { return {text_, length_}; }

private:
    char text_[72];
    std::size_t length_ = 0;
};

}  // namespace cutwater

// A sentence written into a caller's fixed buffer, cut at a whole character, never allocated.
#pragma once

#include "utf8.hpp"

#include <fmt/format.h>


#include <cstddef>
#include <string_view>

namespace cutwater {

class Message {
public:
    /// capacity counts the ending 0; a null buffer takes nothing.
    Message(char* buffer, std::size_t capacity) noexcept : begin_(buffer), room_(buffer && capacity ? capacity - 1 : 0)
    {
        if (buffer && capacity) *buffer = 0;
    }

    template <class... Args>
    Message& add(fmt::format_string<Args...> form, Args&&... args) noexcept
    {
        if (length_ >= room_) return *this;
        const std::size_t room = room_ - length_;
        // the byte for the ending 0 takes the first one too many, which tells whether a character was cut
        const auto written = fmt::vformat_to_n(begin_ + length_, room + 1, form, fmt::make_format_args(args...));
        if (written.size > room)
            room_ = length_ += whole_characters({begin_ + length_, room + 1}, room);  // full: nothing more may follow
        else
            length_ += written.size;
        begin_[length_] = 0;
        return *this;
    }

private:
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

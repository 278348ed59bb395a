// A sentence written into a caller's fixed buffer, cut at a whole character, never allocated.
#pragma once

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
        const auto written = fmt::vformat_to_n(begin_ + length_, room, form, fmt::make_format_args(args...));
        length_ += written.size < room ? written.size : room;
        if (written.size > room) cut();
        begin_[length_] = 0;
        return *this;
    }

private:
    void cut() noexcept
    {
        // step back over the bytes of a character that may be incomplete
        while (length_ && (static_cast<unsigned char>(begin_[length_ - 1]) & 0xC0) == 0x80) --length_;
        if (length_ && static_cast<unsigned char>(begin_[length_ - 1]) >= 0xC0) --length_;
        room_ = length_;
    }

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

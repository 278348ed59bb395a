#include "message.hpp"

#include "utf8.hpp"

namespace cutwater {

Message::Message(char* buffer, std::size_t capacity) noexcept : begin_(buffer), room_(0)
{
    if (!buffer || !capacity) return;
    room_ = capacity - 1;
    *buffer = 0;
}

void Message::add_erased(fmt::string_view form, fmt::format_args values) noexcept
{
    if (length_ >= room_) return;
    const std::size_t room = room_ - length_;
    // the byte for the ending 0 takes the first one too many, which tells whether a character was cut
    const std::size_t written = erased::format_into(begin_ + length_, room + 1, form, values);
    if (written > room)
        room_ = length_ += whole_characters({begin_ + length_, room + 1}, room);  // full: nothing more may follow
    else
        length_ += written;
    begin_[length_] = 0;
}

Quoted::Quoted(std::string_view text) noexcept
{
    constexpr std::size_t room = sizeof text_ - 4;  // a whole character and the dots always fit
    for (std::size_t i = 0; i < text.size();) {
        const CodePoint c = decode(text, i);
        const bool fit = c.bytes != 0 && c.value >= 0x20 && c.value != 0x7F && !(c.value >= 0x80 && c.value < 0xA0);
        const std::size_t bytes = c.bytes ? c.bytes : 1;
        if (length_ + bytes > room) {
            for (int dot = 0; dot < 3; ++dot) text_[length_++] = '.';
            return;
        }
        if (fit)
            for (std::size_t k = 0; k < bytes; ++k) text_[length_++] = text[i + k];
        else
            text_[length_++] = '?';
        i += bytes;
    }
}

}  // namespace cutwater

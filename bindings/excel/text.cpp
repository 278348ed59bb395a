#include "text.hpp"

#include <windows.h>

namespace cutwater::excel {

std::string utf8(std::u16string_view text)
{
    if (text.empty()) return {};
    const auto* from = reinterpret_cast<const wchar_t*>(text.data());
    const int length = static_cast<int>(text.size());
    std::string made(
        static_cast<std::size_t>(WideCharToMultiByte(CP_UTF8, 0, from, length, nullptr, 0, nullptr, nullptr)), '\0');
    WideCharToMultiByte(CP_UTF8, 0, from, length, made.data(), static_cast<int>(made.size()), nullptr, nullptr);
    return made;
}

std::u16string utf16(std::string_view text)
{
    if (text.empty()) return {};
    const int length = static_cast<int>(text.size());
    std::u16string made(static_cast<std::size_t>(MultiByteToWideChar(CP_UTF8, 0, text.data(), length, nullptr, 0)),
                        u'\0');
    MultiByteToWideChar(CP_UTF8, 0, text.data(), length, reinterpret_cast<wchar_t*>(made.data()),
                        static_cast<int>(made.size()));
    return made;
}

}  // namespace cutwater::excel

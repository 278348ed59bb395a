// Just enough JSON for writing the catalogue.
#pragma once

#include <cmath>
#include <string>
#include <string_view>

#include "units/format.hpp"

namespace cutwater::generate {

inline std::string json_text(std::string_view text)
{
    std::string made = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\')
            made += {'\\', c};
        else if (static_cast<unsigned char>(c) < 0x20)
            made += formatted("\\u{:04x}", static_cast<int>(c));
        else
            made += c;
    }
    return made + '"';
}

/// Infinities have no place in JSON: an open end is null.
inline std::string json_number(double value) { return std::isfinite(value) ? formatted("{}", value) : "null"; }

/// "key": value pairs in braces, in the order they were added.
class JsonObject {
public:
    JsonObject& raw(std::string_view key, std::string_view value)
    {
        body_ += formatted("{}{}: {}", body_.empty() ? "" : ", ", json_text(key), value);
        return *this;
    }
    JsonObject& text(std::string_view key, std::string_view value) { return raw(key, json_text(value)); }
    JsonObject& number(std::string_view key, double value) { return raw(key, json_number(value)); }
    JsonObject& flag(std::string_view key, bool value) { return raw(key, value ? "true" : "false"); }
    std::string done() const { return "{" + body_ + "}"; }

private:
    std::string body_;
};

template <class List, class Make>
std::string json_list(const List& list, Make&& make)
{
    std::string body;
    for (const auto& item : list) body += (body.empty() ? "" : ", ") + make(item);
    return "[" + body + "]";
}

}  // namespace cutwater::generate

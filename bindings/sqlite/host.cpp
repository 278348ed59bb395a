#include "host.hpp"

#include "json.hpp"

SQLITE_EXTENSION_INIT3

namespace cutwater_door {

Given given_from(sqlite3_value* value)
{
    Given given;
    switch (sqlite3_value_type(value)) {
    case SQLITE_INTEGER:
    case SQLITE_FLOAT:
        given.kind = Kind::number;
        given.number = sqlite3_value_double(value);
        break;
    case SQLITE_TEXT: {
        const auto* text = reinterpret_cast<const char*>(sqlite3_value_text(value));
        if (!text) throw std::bad_alloc();
        given.kind = Kind::text;
        given.text.assign(text, static_cast<std::size_t>(sqlite3_value_bytes(value)));
        if (begins_array(given.text)) given = read_array(given.text);
        break;
    }
    case SQLITE_NULL: given.null = true; break;
    default: given.kind = Kind::other; given.text = "a blob, neither a number nor a text";
    }
    return given;
}

}  // namespace cutwater_door

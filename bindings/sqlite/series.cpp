// series(value [, by]): the rows of a group as a JSON array, to the last bit; by puts them in rising order.
#include "door.hpp"
#include "json.hpp"

#include <algorithm>
#include <memory>
#include <new>

SQLITE_EXTENSION_INIT3

namespace cutwater_door {
namespace {

/// Numbers before texts, as SQLite orders them.
struct Key {
    bool text = false;
    double number = 0;
    std::string word;

    bool operator<(const Key& other) const
    {
        if (text != other.text) return other.text;
        return text ? word < other.word : number < other.number;
    }
};

struct Rows {
    std::vector<std::pair<Key, Json>> rows;
    bool failed = false;
};

bool read(sqlite3_value* from, double& number, std::string& word, bool& text)
{
    const int type = sqlite3_value_type(from);
    text = type == SQLITE_TEXT;
    if (text) {
        const auto* given = reinterpret_cast<const char*>(sqlite3_value_text(from));
        if (!given) throw std::bad_alloc();
        word.assign(given, static_cast<std::size_t>(sqlite3_value_bytes(from)));
        return true;
    }
    number = sqlite3_value_double(from);
    return type == SQLITE_INTEGER || type == SQLITE_FLOAT;
}

/// Null, with the error set, for what can be no point.
std::unique_ptr<std::pair<Key, Json>> point(sqlite3_context* context, int count, sqlite3_value** given)
{
    auto made = std::make_unique<std::pair<Key, Json>>();
    double number = 0;
    std::string word;
    bool text = false;
    if (sqlite3_value_type(given[0]) == SQLITE_NULL) {
        made->second = nullptr;
    } else if (!read(given[0], number, word, text)) {
        sqlite3_result_error(context, "series: a value is a blob; it must be a number, or a text with a unit.", -1);
        return nullptr;
    } else if (text) {
        made->second = word;
    } else {
        made->second = number;
    }
    Key& key = made->first;
    if (count > 1 && !read(given[1], key.number, key.word, key.text)) {
        sqlite3_result_error(context, "series: what the rows are put in order by must be a number or a text.", -1);
        return nullptr;
    }
    return made;
}

Rows** rows_of(sqlite3_context* context, int size)
{
    return static_cast<Rows**>(sqlite3_aggregate_context(context, size));
}

void step(sqlite3_context* context, int count, sqlite3_value** given) noexcept
{
    try {
        Rows** rows = rows_of(context, sizeof(Rows*));
        if (!rows) return sqlite3_result_error_nomem(context);
        if (!*rows) *rows = new Rows;
        if ((*rows)->failed) return;
        if (auto made = point(context, count, given))
            (*rows)->rows.push_back(std::move(*made));
        else
            (*rows)->failed = true;
    } catch (const std::bad_alloc&) {
        sqlite3_result_error_nomem(context);
    }
}

void finish(sqlite3_context* context) noexcept
{
    Rows** kept = rows_of(context, 0);
    if (!kept || !*kept) return sqlite3_result_null(context);
    const std::unique_ptr<Rows> rows(*kept);
    *kept = nullptr;
    if (rows->failed) return;
    try {
        std::stable_sort(rows->rows.begin(), rows->rows.end(),
                         [](const auto& a, const auto& b) { return a.first < b.first; });
        Json array = Json::array();
        for (auto& row : rows->rows) array.push_back(std::move(row.second));
        const std::string text = written(array);
        sqlite3_result_text64(context, text.data(), text.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
        sqlite3_result_subtype(context, json_subtype);
    } catch (const std::bad_alloc&) {
        sqlite3_result_error_nomem(context);
    }
}

}  // namespace

int register_series(sqlite3* db)
{
    for (const int count : {1, 2}) {
        const int code = sqlite3_create_function_v2(db, "series", count, pure | gives_json, nullptr, nullptr, step,
                                                    finish, nullptr);
        if (code != SQLITE_OK) return code;
    }
    return SQLITE_OK;
}

}  // namespace cutwater_door

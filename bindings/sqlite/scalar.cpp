// Functions and questions as SQL functions: one number or word as itself, several results or a series as JSON.
#include "callee.hpp"
#include "door.hpp"
#include "json.hpp"

#include <cstring>

SQLITE_EXTENSION_INIT3

namespace cutwater_door {
namespace {

void put_text(sqlite3_context* to, const std::string& text)
{
    sqlite3_result_text64(to, text.data(), text.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
}

void put_json(sqlite3_context* to, const Json& json)
{
    put_text(to, written(json));
    sqlite3_result_subtype(to, json_subtype);
}

Json json_of(const cutwater_result& result)
{
    if (result.kind == CUTWATER_NUMBER) return result.number;
    if (result.kind == CUTWATER_TEXT) return result.text;
    return array_of(result.series, result.length);
}

Json json_of(const Cell& cell)
{
    switch (cell.kind) {
    case Cell::Kind::number: return cell.number;
    case Cell::Kind::text: return cell.text;
    default: return nullptr;
    }
}

void put_results(sqlite3_context* to, const Callee& callee, const cutwater_result* results)
{
    if (callee.results.size() == 1) {
        if (results->kind == CUTWATER_NUMBER) return sqlite3_result_double(to, results->number);
        if (results->kind == CUTWATER_TEXT) return sqlite3_result_text(to, results->text, -1, SQLITE_STATIC);
        return put_json(to, json_of(*results));
    }
    Json object = Json::object();
    for (std::size_t i = 0; i < callee.results.size(); ++i) object[callee.results[i]] = json_of(results[i]);
    put_json(to, object);
}

void put_grid(sqlite3_context* to, const Callee& callee, const Grid& grid)
{
    const std::int32_t layout = question_at(callee.question)->layout;
    if (layout == CUTWATER_ONE) {
        const Cell& cell = grid.cells.front();
        if (cell.kind == Cell::Kind::text) return put_text(to, cell.text);
        if (cell.kind == Cell::Kind::number) return sqlite3_result_double(to, cell.number);
        return sqlite3_result_null(to);
    }
    Json rows = Json::array();
    for (std::size_t r = 0; r < grid.rows; ++r) {
        if (layout == CUTWATER_COLUMN) {
            rows.push_back(json_of(grid.at(r, 0)));
            continue;
        }
        Json row = Json::object();
        for (std::size_t c = 0; c < grid.columns; ++c) row[callee.results[c]] = json_of(grid.at(r, c));
        rows.push_back(std::move(row));
    }
    put_json(to, layout == CUTWATER_ROW ? rows.front() : rows);
}

/// Reads what needs no memory of its own: numbers, and texts that are neither empty nor a series. False for the rest.
bool read_plain(const Function& f, int count, sqlite3_value** given, cutwater_value* values)
{
    if (static_cast<std::size_t>(count) > f.inputs.size()) return false;
    for (int i = 0; i < count; ++i) {
        values[i] = cutwater_value{};
        if (f.inputs[static_cast<std::size_t>(i)] == CUTWATER_SERIES) return false;
        switch (sqlite3_value_type(given[i])) {
        case SQLITE_INTEGER:
        case SQLITE_FLOAT:
            values[i].kind = CUTWATER_NUMBER;
            values[i].number = sqlite3_value_double(given[i]);
            break;
        case SQLITE_TEXT: {
            const auto* text = reinterpret_cast<const char*>(sqlite3_value_text(given[i]));
            if (!text || !*text || begins_array(text)) return false;
            if (std::strlen(text) != static_cast<std::size_t>(sqlite3_value_bytes(given[i]))) return false;
            values[i].kind = CUTWATER_TEXT;
            values[i].text = text;
            break;
        }
        default: return false;
        }
    }
    return true;
}

std::vector<Given> read_all(int count, sqlite3_value** given)
{
    std::vector<Given> list;
    list.reserve(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) list.push_back(given_from(given[i]));
    return list;
}

void refused(sqlite3_context* to, const cutwater_refusal& refusal) { sqlite3_result_error(to, refusal.message, -1); }

void answer_function(sqlite3_context* to, const Callee& callee, int count, sqlite3_value** given)
{
    const Function& f = *callee.function;
    if (!f.has_series_result) {
        cutwater_value values[most_inputs];
        if (read_plain(f, count, given, values)) {
            cutwater_result results[most_results];
            cutwater_refusal refusal;
            const auto status = cutwater_call_at(f.position, values, static_cast<std::size_t>(count), results,
                                                 f.results.size(), &refusal);
            return status == CUTWATER_OK ? put_results(to, callee, results) : refused(to, refusal);
        }
    }
    const std::vector<Given> list = read_all(count, given);
    if (null_given(callee, list)) return sqlite3_result_null(to);
    Arguments<SqliteHost> arguments;
    cutwater_refusal refusal{};
    if (arguments.read(f, list, refusal) != CUTWATER_OK) return refused(to, refusal);
    Call call;
    if (call.run(f, arguments.values().data(), arguments.values().size()) != CUTWATER_OK)
        return refused(to, call.refusal());
    put_results(to, callee, &call.result(0));
}

void answer_question(sqlite3_context* to, const Callee& callee, int count, sqlite3_value** given)
{
    const std::vector<Given> list = read_all(count, given);
    if (null_given(callee, list)) return sqlite3_result_null(to);
    Grid grid;
    bool null = false;
    cutwater_refusal refusal{};
    if (ask(callee, list, grid, null, refusal) == CUTWATER_OK) return put_grid(to, callee, grid);
    return null ? sqlite3_result_null(to) : refused(to, refusal);
}

void answer(sqlite3_context* to, int count, sqlite3_value** given) noexcept
{
    try {
        const Callee& callee = *static_cast<const Callee*>(sqlite3_user_data(to));
        callee.function ? answer_function(to, callee, count, given) : answer_question(to, callee, count, given);
    } catch (const std::bad_alloc&) {
        sqlite3_result_error_nomem(to);
    } catch (const std::exception& error) {
        sqlite3_result_error(to, error.what(), -1);
    }
}

}  // namespace

int register_scalars(sqlite3* db)
{
    for (const Callee& callee : callees()) {
        const int flags = (callee.arguments.empty() ? pure & ~SQLITE_DETERMINISTIC : pure) | gives_json;
        const int code = sqlite3_create_function_v2(db, callee.name.c_str(), -1, flags, const_cast<Callee*>(&callee),
                                                    answer, nullptr, nullptr, nullptr);
        if (code != SQLITE_OK) return code;
    }
    return SQLITE_OK;
}

}  // namespace cutwater_door

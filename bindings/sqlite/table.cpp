// Functions and questions as table-valued calls: results are columns, a series goes down its column, arguments are
// hidden columns, so that they may be given by place or by name.
#include "callee.hpp"
#include "door.hpp"
#include "json.hpp"

#include <algorithm>
#include <cctype>

SQLITE_EXTENSION_INIT3

namespace cutwater_door {
namespace {

struct Table : sqlite3_vtab {
    const Callee* callee = nullptr;
};

struct Kept {
    sqlite3_value* value = nullptr;
    ~Kept() { sqlite3_value_free(value); }
    Kept() = default;
    Kept(Kept&& other) noexcept : value(other.value) { other.value = nullptr; }
    Kept& operator=(Kept&&) = delete;
};

struct Cursor : sqlite3_vtab_cursor {
    Grid grid;
    std::size_t row = 0;
    bool null = false;  // one row of NULL
    bool refused = false;
    cutwater_refusal refusal{};
    std::vector<Kept> arguments;

    const Callee& callee() const { return *static_cast<const Table*>(pVtab)->callee; }
    std::size_t rows() const { return null || refused ? 1 : grid.rows; }
};

std::string quoted(const std::string& name) { return '"' + name + '"'; }

int connect(sqlite3* db, void* aux, int, const char* const*, sqlite3_vtab** to, char** message) noexcept
{
    try {
        const Callee& callee = *static_cast<const Callee*>(aux);
        std::string text;
        for (const std::string& name : callee.results) text += (text.empty() ? "" : ", ") + quoted(name);
        for (const std::string& name : callee.arguments) text += ", " + quoted(name) + " HIDDEN";
        const int code = sqlite3_declare_vtab(db, ("CREATE TABLE answer(" + text + ")").c_str());
        if (code != SQLITE_OK) {
            *message = sqlite3_mprintf("%s", sqlite3_errmsg(db));
            return code;
        }
        sqlite3_vtab_config(db, SQLITE_VTAB_INNOCUOUS);
        auto* table = new Table{};
        table->callee = &callee;
        *to = table;
        return SQLITE_OK;
    } catch (const std::bad_alloc&) {
        return SQLITE_NOMEM;
    }
}

int disconnect(sqlite3_vtab* table) noexcept
{
    delete static_cast<Table*>(table);
    return SQLITE_OK;
}

/// idxStr names the arguments that are handed to filter, a character each.
constexpr char first_letter = '0';

int best_index(sqlite3_vtab* given, sqlite3_index_info* info) noexcept
{
    const Callee& callee = *static_cast<Table*>(given)->callee;
    const int first = static_cast<int>(callee.results.size());
    const int count = static_cast<int>(callee.arguments.size());
    char letters[most_inputs + 16] = {};
    int used = 0;
    for (int argument = 0; argument < count; ++argument)
        for (int i = 0; i < info->nConstraint; ++i) {
            const auto& constraint = info->aConstraint[i];
            if (constraint.iColumn != first + argument || constraint.op != SQLITE_INDEX_CONSTRAINT_EQ) continue;
            if (!constraint.usable) return SQLITE_CONSTRAINT;  // in this order of tables it is not known yet
            letters[used++] = static_cast<char>(first_letter + argument);
            info->aConstraintUsage[i].argvIndex = used;
            info->aConstraintUsage[i].omit = 1;
            break;  // another on the same argument stays SQLite's to check
        }
    info->idxStr = sqlite3_mprintf("%s", letters);
    if (!info->idxStr) return SQLITE_NOMEM;
    info->needToFreeIdxStr = 1;
    info->estimatedCost = 1;
    info->estimatedRows = 1;
    return SQLITE_OK;
}

int open(sqlite3_vtab*, sqlite3_vtab_cursor** to) noexcept
{
    try {
        *to = new Cursor{};
        return SQLITE_OK;
    } catch (const std::bad_alloc&) {
        return SQLITE_NOMEM;
    }
}

int close(sqlite3_vtab_cursor* cursor) noexcept
{
    delete static_cast<Cursor*>(cursor);
    return SQLITE_OK;
}

cutwater_status compute(Cursor& cursor, std::span<const Given> given)
{
    const Callee& callee = cursor.callee();
    if (!callee.function) return ask(callee, given, cursor.grid, cursor.null, cursor.refusal);
    Arguments<SqliteHost> arguments;
    if (const auto status = arguments.read(*callee.function, given, cursor.refusal); status != CUTWATER_OK)
        return status;
    Call call;
    const auto status = call.run(*callee.function, arguments.values().data(), arguments.values().size());
    if (status != CUTWATER_OK) {
        cursor.refusal = call.refusal();
        return status;
    }
    cursor.grid = results_of(*callee.function, call);
    return status;
}

int filter(sqlite3_vtab_cursor* to, int, const char* letters, int count, sqlite3_value** values) noexcept
{
    auto& cursor = *static_cast<Cursor*>(to);
    try {
        const Callee& callee = cursor.callee();
        cursor.row = 0;
        cursor.null = cursor.refused = false;
        cursor.grid = Grid{};
        cursor.arguments.clear();
        cursor.arguments.resize(callee.arguments.size());
        std::vector<Given> given;
        for (int i = 0; i < count; ++i) {
            const auto argument = static_cast<std::size_t>(letters[i] - first_letter);
            if (given.size() <= argument) given.resize(argument + 1);
            given[argument] = given_from(values[i]);
            cursor.arguments[argument].value = sqlite3_value_dup(values[i]);
            if (!cursor.arguments[argument].value) return SQLITE_NOMEM;
        }
        if (null_given(callee, given)) {
            cursor.null = true;
            return SQLITE_OK;
        }
        if (compute(cursor, given) == CUTWATER_OK || cursor.null) return SQLITE_OK;
        if (callee.checked) {
            cursor.refused = true;
            return SQLITE_OK;
        }
        sqlite3_free(to->pVtab->zErrMsg);
        to->pVtab->zErrMsg = sqlite3_mprintf("%s", cursor.refusal.message);
        return SQLITE_ERROR;
    } catch (const std::bad_alloc&) {
        return SQLITE_NOMEM;
    } catch (const std::exception& error) {
        sqlite3_free(to->pVtab->zErrMsg);
        to->pVtab->zErrMsg = sqlite3_mprintf("%s", error.what());
        return SQLITE_ERROR;
    }
}

int next(sqlite3_vtab_cursor* cursor) noexcept
{
    ++static_cast<Cursor*>(cursor)->row;
    return SQLITE_OK;
}

int at_end(sqlite3_vtab_cursor* given) noexcept
{
    const auto& cursor = *static_cast<Cursor*>(given);
    return cursor.row >= cursor.rows();
}

void put_told(const Cursor& cursor, std::size_t which, sqlite3_context* to)
{
    if (!cursor.refused) return;
    std::string text = cursor.refusal.message;
    if (which == 1) {
        text = cutwater_status_name(cursor.refusal.status);
        std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return std::tolower(c); });
    } else if (which == 2) {
        text = blamed(cursor.callee(), cursor.refusal);
        if (text.empty()) return;
    }
    sqlite3_result_text64(to, text.data(), text.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
}

void put_cell(const Cursor& cursor, std::size_t column, sqlite3_context* to)
{
    const Callee& callee = cursor.callee();
    const std::size_t own = callee.function ? callee.function->results.size() : callee.results.size();
    if (column >= own) return put_told(cursor, column - own, to);
    if (cursor.null || cursor.refused) return;
    // What is one for the whole call stands in every row beside its series.
    const bool every = callee.function && callee.function->results[column] != CUTWATER_SERIES;
    const Cell& cell = cursor.grid.at(every ? 0 : cursor.row, column);
    if (cell.kind == Cell::Kind::number) sqlite3_result_double(to, cell.number);
    if (cell.kind == Cell::Kind::text)
        sqlite3_result_text64(to, cell.text.data(), cell.text.size(), SQLITE_TRANSIENT, SQLITE_UTF8);
}

/// In a subquery a bare name means the call's own input before the caller's column: no row would come, and no word why.
void put_not_given(const Cursor& cursor, std::size_t argument, sqlite3_context* to)
{
    const Callee& callee = cursor.callee();
    const std::string& name = callee.arguments[argument];
    const std::string text =
        callee.name + ": " + name +
        " was not given; a column of your table that is called so needs the table's name before it";
    sqlite3_result_error(to, text.c_str(), static_cast<int>(text.size()));
}

int column(sqlite3_vtab_cursor* given, sqlite3_context* to, int i) noexcept
{
    try {
        const auto& cursor = *static_cast<Cursor*>(given);
        const auto place = static_cast<std::size_t>(i);
        const std::size_t results = cursor.callee().results.size();
        if (place < results) {
            put_cell(cursor, place, to);
        } else if (place - results < cursor.arguments.size()) {
            if (const sqlite3_value* value = cursor.arguments[place - results].value)
                sqlite3_result_value(to, const_cast<sqlite3_value*>(value));
            else
                put_not_given(cursor, place - results, to);
        }
        return SQLITE_OK;
    } catch (const std::bad_alloc&) {
        return SQLITE_NOMEM;
    }
}

int rowid(sqlite3_vtab_cursor* cursor, sqlite3_int64* to) noexcept
{
    *to = static_cast<sqlite3_int64>(static_cast<Cursor*>(cursor)->row);
    return SQLITE_OK;
}

sqlite3_module module_of_calls()
{
    sqlite3_module module{};
    module.xConnect = connect;  // no xCreate: the tables are there by themselves and can only be called
    module.xBestIndex = best_index;
    module.xDisconnect = disconnect;
    module.xOpen = open;
    module.xClose = close;
    module.xFilter = filter;
    module.xNext = next;
    module.xEof = at_end;
    module.xColumn = column;
    module.xRowid = rowid;
    return module;
}

}  // namespace

int register_tables(sqlite3* db)
{
    static const sqlite3_module module = module_of_calls();
    for (const auto* list : {&callees(), &checked_callees()})
        for (const Callee& callee : *list) {
            const int code = sqlite3_create_module_v2(db, callee.name.c_str(), &module, const_cast<Callee*>(&callee),
                                                      nullptr);
            if (code != SQLITE_OK) return code;
        }
    return SQLITE_OK;
}

}  // namespace cutwater_door

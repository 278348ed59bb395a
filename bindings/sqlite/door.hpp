// The SQLite door: what each part registers with a connection. All answer SQLite's own codes.
#pragma once

#include <sqlite3ext.h>

namespace cutwater_door {

/// Functions and questions as SQL functions.
int register_scalars(sqlite3* db);
/// The same as table-valued calls, and NAME_checked, where a refusal stands beside NULL.
int register_tables(sqlite3* db);
/// series(value [, by]): rows as one JSON array.
int register_series(sqlite3* db);

/// What every call is but one without arguments, which tells of the library.
inline constexpr int pure = SQLITE_UTF8 | SQLITE_DETERMINISTIC | SQLITE_INNOCUOUS;

/// JSON's subtype, so that SQLite's JSON functions take a result for an array and not for a text.
inline constexpr unsigned json_subtype = 'J';
#ifdef SQLITE_RESULT_SUBTYPE
inline constexpr int gives_json = SQLITE_RESULT_SUBTYPE;
#else
inline constexpr int gives_json = 0;
#endif

}  // namespace cutwater_door

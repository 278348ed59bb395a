// The entry that SQLite calls when it loads the extension.
#include "door.hpp"

#include <exception>

SQLITE_EXTENSION_INIT1

extern "C" __attribute__((visibility("default"))) int sqlite3_cutwater_init(sqlite3* db, char** message,
                                                                            const sqlite3_api_routines* api)
{
    SQLITE_EXTENSION_INIT2(api);
    if (sqlite3_libversion_number() < 3031000) {
        *message = sqlite3_mprintf("cutwater needs SQLite 3.31 or later; this is %s", sqlite3_libversion());
        return SQLITE_ERROR;
    }
    try {
        int code = cutwater_door::register_scalars(db);
        if (code == SQLITE_OK) code = cutwater_door::register_tables(db);
        if (code == SQLITE_OK) code = cutwater_door::register_series(db);
        return code;
    } catch (const std::exception& error) {
        *message = sqlite3_mprintf("cutwater: %s", error.what());
        return SQLITE_ERROR;
    }
}

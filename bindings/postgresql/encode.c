#include "door.h"

#include "catalog/namespace.h"
#include "mb/pg_wchar.h"
#include "utils/builtins.h"


static char *plain_ascii(const char *utf8, size_t length)
{
    char *made = palloc(length + 1);
    size_t at = 0;
    for (size_t i = 0; i < length; ++i) {
        const unsigned char c = (unsigned char)utf8[i];
        if (c < 0x80)
            made[at++] = (char)c;
        else if (c >= 0xC0)
            made[at++] = '?';
    }
    made[at] = '\0';
    return made;
}

/* One character at a time where the whole does not go. */
static char *converted(Oid conversion, int encoding, const char *utf8, size_t length)
{
    char *made = palloc(length * MAX_CONVERSION_GROWTH + 1);
    size_t at = 0;
    for (size_t i = 0; i < length;) {
        const int wide = pg_encoding_mblen(PG_UTF8, utf8 + i);
        const size_t one = Min((size_t)wide, length - i);
        unsigned char to[MAX_CONVERSION_GROWTH * 4 + 1];
        const int read = pg_do_encoding_conversion_buf(conversion, PG_UTF8, encoding,
                                                       (unsigned char *)unconstify(char *, utf8 + i), (int)one, to,
                                                       sizeof to, true);
        if (read == (int)one) {
            const size_t written = strlen((char *)to);
            memcpy(made + at, to, written);
            at += written;
        } else {
            made[at++] = '?';
        }
        i += one;
    }
    made[at] = '\0';
    return made;
}

char *in_server_encoding(const char *utf8, size_t length)
{
    const int encoding = GetDatabaseEncoding();
    bool ascii = true;
    for (size_t i = 0; i < length && ascii; ++i) ascii = (unsigned char)utf8[i] < 0x80;
    if (ascii || encoding == PG_SQL_ASCII) return pnstrdup(utf8, length);
    if (!pg_verify_mbstr(PG_UTF8, utf8, (int)length, true)) return plain_ascii(utf8, length);
    if (encoding == PG_UTF8) return pnstrdup(utf8, length);
    const Oid conversion = FindDefaultConversionProc(PG_UTF8, encoding);
    if (!OidIsValid(conversion)) return plain_ascii(utf8, length);
    return converted(conversion, encoding, utf8, length);
}

Datum text_datum(const char *utf8, size_t length)
{
    return CStringGetTextDatum(in_server_encoding(utf8, length));
}

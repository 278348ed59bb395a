#include "door.h"

#include "lib/stringinfo.h"
#include "utils/float.h"

static void put_interval(StringInfo to, const cutwater_refusal *refusal)
{
    const bool from = !isinf(refusal->low);
    const bool up_to = !isinf(refusal->high);
    if (!from && !up_to) return;
    appendStringInfoString(to, "; permitted:");
    if (from) appendStringInfo(to, " %s %s", refusal->low_open ? "above" : "from", float8out_internal(refusal->low));
    if (up_to)
        appendStringInfo(to, " %s %s", refusal->high_open ? "below" : "up to", float8out_internal(refusal->high));
    if (refusal->unit[0]) appendStringInfo(to, " %s", refusal->unit);
}

static char *detail_of(const cutwater_refusal *refusal, const char *blamed)
{
    StringInfoData text;
    initStringInfo(&text);
    appendStringInfo(&text, "Argument: %s", blamed);
    if (refusal->element >= 0) appendStringInfo(&text, ", point " INT64_FORMAT, refusal->element + 1);
    if (!isnan(refusal->value)) {
        appendStringInfo(&text, "; value: %s", float8out_internal(refusal->value));
        if (refusal->unit[0]) appendStringInfo(&text, " %s", refusal->unit);
    }
    put_interval(&text, refusal);
    appendStringInfoChar(&text, '.');
    return in_server_encoding(text.data, (size_t)text.len);
}

void raise_refusal(const cutwater_refusal *refusal, const char *blamed)
{
    const int tens = refusal->status / 10 % 10;
    const int ones = refusal->status % 10;
    const int state = refusal->status == CUTWATER_OUT_OF_MEMORY
                          ? ERRCODE_OUT_OF_MEMORY
                          : MAKE_SQLSTATE('W', 'T', '0', '0' + tens, '0' + ones);
    const char *message = in_server_encoding(refusal->message, strlen(refusal->message));
    if (!blamed[0]) ereport(ERROR, errcode(state), errmsg_internal("%s", message));
    ereport(ERROR, errcode(state), errmsg_internal("%s", message),
            errdetail_internal("%s", detail_of(refusal, blamed)), err_generic_string(PG_DIAG_COLUMN_NAME, blamed));
    pg_unreachable();
}

#include "door.h"

#include "catalog/pg_type.h"
#include "mb/pg_wchar.h"
#include "utils/array.h"
#include "utils/builtins.h"
#include "utils/lsyscache.h"

static void other(Oid type, cw_given *given)
{
    const char *name = format_type_be(type);
    given->kind = CW_OTHER;
    given->text = psprintf("a value of type %s, neither a number nor a text", name);
}

static void number(double value, cw_given *given)
{
    given->kind = CW_NUMBER;
    given->number = value;
}

static void word(char *text, cw_given *given)
{
    given->kind = CW_TEXT;
    given->text = pg_server_to_any(text, (int)strlen(text), PG_UTF8);
}

static void many(Datum value, Oid element, cw_given *given)
{
    ArrayType *array = DatumGetArrayTypeP(value);
    const int count = ArrayGetNItems(ARR_NDIM(array), ARR_DIMS(array));
    given->kind = CW_MANY;
    if (count == 0) return;
    given->rows = ARR_NDIM(array) > 1 ? (size_t)ARR_DIMS(array)[0] : 1;
    given->columns = (size_t)count / given->rows;
    if (element == FLOAT8OID && !ARR_HASNULL(array)) {
        given->numbers = (const double *)ARR_DATA_PTR(array);
        return;
    }
    int16 width;
    bool by_value;
    char align;
    Datum *values;
    bool *nulls;
    int found;
    get_typlenbyvalalign(element, &width, &by_value, &align);
    deconstruct_array(array, element, width, by_value, align, &values, &nulls, &found);
    cw_given *cells = palloc0(sizeof *cells * (size_t)found);
    for (int i = 0; i < found; ++i)
        if (!nulls[i]) read_value(values[i], element, &cells[i]);
    given->cells = cells;
}

void read_value(Datum value, Oid type, cw_given *given)
{
    memset(given, 0, sizeof *given);
    const Oid base = getBaseType(type);
    switch (base) {
    case FLOAT8OID: number(DatumGetFloat8(value), given); return;
    case FLOAT4OID: number((double)DatumGetFloat4(value), given); return;
    case INT2OID: number(DatumGetInt16(value), given); return;
    case INT4OID: number(DatumGetInt32(value), given); return;
    case INT8OID: number((double)DatumGetInt64(value), given); return;
    /* What is too large becomes infinite, and is refused by name. */
    case NUMERICOID: number(DatumGetFloat8(DirectFunctionCall1(numeric_float8_no_overflow, value)), given); return;
    case TEXTOID:
    case VARCHAROID:
    case BPCHAROID: word(text_to_cstring(DatumGetTextPP(value)), given); return;
    case UNKNOWNOID: word(DatumGetCString(value), given); return;
    default: {
        const Oid element = get_element_type(base);
        if (OidIsValid(element))
            many(value, element, given);
        else
            other(type, given);
    }
    }
}

cw_given *read_spread(Datum value, Oid type, int *count)
{
    const Oid element = get_base_element_type(type);
    cw_given whole;
    if (!OidIsValid(element)) ereport(ERROR, errcode(ERRCODE_DATATYPE_MISMATCH), errmsg("VARIADIC takes an array"));
    read_value(value, type, &whole);
    *count = (int)(whole.rows * whole.columns);
    if (whole.cells) return unconstify(cw_given *, whole.cells);
    cw_given *cells = palloc0(sizeof *cells * (size_t)Max(*count, 1));
    for (int i = 0; i < *count; ++i) number(whole.numbers[i], &cells[i]);
    return cells;
}

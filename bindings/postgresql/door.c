/* The three entries that every declaration of the extension names. */
#include "door.h"

#include "access/htup_details.h"
#include "catalog/pg_type.h"
#include "funcapi.h"
#include "miscadmin.h"
#include "utils/array.h"
#include "utils/builtins.h"

#include <ctype.h>

PG_MODULE_MAGIC;

PG_FUNCTION_INFO_V1(cutwater_function);
PG_FUNCTION_INFO_V1(cutwater_checked);
PG_FUNCTION_INFO_V1(cutwater_question);
PG_FUNCTION_INFO_V1(cutwater_question_rows);

enum { most_columns = CUTWATER_MOST_RESULTS + 3 };

static Datum array_of(const double *numbers, size_t length)
{
    if (length == 0) return PointerGetDatum(construct_empty_array(FLOAT8OID));
    Datum *values = palloc(sizeof *values * length);
    for (size_t i = 0; i < length; ++i) values[i] = Float8GetDatum(numbers[i]);
    return PointerGetDatum(construct_array(values, (int)length, FLOAT8OID, sizeof(float8), FLOAT8PASSBYVAL,
                                           TYPALIGN_DOUBLE));
}

static Datum datum_of(const cw_cell *cell, bool *null)
{
    *null = cell->kind == CW_NOTHING;
    switch (cell->kind) {
    case CW_NUMBER: return Float8GetDatum(cell->number);
    case CW_TEXT: return text_datum(cell->text, cell->text_length);
    case CW_MANY: return array_of(cell->series, cell->length);
    default: return (Datum)0;
    }
}

/* ---- Functions ---- */

static Datum answered(FunctionCallInfo fcinfo, const Callee *callee, const cw_cell *cells)
{
    Datum values[most_columns];
    bool nulls[most_columns];
    if (!callee->row) return datum_of(cells, &fcinfo->isnull);
    for (int i = 0; i < callee->results; ++i) values[i] = datum_of(&cells[i], &nulls[i]);
    for (int i = callee->results; i < callee->row->natts; ++i) nulls[i] = true;
    return HeapTupleGetDatum(heap_form_tuple(callee->row, values, nulls));
}

static Datum refused(const Callee *callee, const cutwater_refusal *refusal, const char *blamed)
{
    Datum values[most_columns] = {0};
    bool nulls[most_columns];
    char status[64];
    const int results = callee->results;
    if (!callee->checked || refusal->status == CUTWATER_OUT_OF_MEMORY) raise_refusal(refusal, blamed);
    strlcpy(status, cutwater_status_name(refusal->status), sizeof status);
    for (char *c = status; *c; ++c) *c = (char)tolower((unsigned char)*c);
    for (int i = 0; i < results; ++i) nulls[i] = true;
    nulls[results] = nulls[results + 1] = false;
    nulls[results + 2] = !blamed[0];
    values[results] = text_datum(refusal->message, strlen(refusal->message));
    values[results + 1] = CStringGetTextDatum(status);
    if (blamed[0]) values[results + 2] = CStringGetTextDatum(blamed);
    return HeapTupleGetDatum(heap_form_tuple(callee->row, values, nulls));
}

/* What needs nothing of C++: numbers, texts, plain series, and no series among the results. */
static bool read_plain(FunctionCallInfo fcinfo, const Callee *callee, cutwater_value *values)
{
    if (callee->series_result) return false;
    memset(values, 0, sizeof *values * (size_t)callee->inputs);
    for (int i = 0; i < callee->inputs; ++i) {
        cutwater_value *value = &values[i];
        cw_given given;
        if (PG_ARGISNULL(i)) continue;
        if (callee->types[i] == FLOAT8OID && callee->kinds[i] == CUTWATER_NUMBER) {
            value->kind = CUTWATER_NUMBER;
            value->number = PG_GETARG_FLOAT8(i);
            continue;
        }
        read_value(PG_GETARG_DATUM(i), callee->types[i], &given);
        if (callee->kinds[i] == CUTWATER_SERIES) {
            if (!given.numbers || given.rows != 1) return false;
            *value = (cutwater_value){CUTWATER_SERIES, 0, NULL, given.numbers, given.columns, 1};
        } else if (given.kind == CW_NUMBER) {
            value->kind = CUTWATER_NUMBER;
            value->number = given.number;
        } else if (given.kind == CW_TEXT && given.text[0]) {
            value->kind = CUTWATER_TEXT;
            value->text = given.text;
        } else {
            return false;
        }
    }
    return true;
}

static cw_cell cell_of(const cutwater_result *result)
{
    if (result->kind == CUTWATER_NUMBER) return (cw_cell){.kind = CW_NUMBER, .number = result->number};
    return (cw_cell){.kind = CW_TEXT, .text = result->text, .text_length = strlen(result->text)};
}

static Datum plain_call(FunctionCallInfo fcinfo, const Callee *callee, const cutwater_value *values)
{
    cutwater_result results[CUTWATER_MOST_RESULTS];
    cw_cell cells[CUTWATER_MOST_RESULTS];
    cutwater_refusal refusal;
    if (cutwater_call_at(callee->position, values, (size_t)callee->inputs, results, (size_t)callee->results,
                         &refusal) != CUTWATER_OK)
        return refused(callee, &refusal, refusal.name);
    if (!callee->row && results[0].kind == CUTWATER_NUMBER) PG_RETURN_FLOAT8(results[0].number);
    for (int i = 0; i < callee->results; ++i) cells[i] = cell_of(&results[i]);
    return answered(fcinfo, callee, cells);
}

static Datum call_over_bridge(FunctionCallInfo fcinfo, const Callee *callee)
{
    cw_given given[CUTWATER_MOST_INPUTS];
    cw_answer answer;
    volatile Datum made = (Datum)0;
    memset(given, 0, sizeof given);
    for (int i = 0; i < callee->inputs; ++i)
        if (!PG_ARGISNULL(i)) read_value(PG_GETARG_DATUM(i), callee->types[i], &given[i]);
    if (cw_function(callee->position, given, (size_t)callee->inputs, &answer) != CUTWATER_OK)
        return refused(callee, &answer.refusal, answer.blamed);
    PG_TRY();
    {
        made = answered(fcinfo, callee, answer.cells);
    }
    PG_FINALLY();
    {
        cw_release(&answer);
    }
    PG_END_TRY();
    return made;
}

static Datum call_function(FunctionCallInfo fcinfo, bool checked)
{
    const Callee *callee = callee_of_function(fcinfo, checked);
    cutwater_value values[CUTWATER_MOST_INPUTS];
    if (!checked)
        for (int i = 0; i < callee->inputs; ++i)
            if (PG_ARGISNULL(i) && !callee->optional[i]) PG_RETURN_NULL();
    if (read_plain(fcinfo, callee, values)) return plain_call(fcinfo, callee, values);
    return call_over_bridge(fcinfo, callee);
}

Datum cutwater_function(PG_FUNCTION_ARGS) { return call_function(fcinfo, false); }

Datum cutwater_checked(PG_FUNCTION_ARGS) { return call_function(fcinfo, true); }

/* ---- Questions ---- */

static cw_given *read_all(FunctionCallInfo fcinfo, const Callee *callee, int *count)
{
    const int own = callee->given - (callee->spread ? 1 : 0);
    int more = 0;
    cw_given *rest = NULL;
    if (callee->spread && !PG_ARGISNULL(own)) rest = read_spread(PG_GETARG_DATUM(own), callee->types[own], &more);
    cw_given *given = palloc0(sizeof *given * (size_t)(own + more + 1));
    for (int i = 0; i < own; ++i)
        if (!PG_ARGISNULL(i)) read_value(PG_GETARG_DATUM(i), callee->types[i], &given[i]);
    if (more) memcpy(given + own, rest, sizeof *given * (size_t)more);
    *count = own + more;
    return given;
}

/* False where NULL stands for what the answer needs. */
static bool ask(FunctionCallInfo fcinfo, const Callee *callee, cw_answer *answer)
{
    int count;
    bool null = false;
    for (int i = 0; i < callee->inputs; ++i)
        if (PG_ARGISNULL(i) && !callee->optional[i]) return false;
    const cw_given *given = read_all(fcinfo, callee, &count);
    for (int i = 0; i < count; ++i) null = null || given[i].kind == CW_NOTHING;
    CHECK_FOR_INTERRUPTS();
    const cutwater_status status = cw_question(callee->position, given, (size_t)count, answer);
    if (status == CUTWATER_OK) return true;
    if (status == CUTWATER_MISSING && null) return false;
    raise_refusal(&answer->refusal, answer->blamed);
}

static Datum one_answer(FunctionCallInfo fcinfo, const Callee *callee, const cw_answer *answer)
{
    if (callee->layout != CUTWATER_COLUMN) return answered(fcinfo, callee, answer->cells);
    double *numbers = palloc(sizeof *numbers * Max(answer->rows, 1));
    for (size_t i = 0; i < answer->rows; ++i) numbers[i] = answer->cells[i].number;
    return array_of(numbers, answer->rows);
}

Datum cutwater_question(PG_FUNCTION_ARGS)
{
    const Callee *callee = callee_of_question(fcinfo);
    cw_answer answer;
    volatile Datum made = (Datum)0;
    if (!ask(fcinfo, callee, &answer)) PG_RETURN_NULL();
    PG_TRY();
    {
        made = one_answer(fcinfo, callee, &answer);
    }
    PG_FINALLY();
    {
        cw_release(&answer);
    }
    PG_END_TRY();
    return made;
}

Datum cutwater_question_rows(PG_FUNCTION_ARGS)
{
    const Callee *callee = callee_of_question(fcinfo);
    ReturnSetInfo *set = (ReturnSetInfo *)fcinfo->resultinfo;
    cw_answer answer;
    InitMaterializedSRF(fcinfo, 0);
    if (!ask(fcinfo, callee, &answer)) return (Datum)0;
    PG_TRY();
    {
        for (size_t r = 0; r < answer.rows; ++r) {
            Datum values[most_columns];
            bool nulls[most_columns];
            for (size_t c = 0; c < answer.columns && c < most_columns; ++c)
                values[c] = datum_of(&answer.cells[r * answer.columns + c], &nulls[c]);
            tuplestore_putvalues(set->setResult, set->setDesc, values, nulls);
        }
    }
    PG_FINALLY();
    {
        cw_release(&answer);
    }
    PG_END_TRY();
    return (Datum)0;
}

/* Which function or question a declaration stands for: the one of its name, looked up once for a plan. */
#include "door.h"

#include "catalog/pg_type.h"
#include "funcapi.h"
#include "utils/array.h"
#include "utils/builtins.h"
#include "utils/lsyscache.h"

static void other_version(const char *name)
{
    ereport(ERROR, errcode(ERRCODE_UNDEFINED_FUNCTION),
            errmsg("%s is declared otherwise than the cutwater library of this server has it", name),
            errhint("ALTER EXTENSION cutwater UPDATE TO 'any'; ALTER EXTENSION cutwater UPDATE;"));
}

static void learn_types(FunctionCallInfo call, Callee *callee)
{
    FmgrInfo *info = call->flinfo;
    Oid *declared;
    int count;
    get_func_signature(info->fn_oid, &declared, &count);
    callee->given = call->nargs;
    callee->spread = get_fn_expr_variadic(info);
    callee->types = MemoryContextAllocZero(info->fn_mcxt, sizeof(Oid) * (size_t)Max(call->nargs, 1));
    for (int i = 0; i < call->nargs; ++i) {
        Oid type = i < count ? declared[i] : ANYOID;
        if (type == ANYOID) type = get_fn_expr_argtype(info, i);
        if (!OidIsValid(type))
            ereport(ERROR, errcode(ERRCODE_INDETERMINATE_DATATYPE),
                    errmsg("could not determine the type of argument %d", i + 1));
        callee->types[i] = type;
    }
}

static void learn_result(FunctionCallInfo call, Callee *callee)
{
    TupleDesc row = NULL;
    Oid type = InvalidOid;
    const TypeFuncClass sort = get_call_result_type(call, &type, &row);
    callee->result = type;
    if (sort != TYPEFUNC_COMPOSITE) return;
    MemoryContext before = MemoryContextSwitchTo(call->flinfo->fn_mcxt);
    callee->row = BlessTupleDesc(CreateTupleDescCopy(row));
    MemoryContextSwitchTo(before);
}

static bool result_is(const Callee *callee, int i, Oid type)
{
    return callee->row ? i < callee->row->natts && TupleDescAttr(callee->row, i)->atttypid == type
                       : i == 0 && callee->result == type;
}

static Oid type_of(int32 kind)
{
    return kind == CUTWATER_NUMBER ? FLOAT8OID : kind == CUTWATER_TEXT ? TEXTOID : FLOAT8ARRAYOID;
}

static Callee *begin(FunctionCallInfo call, char **name)
{
    Callee *callee = MemoryContextAllocZero(call->flinfo->fn_mcxt, sizeof *callee);
    *name = get_func_name(call->flinfo->fn_oid);
    if (!*name) elog(ERROR, "cutwater: a function that is not there is called");
    learn_types(call, callee);
    learn_result(call, callee);
    return callee;
}

Callee *callee_of_function(FunctionCallInfo call, bool checked)
{
    if (call->flinfo->fn_extra) return call->flinfo->fn_extra;
    char *name;
    Callee *callee = begin(call, &name);
    const size_t end = strlen("_checked");
    const size_t length = strlen(name);
    if (checked && length > end) name[length - end] = '\0';
    callee->checked = checked;
    callee->position = cutwater_find(name);
    if (callee->position < 0) other_version(name);
    callee->inputs = cutwater_input_count(callee->position);
    callee->results = cutwater_result_count(callee->position);
    const int columns = callee->results + (checked ? 3 : 0);
    if (callee->inputs != callee->given || callee->inputs > CUTWATER_MOST_INPUTS ||
        callee->results > CUTWATER_MOST_RESULTS || (callee->row ? callee->row->natts : 1) != columns)
        other_version(name);
    for (int i = 0; i < callee->inputs; ++i) {
        callee->kinds[i] = cutwater_input_kind(callee->position, i);
        callee->optional[i] = cutwater_input_optional(callee->position, i) != 0;
    }
    for (int i = 0; i < columns; ++i) {
        const int32 kind = i < callee->results ? cutwater_result_kind(callee->position, i) : CUTWATER_TEXT;
        if (!result_is(callee, i, type_of(kind))) other_version(name);
        callee->series_result = callee->series_result || kind == CUTWATER_SERIES;
    }
    call->flinfo->fn_extra = callee;
    return callee;
}

Callee *callee_of_question(FunctionCallInfo call)
{
    if (call->flinfo->fn_extra) return call->flinfo->fn_extra;
    char *name;
    Callee *callee = begin(call, &name);
    cutwater_question_info info = {.size = sizeof info};
    cutwater_question_part part = {.size = sizeof part};
    callee->position = cw_question_named(name);
    if (callee->position < 0 || cutwater_describe_question(callee->position, &info) != CUTWATER_OK)
        other_version(name);
    if (info.arguments > CUTWATER_MOST_INPUTS) other_version(name);
    callee->layout = info.layout;
    callee->results = info.results;
    for (int i = 0; i < info.arguments; ++i) {
        cutwater_describe_question_argument(callee->position, i, &part);
        if (part.asked == CUTWATER_ASKED_ARGUMENTS) continue;
        callee->optional[callee->inputs++] = part.optional != 0;
    }
    const bool column = info.layout == CUTWATER_COLUMN;
    const bool alone = column || info.layout == CUTWATER_ONE;
    if (callee->given < callee->inputs || (callee->row != NULL) == alone ||
        (callee->row ? callee->row->natts : 1) != info.results)
        other_version(name);
    for (int i = 0; i < info.results; ++i) {
        cutwater_describe_question_result(callee->position, i, &part);
        if (!result_is(callee, i, part.word ? TEXTOID : column ? FLOAT8ARRAYOID : FLOAT8OID)) other_version(name);
    }
    call->flinfo->fn_extra = callee;
    return callee;
}

/* The PostgreSQL side, in C: what may leave by longjmp holds no C++ object. Memory is the call's own context's. */
#ifndef CUTWATER_POSTGRESQL_DOOR_H
#define CUTWATER_POSTGRESQL_DOOR_H

#include "postgres.h"

#include "access/tupdesc.h"
#include "fmgr.h"

#include "bridge.h"

/* What a declared function calls, kept as long as the plan that calls it. */
typedef struct Callee {
    int32 position; /* of a function or a question */
    bool checked;
    bool series_result;
    int inputs; /* of a question: its own arguments, without the rest */
    int results;
    bool optional[CUTWATER_MOST_INPUTS];
    int32 kinds[CUTWATER_MOST_INPUTS]; /* of a function's inputs */
    int32 layout;                      /* of a question's results */
    int given;                         /* how many arguments the call has */
    bool spread;                       /* the last of them is an array of the rest */
    Oid *types;                        /* of the arguments */
    TupleDesc row;                     /* null where one value is the result */
    Oid result;
} Callee;

Callee *callee_of_function(FunctionCallInfo call, bool checked);
Callee *callee_of_question(FunctionCallInfo call);

/* Any value of PostgreSQL's as what goes over the bridge; detoasted and converted in the current context. */
void read_value(Datum value, Oid type, cw_given *given);
/* The elements of an array as arguments of their own. */
cw_given *read_spread(Datum value, Oid type, int *count);

/* UTF-8 in the database's encoding; what has no place there becomes '?', so that a refusal is never lost. */
char *in_server_encoding(const char *utf8, size_t length);
Datum text_datum(const char *utf8, size_t length);

/* Raises: SQLSTATE WT0nn, nn the status; the sentence; argument, value and interval in the detail. */
void raise_refusal(const cutwater_refusal *refusal, const char *blamed) pg_attribute_noreturn();

#endif

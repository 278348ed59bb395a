/* Between PostgreSQL, which leaves a call by longjmp, and C++, which must not be left so. On this side stand plain C
   structures and calls that never throw; no call of PostgreSQL's is made behind it. */
#ifndef CUTWATER_POSTGRESQL_BRIDGE_H
#define CUTWATER_POSTGRESQL_BRIDGE_H

#include <cutwater/library.h>

#ifdef __cplusplus
extern "C" {
#endif

typedef enum cw_kind { CW_NOTHING, CW_NUMBER, CW_TEXT, CW_MANY, CW_OTHER } cw_kind;

typedef struct cw_given {
    cw_kind kind;
    double number;
    const char *text;             /* UTF-8; of CW_OTHER: what it is */
    const double *numbers;        /* of CW_MANY: plain numbers, */
    const struct cw_given *cells; /* or anything, row by row */
    size_t rows, columns;
} cw_given;

typedef struct cw_cell {
    cw_kind kind; /* CW_NOTHING: a gap */
    double number;
    const char *text;
    size_t text_length;
    const double *series; /* of CW_MANY */
    size_t length;
} cw_cell;

/* What a call came to. Lives until cw_release, which takes null owners too. */
typedef struct cw_answer {
    void *owner;
    size_t rows, columns;
    const cw_cell *cells; /* row by row; of a function one row, a cell a result */
    cutwater_refusal refusal;
    char blamed[48]; /* the argument's name; "" for none */
} cw_answer;

cutwater_status cw_function(int32_t function, const cw_given *given, size_t count, cw_answer *answer);
cutwater_status cw_question(int32_t question, const cw_given *given, size_t count, cw_answer *answer);
void cw_release(cw_answer *answer);

/* -1 when there is none. */
int32_t cw_question_named(const char *name);

#ifdef __cplusplus
}
#endif

#endif

/* Types that every call of the flat C API shares. Part of the interface: see "Interface version" in DEVELOPERS.md. */
#ifndef CUTWATER_BASE_H
#define CUTWATER_BASE_H

#include <stddef.h>
#include <stdint.h>

#if defined(_WIN32)
#if defined(CUTWATER_BUILDING)
#define CUTWATER_API __declspec(dllexport)
#else
#define CUTWATER_API __declspec(dllimport)
#endif
#else
#define CUTWATER_API __attribute__((visibility("default")))
#endif

/* Raised when a change could break a caller that was compiled against an older header. */
#define CUTWATER_INTERFACE 2

#include <cutwater/status.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Room that a caller may count on: no function has more. */
enum { CUTWATER_MOST_INPUTS = 32, CUTWATER_MOST_RESULTS = 16 };

/* A refusal, complete in the call that made it. Owned by the caller; every call accepts a null pointer instead. */
typedef struct cutwater_refusal {
    int32_t status;   /* a cutwater_status */
    int32_t argument; /* position of the input to blame, from 0; -1 for none */
    int64_t element;  /* position in a series, or row of an array call, from 0; -1 for none */
    double value;     /* the value given, in the argument's unit; NaN for none */
    double low;       /* permitted interval in the same unit; infinite where it has no end */
    double high;
    int32_t low_open; /* 1: the end itself is not permitted */
    int32_t high_open;
    char name[48];     /* the argument's name */
    char unit[32];     /* the unit of value, low and high */
    char message[512]; /* a sentence to act on, UTF-8 */
} cutwater_refusal;

/* What a cutwater_value or cutwater_result holds. */
typedef enum cutwater_kind {
    CUTWATER_LEFT_OUT = 0, /* an optional input that was not given */
    CUTWATER_NUMBER = 1,
    CUTWATER_TEXT = 2, /* a quantity with its unit, or a choice's word */
    CUTWATER_SERIES = 3
} cutwater_kind;

/* The number that leaves out an optional input of a direct function: give this, and the record's default stands. It is
   a NaN of one bit pattern; any other NaN is refused. An optional choice is left out by a null pointer. */
CUTWATER_API double cutwater_left_out(void);

/* An input of a by-name call. Nothing in it is kept after the call. */
typedef struct cutwater_value {
    int32_t kind; /* a cutwater_kind */
    double number;
    const char *text; /* UTF-8, ended by 0 */
    const double *series;
    size_t length;
    ptrdiff_t stride; /* in elements; 1 for a plain array */
} cutwater_value;

/* A result of a by-name call. For a series the caller sets series and capacity; length tells how many there are. */
typedef struct cutwater_result {
    int32_t kind; /* set by the call */
    double number;
    const char *text; /* a word; lives as long as the library */
    double *series;
    size_t capacity;
    size_t length;
} cutwater_result;

/* A column of an array call: stride in elements, 0 to use one number for every row. data may be null to leave out an
   input that has a default. A result may be stored in exactly the column of an input (the same data and the same
   stride); otherwise its column must share no memory with an input, a series, another result or its own other rows,
   else the call is refused. */
typedef struct cutwater_column {
    const double *data;
    ptrdiff_t stride;
} cutwater_column;

typedef struct cutwater_result_column {
    double *data;
    ptrdiff_t stride;
} cutwater_result_column;

/* What to do with the rows of an array call, and what became of them. Set it to zero before the first use.
   A call that is refused as a whole (a word that is not known, a column that is missing or overlaps) computes no row:
   all rows count as refused, their bits are set, their results are NaN and first.element is -1. */
typedef struct cutwater_rows_report {
    uint8_t *bitmap;        /* given: null, or room for one bit a row; lowest first, set where a row was refused */
    int32_t threads;        /* given: 0 or 1 for the calling thread alone, -1 for as many as there are processors */
    size_t refused;         /* returned */
    cutwater_refusal first; /* returned: the first refused row's refusal */
} cutwater_rows_report;

#ifdef __cplusplus
}
#endif

#endif

/* Calls that are not one formula: by name, reading texts, conversion, the catalogue itself. */
#ifndef CUTWATER_LIBRARY_H
#define CUTWATER_LIBRARY_H

#include <cutwater/answers.h>
#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Version of the library, as "1.2.3", and of its interface (CUTWATER_INTERFACE of the header it was built with). */
CUTWATER_API const char *cutwater_version(void);
CUTWATER_API int32_t cutwater_interface(void);

/* Computes every worked example of the catalogue; the first that does not come out is told in refusal. */
CUTWATER_API cutwater_status cutwater_self_test(cutwater_refusal *refusal);

/* The whole catalogue as JSON, UTF-8. Lives as long as the library. */
CUTWATER_API const char *cutwater_catalogue_json(void);

/* ---- What there is ---- */

/* A status as its name without the lead ("OUT_OF_INTERVAL") and in words; "" for a number that is none. */
CUTWATER_API const char *cutwater_status_name(int32_t status);
CUTWATER_API const char *cutwater_status_meaning(int32_t status);

/* Functions are numbered from 0 to cutwater_function_count() - 1; numbers may differ from version to version, names do
   not. cutwater_find answers -1 for a name that is not there. Positions out of range answer 0, -1 or "". All texts are
   UTF-8 and live as long as the library. */
CUTWATER_API int32_t cutwater_function_count(void);
CUTWATER_API int32_t cutwater_find(const char *function);
CUTWATER_API const char *cutwater_function_name(int32_t function);
CUTWATER_API int32_t cutwater_input_count(int32_t function);
CUTWATER_API int32_t cutwater_result_count(int32_t function);
CUTWATER_API const char *cutwater_input_name(int32_t function, int32_t input);
CUTWATER_API const char *cutwater_result_name(int32_t function, int32_t result);
/* CUTWATER_NUMBER, CUTWATER_TEXT (a word of a closed list) or CUTWATER_SERIES. */
CUTWATER_API int32_t cutwater_input_kind(int32_t function, int32_t input);
CUTWATER_API int32_t cutwater_result_kind(int32_t function, int32_t result);
/* 1 for an input that may be left out. */
CUTWATER_API int32_t cutwater_input_optional(int32_t function, int32_t input);
/* The words that a choice or a word result may take, by position; "" past the last. */
CUTWATER_API const char *cutwater_input_word(int32_t function, int32_t input, int32_t word);
CUTWATER_API const char *cutwater_result_word(int32_t function, int32_t result, int32_t word);
/* The unit of a number, as a text; "" for a word or a number without unit. */
CUTWATER_API const char *cutwater_input_unit(int32_t function, int32_t input);
CUTWATER_API const char *cutwater_result_unit(int32_t function, int32_t result);

/* Everything that a record says. Set size to sizeof of the structure; a smaller one of an older caller is filled as far
   as it goes. The calls answer CUTWATER_WRONG_COUNT for a position that is not there. */
typedef struct cutwater_function_info {
    size_t size;
    const char *name;
    const char *type_name; /* of the several results together, where a language has types: "NpshAvailable" */
    const char *family;    /* its name, and its title for people */
    const char *family_title;
    const char *meaning;
    const char *also; /* the trade's other words for it, parted by '|' */
    const char *equation;
    const char *source;
    const char *example_inputs; /* an argument list: 1.5, "72 %", [1, 2, 3], default */
    const char *example_results;
    const char *example_source;
    int32_t inputs;
    int32_t results;
    int32_t relations;
    int32_t cautions;
    int32_t has_rows; /* 1: it has an array form */
} cutwater_function_info;

typedef struct cutwater_input_info {
    size_t size;
    const char *name;       /* ends in its unit; the name at every door */
    const char *short_name; /* without the unit */
    const char *symbol;
    const char *meaning;
    const char *quantity; /* "" for a choice */
    const char *unit;     /* "" for a choice or a number without unit */
    int32_t kind;         /* as cutwater_input_kind */
    int32_t optional;
    int32_t whole;       /* a whole number */
    int32_t rising;      /* of a series: from point to point */
    size_t least_points; /* of a series */
    double low;          /* of every point, for a series; infinite where it has no end */
    double high;
    int32_t low_open; /* 1: the end itself is not permitted */
    int32_t high_open;
    double fallback;           /* what stands for it when it is left out; NaN where it may not be, and for a choice */
    const char *fallback_word; /* the same for a choice; "" */
    int32_t words;             /* of a choice */
    const char *takes;         /* in words: "a number in m3/h, or a text with its unit" */
    const char *permitted;     /* in words: "from 0 to below 1 bar; 0.5 if left out" */
} cutwater_input_info;

typedef struct cutwater_result_info {
    size_t size;
    const char *name;
    const char *short_name;
    const char *symbol;
    const char *meaning;
    const char *quantity;
    const char *unit;
    int32_t kind;
    int32_t words;
    double scatter;          /* 95 of 100 cases lie within plus or minus so much, by the literature; 0: not stated */
    int32_t scatter_in_unit; /* 1: scatter is in the result's unit; 0: a part of the result */
} cutwater_result_info;

CUTWATER_API cutwater_status cutwater_describe_function(int32_t function, cutwater_function_info *info);
CUTWATER_API cutwater_status cutwater_describe_input(int32_t function, int32_t input, cutwater_input_info *info);
CUTWATER_API cutwater_status cutwater_describe_result(int32_t function, int32_t result, cutwater_result_info *info);
/* A condition between inputs as a sentence; "" past the last. Its inputs by place, the one to blame first; -1 past the
   last. */
CUTWATER_API const char *cutwater_relation(int32_t function, int32_t relation);
CUTWATER_API int32_t cutwater_relation_input(int32_t function, int32_t relation, int32_t place);
/* A caution; "" past the last. */
CUTWATER_API const char *cutwater_caution(int32_t function, int32_t caution);

/* Functions that words of the trade point to ("suction safe", "NPSHR"), best first. count tells how many were found; at
   most capacity are stored. Words that point to none are no refusal: count is 0. */
CUTWATER_API cutwater_status cutwater_find_function(const char *words, int32_t *functions, size_t capacity,
                                                    size_t *count, cutwater_refusal *refusal);

/* ---- The calls that are not one formula ---- */

/* What an argument of a question is, and how its results lie where there are cells. */
typedef enum cutwater_asked {
    CUTWATER_ASKED_NUMBER = 0,
    CUTWATER_ASKED_TEXT = 1,
    CUTWATER_ASKED_UNIT = 2,
    CUTWATER_ASKED_VALUE = 3,         /* a number, or a text with a unit */
    CUTWATER_ASKED_FUNCTION = 4,      /* a function's name */
    CUTWATER_ASKED_INPUT = 5,         /* an input's name */
    CUTWATER_ASKED_RESULT = 6,        /* a result's name */
    CUTWATER_ASKED_UNCERTAINTIES = 7, /* one an argument of the function */
    CUTWATER_ASKED_ARGUMENTS = 8      /* the rest: the function's own arguments */
} cutwater_asked;

typedef enum cutwater_layout {
    CUTWATER_ONE = 0,
    CUTWATER_ROW = 1,
    CUTWATER_COLUMN = 2,
    CUTWATER_TABLE = 3
} cutwater_layout;

typedef struct cutwater_question_info {
    size_t size;
    const char *name;   /* at every door; in capitals in a cell */
    const char *c_name; /* of the C function that answers it */
    const char *meaning;
    const char *example; /* as in a cell; "" for none */
    int32_t arguments;
    int32_t results;
    int32_t layout; /* a cutwater_layout */
} cutwater_question_info;

typedef struct cutwater_question_part {
    size_t size;
    const char *name;
    const char *meaning;
    int32_t asked;    /* of an argument: a cutwater_asked */
    int32_t optional; /* of an argument */
    int32_t word;     /* of a result: 1 for a text */
} cutwater_question_part;

/* Questions are numbered from 0 to cutwater_question_count() - 1. */
CUTWATER_API int32_t cutwater_question_count(void);
CUTWATER_API cutwater_status cutwater_describe_question(int32_t question, cutwater_question_info *info);
CUTWATER_API cutwater_status cutwater_describe_question_argument(int32_t question, int32_t argument,
                                                                 cutwater_question_part *part);
CUTWATER_API cutwater_status cutwater_describe_question_result(int32_t question, int32_t result,
                                                               cutwater_question_part *part);

/* ---- Calls by name, texts, units ---- */

/* Calls a function by its name, with numbers in the record's units, texts with units, words, and series. */
CUTWATER_API cutwater_status cutwater_call(const char *function, const cutwater_value *inputs, size_t input_count,
                                           cutwater_result *results, size_t result_count, cutwater_refusal *refusal);
/* The same by number. */
CUTWATER_API cutwater_status cutwater_call_at(int32_t function, const cutwater_value *inputs, size_t input_count,
                                              cutwater_result *results, size_t result_count, cutwater_refusal *refusal);

/* The array form by number. Quantities come from columns; words and series, the same for every row, come from shared.
   Both have one entry an input (columns is ignored for words and series, shared for quantities); shared may be null
   when the function has neither. Results that are words are stored as their position (cutwater_result_word). */
CUTWATER_API cutwater_status cutwater_rows_at(int32_t function, size_t rows, const cutwater_column *columns,
                                              const cutwater_value *shared, const cutwater_result_column *results,
                                              cutwater_rows_report *report);

/* Reads a text as one number of an input, in that input's unit; for a series, as one of its elements. */
CUTWATER_API cutwater_status cutwater_read(int32_t function, int32_t input, const char *text, double *number,
                                           cutwater_refusal *refusal);

/* A value as a number in a unit: a text brings its own ("440 US gpm"), a bare number has that unit already, and of it
   only the unit is in question. "-" is the unit of a plain number. */
CUTWATER_API cutwater_status cutwater_quantity(const cutwater_value *value, const char *unit, double *number,
                                               cutwater_refusal *refusal);

/* Converts between two units of the same quantity. */
CUTWATER_API cutwater_status cutwater_convert_unit(double value, const char *from, const char *to, double *result,
                                                   cutwater_refusal *refusal);

#ifdef __cplusplus
}
#endif

#endif

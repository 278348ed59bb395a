/* Calls that are not one formula: by name, reading texts, conversion, the catalogue itself. */
#ifndef CUTWATER_LIBRARY_H
#define CUTWATER_LIBRARY_H

#include <cutwater/answers.h>
#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/* Version of the library, as "1.2.3", and of its interface (CUTWATER_INTERFACE of the header that it was built with). */
CUTWATER_API const char *cutwater_version(void);
CUTWATER_API int32_t cutwater_interface(void);

/* Computes every worked example of the catalogue; the first that does not come out is told in refusal. */
CUTWATER_API cutwater_status cutwater_self_test(cutwater_refusal *refusal);

/* The whole catalogue as JSON, UTF-8. Lives as long as the library. */
CUTWATER_API const char *cutwater_catalogue_json(void);

/* Functions are numbered from 0 to cutwater_function_count() - 1; numbers may differ from version to version, names do not.
   cutwater_find answers -1 for a name that is not there. Positions out of range answer 0, -1 or "". */
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

/* Calls a function by its name, with numbers in the record's units, texts with units, words, and series. */
CUTWATER_API cutwater_status cutwater_call(const char *function, const cutwater_value *inputs, size_t input_count,
                                           cutwater_result *results, size_t result_count, cutwater_refusal *refusal);
/* The same by number. */
CUTWATER_API cutwater_status cutwater_call_at(int32_t function, const cutwater_value *inputs, size_t input_count,
                                              cutwater_result *results, size_t result_count, cutwater_refusal *refusal);

/* The array form by number. Quantities come from columns; words and series, the same for every row, come from shared.
   Both have one entry an input (columns is ignored for words and series, shared for quantities); shared may be null when
   the function has neither. Results that are words are stored as their position (cutwater_result_word). */
CUTWATER_API cutwater_status cutwater_rows_at(int32_t function, size_t rows, const cutwater_column *columns,
                                              const cutwater_value *shared, const cutwater_result_column *results,
                                              cutwater_rows_report *report);

/* Reads a text as one number of an input, in that input's unit; for a series, as one of its elements. */
CUTWATER_API cutwater_status cutwater_read(int32_t function, int32_t input, const char *text, double *number,
                                           cutwater_refusal *refusal);

/* Reads a text with a unit ("440 US gpm") as a number in another unit of the same quantity ("m3/h"); a bare number has that unit. */
CUTWATER_API cutwater_status cutwater_quantity(const char *text, const char *unit, double *number, cutwater_refusal *refusal);

/* Converts between two units of the same quantity. */
CUTWATER_API cutwater_status cutwater_convert(double value, const char *from, const char *to, double *result,
                                              cutwater_refusal *refusal);

#ifdef __cplusplus
}
#endif

#endif

/* generated from the catalogue by cutwater-generate; do not edit. */
#ifndef CUTWATER_STATUS_H
#define CUTWATER_STATUS_H

/* What a call came to. Every call returns one of these. */
typedef enum cutwater_status
{
    CUTWATER_OK = 0,  /* answered */
    CUTWATER_NOT_FINITE = 1,  /* an input is NaN or infinite */
    CUTWATER_OUT_OF_INTERVAL = 2,  /* an input lies outside its permitted interval */
    CUTWATER_CONTRADICTION = 3,  /* inputs do not go together */
    CUTWATER_NO_ANSWER = 4,  /* the question has no answer, or it was not found */
    CUTWATER_SEVERAL_ANSWERS = 5,  /* the question has more than one answer */
    CUTWATER_BAD_TEXT = 6,  /* a text that is not a number with a unit */
    CUTWATER_WRONG_QUANTITY = 7,  /* a unit of another quantity */
    CUTWATER_UNKNOWN_UNIT = 8,  /* a unit that is in no table */
    CUTWATER_UNKNOWN_WORD = 9,  /* a word that is not among the choices */
    CUTWATER_MISSING = 10,  /* an input that has no default was left out, or a pointer is null */
    CUTWATER_WRONG_KIND = 11,  /* a series for a number, a number for a series, a truth value */
    CUTWATER_BAD_SERIES = 12,  /* a series too short, not rising, or with an empty point */
    CUTWATER_BUFFER_TOO_SMALL = 13,  /* the caller's buffer; the length needed was stored */
    CUTWATER_OVERFLOW = 14,  /* the result is not a finite number */
    CUTWATER_UNKNOWN_FUNCTION = 15,  /* there is no function or question of that name */
    CUTWATER_WRONG_COUNT = 16,  /* too many or too few arguments */
    CUTWATER_OUT_OF_MEMORY = 17,  /* memory ran out */
    CUTWATER_INTERNAL = 18  /* the library failed inside; please report the call */
} cutwater_status;

#endif

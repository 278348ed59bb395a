/* What every function answers besides its value: its working, itself solved backwards, its uncertainty, its
   sensitivity. All go by the function's name and take the same inputs as cutwater_call. They may allocate; they never
   throw. */
#ifndef CUTWATER_ANSWERS_H
#define CUTWATER_ANSWERS_H

#include <cutwater/base.h>

#ifdef __cplusplus
extern "C" {
#endif

/* ---- The working shown ---- */

typedef enum cutwater_form {
    CUTWATER_TEXT_UTF8 = 0,
    CUTWATER_TEXT_ASCII = 1,
    CUTWATER_TEXT_MARKDOWN = 2,
    CUTWATER_TEXT_JSON = 3
} cutwater_form;

/* Writes equation, numbers put in, intermediate results, results, limits, source and cautions; for a call that is
   refused (also for a function that does not exist) it writes why, and answers with the refusal's status. The text is
   ended by 0. needed tells its length without that 0. When capacity is not above needed the text is cut at a
   character's border and a call that was not refused answers CUTWATER_BUFFER_TOO_SMALL: ask with a null buffer and
   capacity 0 for the length first. needed and refusal may be null. */
CUTWATER_API cutwater_status cutwater_working(const char *function, const cutwater_value *inputs, size_t input_count,
                                              int32_t form, char *buffer, size_t capacity, size_t *needed,
                                              cutwater_refusal *refusal);

/* The same text for a call that was refused before it could be made, such as by a cell that can be no argument. */
CUTWATER_API cutwater_status cutwater_refusal_text(const cutwater_refusal *refusal, int32_t form, char *buffer,
                                                   size_t capacity, size_t *needed);

/* ---- Solved backwards ---- */

/* The value of the input `unknown` (its name, with or without its unit) for which the result comes to target.
   inputs: as for cutwater_call; what stands at the unknown's place is not looked at, and a list that ends before it
   will do.
   result: the result's name, with or without its unit; null for the first that is a number.
   target: a number in that result's unit, or a text with a unit.
   low, high: where to search, in the unknown's unit; NaN for the end that the record gives.
   found: in the unknown's unit; NaN on refusal. Status CUTWATER_NO_ANSWER: no such value was found, or a jump across
   it; CUTWATER_SEVERAL_ANSWERS: several, named in the message, or a whole range of them. The message says where was
   searched. */
CUTWATER_API cutwater_status cutwater_solve_for(const char *function, const cutwater_value *inputs, size_t input_count,
                                                const char *unknown, const char *result, const cutwater_value *target,
                                                double low, double high, double *found, cutwater_refusal *refusal);

/* All the values found, rising, where several are welcome. count tells how many there are; at most capacity are
   stored. */
CUTWATER_API cutwater_status cutwater_solutions(const char *function, const cutwater_value *inputs, size_t input_count,
                                                const char *unknown, const char *result, const cutwater_value *target,
                                                double low, double high, double *roots, size_t capacity, size_t *count,
                                                cutwater_refusal *refusal);

/* ---- Uncertainty ---- */

/* How an input's values are spread about the one given. The standard uncertainty is the standard deviation of each. */
typedef enum cutwater_spread {
    CUTWATER_NORMAL = 0,
    CUTWATER_RECTANGULAR = 1, /* half-width sqrt(3) times the standard uncertainty */
    CUTWATER_TRIANGULAR = 2,  /* half-width sqrt(6) times */
    CUTWATER_ARCSINE = 3      /* half-width sqrt(2) times: a value that swings */
} cutwater_spread;

typedef enum cutwater_monte_carlo {
    CUTWATER_WHEN_NEEDED = 0, /* when the first order is not to be trusted */
    CUTWATER_ALWAYS = 1,
    CUTWATER_NEVER = 2
} cutwater_monte_carlo;

/* Between two inputs that are numbers, by position. */
typedef struct cutwater_correlation {
    int32_t first;
    int32_t second;
    double coefficient; /* -1 to 1 */
} cutwater_correlation;

/* Set size to sizeof(cutwater_uncertainty_options), all else to 0, then what is wanted. A null pointer stands for all
   0. Later headers may add fields at the end: size tells the library which of them the caller knows. */
typedef struct cutwater_uncertainty_options {
    size_t size;
    const char *result;     /* by name; null for the first that is a number */
    const int32_t *spreads; /* a cutwater_spread an input; null: all normal */
    const cutwater_correlation *correlations;
    size_t correlation_count;
    int32_t monte_carlo; /* a cutwater_monte_carlo */
    size_t trials;       /* 0: 200 000 */
    uint64_t seed;       /* the same seed gives the same bits */
    double coverage;     /* probability of the interval; 0: 0.95 */
} cutwater_uncertainty_options;

/* Set size to sizeof(cutwater_uncertainty_report), all else to 0, and shares and slopes to arrays with one entry an
   input, or to null. Later headers may add fields at the end: size tells the library which of them the caller knows. */
typedef struct cutwater_uncertainty_report {
    size_t size;
    double *shares;  /* each input's share of the variance, with its correlations; they add up to 1 */
    double *slopes;  /* change of the result per unit of the input; NaN for an input that is exact or a series */
    double value;    /* the result for the inputs as given */
    double standard; /* first order, JCGM 100 */
    double low;      /* first-order coverage interval, by the normal distribution */
    double high;
    double second_order; /* what the next term would add to the standard uncertainty, as a part of it */
    int32_t trusted;     /* 1: the first order will do */
    size_t trials;       /* Monte Carlo, JCGM 101; 0: not run, and the numbers below are NaN */
    size_t refused;      /* trials that the function refused, left out of the numbers below */
    double mean;
    double deviation;
    double trial_low; /* probabilistically symmetric coverage interval */
    double trial_high;
    char remark[384]; /* a sentence: why the first order is or is not to be trusted */
    double relation;       /* standard uncertainty that the relation itself adds; 0 for none */
    double relation_share; /* its share of the variance: with those of the inputs it makes 1 */
} cutwater_uncertainty_report;

/* uncertainties: one an input; left out or 0 for exact, a number in the input's unit, a text with a unit ("0.5 degC" is
   half a kelvin), for a series one number for every point or a series. They are standard uncertainties (one standard
   deviation).
   A relation of the literature may itself be off by more than its inputs: where its record states a scatter
   (cutwater_describe_result), a normal contribution of scatter/1.96 is added, of which the shares, interval and trials
   tell. One entry more than inputs says otherwise: 0 leaves it out, a number in the result's unit or a text with a unit
   ("3 K", "4 %") is taken as the relation's standard uncertainty; a percentage of a result that is none is a part of
   it. A caller whose header does not know the field relation has none added unless it gives that entry. */
CUTWATER_API cutwater_status cutwater_uncertainty(const char *function, const cutwater_value *inputs,
                                                  size_t input_count, const cutwater_value *uncertainties,
                                                  size_t uncertainty_count, const cutwater_uncertainty_options *options,
                                                  cutwater_uncertainty_report *report, cutwater_refusal *refusal);

/* ---- Sensitivity ---- */

typedef struct cutwater_sensitivity_row {
    int32_t input;          /* its position */
    int32_t relative;       /* 1: ranked by relative; 0: input or result is 0 and only slope tells */
    double relative_change; /* of the result per relative change of the input; 1 % more gives so many per cent more */
    double slope; /* change of the result per unit of the input; NaN for a series, which is scaled as a whole */
} cutwater_sensitivity_row;

/* One row for each input that is a number or a series, what matters most first. count tells how many; at most capacity
   are stored. value: the result; may be null. Temperatures are taken from absolute zero for relative changes. */
CUTWATER_API cutwater_status cutwater_sensitivity(const char *function, const cutwater_value *inputs,
                                                  size_t input_count, const char *result,
                                                  cutwater_sensitivity_row *rows, size_t capacity, size_t *count,
                                                  double *value, cutwater_refusal *refusal);

#ifdef __cplusplus
}
#endif

#endif

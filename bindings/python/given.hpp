// The Python door: how an object becomes an argument, and an answer an object.
#pragma once

#include "python.hpp"

#include "common/call.hpp"

namespace cutwater_door {

struct Given {
    PyObject* object = nullptr;  // borrowed; null for an argument left out
};

struct Answer {
    PyObject* object = nullptr;  // null: Python's error is set
};

/// Imports NumPy and the exception, adds the named tuples to the module. False with Python's error set.
bool start(PyObject* module);

/// The function at that position, called with numbers, texts, series or columns.
Answer answer(std::int32_t position, const Given* given, std::size_t count);

/// The array form that reports refused rows instead of raising: (results, refused, first refusal or None).
Answer rows(int position, Given arguments, Given out, int threads);
Answer convert_unit(Given value, Given from_unit, Given to_unit);
Answer quantity(Given value, Given unit);
Answer read(int position, int input, Given text);
/// Positions of functions, best first.
Answer find_function(Given words);
/// What stands for an input that is left out; None where it may not be.
Answer default_of(int position, int input);
/// (name, meaning) each.
Answer question_arguments(int position);
Answer question_results(int position);
Answer self_test();

// The four answers. arguments: a tuple, one an input; standard and spreads likewise; correlations: a tuple of (first,
// second, r).
Answer working(Given function, Given arguments, int form);
/// The text of a refusal that was raised before the library was asked: (message, status, element, value, low, high,
/// name, unit).
Answer refusal_text(Given refusal, int form);
Answer solve_for(int position, Given arguments, Given unknown, Given target, Given result, double low, double high);
Answer solutions(int position, Given arguments, Given unknown, Given target, Given result, double low, double high);
Answer uncertainty(int position, Given arguments, Given standard, Given spreads, Given correlations, Given result,
                   int monte_carlo, size_t trials, unsigned long long seed, double coverage);
Answer sensitivity(int position, Given arguments, Given result);

}  // namespace cutwater_door

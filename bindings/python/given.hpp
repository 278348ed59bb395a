// The Python door: how an object becomes an argument, and an answer an object.
#pragma once

#include "python.hpp"

#include "door.hpp"

namespace cutwater_door {

struct Given {
    PyObject *object = nullptr;  // borrowed; null for an argument left out
};

struct Answer {
    PyObject *object = nullptr;  // null: Python's error is set
};

/// Imports NumPy and the exception, adds the named tuples to the module. False with Python's error set.
bool start(PyObject *module);

/// The function at that position, called with numbers, texts, series or columns.
Answer answer(std::int32_t position, const Given *given, std::size_t count);

/// The array form that reports refused rows instead of raising: (results, refused, first refusal or None).
Answer rows(int position, Given arguments, Given out, int threads);
Answer convert(Given value, Given from_unit, Given to_unit);
Answer read(int position, int input, Given text);
Answer self_test();

}  // namespace cutwater_door

// One argument read from a Python object. Every function here returns false, or null, with Python's error set.
#pragma once

#include "given.hpp"

namespace cutwater_door {

struct Argument {
    cutwater_value value;  // points into held
    Owned held;
    bool column = false;  // held is an array of float64 that gives a quantity, one element a row
};

/// Where an object stands, for reading its texts and for errors that name it.
struct Place {
    std::int32_t function = -1;  // -1: not of the catalogue; texts are not numbers there
    std::int32_t input = -1;
    const char* call = "";
    const char* name = "";

    Place(const char* call_, const char* name_) : call(call_), name(name_) {}
    Place(const Function& f, std::size_t input_)
        : function(f.position), input(static_cast<std::int32_t>(input_)), call(f.name.c_str()),
          name(cutwater_input_name(function, input))
    {
    }
};

bool read_argument(const Function& function, std::size_t input, PyObject* object, Argument& argument);

/// An array that is held, as the series that the argument gives.
bool set_series(const Function& function, std::size_t input, Argument& argument);

/// A text without a null character in it; borrowed from the object.
const char* text_of(const Place& place, PyObject* object);

/// Whether the object stands for many numbers: an array, a list, a buffer.
bool is_array_like(PyObject* object);

/// Numbers, and texts of an input of the catalogue, as aligned float64: strides kept, nothing copied that already is
/// that.
Owned doubles_of(const Place& place, PyObject* object);

/// One number, or a text of an input; element is its position in an array or series, -1 for none.
bool number_of(const Place& place, PyObject* object, std::int64_t element, double& number);

}  // namespace cutwater_door

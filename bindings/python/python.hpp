// Python's and NumPy's headers, and a reference that lets itself go.
#pragma once

#define PY_SSIZE_T_CLEAN
#include <Python.h>

#define NPY_NO_DEPRECATED_API NPY_1_20_API_VERSION
#define PY_ARRAY_UNIQUE_SYMBOL cutwater_numpy
#ifndef CUTWATER_IMPORTS_NUMPY
#define NO_IMPORT_ARRAY
#endif
#include <numpy/arrayobject.h>

#include <utility>

namespace cutwater_door {

/// Owns one reference, or none.
class Owned {
public:
    Owned() = default;
    explicit Owned(PyObject* object) : object_(object) {}
    Owned(Owned&& other) noexcept : object_(std::exchange(other.object_, nullptr)) {}
    Owned& operator=(Owned&& other) noexcept
    {
        std::swap(object_, other.object_);
        return *this;
    }
    ~Owned() { Py_XDECREF(object_); }

    static Owned share(PyObject* object) { return Owned(Py_XNewRef(object)); }

    explicit operator bool() const { return object_ != nullptr; }
    PyObject* get() const { return object_; }
    PyArrayObject* array() const { return reinterpret_cast<PyArrayObject*>(object_); }
    PyObject* release() { return std::exchange(object_, nullptr); }

private:
    PyObject* object_ = nullptr;
};

}  // namespace cutwater_door

// Python's quick calls for SWIG's wrappers. A wrapper with keywords wants a tuple and a dict, which Python has to build
// for every call, and looks each keyword up anew; that costs more than the answer. Here a wrapper is handed the objects
// where they lie, and the unpacking that SWIG has written into it finds them there. Included by the wrappers'
// translation unit.
#pragma once

#include "given.hpp"

#include <array>
#include <cstring>
#include <string>

namespace cutwater_door::fastcall {

inline constexpr std::size_t most_functions = 512;

struct Packed {
    PyObject* const* objects;  // by position, then by name
    Py_ssize_t positional;
    PyObject* names;  // tuple, or null
};

using Wrapper = PyObject* (*)(PyObject*, PyObject*, PyObject*);
using Method = PyObject* (*)(PyObject*, PyObject* const*, Py_ssize_t, PyObject*);
inline Wrapper wrappers[most_functions];

template <std::size_t I>
PyObject* call(PyObject* self, PyObject* const* objects, Py_ssize_t positional, PyObject* names)
{
    Packed packed{objects, positional, names};
    return wrappers[I](self, reinterpret_cast<PyObject*>(&packed), nullptr);
}

inline constexpr auto methods = []<std::size_t... I>(std::index_sequence<I...>) {
    return std::array<Method, most_functions>{&call<I>...};
}(std::make_index_sequence<most_functions>());

inline bool same(PyObject* name, const char* wanted)
{
    if (PyUnicode_IS_COMPACT_ASCII(name))
        return std::strcmp(reinterpret_cast<const char*>(PyUnicode_1BYTE_DATA(name)), wanted) == 0;
    return false;
}

/// Keywords mostly come in the order of the inputs, so each is looked for first where it would then be.
inline bool take_named(const Packed& packed, const char* function, char** names, PyObject*** places, std::size_t count)
{
    const Py_ssize_t given = PyTuple_GET_SIZE(packed.names);
    std::size_t at = static_cast<std::size_t>(packed.positional);
    for (Py_ssize_t k = 0; k < given; ++k) {
        PyObject* name = PyTuple_GET_ITEM(packed.names, k);
        std::size_t tried = 0;
        for (; tried < count; ++tried, ++at) {
            if (at >= count) at = 0;
            if (same(name, names[at])) break;
        }
        if (tried == count) {
            std::string all;
            for (std::size_t i = 0; i < count; ++i) all += std::string(i ? ", " : "") + names[i];
            PyErr_Format(PyExc_TypeError, "%s() has no input '%U'; it has %s", function, name, all.c_str());
            return false;
        }
        if (*places[at]) {
            PyErr_Format(PyExc_TypeError, "%s() was given '%U' twice", function, name);
            return false;
        }
        *places[at++] = packed.objects[packed.positional + k];
    }
    return true;
}

/// Stands in for PyArg_ParseTupleAndKeywords in the wrappers: format is "OO|O:function".
template <class... Places>
int unpack(PyObject* object, PyObject*, const char* format, char** names, Places... to)
{
    constexpr std::size_t count = sizeof...(Places);
    const Packed& packed = *reinterpret_cast<const Packed*>(object);
    PyObject** places[] = {to...};
    const std::size_t positional = static_cast<std::size_t>(packed.positional);
    const auto function = [&] { return std::strchr(format, ':') + 1; };
    if (positional > count) {
        PyErr_Format(PyExc_TypeError, "%s() takes %s%zu inputs (%zu given)", function(),
                     std::strchr(format, '|') ? "at most " : "", count, positional);
        return 0;
    }
    for (std::size_t i = 0; i < positional; ++i) *places[i] = packed.objects[i];
    if (packed.names && !take_named(packed, function(), names, places, count)) return 0;
    if (positional == count) return 1;
    const std::size_t required = std::strcspn(format, "|:");
    for (std::size_t i = positional; i < required; ++i)
        if (!*places[i]) {
            PyErr_Format(PyExc_TypeError, "%s() needs '%s', input %zu", function(), names[i], i + 1);
            return 0;
        }
    return 1;
}

/// Puts the quick calls in the place of the module's functions with keywords.
inline bool install(PyObject* module, PyMethodDef* list)
{
    std::size_t next = 0;
    for (PyMethodDef* method = list; method->ml_name; ++method) {
        if (method->ml_flags != (METH_VARARGS | METH_KEYWORDS)) continue;
        if (next == most_functions) {
            PyErr_SetString(PyExc_ImportError, "cutwater: more functions than the Python door has room for");
            return false;
        }
        wrappers[next] = reinterpret_cast<Wrapper>(reinterpret_cast<void (*)()>(method->ml_meth));
        method->ml_meth = reinterpret_cast<PyCFunction>(reinterpret_cast<void (*)()>(methods[next++]));
        method->ml_flags = METH_FASTCALL | METH_KEYWORDS;
    }
    return PyModule_AddFunctions(module, list) == 0;
}

}  // namespace cutwater_door::fastcall

#undef PyArg_ParseTupleAndKeywords
#define PyArg_ParseTupleAndKeywords cutwater_door::fastcall::unpack

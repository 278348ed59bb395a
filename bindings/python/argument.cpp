#include "argument.hpp"

#include "refused.hpp"

#include <cmath>
#include <cstring>
#include <limits>

namespace cutwater_door {
namespace {

/// Quantities of other packages: taking their bare number would drop the unit that they carry.
bool carries_unit(PyObject* object)
{
    PyObject* type = reinterpret_cast<PyObject*>(Py_TYPE(object));
    for (const char* name : {"units", "unit"}) {
        if (PyObject_HasAttrString(type, name)) return true;
        if (PyArray_Check(object) && !PyArray_CheckExact(object) && PyObject_HasAttrString(object, name)) return true;
    }
    return false;
}

bool wrong_type(const Place& place, PyObject* object, std::int64_t element)
{
    const char* type = Py_TYPE(object)->tp_name;
    if (carries_unit(object))
        PyErr_Format(PyExc_TypeError,
                     "%s: %s is a %s, which carries a unit of its own; give its number in the input's unit, or a text",
                     place.call, place.name, type);
    else if (element >= 0)
        PyErr_Format(PyExc_TypeError, "%s: element %lld of %s must be a number%s, not %s", place.call,
                     static_cast<long long>(element), place.name, place.function >= 0 ? " or a text with its unit" : "",
                     type);
    else
        PyErr_Format(PyExc_TypeError, "%s: %s must be a number%s or an array, not %s", place.call, place.name,
                     place.function >= 0 ? ", a text" : "", type);
    return false;
}

enum class Found { number, nothing, error };

/// A single number of whatever type. A truth value, a complex number and a span of time are none.
Found find_number(PyObject* object, double& number)
{
    if (PyFloat_Check(object)) {
        number = PyFloat_AS_DOUBLE(object);
        return Found::number;
    }
    if (PyBool_Check(object) || PyComplex_Check(object) || PyUnicode_Check(object)) return Found::nothing;
    if (PyLong_Check(object)) {
        number = PyLong_AsDouble(object);
        if (number == -1 && PyErr_Occurred()) {  // too large for a double: the library refuses what is not finite
            PyErr_Clear();
            int overflow = 0;
            (void)PyLong_AsLongLongAndOverflow(object, &overflow);
            number = std::copysign(std::numeric_limits<double>::infinity(), overflow);
        }
        return Found::number;
    }
    if (PyArray_IsScalar(object, Bool) || PyArray_IsScalar(object, ComplexFloating) ||
        PyArray_IsScalar(object, Timedelta) || PyArray_IsScalar(object, Datetime))
        return Found::nothing;
    const PyNumberMethods* methods = Py_TYPE(object)->tp_as_number;
    if (!methods || !(methods->nb_float || methods->nb_index) || PyArray_Check(object) || PySequence_Check(object) ||
        carries_unit(object))
        return Found::nothing;
    const Owned converted(PyNumber_Float(object));
    if (!converted) {
        if (!PyErr_ExceptionMatches(PyExc_TypeError)) return Found::error;
        PyErr_Clear();
        return Found::nothing;
    }
    number = PyFloat_AS_DOUBLE(converted.get());
    return Found::number;
}

Owned as_array(PyObject* object, int type, int flags)
{
    PyArray_Descr* descr = type == NPY_NOTYPE ? nullptr : PyArray_DescrFromType(type);
    return Owned(PyArray_FromAny(object, descr, 0, 0, flags, nullptr));
}

/// Hidden elements of a masked array become NaN, which is refused; their stale numbers must not pass.
Owned unmasked(PyObject* object)
{
    const Owned numbers(PyObject_CallMethod(object, "astype", "s", "d"));
    return numbers ? Owned(PyObject_CallMethod(numbers.get(), "filled", "d", std::numeric_limits<double>::quiet_NaN()))
                   : Owned();
}

/// Element by element: texts, objects.
Owned converted_elements(const Place& place, PyArrayObject* from)
{
    Owned to(PyArray_SimpleNew(PyArray_NDIM(from), PyArray_DIMS(from), NPY_DOUBLE));
    const Owned walk(PyArray_IterNew(reinterpret_cast<PyObject*>(from)));
    if (!to || !walk) return {};
    double* out = static_cast<double*>(PyArray_DATA(to.array()));
    auto* iterator = reinterpret_cast<PyArrayIterObject*>(walk.get());
    for (std::int64_t element = 0; PyArray_ITER_NOTDONE(iterator); ++element) {
        const Owned item(PyArray_GETITEM(from, static_cast<char*>(PyArray_ITER_DATA(iterator))));
        if (!item || !number_of(place, item.get(), element, *out++)) return {};
        PyArray_ITER_NEXT(iterator);
    }
    return to;
}

bool is_nested(PyObject* item)
{
    if (PyFloat_Check(item) || !is_array_like(item) || carries_unit(item)) return false;
    return !PyArray_Check(item) || PyArray_NDIM(reinterpret_cast<PyArrayObject*>(item)) > 0;
}

/// A list of single numbers and texts; anything nested goes by way of an array of objects.
Owned from_list(const Place& place, PyObject* list)
{
    const Owned items(PySequence_Fast(list, "not a sequence"));
    if (!items) return {};
    const npy_intp length = PySequence_Fast_GET_SIZE(items.get());
    Owned to(PyArray_SimpleNew(1, &length, NPY_DOUBLE));
    if (!to) return {};
    double* out = static_cast<double*>(PyArray_DATA(to.array()));
    for (npy_intp i = 0; i < length; ++i) {
        const Owned item = Owned::share(
            PySequence_Fast_GET_ITEM(items.get(), i));  // reading another item may change the list
        if (is_nested(item.get())) {
            const Owned nested = as_array(list, NPY_OBJECT, NPY_ARRAY_ENSUREARRAY);
            return nested ? converted_elements(place, nested.array()) : Owned();
        }
        if (!number_of(place, item.get(), i, out[i])) return {};
        if (PySequence_Fast_GET_SIZE(items.get()) != length) {
            PyErr_Format(PyExc_RuntimeError, "%s: %s changed its length while it was read", place.call, place.name);
            return {};
        }
    }
    return to;
}

bool whole_strides(PyArrayObject* array)
{
    for (int i = 0; i < PyArray_NDIM(array); ++i)
        if (PyArray_DIM(array, i) > 1 && PyArray_STRIDE(array, i) % static_cast<npy_intp>(sizeof(double)) != 0)
            return false;
    return true;
}

bool read_many(const Function& f, std::size_t input, PyObject* object, Argument& argument)
{
    if (f.inputs[input] == CUTWATER_TEXT) {  // not a word: the library says so in its own terms
        argument.value = {CUTWATER_SERIES, 0, nullptr, nullptr, 0, 1};
        return true;
    }
    argument.held = doubles_of(Place(f, input), object);
    if (!argument.held) return false;
    if (f.inputs[input] == CUTWATER_SERIES || f.has_series_result) return set_series(f, input, argument);
    if (PyArray_NDIM(argument.held.array()) == 0) {
        argument.value.kind = CUTWATER_NUMBER;
        argument.value.number = *static_cast<const double*>(PyArray_DATA(argument.held.array()));
        return true;
    }
    argument.column = true;
    return true;
}

}  // namespace

bool set_series(const Function& f, std::size_t input, Argument& argument)
{
    PyArrayObject* array = argument.held.array();
    if (PyArray_NDIM(array) != 1) {
        const Place place(f, input);
        PyErr_Format(PyExc_TypeError, "%s: %s must be a series of one dimension, not %d", place.call, place.name,
                     PyArray_NDIM(array));
        return false;
    }
    const npy_intp length = PyArray_DIM(array, 0);
    argument.value.kind = CUTWATER_SERIES;
    argument.value.series = static_cast<const double*>(PyArray_DATA(array));
    argument.value.length = static_cast<std::size_t>(length);
    argument.value.stride = length > 1 ? PyArray_STRIDE(array, 0) / static_cast<npy_intp>(sizeof(double)) : 1;
    return true;
}

const char* text_of(const Place& place, PyObject* object)
{
    if (!PyUnicode_Check(object)) {
        PyErr_Format(PyExc_TypeError, "%s: %s must be a text, not %s", place.call, place.name,
                     Py_TYPE(object)->tp_name);
        return nullptr;
    }
    Py_ssize_t length = 0;
    const char* text = PyUnicode_AsUTF8AndSize(object, &length);
    if (!text && PyErr_ExceptionMatches(PyExc_UnicodeEncodeError)) {
        PyErr_Clear();
        PyErr_Format(PyExc_ValueError, "%s: %s has half of a surrogate pair in it, which is no character", place.call,
                     place.name);
        return nullptr;
    }
    if (text && std::strlen(text) != static_cast<std::size_t>(length)) {
        PyErr_Format(PyExc_ValueError, "%s: %s has a null character in it", place.call, place.name);
        return nullptr;
    }
    return text;
}

bool is_array_like(PyObject* object)
{
    if (PyArray_Check(object) || PyList_Check(object) || PyTuple_Check(object)) return true;
    if (PyUnicode_Check(object) || PyBytes_Check(object) || PyByteArray_Check(object) || PyArray_CheckAnyScalar(object))
        return false;
    return PySequence_Check(object) || PyObject_CheckBuffer(object) || PyObject_HasAttrString(object, "__array__");
}

bool number_of(const Place& place, PyObject* object, std::int64_t element, double& number)
{
    switch (find_number(object, number)) {
    case Found::number: return true;
    case Found::error: return false;
    case Found::nothing: break;
    }
    if (PyUnicode_Check(object) && place.function >= 0) {
        const char* text = text_of(place, object);
        if (!text) return false;
        cutwater_refusal refusal;
        if (cutwater_read(place.function, place.input, text, &number, &refusal) == CUTWATER_OK) return true;
        refusal.element = element;
        raise_refused(refusal);
        return false;
    }
    if (PyArray_Check(object) && PyArray_NDIM(reinterpret_cast<PyArrayObject*>(object)) == 0 && !carries_unit(object)) {
        const Owned plain = PyObject_HasAttrString(object, "filled") ? unmasked(object) : Owned::share(object);
        if (!plain) return false;
        const Owned item(PyArray_GETITEM(plain.array(), static_cast<char*>(PyArray_DATA(plain.array()))));
        return item && !PyArray_Check(item.get()) && number_of(place, item.get(), element, number);
    }
    return wrong_type(place, object, element);
}

Owned doubles_of(const Place& place, PyObject* object)
{
    if (carries_unit(object)) {
        wrong_type(place, object, -1);
        return {};
    }
    if (PyList_Check(object) || PyTuple_Check(object)) return from_list(place, object);
    const bool masked = PyArray_Check(object) && !PyArray_CheckExact(object) &&
                        PyObject_HasAttrString(object, "filled");
    Owned array = masked ? unmasked(object) : as_array(object, NPY_NOTYPE, NPY_ARRAY_ENSUREARRAY);
    if (!array) return {};
    const int type = PyArray_TYPE(array.array());
    if (type == NPY_OBJECT || type == NPY_UNICODE) return converted_elements(place, array.array());
    if (!PyTypeNum_ISINTEGER(type) && !PyTypeNum_ISFLOAT(type)) {
        const Owned dtype = Owned::share(reinterpret_cast<PyObject*>(PyArray_DESCR(array.array())));
        PyErr_Format(PyExc_TypeError, "%s: %s must hold numbers, not %S", place.call, place.name, dtype.get());
        return {};
    }
    array = as_array(array.get(), NPY_DOUBLE, NPY_ARRAY_ALIGNED | NPY_ARRAY_FORCECAST | NPY_ARRAY_ENSUREARRAY);
    if (array && !whole_strides(array.array())) return Owned(PyArray_NewCopy(array.array(), NPY_CORDER));
    return array;
}

bool read_argument(const Function& f, std::size_t input, PyObject* object, Argument& argument)
{
    argument.value = {CUTWATER_LEFT_OUT, 0, nullptr, nullptr, 0, 1};
    if (!object || object == Py_None) return true;
    if (PyUnicode_Check(object)) {
        argument.value.kind = CUTWATER_TEXT;
        argument.value.text = text_of(Place(f, input), object);
        return argument.value.text != nullptr;
    }
    const bool single = PyArray_Check(object) && PyArray_NDIM(reinterpret_cast<PyArrayObject*>(object)) == 0;
    if (single && !carries_unit(object) && !PyObject_HasAttrString(object, "filled")) {
        PyArrayObject* array = reinterpret_cast<PyArrayObject*>(object);
        argument.held = Owned(PyArray_GETITEM(array, static_cast<char*>(PyArray_DATA(array))));
        if (!argument.held) return false;
        if (PyUnicode_Check(argument.held.get())) {
            argument.value.kind = CUTWATER_TEXT;
            argument.value.text = text_of(Place(f, input), argument.held.get());
            return argument.value.text != nullptr;
        }
        object = argument.held.get();
    } else if (is_array_like(object) && !single) {
        return read_many(f, input, object, argument);
    }
    argument.value.kind = CUTWATER_NUMBER;
    return number_of(Place(f, input), object, -1, argument.value.number);
}

}  // namespace cutwater_door

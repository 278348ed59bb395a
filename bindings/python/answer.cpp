// Calls of one answer: the fast way for floats and texts, the general one for every other object.
#define CUTWATER_IMPORTS_NUMPY
#include "answer.hpp"

#include "refused.hpp"
#include "rows.hpp"

#include <new>

namespace cutwater_door {
namespace {

/// Long series are computed without holding the interpreter.
constexpr std::size_t long_series = 2000;

std::vector<PyObject*> tuple_types;  // of the functions with several results, by position

/// One named tuple a function, a member of the module so that it can be pickled.
bool make_tuple_types(PyObject* module)
{
    const Owned collections(PyImport_ImportModule("collections"));
    const Owned make(collections ? PyObject_GetAttrString(collections.get(), "namedtuple") : nullptr);
    const Owned package(make ? Py_BuildValue("{s:s}", "module", "cutwater") : nullptr);
    if (!package) return false;
    for (std::int32_t position = 0; const Function* f = function_at(position); ++position) {
        tuple_types.push_back(nullptr);
        if (f->results.size() < 2) continue;
        const Owned names(PyList_New(0));
        for (std::size_t i = 0; names && i < f->results.size(); ++i) {
            const Owned name(PyUnicode_FromString(cutwater_result_name(position, static_cast<std::int32_t>(i))));
            if (!name || PyList_Append(names.get(), name.get()) != 0) return false;
        }
        cutwater_function_info info{};
        info.size = sizeof info;
        cutwater_describe_function(position, &info);
        const Owned arguments(Py_BuildValue("sO", info.type_name, names.get()));
        tuple_types.back() = arguments ? PyObject_Call(make.get(), arguments.get(), package.get()) : nullptr;
        if (!tuple_types.back() || PyModule_AddObjectRef(module, info.type_name, tuple_types.back()) != 0) return false;
    }
    return true;
}

PyObject* result_object(std::int32_t kind, const cutwater_result& result)
{
    if (kind == CUTWATER_NUMBER) return PyFloat_FromDouble(result.number);
    if (kind == CUTWATER_TEXT) return PyUnicode_FromString(result.text);
    const npy_intp length = static_cast<npy_intp>(result.length);
    PyObject* array = PyArray_SimpleNew(1, &length, NPY_DOUBLE);
    if (array && length)
        memcpy(PyArray_DATA(reinterpret_cast<PyArrayObject*>(array)), result.series, result.length * sizeof(double));
    return array;
}

Answer one_answer(const Function& f, const cutwater_value* values, std::size_t count)
{
    Call call;
    std::size_t points = 0;
    for (std::size_t i = 0; i < count; ++i)
        if (values[i].kind == CUTWATER_SERIES) points += values[i].length;
    cutwater_status status;
    if (points < long_series) {
        status = call.run(f, values, count);
    } else {
        PyThreadState* state = PyEval_SaveThread();
        try {
            status = call.run(f, values, count);
        } catch (...) {
            PyEval_RestoreThread(state);
            throw;
        }
        PyEval_RestoreThread(state);
    }
    if (status != CUTWATER_OK) {
        raise_refused(call.refusal());
        return {};
    }
    if (f.results.size() == 1) return {result_object(f.results[0], call.result(0))};
    Owned objects[most_results];
    for (std::size_t i = 0; i < f.results.size(); ++i) {
        objects[i] = Owned(result_object(f.results[i], call.result(i)));
        if (!objects[i]) return {};
    }
    return {named_tuple(f, objects)};
}

Answer general_answer(const Function& f, const Given* given, std::size_t count)
{
    Argument arguments[most_inputs];
    bool columns = false;
    for (std::size_t i = 0; i < count; ++i) {
        if (!read_argument(f, i, given[i].object, arguments[i])) return {};
        columns = columns || arguments[i].column;
    }
    if (columns) {
        RowsAnswer made;
        if (!compute_rows(f, arguments, {}, made)) return {};
        if (made.refused == 0) return {made.results.release()};
        raise_refused(made.first, made.refused, made.rows);
        return {};
    }
    cutwater_value values[most_inputs];
    for (std::size_t i = 0; i < count; ++i) values[i] = arguments[i].value;
    return one_answer(f, values, count);
}

/// Whether an object is Python's or NumPy's own, and so read here without asking what library it is of.
bool is_own(PyObject* object)
{
    return object == Py_None || PyFloat_Check(object) || PyUnicode_Check(object) || PyLong_Check(object) ||
           PyArray_CheckExact(object) || PyList_CheckExact(object) || PyTuple_CheckExact(object) ||
           PyArray_IsScalar(object, Generic);
}

/// The call with objects of other libraries in it, as the package's _objects.py answers it; NotImplemented when there
/// are none.
Answer foreign_answer(const Function& f, const Given* given, std::size_t count)
{
    const Owned module(PyImport_ImportModule("cutwater._objects"));
    const Owned tuple(module ? PyTuple_New(static_cast<Py_ssize_t>(count)) : nullptr);
    if (!tuple) return {};
    for (std::size_t i = 0; i < count; ++i)
        PyTuple_SET_ITEM(tuple.get(), static_cast<Py_ssize_t>(i),
                         Py_NewRef(given[i].object ? given[i].object : Py_None));
    return {PyObject_CallMethod(module.get(), "answer", "iO", static_cast<int>(f.position), tuple.get())};
}

Answer answer_of(const Function& f, const Given* given, std::size_t count)
{
    cutwater_value values[most_inputs];
    std::size_t i = 0;
    for (; i < count; ++i) {
        PyObject* object = given[i].object;
        if (!object || object == Py_None) {
            values[i].kind = CUTWATER_LEFT_OUT;
        } else if (PyFloat_CheckExact(object)) {
            values[i].kind = CUTWATER_NUMBER;
            values[i].number = PyFloat_AS_DOUBLE(object);
        } else if (PyUnicode_CheckExact(object)) {
            values[i].kind = CUTWATER_TEXT;
            values[i].text = text_of(Place(f, i), object);
            if (!values[i].text) return {};
        } else if (PyLong_CheckExact(object)) {
            values[i].kind = CUTWATER_NUMBER;
            if (!number_of(Place(f, i), object, -1, values[i].number)) return {};
        } else {
            break;
        }
    }
    if (i == count) return one_answer(f, values, count);
    for (; i < count; ++i)
        if (given[i].object && !is_own(given[i].object)) {
            const Answer foreign = foreign_answer(f, given, count);
            if (foreign.object != Py_NotImplemented) return foreign;
            Py_DECREF(foreign.object);
            break;
        }
    return general_answer(f, given, count);
}

}  // namespace

bool start(PyObject* module)
{
    if (_import_array() < 0 || !start_refused()) return false;
    return guarded([&]() -> Answer { return {make_tuple_types(module) ? Py_None : nullptr}; }).object != nullptr;
}

PyObject* named_tuple(const Function& f, Owned* objects)
{
    auto* type = reinterpret_cast<PyTypeObject*>(tuple_types[static_cast<std::size_t>(f.position)]);
    PyObject* made = type->tp_alloc(type, static_cast<Py_ssize_t>(f.results.size()));
    for (std::size_t i = 0; made && i < f.results.size(); ++i)
        PyTuple_SET_ITEM(made, static_cast<Py_ssize_t>(i), objects[i].release());
    return made;
}

Answer answer(std::int32_t position, const Given* given, std::size_t count)
{
    const Function* f = function_at(position);
    if (!f || f->inputs.size() != count) {
        PyErr_SetString(PyExc_RuntimeError,
                        "cutwater: the library beside this module is of another version than the module");
        return {};
    }
    return guarded([&] { return answer_of(*f, given, count); });
}

}  // namespace cutwater_door

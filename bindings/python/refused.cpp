#include "refused.hpp"

namespace cutwater_door {
namespace {

PyObject* refused_class = nullptr;

/// A position as Python has it: None where there is none.
PyObject* position(long long value) { return value < 0 ? Py_NewRef(Py_None) : PyLong_FromLongLong(value); }

}  // namespace

bool start_refused()
{
    const Owned module(PyImport_ImportModule("cutwater.refused"));
    refused_class = module ? PyObject_GetAttrString(module.get(), "Refused") : nullptr;
    return refused_class != nullptr;
}

Owned refused_from(const cutwater_refusal& r, std::size_t refused, std::size_t rows)
{
    const Owned message(rows ? PyUnicode_FromFormat("%s (%zu of %zu rows refused; the first is row %lld.)", r.message,
                                                    refused, rows, static_cast<long long>(r.element))
                             : PyUnicode_DecodeUTF8(r.message, static_cast<Py_ssize_t>(strlen(r.message)), "replace"));
    if (!message) return {};
    const Owned arguments(Py_BuildValue("(O)", message.get()));
    const Owned fields(Py_BuildValue("{s:i,s:N,s:N,s:d,s:d,s:d,s:N,s:N,s:s,s:s,s:n}", "status",
                                     static_cast<int>(r.status), "argument", position(r.argument), "element",
                                     position(r.element), "value", r.value, "low", r.low, "high", r.high, "low_open",
                                     PyBool_FromLong(r.low_open), "high_open", PyBool_FromLong(r.high_open), "name",
                                     r.name, "unit", r.unit, "refused_rows", static_cast<Py_ssize_t>(refused)));
    return arguments && fields ? Owned(PyObject_Call(refused_class, arguments.get(), fields.get())) : Owned();
}

void raise_refused(const cutwater_refusal& refusal, std::size_t refused, std::size_t rows)
{
    const Owned exception = refused_from(refusal, refused, rows);
    if (exception) PyErr_SetObject(refused_class, exception.get());
}

}  // namespace cutwater_door

// Calls that are not one function of the catalogue.
#include "answer.hpp"
#include "refused.hpp"
#include "rows.hpp"

namespace cutwater_door {
namespace {

Answer rows_of(const Function &f, PyObject *list, const RowsWanted &wanted)
{
    if (f.has_series_result) {
        PyErr_Format(PyExc_TypeError, "%s has a series among its results, and so no array form", f.name.c_str());
        return {};
    }
    if (!PyTuple_Check(list) || PyTuple_GET_SIZE(list) > static_cast<Py_ssize_t>(f.inputs.size())) {
        PyErr_Format(PyExc_TypeError, "%s takes %zu inputs", f.name.c_str(), f.inputs.size());
        return {};
    }
    Argument arguments[most_inputs];
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        PyObject *object = static_cast<Py_ssize_t>(i) < PyTuple_GET_SIZE(list) ? PyTuple_GET_ITEM(list, static_cast<Py_ssize_t>(i)) : nullptr;
        if (!read_argument(f, i, object, arguments[i])) return {};
    }
    RowsAnswer made;
    if (!compute_rows(f, arguments, wanted, made)) return {};
    const Owned first = made.refused ? refused_from(made.first, made.refused, made.rows) : Owned::share(Py_None);
    if (!first) return {};
    return {PyTuple_Pack(3, made.results.get(), made.mask.get(), first.get())};
}

Answer convert_of(PyObject *value, PyObject *from_unit, PyObject *to_unit)
{
    const Place place("convert", "value");
    const char *from = text_of(Place("convert", "from_unit"), from_unit);
    const char *to = from ? text_of(Place("convert", "to_unit"), to_unit) : nullptr;
    if (!to) return {};
    cutwater_refusal refusal;
    double converted = 0;
    if (!is_array_like(value)) {
        double number = 0;
        if (!number_of(place, value, -1, number)) return {};
        if (cutwater_convert(number, from, to, &converted, &refusal) == CUTWATER_OK) return {PyFloat_FromDouble(converted)};
        raise_refused(refusal);
        return {};
    }
    const Owned given = doubles_of(place, value);
    Owned made(given ? PyArray_NewCopy(given.array(), NPY_CORDER) : nullptr);
    if (!made) return {};
    double *data = static_cast<double *>(PyArray_DATA(made.array()));
    const npy_intp size = PyArray_SIZE(made.array());
    if (size == 0 && cutwater_convert(1, from, to, &converted, &refusal) != CUTWATER_OK) {  // the units are still judged
        raise_refused(refusal);
        return {};
    }
    for (npy_intp i = 0; i < size; ++i) {
        if (cutwater_convert(data[i], from, to, &data[i], &refusal) == CUTWATER_OK) continue;
        refusal.element = i;
        raise_refused(refusal);
        return {};
    }
    return {PyArray_Return(reinterpret_cast<PyArrayObject *>(made.release()))};
}

}  // namespace

Answer rows(int position, Given arguments, Given out, int threads)
{
    const Function *f = function_at(position);
    if (!f) {
        PyErr_SetString(PyExc_LookupError, "there is no function at that position");
        return {};
    }
    return guarded([&] { return rows_of(*f, arguments.object, {out.object, true, threads}); });
}

Answer convert(Given value, Given from_unit, Given to_unit)
{
    return guarded([&] { return convert_of(value.object, from_unit.object, to_unit.object); });
}

Answer quantity(Given text, Given unit)
{
    return guarded([&]() -> Answer {
        const char *given = text_of(Place("quantity", "text"), text.object);
        const char *wanted = given ? text_of(Place("quantity", "unit"), unit.object) : nullptr;
        if (!wanted) return {};
        double number = 0;
        cutwater_refusal refusal;
        if (cutwater_quantity(given, wanted, &number, &refusal) == CUTWATER_OK) return {PyFloat_FromDouble(number)};
        raise_refused(refusal);
        return {};
    });
}

Answer read(int position, int input, Given text)
{
    return guarded([&]() -> Answer {
        const char *given = text_of(Place("read", "text"), text.object);
        if (!given) return {};
        double number = 0;
        cutwater_refusal refusal;
        if (cutwater_read(position, input, given, &number, &refusal) == CUTWATER_OK) return {PyFloat_FromDouble(number)};
        raise_refused(refusal);
        return {};
    });
}

Answer self_test()
{
    cutwater_refusal refusal;
    cutwater_status status;
    Py_BEGIN_ALLOW_THREADS
    status = cutwater_self_test(&refusal);
    Py_END_ALLOW_THREADS
    if (status == CUTWATER_OK) return {Py_NewRef(Py_None)};
    raise_refused(refusal);
    return {};
}

}  // namespace cutwater_door

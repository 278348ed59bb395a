// Calls that are not one function of the catalogue.
#include "answer.hpp"
#include "refused.hpp"
#include "rows.hpp"

#include "common/answers.hpp"

namespace cutwater_door {
namespace {

Answer rows_of(const Function& f, PyObject* list, const RowsWanted& wanted)
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
        PyObject* object = static_cast<Py_ssize_t>(i) < PyTuple_GET_SIZE(list)
                               ? PyTuple_GET_ITEM(list, static_cast<Py_ssize_t>(i))
                               : nullptr;
        if (!read_argument(f, i, object, arguments[i])) return {};
    }
    RowsAnswer made;
    if (!compute_rows(f, arguments, wanted, made)) return {};
    const Owned first = made.refused ? refused_from(made.first, made.refused, made.rows) : Owned::share(Py_None);
    if (!first) return {};
    return {PyTuple_Pack(3, made.results.get(), made.mask.get(), first.get())};
}

Answer convert_of(PyObject* value, PyObject* from_unit, PyObject* to_unit)
{
    const Place place("convert_unit", "value");
    const char* from = text_of(Place("convert_unit", "from_unit"), from_unit);
    const char* to = from ? text_of(Place("convert_unit", "to_unit"), to_unit) : nullptr;
    if (!to) return {};
    cutwater_refusal refusal;
    double converted = 0;
    if (!is_array_like(value)) {
        double number = 0;
        if (!number_of(place, value, -1, number)) return {};
        if (cutwater_convert_unit(number, from, to, &converted, &refusal) == CUTWATER_OK)
            return {PyFloat_FromDouble(converted)};
        raise_refused(refusal);
        return {};
    }
    const Owned given = doubles_of(place, value);
    Owned made(given ? PyArray_NewCopy(given.array(), NPY_CORDER) : nullptr);
    if (!made) return {};
    double* data = static_cast<double*>(PyArray_DATA(made.array()));
    const npy_intp size = PyArray_SIZE(made.array());
    if (size == 0 &&
        cutwater_convert_unit(1, from, to, &converted, &refusal) != CUTWATER_OK) {  // the units are still judged
        raise_refused(refusal);
        return {};
    }
    for (npy_intp i = 0; i < size; ++i) {
        if (cutwater_convert_unit(data[i], from, to, &data[i], &refusal) == CUTWATER_OK) continue;
        refusal.element = i;
        raise_refused(refusal);
        return {};
    }
    return {PyArray_Return(reinterpret_cast<PyArrayObject*>(made.release()))};
}

Answer parts_of(int position, cutwater_status (*describe)(std::int32_t, std::int32_t, cutwater_question_part*))
{
    const Owned list(PyList_New(0));
    cutwater_question_part part{};
    part.size = sizeof part;
    for (std::int32_t i = 0; list && describe(position, i, &part) == CUTWATER_OK; ++i) {
        const Owned pair(Py_BuildValue("(ss)", part.name, part.meaning));
        if (!pair || PyList_Append(list.get(), pair.get()) != 0) return {};
    }
    return {Py_XNewRef(list.get())};
}

}  // namespace

Answer rows(int position, Given arguments, Given out, int threads)
{
    const Function* f = function_at(position);
    if (!f) {
        PyErr_SetString(PyExc_LookupError, "there is no function at that position");
        return {};
    }
    return guarded([&] { return rows_of(*f, arguments.object, {out.object, true, threads}); });
}

Answer convert_unit(Given value, Given from_unit, Given to_unit)
{
    return guarded([&] { return convert_of(value.object, from_unit.object, to_unit.object); });
}

Answer quantity(Given value, Given unit)
{
    return guarded([&]() -> Answer {
        const Place place("quantity", "value");
        const char* wanted = text_of(Place("quantity", "unit"), unit.object);
        if (!wanted) return {};
        cutwater_value given{};
        if (PyUnicode_Check(value.object)) {
            given.kind = CUTWATER_TEXT;
            given.text = text_of(place, value.object);
            if (!given.text) return {};
        } else {
            given.kind = CUTWATER_NUMBER;
            if (!number_of(place, value.object, -1, given.number)) return {};
        }
        double number = 0;
        cutwater_refusal refusal;
        if (cutwater_quantity(&given, wanted, &number, &refusal) == CUTWATER_OK) return {PyFloat_FromDouble(number)};
        raise_refused(refusal);
        return {};
    });
}

Answer find_function(Given words)
{
    return guarded([&]() -> Answer {
        const char* text = text_of(Place("find_function", "words"), words.object);
        if (!text) return {};
        cutwater_refusal refusal;
        const Owned list(PyList_New(0));
        for (const std::int32_t position : functions_found(text, refusal)) {
            const Owned number(PyLong_FromLong(position));
            if (!list || !number || PyList_Append(list.get(), number.get()) != 0) return {};
        }
        return {Py_XNewRef(list.get())};
    });
}

Answer default_of(int position, int input)
{
    cutwater_input_info info{};
    info.size = sizeof info;
    cutwater_describe_input(position, input, &info);
    if (!info.optional) return {Py_NewRef(Py_None)};
    return {info.kind == CUTWATER_TEXT ? PyUnicode_FromString(info.fallback_word) : PyFloat_FromDouble(info.fallback)};
}

Answer question_arguments(int position) { return parts_of(position, cutwater_describe_question_argument); }
Answer question_results(int position) { return parts_of(position, cutwater_describe_question_result); }

Answer read(int position, int input, Given text)
{
    return guarded([&]() -> Answer {
        const char* given = text_of(Place("read", "text"), text.object);
        if (!given) return {};
        double number = 0;
        cutwater_refusal refusal;
        if (cutwater_read(position, input, given, &number, &refusal) == CUTWATER_OK)
            return {PyFloat_FromDouble(number)};
        raise_refused(refusal);
        return {};
    });
}

Answer self_test()
{
    cutwater_refusal refusal;
    cutwater_status status;
    Py_BEGIN_ALLOW_THREADS status = cutwater_self_test(&refusal);
    Py_END_ALLOW_THREADS if (status == CUTWATER_OK) return {Py_NewRef(Py_None)};
    raise_refused(refusal);
    return {};
}

}  // namespace cutwater_door

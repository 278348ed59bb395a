// The four answers, asked by the function's name. The package's answers.py has sorted what was given by input.
#include "answer.hpp"
#include "refused.hpp"

#include "common/answers.hpp"

#include <cstdio>

namespace cutwater_door {
namespace {

/// The inputs of one question. An array where a number belongs stays one, and the library refuses it.
struct Inputs {
    Argument arguments[most_inputs];
    cutwater_value values[most_inputs];
    std::size_t count = 0;

    bool read(const Function& f, PyObject* tuple)
    {
        count = static_cast<std::size_t>(PyTuple_GET_SIZE(tuple));
        if (count > f.inputs.size()) {
            PyErr_Format(PyExc_TypeError, "%s takes %zu inputs", f.name.c_str(), f.inputs.size());
            return false;
        }
        for (std::size_t i = 0; i < count; ++i) {
            Argument& argument = arguments[i];
            if (!read_argument(f, i, PyTuple_GET_ITEM(tuple, static_cast<Py_ssize_t>(i)), argument)) return false;
            if (argument.column && !set_series(f, i, argument)) return false;
            values[i] = argument.value;
        }
        return true;
    }
};

/// Runs without holding the interpreter.
template <class Work>
auto freely(Work&& work)
{
    PyThreadState* state = PyEval_SaveThread();
    try {
        auto done = work();
        PyEval_RestoreThread(state);
        return done;
    } catch (...) {
        PyEval_RestoreThread(state);
        throw;
    }
}

/// Null stands for None.
bool name_or_none(const Place& place, PyObject* object, const char*& name)
{
    name = object == Py_None ? nullptr : text_of(place, object);
    return name || object == Py_None;
}

Answer failed(const cutwater_refusal& refusal)
{
    raise_refused(refusal);
    return {};
}

struct Sought : Search {
    Inputs inputs;

    Values values() const { return {inputs.values, inputs.count}; }

    bool read(const Function& f, Given arguments, Given unknown_, Given target_, Given result_)
    {
        unknown = text_of(Place("solve_for", "unknown"), unknown_.object);
        if (!unknown || !name_or_none(Place("solve_for", "result"), result_.object, result)) return false;
        const Place place("solve", "target");
        if (PyUnicode_Check(target_.object)) {
            target.kind = CUTWATER_TEXT;
            target.text = text_of(place, target_.object);
            if (!target.text) return false;
        } else {
            target.kind = CUTWATER_NUMBER;
            if (!number_of(place, target_.object, -1, target.number)) return false;
        }
        return inputs.read(f, arguments.object);
    }
};

Answer all_solutions(const Function& f, const Sought& sought)
{
    std::vector<double> roots;
    cutwater_refusal refusal;
    if (freely([&] { return solutions_of(f, sought.values(), sought, roots, refusal); }) != CUTWATER_OK)
        return failed(refusal);
    const Owned list(PyList_New(static_cast<Py_ssize_t>(roots.size())));
    for (std::size_t i = 0; list && i < roots.size(); ++i) {
        PyObject* number = PyFloat_FromDouble(roots[i]);
        if (!number) return {};
        PyList_SET_ITEM(list.get(), static_cast<Py_ssize_t>(i), number);
    }
    return {Py_XNewRef(list.get())};
}

/// The relation's own standard uncertainty: none, a float or a text, whose characters Python keeps.
bool read_relation(PyObject* object, cutwater_value& value)
{
    value = {};
    value.kind = CUTWATER_LEFT_OUT;
    if (object == Py_None) return true;
    if (PyUnicode_Check(object)) {
        value.kind = CUTWATER_TEXT;
        value.text = PyUnicode_AsUTF8(object);
        return value.text != nullptr;
    }
    value.kind = CUTWATER_NUMBER;
    value.number = PyFloat_AsDouble(object);
    return !PyErr_Occurred();
}

/// Standard uncertainties, one an input and the relation's own. Texts are differences here, so that no element of a
/// series may be one.
bool read_standard(const Function& f, PyObject* tuple, Argument* held, cutwater_value* values)
{
    for (std::size_t i = 0; i < f.inputs.size(); ++i) {
        PyObject* object = PyTuple_GET_ITEM(tuple, static_cast<Py_ssize_t>(i));
        Argument& argument = held[i];
        const bool single = PyArray_Check(object) && PyArray_NDIM(reinterpret_cast<PyArrayObject*>(object)) == 0;
        if (is_array_like(object) && !single) {
            argument.held = doubles_of(
                Place("uncertainty", cutwater_input_name(f.position, static_cast<std::int32_t>(i))), object);
            if (!argument.held || !set_series(f, i, argument)) return false;
        } else if (!read_argument(f, i, object, argument)) {
            return false;
        }
        values[i] = argument.value;
    }
    return read_relation(PyTuple_GET_ITEM(tuple, static_cast<Py_ssize_t>(f.inputs.size())), values[f.inputs.size()]);
}

Owned floats(const std::vector<double>& numbers)
{
    Owned tuple(PyTuple_New(static_cast<Py_ssize_t>(numbers.size())));
    for (std::size_t i = 0; tuple && i < numbers.size(); ++i) {
        PyObject* number = PyFloat_FromDouble(numbers[i]);
        if (!number) return {};
        PyTuple_SET_ITEM(tuple.get(), static_cast<Py_ssize_t>(i), number);
    }
    return tuple;
}

Answer uncertainty_answer(const Function& f, Given arguments, Given standard, Given spreads, Given correlations,
                          cutwater_uncertainty_options options)
{
    Inputs inputs;
    Argument held[most_inputs];
    cutwater_value uncertainties[most_inputs + 1];
    if (!inputs.read(f, arguments.object) || !read_standard(f, standard.object, held, uncertainties)) return {};
    std::vector<std::int32_t> spread(f.inputs.size());
    for (std::size_t i = 0; i < spread.size(); ++i)
        spread[i] = static_cast<std::int32_t>(
            PyLong_AsLong(PyTuple_GET_ITEM(spreads.object, static_cast<Py_ssize_t>(i))));
    std::vector<cutwater_correlation> pairs(static_cast<std::size_t>(PyTuple_GET_SIZE(correlations.object)));
    for (std::size_t i = 0; i < pairs.size(); ++i)
        if (!PyArg_ParseTuple(PyTuple_GET_ITEM(correlations.object, static_cast<Py_ssize_t>(i)), "iid", &pairs[i].first,
                              &pairs[i].second, &pairs[i].coefficient))
            return {};
    if (PyErr_Occurred()) return {};
    options.spreads = spread.data();
    options.correlations = pairs.data();
    options.correlation_count = pairs.size();
    Uncertainty found;
    cutwater_refusal refusal;
    const cutwater_status status = freely([&] {
        return uncertainty_of(f, {inputs.values, inputs.count}, {uncertainties, f.inputs.size() + 1}, options, found,
                              refusal);
    });
    if (status != CUTWATER_OK) return failed(refusal);
    const cutwater_uncertainty_report& report = found.report;
    const Owned share = floats(found.shares), slope = floats(found.slopes);
    if (!share || !slope) return {};
    return {Py_BuildValue("(ddddOOdNsnndddddd)", report.value, report.standard, report.low, report.high, share.get(),
                          slope.get(), report.second_order, PyBool_FromLong(report.trusted), report.remark,
                          static_cast<Py_ssize_t>(report.trials), static_cast<Py_ssize_t>(report.refused), report.mean,
                          report.deviation, report.trial_low, report.trial_high, report.relation,
                          report.relation_share)};
}

Answer sensitivity_answer(const Function& f, const Inputs& inputs, const char* result)
{
    std::vector<cutwater_sensitivity_row> rows;
    cutwater_refusal refusal;
    if (freely([&] { return sensitivity_of(f, {inputs.values, inputs.count}, result, rows, refusal); }) != CUTWATER_OK)
        return failed(refusal);
    const Owned list(PyList_New(0));
    for (const cutwater_sensitivity_row& found : rows) {
        const Owned row(
            Py_BuildValue("(iNdd)", found.input, PyBool_FromLong(found.relative), found.relative_change, found.slope));
        if (!row || !list || PyList_Append(list.get(), row.get()) != 0) return {};
    }
    return {Py_XNewRef(list.get())};
}

/// The function at that position and its inputs as a tuple, or null with the error set.
const Function* function_asked(int position, Given arguments)
{
    const Function* f = function_at(position);
    if (!f)
        PyErr_SetString(PyExc_LookupError, "there is no function at that position");
    else if (!PyTuple_Check(arguments.object))
        PyErr_SetString(PyExc_TypeError, "the inputs must be a tuple");
    else
        return f;
    return nullptr;
}

bool is_tuple_of(const Given& given, std::size_t length)
{
    if (PyTuple_Check(given.object) && PyTuple_GET_SIZE(given.object) == static_cast<Py_ssize_t>(length)) return true;
    PyErr_Format(PyExc_TypeError, "a tuple with one entry an input is needed: %zu", length);
    return false;
}

}  // namespace

Answer working(Given function, Given arguments, int form)
{
    return guarded([&]() -> Answer {
        const char* name = text_of(Place("working", "function"), function.object);
        if (!name) return {};
        const Function* f = function_at(cutwater_find(name));
        Inputs inputs;
        if (f && !(function_asked(f->position, arguments) && inputs.read(*f, arguments.object))) return {};
        std::string text;
        cutwater_refusal refusal;
        freely([&] { return working_of(name, {inputs.values, inputs.count}, form, text, refusal); });
        if (text.empty()) return failed(refusal);  // not even a reason could be written
        return {PyUnicode_DecodeUTF8(text.data(), static_cast<Py_ssize_t>(text.size()), "replace")};
    });
}

Answer refusal_text(Given refusal, int form)
{
    return guarded([&]() -> Answer {
        const char *message = nullptr, *name = nullptr, *unit = nullptr;
        int status = 0;
        long long element = -1;
        double value = 0, low = 0, high = 0;
        if (!PyArg_ParseTuple(refusal.object, "siLdddss", &message, &status, &element, &value, &low, &high, &name,
                              &unit))
            return {};
        cutwater_refusal made;
        refuse(static_cast<cutwater_status>(status), message, made);
        made.element = element;
        made.value = value;
        made.low = low;
        made.high = high;
        std::snprintf(made.name, sizeof made.name, "%s", name);
        std::snprintf(made.unit, sizeof made.unit, "%s", unit);
        const std::string text = text_of_refusal(made, form);
        return {PyUnicode_DecodeUTF8(text.data(), static_cast<Py_ssize_t>(text.size()), "replace")};
    });
}

Answer solve_for(int position, Given arguments, Given unknown, Given target, Given result, double low, double high)
{
    return guarded([&]() -> Answer {
        const Function* f = function_asked(position, arguments);
        Sought sought;
        if (!f || !sought.read(*f, arguments, unknown, target, result)) return {};
        sought.low = low;
        sought.high = high;
        double found = 0;
        cutwater_refusal refusal;
        const auto status = freely([&] { return solution_of(*f, sought.values(), sought, found, refusal); });
        return status == CUTWATER_OK ? Answer{PyFloat_FromDouble(found)} : failed(refusal);
    });
}

Answer solutions(int position, Given arguments, Given unknown, Given target, Given result, double low, double high)
{
    return guarded([&]() -> Answer {
        const Function* f = function_asked(position, arguments);
        Sought sought;
        if (!f || !sought.read(*f, arguments, unknown, target, result)) return {};
        sought.low = low;
        sought.high = high;
        return all_solutions(*f, sought);
    });
}

Answer uncertainty(int position, Given arguments, Given standard, Given spreads, Given correlations, Given result,
                   int monte_carlo, size_t trials, unsigned long long seed, double coverage)
{
    return guarded([&]() -> Answer {
        const Function* f = function_asked(position, arguments);
        if (!f || !is_tuple_of(standard, f->inputs.size() + 1) || !is_tuple_of(spreads, f->inputs.size())) return {};
        if (!PyTuple_Check(correlations.object)) {
            PyErr_SetString(PyExc_TypeError, "the correlations must be a tuple");
            return {};
        }
        cutwater_uncertainty_options options{};
        if (!name_or_none(Place("uncertainty", "result"), result.object, options.result)) return {};
        options.monte_carlo = monte_carlo;
        options.trials = trials;
        options.seed = seed;
        options.coverage = coverage;
        return uncertainty_answer(*f, arguments, standard, spreads, correlations, options);
    });
}

Answer sensitivity(int position, Given arguments, Given result)
{
    return guarded([&]() -> Answer {
        const Function* f = function_asked(position, arguments);
        const char* name = nullptr;
        Inputs inputs;
        if (!f || !name_or_none(Place("sensitivity", "result"), result.object, name) ||
            !inputs.read(*f, arguments.object))
            return {};
        return sensitivity_answer(*f, inputs, name);
    });
}

}  // namespace cutwater_door

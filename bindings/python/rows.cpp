// NumPy's iterator finds the runs that every array walks with one stride; each run is one array call of the library.
// Results that we allocate lie in C order, which is the order of the walk, so they need no place in the iterator.
#include "rows.hpp"

#include "answer.hpp"
#include "refused.hpp"

#include <array>
#include <cmath>
#include <limits>

namespace cutwater_door {
namespace {

struct Shape {
    int dimensions = 0;
    npy_intp size[NPY_MAXDIMS];
    std::size_t rows = 1;
};

/// Everything of one array call; pointers into arguments stay valid while those live.
struct Job {
    explicit Job(const Function& function) : f(function) {}

    const Function& f;
    Shape shape;
    std::array<PyArrayObject*, most_inputs> columns{};  // null for one number, a word, a series
    std::array<double, most_inputs> numbers{};
    std::array<bool, most_inputs> has_number{};
    std::array<cutwater_value, most_inputs> shared{};
    std::array<Owned, most_results> results;
    std::array<bool, most_results> given_out{};
    npy_bool* mask = nullptr;
    int threads = 1;
    std::size_t refused = 0;
    cutwater_status fatal = CUTWATER_OK;  // refused as a whole, no row was computed
    cutwater_refusal first;
};

std::string shape_text(PyArrayObject* array)
{
    std::string text = "(";
    for (int i = 0; i < PyArray_NDIM(array); ++i) text += (i ? ", " : "") + std::to_string(PyArray_DIM(array, i));
    return text + (PyArray_NDIM(array) == 1 ? ",)" : ")");
}

bool broadcast(Job& job)
{
    Shape& shape = job.shape;
    for (std::size_t i = 0; i < job.f.inputs.size(); ++i)
        if (job.columns[i]) shape.dimensions = std::max(shape.dimensions, PyArray_NDIM(job.columns[i]));
    std::fill_n(shape.size, shape.dimensions, npy_intp{1});
    for (std::size_t i = 0; i < job.f.inputs.size(); ++i) {
        PyArrayObject* array = job.columns[i];
        if (!array) continue;
        const int lead = shape.dimensions - PyArray_NDIM(array);
        for (int d = 0; d < PyArray_NDIM(array); ++d) {
            npy_intp& size = shape.size[lead + d];
            if (size == 1) size = PyArray_DIM(array, d);
            if (PyArray_DIM(array, d) == size || PyArray_DIM(array, d) == 1) continue;
            std::string shapes;
            for (std::size_t k = 0; k < job.f.inputs.size(); ++k)
                if (job.columns[k])
                    shapes += (shapes.empty() ? "" : ", ") + std::string(Place(job.f, k).name) + " " +
                              shape_text(job.columns[k]);
            PyErr_Format(PyExc_ValueError, "%s: the arrays' shapes do not go together: %s", job.f.name.c_str(),
                         shapes.c_str());
            return false;
        }
    }
    for (int d = 0; d < shape.dimensions; ++d) shape.rows *= static_cast<std::size_t>(shape.size[d]);
    return true;
}

/// The number of a quantity that was left out; false where the record has none.
bool find_default(const Function& f, std::size_t input, double& number)
{
    cutwater_input_info info{};
    info.size = sizeof info;
    cutwater_describe_input(f.position, static_cast<std::int32_t>(input), &info);
    number = info.fallback;
    return info.optional != 0;
}

bool sort_arguments(Job& job, Argument* arguments)
{
    for (std::size_t i = 0; i < job.f.inputs.size(); ++i) {
        Argument& argument = arguments[i];
        job.shared[i] = argument.value;
        if (job.f.inputs[i] != CUTWATER_NUMBER) continue;
        if (argument.column) {
            job.columns[i] = argument.held.array();
        } else if (argument.value.kind == CUTWATER_NUMBER) {
            job.numbers[i] = argument.value.number;
            job.has_number[i] = true;
        } else if (argument.value.kind == CUTWATER_TEXT) {
            cutwater_refusal refusal;
            if (cutwater_read(job.f.position, static_cast<int>(i), argument.value.text, &job.numbers[i], &refusal) !=
                CUTWATER_OK) {
                raise_refused(refusal);
                return false;
            }
            job.has_number[i] = true;
        } else {
            job.has_number[i] = find_default(job.f, i, job.numbers[i]);
        }
    }
    return true;
}

bool take_out(Job& job, std::size_t result, PyObject* object)
{
    const Place place("rows", "out");
    PyArrayObject* array = reinterpret_cast<PyArrayObject*>(object);
    const char* fault = nullptr;
    if (job.f.results[result] == CUTWATER_TEXT)
        fault = "a word has no column to be stored in; give None";
    else if (!PyArray_Check(object) || PyArray_TYPE(array) != NPY_DOUBLE)
        fault = "it must be an array of float64";
    else if (!PyArray_ISBEHAVED(array))
        fault = "it must be writeable, aligned and in this machine's byte order";
    else if (PyArray_NDIM(array) != job.shape.dimensions ||
             !PyArray_CompareLists(PyArray_DIMS(array), job.shape.size, job.shape.dimensions))
        fault = "its shape must be that of the results";
    for (int d = 0; !fault && d < job.shape.dimensions; ++d)
        if (PyArray_STRIDE(array, d) % static_cast<npy_intp>(sizeof(double)) != 0)
            fault = "its strides must be whole elements";
    if (fault) {
        PyErr_Format(PyExc_ValueError, "%s: out for %s: %s", job.f.name.c_str(),
                     cutwater_result_name(job.f.position, static_cast<int>(result)), fault);
        return false;
    }
    job.results[result] = Owned::share(object);
    job.given_out[result] = true;
    return true;
}

bool prepare_results(Job& job, PyObject* out)
{
    const std::size_t count = job.f.results.size();
    if (out && out != Py_None) {
        const bool several = PyTuple_Check(out);
        if (several ? PyTuple_GET_SIZE(out) != static_cast<Py_ssize_t>(count) : count != 1) {
            PyErr_Format(PyExc_ValueError, "%s: out must be %s", job.f.name.c_str(),
                         count == 1 ? "one array" : "a tuple with an array or None for each result");
            return false;
        }
        for (std::size_t j = 0; j < count; ++j) {
            PyObject* one = several ? PyTuple_GET_ITEM(out, static_cast<Py_ssize_t>(j)) : out;
            if (one != Py_None && !take_out(job, j, one)) return false;
        }
    }
    for (std::size_t j = 0; j < count; ++j) {
        if (job.results[j]) continue;
        job.results[j] = Owned(PyArray_SimpleNew(job.shape.dimensions, job.shape.size, NPY_DOUBLE));
        if (!job.results[j]) return false;
    }
    return true;
}

/// One run of rows. data and strides (in bytes) are of the iterator's arrays: first the columns, then the outs.
void compute_run(Job& job, std::size_t begin, std::size_t rows, char* const* data, const npy_intp* strides,
                 std::uint8_t* bitmap)
{
    constexpr npy_intp width = sizeof(double);
    cutwater_column columns[most_inputs];
    cutwater_result_column results[most_results];
    for (std::size_t i = 0; i < job.f.inputs.size(); ++i) {
        if (job.columns[i])
            columns[i] = {reinterpret_cast<const double*>(*data++), *strides++ / width};
        else
            columns[i] = {job.has_number[i] ? &job.numbers[i] : nullptr, 0};
    }
    for (std::size_t j = 0; j < job.f.results.size(); ++j) {
        if (job.given_out[j])
            results[j] = {reinterpret_cast<double*>(*data++), *strides++ / width};
        else
            results[j] = {static_cast<double*>(PyArray_DATA(job.results[j].array())) + begin, 1};
    }
    cutwater_rows_report report{};
    report.bitmap = bitmap;
    report.threads = job.threads;
    const cutwater_status status = cutwater_rows_at(job.f.position, rows, columns, job.shared.data(), results, &report);
    if (status == CUTWATER_OK) return;
    if (report.first.element < 0) job.fatal = status;
    if (job.refused == 0) {
        job.first = report.first;
        if (report.first.element >= 0) job.first.element += static_cast<std::int64_t>(begin);
    }
    job.refused += report.refused;
    for (std::size_t r = 0; bitmap && r < rows; ++r)
        if (bitmap[r / 8] >> (r % 8) & 1) job.mask[begin + r] = 1;
}

bool walk(Job& job)
{
    std::vector<PyArrayObject*> arrays;
    std::vector<npy_uint32> flags;
    for (std::size_t i = 0; i < job.f.inputs.size(); ++i) {
        if (!job.columns[i]) continue;
        arrays.push_back(job.columns[i]);
        flags.push_back(NPY_ITER_READONLY | NPY_ITER_COPY | NPY_ITER_OVERLAP_ASSUME_ELEMENTWISE);
    }
    for (std::size_t j = 0; j < job.f.results.size(); ++j) {
        if (!job.given_out[j]) continue;
        arrays.push_back(job.results[j].array());
        flags.push_back(NPY_ITER_WRITEONLY | NPY_ITER_UPDATEIFCOPY | NPY_ITER_NO_BROADCAST |
                        NPY_ITER_OVERLAP_ASSUME_ELEMENTWISE);
    }
    if (arrays.empty() || job.shape.rows == 0) {  // without rows, words and series are still judged
        std::uint8_t bit = 0;
        static double nowhere = 0;
        std::vector<char*> data(arrays.size(), reinterpret_cast<char*>(&nowhere));
        std::vector<npy_intp> strides(arrays.size(), 0);
        compute_run(job, 0, job.shape.rows, data.data(), strides.data(), job.mask ? &bit : nullptr);
        return true;
    }
    NpyIter* iterator = NpyIter_MultiNew(static_cast<int>(arrays.size()), arrays.data(),
                                         NPY_ITER_EXTERNAL_LOOP | NPY_ITER_COPY_IF_OVERLAP, NPY_CORDER, NPY_NO_CASTING,
                                         flags.data(), nullptr);
    if (!iterator) return false;
    NpyIter_IterNextFunc* next = NpyIter_GetIterNext(iterator, nullptr);
    char** data = NpyIter_GetDataPtrArray(iterator);
    const npy_intp* strides = NpyIter_GetInnerStrideArray(iterator);
    const npy_intp* run = NpyIter_GetInnerLoopSizePtr(iterator);
    std::vector<std::uint8_t> bitmap;
    try {
        if (next && job.mask) bitmap.resize((static_cast<std::size_t>(*run) + 7) / 8);
    } catch (...) {
        NpyIter_Deallocate(iterator);
        throw;
    }
    if (next) {
        std::size_t begin = 0;
        Py_BEGIN_ALLOW_THREADS do
        {
            compute_run(job, begin, static_cast<std::size_t>(*run), data, strides, job.mask ? bitmap.data() : nullptr);
            begin += static_cast<std::size_t>(*run);
        }
        while (job.fatal == CUTWATER_OK && next(iterator));
        Py_END_ALLOW_THREADS
    }
    return NpyIter_Deallocate(iterator) == NPY_SUCCEED && next;
}

/// Words as texts, None where the row was refused.
Owned words_of(const Job& job, std::size_t result)
{
    std::vector<Owned> words;
    for (;;) {
        const char* word = cutwater_result_word(job.f.position, static_cast<int>(result),
                                                static_cast<int>(words.size()));
        if (!*word) break;
        words.emplace_back(PyUnicode_FromString(word));
        if (!words.back()) return {};
    }
    Owned made(PyArray_SimpleNew(job.shape.dimensions, job.shape.size, NPY_OBJECT));
    if (!made) return {};
    const double* from = static_cast<const double*>(PyArray_DATA(job.results[result].array()));
    PyObject** to = static_cast<PyObject**>(PyArray_DATA(made.array()));
    for (std::size_t r = 0; r < job.shape.rows; ++r) {
        PyObject* word = from[r] >= 0 && from[r] < static_cast<double>(words.size())
                             ? words[static_cast<std::size_t>(from[r])].get()
                             : Py_None;
        Py_XSETREF(to[r], Py_NewRef(word));
    }
    return made;
}

}  // namespace

bool compute_rows(const Function& f, Argument* arguments, const RowsWanted& wanted, RowsAnswer& answer)
{
    Job job(f);
    job.threads = wanted.threads;
    if (!sort_arguments(job, arguments) || !broadcast(job) || !prepare_results(job, wanted.out)) return false;
    if (wanted.mask) {
        answer.mask = Owned(PyArray_ZEROS(job.shape.dimensions, job.shape.size, NPY_BOOL, 0));
        if (!answer.mask) return false;
        job.mask = static_cast<npy_bool*>(PyArray_DATA(answer.mask.array()));
    }
    if (!walk(job)) return false;
    if (job.fatal != CUTWATER_OK) {
        raise_refused(job.first);
        return false;
    }
    answer.rows = job.shape.rows;
    answer.refused = job.refused;
    answer.first = job.first;
    for (std::size_t j = 0; j < f.results.size(); ++j) {
        if (f.results[j] == CUTWATER_TEXT) job.results[j] = words_of(job, j);
        if (!job.results[j]) return false;
    }
    answer.results = f.results.size() == 1 ? std::move(job.results[0]) : Owned(named_tuple(f, job.results.data()));
    return static_cast<bool>(answer.results);
}

}  // namespace cutwater_door

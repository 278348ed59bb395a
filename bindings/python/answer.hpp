// What the ways of answering share.
#pragma once

#include "argument.hpp"

#include <exception>
#include <new>

namespace cutwater_door {

/// The function's several results in its named tuple; takes the objects over.
PyObject* named_tuple(const Function& function, Owned* objects);

/// C++'s exceptions end here.
template <class Work>
Answer guarded(Work&& work) noexcept
{
    try {
        return work();
    } catch (const std::bad_alloc&) {
        PyErr_NoMemory();
    } catch (const std::exception& error) {
        PyErr_SetString(PyExc_RuntimeError, error.what());
    }
    return {};
}

}  // namespace cutwater_door

// Python: an argument is a borrowed object until the door reads it; an answer is an object, or null with the error set.
%{
#include "fastcall.hpp"
%}

%feature("kwargs", "1");
%typemap(in) cutwater_door::Given "$1.object = $input;"
%typemap(out) cutwater_door::Answer "$result = $1.object; if (!$result) SWIG_fail;"

%include "swig/python_docstrings.i"

%init %{
  // SWIG starts a docstring on a new line; inspect.signature() wants the signature first.
  for (PyMethodDef *method = SwigMethods; method->ml_name; ++method)
    if (method->ml_doc && *method->ml_doc == '\n') ++method->ml_doc;
  if (!cutwater_door::fastcall::install(m, SwigMethods) || !cutwater_door::start(m)) return nullptr;
%}

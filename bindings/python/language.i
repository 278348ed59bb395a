// Python: an argument is a borrowed object until the door reads it; an answer is an object, or null with the error set.
%{
#include "fastcall.hpp"
%}

%rename("%(strip:[cutwater_])s") "";
%feature("kwargs", "1");
%typemap(in) cutwater_door::Given "$1.object = $input;"
%typemap(out) cutwater_door::Answer "$result = $1.object; if (!$result) SWIG_fail;"

%include "python/docstrings.i"

namespace cutwater_door {
Answer rows(int position, Given arguments, Given out, int threads);
Answer convert_unit(Given value, Given from_unit, Given to_unit);
Answer quantity(Given value, Given unit);
Answer read(int position, int input, Given text);
Answer find_function(Given words);
Answer default_of(int position, int input);
Answer question_arguments(int position);
Answer question_results(int position);
Answer self_test();

// The four answers. arguments: a tuple, one an input; standard and spreads likewise; correlations: a tuple of (first, second, r).
Answer working(Given function, Given arguments, int form);
Answer refusal_text(Given refusal, int form);
Answer solve_for(int position, Given arguments, Given unknown, Given target, Given result, double low, double high);
Answer solutions(int position, Given arguments, Given unknown, Given target, Given result, double low, double high);
Answer uncertainty(int position, Given arguments, Given standard, Given spreads, Given correlations, Given result, int monte_carlo,
                   size_t trials, unsigned long long seed, double coverage);
Answer sensitivity(int position, Given arguments, Given result);
}

%init %{
  // SWIG starts a docstring on a new line; inspect.signature() wants the signature first.
  for (PyMethodDef *method = SwigMethods; method->ml_name; ++method)
    if (method->ml_doc && *method->ml_doc == '\n') ++method->ml_doc;
  if (!cutwater_door::fastcall::install(m, SwigMethods) || !cutwater_door::start(m)) return nullptr;
%}

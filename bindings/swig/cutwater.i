// The one interface. A language adds its typemaps for Given and Answer, and the door behind them.
%module cutwater

%{
#include "door.hpp"
%}

// Values that are handed straight on need no wrapper of their own.
%feature("novaluewrapper") cutwater_door::Given;
%feature("novaluewrapper") cutwater_door::Answer;
namespace cutwater_door {
struct Given;
struct Answer;
}

#ifdef SWIGPYTHON
%include "python.i"
#endif

%include "swig/functions.i"

namespace cutwater_door {
Answer rows(int position, Given arguments, Given out, int threads);
Answer convert(Given value, Given from_unit, Given to_unit);
Answer quantity(Given text, Given unit);
Answer read(int position, int input, Given text);
Answer self_test();

// The four answers. arguments: a tuple, one an input; standard and spreads likewise; correlations: a tuple of (first, second, r).
Answer working(Given function, Given arguments, int form);
Answer solve(int position, Given arguments, Given unknown, Given target, Given result, double low, double high);
Answer solutions(int position, Given arguments, Given unknown, Given target, Given result, double low, double high);
Answer uncertainty(int position, Given arguments, Given standard, Given spreads, Given correlations, Given result, int monte_carlo,
                   size_t trials, unsigned long long seed, double coverage);
Answer sensitivity(int position, Given arguments, Given result);
}

%rename(version) cutwater_version;
%rename(interface) cutwater_interface;
%rename(catalogue_json) cutwater_catalogue_json;
%rename(function_count) cutwater_function_count;
%rename(function_name) cutwater_function_name;
%rename(find) cutwater_find;
%rename(input_count) cutwater_input_count;
%rename(input_name) cutwater_input_name;
%rename(input_unit) cutwater_input_unit;
const char *cutwater_version();
int cutwater_interface();
const char *cutwater_catalogue_json();
int cutwater_function_count();
const char *cutwater_function_name(int position);
int cutwater_find(const char *function);
int cutwater_input_count(int position);
const char *cutwater_input_name(int position, int input);
const char *cutwater_input_unit(int position, int input);

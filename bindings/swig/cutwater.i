// The one interface. A language adds language.i: its typemaps for Given and Answer, and the door behind them.
%module cutwater

%{
#include "common/functions.hpp"
%}

// Values that are handed straight on need no wrapper of their own.
%feature("novaluewrapper") cutwater_door::Given;
%feature("novaluewrapper") cutwater_door::Answer;
namespace cutwater_door {
struct Given;
struct Answer;
}

%include "language.i"
%include "swig/functions.i"

%inline %{
namespace cutwater_door {

/// What records say, asked by position; "" where there is none.
inline const char *function_meaning(int position)
{
    cutwater_function_info info{};
    info.size = sizeof info;
    return cutwater_describe_function(position, &info) == CUTWATER_OK ? info.meaning : "";
}
inline const char *question_name(int position)
{
    cutwater_question_info info{};
    info.size = sizeof info;
    return cutwater_describe_question(position, &info) == CUTWATER_OK ? info.name : "";
}
inline const char *question_meaning(int position)
{
    cutwater_question_info info{};
    info.size = sizeof info;
    return cutwater_describe_question(position, &info) == CUTWATER_OK ? info.meaning : "";
}

}  // namespace cutwater_door
%}
int cutwater_question_count();

const char *cutwater_version();
int cutwater_interface();
const char *cutwater_catalogue_json();
int cutwater_function_count();
const char *cutwater_function_name(int position);
int cutwater_find(const char *function);
int cutwater_input_count(int position);
const char *cutwater_input_name(int position, int input);
const char *cutwater_input_unit(int position, int input);

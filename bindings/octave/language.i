// Octave: an argument and an answer are Octave's own values. The functions go by cutwater_NAME; the package's files, which hold
// the help, call them.
%{
#include "given.hpp"
%}

%feature("compactdefaultargs");
// Octave knows them globally: a plain find or version would hide its own.
%rename("%(regex:/^(cutwater_)?(.*)$/cutwater_\\2/)s") "";
%typemap(in) cutwater_door::Given "$1.value = $input;"
%typemap(out) cutwater_door::Answer "$result = $1.value;"

namespace cutwater_door {
Answer question(Given name, Given arguments);
}

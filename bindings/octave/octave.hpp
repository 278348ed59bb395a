// Octave's headers, which our own warnings are not for.
#pragma once

#pragma GCC system_header

#include <octave/oct.h>

#include <octave/Cell.h>
#include <octave/ov-struct.h>

// The flat API in C++11; the library that was linked is the one whose header was read.
#include <cutwater/cutwater.h>

#if __cplusplus > 201402L
#error "cutwater::c asks for no C++ of its own"
#endif

int main() { return cutwater_interface() == CUTWATER_INTERFACE && cutwater_self_test(nullptr) == CUTWATER_OK ? 0 : 1; }

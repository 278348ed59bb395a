# The same for 32-bit Windows. Its numbers are SSE2's, since the old unit's wider registers would give other bits; what calls the DLL
# keeps the stack aligned to 4 bytes only, so that every function aligns its own.
set(CMAKE_SYSTEM_PROCESSOR i686)
set(cutwater_triple i686-w64-mingw32)
find_program(CUTWATER_WINE NAMES wine PATHS /usr/lib/wine NO_DEFAULT_PATH)  # the loader for 32 bits
include(${CMAKE_CURRENT_LIST_DIR}/mingw-w64.cmake)
set(cutwater_sse " -msse2 -mfpmath=sse -mstackrealign")
string(APPEND CMAKE_C_FLAGS_INIT ${cutwater_sse})
string(APPEND CMAKE_CXX_FLAGS_INIT ${cutwater_sse})

# Builds for 64-bit Windows with Debian's mingw-w64. The generator never runs in such a build: give it a native build's products.
#   cmake --preset windows -DCUTWATER_GENERATED=$PWD/build/generated
set(CMAKE_SYSTEM_NAME Windows)
if(NOT cutwater_triple)
  set(CMAKE_SYSTEM_PROCESSOR x86_64)
  set(cutwater_triple x86_64-w64-mingw32)
endif()

# The posix variant: its C++ library has threads.
set(CMAKE_C_COMPILER ${cutwater_triple}-gcc-posix)
set(CMAKE_CXX_COMPILER ${cutwater_triple}-g++-posix)
set(CMAKE_RC_COMPILER ${cutwater_triple}-windres)

set(CMAKE_FIND_ROOT_PATH /usr/${cutwater_triple})
set(CMAKE_FIND_ROOT_PATH_MODE_PROGRAM NEVER)
set(CMAKE_FIND_ROOT_PATH_MODE_LIBRARY ONLY)
set(CMAKE_FIND_ROOT_PATH_MODE_INCLUDE ONLY)
set(CMAKE_FIND_ROOT_PATH_MODE_PACKAGE ONLY)

# GCC on Windows keeps the stack aligned to 16 bytes only, and yet moves wider vectors to it as if it were aligned to 32 or 64
# (GCC bug 54412): let the assembler write the moves that take any address.
set(CMAKE_C_FLAGS_INIT -Wa,-muse-unaligned-vector-move)
set(CMAKE_CXX_FLAGS_INIT -Wa,-muse-unaligned-vector-move)
# Nothing beside the DLL, the add-in or a test but what Windows has.
foreach(kind EXE SHARED MODULE)
  set(CMAKE_${kind}_LINKER_FLAGS_INIT "-static -Wl,--strip-all")
endforeach()

# Boost, fmt and Catch2 are taken as headers from the native packages, through a folder that holds nothing else of /usr/include.
set(CUTWATER_NATIVE_HEADERS /usr/include CACHE PATH "Where the boost, fmt and catch2 folders of headers lie")
set(cutwater_headers ${CMAKE_BINARY_DIR}/native_headers)
foreach(library boost fmt catch2)
  if(EXISTS ${CUTWATER_NATIVE_HEADERS}/${library} AND NOT EXISTS ${cutwater_headers}/${library})
    file(MAKE_DIRECTORY ${cutwater_headers})
    file(CREATE_LINK ${CUTWATER_NATIVE_HEADERS}/${library} ${cutwater_headers}/${library} SYMBOLIC)
  endif()
endforeach()
set(Boost_INCLUDE_DIR ${cutwater_headers} CACHE PATH "")
foreach(library fmt Catch2)
  set(${library}_DIR ${CMAKE_CURRENT_LIST_DIR}/header_packages CACHE PATH "")
endforeach()

find_program(CUTWATER_WINE NAMES wine64 wine PATHS /usr/lib/wine)
if(CUTWATER_WINE)
  set(CMAKE_CROSSCOMPILING_EMULATOR ${CUTWATER_WINE})
endif()

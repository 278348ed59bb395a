# Flags that every target of ours takes.
add_library(cutwater_flags INTERFACE)
target_compile_options(cutwater_flags INTERFACE
  -Wall -Wextra -Wpedantic -Wconversion -Wshadow
  $<$<BOOL:${CUTWATER_WERROR}>:-Werror>
  # Judging a row uses & where && would branch.
  $<$<COMPILE_LANG_AND_ID:CXX,Clang>:-Wno-bitwise-instead-of-logical>
  # A loop that clang does not vectorise is slower, not wrong.
  $<$<COMPILE_LANG_AND_ID:CXX,Clang>:-Wno-pass-failed>
  # One value for one input at every door: a contracted multiply-add would give other bits in the vector loops.
  -ffp-contract=off
  # Neither changes a bit of a result; both are needed to compute a row first and judge it after.
  -fno-trapping-math -fno-math-errno)
# Boost.Math answers what it cannot compute with NaN, which every call judges, and never throws.
foreach(error DOMAIN POLE OVERFLOW EVALUATION ROUNDING INDETERMINATE_RESULT)
  target_compile_definitions(cutwater_flags INTERFACE BOOST_MATH_${error}_ERROR_POLICY=ignore_error)
endforeach()
target_link_libraries(cutwater_flags INTERFACE Threads::Threads)
target_include_directories(cutwater_flags INTERFACE ${PROJECT_SOURCE_DIR}/src ${PROJECT_SOURCE_DIR}/include)
target_include_directories(cutwater_flags SYSTEM INTERFACE ${Boost_INCLUDE_DIRS}
  $<TARGET_PROPERTY:fmt::fmt-header-only,INTERFACE_INCLUDE_DIRECTORIES>)
# What the tests reach is counted in the library's own objects; optimising would move branches about.
add_library(cutwater_counted INTERFACE)
if(CUTWATER_COVERAGE)
  target_compile_options(cutwater_counted INTERFACE --coverage -O1)
  target_compile_definitions(cutwater_counted INTERFACE CUTWATER_ONE_WIDTH)
endif()
# The families hold the array form's loops; a debug build leaves them as they are.
# GCC puts a loop into vectors only when all that it calls is inlined into it, which clones stand in the way of, and when no
# condition is copied to where its outcome is known: each of these passes would leave branches. A word is the same for all rows:
# of a long loop too, one is made for each of its ways. Scheduled before registers are given out, and with an eye on how many
# there are, the four vectors of rows that a loop takes abreast spill half as much; not across blocks, which costs single calls.
set(cutwater_vector_flags $<$<NOT:$<OR:$<CONFIG:Debug>,$<BOOL:${CUTWATER_COVERAGE}>>>:-O3>
  $<$<CXX_COMPILER_ID:GNU>:-fno-ipa-cp;-fno-ipa-sra;-fno-thread-jumps;-fno-tree-pre;--param=max-unswitch-insns=300>
  $<$<CXX_COMPILER_ID:GNU>:-fschedule-insns;-fsched-pressure;-fno-sched-interblock>
  # Under clang's sanitizers: checks of what pointers point to, of which the address sanitizer sees what matters, and which
  # would take half of the compiling.
  $<$<CXX_COMPILER_ID:Clang>:-fno-sanitize=null,alignment,vptr,object-size>)

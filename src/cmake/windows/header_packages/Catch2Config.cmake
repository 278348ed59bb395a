# Catch2 as a header, for a cross build: see mingw-w64.cmake.
add_library(Catch2::Catch2 INTERFACE IMPORTED)
target_include_directories(Catch2::Catch2 INTERFACE ${Boost_INCLUDE_DIR})
add_library(cutwater_catch_main STATIC EXCLUDE_FROM_ALL ${PROJECT_SOURCE_DIR}/tests/main.cpp)
target_link_libraries(cutwater_catch_main PUBLIC Catch2::Catch2)
add_library(Catch2::Catch2WithMain ALIAS cutwater_catch_main)

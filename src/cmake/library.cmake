# The catalogue, the generator that links it, and the library that the generator's products complete.
file(GLOB family_sources CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/src/formulas/*/family.cpp)
if(NOT CUTWATER_FAMILIES STREQUAL all)
  list(JOIN CUTWATER_FAMILIES | wanted)
  list(FILTER family_sources INCLUDE REGEX "/(${wanted})/family.cpp$")
endif()
file(GLOB core_sources CONFIGURE_DEPENDS
  ${PROJECT_SOURCE_DIR}/src/units/*.cpp ${PROJECT_SOURCE_DIR}/src/catalogue/*.cpp
  ${PROJECT_SOURCE_DIR}/src/call/*.cpp ${PROJECT_SOURCE_DIR}/src/answers/*.cpp)
file(GLOB capi_sources CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/src/capi/*.cpp)
file(GLOB generator_sources CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/src/generate/*.cpp)

add_library(cutwater_core OBJECT ${core_sources} ${family_sources})
target_link_libraries(cutwater_core PUBLIC cutwater_flags PRIVATE cutwater_counted)
target_compile_definitions(cutwater_core PUBLIC CUTWATER_BUILDING CUTWATER_VERSION="${PROJECT_VERSION}")
set_source_files_properties(${family_sources} PROPERTIES COMPILE_OPTIONS "${cutwater_vector_flags}")
set_source_files_properties(${PROJECT_SOURCE_DIR}/src/units/format.cpp PROPERTIES COMPILE_DEFINITIONS FMT_HEADER_ONLY=1)

# A family is a folder: the catalogue lists what is there, and the generator writes a file of bodies for each.
set(cutwater_families)
set(family_declarations)
set(family_list)
foreach(source ${family_sources})
  cmake_path(GET source PARENT_PATH folder)
  cmake_path(GET folder FILENAME family)
  list(APPEND cutwater_families ${family})
  string(APPEND family_declarations "extern const Family ${family}_family;\n")
  string(APPEND family_list "    &${family}_family,\n")
endforeach()
configure_file(${PROJECT_SOURCE_DIR}/src/catalogue/family_folders.cpp.in ${PROJECT_BINARY_DIR}/family_folders.cpp @ONLY)
target_sources(cutwater_core PRIVATE ${PROJECT_BINARY_DIR}/family_folders.cpp)
set(cutwater_body_names ${cutwater_families})
list(TRANSFORM cutwater_body_names PREPEND capi/)
list(TRANSFORM cutwater_body_names APPEND .cpp)
list(APPEND cutwater_body_names capi/catalogue_json.cpp)

set_property(GLOBAL PROPERTY cutwater_product_files "")
# Tells what the generator makes, below the folder of products, so that Ninja knows who makes it.
function(cutwater_makes)
  set_property(GLOBAL APPEND PROPERTY cutwater_product_files ${ARGN})
endfunction()

if(CUTWATER_GENERATED)
  set(cutwater_products ${CUTWATER_GENERATED})
else()
  set(cutwater_products ${PROJECT_BINARY_DIR}/generated)
  # A door adds the sources that make its own products; generated.cmake runs it when all are known.
  add_executable(cutwater-generate ${generator_sources} $<TARGET_OBJECTS:cutwater_core>)
  target_link_libraries(cutwater-generate PRIVATE cutwater_flags)
  target_compile_options(cutwater-generate PRIVATE $<$<CONFIG:Release>:-O1>)  # it runs for a moment, once
  target_compile_definitions(cutwater-generate PRIVATE CUTWATER_BUILDING CUTWATER_VERSION="${PROJECT_VERSION}")
endif()
cutwater_makes(${cutwater_body_names} catalogue.json include/cutwater/cutwater.h include/cutwater/cutwater.hpp
  include/cutwater/function_types.hpp include/cutwater/status.h tests/flat_calls.c tests/typed_calls.cpp)
foreach(family ${cutwater_families})
  cutwater_makes(include/cutwater/families/${family}.h include/cutwater/families/${family}.hpp)
endforeach()
list(TRANSFORM cutwater_body_names PREPEND ${cutwater_products}/)

add_library(cutwater SHARED ${capi_sources} ${cutwater_body_names} $<TARGET_OBJECTS:cutwater_core>)
add_dependencies(cutwater cutwater_generated)
target_link_libraries(cutwater PRIVATE cutwater_flags cutwater_counted)
target_compile_definitions(cutwater PRIVATE CUTWATER_BUILDING CUTWATER_VERSION="${PROJECT_VERSION}")
# The freshly made header before the committed one.
target_include_directories(cutwater BEFORE PRIVATE ${cutwater_products}/include)
target_include_directories(cutwater INTERFACE $<BUILD_INTERFACE:${cutwater_products}/include>
  $<BUILD_INTERFACE:${PROJECT_SOURCE_DIR}/include>)
if(WIN32)
  # The import library under the name that both linkers look for, and the version that a file's properties show.
  set_target_properties(cutwater PROPERTIES PREFIX "" IMPORT_PREFIX "" IMPORT_SUFFIX .lib)
  cutwater_version_resource(cutwater cutwater.dll "cutwater: checked pump calculations")
endif()
if(UNIX AND NOT APPLE)  # nothing of Boost's or the compiler's leaves the library
  target_link_options(cutwater PRIVATE -Wl,--version-script=${PROJECT_SOURCE_DIR}/src/capi/exports.map)
  set_target_properties(cutwater PROPERTIES LINK_DEPENDS ${PROJECT_SOURCE_DIR}/src/capi/exports.map)
endif()
# Two programs may share a library whose interface they both know, whatever its version: the soname is the interface.
file(STRINGS ${PROJECT_SOURCE_DIR}/include/cutwater/base.h interface_line REGEX "^#define CUTWATER_INTERFACE [0-9]+$")
string(REGEX REPLACE "[^0-9]" "" CUTWATER_INTERFACE "${interface_line}")
set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/include/cutwater/base.h)
set_target_properties(cutwater PROPERTIES SOVERSION ${CUTWATER_INTERFACE} VERSION ${CUTWATER_INTERFACE}.${PROJECT_VERSION} EXPORT_NAME c)

# What a project of others links, whether it finds an installation or takes this tree as a part of its own.
add_library(cutwater_typed INTERFACE)
target_link_libraries(cutwater_typed INTERFACE cutwater Boost::headers)
target_compile_features(cutwater_typed INTERFACE cxx_std_20)
add_library(cutwater::c ALIAS cutwater)
add_library(cutwater::cutwater ALIAS cutwater_typed)

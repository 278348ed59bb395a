# Runs the generator: last, when every door has said what it makes and from what.
if(CUTWATER_GENERATED)
  add_custom_target(cutwater_generated)
  return()
endif()
get_property(files GLOBAL PROPERTY cutwater_product_files)
list(TRANSFORM files PREPEND ${cutwater_products}/)
add_custom_command(OUTPUT ${PROJECT_BINARY_DIR}/generated.stamp
  BYPRODUCTS ${files}
  COMMAND cutwater-generate ${cutwater_products}
  COMMAND ${CMAKE_COMMAND} -E touch ${PROJECT_BINARY_DIR}/generated.stamp
  DEPENDS cutwater-generate COMMENT "Generating from the catalogue")
add_custom_target(cutwater_generated DEPENDS ${PROJECT_BINARY_DIR}/generated.stamp)
# Brings the committed products up to date with the records.
add_custom_target(regenerate
  COMMAND ${CMAKE_COMMAND} -DFROM=${cutwater_products} -DTO=${PROJECT_SOURCE_DIR} -P ${PROJECT_SOURCE_DIR}/src/cmake/copy_products.cmake
  DEPENDS cutwater_generated)
if(TARGET validation)  # the record in docs/validation, where tests are built
  add_dependencies(regenerate validation)
endif()

# A door is bindings/NAME and tests/doors/NAME. In bindings/NAME/CMakeLists.txt:
#   cutwater_door(NAME GENERATE SOURCE... PRODUCTS FILE...)
# GENERATE: sources that make the door's products from the catalogue, linked into the generator.
# PRODUCTS: what they make, below the folder of products.
function(cutwater_door name)
  cmake_parse_arguments(PARSE_ARGV 1 door "" "" "GENERATE;PRODUCTS")
  list(TRANSFORM door_GENERATE PREPEND ${CMAKE_CURRENT_SOURCE_DIR}/)
  if(TARGET cutwater-generate)
    target_sources(cutwater-generate PRIVATE ${door_GENERATE})
  endif()
  cutwater_makes(${door_PRODUCTS})
endfunction()

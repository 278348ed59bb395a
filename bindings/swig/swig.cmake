# What the languages that SWIG serves share: the declarations of every function, made from the catalogue.
include_guard(GLOBAL)
if(TARGET cutwater-generate)
  target_sources(cutwater-generate PRIVATE ${CMAKE_CURRENT_LIST_DIR}/generate/interface.cpp)
endif()
cutwater_makes(swig/functions.i)

# The zip for Windows, made by a native build from a cross build's products and its own: -DCUTWATER_WINDOWS=FOLDER of the cross build.
set(CUTWATER_WINDOWS "" CACHE PATH "A cross build (preset windows) whose products go into the packages as a zip for Windows")
if(NOT CUTWATER_WINDOWS OR NOT TARGET calc_portable)
  return()
endif()
find_package(Python3 REQUIRED COMPONENTS Interpreter)
set(windows_zip ${PROJECT_BINARY_DIR}/cutwater-${PROJECT_VERSION}-windows-x64.zip)
add_custom_target(windows_zip
  COMMAND ${Python3_EXECUTABLE} -B ${PROJECT_SOURCE_DIR}/src/release/windows_zip.py --source ${PROJECT_SOURCE_DIR} --native ${PROJECT_BINARY_DIR}
    --windows ${CUTWATER_WINDOWS} --target ${windows_zip}
  DEPENDS calc_portable workbooks site cutwater_generated
  COMMENT "Zip for Windows" VERBATIM)
cutwater_release(${windows_zip} windows_zip)

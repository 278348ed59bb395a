# What runs lies in one folder, since Windows looks for a DLL beside the program.
set(CMAKE_RUNTIME_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}/bin)

# cutwater_version_resource(TARGET FILE_NAME DESCRIPTION): what Windows shows among a file's properties.
enable_language(RC)
function(cutwater_version_resource target file_name description)
  string(REPLACE . , version_numbers ${PROJECT_VERSION}.0)
  set(resource ${CMAKE_CURRENT_BINARY_DIR}/${target}_version.rc)
  configure_file(${PROJECT_SOURCE_DIR}/src/cmake/windows/version.rc.in ${resource} @ONLY)
  target_sources(${target} PRIVATE ${resource})
endfunction()


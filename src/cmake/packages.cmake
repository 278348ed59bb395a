# What a release consists of. Whoever installs something says beside its install() that it is a Debian package:
#   cutwater_package(COMPONENT NAME SUMMARY [DEPENDS PACKAGE...] [LIBRARIES FOLDER...] [SCRIPTS FILE...] [TARGETS TARGET...] [ANY_MACHINE])
# (LIBRARIES: folders of shared libraries that the loader does not search by itself; SCRIPTS: of the package, such as prerm;
# TARGETS: what makes the files)
# and whoever makes a file that people take as it is, that it goes along:
#   cutwater_release(FILE TARGET...)
# `packages` makes them all into ${PROJECT_BINARY_DIR}/packages, with their checksums.
function(cutwater_package component name summary)
  cmake_parse_arguments(PARSE_ARGV 3 package "ANY_MACHINE" "" "DEPENDS;LIBRARIES;SCRIPTS;TARGETS")
  list(JOIN package_DEPENDS ", " depends)
  string(TOUPPER ${component} upper)
  set_property(GLOBAL APPEND PROPERTY cutwater_components ${component})
  set_property(GLOBAL APPEND PROPERTY cutwater_library_folders ${package_LIBRARIES})
  set_property(GLOBAL APPEND PROPERTY cutwater_release_targets ${package_TARGETS})
  set(settings "set(CPACK_DEBIAN_${upper}_PACKAGE_NAME ${name})
set(CPACK_DEBIAN_${upper}_DESCRIPTION \"${summary}\")
set(CPACK_DEBIAN_${upper}_PACKAGE_CONTROL_EXTRA \"${package_SCRIPTS}\")
set(CPACK_DEBIAN_${upper}_PACKAGE_DEPENDS \"${depends}\")\n")
  if(package_ANY_MACHINE)
    string(APPEND settings "set(CPACK_DEBIAN_${upper}_PACKAGE_ARCHITECTURE all)\nset(CPACK_DEBIAN_${upper}_PACKAGE_SHLIBDEPS OFF)\n")
  endif()
  install(FILES ${PROJECT_SOURCE_DIR}/NOTICE DESTINATION share/doc/${name} COMPONENT ${component} EXCLUDE_FROM_ALL)
  install(FILES ${PROJECT_SOURCE_DIR}/LICENSE DESTINATION share/doc/${name} RENAME copyright COMPONENT ${component} EXCLUDE_FROM_ALL)
  set_property(GLOBAL APPEND_STRING PROPERTY cutwater_package_settings "${settings}")
endfunction()

function(cutwater_release file)
  set_property(GLOBAL APPEND PROPERTY cutwater_release_files ${file})
  set_property(GLOBAL APPEND PROPERTY cutwater_release_targets ${ARGN})
endfunction()

# Called once, after everything has said what it has.
function(cutwater_make_packages)
  get_property(components GLOBAL PROPERTY cutwater_components)
  get_property(settings GLOBAL PROPERTY cutwater_package_settings)
  get_property(files GLOBAL PROPERTY cutwater_release_files)
  get_property(targets GLOBAL PROPERTY cutwater_release_targets)
  get_property(libraries GLOBAL PROPERTY cutwater_library_folders)
  set(folder ${PROJECT_BINARY_DIR}/packages)

  # Read by cpack itself, so that a summary may hold anything.
  file(GENERATE OUTPUT ${PROJECT_BINARY_DIR}/release_files.cmake CONTENT "set(files ${files})\n")
  file(GENERATE OUTPUT ${PROJECT_BINARY_DIR}/package_settings.cmake CONTENT "${settings}")
  set(CPACK_PROJECT_CONFIG_FILE ${PROJECT_BINARY_DIR}/package_settings.cmake)
  set(CPACK_GENERATOR DEB)
  set(CPACK_COMPONENTS_ALL ${components})
  set(CPACK_PACKAGE_NAME cutwater)
  set(CPACK_PACKAGE_VENDOR cutwater)
  set(CPACK_PACKAGE_CONTACT "cutwater <cutwater@localhost>")
  set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "Checked, unit-safe pump calculations")
  set(CPACK_PACKAGE_DIRECTORY ${folder})
  set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
  set(CPACK_STRIP_FILES ON)
  set(CPACK_DEB_COMPONENT_INSTALL ON)
  set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
  set(CPACK_DEBIAN_PACKAGE_SECTION science)
  set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
  set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS_PRIVATE_DIRS ${PROJECT_BINARY_DIR} ${libraries})
  include(CPack)

  add_custom_target(packages
    COMMAND ${CMAKE_COMMAND} -E rm -rf ${folder}
    COMMAND ${CMAKE_COMMAND} -E make_directory ${folder}
    COMMAND ${CMAKE_CPACK_COMMAND} --config ${PROJECT_BINARY_DIR}/CPackConfig.cmake
    COMMAND ${CMAKE_COMMAND} -DFILES=${PROJECT_BINARY_DIR}/release_files.cmake -DTO=${folder} -DSOURCE=${PROJECT_SOURCE_DIR}
            -P ${PROJECT_SOURCE_DIR}/src/cmake/collect_release.cmake
    DEPENDS cutwater ${targets}
    WORKING_DIRECTORY ${PROJECT_BINARY_DIR}
    COMMENT "Packages, with their checksums, in ${folder}" VERBATIM)
endfunction()

# What an installation holds: the library, its headers as this build generated them, and how CMake and pkg-config find them.
include(GNUInstallDirs)
include(CMakePackageConfigHelpers)

set(cutwater_config_folder ${CMAKE_INSTALL_LIBDIR}/cmake/cutwater)

install(TARGETS cutwater EXPORT cutwater_targets
  RUNTIME COMPONENT runtime
  LIBRARY COMPONENT runtime NAMELINK_COMPONENT development
  ARCHIVE COMPONENT development
  INCLUDES DESTINATION ${CMAKE_INSTALL_INCLUDEDIR})
install(DIRECTORY ${PROJECT_SOURCE_DIR}/include/cutwater DESTINATION ${CMAKE_INSTALL_INCLUDEDIR} COMPONENT development)
# After the committed ones, which may be older than the records.
install(DIRECTORY ${cutwater_products}/include/cutwater DESTINATION ${CMAKE_INSTALL_INCLUDEDIR} COMPONENT development)
install(FILES ${cutwater_products}/catalogue.json DESTINATION ${CMAKE_INSTALL_DATADIR}/cutwater COMPONENT development)
install(FILES LICENSE NOTICE DESTINATION ${CMAKE_INSTALL_DOCDIR})

install(EXPORT cutwater_targets NAMESPACE cutwater:: FILE cutwater-targets.cmake DESTINATION ${cutwater_config_folder} COMPONENT development)
configure_package_config_file(${CMAKE_CURRENT_LIST_DIR}/cutwater-config.cmake.in ${PROJECT_BINARY_DIR}/cutwater-config.cmake
  INSTALL_DESTINATION ${cutwater_config_folder} NO_SET_AND_CHECK_MACRO)
write_basic_package_version_file(${PROJECT_BINARY_DIR}/cutwater-config-version.cmake COMPATIBILITY SameMajorVersion)
install(FILES ${PROJECT_BINARY_DIR}/cutwater-config.cmake ${PROJECT_BINARY_DIR}/cutwater-config-version.cmake
  DESTINATION ${cutwater_config_folder} COMPONENT development)

# Relative to the file itself, so that the installation may be moved as a whole.
file(RELATIVE_PATH cutwater_up_to_prefix ${CMAKE_INSTALL_FULL_LIBDIR}/pkgconfig ${CMAKE_INSTALL_PREFIX})
file(RELATIVE_PATH cutwater_relative_include ${CMAKE_INSTALL_PREFIX} ${CMAKE_INSTALL_FULL_INCLUDEDIR})
file(RELATIVE_PATH cutwater_relative_lib ${CMAKE_INSTALL_PREFIX} ${CMAKE_INSTALL_FULL_LIBDIR})
configure_file(${CMAKE_CURRENT_LIST_DIR}/cutwater.pc.in ${PROJECT_BINARY_DIR}/cutwater.pc @ONLY)
install(FILES ${PROJECT_BINARY_DIR}/cutwater.pc DESTINATION ${CMAKE_INSTALL_LIBDIR}/pkgconfig COMPONENT development)

cutwater_package(runtime libcutwater${CUTWATER_INTERFACE} "Checked, unit-safe pump calculations: the library")
cutwater_package(development libcutwater-dev "Checked, unit-safe pump calculations: headers for C and C++"
  DEPENDS "libcutwater${CUTWATER_INTERFACE} (= ${PROJECT_VERSION})" libboost-dev)

# The documents, as they stand and as a site when one was made, with the example plant.
install(DIRECTORY docs/ DESTINATION ${CMAKE_INSTALL_DOCDIR}/docs COMPONENT documents PATTERN site EXCLUDE)
install(FILES README.md DESTINATION ${CMAKE_INSTALL_DOCDIR} COMPONENT documents)
install(DIRECTORY examples/ DESTINATION ${CMAKE_INSTALL_DOCDIR}/examples COMPONENT documents PATTERN __pycache__ EXCLUDE)
install(DIRECTORY ${PROJECT_BINARY_DIR}/site DESTINATION ${CMAKE_INSTALL_DOCDIR} COMPONENT documents OPTIONAL)
add_custom_target(site COMMAND ${PROJECT_SOURCE_DIR}/docs/site/make ${PROJECT_BINARY_DIR}/site)
set_property(GLOBAL APPEND PROPERTY cutwater_release_targets site)
cutwater_package(documents cutwater-doc "Checked, unit-safe pump calculations: documents and example plant" ANY_MACHINE)

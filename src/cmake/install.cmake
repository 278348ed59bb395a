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
install(FILES LICENSE NOTICE DESTINATION ${CMAKE_INSTALL_DOCDIR} COMPONENT runtime)

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

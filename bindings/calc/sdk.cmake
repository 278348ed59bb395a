# LibreOffice's own tools and libraries for building a component.
find_program(CUTWATER_SOFFICE NAMES soffice libreoffice)
find_path(CUTWATER_OFFICE_PROGRAM NAMES types.rdb PATHS /usr/lib/libreoffice/program /usr/lib64/libreoffice/program)
cmake_path(GET CUTWATER_OFFICE_PROGRAM PARENT_PATH office)
find_path(CUTWATER_OFFICE_SDK NAMES lib/libuno_sal.so PATHS ${office}/sdk)
find_program(CUTWATER_UNOIDL_WRITE unoidl-write HINTS ${CUTWATER_OFFICE_SDK}/bin)
find_program(CUTWATER_CPPUMAKER cppumaker HINTS ${CUTWATER_OFFICE_SDK}/bin)
find_path(CUTWATER_OFFICE_HEADERS NAMES cppuhelper/implbase2.hxx HINTS ${CUTWATER_OFFICE_SDK}/include PATH_SUFFIXES libreoffice)
find_path(CUTWATER_OFFICE_PLATFORM_HEADERS NAMES sal/typesizes.h
  HINTS ${CUTWATER_OFFICE_SDK}/include ${CUTWATER_OFFICE_HEADERS}
  PATHS /usr/include/${CMAKE_LIBRARY_ARCHITECTURE}/libreoffice)
set(CUTWATER_HAVE_OFFICE_SDK FALSE)
if(CUTWATER_OFFICE_PROGRAM AND CUTWATER_OFFICE_SDK AND CUTWATER_UNOIDL_WRITE AND CUTWATER_CPPUMAKER AND
    CUTWATER_OFFICE_HEADERS AND CUTWATER_OFFICE_PLATFORM_HEADERS)
  set(CUTWATER_HAVE_OFFICE_SDK TRUE)
endif()

# Every outside library is found here, once. All are Debian 12 packages (resources/packages.txt).
find_package(Threads REQUIRED)
find_package(PkgConfig REQUIRED)
find_package(Eigen3 3.4 REQUIRED NO_MODULE)
find_package(spdlog REQUIRED)
find_package(nlohmann_json 3.11 REQUIRED)
find_package(tl-expected REQUIRED)
find_package(CLI11 REQUIRED)
find_package(QCustomPlotQt6 REQUIRED)
find_package(ZXing REQUIRED)
find_package(OpenCV REQUIRED COMPONENTS core imgproc)
find_program(PITHWARD_LRELEASE lrelease HINTS /usr/lib/qt6/bin REQUIRED)
find_program(PITHWARD_LUPDATE lupdate HINTS /usr/lib/qt6/bin REQUIRED)
find_package(Qt6 6.4 REQUIRED COMPONENTS Core Gui Widgets DBus PrintSupport Sql Svg Concurrent Test)
pkg_check_modules(vips REQUIRED IMPORTED_TARGET vips)
pkg_check_modules(libarchive REQUIRED IMPORTED_TARGET libarchive)

find_path(LIBCSV_INCLUDE_DIR csv.h REQUIRED)
find_library(LIBCSV_LIBRARY csv REQUIRED)
add_library(libcsv::libcsv UNKNOWN IMPORTED)
set_target_properties(libcsv::libcsv PROPERTIES
  IMPORTED_LOCATION ${LIBCSV_LIBRARY}
  INTERFACE_INCLUDE_DIRECTORIES ${LIBCSV_INCLUDE_DIR})

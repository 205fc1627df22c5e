# One target carries the compiler settings of all our code.
add_library(pithward_settings INTERFACE)
add_library(pithward::settings ALIAS pithward_settings)
target_compile_options(pithward_settings INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow -Wnon-virtual-dtor -Wold-style-cast -Woverloaded-virtual
  -Wimplicit-fallthrough
  # GCC 12 sees overlapping copies in std::string where there are none (its bug 105651).
  $<$<CXX_COMPILER_ID:GNU>:-Wno-restrict>
  # A measurement is the same on every machine: no fused multiply-add, no fast mathematics.
  -ffp-contract=off)
if(PITHWARD_WERROR)
  target_compile_options(pithward_settings INTERFACE -Werror)
endif()
target_include_directories(pithward_settings INTERFACE ${CMAKE_SOURCE_DIR})

# The same and warnings on conversions that lose digits: for code without OpenCV, whose matrix expressions convert at every use.
add_library(pithward_exact_settings INTERFACE)
add_library(pithward::exact_settings ALIAS pithward_exact_settings)
target_link_libraries(pithward_exact_settings INTERFACE pithward::settings)
target_compile_options(pithward_exact_settings INTERFACE -Wconversion -Wno-sign-conversion -Wdouble-promotion)

# One target carries the compiler settings of all our code.
add_library(pithward_settings INTERFACE)
add_library(pithward::settings ALIAS pithward_settings)
target_compile_options(pithward_settings INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wno-sign-conversion -Wnon-virtual-dtor -Wold-style-cast -Woverloaded-virtual
  -Wdouble-promotion -Wimplicit-fallthrough
  # A measurement is the same on every machine: no fused multiply-add, no fast mathematics.
  -ffp-contract=off)
if(PITHWARD_WERROR)
  target_compile_options(pithward_settings INTERFACE -Werror)
endif()
target_include_directories(pithward_settings INTERFACE ${CMAKE_SOURCE_DIR})

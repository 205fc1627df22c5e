# Compiles the files of a folder of the second level and those below as one. Most of what a file costs is headers and templates that
# its neighbours use too, and the sanitizers make that several times as dear. Names in unnamed namespaces differ for this.
# The debug build takes the program file by file: quicker after a change of one file, and it notices an include that is missing.

# Wood models are alike by design, and so are their names.
set(separate_folders boundary/wood)

function(compile_whole_folders directory)
  get_property(targets DIRECTORY ${directory} PROPERTY BUILDSYSTEM_TARGETS)
  foreach(target IN LISTS targets)
    get_target_property(type ${target} TYPE)
    if(type MATCHES "LIBRARY|EXECUTABLE" AND NOT type STREQUAL INTERFACE_LIBRARY)
      compile_whole_folders_of(${target})
    endif()
  endforeach()
  get_property(children DIRECTORY ${directory} PROPERTY SUBDIRECTORIES)
  foreach(child IN LISTS children)
    compile_whole_folders(${child})
  endforeach()
endfunction()

function(compile_whole_folders_of target)
  set_target_properties(${target} PROPERTIES UNITY_BUILD ON UNITY_BUILD_MODE GROUP)
  get_target_property(sources ${target} SOURCES)
  get_target_property(top ${target} SOURCE_DIR)
  foreach(source IN LISTS sources)
    cmake_path(ABSOLUTE_PATH source BASE_DIRECTORY ${top})
    cmake_path(GET source PARENT_PATH folder)
    if(source MATCHES "\\.cpp$" AND NOT folder MATCHES "/${separate_folders}$")
      cmake_path(RELATIVE_PATH folder BASE_DIRECTORY ${CMAKE_SOURCE_DIR} OUTPUT_VARIABLE group)
      string(REGEX MATCH "^[^/]+/[^/]+" group "${group}/.")
      string(MAKE_C_IDENTIFIER "${group}" group)
      set_source_files_properties(${source} TARGET_DIRECTORY ${target} PROPERTIES UNITY_GROUP "${group}")
    endif()
  endforeach()
endfunction()

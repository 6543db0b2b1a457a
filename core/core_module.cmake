# SPDX-License-Identifier: Apache-2.0

# add_precompiled_headers(NAME [LIBRARIES targets...] [HEADERS ...])
#
# What everybody includes, compiled once. Eigen, GoogleTest and the standard library are most of what a file takes to
# compile. It never stands in for an include: the header check compiles each header without it.
function(add_precompiled_headers name)
  cmake_parse_arguments(arg "" "" "LIBRARIES;HEADERS" ${ARGN})
  add_library(${name} OBJECT ${PROJECT_SOURCE_DIR}/core/common_headers.cpp)
  target_link_libraries(${name} PRIVATE baywright_build_rules ${arg_LIBRARIES})
  target_compile_options(${name} PRIVATE -fpch-preprocess)
  target_precompile_headers(${name} PRIVATE
    <Eigen/Core> <Eigen/Geometry> <algorithm> <array> <cmath> <functional> <map> <memory> <optional> <string> <string_view>
    <tl/expected.hpp> <utility> <variant> <vector> ${arg_HEADERS})
endfunction()

# use_precompiled_headers(TARGET FROM): the target's sources begin with those of FROM. Off: nothing.
function(use_precompiled_headers target from)
  if(BAYWRIGHT_PRECOMPILE)
    target_precompile_headers(${target} REUSE_FROM ${from})
  endif()
endfunction()

# add_core_module(NAME [DEPENDS modules...] [LIBRARIES targets...] HEADERS ... [SOURCES ...] [PRECOMPILED target])
#
# One library a folder. Each has an include root of its own that holds nothing but a link named after the
# folder, so `#include "optics/lens.h"` compiles only where `optics` is linked: the link lines are the arrows.
# A header is first in the source of its name, which proves that it compiles alone; those without a source form the file set
# `alone`, which the build compiles one by one (all_verify_interface_header_sets).
# app/ uses the same function, hence no prefix in the folder.
#
# PRECOMPILED: whose precompiled headers the sources begin with; those of core by default.
function(add_core_module name)
  cmake_parse_arguments(arg "" "PRECOMPILED" "DEPENDS;LIBRARIES;HEADERS;SOURCES" ${ARGN})
  set(root ${CMAKE_BINARY_DIR}/include_roots/${name})
  file(MAKE_DIRECTORY ${root})
  file(CREATE_LINK ${CMAKE_CURRENT_SOURCE_DIR} ${root}/${name} SYMBOLIC COPY_ON_ERROR)

  list(TRANSFORM arg_HEADERS PREPEND ${root}/${name}/)
  list(TRANSFORM arg_DEPENDS PREPEND baywright_)
  if(arg_SOURCES)
    add_library(baywright_${name} STATIC ${arg_SOURCES})
    set(visibility PUBLIC)
    target_link_libraries(baywright_${name} PRIVATE $<BUILD_INTERFACE:baywright_build_rules>)
    if(NOT arg_PRECOMPILED)
      set(arg_PRECOMPILED baywright_common_headers)
    endif()
    use_precompiled_headers(baywright_${name} ${arg_PRECOMPILED})
  else()
    add_library(baywright_${name} INTERFACE)
    set(visibility INTERFACE)
  endif()
  set(alone "")
  foreach(header IN LISTS arg_HEADERS)
    file(RELATIVE_PATH source ${root}/${name} ${header})
    string(REGEX REPLACE "\\.h$" ".cpp" source ${source})
    if(NOT source IN_LIST arg_SOURCES)
      list(APPEND alone ${header})
    endif()
  endforeach()
  target_sources(baywright_${name} ${visibility}
    FILE_SET HEADERS BASE_DIRS ${root} FILES ${arg_HEADERS})
  if(alone)
    target_sources(baywright_${name} ${visibility} FILE_SET alone TYPE HEADERS BASE_DIRS ${root} FILES ${alone})
    set_target_properties(baywright_${name} PROPERTIES VERIFY_INTERFACE_HEADER_SETS ON INTERFACE_HEADER_SETS_TO_VERIFY alone)
  endif()
  target_link_libraries(baywright_${name} ${visibility} ${arg_DEPENDS} ${arg_LIBRARIES})
endfunction()

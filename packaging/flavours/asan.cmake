# SPDX-License-Identifier: Apache-2.0
# The tests under address and undefined-behaviour sanitizers. Line tables only, and -O1: a third of the time of a full debug build.
set(CMAKE_BUILD_TYPE None CACHE STRING "")
set(CMAKE_CXX_FLAGS "-O1 -g1" CACHE STRING "")
set(CMAKE_COMPILE_WARNING_AS_ERROR OFF CACHE BOOL "")
set(BAYWRIGHT_SANITIZE ON CACHE BOOL "")
set(BAYWRIGHT_PRECOMPILE ON CACHE BOOL "")

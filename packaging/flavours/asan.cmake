# SPDX-License-Identifier: Apache-2.0
# The unit tests under address and undefined-behaviour sanitizers. -Og instruments in two thirds of the time that -O1 takes.
set(CMAKE_BUILD_TYPE None CACHE STRING "")
set(CMAKE_CXX_FLAGS "-Og -g1" CACHE STRING "")
set(CMAKE_COMPILE_WARNING_AS_ERROR ON CACHE BOOL "")
set(BAYWRIGHT_SANITIZE ON CACHE BOOL "")
set(BAYWRIGHT_PRECOMPILE ON CACHE BOOL "")
set(BAYWRIGHT_TESTS unit CACHE STRING "")

# SPDX-License-Identifier: Apache-2.0
# The program and the tests of the whole, optimised, warnings as errors.
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(CMAKE_COMPILE_WARNING_AS_ERROR ON CACHE BOOL "")
set(BAYWRIGHT_TESTS whole CACHE STRING "")
set(BAYWRIGHT_CROSSCHECK ON CACHE BOOL "")

# SPDX-License-Identifier: Apache-2.0
# What users run: cmake -C packaging/flavours/release.cmake -B build
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(BAYWRIGHT_BUILD_TESTS OFF CACHE BOOL "")
set(BAYWRIGHT_PRECOMPILE ON CACHE BOOL "")

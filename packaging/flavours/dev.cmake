# SPDX-License-Identifier: Apache-2.0
# Day-to-day work: quick to build, asserts on.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")

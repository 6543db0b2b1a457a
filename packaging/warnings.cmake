# SPDX-License-Identifier: Apache-2.0
# How our own targets are compiled. Linked PRIVATE, so that nothing leaks into what links us.
add_library(baywright_build_rules INTERFACE)
target_compile_options(baywright_build_rules INTERFACE
  -Wall -Wextra -Wconversion -Wshadow -Wnon-virtual-dtor -Woverloaded-virtual
  # g++ 12 sees uninitialised reads inside Eigen's expression templates that are not there.
  -Wno-maybe-uninitialized
  # ... and overlaps in short string literals (GCC bug 105329).
  -Wno-restrict
  # Through a precompiled header it takes the standard library's strings for our code, and warns of that; the run under
  # the sanitizers looks for the real ones.
  $<$<BOOL:${BAYWRIGHT_PRECOMPILE}>:-Wno-stringop-overflow$<SEMICOLON>-Wno-array-bounds>
  # One result for a*b+c on every machine: an assessment must have the same bits everywhere.
  -ffp-contract=off)
if(BAYWRIGHT_SANITIZE)
  target_compile_options(baywright_build_rules INTERFACE -fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer
    # The address sanitizer reports a null pointer where it is used; asking at every use takes a quarter of the compile time.
    -fno-sanitize=null,alignment)
  target_link_options(baywright_build_rules INTERFACE -fsanitize=address,undefined)
endif()

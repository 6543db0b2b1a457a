// SPDX-License-Identifier: Apache-2.0
#include "exchange/xyz_read.h"
#include "mesh_fuzz.h"

// Whatever the bytes: no crash, limits held, and a mesh or cloud that can be used, or a sentence.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace baywright;
  const auto scan = readXyz(fuzz::bytesOf(data, size), fuzz::limits(), {});
  if (!scan) {
    fuzz::require(!scan.error().what.empty());
    return 0;
  }
  fuzz::requireWhole(*scan);
  return 0;
}

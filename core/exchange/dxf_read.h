// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstddef>
#include <string_view>

#include "base/problem.h"
#include "base/progress.h"
#include "exchange/dxf_drawing.h"

namespace baywright {

/// How much of a file is read before it counts as one that wants to keep the program busy. What lies beyond a
/// limit is left out and noted.
struct DxfLimits {
  std::size_t bytes = 200u << 20;    ///< a larger file is refused
  std::size_t entities = 1'000'000;  ///< as they stand in the file
  std::size_t placings = 200'000;    ///< blocks placed, those within blocks too
  std::size_t curves = 1'000'000;    ///< once blocks are taken apart
  std::size_t points = 4'000'000;
  int nesting = 16;  ///< blocks within blocks
};

/// Reads an ASCII DXF file of any version (R12 to 2018 and later), given as its bytes.
///
/// Read: LINE, MLINE, LWPOLYLINE and POLYLINE with bulges and widths, ARC, CIRCLE, ELLIPSE, SPLINE, SOLID,
/// TRACE and 3DFACE as outlines, TEXT, MTEXT and ATTRIB as plain words, INSERT of blocks: nested, scaled,
/// mirrored, turned, in rows and columns; extrusion directions; layers; $INSUNITS. Entities on layer 0 of a
/// block are on the layer of the block's insert. All is seen from above, in drawing units. The space of the
/// printed sheet is left out. Outlines of hatches are kept aside. Whatever else there is gets counted by
/// kind.
///
/// A damaged or cut file gives what could be read, with a note. Refused with a sentence: binary DXF, DWG,
/// UTF-16, what is no DXF at all, a file beyond limits.bytes, an empty one; a read that was cancelled.
Result<DxfDrawing> readDxf(std::string_view bytes, const DxfLimits& limits = {},
                           const Progress& progress = {});

}  // namespace baywright

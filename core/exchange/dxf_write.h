// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "drawing/linework.h"
#include "exchange/dxf_unit.h"

namespace baywright {

struct DxfWriteOptions {
  DrawingUnit unit = DrawingUnit::Millimetres;  ///< NotStated writes metres and says nothing
  /// Metres for a millimetre of paper: 0.05 makes texts and symbols the right size for a print at 1:50.
  double metresPerMm = 0.05;
};

/// An ASCII DXF file (AC1015, which programs since 2000 read) of linework in metres: outlines as LWPOLYLINE,
/// texts as TEXT, dimensions and symbols as the lines that they are drawn by, each on a layer named after its
/// own, with its dashes and weight. Areas that are only filled are left out. Characters beyond ASCII are
/// written as \U+XXXX; those beyond the basic plane as a question mark. Coordinates keep a millionth of a
/// unit.
std::string dxfOf(const Linework& linework, const DxfWriteOptions& options = {});

}  // namespace baywright

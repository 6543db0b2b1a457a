// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "exchange/dxf_record.h"
#include "exchange/dxf_shapes.h"

namespace baywright::detail {

/// The outlines of a HATCH, closed: of polylines with bulges, and of lines and arcs that follow one another,
/// as the published DXF reference lists them (91 paths, 92 their kind). Outlines with an ellipse or a spline,
/// and what is damaged, are left out.
std::vector<DxfPath> hatchPaths(DxfFields& fields);

}  // namespace baywright::detail

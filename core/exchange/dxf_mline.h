// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "exchange/dxf_record.h"
#include "exchange/dxf_shapes.h"

namespace baywright::detail {

/// The parallel lines of an MLINE, one path a straight piece; lines that were cut for openings leave gaps.
/// The published DXF reference gives at each vertex (11) the direction of its mitre (13), and for each line
/// (74) how far along the mitre it passes and where it starts and stops (41). Caps at the ends are not drawn.
/// None where numbers are missing or do not fit one another.
std::vector<DxfPath> mlinePaths(DxfFields& fields);

}  // namespace baywright::detail

// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "exchange/dxf_document.h"

namespace baywright::detail {

/// The drawing with every block taken apart where it is placed, seen from above. Blocks that contain
/// themselves, that are missing, or that are nested deeper than the limit are left out, with a note each.
DxfDrawing expanded(DxfDocument document, const DxfLimits& limits, const Progress& progress);

}  // namespace baywright::detail

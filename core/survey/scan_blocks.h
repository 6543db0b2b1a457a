// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "survey/scan_outline.h"

namespace baywright {

/// A part of the outline that stands out into the room as a cupboard does that reaches from floor to ceiling.
/// A chimney breast or the casing of a pipe looks the same: no scan tells them apart.
struct ScanBlock {
  std::size_t first = 0;  ///< its sides, counted on round the outline
  std::size_t last = 0;
  double depth = 0;  ///< metres
  double width = 0;
};

/// Blocks in a corner of the room (two sides) and before a wall (three), as deep and as wide as cupboards
/// are.
std::vector<ScanBlock> blocksOf(const ScanOutline& outline);

}  // namespace baywright

// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "base/progress.h"
#include "drawing/views.h"
#include "job/job.h"

namespace baywright {

/// A 3D scan as a view shows it under its lines: so many pixels with ink where something was seen.
struct ScanPicture {
  Vec2 upperLeft = Vec2::Zero();  ///< of the picture, metres of the view
  double pixel = 0;               ///< edge of a pixel, metres
  int width = 0;
  int height = 0;
  std::vector<std::uint8_t> ink;  ///< row by row from the top; 0: nothing was seen there

  bool empty() const { return ink.empty(); }
  bool operator==(const ScanPicture&) const = default;
};

/// On the plan: the more of the height between floor and head something takes up, the darker, so that walls
/// stand out from what stands before them. On a wall's elevation: what lies within arm's length of the face,
/// the darker the deeper, so that leaves, frames, switches and shelves show as relief. Empty for other views,
/// where nothing was seen, and when `progress` asked to stop. Pixels of 10 mm, larger for very large scans.
ScanPicture scanPictureOf(const RoomScan& scan, const DrawnView& view, const Job& job,
                          const Progress& progress = {});

}  // namespace baywright

// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "exchange/dxf_drawing.h"
#include "job/job.h"
#include "survey/line_join.h"

namespace baywright::detail {

/// The quarter of a circle (or less) that a door's leaf sweeps, metres.
struct DoorSwing {
  Vec2 hinge = Vec2::Zero();
  std::array<Vec2, 2> ends{};  ///< of the arc: one is where the leaf shuts, the other where it stands open
  std::array<bool, 2> leaf{};  ///< a line runs from the hinge to that end
  double width = 0;            ///< the arc's radius
  std::size_t curve = 0;       ///< which curve the arc is in
};

/// Arcs that are as large as a door and turn by 40 to 130 degrees, in curves that are shown.
std::vector<DoorSwing> doorSwings(const DxfDrawing& drawing, double metresPerUnit);

/// True for each curve that is a leaf or a swept arc of a door whose leaf is drawn: no wall, whatever its
/// layer.
std::vector<bool> drawnDoors(const DxfDrawing& drawing, const std::vector<DoorSwing>& swings,
                             double metresPerUnit);

/// The ways from hinge to jamb that drawn doors may shut, metres: from the hinge of each swing whose leaf is
/// drawn to either end of its arc, as the drawing does not say which is which.
std::vector<Segment2> shutLeaves(const std::vector<DoorSwing>& swings, const std::vector<bool>& drawn);

/// The openings of a room that is in `job` already: one for each gap, and one for each swing with a leaf that
/// shuts against an unbroken wall. A gap with a swing is a hinged door with its hinge and direction; one that
/// lines of a layer or block named after windows fill is a window; others are passages until somebody says
/// what they are. Sills and heights are not measured. `shift` was added to the drawing's metres.
/// Gaps too narrow for an opening are only noted.
struct FoundOpening {
  std::optional<Opening> opening;
  std::string note;
};
using FoundOpenings = std::vector<FoundOpening>;
FoundOpenings openingsOf(const Room& room, const JoinedRoom& joined, double wallThickness,
                         const DxfDrawing& drawing, double metresPerUnit, const Vec2& shift);

}  // namespace baywright::detail

// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <vector>

#include "job/room.h"
#include "job/room_geometry.h"

namespace baywright::detail {

/// An upright plane through a point of the plan. `x` counts metres along `along` (unit) from the point.
struct SectionLine {
  Vec2 through = Vec2::Zero();
  Vec2 along{1, 0};

  Vec2 at(double x) const { return through + x * along; }
  double xOf(const Vec2& p) const { return (p - through).dot(along); }
};

/// Where the plane cuts a wall: its inner face is at `x`, its masonry reaches on to `xOuter`.
struct WallCut {
  Id wall;
  double x = 0;
  double xOuter = 0;
  std::optional<Id> opening;  ///< cut through here
  double openingBottom = 0;
  double openingTop = 0;
};

/// Underside of the ceiling over a stretch, straight from one end to the other.
struct CeilingStretch {
  Id part;
  double from = 0, to = 0;
  double heightFrom = 0, heightTo = 0;
  bool known = true;  ///< its height was measured
};

/// One piece of the room between two walls. A concave room may be cut into several.
struct RoomStretch {
  WallCut left, right;
  std::vector<CeilingStretch> ceiling;  ///< from left to right; gaps where no part covers the floor
};

/// From left to right. Planes that only touch a corner cut nothing there.
std::vector<RoomStretch> sectionOf(const Room& room, const SectionLine& line);

/// The ceiling just before a wall's face, x metres from the wall's end to its start.
std::vector<CeilingStretch> ceilingBefore(const Room& room, const WallLine& wall);

/// Height of the ceiling at x; nullopt outside or where it is not covered.
std::optional<double> heightAt(const std::vector<RoomStretch>& section, double x);

}  // namespace baywright::detail

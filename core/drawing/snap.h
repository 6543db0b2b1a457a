// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <limits>
#include <span>
#include <string>
#include <vector>

#include "geometry/shapes.h"

namespace baywright {

/// What something snapped to, in drawing coordinates: a line to show and a word for it.
struct SnapMark {
  Segment2 line;
  std::string what;  ///< "against wall B"
};

/// A place that attracts a move (or a point, which is a move from the drawing's origin): normal . by = at.
/// It holds only while along . by lies in [low, high], where `along` is square to the normal: a wall attracts
/// what stands in front of it and not what has gone past its end.
struct SnapRule {
  Vec2 normal{1, 0};  ///< unit vector
  double at = 0;
  double low = -std::numeric_limits<double>::infinity();
  double high = std::numeric_limits<double>::infinity();
  SnapMark mark;

  Vec2 along() const { return leftOf(normal); }
};

struct SnapPoint {
  Vec2 at = Vec2::Zero();
  std::string what;
};

struct Snapped {
  Vec2 by = Vec2::Zero();       ///< the move or the point, as it should be
  std::vector<SnapMark> marks;  ///< none: nothing attracted it
};

/// The move that keeps the nearest rule within `reach`, and with it the nearest other one that crosses it:
/// then both hold to rounding. The earlier rule wins where two are equally near. Points beat rules.
Snapped snapped(std::span<const SnapRule> rules, const Vec2& by, double reach);
Snapped snapped(std::span<const SnapPoint> points, std::span<const SnapRule> rules, const Vec2& by,
                double reach);

/// The rule for a point to lie on the straight line through `through`.
SnapRule onLine(const Vec2& through, const Vec2& along, SnapMark mark);
/// The same between the line's ends only.
SnapRule onSegment(const Segment2& segment, std::string what);

}  // namespace baywright

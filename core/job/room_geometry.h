// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "geometry/polygon.h"
#include "geometry/shapes.h"
#include "job/room.h"

namespace baywright {

/// The inner face of one wall on the plan, world metres. The room lies to the left of `along`.
struct WallLine {
  Id wall;
  std::string name;
  Vec2 start = Vec2::Zero();
  Vec2 end = Vec2::Zero();  ///< the next wall's start
  double length = 0;
  Vec2 along{1, 0};   ///< unit vector from start to end; (1, 0) where the wall has no length
  Vec2 inward{0, 1};  ///< unit normal into the room
  PlanCovariance startCovariance;
  PlanCovariance endCovariance;

  Segment2 segment() const { return {start, end}; }
  Vec2 at(double offset) const { return start + offset * along; }
  /// Standard uncertainty of the face's place across itself, at `offset` metres from the start. The ends
  /// count as independent; beyond them the nearer end's figure is taken.
  double sigmaAt(double offset) const;
};

/// A hole in a wall, on the plan and in height, world metres.
struct OpeningPlace {
  Id opening;
  Id wall;
  Vec2 start = Vec2::Zero();  ///< the jamb nearer to the wall's start, on the inner face
  Vec2 end = Vec2::Zero();    ///< the other jamb
  Vec2 along{1, 0};           ///< unit vector from start to end
  Vec2 inward{0, 1};          ///< unit normal into the room
  double bottom = 0;
  double top = 0;

  Segment2 segment() const { return {start, end}; }
  Vec2 middle() const { return 0.5 * (start + end); }
};

/// The ceiling over one point.
struct CeilingPoint {
  Id part;
  double height = 0;  ///< world z, metres
};

/// Corners of the floor in the order of the walls, counter-clockwise in a valid room; empty before survey.
Ring outline(const Room& room);

/// "A" to "Z", "AA", ...: what the wall of this number, and the corner where it starts, is called as long as
/// nobody named it.
std::string wallLetters(std::size_t number);

/// All walls in their order.
std::vector<WallLine> wallLines(const Room& room);
std::optional<WallLine> wallLine(const Room& room, Id wall);

/// Nothing when there is no such opening or its wall is missing.
std::optional<OpeningPlace> openingPlace(const Room& room, Id opening);

/// The lowest ceiling part over the point; the earlier one in the list where two meet at the same height.
/// A region's edge belongs to it. Nothing where no part covers the point: height not known there.
std::optional<CeilingPoint> ceilingAt(const Room& room, const Vec2& point);
std::optional<double> ceilingHeightAt(const Room& room, const Vec2& point);

/// The part's region, or the whole floor where the region is empty.
Ring ceilingRegion(const Room& room, const CeilingPart& part);
/// How low and how high a plane of the ceiling gets over `region`; both its height at the anchor where that
/// is empty.
struct CeilingSpan {
  double low = 0;
  double high = 0;
};
CeilingSpan spanOver(const CeilingPart& part, const Ring& region);

/// Square metres; zero before survey.
double floorArea(const Room& room);

/// True inside the outline and on it.
bool isInside(const Room& room, const Vec2& point);

/// Upright rectangle on the plan.
struct PlanBox {
  Vec2 low = Vec2::Zero();
  Vec2 high = Vec2::Zero();

  Vec2 size() const { return high - low; }
  Vec2 centre() const { return 0.5 * (low + high); }
};

/// The smallest box round the outline; nothing before survey.
std::optional<PlanBox> planBox(const Room& room);

/// Standard uncertainty along `unit` of the corner where this wall starts; nothing when there is no such
/// wall.
std::optional<double> cornerSigma(const Room& room, Id wall, const Vec2& unit);

/// The same covariance with its variance along `unit` replaced, and no correlation between along and across.
PlanCovariance withVarianceAlong(const PlanCovariance& covariance, const Vec2& unit, double variance);

}  // namespace baywright

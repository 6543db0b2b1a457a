// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <span>
#include <vector>

#include "base/problem.h"
#include "geometry/shapes.h"

namespace baywright {

/// Corners on the plan in metres, closed by the edge from the last to the first. Edge i runs from corner i to
/// corner i + 1.
using Ring = std::vector<Vec2>;

/// A region: within `outer`, outside every hole. Functions here take rings of either winding unless they say
/// otherwise; normalised() turns outer counter-clockwise and holes clockwise. polygon_validity.h says what is
/// wrong with one.
struct Polygon {
  Ring outer;
  std::vector<Ring> holes;

  bool operator==(const Polygon&) const = default;
};

/// Square metres, positive when counter-clockwise (so y up on the plan). Zero for fewer than three corners.
double signedArea(std::span<const Vec2> ring);
/// Area of outer less the holes.
double area(const Polygon& polygon);
double perimeter(std::span<const Vec2> ring);
/// Centre of area; the mean of the corners where there is no area.
Vec2 centroid(const Polygon& polygon);

Polygon normalised(Polygon polygon);

enum class Location { Outside, Boundary, Inside };
/// Where p lies. Boundary means exactly on an edge in double arithmetic (orientation determinant of zero);
/// ask closestOnBoundary for a tolerance. Works for crossing rings by the even-odd rule.
Location locate(const Ring& ring, const Vec2& p);
Location locate(const Polygon& polygon, const Vec2& p);

/// The boundary's nearest approach.
struct BoundaryPoint {
  double distance = 0;
  Vec2 point = Vec2::Zero();  ///< on the boundary
  Vec2 other = Vec2::Zero();  ///< on whatever was asked about
  int ring = 0;               ///< 0 is outer, i + 1 is holes[i]
  int edge = 0;
};
/// The polygon must have at least one corner.
BoundaryPoint closestOnBoundary(const Polygon& polygon, const Vec2& p);
BoundaryPoint closestOnBoundary(const Polygon& polygon, const Segment2& segment);

/// The ring without corners that lie within `tolerance` of the line between their kept neighbours, and
/// without repeated corners. Never fewer than three corners unless the ring itself is flat, then empty.
Ring simplified(const Ring& ring, double tolerance);

/// Corners of the convex hull, counter-clockwise, none on a straight line. Fewer than three when the points
/// lie on a line.
Ring convexHull(std::vector<Vec2> points);

/// True when the ring turns only one way (straight corners allowed) and goes round once.
bool isConvex(std::span<const Vec2> ring);

}  // namespace baywright

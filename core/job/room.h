// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include "base/id.h"
#include "geometry/vec.h"
#include "job/dimension.h"
#include "job/fixture.h"
#include "job/opening.h"

namespace baywright {

/// Covariance of a point on the plan, m^2.
struct PlanCovariance {
  double xx = 0, xy = 0, yy = 0;

  bool operator==(const PlanCovariance&) const = default;

  /// Standard uncertainty along a unit vector.
  double sigmaAlong(const Vec2& unit) const {
    const double variance =
        xx * unit.x() * unit.x() + 2 * xy * unit.x() * unit.y() + yy * unit.y() * unit.y();
    return variance > 0 ? std::sqrt(variance) : 0;
  }
  static PlanCovariance isotropic(double sigma) { return {sigma * sigma, 0, sigma * sigma}; }
};

/// One wall of the room's outline. Its inner face runs from `start` to the start of the next wall; the room
/// lies to the left of that direction (the outline is counter-clockwise). The masonry lies outside it.
struct Wall {
  Id id;
  std::string name;  ///< "A", "B", ... by default
  Vec2 start = Vec2::Zero();
  PlanCovariance startCovariance;
  double thickness = 0.10;  ///< only for drawing

  bool operator==(const Wall&) const = default;
};

/// One plane of the ceiling: z = height + slope . (p - anchor) over `region`.
/// An empty region means the whole floor. Where regions overlap, the lowest plane is the ceiling.
/// A slope of (0, 0.25) rises 0.25 m for each metre of world y.
struct CeilingPart {
  Id id;
  std::string name;
  std::vector<Vec2> region;
  Vec2 anchor = Vec2::Zero();
  Dimension height = guessed(2.4);
  Vec2 slope = Vec2::Zero();

  bool operator==(const CeilingPart&) const = default;

  double heightAt(const Vec2& p) const { return height.value + slope.dot(p - anchor); }
};

/// The room as surveyed, in the world frame.
struct Room {
  std::string name;
  std::vector<Wall>
      walls;  ///< counter-clockwise, a simple polygon, possibly concave; empty: not surveyed yet
  std::vector<CeilingPart> ceiling;
  std::vector<Opening> openings;
  std::vector<Fixture> fixtures;

  bool operator==(const Room&) const = default;
};

}  // namespace baywright

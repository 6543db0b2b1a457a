// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "base/uncertain.h"
#include "clearance/obstacle.h"

namespace baywright {

/// A body that is put somewhere, and how well: to find its tightest place among obstacles. World frame.
struct PutBody {
  ConvexPolyhedron body;
  double required = 0;      ///< clearance to keep, metres
  double ownSigma = 0;      ///< of its own surface, metres
  double placeSigma = 0;    ///< of its place on the plan, metres, the same both ways
  double headingSigma = 0;  ///< of its direction, radians, about `pivot`
  Vec2 pivot = Vec2::Zero();
};

struct SolidMargin {
  std::size_t obstacle = 0;  ///< index in what was asked
  Closest closest;           ///< first is the body
  Uncertain margin;
};

/// The worst margin (isWorse) against the obstacles given by index; the lowest among equals; nothing when
/// there are none. Obstacles that stand in the bay too (inBay) add their own placing.
std::optional<SolidMargin> tightest(const PutBody& put, std::span<const RoomObstacle> obstacles,
                                    std::span<const std::size_t> which);

/// Standard uncertainty of a margin at a witness: obstacle, surface, place and direction as independent
/// parts.
double solidMarginSigma(const PutBody& put, const RoomObstacle& obstacle, const Closest& closest);

}  // namespace baywright

// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <span>

#include "base/uncertain.h"
#include "clearance/obstacle.h"
#include "clearance/placed_swing.h"
#include "geometry/triangle_tree.h"
#include "swing/envelope.h"

namespace baywright {

/// What a margin of a swing depends on besides the two shapes.
struct SwingNeeds {
  double clearance = 0;       ///< required, metres
  double placementSigma = 0;  ///< how well things are put where they are marked, metres
  double strikeDistance = 1;  ///< from strike point to screen, metres; the swing is aimed along it
};

/// The tightest place between one swing and some obstacles, world frame.
struct SwingMargin {
  std::size_t obstacle = 0;  ///< index in what was asked
  SwingCapsule capsule;
  Closest closest;  ///< first is the swing's capsule
  Uncertain margin;
};

/// Standard uncertainty of the margin at a witness, to first order, from independent parts: the envelope
/// along the line of the gap; the obstacle along it; the strike point, which is marked with placementSigma on
/// the plan; the swing's direction, known as well as the two marks at strike point and screen that it is
/// aimed by, so that it grows with the lever arm; and for what stands in the bay its own placing.
double swingMarginSigma(const SwingEnvelope& envelope, const PlacedSwing& swing, const RoomObstacle& obstacle,
                        const Closest& closest, const SwingNeeds& needs);

/// The worst margin (isWorse) of the swing against the obstacles given by index; the lowest obstacle and
/// capsule among equals. Nothing when there is nothing to meet. Search::Everything looks at each pair and
/// gives the same answer to the last bit.
std::optional<SwingMargin> tightest(const SwingEnvelope& envelope, const PlacedSwing& swing,
                                    std::span<const RoomObstacle> obstacles,
                                    std::span<const std::size_t> which, const SwingNeeds& needs,
                                    Search search = Search::Tree);

}  // namespace baywright

// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <string>

#include "base/id.h"
#include "geometry/frames.h"
#include "job/golfer.h"
#include "job/kit.h"

namespace baywright {

enum class MountKind { Ceiling, Floor, Wall };

/// How the projector hangs or stands. The lens position is in the bay frame (d negative: on the golfer's
/// side), so it follows when the bay is dragged. Angles in radians turn the optical axis away from pointing
/// along d: yaw positive to the right (toward +r), pitch positive up, roll positive clockwise as seen from
/// behind the lens.
struct ProjectorMount {
  MountKind kind = MountKind::Ceiling;
  Vec3 lens{-3.6, 0, 2.3};  ///< (d, r, u)
  double yaw = 0;
  double pitch = 0;
  double roll = 0;
  double throwRatio = 1.2;  ///< chosen zoom
  double shiftUp = 0;       ///< used lens shift, share of picture height, positive moves the picture up
  double shiftSide = 0;     ///< share of picture width, positive to the right

  bool operator==(const ProjectorMount&) const = default;
};

/// Where everything goes.
struct Placement {
  BayPose bay;
  double strikeDistance = 3.0;     ///< from the screen's face back to the strike points, along -d
  double strikeRightHanded = 0.0;  ///< r of the right-hander's strike point
  double strikeLeftHanded = 0.0;   ///< r of the left-hander's; equal: a shared centre point
  Vec2 matCentre{-3.0, 0.0};       ///< (d, r)
  Vec3 monitor{-3.0, -0.6, 0.0};   ///< (d, r, u) of the middle of the monitor's underside
  ProjectorMount projector;
  double sigma = 0.005;  ///< how well a fitter puts things where they are marked (common practice, no source)

  bool operator==(const Placement&) const = default;

  double strikeOffset(Hand hand) const { return hand == Hand::Right ? strikeRightHanded : strikeLeftHanded; }
  /// The strike point in the bay frame, on the floor.
  Vec3 strikePoint(Hand hand) const { return {-strikeDistance, strikeOffset(hand), 0}; }
};

/// One complete placement of one set of kit in the room.
struct Option {
  Id id;
  std::string name;
  Kit kit;
  Placement placement;

  bool operator==(const Option&) const = default;
};

}  // namespace baywright

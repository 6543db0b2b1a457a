// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "geometry/vec.h"
#include "job/dimension.h"

namespace baywright {

enum class Hand { Right, Left };

/// A golf club. `length` as the Equipment Rules measure it (along the axis of the shaft from the grip's end
/// to the ground plane at the sole, 60 degree plane); lie is the angle between shaft and ground at address,
/// radians.
struct Club {
  Id id;
  std::string name;
  double length = 1.156;  ///< metres; 0.457 to 1.25 is accepted
  double lie = 1.012;     ///< radians; 0.7 to 1.3 is accepted

  bool operator==(const Club&) const = default;
};

/// What the fitter taped while the golfer swung slowly; it overrides the model. Heights above the floor the
/// golfer stands on, reaches measured level from the strike point. Absent fields are left to the model.
struct MeasuredReach {
  Id club;                           ///< with which club
  std::optional<Dimension> highest;  ///< highest point of the club in the swing
  std::optional<Dimension> behind;   ///< away from the ball on the golfer's side, to the widest point

  bool operator==(const MeasuredReach&) const = default;
};

/// A person who will swing. Stature in metres, in shoes; 1.0 to 2.3 is accepted.
struct Golfer {
  Id id;
  std::string name;
  Hand hand = Hand::Right;
  Dimension stature = guessed(1.76);
  std::vector<Club> clubs;
  std::optional<MeasuredReach> reach;
  bool swings = true;  ///< false: kept in the job but not assessed

  bool operator==(const Golfer&) const = default;
};

/// Where someone who is not swinging stands or sits; an upright cylinder in world coordinates.
struct Bystander {
  Id id;
  std::string name;
  Vec2 position = Vec2::Zero();
  double radius = 0.30;
  double height = 1.30;

  bool operator==(const Bystander&) const = default;
};

}  // namespace baywright

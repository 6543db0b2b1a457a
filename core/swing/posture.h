// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "geometry/vec.h"
#include "job/golfer.h"
#include "swing/body.h"

namespace baywright {

/// How a golfer stands to a ball, right-hander's swing frame (envelope.h), metres and radians.
///
/// The club sets the hands: they hold it 10 cm from its end on the axis of the shaft, which meets the floor
/// at the heel of the head and slopes less than the club's lie, because players let the toe rise, the more
/// the longer the club (shaftSlope). The arms hang at 28 degrees from the vertical, toward the ball, and the
/// trunk bends to bring the shoulders there; half of what it would have to bend more or less than usual is
/// taken by the knees. A golfer too short for the club grips down until the hands are at just under half the
/// stature.
///
/// The feet stand under the shoulders.
///
/// Calibrated, not measured, by the distance from the ball to the toes of over 100 tour players: 32 to 36 in
/// with a driver, 22 to 26 with a five-iron, 18 to 22 with a nine-iron (The importance of ball position and
/// stance width, usgtf.com), and by the mean slope of the club head's plane for driver, five-iron and
/// pitching wedge, 46.5, 55 and 60 degrees (Kwon et al., Sports Biomechanics 11, 127, 2012; values from
/// memory). A player stands up to about 5 cm nearer or farther. Hub, pelvis and figures that follow from them
/// rise and move away from the ball steadily with stature and with length of club.
struct AddressPosture {
  Vec3 hub = Vec3::Zero();     ///< middle of the shoulders
  Vec3 pelvis = Vec3::Zero();  ///< middle of the hips
  Vec3 grip = Vec3::Zero();    ///< middle of the two hands on the shaft
  double spineTilt = 0;        ///< of the trunk from the vertical, toward the ball
  double shaftSlope = 0;       ///< of the shaft from the floor
  double gripDown = 0;         ///< along the shaft, from the club's end to the middle of the hands
  double club = 0;             ///< from the middle of the hands to the middle of the head
  double planeSlope = 0;       ///< of the plane through the target line at the head and through the hub

  bool operator==(const AddressPosture&) const = default;

  /// From the hub to the hands as the swing has it at impact: arms and club in one line.
  double arm() const;
  double toesToBall(const BodyLengths& body) const { return -hub.y() - body.footAhead; }
};

/// Radius of a ball about the middle of a club's head that holds the whole head, and the height of its middle
/// at address: half of the greatest heel-to-toe length, 5 in (Equipment Rules, part 2, section 4b).
inline constexpr double kClubHeadRadius = 0.0635;

/// Slope of the shaft at address, radians.
double shaftSlope(const Club& club);

/// Valid for statures of 1.0 to 2.3 m, lengths of 0.457 to 1.25 m and lies of 0.7 to 1.3 rad in any
/// combination.
AddressPosture postureOf(const BodyLengths& body, const Club& club);

}  // namespace baywright

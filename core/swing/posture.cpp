// SPDX-License-Identifier: Apache-2.0
#include "swing/posture.h"

#include <algorithm>
#include <cmath>

namespace baywright {
namespace {

constexpr double kDegree = kPi / 180;

// Two hands of 9 cm each with the butt just showing (common practice, no source).
constexpr double kGripDown = 0.10;
// 4 degrees below the lie for a pitching wedge of 0.90 m, 9.5 for a driver of 1.156 m: posture.h.
constexpr double kToeUpAtWedge = 4 * kDegree;
constexpr double kToeUpPerMetre = 21.5 * kDegree;
constexpr double kWedgeLength = 0.90;
constexpr double kArmHang = 28 * kDegree;
constexpr double kUsualTilt = 32 * kDegree;
// Feet apart and hips behind them, of the height standing at attention.
constexpr double kHighestHips = 0.975;
constexpr double kHighestHands = 0.47;  // share of stature
// The change from holding the club at its end to gripping down is spread over this height, so that figures
// bend rather than break there.
constexpr double kGripDownBlend = 0.03;

// The axis of the shaft meets the floor at the heel, half a head less half a hosel short of the ball.
constexpr double kHeel = kClubHeadRadius - 0.0135;
// The back is rounded: the shoulders lean less far ahead of the hips than a straight trunk's would.
constexpr double kRoundedLean = 0.8;
const Vec3 kHeadAtAddress(0, 0, kClubHeadRadius);

/// The smaller of two, rounded over `blend` about where they meet; at most both, rising with both.
double smoothMin(double a, double b, double blend) {
  return (a + b - std::hypot(a - b, blend)) / 2;
}

}  // namespace

double shaftSlope(const Club& club) {
  const double toeUp = kToeUpAtWedge + kToeUpPerMetre * (club.length - kWedgeLength);
  return club.lie - std::max(0.0, toeUp);
}

double AddressPosture::arm() const {
  return (hub - kHeadAtAddress).norm() - club;
}

AddressPosture postureOf(const BodyLengths& body, const Club& club) {
  AddressPosture posture;
  posture.shaftSlope = shaftSlope(club);
  const double sine = std::sin(posture.shaftSlope);
  const double cosine = std::cos(posture.shaftSlope);

  const double handsByClub = (club.length - kGripDown) * sine;
  const double hands = smoothMin(handsByClub, kHighestHands * body.stature, kGripDownBlend);
  posture.gripDown = club.length - hands / sine;
  posture.grip = {0, -(kHeel + hands * cosine / sine), hands};
  posture.club = (posture.grip - kHeadAtAddress).norm();

  // In the side view the arms are as long as from the middle of the shoulders to the hands.
  const double armsInProfile = std::sqrt(body.arm() * body.arm() - body.halfShoulders * body.halfShoulders);
  posture.hub = posture.grip + armsInProfile * Vec3(0, -std::sin(kArmHang), std::cos(kArmHang));
  posture.planeSlope = std::atan2(posture.hub.z() - kClubHeadRadius, -posture.hub.y());

  // With straight legs the trunk would stand as upright as this; less would leave the feet off the floor.
  const double straightLegs = (posture.hub.z() - kHighestHips * body.hip) / body.trunk;
  const double shared = (straightLegs + std::cos(kUsualTilt)) / 2;
  const double upright = std::clamp(std::max(straightLegs, shared), 0.1, 0.99);
  posture.spineTilt = std::acos(upright);
  posture.pelvis = posture.hub - body.trunk * Vec3(0, kRoundedLean * std::sin(posture.spineTilt), upright);
  return posture;
}

}  // namespace baywright

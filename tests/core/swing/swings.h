// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <string>

#include "swing/envelope.h"

namespace baywright {

inline constexpr double kDegree = kPi / 180;

inline Club clubOf(std::string name, double inches, double lieDegrees) {
  return {.id = {}, .name = std::move(name), .length = inches * 0.0254, .lie = lieDegrees * kDegree};
}

/// A bag from the longest club to the shortest.
inline std::array<Club, 6> bag() {
  return {clubOf("Driver", 45.5, 58),     clubOf("Fairway wood", 43, 58),     clubOf("Five-iron", 38, 61),
          clubOf("Seven-iron", 37, 62.5), clubOf("Pitching wedge", 35.5, 64), clubOf("Lob wedge", 35, 64)};
}

inline Golfer golferOf(double stature, Hand hand = Hand::Right) {
  Golfer golfer;
  golfer.name = "Robin";
  golfer.hand = hand;
  golfer.stature = taped(stature);
  return golfer;
}

inline SwingPath pathOf(double stature, const Club& club, SwingStyle style = SwingStyle::Expected) {
  const BodyLengths body = bodyOf(stature);
  return swingPathOf({.body = body, .posture = postureOf(body, club), .style = style});
}

inline std::array<double, 5> values(const EnvelopeFigures& figures) {
  return {figures.highest.value, figures.behindGolfer.value, figures.towardTarget.value,
          figures.awayFromTarget.value, figures.beyondBall.value};
}

inline double distanceToCore(const Vec3& point, const Capsule& capsule) {
  const Vec3 along = capsule.b - capsule.a;
  const double length = along.squaredNorm();
  const double t = length > 0 ? std::clamp((point - capsule.a).dot(along) / length, 0.0, 1.0) : 0.0;
  return (point - capsule.a - t * along).norm();
}

}  // namespace baywright

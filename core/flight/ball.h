// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace baywright {

/// A golf ball as the Equipment Rules bound it: mass at most 1.620 oz avoirdupois, diameter at least 1.680 in
/// (The Equipment Rules, Part 4; Rules of Golf 2016, Appendix III 1 and 2). Balls are made to these limits,
/// so they are the values used. Kilograms and metres.
inline constexpr double kBallMass = 1.620 * 0.028349523125;
inline constexpr double kBallRadius = 1.680 * 0.0254 / 2;

struct Ball {
  double mass = kBallMass;
  double radius = kBallRadius;

  bool operator==(const Ball&) const = default;

  /// Solid sphere of even density: 2/5 m r^2 (what Penner 2001 takes; a real ball's differs by a few per
  /// cent).
  double inertia() const { return 0.4 * mass * radius * radius; }
};

/// Joules.
inline double kineticEnergy(const Ball& ball, double speed) {
  return 0.5 * ball.mass * speed * speed;
}

}  // namespace baywright

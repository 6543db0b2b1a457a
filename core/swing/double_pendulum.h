// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

namespace baywright {

/// The downswing as a double pendulum: arms about the hub, club about the wrists, in one plane.
///
/// Equations and the default parameters: Jorgensen, The Physics of Golf (1994, 1999), technical appendix,
/// section 4, with the numbers that Bourg and Bywalec, Physics for Game Developers, 2nd ed. (2013), chapter
/// 19, put in. Those numbers give the club's second moment about its own balance point where the equations
/// want it about the wrists, so that the cock is lost at once: `clubMomentAtWrist` lets the right one be
/// said. SI units, radians.
struct DoublePendulum {
  double arm = 0.62;
  double armMass = 7.3;
  double armBalance = 0.5;  ///< share of the arm from the hub to its balance point
  double armMoment = 1.15;  ///< second moment about the hub
  double club = 1.1;
  double clubMass = 0.4;
  double clubBalance = 0.75;
  double clubMomentAtWrist = 0.08;
  double shoulderTorque = 100;
  double wristTorque = -10;  ///< negative holds the cock; for `wristTorqueTime`, then none
  double wristTorqueTime = 0.1;
  double hubAcceleration = 0.98;  ///< along the target line
  double gravity = 9.8;
  double startArms = 2.356194490192345;   ///< 135 degrees from straight down
  double startCock = 2.0943951023931953;  ///< 120 degrees
  bool stopsAtStartCock = false;          ///< the wrists cannot cock further than at the start
};

struct PendulumState {
  double time = 0;
  double arms = 0;  ///< angle from straight down, positive away from the target
  double cock = 0;  ///< of the wrists; the club's angle is arms + cock
  double armRate = 0;
  double cockRate = 0;

  double headSpeed(const DoublePendulum& pendulum) const;
};

/// From the start to where the club hangs at `clubAngle` (arms + cock) for the first time, the last state
/// exactly there; or one second at most. Runge-Kutta of order four with steps of a tenth of a millisecond:
/// the time of arrival is right to a microsecond.
std::vector<PendulumState> swingDown(const DoublePendulum& pendulum, double clubAngle);

/// The pendulum that the downswing of the wrist schedule follows: the club's moment taken to the wrists
/// (parallel axes), wrists free but for the stop, a cock of 112 degrees from arms at 130.
DoublePendulum releasePendulum();

}  // namespace baywright

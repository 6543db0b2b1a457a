// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "swing/curve.h"

namespace baywright {

/// The three legs of a swing. In each one a share runs from 0 at the ball to 1 at the far end, the top of the
/// backswing or the finish; in the downswing it runs backwards.
enum class SwingLeg { Backswing, Downswing, FollowThrough };

enum class SwingStyle {
  Expected,      ///< wrists cock, release and cock again
  FullExtension  ///< wrists never cock, arms and club go straight up the plane on both sides
};

/// Angles of arms and club in the plane (two_link.h) over one leg.
struct LegAngles {
  ScalarCurve arms;  ///< angle of the arms over the share, radians
  double clubAtEnd;  ///< angle of the club at share 1, with the usual cock of the wrists

  /// `cock` scales the cock of the wrists: 1 as usual, 0 never.
  double club(double share, double cock) const {
    const double arm = arms(share);
    return arm + cock * (clubAtEnd * share - arm);
  }
};

/// The wrist schedule: what the arms and the club do in a leg.
///
/// Backswing and follow-through: arms to 130 degrees and wrists cocked by 112 at the top (Jorgensen, The
/// Physics of Golf, 1994: 135 and 120, a long swing); club up the plane when the arms are 22 degrees past
/// level, the late set of most players (common practice, no source; skilled players set it when the arms are
/// level, which stays inside). The follow-through mirrors it and goes on to the club lying behind the back,
/// arms folded. Downswing: the cock is kept and thrown out late, in the proportions of a double pendulum that
/// is let go against a hinge stop (double_pendulum.h).
const LegAngles& legAngles(SwingStyle style, SwingLeg leg);

/// What the body does, over the angle of the arms in radians; positive in the backswing. Backswing and
/// downswing pass the same postures. Turns: shoulders 90 degrees, hips 45 at the top (common practice), both
/// about facing the target at the finish.
struct BodySchedule {
  ScalarCurve shoulderTurn;  ///< radians about the spine, positive away from the target
  ScalarCurve hipTurn;       ///< likewise
  ScalarCurve hubShift;      ///< toward the target, share of stature
  ScalarCurve pelvisShift;   ///< likewise
  ScalarCurve standUp;       ///< 0 bent as at address, 1 upright
  ScalarCurve armReach;      ///< hub to hands, share of the length at impact
  ScalarCurve flattening;    ///< 0 the plane of address, 1 flattened by kFinishFlattening
  ScalarCurve awayFromBall;  ///< 0 near impact, 1 where a taped reach may move the arc
};

const BodySchedule& bodySchedule(SwingStyle style);

/// The plane lies down by this toward the finish, so that the club goes round behind the back (common
/// practice).
inline constexpr double kFinishFlattening = 20 * kPi / 180;

}  // namespace baywright

// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "base/problem.h"
#include "geometry/shapes.h"
#include "job/golfer.h"
#include "swing/swing_path.h"

namespace baywright {

/// The space that body, arms and club sweep through in one golfer's swing with one club.
///
/// Swing frame, metres: origin on the surface that the golfer stands on, under the ball; axes along the bay's
/// (d, r, u): x toward the target, y to the right when facing the target, z up. A right-hander stands on the
/// -y side of the ball and faces +y; a left-hander is the exact mirror image (y -> -y).

/// A stretch of the swept space. The stretches of one envelope overlap; together they contain the whole
/// motion.
struct SwingCapsule {
  Capsule capsule;
  double moment =
      0;  ///< 0 address, 1 finish; the middle of the stretch, the earlier one where two pass there
  BodyPart part = BodyPart::Torso;

  bool operator==(const SwingCapsule&) const = default;
};

/// How far the envelope reaches in one direction, and where, when and with what it does so.
struct Extreme {
  double value = 0;        ///< metres from the origin along the direction
  Vec3 at = Vec3::Zero();  ///< the point of the envelope's surface
  double moment = 0;
  BodyPart part = BodyPart::Torso;

  bool operator==(const Extreme&) const = default;
};

struct EnvelopeFigures {
  Extreme highest;         ///< above the surface the golfer stands on
  Extreme behindGolfer;    ///< from the ball to the golfer's side: -y for a right-hander
  Extreme towardTarget;    ///< from the ball, +x
  Extreme awayFromTarget;  ///< from the ball, -x
  Extreme beyondBall;      ///< from the ball to the side away from the golfer: +y for a right-hander

  bool operator==(const EnvelopeFigures&) const = default;
};

/// `sigma` is the standard uncertainty of the place of the surface, metres: the model's own or the tape's,
/// whichever is worse. Where only the height or only the reach was taped the two differ: sigmaAlong tells
/// them apart.
struct SwingEnvelope {
  std::vector<SwingCapsule> capsules;
  EnvelopeFigures figures;
  double sigma = 0;
  double sigmaUp = 0;     ///< of the height of the surface
  double sigmaLevel = 0;  ///< of its level reach

  bool operator==(const SwingEnvelope&) const = default;

  /// Standard uncertainty of the surface along a unit vector.
  double sigmaAlong(const Vec3& direction) const;
};

/// What one golfer does with one club. `expected` is what checks use; `fullExtension` is the bound that a
/// beginner who never cocks the wrists may reach, and contains the expected one in every figure.
struct Swing {
  SwingEnvelope expected;
  SwingEnvelope fullExtension;
  SwingPath path;         ///< of the expected swing: what the player and the 3D view show
  SwingPath fullPath;     ///< of the full extension
  bool measured = false;  ///< a taped reach was used

  bool operator==(const Swing&) const = default;
};

/// Refuses with a sentence: stature unknown or outside 1.0 to 2.3 m, club outside 0.457 to 1.25 m, lie
/// outside 0.7 to 1.3 rad, a reach that was taped with a club that is not in the bag or that no swing of this
/// golfer can have.
Result<Swing> swingOf(const Golfer& golfer, const Club& club);

/// The golfer and the club at one moment, true sizes without any allowance; `moment` is clamped to 0..1.
std::vector<SwingCapsule> poseAt(const SwingPath& path, double moment);
std::vector<SwingCapsule> poseAt(const Swing& swing, double moment);

}  // namespace baywright

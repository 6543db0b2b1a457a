// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <vector>

#include "base/problem.h"
#include "geometry/vec.h"
#include "job/golfer.h"
#include "swing/figures.h"
#include "swing/swing_capsule.h"
#include "swing/swing_path.h"

namespace baywright {

/// The space that body, arms and club sweep through in one golfer's swing with one club.
///
/// Swing frame, metres: origin on the surface that the golfer stands on, under the ball; axes along the bay's
/// (d, r, u): x toward the target, y to the right when facing the target, z up. A right-hander stands on the
/// -y side of the ball and faces +y; a left-hander is the exact mirror image (y -> -y). The floor at z = 0 is
/// not something to keep clear of: capsules dip below it by their allowance (cover.h).

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

/// The figures never fall when the stature grows, nor when the club does, from clubs of 0.75 m on for
/// statures up to 2.1 m (with shorter ones a tall golfer stoops so far that the body, not the club, is what
/// reaches out).
///
/// Uncertainty of the model: 50 mm for how golfers of one size differ, joined by the stature's own. Of a
/// taped figure: the tape's and 20 mm for the same golfer twice, for other clubs growing to the model's over
/// 0.25 m of length.
///
/// Refuses with a sentence: stature unknown or outside 1.0 to 2.3 m, club outside 0.457 to 1.25 m, lie
/// outside 0.7 to 1.3 rad, a reach that was taped with a club that is not in the bag or that no swing of this
/// golfer can have.
Result<Swing> swingOf(const Golfer& golfer, const Club& club);

std::vector<SwingCapsule> poseAt(const Swing& swing, double moment);

}  // namespace baywright

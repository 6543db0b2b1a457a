// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "job/kit.h"
#include "job/placement.h"
#include "optics/picture.h"

namespace baywright {

/// What a picture has to do; shares 0..1.
struct AimNeeds {
  double coverage = 0.98;  ///< at least this share of the screen
  /// At most this share of the picture beyond the screen, over what differing aspects make unavoidable.
  double spill = 1.0;
};

/// How far a mount is inside each limit of its projector; negative: beyond it. Each is what is left, in its
/// own unit. Shift up and to the side are taken as independent; many makers allow less of one when much of
/// the other is used.
struct MountMargins {
  double zoomWide = 0;   ///< throw ratio over the widest
  double zoomLong = 0;   ///< under the longest
  double focusNear = 0;  ///< metres over the nearest distance
  double focusFar = 0;   ///< metres under the farthest
  double shiftUp = 0;    ///< share of picture height
  double shiftSide = 0;  ///< share of picture width
  double keystone = 0;   ///< radians, on the worse axis; 0 for a square axis and no correction
  double coverage = 0;   ///< share of the screen over the need
  double spill = 0;      ///< share of the picture under the need

  double least() const;  ///< the smallest of all, units mixed: only its sign means something
};

/// Rounding only: a mount exactly at a limit is inside it. Shares, ratios, metres and radians alike.
inline constexpr double kAimTolerance = 1e-9;

MountMargins mountMargins(const Picture& picture, const Projector& projector, const ProjectorMount& mount,
                          const AimNeeds& needs);

/// The best a projector can do from where it hangs.
struct Aim {
  ProjectorMount mount;
  Picture picture;
  MountMargins margins;
  bool works = false;  ///< no margin is negative
};

/// Aims a projector at the middle of the screen from `place.lens`, as a fitter does: lens shift first,
/// because it costs nothing; what is left by turning the body as far as its keystone correction allows
/// (pitch, then yaw, no roll); and the longest zoom whose picture still covers the screen, or the widest when
/// none does. Only kind and lens of `place` are read. Refused as pictureOf.
Result<Aim> aimAt(const Screen& screen, const Projector& projector, const ProjectorMount& place,
                  const AimNeeds& needs);

}  // namespace baywright

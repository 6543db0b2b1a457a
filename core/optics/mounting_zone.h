// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "base/problem.h"
#include "geometry/polygon.h"
#include "job/kit.h"
#include "job/placement.h"
#include "optics/aim.h"

namespace baywright {

/// Where a projector may hang.
struct MountingZone {
  /// Distances of the lens from the screen's plane, on the bay's middle line, metres; both zero when it works
  /// nowhere.
  double nearest = 0;
  double farthest = 0;
  /// Lens positions (d, r) on the plan of the bay that work at the asked height; empty when none does, or
  /// only the middle line itself. The same on both sides. Its edges are found at kZoneSlices values of r to a
  /// millimetre and joined by straight lines.
  Ring region;
};

/// A place works when aimAt does there with these needs. `height` of the lens above the floor, metres. Places
/// where the working distances fall apart into several ranges give the longest of them. Refused: kit that
/// makes no picture.
Result<MountingZone> mountingZone(const Screen& screen, const Projector& projector, MountKind kind,
                                  double height, const AimNeeds& needs);

inline constexpr int kZoneSlices = 25;

}  // namespace baywright

// SPDX-License-Identifier: Apache-2.0
#include "optics/eye_safety.h"

#include <algorithm>

namespace baywright {

double lowestLight(const ProjectorLens& lens, double hazardDistance) {
  double lowest = lens.centre.z();
  for (const Vec2& corner : lens.panelCorners()) {
    const Vec3 ray = bayRayFromPanel(lens, corner);
    const double toScreen = ray.x() > 0 ? -lens.centre.x() / ray.x() : hazardDistance;
    lowest = std::min(lowest, lens.centre.z() + std::min(hazardDistance, toScreen) * ray.z());
  }
  return lowest;
}

}  // namespace baywright
